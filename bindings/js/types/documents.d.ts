// Made from the JSON Schemas in core/schema by tools/types.mjs: change those.

/**
 * The format of the documents and its version. A minor version only adds.
 */
export type Format = 'pourwright/1.0'
/**
 * A name: of a material, formula, mold, product, order.
 */
export type Name = string
/**
 * An amount that may carry its uncertainty: the number after ± is one standard uncertainty, unless (k=2) or (interval) follows; `uncertainty` is one standard uncertainty in the same unit.
 */
export type MeasuredAmount =
  | string
  | {
      uncertainty?: number
      unit: string
      value: number
    }
/**
 * A share from 0 % to 100 %, such as "3 %".
 */
export type Percent = string
/**
 * How the reflectances of rows are stated.
 */
export type StatedIn = 'percent' | 'fraction'
/**
 * The light that a colorimeter states its L*a*b* for.
 */
export type ReadIn = 'D65' | 'D50' | 'A'
/**
 * A count that may be zero.
 */
export type Count = number
/**
 * Pieces that were weighed.
 */
export type PieceWeightEntry = MeasuredAmount | PiecesTogetherEntry
/**
 * How much of a material went in.
 */
export type WentInEntry = Amount | MeasuredAndWeighedEntry
/**
 * An amount as a person writes it, or as a number and a unit.
 */
export type Amount =
  | string
  | {
      unit: string
      value: number
    }
/**
 * When a material goes into the pot.
 */
export type Adding = 'cold' | 'hot'
/**
 * The measure that two doses of flake have in common.
 */
export type Alike = 'count' | 'area'
/**
 * The base of a formula.
 */
export type BaseEntry =
  | Name
  | {
      [k: string]: Amount
    }
/**
 * Money per package, such as "58.00 USD per 1 gal".
 */
export type Price = string
/**
 * Use of the sprues.
 */
export type Sprues = 'keep' | 'melt-again'
/**
 * A quantity, or a quantity with its source.
 */
export type Sourced = MeasuredAmount | WithSource
/**
 * The cut of a flake: ".035", "1/64 hex", "0.4 mm square".
 */
export type Cut = string
/**
 * One drop: a mass or a volume.
 */
export type SourcedDrop = Sourced
/**
 * A share, such as "3 %" or "150 %"; 3 % is 0.03 of the range of its parameter.
 */
export type Share = string
/**
 * Purpose of a material.
 */
export type Kind =
  'plastisol' | 'softener' | 'hardener' | 'stabilizer' | 'colorant' | 'pearl' | 'flake' | 'salt' | 'scent' | 'other'
/**
 * A dose per amount of base, such as "3 tsp per 1 cup", or a share of it, such as "4 % of base".
 */
export type MostDose = string
/**
 * The measuring system, which gives cup, tbsp, tsp, fl oz, pt, qt and gal their size.
 */
export type System = 'us-customary' | 'us-label' | 'metric' | 'imperial'
/**
 * The cavities of a mold.
 */
export type CavitiesEntry =
  | number
  | {
      [k: string]: CavityEntry
    }
/**
 * The volume of a cavity, stated or weighed with water.
 */
export type CavityVolume = WaterEntry | MeasuredAmount
/**
 * The material of a mold.
 */
export type MoldMaterial = 'metal' | 'plaster' | 'silicone'
/**
 * Rule for two formulas that are combined and dose the same material.
 */
export type Overlap = 'refuse' | 'add' | 'last'
/**
 * The scale that a text is on, where two are in use.
 */
export type TextScale = 'us' | 'metric'
/**
 * A property of a material that a calculation may need.
 */
export type Property =
  'density' | 'fused' | 'as_scooped' | 'drop' | 'expansion' | 'specific_heat' | 'shot_window' | 'price'
/**
 * A result, or why it could not be calculated.
 */
export type Calculated =
  | {
      known: Sinking
    }
  | {
      unknown: Note
    }
/**
 * Whether a piece sinks straight.
 */
export type Motion = 'straight' | 'may-swing' | 'swings'
/**
 * A result, or why it could not be calculated.
 */
export type Calculated2 =
  | {
      known: Degas
    }
  | {
      unknown: Note
    }
/**
 * A result, or why it could not be calculated.
 */
export type Calculated3 =
  | {
      known: PlannedHeating
    }
  | {
      unknown: Note
    }
/**
 * A result, or why it could not be calculated.
 */
export type Calculated4 =
  | {
      known: StageHeat[]
    }
  | {
      unknown: Note
    }
/**
 * A result, or why it could not be calculated.
 */
export type Calculated5 =
  | {
      known: HeatSpent
    }
  | {
      unknown: Note
    }
/**
 * A result, or why it could not be calculated.
 */
export type Calculated6 =
  | {
      known: TimeLine
    }
  | {
      unknown: Note
    }
/**
 * Kind of work in a span of the day.
 */
export type Doing = 'prepare' | 'heat' | 'reheat' | 'shoot'
/**
 * A result, or why it could not be calculated.
 */
export type Calculated7 =
  | {
      known: DayCost
    }
  | {
      unknown: Note
    }
/**
 * A caution by its stable code.
 */
export type Caution = 'hot-plastisol' | 'fumes' | 'water' | 'damp-salt' | 'vacuum' | 'food-gear' | 'data-sheet'
/**
 * What went in instead: a multiple of what was meant, a difference to it, or an amount.
 */
export type Instead = string | Amount
/**
 * Whether a plastisol in the mix is still liquid or has been fused.
 */
export type Phase = 'liquid' | 'fused'
/**
 * A tool of the bench, in the order in which the last tie is broken.
 */
export type Tool = 'balance' | 'cup' | 'spoons' | 'drops'
/**
 * The measure that a dose is written in: its own, against which every other has to be converted.
 */
export type WrittenIn = 'mass' | 'volume' | 'drops'
/**
 * Kind of a step.
 */
export type StepKind = 'from-shelf' | 'measure' | 'add' | 'degas' | 'heat' | 'shoot' | 'sprues-back' | 'store'
/**
 * The point of a piece whose temperature counts.
 */
export type Point = 'center' | 'mean'
/**
 * Materials that went in with their amounts, an amount that was taken out, how a sample looked, or the last addition once more.
 */
export type TrialStep =
  | 'again'
  | {
      ext?: {}
      looks: ColorEntry
    }
  | {
      ext?: {}
      [k: string]: Amount | {} | undefined
    }
/**
 * The scale of a durometer reading.
 */
export type Scale = 'shore-00' | 'shore-a' | 'own'
/**
 * A trouble at the bench.
 */
export type Trouble =
  | 'too-thick'
  | 'too-soft'
  | 'clumps'
  | 'sinking-salt'
  | 'air-in-noses'
  | 'spitting'
  | 'yellowing'
  | 'sticky-sprues'
  | 'dents'
/**
 * What to do at a reading of the thermometer.
 */
export type AtReading = 'burst' | 'hot' | 'cool'
/**
 * A light that a color is seen in.
 */
export type Light = 'D65' | 'A' | 'LED-B3'
/**
 * Advice on the color of a pot.
 */
export type Verdict = 'add' | 'close-enough' | 'cannot-tell' | 'more-base' | 'out-of-reach'
/**
 * A way to go on with a pot.
 */
export type WayKind = 'as-it-is' | 'within' | 'exact' | 'nearest' | 'keep'
/**
 * What a material of a trial belongs to.
 */
export type TrialSide = 'base' | 'body' | 'color' | 'both'

/**
 * A maker's notes of a day: only the numbers that differ from the plan.
 */
export interface ActualsDocument {
  /**
   * Anything a reader should know about it. Default: none. Example: `"Cold morning."`.
   */
  about?: string
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * The format and its version. Example: `"pourwright/1.0"`.
   */
  format: Format
  /**
   * Pots by their letters, each as a whole or as a list of its stages. As a whole, a material or mold belongs to
   * the one stage that has it, and what was left to the last stage.
   */
  pots: {
    /**
     * One thing written by itself, or a list of several.
     */
    [k: string]: PotActualsEntry | PotActualsEntry[]
  }
}
/**
 * One pot, or one stage of it. What is omitted went as the sheet said.
 */
export interface PotActualsEntry {
  /**
   * Name under which the body as made goes into the book, with its base. Default: the book stays as it is.
   * Example: `"salted, heavier"`.
   */
  body_as?: Name
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Heats as timed, in their order. Default: not timed.
   */
  heats?: HeatActualsEntry[]
  /**
   * Mass that the injector kept, weighed once taken out of it; a list of several cleanings. Default: not weighed.
   * Example: `"4.1 g"`.
   */
  injector?: MeasuredAmount | MeasuredAmount[]
  /**
   * Name written on the jar with what was left. Default: the formulas, pot and day. Example: `"dusk, March 2"`.
   */
  jar?: Name
  /**
   * Mass left in the cup after the last shot, without the cup. Default: not weighed. Example: `"101.5 g"`.
   */
  left?: MeasuredAmount
  /**
   * Color of a cooled, finished piece of it, as "color-reading" gives it; of a laminated piece, that of this layer. It
   * goes into the book with the color's formula, and is compared with the one that is there. Default: not read.
   * Example: `{ "lab": [52, 41, 18] }`.
   */
  looks?: ColorEntry
  /**
   * The shots, by mold; of a mold that is shot several times, a list in the order of the sheet. Default: as planned.
   */
  molds?: {
    /**
     * One thing written by itself, or a list of several.
     */
    [k: string]: ShotsEntry | ShotsEntry[]
  }
  /**
   * Anything worth keeping with it. Default: none. Example: `"Smoked a little at 345 °F."`.
   */
  notes?: string
  /**
   * Number of times that it was reheated, its first heat not counted. Default: as planned. Example: `2`.
   */
  reheats?: Count
  /**
   * Name under which the color as made goes into the book, apart from its body. Default: the book stays as it is.
   * Example: `"dusk, darker"`.
   */
  save_as?: Name
  /**
   * What went in, by material, if it was not what the sheet said; 0 if nothing did. Default: what the sheet said.
   * Example: `{ "plum": "34 drops", "fine-salt": "40 g", "moss": { "measured": "20 drops", "weighed": "0.9 g" } }`.
   */
  went_in?: {
    [k: string]: WentInEntry
  }
}
/**
 * A heat as it was timed.
 */
export interface HeatActualsEntry {
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * The reading before. Default: not read. Example: `"68 °F"`.
   */
  from?: MeasuredAmount
  /**
   * Setting that it ran at, as a share of full power. Default: `setting` of the oven, else 100 %. Example: `"100 %"`.
   */
  setting?: Percent
  /**
   * How long the oven ran, all bursts together. Example: `"206 s"`.
   */
  time: MeasuredAmount
  /**
   * The reading after, stirred. Default: not read. Example: `"338 °F"`.
   */
  to?: MeasuredAmount
}
/**
 * A color, in one of five ways.
 */
export interface ColorEntry {
  /**
   * Reflectance in bands, of a spectrophotometer. Default: none.
   */
  bands?: BandsEntry
  /**
   * Reflectance as the text of a table, of a spectrophotometer. Default: none.
   */
  csv?: RowsEntry
  /**
   * Day of the reading. Default: none. Example: `"2027-03-05"`.
   */
  day?: string
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * The same as six hexadecimal digits. Default: none. Example: `"#b85e5a"`.
   */
  hex?: string
  /**
   * L*, a*, b* of a reading. Default: none. Example: `[52, 41, 18]`.
   *
   * @minItems 3
   * @maxItems 3
   */
  lab?: [number, number, number]
  /**
   * Light that `lab` is for. Default: `"D65"`. Example: `"D50"`.
   */
  light?: ReadIn
  /**
   * Observer that `lab` is for, in degrees: 2. Default: 2. Example: `2`.
   */
  observer?: number
  /**
   * Red, green and blue from 0 to 255, as a photograph next to white stores them. Default: none. Example: `[184, 94, 90]`.
   *
   * @minItems 3
   * @maxItems 3
   */
  srgb?: [number, number, number]
  /**
   * Standard uncertainties of L*, a* and b* next to other readings taken in the same way. Default: 1 each of
   * `srgb` and `hex`, 0.3 each of `lab` and `bands` (common practice, no source). Example: `[0.6, 0.6, 0.6]`.
   *
   * @minItems 3
   * @maxItems 3
   */
  uncertainty?: [number, number, number]
}
/**
 * Reflectance in bands.
 */
export interface BandsEntry {
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Wavelength of the first band, in nm. Example: `400`.
   */
  from_nm: number
  /**
   * Reflectance of each band, from 0 to 1, at least up to 700 nm. Example: `[0.05, 0.06, 0.08]`.
   */
  reflectance: number[]
  /**
   * From band to band, in nm: 10 or 20. Example: `10`.
   */
  step_nm: number
}
/**
 * Reflectance as the text of a table: a wavelength and a reflectance on each line.
 */
export interface RowsEntry {
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * A wavelength in nm and a reflectance a line, divided by a comma, a semicolon or a tab, by rising wavelengths,
   * every 10 or 20 nm at least from 400 to 700 nm. A first line without numbers is a heading. Example:
   * `"nm,%\n400,5.1\n410,5.3"`.
   */
  rows: string
  /**
   * What the reflectances are stated in: `"percent"`, from 0 to 100, or `"fraction"`, from 0 to 1. Example: `"percent"`.
   */
  stated_in: StatedIn
}
/**
 * Shots into a mold.
 */
export interface ShotsEntry {
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Number of pieces that are fit to sell. Those of a laminated shot belong to one of its pots. Default: not
   * counted. Example: `26`.
   */
  good?: Count
  /**
   * The pieces by shape, in a mold with unlike cavities. Default: none; required there instead of `good` and
   * `weights`.
   */
  shapes?: {
    [k: string]: ShapeActualsEntry
  }
  /**
   * Number of shots made. Default: as planned. Example: `7`.
   */
  shots?: Count
  /**
   * Time from the first shot to the last. Default: not timed. Example: `"6 min"`.
   */
  took?: MeasuredAmount
  /**
   * Pieces that were weighed: one by one, or several together. Default: none.
   * Example: `["10.1 g", "10.3 g", { "count": 3, "weigh": "30.4 g" }]`.
   */
  weights?: PieceWeightEntry | PieceWeightEntry[]
}
/**
 * The pieces of one shape.
 */
export interface ShapeActualsEntry {
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Number of pieces that are fit to sell. Default: not counted. Example: `26`.
   */
  good?: Count
  /**
   * Pieces that were weighed: one by one, or several together. Default: none. Example: `["8.6 g", "8.7 g"]`.
   */
  weights?: PieceWeightEntry | PieceWeightEntry[]
}
/**
 * Several pieces that were weighed together.
 */
export interface PiecesTogetherEntry {
  /**
   * How many. Example: `3`.
   */
  count: number
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * What they weigh together. Example: `"30.4 g"`.
   */
  weigh: MeasuredAmount
}
/**
 * How much of a material went in: as measured, as the scale showed it, or both, from which its drop or spoonful is
 * learned.
 */
export interface MeasuredAndWeighedEntry {
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * As it was measured. Default: as the sheet said. Example: `"34 drops"`.
   */
  measured?: Amount
  /**
   * What the scale showed for it; this counts. Default: not weighed. Example: `"1.5 g"`.
   */
  weighed?: MeasuredAmount
}
/**
 * A scale.
 */
export interface BalanceEntry {
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Smallest load that it weighs. Default: one step. Example: `"0.5 g"`.
   */
  from?: MeasuredAmount
  /**
   * Step of its display. Example: `"0.1 g"`.
   */
  reads: MeasuredAmount
  /**
   * Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
   * `false`, a number that looks like a slip is refused. Example: `true`.
   */
  sure?: boolean
  /**
   * Largest load that it weighs. Default: 5000 steps. Example: `"500 g"`.
   */
  to?: MeasuredAmount
}
/**
 * A piece about as long as thick.
 */
export interface BallEntry {
  /**
   * Diameter. Example: `"16 mm"`.
   */
  diameter: MeasuredAmount
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
}
/**
 * The tools on the bench.
 */
export interface BenchEntry {
  /**
   * The scale. Default: none; nothing is then weighed.
   */
  balance?: BalanceEntry
  /**
   * Cups to mix and heat a pot in; at least one.
   */
  cups: CupEntry[]
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * The injector.
   */
  injector: InjectorEntry
  /**
   * Largest number of drops that you still count. Default: 60. Example: `40`.
   */
  most_drops?: number
  /**
   * The oven, by the shop's own timings. Default: not known; no heating times are shown.
   */
  oven?: OvenEntry
  /**
   * Level spoons, by volume. Default: none. Example: `["1 tbsp", "1 tsp", "1/2 tsp"]`.
   */
  spoons?: MeasuredAmount[]
  /**
   * Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
   * `false`, a number that looks like a slip is refused. Example: `true`.
   */
  sure?: boolean
  /**
   * How unsure the tools are. Default: that of each field.
   */
  uncertainty?: ToolUncertaintyEntry
  /**
   * The vacuum that pots are degassed in. Default: not known; no degassing step is shown.
   */
  vacuum?: VacuumEntry
}
/**
 * A cup.
 */
export interface CupEntry {
  /**
   * Volume up to its brim, above its highest mark; how full it may be under vacuum needs it, and a hot mix
   * fills at most 95 % of it. Default: not known; for a hot mix, a fifth more than `holds`. Example:
   * `"590 mL"`.
   */
  brim?: MeasuredAmount
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Mass that stays on its wall when it has been poured out. Default: 0 g. Example: `"5 g"`.
   */
  film?: MeasuredAmount
  /**
   * Mass that cannot be drawn from its bottom, the film included. Default: 0 g. Example: `"2 g"`.
   */
  heel?: MeasuredAmount
  /**
   * Volume up to its highest mark. Example: `"2 cup"`.
   */
  holds: MeasuredAmount
  /**
   * Step between its marks. Default: only the highest mark is used. Example: `"1/4 cup"`.
   */
  marks?: MeasuredAmount
  /**
   * Mass of the empty cup. State it for all cups and timings or for none. Default: its own heat is part of
   * the oven's timings. Example: `"180 g"`.
   */
  mass?: MeasuredAmount
  /**
   * Specific heat of the cup. Default: none; required with `mass`. Example: `"0.84 J/(g.K)"`.
   */
  specific_heat?: MeasuredAmount
  /**
   * Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
   * `false`, a number that looks like a slip is refused. Example: `true`.
   */
  sure?: boolean
}
/**
 * The injectors: all alike.
 */
export interface InjectorEntry {
  /**
   * Number of injectors; a laminate of two layers needs two. Default: 1. Example: `2`.
   */
  count?: number
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Largest volume that one takes up. Example: `"4 fl oz"`.
   */
  holds: MeasuredAmount
  /**
   * Volume that stays in it and is lost at each cleaning or cold stop. Default: 0 mL. Example: `"4 mL"`.
   */
  keeps?: MeasuredAmount
  /**
   * Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
   * `false`, a number that looks like a slip is refused. Example: `true`.
   */
  sure?: boolean
}
/**
 * The oven, by the shop's own timings at one setting, at which pots are then heated; until there are any, by its
 * rated power.
 */
export interface OvenEntry {
  /**
   * A pot that was watched to cool. Default: not known.
   */
  cools?: CoolsEntry
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * How long a pot stays hot after one heat, from the last burst to the last shot. Default: from `cools`.
   * Example: `"8 min"`.
   */
  hot_for?: MeasuredAmount
  /**
   * Longest burst without a stir. Default: 120 s. Example: `"90 s"`.
   */
  longest?: MeasuredAmount
  /**
   * The plastisol that was timed. Default: `default_base`. Example: `"clear-base"`.
   */
  of?: Name
  /**
   * The rated power: the output at full power, 50 W to 10 kW. A first guess, not used once there are
   * timings. Default: not known. Example: `"900 W"`.
   */
  power?: MeasuredAmount
  /**
   * Temperature of a pot when it goes back to be reheated, additions stirred in. Default: the bottom of its
   * window if nothing is added, else not known. Example: `"240 °F"`.
   */
  reheat_from?: MeasuredAmount
  /**
   * Temperature of the room that pots cool in. Default: 20 °C. Example: `"72 °F"`.
   */
  room?: MeasuredAmount
  /**
   * The setting, as a share of full power. Default: that of the timings, else 100 %. Example: `"100 %"`.
   */
  setting?: Percent
  /**
   * Shortest burst that can be set; the others are multiples of it. Default: 5 s. Example: `"10 s"`.
   */
  step?: MeasuredAmount
  /**
   * Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
   * `false`, a number that looks like a slip is refused. Example: `true`.
   */
  sure?: boolean
  /**
   * How far the thermometer may be off. Default: 2 K. Example: `"1 K"`.
   */
  thermometer?: MeasuredAmount
  /**
   * Heatings that were timed. Default: none; required without `power`.
   */
  timings?: TimingEntry[]
  /**
   * Length of one turn of full power and none, below full power; `"0 s"` for an oven that lowers its power
   * without turns. Default: 30 s. Example: `"22 s"`.
   */
  turn?: MeasuredAmount
}
/**
 * A pot that was watched to cool on the bench, stirred before each reading, from the second minute on.
 */
export interface CoolsEntry {
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * The first reading. Example: `"340 °F"`.
   */
  from: MeasuredAmount
  /**
   * How much was in it: a mass, or a volume cold and liquid. Example: `"2 cup"`.
   */
  mix: Amount
  /**
   * Temperature of the room then. Default: `room` of the oven. Example: `"72 °F"`.
   */
  room?: MeasuredAmount
  /**
   * Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
   * `false`, a number that looks like a slip is refused. Example: `true`.
   */
  sure?: boolean
  /**
   * The time between them. Example: `"150 s"`.
   */
  time: MeasuredAmount
  /**
   * The second reading. Example: `"320 °F"`.
   */
  to: MeasuredAmount
}
/**
 * One heating that the shop has timed.
 */
export interface TimingEntry {
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Temperature before. Example: `"68 °F"`.
   */
  from: MeasuredAmount
  /**
   * How much was heated: a mass, or a volume cold and liquid. Example: `"2 cup"`.
   */
  mix: Amount
  /**
   * Setting that it ran at, as a share of full power. Default: `setting` of the oven, else 100 %. Example:
   * `"100 %"`.
   */
  setting?: Percent
  /**
   * Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
   * `false`, a number that looks like a slip is refused. Example: `true`.
   */
  sure?: boolean
  /**
   * How long the oven ran. Example: `"236 s"`.
   */
  time: MeasuredAmount
  /**
   * Temperature after, stirred. Example: `"335 °F"`.
   */
  to: MeasuredAmount
  /**
   * Mass of its empty vessel. State it for all cups and timings or for none. Default: the vessel's heat is
   * part of the timing. Example: `"180 g"`.
   */
  vessel?: MeasuredAmount
  /**
   * Specific heat of the vessel. Default: none; required with `vessel`. Example: `"0.84 J/(g.K)"`.
   */
  vessel_specific_heat?: MeasuredAmount
}
/**
 * Standard uncertainties of the tools, relative to what each gives. State those that the shop has measured.
 */
export interface ToolUncertaintyEntry {
  /**
   * Of the scale's span. Default: 0.1 %. Example: `"0.05 %"`.
   */
  balance_span?: Percent
  /**
   * Of filling a cup, as a share of the distance between its marks. Default: 10 %. Example: `"5 %"`.
   */
  cup_filling?: Percent
  /**
   * Of the position of a cup's marks. Default: 2.9 %. Example: `"1 %"`.
   */
  cup_size?: Percent
  /**
   * Of a stated drop without an uncertainty of its own. Default: 8.7 %. Example: `"5 %"`.
   */
  drop?: Percent
  /**
   * Of one drop against the next. Default: 5 %. Example: `"4 %"`.
   */
  drop_scatter?: Percent
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Of leveling one spoonful. Default: 3 %. Example: `"4 %"`.
   */
  spoon_level?: Percent
  /**
   * Of the size of a spoon. Default: 2.9 %. Example: `"1 %"`.
   */
  spoon_size?: Percent
  /**
   * Of a drop that was never weighed. Default: 29 %. Example: `"20 %"`.
   */
  unweighed_drop?: Percent
}
/**
 * The vacuum that pots are degassed in: either `gauge` or `absolute`.
 */
export interface VacuumEntry {
  /**
   * Pressure left in the chamber, counted up from nothing. Default: none; required without `gauge`.
   * Example: `"10 kPa"`.
   */
  absolute?: MeasuredAmount
  /**
   * How far the vacuum gauge may be off. Default: 0.9 inHg. Example: `"1 inHg"`.
   */
  dial_tolerance?: MeasuredAmount
  /**
   * Share of air in a pot before the vacuum, where no rise was seen. Default: not known. Example: `"5 %"`.
   */
  entrained?: Percent
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Reading of a vacuum gauge. Default: none; required without `absolute`. Example: `"25 inHg"`.
   */
  gauge?: MeasuredAmount
  /**
   * Level of a pot in the vacuum over its level before, as the shop has seen it. Default: not known; up to 3
   * is assumed. Example: `1.8`.
   */
  rise?: number
}
/**
 * Shape of a piece as it sinks: either a `stick` or a `ball`.
 */
export interface BodyEntry {
  /**
   * A piece about as long as thick. Default: none; required without `stick`.
   */
  ball?: BallEntry
  /**
   * A drop of such a piece with its hook that the shop has timed. Default: none; the drag of the shape is
   * used.
   */
  drop?: TimedDropEntry
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * A piece longer than thick, which sinks sideways. Default: none; required without `ball`.
   */
  stick?: StickEntry
}
/**
 * A drop of a piece that the shop has timed, let go just below the surface.
 */
