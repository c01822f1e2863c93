// What the bundlers bundle: the smallest use of the package.
import init, { convert } from 'pourwright'

await init()
globalThis.answer = convert({ amount: '1 cup', to: 'mL' }).value
