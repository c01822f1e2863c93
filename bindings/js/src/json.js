import { PourwrightError, refuse } from './error.js'
import { short } from './text.js'

/** The JSON text of a document. A text is passed unchanged, so that duplicate keys are found. */
export function jsonText(document) {
  return short('', typeof document === 'string' ? document : written(document))
}

function written(document) {
  let text
  try {
    text = JSON.stringify(document, plain)
  } catch (cause) {
    if (cause instanceof PourwrightError) throw cause
    unwritable('', cause.message)
  }
  return text ?? unwritable('', `It is ${typeof document}.`)

  // JSON writes null for a number that is not finite and omits functions, both silently.
  function plain(key, value) {
    const kind = typeof value
    if (kind === 'number' ? !Number.isFinite(value) : kind === 'bigint' || kind === 'function' || kind === 'symbol') {
      const path = pathOf(document, this, key)
      unwritable(path, kind === 'number' ? `Found ${value}.` : `Found a ${kind}.`)
    }
    return value
  }
}

function unwritable(path, reason) {
  refuse(
    'not-json',
    path,
    `This cannot be written as JSON. ${reason}`,
    'Give plain objects, lists, texts, finite numbers, true, false or null.',
  )
}

/** The JSON Pointer of `key` in the object `holder` somewhere below `value`. */
function pathOf(value, holder, key) {
  if (value === holder) return '/' + key.replaceAll('~', '~0').replaceAll('/', '~1')
  if (typeof value !== 'object' || value === null) return ''
  for (const [name, below] of Object.entries(value)) {
    const path = pathOf(below, holder, key)
    if (path) return '/' + name.replaceAll('~', '~0').replaceAll('/', '~1') + path
  }
  return ''
}
