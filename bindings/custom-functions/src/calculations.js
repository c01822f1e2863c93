// Made from the table of calculations by `cargo run -p pourwright-generate`: change that.

/**
 * `NAME: [function of pourwright, parameters, results]`. After a parameter: the unit that an amount as a text is converted
 * to, `1` where it is a pure number, `amount` of any kind, `text`, `word`, or `list` with the units of its columns; `?` where 0 is
 * something else than an omitted parameter. After a result: the number of its cells, where it is a list.
 */
export const CALCULATIONS = {
  CONVERT: ['convert', 'amount: amount, to: text, measures: word', 'value'],
  CONVERT_NUMBER: ['convertNumber', 'value: 1, unit: text, to: text, measures: word', 'value'],
  DOSE_MASS: [
    'doseMass',
    'amount: amount, kind: word, materialDensityGPerMl: g/mL, asScoopedGPerMl: g/mL, dropMassG: g, measures: word',
    'massG',
  ],
  MASS_OF_VOLUME: ['massOfVolume', 'volumeMl: mL, densityGPerMl: g/mL', 'massG'],
  VOLUME_OF_MASS: ['volumeOfMass', 'massG: g, densityGPerMl: g/mL', 'volumeMl'],
  DENSITY_OF_PARTS: ['densityOfParts', 'parts: list g | g/mL, voids: 1', 'densityGPerMl'],
  MIX_SHARE: ['mixShare', 'parts: list g | g/mL, part: 1', 'massShare, volumeShare'],
  SALT_CONVERT: [
    'saltConvert',
    'baseVolumeMl: mL, baseDensityGPerMl: g/mL, saltDensityGPerMl: g/mL, form: word, loading: 1, toForm: word, mixMassG: g, mixVolumeMl: mL, hotVolumeMl: mL, shotTemperatureCelsius: °C, voids: 1, saltAsScoopedGPerMl: g/mL, saltExpansionPerKelvin: 1/K, softenerPerSalt: 1, softenerDensityGPerMl: g/mL, softenerExpansionPerKelvin: 1/K, mostSolids: 1, cavityVolumeMl: mL, feed: 1 ?, hookMassG: g, hookVolumeMl: mL',
    'loading, loadingMin, loadingMax',
  ],
  SALT_MASS: [
    'saltMass',
    'baseVolumeMl: mL, baseDensityGPerMl: g/mL, saltDensityGPerMl: g/mL, form: word, loading: 1, mixMassG: g, mixVolumeMl: mL, hotVolumeMl: mL, shotTemperatureCelsius: °C, voids: 1, saltAsScoopedGPerMl: g/mL, saltExpansionPerKelvin: 1/K, softenerPerSalt: 1, softenerDensityGPerMl: g/mL, softenerExpansionPerKelvin: 1/K, mostSolids: 1, cavityVolumeMl: mL, feed: 1 ?, hookMassG: g, hookVolumeMl: mL',
    'saltMassG, saltMassMinG, saltMassMaxG, softenerMassG',
  ],
  SALT_REACH: [
    'saltReach',
    'baseVolumeMl: mL, baseDensityGPerMl: g/mL, saltDensityGPerMl: g/mL, form: word, mixMassG: g, mixVolumeMl: mL, hotVolumeMl: mL, shotTemperatureCelsius: °C, voids: 1, saltAsScoopedGPerMl: g/mL, saltExpansionPerKelvin: 1/K, softenerPerSalt: 1, softenerDensityGPerMl: g/mL, softenerExpansionPerKelvin: 1/K, mostSolids: 1, cavityVolumeMl: mL, feed: 1 ?, hookMassG: g, hookVolumeMl: mL',
    'loadingMin, loadingMax',
  ],
  SALT_FOR_DENSITY: [
    'saltForDensity',
    'baseVolumeMl: mL, baseDensityGPerMl: g/mL, saltDensityGPerMl: g/mL, finishedDensityGPerMl: g/mL, voids: 1, mostSolids: 1',
    'saltMassG',
  ],
  SALT_FOR_SINK_RATE: [
    'saltForSinkRate',
    'baseVolumeMl: mL, baseDensityGPerMl: g/mL, saltDensityGPerMl: g/mL, sinkRateCmPerS: cm/s, cavityVolumeMl: mL, diameterMm: mm, waterTemperatureCelsius: °C, lengthMm: mm, shape: word, mixMassG: g, mixVolumeMl: mL, hotVolumeMl: mL, shotTemperatureCelsius: °C, voids: 1, saltExpansionPerKelvin: 1/K, softenerPerSalt: 1, softenerDensityGPerMl: g/mL, softenerExpansionPerKelvin: 1/K, mostSolids: 1, feed: 1 ?, hookMassG: g, hookVolumeMl: mL, salinityPractical: 1 ?, salinityAbsolute: 1 ?, dropDepthM: m, dropTimeS: s, dropDensityGPerMl: g/mL',
    'saltMassG, softenerMassG, finishedDensityGPerMl',
  ],
  SHOT_FILL: [
    'shotFill',
    'cavities: 1, cavityVolumeMl: mL, coldDensityGPerMl: g/mL, hotDensityGPerMl: g/mL, voids: 1, feed: 1 ?, sprueVolumeMl: mL, toppedMassG: g, layerShare: 1',
    'shotMassG, piecesMassG, sprueMassG, missingMassG, pieceMassG, pieceMassMinG, pieceMassMaxG, fed',
  ],
  PIECE_MASS: [
    'pieceMass',
    'cavityVolumeMl: mL, coldDensityGPerMl: g/mL, hotDensityGPerMl: g/mL, voids: 1, feed: 1 ?',
    'pieceMassG, pieceMassMinG, pieceMassMaxG',
  ],
  SHOTS: ['shots', 'pieces: 1, cavities: 1, rejects: 1, confidence: 1', 'shots, cast'],
  INJECTOR_LOADS: [
    'injectorLoads',
    'shots: 1, shotMassG: g, shotDensityGPerMl: g/mL, injectorCapacityMl: mL, injectorResidueMl: mL',
    'loads, shotsPerLoad, shotsInLast',
  ],
  BATCH_NEED: [
    'batchNeed',
    'pieces: 1, cavities: 1, shotMassG: g, shotDensityGPerMl: g/mL, injectorCapacityMl: mL, injectorResidueMl: mL, cleanings: 1, sprueMassG: g, returned: 1, potFilmG: g, potHeelG: g, rejects: 1, confidence: 1',
    'totalMassG, drawnMassG, returnedMassG, piecesMassG, spruesMassG, keptMassG, inCupMassG, shots, loads, shotsPerLoad, shotsInLast',
  ],
  BASE_TO_MARK: [
    'baseToMark',
    'mixNeededG: g, baseFraction: 1, baseDensityGPerMl: g/mL, cupCapacityMl: mL, cupMarkMl: mL, shotMassG: g',
    'baseVolumeMl, baseMassG, mixMassG, surplusMassG, extraShots',
  ],
  LEAST_POT: [
    'leastPot',
    'doses: list g | 1 | 1, baseFraction: 1, ovenLeastG: g, injectorLeastG: g',
    'mixMassG, baseMassG',
  ],
  REJECT_RATE: ['rejectRate', 'castPieces: 1, rejectCount: 1, confidence: 1', 'rejects, rejectsMin, rejectsMax'],
  BENCH_MEASURE: [
    'benchMeasure',
    'massToMeasureG: g, tolerance: 1, balanceReadabilityG: g, balanceCapacityG: g, balanceLeastLoadG: g, spoonsMl: list mL, cups: list mL | mL, asMeasuredDensityGPerMl: g/mL, dropMassG: g',
    'massG, deviation, tool, acts, drops, spoonfuls: 8, cup, cupFillings, cupMark',
  ],
  SINK_RATE: [
    'sinkRate',
    'pieceDensityGPerMl: g/mL, pieceVolumeMl: mL, diameterMm: mm, waterTemperatureCelsius: °C, lengthMm: mm, shape: word, hookMassG: g, hookVolumeMl: mL, salinityPractical: 1 ?, salinityAbsolute: 1 ?, densityUncertaintyGPerMl: g/mL, depthM: m, dropDepthM: m, dropTimeS: s, dropDensityGPerMl: g/mL',
    'sinkRateCmPerS, sinkRateMinCmPerS, sinkRateMaxCmPerS, motion, reynolds, dragCoefficient, sinkTimeS',
  ],
  DENSITY_FOR_SINK_RATE: [
    'densityForSinkRate',
    'sinkRateCmPerS: cm/s, pieceVolumeMl: mL, diameterMm: mm, waterTemperatureCelsius: °C, lengthMm: mm, shape: word, hookMassG: g, hookVolumeMl: mL, salinityPractical: 1 ?, salinityAbsolute: 1 ?, dropDepthM: m, dropTimeS: s, dropDensityGPerMl: g/mL',
    'pieceDensityGPerMl',
  ],
  HARDNESS: ['hardness', 'points: list 1 | 1, scale: word, softenerRatio: 1', 'hardness'],
  SOFTENER_RATIO: ['softenerRatio', 'points: list 1 | 1, scale: word, hardness: 1', 'softenerRatio'],
  SALTED_SOFTENER: ['saltedSoftener', 'saltedPoints: list 1 | 1, saltOfBase: 1', 'softenerRatio'],
  WATER_DENSITY: ['waterDensity', 'waterTemperatureCelsius: °C', 'densityGPerMl'],
  CAVITY_OF_WATER: [
    'cavityOfWater',
    'waterMassG: g, waterTemperatureCelsius: °C, airPressureKpa: kPa',
    'cavityVolumeMl',
  ],
  STANDARD_PRESSURE: ['standardPressure', 'altitudeM: m', 'stationPressureKpa'],
  STATION_PRESSURE: ['stationPressure', 'reportedPressureKpa: kPa, altitudeM: m', 'stationPressureKpa'],
  SWOLLEN_VOLUME: [
    'swollenVolume',
    'liquidVolumeMl: mL, entrainedAir: 1, stationPressureKpa: kPa, gaugeVacuumKpa: kPa ?, absolutePressureKpa: kPa ?, dialToleranceKpa: kPa ?, vaporPressureKpa: kPa, dampAtCelsius: °C',
    'swollenVolumeMl, standingVolumeMl, absolutePressureKpa',
  ],
  ENTRAINED_AIR: [
    'entrainedAir',
    'rise: 1, stationPressureKpa: kPa, gaugeVacuumKpa: kPa ?, absolutePressureKpa: kPa ?, dialToleranceKpa: kPa ?, vaporPressureKpa: kPa, dampAtCelsius: °C',
    'entrainedAir',
  ],
  DEGAS_VESSEL: [
    'degasVessel',
    'liquidVolumeMl: mL, entrainedAir: 1, stationPressureKpa: kPa, gaugeVacuumKpa: kPa ?, absolutePressureKpa: kPa ?, dialToleranceKpa: kPa ?, vaporPressureKpa: kPa, dampAtCelsius: °C, vesselSpare: 1 ?, vesselBrimMl: mL, vesselMarkMl: mL',
    'vesselVolumeMl, fillMarkMl, fills, fillLevelMl, fillSwollenMl',
  ],
  FLAKE_COUNT: [
    'flakeCount',
    'cut: text, thicknessUm: µm, filmDensityGPerMl: g/mL, flakeDoseG: g',
    'particles, areaCm2',
  ],
  FLAKE_SWAP: [
    'flakeSwap',
    'cut: text, thicknessUm: µm, filmDensityGPerMl: g/mL, flakeDoseG: g, otherCut: text, otherThicknessUm: µm, otherFilmDensityGPerMl: g/mL, otherAsScoopedGPerMl: g/mL, alike: word',
    'massG, scoopMl, countRatio, areaRatio',
  ],
  COLOR_DIFFERENCE: [
    'colorDifference',
    'lightness: 1, a: 1, b: 1, otherLightness: 1, otherA: 1, otherB: 1',
    'difference',
  ],
  EQUIVALENT_TIME: [
    'equivalentTime',
    'readings: list s | °C, activationEnergyKjPerMol: kJ/mol, referenceTemperatureCelsius: °C',
    'equivalentTimeS',
  ],
  BUDGET_LEFT: [
    'budgetLeft',
    'heatBudgetS: s, equivalentTimeS: s, budgetWith: 1, stabilizerDose: 1 ?, extraTimeS: s, extraMost: 1 ?',
    'budgetS, leftS, overspentS',
  ],
  HEAT_TIME: [
    'heatTime',
    'potMassG: g, specificHeatJPerGK: J/(g.K), heatedFromCelsius: °C, heatedToCelsius: °C, timings: list g | °C | °C | s, ovenPowerW: W, setting: 1, specificHeatRisePerKelvin: 1/K, timedSpecificHeatJPerGK: J/(g.K), vesselMassG: g, vesselSpecificHeatJPerGK: J/(g.K)',
    'heatTimeS, heatTimeUncertaintyS, powerW, beyond',
  ],
  NEXT_BURST: [
    'nextBurst',
    'potMassG: g, specificHeatJPerGK: J/(g.K), readingCelsius: °C, windowBottomCelsius: °C, windowTopCelsius: °C, timings: list g | °C | °C | s, ovenPowerW: W, setting: 1, specificHeatRisePerKelvin: 1/K, timedSpecificHeatJPerGK: J/(g.K), vesselMassG: g, vesselSpecificHeatJPerGK: J/(g.K), aimCelsius: °C ?, thermometerKelvin: 1 ?, burstStepS: s, longestBurstS: s, ovenTurnS: s ?, measures: word',
    'burstS, expectedCelsius, shootFromCelsius, shootToCelsius, bursts, ovenTimeS',
  ],
  STAYS_HOT: [
    'staysHot',
    'potMassG: g, hotFromCelsius: °C, hotToCelsius: °C, watchedMassG: g, watchedFromCelsius: °C, watchedToCelsius: °C, watchedTimeS: s, roomCelsius: °C ?, stoodS: s ?',
    'timeConstantS, hotForS, halfFullS, afterCelsius',
  ],
  POT_HEATS: [
    'potHeats',
    'potMassG: g, clockRuns: list 1 | g | s | s | 1, hotForS: s, clockFromCelsius: °C ?, clockToCelsius: °C ?, watchedMassG: g, watchedFromCelsius: °C ?, watchedToCelsius: °C ?, watchedTimeS: s, roomCelsius: °C ?, ovenTimeS: s ?',
    'reheats, firstShots, shootingTimeS, totalTimeS',
  ],
  SETTING_TIME: [
    'settingTime',
    'sectionShape: word, sectionThicknessMm: mm, shotAtCelsius: °C, moldAtCelsius: °C ?, takeOutCelsius: °C ?, piecePoint: word, diffusivityM2PerS: m2/s, shotMassG: g, shotSpecificHeatJPerGK: J/(g.K), moldMassG: g, moldSpecificHeatJPerGK: J/(g.K), handsS: s, molds: 1',
    'settingTimeS, settingTimeMinS, settingTimeMaxS, warmsKelvin, inARow, shotEveryS',
  ],
  STIR_EVERY: [
    'stirEvery',
    'grainMm: mm, grainDensityGPerMl: g/mL, meltDensityGPerMl: g/mL, meltDepthMm: mm, meltViscosityMinMPaS: mPa.s, meltViscosityMaxMPaS: mPa.s, solidsShare: 1, unstirred: 1',
    'stirEveryS, stirEveryMaxS, settlingMinCmPerS, settlingMaxCmPerS',
  ],
  VISCOSITY_OF_BALL: [
    'viscosityOfBall',
    'ballDiameterMm: mm, ballDensityGPerMl: g/mL, meltDensityGPerMl: g/mL, ballDepthMm: mm, ballTimeS: s',
    'meltViscosityMPaS',
  ],
  CAVITY_OF_WEIGHTS: [
    'cavityOfWeights',
    'weightsG: list g, balanceReadabilityG: g, coldDensityGPerMl: g/mL, hotDensityGPerMl: g/mL, voids: 1, feed: 1 ?, feedUncertainty: 1',
    'cavityVolumeMl, cavityVolumeUncertaintyMl, meanG, deviationG',
  ],
  FEED_OF_WEIGHTS: [
    'feedOfWeights',
    'weightsG: list g, balanceReadabilityG: g, coldDensityGPerMl: g/mL, cavityVolumeMl: mL, hotDensityGPerMl: g/mL, voids: 1, volumeUncertaintyMl: mL',
    'feed, feedUncertainty, meanG, deviationG',
  ],
  DROP_OF_WEIGHINGS: [
    'dropOfWeighings',
    'dropsWeighed: list 1 | g, balanceReadabilityG: g',
    'dropMassG, dropMassUncertaintyG, scatterG',
  ],
  AS_SCOOPED_OF_WEIGHINGS: [
    'asScoopedOfWeighings',
    'scoopsWeighed: list 1 | g, spoonVolumeMl: mL, balanceReadabilityG: g, volumeUncertaintyMl: mL',
    'asScoopedGPerMl, asScoopedUncertaintyGPerMl, spoonfulG',
  ],
  RESIDUE_OF_WEIGHINGS: [
    'residueOfWeighings',
    'injectorWeighedG: list g | g, residueDensityGPerMl: g/mL, balanceReadabilityG: g, densityUncertaintyGPerMl: g/mL',
    'injectorResidueMl, injectorResidueUncertaintyMl, residueMassG',
  ],
  PRICE: ['price', 'cost: 1, costMargin: 1', 'price'],
}
