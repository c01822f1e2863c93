// The server of the page: what it refuses, and that no reader ends or fills it.
import assert from 'node:assert/strict'
import { execFileSync } from 'node:child_process'
import { mkdir, mkdtemp, readFile, rm, symlink, writeFile } from 'node:fs/promises'
import { request } from 'node:http'
import { request as secure } from 'node:https'
import { connect } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { test } from 'node:test'
import { brotliCompressSync, brotliDecompressSync, gunzipSync, gzipSync } from 'node:zlib'
import { serve } from '../tools/serve.mjs'

const LARGE = Buffer.alloc(32 << 20, 'x')

/** Serves a folder of its own next to a file that must not be read. */
async function served(limits, body) {
  const above = await mkdtemp(join(tmpdir(), 'pourwright-serve-'))
  const folder = join(above, 'page')
  await mkdir(join(folder, 'src'), { recursive: true })
  await writeFile(join(above, 'secret.txt'), 'secret')
  await writeFile(join(folder, 'index.html'), '<!doctype html>')
  await writeFile(join(folder, 'src/main.js'), 'export {}')
  await writeFile(join(folder, '.hidden'), 'secret')
  await writeFile(join(folder, 'empty.css'), '')
  await writeFile(join(folder, 'large.wasm'), LARGE)
  await writeFile(join(folder, 'other.bin'), 'x')
  await symlink(join(above, 'secret.txt'), join(folder, 'link.txt'))
  await symlink(above, join(folder, 'up'))
  execFileSync('mkfifo', [join(folder, 'pipe')])
  const server = await serve(folder, 0, '127.0.0.1', limits)
  try {
    await body(server.address().port, server, folder)
  } finally {
    server.closeAllConnections()
    await new Promise((done) => server.close(done))
    await rm(above, { recursive: true })
  }
}

/** The reply to a request whose path is sent as it is. */
function ask(port, path, method = 'GET', headers = {}) {
  return new Promise((resolve, reject) => {
    const asked = request({ port, path, method, headers, agent: false }, (reply) => {
      const parts = []
      reply.on('data', (part) => parts.push(part))
      reply.on('end', () => resolve({ status: reply.statusCode, headers: reply.headers, body: Buffer.concat(parts) }))
      reply.on('error', reject)
    })
    asked.on('error', reject).end()
  })
}

/** The text that comes back for raw bytes, until the server closes. */
function raw(port, text) {
  return new Promise((resolve) => {
    const socket = connect(port, '127.0.0.1', () => socket.write(text))
    let got = ''
    socket.on('data', (part) => (got += part)).on('error', () => {})
    socket.on('close', () => resolve(got))
  })
}

test('serves files with their types and lengths, and nothing to guess', () =>
  served({}, async (port) => {
    for (const [path, type, body] of [
      ['/', 'text/html; charset=utf-8', '<!doctype html>'],
      ['/index.html?x=1', 'text/html; charset=utf-8', '<!doctype html>'],
      ['/src/main.js', 'text/javascript; charset=utf-8', 'export {}'],
      ['/src/m%61in.js', 'text/javascript; charset=utf-8', 'export {}'],
      ['/empty.css', 'text/css; charset=utf-8', ''],
      ['/other.bin', 'application/octet-stream', 'x'],
    ]) {
      const reply = await ask(port, path)
      assert.deepEqual([reply.status, reply.headers['content-type'], String(reply.body)], [200, type, body], path)
      assert.equal(reply.headers['content-length'], String(body.length))
      assert.equal(reply.headers['x-content-type-options'], 'nosniff')
      const head = await ask(port, path, 'HEAD')
      const known = ({ date, ...others }) => others
      assert.deepEqual([head.status, known(head.headers)], [200, known(reply.headers)], path)
      assert.equal(head.body.length, 0)
    }
    const { headers, body } = await ask(port, '/large.wasm')
    assert.equal(headers['content-type'], 'application/wasm')
    assert.ok(body.equals(LARGE))
  }))

test('refuses other methods', () =>
  served({}, async (port) => {
    for (const method of ['POST', 'PUT', 'DELETE', 'OPTIONS', 'PATCH', 'TRACE', 'PROPFIND']) {
      const { status, headers } = await ask(port, '/', method)
      assert.deepEqual([status, headers.allow], [405, 'GET, HEAD'], method)
    }
    assert.match(await raw(port, 'NONSENSE\r\n\r\n'), /^HTTP\/1\.1 400 /)
    assert.equal((await ask(port, '/')).status, 200)
  }))

test('refuses links, ways out of its folder and odd addresses', () =>
  served({}, async (port) => {
    const paths =
      '/link.txt /up/secret.txt /up/page/index.html /../secret.txt /src/../../secret.txt /..%2fsecret.txt ' +
      '/%2e%2e/secret.txt /..%5csecret.txt /..\\secret.txt /%252e%252e/secret.txt /src/../index.html /.hidden /%00 /index.html%00 ' +
      '/% /%ff /%c0%ae%c0%ae/secret.txt //index.html /./index.html /src /pipe /none http://127.0.0.1/../secret.txt'
    for (const path of paths.split(' ')) {
      const { status, body } = await ask(port, path)
      assert.deepEqual([status, String(body)], [404, 'Not found\n'], path)
    }
    // The root of the machine is named by its full path.
    assert.match(
      await raw(port, 'GET /etc/passwd HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n'),
      /^HTTP\/1\.1 404 /,
    )
    assert.equal((await ask(port, '/')).status, 200)
  }))

