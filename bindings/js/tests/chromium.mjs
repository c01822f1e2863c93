// The installed package in a real browser, as a page without a bundler loads it: every vector, under the strictest
// content-security policy that lets WebAssembly run.
import assert from 'node:assert/strict'
import { readFile } from 'node:fs/promises'
import { createServer } from 'node:http'
import { extname, normalize } from 'node:path'

import { CALCULATIONS, compareCalls, compareVectors } from './vectors.mjs'

const { chromium } = await import(process.env.POURWRIGHT_PLAYWRIGHT)

const POLICY = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; connect-src 'self'"
const TYPES = { '.js': 'text/javascript', '.mjs': 'text/javascript', '.wasm': 'application/wasm' }
const PAGES = {
  '/': [
    'text/html',
    '<!doctype html><meta charset="utf-8"><title>Vectors</title><script type="module" src="/ask.js"></script>',
  ],
  '/scalar': [
    'text/html',
    '<!doctype html><meta charset="utf-8"><title>Plain numbers</title><script type="module" src="/scalar.js"></script>',
  ],
  '/parts': [
    'text/html',
    '<!doctype html><meta charset="utf-8"><title>Parts</title><script type="module" src="/parts.js"></script>',
  ],
  // prettier-ignore
  '/parts.js': ['text/javascript', `
    import init, { PourwrightError, calculate, convert, rest } from './node_modules/pourwright/src/parts-web.js'
    const loaded = () =>
      performance.getEntriesByType('resource').map(({ name }) => name).filter((name) => name.endsWith('.wasm'))
    await init()
    const first = loaded()
    const { value } = calculate({ calculate: 'convert', amount: '1 cup', to: 'mL' })
    let code
    try { convert({ amount: '1 cup', to: 'mL' }) } catch (error) { code = error.code }
    await rest()
    globalThis.answers = { first, value, code, later: convert({ amount: '1 cup', to: 'mL' }).value, all: loaded() }
  `],
  '/lines': [
    'text/html',
    '<!doctype html><meta charset="utf-8"><title>Lines</title><script type="module" src="/lines.js"></script>',
  ],
  // prettier-ignore
  '/lines.js': ['text/javascript', `
    import init, { answerLines } from './node_modules/pourwright/src/web.js'
    await init()
    const request = '{"calculate":"convert","amount":"¼ cup","to":"tsp"}'
    const answers = []
    for await (const answer of answerLines(new Response(request + '\\n[\\n' + request).body)) answers.push(answer)
    globalThis.answers = answers.map((answer) => JSON.parse(answer))
  `],
  // prettier-ignore
  '/scalar.js': ['text/javascript', `
    import init, { convert } from './node_modules/pourwright/src/scalar-web.js'
    await init()
    const modules = performance.getEntriesByType('resource').map(({ name }) => name).filter((name) => name.endsWith('.wasm'))
    globalThis.found = { answer: convert({ amount: '1 cup', to: 'mL' }).value, modules }
  `],
  // prettier-ignore
  '/ask.js': ['text/javascript', `
    import init, * as pourwright from './node_modules/pourwright/src/web.js'
    import { answerTo, jsonOf } from './calls.mjs'
    const { PourwrightError, calculate } = pourwright
    const started = performance.now()
    await init()
    const ready = performance.now() - started
    function answered(request) {
      try {
        return { result: calculate(request) }
      } catch (error) {
        if (!(error instanceof PourwrightError)) throw error
        return { faults: error.faults }
      }
    }
    globalThis.ask = (requests) => ({ ready, answers: requests.map(answered) })
    globalThis.call = (calculations, calls) => jsonOf(calls.map((call) => answerTo(pourwright, calculations, call)))
  `],
  '/calls.mjs': ['text/javascript', await readFile('calls.mjs')],
}

const server = createServer(async ({ url }, response) => {
  const page = PAGES[url]
  // Only the package is served, from the project that it is installed in.
  const file = normalize(`.${url}`)
  if (!page && !file.startsWith('node_modules/pourwright/')) return response.writeHead(404).end()
  const [type, body] = page ?? [TYPES[extname(file)], await readFile(file)]
  response.writeHead(200, { 'content-type': type, 'content-security-policy': POLICY }).end(body)
})
await new Promise((listening) => server.listen(0, '127.0.0.1', listening))

const browser = await chromium.launch({
  executablePath: process.env.POURWRIGHT_CHROMIUM,
  args: '--no-sandbox --disable-gpu --disable-quic --no-first-run --disable-background-networking --disable-component-update --disable-sync'.split(' '), // prettier-ignore
})
try {
  const page = await browser.newPage()
  const troubles = []
  page.on('pageerror', (error) => troubles.push(String(error)))
  page.on('console', (message) => message.type() === 'error' && troubles.push(message.text()))
  const address = `http://127.0.0.1:${server.address().port}`
  const open = async (path, global) => {
    await page.goto(address + path)
    const report = (error) => assert.fail(`${error}\n${troubles.join('\n')}`)
    await page.waitForFunction((global) => globalThis[global], global).catch(report)
  }
  await open('/', 'ask')
  // Text, so that no number is changed on its way out of the page; -0 alone is written as 0 by it.
  const ask = async (requests) => {
    const { ready, answers } = JSON.parse(await page.evaluate((list) => JSON.stringify(globalThis.ask(list)), requests))
    console.log(`ready after ${ready.toFixed(1)} ms in Chromium ${browser.version()}`)
    return answers
  }
  console.log(`${await compareVectors('chromium', ask)} vectors answered alike`)
  const call = async (calls) =>
    JSON.parse(await page.evaluate(([table, list]) => globalThis.call(table, list), [CALCULATIONS, calls]))
  console.log(`${await compareCalls('chromium', call)} calls answered alike`)
  await open('/scalar', 'found')
  assert.deepEqual(await page.evaluate(() => globalThis.found), {
    answer: 236.5882365,
    modules: [`${address}/node_modules/pourwright/build/pourwright_scalar_bg.wasm`],
  })
  await open('/parts', 'answers')
  const file = (part) => `${address}/node_modules/pourwright/build/pourwright_${part}_bg.wasm`
  assert.deepEqual(await page.evaluate(() => globalThis.answers), {
    first: [file('first')],
    value: 236.5882365,
    code: 'not-ready',
    later: 236.5882365,
    all: [file('first'), file('rest')],
  })
  await open('/lines', 'answers')
  const [first, fault, last] = await page.evaluate(() => globalThis.answers)
  assert.deepEqual([first.result.value, fault.faults[0].code, last], [12, 'not-json', first])
  assert.deepEqual(
    troubles.filter((trouble) => !/favicon/.test(trouble)),
    [],
  )
} finally {
  await browser.close()
  server.close()
}
