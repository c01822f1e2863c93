// Printed pages.
export default {
  number: '{page} von {pages}',
}
