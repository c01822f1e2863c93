// The bench: ticks, clocks, scales, cautions, paper.
import assert from 'node:assert/strict'
import { BOUNCE, chooseFile, go, line, metricDemo, person, picture, planOf, pot, read, sheetOf } from './support.mjs'

person('ticks steps off, keeps them over a reload, and takes them back', {}, async (page) => {
  const done = page.getByRole('button', { name: 'Done', exact: true })
  const [first, second, third] = (await planOf(page)).pots[0].stages[0].weigh.map(
    ({ material, best }) => `${material}: ${best.measure}`,
  )
  await done.click()
  await page.waitForTimeout(BOUNCE)
  await done.click()
  const base = page.getByRole('checkbox', { name: `Pot A: ${first}, step 1`, exact: true })
  assert.equal(await base.getAttribute('aria-checked'), 'true')
  await page.reload()
  await page.locator('html[data-whole]').waitFor()
  assert.equal(await base.getAttribute('aria-checked'), 'true')
  const foot = page.getByLabel('Clocks and next step')
  assert.ok((await foot.innerText()).includes(third))
  await page.getByRole('button', { name: 'Undo' }).click()
  assert.ok((await foot.innerText()).includes(second))
})

person('lists the order of work with what each layer is shot from', {}, async (page) => {
  const work = page.getByRole('navigation', { name: 'Order of work' })
  const plan = await planOf(page)
  const entries = await work.getByRole('listitem').allInnerTexts()
  assert.equal(entries.length, plan.work.length)
  for (const [index, { mold, from }] of plan.work.entries()) {
    assert.ok(entries[index].includes(mold))
    for (const { pot, stage } of from) {
      const { formulas } = plan.pots.find((one) => one.pot === pot).stages[stage - 1]
      assert.ok(entries[index].includes(formulas.join(' + ')), entries[index])
    }
  }
})

person('goes on at noon with the pots that are there', {}, async (page) => {
  const { ext, ...request } = JSON.parse(await read('core/examples/requests/go-on.json'))
  const there = await page.evaluate(async (request) => {
    const [core, { change, state }] = await Promise.all([import('./src/core.js'), import('./src/state.js')])
    const { plan } = core.askPlan(core.plan(state.book, state.orders).plan, request).answer
    change({ orders: plan.made_from.orders })
    return plan.pots.find(({ there }) => there)
  }, request)
  assert.deepEqual([there.pot, there.stages[0].weigh.length], ['B', 1])
  const card = pot(page, 'B')
  const words = (await card.innerText()).replaceAll(/\s+/g, ' ')
  assert.ok(words.includes(`In it already: ${there.there.mass.text}, cold ${there.there.fills.text}`), words)
  await card.getByText('In it already').evaluate((part) => part.scrollIntoView())
  await picture(page, 'a pot that was there')
  // It is asked of the plan, which knows what was in it.
  await card
    .getByRole('link', { name: /Fix it/ })
    .first()
    .click()
  await page.getByText('more is in the cup from before').waitFor()
  await page.getByLabel('What went in of black-flake').fill('none')
  await page.getByRole('heading', { name: 'Exactly right' }).waitFor()
})

person('goes through the whole day with one button, and the thermometer', {}, async (page) => {
  const foot = page.getByLabel('Clocks and next step')
  const read = await page.evaluate(() => {
    let read = 0
    // One press a second, by its time stamp.
    for (let press = 0; press < 400; press += 1) {
      const input = document.querySelector('.foot .reading input')
      if (input?.name === 'reading') {
        input.value = '335'
        input.form.requestSubmit()
        read += 1
        continue
      }
      const click = new MouseEvent('click', { bubbles: true })
      Object.defineProperty(click, 'timeStamp', { value: 1000 * press })
      document.querySelector('.done-next')?.dispatchEvent(click)
    }
    return read
  })
  assert.match(await foot.innerText(), /All done/)
  const heats = (await planOf(page)).steps.filter(({ kind }) => kind === 'heat')
  assert.equal(read, heats.length)
  // Bursts that were not needed have no tick.
  const boxes = page.locator('.step:not(.heat)').getByRole('checkbox')
  assert.equal(await boxes.count(), await boxes.and(page.locator('[aria-checked="true"]')).count())
  assert.equal(await page.locator('.step').count(), await page.locator('.step.done').count())
})

