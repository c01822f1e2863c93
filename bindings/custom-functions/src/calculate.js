// One calculation with the cells of its parameters: each as the library takes it, amounts in texts read by the library.
import * as pourwright from '../../js/src/scalar-web.js'
import { fault } from '../../js/src/error.js'
import { CALCULATIONS } from './calculations.js'
import { hasUnits, isEmpty, isUnit, joined } from './cells.js'

const { PourwrightError } = pourwright

/** The unit that an amount is converted to, if there is one. */
const unitOf = (mark) => (mark === '1' ? undefined : mark)

/** Each calculation by its name: `{ name, call, parameters, results, width }`. */
export const calculations = new Map(
  Object.entries(CALCULATIONS).map(([name, [call, parameters, results]]) => {
    const taken = parameters.split(', ').map((parameter) => parameterOf(...parameter.split(': ')))
    const given = results.split(', ').map((result) => resultOf(...result.split(': ')))
    const width = given.reduce((width, { cells }) => width + cells, 0)
    return [name, { name, call: pourwright[call], parameters: taken, results: given, width }]
  }),
)

function parameterOf(name, mark) {
  const path = `/${name}`
  if (mark === 'amount' || mark === 'text' || mark === 'word') return { name, path, kind: mark }
  if (mark.startsWith('list ')) {
    return { name, path, kind: 'list', units: mark.slice('list '.length).split(' | ').map(unitOf) }
  }
  const [unit, zero] = mark.split(' ')
  return { name, path, kind: 'number', unit: unitOf(unit), zeroCounts: zero === '?' }
}

function resultOf(name, cells = '1') {
  return { name, cells: Number(cells) }
}

/** Whether a parameter may be an amount as a text. */
export const takesAmount = ({ kind, unit }) => unit !== undefined || kind === 'amount'

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
      if (parameters[index].name === 'measures') this.#measures = this.value(parameters[index], cells[index])
    }
  }

  /** The value of a parameter. For a cell of a wrong type it is one that the library refuses, too. */
  value(parameter, cell) {
    const { kind, unit, path } = parameter
    if (kind === 'list') return this.#list(parameter, cell)
    if (isEmpty(cell)) return undefined
    if (kind === 'amount' || kind === 'text') return String(cell)
    // The sheet's own functions do not care for capital letters.
    if (kind === 'word') return String(cell).trim().toLowerCase()
    return parameter.zeroCounts ? this.#numberOrZero(cell, unit, path) : this.#number(cell, unit, path)
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

  /** Some spreadsheets give 0 for an empty cell, and here that is another value. */
  #numberOrZero(cell, unit, path) {
    const zero = unit === undefined ? '0' : `0 ${unit}`
    if (cell === 0) {
      const message = 'It is 0, which an empty cell can be as well.'
      const help = `For its default, leave it out or give "". For the number, write "${zero}".`
      this.faults.push(fault('amount-ambiguous', path, message, help))
      return ''
    }
    return cell === zero ? 0 : this.#number(cell, unit, path)
  }

  #number(cell, unit, path) {
    if (typeof cell === 'number') return cell
    if (typeof cell === 'string' && !isEmpty(cell) && unit !== undefined) return this.#amount(cell, unit, path)
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
    const rows = rowsOf(range, units)
    const places = [...rows.keys()].filter((place) => !rows[place].every(isEmpty))
    if (places.length === 0) return undefined
    this.#places.set(name, places)
    if (rows[0].length !== width) {
      const help = `Give a range with ${width} columns; each amount may have a column with its units behind it.`
      this.faults.push(fault('wrong-type', path, `The range has ${rows[0].length} columns.`, help))
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

/** The rows of a list with these units, each unit that has a column of its own put behind its number. */
function rowsOf(range, units) {
  if (units.length === 1) {
    const isPairs = units[0] !== undefined && hasUnits(range)
    return isPairs ? range.map(([number, unit]) => [joined(number, unit)]) : range.flat().map((cell) => [cell])
  }
  // Of each column of the range the place of its number, or undefined for a column of units.
  const columns = units.flatMap((unit, place) => (unit === undefined ? [place] : [place, undefined]))
  const areUnits = (row) => row.every((cell, column) => columns[column] !== undefined || isUnit(cell))
  if (range[0].length !== columns.length || columns.length === units.length || !range.every(areUnits)) return range
  return range.map((row) =>
    units.map((unit, place) => {
      const column = columns.indexOf(place)
      return unit === undefined ? row[column] : joined(row[column], row[column + 1])
    }),
  )
}
