// The steps of the plan as the page uses them.
export default {
  moldSets: '{mold} härtet',
  moldSetsAgain: '{mold} härtet, ab dem letzten Schuss',
  moldSetsSeveral: '{mold} härtet, die zuletzt gefüllte',
  moldSince: '{mold}, seit der Ladung',
  moldSinceSeveral: '{mold}, seit die letzte gefüllt ist',
  putRight: 'Richten: einrühren, was fehlt.',
  putRightHot: 'Richten, heiß: einrühren, was fehlt.',
  degassing: 'Entgasen',
  degassingFill: 'Entgasen, Füllung {fill}',
  staysHot: 'Topf {pot} bleibt heiß',
}
