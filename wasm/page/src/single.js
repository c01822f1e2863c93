// One pot, one step: what is due now, to be read from a meter away, with the keys for it, and the steps of its pot.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { loadDots, loadsKey } from './besides.js'
import { inIt, swollen } from './cards.js'
import { cautionsAt } from './cautions.js'
import { runsOut } from './cost.js'
import { cupAfter } from './cup.js'
import { heatNow, isByReading, unreadAt, unreadNote } from './heat.js'
import { degasNow } from './degas.js'
import { goodPieces } from './good.js'
import { letter } from './letter.js'
import { ofLibrary, sayStored, unbroken } from './library.js'
import { isPadOpen, padView, turnPad } from './pad.js'
import { once } from './press.js'
import { isDone, isSkipped, progress, skip, unskip } from './progress.js'
import { isHot } from './rail.js'
import { off, short } from './show.js'
import { change, state } from './state.js'
import { headOf, sayOf } from './steps.js'
import { clock, start, timerOf } from './timers.js'
import { local, say } from './words.js'

/** Shows one step, or the whole pot. */
export const turnWhole = () => change({ bench: { ...state.bench, whole: !state.bench.whole } })

export const wholeKey = () =>
  html`<button type="button" class="quiet whole" @click=${once('whole', turnWhole)}>
    ${say(state.bench.whole ? 'step.single' : 'step.whole')}
  </button>`

/** The way to measure an item: as the sheet has it, or another that was chosen. */
export function wayOf(item) {
  const { way } = state.bench
  const { best, others } = item.weigh
  return (way?.item === item.id && others.find(({ tool }) => tool === way.tool)) || best
}

/** What a tick of an item carries: the other way that it was measured. */
export function measuredAs(item) {
  if (!item.weigh) return {}
  const way = wayOf(item)
  return way === item.weigh.best ? {} : { words: way.measure }
}

/** The present step; `own` are the steps of its pot, `before` the cautions of the pot's steps before it. */
export function single(plan, steps, now, own, before) {
  if (!now) {
    return html`<div class="step-now">
      <section class="single" aria-label=${say('step.now')}>
        <p class="amount-now">${say('step.allDone')}</p>
      </section>
      ${skippedOf(steps)}
    </div>`
  }
  const { step, item } = now
  const at = step.of
  const { pot } = at
  const place = own.indexOf(step)
  return html`<div class="step-now">
      <section class="single ${step.kind}" aria-label=${say('step.now')}>
        <header>
          ${step.pots.map((pot) => letter(pot))}
          <div>
            <h2>
              ${say('step.pot', { pot: step.pots.join(' + ') })} <span class="in">${ofLibrary(pot.cup_name)}</span>
              ${
                isHot(pot, own)
                  ? html`<span class="hot-word"
                      >${say(step.kind === 'shoot' && unreadAt(step).length ? 'step.hotUnread' : 'step.hot')}</span
                    >`
                  : nothing
              }
            </h2>
            <p class="for">
              ${at.at.formulas.join(' + ')} · ${say('step.place', { place: place + 1, count: own.length })}
            </p>
          </div>
        </header>
        ${pot.there && item.weigh ? inIt(pot.there, own) : nothing}
        <h3>${headOf(step, at)}</h3>
        ${BODIES[step.kind]?.(plan, step, item) ?? sentence(item, at)} ${cautionsAt(step, before, step.isFirstHeat)}
        ${place === 0 ? html`${runsOut(plan, pot.pot)}${pot.warnings.map(({ message }) => html`<p class="runs-out">${ofLibrary(message)}</p>`)}` : nothing}
        ${[...at.details, ...step.together].map((detail) => html`<p class="detail">${ofLibrary(detail)}</p>`)}
        ${at.notes.length && !item.weigh ? html`<p class="hint">${ofLibrary(at.notes.join(' '))}</p>` : nothing}
      </section>
      ${skippedOf(steps)}
    </div>
    ${stepList(own, now)}`
}

const BODIES = {
  measure: weighing,
  add: weighing,
  'put-right': (plan, step, item) => (item.weigh ? weighing(plan, step, item) : undefined),
  degas: (plan, step, item) =>
    html`<div class="with-cup">
      <p class="ask-now">${degasNow(plan, step, item, 'foot').words}</p>
      ${swollen(plan, step.of.pot)}
    </div>`,
  heat: heating,
  shoot: shooting,
}

