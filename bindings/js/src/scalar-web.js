// The entry for plain numbers only, in browsers and bundlers.
export { init as default, initSync } from './scalar-module.js'
export { PourwrightError } from './error.js'
export * from './calculations.js'
