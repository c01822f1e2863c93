// A trap would leave the instance useless: nothing that is given makes one.
import assert from 'node:assert/strict'
import { test } from 'node:test'

import init, * as pourwright from 'pourwright'
import { book, orders, read, watchMemory } from './support.mjs'

const memory = watchMemory()
await init()
const { Book, PourwrightError, calculate, convert } = pourwright

/** Whether the call was answered; it may be refused, but nothing else may be thrown. */
function survives(call, what) {
  let answered = true
  try {
    call()
  } catch (error) {
    answered = false
    assert.ok(error instanceof PourwrightError, `${what}: ${error}`)
  }
  assert.equal(convert('1 cup', 'mL'), 236.5882365, what)
  return answered
}

test('deep nesting', () => {
  for (const depth of [100, 127, 128, 1000, 1_000_000]) {
    for (const [open, close] of [
      ['[', ']'],
      ['{"a":', '}'],
    ]) {
      // prettier-ignore
      const text = open.repeat(depth) + (open === '[' ? '' : '1') + close.repeat(depth)
      survives(() => calculate(text), `${depth} ${open}`)
      survives(() => calculate(`{"calculate": "plan", "book": ${text}, "orders": ${text}}`), `${depth} ${open}`)
      survives(() => new Book(`{"format": "pourwright/1.0", "ext": ${text}}`), `${depth} ${open}`)
    }
  }
  let deep = {}
  for (let depth = 0; depth < 100_000; depth += 1) deep = { deep }
  survives(() => calculate(deep), 'a deep object')
})

test('long texts', () => {
  const megabytes = (count) => 'x'.repeat(count << 20)
  for (const text of [megabytes(1), megabytes(15), megabytes(17), '9'.repeat(1 << 20), '\u0001'.repeat(1 << 20)]) {
    survives(() => convert(text, 'mL'), 'an amount')
    survives(() => convert(`1${text}`, 'mL'), 'an amount')
    survives(() => convert('1 cup', text), 'a unit')
    survives(() => convert('1 cup', 'mL', text), 'measures')
    survives(() => calculate(text), 'a text')
    survives(() => calculate({ calculate: text }), 'a name')
    survives(() => calculate({ calculate: 'convert', amount: text, to: text, [text]: text }), 'a request')
    survives(() => pourwright.saltLoading({ from: text, value: 1, to: text, baseMl: 1, baseGPerMl: 1, saltGPerMl: 2, scoopedGPerMl: 1 }), 'a form') // prettier-ignore
  }
})

test('odd characters', () => {
  const odd = [
    '\0',
    '\ud800',
    '\udfff',
    '\ufeff',
    '\u202e',
    '½',
    '⅓ cup',
    '１ cup',
    '1\u00a0cup',
    '𝟙 cup',
    '1 c̈up',
    '٣ cup',
    '👩‍🔧',
  ]
  for (const text of odd) {
    for (const amount of [text, `1${text}cup`, `${text}1 cup`, `1 cup${text}`]) {
      survives(() => convert(amount, 'mL'), amount)
      survives(() => calculate({ calculate: 'convert', amount, to: text }), amount)
      survives(
        () => new Book({ ...book, [amount]: 1, shop: amount, molds: { [amount]: { cavities: amount } } }),
        amount,
      )
    }
  }
})

const NUMBERS = [NaN, Infinity, -Infinity, 0, -0, -1, 5e-324, 1e-300, 1e-15, 0.1, 1, 7, 1e6, 4294967295, 4294967296, 1e15, 1e300, Number.MAX_VALUE] // prettier-ignore