export interface TimedDropEntry {
  /**
   * Density of the piece; its ± is not counted. Example: `"1.12 g/mL"`.
   */
  density: MeasuredAmount
  /**
   * Depth. Example: `"1.2 m"`.
   */
  depth: MeasuredAmount
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Time to that depth. Example: `"6.4 s"`.
   */
  time: MeasuredAmount
  /**
   * The water that it sank in. Default: that of the limits, or of the request.
   */
  water?: FishedWaterEntry
}
/**
 * Water that a piece sinks in.
 */
export interface FishedWaterEntry {
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Its absolute salinity, mass of salt per mass of water; give this or the practical one. Default: 0, fresh
   * water. Example: `"35 g/kg"`.
   */
  salinity_absolute?: MeasuredAmount
  /**
   * Its practical salinity, as a probe reads it. Default: 0, fresh water. Example: `35`.
   */
  salinity_practical?: number
  /**
   * Its temperature. Example: `"60 °F"`.
   */
  temperature: MeasuredAmount
}
/**
 * A piece that sinks sideways.
 */
export interface StickEntry {
  /**
   * Mean diameter. Example: `"9.6 mm"`.
   */
  diameter: MeasuredAmount
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Length. Example: `"127 mm"`.
   */
  length: MeasuredAmount
}
/**
 * A shop's book.
 */
export interface BookDocument {
  /**
   * Anything a reader should know about the book. Default: none. Example: `"Prices of March 2027."`.
   */
  about?: string
  /**
   * Height of the shop above sea level, negative below it. Default: not known. Example: `"640 m"`.
   */
  altitude?: MeasuredAmount
  /**
   * The tools on the bench.
   */
  bench: BenchEntry
  /**
   * How to calculate what a day costs. Default: plans show no costs.
   */
  costing?: CostingEntry
  /**
   * Plastisol of formulas that name no base. Default: none. Example: `"clear-base"`.
   */
  default_base?: Name
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * The format and its version. Example: `"pourwright/1.0"`.
   */
  format: Format
  /**
   * Formulas by name.
   */
  formulas: {
    [k: string]: FormulaEntry
  }
  /**
   * How the shop works. Default: that of each field.
   */
  limits?: LimitsEntry
  /**
   * Materials by name.
   */
  materials: {
    [k: string]: MaterialEntry
  }
  /**
   * The measuring system: how much a cup, a spoon and a fluid ounce hold. Example: `"us-customary"`.
   */
  measures: System
  /**
   * Molds by name.
   */
  molds: {
    [k: string]: MoldEntry
  }
  /**
   * Products by name: a mold and what is shot into it. Default: none.
   */
  products?: {
    [k: string]: ProductEntry
  }
  /**
   * Whose book it is. Default: none. Example: `"Tern Island workshop"`.
   */
  shop?: Name
  /**
   * Reading of a barometer in the shop, not reduced to sea level. Default: the standard pressure at
   * `altitude`; not known without one. Example: `"27.7 inHg"`.
   */
  station_pressure?: MeasuredAmount
  /**
   * Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
   * `false`, a number that looks like a slip is refused. Example: `true`.
   */
  sure?: boolean
}
/**
 * Cost of a day in addition to its materials.
 */
export interface CostingEntry {
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Worth of leftover in the cup and of sprues, as a share of what their materials cost. Default: 0 %.
   * Example: `"60 %"`.
   */
  left_over_worth?: Percent
  /**
   * Profit as a share of the price. Default: no prices are shown. Example: `"45 %"`.
   */
  margin?: Percent
  /**
   * Anything worth keeping with it. Default: none. Example: `"Prices before tax."`.
   */
  notes?: string
  /**
   * Contents of each pack besides the pieces. Default: nothing.
   */
  packing?: PackingEntry[]
  /**
   * Work on one heat. Default: none. Example: `"4 min"`.
   */
  per_heat?: MeasuredAmount
  /**
   * Work on packing one pack. Default: none. Example: `"40 s"`.
   */
  per_pack?: MeasuredAmount
  /**
   * Work on one pot: measuring, degassing, cleaning up. Default: none. Example: `"12 min"`.
   */
  per_pot?: MeasuredAmount
  /**
   * Work on one shot: filling, cooling, taking out, trimming. Default: none. Example: `"50 s"`.
   */
  per_shot?: MeasuredAmount
  /**
   * Price of work. Default: work is not counted. Example: `"18.00 USD per 1 h"`.
   */
  rate?: Price
  /**
   * Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
   * `false`, a number that looks like a slip is refused. Example: `true`.
   */
  sure?: boolean
}
/**
 * Something that goes into each pack.
 */
export interface PackingEntry {
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Its name. Example: `"bag"`.
   */
  name: Name
  /**
   * Number of it in one pack. Default: 1. Example: `2`.
   */
  per_pack?: number
  /**
   * Its price per number of pieces. Example: `"9.00 USD per 100 pieces"`.
   */
  price: Price
}
/**
 * A formula: doses per amount of base.
 */
export interface FormulaEntry {
  /**
   * The base: a plastisol, or a blend of plastisols with an amount each,
   * `{ "soft": "3 cup", "hard": "1 cup" }`. Default: that of the formulas it is combined with, else
   * `default_base`. Example: `"clear-base"`.
   */
  base?: BaseEntry
  /**
   * Color that a piece of it had. Default: not known.
   */
  color?: ColorEntry
  /**
   * Doses by material, as you measure them. Example: `{ "plum": "32 drops", "teal-flake": "1/2 tsp" }`.
   */
  doses: {
    [k: string]: Amount
  }
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Anything worth keeping with it. Default: none. Example: `"The unsalted body."`.
   */
  notes?: string
  /**
   * Amount of base that the doses are for. Default: none; required unless every dose is a per cent. Example:
   * `"1 cup"`.
   */
  per?: Amount
  /**
   * Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
   * `false`, a number that looks like a slip is refused. Example: `true`.
   */
  sure?: boolean
}
/**
 * How the shop works.
 */
export interface LimitsEntry {
  /**
   * Confidence that enough good pieces come out. Default: 90 % (common practice, no source). Example:
   * `"95 %"`.
   */
  confidence?: Percent
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Whether base may be added to a pot that has been drawn from. Default: `false`. Example: `true`.
   */
  fresh_base?: boolean
  /**
   * Number of heats that the stabilizer allows a pot. Default: not limited. Example: `3`.
   */
  heats?: number
  /**
   * Smallest pot that the oven heats evenly. Default: no limit. Example: `"1/2 cup"`.
   */
  least_pot?: MeasuredAmount
  /**
   * How full a cup may be, as a share of what it holds to its highest mark. Default: 100 %. Example:
   * `"80 %"`.
   */
  most_full?: Percent
  /**
   * Share of pieces that are not fit to sell. Default: 0 %. Example: `"3 %"`.
   */
  rejects?: Percent
  /**
   * Largest share of solids in a mix, by true volume. Default: 30 % (common practice, no source). Example:
   * `"20 %"`.
   */
  solids?: Percent
  /**
   * Use of the sprues. Default: `"keep"`. Example: `"melt-again"`.
   */
  sprues?: Sprues
  /**
   * Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
   * `false`, a number that looks like a slip is refused. Example: `true`.
   */
  sure?: boolean
  /**
   * Largest relative error of a dose, unless its material states another. Default: 5 % (common practice, no
   * source). Example: `"3 %"`.
   */
  tolerance?: Percent
  /**
   * Water to calculate sink rates in. Default: none; no sink rates are shown.
   */
  water?: FishedWaterEntry
}
/**
 * A material. Omit what you do not know; a calculation that needs it says so.
 */
export interface MaterialEntry {
  /**
   * Activation energy of its decay in the heat, with its source; the heat used needs it. Default: not known.
   * Example: `{ "value": "135 kJ/mol", "source": "supplier's sheet" }`.
   */
  activation_energy?: Sourced
  /**
   * When it goes into the pot: `"cold"`, before the pot is heated, or `"hot"`, after it. Default: by kind
   * (common practice, no source), salt, flake and scent hot, all else cold. Example: `"hot"`.
   */
  add?: Adding
  /**
   * Density of the powder in a level spoon; pearl, flake and salt need it to be measured by spoon. Default:
   * not known; a powder is then weighed. Example: `"1.22 g/mL ± 0.06"`.
   */
  as_scooped?: Sourced
  /**
   * Of a plastisol: the heat that it withstands. Default: not known.
   */
  budget?: BudgetEntry
  /**
   * Of a stabilizer: the heat that more of it buys. Default: none.
   */
  buys?: BuysEntry
  /**
   * Of a plastisol: color of a test piece of it alone, thick enough to hide what is behind it. Default: not known;
   * colors are then not calculated in it.
   */
  color?: ColorEntry
  /**
   * Of a flake: its cut. Default: not known. Example: `".035 hex"`.
   */
  cut?: Cut
  /**
   * True density at 20 °C; of a plastisol, that of the liquid. Default: not known. Example:
   * `"1.03 g/mL ± 0.01"`.
   */
  density?: Sourced
  /**
   * Mass or volume of one drop from the shop's bottle. Default: 0.05 mL (20 drops per mL, pharmacy
   * practice), and less sure. Example: `"0.044 g ± 0.003"`.
   */
  drop?: SourcedDrop
  /**
   * Thermal expansion by volume, per kelvin. Default: none, so that shots come out a little heavy, and
   * results say so. Example: `"6.5e-4 1/K"`.
   */
  expansion?: Sourced
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Of a colorant: whether it glows in daylight. It is then outside of the model of colors, with or without test
   * pieces. Default: `false`. Example: `true`.
   */
  fluorescent?: boolean
  /**
   * Density of the fused plastisol at 20 °C. Default: `density`, and results say so. Example:
   * `"1.042 g/mL ± 0.008"`.
   */
  fused?: Sourced
  /**
   * Of a salt: the opening of a sieve that its grains just pass; how fast it settles needs it. Default: not
   * known. Example: `"0.3 mm"`.
   */
  grain?: Sourced
  /**
   * Of a softener or hardener: readings of the shop's own pieces by how much of it is in them. Default: not known;
   * how much to add to a pot that is too thick or too soft is then not calculated.
   */
  hardness?: MeasuredHardnessEntry
  /**
   * Purpose of the material. Example: `"plastisol"`.
   */
  kind: Kind
  /**
   * Of a colorant: its test pieces, at two or more doses, each in the base that the book has by default. Default: none;
   * it is then not in the calculation of colors.
   */
  let_downs?: LetDownEntry[]
  /**
   * Row of the starter table that fills in the properties omitted here. Default: none. Example:
   * `"sodium-chloride"`.
   */
  like?: Name
  /**
   * Largest dose of it that does no harm, per amount of base: in a pot that came out wrong, more than the
   * formula's is no fault up to it. Default: none; a surplus counts as a fault. Example: `"3 tsp per 1 cup"`.
   */
  most?: MostDose
  /**
   * Its full name. Default: none. Example: `"clear plastisol, medium"`.
   */
  name?: string
  /**
   * Anything worth keeping with it. Default: none. Example: `"Shake; the pigment settles."`.
   */
  notes?: string
  /**
   * Of a plastisol: a thin test piece of it alone over white and over black; colors of translucent pieces are calculated
   * with it. Default: not known; all pieces are then taken to be opaque.
   */
  over_backings?: OverBackingsEntry
  /**
   * Price per package. Default: not known. Example: `"58.00 USD per 1 gal"`.
   */
  price?: Price
  /**
   * Lowest and highest temperature at which it is shot. Default: not known; shots are then calculated at 20
   * °C, and results say so. Example: `["325 °F", "350 °F"]`.
   *
   * @minItems 2
   * @maxItems 2
   */
  shot_window?: [unknown, unknown]
  /**
   * Specific heat; with `specific_heat_rise`, that at 25 °C. Default: that of the rest of the pot; required
   * of the plastisol that the oven was timed with. Example: `"1.9 J/(g.K)"`.
   */
  specific_heat?: Sourced
  /**
   * Rise of the specific heat per kelvin, as a share of that at 25 °C. Default: 0 1/K, constant. Example:
   * `"0.0012 1/K"`.
   */
  specific_heat_rise?: Sourced
  /**
   * Of a colorant: its strength as pots have shown it, next to its test pieces; "color-next" offers it. Default: 1 ± 10 %
   * in all, ± 5 % of each (common practice, no source).
   */
  strength?: StrengthEntry
  /**
   * Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
   * `false`, a number that looks like a slip is refused. Example: `true`.
   */
  sure?: boolean
  /**
   * Of a flake: thickness of its film. Default: not known. Example: `"50 um"`.
   */
  thickness?: MeasuredAmount
  /**
   * Largest relative error of a dose of it. Default: `tolerance` of the limits. Example: `"2 %"`.
   */
  tolerance?: Percent
  /**
   * Of a plastisol: lowest and highest viscosity at shot temperature; how fast salt settles needs it.
   * Default: not known. Example: `["0.3 Pa.s", "3 Pa.s"]`.
   *
   * @minItems 2
   * @maxItems 2
   */
  viscosity?: [unknown, unknown]
}
/**
 * A quantity with its source.
 */
export interface WithSource {
  /**
   * Its source.
   */
  source?: string
  /**
   * The quantity.
   */
  value: MeasuredAmount
}
/**
 * The heat that a plastisol withstands.
 */
export interface BudgetEntry {
  /**
   * The reference temperature. Example: `"350 °F"`.
   */
  at: MeasuredAmount
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
   * `false`, a number that looks like a slip is refused. Example: `true`.
   */
  sure?: boolean
  /**
   * Time at the reference temperature. Example: `"45 min"`.
   */
  time: MeasuredAmount
  /**
   * The stabilizer that this includes, as a share of the mass of base. Default: 0 %, none added. Example:
   * `"2 %"`.
   */
  with?: Percent
}
/**
 * The heat that more of a stabilizer buys.
 */
export interface BuysEntry {
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Highest dose that this holds for, as a share of the mass of base. Example: `"4 %"`.
   */
  most: Percent
  /**
   * The dose that adds this time, as a share of the mass of base. Example: `"1 %"`.
   */
  per: Percent
  /**
   * Time that it adds at the reference temperature of the plastisol's budget. Example: `"8 min"`.
   */
  time: MeasuredAmount
}
/**
 * Readings of the shop's own pieces by how much of a softener or hardener is in them.
 */
export interface MeasuredHardnessEntry {
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * The measured points, by rising ratio; two at least, the readings rising or falling all the way.
   */
  points: MeasuredPointEntry[]
  /**
   * The scale of the readings: `"shore-00"`, `"shore-a"`, or a name of the shop's own. Example: `"squeeze, 1 soft to 5 stiff"`.
   */
  scale: Name
  /**
   * Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
   * `false`, a number that looks like a slip is refused. Example: `true`.
   */
  sure?: boolean
}
/**
 * A reading.
 */
export interface MeasuredPointEntry {
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * The reading, 0 to 100. Example: `4`.
   */
  point_hardness: number
  /**
   * Softener or hardener in the piece, by mass of base. Example: `"5 %"`.
   */
  point_ratio: Share
}
/**
 * A test piece of base with one colorant.
 */
export interface LetDownEntry {
  /**
   * In how much base. Example: `"50 g"`.
   */
  base_mass: MeasuredAmount
  /**
   * Color of the piece, thick enough to hide what is behind it.
   */
  color: ColorEntry
  /**
   * How much colorant. Example: `"20 drops"`.
   */
  dose: Amount
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
}
/**
 * A thin test piece of a base alone, over a white and over a black backing.
 */
export interface OverBackingsEntry {
  /**
   * Color of the bare black backing. Example: `{ "lab": [18, 0, 0] }`.
   */
  black: ColorEntry
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * How thick the piece is. Example: `"3 mm"`.
   */
  film_thickness: MeasuredAmount
  /**
   * Color of the piece on the black backing. Example: `{ "lab": [45, -2, -3] }`.
   */
  over_black: ColorEntry
  /**
   * Color of the piece on the white backing. Example: `{ "lab": [93, -1, 4] }`.
   */
  over_white: ColorEntry
  /**
   * Color of the bare white backing. Example: `{ "lab": [96, 0, 1] }`.
   */
  white: ColorEntry
}
/**
 * Strength of a colorant as pots have shown it, next to its test pieces.
 */
export interface StrengthEntry {
  /**
   * Standard uncertainty that the three have in common. Example: `"4 %"`.
   */
  common: Percent
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Factors on its effect in the red, the green and the blue. Example: `[1.08, 1.02, 1.05]`.
   *
   * @minItems 3
   * @maxItems 3
   */
  factors: [number, number, number]
  /**
   * Standard uncertainty of each by itself. Example: `"3 %"`.
   */
  own: Percent
}
/**
 * A mold: what one shot fills.
 */
export interface MoldEntry {
  /**
   * Shape of a piece, for its sink rate; unlike cavities each state their own. Default: not known; no sink
   * rate is shown.
   */
  body?: BodyEntry
  /**
   * Number of like cavities, or unlike ones by shape. Example: `4`.
   */
  cavities: CavitiesEntry
  /**
   * Volume of one cavity, or the water that it holds: `{ "water": "9.47 g", "at": "22 °C" }`. Default: none;
   * required unless the cavities are unlike. Example: `"9.5 mL ± 0.1"`.
   */
  cavity?: CavityVolume
  /**
   * How a shot cools in it, if `sets` is not stated. Default: not known.
   */
  cooling?: MoldCoolingEntry
  /**
   * Number of such molds, shot in turn. Default: 1. Example: `2`.
   */
  count?: number
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Share of its contraction that a piece draws from the sprue while it cools. Default: not known; a piece
   * then has a range of weights. Example: `"60 %"`.
   */
  feed?: Percent
  /**
   * Hook and weight on a piece. Default: none.
   */
  hook?: HookEntry
  /**
   * Anything worth keeping with it. Default: none. Example: `"A straight worm of five inches."`.
   */
  notes?: string
  /**
   * Time at hand for a shot: fill, shoot, top off, take out. Default: `per_shot` of the costing. Example:
   * `"40 s"`.
   */
  per_shot?: MeasuredAmount
  /**
   * Share of pieces that are not fit to sell. Default: `rejects` of the limits. Example: `"5 %"`.
   */
  rejects?: Percent
  /**
   * Time from the shot until the piece can be taken out, as the shop has seen it. Default: from `cooling`.
   * Example: `"4 min"`.
   */
  sets?: MeasuredAmount
  /**
   * Volume of the sprue of one shot. Default: 0 mL. Example: `"6 mL"`.
   */
  sprue?: MeasuredAmount
  /**
   * Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
   * `false`, a number that looks like a slip is refused. Example: `true`.
   */
  sure?: boolean
  /**
   * Mass that topping off and holding add to each shot. Default: 0 g. Example: `"0.5 g"`.
   */
  top?: MeasuredAmount
  /**
   * Share of air in the shot plastic. Default: 0 %. Example: `"1 %"`.
   */
  voids?: Percent
}
/**
 * The cavities of one shape in a mold with unlike ones.
 */
export interface CavityEntry {
  /**
   * Shape of a piece, for its sink rate. Default: not known; no sink rate is shown.
   */
  body?: BodyEntry
  /**
   * Volume of one, or the water that it holds. Example: `"8.8 mL"`.
   */
  cavity: CavityVolume
  /**
   * Number of them. Example: `2`.
   */
  count: number
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
   * `false`, a number that looks like a slip is refused. Example: `true`.
   */
  sure?: boolean
}
/**
 * The water that a cavity holds, weighed in air.
 */
export interface WaterEntry {
  /**
   * Temperature of the water. Example: `"22 °C"`.
   */
  at: MeasuredAmount
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Reading of the scale. Example: `"10.82 g ± 0.1"`.
   */
  water: MeasuredAmount
}
/**
 * How a shot cools in its mold, for the time that it sets.
 */
export interface MoldCoolingEntry {
  /**
   * Temperature of the mold when it is shot. Default: 30 °C (common practice, no source). Example:
   * `"90 °F"`.
   */
  at?: MeasuredAmount
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Mass of the mold. Default: so heavy that a shot does not warm it. Example: `"1.2 kg"`.
   */
  mass?: MeasuredAmount
  /**
   * The material of the mold; give a plaster or silicone mold its `sets`. Default: `"metal"`. Example:
   * `"metal"`.
   */
  of?: MoldMaterial
  /**
   * The thickest part of a piece. Default: its `body`.
   */
  section?: SectionEntry
  /**
   * Specific heat of the mold. Default: 0.897 J/(g.K), aluminum. Example: `"0.897 J/(g.K)"`.
   */
  specific_heat?: MeasuredAmount
  /**
   * Temperature at the center of a piece when it is taken out. Default: 50 °C (common practice, no source).
   * Example: `"120 °F"`.
   */
  take_out?: MeasuredAmount
}
/**
 * The thickest part of a piece: a `rod`, a `plate` or a `ball`.
 */
export interface SectionEntry {
  /**
   * As long as thick: its diameter, 0.2 to 200 mm. Default: none; required without the others. Example:
   * `"16 mm"`.
   */
  ball?: MeasuredAmount
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Wide and flat, metal on both sides: its thickness, 0.2 to 200 mm. Default: none; required without the
   * others. Example: `"4 mm"`.
   */
  plate?: MeasuredAmount
  /**
   * Longer than thick: its diameter, 0.2 to 200 mm. Default: none; required without the others. Example:
   * `"9.6 mm"`.
   */
  rod?: MeasuredAmount
}
/**
 * Hook and weight on a piece.
 */
export interface HookEntry {
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Their mass. Example: `"1.1 g"`.
   */
  mass: MeasuredAmount
  /**
   * The volume that they displace. Example: `"0.14 mL"`.
   */
  volume: MeasuredAmount
}
/**
 * A product: a mold and the plastic that is shot into it. It has either `formulas` or `layers`.
 */
export interface ProductEntry {
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Formulas of a piece of one color: a color and a body. Default: none; required without `layers`. Example:
   * `["dusk", "salted"]`.
   */
  formulas?: Name[]
  /**
   * Layers of a laminated piece. Default: none; required without `formulas`.
   */
  layers?: LayerEntry[]
  /**
   * The mold. Example: `"finger-5"`.
   */
  mold: Name
  /**
   * Anything worth keeping with it. Default: none. Example: `"Sold in bags of ten."`.
   */
  notes?: string
  /**
   * Rule if two of these formulas dose the same material. Default: `"refuse"`. Example: `"add"`.
   */
  overlap?: Overlap
}
/**
 * One color of a laminated piece.
 */
export interface LayerEntry {
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Its formulas: a color and a body. Example: `["reed", "plain"]`.
   */
  formulas: Name[]
  /**
   * Rule if two of these formulas dose the same material. Default: `"refuse"`. Example: `"add"`.
   */
  overlap?: Overlap
  /**
   * Its share of the cavity and the sprue; the shares of a piece add up to 100 %. Example: `"60 %"`.
   */
  share: Percent
}
/**
 * A number that the book does not state, and what the plan assumes for it.
 */
export interface Borrowed {
  /**
   * Stable code in kebab case.
   */
  code: string
  /**
   * Relative uncertainty of a piece's mass that measuring it would remove: the maximum of the day's recipes.
   */
  gain: Shown
  /**
   * How to measure it.
   */
  how: string
  /**
   * The material.
   */
  material: string
  /**
   * The property.
   */
  property: Property
  /**
   * Its source.
   */
  source: string
  /**
   * Its standard uncertainty, relative.
   */
  uncertainty: Shown
  /**
   * The assumed value, as a book writes it: `1.03 g/mL ± 0.03`.
   */
  value: string
}
/**
 * A quantity in a result.
 */
export interface Shown {
  /**
   * The same on the other scale, where both are in use.
   */
  other?: string | null
  /**
   * The scale of the text, where two are in use: of temperatures, pressures, and volumes that cups are filled to.
   */
  scale?: TextScale | null
  /**
   * How a bench reads it, in the book's measures.
   */
  text: string
  /**
   * Its unit.
   */
  unit: string
  /**
   * The number.
   */
  value: number
}
/**
 * What the plan may take; a day that takes more is refused with the number of pots, or where the work ended.
 */
export interface BudgetEntry2 {
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Maximum number of pots that it begins. Default: 5000. Example: `200`.
   */
  pots?: Count
  /**
   * Maximum work, in thousands of steps: looks at a stage of a pot. Default: 10000. Example: `1000`.
   */
  thousand_steps?: Count
}
/**
 * How a piece sinks, with its hook: a model value between bounds.
 */
export interface Sinking {
  /**
   * Density of the piece without its hook.
   */
  density: Shown
  /**
   * Its standard uncertainty, if known; the bounds include twice that to either side.
   */
  density_uncertainty?: Shown | null
  /**
   * Upper bound.
   */
  fastest: Shown
  /**
   * Mass of hook and weight.
   */
  hook: Shown
  /**
   * Motion while it sinks: straight, as in the model, or not.
   */
  motion: Motion
  /**
   * The same as the time for a foot.
   */
  per_foot: Shown
  /**
   * Lower bound.
   */
  slowest: Shown
  /**
   * Its sink rate.
   */
  speed: Shown
  /**
   * All of that in one line: `1.035 g/mL ± 0.004 g/mL, 5.6 cm/s (4.1 to 7.4) or 5.4 s a foot, straight`.
   */
  text: string
}
/**
 * Something that a reader must know of a result.
 */
export interface Note {
  /**
   * Stable code in kebab case.
   */
  code: string
  /**
   * The sentence.
   */
  message: string
}
/**
 * How a pot is degassed.
 */
