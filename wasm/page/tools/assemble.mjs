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
