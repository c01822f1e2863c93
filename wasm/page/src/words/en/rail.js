// The pots at a glance.
export default {
  pots: 'Pots',
  hot: 'hot',
  pot: {
    one: 'Pot {pot}: {done} of {count} step done',
    other: 'Pot {pot}: {done} of {count} steps done',
  },
  hotPot: {
    one: 'Pot {pot}, hot: {done} of {count} step done',
    other: 'Pot {pot}, hot: {done} of {count} steps done',
  },
}
