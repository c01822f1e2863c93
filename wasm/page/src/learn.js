// What the records show of the numbers of the book: offers to accept one by one.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { ask } from './core.js'
import { editAll } from './edits.js'
import { keys, said } from './faults.js'
import { ofLibrary } from './library.js'
import { once } from './press.js'
import { records } from './records.js'
import { state, valueAt } from './state.js'
import { local, message, quoted, say } from './words.js'

const NONE = { changes: [], questions: [], confirmed: [], not_yet: [], faults: [], days: 0, to: null }

let last = { of: null, book: null, learned: null, answer: NONE }

const isDated = ({ record }) => /^\d{4}-\d{2}-\d{2}$/.test(record.day ?? '')

/**
 * What all records say. A number that was accepted counts only days after those that it was learned from: each such day gets an
 * answer of its own, of which these numbers are taken.
 */
function learnt() {
  const { book } = state
  const { learned } = state.day
  const of = records()
  if (last.of === of && last.book === book && last.learned === learned) return last.answer
  const dated = of.filter(isDated).map(({ record }) => record)
  const answer = dated.length ? together(dated, book, learned) : NONE
  last = { of, book, learned, answer }
  return answer
}

function together(list, book, learned) {
  const afters = [...new Set(Object.values(learned))]
  const [all, ...others] = [undefined, ...afters].map((after) => {
    const { answer, faults } = ask({ calculate: 'learn', book, records: list, ...(after && { after }) })
    return { ...NONE, ...answer, faults: faults ?? [] }
  })
  const isOf = (after) => (one) => learned[one.what] === after
  const pick = (part) => [
    ...all[part].filter(isOf(undefined)),
    ...others.flatMap((answer, at) => answer[part].filter(isOf(afters[at]))),
  ]
  return { ...all, changes: pick('changes'), questions: pick('questions') }
}

/** The offers that wait. */
export const offers = () => learnt().changes

/** The part of the view. */
export function learnPart() {
  const { changes, questions, confirmed, not_yet: notYet, days, faults } = learnt()
  const undated = records().length - records().filter(isDated).length
  return html`<section class="learn-part">
    <h2>${say('learn.title')}</h2>
    <p class="hint">${say('learn.from', { count: days })}</p>
    ${undated ? html`<p class="hint">${say('learn.undated', { count: undated })}</p>` : nothing}
    ${faults.map((fault) => html`<p class="runs-out">${said(fault, 'message')} ${said(fault, 'help')}</p>`)}
    ${changes.length ? nothing : html`<p>${say('learn.nothing')}</p>`}
    <ul class="offers">
      ${changes.map((change) => offer(change, questions))}
    </ul>
    ${list(
      say('learn.questions'),
      questions.map(({ what, question }) => `${what}: ${question}`),
    )}
    ${list(say('learn.confirmed'), confirmed)} ${list(say('learn.notYet'), notYet)}
  </section>`
}

const list = (title, lines) =>
  lines.length
    ? html`<h3>${title}</h3>
        <ul class="lines">
          ${lines.map((line) => html`<li>${ofLibrary(line)}</li>`)}
        </ul>`
    : nothing

function offer({ what, before, after, days, why, questioned, write }, questions) {
  return html`<li>
    <h3>${ofLibrary(what)}</h3>
    <p class="turns">
      <span>${before === null ? say('learn.unknown') : local(before)}</span> <span aria-hidden="true">→</span>
      <span class="out-of-sight">${say('learn.becomes')}</span> <strong>${local(after)}</strong>
    </p>
    <p class="hint">${ofLibrary(why)} ${say('learn.days', { count: days })}</p>
    ${questioned ? html`<p class="runs-out">${ofLibrary(questions.find((one) => one.what === what)?.question ?? '')}</p>` : nothing}
    <button type="button" @click=${once(`accept ${what}`, () => accept(what, write))}>
      <span aria-hidden="true">${say('learn.accept')}</span>
      <span class="out-of-sight">${say('edits.key', { key: say('learn.accept'), what: ofLibrary(what) })}</span>
    </button>
  </li>`
}

/** Writes what was learned into the book, and from which days on the number counts again. */
function accept(what, write) {
  const { to } = learnt()
  editAll(
    [
      ...write.map(({ op, path, value }) => ({ of: 'book', ...placed(keys(path), op, value) })),
      { of: 'day', path: ['learned', what], value: to },
    ],
    message('learn.accepted', { what: quoted(what) }),
  )
}

/** The place of a change in the book: a JSON Patch adds to the end of a list by "-", and puts into a list by a number. */
function placed(path, op, value) {
  const above = valueAt(state.book, path.slice(0, -1))
  if (op === 'remove') return { path, value: undefined }
  if (!Array.isArray(above)) return { path, value }
  const at = path.at(-1) === '-' ? above.length : Number(path.at(-1))
  return { path: path.slice(0, -1), value: op === 'add' ? above.toSpliced(at, 0, value) : above.with(at, value) }
}
