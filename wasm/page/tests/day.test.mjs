// The day's events, as a person does them: the record of a pot, pouring it again, what was learned.
import assert from 'node:assert/strict'
import { readFile } from 'node:fs/promises'
import axe from 'axe-core'
import { ask, go, person, picture, planOf, pot } from './support.mjs'

const PHONE = { width: 390, height: 844 }
const TABLET = { width: 820, height: 1180 }

/** Shows a part of the day's events. */
async function dayPart(page, name) {
  await go(page, 'Day')
  const key = page.getByRole('navigation', { name: 'Parts of the day' }).getByRole('button', { name })
  await key.click()
  await key.and(page.locator('[aria-current="true"]')).waitFor()
}

/** Ticks all boxes of a pot, in its order. */
async function tickAll(page, letter) {
  await page.evaluate(async (letter) => {
    const [{ planned }, { toggle, progress }, { steps }] = await Promise.all(
      ['planning', 'progress', 'steps'].map((name) => import(`./src/${name}.js`)),
    )
    for (const step of steps(planned().plan).filter(({ pots }) => pots.includes(letter))) {
      for (const item of step.items) if (progress(item) !== 'done') toggle(item)
    }
  }, letter)
}

/** The records that the page has kept. */
const kept = (page) =>
  page.evaluate(async () => {
    const { records } = await import('./src/records.js')
    return records()
  })

person('keeps the record of a pot as it was poured', { viewport: PHONE }, async (page) => {
  await pot(page, 'D').waitFor()
  await tickAll(page, 'D')
  await dayPart(page, 'Record')
  const notes = page.getByRole('region', { name: 'Pot D' })
  await notes.getByLabel('Good of 56 (50 ordered)').fill('55')
  await notes.getByLabel('Weighed', { exact: true }).fill('10')
  await notes.getByLabel('Together, g').fill('21.4')
  await notes.getByText('What went in').click()
  await notes.getByLabel('What went in of rust').fill('38 drops')
  await notes.getByLabel('What the scale showed for rust').fill('1.8')
  await notes.getByText('Heat and injector').click()
  await notes.getByLabel('Oven ran, all bursts').fill('124')
  await notes.getByLabel('Reading before').fill('68 °F')
  await notes.getByLabel('Reading after').fill('336 °F')
  await notes.getByLabel('Injector kept').fill('4.1')
  await notes.getByLabel('Left in the cup').fill('101,8,8')
  await notes.getByText('can be read').or(notes.locator('.fault')).first().waitFor()
  await notes.getByLabel('Left in the cup').fill('101.8')
  await notes.getByLabel('Name on the jar').fill('ember, tin 4')
  await notes.getByText('Its feed share is 73.2 %').waitFor()
  await picture(page, 'record phone', { fullPage: true })
  await notes.getByRole('button', { name: 'Keep the record of pot D' }).click()
  await notes.getByText('Kept as it is here.').waitFor()
  // The library's own record of the same notes, and it reads back what was kept.
  const [entry] = await kept(page)
  const actuals = JSON.parse(await readFile(new URL('../../../core/examples/demo/actuals.json', import.meta.url)))
  const plan = await planOf(page)
  const own = { ...actuals.pots.D, reheats: undefined, notes: undefined }
  const wanted = await ask(page, {
    calculate: 'record',
    plan: { ...plan, pots: plan.pots.filter((one) => one.pot === 'D') },
    actuals: { format: plan.format, pots: { D: own } },
  })
  assert.deepEqual(entry.record, wanted.answer)
  assert.deepEqual((await ask(page, { calculate: 'learn', records: [entry.record] })).faults, [])
  // It is still there after a reload, and its leftover goes to the shelf.
  await page.reload()
  await page.locator('html[data-whole]').waitFor()
  await page.getByText('Tue, Mar 2').nth(1).waitFor()
  await page.getByRole('button', { name: 'To the shelf: ember, tin 4' }).click()
  await page.getByRole('button', { name: 'Take it off the shelf: ember, tin 4' }).waitFor()
})

