// The page as a whole: views, notices, the state of the plan.
export default {
  orders: 'Bestellungen',
  bench: 'Werkbank',
  day: 'Tag',
  one: 'Ein Topf',
  salt: 'Salz',
  color: 'Farbe',
  book: 'Buch',
  invented: 'Beispieldaten: Werkstatt, Materialien, Bestellungen und Messwerte sind erfunden.',
  undo: 'Rückgängig',
  faultsInBook: {
    one: '{count} Fehler im Buch.',
    other: '{count} Fehler im Buch.',
  },
  faultsInOrders: {
    one: '{count} Fehler in den Bestellungen.',
    other: '{count} Fehler in den Bestellungen.',
  },
}
