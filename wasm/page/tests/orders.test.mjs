// The order list: changes and faults.
import assert from 'node:assert/strict'
import { BOUNCE, chooseFile, go, line, person, picture, planOf, pot, read } from './support.mjs'

person('change and the plan follows at once', { view: 'orders' }, async (page) => {
  const packs = line(page, 3)
  await packs.getByRole('button', { name: 'One more: Packs' }).click()
  await packs.getByRole('button', { name: 'One more: Packs' }).click()
  assert.match(await packs.innerText(), /36 pieces/)
  await go(page, 'Bench')
  assert.match(await pot(page, 'B').innerText(), /reed paddle × 36/)
  // 36 good ones of 3 cavities with 3 % of rejects take more than 12 shots.
  const { stages } = (await planOf(page)).pots.find(({ pot }) => pot === 'B')
  assert.equal(stages[0].draws.find(({ mold }) => mold === 'paddle-4').shots, 13)
  assert.match(await pot(page, 'B').innerText(), /Shoot paddle-4: .*\b13\b/)
  await picture(page, 'bench')
})

person('take a new line, by mold and formulas', { view: 'orders' }, async (page) => {
  await page.getByRole('button', { name: 'Add a line' }).click()
  const added = line(page, 11)
  await added.getByLabel('Product').selectOption('by mold and formulas')
  await added.getByLabel('Mold').selectOption('grub-2')
  await added.getByLabel('Formula').selectOption('shell')
  await added.getByRole('button', { name: 'add another' }).click()
  await added.getByLabel('Formula').nth(1).selectOption('soft')
  await added.getByLabel('Pieces', { exact: true }).getByRole('textbox').fill('40')
  await go(page, 'Bench')
  assert.match(await page.getByRole('main').innerText(), /shell \+ soft × 40/)
})

person('show every fault next to its field, all at once', { view: 'orders' }, async (page) => {
  const pieces = line(page, 1).getByLabel('Pieces', { exact: true }).getByRole('textbox')
  await pieces.fill('many')
  await line(page, 3).getByLabel('Packs', { exact: true }).getByRole('textbox').fill('0')
  assert.equal(await pieces.getAttribute('aria-invalid'), 'true')
  const described = await pieces.getAttribute('aria-describedby')
  assert.match(await page.locator(`[id="${described}"]`).innerText(), /whole number from 1 to/)
  await page.getByRole('alert', { name: '2 faults in the orders' }).waitFor()
  await picture(page, 'orders with faults')
  // The earlier plan is not mistaken for the present one.
  await go(page, 'Bench')
  await page.getByText('The plan shown here is an earlier one.').waitFor()
  await page.getByRole('link', { name: 'Fix it', exact: true }).click()
  await page.getByRole('link', { name: /lines › no. 1 › pieces/ }).click()
  await page.waitForFunction(() => document.activeElement.value === 'many')
  await page.keyboard.press('Control+A')
  await page.keyboard.type('24')
  await line(page, 3).getByRole('button', { name: 'One more: Packs' }).click()
  await page.getByRole('alert').first().waitFor({ state: 'detached' })
})

person('show what the day costs, and what runs short where', { view: 'orders' }, async (page) => {
  const plan = await planOf(page)
  const { known: cost } = plan.cost
  const main = (await page.getByRole('main').innerText()).replaceAll(/\s+/g, ' ')
  assert.ok(main.includes(`${cost.total.text} in total`))
  for (const { total, price } of cost.lines) assert.ok(main.includes(total.text) && main.includes(price.text))
  const short = plan.stock.filter(({ short }) => short.value > 0)
  assert.ok(short.length > 0)
  await go(page, 'Bench')
  for (const { material, runs_out_in: letter } of short) {
    await pot(page, letter).getByText(`${material} runs out in pot ${letter}`).waitFor()
  }
  // Enough of it, and the warning goes.
  await go(page, 'Orders')
  for (const { material } of short) await page.getByLabel(material, { exact: true }).fill('2 gal')
  await page.getByText('runs out').first().waitFor({ state: 'detached' })
})

