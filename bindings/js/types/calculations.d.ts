// Made from the table of calculations by `cargo run -p pourwright-generate`: change that.

/**
 * Converts an amount as a person writes it, such as `1 1/4 cup` or `330 °F`, exactly, and rounds once.
 *
 * A text that can be read two ways (`6 oz`, `1,25 cup`) is refused with both readings in the message.
 *
 * @example
 * convert({ amount: '1 1/4 cup', to: 'mL' })
 * // { value: 295.735295625 }
 */
export function convert(parameters: {
  /**
   * An amount as a person writes it: `1 1/4 cup`, `40 drops`, `330 °F`. Range: 0 or above; a temperature above absolute
   * zero.
   */
  amount: string
  /** The unit of the answer, by trade symbol or UCUM code. Range: a unit of the same dimension. */
  to: string
  /** The system of measures: what a cup, a spoon and a fluid ounce hold. Default: us-customary. */
  measures?: 'us-customary' | 'us-label' | 'metric' | 'imperial'
}): {
  /** The number, in the unit of `to`. Unit: any. */
  value: number
}

/**
 * Converts a number of one unit into another.
 *
 * Units are known by trade symbol and by UCUM code: `cupMl`, `[tsp_us]`, `g/mL`. Laws between units hold on bits: 48
 * tsp are 1 cup.
 *
 * @example
 * convertNumber({ value: 48, unit: 'tsp', to: 'cup' })
 * // { value: 1 }
 */
export function convertNumber(parameters: {
  /** The number to convert. Unit: any; 0 or above; a temperature above absolute zero. */
  value: number
  /** The unit of the number, by trade symbol or UCUM code. Range: a unit. */
  unit: string
  /** The unit of the answer, by trade symbol or UCUM code. Range: a unit of the same dimension. */
  to: string
  /** The system of measures: what a cup, a spoon and a fluid ounce hold. Default: us-customary. */
  measures?: 'us-customary' | 'us-label' | 'metric' | 'imperial'
}): {
  /** The number, in the unit of `to`. Unit: any. */
  value: number
}

/**
 * Mass of an amount of a material, as a person writes it: `1/4 tsp`, `40 drops`, `12.5 g`.
 *
 * A liquid by its density, a powder by its bulk density, drops by the material's own drop; without one a drop is 1/20
 * mL (pharmacy practice).
 *
 * @example
 * doseMass({ amount: '50 drops', kind: 'colorant', materialDensityGPerMl: 1.05, dropMassG: 0.044 })
 * // { massG: 2.2 }
 */
export function doseMass(parameters: {
  /**
   * An amount as a person writes it: `1 1/4 cup`, `40 drops`, `330 °F`. Range: 0 or above; a temperature above absolute
   * zero.
   */
  amount: string
  /** What the material is for; powders (pearl, flake, salt) are measured as scooped. */
  kind: 'plastisol' | 'softener' | 'hardener' | 'stabilizer' | 'colorant' | 'pearl' | 'flake' | 'salt' | 'scent' | 'other'
  /** True density of the material; of a plastisol that of the liquid. Unit: g/mL; 0.001 to 25. Default: none. */
  materialDensityGPerMl?: number
  /** Bulk density of a powder, level in the spoon and not tapped. Unit: g/mL; 0.001 to 25. Default: none. */
  asScoopedGPerMl?: number
  /** Mass of one drop. Unit: g; 1e-12 to 1e15. Default: none. */
  dropMassG?: number
  /** The system of measures: what a cup, a spoon and a fluid ounce hold. Default: us-customary. */
  measures?: 'us-customary' | 'us-label' | 'metric' | 'imperial'
}): {
  /** The mass. Unit: g. */
  massG: number
}

/**
 * Mass of a volume: m = ρV.
 *
 * The density is that of what fills the measure: a liquid's own, a powder's bulk density. For what a solid displaces in
 * a mix it is its true density.
 *
 * @example
 * massOfVolume({ volumeMl: 250, densityGPerMl: 1.03 })
 * // { massG: 257.5 }
 */
export function massOfVolume(parameters: {
  /** Volume. Unit: mL; 0 to 1e15. */
  volumeMl: number
  /** Density, without voids. Unit: g/mL; 0.001 to 25. */
  densityGPerMl: number
}): {
  /** The mass. Unit: g. */
  massG: number
}

/**
 * Volume of a mass: V = m/ρ, with the densities of `massOfVolume`.
 *
 * @example
 * volumeOfMass({ massG: 257.5, densityGPerMl: 1.03 })
 * // { volumeMl: 250 }
 */
export function volumeOfMass(parameters: {
  /** Mass. Unit: g; 0 to 1e15. */
  massG: number
  /** Density, without voids. Unit: g/mL; 0.001 to 25. */
  densityGPerMl: number
}): {
  /** The volume. Unit: mL. */
  volumeMl: number
}

/**
 * Density at 20 °C of parts that are mixed: ρ = Σm/(Σm/ρ) · (1 − φ), φ the voids.
 *
 * Solids count with their true density. Ideal additivity of volumes; source: conservation of mass and volume.
 *
 * @example
 * densityOfParts({ parts: [[100, 1], [50, 2]] })
 * // { densityGPerMl: 1.2000000000000002 }
 */
export function densityOfParts(parameters: {
  /**
   * The parts of the mix: of each its mass and its true density. At least one has a mass above 0. 1 to 1000 rows, each:
   * Mass of one part of a mix. Unit: g; 0 to 1e15. Then: True density of one part of a mix. Unit: g/mL; 0.001 to 25.
   */
  parts: Iterable<readonly [number, number]>
  /** Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0. */
  voids?: number
}): {
  /** Density of the mix, voids counted. Unit: g/mL. */
  densityGPerMl: number
}

/**
 * Share of one part in a mix, by mass and by true volume.
 *
 * Mass: m_i/Σm; volume: (m_i/ρ_i)/Σ(m/ρ).
 *
 * @example
 * mixShare({ parts: [[75, 1], [50, 2]], part: 2 })
 * // { massShare: 0.4, volumeShare: 0.25000000000000006 }
 */
export function mixShare(parameters: {
  /**
   * The parts of the mix: of each its mass and its true density. At least one has a mass above 0. 1 to 1000 rows, each:
   * Mass of one part of a mix. Unit: g; 0 to 1e15. Then: True density of one part of a mix. Unit: g/mL; 0.001 to 25.
   */
  parts: Iterable<readonly [number, number]>
  /** Which part of the mix, counted from 1. Unit: 1; 1 to 1000. */
  part: number
}): {
  /** Share of its mass. Unit: 1. */
  massShare: number
  /** Share of its true volume. Unit: 1. */
  volumeShare: number
}

/**
 * States a salt loading another way.
 *
 * All ways go through the mass of salt per mass of base; the equations are those of the module `salt`. In reach is all
 * between no salt and the maximum that `mostSolids` allows. Where a form that is about a piece needs the feed and it is
 * not known, the bounds are those without feed and fed in full.
 *
 * Cautions: salt-settles, salt-dry.
 *
 * @example
 * saltConvert({ baseVolumeMl: 250, baseDensityGPerMl: 1, saltDensityGPerMl: 2, form: 'of-base', loading: 0.1, toForm: 'as-scooped', saltAsScoopedGPerMl: 1.25 })
 * // { loading: 0.08, loadingMin: 0.08, loadingMax: 0.08 }
 */
export function saltConvert(parameters: {
  /** Volume of the base, cold and liquid, as a cup measures it. Unit: mL; 1e-9 to 1e15. */
  baseVolumeMl: number
  /** Density of the base, cold and liquid, as a cup measures it. Unit: g/mL; 0.001 to 25. */
  baseDensityGPerMl: number
  /** True density of the salt: 2.165 g/mL for sodium chloride. Unit: g/mL; 0.001 to 25. */
  saltDensityGPerMl: number
  /** The way in which the salt loading is stated. */
  form: 'as-scooped' | 'per-volume' | 'of-base' | 'of-finished' | 'finished-density' | 'piece-mass' | 'sink-density'
  /** The salt loading, as its form states it. Unit: any; in the unit of its form. */
  loading: number
  /** The way in which the loading is to be stated. */
  toForm: 'as-scooped' | 'per-volume' | 'of-base' | 'of-finished' | 'finished-density' | 'piece-mass' | 'sink-density'
  /**
   * Mass of the mix before salt; at least that of its base. Give its volume too. Unit: g; 1e-12 to 1e15. Default: the
   * mass of its base.
   */
  mixMassG?: number
  /** Volume of the mix before salt at 20 °C. Give its mass too. Unit: mL; 1e-9 to 1e15. Default: as baseVolumeMl. */
  mixVolumeMl?: number
  /**
   * Volume of the mix before salt at shot temperature; at least the cold one. Unit: mL; 1e-9 to 1e15. Default: as
   * mixVolumeMl.
   */
  hotVolumeMl?: number
  /** Temperature at which the mix is shot. Unit: °C; 20 to 427. Default: 20. */
  shotTemperatureCelsius?: number
  /** Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0. */
  voids?: number
  /**
   * Bulk density of the salt, level in the spoon; at most its true density. Only the form as-scooped needs it. Unit:
   * g/mL; 0.001 to 25. Default: none.
   */
  saltAsScoopedGPerMl?: number
  /** Volumetric thermal expansion of the salt. Unit: 1/K; 0 to 0.01. Default: 0. */
  saltExpansionPerKelvin?: number
  /** Softener that goes in with the salt, mass per mass of salt. Unit: 1; 0 to 10. Default: 0. */
  softenerPerSalt?: number
  /** Density of the softener that goes in with the salt; needed with it. Unit: g/mL; 0.001 to 25. Default: none. */
  softenerDensityGPerMl?: number
  /** Volumetric thermal expansion of that softener. Unit: 1/K; 0 to 0.01. Default: 0. */
  softenerExpansionPerKelvin?: number
  /** Maximum share of salt in the finished mix, by true volume. Unit: 1; above 0 to below 1. Default: 0.3. */
  mostSolids?: number
  /** Volume of one cavity. Unit: mL; 1e-9 to 1e15. */
  cavityVolumeMl?: number
  /**
   * Share of its contraction that a piece draws from the sprue while it cools. Where it is not known, 0.5 counts as in
   * plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). Unit: 1; 0 to 1. Default: 0.5.
   */
  feed?: number
  /** Mass of hook and weight on a piece; give its volume too. Unit: g; 0 to 1e15. Default: 0. */
  hookMassG?: number
  /** Volume that hook and weight displace; give their mass too. Unit: mL; 0 to 1e15. Default: 0. */
  hookVolumeMl?: number
}): {
  /** The loading as `toForm` states it, in the unit of that form. Unit: any. */
  loading: number
  /** Its lower bound where the feed matters and is not known; else the loading. Unit: any. */
  loadingMin: number
  /** Its upper bound where the feed matters and is not known; else the loading. Unit: any. */
  loadingMax: number
}

/**
 * Mass of salt for a loading, and of the softener that goes in with it.
 *
 * Cautions: salt-settles, salt-dry.
 *
 * @example
 * saltMass({ baseVolumeMl: 250, baseDensityGPerMl: 1, saltDensityGPerMl: 2, form: 'of-base', loading: 0.1, saltAsScoopedGPerMl: 1.25 })
 * // { saltMassG: 25, saltMassMinG: 25, saltMassMaxG: 25, softenerMassG: 0 }
 */
export function saltMass(parameters: {
  /** Volume of the base, cold and liquid, as a cup measures it. Unit: mL; 1e-9 to 1e15. */
  baseVolumeMl: number
  /** Density of the base, cold and liquid, as a cup measures it. Unit: g/mL; 0.001 to 25. */
  baseDensityGPerMl: number
  /** True density of the salt: 2.165 g/mL for sodium chloride. Unit: g/mL; 0.001 to 25. */
  saltDensityGPerMl: number
  /** The way in which the salt loading is stated. */
  form: 'as-scooped' | 'per-volume' | 'of-base' | 'of-finished' | 'finished-density' | 'piece-mass' | 'sink-density'
  /** The salt loading, as its form states it. Unit: any; in the unit of its form. */
  loading: number
  /**
   * Mass of the mix before salt; at least that of its base. Give its volume too. Unit: g; 1e-12 to 1e15. Default: the
   * mass of its base.
   */
  mixMassG?: number
  /** Volume of the mix before salt at 20 °C. Give its mass too. Unit: mL; 1e-9 to 1e15. Default: as baseVolumeMl. */
  mixVolumeMl?: number
  /**
   * Volume of the mix before salt at shot temperature; at least the cold one. Unit: mL; 1e-9 to 1e15. Default: as
   * mixVolumeMl.
   */
  hotVolumeMl?: number
  /** Temperature at which the mix is shot. Unit: °C; 20 to 427. Default: 20. */
  shotTemperatureCelsius?: number
  /** Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0. */
  voids?: number
  /**
   * Bulk density of the salt, level in the spoon; at most its true density. Only the form as-scooped needs it. Unit:
   * g/mL; 0.001 to 25. Default: none.
   */
  saltAsScoopedGPerMl?: number
  /** Volumetric thermal expansion of the salt. Unit: 1/K; 0 to 0.01. Default: 0. */
  saltExpansionPerKelvin?: number
  /** Softener that goes in with the salt, mass per mass of salt. Unit: 1; 0 to 10. Default: 0. */
  softenerPerSalt?: number
  /** Density of the softener that goes in with the salt; needed with it. Unit: g/mL; 0.001 to 25. Default: none. */
  softenerDensityGPerMl?: number
  /** Volumetric thermal expansion of that softener. Unit: 1/K; 0 to 0.01. Default: 0. */
  softenerExpansionPerKelvin?: number
  /** Maximum share of salt in the finished mix, by true volume. Unit: 1; above 0 to below 1. Default: 0.3. */
  mostSolids?: number
  /** Volume of one cavity. Unit: mL; 1e-9 to 1e15. */
  cavityVolumeMl?: number
  /**
   * Share of its contraction that a piece draws from the sprue while it cools. Where it is not known, 0.5 counts as in
   * plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). Unit: 1; 0 to 1. Default: 0.5.
   */
  feed?: number
  /** Mass of hook and weight on a piece; give its volume too. Unit: g; 0 to 1e15. Default: 0. */
  hookMassG?: number
  /** Volume that hook and weight displace; give their mass too. Unit: mL; 0 to 1e15. Default: 0. */
  hookVolumeMl?: number
}): {
  /** Mass of salt. Unit: g. */
  saltMassG: number
  /** Its lower bound where the feed matters and is not known; else the mass. Unit: g. */
  saltMassMinG: number
  /** Its upper bound where the feed matters and is not known; else the mass. Unit: g. */
  saltMassMaxG: number
  /** Mass of softener that goes in with it. Unit: g. */
  softenerMassG: number
}

