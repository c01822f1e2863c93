// What the day costs and what it takes from stock, if the book and the orders have what that needs.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { letter } from './letter.js'
import { ofLibrary } from './library.js'
import { part } from './part.js'
import { short } from './show.js'
import { local, say } from './words.js'

const isZero = ({ amount }) => !/[1-9]/.test(amount)

/** The cost and price of a line, in a few words. */
export function costOfLine(cost) {
  if (!cost) return nothing
  const each = cost.per_pack
    ? say('cost.perPack', { cost: local(cost.per_pack.text) })
    : say('cost.perPiece', { cost: local(cost.per_piece.text) })
  return html`${each}${cost.price ? html`, ${say('cost.sells', { price: html`<strong>${local(cost.price.text)}</strong>` })}` : nothing}`
}

/** The costs by order line; empty if they are not known. */
export function lineCosts(plan) {
  return plan?.cost?.known?.lines ?? []
}

/** The table of costs. */
export function costTable(plan) {
  const { known, unknown } = plan?.cost ?? {}
  if (unknown)
    return html`<h2>${say('cost.title')}</h2>
      <p class="hint">${say('cost.unknown', { why: ofLibrary(unknown.message) })}</p>`
  if (!known) return nothing
  const { shown, from, keys } = part('costs', plan.lines, 50, say('cost.lines'))
  const priced = known.lines.some(({ price }) => price)
  return html`<h2>${say('cost.title')}</h2>
    ${keys}
    <div class="wide" tabindex="0" role="region" aria-label=${say('cost.title')}>
      <table>
        <thead>
          <tr>
            <th scope="col">${say('cost.order')}</th>
            <th scope="col">${say('cost.what')}</th>
            <th scope="col">${say('cost.cost')}</th>
            <th scope="col">${say('cost.piece')}</th>
            <th scope="col">${say('cost.pack')}</th>
            ${priced ? html`<th scope="col">${say('cost.price')}</th>` : nothing}
          </tr>
        </thead>
        <tbody>
          ${shown.map((line, at) => {
            const cost = known.lines[from + at]
            return html`<tr>
              <td>${line.order}</td>
              <th scope="row">${line.what}${line.shape ? `, ${line.shape}` : ''}</th>
              <td>${local(cost.total.text)}</td>
              <td>${local(cost.per_piece.text)}</td>
              <td>${local(cost.per_pack?.text ?? '')}</td>
              ${priced ? html`<td><strong>${local(cost.price?.text ?? '')}</strong></td>` : nothing}
            </tr>`
          })}
        </tbody>
      </table>
    </div>
    <p class="hint">
      ${sums(known)} <strong>${say('cost.total', { cost: local(known.total.text) })}</strong>
      ${priced ? say('cost.prices') : nothing}
    </p>`
}

/** What the day's cost consists of. */
const sums = ({ materials, from_shelf: shelf, credit, packing, work }) =>
  [
    say('cost.materials', { cost: local(materials.text) }),
    !isZero(shelf) && say('cost.fromShelf', { cost: local(shelf.text) }),
    !isZero(credit) && say('cost.credit', { cost: local(credit.text) }),
    say('cost.packing', { cost: local(packing.text) }),
    say('cost.work', { cost: local(work.text) }),
  ]
    .filter(Boolean)
    .join(' ')

const isShort = ({ short }) => short.value > 0

/** What runs out, on the whole day or in one pot. */
export function runsOut(plan, pot = null) {
  const out = (plan?.stock ?? []).filter((entry) => isShort(entry) && (pot === null || entry.runs_out_in === pot))
  return out.map(
    (entry) =>
      html`<p class="runs-out">
        <strong>${say('cost.runsOut', { material: entry.material })}</strong
        >${entry.runs_out_in ? html` ${say('cost.inPot', { pot: html`${letter(entry.runs_out_in)}` })}` : nothing}.
        ${say('cost.onHand', { had: short(entry.had), used: short(entry.used), short: short(entry.short) })}
        ${entry.packages ? say('cost.buy', { count: entry.packages }) : nothing}
      </p>`,
  )
}

/** What stays in stock after the day. */
export function stockLeft(plan) {
  const enough = (plan.stock ?? []).filter((entry) => !isShort(entry))
  return enough.length
    ? html`<h2>${say('cost.left')}</h2>
        <p>${enough.map(({ material, left }) => `${material} ${short(left)}`).join(', ')}.</p>`
    : nothing
}
