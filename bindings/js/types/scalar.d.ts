import type { Fault, System } from './documents.js'

export type { Fault, System }

/** A type of the platform, where the program's own libraries declare it: a browser's, Node's, or none. */
type Platform<Name extends string> = typeof globalThis extends { [name in Name]: { prototype: infer Type } }
  ? Type
  : never

/** A compiled module, likewise; no number or text, which its empty interface would let pass. */
type Module = typeof globalThis extends { WebAssembly: { Module: { prototype: infer Type } } } ? Type & object : never

/** The bytes of a module. */
type Bytes = ArrayBuffer | ArrayBufferView<ArrayBuffer>

/** Where the WebAssembly module comes from, if not from the package: its address, what was fetched, its bytes, or it. */
export type Source =
  string | Platform<'URL'> | Platform<'Request'> | Platform<'Response'> | Promise<Platform<'Response'>> | Bytes | Module

/** Loads the WebAssembly module. To be awaited once, before anything else; again, it does nothing. */
export default function init(source?: Source): Promise<void>

/** The same from bytes or a compiled module that are at hand, without waiting. */
export function initSync(module: Bytes | Module): void

/** What is refused: one fault or more, the first of them also as the error's own code, path and help. */
export class PourwrightError extends Error {
  constructor(faults: Fault[])
  readonly name: 'PourwrightError'
  /** Stable code in kebab case. */
  readonly code: string
  /** Where it is: a JSON Pointer (RFC 6901) into the document or the call's parameters, empty for the whole of it. */
  readonly path: string
  /** What would do. */
  readonly help: string
  /** All faults, first found first. */
  readonly faults: Fault[]
}

/**
 * How many of the unit `to` the amount is: `convert('1 1/4 cup', 'mL')`. The number is rounded once.
 * @param amount as a person writes it
 * @param to a unit by trade symbol or UCUM code
 * @param measures what a cup, a spoon and a fluid ounce hold; US customary where left out
 * @throws {PourwrightError} for what cannot be read, or can be read two ways
 */
export function convert(amount: string, to: string, measures?: System): number

/**
 * The mass of an amount of a material, in g: a volume of it by the density with which it is measured (of a liquid its
 * own, of a powder that as scooped), drops by the mass of one.
 */
export function massG(parameters: {
  amount: string
  densityGPerMl: number
  /** Mass of one drop; 1/20 mL where left out. */
  dropG?: number
  /** What a cup, a spoon and a fluid ounce hold; US customary where left out. */
  measures?: System
}): number

/** The mass of a volume, in g, by the density with which it is measured. */
export function massOfVolumeG(parameters: { volumeMl: number; densityGPerMl: number }): number

/** The volume of a mass, in mL. */
export function volumeOfMassMl(parameters: { massG: number; densityGPerMl: number }): number

/**
 * The density at 20 °C of constituents mixed, each [mass in g, density in g/mL], solids with their true density.
 * @param voids share of air, 0 to below 1; none where left out
 */
export function densityOfPartsGPerMl(parts: Iterable<readonly [number, number]>, voids?: number): number

/** How many particles a dose of flake holds, a nominal number. */
export function flakeCount(parameters: {
  /** As the trade writes it: ".035", "1/64 hex", "0.4 mm square". */
  cut: string
  /** Thickness of the film. */
  thicknessUm: number
  /** Density of the film. */
  filmGPerMl: number
  doseG: number
}): number

/** The density of water, in g/mL. */
export function waterDensityGPerMl(parameters: {
  /** 0 to 40 °C. */
  temperatureCelsius: number
}): number

/** The volume of a cavity from what the balance reads for the water in it, in mL. */
export function cavityMl(parameters: {
  waterG: number
  /** 0 to 40 °C. */
  temperatureCelsius: number
  /** At the balance; standard atmosphere where left out. */
  airPressurePa?: number
}): number

/** The mass of a piece, in g. */
export function pieceG(parameters: {
  cavityMl: number
  /** Density of the plastic at shot temperature, without voids. */
  hotGPerMl: number
  /** Density of the plastic at 20 °C, without voids. */
  coldGPerMl: number
  /** Share of its contraction that the piece draws from the sprue, 0 to 1. */
  feed: number
  /** Share of air, 0 to below 1; none where left out. */
  voids?: number
}): number

