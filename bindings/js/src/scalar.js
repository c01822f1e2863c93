// Plain numbers in, a plain number out. Parameters go by name, the unit its last part.
import { refuse } from './error.js'
import { instance } from './instance.js'
import { short } from './json.js'
import { PARAMETERS } from './parameters.js'

function byName(name) {
  const parameters = Object.entries(PARAMETERS[name])
  return (given = {}) => {
    const call = instance()[name]
    const values = parameters.map(([parameter, wanted]) => read(given, parameter, wanted))
    const unknown = Object.keys(given).find((key) => !Object.hasOwn(PARAMETERS[name], key))
    if (unknown !== undefined) {
      const known = parameters.map(([parameter]) => parameter).join(', ')
      refuse('unknown-field', `/${unknown}`, `There is no parameter "${unknown}".`, `Known: ${known}.`)
    }
    return call(...values)
  }
}

function read(given, parameter, wanted) {
  const value = given[parameter]
  if (value === undefined) {
    if (wanted.required)
      refuse('missing-field', `/${parameter}`, `"${parameter}" is missing.`, `Give a ${wanted.type}.`)
    return wanted.value
  }
  return typed(parameter, value, wanted.type)
}

/** `value`, unless it is of another type: JavaScript would make a number of anything. */
function typed(parameter, value, type) {
  if (typeof value !== type) {
    refuse(
      'wrong-type',
      `/${parameter}`,
      `"${parameter}" is ${value === null ? 'null' : `a ${typeof value}`}.`,
      `Give a ${type}.`,
    )
  }
  return type === 'string' ? short(`/${parameter}`, value) : value
}

export const massG = byName('massG')
export const waterDensityGPerMl = byName('waterDensityGPerMl')
export const cavityMl = byName('cavityMl')
export const pieceG = byName('pieceG')
export const shotG = byName('shotG')
export const shots = byName('shots')
export const injectorLoads = byName('injectorLoads')
export const saltLoading = byName('saltLoading')
export const airPressurePa = byName('airPressurePa')
export const swollenMl = byName('swollenMl')
export const sinkSpeedCmPerS = byName('sinkSpeedCmPerS')
export const densityForSinkSpeedGPerMl = byName('densityForSinkSpeedGPerMl')

/** How many of the unit `to` the amount is. */
export function convert(amount, to, measures = 'us-customary') {
  const { convert } = instance()
  return convert(typed('amount', amount, 'string'), typed('to', to, 'string'), typed('measures', measures, 'string'))
}

/** The reading that a ratio of softener to base gives, between measured points [ratio, reading]. */
export function hardness(points, ratio) {
  const { hardness } = instance()
  return hardness(typed('ratio', ratio, 'number'), ...lists(points))
}

/** The ratio of softener to base that gives a reading, between measured points [ratio, reading]. */
export function softenerRatio(points, reading) {
  const { softenerRatio } = instance()
  return softenerRatio(typed('reading', reading, 'number'), ...lists(points))
}

function lists(points) {
  const all = [...points]
  return [0, 1].map((index) =>
    Float64Array.from(all, (point, i) => typed(`points/${i}/${index}`, point[index], 'number')),
  )
}

/** The color difference ΔE₀₀ (CIEDE2000) of two colors [L*, a*, b*]. */
export function colorDifference(one, other) {
  const { colorDifference } = instance()
  const values = [...one, ...other].map((value) => typed('color', value, 'number'))
  if (values.length !== 6) refuse('wrong-type', '', 'A color is not three numbers.', 'Give [L*, a*, b*] twice.')
  return colorDifference(...values)
}