/**
 * Salt loadings in reach: without salt, and with the maximum that `mostSolids` allows.
 *
 * Cautions: salt-settles, salt-dry.
 *
 * @example
 * saltReach({ baseVolumeMl: 250, baseDensityGPerMl: 1, saltDensityGPerMl: 2, form: 'finished-density', saltAsScoopedGPerMl: 1.25 })
 * // { loadingMin: 1, loadingMax: 1.3 }
 */
export function saltReach(parameters: {
  /** Volume of the base, cold and liquid, as a cup measures it. Unit: mL; 1e-9 to 1e15. */
  baseVolumeMl: number
  /** Density of the base, cold and liquid, as a cup measures it. Unit: g/mL; 0.001 to 25. */
  baseDensityGPerMl: number
  /** True density of the salt: 2.165 g/mL for sodium chloride. Unit: g/mL; 0.001 to 25. */
  saltDensityGPerMl: number
  /** The way in which the salt loading is stated. */
  form: 'as-scooped' | 'per-volume' | 'of-base' | 'of-finished' | 'finished-density' | 'piece-mass' | 'sink-density'
  /**
   * Mass of the mix before salt; at least that of its base. Give its volume too. Unit: g; 1e-12 to 1e15. Default: the
   * mass of its base.
   */
  mixMassG?: number
  /** Volume of the mix before salt at 20 °C. Give its mass too. Unit: mL; 1e-9 to 1e15. Default: as baseVolumeMl. */
  mixVolumeMl?: number
  /**
   * Volume of the mix before salt at shot temperature; at least the cold one. Unit: mL; 1e-9 to 1e15. Default: as
   * mixVolumeMl.
   */
  hotVolumeMl?: number
  /** Temperature at which the mix is shot. Unit: °C; 20 to 427. Default: 20. */
  shotTemperatureCelsius?: number
  /** Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0. */
  voids?: number
  /**
   * Bulk density of the salt, level in the spoon; at most its true density. Only the form as-scooped needs it. Unit:
   * g/mL; 0.001 to 25. Default: none.
   */
  saltAsScoopedGPerMl?: number
  /** Volumetric thermal expansion of the salt. Unit: 1/K; 0 to 0.01. Default: 0. */
  saltExpansionPerKelvin?: number
  /** Softener that goes in with the salt, mass per mass of salt. Unit: 1; 0 to 10. Default: 0. */
  softenerPerSalt?: number
  /** Density of the softener that goes in with the salt; needed with it. Unit: g/mL; 0.001 to 25. Default: none. */
  softenerDensityGPerMl?: number
  /** Volumetric thermal expansion of that softener. Unit: 1/K; 0 to 0.01. Default: 0. */
  softenerExpansionPerKelvin?: number
  /** Maximum share of salt in the finished mix, by true volume. Unit: 1; above 0 to below 1. Default: 0.3. */
  mostSolids?: number
  /** Volume of one cavity. Unit: mL; 1e-9 to 1e15. */
  cavityVolumeMl?: number
  /**
   * Share of its contraction that a piece draws from the sprue while it cools. Where it is not known, 0.5 counts as in
   * plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). Unit: 1; 0 to 1. Default: 0.5.
   */
  feed?: number
  /** Mass of hook and weight on a piece; give its volume too. Unit: g; 0 to 1e15. Default: 0. */
  hookMassG?: number
  /** Volume that hook and weight displace; give their mass too. Unit: mL; 0 to 1e15. Default: 0. */
  hookVolumeMl?: number
}): {
  /** The loading without salt, in the unit of the form. Unit: any. */
  loadingMin: number
  /** The maximum loading, in the unit of the form. Unit: any. */
  loadingMax: number
}

/**
 * Mass of salt that brings a base alone to a finished density: `saltMass` in one form, with few numbers.
 *
 * m_s = (ρ′V₀ − M₀)/(1 − ρ′/ρ_s) with ρ′ = ρ_t/(1 − φ).
 *
 * Cautions: salt-settles, salt-dry.
 *
 * @example
 * saltForDensity({ baseVolumeMl: 250, baseDensityGPerMl: 1, saltDensityGPerMl: 2, finishedDensityGPerMl: 1.25 })
 * // { saltMassG: 166.66666666666666 }
 */
export function saltForDensity(parameters: {
  /** Volume of the base, cold and liquid, as a cup measures it. Unit: mL; 1e-9 to 1e15. */
  baseVolumeMl: number
  /** Density of the base, cold and liquid, as a cup measures it. Unit: g/mL; 0.001 to 25. */
  baseDensityGPerMl: number
  /** True density of the salt: 2.165 g/mL for sodium chloride. Unit: g/mL; 0.001 to 25. */
  saltDensityGPerMl: number
  /** Density of the finished plastic at 20 °C, voids counted. Unit: g/mL; 0.001 to 25. */
  finishedDensityGPerMl: number
  /** Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0. */
  voids?: number
  /** Maximum share of salt in the finished mix, by true volume. Unit: 1; above 0 to below 1. Default: 0.3. */
  mostSolids?: number
}): {
  /** Mass of salt. Unit: g. */
  saltMassG: number
}

/**
 * Mass of salt at which a piece sinks at a rate.
 *
 * The finished density is that for the sink rate (module `process::sink`), of the piece as it is when it has cooled;
 * the salt is that for this density.
 *
 * Cautions: salt-settles, salt-dry.
 *
 * @example
 * saltForSinkRate({ baseVolumeMl: 250, baseDensityGPerMl: 1, saltDensityGPerMl: 2, sinkRateCmPerS: 22.04104669853903, cavityVolumeMl: 9.5, diameterMm: 10, waterTemperatureCelsius: 20, lengthMm: 121, hookMassG: 2, hookVolumeMl: 0.25 })
 * // { saltMassG: 55.55555555555424, softenerMassG: 0, finishedDensityGPerMl: 1.0999999999999979 }
 */
export function saltForSinkRate(parameters: {
  /** Volume of the base, cold and liquid, as a cup measures it. Unit: mL; 1e-9 to 1e15. */
  baseVolumeMl: number
  /** Density of the base, cold and liquid, as a cup measures it. Unit: g/mL; 0.001 to 25. */
  baseDensityGPerMl: number
  /** True density of the salt: 2.165 g/mL for sodium chloride. Unit: g/mL; 0.001 to 25. */
  saltDensityGPerMl: number
  /** Sink rate: the final speed of the piece. Unit: cm/s; 1e-9 to 1e6. */
  sinkRateCmPerS: number
  /** Volume of one cavity. Unit: mL; 1e-9 to 1e15. */
  cavityVolumeMl: number
  /** Mean diameter of the piece. Unit: mm; 1e-6 to 1e6. */
  diameterMm: number
  /** Temperature of the water. Unit: °C; 0 to 40. */
  waterTemperatureCelsius: number
  /** Length of a stick, at least 2.01 diameters; not used for a ball. Unit: mm; 1e-6 to 1e6. Default: none. */
  lengthMm?: number
  /** Shape of the piece as it sinks: a stick sinks sideways. Default: a stick where a length is given, else a ball. */
  shape?: 'stick' | 'ball'
  /**
   * Mass of the mix before salt; at least that of its base. Give its volume too. Unit: g; 1e-12 to 1e15. Default: the
   * mass of its base.
   */
  mixMassG?: number
  /** Volume of the mix before salt at 20 °C. Give its mass too. Unit: mL; 1e-9 to 1e15. Default: as baseVolumeMl. */
  mixVolumeMl?: number
  /**
   * Volume of the mix before salt at shot temperature; at least the cold one. Unit: mL; 1e-9 to 1e15. Default: as
   * mixVolumeMl.
   */
  hotVolumeMl?: number
  /** Temperature at which the mix is shot. Unit: °C; 20 to 427. Default: 20. */
  shotTemperatureCelsius?: number
  /** Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0. */
  voids?: number
  /** Volumetric thermal expansion of the salt. Unit: 1/K; 0 to 0.01. Default: 0. */
  saltExpansionPerKelvin?: number
  /** Softener that goes in with the salt, mass per mass of salt. Unit: 1; 0 to 10. Default: 0. */
  softenerPerSalt?: number
  /** Density of the softener that goes in with the salt; needed with it. Unit: g/mL; 0.001 to 25. Default: none. */
  softenerDensityGPerMl?: number
  /** Volumetric thermal expansion of that softener. Unit: 1/K; 0 to 0.01. Default: 0. */
  softenerExpansionPerKelvin?: number
  /** Maximum share of salt in the finished mix, by true volume. Unit: 1; above 0 to below 1. Default: 0.3. */
  mostSolids?: number
  /**
   * Share of its contraction that a piece draws from the sprue while it cools. Where it is not known, 0.5 counts as in
   * plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). Unit: 1; 0 to 1. Default: 0.5.
   */
  feed?: number
  /** Mass of hook and weight on a piece; give its volume too. Unit: g; 0 to 1e15. Default: 0. */
  hookMassG?: number
  /** Volume that hook and weight displace; give their mass too. Unit: mL; 0 to 1e15. Default: 0. */
  hookVolumeMl?: number
  /**
   * Practical salinity as a probe reads it, about 35 in the ocean; give this or the absolute one. Fresh water without
   * either. Unit: 1; 0 to 41.8. Default: none.
   */
  salinityPractical?: number
  /**
   * Absolute salinity, mass of salt per mass of sea water (35 g/kg is 0.035); give this or the practical one. Unit: 1;
   * 0 to 0.042. Default: none.
   */
  salinityAbsolute?: number
  /** Depth of a timed drop, the piece let go just below the surface. Unit: m; 1e-9 to 12000. Default: none. */
  dropDepthM?: number
  /** Time of the timed drop. Unit: s; 1e-6 to 1e9. Default: none. */
  dropTimeS?: number
  /** Density of the piece that was dropped. Unit: g/mL; 0.001 to 25. Default: none. */
  dropDensityGPerMl?: number
}): {
  /** Mass of salt. Unit: g. */
  saltMassG: number
  /** Mass of softener that goes in with it. Unit: g. */
  softenerMassG: number
  /** Density of the finished plastic at 20 °C, voids counted. Unit: g/mL. */
  finishedDensityGPerMl: number
}

/**
 * Mass of one shot, and of its pieces.
 *
 * Fill: (n V_c + V_s) ρ_hot (1 − φ) + m_top; a piece as in `pieceMass`, as far as sprue and topping can feed it; what
 * is fed leaves the sprue. Where they cannot, the pieces sink in, and `missingMassG` is above 0. Of sprue and topping a
 * layer fills its share.
 *
 * @example
 * shotFill({ cavities: 4, cavityVolumeMl: 10, coldDensityGPerMl: 1.0625, hotDensityGPerMl: 1, feed: 0.5, sprueVolumeMl: 8 })
 * // { shotMassG: 48, piecesMassG: 41.25, sprueMassG: 6.75, missingMassG: 0, pieceMassG: 10.3125, pieceMassMinG: 10.3125, pieceMassMaxG: 10.3125, fed: 0.5 }
 */
export function shotFill(parameters: {
  /** Number of cavities that a shot fills. Unit: 1; 1 to 1000000. */
  cavities: number
  /** Volume of one cavity. Unit: mL; 1e-9 to 1e15. */
  cavityVolumeMl: number
  /** Density of the finished plastic at 20 °C, without voids. Unit: g/mL; 0.001 to 25. */
  coldDensityGPerMl: number
  /**
   * Melt density at shot temperature, without voids; at most the cold one. Unit: g/mL; 0.001 to 25. Default: as
   * coldDensityGPerMl.
   */
  hotDensityGPerMl?: number
  /** Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0. */
  voids?: number
  /**
   * Share of its contraction that a piece draws from the sprue while it cools. Where it is not known, 0.5 counts as in
   * plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). Unit: 1; 0 to 1. Default: 0.5.
   */
  feed?: number
  /** Volume of the sprue. Unit: mL; 0 to 1e15. Default: 0. */
  sprueVolumeMl?: number
  /** Mass that topping off and holding add. Unit: g; 0 to 1e15. Default: 0. */
  toppedMassG?: number
  /** Share of the cavity that this layer of a laminated piece fills. Unit: 1; above 0 to 1. Default: 1. */
  layerShare?: number
}): {
  /** Mass of one shot, topping included. Unit: g. */
  shotMassG: number
  /** Mass of all its pieces. Unit: g. */
  piecesMassG: number
  /** Mass that is left as sprue once the pieces have been fed. Unit: g. */
  sprueMassG: number
  /** Mass that sprue and topping are short of; 0 where the pieces are fed. Unit: g. */
  missingMassG: number
  /** Mass of one piece, or of the layer in it. Unit: g. */
  pieceMassG: number
  /** The same without feed where the feed is not known; else the mass of the piece. Unit: g. */
  pieceMassMinG: number
  /**
   * The same fed as far as sprue and topping reach where the feed is not known; else the mass of the piece. Unit: g.
   */
  pieceMassMaxG: number
  /** Share of the contraction that was fed. Unit: 1. */
  fed: number
}

