// German: the messages of `en.js`.
import asked from './de/asked.js'
import book from './de/book.js'
import calibrate from './de/calibrate.js'
import clock from './de/clock.js'
import color from './de/color.js'
import csv from './de/csv.js'
import cup from './de/cup.js'
import edits from './de/edits.js'
import faults from './de/faults.js'
import form from './de/form.js'
import formula from './de/formula.js'
import gloves from './de/gloves.js'
import language from './de/language.js'
import lists from './de/lists.js'
import near from './de/near.js'
import page from './de/page.js'
import pictures from './de/pictures.js'
import salt from './de/salt.js'
import show from './de/show.js'
import start from './de/start.js'
import store from './de/store.js'
import update from './de/update.js'

export default {
  asked,
  book,
  calibrate,
  clock,
  color,
  csv,
  cup,
  edits,
  faults,
  form,
  formula,
  gloves,
  language,
  lists,
  near,
  page,
  pictures,
  salt,
  show,
  start,
  store,
  update,
}
