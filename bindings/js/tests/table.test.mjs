// The calculations on plain numbers, of the package's entry that POURWRIGHT_ENTRY names: the results and errors of every
// calculation of the table.
import assert from 'node:assert/strict'
import { describe, test } from 'node:test'

import { answered, refused, survivesWith } from './support.mjs'
import { TABLE, exampleWith, isList, isNumber, longTexts, native, oddNumbers, oddTexts, randomCalls, randomNumbers } from './table.mjs' // prettier-ignore

const { default: init, ...pourwright } = await import(process.env.POURWRIGHT_ENTRY)
const { columns } = pourwright

/** The code of the fault at `path` that the call throws. */
function codeAt(path, call) {
  const { faults } = refused(call)
  return faults.find((fault) => fault.path === path)?.code ?? faults
}

test('before it is loaded every call throws not-ready', async () => {
  assert.equal(refused(() => pourwright.convert({ amount: '1 cup', to: 'mL' })).code, 'not-ready')
  assert.equal(refused(() => columns.massOfVolume({})).code, 'not-ready')
  await Promise.all([init(), init()])
  await init()
})

describe('each calculation', () => {
  test('there is a function for each, and no other', () => {
    const others = new Set(['Book', 'Plan', 'answerLines', 'calculate', 'PourwrightError', 'columns', 'initSync'])
    const names = Object.keys(pourwright).filter((name) => !others.has(name))
    assert.deepEqual(names.sort(), TABLE.map(({ name }) => name).sort())
    assert.ok(names.length > 40)
  })

  test('gives the answer of its example', () => {
    const answers = native(TABLE.map(({ name, example }) => ({ evaluate: name, given: example.given })))
    for (const [index, { name, example }] of TABLE.entries()) {
      const found = pourwright[name](example.given)
      assert.deepStrictEqual(found, answers[index].result, name)
      // It is written as a person has it, without what rounding does to the last digits.
      const shown = (result) => (typeof result === 'number' ? Number(result.toPrecision(9)) : result)
      for (const [key, wanted] of Object.entries(example.results))
        assert.deepEqual(shown(found[key]), shown(wanted), name)
    }
  })

  test('gives the bits of the native library, or its faults', () => {
    const random = randomNumbers(20270302)
    const calls = TABLE.flatMap((calculation) =>
      [...randomCalls(calculation, 200, random)].map((given) => ({ evaluate: calculation.name, given })),
    )
    const answeredOf = new Map(TABLE.map(({ name }) => [name, 0]))
    for (const [index, answer] of native(calls).entries()) {
      const { evaluate, given } = calls[index]
      assert.deepStrictEqual(
        answered(() => pourwright[evaluate](given)),
        answer,
        JSON.stringify(calls[index]),
      )
      if (answer.result) answeredOf.set(evaluate, answeredOf.get(evaluate) + 1)
    }
    for (const [name, count] of answeredOf) assert.ok(count >= 10, `of ${name} only ${count} were answered`)
  })

  test('refuses a call without all that it requires', () => {
    for (const { name, parameters } of TABLE) {
      const required = parameters.filter(({ optional }) => !optional)
      for (const given of [{}, undefined]) {
        const { faults } = refused(() => pourwright[name](given))
        assert.deepEqual(
          faults.map(({ code, path }) => [code, path]),
          required.map(({ name }) => ['missing-field', `/${name}`]),
        )
      }
    }
  })

  test('refuses values of another type', () => {
    for (const calculation of TABLE) {
      const { name, parameters } = calculation
      for (const parameter of parameters) {
        const path = `/${parameter.name}`
        const call = (value) => () => pourwright[name](exampleWith(calculation, { [parameter.name]: value }))
        const others = [null, true, {}, 5n, Symbol('x'), () => 1, new Date(0)]
        if (isNumber(parameter)) others.push('5', [5], new Float64Array(1), new Number(5))
        else if (isList(parameter)) others.push('5', 5, '', [[]], ['5'], [null])
        else others.push(5, ['1 cup'], new String('1 cup'))
        for (const value of others) {
          const found = refused(call(value)).faults.filter((fault) => fault.path.startsWith(path))
          const codes = new Set(found.map(({ code }) => code))
          assert.deepEqual([...codes], ['wrong-type'], `${name}${path}: ${typeof value}`)
        }
        if (parameter.kind === 'word') assert.equal(codeAt(path, call('\u0000 x')), 'unknown-word')
        if (parameter.kind === 'count') assert.equal(codeAt(path, call(1.5)), 'wrong-type')
      }
      for (const given of [null, 5, 'x', true]) {
        const error = refused(() => pourwright[name](given))
        assert.deepEqual([error.code, error.path], ['wrong-type', ''])
      }
    }
  })

  test('refuses each number that is not finite or not in its range, and points at the caller', () => {
    for (const calculation of TABLE) {
      const { name, parameters } = calculation
      for (const { name: parameter, range } of parameters.filter(isNumber)) {
        const refuses = (number, ...wanted) => {
          const call = () => pourwright[name](exampleWith(calculation, { [parameter]: number }))
          const error = refused(call)
          const found = error.faults.find(({ code, path }) => wanted.includes(code) && path === `/${parameter}`)
          // A number that goes with another, or not with another, is refused for that.
          const goes = error.faults.some(({ code }) => code === 'needs-other' || code === 'excludes-other')
          assert.ok(found || goes, `${name} ${parameter} ${number}: ${JSON.stringify(error.faults)}`)
          assert.ok(error.stack.includes('table.test.mjs'))
        }
        for (const number of [NaN, Infinity, -Infinity]) refuses(number, 'not-finite')
        if (!range) continue
        const size = Math.max(Math.abs(range.least), Math.abs(range.most))
        const outside = [range.least - 1e-9 * size - 1e-9, range.most + 1e-9 * size + 1e-9, -1e300, 1e300]
        if (range.above) outside.push(range.least)
        if (range.below) outside.push(range.most)
        // A count with a fraction is of another type.
        for (const number of outside) refuses(number, 'out-of-range', ...(range.whole ? ['wrong-type'] : []))
      }
    }
  })

  test('refuses names that it does not know, with all other faults', () => {
    for (const calculation of TABLE) {
      const { name, parameters } = calculation
      const given = exampleWith(calculation, { 'no/such~name': 1 })
      const error = refused(() => pourwright[name](given))
      assert.deepEqual([error.code, error.path, error.faults.length], ['unknown-field', '/no~1such~0name', 1])
      for (const parameter of parameters) assert.ok(error.help.includes(parameter.name))
      const required = parameters.filter(({ optional }) => !optional)
      assert.equal(refused(() => pourwright[name]({ x: 1 })).faults.length, 1 + required.length)
    }
  })
})

