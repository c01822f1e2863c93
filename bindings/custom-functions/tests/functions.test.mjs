// Every function as a spreadsheet calls it.
import assert from 'node:assert/strict'
import { readFileSync } from 'node:fs'
import { describe, test } from 'node:test'

import init, * as pourwright from '../../js/src/scalar-node.js'
import { CALCULATIONS } from '../src/calculations.js'
import { metadata, spreadsheet } from './host.mjs'

await init()
const table = JSON.parse(readFileSync(new URL('../../../core/schema/calculations.json', import.meta.url))).calculations
const { associated, call, formula } = spreadsheet()

const NOT_KNOWN = { error: '#N/A', text: 'It is not known, or does not apply.' }

const nameOf = ({ name }) => name.toUpperCase()

/** Numbers of a list as the rows of a range. */
const rows = (numbers, width) =>
  Array.from({ length: numbers.length / width }, (_, row) => numbers.slice(row * width, (row + 1) * width))

/** How the table of the add-in marks each parameter. */
const marksOf = (name) => CALCULATIONS[name][1].split(', ').map((parameter) => parameter.split(': ')[1])

/** The arguments of an example as cells and ranges. */
const argumentsOf = ({ name, parameters, example }) =>
  example.arguments.map((value, index) => {
    if (Array.isArray(value)) return rows(value, parameters[index].columns.length)
    const [unit, zero] = marksOf(name.toUpperCase())[index].split(' ')
    if (value === 0 && zero === '?') return unit === '1' ? '0' : `0 ${unit}`
    return value ?? undefined
  })

/** What the package answers to the same call: the value of a cell for each result. */
function answer(name, given) {
  const [call, parameters] = CALCULATIONS[name]
  const names = parameters.split(', ').map((parameter) => parameter.split(': '))
  const values = names.map(([name, mark], index) => {
    const value = given[index]
    return [name, Array.isArray(value) && !mark.includes('|') ? value.flat() : value]
  })
  return Object.values(pourwright[call](Object.fromEntries(values))).flatMap((value) => value ?? NOT_KNOWN)
}

test('calls wait until the module is compiled, and are answered at once from then on', async () => {
  const waiting = call('CONVERT', '1 cup', 'mL')
  assert.equal(typeof waiting.then, 'function')
  assert.equal((await waiting)[0][0], 236.5882365)
  assert.equal(call('CONVERT', '1 cup', 'mL')[0][0], 236.5882365)
})

test('each function of the metadata is associated, and no other', () => {
  assert.deepEqual([...associated.keys()].sort(), metadata.functions.map(({ id }) => id).sort())
  for (const calculation of table) {
    const all = metadata.functions.some(({ name }) => name === `${nameOf(calculation)}.ALL`)
    assert.equal(all, calculation.results.length > 1, calculation.name)
  }
})

