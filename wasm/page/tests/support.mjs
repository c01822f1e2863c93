// What the tests share: the served page, a browser, and a visit that records what must not happen.
import assert from 'node:assert/strict'
import { mkdir, readFile } from 'node:fs/promises'
import { after, test } from 'node:test'
import { chromium } from 'playwright-core'
import { serve } from '../tools/serve.mjs'

const root = new URL('../../../', import.meta.url)
export const built = new URL('target/page/', root).pathname
export const pictures = new URL('target/page-pictures/', root).pathname

export const read = (path) => readFile(new URL(path, root), 'utf8')

export const QUIET =
  '--no-sandbox --disable-gpu --disable-quic --no-first-run --disable-background-networking --disable-component-update --disable-sync'

/** Serves the page and opens a browser; `close` ends both. */
export async function open(folder = built) {
  await mkdir(pictures, { recursive: true })
  const server = await serve(folder)
  const browser = await chromium.launch({
    executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
    args: QUIET.split(' '),
  })
  const address = `http://127.0.0.1:${server.address().port}/`
  const close = async () => {
    await browser.close()
    server.close()
  }
  return { address, browser, server, close }
}

/** A factor that slows the page down, to find what a test fails to wait for; the network is later than files. */
const slow = Number(process.env.SLOW ?? 0)

async function slowDown(context, page) {
  const session = await context.newCDPSession(page)
  await session.send('Emulation.setCPUThrottlingRate', { rate: slow })
  await page.addInitScript((late) => {
    const { setTimeout } = globalThis
    for (const [holder, name, times] of [
      [Blob.prototype, 'text', 1],
      [globalThis, 'fetch', 3],
    ]) {
      const prompt = holder[name]
      holder[name] = async function (...given) {
        await new Promise((done) => setTimeout(done, times * late))
        return prompt.apply(this, given)
      }
    }
  }, 100 * slow)
}

/**
 * Lets tests import a source by its own name, `import('./src/state.js')`: they get it from the one file that the page is, as
 * `src/page.js` exports it there.
 */
export async function withSources(context) {
  const names = [...(await read('wasm/page/src/page.js')).matchAll(/^export \* as (\w+) from '\.\/(.+)'$/gm)]
  const exported = new Map(names.map(([, name, file]) => [file, name]))
  await context.route(/\/src\/[\w-]+\.js$/, async (route) => {
    const file = new URL(route.request().url()).pathname.split('/').at(-1)
    if (!exported.has(file)) return route.fulfill({ status: 404, body: `src/page.js does not export ${file}` })
    const source = await read(`wasm/page/src/${file}`)
    const own = [...source.matchAll(/^export (?:async )?(?:const|let|function|class) (\w+)/gm)].map(([, name]) => name)
    const page = `await import(document.querySelector('script[src*="/page-"]').src)`
    return route.fulfill({
      contentType: 'text/javascript',
      body: `const { ${exported.get(file)}: own } = ${page}\nexport const { ${own.join(', ')} } = own\n`,
    })
  })
}

/** Days of ordinary size are planned within the keystroke, however slow the machine: no test depends on its speed. */
const planHere = (page) =>
  page.evaluate(async () => {
    const { limits } = await import('./src/planning.js')
    limits.here = Infinity
  })

/** Shows the whole pots at the bench. */
export const showWhole = (page) =>
  page.evaluate(async () => {
    const { change, state } = await import('./src/state.js')
    change({ bench: { ...state.bench, whole: true } })
  })

