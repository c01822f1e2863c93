// Clocks, and whether the screen stays on.
export default {
  and: '{one} and {other}',
  burst: 'Pot {pot}, burst {number} of {of}',
  hold: 'Pot {pot}, {what}',
  clock: 'clock',
  over: 'Over: {label}',
  said: 'Over: {label}.',
  stop: 'Stop',
  stopOf: 'Stop the clock: {label}',
  silent: 'Touch the page to let the clocks ring.',
  sleeps:
    'The screen may go dark while a clock runs, and then it does not ring. This browser does not keep it on: let the device itself keep it on.',
  sleepsPlain:
    'The screen may go dark while a clock runs, and then it does not ring. The page came over plain http from another machine, so that the browser neither keeps the screen on nor lets the page work without its server. Let the device keep its screen on, or serve the page with a certificate: “{command}”.',
}
