// The formulas of the README, as they are written there.
import assert from 'node:assert/strict'
import { readFileSync } from 'node:fs'
import { test } from 'node:test'

import { spreadsheet } from './host.mjs'

const text = readFileSync(new URL('../README.md', import.meta.url), 'utf8')
const [, block] = text.match(/^```text readme\n([^]*?)^```$/m)
const lines = block.trimEnd().split('\n')

/** The arguments of a formula: numbers, texts and constant arrays. */
function constants(text) {
  const token = /"[^"]*"|\{[^}]*\}|[^,]+/g
  const value = (token) => {
    if (token.startsWith('{')) {
      const rows = token.slice(1, -1).split(';')
      return rows.map((row) => row.split(',').map(value))
    }
    return JSON.parse(token)
  }
  return (text.match(token) ?? []).map(value)
}

/** As a sheet shows it: numbers with 15 digits. */
const shown = (cell) => (typeof cell === 'number' ? String(Number(cell.toPrecision(15))) : (cell.error ?? cell))

test('the formulas of the README give what it says', async () => {
  const { formula } = spreadsheet()
  assert.ok(lines.length >= 10)
  for (const line of lines) {
    const [, name, given, wanted] = line.match(/^=POUR\.([A-Z_.]+)\((.*)\) *\| (.*)$/)
    const found = await formula(name, ...constants(given))
    const rows = Array.isArray(found) ? found : [[found]]
    assert.equal(rows.map((row) => row.map(shown).join(' ; ')).join(' / '), wanted, line)
  }
})
