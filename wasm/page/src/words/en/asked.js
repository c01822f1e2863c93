// For programmers: requests and answers.
export default {
  title: 'For programs: the request and its answer',
  region: 'Request and answer: {name}',
  book: '…the book…',
}
