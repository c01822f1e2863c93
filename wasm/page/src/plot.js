// The drawing of the curves, with the line to drag along them.
import { numbers } from './formats.js'
import { html, nothing, svg } from '../vendor/lit-html/lit-html.js'
import { local, locale, say } from './words.js'

const [HEIGHT, LEFT, RIGHT, TOP, BOTTOM] = [150, 80, 30, 16, 24]

/** As wide as the screen, so that the words keep their size. */
const width = () => Math.max(360, Math.min(1000, innerWidth))

/** Draws the curves through `points` with the line at `at`; `drag` gets the place it is dragged to. */
export function plot(points, at, drag) {
  const wide = width()
  const numbered = points.map((point, step) => ({ ...point, step }))
  const sinking = numbered.filter(({ sink }) => sink)
  const panels = [
    { name: 'g', title: say('salt.titleWeight'), list: numbered, of: ({ salt: { piece } }) => [piece, piece, piece] },
    {
      name: 'cm/s',
      title: say('salt.titleSpeed'),
      list: sinking,
      of: ({ sink }) => [sink.slowest, sink.sink_rate, sink.fastest],
    },
  ].filter(({ list }) => list.length > 1)
  const x = (step) => LEFT + (step / Math.max(points.length - 1, 1)) * (wide - LEFT - RIGHT)
  const dragged = (event) => {
    if (event.type === 'pointermove' && !event.buttons) return
    const drawing = event.currentTarget
    const { x: along } = new DOMPoint(event.clientX, event.clientY).matrixTransform(drawing.getScreenCTM().inverse())
    const step = Math.round(((along - LEFT) / (wide - LEFT - RIGHT)) * (points.length - 1))
    if (event.type === 'pointerdown') drawing.setPointerCapture(event.pointerId)
    drag(Math.max(0, Math.min(points.length - 1, step)))
  }
  return html`<svg
    class="plot"
    viewBox="0 0 ${wide} ${panels.length * HEIGHT + 30}"
    aria-hidden="true"
    @pointerdown=${dragged}
    @pointermove=${dragged}
  >
    ${panels.map((panel, at_) => panelOf(panel, at_ * HEIGHT, x, at))} ${xAxis(points, x, panels.length * HEIGHT)}
    <line class="handle" x1=${x(at)} x2=${x(at)} y1=${TOP} y2=${panels.length * HEIGHT - BOTTOM + 14} />
    <circle class="grip" cx=${x(at)} cy=${panels.length * HEIGHT - BOTTOM + 14} r="13" />
  </svg>`
}

function panelOf({ name, title, list, of }, top, x, at) {
  const values = list.map((point) => of(point).map(({ value }) => value))
  const [low, high] = [Math.min(...values.map(([low]) => low)), Math.max(...values.map(([, , high]) => high))]
  const y = (value) => top + HEIGHT - BOTTOM - ((value - low) / (high - low || 1)) * (HEIGHT - BOTTOM - TOP - 16)
  const along = (which) => values.map((value, at) => `${x(list[at].step)} ${y(value[which])}`)
  const after = list.findIndex(({ step }) => step >= at)
  const before = after > 0 && list[after].step !== at ? after - 1 : after
  return svg`<g>
    <text class="title" x=${LEFT} y=${top + TOP}>${title}</text>
    <line class="axis" x1=${LEFT} x2=${LEFT} y1=${y(low)} y2=${y(high)} />
    ${[low, high].map((value) => svg`<text class="label" x=${LEFT - 8} y=${y(value) + 5}>${rounded(value)} ${name}</text>`)}
    <path class="band" d="M${along(0).join(' L')} L${along(2).reverse().join(' L')} Z" />
    <path class="curve" d="M${along(1).join(' L')}" />
    ${
      at >= list[0].step && before >= 0
        ? svg`<circle class="dot" cx=${x(at)} cy=${y((values[before][1] + values[after][1]) / 2)} r="7" />`
        : nothing
    }
  </g>`
}

const rounded = (value) => numbers(locale(), { maximumSignificantDigits: 3 }).format(value)

function xAxis(points, x, bottom) {
  const every = points.length > (innerWidth < 640 ? 30 : 60) ? 12 : 6
  const steps = [...points.keys()].filter((step) => step % every === 0)
  return steps.map(
    (step) => svg`<line class="axis" x1=${x(step)} x2=${x(step)} y1=${bottom - BOTTOM + 4} y2=${bottom - BOTTOM + 10} />
      <text class="below" x=${x(step)} y=${bottom + 24}>${step === 0 ? say('salt.none') : local(points[step].salt.as_scooped.text)}</text>`,
  )
}
