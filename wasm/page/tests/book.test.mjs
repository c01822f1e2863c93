// The book: files, faults next to their fields, cups.
import assert from 'node:assert/strict'
import { readFile } from 'node:fs/promises'
import { BOUNCE, bookPart, chooseFile, go, line, person, picture, pot, read } from './support.mjs'

person('that is broken shows each fault next to its field', { view: 'book' }, async (page) => {
  await bookPart(page, 'Advanced')
  for (const name of [
    'amounts',
    'limits',
    'missing',
    'names',
    'numbers',
    'properties',
    'recipes',
    'shares',
    'spelling',
  ]) {
    await chooseFile(page, 'Open a book', `${name}.json`, await read(`tests/documents/broken/${name}.json`))
    const faults = JSON.parse(await read(`tests/documents/broken/${name}.faults.json`))
    await page.getByRole('alert', { name: new RegExp(`^${faults.length} faults? in the book`) }).waitFor()
    for (const [path] of faults) {
      const near = await page.evaluate((path) => {
        for (let at = path; ; at = at.slice(0, at.lastIndexOf('/'))) {
          const fault = document.getElementById(`book${at}:fault`)
          if (fault) return fault.checkVisibility() ? at : 'not seen'
          if (!at) return null
        }
      }, path)
      assert.ok(near !== null && near !== 'not seen' && path.startsWith(near), `${name} ${path}: ${near}`)
    }
  }
  await picture(page, 'a broken book', { fullPage: true })
})

person('is fixed in its fields', { view: 'book' }, async (page) => {
  await bookPart(page, 'Advanced')
  await chooseFile(
    page,
    'Open a book',
    'book.json',
    (await read('core/examples/demo/book.json')).replace('"4 fl oz"', '"4 oz"'),
  )
  const holds = page.locator('[id="book/bench/injector/holds"]')
  assert.equal(await holds.getAttribute('aria-invalid'), 'true')
  await holds.fill('4 fl oz')
  assert.equal(await page.getByRole('alert').count(), 0)
  assert.equal(await page.evaluate(() => document.activeElement.id), 'book/bench/injector/holds')
})

person('has a field that was removed back in its place', { view: 'book' }, async (page) => {
  await bookPart(page, 'Advanced')
  const fields = () => page.locator('.tree > .leaf > label, .tree > details > summary').allInnerTexts()
  const before = await fields()
  await page.getByRole('button', { name: 'Remove altitude' }).click()
  assert.equal((await fields()).length, before.length - 1)
  await page.getByText('Removed: altitude.').waitFor()
  await page.getByRole('button', { name: /^Undo/ }).click()
  assert.deepEqual(await fields(), before)
  // Other documents have changes of their own.
  await page.getByRole('button', { name: /^Redo/ }).click()
  await chooseFile(page, 'Open a book', 'book.json', await read('core/examples/demo/book.json'))
  assert.equal(await page.getByRole('button', { name: /^(Undo|Redo)/ }).count(), 0)
  await page.getByRole('button', { name: 'Back to the documents before' }).click()
  await page.getByRole('button', { name: /^Undo/ }).click()
  assert.deepEqual(await fields(), before)
})

person('that is not JSON is fixed as text', { view: 'book' }, async (page) => {
  const whole = await read('core/examples/demo/book.json')
  await chooseFile(page, 'Open a book', 'book.json', whole.slice(0, -3))
  const text = page.getByLabel('Its text')
  assert.equal(await text.getAttribute('aria-invalid'), 'true')
  await text.fill(whole)
  await page.getByRole('button', { name: 'Read it again' }).click()
  await page.getByRole('navigation', { name: 'Parts of the book' }).waitFor()
  // A duplicate key is a fault of the text.
  await chooseFile(page, 'Open a book', 'book.json', whole.replace('"altitude"', '"measures": "metric", "altitude"'))
  await page.getByText(/twice/).first().waitFor()
})

