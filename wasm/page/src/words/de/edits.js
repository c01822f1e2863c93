// Changes of book and orders: what each was, and the keys that undo it.
export default {
  book: 'das Buch',
  orders: 'die Aufträge',
  removed: 'Entfernt: {there}.',
  added: 'Hinzugefügt: {there}.',
  changed: 'Geändert: {there}.',
  undone: 'Rückgängig gemacht: {what}',
  redo: 'Wiederholen',
  key: '{key}: {what}',
}
