// The steps of the plan as the page uses them.
export default {
  moldSets: '{mold} sets',
  moldSince: '{mold}, since the load',
}
