// What a page has to fetch, compressed. With `--check` it must not be more than it was.
import { readFileSync, readdirSync } from 'node:fs'
import { gzipSync } from 'node:zlib'

/** What everything together may weigh, in KiB. The goal is 120. */
const MOST = 490

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
console.log(`${'all'.padEnd(46)} ${kib(total)} KiB, at most ${MOST}`)
if (process.argv.includes('--check') && total > MOST * 1024) {
  console.error('The package has grown beyond what it may weigh.')
  process.exitCode = 1
}

function kib(bytes) {
  return (bytes / 1024).toFixed(1).padStart(7)
}
