// The bench.
export default {
  wentOn: 'Der Tag geht weiter',
  checkFirst: 'Zuerst prüfen',
  tick: 'Topf {pot}: {what}, Schritt {step}',
  tickToFix: 'Topf {pot}: {what}, zur Korrektur',
  sheet: 'Arbeitsblatt',
  stillHot: '{formulas}, noch heiß',
  entries: 'Einträge',
  work: 'Reihenfolge der Arbeit',
  shots: {
    one: '{count} Schuss',
    other: '{count} Schüsse',
  },
  and: 'und',
  fewest: {
    one: '{count} Topf: kein Plan hat weniger.',
    other: '{count} Töpfe: kein Plan hat weniger.',
  },
  atLeast: {
    one: '{count} Topf; kein Plan hat weniger als {least}.',
    other: '{count} Töpfe; kein Plan hat weniger als {least}.',
  },
  print: 'Drucken',
  cups: 'Vorhandene Becher',
  clear: 'Alle Haken löschen',
  noTime: 'Die Dauer des Tages ist nicht bekannt.',
  time: 'Etwa {total}: {heating} Erhitzen, {shooting} Einspritzen.',
  timeWithout: 'Etwa {total}: {heating} Erhitzen, {shooting} Einspritzen, ohne Abmessen und Aufräumen.',
  inCup: 'im Becher: {cup}',
  moreLines: {
    one: 'und {count} weitere Zeile',
    other: 'und {count} weitere Zeilen',
  },
  done: 'Topf {pot}: {done} von {all} fertig',
}
