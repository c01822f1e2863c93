// The form for the book, as a maker uses it.
import assert from 'node:assert/strict'
import axe from 'axe-core'
import { ask, bookPart, chooseFile, go, person, picture, planOf, read } from './support.mjs'

const PHONE = { width: 390, height: 844 }
const TABLET = { width: 820, height: 1180 }
const LANDSCAPE = { width: 844, height: 390 }

const state = (page, ...path) =>
  page.evaluate(async (path) => {
    const { state, valueAt } = await import('./src/state.js')
    return valueAt(state, path) ?? null
  }, path)

/** Opens an entry of the list that is shown. */
const open = (page, name) => page.locator(`[id$="/${name}:key"]`).click()
/** The plan without the documents that it is made from. */
const dayOf = async (page) => ({ ...(await planOf(page)), made_from: null })
const key = (page, name) => page.getByRole('button', { name, exact: true })
const undo = (page) => page.getByRole('button', { name: /^Undo/ }).click()

const reload = async (page) => {
  await page.waitForFunction(async () => {
    const { state } = await import('./src/state.js')
    return JSON.stringify(JSON.parse(localStorage.getItem('pourwright')).edits) === JSON.stringify(state.edits)
  })
  await page.reload()
  await page.locator('html[data-whole]').waitFor()
}

/** Text that is smaller than 16 px, keys lower than 48 px, what is wider than the screen, and what axe finds. */
async function legible(page, where, isChecked = true) {
  const { small, low, wide } = await page.evaluate(() => {
    const seen = (one) => one.checkVisibility() && !one.closest('.out-of-sight')
    const all = [...document.querySelectorAll('main .book-parts, main .entry-list, main .start-shop, main .import')]
    const inside = all.flatMap((part) => [...part.querySelectorAll('*')]).filter(seen)
    const hasText = (one) => [...one.childNodes].some((node) => node.nodeType === 3 && node.data.trim())
    return {
      small: inside
        .filter((one) => hasText(one) && parseFloat(getComputedStyle(one).fontSize) < 16)
        .map((one) => one.outerHTML.slice(0, 90)),
      low: inside
        .filter((one) => one.matches('button, select, input, a.button, label.button'))
        .filter((one) => Math.min(one.getBoundingClientRect().height, one.getBoundingClientRect().width) < 48)
        .map((one) => `${one.getBoundingClientRect().height} ${one.outerHTML.slice(0, 90)}`),
      wide: document.documentElement.scrollWidth - innerWidth,
    }
  })
  assert.deepEqual([small, low], [[], []], where)
  assert.ok(wide <= 0, `${where} is ${wide} px too wide`)
  if (!isChecked) return
  const { violations } = await page.evaluate(`${axe.source}; axe.run({ resultTypes: ['violations'] })`)
  assert.deepEqual(
    violations.map(({ id, nodes }) => `${where}: ${id} ${nodes[0].html}`),
    [],
  )
}

person('begins a shop from nothing, to a plan', { view: 'book', viewport: PHONE }, async (page) => {
  page.on('dialog', (dialog) => dialog.accept())
  await key(page, 'Begin your own').click()
  await page.getByText('Still to fill in: the base plastisol, and its density; one mold;').waitFor()
  // Nothing is scolded for being empty; usual values are marked.
  assert.equal(await page.locator('.fault').count(), 0)
  assert.equal(await page.getByText('Starter value', { exact: true }).count(), 4)
  const thing = (number) => page.locator('.thing').nth(number - 1)
  const call = async (number, name) => {
    await thing(number).getByLabel('What you call it').fill(name)
    await page.keyboard.press('Tab')
  }
  await call(2, 'my clear')
  await thing(2).getByRole('textbox', { name: 'density', exact: true }).fill('1.03')
  await thing(2).getByText('`1.03` is a number without a unit.').waitFor()
  await thing(2).getByRole('textbox', { name: 'density', exact: true }).fill('1.03 g/mL')
  await call(3, 'grape')
  await call(4, 'worm')
  await thing(4).getByRole('textbox', { name: 'cavities', exact: true }).fill('4')
  await thing(4).getByRole('textbox', { name: 'cavity', exact: true }).fill('9 mL')
  await thing(5).getByRole('textbox', { name: 'holds', exact: true }).fill('2 cup')
  await thing(6).getByRole('textbox', { name: 'reads', exact: true }).fill('0.01 g')
  await thing(8).getByRole('textbox', { name: 'holds', exact: true }).fill('4 fl oz')
  await call(9, 'grape worm')
  await thing(9).getByLabel('grape in it', { exact: true }).fill('30')
  await thing(10).getByLabel('Pieces').fill('12')
  await page.getByText('Your first day is planned: 1 pot, 12 pieces.').waitFor()
  await picture(page, 'a shop from nothing', { fullPage: true })
  // The value that was changed is no starter value any more; undo makes it one again.
  assert.equal(await page.getByText('Starter value', { exact: true }).count(), 3)
  await thing(9).getByRole('button', { name: 'It is right: per' }).click()
  assert.equal(await page.getByText('Starter value', { exact: true }).count(), 2)
  await reload(page)
  await undo(page)
  assert.equal(await page.getByText('Starter value', { exact: true }).count(), 3)
  await legible(page, 'a shop from nothing')
  await page.getByRole('link', { name: 'To the bench' }).click()
  await page.getByRole('region', { name: 'Pot A', exact: true }).getByText('grape worm × 12').waitFor()
})

