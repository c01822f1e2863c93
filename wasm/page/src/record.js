// The record as you go: what was poured, shot and weighed of a pot. The ticks have most of it; the maker adds what differed.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { actualsOf, begunStages, countedAt, drawsOf, isCounted, keyOfFault, openItems } from './actuals.js'
import { ask, plan } from './core.js'
import { messages } from './faults.js'
import { choice, field, textInput } from './fields.js'
import { letter } from './letter.js'
import { ofLibrary } from './library.js'
import { once } from './press.js'
import { keptRecords } from './record-list.js'
import { areRead, keepRecords, records, unkept } from './records.js'
import { leftOf } from './shelf.js'
import { short } from './show.js'
import { change, state } from './state.js'
import { local, say } from './words.js'
import { beginWork } from './work.js'

const made = new WeakMap()

/** The plan of a work, which its documents give again. */
function planOf(work) {
  if (!made.has(work)) made.set(work, plan(work.book ?? work.of.book, work.orders).plan)
  return made.get(work)
}

/**
 * The plans of the day, the earliest first, each with its ticks: those before a change, and the one that is worked by. Their ids
 * are the times at which they were taken.
 */
export function plansOfDay({ base, plan }) {
  const found = []
  for (let past = state.work?.past; past; past = past.work.past) {
    const plan = planOf(past.work)
    if (plan) found.unshift({ id: past.work.since, plan, done: past.done, good: past.good ?? {}, isPast: true })
  }
  const now = state.work ? base : plan
  if (!now) return found
  const done = state.work ? state.done : {}
  return [...found, { id: state.work?.since ?? 0, plan: now, done, good: state.good, isPast: false }]
}

/** The notes of a pot of a plan. */
const notesOf = (of, pot) => state.day.notes[of.id]?.[pot.pot] ?? {}

/** Whether all of a pot counts as done, ticked or not. */
const isWhole = (notes) => notes.whole === 'yes'

/** Writes a note of a pot; the first begins the day. Notes of plans that are no longer the day's are dropped. */
function note(plans, of, pot, key, text) {
  if (!state.work) beginWork()
  const id = of.isPast ? of.id : state.work.since
  const known = Object.fromEntries(
    plans.filter(({ id }) => state.day.notes[id]).map(({ id }) => [id, state.day.notes[id]]),
  )
  const own = { ...known[id], [pot.pot]: { ...notesOf(of, pot), [key]: text } }
  change({ day: { ...state.day, pot: `${id} ${pot.pot}`, notes: { ...known, [id]: own } } })
}

/** The request for the record of some pots of a plan, each `{ pot, actuals }`. */
function requestFor({ plan }, parts) {
  return {
    calculate: 'record',
    book: plan.made_from.book,
    plan: { ...plan, pots: parts.map(({ pot }) => pot) },
    actuals: { format: plan.format, pots: Object.fromEntries(parts.map(({ pot, actuals }) => [pot.pot, actuals])) },
  }
}

const replies = new Map()

/** The library's record of some pots of a plan. */
function recordOf(of, parts) {
  const key = JSON.stringify([of.id, parts.map(({ pot, actuals }) => [pot.pot, pot.stages.length, actuals])])
  const known = replies.get(key)
  if (known?.plan === of.plan) return known.reply
  if (replies.size > 20) replies.clear()
  const reply = ask(requestFor(of, parts))
  replies.set(key, { plan: of.plan, reply })
  return reply
}

/** The id of the record of a plan of the day in the store. */
const idOf = (of) => `${of.plan.day ?? ''} ${of.id}`

const keptOf = (of) => records().find(({ id }) => id === idOf(of))

const isKept = (of, pot) => keptOf(of)?.pots.includes(pot.pot) ?? false

/** The actuals of a pot of a plan; null if nothing of it is done. */
const partOf = (of, pot) => {
  const notes = notesOf(of, pot)
  return actualsOf(of, pot, notes, isWhole(notes))
}

/** Keeps the record of a pot, together with those of its plan that are kept already. */
function keep(of, pot) {
  const letters = new Set([...(keptOf(of)?.pots ?? []), pot.pot])
  const parts = of.plan.pots.filter((one) => letters.has(one.pot)).map((one) => partOf(of, one))
  const { answer } = recordOf(of, parts.filter(Boolean))
  if (!answer) return
  const pots = answer.pots.map((one) => one.pot)
  change({ day: { ...state.day, pot: `${of.id} ${pot.pot}` } })
  keepRecords([{ id: idOf(of), at: Date.now(), pots, record: answer }])
}

/** Pots of the plans of a day: of an earlier plan, those that were begun by it. */
const potsOfDay = (plans) =>
  plans.flatMap((of) =>
    of.plan.pots
      .filter((pot) => !of.isPast || begunStages(of.plan, pot, of.done, false) > 0)
      .map((pot) => ({ of, pot, key: `${of.id} ${pot.pot}` })),
  )

