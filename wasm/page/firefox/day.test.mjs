// The demo day in Firefox: planned, ticked, kept over a reload, heated by the thermometer, without errors.
import assert from 'node:assert/strict'
import { mkdir } from 'node:fs/promises'
import { test } from 'node:test'
import puppeteer from 'puppeteer-core'
import { serve } from '../tools/serve.mjs'

const root = new URL('../../../', import.meta.url)
const pictures = new URL('target/page-pictures/', root).pathname

/** Longer than the time in which two presses count as one. */
const BOUNCE = 600

const wait = (milliseconds) => new Promise((done) => setTimeout(done, milliseconds))

/** Presses the large button, once what was done is over. */
async function press(page) {
  await wait(BOUNCE)
  await page.locator('.foot .done-next').click()
}

const count = (page, selector) => page.$$eval(selector, (found) => found.length)
const foot = (page) => page.$eval('.foot', (part) => part.innerText)
const ready = (page) => page.waitForSelector('html[data-whole]')

const TICKED = '[role="checkbox"][aria-checked="true"]'

/** What the thermometer shows in the pot, typed in and taken. */
async function reads(page, degrees) {
  await page.waitForSelector('.foot input[name="reading"]')
  await page.type('.foot input[name="reading"]', degrees)
}

test('Firefox plans, ticks, reloads, heats and prints the demo day', { timeout: 300_000 }, async () => {
  await mkdir(pictures, { recursive: true })
  const server = await serve(new URL('target/page/', root).pathname)
  const browser = await puppeteer.launch({
    browser: 'firefox',
    executablePath: process.env.FIREFOX ?? '/usr/bin/firefox-esr',
    headless: true,
    protocolTimeout: 120_000,
  })
  const wrongs = []
  try {
    const page = await browser.newPage()
    page.setDefaultTimeout(60_000)
    await page.setViewport({ width: 1180, height: 820 })
    page.on('pageerror', (error) => wrongs.push(String(error)))
    page.on('console', (message) => {
      if (message.type() === 'error') wrongs.push(message.text())
    })
    await page.goto(`http://127.0.0.1:${server.address().port}/#bench`)
    await ready(page)
    assert.match(await browser.version(), /firefox/i)
    // One step at first, and the whole pots by a key.
    assert.match(await page.$eval('.single', (part) => part.innerText), /clear-base/)
    await page.locator('button.whole').click()
    assert.deepEqual(await page.$$eval('.pot h2', (heads) => heads.map((head) => head.innerText.slice(0, 5))), [
      'Pot A',
      'Pot B',
      'Pot C',
      'Pot D',
      'Pot E',
    ])
    // Ticks, which stay over a reload.
    const first = await page.$eval('[role="checkbox"]', (box) => box.getAttribute('aria-label'))
    assert.equal(first, `Pot A: ${await page.$eval('.foot .say > span:last-child', (part) => part.innerText)}, step 1`)
    await press(page)
    await press(page)
    assert.equal(await count(page, TICKED), 2)
    const next = await foot(page)
    await page.waitForFunction(
      () => Object.keys(JSON.parse(localStorage.getItem('pourwright') ?? '{}').done ?? {}).length === 2,
    )
    await page.reload()
    await ready(page)
    assert.equal(await count(page, TICKED), 2)
    assert.equal(await foot(page), next)
    await page.screenshot({ path: `${pictures}Firefox bench.png` })
    // On to the first heat, which asks for the thermometer: a burst with its clock, then hot.
    for (let presses = 0; presses < 10 && !(await count(page, '.foot input[name="reading"]')); presses += 1)
      await press(page)
    await reads(page, '284')
    await page.waitForFunction(() => /284 °F/.test(document.querySelector('.foot').innerText))
    await press(page)
    await page.waitForSelector('.foot .timer')
    await page.screenshot({ path: `${pictures}Firefox heat.png` })
    await press(page)
    await reads(page, '335')
    await press(page)
    await page.waitForFunction(() => document.querySelector('.pot .step.heat').classList.contains('done'))
    assert.equal(await count(page, '.foot .reading'), 0)
    await page.pdf({ path: `${pictures}Firefox bench.pdf` })
    assert.deepEqual(wrongs, [])
  } finally {
    await browser.close()
    server.closeAllConnections()
    server.close()
  }
})
