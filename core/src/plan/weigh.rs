//! The weigh list of a stage: every mass as the bench can measure it, and the error that this makes in the formula.

use alloc::borrow::Cow;
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::doubt::{Taking, doubt, doubt_of};
use super::tool_names::ToolNames;
use super::{Adding, GoesIn, Way, Weigh};
use crate::bench::{Bench, Manner, Measure, MeasureError, Step, Tool};
use crate::book::Book;
use crate::codes::{code, codes};
use crate::fault::Diagnose;
use crate::formula::WrittenIn;
use crate::material::Material;
use crate::mix::{MaterialId, MixError};
use crate::quantity::{Mass, Ratio};
use crate::show::{Note, Shown, text};
use crate::uncertainty::ToolUncertainty;

/// An entry of a weigh list before it is put into words: the search for an amount that the bench can measure makes many
/// lists, and one is shown.
pub(crate) struct Listed<'a> {
    pub(super) material: &'a Material,
    pub(super) addition: Addition,
    tolerance: f64,
    /// `None` if so little is missing that adding nothing keeps the tolerance.
    ways: Option<Ways>,
}

/// A material that goes in at a stage, and its mass in the mix then.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Addition {
    pub(crate) material: MaterialId,
    /// The measure that the formula is written in.
    pub(crate) written: WrittenIn,
    /// Mass to add by the formula.
    pub(crate) wanted: Mass,
    /// Its mass in the mix then.
    pub(crate) total: Mass,
}

/// The weigh list for additions to a mix that has its own already.
pub(crate) struct ToMix<'a> {
    pub(crate) list: Vec<Listed<'a>>,
    /// Materials that no tool can measure, and that keep their tolerance without the addition.
    pub(crate) left_out: Vec<MaterialId>,
}

/// The ways to measure a mass of a material.
#[derive(Debug)]
pub(crate) struct Ways {
    /// The chosen way; if no tool keeps the tolerance, the nearest that the bench can do.
    pub(crate) best: Measure,
    /// The best of every other tool, next best first; only those that keep the tolerance, where one does.
    pub(crate) others: Vec<Measure>,
    /// Why no tool keeps the tolerance; `None` if one does.
    pub(crate) beyond: Option<MeasureError>,
}

/// The tools that a material is measured with, by their names, and how unsure they are.
#[derive(Clone, Copy)]
pub(crate) struct Tools<'a> {
    pub(crate) names: &'a ToolNames<'a>,
    pub(crate) unsure: &'a ToolUncertainty,
}

impl Ways {
    /// The way that `measure` is, chosen beforehand.
    fn settled(measure: Measure) -> Self {
        Self { best: measure, others: Vec::new(), beyond: None }
    }
}

impl<'a> Tools<'a> {
    pub(crate) fn new(names: &'a ToolNames<'a>, book: &'a Book) -> Self {
        Self { names, unsure: &book.unsure }
    }

    fn bench(self) -> &'a Bench {
        self.names.tools
    }
}

/// The weigh list for `additions`; the base of a single plastisol is measured by the way in `base`, if given.
pub(crate) fn list<'a>(
    additions: &[Addition],
    base: Option<(MaterialId, &Measure)>,
    book: &'a Book,
    names: &ToolNames<'_>,
) -> Result<Vec<Listed<'a>>, WeighError> {
    let tools = Tools::new(names, book);
    let mut list = Vec::new();
    for addition in additions.iter().filter(|addition| addition.wanted > Mass::default()) {
        let material = book.materials.get(addition.material)?;
        let tolerance = material.tolerance.unwrap_or(book.limits.tolerance);
        // The tolerance is that of the formula: what is added to much may be off by more.
        let of_addition = tolerance * (addition.total / addition.wanted).value;
        if of_addition >= 1.0 {
            list.push(Listed { material, addition: *addition, tolerance, ways: None });
            continue;
        }
        let ways = match base.filter(|(base, _)| *base == addition.material) {
            // Another way to come just below a cup's brim may come above it.
            Some((_, way)) if !way.is_to_a_mark() => Ways::settled(way.clone()),
            base => {
                let to_a_mark = base.map(|(_, way)| way.clone());
                let (wanted, written) = (addition.wanted, addition.written);
                choose(material, wanted, of_addition, written, to_a_mark, tools)
                    .map_err(|error| WeighError::of(material, error))?
            }
        };
        list.push(Listed { material, addition: *addition, tolerance, ways: Some(ways) });
    }
    list.sort_by_key(|listed| (listed.material.adding(), listed.material.kind));
    Ok(list)
}