describe('each calculation', () => {
  for (const calculation of table) {
    const name = nameOf(calculation)
    const { parameters, results, example } = calculation
    const given = argumentsOf(calculation)

    test(`${name} gives its example`, async () => {
      const wanted = answer(name, given)
      assert.equal(await formula(name, ...given), wanted[0])
      if (results.length > 1) assert.deepEqual(await formula(`${name}.ALL`, ...given), [wanted])
      const shown = (value) => (typeof value === 'number' ? Number(value.toPrecision(9)) : (value ?? NOT_KNOWN))
      assert.deepEqual(wanted.map(shown), example.results.flat().map(shown))
      if (results.length > 1) {
        const [names] = await formula('RESULTS', `pour.${name.toLowerCase()}.all`)
        assert.equal(names.length, wanted.length)
        assert.deepEqual(
          [...new Set(names.map((name) => name.replace(/ [0-9]+$/, '')))],
          CALCULATIONS[name][2].split(', ').map((result) => result.replace(/: .*/, '')),
        )
      }
      assert.equal(await formula('WHY', name, ...given), '')
    })

    test(`${name} takes each number as an amount with its unit`, async () => {
      const wanted = await formula(name, ...given)
      for (const [index, parameter] of parameters.entries()) {
        const units = marksOf(name)
          [index].replace(/^list | \?$/g, '')
          .split(' | ')
        if (typeof given[index] === 'string' || given[index] === undefined) continue
        const amount = (value, column = 0) => (units[column] === '1' ? value : `${value} ${units[column]}`)
        const cells = (value, column = 0) => (units[column] === '1' ? [value] : [value, units[column]])
        const isList = Array.isArray(given[index])
        const others = isList
          ? [given[index].map((row) => row.map(amount)), given[index].map((row) => row.flatMap(cells))]
          : [amount(given[index])]
        // A unit of its own has no digit in it.
        if (!isList && !/[0-9]/.test(units[0])) others.push([cells(given[index])])
        for (const other of others) {
          const found = await formula(name, ...given.with(index, other))
          assert.deepEqual(found, wanted, `${parameter.name}: ${JSON.stringify(found)}`)
        }
      }
    })

    test(`${name} takes an empty cell as omitted`, async () => {
      for (const [index, parameter] of parameters.entries()) {
        const omitted = await formula(name, ...given.with(index, undefined))
        for (const empty of ['', '  ', [['']], [[null]]]) {
          assert.deepEqual(await formula(name, ...given.with(index, empty)), omitted, parameter.name)
        }
        if (parameter.optional) continue
        assert.equal(omitted.error, '#VALUE!')
        assert.ok(omitted.text.includes('[missing-field]'), omitted.text)
        assert.equal(await formula('WHY', name, ...given.with(index, undefined)), omitted.text)
      }
    })

    test(`${name} refuses cells of another type, and numbers out of range, where they are`, async () => {
      for (const [index, { kind, columns, range }] of parameters.entries()) {
        const parameter = metadata.functions.find((each) => each.name === name).parameters[index].name
        const refuses = async (value, code, at) => {
          const found = await formula(name, ...given.with(index, value))
          const [line] = found.text.split('\n').filter((line) => line.startsWith(`${at}: `))
          assert.ok(line?.endsWith(`[${code}]`), `${value}: ${found.text}`)
        }
        if (kind === 'word') await refuses('no such word', 'unknown-word', parameter)
        if (kind === 'number' || kind === 'count') await refuses(true, 'wrong-type', parameter)
        if (kind === 'number' && range) await refuses(-1e300, 'out-of-range', parameter)
        if (kind === 'list') await refuses([[true]], 'wrong-type', `${parameter}, cell 1`)
        if (kind !== 'rows') continue
        const row = columns.map(() => 1)
        await refuses([row.map(() => ''), [false, ...row.slice(1)]], 'wrong-type', `${parameter}, row 2, column 1`)
        await refuses([row.map(() => ''), row.map(() => -1e300)], 'out-of-range', `${parameter}, row 2, column 1`)
        await refuses([[...row, 1]], 'wrong-type', parameter)
      }
    })
  }
})

test('0 is not taken for an empty cell where that is another value', async () => {
  let count = 0
  for (const calculation of table) {
    const name = nameOf(calculation)
    const given = argumentsOf(calculation)
    for (const [index, mark] of marksOf(name).entries()) {
      const [unit, zero] = mark.split(' ')
      const zeroed = await formula(name, ...given.with(index, 0))
      if (zero !== '?') {
        assert.ok(!zeroed.text?.includes('an empty cell can be as well'), `${name} ${index}`)
        continue
      }
      count += 1
      const written = unit === '1' ? '0' : `0 ${unit}`
      const parameter = metadata.functions.find((each) => each.name === name).parameters[index]
      const help = `For its default, leave it out or give "". For the number, write "${written}". [amount-ambiguous]`
      assert.ok(zeroed.text.includes(`${parameter.name}: It is 0, which an empty cell can be as well. ${help}`))
      const found = await formula(name, ...given.with(index, written))
      // With another number of this parameter some calls are refused, but not for how it is written.
      assert.ok(!found.text?.includes(`${parameter.name}: It is`), `${name} ${parameter.name}: ${found.text}`)
    }
  }
  assert.ok(count > 30)
  assert.equal(
    await formula('PIECE_MASS', 10, 1.05, 1, 0, '0'),
    pourwright.pieceMass({ cavityVolumeMl: 10, coldDensityGPerMl: 1.05, hotDensityGPerMl: 1, voids: 0, feed: 0 })
      .pieceMassG,
  )
})

