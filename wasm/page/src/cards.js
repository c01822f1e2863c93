// The steps of a pot as cards: what to weigh, degas, heat and shoot, with boxes to tick and buttons for the clocks.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { cautionsAt } from './cautions.js'
import { cupAfter, cupDrawing } from './cup.js'
import { gaugeRead } from './degas.js'
import { anything } from './generic.js'
import { heatNow, isByReading, unreadNote } from './heat.js'
import { letter } from './letter.js'
import { ofLibrary, sayStored } from './library.js'
import { lookAt } from './one.js'
import { isPadOpen, padView } from './pad.js'
import { once } from './press.js'
import { isDone, progress, toggle } from './progress.js'
import { both, off, short } from './show.js'
import { headOf, sayOf } from './steps.js'
import { clockOf, isOver, running, start, timerOf } from './timers.js'
import { local, say } from './words.js'

// The fields that have a place on a card; any other is listed below it.
const STAGE =
  'formulas weigh holds fills fills_hot density density_uncertainty solids shoot_from shoot_to draws heats heating clock stir_every sprues_back carried'.split(
    ' ',
  )
const DRAW = 'line layer mold share together_with shots spare_shots loads shots_per_load per_shot sprue pieces'.split(
  ' ',
)
const PIECES = 'shape ordered made weighs uncertainty from to sinks_in flakes'.split(' ')
const WEIGH = 'material kind written_in add beyond wanted best others tolerance doubt doubt_weighed'.split(' ')

const CARDS = {
  'from-shelf': shelfCard,
  'put-right': fixCard,
  measure: weighCard,
  add: weighCard,
  degas: degasCard,
  heat: heatCard,
  shoot: shootCard,
  'sprues-back': simpleCard,
  store: simpleCard,
}

/** The steps whose notes are shown as they are; those of a weigh list are in its rows and under its cup. */
const NOTED = new Set(['from-shelf', 'degas', 'heat', 'shoot', 'sprues-back', 'store'])

/**
 * The card of a step within that of its pot; `now` is the next item, if it is one of this step, `before` the cautions of the
 * pot's steps before.
 */
export function stepCard(plan, pot, step, now, before) {
  const own = step.at.find((at) => at.pot.pot === pot.pot)
  return html`<div class="step ${step.kind} ${isDone(step) ? 'done' : ''} ${now ? 'now' : ''}">
    <span class="on-paper">${letter(pot.pot)}</span>
    <h3>${own.number === null ? nothing : `${own.number}. `}${headOf(step, own)}</h3>
    ${cautionsAt(step, before, step.isFirstHeat)}
    ${own.details.map((detail) => html`<p class="say">${ofLibrary(detail)}</p>`)}
    ${CARDS[step.kind](plan, step, now, own)}
    ${NOTED.has(step.kind) && own.notes.length ? html`<p class="hint">${ofLibrary(own.notes.join(' '))}</p>` : nothing}
  </div>`
}

/** The name of a box, which no other box of the day has. It is not an attribute, which could not mark the library's words. */
function tickName({ pot: { pot }, number }, item) {
  const what = sayOf(item)
  const name = number === null ? say('bench.tickToFix', { pot, what }) : say('bench.tick', { pot, what, step: number })
  return html`<span class="out-of-sight"
    >${name}${progress(item) === 'skipped' ? `, ${say('step.isSkipped')}` : nothing}</span
  >`
}

/** The box that ticks an item; `own` is the step of its pot. */
function tick(item, now, own, again = '') {
  const state = progress(item)
  return html`<button
    type="button"
    role="checkbox"
    class="tick ${state} ${item === now ? 'next' : ''}"
    id="item:${item.id}${again}"
    aria-checked=${state === 'done' ? 'true' : 'false'}
    @click=${once(item.id, () => toggle(item))}
  >
    ${tickName(own, item)}<span aria-hidden="true">${state === 'done' ? '✓' : state === 'skipped' ? '–' : ''}</span>
  </button>`
}

function shelfCard(plan, step, now, own) {
  const brings = own.pot.from_shelf.brings.map(({ material, mass }) => `${material} ${short(mass)}`)
  return html`${simpleCard(plan, step, now)}
    <p class="hint">${say('cards.brings', { materials: brings.join(', ') })}</p>
    ${anything(own.pot.from_shelf, ['left_overs', 'brings'])}`
}

