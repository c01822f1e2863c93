// The page: loads the library and what is kept from earlier visits, and draws again after each change.
import { html, nothing, render } from '../vendor/lit-html/lit-html.js'
import { bench, followPrinting, goToItem, isWhole } from './bench.js'
import { besides } from './besides.js'
import { bookView } from './book.js'
import { colorView } from './color.js'
import { editByKey, editsBar } from './edits.js'
import { load } from './core.js'
import { keys, spoken } from './faults.js'
import { followGloves } from './gloves.js'
import { heatNow, isByReading } from './heat.js'
import { degasNow, isUnderVacuum } from './degas.js'
import { announceNext, keysList, pressByKey } from './keys.js'
import { letter } from './letter.js'
import { lookAtAmount, oneView } from './one.js'
import { ordersView } from './orders.js'
import { isPadOpen } from './pad.js'
import { headOfSheets } from './paper.js'
import { isEmpty, largestLine, lookForOthers, planned, planNow, stopPlanning } from './planning.js'
import { once } from './press.js'
import { canUndo, next, toggle, undo } from './progress.js'
import { saltView } from './salt.js'
import { measuredAs } from './single.js'
import { about, day } from './show.js'
import { change, isInvented, onChange, scaleOf, state } from './state.js'
import { potsByLetter, steps } from './steps.js'
import { begun, demo, follow, keepNow, keepSoon, keptLast } from './storage.js'
import { clockOf, isOver, keepAwake, readySound, runTimers, start, timerBar, timerOf } from './timers.js'
import { updateNotice, watchForUpdate } from './update.js'
import { language, languageFor, say, speak } from './words.js'
import { ofEarlier, wordsOf } from './work.js'

const VIEWS = ['orders', 'bench', 'one', 'salt', 'color', 'book']

const view = () => (VIEWS.includes(location.hash.slice(1)) ? location.hash.slice(1) : 'bench')

const titleOf = (view) => say(`page.${view}`)

/** The last plan that could be made, with its steps and pots. */
const NOTHING = { plan: null, book: null, steps: [], pots: new Map(), scale: null, work: null, opened: 0 }
let last = NOTHING

function draw() {
  const made = planned()
  const { scale, work, opened } = state
  // Other documents: the plan before is none of theirs.
  if (opened !== last.opened) last = { ...NOTHING, opened }
  // A day that is begun keeps its plan until the library has said how it goes on.
  const plan = made.plan ?? made.base
  // The steps depend on the scale that is shown, and on what puts pots right.
  if (plan && (plan !== last.plan || scale !== last.scale || work !== last.work)) {
    const pots = plan === last.plan ? last.pots : potsByLetter(plan)
    last = { plan, book: made.book, pots, steps: steps(plan, work?.fix), scale, work, opened }
  } else if (last.plan && scale !== last.scale) {
    last = { ...last, steps: steps(last.plan, last.work?.fix), scale }
  }
  const shop = state.book.shop ?? 'pourwright'
  document.title = `${titleOf(view())} · ${shop}`
  headOfSheets([titleOf(view()), day(state.orders.day), shop].filter(Boolean).join(' · '))
  render(page(last, made), document.body)
  if (state.timers.length) runTimers()
}

function page({ plan, steps, pots, book }, made) {
  const { bookFaults, ordersFaults } = made
  const stale = !made.plan
  const shown = view()
  const faults = { orders: ordersFaults.length, book: bookFaults.length, day: made.dayFaults }
  return html`
    <a class="skip" href="#main" @click=${(event) => skip(event)}>To the work</a>
    <header class="top">
      <div class="shop"><strong>${state.book.shop ?? 'pourwright'}</strong> <span>${day(state.orders.day)}</span></div>
      <nav class="views" aria-label="Views">
        ${VIEWS.map(
          (name) =>
            html`<a href="#${name}" aria-current=${name === shown ? 'page' : nothing}
              >${titleOf(name)}${faults[name] ? html` <span class="fault-count">${faults[name]}</span>` : nothing}</a
            >`,
        )}
      </nav>
      <fieldset class="scale">
        <legend class="out-of-sight">Measures shown</legend>
        ${['us', 'metric'].map(
          (scale) =>
            html`<label
              ><input type="radio" name="scale" .checked=${state.scale === scale} @change=${() => change({ scale })} />
              <span>${scale === 'us' ? 'US' : 'Metric'}</span></label
            >`,
        )}
      </fieldset>
    </header>
    <main id="main" tabindex="-1" aria-busy=${state.reading > 0 || made.status === 'working'}>
      <h1 class="out-of-sight">${titleOf(shown)}</h1>
      ${[state.notice, state.unkept, state.sleeps].filter(Boolean).map((words) => html`<p class="notice" role="status">${words}</p>`)}
      ${updateNotice()} ${invented()} ${made.status === 'done' ? nothing : underWay(made, plan, shown)}
      ${made.status === 'done' && stale ? staleNotice(plan, faults, shown) : nothing} ${keysList(VIEWS)}
      ${guarded(() => viewOf(shown, { plan, steps, pots, book }, made))}
    </main>
    ${foot(shown, plan, steps, stale && !made.base, made.status)}
    <p id="said" class="out-of-sight" role="status"></p>
  `
}

