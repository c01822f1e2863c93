// The keyboard, and what is said of the next step.
export default {
  title: 'Keyboard',
  d: 'Done, poured, or start the clock: the large key',
  t: 'The field for a reading',
  b: 'By scale, by drops: the other way to measure',
  o: 'Other amount',
  s: 'Skip',
  l: 'All loads that are left',
  more: 'One more good piece',
  less: 'One good piece less',
  u: 'Undo',
  w: 'One step, or the whole pot',
  views: 'The views: orders, bench and so on',
  list: 'This list',
  single: 'Single keys',
  close: 'Close',
  next: 'Next, pot {pot}: {what}',
}
