// What keeps the page quick: counts, not times. And that a tablet can install it.
import assert from 'node:assert/strict'
import { readFile, readdir } from 'node:fs/promises'
import { SourceMap } from 'node:module'
import { test } from 'node:test'
import { brotliDecompressSync } from 'node:zlib'
import { built, open, person, visit } from './support.mjs'

/** Files of a visit: index, style, what begins, script, two modules, demo; the manifest and its icon. */
const REQUESTS = 9

person('draws clocks alone, and the page when one is over', { clock: '2027-03-02T08:00:00' }, async (page) => {
  await page.clock.pauseAt('2027-03-02T08:10:00')
  const start = page.locator('button.start')
  await start.first().click()
  await page.locator('.bursts button.start').first().click()
  assert.equal(await page.getByRole('timer').count(), 2)
  await page.clock.runFor(1000)
  // Counts the drawings of the whole page from here on, and keeps its steps.
  await page.evaluate(async () => {
    const [{ onChange }, { shownSteps }] = await Promise.all([import('./src/state.js'), import('./src/shown.js')])
    Object.assign(globalThis, { drawn: 0, shownSteps, before: shownSteps() })
    onChange(() => (globalThis.drawn += 1))
  })
  const faces = () => page.locator('.timer .face, output.running').allInnerTexts()
  const [up, down, ...own] = await faces()
  assert.equal(own.length, 2)
  await page.clock.runFor(10_000)
  const seconds = (text) => text.split(':').reduce((sum, part) => 60 * sum + Number(part), 0)
  assert.deepEqual((await faces()).map(seconds).slice(0, 2), [seconds(up) + 10, seconds(down) - 10])
  assert.equal(await page.evaluate(() => globalThis.drawn), 0)
  // Once when the burst is over, and not again.
  await page.clock.runFor((seconds(down) - 10) * 1000 + 2000)
  assert.equal(await page.locator('.timer.over').count(), 1)
  assert.equal(await page.evaluate(() => globalThis.drawn), 1)
  await page.clock.runFor(30_000)
  assert.equal(await page.evaluate(() => globalThis.drawn), 1)
  // A box that is ticked makes no steps again; another scale does.
  await page.getByRole('checkbox').first().click()
  assert.ok(await page.evaluate(() => globalThis.drawn > 1 && globalThis.shownSteps() === globalThis.before))
  await page.getByRole('radio', { name: 'Metric' }).check({ force: true })
  assert.ok(await page.evaluate(() => globalThis.shownSteps() !== globalThis.before))
})

person('makes the steps of a plan when they are first looked at', {}, async (page) => {
  await page.getByRole('link', { name: 'Orders' }).click()
  await page.locator('[id="orders/lines/0/pieces"]').fill('30')
  const found = await page.evaluate(async () => {
    const [{ PLAN_FIELDS, ask, quoteOf }, { shownPlan }] = await Promise.all([
      import('./src/core.js'),
      import('./src/shown.js'),
    ])
    const { plan, made } = shownPlan()
    const isMade = () => Object.hasOwn(Object.getOwnPropertyDescriptor(plan, 'steps'), 'value')
    const before = isMade()
    const quote = quoteOf(plan)
    const { calculate, ...whole } = ask({ calculate: 'plan', book: made.book, orders: made.orders }).answer
    const same = JSON.stringify(plan) === JSON.stringify(whole)
    return { before, after: isMade(), quote, same, fields: [PLAN_FIELDS, Object.keys(whole)] }
  })
  assert.deepEqual([found.before, found.after, found.same], [false, true, true])
  assert.equal(found.quote.steps, undefined)
  assert.equal(found.quote.lines[0].pieces, 30)
  assert.deepEqual(...found.fields)
})

