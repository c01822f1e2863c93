// A heat, by the thermometer.
export default {
  ask: 'What does the thermometer show?',
  stirAndAsk: 'Stir. What does the thermometer show?',
  shows: 'The thermometer in pot {pot} shows, {unit}',
  inTheOven: 'In the oven: {time}',
  early: 'Done early',
  done: 'Done',
  next: 'Next',
  skip: 'Hot, not read',
  unread: 'Pot {pot} was not read: it is hot by your own judgment. The plan shoots at {from} to {to}.',
  skipBurst: 'Skip: read again',
  again: 'Read again',
}