/// Maximum error of a small addition by itself: beyond it the amount means nothing.
const LOOSEST: f64 = 0.5;

/// The weigh list for additions to a mix, each with the tolerance of all of its material there:
/// what is a small part of it need not be measured so well. An addition that no tool measures is
/// left out if the material keeps its tolerance without it.
pub(crate) fn list_to_mix<'a>(
    additions: &[(Addition, f64)],
    book: &'a Book,
    names: &ToolNames<'_>,
) -> Result<ToMix<'a>, WeighError> {
    let tools = Tools::new(names, book);
    let mut made = ToMix { list: Vec::new(), left_out: Vec::new() };
    let additions = additions.iter().filter(|(addition, _)| addition.wanted > Mass::default());
    for (addition, tolerance) in additions {
        let material = book.materials.get(addition.material)?;
        let share = (addition.wanted / addition.total).value;
        let own = (tolerance / share).min(LOOSEST);
        match choose(material, addition.wanted, own, addition.written, None, tools) {
            Ok(ways) if ways.beyond.is_none() || share > *tolerance => {
                let ways = Some(ways);
                made.list.push(Listed { material, addition: *addition, tolerance: own, ways });
            }
            Err(error) if share > *tolerance => return Err(WeighError::of(material, error)),
            _ => made.left_out.push(addition.material),
        }
    }
    made.list.sort_by_key(|listed| (listed.material.adding(), listed.material.kind));
    Ok(made)
}

/// Rounding that hides behind the scatter of a level spoon, 3 % (common practice, no source).
const FINE: f64 = 0.02;

/// Uncertainty assumed for the density of a liquid if the book does not state it, only to choose between ways (common
/// practice, no source).
const UNSTATED_LIQUID: f64 = 0.05;

/// The same for a density as scooped: from loose to settled (common practice, no source).
const UNSTATED_SCOOPED: f64 = 0.1;

