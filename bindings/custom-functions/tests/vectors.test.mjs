// Every call of tests/vectors, as a formula. Where POURWRIGHT_ANSWERS names a folder, the answers are written there: tests/doors.
import assert from 'node:assert/strict'
import { readFileSync, writeFileSync } from 'node:fs'
import { test } from 'node:test'

import { CALCULATIONS } from '../src/calculations.js'
import { metadata, spreadsheet } from './host.mjs'

const read = (path) => readFileSync(new URL(`../../../${path}`, import.meta.url), 'utf8')
const table = new Map(JSON.parse(read('core/schema/calculations.json')).calculations.map((each) => [each.name, each]))
const calls = read('tests/vectors/calls.jsonl').trimEnd().split('\n')
const { formula } = spreadsheet()

/** The cells of a value; none where cells cannot hold it. `mark` is what the add-in's table has of the parameter. */
function cells({ kind }, mark, value) {
  if (value === '' || (Array.isArray(value) && value.length === 0)) return undefined
  if (value === 0 && mark.endsWith(' ?')) return mark === '1 ?' ? '0' : `0 ${mark.slice(0, -2)}`
  if (kind !== 'list' && kind !== 'rows') return typeof value === 'number' || isText(kind) ? value : undefined
  const rows = kind === 'rows' ? value : value.map((number) => [number])
  return rows.flat().every((number) => typeof number === 'number') ? rows : undefined
}

const isText = (kind) => kind === 'text' || kind === 'word'

/** A result from its cells, which are taken from the row. */
function result({ kind }, width, row) {
  const cells = row.splice(0, width)
  if (kind === 'list') return cells
  return cells[0].error === '#N/A' ? null : cells[0]
}

/** The faults of an error's text: each line has the place at its start and the code at its end. */
function faults(text, parameters, names) {
  return text.split('\n').map((line) => {
    const [code] = line.match(/(?<=\[)[a-z-]+(?=\]$)/)
    const [, name, ...places] = line.match(/^(\w+)(?:, (?:row|cell) (\d+))?(?:, column (\d+))?: /) ?? []
    const index = names.indexOf(name)
    if (index === -1) return { code, path: '' }
    const below = places.filter(Boolean).map((place) => Number(place) - 1)
    return { code, path: ['', parameters[index].field, ...below].join('/') }
  })
}

async function answer({ call, given }) {
  const { parameters, results } = table.get(call)
  const [, ofParameters, ofResults] = CALCULATIONS[call.toUpperCase()].map((part) => part.split(', '))
  const marks = ofParameters.map((parameter) => parameter.split(': ')[1])
  const widths = ofResults.map((result) => Number(result.split(': ')[1] ?? 1))
  const taken = parameters.map((parameter, index) =>
    parameter.field in given ? cells(parameter, marks[index], given[parameter.field]) : null,
  )
  if (taken.includes(undefined))
    return { not_carried: 'no cell holds it: a number that is not finite, an empty text or list' }
  const name = call.toUpperCase() + (results.length > 1 ? '.ALL' : '')
  const found = await formula(name, ...taken.map((each) => each ?? undefined))
  const row = Array.isArray(found) ? found[0] : [found]
  if (row[0].error === '#VALUE!') {
    const names = metadata.functions.find((each) => each.name === name).parameters.map(({ name }) => name)
    return { faults: faults(row[0].text, parameters, names) }
  }
  return { results: Object.fromEntries(results.map((each, index) => [each.field, result(each, widths[index], row)])) }
}

test('the vectors', async () => {
  const answers = []
  let compared = 0
  for (const line of calls) {
    const call = JSON.parse(line)
    const found = await answer(call)
    answers.push(found)
    if (found.not_carried) continue
    compared += 1
    assert.deepStrictEqual(found, call.results ? { results: call.results } : { faults: call.faults }, line)
  }
  assert.ok(compared > 0.6 * calls.length && compared > 600, `${compared} of ${calls.length} were compared`)
  const folder = process.env.POURWRIGHT_ANSWERS
  if (folder) {
    // JSON.stringify writes -0 as 0.
    const text = (value) =>
      JSON.stringify(value, (_, item) => (Object.is(item, -0) ? '-0.0' : item)).replaceAll('"-0.0"', '-0.0')
    writeFileSync(`${folder}/custom-functions.calls.jsonl`, answers.map((each) => `${text(each)}\n`).join(''))
  }
})
