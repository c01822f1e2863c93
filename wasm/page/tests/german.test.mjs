// The page in another language: German, on the demo day. Its words, numbers and dates; what is typed; the choice of the language.
import assert from 'node:assert/strict'
import axe from 'axe-core'
import { LANGUAGES } from '../src/words.js'
import { BOUNCE, chooseFile, person, picture } from './support.mjs'

const [english, german] = await Promise.all([LANGUAGES.en.load(), LANGUAGES.de.load()])

/** The fixed parts of messages, each with some words. */
const piecesOf = (messages) =>
  Object.values(messages)
    .flatMap((part) => Object.values(part))
    .flatMap((message) => (typeof message === 'string' ? [message] : Object.values(message)))
    .flatMap((form) => form.split(/\{\w+\}/))
    .map((piece) => piece.replaceAll(/^[\s:;,.…]+|[\s:;,.…]+$/g, ''))
    .filter((piece) => (piece.match(/\p{L}/gu) ?? []).length > 3)

/** The names that a new book gives are data, and may be so in another book. */
const NAMES = ['base', 'color', 'formula', 'mold'].map((thing) => english.start[thing])

/** What is only in English messages: a text that has it was not translated. */
const ENGLISH = [...new Set(piecesOf(english))].filter(
  (piece) => !NAMES.includes(piece) && !piecesOf(german).some((own) => own.toLowerCase().includes(piece.toLowerCase())),
)

const isEnglish = (text) => ENGLISH.find((piece) => text === piece || (piece.includes(' ') && text.includes(piece)))

/** The attributes that a person sees or hears. Their language is that of the element: no part of them can be marked as another. */
const READ = ['aria-label', 'aria-description', 'aria-roledescription', 'aria-valuetext', 'placeholder', 'title', 'alt']

/** The texts that a person sees or hears, but for those marked as another language; `all` with these. */
const textsOf = (page, all = false) =>
  page.evaluate(
    ([all, read]) => {
      const texts = []
      const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT | NodeFilter.SHOW_ELEMENT)
      for (let node = walk.currentNode; node; node = walk.nextNode()) {
        const element = node.nodeType === Node.TEXT_NODE ? node.parentElement : node
        if (element.closest('pre, script, style') || (!all && element.closest('[lang]').lang !== 'de')) continue
        texts.push(...(node === element ? read.map((name) => element.getAttribute(name)) : [node.data]))
      }
      return texts.map((text) => (text ?? '').trim().replaceAll(/\s+/g, ' ')).filter(Boolean)
    },
    [all, READ],
  )

/** What the library says of the day in words: the texts of the plan that are not data of the shop; none without a plan. */
const ofLibrary = (page) =>
  page.evaluate(async () => {
    const { shownPlan } = await import('./src/shown.js')
    const { made_from: from, ...plan } = shownPlan().plan ?? { made_from: null }
    if (!from) return []
    const { materials, formulas, molds } = from.book
    const names = [materials, formulas, molds].flatMap(Object.keys).sort((one, other) => other.length - one.length)
    const textsIn = (value) =>
      typeof value === 'string' ? [value] : Object.values(value ?? {}).flatMap((below) => textsIn(below))
    const data = JSON.stringify(from)
    const isWords = (text) =>
      !data.includes(text) &&
      /[a-z]{2,}[^a-z]+[a-z]{2,}/i.test(names.reduce((rest, name) => rest.replaceAll(name, ''), text))
    return [...new Set(textsIn(plan))].filter(isWords).map((text) => text.replaceAll(/(?<=\d)\.(?=\d)/g, ','))
  })

/** What is English and not marked so: messages that were not translated, and what the library says. */
async function unmarked(page) {
  const said = await ofLibrary(page)
  return (await textsOf(page)).filter((text) => isEnglish(text) || said.some((one) => text.includes(one)))
}

/** Goes to a view of a page in any language. */
async function goTo(page, view) {
  const key = page.locator(`nav.views a[href="#${view}"]`)
  if (!(await key.isVisible())) await page.locator('nav.views button').click()
  await key.click()
  await page.locator(`nav.views a[href="#${view}"][aria-current="page"]`).waitFor({ state: 'attached' })
}

/** Goes to each view, and in the book to each part; what is closed is opened. */
async function everywhere(page, look) {
  for (const view of ['orders', 'bench', 'day', 'one', 'salt', 'color', 'book']) {
    await goTo(page, view)
    const parts = view === 'book' ? await page.locator('.book-parts button').count() : 1
    for (let at = 0; at < parts; at += 1) {
      if (view === 'book') await page.locator('.book-parts button').nth(at).click()
      const entry = page.locator('.entries > li h3 button').first()
      if (await entry.count()) await entry.click()
      await look(view, `${view}${view === 'book' ? ` ${at + 1}` : ''}`)
    }
  }
}

