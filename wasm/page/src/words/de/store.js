// What the browser keeps, and files.
export default {
  late: 'Dieser Browser speichert Änderungen spät ({why}): stürzt er ab, fehlen die der letzten Sekunden.',
  refused: 'Dieser Browser speichert die Daten der Seite nicht ({why}): sichern Sie Buch und Aufträge als Dateien.',
  unreadable: 'Das war nicht zu lesen: {why}',
  earlier: 'Die Daten von einem früheren Besuch sind nicht zu lesen ({why}): dies sind Beispieldaten.',
}
