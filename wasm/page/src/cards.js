// The steps of a pot as cards: what to weigh, to degas, to heat and to shoot, with boxes to tick and keys for the clocks.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { cautionsAt } from './cautions.js'
import { cupDrawing } from './cup.js'
import { anything } from './generic.js'
import { letter } from './letter.js'
import { measured } from './meant.js'
import { lookAt } from './one.js'
import { once } from './press.js'
import { isDone, progress, toggle } from './progress.js'
import { about, both, counted, cupName, off, short } from './show.js'
import { state } from './state.js'
import { flakes } from './steps.js'
import { clock, clockOf, face, isOver, start, timerOf } from './timers.js'

// The fields that the cards show: what else a plan has is shown as it stands.
const STAGE =
  'formulas weigh holds fills fills_hot density density_uncertainty solids shoot_from shoot_to draws heats heating clock stir_every sprues_back carried'.split(
    ' ',
  )
const DRAW = 'mold share together_with shots spare_shots loads shots_per_load per_shot sprue pieces'.split(' ')
const PIECES = 'shape ordered made weighs uncertainty from to sinks_in flakes'.split(' ')
const WEIGH = 'material kind wanted best others tolerance doubt doubt_weighed'.split(' ')

const CARDS = {
  shelf: shelfCard,
  weigh: weighCard,
  degas: degasCard,
  heat: heatCard,
  shoot: shootCard,
  sprues: spruesCard,
}

/** The card of a step in the card of a pot; `now` is the item that comes next, where it is one of this step. */
export function stepCard(plan, pot, step, now) {
  return html`<div class="step ${step.kind} ${isDone(step) ? 'done' : ''} ${now ? 'now' : ''}">
    <span class="on-paper">${letter(pot.pot)}</span>
    ${CARDS[step.kind](plan, step, now, pot)}
  </div>`
}

/** The box that ticks an item off. */
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

/** What was ticked by other words than the plan has now, and what that comes to where it can be said. */
function changed(item, comesTo = () => '.') {
  return progress(item) === 'changed'
    ? html`<p class="changed">
        Ticked as “${state.done[item.id].words}”; the plan now says “${item.words}”${comesTo()}
      </p>`
    : nothing
}

/** How much more the plan now wants than was measured, as the bench measures that; what is too much is put right. */
function difference(step, item) {
  const { material, best } = item.weigh
  const { gives } = state.done[item.id]
  const grams = best.gives.value - gives.value
  const way = measured(material, { value: Math.abs(grams), unit: 'g' }).best
  const words = `: ${way?.measure ?? `${about(Math.abs(grams))} g`}`
  if (grams > 0) return html`${words} more.`
  return html`${words} less.
    <a class="button quiet" href="#one" @click=${() => lookAt(step, { [material]: gives.text })}>Put it right</a>`
}

function shelfCard(plan, step, now, pot) {
  return html`<h3>From the shelf</h3>
    ${simpleCard(plan, step, now)} ${anything(pot.from_shelf, ['left_overs'])}`
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
  return html`${cautionsAt(plan, 'hot-plastisol')} ${simpleCard(plan, step, now)}`
}

const isSalted = ({ weigh }) => weigh.some(({ kind }) => kind === 'salt')

function weighCard(plan, step, now, pot) {
  const { at, stage } = step.of
  return html`<h3>${stage === 1 ? 'Measure' : 'Now add'} <em>${at.formulas.join(' + ')}</em></h3>
    <p class="hint">
      ${stage === 1 ? 'Measure the base, then stir in the rest.' : 'To what is in the cup, and stir in.'}
    </p>
    ${cautionsAt(plan, ...(stage > 1 ? ['hot-plastisol'] : []), ...(isSalted(at) ? ['damp-salt'] : []))}
    <div class="with-cup">
      <ul class="weigh">
        ${step.items.map((item) => weighRow(step, item, now))}
      </ul>
      <figure>
        ${cupDrawing({
          book: plan.made_from.book,
          cup: pot.cup,
          level: at.fills,
          label: `The ${cupName(pot.cup)} then holds ${short(at.fills)}`,
        })}
        <figcaption>
          then holds <strong>${short(at.holds)}</strong>, cold ${both(at.fills)}; finished
          ${short(at.density)}${at.density_uncertainty ? ` ± ${at.density_uncertainty.text}` : nothing}
        </figcaption>
      </figure>
    </div>
    <div class="buttons">
      <a class="button quiet" href="#one" @click=${() => lookAt(step)}>Went wrong? Put it right</a>
    </div>
    ${anything(at, STAGE)}`
}