person('speaks German, on a phone', { locale: 'de-DE', viewport: { width: 390, height: 844 } }, async (page) => {
  assert.equal(await page.evaluate(() => document.documentElement.lang), 'de')
  assert.ok((await ofLibrary(page)).length > 100)
  // What is kept at the end of a pot is its step's sentence, and not said again below it.
  const isTwice = await page.evaluate(async () =>
    (await import('./src/shown.js'))
      .shownSteps()
      .filter(({ kind }) => kind === 'store')
      .map(({ of, items: [item] }) => item.say !== of.text),
  )
  assert.deepEqual([...new Set(isTwice)], [false])
  await everywhere(page, async (view, place) => {
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)
    assert.ok(wide <= 0, `${place} is ${wide} px too wide`)
    const { violations } = await page.evaluate(`${axe.source}; axe.run({ resultTypes: ['violations'] })`)
    assert.deepEqual(
      violations.map(({ id, nodes }) => `${place}: ${id} ${nodes[0].html}`),
      [],
    )
    await picture(page, `german ${place} phone`)
    assert.deepEqual(await unmarked(page), [], place)
    // A point between digits groups thousands, or is in what the document has.
    const points = (await textsOf(page, true)).filter((text) => /\d\.\d/.test(text) && !/\d\.\d{3}(?!\d)/.test(text))
    if (place !== 'book 6') assert.deepEqual(points, [], place)
  })
})

person(
  'works at one step in German, and puts a pot right',
  { locale: 'de-DE', viewport: { width: 390, height: 844 }, step: true },
  async (page) => {
    const isGerman = async (place) => assert.deepEqual(await unmarked(page), [], place)
    const done = page.locator('.foot .done-next')
    for (let at = 0; at < 2; at += 1) {
      await isGerman(`material ${at}`)
      await done.click()
      await page.waitForTimeout(BOUNCE)
    }
    await page.getByRole('button', { name: 'Andere Menge' }).click()
    for (const digit of '90') await page.locator(`.pad [data-key="${digit}"]`).click()
    await isGerman('pad')
    await picture(page, 'german pad phone')
    await page.getByRole('button', { name: 'So machen: Genau richtig' }).click()
    await page.locator('.single h3', { hasText: 'Richten' }).waitFor()
    // What comes next is said, with the library's words as English.
    await page.locator('#said', { hasText: 'Weiter, Topf A' }).waitFor({ state: 'attached' })
    for (let at = 0; at < 20 && !(await page.locator('.foot .reading input').isVisible()); at += 1) {
      await isGerman(await page.locator('.single h3').textContent())
      await done.click()
      await page.waitForTimeout(BOUNCE)
    }
    await isGerman('degassing or heat')
    assert.ok(await page.locator('#said span[lang="en"]').count())
  },
)

person('takes amounts with a comma for one pot', { locale: 'de-DE', view: 'one' }, async (page) => {
  const base = page.getByRole('textbox', { name: 'Grundmasse' })
  await base.fill('2,5 cup')
  const poured = page.getByLabel(/^Was von plum hineinkam/)
  await poured.fill('4,5 g')
  await page.locator('.correction .ways li').first().waitFor()
  const { one } = await page.evaluate(async () => (await import('./src/state.js')).state)
  assert.deepEqual([one.base, one.poured.plum], ['2.5 cup', '4.5 g'])
  assert.deepEqual([await base.inputValue(), await poured.inputValue()], ['2,5 cup', '4,5 g'])
  assert.deepEqual(await unmarked(page), [])
})

person('begins a shop and takes a file in German', { locale: 'de-DE', view: 'book' }, async (page) => {
  await page.getByRole('button', { name: 'Eigenes Buch beginnen' }).click()
  await page.getByRole('heading', { name: 'Werkstatt von null an' }).waitFor()
  assert.deepEqual(await unmarked(page), [])
  const fill = (name, text) => page.getByLabel(name, { exact: true }).fill(text)
  const thing = (title) => page.locator('.thing', { hasText: title })
  // What is typed with a comma is stored as the library reads it, and shown with a comma.
  await thing('Das Plastisol').getByLabel('density', { exact: true }).fill('1,03 g/mL')
  await thing('Eine Gießform').getByLabel('cavity', { exact: true }).fill('9,5 mL')
  await thing('Eine Gießform').getByLabel('cavities', { exact: true }).fill('4')
  await thing('Die Becher').getByLabel('holds', { exact: true }).fill('2 cup')
  await thing('Der Injektor').getByLabel('holds', { exact: true }).fill('4 fl oz')
  await fill('Farbe 1 darin', '1,5')
  await page.getByLabel('Einheit: Farbe 1 darin').selectOption('g')
  await fill('Stück', '12')
  await page.locator('.ready', { hasText: 'Ihr erster Tag ist geplant: 1 Topf, 12 Stück.' }).waitFor()
  const { materials, molds, formulas } = await page.evaluate(async () => (await import('./src/state.js')).state.book)
  assert.equal(materials.Plastisol.density, '1.03 g/mL')
  assert.equal(molds['Gießform 1'].cavity, '9.5 mL')
  assert.equal(formulas['Rezeptur 1'].doses['Farbe 1'], '1.5 g')
  assert.equal(await page.getByLabel('Farbe 1 darin', { exact: true }).inputValue(), '1,5')
  assert.equal(await thing('Das Plastisol').getByLabel('density', { exact: true }).inputValue(), '1,03 g/mL')
  await page.getByRole('button', { name: 'Zu den Listen des Buchs' }).click()
  await chooseFile(page, 'Rezepturen aus CSV', 'rezepte.csv', 'Rezeptur;Farbe 1;je\nRegen;2,5 g;1 cup\n;3 g;\n')
  await page.getByRole('heading', { name: 'Rezepturen aus rezepte.csv' }).waitFor()
  assert.deepEqual(await unmarked(page), [])
})

