// The entry in two files, in browsers and bundlers: `init()` loads what plans need, `rest()` all else.
import { initFirst, initRest } from './whole-module.js'

const ofFirst = new URL('../build/pourwright_first_bg.wasm', import.meta.url)
const ofRest = new URL('../build/pourwright_rest_bg.wasm', import.meta.url)

export default (source = ofFirst) => initFirst(source)
export const rest = (source = ofRest) => initRest(source)
export { initSync } from './whole-module.js'
export * from './library.js'
