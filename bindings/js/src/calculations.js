// Made from the table of calculations by `cargo run -p pourwright-generate`: change that.
import { calculations, columnar, functions } from './call.js'

/** In the order of the module. */
const CALCULATIONS = calculations({
  convert: ['amount: text, to: text, measures: text', 'value'],
  massOfVolume: ['volumeMl, densityGPerMl', 'massG'],
  densityOfParts: ['parts: 2, voids', 'densityGPerMl'],
  saltConvert: [
    'baseVolumeMl, baseDensityGPerMl, saltDensityGPerMl, form: text, loading, toForm: text, mixMassG, mixVolumeMl, hotVolumeMl, shotTemperatureCelsius, voids, saltAsScoopedGPerMl, saltExpansionPerKelvin, softenerPerSalt, softenerDensityGPerMl, softenerExpansionPerKelvin, mostSolids, cavityVolumeMl, feed, hookMassG, hookVolumeMl',
    'loading, loadingMin, loadingMax',
  ],
  shotFill: [
    'cavities, cavityVolumeMl, coldDensityGPerMl, hotDensityGPerMl, voids, feed, sprueVolumeMl, toppedMassG, layerShare',
    'shotMassG, piecesMassG, sprueMassG, missingMassG, pieceMassG, pieceMassMinG, pieceMassMaxG, fed',
  ],
  pieceMass: [
    'cavityVolumeMl, coldDensityGPerMl, hotDensityGPerMl, voids, feed',
    'pieceMassG, pieceMassMinG, pieceMassMaxG',
  ],
  benchMeasure: [
    'massToMeasureG, tolerance, balanceReadabilityG, balanceCapacityG, balanceLeastLoadG, spoonsMl: 1, cups: 2, asMeasuredDensityGPerMl, dropMassG',
    'massG, deviation, tool: word, acts, drops, spoonfuls: list, cup, cupFillings, cupMark',
  ],
})

export const {
  convert,
  massOfVolume,
  densityOfParts,
  saltConvert,
  shotFill,
  pieceMass,
  benchMeasure,
} = functions(CALCULATIONS)

/** The same for columns of numbers. */
export const columns = columnar(CALCULATIONS)
