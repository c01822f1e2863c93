// American English, the language that messages are written in first.
import asked from './en/asked.js'
import bench from './en/bench.js'
import book from './en/book.js'
import calibrate from './en/calibrate.js'
import cards from './en/cards.js'
import cautions from './en/cautions.js'
import clock from './en/clock.js'
import color from './en/color.js'
import correction from './en/correction.js'
import cost from './en/cost.js'
import csv from './en/csv.js'
import cup from './en/cup.js'
import day from './en/day.js'
import degas from './en/degas.js'
import edits from './en/edits.js'
import faults from './en/faults.js'
import form from './en/form.js'
import formula from './en/formula.js'
import gloves from './en/gloves.js'
import heat from './en/heat.js'
import keys from './en/keys.js'
import language from './en/language.js'
import learn from './en/learn.js'
import lists from './en/lists.js'
import more from './en/more.js'
import near from './en/near.js'
import notes from './en/notes.js'
import one from './en/one.js'
import orders from './en/orders.js'
import pad from './en/pad.js'
import page from './en/page.js'
import paper from './en/paper.js'
import pictures from './en/pictures.js'
import progress from './en/progress.js'
import rail from './en/rail.js'
import record from './en/record.js'
import salt from './en/salt.js'
import shelf from './en/shelf.js'
import show from './en/show.js'
import start from './en/start.js'
import step from './en/step.js'
import steps from './en/steps.js'
import store from './en/store.js'
import trial from './en/trial.js'
import update from './en/update.js'
import work from './en/work.js'

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