test('odd numbers in every parameter', () => {
  const good = {
    massG: { amount: '1 cup', densityGPerMl: 1 },
    waterDensityGPerMl: { temperatureCelsius: 20 },
    cavityMl: { waterG: 10, temperatureCelsius: 20, airPressurePa: 101325 },
    pieceG: { cavityMl: 10, hotGPerMl: 0.9, coldGPerMl: 1, feed: 0.5, voids: 0.1 },
    shotG: { cavities: 4, cavityMl: 9.5, hotGPerMl: 1, sprueMl: 6, toppedG: 2, voids: 0.1 },
    shots: { pieces: 25, cavities: 4, rejects: 0.05, confidence: 0.9 },
    injectorLoads: { shots: 7, shotG: 46, hotGPerMl: 1, holdsMl: 100, keepsMl: 4 },
    saltLoading: { from: 'of-base', value: 0.3, to: 'sink-density', baseMl: 240, baseGPerMl: 1, mixG: 250, mixMl: 248, saltGPerMl: 2, scoopedGPerMl: 1.2, softenerPerSalt: 0.5, softenerGPerMl: 0.9, voids: 0.1, mostSolids: 0.3, cavityMl: 10, feed: 1, hookG: 1, hookMl: 0.2 }, // prettier-ignore
    saltMassG: { form: 'finished-density', value: 1.1, baseMl: 240, baseGPerMl: 1, saltGPerMl: 2 },
    saltReach: { form: 'of-base', baseMl: 240, baseGPerMl: 1, saltGPerMl: 2 },
    batchNeed: { pieces: 25, cavities: 4, rejects: 0.05, confidence: 0.9, shotG: 46, sprueG: 6, returned: 0.5, hotGPerMl: 1, holdsMl: 100, keepsMl: 4, cleanings: 2, filmG: 5, heelG: 3 }, // prettier-ignore
    benchMeasure: { massG: 7.6, tolerance: 0.05, balanceReadsG: 0.1, balanceToG: 500, balanceFromG: 1, asMeasuredGPerMl: 1.2, dropG: 0.05 }, // prettier-ignore
    massOfVolumeG: { volumeMl: 240, densityGPerMl: 1 },
    volumeOfMassMl: { massG: 240, densityGPerMl: 1 },
    flakeCount: { cut: '.035 hex', thicknessUm: 50, filmGPerMl: 1.4, doseG: 1 },
    airPressurePa: { altitudeM: 640 },
    swollenMl: { liquidMl: 100, air: 0.1, vacuumPa: 60000, airPressurePa: 90000, vaporPa: 1000 },
    sinkSpeedCmPerS: { densityGPerMl: 1.15, volumeMl: 9.5, diameterMm: 10, lengthMm: 120, hookG: 1, hookMl: 0.1, waterCelsius: 15, salinity: 35 }, // prettier-ignore
    densityForSinkSpeedGPerMl: { speedCmPerS: 10, volumeMl: 9.5, diameterMm: 10, lengthMm: 120, hookG: 1, hookMl: 0.1, waterCelsius: 15, salinity: 35 }, // prettier-ignore
  }
  for (const [name, parameters] of Object.entries(good)) {
    assert.ok(
      survives(() => pourwright[name](parameters), name),
      `${name} answers`,
    )
    for (const parameter of Object.keys(parameters)) {
      if (typeof parameters[parameter] !== 'number') continue
      for (const number of NUMBERS) {
        survives(() => pourwright[name]({ ...parameters, [parameter]: number }), `${name} ${parameter} ${number}`)
      }
    }
    for (const number of NUMBERS) {
      const all = Object.fromEntries(Object.entries(parameters).map(([key, value]) => [key, typeof value === 'number' ? number : value])) // prettier-ignore
      survives(() => pourwright[name](all), `${name} ${number}`)
    }
  }
  for (const one of NUMBERS) {
    for (const other of NUMBERS) {
      survives(() => pourwright.hardness([[0, 60], [one, 40], [0.4, other]], one), `${one} ${other}`) // prettier-ignore
      survives(() => pourwright.softenerRatio([[0, one], [0.2, other], [0.4, 20]], other), `${one} ${other}`) // prettier-ignore
      survives(() => pourwright.densityOfPartsGPerMl([[one, other], [1, one]], other), `${one} ${other}`) // prettier-ignore
      survives(() => pourwright.benchMeasure({ massG: one, spoonsMl: [other, 5], asMeasuredGPerMl: 1 }), `${one} ${other}`) // prettier-ignore
      survives(() => pourwright.colorDifference([one, other, 0], [50, one, other]), `${one} ${other}`)
    }
  }
  survives(() => pourwright.hardness([], 1), 'no points')
})

test('a list of faults longer than any shop has entries', () => {
  const weights = `[${'0,'.repeat(200_000)}0]`
  survives(() => calculate(`{"calculate": "calibrate", "cold_density": "1 g/mL", "weights": ${weights}}`), 'weights')
  const keys = Array.from({ length: 30_000 }, (_, index) => `"k${index}":0`)
  survives(() => new Book(`{${keys.join()}}`), 'keys')
})

test('documents with a thousand random slips', () => {
  let state = 20270302
  const random = (below) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0
    return Math.floor((state / 2 ** 32) * below)
  }
  const nodes = (value, found = []) => {
    if (typeof value !== 'object' || value === null) return found
    for (const key of Object.keys(value)) {
      found.push([value, key])
      nodes(value[key], found)
    }
    return found
  }
  const slips = [null, 0, -1, 1e300, 0.1, true, '', 'x', '1e999 g', '0 g', '-1 cup', '1000000 gal', '1e-30 mL', '100 %', [], {}, '999999999999999999999999 cup', '1/0 cup'] // prettier-ignore
  let answered = 0
  for (let round = 0; round < 1000; round += 1) {
    const request = structuredClone({ calculate: 'plan', book, orders })
    for (let slip = random(3); slip >= 0; slip -= 1) {
      const all = nodes(request)
      const [holder, key] = all[random(all.length)]
      if (random(4) === 0) delete holder[key]
      else if (random(3) === 0) holder[key] = structuredClone(all[random(all.length)][0])
      else holder[key] = slips[random(slips.length)]
    }
    if (survives(() => calculate(request), JSON.stringify(request).slice(0, 200))) answered += 1
    const text = JSON.stringify({ calculate: 'plan', book, orders })
    const cut = random(text.length)
    survives(() => calculate(text.slice(0, cut) + text.slice(cut + 1 + random(3))), 'a cut')
  }
  assert.ok(answered > 0, 'some slips are let pass')
})

test('memory does not grow with books that are freed', () => {
  const rounds = (count) => {
    for (let round = 0; round < count; round += 1) {
      const shop = new Book(book)
      shop.plan(orders)
      survives(() => shop.plan({ ...orders, lines: [{ order: '1' }] }), 'a fault')
      shop.free()
    }
    return memory()
  }
  const before = rounds(20)
  assert.equal(rounds(300), before)
})