export interface Degas {
  /**
   * Pressure left in the chamber; near the end of the dial, the middle of what it may be.
   */
  absolute: Shown
  /**
   * Note that the factor is assumed, and what to do then; none if the book states the rise or the air.
   */
  assumed?: Note | null
  /**
   * Its maximum, near the end of the dial.
   */
  at_most?: Shown | null
  /**
   * Capacity of the cup to degas in, to its highest mark.
   */
  cup: Shown
  /**
   * Name of that cup: `4-cup cup`.
   */
  cup_name: string
  /**
   * Maximum level to fill it to.
   */
  fill_mark: Shown
  /**
   * Number of fills that the pot takes.
   */
  fills: number
  /**
   * Reading of the gauge: the vacuum on a vacuum gauge, else the pressure left in the chamber.
   */
  gauge: Shown
  /**
   * Error of the vacuum gauge, if it shows more than the air here can give.
   */
  gauge_off?: Shown | null
  /**
   * Whether that is an absolute pressure.
   */
  is_absolute: boolean
  /**
   * Level of each, in equal parts.
   */
  level: Shown
  /**
   * Factor by which the pot swells, if no bubble bursts.
   */
  rise: Shown
  /**
   * Its minimum by the dial, used to calculate the swelling if no rise was seen.
   */
  swells_at?: Shown | null
  /**
   * Volume that each swells to.
   */
  swollen: Shown
}
/**
 * How a pot is heated, by the thermometer: every burst by the reading before it, the first one too.
 */
export interface PlannedHeating {
  /**
   * The temperature to aim for.
   */
  aim: Shown
  /**
   * The table, the coldest band first. The last band ends where shooting begins.
   */
  bands: HeatBand[]
  /**
   * Factor by which the amount is outside those that were timed.
   */
  beyond?: Shown | null
  /**
   * Number of bursts expected.
   */
  bursts: number
  /**
   * Expected reading before it; none if not known, and the bursts are then those of a cold pot.
   */
  from?: Shown | null
  /**
   * Whether nothing was timed: the times follow from the rated power alone.
   */
  guess: boolean
  /**
   * Setting of the oven, as a share of full power; none at full power.
   */
  setting?: Shown | null
  /**
   * Shoot from this reading on.
   */
  shoot_from: Shown
  /**
   * Shoot up to this reading; above it, stop and let the pot cool.
   */
  shoot_to: Shown
  /**
   * Materials whose specific heat the book does not state; assumed that of the rest.
   */
  specific_heat_not_known: string[]
  /**
   * Total time that the oven is expected to run.
   */
  total: Shown
  /**
   * Its standard uncertainty.
   */
  uncertainty: Shown
}
/**
 * A line of the table of readings: below this reading, run the oven for this time; then stir and read again.
 */
export interface HeatBand {
  /**
   * The hottest possible reading after it, from the top of the band.
   */
  at_most: Shown
  /**
   * Upper end of the band; it begins where the band before ends.
   */
  below: Shown
  /**
   * Time that the oven runs.
   */
  burst: Shown
  /**
   * The expected reading after it, from the top of the band.
   */
  expected: Shown
}
/**
 * One heat of a stage: from the oven to the oven.
 */
export interface StageHeat {
  /**
   * Shots of the stage made before it.
   */
  after: number
  /**
   * Table of readings of a reheat, for what is then in the pot; the first heat has that of the stage.
   */
  heating?: Calculated3 | null
  /**
   * Mass in the pot when it begins.
   */
  holds: Shown
  /**
   * From the last burst to the last shot.
   */
  lasts: Shown
  /**
   * Shots made in it.
   */
  shots: number
}
/**
 * Heat that a pot spends of its budget, as time at one temperature.
 */
export interface HeatSpent {
  /**
   * Reference temperature of the times.
   */
  at: Shown
  /**
   * The part of it spent before, by the leftover that was heated most; none without one.
   */
  before?: Shown | null
  /**
   * Time that the pot withstands.
   */
  budget: Shown
  /**
   * Time that is left.
   */
  left: Shown
  /**
   * The plastisol that has least left.
   */
  material: string
  /**
   * Whether there is more stabilizer than the material's figure is stated for; the excess is not counted.
   */
  more_stabilizer_not_counted: boolean
  /**
   * Additional stabilizer, from the start, with which the pot would withstand it; none if no dose is known that
   * does.
   */
  needs?: MaterialMass | null
  /**
   * Time spent beyond the budget.
   */
  over?: Shown | null
  /**
   * Time that its heats spend, each held at its aim from the last burst to the last shot, and that its leftovers
   * had spent before. It counts for what is left of the pot.
   */
  spent: Shown
}
/**
 * A mass of a material.
 */
export interface MaterialMass {
  /**
   * Its mass.
   */
  mass: Shown
  /**
   * Which material.
   */
  material: string
}
/**
 * A day's time line, one thing after the other.
 */
export interface TimeLine {
  /**
   * Time of it with a pot in the oven or between bursts.
   */
  heating: Shown
  /**
   * Time of it in which shots are made.
   */
  shooting: Shown
  /**
   * The spans in their order.
   */
  spans: Span[]
  /**
   * How long the day takes.
   */
  total: Shown
  /**
   * Whether the time to measure, degas and clean up is missing: the book states no time for a pot.
   */
  without_preparing: boolean
}
/**
 * A span of the day.
 */
export interface Span {
  /**
   * When it begins, from the beginning of the day.
   */
  begins: Shown
  /**
   * Kind of work.
   */
  doing: Doing
  /**
   * How long it takes.
   */
  lasts: Shown
  /**
   * The mold that is shot.
   */
  mold?: string | null
  /**
   * The pots: several for a laminated piece.
   */
  pots: string[]
  /**
   * Number of shots.
   */
  shots?: number | null
  /**
   * The stage of the first of them, from 1 on.
   */
  stage: number
}
/**
 * Cost of a day. `total` = `materials` + `from_shelf` − `credit` + `packing` + `work`, exactly, and is the
 * sum over the lines.
 */
export interface DayCost {
  /**
   * Worth of what is left over at the end.
   */
  credit: MoneyShown
  /**
   * Worth of the leftovers from the shelf.
   */
  from_shelf: MoneyShown
  /**
   * The order lines, in their order.
   */
  lines: LineCost[]
  /**
   * All materials, by what is used.
   */
  materials: MoneyShown
  /**
   * The orders, each in the place of its first line.
   */
  orders: OrderCost[]
  /**
   * Packing.
   */
  packing: MoneyShown
  /**
   * Its parts, as a sentence.
   */
  text: string
  /**
   * Whole packages of all materials, as if there were no stock.
   */
  to_buy: MoneyShown
  /**
   * All of it.
   */
  total: MoneyShown
  /**
   * Materials used, by name.
   */
  used: MaterialCost[]
  /**
   * Work.
   */
  work: MoneyShown
}
/**
 * A sum of money.
 */
export interface MoneyShown {
  /**
   * The sum in the calculation, in steps of 0.000 001: decimal text, which no reader rounds.
   */
  amount: string
  /**
   * The currency's ISO 4217 code.
   */
  currency: string
  /**
   * The same without its currency, for a column that names that once.
   */
  figure: string
  /**
   * Rounded to the currency's minor unit, half away from zero, as a bill shows it.
   */
  text: string
}
/**
 * Cost of an order line.
 */
export interface LineCost {
  /**
   * Its part of the pots' plastic.
   */
  materials: MoneyShown
  /**
   * Its packing; zero if it is not sold by the pack.
   */
  packing: MoneyShown
  /**
   * Of one pack, if sold by the pack.
   */
  per_pack?: MoneyShown | null
  /**
   * Of one piece.
   */
  per_piece: MoneyShown
  /**
   * Price with the margin of the book: of one pack if sold by the pack, else of one piece.
   */
  price?: MoneyShown | null
  /**
   * All of it.
   */
  total: MoneyShown
  /**
   * Its part of the work.
   */
  work: MoneyShown
}
/**
 * Cost of an order.
 */
export interface OrderCost {
  /**
   * The order.
   */
  order: string
  /**
   * Its lines at their prices.
   */
  price?: MoneyShown | null
  /**
   * Cost of its lines.
   */
  total: MoneyShown
}
/**
 * Cost of a material.
 */
export interface MaterialCost {
  /**
   * The price of that much.
   */
  cost: MoneyShown
  /**
   * How much of it is used; of a day, what goes in fresh.
   */
  mass: Shown
  /**
   * Which.
   */
  material: string
  /**
   * Whole packages that hold it.
   */
  packages: number
  /**
   * Cost of these.
   */
  to_buy: MoneyShown
}
/**
 * A colorant, by test pieces with two or more doses of it alone.
 */
export interface ColorantEntry {
  /**
   * Mass of one drop.
   */
  drop: MeasuredAmount
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * The test pieces.
   */
  let_downs: LetDownEntry[]
}
/**
 * How such a pot cools, as the shop watched it, and how long this one has stood.
 */
export interface CoolingEntry {
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * The temperature when the watch began.
   */
  from: MeasuredAmount
  /**
   * How much was watched; default: as much as is heated.
   */
  mix?: Amount
  /**
   * The temperature of the room.
   */
  room: MeasuredAmount
  /**
   * How long the pot has stood since it had the temperature that it is heated `from`.
   */
  stood: MeasuredAmount
  /**
   * How long that took.
   */
  time: MeasuredAmount
  /**
   * The temperature when it ended.
   */
  to: MeasuredAmount
}
/**
 * Drops or spoonfuls that were counted and weighed together.
 */
export interface CountedEntry {
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Number of drops or spoonfuls of a weighing. Unit: 1; 1 to 1000000.
   */
  weighed_count: number
  /**
   * What they weigh together, net. Unit: g; 1e-12 to 1e15.
   */
  weighed_mass: MeasuredAmount
}
/**
 * Uncertainty of a measure.
 */
export interface Doubt {
  /**
   * Main source of the uncertainty.
   */
  main_source: string
  /**
   * Relative standard uncertainty of what it gives, against the dose in the measure that the formula is written in.
   */
  uncertainty: Shown
}
/**
 * Shots into one mold at one stage.
 */
export interface Draw {
  /**
   * Which layer of their pieces it makes, counted from 1; none as with `line`.
   */
  layer?: number | null
  /**
   * The first of the order lines that it is for, counted from 1. None in a plan that was stored before this was in it.
   */
  line?: number | null
  /**
   * Injector loads.
   */
  loads: number
  /**
   * The mold.
   */
  mold: string
  /**
   * Mass of one shot, sprue included.
   */
  per_shot: Shown
  /**
   * The pieces, by shape.
   */
  pieces: Pieces[]
  /**
   * The layer's share of the cavity, below 1 in a laminated piece.
   */
  share: Shown
  /**
   * Shots needed for the orders.
   */
  shots: number
  /**
   * Whole shots in a load.
   */
  shots_per_load: number
  /**
   * Further shots that the rest of the pot gives.
   */
  spare_shots: number
  /**
   * Mass of the sprue of one shot.
   */
  sprue: Shown
  /**
   * The other pots of a laminated piece, shot at the same time.
   */
  together_with: string[]
}
/**
 * The pieces of one shape in a draw.
 */
export interface Pieces {
  /**
   * Flakes in a piece, if the book states their cut and thickness.
   */
  flakes: FlakeCount[]
  /**
   * Its minimum: shrunk, with no feed from the sprue.
   */
  from: Shown
  /**
   * Number that the shots make.
   */
  made: number
  /**
   * Number ordered that this draw is for: its share, in proportion to its shots. The draws of an order add up to it.
   */
  ordered: number
  /**
   * The shape, in a mold with unlike cavities.
   */
  shape?: string | null
  /**
   * Whether the sprue cannot feed the cavity, so that the piece sinks in.
   */
  sinks_in: boolean
  /**
   * Its maximum: topped by the sprue for all of its contraction.
   */
  to: Shown
  /**
   * Its standard uncertainty from cavity and density, if the book states that of the cavity; the feed is not in it.
   */
  uncertainty?: Shown | null
  /**
   * Mass of this layer of a piece.
   */
  weighs: Shown
}
/**
 * The flakes of one material in a piece.
 */
export interface FlakeCount {
  /**
   * Approximate number, from the nominal size of its cut.
   */
  count: number
  /**
   * The flake.
   */
  material: string
}
/**
 * Shots into a mold.
 */
export interface DrawRecord {
  /**
   * The mold.
   */
  mold: string
  /**
   * Mass of one shot, sprue included: by the mix as made, its pieces at the mean of those weighed.
   */
  per_shot: Shown
  /**
   * The pieces, by shape.
   */
  pieces: PieceRecord[]
  /**
   * Shots planned.
   */
  planned_shots: number
  /**
   * The layer's share of the cavity, below 1 in a laminated piece.
   */
  share: Shown
  /**
   * Shots made.
   */
  shots: number
  /**
   * Time from the first shot to the last, if timed.
   */
  took?: Shown | null
}
/**
 * The pieces of one shape.
 */
export interface PieceRecord {
  /**
   * Their standard deviation, of two or more that were weighed one by one.
   */
  deviation?: Shown | null
  /**
   * Mass of one, or of this layer of it, by the mix as made; none if the book lacks a density.
   */
  expected?: Shown | null
  /**
   * Pieces that are fit to sell.
   */
  good?: number | null
  /**
   * Those a shot, on average.
   */
  good_per_shot?: number | null
  /**
   * Pieces made.
   */
  made: number
  /**
   * Pieces ordered that these shots were for, as in the plan's draw.
   */
  ordered: number
  /**
   * Planned mass of one, or of this layer of it.
   */
  planned: Shown
  /**
   * The shape, in a mold with unlike cavities.
   */
  shape?: string | null
  /**
   * How many were weighed.
   */
  weighed: number
  /**
   * Their mean.
   */
  weighs?: Shown | null
  /**
   * The weighings, of one piece or several together.
   */
  weights: WeighedTogether[]
}
/**
 * Pieces weighed together.
 */
export interface WeighedTogether {
  /**
   * How many.
   */
  count: number
  /**
   * Their mass together.
   */
  weight: Shown
}
/**
 * Shots that a pot was begun for.
 */
export interface DrawThereEntry {
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * The layer of a laminated piece that they make, counted from 1. Default: 1. Example: `2`.
   */
  layer?: number
  /**
   * An order line that they are for, counted from 1. Example: `2`.
   */
  line: number
  /**
   * Their number. Example: `6`.
   */
  shots: number
}
/**
 * An injector weighed clean, and again when it has been used and emptied.
 */
export interface EmptiedEntry {
  /**
   * Mass of the clean injector. Unit: g; 1e-12 to 1e15.
   */
  clean_mass: MeasuredAmount
  /**
   * Mass of the injector emptied as at work; at least that of the clean one. Unit: g; 1e-12 to 1e15.
   */
  emptied_mass: MeasuredAmount
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
}
/**
 * What weighed pieces show of their mold, once the mix is known.
 */
export interface Found {
  /**
   * The cavity, as a book writes it; none unless the pieces show that it is not the one of the book.
   */
  cavity?: string | null
  /**
   * Mass of one by the mix as made.
   */
  expected: Shown
  /**
   * Feed share of a mold whose book has none, if it is sure enough.
   */
  feed?: Shown | null
  /**
   * Its standard uncertainty.
   */
  feed_uncertainty?: Shown | null
  /**
   * The mold.
   */
  mold: string
  /**
   * How far their mean is off that.
   */
  off: Shown
  /**
   * Standard uncertainty of this: from weights, density and cavity.
   */
  off_uncertainty: Shown
  /**
   * How many were weighed.
   */
  pieces: number
  /**
   * Mass of one as planned.
   */
  planned: Shown
  /**
   * The pots that they were shot from.
   */
  pots: string[]
  /**
   * The shape, in a mold with unlike cavities.
   */
  shape?: string | null
  /**
   * All of this as a sentence or two.
   */
  text: string
  /**
   * Their mean.
   */
  weighs: Shown
}
/**
 * Leftovers that go into a pot.
 */
export interface FromShelf {
  /**
   * Mass of each material in them.
   */
  brings: MaterialMass[]
  /**
   * Heats of the one that was heated most often, which count for the whole pot; none if not known of one of them.
   */
  heats?: number | null
  /**
   * The leftovers, by name.
   */
  left_overs: ShelfPart[]
  /**
   * How far they take each material from its formula; the weigh list allows for it.
   */
  off: Off[]
}
/**
 * A leftover in a pot.
 */
export interface ShelfPart {
  /**
   * Heats that it has spent; none if not known.
   */
  heats?: number | null
  /**
   * Mass of it, as the scale shows it.
   */
  mass: Shown
  /**
   * Its name.
   */
  name: string
  /**
   * Time that they spent, at the reference temperature of its plastisol's budget; none if not known.
   */
  spent?: Shown | null
}
/**
 * How far a material is from its formula.
 */
export interface Off {
  /**
   * Which material.
   */
  material: string
  /**
   * The difference, as a share of what the formula needs.
   */
  off: Shown
}
/**
 * When and how a material goes into the pot.
 */
export interface GoesIn {
  /**
   * In how many portions, each stirred in before the next.
   */
  portions: number
  /**
   * Whether the book states it; else common practice for the kind.
   */
  stated: boolean
  /**
   * Before the pot is heated for the stage, or after it.
   */
  when: Adding
}
/**
 * Pieces that are fit to sell so far. Lines for the same pieces are counted together; those that are due first get them.
 */
export interface GoodEntry {
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * An order line that they are for, counted from 1. Example: `2`.
   */
  line: number
  /**
   * Their number. Example: `21`.
   */
  pieces: Count
}
/**
 * Pixels of a white or gray area.
 */
export interface GrayStepEntry {
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Its pixels.
   */
  pixels: PatchEntry
  /**
   * What it reflects, as stated on the card. Example: `"90 %"`.
   */
  reflectance: Percent
}
/**
 * Pixels of an area.
 */
export interface PatchEntry {
  /**
   * Share of pixels with a channel at 0 or at 255. Default: none. Example: `"0.1 %"`.
   */
  clipped?: Percent
  /**
   * Their standard deviations over the area. Example: `[2.1, 1.8, 1.9]`.
   *
   * @minItems 3
   * @maxItems 3
   */
  deviation: [number, number, number]
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Means of red, green and blue, from 0 to 255. Example: `[184, 94, 90]`.
   *
   * @minItems 3
   * @maxItems 3
   */
  mean: [number, number, number]
  /**
   * Number of pixels, 100 at least. Example: `2400`.
   */
  pixels: number
}
/**
 * A hardness that the shop has measured.
 */
export interface HardnessPointEntry {
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Durometer reading of a measured point. Unit: 1; 0 to 100.
   */
  point_hardness: number
  /**
   * Softener or hardener of a measured point, mass per mass of base. Unit: 1; 0 to 100.
   */
  point_ratio: Share
}
/**
 * A heat as it was timed.
 */
export interface HeatTimed {
  /**
   * Whether it was the first heat of the pot, from cold; else a reheat.
   */
  first: boolean
  /**
   * The reading before.
   */
  from?: Shown | null
  /**
   * Mass in the pot then; none at a reheat between shots.
   */
  mass?: Shown | null
  /**
   * Setting, as a share of full power; none: the oven's usual one.
   */
  setting?: Shown | null
  /**
   * How long the oven ran.
   */
  time: Shown
  /**
   * The reading after.
   */
  to?: Shown | null
}
/**
 * Heats of a pot, and the heat that its stabilizer still withstands.
 */
export interface Heats {
  /**
   * Heat spent and left, if the book states a budget.
   */
  budget?: Calculated5 | null
  /**
   * Number of its heats, reheats between shots included.
   */
  count: number
  /**
   * The same with the heats of the leftover in it that was heated most often; none if that is not known. They count for
   * the mix that is left of the pot.
   */
  in_all?: number | null
}
/**
 * The mix in a pot that is there when the plan is made.
 */
export interface InPot {
  /**
   * Whether that counts as its formulas, however far off it is; none if not.
   */
  accepted?: boolean | null
  /**
   * Whether it has been degassed.
   */
  degassed: boolean
  /**
   * Its volume cold and liquid.
   */
  fills: Shown
  /**
   * Number of heats behind it; none if not known.
   */
  heats?: number | null
  /**
   * Whether it is hot.
   */
  hot: boolean
  /**
   * Its mass.
   */
  mass: Shown
  /**
   * Mass of each material in it.
   */
  parts: MaterialMass[]
  /**
   * Heat used in these, at the temperature of its plastisol's budget; none if not known.
   */
  spent?: Shown | null
}
/**
 * A leftover for the shelf.
 */
export interface Jar {
  /**
   * Number of heats behind it; none if not known.
   */
  heats?: number | null
  /**
   * Its mass: what was left in the cup, and sprues of the same mix.
   */
  mass: Shown
  /**
   * The name to write on it.
   */
  name: string
  /**
   * Mass of each material in it.
   */
  parts: MaterialMass[]
  /**
   * The pot that it is of.
   */
  pot: string
  /**
   * Heat that they spent, as time at the temperature of its plastisol's budget; none if not known.
   */
  spent?: Shown | null
  /**
   * The sprues in it.
   */
  sprues: Shown
}
/**
 * A further cup that is heated together with the mix, on one clock: it must be alike.
 */
export interface LoadEntry {
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Mix in it: a mass, or a volume cold and liquid.
   */
  mix: Amount
  /**
   * Specific heat of that. Default: as of the mix.
   */
  specific_heat?: MeasuredAmount
  /**
   * Mass of its vessel.
   */
  vessel?: MeasuredAmount
  /**
   * Specific heat of its vessel. Default: with the mass of the vessel, those of the vessel of the mix.
   */
  vessel_specific_heat?: MeasuredAmount
}
/**
 * A salt loading, stated in just one way: by the words of [`SaltForm`], or as a sink rate.
 */
export interface LoadingEntry {
  /**
   * Volume of salt as scooped: for the base of the request, or per volume of base. Example: `"2 tbsp"` or
   * `"2 tbsp/cup"`.
   */
  as_scooped?: Amount
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Density of the finished plastic at 20 °C, voids counted. Example: `"1.12 g/mL"`.
   */
  finished_density?: MeasuredAmount
  /**
   * Mass of salt as a share of the mass of base. Example: `"12 %"`.
   */
  of_base?: Share
  /**
   * Mass of salt as a share of the finished mass. Example: `"10 %"`.
   */
  of_finished?: Share
  /**
   * Mass of salt for the volume of base of the request, or per volume of base. Example: `"30 g"` or
   * `"30 g/cup"`.
   */
  per_volume?: Amount
  /**
   * Mass of a piece from the cavity of the request. Example: `"10.4 g"`.
   */
  piece_mass?: MeasuredAmount
  /**
   * Mean density of that piece with its hook and weight. Example: `"1.15 g/mL"`.
   */
  sink_density?: MeasuredAmount
  /**
   * Sink rate of that piece with its hook, in the water of the request. Example: `"14 cm/s"`.
   */
  sink_rate?: MeasuredAmount
}
/**
 * A book and an order list: all that a plan is made from.
 */
export interface MadeFrom {
  /**
   * The shop's book.
   */
  book: BookDocument
  /**
   * The order list.
   */
  orders: OrdersDocument
}
/**
 * A day's orders.
 */
export interface OrdersDocument {
  /**
   * Anything a reader should know about it. Default: none. Example: `"Spring orders, second part."`.
   */
  about?: string
  /**
   * The day, as the shop writes it. Default: none. Example: `"2027-03-02"`.
   */
  day?: Name
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * The format and its version. Example: `"pourwright/1.0"`.
   */
  format: Format
  /**
   * Letters of pots by their ids, as an earlier plan of the day gave them. A pot with that id keeps its letter, and
   * others get one that is not here. Default: none. Example: `{ "dusk + plain": "A" }`.
   */
  letters?: {
    [k: string]: Name
  }
  /**
   * The order lines; at least one.
   */
  lines: OrderLine[]
  /**
   * Pots that are there already, hot or set: the day goes on from them. Default: none.
   */
  pots?: PotThereEntry[]
  /**
   * Leftover mixes that may go into the day's pots. Default: none.
   */
  shelf?: ShelfEntry[]
  /**
   * Stock before the day, by material; the plan shows shortages. Default: not known.
   * Example: `{ "clear-base": "1 gal", "fine-salt": "8 lb" }`.
   */
  stock?: {
    [k: string]: Amount
  }
}
/**
 * One line of an order: a `product`, or a `mold` with `formulas` or `layers`; and either `pieces` or `packs`.
 */
export interface OrderLine {
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Formulas of a piece of one color. Default: none. Example: `["dusk", "plain"]`.
   */
  formulas?: Name[]
  /**
   * Layers of a laminated piece. Default: none.
   */
  layers?: LayerEntry[]
  /**
   * A mold of the book. Default: none; required without `product`. Example: `"finger-5"`.
   */
  mold?: Name
  /**
   * The order it belongs to. Example: `"31"`.
   */
  order: Name
  /**
   * Rule if two of these formulas dose the same material. Default: `"refuse"`. Example: `"add"`.
   */
  overlap?: Overlap
  /**
   * Number of pieces in a pack. Default: none; required with `packs`. Example: `6`.
   */
  pack_of?: number
  /**
   * Number of packs. Default: none; required without `pieces`. Example: `4`.
   */
  packs?: number
  /**
   * Number of pieces. Default: none; required without `packs`. Example: `24`.
   */
  pieces?: number
  /**
   * A product of the book. Default: none; required without `mold`. Example: `"dusk finger"`.
   */
  product?: Name
  /**
   * The day it was promised for, as YYYY-MM-DD. Default: not known. Example: `"2027-03-04"`.
   */
  promised?: string
  /**
   * The shape, in a mold with unlike cavities. Default: none; required there. Example: `"long"`.
   */
  shape?: Name
}
/**
 * A pot that is there already. Its `parts` say what is in it; without these it is not begun, and without `draws` either it
 * is no more than a letter and an id that no other pot gets.
 */