test('is few files, compressed, and asked for once', async () => {
  const own = await open()
  const asked = []
  own.server.on('request', ({ url }, response) => {
    const { writeHead } = response
    response.writeHead = (status, sent) => {
      asked.push({ url, status, sent })
      return writeHead.call(response, status, sent)
    }
  })
  try {
    // Not by `visit`: a browser whose requests are looked at by a test does not keep files.
    const context = await own.browser.newContext({ locale: 'en-US', serviceWorkers: 'block' })
    const shown = async () => {
      const page = await context.newPage()
      await page.goto(own.address)
      await page.locator('html[data-whole]').waitFor()
    }
    await shown()
    const loads = asked.splice(0)
    assert.ok(loads.length <= REQUESTS, loads.map(({ url }) => url).join(' '))
    for (const { url, sent } of loads) {
      if (/\.png$/.test(url)) continue
      assert.equal(sent['content-encoding'], 'br', url)
      const file = url === '/' ? 'index.html' : url.slice(1)
      const [plain, small] = await Promise.all([file, `${file}.br`].map((name) => readFile(`${built}${name}`)))
      assert.ok(brotliDecompressSync(small).equals(plain), url)
    }
    // The module is compiled while it is loaded: the browser must see its type.
    const module = loads.find(({ url }) => url.endsWith('.wasm'))
    assert.equal(module.sent['content-type'], 'application/wasm')
    // Another visit asks whether the page has changed, and has the rest.
    await shown()
    assert.deepEqual(
      asked.filter(({ url }) => url.startsWith('/files/')).map(({ url }) => url),
      [],
    )
    assert.deepEqual(
      asked.filter(({ url }) => url === '/').map(({ status }) => status),
      [304],
    )
  } finally {
    await own.close()
  }
})

test('brings another language only to who reads it', async () => {
  const own = await open()
  const asked = []
  own.server.on('request', ({ url }) => asked.push(url))
  try {
    const { page, wrongs } = await visit(own, { locale: 'de-AT' })
    await page.getByRole('link', { name: 'Aufträge' }).waitFor()
    assert.equal(asked.filter((url) => /\/de-\w+\.js$/.test(url)).length, 1)
    assert.deepEqual(wrongs, [])
  } finally {
    await own.close()
  }
})

person('has errors with a place in the sources', {}, async (page) => {
  const stack = await page.evaluate(async () => {
    const { valueAt } = await import('./src/state.js')
    try {
      return valueAt({}, null)
    } catch ({ stack }) {
      return stack
    }
  })
  const [, file, line, column] = /(files\/page-\w+\.js):(\d+):(\d+)/.exec(stack)
  const map = new SourceMap(JSON.parse(await readFile(`${built}${file}.map`, 'utf8')))
  const { originalSource, originalLine } = map.findEntry(Number(line) - 1, Number(column) - 1)
  assert.match(originalSource, /wasm\/page\/src\/state\.js$/)
  const source = await readFile(new URL('../src/state.js', import.meta.url), 'utf8')
  assert.match(source.split('\n')[originalLine], /path\.reduce/)
})

test('can be installed, with icons of their stated sizes', async () => {
  const own = await open()
  try {
    const { page, context } = await visit(own, { serviceWorkers: 'allow' })
    await page.evaluate(() => navigator.serviceWorker.ready)
    const session = await context.newCDPSession(page)
    const { errors, data } = await session.send('Page.getAppManifest')
    assert.deepEqual(errors, [])
    const { installabilityErrors } = await session.send('Page.getInstallabilityErrors')
    // A private window, as that of a test, installs nothing.
    const others = installabilityErrors.filter(({ errorId }) => errorId !== 'in-incognito')
    assert.deepEqual(others, [])
    const { icons } = JSON.parse(data)
    for (const { src, sizes } of icons.filter(({ type }) => type === 'image/png')) {
      const bytes = await readFile(`${built}${src}`)
      // The size is the first of a PNG's data.
      assert.equal(`${bytes.readUInt32BE(16)}x${bytes.readUInt32BE(20)}`, sizes, src)
    }
    for (const size of ['192x192', '512x512'])
      assert.ok(icons.some(({ sizes, purpose }) => sizes === size && purpose === 'maskable'))
    const listed = new Set((await readFile(`${built}service-worker.js`, 'utf8')).match(/FILES = '(.*)'/)[1].split(' '))
    const needed = (await readdir(`${built}files`)).filter((file) => !/\.(br|gz|map|LICENSE)$/.test(file))
    for (const file of needed) assert.ok(listed.has(`files/${file}`), file)
  } finally {
    await own.close()
  }
})
