// Faults of the documents.
export default {
  list: 'Faults',
  document: 'the document',
  place: 'no. {number}',
}
