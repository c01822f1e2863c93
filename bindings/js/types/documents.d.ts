// Made from the JSON Schemas in core/schema by tools/types.mjs: change those.

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
 * An amount that may carry its uncertainty: behind ± stands one standard uncertainty, unless (k=2) or (interval) follows; `uncertainty` is one standard uncertainty in the same unit.
 */
export type MeasuredAmount =
  | string
  | {
      uncertainty?: number
      unit: string
      value: number
    }
/**
 * The base of a formula.
 */
export type BaseEntry =
  | Name
  | {
      [k: string]: Amount
    }
/**
 * A name: of a material, formula, mold, product, order.
 */
export type Name = string
/**
 * The format of the documents and its version. A minor version only adds.
 */
export type Format = 'pourwright/1.0'
/**
 * A share from 0 % to 100 %, such as "3 %".
 */
export type Percent = string
/**
 * What becomes of sprues.
 */
export type Sprues = 'keep' | 'melt-again'
/**
 * The two forms of a sourced quantity, for serde and the schema.
 */
export type Sourced = MeasuredAmount | WithSource
/**
 * One drop: a mass or a volume.
 */
export type SourcedDrop = Sourced
/**
 * What a material is for.
 */
export type Kind =
  'plastisol' | 'softener' | 'hardener' | 'stabilizer' | 'colorant' | 'pearl' | 'flake' | 'salt' | 'scent' | 'other'
/**
 * Money per package, such as "58.00 USD per 1 gal".
 */
export type Price = string
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
 * What happens when two formulas that are combined dose the same material.
 */
export type Overlap = 'refuse' | 'add' | 'last'
/**
 * Whether a plastisol in the mix is still liquid or has been fused.
 */
export type Phase = 'liquid' | 'fused'
/**
 * The scale of a durometer reading.
 */
export type Scale = 'shore-00' | 'shore-a'
/**
 * A caution by its stable code.
 */
export type Caution = 'hot-plastisol' | 'fumes' | 'water' | 'damp-salt' | 'vacuum' | 'food-gear' | 'data-sheet'
/**
 * A tool of the bench, in the order in which the last tie is broken.
 */
export type Tool = 'balance' | 'cup' | 'spoons' | 'drops'

/**
 * A balance.
 */
export interface BalanceEntry {
  /**
   * What an embedding program keeps here for itself; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  } | null
  /**
   * The least it weighs.
   */
  from?: MeasuredAmount | null
  /**
   * The step of its display.
   */
  reads: MeasuredAmount
  /**
   * The most it weighs.
   */
  to?: MeasuredAmount | null
}
/**
 * The tools on the bench.
 */
export interface BenchEntry {
  /**
   * The balance.
   */
  balance?: BalanceEntry | null
  /**
   * The cups a pot is mixed and heated in.
   */
  cups: CupEntry[]
  /**
   * What an embedding program keeps here for itself; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  } | null
  /**
   * The injector.
   */
  injector: InjectorEntry
  /**
   * The most drops that are still counted.
   */
  most_drops?: number | null
  /**
   * Level spoons by what they hold.
   */
  spoons?: MeasuredAmount[] | null
}
/**
 * A cup.
 */
export interface CupEntry {
  /**
   * What an embedding program keeps here for itself; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  } | null
  /**
   * What stays on its wall when it has been poured out.
   */
  film?: MeasuredAmount | null
  /**
   * What cannot be drawn from its bottom.
   */
  heel?: MeasuredAmount | null
  /**
   * What it holds up to its highest mark.
   */
  holds: MeasuredAmount
  /**
   * The step between its marks; without it only the highest mark counts.
   */
  marks?: MeasuredAmount | null
}
/**
 * An injector.
 */
export interface InjectorEntry {
  /**
   * How many of them there are; a laminate of two layers takes two.
   */
  count?: number | null
  /**
   * What an embedding program keeps here for itself; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  } | null
  /**
   * What it takes up at most.
   */
  holds: MeasuredAmount
  /**
   * What stays in it and is lost at each cleaning or cold stop.
   */
  keeps?: MeasuredAmount | null
}
/**
 * A shop's book.
 */
export interface BookDocument {
  /**
   * Anything a reader should know of it.
   */
  about?: string | null
  /**
   * Height of the shop above sea level.
   */
  altitude?: MeasuredAmount | null
  /**
   * The tools on the bench.
   */
  bench: BenchEntry
  /**
   * The plastisol that a formula without a base goes into.
   */
  default_base?: Name | null
  /**
   * What an embedding program keeps here for itself; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  } | null
  /**
   * The format and its version.
   */
  format: Format
  /**
   * Formulas by name.
   */
  formulas: {
    [k: string]: FormulaEntry
  }
  /**
   * How the shop works.
   */
  limits?: LimitsEntry | null
  /**
   * Materials by name.
   */
  materials: {
    [k: string]: MaterialEntry
  }
  /**
   * What a cup, a spoon and a fluid ounce hold.
   */
  measures: System
  /**
   * Molds by name.
   */
  molds: {
    [k: string]: MoldEntry
  }
  /**
   * Products by name: a mold and what is shot into it.
   */
  products?: {
    [k: string]: ProductEntry
  } | null
  /**
   * Whose book it is.
   */
  shop?: Name | null
}
/**
 * A formula: doses per amount of base.
 */
