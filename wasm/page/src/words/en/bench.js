// The bench.
export default {
  wentOn: 'The day goes on',
  checkFirst: 'Check first',
  tick: 'Pot {pot}: {what}, step {step}',
  tickToFix: 'Pot {pot}: {what}, to put it right',
  sheet: 'Bench sheet',
  stillHot: '{formulas}, still hot',
  entries: 'Entries',
  work: 'Order of work',
  shots: {
    one: '{count} shot',
    other: '{count} shots',
  },
  and: 'and',
  fewest: {
    one: '{count} pot: no plan has fewer.',
    other: '{count} pots: no plan has fewer.',
  },
  atLeast: {
    one: '{count} pot; no plan has fewer than {least}.',
    other: '{count} pots; no plan has fewer than {least}.',
  },
  print: 'Print',
  cups: 'Cups on hand',
  clear: 'Clear all ticks',
  noTime: 'The time of the day is not known.',
  time: 'About {total}: {heating} of heating, {shooting} of shooting.',
  timeWithout: 'About {total}: {heating} of heating, {shooting} of shooting, without measuring and cleaning up.',
  inCup: 'in the {cup}',
  moreLines: {
    one: 'and {count} more line',
    other: 'and {count} more lines',
  },
  done: 'Pot {pot}: {done} of {all} done',
}
