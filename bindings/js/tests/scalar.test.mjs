// The functions on plain numbers, of the entry of the installed package that POURWRIGHT_ENTRY names: what every one gives,
// and what it throws.
import assert from 'node:assert/strict'
import { describe, test } from 'node:test'

import { refused } from './support.mjs'

const { default: init, ...pourwright } = await import(process.env.POURWRIGHT_ENTRY)
const { convert } = pourwright

test('before it is loaded it says so', async () => {
  assert.equal(refused(() => convert('1 cup', 'mL')).code, 'not-ready')
  await Promise.all([init(), init()])
  await init()
})

describe('plain numbers', () => {
  // The sources of the values are those of the core's tests; here it is told that the parameters arrive where they belong.
  const near = (found, wanted) =>
    assert.ok(Math.abs(found - wanted) <= 1e-9 * Math.abs(wanted), `${found}, not ${wanted}`)

  test('amounts', () => {
    assert.equal(convert('1 1/4 cup', 'mL'), 295.735295625) // 1.25 × 231 in³/16, exact
    assert.equal(convert('1 cup', 'mL', 'metric'), 250)
    assert.equal(pourwright.massG({ amount: '12.5 g', densityGPerMl: 1 }), 12.5)
    near(pourwright.massG({ amount: '1/4 cup', densityGPerMl: 1.22 }), 59.147059125 * 1.22)
    near(pourwright.massG({ amount: '1 cup', densityGPerMl: 1.22, measures: 'metric' }), 305)
    near(pourwright.massG({ amount: '40 drops', densityGPerMl: 1.05, dropG: 0.045 }), 1.8)
    near(pourwright.massG({ amount: '40 drops', densityGPerMl: 1.05 }), 2.1) // 20 drops per mL
    near(pourwright.massOfVolumeG({ volumeMl: 240, densityGPerMl: 1.03 }), 247.2)
    near(pourwright.volumeOfMassMl({ massG: 247.2, densityGPerMl: 1.03 }), 240)
    near(pourwright.densityOfPartsGPerMl([[100, 1], [100, 2]], 0.1), 1.2) // prettier-ignore
    // 1 g of squares of 1 mm, 0.05 mm thick, of 1.4 g/mL
    near(pourwright.flakeCount({ cut: '1 mm square', thicknessUm: 50, filmGPerMl: 1.4, doseG: 1 }), 1e3 / (0.05 * 1.4))
  })
  test('water', () => {
    near(pourwright.waterDensityGPerMl({ temperatureCelsius: 20 }), 0.9982067455596) // Tanaka 2001
    // ISO 8655-6: Z = 1.0029 mL/g at 20 °C and 1013 hPa.
    const cavity = pourwright.cavityMl({ waterG: 10, temperatureCelsius: 20 })
    assert.equal(cavity.toFixed(3), '10.029')
    assert.ok(pourwright.cavityMl({ waterG: 10, temperatureCelsius: 20, airPressurePa: 80000 }) < cavity)
  })
  test('shots', () => {
    near(pourwright.pieceG({ cavityMl: 10, hotGPerMl: 0.9, coldGPerMl: 1, feed: 0.5, voids: 0.1 }), 8.55)
    near(pourwright.shotG({ cavities: 4, cavityMl: 9.5, hotGPerMl: 1, sprueMl: 6, toppedG: 2 }), 46)
    near(pourwright.shotG({ cavities: 4, cavityMl: 9.5, hotGPerMl: 1, voids: 0.5 }), 19)
    assert.equal(pourwright.shots({ pieces: 25, cavities: 4 }), 7)
    // P[Bin(8, 0.5) ≥ 1] = 0.996 suffices, P[Bin(4, 0.5) ≥ 1] = 0.9375 does not.
    assert.equal(pourwright.shots({ pieces: 1, cavities: 4, rejects: 0.5, confidence: 0.99 }), 2)
    const need = pourwright.batchNeed({
      ...{ pieces: 25, cavities: 4, shotG: 46, sprueG: 6, hotGPerMl: 1, holdsMl: 100, keepsMl: 4, filmG: 5, heelG: 3 },
    })
    // 7 shots of 46 g, and what stays in injector and cup
    assert.deepEqual([need.shots, need.shotsPerLoad, need.loads, need.shotsInLast], [7, 2, 4, 1])
    near(need.totalG, 7 * 46 + 4 + 5)
    for (const [name, wanted] of [
      ['drawnG', 322],
      ['returnedG', 0],
      ['piecesG', 280],
      ['spruesG', 42],
      ['keptG', 4],
      ['inCupG', 5],
    ])
      assert.ok(Math.abs(need[name] - wanted) < 1e-9, `${name} ${need[name]}`)
    assert.equal(pourwright.injectorLoads({ shots: 7, shotG: 46, hotGPerMl: 1, holdsMl: 100, keepsMl: 4 }), 4)
  })
  test('salt, there and back', () => {
    const mix = { baseMl: 240, baseGPerMl: 1, saltGPerMl: 2, scoopedGPerMl: 1.2 }
    near(pourwright.saltLoading({ from: 'scooped', value: 0.25, to: 'of-base', ...mix }), 0.3)
    // (240 + 72)/(240 + 36)
    near(pourwright.saltLoading({ from: 'scooped', value: 0.25, to: 'finished-density', ...mix }), 312 / 276)
    const piece = { ...mix, cavityMl: 10, feed: 1, hookG: 1, hookMl: 0.2 }
    near(pourwright.saltLoading({ from: 'of-base', value: 0.3, to: 'piece-mass', ...piece }), 3120 / 276)
    near(pourwright.saltLoading({ from: 'of-base', value: 0.3, to: 'sink-density', ...piece }), (3120 / 276 + 1) / 10.2)
    const softened = { ...mix, softenerPerSalt: 0.5, softenerGPerMl: 0.9, voids: 0.1, mixG: 250, mixMl: 248 }
    const density = pourwright.saltLoading({ from: 'of-base', value: 0.3, to: 'finished-density', ...softened })
    near(density, (0.9 * (250 + 72 + 36)) / (248 + 36 + 40))
    const error = refused(() =>
      pourwright.saltLoading({ from: 'of-base', value: 5, to: 'scooped', mostSolids: 0.1, ...mix }),
    )
    assert.equal(error.code, 'salt-out-of-reach')
    assert.equal(
      refused(() => pourwright.saltLoading({ from: 'spoons', value: 1, to: 'of-base', ...mix })).path,
      '/from',
    )
  })
  test('salt that goes in, and what is in reach', () => {
    const mix = { baseMl: 240, baseGPerMl: 1, saltGPerMl: 2, mostSolids: 0.2 }
    near(pourwright.saltMassG({ form: 'of-base', value: 0.3, ...mix }), 72)
    // (1.1 · 240 − 240)/(1 − 1.1/2)
    near(pourwright.saltMassG({ form: 'finished-density', value: 1.1, ...mix }), 24 / 0.45)
    const reach = pourwright.saltReach({ form: 'finished-density', ...mix })
    near(reach.least, 1)
    near(reach.most, 0.8 + 0.2 * 2)
    assert.equal(refused(() => pourwright.saltMassG({ form: 'spoons', value: 1, ...mix })).path, '/form')
  })
  test('a mix before salt is given whole', () => {
    const mix = { form: 'finished-density', value: 1.1, baseMl: 240, baseGPerMl: 1, saltGPerMl: 2 }
    for (const [given, needed] of [
      [{ mixG: 250 }, 'mixMl'],
      [{ mixMl: 248 }, 'mixG'],
      [{ softenerPerSalt: 0.5 }, 'softenerGPerMl'],
      [{ softenerPerSalt: NaN }, 'softenerGPerMl'],
    ]) {
      const error = refused(() => pourwright.saltMassG({ ...mix, ...given }))
      const [parameter] = Object.keys(given)
      assert.deepEqual([error.code, error.path], ['missing-field', `/${needed}`])
      assert.equal(error.help, `Give it with "${parameter}", or leave out both.`)
    }
    near(pourwright.saltMassG({ ...mix, softenerPerSalt: 0 }), pourwright.saltMassG(mix))
  })
  test('salt as scooped has a density in the spoon, a piece a cavity', () => {
    const mix = { value: 0.1, baseMl: 240, baseGPerMl: 1, saltGPerMl: 2 }
    for (const ask of [
      () => pourwright.saltMassG({ form: 'scooped', ...mix }),
      () => pourwright.saltLoading({ from: 'scooped', to: 'of-base', ...mix }),
      () => pourwright.saltLoading({ from: 'of-base', to: 'scooped', ...mix }),
      () => pourwright.saltReach({ form: 'scooped', baseMl: 240, baseGPerMl: 1, saltGPerMl: 2 }),
    ]) {
      const error = refused(ask)
      assert.deepEqual([error.code, error.path], ['missing-field', '/scoopedGPerMl'])
    }
    near(pourwright.saltMassG({ form: 'scooped', ...mix, scoopedGPerMl: 1.2 }), 0.1 * 240 * 1.2)
    assert.equal(refused(() => pourwright.saltMassG({ form: 'piece-mass', ...mix })).code, 'salt-no-cavity')
  })
  test('the tools of a bench', () => {
    const spoonsMl = [5, 2.5, 1.25]
    const bySpoon = pourwright.benchMeasure({ massG: 7.6, spoonsMl, asMeasuredGPerMl: 1.2 })
    assert.deepEqual([bySpoon.tool, bySpoon.spoonfuls], ['spoons', [1, 0, 1]])
    near(bySpoon.massG, 7.5)
    near(bySpoon.deviation, -0.1 / 7.6)
    const byDrop = pourwright.benchMeasure({ massG: 0.4, dropG: 0.05 })
    assert.deepEqual([byDrop.tool, byDrop.drops, byDrop.spoonfuls], ['drops', 8, []])
    assert.equal(pourwright.benchMeasure({ massG: 12.3, balanceReadsG: 0.1, balanceToG: 500 }).tool, 'balance')
    // Without a capacity as a book's balance: up to 5000 steps in one reading, so that 501 g takes two.
    const balance = { balanceReadsG: 0.1 }
    assert.deepEqual(
      [3.1, 500, 501].map((massG) => pourwright.benchMeasure({ massG, ...balance }).acts),
      [1, 1, 2],
    )
    for (const limit of [{ balanceToG: 500 }, { balanceFromG: 1 }]) {
      const error = refused(() => pourwright.benchMeasure({ massG: 0.4, dropG: 0.05, ...limit }))
      assert.deepEqual([error.code, error.path], ['missing-field', '/balanceReadsG'])
    }
    assert.equal(refused(() => pourwright.benchMeasure({ massG: 1, spoonsMl: 5 })).path, '/spoonsMl')
    assert.equal(refused(() => pourwright.benchMeasure({ massG: 1, spoonsMl: [5, '1'] })).path, '/spoonsMl/1')
    refused(() => pourwright.benchMeasure({ massG: 1 }))
  })
  test('softener', () => {
    const points = [[0, 60], [0.2, 40], [0.4, 20]] // prettier-ignore
    near(pourwright.hardness(points, 0.1), 50)
    near(pourwright.softenerRatio(points, 50), 0.1)
    assert.equal(refused(() => pourwright.hardness([[0, '60']], 0.1)).path, '/points/0/1')
  })
  test('vacuum', () => {
    near(pourwright.airPressurePa({ altitudeM: 0 }), 101325)
    near(pourwright.swollenMl({ liquidMl: 100, air: 0.5, vacuumPa: 81060 }), 600) // the air fivefold
    near(pourwright.swollenMl({ liquidMl: 100, air: 0.5, vacuumPa: 60000, airPressurePa: 90000, vaporPa: 12000 }), 600)
  })
  test('sinking, there and back', () => {
    const piece = {
      volumeMl: 9.5,
      diameterMm: 10,
      lengthMm: 120,
      hookG: 1,
      hookMl: 0.1,
      waterCelsius: 15,
      salinity: 35,
    }
    const speedCmPerS = pourwright.sinkSpeedCmPerS({ densityGPerMl: 1.15, ...piece })
    near(pourwright.densityForSinkSpeedGPerMl({ speedCmPerS, ...piece }), 1.15)
    const ball = { densityGPerMl: 1.15, volumeMl: 9.5, diameterMm: 26, waterCelsius: 15 }
    assert.notEqual(pourwright.sinkSpeedCmPerS(ball), speedCmPerS)
  })
  test('colors', () => {
    // Sharma, Wu and Dalal 2005, pair 1.
    const difference = pourwright.colorDifference([50, 2.6772, -79.7751], [50, 0, -82.7485])
    assert.equal(difference.toFixed(4), '2.0425')
  })
})

