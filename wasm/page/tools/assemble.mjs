// Assembles the page from its sources, the npm package and lit-html: `node assemble.mjs OUT`. Scripts and styles are bundled; each
// file of `files/` is named by its content, and next to each file that shrinks is one in brotli and one in gzip.
import { createHash } from 'node:crypto'
import { cp, mkdir, readFile, readdir, rename, rm, writeFile } from 'node:fs/promises'
import { basename, join, relative } from 'node:path'
import { promisify } from 'node:util'
import { brotliCompress, constants, gzip } from 'node:zlib'
import { build } from 'esbuild'

const page = new URL('..', import.meta.url).pathname
const root = join(page, '../..')
const out = process.argv[2]
const library = join(root, 'bindings/js')
const lit = join(page, 'node_modules/lit-html')

await rm(out, { recursive: true, force: true })
await mkdir(join(out, 'files'), { recursive: true })

/** The name of a file of `files/` with this content; written if it is not there yet. */
async function named(name, content) {
  const [stem, end] = name.split(/(?=\.\w+$)/)
  const file = `${stem}-${hashOf(content).slice(0, 12)}${end}`
  await writeFile(join(out, 'files', file), content)
  return file
}

const hashOf = (content) => createHash('sha256').update(content).digest('hex')

/** Sources that are files of their own, by the name that others import them by: what begins, and languages, loaded on demand. */
const apart = new Map()

/** What sources import by the name that it has in the page: the library, lit-html, and languages. */
const found = {
  name: 'found',
  setup(build) {
    build.onResolve({ filter: /^\.\// }, ({ path, kind }) =>
      apart.has(path) && kind !== 'entry-point' ? { path: `./${apart.get(path)}`, external: true } : undefined,
    )
    const at = (part, folder) =>
      build.onResolve({ filter: new RegExp(`/${part}/`) }, ({ path }) => ({
        path: join(folder, path.split(`/${part}/`)[1]),
      }))
    at('pourwright', library)
    at('vendor/lit-html', lit)
  },
}

/** Bundles a source; the name of its file. */
async function bundled(source) {
  const { metafile } = await build({
    absWorkingDir: page,
    entryPoints: [source],
    outdir: join(out, 'files'),
    entryNames: '[name]-[hash]',
    bundle: true,
    format: 'esm',
    target: 'esnext',
    minify: process.env.PLAIN !== '1',
    sourcemap: 'linked',
    legalComments: 'eof',
    metafile: true,
    logLevel: 'warning',
    plugins: [found],
    define: { FILES: JSON.stringify(files) },
  })
  const own = Object.entries(metafile.outputs).find(([, { entryPoint }]) => entryPoint?.endsWith(source))
  return basename(own[0])
}

const example = async (file) => JSON.parse(await readFile(join(root, 'core/examples', file), 'utf8'))
const [book, orders, correct] = await Promise.all(
  ['demo/book.json', 'demo/orders.json', 'requests/correct.json'].map(example),
)

// What the form of the book knows of documents is the library's: its schema, units and starter table.
const { properties, $defs } = JSON.parse(await readFile(join(root, 'core/schema/book.json'), 'utf8'))
const { materials: starter } = JSON.parse(await readFile(join(root, 'core/data/starter.json'), 'utf8'))
const kinds = await readFile(join(root, 'core/schema/FIELDS.md'), 'utf8')
const units = ['volume', 'mass', 'amount'].flatMap((kind) => {
  const row = new RegExp(`^\\| ${kind} \\|(.*)$`, 'm').exec(kinds)
  if (!row) throw new Error(`core/schema/FIELDS.md has no kind of value "${kind}"`)
  return [...row[1].matchAll(/`([^`]+)`/g)].map(([, unit]) => unit)
})

/** A part of the library's module. */
const part = async (name) =>
  named(`pourwright-${name}.wasm`, await readFile(join(library, `build/pourwright_${name}_bg.wasm`)))

const files = {
  first: await part('first'),
  rest: await part('rest'),
  demo: await named('demo.json', JSON.stringify({ book, orders, correct })),
  form: await named('form.json', JSON.stringify({ properties, $defs, units, starter })),
}
files.worker = await bundled('src/plan-worker.js')
apart.set('./begin.js', await bundled('src/begin.js'))
for (const file of await readdir(join(page, 'src/words'))) {
  if (/^(?!en\b).*\.js$/.test(file)) apart.set(`./words/${file}`, await bundled(`src/words/${file}`))
}
const main = await bundled('src/page.js')
const style = await bundled('static/styles.css')
const styles = await readFile(join(page, 'static/styles.css'), 'utf8')
for (const file of await readdir(join(page, 'static'))) {
  const isLeftOut = /(?<!^styles)\.css$/.test(file) && !styles.includes(`./${file}'`)
  if (isLeftOut) throw new Error(`static/styles.css does not import ${file}`)
}

await cp(join(page, 'static'), out, { recursive: true, filter: (file) => !file.endsWith('.css') })
await cp(join(lit, 'LICENSE'), join(out, 'files/lit-html.LICENSE'))

/** Puts what the build knows into a file of `static/`. */
async function fill(file, values) {
  const text = await readFile(join(out, file), 'utf8')
  const filled = text.replaceAll(/@([A-Z]+)@/g, (mark, name) => values[name] ?? mark)
  await writeFile(join(out, file), filled)
}
await fill('index.html', {
  BEGIN: `files/${apart.get('./begin.js')}`,
  MAIN: `files/${main}`,
  STYLE: `files/${style}`,
  FIRST: `files/${files.first}`,
})

const all = async () =>
  (await readdir(out, { recursive: true, withFileTypes: true }))
    .filter((entry) => entry.isFile())
    .map((entry) => relative(out, join(entry.parentPath, entry.name)))
    .sort()

// The service worker stores what a visit without the server needs.
const needed = (await all()).filter((file) => !/\.(map|LICENSE)$|^service-worker\.js$/.test(file))
const version = createHash('sha256')
for (const file of needed) version.update(file).update(await readFile(join(out, file)))
await fill('service-worker.js', {
  VERSION: version.digest('hex').slice(0, 16),
  FILES: ['./', ...needed].join(' '),
})

// Compressing well takes seconds, so that what has been compressed once is kept, by its content. Maps are for developers only.
const kept = `${out}-compressed`
await mkdir(kept, { recursive: true })
const waysOf = (size) => ({
  br: (bytes) =>
    promisify(brotliCompress)(bytes, {
      params: { [constants.BROTLI_PARAM_QUALITY]: 11, [constants.BROTLI_PARAM_SIZE_HINT]: size },
    }),
  gz: (bytes) => promisify(gzip)(bytes, { level: 9 }),
})
const used = new Set()

async function compress(file) {
  const bytes = await readFile(join(out, file))
  await Promise.all(
    Object.entries(waysOf(bytes.length)).map(async ([end, way]) => {
      const name = `${hashOf(bytes)}.${end}`
      used.add(name)
      let small = await readFile(join(kept, name)).catch(() => null)
      if (!small) {
        small = await way(bytes)
        await writeFile(join(kept, `${name}.new`), small)
        await rename(join(kept, `${name}.new`), join(kept, name))
      }
      if (small.length < 0.9 * bytes.length) await writeFile(join(out, `${file}.${end}`), small)
    }),
  )
}
await Promise.all((await all()).filter((file) => !/\.(png|map|LICENSE)$/.test(file)).map(compress))
for (const name of await readdir(kept)) if (!used.has(name)) await rm(join(kept, name))
