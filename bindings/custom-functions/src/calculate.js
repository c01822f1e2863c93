// One calculation with the cells of its parameters: each as the library takes it, amounts in texts read by the library.
import * as pourwright from '../../js/src/scalar-web.js'
import { fault } from '../../js/src/error.js'
import { CALCULATIONS } from './calculations.js'
import { isEmpty } from './cells.js'

const { PourwrightError } = pourwright

/** The unit that an amount is converted to, if there is one. */
const unitOf = (mark) => (mark === '1' ? undefined : mark)

/** Each calculation by its name: `{ name, call, parameters, results }`. */
export const calculations = new Map(
  Object.entries(CALCULATIONS).map(([name, [call, parameters, results]]) => {
    const taken = parameters.split(', ').map((parameter) => parameterOf(...parameter.split(': ')))
    return [name, { name, call: pourwright[call], parameters: taken, results: results.split(', ') }]
  }),
)

function parameterOf(name, mark) {
  const path = `/${name}`
  if (mark === 'text') return { name, path, kind: 'text' }
  if (!mark.startsWith('list ')) return { name, path, kind: 'number', unit: unitOf(mark) }
  return { name, path, kind: 'list', units: mark.slice('list '.length).split(' | ').map(unitOf) }
}

/** The results of a calculation, or `{ faults }`. `cells` has a cell for each parameter; for a list a range. */
export function calculate({ call, parameters }, cells) {
  const reader = new Reader(parameters, cells)
  const given = {}
  for (let index = 0; index < parameters.length; index += 1) {
    given[parameters[index].name] = reader.value(parameters[index], cells[index])
  }
  try {
    const results = call(given)
    if (reader.faults.length === 0) return results
  } catch (error) {
    if (!(error instanceof PourwrightError)) throw error
    reader.add(error.faults)
  }
  return { faults: reader.faults }
}

const nameAt = ({ path }) => path.split('/', 2)[1]

/** Reads cells, and keeps what is wrong with them. */
class Reader {
  faults = []
  #parameters
  #measures
  /** Of each list that has empty rows, the places of the others in its range. */
  #places = new Map()

  constructor(parameters, cells) {
    this.#parameters = parameters
    for (let index = 0; index < parameters.length; index += 1) {
      if (parameters[index].name === 'measures' && !isEmpty(cells[index])) this.#measures = cells[index]
    }
  }

  /** The value of a parameter. For a cell of a wrong type it is one that the library refuses, too. */
  value(parameter, cell) {
    if (parameter.kind === 'list') return this.#list(parameter, cell)
    if (isEmpty(cell)) return undefined
    return parameter.kind === 'text' ? String(cell) : this.#number(cell, parameter.unit, parameter.path)
  }

  /** Adds the faults that the library found in parameters that are not at fault already, where they are in a range. */
  add(found) {
    const known = new Set(this.faults.map(nameAt))
    const others = found.filter((fault) => !known.has(nameAt(fault))).map((fault) => this.#inRange(fault))
    // In the order of the parameters, those of no parameter last.
    const names = [...this.#parameters.map(({ name }) => name), undefined]
    const rank = (fault) => names.indexOf(nameAt(fault))
    this.faults = known.size === 0 ? others : [...this.faults, ...others].sort((one, other) => rank(one) - rank(other))
  }

  #inRange(fault) {
    const [start, name, row, ...rest] = fault.path.split('/')
    const place = this.#places.get(name)?.[row]
    return place === undefined ? fault : { ...fault, path: [start, name, place, ...rest].join('/') }
  }

  #number(cell, unit, path) {
    if (typeof cell === 'number') return cell
    if (typeof cell === 'string' && cell !== '' && unit !== undefined) return this.#amount(cell, unit, path)
    const found = isEmpty(cell) ? 'empty' : typeof cell === 'string' ? 'a text' : String(cell).toUpperCase()
    const help = unit === undefined ? 'Give a number.' : `Give a number in ${unit}, or an amount with its unit.`
    this.faults.push(fault('wrong-type', path, `It is ${found}, not a number.`, help))
    return cell
  }

  #amount(text, unit, path, measures = this.#measures) {
    try {
      return pourwright.convert({ amount: text, to: unit, measures }).value
    } catch (error) {
      if (!(error instanceof PourwrightError)) throw error
      const own = error.faults.filter(({ path }) => path !== '/measures')
      // The calculation reports its measures itself.
      if (own.length === 0) return this.#amount(text, unit, path, 'us-customary')
      this.faults.push(...own.map(({ code, message, help }) => fault(code, path, message, help)))
      return text
    }
  }

  /** The rows of a range, or its cells one by one. Empty ones are not in the list. */
  #list({ name, path, units }, range) {
    const width = units.length
    const rows = width === 1 ? range.flat().map((cell) => [cell]) : range
    const places = [...rows.keys()].filter((place) => !rows[place].every(isEmpty))
    if (places.length === 0) return undefined
    this.#places.set(name, places)
    if (width > 1 && range[0].length !== width) {
      const help = `Give a range with ${width} columns.`
      this.faults.push(fault('wrong-type', path, `The range has ${range[0].length} columns.`, help))
      return ''
    }
    const numbers = places.map((place) =>
      rows[place].map((cell, column) => {
        return this.#number(cell, units[column], width === 1 ? `${path}/${place}` : `${path}/${place}/${column}`)
      }),
    )
    return width === 1 ? numbers.flat() : numbers
  }
}