person('are the same number by piece and in packs', { view: 'orders' }, async (page) => {
  const swap = async (name) => {
    await line(page, 1).getByRole('button', { name }).click()
    await page.waitForTimeout(BOUNCE)
  }
  const written = (name) => line(page, 1).getByRole('textbox', { name, exact: true })
  await swap('in packs')
  assert.equal(await written('Each pack').inputValue(), '24')
  await written('Packs').fill('3')
  await swap('by piece')
  assert.equal(await written('Pieces').inputValue(), '72')
  // A text that is not a number stays as it is.
  await swap('in packs')
  await written('Each pack').fill('some')
  await swap('by piece')
  assert.equal(await written('Pieces').inputValue(), 'some')
})

person('are fixed where a key has no field', { view: 'orders' }, async (page) => {
  const alert = page.getByRole('alert')
  const orders = JSON.parse(await read('core/examples/demo/orders.json'))
  const { format, ...unsaid } = orders
  const [first, ...others] = orders.lines
  const open = async (broken) => {
    await go(page, 'Book')
    await chooseFile(page, 'Open orders', 'orders.json', JSON.stringify(broken))
    await go(page, 'Orders')
    await alert.waitFor()
  }
  await open(unsaid)
  await page.getByRole('button', { name: 'Write the format, pourwright/1.0' }).click()
  assert.equal(await alert.count(), 0)
  const shelf = [{ name: 'rest', mass: '30 g', formulas: ['dusk', 'none such'] }]
  const lines = [{ ...first, qty: 3, mold: 'finger-5', packs: 2, pack_of: 3 }, ...others]
  await open({ ...orders, format: 'other', customer: 'x', shelf, lines })
  // The link of each fault leads to its place.
  for (const [link, field] of [
    ['customer', 'orders/customer'],
    ['lines › no. 1 › qty', 'orders/lines/0/qty'],
    ['format', 'orders/format'],
  ]) {
    await alert.getByRole('link', { name: link, exact: true }).click()
    await page.waitForFunction((id) => document.activeElement.id === id, field)
  }
  await line(page, 1).getByText('"qty" is not a field').waitFor()
  for (const remove of ['customer', 'lines 0 qty', 'lines 0 mold', 'lines 0 pieces']) {
    await page.getByRole('button', { name: `Remove ${remove}`, exact: true }).click()
  }
  await page.getByRole('button', { name: 'Write the format' }).click()
  await alert.getByRole('link', { name: /^shelf/ }).waitFor()
  await page.getByRole('button', { name: 'Plan without leftovers' }).click()
  assert.equal(await alert.count(), 0)
  assert.equal(await page.locator('.stray').count(), 0)
})

person('use up what is on the shelf', { view: 'book' }, async (page) => {
  const orders = JSON.parse(await read('core/examples/demo/orders.json'))
  const shelf = [{ name: 'rest', mass: '30 g', formulas: ['dusk', 'plain'] }]
  await chooseFile(page, 'Open orders', 'orders.json', JSON.stringify({ ...orders, shelf }))
  await go(page, 'Orders')
  await page.getByText('rest: 30 g').waitFor()
  await go(page, 'Bench')
  await page.getByText('rest: 30 g of 30 g used, in pot A; 0 g stays on the shelf.').waitFor()
  await pot(page, 'A').getByText('It brings clear-base 29.1 g').waitFor()
  await pot(page, 'A')
    .getByRole('link', { name: /Fix it/ })
    .first()
    .click()
  await page.getByText('more is in the cup from before').waitFor()
})

