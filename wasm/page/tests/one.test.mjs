// One pot by itself, and what puts it right.
import assert from 'node:assert/strict'
import { ask, person, picture, pot, read } from './support.mjs'

person('that was poured wrong is put right', { view: 'one' }, async (page) => {
  await page.getByLabel('What went in of plum').fill('90 drops')
  const answer = page.getByRole('heading', { name: 'To put it right' }).locator('..')
  await answer.getByText('It comes right').waitFor()
  // The same as the library says for the demo's mispour.
  const { answer: told } = await ask(page, {
    ...JSON.parse(await read('core/examples/demo/mispour.json')),
    ext: undefined,
  })
  const text = (await answer.innerText()).replaceAll(/\s+/g, ' ')
  for (const { material, best } of told.add) assert.ok(text.includes(material) && text.includes(best.measure), material)
  assert.ok(text.includes('Nothing more of plum'))
  await picture(page, 'put right')
  await page.getByRole('button', { name: '+1 cup' }).click()
  assert.equal(await page.getByLabel('Base', { exact: true }).getByRole('textbox').inputValue(), '3 cup')
  // Less color than meant now, so that some is added.
  assert.ok((await answer.innerText()).includes('plum'))
})

person('of the day, at its second stage', {}, async (page) => {
  await pot(page, 'A')
    .locator('.step', { hasText: 'Now add' })
    .getByRole('link', { name: /Put it right/ })
    .click()
  await page.getByText('Nothing went in otherwise').waitFor()
  await page.getByLabel('What went in of fine-salt').fill('170 g')
  await page.getByText('It comes right').waitFor()
  await page.getByText('Nothing more of fine-salt').waitFor()
  // More is in the pot now than the bench's bursts are for.
  const [, planned] = /In all ([\d.]+ g)/.exec(await page.getByRole('main').innerText())
  assert.ok((await page.getByText('The bench keeps to the plan').locator('..').innerText()).includes(planned))
  await page.getByLabel('What went in of fine-salt').fill('')
  assert.equal(await page.getByText('The bench keeps to the plan').count(), 0)
})

person('with something in it that does not belong', { view: 'one' }, async (page) => {
  await page.getByLabel('Something else went in').selectOption('soot')
  await page.getByLabel('What went in of soot').fill('40 drops')
  await page.getByText('It cannot be made right.').waitFor()
  // In the page's own words, with keys for what they offer.
  assert.doesNotMatch(await page.locator('.correction > p').allInnerTexts().then(String), /"trace"|"becomes"/)
  await page.getByRole('button', { name: 'Let it pass: 0.4 % of the pot at most' }).click()
  await page.getByText(/Little enough to let pass:\s+soot 1\.72 g/).waitFor()
  await page.getByRole('button', { name: 'It is not' }).click()
  await page.getByText('It cannot be made right.').waitFor()
})

person('says what is no amount beside the field', { view: 'one' }, async (page) => {
  const plum = page.getByLabel('What went in of plum')
  await plum.fill('90')
  assert.equal(await plum.getAttribute('aria-invalid'), 'true')
  const described = await plum.getAttribute('aria-describedby')
  assert.match(await page.locator(`[id="${described}"]`).innerText(), /without a unit/)
  for (const amount of ['9.2', '6 oz']) {
    await plum.fill(amount)
    assert.equal(await page.getByText('Nothing went in otherwise').count(), 0)
    await page.getByText('What to add can be told once what is marked is mended.').waitFor()
  }
})

person('says so of a cup that is too small, and takes another', {}, async (page) => {
  await pot(page, 'D')
    .getByRole('link', { name: /Put it right/ })
    .first()
    .click()
  await page.getByLabel('What went in of stabilizer').fill('1 cup')
  const cup = page.getByLabel('In the cup')
  assert.equal(await cup.getAttribute('aria-invalid'), 'true')
  await page.getByText('Say above which cup it is in').first().waitFor()
  assert.equal(await page.getByText('Name a "cup"').count(), 0)
  await cup.selectOption('4 cup')
  assert.equal(await cup.getAttribute('aria-invalid'), null)
  await page.getByText(/nearest that fits|It comes right/).waitFor()
})
