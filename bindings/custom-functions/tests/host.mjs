// What a spreadsheet does with an add-in, as the form of its functions is documented: it runs the script, which associates functions
// with the ids of the metadata, and calls them with the arguments of a formula.
import assert from 'node:assert/strict'
import { readFileSync } from 'node:fs'
import vm from 'node:vm'

const folder = new URL(`file://${process.env.POURWRIGHT_ADD_IN}/`)
export const read = (name) => readFileSync(new URL(name, folder), 'utf8')
export const metadata = JSON.parse(read('functions.json'))

/** The error of a cell. */
class CellError {
  constructor(code, message) {
    this.code = code
    this.message = message
  }
}

/** A spreadsheet with the add-in, in a world of its own with these globals of a browser. */
export function spreadsheet(globals = { WebAssembly, TextDecoder, TextEncoder, atob }) {
  const associated = new Map()
  const CustomFunctions = {
    associate(id, work) {
      assert.ok(!associated.has(id), `${id} is associated twice`)
      associated.set(id, work)
    },
    Error: CellError,
    ErrorCode: { invalidValue: '#VALUE!', notAvailable: '#N/A' },
  }
  vm.runInNewContext(read('functions.js'), { ...globals, CustomFunctions, performance })
  const functions = new Map(metadata.functions.map((each) => [each.name, each]))

  /** The answer to `=POUR.NAME(given...)`, which may be a promise. A range is a list of rows; an omitted argument is undefined. */
  function call(name, ...given) {
    const { id, parameters } = functions.get(name)
    const taken = parameters.map((parameter, index) =>
      parameter.repeating ? given.slice(index).map((each) => passed(parameter, each)) : passed(parameter, given[index]),
    )
    return associated.get(id)(...taken, { functionName: id })
  }

  /** The cells that a formula fills, as a single value where it fills one; `{ error, text }` where it refuses. */
  async function formula(name, ...given) {
    let answer
    try {
      answer = await call(name, ...given)
    } catch (error) {
      return cell(error)
    }
    assert.ok(Array.isArray(answer) && answer.length > 0, `${name} gives no range`)
    const rows = Array.from(answer, (row) => Array.from(row, cell))
    for (const row of rows) assert.equal(row.length, rows[0].length, `the rows of ${name} differ in length`)
    return rows.length === 1 && rows[0].length === 1 ? rows[0][0] : rows
  }

  return { associated, call, formula }
}

/** An argument as a function gets it: an omitted one is null, a text where the metadata ask for it, a range of cells. */
function passed({ type, dimensionality }, given) {
  if (given === undefined) return null
  const typed = (value) => (type === 'string' && value !== null ? String(value) : value)
  if (dimensionality !== 'matrix') return typed(given)
  return Array.isArray(given) ? given.map((row) => row.map(typed)) : [[typed(given)]]
}

/** What a cell can show. */
function cell(value) {
  if (value instanceof CellError) return { error: value.code, text: value.message }
  const isShown = typeof value === 'string' || (typeof value === 'number' && Number.isFinite(value))
  assert.ok(isShown, `no cell can show ${value instanceof Error ? value.stack : value}`)
  return value
}
