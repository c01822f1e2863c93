// Takes the figures of the page in one run: `node figures.mjs FOLDER [--write]`. The network carries 10 Mbit/s with 40 ms to and
// fro, and the processor is slowed four times; both by the browser's own tools. They are of this machine: no test depends on them.
import { readFile, writeFile } from 'node:fs/promises'
import { cpus, loadavg, totalmem } from 'node:os'
import { chromium } from 'playwright-core'
import { serve } from './serve.mjs'

const NETWORK = { offline: false, latency: 40, downloadThroughput: 10e6 / 8, uploadThroughput: 10e6 / 8 }
const SLOWED = 4
const TABLET = { viewport: { width: 820, height: 1180 } }

/** Visits of which the median is taken, of loading and of handling: the speed of a shared machine changes from one to the next. */
const VISITS = 5

const middle = (values) => values.toSorted((one, other) => one - other)[Math.floor(values.length / 2)]

/** What the browser reports of a visit, collected in the page from its beginning. */
function watch() {
  const seen = { paint: 0, largest: 0, shift: 0, tasks: [], ready: 0 }
  globalThis.seen = seen
  const on = (type, take) =>
    new PerformanceObserver((list) => list.getEntries().forEach(take)).observe({ type, buffered: true })
  on('paint', ({ name, startTime }) => name === 'first-contentful-paint' && (seen.paint = startTime))
  on('largest-contentful-paint', ({ startTime }) => (seen.largest = startTime))
  on('layout-shift', ({ value, hadRecentInput }) => hadRecentInput || (seen.shift += value))
  on('longtask', ({ startTime, duration }) => seen.tasks.push([startTime, duration]))
  new MutationObserver((_, observer) => {
    if (!document.documentElement?.dataset.ready) return
    seen.ready = performance.now()
    observer.disconnect()
  }).observe(document, { attributes: true, subtree: true, attributeFilter: ['data-ready'] })
}

async function slowed(context, page, network = NETWORK) {
  const session = await context.newCDPSession(page)
  await session.send('Network.enable')
  await session.send('Performance.enable')
  if (network) await session.send('Network.emulateNetworkConditions', network)
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWED })
  return session
}

/** What the page's main thread has had of the processor, in milliseconds: other work of the machine is not in it. */
async function processor(session) {
  const { metrics } = await session.send('Performance.getMetrics')
  return 1000 * metrics.find(({ name }) => name === 'ThreadTime').value
}

/** A first visit, or one after it: what was loaded until the page was ready, and when. */
async function visited(context, address) {
  const page = await context.newPage()
  await page.addInitScript(watch)
  const session = await slowed(context, page)
  const loads = { requests: 0, bytes: 0 }
  session.on('Network.requestWillBeSent', () => (loads.requests += 1))
  session.on('Network.loadingFinished', ({ encodedDataLength }) => (loads.bytes += encodedDataLength))
  await page.goto(`${address}#bench`)
  await page.locator('html[data-ready]').waitFor()
  const { requests, bytes } = loads
  const worked = await processor(session)
  // The largest paint and long tasks are reported a little later.
  await page.waitForTimeout(500)
  const seen = await page.evaluate(() => globalThis.seen)
  const blocked = seen.tasks
    .filter(([start]) => start > seen.paint && start < seen.ready)
    .reduce((sum, [, duration]) => sum + Math.max(0, duration - 50), 0)
  return { page, session, figures: { ...seen, blocked, worked, requests, kilobytes: bytes / 1000 } }
}

async function startOf(browser, address) {
  const [first, later] = [[], []]
  for (let round = 0; round < VISITS; round += 1) {
    const context = await browser.newContext(TABLET)
    const { page, figures } = await visited(context, address)
    first.push(figures)
    await page.evaluate(async () => {
      await navigator.serviceWorker.ready
      if (!navigator.serviceWorker.controller)
        await new Promise((done) => navigator.serviceWorker.addEventListener('controllerchange', done))
    })
    await page.close()
    later.push((await visited(context, address)).figures)
    await context.close()
  }
  const medians = (list) =>
    Object.fromEntries(
      ['ready', 'paint', 'largest', 'blocked', 'worked', 'shift', 'requests', 'kilobytes'].map((name) => [
        name,
        middle(list.map((figures) => figures[name])),
      ]),
    )
  return { first: medians(first), later: medians(later) }
}

/** Keys in the orders, each to the plan of the demo day on the page, laid out: the milliseconds of each. */
function keysToPlan(count) {
  const input = document.getElementById('orders/lines/0/pieces')
  return Array.from({ length: count }, (_, round) => {
    input.value = String(24 + (round % 9))
    const begin = performance.now()
    input.dispatchEvent(new Event('input'))
    document.body.getBoundingClientRect()
    return performance.now() - begin
  })
}

/** Steps of a drag along the salt plot, laid out: the milliseconds of each. */
function saltDrag(count) {
  const plot = document.querySelector('.plot')
  const { left, top, width } = plot.getBoundingClientRect()
  return Array.from({ length: count }, (_, step) => {
    const at = { clientX: left + width * (0.2 + (step % 60) / 100), clientY: top + 80, buttons: 1, bubbles: true }
    const begin = performance.now()
    plot.dispatchEvent(new PointerEvent('pointermove', at))
    document.body.getBoundingClientRect()
    return performance.now() - begin
  })
}

