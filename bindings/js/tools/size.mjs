// The compressed size of what a page fetches for each entry of the package. `--check` fails above the limits.
import { readFileSync } from 'node:fs'
import { gzipSync } from 'node:zlib'

/** The limit of each entry, in KiB. The goal for the whole library is 120. */
const LIMITS = { 'src/web.js': 860, 'src/scalar-web.js': 174 }

const root = new URL('../', import.meta.url)

/** What a file fetches: its imports, and for a glue the module next to it. */
const FETCHES = /^(?:import|export)\b[^;]*?from ?['"](.+?)['"]|new URL\(['"](.+?)['"], ?import\.meta\.url\)/gm

for (const [entry, limit] of Object.entries(LIMITS)) {
  let total = 0
  const files = fetched(new URL(entry, root))
  if (!files.some((file) => file.href.endsWith('.wasm'))) throw new Error(`${entry} fetches no WebAssembly module.`)
  for (const file of files) {
    const bytes = readFileSync(file)
    const compressed = gzipSync(bytes, { level: 9 }).length
    total += compressed
    console.log(`${file.href.slice(root.href.length).padEnd(36)} ${kib(bytes.length)} KiB, gzip ${kib(compressed)} KiB`)
  }
  console.log(`${`all of ${entry}`.padEnd(54)} ${kib(total)} KiB, at most ${limit}\n`)
  if (process.argv.includes('--check') && total > limit * 1024) {
    console.error(`${entry} is larger than its limit: make it smaller, or raise the limit in this file and say why.`)
    process.exitCode = 1
  }
}

/** The file, and everything that it fetches. */
function fetched(file, found = new Map()) {
  if (!found.has(file.href)) {
    found.set(file.href, file)
    const text = file.pathname.endsWith('.js') ? readFileSync(file, 'utf8') : ''
    for (const [, imported, module] of text.matchAll(FETCHES)) fetched(new URL(imported ?? module, file), found)
  }
  return [...found.values()]
}

function kib(bytes) {
  return (bytes / 1024).toFixed(1).padStart(7)
}
