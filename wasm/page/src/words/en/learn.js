// What the records show of the numbers of the book.
export default {
  title: 'What the book learned',
  from: {
    one: 'From the records of {count} day. A number is offered once four days show it.',
    other: 'From the records of {count} days. A number is offered once four days show it.',
  },
  undated: {
    one: '{count} record has no day (as 2027-03-02) and does not count.',
    other: '{count} records have no day (as 2027-03-02) and do not count.',
  },
  nothing: 'There is nothing to accept.',
  unknown: 'not stated',
  becomes: 'becomes',
  days: {
    one: 'From {count} day.',
    other: 'From {count} days.',
  },
  accept: 'Accept into the book',
  accepted: 'Learned: {what}.',
  questions: 'Look at these first',
  confirmed: 'As in the book',
  notYet: 'Not known yet',
}
