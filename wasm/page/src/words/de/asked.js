// For programmers: requests and answers.
export default {
  title: 'Für Programme: die Anfrage und ihre Antwort',
  region: 'Anfrage und Antwort: {name}',
  book: '…das Buch…',
}
