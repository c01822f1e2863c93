//! Uncertainty of the measures of a day, by the tools that take them, and of what they make
//! ([`uncertainty`](crate::uncertainty)).

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::layout::{Layout, PotLayout};
use super::tool_names::ToolNames;
use super::weigh::Listed;
use crate::bench::Step;
use crate::formula::WrittenIn;
use crate::material::Material;
use crate::quantity::{Mass, MassDensity, Measured, Ratio, Volume};
use crate::shot::Melt;
use crate::show::{Shown, part, text};
use crate::uncertainty::{
    Dosed, DoubtAsWritten, Origin, PieceInputs, Taken, ToolUncertainty, density_uncertainty,
    doubt_as_written, piece_weight,
};

part! {
    /// Uncertainty of a measure.
    pub struct Doubt {
        /// Relative standard uncertainty of what it gives, against the dose in the measure that the formula is written in.
        pub uncertainty: Shown<Ratio>,
        /// Main source of the uncertainty.
        pub main_source: String,
    }
}

/// A material and how it was taken: what is in the mix of it.
pub(super) struct Taking<'a> {
    pub(super) material: &'a Material,
    pub(super) steps: &'a [Step],
    /// The share of it in the mix.
    pub(super) share: f64,
}

/// The result of `read` on how sure what was `taken` of a material is against a dose that is `written` so; `None` where the book
/// lacks a property that this takes.
fn as_written<R>(
    material: &Material,
    taken: &[Taken<'_>],
    written: WrittenIn,
    unsure: &ToolUncertainty,
    read: impl FnOnce(DoubtAsWritten<'_>) -> Option<R>,
) -> Option<R> {
    let dosed = Dosed { material, taken, share: 1.0 };
    read(doubt_as_written(&dosed, written, unsure).ok()?)
}

/// How sure `steps` of a material are against a dose that is `written` so; `None` where the book lacks a property that
/// this takes.
pub(super) fn doubt(
    material: &Material,
    steps: &[Step],
    written: WrittenIn,
    names: &ToolNames<'_>,
    unsure: &ToolUncertainty,
) -> Option<Doubt> {
    doubt_of_taken(material, &taken(steps, names), written, unsure)
}

/// The same of what was `taken` of a material.
pub(crate) fn doubt_of_taken(
    material: &Material,
    taken: &[Taken<'_>],
    written: WrittenIn,
    unsure: &ToolUncertainty,
) -> Option<Doubt> {
    as_written(material, taken, written, unsure, |doubt| {
        let main_source = match doubt.main_source? {
            // The only taking needs no number.
            Origin::Taking { what, material, .. } if taken.len() == 1 => {
                format!("{what} {material}")
            }
            source => source.to_string(),
        };
        Some(Doubt { uncertainty: text::percent(doubt.uncertainty), main_source })
    })
}

/// The relative uncertainty of [`doubt`] in numbers, and whether it rests on a number of whose uncertainty nothing is
/// known.
pub(super) fn doubt_of(
    material: &Material,
    steps: &[Step],
    written: WrittenIn,
    names: &ToolNames<'_>,
    unsure: &ToolUncertainty,
) -> Option<(f64, bool)> {
    let number = |doubt: DoubtAsWritten<'_>| Some((doubt.uncertainty.value, doubt.is_open));
    as_written(material, &taken(steps, names), written, unsure, number)
}

/// Standard uncertainty of the finished density of what was taken; `None` where the book lacks a property.
fn density(
    takings: &[Taking<'_>],
    names: &ToolNames<'_>,
    unsure: &ToolUncertainty,
) -> Option<MassDensity> {
    let taken: Vec<Vec<Taken<'_>>> =
        takings.iter().map(|taking| taken(taking.steps, names)).collect();
    let each = takings.iter().zip(&taken);
    let dosed =
        each.map(|(&Taking { material, share, .. }, taken)| Dosed { material, taken, share });
    density_uncertainty(&dosed.collect::<Vec<_>>(), unsure).ok()
}

/// Standard uncertainty of a finished density.
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct DensityDoubt {
    /// `None` if it is not known.
    pub(super) uncertainty: Option<MassDensity>,
    /// Whether the book states the uncertainty of any number in it: what is known of the tools alone is no uncertainty of
    /// a density.
    is_stated: bool,
}

impl DensityDoubt {
    /// The uncertainty, if it rests on any that the book states.
    pub(super) fn stated(self) -> Option<MassDensity> {
        self.uncertainty.filter(|_| self.is_stated)
    }
}

/// The uncertainty of the finished density at each stage of each pot of a layout.
pub(super) struct DensityDoubts(Vec<Vec<DensityDoubt>>);

impl DensityDoubts {
    pub(super) fn of(layout: &Layout<'_>, names: &ToolNames<'_>, unsure: &ToolUncertainty) -> Self {
        Self(layout.pots.iter().map(|pot| densities(pot, names, unsure)).collect())
    }

    /// That of the stage at `stage` of the pot at `pot`.
    pub(super) fn at(&self, pot: usize, stage: usize) -> DensityDoubt {
        self.0.get(pot).and_then(|stages| stages.get(stage)).copied().unwrap_or_default()
    }
}

/// The uncertainty of the finished density at each stage of `pot`, from what was measured for it and is still in the pot.
fn densities(
    pot: &PotLayout<'_>,
    names: &ToolNames<'_>,
    unsure: &ToolUncertainty,
) -> Vec<DensityDoubt> {
    // How sure the composition is of what was in the pot, or on the shelf, is not known, and later stages hold what is
    // left of it.
    if pot.begun().is_some() || pot.from_shelf.takes().is_some() {
        return Vec::new();
    }
    let mut takings: Vec<Taking<'_>> = Vec::new();
    let mut densities = Vec::with_capacity(pot.stages.len());
    for stage in &pot.stages {
        takings.extend(stage.weigh.iter().filter_map(Listed::taking));
        densities.push(DensityDoubt {
            uncertainty: density(&takings, names, unsure),
            is_stated: takings.iter().any(|taking| taking.material.states_uncertainty()),
        });
        let stays = (stage.carried / stage.held).value;
        takings.iter_mut().for_each(|taking| taking.share *= stays);
    }
    densities
}

/// Standard uncertainty of a piece's weight, or of a layer's with `share` of the cavity, from the cavity's and from
/// that of the finished density; `None` where the book does not say how sure the cavity is, or the density is not known.
pub(super) fn piece(
    cavity: &Measured<Volume>,
    share: f64,
    melt: &Melt,
    density: Option<MassDensity>,
    feed: Ratio,
) -> Option<Mass> {
    let layer = Measured::new(cavity.value * share, cavity.uncertainty? * share);
    let (cold, hot) = (Measured::new(melt.cold, density?), Measured::exact(melt.hot));
    let inputs = PieceInputs::of_densities(layer, &cold, &hot, melt.voids, feed);
    let unsure = piece_weight(&inputs).ok()?.uncertainty;
    (unsure > Mass::default()).then_some(unsure)
}

/// How `steps` take what they take.
pub(crate) fn taken<'a>(steps: &[Step], names: &'a ToolNames<'_>) -> Vec<Taken<'a>> {
    let tools = names.tools;
    let take = |step: &Step| match *step {
        Step::Weigh { reading, times, .. } => {
            let readability = tools.balance()?.readability;
            Some(Taken::Weighed { net: reading, times, readability })
        }
        Step::Fill { cup, mark, times } => {
            let (name, cup) = (names.cup(cup), tools.cups().get(cup)?);
            let between = (cup.mark < cup.capacity).then_some(cup.mark);
            let filled = cup.mark * f64::from(mark);
            Some(Taken::Cup { name, filled, mark: between, times })
        }
        Step::Between { cup, volume } => {
            let (name, cup) = (names.cup(cup), tools.cups().get(cup)?);
            Some(Taken::Cup { name, filled: volume, mark: Some(cup.mark), times: 1 })
        }
        Step::Spoon { spoon, times } => {
            let (name, holds) = (names.spoon(spoon), *tools.spoons().get(spoon)?);
            Some(Taken::Spoon { name, holds, times })
        }
        Step::Drop { times } => Some(Taken::Drops { count: times }),
    };
    let mut taken = Vec::with_capacity(steps.len());
    taken.extend(steps.iter().filter_map(take));
    taken
}

#[cfg(all(test, feature = "document"))]
mod tests {

    use rstest::rstest;

    use super::*;
    use crate::bench::Tool;
    use crate::document::book_from_text;
    use crate::document::small::BOOK;
    use crate::plan::weigh::{Tools, choose};
    use crate::quantity::{Mass, Measurable};

    /// Uncertainty of each way in which the bench can measure it, in per cent, with its cause.
    fn doubts(written: WrittenIn, tool: Tool) -> (f64, String) {
        let mut book: serde_json::Value = serde_json::from_str(BOOK).unwrap();
        book["materials"]["blue"]["drop"] = "0.045 g ± 0.0045".into();
        let book = book_from_text(&book.to_string()).unwrap();
        let id = book.materials.find("blue").unwrap();
        let material = book.materials.get(id).unwrap();
        let names = ToolNames::of(&book);
        let tools = Tools::new(&names, &book);
        let ways = choose(material, Mass::from_si(1.8e-3), 0.1, written, None, tools).unwrap();
        let mut ways = core::iter::once(&ways.best).chain(&ways.others);
        let measure = ways.find(|measure| measure.tool == tool).unwrap();
        let doubt = doubt(material, &measure.steps, written, &names, &book.unsure).unwrap();
        (doubt.uncertainty.quantity.si() * 100.0, doubt.main_source)
    }

    // By hand: 40 drops scatter by 5 %/√40 = 0.79 %, and a drop weighed to 10 % hurts where masses are asked for;
    // a net weight of 1.8 g to 0.1 g is sure to √2·0.1/√12/1.8 = 2.27 %, its span to 0.1 %; divided by a drop that is
    // 10 % off to either side, (1/0.9 − 1/1.1)/2 = 10.10 %.
    #[rstest]
    #[case(WrittenIn::Drops, Tool::Drops, 0.790_569, "drop against drop of blue")]
    #[case(WrittenIn::Mass, Tool::Drops, 10.031_201, "what a drop of blue weighs")]
    #[case(WrittenIn::Mass, Tool::Balance, 2.270_283, "reading the balance for blue")]
    #[case(WrittenIn::Drops, Tool::Balance, 10.352_992, "what a drop of blue weighs")]
    fn a_dose_is_as_sure_as_the_way_between_formula_and_bench(
        #[case] written: WrittenIn,
        #[case] tool: Tool,
        #[case] per_cent: f64,
        #[case] source: &str,
    ) {
        let (found, main) = doubts(written, tool);
        assert!((found - per_cent).abs() < 2e-3 * per_cent, "{found}");
        assert_eq!(main, source);
    }

    // A density rests on ratios alone: what is left of a stage is as sure as the whole, and what is gone adds nothing.
    #[test]
    fn what_is_left_of_a_stage_is_as_sure_as_the_whole() {
        let mut book: serde_json::Value = serde_json::from_str(BOOK).unwrap();
        book["materials"]["clear"]["density"] = "1.03 g/mL ± 0.01".into();
        book["materials"]["salt"]["as_scooped"] = "1.22 g/mL ± 0.06".into();
        let book = book_from_text(&book.to_string()).unwrap();
        let unsure = |shares: [f64; 2]| {
            let material = |name| book.materials.get(book.materials.find(name).unwrap()).unwrap();
            let base = [Step::Fill { cup: 0, mark: 4, times: 1 }];
            let salt = [Step::Spoon { spoon: 0, times: 2 }];
            let takings = [
                Taking { material: material("clear"), steps: &base, share: shares[0] },
                Taking { material: material("salt"), steps: &salt, share: shares[1] },
            ];
            density(&takings, &ToolNames::of(&book), &book.unsure).unwrap().si()
        };
        let whole = unsure([1.0, 1.0]);
        assert!((unsure([0.25, 0.25]) - whole).abs() < 1e-9 * whole);
        // Of base alone only its density is left: ± 10 kg/m³.
        assert!((unsure([1.0, 0.0]) - 10.0).abs() < 1e-9);
        assert!((unsure([1.0, 1.0]) - unsure([1.0, 0.5])).abs() > 0.1);
    }

    // By hand: 10 mL at 1.00 g/mL half fed is 10 g; cavity and density to 1 % each give √2 % of it, and half of the
    // piece's layers half of that.
    #[test]
    fn a_piece_is_as_sure_as_its_cavity_and_what_fills_it() {
        let of = |density| MassDensity::from_si(density);
        let melt = Melt { hot: of(960.0), cold: of(1040.0), voids: Ratio::from(0.0) };
        let cavity = Measured::new(Volume::from_si(10e-6), Volume::from_si(0.1e-6));
        let unsure = |cavity: &Measured<Volume>, share, density| {
            let found = piece(cavity, share, &melt, density, Ratio::from(0.5));
            found.map(|found| found.si() * 1e3)
        };
        let whole = unsure(&cavity, 1.0, Some(of(10.4))).unwrap();
        assert!((whole - 0.141_421).abs() < 1e-5, "{whole}");
        let layer = unsure(&cavity, 0.5, Some(of(10.4))).unwrap();
        assert!((layer - 0.5 * whole).abs() < 1e-12);
        assert_eq!(unsure(&cavity, 1.0, None), None);
        assert_eq!(unsure(&Measured::exact(cavity.value), 1.0, Some(of(10.4))), None);
        let sure = Measured::new(cavity.value, Volume::from_si(0.0));
        assert_eq!(unsure(&sure, 1.0, Some(of(0.0))), None);
    }

    // A cup without marks is leveled; a level between two marks is read as that at a mark is.
    #[test]
    fn a_cup_is_read_at_its_marks_and_between_them() {
        let mut book: serde_json::Value = serde_json::from_str(BOOK).unwrap();
        let marked = book["bench"]["cups"][0].clone();
        book["bench"]["cups"] = serde_json::json!([{ "holds": "1 cup", "marks": "1 cup" }, marked]);
        let book = book_from_text(&book.to_string()).unwrap();
        let names = ToolNames::of(&book);
        let cups = book.tools.cups();
        let place = |marks: u32| cups.iter().position(|cup| cup.marks() == marks).unwrap();
        let (plain, marked) = (place(1), place(8));
        let read = |step: Step| match taken(&[step], &names)[..] {
            [Taken::Cup { filled, mark, times, .. }] => (filled, mark, times),
            ref other => panic!("{other:?}"),
        };
        let brim = read(Step::Fill { cup: plain, mark: 1, times: 1 });
        assert_eq!(brim, (cups[plain].capacity, None, 1));
        let mark = cups[marked].mark;
        let at_mark = read(Step::Fill { cup: marked, mark: 2, times: 1 });
        assert_eq!(at_mark, (mark * 2.0, Some(mark), 1));
        assert_eq!(read(Step::Between { cup: marked, volume: mark * 2.0 }), at_mark);
    }
}