test('a refusal says in which parameter, where it is one', () => {
  const p = pourwright
  const piece = { cavityMl: 10, hotGPerMl: 0.9, coldGPerMl: 1, feed: 0.5 }
  const loads = { shots: 7, shotG: 46, hotGPerMl: 1, holdsMl: 100 }
  const salt = { form: 'of-base', value: 0.3, baseMl: 240, baseGPerMl: 1, saltGPerMl: 2 }
  const stick = { volumeMl: 9.5, diameterMm: 10, lengthMm: 120, waterCelsius: 15 }
  const curve = [[0, 60], [0.2, 40]] // prettier-ignore
  const color = [50, 0, 0]
  for (const [call, path] of [
    [() => convert('1 cup', 'g'), '/amount'],
    [() => convert('1 cup', 'furlong'), '/to'],
    [() => p.massG({ amount: '40 drops', densityGPerMl: 1, dropG: 0 }), '/dropG'],
    [() => p.massG({ amount: '4 inHg', densityGPerMl: 1 }), '/amount'],
    [() => p.flakeCount({ cut: 'round', thicknessUm: 50, filmGPerMl: 1.4, doseG: 1 }), '/cut'],
    [() => p.pieceG({ ...piece, hotGPerMl: 900, coldGPerMl: 1000 }), '/hotGPerMl'],
    [() => p.pieceG({ ...piece, coldGPerMl: 1030 }), '/coldGPerMl'],
    [() => p.pieceG({ ...piece, hotGPerMl: 1.1 }), ''],
    [() => p.shotG({ cavities: 0, cavityMl: 10, hotGPerMl: 1 }), '/cavities'],
    [() => p.shots({ pieces: 0, cavities: 4 }), '/pieces'],
    [() => p.shots({ pieces: 1e7, cavities: 4 }), '/pieces'],
    [() => p.shots({ pieces: 5, cavities: 0 }), '/cavities'],
    [() => p.shots({ pieces: 1e6, cavities: 4, rejects: 0.999 }), '/rejects'],
    [() => p.injectorLoads({ ...loads, shots: 0 }), '/shots'],
    [() => p.injectorLoads({ ...loads, hotGPerMl: 950 }), '/hotGPerMl'],
    [() => p.injectorLoads({ ...loads, shotG: 460 }), '/shotG'],
    [() => p.injectorLoads({ ...loads, keepsMl: 100 }), '/keepsMl'],
    [() => p.saltMassG({ ...salt, value: 5 }), '/value'],
    [() => p.saltMassG({ ...salt, scoopedGPerMl: 2.1 }), '/scoopedGPerMl'],
    [() => p.saltMassG({ ...salt, form: 'piece-mass' }), '/cavityMl'],
    [() => p.saltMassG({ ...salt, mixG: 200, mixMl: 240 }), '/mixG'],
    [() => p.sinkSpeedCmPerS({ ...stick, densityGPerMl: 0.9 }), '/densityGPerMl'],
    [() => p.sinkSpeedCmPerS({ ...stick, densityGPerMl: 1150 }), '/densityGPerMl'],
    [() => p.sinkSpeedCmPerS({ ...stick, densityGPerMl: 1.15, lengthMm: 10 }), '/lengthMm'],
    [() => p.densityForSinkSpeedGPerMl({ ...stick, speedCmPerS: 400 }), '/speedCmPerS'],
    [() => p.swollenMl({ liquidMl: 100, air: 0.1, vacuumPa: 110000 }), '/vacuumPa'],
    [() => p.swollenMl({ liquidMl: 100, air: 0.1, vacuumPa: 100000, vaporPa: 2000 }), '/vacuumPa'],
    [() => p.benchMeasure({ massG: 1, balanceReadsG: 0.1, balanceToG: 0.05 }), '/balanceToG'],
    [() => p.benchMeasure({ massG: 1, spoonsMl: [5, 0], asMeasuredGPerMl: 1 }), '/spoonsMl'],
    [() => p.benchMeasure({ massG: 1 }), ''],
    [() => p.densityOfPartsGPerMl([[1, 1], [-1, 1], [1, 0]]), '/parts/1/0'], // prettier-ignore
    [() => p.densityOfPartsGPerMl([[1, 1], [1, 1030]]), '/parts/1/1'], // prettier-ignore
    [() => p.densityOfPartsGPerMl([[1, 1]], 1), '/voids'],
    [() => p.densityOfPartsGPerMl([]), '/parts'],
    [() => p.hardness([[0, 60]], 0), '/points'],
    [() => p.hardness([[0, 60], [-0.2, 40]], 0), '/points/1/0'], // prettier-ignore
    [() => p.hardness([[0, 101], [0.2, 40]], 0), '/points/0/1'], // prettier-ignore
    [() => p.hardness([[0.2, 60], [0, 40]], 0), '/points/1'], // prettier-ignore
    [() => p.hardness(curve, 0.3), '/ratio'],
    [() => p.softenerRatio(curve, 30), '/reading'],
    [() => p.colorDifference([101, 0, 0], color), '/one'],
    [() => p.colorDifference(color, [50, 0, 201]), '/other'],
  ]) {
    assert.equal(refused(call).path, path, String(call))
  }
})

