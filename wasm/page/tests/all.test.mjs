// What every view must do: be accessible, work by keyboard and with gloves, be fast, and work offline.
import assert from 'node:assert/strict'
import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { test } from 'node:test'
import axe from 'axe-core'
import { built, go, open, person, picture, pot, visit } from './support.mjs'

for (const colorScheme of ['light', 'dark']) {
  for (const [name, viewport] of [
    ['tablet', { width: 820, height: 1180 }],
    ['phone', { width: 390, height: 844 }],
  ]) {
    person(`is accessible, ${colorScheme}, ${name}`, { colorScheme, viewport }, async (page) => {
      for (const view of ['Bench', 'Orders', 'Day', 'One pot', 'Salt', 'Color', 'Book']) {
        await go(page, view)
        if (view === 'Day') await page.getByRole('button', { name: 'All went as the sheet says' }).click()
        if (view === 'Day') for (const part of await page.locator('.pot-notes summary').all()) await part.click()
        if (view === 'One pot') await page.getByLabel('What went in of plum').fill('90 drops')
        if (view === 'Book') await page.getByRole('button', { name: 'Advanced' }).click()
        if (view === 'Book') await page.locator('summary').first().click()
        // The page's policy allows no foreign script: the browser itself runs the checker.
        const { violations } = await page.evaluate(`${axe.source}; axe.run({ resultTypes: ['violations'] })`)
        const serious = violations.map(({ id, impact, nodes }) => `${view}: ${impact} ${id} ${nodes[0].html}`)
        assert.deepEqual(serious, [])
        const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)
        assert.ok(wide <= 0, `${view} is ${wide} px too wide`)
        await picture(page, `${view} ${name} ${colorScheme}`)
      }
      await go(page, 'Orders')
      await page.getByRole('textbox', { name: 'Pieces' }).first().fill('many')
      const { violations } = await page.evaluate(`axe.run({ resultTypes: ['violations'] })`)
      assert.deepEqual(
        violations.map(({ id, nodes }) => `${id} ${nodes[0].html}`),
        [],
      )
    })
  }
}

person('holds long names', { viewport: { width: 820, height: 1180 } }, async (page) => {
  await page.evaluate(async () => {
    const { change, state } = await import('./src/state.js')
    const long = (document) =>
      ['dusk', 'dusk finger', 'teal-flake', 'finger-5', '31'].reduce(
        (text, name) => text.replaceAll(`"${name}"`, `"${name.replace(' ', '').padEnd(76, 'x')}"`),
        JSON.stringify(document),
      )
    change({ book: JSON.parse(long(state.book)), orders: JSON.parse(long(state.orders)) })
  })
  for (const view of ['Orders', 'Day', 'One pot', 'Salt', 'Color', 'Book', 'Bench']) {
    await go(page, view)
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)
    assert.ok(wide <= 0, `${view} is ${wide} px too wide`)
  }
  // The letter of a pot and its whole card stay in view.
  const out = await page
    .locator('.pot, .pot .letter, .pot .step *, .foot *')
    .evaluateAll((parts) => parts.filter((part) => part.getBoundingClientRect().right > innerWidth).length)
  assert.equal(out, 0)
})

person('works by the keyboard alone', { view: 'orders' }, async (page) => {
  await page.keyboard.press('Tab')
  await page.keyboard.press('Enter')
  assert.equal(await page.evaluate(() => document.activeElement.id), 'main')
  await page.keyboard.press('Tab')
  assert.equal(await page.evaluate(() => document.activeElement.id), 'orders/day')
  await go(page, 'Bench')
  await page.getByRole('checkbox').first().focus()
  await page.keyboard.press('Space')
  assert.equal(await page.getByRole('checkbox').first().getAttribute('aria-checked'), 'true')
  // The focus is visible.
  const outline = await page
    .getByRole('checkbox')
    .first()
    .evaluate((key) => getComputedStyle(key).outlineWidth)
  assert.equal(outline, '4px')
})

person('has buttons large enough for a glove', {}, async (page) => {
  for (const view of ['Bench', 'Orders', 'Day', 'One pot', 'Salt', 'Color']) {
    await go(page, view)
    const small = await page
      .locator('main button:visible, main select:visible, .foot button:visible')
      .evaluateAll((keys) =>
        keys
          .map((key) => [key.innerText, key.getBoundingClientRect()])
          .filter(([, { width, height }]) => width < 55 || height < 55),
      )
    assert.deepEqual(small, [], view)
  }
})

