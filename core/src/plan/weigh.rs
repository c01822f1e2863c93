//! The weigh list of a stage: every mass as the bench can do it, and what that does to the formula.

use alloc::borrow::Cow;
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::dosing::Dosing;
use super::doubt::{Taking, doubt};
use super::tool_names::ToolNames;
use super::{Way, Weigh};
use crate::bench::{Bench, Choice, Manner, Measure, MeasureError, Step, Tool};
use crate::book::Book;
use crate::fault::Diagnose;
use crate::material::Material;
use crate::mix::{MaterialId, MixError};
use crate::quantity::{Mass, Ratio};
use crate::show::{Shown, text};

/// A material of a weigh list that is chosen and not yet told: who looks for an amount that the bench can measure
/// makes many lists and tells one.
pub(crate) struct Listed<'a> {
    pub(super) material: &'a Material,
    pub(super) addition: Addition,
    tolerance: f64,
    /// `None` where so little is lacking that adding nothing keeps the tolerance.
    choice: Option<Choice>,
}

/// What goes in at a stage, and what is there of it before.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Addition {
    pub(crate) material: MaterialId,
    /// What the formula wants added.
    pub(crate) wanted: Mass,
    /// What the mix then holds of it.
    pub(crate) total: Mass,
}

/// The weigh list for additions to a mix that has its own already.
pub(crate) struct ToMix<'a> {
    pub(crate) list: Vec<Listed<'a>>,
    /// What no tool can measure, and what is within its tolerance without it.
    pub(crate) left_out: Vec<MaterialId>,
}

/// The weigh list for `additions`; the base of a single plastisol is measured the way that `base` says,
/// where it is given.
pub(crate) fn list<'a>(
    additions: &[Addition],
    base: Option<(MaterialId, &Measure)>,
    book: &'a Book,
    dosing: &Dosing,
) -> Result<Vec<Listed<'a>>, WeighError> {
    let mut list = Vec::new();
    for addition in additions.iter().filter(|addition| addition.wanted > Mass::default()) {
        let material = book.materials.get(addition.material)?;
        let tolerance = material.tolerance.unwrap_or(book.limits.tolerance);
        // The tolerance is that of the formula: what is added to much may be off by more.
        let of_addition = tolerance * (addition.total / addition.wanted).value;
        if of_addition >= 1.0 {
            list.push(Listed { material, addition: *addition, tolerance, choice: None });
            continue;
        }
        // A drop that nobody weighed may be a third off. It is true all the same where the formula
        // counts drops itself, for then as many drops as it says are right, whatever they weigh.
        let counted = material.drop_is_calibrated() || dosing.is_dropped(addition.material);
        let mut choice = choose(material, addition.wanted, of_addition, counted, &book.tools);
        if let Some((base, way)) = base
            && base == addition.material
        {
            // Another way to come just below a cup's brim may come above it.
            let to_a_mark = way.steps.iter().all(|step| matches!(step, Step::Fill { .. }));
            let others = if to_a_mark { choice.ok() } else { None };
            choice = Ok(Choice::settled(way.clone(), others));
        }
        let choice = choice.map_err(|error| WeighError::Measure {
            material: material.name.clone(),
            tolerance,
            error,
        })?;
        list.push(Listed { material, addition: *addition, tolerance, choice: Some(choice) });
    }
    list.sort_by_key(|listed| listed.material.kind);
    Ok(list)
}

/// The most that a small addition may be off by itself: beyond it the amount says nothing.
const LOOSEST: f64 = 0.5;

/// The weigh list for additions to a mix, each with the tolerance of all of its material there:
/// what is a small part of it need not be measured so well. An addition that no tool measures is
/// left out where the material keeps its tolerance without it.
pub(crate) fn list_to_mix<'a>(
    additions: &[(Addition, f64)],
    book: &'a Book,
    dosing: &Dosing,
) -> Result<ToMix<'a>, WeighError> {
    let mut made = ToMix { list: Vec::new(), left_out: Vec::new() };
    let additions = additions.iter().filter(|(addition, _)| addition.wanted > Mass::default());
    for (addition, tolerance) in additions {
        let material = book.materials.get(addition.material)?;
        let share = (addition.wanted / addition.total).value;
        let own = (tolerance / share).min(LOOSEST);
        let counted = material.drop_is_calibrated() || dosing.is_dropped(addition.material);
        match choose(material, addition.wanted, own, counted, &book.tools) {
            Ok(choice) => {
                let choice = Some(choice);
                made.list.push(Listed { material, addition: *addition, tolerance: own, choice });
            }
            Err(_) if share <= *tolerance => made.left_out.push(addition.material),
            Err(error) => {
                let material = material.name.clone();
                return Err(WeighError::Measure { material, tolerance: own, error });
            }
        }
    }
    made.list.sort_by_key(|listed| listed.material.kind);
    Ok(made)
}

