// JSON Lines: one request a line in, one answer a line out, as they come.
import { PourwrightError, fault, refuse } from './error.js'
import { LONGEST, short } from './text.js'

/** The answers to lines, one text each. For each line, `ask()` returns the function that answers it. */
export function answersTo(lines, ask) {
  return answerEach(requestsOf(piecesOf(lines)), ask)
}

async function* answerEach(requests, ask) {
  for await (const request of requests) yield answer(request, ask())
}

/** The answer to a request, or to the fault of a line that is none. */
function answer(request, calculate) {
  if (typeof request !== 'string') return JSON.stringify({ faults: [request] })
  try {
    return `{"result":${calculate(short('', request))}}`
  } catch (error) {
    if (!(error instanceof PourwrightError)) throw error
    return JSON.stringify({ faults: error.faults })
  }
}

/** Anything that lines come in as an iterable: of texts, which are a line each, and of bytes, which are split. */
function piecesOf(lines) {
  if (typeof lines === 'string') return splitText(lines)
  if (typeof lines?.getReader === 'function') return streamed(lines)
  if (typeof lines?.[Symbol.asyncIterator] === 'function' || typeof lines?.[Symbol.iterator] === 'function')
    return lines
  const help = 'Give a text, an iterable of texts or of bytes, or a ReadableStream.'
  refuse('wrong-type', '/lines', 'The lines are not something that can be read line by line.', help)
}

function* splitText(text) {
  for (let from = 0; from < text.length;) {
    const end = text.indexOf('\n', from)
    yield text.slice(from, end === -1 ? undefined : end)
    if (end === -1) return
    from = end + 1
  }
}

/** The bytes of a stream; not every browser iterates over streams. What is not read is canceled. */
async function* streamed(stream) {
  const reader = stream.getReader()
  const encoder = new TextEncoder()
  try {
    for (;;) {
      const { done, value } = await reader.read()
      if (done) return
      yield typeof value === 'string' ? encoder.encode(value) : value
    }
  } finally {
    await reader.cancel()
  }
}

const NEWLINE = 10

/** The requests of pieces: texts, and a fault in place of a line that is not a text. */
async function* requestsOf(pieces) {
  let line = new Line()
  for await (const piece of pieces) {
    if (typeof piece === 'string') {
      yield piece
      continue
    }
    if (!(piece instanceof Uint8Array)) {
      refuse('wrong-type', '/lines', `A piece of the lines is ${typeof piece}.`, 'Give texts or Uint8Arrays.')
    }
    let from = 0
    for (let end = piece.indexOf(NEWLINE); end !== -1; end = piece.indexOf(NEWLINE, from)) {
      line.add(piece.subarray(from, end))
      yield line.request()
      line = new Line()
      from = end + 1
    }
    line.keep(piece.subarray(from))
  }
  if (line.length > 0) yield line.request()
}

/** The bytes of one line. Of one that is too long only the length is kept. */
class Line {
  #parts = []
  length = 0

  add(bytes) {
    this.length += bytes.length
    if (this.length > LONGEST) this.#parts = []
    else this.#parts.push(bytes)
  }

  /** Adds bytes that the source may use again before the line ends. */
  keep(bytes) {
    this.add(this.length + bytes.length > LONGEST ? bytes : bytes.slice())
  }

  request() {
    if (this.length > LONGEST) {
      const help = `Split it: up to ${LONGEST} bytes are read.`
      return fault('document-too-long', '', `The line is ${this.length} bytes long.`, help)
    }
    // The core has its own rule for a byte order mark.
    const decoder = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true })
    try {
      return this.#parts.map((part) => decoder.decode(part, { stream: true })).join('') + decoder.decode()
    } catch {
      return fault('not-utf8', '', 'The line is not valid UTF-8.', 'Convert the lines to UTF-8 before the call.')
    }
  }
}
