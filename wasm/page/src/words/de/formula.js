// A formula as rows of material, amount and unit.
export default {
  per: 'Bezugsmenge Plastisol',
  doses: 'Dosen',
  weighs: 'Je {per} Plastisol wiegt sie {mass}, ausgehärtet {density}.',
  blend: 'Plastisol, eine Mischung',
  oneBase: 'Ein Plastisol',
  ofBody: 'das ihres Körpers',
  ofBodyElse: 'das ihres Körpers, sonst {base}',
  base: 'Plastisol',
  makeBlend: 'Mischung',
  added: 'Hinzugefügt: {material} in {formula}.',
  exchanged: '{material} ist jetzt {other} in {formula}.',
  removed: 'Entfernt: {material} aus {formula}.',
  materialOf: 'Material statt {material}',
  amountOf: 'Menge von {material}',
  addMaterial: 'Material hinzufügen',
}
