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

/** The source of the WebAssembly module, if not the package: its address, a response, its bytes, or the module. */
export type Source =
  string | Platform<'URL'> | Platform<'Request'> | Platform<'Response'> | Promise<Platform<'Response'>> | Bytes | Module

/** Loads the WebAssembly module. Await it once, before anything else; calling it again does nothing. */
export default function init(source?: Source): Promise<void>

/** The same from bytes or a compiled module, synchronously. */
export function initSync(module: Bytes | Module): void

/** A refused call: one fault or more. The error's own code, path and help are those of the first. */
export class PourwrightError extends Error {
  constructor(faults: Fault[])
  readonly name: 'PourwrightError'
  /** Stable code in kebab case. */
  readonly code: string
  /** Its place: a JSON Pointer (RFC 6901) into the document or the call's parameters, empty for the whole. */
  readonly path: string
  /** What would fix it. */
  readonly help: string
  /** All faults, in the order in which they were found. */
  readonly faults: Fault[]
}

export * from './calculations.js'