/// The ways to measure `wanted` of a material within `tolerance`; by drops where they may be
/// `counted`.
pub(crate) fn choose(
    material: &Material,
    wanted: Mass,
    tolerance: f64,
    counted: bool,
    tools: &Bench,
) -> Result<Choice, MeasureError> {
    let purpose = "measuring it at the bench";
    let manner = Manner {
        by_volume: material.by_volume(purpose).ok().map(crate::material::ByVolume::density),
        drop: if counted { material.drop_mass(purpose).ok() } else { None },
    };
    tools.measure(wanted, &manner, Ratio::from(tolerance))
}

/// A measure in words; its deviation is told as a share of `total`, all of the material in the mix.
pub(crate) fn way(measure: &Measure, wanted: Mass, total: Mass, names: &ToolNames<'_>) -> Way {
    let off = (measure.mass - wanted) / total;
    Way {
        tool: measure.tool,
        measure: steps(&measure.steps, names),
        gives: text::mass(measure.mass),
        off: Shown::new(off, text::signed_percent(off)),
    }
}

impl Listed<'_> {
    /// The entry in words, with how sure it is.
    pub(crate) fn told(&self, book: &Book, dosing: &Dosing, names: &ToolNames<'_>) -> Weigh {
        let Addition { material, wanted, total } = self.addition;
        let way = |measure| way(measure, wanted, total, names);
        let written = dosing.written_in(material);
        let unsure = &book.unsure;
        let doubt = |it: &Measure| doubt(self.material, &it.steps, written, names, unsure);
        let best = self.choice.as_ref().map(|choice| &choice.best);
        let others = || self.choice.iter().flat_map(|choice| &choice.others).filter(|it| it.within);
        Weigh {
            material: self.material.name.clone(),
            kind: self.material.kind,
            wanted: text::mass(wanted),
            tolerance: text::percent(Ratio::from(self.tolerance)),
            best: best.map_or_else(|| nothing(wanted, total), way),
            doubt: best.and_then(doubt),
            doubt_weighed: others().find(|it| it.tool == Tool::Balance).and_then(doubt),
            others: others().map(way).collect(),
        }
    }

    /// What the way chosen gives.
    pub(super) fn gives(&self) -> Mass {
        self.choice.as_ref().map_or(Mass::default(), |choice| choice.best.mass)
    }

    /// What goes into the mix by the way chosen, where anything does.
    pub(super) fn taking(&self) -> Option<Taking<'_>> {
        let steps = &self.choice.as_ref()?.best.steps;
        Some(Taking { material: self.material, steps, share: 1.0 })
    }
}

/// The way to add nothing.
fn nothing(wanted: Mass, total: Mass) -> Way {
    let off = -(wanted / total);
    Way {
        tool: Tool::Balance,
        measure: "nothing".to_string(),
        gives: text::mass(Mass::default()),
        off: Shown::new(off, text::signed_percent(off)),
    }
}

/// Steps as a person reads them: `1/2 tsp + 1/8 tsp`, `32 drops`, `12.4 g`.
fn steps(steps: &[Step], names: &ToolNames<'_>) -> String {
    if let Some(lots) = lots(steps, names.tools) {
        return lots;
    }
    let words: Vec<String> = steps.iter().map(|step| one_step(step, names)).collect();
    words.join(" + ")
}

/// More than one reading of the balance, as their sum: `852.9 g in 2 lots`.
fn lots(steps: &[Step], tools: &Bench) -> Option<String> {
    let mut total = Mass::default();
    let mut lots = 0_u32;
    for step in steps {
        let Step::Weigh { reading, times, .. } = *step else { return None };
        total += reading * f64::from(times);
        lots = lots.saturating_add(times);
    }
    let readability = tools.balance().map(|balance| balance.readability);
    (lots > 1).then(|| format!("{} in {lots} lots", text::balance(total, readability)))
}

