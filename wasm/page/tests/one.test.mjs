// One pot, and how to fix it.
import assert from 'node:assert/strict'
import { ask, person, picture, pot, read } from './support.mjs'

person('that was poured wrong is fixed', { view: 'one' }, async (page) => {
  await page.getByLabel('What went in of plum').fill('90 drops')
  const answer = page.getByRole('heading', { name: 'How to fix it' }).locator('..')
  await answer.getByText('It can be fixed').waitFor()
  // The same as the library's answer for the demo's mispour.
  const { answer: expected } = await ask(page, {
    ...JSON.parse(await read('core/examples/requests/correct.json')),
    ext: undefined,
  })
  const text = (await answer.innerText()).replaceAll(/\s+/g, ' ')
  for (const { material, best } of expected.add)
    assert.ok(text.includes(material) && text.includes(best.measure), material)
  assert.ok(text.includes('Nothing more of plum'))
  await picture(page, 'fixed')
  await page.getByRole('button', { name: '+1 cup' }).click()
  assert.equal(await page.getByLabel('Base', { exact: true }).getByRole('textbox').inputValue(), '3 cup')
  // Now there is too little color, so that some is added.
  assert.ok((await answer.innerText()).includes('plum'))
})

person('of the day, at its second stage', {}, async (page) => {
  await pot(page, 'A')
    .locator('.step', { hasText: 'Now dusk + salted' })
    .getByRole('link', { name: /Fix it/ })
    .click()
  await page.getByText('Everything went in as planned').waitFor()
  await page.getByLabel('What went in of fine-salt').fill('170 g')
  await page.getByText('It can be fixed').waitFor()
  await page.getByText('Nothing more of fine-salt').waitFor()
  // The pot holds more now than the bench's bursts are for.
  const [, planned] = /Total ([\d.]+ g)/.exec(await page.getByRole('main').innerText())
  assert.ok((await page.getByText('The bench view does not change').locator('..').innerText()).includes(planned))
  await page.getByLabel('What went in of fine-salt').fill('')
  assert.equal(await page.getByText('The bench view does not change').count(), 0)
})

person('with something in it that does not belong', { view: 'one' }, async (page) => {
  await page.getByLabel('Something else went in').selectOption('soot')
  await page.getByLabel('What went in of soot').fill('40 drops')
  await page.getByText('It cannot be fixed.').waitFor()
  // In the page's own words, with buttons for what they offer.
  assert.doesNotMatch(await page.locator('.correction > p').allInnerTexts().then(String), /"trace"|"becomes"/)
  await page.getByRole('button', { name: 'Ignore it: at most 0.4 % of the pot' }).click()
  await page.getByText(/Little enough to ignore:\s+soot 1\.72 g/).waitFor()
  await page.getByRole('button', { name: 'Do not ignore it' }).click()
  await page.getByText('It cannot be fixed.').waitFor()
})

person('shows a bad amount next to its field', { view: 'one' }, async (page) => {
  const plum = page.getByLabel('What went in of plum')
  await plum.fill('90')
  assert.equal(await plum.getAttribute('aria-invalid'), 'true')
  const described = await plum.getAttribute('aria-describedby')
  assert.match(await page.locator(`[id="${described}"]`).innerText(), /without a unit/)
  for (const amount of ['9.2', '6 oz']) {
    await plum.fill(amount)
    assert.equal(await page.getByText('Everything went in as planned').count(), 0)
    await page.getByText('Fix the marked field to see what to add.').waitFor()
  }
})

person('shows that a cup is too small, and takes another', {}, async (page) => {
  await pot(page, 'D')
    .getByRole('link', { name: /Fix it/ })
    .first()
    .click()
  await page.getByLabel('What went in of stabilizer').fill('1 cup')
  const cup = page.getByLabel('In the cup')
  assert.equal(await cup.getAttribute('aria-invalid'), 'true')
  await page.getByText('Choose above which cup it is in').first().waitFor()
  assert.equal(await page.getByText('Name a "cup"').count(), 0)
  await cup.selectOption('4 cup')
  assert.equal(await cup.getAttribute('aria-invalid'), null)
  await page.getByText(/nearest that fits|It can be fixed/).waitFor()
})
