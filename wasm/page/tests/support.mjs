// What the tests share: the page served with its headers, a browser, and a visit that notes what must not happen.
import { mkdir, readFile } from 'node:fs/promises'
import { chromium } from 'playwright-core'
import { serve } from '../tools/serve.mjs'

const root = new URL('../../../', import.meta.url)
export const built = new URL('target/page/', root).pathname
export const pictures = new URL('target/page-pictures/', root).pathname

export const read = (path) => readFile(new URL(path, root), 'utf8')

const QUIET =
  '--no-sandbox --disable-gpu --disable-quic --no-first-run --disable-background-networking --disable-component-update --disable-sync'

/** Serves the page and opens a browser; `close` ends both. */
export async function open() {
  await mkdir(pictures, { recursive: true })
  const server = await serve(built)
  const browser = await chromium.launch({
    executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
    args: QUIET.split(' '),
  })
  const address = `http://127.0.0.1:${server.address().port}/`
  const close = async () => {
    await browser.close()
    server.close()
  }
  return { address, browser, server, close }
}

/** A visit with a browser of its own: `wrongs` are errors, violations of the policy, and requests to elsewhere. */
export async function visit({ address, browser }, { view = 'bench', clock, ...settings } = {}) {
  const context = await browser.newContext({
    viewport: { width: 1180, height: 820 },
    serviceWorkers: 'block',
    ...settings,
  })
  const page = await context.newPage()
  const wrongs = []
  page.on('pageerror', (error) => wrongs.push(String(error)))
  page.on('console', (message) => {
    // Playwright's own note that it keeps service workers off.
    if (message.type() !== 'log' && !/Service Worker registration blocked/.test(message.text()))
      wrongs.push(message.text())
  })
  page.on('request', (request) => {
    if (!/^(blob|data):/.test(request.url()) && !request.url().startsWith(address))
      wrongs.push(`request to ${request.url()}`)
  })
  await page.addInitScript(() => {
    addEventListener('securitypolicyviolation', (event) =>
      console.error(`policy: ${event.violatedDirective} ${event.blockedURI}`),
    )
  })
  if (clock) await page.clock.install({ time: clock })
  await page.goto(`${address}#${view}`)
  await page.locator('html[data-ready]').waitFor()
  return { page, context, wrongs }
}

/** Goes to another view by its key. */
export const go = (page, name) => page.getByRole('navigation', { name: 'Views' }).getByRole('link', { name }).click()

/** A picture for whoever wants to look. */
export const picture = (page, name, more = {}) => page.screenshot({ path: `${pictures}${name}.png`, ...more })
