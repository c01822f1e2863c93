// What is left of the day's pots goes to the shelf of the next day's order list, by one key a jar.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { editAll } from './edits.js'
import { replace } from './book.js'
import { once } from './press.js'
import { ask } from './core.js'
import { records } from './records.js'
import { short } from './show.js'
import { change, state } from './state.js'
import { message, say } from './words.js'

/** The shelf's entry for a jar of a record, as the library writes it. */
const entryOf = ({ shelf }, { name }) => {
  const [{ value } = { value: [] }] = shelf.filter(({ path }) => path === '/shelf')
  return value.find((entry) => entry.name === name)
}

const waits = (name) => state.day.shelf.some((entry) => entry.name === name)

/** The jars that are left of a pot, each with the key that puts it on the shelf. */
export function leftOf(record) {
  if (!record.jars.length) return nothing
  return html`<div class="left-over">
    <h3>${say('shelf.leftOver')}</h3>
    ${jars(record)}
  </div>`
}

function jars(record) {
  return html`<ul class="jars">
    ${record.jars.map((jar) => {
      const there = waits(jar.name)
      const entry = entryOf(record, jar)
      return html`<li>
        <p><strong>${jar.name}</strong><br />${jarWords(jar)}</p>
        <button
          type="button"
          class=${there ? 'quiet' : ''}
          aria-pressed=${there}
          aria-label="${there ? say('shelf.off') : say('shelf.on')}: ${jar.name}"
          @click=${once(`jar ${jar.name}`, () => turn(entry, there))}
        >
          ${there ? say('shelf.isOn') : say('shelf.on')}
        </button>
      </li>`
    })}
  </ul>`
}

function turn(entry, there) {
  const others = state.day.shelf.filter(({ name }) => name !== entry.name)
  change({ day: { ...state.day, shelf: there ? others : [...others, entry] } })
}

/** What is in a jar. */
const jarWords = ({ mass, sprues, heats }) =>
  [
    short(mass),
    sprues.value > 0 && say('shelf.sprues', { mass: short(sprues) }),
    heats && say('shelf.heats', { count: heats }),
  ]
    .filter(Boolean)
    .join(', ')

/** Leftovers that wait for an order list: those that are not on the present one. */
export const waiting = () => {
  const there = new Set(shelfOf(state.orders).map(({ name }) => name))
  return state.day.shelf.filter(({ name }) => !there.has(name))
}

const shelfOf = ({ shelf }) => (Array.isArray(shelf) ? shelf.filter((one) => one?.name) : [])

/** Puts what waits on the shelf of the present order list. */
export function putOnList() {
  const value = [...shelfOf(state.orders), ...waiting()]
  editAll(
    [
      { of: 'orders', path: ['shelf'], value },
      { of: 'day', path: ['shelf'], value: [] },
    ],
    message('shelf.added', { count: waiting().length }),
  )
}

/** The key that puts what waits on the shelf of the present order list; nothing if nothing waits. */
export function waitingForList() {
  const { length } = waiting()
  if (!length) return nothing
  return html`<div class="waiting">
    <p>${say('shelf.waits', { count: length })}</p>
    <button type="button" class="quiet" @click=${once('put on list', putOnList)}>${say('shelf.put')}</button>
  </div>`
}

/** The part of the view. */
export function shelfPart(made) {
  const today = records().filter(({ record }) => record.day === (state.orders.day ?? null))
  const left = today.flatMap(({ record }) => record.jars)
  const known = new Set(left.map(({ name }) => name))
  const others = state.day.shelf.filter(({ name }) => !known.has(name))
  return html`<section class="shelf-part">
    <h2>${say('shelf.leftOver')}</h2>
    ${left.length ? today.map(({ record }) => jars(record)) : html`<p class="hint">${say('shelf.none')}</p>`}
    ${
      others.length
        ? html`<h2>${say('shelf.earlier')}</h2>
            <ul class="jars">
              ${others.map(
                (entry) =>
                  html`<li>
                    <p><strong>${entry.name}</strong><br />${entry.mass}</p>
                    <button type="button" class="quiet" @click=${once(`jar ${entry.name}`, () => turn(entry, true))}>
                      ${say('shelf.off')}
                    </button>
                  </li>`,
              )}
            </ul>`
        : nothing
    }
    <h2>${say('shelf.next')}</h2>
    <p>${say('shelf.nextWhat', { count: waiting().length })}</p>
    <div class="buttons">
      <button type="button" @click=${once('next day', () => nextList(made))}>${say('shelf.begin')}</button>
      ${waiting().length ? html`<button type="button" class="quiet" @click=${once('put on list', putOnList)}>${say('shelf.today')}</button>` : nothing}
    </div>
    ${waiting().length ? html`<p class="hint">${say('shelf.todayWhat')}</p>` : nothing}
  </section>`
}

/** The day after one that is written as a date; none if it is not. */
function dayAfter(day) {
  const date = new Date(`${day}T00:00:00Z`)
  if (!/^\d{4}-\d{2}-\d{2}$/.test(day ?? '') || Number.isNaN(date.valueOf())) return undefined
  date.setUTCDate(date.getUTCDate() + 1)
  return date.toISOString().slice(0, 10)
}

/** Begins the order list of the next day: with the stock that is left, the shelf as it stays, and what was put away. */
function nextList({ base, plan }) {
  const now = plan ?? base
  const shelf = [...(now ? staysOn(now) : shelfOf(state.orders)), ...waiting()]
  const stock = now?.stock?.length
    ? Object.fromEntries(now.stock.map(({ material, left: { value, unit } }) => [material, { value, unit }]))
    : state.orders.stock
  const day = dayAfter(state.orders.day)
  const orders = {
    format: state.orders.format,
    ...(day && { day }),
    lines: [],
    ...(stock && { stock }),
    ...(shelf.length && { shelf }),
  }
  const { day: before } = state
  if (!replace({ orders })) return
  change({ before: { ...state.before, day: before }, day: { ...before, shelf: [], pot: '' } })
  location.hash = '#orders'
}

/** What stays of the shelf of a plan's order list, as the library writes it: the record of no pot at all. */
function staysOn(plan) {
  const request = {
    calculate: 'record',
    book: plan.made_from.book,
    plan: { ...plan, pots: [] },
    actuals: { format: plan.format, pots: {} },
  }
  const { answer } = ask(request)
  return answer?.shelf.find(({ path }) => path === '/shelf')?.value ?? []
}
