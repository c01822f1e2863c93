//! Cautions: what can hurt somebody, where a result touches it.
//!
//! The supplier's safety data sheet, local codes and licensed practice come first. No limit is
//! stated here that the inputs do not give.

use crate::words::words;

words! {
    /// A caution by its stable code.
    pub enum Caution {
        /// Burns.
        HotPlastisol = "hot-plastisol",
        /// Fumes and hydrogen chloride.
        Fumes = "fumes",
        /// Water in a mold or a pot.
        Water = "water",
        /// Damp salt.
        DampSalt = "damp-salt",
        /// Vessels under vacuum.
        Vacuum = "vacuum",
        /// Kitchen gear.
        FoodGear = "food-gear",
        /// Whose word comes first.
        DataSheet = "data-sheet",
    }
}

impl Caution {
    /// The same in a few words, for the step that it concerns.
    #[must_use]
    pub const fn reminder(self) -> &'static str {
        match self {
            Self::HotPlastisol => "Hot plastisol burns deep: gloves, sleeves, eye protection.",
            Self::Fumes => "SMOKE or a sharp smell: stop the oven, leave, air the room.",
            Self::Water => "Mold and injector bone DRY: a drop of water throws plastisol.",
            Self::DampSalt => "Bone-dry salt only, in thirds, lumps broken; it settles, so stir.",
            Self::Vacuum => "Only a chamber made for vacuum; protect your eyes.",
            Self::FoodGear => "Never food gear again.",
            Self::DataSheet => "The supplier's data sheet comes first.",
        }
    }

    /// The sentence to show.
    #[must_use]
    pub const fn sentence(self) -> &'static str {
        match self {
            Self::HotPlastisol => {
                "Hot plastisol sticks to skin and burns deep: long sleeves, heat-proof gloves, eye protection."
            }
            Self::Fumes => {
                "Work where fumes are drawn off. Smoke or a sharp smell is overheated PVC giving off hydrogen chloride: stop heating, leave, air the room."
            }
            Self::Water => {
                "A drop of water in a mold or pot turns to steam and throws plastisol: everything must be dry."
            }
            Self::DampSalt => {
                "Salt holds water: dry it first, or it steams in the hot pot. Stir before every load; it settles."
            }
            Self::Vacuum => {
                "A cracked or weak vessel collapses under vacuum: use a chamber made for it, and eye protection."
            }
            Self::FoodGear => {
                "Cups, spoons and an oven used for plastisol are never used for food again."
            }
            Self::DataSheet => {
                "The supplier's safety data sheet, local codes and licensed practice come before this sheet."
            }
        }
    }
}
