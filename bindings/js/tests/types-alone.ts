// The types where neither a browser's nor Node's are declared, and documents that are imported: compiled with
// `tsc --strict`, never run.
import init, { Book, answerLines, initSync } from 'pourwright'
import * as scalar from 'pourwright/scalar'
import book from './book.json' with { type: 'json' }
import orders from './orders.json' with { type: 'json' }

export async function right(bytes: Uint8Array<ArrayBuffer>): Promise<string> {
  await init('https://example.test/pourwright.wasm')
  initSync(bytes)
  scalar.initSync(bytes.buffer)
  for await (const answer of answerLines(['{}', bytes])) initSync(answer.length > 0 ? bytes : bytes.buffer)
  return new Book(JSON.stringify(book)).sheet(JSON.stringify(orders))
}

export function wrong(): void {
  // @ts-expect-error a text is no module
  initSync('pourwright.wasm')
  // @ts-expect-error nor does a number say where it is
  void init(5)
}