/** The part of the view. */
export function recordPart(made) {
  const plans = plansOfDay(made)
  const pots = potsOfDay(plans)
  const doneFirst = pots.find(({ of, pot }) => partOf(of, pot) && !isKept(of, pot)) ?? pots[0]
  const shown = pots.find(({ key }) => key === state.day.pot) ?? doneFirst
  return html`
    ${unkept() ? html`<p class="notice" role="status">${unkept()}</p>` : nothing}
    ${pots.length ? chips(pots, shown) : html`<p class="hint">${say('record.noPlan')}</p>`}
    ${shown ? potNotes(plans, shown) : nothing} ${keptRecords()}
  `
}

/** The pots to choose from. */
function chips(pots, shown) {
  return html`<ul class="pot-chips" aria-label=${say('record.pots')}>
    ${pots.map(({ of, pot, key }) => {
      const status = isKept(of, pot)
        ? say('record.kept')
        : !partOf(of, pot)
          ? say('record.notBegun')
          : openItems(of.plan, pot, of.done).length
            ? say('record.begun')
            : say('record.done')
      return html`<li>
        <button
          type="button"
          class=${key === shown.key ? '' : 'quiet'}
          aria-current=${key === shown.key ? 'true' : nothing}
          aria-label="${say('record.pot', { pot: pot.pot })}${of.isPast ? `, ${say('record.before')}` : ''}: ${status}"
          @click=${() => change({ day: { ...state.day, pot: key } })}
        >
          ${letter(pot.pot)} <span>${of.isPast ? html`${say('record.before')}<br />` : nothing}${status}</span>
        </button>
      </li>`
    })}
  </ul>`
}

/** What was done of a pot, with fields for what differed. */
function potNotes(plans, { of, pot }) {
  const notes = notesOf(of, pot)
  const part = partOf(of, pot)
  const set = (key) => (text) => note(plans, of, pot, key, text)
  const open = openItems(of.plan, pot, of.done)
  const { answer = null, faults = [] } = part ? recordOf(of, [part]) : {}
  const placed = faults.map((fault) => ({ fault, key: keyOfFault(fault.path, pot.stages) }))
  const own = (key) => placed.filter((one) => one.key === key).map(({ fault }) => fault)
  const of_ = { of, pot, notes, own, set, last: part?.pot.stages.length ?? 0 }
  return html`<section class="pot-notes" aria-label=${say('record.pot', { pot: pot.pot })}>
    <h2>
      ${say('record.pot', { pot: pot.pot })}
      <span class="in">${pot.stages.map(({ formulas }) => formulas.join(' + ')).join(', ')}</span>
    </h2>
    ${unticked(open, notes, part, set)}
    ${part ? part.pot.stages.map((stage, at) => stageNotes(of_, stage, at + 1)) : nothing} ${part ? rest(of_) : nothing}
    ${messages(
      'record:other',
      placed.filter(({ key }) => key === null).map(({ fault }) => fault),
    )}
    ${answer ? shownBy(answer) : nothing}
    ${
      part
        ? html`<div class="buttons">
            <button
              type="button"
              class="keep"
              ?disabled=${!answer || !areRead()}
              @click=${once('keep', () => keep(of, pot))}
            >
              ${isKept(of, pot) ? say('record.keepAgain', { pot: pot.pot }) : say('record.keep', { pot: pot.pot })}
            </button>
            ${isKept(of, pot) && isSame(of, pot, answer) ? html`<p class="said" role="status">✓ ${say('record.isKept')}</p>` : nothing}
          </div>`
        : nothing
    }
    ${answer ? leftOf(answer) : nothing}
  </section>`
}

/** Whether the record that is kept has a pot as it is now. */
function isSame(of, pot, answer) {
  const entry = keptOf(of)?.record.pots.find((one) => one.pot === pot.pot)
  return JSON.stringify(entry) === JSON.stringify(answer?.pots[0])
}

/** What has no tick: by default it was not done. */
function unticked(open, notes, part, set) {
  if (!open.length) return nothing
  const whole = isWhole(notes)
  const words = whole
    ? say('record.allDone')
    : part
      ? say('record.open', { count: open.length, first: ofLibrary(open[0].text) })
      : say('record.nothingDone')
  return html`<p class="unticked">
    ${words}
    <button type="button" class="quiet" @click=${() => set('whole')(whole ? '' : 'yes')}>
      ${whole ? say('record.asTicked') : say('record.allAsSheet')}
    </button>
  </p>`
}

/** A field for a note. */
function noteField(
  { notes, own, set },
  key,
  label,
  { size = 6, numeric = false, amount = true, placeholder = '', out = false } = {},
) {
  const id = `record/${key}`
  const faults = own(key)
  const input = textInput({
    id,
    value: notes[key],
    faults,
    set: set(key),
    size,
    numeric,
    amount,
    placeholder,
    label: out ? label : null,
  })
  return out ? html`${input}${messages(id, faults)}` : field(label, id, input, faults)
}