export interface PotThereEntry {
  /**
   * Whether each material in it counts as right for its formulas, however far off it is. Default: `false`, what is off
   * is put right first.
   * Example: `true`.
   */
  accepted?: boolean
  /**
   * Capacity of its cup, one of the bench. Default: the smallest that holds it. Example: `"2 cup"`.
   */
  cup?: MeasuredAmount
  /**
   * Whether it has been degassed. Default: `false`; one that was heated is not degassed again.
   * Example: `true`.
   */
  degassed?: boolean
  /**
   * Shots that it was begun for. Default: none.
   */
  draws?: DrawThereEntry[]
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Number of heats behind it. Default: 0, or 1 if it is hot. Example: `1`.
   */
  heats?: Count
  /**
   * Whether it is hot. Default: `false`, it has set or was never heated.
   * Example: `true`.
   */
  hot?: boolean
  /**
   * Its id in the plan that it was begun by. Default: none. Example: `"dusk + plain"`.
   */
  id?: Name
  /**
   * Amounts in it, by material. Default: none. Example: `{ "clear-base": "1 cup", "plum": "32 drops" }`.
   */
  parts?: {
    [k: string]: Amount
  }
  /**
   * Its letter. Example: `"B"`.
   */
  pot: Name
  /**
   * Heat used in these: time at the temperature of its plastisol's budget. Default: not known. Example:
   * `"4.6 min"`.
   */
  spent?: MeasuredAmount
  /**
   * Whether it may take other shots too, and give up such as the lines do not need. Default: `true`.
   * Example: `false`.
   */
  takes_more?: boolean
}
/**
 * A leftover mix on the shelf. Either its `formulas`, if it was made as planned, or its `parts` say what is in it.
 */
export interface ShelfEntry {
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Its formulas: a color and a body. Default: none; required without `parts`. Example: `["dusk", "plain"]`.
   */
  formulas?: Name[]
  /**
   * Number of heats behind it. Default: not known; required if the book limits `heats`. Example: `1`.
   */
  heats?: number
  /**
   * The day it was made, as YYYY-MM-DD; the oldest is used first. Default: not known. Example:
   * `"2027-03-01"`.
   */
  made?: string
  /**
   * Its mass. Example: `"104 g"`.
   */
  mass: MeasuredAmount
  /**
   * The name written on it. Example: `"dusk, March 1"`.
   */
  name: Name
  /**
   * Rule if two of these formulas dose the same material. Default: `"refuse"`. Example: `"add"`.
   */
  overlap?: Overlap
  /**
   * Amounts that went into the pot that it is left over from, by material, on any scale. Default: none; required
   * without `formulas`. Example: `{ "clear-base": "1 cup", "plum": "32 drops" }`.
   */
  parts?: {
    [k: string]: Amount
  }
  /**
   * Heat used in these, as the sheet showed it: time at the temperature of its plastisol's budget. Default:
   * not known. Example: `"4.6 min"`.
   */
  spent?: MeasuredAmount
}
/**
 * A material of a stage as it was made.
 */
export interface MadePart {
  /**
   * Mass that went in at this stage.
   */
  added: Shown
  /**
   * Its dose in the measure that was used, for the amount of base that the formula is for.
   */
  dose: string
  /**
   * Its purpose.
   */
  kind: Kind
  /**
   * Mass of it in the pot then.
   */
  mass: Shown
  /**
   * Which.
   */
  material: string
  /**
   * Mass per mass of base; of a base, its share.
   */
  of_base: Shown
  /**
   * How far it is off the plan; none where the plan has nothing of it.
   */
  off?: Shown | null
  /**
   * Whether that was stated; else it is what the sheet said.
   */
  stated: boolean
}
/**
 * An amount of a material that was measured, and that the scale showed a mass for.
 */
export interface MeasuredAndWeighed {
  /**
   * Mass of that by the book.
   */
  by_book: Shown
  /**
   * The number of drops, if it was measured by drops.
   */
  drops?: number | null
  /**
   * The material.
   */
  material: string
  /**
   * As measured, by the person or by the sheet: `34 drops`, `1 tsp + 1/4 tsp`.
   */
  measured: string
  /**
   * The volume by spoons or cup, level, if it was measured by volume.
   */
  volume?: Shown | null
  /**
   * What the scale showed.
   */
  weighed: Shown
}
/**
 * Yield of a mold, over all shots whose pieces were counted.
 */
export interface MoldRecord {
  /**
   * Pieces that are fit to sell.
   */
  good: number
  /**
   * Pieces made.
   */
  made: number
  /**
   * The mold.
   */
  mold: string
  /**
   * Share of rejects.
   */
  rejects: Shown
  /**
   * Lower bound of the reject rate, 95 % sure.
   */
  rejects_from: Shown
  /**
   * Upper bound of the reject rate, 95 % sure.
   */
  rejects_to: Shown
}
/**
 * A leftover on the shelf.
 */
export interface OnShelf {
  /**
   * Data of the embedding program on it.
   */
  ext?: {
    [k: string]: unknown
  } | null
  /**
   * Its mass before the day.
   */
  had: Shown
  /**
   * The day it was made.
   */
  made?: string | null
  /**
   * Its name.
   */
  name: string
  /**
   * The pots that it goes into.
   */
  pots: string[]
  /**
   * Mass that stays on the shelf.
   */
  stays: Shown
  /**
   * Mass that goes into pots.
   */
  used: Shown
}
/**
 * Parcel of one order: its lines, packed.
 */
export interface Parcel {
  /**
   * Its lines, by their places in the plan, counted from 1.
   */
  lines: number[]
  /**
   * Mass of its pieces, without hooks and packing.
   */
  net: Shown
  /**
   * The order.
   */
  order: string
  /**
   * The first day that one of its lines was promised for.
   */
  promised?: string | null
  /**
   * Materials of its packs besides pieces, if the book states costs.
   */
  takes: ParcelItem[]
}
/**
 * Something that packs take besides pieces.
 */
export interface ParcelItem {
  /**
   * How many.
   */
  count: number
  /**
   * Its name.
   */
  name: string
}
/**
 * A picture of a piece and a card, by the statistics of their pixels.
 */
export interface PictureEntry {
  /**
   * Pixels of the card: one white or gray area, or a list of several steps.
   */
  card: GrayStepEntry | GrayStepEntry[]
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Pixels of the piece.
   */
  patch: PatchEntry
}
/**
 * A day's plan with the documents that it was made from: complete, so that it can be kept as the day's record, and made
 * again to the same bits.
 */
export interface PlanDocument {
  /**
   * Assumptions, for what the book does not state.
   */
  assumptions: Note[]
  /**
   * Numbers that the book does not state, what the plan assumes for them, and which to measure first.
   */
  borrowed: Borrowed[]
  /**
   * Hazards.
   */
  cautions: Caution[]
  /**
   * The time line: when each pot is heated and shot, and how long that takes. Only if the book states an oven.
   */
  clock?: Calculated6 | null
  /**
   * Cost of the day, if the book states how to calculate it.
   */
  cost?: Calculated7 | null
  /**
   * The day, as written in the order list.
   */
  day?: string | null
  /**
   * The format and its version.
   */
  format: Format
  /**
   * The order lines, as given.
   */
  lines: PlannedLine[]
  /**
   * The documents that it was made from.
   */
  made_from?: MadeFrom | null
  /**
   * The measuring system: what a cup and a spoon hold.
   */
  measures: System
  /**
   * The parcel of each order, the first that is due first.
   */
  parcels: Parcel[]
  /**
   * The pots, in the order in which they are first heated.
   */
  pots: Pot[]
  /**
   * Why there are not fewer pots.
   */
  proof: Proof
  /**
   * Entries of the book that look wrong: check them before the day begins.
   */
  questions: Note[]
  /**
   * The scale of the steps' sentences that are on the other one too: that of thermometers and gauges in these measures.
   * None in a plan that was stored before this was in it.
   */
  scale?: TextScale | null
  /**
   * The leftovers of the order list, and the part of them that is used.
   */
  shelf: OnShelf[]
  /**
   * The shop.
   */
  shop?: string | null
  /**
   * Steps of the person at the bench, in the order of work.
   */
  steps: PlanStep[]
  /**
   * Materials in stock and what the day takes of them, the scarcest first.
   */
  stock: StockEntry[]
  /**
   * The water of the sink rates.
   */
  water?: SinkWater | null
  /**
   * The order of work over all pots.
   */
  work: Work[]
}
/**
 * An order line in the plan.
 */
export interface PlannedLine {
  /**
   * Data of the embedding program on the line.
   */
  ext?: {
    [k: string]: unknown
  } | null
  /**
   * The mold.
   */
  mold: string
  /**
   * The order it belongs to.
   */
  order: string
  /**
   * Pieces in a pack.
   */
  pack_of?: number | null
  /**
   * Number of packs, if sold by the pack.
   */
  packs?: number | null
  /**
   * Mass of a piece.
   */
  piece: Shown
  /**
   * Number of pieces.
   */
  pieces: number
  /**
   * The first order line for the same pieces, counted from 1; shots are for all of them. None in a plan that was stored
   * before this was in it.
   */
  pooled_with?: number | null
  /**
   * The pots it is shot from.
   */
  pots: string[]
  /**
   * The day it was promised for.
   */
  promised?: string | null
  /**
   * The shape, in a mold with unlike cavities.
   */
  shape?: string | null
  /**
   * How a piece sinks, if the book states a water. None in a quote.
   */
  sinks?: Calculated | null
  /**
   * The product's name, or its formulas.
   */
  what: string
}
/**
 * One vessel of mix from first measure to last shot.
 */
export interface Pot {
  /**
   * Capacity of the cup it is mixed in.
   */
  cup: Shown
  /**
   * Name of that cup: `2-cup cup`.
   */
  cup_name: string
  /**
   * How it is degassed, if the book states a vacuum.
   */
  degas?: Calculated2 | null
  /**
   * Leftovers that go in first; the first stage's weigh list is then for the rest.
   */
  from_shelf?: FromShelf | null
  /**
   * Its heats, and the heat that its stabilizer still withstands.
   */
  heats: Heats
  /**
   * Id made of what it is, like the ids of its steps: it stays the same when other orders come in or a count changes.
   */
  id: string
  /**
   * Mass left in the cup after the last shot, the heel included.
   */
  left_over: Shown
  /**
   * Mass lost on the wall of the cup and in the injector.
   */
  lost: Shown
  /**
   * Its letter: A, B, ...
   */
  pot: string
  /**
   * Mass of all sprues.
   */
  sprues: Shown
  /**
   * Its stages, in order.
   */
  stages: Stage[]
  /**
   * What is in it already; none in a pot that the plan begins.
   */
  there?: InPot | null
  /**
   * Problems and risks, each with a fix.
   */
  warnings: Note[]
}
/**
 * One composition of a pot: what goes in, and what is shot.
 */
export interface Stage {
  /**
   * Mass in the pot for the next stage, or left over.
   */
  carried: Shown
  /**
   * Its heats one by one: the shots of each, and the table of each reheat. Only if the book states an oven.
   */
  clock?: Calculated4 | null
  /**
   * Density of the finished plastic.
   */
  density: Shown
  /**
   * Its standard uncertainty from the weigh lists; none in a pot with a leftover, whose composition is not known that well.
   */
  density_uncertainty?: Shown | null
  /**
   * The draws.
   */
  draws: Draw[]
  /**
   * Its volume cold and liquid, as the cup shows it.
   */
  fills: Shown
  /**
   * Its volume at shot temperature, as the cup shows it.
   */
  fills_hot: Shown
  /**
   * Its formulas.
   */
  formulas: string[]
  /**
   * How it is heated, if the book states an oven.
   */
  heating?: Calculated3 | null
  /**
   * Number of heats: one, another for each laminated piece, and reheats where its shots take longer than it stays
   * hot.
   */
  heats: number
  /**
   * Mass in the pot then.
   */
  holds: Shown
  /**
   * Lowest temperature to shoot at.
   */
  shoot_from?: Shown | null
  /**
   * Highest temperature to shoot at.
   */
  shoot_to?: Shown | null
  /**
   * Share of the mix that is solid, by volume.
   */
  solids: Shown
  /**
   * Sprues that go back into the pot before the next stage.
   */
  sprues_back: Shown
  /**
   * How often to stir so that salt does not settle, if the book states the grain and the viscosity; else stir
   * before every load.
   */
  stir_every?: Shown | null
  /**
   * Weigh list of what goes in.
   */
  weigh: Weigh[]
}
/**
 * One material of a weigh list.
 */
export interface Weigh {
  /**
   * When and how it goes in.
   */
  add: GoesIn
  /**
   * The chosen way: the formula's own measure, or another that is surer.
   */
  best: Way
  /**
   * Caution that no tool keeps the tolerance (code `dose-beyond-bench`): the error of the chosen way, and the amount
   * from which on a tool would keep it. None if the tolerance is kept.
   */
  beyond?: Note | null
  /**
   * Its uncertainty.
   */
  doubt?: Doubt | null
  /**
   * Its uncertainty on the scale, if that keeps the tolerance and another way is chosen.
   */
  doubt_weighed?: Doubt | null
  /**
   * Its kind.
   */
  kind: Kind
  /**
   * Which material.
   */
  material: string
  /**
   * Ways by the other tools of the bench that keep the tolerance.
   */
  others: Way[]
  /**
   * The largest relative error that the shop allows.
   */
  tolerance: Shown
  /**
   * Mass needed by the formula.
   */
  wanted: Shown
  /**
   * The measure that the formula is written in.
   */
  written_in: WrittenIn
}
/**
 * A way to measure a material.
 */
export interface Way {
  /**
   * Mass that it gives.
   */
  gives: Shown
  /**
   * The measure: `1 tsp + 1/4 tsp`, `40 drops`, `12.4 g`.
   */
  measure: string
  /**
   * Error of that, as a share of all of the material in the mix.
   */
  off: Shown
  /**
   * The tool.
   */
  tool: Tool
}
/**
 * Minimum number of pots of a day, and why.
 */
export interface Proof {
  /**
   * Minimum of any plan.
   */
  least: number
  /**
   * Number of pots of the plan.
   */
  pots: number
  /**
   * Why.
   */
  reasons: ProofReason[]
}
/**
 * A reason for a number of pots; those of different bases add up.
 */
export interface ProofReason {
  /**
   * The reason as a sentence, with its numbers.
   */
  because: string
  /**
   * All formulas that it counts.
   */
  formulas: ProofFormula[]
  /**
   * Number of pots that it calls for.
   */
  pots: number
}
/**
 * The part of a formula in a reason.
 */
export interface ProofFormula {
  /**
   * Its numbers: what its shots need, and what a pot gives.
   */
  because: string
  /**
   * The formula, by its names.
   */
  formula: string
  /**
   * Pots that it needs for itself, if the reason adds these up.
   */
  pots?: number | null
}
/**
 * One step of a day.
 *
 * A stage's weigh list, heating and draws are those of its pot in the plan; a step refers to them and says what to do
 * with them.
 */
export interface PlanStep {
  /**
   * Where: one pot, or those of a laminated piece that are shot together, one a layer.
   */
  at: StepAt[]
  /**
   * Dangers here.
   */
  cautions: Caution[]
  /**
   * Names the step by what it is: the formulas that its pot starts with, the stage's formulas, what is done and with
   * which mold. It stays where other orders come in or a count changes, so that a tick keeps to its step.
   */
  id: string
  /**
   * Items to tick off one by one, at least one.
   */
  items: StepItem[]
  /**
   * Its kind.
   */
  kind: StepKind
  /**
   * Which entry of the order of work it belongs to, counted from 1.
   */
  work: number
}
/**
 * A step at one pot.
 */
export interface StepAt {
  /**
   * Further points for the bench, each a sentence.
   */
  details: string[]
  /**
   * Which of that stage's draws, counted from 1, where something is shot.
   */
  draw?: number | null
  /**
   * Background, each a sentence.
   */
  notes: string[]
  /**
   * Its number among the steps of the pot, counted from 1: other steps refer to it.
   */
  number: number
  /**
   * The text on the other scale, where it is not the same.
   */
  other?: string | null
  /**
   * The details on the other scale, one for each; empty where all are the same.
   */
  other_details?: string[]
  /**
   * The pot's letter.
   */
  pot: string
  /**
   * The table to heat by, the coldest reading first; empty at every other step, and where the times are not known.
   */
  readings: Reading[]
  /**
   * Which of its stages, counted from 1.
   */
  stage: number
  /**
   * The action, in one or two sentences that begin with the verb.
   */
  text: string
}
/**
 * A row of the table to heat by: from the reading where the row before it ends.
 */
export interface Reading {
  /**
   * The hottest possible reading after that, from the upper end of the row. None where the oven does not run, and in a
   * plan that was stored before this was in it.
   */
  at_most?: Shown | null
  /**
   * The thermometer shows less than this; none in the last row.
   */
  below?: Shown | null
  /**
   * How long the oven runs then; none where it does not.
   */
  burst?: Shown | null
  /**
   * The expected reading after that, at most: from the upper end of the row. None where the oven does not run, and in a
   * plan that was stored before this was in it.
   */
  expected?: Shown | null
  /**
   * The action, in a few words: the burst, the next step, or stop.
   */
  go: string
}
/**
 * An item to tick off within a step: a material, a fill, a burst, a load, or all of it.
 */
export interface StepItem {
  /**
   * By how much it is done: a tick made by another amount no longer holds.
   */
  amount: string
  /**
   * Names it as the step is named.
   */
  id: string
  /**
   * The material that is measured.
   */
  material?: string | null
  /**
   * Whether it is more of what is in the pot already; none if not.
   */
  more?: boolean | null
  /**
   * Which fill, burst or load, counted from 1.
   */
  number?: number | null
  /**
   * The text on the other scale, where it is not the same.
   */
  other?: string | null
  /**
   * Shots of a load.
   */
  shots?: number | null
  /**
   * The action, in a few words.
   */
  text: string
  /**
   * Its place in the stage's weigh list, counted from 1.
   */
  weigh?: number | null
}
/**
 * A material in stock, and what the day needs of it.
 */
export interface StockEntry {
  /**
   * Mass on hand.
   */
  had: Shown
  /**
   * Mass left; zero if it runs short.
   */
  left: Shown
  /**
   * Which material.
   */
  material: string
  /**
   * Packages to buy for what is missing, if the book states a price and so a package.
   */
  packages?: number | null
  /**
   * The first pot that it is not enough for, if any.
   */
  runs_out_in?: string | null
  /**
   * Mass missing.
   */
  short: Shown
  /**
   * Mass that the day's pots need.
   */
  used: Shown
}
/**
 * The water of the sink rates.
 */
export interface SinkWater {
  /**
   * Its density.
   */
  density: Shown
  /**
   * Its salinity, salt by mass.
   */
  salinity: Shown
  /**
   * Its temperature.
   */
  temperature: Shown
}
/**
 * Shots at one time: by one pot, or by those of a laminated piece together.
 */
export interface Work {
  /**
   * How several pots become hot at once, each a sentence.
   */
  details: string[]
  /**
   * Where they come from, one a layer.
   */
  from: WorkFrom[]
  /**
   * How the pots that are heated for this are heated as one load, if there are several and the book states an oven.
   */
  heating?: Calculated3 | null
  /**
   * The mold.
   */
  mold: string
  /**
   * The details on the other scale, one for each; empty where all are the same.
   */
  other_details?: string[]
  /**
   * Number of shots.
   */
  shots: number
  /**
   * The shots and the pots that they come from, as a sentence.
   */
  text: string
}
/**
 * A pot at work.
 */
export interface WorkFrom {
  /**
   * Whether it is heated for this; else it is still hot from the work before.
   */
  heat: boolean
  /**
   * The pot.
   */
  pot: string
  /**
   * Which of its stages, counted from 1.
   */
  stage: number
}
/**
 * A pot as it is now. A pot of the plan holds what its steps that are `done` put into it, unless something else is said;
 * another one says what is in it by `parts` or `trial`.
 */
export interface PotNowEntry {
  /**
   * Whether each material in it counts as right for its formulas, however far off it is: it was put right as far as it
   * goes, or is kept as it is. What is not in it yet still goes in. Default: `false`, or as the plan has it.
   * Example: `true`.
   */
  accepted?: boolean
  /**
   * Capacity of its cup. Default: that of the plan, else the smallest that holds it. Example: `"2 cup"`.
   */
  cup?: MeasuredAmount
  /**
   * Whether it has been degassed. Default: whether that step is done.
   * Example: `true`.
   */
  degassed?: boolean
  /**
   * Number of its last step that is done. Default: 0, it is not begun. Example: `7`.
   */
  done?: Count
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Number of heats behind it. Default: those of its steps. Example: `2`.
   */
  heats?: Count
  /**
   * Whether it is hot. Default: whether its stage has been heated and is not done.
   * Example: `true`.
   */
  hot?: boolean
  /**
   * How much is in it, weighed without the cup, or read at the cup. Default: what the steps leave. Example:
   * `"212 g"`.
   */
  left?: Amount
  /**
   * Whether what was in it is lost. Default: `false`.
   * Example: `true`.
   */
  lost?: boolean
  /**
   * All that is in it, by material. Default: what the steps put in. Example:
   * `{ "clear-base": "1 cup", "plum": "34 drops" }`.
   */
  parts?: {
    [k: string]: Amount
  }
  /**
   * Shots that are done of the step after that. Default: 0. Example: `3`.
   */
  shots?: Count
  /**
   * The trial that it is. Default: none.
   */
  trial?: TrialEntry
}
/**
 * A trial: its start, and what was added and taken since, in order.
 */
export interface TrialEntry {
  /**
   * The plastisol, if it started without formulas. Default: `default_base` of the book. Example:
   * `"clear-base"`.
   */
  base?: Name
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Formulas of the book that went in with the start, doses for that amount of base. Default: none, base
   * alone. Example: `["plain"]`.
   */
  formulas?: Name[]
  /**
   * What was done since, in order. Default: nothing. Example:
   * `[{ "plum": "3 drops" }, "again", { "looks": { "srgb": [184, 94, 90] } }, { "taken": "10 g" }]`.
   */
  log?: TrialStep[]
  /**
   * Anything worth keeping with it. Default: none. Example: `"By daylight, against the sample of May."`.
   */
  notes?: string
  /**
   * Rule if two of these formulas dose the same material. Default: `"refuse"`. Example: `"add"`.
   */
  overlap?: Overlap
  /**
   * The base that it started from: an amount of it, cold and liquid or weighed. Example: `"1 cup"`.
   */
  start: Amount
}
/**
 * Record of a pot.
 */
export interface PotRecord {
  /**
   * Number of heats of the mix that was left, as planned, with those of leftovers in it; none if that is not
   * known.
   */
  heats?: number | null
  /**
   * Mass left in the cup; none if it was not weighed.
   */
  left?: Shown | null
  /**
   * Mass that stayed in cup and injector: the mass that went in less that shot and left. Below zero
   * where the shots were lighter than calculated. None where what was left was not weighed.
   */
  lost?: Shown | null
  /**
   * Anything worth knowing, one entry a stage that has notes.
   */
  notes: string[]
  /**
   * The same as it was planned.
   */
  planned_lost: Shown
  /**
   * Its letter.
   */
  pot: string
  /**
   * All that went in.
   */
  put_in: Shown
  /**
   * Mass shot, less the sprues that went back.
   */
  shot: Shown
  /**
   * Heat spent by these heats, as time at the reference temperature of its plastisol's budget, as
   * planned; none if that is not known.
   */
  spent?: Shown | null
  /**
   * Its stages.
   */
  stages: StageRecord[]
}
/**
 * A stage as it was made.
 */
export interface StageRecord {
  /**
   * Mass in the cup after the last shot: weighed or calculated.
   */
  after: Shown
  /**
   * Whether that was weighed.
   */
  after_weighed: boolean
  /**
   * The body as made, as a formula for the book.
   */
  body: FormulaEntry
  /**
   * The color as made, apart from its body, as a formula for the book; none if there is no color.
   */
  color?: FormulaEntry | null
  /**
   * Density of the finished plastic as made, without voids; none if the book lacks a density.
   */
  density?: Shown | null
  /**
   * Its standard uncertainty, as planned.
   */
  density_uncertainty?: Shown | null
  /**
   * The draws.
   */
  draws: DrawRecord[]
  /**
   * Its formulas.
   */
  formulas: string[]
  /**
   * Number of heats of this stage: as stated, else as planned.
   */
  heats: number
  /**
   * Mass of all of it.
   */
  held: Shown
  /**
   * Density as made at the middle of the shot window, without voids; none if the book lacks a density.
   */
  hot_density?: Shown | null
  /**
   * Mass that the injector kept, each time that it was cleaned; empty if not weighed.
   */
  injector: Shown[]
  /**
   * Color that a finished piece had; none if it was not read.
   */
  looks?: ColorEntry | null
  /**
   * Contents of the pot by material, plastisols first.
   */
  made: MadePart[]
  /**
   * Amounts that were measured and weighed: what a drop weighs and a spoon holds.
   */
  pairs: MeasuredAndWeighed[]
  /**
   * The amount of base that the doses are for.
   */
  per: string
  /**
   * The same as it was planned.
   */
  planned_density: Shown
  /**
   * Its heats as timed, each of the mass that was in the pot.
   */
  timed: HeatTimed[]
}
/**
 * A temperature at a time.
 */
export interface ReadingEntry {
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Temperature of a reading. Unit: °C; -73 to 427.
   */
  reading_temperature: MeasuredAmount
  /**
   * Time of a reading, after that of the one before. Unit: s; 0 to 1e15.
   */
  reading_time: MeasuredAmount
}
/**
 * A day's record.
 */
