// German: the messages of `en.js`.
import asked from './de/asked.js'
import bench from './de/bench.js'
import book from './de/book.js'
import calibrate from './de/calibrate.js'
import cards from './de/cards.js'
import cautions from './de/cautions.js'
import clock from './de/clock.js'
import color from './de/color.js'
import correction from './de/correction.js'
import cost from './de/cost.js'
import csv from './de/csv.js'
import cup from './de/cup.js'
import day from './de/day.js'
import degas from './de/degas.js'
import edits from './de/edits.js'
import faults from './de/faults.js'
import form from './de/form.js'
import formula from './de/formula.js'
import gloves from './de/gloves.js'
import heat from './de/heat.js'
import keys from './de/keys.js'
import language from './de/language.js'
import learn from './de/learn.js'
import lists from './de/lists.js'
import more from './de/more.js'
import near from './de/near.js'
import notes from './de/notes.js'
import one from './de/one.js'
import orders from './de/orders.js'
import pad from './de/pad.js'
import page from './de/page.js'
import paper from './de/paper.js'
import pictures from './de/pictures.js'
import progress from './de/progress.js'
import rail from './de/rail.js'
import record from './de/record.js'
import salt from './de/salt.js'
import shelf from './de/shelf.js'
import show from './de/show.js'
import start from './de/start.js'
import step from './de/step.js'
import steps from './de/steps.js'
import store from './de/store.js'
import trial from './de/trial.js'
import update from './de/update.js'
import work from './de/work.js'

export default {
  asked,
  bench,
  book,
  calibrate,
  cards,
  cautions,
  clock,
  color,
  correction,
  cost,
  csv,
  cup,
  day,
  degas,
  edits,
  faults,
  form,
  formula,
  gloves,
  heat,
  keys,
  language,
  learn,
  lists,
  more,
  near,
  notes,
  one,
  orders,
  pad,
  page,
  paper,
  pictures,
  progress,
  rail,
  record,
  salt,
  shelf,
  show,
  start,
  step,
  steps,
  store,
  trial,
  update,
  work,
}
