// A worker: what the entry of the package that it is given answers to the odd calls.
import { parentPort, workerData } from 'node:worker_threads'

import { answered } from './support.mjs'
import { oddNumbers, oddTexts } from './table.mjs'

const { default: init, ...pourwright } = await import(workerData)
await init()
const calls = [...oddNumbers(), ...oddTexts()]
parentPort.postMessage(calls.map(([name, given]) => answered(() => pourwright[name](given))))