/**
 * Mass of a piece: m = V (1 − φ) [ρ_hot + f (ρ_cold − ρ_hot)], φ the voids, f the feed.
 *
 * While it cools a piece draws the share f of its contraction from the sprue. Source: conservation of mass; f is the
 * shop's own. A sprue that cannot feed that much: see `shotFill`.
 *
 * @example
 * pieceMass({ cavityVolumeMl: 10, coldDensityGPerMl: 1.0625, hotDensityGPerMl: 1 })
 * // { pieceMassG: 10.3125, pieceMassMinG: 10, pieceMassMaxG: 10.625 }
 */
export function pieceMass(parameters: {
  /** Volume of one cavity. Unit: mL; 1e-9 to 1e15. */
  cavityVolumeMl: number
  /** Density of the finished plastic at 20 °C, without voids. Unit: g/mL; 0.001 to 25. */
  coldDensityGPerMl: number
  /**
   * Melt density at shot temperature, without voids; at most the cold one. Unit: g/mL; 0.001 to 25. Default: as
   * coldDensityGPerMl.
   */
  hotDensityGPerMl?: number
  /** Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0. */
  voids?: number
  /**
   * Share of its contraction that a piece draws from the sprue while it cools. Where it is not known, 0.5 counts as in
   * plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). Unit: 1; 0 to 1. Default: 0.5.
   */
  feed?: number
}): {
  /** Mass of the piece. Unit: g. */
  pieceMassG: number
  /** The same without feed where the feed is not known; else the mass of the piece. Unit: g. */
  pieceMassMinG: number
  /** The same fed in full where the feed is not known; else the mass of the piece. Unit: g. */
  pieceMassMaxG: number
}

/**
 * Minimum number of shots for a number of good pieces.
 *
 * Without rejects ⌈N/n⌉; with a reject rate p the smallest S with P[Bin(S n, 1 − p) ≥ N] ≥ the confidence.
 *
 * @example
 * shots({ pieces: 10, cavities: 4 })
 * // { shots: 3, cast: 12 }
 */
export function shots(parameters: {
  /** Number of good pieces needed. Unit: 1; 1 to 1000000. */
  pieces: number
  /** Number of cavities that a shot fills. Unit: 1; 1 to 1000000. */
  cavities: number
  /** Share of pieces that are not fit to sell. Unit: 1; 0 to below 1. Default: 0. */
  rejects?: number
  /** Confidence that enough good pieces come out. Unit: 1; above 0 to 0.999999999. Default: 0.9. */
  confidence?: number
}): {
  /** Number of shots. */
  shots: number
  /** Number of pieces that they cast. */
  cast: number
}

/**
 * Injector loads for a number of shots.
 *
 * Whole shots a load: q = ⌊(capacity − residue) ρ/m⌋; loads: ⌈S/q⌉.
 *
 * @example
 * injectorLoads({ shots: 5, shotMassG: 40, shotDensityGPerMl: 1, injectorCapacityMl: 100, injectorResidueMl: 10 })
 * // { loads: 3, shotsPerLoad: 2, shotsInLast: 1 }
 */
export function injectorLoads(parameters: {
  /** Number of shots. Unit: 1; 1 to 100000000. */
  shots: number
  /** Mass of one shot, sprue included. Unit: g; 1e-12 to 1e15. */
  shotMassG: number
  /** Density of what the injector draws: hot, voids counted. Unit: g/mL; 0.001 to 25. */
  shotDensityGPerMl: number
  /** Volume that the injector takes up at most. Unit: mL; 1e-9 to 1e15. */
  injectorCapacityMl: number
  /** Volume that stays in the injector each time it is emptied; below its capacity. Unit: mL; 0 to 1e15. Default: 0. */
  injectorResidueMl?: number
}): {
  /** Number of injector loads. */
  loads: number
  /** Whole shots in one load. */
  shotsPerLoad: number
  /** Shots from the last load. */
  shotsInLast: number
}

/**
 * Mass to mix for a number of good pieces: shots, injector loads, what is lost and what comes back.
 *
 * total = S m_shot − y m_sprue (S − shots of the last load) + cleanings · residue · ρ + max(film, heel).
 *
 * @example
 * batchNeed({ pieces: 10, cavities: 4, shotMassG: 50, shotDensityGPerMl: 1, injectorCapacityMl: 120, injectorResidueMl: 5, sprueMassG: 10 })
 * // { totalMassG: 155.00000000000003, drawnMassG: 150.00000000000003, returnedMassG: 0, piecesMassG: 120, spruesMassG: 30, keptMassG: 5, inCupMassG: 0, shots: 3, loads: 2, shotsPerLoad: 2, shotsInLast: 1 }
 */
export function batchNeed(parameters: {
  /** Number of good pieces needed. Unit: 1; 1 to 1000000. */
  pieces: number
  /** Number of cavities that a shot fills. Unit: 1; 1 to 1000000. */
  cavities: number
  /** Mass of one shot, sprue included. Unit: g; 1e-12 to 1e15. */
  shotMassG: number
  /** Density of what the injector draws: hot, voids counted. Unit: g/mL; 0.001 to 25. */
  shotDensityGPerMl: number
  /** Volume that the injector takes up at most. Unit: mL; 1e-9 to 1e15. */
  injectorCapacityMl: number
  /** Volume that stays in the injector each time it is emptied; below its capacity. Unit: mL; 0 to 1e15. Default: 0. */
  injectorResidueMl?: number
  /**
   * Number of times the injector is cleaned or goes cold, the last time included. Unit: 1; 1 to 1000000. Default: 1.
   */
  cleanings?: number
  /** Mass of a shot that stays as sprue; at most the mass of the shot. Unit: g; 0 to 1e15. Default: 0. */
  sprueMassG?: number
  /** Share of the sprues that is melted again. Unit: 1; 0 to 1. Default: 0. */
  returned?: number
  /** Mass that clings to the wall of the cup, part of the heel. Unit: g; 0 to 1e15. Default: 0. */
  potFilmG?: number
  /** Mass that cannot be drawn from the cup, its film included. Unit: g; 0 to 1e15. Default: 0. */
  potHeelG?: number
  /** Share of pieces that are not fit to sell. Unit: 1; 0 to below 1. Default: 0. */
  rejects?: number
  /** Confidence that enough good pieces come out. Unit: 1; above 0 to 0.999999999. Default: 0.9. */
  confidence?: number
}): {
  /** Mass to mix. Unit: g. */
  totalMassG: number
  /** Mass of all shots. Unit: g. */
  drawnMassG: number
  /** Mass of sprues that go back and are shot again. Unit: g. */
  returnedMassG: number
  /** Mass of all pieces. Unit: g. */
  piecesMassG: number
  /** Mass of sprues that are left over. Unit: g. */
  spruesMassG: number
  /** Mass that stays in the injector over the run. Unit: g. */
  keptMassG: number
  /** Mass that stays in the cup: the heel, with the film in it. Unit: g. */
  inCupMassG: number
  /** Number of shots. */
  shots: number
  /** Number of injector loads. */
  loads: number
  /** Whole shots in one load. */
  shotsPerLoad: number
  /** Shots from the last load. */
  shotsInLast: number
}

/**
 * Base for a mass of mix, rounded up to a mark of the cup, and what that gives more than is needed.
 *
 * The doses follow from the rounded base, so that no formula is off.
 *
 * @example
 * baseToMark({ mixNeededG: 200, baseFraction: 0.8, baseDensityGPerMl: 1, cupCapacityMl: 250, cupMarkMl: 50, shotMassG: 20 })
 * // { baseVolumeMl: 200, baseMassG: 200, mixMassG: 250, surplusMassG: 49.999999999999986, extraShots: 2 }
 */
export function baseToMark(parameters: {
  /** Mass of mix that is needed. Unit: g; 1e-12 to 1e15. */
  mixNeededG: number
  /** Share of base in the mix, by mass. Unit: 1; above 0 to 1. */
  baseFraction: number
  /** Density of the base, cold and liquid, as a cup measures it. Unit: g/mL; 0.001 to 25. */
  baseDensityGPerMl: number
  /** Volume of the cup up to its last mark. Unit: mL; 1e-9 to 1e15. */
  cupCapacityMl: number
  /** Distance between the marks of the cup. Unit: mL; 1e-9 to 1e15. Default: one mark alone, when it is full. */
  cupMarkMl?: number
  /** Mass of one shot, sprue included. Unit: g; 1e-12 to 1e15. */
  shotMassG?: number
}): {
  /** Volume of base: the mark. Unit: mL. */
  baseVolumeMl: number
  /** Mass of that base. Unit: g. */
  baseMassG: number
  /** Mass of the mix with all doses. Unit: g. */
  mixMassG: number
  /** Mass that is more than needed. Unit: g. */
  surplusMassG: number
  /**
   * Whole shots that the surplus gives, where the mass of a shot is given. Null where it is not known or does not
   * apply.
   */
  extraShots: number | null
}

/**
 * Smallest pot that the bench can make: base ≥ q/(2·tolerance·ratio) for each dose with its step q, and no less mix
 * than oven and injector need.
 *
 * @example
 * leastPot({ doses: [[0.05, 0.05, 0.005]], baseFraction: 0.8 })
 * // { mixMassG: 125, baseMassG: 100 }
 */
export function leastPot(parameters: {
  /**
   * The doses: of each its smallest step, its tolerance and its ratio to the base. 1 to 64 rows, each: Smallest step in
   * which a dose can be measured: a drop, the smallest spoon, the readability of the balance. Unit: g; 1e-12 to 1e15.
   * Then: Largest relative error that is accepted. Unit: 1; above 0 to below 1. Then: Dose, mass per mass of base.
   * Unit: 1; 1e-9 to 10.
   */
  doses: Iterable<readonly [number, number, number]>
  /** Share of base in the mix, by mass. Unit: 1; above 0 to 1. */
  baseFraction: number
  /** Smallest mix that the oven heats evenly. Unit: g; 1e-12 to 1e15. Default: none. */
  ovenLeastG?: number
  /** Smallest mix that the injector can draw from. Unit: g; 1e-12 to 1e15. Default: none. */
  injectorLeastG?: number
}): {
  /** Mass of the mix. Unit: g. */
  mixMassG: number
  /** Mass of base in it. Unit: g. */
  baseMassG: number
}

/**
 * Reject rate from counted pieces, with the exact interval of a binomial share.
 *
 * Clopper and Pearson, Biometrika 26 (1934) 404: it holds at least the confidence stated, mostly more.
 *
 * @example
 * rejectRate({ castPieces: 1, rejectCount: 0, confidence: 0.5 })
 * // { rejects: 0, rejectsMin: 0, rejectsMax: 0.75 }
 */
export function rejectRate(parameters: {
  /** Number of pieces that were cast. Unit: 1; 1 to 1000000. */
  castPieces: number
  /** Number of them that are not fit to sell. Unit: 1; 0 to 1000000. */
  rejectCount: number
  /** Confidence that enough good pieces come out. Unit: 1; above 0 to 0.999999999. Default: 0.9. */
  confidence?: number
}): {
  /** Share of rejects. Unit: 1. */
  rejects: number
  /** Its lower bound. Unit: 1. */
  rejectsMin: number
  /** Its upper bound. Unit: 1. */
  rejectsMax: number
}

/**
 * Measures a mass with the tools of the bench: the way with the least handling that keeps the tolerance.
 *
 * A tool that is not given is not on the bench. Where no tool keeps the tolerance, the help gives the mass from which
 * one would.
 *
 * @example
 * benchMeasure({ massToMeasureG: 12.5, tolerance: 0.02, spoonsMl: [5, 2.5], asMeasuredDensityGPerMl: 1 })
 * // { massG: 12.5, deviation: 0, tool: 'spoons', acts: 3, drops: 0, spoonfuls: [2, 1, 0, 0, 0, 0, 0, 0], cup: 0, cupFillings: 0, cupMark: 0 }
 */
