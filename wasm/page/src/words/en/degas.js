// Degassing.
export default {
  start: 'Start the clock',
  skip: 'Skip the clock',
  askGauge: 'What does the gauge show?',
  askLeft: 'What is left in the chamber?',
  showed: 'The gauge showed {reading}; {left} left in the chamber.',
}
