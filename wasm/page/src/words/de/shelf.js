// What is left of the day's pots, for the shelf.
export default {
  leftOver: 'Übrig',
  sprues: 'davon {mass} Angüsse',
  heats: {
    one: '{count} Mal erhitzt',
    other: '{count} Mal erhitzt',
  },
  on: 'Ins Regal',
  off: 'Aus dem Regal nehmen',
  isOn: '✓ Im Regal',
  none: 'Halten Sie das Protokoll eines Topfes fest, dann steht hier, was von ihm übrig ist.',
  earlier: 'Von früher im Regal',
  next: 'Der nächste Tag',
  nextWhat: {
    one: 'Die Liste des nächsten Tages beginnt mit dem übrigen Vorrat und dem, was im Regal bleibt: {count} Rest von hier.',
    other:
      'Die Liste des nächsten Tages beginnt mit dem übrigen Vorrat und dem, was im Regal bleibt: {count} Reste von hier.',
  },
  begin: 'Liste des nächsten Tages beginnen',
  today: 'Heute verwenden',
  todayWhat: 'Wenn Sie sie heute verwenden, wird der Rest des Tages mit ihnen geplant.',
  waits: {
    one: '{count} Rest wartet auf eine Liste.',
    other: '{count} Reste warten auf eine Liste.',
  },
  put: 'In dieses Regal stellen',
  added: {
    one: '{count} Rest ins Regal gestellt.',
    other: '{count} Reste ins Regal gestellt.',
  },
}
