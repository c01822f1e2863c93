// The bench.
export default {
  wentOn: 'The day goes on',
  checkFirst: 'Check first',
  tick: 'Pot {pot}: {what}, step {step}',
  tickToFix: 'Pot {pot}: {what}, to put it right',
}
