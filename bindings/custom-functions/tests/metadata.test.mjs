// The metadata against the maker's own checker, which reads functions in TypeScript, checks them and writes their metadata: of
// functions that are declared as the metadata say, it must write the same.
import assert from 'node:assert/strict'
import { createRequire } from 'node:module'
import { test } from 'node:test'

import { metadata } from './host.mjs'

const { parseTree } = createRequire(import.meta.url)('custom-functions-metadata/lib/parseTree.js')

/** The functions and words of the metadata as a program. */
function program() {
  const words = metadata.enums.map(
    ({ id, type, values }) =>
      `/** @customenum {${type}} */\nenum ${id} {\n${values.map(({ name, stringValue }) => `  "${name}" = "${stringValue}",`).join('\n')}\n}\n`,
  )
  const functions = metadata.functions.map(({ id, name, description, parameters, result }, index) => {
    const typed = ({ type = 'any', customEnumId, dimensionality, repeating }) =>
      `${customEnumId ?? type}${dimensionality === 'matrix' ? '[][]' : ''}${repeating ? '[]' : ''}`
    const taken = parameters.map((each) => `${each.name}${each.optional ? '?' : ''}: ${typed(each)}`)
    const described = parameters.map((each) => ` * @param ${each.name} ${each.description}\n`)
    return `/**\n * ${description}\n * @customfunction ${id} ${name}\n${described.join('')} */\nfunction f${index}(${taken.join(', ')}): ${typed(result)} { return [] }\n`
  })
  return [...words, ...functions].join('')
}

test('the checker finds no fault, and writes the same metadata', () => {
  const { functions, enums, extras } = parseTree(program(), 'functions.ts')
  assert.deepEqual(
    extras.flatMap(({ errors }) => errors),
    [],
  )
  assert.deepEqual(functions, metadata.functions)
  // It leaves the names of words in quotes, and adds an empty text to each.
  const plain = enums.map(({ values, ...other }) => {
    return { ...other, values: values.map(({ name, stringValue }) => ({ name: JSON.parse(name), stringValue })) }
  })
  assert.deepEqual(plain, metadata.enums)
})

test('the checker does find faults', () => {
  const declared = (tag, name) => `/**\n * @customfunction ${tag}\n */\nfunction ${name}() {}\n`
  const wrong = [declared('1A 1A', 'a'), declared('AB AB', 'a') + declared('AB AC', 'b')]
  for (const program of wrong) {
    const errors = parseTree(program, 'functions.ts').extras.flatMap(({ errors }) => errors)
    assert.equal(errors.length, 1, program)
  }
})

test('names and ids are of the documented form', () => {
  const [names, ids] = [metadata.functions.map(({ name }) => name), metadata.functions.map(({ id }) => id)]
  for (const all of [names, ids]) assert.equal(new Set(all).size, all.length)
  for (const id of ids) assert.match(id, /^[A-Z][A-Z0-9.]{2,127}$/)
  for (const name of names) {
    assert.match(name, /^[A-Z][A-Z0-9._]{2,127}$/)
    // No cell of a sheet, in either way to write one.
    assert.doesNotMatch(name, /^[A-Z]{1,3}[0-9]+$|^R[0-9]*C[0-9]*$/)
  }
  for (const { name, description, parameters } of metadata.functions) {
    assert.ok(description.length > 10, name)
    for (const parameter of parameters) assert.ok(parameter.description.length > 5, `${name} ${parameter.name}`)
    assert.ok(parameters.length <= 60 && new Set(parameters.map(({ name }) => name)).size === parameters.length, name)
  }
})
