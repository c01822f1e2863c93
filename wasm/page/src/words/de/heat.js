// A heat, by the thermometer.
export default {
  ask: 'Was zeigt das Thermometer?',
  stirAndAsk: 'Umrühren. Was zeigt das Thermometer?',
  shows: 'Das Thermometer in Topf {pot} zeigt, {unit}',
  inTheOven: 'Im Ofen: {time}',
  early: 'Vorzeitig fertig',
  done: 'Fertig',
  next: 'Weiter',
  skip: 'Überspringen: er ist heiß',
  skipBurst: 'Überspringen: neu ablesen',
  again: 'Neu ablesen',
}