export interface Record {
  /**
   * Colors that finished pieces had, each with the formula that it goes to in the book.
   */
  colors: SeenColor[]
  /**
   * The day.
   */
  day?: string | null
  /**
   * The format and its version.
   */
  format: Format
  /**
   * What weighed pieces of one color show of their molds, by mold and shape.
   */
  found: Found[]
  /**
   * What is left for the shelf.
   */
  jars: Jar[]
  /**
   * Household measures: the size of a cup and a spoon.
   */
  measures: System
  /**
   * The molds, by name: their yield over all pots.
   */
  molds: MoldRecord[]
  /**
   * The pots, in the order of the plan.
   */
  pots: PotRecord[]
  /**
   * Colors and bodies as made that go into the book.
   */
  saved: Saved[]
  /**
   * Whose it is.
   */
  shop?: string | null
}
/**
 * The color that a finished piece had, next to the one that the book has.
 */
export interface SeenColor {
  /**
   * The color.
   */
  color: ColorEntry
  /**
   * ΔE₀₀ to the color that the book has of that formula; none if it has none.
   */
  difference?: number | null
  /**
   * It is below this with 97.5 %.
   */
  difference_high?: number | null
  /**
   * It is above this with 97.5 %.
   */
  difference_low?: number | null
  /**
   * The formula of the book that it goes to.
   */
  formula: string
  /**
   * The pot that the piece was made in.
   */
  pot: string
  /**
   * All of this as a sentence.
   */
  text: string
}
/**
 * A formula as made that goes into the book.
 */
export interface Saved {
  /**
   * The formula.
   */
  formula: FormulaEntry
  /**
   * Its name there.
   */
  name: string
  /**
   * The pot that it was made in.
   */
  pot: string
}
/**
 * Like shots in a row.
 */
export interface RunEntry {
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * The time at hand for one: fill, shoot, top off, take out.
   */
  hands: MeasuredAmount
  /**
   * How many such molds are shot in turn; default: 1.
   */
  molds?: Count
  /**
   * How long it sets; default: no longer than the hands take.
   */
  sets?: MeasuredAmount
  /**
   * How many shots.
   */
  shots: Count
  /**
   * Mass that one takes out of the pot, its sprue included.
   */
  takes: MeasuredAmount
}
/**
 * The softener that goes in with the salt.
 */
export interface SaltSoftenerEntry {
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * The softener.
   */
  material: MaterialEntry
  /**
   * Mass of softener as a share of the mass of salt. Example: `"50 %"`.
   */
  per_salt: Share
}
/**
 * What was made and used of a day's order list before its plan, where the plan is for the rest of it.
 */
export interface SoFarEntry {
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Leftovers that were used of the shelf, by name. Default: none. Example: `{ "dusk, March 1": "60 g" }`.
   */
  from_shelf?: {
    [k: string]: MeasuredAmount
  }
  /**
   * Pieces that are made, as order lines. Default: none. Example: `[{ "order": "31", "product": "dusk finger", "pieces": 16 }]`.
   */
  made?: OrderLine[]
  /**
   * Materials that were used of the stock, by name. Default: none. Example: `{ "clear-base": "792 g" }`.
   */
  used?: {
    [k: string]: MeasuredAmount
  }
}
/**
 * A ball that was timed as it sank in the melt, let go below its surface.
 */
export interface TimedBallEntry {
  /**
   * Its density: of steel 7.8 g/mL.
   */
  density: MeasuredAmount
  /**
   * How deep it sank.
   */
  depth: MeasuredAmount
  /**
   * Its diameter, much smaller than the vessel's.
   */
  diameter: MeasuredAmount
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * How long that took.
   */
  time: MeasuredAmount
}
/**
 * State of the air.
 */
export interface AirResponse {
  /**
   * The most that a true vacuum gauge shows there.
   */
  most_vacuum: Shown
  /**
   * Its pressure at the place itself.
   */
  pressure: Shown
  /**
   * Whether it is that of the standard atmosphere, which the weather moves by some 3 %.
   */
  standard: boolean
}
/**
 * How much to mix, and where it goes.
 */
export interface BatchResponse {
  /**
   * Mass of all shots.
   */
  drawn: Shown
  /**
   * Mass that stays in the cup: the heel, with the film in it.
   */
  in_cup: Shown
  /**
   * Mass that stays in the injector.
   */
  kept: Shown
  /**
   * Injector loads.
   */
  loads: number
  /**
   * Pieces that they make.
   */
  made: number
  /**
   * Mass of all pieces.
   */
  pieces: Shown
  /**
   * Mass of sprues that are melted again and shot.
   */
  returned: Shown
  /**
   * Shots.
   */
  shots: number
  /**
   * Whole shots in one injector load.
   */
  shots_per_load: number
  /**
   * Sprues that are left over.
   */
  sprues: Shown
  /**
   * The mass to mix.
   */
  total: Shown
}
/**
 * A mix that the pot could still become.
 */
export interface Becomes {
  /**
   * Total mass of the additions.
   */
  adds: Shown
  /**
   * Whether the cup holds it.
   */
  fits: boolean
  /**
   * By its formulas.
   */
  formulas: string[]
  /**
   * Mass of the pot then.
   */
  mass: Shown
  /**
   * The book's products that are shot with just these.
   */
  products: string[]
  /**
   * Its volume then, cold and liquid.
   */
  volume: Shown
}
/**
 * A number of the book that the days know better.
 */
export interface BookChange {
  /**
   * The value that the book and the days show together, with its standard uncertainty.
   */
  after: string
  /**
   * The book's value; none if the book has none.
   */
  before?: string | null
  /**
   * How many days it is from.
   */
  days: number
  /**
   * Whether a question below is about it: look at that first.
   */
  questioned: boolean
  /**
   * What it is: `drop of plum`.
   */
  what: string
  /**
   * Why, in a sentence, and what to ask yourself first.
   */
  why: string
  /**
   * The change to the book, as a JSON Patch (RFC 6902).
   */
  write: Change[]
}
/**
 * A change to a book: an operation of a JSON Patch (RFC 6902), which libraries of many languages apply.
 */
export interface Change {
  /**
   * The operation: `add`, which also replaces a value that is there.
   */
  op: string
  /**
   * Where, as a JSON Pointer into the book.
   */
  path: string
  /**
   * The new value.
   */
  value: {
    [k: string]: unknown
  }
}
/**
 * A day or a trend to look at.
 */
export interface BookQuestion {
  /**
   * What was seen, and what to do about it.
   */
  question: string
  /**
   * What it is about: `drop of plum`.
   */
  what: string
}
/**
 * Mass of one drop.
 */
export interface CalibrateDropResponse {
  /**
   * One drop with its standard uncertainty, as a book writes it.
   */
  drop: string
  /**
   * Its mass.
   */
  mass: Shown
  /**
   * A weighing that Grubbs' test questions; it is in the mean.
   */
  questioned?: string | null
  /**
   * Standard deviation of one drop against the next, as a share of its mass: what n drops carry by √n.
   */
  scatter: Shown
  /**
   * Its standard uncertainty: what n drops carry n-fold.
   */
  uncertainty: Shown
  /**
   * Changes to a book, as a JSON Patch (RFC 6902); empty if no material was named.
   */
  write: Change[]
}
/**
 * Residue of an injector.
 */
export interface CalibrateInjectorResponse {
  /**
   * Standard deviation of one emptying.
   */
  deviation: Shown
  /**
   * Its volume with its standard uncertainty, as a book writes it.
   */
  keeps: string
  /**
   * Its mass: what each cleaning and each cold stop loses.
   */
  mass: Shown
  /**
   * An emptying that Grubbs' test questions; it is in the mean.
   */
  questioned?: string | null
  /**
   * Its standard uncertainty.
   */
  uncertainty: Shown
  /**
   * Its volume.
   */
  volume: Shown
  /**
   * Changes to a book, as a JSON Patch (RFC 6902).
   */
  write: Change[]
}
/**
 * Result of the weights: the cavity, with `feed` known; the feed share, with `cavity` known.
 */
export interface CalibrateResponse {
  /**
   * Volume of the cavity with its standard uncertainty, as a book writes it.
   */
  cavity?: string | null
  /**
   * How many pieces were weighed.
   */
  count: number
  /**
   * Standard deviation of one.
   */
  deviation: Shown
  /**
   * Share of its contraction that a piece draws from the sprue.
   */
  feed?: Shown | null
  /**
   * Its standard uncertainty: from that of the mean, and the ± of densities and cavity.
   */
  feed_uncertainty?: Shown | null
  /**
   * Their mean.
   */
  mean: Shown
  /**
   * A weight that Grubbs' test questions; it is in the mean.
   */
  questioned?: string | null
  /**
   * Standard uncertainty of the mean: from their scatter, and from the rounding of the balance.
   */
  uncertainty: Shown
  /**
   * The volume of the cavity.
   */
  volume?: Shown | null
  /**
   * Its standard uncertainty: from that of the mean, the ± of densities, and `feed_uncertainty`.
   */
  volume_uncertainty?: Shown | null
  /**
   * Changes to a book, as a JSON Patch (RFC 6902); empty if no mold was named.
   */
  write: Change[]
}
/**
 * The density as scooped.
 */
export interface CalibrateSpoonResponse {
  /**
   * The density as scooped with its standard uncertainty, as a book writes it.
   */
  as_scooped: string
  /**
   * The density as scooped.
   */
  density: Shown
  /**
   * A weighing that Grubbs' test questions; it is in the mean.
   */
  questioned?: string | null
  /**
   * Standard deviation of one spoonful against the next, as a share of its mass.
   */
  scatter: Shown
  /**
   * Mass of one level spoonful.
   */
  spoonful: Shown
  /**
   * Its standard uncertainty.
   */
  uncertainty: Shown
  /**
   * Changes to a book, as a JSON Patch (RFC 6902); empty if no material was named.
   */
  write: Change[]
}
/**
 * One heat.
 */
export interface ClockHeat {
  /**
   * How many shots were made before it.
   */
  after: number
  /**
   * From the last burst to the last shot.
   */
  lasts: Shown
  /**
   * Mass in the pot at its start.
   */
  mass: Shown
  /**
   * How many shots are made in it.
   */
  shots: number
  /**
   * How much of the time that the pot stays hot that is.
   */
  used: Shown
}
/**
 * The heats of a pot.
 */
export interface ClockResponse {
  /**
   * Dangers.
   */
  cautions: Caution[]
  /**
   * The heats in their order.
   */
  heats: ClockHeat[]
  /**
   * How many of them are reheats.
   */
  reheats: number
  /**
   * All shots, without the oven.
   */
  shooting: Shown
  /**
   * All shots and the oven's time for each heat, where that is given.
   */
  total?: Shown | null
}
/**
 * Drops or spoons of one colorant.
 */
export interface ColorAddition {
  /**
   * How many drops, or how much by spoon.
   */
  amount: Amount
  /**
   * Their mass.
   */
  mass: Shown
  /**
   * Which.
   */
  material: string
  /**
   * The same by the drops to count or the spoons to take: `1/4 tsp + 1/8 tsp`.
   */
  measure: string
}
/**
 * How far apart they look.
 */
export interface ColorDifferenceResponse {
  /**
   * The color.
   */
  color: ShownLab
  /**
   * ΔE₀₀; about 1 is what a trained eye just sees side by side.
   */
  difference: number
  /**
   * The other color.
   */
  other_color: ShownLab
}
/**
 * A color in CIE L*a*b*.
 */
export interface ShownLab {
  /**
   * a*: green below zero, red above.
   */
  a: number
  /**
   * b*: blue below zero, yellow above.
   */
  b: number
  /**
   * L*: 0 for black, 100 for white.
   */
  lightness: number
}
/**
 * How far two pieces are apart in a light.
 */
export interface ColorInLight {
  /**
   * ΔE₀₀ in it.
   */
  difference: number
  /**
   * Metamerism index (CIE 15, change of light): ΔE*ab in it, once their difference in daylight is taken out.
   */
  index: number
  /**
   * The same as ΔE₀₀.
   */
  index_00: number
  /**
   * Which.
   */
  light: Light
}
/**
 * How far two pieces are apart in each light.
 */
export interface ColorLightsResponse {
  /**
   * ΔE₀₀ in daylight (D65).
   */
  daylight: number
  /**
   * The other lights.
   */
  lights: ColorInLight[]
  /**
   * How far to trust it, in words.
   */
  statement: string
  /**
   * The answer in short lines.
   */
  text: string[]
}
/**
 * A formula to begin with.
 */
export interface ColorMatchResponse {
  /**
   * Its ΔE₀₀ to the target.
   */
  difference: number
  /**
   * Drops of each colorant; those with none are left out.
   */
  drops: ColorantDrops[]
  /**
   * ΔE₀₀ to the target of the exact doses, before drops were made whole.
   */
  exact_difference: number
  /**
   * The color that the model expects.
   */
  expected: ShownLab
  /**
   * The greatest ΔE₀₀ between a test piece of these colorants and the model of it: the formula is
   * no surer than that.
   */
  fit: number
  /**
   * How far to trust it, in words.
   */
  statement: string
}
/**
 * The drops of one colorant.
 */
export interface ColorantDrops {
  /**
   * Whether that is more than its strongest test piece, where nothing is calibrated.
   */
  beyond_let_downs: boolean
  /**
   * Which.
   */
  colorant: string
  /**
   * Their mass per mass of base.
   */
  dose: Shown
  /**
   * Whole drops, for the base of the request.
   */
  drops: number
  /**
   * The same before drops were made whole.
   */
  exact: Shown
}
/**
 * Formulas by how near they are.
 */
export interface ColorNearestResponse {
  /**
   * Formulas of known color, the nearest first.
   */
  formulas: NearFormula[]
  /**
   * Formulas of which no color is known, each with the reason.
   */
  not_known: FormulaNotKnown[]
  /**
   * How far to trust it, in words.
   */
  statement: string
  /**
   * The answer in short lines.
   */
  text: string[]
}
/**
 * A formula and how near it is.
 */
export interface NearFormula {
  /**
   * Its color.
   */
  color: ShownLab
  /**
   * Its difference.
   */
  difference: ShownDifference
  /**
   * Which.
   */
  formula: string
  /**
   * What to know of it.
   */
  notes: Note[]
  /**
   * Its color as a piece that light goes through, if a thickness was stated and it can be calculated.
   */
  through?: ShownThrough | null
  /**
   * Whether a piece of it was seen; otherwise its color is calculated from test pieces.
   */
  was_seen: boolean
}
/**
 * A ΔE₀₀ with its band of error.
 */
export interface ShownDifference {
  /**
   * ΔE₀₀ between the two most likely colors.
   */
  difference: number
  /**
   * It is below this with 97.5 %.
   */
  high: number
  /**
   * How it looks, in words.
   */
  looks: string
  /**
   * It is above this with 97.5 %.
   */
  low: number
}
/**
 * The color of a piece that light goes through.
 */
export interface ShownThrough {
  /**
   * Its color over the black backing.
   */
  over_black: ShownLab
  /**
   * Standard uncertainties of its L*, a* and b*.
   *
   * @minItems 3
   * @maxItems 3
   */
  over_black_uncertainty: [number, number, number]
  /**
   * Its color over the white backing of the base's test piece.
   */
  over_white: ShownLab
  /**
   * Standard uncertainties of its L*, a* and b*.
   *
   * @minItems 3
   * @maxItems 3
   */
  over_white_uncertainty: [number, number, number]
  /**
   * ΔE₀₀ between the two: 0 where nothing shows through.
   */
  shows_through: number
  /**
   * How thick the piece is.
   */
  thickness: Shown
}
/**
 * A formula of which no color is known.
 */
export interface FormulaNotKnown {
  /**
   * Which.
   */
  formula: string
  /**
   * Why, and what would do.
   */
  why: string
}
/**
 * The next drops.
 */
export interface ColorNextResponse {
  /**
   * What to add now; empty if nothing.
   */
  add: ColorAddition[]
  /**
   * Its difference to the target.
   */
  after: ShownDifference
  /**
   * What would bring it all the way, if the model were right.
   */
  all_the_way: ColorAddition[]
  /**
   * The color that is expected once it is added.
   */
  expected: ShownLab
  /**
   * Standard uncertainties of its L*, a* and b*.
   *
   * @minItems 3
   * @maxItems 3
   */
  expected_uncertainty: [number, number, number]
  /**
   * Base to add first, if more base is needed; none if not even 20 such pots would do.
   */
  more_base?: Shown | null
  /**
   * What else to know of it.
   */
  notes: Note[]
  /**
   * Difference to the target now.
   */
  now: ShownDifference
  /**
   * How far to trust it, in words.
   */
  statement: string
  /**
   * ΔE₀₀ that is expected to stay, whatever is added.
   */
  stays_off: number
  /**
   * Strengths of the colorants in the cup, corrected by its samples.
   */
  strengths: ColorStrength[]
  /**
   * The answer in short lines.
   */
  text: string[]
  /**
   * The same once it is added.
   */
  through_after?: ShownThrough | null
  /**
   * Color of a piece of it now that light goes through, if its thickness was stated; `now` is for an opaque one.
   */
  through_now?: ShownThrough | null
  /**
   * The colorant that is too much already, if that is why more base is needed; else one drop of what is missing is too much.
   */
  too_much?: string | null
  /**
   * What to do.
   */
  verdict: Verdict
}
/**
 * Strength of a colorant as this cup has shown it, next to its test pieces.
 */
export interface ColorStrength {
  /**
   * Standard uncertainty that they have in common.
   */
  common: Shown
  /**
   * Factors on its effect in the red, the green and the blue.
   */
  factors: number[]
  /**
   * Which.
   */
  material: string
  /**
   * Standard uncertainty of each by itself.
   */
  own: Shown
  /**
   * The change to the book that keeps it, to accept or not.
   */
  write: Change[]
}
/**
 * A color as it was read.
 */
export interface ColorReadingResponse {
  /**
   * The color as books and requests take it, with its uncertainty next to readings taken in the same way; of a spectrum
   * with its bands, so that other lights can be asked for.
   */
  color: ColorEntry
  /**
   * The camera's curve by the steps of the card, in red, green and blue, of each picture; 1 with one step.
   */
  curves: [number, number, number][]
  /**
   * The same for a screen; none if no screen shows it.
   */
  hex?: string | null
  /**
   * The color.
   */
  lab: ShownLab
  /**
   * What would make it better.
   */
  notes: Note[]
  /**
   * Standard uncertainty of each of L*, a* and b* next to readings of another camera or instrument.
   */
  other_instrument: number
  /**
   * How far to trust it, in words.
   */
  statement: string
  /**
   * The answer in short lines.
   */
  text: string[]
}
/**
 * The amount in the unit that was asked for.
 */
export interface ConvertResponse {
  /**
   * As text that reads back: exactly where a decimal or a fraction over at most 1000 says it, else as `value`.
   */
  amount: string
  /**
   * The unit.
   */
  unit: string
  /**
   * The number.
   */
  value: number
}
/**
 * The setting of a shot.
 */
export interface CoolingResponse {
  /**
   * Whether it sets so fast that the time is too long: that of a Fourier number of 0.2.
   */
  bound: boolean
  /**
   * Dangers.
   */
  cautions: Caution[]
  /**
   * How often a shot can be made; none without the time at hand.
   */
  every?: Shown | null
  /**
   * How often the mold can be shot in a row before it is too warm, nothing lost between; none where its mass
   * is not given, or it goes on.
   */
  in_a_row?: number | null
  /**
   * The same with the lowest.
   */
  longest: Shown
  /**
   * The same with the highest diffusivity of soft PVC.
   */
  shortest: Shown
  /**
   * How long it sets, the mold as warm as the shot leaves it.
   */
  time: Shown
  /**
   * How much one shot warms the mold; none where its mass is not given.
   */
  warms?: Shown | null
}
/**
 * A pot that came out wrong, and the ways to go on with it.
 */
export interface CorrectResponse {
  /**
   * Other formulas of the book that it could become, the smallest addition first; empty if all is within tolerance.
   */
  becomes: Becomes[]
  /**
   * Dangers of adding to it.
   */
  cautions: Caution[]
  /**
   * Maximum fill of the cup.
   */
  cup: Shown
  /**
   * Why the pot cannot be made right.
   */
  fault?: Fault | null
  /**
   * Materials that do not belong.
   */
  foreign: MaterialMass[]
  /**
   * Whether fresh base may go in.
   */
  fresh_base: boolean
  /**
   * Whether it is hot.
   */
  hot: boolean
  /**
   * The mix in it as a formula, for the way that keeps it.
   */
  kept: KeptFormula
  /**
   * Mass of the pot.
   */
  mass: Shown
  /**
   * Ways that are not offered, and why.
   */
  not_offered: Note[]
  /**
   * The mix in the pot.
   */
  pot: PotMaterial[]
  /**
   * The answer in short lines.
   */
  text: string[]
  /**
   * Materials that do not belong, but are little enough to stay.
   */
  traces: MaterialMass[]
  /**
   * Its volume, cold and liquid.
   */
  volume: Shown
  /**
   * The ways, the smallest additions first; keeping it as it is comes last.
   */
  ways: RightWay[]
  /**
   * The change to the book that saves it under the name of `save_as`; empty without one.
   */
  write: Change[]
}
/**
 * One thing that is wrong with an input.
 */
export interface Fault {
  /**
   * Stable code in kebab case.
   */
  code: string
  /**
   * The fix.
   */
  help: string
  /**
   * The finding.
   */
  message: string
  /**
   * Where it is: a JSON Pointer (RFC 6901) into the document, empty for the whole input.
   */
  path: string
}
/**
 * A pot as a formula.
 */
export interface KeptFormula {
  /**
   * The formulas of the book that are the body in it; none if it is the default base alone, or `own_body`.
   */
  body: string[]
  /**
   * The color alone; none if there is no color in it.
   */
  color?: FormulaEntry | null
  /**
   * Rule to combine color and body with.
   */
  overlap: Overlap
  /**
   * The body in it, if the book does not have it.
   */
  own_body?: FormulaEntry | null
  /**
   * Amount of base that the doses are for.
   */
  per: Amount
}
/**
 * A material in the pot.
 */
export interface PotMaterial {
  /**
   * Why that is no fault: it went in on purpose, or is below its largest dose.
   */
  allowed?: string | null
  /**
   * How much of it.
   */
  mass: Shown
  /**
   * Which.
   */
  material: string
  /**
   * How far it is off per mass of base; none if the target lacks it or there is no base.
   */
  off?: Shown | null
}
/**
 * A way to go on with a pot.
 */
export interface RightWay {
  /**
   * Additions, in measures of the bench.
   */
  add: Weigh[]
  /**
   * Mass of all additions.
   */
  adds: Shown
  /**
   * What these cost; none if the book lacks a price.
   */
  cost?: MoneyShown | null
  /**
   * What to mind at the bench, each a sentence.
   */
  details: string[]
  /**
   * Mass of the pot then.
   */
  mass: Shown
  /**
   * How far each material is off per mass of base then, as the bench measures.
   */
  off: Off[]
  /**
   * All that is in the pot then, by material.
   */
  then: MaterialMass[]
  /**
   * Materials of which too little is missing for any tool; they keep their tolerance without it.
   */
  too_little: string[]
  /**
   * Its volume then, cold and liquid.
   */
  volume: Shown
  /**
   * Which.
   */
  way: WayKind
  /**
   * Whether all is within tolerance then.
   */
  within: boolean
}
/**
 * Its cost. `total` is `materials` − `credit` + `packing` + `work`, exactly.
 */
export interface CostResponse {
  /**
   * Worth of the mix that comes back.
   */
  credit: MoneyShown
  /**
   * Each material.
   */
  lines: MaterialCost[]
  /**
   * All materials, by what is used.
   */
  materials: MoneyShown
  /**
   * Price of a pack, for the margin that was stated.
   */
  pack_price?: MoneyShown | null
  /**
   * Packing.
   */
  packing: MoneyShown
  /**
   * Of one pack.
   */
  per_pack: MoneyShown
  /**
   * Of one piece.
   */
  per_piece: MoneyShown
  /**
   * Whole packages of all materials, as if there were no stock.
   */
  to_buy: MoneyShown
  /**
   * All of it.
   */
  total: MoneyShown
  /**
   * Work.
   */
  work: MoneyShown
}
/**
 * A pot in the vacuum, if no bubble bursts on the way: by the rise that was seen, or else by `entrained` at the
 * `least` pressure that the dial's tolerance allows.
 */
export interface DegasResponse {
  /**
   * Pressure left in the chamber; where the dial is too near its end, the middle between `least` and
   * `most`.
   */
  absolute: Shown
  /**
   * That the rise is assumed, and what to do then; absent where the rise or the air is given.
   */
  assumed?: Note | null
  /**
   * Dangers.
   */
  cautions: Caution[]
  /**
   * Share of air in the pot before the vacuum.
   */
  entrained: Shown
  /**
   * The level to fill the given vessel to at most, bubbles included.
   */
  fill_mark?: Shown | null
  /**
   * Number of fills of the given vessel.
   */
  fills?: number | null
  /**
   * How far the gauge must be off, since the air does not give what it shows.
   */
  gauge_off?: Shown | null
  /**
   * Lowest pressure that the dial's tolerance allows: 0 where the dial is too near its end.
   */
  least: Shown
  /**
   * Level of each fill, shared out evenly.
   */
  level?: Shown | null
  /**
   * Highest pressure that it allows.
   */
  most: Shown
  /**
   * Volume before the vacuum, bubbles included.
   */
  standing: Shown
  /**
   * Volume in the vacuum.
   */
  swollen: Shown
  /**
   * The vessel that takes it at once, to the brim.
   */
  vessel: Shown
}
/**
 * Mass of the amount.
 */