/** Keeps a record of pot D on each of these days: what so many drops of rust weighed. */
const seed = (page, days) =>
  page.evaluate(async (days) => {
    const [core, { state }, { keepRecords }] = await Promise.all(
      ['core', 'state', 'records'].map((name) => import(`./src/${name}.js`)),
    )
    const entries = days.map(([day, weighed], at) => {
      const { plan } = core.plan(state.book, { ...state.orders, day })
      const pots = { D: [{ went_in: { rust: { measured: '40 drops', weighed } } }] }
      const { answer } = core.ask({
        calculate: 'record',
        book: state.book,
        plan: { ...plan, pots: plan.pots.filter(({ pot }) => pot === 'D') },
        actuals: { format: plan.format, pots },
      })
      return { id: `${day} 0`, at, pots: ['D'], record: answer }
    })
    await keepRecords(entries)
  }, days)

const DAYS = [
  ['2027-02-02', '1.95 g'],
  ['2027-02-09', '1.97 g'],
  ['2027-02-16', '1.94 g'],
  ['2027-02-23', '1.96 g'],
]

person('takes over what the records show, one number at a time', { viewport: TABLET }, async (page) => {
  await pot(page, 'D').waitFor()
  await seed(page, DAYS)
  await dayPart(page, 'Learned')
  const { answer } = await ask(page, { calculate: 'learn', records: (await kept(page)).map(({ record }) => record) })
  const [offer] = answer.changes
  assert.equal(offer.what, 'drop of rust')
  const drop = () => page.evaluate(async () => (await import('./src/state.js')).state.book.materials.rust.drop)
  const before = await drop()
  await page.getByText(offer.after).waitFor()
  await picture(page, 'learn tablet')
  await page.getByRole('button', { name: 'Accept into the book: drop of rust' }).click()
  await page.getByText('There is nothing to accept.').waitFor()
  assert.equal(await drop(), offer.after)
  await page.getByRole('button', { name: 'Undo: Learned: drop of rust.' }).click()
  await page.getByText(offer.after).waitFor()
  assert.equal(await drop(), before)
})

person('pours again what was poured on an earlier day', { viewport: PHONE }, async (page) => {
  await pot(page, 'D').waitFor()
  await seed(page, DAYS.slice(0, 1))
  await dayPart(page, 'Record')
  await page.getByText('Tue, Feb 2').click()
  await picture(page, 'kept phone', { fullPage: true })
  await page.getByRole('button', { name: 'Keep as made, and pour it' }).click()
  const row = page.getByRole('row', { name: /^rust/ })
  await row.getByText('40 drops').waitFor()
  const formulas = await page.evaluate(async () => (await import('./src/state.js')).state.book.formulas)
  const [{ record }] = await kept(page)
  assert.deepEqual(formulas['ember, 2027-02-02'], record.pots[0].stages[0].color)
})

person('finds a formula at the cup, scoop by scoop, and keeps it', { viewport: PHONE }, async (page) => {
  await pot(page, 'A').waitFor()
  await dayPart(page, 'Trial')
  await page.getByRole('button', { name: '1/2 cup', exact: true }).click()
  await page.getByLabel('Formula in it').selectOption('plain')
  const put = async (material, ...amounts) => {
    await page.getByRole('button', { name: material, exact: true }).click()
    for (const amount of amounts) {
      await page.getByRole('button', { name: `Put in ${amount} of ${material}`, exact: true }).click()
    }
  }
  await put('plum', '10 drops', '1 drop')
  await put('teal-flake', '1/8 tsp')
  // A tap too many is taken back, and the last scoop is repeated.
  await put('soot', '1 drop')
  await page.getByRole('button', { name: 'Undo the last' }).click()
  await page.getByRole('button', { name: 'Once more' }).click()
  await page.getByLabel('Taken out for a sample').fill('6')
  await page.getByText('is a number without a unit').or(page.locator('.fault')).count()
  await page.getByLabel('Taken out for a sample').fill('6 g')
  await page.getByRole('button', { name: 'Took it out' }).click()
  await page.getByLabel('Another amount of soot').fill('2 drops')
  await page.getByRole('button', { name: 'Put it in' }).click()
  const log = [
    { plum: '10 drops' },
    { plum: '1 drop' },
    { 'teal-flake': '1/8 tsp' },
    'again',
    { taken: '6 g' },
    { soot: '2 drops' },
  ]
  const { answer } = await ask(page, {
    calculate: 'trial',
    trial: { start: '1/2 cup', formulas: ['plain'], log },
    save_as: 'dusk, at noon',
  })
  for (const { material, dose } of answer.cup) {
    await page.getByRole('row', { name: new RegExp(`^${material} ${dose}`) }).waitFor()
  }
  await picture(page, 'trial phone', { fullPage: true })
  await page.getByLabel('Name of the formula').fill('dusk, at noon')
  await page.getByRole('button', { name: 'Write it into the book' }).click()
  const formula = () =>
    page.evaluate(async () => (await import('./src/state.js')).state.book.formulas['dusk, at noon'] ?? null)
  assert.deepEqual(await formula(), answer.write[0].value)
  await page.getByRole('button', { name: 'Undo: The formula dusk, at noon, from a trial.' }).click()
  assert.equal(await formula(), null)
})

