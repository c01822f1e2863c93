// A formula that is found at the cup: tap a scoop, and see the formula grow. All of it is a trial of the library; the page keeps
// its log.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { asked } from './asked.js'
import { editAll } from './edits.js'
import { faultsAt, keys, messages } from './faults.js'
import { choice, field, textInput } from './fields.js'
import { once } from './press.js'
import { reply } from './replies.js'
import { both, short } from './show.js'
import { change, state } from './state.js'
import { local, message, say } from './words.js'

/** A trial that is not begun. */
const NEW = {
  start: '',
  formulas: [],
  log: [],
  undone: [],
  material: '',
  other: '',
  taken: '',
  save: '',
  body: '',
  notes: '',
}

const now = () => ({ ...NEW, ...state.day.trial })

const set = (parts) => change({ day: { ...state.day, trial: { ...now(), ...parts } } })

/** The kinds in the order in which they go in. */
const ORDER = ['colorant', 'pearl', 'flake', 'scent', 'salt', 'softener', 'hardener', 'stabilizer', 'plastisol']

/** The drops that a tap puts in. */
const DROPS = [1, 5, 10]

const listOf = (value) => (Array.isArray(value) ? value : [])

/** The materials of the book by kind. */
function materials() {
  const place = ({ kind }) => (ORDER.includes(kind) ? ORDER.indexOf(kind) : ORDER.length)
  return Object.entries(state.book.materials ?? {}).sort(([, one], [, other]) => place(one ?? {}) - place(other ?? {}))
}

/** What a tap can put in of a material, by what the bench measures it with: drops, spoons, or the marks of a cup. */
function measures(material) {
  const { kind, drop } = state.book.materials[material] ?? {}
  const { spoons, cups } = state.book.bench ?? {}
  if (kind === 'plastisol') return cupMarks(cups)
  const own = listOf(spoons).filter((spoon) => typeof spoon === 'string')
  const drops = DROPS.map((count) => (count === 1 ? '1 drop' : `${count} drops`))
  if (kind === 'colorant' || kind === 'scent') return drops
  return drop ? [...drops.slice(0, 1), ...own] : own
}

/** The amounts that the cups of the bench are marked with or hold, each once. */
const cupMarks = (cups) => [
  ...new Set(
    listOf(cups)
      .flatMap(({ marks, holds }) => [marks, holds])
      .filter((amount) => typeof amount === 'string'),
  ),
]

/** The trial as the library takes it. */
function trial() {
  const { start, formulas, log, notes } = now()
  return {
    start: start.trim(),
    ...(formulas.length && { formulas }),
    log,
    ...(notes.trim() && { notes: notes.trim() }),
  }
}

const isBegun = () => now().start.trim() !== ''

/** Puts a step into the log. */
const log = (step) => set({ log: [...now().log, step], undone: [], other: '', taken: '' })

/** Takes the last step back, or puts it in again. */
function turn(from, to) {
  const trial = now()
  set({ [from]: trial[from].slice(0, -1), [to]: [...trial[to], trial[from].at(-1)] })
}

/** The part of the view. */
export function trialPart() {
  const request = isBegun() ? { calculate: 'trial', trial: trial(), ...names() } : null
  const { answer = null, faults = [] } = request ? reply(request, state.book) : {}
  return html`<div class="trial">
    <section>
      <h2>${say('trial.cup')}</h2>
      ${begin(faults)}
      ${messages(
        'trial/other',
        faults.filter(({ path }) => !/^\/(trial\/(start|formulas)|save_as|body_as)/.test(path)),
      )}
      ${isBegun() ? scoops(answer) : html`<p class="hint">${say('trial.begin')}</p>`}
    </section>
    <section aria-live="polite">
      <h2>${say('trial.formula')}</h2>
      ${answer ? grown(answer) : html`<p class="hint">${say('trial.notYet')}</p>`} ${isBegun() ? logPart() : nothing}
      ${answer && now().log.length ? keepPart(answer, faults) : nothing}
      ${request && answer ? asked([request, answer]) : nothing}
    </section>
  </div>`
}

const names = () => {
  const { save, body } = now()
  return { ...(save.trim() && { save_as: save.trim() }), ...(save.trim() && body.trim() && { body_as: body.trim() }) }
}

