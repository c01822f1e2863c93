export { PourwrightError } from './error.js'
export { Book, calculate } from './document.js'
export * from './calculations.js'