export function benchMeasure(parameters: {
  /** Mass to measure. Unit: g; 1e-12 to 1e15. */
  massToMeasureG: number
  /** Largest relative error that is accepted. Unit: 1; above 0 to below 1. Default: 0.05. */
  tolerance?: number
  /**
   * Smallest difference that the balance shows; without it there is no balance. Unit: g; 1e-12 to 1e15. Default: none.
   */
  balanceReadabilityG?: number
  /** Highest load of the balance. Unit: g; 1e-12 to 1e15. Default: 5000 times its readability. */
  balanceCapacityG?: number
  /** Minimum load for which the balance is trusted. Unit: g; 0 to 1e15. Default: 0. */
  balanceLeastLoadG?: number
  /**
   * Volumes of the measuring spoons. 1 to 8 numbers, each: Volume of the level spoon. Unit: mL; 1e-9 to 1e15. Default:
   * none.
   */
  spoonsMl?: Iterable<number>
  /**
   * The cups with evenly spaced marks: of each the distance between marks and the capacity. 1 to 64 rows, each:
   * Distance between the marks of the cup. Unit: mL; 1e-9 to 1e15. Then: Volume of the cup up to its last mark. Unit:
   * mL; 1e-9 to 1e15. Default: none.
   */
  cups?: Iterable<readonly [number, number]>
  /**
   * Density of the material in a measure: of a liquid its density, of a powder its bulk density, level and not tapped.
   * Unit: g/mL; 0.001 to 25. Default: none.
   */
  asMeasuredDensityGPerMl?: number
  /** Mass of one drop. Unit: g; 1e-12 to 1e15. Default: none. */
  dropMassG?: number
}): {
  /** Mass that it gives. Unit: g. */
  massG: number
  /** (given − needed)/needed. Unit: 1. */
  deviation: number
  /** The tool: balance, cup, spoons or drops. */
  tool: 'balance' | 'cup' | 'spoons' | 'drops'
  /** Amount of handling: readings, fillings, spoonfuls, tens of drops. */
  acts: number
  /** Number of drops. */
  drops: number
  /** Number of level spoonfuls of each spoon, in the order of the spoons. */
  spoonfuls: number[]
  /** Which cup, counted from 1; 0 without one. */
  cup: number
  /** Number of times that cup is filled to its last mark. */
  cupFillings: number
  /** Mark to which it is filled once more, counted from 1; 0 where it is not. */
  cupMark: number
}

/**
 * Sink rate of a piece with its hook: the final speed, a model value.
 *
 * Balance of weight, buoyancy and the published drag of a cylinder across the flow or of a sphere; the equations,
 * sources and bounds are those of the module `process::sink`. `motion` is whether the model holds for such a piece at
 * all. A drop that the shop timed (depth, time, density) replaces the published drag by the piece's own.
 *
 * @example
 * sinkRate({ pieceDensityGPerMl: 1.1, pieceVolumeMl: 9.5, diameterMm: 10, waterTemperatureCelsius: 20, lengthMm: 121, hookMassG: 2, hookVolumeMl: 0.25 })
 * // { sinkRateCmPerS: 22.04104669853903, sinkRateMinCmPerS: 19.297542687585494, sinkRateMaxCmPerS: 30.86051085510933, motion: 'swings', reynolds: 2196.2834650479926, dragCoefficient: 0.9083361655585607, sinkTimeS: null }
 */
export function sinkRate(parameters: {
  /** Density of the piece, its salt and voids counted. Unit: g/mL; 0.001 to 25. */
  pieceDensityGPerMl: number
  /** Volume of the piece without its hook. Unit: mL; 1e-9 to 1e15. */
  pieceVolumeMl: number
  /** Mean diameter of the piece. Unit: mm; 1e-6 to 1e6. */
  diameterMm: number
  /** Temperature of the water. Unit: °C; 0 to 40. */
  waterTemperatureCelsius: number
  /** Length of a stick, at least 2.01 diameters; not used for a ball. Unit: mm; 1e-6 to 1e6. Default: none. */
  lengthMm?: number
  /** Shape of the piece as it sinks: a stick sinks sideways. Default: a stick where a length is given, else a ball. */
  shape?: 'stick' | 'ball'
  /** Mass of hook and weight on a piece; give its volume too. Unit: g; 0 to 1e15. Default: 0. */
  hookMassG?: number
  /** Volume that hook and weight displace; give their mass too. Unit: mL; 0 to 1e15. Default: 0. */
  hookVolumeMl?: number
  /**
   * Practical salinity as a probe reads it, about 35 in the ocean; give this or the absolute one. Fresh water without
   * either. Unit: 1; 0 to 41.8. Default: none.
   */
  salinityPractical?: number
  /**
   * Absolute salinity, mass of salt per mass of sea water (35 g/kg is 0.035); give this or the practical one. Unit: 1;
   * 0 to 0.042. Default: none.
   */
  salinityAbsolute?: number
  /**
   * Standard uncertainty of the density of the piece; its bounds are counted at twice that. Unit: g/mL; 0 to 25.
   * Default: 0.
   */
  densityUncertaintyGPerMl?: number
  /** Depth to give the sink time for. Unit: m; 1e-9 to 12000. Default: none. */
  depthM?: number
  /** Depth of a timed drop, the piece let go just below the surface. Unit: m; 1e-9 to 12000. Default: none. */
  dropDepthM?: number
  /** Time of the timed drop. Unit: s; 1e-6 to 1e9. Default: none. */
  dropTimeS?: number
  /** Density of the piece that was dropped. Unit: g/mL; 0.001 to 25. Default: none. */
  dropDensityGPerMl?: number
}): {
  /** Sink rate. Unit: cm/s. */
  sinkRateCmPerS: number
  /** Lower bound; 0 where the piece may hang or float. Unit: cm/s. */
  sinkRateMinCmPerS: number
  /** Upper bound. Unit: cm/s. */
  sinkRateMaxCmPerS: number
  /** Whether it sinks straight: straight, may-swing or swings. */
  motion: 'straight' | 'may-swing' | 'swings'
  /** Reynolds number. Unit: 1. */
  reynolds: number
  /** Drag coefficient, on length times diameter of a stick and the cross-section of a ball. Unit: 1. */
  dragCoefficient: number
  /**
   * Time to the depth, let go at rest just below the surface. Unit: s. Null where it is not known or does not apply.
   */
  sinkTimeS: number | null
}

/**
 * Density at which a piece sinks at a rate: the finished density to salt for.
 *
 * @example
 * densityForSinkRate({ sinkRateCmPerS: 22.04104669853903, pieceVolumeMl: 9.5, diameterMm: 10, waterTemperatureCelsius: 20, lengthMm: 121, hookMassG: 2, hookVolumeMl: 0.25 })
 * // { pieceDensityGPerMl: 1.0999999999999979 }
 */
export function densityForSinkRate(parameters: {
  /** Sink rate: the final speed of the piece. Unit: cm/s; 1e-9 to 1e6. */
  sinkRateCmPerS: number
  /** Volume of the piece without its hook. Unit: mL; 1e-9 to 1e15. */
  pieceVolumeMl: number
  /** Mean diameter of the piece. Unit: mm; 1e-6 to 1e6. */
  diameterMm: number
  /** Temperature of the water. Unit: °C; 0 to 40. */
  waterTemperatureCelsius: number
  /** Length of a stick, at least 2.01 diameters; not used for a ball. Unit: mm; 1e-6 to 1e6. Default: none. */
  lengthMm?: number
  /** Shape of the piece as it sinks: a stick sinks sideways. Default: a stick where a length is given, else a ball. */
  shape?: 'stick' | 'ball'
  /** Mass of hook and weight on a piece; give its volume too. Unit: g; 0 to 1e15. Default: 0. */
  hookMassG?: number
  /** Volume that hook and weight displace; give their mass too. Unit: mL; 0 to 1e15. Default: 0. */
  hookVolumeMl?: number
  /**
   * Practical salinity as a probe reads it, about 35 in the ocean; give this or the absolute one. Fresh water without
   * either. Unit: 1; 0 to 41.8. Default: none.
   */
  salinityPractical?: number
  /**
   * Absolute salinity, mass of salt per mass of sea water (35 g/kg is 0.035); give this or the practical one. Unit: 1;
   * 0 to 0.042. Default: none.
   */
  salinityAbsolute?: number
  /** Depth of a timed drop, the piece let go just below the surface. Unit: m; 1e-9 to 12000. Default: none. */
  dropDepthM?: number
  /** Time of the timed drop. Unit: s; 1e-6 to 1e9. Default: none. */
  dropTimeS?: number
  /** Density of the piece that was dropped. Unit: g/mL; 0.001 to 25. Default: none. */
  dropDensityGPerMl?: number
}): {
  /** Density of the piece, voids and salt counted. Unit: g/mL. */
  pieceDensityGPerMl: number
}

/**
 * Hardness that a ratio of softener or hardener gives: a monotone cubic through the shop's own points.
 *
 * Fritsch and Butland 1984, the slopes of SciPy's PchipInterpolator. Outside the points it refuses. Shore scales do not
 * convert into each other (ASTM D2240): all points are on one.
 *
 * @example
 * hardness({ points: [[0, 60], [0.2, 40]], scale: 'shore-00', softenerRatio: 0.1 })
 * // { hardness: 50 }
 */
export function hardness(parameters: {
  /**
   * The shop's own measured points, by rising ratio: of each the ratio and the durometer reading. 2 to 1000 rows, each:
   * Softener or hardener of a measured point, mass per mass of base. Unit: 1; 0 to 100. Then: Durometer reading of a
   * measured point. Unit: 1; 0 to 100.
   */
  points: Iterable<readonly [number, number]>
  /** The scale of the durometer. */
  scale: 'shore-00' | 'shore-a'
  /** Softener or hardener, mass per mass of base; between the measured points. Unit: 1; 0 to 100. */
  softenerRatio: number
}): {
  /** Durometer reading. Unit: 1. */
  hardness: number
}

/**
 * Ratio of softener or hardener for a hardness: the other way round.
 *
 * @example
 * softenerRatio({ points: [[0, 60], [0.2, 40]], scale: 'shore-00', hardness: 50 })
 * // { softenerRatio: 0.10000000000000005 }
 */
export function softenerRatio(parameters: {
  /**
   * The shop's own measured points, by rising ratio: of each the ratio and the durometer reading. 2 to 1000 rows, each:
   * Softener or hardener of a measured point, mass per mass of base. Unit: 1; 0 to 100. Then: Durometer reading of a
   * measured point. Unit: 1; 0 to 100.
   */
  points: Iterable<readonly [number, number]>
  /** The scale of the durometer. */
  scale: 'shore-00' | 'shore-a'
  /** Durometer reading. Unit: 1; 0 to 100. */
  hardness: number
}): {
  /** Mass per mass of base. Unit: 1. */
  softenerRatio: number
}

/**
 * Extra softener for a salted body, between the shop's own points.
 *
 * Salt makes a body harder; the shop has found what softener makes up for it. Between the points a monotone cubic
 * answers, outside it refuses.
 *
 * @example
 * saltedSoftener({ saltedPoints: [[0, 0], [0.2, 0.1]], saltOfBase: 0.1 })
 * // { softenerRatio: 0.05 }
 */
export function saltedSoftener(parameters: {
  /**
   * The shop's own measured points, by rising salt: of each the salt and the softener, mass per mass of base. 2 to 1000
   * rows, each: Salt of a measured point, mass per mass of base. Unit: 1; 0 to 10. Then: Softener that the shop adds at
   * that salt, mass per mass of base. Unit: 1; 0 to 10.
   */
  saltedPoints: Iterable<readonly [number, number]>
  /** Salt, mass per mass of base; between the measured points. Unit: 1; 0 to 10. */
  saltOfBase: number
}): {
  /** Softener on top of the unsalted body's, mass per mass of base. Unit: 1. */
  softenerRatio: number
}

/**
 * Density of air-free water at 101.325 kPa, 0 to 40 °C.
 *
 * Tanaka et al., Metrologia 38 (2001) 301–309; standard uncertainty below 1e-6 relative.
 *
 * @example
 * waterDensity({ waterTemperatureCelsius: 20 })
 * // { densityGPerMl: 0.9982067455596167 }
 */
export function waterDensity(parameters: {
  /** Temperature of the water. Unit: °C; 0 to 40. */
  waterTemperatureCelsius: number
}): {
  /** Density of the water. Unit: g/mL. */
  densityGPerMl: number
}

/**
 * Volume of a cavity from the reading of a balance for the water that it holds.
 *
 * Corrected for the buoyancy of air on water and weights: V = Z·m (ISO 8655-6, ISO 4787).
 *
 * @example
 * cavityOfWater({ waterMassG: 10, waterTemperatureCelsius: 20 })
 * // { cavityVolumeMl: 10.028511692201585 }
 */
export function cavityOfWater(parameters: {
  /** Reading of the balance for the water in one cavity: filled less empty. Unit: g; 1e-12 to 1e15. */
  waterMassG: number
  /** Temperature of the water. Unit: °C; 0 to 40. */
  waterTemperatureCelsius: number
  /** Air pressure at the balance, not reduced to sea level. Unit: kPa; 45 to 110. Default: 101.325. */
  airPressureKpa?: number
}): {
  /** Volume of the cavity. Unit: mL. */
  cavityVolumeMl: number
}

/**
 * Air pressure of the standard atmosphere at an altitude.
 *
 * U.S. Standard Atmosphere, 1976, lowest layer. The weather moves the real pressure by some 3 %.
 *
 * @example
 * standardPressure({ altitudeM: 0 })
 * // { stationPressureKpa: 101.325 }
 */
export function standardPressure(parameters: {
  /** Height above sea level, as a map gives it; negative below it. Unit: m; -5000 to 11000. Default: none. */
  altitudeM: number
}): {
  /** Air pressure at the place itself; also the maximum that a true vacuum gauge shows there. Unit: kPa. */
  stationPressureKpa: number
}

