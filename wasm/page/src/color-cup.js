// The cup on the way to a color: what is in it, how its samples looked, and the next drops. All of it is a trial of the library;
// the page keeps its log.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { asked } from './asked.js'
import { forgetSample, kept } from './color-pictures.js'
import { editBook } from './edits.js'
import { faultsAt, keys, messages } from './faults.js'
import { choice, field, number, textInput } from './fields.js'
import { once } from './press.js'
import { reply, variant } from './replies.js'
import { ofLibrary } from './library.js'
import { change, state, valueAt, withValue } from './state.js'
import { apart, differenceText, hexOf, labOf, swatch } from './swatch.js'
import { local, message, say } from './words.js'

const edit = (parts) => change({ color: { ...state.color, ...parts } })

/** A cup that nothing was poured into yet. */
export const newCup = () => ({ log: [], play: null, taken: '', before: {}, save: '' })

/** The colorants that the book can calculate with. */
const colorants = () =>
  Object.entries(state.book.materials ?? {})
    .filter(([, entry]) => entry?.kind === 'colorant' && Array.isArray(entry.let_downs) && entry.let_downs.length)
    .map(([name]) => name)

/**
 * The book of the cup: colorants whose strength was learned from this cup are as they were before, so that its samples are not
 * counted twice.
 */
function bookOfCup() {
  const { before } = state.color
  const known = Object.entries(before).filter(([material]) => state.book.materials?.[material])
  if (!known.length) return state.book
  const back = (book) =>
    known.reduce((now, [material, was]) => withValue(now, ['materials', material, 'strength'], was ?? undefined), book)
  return variant(state.book, `before:${JSON.stringify(known)}`, back)
}

/** The trial, with steps that are not poured yet. */
function trial(more = []) {
  const { start, formulas, log } = state.color
  return { start: start.trim(), ...(formulas.length && { formulas }), log: [...log, ...more] }
}

/** The reply on the cup once `amounts` are in: how it looks then, as the library calculates it after all samples. */
function lookOf(amounts) {
  const { target, seen } = state.color
  const poured = stepOf(amounts)
  const more = [...(seen ? [{ looks: seen.color }] : []), ...(poured ? [poured] : [])]
  // Nothing else may go in: the answer is about this alone.
  const request = { calculate: 'color-next', target: target.color, trial: trial(more), leave_out: colorants() }
  return reply(request, bookOfCup())
}

/** A number of drops; null for an amount in another unit. */
function dropsOf(amount = '') {
  if (amount === '') return 0
  const [, count] = /^(\d+) drops?$/.exec(amount) ?? [null, null]
  return count && Number(count)
}

const inDrops = (count) => (count > 0 ? `${count} ${count === 1 ? 'drop' : 'drops'}` : '')

/** A step of the log for amounts of colorants; null if there are none. */
function stepOf(amounts) {
  const poured = Object.entries(amounts).filter(([, amount]) => amount.trim() !== '')
  return poured.length ? Object.fromEntries(poured) : null
}

/** The section. */
export function cupPart() {
  const { start, target } = state.color
  const request = start.trim() && target ? nextRequest() : null
  const { answer = null, faults = [] } = request ? reply(request, bookOfCup()) : {}
  return html`<section class="color-cup" aria-labelledby="color-cup">
    <h2 id="color-cup" tabindex="-1">${say('cup.title')}</h2>
    ${whatIsIn(faults)}
    ${messages(
      'color/cup',
      faults.filter(({ path }) => !/^\/trial\/(start|formulas)/.test(path)),
    )}
    ${answer ? nextDrops(answer) : request ? nothing : waits()} ${logPart()} ${answer ? learned(answer) : nothing}
    ${answer && state.color.log.length ? saveAs() : nothing} ${request && answer ? asked([request, answer]) : nothing}
  </section>`
}

function waits() {
  return html`<p class="hint">${say(state.color.target ? 'cup.wantsStart' : 'cup.wantsTarget')}</p>`
}

function nextRequest() {
  const { target, seen, out, close } = state.color
  const enough = close.trim()
  const there = colorants()
  const leave_out = out.filter((name) => there.includes(name))
  return {
    calculate: 'color-next',
    target: target.color,
    trial: trial(),
    ...(seen && { seen: seen.color }),
    ...(leave_out.length && { leave_out }),
    ...(enough && { close_enough: number(enough) }),
  }
}

