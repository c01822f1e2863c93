// The calls of tests/vectors on plain numbers, for Node and for a page: nothing of either is used here.

const NOT_FINITE = { NaN, Infinity, '-Infinity': -Infinity }

/** `cavityVolumeMl` of `cavity_volume_ml`; millipascal seconds are `MPaS`. */
export const camel = (name) => name.replace(/_(.)/g, (_, letter) => letter.toUpperCase()).replace(/MpaS$/, 'MPaS')

/** A value of a call as JavaScript has it: what is no number in JSON is written as a text. */
function plain(kind, value) {
  if (Array.isArray(value)) return value.map((item) => plain(kind, item))
  return kind !== 'text' && kind !== 'word' && typeof value === 'string' ? NOT_FINITE[value] : value
}

/**
 * What the package answers to a call, as the vectors have it. `calculations` are those of core/schema/calculations.json by
 * name.
 */
export function answerTo(pourwright, calculations, { call, given }) {
  const { parameters, results } = calculations[call]
  const named = parameters.filter(({ field }) => field in given)
  const passed = named.map(({ field, kind }) => [camel(field), plain(kind, given[field])])
  try {
    const found = pourwright[camel(call)](Object.fromEntries(passed))
    return { results: Object.fromEntries(results.map(({ field }) => [field, found[camel(field)]])) }
  } catch (error) {
    if (!(error instanceof pourwright.PourwrightError)) throw error
    const fields = new Map(parameters.map(({ field }) => [camel(field), field]))
    const path = (path) => path.replace(/^\/(\w+)/, (_, name) => `/${fields.get(name)}`)
    return { faults: error.faults.map((fault) => ({ code: fault.code, path: path(fault.path) })) }
  }
}

/** JSON that keeps -0. */
export const jsonOf = (value) =>
  JSON.stringify(value, (_, each) => (Object.is(each, -0) ? '-0.0 as a number' : each)).replaceAll(
    '"-0.0 as a number"',
    '-0.0',
  )
