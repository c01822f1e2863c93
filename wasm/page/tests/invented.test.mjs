// What the page says to be invented: what is the demo's, entry by entry, and nothing that is the maker's.
import assert from 'node:assert/strict'
import { person } from './support.mjs'

const notice = (page) => page.locator('.invented')

person('is the demo, until it is changed', { view: 'orders' }, async (page) => {
  await notice(page).getByText('Demo data: shop, materials, orders and measurements are invented.').waitFor()
  const counts = await page.evaluate(async () => {
    const { book, orders } = (await import('./src/state.js')).state
    const { materials, formulas, molds, products } = book
    return [materials, formulas, molds, products, orders.lines].map((part) => Object.keys(part).length)
  })
  const [materials, formulas, molds, products, lines] = counts
  // A text about the book counts for nothing; one density that was measured does.
  await page.evaluate(async () => {
    const { editBook } = await import('./src/edits.js')
    editBook(['about'], 'The book of my shop.')
    editBook(['materials', 'plum', 'density'], '1.07 g/mL')
  })
  assert.equal(
    await notice(page).innerText(),
    `Still as in the demo, and invented: ${materials - 1} materials, ${formulas} formulas, ${molds} molds, ${products} products, ${lines} order lines.`,
  )
  // The demo day would replace what the maker has measured: that is asked first.
  let asked = 0
  page.on('dialog', (dialog) => {
    asked += 1
    dialog.dismiss()
  })
  await page.locator('nav.views a[href="#book"]').click()
  await page.getByRole('button', { name: 'Demo book and orders' }).click()
  assert.equal(asked, 1)
})

person('is nothing of a book of one’s own, whatever it says about itself', { view: 'orders' }, async (page) => {
  await page.evaluate(async () => {
    const { change, state } = await import('./src/state.js')
    const renewed = (entries) =>
      Object.fromEntries(Object.entries(entries).map(([name, entry]) => [name, { ...entry, notes: 'mine' }]))
    const { materials, formulas, molds, products } = state.book
    const own = Object.fromEntries(
      Object.entries({ materials, formulas, molds, products }).map(([part, entries]) => [part, renewed(entries)]),
    )
    const lines = state.orders.lines.map((line) => ({ ...line, order: `my ${line.order}` }))
    const about = 'A mold that I have invented.'
    change({ book: { ...state.book, ...own, about }, orders: { ...state.orders, lines, about } })
  })
  assert.equal(await notice(page).count(), 0)
})
