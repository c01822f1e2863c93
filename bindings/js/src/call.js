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
    const calculation = { name, place, parameters: fields(parameters), results: fields(results) }
    return { ...calculation, names: new Set(calculation.parameters.map((parameter) => parameter.name)) }
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

// What a call of some hundred nanoseconds takes counts here: loops by index, no closure, and the memory looked up once.
function evaluate(calculation, given) {
  const { table } = calculator()
  const { place, results } = calculation
  const faults = []
  const values = read(calculation, given, number, faults)
  const address = faults.length === 0 ? table.evaluate(place, handOver(values)) : refuseAll(calculation, values, faults)

  const found = {}
  const numbers = memory()
  const first = address / BYTES
  let list = first + results.length
  let hasWords = false
  for (let index = 0; index < results.length; index += 1) {
    const { name, kind } = results[index]
    const result = numbers[first + index]
    found[name] = kind === 'list' ? Array.from(numbers.subarray(list, (list += result))) : orNull(result)
    if (kind === 'word') hasWords = true
  }
  // Last: it may replace the memory.
  if (hasWords) for (const { name, kind } of results) if (kind === 'word') found[name] = word(found[name])
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

/** Throws the faults, and those that the module finds. */
const refuseAll = ({ place }, values, faults) =>
  withAll(faults, () => calculator().table.evaluate(place, handOver(values)))

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
function read(calculation, given = {}, readNumber, faults) {
  const { name, parameters, names } = calculation
  if (typeof given !== 'object' || given === null)
    refuse('wrong-type', '', `The parameters of "${name}" are not an object.`, 'Give an object with them by name.')
  const values = new Array(parameters.length)
  for (let index = 0; index < parameters.length; index += 1) {
    const parameter = parameters[index]
    const value = given[parameter.name]
    values[index] = value === undefined ? value : readOne(parameter, value, readNumber, faults)
  }
  for (const key of Object.keys(given)) if (!names.has(key)) unknown(key, parameters, faults)
  return values
}

function readOne({ name, kind }, value, readNumber, faults) {
  if (kind === 'number') return readNumber(value)
  if (kind === 'text') return typeof value === 'string' ? short(`/${name}`, value) : NO_NUMBER
  return list(`/${name}`, value, Number(kind), faults)
}

function unknown(key, parameters, faults) {
  const known = parameters.map(({ name }) => name).join(', ')
  const path = `/${key.replaceAll('~', '~0').replaceAll('/', '~1')}`
  faults.push(fault('unknown-field', path, `There is no parameter "${key}".`, `Known: ${known}.`))
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
  for (let index = 0; index < values.length; index += 1) {
    const value = values[index]
    if (typeof value !== 'object') continue
    size += value instanceof Column ? count : value.length
  }
  if (size > room) {
    start = calculator().table.room(size) / BYTES
    room = size
  }
  const numbers = memory()
  let texts = ''
  let place = start
  let next = start + 2 * values.length
  for (let index = 0; index < values.length; index += 1, place += 2) {
    const value = values[index]
    if (value === undefined) {
      numbers[place] = OMITTED
    } else if (typeof value === 'number') {
      numbers[place] = NUMBER
      numbers[place + 1] = value
    } else if (typeof value === 'string') {
      numbers[place] = TEXT
      numbers[place + 1] = value.length
      texts += value + '\n'
    } else {
      const isColumn = value instanceof Column
      const list = isColumn ? value.numbers.subarray(from, from + count) : value
      numbers[place] = isColumn ? COLUMN : LIST
      numbers[place + 1] = isColumn ? 0 : list.length
      numbers.set(list, next)
      next += list.length
    }
  }
  return texts
}

let numbers = new Float64Array()

/** The memory of the module as numbers. Growing replaces it, and empties the one before. */
function memory() {
  if (numbers.length === 0) numbers = new Float64Array(calculator().memory.buffer)
  return numbers
}

/** Words by their number in the module. */
const words = []

const word = (index) => (index === null ? null : (words[index] ??= calculator().table.word(index)))

/** An absent result is NaN in the module. */
const orNull = (number) => (Number.isNaN(number) ? null : number)
