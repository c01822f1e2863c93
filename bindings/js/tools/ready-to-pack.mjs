// Before `npm pack`: the module must have been built, and the licenses come along.
import { copyFileSync, existsSync } from 'node:fs'

const root = new URL('../', import.meta.url)
if (!existsSync(new URL('build/pourwright_bg.wasm', root))) {
  console.error('Build the WebAssembly module first: wasm/build, from the root of the repository.')
  process.exit(1)
}
for (const license of ['LICENSE-APACHE', 'LICENSE-MIT']) {
  copyFileSync(new URL(`../../${license}`, root), new URL(license, root))
}
