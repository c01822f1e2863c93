// The day that is begun.
export default {
  faults: 'Die Aufträge oder das Buch haben Fehler: erst diese berichtigen.',
  noPlan: 'Es gibt noch keinen Plan des Tages.',
  more: '{material}: noch {measure}',
  notMade: 'Auftrag {order}: {pieces} von {what} werden nicht gemacht. {because}',
}
