// The steps of a pot as cards: what to weigh, degas, heat and shoot, with boxes to tick and buttons for the clocks.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { cautionsAt } from './cautions.js'
import { cupDrawing } from './cup.js'
import { anything } from './generic.js'
import { letter } from './letter.js'
import { measured } from './meant.js'
import { lookAt } from './one.js'
import { once } from './press.js'
import { isDone, progress, toggle } from './progress.js'
import { about, both, counted, off, short } from './show.js'
import { state } from './state.js'
import { flakes } from './steps.js'
import { clock, clockOf, face, isOver, start, timerOf } from './timers.js'

// The fields that have a place on a card; any other is listed below it.
const STAGE =
  'formulas weigh holds fills fills_hot density density_uncertainty solids shoot_from shoot_to draws heats heating clock stir_every sprues_back carried'.split(
    ' ',
  )
const DRAW = 'mold share together_with shots spare_shots loads shots_per_load per_shot sprue pieces'.split(' ')
const PIECES = 'shape ordered made weighs uncertainty from to sinks_in flakes'.split(' ')
const WEIGH = 'material kind written_in add beyond wanted best others tolerance doubt doubt_weighed'.split(' ')

const CARDS = {
  'from-shelf': shelfCard,
  measure: weighCard,
  add: weighCard,
  degas: degasCard,
  heat: heatCard,
  shoot: shootCard,
  'sprues-back': spruesCard,
  store: storeCard,
}

/** The card of a step within that of its pot; `now` is the next item, if it is one of this step. */
export function stepCard(plan, pot, step, now) {
  return html`<div class="step ${step.kind} ${isDone(step) ? 'done' : ''} ${now ? 'now' : ''}">
    <span class="on-paper">${letter(pot.pot)}</span>
    ${CARDS[step.kind](plan, step, now, pot)}
  </div>`
}

/** The box that ticks an item. */
function tick(item, now, label, again = '') {
  const state = progress(item)
  return html`<button
    type="button"
    role="checkbox"
    class="tick ${state} ${item === now ? 'next' : ''}"
    id="item:${item.id}${again}"
    aria-checked=${state === 'done' ? 'true' : 'false'}
    aria-label=${label}
    @click=${once(item.id, () => toggle(item))}
  >
    <span aria-hidden="true">${state === 'done' ? '✓' : state === 'changed' ? '!' : ''}</span>
  </button>`
}

/** The notice that a ticked amount has changed since; `comesTo` gives what follows from it. */
function changed(item, comesTo = () => '.') {
  return progress(item) === 'changed'
    ? html`<p class="changed">Ticked at ${state.done[item.id].words}, now ${item.words}${comesTo()}</p>`
    : nothing
}

/** How much more the plan needs than was measured, as the bench measures it; if less, a link to fix it. */
function difference(step, item) {
  const { material, best } = item.weigh
  const { gives } = state.done[item.id]
  const grams = best.gives.value - gives.value
  const way = measured(material, { value: Math.abs(grams), unit: 'g' }).best
  const words = `: ${way?.measure ?? `${about(Math.abs(grams))} g`}`
  if (grams > 0) return html`${words} more.`
  return html`${words} less.
    <a class="button quiet" href="#one" @click=${() => lookAt(step, { [material]: gives.text })}>Fix it</a>`
}

function shelfCard(plan, step, now, pot) {
  return html`${simpleCard(plan, step, now)} ${anything(pot.from_shelf, ['left_overs'])}`
}

function simpleCard(plan, step, now) {
  return step.items.map(
    (item) =>
      html`<div class="row">
          ${tick(item, now, item.say)}
          <p class="say">${item.say}</p>
        </div>
        ${changed(item)}`,
  )
}

function spruesCard(plan, step, now) {
  return html`${cautionsAt(step)} ${simpleCard(plan, step, now)}`
}

function storeCard(plan, step, now) {
  return html`${simpleCard(plan, step, now)} ${step.details.map((detail) => html`<p class="hint">${detail}</p>`)}`
}

const isSalted = ({ weigh }) => weigh.some(({ kind }) => kind === 'salt')

