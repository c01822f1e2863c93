// The bench.
export default {
  wentOn: 'Der Tag geht weiter',
  checkFirst: 'Zuerst prüfen',
  tick: 'Topf {pot}: {what}, Schritt {step}',
  tickToFix: 'Topf {pot}: {what}, zur Korrektur',
}
