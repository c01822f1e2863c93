// The formulas of the book that are nearest to the target, the colors that the book keeps, and the test pieces of a colorant.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { asked } from './asked.js'
import { dated } from './color-cup.js'
import { editBook } from './edits.js'
import { messages } from './faults.js'
import { choice, field } from './fields.js'
import { once } from './press.js'
import { reply, variant } from './replies.js'
import { ofLibrary } from './library.js'
import { change, state } from './state.js'
import { differenceText, hexOf, labOf, swatch } from './swatch.js'
import { amount, local, message, say } from './words.js'

const edit = (parts) => change({ color: { ...state.color, ...parts } })

/** The sections. */
export function nearPart() {
  return html`<section class="near" aria-labelledby="color-near">
      <h2 id="color-near">${say('near.title')}</h2>
      ${state.color.target ? nearest() : html`<p class="hint">${say('near.noTarget')}</p>`} ${keepColor()}
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
    ${answer.formulas.length ? nothing : html`<p class="hint">${say('near.knowsNone')}</p>`}
    ${
      answer.not_known.length
        ? html`<details>
            <summary>${say('near.unknown', { count: answer.not_known.length })}</summary>
            <ul>
              ${answer.not_known.map(({ formula, why }) => html`<li><strong>${formula}</strong> ${ofLibrary(why)}</li>`)}
            </ul>
          </details>`
        : nothing
    }
    <p class="hint">${ofLibrary(answer.statement)}</p>
    ${asked([request, answer])}`
}

/** A formula next to the target; one that was seen also as it is calculated. */
function near({ formula, color, was_seen, difference, notes }, target, calculated) {
  const how = say(was_seen ? 'near.asSeen' : 'near.asCalculated')
  return html`<li>
    <div class="pair">
      ${swatch(target.hex, say('color.target'))}${swatch(hexOf(labOf(color)), say('near.swatch', { formula, how }))}
    </div>
    <div>
      <p><strong>${formula}</strong> <small>${how}</small></p>
      <p>${differenceText(difference)}</p>
      ${
        calculated
          ? html`<p class="also">
              ${swatch(hexOf(labOf(calculated.color)), say('near.swatch', { formula, how: say('near.asCalculated') }), 'small')}
              ${say('near.also')} ${differenceText(calculated.difference)}
            </p>`
          : nothing
      }
      ${notes.map(({ message }) => html`<p class="hint">${ofLibrary(message)}</p>`)}
    </div>
  </li>`
}

/** Keeps the color of the sample as that of a formula. */
function keepColor() {
  const { seen, piece } = state.color
  const names = Object.keys(state.book.formulas ?? {})
  const keep = () =>
    editBook(['formulas', piece, 'color'], dated(seen.color), message('near.colorOf', { formula: piece }))
  return html`<div class="fields">
      ${field(
        say('near.piece'),
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
          ${say('near.keep')}
        </button>
      </div>
    </div>
    <p class="hint">${say('near.keepHint')}</p>`
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
    <h2 id="color-series">${say('near.series')}</h2>
    <div class="fields">
      ${field(say('near.colorant'), 'color/series', choice({ id: 'color/series', value: request ? series : '', names, set: (series) => edit({ series }) }))}
    </div>
    ${messages('color/series', faults)}
    ${
      answer
        ? html`${answer.text.map((line) => html`<p>${ofLibrary(line)}</p>`)}
            <p class="hint">${say(seen ? 'near.which' : 'near.readPiece')}</p>
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
          message('near.testPiece', { colorant, dose: amount(dose) }),
        )
      : editBook(['materials', base, 'color'], dated(seen.color), message('near.baseColor', { base }))
  return html`<button type="button" class="quiet" ?disabled=${!seen || (!dose && !base)} @click=${once('piece', write)}>
    ${dose ? doseIn(dose, base_mass.text) : say('near.baseAlone')}
  </button>`
}

const doseIn = (dose, mass) => say('near.doseIn', { dose: local(String(dose)), mass: local(String(mass ?? '')) })

/** The test pieces that the book has. */
function there(colorant) {
  const pieces = state.book.materials[colorant].let_downs ?? []
  if (!pieces.length) return html`<p class="hint">${say('near.hasNone', { colorant })}</p>`
  return html`<ul class="log">
    ${pieces.map(
      ({ dose, base_mass, color }) =>
        html`<li>
          ${swatch(color ? hexOf(color) : null, doseIn(dose, base_mass), 'small')}
          ${say('near.inBook', { piece: doseIn(dose, base_mass) })}
        </li>`,
    )}
  </ul>`
}
