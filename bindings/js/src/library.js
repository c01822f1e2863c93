export { PourwrightError } from './error.js'
export { Book, Plan, calculate } from './document.js'
export * from './calculations.js'
