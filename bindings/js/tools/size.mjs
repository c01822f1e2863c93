// The compressed size of what a page fetches: in gzip, and in brotli as `wasm/page/serve` sends it. `--check` fails above the limits.
import { readFileSync } from 'node:fs'
import { brotliCompressSync, constants, gzipSync } from 'node:zlib'

/** What is fetched for each purpose; its limit in KiB of gzip. */
const PURPOSES = [
  { name: 'all, in one file', entry: 'src/web.js', limit: 857 },
  { name: 'before the first plan', entry: 'src/parts-web.js', without: '_rest', limit: 577 },
  { name: 'all, in two files', entry: 'src/parts-web.js', limit: 871 },
  { name: 'plain numbers', entry: 'src/scalar-web.js', limit: 174 },
]

const root = new URL('../', import.meta.url)
const known = new Map()

/** What a file fetches: its imports, and for a glue the module next to it. */
const FETCHES = /^(?:import|export)\b[^;]*?from ?['"](.+?)['"]|new URL\(['"](.+?)['"], ?import\.meta\.url\)/gm

console.log(`${'KiB'.padEnd(36)}     plain      gzip    brotli`)
for (const { name, entry, without, limit } of PURPOSES) {
  const files = fetched(new URL(entry, root)).filter(({ href }) => !(without && href.includes(without)))
  // Who loads the parts does not load the whole.
  const parts = files.some(({ href }) => href.endsWith('_first_bg.wasm'))
  const needed = files.filter(({ href }) => !(parts && href.endsWith('/pourwright_bg.wasm')))
  if (!needed.some((file) => file.href.endsWith('.wasm'))) throw new Error(`${entry} fetches no WebAssembly module.`)
  const total = [0, 0, 0]
  for (const file of needed) {
    const sizes = sizesOf(file)
    for (const [index, size] of sizes.entries()) total[index] += size
    console.log(`${file.href.slice(root.href.length).padEnd(36)}${row(sizes)}`)
  }
  console.log(`${`${name}, at most ${limit} in gzip`.padEnd(36)}${row(total)}\n`)
  if (process.argv.includes('--check') && total[1] > limit * 1024) {
    console.error(`${name}: larger than its limit. Make it smaller, or raise the limit in this file and say why.`)
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

/** The bytes of a file as they are, in gzip and in brotli; each file is compressed once. */
function sizesOf(file) {
  if (!known.has(file.href)) {
    const bytes = readFileSync(file)
    const params = { [constants.BROTLI_PARAM_QUALITY]: 11, [constants.BROTLI_PARAM_SIZE_HINT]: bytes.length }
    known.set(file.href, [
      bytes.length,
      gzipSync(bytes, { level: 9 }).length,
      brotliCompressSync(bytes, { params }).length,
    ])
  }
  return known.get(file.href)
}

function row(sizes) {
  return sizes.map((size) => (size / 1024).toFixed(1).padStart(10)).join('')
}