test('lists have as many numbers as are meant', () => {
  const { colorDifference, densityOfPartsGPerMl, hardness, softenerRatio, benchMeasure } = pourwright
  const color = [50, 2.67, -79.78]
  for (const [call, path] of [
    [() => colorDifference([50, 2.67], [50, 0, -82, 1]), '/one'],
    [() => colorDifference(color, [50, 0, -82, 1]), '/other'],
    [() => colorDifference(color, [50, 0, '-82']), '/other/2'],
    [() => densityOfPartsGPerMl([[10, 1, 7]]), '/parts/0'],
    [() => densityOfPartsGPerMl([[10, 1], [5]]), '/parts/1'], // prettier-ignore
    [() => densityOfPartsGPerMl([[10, 1], 5]), '/parts/1'], // prettier-ignore
    [() => densityOfPartsGPerMl('10'), '/parts'],
    [() => hardness([[0, 60, 1], [0.2, 40]], 0.1), '/points/0'], // prettier-ignore
    [() => softenerRatio([[0, 60], [0.2, 40, 1]], 50), '/points/1'], // prettier-ignore
    [() => benchMeasure({ massG: 1, spoonsMl: [[5, 2.5]] }), '/spoonsMl/0'],
    [() => benchMeasure({ massG: 1, spoonsMl: '5' }), '/spoonsMl'],
  ]) {
    const error = refused(call)
    assert.deepEqual([error.code, error.path], ['wrong-type', path])
  }
  const parts = new Map([[100, 1], [100.5, 2]]) // prettier-ignore
  assert.equal(densityOfPartsGPerMl(parts), densityOfPartsGPerMl([...parts]))
})