/// The ways to measure `wanted` of a material within `tolerance`; `to_the_marks` is a further one.
///
/// The measure that the dose is written in comes first, unless another is surer. The error of a way combines the
/// uncertainty of its tool and of the conversion from the dose's own measure with its rounding, to a tenth of a percent.
/// Of ways with equal errors, the one with less handling comes first.
pub(crate) fn choose(
    material: &Material,
    wanted: Mass,
    tolerance: f64,
    written: WrittenIn,
    to_the_marks: Option<Measure>,
    tools: Tools<'_>,
) -> Result<Ways, MeasureError> {
    let purpose = "measuring it at the bench";
    // A drop that nobody weighed may be a third off. If the formula itself counts drops, that count is right whatever
    // a drop weighs.
    let counted = material.drop_is_calibrated() || written == WrittenIn::Drops;
    // A borrowed density is used if the formula asks for a volume, or if there is no scale.
    let is_weighed = written != WrittenIn::Volume && tools.bench().balance().is_some();
    let by_volume = material.by_volume(purpose).ok();
    let by_volume = by_volume.filter(|_| !(is_weighed && material.is_borrowed_by_volume()));
    let manner = Manner {
        by_volume: by_volume.map(crate::material::ByVolume::density),
        drop: if counted { material.drop_mass(purpose).ok() } else { None },
    };
    let found = tools.bench().measure(wanted, &manner, Ratio::from(tolerance));
    let is_no_filling = |one: &Measure| to_the_marks.is_none() || one.tool != Tool::Cup;
    let (mut all, beyond) = match found {
        Ok(choice) => (core::iter::once(choice.best).chain(choice.others).collect(), None),
        Err(MeasureError::NotReached { wanted, tolerance, tools }) => {
            let nearest = tools.iter().map(|tool| tool.nearest.clone()).collect();
            (nearest, Some(MeasureError::NotReached { wanted, tolerance, tools }))
        }
        Err(MeasureError::NoTool) => (Vec::new(), None),
        Err(error) => return Err(error),
    };
    all.retain(is_no_filling);
    for one in all.iter_mut().filter(|one| is_own(one.tool, written) && one.within) {
        let off = one.deviation.value.abs();
        // One act more is worth it if the fewest acts round off more than a level spoon scatters.
        let finer = [FINE, off / 1.5].into_iter().filter(|_| off > FINE);
        let mut finer = finer.filter_map(|finer| {
            let finer = tools.bench().nearest(one.tool, wanted, &manner, Ratio::from(finer))?;
            (finer.within && finer.acts <= one.acts.saturating_add(1)).then_some(finer)
        });
        if let Some(finer) = finer.next() {
            *one = finer;
        }
    }
    let beyond = beyond.filter(|_| to_the_marks.is_none());
    all.extend(to_the_marks);
    if all.iter().any(|one| one.within) {
        all.retain(|one| one.within);
    }
    // A cup and spoons measure alike: keep the one with less handling.
    let by_volume = |one: &Measure| matches!(one.tool, Tool::Cup | Tool::Spoons);
    let handiest = all.iter().filter(|one| by_volume(one)).map(Measure::rank).min();
    all.retain(|one| !by_volume(one) || Some(one.rank()) == handiest);
    if all.len() > 1 {
        all.sort_by_cached_key(|one| {
            let is_own = is_own(one.tool, written);
            let thousandths = libm::round(error(one, material, written, tools) * 1e3) as u64;
            (thousandths, !is_own, one.rank())
        });
    }
    let mut all = all.into_iter();
    let best = all.next().ok_or(MeasureError::NoTool)?;
    Ok(Ways { best, others: all.collect(), beyond })
}

/// Relative error of a way against the dose as written, from its uncertainty and its rounding: √(u² + d²).
fn error(way: &Measure, material: &Material, written: WrittenIn, tools: Tools<'_>) -> f64 {
    let doubt = doubt_of(material, &way.steps, written, tools.names, tools.unsure);
    let (doubt, is_open) = doubt.unwrap_or((1.0, true));
    // The formula's own measure needs no density; that of another may have no stated uncertainty.
    let density = match is_open && !is_own(way.tool, written) {
        true if material.is_scooped() => UNSTATED_SCOOPED,
        true => UNSTATED_LIQUID,
        false => 0.0,
    };
    libm::sqrt(doubt * doubt + density * density + way.deviation.value * way.deviation.value)
}

/// Whether a tool measures in what a dose is written in.
fn is_own(tool: Tool, written: WrittenIn) -> bool {
    match tool {
        Tool::Balance => written == WrittenIn::Mass,
        Tool::Cup | Tool::Spoons => written == WrittenIn::Volume,
        Tool::Drops => written == WrittenIn::Drops,
    }
}

