// The page of the add-in and its manifest in a real browser, under the strictest content-security policy that lets them run. A
// stand-in takes the place of the spreadsheet's own script.
import assert from 'node:assert/strict'
import { createServer } from 'node:http'

import { read } from './host.mjs'

const { chromium } = await import('../../js/node_modules/playwright-core/index.mjs')

const OFFICE = 'https://appsforoffice.microsoft.com'
const POLICY = `default-src 'none'; script-src 'self' 'wasm-unsafe-eval' ${OFFICE}`
const STAND_IN = `
  globalThis.associated = {}
  globalThis.CustomFunctions = { associate: (id, work) => { associated[id] = work }, Error, ErrorCode: {} }
`

const server = createServer((request, response) => {
  const type = { html: 'text/html', js: 'text/javascript', xml: 'text/xml' }[request.url.split('.').at(-1)]
  if (!type) return response.writeHead(404).end()
  response.writeHead(200, { 'content-type': type, 'content-security-policy': POLICY }).end(read(request.url.slice(1)))
})
await new Promise((listening) => server.listen(0, '127.0.0.1', listening))
const address = `http://127.0.0.1:${server.address().port}`
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM,
  args: '--no-sandbox --disable-gpu --disable-quic --no-first-run --disable-background-networking --disable-component-update --disable-sync'.split(' '), // prettier-ignore
})
try {
  const page = await browser.newPage()
  const troubles = []
  page.on('pageerror', (error) => troubles.push(String(error)))
  page.on('console', (message) => message.type() === 'error' && troubles.push(message.text()))
  await page.route(`${OFFICE}/**`, (route) => route.fulfill({ contentType: 'text/javascript', body: STAND_IN }))
  await page.goto(`${address}/functions.html`)
  assert.deepEqual(await page.evaluate(() => associated['CONVERT']([['¼ tsp'], ['1 cup']], [['mL']], null, {})), [
    [1.2322303984375],
    [236.5882365],
  ])
  assert.deepEqual(
    troubles.filter((trouble) => !/favicon|404/.test(trouble)),
    [],
  )

  const { error, named, used, addresses, version } = await page.evaluate((text) => {
    const manifest = new DOMParser().parseFromString(text, 'text/xml')
    const all = (name) => [...manifest.getElementsByTagName(name)]
    const attributes = (name) =>
      [...manifest.querySelectorAll(`[${name}]`)].map((element) => element.getAttribute(name))
    return {
      error: manifest.querySelector('parsererror')?.textContent,
      named: [...all('bt:Url'), ...all('bt:String')].map((element) => element.id),
      used: attributes('resid'),
      addresses: attributes('DefaultValue').filter((value) => value.startsWith('https:')),
      version: all('Version')[0].textContent,
    }
  }, read('manifest.xml'))
  assert.equal(error, undefined)
  assert.deepEqual(named.sort(), [...new Set(used)].sort())
  assert.match(version, /^\d+\.\d+\.\d+\.0$/)
  const [base] = addresses[0].match(/.*\//)
  for (const each of addresses) {
    assert.equal(new URL('.', each).href, base)
    assert.ok(read(each.slice(base.length)).length > 0)
  }
} finally {
  await browser.close()
  server.close()
}
