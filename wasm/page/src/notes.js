// Below the pots: sink rates, what is left, costs, assumptions and cautions.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { cautionsInFull } from './cautions.js'
import { costTable, stockLeft } from './cost.js'
import { anything, words } from './generic.js'
import { ofLibrary } from './library.js'
import { part } from './part.js'
import { both, day, short } from './show.js'
import { local, say } from './words.js'

// The fields that have a place on the page; any other is listed.
const PLAN =
  'format made_from shop day measures lines pots work steps clock parcels shelf proof water cost stock borrowed questions assumptions cautions'.split(
    ' ',
  )

/** The rows of a table or list that are shown at once. */
const ROWS = 50

/** The whole section. */
export function toKnow(plan) {
  const { shown, keys } = part('assumptions', plan.assumptions, ROWS, say('notes.notes'))
  return html`<section class="to-know">
    ${parcels(plan)} ${sinkRates(plan)} ${stockLeft(plan)} ${shelf(plan)}
    ${
      plan.assumptions.length
        ? html`<h2>${say('notes.toKnow')}</h2>
            ${keys}
            <ul>
              ${shown.map((note) => html`<li>${ofLibrary(note.message)}</li>`)}
            </ul>`
        : nothing
    }
    ${borrowed(plan)} ${costTable(plan)} ${anything(plan, PLAN)}
    <h2>${say('notes.cautions')}</h2>
    ${cautionsInFull(plan)}
  </section>`
}

/** Numbers that the book lacks, those that would help most first. */
function borrowed(plan) {
  if (!plan.borrowed.length) return nothing
  return html`<h2>${say('notes.borrowed')}</h2>
    <ul>
      ${plan.borrowed.map(
        ({ material, property, value, source, gain, how }) =>
          html`<li>
            ${say('notes.borrowedAs', { material, property: ofLibrary(words(property)), value: ofLibrary(value), source: ofLibrary(source), gain: local(gain.text) })}
            ${ofLibrary(how)}
          </li>`,
      )}
    </ul>`
}

/** What each order gets. */
function parcels(plan) {
  const { shown, keys } = part('parcels', plan.parcels, ROWS, say('notes.parcels'))
  return html`<h2>${say('notes.parcels')}</h2>
    ${keys}
    <ul>
      ${shown.map(({ order, promised, lines, takes, net }) => {
        const pieces = lines.map((place) => plan.lines[place - 1])
        const packed = takes.map(({ name, count }) => `${count} ${name}`).join(', ')
        return html`<li>
          <strong>${order}</strong>${promised ? `, ${say('notes.due', { day: day(promised) })}` : nothing}:
          ${pieces.map(({ what, shape, pieces }) => `${pieces} ${what}${shape ? `, ${shape}` : ''}`).join('; ')};
          ${packed ? `${packed}; ` : nothing}${say('notes.net', { mass: short(net) })}
        </li>`
      })}
    </ul>`
}

/** Leftovers that go into the day's pots. */
function shelf(plan) {
  if (!plan.shelf.length) return nothing
  return html`<h2>${say('notes.shelf')}</h2>
    <ul>
      ${plan.shelf.map((one) => html`<li>${shelfWords(one)}</li>`)}
    </ul>`
}

function shelfWords({ name, pots, ...one }) {
  const amounts = { name, used: short(one.used), had: short(one.had), stays: short(one.stays) }
  return pots.length ? say('notes.usedIn', { ...amounts, pots: pots.join(', ') }) : say('notes.used', amounts)
}

function sinkRates(plan) {
  if (!plan.water) return nothing
  const { temperature, salinity } = plan.water
  const rows = new Map(plan.lines.map((line) => [`${line.what}${line.shape ? `, ${line.shape}` : ''}`, line]))
  const { shown, keys } = part('sinks', [...rows], ROWS, say('notes.pieces'))
  return html`<h2>${say('notes.sinks')}</h2>
    <p class="hint">
      ${
        salinity.value > 0
          ? say('notes.saltWater', { salt: local(salinity.text), temperature: both(temperature) })
          : say('notes.freshWater', { temperature: both(temperature) })
      }
    </p>
    ${keys}
    <div class="wide" tabindex="0" role="region" aria-label=${say('notes.sinks')}>
      <table>
        <thead>
          <tr>
            <th scope="col">${say('notes.piece')}</th>
            <th scope="col">${say('notes.weighs')}</th>
            <th scope="col">${say('notes.density')}</th>
            <th scope="col">${say('notes.speed')}</th>
            <th scope="col">${say('notes.between')}</th>
          </tr>
        </thead>
        <tbody>
          ${shown.map(([what, line]) => {
            const { known, unknown } = line.sinks ?? {}
            return html`<tr>
              <th scope="row">${what}</th>
              <td>${short(line.piece)}</td>
              ${
                known
                  ? html`<td>${short(known.density)}</td>
                      <td>
                        <strong>${short(known.speed)}</strong
                        >${known.motion === 'straight' ? nothing : html`, ${ofLibrary(known.motion.replace('-', ' '))}`}
                      </td>
                      <td>${say('notes.range', { slowest: short(known.slowest), fastest: short(known.fastest) })}</td>`
                  : html`<td colspan="3">${unknown ? ofLibrary(unknown.message) : say('notes.unknown')}</td>`
              }
            </tr>`
          })}
        </tbody>
      </table>
    </div>`
}
