// A day that is begun: a change of the orders or the book, a pot that is put right, the thermometer, two tabs.
import assert from 'node:assert/strict'
import axe from 'axe-core'
import { BOUNCE, bookPart, chooseFile, go, line, metricDemo, person, picture, pot } from './support.mjs'

const PHONE = { width: 390, height: 844 }
const LANDSCAPE = { width: 844, height: 390 }
const TABLET = { width: 820, height: 1180 }

const foot = (page) => page.getByLabel('Clocks and next step')
const said = async (part) => (await part.innerText()).replaceAll(/\s+/g, ' ')
const row = (page, letter, material) =>
  pot(page, letter)
    .locator('.step.measure ul.weigh li')
    .filter({ has: page.locator('.material', { hasText: material }) })

/** Ticks the boxes of a step, as they are named. */
async function tick(page, letter, kind) {
  const boxes = pot(page, letter).locator(`.step.${kind}`).first().getByRole('checkbox')
  for (const box of await boxes.all()) await box.click()
}

async function pieces(page, number, count) {
  await go(page, 'Orders')
  await line(page, number).getByLabel('Pieces', { exact: true }).getByRole('textbox').fill(String(count))
  await go(page, 'Bench')
}

/** The words that are set largest on the screen, but for headings of the page itself. */
const largest = (page) =>
  page.evaluate(() => {
    const shown = [...document.querySelectorAll('.foot .say, .foot .say *')].filter((part) => part.checkVisibility())
    const size = (part) => parseFloat(getComputedStyle(part).fontSize)
    return Math.max(...shown.map(size))
  })

for (const [name, viewport] of [
  ['phone', PHONE],
  ['tablet', TABLET],
]) {
  person(`keeps what is poured when more is ordered, ${name}`, { viewport }, async (page) => {
    const whole = await said(row(page, 'A', 'clear-base').locator('.amount strong'))
    await tick(page, 'A', 'measure')
    await pieces(page, 1, 36)
    // What is poured stays, and is not asked for again: the bar has what goes in now.
    const words = await said(foot(page).locator('.say'))
    assert.match(words, /^A clear-base: .* more$/)
    assert.ok(!words.includes(whole), `${words} of ${whole}`)
    assert.match(await said(row(page, 'A', 'clear-base').locator('.amount strong')), / more$/)
    await pot(page, 'A').getByText('In it already').waitFor()
    await page.getByRole('region', { name: 'The day goes on' }).getByText('Pot A goes on').waitFor()
    assert.ok((await largest(page)) >= 16)
    await page.getByRole('region', { name: 'The day goes on' }).scrollIntoViewIfNeeded()
    await picture(page, `more is ordered, ${name}`)
    // Of what too little is missing for any tool there is nothing to do: it has no box.
    const nothing = pot(page, 'A').locator('ul.weigh li').filter({ hasText: 'nothing' })
    assert.ok((await nothing.count()) > 0)
    assert.equal(await nothing.getByRole('checkbox').count(), 0)
    // Back to what was ordered: the plan before, with its ticks.
    await pieces(page, 1, 24)
    assert.match(await said(foot(page).locator('.say')), /Degas/)
    assert.equal(await row(page, 'A', 'clear-base').getByRole('checkbox').getAttribute('aria-checked'), 'true')
    // And on again; this time by working on, over a reload, and back by Undo.
    await pieces(page, 1, 36)
    await page.getByRole('button', { name: 'Done', exact: true }).click()
    await page.reload()
    await page.locator('html[data-whole]').waitFor()
    assert.equal(await row(page, 'A', 'clear-base').getByRole('checkbox').getAttribute('aria-checked'), 'true')
    assert.doesNotMatch(await said(foot(page).locator('.say')), /clear-base/)
    await go(page, 'Orders')
    assert.equal(await line(page, 1).getByLabel('Pieces', { exact: true }).getByRole('textbox').inputValue(), '36')
    await go(page, 'Bench')
    const undo = page.getByRole('button', { name: 'Undo' })
    await undo.click()
    assert.match(await said(foot(page).locator('.say')), /^A clear-base: .* more$/)
    await page.waitForTimeout(BOUNCE)
    await undo.click()
    // Before the change: its ticks count again, and the change is still asked for.
    assert.match(await said(foot(page).locator('.say')), /^A clear-base: .* more$/)
    await pieces(page, 1, 24)
    assert.match(await said(foot(page).locator('.say')), /Degas/)
  })
}