person('makes more pieces at noon, and says what that means', { viewport: TABLET }, async (page) => {
  const first = pot(page, 'A').getByRole('checkbox')
  for (const at of [0, 1, 2]) await first.nth(at).click()
  await go(page, 'Orders')
  await page.getByRole('textbox', { name: 'Pieces' }).first().fill('30')
  await dayPart(page, 'More pieces')
  await page.getByRole('button', { name: 'One more: 31, dusk finger', exact: true }).click()
  const means = page.getByRole('status').filter({ hasText: 'What it means' })
  await means.getByText('Pot A: 1 more load of finger-5; clear-base: 43.4 g more; plum: 6 drops more.').waitFor()
  await picture(page, 'more tablet')
  await page.getByRole('button', { name: /^Undo: 31, dusk finger/ }).click()
  await means.getByText('Pot A: 1 more load of finger-5.').waitFor()
  // What cannot be done is said plainly.
  await page.evaluate(async () => (await import('./src/edits.js')).editBook(['molds', 'grub-2'], undefined))
  await page.getByText('This cannot be done today.').waitFor()
})

person("begins the next day's list with what is left", { viewport: PHONE }, async (page) => {
  page.on('dialog', (dialog) => dialog.accept())
  await pot(page, 'D').waitFor()
  await dayPart(page, 'Record')
  await page.getByRole('button', { name: 'Pot D: not begun' }).click()
  await page.getByRole('button', { name: 'All went as the sheet says' }).click()
  await page.getByRole('button', { name: 'Keep the record of pot D' }).click()
  await page.getByText('Kept as it is here.').waitFor()
  const [{ record }] = await kept(page)
  const [{ value: left }] = record.shelf
  await dayPart(page, 'Leftovers')
  await page.getByRole('button', { name: `To the shelf: ${left[0].name}` }).click()
  await picture(page, 'leftovers phone')
  await page.getByRole('button', { name: 'Begin the list of the next day' }).click()
  await page.getByRole('button', { name: 'Add a line' }).click()
  const orders = await page.evaluate(async () => (await import('./src/state.js')).state.orders)
  assert.deepEqual(orders.shelf, left)
  assert.equal(orders.day, '2027-03-03')
  // The next day's plan uses it.
  await page.getByLabel('Product').selectOption('ember grub')
  await page.getByRole('textbox', { name: 'Pieces' }).fill('200')
  const plan = await planOf(page)
  assert.equal(plan.shelf[0].name, left[0].name)
  assert.ok(plan.shelf[0].used.value > 100)
})