/**
 * Air pressure at the place itself from one that a weather report gives, reduced to sea level.
 *
 * Undoes the reduction by the standard atmosphere, which is the definition of an altimeter setting.
 *
 * @example
 * stationPressure({ reportedPressureKpa: 101.325, altitudeM: 0 })
 * // { stationPressureKpa: 101.325 }
 */
export function stationPressure(parameters: {
  /**
   * Air pressure as a weather report gives it, reduced to sea level; needs the altitude. Unit: kPa; 85 to 110. Default:
   * none.
   */
  reportedPressureKpa: number
  /** Height above sea level, as a map gives it; negative below it. Unit: m; -5000 to 11000. Default: none. */
  altitudeM: number
}): {
  /** Air pressure at the place itself; also the maximum that a true vacuum gauge shows there. Unit: kPa. */
  stationPressureKpa: number
}

/**
 * Volume of a pot in a vacuum, with the air that it holds.
 *
 * Boyle: V = V_liq [1 + φ/(1 − φ) · p_local/(p − p_vapor)]. The vacuum is stated in one way, as a gauge shows it or as
 * the pressure that is left; with a gauge the lowest pressure counts that its tolerance allows.
 *
 * Cautions: vacuum, fumes, data-sheet.
 *
 * @example
 * swollenVolume({ liquidVolumeMl: 450, entrainedAir: 0.1, stationPressureKpa: 100, absolutePressureKpa: 10 })
 * // { swollenVolumeMl: 950, standingVolumeMl: 500, absolutePressureKpa: 10 }
 */
export function swollenVolume(parameters: {
  /** Volume of the pot, cold and without air. Unit: mL; 1e-9 to 1e15. */
  liquidVolumeMl: number
  /** Share of air in the mix by volume, under the outside pressure. Unit: 1; 0 to below 1. */
  entrainedAir: number
  /** Air pressure at the place itself, not reduced to sea level. Unit: kPa; 22.6 to 178. */
  stationPressureKpa: number
  /**
   * Reading of a vacuum gauge, which counts down from the air outside; give this or the absolute pressure. Unit: kPa; 0
   * to 180. Default: none.
   */
  gaugeVacuumKpa?: number
  /**
   * Pressure that is left in the chamber, counted from nothing at all; give this or the gauge vacuum. Unit: kPa; 0 to
   * 180. Default: none.
   */
  absolutePressureKpa?: number
  /**
   * How far the vacuum gauge may be off to either side; the default, 0.9 inHg, is 3 % of a common dial. Unit: kPa; 0 to
   * 101. Default: 3.0477501.
   */
  dialToleranceKpa?: number
  /**
   * Vapor pressure of the liquid; 0 for a dry plasticizer. Below the pressure in the chamber. Unit: kPa; 0 to 180.
   * Default: 0.
   */
  vaporPressureKpa?: number
  /**
   * Temperature of a damp pot, whose water boils under vacuum; omit it for a dry pot. Unit: °C; 0.01 to 200. Default:
   * none.
   */
  dampAtCelsius?: number
}): {
  /** Volume in the vacuum. Unit: mL. */
  swollenVolumeMl: number
  /** Volume before, bubbles included. Unit: mL. */
  standingVolumeMl: number
  /** Pressure that is left in the chamber. Unit: kPa. */
  absolutePressureKpa: number
}

/**
 * Share of air in a pot, from how high it was seen to rise in a vacuum.
 *
 * With f the level in the vacuum over the level before and b₁, b₂ the expansions of the air before and after: φ/(1 − φ)
 * = (f − 1)/(b₂ − f b₁).
 *
 * Cautions: vacuum, fumes, data-sheet.
 *
 * @example
 * entrainedAir({ rise: 1.9, stationPressureKpa: 100, absolutePressureKpa: 10 })
 * // { entrainedAir: 0.09999999999999999 }
 */
export function entrainedAir(parameters: {
  /**
   * Level of a pot in the vacuum over its level before; give this or the entrained air. Unit: 1; 1 to 1000. Default:
   * none.
   */
  rise: number
  /** Air pressure at the place itself, not reduced to sea level. Unit: kPa; 22.6 to 178. */
  stationPressureKpa: number
  /**
   * Reading of a vacuum gauge, which counts down from the air outside; give this or the absolute pressure. Unit: kPa; 0
   * to 180. Default: none.
   */
  gaugeVacuumKpa?: number
  /**
   * Pressure that is left in the chamber, counted from nothing at all; give this or the gauge vacuum. Unit: kPa; 0 to
   * 180. Default: none.
   */
  absolutePressureKpa?: number
  /**
   * How far the vacuum gauge may be off to either side; the default, 0.9 inHg, is 3 % of a common dial. Unit: kPa; 0 to
   * 101. Default: 3.0477501.
   */
  dialToleranceKpa?: number
  /**
   * Vapor pressure of the liquid; 0 for a dry plasticizer. Below the pressure in the chamber. Unit: kPa; 0 to 180.
   * Default: 0.
   */
  vaporPressureKpa?: number
  /**
   * Temperature of a damp pot, whose water boils under vacuum; omit it for a dry pot. Unit: °C; 0.01 to 200. Default:
   * none.
   */
  dampAtCelsius?: number
}): {
  /** Share of air in the mix by volume, under the outside pressure. Unit: 1. */
  entrainedAir: number
}

/**
 * Vessel for a pot in a vacuum, and how to fill one that is too small.
 *
 * The pot swells no higher than the spare share below the brim: V/(1 − spare). With a vessel the answer gives the level
 * to fill to, on a mark where it has any, and the number of fills.
 *
 * Cautions: vacuum, fumes, data-sheet.
 *
 * @example
 * degasVessel({ liquidVolumeMl: 450, entrainedAir: 0.1, stationPressureKpa: 100, absolutePressureKpa: 10, vesselBrimMl: 600, vesselMarkMl: 50 })
 * // { vesselVolumeMl: 1055.5555555555554, fillMarkMl: 250, fills: 2, fillLevelMl: 250, fillSwollenMl: 475 }
 */
export function degasVessel(parameters: {
  /** Volume of the pot, cold and without air. Unit: mL; 1e-9 to 1e15. */
  liquidVolumeMl: number
  /** Share of air in the mix by volume, under the outside pressure. Unit: 1; 0 to below 1. */
  entrainedAir: number
  /** Air pressure at the place itself, not reduced to sea level. Unit: kPa; 22.6 to 178. */
  stationPressureKpa: number
  /**
   * Reading of a vacuum gauge, which counts down from the air outside; give this or the absolute pressure. Unit: kPa; 0
   * to 180. Default: none.
   */
  gaugeVacuumKpa?: number
  /**
   * Pressure that is left in the chamber, counted from nothing at all; give this or the gauge vacuum. Unit: kPa; 0 to
   * 180. Default: none.
   */
  absolutePressureKpa?: number
  /**
   * How far the vacuum gauge may be off to either side; the default, 0.9 inHg, is 3 % of a common dial. Unit: kPa; 0 to
   * 101. Default: 3.0477501.
   */
  dialToleranceKpa?: number
  /**
   * Vapor pressure of the liquid; 0 for a dry plasticizer. Below the pressure in the chamber. Unit: kPa; 0 to 180.
   * Default: 0.
   */
  vaporPressureKpa?: number
  /**
   * Temperature of a damp pot, whose water boils under vacuum; omit it for a dry pot. Unit: °C; 0.01 to 200. Default:
   * none.
   */
  dampAtCelsius?: number
  /** Share of the vessel that stays empty. Unit: 1; 0 to below 1. Default: 0.1. */
  vesselSpare?: number
  /** Volume of the vessel up to its brim. Unit: mL; 1e-9 to 1e15. */
  vesselBrimMl?: number
  /** Distance between the vessel's marks. Unit: mL; 1e-9 to 1e15. Default: any level. */
  vesselMarkMl?: number
}): {
  /** Volume to the brim of a vessel that takes the pot at once. Unit: mL. */
  vesselVolumeMl: number
  /**
   * Level to fill the given vessel to at most, bubbles included. Unit: mL. Null where it is not known or does not
   * apply.
   */
  fillMarkMl: number | null
  /** Number of fills of the given vessel. Null where it is not known or does not apply. */
  fills: number | null
  /**
   * Level of each fill, shared out evenly, bubbles included. Unit: mL. Null where it is not known or does not apply.
   */
  fillLevelMl: number | null
  /** Volume of an even fill in the vacuum. Unit: mL. Null where it is not known or does not apply. */
  fillSwollenMl: number | null
}

/**
 * Number of particles in a dose of flake, nominal: m/(A·h·ρ), A the face of the cut, h the thickness of the film.
 *
 * A = (√3/2)s² of a hexagon, s² of a square, (π/4)s² of a disk. Real particles are cut a little smaller.
 *
 * @example
 * flakeCount({ cut: '1 mm square', thicknessUm: 50, filmDensityGPerMl: 1.4, flakeDoseG: 0.7 })
 * // { particles: 10000, areaCm2: 99.99999999999999 }
 */
export function flakeCount(parameters: {
  /** Size and shape of a flake as the trade writes it: `.035`, `1/64 hex`, `0.4 mm square`. Range: 0.05 to 6.35 mm. */
  cut: string
  /** Thickness of the film; below the size of the cut. Unit: µm; 1e-3 to 6350. */
  thicknessUm: number
  /** Density of the film that the flake is cut from. Unit: g/mL; 0.001 to 25. */
  filmDensityGPerMl: number
  /** Mass of the dose of flake. Unit: g; 1e-12 to 1e15. */
  flakeDoseG: number
}): {
  /** Number of particles, not rounded. Unit: 1. */
  particles: number
  /** Area of film, one face of every particle. Unit: cm2. */
  areaCm2: number
}

/**
 * Dose of another flake in place of one, with as much area or as many particles.
 *
 * The two are not the same: at an equal count a cut of half the size covers a quarter. The answer gives both.
 *
 * @example
 * flakeSwap({ cut: '1 mm square', thicknessUm: 50, filmDensityGPerMl: 1.4, flakeDoseG: 0.7, otherCut: '0.5 mm square', otherThicknessUm: 50, otherFilmDensityGPerMl: 1.4, otherAsScoopedGPerMl: 0.35 })
 * // { massG: 0.7, scoopMl: 2, countRatio: 4, areaRatio: 1 }
 */
export function flakeSwap(parameters: {
  /** Size and shape of a flake as the trade writes it: `.035`, `1/64 hex`, `0.4 mm square`. Range: 0.05 to 6.35 mm. */
  cut: string
  /** Thickness of the film; below the size of the cut. Unit: µm; 1e-3 to 6350. */
  thicknessUm: number
  /** Density of the film that the flake is cut from. Unit: g/mL; 0.001 to 25. */
  filmDensityGPerMl: number
  /** Mass of the dose of flake. Unit: g; 1e-12 to 1e15. */
  flakeDoseG: number
  /** Size and shape of the other flake. Range: 0.05 to 6.35 mm. */
  otherCut: string
  /** Thickness of the film of the other flake; below the size of its cut. Unit: µm; 1e-3 to 6350. */
  otherThicknessUm: number
  /** Density of the film of the other flake. Unit: g/mL; 0.001 to 25. */
  otherFilmDensityGPerMl: number
  /** Bulk density of the other flake, level in the spoon. Unit: g/mL; 0.001 to 25. Default: none. */
  otherAsScoopedGPerMl?: number
  /** What the two doses of flake have in common: the number of particles or the area of film. Default: area. */
  alike?: 'count' | 'area'
}): {
  /** Mass of the other flake. Unit: g. */
  massG: number
  /** Volume to scoop of it, where its bulk density is given. Unit: mL. Null where it is not known or does not apply. */
  scoopMl: number | null
  /** Particles of the other dose over those of the first. Unit: 1. */
  countRatio: number
  /** Area of the other dose over that of the first. Unit: 1. */
  areaRatio: number
}

/**
 * Difference of two colors in CIE L\*a\*b\*: ΔE₀₀ (CIEDE2000).
 *
 * ISO/CIE 11664-6. Below 1 two pieces look alike to most eyes; side by side the eye decides.
 *
 * @example
 * colorDifference({ lightness: 50, a: 2.6772, b: -79.7751, otherLightness: 50, otherA: 0, otherB: -82.7485 })
 * // { difference: 2.042459680156571 }
 */
export function colorDifference(parameters: {
  /** L* of the color: 0 for black, 100 for white. Unit: 1; 0 to 100. */
  lightness: number
  /** a* of the color: green below 0, red above. Unit: 1; -200 to 200. */
  a: number
  /** b* of the color: blue below 0, yellow above. Unit: 1; -200 to 200. */
  b: number
  /** L* of the other color. Unit: 1; 0 to 100. */
  otherLightness: number
  /** a* of the other color. Unit: 1; -200 to 200. */
  otherA: number
  /** b* of the other color. Unit: 1; -200 to 200. */
  otherB: number
}): {
  /** ΔE₀₀. Unit: 1. */
  difference: number
}

/**
 * Equivalent time of a heat at a reference temperature: ∫ exp(−E_a/R (1/T − 1/T_ref)) dt.
 *
 * Between two readings the temperature is taken as straight. The activation energy is the supplier's; published ones of
 * PVC are 117.5 to 170 kJ/mol.
 *
 * Cautions: hot-plastisol, fumes, data-sheet.
 *
 * @example
 * equivalentTime({ readings: [[0, 175], [600, 175]], activationEnergyKjPerMol: 120, referenceTemperatureCelsius: 175 })
 * // { equivalentTimeS: 600 }
 */
