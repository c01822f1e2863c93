// What the page shows of the day: the last plan that could be made, with its pots and steps. Both are made when a view first needs
// them, and kept until what they depend on is another.
import { planned } from './planning.js'
import { state } from './state.js'
import { potsByLetter, steps } from './steps.js'
import { language } from './words.js'

const NOTHING = { plan: null, book: null, opened: 0 }
let last = NOTHING

/** The value of `make` for these keys: made again only if one of them is another. */
function kept(make) {
  let own = { keys: null, value: null }
  return (...keys) => {
    if (!own.keys || keys.some((key, at) => key !== own.keys[at])) own = { keys, value: make(...keys) }
    return own.value
  }
}

const potsOf = kept((plan) => potsByLetter(plan))
// The scale and the language are those that the steps are worded in.
const stepsOf = kept((plan, fix) => steps(plan, fix))

const NO_FIX = []

/** The plan that is shown and its book, with what it came from: `made` is what is known of the plan of the present documents. */
export function shownPlan() {
  const made = planned()
  const { opened } = state
  // Other documents: the plan before is none of theirs.
  if (opened !== last.opened) last = { ...NOTHING, opened }
  // A day that is begun keeps its plan until the library has said how it goes on.
  const plan = made.plan ?? made.base
  if (plan) {
    // As long as an earlier plan is shown, so is what was made with it.
    const book = plan === last.plan && !made.plan ? last.book : made.book
    last = { plan, book, fix: fixNow(), opened }
  }
  return { made, plan: last.plan, book: last.book }
}

/** What puts pots right; the same list as long as there is none. */
const fixNow = () => (state.work?.fix.length ? state.work.fix : NO_FIX)

/** The pots of the plan that is shown, by letter. */
export const shownPots = () => (last.plan ? potsOf(last.plan) : new Map())

/** The steps of the plan that is shown. */
export const shownSteps = () => (last.plan ? stepsOf(last.plan, last.fix, state.scale, language()) : [])
