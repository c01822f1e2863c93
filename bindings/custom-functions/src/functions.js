// @ts-check
// The functions of the spreadsheet: each takes cells and ranges, and gives a range.
import module from '../../js/build/pourwright_scalar_bg.wasm'
import init from '../../js/src/scalar-web.js'
import { fault } from '../../js/src/error.js'
import { calculate, calculations, takesAmount } from './calculate.js'
import { cellAt, commonSize, hasUnits, isEmpty, isMany, joined, range } from './cells.js'

/** Until the module is compiled, calls wait. */
let isReady = false
let failure
const starting = init(module).then(
  () => (isReady = true),
  (error) => (failure = error),
)

/** Makes `work` known to the spreadsheet. */
function associate(name, work) {
  const afterStart = (given) => {
    if (isReady) return work(...given)
    throw new CustomFunctions.Error(NOT_KNOWN, `The library could not be loaded: ${failure.message}`)
  }
  const call = (...given) => (isReady ? work(...given) : starting.then(() => afterStart(given)))
  // An id has no underscores.
  CustomFunctions.associate(name.replaceAll('_', '.'), call)
}

const { invalidValue: REFUSED, notAvailable: NOT_KNOWN } = CustomFunctions.ErrorCode

/** Faults as the error of a cell; its text has all of them, one a line. */
const cellError = (faults) => new CustomFunctions.Error(REFUSED, textOf(faults))

const textOf = (faults) =>
  faults.map(({ path, message, help, code }) => `${place(path)}${message} ${help} [${code}]`).join('\n')

/** Where a fault is: `parts, row 2, column 1: `. Rows, columns and cells of a range are counted from 1. */
function place(path) {
  if (path === '') return ''
  const [name, row, column] = path.slice(1).split('/')
  if (row === undefined) return `${name}: `
  const at = Number(row) + 1
  return column === undefined ? `${name}, cell ${at}: ` : `${name}, row ${at}, column ${Number(column) + 1}: `
}

/**
 * The range of answers: for each place of the arguments `width` cells, which `shown` makes of the results and `refused` of faults.
 */
function answers(calculation, given, width, shown, refused) {
  const { name, parameters } = calculation
  const ranges = parameters.map((parameter, index) => rangeFor(parameter, given[index]))
  const faults = []
  const { rows, columns } = commonSize(parameters, ranges, faults)
  if (columns > 1 && width > 1) {
    const help = `Give columns or single cells, or call POUR.${name}.`
    faults.push(
      fault('unequal-columns', '', 'All results take a row, and a range here has more than one column.', help),
    )
  }
  if (faults.length > 0) return [[refused(faults)]]
  const isList = parameters.map(({ kind }) => kind === 'list')
  const many = ranges.filter((cells, index) => !isList[index] && isMany(cells))
  const found = []
  for (let row = 0; row < rows; row += 1) {
    const line = []
    for (let column = 0; column < columns; column += 1) {
      // An empty row of a table gives an empty row.
      if (many.length > 0 && many.every((cells) => isEmpty(cellAt(cells, row, column)))) {
        line.push(...Array(width).fill(''))
        continue
      }
      const cells = ranges.map((cells, index) => (isList[index] ? cells : cellAt(cells, row, column)))
      const results = calculate(calculation, cells)
      if (results.faults) line.push(...Array(width).fill(refused(results.faults)))
      else shown(results, line)
    }
    found.push(line)
  }
  return found
}

/** An argument as a range with a cell for each value: a unit in a cell of its own is put behind its number. */
function rangeFor(parameter, given) {
  const cells = range(given)
  if (!takesAmount(parameter) || !hasUnits(cells)) return cells
  return cells.map(([number, unit]) => [joined(number, unit)])
}

/** Answers to a call. The refusal of the only one is thrown. */
function called(calculation, given, width, shown) {
  const found = answers(calculation, given, width, shown, cellError)
  const [line] = found
  const isOne = found.length === 1 && line.length <= width
  if (isOne && line[0] instanceof CustomFunctions.Error && line[0].code === REFUSED) throw line[0]
  return found
}

/** Adds the cells of a result. */
function show(result, line) {
  if (Array.isArray(result)) line.push(...result)
  else line.push(result ?? new CustomFunctions.Error(NOT_KNOWN, 'It is not known, or does not apply.'))
}

for (const calculation of calculations.values()) {
  const { name, results, width } = calculation
  const first = results[0].name
  associate(name, (...given) => called(calculation, given, 1, (found, line) => show(found[first], line)))
  if (results.length === 1) continue
  const all = (found, line) => results.forEach(({ name }) => show(found[name], line))
  associate(`${name}.ALL`, (...given) => called(calculation, given, width, all))
}

associate('WHY', (name, repeated) => {
  const calculation = named(name)
  const { parameters } = calculation
  const given = repeated ?? []
  if (given.length > parameters.length) {
    const message = `${calculation.name} takes ${parameters.length} arguments, not ${given.length}.`
    const help = `Known: ${parameters.map(({ name }) => name).join(', ')}.`
    throw cellError([fault('unknown-field', '/arguments', message, help)])
  }
  return answers(calculation, given, 1, (_, line) => line.push(''), textOf)
})

associate('RESULTS', (name) => {
  const numbered = (name, cells) => Array.from({ length: cells }, (_, index) => `${name} ${index + 1}`)
  return [named(name).results.flatMap(({ name, cells }) => (cells === 1 ? name : numbered(name, cells)))]
})

/** The calculation of a function, by its name with or without what is before and after it. */
function named(name) {
  const short = name.trim().toUpperCase()
  const found = calculations.get(short.replace(/^POUR\./, '').replace(/\.ALL$/, ''))
  if (found) return found
  const help = `Known: ${[...calculations.keys()].join(', ')}.`
  throw cellError([fault('unknown-word', '/name', `There is no function "${name}".`, help)])
}
