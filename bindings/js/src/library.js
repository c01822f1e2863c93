export { PourwrightError } from './error.js'
export { Book, Plan, answerLines, calculate } from './document.js'
export * from './calculations.js'
