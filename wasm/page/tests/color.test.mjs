// The view of color: pictures that are made here, with a card of known reflectance, and a cup that is simulated.
import assert from 'node:assert/strict'
import { deflateSync, crc32 } from 'node:zlib'
import axe from 'axe-core'
import { ask, BOUNCE, go, line, person, picture, pot, read } from './support.mjs'

const SIZE = { width: 300, height: 200 }

/** The areas of a picture, in its pixels. */
const AREAS = { card: [15, 20, 100, 160], left: [130, 20, 70, 160], right: [215, 20, 70, 160] }
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
  return Buffer.concat([
    signature,
    chunk('IHDR', head),
    chunk('IDAT', deflateSync(rows)),
    chunk('IEND', Buffer.alloc(0)),
  ])
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
    return reflected.map((share, at) =>
      Math.min(255, Math.max(0, Math.round(stored(Math.min(1, share * lamp[at] * light)) + jitter()))),
    )
  })
}

/** Opens a picture from a file, or another way; its figure. Those that were opened before are closed up. */
async function openPicture(page, buffer, way = chosen) {
  const figures = page.getByRole('figure', { name: /^Picture / })
  const before = (await figures.count()) ? await figures.getAttribute('aria-label') : null
  await way(page, buffer)
  const figure = page.locator(`figure[aria-label^="Picture "]:visible:not([aria-label="${before}"])`)
  await figure.waitFor()
  return page.getByRole('figure', { name: await figure.getAttribute('aria-label'), exact: true })
}

const chosen = (page, buffer) =>
  page.getByLabel('Open pictures').setInputFiles({ name: 'piece.png', mimeType: 'image/png', buffer })

/** Drops a picture on the view, or pastes it. */
const given = (kind) => (page, buffer) =>
  page.locator('.color').evaluate(
    (view, [kind, bytes]) => {
      const transfer = new DataTransfer()
      transfer.items.add(new File([new Uint8Array(bytes)], 'piece.png', { type: 'image/png' }))
      const event =
        kind === 'paste'
          ? new ClipboardEvent(kind, { clipboardData: transfer, bubbles: true, cancelable: true })
          : new DragEvent(kind, { dataTransfer: transfer, bubbles: true, cancelable: true })
      view.dispatchEvent(event)
    },
    [kind, [...buffer]],
  )

