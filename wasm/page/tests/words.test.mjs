// The messages: every language has all of them, with the same values and the plural forms that it needs.
import assert from 'node:assert/strict'
import { readdir, readFile } from 'node:fs/promises'
import test from 'node:test'
import { LANGUAGES, languageFor, local, say, speak, typed } from '../src/words.js'

const languages = Object.fromEntries(
  await Promise.all(Object.entries(LANGUAGES).map(async ([code, { load }]) => [code, await load()])),
)
const keysOf = (messages) =>
  Object.entries(messages).flatMap(([part, own]) => Object.keys(own).map((name) => `${part}.${name}`))
const formsOf = (message) => (typeof message === 'string' ? [message] : Object.values(message))
const valuesOf = (form) => [...form.matchAll(/\{(\w+)\}/g)].map(([, name]) => name).sort()

for (const [code, messages] of Object.entries(languages)) {
  test(`${code} has every message, with its values and plural forms`, () => {
    assert.deepEqual(keysOf(messages).sort(), keysOf(languages.en).sort())
    const needed = new Intl.PluralRules(code).resolvedOptions().pluralCategories.toSorted()
    for (const key of keysOf(languages.en)) {
      const [part, name] = key.split('.')
      const [english, own] = [languages.en[part][name], messages[part][name]]
      assert.equal(typeof own, typeof english, key)
      if (typeof own !== 'string') {
        assert.deepEqual(Object.keys(own).sort(), needed, key)
        assert.ok(
          formsOf(own).some((form) => valuesOf(form).includes('count')),
          key,
        )
      }
      const all = (message) => [...new Set(formsOf(message).flatMap(valuesOf))].sort()
      assert.deepEqual(all(own), all(english), key)
      assert.ok(
        formsOf(own).every((form) => form.trim() === form && form),
        `${key}: no blanks at the ends`,
      )
    }
  })
}

test('every message that the sources say is there, and none is left over', async () => {
  const src = new URL('../src/', import.meta.url)
  const files = (await readdir(src)).filter((file) => file.endsWith('.js'))
  const text = (await Promise.all(files.map((file) => readFile(new URL(file, src), 'utf8')))).join('\n')
  const said = new Set([...text.matchAll(/'([a-z]+\.\w+)'/gi)].map(([, key]) => key))
  for (const [, key] of text.matchAll(/\bsay\('([^']+)'/g)) assert.ok(keysOf(languages.en).includes(key), key)
  // A family of messages is named by its stem: say(`page.${view}`).
  const families = [...text.matchAll(/`([a-z]+\.\w*)\$\{/gi)].map(([, stem]) => stem)
  // What is said and goes on with a capital is of its family too: "csv.missing" has "csv.missingHelp".
  const isOfFamily = (key) => [...said].some((stem) => key.startsWith(stem) && /[A-Z]/.test(key[stem.length] ?? ''))
  const unused = keysOf(languages.en).filter(
    (key) => !said.has(key) && !isOfFamily(key) && !families.some((stem) => key.startsWith(stem)),
  )
  assert.deepEqual(unused, [])
})

test('a message is filled in as the locale writes numbers', async () => {
  await speak('de', ['de-DE'])
  assert.equal(say('page.faultsInOrders', { count: 1200 }), '1.200 Fehler in den Aufträgen.')
  assert.equal(local('29.5 g'), '29,5 g')
  assert.equal(typed('1,25 cup'), '1.25 cup')
  await speak('en', ['en-US'])
  assert.equal(say('page.faultsInOrders', { count: 1 }), '1 fault in the orders.')
  assert.deepEqual(say('page.faultsInOrders', { count: { shown: 1 } }), [{ shown: 1 }, ' faults in the orders.'])
  assert.equal(local('29.5 g'), '29.5 g')
  assert.throws(() => say('page.faultsInOrders'), /needs "count"/)
  assert.throws(() => say('page.nothing'), /no message/)
})

test('the language is the one chosen, or the first of the browser that the page has', () => {
  assert.equal(languageFor('de', ['en-US']), 'de')
  assert.equal(languageFor('', ['fr-FR', 'de-AT', 'en-US']), 'de')
  assert.equal(languageFor('', ['fr-FR']), 'en')
})
