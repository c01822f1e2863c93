// The view of the day's events.
export default {
  parts: 'Teile des Tages',
  record: 'Protokoll',
  trial: 'Versuch',
  more: 'Mehr Stück',
  shelf: 'Reste',
  learn: 'Gelernt',
}
