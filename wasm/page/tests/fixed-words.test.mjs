// The sources have no fixed words: what a person reads is a message of `src/words`, or is said by the library.
import assert from 'node:assert/strict'
import { readdir, readFile } from 'node:fs/promises'
import test from 'node:test'
import { parsers } from 'prettier/plugins/acorn'

/** Files that are not converted yet. One without fixed words is taken off this list; none is added. */
const UNCONVERTED = []

/** What only looks like words: data, by the file; and what a page that speaks no language yet shows. */
const EXCEPTIONS = {
  'book-import.js': ['dose …'],
  'book.js': ['3 cup', '1/4 cup'],
  'calibrate.js': ['… g'],
  'color-marks.js': ['M… 0V…M0 …H…', 'Files'],
  'color-pictures.js': ['card …'],
  'color.js': ['#b85e5a'],
  'gloves.js': ['54 mm'],
  'keys.js': ['.foot .done-next', '.foot .reading input', '.count .more', '.count .less'],
  'main.js': ['pourwright'],
  'one.js': ['… cup'],
  'paper.js': ['@page { @top-left { content: … } @top-right { content: … } }'],
  'planning.js': ['under way'],
  'records.js': ['file … …'],
  'trial.js': ['… drops'],
  'timers.js': ['wasm/page/serve 8017 0.0.0.0 https'],
}

/** Attributes that a person reads or hears. */
const READ = /^(aria-(label|description|valuetext|roledescription)|placeholder|title|alt)$/

/** Calls whose texts are no words for a person: the names of presses and lists, selectors, what goes to the console. */
const CALLS =
  /^(once|part|reveal|split|join|querySelector(All)?|closest|matches|matchMedia|getElementById|\w*EventListener|error|warn|setProperty)$/

const hasLetters = (text) => /\p{L}/u.test(text.replaceAll(/&\w+;/g, ''))

/** Whether a text that may be data reads as words: several of them, or one that begins as a sentence does. */
const isWords = (text) => /\p{L}[^\p{L}]*\s[^\p{L}]*\p{L}/u.test(text) || /^\p{Lu}\p{Ll}/u.test(text.trim())

