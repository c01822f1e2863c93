// The steps of the plan as the page uses them.
export default {
  moldSets: '{mold} härtet',
  moldSince: '{mold}, seit der Füllung',
}
