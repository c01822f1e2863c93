// Calls of the calculations on plain numbers: parameters by name in, results by name out, one by one or in columns.
import { PourwrightError, fault, refuse } from './error.js'
import { calculator } from './instance.js'
import { LONGEST, short } from './text.js'

// The tags of arguments, as in wasm/src/table.rs.
const [OMITTED, NUMBER, TEXT, LIST, COLUMN] = [0, 1, 2, 3, 4]

/** The number of rows that the module calculates at once: its memory never shrinks. */
const BLOCK = 1024

const BYTES = Float64Array.BYTES_PER_ELEMENT

/** Passed in place of a value of the wrong type; the module reports the type that the parameter takes. */
const NO_NUMBER = new Float64Array()
const NO_LIST = ''

/**
 * The calculations of a table in the order of the module: `{ name: ['parameters', 'results'] }`. A parameter is a number, or
 * `name: text`, or `name: 2` for a list of rows of two numbers; a result is a number, `name: word` or `name: list`.
 */
export function calculations(table) {
  return Object.entries(table).map(([name, [parameters, results]], place) => {
    return { name, place, parameters: fields(parameters), results: fields(results) }
  })
}

const fields = (text) =>
  text.split(', ').map((field) => {
    const [name, kind = 'number'] = field.split(': ')
    return { name, kind }
  })

/** A function for each calculation. */
export function functions(calculations) {
  return Object.fromEntries(
    calculations.map((calculation) => [calculation.name, (given) => evaluate(calculation, given)]),
  )
}

/** A function on columns for each calculation that takes a number and returns no list. */
export function columnar(calculations) {
  const fit = ({ parameters, results }) =>
    parameters.some(({ kind }) => kind === 'number') && results.every(({ kind }) => kind !== 'list')
  return Object.fromEntries(
    calculations
      .filter(fit)
      .map((calculation) => [calculation.name, (given, statuses) => evaluateColumns(calculation, given, statuses)]),
  )
}

function evaluate(calculation, given) {
  const { table } = calculator()
  const { place, results } = calculation
  const faults = []
  const values = read(calculation, given, number, faults)
  const address = withAll(faults, () => table.evaluate(place, handOver(values)))

  const found = {}
  const numbers = memory()
  const first = address / BYTES
  let list = first + results.length
  for (const [index, { name, kind }] of results.entries()) {
    const result = numbers[first + index]
    found[name] = kind === 'list' ? Array.from(numbers.subarray(list, (list += result))) : orNull(result)
  }
  // Last: it may replace the memory.
  for (const { name, kind } of results) if (kind === 'word') found[name] = word(found[name])
  return found
}

function evaluateColumns(calculation, given, statuses) {
  const { table } = calculator()
  const { name, place, results } = calculation
  const faults = []
  const values = read(calculation, given, numberOrColumn, faults)
  const columns = values.filter((value) => value instanceof Column)
  const rows = columns[0]?.numbers.length
  for (const [index, value] of values.entries()) {
    if (value instanceof Column && value.numbers.length !== rows) {
      const { name } = calculation.parameters[index]
      const found = `"${name}" has ${value.numbers.length} rows, the first column ${rows}.`
      faults.push(
        fault('unequal-columns', `/${name}`, found, 'Give columns of the same length, or a number for all rows.'),
      )
    }
  }
  if (rows === undefined) {
    const help = `Give a Float64Array for one parameter or more; for single numbers call ${name}.`
    faults.push(fault('no-column', '', 'None of the parameters is a column.', help))
  }
  if (statuses !== undefined && !(statuses instanceof Uint8Array && statuses.length === rows)) {
    const help = 'Give a Uint8Array with as many places as the columns have rows.'
    faults.push(fault('wrong-type', '', 'The statuses do not fit the columns.', help))
  }
  // Faults that all rows have in common are found with the first row, or with none.
  const row = values.map((value) => (value instanceof Column ? value.row(0) : value))
  withAll(faults, () => table.columns(place, handOver(row, 0, 1), 1))

  const found = results.map(() => new Float64Array(rows))
  for (let from = 0; from < rows; from += BLOCK) {
    const count = Math.min(BLOCK, rows - from)
    const first = table.columns(place, handOver(values, from, count), count) / BYTES
    const part = (index) => memory().subarray(first + index * count, first + (index + 1) * count)
    for (const [index, column] of found.entries()) column.set(part(index), from)
    statuses?.set(part(found.length), from)
  }
  const shown = (column, { kind }) => (kind === 'word' ? Array.from(column, (number) => word(orNull(number))) : column)
  return Object.fromEntries(results.map((result, index) => [result.name, shown(found[index], result)]))
}

