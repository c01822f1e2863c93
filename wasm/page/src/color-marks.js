// Opening pictures and marking in them: the card, the target, the sample; by finger, pointer or keyboard.
import { html, nothing, svg } from '../vendor/lit-html/lit-html.js'
import './marked-picture.js'
import {
  closePicture,
  faultsIn,
  KINDS,
  mark,
  markNext,
  openPictures,
  pictures,
  read,
  resize,
  stepName,
  unmark,
} from './color-pictures.js'
import { messages } from './faults.js'
import { field, textInput } from './fields.js'
import { once } from './press.js'
import { change, state } from './state.js'
import { apart, differenceText } from './swatch.js'
import { say } from './words.js'

/** The section: keys that open pictures, and the pictures with their marks. */
export function picturesPart() {
  return html`<section class="pictures" aria-labelledby="color-pictures">
    <h2 id="color-pictures">${say('pictures.title')}</h2>
    ${pictures.length ? nothing : howTo()}
    <div class="buttons">${opener(say('pictures.take'), true)} ${opener(say('pictures.open'), false)}</div>
    <p class="hint">${say('pictures.hint')}</p>
    ${pictures.map((picture) => marked(picture))} ${pictures.length ? card() : nothing}
  </section>`
}

function howTo() {
  return html`<ol class="how-to">
    <li>${say('pictures.howCard')}</li>
    <li>${say('pictures.howPicture')}</li>
    <li>${say('pictures.howTap')}</li>
  </ol>`
}

function opener(label, camera) {
  return html`<label class="button ${camera ? '' : 'quiet'}"
    >${label}<input
      type="file"
      accept="image/*"
      capture=${camera ? 'environment' : nothing}
      ?multiple=${!camera}
      class="out-of-sight"
      @change=${(event) => {
        openPictures([...event.target.files])
        event.target.value = ''
      }}
  /></label>`
}

/** The names of the marks: the steps of the card, then what is read. */
const names = () => [...state.color.steps.map((_, at) => stepName(at)), ...KINDS]

/** The words of a mark; `step` is the message for a further step of the card. */
function wordsOf(name, step = 'pictures.step') {
  if (KINDS.includes(name)) return say(name === 'target' ? 'pictures.target' : 'pictures.seen')
  const at = Number(name.split(' ')[1]) - 1
  return at ? say(step, { number: at + 1 }) : say('pictures.card')
}

function marked(picture) {
  const { id, name, width, height, marks, next } = picture
  const tap = (event) => {
    const box = event.currentTarget.getBoundingClientRect()
    const x = Math.round(((event.clientX - box.left) / box.width) * width)
    const y = Math.round(((event.clientY - box.top) / box.height) * height)
    picture.at = null
    mark(picture, next, x, y)
  }
  const done = names().filter((one) => marks[one])
  return html`<details class="marked" ?open=${picture.open} @toggle=${(event) => (picture.open = event.target.open)}>
    <summary>
      ${say('pictures.summary', { id, marks: done.map((one) => wordsOf(one)).join(', ') || say('pictures.unmarked') })}
    </summary>
    <figure aria-label=${say('pictures.picture', { id })}>
      <div class="keys-of" role="group" aria-label=${say('pictures.whatToMark', { id })}>
        ${names().map((one) => nameKey(picture, one))}
      </div>
      <p class="say" id="mark:${id}" role="status">
        ${say(marks[next] ? 'pictures.tapToMove' : 'pictures.tap', { what: html`<strong>${wordsOf(next)}</strong>` })}
      </p>
      <div class="frame">
        <marked-picture .bitmap=${picture.bitmap}></marked-picture>
        <svg
          role="application"
          tabindex="0"
          viewBox="0 0 ${width} ${height}"
          aria-label=${say('pictures.area', { id, name })}
          aria-describedby="mark:${id}"
          @click=${tap}
          @keydown=${(event) => moveByKey(event, picture)}
          @blur=${() => {
            picture.at = null
            change()
          }}
        >
          ${Object.entries(marks).map(([one, { x, y, radius }]) => ring(picture, one, x, y, radius))} ${cross(picture)}
        </svg>
      </div>
      ${messages(`picture/${id}`, faultsIn(picture))} ${outcome()}
      <div class="buttons">
        <button type="button" class="quiet" aria-label=${say('pictures.smaller')} @click=${() => resize(picture, 0.8)}>
          −
        </button>
        <span class="of-size">${say('pictures.mark')}</span>
        <button type="button" class="quiet" aria-label=${say('pictures.larger')} @click=${() => resize(picture, 1.25)}>
          +
        </button>
        ${
          marks[next]
            ? html`<button type="button" class="quiet" @click=${once('unmark', () => unmark(picture, next))}>
                ${say('pictures.removeMark')}
              </button>`
            : nothing
        }
        <button
          type="button"
          class="quiet"
          aria-label=${say('pictures.closeOne', { id })}
          @click=${once('close picture', () => closePicture(picture))}
        >
          ${say('pictures.close')}
        </button>
      </div>
    </figure>
  </details>`
}

