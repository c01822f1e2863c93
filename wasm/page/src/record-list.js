// The records that are kept, by day: to read, to save as files, and to pour the same again.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { editAll } from './edits.js'
import { field, textInput } from './fields.js'
import { letter } from './letter.js'
import { lookAtAmount } from './one.js'
import { part } from './part.js'
import { once } from './press.js'
import { records, removeRecord, takeFile } from './records.js'
import { day, off, short } from './show.js'
import { change, state } from './state.js'
import { saveFile, takeIn } from './storage.js'
import { local, message, say } from './words.js'

/** The records that are listed at once. */
const ROWS = 12

/** The name that a formula as made gets in the book, by the place of its record; what is not here is suggested. */
let names = {}

/** The list. */
export function keptRecords() {
  const all = records()
  const { shown, keys } = part('records', all, ROWS, say('record.listed'))
  return html`<section class="kept-records">
    <h2>${say('record.title')}</h2>
    ${all.length ? nothing : html`<p class="hint">${say('record.nothingKept')}</p>`} ${keys}
    ${shown.map((entry) => card(entry))} ${keys}
    <div class="buttons">
      ${
        all.length
          ? html`<button
              type="button"
              class="quiet"
              @click=${() => saveFile('records.json', { records: all.map(({ record }) => record).reverse() })}
            >
              ${say('record.saveAll')}
            </button>`
          : nothing
      }
      <label class="button quiet"
        >${say('record.open_')}<input
          type="file"
          accept=".json,application/json"
          class="out-of-sight"
          @change=${(event) => {
            const [file] = event.target.files
            if (file) takeIn(() => openFile(file))
            event.target.value = ''
          }}
      /></label>
    </div>
  </section>`
}

async function openFile(file) {
  const wrong = await takeFile(await file.text())
  change({ notice: wrong.length ? say('record.refused', { name: file.name, why: wrong.join(' ') }) : '' })
}

function card({ id, pots, record }) {
  const formulas = [...new Set(record.pots.flatMap(({ stages }) => stages.map(({ formulas }) => formulas.join(' + '))))]
  const remove = () => confirm(say('record.sure')) && removeRecord(id)
  return html`<details class="kept">
    <summary>
      <strong>${record.day ? day(record.day) : say('record.noDay')}</strong>
      <span>${say('record.of', { pots: pots.join(' '), formulas: formulas.join(', ') })}</span>
    </summary>
    ${record.pots.map((pot) => potOf(id, record, pot))}
    <div class="buttons">
      <button type="button" class="quiet" @click=${() => saveFile(`record-${record.day ?? 'day'}.json`, record)}>
        ${say('record.save')}
      </button>
      <button type="button" class="quiet" @click=${once(`remove ${id}`, remove)}>${say('record.remove')}</button>
    </div>
    <details>
      <summary>${say('record.asText')}</summary>
      <div class="wide" tabindex="0" role="region" aria-label=${say('record.asText')}>
        <pre>${record.text.join('\n')}</pre>
      </div>
    </details>
  </details>`
}

function potOf(id, record, pot) {
  return html`<div class="kept-pot">
    ${pot.stages.map(
      (stage, at) =>
        html`<h3>${letter(pot.pot)} ${stage.formulas.join(' + ')}</h3>
          <p>
            ${say('record.per', { per: local(stage.per) })}
            ${stage.made.map(({ material, dose, off: by }) => html`<span class="made-of">${material} ${local(dose)}${isOff(by) ? html` <small>(${off({ off: by })})</small>` : nothing}</span>`)}
          </p>
          ${stage.draws.map((draw) => pieces(draw))} ${again(`${id} ${pot.pot} ${at}`, record, stage)}`,
    )}
    ${pot.notes.map((note) => html`<p class="hint">${note}</p>`)}
  </div>`
}

/** Whether a dose as made is off by more than is written. */
const isOff = ({ text }) => text !== '0 %'

const pieces = ({ mold, shots, pieces }) =>
  pieces.map(
    ({ shape, good, made, weighs }) =>
      html`<p class="hint">
        ${mold}${shape ? `, ${shape}` : ''}:
        ${say('record.shots', { count: shots })}${good === null ? nothing : `, ${say('record.goodOf', { good, made })}`}${weighs ? `, ${say('record.each', { mass: short(weighs) })}` : nothing}
      </p>`,
  )

/** The keys that pour the same again: by the formulas of the book, or as it was made then. */
function again(key, record, stage) {
  const there = stage.formulas.every((name) => state.book.formulas?.[name])
  const made = { color: stage.color, body: stage.body }
  const name = names[key] ?? `${stage.formulas[0]}, ${record.day ?? ''}`.replace(/, $/, '')
  const set = (name) => {
    names = { ...names, [key]: name }
    change()
  }
  return html`<div class="fields again">
    ${
      there
        ? html`<button type="button" class="quiet" @click=${once(key, () => pour(stage.formulas, stage.per))}>
            ${say('record.again')}
          </button>`
        : html`<p class="hint">${say('record.gone')}</p>`
    }
    ${
      made.color || made.body
        ? html`${field(say('record.name'), `again/${key}`, textInput({ id: `again/${key}`, value: name, set, size: 18 }))}
            <button
              type="button"
              class="quiet"
              ?disabled=${!name.trim()}
              @click=${once(`as made ${key}`, () => asMade(name.trim(), made, stage.per))}
            >
              ${say('record.asMade')}
            </button>`
        : nothing
    }
  </div>`
}

/** Shows formulas for an amount of base. */
function pour(formulas, per) {
  lookAtAmount(formulas, per)
  location.hash = '#one'
}

/** Writes what was made into the book, as a color and its body, and shows it. */
function asMade(name, { color, body }, per) {
  const own = [
    [name, color],
    [color ? say('record.bodyName', { name }) : name, body],
  ].filter(([, formula]) => formula)
  const taken = own.map(([name]) => name).filter((name) => state.book.formulas?.[name])
  if (taken.length) return change({ notice: say('record.taken', { name: taken.join(', ') }) })
  editAll(
    own.map(([name, value]) => ({ of: 'book', path: ['formulas', name], value })),
    message('record.written', { name }),
  )
  change({ notice: '' })
  pour(
    own.map(([name]) => name),
    per,
  )
}
