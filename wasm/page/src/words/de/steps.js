// The steps of the plan as the page uses them.
export default {
  moldSets: '{mold} härtet',
  moldSetsAgain: '{mold} härtet, letzter Schuss',
  moldSetsSeveral: 'letzte {mold} härtet',
  moldSince: '{mold}, seit der Ladung',
  moldSinceSeveral: 'letzte {mold}, seit dem Füllen',
  putRight: 'Richten: einrühren, was fehlt.',
  putRightHot: 'Richten, heiß: einrühren, was fehlt.',
  degassing: 'Entgasen',
  degassingFill: 'Entgasen, Füllung {fill}',
  staysHot: 'Topf {pot} bleibt heiß',
}
