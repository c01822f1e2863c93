// The size for gloves: keys of 20 mm, and the step in capitals of 5 mm. How many pixels a millimeter has on this screen only the
// maker can see, who sets it once by a ruler or a card held to the screen.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { once } from './press.js'
import { change, onChange, state } from './state.js'
import { say } from './words.js'

/** Pixels of a millimeter: what style sheets assume, and how far a screen may be from it. */
const [USUAL, LEAST, MOST] = [96 / 25.4, 2, 14]

/** The length that is set by, in mm: the short edge of a bank or identity card (ISO/IEC 7810, ID-1), which fits a phone. */
const EDGE = 53.98

/** The millimeter that is being set; null if none is. */
let setting = null

const gloves = (parts) => change({ gloves: { ...state.gloves, ...parts } })

/** Applies the size to the whole page; called once. */
export function followGloves() {
  let last = null
  onChange(() => {
    if (state.gloves === last) return
    last = state.gloves
    const { on, mm } = last
    const root = document.documentElement
    root.style.setProperty('--mm', `${mm ?? USUAL}px`)
    if (on) root.dataset.size = 'gloves'
    else delete root.dataset.size
  })
}

/** The section of the book's view. */
export function glovesSize() {
  const { on, mm } = state.gloves
  const begin = () => {
    setting = mm ?? USUAL
    change()
  }
  const turn = () => (mm === null ? begin() : gloves({ on: !on }))
  return html`<div class="gloves">
    <div class="buttons">
      <button
        type="button"
        role="switch"
        class=${on ? '' : 'quiet'}
        aria-checked=${on ? 'true' : 'false'}
        @click=${once('gloves', turn)}
      >
        ${say('gloves.size')}
      </button>
      ${mm === null ? nothing : html`<button type="button" class="quiet" @click=${begin}>${say('gloves.again')}</button>`}
    </div>
    <p class="hint">${say('gloves.hint')}</p>
    ${setting === null ? nothing : ruler()}
  </div>`
}

/** A bar to make as long as the edge of a card. */
function ruler() {
  const to = (mm) => {
    setting = Math.min(MOST, Math.max(LEAST, mm))
    change()
  }
  const done = (on) => {
    const mm = setting
    setting = null
    if (on) gloves({ on: true, mm })
    else change()
  }
  // A policy without inline styles lets scripts set them.
  requestAnimationFrame(() =>
    document.querySelector('.ruler-bar')?.style.setProperty('width', `${EDGE * (setting ?? 0)}px`),
  )
  return html`<div class="ruler" role="group" aria-label=${say('gloves.ruler')}>
    <p>
      ${say('gloves.hold', { edge: html`<strong>${say('gloves.edge')}</strong>`, length: html`<strong>54 mm</strong>` })}
    </p>
    <div class="ruler-bar" aria-hidden="true"></div>
    <label for="ruler">${say('gloves.length')}</label>
    <input
      id="ruler"
      type="range"
      min=${LEAST}
      max=${MOST}
      step="0.01"
      aria-valuetext=${say('gloves.pixels', { count: Math.round(EDGE * setting) })}
      .value=${String(setting)}
      @input=${(event) => to(Number(event.target.value))}
    />
    <div class="buttons">
      <button type="button" class="quiet" @click=${() => to(setting - 0.02)}>${say('gloves.shorter')}</button>
      <button type="button" class="quiet" @click=${() => to(setting + 0.02)}>${say('gloves.longer')}</button>
      <button type="button" @click=${once('ruler', () => done(true))}>${say('gloves.done')}</button>
      <button type="button" class="quiet" @click=${once('ruler', () => done(false))}>${say('gloves.leave')}</button>
    </div>
  </div>`
}