/** The fixed words of a source, each `[line, words]`. */
function fixedWords(source) {
  const found = []
  const note = (node, words) => {
    const line = source.slice(0, node.start ?? node.range[0]).split('\n').length
    found.push([line, words.trim().replaceAll(/\s+/g, ' ')])
  }

  /** The texts and the read attributes of a template, and where each of its expressions is: "text", "read" or "quiet". */
  function template({ quasi: { quasis, expressions } }) {
    let [state, attribute, quote, text] = ['text', '', '', '']
    const places = quasis.map((quasi) => {
      const ends = () => {
        if (hasLetters(text) && (state === 'text' || READ.test(attribute))) note(quasi, text)
        text = ''
      }
      for (const letter of quasi.value.raw) {
        if (state === 'text' && letter === '<') {
          ends()
          state = 'tag'
        } else if (state === 'text') text += letter
        else if (state === 'tag' && letter === '>') state = 'text'
        else if (state === 'tag' && letter === '=') state = 'begins'
        else if (state === 'tag') attribute = /[\s/]/.test(letter) ? '' : attribute + letter
        else if (state === 'begins' && /["']/.test(letter)) [state, quote] = ['value', letter]
        else if (state === 'begins') [state, quote, text] = ['value', '', letter]
        else if (letter === quote || (!quote && /[\s>]/.test(letter))) {
          ends()
          ;[state, attribute] = [letter === '>' ? 'text' : 'tag', '']
        } else text += letter
      }
      ends()
      const place = state === 'text' ? 'text' : READ.test(attribute) ? 'read' : 'quiet'
      // An expression without quotes is the whole value.
      if (state === 'begins') [state, attribute] = ['tag', '']
      return place
    })
    expressions.forEach((expression, at) => visit(expression, places[at]))
  }

  /** Visits what is below a node. `place` is "text" or "read" for a value that is shown, "quiet" for one that nobody reads. */
  function visit(node, place = 'code') {
    if (Array.isArray(node)) return node.forEach((one) => visit(one, place))
    if (typeof node?.type !== 'string') return
    const isShown = place === 'text' || place === 'read'
    const isFixed = (text) => (isShown ? hasLetters(text) : place === 'code' && isWords(text))
    switch (node.type) {
      case 'TaggedTemplateExpression':
        return /^(html|svg)$/.test(node.tag.name) ? template(node) : visit(node.quasi.expressions)
      case 'Literal':
        if (typeof node.value === 'string' && isFixed(node.value)) note(node, node.value)
        return
      case 'TemplateLiteral': {
        const text = node.quasis.map(({ value }) => value.cooked).join('\0')
        // What is put in is a name or a number: with a word next to it, it reads as words.
        if (hasLetters(text) && isFixed(text.replaceAll('\0', 'x'))) note(node, text.replaceAll('\0', '…'))
        return visit(node.expressions)
      }
      case 'ConditionalExpression':
        visit(node.test)
        return visit([node.consequent, node.alternate], place)
      case 'LogicalExpression':
      case 'BinaryExpression':
        return visit([node.left, node.right], /^(&&|\|\||\?\?|\+)$/.test(node.operator) ? place : 'quiet')
      case 'ParenthesizedExpression':
        return visit(node.expression, place)
      case 'ImportDeclaration':
      case 'ImportExpression':
      case 'ExportAllDeclaration':
        return
      case 'ThrowStatement':
        return visit(node.argument, 'quiet')
      case 'NewExpression':
        return visit(node.arguments, place === 'quiet' ? 'quiet' : 'code')
      case 'Property':
        if (node.computed) visit(node.key)
        return visit(node.value)
      case 'CallExpression': {
        const name = node.callee.name ?? node.callee.property?.name ?? ''
        // A list that is written as one text.
        if (name !== 'split' || node.callee.object?.type !== 'Literal') visit(node.callee, 'quiet')
        const [first, ...others] = node.arguments
        visit(first, CALLS.test(name) ? 'quiet' : 'code')
        return visit(others, /^(error|warn)$/.test(name) ? 'quiet' : 'code')
      }
      case 'MemberExpression':
        visit(node.object, place === 'quiet' ? 'code' : place)
        return node.computed ? visit(node.property, 'quiet') : undefined
      default:
        for (const [key, below] of Object.entries(node)) {
          if (typeof below === 'object' && !/^(loc|range|comments|tokens)$/.test(key)) visit(below)
        }
    }
  }

  visit(parsers.acorn.parse(source, { filepath: 'source.mjs' }).body ?? [])
  return found
}

/** A unit that the library gives a quantity in. */
const UNIT = /°[CF[(]|\b(mL|kPa|inHg|tsp|tbsp|fl oz)\b/

/** The regular expressions over units in a source: what a text is in, the library says in fields. */
function overUnits(source) {
  const found = []
  if (!UNIT.test(source.replaceAll('\\b', ''))) return found
  const visit = (node) => {
    if (node === null || typeof node !== 'object') return
    if (node.regex && UNIT.test(node.regex.pattern.replaceAll('\\b', ''))) found.push(node.regex.pattern)
    for (const [key, below] of Object.entries(node)) if (!/^(loc|range|comments|tokens)$/.test(key)) visit(below)
  }
  visit(parsers.acorn.parse(source, { filepath: 'source.mjs' }).body)
  return found
}

test('no source reads units out of texts', async () => {
  assert.deepEqual(overUnits('const [a, b, c] = [/(°C|kPa)$/, /\\b(mL|L)$/.test(d), /cup/]'), [
    '(°C|kPa)$',
    '\\b(mL|L)$',
  ])
  const src = new URL('../src/', import.meta.url)
  for (const file of (await readdir(src)).filter((file) => file.endsWith('.js'))) {
    const over = overUnits(await readFile(new URL(file, src), 'utf8'))
    // What only finds the space between a number and its unit, so that no line ends there, reads nothing.
    const reading = over.filter((pattern) => !pattern.startsWith('(?<=\\d) (?='))
    assert.deepEqual(reading, [], file)
  }
})

test('finds fixed words, and only those', () => {
  const words = (source) => fixedWords(source).map(([, found]) => found)
  const sample = `
    import { html } from './some words.js'
    const TITLES = { cups: 'Cups', kind: 'colorant', 'two words': 1 }
    const view = (count) => html\`<p class="a b">Pour \${count} of it <b>now</b></p>
      <input placeholder="1 cup" aria-label=\${count ? 'Drops' : \`\${count} of it\`} class="\${count ? 'quiet now' : ''}" />
      \${count === 'many' ? 'yes' : 'no'} \${once('two words', () => 'Pot A')} · 5\`
    function fails() { throw new Error('not for reading') }
    const said = say('page.undo') ?? \`Pot \${said}\``
  assert.deepEqual(words(sample).sort(), [
    '1 cup',
    'Cups',
    'Drops',
    'Pot A',
    'Pot …',
    'Pour',
    'no',
    'now',
    'of it',
    'yes',
    '… of it',
  ])
})

test('no source has fixed words outside of the catalog', async () => {
  const src = new URL('../src/', import.meta.url)
  const files = (await readdir(src)).filter((file) => file.endsWith('.js') && file !== 'words.js')
  assert.ok(files.length > 40)
  const left = new Set(UNCONVERTED)
  const wrongs = []
  for (const file of files) {
    const allowed = new Set(EXCEPTIONS[file])
    const fixed = fixedWords(await readFile(new URL(file, src), 'utf8'))
    const others = fixed.filter(([, words]) => !allowed.has(words))
    for (const [, words] of fixed) allowed.delete(words)
    for (const words of allowed) wrongs.push(`${file} does not have the exception “${words}” any more: take it off.`)
    const isUnconverted = left.delete(file.replace('.js', ''))
    if (isUnconverted && !others.length) wrongs.push(`${file} has no fixed words any more: take it off UNCONVERTED.`)
    if (!isUnconverted) wrongs.push(...others.map(([line, words]) => `src/${file}:${line}: ${words}`))
  }
  for (const name of left) wrongs.push(`${name}.js is not there any more: take it off UNCONVERTED.`)
  assert.deepEqual(wrongs, [])
})
