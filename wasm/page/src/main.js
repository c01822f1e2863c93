// The page: loads the library and what is kept from earlier visits, and draws again after each change.
import { html, nothing, render } from '../vendor/lit-html/lit-html.js'
import { bench, followPrinting, goToItem, isWhole } from './bench.js'
import { compiled, compiledRest, demo } from './begin.js'
import { besides } from './besides.js'
import { bookView } from './book.js'
import { colorView } from './color.js'
import { dayView } from './day.js'
import { editByKey, editsBar } from './edits.js'
import { NotYet, load, loadRest } from './core.js'
import { keys, said, spoken } from './faults.js'
import { followGloves } from './gloves.js'
import { heatNow, isByReading } from './heat.js'
import { degasNow, isUnderVacuum } from './degas.js'
import { inventedWords, lookForDemo } from './invented.js'
import { announceNext, keysList, pressByKey } from './keys.js'
import { followLanguage } from './language.js'
import { letter } from './letter.js'
import { lookAtAmount, oneView } from './one.js'
import { ordersView } from './orders.js'
import { isPadOpen } from './pad.js'
import { headOfSheets } from './paper.js'
import { isEmpty, largestLine, lookForOthers, makeWhatWaits, planNow, stopPlanning } from './planning.js'
import { once } from './press.js'
import { canUndo, next, toggle, undo } from './progress.js'
import { saltView } from './salt.js'
import { measuredAs } from './single.js'
import { about, day } from './show.js'
import { change, onChange, scaleOf, state } from './state.js'
import { shownPlan, shownPots, shownSteps } from './shown.js'
import { sayOf } from './steps.js'
import { begun, follow, keepNow, keepSoon, keptLast } from './storage.js'
import { clockOf, isOver, keepAwake, readySound, runTimers, start, timerBar, timerOf } from './timers.js'
import { updateNotice, watchForUpdate } from './update.js'
import { VIEWS, foldViews, titleOf, view, viewLinks } from './views.js'
import { say } from './words.js'
import { ofEarlier, wordsOf } from './work.js'

function draw() {
  const shown = shownPlan()
  const shop = state.book.shop ?? 'pourwright'
  document.title = `${titleOf(view())} · ${shop}`
  headOfSheets([titleOf(view()), day(state.orders.day), shop].filter(Boolean).join(' · '))
  render(page(shown), document.body)
  if (state.timers.length) runTimers()
}

function page({ made, plan, book }) {
  const { bookFaults, ordersFaults } = made
  const stale = !made.plan
  const shown = view()
  const faults = { orders: ordersFaults.length, book: bookFaults.length, day: made.dayFaults }
  const counts = { orders: faults.orders, book: faults.book }
  return html`
    <a class="skip" href="#main" @click=${(event) => skip(event)}>${say('page.toWork')}</a>
    <header class="top">
      <div class="shop"><strong>${state.book.shop ?? 'pourwright'}</strong> <span>${day(state.orders.day)}</span></div>
      ${viewLinks(counts)}
      <fieldset class="scale">
        <legend class="out-of-sight">${say('page.measuresShown')}</legend>
        ${['us', 'metric'].map(
          (scale) =>
            html`<label
              ><input type="radio" name="scale" .checked=${state.scale === scale} @change=${() => change({ scale })} />
              <span>${say(`page.${scale}`)}</span></label
            >`,
        )}
      </fieldset>
    </header>
    <main id="main" tabindex="-1" aria-busy=${state.reading > 0 || made.status === 'working'}>
      <h1 class="out-of-sight">${titleOf(shown)}</h1>
      ${[state.notice, state.unkept, state.sleeps].filter(Boolean).map((words) => html`<p class="notice" role="status">${words}</p>`)}
      ${updateNotice()} ${invented()} ${made.status === 'done' ? nothing : underWay(made, plan, shown)}
      ${made.status === 'done' && stale ? staleNotice(plan, faults, shown) : nothing} ${keysList(VIEWS)}
      ${guarded(() => viewOf(shown, { made, plan, book }))}
    </main>
    ${foot(shown, plan, stale && !made.base, made.status)}
    <p id="said" class="out-of-sight" role="status"></p>
  `
}