person('shows every weighing, burst, shot and caution of the plan', {}, async (page) => {
  const text = (await page.getByRole('main').innerText()).replaceAll(/\s+/g, ' ')
  const plan = await planOf(page)
  for (const pot of plan.pots) {
    for (const stage of pot.stages) {
      for (const { material, best, doubt } of stage.weigh) {
        assert.ok(text.includes(`${material} `) && text.includes(best.measure))
        if (doubt) assert.ok(text.includes(`± ${doubt.uncertainty.text}`), material)
      }
      for (const { burst } of stage.heating?.known?.bands ?? []) assert.ok(text.includes(burst.text))
      for (const draw of stage.draws) {
        for (const { weighs, uncertainty } of draw.pieces.filter(({ made }) => made)) {
          assert.ok(text.includes(`each ${weighs.text}${uncertainty ? ` ± ${uncertainty.text}` : ''}`), draw.mold)
        }
      }
    }
  }
  for (const { text: step, details } of plan.steps.flatMap(({ at }) => at)) {
    for (const words of [step, ...details]) assert.ok(text.includes(words), words)
  }
  for (const code of plan.cautions) assert.ok(await page.locator(`[data-caution="${code}"]`).count(), code)
  // The words of the cautions are the library's: those of the bench sheet.
  const sheet = (await sheetOf(page)).replaceAll(/\s+/g, ' ')
  const shown = await page.locator('[data-caution]').allInnerTexts()
  for (const caution of shown) assert.ok(sheet.includes(caution.trim()), caution)
  // Each at the step that it concerns.
  for (const [step, code] of [
    ['heat', 'hot-plastisol'],
    ['heat', 'fumes'],
    ['degas', 'vacuum'],
    ['shoot', 'water'],
    ['shoot', 'hot-plastisol'],
  ]) {
    const steps = page.locator(`.step.${step}`)
    assert.ok((await steps.count()) > 0, step)
    assert.equal(await steps.count(), await steps.filter({ has: page.locator(`[data-caution="${code}"]`) }).count())
  }
  // What goes into a hot pot, and salt wherever it is stirred.
  const adds = page.locator('.step.add')
  assert.ok((await adds.count()) > 0)
  assert.equal(await adds.count(), await adds.locator('[data-caution="hot-plastisol"]').count())
  const salted = plan.steps
    .filter(({ kind }) => kind === 'shoot')
    .flatMap(({ at }) =>
      at.filter(({ pot, stage }) => {
        const { stages } = plan.pots.find((one) => one.pot === pot)
        return stages.slice(0, stage).some(({ weigh }) => weigh.some(({ kind }) => kind === 'salt'))
      }),
    )
  assert.ok(salted.length > 0)
  assert.equal(await page.locator('.step.shoot', { hasText: 'STIR before each' }).count(), salted.length)
})

person('shows that sprues go back into a hot pot', { view: 'book' }, async (page) => {
  const book = (await read('core/examples/demo/book.json')).replace('"sprues": "keep"', '"sprues": "melt-again"')
  await chooseFile(page, 'Open a book', 'book.json', book)
  await go(page, 'Bench')
  const sprues = page.locator('.step.sprues-back')
  assert.ok((await sprues.count()) > 0)
  assert.equal(await sprues.count(), await sprues.locator('[data-caution="hot-plastisol"]').count())
})

/** Checks what a clock shows. It runs on in the time that the machine takes: by as much, up (1) or down (-1). */
async function shows(clock, seconds, way) {
  const SLOW = 15
  const [, minutes, rest] = /(\d+):(\d\d)/.exec(await clock.innerText())
  const later = way * (60 * minutes + Number(rest) - seconds)
  assert.ok(later >= 0 && later <= SLOW, `${minutes}:${rest}`)
}