/** What one shot takes, in g: all cavities and the sprue, hot, and what topping off adds. */
export function shotG(parameters: {
  /** How many cavities. */
  cavities: number
  /** Volume of one. */
  cavityMl: number
  /** Density of the plastic at shot temperature, without voids. */
  hotGPerMl: number
  /** None where left out. */
  sprueMl?: number
  /** None where left out. */
  toppedG?: number
  /** Share of air, 0 to below 1; none where left out. */
  voids?: number
}): number

interface Pieces {
  /** Good pieces, 1 to 1 000 000. */
  pieces: number
  /** Cavities that a shot fills. */
  cavities: number
  /** Share of pieces that are not fit to sell, 0 to below 1; none where left out. */
  rejects?: number
  /** How sure the number of good pieces shall be where there are rejects; 0.9 where left out. */
  confidence?: number
}

/** The least shots that give so many good pieces. */
export function shots(parameters: Pieces): number

/** What a batch takes. */
export interface BatchNeed {
  /** The mass to mix. */
  totalG: number
  /** What all shots take. */
  drawnG: number
  /** What of the sprues goes back and is shot again. */
  returnedG: number
  /** All pieces together. */
  piecesG: number
  /** Sprues that are left over. */
  spruesG: number
  /** What the injector keeps over the run. */
  keptG: number
  /** What stays in the cup: the heel, with the film in it. */
  inCupG: number
  shots: number
  /** Whole shots that one injector load gives. */
  shotsPerLoad: number
  loads: number
  /** Shots from the last load. */
  shotsInLast: number
}

/** How much to mix for so many pieces: shots, injector loads, losses. */
export function batchNeed(
  parameters: Pieces & {
    /** What one shot takes, sprue included. */
    shotG: number
    /** What of it stays as sprue; none where left out. */
    sprueG?: number
    /** Share of the sprues that is melted again, 0 to 1; none where left out. */
    returned?: number
    /** Density of what the injector draws, hot, voids counted. */
    hotGPerMl: number
    /** What the injector takes up at most. */
    holdsMl: number
    /** What stays in it each time it is emptied; none where left out. */
    keepsMl?: number
    /** How often it is cleaned or goes cold, the last time included; once where left out. */
    cleanings?: number
    /** What stays on the wall of the cup; none where left out. */
    filmG?: number
    /** What cannot be drawn from the cup; none where left out. */
    heelG?: number
  },
): BatchNeed

/** A way to measure a mass. */
export interface Measured {
  tool: 'balance' | 'spoons' | 'drops'
  /** What it gives. */
  massG: number
  /** (given − wanted)/wanted. */
  deviation: number
  /** How much handling it is: readings, spoonfuls, tens of drops. */
  acts: number
  /** How many drops; 0 with another tool. */
  drops: number
  /** How many spoonfuls of each spoon, in the order in which they were given. */
  spoonfuls: number[]
}

/**
 * A mass as the tools of a bench can give it, by the way with the least handling.
 * @throws {PourwrightError} where no tool keeps the tolerance; its help says from what mass on it would do
 */
export function benchMeasure(parameters: {
  massG: number
  /** Largest relative error; 0.05 where left out. */
  tolerance?: number
  /** The smallest difference that the balance shows; no balance where left out. */
  balanceReadsG?: number
  /** The most that it weighs at once, what is heavier in several readings; 5000 times what it shows where left out. */
  balanceToG?: number
  /** The least that it is trusted with; nothing is known where left out. */
  balanceFromG?: number
  /** What each spoon holds; no spoons where left out. */
  spoonsMl?: Iterable<number>
  /** The material in a spoon: a liquid's density, a powder's as scooped; not measured by spoon where left out. */
  asMeasuredGPerMl?: number
  /** One drop of it; not dropped where left out. */
  dropG?: number
}): Measured

/** The injector loads that so many shots take, whole shots in each. */
export function injectorLoads(parameters: {
  shots: number
  /** What one shot takes. */
  shotG: number
  /** Density of what the injector draws, hot, voids counted. */
  hotGPerMl: number
  /** What the injector takes up at most. */
  holdsMl: number
  /** What stays in it; none where left out. */
  keepsMl?: number
}): number