test('lists have rows of the right length', () => {
  const { densityOfParts, benchMeasure } = pourwright
  for (const [call, ...paths] of [
    [() => densityOfParts({ parts: [[10, 1, 7]] }), '/parts/0'],
    [() => densityOfParts({ parts: [[10, 1], [5]] }), '/parts/1'],
    [() => densityOfParts({ parts: [[10, 1], 5, new Set([1, 2, 3])] }), '/parts/1', '/parts/2'],
    [() => densityOfParts({ parts: [[10, '1'], [undefined, 1]], voids: '1' }), '/parts/0/1', '/parts/1/0', '/voids'], // prettier-ignore
    [() => densityOfParts({ parts: '10' }), '/parts'],
    [() => benchMeasure({ massToMeasureG: 1, spoonsMl: [[5, 2.5], 1, '2'] }), '/spoonsMl/0', '/spoonsMl/2'],
  ]) {
    const { faults } = refused(call)
    assert.deepEqual(
      faults.map(({ code, path }) => [code, path]),
      paths.map((path) => ['wrong-type', path]),
    )
  }
  const parts = new Map([[100, 1], [100.5, 2]]) // prettier-ignore
  assert.deepEqual(
    densityOfParts({ parts }),
    densityOfParts({ parts: [...parts].map((pair) => Float64Array.from(pair)) }),
  )
  function* endless() {
    for (;;) yield 5
  }
  assert.equal(refused(() => benchMeasure({ massToMeasureG: 1, spoonsMl: endless() })).path, '/spoonsMl')
})

test('arguments may calculate while they are read', () => {
  const { massOfVolume } = pourwright
  const given = {
    get volumeMl() {
      return massOfVolume({ volumeMl: 250, densityGPerMl: 2 }).massG
    },
    densityGPerMl: 1,
  }
  assert.deepEqual(massOfVolume(given), { massG: 500 })
})