person('runs a clock for a burst', { clock: '2027-03-02T08:00:00' }, async (page) => {
  await page.getByRole('button', { name: 'Start: Pot A, burst 1 of 4, 1:30' }).click()
  const clock = page.getByRole('timer', { name: 'Pot A, burst 1 of 4' })
  await shows(clock, 90, -1)
  await page.clock.runFor(45_000)
  await shows(clock, 45, -1)
  await picture(page, 'bench with a clock')
  // It keeps running while the page is closed.
  await page.reload()
  await page.locator('html[data-whole]').waitFor()
  await page.clock.runFor(75_500)
  assert.match(await clock.innerText(), /0:00[^]*Over/)
  assert.match(await page.locator('#said').innerText(), /Over: Pot A, burst 1 of 4/)
  await page
    .getByRole('checkbox', { name: /Pot A: 1:30 while/ })
    .first()
    .click()
  assert.equal(await clock.count(), 0)
})

/** Presses the big button, and reads 335 °F where it is asked, until the foot shows something. */
async function goOnTo(page, words) {
  const foot = page.getByLabel('Clocks and next step')
  for (let press = 0; press < 60 && !words.test(await foot.innerText()); press += 1) {
    const reading = foot.getByLabel(/The thermometer in pot/)
    if (await reading.count()) await reading.fill('335')
    await page.locator('.done-next').click()
    await page.clock.runFor(BOUNCE)
  }
  assert.match(await foot.innerText(), words)
  return foot
}

person('does one thing at a double tap', { clock: '2027-03-02T08:00:00' }, async (page) => {
  const ticked = page.locator('[role="checkbox"][aria-checked="true"]')
  await page.getByRole('button', { name: 'Done', exact: true }).dblclick()
  assert.equal(await ticked.count(), 1)
  await page.clock.runFor(BOUNCE)
  await page.getByRole('checkbox').nth(1).dblclick()
  assert.equal(await ticked.count(), 2)
  const foot = await goOnTo(page, /What does the thermometer show/)
  const before = await ticked.count()
  await foot.getByLabel(/The thermometer in pot A/).fill('284')
  await page.clock.runFor(BOUNCE)
  await page.locator('.done-next').dblclick()
  assert.equal(await ticked.count(), before)
  const clock = page.getByRole('timer', { name: 'Pot A, burst 2 of 4' })
  assert.ok(await clock.isVisible())
  // Another button ends it early, and Undo brings its clock back.
  await page.clock.runFor(20_000)
  assert.equal(await page.getByRole('button', { name: 'Done', exact: true }).count(), 0)
  await page.getByRole('button', { name: 'Done early' }).click()
  assert.match(await foot.innerText(), /What does the thermometer show/)
  assert.equal(await clock.count(), 0)
  await page.getByRole('button', { name: 'Undo' }).click()
  await shows(clock, 25, -1)
  await page.clock.runFor(41_000)
  assert.match(await foot.innerText(), /Stir\. What does the thermometer show/)
})

person(
  'holds a vacuum by the one key, and keeps what the gauge showed',
  { clock: '2027-03-02T08:00:00' },
  async (page) => {
    const foot = await goOnTo(page, /Degas fill 1 of 2/)
    const clock = page.getByRole('timer', { name: 'Pot A, degassing fill 1' })
    // A second tap does not end what the first has started.
    await page.locator('.done-next').dblclick()
    await page.clock.runFor(65_000)
    await shows(clock, 65, 1)
    const gauge = foot.getByLabel('What does the gauge show? inHg')
    // The library refuses what the air here cannot give.
    await gauge.fill('29')
    await page.locator('.done-next').click()
    await foot.getByText('cannot be where the air has 27.72 inHg').waitFor()
    assert.equal(await clock.count(), 1)
    await page.clock.runFor(BOUNCE)
    await gauge.fill('24.5')
    await page.locator('.done-next').click()
    assert.equal(await clock.count(), 0)
    await pot(page, 'A').getByText('The gauge showed 24.5 inHg; 3.2 inHg left in the chamber.').waitFor()
    await picture(page, 'a gauge that was read')
    // Undo brings the clock back. Without a reading it ends as well.
    await page.getByRole('button', { name: 'Undo' }).click()
    assert.equal(await clock.count(), 1)
    await page.clock.runFor(BOUNCE)
    await page.locator('.done-next').click()
    await page.clock.runFor(BOUNCE)
    assert.match(await foot.innerText(), /Degas fill 2 of 2/)
    await page.getByRole('button', { name: 'Skip the clock' }).click()
    assert.match(await foot.innerText(), /What does the thermometer show/)
  },
)

