// The pad for another amount than the sheet's.
export default {
  whatWentIn: 'What went in of {material}, in all?',
  whatMore: 'What went in of {material} now, without what was in the pot before?',
  by_balance: 'scale',
  by_cup: 'cups',
  by_spoons: 'spoons',
  by_drops: 'drops',
  nothing: 'nothing yet',
  drops: '{amount} drops',
  grams: '{amount} g',
  decimal: 'decimal point',
  back: 'take the last one back',
  within: 'Within tolerance: go on.',
  outside: 'Outside of tolerance. Ways to go on:',
  keep: 'Poured {amount}',
  close: 'As planned after all',
  somethingElse: 'Something else went in',
}
