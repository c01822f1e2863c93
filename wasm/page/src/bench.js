// The bench: the pots in the order of work, each with its steps.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { repeat } from '../vendor/lit-html/directives/repeat.js'
import { inIt, stepCard } from './cards.js'
import { runsOut } from './cost.js'
import { dayKeys } from './day-keys.js'
import { anything } from './generic.js'
import { keysKey } from './keys.js'
import { letter } from './letter.js'
import { ofLibrary } from './library.js'
import { toKnow } from './notes.js'
import { part, reveal } from './part.js'
import { begin, isBegun, isDone, next, ofBefore, progress } from './progress.js'
import { rail } from './rail.js'
import { day } from './show.js'
import { single, wholeKey } from './single.js'
import { change, state } from './state.js'
import { swatchesOf } from './swatch.js'
import { local, say } from './words.js'
import { shownChange } from './work.js'

/** The pots, and the entries of the order of work, that are shown at once. */
const [POTS, ENTRIES] = [20, 40]

/** What the plan and its steps have by pot and by entry of the order of work. */
let parts = { plan: null, steps: null }

function partsOf(plan, steps) {
  if (parts.plan === plan && parts.steps === steps) return parts
  const stepsOf = groups(steps, ({ pots }) => pots)
  const shotsOf = groups(
    steps.filter(({ kind }) => kind === 'shoot'),
    ({ work }) => [work],
  )
  const places = new Map(plan.pots.map(({ pot }, place) => [pot, place]))
  const itemPlaces = new Map(steps.flatMap(({ items, pots }) => items.map(({ id }) => [id, places.get(pots[0])])))
  parts = { plan, steps, stepsOf, shotsOf, linesOf: groups(plan.lines, ({ pots }) => pots), places, itemPlaces }
  return parts
}

/** The entries of a list by each of their keys. */
function groups(list, keysOf) {
  const found = new Map()
  for (const entry of list) {
    for (const key of keysOf(entry)) {
      if (found.has(key)) found.get(key).push(entry)
      else found.set(key, [entry])
    }
  }
  return found
}

/** Whether the whole pots are shown: as chosen, and always on paper. */
const paper = matchMedia('print')
let prints = false
export const isWhole = () => state.bench.whole || prints || paper.matches

/** Draws the whole pots while the page is printed; called once. */
export function followPrinting() {
  const turn = (on) => () => {
    prints = on
    change()
  }
  addEventListener('beforeprint', turn(true))
  addEventListener('afterprint', turn(false))
  paper.addEventListener('change', () => change())
}

/** The view; `steps` are the plan's, `changes` how the day went on. */
export function bench(plan, steps, changes) {
  const now = next(steps)
  const of = partsOf(plan, steps)
  of.due = new Set(now?.step.items.map(({ id }) => id))
  return isWhole() ? wholePots(plan, of, now, changes) : oneStep(plan, steps, of, now, changes)
}

/** One pot, one step. */
function oneStep(plan, steps, { stepsOf }, now, changes) {
  const own = now ? stepsOf.get(now.step.pots[0]) : []
  return html`<div class="bench one-step">
    <div class="at-a-glance">
      ${rail(plan, stepsOf, goToItem)}
      <div class="buttons">${wholeKey()} ${keysKey()}</div>
    </div>
    ${ofBefore()} ${wentOn(changes)} ${questions(plan)}
    ${single(plan, steps, now, own, now ? before(own)[own.indexOf(now.step)] : new Set())}
    <div class="buttons">${dayKeys()}</div>
  </div>`
}

function wholePots(plan, of, now, changes) {
  const { shown, keys } = part('pots', plan.pots, POTS, say('rail.pots'))
  return html`
    <div class="bench">
      <p class="sheet-title">
        <strong>${say('bench.sheet')}</strong> ${day(plan.day)} · ${plan.shop} · ${plan.made_from.orders.about}
      </p>
      ${orderOfWork(plan, of, now)}
      <div class="pots">
        ${ofBefore()} ${wentOn(changes)} ${questions(plan)} ${keys}
        ${repeat(
          shown,
          (pot) => pot.pot,
          (pot) => potCard(plan, pot, of, now),
        )}
        ${keys} ${toKnow(plan)}
      </div>
    </div>
  `
}

/** Scrolls to an item; one that is not due is in the whole pot. */
export function goToItem(event, id) {
  event?.preventDefault()
  if (!isWhole()) {
    if (!event || !parts.itemPlaces?.has(id) || parts.due?.has(id)) return scrollTo(0, 0)
    change({ bench: { ...state.bench, whole: true } })
  }
  if (!document.getElementById(`item:${id}`) && parts.itemPlaces?.has(id)) {
    reveal('pots', parts.itemPlaces.get(id), POTS)
    change()
  }
  if (location.hash !== '#bench') location.hash = '#bench'
  requestAnimationFrame(() => {
    const still = matchMedia('(prefers-reduced-motion: reduce)').matches
    const item = document.getElementById(`item:${id}`)
    item?.scrollIntoView({ block: 'center', behavior: still ? 'auto' : 'smooth' })
  })
}

/** The formulas that a layer is shot from. */
const layer = ({ at, heat }) => {
  const formulas = at.formulas.join(' + ')
  return heat ? formulas : say('bench.stillHot', { formulas })
}

