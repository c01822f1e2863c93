// The day that is begun.
export default {
  faults: 'The orders or the book have faults: fix these first.',
  noPlan: 'There is no plan of the day yet.',
  more: '{material}: {measure} more',
  notMade: 'Order {order}: {pieces} of {what} are not made. {because}',
}