export function equivalentTime(parameters: {
  /**
   * Temperatures in the order of time, taken as straight between. 2 to 100000 rows, each: Time of a reading, after that
   * of the one before. Unit: s; 0 to 1e15. Then: Temperature of a reading. Unit: °C; -73 to 427.
   */
  readings: Iterable<readonly [number, number]>
  /** Activation energy of the decay in the heat; state its source in a book. Unit: kJ/mol; 10 to 500. */
  activationEnergyKjPerMol: number
  /** Temperature at which the time is counted. Unit: °C; -73 to 427. */
  referenceTemperatureCelsius: number
}): {
  /** Equivalent time. Unit: s. */
  equivalentTimeS: number
}

/**
 * Heat budget that is left of a pot, in equivalent time at the reference temperature.
 *
 * More stabilizer than the budget is stated for buys the extra time that its maker states; without that figure it is
 * refused.
 *
 * Cautions: hot-plastisol, fumes, data-sheet.
 *
 * @example
 * budgetLeft({ heatBudgetS: 1800, equivalentTimeS: 600 })
 * // { budgetS: 1800, leftS: 1200, overspentS: 0 }
 */
export function budgetLeft(parameters: {
  /** Time at the reference temperature that the plastisol withstands. Unit: s; 1e-6 to 1e15. Default: none. */
  heatBudgetS: number
  /** Equivalent time that the pot has spent so far, at the temperature of its budget. Unit: s; 0 to 1e15. */
  equivalentTimeS: number
  /** Stabilizer that the heat budget is stated for, by mass of base. Unit: 1; 0 to 1. Default: 0. */
  budgetWith?: number
  /** Stabilizer in the mix, by mass of base. Unit: 1; 0 to 1. Default: as budgetWith. */
  stabilizerDose?: number
  /**
   * Equivalent time that more of the stabilizer buys, per mass of it per mass of base: 30000 s is 5 min for every 1 %.
   * Unit: s; 1e-6 to 1e15. Default: none.
   */
  extraTimeS?: number
  /** Highest dose of stabilizer for which the extra time is known, by mass of base. Unit: 1; 0 to 1. Default: none. */
  extraMost?: number
}): {
  /** Budget at this dose of stabilizer. Unit: s. */
  budgetS: number
  /** Time that is left; 0 where more was spent. Unit: s. */
  leftS: number
  /** Time that was spent beyond the budget; 0 where it was not. Unit: s. */
  overspentS: number
}

/**
 * Heating time of a pot in the oven, without a break, by the shop's own timings.
 *
 * t = Q (a + b/m), Q = ∫ (m c_p(T) + C_vessel) dT; a and b are fitted to the timings (module `process::heat`). An
 * amount of more than 1.6 times the timed ones is refused. Without timings the rated power gives a first guess.
 *
 * Cautions: hot-plastisol, fumes, water, data-sheet.
 *
 * @example
 * heatTime({ potMassG: 300, specificHeatJPerGK: 2, heatedFromCelsius: 20, heatedToCelsius: 170, timings: [[200, 20, 120, 80], [400, 20, 120, 160]] })
 * // { heatTimeS: 180, heatTimeUncertaintyS: 13.46996659238619, powerW: 500, beyond: null }
 */
export function heatTime(parameters: {
  /** Mass of the mix in the pot. Unit: g; 1e-12 to 1e15. */
  potMassG: number
  /** Specific heat of the mix, its salt counted. Unit: J/(g.K); 0.1 to 10. */
  specificHeatJPerGK: number
  /** The temperature before heating. Unit: °C; -73 to 427. */
  heatedFromCelsius: number
  /** The temperature after heating, above that before. Unit: °C; -73 to 427. */
  heatedToCelsius: number
  /**
   * Heatings that the shop has timed, all at one setting: of each the mass of the mix, the temperatures before and
   * after and the time; needed without the rated power. 1 to 1000 rows, each: Mass of the mix in a timed heating. Unit:
   * g; 1e-12 to 1e15. Then: Temperature before a timed heating. Unit: °C; -73 to 427. Then: Temperature after a timed
   * heating, stirred; above that before. Unit: °C; -73 to 427. Then: Time that the oven ran in a timed heating. Unit:
   * s; 1e-3 to 1e9. Default: none.
   */
  timings?: Iterable<readonly [number, number, number, number]>
  /**
   * Rated power of the oven, its output at full power: a first guess, not used once there are timings; needed without
   * them. Unit: W; 50 to 10000. Default: none.
   */
  ovenPowerW?: number
  /** Setting of the oven, as a share of full power. Unit: 1; above 0 to 1. Default: that of the timings. */
  setting?: number
  /**
   * Rise of the specific heat per kelvin, as a share of that at 25 °C, of what is heated and of what was timed. Unit:
   * 1/K; -0.002 to 0.01. Default: 0.
   */
  specificHeatRisePerKelvin?: number
  /** Specific heat of what was timed. Unit: J/(g.K); 0.1 to 10. Default: as specificHeatJPerGK. */
  timedSpecificHeatJPerGK?: number
  /** Mass of the vessel. Unit: g; 1e-12 to 1e15. Default: left to the timings. */
  vesselMassG?: number
  /** Specific heat of the vessel. Unit: J/(g.K); 0.1 to 10. Default: none. */
  vesselSpecificHeatJPerGK?: number
}): {
  /** Heating time. Unit: s. */
  heatTimeS: number
  /** Its standard uncertainty for one more heating. Unit: s. */
  heatTimeUncertaintyS: number
  /** Power that reaches mix and vessel. Unit: W. */
  powerW: number
  /**
   * How far the amount is outside those that were timed, as a factor; none inside them. Unit: 1. Null where it is not
   * known or does not apply.
   */
  beyond: number | null
}

/**
 * The next burst of the oven for a reading of the thermometer.
 *
 * No burst can carry the pot over its window, by all the power that the timings make plausible and the error of the
 * thermometer (module `process::heat`). Stir, read, and look up each burst by its reading. The system of measures gives
 * the scale of the thermometer, on whole degrees of which the limits are.
 *
 * Cautions: hot-plastisol, fumes, water, data-sheet.
 *
 * @example
 * nextBurst({ potMassG: 300, specificHeatJPerGK: 2, readingCelsius: 20, windowBottomCelsius: 160, windowTopCelsius: 180, timings: [[200, 20, 120, 80], [400, 20, 120, 160]], measures: 'metric' })
 * // { burstS: 90, expectedCelsius: 95, shootFromCelsius: 162, shootToCelsius: 178, bursts: 4, ovenTimeS: 175 }
 */
export function nextBurst(parameters: {
  /** Mass of the mix in the pot. Unit: g; 1e-12 to 1e15. */
  potMassG: number
  /** Specific heat of the mix, its salt counted. Unit: J/(g.K); 0.1 to 10. */
  specificHeatJPerGK: number
  /** Reading of the thermometer, in the stirred mix. Unit: °C; -73 to 427. */
  readingCelsius: number
  /** Lowest temperature at which the mix is shot, its material's own. Unit: °C; -73 to 427. */
  windowBottomCelsius: number
  /** Highest temperature at which the mix is shot, its material's own; above the lowest. Unit: °C; -73 to 427. */
  windowTopCelsius: number
  /**
   * Heatings that the shop has timed, all at one setting: of each the mass of the mix, the temperatures before and
   * after and the time; needed without the rated power. 1 to 1000 rows, each: Mass of the mix in a timed heating. Unit:
   * g; 1e-12 to 1e15. Then: Temperature before a timed heating. Unit: °C; -73 to 427. Then: Temperature after a timed
   * heating, stirred; above that before. Unit: °C; -73 to 427. Then: Time that the oven ran in a timed heating. Unit:
   * s; 1e-3 to 1e9. Default: none.
   */
  timings?: Iterable<readonly [number, number, number, number]>
  /**
   * Rated power of the oven, its output at full power: a first guess, not used once there are timings; needed without
   * them. Unit: W; 50 to 10000. Default: none.
   */
  ovenPowerW?: number
  /** Setting of the oven, as a share of full power. Unit: 1; above 0 to 1. Default: that of the timings. */
  setting?: number
  /**
   * Rise of the specific heat per kelvin, as a share of that at 25 °C, of what is heated and of what was timed. Unit:
   * 1/K; -0.002 to 0.01. Default: 0.
   */
  specificHeatRisePerKelvin?: number
  /** Specific heat of what was timed. Unit: J/(g.K); 0.1 to 10. Default: as specificHeatJPerGK. */
  timedSpecificHeatJPerGK?: number
  /** Mass of the vessel. Unit: g; 1e-12 to 1e15. Default: left to the timings. */
  vesselMassG?: number
  /** Specific heat of the vessel. Unit: J/(g.K); 0.1 to 10. Default: none. */
  vesselSpecificHeatJPerGK?: number
  /** The temperature to heat to. Unit: °C; in the shot window. Default: the middle of the window. */
  aimCelsius?: number
  /** How far the thermometer may be off. Unit: K; 0 to 100. Default: 2. */
  thermometerKelvin?: number
  /** Shortest burst that can be set, of which the others are multiples. Unit: s; 1e-3 to 3600. Default: 5. */
  burstStepS?: number
  /** Longest burst without a stir, at least the shortest. Unit: s; 1e-3 to 3600. Default: 120. */
  longestBurstS?: number
  /** How long a turn of full power and none takes at a setting below full power. Unit: s; 0 to 3600. Default: 30. */
  ovenTurnS?: number
  /** The system of measures: what a cup, a spoon and a fluid ounce hold. Default: us-customary. */
  measures?: 'us-customary' | 'us-label' | 'metric' | 'imperial'
}): {
  /** The next burst; none where the pot is hot enough. Unit: s. Null where it is not known or does not apply. */
  burstS: number | null
  /** The expected reading after it. Unit: °C. Null where it is not known or does not apply. */
  expectedCelsius: number | null
  /** Shoot from this reading on. Unit: °C. */
  shootFromCelsius: number
  /** Shoot up to this reading; above it, stop and let the pot cool. Unit: °C. */
  shootToCelsius: number
  /** Number of bursts that are expected from this reading on. */
  bursts: number
  /** Time that the oven is expected to run in them. Unit: s. */
  ovenTimeS: number
}

/**
 * How long a pot stays hot, by a pot that was watched to cool.
 *
 * Newton's law: T(t) = T_room + (T₀ − T_room)·exp(−t/τ), τ = t/ln((T₀ − T_room)/(T₁ − T_room)); less mix than was
 * watched cools faster (module `process::heat`).
 *
 * Cautions: hot-plastisol, fumes.
 *
 * @example
 * staysHot({ potMassG: 500, hotFromCelsius: 170, hotToCelsius: 130, watchedMassG: 500, watchedFromCelsius: 170, watchedToCelsius: 150, watchedTimeS: 300, roomCelsius: 22, stoodS: 600 })
 * // { timeConstantS: 2066.371724164207, hotForS: 651.0745655967437, halfFullS: 511.5585872545843, afterCelsius: 132.7027027027027 }
 */
export function staysHot(parameters: {
  /** Mass of the mix in the pot. Unit: g; 1e-12 to 1e15. */
  potMassG: number
  /** Temperature after the last burst. Unit: °C; -73 to 427. */
  hotFromCelsius: number
  /** Temperature down to which the pot can be shot, above that of the room. Unit: °C; -73 to 427. */
  hotToCelsius: number
  /** Mass of the mix in a pot that was watched to cool. Unit: g; 1e-12 to 1e15. */
  watchedMassG: number
  /** First reading of a pot that was watched to cool, from its second minute on, stirred. Unit: °C; -73 to 427. */
  watchedFromCelsius: number
  /**
   * Second reading of a pot that was watched to cool, stirred; below the first and above that of the room. Unit: °C;
   * -73 to 427.
   */
  watchedToCelsius: number
  /** Time between the two readings of a pot that was watched to cool. Unit: s; 1e-3 to 1e9. */
  watchedTimeS: number
  /** Temperature of the room, below all others. Unit: °C; -73 to 427. Default: 20. */
  roomCelsius?: number
  /** How long the pot has stood. Unit: s; 0 to 1e15. Default: how hot it then is, is not calculated. */
  stoodS?: number
}): {
  /** Time in which the distance to the temperature of the room falls to 37 %. Unit: s. */
  timeConstantS: number
  /** Time down to the lower temperature, with all of the mix in the pot. Unit: s. */
  hotForS: number
  /** The same with half of it. Unit: s. */
  halfFullS: number
  /** Temperature after the time that the pot has stood. Unit: °C. Null where it is not known or does not apply. */
  afterCelsius: number | null
}

/**
 * The heats that the shots of a pot take, and how long they all take.
 *
 * A heat goes on while the next shot ends before the pot has fallen to the bottom of its window; then it is heated
 * again. How long a pot stays hot is stated, or follows from a pot that was watched to cool. A shot can be made every
 * max(h, (h + s)/k): h its working time, s the time that it sets, k molds in turn (module `process::clock`).
 *
 * Cautions: hot-plastisol, fumes.
 *
 * @example
 * potHeats({ potMassG: 1200, clockRuns: [[22, 48, 50, 0, 1]], hotForS: 480, ovenTimeS: 240 })
 * // { reheats: 2, firstShots: 9, shootingTimeS: 1100, totalTimeS: 1820 }
 */