person('shows what is made of a line, and goes on twice', {}, async (page) => {
  for (const kind of ['measure', 'degas']) await tick(page, 'A', kind)
  await pot(page, 'A').locator('.step.heat').first().getByRole('checkbox').last().click()
  await tick(page, 'A', 'add')
  await tick(page, 'A', 'shoot')
  await pieces(page, 2, 24)
  await go(page, 'Orders')
  await line(page, 1).getByText('24 made, 0 to make.').waitFor()
  await go(page, 'Bench')
  // One tick by the new plan; then the plain ones are more, too.
  await page.getByRole('checkbox').first().click()
  await pieces(page, 1, 30)
  await go(page, 'Orders')
  await line(page, 1).getByText('24 made, 6 to make.').waitFor()
})

person('says why a day cannot go on, and keeps the plan', { viewport: TABLET }, async (page) => {
  await tick(page, 'A', 'measure')
  await go(page, 'Book')
  await bookPart(page, 'Bench')
  // The cup that pot A is in.
  await page.getByRole('switch', { name: '4 cup' }).click()
  await go(page, 'Bench')
  const alert = page.getByRole('alert').filter({ hasText: 'The day cannot go on with this change.' })
  await alert.getByText('pots › no. 1 › cup').waitFor()
  await alert.getByText('Pot A is in a cup that holds 4 cup (946 mL); the bench has no such cup.').waitFor()
  await alert.getByText('The plan before the change is kept').waitFor()
  assert.match(await said(foot(page).locator('.say')), /Degas/)
  assert.equal(await row(page, 'A', 'clear-base').getByRole('checkbox').getAttribute('aria-checked'), 'true')
  await picture(page, 'a day that cannot go on')
  await page.getByRole('button', { name: 'Skip the clock' }).click()
  await go(page, 'Book')
  await page.getByRole('switch', { name: '4 cup' }).click()
  await go(page, 'Bench')
  assert.equal(await alert.count(), 0)
})

for (const [name, viewport] of [
  ['phone', PHONE],
  ['tablet', TABLET],
]) {
  person(`puts a pot right by steps that can be ticked, ${name}`, { viewport }, async (page) => {
    await row(page, 'D', 'clear-base').getByRole('checkbox').click()
    await pot(page, 'D')
      .locator('.step.measure')
      .getByRole('link', { name: /Fix it/ })
      .click()
    await page.getByLabel('What went in of rust').fill('+ 12 drops')
    const card = page.locator('.ways > li').filter({ has: page.getByRole('heading', { name: 'Exactly right' }) })
    const adds = await card.locator('.amount strong').allInnerTexts()
    const holds = /The pot then holds ([\d.]+ g)/.exec(await said(card))[1]
    await page.getByRole('button', { name: 'Do this: Exactly right' }).click()
    // They come first, with boxes; what has not gone in yet follows.
    const fix = pot(page, 'D').locator('.step.put-right')
    await fix.waitFor()
    assert.match(await said(foot(page).locator('.say')), /^D .* more$/)
    const shown = await fix.locator('.amount strong').allInnerTexts()
    assert.ok(
      shown.length > 0 && shown.every((words) => adds.some((add) => words === `${add} more`)),
      `${shown} of ${adds}`,
    )
    await fix.scrollIntoViewIfNeeded()
    await picture(page, `a pot is put right, ${name}`)
    for (const box of await fix.getByRole('checkbox').all()) await box.click()
    assert.match(await fix.getAttribute('class'), /done/)
    // What is in it carries on into the rest of the day: with the flake that goes in hot it holds what the card said.
    const there = await page.evaluate(async () => {
      const { planned } = await import('./src/planning.js')
      const { base } = planned()
      const pot = base.pots.find(({ pot }) => pot === 'D')
      const later = pot.stages[0].weigh.reduce((sum, { wanted }) => sum + wanted.value, 0)
      return { mass: pot.there.mass.value + later, accepted: pot.there.accepted }
    })
    assert.equal(there.accepted, true)
    assert.ok(Math.abs(there.mass - parseFloat(holds)) < 0.01 * there.mass, `${there.mass} g, ${holds}`)
    // Still so after a change.
    await pieces(page, 1, 28)
    assert.equal(await pot(page, 'D').locator('.step.put-right.done').count(), 1)
  })
}

/** Reads the thermometer: the answer is there as it is typed, before any key. */
const reads = (page, degrees) =>
  foot(page)
    .getByLabel(/The thermometer in pot A shows/)
    .fill(degrees)

