// German: the messages of `en.js`.
import heat from './de/heat.js'
import page from './de/page.js'

export default { heat, page }
