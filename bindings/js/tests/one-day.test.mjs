// The example that goes through a day prints the log in the repository, as the one in Python does.
import assert from 'node:assert/strict'
import { spawnSync } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import { test } from 'node:test'

import { read, root } from './support.mjs'

test('one day', () => {
  const folder = fileURLToPath(new URL('core/examples/demo/one-day', root))
  const done = spawnSync(process.execPath, ['one-day.mjs', folder], { encoding: 'utf8' })
  assert.deepEqual([done.status, done.stderr], [0, ''])
  assert.deepEqual(done.stdout.split('\n'), read('core/examples/demo/one-day/log.md').split('\n'))
})