person('with another cup on the shelf changes the day', { view: 'book' }, async (page) => {
  await bookPart(page, 'Bench')
  // A second tap does not take another cup away.
  await page.getByRole('switch', { name: '4 cup' }).dblclick()
  assert.equal(await page.locator('.cups').getByRole('switch', { checked: false }).count(), 1)
  await page.waitForTimeout(BOUNCE)
  await go(page, 'Bench')
  assert.doesNotMatch(await page.getByRole('main').innerText(), /in the 4-cup cup/)
  await go(page, 'Book')
  await page.getByRole('switch', { name: '4 cup' }).click()
  await go(page, 'Bench')
  await pot(page, 'A').getByText('in the 4-cup cup').first().waitFor()
})

person('and the orders are saved as files and opened again', { view: 'orders' }, async (page) => {
  await line(page, 1).getByLabel('Pieces', { exact: true }).getByRole('textbox').fill('25')
  await go(page, 'Book')
  const saved = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Save the orders' }).click()
  const text = await readFile(await (await saved).path(), 'utf8')
  assert.equal(JSON.parse(text).lines[0].pieces, 25)
  await page.getByRole('button', { name: 'Demo book and orders' }).click()
  await chooseFile(page, 'Open orders', 'orders.json', text)
  await go(page, 'Orders')
  assert.equal(await line(page, 1).getByLabel('Pieces', { exact: true }).getByRole('textbox').inputValue(), '25')
  await go(page, 'Book')
  await chooseFile(page, 'Open orders', 'list.txt', 'no list')
  await page.getByText('is not an order list').waitFor()
})

person('is replaced only by a book, and can be restored', { view: 'book' }, async (page) => {
  await bookPart(page, 'Advanced')
  const book = await read('core/examples/demo/book.json')
  const orders = await read('core/examples/demo/orders.json')
  const shop = page.locator('[id="book/shop"]')
  const back = page.getByRole('button', { name: 'Back to the documents before' })
  await shop.fill('A shop of mine')
  await chooseFile(page, 'Open a book', 'orders.json', orders)
  await page.getByText('“orders.json” is an order list, not a book').waitFor()
  assert.equal(await shop.inputValue(), 'A shop of mine')
  await chooseFile(page, 'Open orders', 'book.json', book)
  await page.getByText('“book.json” is a book. Open it').waitFor()
  assert.equal(await back.count(), 0)
  // Ticks are not removed without asking, and come back with the book.
  await go(page, 'Bench')
  await page.getByRole('checkbox').first().click()
  await go(page, 'Book')
  const asked = []
  page.on('dialog', (dialog) => {
    asked.push(dialog.message())
    return asked.length === 1 ? dialog.dismiss() : dialog.accept()
  })
  await chooseFile(page, 'Open a book', 'book.json', book)
  assert.equal(await shop.inputValue(), 'A shop of mine')
  await chooseFile(page, 'Open a book', 'book.json', book)
  assert.equal(asked.length, 2)
  assert.match(asked[0], /ticks and clocks/)
  assert.notEqual(await shop.inputValue(), 'A shop of mine')
  await back.click()
  assert.equal(await shop.inputValue(), 'A shop of mine')
  await go(page, 'Bench')
  assert.equal(await page.getByRole('checkbox').first().getAttribute('aria-checked'), 'true')
})

person('that cannot be read does not displace the one before', { view: 'book' }, async (page) => {
  await bookPart(page, 'Advanced')
  const broken = await read('tests/documents/broken/amounts.json')
  await page.locator('[id="book/shop"]').fill('A shop of mine')
  await chooseFile(page, 'Open a book', 'broken.json', broken)
  await chooseFile(page, 'Open a book', 'broken too.json', broken)
  await page.getByRole('button', { name: 'Back to the documents before' }).click()
  assert.equal(await page.locator('[id="book/shop"]').inputValue(), 'A shop of mine')
})
