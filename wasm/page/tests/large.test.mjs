// Days that are large, by intent or by a slip: the page stays free, asks back, and comes back after a reload.
import assert from 'node:assert/strict'
import { test } from 'node:test'
import { chooseFile, go, line, open, person, picture, pot, read, visit } from './support.mjs'

const demo = async () => JSON.parse(await read('core/examples/demo/orders.json'))
const pieces = (page) => line(page, 1).getByRole('textbox', { name: 'Pieces', exact: true })
const stop = (page) => page.getByRole('button', { name: 'Stop', exact: true })
const ready = (page) => page.locator('main[aria-busy="false"]').waitFor({ timeout: 120_000 })
const nodes = (page) => page.evaluate(() => document.querySelectorAll('*').length)

/** Milliseconds of the longest task of the page while `body` runs, and those of a redraw after it. */
async function longest(page, body) {
  await page.evaluate(() => {
    globalThis.tasks = [0]
    new PerformanceObserver((list) => tasks.push(...list.getEntries().map(({ duration }) => duration))).observe({
      type: 'longtask',
    })
  })
  await body()
  return page.evaluate(async () => {
    await new Promise((done) => setTimeout(done, 100))
    const task = Math.max(...globalThis.tasks)
    const { change } = await import('./src/state.js')
    const begun = performance.now()
    change()
    return { task, redraw: performance.now() - begun }
  })
}

/** A plan that takes as long as a test lets it: the worker of the page answers nothing. */
const withSilentWorkers = (page) =>
  page.evaluate(() => {
    const Real = globalThis.Worker
    globalThis.ended = 0
    globalThis.silent = true
    globalThis.Worker = class extends Real {
      postMessage(message) {
        if (!globalThis.silent) super.postMessage(message)
      }
      terminate() {
        globalThis.ended += 1
        super.terminate()
      }
    }
  })

person('ask back before 100,000 pieces, and stay free with them', { view: 'orders' }, async (page) => {
  await pieces(page).fill('100000')
  await page.getByText(/100,183 pieces, 100,000 of them in line 1: about 1,\d\d\d pots. Is that right\?/).waitFor()
  await picture(page, 'a slip')
  // The plan shown is not taken for that of these orders.
  assert.equal(await page.locator('.comes-to').count(), 0)
  await go(page, 'Bench')
  await page.getByText('The plan shown here is an earlier one.').waitFor()
  const { task, redraw } = await longest(page, async () => {
    await page.getByRole('button', { name: 'Keep 100,183 pieces' }).click()
    await stop(page).waitFor()
    await ready(page)
  })
  await page
    .getByText(/Pots 1 to 20 of 1,\d\d\d/)
    .first()
    .waitFor()
  const count = await nodes(page)
  console.log(
    `# 100,000 pieces: longest task of the page ${task.toFixed(0)} ms, a redraw ${redraw.toFixed(0)} ms, ${count} elements`,
  )
  assert.ok(count < 20_000, `${count} elements`)
  // The rest of the day is a key away.
  const parts = page.getByRole('navigation', { name: 'Parts of the list: Pots' }).last()
  await parts.getByRole('button', { name: 'Later' }).click()
  await page
    .getByText(/Pots 21 to 40 of 1,\d\d\d/)
    .first()
    .waitFor()
  await page.getByRole('button', { name: 'Done', exact: true }).click()
  await page
    .getByText(/Pots 1 to 20 of 1,\d\d\d/)
    .first()
    .waitFor()
  // They stay as they were kept, and are not asked again.
  await page.reload()
  await page.locator('html[data-whole]').waitFor()
  await ready(page)
  await page
    .getByText(/Pots 1 to 20 of 1,\d\d\d/)
    .first()
    .waitFor()
  await go(page, 'Orders')
  await pieces(page).fill('24')
  await ready(page)
  assert.match(await line(page, 1).locator('.comes-to').innerText(), /g each/)
  // What is begun is known; after an ordinary day another such number is a slip again.
  await pieces(page).fill('100000')
  await page.getByText('9.56 g each').waitFor()
  await pieces(page).fill('24')
  await ready(page)
  await pieces(page).fill('100001')
  await page.getByText('Is that right?').waitFor()
})

person('of 500 lines are drawn in parts', { view: 'book' }, async (page) => {
  const orders = await demo()
  const lines = Array.from({ length: 500 }, (_, at) => ({
    ...orders.lines[at % 10],
    order: String(at),
    promised: undefined,
  }))
  await chooseFile(page, 'Open orders', 'orders.json', JSON.stringify({ ...orders, lines }))
  const keep = page.getByRole('button', { name: /^Keep/ })
  await keep.click()
  await ready(page)
  await go(page, 'Orders')
  assert.equal(await page.locator('.line').count(), 25)
  await page.getByText('Lines 1 to 25 of 500').first().waitFor()
  const { task, redraw } = await longest(page, async () => {
    await pieces(page).fill('25')
    await ready(page)
  })
  const count = await nodes(page)
  console.log(
    `# 500 lines: longest task of the page ${task.toFixed(0)} ms, a redraw ${redraw.toFixed(0)} ms, ${count} elements`,
  )
  assert.ok(count < 20_000, `${count} elements`)
  // A fault is found wherever its line is.
  await go(page, 'Book')
  lines[321] = { ...lines[321], pieces: 'many' }
  await chooseFile(page, 'Open orders', 'orders.json', JSON.stringify({ ...orders, lines }))
  await ready(page)
  await go(page, 'Orders')
  await page
    .getByRole('link', { name: /lines › no. 322/ })
    .first()
    .click()
  await page.waitForFunction(() => document.activeElement.id.startsWith('orders/lines/321'))
})

