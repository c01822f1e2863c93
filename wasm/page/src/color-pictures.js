// The pictures of a visit: from files, dropped, pasted or taken; what is marked in them, and the pixels there. They stay in this
// page's memory, and are gone when it closes; what is read from them stays.
import { reply } from './replies.js'
import { change, state } from './state.js'
import { takeIn } from './storage.js'
import { say } from './words.js'

/** The pictures that are open, each with its `marks` by name, the mark that is placed next, and the radius of a new one. */
export const pictures = []

/** The most that are open: each takes the memory of all its pixels. */
const MOST = 6

/** What is read. */
export const KINDS = ['target', 'seen']

/** The name of a step of the card among the marks. */
export const stepName = (at) => `card ${at + 1}`

let count = 0

/** Opens files as pictures. */
export function openPictures(files) {
  for (const file of files) takeIn(() => openOne(file))
}

async function openOne(file) {
  if (pictures.length >= MOST) {
    return change({ notice: say('pictures.tooMany', { count: MOST }) })
  }
  let bitmap
  try {
    bitmap = await createImageBitmap(file)
  } catch {
    return change({ notice: say('pictures.unreadable', { name: file.name }) })
  }
  const { width, height } = bitmap
  count += 1
  const radius = Math.max(6, Math.round(Math.min(width, height) * 0.04))
  const picture = {
    id: count,
    name: file.name,
    bitmap,
    width,
    height,
    radius,
    marks: {},
    next: '',
    at: null,
    open: true,
  }
  picture.next = nextOf(picture)
  for (const other of pictures) other.open = false
  pictures.push(picture)
  change({ notice: '' })
}

/** Closes a picture. What was read from it stays. */
export function closePicture(picture) {
  pictures.splice(pictures.indexOf(picture), 1)
  picture.bitmap.close()
  change()
}

/** Marks `name` at a place of a picture, given in its pixels, and reads what can be read then. */
export function mark(picture, name, x, y) {
  const radius = picture.marks[name]?.radius ?? picture.radius
  place(picture, name, x, y, radius)
  picture.next = nextOf(picture, name)
  read()
}

/** Makes the mark that is placed, and those to come, larger or smaller. */
export function resize(picture, factor) {
  const most = Math.min(picture.width, picture.height) / 3
  const name = picture.marks[picture.next] ? picture.next : picture.last
  const { x, y, radius } = picture.marks[name] ?? { radius: picture.radius }
  picture.radius = Math.round(Math.min(most, Math.max(3, radius * factor)))
  if (picture.marks[name]) {
    place(picture, name, x, y, picture.radius)
    read()
  } else change()
}

function place(picture, name, x, y, radius) {
  picture.last = name
  picture.marks[name] = { x, y, radius, pixels: pixelsOf(picture.bitmap, x, y, radius) }
}

/** Takes a mark away. */
export function unmark(picture, name) {
  delete picture.marks[name]
  picture.next = name
  read()
}

/** What is to be marked after `name`: the steps of the card, then what is not read yet. */
function nextOf(picture, name = '') {
  const steps = state.color.steps.map((_, at) => stepName(at))
  const missing = [...steps, ...KINDS].find((one) =>
    KINDS.includes(one)
      ? !pictures.some(({ marks }) => marks[one]) && !(one === 'target' && state.color.target)
      : !picture.marks[one],
  )
  return missing ?? (name || 'seen')
}

/** Goes on to what is to be marked in each picture, as the card has other steps now. */
export function markNext() {
  for (const picture of pictures) picture.next = nextOf(picture, picture.marks[picture.next] ? picture.next : '')
}

/** Forgets a reading, with its marks. */
export function forget(kind) {
  for (const { marks } of pictures) delete marks[kind]
  markNext()
  change({ color: { ...state.color, [kind]: null, play: null } })
}

/** Forgets the marks of a sample: what was poured since looks different. Pictures of nothing else are closed. */
export function forgetSample() {
  for (const picture of [...pictures]) {
    if (!picture.marks.seen) continue
    delete picture.marks.seen
    if (!picture.marks.target) closePicture(picture)
    else picture.next = 'seen'
  }
}

/**
 * Statistics of the pixels around a place, as the library takes them: means and standard deviations of red, green and blue, the
 * number of pixels, and the share with a channel at 0 or at 255.
 */
function pixelsOf(bitmap, x, y, radius) {
  const side = 2 * radius + 1
  const [left, top] = [Math.round(x) - radius, Math.round(y) - radius]
  const context = new OffscreenCanvas(side, side).getContext('2d', { willReadFrequently: true })
  context.drawImage(bitmap, -left, -top)
  const { data } = context.getImageData(0, 0, side, side)
  const inside = []
  for (let at = 0; at < side * side; at += 1) {
    const [across, down] = [(at % side) - radius, Math.floor(at / side) - radius]
    // Beyond the edge of the picture nothing was drawn.
    if (across * across + down * down <= radius * radius && data[4 * at + 3] === 255) inside.push(4 * at)
  }
  const pixels = inside.length
  const channels = [0, 1, 2]
  const mean = channels.map((channel) => inside.reduce((sum, at) => sum + data[at + channel], 0) / (pixels || 1))
  const deviation = channels.map((channel) =>
    Math.sqrt(inside.reduce((sum, at) => sum + (data[at + channel] - mean[channel]) ** 2, 0) / (pixels || 1)),
  )
  const isEnd = (at) => channels.some((channel) => data[at + channel] === 0 || data[at + channel] === 255)
  const clipped = inside.filter(isEnd).length / (pixels || 1)
  return { mean, deviation, pixels, clipped: `${(100 * clipped).toFixed(2)} %` }
}

const markedWith = (kind) => pictures.filter(({ marks }) => marks[kind])

/** The request that reads `kind` from all pictures in which it is marked; null if it is in none. */
function requestOf(kind) {
  const marked = markedWith(kind)
  if (!marked.length) return null
  const card = ({ marks }) =>
    state.color.steps.flatMap((reflectance, at) => {
      const step = marks[stepName(at)]
      return step ? [{ reflectance: withPercent(reflectance), pixels: step.pixels }] : []
    })
  return {
    calculate: 'color-reading',
    pictures: marked.map((picture) => ({ patch: picture.marks[kind].pixels, card: card(picture) })),
  }
}

const withPercent = (text) => (/^[\d.]+$/.test(text.trim()) ? `${text.trim()} %` : text)

/** What the pictures say of `kind`: the request, and its answer or faults; null if it is not marked. */
export function readingOf(kind) {
  const request = requestOf(kind)
  return request && { request, ...reply(request) }
}

/** What is wrong with a picture, of all that is marked in it. */
export function faultsIn(picture) {
  const faults = KINDS.flatMap((kind) => {
    const at = markedWith(kind).indexOf(picture)
    return at < 0 ? [] : readingOf(kind).faults.filter(({ path }) => `${path}/`.startsWith(`/pictures/${at}/`))
  })
  // What is wrong with the card is so for target and sample.
  return [...new Map(faults.map((fault) => [fault.message, fault])).values()]
}

/** Takes over what the pictures say; what is marked in no picture stays as it was read. */
export function read() {
  const parts = { play: null }
  for (const kind of KINDS) {
    const found = readingOf(kind)
    if (found) parts[kind] = found.answer ? kept(found.answer, found.request.pictures.length) : null
  }
  change({ color: { ...state.color, ...parts } })
}

/** What is kept of a reading, over a reload too. */
export const kept = ({ color, lab, hex, notes }, pictures = 0) => ({ color, lab, hex, notes, pictures })