/** What the cup started from. */
function whatIsIn(faults) {
  const { start, formulas, log, close } = state.color
  const names = Object.keys(state.book.formulas ?? {})
  const own = faultsAt(faults, ['trial', 'start'])
  const set = (at, name) => edit({ formulas: name ? formulas.with(at, name) : formulas.toSpliced(at, 1) })
  const faulty = faultsAt(faults, ['close_enough'])
  return html`<div class="fields">
    ${field(
      say('cup.start'),
      'color/start',
      textInput({
        id: 'color/start',
        value: start,
        size: 8,
        placeholder: '1/2 cup',
        amount: true,
        faults: own,
        set: (start) => edit({ start }),
      }),
      own,
    )}
    ${formulas.map((name, at) => {
      const id = `color/formula/${at}`
      const own = faultsAt(faults, ['trial', 'formulas', at])
      return field(
        say('cup.formula'),
        id,
        choice({ id, value: name, names, faults: own, set: (name) => set(at, name), none: say('cup.none') }),
        own,
      )
    })}
    ${field(
      say(formulas.length ? 'cup.anotherFormula' : 'cup.formula'),
      'color/formula/more',
      choice({
        id: 'color/formula/more',
        value: '',
        names,
        set: (name) => name && edit({ formulas: [...formulas, name] }),
        none: say('cup.none'),
      }),
    )}
    ${field(
      say('cup.close'),
      'color/close',
      textInput({
        id: 'color/close',
        value: close,
        size: 4,
        placeholder: '1',
        faults: faulty,
        set: (close) => edit({ close }),
        numeric: true,
      }),
      faulty,
    )}
    ${
      log.length
        ? html`<div class="field ends">
            <button type="button" class="quiet" @click=${once('new cup', begin)}>${say('cup.new')}</button>
          </div>`
        : nothing
    }
  </div>`
}

function begin() {
  if (!confirm(say('cup.forgets'))) return
  forgetSample()
  edit({ ...newCup(), seen: null })
}

/** Whether something was poured of which no sample was read yet. */
function isUnseen() {
  const { log, seen } = state.color
  const last = log.filter((step) => !step.taken).at(-1)
  return !seen && last !== undefined && !last.looks
}

/** What to do next, and the keys to play with drops before any is poured. */
function nextDrops(answer) {
  const { play, target, seen } = state.color
  const unseen = isUnseen()
  const suggested = Object.fromEntries(answer.add.map(({ material, amount }) => [material, amount]))
  const amounts = play ?? (unseen ? {} : suggested)
  const now = lookOf({}).answer
  const { answer: then, faults } = lookOf(amounts)
  const some = stepOf(amounts)
  const set = (name, amount) => edit({ play: { ...amounts, [name]: amount } })
  return html`
    <div class="next-drops" aria-live="polite">
      ${
        unseen
          ? html`<p class="outcome">${say('cup.stir')}</p>
              <p>${say('cup.byCalculation', { what: differenceText(answer.now) })}</p>
              <p>${ofLibrary(answer.statement)}</p>`
          : html`${answer.text.map((line, at) => html`<p class=${at ? '' : 'outcome'}>${ofLibrary(line)}</p>`)}
            ${moreBase(answer)}`
      }
    </div>
    <div class="looks">
      ${seenAs(seen ? seen.hex : now && hexOf(labOf(now.expected)), say(seen ? 'cup.sampleNow' : 'cup.cupNow'))}
      ${seenAs(target.hex, say('color.target'))}
      ${some && then ? seenAs(hexOf(labOf(then.expected)), say('cup.then')) : nothing}
    </div>
    <p class="say then" role="status">
      ${some && then ? say('cup.with', { what: listed(some), difference: differenceText(then.now) }) : nothing}
      ${some ? nothing : say('cup.noDrops')}
    </p>
    ${messages('color/play', faults)}
    <ul class="drops">
      ${colorants().map((name) => dropRow(name, amounts[name], (amount) => set(name, amount)))}
    </ul>
    <div class="buttons">
      <button type="button" ?disabled=${!some || !then} @click=${once('poured', () => pour(some))}>
        ${some ? say('cup.pouredWhat', { what: listed(some) }) : say('cup.poured')}
      </button>
      ${
        play
          ? html`<button type="button" class="quiet" @click=${() => edit({ play: null })}>
              ${say('cup.suggested')}
            </button>`
          : nothing
      }
    </div>
    ${leftOut()}
  `
}

