// What the bundlers bundle: the smallest use of plain numbers.
import init, { convert } from 'pourwright/scalar'

await init()
globalThis.answer = convert({ amount: '1 cup', to: 'mL' }).value