/** What the cup started from. */
function begin(faults) {
  const { start, formulas } = now()
  const all = Object.keys(state.book.formulas ?? {})
  const own = faultsAt(faults, ['trial', 'start'])
  const wrong = faultsAt(faults, ['trial', 'formulas'])
  const amounts = cupMarks(state.book.bench?.cups)
  return html`<div class="fields">
      ${field(
        say('trial.start'),
        'trial/start',
        textInput({
          id: 'trial/start',
          value: start,
          size: 8,
          placeholder: amounts[1] ?? '1 cup',
          faults: own,
          amount: true,
          set: (start) => set({ start }),
        }),
        own,
      )}
      ${field(
        say('trial.body'),
        'trial/body',
        choice({
          id: 'trial/body',
          value: formulas[0],
          names: all,
          faults: wrong,
          none: say('trial.noBody'),
          set: (name) => set({ formulas: name ? [name] : [] }),
        }),
        wrong,
      )}
    </div>
    ${
      start.trim()
        ? nothing
        : html`<div class="buttons" role="group" aria-label=${say('trial.start')}>
            ${amounts.map((amount) => html`<button type="button" class="quiet" @click=${() => set({ start: amount })}>${local(amount)}</button>`)}
          </div>`
    }`
}

/** The materials to choose from, and the keys that put one in. */
function scoops(answer) {
  const { material, other, taken } = now()
  const all = materials()
  const chosen = all.some(([name]) => name === material) ? material : (all[0]?.[0] ?? '')
  const amounts = chosen ? measures(chosen) : []
  return html`<ul class="chips" aria-label=${say('trial.materials')}>
      ${all.map(
        ([name]) =>
          html`<li>
            <button
              type="button"
              class=${name === chosen ? '' : 'quiet'}
              aria-pressed=${name === chosen}
              @click=${() => set({ material: name })}
            >
              ${name}
            </button>
          </li>`,
      )}
    </ul>
    <div class="scoops" role="group" aria-label=${say('trial.scoopsOf', { material: chosen })}>
      ${amounts.map(
        (amount) =>
          html`<button
            type="button"
            class="scoop"
            aria-label=${say('trial.put', { amount, material: chosen })}
            @click=${once(`scoop ${amount}`, () => log({ [chosen]: amount }))}
          >
            + ${local(amount)}
          </button>`,
      )}
    </div>
    <p class="so-far" aria-live="polite">${answer ? soFar(answer) : nothing}</p>
    ${logKeys()}
    <form
      class="fields"
      @submit=${(event) => {
        event.preventDefault()
        if (other.trim()) log({ [chosen]: other.trim() })
      }}
    >
      ${field(
        say('trial.other', { material: chosen }),
        'trial/amount',
        textInput({
          id: 'trial/amount',
          value: other,
          size: 8,
          placeholder: '0.5 g',
          amount: true,
          set: (other) => set({ other }),
        }),
      )}
      <div class="field ends"><button class="quiet" ?disabled=${!other.trim()}>${say('trial.putIn')}</button></div>
    </form>
    <form
      class="fields"
      @submit=${(event) => {
        event.preventDefault()
        if (taken.trim()) log({ taken: taken.trim() })
      }}
    >
      ${field(
        say('trial.taken'),
        'trial/taken',
        textInput({
          id: 'trial/taken',
          value: taken,
          size: 8,
          placeholder: '4 g',
          amount: true,
          set: (taken) => set({ taken }),
        }),
      )}
      <div class="field ends"><button class="quiet" ?disabled=${!taken.trim()}>${say('trial.takeOut')}</button></div>
    </form>`
}

/** The shares of what is in the cup, by the library. */
function shares({ cup }) {
  const own = Object.fromEntries(cup.map(({ material }) => [material, state.book.materials[material]]))
  const masses = Object.fromEntries(cup.map(({ material, mass: { value, unit } }) => [material, { value, unit }]))
  const { measures } = state.book
  const { answer } = reply({ calculate: 'mix', materials: own, masses, ...(measures && { measures }) })
  return new Map(answer?.parts.map(({ material, mass_fraction: share }) => [material, share.text]))
}

