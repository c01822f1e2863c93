// What the form of the book knows of its fields: the library's schema, units and starter table, from the file `form`.
import { FORMAT, faultsOfBook } from './core.js'
import { loaded } from './files.js'
import { change } from './state.js'
import { say } from './words.js'

let data = null
let loading = null

/** Whether the schema is there; if not, it is fetched, and the page drawn again. */
export function isReady() {
  loading ??= fetched().catch((failure) => {
    loading = null
    change({
      notice: say('form.notLoaded', { why: failure.message }),
    })
  })
  return data !== null
}

async function fetched() {
  data = await (await loaded('form')).json()
  change()
}

/** The schema of the entries of a part of the book, or of a group that is one. */
export function schemaOf(part) {
  const schema = data.properties[part]
  return target(typeof schema.additionalProperties === 'object' ? schema.additionalProperties : schema)
}

/** The schema that a reference leads to. */
export const target = (schema) => (schema.$ref ? data.$defs[schema.$ref.split('/').at(-1)] : schema)

/** The text of a description, its default and its example, which is JSON. */
export function described(schema) {
  const whole = (schema.description ?? '').replaceAll(/\s+/g, ' ')
  const [before, example = ''] = whole.split(' Example: `')
  const [text, byDefault = ''] = before.split(' Default: ')
  return { text, byDefault: byDefault.replace(/\.$/, ''), example: example.replace(/`\.$/, '') }
}

/** An example as it is typed into a field; empty if it is not one line of text or a number. */
export function typed(example) {
  try {
    const value = JSON.parse(example)
    return typeof value === 'object' ? '' : String(value)
  } catch {
    return ''
  }
}

/** Whether a text that a schema takes is an amount or another quantity, which has a decimal sign. */
export function isAmount(schema) {
  const name = schema.$ref?.split('/').at(-1) ?? ''
  const to = target(schema)
  return AMOUNTS.test(name) || 'x-quantity' in to || [...(to.anyOf ?? []), ...(to.oneOf ?? [])].some(isAmount)
}

/** The definitions of the schema that are quantities in words. */
const AMOUNTS = /^(Amount|MeasuredAmount|Percent|Share|Price|MostDose|Cut)$/

const isTextual = (schema) => {
  const to = target(schema)
  return to.type === 'string' || (to.anyOf ?? []).some(isTextual)
}

/**
 * The form of a value: "text", "number", "yes", "choice" (of `names`), "pair", "list" (of `items`), "group" (of `schema`), or
 * "other", which the form of the book has no fields for. What can be written in several ways has the form of the plainest, and
 * `named`, the schema of its groups, if it may be groups by name.
 */
export function formOf(schema) {
  const to = target(schema)
  if (to.enum) return { form: 'choice', names: to.enum }
  if (to.oneOf?.every((one) => 'const' in one)) return { form: 'choice', names: to.oneOf.map((one) => one.const) }
  if (isTextual(to)) return { form: 'text' }
  if (to.type === 'integer' || to.type === 'number') return { form: 'number' }
  if (to.type === 'boolean') return { form: 'yes' }
  if (to.prefixItems) return { form: 'pair' }
  if (to.type === 'array') return { form: 'list', items: to.items }
  if (to.properties) return { form: 'group', schema: to }
  const named = (to.anyOf ?? []).map(target).find((one) => typeof one.additionalProperties === 'object')
  const plain = (to.anyOf ?? []).map(formOf).find(({ form }) => form === 'number' || form === 'text')
  const groups =
    named && target(named.additionalProperties).properties ? { named: target(named.additionalProperties) } : {}
  return { ...(plain ?? { form: 'other' }), ...groups }
}

/** The starter table: properties of generic materials, by name. */
export const starters = () => data.starter

const known = new Map()

/** The units that a dose can have in the measures of a book, in the library's order, those of its examples first. */
export function unitsOf(measures) {
  if (!known.has(measures)) known.set(measures, unitsIn(measures))
  return known.get(measures)
}

/** Units that the library takes: the others have a fault in a book that doses one of each. */
function unitsIn(measures) {
  const ofExamples = data.$defs.Amount.examples.map((amount) => amount.replace(/^[\d\s./]+/, ''))
  let units = [...new Set([...ofExamples, ...data.units])]
  for (;;) {
    const formulas = Object.fromEntries(
      units.map((unit, at) => [`u${at}`, { per: '1 L', sure: true, doses: { dosed: `1 ${unit}` } }]),
    )
    const faults = faultsOfBook({
      format: FORMAT,
      measures,
      default_base: 'base',
      materials: {
        base: { kind: 'plastisol', density: '1 g/mL' },
        dosed: { kind: 'colorant', density: '1 g/mL' },
      },
      formulas,
      molds: {},
      bench: { cups: [{ holds: '1 L' }], injector: { holds: '100 mL' } },
    })
    const refused = new Set(faults.map(({ path }) => /^\/formulas\/u(\d+)/.exec(path)?.[1]).filter(Boolean))
    if (!refused.size) return units
    units = units.filter((_, at) => !refused.has(String(at)))
  }
}
