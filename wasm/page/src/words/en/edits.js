// Changes of book and orders: what each was, and the keys that undo it.
export default {
  book: 'the book',
  orders: 'the orders',
  removed: 'Removed: {there}.',
  added: 'Added: {there}.',
  changed: 'Changed: {there}.',
  undone: 'Undone: {what}',
  redo: 'Redo',
  key: '{key}: {what}',
}
