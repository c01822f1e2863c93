// A heat, by the thermometer.
export default {
  ask: 'What does the thermometer show?',
  stirAndAsk: 'Stir. What does the thermometer show?',
  shows: 'The thermometer in pot {pot} shows, {unit}',
  inTheOven: 'In the oven: {time}',
  early: 'Done early',
  done: 'Done',
  next: 'Next',
  skip: 'Skip: it is hot',
  skipBurst: 'Skip: read again',
  again: 'Read again',
}
