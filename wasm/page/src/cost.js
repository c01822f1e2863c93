// What the day costs and what it takes from stock, if the book and the orders have what that needs.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { letter } from './letter.js'
import { part } from './part.js'
import { counted, short } from './show.js'

const isZero = ({ amount }) => !/[1-9]/.test(amount)

/** The cost and price of a line, in a few words. */
export function costOfLine(cost) {
  if (!cost) return nothing
  const [each, unit] = cost.per_pack ? [cost.per_pack, 'a pack'] : [cost.per_piece, 'a piece']
  return html`${each.text} ${unit}${cost.price ? html`, sells at <strong>${cost.price.text}</strong>` : nothing}`
}

/** The costs by order line; empty if they are not known. */
export function lineCosts(plan) {
  return plan?.cost?.known?.lines ?? []
}

/** The table of costs. */
export function costTable(plan) {
  const { known, unknown } = plan?.cost ?? {}
  if (unknown)
    return html`<h2>What it costs</h2>
      <p class="hint">Not known: ${unknown.message}</p>`
  if (!known) return nothing
  const { shown, from, keys } = part('costs', plan.lines, 50, 'Lines')
  const priced = known.lines.some(({ price }) => price)
  return html`<h2>What it costs</h2>
    ${keys}
    <div class="wide" tabindex="0" role="region" aria-label="What it costs">
      <table>
        <thead>
          <tr>
            <th scope="col">Order</th>
            <th scope="col">What</th>
            <th scope="col">Cost</th>
            <th scope="col">A piece</th>
            <th scope="col">A pack</th>
            ${priced ? html`<th scope="col">Price</th>` : nothing}
          </tr>
        </thead>
        <tbody>
          ${shown.map((line, at) => {
            const cost = known.lines[from + at]
            return html`<tr>
              <td>${line.order}</td>
              <th scope="row">${line.what}${line.shape ? `, ${line.shape}` : ''}</th>
              <td>${cost.total.text}</td>
              <td>${cost.per_piece.text}</td>
              <td>${cost.per_pack?.text}</td>
              ${priced ? html`<td><strong>${cost.price?.text}</strong></td>` : nothing}
            </tr>`
          })}
        </tbody>
      </table>
    </div>
    <p class="hint">
      Materials for
      ${known.materials.text}${isZero(known.from_shelf) ? nothing : ` and leftovers for ${known.from_shelf.text}`}${
        isZero(known.credit) ? nothing : `, of which ${known.credit.text} is left over`
      };
      packing ${known.packing.text}; work ${known.work.text}: <strong>${known.total.text}</strong> in total.
      ${priced ? 'Prices are per pack if sold by the pack, else per piece.' : nothing}
    </p>`
}

const isShort = ({ short }) => short.value > 0

/** What runs out, on the whole day or in one pot. */
export function runsOut(plan, pot = null) {
  const out = (plan?.stock ?? []).filter((entry) => isShort(entry) && (pot === null || entry.runs_out_in === pot))
  return out.map(
    (entry) =>
      html`<p class="runs-out">
        <strong>${entry.material} runs out</strong
        >${entry.runs_out_in ? html` in pot ${letter(entry.runs_out_in)}` : nothing}. On hand ${short(entry.had)}, needs
        ${short(entry.used)}. Short
        ${short(entry.short)}${entry.packages ? `: buy ${counted(entry.packages, 'package')}` : ''}.
      </p>`,
  )
}

/** What stays in stock after the day. */
export function stockLeft(plan) {
  const enough = (plan.stock ?? []).filter((entry) => !isShort(entry))
  return enough.length
    ? html`<h2>Left in stock after the day</h2>
        <p>${enough.map(({ material, left }) => `${material} ${short(left)}`).join(', ')}.</p>`
    : nothing
}
