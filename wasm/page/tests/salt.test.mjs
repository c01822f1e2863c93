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

person('goes by keys too, and says what it comes to', { view: 'salt' }, async (page) => {
  const along = page.getByRole('slider')
  assert.match(
    await along.getAttribute('aria-valuetext'),
    /^1\/4 cup of salt to 1 cup: 10\.8 g a piece, sinks 21 cm\/s/,
  )
  await along.press('Home')
  assert.match(await along.getAttribute('aria-valuetext'), /^0 .* of salt to 1 cup: 9\.\d+ g a piece/)
})

person('follows a wish for the weight and for the fall', { view: 'salt' }, async (page) => {
  await page.getByLabel('A piece shall weigh').fill('10.2')
  await page.getByLabel('A piece shall weigh').press('Enter')
  assert.match(await page.locator('.readout p').nth(1).innerText(), /10\.2 g/)
  // What no spoon measures is weighed, in the book too.
  await page.getByLabel('A piece shall weigh').fill('11.2')
  await page.getByLabel('A piece shall weigh').press('Enter')
  await page.getByRole('button', { name: 'Write 101 g into “salted”' }).waitFor()
  await page.getByLabel('It shall sink at').fill('19')
  await page.getByLabel('It shall sink at').press('Enter')
  assert.match(await page.locator('.readout p').nth(2).innerText(), /19 cm\/s/)
  await page.getByLabel('A piece shall weigh').fill('2')
  await page.getByLabel('A piece shall weigh').press('Enter')
  await page
    .getByText(/out of reach/)
    .first()
    .waitFor()
  await page.getByLabel('It shall sink at').fill('40')
  await page.getByLabel('It shall sink at').press('Enter')
  await page.getByText(/40 cm\/s is out of reach .* In reach is [\d.]+ cm\/s \(no salt\) to [\d.]+ cm\/s/).waitFor()
  // The plot ends where its own scale says so.
  await page.getByText('More than 7 1/2 tbsp is refused: it would be more salt by volume than').waitFor()
})

person('takes salt out, and writes nothing where there is none', { view: 'salt' }, async (page) => {
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