/** Milliseconds of something that is done again and again in a visit: the median, and the mean of the processor's time. */
async function handled(page, session, does) {
  await page.evaluate(does, 40)
  // What is stored after a change is no part of it.
  await page.waitForTimeout(500)
  const before = await processor(session)
  const times = await page.evaluate(does, 100)
  return { median: middle(times), worked: ((await processor(session)) - before) / times.length }
}

async function handlingOf(browser, address) {
  const context = await browser.newContext({ ...TABLET, serviceWorkers: 'block' })
  const page = await context.newPage()
  await page.goto(`${address}#orders`)
  await page.locator('html[data-whole]').waitFor()
  // However busy this machine is, the day is planned in the page, as it is where nothing else runs.
  await page.evaluate(async () => {
    const { planning } = await import(document.querySelector('script[src*="/page-"]').src)
    planning.limits.here = Infinity
  })
  const session = await slowed(context, page, null)
  const key = await handled(page, session, keysToPlan)
  await page.evaluate(() => (location.hash = '#salt'))
  await page.locator('.plot').waitFor()
  const salt = await handled(page, session, saltDrag)
  await context.close()
  return { key, salt }
}

async function handlingsOf(browser, address) {
  const visits = []
  for (let round = 0; round < VISITS; round += 1) visits.push(await handlingOf(browser, address))
  const medians = (what) =>
    Object.fromEntries(['median', 'worked'].map((name) => [name, middle(visits.map((visit) => visit[what][name]))]))
  return { key: medians('key'), salt: medians('salt') }
}

/** The memory of the page before and after three clocks have run for an hour. */
async function memoryOf(browser, address) {
  const context = await browser.newContext({ ...TABLET, serviceWorkers: 'block' })
  const page = await context.newPage()
  await page.clock.install({ time: '2027-03-02T08:00:00' })
  await page.goto(`${address}#bench`)
  await page.locator('html[data-whole]').waitFor()
  const session = await context.newCDPSession(page)
  await session.send('Performance.enable')
  const heap = async () => {
    await session.send('HeapProfiler.collectGarbage')
    const { metrics } = await session.send('Performance.getMetrics')
    const of = (name) => metrics.find((metric) => metric.name === name).value
    return { megabytes: of('JSHeapUsedSize') / 1e6, nodes: of('Nodes') }
  }
  for (const key of (await page.locator('button.start').all()).slice(0, 3)) await key.click()
  await page.clock.runFor(10_000)
  const before = await heap()
  const begun = await processor(session)
  await page.clock.runFor(3_600_000)
  const seconds = ((await processor(session)) - begun) / 1000
  const after = await heap()
  const timers = await page.getByRole('timer').count()
  await context.close()
  return { before, after, seconds, timers }
}

const [folder, option] = process.argv.slice(2)
if (!folder || ![undefined, '--write'].includes(option)) throw new Error('figures.mjs FOLDER [--write]')
const server = await serve(folder)
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
  args: '--no-sandbox --disable-gpu --disable-quic --no-first-run --disable-background-networking'.split(' '),
})
try {
  const address = `http://127.0.0.1:${server.address().port}/`
  const { first, later } = await startOf(browser, address)
  const handling = await handlingsOf(browser, address)
  const { before, after, seconds, timers } = await memoryOf(browser, address)
  const ms = (value) => `${value.toFixed(value < 20 ? 1 : 0)} ms`
  const rows = [
    ['ready', ms(first.ready), ms(later.ready)],
    ['first contentful paint', ms(first.paint), ms(later.paint)],
    ['largest contentful paint', ms(first.largest), ms(later.largest)],
    ['total blocking time', ms(first.blocked), ms(later.blocked)],
    ['processor, main thread, until ready', ms(first.worked), ms(later.worked)],
    ['cumulative layout shift', first.shift.toFixed(3), later.shift.toFixed(3)],
    ['requests', String(first.requests), String(later.requests)],
    ['over the wire', `${first.kilobytes.toFixed(0)} kB`, `${later.kilobytes.toFixed(0)} kB`],
  ]
  const held = [
    ['a key in the orders, to the plan of the demo day', ms(handling.key.median), ms(handling.key.worked)],
    ['a step of a drag along the salt plot', ms(handling.salt.median), ms(handling.salt.worked)],
  ]
  const clocks = [
    ['memory at their start', `${before.megabytes.toFixed(1)} MB, ${before.nodes} nodes`],
    [`memory after an hour, ${timers} of them still there`, `${after.megabytes.toFixed(1)} MB, ${after.nodes} nodes`],
    ['processor in that hour, not slowed', `${seconds.toFixed(1)} s`],
  ]
  const table = (head, rows) =>
    [head, head.map(() => '---'), ...rows].map((cells) => `| ${cells.join(' | ')} |`).join('\n')
  const text = [
    `Chromium ${browser.version()}, ${cpus().length} × ${cpus()[0].model}, ${(totalmem() / 2 ** 30).toFixed(0)} GiB, ${new Date().toISOString().slice(0, 10)}. Programs that waited for the processor: ${loadavg()[0].toFixed(1)}.`,
    table(['loading, median of ' + VISITS, 'first visit', 'later visit'], rows),
    table([`handling, median of ${VISITS} visits`, 'median', 'processor'], held),
    table(['three clocks in the whole bench', ''], clocks),
  ].join('\n\n')
  console.log(text)
  if (option === '--write') {
    const file = new URL('../FIGURES.md', import.meta.url)
    const [head] = (await readFile(file, 'utf8')).split(/(?<=<!-- figures -->\n)/)
    await writeFile(file, `${head}\n${text}\n`)
  }
} finally {
  await browser.close()
  server.close()
  server.closeAllConnections()
}
