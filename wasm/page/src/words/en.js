// American English, the language that messages are written in first.
import asked from './en/asked.js'
import book from './en/book.js'
import calibrate from './en/calibrate.js'
import clock from './en/clock.js'
import color from './en/color.js'
import csv from './en/csv.js'
import cup from './en/cup.js'
import edits from './en/edits.js'
import faults from './en/faults.js'
import form from './en/form.js'
import formula from './en/formula.js'
import gloves from './en/gloves.js'
import language from './en/language.js'
import lists from './en/lists.js'
import near from './en/near.js'
import page from './en/page.js'
import pictures from './en/pictures.js'
import salt from './en/salt.js'
import show from './en/show.js'
import start from './en/start.js'
import store from './en/store.js'
import update from './en/update.js'

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
