// The view of the day's events.
export default {
  parts: 'Parts of the day',
  record: 'Record',
  trial: 'Trial',
  more: 'More pieces',
  shelf: 'Leftovers',
  learn: 'Learned',
}