/** Taps a place of the picture: what is marked there is the key that is pressed. */
async function tap(figure, area) {
  const drawing = figure.getByRole('application')
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

let last = 0

/** Presses a key whose place was pressed before, as late as a second press counts. */
async function pressed(page, key) {
  await page.waitForTimeout(Math.max(0, last + BOUNCE - performance.now()))
  await key.click()
  last = performance.now()
}

const bookAt = (page, ...path) =>
  page.evaluate(async (path) => {
    const { state, valueAt } = await import('./src/state.js')
    return valueAt(state.book, path)
  }, path)

/** Nothing is wider than the screen, keys are large enough for a glove, and axe finds nothing. */
async function isUsable(page) {
  assert.ok((await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)) <= 0)
  const small = await page
    .locator('main :is(button, select, summary, label.button, input:not([type=file])):visible')
    .evaluateAll((keys) =>
      keys
        .filter((key) => key.getBoundingClientRect().height < 44)
        .map((key) => `${key.outerHTML.slice(0, 80)} ${key.getBoundingClientRect().height}`),
    )
  assert.deepEqual(small, [])
  const { violations } = await page.evaluate(`${axe.source}; axe.run({ resultTypes: ['violations'] })`)
  assert.deepEqual(
    violations.map(({ id, nodes }) => `${id} ${nodes[0].html}`),
    [],
  )
}

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
  const pour = cup(page).getByRole('button', { name: /^Poured this/ })
  // The maker begins with what the eye says; the rest follows the library.
  await cup(page).getByLabel('plum', { exact: true }).fill('8')
  await cup(page).getByLabel('rust', { exact: true }).fill('2')
  await pressed(page, pour)
  const distances = []
  for (;;) {
    const { log } = await colorState(page)
    const poured = log.filter((step) => !step.looks)
    assert.equal(poured.length, distances.length + 1)
    const now = await truly(page, poured, strengths)
    distances.push(await distance(now.lab))
    const sample = await openPicture(page, photograph({ left: now.hex, falls: 0.03, bright: 0.7 }))
    await tap(sample, 'card')
    await tap(sample, 'right')
    await said(page).getByText('ΔE₀₀').waitFor()
    if (await pour.isDisabled()) break
    assert.ok(distances.length < 20, `no end after ${distances}`)
    await pressed(page, pour)
    // Without a sample nothing more is suggested.
    await cup(page).getByText('Stir, cool a sample, and read it').waitFor()
    assert.ok(await pour.isDisabled())
  }
  console.log(`# ΔE₀₀ from the target, pour by pour: ${distances.map((one) => one.toFixed(1)).join(', ')}`)
  assert.ok(distances.length > 2, `${distances}`)
  // Each pour brings it nearer, or as near as the readings can tell.
  for (const [at, now] of distances.slice(1).entries()) assert.ok(now < distances[at] + 0.5, `${distances}`)
  assert.ok(distances.at(-1) < 2, `${distances}`)
  assert.match(await cup(page).innerText(), /Leave it/)
  assert.match(await said(page).innerText(), /Alike to the eye|Just visible side by side/)
  await picture(page, 'color phone light', { fullPage: true })
  await page.setViewportSize({ width: 844, height: 390 })
  await picture(page, 'color landscape')
  await page.setViewportSize(PHONE.viewport)

  // What the cup has shown goes into the book if it is accepted, and comes back out of it.
  await cup(page).getByRole('button', { name: 'Write plum into the book' }).click()
  const { factors } = await bookAt(page, 'materials', 'plum', 'strength')
  assert.ok(factors[0] < 0.97, `${factors}`)
  await cup(page).getByRole('button', { name: 'In the book: plum' }).waitFor()
  await page.getByRole('button', { name: /^Undo: The strength of plum/ }).click()
  assert.equal(await bookAt(page, 'materials', 'plum', 'strength'), undefined)

  // It is kept as a formula with its color, which order lines show.
  await cup(page).getByLabel('Name', { exact: true }).fill('dawn')
  await cup(page).getByRole('button', { name: 'Write the formula into the book' }).click()
  const { color, doses } = await bookAt(page, 'formulas', 'dawn')
  assert.ok((await distance(color.lab)) < 2 && doses.plum, JSON.stringify(doses))
  await page.getByLabel('The sample is a piece of').selectOption('dusk')
  await page.getByRole('button', { name: 'Keep its color in the book' }).click()
  await page.emulateMedia({ colorScheme: 'dark' })
  await isUsable(page)
  await picture(page, 'color phone dark', { fullPage: true })

  // The log is kept over a reload, pictures are not.
  await page.reload()
  await page.locator('html[data-whole]').waitFor()
  const after = await colorState(page)
  assert.equal(after.log.filter((step) => !step.looks).length, distances.length)
  assert.equal(await page.getByRole('figure', { name: /^Picture / }).count(), 0)
  await page.getByText('as seen', { exact: true }).first().waitFor()
  await go(page, 'Orders')
  await line(page, 1).getByRole('img', { name: 'the color of dusk, as seen' }).waitFor()
  await go(page, 'Bench')
  await pot(page, 'A').getByRole('img', { name: 'the color of dusk, as seen' }).waitFor()
})

person('says what is wrong with a picture, and what would do', { view: 'color' }, async (page) => {
  const gray = { left: '#a08c94' }
  const clipped = await openPicture(page, photograph({ ...gray, bright: 1.6 }))
  await tap(clipped, 'card')
  await tap(clipped, 'left')
  await clipped.getByText(/card is clipped: its color is lost.*darker/).waitFor()
  await page.getByText('Not read: The card is clipped').waitFor()
  assert.equal((await colorState(page)).target, null)
  await picture(page, 'color clipped')
  await clipped.getByRole('button', { name: /^Close picture/ }).click()
  const alone = await openPicture(page, photograph(gray), given('paste'))
  await alone.getByRole('button', { name: 'target' }).click()
  await tap(alone, 'left')
  await alone.getByText(/no white or gray card.*next to the piece/).waitFor()
  await alone.getByRole('button', { name: /^Close picture/ }).click()
  // In the light of a lamp at the edge a large mark is uneven, and one may be too small.
  const figure = await openPicture(page, photograph({ ...gray, falls: 0.98 }))
  await figure.getByRole('button', { name: 'Larger mark' }).click({ clickCount: 6 })
  await tap(figure, 'card')
  await tap(figure, 'left')
  await figure.getByText(/Light on the card varies by [\d.]+ %.*lamp or window/).waitFor()
  for (let press = 0; press < 12; press += 1) await figure.getByRole('button', { name: 'Smaller mark' }).click()
  await figure.getByText(/has \d+ pixels; at least 100/).waitFor()
  await page
    .getByLabel('Open pictures')
    .setInputFiles({ name: 'notes.png', mimeType: 'image/png', buffer: Buffer.from('no') })
  await page.getByText('“notes.png” is not a picture that this browser can read').waitFor()
  await isUsable(page)
})

