// Writes the types of the documents, types/documents.d.ts, from the JSON Schemas of the core; with `--check` only says
// whether the file is fresh.
import { readFileSync, writeFileSync } from 'node:fs'
import { compile } from 'json-schema-to-typescript'

const schemas = new URL('../../../core/schema/', import.meta.url)
const target = new URL('../types/documents.d.ts', import.meta.url)

const HEADER = `// Made from the JSON Schemas in core/schema by tools/types.mjs: change those.
`

/** The name of a definition among the types, where `Plan` is the class. */
const renamed = (name) => (name === 'Plan' ? 'PlanDocument' : name)

const definitions = {}
const { request, answer, plan } = read('request', 'answer', 'plan')
define('PlanDocument', withoutDefinitions(plan))

// A request or a response is identified by its \`calculate\`: each gets a type of its own, and a table of both by name.
const requests = variants(request.oneOf)
const responses = variants(answer.$defs.Response.oneOf)
delete definitions.Response
for (const [calculation, schema] of Object.entries(requests)) {
  define(named(calculation, 'Request'), schema)
}
// A response that occurs nowhere else has its schema here; the others are definitions.
for (const [calculation, schema] of Object.entries(responses)) {
  if (schema.$ref === undefined && calculation !== 'plan') {
    define(named(calculation, 'Response'), schema)
    responses[calculation] = { $ref: named(calculation, 'Response') }
  }
}

const types = await compile(
  { title: 'Everything', definitions: adapted(definitions), type: 'object', additionalProperties: false },
  'Everything',
  {
    bannerComment: '',
    unreachableDefinitions: true,
    additionalProperties: false,
    style: { printWidth: 120, semi: false, singleQuote: true },
  },
)

const text = [
  HEADER,
  tidied(types),
  table('Requests', 'The request of every calculation, by its name.', requests, (calculation) =>
    named(calculation, 'Request'),
  ),
  table('Responses', 'The response of every calculation, by its name.', responses, (calculation, schema) => {
    const type = calculation === 'plan' ? 'PlanDocument' : schema.$ref.split('/').pop()
    return `${type} & { calculate: '${calculation}' }`
  }),
].join('\n')

/** Without what only tells how the generator was called. */
function tidied(types) {
  return types
    .replace(/^export interface Everything \{\s*\}\n/m, '')
    .replace(
      /^ \*\s*\n \* This interface was referenced by `Everything`'s JSON-Schema\n \* via the `definition` ".*"\.\n/gm,
      '',
    )
    .replace(
      /^\/\*\*\n \* This interface was referenced by `Everything`'s JSON-Schema\n \* via the `definition` ".*"\.\n \*\/\n/gm,
      '',
    )
    .trimEnd()
}

if (process.argv.includes('--check')) {
  if (readFileSync(target, 'utf8') !== text) {
    console.error('types/documents.d.ts is not what the schemas make it: run `node tools/types.mjs`.')
    process.exitCode = 1
  }
} else {
  writeFileSync(target, text)
}

/** Reads the schemas, and keeps their definitions, which must agree. */
function read(...names) {
  return Object.fromEntries(
    names.map((name) => {
      const schema = JSON.parse(readFileSync(new URL(`${name}.json`, schemas), 'utf8'))
      for (const [key, definition] of Object.entries(schema.$defs)) define(renamed(key), definition)
      return [name, schema]
    }),
  )
}

function define(name, schema) {
  if (name in definitions && JSON.stringify(definitions[name]) !== JSON.stringify(schema)) {
    throw new Error(`Two schemas define ${name}, and not alike.`)
  }
  definitions[name] = schema
}

function withoutDefinitions({ $schema, $defs, title, ...schema }) {
  return schema
}

function variants(alternatives) {
  return Object.fromEntries(alternatives.map((schema) => [schema.properties.calculate.const, schema]))
}

function named(calculation, what) {
  return calculation.replace(/(^|-)(.)/g, (...[, , letter]) => letter.toUpperCase()) + what
}

function table(name, about, variants, type) {
  const rows = Object.entries(variants).map(
    ([calculation, schema]) => `  '${calculation}': ${type(calculation, schema)}\n`,
  )
  return `\n/** ${about} */\nexport interface ${name} {\n${rows.join('')}}\n`
}

/** The schema as the generator understands it: references among definitions, each with a description of its own. */
function adapted(schema) {
  if (Array.isArray(schema)) return schema.map((item) => adapted(item))
  if (typeof schema !== 'object' || schema === null) return schema
  const entries = Object.entries(schema).map(([key, value]) => [
    key,
    key === '$ref'
      ? `#/definitions/${renamed(value.replace('#/$defs/', ''))}`
      : key === 'examples' || key === 'enum'
        ? value
        : adapted(value),
  ])
  const { $ref, ...rest } = Object.fromEntries(entries)
  if ($ref === undefined) return rest
  return Object.keys(rest).length === 0 ? { $ref } : { ...rest, allOf: [{ $ref }] }
}
