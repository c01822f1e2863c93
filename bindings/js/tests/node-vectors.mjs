// tests/vectors through the package in Node.
import init, * as pourwright from 'pourwright'
import { answerTo } from './calls.mjs'
import { answered } from './support.mjs'
import { CALCULATIONS, compareCalls, compareVectors } from './vectors.mjs'

await init()
await compareVectors('node', (requests) => requests.map((request) => answered(() => pourwright.calculate(request))))
await compareCalls('node', (calls) => calls.map((call) => answerTo(pourwright, CALCULATIONS, call)))
