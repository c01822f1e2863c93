// The order list: what is changed there, and what is wrong with it.
import assert from 'node:assert/strict'
import { go, line, person, picture, planOf, pot } from './support.mjs'

person('change and the plan follows at once', { view: 'orders' }, async (page) => {
  const packs = line(page, 3)
  await packs.getByRole('button', { name: 'One more: Packs' }).click()
  await packs.getByRole('button', { name: 'One more: Packs' }).click()
  assert.match(await packs.innerText(), /36 pieces/)
  await go(page, 'Bench')
  assert.match(await pot(page, 'B').innerText(), /reed paddle × 36/)
  // 36 good ones of 3 cavities with 3 % of rejects take more than 12 shots.
  assert.match(await pot(page, 'B').innerText(), /Shoot paddle-4: 13 shots/)
  await picture(page, 'bench')
})

person('take a new line, by mold and formulas', { view: 'orders' }, async (page) => {
  await page.getByRole('button', { name: 'Add a line' }).click()
  const added = line(page, 11)
  await added.getByLabel('Product').selectOption('by mold and formulas')
  await added.getByLabel('Mold').selectOption('grub-2')
  await added.getByLabel('Formula').selectOption('shell')
  await added.getByRole('button', { name: 'and another' }).click()
  await added.getByLabel('Formula').nth(1).selectOption('soft')
  await added.getByLabel('Pieces', { exact: true }).getByRole('textbox').fill('40')
  await go(page, 'Bench')
  assert.match(await page.getByRole('main').innerText(), /shell \+ soft × 40/)
})

person('say what is wrong beside the field, all at once', { view: 'orders' }, async (page) => {
  const pieces = line(page, 1).getByLabel('Pieces', { exact: true }).getByRole('textbox')
  await pieces.fill('many')
  await line(page, 3).getByLabel('Packs', { exact: true }).getByRole('textbox').fill('0')
  assert.equal(await pieces.getAttribute('aria-invalid'), 'true')
  const described = await pieces.getAttribute('aria-describedby')
  assert.match(await page.locator(`[id="${described}"]`).innerText(), /whole number from 1 to/)
  await page.getByRole('alert', { name: '2 faults in the orders' }).waitFor()
  await picture(page, 'orders with faults')
  // The plan of before is not taken for that of now.
  await go(page, 'Bench')
  await page.getByText('What stands here is from before.').waitFor()
  await page.getByRole('link', { name: 'Mend it' }).click()
  await page.getByRole('link', { name: /lines › no. 1 › pieces/ }).click()
  await page.waitForFunction(() => document.activeElement.value === 'many')
  await page.keyboard.press('Control+A')
  await page.keyboard.type('24')
  await line(page, 3).getByRole('button', { name: 'One more: Packs' }).click()
  assert.equal(await page.getByRole('alert').count(), 0)
})

person('tell what the day costs and what runs short, where', { view: 'orders' }, async (page) => {
  const plan = await planOf(page)
  const { known: cost } = plan.cost
  const main = (await page.getByRole('main').innerText()).replaceAll(/\s+/g, ' ')
  assert.ok(main.includes(`${cost.total.text} altogether`))
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
  assert.equal(await page.getByText('runs out').count(), 0)
})

person('are as many by piece as in packs', { view: 'orders' }, async (page) => {
  const swap = (name) => line(page, 1).getByRole('button', { name }).click()
  const written = (name) => line(page, 1).getByRole('textbox', { name, exact: true })
  await swap('in packs')
  assert.equal(await written('Each pack').inputValue(), '24')
  await written('Packs').fill('3')
  await swap('by piece')
  assert.equal(await written('Pieces').inputValue(), '72')
  // What is no number is not made one.
  await swap('in packs')
  await written('Each pack').fill('some')
  await swap('by piece')
  assert.equal(await written('Pieces').inputValue(), 'some')
})