describe('ranges', () => {
  test('a column in gives a column, a table a table', async () => {
    const mass = (ml, density) => pourwright.massOfVolume({ volumeMl: ml, densityGPerMl: density }).massG
    assert.deepEqual(await formula('MASS_OF_VOLUME', [[100], ['1 cup'], [5]], 1.03), [
      [mass(100, 1.03)],
      [mass(236.5882365, 1.03)],
      [mass(5, 1.03)],
    ])
    assert.deepEqual(await formula('MASS_OF_VOLUME', [[100], [5]], [[1, 1.1, 1.2]]), [
      [mass(100, 1), mass(100, 1.1), mass(100, 1.2)],
      [mass(5, 1), mass(5, 1.1), mass(5, 1.2)],
    ])
    assert.deepEqual(await formula('PIECE_MASS.ALL', [[9.5], [12]], [[1.05], [1]], [[0.98], ['']]), [
      answer('PIECE_MASS', [9.5, 1.05, 0.98]),
      answer('PIECE_MASS', [12, 1]),
    ])
  })

  test('a refused row is an error of its own; an empty row is empty', async () => {
    const found = await formula('SHOTS.ALL', [[24], [''], [2.5], ['']], [[4], [''], [''], [null]])
    assert.deepEqual(found[0], [6, 24])
    assert.deepEqual([found[1], found[3]], [['', ''], ['', '']]) // prettier-ignore
    for (const { error, text } of found[2]) {
      assert.equal(error, '#VALUE!')
      assert.match(text, /^pieces: .*\[wrong-type\]\ncavities: .*\[missing-field\]$/)
    }
    assert.deepEqual(
      (await formula('WHY', 'SHOTS', [[24], [''], [2.5]], [[4], [''], ['']])).map(([text]) => text),
      ['', '', found[2][0].text],
    )
  })

  test('a refused cell of a row does not refuse the row', async () => {
    const [[first, second]] = await formula('MASS_OF_VOLUME', [['6 oz', 10]], 1)
    assert.deepEqual([first.error, second], ['#VALUE!', 10])
  })

  test('a number and its unit may be in two cells', async () => {
    assert.deepEqual(await formula('MASS_OF_VOLUME', [[1, 'cup'], [0.5, 'cup'], ['', ''], ['½', 'cup']], 1), [[236.5882365], [118.29411825], [''], [118.29411825]]) // prettier-ignore
    assert.deepEqual(
      await formula(
        'CONVERT',
        [
          [1, 'cup'],
          [2, 'oz wt'],
        ],
        [['mL'], ['g']],
      ),
      [[236.5882365], [56.69904625]],
    )
    const found = await formula(
      'MASS_OF_VOLUME',
      [
        [1, 'cup'],
        [2, ''],
        ['', 'cup'],
      ],
      1,
    )
    assert.deepEqual([found[0], found.slice(1).map(([{ text }]) => text.match(/\[(.*)\]$/)[1])], [[236.5882365], ['amount-no-unit', 'amount-no-number']]) // prettier-ignore
    // Amounts side by side are a table.
    for (const cup of ['1 cup', '¼ cup']) {
      const [[, second]] = await formula('MASS_OF_VOLUME', [[1, cup]], 1)
      assert.equal(second, await formula('MASS_OF_VOLUME', cup, 1))
    }
    const parts = [[100, 'g', 1.03, 'g/mL'], [20, 'g', 2.165, 'g/mL']] // prettier-ignore
    const density = pourwright.densityOfParts({ parts: [[100, 1.03], [20, 2.165]] }).densityGPerMl // prettier-ignore
    assert.equal(await formula('DENSITY_OF_PARTS', parts), density)
  })

  test('ranges that do not fit are refused', async () => {
    const sizes = await formula('MASS_OF_VOLUME', [[1], [2], [3]], [[1], [2]])
    assert.equal(
      sizes.text,
      'densityGPerMl: It has 2 rows, a range before it 3. Give ranges of the same size, or one cell for all. [unequal-columns]',
    )
    const wide = await formula('PIECE_MASS.ALL', [[1, 2]], 1)
    assert.match(wide.text, /more than one column.*POUR\.PIECE_MASS\. \[unequal-columns\]$/)
  })

  test('empty rows of a list are left out, wherever they are', async () => {
    const wanted = pourwright.densityOfParts({ parts: [[100, 1.03], [20, 2.165]] }).densityGPerMl // prettier-ignore
    const found = await formula('DENSITY_OF_PARTS', [['', ''], [100, 1.03], [null, ''], ['20 g', '2.165 g/mL'], ['', '']]) // prettier-ignore
    assert.equal(found, wanted)
    const weights = pourwright.cavityOfWeights({
      weightsG: [10, 10.2],
      balanceReadabilityG: 0.1,
      coldDensityGPerMl: 1.05,
    }).cavityVolumeMl
    for (const range of [
      [[10], [''], [10.2]],
      [[10, 10.2]],
      [
        [10, ''],
        ['', '10.2 g'],
      ],
    ])
      assert.equal(await formula('CAVITY_OF_WEIGHTS', range, 0.1, 1.05), weights)
    const row = await formula('DENSITY_OF_PARTS', [
      ['', ''],
      [100, 1.03],
      ['', ''],
      [20, ''],
    ])
    assert.match(row.text, /^parts, row 4, column 2: It is empty, not a number\..*\[wrong-type\]$/)
  })
})

