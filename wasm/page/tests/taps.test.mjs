// One pot by the keys of the foot: how many taps it takes, what its dots and the rail of pots show, and another amount.
import assert from 'node:assert/strict'
import { BOUNCE, person, picture, planOf, pot } from './support.mjs'

const foot = (page) => page.getByLabel('Clocks and next step')
const rail = (page, letter) => page.getByRole('group', { name: 'Pots' }).getByRole('link', { name: `Pot ${letter}` })

/** Taps for pot A, at most; the number is printed. */
const TAPS = 20

person(
  'pot A takes few taps',
  { clock: '2027-03-02T08:00:00', viewport: { width: 820, height: 1180 } },
  async (page) => {
    const plan = await planOf(page)
    const own = plan.steps.filter(({ at }) => at.some((at) => at.pot === 'A'))
    let taps = 0
    let readings = 0
    const tap = async (key) => {
      taps += 1
      await key.click()
      await page.clock.runFor(BOUNCE)
    }
    const read = async (degrees) => {
      readings += 1
      await foot(page).getByLabel('The thermometer in pot A').fill(degrees)
      await tap(foot(page).locator('.done-next'))
    }
    for (const [at, step] of own.entries()) {
      assert.equal(await rail(page, 'A').getAttribute('aria-label'), name(at, own.length, hotSoFar(own, at)))
      if (step.kind === 'heat') {
        // One burst, then it is hot: each time the pot is read, and the key does what the reading asks for.
        await read('284')
        assert.equal(await foot(page).getByRole('timer', { name: /burst/ }).count(), 1)
        await page.clock.runFor(60_000)
        await read('335')
        const readings = await page.evaluate(async () => {
          const { state } = await import('./src/state.js')
          return Object.values(state.done).flatMap(({ reading }) => reading ?? [])
        })
        assert.equal(readings.length, readings.filter((reading) => reading === '335 °F').length)
        assert.equal(readings.length, own.slice(0, at + 1).filter(({ kind }) => kind === 'heat').length)
      } else if (step.kind === 'shoot' && step.items.length > 1) {
        const dots = foot(page).getByRole('img', { name: /loads done/ })
        assert.equal(await dots.innerText(), '○'.repeat(step.items.length))
        const box = await foot(page)
          .getByRole('button', { name: /loads$/ })
          .boundingBox()
        assert.ok(box.y + box.height <= 1180 && box.x + box.width <= 820, JSON.stringify(box))
        if (step.items.length === 4) await picture(page, 'loads as dots')
        await tap(foot(page).getByRole('button', { name: `All ${step.items.length} loads` }))
      } else {
        // A clock is started by the key that ends it.
        for (const { id } of step.items) {
          const box = page.locator(`[id="item:${id}"]`)
          while ((await box.getAttribute('aria-checked')) !== 'true') await tap(foot(page).locator('.done-next'))
        }
      }
    }
    assert.equal(await pot(page, 'A').locator('.step').count(), await pot(page, 'A').locator('.step.done').count())
    assert.equal(await rail(page, 'A').getAttribute('aria-label'), name(own.length, own.length, false))
    await picture(page, 'the rail of pots')
    console.log(`# pot A: ${taps} taps of keys, of these ${readings} after a reading is typed`)
    assert.ok(taps <= TAPS, `${taps} taps`)
    // The loads were ticked one by one: each can be taken back.
    await page.getByRole('button', { name: 'Undo' }).click()
    assert.match(await rail(page, 'A').getAttribute('aria-label'), /Pot A, hot: 11 of 12 steps done/)
  },
)

const name = (done, all, hot) => `Pot A${hot ? ', hot' : ''}: ${done} of ${all} steps done`
const hotSoFar = (steps, at) => steps.slice(0, at).some(({ kind }) => kind === 'heat')

person('another amount is said from the foot', {}, async (page) => {
  await foot(page).getByRole('button', { name: 'Other amount' }).click()
  for (const digit of '700') await page.getByRole('button', { name: digit, exact: true }).click()
  await page.getByRole('heading', { name: 'Exactly right' }).waitFor()
  // What did not belong, or is in another cup, is said at the pot.
  await page.getByRole('link', { name: 'Something else went in' }).click()
  await page.getByText('Pot A of the day').waitFor()
  assert.equal(await page.getByLabel('What went in of clear-base').inputValue(), '700 g')
})

person('doubt is marked only where the scale would be surer', {}, async (page) => {
  // In a shop that wants 4 % where the demo takes 10 %.
  await page.evaluate(async () => {
    const { change, state } = await import('./src/state.js')
    const materials = Object.entries(state.book.materials).map(([name, material]) => [
      name,
      material.tolerance === '10 %' || name === 'fine-salt' ? { ...material, tolerance: '4 %' } : material,
    ])
    change({ book: { ...state.book, materials: Object.fromEntries(materials) } })
  })
  await page.locator('main[aria-busy="false"]').waitFor()
  const weighs = (await planOf(page)).pots.flatMap(({ stages }) => stages.flatMap(({ weigh }) => weigh))
  const beyond = weighs.filter(({ doubt, tolerance }) => doubt && doubt.uncertainty.value > tolerance.value)
  const surer = beyond.filter(
    ({ doubt, doubt_weighed: weighed }) => weighed?.uncertainty.value < doubt.uncertainty.value,
  )
  assert.ok(surer.length > 0 && beyond.length > surer.length)
  const marked = (await page.locator('ul.weigh .doubt').allInnerTexts()).join('\n')
  assert.equal(await page.locator('ul.weigh .doubt').count(), surer.length)
  for (const { doubt_weighed: weighed } of surer)
    assert.ok(marked.includes(`weighed ± ${weighed.uncertainty.text}`), marked)
  assert.equal(await page.locator('ul.weigh .unsure').count(), beyond.length - surer.length)
})
