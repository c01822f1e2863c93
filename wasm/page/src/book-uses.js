// Where the names of the book are used: what is renamed is renamed there too, and what is used is not deleted.
import { state, valueAt } from './state.js'
import { say } from './words.js'

/** Any key of an object, or any place of a list. */
const ANY = Symbol('any')
/** A key that is the name, or a value that is. */
const [KEY, NAME] = [Symbol('key'), Symbol('name')]

/** The places of names, by the part of the book that has them: the document, the keys that lead there. */
const PLACES = {
  materials: [
    ['book', 'default_base', NAME],
    ['book', 'formulas', ANY, 'base', NAME],
    ['book', 'formulas', ANY, 'base', KEY],
    ['book', 'formulas', ANY, 'doses', KEY],
    ['book', 'bench', 'oven', 'of', NAME],
    ['orders', 'stock', KEY],
    ['orders', 'shelf', ANY, 'parts', KEY],
    ['orders', 'pots', ANY, 'parts', KEY],
    ['calibrate', 'material', NAME],
  ],
  formulas: [
    ['book', 'products', ANY, 'formulas', ANY, NAME],
    ['book', 'products', ANY, 'layers', ANY, 'formulas', ANY, NAME],
    ['orders', 'lines', ANY, 'formulas', ANY, NAME],
    ['orders', 'lines', ANY, 'layers', ANY, 'formulas', ANY, NAME],
    ['orders', 'shelf', ANY, 'formulas', ANY, NAME],
    ['one', 'formulas', ANY, NAME],
  ],
  molds: [
    ['book', 'products', ANY, 'mold', NAME],
    ['orders', 'lines', ANY, 'mold', NAME],
  ],
  products: [
    ['orders', 'lines', ANY, 'product', NAME],
    ['salt', 'product', NAME],
  ],
}

/** The places below `value` that `place` leads to and that have `name`: each its path, and whether the name is its last key. */
function found(value, [key, ...rest], name, path = []) {
  if (key === NAME) return value === name ? [{ path, isKey: false }] : []
  if (typeof value !== 'object' || value === null) return []
  if (key === KEY)
    return Object.hasOwn(value, name) && !Array.isArray(value) ? [{ path: [...path, name], isKey: true }] : []
  const keys = key === ANY ? Object.keys(value) : Object.hasOwn(value, key) ? [key] : []
  const at = (one) => (Array.isArray(value) ? Number(one) : one)
  return keys.flatMap((one) => found(value[one], rest, name, [...path, at(one)]))
}

/** Every place where a name of a part of the book is used: `{ of, path, isKey }`. */
function placesOf(part, name) {
  return PLACES[part].flatMap(([of, ...place]) => found(state[of], place, name).map((one) => ({ of, ...one })))
}

/** The places in the documents where a name is used. */
export const usesOf = (part, name) => placesOf(part, name).filter(({ of }) => of === 'book' || of === 'orders')

/** The changes that give something another name, everywhere. */
export function renamed(part, name, to) {
  const own = { of: 'book', path: [part], from: name, to }
  const elsewhere = placesOf(part, name).map(({ of, path, isKey }) =>
    isKey ? { of, path: path.slice(0, -1), from: name, to } : { of, path, value: to },
  )
  // What is open stays open under its new name.
  const { form } = state
  const open = form.part === part && form.open === name ? [{ of: 'form', path: ['open'], value: to }] : []
  return [...elsewhere, own, ...open]
}

/** The changes that give the shape at `path` (a mold's cavities) another name, in the order lines too. */
export function renamedShape(path, name, to) {
  const [, mold] = path
  const moldOf = ({ product, mold }) => mold ?? state.book.products?.[product]?.mold
  const lines = (Array.isArray(state.orders.lines) ? state.orders.lines : []).flatMap((line, at) =>
    line?.shape === name && moldOf(line) === mold ? [{ of: 'orders', path: ['lines', at, 'shape'], value: to }] : [],
  )
  return [{ of: 'book', path, from: name, to }, ...lines]
}

const isAt = (place, path) =>
  place.length === path.length + 1 && path.every((key, at) => place[at] === ANY || place[at] === String(key))

/** The part of the book whose names the value at `path` of a document is one of; null if it is not a name. */
export function partNamedAt(of, path) {
  const names = ([part, places]) =>
    places.some((place) => place.at(-1) === NAME && isAt(place, [of, ...path])) ? [part] : []
  return Object.entries(PLACES).flatMap(names)[0] ?? null
}

/** A use in words: `product dusk finger`, `order 31`, `stock`. */
export function wordsOfUse({ of, path }) {
  const [list, at] = path
  if (of === 'orders' && list === 'lines')
    return say('form.useLine', { order: valueAt(state.orders, ['lines', at, 'order']) ?? '', line: at + 1 })
  if (of === 'orders' || list === 'default_base' || list === 'bench') return say(WORDS[list])
  return ofPart('form.use', list, { name: at })
}

const WORDS = {
  stock: 'form.useStock',
  shelf: 'form.useShelf',
  pots: 'form.usePots',
  default_base: 'form.useDefaultBase',
  bench: 'form.useOven',
}

/** The message of a family, such as `form.new`, for an entry of a part of the book: `form.newFormulas`. */
export const ofPart = (family, part, values) => say(keyOfPart(family, part), values)

/** The key of such a message. */
export const keyOfPart = (family, part) => `${family}${part[0].toUpperCase()}${part.slice(1)}`
