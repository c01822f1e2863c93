// Faults of the documents, each next to its field. A fault's path is a JSON Pointer; the fault is shown at the field that
// has the longest part of the path, and in the list above.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { ofLibrary } from './library.js'
import { LINES, part, reveal } from './part.js'
import { change } from './state.js'
import { say } from './words.js'

/** The faults that are listed at once. */
const LISTED = 50

/** The keys of a JSON Pointer. */
export function keys(pointer) {
  return pointer
    .split('/')
    .slice(1)
    .map((key) => key.replaceAll('~1', '/').replaceAll('~0', '~'))
}

/** The JSON Pointer of keys. */
function pointer(path) {
  return path.map((key) => '/' + String(key).replaceAll('~', '~0').replaceAll('/', '~1')).join('')
}

/** The id of the field for a path of a document. */
export function fieldId(document, path) {
  return `${document}${pointer(path)}`
}

/** The faults at `path` and below, for a field that has no fields below it. */
export function faultsAt(faults, path) {
  const here = pointer(path)
  return faults.filter((fault) => fault.path === here || fault.path.startsWith(here + '/'))
}

/** The faults at `path` itself; those below have fields of their own. */
export function faultsJustAt(faults, path) {
  const here = pointer(path)
  return faults.filter((fault) => fault.path === here)
}

/** The messages of faults, next to the field with this id. */
export function messages(id, faults) {
  return faults.length
    ? html`<div class="fault" id="${id}:fault">
        ${faults.map((fault) => html`<p><strong>${said(fault, 'message')}</strong> ${said(fault, 'help')}</p>`)}
      </div>`
    : nothing
}

/** The message or the help of a fault: the library's, or one of the page, which is `own`, or has a help of its own. */
export const said = (fault, part) =>
  fault.own || (part === 'help' && fault.ownHelp) ? fault[part] : ofLibrary(fault[part] ?? '')

/** All faults of a document, each with a link to its field. */
export function faultList(title, document, faults) {
  if (!faults.length) return nothing
  const { shown, keys: others } = part(`faults of ${document}`, faults, LISTED, say('faults.list'))
  return html`<section class="fault-list" role="alert" aria-label=${title}>
    <h2>${title}</h2>
    <ul>
      ${shown.map(
        (fault) =>
          html`<li>
            <a href="#${document}" @click=${(event) => goTo(event, document, keys(fault.path))}
              ><code>${keys(fault.path).map(spoken).join(' › ') || say('faults.document')}</code></a
            >
            ${said(fault, 'message')} <span class="help">${said(fault, 'help')}</span>
          </li>`,
      )}
    </ul>
    ${others}
  </section>`
}

/** A key in words: places in a list are counted from 1. */
export const spoken = (key) =>
  /^\d+$/.test(key) ? say('faults.place', { number: Number(key) + 1 }) : key.replaceAll('_', ' ')

/** What makes a field of a document visible that its view does not show, by the document. */
const ways = {}

/** Calls `show` with the path of a field of a document before the cursor is put there. */
export function onTheWay(document_, show) {
  ways[document_] = show
}

/** Puts the cursor into the field at `path` of a document, or the nearest field above it. */
export function goTo(event, document_, path) {
  const view = `#${document_}`
  event.preventDefault()
  if (location.hash !== view) location.hash = view
  const [list, place] = path
  if (list === 'lines') {
    reveal(list, Number(place ?? 0), LINES)
    change()
  }
  requestAnimationFrame(() => {
    ways[document_]?.(path)
    for (let at = path; ; at = at.slice(0, -1)) {
      const field = document.getElementById(fieldId(document_, at))
      if (field) {
        for (let below = field.closest('details'); below; below = below.parentElement.closest('details')) {
          below.open = true
        }
        field.focus()
        field.scrollIntoView({ block: 'center' })
        return
      }
      if (!at.length) return
    }
  })
}
