// Which entries of the documents are the demo's.
export default {
  all: 'Demo data: shop, materials, orders and measurements are invented.',
  some: 'Still as in the demo, and invented: {what}.',
  materials: { one: '{count} material', other: '{count} materials' },
  formulas: { one: '{count} formula', other: '{count} formulas' },
  molds: { one: '{count} mold', other: '{count} molds' },
  products: { one: '{count} product', other: '{count} products' },
  lines: { one: '{count} order line', other: '{count} order lines' },
}
