// The size for gloves, and its ruler.
export default {
  size: 'Handschuhgröße',
  again: 'Mit dem Lineal neu einstellen',
  hint: 'Tasten von 20 mm, und der Schritt in Buchstaben, die man aus einem Meter liest. Sie stellen es einmal mit Lineal oder Karte ein, für diesen Bildschirm und diesen Zoom.',
  ruler: 'Lineal',
  hold: 'Halten Sie die {edge} oder ein Lineal an den Balken, und machen Sie den Balken so lang: {length}.',
  edge: 'kurze Kante einer Bankkarte',
  length: 'Länge des Balkens',
  pixels: { one: '{count} Pixel', other: '{count} Pixel' },
  shorter: 'Kürzer',
  longer: 'Länger',
  done: 'So lang ist er',
  leave: 'Nicht ändern',
}