export interface DoseResponse {
  /**
   * Its mass.
   */
  mass: Shown
  /**
   * Whether it rests on the pharmacy's drop of 1/20 mL and not on the shop's own.
   */
  pharmacy_drop: boolean
}
/**
 * Particles and area of the dose, by the nominal size of the cut.
 */
export interface FlakeResponse {
  /**
   * The cut as it was read.
   */
  cut: string
  /**
   * Mass of the dose.
   */
  mass: Shown
  /**
   * Particles in the dose.
   */
  particles: number
  /**
   * Particles in a gram.
   */
  per_gram: number
  /**
   * Particles in a piece.
   */
  per_piece?: number | null
  /**
   * Whether its shape is taken to be a hexagon, the text naming none.
   */
  shape_assumed: boolean
  /**
   * Dose of the other flake in its place.
   */
  swap?: FlakeSwap | null
}
/**
 * A dose of another flake.
 */
export interface FlakeSwap {
  /**
   * Its film area over that of the first dose.
   */
  area: Shown
  /**
   * Its particles over those of the first dose.
   */
  count: Shown
  /**
   * Its cut as it was read.
   */
  cut: string
  /**
   * Mass to weigh.
   */
  mass: Shown
  /**
   * Volume to scoop, level, if its bulk density is known.
   */
  scoop?: Shown | null
}
/**
 * A recipe and the mix that it makes.
 */
export interface FormulaResponse {
  /**
   * Density of the finished plastic at 20 °C.
   */
  density: Shown
  /**
   * Mass of the mix.
   */
  mass: Shown
  /**
   * Materials to mix.
   */
  parts: RecipePart[]
  /**
   * Its volume cold and liquid.
   */
  volume: Shown
}
/**
 * One material of a recipe.
 */
export interface RecipePart {
  /**
   * How much of it.
   */
  mass: Shown
  /**
   * Which.
   */
  material: string
  /**
   * Its share of the finished mass.
   */
  of_finished: Shown
  /**
   * Mass per mass of base; of the base itself, its share.
   */
  ratio: number
}
/**
 * A ratio and the hardness that goes with it.
 */
export interface HardnessResponse {
  /**
   * Mass of softener or hardener per mass of base.
   */
  ratio: Shown
  /**
   * The reading.
   */
  reading: number
  /**
   * Its scale.
   */
  scale: Scale
}
/**
 * Heat of the pot. Without a budget only the heat spent is known.
 */
export interface HeatHistoryResponse {
  /**
   * Time that the plastisol withstands with its stabilizer.
   */
  budget?: Shown | null
  /**
   * Dangers.
   */
  cautions: Caution[]
  /**
   * This heat, as time at the reference temperature.
   */
  equivalent: Shown
  /**
   * All heats, this one included.
   */
  heats: number
  /**
   * The part of it that is left.
   */
  left?: Shown | null
  /**
   * Heat spent beyond it.
   */
  over?: Shown | null
  /**
   * Heat spent by all of them; unknown if earlier heats were not counted.
   */
  spent?: Shown | null
}
/**
 * A heating.
 */
export interface HeatResponse {
  /**
   * The table of readings, the coldest band first. The last band ends where shooting begins.
   */
  bands: HeatBand[]
  /**
   * How far the amount is outside those that were timed, as a factor.
   */
  beyond?: Shown | null
  /**
   * How many bursts are expected.
   */
  bursts: number
  /**
   * Dangers.
   */
  cautions: Caution[]
  /**
   * The temperature that it begins at, cooled as long as it stood.
   */
  from: Shown
  /**
   * Whether nothing was timed: all of this follows from the rated power, a first guess.
   */
  guess: boolean
  /**
   * Mass that is heated, all cups together.
   */
  load: Shown
  /**
   * How much more power than expected the bursts allow for.
   */
  margin: Shown
  /**
   * Why there is no time.
   */
  no_time?: string | null
  /**
   * The power that reaches mix and vessel.
   */
  power: Shown
  /**
   * Its standard uncertainty for one more heating.
   */
  power_uncertainty: Shown
  /**
   * Question about the timings: one does not fit the others, or ends far above the
   * window. It counts all the same.
   */
  questioned?: string | null
  /**
   * The setting of the oven that all of this holds for, as a share of full power.
   */
  setting: Shown
  /**
   * Shoot from this reading on.
   */
  shoot_from: Shown
  /**
   * Shoot up to this reading; above it, stop and let the pot cool.
   */
  shoot_to: Shown
  /**
   * How long it takes to the aim, without a break; none where it is hot already, or the amount too far from
   * those that were timed.
   */
  time?: Shown | null
  /**
   * How long the oven is expected to run in them altogether.
   */
  total: Shown
  /**
   * Its standard uncertainty for one more heating.
   */
  uncertainty?: Shown | null
}
/**
 * What the records say about the book: changes to accept one by one, and what to look at.
 */
export interface LearnResponse {
  /**
   * Changes to the book, each by itself.
   */
  changes: BookChange[]
  /**
   * What the days confirm: the estimate is within the ± of the book's value.
   */
  confirmed: string[]
  /**
   * Number of days that count.
   */
  days: number
  /**
   * The first of them; none if no day counts.
   */
  from?: string | null
  /**
   * What the days do not say yet: fewer than four of them, or readings that cannot be used.
   */
  not_yet: string[]
  /**
   * Days and trends to look at. They are in the estimates: nothing is dropped.
   */
  questions: BookQuestion[]
  /**
   * The last of them: give it as `after` next time, so that no day counts twice.
   */
  to?: string | null
}
/**
 * Use of the shelf.
 */
export interface LeftoversResponse {
  /**
   * Notes on the day's plan.
   */
  notes: Note[]
  /**
   * The pots that take of it.
   */
  pots: PotLeftOvers[]
  /**
   * The shelf, and what stays on it.
   */
  shelf: OnShelf[]
  /**
   * All that is used.
   */
  used: Shown
}
/**
 * A pot that takes left-overs.
 */
export interface PotLeftOvers {
  /**
   * Additions that are still needed, in measures of the bench.
   */
  add: Weigh[]
  /**
   * The formulas of its first stage.
   */
  formulas: string[]
  /**
   * Mix that goes in from the shelf.
   */
  from_shelf: FromShelf
  /**
   * Heats that the pot itself takes, beyond those that the left-overs have spent.
   */
  heats: number
  /**
   * Its letter in the day's plan.
   */
  pot: string
}
/**
 * Test pieces to pour.
 */
export interface LetDownSeriesResponse {
  /**
   * The pieces, the base alone first.
   */
  pieces: TestPieceToPour[]
  /**
   * How far to trust it, in words.
   */
  statement: string
  /**
   * The answer in short lines.
   */
  text: string[]
}
/**
 * A test piece to pour.
 */
export interface TestPieceToPour {
  /**
   * Base to weigh for it.
   */
  base_mass: Shown
  /**
   * Drops of the colorant; none in the base alone.
   */
  dose?: Amount | null
  /**
   * Mass of colorant per mass of base.
   */
  ratio: Shown
  /**
   * Standard uncertainty of that by the count of drops and the scale.
   */
  uncertainty: Shown
}
/**
 * An order line by now.
 */
export interface LineNow {
  /**
   * Its place in the lines of the new plan, counted from 1; none if the plan does not make any of it.
   */
  line?: number | null
  /**
   * Its pieces that are made.
   */
  made: number
  /**
   * Its pieces that are still owed.
   */
  owed: number
}
/**
 * Ways to measure a mass.
 */
export interface MeasureResponse {
  /**
   * The way to take: in the measure that the dose is written in, or another where that is surer. Where none
   * keeps the tolerance, the nearest that the bench can do.
   */
  best: Way
  /**
   * Why none keeps the tolerance, and what would do; absent where one does.
   */
  beyond?: Note | null
  /**
   * The others that keep it.
   */
  others: Way[]
  /**
   * The dose, as text.
   */
  wanted: string
}
/**
 * One material of a mix.
 */
export interface MixPart {
  /**
   * Its share of the mass.
   */
  mass_fraction: Shown
  /**
   * Which.
   */
  material: string
  /**
   * Its parts per hundred parts of base, by mass, where there is a base.
   */
  parts_per_hundred?: number | null
  /**
   * Its share of the volume at 20 °C.
   */
  volume_fraction: Shown
}
/**
 * The properties of a mix.
 */
export interface MixResponse {
  /**
   * Its density there, voids counted.
   */
  density: Shown
  /**
   * Its mass.
   */
  mass: Shown
  /**
   * Its parts, by material.
   */
  parts: MixPart[]
  /**
   * Its volume at the temperature asked for, without voids.
   */
  volume: Shown
}
/**
 * What to do with a pot that shows this reading.
 */
export interface NextBurstResponse {
  /**
   * The hottest possible reading after it. None of a plan that an older version stored.
   */
  at_most?: Shown | null
  /**
   * How long the oven runs.
   */
  burst?: Shown | null
  /**
   * Dangers.
   */
  cautions: Caution[]
  /**
   * The expected reading after it, at most: from the upper end of its band. None of a plan that an older version stored.
   */
  expected?: Shown | null
  /**
   * What to do.
   */
  go: AtReading
  /**
   * The pot is hot from this reading on.
   */
  hot_from?: Shown | null
  /**
   * And up to this one; above it, stop and let it cool.
   */
  hot_to?: Shown | null
  /**
   * The item of the step that this does; none while the pot cools.
   */
  item?: string | null
  /**
   * The sentence on the other scale, where it is not the same.
   */
  other?: string | null
  /**
   * The pot's letter.
   */
  pot: string
  /**
   * The reading, on the scale of the book.
   */
  reading: Shown
  /**
   * The scale of the sentence, where it reads otherwise on the other one.
   */
  scale?: TextScale | null
  /**
   * The same in a sentence.
   */
  text: string
}
/**
 * Pieces that are owed but cannot be made.
 */
export interface NotMade {
  /**
   * The reason, as a sentence.
   */
  because: string
  /**
   * The order.
   */
  order: string
  /**
   * Their number.
   */
  pieces: number
  /**
   * The product's name, or its formulas.
   */
  what: string
}
/**
 * A salt loading in every way to state it; those of a piece where a cavity was given.
 */
export interface SaltResponse {
  /**
   * Its volume as scooped, where that density of the salt is known.
   */
  as_scooped?: Shown | null
  /**
   * Density of the finished plastic at 20 °C, voids counted.
   */
  density: Shown
  /**
   * The dose of a formula: by spoons or cups where they hold it within 1 in 1000, else by weight. Example: `"2 tbsp"`.
   */
  dose: string
  /**
   * Mass of salt for the base of the request.
   */
  mass: Shown
  /**
   * Mass of salt per mass of base.
   */
  of_base: Shown
  /**
   * Mass of salt per finished mass.
   */
  of_finished: Shown
  /**
   * Mass of a piece; where the feed is not known, with a feed of 50 % as in plans.
   */
  piece?: Shown | null
  /**
   * The same fed in full, where the feed is not known.
   */
  piece_max?: Shown | null
  /**
   * The same without feed, where the feed is not known.
   */
  piece_min?: Shown | null
  /**
   * Mean density of a piece with its hook and weight.
   */
  sink_density?: Shown | null
  /**
   * Sink rate of the piece with its hook, where body and water were given.
   */
  sinks?: Calculated | null
  /**
   * Mass of softener that goes in with it.
   */
  softener: Shown
  /**
   * Sink rate of the same piece without salt.
   */
  unsalted_sinks?: Calculated | null
}
/**
 * The settling of grains.
 */
export interface SettlingResponse {
  /**
   * Dangers.
   */
  cautions: Caution[]
  /**
   * How fast in the thinnest.
   */
  fastest: Shown
  /**
   * How fast the grains sink in the thickest melt.
   */
  slowest: Shown
  /**
   * How often would do in the thickest.
   */
  stir_at_most: Shown
  /**
   * How often to stir in the thinnest melt: to be safe, that often.
   */
  stir_every: Shown
  /**
   * The viscosity that is calculated with: the lowest.
   */
  viscosity_from: Shown
  /**
   * Whether that is the whole range of what such melts may have, no viscosity being known.
   */
  viscosity_not_known: boolean
  /**
   * The highest.
   */
  viscosity_to: Shown
}
/**
 * The pieces of one shape.
 */
export interface ShotPieces {
  /**
   * Number that a shot makes.
   */
  count: number
  /**
   * Mass without feed, where the mold states no feed share; else as `weighs`.
   */
  from: Shown
  /**
   * The shape, in a mold with unlike cavities.
   */
  shape?: string | null
  /**
   * Mass fed as far as sprue and topping reach, where the mold states no feed share; else as `weighs`.
   */
  to: Shown
  /**
   * Its standard uncertainty by cavity and densities, where the mold states how sure the cavity is and
   * `cold_density` how sure it is; how far the piece is fed comes on top.
   */
  uncertainty?: Shown | null
  /**
   * Mass of one.
   */
  weighs: Shown
}
/**
 * Mass of a shot.
 */
export interface ShotResponse {
  /**
   * All of it.
   */
  fill: Shown
  /**
   * Mass that the sprue could not feed: the pieces sink in by it.
   */
  missing: Shown
  /**
   * Mass of all its pieces.
   */
  pieces: Shown
  /**
   * The pieces, by shape.
   */
  shapes: ShotPieces[]
  /**
   * Mass that stays as sprue.
   */
  sprue: Shown
}
/**
 * A fall, as a model has it: it lies between the two bounds.
 */
export interface SinkResponse {
  /**
   * Density of the piece, its salt and voids counted.
   */
  density: Shown
  /**
   * Standard uncertainty of that, where it was given: twice that to either side is in the bounds.
   */
  density_uncertainty?: Shown | null
  /**
   * Drag coefficient, on length times diameter of a stick and the cross-section of a ball.
   */
  drag_coefficient: number
  /**
   * Upper bound.
   */
  fastest: Shown
  /**
   * Whether it falls straight, as the model has it.
   */
  motion: Motion
  /**
   * Reynolds number.
   */
  reynolds: number
  /**
   * How fast it falls with its hook.
   */
  sink_rate: Shown
  /**
   * Lower bound.
   */
  slowest: Shown
  /**
   * Time to the depth asked for, from rest just below the surface.
   */
  time?: Shown | null
  /**
   * Density of the water.
   */
  water: Shown
}
/**
 * A source of uncertainty.
 */
export interface SourceShare {
  /**
   * Its part of the square of the uncertainty.
   */
  share: Shown
  /**
   * Which.
   */
  source: string
}
/**
 * How long a pot stays hot.
 */
export interface StaysHotResponse {
  /**
   * The temperature after the time it stood.
   */
  after?: Shown | null
  /**
   * How many times as long as the watch that time is: above 1 the temperature may be too cold, at 3 by up to
   * 3.5 K.
   */
  beyond?: Shown | null
  /**
   * Dangers.
   */
  cautions: Caution[]
  /**
   * The same with half of it.
   */
  half_full: Shown
  /**
   * How long it takes down to the lower temperature, with all of the mix in it.
   */
  hot_for: Shown
  /**
   * The time in which the distance to the room's temperature falls to 37 %.
   */
  time_constant: Shown
}
/**
 * A material in the cup of a trial.
 */
export interface TrialPart {
  /**
   * Its dose in the measure that it went in with; of the base, its part of `per`.
   */
  dose: Amount
  /**
   * How sure it is; none if the book lacks a number that this takes.
   */
  doubt?: Doubt | null
  /**
   * Its kind.
   */
  kind: Kind
  /**
   * How much of it is in the cup.
   */
  mass: Shown
  /**
   * Which.
   */
  material: string
  /**
   * How far the dose as written is off the cup, relative to it; 0 if it is exact.
   */
  off: Shown
  /**
   * What it belongs to.
   */
  side: TrialSide
}
/**
 * A trial as it is now, and the formula that it comes to.
 */
export interface TrialResponse {
  /**
   * The formulas of the book that are the body in the cup; none if it is the default base alone, or `own_body`.
   */
  body: string[]
  /**
   * The color alone, for any body; none if there is no color in the cup.
   */
  color?: FormulaEntry | null
  /**
   * The materials in the cup: the base, then the others by kind.
   */
  cup: TrialPart[]
  /**
   * Mass in the cup.
   */
  mass: Shown
  /**
   * Rule to combine color and body with: `add` if the color doses more of what the body has already.
   */
  overlap: Overlap
  /**
   * The body in the cup, if the book does not have it.
   */
  own_body?: FormulaEntry | null
  /**
   * Amount of base that the doses are for.
   */
  per: Amount
  /**
   * Mass that was taken out.
   */
  taken: Shown
  /**
   * The answer in short lines.
   */
  text: string[]
  /**
   * Its volume, cold and liquid.
   */
  volume: Shown
  /**
   * The change to the book under the name of `save_as`; empty without one.
   */
  write: Change[]
}
/**
 * A trouble and what helps.
 */
export interface TroubleRow {
  /**
   * What to add, in measures of the bench.
   */
  add: Weigh[]
  /**
   * What was calculated for this book and pot, each a sentence.
   */
  calculated: string[]
  /**
   * Likely causes, the likeliest first.
   */
  causes: string[]
  /**
   * Dangers.
   */
  cautions: Caution[]
  /**
   * What helps, each a sentence, in the order in which to try it.
   */
  helps: string[]
  /**
   * What could not be calculated, and what it takes.
   */
  not_calculated: Note[]
  /**
   * How it shows.
   */
  sign: string
  /**
   * Which.
   */
  trouble: Trouble
}
/**
 * Bench troubles and what helps.
 */
export interface TroublesResponse {
  /**
   * Where what is said comes from.
   */
  source: string
  /**
   * The answer in short lines.
   */
  text: string[]
  /**
   * Each trouble.
   */
  troubles: TroubleRow[]
}
/**
 * How sure a dose is.
 */
export interface UncertaintyResponse {
  /**
   * Weighing that would halve the uncertainty, if one does: of the larger source, or of both.
   */
  advice?: string | null
  /**
   * The same with the base weighed, where it is not and `readability` is given.
   */
  base_weighed?: Shown | null
  /**
   * The same with both weighed, where neither is and `readability` is given.
   */
  both_weighed?: Shown | null
  /**
   * Mass of the dose per mass of base.
   */
  ratio: Shown
  /**
   * Its standard uncertainty, relative to it.
   */
  relative: Shown
  /**
   * The half width that holds the true ratio with 95 %, relative to it.
   */
  relative_95: Shown
  /**
   * Sources of its uncertainty, the greatest first.
   */
  sources: SourceShare[]
  /**
   * Sources of whose uncertainty nothing is known: they count as exact.
   */
  unknown: string[]
  /**
   * The same with the dose weighed, where it is not and `readability` is given: its relative standard
   * uncertainty.
   */
  weighed?: Shown | null
}
/**
 * Volume that the water fills.
 */
export interface WaterResponse {
  /**
   * Its volume, with its standard uncertainty where `water` states one, as a book writes that of a cavity.
   */
  cavity: string
  /**
   * The density of water at that temperature.
   */
  density: Shown
  /**
   * Its standard uncertainty, where `water` states one.
   */
  uncertainty?: Shown | null
  /**
   * Its volume.
   */
  volume: Shown
  /**
   * Changes to a book, as a JSON Patch (RFC 6902); empty if no mold was named.
   */
  write: Change[]
}
/**
 * An amount in another unit.
 */
export interface ConvertRequest {
  /**
   * An amount as a person writes it: `1 1/4 cup`, `40 drops`, `330 °F`. Unit: none; 0 or above; a temperature above absolute zero.
   */
  amount: Amount
  calculate: 'convert'
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * The system of measures: what a cup, a spoon and a fluid ounce hold. Unit: none; us-customary, us-label, metric or imperial. Default: us-customary.
   */
  measures?: System
  /**
   * The unit of the answer, by trade symbol or UCUM code. Unit: none; a unit of the same dimension.
   */
  to: string
}
/**
 * The mass of an amount of a material.
 */
export interface DoseRequest {
  /**
   * An amount as a person writes it: `1 1/4 cup`, `40 drops`, `330 °F`. Unit: none; 0 or above; a temperature above absolute zero.
   */
  amount: Amount
  calculate: 'dose'
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * The material and its properties. Unit: none; as in a book.
   */
  material: MaterialEntry
  /**
   * The system of measures: what a cup, a spoon and a fluid ounce hold. Unit: none; us-customary, us-label, metric or imperial. Default: us-customary.
   */
  measures?: System
}
/**
 * Mass, volume, density and shares of a mix.
 */
export interface MixRequest {
  calculate: 'mix'
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Mass of each material in the mix. Unit: none; 0 or more each, g.
   */
  masses: {
    [k: string]: MeasuredAmount
  }
  /**
   * The materials by name. Unit: none; as in a book.
   */
  materials: {
    [k: string]: MaterialEntry
  }
  /**
   * The system of measures: what a cup, a spoon and a fluid ounce hold. Unit: none; us-customary, us-label, metric or imperial. Default: us-customary.
   */
  measures?: System
  /**
   * Whether the plastisol is liquid or fused. Unit: none; liquid or fused. Default: fused.
   */
  phase?: Phase
  /**
   * Temperature of the mix. Unit: °C; -73 to 427. Default: 20.
   */
  temperature?: MeasuredAmount
  /**
   * Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0.
   */
  voids?: Share
}
/**
 * Salt, from any way to state it to all others.
 */
export interface SaltRequest {
  /**
   * Density of the base, cold and liquid, as a cup measures it. Unit: g/mL; 0.001 to 25.
   */
  base_density: MeasuredAmount
  /**
   * Volume of the base, cold and liquid, as a cup measures it. Unit: mL; 1e-9 to 1e15.
   */
  base_volume: MeasuredAmount
  calculate: 'salt'
  /**
   * Volume of one cavity. Unit: mL; 1e-9 to 1e15.
   */
  cavity_volume?: MeasuredAmount
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Share of its contraction that a piece draws from the sprue while it cools. Where it is not known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). Unit: 1; 0 to 1. Default: 0.5.
   */
  feed?: Share
  /**
   * Mass of hook and weight on a piece; give its volume too. Unit: g; 0 to 1e15. Default: 0.
   */
  hook_mass?: MeasuredAmount
  /**
   * Volume that hook and weight displace; give their mass too. Unit: mL; 0 to 1e15. Default: 0.
   */
  hook_volume?: MeasuredAmount
  /**
   * Volume of the mix before salt at shot temperature; at least the cold one. Unit: mL; 1e-9 to 1e15. Default: as mix_volume.
   */
  hot_volume?: MeasuredAmount
  /**
   * The salt loading, stated in one of eight ways. Unit: none; exactly one of eight ways.
   */
  loading: LoadingEntry
  /**
   * The system of measures: what a cup, a spoon and a fluid ounce hold. Unit: none; us-customary, us-label, metric or imperial. Default: us-customary.
   */
  measures?: System
  /**
   * Mass of the mix before salt; at least that of its base. Give its volume too. Unit: g; 1e-12 to 1e15. Default: the mass of its base.
   */
  mix_mass?: MeasuredAmount
  /**
   * Volume of the mix before salt at 20 °C. Give its mass too. Unit: mL; 1e-9 to 1e15. Default: as base_volume.
   */
  mix_volume?: MeasuredAmount
  /**
   * Maximum share of salt in the finished mix, by true volume. Unit: 1; above 0 to below 1. Default: 0.3.
   */
  most_solids?: Share
  /**
   * The salt: its true density, its bulk density as scooped. Unit: none; as a material in a book.
   */
  salt: MaterialEntry
  /**
   * The softener that goes in with the salt. Unit: none; a material and its share of the salt. Default: none.
   */
  salt_softener?: SaltSoftenerEntry
  /**
   * Shape and size of the piece as it sinks, for its sink rate with and without the salt. Unit: none; a stick or a ball. Default: none.
   */
  salted_body?: BodyEntry
  /**
   * The water in which it sinks; needed with the body. Unit: none; 0 to 40 °C, salinity 0 to 42 g/kg. Default: none.
   */
  salted_water?: FishedWaterEntry
  /**
   * Temperature at which the mix is shot. Unit: °C; 20 to 427. Default: 20.
   */
  shot_temperature?: MeasuredAmount
  /**
   * Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0.
   */
  voids?: Share
}
/**
 * Softener for a hardness, or the hardness that it gives.
 */
export interface HardnessRequest {
  calculate: 'hardness'
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Durometer reading. Unit: 1; 0 to 100.
   */
  hardness?: number
  /**
   * The shop's own measured points, by rising ratio: of each the ratio and the durometer reading. Unit: none; 2 to 1000.
   */
  points: HardnessPointEntry[]
  /**
   * The scale of the durometer. Unit: none; shore-00 or shore-a.
   */
  scale: Scale
  /**
   * Softener or hardener, mass per mass of base; between the measured points. Unit: 1; 0 to 100.
   */
  softener_ratio?: Share
}
/**
 * Mass of a shot and of its pieces.
 */
export interface ShotRequest {
  calculate: 'shot'
  /**
   * Density of the finished plastic at 20 °C, without voids. Unit: g/mL; 0.001 to 25.
   */
  cold_density: MeasuredAmount
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Melt density at shot temperature, without voids; at most the cold one. Unit: g/mL; 0.001 to 25. Default: as cold_density.
   */
  hot_density?: MeasuredAmount
  /**
   * Share of the cavity that this layer of a laminated piece fills. Unit: 1; above 0 to 1. Default: 1.
   */
  layer_share?: Share
  /**
   * The system of measures: what a cup, a spoon and a fluid ounce hold. Unit: none; us-customary, us-label, metric or imperial. Default: us-customary.
   */
  measures?: System
  /**
   * The mold. Unit: none; as in a book.
   */
  mold: MoldEntry
}
/**
 * How much to mix for a number of pieces.
 */
