// Calibration: weighings of the shop for its book.
import assert from 'node:assert/strict'
import { ask, bookPart, person, picture } from './support.mjs'

const part = (page) => page.getByRole('region', { name: 'Calibrate' })

/** Writes weighings, each a list of values in the order of the columns. */
async function weigh(page, columns, weighings) {
  for (const [at, weighing] of weighings.entries()) {
    for (const [place, column] of columns.entries()) {
      if (weighing[place])
        await part(page)
          .getByLabel(`${column}, weighing ${at + 1}`)
          .fill(weighing[place])
    }
  }
}

const bookAt = (page, path) =>
  page.evaluate(async (path) => {
    const { state, valueAt } = await import('./src/state.js')
    return valueAt(state.book, path)
  }, path)

person('is a drop, by several weighings', { view: 'book' }, async (page) => {
  await bookPart(page, 'Bench')
  await part(page).getByLabel('of', { exact: true }).selectOption('plum')
  await part(page).getByText('Weigh at least twice').waitFor()
  // The count is that of the weighing before unless another is written.
  await weigh(
    page,
    ['How many', 'Together, g'],
    [
      ['50', '2.20'],
      ['', '2.30'],
      ['', '2.10'],
    ],
  )
  const { answer } = await ask(page, {
    calculate: 'calibrate-drop',
    book: undefined,
    drops_weighed: ['2.20 g', '2.30 g', '2.10 g'].map((weight) => ({ weighed_count: 50, weighed_mass: weight })),
    balance_readability: '0.1 g',
    measures: 'us-customary',
  })
  await part(page).getByText(`${answer.drop}, one standard uncertainty`).waitFor()
  await part(page).getByText('In the book: 0.044 g ± 0.003.').waitFor()
  await picture(page, 'calibrated', { fullPage: true })
  const write = part(page).getByRole('button', { name: `Write ${answer.drop} into the book` })
  await write.click()
  assert.equal(await bookAt(page, ['materials', 'plum', 'drop']), answer.drop)
  assert.ok(await write.isDisabled())
  assert.equal(await page.getByRole('alert').count(), 0)
  // A fault of a weighing is shown next to it.
  const second = part(page).getByLabel('Together, g, weighing 2')
  await second.fill('2 cup')
  assert.equal(await second.getAttribute('aria-invalid'), 'true')
  await part(page).getByRole('button', { name: 'Remove weighing 2' }).click()
  assert.equal(await second.inputValue(), '2.10')
  assert.equal(await second.getAttribute('aria-invalid'), null)
})

person('shows a questionable weighing', { view: 'book' }, async (page) => {
  await bookPart(page, 'Bench')
  const weights = ['2.20', '2.21', '2.20', '2.22', '2.21', '2.20', '2.40']
  await weigh(
    page,
    ['How many', 'Together, g'],
    weights.map((weight) => ['50', weight]),
  )
  const { answer } = await ask(page, {
    calculate: 'calibrate-drop',
    book: undefined,
    drops_weighed: weights.map((weight) => ({ weighed_count: 50, weighed_mass: `${weight} g` })),
    balance_readability: '0.1 g',
  })
  assert.ok(answer.questioned)
  assert.ok((await part(page).locator('p.fault').innerText()).includes(answer.questioned))
})

person('is a level spoonful, and what stays in the injector', { view: 'book' }, async (page) => {
  await bookPart(page, 'Bench')
  await part(page).getByLabel('Weigh', { exact: true }).selectOption('a level spoonful')
  await part(page).getByLabel('of', { exact: true }).selectOption('teal-flake')
  await part(page).getByLabel('with the spoon').selectOption('1/2 tsp')
  await weigh(
    page,
    ['How many', 'Together, g'],
    [
      ['10', '13.0'],
      ['10', '13.6'],
    ],
  )
  const scooped = part(page).getByRole('button', { name: /^Write 0\.5\d+ g\/mL ± 0\.\d+ into the book/ })
  const [, density] = /Write (.*) into/.exec(await scooped.innerText())
  await scooped.click()
  assert.equal(await bookAt(page, ['materials', 'teal-flake', 'as_scooped']), density)
  await part(page).getByLabel('Weigh', { exact: true }).selectOption('what stays in the injector')
  await weigh(
    page,
    ['Clean, g', 'Emptied, g'],
    [
      ['180.0', '184.0'],
      ['180.0', '184.2'],
    ],
  )
  const keeps = part(page).getByRole('button', { name: /^Write 4\.\d+ mL ± 0\.\d+ into the book/ })
  const [, volume] = /Write (.*) into/.exec(await keeps.innerText())
  await keeps.click()
  assert.equal(await bookAt(page, ['bench', 'injector', 'keeps']), volume)
  assert.equal(await page.getByRole('alert').count(), 0)
})

person('needs a scale', { view: 'book' }, async (page) => {
  await bookPart(page, 'Bench')
  await page.evaluate(async () => (await import('./src/edits.js')).editBook(['bench', 'balance'], undefined))
  await weigh(
    page,
    ['How many', 'Together, g'],
    [
      ['50', '2.20'],
      ['50', '2.30'],
    ],
  )
  await part(page).getByText('The book lacks the readability of the scale.').waitFor()
})
