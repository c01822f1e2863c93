// A new version of the page: it waits, stored, until the person takes it.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { endPlanning } from './planning.js'
import { once } from './press.js'
import { change, state } from './state.js'
import { keepNow } from './storage.js'
import { say } from './words.js'

/** How often a page that stays open looks for a new version, in milliseconds. */
const PAUSE = 3_600_000

/** The new version that waits. */
let waiting = null

/** Registers the service worker, and looks for new versions. Over plain http from another machine a browser has none. */
export async function watchForUpdate() {
  const { serviceWorker } = navigator
  if (!serviceWorker) return
  // The first worker of a browser takes over a page that is the same version.
  let isFirst = serviceWorker.controller === null
  // Another tab may have taken the new version: this one follows, as its worker is gone.
  serviceWorker.addEventListener('controllerchange', () => {
    if (!isFirst) {
      keepNow()
      endPlanning()
      location.reload()
    }
    isFirst = false
  })
  const registration = await serviceWorker.register(new URL('../service-worker.js', import.meta.url))
  // Where workers are blocked there is none.
  if (!registration) return
  const offer = () => {
    waiting = registration.waiting
    if (state.update !== Boolean(waiting)) change({ update: Boolean(waiting) })
  }
  if (!isFirst) offer()
  registration.addEventListener('updatefound', () => {
    const { installing } = registration
    installing?.addEventListener('statechange', () => {
      if (installing.state === 'installed' && serviceWorker.controller) offer()
    })
  })
  let looked = Date.now()
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState !== 'visible' || Date.now() - looked < PAUSE) return
    looked = Date.now()
    // Without the network there is nothing new.
    registration.update().catch(() => {})
  })
}

/** The offer of a new version. */
export function updateNotice() {
  if (!state.update) return nothing
  return html`<p class="notice" role="status">
    ${say('update.here')}
    <button type="button" @click=${once('update', () => waiting?.postMessage('now'))}>${say('update.use')}</button>
  </p>`
}
