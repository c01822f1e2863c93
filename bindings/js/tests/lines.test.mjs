// JSON Lines: requests in, answers out, as they come.
import assert from 'node:assert/strict'
import { createReadStream } from 'node:fs'
import { createInterface } from 'node:readline'
import { Readable, Writable } from 'node:stream'
import { pipeline } from 'node:stream/promises'
import { test } from 'node:test'
import { fileURLToPath } from 'node:url'

import init, { Book, PourwrightError, answerLines } from 'pourwright'
import { book as document, orders, read, refused, root } from './support.mjs'

await init()

const CUP = '{"calculate":"convert","amount":"1 cup","to":"tbsp"}'
const CELSIUS = '{"calculate":"convert","amount":"330 °F","to":"°C"}'
const [SIXTEEN, HOT] = await all(answerLines(`${CUP}\n${CELSIUS}\n`))
const codeOf = (answer) => JSON.parse(answer).faults[0].code

async function all(answers) {
  const found = []
  for await (const answer of answers) found.push(answer)
  return found
}

const bytes = (text) => new TextEncoder().encode(text)

/** Bytes in pieces of this size. */
function* pieces(whole, size) {
  for (let from = 0; from < whole.length; from += size) yield whole.subarray(from, from + size)
}

test('every vector, from a file that is read in pieces, byte for byte', async () => {
  const path = fileURLToPath(new URL('tests/vectors/requests.jsonl', root))
  const answers = read('tests/vectors/answers.jsonl').trimEnd().split('\n')
  assert.deepEqual(await all(answerLines(createReadStream(path))), answers)
  const first = answers.slice(0, 50)
  const lines = createReadStream(path, { highWaterMark: 7 })
  const found = []
  for await (const answer of answerLines(lines)) if (found.push(answer) === first.length) break
  assert.deepEqual(found, first)
  assert.ok(lines.destroyed)
})

test('it is a step of a pipeline', async () => {
  const found = []
  async function* asLines(answers) {
    for await (const answer of answers) yield `${answer}\n`
  }
  const out = new Writable({ write: (piece, _, done) => done(null, found.push(piece.toString())) })
  await pipeline(Readable.from([bytes(`${CUP}\n${CELSIUS}\n`)]), answerLines, asLines, out)
  assert.deepEqual(found, [`${SIXTEEN}\n`, `${HOT}\n`])
})