describe('amounts', () => {
  test('cups and spoons are those of the measures of the call', async () => {
    for (const [measures, ml] of [
      ['us-customary', 236.5882365],
      ['us-label', 240],
      ['metric', 250],
      ['imperial', 284.130625],
    ]) {
      // prettier-ignore
      assert.equal(await formula('CONVERT', '1 cup', 'mL', measures), ml)
    }
    assert.equal(await formula('CONVERT', '1 cup', 'mL', ' Metric '), 250)
    const metric = await formula('DOSE_MASS', '1 tsp', 'salt', undefined, '300 g/cup', undefined, 'metric')
    assert.equal(metric, pourwright.doseMass({ amount: '5 mL', kind: 'salt', asScoopedGPerMl: 1.2 }).massG)
  })

  test('what is wrong with an amount is said with its code and what would fix it, with all other faults', async () => {
    const found = await formula('DOSE_MASS', '6 oz', 'sand', '2 mL', '1,25 g/mL', undefined, 'old')
    assert.deepEqual(
      found.text.split('\n').map((line) => [line.split(': ')[0], line.match(/\[(.*)\]$/)[1]]),
      [
        ['kind', 'unknown-word'],
        ['materialDensityGPerMl', 'amount-wrong-dimension'],
        ['asScoopedGPerMl', 'amount-ambiguous'],
        ['measures', 'unknown-word'],
      ],
    )
    assert.equal((await formula('MASS_OF_VOLUME', '6', 1)).text.match(/\[(.*)\]$/)[1], 'amount-no-unit')
  })

  test('texts of any kind are answered or refused', async () => {
    const odd = ['\0', '\n', '\ud800', '\ufeff', '\u202e', '½', '1\u00a0cup', '٣ cup', '1 c̈up', '#VALUE!', '=1+1', 'x'.repeat(32767), '9'.repeat(32767)] // prettier-ignore
    for (const text of odd) {
      for (const given of [
        [text, 1],
        [1, text],
        [text, text],
      ]) {
        // prettier-ignore
        const found = await formula('MASS_OF_VOLUME', ...given)
        assert.ok(typeof found === 'number' || /\[[a-z-]+\]$/.test(found.text), JSON.stringify(found))
      }
    }
    assert.equal(await formula('MASS_OF_VOLUME', '½ cup', 1), 118.29411825)
  })
})

test('a function that is not known, and one argument too many, are refused', async () => {
  const unknown = await formula('WHY', 'PIECE_MAS')
  assert.match(unknown.text, /^name: There is no function "PIECE_MAS"\. Known: CONVERT, .*\[unknown-word\]$/)
  assert.match((await formula('RESULTS', '')).text, /\[unknown-word\]$/)
  const much = await formula('WHY', 'PRICE', 1, 0.5, 7)
  assert.match(much.text, /^arguments: PRICE takes 2 arguments, not 3\. Known: cost, costMargin\. \[unknown-field\]$/)
  assert.match(await formula('WHY', 'PRICE', '', 0.5), /^cost: .*\[missing-field\]$/)
})

test('where the module cannot be loaded, each cell says so', async () => {
  const broken = { ...WebAssembly, instantiate: () => Promise.reject(new Error('no code may be compiled here')) }
  const { formula } = spreadsheet({ WebAssembly: broken, TextDecoder, TextEncoder, atob })
  for (const call of [
    ['CONVERT', '1 cup', 'mL'],
    ['WHY', 'CONVERT'],
  ]) {
    // prettier-ignore
    const { error, text } = await formula(...call)
    assert.deepEqual([error, text], ['#N/A', 'The library could not be loaded: no code may be compiled here'])
  }
})

test('ten thousand cells', () => {
  const timed = (what, work) => {
    const start = performance.now()
    work()
    console.log(`${what}: ${(performance.now() - start).toFixed(0)} ms`)
  }
  const many = Array.from({ length: 10_000 }, (_, row) => 1 + row / 100)
  const each = (given) => () => {
    for (const number of many) call('PIECE_MASS', ...given(number))
  }
  timed(
    '10,000 calls with numbers',
    each((number) => [number, 1.05]),
  )
  timed(
    '10,000 calls with amounts as texts',
    each((number) => [`${number} mL`, '1.05 g/mL']),
  )
  timed('a column of 10,000 numbers', () =>
    call(
      'PIECE_MASS',
      many.map((number) => [number]),
      1.05,
    ),
  )
})