test('parameters are checked by name, type and presence', () => {
  const { shots } = pourwright
  for (const [given, code, path] of [
    [undefined, 'missing-field', '/pieces'],
    [null, 'wrong-type', ''],
    ['24 pieces', 'wrong-type', ''],
    [{ pieces: 3 }, 'missing-field', '/cavities'],
    [{ pieces: '3', cavities: 4 }, 'wrong-type', '/pieces'],
    [{ pieces: 3, cavities: null }, 'wrong-type', '/cavities'],
    [{ pieces: 3, cavities: 4, reject: 0.1 }, 'unknown-field', '/reject'],
    [{ pieces: 3.5, cavities: 4 }, 'not-a-count', '/pieces'],
    [{ pieces: -1, cavities: 4 }, 'not-a-count', '/pieces'],
    [{ pieces: NaN, cavities: 4 }, 'not-a-count', '/pieces'],
  ]) {
    const error = refused(() => shots(given))
    assert.deepEqual([error.code, error.path], [code, path])
  }
  for (const [call, path, message] of [
    [() => convert('1 cup'), '/to', '"to" is missing.'],
    [() => convert({}, 'mL'), '/amount', '"amount" is an object.'],
    [() => convert([], 'mL'), '/amount', '"amount" is a list.'],
    [() => convert(1, 'mL'), '/amount', '"amount" is a number.'],
    [() => pourwright.hardness(undefined, 1), '/points', '"points" is missing.'],
    [() => pourwright.hardness(5, 1), '/points', '"points" is a number.'],
    [() => pourwright.hardness([[0]], 1), '/points/0', '"points/0" has the length 1.'],
    [() => pourwright.hardness([[0, undefined]], 1), '/points/0/1', '"points/0/1" is missing.'],
    [() => pourwright.massG(null), '', 'The parameters of "massG" are null.'],
  ]) {
    const error = refused(call)
    assert.deepEqual([error.path, error.message], [path, message])
  }
  assert.equal(refused(() => convert('6 oz', 'g')).code, 'amount-ambiguous')
  assert.equal(refused(() => convert('1 cup', 'g')).code, refused(() => convert('1 mL', 'lb')).code)
  assert.equal(refused(() => convert('1 cup', 'mL', 'us')).path, '/measures')
  assert.equal(refused(() => convert(1, 'mL')).code, 'wrong-type')
})