person('copies a formula, changes a dose, renames it', { view: 'book', viewport: TABLET }, async (page) => {
  await open(page, 'dusk')
  await key(page, 'Copy dusk').click()
  // The copy asks for its name; a name that is taken is refused.
  const name = page.getByLabel('Name', { exact: true })
  await name.fill('reed')
  await page.getByText('There is a formula “reed” already.').waitFor()
  await name.fill('twilight')
  await page.keyboard.press('Enter')
  const amount = page.getByLabel('Amount of plum', { exact: true })
  await amount.fill('36')
  assert.equal(await state(page, 'book', 'formulas', 'twilight', 'doses', 'plum'), '36 drops')
  assert.equal(await state(page, 'book', 'formulas', 'dusk', 'doses', 'plum'), '32 drops')
  // Each row is checked as it is written, with the library's words.
  await amount.fill('36 oz')
  await page.getByText('`36 oz` can be read as').first().waitFor()
  assert.equal(await amount.getAttribute('aria-invalid'), 'true')
  assert.equal(await amount.inputValue(), '36 oz')
  await amount.fill('1/8 tsp')
  await page.getByLabel('Material of plum').focus()
  assert.deepEqual(
    [await amount.inputValue(), await page.getByLabel('Unit: Amount of plum').inputValue()],
    ['1/8', 'tsp'],
  )
  await page.getByLabel('Unit: Amount of plum').selectOption('mL')
  await page.getByLabel('Add a material').selectOption('anise')
  await page.keyboard.type('6')
  await page.getByLabel('Material of teal-flake').selectOption('black-flake')
  assert.deepEqual(await state(page, 'book', 'formulas', 'twilight', 'doses'), {
    plum: '1/8 mL',
    'black-flake': '1/2 tsp',
    anise: '6 drops',
  })
  const { answer } = await ask(page, { calculate: 'formula', formulas: ['twilight'], base_amount: '1 cup' })
  const mass = answer.parts.find(({ material }) => material === 'anise').mass.text
  assert.equal(await page.locator('.dose').last().locator('.mass').innerText(), mass)
  await picture(page, 'a formula', { fullPage: true })
  // Renamed wherever it is used, the day stays as it was planned; also over a reload, and undone in one step.
  const before = await dayOf(page)
  await open(page, 'dusk')
  await key(page, 'Rename dusk').click()
  await page.getByLabel('Name', { exact: true }).fill('late dusk')
  await page.keyboard.press('Enter')
  const after = await dayOf(page)
  assert.equal(after.pots.length, before.pots.length)
  assert.deepEqual(await state(page, 'book', 'products', 'dusk finger', 'formulas'), ['late dusk', 'plain'])
  await reload(page)
  await undo(page)
  assert.deepEqual(await state(page, 'book', 'products', 'dusk finger', 'formulas'), ['dusk', 'plain'])
  assert.deepEqual(await dayOf(page), before)
  await page.getByRole('button', { name: /^Redo/ }).click()
  assert.deepEqual(await dayOf(page), after)
})

