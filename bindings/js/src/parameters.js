// The parameters of every function that takes them by name, in the order in which the module takes them; what is left
// out has the value that stands here.
const number = { type: 'number', required: true }
const text = { type: 'string', required: true }
const optional = { type: 'number' }
const or = (value) => ({ type: typeof value, value })

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
  massG: { amount: text, densityGPerMl: number, measures: or('us-customary') },
  waterDensityGPerMl: { temperatureCelsius: number },
  cavityMl: { waterG: number, temperatureCelsius: number, airPressurePa: or(101325) },
  pieceG: { cavityMl: number, hotGPerMl: number, coldGPerMl: number, feed: number, voids: or(0) },
  shotG: { cavities: number, cavityMl: number, hotGPerMl: number, sprueMl: or(0), toppedG: or(0), voids: or(0) },
  shots: { pieces: number, cavities: number, rejects: or(0), confidence: or(0.9) },
  injectorLoads: { shots: number, shotG: number, hotGPerMl: number, holdsMl: number, keepsMl: or(0) },
  saltLoading: {
    from: text,
    value: number,
    to: text,
    baseMl: number,
    baseGPerMl: number,
    mixG: optional,
    mixMl: optional,
    saltGPerMl: number,
    scoopedGPerMl: number,
    softenerPerSalt: or(0),
    softenerGPerMl: optional,
    voids: or(0),
    mostSolids: or(0.3),
    cavityMl: optional,
    feed: or(1),
    hookG: or(0),
    hookMl: or(0),
  },
  airPressurePa: { altitudeM: number },
  swollenMl: { liquidMl: number, air: number, vacuumPa: number, airPressurePa: or(101325), vaporPa: or(0) },
  sinkSpeedCmPerS: { densityGPerMl: number, ...falling },
  densityForSinkSpeedGPerMl: { speedCmPerS: number, ...falling },
}