export function potHeats(parameters: {
  /** Mass of the mix in the pot. Unit: g; 1e-12 to 1e15. */
  potMassG: number
  /**
   * The pot's shots in their order, like ones together: of each run the number of shots, the mass that one takes, the
   * working time for one, the time that it sets and the number of molds in turn. At most 100 000 shots. 1 to 1000 rows,
   * each: Number of like shots in a row; at most 100 000 from one pot. Unit: 1; 1 to 100000. Then: Mass of one shot,
   * sprue included. Unit: g; 1e-12 to 1e15. Then: Working time of a shot: fill, shoot, top off, take out. Unit: s; 1e-3
   * to 1e15. Then: Time that a shot sets in its mold. Unit: s; 0 to 1e6. Then: Number of such molds that are shot in
   * turn. Unit: 1; 1 to 1000000.
   */
  clockRuns: Iterable<readonly [number, number, number, number, number]>
  /**
   * How long the pot stays hot at one heat, from the last burst to the last shot. Unit: s; 1e-3 to 1e15. Default: from
   * how it cools.
   */
  hotForS?: number
  /** Temperature after the last burst; needed with `cools`. Unit: °C; -73 to 427. Default: none. */
  clockFromCelsius?: number
  /**
   * Temperature down to which the pot can be shot, above that of the room; needed with `cools`. Unit: °C; -73 to 427.
   * Default: none.
   */
  clockToCelsius?: number
  /** Mass of the mix in a pot that was watched to cool. Unit: g; 1e-12 to 1e15. */
  watchedMassG?: number
  /** First reading of a pot that was watched to cool, from its second minute on, stirred. Unit: °C; -73 to 427. */
  watchedFromCelsius?: number
  /**
   * Second reading of a pot that was watched to cool, stirred; below the first and above that of the room. Unit: °C;
   * -73 to 427.
   */
  watchedToCelsius?: number
  /** Time between the two readings of a pot that was watched to cool. Unit: s; 1e-3 to 1e9. */
  watchedTimeS?: number
  /** Temperature of the room, below all others. Unit: °C; -73 to 427. Default: 20. */
  roomCelsius?: number
  /** How long the oven runs for one heat. Unit: s; 0 to 1e15. Default: it is not counted. */
  ovenTimeS?: number
}): {
  /** Number of reheats: the heats but for the first. */
  reheats: number
  /** Number of shots in the first heat. */
  firstShots: number
  /** Time of all shots, without the oven. Unit: s. */
  shootingTimeS: number
  /**
   * Time of all shots and of the oven for each heat, where that is given. Unit: s. Null where it is not known or does
   * not apply.
   */
  totalTimeS: number | null
}

/**
 * How long a shot sets in a metal mold, and how often one can be made.
 *
 * The first term of the series of a rod, a plate or a ball whose surface keeps the temperature of the mold: t = R²/(ζ²
 * α) ln(C/Θ), Θ = (T_e − T_m)/(T₀ − T_m) (module `process::shot_cooling`). The mold is as warm as the shot leaves it,
 * where its mass is given.
 *
 * Cautions: hot-plastisol, water.
 *
 * @example
 * settingTime({ sectionShape: 'rod', sectionThicknessMm: 9, shotAtCelsius: 165, handsS: 50, molds: 2 })
 * // { settingTimeS: 104.20464250602106, settingTimeMinS: 83.36371400481686, settingTimeMaxS: 128.25186769971822, warmsKelvin: null, inARow: null, shotEveryS: 77.10232125301053 }
 */
export function settingTime(parameters: {
  /** Shape of the thickest part of a piece. */
  sectionShape: 'rod' | 'plate' | 'ball'
  /** Thickness of the thickest part of a piece; of a rod or a ball its diameter. Unit: mm; 0.2 to 200. */
  sectionThicknessMm: number
  /** Temperature at which it is shot, above that at which it is taken out. Unit: °C; -73 to 427. */
  shotAtCelsius: number
  /**
   * Temperature of the mold before the shot, below that at which a piece is taken out. Unit: °C; -73 to 427. Default:
   * 30.
   */
  moldAtCelsius?: number
  /** Temperature at which a piece can be taken out. Unit: °C; -73 to 427. Default: 50. */
  takeOutCelsius?: number
  /** The point of a piece whose temperature counts. Default: center. */
  piecePoint?: 'center' | 'mean'
  /** Thermal diffusivity of the plastic. Unit: m2/s; 1e-9 to 1e-5. Default: 8.0e-8 m2/s, from 6.5e-8 to 1.0e-7. */
  diffusivityM2PerS?: number
  /** Mass of one shot, sprue included. Unit: g; 1e-12 to 1e15. */
  shotMassG?: number
  /** Specific heat of the plastic. Unit: J/(g.K); 0.1 to 10. Default: 1.9. */
  shotSpecificHeatJPerGK?: number
  /**
   * Mass of the mold. Without it the mold is taken to keep its temperature; with it the mass of the shot is needed.
   * Unit: g; 1e-12 to 1e15. Default: none.
   */
  moldMassG?: number
  /** Specific heat of the mold; the default is that of aluminum. Unit: J/(g.K); 0.1 to 10. Default: 0.897. */
  moldSpecificHeatJPerGK?: number
  /**
   * Working time of a shot: fill, shoot, top off, take out. Unit: s; 1e-3 to 1e15. Default: how often a shot can be
   * made is not calculated.
   */
  handsS?: number
  /** Number of such molds that are shot in turn. Unit: 1; 1 to 1000000. Default: 1. */
  molds?: number
}): {
  /** Setting time. Unit: s. */
  settingTimeS: number
  /** The same with the highest diffusivity of soft PVC. Unit: s. */
  settingTimeMinS: number
  /** The same with the lowest. Unit: s. */
  settingTimeMaxS: number
  /**
   * How much one shot warms the mold, where its mass is given. Unit: K. Null where it is not known or does not apply.
   */
  warmsKelvin: number | null
  /**
   * Number of shots in a row before the mold is too warm, nothing lost between them; none where its mass is not given,
   * or it goes on. Null where it is not known or does not apply.
   */
  inARow: number | null
  /**
   * Time from one shot to the next, where the working time is given. Unit: s. Null where it is not known or does not
   * apply.
   */
  shotEveryS: number | null
}

/**
 * How often to stir a melt with salt in it, and how fast the salt settles.
 *
 * Drag of a sphere by Schiller and Naumann, hindered settling by Richardson and Zaki, a grain as a cube that passes a
 * sieve (module `process::settling`). Stir before the top share of the depth is without grains: t = share · depth/v.
 *
 * Cautions: hot-plastisol, salt-dry.
 *
 * @example
 * stirEvery({ grainMm: 0.3, grainDensityGPerMl: 2.165, meltDensityGPerMl: 0.93, meltDepthMm: 80, meltViscosityMinMPaS: 500, meltViscosityMaxMPaS: 1000 })
 * // { stirEveryS: 46.358618363896404, stirEveryMaxS: 92.69906432655615, settlingMinCmPerS: 0.008630076320746836, settlingMaxCmPerS: 0.017256769684556247 }
 */
export function stirEvery(parameters: {
  /** Size of a grain of salt: the opening of a sieve that it just passes. Unit: mm; 0.001 to 50. */
  grainMm: number
  /** True density of the grains, above that of the melt. Unit: g/mL; 0.001 to 25. */
  grainDensityGPerMl: number
  /** Density of the melt, hot. Unit: g/mL; 0.001 to 25. */
  meltDensityGPerMl: number
  /** Depth of the melt in its cup. Unit: mm; 0.1 to 10000. */
  meltDepthMm: number
  /**
   * Lowest viscosity that the melt may have at shot temperature. Where none is known, the defaults of both span what
   * such melts may have. Unit: mPa.s; 0.1 to 1e7. Default: 50.
   */
  meltViscosityMinMPaS?: number
  /**
   * Highest viscosity that the melt may have at shot temperature, at least the lowest. Unit: mPa.s; 0.1 to 1e7.
   * Default: 5000.
   */
  meltViscosityMaxMPaS?: number
  /** Share of the grains in the volume; at 0 one grain alone. Unit: 1; 0 to 0.4. Default: 0. */
  solidsShare?: number
  /** Share of the depth that may be without grains before it is stirred. Unit: 1; 0.001 to 1. Default: 0.1. */
  unstirred?: number
}): {
  /** How often to stir, to be safe: in the thinnest melt. Unit: s. */
  stirEveryS: number
  /** How often is enough in the thickest melt. Unit: s. */
  stirEveryMaxS: number
  /** Speed of the grains in the thickest melt. Unit: cm/s. */
  settlingMinCmPerS: number
  /** Speed of the grains in the thinnest melt. Unit: cm/s. */
  settlingMaxCmPerS: number
}

/**
 * Viscosity of a melt, from a ball that was timed as it sank.
 *
 * The drag of a sphere by Schiller and Naumann, up to a Reynolds number of 800 (module `process::settling`).
 *
 * Cautions: hot-plastisol.
 *
 * @example
 * viscosityOfBall({ ballDiameterMm: 1, ballDensityGPerMl: 7.8, meltDensityGPerMl: 0.93, ballDepthMm: 50, ballTimeS: 20 })
 * // { meltViscosityMPaS: 1494.5095512811074 }
 */
export function viscosityOfBall(parameters: {
  /** Diameter of the ball, much smaller than that of the vessel. Unit: mm; 0.001 to 50. */
  ballDiameterMm: number
  /** Density of the ball: 7.8 g/mL of steel. Unit: g/mL; 0.001 to 25. */
  ballDensityGPerMl: number
  /** Density of the melt, hot. Unit: g/mL; 0.001 to 25. */
  meltDensityGPerMl: number
  /** How deep the ball sank, let go below the surface. Unit: mm; 1 to 10000. */
  ballDepthMm: number
  /** Time that the ball took. Unit: s; 0.01 to 1e6. */
  ballTimeS: number
}): {
  /** Viscosity of the melt. Unit: mPa.s. */
  meltViscosityMPaS: number
}

/**
 * Volume of a cavity from weighed pieces, the feed being known: V = m̄/((1 − φ)[ρ_hot + f (ρ_cold − ρ_hot)]).
 *
 * @example
 * cavityOfWeights({ weightsG: [10, 10], balanceReadabilityG: 0.01, coldDensityGPerMl: 1, feed: 0.5 })
 * // { cavityVolumeMl: 10, cavityVolumeUncertaintyMl: 0.0028867513459481294, meanG: 10, deviationG: 0 }
 */
export function cavityOfWeights(parameters: {
  /** Mass of each piece, one by one. 2 to 100000 numbers, each: Mass of one weighed piece. Unit: g; 1e-12 to 1e15. */
  weightsG: Iterable<number>
  /**
   * Smallest difference that the balance shows; without it there is no balance. Unit: g; 1e-12 to 1e15. Default: none.
   */
  balanceReadabilityG: number
  /** Density of the finished plastic at 20 °C, without voids. Unit: g/mL; 0.001 to 25. */
  coldDensityGPerMl: number
  /**
   * Melt density at shot temperature, without voids; at most the cold one. Unit: g/mL; 0.001 to 25. Default: as
   * coldDensityGPerMl.
   */
  hotDensityGPerMl?: number
  /** Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0. */
  voids?: number
  /**
   * Share of its contraction that a piece draws from the sprue while it cools. Where it is not known, 0.5 counts as in
   * plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). Unit: 1; 0 to 1. Default: 0.5.
   */
  feed?: number
  /**
   * Standard uncertainty of the feed share, in points of it (10 %: 60 % is 50 % to 70 %). Unit: 1; 0 to 1. Default: 0.
   */
  feedUncertainty?: number
}): {
  /** Volume of the cavity. Unit: mL. */
  cavityVolumeMl: number
  /** Its standard uncertainty. Where the feed is not known, that of an even spread from 0 to 1 counts. Unit: mL. */
  cavityVolumeUncertaintyMl: number
  /** Mean of the weights. Unit: g. */
  meanG: number
  /** Standard deviation of one. Unit: g. */
  deviationG: number
}

/**
 * Feed share from weighed pieces, the cavity being known: f = (m̄/(V (1 − φ)) − ρ_hot)/(ρ_cold − ρ_hot).
 *
 * @example
 * feedOfWeights({ weightsG: [10.5, 10.5], balanceReadabilityG: 0.01, coldDensityGPerMl: 1.1, cavityVolumeMl: 10, hotDensityGPerMl: 1 })
 * // { feed: 0.5, feedUncertainty: 0.002886751345948127, meanG: 10.5, deviationG: 0 }
 */
export function feedOfWeights(parameters: {
  /** Mass of each piece, one by one. 2 to 100000 numbers, each: Mass of one weighed piece. Unit: g; 1e-12 to 1e15. */
  weightsG: Iterable<number>
  /**
   * Smallest difference that the balance shows; without it there is no balance. Unit: g; 1e-12 to 1e15. Default: none.
   */
  balanceReadabilityG: number
  /** Density of the finished plastic at 20 °C, without voids. Unit: g/mL; 0.001 to 25. */
  coldDensityGPerMl: number
  /** Volume of one cavity. Unit: mL; 1e-9 to 1e15. */
  cavityVolumeMl: number
  /**
   * Melt density at shot temperature, without voids; at most the cold one. Unit: g/mL; 0.001 to 25. Default: as
   * coldDensityGPerMl.
   */
  hotDensityGPerMl?: number
  /** Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0. */
  voids?: number
  /** Standard uncertainty of the volume. Unit: mL; 0 to 1e15. Default: 0. */
  volumeUncertaintyMl?: number
}): {
  /** Feed share. Unit: 1. */
  feed: number
  /** Its standard uncertainty. Unit: 1. */
  feedUncertainty: number
  /** Mean of the weights. Unit: g. */
  meanG: number
  /** Standard deviation of one. Unit: g. */
  deviationG: number
}