const listed = (step) =>
  Object.entries(step)
    .map(([name, amount]) => say('cup.of', { amount: local(amount), material: name }))
    .join(', ')

const seenAs = (hex, words) =>
  html`<figure>
    ${swatch(hex, words)}
    <figcaption>${words}</figcaption>
  </figure>`

/** A colorant with its drops; one that goes in by the spoon or by weight has its amount as a text. */
function dropRow(name, amount, set) {
  const [strongest] = [...state.book.materials[name].let_downs].reverse()
  const id = `color/drops/${name}`
  const count = dropsOf(amount)
  const isDrops = count !== null && (Boolean(amount) || dropsOf(strongest?.dose) !== null)
  const counted = (text) => (/^\d*$/.test(text.trim()) ? inDrops(Number(text)) : text)
  const text = textInput({
    id,
    value: isDrops ? count : amount,
    size: 3,
    numeric: isDrops,
    amount: true,
    set: (text) => set(isDrops ? counted(text) : text),
  })
  const key = (sign, label, to) =>
    html`<button type="button" aria-label=${label} ?disabled=${to < 0} @click=${() => set(inDrops(to))}>
      ${sign}
    </button>`
  return html`<li>
    ${swatch(hexOf(strongest?.color ?? {}), say('cup.lastPiece', { name }), 'small')}
    <label for=${id}>${name}</label>
    <span class="keys" role="group" aria-label=${say(isDrops ? 'cup.dropsOf' : 'cup.amountOf', { name })}>
      ${isDrops ? html`${key('−', say('cup.fewerDrops', { name }), count - 1)} ${text} ${key('+', say('cup.moreDrops', { name }), count + 1)}` : text}
    </span>
  </li>`
}

/** Colorants that are not to be used. */
function leftOut() {
  const { out } = state.color
  const there = colorants()
  const left = there.filter((name) => out.includes(name))
  const turn = (name) =>
    edit({ out: left.includes(name) ? left.filter((one) => one !== name) : [...left, name], play: null })
  return html`<details>
    <summary>${left.length ? say('cup.leftOut', { names: left.join(', ') }) : say('cup.leaveOut')}</summary>
    <div class="buttons">
      ${there.map(
        (name) =>
          html`<button
            type="button"
            class=${left.includes(name) ? '' : 'quiet'}
            aria-pressed=${left.includes(name)}
            @click=${() => turn(name)}
          >
            ${name}
          </button>`,
      )}
    </div>
  </details>`
}

/** Notes that something went in: the sample of before, then what was poured. */
function pour(step) {
  const { log, seen } = state.color
  forgetSample()
  edit({ log: [...log, ...(seen ? [{ looks: seen.color }] : []), step], seen: null, play: null })
}

/** The plastisol of the cup, if it is one. */
function baseOfCup() {
  const bases = state.color.formulas.map((name) => state.book.formulas?.[name]?.base).filter(Boolean)
  const base = bases[0] ?? state.book.default_base
  return typeof base === 'string' ? base : null
}

function moreBase({ more_base: more }) {
  const base = baseOfCup()
  if (!more || !base) return nothing
  return html`<div class="buttons">
    <button type="button" @click=${once('poured', () => pour({ [base]: more.text }))}>
      ${say('cup.pouredWhat', { what: listed({ [base]: more.text }) })}
    </button>
  </div>`
}

/** The log of the trial; its last entry can be taken back. */
function logPart() {
  const { log, taken } = state.color
  const take = () => edit({ log: [...log, { taken: taken.trim() }], taken: '' })
  return html`<h3>${say('cup.log')}</h3>
    ${
      log.length
        ? html`<ol class="log">
            ${log.map((step) => html`<li>${stepWords(step)}</li>`)}
          </ol>`
        : html`<p class="hint">${say('cup.noLog')}</p>`
    }
    <div class="fields">
      ${field(
        say('cup.taken'),
        'color/taken',
        textInput({
          id: 'color/taken',
          value: taken,
          size: 6,
          placeholder: '4 g',
          amount: true,
          set: (taken) => edit({ taken }),
        }),
      )}
      <div class="field ends">
        <button type="button" class="quiet" ?disabled=${!taken.trim()} @click=${once('taken', take)}>
          ${say('cup.write')}
        </button>
        ${
          log.length
            ? html`<button type="button" class="quiet" @click=${once('log', takeBack)}>${say('cup.takeBack')}</button>`
            : nothing
        }
      </div>
    </div>`
}

