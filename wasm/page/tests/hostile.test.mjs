// Malformed documents: the library refuses them, and no view breaks on them.
import assert from 'node:assert/strict'
import { person, read } from './support.mjs'

const WHATEVER = [null, 'x', 3, [], {}, [null], { a: null }, { a: 3 }]
const BOOK = 'products molds bench formulas materials limits measures costing shop about'.split(' ')
const BENCH = 'cups injector oven ext spoons balance'.split(' ')
const LINE = 'order product pieces promised shape formulas layers mold packs pack_of'.split(' ')
const ORDERS = 'stock shelf day about'.split(' ')

person('are refused without a view that breaks', {}, async (page) => {
  // The view of color has something to show.
  await page.evaluate(async () => {
    const { change, state } = await import('./src/state.js')
    const read = { color: { lab: [60, 15, -5] }, lab: { lightness: 60, a: 15, b: -5 }, hex: '#9d8999', notes: [] }
    const color = { ...state.color, target: read, seen: read, start: '1/2 cup', formulas: ['plain'], series: 'plum' }
    change({ color })
  })
  const [book, orders] = await Promise.all(
    ['book', 'orders'].map(async (name) => JSON.parse(await read(`core/examples/demo/${name}.json`))),
  )
  const { product, ...line } = orders.lines[0]
  const pairs = WHATEVER.flatMap((value) => [
    ...BOOK.map((key) => [{ ...book, [key]: value }, orders, ['bench', 'orders', 'one', 'salt', 'color', 'book']]),
    ...BENCH.map((key) => [{ ...book, bench: { ...book.bench, [key]: value } }, orders, ['book', 'bench']]),
    ...LINE.map((key) => [book, { ...orders, lines: [{ ...line, [key]: value }] }, ['orders']]),
    ...ORDERS.map((key) => [book, { ...orders, [key]: value }, ['orders']]),
  ])
  const broken = await page.evaluate(async (pairs) => {
    const { change } = await import('./src/state.js')
    const parts = 'formulas materials molds products bench advanced'.split(' ')
    // The form of the book needs its schema.
    const { isReady } = await import('./src/book-words.js')
    while (!isReady()) await new Promise((done) => setTimeout(done, 5))
    const found = []
    let count = 0
    for (const [book, orders, views] of pairs) {
      for (const view of views) {
        history.replaceState(null, '', `#${view}`)
        const part = parts[(count += 1) % parts.length]
        const open = Object.keys(book[part] ?? {})[count % 3] ?? null
        change({ book, orders, form: { part, open, start: count % 11 === 0 } })
        const said = document.querySelector('.stale')?.textContent ?? ''
        if (/cannot be shown/.test(said))
          found.push(`${view}: ${said} ${JSON.stringify([book, orders.lines[0]]).slice(0, 80)}`)
      }
    }
    return found
  }, pairs)
  assert.deepEqual(broken, [])
})
