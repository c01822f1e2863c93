// The salt plot.
import assert from 'node:assert/strict'
import { go, person, picture, planOf, pot } from './support.mjs'

person('is dragged along the plot and written into the book', { view: 'salt' }, async (page) => {
  const weighs = page.locator('.readout p').nth(1)
  assert.match(await weighs.innerText(), /10\.8 g/)
  const box = await page.locator('.plot').boundingBox()
  await page.mouse.move(box.x + box.width / 2, box.y + 80)
  await page.mouse.down()
  await page.mouse.move(box.x + box.width * 0.3, box.y + 80, { steps: 5 })
  await page.mouse.up()
  const [grams] = /[\d.]+/.exec((await weighs.innerText()).split('\n')[1])
  assert.ok(Number(grams) < 10.5 && Number(grams) > 9.5, grams)
  await picture(page, 'salt')
  await page.getByRole('button', { name: /^Write .* into “salted”/ }).click()
  await go(page, 'Bench')
  assert.match(
    await pot(page, 'A').innerText(),
    new RegExp(`32 ordered,\\s+\\d+ made; each ${grams.replace('.', '\\.')}`),
  )
})

person('works by keyboard too, and reads out the result', { view: 'salt' }, async (page) => {
  const along = page.getByRole('slider')
  assert.match(
    await along.getAttribute('aria-valuetext'),
    /^1\/4 cup of salt per 1 cup: 10\.8 g a piece, sinks at 21 cm\/s/,
  )
  await along.press('Home')
  assert.match(await along.getAttribute('aria-valuetext'), /^0 .* of salt per 1 cup: 9\.\d+ g a piece/)
})

person('finds the salt for a weight and for a sink rate', { view: 'salt' }, async (page) => {
  await page.getByLabel('Weight of a piece').fill('10.2')
  await page.getByLabel('Weight of a piece').press('Enter')
  assert.match(await page.locator('.readout p').nth(1).innerText(), /10\.2 g/)
  // What no spoon measures is weighed, also in the book.
  await page.getByLabel('Weight of a piece').fill('11.2')
  await page.getByLabel('Weight of a piece').press('Enter')
  await page.getByRole('button', { name: 'Write 101 g into “salted”' }).waitFor()
  await page.getByLabel('Sink rate').fill('19')
  await page.getByLabel('Sink rate').press('Enter')
  assert.match(await page.locator('.readout p').nth(2).innerText(), /19 cm\/s/)
  await page.getByLabel('Weight of a piece').fill('2')
  await page.getByLabel('Weight of a piece').press('Enter')
  await page
    .getByText(/out of reach/)
    .first()
    .waitFor()
  await page.getByLabel('Sink rate').fill('40')
  await page.getByLabel('Sink rate').press('Enter')
  await page.getByText(/40 cm\/s is out of reach .* In reach: [\d.]+ cm\/s \(no salt\) to [\d.]+ cm\/s/).waitFor()
  // The reason for the end of the plot is shown.
  await page.getByText('More than 7 1/2 tbsp is refused: the salt would exceed the limit on solids').waitFor()
})

person('removes salt, and writes nothing if there is none', { view: 'salt' }, async (page) => {
  const along = page.getByRole('slider')
  await along.press('Home')
  await page.getByRole('button', { name: 'Take the salt out of “salted”' }).click()
  assert.ok(await page.getByRole('button', { name: /no salt$/ }).isDisabled())
  const doses = await page.evaluate(async () => (await import('./src/state.js')).state.book.formulas.salted.doses)
  assert.deepEqual(Object.keys(doses), ['stabilizer', 'softener'])
})

person('weighs each piece as the plan does', { view: 'salt' }, async (page) => {
  const plan = await planOf(page)
  const piece = page.getByLabel('Piece', { exact: true })
  const names = await piece.getByRole('option').allInnerTexts()
  assert.ok(names.length > 5)
  for (const name of names) {
    await piece.selectOption(name)
    const { piece: planned } = plan.lines.find(({ what, shape }) => (shape ? `${what}, ${shape}` : what) === name)
    assert.ok((await page.locator('.readout p').nth(1).innerText()).includes(planned.text), `${name}: ${planned.text}`)
  }
})
