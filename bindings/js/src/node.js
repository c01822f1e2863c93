// The entry for Node: the module is read from the package, since `fetch` has no files there.
import { readFile } from 'node:fs/promises'
import { init as start } from './whole-module.js'

export default async function init(source) {
  await start(source ?? (await readFile(new URL('../build/pourwright_bg.wasm', import.meta.url))))
}
export { initSync } from './whole-module.js'
export * from './library.js'