/** How far sample and target are apart, next to the picture, and the way on: on a phone the rest is far below. */
function outcome() {
  const { target, seen } = state.color
  const difference = target && seen && apart(target.color, seen.color)
  if (!difference) return nothing
  const goOn = () => {
    const cup = document.getElementById('color-cup')
    cup.focus({ preventScroll: true })
    cup.scrollIntoView({ block: 'start' })
  }
  return html`<p class="say read-so">${differenceText(difference)}</p>
    <button type="button" class="quiet go-on" @click=${goOn}>${say('pictures.toDrops')}</button>`
}

function nameKey(picture, name) {
  const choose = () => {
    picture.next = name
    change()
  }
  const isNext = name === picture.next
  return html`<button type="button" class=${isNext ? '' : 'quiet'} aria-pressed=${isNext} @click=${choose}>
    ${picture.marks[name] ? html`<span aria-hidden="true">✓</span>` : nothing} ${wordsOf(name)}
  </button>`
}

/** A mark: a ring that shows on any color, and its word. */
function ring({ width, height }, name, x, y, radius) {
  const size = Math.max(width / 22, height / 30)
  const above = y - radius - size * 0.4
  const low = above < size ? y + radius + size * 1.1 : above
  return svg`<g class="ring">
    <circle class="under" cx=${x} cy=${y} r=${radius} vector-effect="non-scaling-stroke" />
    <circle cx=${x} cy=${y} r=${radius} vector-effect="non-scaling-stroke" />
    <text x=${Math.min(width - size * 2, Math.max(size * 2, x))} y=${low} font-size=${size}>${wordsOf(name, 'pictures.ringStep')}</text>
  </g>`
}

/** The cross that the keyboard moves. */
function cross({ at, width, height }) {
  if (!at) return nothing
  const path = `M${at.x} 0V${height}M0 ${at.y}H${width}`
  return svg`<path class="cross under" d=${path} vector-effect="non-scaling-stroke" />
    <path class="cross" d=${path} vector-effect="non-scaling-stroke" />`
}

const STEPS = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }

function moveByKey(event, picture) {
  const { width, height, next, marks } = picture
  const { x, y } = picture.at ?? marks[next] ?? { x: Math.round(width / 2), y: Math.round(height / 2) }
  if (event.key === 'Enter' || event.key === ' ') {
    event.preventDefault()
    return mark(picture, next, x, y)
  }
  const step = STEPS[event.key]
  if (!step) return
  event.preventDefault()
  const by = Math.max(1, Math.round(Math.min(width, height) * (event.shiftKey ? 0.005 : 0.03)))
  const within = (value, most) => Math.min(most - 1, Math.max(0, value))
  picture.at = { x: within(x + step[0] * by, width), y: within(y + step[1] * by, height) }
  change()
}

/** What the card reflects: one step, or several for the camera's curve. */
function card() {
  const { steps } = state.color
  const set = (steps) => {
    state.color = { ...state.color, steps }
    markNext()
    read()
  }
  return html`<div class="fields card-steps">
      ${steps.map((reflectance, at) => {
        const id = `color/card/${at}`
        const label = at ? say('pictures.stepReflects', { number: at + 1 }) : say('pictures.cardReflects')
        return field(
          label,
          id,
          textInput({ id, value: reflectance, size: 6, amount: true, set: (text) => set(steps.with(at, text)) }),
        )
      })}
      <div class="field ends">
        <button type="button" class="quiet" @click=${once('step', () => set([...steps, '18 %']))}>
          ${say('pictures.anotherStep')}
        </button>
        ${
          steps.length > 1
            ? html`<button
                type="button"
                class="quiet"
                @click=${once('step', () => {
                  for (const { marks } of pictures) delete marks[stepName(steps.length - 1)]
                  set(steps.slice(0, -1))
                })}
              >
                ${say('pictures.removeStep')}
              </button>`
            : nothing
        }
      </div>
    </div>
    <p class="hint">${say('pictures.cardHint')}</p>`
}

const imagesOf = ({ files }) => [...files].filter(({ type }) => type.startsWith('image/'))

/** Takes pictures that are dropped anywhere on the view, or pasted; a browser would show them in place of the page. */
function taken(event) {
  const transfer = event.dataTransfer ?? event.clipboardData
  if (location.hash !== '#color' || !transfer?.types.includes('Files')) return
  event.preventDefault()
  if (event.type !== 'dragover') openPictures(imagesOf(transfer))
}

for (const way of ['dragover', 'drop', 'paste']) addEventListener(way, taken)
