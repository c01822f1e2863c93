// The size for gloves, and its ruler.
export default {
  size: 'Gloves size',
  again: 'Set by the ruler again',
  hint: 'Keys of 20 mm, and the step in letters that are read from a meter away. It is set once by a ruler or a card, for this screen and this zoom.',
  ruler: 'Ruler',
  hold: 'Hold the {edge} or a ruler to the bar, and make the bar as long: {length}.',
  edge: 'short edge of a bank card',
  length: 'Length of the bar',
  pixels: { one: '{count} pixel', other: '{count} pixels' },
  shorter: 'Shorter',
  longer: 'Longer',
  done: 'It is as long',
  leave: 'Leave it',
}
