// Before `npm pack`: the modules must have been built, and the licenses and the JSON Schemas come along.
import { copyFileSync, existsSync, mkdirSync } from 'node:fs'

const root = new URL('../', import.meta.url)
const modules = ['', '_first', '_rest', '_scalar']
if (!modules.every((module) => existsSync(new URL(`build/pourwright${module}_bg.wasm`, root)))) {
  console.error('Build the WebAssembly modules first: wasm/build, from the root of the repository.')
  process.exit(1)
}
for (const license of ['LICENSE-APACHE', 'LICENSE-MIT', 'THIRD-PARTY.md']) {
  copyFileSync(new URL(`../../${license}`, root), new URL(license, root))
}
mkdirSync(new URL('schema', root), { recursive: true })
for (const name of ['request', 'answer', 'book', 'orders', 'actuals', 'plan']) {
  copyFileSync(new URL(`../../core/schema/${name}.json`, root), new URL(`schema/${name}.json`, root))
}