/// A measure in words, with its deviation as a share of `total`, all of the material in the mix.
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
    /// Its tolerance.
    pub(super) fn tolerance(&self) -> Ratio {
        Ratio::from(self.tolerance)
    }

    /// Why the bench cannot measure it within its tolerance.
    pub(super) fn beyond(&self) -> Option<&MeasureError> {
        self.ways.as_ref()?.beyond.as_ref()
    }

    /// The entry in words, with its uncertainty.
    pub(crate) fn shown(&self, tools: Tools<'_>) -> Weigh {
        let Tools { names, unsure } = tools;
        let Addition { wanted, total, written, .. } = self.addition;
        let way = |measure| way(measure, wanted, total, names);
        let doubt = |it: &Measure| doubt(self.material, &it.steps, written, names, unsure);
        let best = self.ways.as_ref().map(|ways| &ways.best);
        let others = || self.ways.iter().flat_map(|ways| &ways.others).filter(|it| it.within);
        let chosen = best.map_or_else(|| nothing(wanted, total), way);
        let beyond = self.beyond().map(|error| self.told_beyond(&chosen, error));
        Weigh {
            material: self.material.name.clone(),
            kind: self.material.kind,
            add: goes_in(self.material),
            wanted: text::mass(wanted),
            written_in: written,
            tolerance: text::percent(self.tolerance()),
            best: chosen,
            beyond,
            doubt: best.and_then(doubt),
            doubt_weighed: others().find(|it| it.tool == Tool::Balance).and_then(doubt),
            others: others().map(way).collect(),
        }
    }

    /// Caution that the bench cannot measure it finer, with the error that this makes and what would help.
    fn told_beyond(&self, nearest: &Way, error: &MeasureError) -> Note {
        let way_out = match error.least() {
            Some(least) => format!(
                "It keeps the tolerance from {} on: make a larger pot, or use a finer tool.",
                text::mass(least).text
            ),
            None => "Use a finer tool.".to_string(),
        };
        let off = text::in_times(nearest.off.quantity);
        let off = off.unwrap_or_else(|| format!("{} off", nearest.off.text));
        Note {
            code: code!("dose-beyond-bench").to_string(),
            message: format!(
                "{}: the nearest measure is {}, {off} ({} allowed). {way_out}",
                self.material.name,
                nearest.measure,
                text::percent(self.tolerance()).text,
            ),
        }
    }

    /// Mass that the chosen way gives.
    pub(super) fn gives(&self) -> Mass {
        self.ways.as_ref().map_or(Mass::default(), |ways| ways.best.mass)
    }

    /// Mass that goes into the mix by the chosen way; `None` if nothing does.
    pub(super) fn taking(&self) -> Option<Taking<'_>> {
        let steps = &self.ways.as_ref()?.best.steps;
        Some(Taking { material: self.material, steps, share: 1.0 })
    }
}

