// A trap would leave the instance useless: nothing that the functions on plain numbers are given makes one. They are those
// of the entry of the installed package that POURWRIGHT_ENTRY names.
import assert from 'node:assert/strict'
import { test } from 'node:test'

import { GOOD, longTexts, oddNumbers, oddTexts } from './calls.mjs'
import { refused, survivesWith } from './support.mjs'

const { default: init, ...pourwright } = await import(process.env.POURWRIGHT_ENTRY)
await init()
const survives = survivesWith(pourwright.convert)

const survivesAll = (calls) => {
  for (const [name, ...given] of calls) {
    survives(() => pourwright[name](...given), `${name} ${JSON.stringify(given).slice(0, 200)}`)
  }
}

test('what the odd calls are made from is answered', () => {
  for (const [name, parameters] of Object.entries(GOOD)) {
    assert.ok(
      survives(() => pourwright[name](parameters), name),
      name,
    )
  }
})
test('a number that cannot be is told of its parameter, and the stack of its caller', () => {
  for (const [name, parameters] of Object.entries(GOOD)) {
    for (const parameter of Object.keys(parameters).filter((each) => typeof parameters[each] === 'number')) {
      for (const number of [NaN, Infinity, -Infinity, -1e9]) {
        const error = refused(() => pourwright[name]({ ...parameters, [parameter]: number }))
        const what = `${name} ${parameter} ${number}: ${error.message}`
        assert.equal(error.path, `/${parameter}`, what)
        assert.ok(error.stack.includes('scalar-hostile.test.mjs'), what)
      }
    }
  }
})
test('odd numbers', () => survivesAll(oddNumbers()))
test('odd texts', () => survivesAll(oddTexts()))
test('long texts', () => survivesAll(longTexts()))