/** A step with one thing to do: its sentence is the heading, its amount is what counts. */
function sentence(item, at) {
  return html`${item.say === at.text ? nothing : html`<p class="ask-now">${sayOf(item)}</p>`}
    <div class="ways-now">${item.isFix ? nothing : skipKey(item)}</div>`
}

function weighing(plan, step, item) {
  const { weigh } = item
  const way = wayOf(item)
  const isFix = step.kind === 'put-right'
  const what = html`<p class="material-now">
    ${weigh.material} ${weigh.kind === weigh.material ? nothing : html`<small>${ofLibrary(weigh.kind)}</small>`}
  </p>`
  const amount = html`${ofLibrary(unbroken(way.measure))}${item.isMore ? html` ${say('step.more')}` : nothing}`
  if (isPadOpen(item))
    return html`${what}
      <p>${say('step.planned', { amount })}</p>
      ${padView(plan, step, item)}`
  return html`<div class="with-cup">
      <div>
        ${what}
        <p class="amount-now">${amount}</p>
        <p class="sureness">
          ${off(way) ? html`<span class="off">${off(way)}</span>` : nothing} ${sureness(weigh, way)}
        </p>
        ${weigh.beyond ? html`<p class="hint">${ofLibrary(weigh.beyond.message)}</p>` : nothing}
      </div>
      ${isFix ? nothing : atTheEnd(plan, step.of)}
    </div>
    ${keysOf(item, way, isFix)}`
}

/** A quantity that is not broken at the end of a line. */
const whole = (quantity) => html`<span class="quantity">${local(short(quantity))}</span>`

/** The cup as it is when all of this stage is in. */
const atTheEnd = (plan, { pot, at }) =>
  cupAfter(plan, pot, at, say('step.thenHolds', { mass: whole(at.holds), volume: whole(at.fills) }))

/** The keys of a material: the other ways that the plan gives, another amount, and to skip it. */
function keysOf(item, way, isFix) {
  const { best, others } = item.weigh
  const ways = [best, ...others].filter((other) => other !== way)
  const choose = ({ tool }) =>
    change({ bench: { ...state.bench, way: tool === best.tool ? null : { item: item.id, tool } } })
  return html`<div class="ways-now">
    ${ways.map(
      (other) =>
        html`<button
          type="button"
          class="quiet"
          data-way=${other.tool}
          @click=${once(`way ${other.tool}`, () => choose(other))}
        >
          ${say(`step.by_${other.tool}`, { measure: ofLibrary(other.measure) })}
        </button>`,
    )}
    ${
      isFix
        ? nothing
        : html`<button type="button" class="quiet other" @click=${once('pad', () => turnPad(item))}>
              ${say('step.otherAmount')}
            </button>
            ${skipKey(item)}`
    }
  </div>`
}

export const skipKey = (item) =>
  html`<button type="button" class="quiet skip-step" @click=${once('skip', () => skip(item))}>
    ${say('step.skip')}
  </button>`

/** How sure a measure is, as a small ±; marked only beyond the tolerance, and where another way would be surer. */
function sureness({ best, doubt, doubt_weighed: weighed, tolerance }, way) {
  const known = way === best ? doubt : way.tool === 'balance' ? weighed : null
  if (!known) return nothing
  const { uncertainty, main_source: source } = known
  const other = way === best ? weighed : doubt
  const isBeyond = uncertainty.value > tolerance.value
  const isMarked = isBeyond && other && other.uncertainty.value < uncertainty.value
  return html`<details class=${isMarked ? 'doubt' : 'off'}>
    <summary>± ${local(uncertainty.text)}</summary>
    <p>
      ${say('step.sure', { source: ofLibrary(source), tolerance: local(tolerance.text) })}
      ${isMarked ? say(way === best ? 'step.surerWeighed' : 'step.surerAsWritten', { uncertainty: local(other.uncertainty.text) }) : nothing}
    </p>
  </details>`
}

function heating(plan, step, item) {
  if (!isByReading(step)) return sentence(item, step.of)
  const known = step.heating?.known
  return html`<p class="ask-now">${heatNow(plan, step, 'foot').words}</p>
    <ul class="bursts-now">
      ${step.items.map((item) => html`<li class=${progress(item)}>${ofLibrary(item.say)}</li>`)}
      ${known ? html`<li>${say('step.over', { temperature: short(known.shoot_to) })}</li>` : nothing}
    </ul>`
}