/// Materials of a weigh list that go in hot, after heating, with their masses.
pub(super) fn hot(list: &[Listed<'_>]) -> Vec<(MaterialId, Mass)> {
    let hot = list.iter().filter(|one| one.material.adding() == Adding::Hot);
    hot.map(|one| (one.addition.material, one.addition.wanted)).collect()
}

/// When and how a material goes in.
fn goes_in(material: &Material) -> GoesIn {
    GoesIn {
        when: material.adding(),
        portions: material.kind.portions(),
        stated: material.add.is_some(),
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
    if let Some(weighings) = weighings(steps, names.tools) {
        return weighings;
    }
    let words: Vec<String> = steps.iter().map(|step| one_step(step, names)).collect();
    words.join(" + ")
}

/// More than one reading of the scale, as their sum: `852.9 g in 2 weighings`.
fn weighings(steps: &[Step], tools: &Bench) -> Option<String> {
    let mut total = Mass::default();
    let mut count = 0_u32;
    for step in steps {
        let Step::Weigh { reading, times, .. } = *step else { return None };
        total += reading * f64::from(times);
        count = count.saturating_add(times);
    }
    let readability = tools.balance().map(|balance| balance.readability);
    (count > 1).then(|| format!("{} in {count} weighings", text::balance(total, readability)))
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
    /// No tool measures a material.
    #[error("\"{material}\" cannot be measured: {error}")]
    Measure { material: String, error: MeasureError },
    /// A material is not in the table.
    #[error(transparent)]
    Mix(#[from] MixError),
}

impl WeighError {
    fn of(material: &Material, error: MeasureError) -> Self {
        Self::Measure { material: material.name.clone(), error }
    }
}

impl Diagnose for WeighError {
    codes! {
        Self::Measure { error, .. } => error.code(),
        Self::Mix(error) => error.code(),
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

    use rstest::rstest;

    use super::*;
    use crate::document::book_from_text;
    use crate::document::small::BOOK;
    use crate::material::Adding;
    use crate::quantity::Measurable;

    fn weighed(
        book: &Book,
        name: &str,
        grams: f64,
        written: WrittenIn,
        base: Option<Vec<Step>>,
    ) -> Result<Vec<Weigh>, WeighError> {
        let material = book.materials.find(name).unwrap();
        let mass = Mass::from_si(grams / 1e3);
        let addition = Addition { material, written, wanted: mass, total: mass };
        let names = ToolNames::of(book);
        let base = base.map(|steps| Measure::exactly(Tool::Cup, steps, mass, mass));
        let list = list(&[addition], base.as_ref().map(|way| (material, way)), book, &names)?;
        Ok(list.iter().map(|one| one.shown(Tools::new(&names, book))).collect())
    }

    fn one(book: &Book, name: &str, grams: f64, written: WrittenIn) -> Weigh {
        weighed(book, name, grams, written, None).unwrap().remove(0)
    }

    fn tools(weigh: &Weigh) -> Vec<Tool> {
        core::iter::once(&weigh.best).chain(&weigh.others).map(|way| way.tool).collect()
    }

    /// The small book with other numbers of materials, and with another scale.
    fn book(changes: &[(&str, &str, &str)], reads: &str) -> Book {
        let mut document: serde_json::Value = serde_json::from_str(BOOK).unwrap();
        for (material, field, value) in changes {
            document["materials"][material][field] = (*value).into();
        }
        document["bench"]["balance"]["reads"] = reads.into();
        book_from_text(&document.to_string()).unwrap_or_else(|faults| panic!("{faults}"))
    }

    // A drop of 0.047 g, known to 6.8 %: 36 drops are what the formula says, 1.7 g are that to 6.8 %.
    #[test]
    fn drops_stay_drops_as_long_as_they_can_be_counted() {
        let book = book(&[("blue", "drop", "0.047 g ± 0.0032")], "0.1 g");
        let weigh = one(&book, "blue", 36.0 * 0.047, WrittenIn::Drops);
        assert_eq!((&*weigh.best.measure, &*weigh.best.off.text), ("36 drops", "0 %"));
        let weighed = weigh.others.iter().find(|way| way.tool == Tool::Balance).unwrap();
        assert_eq!(weighed.measure, "1.7 g");
        let doubt = |doubt: &Option<super::super::Doubt>| {
            doubt.as_ref().unwrap().uncertainty.quantity.value
        };
        assert!(doubt(&weigh.doubt) < 0.01 && doubt(&weigh.doubt_weighed) > 0.068);
        // The card's 104 drops are beyond the 60 that a person counts, unless the book says otherwise.
        let weigh = one(&book, "blue", 104.0 * 0.047, WrittenIn::Drops);
        assert_eq!(weigh.best.tool, Tool::Balance);
        let mut patient = book;
        let (balance, spoons, cups) = (
            patient.tools.balance().copied(),
            patient.tools.spoons().to_vec(),
            patient.tools.cups().to_vec(),
        );
        let limits = crate::bench::Handling { drops: 120, ..Default::default() };
        patient.tools = Bench::new(balance, spoons, cups, limits).unwrap();
        let weigh = one(&patient, "blue", 104.0 * 0.047, WrittenIn::Drops);
        assert_eq!(weigh.best.measure, "104 drops");
    }

    // A scale of 0.1 g shows 1.8 g to 2.8 %: not to 2 %, but far surer than a drop that is known to 40 %.
    #[test]
    fn what_keeps_the_tolerance_goes_before_what_does_not() {
        let drop = ("blue", "drop", "0.045 g ± 0.018");
        let weigh = one(
            &book(&[drop, ("blue", "tolerance", "2 %")], "0.1 g"),
            "blue",
            1.8,
            WrittenIn::Mass,
        );
        assert_eq!((tools(&weigh), &*weigh.best.measure), (Vec::from([Tool::Drops]), "40 drops"));
        let weigh = one(
            &book(&[drop, ("blue", "tolerance", "3 %")], "0.1 g"),
            "blue",
            1.8,
            WrittenIn::Mass,
        );
        assert_eq!(tools(&weigh), [Tool::Balance, Tool::Drops]);
    }

    // By hand, of salt written in spoons: two level spoonfuls are sure to √(2.9² + (3/√2)²) = 3.6 %; weighed they are as
    // sure as what a spoonful weighs.
    #[rstest]
    #[case("1.22 g/mL", Tool::Spoons)] // nobody has said how sure that is
    #[case("1.22 g/mL ± 0.06", Tool::Spoons)] // 4.9 %
    #[case("1.22 g/mL ± 0.01", Tool::Balance)] // 0.8 %
    fn spoons_stay_spoons_unless_the_balance_is_surer(#[case] scooped: &str, #[case] tool: Tool) {
        let book = book(&[("salt", "as_scooped", scooped)], "0.1 g");
        let two_tsp = 2.0 * 4.928_921_593_75 * 1.22;
        let weigh = one(&book, "salt", two_tsp, WrittenIn::Volume);
        assert_eq!(weigh.best.tool, tool, "{weigh:?}");
        assert!(tools(&weigh).contains(&Tool::Spoons));
    }

    // 13.8 g of a liquid of 1.02 g/mL: a tablespoon is 9 % too much, worse than any error of a liquid's density.
    #[test]
    fn a_spoon_that_is_far_off_gives_way_to_the_balance() {
        let mut book =
            book(&[("red", "density", "1.02 g/mL"), ("red", "tolerance", "10 %")], "0.1 g");
        let weigh = one(&book, "red", 13.8, WrittenIn::Volume);
        assert_eq!(weigh.best.measure, "13.8 g");
        let spoons = weigh.others.iter().find(|way| way.tool == Tool::Spoons).unwrap();
        assert_eq!((&*spoons.measure, &*spoons.off.text), ("1 tbsp", "+9.3 %"));
        book.unsure.spoon_level = Ratio::from(0.0);
        assert_eq!(one(&book, "red", 13.8, WrittenIn::Volume).best.tool, Tool::Balance);
    }

    // 16.8 g of a liquid of 1.05 g/mL: a tablespoon is 7.6 % short, the quarter teaspoon upon it makes it good.
    #[test]
    fn one_spoon_more_is_taken_where_it_makes_good_what_one_lacks() {
        let book = book(&[("red", "tolerance", "10 %")], "0.1 g");
        let weigh = one(&book, "red", 16.8, WrittenIn::Volume);
        assert_eq!((&*weigh.best.measure, &*weigh.best.off.text), ("1 tbsp + 1/4 tsp", "+0.1 %"));
    }

    #[test]
    fn a_mass_stays_on_the_balance_where_a_spoon_would_do() {
        let book = book_from_text(BOOK).unwrap();
        let weigh = one(&book, "salt", 6.0, WrittenIn::Mass);
        assert_eq!(tools(&weigh), [Tool::Balance, Tool::Spoons]);
    }

    // The star marks no way that is less sure: of all ways within the tolerance the chosen one errs least.
    #[rstest]
    fn the_chosen_way_is_never_the_less_sure_one(
        #[values(WrittenIn::Mass, WrittenIn::Volume, WrittenIn::Drops)] written: WrittenIn,
        #[values(0.3, 0.9, 1.69, 2.3, 5.0, 7.7, 12.4)] grams: f64,
        #[values("0.1 g", "0.01 g")] reads: &str,
        #[values("0.045 g ± 0.0045", "0.045 g ± 0.0004")] drop: &str,
    ) {
        let book = book(&[("blue", "drop", drop), ("blue", "density", "1.05 g/mL ± 0.02")], reads);
        let material = book.materials.get(book.materials.find("blue").unwrap()).unwrap();
        let names = ToolNames::of(&book);
        let tools = Tools::new(&names, &book);
        let mass = Mass::from_si(grams / 1e3);
        let ways = choose(material, mass, 0.05, written, None, tools).unwrap();
        let error = |way: &Measure| {
            let (doubt, _) = doubt_of(material, &way.steps, written, &names, &book.unsure).unwrap();
            libm::hypot(doubt, way.deviation.value)
        };
        for other in ways.others.iter().filter(|other| other.within == ways.best.within) {
            assert!(error(&ways.best) <= error(other) + 0.001, "{ways:?}");
        }
    }

    #[test]
    fn a_drop_that_nobody_weighed_measures_only_what_is_dosed_in_drops() {
        let book = book_from_text(BOOK).unwrap();
        assert!(tools(&one(&book, "blue", 1.35, WrittenIn::Mass)).contains(&Tool::Drops));
        // 2.1 g are 40 pharmacy drops of red.
        assert!(!tools(&one(&book, "red", 2.1, WrittenIn::Mass)).contains(&Tool::Drops));
        assert!(tools(&one(&book, "red", 2.1, WrittenIn::Drops)).contains(&Tool::Drops));
    }

    #[test]
    fn a_base_to_its_mark_is_off_by_nothing() {
        let book = book_from_text(BOOK).unwrap();
        let steps = Vec::from([Step::Fill { cup: 0, mark: 4, times: 1 }]);
        let list = weighed(&book, "clear", 243.685_883_595, WrittenIn::Volume, Some(steps));
        let best = list.unwrap().remove(0).best;
        assert_eq!((best.tool, &*best.measure), (Tool::Cup, "1 cup"));
        assert_eq!(best.off.quantity, Ratio::from(0.0));
    }

    // A third of a drop of 0.045 g, and a pinch, a sixteenth of a teaspoon, of salt.
    #[rstest]
    #[case("blue", 0.015, WrittenIn::Drops, "1 drop", "+200.0 %")]
    #[case("salt", 0.375, WrittenIn::Volume, "0.4 g", "+6.7 %")]
    #[case("salt", 0.001, WrittenIn::Mass, "0.1 g", "100 times what is needed")]
    fn what_the_bench_cannot_do_finer_is_a_caution_with_its_error(
        #[case] material: &str,
        #[case] grams: f64,
        #[case] written: WrittenIn,
        #[case] measure: &str,
        #[case] off: &str,
    ) {
        let book = book_from_text(BOOK).unwrap();
        let weigh = one(&book, material, grams, written);
        assert_eq!(&*weigh.best.measure, measure);
        let beyond = weigh.beyond.unwrap();
        assert_eq!(beyond.code, "dose-beyond-bench");
        assert!(beyond.message.contains(measure) && beyond.message.contains(off), "{beyond:?}");
        assert!(beyond.message.contains("make a larger pot"), "{beyond:?}");
    }

    #[test]
    fn what_nothing_measures_is_refused_with_its_name() {
        let mut document: serde_json::Value = serde_json::from_str(BOOK).unwrap();
        document["materials"]["odd"] = serde_json::json!({ "kind": "other" });
        document["bench"].as_object_mut().unwrap().remove("balance");
        let book = book_from_text(&document.to_string()).unwrap();
        let refused = weighed(&book, "odd", 5.0, WrittenIn::Mass, None).unwrap_err();
        assert_eq!(refused.help(), MeasureError::NoTool.help());
        assert!(matches!(refused, WeighError::Measure { material, .. } if material == "odd"));
    }

    // A tablespoon is 7 % too much of 16.86 g as scooped. That is surer than the density of a powder, which nobody has
    // stated, and less sure than that of a liquid would be.
    #[test]
    fn a_scooped_density_that_nobody_stated_is_less_sure_than_a_spoon() {
        let book =
            book(&[("salt", "tolerance", "10 %"), ("salt", "as_scooped", "1.22 g/mL")], "0.1 g");
        let weigh = one(&book, "salt", 16.86, WrittenIn::Volume);
        assert_eq!((&*weigh.best.measure, &*weigh.best.off.text), ("1 tbsp", "+7.0 %"));
    }

    /// An addition of a material, a quarter of all of it in the mix, whose tolerance is a quarter too.
    fn a_quarter(book: &Book, name: &str, wanted: Mass, tolerance: f64) -> (Addition, f64) {
        let material = book.materials.find(name).unwrap();
        let written = WrittenIn::Mass;
        (Addition { material, written, wanted, total: wanted * 4.0 }, tolerance)
    }

    #[test]
    fn adding_nothing_keeps_a_tolerance_that_it_just_uses_up() {
        let with = |tolerance| book(&[("salt", "tolerance", tolerance)], "0.1 g");
        let is_left_out = |book: &Book| {
            let (addition, _) = a_quarter(book, "salt", Mass::from_si(0.01), 0.25);
            let list = list(&[addition], None, book, &ToolNames::of(book)).unwrap();
            list[0].ways.is_none()
        };
        assert!(is_left_out(&with("25 %")));
        assert!(!is_left_out(&with("24 %")));
    }

    #[test]
    fn what_a_mix_has_within_its_tolerance_is_left_out_if_no_tool_measures_the_rest() {
        let mut document: serde_json::Value = serde_json::from_str(BOOK).unwrap();
        document["materials"]["odd"] = serde_json::json!({ "kind": "other" });
        document["bench"].as_object_mut().unwrap().remove("balance");
        let bare = book_from_text(&document.to_string()).unwrap();
        let weighed = book_from_text(BOOK).unwrap();
        let made = |book: &Book, name, grams: f64, tolerance| {
            let addition = a_quarter(book, name, Mass::from_si(grams / 1e3), tolerance);
            let made = list_to_mix(&[addition], book, &ToolNames::of(book));
            made.map(|made| (made.list.len(), made.left_out.len()))
        };
        // Nothing measures the one, and the scale shows no 0.001 g of the other.
        assert_eq!(made(&bare, "odd", 5.0, 0.25), Ok((0, 1)));
        assert_eq!(made(&weighed, "salt", 0.001, 0.25), Ok((0, 1)));
        // With less tolerance the one is refused, and the other the nearest that the scale shows.
        let refused = made(&bare, "odd", 5.0, 0.24);
        assert!(matches!(refused, Err(WeighError::Measure { material, .. }) if material == "odd"));
        assert_eq!(made(&weighed, "salt", 0.001, 0.24), Ok((1, 0)));
    }

    #[test]
    fn nothing_to_add_is_no_line() {
        let book = book_from_text(BOOK).unwrap();
        assert!(weighed(&book, "salt", 0.0, WrittenIn::Mass, None).unwrap().is_empty());
    }

    #[rstest]
    #[case("salt", None, Adding::Hot, 3, false)]
    #[case("salt", Some("cold"), Adding::Cold, 3, true)]
    #[case("blue", None, Adding::Cold, 1, false)]
    #[case("blue", Some("hot"), Adding::Hot, 1, true)]
    #[case("clear", None, Adding::Cold, 1, false)]
    fn a_material_says_when_it_goes_in(
        #[case] material: &str,
        #[case] add: Option<&str>,
        #[case] when: Adding,
        #[case] portions: u32,
        #[case] stated: bool,
    ) {
        let changes = add.map(|add| (material, "add", add));
        let book = book(changes.as_slice(), "0.1 g");
        let add = one(&book, material, 20.0, WrittenIn::Mass).add;
        assert_eq!((add.when, add.portions, add.stated), (when, portions, stated));
    }
}
