// The cards of the whole pot.
export default {
  brings: 'Er bringt mit: {materials}.',
  fix: 'Schiefgegangen? Richten',
  thenHolds: 'hält dann {mass}, kalt {volume}; fertig {density}',
  or: 'oder {measure}',
  weighed: 'gewogen ± {uncertainty}',
  fill: 'Füllung {number}',
  degassed: 'Entgast',
  swells: 'Der Becher für {cup}, gefüllt bis {level}, schwillt auf {swollen}',
  start: 'Start: {label}, {words}',
  repeat:
    'Eine Zeile wiederholen, solange der Messwert darin liegt; die Messwerte lassen Raum für den Fehler des Thermometers.',
  expected: 'bringt ihn auf höchstens {temperature};',
  atMost: 'nie über {temperature}',
  layer: 'Diese Schicht ist {share} des Stücks.',
  loads: 'Ladungen von {mold} aus Topf {pot}',
  toWrite: 'gut {blank} von {made}, 3 wiegen:',
  inIt: 'Schon darin: {mass}, kalt {volume}',
  inItOnceRight: 'Nach der Korrektur hält er: {mass}, kalt {volume}',
  isDegassed: 'entgast',
}