export interface FormulaEntry {
  /**
   * The base: a plastisol, or a blend of plastisols with an amount each.
   */
  base?: BaseEntry | null
  /**
   * Doses by material: "32 drops", "1/2 tsp", "12.5 g", "8 % of base", "20 % of finished".
   */
  doses: {
    [k: string]: Amount
  }
  /**
   * What an embedding program keeps here for itself; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  } | null
  /**
   * Anything worth knowing.
   */
  notes?: string | null
  /**
   * The amount of base that the doses are for; needed unless all are per cents.
   */
  per?: Amount | null
}
/**
 * How the shop works.
 */
export interface LimitsEntry {
  /**
   * How sure the number of good pieces shall be.
   */
  confidence?: Percent | null
  /**
   * What an embedding program keeps here for itself; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  } | null
  /**
   * Whether base may be added to a pot that has been drawn from.
   */
  fresh_base?: boolean | null
  /**
   * Heats that the stabilizer allows a pot.
   */
  heats?: number | null
  /**
   * The least that the oven heats evenly.
   */
  least_pot?: MeasuredAmount | null
  /**
   * How full a cup may be, of what it holds to its highest mark.
   */
  most_full?: Percent | null
  /**
   * Share of pieces that are not fit to sell.
   */
  rejects?: Percent | null
  /**
   * Most solids in a mix, by true volume.
   */
  solids?: Percent | null
  /**
   * What becomes of sprues.
   */
  sprues?: Sprues | null
  /**
   * Largest relative error of a dose, unless its material says otherwise.
   */
  tolerance?: Percent | null
}
/**
 * A material. What is not known is left out; a calculation that needs it says so.
 */
export interface MaterialEntry {
  /**
   * Density of the powder as a level spoon holds it.
   */
  as_scooped?: Sourced | null
  /**
   * True density at 20 °C; of a plastisol, that of the liquid.
   */
  density?: Sourced | null
  /**
   * Mass or volume of one drop from the shop's bottle.
   */
  drop?: SourcedDrop | null
  /**
   * Volumetric thermal expansion, per kelvin.
   */
  expansion?: Sourced | null
  /**
   * What an embedding program keeps here for itself; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  } | null
  /**
   * Density of the fused plastisol at 20 °C.
   */
  fused?: Sourced | null
  /**
   * What it is for.
   */
  kind: Kind
  /**
   * A row of the starter table whose properties fill in what is left out here.
   */
  like?: Name | null
  /**
   * What it is called at full length.
   */
  name?: string | null
  /**
   * Anything else worth knowing.
   */
  notes?: string | null
  /**
   * Price per package, such as "58.00 USD per 1 gal".
   */
  price?: Price | null
  /**
   * Lowest and highest temperature at which it is shot.
   *
   * @minItems 2
   * @maxItems 2
   */
  shot_window?: [unknown, unknown] | null
  /**
   * Specific heat.
   */
  specific_heat?: Sourced | null
  /**
   * Largest relative error of a dose of it.
   */
  tolerance?: Percent | null
}
/**
 * A quantity with where it comes from.
 */
export interface WithSource {
  /**
   * Where it comes from.
   */
  source: string
  /**
   * The quantity.
   */
  value: MeasuredAmount
}
/**
 * A mold: what one shot fills.
 */
export interface MoldEntry {
  /**
   * How many like cavities it has, or a list of unlike ones.
   */
  cavities: CavitiesEntry
  /**
   * Volume of one cavity: "9.5 mL", or by the water it holds:
   * { "water": "9.47 g", "at": "22 °C" }.
   */
  cavity?: CavityVolume | null
  /**
   * What an embedding program keeps here for itself; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  } | null
  /**
   * Share of a cavity's contraction that it draws from the sprue while it cools.
   */
  feed?: Percent | null
  /**
   * Anything worth knowing.
   */
  notes?: string | null
  /**
   * Share of pieces that are not fit to sell; else that of the limits.
   */
  rejects?: Percent | null
  /**
   * Volume of the sprue of one shot.
   */
  sprue?: MeasuredAmount | null
  /**
   * Mass added to each shot by topping off and holding.
   */
  top?: MeasuredAmount | null
  /**
   * Share of air in the shot plastic.
   */
  voids?: Percent | null
}
/**
 * The cavities of one shape in a mold with unlike ones.
 */
