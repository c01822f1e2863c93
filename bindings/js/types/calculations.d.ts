// Made from the table of calculations by `cargo run -p pourwright-generate`: change that.

/**
 * Converts an amount as a person writes it, such as `1 1/4 cup` or `330 °F`, exactly, and rounds once.
 *
 * What can be read two ways (`6 oz`, `1,25 cup`) is refused with both readings in the message.
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
 * Density at 20 °C of parts that are mixed: ρ = Σm/(Σm/ρ) · (1 − φ), φ the voids.
 *
 * Solids count with their true density. Ideal additivity of volumes; source: conservation of mass and volume.
 *
 * @example
 * densityOfParts({ parts: [[100, 1], [50, 2]] })
 * // { densityGPerMl: 1.2 }
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
 * States a salt loading another way.
 *
 * All ways go through the mass of salt per mass of base; the equations are those of the module `salt`. In reach is what
 * lies between no salt and the maximum that `mostSolids` allows. Where a form that is about a piece needs the feed and
 * it is not known, the bounds are those without feed and fed in full.
 *
 * Cautions: salt-settles, salt-dry.
 *
 * @example
 * saltConvert({ baseVolumeMl: 250, baseDensityGPerMl: 1, saltDensityGPerMl: 2, form: 'of-base', loading: 0.1, toForm: 'as-scooped', saltAsScoopedGPerMl: 1.25 })
 * // { loading: 0.08, loadingMin: 0.08, loadingMax: 0.08 }
 */
export function saltConvert(parameters: {
  /** Volume of the base, cold and liquid, as a cup measures it. Unit: mL; above 0 to 1e15. */
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
   * Mass of the mix before salt; at least that of its base. Give its volume too. Unit: g; above 0 to 1e15. Default: the
   * mass of its base.
   */
  mixMassG?: number
  /** Volume of the mix before salt at 20 °C. Give its mass too. Unit: mL; above 0 to 1e15. Default: as baseVolumeMl. */
  mixVolumeMl?: number
  /**
   * Volume of the mix before salt at shot temperature; at least the cold one. Unit: mL; above 0 to 1e15. Default: as
   * mixVolumeMl.
   */
  hotVolumeMl?: number
  /** Temperature at which the mix is shot. Unit: °C; 20 to 400. Default: 20. */
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
  /** Volume of one cavity. Unit: mL; above 0 to 1e15. */
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
 * Mass of one shot, and of its pieces.
 *
 * Fill: (n V_c + V_s) ρ_hot (1 − φ) + m_top; a piece as in `pieceMassG`, as far as sprue and topping can feed it; what
 * is fed leaves the sprue. Where they cannot, the pieces sink in, and `missingMassG` is above 0.
 *
 * @example
 * shotFill({ cavities: 4, cavityVolumeMl: 10, coldDensityGPerMl: 1.0625, hotDensityGPerMl: 1, feed: 0.5, sprueVolumeMl: 8 })
 * // { shotMassG: 48, piecesMassG: 41.25, sprueMassG: 6.75, missingMassG: 0, pieceMassG: 10.3125, pieceMassMinG: 10.3125, pieceMassMaxG: 10.3125, fed: 0.5 }
 */
export function shotFill(parameters: {
  /** Number of cavities that a shot fills. Unit: 1; 1 to 1000000. */
  cavities: number
  /** Volume of one cavity. Unit: mL; above 0 to 1e15. */
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
  /** Volume of one cavity. Unit: mL; above 0 to 1e15. */
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
 * Measures a mass with the tools of the bench: the way with the least handling that keeps the tolerance.
 *
 * A tool that is not given is not on the bench. Where no tool keeps the tolerance, the help says from what mass on one
 * would.
 *
 * @example
 * benchMeasure({ massToMeasureG: 12.5, tolerance: 0.02, spoonsMl: [5, 2.5], asMeasuredDensityGPerMl: 1 })
 * // { massG: 12.5, deviation: 0, tool: 'spoons', acts: 3, drops: 0, spoonfuls: [2, 1, 0, 0, 0, 0, 0, 0], cup: 0, cupFillings: 0, cupMark: 0 }
 */
export function benchMeasure(parameters: {
  /** Mass to measure. Unit: g; above 0 to 1e15. */
  massToMeasureG: number
  /** Largest relative error that is accepted. Unit: 1; above 0 to below 1. Default: 0.05. */
  tolerance?: number
  /**
   * Smallest difference that the balance shows; without it there is no balance. Unit: g; above 0 to 1e15. Default:
   * none.
   */
  balanceReadabilityG?: number
  /** Maximum that the balance weighs at once. Unit: g; above 0 to 1e15. Default: 5000 times its readability. */
  balanceCapacityG?: number
  /** Minimum load for which the balance is trusted. Unit: g; 0 to 1e15. Default: 0. */
  balanceLeastLoadG?: number
  /**
   * Volumes of the measuring spoons. 1 to 8 numbers, each: Volume of the level spoon. Unit: mL; above 0 to 1e15.
   * Default: none.
   */
  spoonsMl?: Iterable<number>
  /**
   * The cups with evenly spaced marks: of each the distance between marks and the capacity. 1 to 64 rows, each:
   * Distance between the marks of the cup. Unit: mL; above 0 to 1e15. Default: one mark alone, for the amount of base.
   * Then: Volume of the cup up to its last mark. Unit: mL; above 0 to 1e15. Default: none.
   */
  cups?: Iterable<readonly [number, number]>
  /**
   * Density of the material in a measure: of a liquid its density, of a powder its bulk density, level and not tapped.
   * Unit: g/mL; 0.001 to 25. Default: none.
   */
  asMeasuredDensityGPerMl?: number
  /** Mass of one drop. Unit: g; above 0 to 1e15. Default: none. */
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
  /** Mass of a volume: m = ρV. */
  massOfVolume: Columnar<typeof massOfVolume>
  /** Density at 20 °C of parts that are mixed: ρ = Σm/(Σm/ρ) · (1 − φ), φ the voids. */
  densityOfParts: Columnar<typeof densityOfParts>
  /** States a salt loading another way. */
  saltConvert: Columnar<typeof saltConvert>
  /** Mass of one shot, and of its pieces. */
  shotFill: Columnar<typeof shotFill>
  /** Mass of a piece: m = V (1 − φ) [ρ_hot + f (ρ_cold − ρ_hot)], φ the voids, f the feed. */
  pieceMass: Columnar<typeof pieceMass>
}