person('records what was made before a change, and after it', { viewport: TABLET }, async (page) => {
  await page.evaluate(async () => {
    const [{ planned }, { toggle }, { steps }] = await Promise.all(
      ['planning', 'progress', 'steps'].map((name) => import(`./src/${name}.js`)),
    )
    // Pot D is shot but for its last load.
    const own = steps(planned().plan).filter(({ pots }) => pots.includes('D') && pots.length === 1)
    const items = own.filter(({ kind }) => kind !== 'store').flatMap(({ items }) => items)
    for (const item of items.slice(0, -1)) toggle(item)
    // As the bench keeps another amount that is within tolerance, and the pieces that it counts.
    const { change, state } = await import('./src/state.js')
    const rust = { ...state.done['ember + plain/measure/rust'], poured: '37 drops' }
    change({
      done: { ...state.done, 'ember + plain/measure/rust': rust },
      good: { 'ember + plain/shoot/grub-2': { '': 31 } },
    })
  })
  await dayPart(page, 'Record')
  const notes = page.getByRole('region', { name: 'Pot D' })
  await notes.getByText('They count as not done.').waitFor()
  await notes.getByRole('button', { name: 'Keep the record of pot D' }).click()
  await notes.getByText('Kept as it is here.').waitFor()
  const shots = async () =>
    (await kept(page)).map(({ record }) => record.pots.map((pot) => pot.stages[0].draws[0].shots))
  const all = (await planOf(page)).pots.find((one) => one.pot === 'D').stages[0].draws[0].shots
  const [[[made]]] = [await shots()]
  assert.ok(made > 0 && made < all)
  const [{ record }] = await kept(page)
  const [{ draws, made: parts }] = record.pots[0].stages
  assert.equal(draws[0].pieces[0].good, 31)
  assert.equal(parts.find(({ material }) => material === 'rust').dose, '37 drops')
  // The day goes on with more pieces: the rest of pot D is a record of its own.
  await dayPart(page, 'More pieces')
  await page.getByRole('button', { name: 'One more: 37, night stick' }).click()
  await page.evaluate(async () => {
    const [{ planned }, { toggle }, { steps }] = await Promise.all(
      ['planning', 'progress', 'steps'].map((name) => import(`./src/${name}.js`)),
    )
    for (const step of steps(planned().plan)) if (step.pots.includes('D')) for (const item of step.items) toggle(item)
  })
  await dayPart(page, 'Record')
  await page.getByRole('button', { name: 'Pot D, before the change: kept' }).waitFor()
  await page.getByRole('button', { name: 'Pot D: done' }).click()
  await page.getByRole('button', { name: 'Keep the record of pot D' }).click()
  await page.getByText('Kept as it is here.').waitFor()
  const both = (await shots()).flat()
  assert.equal(both.length, 2)
  assert.equal(both[0] + both[1], all)
})

for (const colorScheme of ['light', 'dark']) {
  person(`is accessible in every part, ${colorScheme}`, { viewport: PHONE, colorScheme }, async (page) => {
    await seed(page, DAYS)
    await page.evaluate(async () => {
      const { change, state } = await import('./src/state.js')
      const log = [{ plum: '5 drops' }, { taken: '4 g' }]
      change({ day: { ...state.day, trial: { start: '1/2 cup', formulas: ['plain'], log, save: 'dusk, paler' } } })
    })
    for (const part of ['Record', 'Trial', 'More pieces', 'Leftovers', 'Learned']) {
      await dayPart(page, part)
      if (part === 'Record') await page.getByText('Tue, Feb 2', { exact: true }).click()
      if (part === 'More pieces') await page.getByRole('button', { name: 'One more: 37, night stick' }).click()
      const { violations } = await page.evaluate(`${axe.source}; axe.run({ resultTypes: ['violations'] })`)
      assert.deepEqual(
        violations.map(({ id, nodes }) => `${part}: ${id} ${nodes[0].html}`),
        [],
      )
      const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)
      assert.ok(wide <= 0, `${part} is ${wide} px too wide`)
      const small = await page
        .locator('.day')
        .locator('p, button, label, th, td, small, input, select, summary, li, legend, output')
        .evaluateAll((parts) =>
          parts.filter((part) => parseFloat(getComputedStyle(part).fontSize) < 16).map((part) => part.outerHTML),
        )
      assert.deepEqual(small, [], part)
    }
  })
}
