// Assembles the page from its sources, the npm package and lit-html: `node assemble.mjs OUT`.
import { createHash } from 'node:crypto'
import { cp, mkdir, readFile, readdir, rm, writeFile } from 'node:fs/promises'
import { basename, join, relative } from 'node:path'

const page = new URL('..', import.meta.url).pathname
const root = join(page, '../..')
const out = process.argv[2]

await rm(out, { recursive: true, force: true })
await mkdir(out, { recursive: true })
await cp(join(page, 'static'), out, { recursive: true })
await cp(join(page, 'src'), join(out, 'src'), { recursive: true })

const library = join(root, 'bindings/js')
for (const file of ['build/pourwright.js', 'build/pourwright_bg.wasm']) {
  await cp(join(library, file), join(out, 'pourwright', file))
}
// Without the entries for Node and for plain numbers.
await cp(join(library, 'src'), join(out, 'pourwright/src'), {
  recursive: true,
  filter: (file) => !/(node|scalar-\w+)\.js$/.test(file),
})

const lit = join(page, 'node_modules/lit-html')
const vendored = 'LICENSE lit-html.js directive.js directive-helpers.js directives/repeat.js directives/live.js'
for (const file of vendored.split(' ')) {
  const text = await readFile(join(lit, file), 'utf8')
  await mkdir(join(out, 'vendor/lit-html/directives'), { recursive: true })
  await writeFile(join(out, 'vendor/lit-html', file), text.replace(/\n\/\/# sourceMappingURL=.*\n?$/, '\n'))
}

for (const file of ['demo/book.json', 'demo/orders.json', 'requests/correct.json']) {
  await cp(join(root, 'core/examples', file), join(out, 'demo', basename(file)))
}

// What the form of the book knows of documents is the library's: its schema, units and starter table.
const { properties, $defs } = JSON.parse(await readFile(join(root, 'core/schema/book.json'), 'utf8'))
const { materials: starter } = JSON.parse(await readFile(join(root, 'core/data/starter.json'), 'utf8'))
const kinds = await readFile(join(root, 'core/schema/FIELDS.md'), 'utf8')
const units = ['volume', 'mass', 'amount'].flatMap((kind) => {
  const row = new RegExp(`^\\| ${kind} \\|(.*)$`, 'm').exec(kinds)
  if (!row) throw new Error(`core/schema/FIELDS.md has no kind of value "${kind}"`)
  return [...row[1].matchAll(/`([^`]+)`/g)].map(([, unit]) => unit)
})
await mkdir(join(out, 'data'), { recursive: true })
await writeFile(join(out, 'data/form.json'), JSON.stringify({ properties, $defs, units, starter }))

const entries = await readdir(out, { recursive: true, withFileTypes: true })
const files = entries
  .filter((entry) => entry.isFile() && entry.name !== 'service-worker.js')
  .map((entry) => relative(out, join(entry.parentPath, entry.name)))
  .sort()
const hash = createHash('sha256')
for (const file of files) hash.update(file).update(await readFile(join(out, file)))
const worker = join(out, 'service-worker.js')
const text = await readFile(worker, 'utf8')
const list = ['./', ...files.filter((file) => !file.endsWith('LICENSE'))].map((file) => `'${file}'`).join(', ')
await writeFile(worker, text.replace('@VERSION@', hash.digest('hex').slice(0, 16)).replace("'@FILES@'", list))
