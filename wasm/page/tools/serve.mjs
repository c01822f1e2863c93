// Serves a folder of files with the page's security headers: `node serve.mjs FOLDER [PORT]`.
import { createServer } from 'node:http'
import { readFile } from 'node:fs/promises'
import { extname, join, normalize } from 'node:path'
import { fileURLToPath } from 'node:url'

const TYPES = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json',
  '.webmanifest': 'application/manifest+json',
  '.svg': 'image/svg+xml',
  '.wasm': 'application/wasm',
}

const HEADERS = {
  // The policy of the page's <meta>, and what only a header can set.
  'content-security-policy':
    "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; img-src 'self'; connect-src 'self'; " +
    "manifest-src 'self'; worker-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'cache-control': 'no-cache',
}

/** A server of `folder`, listening at `port` of this machine's `host` (a free one for 0). */
export function serve(folder, port = 0, host = '127.0.0.1') {
  const server = createServer(async (request, response) => {
    try {
      const path = normalize(decodeURIComponent(new URL(request.url, 'http://localhost').pathname))
      const file = path.endsWith('/') ? `${path}index.html` : path
      const body = await readFile(join(folder, file))
      response.writeHead(200, { ...HEADERS, 'content-type': TYPES[extname(file)] ?? 'application/octet-stream' })
      response.end(body)
    } catch {
      // A bad address is not found either.
      response.writeHead(404, HEADERS).end('Not found')
    }
  })
  return new Promise((resolve, reject) => {
    server.on('error', reject).listen(port, host, () => resolve(server))
  })
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const [folder, port = '8017', host = '127.0.0.1'] = process.argv.slice(2)
  await serve(folder, Number(port), host)
  console.log(`http://${host === '0.0.0.0' ? 'localhost' : host}:${port}/`)
}