function weighRow(step, item, now) {
  const { weigh } = item
  const others = weigh.others.map((way) => html`<span>or ${way.measure} ${wayOff(way)}</span>`)
  return html`<li class="kind-${weigh.kind} ${progress(item)}">
    ${tick(item, now, item.say)}
    <span class="material">${weigh.material}<small>${weigh.kind}</small></span>
    <span class="measure">
      <strong>${weigh.best.measure}</strong> ${wayOff(weigh.best)} ${sure(weigh)}
      <small>${others}</small>
      ${weighed(weigh) ? nothing : html`<small>${short(weigh.best.gives)}</small>`}
    </span>
    ${changed(item, () => difference(step, item))}${anything(weigh, WEIGH)}
  </li>`
}

/** How sure the measure is; where that is less than its tolerance, also why, and what the balance would do for it. */
function sure({ doubt, doubt_weighed: balance, tolerance }) {
  if (!doubt) return nothing
  const { uncertainty, main_source: source } = doubt
  if (uncertainty.value <= tolerance.value) return html`<span class="off">± ${uncertainty.text}</span>`
  return html`<span class="doubt"
    >± ${uncertainty.text}: ${source}${balance ? `; weighed ± ${balance.uncertainty.text}` : nothing}</span
  >`
}

const weighed = ({ best, others }) => [best, ...others].some(({ tool }) => tool === 'balance')

const wayOff = (way) => (off(way) ? html`<span class="off">${off(way)}</span>` : nothing)

/** What the gauge says of the pressure in the chamber, and how far that can be trusted. */
function leftInChamber({ absolute, at_most, swells_at }) {
  if (at_most) {
    return html`anything up to ${both(at_most)} may be left in the chamber: so near its end the gauge cannot tell`
  }
  const reckoned = swells_at ? html`, reckoned with ${both(swells_at)}, as the gauge may be off` : nothing
  return html`${both(absolute)} are left in the chamber${reckoned}`
}

/** What of a pot goes into one of so many fills. */
const PART = { 2: 'half', 3: 'a third', 4: 'a quarter' }