export interface BatchRequest {
  calculate: 'batch'
  /**
   * Number of cavities that a shot fills. Unit: 1; 1 to 1000000.
   */
  cavities: number
  /**
   * Number of times the injector is cleaned or goes cold, the last time included. Unit: 1; 1 to 1000000. Default: 1.
   */
  cleanings?: number
  /**
   * Confidence that enough good pieces come out. Unit: 1; above 0 to 0.999999999. Default: 0.9.
   */
  confidence?: Share
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Volume that the injector takes up at most. Unit: mL; 1e-9 to 1e15.
   */
  injector_capacity: MeasuredAmount
  /**
   * Volume that stays in the injector each time it is emptied; below its capacity. Unit: mL; 0 to 1e15. Default: 0.
   */
  injector_residue?: MeasuredAmount
  /**
   * The system of measures: what a cup, a spoon and a fluid ounce hold. Unit: none; us-customary, us-label, metric or imperial. Default: us-customary.
   */
  measures?: System
  /**
   * Number of good pieces needed. Unit: 1; 1 to 1000000.
   */
  pieces: number
  /**
   * Mass that clings to the wall of the cup, part of the heel. Unit: g; 0 to 1e15. Default: 0.
   */
  pot_film?: MeasuredAmount
  /**
   * Mass that cannot be drawn from the cup, its film included. Unit: g; 0 to 1e15. Default: 0.
   */
  pot_heel?: MeasuredAmount
  /**
   * Share of pieces that are not fit to sell. Unit: 1; 0 to below 1. Default: 0.
   */
  rejects?: Share
  /**
   * Share of the sprues that is melted again. Unit: 1; 0 to 1. Default: 0.
   */
  returned?: Share
  /**
   * Density of what the injector draws: hot, voids counted. Unit: g/mL; 0.001 to 25.
   */
  shot_density: MeasuredAmount
  /**
   * Mass of one shot, sprue included. Unit: g; 1e-12 to 1e15.
   */
  shot_mass: MeasuredAmount
  /**
   * Mass of a shot that stays as sprue; at most the mass of the shot. Unit: g; 0 to 1e15. Default: 0.
   */
  sprue_mass?: MeasuredAmount
}
/**
 * The volume of a cavity from the water that it holds.
 */
export interface WaterRequest {
  /**
   * Air pressure at the balance, not reduced to sea level. Unit: kPa; 45 to 110. Default: 101.325.
   */
  air_pressure?: MeasuredAmount
  calculate: 'water'
  /**
   * The mold of a book that the answer is for; the answer then includes the change to that book. Unit: none; a name. Default: none.
   */
  calibrated_mold?: Name
  /**
   * The shape, where that mold has unlike cavities. Unit: none; a name. Default: none.
   */
  calibrated_shape?: Name
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * The system of measures: what a cup, a spoon and a fluid ounce hold. Unit: none; us-customary, us-label, metric or imperial. Default: us-customary.
   */
  measures?: System
  /**
   * Reading of the balance for the water in one cavity: filled less empty. Unit: g; 1e-12 to 1e15.
   */
  water_mass: MeasuredAmount
  /**
   * Temperature of the water. Unit: °C; 0 to 40.
   */
  water_temperature: MeasuredAmount
}
/**
 * Cavity or feed share of a mold, from weighed pieces.
 */
export interface CalibrateRequest {
  /**
   * Smallest difference that the balance shows; without it there is no balance. Unit: g; 1e-12 to 1e15. Default: none.
   */
  balance_readability: MeasuredAmount
  calculate: 'calibrate'
  /**
   * The mold of a book that the answer is for; the answer then includes the change to that book. Unit: none; a name. Default: none.
   */
  calibrated_mold?: Name
  /**
   * The shape, where that mold has unlike cavities. Unit: none; a name. Default: none.
   */
  calibrated_shape?: Name
  /**
   * Volume of one cavity. Unit: mL; 1e-9 to 1e15.
   */
  cavity_volume?: MeasuredAmount
  /**
   * Density of the finished plastic at 20 °C, without voids. Unit: g/mL; 0.001 to 25.
   */
  cold_density: MeasuredAmount
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Share of its contraction that a piece draws from the sprue while it cools. Where it is not known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). Unit: 1; 0 to 1. Default: 0.5.
   */
  feed?: Share
  /**
   * Standard uncertainty of the feed share, in points of it (10 %: 60 % is 50 % to 70 %). Unit: 1; 0 to 1. Default: 0.
   */
  feed_uncertainty?: Share
  /**
   * Melt density at shot temperature, without voids; at most the cold one. Unit: g/mL; 0.001 to 25. Default: as cold_density.
   */
  hot_density?: MeasuredAmount
  /**
   * The system of measures: what a cup, a spoon and a fluid ounce hold. Unit: none; us-customary, us-label, metric or imperial. Default: us-customary.
   */
  measures?: System
  /**
   * Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0.
   */
  voids?: Share
  /**
   * Mass of each piece, one by one. Unit: g; 2 to 100000.
   */
  weights: MeasuredAmount[]
}
/**
 * Mass of one drop, from counted drops.
 */
export interface CalibrateDropRequest {
  /**
   * Smallest difference that the balance shows; without it there is no balance. Unit: g; 1e-12 to 1e15. Default: none.
   */
  balance_readability: MeasuredAmount
  calculate: 'calibrate-drop'
  /**
   * The material of a book that the answer is for; the answer then includes the change to that book. Unit: none; a name. Default: none.
   */
  calibrated_material?: Name
  /**
   * Drops that were counted and weighed together, each weighing started over. Unit: none; 2 to 1000.
   */
  drops_weighed: CountedEntry[]
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * The system of measures: what a cup, a spoon and a fluid ounce hold. Unit: none; us-customary, us-label, metric or imperial. Default: us-customary.
   */
  measures?: System
}
/**
 * Bulk density of a powder as scooped, from level spoonfuls.
 */
export interface CalibrateSpoonRequest {
  /**
   * Smallest difference that the balance shows; without it there is no balance. Unit: g; 1e-12 to 1e15. Default: none.
   */
  balance_readability: MeasuredAmount
  calculate: 'calibrate-spoon'
  /**
   * The material of a book that the answer is for; the answer then includes the change to that book. Unit: none; a name. Default: none.
   */
  calibrated_material?: Name
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * The system of measures: what a cup, a spoon and a fluid ounce hold. Unit: none; us-customary, us-label, metric or imperial. Default: us-customary.
   */
  measures?: System
  /**
   * Level spoonfuls that were counted and weighed together, each weighing started over. Unit: none; 2 to 1000.
   */
  scoops_weighed: CountedEntry[]
  /**
   * Volume of the level spoon. Unit: mL; 1e-9 to 1e15.
   */
  spoon_volume: MeasuredAmount
}
/**
 * Volume that stays in an injector, from weighing it clean and emptied.
 */
export interface CalibrateInjectorRequest {
  /**
   * Smallest difference that the balance shows; without it there is no balance. Unit: g; 1e-12 to 1e15. Default: none.
   */
  balance_readability: MeasuredAmount
  calculate: 'calibrate-injector'
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Weighings of the injector, each clean and then emptied as at work. Unit: g; 2 to 1000.
   */
  injector_weighed: EmptiedEntry[]
  /**
   * The system of measures: what a cup, a spoon and a fluid ounce hold. Unit: none; us-customary, us-label, metric or imperial. Default: us-customary.
   */
  measures?: System
  /**
   * Density of what stays in the injector, at the temperature at which it is emptied; its uncertainty is counted. Unit: g/mL; 0.001 to 25.
   */
  residue_density: MeasuredAmount
}
/**
 * How sure a dose is, and what makes it unsure.
 */
export interface UncertaintyRequest {
  /**
   * Smallest difference that the balance shows; without it there is no balance. Unit: g; 1e-12 to 1e15. Default: none.
   */
  balance_readability?: MeasuredAmount
  /**
   * The material of the base and its properties. Unit: none; as in a book.
   */
  base_material: MaterialEntry
  calculate: 'uncertainty'
  /**
   * Distance between the marks of the cup. Unit: mL; 1e-9 to 1e15. Default: one mark alone, when it is full.
   */
  cup_mark?: MeasuredAmount
  /**
   * The dose as it is measured: weighed (a mass), by spoon (a volume) or in drops. Unit: none; above 0; g, mL or drops.
   */
  dose_amount: Amount
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * The material and its properties. Unit: none; as in a book.
   */
  material: MaterialEntry
  /**
   * The system of measures: what a cup, a spoon and a fluid ounce hold. Unit: none; us-customary, us-label, metric or imperial. Default: us-customary.
   */
  measures?: System
  /**
   * The base that the dose is for, as it is measured: weighed (a mass) or by cup (a volume). Unit: none; above 0, g or mL.
   */
  per_base: Amount
  /**
   * Volume of the spoon; the dose is a whole number of spoonfuls. Unit: mL; 1e-9 to 1e15. Default: the dose is one spoonful.
   */
  spoon?: MeasuredAmount
}
/**
 * A mass as the tools of a bench can give it.
 */
export interface MeasureRequest {
  /**
   * The tools on the bench. Unit: none; as in a book.
   */
  bench: BenchEntry
  calculate: 'measure'
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Mass to measure. Unit: g; 1e-12 to 1e15.
   */
  mass_to_measure: MeasuredAmount
  /**
   * The material and its properties. Unit: none; as in a book.
   */
  material: MaterialEntry
  /**
   * The system of measures: what a cup, a spoon and a fluid ounce hold. Unit: none; us-customary, us-label, metric or imperial. Default: us-customary.
   */
  measures?: System
  /**
   * Largest relative error that is accepted. Unit: 1; above 0 to below 1. Default: 0.05.
   */
  tolerance?: Share
  /**
   * Measure that the formula doses the material in. Unit: none; mass, volume or drops. Default: mass.
   */
  written_in?: WrittenIn
}
/**
 * Air pressure in the shop, and the maximum that a vacuum gauge can show there.
 */
export interface AirRequest {
  /**
   * Height above sea level, as a map gives it; negative below it. Unit: m; -5000 to 11000. Default: none.
   */
  altitude?: MeasuredAmount
  calculate: 'air'
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * The system of measures: what a cup, a spoon and a fluid ounce hold. Unit: none; us-customary, us-label, metric or imperial. Default: us-customary.
   */
  measures?: System
  /**
   * Air pressure as a weather report gives it, reduced to sea level; needs the altitude. Unit: kPa; 85 to 110. Default: none.
   */
  reported_pressure?: MeasuredAmount
  /**
   * Air pressure at the place itself, not reduced to sea level. Unit: kPa; 22.6 to 178.
   */
  station_pressure?: MeasuredAmount
}
/**
 * How far a pot swells under vacuum, and how full a vessel may be for it.
 */
export interface DegasRequest {
  /**
   * Height above sea level, as a map gives it; negative below it. Unit: m; -5000 to 11000. Default: none.
   */
  altitude?: MeasuredAmount
  calculate: 'degas'
  /**
   * Temperature of a damp pot, whose water boils under vacuum; omit it for a dry pot. Unit: °C; 0.01 to 200. Default: none.
   */
  damp_at?: MeasuredAmount
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Volume of the pot, cold and without air. Unit: mL; 1e-9 to 1e15.
   */
  liquid_volume: MeasuredAmount
  /**
   * The system of measures: what a cup, a spoon and a fluid ounce hold. Unit: none; us-customary, us-label, metric or imperial. Default: us-customary.
   */
  measures?: System
  /**
   * Air pressure at the place itself, not reduced to sea level. Unit: kPa; 22.6 to 178.
   */
  station_pressure?: MeasuredAmount
  /**
   * The vacuum, and what a pot does in it. Unit: none; as in a book.
   */
  vacuum: VacuumEntry
  /**
   * Volume of the vessel up to its brim. Unit: mL; 1e-9 to 1e15.
   */
  vessel_brim?: MeasuredAmount
  /**
   * Distance between the vessel's marks. Unit: mL; 1e-9 to 1e15. Default: any level.
   */
  vessel_mark?: MeasuredAmount
  /**
   * Share of the vessel that stays empty. Unit: 1; 0 to below 1. Default: 0.1.
   */
  vessel_spare?: Share
}
/**
 * How long a pot takes in the shop's own oven, and by which readings of the thermometer.
 */
export interface HeatRequest {
  /**
   * The temperature to heat to. Unit: °C; in the shot window. Default: the middle of the window.
   */
  aim?: MeasuredAmount
  /**
   * Shortest burst that can be set, of which the others are multiples. Unit: s; 1e-3 to 3600. Default: 5.
   */
  burst_step?: MeasuredAmount
  calculate: 'heat'
  /**
   * How such a pot was seen to cool, and how long this one has been out of the oven. Unit: none; about the same amount, in a cooler room. Default: none.
   */
  cooling?: CoolingEntry
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * The temperature before heating. Unit: °C; -73 to 427.
   */
  heated_from: MeasuredAmount
  /**
   * Further cups in the oven on the same clock. Unit: none; alike: the same vessel, amounts within 10 %, from the same temperature. Default: none.
   */
  heated_together?: LoadEntry[]
  /**
   * Longest burst without a stir, at least the shortest. Unit: s; 1e-3 to 3600. Default: 120.
   */
  longest_burst?: MeasuredAmount
  /**
   * The system of measures: what a cup, a spoon and a fluid ounce hold. Unit: none; us-customary, us-label, metric or imperial. Default: us-customary.
   */
  measures?: System
  /**
   * What is heated: a mass, or a volume cold and liquid. Unit: none; above 0, g or mL; beyond 1.6 times what was timed no time is given, and bursts are those of the safe side.
   */
  mix: Amount
  /**
   * Rated power of the oven, its output at full power: a first guess, not used once there are timings; needed without them. Unit: W; 50 to 10000. Default: none.
   */
  oven_power?: MeasuredAmount
  /**
   * How long a turn of full power and none takes at a setting below full power. Unit: s; 0 to 3600. Default: 30.
   */
  oven_turn?: MeasuredAmount
  /**
   * Setting of the oven, as a share of full power. Unit: 1; above 0 to 1. Default: that of the timings.
   */
  setting?: Percent
  /**
   * Lowest and highest temperature at which it is shot. Unit: none; the lower one first.
   *
   * @minItems 2
   * @maxItems 2
   */
  shot_window: [unknown, unknown]
  /**
   * Specific heat of the mix, its salt counted. Unit: J/(g.K); 0.1 to 10.
   */
  specific_heat: MeasuredAmount
  /**
   * Rise of the specific heat per kelvin, as a share of that at 25 °C, of what is heated and of what was timed. Unit: 1/K; -0.002 to 0.01. Default: 0.
   */
  specific_heat_rise?: MeasuredAmount
  /**
   * How far the thermometer may be off. Unit: K; 0 to 100. Default: 2.
   */
  thermometer?: MeasuredAmount
  /**
   * Density of the mix, cold and liquid; needed where a volume is given. Unit: g/mL; 0.001 to 25. Default: none.
   */
  timed_density?: MeasuredAmount
  /**
   * Specific heat of what was timed. Unit: J/(g.K); 0.1 to 10. Default: as specific_heat.
   */
  timed_specific_heat?: MeasuredAmount
  /**
   * Heatings that the shop has timed, all at one setting: of each the mass of the mix, the temperatures before and after and the time; needed without the rated power. Unit: none; 1 to 1000. Default: none.
   */
  timings?: TimingEntry[]
  /**
   * Mass of the vessel. Unit: g; 1e-12 to 1e15. Default: left to the timings.
   */
  vessel_mass?: MeasuredAmount
  /**
   * Specific heat of the vessel. Unit: J/(g.K); 0.1 to 10. Default: none.
   */
  vessel_specific_heat?: MeasuredAmount
}
/**
 * How long a pot stays hot.
 */
export interface StaysHotRequest {
  calculate: 'stays-hot'
  /**
   * A pot that was watched to cool: its amount, two readings and the time between them. Unit: none; the second reading lower, the room cooler than both. Default: none.
   */
  cools: CoolsEntry
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Temperature after the last burst. Unit: °C; -73 to 427.
   */
  hot_from: MeasuredAmount
  /**
   * What is in the pot: a mass, or a volume cold and liquid. Unit: none; above 0, g or mL.
   */
  hot_mix: Amount
  /**
   * Temperature down to which the pot can be shot, above that of the room. Unit: °C; -73 to 427.
   */
  hot_to: MeasuredAmount
  /**
   * The system of measures: what a cup, a spoon and a fluid ounce hold. Unit: none; us-customary, us-label, metric or imperial. Default: us-customary.
   */
  measures?: System
  /**
   * Temperature of the room, below all others. Unit: °C; -73 to 427. Default: 20.
   */
  room?: MeasuredAmount
  /**
   * How long the pot has stood. Unit: s; 0 to 1e15. Default: how hot it then is, is not calculated.
   */
  stood?: MeasuredAmount
  /**
   * Density of the mix, cold and liquid; needed where a volume is given. Unit: g/mL; 0.001 to 25. Default: none.
   */
  timed_density?: MeasuredAmount
}
/**
 * How long a shot sets in a metal mold, and how often one can be made.
 */
export interface CoolingRequest {
  calculate: 'cooling'
  /**
   * Thermal diffusivity of the plastic. Unit: m2/s; 1e-9 to 1e-5. Default: 8.0e-8 m2/s, from 6.5e-8 to 1.0e-7.
   */
  diffusivity?: MeasuredAmount
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Working time of a shot: fill, shoot, top off, take out. Unit: s; 1e-3 to 1e15. Default: how often a shot can be made is not calculated.
   */
  hands?: MeasuredAmount
  /**
   * The system of measures: what a cup, a spoon and a fluid ounce hold. Unit: none; us-customary, us-label, metric or imperial. Default: us-customary.
   */
  measures?: System
  /**
   * The mold: its temperature, that at which a piece is taken out, its mass. Unit: none; metal, cooler than the piece is taken out. Default: metal of 30 °C, taken out at 50 °C, so heavy that a shot does not warm it.
   */
  mold_cooling?: MoldCoolingEntry
  /**
   * Number of such molds that are shot in turn. Unit: 1; 1 to 1000000. Default: 1.
   */
  molds?: Count
  /**
   * The point of a piece whose temperature counts. Unit: none; center or mean. Default: center.
   */
  piece_point?: Point
  /**
   * The thickest part of a piece: a rod, a plate or a ball. Unit: none; 0.2 to 200 mm.
   */
  section: SectionEntry
  /**
   * Temperature at which it is shot, above that at which it is taken out. Unit: °C; -73 to 427.
   */
  shot_at: MeasuredAmount
  /**
   * Mass of one shot, sprue included. Unit: g; 1e-12 to 1e15.
   */
  shot_mass?: MeasuredAmount
  /**
   * Specific heat of the plastic. Unit: J/(g.K); 0.1 to 10. Default: 1.9.
   */
  shot_specific_heat?: MeasuredAmount
}
/**
 * How many heats the shots of a pot take, and where the reheats are.
 */
export interface ClockRequest {
  calculate: 'clock'
  /**
   * Temperature after the last burst; needed with `cools`. Unit: °C; -73 to 427. Default: none.
   */
  clock_from?: MeasuredAmount
  /**
   * What is in the pot for its first heat: a mass, or a volume cold and liquid. Unit: none; at least what its shots take, g or mL.
   */
  clock_mix: Amount
  /**
   * The pot's shots in their order, like ones together: of each run the number of shots, the mass that one takes, the working time for one, the time that it sets and the number of molds in turn. At most 100 000 shots. Unit: none; 1 to 1000.
   */
  clock_runs: RunEntry[]
  /**
   * Temperature down to which the pot can be shot, above that of the room; needed with `cools`. Unit: °C; -73 to 427. Default: none.
   */
  clock_to?: MeasuredAmount
  /**
   * A pot that was watched to cool: its amount, two readings and the time between them. Unit: none; the second reading lower, the room cooler than both. Default: none.
   */
  cools?: CoolsEntry
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * How long the pot stays hot at one heat, from the last burst to the last shot. Unit: s; 1e-3 to 1e15. Default: from how it cools.
   */
  hot_for?: MeasuredAmount
  /**
   * The system of measures: what a cup, a spoon and a fluid ounce hold. Unit: none; us-customary, us-label, metric or imperial. Default: us-customary.
   */
  measures?: System
  /**
   * How long the oven runs for one heat. Unit: s; 0 to 1e15. Default: it is not counted.
   */
  oven_time?: MeasuredAmount
  /**
   * Temperature of the room, below all others. Unit: °C; -73 to 427. Default: 20.
   */
  room?: MeasuredAmount
  /**
   * Density of the mix, cold and liquid; needed where a volume is given. Unit: g/mL; 0.001 to 25. Default: none.
   */
  timed_density?: MeasuredAmount
}
/**
 * How fast salt settles in a pot, and how often to stir.
 */
export interface SettlingRequest {
  calculate: 'settling'
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Size of a grain of salt: the opening of a sieve that it just passes. Unit: mm; 0.001 to 50.
   */
  grain: MeasuredAmount
  /**
   * True density of the grains, above that of the melt. Unit: g/mL; 0.001 to 25.
   */
  grain_density: MeasuredAmount
  /**
   * The system of measures: what a cup, a spoon and a fluid ounce hold. Unit: none; us-customary, us-label, metric or imperial. Default: us-customary.
   */
  measures?: System
  /**
   * Density of the melt, hot. Unit: g/mL; 0.001 to 25.
   */
  melt_density: MeasuredAmount
  /**
   * Depth of the melt in its cup. Unit: mm; 0.1 to 10000.
   */
  melt_depth: MeasuredAmount
  /**
   * Share of the grains in the volume; at 0 one grain alone. Unit: 1; 0 to 0.4. Default: 0.
   */
  solids_share?: Share
  /**
   * A ball that was timed as it sank in the melt, in place of the viscosity. Unit: none; sinking at a Reynolds number below 800. Default: none.
   */
  timed_ball?: TimedBallEntry
  /**
   * Share of the depth that may be without grains before it is stirred. Unit: 1; 0.001 to 1. Default: 0.1.
   */
  unstirred?: Share
  /**
   * Lowest and highest viscosity of the melt at shot temperature. Unit: none; 0.0001 to 10 000 Pa.s, the lower one first. Default: by the ball, else all that such melts may have, 0.05 to 5 Pa.s.
   *
   * @minItems 2
   * @maxItems 2
   */
  viscosity?: [unknown, unknown]
}
/**
 * Heat history of a pot, and the heat budget that is left.
 */
export interface HeatHistoryRequest {
  /**
   * Activation energy of the decay in the heat; state its source in a book. Unit: kJ/mol; 10 to 500.
   */
  activation_energy: Sourced
  /**
   * Stabilizer that the heat budget is stated for, by mass of base. Unit: 1; 0 to 1. Default: 0.
   */
  budget_with?: Share
  /**
   * Heat that more of the stabilizer buys. Unit: none; as of a material in a book. Default: none.
   */
  buys?: BuysEntry
  calculate: 'heat-history'
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Time at the reference temperature that the plastisol withstands. Unit: s; 1e-6 to 1e15. Default: none.
   */
  heat_budget?: MeasuredAmount
  /**
   * Number of earlier heats. Unit: 1; 0 to 1000000. Default: 0.
   */
  heats_before?: Count
  /**
   * The system of measures: what a cup, a spoon and a fluid ounce hold. Unit: none; us-customary, us-label, metric or imperial. Default: us-customary.
   */
  measures?: System
  /**
   * Temperatures in the order of time, taken as straight between. Unit: none; 2 to 100000.
   */
  readings: ReadingEntry[]
  /**
   * Temperature at which the time is counted. Unit: °C; -73 to 427.
   */
  reference_temperature: MeasuredAmount
  /**
   * Equivalent time of the earlier heats; above 0 only with heats_before. Unit: s; 0 to 1e15. Default: not known after earlier heats.
   */
  spent_before?: MeasuredAmount
  /**
   * Stabilizer in the mix, by mass of base. Unit: 1; 0 to 1. Default: as budget_with.
   */
  stabilizer_dose?: Share
}
/**
 * Sink rate of a piece, and the density for a sink rate.
 */
export interface SinkRequest {
  /**
   * Shape and size of the piece as it sinks. Unit: none; a stick or a ball.
   */
  body: BodyEntry
  calculate: 'sink'
  /**
   * Depth to give the sink time for. Unit: m; 1e-9 to 12000. Default: none.
   */
  depth?: MeasuredAmount
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * The water. Unit: none; 0 to 40 °C, salinity 0 to 42 g/kg.
   */
  fished_water: FishedWaterEntry
  /**
   * Hook and weight on the piece. Unit: none; mass and volume. Default: none.
   */
  hook?: HookEntry
  /**
   * The system of measures: what a cup, a spoon and a fluid ounce hold. Unit: none; us-customary, us-label, metric or imperial. Default: us-customary.
   */
  measures?: System
  /**
   * Density of the piece, its salt and voids counted. Unit: g/mL; 0.001 to 25.
   */
  piece_density?: MeasuredAmount
  /**
   * Volume of the piece without its hook. Unit: mL; 1e-9 to 1e15.
   */
  piece_volume: MeasuredAmount
  /**
   * Sink rate: the final speed of the piece. Unit: cm/s; 1e-9 to 1e6.
   */
  sink_rate?: MeasuredAmount
}
/**
 * Number of particles in a dose of flake, and the dose of another cut in its place.
 */
