// Cells as the spreadsheet hands them over: an argument is one cell, or a range as rows of cells.
import { fault } from '../../js/src/error.js'

/** Whether nothing is given: the argument is omitted, or its cell is empty or has spaces only. */
export const isEmpty = (cell) =>
  cell === undefined || cell === null || cell === '' || (typeof cell === 'string' && cell.trim() === '')

/** An argument as rows of cells. */
export const range = (argument) => (Array.isArray(argument) ? argument : [[argument]])

/** Whether a range has more than one cell. */
export const isMany = (cells) => cells.length > 1 || cells[0].length > 1

/** The cell of a range at a place of the common size, which may be larger. */
export const cellAt = (cells, row, column) => {
  const found = cells[cells.length === 1 ? 0 : row]
  return found[found.length === 1 ? 0 : column]
}

/** Whether a cell is a unit, or empty. An amount has a digit, a unit that is in a cell of its own has none. */
export const isUnit = (cell) => isEmpty(cell) || (typeof cell === 'string' && !/\p{Number}/u.test(cell))

/** Whether a range is a column of numbers with a column of units behind it. */
export const hasUnits = (cells) =>
  cells[0].length === 2 && cells.every(([, unit]) => isUnit(unit)) && cells.some(([, unit]) => !isEmpty(unit))

/** The amount of two cells, a number and its unit, as a person writes it. */
export const joined = (number, unit) => (isEmpty(number) && isEmpty(unit) ? '' : `${number ?? ''} ${unit ?? ''}`.trim())

/**
 * The size that ranges have together, as `{ rows, columns }`: of each the same number, or one, which counts for all. The ranges
 * that do not fit are faults.
 */
export function commonSize(parameters, ranges, faults) {
  const size = { rows: 1, columns: 1 }
  for (const [index, { path, kind }] of parameters.entries()) {
    if (kind === 'list') continue
    const own = { rows: ranges[index].length, columns: ranges[index][0].length }
    for (const dimension of ['rows', 'columns']) {
      const [before, now] = [size[dimension], own[dimension]]
      if (before === 1) size[dimension] = now
      else if (now !== 1 && now !== before) {
        const message = `It has ${now} ${dimension}, a range before it ${before}.`
        faults.push(fault('unequal-columns', path, message, 'Give ranges of the same size, or one cell for all.'))
      }
    }
  }
  return size
}
