// Buttons for a glove: a finger that bounces or taps twice presses once.

/** Milliseconds after a press was handled within which a second one at the same place counts as the same. */
const BOUNCE = 500

let last = { place: '', at: -Infinity }

/** A handler of presses of a key that submits its form: the second tap of a double tap does not submit. */
export const onceSubmits = (place) => (event) => {
  let isPress = false
  once(place, () => (isPress = true))(event)
  if (!isPress) event.preventDefault()
}

/** A handler of presses at a place, where another button may be by the second tap. */
export const once = (place, press) => (event) => {
  if (place === last.place && event.timeStamp - last.at < BOUNCE) return
  last = { place, at: event.timeStamp }
  try {
    press(event)
  } finally {
    // A tap while the page calculated came before anything could be seen of the first.
    last.at = performance.now()
  }
}
