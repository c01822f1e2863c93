// The JavaScript package next to what a page would use today, in one run: conversions next to mathjs and js-quantities,
// sums next to plain JavaScript; and its time to start, the cost of a call, and the time of a day's plan.
// Figures only: nothing here decides a test. Run: node benches/js/compare.mjs, after wasm/build.
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { cpus } from 'node:os'

const root = new URL('../../', import.meta.url)
const dependency = createRequire(new URL('bindings/js/', root))
const read = (path) => readFileSync(new URL(path, root), 'utf8')

/** The median of `rounds` times in µs. */
function median(rounds, work) {
  const times = Array.from({ length: rounds }, () => {
    const start = performance.now()
    work()
    return performance.now() - start
  })
  return times.sort((a, b) => a - b)[rounds >> 1] * 1000
}

/** The time of one call in µs: the median over rounds of many calls, after the engine has warmed up. */
function perCall(work, calls = 2000) {
  const round = () => {
    for (let call = 0; call < calls; call += 1) work(call)
  }
  median(10, round)
  return median(31, round) / calls
}

const row = (what, micros, peer = '') => {
  const [number, unit] = micros < 1000 ? [micros, 'µs'] : [micros / 1000, 'ms']
  console.log(`${what.padEnd(52)} ${number.toPrecision(3).padStart(8)} ${unit}  ${peer}`)
}

console.log(`Node ${process.version}, ${cpus()[0].model}\n`)

/** How soon a module is ready, in µs: the median of 11. */
async function ready(module) {
  const bytes = readFileSync(new URL(`bindings/js/build/${module}_bg.wasm`, root))
  const times = []
  for (let round = 0; round < 11; round += 1) {
    const start = performance.now()
    // A module of its own each time: what is loaded once is loaded.
    const { default: init } = await import(new URL(`bindings/js/build/${module}.js?${Math.random()}`, root))
    await init({ module_or_path: bytes })
    times.push(performance.now() - start)
  }
  return times.sort((a, b) => a - b)[5] * 1000
}
row('ready: compile and instantiate', await ready('pourwright'))
row('       plain numbers alone', await ready('pourwright_scalar'))

const { default: init, ...pourwright } = await import(new URL('bindings/js/src/node.js', root))
await init()
const { Book, calculate, columns, convert, massOfVolume, saltForDensity, shotFill } = pourwright

console.log('\nConversions, one call')
const amounts = ['1.25 cup', '40 mL', '2.5 gal', '12.5 fl oz']
row(
  'pourwright  convert({ amount: "1.25 cup", to: "mL" })',
  perCall((call) => convert({ amount: amounts[call & 3], to: 'mL' })),
)
const math = dependency('mathjs')
const inMath = ['1.25 cup', '40 mL', '2.5 gallon', '12.5 floz']
row(
  'mathjs      unit("1.25 cup").toNumber("mL")',
  perCall((call) => math.unit(inMath[call & 3]).toNumber('mL')),
)
const Qty = dependency('js-quantities')
const inQty = ['1.25 cup', '40 ml', '2.5 gal', '12.5 floz']
row(
  'js-quantities  Qty("1.25 cup").to("ml").scalar',
  perCall((call) => Qty(inQty[call & 3]).to('ml').scalar),
)
row(
  'js-quantities  Qty.swiftConverter, unit read once',
  perCall(
    (
      (swift) => (call) =>
        swift(call)
    )(Qty.swiftConverter('cup', 'ml')),
  ),
)

