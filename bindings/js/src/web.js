// The entry for browsers and bundlers: the module is fetched from beside the glue.
export { init as default, initSync } from './whole-module.js'
export * from './library.js'