/** Draws a view. If it fails, the rest of the page still works. */
function guarded(draw) {
  try {
    return draw()
  } catch (failure) {
    if (failure instanceof NotYet) {
      stillLoading.isSaid = true
      return html`<p class="notice" role="status">${stillLoading.words()}</p>`
    }
    console.error(failure)
    return html`<p class="stale" role="alert">${say('page.cannotShow', { why: failure.message })}</p>`
  }
}

function viewOf(shown, { made, plan, book }) {
  const { bookFaults, ordersFaults } = made
  if (shown === 'orders') {
    const now = made.gone ? made.gone.lines : made.plan && state.work?.lines
    return ordersView(plan, ordersFaults, made.plan !== null, now)
  }
  if (shown === 'book') return bookView(made.plan, bookFaults, ordersFaults)
  // Until its plan is there, a changed book may have faults.
  const unread = made.status !== 'done' && made.book !== book
  if ((bookFaults.length || unread) && shown !== 'bench' && shown !== 'day') return nothing
  if (shown === 'salt') return saltView()
  if (shown === 'color') return colorView()
  if (shown === 'one') return oneView(shownPots(), plan)
  if (shown === 'day') return dayView(made)
  const changes = made.gone ? wordsOf(made.gone) : (state.work?.changes ?? [])
  return plan ? bench(plan, shownSteps(), changes) : nothing
}

/** The notice on demo data. */
function invented() {
  const words = inventedWords()
  return words ? html`<p class="invented">${words}</p>` : nothing
}

function staleNotice(plan, { orders, book, day }, shown) {
  if (isEmpty(state.orders) && !book) {
    return shown === 'orders'
      ? nothing
      : html`<p class="notice" role="status">
          ${say('page.noOrders')} <a class="button" href="#orders">${say('page.addLine')}</a>
          <a class="button quiet" href="#book">${say('page.openOrders')}</a>
        </p>`
  }
  const begun = state.work
    ? html`<strong>${say('page.planKept')}</strong>`
    : html`<strong>${say('page.planEarlier')}</strong>`
  if (day.length) {
    return html`<div class="stale" role="alert">
      <p><strong>${say('page.cannotGoOn')}</strong></p>
      ${day.map(
        (fault) =>
          html`<p>
            ${fault.path ? html`<code>${keys(fault.path).map(spoken).join(' › ')}</code> ` : nothing}${said(fault, 'message')}
            ${said(fault, 'help')}
          </p>`,
      )}
      ${begun}
    </div>`
  }
  if (shown === 'orders' || shown === 'book') return nothing
  return html`<p class="stale" role="alert">
    ${book ? say('page.faultsInBook', { count: book }) : say('page.faultsInOrders', { count: orders })}
    ${plan ? begun : say('page.noPlan')}
    <a class="button" href="#${book ? 'book' : 'orders'}">${say('page.fix')}</a>
  </p>`
}

/** Why there is no plan of the present documents yet, and the keys that go on. */
function underWay(made, plan, shown) {
  const earlier =
    plan && shown !== 'orders' && shown !== 'book' ? html`<strong>${say('page.planEarlier')}</strong>` : nothing
  if (made.status === 'working') {
    return html`<p class="notice under-way" role="status">
      ${say('page.calculating')} ${earlier}
      <button type="button" @click=${() => stopPlanning()}>${say('page.stop')}</button>
    </p>`
  }
  const [words, key] = WAITS[made.status](made)
  return html`<p class="stale" role="alert">
    ${words} ${earlier}
    <button type="button" @click=${once('plan now', planNow)}>${key}</button>
    ${
      shown !== 'orders' && (made.status === 'asked' || made.status === 'unfinished')
        ? html`<a class="button quiet" href="#orders">${say('page.changeOrders')}</a>`
        : nothing
    }
  </p>`
}

const WAITS = {
  asked: ({ orders, pieces, pots }) => {
    const { number, pieces: most } = largestLine(orders)
    const values = { pieces, most, number }
    return [
      pots ? say('page.askedPots', { ...values, pots: about(pots) }) : say('page.asked', values),
      say('page.keepPieces', { pieces }),
    ]
  },
  unfinished: () => [say('page.unfinished'), say('page.calculateNow')],
  stopped: () => [say('page.stopped'), say('page.again')],
  slow: () => [say('page.slow'), say('page.again')],
  failed: ({ failure }) => [say('page.failed', { why: failure }), say('page.again')],
}

const isEditing = (shown) => shown === 'orders' || shown === 'book'

