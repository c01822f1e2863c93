// One pot: what goes into it for an amount of base, and what to add if something else went in.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { asked } from './asked.js'
import { demo } from './begin.js'
import { ask } from './core.js'
import { messages, faultsAt, fieldId } from './faults.js'
import { choice, field, stepper, textInput } from './fields.js'
import { isInvented } from './invented.js'
import { answerOf, waysOf } from './correction.js'
import { wantedByAmount, wantedByPot } from './meant.js'
import { inEnglish, ofLibrary } from './library.js'
import { both, off, short } from './show.js'
import { change, state } from './state.js'
import { takeIn } from './storage.js'
import { local, say } from './words.js'
import { putRight, shownChange } from './work.js'

const edit = (parts) => change({ one: { ...state.one, refused: [], ...parts } })

/** Shows a stage of one of the day's pots, into which `poured` went instead. What is added after a heat finds it hot. */
export function lookAt(step, poured = {}) {
  const { key, stage } = step.of
  const hot = step.kind === 'add' ? 'hot' : ''
  edit({ formulas: step.of.at.formulas, base: '', of: { key, stage }, poured, cup: '', trace: '', hot })
}

/** Shows formulas for an amount of base. */
export function lookAtAmount(formulas, base, poured = {}) {
  edit({ formulas, base, of: null, poured, cup: '', trace: '', hot: '' })
}

/** The view; `pots` are those of `plan` by letter, with their keys. */
export function oneView(pots, plan) {
  const { formulas, base, of } = state.one
  const wanted = of ? wantedByPot(pots, of, plan) : wantedByAmount(formulas, base)
  const correction = wanted.request ? waysOf(wanted) : null
  const faults = [...wanted.faults, ...(correction?.faults ?? [])]
  return html`
    <div class="one">
      <section>
        <h2>${say('one.shouldBe')}</h2>
        ${
          of
            ? html`<p class="say">
                ${say('one.potOfDay', { pot: letterOf(pots, of) ?? '?' })} <em>${formulas.join(' + ')}</em>
                <button type="button" class="quiet" @click=${() => lookAtAmount(formulas, '1 cup')}>
                  ${say('one.useAmount')}
                </button>
              </p>`
            : amount(faults)
        }
        ${messages(
          'one:other',
          faults.filter(({ path }) => !/^\/(instead\/|pot_base|base_amount|formulas|cup)/.test(path)),
        )}
        ${wanted.request ? inTheCup(of, faults) : nothing}
        ${wanted.before ? html`<p class="hint">${say('one.before')}</p>` : nothing}
        <div class="wide">
          <table class="one-pot">
            <thead>
              <tr>
                <th scope="col">${say('one.material')}</th>
                <th scope="col">${say('one.should')}</th>
                <th scope="col">${say('one.instead')}</th>
              </tr>
            </thead>
            <tbody>
              ${wanted.rows.map((row) => pourRow(row, faults))} ${strangers(wanted, faults)}
            </tbody>
          </table>
        </div>
        ${wanted.mass ? html`<p class="hint">${say('one.total', { mass: short(wanted.mass), volume: both(wanted.volume) })}</p>` : nothing}
        <p class="hint">${say('one.howToEnter')}</p>
      </section>
      <section aria-live="polite" class="correction">
        <h2>${say('one.howToFix')}</h2>
        ${correction ? corrected(correction, formulas, of && { ...of, pot: letterOf(pots, of) }) : nothingWrong()}
      </section>
    </div>
  `
}

/** The present letter of a pot of the day: its key stays, its letter may change. */
const letterOf = (pots, of) => [...pots].find(([, { key }]) => key === of.key)?.[0]

/** A choice of the cup that the pot is in, and whether it is hot. */
function inTheCup(of, faults) {
  const cups = Array.isArray(state.book.bench?.cups) ? state.book.bench.cups : []
  const names = cups.map(({ holds }) => holds).filter((holds) => typeof holds === 'string')
  const own = faultsAt(faults, ['cup'])
  const none = say(of ? 'one.asPlanned' : 'one.largest')
  const control = choice({
    id: 'one/cup',
    value: state.one.cup,
    names,
    faults: own,
    set: (cup) => edit({ cup }),
    none,
    lang: inEnglish(),
    shown: local,
  })
  const heat = choice({
    id: 'one/hot',
    value: state.one.hot,
    names: of ? ['cold', 'hot'] : ['hot'],
    set: (hot) => edit({ hot }),
    shown: (name) => say(name === 'hot' ? 'step.hot' : 'one.is_cold'),
    none: say(of ? 'one.asPlanned' : 'one.is_cold'),
  })
  return html`<div class="fields">
    ${field(say('one.inCup'), 'one/cup', control, own)} ${field(say('one.potIs'), 'one/hot', heat)}
  </div>`
}

/** How to fix the pot; of a pot of the day, `of` says which, and a way can be taken. */
function corrected({ request, answer, faults }, formulas, of) {
  if (!answer) {
    return html`<p class="hint">${say('one.fixFields', { count: faults.length })}</p>`
  }
  const { refused } = state.one
  return html`${answerOf(answer, formulas, (trace) => edit({ trace }), of && ((way) => take(of, way)))}
  ${
    refused.length
      ? html`<div class="fault" role="alert">
          <p><strong>${say('one.cannotGoOn')}</strong></p>
          ${refused.map((words) => html`<p>${shownChange(words)}</p>`)}
        </div>`
      : nothing
  }
  ${asked([request, answer])}`
}

