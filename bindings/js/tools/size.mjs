// What a page has to fetch, compressed: the budget is 120 KiB for everything.
import { readFileSync, readdirSync } from 'node:fs'
import { gzipSync } from 'node:zlib'

const BUDGET = 120 * 1024
const root = new URL('../', import.meta.url)
const sources = readdirSync(new URL('src/', root)).filter((file) => file !== 'node.js')
const files = ['build/pourwright_bg.wasm', 'build/pourwright.js', ...sources.map((file) => `src/${file}`)]

let total = 0
for (const file of files) {
  const bytes = readFileSync(new URL(file, root))
  const compressed = gzipSync(bytes, { level: 9 }).length
  total += compressed
  console.log(`${file.padEnd(28)} ${kib(bytes.length)} KiB, gzip ${kib(compressed)} KiB`)
}
console.log(`${'all'.padEnd(28)} ${' '.repeat(13)}gzip ${kib(total)} KiB of ${kib(BUDGET)}`)
if (total > BUDGET) {
  console.error('The package is larger than its budget.')
  process.exitCode = 1
}

function kib(bytes) {
  return (bytes / 1024).toFixed(1).padStart(7)
}
