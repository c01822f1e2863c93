import { refuse } from './error.js'

// The parameters of every function that takes them by name, in the order in which the module takes them; what is left
// out has the value that stands here. What `needs` another is not given alone.
const number = { type: 'number', required: true }
const text = { type: 'string', required: true }
const optional = { type: 'number' }
/** Zero or above, and no slip of units, where no calculation checks it. */
const quantity = { ...number, check: believable }
/** JavaScript has no whole numbers of its own, and the module would drop what is behind the point. */
const count = { ...number, check: whole }
const or = (value) => ({ type: typeof value, value })
const needing = (needs, wanted) => ({ ...wanted, needs })

function believable(path, value) {
  if (!(value >= 0 && value <= 1e15))
    refuse('out-of-range', path, `${value} is not from 0 to 1e15.`, 'Check the sign and the unit.')
}

function whole(path, value) {
  if (value >>> 0 !== value)
    refuse('not-a-count', path, `${value} is no count.`, 'Give a whole number from 0 to 4294967295.')
}

const batch = { pieces: count, cavities: count, rejects: or(0), confidence: or(0.9) }

/** A mix before salt. */
export const MIX = {
  baseMl: number,
  baseGPerMl: number,
  mixG: needing('mixMl', optional),
  mixMl: needing('mixG', optional),
  saltGPerMl: number,
  scoopedGPerMl: optional,
  softenerPerSalt: needing('softenerGPerMl', or(0)),
  softenerGPerMl: optional,
  voids: or(0),
  mostSolids: or(0.3),
  cavityMl: optional,
  feed: or(1),
  hookG: or(0),
  hookMl: or(0),
}

const falling = {
  volumeMl: number,
  diameterMm: number,
  lengthMm: optional,
  hookG: or(0),
  hookMl: or(0),
  waterCelsius: number,
  salinity: or(0),
}

export const PARAMETERS = {
  massG: { amount: text, densityGPerMl: number, dropG: optional, measures: or('us-customary') },
  massOfVolumeG: { volumeMl: quantity, densityGPerMl: number },
  volumeOfMassMl: { massG: quantity, densityGPerMl: number },
  flakeCount: { cut: text, thicknessUm: number, filmGPerMl: number, doseG: number },
  waterDensityGPerMl: { temperatureCelsius: number },
  cavityMl: { waterG: number, temperatureCelsius: number, airPressurePa: or(101325) },
  pieceG: { cavityMl: number, hotGPerMl: number, coldGPerMl: number, feed: number, voids: or(0) },
  shotG: { cavities: count, cavityMl: number, hotGPerMl: number, sprueMl: or(0), toppedG: or(0), voids: or(0) },
  shots: batch,
  batchNeed: {
    ...batch,
    shotG: number,
    sprueG: or(0),
    returned: or(0),
    hotGPerMl: number,
    holdsMl: number,
    keepsMl: or(0),
    cleanings: { ...count, required: false, value: 1 },
    filmG: or(0),
    heelG: or(0),
  },
  benchMeasure: {
    massG: number,
    tolerance: or(0.05),
    balanceReadsG: optional,
    balanceToG: needing('balanceReadsG', optional),
    balanceFromG: needing('balanceReadsG', or(0)),
    asMeasuredGPerMl: optional,
    dropG: optional,
    spoonsMl: { type: 'list', value: [] },
  },
  injectorLoads: { shots: count, shotG: number, hotGPerMl: number, holdsMl: number, keepsMl: or(0) },
  saltLoading: { ...MIX, from: text, value: number, to: text },
  saltMassG: { ...MIX, form: text, value: number },
  saltReach: { ...MIX, form: text },
  airPressurePa: { altitudeM: number },
  swollenMl: { liquidMl: number, air: number, vacuumPa: number, airPressurePa: or(101325), vaporPa: or(0) },
  sinkSpeedCmPerS: { densityGPerMl: number, ...falling },
  densityForSinkSpeedGPerMl: { speedCmPerS: number, ...falling },
}
