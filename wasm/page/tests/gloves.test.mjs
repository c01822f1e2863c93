// The size for gloves: set once by a ruler on the screen, then keys of 20 mm and a step in capitals of 5 mm.
import assert from 'node:assert/strict'
import axe from 'axe-core'
import { go, person, picture, pot } from './support.mjs'

/** Sets the ruler as a card on this screen would: its short edge, 53.98 mm, is as long as the bar. */
async function setRuler(page, mm) {
  await page.getByRole('switch', { name: 'Gloves size' }).click()
  const bar = page.locator('.ruler-bar')
  await page.getByLabel('Length of the bar').fill(String(mm))
  await page.waitForFunction(
    (wide) => Math.abs(document.querySelector('.ruler-bar').offsetWidth - wide) <= 1,
    53.98 * mm,
  )
  const { width } = await bar.boundingBox()
  await page.getByRole('button', { name: 'Longer' }).click()
  await page.getByRole('button', { name: 'Shorter' }).click()
  await page.getByRole('button', { name: 'It is as long' }).click()
  return width / 53.98
}

for (const [name, viewport, mm] of [
  // A phone of 65 mm, a tablet of 160 mm.
  ['phone', { width: 390, height: 844 }, 6],
  ['tablet', { width: 820, height: 1180 }, 5.1],
]) {
  person(`has keys of 20 mm on a ${name}`, { view: 'book', viewport }, async (page) => {
    const set = await setRuler(page, mm)
    await page.waitForFunction(() => JSON.parse(localStorage.getItem('pourwright')).gloves?.on)
    await page.reload()
    await page.locator('html[data-whole]').waitFor()
    await go(page, 'Bench')
    await page.getByRole('checkbox').first().click()
    const small = await page
      .locator('.foot .done-next, .tick:visible, .start:visible')
      .evaluateAll((keys) =>
        keys.map((key) => key.getBoundingClientRect()).map(({ width, height }) => Math.min(width, height)),
      )
    assert.ok(small.length > 3)
    assert.ok(Math.min(...small) >= 20 * set - 1, `${Math.min(...small) / set} mm`)
    // A capital of the step, drawn in its own font and size.
    const capital = await page.locator('.foot .say').evaluate((say) => {
      const { fontWeight, fontSize, fontFamily } = getComputedStyle(say)
      const canvas = document.createElement('canvas').getContext('2d')
      canvas.font = `${fontWeight} ${fontSize} ${fontFamily}`
      return canvas.measureText('H').actualBoundingBoxAscent
    })
    assert.ok(capital >= 5 * set - 1, `${capital / set} mm`)
    // The step stays in sight above the bar, and nothing is wider than the screen.
    const bar = await page.locator('.foot').boundingBox()
    assert.ok(bar.height < 0.5 * viewport.height, `the bar is ${bar.height} px`)
    assert.ok((await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)) <= 0)
    const { violations } = await page.evaluate(`${axe.source}; axe.run({ resultTypes: ['violations'] })`)
    assert.deepEqual(
      violations.map(({ id, nodes }) => `${id} ${nodes[0].html}`),
      [],
    )
    await pot(page, 'A').locator('.step.now').scrollIntoViewIfNeeded()
    await picture(page, `gloves ${name}`)
    await go(page, 'Book')
    await page.getByRole('switch', { name: 'Gloves size' }).click()
    await go(page, 'Bench')
    const { height } = await page.getByRole('checkbox').first().boundingBox()
    assert.ok(height < 70)
  })
}
