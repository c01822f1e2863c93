// A drawing of a cup: its marks, its level, and how high the pot swells under vacuum.
import { inUnit } from './core.js'
import { short } from './show.js'
import { html, nothing, svg } from '../vendor/lit-html/lit-html.js'
import { say } from './words.js'

const [TOP, BOTTOM, LEFT, RIGHT] = [14, 130, 4, 88]

/** Draws the book's cup of capacity `cup`, filled to `level`; under vacuum the pot swells to `swollen`. */
export function cupDrawing({ book, cup, level, swollen = null, label }) {
  const marks = marksOf(book, cup)
  const highest = Math.max(cup.value, level.value, swollen?.value ?? 0)
  const y = (volume) => BOTTOM - (volume / highest) * (BOTTOM - TOP)
  const line = (volume, kind) => svg`<line class=${kind} x1=${LEFT} x2=${RIGHT} y1=${y(volume)} y2=${y(volume)} />`
  return html`<svg class="cup" viewBox="0 0 176 136" role="img" aria-label=${label}>
    <rect class="fill" x=${LEFT} y=${y(level.value)} width=${RIGHT - LEFT} height=${BOTTOM - y(level.value)} />
    ${
      swollen
        ? svg`<rect class="swollen" x=${LEFT} y=${y(swollen.value)} width=${RIGHT - LEFT} height=${y(level.value) - y(swollen.value)} />`
        : nothing
    }
    ${marks.map((mark) => svg`<line class="mark" x1=${LEFT} x2=${LEFT + 12} y1=${y(mark)} y2=${y(mark)} />`)}
    <path class="wall" d="M${LEFT} ${TOP - 8} V${BOTTOM} H${RIGHT} V${TOP - 8}" />
    ${line(level.value, 'level')}
    <text x=${RIGHT + 5} y=${y(level.value) + 5}>${short(level)}</text>
    ${
      swollen
        ? svg`<text class="swells" x=${RIGHT + 5} y=${Math.min(y(swollen.value) + 5, y(level.value) - 12)}>${short(swollen)}</text>`
        : nothing
    }
  </svg>`
}

/** The cup of a pot when all of a stage is in. */
export const cupAfter = (plan, pot, { fills: level }, caption) =>
  html`<figure>
    ${cupDrawing({
      book: plan.made_from.book,
      cup: pot.cup,
      level,
      label: say('step.cupAt', { cup: short(pot.cup), level: short(level) }),
    })}
    <figcaption>${caption}</figcaption>
  </figure>`

/** The marks of the book's cup of this capacity, in milliliters. */
function marksOf({ bench, measures }, cup) {
  const entry = bench.cups.find(({ holds }) => {
    const milliliters = inUnit(holds, 'mL', measures)
    return milliliters !== null && Math.abs(milliliters - cup.value) < 1e-6 * cup.value
  })
  const step = inUnit(entry?.marks, 'mL', measures)
  if (!step) return []
  return Array.from({ length: Math.round(cup.value / step) }, (_, mark) => (mark + 1) * step)
}