function weighCard(plan, step, now, pot) {
  const { at } = step.of
  const hot = isHot(step.items[0])
  // What the cup holds is known for the end of the stage, after what goes in hot.
  const last = hot || !at.weigh.some((weigh) => isHot({ weigh }))
  return html`${
      hot
        ? html`<h3>Add hot: <em>${step.items.map(({ weigh }) => weigh.material).join(', ')}</em></h3>`
        : html`<h3>${step.kind === 'measure' ? 'Measure' : 'Now add'} <em>${at.formulas.join(' + ')}</em></h3>`
    }
    <p class="hint">${step.of.text}</p>
    ${hot && at.heating?.known ? html`<p class="hint">${afterAdding(at.heating.known)}</p>` : nothing}
    ${cautionsAt(step)}
    ${step.items.map(({ weigh: { material, add, beyond } }) => [
      add.how ? html`<p class="hint">${material}: ${add.how}</p>` : nothing,
      beyond ? html`<p class="hint">${beyond.message}</p>` : nothing,
    ])}
    <div class="with-cup">
      <ul class="weigh">
        ${step.items.map((item) => weighRow(step, item, now))}
      </ul>
      ${
        last
          ? html`<figure>
              ${cupDrawing({
                book: plan.made_from.book,
                cup: pot.cup,
                level: at.fills,
                label: `The ${pot.cup_name} at ${short(at.fills)}`,
              })}
              <figcaption>
                then holds <strong>${short(at.holds)}</strong>, cold ${both(at.fills)}; finished
                ${short(at.density)}${at.density_uncertainty ? ` ± ${at.density_uncertainty.text}` : nothing}
              </figcaption>
            </figure>`
          : nothing
      }
    </div>
    <div class="buttons">
      <a class="button quiet" href="#one" @click=${() => lookAt(step)}>Went wrong? Fix it</a>
    </div>
    ${anything(at, STAGE)}`
}

const isHot = ({ weigh }) => weigh.add.when === 'hot'

/** What to do by the thermometer once something has gone into the hot pot. */
function afterAdding({ shoot_from: from, shoot_to: to }) {
  const [low, high] = [short(from), short(to)]
  return `Under ${low}: heat again by the table above. ${low} to ${high}: shoot. Over ${high}: let it cool.`
}

function weighRow(step, item, now) {
  const { weigh } = item
  const others = weigh.others.map((way) => html`<span>or ${way.measure} ${wayOff(way)}</span>`)
  return html`<li class="kind-${weigh.kind} ${progress(item)}">
    ${tick(item, now, item.say)}
    <span class="material">${weigh.material}<small>${weigh.kind}</small></span>
    <span class="amount">
      <strong>${weigh.best.measure}</strong> ${wayOff(weigh.best)} ${sure(weigh)}
      <small>${others}</small>
      ${isWeighed(weigh) ? nothing : html`<small>${short(weigh.best.gives)}</small>`}
    </span>
    ${changed(item, () => difference(step, item))}${anything(weigh, WEIGH)}
  </li>`
}

/** The uncertainty of a measure; if above its tolerance, also the cause, and the uncertainty on the scale. */
function sure({ doubt, doubt_weighed: weighed, tolerance }) {
  if (!doubt) return nothing
  const { uncertainty, main_source: source } = doubt
  if (uncertainty.value <= tolerance.value) return html`<span class="off">± ${uncertainty.text}</span>`
  return html`<span class="doubt"
    >± ${uncertainty.text}: ${source}${weighed ? `; weighed ± ${weighed.uncertainty.text}` : nothing}</span
  >`
}

const isWeighed = ({ best, others }) => [best, ...others].some(({ tool }) => tool === 'balance')

const wayOff = (way) => (off(way) ? html`<span class="off">${off(way)}</span>` : nothing)

/** The pressure left in the chamber by the gauge, and its bounds. */
function leftInChamber({ absolute, at_most, swells_at }) {
  if (at_most) {
    return html`up to ${both(at_most)} may be left in the chamber: so near its end the gauge cannot show it`
  }
  const careful = swells_at ? html` (calculated with ${both(swells_at)}, as the gauge may be off)` : nothing
  return html`${both(absolute)} is left in the chamber${careful}`
}