for (const [name, viewport] of [
  ['phone', PHONE],
  ['landscape', LANDSCAPE],
  ['tablet', TABLET],
]) {
  person(`asks the thermometer, ${name}`, { viewport, clock: '2027-03-02T08:00:00' }, async (page) => {
    for (const kind of ['measure', 'degas']) await tick(page, 'A', kind)
    const words = () => said(foot(page).locator('.say'))
    assert.match(await words(), /What does the thermometer show\?/)
    await picture(page, `the thermometer is asked, ${name}`)
    const { violations } = await page.evaluate(`${axe.source}; axe.run({ resultTypes: ['violations'] })`)
    assert.deepEqual(
      violations.map(({ id, nodes }) => `${id} ${nodes[0].html}`),
      [],
    )
    await reads(page, '284')
    assert.match(await words(), /284 °F: 0:45 in the oven, then stir and read again\./)
    await picture(page, `the next burst, ${name}`)
    // A burst that is not needed is skipped by one key.
    await foot(page).getByRole('button', { name: 'Skip: read again' }).click()
    assert.match(await words(), /What does the thermometer show\?/)
    assert.equal(
      await foot(page)
        .getByLabel(/The thermometer/)
        .inputValue(),
      '',
    )
    assert.equal(await page.getByRole('timer').count(), 0)
    await page.clock.runFor(BOUNCE)
    await reads(page, '300')
    await foot(page).getByRole('button', { name: '0:20' }).click()
    assert.ok(await page.getByRole('timer', { name: 'Pot A, burst 3 of 4' }).isVisible())
    await page.clock.runFor(21_000)
    assert.match(await words(), /Stir\. What does the thermometer show\?/)
    // Too hot: there is no key that heats.
    await reads(page, '352')
    assert.match(await words(), /352 °F: Stop, and let it cool to 346 °F or less/)
    assert.equal(await foot(page).locator('.done-next').count(), 0)
    assert.equal(await page.getByRole('timer', { name: 'Pot A, burst 3 of 4' }).count(), 0)
    await picture(page, `too hot, ${name}`)
    await page.clock.runFor(BOUNCE)
    await foot(page).getByRole('button', { name: 'Read again' }).click()
    await page.clock.runFor(BOUNCE)
    await reads(page, 'warm')
    assert.match(await words(), /not an amount|cannot be read|number/i)
    await reads(page, '335')
    assert.match(await words(), /335 °F: It is hot: step 4\./)
    await page.clock.runFor(BOUNCE)
    await foot(page).getByRole('button', { name: 'Done', exact: true }).click()
    assert.match(await words(), /teal-flake/)
    assert.ok(await page.getByRole('timer', { name: 'Pot A stays hot' }).isVisible())
    const kept = await page.evaluate(async () => {
      const { state } = await import('./src/state.js')
      return state.done['dusk + plain/heat/hot'].reading
    })
    assert.equal(kept, '335 °F')
  })
}

person('reads in degrees Celsius on the metric scale', { viewport: PHONE }, async (page) => {
  await page.getByRole('radio', { name: 'Metric' }).check({ force: true })
  for (const kind of ['measure', 'degas']) await tick(page, 'A', kind)
  await reads(page, '150')
  assert.match(await said(foot(page).locator('.say')), /150 °C: 0:20 in the oven/)
  await reads(page, '190')
  assert.match(await said(foot(page).locator('.say')), /190 °C: Stop, and let it cool to 174 °C or less/)
})

/** The clocks of three pots. */
async function threeClocks(page) {
  await page.evaluate(async () => {
    const { change } = await import('./src/state.js')
    const started = Date.now()
    change({
      timers: [
        { id: 'hot/dusk + plain', label: 'Pot A stays hot', seconds: 480, started },
        { id: 'reed + plain/heat/1', label: 'Pot B, burst 1 of 4', seconds: 1, started },
        { id: 'ember + plain/degas/1', label: 'Pot D, degassing', seconds: null, started },
      ],
    })
  })
}

for (const [name, viewport, share] of [
  ['phone', PHONE, 0.28],
  ['landscape', LANDSCAPE, 0.3],
]) {
  person(`keeps the bar small with three clocks, ${name}`, { viewport, clock: '2027-03-02T08:00:00' }, async (page) => {
    await threeClocks(page)
    await page.clock.runFor(3000)
    const bar = await foot(page).boundingBox()
    assert.ok(bar.height <= share * viewport.height, `${bar.height} px of ${viewport.height}`)
    const faces = await page
      .locator('.timer .face')
      .evaluateAll((faces) => faces.map((face) => [face.innerText, face.getClientRects().length, face.offsetHeight]))
    assert.deepEqual(
      faces.map(([, lines]) => lines),
      [1, 1, 1],
    )
    assert.equal(faces[1][0], '0:00')
    assert.ok(
      faces.every(([, , height]) => height < 40),
      String(faces),
    )
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)
    assert.ok(wide <= 0)
    // Something of the work is in view.
    const seen = viewport.height - bar.height
    assert.ok(seen > 200, `${seen} px`)
    await picture(page, `three clocks, ${name}`)
  })
}