/** A step with one thing to do: its sentence is the heading. */
function simpleCard(plan, step, now) {
  return step.items.map(
    (item) =>
      html`<div class="row">
        ${tick(item, now, step.of)}
        <p class="say">${say('step.done')}</p>
      </div>`,
  )
}

function weighCard(plan, step, now, own) {
  const { at, pot } = own
  const beyond = step.items.flatMap(({ weigh }) => weigh.beyond ?? [])
  return html`${beyond.map(({ message }) => html`<p class="hint">${ofLibrary(message)}</p>`)}
    <div class="with-cup">
      <ul class="weigh">
        ${step.items.map((item) => weighRow(step, item, now))}
      </ul>
      ${step.filled ? filled(plan, pot, at) : nothing}
    </div>
    ${step.items.filter(isPadOpen).map((item) => padView(plan, step, item))}
    <div class="buttons">
      <a class="button quiet" href="#one" @click=${() => lookAt(step)}>${say('cards.fix')}</a>
    </div>
    ${anything(at, STAGE)}`
}

/** What puts a pot right. */
function fixCard(plan, step, now) {
  return html`<ul class="weigh">
    ${step.items.map((item) =>
      item.weigh
        ? weighRow(step, item, now)
        : html`<li>
            ${tick(item, now, step.of)}
            <p class="say">${sayOf(item)}</p>
          </li>`,
    )}
  </ul>`
}

/** What the cup holds at the end of a stage. */
function filled(plan, pot, at) {
  const holds = {
    mass: html`<strong>${short(at.holds)}</strong>`,
    volume: both(at.fills),
    density: `${short(at.density)}${at.density_uncertainty ? ` ± ${local(at.density_uncertainty.text)}` : ''}`,
  }
  return cupAfter(plan, pot, at, say('cards.thenHolds', holds))
}

function weighRow(step, item, now) {
  const { weigh } = item
  const others = weigh.others.map(
    (way) => html`<span>${say('cards.or', { measure: ofLibrary(way.measure) })} ${wayOff(way)}</span>`,
  )
  return html`<li class="kind-${weigh.kind} ${progress(item)}">
    ${item.isNothing ? html`<span></span>` : tick(item, now, step.of)}
    <span class="material">${weigh.material}<small>${ofLibrary(weigh.kind)}</small></span>
    <span class="amount">
      <strong>${ofLibrary(weigh.best.measure)}${item.isMore ? ` ${say('step.more')}` : ''}</strong>
      ${wayOff(weigh.best)} ${sure(weigh)}
      <small>${others}</small>
      ${isWeighed(weigh) ? nothing : html`<small>${short(weigh.best.gives)}</small>`}
    </span>
    ${anything(weigh, WEIGH)}
  </li>`
}

/**
 * The uncertainty of a measure; if above its tolerance, also the cause. It is marked only where the scale would be surer, which
 * it then says.
 */
function sure({ doubt, doubt_weighed: weighed, tolerance }) {
  if (!doubt) return nothing
  const { uncertainty, main_source: source } = doubt
  const plain = `± ${local(uncertainty.text)}`
  if (uncertainty.value <= tolerance.value) return html`<span class="off">${plain}</span>`
  if (!weighed || weighed.uncertainty.value >= uncertainty.value)
    return html`<span class="unsure">${plain}: ${ofLibrary(source)}</span>`
  return html`<span class="doubt"
    >${plain}: ${ofLibrary(source)}; ${say('cards.weighed', { uncertainty: local(weighed.uncertainty.text) })}</span
  >`
}

const isWeighed = ({ best, others }) => [best, ...others].some(({ tool }) => tool === 'balance')

const wayOff = (way) => (off(way) ? html`<span class="off">${off(way)}</span>` : nothing)

function degasCard(plan, step, now, { pot }) {
  const rows = step.items.map((item) =>
    holdRow(
      step,
      item,
      now,
      step.items.length > 1 ? say('cards.fill', { number: item.number }) : say('cards.degassed'),
    ),
  )
  if (!pot.degas?.known) return rows
  return html`<div class="with-cup">
    <div>${rows}</div>
    ${swollen(plan, pot)}
  </div>`
}

/** The cup under vacuum, if how high the pot swells is known. */
export function swollen(plan, pot) {
  const { known } = pot.degas ?? {}
  if (!known) return nothing
  return html`<figure>
    ${cupDrawing({
      book: plan.made_from.book,
      cup: known.cup,
      level: known.level,
      swollen: known.swollen,
      label: say('cards.swells', {
        cup: short(known.cup),
        level: short(known.level),
        swollen: short(known.swollen),
      }),
    })}
  </figure>`
}