person('renames everything everywhere', { view: 'book' }, async (page) => {
  const orders = JSON.parse(await read('core/examples/demo/orders.json'))
  const [first, ...others] = orders.lines
  const shelf = [{ name: 'rest', mass: '30 g', formulas: ['dusk', 'plain'] }]
  shelf.push({ name: 'old', mass: '20 g', parts: { 'clear-base': '1 cup', plum: '3 drops' } })
  const { product, ...rest } = first
  const lines = [{ ...rest, mold: 'finger-5', formulas: ['dusk', 'plain'] }, ...others]
  await chooseFile(page, 'Open orders', 'orders.json', JSON.stringify({ ...orders, shelf, lines }))
  const before = await dayOf(page)
  const found = await page.evaluate(async () => {
    const [{ giveName }, { state }, { plan }] = await Promise.all(
      ['book-form', 'state', 'core'].map((name) => import(`./src/${name}.js`)),
    )
    const wrong = []
    const parts = ['materials', 'formulas', 'molds', 'products']
    let count = 0
    for (const part of parts) {
      for (const name of Object.keys(state.book[part])) {
        count += 1
        giveName(part, name, `thing ${count}`)
        // A name is a whole text of the documents, as a key or a value; two names are those of kinds, too.
        if (['softener', 'stabilizer'].includes(name)) continue
        if (`${JSON.stringify(state.book)}${JSON.stringify(state.orders)}`.includes(`"${name}"`))
          wrong.push(`${part} ${name}`)
      }
    }
    const { bookFaults, ordersFaults, plan: made } = plan(state.book, state.orders)
    return {
      wrong,
      faults: [...bookFaults, ...ordersFaults],
      count,
      pots: made?.pots.length,
      undo: state.edits.done.length,
    }
  })
  assert.deepEqual([found.wrong, found.faults], [[], []])
  assert.equal(found.pots, before.pots.length)
  assert.equal(found.undo, found.count)
  await page.evaluate(async (count) => {
    const { undoEdit } = await import('./src/edits.js')
    for (let step = 0; step < count; step += 1) undoEdit()
  }, found.count)
  assert.deepEqual(await dayOf(page), before)
})

person('refuses to delete what is used, and says where', { view: 'book', viewport: TABLET }, async (page) => {
  await bookPart(page, 'Molds')
  await open(page, 'grub-2')
  await key(page, 'Delete grub-2').click()
  const alert = page.getByRole('alert')
  await alert.getByText('grub-2 is used in 1 place, so it stays.').waitFor()
  await picture(page, 'a mold that is used')
  await alert.getByRole('link', { name: 'product ember grub' }).click()
  await page.waitForFunction(() => document.activeElement.id === 'book/products/ember grub/mold')
  await key(page, 'Delete ember grub').click()
  await alert.getByRole('link', { name: 'order 35, line 7' }).click()
  await page.waitForFunction(() => document.activeElement.id === 'orders/lines/6/product')
  await page.getByRole('button', { name: 'More of line 7' }).click()
  await page.getByRole('button', { name: 'Remove line 7' }).click()
  await go(page, 'Book')
  await key(page, 'Delete ember grub').click()
  assert.equal(await state(page, 'book', 'products', 'ember grub'), null)
  await bookPart(page, 'Molds')
  await open(page, 'grub-2')
  await key(page, 'Delete grub-2').click()
  assert.equal(await state(page, 'book', 'molds', 'grub-2'), null)
  assert.equal(await page.locator('.fault-list').count(), 0)
  await undo(page)
  assert.equal(await state(page, 'book', 'molds', 'grub-2', 'cavities'), 8)
})

person('renames a shape of a mold in the orders too', { view: 'book' }, async (page) => {
  await bookPart(page, 'Molds')
  await open(page, 'claw-set')
  await page.locator('[id="book/molds/claw-set/cavities/long:name"]').fill('tall')
  await page.keyboard.press('Tab')
  assert.deepEqual(Object.keys(await state(page, 'book', 'molds', 'claw-set', 'cavities')), ['tall', 'short'])
  assert.equal(await state(page, 'orders', 'lines', 7, 'shape'), 'tall')
  assert.equal((await planOf(page)).lines.length, 10)
  await undo(page)
  assert.equal(await state(page, 'orders', 'lines', 7, 'shape'), 'long')
})