person('loses no tick of two tabs', {}, async (page, context) => {
  const other = await context.newPage()
  await other.goto(page.url())
  await other.locator('html[data-whole]').waitFor()
  const ids = ['dusk + plain/measure/clear-base', 'dusk + plain/measure/stabilizer']
  // At the same moment: neither has heard of the other's tick when it makes its own.
  for (const tab of [page, other]) {
    await tab.evaluate(() =>
      addEventListener('storage', (event) => globalThis.deaf && event.stopImmediatePropagation(), { capture: true }),
    )
    await tab.evaluate(() => (globalThis.deaf = true))
  }
  await page.locator(`[id="item:${ids[0]}"]`).click()
  await other.locator(`[id="item:${ids[1]}"]`).click()
  const kept = () =>
    page.evaluate(() =>
      Object.entries(JSON.parse(localStorage.getItem('pourwright')).done)
        .filter(([, { words }]) => words)
        .map(([id]) => id)
        .sort(),
    )
  await page.waitForFunction(() => Object.keys(JSON.parse(localStorage.getItem('pourwright')).done).length === 2)
  assert.deepEqual(await kept(), ids)
  // They hear of each other again.
  for (const tab of [page, other]) {
    await tab.evaluate(() => {
      globalThis.deaf = false
      dispatchEvent(new StorageEvent('storage', { key: 'pourwright' }))
    })
    await tab.waitForFunction(() => document.querySelectorAll('[role="checkbox"][aria-checked="true"]').length === 2)
  }
  // One takes its tick back: the other's stays.
  await page.waitForTimeout(BOUNCE)
  await page.locator(`[id="item:${ids[0]}"]`).click()
  await other.waitForFunction(() => document.querySelectorAll('[role="checkbox"][aria-checked="true"]').length === 1)
  assert.deepEqual(await kept(), [ids[1]])
})

person('opens a metric book in metric measures', { view: 'book' }, async (page) => {
  const { book, orders } = await metricDemo()
  await chooseFile(page, 'Open a book', 'metric.json', book)
  await chooseFile(page, 'Open orders', 'orders.json', orders)
  assert.ok(await page.getByRole('radio', { name: 'Metric' }).isChecked())
  await go(page, 'Bench')
  assert.match(await pot(page, 'A').locator('.bursts').first().innerText(), /under 1\d\d °C/)
})

person('opens a book alone without orders of another', { view: 'book' }, async (page) => {
  const book = JSON.stringify({
    format: 'pourwright/1.0',
    shop: 'Heron Cove',
    measures: 'metric',
    materials: { base: { kind: 'plastisol', density: '1.03 g/mL' } },
    formulas: { clear: { per: '250 mL', base: 'base', doses: {} } },
    molds: { stick: { cavities: 4, cavity: '9 mL', sprue: '5 mL' } },
    bench: {
      balance: { reads: '0.1 g', to: '500 g' },
      spoons: ['5 mL'],
      cups: [{ holds: '500 mL', marks: '50 mL' }],
      injector: { holds: '120 mL', keeps: '4 mL' },
    },
  })
  await chooseFile(page, 'Open a book', 'own.json', book)
  await page.getByText('The orders were made for another book, and are put aside.').waitFor()
  assert.equal(await page.locator('.fault-list').count(), 0)
  assert.equal(await page.getByText('Demo data').count(), 0)
  await go(page, 'Bench')
  await page.getByText('There are no orders yet.').waitFor()
  assert.equal(await page.locator('.pot').count(), 0)
  await picture(page, 'a book alone')
  await go(page, 'Orders')
  assert.equal(await page.locator('.fault').count(), 0)
  await page.getByRole('button', { name: 'Add a line' }).click()
  await line(page, 1).getByLabel('Pieces', { exact: true }).getByRole('textbox').fill('8')
  await go(page, 'Bench')
  await pot(page, 'A').waitFor()
  // The documents before are one key away.
  await go(page, 'Book')
  await page.getByRole('button', { name: 'Back to the documents before' }).click()
  await go(page, 'Bench')
  await pot(page, 'E').waitFor()
})
