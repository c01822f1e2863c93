// The installed package in Node: documents and errors.
import assert from 'node:assert/strict'
import { spawnSync } from 'node:child_process'
import { createRequire } from 'node:module'
import { describe, test } from 'node:test'

import init, { Book, Plan, calculate, convert } from 'pourwright'
import { book, orders, read, refused } from './support.mjs'

test('before it is loaded every call throws not-ready', async () => {
  assert.equal(refused(() => calculate('{}')).code, 'not-ready')
  assert.equal(refused(() => new Book(book)).code, 'not-ready')
  assert.equal(refused(() => Plan.from('{}')).code, 'not-ready')
  await init()
})

test('the JSON Schemas are in the package', () => {
  const require = createRequire(import.meta.url)
  for (const name of ['request', 'answer', 'book', 'orders', 'actuals', 'plan'])
    assert.deepEqual(require(`pourwright/schema/${name}.json`), JSON.parse(read(`core/schema/${name}.json`)), name)
})

describe('documents', () => {
  const request = { calculate: 'plan', book, orders }

  test('a book that is read once plans as the request does', () => {
    const { calculate: named, ...plan } = calculate(request)
    assert.equal(named, 'plan')
    const shop = new Book(book)
    assert.deepEqual(shop.plan(orders), plan)
    assert.deepEqual(new Book(JSON.stringify(book)).plan(JSON.stringify(orders)), plan)
    const sheet = shop.sheet(orders)
    assert.match(sheet, /ORDER OF WORK/)
    assert.ok(sheet.split('\n').every((line) => [...line].length <= 80))
  })

  test('all faults are thrown at once, each with its place', () => {
    const broken = structuredClone(book)
    broken.molds = { ...broken.molds, odd: { cavities: 0, cavity: '1,25 cup' } }
    broken.unheard_of = 1
    const error = refused(() => new Book(broken))
    const paths = error.faults.map((fault) => fault.path)
    for (const path of ['/molds/odd/cavities', '/molds/odd/cavity', '/unheard_of'])
      assert.ok(paths.includes(path), path)
    for (const fault of error.faults) assert.deepEqual(Object.keys(fault).sort(), ['code', 'help', 'message', 'path'])
    const inRequest = refused(() => calculate({ ...request, book: broken })).faults.map((fault) => fault.path)
    assert.deepEqual(
      inRequest,
      paths.map((path) => `/book${path}`),
    )
  })

  test('faults of the orders have paths into the orders', () => {
    const shop = new Book(book)
    const error = refused(() => shop.plan({ ...orders, lines: [{ order: '1', mold: 'none', pieces: 4 }] }))
    assert.match(error.path, /^\/lines\/0/)
  })

  test('duplicate keys are found in a text', () => {
    const error = refused(() => calculate('{"calculate": "convert", "to": "mL", "to": "L", "amount": "1 cup"}'))
    assert.deepEqual([error.code, error.path], ['duplicate-key', '/to'])
  })

  test('what JSON would drop or change is refused in an object', () => {
    const cycle = {}
    cycle.self = cycle
    for (const [value, path] of [
      [NaN, '/ext/a~1b/0'],
      [Infinity, '/ext/a~1b/0'],
      [1n, '/ext/a~1b/0'],
      [() => 1, '/ext/a~1b/0'],
      [Symbol('x'), '/ext/a~1b/0'],
      [cycle, ''],
    ]) {
      const error = refused(() => calculate({ calculate: 'convert', ext: { 'a/b': [value] } }))
      assert.deepEqual([error.code, error.path], ['not-json', path])
    }
    for (const value of [undefined, null, 5, []]) refused(() => calculate(value))
  })

  test('a book is freed once, and refuses calls afterwards', () => {
    const shop = new Book(book)
    shop.free()
    shop.free()
    assert.equal(refused(() => shop.plan(orders)).code, 'book-freed')
    for (const call of ['open', 'sheet', 'notes', 'request']) {
      assert.equal(refused(() => shop[call](orders)).code, 'book-freed')
    }
    if (Symbol.dispose) {
      const disposed = new Book(book)
      disposed[Symbol.dispose]()
      assert.equal(refused(() => disposed.plan(orders)).code, 'book-freed')
    }
  })
})

