// A formula as rows of material, amount and unit.
export default {
  per: 'Per, of base',
  doses: 'Doses',
  weighs: 'Per {per} of base it weighs {mass}, {density} when set.',
  blend: 'Base, a blend',
  oneBase: 'One base',
  ofBody: 'of its body',
  ofBodyElse: 'of its body, else {base}',
  base: 'Base',
  makeBlend: 'Blend',
  added: 'Added: {material} in {formula}.',
  exchanged: '{material} is now {other} in {formula}.',
  removed: 'Removed: {material} from {formula}.',
  materialOf: 'Material of {material}',
  amountOf: 'Amount of {material}',
  addMaterial: 'Add a material',
}