fn one_step(step: &Step, names: &ToolNames<'_>) -> String {
    let tools = names.tools;
    let (what, times) = match *step {
        Step::Weigh { reading, times, .. } => {
            (text::balance(reading, tools.balance().map(|balance| balance.readability)), times)
        }
        Step::Fill { cup, mark, times } => {
            let step = tools.cups().get(cup).map(|cup| cup.mark).unwrap_or_default();
            (text::mark(step * f64::from(mark), step, names.system), times)
        }
        Step::Between { cup, volume } => {
            let step = tools.cups().get(cup).map(|cup| cup.mark).unwrap_or_default();
            (text::between_marks(volume, step, names.system), 1)
        }
        Step::Spoon { spoon, times } => (names.spoon(spoon).to_string(), times),
        Step::Drop { times: 1 } => return "1 drop".to_string(),
        Step::Drop { times } => return format!("{times} drops"),
    };
    if times == 1 { what } else { format!("{times} × {what}") }
}

/// Why there is no weigh list.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub(crate) enum WeighError {
    /// No tool measures a material well enough.
    #[error("\"{material}\" cannot be measured: {error}")]
    Measure { material: String, tolerance: f64, error: MeasureError },
    /// A material is not in the table.
    #[error(transparent)]
    Mix(#[from] MixError),
}

impl Diagnose for WeighError {
    fn code(&self) -> &'static str {
        match self {
            Self::Measure { error, .. } => error.code(),
            Self::Mix(error) => error.code(),
        }
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::Measure { error, .. } => error.help(),
            Self::Mix(error) => error.help(),
        }
    }
}

#[cfg(all(test, feature = "document"))]
mod tests {
    use alloc::vec::Vec;

    use super::*;
    use crate::bench::Tool;
    use crate::document::book_from_text;
    use crate::document::small::BOOK;
    use crate::quantity::Measurable;

    fn tools(book: &Book, name: &str, grams: f64) -> Vec<Tool> {
        let material = book.materials.find(name).unwrap();
        let mass = Mass::from_si(grams / 1e3);
        let addition = Addition { material, wanted: mass, total: mass };
        let dosing = Dosing::of(book);
        let list = list(&[addition], None, book, &dosing).unwrap();
        list.iter()
            .map(|one| one.told(book, &dosing, &ToolNames::of(book)))
            .flat_map(|weigh| core::iter::once(weigh.best).chain(weigh.others))
            .map(|way| way.tool)
            .collect()
    }

    #[test]
    fn a_drop_that_nobody_weighed_measures_only_what_is_dosed_in_drops() {
        let mut document: serde_json::Value = serde_json::from_str(BOOK).unwrap();
        let book = book_from_text(BOOK).unwrap();
        assert!(tools(&book, "blue", 1.35).contains(&Tool::Drops));
        // 2.1 g are 40 pharmacy drops of red, which the book doses by the gram.
        assert!(!tools(&book, "red", 2.1).contains(&Tool::Drops));
        document["formulas"]["rust"]["doses"]["red"] = "40 drops".into();
        let book = book_from_text(&document.to_string()).unwrap();
        assert!(tools(&book, "red", 2.1).contains(&Tool::Drops));
    }

    #[test]
    fn a_base_to_its_mark_is_off_by_nothing() {
        let book = book_from_text(BOOK).unwrap();
        let base = book.materials.find("clear").unwrap();
        let wanted = Mass::from_si(0.243_685_883_595);
        let addition = Addition { material: base, wanted, total: wanted };
        let steps = Vec::from([Step::Fill { cup: 0, mark: 4, times: 1 }]);
        let way = Measure::exactly(Tool::Cup, steps, wanted, wanted);
        let list = list(&[addition], Some((base, &way)), &book, &Dosing::of(&book)).unwrap();
        let best = list[0].told(&book, &Dosing::of(&book), &ToolNames::of(&book)).best;
        assert_eq!((best.tool, &*best.measure), (Tool::Cup, "1 cup"));
        assert_eq!(best.off.quantity, Ratio::from(0.0));
    }

    #[test]
    fn what_no_tool_measures_is_refused_with_its_name() {
        let book = book_from_text(BOOK).unwrap();
        let material = book.materials.find("salt").unwrap();
        let wanted = Mass::from_si(1e-6);
        let dosing = Dosing::of(&book);
        let refused = list(&[Addition { material, wanted, total: wanted }], None, &book, &dosing);
        assert!(matches!(refused, Err(WeighError::Measure { material, .. }) if material == "salt"));
    }

    #[test]
    fn nothing_to_add_is_no_line() {
        let book = book_from_text(BOOK).unwrap();
        let material = book.materials.find("salt").unwrap();
        let nothing = Addition { material, wanted: Mass::default(), total: Mass::default() };
        assert!(list(&[nothing], None, &book, &Dosing::of(&book)).unwrap().is_empty());
    }
}
