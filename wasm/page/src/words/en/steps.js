// The steps of the plan as the page uses them.
export default {
  moldSets: '{mold} sets',
  moldSetsAgain: '{mold} sets, last shot',
  moldSetsSeveral: 'last {mold} sets',
  moldSince: '{mold}, since the load',
  moldSinceSeveral: 'last {mold}, since filled',
  putRight: 'Put it right: stir in what is missing.',
  putRightHot: 'Put it right, hot: stir in what is missing.',
  degassing: 'degassing',
  degassingFill: 'degassing fill {fill}',
  staysHot: 'Pot {pot} stays hot',
}