/**
 * Mass of one drop from several weighings of many.
 *
 * @example
 * dropOfWeighings({ dropsWeighed: [[50, 2.2], [50, 2.2]], balanceReadabilityG: 0.01 })
 * // { dropMassG: 0.044000000000000004, dropMassUncertaintyG: 0.000057735026918962585, scatterG: 0 }
 */
export function dropOfWeighings(parameters: {
  /**
   * Drops that were counted and weighed together, each weighing started over. 2 to 1000 rows, each: Number of drops or
   * spoonfuls of a weighing. Unit: 1; 1 to 1000000. Then: What they weigh together, net. Unit: g; 1e-12 to 1e15.
   */
  dropsWeighed: Iterable<readonly [number, number]>
  /**
   * Smallest difference that the balance shows; without it there is no balance. Unit: g; 1e-12 to 1e15. Default: none.
   */
  balanceReadabilityG: number
}): {
  /** Mass of one drop. Unit: g. */
  dropMassG: number
  /** Its standard uncertainty. Unit: g. */
  dropMassUncertaintyG: number
  /** Standard deviation of one drop against the next. Unit: g. */
  scatterG: number
}

/**
 * Bulk density of a powder from several weighings of level spoonfuls.
 *
 * @example
 * asScoopedOfWeighings({ scoopsWeighed: [[10, 61], [10, 61]], spoonVolumeMl: 5, balanceReadabilityG: 0.1 })
 * // { asScoopedGPerMl: 1.2199999999999998, asScoopedUncertaintyGPerMl: 0.0005773502691896258, spoonfulG: 6.1 }
 */
export function asScoopedOfWeighings(parameters: {
  /**
   * Level spoonfuls that were counted and weighed together, each weighing started over. 2 to 1000 rows, each: Number of
   * drops or spoonfuls of a weighing. Unit: 1; 1 to 1000000. Then: What they weigh together, net. Unit: g; 1e-12 to
   * 1e15.
   */
  scoopsWeighed: Iterable<readonly [number, number]>
  /** Volume of the level spoon. Unit: mL; 1e-9 to 1e15. */
  spoonVolumeMl: number
  /**
   * Smallest difference that the balance shows; without it there is no balance. Unit: g; 1e-12 to 1e15. Default: none.
   */
  balanceReadabilityG: number
  /** Standard uncertainty of the volume. Unit: mL; 0 to 1e15. Default: 0. */
  volumeUncertaintyMl?: number
}): {
  /** Bulk density, level in the spoon. Unit: g/mL. */
  asScoopedGPerMl: number
  /** Its standard uncertainty. Unit: g/mL. */
  asScoopedUncertaintyGPerMl: number
  /** Mass of one spoonful. Unit: g. */
  spoonfulG: number
}

/**
 * Volume that stays in an injector, from weighings of it clean and then emptied as at work.
 *
 * @example
 * residueOfWeighings({ injectorWeighedG: [[180, 184], [180, 184]], residueDensityGPerMl: 1, balanceReadabilityG: 0.1 })
 * // { injectorResidueMl: 4.0000000000000036, injectorResidueUncertaintyMl: 0.02886751345948129, residueMassG: 4.0000000000000036 }
 */
export function residueOfWeighings(parameters: {
  /**
   * Weighings of the injector, each clean and then emptied as at work. 2 to 1000 rows, each: Mass of the clean
   * injector. Unit: g; 1e-12 to 1e15. Then: Mass of the injector emptied as at work; at least that of the clean one.
   * Unit: g; 1e-12 to 1e15.
   */
  injectorWeighedG: Iterable<readonly [number, number]>
  /**
   * Density of what stays in the injector, at the temperature at which it is emptied; its uncertainty is counted. Unit:
   * g/mL; 0.001 to 25.
   */
  residueDensityGPerMl: number
  /**
   * Smallest difference that the balance shows; without it there is no balance. Unit: g; 1e-12 to 1e15. Default: none.
   */
  balanceReadabilityG: number
  /**
   * Standard uncertainty of the density of the piece; its bounds are counted at twice that. Unit: g/mL; 0 to 25.
   * Default: 0.
   */
  densityUncertaintyGPerMl?: number
}): {
  /** Volume that stays in the injector. Unit: mL. */
  injectorResidueMl: number
  /** Its standard uncertainty. Unit: mL. */
  injectorResidueUncertaintyMl: number
  /** Its mass. Unit: g. */
  residueMassG: number
}

/**
 * Price for a cost, in the smallest unit of the currency (cents), from the share of the price that the shop keeps.
 *
 * price = cost/(1 − margin), rounded up, so that the margin is never missed; in whole numbers, never in binary
 * fractions. Costs of materials, work and packing with their packages and currencies: the request `cost`.
 *
 * @example
 * price({ cost: 750, costMargin: 0.4 })
 * // { price: 1250 }
 */
export function price(parameters: {
  /** Cost, in the smallest unit of the currency: cents. Unit: 1; 0 to 1000000000. */
  cost: number
  /**
   * Share of the price that the shop keeps (a markup on the cost is another thing). Without it there is no price. Unit:
   * 1; 0 to below 1. Default: none.
   */
  costMargin: number
}): {
  /** Price, in the smallest unit of the currency. */
  price: number
}

/** A function on columns: any number may be a column, and then every result is one. */
type Columnar<Calculation> = Calculation extends (parameters: infer Parameters) => infer Results
  ? (
      parameters: {
        [Name in keyof Parameters]: Parameters[Name] | (number extends Parameters[Name] ? Float64Array : never)
      },
      statuses?: Uint8Array,
    ) => {
      [Name in keyof Results]: Results[Name] extends number | null ? Float64Array : (Results[Name] | null)[]
    }
  : never

/**
 * The calculations for many rows at once: `columns.pieceMass({ cavityVolumeMl: Float64Array.of(9.5, 12), ... })`. Each number
 * is a Float64Array with one number per row, or one number for all rows; at least one is a Float64Array. A row that is
 * refused is NaN (null among words) in all results. `statuses` gets a number per row: 0 calculated, 2 a number of the row is
 * not finite, 6 refused; call the function for that row alone to get the reason.
 *
 * Each throws a {@link PourwrightError} where a parameter is missing, unknown or of another type, or columns differ in length.
 */
export const columns: {
  /** Converts a number of one unit into another. */
  convertNumber: Columnar<typeof convertNumber>
  /** Mass of an amount of a material, as a person writes it: `1/4 tsp`, `40 drops`, `12.5 g`. */
  doseMass: Columnar<typeof doseMass>
  /** Mass of a volume: m = ρV. */
  massOfVolume: Columnar<typeof massOfVolume>
  /** Volume of a mass: V = m/ρ, with the densities of `massOfVolume`. */
  volumeOfMass: Columnar<typeof volumeOfMass>
  /** Density at 20 °C of parts that are mixed: ρ = Σm/(Σm/ρ) · (1 − φ), φ the voids. */
  densityOfParts: Columnar<typeof densityOfParts>
  /** Share of one part in a mix, by mass and by true volume. */
  mixShare: Columnar<typeof mixShare>
  /** States a salt loading another way. */
  saltConvert: Columnar<typeof saltConvert>
  /** Mass of salt for a loading, and of the softener that goes in with it. */
  saltMass: Columnar<typeof saltMass>
  /** Salt loadings in reach: without salt, and with the maximum that `mostSolids` allows. */
  saltReach: Columnar<typeof saltReach>
  /** Mass of salt that brings a base alone to a finished density: `saltMass` in one form, with few numbers. */
  saltForDensity: Columnar<typeof saltForDensity>
  /** Mass of salt at which a piece sinks at a rate. */
  saltForSinkRate: Columnar<typeof saltForSinkRate>
  /** Mass of one shot, and of its pieces. */
  shotFill: Columnar<typeof shotFill>
  /** Mass of a piece: m = V (1 − φ) [ρ_hot + f (ρ_cold − ρ_hot)], φ the voids, f the feed. */
  pieceMass: Columnar<typeof pieceMass>
  /** Minimum number of shots for a number of good pieces. */
  shots: Columnar<typeof shots>
  /** Injector loads for a number of shots. */
  injectorLoads: Columnar<typeof injectorLoads>
  /** Mass to mix for a number of good pieces: shots, injector loads, what is lost and what comes back. */
  batchNeed: Columnar<typeof batchNeed>
  /** Base for a mass of mix, rounded up to a mark of the cup, and what that gives more than is needed. */
  baseToMark: Columnar<typeof baseToMark>
  /**
   * Smallest pot that the bench can make: base ≥ q/(2·tolerance·ratio) for each dose with its step q, and no less mix
   * than oven and injector need.
   */
  leastPot: Columnar<typeof leastPot>
  /** Reject rate from counted pieces, with the exact interval of a binomial share. */
  rejectRate: Columnar<typeof rejectRate>
  /** Sink rate of a piece with its hook: the final speed, a model value. */
  sinkRate: Columnar<typeof sinkRate>
  /** Density at which a piece sinks at a rate: the finished density to salt for. */
  densityForSinkRate: Columnar<typeof densityForSinkRate>
  /** Hardness that a ratio of softener or hardener gives: a monotone cubic through the shop's own points. */
  hardness: Columnar<typeof hardness>
  /** Ratio of softener or hardener for a hardness: the other way round. */
  softenerRatio: Columnar<typeof softenerRatio>
  /** Extra softener for a salted body, between the shop's own points. */
  saltedSoftener: Columnar<typeof saltedSoftener>
  /** Density of air-free water at 101.325 kPa, 0 to 40 °C. */
  waterDensity: Columnar<typeof waterDensity>
  /** Volume of a cavity from the reading of a balance for the water that it holds. */
  cavityOfWater: Columnar<typeof cavityOfWater>
  /** Air pressure of the standard atmosphere at an altitude. */
  standardPressure: Columnar<typeof standardPressure>
  /** Air pressure at the place itself from one that a weather report gives, reduced to sea level. */
  stationPressure: Columnar<typeof stationPressure>
  /** Volume of a pot in a vacuum, with the air that it holds. */
  swollenVolume: Columnar<typeof swollenVolume>
  /** Share of air in a pot, from how high it was seen to rise in a vacuum. */
  entrainedAir: Columnar<typeof entrainedAir>
  /** Vessel for a pot in a vacuum, and how to fill one that is too small. */
  degasVessel: Columnar<typeof degasVessel>
  /** Number of particles in a dose of flake, nominal: m/(A·h·ρ), A the face of the cut, h the thickness of the film. */
  flakeCount: Columnar<typeof flakeCount>
  /** Dose of another flake in place of one, with as much area or as many particles. */
  flakeSwap: Columnar<typeof flakeSwap>
  /** Difference of two colors in CIE L\*a\*b\*: ΔE₀₀ (CIEDE2000). */
  colorDifference: Columnar<typeof colorDifference>
  /** Equivalent time of a heat at a reference temperature: ∫ exp(−E_a/R (1/T − 1/T_ref)) dt. */
  equivalentTime: Columnar<typeof equivalentTime>
  /** Heat budget that is left of a pot, in equivalent time at the reference temperature. */
  budgetLeft: Columnar<typeof budgetLeft>
  /** Heating time of a pot in the oven, without a break, by the shop's own timings. */
  heatTime: Columnar<typeof heatTime>
  /** The next burst of the oven for a reading of the thermometer. */
  nextBurst: Columnar<typeof nextBurst>
  /** How long a pot stays hot, by a pot that was watched to cool. */
  staysHot: Columnar<typeof staysHot>
  /** The heats that the shots of a pot take, and how long they all take. */
  potHeats: Columnar<typeof potHeats>
  /** How long a shot sets in a metal mold, and how often one can be made. */
  settingTime: Columnar<typeof settingTime>
  /** How often to stir a melt with salt in it, and how fast the salt settles. */
  stirEvery: Columnar<typeof stirEvery>
  /** Viscosity of a melt, from a ball that was timed as it sank. */
  viscosityOfBall: Columnar<typeof viscosityOfBall>
  /** Volume of a cavity from weighed pieces, the feed being known: V = m̄/((1 − φ)[ρ_hot + f (ρ_cold − ρ_hot)]). */
  cavityOfWeights: Columnar<typeof cavityOfWeights>
  /** Feed share from weighed pieces, the cavity being known: f = (m̄/(V (1 − φ)) − ρ_hot)/(ρ_cold − ρ_hot). */
  feedOfWeights: Columnar<typeof feedOfWeights>
  /** Mass of one drop from several weighings of many. */
  dropOfWeighings: Columnar<typeof dropOfWeighings>
  /** Bulk density of a powder from several weighings of level spoonfuls. */
  asScoopedOfWeighings: Columnar<typeof asScoopedOfWeighings>
  /** Volume that stays in an injector, from weighings of it clean and then emptied as at work. */
  residueOfWeighings: Columnar<typeof residueOfWeighings>
  /**
   * Price for a cost, in the smallest unit of the currency (cents), from the share of the price that the shop keeps.
   */
  price: Columnar<typeof price>
}
