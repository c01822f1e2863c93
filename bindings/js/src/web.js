// The entry for browsers and bundlers: the module is fetched from beside the glue.
export { init as default, initSync } from './instance.js'
export * from './library.js'
