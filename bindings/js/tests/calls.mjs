// Calls of the functions on plain numbers that have something odd in them, as [name, ...arguments].

/** Parameters by name that are answered. */
export const GOOD = {
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

const NUMBERS = [NaN, Infinity, -Infinity, 0, -0, -1, 5e-324, 1e-300, 1e-15, 0.1, 1, 7, 1e6, 4294967295, 4294967296, 1e15, 1e300, Number.MAX_VALUE] // prettier-ignore

export const ODD_TEXTS = ['', '\0', '\ud800', '\udfff', '\ufeff', '\u202e', '½', '⅓ cup', '１ cup', '1\u00a0cup', '𝟙 cup', '1 c̈up', '٣ cup', '👩‍🔧'] // prettier-ignore

const megabytes = (count) => 'x'.repeat(count << 20)
export const LONG_TEXTS = [megabytes(1), megabytes(15), megabytes(17), '9'.repeat(1 << 20), '\u0001'.repeat(1 << 20)]

/** Odd numbers in every parameter, one at a time and in all at once. */
export function* oddNumbers() {
  for (const [name, parameters] of Object.entries(GOOD)) {
    const numbers = Object.keys(parameters).filter((parameter) => typeof parameters[parameter] === 'number')
    for (const number of NUMBERS) {
      for (const parameter of numbers) yield [name, { ...parameters, [parameter]: number }]
      yield [name, { ...parameters, ...Object.fromEntries(numbers.map((parameter) => [parameter, number])) }]
    }
  }
  for (const one of NUMBERS) {
    for (const other of NUMBERS) {
      yield ['hardness', [[0, 60], [one, 40], [0.4, other]], one] // prettier-ignore
      yield ['softenerRatio', [[0, one], [0.2, other], [0.4, 20]], other] // prettier-ignore
      yield ['densityOfPartsGPerMl', [[one, other], [1, one]], other] // prettier-ignore
      yield ['benchMeasure', { massG: one, spoonsMl: [other, 5], asMeasuredGPerMl: 1 }]
      yield ['colorDifference', [one, other, 0], [50, one, other]]
    }
  }
  yield ['hardness', [], 1]
}

/** Odd texts in every place for one. */
export function* oddTexts() {
  for (const text of ODD_TEXTS) {
    for (const amount of [text, `1${text}cup`, `${text}1 cup`, `1 cup${text}`]) {
      yield ['convert', amount, 'mL']
      yield ['massG', { ...GOOD.massG, amount }]
      yield ['flakeCount', { ...GOOD.flakeCount, cut: amount }]
    }
    yield ['convert', '1 cup', text]
    yield ['convert', '1 cup', 'mL', text]
    yield ['saltLoading', { ...GOOD.saltLoading, from: text }]
    yield ['saltMassG', { ...GOOD.saltMassG, form: text }]
  }
}

/** Long texts in every place for one. */
export function* longTexts() {
  for (const text of LONG_TEXTS) {
    yield ['convert', text, 'mL']
    yield ['convert', `1${text}`, 'mL']
    yield ['convert', '1 cup', text]
    yield ['convert', '1 cup', 'mL', text]
    yield ['saltLoading', { ...GOOD.saltLoading, from: text, to: text }]
  }
}