person('shows how long a pot stays hot from when it is hot', { clock: '2027-03-02T08:00:00' }, async (page) => {
  const foot = await goOnTo(page, /Load 1 of/)
  const clock = page.getByRole('timer', { name: 'Pot A stays hot' })
  assert.match(await clock.innerText(), /7:\d\d|8:00/)
  // The flake went in hot after the tick that started the clock.
  await page.getByRole('button', { name: 'Undo' }).click()
  assert.equal(await clock.count(), 1)
  await page.clock.runFor(BOUNCE)
  await page.getByRole('button', { name: 'Undo' }).click()
  assert.equal(await clock.count(), 0)
  await goOnTo(page, /Load 1 of/)
  assert.ok(await clock.isVisible())
  // It runs for all that is shot from this heat, and ends with its last load.
  await goOnTo(page, /What does the thermometer show/)
  assert.equal(await clock.count(), 0)
  await goOnTo(page, /Load 1 of .* stick-6/)
  assert.ok(await clock.isVisible())
  assert.ok(await page.locator('.step.shoot', { hasText: 'stick-6' }).first().locator('.running').isVisible())
  while (/stick-6/.test(await foot.innerText())) {
    await page.locator('.done-next').click()
    await page.clock.runFor(BOUNCE)
  }
  assert.equal(await clock.count(), 0)
})

person('rings after a reload once it is touched, and shows that', {}, async (page) => {
  await page.getByRole('button', { name: 'Start: Pot A, burst 1 of 4, 1:30' }).click()
  const silent = page.getByText('Touch the page to let the clocks ring.')
  await silent.waitFor({ state: 'detached' })
  await page.waitForFunction(() => JSON.parse(localStorage.getItem('pourwright') ?? '{}').timers?.length === 1)
  await page.reload()
  await page.locator('html[data-whole]').waitFor()
  await silent.waitFor()
  await page.locator('.sheet-title, h2').last().click()
  await silent.waitFor({ state: 'detached' })
})

person('shows what waits while a pot is degassed in fills', {}, async (page) => {
  const { pots } = await planOf(page)
  const { fills, level } = pots[0].degas.known
  assert.equal(fills, 2)
  const words = (await pot(page, 'A').locator('.step.degas').innerText()).replaceAll(/\s+/g, ' ')
  assert.match(words, /in 2 fills of the 4-cup cup/)
  assert.match(words, /Each is 1 7\/8 cup .* The rest waits in another cup/)
  assert.ok(level.text.includes('1 7/8 cup'))
})

person('holds a degassing for the minutes that are set', { clock: '2027-03-02T08:00:00' }, async (page) => {
  await page.getByRole('button', { name: /Start: Pot A, degassing fill 1/ }).click()
  const clock = page.getByRole('timer', { name: 'Pot A, degassing fill 1' })
  await page.clock.runFor(61_000)
  await shows(clock, 61, 1)
  await page.getByRole('button', { name: 'Stop the clock: Pot A, degassing fill 1' }).click()
  await go(page, 'Book')
  await page.getByLabel('Hold a degassing').fill('3')
  await go(page, 'Bench')
  await page.getByRole('button', { name: 'Start: Pot A, degassing fill 1, 3:00' }).click()
  await page.clock.runFor(60_000)
  await shows(clock, 120, -1)
})

person('shows the other scale at a switch', {}, async (page) => {
  const bursts = pot(page, 'A').locator('.bursts').first()
  assert.match(await bursts.innerText(), /under 2\d\d °F/)
  await page.getByRole('radio', { name: 'Metric' }).check({ force: true })
  assert.match(await bursts.innerText(), /under 1\d\d °C/)
  assert.doesNotMatch(await bursts.innerText(), /°F/)
  await page.reload()
  await page.locator('html[data-whole]').waitFor()
  assert.match(await bursts.innerText(), /under 1\d\d °C/)
  // What is measured with the cups and spoons of the bench stays as they are marked.
  assert.match(await pot(page, 'A').innerText(), /2 cup \+ 1 1\/4 cup/)
})

