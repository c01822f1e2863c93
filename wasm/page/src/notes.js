// Below the pots: sink rates, what is left, costs, assumptions and cautions.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { cautionsInFull } from './cautions.js'
import { costTable, stockLeft } from './cost.js'
import { anything, words } from './generic.js'
import { part } from './part.js'
import { both, day, short } from './show.js'

// The fields that have a place on the page; any other is listed.
const PLAN =
  'format made_from shop day measures lines pots work steps clock parcels shelf proof water cost stock borrowed questions assumptions cautions'.split(
    ' ',
  )

/** The rows of a table or list that are shown at once. */
const ROWS = 50

/** The whole section. */
export function toKnow(plan) {
  const { shown, keys } = part('assumptions', plan.assumptions, ROWS, 'Notes')
  return html`<section class="to-know">
    ${parcels(plan)} ${sinkRates(plan)} ${stockLeft(plan)} ${shelf(plan)}
    ${
      plan.assumptions.length
        ? html`<h2>To know</h2>
            ${keys}
            <ul>
              ${shown.map((note) => html`<li>${note.message}</li>`)}
            </ul>`
        : nothing
    }
    ${borrowed(plan)} ${costTable(plan)} ${anything(plan, PLAN)}
    <h2>Cautions</h2>
    ${cautionsInFull(plan)}
  </section>`
}

/** Numbers that the book lacks, those that would help most first. */
function borrowed(plan) {
  if (!plan.borrowed.length) return nothing
  return html`<h2>Borrowed numbers: measure the first of these first</h2>
    <ul>
      ${plan.borrowed.map(
        ({ material, property, value, source, gain, how }) =>
          html`<li>
            ${material} ${words(property)}, taken as ${value} (${source}): makes the weight of a piece uncertain by
            ${gain.text}. ${how}
          </li>`,
      )}
    </ul>`
}

/** What each order gets. */
function parcels(plan) {
  const { shown, keys } = part('parcels', plan.parcels, ROWS, 'Parcels')
  return html`<h2>Parcels</h2>
    ${keys}
    <ul>
      ${shown.map(({ order, promised, lines, takes, net }) => {
        const pieces = lines.map((place) => plan.lines[place - 1])
        const packed = takes.map(({ name, count }) => `${count} ${name}`).join(', ')
        return html`<li>
          <strong>${order}</strong>${promised ? `, due ${day(promised)}` : nothing}:
          ${pieces.map(({ what, shape, pieces }) => `${pieces} ${what}${shape ? `, ${shape}` : ''}`).join('; ')};
          ${packed ? `${packed}; ` : nothing}pieces ${short(net)}.
        </li>`
      })}
    </ul>`
}

/** Leftovers that go into the day's pots. */
function shelf(plan) {
  if (!plan.shelf.length) return nothing
  return html`<h2>From the shelf</h2>
    <ul>
      ${plan.shelf.map(
        (one) =>
          html`<li>
            ${one.name}: ${short(one.used)} of ${short(one.had)}
            used${one.pots.length ? `, in pot ${one.pots.join(' and ')}` : ''}; ${short(one.stays)} stays on the shelf.
          </li>`,
      )}
    </ul>`
}

function sinkRates(plan) {
  if (!plan.water) return nothing
  const { temperature, salinity } = plan.water
  const rows = new Map(plan.lines.map((line) => [`${line.what}${line.shape ? `, ${line.shape}` : ''}`, line]))
  const { shown, keys } = part('sinks', [...rows], ROWS, 'Pieces')
  return html`<h2>How the pieces sink</h2>
    <p class="hint">
      With hook, in ${salinity.value > 0 ? `water with ${salinity.text} of salt` : 'fresh water'} at
      ${both(temperature)}. A model, with its bounds.
    </p>
    ${keys}
    <div class="wide" tabindex="0" role="region" aria-label="How the pieces sink">
      <table>
        <thead>
          <tr>
            <th scope="col">Piece</th>
            <th scope="col">Weighs</th>
            <th scope="col">Density</th>
            <th scope="col">Sinks</th>
            <th scope="col">Between</th>
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
                        >${known.motion === 'straight' ? '' : `, ${known.motion.replace('-', ' ')}`}
                      </td>
                      <td>${short(known.slowest)} and ${short(known.fastest)}</td>`
                  : html`<td colspan="3">${unknown ? unknown.message : 'not known'}</td>`
              }
            </tr>`
          })}
        </tbody>
      </table>
    </div>`
}