/** The formula as it is by now. */
function grown(answer) {
  const share = shares(answer)
  return html`<table class="grown">
      <thead>
        <tr>
          <th scope="col">${say('trial.material')}</th>
          <th scope="col">${say('trial.per', { per: answer.per })}</th>
          <th scope="col">${say('trial.share')}</th>
          <th scope="col">${say('trial.inCup')}</th>
        </tr>
      </thead>
      <tbody>
        ${answer.cup.map(
          ({ material, dose, mass, doubt }) =>
            html`<tr>
              <th scope="row">${material}</th>
              <td>
                <strong>${local(dose)}</strong
                >${doubt ? html` <small>± ${local(doubt.uncertainty.text)}</small>` : nothing}
              </td>
              <td>${local(share.get(material) ?? '')}</td>
              <td>${short(mass)}</td>
            </tr>`,
        )}
      </tbody>
    </table>
    <p class="hint">${say('trial.total')} ${short(answer.mass)}, ${both(answer.volume)}.</p>`
}

/** The formula in one line. */
const soFar = ({ per, cup }) =>
  html`${say('trial.per', { per })}:
  ${cup.map(({ material, dose }) => html`<span>${material} <strong>${local(dose)}</strong></span>`)}`

const stepWords = (step) => {
  if (typeof step === 'string') return say('trial.again')
  if (step.taken) return say('trial.tookOut', { amount: local(step.taken) })
  return Object.entries(step)
    .map(([material, amount]) => `${material}: ${local(amount)}`)
    .join(', ')
}

/** The keys that go over the log: once more, back, and in again. */
function logKeys() {
  const { log: steps, undone } = now()
  const last = steps.at(-1)
  const isScoop = last && !last.taken
  return html`<div class="buttons">
    <button type="button" ?disabled=${!isScoop} @click=${once('again', () => log('again'))}>
      ${say('trial.oncemore')}
    </button>
    <button type="button" class="quiet" ?disabled=${!steps.length} @click=${once('back', () => turn('log', 'undone'))}>
      ${say('trial.back')}
    </button>
    <button type="button" class="quiet" ?disabled=${!undone.length} @click=${once('redo', () => turn('undone', 'log'))}>
      ${say('trial.redo')}
    </button>
  </div>`
}

/** The log. */
function logPart() {
  const { log: steps } = now()
  return html`<h3>${say('trial.log')}</h3>
    ${
      steps.length
        ? html`<ol class="log">
            ${steps.map((step) => html`<li>${stepWords(step)}</li>`)}
          </ol>`
        : html`<p class="hint">${say('trial.nothingIn')}</p>`
    }
    <div class="buttons">
      <button type="button" class="quiet" ?disabled=${!steps.length} @click=${once('new trial', renew)}>
        ${say('trial.new')}
      </button>
    </div>`
}

const renew = () => confirm(say('trial.sure')) && set(NEW)

/** Keeps the cup as a formula of the book. */
function keepPart(answer, faults) {
  const { save, body, notes } = now()
  const write = () => {
    editAll(
      [
        ...answer.write.map(({ path, value }) => ({ of: 'book', path: keys(path), value })),
        { of: 'day', path: ['trial', 'save'], value: '' },
      ],
      message('trial.written', { name: save.trim() }),
    )
  }
  const [own, ofBody] = [faultsAt(faults, ['save_as']), faultsAt(faults, ['body_as'])]
  return html`<h3>${say('trial.keep')}</h3>
    <div class="fields">
      ${field(
        say('trial.name'),
        'trial/save',
        textInput({ id: 'trial/save', value: save, size: 14, faults: own, set: (save) => set({ save }) }),
        own,
      )}
      ${
        answer.own_body
          ? field(
              say('trial.bodyName'),
              'trial/body-name',
              textInput({ id: 'trial/body-name', value: body, size: 14, faults: ofBody, set: (body) => set({ body }) }),
              ofBody,
            )
          : nothing
      }
      ${field(say('trial.notes'), 'trial/notes', textInput({ id: 'trial/notes', value: notes, size: 20, set: (notes) => set({ notes }) }))}
      <div class="field ends">
        <button type="button" ?disabled=${!answer.write.length} @click=${once('keep trial', write)}>
          ${say('trial.keepIt')}
        </button>
      </div>
    </div>
    ${answer.own_body ? html`<p class="hint">${say('trial.ownBody')}</p>` : nothing}`
}