person('fills in a new mold, a new material and a cup', { view: 'book', viewport: TABLET }, async (page) => {
  await bookPart(page, 'Molds')
  await key(page, 'New mold').click()
  await page.keyboard.type('frog')
  await page.keyboard.press('Enter')
  await page.getByRole('textbox', { name: 'cavity', exact: true }).fill('3.5 oz')
  await page.getByRole('textbox', { name: 'cavity', exact: true }).fill('3.5 mL')
  await page.getByRole('textbox', { name: 'sprue', exact: true }).fill('2 mL')
  await page.getByRole('textbox', { name: 'sprue', exact: true }).fill('')
  await page.getByLabel('Another field').selectOption('sets')
  await page.keyboard.type('4 min')
  assert.deepEqual(await state(page, 'book', 'molds', 'frog'), { cavities: 1, cavity: '3.5 mL', sets: '4 min' })
  // A field that is emptied stays under the fingers.
  await page.getByRole('textbox', { name: 'sets' }).fill('')
  await page.keyboard.type('5 min')
  assert.equal(await state(page, 'book', 'molds', 'frog', 'sets'), '5 min')
  await bookPart(page, 'Materials')
  await key(page, 'New material').click()
  await page.keyboard.type('bay salt')
  await page.keyboard.press('Enter')
  await page.getByLabel('kind').selectOption('salt')
  await page.getByLabel('like').selectOption('sodium-chloride')
  await page.getByText('Starter value 1.217 g/mL ± 0.06 of sodium-chloride').waitFor()
  await page.getByRole('textbox', { name: 'as scooped', exact: true }).fill('1.1 g/mL')
  assert.equal(await page.getByText('Starter value 1.217').count(), 0)
  await bookPart(page, 'Bench')
  await open(page, 'cups')
  await key(page, 'Copy Cup 3').click()
  await page.locator('[id="book/bench/cups/3/holds"]').fill('8 cup')
  assert.equal((await state(page, 'book', 'bench', 'cups')).length, 4)
  await key(page, 'Remove Cup 4').click()
  assert.equal((await state(page, 'book', 'bench', 'cups')).length, 3)
  assert.equal(await page.locator('.fault-list').count(), 0)
})

person('goes from a fault to its field', { view: 'book' }, async (page) => {
  const book = await read('core/examples/demo/book.json')
  const broken = book
    .replace('"32 drops"', '"32"')
    .replace('"4 fl oz"', '"4 oz"')
    .replace('"confidence": "90 %"', '"confidence": "lots"')
  await chooseFile(page, 'Open a book', 'book.json', broken)
  for (const [link, id] of [
    ['formulas › dusk › doses › plum', 'book/formulas/dusk/doses/plum'],
    ['bench › injector › holds', 'book/bench/injector/holds'],
    ['limits › confidence', 'book/limits/confidence'],
  ]) {
    await page.getByRole('link', { name: link }).click()
    await page.waitForFunction((id) => document.activeElement.id === id, id)
    assert.equal(await page.locator(`[id="${id}"]`).getAttribute('aria-invalid'), 'true')
  }
})

const CSV =
  '\uFEFFFormula;Material;Amount;Unit;Per\r\n' +
  'ruby;plum;"1,5";g;1 cup\r\n' +
  ';"rust";4;drops;\r\n' +
  '\r\n' +
  'olive;moss;20;drops;1 cup\r\n' +
  'olive;mos;2;drops;\r\n'

const take = async (page, label, name, text) => {
  await page.getByLabel(label).setInputFiles({ name, mimeType: 'text/csv', buffer: Buffer.from(text) })
  await page.locator('main[aria-busy="false"]').waitFor()
}

