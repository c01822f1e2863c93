// Long lists in parts.
export default {
  parts: 'Teile der Liste: {what}',
  earlier: 'Frühere',
  later: 'Spätere',
  range: '{what} {from} bis {to} von {all}',
}
