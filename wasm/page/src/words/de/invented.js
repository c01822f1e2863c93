// Which entries of the documents are the demo's.
export default {
  all: 'Beispieldaten: Werkstatt, Materialien, Aufträge und Messwerte sind erfunden.',
  some: 'Noch wie im Beispiel, und erfunden: {what}.',
  materials: { one: '{count} Material', other: '{count} Materialien' },
  formulas: { one: '{count} Rezeptur', other: '{count} Rezepturen' },
  molds: { one: '{count} Gießform', other: '{count} Gießformen' },
  products: { one: '{count} Produkt', other: '{count} Produkte' },
  lines: { one: '{count} Auftragszeile', other: '{count} Auftragszeilen' },
}
