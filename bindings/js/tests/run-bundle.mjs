// Runs a bundle as a page would, `run-bundle.mjs BUNDLE MODULE`: what it fetches is next to it, and it must find there
// the module of this name, and no other.
import assert from 'node:assert/strict'
import { readFile } from 'node:fs/promises'
import { pathToFileURL } from 'node:url'

const fetched = []
globalThis.fetch = async (address) => {
  fetched.push(String(address))
  return new Response(await readFile(new URL(address)), { headers: { 'content-type': 'application/wasm' } })
}
await import(pathToFileURL(process.argv[2]).href)
assert.equal(globalThis.answer, 236.5882365)
assert.equal(fetched.length, 1)
assert.match(fetched[0], new RegExp(`/${process.argv[3]}_bg[^/]*\\.wasm$`))
