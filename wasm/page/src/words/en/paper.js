// Printed pages.
export default {
  number: '{page} of {pages}',
}
