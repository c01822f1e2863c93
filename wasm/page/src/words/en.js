// American English, the language that messages are written in first.
import heat from './en/heat.js'
import page from './en/page.js'

export default { heat, page }