export interface FlakeRequest {
  /**
   * What the two doses of flake have in common: the number of particles or the area of film. Unit: none; count or area. Default: area.
   */
  alike?: Alike
  calculate: 'flake'
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Finished mass that contains the dose of flake. Unit: g; 1e-12 to 1e15.
   */
  finished_mass?: MeasuredAmount
  /**
   * The flake: its cut, the thickness of its film, its density. Unit: none; as a material in a book.
   */
  flake: MaterialEntry
  /**
   * Mass of the dose of flake. Unit: g; 1e-12 to 1e15.
   */
  flake_dose: Amount
  /**
   * The system of measures: what a cup, a spoon and a fluid ounce hold. Unit: none; us-customary, us-label, metric or imperial. Default: us-customary.
   */
  measures?: System
  /**
   * The flake that takes its place. Unit: none; as a material in a book. Default: none.
   */
  other_flake?: MaterialEntry
  /**
   * Mass of one piece; at most the finished mass. Unit: g; 1e-12 to 1e15.
   */
  piece_mass?: MeasuredAmount
}
/**
 * How far apart two colors look.
 */
export interface ColorDifferenceRequest {
  calculate: 'color-difference'
  /**
   * A color, as lab, srgb, hex or bands. Unit: none; a color.
   */
  color: ColorEntry
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * A color, as lab, srgb, hex or bands. Unit: none; a color.
   */
  other_color: ColorEntry
}
/**
 * A formula to begin with for a wanted color.
 */
export interface ColorMatchRequest {
  /**
   * Color of the base without colorants, poured as a test piece. Unit: none; a color.
   */
  base_color: ColorEntry
  /**
   * Mass of base that the formula is for. Unit: g; 1e-12 to 1e15.
   */
  base_mass: MeasuredAmount
  calculate: 'color-match'
  /**
   * The colorants by name, each with its test pieces. Unit: none; one or more.
   */
  colorants: {
    [k: string]: ColorantEntry
  }
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * The system of measures: what a cup, a spoon and a fluid ounce hold. Unit: none; us-customary, us-label, metric or imperial. Default: us-customary.
   */
  measures?: System
  /**
   * The color to match. Unit: none; a color.
   */
  target: ColorEntry
}
/**
 * A color from pictures with a card, or from an instrument.
 */
export interface ColorReadingRequest {
  calculate: 'color-reading'
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Reading of an instrument, or of a picture that was balanced already. Unit: none; a color. Default: none; then pictures.
   */
  instrument?: ColorEntry
  /**
   * Pictures of the piece with a white or gray card in each, by the statistics of their pixels. Unit: none; one or a list. Default: none; then an instrument's reading.
   */
  pictures?: PictureEntry | PictureEntry[]
}
/**
 * How far two pieces are apart in other lights than daylight.
 */
export interface ColorLightsRequest {
  calculate: 'color-lights'
  /**
   * A color, as lab, srgb, hex or bands. Unit: none; a color.
   */
  color: ColorEntry
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * A color, as lab, srgb, hex or bands. Unit: none; a color.
   */
  other_color: ColorEntry
}
/**
 * Recipe of formulas for an amount of base or of finished mix.
 */
export interface FormulaRequest {
  /**
   * The base to make the formula for. Unit: none; above 0, mL or g. Default: the formula's own `per`.
   */
  base_amount?: Amount
  /**
   * The shop's book. Unit: none; a book document. Default: the open book; required without one.
   */
  book?: BookDocument
  calculate: 'formula'
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * The finished mix to make: its mass, or its volume cold and liquid. Unit: none; above 0, g or mL. Default: none.
   */
  finished_amount?: Amount
  /**
   * The formulas that are combined, by name. Unit: none; formulas of the book.
   */
  formulas: Name[]
  /**
   * What happens where two of the formulas dose the same material. Unit: none; refuse, add or last. Default: refuse.
   */
  overlap?: Overlap
}
/**
 * Cost of an amount of a formula, of its packs and pieces.
 */
export interface CostRequest {
  /**
   * The base to make the formula for. Unit: none; above 0, mL or g. Default: the formula's own `per`.
   */
  base_amount?: Amount
  /**
   * The shop's book. Unit: none; a book document. Default: the open book; required without one.
   */
  book?: BookDocument
  calculate: 'cost'
  /**
   * Share of the price that the shop keeps (a markup on the cost is another thing). Without it there is no price. Unit: 1; 0 to below 1. Default: none.
   */
  cost_margin?: Share
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * The finished mix to make: its mass, or its volume cold and liquid. Unit: none; above 0, g or mL. Default: none.
   */
  finished_amount?: Amount
  /**
   * The formulas that are combined, by name. Unit: none; formulas of the book.
   */
  formulas: Name[]
  /**
   * Number of good pieces that are made. Unit: 1; 1 to 1000000. Default: 1.
   */
  made?: number
  /**
   * What happens where two of the formulas dose the same material. Unit: none; refuse, add or last. Default: refuse.
   */
  overlap?: Overlap
  /**
   * What goes into each pack. Unit: none; a price per pieces, and the number of pieces in a pack. Default: none.
   */
  packing?: PackingEntry[]
  /**
   * Number of packs for the pieces; at most one for each piece. Unit: 1; 1 to 1000000. Default: 1.
   */
  packs?: number
  /**
   * Mass of the mix that comes back: sprue that is melted again, leftover that is kept; at most the mass of the mix. Unit: g; 0 to 1e15. Default: 0.
   */
  returned_mass?: MeasuredAmount
  /**
   * Share of its material cost that it is still worth. Unit: 1; 0 to 1. Default: 1.
   */
  returned_worth?: Share
  /**
   * The rate of work, such as `18.00 USD per 1 h`; needed where work_time is given. Unit: none; a price per time. Default: none.
   */
  work_rate?: Price
  /**
   * Time that the work takes. Unit: s; 0 to 1e15. Default: 0.
   */
  work_time?: MeasuredAmount
}
/**
 * Fix for a pot that came out wrong.
 */
export interface CorrectRequest {
  /**
   * Name to save the body under, if the book does not have it. Unit: none; a name. Default: that of `save_as` with `body` after it.
   */
  body_as?: Name
  /**
   * The shop's book. Unit: none; a book document. Default: the open book; required without one.
   */
  book?: BookDocument
  calculate: 'correct'
  /**
   * Volume that the cup may hold. Unit: mL; above 0. Default: the book's largest cup, as full as its limits allow.
   */
  cup?: MeasuredAmount
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * The formulas that are combined, by name. Unit: none; formulas of the book.
   */
  formulas?: Name[]
  /**
   * Whether the pot is hot. Unit: none; true or false. Default: by the step; false for formulas.
   */
  hot?: boolean
  /**
   * What went in instead of what was meant: `twice`, `half`, `3 times`, `none`, `+ 10 drops`, `- 3 g`, or an amount. Unit: none; a multiple, a difference or an amount by material, or by a kind of which one material is in the pot.
   */
  instead: {
    [k: string]: Instead
  }
  /**
   * What went in otherwise on purpose: no fault at all. Unit: none; materials, or kinds of which one material is in the pot. Default: none.
   */
  on_purpose?: Name[]
  /**
   * What happens where two of the formulas dose the same material. Unit: none; refuse, add or last. Default: refuse.
   */
  overlap?: Overlap
  /**
   * The plan of the day, as the library made it. Unit: none; a plan. Default: the open plan; required without one.
   */
  plan?: PlanDocument
  /**
   * The pot of the open plan; without it `formulas` say what the pot was meant to be. Unit: none; the letter of a pot of the plan. Default: none.
   */
  pot?: Name
  /**
   * The base that the pot was meant for: what `instead` does not name then went in as the formulas have it. Unit: none; above 0, mL or g. Default: `instead` names everything in the pot, each with its amount.
   */
  pot_base?: Amount
  /**
   * Whether a formula that has the name already is replaced. Unit: none; true or false. Default: false.
   */
  replace?: boolean
  /**
   * Name to save the formula under; the answer then includes the change to the book. Unit: none; a name. Default: none.
   */
  save_as?: Name
  /**
   * Which stage of the pot, counted from 1. Unit: 1; 1 to 1000. Default: 1.
   */
  stage?: number
  /**
   * The step of the plan at which it happened, in place of pot and stage. Unit: none; the id of a step of the plan. Default: by pot and stage.
   */
  step?: Name
  /**
   * What is still in the cup, as its mass or its volume cold and liquid, where some of the pot has been shot. Unit: none; above 0, at most all of it; g or mL. Default: all of it.
   */
  still_there?: Amount
  /**
   * Share of the pot's mass up to which a material that does not belong in it is ignored. Unit: 1; 0 to 1. Default: 0.
   */
  trace?: Share
}
/**
 * Leftovers of the shelf that go into a day's pots.
 */
export interface LeftoversRequest {
  /**
   * The shop's book. Unit: none; a book document. Default: the open book; required without one.
   */
  book?: BookDocument
  calculate: 'leftovers'
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * The order list. Unit: none; an orders document.
   */
  orders: OrdersDocument
}
/**
 * A day's plan from a book and an order list.
 */
export interface PlanRequest {
  /**
   * The shop's book. Unit: none; a book document. Default: the open book; required without one.
   */
  book?: BookDocument
  /**
   * What the plan may take before it is refused. Unit: none; maximum pots and work of the plan. Default: 5000 pots and 10 million steps.
   */
  budget?: BudgetEntry2
  calculate: 'plan'
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * The order list. Unit: none; an orders document.
   */
  orders: OrdersDocument
}
/**
 * Quote for an order list: pots, parcels, stock and cost of its plan.
 */
export interface QuoteRequest {
  /**
   * The shop's book. Unit: none; a book document. Default: the open book; required without one.
   */
  book?: BookDocument
  /**
   * What the plan may take before it is refused. Unit: none; maximum pots and work of the plan. Default: 5000 pots and 10 million steps.
   */
  budget?: BudgetEntry2
  calculate: 'quote'
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * The order list. Unit: none; an orders document.
   */
  orders: OrdersDocument
}
/**
 * The record of a day: a plan with the masses and shots that were made.
 */
export interface RecordRequest {
  /**
   * Masses that were weighed and shots that were made. Unit: none; an actuals document.
   */
  actuals: ActualsDocument
  /**
   * The shop's book. Unit: none; a book document. Default: the open book; required without one.
   */
  book?: BookDocument
  calculate: 'record'
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * The plan of the day, as the library made it. Unit: none; a plan. Default: the open plan; required without one.
   */
  plan?: PlanDocument
}
/**
 * The rest of a day: a new plan from the pots that are there and what is still owed.
 */
export interface GoOnRequest {
  /**
   * The shop's book. Unit: none; a book document. Default: the open book; required without one.
   */
  book?: BookDocument
  /**
   * Cups that cannot be used any more. Unit: none; capacities of the bench's cups. Default: none.
   */
  broken_cups?: MeasuredAmount[]
  /**
   * Molds that cannot be used any more; what is owed of them is reported as not made. Unit: none; molds of the book. Default: none.
   */
  broken_molds?: Name[]
  calculate: 'go-on'
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Pieces that are fit to sell so far. Unit: none; order lines, counted from 1, each with a number of pieces. Default: as planned.
   */
  good_pieces?: GoodEntry[]
  /**
   * Order lines that came in since. Unit: none; order lines. Default: none.
   */
  more_lines?: OrderLine[]
  /**
   * The order list of the whole day as it is by now; what is made and used of it is taken off. Unit: none; an orders document. Default: that of the plan.
   */
  orders_now?: OrdersDocument
  /**
   * The plan of the day, as the library made it. Unit: none; a plan. Default: the open plan; required without one.
   */
  plan?: PlanDocument
  /**
   * The pots that are begun, and others that are there, as they are now. Unit: none; pots by letter. Default: none is begun, but for ticks.
   */
  pots_now?: {
    [k: string]: PotNowEntry
  }
  /**
   * What was made and used of `orders_now` before the plan. Unit: none; what the answer before gave. Default: nothing, the plan is that of the whole list.
   */
  so_far?: SoFarEntry
  /**
   * Steps, or items of steps, that are done; `pots_now` overrides them. Unit: none; ids of the plan's steps or of their items. Default: none.
   */
  ticks?: Name[]
}
/**
 * The next burst of a heat of the plan, for what the thermometer shows.
 */
export interface NextBurstRequest {
  /**
   * The shop's book. Unit: none; a book document. Default: the open book; required without one.
   */
  book?: BookDocument
  calculate: 'next-burst'
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * The heat of the plan that the pot is at. Unit: none; the id of a step of the plan that heats.
   */
  heat_step: Name
  /**
   * The plan of the day, as the library made it. Unit: none; a plan. Default: the open plan; required without one.
   */
  plan?: PlanDocument
  /**
   * Reading of the thermometer, in the stirred mix. Unit: °C; -73 to 427.
   */
  reading: MeasuredAmount
}
/**
 * A color found by eye: the formula that a trial's log comes to.
 */
export interface TrialRequest {
  /**
   * Name to save the body under, if the book does not have it. Unit: none; a name. Default: that of `save_as` with `body` after it.
   */
  body_as?: Name
  /**
   * The shop's book. Unit: none; a book document. Default: the open book; required without one.
   */
  book?: BookDocument
  calculate: 'trial'
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Amount of base to write the formula for. Unit: none; above 0, mL or g. Default: that of the formulas it started from, else that of most formulas of the book.
   */
  per?: Amount
  /**
   * Whether a formula that has the name already is replaced. Unit: none; true or false. Default: false.
   */
  replace?: boolean
  /**
   * Name to save the formula under; the answer then includes the change to the book. Unit: none; a name. Default: none.
   */
  save_as?: Name
  /**
   * The trial: what it started from, and what was added and taken since. Unit: none; a start and a log.
   */
  trial: TrialEntry
}
/**
 * Bench troubles and what helps, calculated where it can be.
 */
export interface TroublesRequest {
  /**
   * The base in the pot, cold and liquid as a cup measures it, or weighed. Unit: none; above 0, mL or g. Default: that of the pot of the plan; else amounts are not calculated.
   */
  base_in_pot?: Amount
  /**
   * The shop's book. Unit: none; a book document. Default: the open book; required without one.
   */
  book?: BookDocument
  calculate: 'troubles'
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Reading of a piece from the pot, on the scale of the book's points. Unit: 1; 0 to 100. Default: none.
   */
  hardness_now?: number
  /**
   * Reading that is wanted, on that scale. Unit: 1; 0 to 100. Default: none.
   */
  hardness_wanted?: number
  /**
   * The plan of the day, as the library made it. Unit: none; a plan. Default: the open plan; required without one.
   */
  plan?: PlanDocument
  /**
   * The pot of the open plan; without it `formulas` say what the pot was meant to be. Unit: none; the letter of a pot of the plan. Default: none.
   */
  pot?: Name
  /**
   * Which stage of the pot, counted from 1. Unit: 1; 1 to 1000. Default: 1.
   */
  stage?: number
  /**
   * The trouble. Unit: none; a trouble by its word. Default: all of them.
   */
  trouble?: Trouble
  /**
   * What to soften or harden with. Unit: none; a softener or hardener of the book. Default: the first by name that the book has readings of.
   */
  with_material?: Name
}
/**
 * What the records of many days say about the numbers of a book.
 */
export interface LearnRequest {
  /**
   * Only records of later days count: the last day that the book has learned from. Unit: none; a date. Default: none.
   */
  after?: string
  /**
   * The shop's book. Unit: none; a book document. Default: the open book; required without one.
   */
  book?: BookDocument
  calculate: 'learn'
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Records of days, as the calculation `record` answers them; their order does not matter. Unit: none; a list of records.
   */
  records: Record[]
}
/**
 * The next drops that bring a cup nearer to a color.
 */
export interface ColorNextRequest {
  /**
   * The shop's book. Unit: none; a book document. Default: the open book; required without one.
   */
  book?: BookDocument
  calculate: 'color-next'
  /**
   * Difference in ΔE₀₀ that is close enough; about 1 is what a trained eye just sees side by side. Unit: 1; 0.1 to 20. Default: 1.
   */
  close_enough?: number
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Colorants that may not go in. Unit: none; colorants of the book. Default: none.
   */
  leave_out?: Name[]
  /**
   * The mold of the piece: its section or its bodies say how thick the piece is, in place of `piece_thickness`. Unit: none; a mold of the book. Default: none.
   */
  piece_mold?: Name
  /**
   * How thick the piece is where its color is seen; its color over white and over black is then calculated. Unit: mm; 0.01 to 1000. Default: none.
   */
  piece_thickness?: MeasuredAmount
  /**
   * How a cooled sample of the cup looks now. Unit: none; a color. Default: as the last look of the trial's log says.
   */
  seen?: ColorEntry
  /**
   * The color to come to. Unit: none; a color. Default: the color of `target_like`.
   */
  target?: ColorEntry
  /**
   * A formula whose color, as a piece of it had it, is the target in place of `target`. Unit: none; a formula of the book. Default: none.
   */
  target_like?: Name
  /**
   * The trial: what it started from, and what was added and taken since. Unit: none; a start and a log.
   */
  trial: TrialEntry
}
/**
 * The formulas of a book that are nearest to a color.
 */
export interface ColorNearestRequest {
  /**
   * The shop's book. Unit: none; a book document. Default: the open book; required without one.
   */
  book?: BookDocument
  calculate: 'color-nearest'
  /**
   * A color, as lab, srgb, hex or bands. Unit: none; a color.
   */
  color: ColorEntry
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * The mold of the piece: its section or its bodies say how thick the piece is, in place of `piece_thickness`. Unit: none; a mold of the book. Default: none.
   */
  piece_mold?: Name
  /**
   * How thick the piece is where its color is seen; its color over white and over black is then calculated. Unit: mm; 0.01 to 1000. Default: none.
   */
  piece_thickness?: MeasuredAmount
}
/**
 * Which test pieces of a colorant to pour.
 */
export interface LetDownSeriesRequest {
  /**
   * The shop's book. Unit: none; a book document. Default: the open book; required without one.
   */
  book?: BookDocument
  calculate: 'let-down-series'
  /**
   * The colorant. Unit: none; a colorant of the book.
   */
  colorant: Name
  /**
   * An embedding program's own data; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  }
  /**
   * Mass of base that fills the dish of a test piece so deep that nothing shows through. Unit: g; 1 to 10000. Default: 25.
   */
  test_piece?: MeasuredAmount
}
/**
 * Quote for an order list: pots, parcels, stock and cost of its plan.
 */
export interface QuoteResponse {
  calculate: 'quote'
  /**
   * Cost of the day, if the book states how to calculate it.
   */
  cost?: Calculated7 | null
  /**
   * The order lines, as given: their pots, and the mass of a piece; not how it sinks.
   */
  lines: PlannedLine[]
  /**
   * The parcel of each order, the first that is due first.
   */
  parcels: Parcel[]
  /**
   * Materials in stock and what the day takes of them, the scarcest first.
   */
  stock: StockEntry[]
}
/**
 * The record of a day: a plan with the masses and shots that were made.
 */
export interface RecordResponse {
  calculate: 'record'
  /**
   * Colors that finished pieces had, each with the formula that it goes to in the book.
   */
  colors: SeenColor[]
  /**
   * The day.
   */
  day?: string | null
  /**
   * The format and its version.
   */
  format: Format
  /**
   * What weighed pieces of one color show of their molds, by mold and shape.
   */
  found: Found[]
  /**
   * What is left for the shelf.
   */
  jars: Jar[]
  /**
   * Household measures: the size of a cup and a spoon.
   */
  measures: System
  /**
   * The molds, by name: their yield over all pots.
   */
  molds: MoldRecord[]
  /**
   * The pots, in the order of the plan.
   */
  pots: PotRecord[]
  /**
   * Colors and bodies as made that go into the book.
   */
  saved: Saved[]
  /**
   * The change to the next day's order list, as a JSON Patch (RFC 6902): its shelf is what stays of today's, and what
   * is left of today's pots. Empty if there is nothing.
   */
  shelf: Change[]
  /**
   * Whose it is.
   */
  shop?: string | null
  /**
   * The record as text, in lines of at most 80 columns.
   */
  text: string[]
  /**
   * Changes to the book, as a JSON Patch (RFC 6902): what weighed pieces show of molds, and colors to save. Empty if
   * the day shows nothing new.
   */
  write: Change[]
}
/**
 * The rest of a day: a new plan from the pots that are there and what is still owed.
 */
export interface GoOnResponse {
  calculate: 'go-on'
  /**
   * Changes and their reasons, each a sentence.
   */
  changes: Note[]
  /**
   * Ids of the steps' items that are as before: a tick at them holds.
   */
  kept: string[]
  /**
   * The lines of `orders_now`, in their order; else those of the plan before.
   */
  lines: LineNow[]
  /**
   * Pieces that are owed but cannot be made.
   */
  not_made: NotMade[]
  /**
   * The plan for the rest of the day, complete with the orders that it was made from; none if nothing is left to
   * make.
   */
  plan?: PlanDocument | null
  /**
   * Pieces that are made and what was used of the list `orders_now`: `so_far` of the next request, which goes on with the
   * new plan. None without `orders_now`.
   */
  so_far?: SoFarEntry | null
}

/** The request of every calculation, by its name. */
export interface Requests {
  'convert': ConvertRequest
  'dose': DoseRequest
  'mix': MixRequest
  'salt': SaltRequest
  'hardness': HardnessRequest
  'shot': ShotRequest
  'batch': BatchRequest
  'water': WaterRequest
  'calibrate': CalibrateRequest
  'calibrate-drop': CalibrateDropRequest
  'calibrate-spoon': CalibrateSpoonRequest
  'calibrate-injector': CalibrateInjectorRequest
  'uncertainty': UncertaintyRequest
  'measure': MeasureRequest
  'air': AirRequest
  'degas': DegasRequest
  'heat': HeatRequest
  'stays-hot': StaysHotRequest
  'cooling': CoolingRequest
  'clock': ClockRequest
  'settling': SettlingRequest
  'heat-history': HeatHistoryRequest
  'sink': SinkRequest
  'flake': FlakeRequest
  'color-difference': ColorDifferenceRequest
  'color-match': ColorMatchRequest
  'color-reading': ColorReadingRequest
  'color-lights': ColorLightsRequest
  'formula': FormulaRequest
  'cost': CostRequest
  'correct': CorrectRequest
  'leftovers': LeftoversRequest
  'plan': PlanRequest
  'quote': QuoteRequest
  'record': RecordRequest
  'go-on': GoOnRequest
  'next-burst': NextBurstRequest
  'trial': TrialRequest
  'troubles': TroublesRequest
  'learn': LearnRequest
  'color-next': ColorNextRequest
  'color-nearest': ColorNearestRequest
  'let-down-series': LetDownSeriesRequest
}


/** The response of every calculation, by its name. */
export interface Responses {
  'convert': ConvertResponse & { calculate: 'convert' }
  'dose': DoseResponse & { calculate: 'dose' }
  'mix': MixResponse & { calculate: 'mix' }
  'salt': SaltResponse & { calculate: 'salt' }
  'hardness': HardnessResponse & { calculate: 'hardness' }
  'shot': ShotResponse & { calculate: 'shot' }
  'batch': BatchResponse & { calculate: 'batch' }
  'water': WaterResponse & { calculate: 'water' }
  'calibrate': CalibrateResponse & { calculate: 'calibrate' }
  'calibrate-drop': CalibrateDropResponse & { calculate: 'calibrate-drop' }
  'calibrate-spoon': CalibrateSpoonResponse & { calculate: 'calibrate-spoon' }
  'calibrate-injector': CalibrateInjectorResponse & { calculate: 'calibrate-injector' }
  'uncertainty': UncertaintyResponse & { calculate: 'uncertainty' }
  'measure': MeasureResponse & { calculate: 'measure' }
  'air': AirResponse & { calculate: 'air' }
  'degas': DegasResponse & { calculate: 'degas' }
  'heat': HeatResponse & { calculate: 'heat' }
  'stays-hot': StaysHotResponse & { calculate: 'stays-hot' }
  'cooling': CoolingResponse & { calculate: 'cooling' }
  'clock': ClockResponse & { calculate: 'clock' }
  'settling': SettlingResponse & { calculate: 'settling' }
  'heat-history': HeatHistoryResponse & { calculate: 'heat-history' }
  'sink': SinkResponse & { calculate: 'sink' }
  'flake': FlakeResponse & { calculate: 'flake' }
  'color-difference': ColorDifferenceResponse & { calculate: 'color-difference' }
  'color-match': ColorMatchResponse & { calculate: 'color-match' }
  'color-reading': ColorReadingResponse & { calculate: 'color-reading' }
  'color-lights': ColorLightsResponse & { calculate: 'color-lights' }
  'formula': FormulaResponse & { calculate: 'formula' }
  'cost': CostResponse & { calculate: 'cost' }
  'correct': CorrectResponse & { calculate: 'correct' }
  'leftovers': LeftoversResponse & { calculate: 'leftovers' }
  'plan': PlanDocument & { calculate: 'plan' }
  'quote': QuoteResponse & { calculate: 'quote' }
  'record': RecordResponse & { calculate: 'record' }
  'go-on': GoOnResponse & { calculate: 'go-on' }
  'next-burst': NextBurstResponse & { calculate: 'next-burst' }
  'trial': TrialResponse & { calculate: 'trial' }
  'troubles': TroublesResponse & { calculate: 'troubles' }
  'learn': LearnResponse & { calculate: 'learn' }
  'color-next': ColorNextResponse & { calculate: 'color-next' }
  'color-nearest': ColorNearestResponse & { calculate: 'color-nearest' }
  'let-down-series': LetDownSeriesResponse & { calculate: 'let-down-series' }
}
