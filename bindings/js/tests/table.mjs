// The native library's table of calculations, and calls made from it.
import assert from 'node:assert/strict'
import { spawnSync } from 'node:child_process'

/** The native library's answers. */
export function native(asked) {
  const input = asked.map((each) => `${JSON.stringify(each)}\n`).join('')
  const run = spawnSync(process.env.POURWRIGHT_NATIVE, { input, encoding: 'utf8', maxBuffer: 1 << 28 })
  assert.equal(run.status, 0, run.stderr)
  return run.stdout
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line))
}

/** `{ name, parameters, example: { given, results } }` of each calculation; names are those of JavaScript. */
export const [TABLE] = native(['table'])

const ODD_NUMBERS = [NaN, Infinity, -Infinity, 0, -0, -1, 5e-324, 1e-300, 1e-15, 0.1, 1, 7, 1e6, 4294967295, 4294967296, 1e15, 1e300, Number.MAX_VALUE, -Number.MAX_VALUE] // prettier-ignore

export const ODD_TEXTS = ['', '\0', '\n', '\ud800', '\udfff', '\ufeff', '\u202e', '½', '⅓ cup', '１ cup', '1\u00a0cup', '𝟙 cup', '1 c̈up', '٣ cup', '👩‍🔧'] // prettier-ignore

const megabytes = (count) => 'x'.repeat(count << 20)
export const LONG_TEXTS = [megabytes(1), megabytes(15), megabytes(17), '9'.repeat(1 << 20), '\u0001'.repeat(1 << 20)]

export const isNumber = ({ kind }) => kind === 'number' || kind === 'count'
export const isText = ({ kind }) => kind === 'text' || kind === 'word'
export const isList = ({ kind }) => kind === 'list' || kind === 'rows'

/** The example of a calculation with other values for some parameters. */
export const exampleWith = ({ example }, other) => ({ ...example.given, ...other })

/** Odd numbers for every number: one at a time, and all at once. */
export function* oddNumbers() {
  for (const calculation of TABLE) {
    const { name, parameters, example } = calculation
    const numbers = parameters.filter(isNumber)
    for (const number of ODD_NUMBERS) {
      for (const parameter of numbers) yield [name, exampleWith(calculation, { [parameter.name]: number })]
      yield [name, exampleWith(calculation, Object.fromEntries(numbers.map(({ name }) => [name, number])))]
      for (const parameter of parameters.filter(isList)) {
        const list = example.given[parameter.name] ?? [parameter.columns.map(() => 1)]
        const odd = (row, place) =>
          Array.isArray(row) ? row.map((item, at) => odd(item, place + at)) : place % 2 ? row : number
        yield [name, exampleWith(calculation, { [parameter.name]: list.map(odd) })]
        yield [name, exampleWith(calculation, { [parameter.name]: list.map((row) => odd(row, 1)) })]
        yield [name, exampleWith(calculation, { [parameter.name]: [] })]
        yield [name, exampleWith(calculation, { [parameter.name]: [...list, ...list, ...list].reverse() })]
      }
    }
  }
}

/** Odd texts for every text. */
export function* oddTexts() {
  for (const calculation of TABLE) {
    for (const parameter of calculation.parameters.filter(isText)) {
      for (const text of ODD_TEXTS) {
        for (const given of [text, `1${text}cup`, `${text}1 cup`, `1 cup${text}`])
          yield [calculation.name, exampleWith(calculation, { [parameter.name]: given })]
      }
    }
  }
}

/** Long texts for every text: an amount, a unit and words. */
export function* longTexts() {
  for (const calculation of TABLE.filter(({ name }) => name === 'convert' || name === 'saltConvert')) {
    for (const parameter of calculation.parameters.filter(isText)) {
      for (const text of LONG_TEXTS) {
        yield [calculation.name, exampleWith(calculation, { [parameter.name]: text })]
        yield [calculation.name, exampleWith(calculation, { [parameter.name]: `1${text}` })]
      }
    }
  }
}

/** Numbers from 0 to below 1, the same in every run. */
export function randomNumbers(state) {
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0
    return state / 2 ** 32
  }
}

/** Random calls of a calculation: most with numbers near those of its example, some anywhere in their ranges. */
export function* randomCalls({ parameters, example }, count, random) {
  for (let call = 0; call < count; call += 1) {
    const anywhere = random() < 0.2
    const number = (near, range) => {
      let { least, most } = range ?? { least: -1e6, most: 1e6 }
      let found = near * (0.9 + 0.2 * random())
      if (near === undefined || anywhere) {
        // As many of each size.
        found = least > 0 ? least * (most / least) ** random() : least + (most - least) * 10 ** (-9 * random())
      }
      return range?.whole ? Math.round(found) : found
    }
    const given = {}
    for (const { name, kind, optional, range, words, columns } of parameters) {
      const near = example.given[name]
      if (optional && random() < (near === undefined ? 0.7 : 0.2)) continue
      if (kind === 'number' || kind === 'count') given[name] = number(near, range)
      else if (kind === 'word') given[name] = random() < 0.9 && near ? near : words[Math.floor(words.length * random())]
      else if (kind === 'text') given[name] = near
      else if (kind === 'list') given[name] = (near ?? [1, 1]).map((item) => number(item, columns[0]))
      else given[name] = (near ?? [columns.map(() => 1)]).map((row) => row.map((item, at) => number(item, columns[at])))
    }
    yield given
  }
}
