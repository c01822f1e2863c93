// The entry for plain numbers only, in Node.
import { readFile } from 'node:fs/promises'
import { init as start } from './scalar-module.js'

export default async function init(source) {
  await start(source ?? (await readFile(new URL('../build/pourwright_scalar_bg.wasm', import.meta.url))))
}
export { initSync } from './scalar-module.js'
export { PourwrightError } from './error.js'
export * from './calculations.js'
