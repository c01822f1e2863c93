// Degassing.
export default {
  start: 'Uhr starten',
  skip: 'Ohne Uhr',
  askGauge: 'Was zeigt das Vakuummeter?',
  askLeft: 'Wie viel ist noch in der Kammer?',
  showed: 'Das Vakuummeter zeigte {reading}; {left} blieben in der Kammer.',
}
