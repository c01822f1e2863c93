// Several tabs of the page, and what the browser stores for them.
import assert from 'node:assert/strict'
import { chooseFile, person, read } from './support.mjs'

const ticks = (page) => page.locator('[role="checkbox"][aria-checked="true"]')

/** Another tab of the same browser. */
async function another(page, context) {
  const tab = await context.newPage()
  await tab.goto(page.url())
  await tab.locator('html[data-whole]').waitFor()
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
  await page.locator('html[data-whole]').waitFor()
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

/** Breaks what is stored while no page of this address runs that could store it again. */
async function breakStore(page, ...places) {
  const address = page.url()
  await page.locator('html[data-stored]').waitFor()
  await page.goto(new URL('icon.svg', address).href)
  await page.evaluate(async (places) => {
    if (places.includes('local')) localStorage.setItem('pourwright', 'null')
    if (!places.includes('disk')) return
    const done = (request) =>
      new Promise((resolve, reject) => {
        request.onsuccess = () => resolve(request.result)
        request.onerror = () => reject(request.error)
      })
    const disk = await done(indexedDB.open('pourwright', 1))
    await done(disk.transaction('state', 'readwrite').objectStore('state').put('null', 'all'))
    disk.close()
  }, places)
  await page.goto(address)
  await page.locator('html[data-whole]').waitFor()
}

const beginsAnew = 'cannot be read (it is null): this is the demo.'

person('begin with the demo if the stored data cannot be read', {}, async (page) => {
  await breakStore(page, 'local', 'disk')
  await page.getByText(beginsAnew).waitFor()
})

person('lose nothing if only one of the two stores can be read', { view: 'book' }, async (page) => {
  const hold = page.getByLabel('Hold a degassing')
  for (const [place, minutes] of [
    ['local', '3'],
    ['disk', '4'],
  ]) {
    await hold.fill(minutes)
    await page.waitForFunction(
      (minutes) => JSON.parse(localStorage.getItem('pourwright') ?? '{}').hold === minutes,
      minutes,
    )
    await breakStore(page, place)
    assert.equal(await hold.inputValue(), minutes, place)
    assert.equal(await page.getByText(beginsAnew).count(), 0)
  }
})
