//! Why there are not fewer pots, in words.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use crate::plan::layout::Layout;
use crate::plan::pot::Workshop;
use crate::plan::split::{Alone, Reason};
use crate::plan::{Proof, ProofFormula, ProofReason};
use crate::quantity::Mass;
use crate::show::{self, text};

impl Workshop<'_> {
    /// The proof in words.
    pub(super) fn proof(&self, layout: &Layout<'_>) -> Proof {
        let reasons = layout.proof.reasons.iter().map(|reason| {
            let (because, formulas) = self.argument(reason, layout);
            ProofReason { pots: number(reason.pots()), because, formulas }
        });
        Proof {
            pots: number(layout.proof.found),
            least: number(layout.proof.lower),
            reasons: reasons.collect(),
        }
    }

    /// An argument as a sentence, and all formulas that it counts.
    fn argument(&self, reason: &Reason, layout: &Layout<'_>) -> (String, Vec<ProofFormula>) {
        let named = |formula: usize, pots, because| ProofFormula {
            formula: self.recipes.get(formula).map(|recipe| recipe.name()).unwrap_or_default(),
            pots,
            because,
        };
        let alone = |of: &[Alone]| -> Vec<ProofFormula> {
            of.iter().map(|alone| named(alone.formula, Some(alone.pots), filled(alone))).collect()
        };
        match reason {
            Reason::Apart { formulas } if formulas.len() == 1 => {
                ("its shots alone fill this many pots".to_string(), alone(formulas))
            }
            Reason::Apart { formulas } => (
                "no two of these can become each other by adding, so none shares a pot".to_string(),
                alone(formulas),
            ),
            Reason::Layers { layers, formulas } => {
                let layers = layers.iter().filter_map(|stage| layout.layers.get(*stage));
                let layers = layers.map(|stage| {
                    named(stage.layer.recipe.number, Some(1), "one of the layers".to_string())
                });
                (
                    "the layers of a piece are hot at once, and none of these can share a pot with another"
                        .to_string(),
                    layers.chain(alone(formulas)).collect(),
                )
            }
            Reason::Capacity { base, all, a_pot, .. } => (
                format!(
                    "all base is in the pots from their start, the shots take {all} of it, and a pot supplies at \
                     most {a_pot}: {all} / {a_pot} = {}",
                    show::number((*all / *a_pot).value).at_least(),
                    all = in_words(*all),
                    a_pot = in_words(*a_pot),
                ),
                base.iter()
                    .map(|&(formula, base)| {
                        named(formula, None, format!("{} of base", in_words(base)))
                    })
                    .collect(),
            ),
            Reason::Heats { each, heats, allowed, .. } => (
                format!("the shots take at least {heats} heats, and a pot withstands {allowed}"),
                each.iter()
                    .map(|&(formula, heats)| named(formula, None, counted(heats, "heat")))
                    .collect(),
            ),
        }
    }
}

/// The limit of the pots of one formula.
fn filled(alone: &Alone) -> String {
    let taken = in_words(alone.taken);
    let Some(room) = alone.room.map(in_words) else { return format!("{taken} of shots") };
    match alone.shots {
        Some((shots, a_pot)) => {
            let shots = counted(shots, "shot");
            let within = match alone.in_heats {
                Some(heats) => format!(" in {}", counted(heats, "heat")),
                None => format!(", {room}"),
            };
            format!("{shots} of one mold, of which a pot gives at most {a_pot}{within}")
        }
        None => format!("{taken} of shots, of which a pot gives at most {room}"),
    }
}

fn in_words(mass: Mass) -> String {
    text::mass(mass).text
}

fn counted(count: u32, what: &str) -> String {
    if count == 1 { format!("1 {what}") } else { format!("{count} {what}s") }
}

fn number(count: usize) -> u32 {
    u32::try_from(count).unwrap_or(u32::MAX)
}
