// The page as a whole: views, notices, the state of the plan.
export default {
  orders: 'Orders',
  bench: 'Bench',
  day: 'Day',
  one: 'One pot',
  salt: 'Salt',
  color: 'Color',
  book: 'Book',
  invented: 'Demo data: shop, materials, orders and measurements are invented.',
  undo: 'Undo',
  faultsInBook: {
    one: '{count} fault in the book.',
    other: '{count} faults in the book.',
  },
  faultsInOrders: {
    one: '{count} fault in the orders.',
    other: '{count} faults in the orders.',
  },
}
