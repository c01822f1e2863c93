// One pot, and how to fix it.
import assert from 'node:assert/strict'
import { ask, person, picture, pot, read } from './support.mjs'

const answerIn = (page) => page.getByRole('heading', { name: 'How to fix it' }).locator('..')

/** The card of a way. */
const way = (page, name) =>
  answerIn(page)
    .locator('.ways > li')
    .filter({ has: page.getByRole('heading', { name }) })

const words = async (part) => (await part.innerText()).replaceAll(/\s+/g, ' ')

person('that was poured wrong is fixed', { view: 'one' }, async (page) => {
  await page.getByLabel('What went in of plum').fill('+ 26 drops')
  await answerIn(page).getByText('It can be fixed.').waitFor()
  // The same as the library's answer for the demo's mispour.
  const { answer } = await ask(page, {
    ...JSON.parse(await read('core/examples/requests/correct.json')),
    ext: undefined,
  })
  const titles = ['Within tolerance', 'Exactly right', 'Keep it as a formula of its own']
  assert.deepEqual(
    answer.ways.map((one) => one.way),
    ['within', 'exact', 'keep'],
  )
  for (const [place, expected] of answer.ways.entries()) {
    const text = await words(way(page, titles[place]))
    for (const { material, best } of expected.add)
      assert.ok(text.includes(material) && text.includes(best.measure), material)
    if (expected.cost) assert.ok(text.includes(`Costs ${expected.cost.text}.`), text)
    assert.ok(text.includes(`The pot then holds ${expected.mass.text}, ${expected.volume.text}`), text)
  }
  assert.match(await words(way(page, 'Within tolerance')), /Stays off, within tolerance: .*plum \+5\.0 %/)
  assert.match(await words(way(page, 'Keep it')), /Add nothing\. .*plum 45 drops, .* per 1 cup, with plain\./)
  await picture(page, 'fixed')
  await page.getByLabel('What went in of plum').fill('90 drops')
  await page.getByRole('button', { name: '+1 cup' }).click()
  assert.equal(await page.getByLabel('Base', { exact: true }).getByRole('textbox').inputValue(), '3 cup')
  // Now there is too little color: only that is added.
  assert.match(await words(way(page, 'Exactly right')), /plum .*drops/)
  assert.doesNotMatch(await words(way(page, 'Exactly right')), /clear-base/)
})

person(
  'that was poured wrong is shown on a phone',
  { view: 'one', viewport: { width: 390, height: 844 } },
  async (page) => {
    await page.getByRole('button', { name: 'Show an example' }).click()
    await answerIn(page).getByText('It can be fixed.').waitFor()
    assert.equal(await page.getByLabel('What went in of plum').inputValue(), '+ 26 drops')
    await picture(page, 'fixed on a phone', { fullPage: true })
    // Of 4 cups none may be added so that all is exact.
    await page.getByLabel('What went in of teal-flake').fill('twice')
    await page.getByLabel('What went in of plum').fill('20 drops')
    await page.locator('.not-offered', { hasText: 'the cup may hold 4 cup' }).waitFor()
    await picture(page, 'nearest on a phone', { fullPage: true })
  },
)

person('that is hot gets no fresh base', { view: 'one' }, async (page) => {
  await page.getByLabel('What went in of plum').fill('90 drops')
  await way(page, 'Exactly right').waitFor()
  await page.getByLabel('The pot is').selectOption('hot')
  await answerIn(page).getByText('It cannot be fixed.').waitFor()
  await page.locator('.not-offered', { hasText: 'The book allows none in a hot pot' }).waitFor()
  await answerIn(page).getByText('Hot plastisol burns deep').waitFor()
  assert.equal(await way(page, 'Exactly right').count(), 0)
  await page.getByLabel('What went in of plum').fill('half')
  await way(page, 'Exactly right').getByText('add a little at a time').waitFor()
})

person('of the day, at its second stage', {}, async (page) => {
  await pot(page, 'A')
    .locator('.step', { hasText: 'Now dusk + salted' })
    .getByRole('link', { name: /Fix it/ })
    .click()
  await page.getByText('Everything went in as planned').waitFor()
  await page.getByText('more is in the cup from before').waitFor()
  // It is hot, and has been shot from.
  await page.getByLabel('What went in of fine-salt').fill('170 g')
  await answerIn(page).getByText('It cannot be fixed.').waitFor()
  await page.locator('.not-offered', { hasText: 'The book allows none in a hot pot' }).waitFor()
  await page.getByLabel('What went in of fine-salt').fill('half')
  await way(page, 'Exactly right').getByText('Bone-dry salt').waitFor()
})

person('with something in it that does not belong', { view: 'one' }, async (page) => {
  await page.getByLabel('Something else went in').selectOption('soot')
  await page.getByLabel('What went in of soot').fill('40 drops')
  await page.getByText('It cannot be fixed.').waitFor()
  // In the page's own words, with buttons for what they offer.
  assert.doesNotMatch(
    await page.locator('.correction > p').allInnerTexts().then(String),
    /"trace"|"becomes"|"on_purpose"/,
  )
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
  await way(page, 'As near as it gets').waitFor()
  assert.match(await words(answerIn(page)), /It cannot be fixed fully\..*the cup may hold 4 cup/)
})
