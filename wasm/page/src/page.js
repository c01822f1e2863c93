// The whole page as one file: it begins with `main`. What tests and a console look into is exported by name.
import './main.js'

export * as bookForm from './book-form.js'
export * as bookWords from './book-words.js'
export * as core from './core.js'
export * as edits from './edits.js'
export * as planning from './planning.js'
export * as progress from './progress.js'
export * as records from './records.js'
export * as shown from './shown.js'
export * as state from './state.js'
export * as steps from './steps.js'
export { Book } from '../pourwright/src/web.js'