function orderOfWork(plan, { shotsOf, stepsOf }, now) {
  const { proof } = plan
  const { shown, keys } = part('work', plan.work, ENTRIES, say('bench.entries'))
  return html`<nav class="work" aria-label=${say('bench.work')}>
    ${rail(plan, stepsOf, goToItem)}
    <div class="buttons">${wholeKey()} ${keysKey()}</div>
    <h2>${say('bench.work')}</h2>
    <ol>
      ${shown.map((work) => {
        // Reheats divide the shots of an entry into several steps.
        const own = shotsOf.get(work)
        const [step] = own
        const done = own.every((step) => isDone(step))
        const here = now && now.step.pots.some((pot) => step.pots.includes(pot)) && now.step.stage === step.stage
        return html`<li class="${done ? 'done' : ''} ${here ? 'here' : ''}">
          <a href="#bench" @click=${(event) => goToItem(event, step.items[0].id)}>
            <span class="letters">${step.pots.map((pot) => letter(pot))}</span>
            <span><strong>${work.mold}</strong> ${say('bench.shots', { count: work.shots })}</span>
            <span class="of">${step.at.map((of) => layer(of)).join(` ${say('bench.and')} `)}</span>
          </a>
        </li>`
      })}
    </ol>
    ${keys}
    <p class="proof">
      ${
        proof.pots === proof.least
          ? say('bench.fewest', { count: proof.pots })
          : say('bench.atLeast', { count: proof.pots, least: proof.least })
      }
    </p>
    ${time(plan)}
    <div class="buttons">
      <button type="button" @click=${() => print()}>${say('bench.print')}</button>
      <a class="button quiet" href="#book">${say('bench.cups')}</a>
      ${dayKeys()}
      <button type="button" class="quiet" @click=${begin}>${say('bench.clear')}</button>
    </div>
  </nav>`
}

/** How the day went on after the last change. */
function wentOn(changes) {
  if (!changes.length) return nothing
  return notices('went-on', say('bench.wentOn'), changes.map(shownChange))
}

/** Numbers that look wrong: to check before pouring. */
function questions(plan) {
  if (!plan.questions.length) return nothing
  const messages = plan.questions.map(({ message }) => ofLibrary(message))
  return notices('runs-out', say('bench.checkFirst'), messages, isBegun())
}

/** Sentences under a heading; with one step on a small screen they fold, so that the step is in sight. */
function notices(kind, title, list, isSeen = true) {
  if (isWhole() || !isSeen) {
    return html`<section class=${kind} aria-label=${title}>
      <h2>${title}</h2>
      <ul>
        ${list.map((words) => html`<li>${words}</li>`)}
      </ul>
    </section>`
  }
  return html`<details class=${kind}>
    <summary>${title} (${list.length})</summary>
    <ul>
      ${list.map((words) => html`<li>${words}</li>`)}
    </ul>
  </details>`
}

/** The time of the day, if the book has what that needs. */
function time({ clock }) {
  const { known, unknown } = clock ?? {}
  if (unknown) return html`<p class="proof">${say('bench.noTime')} ${ofLibrary(unknown.message)}</p>`
  if (!known) return nothing
  return html`<p class="proof">
    ${say(known.without_preparing ? 'bench.timeWithout' : 'bench.time', {
      total: local(known.total.text),
      heating: local(known.heating.text),
      shooting: local(known.shooting.text),
    })}
  </p>`
}

function potCard(plan, pot, { stepsOf, linesOf }, now) {
  const own = stepsOf.get(pot.pot) ?? []
  const lines = linesOf.get(pot.pot) ?? []
  const items = own.flatMap(({ items }) => items)
  const done = items.filter((item) => progress(item) === 'done').length
  const cautioned = before(own)
  return html`<section
    class="pot ${done === items.length ? 'done' : ''}"
    id="pot-${pot.pot}"
    aria-label=${say('step.pot', { pot: pot.pot })}
  >
    <header>
      ${letter(pot.pot)}
      <div>
        <h2>
          ${say('step.pot', { pot: pot.pot })}
          <span class="in">${say('bench.inCup', { cup: ofLibrary(pot.cup_name) })}</span>
          ${swatchesOf(pot.stages.flatMap(({ formulas }) => formulas))}
        </h2>
        <p class="for">
          ${lines
            .slice(0, ENTRIES)
            .map(
              (line) =>
                html`<span>${line.order} · ${line.what}${line.shape ? `, ${line.shape}` : ''} × ${line.pieces}</span>`,
            )}
          ${lines.length > ENTRIES ? html`<span>${say('bench.moreLines', { count: lines.length - ENTRIES })}</span>` : nothing}
        </p>
      </div>
      <progress
        max=${items.length}
        .value=${done}
        aria-label=${say('bench.done', { pot: pot.pot, done, all: items.length })}
      ></progress>
    </header>
    ${runsOut(plan, pot.pot)} ${pot.warnings.map(({ message }) => html`<p class="runs-out">${ofLibrary(message)}</p>`)}
    ${pot.there ? inIt(pot.there, own) : nothing}
    ${repeat(
      own,
      (step) => step.items[0].id,
      (step, at) => stepCard(plan, pot, step, now?.step === step ? now.item : null, cautioned[at]),
    )}
    <footer>${anything(pot, POT)}</footer>
  </section>`
}

/** For each step, the cautions of those before it. */
function before(steps) {
  const seen = new Set()
  return steps.map(({ cautions }) => {
    const own = new Set(seen)
    for (const code of cautions) seen.add(code)
    return own
  })
}

// The fields of a pot that have a place on its card; any other is listed below it.
const POT = 'pot id cup cup_name warnings degas there from_shelf stages heats left_over lost sprues'.split(' ')
