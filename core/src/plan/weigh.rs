//! The weigh list of a stage: every mass as the bench can do it, and what that does to the formula.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::measures::{Bench, Choice, Manner, MeasureError, Step};
use super::text;
use super::{Shown, Weigh};
use crate::book::Book;
use crate::material::Material;
use crate::mix::MaterialId;
use crate::quantity::{Mass, Measurable, Ratio, System};

/// What goes in at a stage, and what is there of it before.
#[derive(Debug, Clone, Copy)]
pub(super) struct Addition {
    pub(super) material: MaterialId,
    /// What the formula wants added.
    pub(super) wanted: Mass,
    /// What the mix then holds of it.
    pub(super) total: Mass,
}

/// The weigh list for `additions`; the base of a single plastisol is measured to `base_mark` of
/// cup `cup` where that is given.
pub(super) fn list(
    additions: &[Addition],
    base_mark: Option<(MaterialId, usize, u32)>,
    book: &Book,
) -> Result<Vec<Weigh>, WeighError> {
    let mut list = Vec::new();
    for addition in additions.iter().filter(|addition| addition.wanted > Mass::default()) {
        let material = book.materials.get(addition.material)?;
        let choice = match base_mark {
            Some((base, cup, mark)) if base == addition.material => {
                Choice::to_the_mark(cup, mark, addition.wanted)
            }
            _ => choose(material, addition.wanted, book)?,
        };
        list.push(entry(material, addition, &choice, book));
    }
    list.sort_by_key(|weigh| weigh.kind);
    Ok(list)
}

fn choose(material: &Material, wanted: Mass, book: &Book) -> Result<Choice, WeighError> {
    let tolerance = material.tolerance.unwrap_or(book.limits.tolerance);
    let purpose = "measuring it at the bench";
    let manner = Manner {
        by_volume: material.by_volume(purpose).ok().map(crate::material::ByVolume::density),
        drop: material.drop_mass(purpose).ok(),
    };
    book.tools.measure(wanted, &manner, Ratio::from(tolerance)).map_err(|error| {
        let factor = error.least().map(|least| (least / wanted).si());
        WeighError::Measure { material: material.name.clone(), tolerance, error, factor }
    })
}

fn entry(material: &Material, addition: &Addition, choice: &Choice, book: &Book) -> Weigh {
    let system = book.system;
    let best = &choice.best;
    let off = (best.mass - addition.wanted) / addition.total;
    let or = choice.others.iter().find(|other| other.within).map(|other| {
        let off = (other.mass - addition.wanted) / addition.total;
        format!("{} ({})", steps(&other.steps, &book.tools, system), text::signed_percent(off))
    });
    Weigh {
        material: material.name.clone(),
        kind: material.kind,
        wanted: text::mass(addition.wanted),
        tool: best.tool,
        measure: steps(&best.steps, &book.tools, system),
        gives: text::mass(best.mass),
        off: Shown::new(off, text::signed_percent(off)),
        or,
    }
}

/// Steps as a person reads them: `1/2 tsp + 1/8 tsp`, `32 drops`, `12.4 g`.
fn steps(steps: &[Step], tools: &Bench, system: System) -> String {
    let words: Vec<String> = steps.iter().map(|step| one_step(step, tools, system)).collect();
    words.join(" + ")
}

fn one_step(step: &Step, tools: &Bench, system: System) -> String {
    let (what, times) = match *step {
        Step::Weigh { reading, times, .. } => {
            (text::balance(reading, tools.balance().map(|balance| balance.readability)), times)
        }
        Step::Fill { cup, mark, times } => {
            let volume = tools.cups().get(cup).map(|cup| cup.mark * f64::from(mark));
            (text::household(volume.unwrap_or_default(), system), times)
        }
        Step::Spoon { spoon, times } => {
            let volume = tools.spoons().get(spoon).copied();
            (text::household(volume.unwrap_or_default(), system), times)
        }
        Step::Drop { times: 1 } => return "1 drop".to_string(),
        Step::Drop { times } => return format!("{times} drops"),
    };
    if times == 1 { what } else { format!("{times} × {what}") }
}

/// Why there is no weigh list.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum WeighError {
    /// No tool measures a material well enough.
    Measure {
        material: String,
        tolerance: f64,
        error: MeasureError,
        /// How much more of it would do, where the bench can do it at all.
        factor: Option<f64>,
    },
    /// A material is not in the table.
    Mix(crate::mix::MixError),
}

impl From<crate::mix::MixError> for WeighError {
    fn from(error: crate::mix::MixError) -> Self {
        Self::Mix(error)
    }
}