export interface CavityEntry {
  /**
   * Volume of one.
   */
  cavity: CavityVolume
  /**
   * How many of them.
   */
  count: number
  /**
   * What an embedding program keeps here for itself; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  } | null
}
/**
 * The water that a cavity holds, weighed in air.
 */
export interface WaterEntry {
  /**
   * Temperature of the water.
   */
  at: MeasuredAmount
  /**
   * What an embedding program keeps here for itself; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  } | null
  /**
   * What the balance reads.
   */
  water: MeasuredAmount
}
/**
 * A product: a mold and the plastic that is shot into it.
 */
export interface ProductEntry {
  /**
   * What an embedding program keeps here for itself; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  } | null
  /**
   * The formulas of a piece of one color: a color and a body.
   */
  formulas?: Name[] | null
  /**
   * The layers of a laminated piece.
   */
  layers?: LayerEntry[] | null
  /**
   * The mold.
   */
  mold: Name
  /**
   * Anything worth knowing.
   */
  notes?: string | null
  /**
   * What happens where two of these formulas dose the same material.
   */
  overlap?: Overlap | null
}
/**
 * One color of a laminated piece.
 */
export interface LayerEntry {
  /**
   * What an embedding program keeps here for itself; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  } | null
  /**
   * Its formulas: a color and a body.
   */
  formulas: Name[]
  /**
   * What happens where two of these formulas dose the same material.
   */
  overlap?: Overlap | null
  /**
   * Its share of the cavity and the sprue.
   */
  share: Percent
}
/**
 * A hardness that the shop has measured.
 */
export interface HardnessPointEntry {
  /**
   * What an embedding program keeps here for itself; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  } | null
  /**
   * Mass of softener or hardener as a share of the mass of base.
   */
  ratio: Percent
  /**
   * What the durometer showed, 0 to 100.
   */
  reading: number
}
/**
 * A salt loading, stated in just one way.
 */
export interface LoadingEntry {
  /**
   * Volume of salt as scooped, for the base of the request.
   */
  as_scooped?: MeasuredAmount | null
  /**
   * Density of the finished plastic at 20 °C, voids counted.
   */
  density?: MeasuredAmount | null
  /**
   * What an embedding program keeps here for itself; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  } | null
  /**
   * Mass of salt, for the base of the request.
   */
  mass?: MeasuredAmount | null
  /**
   * Mass of salt as a share of the mass of base.
   */
  of_base?: Percent | null
  /**
   * Mass of salt as a share of the finished mass.
   */
  of_finished?: Percent | null
  /**
   * Mass of a piece from the cavity of the request.
   */
  piece?: MeasuredAmount | null
  /**
   * Mean density of that piece with its hook and weight.
   */
  sink_density?: MeasuredAmount | null
}
/**
 * One line of an order: a product, or a mold with formulas or layers, and how many.
 */
export interface OrderLine {
  /**
   * What an embedding program keeps here for itself; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  } | null
  /**
   * The formulas of a piece of one color.
   */
  formulas?: Name[] | null
  /**
   * The layers of a laminated piece.
   */
  layers?: LayerEntry[] | null
  /**
   * A mold of the book, where no product is named.
   */
  mold?: Name | null
  /**
   * The order it belongs to.
   */
  order: Name
  /**
   * What happens where two of these formulas dose the same material.
   */
  overlap?: Overlap | null
  /**
   * Pieces in a pack.
   */
  pack_of?: number | null
  /**
   * How many packs, where it is sold by the pack.
   */
  packs?: number | null
  /**
   * How many pieces.
   */
  pieces?: number | null
  /**
   * A product of the book.
   */
  product?: Name | null
  /**
   * The day it was promised for, as YYYY-MM-DD.
   */
  promised?: string | null
  /**
   * The shape, in a mold with unlike cavities.
   */
  shape?: Name | null
}
/**
 * A day's orders.
 */
export interface OrdersDocument {
  /**
   * Anything a reader should know of it.
   */
  about?: string | null
  /**
   * The day, as the shop writes it.
   */
  day?: Name | null
  /**
   * What an embedding program keeps here for itself; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  } | null
  /**
   * The format and its version.
   */
  format: Format
  /**
   * The order lines.
   */
  lines: OrderLine[]
}
/**
 * The softener that goes in beside salt.
 */
export interface SaltSoftenerEntry {
  /**
   * What an embedding program keeps here for itself; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  } | null
  /**
   * The softener.
   */
  material: MaterialEntry
  /**
   * Mass of softener as a share of the mass of salt.
   */
  per_salt: Percent
}
/**
 * How much to mix, and where it goes.
 */
export interface BatchResponse {
  /**
   * What all shots take.
   */
  drawn: Shown
  /**
   * What stays in the cup: film and heel.
   */
  in_cup: Shown
  /**
   * What the injector keeps.
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
   * All pieces.
   */
  pieces: Shown
  /**
   * What of the sprues is melted again and shot.
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
 * A quantity in a result.
 */
export interface Shown {
  /**
   * How a bench reads it.
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
 * A recipe that a pot could become.
 */
export interface Becomes {
  /**
   * All that would have to be added.
   */
  adds: Shown
  /**
   * Its formulas.
   */
  formulas: string[]
}
/**
 * What the weights say. With `feed` known, the cavity; with `cavity` known, the feed share.
 */
export interface CalibrateResponse {
  /**
   * Volume of the cavity.
   */
  cavity?: Shown | null
  /**
   * Its standard uncertainty.
   */
  cavity_uncertainty?: Shown | null
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
   * Its standard uncertainty.
   */
  feed_uncertainty?: Shown | null
  /**
   * Their mean.
   */
  mean: Shown
  /**
   * Standard uncertainty of the mean.
   */
  uncertainty: Shown
}
/**
 * The amount in the unit that was asked for.
 */
export interface ConvertResponse {
  /**
   * As text that reads back.
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
 * What makes a pot right.
 */
export interface CorrectResponse {
  /**
   * What to add; empty where the pot is right.
   */
  add: Weigh[]
  /**
   * The material that is most too much: nothing of it is added.
   */
  binds?: string | null
  /**
   * What else of the book the pot could become by adding, the least addition first.
   */
  could_become: Becomes[]
  /**
   * What the cup may hold.
   */
  cup: Shown
  /**
   * Its volume cold and liquid.
   */
  fills: Shown
  /**
   * What is in the pot.
   */
  held: Shown
  /**
   * The nearest that fits the cup, where the whole correction does not.
   */
  nearest?: NearestResponse | null
  /**
   * What the pot holds then.
   */
  total: Shown
  /**
   * Traces of materials that the formulas lack, let pass.
   */
  traces: Trace[]
}
/**
 * One material of a weigh list.
 */
export interface Weigh {
  /**
   * The way chosen.
   */
  best: Way
  /**
   * What it is for.
   */
  kind: Kind
  /**
   * Which material.
   */
  material: string
  /**
   * The same by the other tools of the bench, where they keep the tolerance.
   */
  others: Way[]
  /**
   * What the formula wants.
   */
  wanted: Shown
}
/**
 * A way to measure a material.
 */
export interface Way {
  /**
   * What that gives.
   */
  gives: Shown
  /**
   * What to measure: `1 tsp + 1/4 tsp`, `40 drops`, `12.4 g`.
   */
  measure: string
  /**
   * How far the material is then off, as a share of all of it that is in the mix.
   */
  off: Shown
  /**
   * With which tool.
   */
  tool: Tool
}
/**
 * The nearest mix that fits the cup.
 */
export interface NearestResponse {
  /**
   * What to add.
   */
  add: Weigh[]
  /**
   * How far each material stays off.
   */
  off: StaysOff[]
  /**
   * What the pot holds then.
   */
  total: Shown
}
/**
 * How far a material stays off its formula.
 */
export interface StaysOff {
  /**
   * Which.
   */
  material: string
  /**
   * Relative to its share in the formula.
   */
  off: Shown
}
/**
 * A trace of a material.
 */
export interface Trace {
  /**
   * How much of it.
   */
  mass: Shown
  /**
   * Which.
   */
  material: string
}
/**
 * What the amount weighs.
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
 * What is shot into one mold at one stage.
 */
export interface Draw {
  /**
   * Injector loads.
   */
  loads: number
  /**
   * The mold.
   */
  mold: string
  /**
   * What one shot takes.
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
   * Shots that the orders take.
   */
  shots: number
  /**
   * Whole shots in a load.
   */
  shots_per_load: number
  /**
   * Shots that the rest of the pot allows beyond that.
   */
  spare_shots: number
  /**
   * What stays as sprue at each shot.
   */
  sprue: Shown
  /**
   * Pots that are shot together with this one, for a laminated piece.
   */
  together_with: string[]
}
/**
 * The pieces of one shape in a draw.
 */
export interface Pieces {
  /**
   * The least it weighs: fed nothing from the sprue.
   */
  from: Shown
  /**
   * How many the shots make.
   */
  made: number
  /**
   * How many were ordered.
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
   * The most it weighs: fed all of its contraction.
   */
  to: Shown
  /**
   * What this layer of one weighs.
   */
  weighs: Shown
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
   * What would do.
   */
  help: string
  /**
   * What was found.
   */
  message: string
  /**
   * Where it is: a JSON Pointer (RFC 6901) into the document, empty for the whole input.
   */
  path: string
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
   * What to mix, by material.
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
 * Ways to measure a mass.
 */
export interface MeasureResponse {
  /**
   * The way with the least handling that keeps the tolerance.
   */
  best: Way
  /**
   * The others that keep it.
   */
  others: Way[]
  /**
   * What is wanted, as text.
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
 * What an order line gets.
 */
export interface PlannedLine {
  /**
   * What the embedding program keeps on the line.
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
   * How many packs, where it is sold by the pack.
   */
  packs?: number | null
  /**
   * What a piece weighs.
   */
  piece: Shown
  /**
   * How many pieces.
   */
  pieces: number
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
   * What is ordered: the product's name, or its formulas.
   */
  what: string
}
/**
 * One vessel of mix from first measure to last shot.
 */
export interface Pot {
  /**
   * The cup it is mixed in: what that holds.
   */
  cup: Shown
  /**
   * What is left over in the cup after the last shot, its heel among it.
   */
  left_over: Shown
  /**
   * What stays on the cup's wall and in the injector.
   */
  lost: Shown
  /**
   * Its letter: A, B, ...
   */
  pot: string
  /**
   * What all sprues weigh.
   */
  sprues: Shown
  /**
   * What is made in it, one after the other.
   */
  stages: Stage[]
}
/**
 * One composition of a pot: what goes in, and what is shot out.
 */
export interface Stage {
  /**
   * What is then in the pot for the next stage, or is left over.
   */
  carried: Shown
  /**
   * Density of the finished plastic.
   */
  density: Shown
  /**
   * What is shot.
   */
  draws: Draw[]
  /**
   * Its volume cold and liquid, as the cup shows it.
   */
  fills: Shown
  /**
   * Its formulas.
   */
  formulas: string[]
  /**
   * How often it is heated: once, or again for each laminated piece.
   */
  heats: number
  /**
   * What the pot then holds.
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
   * What goes in at this stage.
   */
  weigh: Weigh[]
}
/**
 * How many pots a day needs at least, and why.
 */
export interface Proof {
  /**
   * No plan has fewer than this.
   */
  least: number
  /**
   * How many the plan has.
   */
  pots: number
  /**
   * Why.
   */
  reasons: ProofReason[]
}
/**
 * One argument for a number of pots; where bases differ their numbers add up.
 */
export interface ProofReason {
  /**
   * What is made, no two of which can share a pot; empty for other arguments.
   */
  apart: string[]
  /**
   * The argument as a sentence.
   */
  because: string
  /**
   * How many pots it calls for.
   */
  pots: number
}
/**
 * A salt loading in every way to state it; those of a piece where a cavity was given.
 */
export interface SaltResponse {
  /**
   * Its volume as scooped.
   */
  as_scooped: Shown
  /**
   * Density of the finished plastic at 20 °C, voids counted.
   */
  density: Shown
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
   * Mass of a piece.
   */
  piece?: Shown | null
  /**
   * Mean density of a piece with its hook and weight.
   */
  sink_density?: Shown | null
  /**
   * Mass of softener that goes in beside it.
   */
  softener: Shown
}
/**
 * The pieces of one shape.
 */
export interface ShotPieces {
  /**
   * How many a shot makes.
   */
  count: number
  /**
   * The least: fed nothing from the sprue.
   */
  from: Shown
  /**
   * The shape, in a mold with unlike cavities.
   */
  shape?: string | null
  /**
   * The most: fed all of its contraction.
   */
  to: Shown
  /**
   * What one weighs.
   */
  weighs: Shown
}
/**
 * What a shot takes.
 */
export interface ShotResponse {
  /**
   * All of it.
   */
  fill: Shown
  /**
   * What the sprue could not feed: the pieces sink in by so much.
   */
  missing: Shown
  /**
   * What ends in the pieces.
   */
  pieces: Shown
  /**
   * The pieces, by shape.
   */
  shapes: ShotPieces[]
  /**
   * What stays as sprue.
   */
  sprue: Shown
}
/**
 * What the water fills.
 */
export interface WaterResponse {
  /**
   * The density of water at that temperature.
   */
  density: Shown
  /**
   * Its volume.
   */
  volume: Shown
}
/**
 * What is shot at one time: by one pot, or by those of a laminated piece together.
 */
export interface Work {
  /**
   * Where they come from, one a layer.
   */
  from: WorkFrom[]
  /**
   * The mold.
   */
  mold: string
  /**
   * How many shots.
   */
  shots: number
}
/**
 * A pot at work.
 */
export interface WorkFrom {
  /**
   * Whether it is heated for this; else the heat of the work before still serves.
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
 * A day's plan: complete, so that it can be printed as a bench sheet, kept as the day's
 * record, and made again to the same bits.
 */
export interface Plan {
  /**
   * What the plan had to assume, since the book does not say it.
   */
  assumptions: Note[]
  /**
   * What can hurt somebody.
   */
  cautions: Caution[]
  /**
   * The day, as the order list has it.
   */
  day?: string | null
  /**
   * The format and its version.
   */
  format: Format
  /**
   * The order lines, in the order in which they were given.
   */
  lines: PlannedLine[]
  /**
   * The documents that it was made from; absent in a plan that was not made from documents.
   */
  made_from?: MadeFrom | null
  /**
   * What a cup and a spoon hold in it.
   */
  measures: System
  /**
   * The pots, in the order in which they are first heated.
   */
  pots: Pot[]
  /**
   * Why there are not fewer pots.
   */
  proof: Proof
  /**
   * Whose it is.
   */
  shop?: string | null
  /**
   * The order of work over all pots.
   */
  work: Work[]
}
/**
 * An amount in another unit.
 */
export interface ConvertRequest {
  /**
   * An amount as a person measures it. Unit: any; above 0.
   */
  amount: Amount
  calculate: 'convert'
  /**
   * What an embedding program keeps here for itself; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  } | null
  /**
   * What a cup, a spoon and a fluid ounce hold; US customary where left out. Unit: none; us-customary, us-label, metric or imperial.
   */
  measures?: System | null
  /**
   * The unit that is wanted, by trade symbol or UCUM code. Unit: none; a unit of the same dimension.
   */
  to: string
}
/**
 * The mass of an amount of a material.
 */
export interface DoseRequest {
  /**
   * An amount as a person measures it. Unit: any; above 0.
   */
  amount: Amount
  calculate: 'dose'
  /**
   * What an embedding program keeps here for itself; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  } | null
  /**
   * The material and its properties. Unit: none; as in a book.
   */
  material: MaterialEntry
  /**
   * What a cup, a spoon and a fluid ounce hold; US customary where left out. Unit: none; us-customary, us-label, metric or imperial.
   */
  measures?: System | null
}
/**
 * Mass, volume, density and shares of a mix.
 */
export interface MixRequest {
  calculate: 'mix'
  /**
   * What an embedding program keeps here for itself; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  } | null
  /**
   * What is in the mix, by material. Unit: g; 0 or more each.
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
   * What a cup, a spoon and a fluid ounce hold; US customary where left out. Unit: none; us-customary, us-label, metric or imperial.
   */
  measures?: System | null
  /**
   * Whether the plastisol is liquid or fused; fused where left out. Unit: none; liquid or fused.
   */
  phase?: Phase | null
  /**
   * The temperature of the mix; 20 °C where left out. Unit: °C; above absolute zero.
   */
  temperature?: MeasuredAmount | null
  /**
   * Share of the volume that is air; none where left out. Unit: 1; 0 % to below 100 %.
   */
  voids?: Percent | null
}
/**
 * What formulas come to for an amount of base or of finished mix.
 */
export interface FormulaRequest {
  /**
   * The base to make the formula for; the formula's own `per` where left out. Unit: mL or g; above 0.
   */
  base?: Amount | null
  /**
   * The shop's book. Unit: none; a book document.
   */
  book: BookDocument
  calculate: 'formula'
  /**
   * What an embedding program keeps here for itself; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  } | null
  /**
   * The finished mix to make: its mass, or its volume cold and liquid. Unit: g or mL; above 0.
   */
  finished?: Amount | null
  /**
   * The formulas that are combined, by name. Unit: none; formulas of the book.
   */
  formulas: Name[]
  /**
   * What happens where two of the formulas dose the same material; it is refused where left out. Unit: none; refuse, add or last.
   */
  overlap?: Overlap | null
}
/**
 * Salt, from any way to state it to all others.
 */
export interface SaltRequest {
  /**
   * Volume of the base, cold and liquid, as a cup measures it. Unit: mL; above 0.
   */
  base: MeasuredAmount
  /**
   * Density of the base, cold and liquid, as a cup measures it. Unit: g/mL; above 0.
   */
  base_density: MeasuredAmount
  calculate: 'salt'
  /**
   * Volume of one cavity. Unit: mL; above 0.
   */
  cavity?: MeasuredAmount | null
  /**
   * What an embedding program keeps here for itself; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  } | null
  /**
   * Share of its contraction that a piece draws from the sprue while it cools. Unit: 1; 0 % to 100 %.
   */
  feed?: Percent | null
  /**
   * Mass of hook and weight on a piece; none where left out. Unit: g; 0 or more.
   */
  hook_mass?: MeasuredAmount | null
  /**
   * Volume that hook and weight displace; none where left out. Unit: mL; 0 or more.
   */
  hook_volume?: MeasuredAmount | null
  /**
   * Volume of the mix before salt at shot temperature; the cold one where left out. Unit: mL; at least the cold one.
   */
  hot_volume?: MeasuredAmount | null
  /**
   * How much salt, stated in just one way. Unit: none; one of seven ways.
   */
  loading: LoadingEntry
  /**
   * What a cup, a spoon and a fluid ounce hold; US customary where left out. Unit: none; us-customary, us-label, metric or imperial.
   */
  measures?: System | null
  /**
   * Mass of the mix before salt; that of its base where left out. Unit: g; at least that of the base.
   */
  mix?: MeasuredAmount | null
  /**
   * The most salt that the finished mix may hold, by true volume; 30 % where left out. Unit: 1; above 0 % to below 100 %.
   */
  most_solids?: Percent | null
  /**
   * The salt: its true density, its density as scooped. Unit: none; as a material in a book.
   */
  salt: MaterialEntry
  /**
   * Temperature at which it is shot; 20 °C where left out. Unit: °C; 20 °C or above.
   */
  shot_temperature?: MeasuredAmount | null
  /**
   * The softener that goes in beside the salt; none where left out. Unit: none; a material and its share of the salt.
   */
  softener?: SaltSoftenerEntry | null
  /**
   * Share of the volume that is air; none where left out. Unit: 1; 0 % to below 100 %.
   */
  voids?: Percent | null
  /**
   * Volume of the mix before salt at 20 °C; that of its base where left out. Unit: mL; above 0.
   */
  volume?: MeasuredAmount | null
}
/**
 * Softener for a hardness, or the hardness that it gives.
 */
export interface HardnessRequest {
  calculate: 'hardness'
  /**
   * What an embedding program keeps here for itself; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  } | null
  /**
   * The durometer reading that is wanted. Unit: 1; 0 to 100, between the measured points.
   */
  hardness?: number | null
  /**
   * The shop's own measured points, by rising ratio. Unit: none; two or more.
   */
  points: HardnessPointEntry[]
  /**
   * Mass of softener or hardener as a share of the mass of base. Unit: 1; between the measured points.
   */
  ratio?: Percent | null
  /**
   * The scale of the durometer. Unit: none; shore-00 or shore-a.
   */
  scale: Scale
}
/**
 * What a shot takes and its pieces weigh.
 */
export interface ShotRequest {
  calculate: 'shot'
  /**
   * Density of the finished plastic at 20 °C, without voids. Unit: g/mL; above 0.
   */
  cold_density: MeasuredAmount
  /**
   * What an embedding program keeps here for itself; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  } | null
  /**
   * Density of the plastic at shot temperature, without voids; the cold one where left out. Unit: g/mL; above 0, at most the cold one.
   */
  hot_density?: MeasuredAmount | null
  /**
   * What a cup, a spoon and a fluid ounce hold; US customary where left out. Unit: none; us-customary, us-label, metric or imperial.
   */
  measures?: System | null
  /**
   * The mold. Unit: none; as in a book.
   */
  mold: MoldEntry
  /**
   * Share of the cavity that this layer of a laminated piece fills; all of it where left out. Unit: 1; above 0 % to 100 %.
   */
  share?: Percent | null
}
/**
 * How much to mix for so many pieces.
 */
export interface BatchRequest {
  calculate: 'batch'
  /**
   * How many cavities a shot fills. Unit: 1; 1 to 1 000 000.
   */
  cavities: number
  /**
   * How often the injector is cleaned or goes cold, the last time included; 1 where left out. Unit: 1; 1 or more.
   */
  cleanings?: number | null
  /**
   * How sure the number of good pieces shall be; 90 % where left out. Unit: 1; 0 % to below 100 %.
   */
  confidence?: Percent | null
  /**
   * What an embedding program keeps here for itself; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  } | null
  /**
   * What stays on the wall of the cup; none where left out. Unit: g; 0 or more.
   */
  film?: MeasuredAmount | null
  /**
   * What cannot be drawn from the cup; none where left out. Unit: g; 0 or more.
   */
  heel?: MeasuredAmount | null
  /**
   * What the injector takes up at most. Unit: mL; above 0.
   */
  injector_holds: MeasuredAmount
  /**
   * What stays in the injector each time it is emptied; none where left out. Unit: mL; 0 to below what it holds.
   */
  injector_keeps?: MeasuredAmount | null
  /**
   * What a cup, a spoon and a fluid ounce hold; US customary where left out. Unit: none; us-customary, us-label, metric or imperial.
   */
  measures?: System | null
  /**
   * What one shot takes, sprue included. Unit: g; above 0.
   */
  per_shot: MeasuredAmount
  /**
   * How many pieces are wanted. Unit: 1; 1 to 1 000 000.
   */
  pieces: number
  /**
   * Share of pieces that are not fit to sell; none where left out. Unit: 1; 0 % to below 100 %.
   */
  rejects?: Percent | null
  /**
   * Share of the sprues that is melted again; none where left out. Unit: 1; 0 % to 100 %.
   */
  returned?: Percent | null
  /**
   * Density of what the injector draws: hot, voids counted. Unit: g/mL; above 0.
   */
  shot_density: MeasuredAmount
  /**
   * What of a shot stays as sprue; none where left out. Unit: g; 0 to what a shot takes.
   */
  sprue?: MeasuredAmount | null
}
/**
 * The volume of a cavity from the water that it holds.
 */
export interface WaterRequest {
  /**
   * Pressure of the air at the balance; standard atmosphere where left out. Unit: Pa; 30 to 120 kPa.
   */
  air_pressure?: MeasuredAmount | null
  /**
   * Temperature of the water. Unit: °C; 0 to 40 °C.
   */
  at: MeasuredAmount
  calculate: 'water'
  /**
   * What an embedding program keeps here for itself; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  } | null
  /**
   * What a cup, a spoon and a fluid ounce hold; US customary where left out. Unit: none; us-customary, us-label, metric or imperial.
   */
  measures?: System | null
  /**
   * What the balance reads for the water in one cavity. Unit: g; above 0.
   */
  water: MeasuredAmount
}
/**
 * What weighed pieces say of a mold.
 */
export interface CalibrateRequest {
  calculate: 'calibrate'
  /**
   * Volume of one cavity. Unit: mL; above 0.
   */
  cavity?: MeasuredAmount | null
  /**
   * Density of the finished plastic at 20 °C, without voids. Unit: g/mL; above 0.
   */
  cold_density: MeasuredAmount
  /**
   * What an embedding program keeps here for itself; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  } | null
  /**
   * Share of its contraction that a piece draws from the sprue while it cools. Unit: 1; 0 % to 100 %.
   */
  feed?: Percent | null
  /**
   * Density of the plastic at shot temperature, without voids; the cold one where left out. Unit: g/mL; above 0, at most the cold one.
   */
  hot_density?: MeasuredAmount | null
  /**
   * What a cup, a spoon and a fluid ounce hold; US customary where left out. Unit: none; us-customary, us-label, metric or imperial.
   */
  measures?: System | null
  /**
   * Share of the volume that is air; none where left out. Unit: 1; 0 % to below 100 %.
   */
  voids?: Percent | null
  /**
   * What the pieces weigh, one by one. Unit: g; two or more, above 0.
   */
  weights: MeasuredAmount[]
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
   * What an embedding program keeps here for itself; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  } | null
  /**
   * The mass that is wanted. Unit: g; above 0.
   */
  mass: MeasuredAmount
  /**
   * The material and its properties. Unit: none; as in a book.
   */
  material: MaterialEntry
  /**
   * What a cup, a spoon and a fluid ounce hold; US customary where left out. Unit: none; us-customary, us-label, metric or imperial.
   */
  measures?: System | null
  /**
   * Largest relative error that is accepted; the material's own, or 5 %, where left out. Unit: 1; above 0 % to below 100 %.
   */
  tolerance?: Percent | null
}
/**
 * The least that makes a pot right that came out wrong.
 */
export interface CorrectRequest {
  /**
   * The shop's book. Unit: none; a book document.
   */
  book: BookDocument
  calculate: 'correct'
  /**
   * What the cup may hold; the largest of the book where left out. Unit: mL; above 0.
   */
  cup?: MeasuredAmount | null
  /**
   * What an embedding program keeps here for itself; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  } | null
  /**
   * The formulas that are combined, by name. Unit: none; formulas of the book.
   */
  formulas: Name[]
  /**
   * What really went in of the materials that went wrong. Unit: any; 0 or more each.
   */
  instead?: {
    [k: string]: Amount
  } | null
  /**
   * The base that the pot was made for. Unit: mL or g; above 0.
   */
  made_for?: Amount | null
  /**
   * What happens where two of the formulas dose the same material; it is refused where left out. Unit: none; refuse, add or last.
   */
  overlap?: Overlap | null
  /**
   * All that is in the pot, by material, as it was measured. Unit: any; 0 or more each.
   */
  pot?: {
    [k: string]: Amount
  } | null
  /**
   * Share of the pot up to which a material that does not belong is let pass; none where left out. Unit: 1; 0 % to 100 %.
   */
  trace?: Percent | null
}
/**
 * A day's plan from a book and an order list.
 */
export interface PlanRequest {
  /**
   * The shop's book. Unit: none; a book document.
   */
  book: BookDocument
  calculate: 'plan'
  /**
   * What an embedding program keeps here for itself; carried through untouched.
   */
  ext?: {
    [k: string]: unknown
  } | null
  /**
   * The order list. Unit: none; an orders document.
   */
  orders: OrdersDocument
}

/** The request of every calculation, by its name. */
export interface Requests {
  convert: ConvertRequest
  dose: DoseRequest
  mix: MixRequest
  formula: FormulaRequest
  salt: SaltRequest
  hardness: HardnessRequest
  shot: ShotRequest
  batch: BatchRequest
  water: WaterRequest
  calibrate: CalibrateRequest
  measure: MeasureRequest
  correct: CorrectRequest
  plan: PlanRequest
}


/** The response of every calculation, by its name. */
export interface Responses {
  convert: ConvertResponse & { calculate: 'convert' }
  dose: DoseResponse & { calculate: 'dose' }
  mix: MixResponse & { calculate: 'mix' }
  formula: FormulaResponse & { calculate: 'formula' }
  salt: SaltResponse & { calculate: 'salt' }
  hardness: HardnessResponse & { calculate: 'hardness' }
  shot: ShotResponse & { calculate: 'shot' }
  batch: BatchResponse & { calculate: 'batch' }
  water: WaterResponse & { calculate: 'water' }
  calibrate: CalibrateResponse & { calculate: 'calibrate' }
  measure: MeasureResponse & { calculate: 'measure' }
  correct: CorrectResponse & { calculate: 'correct' }
  plan: Plan & { calculate: 'plan' }
}
