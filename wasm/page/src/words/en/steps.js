// The steps of the plan as the page uses them.
export default {
  moldSets: '{mold} sets',
  moldSetsAgain: '{mold} sets, from its last shot',
  moldSetsSeveral: '{mold} sets, the one filled last',
  moldSince: '{mold}, since the load',
  moldSinceSeveral: '{mold}, since the last one was filled',
  putRight: 'Put it right: stir in what is missing.',
  putRightHot: 'Put it right, hot: stir in what is missing.',
  degassing: 'degassing',
  degassingFill: 'degassing fill {fill}',
  staysHot: 'Pot {pot} stays hot',
}
