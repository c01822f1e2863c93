// American English, the language that messages are written in first.
import page from './en/page.js'
import plan from './en/plan.js'

export default { page, plan }
