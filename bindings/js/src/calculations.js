// Made from the table of calculations by `cargo run -p pourwright-generate`: change that.
import { calculations, columnar, functions } from './call.js'

/** In the order of the module. */
const CALCULATIONS = calculations({
  convert: ['amount: text, to: text, measures: text', 'value'],
  convertNumber: ['value, unit: text, to: text, measures: text', 'value'],
  doseMass: ['amount: text, kind: text, materialDensityGPerMl, asScoopedGPerMl, dropMassG, measures: text', 'massG'],
  massOfVolume: ['volumeMl, densityGPerMl', 'massG'],
  volumeOfMass: ['massG, densityGPerMl', 'volumeMl'],
  densityOfParts: ['parts: 2, voids', 'densityGPerMl'],
  mixShare: ['parts: 2, part', 'massShare, volumeShare'],
  saltConvert: [
    'baseVolumeMl, baseDensityGPerMl, saltDensityGPerMl, form: text, loading, toForm: text, mixMassG, mixVolumeMl, hotVolumeMl, shotTemperatureCelsius, voids, saltAsScoopedGPerMl, saltExpansionPerKelvin, softenerPerSalt, softenerDensityGPerMl, softenerExpansionPerKelvin, mostSolids, cavityVolumeMl, feed, hookMassG, hookVolumeMl',
    'loading, loadingMin, loadingMax',
  ],
  saltMass: [
    'baseVolumeMl, baseDensityGPerMl, saltDensityGPerMl, form: text, loading, mixMassG, mixVolumeMl, hotVolumeMl, shotTemperatureCelsius, voids, saltAsScoopedGPerMl, saltExpansionPerKelvin, softenerPerSalt, softenerDensityGPerMl, softenerExpansionPerKelvin, mostSolids, cavityVolumeMl, feed, hookMassG, hookVolumeMl',
    'saltMassG, saltMassMinG, saltMassMaxG, softenerMassG',
  ],
  saltReach: [
    'baseVolumeMl, baseDensityGPerMl, saltDensityGPerMl, form: text, mixMassG, mixVolumeMl, hotVolumeMl, shotTemperatureCelsius, voids, saltAsScoopedGPerMl, saltExpansionPerKelvin, softenerPerSalt, softenerDensityGPerMl, softenerExpansionPerKelvin, mostSolids, cavityVolumeMl, feed, hookMassG, hookVolumeMl',
    'loadingMin, loadingMax',
  ],
  saltForDensity: [
    'baseVolumeMl, baseDensityGPerMl, saltDensityGPerMl, finishedDensityGPerMl, voids, mostSolids',
    'saltMassG',
  ],
  saltForSinkRate: [
    'baseVolumeMl, baseDensityGPerMl, saltDensityGPerMl, sinkRateCmPerS, cavityVolumeMl, diameterMm, waterTemperatureCelsius, lengthMm, shape: text, mixMassG, mixVolumeMl, hotVolumeMl, shotTemperatureCelsius, voids, saltExpansionPerKelvin, softenerPerSalt, softenerDensityGPerMl, softenerExpansionPerKelvin, mostSolids, feed, hookMassG, hookVolumeMl, salinityPractical, salinityAbsolute, dropDepthM, dropTimeS, dropDensityGPerMl',
    'saltMassG, softenerMassG, finishedDensityGPerMl',
  ],
  shotFill: [
    'cavities, cavityVolumeMl, coldDensityGPerMl, hotDensityGPerMl, voids, feed, sprueVolumeMl, toppedMassG, layerShare',
    'shotMassG, piecesMassG, sprueMassG, missingMassG, pieceMassG, pieceMassMinG, pieceMassMaxG, fed',
  ],
  pieceMass: [
    'cavityVolumeMl, coldDensityGPerMl, hotDensityGPerMl, voids, feed',
    'pieceMassG, pieceMassMinG, pieceMassMaxG',
  ],
  shots: ['pieces, cavities, rejects, confidence', 'shots, cast'],
  injectorLoads: [
    'shots, shotMassG, shotDensityGPerMl, injectorCapacityMl, injectorResidueMl',
    'loads, shotsPerLoad, shotsInLast',
  ],
  batchNeed: [
    'pieces, cavities, shotMassG, shotDensityGPerMl, injectorCapacityMl, injectorResidueMl, cleanings, sprueMassG, returned, potFilmG, potHeelG, rejects, confidence',
    'totalMassG, drawnMassG, returnedMassG, piecesMassG, spruesMassG, keptMassG, inCupMassG, shots, loads, shotsPerLoad, shotsInLast',
  ],
  baseToMark: [
    'mixNeededG, baseFraction, baseDensityGPerMl, cupCapacityMl, cupMarkMl, shotMassG',
    'baseVolumeMl, baseMassG, mixMassG, surplusMassG, extraShots',
  ],
  leastPot: ['doses: 3, baseFraction, ovenLeastG, injectorLeastG', 'mixMassG, baseMassG'],
  rejectRate: ['castPieces, rejectCount, confidence', 'rejects, rejectsMin, rejectsMax'],
  benchMeasure: [
    'massToMeasureG, tolerance, balanceReadabilityG, balanceCapacityG, balanceLeastLoadG, spoonsMl: 1, cups: 2, asMeasuredDensityGPerMl, dropMassG',
    'massG, deviation, tool: word, acts, drops, spoonfuls: list, cup, cupFillings, cupMark',
  ],
  sinkRate: [
    'pieceDensityGPerMl, pieceVolumeMl, diameterMm, waterTemperatureCelsius, lengthMm, shape: text, hookMassG, hookVolumeMl, salinityPractical, salinityAbsolute, densityUncertaintyGPerMl, depthM, dropDepthM, dropTimeS, dropDensityGPerMl',
    'sinkRateCmPerS, sinkRateMinCmPerS, sinkRateMaxCmPerS, motion: word, reynolds, dragCoefficient, sinkTimeS',
  ],
  densityForSinkRate: [
    'sinkRateCmPerS, pieceVolumeMl, diameterMm, waterTemperatureCelsius, lengthMm, shape: text, hookMassG, hookVolumeMl, salinityPractical, salinityAbsolute, dropDepthM, dropTimeS, dropDensityGPerMl',
    'pieceDensityGPerMl',
  ],
  hardness: ['points: 2, scale: text, softenerRatio', 'hardness'],
  softenerRatio: ['points: 2, scale: text, hardness', 'softenerRatio'],
  saltedSoftener: ['saltedPoints: 2, saltOfBase', 'softenerRatio'],
  waterDensity: ['waterTemperatureCelsius', 'densityGPerMl'],
  cavityOfWater: ['waterMassG, waterTemperatureCelsius, airPressureKpa', 'cavityVolumeMl'],
  standardPressure: ['altitudeM', 'stationPressureKpa'],
  stationPressure: ['reportedPressureKpa, altitudeM', 'stationPressureKpa'],
  swollenVolume: [
    'liquidVolumeMl, entrainedAir, stationPressureKpa, gaugeVacuumKpa, absolutePressureKpa, dialToleranceKpa, vaporPressureKpa, dampAtCelsius',
    'swollenVolumeMl, standingVolumeMl, absolutePressureKpa',
  ],
  entrainedAir: [
    'rise, stationPressureKpa, gaugeVacuumKpa, absolutePressureKpa, dialToleranceKpa, vaporPressureKpa, dampAtCelsius',
    'entrainedAir',
  ],
  degasVessel: [
    'liquidVolumeMl, entrainedAir, stationPressureKpa, gaugeVacuumKpa, absolutePressureKpa, dialToleranceKpa, vaporPressureKpa, dampAtCelsius, vesselSpare, vesselBrimMl, vesselMarkMl',
    'vesselVolumeMl, fillMarkMl, fills, fillLevelMl, fillSwollenMl',
  ],
  flakeCount: ['cut: text, thicknessUm, filmDensityGPerMl, flakeDoseG', 'particles, areaCm2'],
  flakeSwap: [
    'cut: text, thicknessUm, filmDensityGPerMl, flakeDoseG, otherCut: text, otherThicknessUm, otherFilmDensityGPerMl, otherAsScoopedGPerMl, alike: text',
    'massG, scoopMl, countRatio, areaRatio',
  ],
  colorDifference: ['lightness, a, b, otherLightness, otherA, otherB', 'difference'],
  equivalentTime: ['readings: 2, activationEnergyKjPerMol, referenceTemperatureCelsius', 'equivalentTimeS'],
  budgetLeft: [
    'heatBudgetS, equivalentTimeS, budgetWith, stabilizerDose, extraTimeS, extraMost',
    'budgetS, leftS, overspentS',
  ],
  heatTime: [
    'potMassG, specificHeatJPerGK, heatedFromCelsius, heatedToCelsius, timings: 4, ovenPowerW, setting, specificHeatRisePerKelvin, timedSpecificHeatJPerGK, vesselMassG, vesselSpecificHeatJPerGK',
    'heatTimeS, heatTimeUncertaintyS, powerW, beyond',
  ],
  nextBurst: [
    'potMassG, specificHeatJPerGK, readingCelsius, windowBottomCelsius, windowTopCelsius, timings: 4, ovenPowerW, setting, specificHeatRisePerKelvin, timedSpecificHeatJPerGK, vesselMassG, vesselSpecificHeatJPerGK, aimCelsius, thermometerKelvin, burstStepS, longestBurstS, ovenTurnS, measures: text',
    'burstS, expectedCelsius, shootFromCelsius, shootToCelsius, bursts, ovenTimeS',
  ],
  staysHot: [
    'potMassG, hotFromCelsius, hotToCelsius, watchedMassG, watchedFromCelsius, watchedToCelsius, watchedTimeS, roomCelsius, stoodS',
    'timeConstantS, hotForS, halfFullS, afterCelsius',
  ],
  potHeats: [
    'potMassG, clockRuns: 5, hotForS, clockFromCelsius, clockToCelsius, watchedMassG, watchedFromCelsius, watchedToCelsius, watchedTimeS, roomCelsius, ovenTimeS',
    'reheats, firstShots, shootingTimeS, totalTimeS',
  ],
  settingTime: [
    'sectionShape: text, sectionThicknessMm, shotAtCelsius, moldAtCelsius, takeOutCelsius, piecePoint: text, diffusivityM2PerS, shotMassG, shotSpecificHeatJPerGK, moldMassG, moldSpecificHeatJPerGK, handsS, molds',
    'settingTimeS, settingTimeMinS, settingTimeMaxS, warmsKelvin, inARow, shotEveryS',
  ],
  stirEvery: [
    'grainMm, grainDensityGPerMl, meltDensityGPerMl, meltDepthMm, meltViscosityMinMPaS, meltViscosityMaxMPaS, solidsShare, unstirred',
    'stirEveryS, stirEveryMaxS, settlingMinCmPerS, settlingMaxCmPerS',
  ],
  viscosityOfBall: [
    'ballDiameterMm, ballDensityGPerMl, meltDensityGPerMl, ballDepthMm, ballTimeS',
    'meltViscosityMPaS',
  ],
  cavityOfWeights: [
    'weightsG: 1, balanceReadabilityG, coldDensityGPerMl, hotDensityGPerMl, voids, feed, feedUncertainty',
    'cavityVolumeMl, cavityVolumeUncertaintyMl, meanG, deviationG',
  ],
  feedOfWeights: [
    'weightsG: 1, balanceReadabilityG, coldDensityGPerMl, cavityVolumeMl, hotDensityGPerMl, voids, volumeUncertaintyMl',
    'feed, feedUncertainty, meanG, deviationG',
  ],
  dropOfWeighings: ['dropsWeighed: 2, balanceReadabilityG', 'dropMassG, dropMassUncertaintyG, scatterG'],
  asScoopedOfWeighings: [
    'scoopsWeighed: 2, spoonVolumeMl, balanceReadabilityG, volumeUncertaintyMl',
    'asScoopedGPerMl, asScoopedUncertaintyGPerMl, spoonfulG',
  ],
  residueOfWeighings: [
    'injectorWeighedG: 2, residueDensityGPerMl, balanceReadabilityG, densityUncertaintyGPerMl',
    'injectorResidueMl, injectorResidueUncertaintyMl, residueMassG',
  ],
  price: ['cost, costMargin', 'price'],
})

export const {
  convert,
  convertNumber,
  doseMass,
  massOfVolume,
  volumeOfMass,
  densityOfParts,
  mixShare,
  saltConvert,
  saltMass,
  saltReach,
  saltForDensity,
  saltForSinkRate,
  shotFill,
  pieceMass,
  shots,
  injectorLoads,
  batchNeed,
  baseToMark,
  leastPot,
  rejectRate,
  benchMeasure,
  sinkRate,
  densityForSinkRate,
  hardness,
  softenerRatio,
  saltedSoftener,
  waterDensity,
  cavityOfWater,
  standardPressure,
  stationPressure,
  swollenVolume,
  entrainedAir,
  degasVessel,
  flakeCount,
  flakeSwap,
  colorDifference,
  equivalentTime,
  budgetLeft,
  heatTime,
  nextBurst,
  staysHot,
  potHeats,
  settingTime,
  stirEvery,
  viscosityOfBall,
  cavityOfWeights,
  feedOfWeights,
  dropOfWeighings,
  asScoopedOfWeighings,
  residueOfWeighings,
  price,
} = functions(CALCULATIONS)

/** The same for columns of numbers. */
export const columns = columnar(CALCULATIONS)
