// German: the messages of `en.js`.
import asked from './de/asked.js'
import book from './de/book.js'
import calibrate from './de/calibrate.js'
import color from './de/color.js'
import csv from './de/csv.js'
import cup from './de/cup.js'
import edits from './de/edits.js'
import faults from './de/faults.js'
import form from './de/form.js'
import formula from './de/formula.js'
import gloves from './de/gloves.js'
import language from './de/language.js'
import near from './de/near.js'
import page from './de/page.js'
import pictures from './de/pictures.js'
import show from './de/show.js'
import start from './de/start.js'

export default {
  asked,
  book,
  calibrate,
  color,
  csv,
  cup,
  edits,
  faults,
  form,
  formula,
  gloves,
  language,
  near,
  page,
  pictures,
  show,
  start,
}
