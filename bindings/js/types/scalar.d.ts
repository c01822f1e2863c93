import type { Fault } from './documents.js'

export type { Fault }

/** A type of the platform, where the program's own libraries declare it: a browser's, Node's, or none. */
type Platform<Name extends string> = typeof globalThis extends { [name in Name]: { prototype: infer Type } }
  ? Type
  : never

/** A compiled module, without the types of a browser; excludes a number or text, which its empty interface would allow. */
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

export * from './calculations.js'
