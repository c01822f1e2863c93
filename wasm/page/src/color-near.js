// The formulas of the book that are nearest to the target, the colors that the book keeps, and the test pieces of a colorant.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { asked } from './asked.js'
import { dated } from './color-cup.js'
import { editBook } from './edits.js'
import { messages } from './faults.js'
import { choice, field } from './fields.js'
import { once } from './press.js'
import { reply, variant } from './replies.js'
import { change, state } from './state.js'
import { differenceText, hexOf, labOf, swatch } from './swatch.js'

const edit = (parts) => change({ color: { ...state.color, ...parts } })

/** The sections. */
export function nearPart() {
  return html`<section class="near" aria-labelledby="color-near">
      <h2 id="color-near">Which of my formulas is nearest?</h2>
      ${state.color.target ? nearest() : html`<p class="hint">Read a target first.</p>`} ${keepColor()}
    </section>
    ${testPieces()}`
}

/** The book without the colors that were seen: its formulas are then calculated from test pieces. */
const withoutSeen = () =>
  variant(state.book, 'calculated', (book) => ({
    ...book,
    formulas: Object.fromEntries(
      Object.entries(book.formulas ?? {}).map(([name, { color, ...formula }]) => [name, formula]),
    ),
  }))

function nearest() {
  const { target } = state.color
  const request = { calculate: 'color-nearest', color: target.color }
  const { answer, faults } = reply(request, state.book)
  if (!answer) return messages('color/near', faults)
  const seen = answer.formulas.some(({ was_seen }) => was_seen)
  const calculated = seen ? (reply(request, withoutSeen()).answer?.formulas ?? []) : []
  return html`<ol class="nearest">
      ${answer.formulas.map((one) => near(one, target, one.was_seen && calculated.find(({ formula }) => formula === one.formula)))}
    </ol>
    ${answer.formulas.length ? nothing : html`<p class="hint">The book knows the color of no formula.</p>`}
    ${
      answer.not_known.length
        ? html`<details>
            <summary>${answer.not_known.length} of which no color is known</summary>
            <ul>
              ${answer.not_known.map(({ formula, why }) => html`<li><strong>${formula}</strong> ${why}</li>`)}
            </ul>
          </details>`
        : nothing
    }
    <p class="hint">${answer.statement}</p>
    ${asked([request, answer])}`
}

/** A formula next to the target; one that was seen also as it is calculated. */
function near({ formula, color, was_seen, difference, notes }, target, calculated) {
  const how = was_seen ? 'as seen' : 'as calculated'
  return html`<li>
    <div class="pair">${swatch(target.hex, 'Target')}${swatch(hexOf(labOf(color)), `${formula}, ${how}`)}</div>
    <div>
      <p><strong>${formula}</strong> <small>${how}</small></p>
      <p>${differenceText(difference)}</p>
      ${
        calculated
          ? html`<p class="also">
              ${swatch(hexOf(labOf(calculated.color)), `${formula}, as calculated`, 'small')} As calculated:
              ${differenceText(calculated.difference)}
            </p>`
          : nothing
      }
      ${notes.map(({ message }) => html`<p class="hint">${message}</p>`)}
    </div>
  </li>`
}

/** Keeps the color of the sample as that of a formula. */
function keepColor() {
  const { seen, piece } = state.color
  const names = Object.keys(state.book.formulas ?? {})
  const keep = () => editBook(['formulas', piece, 'color'], dated(seen.color), `The color of ${piece}, as seen.`)
  return html`<div class="fields">
      ${field(
        'The sample is a piece of',
        'color/piece',
        choice({
          id: 'color/piece',
          value: names.includes(piece) ? piece : '',
          names,
          set: (piece) => edit({ piece }),
        }),
      )}
      <div class="field ends">
        <button
          type="button"
          class="quiet"
          ?disabled=${!seen || !names.includes(piece)}
          @click=${once('keep color', keep)}
        >
          Keep its color in the book
        </button>
      </div>
    </div>
    <p class="hint">Order lines and pots then show it, and next year's pot can be compared with it.</p>`
}

/** The guided series: which test pieces of a colorant to pour, and their readings into the book. */
function testPieces() {
  const { series, seen } = state.color
  const names = Object.entries(state.book.materials ?? {})
    .filter(([, entry]) => entry?.kind === 'colorant')
    .map(([name]) => name)
  const request = names.includes(series) ? { calculate: 'let-down-series', colorant: series } : null
  const { answer = null, faults = [] } = request ? reply(request, state.book) : {}
  return html`<section class="series" aria-labelledby="color-series">
    <h2 id="color-series">Test pieces of a colorant</h2>
    <div class="fields">
      ${field('Colorant', 'color/series', choice({ id: 'color/series', value: request ? series : '', names, set: (series) => edit({ series }) }))}
    </div>
    ${messages('color/series', faults)}
    ${
      answer
        ? html`${answer.text.map((line) => html`<p>${line}</p>`)}
            <p class="hint">
              ${seen ? 'Which of them is the sample that was read?' : 'Read a piece as the sample: then it can be written into the book.'}
            </p>
            <div class="buttons">${answer.pieces.map((piece) => pieceKey(series, piece, seen))}</div>
            ${there(series)} ${asked([request, answer])}`
        : nothing
    }
  </section>`
}

function pieceKey(colorant, { dose, base_mass }, seen) {
  const base = state.book.default_base
  const pieces = state.book.materials[colorant].let_downs ?? []
  const write = () =>
    dose
      ? editBook(
          ['materials', colorant, 'let_downs'],
          [...pieces, { dose, base_mass: base_mass.text, color: dated(seen.color) }],
          `A test piece of ${colorant}: ${dose}.`,
        )
      : editBook(['materials', base, 'color'], dated(seen.color), `The color of ${base} alone.`)
  return html`<button type="button" class="quiet" ?disabled=${!seen || (!dose && !base)} @click=${once('piece', write)}>
    ${dose ? `${dose} in ${base_mass.text}` : 'base alone'}
  </button>`
}

/** The test pieces that the book has. */
function there(colorant) {
  const pieces = state.book.materials[colorant].let_downs ?? []
  if (!pieces.length) return html`<p class="hint">The book has none of ${colorant} yet.</p>`
  return html`<ul class="log">
    ${pieces.map(
      ({ dose, base_mass, color }) =>
        html`<li>
          ${swatch(color ? hexOf(color) : null, `${dose} in ${base_mass}`, 'small')} In the book: ${dose} in
          ${base_mass}
        </li>`,
    )}
  </ul>`
}
