//! Why there are not fewer pots, in words.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use crate::plan::layout::Layout;
use crate::plan::pot::Workshop;
use crate::plan::split::Reason;
use crate::plan::{Proof, ProofReason};

impl Workshop<'_> {
    /// The proof in words.
    pub(super) fn proof(&self, layout: &Layout<'_>) -> Proof {
        let number = |count: usize| u32::try_from(count).unwrap_or(u32::MAX);
        let names = |formulas: &[(usize, u32)]| -> Vec<String> {
            let recipes = formulas.iter().filter_map(|(formula, _)| self.recipes.get(*formula));
            recipes.map(|recipe| recipe.name()).collect()
        };
        let reasons = layout.proof.reasons.iter().map(|reason| {
            let (because, apart) = match reason {
                Reason::Apart { formulas } => (
                    "no two of these can become each other by adding, so none shares a pot".to_string(),
                    names(formulas),
                ),
                Reason::Layers { layers, formulas } => {
                    let layers = layers.iter().filter_map(|stage| layout.layers.get(*stage));
                    let mut apart: Vec<String> =
                        layers.map(|stage| stage.layer.recipe.name()).collect();
                    apart.extend(names(formulas));
                    (
                        "the layers of a piece are hot at once, and none of these can share a pot with another"
                            .to_string(),
                        apart,
                    )
                }
                Reason::Capacity { .. } => {
                    ("the base that all shots take fills so many cups".to_string(), Vec::new())
                }
                Reason::Heats { heats, .. } => (
                    format!("{heats} heats are more than the stabilizer allows fewer pots"),
                    Vec::new(),
                ),
            };
            ProofReason { pots: number(reason.pots()), because, apart }
        });
        Proof {
            pots: number(layout.proof.found),
            least: number(layout.proof.lower),
            reasons: reasons.collect(),
        }
    }
}
