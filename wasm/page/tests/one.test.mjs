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
  await page.getByLabel('What went in of fine-salt').fill('170 g')
  await page.getByText('It comes right').waitFor()
  await page.getByText('Nothing more of fine-salt').waitFor()
})

person('with something in it that does not belong', { view: 'one' }, async (page) => {
  await page.getByLabel('Something else went in').selectOption('soot')
  await page.getByLabel('What went in of soot').fill('40 drops')
  await page.getByText('It cannot be made right.').waitFor()
})

person('says what is no amount beside the field', { view: 'one' }, async (page) => {
  const plum = page.getByLabel('What went in of plum')
  await plum.fill('90')
  assert.equal(await plum.getAttribute('aria-invalid'), 'true')
  const described = await plum.getAttribute('aria-describedby')
  assert.match(await page.locator(`[id="${described}"]`).innerText(), /without a unit/)
})
