// American English, the language that messages are written in first.
import page from './en/page.js'

export default { page }
