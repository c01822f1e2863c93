// The bench.
export default {
  wentOn: 'The day goes on',
  checkFirst: 'Check first',
}