function holdRow(step, item, now, name) {
  return html`<div class="row">
      ${tick(item, now, step.of)}
      <p class="say">${name}</p>
      ${clockKey(step, item)}
    </div>
    ${gaugeRead(item)}`
}

/** The button that starts the clock of an item, or the clock while it runs. */
function clockKey(step, item) {
  const clockOfItem = clockOf(step, item)
  const timer = timerOf(item)
  if (timer) {
    return html`<output class="running ${isOver(timer) ? 'over' : ''}" aria-label=${sayStored(timer.label)}
      >${running(timer)}</output
    >`
  }
  return html`<button
    type="button"
    class="start ${clockOfItem.seconds ? '' : 'open'}"
    aria-label=${say('cards.start', { label: sayStored(clockOfItem.label), words: clockOfItem.words })}
    @click=${() => start(item, clockOfItem)}
  >
    <span aria-hidden="true">▶</span> ${clockOfItem.words}
  </button>`
}

function heatCard(plan, step, now, own) {
  const known = step.heating?.known
  const { words, keys } = isByReading(step) && !now && !isDone(step) ? heatNow(plan, step, 'card') : {}
  return html`${step.together.map((detail) => html`<p class="say">${ofLibrary(detail)}</p>`)}
    ${words ? html`<div class="ask">${words} ${keys}</div>` : nothing}
    <ol class="bursts">
      ${step.items.map(
        (item) =>
          html`<li class=${progress(item)}>
            ${tick(item, now, own)} ${item.burst ? burst(step, item) : html`<p class="say">${ofLibrary(item.say)}</p>`}
          </li>`,
      )}
    </ol>
    ${
      known
        ? html`<p class="hint">${say('step.over', { temperature: short(known.shoot_to) })} ${say('cards.repeat')}</p>`
        : nothing
    }`
}

function burst(step, item) {
  const { burst } = item
  return html`<p class="say">
      <span class="only">${ofLibrary(item.say)}</span>
      <span class="then"
        ><span class="expected">${say('cards.expected', { temperature: short(burst.expected) })} </span>${say(
          'cards.atMost',
          { temperature: short(burst.at_most) },
        )}</span
      >
    </p>
    ${clockKey(step, item)}`
}

function shootCard(plan, step, now, own) {
  const { pot, draw } = own
  // A step of several pots is shown at each of them.
  const again = pot.pot === step.pots[0] ? '' : `/again/${pot.pot}`
  return html`${
      draw.together_with.length
        ? html`<p class="say together">${say('cards.layer', { share: local(draw.share.text) })}</p>`
        : nothing
    }
    ${unreadNote(step)}
    ${step.hot.map(
      (hot) =>
        html`<div class="row">
          <p class="say">${sayStored(hot.clock.label)}:</p>
          ${clockKey(step, hot)}
        </div>`,
    )}
    <div class="loads" role="group" aria-label=${say('cards.loads', { mold: draw.mold, pot: pot.pot })}>
      ${step.items.map(
        (item) =>
          html`<div class="load ${progress(item)}">
            ${tick(item, now, own, again)}<span>${say('bench.shots', { count: item.shots })}</span>
          </div>`,
      )}
    </div>
    ${again || !step.isLastOfWork ? nothing : draw.pieces.map((pieces) => toWrite(pieces))}
    ${draw.pieces.map((pieces) => anything(pieces, PIECES))}${anything(draw, DRAW)}`
}

/** Places to write on paper: the good pieces, and what three of them weigh. */
function toWrite({ shape, made }) {
  if (!made) return nothing
  return html`<p class="on-paper to-write">
    ${shape ? `${shape}: ` : nothing}${say('cards.toWrite', { blank: html`<span class="blank"></span>`, made })}
    <span class="blank"></span> <span class="blank"></span> <span class="blank"></span>
  </p>`
}

/** What is in a pot that was there when the plan was made; with what puts it right, if that is still to go in. */
export function inIt({ mass, fills, hot, degassed }, steps) {
  const isToFix = steps.some((step) => step.kind === 'put-right' && !isDone(step))
  return html`<p class="step say">
    ${say(isToFix ? 'cards.inItOnceRight' : 'cards.inIt', { mass: short(mass), volume: both(fills) })}${
      hot ? `, ${say('step.hot')}` : nothing
    }${degassed ? `, ${say('cards.isDegassed')}` : nothing}.
  </p>`
}
