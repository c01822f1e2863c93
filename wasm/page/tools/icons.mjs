// Makes the icons of an installed page from static/icon.svg: `node icons.mjs`. A maskable one has no corners, as the device cuts it
// to its own form; what it shows is within the 40 % around its middle that stay.
import { mkdir, readFile } from 'node:fs/promises'
import { chromium } from 'playwright-core'

const at = (path) => new URL(`../static/${path}`, import.meta.url)
const icon = await readFile(at('icon.svg'), 'utf8')
const whole = icon.replace(/ rx="\d+"/, '')
if (whole === icon) throw new Error('static/icon.svg has no rounded corners to leave out')
await mkdir(at('icons'), { recursive: true })
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-gpu'],
})
try {
  for (const [name, drawing, size] of [
    ['icon-192', icon, 192],
    ['icon-512', icon, 512],
    ['maskable-192', whole, 192],
    ['maskable-512', whole, 512],
  ]) {
    const page = await browser.newPage({ viewport: { width: size, height: size } })
    await page.setContent(`<style>body{margin:0}svg{display:block;width:${size}px;height:${size}px}</style>${drawing}`)
    await page.screenshot({ path: at(`icons/${name}.png`).pathname, omitBackground: true })
    await page.close()
  }
} finally {
  await browser.close()
}
