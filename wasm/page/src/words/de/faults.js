// Faults of the documents.
export default {
  list: 'Fehler',
  document: 'das Dokument',
  place: 'Nr. {number}',
}
