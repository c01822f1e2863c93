// Keys for a glove: a finger that bounces or taps twice means one thing.

/** Milliseconds within which a second press at the same place is the same press. */
const BOUNCE = 500

let last = { place: '', at: -Infinity }

/** A handler of presses at a place, where the key may be another one by the second tap. */
export const once = (place, press) => (event) => {
  if (place === last.place && event.timeStamp - last.at < BOUNCE) return
  last = { place, at: event.timeStamp }
  press(event)
}
