// Quantities and fields of a plan.
export default {
  yes: 'ja',
  unknown: 'unbekannt: {why}',
}