/** Takes a way to go on with a pot of the day: what it adds becomes steps at the bench. */
function take(of, way) {
  const { poured, cup, hot } = state.one
  const instead = Object.fromEntries(Object.entries(poured).filter(([, amount]) => amount.trim()))
  const refused = putRight(of, way, { instead, cup, hot })
  if (refused) return change({ one: { ...state.one, refused } })
  edit({ poured: {}, cup: '', trace: '', hot: '' })
  location.hash = '#bench'
  scrollTo(0, 0)
}

/** Nothing to fix; with the demo data, a button that shows an example. */
function nothingWrong() {
  const show = () =>
    takeIn(async () => {
      const { formulas, pot_base, instead } = (await demo()).correct
      lookAtAmount(formulas, pot_base, instead)
    })
  return html`<p class="hint">${say('one.allAsPlanned')}</p>
    ${isInvented() ? html`<button type="button" class="quiet" @click=${show}>${say('one.example')}</button>` : nothing}`
}

function amount(faults) {
  const { formulas, base } = state.one
  const names = Object.keys(state.book.formulas)
  const set = (at, name) => edit({ formulas: formulas.with(at, name).filter(Boolean) })
  const another = names.find((name) => !formulas.includes(name)) ?? names[0]
  const baseFaults = ['base_amount', 'pot_base'].flatMap((name) => faultsAt(faults, [name]))
  return html`<div class="fields">
      ${formulas.map((value, at) => {
        const id = `one:formula:${at}`
        return field(
          say('one.formula'),
          id,
          choice({ id, value, names, set: (name) => set(at, name), none: say('one.none') }),
        )
      })}
      <div class="field ends">
        <button type="button" class="quiet" @click=${() => edit({ formulas: [...formulas, another] })}>
          ${say('one.another')}
        </button>
      </div>
      ${stepper({
        label: say('one.base'),
        id: 'one:base',
        faults: baseFaults,
        before: [
          ['−1', '−1 cup', () => more(-1)],
          ['−¼', '−¼ cup', () => more(-0.25)],
        ],
        control: textInput({
          id: 'one:base',
          value: base,
          faults: baseFaults,
          set: (base) => edit({ base }),
          size: 8,
          amount: true,
        }),
        after: [
          ['+¼', '+¼ cup', () => more(0.25)],
          ['+1', '+1 cup', () => more(1)],
        ],
      })}
    </div>
    ${messages('one:formulas', faultsAt(faults, ['formulas']))}`
}

/** Adds cups of base; an amount that cannot be read stays. */
function more(cups) {
  const { answer } = ask({ calculate: 'convert', amount: state.one.base, to: 'cup', measures: state.book.measures })
  if (answer && answer.value + cups > 0) edit({ base: `${answer.value + cups} cup` })
}

function pourRow(row, faults) {
  return html`<tr class=${state.one.poured[row.material]?.trim() ? 'changed' : ''}>
    <th scope="row">${row.material}</th>
    <td>
      ${
        row.best
          ? html`<strong>${ofLibrary(row.best.measure)}</strong> <span class="off">${off(row.best)}</span>
              <small
                >${row.others.map((way) => html`<span>${say('cards.or', { measure: ofLibrary(way.measure) })} ${off(way)}</span>`)}</small
              >`
          : html`<strong>${short(row.mass)}</strong> <small>${ofLibrary(row.why)}</small>`
      }
    </td>
    <td>${pourInput(row.material, faults)}</td>
  </tr>`
}

function pourInput(material, faults) {
  const path = ['instead', material]
  const id = fieldId('one', path)
  const own = faultsAt(faults, path)
  const value = state.one.poured[material]
  const set = (amount) => edit({ poured: { ...state.one.poured, [material]: amount } })
  const label = say('one.whatWentIn', { material })
  return html`${textInput({ id, value, faults: own, set, label, placeholder: say('one.asPlanned'), amount: true })}${messages(id, own)}`
}

/** Materials that went in and do not belong, and a choice to name one. */
function strangers(wanted, faults) {
  const meant = wanted.rows.map(({ material }) => material)
  const others = Object.keys(state.book.materials).filter((name) => !meant.includes(name))
  const added = Object.keys(state.one.poured).filter((name) => others.includes(name))
  const names = others.filter((name) => !added.includes(name))
  const set = (name) => edit({ poured: { ...state.one.poured, [name]: '' } })
  const none = say('one.somethingElse')
  return html`${added.map(
      (material) =>
        html`<tr class="changed">
          <th scope="row">${material}</th>
          <td>${say('one.none')}</td>
          <td>${pourInput(material, faults)}</td>
        </tr>`,
    )}
    <tr>
      <td colspan="3">
        ${choice({ id: 'one:stranger', value: '', names, set, none, label: say('pad.somethingElse') })}
      </td>
    </tr>`
}
