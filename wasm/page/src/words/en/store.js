// What the browser keeps, and files.
export default {
  late: 'This browser stores changes late ({why}): if it crashes, those of the last seconds are lost.',
  refused: "This browser does not store the page's data ({why}): save the book and the orders as files.",
  unreadable: 'This could not be read: {why}',
  earlier: 'The data kept from an earlier visit cannot be read ({why}): this is the demo.',
}