person('undo changes, also after a reload, and do them again', { view: 'orders' }, async (page) => {
  const pieces = (at) => line(page, at).getByRole('textbox', { name: 'Pieces' }).inputValue()
  const words = await line(page, 2).innerText()
  const undo = page.getByRole('button', { name: /^Undo/ })
  const redo = page.getByRole('button', { name: /^Redo/ })
  assert.equal(await undo.count(), 0)
  await page.getByRole('button', { name: 'Remove line 2' }).dblclick()
  assert.equal(await page.locator('.line').count(), 9)
  // What was removed is said where it is seen, however long the list is.
  const said = page.getByText('Line 2 removed: 31 dusk finger, salted.')
  await said.waitFor()
  assert.ok((await said.boundingBox()).y < page.viewportSize().height)
  for (let times = 0; times < 3; times += 1) {
    await line(page, 1).getByRole('button', { name: 'One more: Pieces' }).click()
    await page.waitForTimeout(BOUNCE)
  }
  assert.equal(await pieces(1), '27')
  await page.locator('html[data-stored]').waitFor()
  await page.reload()
  await page.locator('html[data-whole]').waitFor()
  // What was pressed without a pause is one change.
  await undo.click()
  assert.equal(await pieces(1), '24')
  await page.waitForTimeout(BOUNCE)
  await page.keyboard.press('Control+z')
  assert.equal(await line(page, 2).innerText(), words)
  assert.ok(await undo.isDisabled())
  await redo.click()
  assert.equal(await page.locator('.line').count(), 9)
  await page.keyboard.press('Control+Shift+z')
  assert.equal(await pieces(1), '27')
  // A field of its own has the keys of the keyboard.
  await line(page, 1).getByRole('textbox', { name: 'Pieces' }).press('Control+z')
  assert.equal(await page.locator('.line').count(), 9)
  // Another change: what was undone is gone.
  await undo.click()
  await line(page, 3).getByRole('button', { name: 'One more: Pieces' }).click()
  assert.ok(await redo.isDisabled())
})

person('of another day do not keep the ticks', {}, async (page) => {
  await page.getByRole('checkbox').first().click()
  await go(page, 'Orders')
  assert.equal(await page.getByText('The ticks here were made for').count(), 0)
  await page.getByLabel('Day', { exact: true }).fill('2027-03-09')
  await page.getByText('The ticks here were made for Tue, Mar 2.').waitFor()
  page.once('dialog', (dialog) => dialog.accept())
  await page.getByRole('button', { name: 'Clear all ticks' }).click()
  await go(page, 'Bench')
  assert.equal(await page.locator('[role="checkbox"][aria-checked="true"]').count(), 0)
  // Or they are kept, and are this day's from then on.
  await page.getByRole('checkbox').nth(1).click()
  await go(page, 'Orders')
  await page.getByLabel('Day', { exact: true }).fill('2027-03-10')
  await page.getByRole('button', { name: 'Keep them' }).click()
  assert.equal(await page.getByText('The ticks here were made for').count(), 0)
})

person('are ten to a screen of a tablet', { view: 'orders', viewport: { width: 820, height: 1180 } }, async (page) => {
  const last = await line(page, 10).boundingBox()
  assert.ok(last.y + last.height <= 1180, `the last line ends at ${last.y + last.height}`)
  // The rest of a line is behind a key, and so are its faults' fields without one.
  assert.ok(!(await line(page, 1).getByLabel('Promised').isVisible()))
  await page.getByRole('button', { name: 'More of line 1', exact: true }).click()
  await line(page, 1).getByLabel('Promised').fill('soon')
  await page.getByRole('button', { name: 'More of line 1', exact: true }).click()
  await line(page, 1).locator('.fault').waitFor()
  assert.ok(await line(page, 1).getByLabel('Promised').isVisible())
  const small = await page
    .locator('main')
    .locator('p, button, label, input, select')
    .evaluateAll((parts) => parts.filter((part) => parseFloat(getComputedStyle(part).fontSize) < 16).length)
  assert.equal(small, 0)
})
