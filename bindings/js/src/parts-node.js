// The entry in two files, in Node.
import { readFile } from 'node:fs/promises'
import { initFirst, initRest } from './whole-module.js'

const file = (part) => readFile(new URL(`../build/pourwright_${part}_bg.wasm`, import.meta.url))

export default async function init(source) {
  await initFirst(source ?? (await file('first')))
}
export async function rest(source) {
  await initRest(source ?? (await file('rest')))
}
export { initSync } from './whole-module.js'
export * from './library.js'
