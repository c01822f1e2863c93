// @ts-check
// The functions of the spreadsheet: each takes cells and ranges, and gives a range.
import module from '../../js/build/pourwright_scalar_bg.wasm'
import init from '../../js/src/scalar-web.js'
import { fault } from '../../js/src/error.js'
import { calculate, calculations } from './calculate.js'
import { cellAt, commonSize, isEmpty, isMany, range } from './cells.js'

/** Until the module is compiled, calls wait. */
let isReady = false
let failure
const starting = init(module).then(
  () => (isReady = true),
  (error) => (failure = error),
)

/** Makes `work` known to the spreadsheet. Its last argument is one that the spreadsheet adds. */
function associate(name, work) {
  const call = (...given) => {
    if (isReady) return work(...given)
    const message = `The library could not be loaded: ${failure.message}`
    throw new CustomFunctions.Error(CustomFunctions.ErrorCode.notAvailable, message)
  }
  // An id has no underscores.
  CustomFunctions.associate(name.replaceAll('_', '.'), (...given) =>
    isReady ? work(...given) : starting.then(() => call(...given)),
  )
}

/** Faults as the error of a cell; its text has all of them, one a line. */
const cellError = (faults) => new CustomFunctions.Error(CustomFunctions.ErrorCode.invalidValue, textOf(faults))

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
  const ranges = parameters.map((_, index) => range(given[index]))
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

/** Answers to a call. A single refusal is thrown. */
function called(calculation, given, width, shown) {
  const found = answers(calculation, given, width, shown, cellError)
  const [[first]] = found
  if (found.length === 1 && first instanceof CustomFunctions.Error) throw first
  return found
}

/** A result as a cell. */
function cell(result) {
  if (result === null) return ''
  return Array.isArray(result) ? result.join(', ') : result
}

for (const calculation of calculations.values()) {
  const { name, results } = calculation
  const [first] = results
  associate(name, (...given) => called(calculation, given, 1, (found, line) => line.push(cell(found[first]))))
  if (results.length === 1) continue
  const all = (found, line) => results.forEach((result) => line.push(cell(found[result])))
  associate(`${name}.ALL`, (...given) => called(calculation, given, results.length, all))
}

associate('WHY', (name, given) => {
  const calculation = named(name)
  const { parameters } = calculation
  if (given.length > parameters.length) {
    const message = `${calculation.name} takes ${parameters.length} arguments, not ${given.length}.`
    const help = `Known: ${parameters.map(({ name }) => name).join(', ')}.`
    throw cellError([fault('unknown-field', '/arguments', message, help)])
  }
  return answers(calculation, given, 1, (_, line) => line.push(''), textOf)
})

associate('RESULTS', (name) => [named(name).results])

/** The calculation of a function, by its name with or without what is before and after it. */
function named(name) {
  const short = name.trim().toUpperCase()
  const found = calculations.get(short.replace(/^POUR\./, '').replace(/\.ALL$/, ''))
  if (found) return found
  const help = `Known: ${[...calculations.keys()].join(', ')}.`
  throw cellError([fault('unknown-word', '/name', `There is no function "${name}".`, help)])
}
