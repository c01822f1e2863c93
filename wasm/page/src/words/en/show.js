// Quantities and fields of a plan.
export default {
  yes: 'yes',
  unknown: 'not known: {why}',
}
