// A heat, by the thermometer.
export default {
  ask: 'Was zeigt das Thermometer?',
  stirAndAsk: 'Umrühren. Was zeigt das Thermometer?',
  shows: 'Das Thermometer in Topf {pot} zeigt, {unit}',
  inTheOven: 'Im Ofen: {time}',
  early: 'Vorzeitig fertig',
  done: 'Fertig',
  next: 'Weiter',
  skip: 'Heiß, nicht abgelesen',
  unread:
    'Topf {pot} wurde nicht abgelesen: heiß ist er nach Ihrem eigenen Urteil. Der Plan spritzt bei {from} bis {to} ein.',
  skipBurst: 'Überspringen: neu ablesen',
  again: 'Neu ablesen',
}