/** The bar at the foot: the clocks, and the next thing to do with a large button; where the documents are written, the last change. */
function foot(shown, plan, stale, status) {
  const edits = isEditing(shown) || shown === 'color' || shown === 'day' ? editsBar() : nothing
  if (shown !== 'bench' && !state.timers.length && edits === nothing) return nothing
  const isBench = shown === 'bench' && plan
  const steps = isBench ? shownSteps() : []
  const now = isBench && !stale ? next(steps) : null
  if (isBench) announceNext(now)
  return html`<aside class="foot" aria-label=${say(edits === nothing ? 'page.clocksAndNext' : 'page.clocksAndChange')}>
    <div class="timers">${timerBar(goToItem)}</div>
    ${
      isBench
        ? html`<div
            class="next ${isWhole() ? '' : 'one-step'} ${now && (isByReading(now.step) || isUnderVacuum(now)) ? 'by-reading' : ''}"
          >
            ${now && isPadOpen(now.item) ? nothing : now ? nextThing(plan, now, steps) : html`<p class="say">${say(stale ? (WAITING[status] ?? 'page.seeAbove') : 'page.allDone')}</p>`}
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
        ${step.pots.map((pot) => letter(pot))} ${asked ? asked.words : html`<span>${sayOf(item)}</span>`}
      </a>`
    : nothing
  return html`${words} ${asked ? asked.keys : mainKey(now, steps)}`
}

/** What the next step waits for, if it is not said above. */
const WAITING = { done: 'page.fixFirst', working: 'page.calculating' }

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

/** What is kept of earlier visits, and the words: what follows is said in the language of the reader. */
async function earlierVisits() {
  let [before, unread] = [null, null]
  try {
    before = await keptLast()
  } catch (failure) {
    unread = failure
  }
  const isKept = Boolean(before?.book && before.orders)
  if (isKept) Object.assign(state, ofEarlier(before))
  await followLanguage()
  document.getElementById('starting').textContent = say('page.starting')
  if (unread) state.notice = say('store.earlier', { why: unread.message })
  return isKept
}

const earlier = earlierVisits()

/** Takes the demo if nothing is kept; whether it did. */
async function documents() {
  const isFirst = !(await earlier)
  if (isFirst) Object.assign(state, await firstVisit())
  return isFirst
}

/** The views that the first part of the library draws of a day that is not begun. */
const OF_FIRST = ['orders', 'bench']

async function begin() {
  const [isFirst] = await Promise.all([documents(), load(compiled), lookForDemo(), lookForOthers()])
  const rest = loadRest(compiledRest)
  if (!isFirst || !OF_FIRST.includes(view())) await rest
  begun()
  followGloves()
  followPrinting()
  onChange(draw)
  onChange(keepSoon)
  addEventListener('hashchange', () => {
    foldViews()
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
  await follows(rest)
}

/** What is said where the rest of the library is needed and not there yet; whether that was said. */
const stillLoading = { words: () => say('page.restLoading'), isSaid: false }

/** Reports in place of a press that the rest of the library is not there yet. */
function reportLoading(event) {
  if (!((event.error ?? event.reason) instanceof NotYet)) return
  event.preventDefault()
  stillLoading.isSaid = true
  change({ notice: stillLoading.words() })
}

/** Waits for the rest of the library, and draws what has needed it meanwhile. */
async function follows(rest) {
  addEventListener('error', reportLoading)
  addEventListener('unhandledrejection', reportLoading)
  try {
    await rest
  } catch (failure) {
    stillLoading.words = () => say('page.noRest', { why: failure.message })
    change({ notice: stillLoading.words() })
    return
  }
  const isWaiting = makeWhatWaits()
  const notice = state.notice === stillLoading.words() ? '' : state.notice
  if (isWaiting || stillLoading.isSaid) change({ notice })
  document.documentElement.dataset.whole = 'true'
}

async function firstVisit() {
  const { book, orders, correct } = await demo()
  lookAtAmount(correct.formulas, correct.pot_base)
  return { book, orders, scale: scaleOf(book), one: state.one }
}

begin()
  .catch(async (failure) => {
    await earlier.catch(() => {})
    document.getElementById('starting').textContent = say('page.noStart', { why: failure.message })
    throw failure
  })
  // The first visit loads the page before what is stored for later ones; a version that cannot start may be replaced by a new one.
  .finally(watchForUpdate)
