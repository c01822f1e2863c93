// The ways to the views: on a phone one row of targets for a finger, each view one tap away, or two.
import assert from 'node:assert/strict'
import { person, picture } from './support.mjs'

const VIEWS = ['orders', 'bench', 'day', 'one', 'salt', 'color', 'book']

const SIZES = {
  phone: { width: 390, height: 844 },
  'small phone': { width: 320, height: 640 },
  landscape: { width: 844, height: 390 },
}

for (const locale of ['en-US', 'de-DE']) {
  person(`are one row on every phone, ${locale}`, { locale, view: 'orders', step: true }, async (page) => {
    const links = page.locator('nav.views')
    const others = links.getByRole('button')
    const boxes = () =>
      links.locator(':is(a, button):visible').evaluateAll((all) =>
        all.map((one) => {
          const { top, width, height } = one.getBoundingClientRect()
          return { top, width, height, isCut: one.scrollWidth > one.clientWidth }
        }),
      )
    /** Goes to a view, and returns the number of taps that it took. */
    const open = async (view) => {
      const link = links.locator(`a[href="#${view}"]`)
      const taps = (await link.isVisible()) ? 1 : 2
      if (taps === 2) await others.click()
      for (const { width, height, isCut } of await boxes()) assert.ok(width >= 44 && height >= 44 && !isCut, view)
      await link.click()
      await links.locator(`a[href="#${view}"][aria-current="page"]`).waitFor({ state: 'attached' })
      // What was unfolded is folded again, and the key of the other views names the one that is shown.
      if (taps === 2) assert.equal(await others.getAttribute('aria-expanded'), 'false')
      if (taps === 2) assert.ok((await others.innerText()).startsWith(await link.textContent()))
      return taps
    }
    for (const [size, viewport] of Object.entries(SIZES)) {
      await page.setViewportSize(viewport)
      assert.equal(new Set((await boxes()).map(({ top }) => top)).size, 1, size)
      const taps = []
      for (const view of VIEWS) taps.push(await open(view))
      assert.deepEqual(taps, size === 'landscape' ? [1, 1, 1, 1, 1, 1, 1] : [1, 1, 1, 2, 2, 2, 2])
      if (await others.isVisible()) {
        await others.click()
        await picture(page, `views ${size} ${locale}`)
        await others.click()
      }
    }
  })
}

person('count faults where they are, also of a view that is folded', { viewport: SIZES.phone }, async (page) => {
  const others = page.locator('nav.views').getByRole('button')
  await page.evaluate(async () => (await import('./src/edits.js')).editBook(['molds', 'grub-2'], undefined))
  await others.locator('.fault-count').waitFor()
  await others.click()
  assert.equal(await others.locator('.fault-count').count(), 0)
  await page.getByRole('link', { name: /^Book \d/ }).waitFor()
})