/** The part of a pot in each fill, by the number of fills. */
const PART = { 2: 'half', 3: 'a third', 4: 'a quarter' }

function degasCard(plan, step, now) {
  const { known, unknown } = step.of.pot.degas ?? {}
  if (!known) {
    return html`<h3>Let the air out, before heating</h3>
      ${unknown ? html`<p class="hint">No fill mark: ${unknown.message}</p>` : nothing} ${cautionsAt(step)}
      ${step.items.map((item) => holdRow(step, item, now, 'Degassed'))}`
  }
  const gauge = known.is_absolute
    ? html`down to ${both(known.gauge)} absolute`
    : html`at ${both(known.gauge)} of vacuum`
  return html`<h3>Degas ${gauge}</h3>
    ${cautionsAt(step)}
    <div class="with-cup">
      <div>
        <p class="say">
          Fill the ${known.cup_name} to <strong>${short(known.fill_mark)}</strong> at most:
          ${
            known.fills === 1
              ? html`all at once, ${both(known.level)} with the air in it.`
              : html`<strong>in ${known.fills} fills</strong>, ${PART[known.fills] ?? `one part in ${known.fills}`} of
                  it at a time, while the rest waits in another cup. Each is ${both(known.level)} with the air in it.`
          }
        </p>
        ${step.items.map((item) => holdRow(step, item, now, known.fills > 1 ? `Fill ${step.items.indexOf(item) + 1}` : 'Degassed'))}
        <p class="hint">
          Swells ${known.rise.text}-fold, to ${both(known.swollen)}. At that vacuum ${leftInChamber(known)}.
          ${
            known.gauge_off
              ? `The air here cannot give what the gauge shows: it reads at least ${short(known.gauge_off)} too high.`
              : nothing
          }
        </p>
      </div>
      <figure>
        ${cupDrawing({
          book: plan.made_from.book,
          cup: known.cup,
          level: known.level,
          swollen: known.swollen,
          label: `The ${known.cup_name}, filled to ${short(known.level)}, swells to ${short(known.swollen)}`,
        })}
      </figure>
    </div>`
}

function holdRow(step, item, now, name) {
  return html`<div class="row">
      ${tick(item, now, `Pot ${step.pots[0]}: ${item.say}`)}
      <p class="say">${name}</p>
      ${clockKey(step, item)}
    </div>
    ${changed(item)}`
}

/** The button that starts the clock of an item, or the clock while it runs. */
function clockKey(step, item) {
  const clockOfItem = clockOf(step, item)
  const timer = timerOf(item)
  if (timer) {
    return html`<output class="running ${isOver(timer) ? 'over' : ''}" aria-label=${timer.label}
      >${clock(face(timer))}</output
    >`
  }
  return html`<button
    type="button"
    class="start ${clockOfItem.seconds ? '' : 'open'}"
    aria-label="Start: ${clockOfItem.label}, ${clockOfItem.words}"
    @click=${() => start(item, clockOfItem)}
  >
    <span aria-hidden="true">▶</span> ${clockOfItem.words}
  </button>`
}

function heatCard(plan, step, now) {
  const { known, unknown } = step.heating ?? {}
  const { at, pot, text } = step.of
  const from = known?.shoot_from ?? at.shoot_from
  return html`<h3>
      ${step.again ? 'Heat again' : 'Heat'}${from ? html` to <span class="quantity">${short(from)}</span>` : nothing}
    </h3>
    <p class="hint">${text}</p>
    ${cautionsAt(step)} ${step.work.details.map((detail) => html`<p class="hint">${detail}</p>`)}
    ${unknown ? html`<p class="hint">No heating times: ${unknown.message}</p>` : nothing}
    ${
      known
        ? html`<p class="hint">
            Stir and read the thermometer before each burst, the first one too. Repeat a line while the reading is in
            it. The readings allow for the error of the thermometer.
            ${known.guess ? 'The bursts are a first guess from the rated power: time this pot.' : nothing}
            ${known.beyond ? `${known.beyond.text} times beyond the amounts timed, so the bursts are shorter: time this pot.` : nothing}
          </p>`
        : nothing
    }
    <ol class="bursts">
      ${step.items.map(
        (item) =>
          html`<li class=${progress(item)}>
            ${tick(item, now, `Pot ${pot.pot}: ${item.say}`)}
            ${item.burst ? burst(step, item) : html`<p class="say">${item.say}</p>`} ${changed(item)}
          </li>`,
      )}
    </ol>
    ${
      known
        ? html`<p class="hint">Expect about ${counted(known.bursts, 'burst')}, ${known.total.text} of oven time.</p>`
        : nothing
    }`
}

