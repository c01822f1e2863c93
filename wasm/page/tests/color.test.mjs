// The view of color: pictures that are made here, with a card of known reflectance, and a cup that is simulated.
import assert from 'node:assert/strict'
import { deflateSync, crc32 } from 'node:zlib'
import axe from 'axe-core'
import { ask, BOUNCE, go, person, picture, read } from './support.mjs'

const SIZE = { width: 400, height: 300 }

/** The areas of a picture, in its pixels. */
const AREAS = { card: [20, 40, 130, 220], left: [170, 40, 90, 220], right: [280, 40, 100, 220] }
const center = ([left, top, width, height]) => [left + width / 2, top + height / 2]

/** A PNG of sRGB pixels: `pixel` gives the three bytes at a place. */
function png(pixel) {
  const { width, height } = SIZE
  const rows = Buffer.alloc(height * (1 + 3 * width))
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) rows.set(pixel(x, y), y * (1 + 3 * width) + 1 + 3 * x)
  }
  const chunk = (name, data) => {
    const body = Buffer.concat([Buffer.from(name), data])
    const framed = Buffer.alloc(body.length + 8)
    framed.writeUInt32BE(data.length)
    body.copy(framed, 4)
    framed.writeUInt32BE(crc32(body), body.length + 4)
    return framed
  }
  const head = Buffer.alloc(13)
  head.writeUInt32BE(width)
  head.writeUInt32BE(height, 4)
  // Eight bits a channel, red, green and blue.
  head.set([8, 2], 8)
  const signature = Buffer.from([137, 80, 78, 71, 13, 10, 26, 10])
  return Buffer.concat([signature, chunk('IHDR', head), chunk('IDAT', deflateSync(rows)), chunk('IEND', Buffer.alloc(0))])
}

// The curve of sRGB (IEC 61966-2-1).
const linear = (byte) => (byte <= 0.04045 * 255 ? byte / 255 / 12.92 : ((byte / 255 + 0.055) / 1.055) ** 2.4)
const stored = (light) => 255 * (light <= 0.0031308 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055)

/** A repeatable noise of about two levels. */
function noise() {
  let seed = 1
  return () => {
    seed = (seed * 48271) % 2147483647
    return (seed / 2147483647 - 0.5) * 6
  }
}

/**
 * A photograph in the light of a yellow lamp, with a card of 90 % and pieces of these colors (`#rrggbb`); the light falls by
 * `falls` from the left to the right of an area, and is `bright` times what the camera can store.
 */
function photograph({ left, right = left, falls = 0.04, bright = 0.75 }) {
  const lamp = [1, 0.9, 0.7].map((share) => share * bright)
  const colorOf = (hex) => [1, 3, 5].map((at) => linear(Number.parseInt(hex.slice(at, at + 2), 16)))
  const reflects = { card: [0.9, 0.9, 0.9], left: colorOf(left), right: colorOf(right) }
  const jitter = noise()
  return png((x, y) => {
    const inside = ([from, top, width, height]) => x >= from && x < from + width && y >= top && y < top + height
    const area = Object.keys(AREAS).find((name) => inside(AREAS[name]))
    const [from, , width] = AREAS[area] ?? [0, 0, SIZE.width]
    const light = 1 - falls * ((x - from) / width)
    const reflected = reflects[area] ?? [0.25, 0.25, 0.25]
    return reflected.map((share, at) => Math.min(255, Math.max(0, Math.round(stored(Math.min(1, share * lamp[at] * light)) + jitter()))))
  })
}

/** Opens a picture; the figure of it. */
async function openPicture(page, buffer) {
  const figures = page.getByRole('figure', { name: /^Picture / })
  const before = await figures.count()
  await page.getByLabel('Open pictures').setInputFiles({ name: 'piece.png', mimeType: 'image/png', buffer })
  await figures.nth(before).waitFor()
  return figures.nth(before)
}

/** Taps a place of the picture: what is marked there is the key that is pressed. */
async function tap(figure, area) {
  const drawing = figure.getByRole('application')
  await drawing.scrollIntoViewIfNeeded()
  const { width, height } = await drawing.boundingBox()
  const [x, y] = center(AREAS[area])
  await drawing.click({ position: { x: (x / SIZE.width) * width, y: (y / SIZE.height) * height } })
}

const said = (page) => page.getByRole('region', { name: 'Side by side' }).getByRole('status')
const cup = (page) => page.getByRole('region', { name: 'The cup' })
const colorState = (page) => page.evaluate(async () => (await import('./src/state.js')).state.color)

/** The color of a cup whose colorants are as strong as `strengths` say, by the library's rule of mixing. */
async function truly(page, log, strengths) {
  const book = JSON.parse(await read('core/examples/demo/book.json'))
  for (const [name, factors] of Object.entries(strengths)) {
    book.materials[name].strength = { factors, common: '1 %', own: '1 %' }
  }
  const colorants = Object.keys(book.materials).filter((name) => book.materials[name].let_downs)
  const trial = { start: '1/2 cup', formulas: ['plain'], log }
  const asked = { calculate: 'color-next', book, target: { hex: '#808080' }, trial, leave_out: colorants }
  const { answer, faults } = await ask(page, asked)
  assert.deepEqual(faults, [])
  const { lightness, a, b } = answer.expected
  const lab = [lightness, a, b]
  const { answer: shown } = await ask(page, { calculate: 'color-reading', book: undefined, instrument: { lab } })
  return { lab, hex: shown.hex }
}

const PHONE = { viewport: { width: 390, height: 844 } }

person('leads from two pictures to the target, drop by drop', { view: 'color', ...PHONE }, async (page) => {
  const strengths = { plum: [0.86, 0.9, 0.88], rust: [1.12, 1.08, 1.1] }
  const wanted = await truly(page, [{ plum: '11 drops', rust: '3 drops' }], strengths)
  const target = await openPicture(page, photograph({ left: wanted.hex }))
  await tap(target, 'card')
  await tap(target, 'left')
  await page.getByLabel('Started from, of base').fill('1/2 cup')
  await page.getByLabel('Formula in it').selectOption('plain')

  const distance = async (lab) => {
    const asked = { calculate: 'color-difference', book: undefined, color: { lab: wanted.lab }, other_color: { lab } }
    return (await ask(page, asked)).answer.difference
  }
  const distances = []
  for (;;) {
    const { log } = await colorState(page)
    const now = await truly(page, log.filter((step) => !step.looks), strengths)
    distances.push(await distance(now.lab))
    const sample = await openPicture(page, photograph({ left: now.hex, falls: 0.03, bright: 0.7 }))
    await tap(sample, 'card')
    await tap(sample, 'right')
    const pour = cup(page).getByRole('button', { name: /^Poured this/ })
    if (distances.length === 2) {
      await picture(page, 'color phone light', { fullPage: true })
      await page.emulateMedia({ colorScheme: 'dark' })
      await picture(page, 'color phone dark', { fullPage: true })
    }
    if (await pour.isDisabled()) break
    assert.ok(distances.length < 25, `no end after ${distances}`)
    await pour.click()
    await page.waitForTimeout(BOUNCE)
  }
  console.log(`# ΔE₀₀ from the target, pour by pour: ${distances.map((one) => one.toFixed(1)).join(', ')}`)
  // Each pour brings it nearer, or as near as the readings can tell.
  for (const [at, now] of distances.slice(1).entries()) assert.ok(now < distances[at] + 0.5, `${distances}`)
  assert.ok(distances.at(-1) < 2, `${distances}`)
  assert.match(await cup(page).innerText(), /Leave it/)
  assert.match(await cup(page).innerText(), /The eye decides/)
})
