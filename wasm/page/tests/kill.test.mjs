// The browser is killed in the middle of changes: only what was not stored yet is lost.
import assert from 'node:assert/strict'
import { readFile, readdir, rm, mkdtemp } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { test } from 'node:test'
import { chromium } from 'playwright-core'
import { serve } from '../tools/serve.mjs'
import { QUIET, built, withSources } from './support.mjs'

/** Kills all processes of the browser that uses this profile, at once. */
async function kill(profile) {
  const running = (await readdir('/proc')).filter((name) => /^\d+$/.test(name))
  const lines = await Promise.all(running.map((pid) => readFile(`/proc/${pid}/cmdline`, 'utf8').catch(() => '')))
  const own = running.filter((_, at) => lines[at].includes(profile))
  assert.ok(own.length > 0)
  for (const pid of own) {
    try {
      process.kill(Number(pid), 'SIGKILL')
    } catch {
      // It went with its parent.
    }
  }
}

async function opened(profile, address) {
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
    args: QUIET.split(' '),
    serviceWorkers: 'block',
  })
  const [page] = context.pages()
  await withSources(context)
  await page.goto(`${address}#orders`)
  await page.locator('html[data-whole]').waitFor()
  return { context, page }
}

const stateOf = (page) =>
  page.evaluate(async () => {
    const { state } = await import('./src/state.js')
    const { orders, book, one, notice } = state
    return { pieces: orders.lines[0].pieces, day: orders.day, lines: orders.lines.length, base: one.base, book, notice }
  })

/**
 * Edits without a pause, the same number into two parts of the state, each in one change. The page reports the last number
 * that was in the state and the last that is on disk.
 */
const edit = (page, from) =>
  page.evaluate(async (from) => {
    const { change, state } = await import('./src/state.js')
    let number = from
    setInterval(() => {
      number += 1
      const [first, ...others] = state.orders.lines
      // Of a size that differs, so that a torn text would be seen.
      const about = 'x'.repeat((number * 7919) % 60_000)
      change({
        orders: {
          ...state.orders,
          lines: [{ ...first, pieces: (number % 900) + 1 }, ...others],
          ext: { number, about },
        },
        one: { ...state.one, base: `${number} cup` },
      })
      globalThis.edited(number)
    }, 1)
    // What a transaction has completed, read back from the database itself.
    const database = await new Promise((done) => {
      const opening = indexedDB.open('pourwright')
      opening.onsuccess = () => done(opening.result)
    })
    let last = ''
    new MutationObserver(() => {
      const { stored } = document.documentElement.dataset
      if (stored === last) return
      last = stored
      const get = database.transaction('state').objectStore('state').get('all')
      get.onsuccess = () => globalThis.onDisk(JSON.parse(get.result).orders.ext?.number ?? 0)
    }).observe(document.documentElement, { attributeFilter: ['data-stored'] })
  }, from)

test('a killed browser loses only what was not stored yet', async () => {
  const profile = await mkdtemp(join(tmpdir(), 'pourwright-kill-'))
  const server = await serve(built)
  const address = `http://127.0.0.1:${server.address().port}/`
  const lost = []
  try {
    let number = 0
    let book = null
    for (const after of [700, 350, 911, 523]) {
      const { context, page } = await opened(profile, address)
      let [last, safe] = [number, number]
      await page.exposeFunction('edited', (made) => (last = Math.max(last, made)))
      await page.exposeFunction('onDisk', (made) => (safe = Math.max(safe, made)))
      const before = await stateOf(page)
      book ??= before.book
      const closed = context.waitForEvent('close')
      await edit(page, number)
      // A busy machine may take its time for the first one.
      for (let waited = 0; safe === number; waited += 1) {
        assert.ok(waited < 3000, 'nothing was stored')
        await new Promise((done) => setTimeout(done, 10))
      }
      await new Promise((done) => setTimeout(done, after))
      await kill(profile)
      await closed

      const again = await opened(profile, address)
      const state = await stateOf(again.page)
      const ext = await again.page.evaluate(async () => (await import('./src/state.js')).state.orders.ext)
      await again.context.close()
      // What was on disk is there; what was made while the browser was killed may be.
      assert.ok(ext.number >= safe, `${ext.number} of ${safe} stored`)
      // The page may have made a few more that it could not report.
      assert.ok(ext.number <= last + 50, `${ext.number} of ${last} made`)
      lost.push(Math.max(0, last - ext.number))
      // All parts are of one moment, and whole.
      assert.equal(state.pieces, (ext.number % 900) + 1)
      assert.equal(state.base, `${ext.number} cup`)
      assert.equal(ext.about.length, (ext.number * 7919) % 60_000)
      assert.equal(state.lines, 10)
      assert.deepEqual(state.book, book)
      assert.equal(state.notice, '')
      number = ext.number
    }
    console.log(`# edits lost by a kill, of one each millisecond or so: ${lost.join(', ')}`)
  } finally {
    server.close()
    server.closeAllConnections()
    await rm(profile, { recursive: true, force: true, maxRetries: 5 })
  }
})

test('an edit that the page has shown as stored survives a kill right after it', async () => {
  const profile = await mkdtemp(join(tmpdir(), 'pourwright-kill-'))
  const server = await serve(built)
  const address = `http://127.0.0.1:${server.address().port}/`
  try {
    for (const pieces of ['31', '47', '52']) {
      const { context, page } = await opened(profile, address)
      const field = page.getByRole('textbox', { name: 'Pieces', exact: true }).first()
      const stored = await page.evaluate(() => document.documentElement.dataset.stored)
      const closed = context.waitForEvent('close')
      await field.fill(pieces)
      await page.waitForFunction((stored) => document.documentElement.dataset.stored !== stored, stored)
      await kill(profile)
      await closed
      const again = await opened(profile, address)
      assert.equal((await stateOf(again.page)).pieces, Number(pieces))
      await again.context.close()
    }
  } finally {
    server.close()
    server.closeAllConnections()
    await rm(profile, { recursive: true, force: true, maxRetries: 5 })
  }
})
