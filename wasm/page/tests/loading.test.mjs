// A first visit draws the demo day by the first part of the library, while the rest is still loading.
import assert from 'node:assert/strict'
import { after, test } from 'node:test'
import { go, open, withSources } from './support.mjs'

const opened = open()
after(async () => (await opened).close())

/** A first visit that is ready while the rest of the library is held back: the page, and what lets the rest come or fail. */
async function begun(view = 'bench') {
  const { browser, address } = await opened
  const context = await browser.newContext({ viewport: { width: 1180, height: 820 }, serviceWorkers: 'block' })
  const page = await context.newPage()
  const wrongs = []
  page.on('pageerror', (error) => wrongs.push(String(error)))
  let letThrough
  const held = new Promise((done) => (letThrough = done))
  await context.route(/pourwright-rest/, async (route) => ((await held) ? route.continue() : route.abort()))
  await withSources(context)
  await page.goto(`${address}#${view}`)
  await page.locator('html[data-ready]').waitFor()
  assert.equal(await page.locator('html[data-whole]').count(), 0)
  const comes = async () => {
    letThrough(true)
    await page.locator('html[data-whole]').waitFor()
  }
  return { page, context, wrongs, comes, fails: () => letThrough(false) }
}

const notice = (page) => page.locator('main .notice')
const STILL = 'This part of the page is still loading. Wait a moment.'

test('plans the demo, takes orders and ticks', async () => {
  const { page, context, wrongs, comes } = await begun()
  await page.locator('.foot .done-next').waitFor()
  await go(page, 'Orders')
  const pieces = page.locator('[id="orders/lines/0/pieces"]')
  const isPlanned = (count) =>
    page.waitForFunction(async (count) => {
      const { plan, made } = (await import('./src/shown.js')).shownPlan()
      return made.status === 'done' && plan.lines[0].pieces === count
    }, count)
  await pieces.fill('36')
  await isPlanned(36)
  await go(page, 'Bench')
  await page.locator('.foot .done-next').click()
  assert.equal(await page.evaluate(async () => (await import('./src/state.js')).state.work !== null), true)
  assert.equal(await notice(page).count(), 0)
  // How a day goes on from what is done is in the rest.
  await go(page, 'Orders')
  await pieces.fill('30')
  await page.getByText('Calculating the plan …').waitFor()
  await comes()
  await page.getByText('Calculating the plan …').waitFor({ state: 'detached' })
  await isPlanned(30)
  assert.deepEqual(wrongs, [])
  await context.close()
})

test('draws the bench again once there is what it needs', async () => {
  const { page, context, wrongs, comes } = await begun()
  await page.getByRole('button', { name: 'Other amount' }).click()
  await page.locator('.pad').getByRole('button', { name: '5', exact: true }).click()
  await notice(page).filter({ hasText: STILL }).waitFor()
  assert.equal(await page.locator('.pad').count(), 0)
  await comes()
  await page.locator('.pad .tapped').getByText('5 g').waitFor()
  assert.equal(await notice(page).count(), 0)
  assert.deepEqual(wrongs, [])
  await context.close()
})

test('waits for all of it in another view', async () => {
  const { browser, address } = await opened
  const context = await browser.newContext({ serviceWorkers: 'block' })
  const page = await context.newPage()
  let letThrough
  const held = new Promise((done) => (letThrough = done))
  await context.route(/pourwright-rest/, async (route) => {
    await held
    return route.continue()
  })
  const asked = page.waitForRequest(/pourwright-rest/)
  await page.goto(`${address}#color`)
  await asked
  assert.equal(await page.locator('html[data-ready]').count(), 0)
  letThrough()
  await page.locator('html[data-ready][data-whole]').waitFor()
  await context.close()
})

test('reports in place of a press that what it needs is still loading', async () => {
  const { page, context, wrongs, comes } = await begun()
  // By an error in a handler, and in a promise.
  for (const way of ['now', 'later']) {
    await page.evaluate(async (way) => {
      const { ask } = await import('./src/core.js')
      const press = () => ask({ calculate: 'let-down-series', colorant: 'plum' })
      setTimeout(way === 'now' ? press : async () => press())
    }, way)
    await notice(page).filter({ hasText: STILL }).waitFor()
    await page.evaluate(async () => (await import('./src/state.js')).change({ notice: '' }))
  }
  await page.evaluate(async (notice) => (await import('./src/state.js')).change({ notice }), STILL)
  await comes()
  assert.equal(await notice(page).count(), 0)
  assert.deepEqual(wrongs, [])
  await context.close()
})

test('reports that a part could not be loaded, and where it is needed', async () => {
  const { page, context, wrongs, fails } = await begun()
  fails()
  await notice(page).filter({ hasText: 'A part of the page could not be loaded' }).waitFor()
  await page.getByRole('button', { name: 'Other amount' }).click()
  await page.locator('.pad').getByRole('button', { name: '5', exact: true }).click()
  // In place of the pad, and above.
  await page.waitForFunction(() => document.querySelectorAll('main .notice').length === 2)
  assert.equal(await page.locator('html[data-whole]').count(), 0)
  assert.deepEqual(wrongs, [])
  await context.close()
})
