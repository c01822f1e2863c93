// What a page has to fetch for each entry of the package, compressed. With `--check` it must not be more than it was.
import { readFileSync } from 'node:fs'
import { gzipSync } from 'node:zlib'

/** What everything of an entry may weigh, in KiB. The goal for the whole library is 120. */
const MOST = { 'src/web.js': 536, 'src/scalar-web.js': 157 }

const root = new URL('../', import.meta.url)

/** What a file fetches: what it imports, and a glue its module from beside it. */
const FETCHES = /^(?:import|export)\b[^;]*?from ?['"](.+?)['"]|new URL\(['"](.+?)['"], ?import\.meta\.url\)/gm

for (const [entry, most] of Object.entries(MOST)) {
  let total = 0
  const files = fetched(new URL(entry, root))
  if (!files.some((file) => file.href.endsWith('.wasm'))) throw new Error(`No module is found that ${entry} fetches.`)
  for (const file of files) {
    const bytes = readFileSync(file)
    const compressed = gzipSync(bytes, { level: 9 }).length
    total += compressed
    console.log(`${file.href.slice(root.href.length).padEnd(36)} ${kib(bytes.length)} KiB, gzip ${kib(compressed)} KiB`)
  }
  console.log(`${`all of ${entry}`.padEnd(54)} ${kib(total)} KiB, at most ${most}\n`)
  if (process.argv.includes('--check') && total > most * 1024) {
    console.error(`What a page fetches for ${entry} has grown beyond what it may weigh.`)
    process.exitCode = 1
  }
}

/** The file, and everything that is fetched for it. */
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