function degasCard(plan, step, now) {
  const { known, unknown } = step.of.pot.degas ?? {}
  const cautions = cautionsAt(plan, 'vacuum')
  if (!known) {
    return html`<h3>Let the air out, before heating</h3>
      ${unknown ? html`<p class="hint">No fill mark: ${unknown.message}</p>` : nothing} ${cautions}
      ${step.items.map((item) => holdRow(step, item, now, 'Degassed'))}`
  }
  const gauge = known.is_absolute
    ? html`down to ${both(known.gauge)} absolute`
    : html`at ${both(known.gauge)} of vacuum`
  return html`<h3>Degas ${gauge}</h3>
    ${cautions}
    <div class="with-cup">
      <div>
        <p class="say">
          Fill the ${cupName(known.cup)} to <strong>${short(known.fill_mark)}</strong> at most:
          ${
            known.fills === 1
              ? html`all at once, ${both(known.level)} with the air in it.`
              : html`<strong>in ${known.fills} fills</strong>, ${PART[known.fills] ?? `one part in ${known.fills}`} of
                  it at a time, while the rest waits in another cup; each is ${both(known.level)} with the air in it.`
          }
        </p>
        ${step.items.map((item) => holdRow(step, item, now, known.fills > 1 ? `Fill ${step.items.indexOf(item) + 1}` : 'Degassed'))}
        <p class="hint">
          Swells ${known.rise.text}-fold, to ${both(known.swollen)}; ${leftInChamber(known)}.
          ${
            known.gauge_off
              ? `The air here does not give what the gauge shows: it reads at least ${short(known.gauge_off)} too much.`
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
          label: `The ${cupName(known.cup)}, filled to ${short(known.level)}, swells to ${short(known.swollen)}`,
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

/** The key that starts the clock of an item, or the clock while it runs. */
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
  const { at } = step.of
  const { known, unknown } = at.heating ?? {}
  const window =
    at.shoot_from && at.shoot_to
      ? html`${both(at.shoot_from)} at least, ${both(at.shoot_to)} at most`
      : html`what the supplier states`
  const pot = step.of.pot.pot
  const setting = known?.setting ? html`at <strong>${known.setting.text} of the oven’s power</strong>` : nothing
  return html`<h3>Heat ${step.again ? 'again' : nothing} ${setting} to ${window}</h3>
    ${cautionsAt(plan, 'hot-plastisol', 'fumes')}
    <p class="hint">
      Stir and read the thermometer before each burst, the first one too; repeat a line while the reading is in it.
      ${unknown ? html`<strong>No heating times:</strong> ${unknown.message}` : nothing}
    </p>
    ${together(step.work)}
    <ol class="bursts">
      ${step.items.map(
        (item) =>
          html`<li class=${progress(item)}>
            ${tick(item, now, `Pot ${pot}: ${item.say}`)}
            ${item.burst ? burst(step, item) : html`<p class="say">${known ? `${item.say}; above, stop and let it cool` : html`Heated, stirred, ${window}`}</p>`} ${changed(item)}
          </li>`,
      )}
    </ol>
    ${
      known
        ? html`<p class="hint">
            ${known.guess ? 'By the rated power alone, a first guess: time this pot. ' : nothing}
            ${
              known.beyond
                ? `${known.beyond.text} times beyond the amounts timed: the bursts are on the safe side. Time this pot. `
                : nothing
            }
            About ${known.total.text} of the oven in ${counted(known.bursts, 'burst')}.
          </p>`
        : nothing
    }
    ${reheats(at)}`
}

/** Where the reheats of a stage are among its shots, each with its own table, and how often it is stirred. */
function reheats({ clock, stir_every }) {
  const again = (clock?.known ?? []).filter(({ heating }) => heating)
  return html`${again.map(
    ({ after, shots, holds, heating }) => html`<p class="hint">
      <strong>After ${counted(after, 'shot')} heat it again</strong>, ${short(holds)} in it, for the next
      ${counted(shots, 'shot')}. ${heating.known ? table(heating.known) : heating.unknown.message}
    </p>`,
  )}
  ${stir_every ? html`<p class="hint">Its salt settles: stir every ${stir_every.text}, and before each load.</p>` : nothing}`
}

/** A table of readings in a line. */
function table({ bands, shoot_from, shoot_to }) {
  const rows = bands.map(({ below, burst }) => `Under ${short(below)}: ${burst.text}`)
  return `${rows.join('; ')}; ${short(shoot_from)} to ${short(shoot_to)}: shoot; above, stop and let it cool.`
}

/** How pots that are shot together become hot at once: one after the other, or on one clock where they are alike. */
function together({ from, heating }) {
  const heated = from.filter(({ heat }) => heat).map(({ pot }) => pot)
  if (heated.length < 2) return nothing
  const known = heating?.known
  return html`<p class="hint">
    Pots ${heated.join(' and ')} are all hot at once: one after the other, the largest first; it cools most slowly.
    ${
      known
        ? html`Or, as they are alike, on one clock: read each, the hottest counts.
          ${table(known)}`
        : nothing
    }
  </p>`
}

function burst(step, item) {
  const { burst, reading } = item
  return html`<p class="say">
      <span class="only">It shows <strong>${reading}</strong>: run ${burst.burst.text}</span>
      <span class="then">from the top of that to about ${short(burst.expected)}, ${short(burst.at_most)} at most</span>
    </p>
    ${clockKey(step, item)}`
}

function shootCard(plan, step, now, pot) {
  const { draw, of } = step.draws.find(({ of }) => of.pot.pot === pot.pot)
  const salted = of.pot.stages.slice(0, of.stage).some(isSalted)
  const others = draw.together_with
  // What several pots are shot for together stands with each of them, and is one step.
  const again = pot.pot === step.pots[0] ? '' : ` again with ${pot.pot}`
  return html`<h3>Shoot <em>${draw.mold}</em>: ${counted(draw.shots, 'shot')} of ${short(draw.per_shot)}</h3>
    ${cautionsAt(plan, 'hot-plastisol', 'water')}
    ${salted ? html`<p class="stir">Stir before every load: the salt settles.</p>` : nothing}
    ${
      others.length
        ? html`<p class="say together">
            Together with ${others.map((pot) => html`pot ${letter(pot)} `)}: all hot at once; this layer is
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
    <ul class="pieces">
      ${draw.pieces.filter(({ made }) => made > 0).map((pieces) => piecesOf(pieces))}
    </ul>
    ${
      draw.spare_shots > 0
        ? html`<p class="hint">The rest is enough for ${counted(draw.spare_shots, 'more shot')}.</p>`
        : nothing
    }
    ${anything(draw, DRAW)}`
}

function piecesOf(pieces) {
  const range =
    pieces.from.text === pieces.to.text ? nothing : html` (${short(pieces.from)} unfed, ${short(pieces.to)} fed)`
  return html`<li>
    ${pieces.shape ? html`<strong>${pieces.shape}:</strong> ` : nothing}${pieces.ordered} ordered,
    <strong>${pieces.made} made</strong>; each <strong>${short(pieces.weighs)}</strong>${
      pieces.uncertainty ? html` ± ${short(pieces.uncertainty)}` : nothing
    }${range}${pieces.flakes.length ? html`; about ${flakes(pieces)} in each` : nothing}.
    ${
      pieces.sinks_in
        ? html`<span class="changed">The sprue cannot feed these: they sink in. Top off or hold longer.</span>`
        : nothing
    }
    ${anything(pieces, PIECES)}
  </li>`
}