person('works by keyboard and by numbers', { view: 'color', viewport: { width: 820, height: 1180 } }, async (page) => {
  const figure = await openPicture(page, photograph({ left: '#8f6a74', right: '#94707a' }), given('drop'))
  const drawing = figure.getByRole('application')
  const keyed = async (name, ...presses) => {
    await figure.getByRole('button', { name }).click()
    await drawing.focus()
    for (const [key, times] of presses) for (let at = 0; at < times; at += 1) await drawing.press(key)
    await drawing.press('Enter')
  }
  await keyed('card', ['ArrowLeft', 14])
  await keyed('target', ['ArrowRight', 1])
  await keyed('sample', ['ArrowRight', 16])
  await said(page).getByText('Visible side by side.').waitFor()
  // Without bands, other lights are not known.
  await page.getByText('In other lights').click()
  await page.getByText(/How it looks in another light cannot be calculated/).waitFor()

  // A formula that looked so is the nearest, as seen and as calculated.
  await page.getByLabel('The sample is a piece of').selectOption('dusk')
  await page.getByRole('button', { name: 'Keep its color in the book' }).click()
  const nearest = page.locator('.nearest > li').first()
  assert.match(await nearest.innerText(), /^dusk as seen\s+Visible side by side\.[^]*As calculated:/)
  await picture(page, 'color tablet', { fullPage: true })

  // Readings of an instrument, in bands: then other lights are known.
  const bands = (shares) => shares.map((share, at) => `${400 + 20 * at} ${share}`).join(' ')
  const { color, other_color } = JSON.parse(await read('core/examples/requests/color-lights.json'))
  const [one, other] = [color, other_color].map((piece) => piece.bands.reflectance)
  await page.getByText('Read by an instrument').click()
  await page.getByLabel('Target, as read').fill(bands(one))
  await page.getByLabel('Sample, as read').fill(bands(other))
  await page
    .getByText(/In the lamp|In lamp|In A/i)
    .first()
    .waitFor()
  await page.getByLabel('Sample, as read').fill('#b85e5')
  await page.getByText('This is not a color in hexadecimal digits.').waitFor()

  // Plus and minus show what drops would do, before any is poured.
  await page.getByLabel('Started from, of base').fill('1/2 cup')
  const then = cup(page).getByRole('status')
  const before = await then.innerText()
  await cup(page).getByRole('button', { name: 'A drop of soot more' }).click({ clickCount: 3 })
  assert.match(await then.innerText(), /3 drops of soot/)
  assert.notEqual(await then.innerText(), before)
  assert.deepEqual((await colorState(page)).log, [])

  // Far too much of a colorant, and no white to be used: more base, which goes in like drops. The last entry can be taken back.
  await page.getByText('Colorants not to use').click()
  await cup(page).getByRole('button', { name: 'chalk', exact: true }).click()
  await cup(page).getByLabel('plum', { exact: true }).fill('40')
  await pressed(page, cup(page).getByRole('button', { name: /^Poured this/ }))
  await page.getByLabel('Target, as read').fill('65.7, 18, -7.7')
  await page.getByLabel('Sample, as read').fill('52, 22, -9')
  await pressed(page, cup(page).getByRole('button', { name: /^Poured this: .* of clear-base/ }))
  const { log } = await colorState(page)
  assert.deepEqual(Object.keys(log.at(-1)), ['clear-base'])
  assert.ok(log.at(-2).looks)
  await cup(page).getByRole('button', { name: 'Take the last entry back' }).click()
  const back = await colorState(page)
  assert.deepEqual([back.log.length, back.seen.color.lab], [log.length - 2, [52, 22, -9]])

  // Test pieces of a colorant: the series, and a reading of one into the book.
  await page.getByLabel('Colorant', { exact: true }).selectOption('plum')
  const series = page.getByRole('region', { name: 'Test pieces of a colorant' })
  await series.getByRole('button', { name: /^4 drops in/ }).click()
  assert.equal((await bookAt(page, 'materials', 'plum', 'let_downs')).length, 3)
  await isUsable(page)
})