/** Draws a view. If it fails, the rest of the page still works. */
function guarded(draw) {
  try {
    return draw()
  } catch (failure) {
    console.error(failure)
    return html`<p class="stale" role="alert">This cannot be shown: ${failure.message}</p>`
  }
}

function viewOf(shown, { plan, steps, pots, book }, made) {
  const { bookFaults, ordersFaults } = made
  if (shown === 'orders') {
    const now = made.gone ? made.gone.lines : made.plan && state.work?.lines
    return ordersView(plan, ordersFaults, made.plan !== null, now)
  }
  if (shown === 'book') return bookView(made.plan, bookFaults, ordersFaults)
  // Until its plan is there, a changed book may have faults.
  const unread = made.status !== 'done' && made.book !== book
  if ((bookFaults.length || unread) && shown !== 'bench') return nothing
  if (shown === 'salt') return saltView()
  if (shown === 'color') return colorView()
  if (shown === 'one') return oneView(pots, plan)
  const changes = made.gone ? wordsOf(made.gone) : (state.work?.changes ?? [])
  return plan ? bench(plan, steps, changes) : nothing
}

/** The notice on demo data. */
function invented() {
  return isInvented() ? html`<p class="invented">${say('page.invented')}</p>` : nothing
}

function staleNotice(plan, { orders, book, day }, shown) {
  if (isEmpty(state.orders) && !book) {
    return shown === 'orders'
      ? nothing
      : html`<p class="notice" role="status">
          There are no orders yet. <a class="button" href="#orders">Add a line</a>
          <a class="button quiet" href="#book">Open orders</a>
        </p>`
  }
  const begun = state.work
    ? html`<strong>The plan before the change is kept: pots that are begun can be finished by it.</strong>`
    : html`<strong>The plan shown here is an earlier one.</strong>`
  if (day.length) {
    return html`<div class="stale" role="alert">
      <p><strong>The day cannot go on with this change.</strong></p>
      ${day.map(
        ({ path, message, help }) =>
          html`<p>${path ? html`<code>${keys(path).map(spoken).join(' › ')}</code> ` : nothing}${message} ${help}</p>`,
      )}
      ${begun}
    </div>`
  }
  if (shown === 'orders' || shown === 'book') return nothing
  return html`<p class="stale" role="alert">
    ${book ? say('page.faultsInBook', { count: book }) : say('page.faultsInOrders', { count: orders })}
    ${plan ? begun : 'There is no plan yet.'}
    <a class="button" href="#${book ? 'book' : 'orders'}">Fix it</a>
  </p>`
}

/** Why there is no plan of the present documents yet, and the keys that go on. */
function underWay(made, plan, shown) {
  const earlier =
    plan && shown !== 'orders' && shown !== 'book'
      ? html`<strong>The plan shown here is an earlier one.</strong>`
      : nothing
  if (made.status === 'working') {
    return html`<p class="notice under-way" role="status">
      Calculating the plan … ${earlier}
      <button type="button" @click=${() => stopPlanning()}>Stop</button>
    </p>`
  }
  const [words, key] = WAITS[made.status](made)
  return html`<p class="stale" role="alert">
    ${words} ${earlier}
    <button type="button" @click=${once('plan now', planNow)}>${key}</button>
    ${
      shown !== 'orders' && (made.status === 'asked' || made.status === 'unfinished')
        ? html`<a class="button quiet" href="#orders">Change the orders</a>`
        : nothing
    }
  </p>`
}

const WAITS = {
  asked: ({ orders, pieces, pots }) => {
    const { number, pieces: most } = largestLine(orders)
    const many = (count) => count.toLocaleString('en-US')
    return [
      `The day has ${many(pieces)} pieces, ${many(most)} of them in line ${number}${pots ? `: about ${many(Number(about(pots)))} pots` : ''}. Is that right?`,
      `Keep ${many(pieces)} pieces`,
    ]
  },
  unfinished: () => ['The last visit ended before its plan was calculated.', 'Calculate it now'],
  stopped: () => ['The calculation of the plan was stopped.', 'Calculate it again'],
  slow: () => ['The plan was not ready after 30 s, and was stopped. Check the number of pieces.', 'Calculate it again'],
  failed: ({ failure }) => [`The plan could not be calculated (${failure}).`, 'Calculate it again'],
}

const isEditing = (shown) => shown === 'orders' || shown === 'book'