function stepWords(step) {
  if (typeof step === 'string') return step
  if (step.taken) return say('cup.logTaken', { amount: local(step.taken) })
  if (!step.looks) return say('cup.logPoured', { what: listed(step) })
  const { target } = state.color
  const difference = target && apart(target.color, step.looks)
  return html`${swatch(hexOf(step.looks), say('cup.howLooked'), 'small')} ${say('cup.looked')}
  ${difference ? differenceText(difference) : nothing}`
}

/** Takes the last entry back; the sample that was looked at before a pour is the present one again. */
function takeBack() {
  const { log } = state.color
  const rest = log.slice(0, -1)
  const looked = rest.at(-1)?.looks
  const isPour = !log.at(-1).taken && !log.at(-1).looks
  if (!isPour || !looked) return edit({ log: rest, play: null })
  edit({ log: rest.slice(0, -1), seen: readAgain(looked), play: null })
}

/** A color of the log as a reading. */
const readAgain = (color) => kept(reply({ calculate: 'color-reading', instrument: color }).answer)

/** What the samples have shown of the strengths of the colorants, each for the book to accept. */
function learned({ strengths }) {
  if (!strengths.length) return nothing
  return html`<h3>${say('cup.shown')}</h3>
    <ul class="learned">
      ${strengths.map(({ material, factors, common, write }) => {
        const [{ path, value }] = write
        const place = keys(path)
        const isThere = JSON.stringify(sorted(valueAt(state.book, place))) === JSON.stringify(sorted(value))
        const accept = () => {
          const { before } = state.color
          if (!(material in before)) edit({ before: { ...before, [material]: valueAt(state.book, place) ?? null } })
          editBook(place, value, message('cup.strengthOf', { material }))
        }
        return html`<li>
          <p>
            ${say('cup.strength', {
              material: html`<strong>${material}</strong>`,
              factors: factors.map((factor) => local(String(factor))).join(', '),
              common: local(common.text),
            })}
          </p>
          <button type="button" class="quiet" ?disabled=${isThere} @click=${once(`learned ${material}`, accept)}>
            ${say(isThere ? 'cup.inBook' : 'cup.intoBook', { material })}
          </button>
        </li>`
      })}
    </ul>
    <p class="hint">${say('cup.countsAlready')}</p>`
}

const sorted = (value) =>
  value && Object.fromEntries(Object.entries(value).sort(([one], [other]) => (one < other ? -1 : 1)))

/** The look of the cup as it is: that of the sample, or of the log's last entry. */
function lookNow() {
  const { log, seen } = state.color
  return seen?.color ?? log.filter((step) => !step.taken).at(-1)?.looks ?? null
}

/** Keeps the cup as a formula of the book, with the color that was seen. */
function saveAs() {
  const { save } = state.color
  const request = { calculate: 'trial', trial: trial(), save_as: save.trim() }
  const { answer = null, faults = [] } = save.trim() ? reply(request, state.book) : {}
  const look = lookNow()
  const write = () => {
    for (const { path, value } of answer.write) {
      const place = keys(path)
      const isColor = place[1] === save.trim()
      editBook(
        place,
        isColor && look ? { ...value, color: dated(look) } : value,
        message('cup.formulaFrom', { name: place[1] }),
      )
    }
    edit({ save: '' })
  }
  return html`<h3>${say('cup.keep')}</h3>
    <div class="fields">
      ${field(
        say('cup.name'),
        'color/save',
        textInput({ id: 'color/save', value: save, size: 12, faults, set: (save) => edit({ save }) }),
        faults,
      )}
      <div class="field ends">
        <button type="button" class="quiet" ?disabled=${!answer?.write.length} @click=${once('save', write)}>
          ${say('cup.keepInBook')}
        </button>
      </div>
    </div>
    <p class="hint">${say(look ? 'cup.withColor' : 'cup.readFirst')}</p>`
}

/** A color with today's date, as `2027-03-05`. */
export const dated = (color) => ({ ...color, day: new Date().toLocaleDateString('sv-SE') })
