// Long lists in parts.
export default {
  parts: 'Parts of the list: {what}',
  earlier: 'Earlier',
  later: 'Later',
  range: '{what} {from} to {to} of {all}',
}
