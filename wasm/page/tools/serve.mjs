// Serves a folder of files with the page's security headers: `node serve.mjs FOLDER [PORT [HOST [CERTIFICATE]]]`. It only
// reads, and only what is in the folder. CERTIFICATE is a folder with `key.pem` and `certificate.pem`, to serve over https.
// A file with another in brotli (`.br`) or gzip (`.gz`) next to it is sent so to readers who take that. Files of `files/` are named
// by their content: a browser keeps them for good. Of others it asks each time whether they have changed.
import { constants } from 'node:fs'
import { open, readFile, realpath } from 'node:fs/promises'
import { createServer } from 'node:http'
import { createServer as createSecureServer } from 'node:https'
import { extname, join, sep } from 'node:path'
import { pipeline } from 'node:stream'
import { fileURLToPath } from 'node:url'

const TYPES = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json',
  '.webmanifest': 'application/manifest+json',
  '.svg': 'image/svg+xml',
  '.wasm': 'application/wasm',
  '.png': 'image/png',
}

/** The encodings that a file may have, the smallest first, by the end of the name of the file that has it. */
const ENCODINGS = { br: '.br', gzip: '.gz' }

const HEADERS = {
  // The policy of the page's <meta>, and what only a header can set.
  'content-security-policy':
    "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; img-src 'self'; connect-src 'self'; " +
    "manifest-src 'self'; worker-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
}

/** How long a browser keeps a file: for good what is named by its content, else until it has asked again. */
const keptBy = (path) => (/^\/files\/.+-\w{8,}\.\w+$/.test(path) ? 'public, max-age=31536000, immutable' : 'no-cache')

/** Limits on readers: how many at once, and the milliseconds that a request, or a pause while it is read, may take. */
const LIMITS = { readers: 64, request: 10_000, pause: 20_000 }

/** A server of `folder`, listening at `port` of this machine's `host` (a free one for 0), over https with a `certificate`. */
export async function serve(folder, port = 0, host = '127.0.0.1', limits = {}, certificate = null) {
  const { readers, request, pause } = { ...LIMITS, ...limits }
  const root = await realpath(folder)
  const timeouts = { headersTimeout: request, requestTimeout: request, maxHeaderSize: 8192 }
  const server = certificate
    ? createSecureServer({ ...timeouts, ...(await keys(certificate)) })
    : createServer(timeouts)
  server.maxConnections = readers
  server.setTimeout(pause, (socket) => socket.destroy())
  server.on('clientError', (_, socket) => {
    if (socket.writable) socket.end('HTTP/1.1 400 Bad Request\r\nConnection: close\r\n\r\n')
    else socket.destroy()
  })
  server.on('request', (asked, response) => {
    answer(root, asked, response).catch(() => refuse(response, 500, 'This file cannot be read'))
  })
  return new Promise((resolve, reject) => {
    server.on('error', reject).listen(port, host, () => resolve(server))
  })
}

async function keys(folder) {
  const [key, cert] = await Promise.all(['key', 'certificate'].map((name) => readFile(join(folder, `${name}.pem`))))
  return { key, cert }
}

async function answer(root, request, response) {
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    // What a refused request still sends is not read.
    return refuse(response, 405, 'Only GET and HEAD are answered', { allow: 'GET, HEAD', connection: 'close' })
  }
  const path = pathOf(request.url)
  const file = path && (await opened(root, path))
  if (!file) return refuse(response, 404, 'Not found')
  const { encoding, handle, size, tag } = await smallest(root, path, file, request.headers['accept-encoding'])
  const headers = {
    ...HEADERS,
    'cache-control': keptBy(path),
    vary: 'accept-encoding',
    etag: tag,
  }
  if (isKnown(tag, request.headers['if-none-match'])) {
    response.writeHead(304, headers).end()
    return handle.close()
  }
  response.writeHead(200, {
    ...headers,
    'content-type': TYPES[extname(path)] ?? 'application/octet-stream',
    'content-length': size,
    ...(encoding && { 'content-encoding': encoding }),
  })
  if (request.method === 'HEAD' || size === 0) {
    response.end()
    return handle.close()
  }
  // The length that was announced, even if the file grows meanwhile. A reader who leaves ends the stream, and closes the file.
  pipeline(handle.createReadStream({ start: 0, end: size - 1 }), response, () => {})
}

/**
 * A file in the encoding that the reader likes best, the smallest of those that it likes alike; an encoded file that is older
 * than the plain one is not of it.
 */
async function smallest(root, path, plain, accepted) {
  for (const encoding of wanted(accepted)) {
    const encoded = await opened(root, `${path}${ENCODINGS[encoding]}`)
    if (!encoded) continue
    if (encoded.changed >= plain.changed) {
      await plain.handle.close()
      return { ...encoded, encoding, tag: tagOf(encoded, encoding) }
    }
    await encoded.handle.close()
  }
  return { ...plain, tag: tagOf(plain) }
}

const tagOf = ({ size, changed }, encoding = 'plain') => `"${size.toString(36)}-${changed.toString(36)}-${encoding}"`

/** The encodings that a reader takes, by their weights or that of `*` (RFC 9110, 12.5.3); a weight of 0 refuses one. */
function wanted(accepted = '') {
  const weights = new Map(
    accepted.split(',').map((one) => {
      const [name, ...parameters] = one.split(';').map((part) => part.trim().toLowerCase())
      const weight = parameters.find((parameter) => parameter.startsWith('q='))
      return [name, weight ? Number(weight.slice(2)) : 1]
    }),
  )
  const weightOf = (encoding) => weights.get(encoding) ?? weights.get('*') ?? 0
  return Object.keys(ENCODINGS)
    .filter((encoding) => weightOf(encoding) > 0)
    .sort((one, other) => weightOf(other) - weightOf(one))
}

/** Whether the reader has what the tag names (RFC 9110, 13.1.2). */
const isKnown = (tag, known = '') =>
  known.split(',').some((one) => one.trim() === '*' || one.trim().replace(/^W\//, '') === tag)

function refuse(response, status, words, more = {}) {
  if (response.headersSent) return response.destroy()
  response
    .writeHead(status, {
      ...HEADERS,
      'cache-control': 'no-cache',
      'content-type': 'text/plain; charset=utf-8',
      ...more,
    })
    .end(`${words}\n`)
}

/** The path in the folder that an address names; null if it is not plain: another encoding, a name with a dot first. */
function pathOf(address) {
  let path
  try {
    path = decodeURIComponent(address.split(/[?#]/, 1)[0])
  } catch {
    return null
  }
  if (path.endsWith('/')) path += 'index.html'
  return /^(\/[\w@-][\w.@ -]*)+$/.test(path) ? path : null
}

/** A file of the folder, open, with its size and when it was changed last; null if there is none, or it is behind a link. */
async function opened(root, path) {
  const name = join(root, path)
  let handle
  try {
    if ((await realpath(name)) !== name || !name.startsWith(root + sep)) return null
    // Without waiting for the other end of a pipe.
    handle = await open(name, constants.O_RDONLY | constants.O_NOFOLLOW | constants.O_NONBLOCK)
  } catch {
    return null
  }
  const stat = await handle.stat({ bigint: true })
  if (stat.isFile()) return { handle, size: Number(stat.size), changed: stat.mtimeNs }
  await handle.close()
  return null
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const [folder, port = '8017', host = '127.0.0.1', certificate = null] = process.argv.slice(2)
  await serve(folder, Number(port), host, {}, certificate)
  console.log(`${certificate ? 'https' : 'http'}://${host === '0.0.0.0' ? 'localhost' : host}:${port}/`)
}
