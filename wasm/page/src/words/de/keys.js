// The keyboard, and what is said of the next step.
export default {
  title: 'Tastatur',
  d: 'Fertig, eingegossen oder Uhr starten: die große Taste',
  t: 'Das Feld für den Messwert',
  b: 'Mit Waage, in Tropfen: die andere Art zu messen',
  o: 'Andere Menge',
  s: 'Überspringen',
  l: 'Alle übrigen Ladungen',
  more: 'Ein gutes Stück mehr',
  less: 'Ein gutes Stück weniger',
  u: 'Rückgängig',
  w: 'Ein Schritt oder der ganze Topf',
  views: 'Die Ansichten: Aufträge, Werkbank und so weiter',
  list: 'Diese Liste',
  single: 'Einzelne Tasten',
  close: 'Schließen',
  next: 'Weiter, Topf {pot}: {what}',
}