person('says what more pieces mean with the words of the library marked', { locale: 'de-DE' }, async (page) => {
  await page.getByRole('checkbox').first().click()
  await goTo(page, 'orders')
  await page.getByRole('textbox', { name: 'Stück' }).first().fill('30')
  await goTo(page, 'day')
  await page.locator('.day-parts button', { hasText: 'Mehr' }).click()
  await page.getByRole('button', { name: 'Eins mehr: 31, dusk finger', exact: true }).click()
  const means = page.locator('.means')
  const english = means.locator('li [lang="en"]')
  await english.first().waitFor()
  assert.match(await means.innerText(), /Topf A: 1 Ladung finger-5 mehr; clear-base: \d+,\d g more/)
  assert.ok((await english.allInnerTexts()).some((text) => /^clear-base: \d+,\d g more$/.test(text)))
  assert.deepEqual(await unmarked(page), [])
})

person('says a change in the language of now, not in that of then', { view: 'orders' }, async (page) => {
  const said = page.locator('.edits .say')
  await page.getByRole('textbox', { name: 'Pieces' }).first().fill('25')
  assert.equal(await said.innerText(), 'Changed: lines › no. 1 › pieces.')
  await page.evaluate(async () => {
    const { change, state } = await import('./src/state.js')
    const burst = { key: 'clock.burst', values: { pot: 'B', number: 1, of: 4 } }
    change({ timers: [{ id: 'x', label: burst, seconds: null, started: Date.now() }], language: 'de' })
    return state
  })
  await said.getByText('Geändert: lines › Nr. 1 › pieces.').waitFor()
  await page.getByRole('timer', { name: 'Topf B, Heizstoß 1 von 4' }).waitFor()
  await page.getByRole('button', { name: 'Zeile dazu' }).click()
  assert.match(await said.innerText(), /^Zeile 11 dazu/)
  await page.evaluate(async () => (await import('./src/state.js')).change({ language: 'en' }))
  await said.getByText('Line 11 added.').waitFor()
  // What an earlier version has stored as text stays as it is.
  await page.evaluate(async () => {
    const { change, state } = await import('./src/state.js')
    const done = [...state.edits.done, { ...state.edits.done.at(-1), words: 'A line, as said before.' }]
    change({ edits: { done, undone: [] } })
  })
  assert.equal(await said.innerText(), 'A line, as said before.')
})

person('says in German that it starts, and why it cannot', { locale: 'de-DE' }, async (page, context) => {
  const other = await context.newPage()
  let refuse
  const refused = new Promise((done) => {
    refuse = done
  })
  await other.route(/\.wasm$/, async (route) => {
    await refused
    await route.fulfill({ status: 500 })
  })
  await other.goto(page.url(), { waitUntil: 'commit' })
  await other.getByText('Startet …').waitFor()
  assert.equal(await other.evaluate(() => document.documentElement.lang), 'de')
  refuse()
  await other.getByText('Die Seite konnte nicht starten').waitFor()
})

person(
  'speaks the language that is chosen, at once and after a reload',
  { locale: 'de-DE', view: 'book' },
  async (page) => {
    await page.getByLabel('Sprache').selectOption('English')
    await page.getByRole('heading', { name: 'This page' }).waitFor()
    assert.equal(await page.evaluate(() => document.documentElement.lang), 'en')
    await page.locator('html[data-stored]').waitFor()
    await page.reload()
    await page.getByRole('heading', { name: 'This page' }).waitFor()
    assert.equal(await page.getByLabel('Language').inputValue(), 'en')
    // The numbers are those of the language: English has a point.
    await page.getByRole('button', { name: /^plain/ }).click()
    assert.ok((await textsOf(page, true)).some((text) => /\d\.\d+ g\/mL/.test(text)))
    await page.getByLabel('Language').selectOption({ index: 0 })
    await page.getByRole('heading', { name: 'Diese Seite' }).waitFor()
  },
)

person('asks what a comma means in American English', { view: 'book' }, async (page) => {
  await page.getByRole('button', { name: /^dusk/ }).click()
  const amount = page.getByLabel('Amount of plum', { exact: true })
  await amount.fill('1,25 cup')
  await page.getByText('1.25').first().waitFor()
  assert.equal(await amount.getAttribute('aria-invalid'), 'true')
  assert.equal(await amount.inputValue(), '1,25 cup')
})
