// The keyboard: single keys for what is done at the bench, a list of them, and what is next in words for those who hear the page.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { isAnyPadOpen, typeOnPad } from './pad.js'
import { once } from './press.js'
import { change, state } from './state.js'
import { isOwn } from './steps.js'
import { language, local, say } from './words.js'

/** What a key presses at the bench, in the order of the list. */
const AT_THE_BENCH = {
  d: '.foot .done-next',
  t: '.foot .reading input',
  b: '[data-way]',
  o: '.other',
  s: '.skip-step',
  l: '.loads-key',
  '+': '.count .more',
  '-': '.count .less',
  u: '.undo-key',
  w: 'button.whole',
}

/** Whether the list is shown. */
let isOpen = false

function turn(open = !isOpen) {
  isOpen = open
  change()
}

const isTyping = ({ target }) => target.closest?.('input:not([type="radio"], [type="range"]), textarea, select, dialog')

/** Presses by a single key; `views` are those of the page, by number. Without single keys, only the list opens. */
export function pressByKey(event, views) {
  if (event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey || isTyping(event)) return
  const { key } = event
  if (key === '?' || (key === 'Escape' && isOpen)) {
    event.preventDefault()
    return turn(key === '?' ? !isOpen : false)
  }
  if (!state.shortcuts) return
  const isBench = ['', '#bench'].includes(location.hash)
  if (isBench && isAnyPadOpen() && typeOnPad(key)) return event.preventDefault()
  const view = views[Number(key) - 1]
  if (view) {
    location.hash = `#${view}`
    return
  }
  const found = isBench && document.querySelector(AT_THE_BENCH[key.toLowerCase()] ?? 'never')
  if (!found || found.disabled) return
  event.preventDefault()
  if (found.matches('input')) found.focus()
  else found.click()
}

/** The key that shows the list, where there may be a keyboard. */
export const keysKey = () =>
  html`<button
    type="button"
    class="quiet keys-key"
    aria-expanded=${isOpen ? 'true' : 'false'}
    aria-label=${say('keys.title')}
    @click=${once('keys', () => turn())}
  >
    ?
  </button>`

/** The list of the keys. */
export function keysList(views) {
  if (!isOpen) return nothing
  const rows = [
    ...Object.keys(AT_THE_BENCH).map((key) => [key.toUpperCase(), say(`keys.${NAMES[key] ?? key}`)]),
    [`1–${views.length}`, say('keys.views')],
    ['?', say('keys.list')],
  ]
  return html`<section class="keys-list" aria-label=${say('keys.title')}>
    <h2>${say('keys.title')}</h2>
    <dl>
      ${rows.map(
        ([key, words]) =>
          html`<div>
            <dt><kbd>${key}</kbd></dt>
            <dd>${words}</dd>
          </div>`,
      )}
    </dl>
    <div class="buttons">
      <button
        type="button"
        role="switch"
        class=${state.shortcuts ? '' : 'quiet'}
        aria-checked=${state.shortcuts ? 'true' : 'false'}
        @click=${() => change({ shortcuts: !state.shortcuts })}
      >
        ${say('keys.single')}
      </button>
      <button type="button" class="quiet" @click=${() => turn(false)}>${say('keys.close')}</button>
    </div>
  </section>`
}

/** Keys that are not letters have names in the messages. */
const NAMES = { '+': 'more', '-': 'less' }

/** The item that was next at the last draw; undefined before the first. */
let last

/** Says what is next once that has changed; null is nothing, all is done. */
export function announceNext(now) {
  const id = now?.item.id ?? null
  const isFirst = last === undefined
  if (id === last) return
  last = id
  if (isFirst) return
  // The step that is shown alone has changed: its words are at the top.
  if (document.querySelector('.single')) requestAnimationFrame(() => scrollTo(0, 0))
  const words = now ? say('keys.next', { pot: now.step.pots.join(' + '), what: spoken(now) }) : say('step.allDone')
  queueMicrotask(() => document.getElementById('said')?.replaceChildren(...[words].flat()))
}

/** What is next, as text, or as an element in the language of the library. */
function spoken({ step, item }) {
  const text = step.kind === 'heat' ? step.of.text : item.say
  if (language() === 'en' || isOwn(item)) return text
  return Object.assign(document.createElement('span'), { lang: 'en', textContent: local(text) })
}