person('follows a keystroke within a frame', { view: 'orders' }, async (page) => {
  const { times, said } = await page.evaluate(() => {
    const said = []
    const input = document.getElementById('orders/lines/0/pieces')
    const times = Array.from({ length: 160 }, (_, round) => {
      const pieces = 24 + (round % 9)
      input.value = String(pieces)
      const begin = performance.now()
      input.dispatchEvent(new Event('input'))
      document.body.getBoundingClientRect()
      const took = performance.now() - begin
      said.push(document.querySelector('.line .comes-to').innerText)
      return took
    })
    return { times, said }
  })
  // The plan of each number of pieces is shown as soon as the keystroke is handled.
  assert.ok(new Set(said).size > 1)
  for (const [round, words] of said.entries()) assert.equal(words, said[round % 9])
  const late = times.slice(80).sort((one, other) => one - other)
  const [least, median] = [late[0], late[40]].map((time) => time.toFixed(1))
  console.log(
    `# from a keystroke to the plan of the demo day on the page: ${median} ms (median of 80), ${least} ms at best`,
  )
})

test('works offline after the first visit', async () => {
  const own = await open()
  const { page, context, wrongs } = await visit(own, { serviceWorkers: 'allow' })
  await page.evaluate(() => navigator.serviceWorker.ready)
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null)
  await context.setOffline(true)
  own.server.close()
  own.server.closeAllConnections()
  await page.reload()
  await page.locator('html[data-whole]').waitFor()
  await pot(page, 'A').waitFor()
  assert.deepEqual(wrongs, [])
  await own.close()
})

test('offers a new version, and keeps the day when it is taken', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'page-'))
  await cp(built, folder, { recursive: true })
  const own = await open(`${folder}/`)
  const { page, context, wrongs } = await visit(own, { serviceWorkers: 'allow' })
  const other = await context.newPage()
  for (const tab of [page, other]) {
    if (tab === other) await tab.goto(page.url())
    await tab.waitForFunction(() => navigator.serviceWorker.controller !== null)
  }
  await page.getByRole('checkbox').first().click()
  const asked = []
  own.server.on('request', ({ url }) => asked.push(url))
  const [before] = (await readFile(join(folder, 'index.html'), 'utf8')).match(/files\/page-\w+\.js/)
  const now = 'files/page-RENEWED1.js'
  await writeFile(
    join(folder, now),
    `${await readFile(join(folder, before), 'utf8')}\ndocument.documentElement.dataset.renewed = 'yes'\n`,
  )
  await rm(join(folder, before))
  for (const file of ['index.html', 'service-worker.js']) {
    const text = await readFile(join(folder, file), 'utf8')
    await writeFile(join(folder, file), text.replaceAll(before, now).replace(/VERSION = '.*'/, "VERSION = 'another'"))
  }
  await page.evaluate(async () => (await navigator.serviceWorker.ready).update())
  const key = page.getByRole('button', { name: 'Use it now' })
  await key.waitFor()
  // Until it is taken, all files are those of the version before.
  await page.reload()
  await key.waitFor()
  assert.equal(await page.locator('html[data-renewed]').count(), 0)
  // Of what is named by its content only what is new has been loaded.
  assert.deepEqual(
    asked.filter((url) => url.startsWith('/files/')),
    [`/${now}`],
  )
  await key.click()
  for (const tab of [page, other]) {
    await tab.locator('html[data-renewed][data-whole]').waitFor()
    await tab.locator('[role="checkbox"][aria-checked="true"]').first().waitFor()
    assert.equal(await tab.getByRole('button', { name: 'Use it now' }).count(), 0)
  }
  assert.deepEqual(wrongs, [])
  await own.close()
  await rm(folder, { recursive: true })
})

test('is still served after a request for a bad address', async () => {
  const own = await open()
  for (const address of ['%', '..%2f..%2fetc', '%00']) {
    const { status } = await fetch(`${own.address}${address}`)
    assert.equal(status, 404, address)
  }
  assert.equal((await fetch(own.address)).status, 200)
  await own.close()
})
