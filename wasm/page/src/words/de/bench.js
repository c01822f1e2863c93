// The bench.
export default {
  wentOn: 'Der Tag geht weiter',
  checkFirst: 'Zuerst prüfen',
}
