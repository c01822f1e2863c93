// Ticks.
export default {
  clear: 'Alle Haken und Uhren löschen? Alle Töpfe werden dann von vorn geplant, auch die begonnenen.',
  before: 'Diese Haken sind für {day}.',
  beforeNoDay: 'Diese Haken sind für eine Liste ohne Tag.',
  keep: 'Behalten',
}