test('limits the number of readers, and those who read or write slowly', () =>
  served({ readers: 3, request: 500, pause: 500 }, async (port, server) => {
    // Two ask for much and read nothing; one never ends its request.
    const idle = [0, 1].map(() => {
      const socket = connect(port, '127.0.0.1', () => socket.write('GET /large.wasm HTTP/1.1\r\nHost: x\r\n\r\n'))
      socket.on('error', () => {}).pause()
      return socket
    })
    const slow = raw(port, 'GET / HTTP/1.1\r\nHost')
    const count = () => new Promise((done) => server.getConnections((_, number) => done(number)))
    while ((await count()) < 3) await new Promise((done) => setTimeout(done, 10))
    assert.equal(await raw(port, 'GET / HTTP/1.1\r\nHost: x\r\n\r\n'), '')
    await slow
    while ((await count()) > 0) await new Promise((done) => setTimeout(done, 10))
    assert.equal((await ask(port, '/')).status, 200)
    for (const socket of idle) socket.destroy()
  }))

test('outlives readers who leave', () =>
  served({}, async (port) => {
    for (let reader = 0; reader < 50; reader += 1) {
      await new Promise((done) => {
        const socket = connect(port, '127.0.0.1', () => socket.write('GET /large.wasm HTTP/1.1\r\nHost: x\r\n\r\n'))
        socket.on('error', () => {}).once('data', () => socket.resetAndDestroy())
        socket.on('close', done)
      })
    }
    assert.equal((await ask(port, '/large.wasm')).body.length, LARGE.length)
    // Every file is closed again.
    await new Promise((done) => setTimeout(done, 100))
    const files = execFileSync('ls', ['-l', `/proc/${process.pid}/fd`], { encoding: 'utf8' })
    assert.ok(!files.includes('large.wasm'), files)
  }))

test('serves over https with a certificate of its own', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'pourwright-https-'))
  const [key, certificate] = ['key', 'certificate'].map((name) => join(folder, `${name}.pem`))
  const made = 'req -x509 -newkey ec -pkeyopt ec_paramgen_curve:prime256v1 -nodes -days 1 -subj /CN=test'.split(' ')
  execFileSync('openssl', [...made, '-keyout', key, '-out', certificate], { stdio: 'ignore' })
  await writeFile(join(folder, 'index.html'), '<!doctype html>')
  const server = await serve(folder, 0, '127.0.0.1', {}, folder)
  try {
    const ca = await readFile(certificate)
    const reply = await new Promise((resolve, reject) => {
      const { port } = server.address()
      const asked = { host: '127.0.0.1', port, path: '/', ca, checkServerIdentity: () => undefined }
      secure(asked, resolve).on('error', reject).end()
    })
    assert.equal(reply.statusCode, 200)
    assert.match(reply.headers['content-security-policy'], /frame-ancestors 'none'/)
    reply.resume()
  } finally {
    server.closeAllConnections()
    await new Promise((done) => server.close(done))
    await rm(folder, { recursive: true })
  }
})

test('sends the smallest encoding that a reader takes, and nothing that the reader has', () =>
  served({}, async (port, _, folder) => {
    await mkdir(join(folder, 'files'))
    const text = 'x'.repeat(999)
    for (const [file, body] of [
      ['files/page-ABCD2345.js', text],
      ['files/page-ABCD2345.js.br', brotliCompressSync(text)],
      ['files/page-ABCD2345.js.gz', gzipSync(text)],
      ['data.json', text],
      ['data.json.gz', gzipSync(text)],
    ])
      await writeFile(join(folder, file), body)
    const read = { br: brotliDecompressSync, gzip: gunzipSync, undefined: (body) => body }
    const file = '/files/page-ABCD2345.js'
    const tags = new Set()
    for (const [path, accepted, encoding] of [
      [file, undefined, undefined],
      [file, '', undefined],
      [file, 'identity', undefined],
      [file, 'gzip, deflate, br, zstd', 'br'],
      [file, 'gzip', 'gzip'],
      [file, 'br;q=0.5, gzip', 'gzip'],
      [file, 'br;q=0, gzip;q=0.1', 'gzip'],
      [file, '*', 'br'],
      [file, '*;q=0.1, br;q=0', 'gzip'],
      [file, 'BR ; Q=1', 'br'],
      [file, 'gzip;q=0, br;q=nonsense', undefined],
      ['/data.json', 'gzip, br', 'gzip'],
    ]) {
      const reply = await ask(port, path, 'GET', accepted === undefined ? {} : { 'accept-encoding': accepted })
      const { status, headers, body } = reply
      assert.deepEqual([status, headers['content-encoding']], [200, encoding], accepted)
      assert.equal(String(read[encoding](body)), text)
      assert.equal(headers['content-length'], String(body.length))
      assert.equal(headers.vary, 'accept-encoding')
      assert.match(headers['content-type'], path === file ? /^text\/javascript/ : /^application\/json/)
      const kept = path === file ? 'public, max-age=31536000, immutable' : 'no-cache'
      assert.equal(headers['cache-control'], kept)
      if (path === file) tags.add(`${headers.etag} ${encoding}`)
      const known = { 'if-none-match': `"other", W/${headers.etag}`, 'accept-encoding': accepted ?? 'identity' }
      const again = await ask(port, path, 'GET', known)
      assert.deepEqual([again.status, again.body.length, again.headers.etag], [304, 0, headers.etag], accepted)
    }
    // Each encoding has a tag of its own.
    assert.equal(tags.size, 3)
    // What is changed is sent again, and without the encodings that were made of it before.
    const { headers } = await ask(port, '/data.json', 'GET', { 'accept-encoding': 'gzip' })
    await writeFile(join(folder, 'data.json'), 'y'.repeat(999))
    const changed = await ask(port, '/data.json', 'GET', { 'accept-encoding': 'gzip', 'if-none-match': headers.etag })
    assert.deepEqual([changed.status, String(changed.body)], [200, 'y'.repeat(999)])
    assert.equal(changed.headers['content-encoding'], undefined)
  }))
