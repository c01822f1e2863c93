// Cautions: in English the words are those of the library.
export default {
  hot: 'Hot plastisol burns deep: gloves, sleeves, eye protection.',
  hotInFull: 'Hot plastisol sticks to skin and burns deep: long sleeves, heat-proof gloves, eye protection.',
  fumes: 'SMOKE or a sharp smell: stop the oven, leave, air the room.',
  fumesInFull:
    'Work where fumes are drawn off. Smoke or a sharp smell is overheated PVC giving off hydrogen chloride: stop heating, leave, air the room.',
  water: 'Mold and injector bone DRY: a drop of water throws plastisol.',
  waterInFull: 'A drop of water in a mold or pot turns to steam and throws plastisol: everything must be dry.',
  salt: 'Bone-dry salt only, in thirds, lumps broken; it settles, so stir.',
  saltInFull: 'Salt holds water: dry it first, or it steams in the hot pot. Stir before every load; it settles.',
  vacuum: 'Only a chamber made for vacuum; protect your eyes.',
  vacuumInFull: 'A cracked or weak vessel collapses under vacuum: use a chamber made for it, and eye protection.',
  food: 'Never food gear again.',
  foodInFull: 'Cups, spoons and an oven used for plastisol are never used for food again.',
  sheet: "The supplier's data sheet comes first.",
  sheetInFull: "The supplier's safety data sheet, local codes and licensed practice come before this sheet.",
}