/** The result of `call`. If there are faults already, its faults are added and all are thrown. */
function withAll(faults, call) {
  if (faults.length === 0) return call()
  try {
    call()
  } catch (error) {
    if (!(error instanceof PourwrightError)) throw error
    // The module got a placeholder for a parameter that is already at fault.
    const known = new Set(faults.map(({ path }) => parameterOf(path)))
    faults = faults.concat(error.faults.filter(({ path }) => !known.has(parameterOf(path))))
  }
  throw new PourwrightError(faults)
}

const parameterOf = (path) => path.split('/', 2)[1]

/** The values of all parameters, in order. All are read before any is passed: reading may run code of the caller. */
function read({ name, parameters }, given = {}, readNumber, faults) {
  if (typeof given !== 'object' || given === null)
    refuse('wrong-type', '', `The parameters of "${name}" are not an object.`, 'Give an object with them by name.')
  const values = parameters.map(({ name, kind }) => {
    const value = given[name]
    if (value === undefined) return value
    if (kind === 'number') return readNumber(value)
    if (kind === 'text') return typeof value === 'string' ? short(`/${name}`, value) : NO_NUMBER
    return list(`/${name}`, value, Number(kind), faults)
  })
  for (const key of Object.keys(given)) {
    if (parameters.some(({ name }) => name === key)) continue
    const known = parameters.map(({ name }) => name).join(', ')
    const path = `/${key.replaceAll('~', '~0').replaceAll('/', '~1')}`
    faults.push(fault('unknown-field', path, `There is no parameter "${key}".`, `Known: ${known}.`))
  }
  return values
}

const number = (value) => (typeof value === 'number' ? value : NO_NUMBER)

const numberOrColumn = (value) => (value instanceof Float64Array ? new Column(value) : number(value))

/** A number for each row. */
class Column {
  constructor(numbers) {
    this.numbers = numbers
  }

  /** The column of one row; of NaN if there is none. */
  row(index) {
    return new Column(Float64Array.of(this.numbers[index]))
  }
}

/** The numbers of a list, or of a list of rows of this width, one after the other. */
function list(path, given, width, faults) {
  if (!isList(given)) return NO_LIST
  const numbers = []
  const before = faults.length
  let index = 0
  for (const item of given) {
    const place = `${path}/${index++}`
    if (width === 1) element(place, item)
    else if (!isList(item)) fail(place, `a list of ${width} numbers`)
    else row(place, item)
    if (index * BYTES * width > LONGEST) refuse('document-too-long', path, 'The list is too long.', 'Split it.')
  }
  return faults.length > before ? NO_LIST : Float64Array.from(numbers)

  function row(place, items) {
    let column = 0
    for (const item of items) {
      if (column++ === width) return fail(place, `a list of ${width} numbers`)
      element(`${place}/${column - 1}`, item)
    }
    if (column !== width) fail(place, `a list of ${width} numbers`)
  }

  function element(place, item) {
    if (typeof item === 'number') numbers.push(item)
    else fail(place, 'a number')
  }

  function fail(place, wanted) {
    faults.push(fault('wrong-type', place, `"${place.slice(1)}" must be ${wanted}.`, `Give ${wanted}.`))
  }
}

const isList = (value) => typeof value === 'object' && typeof value?.[Symbol.iterator] === 'function'

/** The place where the module reads arguments, and its capacity in numbers. */
let start = 0
let room = 0

/** Writes the values into the memory of the module (of columns `count` rows); returns their texts. */
function handOver(values, from, count) {
  let size = 2 * values.length
  for (const value of values) {
    if (value instanceof Float64Array) size += value.length
    else if (value instanceof Column) size += count
  }
  if (size > room) {
    start = calculator().table.room(size) / BYTES
    room = size
  }
  const numbers = memory()
  let texts = ''
  let place = start
  let next = start + 2 * values.length
  for (const value of values) {
    if (value === undefined) numbers[place] = OMITTED
    else if (typeof value === 'number') write(NUMBER, value)
    else if (typeof value === 'string') {
      write(TEXT, value.length)
      texts += `${value}\n`
    } else if (value instanceof Column) {
      write(COLUMN, 0)
      append(value.numbers.subarray(from, from + count))
    } else {
      write(LIST, value.length)
      append(value)
    }
    place += 2
  }
  return texts

  function write(tag, value) {
    numbers[place] = tag
    numbers[place + 1] = value
  }

  function append(list) {
    numbers.set(list, next)
    next += list.length
  }
}

let numbers = new Float64Array()

/** The memory of the module as numbers; growing replaces it. */
function memory() {
  const { buffer } = calculator().memory
  if (numbers.buffer !== buffer) numbers = new Float64Array(buffer)
  return numbers
}

/** Words by their number in the module. */
const words = []

const word = (index) => (index === null ? null : (words[index] ??= calculator().table.word(index)))

/** An absent result is NaN in the module. */
const orNull = (number) => (Number.isNaN(number) ? null : number)