describe('what is open', () => {
  const record = { calculate: 'record', actuals: { format: 'pourwright/1.0', pots: {} } }
  const formula = { calculate: 'formula', formulas: ['dusk', 'plain'], base_amount: '1 cup' }

  test('a book answers requests that leave it out', () => {
    const shop = new Book(book)
    assert.deepEqual(shop.request(formula), calculate({ ...formula, book }))
    assert.deepEqual(shop.request(JSON.stringify(formula)), shop.request(formula))
    assert.equal(shop.request({ calculate: 'convert', amount: '1 cup', to: 'mL' }).value, 236.5882365)
    const twice = refused(() => shop.request({ ...formula, book }))
    assert.deepEqual([twice.code, twice.path], ['open-and-given', '/book'])
    assert.equal(refused(() => shop.request(record)).code, 'missing-field')
    assert.equal(refused(() => shop.request({ ...formula, base_amount: NaN })).code, 'not-json')
  })

  test('a plan has a budget', () => {
    const shop = new Book(book)
    assert.deepEqual(shop.plan(orders, { pots: 5, thousand_steps: 1 }), shop.plan(orders))
    for (const call of ['open', 'plan', 'sheet', 'notes']) {
      assert.equal(refused(() => shop[call](orders, { pots: 4 })).code, 'budget-pots')
      assert.equal(refused(() => shop[call](orders, { thousand_steps: 0 })).code, 'budget-work')
    }
    for (const [budget, code, path] of [
      [{ pots: -1 }, 'out-of-range', '/pots'],
      [{ pots: '5' }, 'wrong-type', '/pots'],
      [{ pots: NaN }, 'not-json', '/pots'],
      [{ thousandSteps: 1 }, 'unknown-field', '/thousandSteps'],
      [null, 'wrong-type', ''],
    ]) {
      const error = refused(() => shop.plan(orders, budget))
      assert.deepEqual([error.code, error.path], [code, path])
    }
  })

  test('a plan is stopped', () => {
    const shop = new Book(book)
    const long = structuredClone(orders)
    long.lines[0].pieces = 100_000
    let asked = 0
    for (const call of ['open', 'plan', 'sheet', 'notes']) {
      asked = 0
      const error = refused(() => shop[call](long, { pots: 20_000 }, () => ++asked === 3))
      assert.deepEqual([error.code, asked], ['plan-stopped', 3])
    }
    // What it throws comes out, and the next plan is not asked about.
    const own = new RangeError('late')
    const failing = () => {
      throw own
    }
    assert.throws(
      () => shop.plan(long, {}, failing),
      (error) => error === own,
    )
    assert.deepEqual(shop.plan(orders), shop.plan(orders, {}, failing))
    // It may use the module, and plan.
    const nested = () => ++asked > 5 || shop.sheet(orders, {}, failing) === ''
    asked = 0
    assert.equal(refused(() => shop.plan(long, {}, nested)).code, 'plan-stopped')
    assert.equal(asked, 6)
    assert.equal(refused(() => shop.plan(orders, {}, 5)).path, '/stop')
  })

  test('a plan answers with its book, also when that was freed', () => {
    const shop = new Book(book)
    const plan = shop.open(orders)
    const wanted = calculate({ ...record, book, plan: shop.plan(orders) })
    shop.free()
    assert.deepEqual(plan.request(record), wanted)
    assert.deepEqual(plan.request(formula), calculate({ ...formula, book }))
    const twice = refused(() => plan.request({ ...record, plan: plan.document() }))
    assert.deepEqual([twice.code, twice.path], ['open-and-given', '/plan'])
  })

  test('a plan that was stored is opened again', () => {
    const shop = new Book(book)
    const plan = shop.open(orders)
    assert.deepEqual(plan.document(), shop.plan(orders))
    assert.deepEqual([plan.sheet(), plan.notes()], [shop.sheet(orders), shop.notes(orders)])
    const asked = shop.request({ calculate: 'plan', orders })
    for (const stored of [JSON.stringify(plan.document()), plan.document(), asked]) {
      const again = Plan.from(stored)
      assert.deepEqual(again.document(), plan.document())
      assert.deepEqual([again.sheet(), again.notes()], [plan.sheet(), plan.notes()])
      assert.deepEqual(again.request(record), plan.request(record))
      again.free()
    }
    const alone = { ...plan.document(), made_from: null }
    assert.equal(refused(() => Plan.from(alone)).code, 'plan-without-book')
    assert.equal(refused(() => Plan.from('{')).code, 'not-json')
  })

  test('a plan is freed once, and refuses calls afterwards', () => {
    const plan = new Book(book).open(orders)
    plan.free()
    plan.free()
    for (const call of ['document', 'sheet', 'notes']) assert.equal(refused(() => plan[call]()).code, 'plan-freed')
    assert.equal(refused(() => plan.request(record)).code, 'plan-freed')
    if (Symbol.dispose) {
      const disposed = new Book(book).open(orders)
      disposed[Symbol.dispose]()
      assert.equal(refused(() => disposed.sheet()).code, 'plan-freed')
    }
  })
})

test('an uncaught error shows what was refused and where, in lines that can be read', () => {
  const script = "import init, { convert } from 'pourwright'\nawait init()\nconvert({ amount: '6 oz', to: 'g' })\n"
  const { stderr } = spawnSync(process.execPath, ['--input-type=module', '--eval', script], { encoding: 'utf8' })
  const lines = stderr.split('\n')
  assert.ok(
    lines.slice(0, 6).some((line) => line.startsWith('PourwrightError: `6 oz` can be read as')),
    stderr,
  )
  assert.ok(
    lines.every((line) => line.length <= 200),
    stderr,
  )
  assert.match(stderr, /\[eval1\]:3:1/)
})

test('the examples of the README', () => {
  const [first] = read('bindings/js/README.md').match(/(?<=to: 'mL' }\)\.value \/\/ )\S+/)
  assert.equal(convert({ amount: '1 1/4 cup', to: 'mL' }).value, Number(first))
  const error = refused(() => convert({ amount: '6 oz', to: 'g' }))
  for (const text of [error.code, error.path, error.message, error.help]) {
    assert.ok(read('bindings/js/README.md').includes(`// '${text}'`), text)
  }
})