describe('columns', () => {
  const random = randomNumbers(7)

  test('give the bits of the single calls, row by row', () => {
    const rows = 1100 // more than the module calculates at once
    for (const name of Object.keys(columns)) {
      const calculation = TABLE.find((each) => each.name === name)
      const numbers = calculation.parameters.filter(isNumber)
      const [constant] = numbers.slice(1)
      const calls = [...randomCalls(calculation, rows, random)]
      // A value that is not a number is the same in all rows.
      const given = exampleWith(calculation, {})
      for (const { name, kind, optional } of numbers) {
        if (name === constant?.name || (optional && numbers.length > 1 && given[name] === undefined)) continue
        given[name] = Float64Array.from(calls, (call) => call[name] ?? calculation.example.given[name] ?? 0.5)
        given[name][7] = NaN
        if (kind === 'count') given[name] = given[name].map(Math.round)
      }
      const statuses = new Uint8Array(rows)
      const found = columns[name](given, statuses)
      for (let row = 0; row < rows; row += 1) {
        const single = Object.entries(given).map(([name, value]) => [
          name,
          value instanceof Float64Array ? value[row] : value,
        ])
        const { result, faults } = answered(() => pourwright[name](Object.fromEntries(single)))
        const status = result ? 0 : faults.some(({ code }) => code === 'not-finite') ? 2 : 6
        assert.equal(statuses[row], status, `${name} row ${row}`)
        for (const [key, column] of Object.entries(found)) {
          const isWord = Array.isArray(column)
          assert.ok(Object.is(column[row], result?.[key] ?? (isWord ? null : NaN)), `${name} ${key} row ${row}`)
        }
      }
      assert.equal(statuses[7], 2)
      assert.ok(statuses.filter((status) => status === 0).length > rows / 20, `of ${name} few rows are answered`)
      assert.deepEqual(columns[name](given), found)
    }
  })

  test('there are columns of each calculation that takes a number and gives no list', () => {
    const wanted = TABLE.filter(
      ({ parameters, example }) => parameters.some(isNumber) && !Object.values(example.results).some(Array.isArray),
    )
    assert.deepEqual(
      Object.keys(columns),
      wanted.map(({ name }) => name),
    )
  })

  test('of the wrong length or type are refused', () => {
    const { massOfVolume } = columns
    const volumeMl = Float64Array.of(1, 2, 3)
    for (const [given, statuses, ...wanted] of [
      [{ volumeMl: 1, densityGPerMl: 1 }, undefined, ['no-column', '']],
      [{ volumeMl, densityGPerMl: Float64Array.of(1) }, undefined, ['unequal-columns', '/densityGPerMl']],
      [{ volumeMl, densityGPerMl: 1 }, new Uint8Array(2), ['wrong-type', '']],
      [{ volumeMl, densityGPerMl: 1 }, [0, 0, 0], ['wrong-type', '']],
      [{ volumeMl, densityGPerMl: 1, mass: 1 }, undefined, ['unknown-field', '/mass']],
      [{ volumeMl }, undefined, ['missing-field', '/densityGPerMl']],
      [{ volumeMl, densityGPerMl: [1, 1, 1] }, undefined, ['wrong-type', '/densityGPerMl']],
      [undefined, undefined, ['no-column', ''], ['missing-field', '/volumeMl'], ['missing-field', '/densityGPerMl']],
      [{ volumeMl: new Float64Array() }, undefined, ['missing-field', '/densityGPerMl']],
      [{ volumeMl, density: 1 }, undefined, ['unknown-field', '/density'], ['missing-field', '/densityGPerMl']],
      [null, undefined, ['wrong-type', '']],
    ]) {
      const { faults } = refused(() => massOfVolume(given, statuses))
      assert.deepEqual(
        faults.map(({ code, path }) => [code, path]),
        wanted,
      )
    }
    assert.deepEqual(massOfVolume({ volumeMl: new Float64Array(), densityGPerMl: 1 }), { massG: new Float64Array() })
  })
})

// A trap would leave the instance useless: nothing that is given makes one.
describe('odd calls', () => {
  const survives = survivesWith(pourwright.convert)
  const survivesAll = (calls) => {
    for (const [name, given] of calls) {
      survives(() => pourwright[name](given), `${name} ${JSON.stringify(given).slice(0, 200)}`)
    }
  }
  test('odd numbers', () => survivesAll(oddNumbers()))
  test('odd texts', () => survivesAll(oddTexts()))
  test('long texts', () => survivesAll(longTexts()))
})
