// Plain numbers in, a plain number out. Parameters go by name, the unit its last part.
import { refuse } from './error.js'
import { scalar } from './instance.js'
import { MIX, PARAMETERS } from './parameters.js'
import { short } from './text.js'

function byName(name) {
  return (given) => scalar()[name](...values(name, given))
}

/** What is given to the function `name`, in the order in which the module takes it. */
function values(name, given = {}) {
  if (typeof given !== 'object' || given === null)
    refuse('wrong-type', '', `The parameters of "${name}" are ${kindOf(given)}.`, 'Give an object with them by name.')
  const parameters = Object.entries(PARAMETERS[name])
  const values = parameters.map(([parameter, wanted]) => read(given, parameter, wanted))
  const unknown = Object.keys(given).find((key) => !Object.hasOwn(PARAMETERS[name], key))
  if (unknown !== undefined) {
    const known = parameters.map(([parameter]) => parameter).join(', ')
    refuse('unknown-field', `/${unknown}`, `There is no parameter "${unknown}".`, `Known: ${known}.`)
  }
  return values
}

/** Asks a mix for salt by `method`; the module keeps the mix only as long as that takes. */
function ofMix(name, given, method) {
  const { SaltMix } = scalar()
  const all = values(name, given)
  const asked = all.splice(Object.keys(MIX).length)
  if (asked.includes('scooped') && given.scoopedGPerMl === undefined)
    missing('scoopedGPerMl', 'Weigh a level spoonful of salt: the form "scooped" speaks of its density in the spoon.')
  const mix = new SaltMix(...all)
  try {
    return mix[method](...asked)
  } finally {
    mix.free()
  }
}

function read(given, parameter, wanted) {
  const value = given[parameter]
  if (value === undefined) {
    if (wanted.required) missing(parameter, `Give a ${wanted.type}.`)
    return wanted.value
  }
  if (wanted.needs && value !== wanted.value && given[wanted.needs] === undefined)
    missing(wanted.needs, `Give it with "${parameter}", or leave out both.`)
  if (wanted.type === 'list') return numbers(parameter, value)
  typed(parameter, value, wanted.type)
  wanted.check?.(`/${parameter}`, value)
  return value
}

function missing(parameter, help) {
  refuse('missing-field', `/${parameter}`, `"${parameter}" is missing.`, help)
}

/** `value`, unless it is of another type: JavaScript would make a number of anything. */
function typed(parameter, value, type) {
  if (value === undefined) missing(parameter, `Give a ${type}.`)
  if (typeof value !== type)
    refuse('wrong-type', `/${parameter}`, `"${parameter}" is ${kindOf(value)}.`, `Give a ${type}.`)
  return type === 'string' ? short(`/${parameter}`, value) : value
}

/** What `value` is, in words. */
function kindOf(value) {
  if (value === null) return 'null'
  if (Array.isArray(value)) return 'a list'
  return typeof value === 'object' ? 'an object' : `a ${typeof value}`
}

export const massG = byName('massG')
export const massOfVolumeG = byName('massOfVolumeG')
export const volumeOfMassMl = byName('volumeOfMassMl')
export const flakeCount = byName('flakeCount')
export const waterDensityGPerMl = byName('waterDensityGPerMl')
export const cavityMl = byName('cavityMl')
export const pieceG = byName('pieceG')
export const shotG = byName('shotG')
export const shots = byName('shots')
export const injectorLoads = byName('injectorLoads')
export const airPressurePa = byName('airPressurePa')
export const swollenMl = byName('swollenMl')
export const sinkSpeedCmPerS = byName('sinkSpeedCmPerS')
export const densityForSinkSpeedGPerMl = byName('densityForSinkSpeedGPerMl')

/** A salt loading stated another way. */
export const saltLoading = (given) => ofMix('saltLoading', given, 'loading')

/** The mass of salt that a loading takes, in g. */
export const saltMassG = (given) => ofMix('saltMassG', given, 'mass')

/** What loading is in reach. */
export function saltReach(given) {
  const [least, most] = ofMix('saltReach', given, 'reach')
  return { least, most }
}

/** How much to mix for so many pieces. */
export function batchNeed(given) {
  const { batchNeed } = scalar()
  const [totalG, drawnG, returnedG, piecesG, spruesG, keptG, inCupG, shots, shotsPerLoad, loads, shotsInLast] =
    batchNeed(...values('batchNeed', given))
  return { totalG, drawnG, returnedG, piecesG, spruesG, keptG, inCupG, shots, shotsPerLoad, loads, shotsInLast }
}

/** A mass as the tools of a bench can give it, by the way with the least handling. */
export function benchMeasure(given) {
  const { benchMeasure } = scalar()
  const [tool, massG, deviation, acts, drops, ...spoonfuls] = benchMeasure(...values('benchMeasure', given))
  return { tool: ['balance', 'spoons', 'drops'][tool], massG, deviation, acts, drops, spoonfuls }
}

/** The density of constituents mixed, each [mass in g, density in g/mL]. */
export function densityOfPartsGPerMl(parts, voids = 0) {
  const { densityOfPartsGPerMl } = scalar()
  return densityOfPartsGPerMl(typed('voids', voids, 'number'), ...pairs('parts', parts))
}

/** How many of the unit `to` the amount is. */
export function convert(amount, to, measures = 'us-customary') {
  const { convert } = scalar()
  return convert(typed('amount', amount, 'string'), typed('to', to, 'string'), typed('measures', measures, 'string'))
}

/** The reading that a ratio of softener to base gives, between measured points [ratio, reading]. */
export function hardness(points, ratio) {
  const { hardness } = scalar()
  return hardness(typed('ratio', ratio, 'number'), ...pairs('points', points))
}

/** The ratio of softener to base that gives a reading, between measured points [ratio, reading]. */
export function softenerRatio(points, reading) {
  const { softenerRatio } = scalar()
  return softenerRatio(typed('reading', reading, 'number'), ...pairs('points', points))
}

/** The first and the second numbers of a list of pairs. */
function pairs(name, given) {
  const all = items(name, given).map((pair, index) => numbers(`${name}/${index}`, pair, 2))
  return [0, 1].map((index) => Float64Array.from(all, (pair) => pair[index]))
}

/** The numbers of a list, which are so many where that is said. */
function numbers(name, given, wanted) {
  const all = items(name, given)
  if (wanted !== undefined && all.length !== wanted)
    refuse('wrong-type', `/${name}`, `"${name}" has the length ${all.length}.`, `Give ${wanted} numbers.`)
  return all.map((item, index) => typed(`${name}/${index}`, item, 'number'))
}

function items(name, given) {
  if (given === undefined) missing(name, 'Give a list.')
  if (typeof given !== 'object' || typeof given?.[Symbol.iterator] !== 'function')
    refuse('wrong-type', `/${name}`, `"${name}" is ${kindOf(given)}.`, 'Give a list.')
  return [...given]
}

/** The color difference ΔE₀₀ (CIEDE2000) of two colors [L*, a*, b*]. */
export function colorDifference(one, other) {
  const { colorDifference } = scalar()
  return colorDifference(...numbers('one', one, 3), ...numbers('other', other, 3))
}
