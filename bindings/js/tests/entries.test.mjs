// Both entries of the installed package in one program.
import assert from 'node:assert/strict'
import { test } from 'node:test'

import * as whole from 'pourwright'
import * as small from 'pourwright/scalar'
import { refused } from './support.mjs'

test('the small one has everything but documents', () => {
  const documents = new Set(['Book', 'Plan', 'answerLines', 'calculate'])
  assert.deepEqual(
    Object.keys(small),
    Object.keys(whole).filter((name) => !documents.has(name)),
  )
})

test('a program can start with the small one, and load the whole one later', async () => {
  await small.default()
  assert.equal(whole.convert({ amount: '1 cup', to: 'mL' }).value, 236.5882365)
  assert.equal(refused(() => whole.calculate('{}')).code, 'not-ready')
  await whole.default()
  assert.equal(whole.calculate({ calculate: 'convert', amount: '1 cup', to: 'mL' }).value, 236.5882365)
  assert.equal(small.convert({ amount: '1 cup', to: 'mL' }).value, 236.5882365)
  assert.equal(small.PourwrightError, whole.PourwrightError)
})
