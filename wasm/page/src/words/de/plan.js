// The plan of the day: whether it is there, and why not.
export default {
  noStart: 'Die Seite konnte nicht starten: {why}',
}
