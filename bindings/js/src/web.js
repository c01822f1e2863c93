// The entry for browsers and bundlers: the module is fetched from next to the glue.
export { init as default, initSync } from './whole-module.js'
export * from './library.js'
