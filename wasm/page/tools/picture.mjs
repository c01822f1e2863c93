// Takes picture.png: a step of the first pot of the demo day in a tablet's browser, its base and stabilizer ticked off.
import { chromium } from 'playwright-core'
import { serve } from './serve.mjs'

const root = new URL('../../../', import.meta.url)
const server = await serve(new URL('target/page/', root).pathname)
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking', '--disable-component-update'],
})
try {
  const page = await browser.newPage({ viewport: { width: 820, height: 900 }, serviceWorkers: 'block' })
  await page.goto(`http://127.0.0.1:${server.address().port}/#bench`)
  await page.locator('html[data-whole]').waitFor()
  const done = page.locator('.foot .done-next')
  for (let step = 0; step < 2; step += 1) {
    await done.click()
    await page.waitForTimeout(1000) // presses in quick succession count as one
  }
  await page.evaluate(() => document.activeElement?.blur())
  await page.screenshot({ path: new URL('wasm/page/picture.png', root).pathname, animations: 'disabled' })
} finally {
  await browser.close()
  server.close()
}
