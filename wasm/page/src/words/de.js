// German: the messages of `en.js`.
import page from './de/page.js'

export default { page }
