// The pots at a glance.
export default {
  pots: 'Töpfe',
  hot: 'heiß',
  pot: {
    one: 'Topf {pot}: {done} von {count} Schritt fertig',
    other: 'Topf {pot}: {done} von {count} Schritten fertig',
  },
  hotPot: {
    one: 'Topf {pot}, heiß: {done} von {count} Schritt fertig',
    other: 'Topf {pot}, heiß: {done} von {count} Schritten fertig',
  },
}