person('takes formulas from a file with semicolons', { view: 'book', viewport: TABLET }, async (page) => {
  const before = await state(page, 'book')
  await take(page, 'Formulas from CSV', 'colors.csv', CSV)
  // What the columns are is guessed, each fault has its row, and nothing is taken yet.
  assert.equal(await page.getByLabel('Between cells').inputValue(), ';')
  assert.equal(await page.getByLabel('Decimal').inputValue(), 'comma')
  await page.getByText('Row 6. There is no material "mos".').waitFor()
  assert.ok(await key(page, 'Take these').isDisabled())
  assert.deepEqual(await state(page, 'book'), before)
  await legible(page, 'import')
  await picture(page, 'an import', { fullPage: true })
  await key(page, 'Leave out what has faults').click()
  await key(page, 'Take these').click()
  assert.deepEqual(await state(page, 'book', 'formulas', 'ruby'), {
    doses: { plum: '1.5 g', rust: '4 drops' },
    per: '1 cup',
  })
  assert.equal(await state(page, 'book', 'formulas', 'olive'), null)
  // A column may be a material; a point among decimal commas is no guess.
  await take(page, 'Formulas from CSV', 'wide.csv', 'Name,plum,moss,Per\nmauve,"1,5 g",,1 cup\nsage,,1.234 g,1 cup\n')
  assert.equal(await page.getByLabel('Column moss is').inputValue(), 'dose moss')
  await page.getByLabel('Decimal').selectOption('comma')
  await page.getByText('Row 3. “1.234 g” has a point').waitFor()
  await page.getByLabel('Decimal').selectOption('point')
  await page.getByText('Row 2. `1,5 g` can be read as').waitFor()
  await key(page, 'Take nothing').click()
  await undo(page)
  assert.deepEqual(await state(page, 'book'), before)
})

person('takes orders from a file', { view: 'book', viewport: PHONE }, async (page) => {
  const orders = await state(page, 'orders')
  const text =
    'Order,Item,Qty,Due\n50,dusk finger,12,3/9/2027\n51,reed padle,6,3/10/2027\n52,ember grub,many,3/9/2027\n'
  await take(page, 'Orders from CSV', 'orders.csv', text)
  await page.getByText('Row 3. There is no product "reed padle".').waitFor()
  await page.getByText('Row 4. Found the text "many".').waitFor()
  // A day is read as it is said to be written.
  await page
    .getByText(/^Row 2\./)
    .first()
    .waitFor()
  await page.getByLabel('Days are written').selectOption('month')
  await page.getByText(/^Row 2\./).waitFor({ state: 'detached' })
  await legible(page, 'import of orders')
  await picture(page, 'an import of orders', { fullPage: true })
  await key(page, 'Take nothing').click()
  assert.deepEqual(await state(page, 'orders'), orders)
  await take(page, 'Orders from CSV', 'orders.csv', text.replace('padle', 'paddle').replace('many', '16'))
  await page.getByLabel('Days are written').selectOption('month')
  await key(page, 'Take these').click()
  await page.getByText('Taken from orders.csv: 3 order lines.').waitFor()
  const { lines } = await state(page, 'orders')
  assert.deepEqual(lines.slice(orders.lines.length), [
    { order: '50', product: 'dusk finger', pieces: 12, promised: '2027-03-09' },
    { order: '51', product: 'reed paddle', pieces: 6, promised: '2027-03-10' },
    { order: '52', product: 'ember grub', pieces: 16, promised: '2027-03-09' },
  ])
  assert.equal((await planOf(page)).lines.length, lines.length)
  await undo(page)
  assert.deepEqual(await state(page, 'orders'), orders)
})

for (const [name, viewport, colorScheme] of [
  ['phone', PHONE, 'dark'],
  ['tablet', TABLET, 'light'],
  ['landscape', LANDSCAPE, 'light'],
]) {
  person(`is legible on a ${name}, ${colorScheme}`, { view: 'book', viewport, colorScheme }, async (page) => {
    for (const [part, of] of [
      ['Formulas', 'firm'],
      ['Materials', 'plum'],
      ['Molds', 'claw-set'],
      ['Products', 'shell over reed minnow'],
      ['Bench', 'oven'],
    ]) {
      await bookPart(page, part)
      await open(page, of)
      // The checker sees the same in each size.
      await legible(page, `${part} on a ${name}`, name === 'phone')
      await picture(page, `book ${part} ${name}`, { fullPage: true })
    }
  })
}

person('works by the keyboard', { view: 'book' }, async (page) => {
  await page.locator('[id="book/formulas/dusk:key"]').focus()
  await page.keyboard.press('Enter')
  await page.keyboard.press('Tab')
  await page.keyboard.press('Tab')
  await page.keyboard.press('Enter')
  await page.keyboard.type('gloam')
  await page.keyboard.press('Enter')
  assert.equal(await page.evaluate(() => document.activeElement.id), 'book/formulas/gloam:key')
  await page.keyboard.press('Control+z')
  assert.equal(await state(page, 'book', 'formulas', 'gloam'), null)
  assert.equal(await state(page, 'book', 'formulas', 'dusk', 'per'), '1 cup')
})