/**
 * A way to state a salt loading: mL in the spoon per mL of base, g per mL of base, mass per mass of base or of the finished
 * mix, finished density in g/mL, g of a piece, or g/mL of it with its hook.
 */
export type SaltForm =
  'scooped' | 'per-volume' | 'of-base' | 'of-finished' | 'finished-density' | 'piece-mass' | 'sink-density'

/** A mix before salt, both or neither; its base alone where left out. */
type Mixed = { mixG: number; mixMl: number } | { mixG?: undefined; mixMl?: undefined }

/** A mix before salt. It is cold. */
type Unsalted = Mixed & {
  /** The base, as a cup measures it. */
  baseMl: number
  baseGPerMl: number
  /** Density of the grains. */
  saltGPerMl: number
  /** Density in the spoon, which the form `scooped` needs. */
  scoopedGPerMl?: number
  /** Mass of softener that goes in per mass of salt; none where left out. */
  softenerPerSalt?: number
  /** Its density, which is needed where there is any. */
  softenerGPerMl?: number
  /** Share of air, 0 to below 1; none where left out. */
  voids?: number
  /** The most salt that the finished mix may hold, by true volume; 0.3 where left out. */
  mostSolids?: number
  /** Of a piece, which the forms `piece-mass` and `sink-density` need. */
  cavityMl?: number
  /** Share of its contraction that the piece draws from the sprue; all of it where left out. */
  feed?: number
  /** Hook and weight; none where left out. */
  hookG?: number
  hookMl?: number
}

/**
 * A salt loading from any way to state it to any other.
 * @throws {PourwrightError} for a loading out of reach; its help says what is in reach
 */
export function saltLoading(
  parameters: Unsalted & {
    /** The way in which `value` states it. */
    from: SaltForm
    value: number
    /** The way in which it is wanted. */
    to: SaltForm
  },
): number

/**
 * The mass of salt that a loading takes, in g.
 * @throws {PourwrightError} for a loading out of reach; its help says what is in reach
 */
export function saltMassG(parameters: Unsalted & { form: SaltForm; value: number }): number

/** What loading is in reach: without salt, and with the most that the limits allow. */
export function saltReach(parameters: Unsalted & { form: SaltForm }): { least: number; most: number }

/** The reading that a ratio of softener to base gives, between the shop's own points [ratio, reading] of one scale. */
export function hardness(points: Iterable<readonly [number, number]>, ratio: number): number

/** The ratio of softener to base that gives a reading, between the shop's own points [ratio, reading] of one scale. */
export function softenerRatio(points: Iterable<readonly [number, number]>, reading: number): number

/** The pressure of the standard atmosphere at an altitude, in Pa. */
export function airPressurePa(parameters: { altitudeM: number }): number

/** What a liquid takes up in a vacuum with the air that it holds, in mL. */
export function swollenMl(parameters: {
  /** Volume without air. */
  liquidMl: number
  /** Share of air in the mix under the outside pressure, 0 to below 1. */
  air: number
  /** The vacuum: how far below the outside air. */
  vacuumPa: number
  /** The outside air, not reduced to sea level; standard atmosphere where left out. */
  airPressurePa?: number
  /** Vapor pressure of the liquid; none where left out. */
  vaporPa?: number
}): number

interface Falling {
  /** Volume of the piece without its hook. */
  volumeMl: number
  diameterMm: number
  /** Length of a stick, which falls sideways; a ball where left out. */
  lengthMm?: number
  /** Hook and weight; none where left out. */
  hookG?: number
  hookMl?: number
  /** 0 to 40 °C. */
  waterCelsius: number
  /** Practical salinity: 0 for fresh water, where left out, about 35 for the ocean. */
  salinity?: number
}

/** The final speed of a sinking piece, in cm/s: a model value. */
export function sinkSpeedCmPerS(
  parameters: Falling & {
    /** Density of the piece, voids and salt counted. */
    densityGPerMl: number
  },
): number

/** The density at which a piece sinks at a speed, in g/mL: a finished density to salt for. */
export function densityForSinkSpeedGPerMl(parameters: Falling & { speedCmPerS: number }): number

/** The color difference ΔE₀₀ (CIEDE2000) of two colors [L*, a*, b*]. */
export function colorDifference(
  one: readonly [number, number, number],
  other: readonly [number, number, number],
): number