/** A visit in a browser context of its own; `wrongs` collects errors, policy violations and foreign requests. */
/** `step`: whether the bench shows one step, as it does at first, and not the whole pots. */
export async function visit({ address, browser }, { view = 'bench', clock, step = false, ...settings } = {}) {
  const context = await browser.newContext({
    viewport: { width: 1180, height: 820 },
    serviceWorkers: 'block',
    ...settings,
  })
  const page = await context.newPage()
  const wrongs = []
  page.on('pageerror', (error) => wrongs.push(String(error)))
  page.on('console', (message) => {
    // Playwright's own note that it blocks service workers.
    if (message.type() !== 'log' && !/Service Worker registration blocked/.test(message.text()))
      wrongs.push(message.text())
  })
  page.on('request', (request) => {
    if (!/^(blob|data):/.test(request.url()) && !request.url().startsWith(address))
      wrongs.push(`request to ${request.url()}`)
  })
  await page.addInitScript(() => {
    addEventListener('securitypolicyviolation', (event) =>
      console.error(`policy: ${event.violatedDirective} ${event.blockedURI}`),
    )
  })
  await withSources(context)
  if (slow) await slowDown(context, page)
  if (clock) await page.clock.install({ time: clock })
  await page.goto(`${address}#${view}`)
  await page.locator('html[data-whole]').waitFor()
  await planHere(page)
  if (!step) await showWhole(page)
  return { page, context, wrongs }
}

/** Goes to another view, and waits for it: the page gets its new address after the click. */
export async function go(page, name) {
  const views = page.getByRole('navigation', { name: 'Views' })
  const key = views.getByRole('link', { name })
  if (!(await key.isVisible())) await views.getByRole('button').click()
  await key.click()
  await views.locator('a[aria-current="page"]', { hasText: name }).waitFor({ state: 'attached' })
}

/** Shows a part of the book in its view. */
export async function bookPart(page, name) {
  const key = page.getByRole('navigation', { name: 'Parts of the book' }).getByRole('button', { name })
  await key.click()
  await key.and(page.locator('[aria-current="true"]')).waitFor()
}

/** Longer than the time in which two presses count as one. */
export const BOUNCE = 600

const taken = (page, name, more = {}) => page.screenshot({ path: `${pictures}${name}.png`, ...more })

/** Saves a screenshot to look at, if that is not left out. */
export const picture = process.env.PICTURES === '0' ? async () => {} : taken

let opened = null

/** The server and browser of a test file, opened at its first test and closed after the last. */
function shop() {
  opened ??= open()
  return opened
}

after(async () => (await opened)?.close())

/** A test with a visit of its own, without errors. */
export function person(does, settings, body) {
  test(does, async () => {
    const { page, context, wrongs } = await visit(await shop(), settings)
    try {
      await body(page, context)
      assert.deepEqual(wrongs, [])
    } catch (failure) {
      await taken(page, `failed ${does.replaceAll(/\W+/g, '-')}`)
      throw failure
    } finally {
      await context.close()
    }
  })
}

export const pot = (page, letter) => page.getByRole('region', { name: `Pot ${letter}`, exact: true })
export const line = (page, number) =>
  page
    .getByRole('main')
    .getByRole('listitem')
    .and(page.locator('.line'))
    .nth(number - 1)

/** Opens a file, and waits until it has been read or refused. */
export async function chooseFile(page, label, name, text) {
  await page.getByLabel(label).setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) })
  await page.locator('main[aria-busy="false"]').waitFor()
}

/** The library's reply in the page. */
export const ask = (page, request) =>
  page.evaluate(async (request) => {
    const [core, { state }] = await Promise.all([import('./src/core.js'), import('./src/state.js')])
    return core.ask({ book: state.book, ...request })
  }, request)

export const planOf = (page) =>
  page.evaluate(async () => {
    const [core, { state }] = await Promise.all([import('./src/core.js'), import('./src/state.js')])
    return core.plan(state.book, state.orders).plan
  })

/** The bench sheet of the day, with its notes. */
export const sheetOf = (page) =>
  page.evaluate(async () => {
    const {
      Book,
      state: { state },
    } = await import(document.querySelector('script[src*="/page-"]').src)
    const book = new Book(state.book)
    return `${book.sheet(state.orders)}\n${book.notes(state.orders)}`
  })

/** The demo's documents in a metric shop, which has no fluid ounces. */
export async function metricDemo() {
  const [book, orders] = await Promise.all(['book', 'orders'].map((name) => read(`core/examples/demo/${name}.json`)))
  return {
    book: book.replace('us-customary', 'metric').replace('"holds": "4 fl oz"', '"holds": "120 mL"'),
    orders: orders
      .replace('12 fl oz', '350 mL')
      .replace('2 fl oz', '60 mL')
      .replace('1 gal', '3.8 L')
      .replace('1 qt', '950 mL'),
  }
}