console.log('\nSums, one call')
row(
  'pourwright  massOfVolume({ ... })',
  perCall((call) => massOfVolume({ volumeMl: call, densityGPerMl: 1.03 })),
)
row(
  'plain JS    volume * density',
  perCall(
    (
      (sink) => (call) =>
        (sink.it = call * sink.density)
    )({ density: 1.03 }),
    200_000,
  ),
)
const shot = { cavities: 4, cavityVolumeMl: 9.5, coldDensityGPerMl: 1.03, hotDensityGPerMl: 0.98, feed: 0.5, sprueVolumeMl: 6 } // prettier-ignore
row(
  'pourwright  shotFill({ ... })',
  perCall(() => shotFill(shot)),
)
const mix = { baseVolumeMl: 240, baseDensityGPerMl: 1.03, saltDensityGPerMl: 2.165 }
row(
  'pourwright  saltForDensity({ ... })',
  perCall(() => saltForDensity({ finishedDensityGPerMl: 1.12, ...mix })),
)
row(
  'plain JS    (ρV − M)/(1 − ρ/ρs), nothing checked',
  perCall(
    ((sink) => (call) => {
      const density = 1.12 + (call & 3) / 1000
      sink.it =
        (density * mix.baseVolumeMl - mix.baseVolumeMl * mix.baseDensityGPerMl) / (1 - density / mix.saltDensityGPerMl)
    })({}),
    200_000,
  ),
)
row(
  'pourwright  calculate({ calculate: "convert", ... })',
  perCall(() => calculate({ calculate: 'convert', amount: '1.25 cup', to: 'mL' }), 500),
)

console.log('\nColumns of 100 000 rows, a row')
const rows = 100_000
const volumeMl = Float64Array.from({ length: rows }, (_, row) => 1 + row / 1000)
row(
  'pourwright  columns.massOfVolume({ ... })',
  perCall(() => columns.massOfVolume({ volumeMl, densityGPerMl: 1.03 }), 1) / rows,
)
row(
  'plain JS    a loop over a Float64Array, nothing checked',
  perCall(() => volumeMl.map((volume) => volume * 1.03), 1) / rows,
)
row(
  'pourwright  columns.saltForDensity({ ... })',
  perCall(() => columns.saltForDensity({ finishedDensityGPerMl: 1.12, ...mix, baseVolumeMl: volumeMl }), 1) / rows,
)

console.log('\nPlans')
const [book, orders] = ['book', 'orders'].map((name) => JSON.parse(read(`core/examples/demo/${name}.json`)))
const shop = new Book(book)
const first = performance.now()
shop.plan(orders)
row('demo day, the first plan after loading', (performance.now() - first) * 1000)
row(
  `demo day, ${orders.lines.length} order lines: plan`,
  perCall(() => shop.plan(orders), 5),
)
row(
  'demo day: bench sheet',
  perCall(() => shop.sheet(orders), 5),
)
row(
  'demo day: the book read',
  perCall(() => new Book(book).free(), 5),
)

// Other colors in each hundred of lines, so that a large day is no small one with larger numbers.
const colors = Object.keys(book.formulas).filter((name) => !book.formulas[name].base)
const large = structuredClone(book)
const lines = Array.from({ length: 1000 }, (_, index) => {
  const line = structuredClone(orders.lines[index % orders.lines.length])
  line.order = String(1 + Math.floor(index / 3))
  const hundred = Math.floor(index / 100)
  for (const list of [line.formulas, ...(line.layers ?? []).map((layer) => layer.formulas)]) {
    for (const [place, name] of (list ?? []).entries()) {
      if (!colors.includes(name)) continue
      list[place] = `${name} ${hundred}`
      large.formulas[list[place]] ??= shifted(book.formulas[name], hundred)
    }
  }
  return line
})

/** The same color, a little stronger. */
function shifted(formula, by) {
  const doses = Object.entries(formula.doses).map(([material, dose]) => [
    material,
    dose.replace(/^(\d+) drops$/, (_, drops) => `${Number(drops) + by} drops`),
  ])
  return { ...formula, doses: Object.fromEntries(doses) }
}
const largeShop = new Book(large)
const pots = largeShop.plan({ ...orders, lines }).pots.length
row(
  `1000 order lines, ${pots} pots: plan`,
  perCall(() => largeShop.plan({ ...orders, lines }), 1),
)