/** The bar at the foot: the clocks, and the next thing to do with a large button; where the documents are written, the last change. */
function foot(shown, plan, steps, stale, status) {
  const edits = isEditing(shown) || shown === 'color' ? editsBar() : nothing
  if (shown !== 'bench' && !state.timers.length && edits === nothing) return nothing
  const now = plan && !stale ? next(steps) : null
  if (plan && shown === 'bench') announceNext(now)
  return html`<aside class="foot" aria-label=${edits === nothing ? 'Clocks and next step' : 'Clocks and last change'}>
    <div class="timers">${timerBar(goToItem)}</div>
    ${
      shown === 'bench' && plan
        ? html`<div
            class="next ${isWhole() ? '' : 'one-step'} ${now && (isByReading(now.step) || isUnderVacuum(now)) ? 'by-reading' : ''}"
          >
            ${now && isPadOpen(now.item) ? nothing : now ? nextThing(plan, now, steps) : html`<p class="say">${stale ? WAITING[status] : 'All done.'}</p>`}
            ${now && isWhole() ? besides(now) : nothing}
            <button type="button" class="quiet undo-key" ?disabled=${!canUndo()} @click=${once('undo', undo)}>
              ${say('page.undo')}
            </button>
          </div>`
        : edits
    }
  </aside>`
}

/** What to do now, in the largest words, and the keys for it. */
function nextThing(plan, now, steps) {
  const { step, item } = now
  const asked = isByReading(step)
    ? heatNow(plan, step, 'foot')
    : step.kind === 'degas'
      ? degasNow(plan, step, item, 'foot')
      : null
  // With one step its words are in the view.
  const words = isWhole()
    ? html`<a class="say" href="#bench" @click=${(event) => goToItem(event, item.id)}>
        ${step.pots.map((pot) => letter(pot))} ${asked ? asked.words : html`<span>${item.say}</span>`}
      </a>`
    : nothing
  return html`${words} ${asked ? asked.keys : mainKey(now, steps)}`
}

/** What the next step waits for. */
const WAITING = {
  done: 'Fix the faults first.',
  working: 'Calculating the plan …',
  ...Object.fromEntries(Object.keys(WAITS).map((status) => [status, 'There is no plan yet: see above.'])),
}

/** The button for the next thing: starts its clock, or ticks it. One that ends a running clock looks different. */
function mainKey(now, steps) {
  const clock = clockOf(now.step, now.item)
  const timer = timerOf(now.item)
  if (clock?.seconds && !timer) {
    const press = () => {
      start(now.item, clock)
      goToItem(null, now.item.id)
    }
    return html`<button type="button" class="done-next clock" @click=${once('foot', press)}>
      <span aria-hidden="true">▶</span> ${clock.words}
    </button>`
  }
  const early = timer && timer.seconds !== null && !isOver(timer)
  return html`<button
    type="button"
    class="done-next ${early ? 'early' : ''}"
    @click=${once('foot', () => doneNext(now, steps))}
  >
    ${say(early ? 'step.early' : now.item.weigh && !isWhole() ? 'step.poured' : 'step.done')}
  </button>`
}

function doneNext(now, steps) {
  toggle(now.item, measuredAs(now.item))
  const after = next(steps)
  if (after) goToItem(null, after.item.id)
}

function skip(event) {
  event.preventDefault()
  document.getElementById('main').focus()
}

async function begin() {
  await Promise.all([load(), lookForOthers()])
  let before = null
  try {
    before = await keptLast()
  } catch (failure) {
    state.notice = `The data kept from an earlier visit cannot be read (${failure.message}): this is the demo.`
  }
  const parts = before?.book && before.orders ? ofEarlier(before) : await firstVisit()
  Object.assign(state, parts)
  await speak(languageFor(state.language))
  document.documentElement.lang = language()
  begun()
  followGloves()
  followPrinting()
  onChange(draw)
  onChange(keepSoon)
  addEventListener('hashchange', () => {
    draw()
    scrollTo(0, 0)
  })
  addEventListener('pagehide', keepNow)
  // Another tab has stored something; a page that comes back from the browser's cache may have missed it.
  addEventListener('storage', follow)
  addEventListener('pageshow', follow)
  for (const touch of ['pointerdown', 'pointerup', 'keydown']) addEventListener(touch, readySound)
  addEventListener('keydown', editByKey)
  addEventListener('keydown', (event) => pressByKey(event, VIEWS))
  document.addEventListener('visibilitychange', () => keepAwake())
  document.body.replaceChildren()
  change()
  document.documentElement.dataset.ready = 'true'
}

async function firstVisit() {
  const [book, orders, correct] = await Promise.all(['book', 'orders', 'correct'].map(demo))
  lookAtAmount(correct.formulas, correct.pot_base)
  return { book, orders, scale: scaleOf(book), one: state.one }
}

begin().catch((failure) => {
  document.getElementById('starting').textContent = `The page could not start: ${failure.message}`
  throw failure
})

watchForUpdate()