for (const locale of ['en-US', 'de-DE']) {
  person(`has the sentences of the steps on the scale of the reader, ${locale}`, { locale }, async (page) => {
    const sentences = (scale) =>
      page.evaluate(async (scale) => {
        const { change } = await import('./src/state.js')
        const { shownSteps } = await import('./src/shown.js')
        change({ scale })
        return shownSteps()
          .flatMap(({ at, together, items }) => [
            ...at.flatMap(({ text, details }) => [text, ...details]),
            ...together,
            ...items.map(({ say }) => say),
          ])
          .filter((one) => /°|inHg|kPa/.test(one))
      }, scale)
    const [us, metric] = [await sentences('us'), await sentences('metric')]
    assert.ok(us.length > 20)
    assert.equal(metric.length, us.length)
    assert.deepEqual(
      us.filter((one) => /°C|kPa/.test(one) || !/°F|inHg/.test(one)),
      [],
    )
    assert.deepEqual(
      metric.filter((one) => /°F|inHg/.test(one) || !/°C|kPa/.test(one)),
      [],
    )
    // Under 260 °F, and 25 inHg of vacuum.
    assert.ok(metric.some((one) => /1:30 .* under 127 °C/.test(one)))
    assert.ok(metric.some((one) => one.startsWith(`Pull vacuum 84${locale === 'de-DE' ? ',' : '.'}7 kPa`)))
    assert.match(await page.locator('.bursts').first().innerText(), /under 127 °C/)
  })
}

person('shows both scales of a metric book too', { view: 'book' }, async (page) => {
  const { book, orders } = await metricDemo()
  await chooseFile(page, 'Open a book', 'metric.json', book)
  await chooseFile(page, 'Open orders', 'orders.json', orders)
  await go(page, 'Bench')
  const bursts = pot(page, 'A').locator('.bursts').first()
  assert.match(await bursts.innerText(), /under 1\d\d °C/)
  await page.getByRole('radio', { name: 'US' }).check({ force: true })
  assert.match(await bursts.innerText(), /under 2\d\d °F/)
})

person('prints every pot with its boxes, and no buttons', {}, async (page) => {
  const pdf = await page.pdf({ format: 'Letter', path: undefined })
  assert.equal(pdf.subarray(0, 5).toString(), '%PDF-')
  const pages = pdf.toString('latin1').match(/\/Type\s*\/Page\b/g).length
  assert.ok(pages >= 3 && pages <= 14, `${pages} pages`)
  await page.emulateMedia({ media: 'print' })
  for (const letter of 'ABCDE') assert.ok(await pot(page, letter).isVisible())
  // Loose pages can be told apart: each step has its pot's letter, each page its day and number.
  const letters = await page.locator('.pot .step').evaluateAll((steps) =>
    steps.map((step) => {
      const shown = step.querySelector('.on-paper .letter')
      return shown?.checkVisibility() && step.closest('.pot').id === `pot-${shown.dataset.pot}`
    }),
  )
  assert.ok(letters.length > 20 && letters.every(Boolean))
  const head = await page.evaluate(() =>
    [...document.adoptedStyleSheets[0].cssRules].map(({ cssText }) => cssText).join(),
  )
  assert.match(head, /@top-left[^}]*Bench · Tue, Mar 2 · Tern Island workshop/)
  assert.match(head, /@top-right[^}]*counter\(page\)/)
  assert.ok(await page.getByRole('checkbox').first().isVisible())
  // Nothing is torn: no letter, row, box or heading can be cut by the end of a page.
  const torn = await page
    .locator('.letter, .pot > header, .pot .step, .pot footer, .weigh li, .load, tr, figure')
    .evaluateAll((parts) => parts.filter((part) => getComputedStyle(part).breakInside !== 'avoid').map(String))
  assert.deepEqual(torn, [])
  const apart = await page
    .locator('h2, h3, .pot > header')
    .evaluateAll((heads) => heads.filter((head) => getComputedStyle(head).breakAfter !== 'avoid').map(String))
  assert.deepEqual(apart, [])
  for (const name of ['Done', 'Print', 'Undo', 'Next']) {
    assert.equal(await page.getByRole('button', { name, exact: true }).count(), 0, name)
  }
  await picture(page, 'paper', { fullPage: true })
})