function stageNotes(of, stage, number) {
  const { pot, notes, set } = of
  const start = `in/${number}/`
  const meant = stage.weigh.map(({ material }) => material)
  const strangers = Object.keys(notes)
    .filter((key) => key.startsWith(start) && !meant.includes(key.slice(start.length)))
    .map((key) => key.slice(start.length))
  const others = Object.keys(of.of.plan.made_from.book.materials).filter(
    (name) => !meant.includes(name) && !strangers.includes(name),
  )
  const differ = [...meant, ...strangers].filter(
    (name) => notes[`in/${number}/${name}`] || notes[`on/${number}/${name}`],
  )
  return html`<div class="stage-notes">
    ${pot.stages.length > 1 ? html`<h3>${stage.formulas.join(' + ')}</h3>` : nothing}
    ${drawsOf(stage).map(({ draw, number: at }) => drawNotes(of, draw, `${number}/${at}`))}
    <details ?open=${differ.length > 0}>
      <summary>
        ${say('record.wentIn')}
        <small>${differ.length ? say('record.differs', { count: differ.length }) : say('record.asSheet')}</small>
      </summary>
      <table class="went-in">
        <thead>
          <tr>
            <th scope="col">${say('record.sheet')}</th>
            <th scope="col">${say('record.instead')}</th>
            <th scope="col">${say('record.scale')}</th>
          </tr>
        </thead>
        <tbody>
          ${stage.weigh.map((weigh) => inRow(of, number, weigh.material, local(weigh.best.measure)))}
          ${strangers.map((name) => inRow(of, number, name, say('record.none')))}
        </tbody>
      </table>
      ${choice({
        id: `record/stranger/${number}`,
        value: '',
        names: others,
        set: (name) => name && set(`in/${number}/${name}`)(' '),
        none: say('record.stranger'),
        label: say('record.stranger'),
      })}
    </details>
    <details ?open=${Boolean(notes[`time/${number}`] || notes[`injector/${number}`])}>
      <summary>${say('record.heatAndInjector')}</summary>
      <div class="fields">
        ${noteField(of, `time/${number}`, say('record.time'), { placeholder: '206 s' })}
        ${noteField(of, `from/${number}`, say('record.from'), { placeholder: degrees('68 °F', '20 °C') })}
        ${noteField(of, `to/${number}`, say('record.to'), { placeholder: degrees('338 °F', '170 °C') })}
        ${noteField(of, `injector/${number}`, say('record.injector'), { placeholder: '4.1 g' })}
      </div>
    </details>
  </div>`
}

const degrees = (us, metric) => (state.scale === 'metric' ? metric : us)

function inRow(of, number, material, sheet) {
  return html`<tr>
    <th scope="row">${material}<small>${sheet}</small></th>
    <td>${noteField(of, `in/${number}/${material}`, say('record.insteadOf', { material }), { out: true, size: 7 })}</td>
    <td>
      ${noteField(of, `on/${number}/${material}`, say('record.scaleOf', { material }), { out: true, size: 5, placeholder: 'g' })}
    </td>
  </tr>`
}

/** The shots of a draw, and its pieces: how many are good, and what some of them weigh. */
function drawNotes(of, draw, place) {
  const { of: plan, pot } = of
  if (!isCounted(plan.plan, pot, draw)) {
    return html`<p class="hint">${say('record.countedAt', { mold: draw.mold, pot: draw.together_with.join(', ') })}</p>`
  }
  const counted = plan.good[countedAt(plan.plan, pot, place)] ?? {}
  const unlike = draw.pieces.some(({ shape }) => shape !== null)
  return html`<fieldset class="draw-notes">
    <legend>${draw.mold} <small>${say('record.shots', { count: draw.shots })}</small></legend>
    <div class="fields">
      ${draw.pieces.map(({ shape, made, ordered }) => {
        const at = `${place}/${shape ?? ''}`
        return html`${unlike ? html`<p class="shape">${shape}</p>` : nothing}
        ${noteField(of, `good/${at}`, say('record.good', { made, ordered }), { numeric: true, size: 4, placeholder: counted[shape ?? ''] ?? '' })}
        ${noteField(of, `count/${at}`, say('record.weighed'), { numeric: true, size: 3, placeholder: '10' })}
        ${noteField(of, `weigh/${at}`, say('record.together'), { numeric: true, size: 6, placeholder: 'g' })}`
      })}
      ${noteField(of, `shots/${place}`, say('record.shotsMade'), { numeric: true, size: 3, placeholder: String(draw.shots) })}
    </div>
  </fieldset>`
}

/** What is noted of the pot as a whole. */
function rest(of) {
  const { left_over: left } = of.pot
  return html`<div class="fields rest">
    ${noteField(of, 'left', say('record.left'), { numeric: true, size: 6, placeholder: left ? short(left) : 'g' })}
    ${noteField(of, 'jar', say('record.jar'), { size: 14, amount: false })}
    ${noteField(of, 'notes', say('record.notes'), { size: 24, amount: false })}
  </div>`
}

/** What the record shows that the sheet did not have. */
function shownBy(answer) {
  const lines = [
    ...answer.found.map(({ text }) => ofLibrary(text)),
    ...answer.pots.flatMap(({ lost, planned_lost: planned }) =>
      lost ? [say('record.lost', { lost: short(lost), planned: short(planned) })] : [],
    ),
  ]
  return lines.length
    ? html`<ul class="shown" aria-live="polite">
        ${lines.map((line) => html`<li>${line}</li>`)}
      </ul>`
    : nothing
}