function shooting(plan, step, item) {
  const { draw } = step.of
  return html`<div class="load-now">
      <p class="amount-now">${ofLibrary(unbroken(item.words))}</p>
      <p class="material-now">
        ${say('step.load', { number: step.items.indexOf(item) + 1, count: step.items.length })} ${loadDots(step)}
      </p>
    </div>
    ${
      draw.together_with.length
        ? html`<p class="detail">
            ${step.at.map(({ pot, draw }) => say('step.layer', { pot: pot.pot, share: local(draw.share.text) })).join(' · ')}
          </p>`
        : nothing
    }
    ${unreadNote(step)} ${goodPieces(step, draw)}
    <div class="ways-now">
      ${step.hot
        .filter((hot) => !timerOf(hot))
        .map(
          (hot) =>
            html`<button type="button" class="quiet" @click=${once('hot', () => start(hot, hot.clock))}>
              ▶ ${sayStored(hot.clock.label)}: ${hot.clock.words}
            </button>`,
        )}
      ${moldKey(item)} ${loadsKey(step)} ${skipKey(item)}
    </div>`
}

/** The clock of a mold that sets between the shots of a load: each shot starts it over. */
function moldKey({ starts, shots }) {
  if (!starts?.clock.seconds || shots < 2) return nothing
  const press = () => start(starts, starts.clock)
  return html`<button type="button" class="quiet" @click=${once('mold', press)}>
    ▶ ${sayStored(starts.clock.label)}: ${clock(starts.clock.seconds)}
  </button>`
}

/** What was skipped, what that means, and the key that does it after all. */
function skippedOf(steps) {
  const skipped = steps
    .flatMap((step) => step.items.filter(isSkipped).map((item) => ({ step, item })))
    .filter(({ step }) => !isShotOut(steps, step))
  if (!skipped.length) return nothing
  return html`<section class="skipped" aria-label=${say('step.skipped')}>
    <h2>${say('step.skipped')}</h2>
    <ul>
      ${skipped.map(
        ({ step, item }) =>
          html`<li>
            <p>
              <strong
                >${say('step.pot', { pot: step.pots.join(' + ') })}:
                ${step.kind === 'heat' ? say('step.hotUnread') : sayOf(item)}</strong
              >
              ${say(MEANS[step.kind] ?? 'step.meansNotDone')}
            </p>
            <button type="button" class="quiet" @click=${once(`unskip ${item.id}`, () => unskip(item))}>
              ${say('step.afterAll')}
            </button>
          </li>`,
      )}
    </ul>
  </section>`
}

/** Whether a step is a heat that all is shot from that was to be: its reading would come too late. */
function isShotOut(steps, heat) {
  const shots = steps.filter(
    ({ kind, pots, heated }) => kind === 'shoot' && pots.some((pot) => heated.get(pot) === heat),
  )
  return shots.length > 0 && shots.every(isDone)
}

const MEANS = {
  'from-shelf': 'step.meansNotIn',
  measure: 'step.meansNotIn',
  add: 'step.meansNotIn',
  degas: 'step.meansNotDegassed',
  heat: 'step.meansNotRead',
  shoot: 'step.meansNotShot',
}

/** The steps of the pot, with what is done, skipped and due. */
function stepList(own, now) {
  return html`<nav class="step-list" aria-label=${say('step.list')}>
    <ol>
      ${own.map((step) => {
        const skips = step.items.some(isSkipped)
        const state = step === now.step ? 'now' : isDone(step) ? 'done' : ''
        const materials = step.items.filter(({ weigh }) => weigh)
        return html`<li class=${state} aria-current=${step === now.step ? 'step' : nothing}>
          <span class="mark" aria-hidden="true"
            >${state === 'done' ? (skips ? '–' : '✓') : state === 'now' ? '▸' : ''}</span
          >
          <span
            >${headOf(step, step.of)}${skips ? html` <em>${say(step.kind === 'heat' ? 'step.hotUnread' : 'step.isSkipped')}</em>` : nothing}
            ${
              materials.length
                ? html`<ul>
                    ${materials.map(
                      (item) =>
                        html`<li class="${progress(item)} ${item === now.item ? 'due' : ''}">
                          ${item.weigh.material}
                          ${progress(item) === 'done' ? '✓' : progress(item) === 'skipped' ? say('step.isSkipped') : nothing}
                        </li>`,
                    )}
                  </ul>`
                : nothing
            }
          </span>
        </li>`
      })}
    </ol>
  </nav>`
}
