// What is left of the day's pots, for the shelf.
export default {
  leftOver: 'Left over',
  sprues: '{mass} of it sprues',
  heats: {
    one: '{count} heat',
    other: '{count} heats',
  },
  on: 'To the shelf',
  off: 'Take it off the shelf',
  isOn: '✓ On the shelf',
  none: 'Keep the record of a pot, and what is left of it is here.',
  earlier: 'On the shelf since before',
  next: 'The next day',
  nextWhat: {
    one: 'The list of the next day begins with the stock that is left and with what stays on the shelf: {count} leftover from here.',
    other:
      'The list of the next day begins with the stock that is left and with what stays on the shelf: {count} leftovers from here.',
  },
  begin: 'Begin the list of the next day',
  today: 'Use them today',
  todayWhat: 'If you use them today, the rest of the day is planned with them.',
  waits: {
    one: '{count} leftover waits for a list.',
    other: '{count} leftovers wait for a list.',
  },
  put: 'Put on this shelf',
  added: {
    one: '{count} leftover put on the shelf.',
    other: '{count} leftovers put on the shelf.',
  },
}