test('lines may come as a text, texts, bytes and streams', async () => {
  assert.match(SIXTEEN, /^\{"result":\{"calculate":"convert","amount":"16 tbsp","value":16\.0,/)
  assert.match(HOT, /°C/)
  const text = `${CUP}\r\n${CELSIUS}`
  const whole = bytes(text)
  async function* later() {
    for (const line of [CUP, CELSIUS]) yield await line
  }
  const sources = [
    text,
    `${text}\n`,
    [CUP, CELSIUS],
    new Set([CUP, CELSIUS]),
    later(),
    [JSON.stringify(JSON.parse(CUP), null, 2), CELSIUS],
    [whole],
    new Response(text).body,
    new Blob([text, '\n']).stream(),
    new Response(text).body.pipeThrough(new TextDecoderStream()),
    createInterface({ input: Readable.from([text]) }),
  ]
  for (const source of sources) assert.deepEqual(await all(answerLines(source)), [SIXTEEN, HOT])
  for (let size = 1; size <= whole.length; size += 1) {
    assert.deepEqual(await all(answerLines(pieces(whole, size))), [SIXTEEN, HOT], size)
  }
  for (const none of ['', [], [new Uint8Array()], new Blob([]).stream()])
    assert.deepEqual(await all(answerLines(none)), [])
})

test('a source may use its bytes again', async () => {
  const piece = new Uint8Array(10)
  function* reused() {
    for (const part of pieces(bytes(`${CUP}\n${CELSIUS}\n`), piece.length)) {
      piece.fill(0x20)
      piece.set(part)
      yield piece.subarray(0, part.length)
    }
  }
  assert.deepEqual(await all(answerLines(reused())), [SIXTEEN, HOT])
})

test('faults are in their places', async () => {
  const lines = [CUP, '', '[', '{}', '"ab', CUP].join('\n')
  const found = await all(answerLines(lines))
  assert.deepEqual([found[0], found[5], found.length], [SIXTEEN, SIXTEEN, 6])
  assert.deepEqual(found.slice(1, 5).map(codeOf), ['not-json', 'not-json', 'missing-field', 'not-json'])
  assert.deepEqual(await all(answerLines([bytes(lines)])), found)

  // Bytes that are not UTF-8, a letter that is cut off, a byte order mark, which the core leaves out.
  const odd = [...bytes(CUP), 10, 0x22, 0xff, 10, 0xc3, 10, 0xef, 0xbb, 0xbf, ...bytes(CUP)]
  const answers = await all(answerLines(pieces(Uint8Array.from(odd), 3)))
  assert.deepEqual([answers[0], answers[3], answers.length], [SIXTEEN, SIXTEEN, 4])
  assert.deepEqual(answers.slice(1, 3).map(codeOf), ['not-utf8', 'not-utf8'])
})

test('a line that is too long is not kept', async () => {
  const piece = new Uint8Array(1 << 20).fill(0x20)
  const whole = 200
  function* long() {
    for (let count = 0; count < whole; count += 1) yield piece
    yield bytes(`\n${CUP}`)
  }
  const before = process.memoryUsage().arrayBuffers
  const answers = answerLines(long())
  const { value } = await answers.next()
  assert.equal(codeOf(value), 'document-too-long')
  assert.ok(value.includes(`${whole << 20} bytes`))
  // What is dropped is collected at some time; less than all of it is there even so.
  assert.ok(process.memoryUsage().arrayBuffers - before < (whole << 20) / 2)
  assert.deepEqual(await all(answers), [SIXTEEN])
  assert.equal(codeOf((await all(answerLines([' '.repeat((16 << 20) + 1)])))[0]), 'document-too-long')
})

test('nothing is read before its answer is asked for, and the source is closed', async () => {
  let [given, closed] = [0, false]
  function* endless() {
    try {
      for (;;) yield (given += 1) % 3 ? CUP : '{'
    } finally {
      closed = true
    }
  }
  const answers = answerLines(endless())
  assert.equal(given, 0)
  await answers.next()
  assert.equal(given, 1)
  for await (const answer of answers) if (answer !== SIXTEEN) break
  assert.deepEqual([given, closed], [3, true])

  let canceled = false
  const stream = new ReadableStream({
    pull: (controller) => controller.enqueue(bytes(`${CUP}\n`)),
    cancel: () => (canceled = true),
  })
  for await (const answer of answerLines(stream)) if (answer === SIXTEEN) break
  assert.ok(canceled)
})

test('what cannot be lines is refused, and what the source throws is thrown', async () => {
  for (const wrong of [undefined, null, 5, {}, () => CUP]) {
    const { code, path } = refused(() => answerLines(wrong))
    assert.deepEqual([code, path], ['wrong-type', '/lines'])
  }
  for (const wrong of [[5], [null], [{ calculate: 'convert' }], [[CUP]]]) {
    await assert.rejects(
      all(answerLines(wrong)),
      (error) => error instanceof PourwrightError && error.code === 'wrong-type',
    )
  }
  function* broken() {
    yield CUP
    throw new RangeError('the file ends')
  }
  const answers = answerLines(broken())
  assert.equal((await answers.next()).value, SIXTEEN)
  await assert.rejects(answers.next(), /the file ends/)
})

test('a book and a plan answer lines that leave them out', async () => {
  const book = new Book(document)
  const plan = book.open(orders)
  const formula = JSON.stringify({ calculate: 'formula', formulas: ['dusk'] })
  const [first, second, third] = await all(book.answerLines([formula, '[', formula]))
  assert.deepEqual(JSON.parse(first).result, book.request(formula))
  assert.deepEqual([codeOf(second), third], ['not-json', first])
  const record = JSON.stringify({ calculate: 'record', actuals: { format: 'pourwright/1.0', pots: {} } })
  const [recorded, again] = await all(plan.answerLines([record, record]))
  assert.deepEqual([JSON.parse(recorded).result, again], [plan.request(record), recorded])
  for (const [open, code] of [
    [book, 'book-freed'],
    [plan, 'plan-freed'],
  ]) {
    // prettier-ignore
    const answers = open.answerLines([formula, formula])
    await answers.next()
    open.free()
    await assert.rejects(answers.next(), { code })
    assert.equal(refused(() => open.answerLines([])).code, code)
  }
})
