// The entry in two files, in browsers and bundlers: `init()` loads what plans need, `rest()` all else.
import { initFirst, initRest } from './whole-module.js'

export default (source = new URL('../build/pourwright_first_bg.wasm', import.meta.url)) => initFirst(source)
export const rest = (source = new URL('../build/pourwright_rest_bg.wasm', import.meta.url)) => initRest(source)
export { initSync } from './whole-module.js'
export * from './library.js'
