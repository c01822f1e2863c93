// Several tabs of the page, and what the browser stores for them.
import assert from 'node:assert/strict'
import { chooseFile, person, read } from './support.mjs'

const ticks = (page) => page.locator('[role="checkbox"][aria-checked="true"]')

/** Another tab of the same browser. */
async function another(page, context) {
  const tab = await context.newPage()
  await tab.goto(page.url())
  await tab.locator('html[data-ready]').waitFor()
  return tab
}

/** Waits until the browser has stored this number of ticks. */
const keeps = (page, count) =>
  page.waitForFunction(
    (count) => Object.keys(JSON.parse(localStorage.getItem('pourwright') ?? '{}').done ?? {}).length === count,
    count,
  )

person('follow each other, and an idle one stores nothing', {}, async (page, context) => {
  const idle = await another(page, context)
  for (const box of (await page.getByRole('checkbox').all()).slice(0, 4)) await box.click()
  await keeps(page, 4)
  await idle.waitForFunction(() => document.querySelectorAll('[role="checkbox"][aria-checked="true"]').length === 4)
  // It does not undo what it has not heard of.
  await idle.evaluate(() => addEventListener('storage', (event) => event.stopImmediatePropagation(), { capture: true }))
  await page.getByRole('checkbox').nth(4).click()
  await keeps(page, 5)
  await idle.close({ runBeforeUnload: true })
  await page.reload()
  await page.locator('html[data-ready]').waitFor()
  assert.equal(await ticks(page).count(), 5)
})

person('each store what was changed in them', { view: 'book' }, async (page, context) => {
  const other = await another(page, context)
  await other.evaluate(() =>
    addEventListener('storage', (event) => event.stopImmediatePropagation(), { capture: true }),
  )
  await page.getByLabel('Hold a degassing').fill('3')
  await page.waitForFunction(() => JSON.parse(localStorage.getItem('pourwright') ?? '{}').hold === '3')
  await other.getByRole('radio', { name: 'Metric' }).check({ force: true })
  await other.waitForFunction(() => JSON.parse(localStorage.getItem('pourwright')).scale === 'metric')
  assert.equal(await other.evaluate(() => JSON.parse(localStorage.getItem('pourwright')).hold), '3')
})

person('report that nothing is stored only as long as that is so', { view: 'book' }, async (page) => {
  await page.evaluate(() => {
    Storage.prototype.setItem = new Proxy(Storage.prototype.setItem, {
      apply: (keep, ...rest) => {
        if (globalThis.full) throw new DOMException('full', 'QuotaExceededError')
        return Reflect.apply(keep, ...rest)
      },
    })
    globalThis.full = true
  })
  const notice = page.getByText("does not store the page's data (QuotaExceededError)")
  await page.getByLabel('Hold a degassing').fill('3')
  await notice.waitFor()
  await page.evaluate(() => (globalThis.full = false))
  await page.getByLabel('Hold a degassing').fill('4')
  await notice.waitFor({ state: 'detached' })
  // The message on a bad file goes once a good one is read.
  await chooseFile(page, 'Open orders', 'list.txt', 'no list')
  await page.getByText('is not an order list').waitFor()
  await chooseFile(page, 'Open a book', 'book.json', await read('core/examples/demo/book.json'))
  assert.equal(await page.getByText('is not an order list').count(), 0)
})

person('begin with the demo if the stored data cannot be read', {}, async (page) => {
  await page.evaluate(() => localStorage.setItem('pourwright', 'null'))
  await page.reload()
  await page.locator('html[data-ready]').waitFor()
  await page.getByText('cannot be read (it is null): this is the demo.').waitFor()
})
