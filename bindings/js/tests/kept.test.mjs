// What the fuzz targets of tests/fuzz have kept: the module answers each case as the native library does.
import assert from 'node:assert/strict'
import { readdirSync } from 'node:fs'
import { test } from 'node:test'

import init, { calculate } from 'pourwright'
import { answered, read, root } from './support.mjs'
import { native } from './table.mjs'

await init()

const REQUESTS = {
  amounts: ({ text }) => ({ calculate: 'convert', amount: text, to: 'mL' }),
  document: ({ document }) => document,
  plans: ({ book, orders }) => ({ calculate: 'plan', book, orders }),
}

for (const [target, requestOf] of Object.entries(REQUESTS)) {
  const folder = `tests/fuzz/corpus/${target}/`
  for (const name of readdirSync(new URL(folder, root))) {
    const request = requestOf(JSON.parse(read(folder + name)))
    // A text that is not JSON has no line of its own.
    if (request === undefined) continue
    test(`${target}/${name}`, () => {
      const [wanted] = native([request])
      assert.deepStrictEqual(
        answered(() => calculate(JSON.stringify(request))),
        wanted,
      )
    })
  }
}
