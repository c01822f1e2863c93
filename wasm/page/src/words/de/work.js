// The day that is begun.
export default {
  faults: 'Die Bestellungen oder das Buch haben Fehler: erst diese berichtigen.',
  noPlan: 'Es gibt noch keinen Plan des Tages.',
  more: '{material}: noch {measure}',
  notMade: 'Bestellung {order}: {pieces} von {what} werden nicht gemacht. {because}',
}