person('can be stopped, and give way to a newer edit', { view: 'orders' }, async (page) => {
  await withSilentWorkers(page)
  await pieces(page).fill('1500')
  await stop(page).waitFor()
  assert.equal(await page.locator('.comes-to').count(), 0)
  await picture(page, 'a plan under way')
  await stop(page).click()
  await page.getByText('The calculation of the plan was stopped.').waitFor()
  assert.equal(await page.evaluate(() => globalThis.ended), 1)
  await page.getByRole('button', { name: 'Calculate it again' }).click()
  await stop(page).waitFor()
  // A newer edit ends the older calculation, and its own result is shown.
  await page.evaluate(() => (globalThis.silent = false))
  await pieces(page).fill('1600')
  assert.equal(await page.evaluate(() => globalThis.ended), 2)
  await ready(page)
  await go(page, 'Bench')
  await pot(page, 'A').getByText('dusk finger × 1600').waitFor()
  // A small day ends it too, and is there at once.
  await go(page, 'Orders')
  await page.evaluate(() => (globalThis.silent = true))
  await pieces(page).fill('1700')
  await pieces(page).fill('24')
  assert.match(await line(page, 1).locator('.comes-to').innerText(), /g each/)
  assert.equal(await stop(page).count(), 0)
})

person('show no view of a changed book before it is read', { view: 'orders' }, async (page) => {
  await withSilentWorkers(page)
  await page.evaluate(async () => {
    const { change, state } = await import('./src/state.js')
    const [first, ...others] = state.orders.lines
    history.replaceState(null, '', '#salt')
    change({
      book: { ...state.book, molds: null },
      orders: { ...state.orders, lines: [{ ...first, pieces: 1500 }, ...others] },
    })
  })
  await stop(page).waitFor()
  assert.equal(await page.getByText('cannot be shown').count(), 0)
})

person('are given up after a time, said so', { view: 'orders', clock: '2027-03-02T08:00:00' }, async (page) => {
  await withSilentWorkers(page)
  await pieces(page).fill('1500')
  await stop(page).waitFor()
  await page.clock.runFor(31_000)
  await page.getByText('The plan was not ready after 30 s').waitFor()
  // Who asks again means it.
  await page.getByRole('button', { name: 'Calculate it again' }).click()
  await page.clock.runFor(61_000)
  assert.equal(await stop(page).count(), 1)
})

person('that did not finish wait for a key after a reload', { view: 'orders' }, async (page) => {
  await withSilentWorkers(page)
  await pieces(page).fill('1500')
  await stop(page).waitFor()
  await page.waitForFunction(() => JSON.parse(localStorage.getItem('pourwright'))?.orders.lines[0].pieces === 1500)
  await page.reload()
  await page.locator('html[data-whole]').waitFor()
  await page.getByText('The last visit ended before its plan was calculated.').waitFor()
  assert.equal(await pieces(page).inputValue(), '1500')
  await picture(page, 'after a plan that did not finish')
  await page.getByRole('button', { name: 'Calculate it now' }).click()
  await ready(page)
  assert.match(await line(page, 1).locator('.comes-to').innerText(), /g each/)
  // One that did, does not.
  await page.reload()
  await page.locator('html[data-whole]').waitFor()
  await ready(page)
  assert.match(await line(page, 1).locator('.comes-to').innerText(), /g each/)
})

test('are planned in the page where the browser has no workers', async () => {
  const own = await open()
  try {
    const { page, wrongs } = await visit(own, { view: 'orders' })
    await page.evaluate(() => delete globalThis.Worker)
    await pieces(page).fill('1500')
    assert.match(await line(page, 1).locator('.comes-to').innerText(), /g each/)
    assert.deepEqual(wrongs, [])
  } finally {
    await own.close()
  }
})

person('show a slip on a phone', { view: 'orders', viewport: { width: 390, height: 844 } }, async (page) => {
  await pieces(page).fill('100000')
  await page.getByText('Is that right?').waitFor()
  await picture(page, 'a slip on a phone')
  await page.getByRole('button', { name: /^Keep/ }).click()
  await stop(page).waitFor()
  await picture(page, 'a plan under way on a phone')
  await ready(page)
  await go(page, 'Bench')
  await picture(page, 'a long day on a phone')
  const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)
  assert.ok(wide <= 0, `${wide} px too wide`)
})
