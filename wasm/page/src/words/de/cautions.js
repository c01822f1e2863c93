// Cautions: in English the words are those of the library.
export default {
  hot: 'Heißes Plastisol verbrennt tief: Handschuhe, lange Ärmel, Augenschutz.',
  hotInFull: 'Heißes Plastisol klebt an der Haut und verbrennt tief: lange Ärmel, hitzefeste Handschuhe, Augenschutz.',
  fumes: 'RAUCH oder stechender Geruch: Ofen aus, hinausgehen, lüften.',
  fumesInFull:
    'Nur arbeiten, wo Dämpfe abgesaugt werden. Rauch oder stechender Geruch ist überhitztes PVC, das Chlorwasserstoff abgibt: nicht weiter erhitzen, hinausgehen, lüften.',
  water: 'Gießform und Spritze knochenTROCKEN: ein Tropfen Wasser schleudert Plastisol heraus.',
  waterInFull:
    'Ein Tropfen Wasser in Gießform oder Topf wird zu Dampf und schleudert Plastisol heraus: alles muss trocken sein.',
  salt: 'Nur knochentrockenes Salz, in Dritteln, ohne Klumpen; es setzt sich ab, also rühren.',
  saltInFull:
    'Salz hält Wasser: vorher trocknen, sonst dampft es im heißen Topf. Vor jeder Ladung rühren; es setzt sich ab.',
  vacuum: 'Nur eine Kammer, die für Vakuum gebaut ist; Augen schützen.',
  vacuumInFull:
    'Ein rissiges oder schwaches Gefäß implodiert im Vakuum: eine Kammer nehmen, die dafür gebaut ist, und Augenschutz tragen.',
  food: 'Nie wieder für Lebensmittel.',
  foodInFull: 'Becher, Löffel und Ofen, die für Plastisol dienten, nie wieder für Lebensmittel verwenden.',
  sheet: 'Das Datenblatt des Lieferanten geht vor.',
  sheetInFull:
    'Das Sicherheitsdatenblatt des Lieferanten, örtliche Vorschriften und Fachregeln gehen diesem Blatt vor.',
}