function burst(step, item) {
  const { burst, say } = item
  return html`<p class="say">
      <span class="only">${say}</span>
      <span class="then">takes it to ${short(burst.expected)} or less; never above ${short(burst.at_most)}</span>
    </p>
    ${clockKey(step, item)}`
}

function shootCard(plan, step, now, pot) {
  const { draw, of } = step.draws.find(({ of }) => of.pot.pot === pot.pot)
  const salted = of.pot.stages.slice(0, of.stage).some(isSalted)
  const others = draw.together_with
  // A step of several pots is shown at each of them.
  const again = pot.pot === step.pots[0] ? '' : ` again with ${pot.pot}`
  return html`<h3>
      Shoot <em>${draw.mold}</em>: ${counted(step.to - step.from + 1, 'shot')} of
      <span class="quantity">${short(draw.per_shot)}</span>
    </h3>
    ${cautionsAt(step)}
    ${
      salted
        ? html`<p class="stir">
            Stir before every load${of.at.stir_every ? `, and every ${of.at.stir_every.text}` : nothing}: the salt
            settles.
          </p>`
        : nothing
    }
    ${
      others.length
        ? html`<p class="say together">
            Together with ${others.map((pot) => html`pot ${letter(pot)} `)}: all hot at once. This layer is
            ${draw.share.text} of the piece.
          </p>`
        : nothing
    }
    ${step.hot.map(
      (hot) =>
        html`<div class="row">
          <p class="say">${hot.clock.label}:</p>
          ${clockKey(step, hot)}
        </div>`,
    )}
    <div class="loads" role="group" aria-label="Loads of ${draw.mold} from pot ${pot.pot}">
      ${step.items.map(
        (item) =>
          html`<div class="load ${progress(item)}">
            ${tick(item, now, `Pot ${pot.pot}: ${item.say}`, again)}<span>${counted(item.shots, 'shot')}</span>
          </div>`,
      )}
    </div>
    ${step.items.map((item) => changed(item))}
    ${
      step.to - step.from + 1 < draw.shots
        ? html`<p class="hint">Shots ${step.from} to ${step.to} of ${draw.shots}.</p>`
        : nothing
    }
    ${
      step.to === draw.shots
        ? html`<ul class="pieces">
            ${draw.pieces.filter(({ made }) => made > 0).map((pieces) => piecesOf(pieces))}
          </ul>`
        : nothing
    }
    ${
      step.to === draw.shots && draw.spare_shots > 0
        ? html`<p class="hint">What is left is enough for ${counted(draw.spare_shots, 'more shot')}.</p>`
        : nothing
    }
    ${anything(draw, DRAW)}`
}

function piecesOf(pieces) {
  const range =
    pieces.from.text === pieces.to.text ? nothing : html` (min ${short(pieces.from)}, max ${short(pieces.to)})`
  return html`<li>
    ${pieces.shape ? html`<strong>${pieces.shape}:</strong> ` : nothing}${pieces.ordered} ordered,
    <strong>${pieces.made} made</strong>; each <strong>${short(pieces.weighs)}</strong>${
      pieces.uncertainty ? html` ± ${short(pieces.uncertainty)}` : nothing
    }${range}${pieces.flakes.length ? html`; about ${flakes(pieces)} in each` : nothing}.
    ${
      pieces.sinks_in
        ? html`<span class="changed">The sprue cannot feed these, so they sink in. Top off or hold longer.</span>`
        : nothing
    }
    ${anything(pieces, PIECES)}
  </li>`
}
