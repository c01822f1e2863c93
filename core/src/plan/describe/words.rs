//! The words of a step: what to do, what else matters at the bench, and what to know beyond that.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use crate::material::{Adding, Kind};
use crate::plan::process::{Degas, Late, PlannedHeating, StageHeat};
use crate::plan::{Draw, Pieces, Pot, Reading, ShelfPart, Stage, Weigh};
use crate::quantity::{Mass, System};
use crate::show::page::{counted, past};
use crate::show::sentence::{Quantities, Sentence};
use crate::show::{Calculated, Shown};

/// The words of a step at one pot.
#[derive(Default)]
pub(super) struct Words {
    pub(super) text: Sentence,
    pub(super) details: Vec<Sentence>,
    pub(super) readings: Vec<Reading>,
    pub(super) notes: Vec<String>,
}

impl From<String> for Words {
    fn from(text: String) -> Self {
        Self { text: text.into(), ..Self::default() }
    }
}

pub(super) fn from_shelf(part: &ShelfPart) -> Words {
    let past = past(part.heats, part.spent.as_ref());
    format!(
        "Cut small and put in: {} of \"{}\" from the shelf ({past}).",
        part.mass.text, part.name
    )
    .into()
}

/// When something goes into a pot.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Entry {
    /// Into the empty cup.
    First,
    /// Before what is in the cup is heated again.
    Later,
    /// After the heat, which is that step of the pot.
    Hot { heat: u32 },
    /// After all of that, just before the first shot.
    Last { heat: u32 },
}

impl Entry {
    /// Whether this is when `weigh` goes in.
    pub(super) fn takes(self, weigh: &Weigh) -> bool {
        match self {
            Self::First | Self::Later => !is_hot(weigh),
            Self::Hot { .. } => is_hot(weigh) && !is_last(weigh),
            Self::Last { .. } => is_last(weigh),
        }
    }

    /// Whether `weigh` goes in later than this.
    pub(super) fn is_before(self, weigh: &Weigh) -> bool {
        match self {
            Self::First | Self::Later => is_hot(weigh),
            Self::Hot { .. } => is_last(weigh),
            Self::Last { .. } => false,
        }
    }
}

/// Whether it goes in once the pot is hot.
pub(super) fn is_hot(weigh: &Weigh) -> bool {
    weigh.add.when == Adding::Hot
}

/// Whether it goes in just before the first shot: scent is lost in the heat.
fn is_last(weigh: &Weigh) -> bool {
    is_hot(weigh) && weigh.kind == Kind::Scent
}

/// Additions to a stage at one time; `last` if none come after them.
pub(super) fn weigh(
    stage: &Stage,
    list: &[&Weigh],
    entry: Entry,
    last: bool,
    system: System,
) -> Words {
    let formulas = stage.formulas.join(" + ");
    let text = match entry {
        Entry::First => format!("Measure for {formulas}, cold, stir:"),
        Entry::Later => format!("Now {formulas}, stir in:"),
        Entry::Hot { .. } => "Add hot, stir in:".to_string(),
        Entry::Last { .. } => "Add last, stir in:".to_string(),
    };
    let details = match entry {
        Entry::First | Entry::Later => Vec::new(),
        Entry::Hot { heat } | Entry::Last { heat } => Vec::from([read_again(stage, heat, system)]),
    };
    let mut notes: Vec<String> = doubts(list).into_iter().collect();
    if last {
        let unsure = stage.density_uncertainty.as_ref();
        let unsure = unsure.map(|unsure| format!(", ± {}", unsure.text)).unwrap_or_default();
        notes.push(format!(
            "The cup then holds {}, {} cold. Finished density {}{unsure}.",
            stage.holds.text,
            stage.fills.on_both_scales(),
            stage.density.text,
        ));
    }
    Words { text: text.into(), details, notes, ..Words::default() }
}

/// Action after an addition to the hot pot, which cools it.
fn read_again(stage: &Stage, heat: u32, system: System) -> Sentence {
    let Some(heating) = stage.heating.as_ref().and_then(Calculated::known) else {
        return "Read again.".to_string().into();
    };
    Sentence::of(system, |on| {
        let (from, to) = (on.text(&heating.shoot_from), on.text(&heating.shoot_to));
        format!("Read again: under {from} back to step {heat}, over {to} let it cool.")
    })
}

/// Measures that are not sure to their tolerance, why, and how sure the scale would be.
fn doubts(list: &[&Weigh]) -> Option<String> {
    let unsure = list.iter().filter_map(|weigh| {
        let doubt = weigh.doubt.as_ref()?;
        if doubt.uncertainty.quantity <= weigh.tolerance.quantity {
            return None;
        }
        let half = doubt.uncertainty.quantity * 0.5;
        let weighed = weigh.doubt_weighed.as_ref().filter(|it| it.uncertainty.quantity <= half);
        let weighed = weighed.map(|it| format!("; weighed ± {}", it.uncertainty.text));
        Some(format!(
            "{} ± {} ({}{})",
            weigh.material,
            doubt.uncertainty.text,
            doubt.main_source,
            weighed.unwrap_or_default()
        ))
    });
    let unsure: Vec<String> = unsure.collect();
    (!unsure.is_empty()).then(|| format!("Less sure than the tolerance: {}.", unsure.join(", ")))
}

/// How a pot lets its air out.
pub(super) fn degas(degas: Option<&Calculated<Degas>>, system: System) -> Words {
    let text = "Pull vacuum until the bubbles stop, before heating.".to_string();
    match degas {
        Some(Calculated::Known(degas)) => degas_at(degas, system),
        Some(Calculated::Unknown(why)) => Words {
            text: text.into(),
            details: Vec::from([format!("No fill mark: {}", why.message).into()]),
            ..Words::default()
        },
        None => text.into(),
    }
}

fn degas_at(degas: &Degas, system: System) -> Words {
    let text = Sentence::of(system, |on| {
        let (gauge, mark) = (on.text(&degas.gauge), on.text(&degas.fill_mark));
        let gauge = match degas.is_absolute {
            true => format!("down to {gauge} absolute"),
            false => gauge.to_string(),
        };
        let cup = &degas.cup_name;
        let fills = match degas.fills {
            1 => format!("fill the {cup} to {mark} at most"),
            fills => format!("in {fills} fills of the {cup}, {mark} at most each"),
        };
        format!("Pull vacuum {gauge} until the bubbles stop: {fills}.")
    });
    let left = match (&degas.at_most, &degas.swells_at) {
        (Some(most), _) => format!(
            "anything up to {} may be left in the chamber: so near its end the gauge cannot tell",
            most.on_both_scales()
        ),
        (None, Some(least)) => format!(
            "{} are left in the chamber, calculated with {}, as the gauge may be off",
            degas.absolute.on_both_scales(),
            least.on_both_scales()
        ),
        (None, None) => format!("{} are left in the chamber", degas.absolute.on_both_scales()),
    };
    let each = match degas.fills {
        1 => "It swells".to_string(),
        _ => {
            format!("Each is {} with the air in it, and swells", degas.level.on_both_scales())
        }
    };
    let mut notes = Vec::from([format!(
        "{each} {}-fold, to {}; {left}.",
        degas.rise.text,
        degas.swollen.on_both_scales()
    )]);
    if degas.fills > 1 {
        notes.push("The rest waits in another cup.".to_string());
    }
    let mut details = Vec::new();
    details.extend(degas.assumed.as_ref().map(|assumed| Sentence::from(assumed.message.clone())));
    details.extend(degas.gauge_off.as_ref().map(|off| {
        Sentence::of(system, |on| {
            format!(
                "The air here does not give what the gauge shows: it reads at least {} too much.",
                on.text(off)
            )
        })
    }));
    Words { text, details, notes, ..Words::default() }
}

/// How a pot is heated for a stage; again as it was at the step `like`.
pub(super) fn heat(stage: &Stage, like: Option<u32>, then: Then, system: System) -> Words {
    let again = if like.is_none() { "Heat" } else { "Reheat" };
    let heating = stage.heating.as_ref();
    let Some(known) = heating.and_then(Calculated::known) else {
        let text = Sentence::of(system, |on| {
            let window = match (&stage.shoot_from, &stage.shoot_to) {
                (Some(from), Some(to)) => {
                    format!("{} at least and {} at most", on.text(from), on.text(to))
                }
                _ => "what the supplier states".to_string(),
            };
            format!("{again} in short bursts, stirring and reading between, to {window}.")
        });
        return Words { text, details: no_times(heating), ..Words::default() };
    };
    let mut words = by_reading(known, then);
    if let Some(like) = like {
        words.text = format!("Reheat as in step {like}:").into();
    }
    words
}

/// A reheat among the shots of a stage.
pub(super) fn reheat(heat: &StageHeat) -> Words {
    let next = counted(heat.shots, "shot");
    let held = format!("{} in the cup.", heat.holds.text);
    let Some(known) = heat.heating.as_ref().and_then(Calculated::known) else {
        return Words {
            text: format!("Reheat for the next {next}, with what has set in the injector.").into(),
            details: no_times(heat.heating.as_ref()),
            notes: Vec::from([held]),
            ..Words::default()
        };
    };
    let mut words = by_reading(known, Then::Shoot);
    words.text = format!("Reheat for the next {next}, with what has set in the injector.").into();
    words.notes.push(held);
    words
}

/// Action once the pot is hot.
#[derive(Clone, Copy)]
pub(super) enum Then {
    Shoot,
    /// Hot additions still come, at that step: they cool the pot.
    Step(u32),
    /// Each of several pots goes on with its own steps.
    EachItsOwn,
}

impl Then {
    pub(super) fn words(self) -> String {
        match self {
            Self::Shoot => "SHOOT".to_string(),
            Self::Step(number) => format!("step {number}"),
            Self::EachItsOwn => "hot enough, go on with the steps of each".to_string(),
        }
    }
}

fn no_times(heating: Option<&Calculated<PlannedHeating>>) -> Vec<Sentence> {
    match heating {
        Some(Calculated::Unknown(why)) => {
            Vec::from([format!("No heating times: {}", why.message).into()])
        }
        _ => Vec::new(),
    }
}

/// How to heat by the table of readings.
fn by_reading(heating: &PlannedHeating, then: Then) -> Words {
    let setting = heating.setting.as_ref();
    let setting = setting.map(|setting| format!(" at {} of the oven's power", setting.text));
    let mut details = Vec::new();
    if heating.guess {
        let what = "The times follow from the rated power alone: a first guess. Time this pot.";
        details.push(what.to_string().into());
    }
    details.extend(heating.beyond.as_ref().map(|beyond| {
        Sentence::from(format!(
            "{} times beyond the amounts timed: the times are on the safe side. Time this pot.",
            beyond.text
        ))
    }));
    Words {
        text: format!(
            "Heat{} by the thermometer: stir, read, heat for the time below; repeat.",
            setting.unwrap_or_default()
        )
        .into(),
        details,
        readings: readings(heating, then),
        notes: Vec::from([format!(
            "About {} of the oven in {}.",
            heating.total.text,
            counted(heating.bursts, "burst")
        )]),
    }
}

/// The table of readings, row by row.
fn readings(heating: &PlannedHeating, then: Then) -> Vec<Reading> {
    let bands = heating.bands.iter().map(|band| Reading {
        below: Some(band.below.clone()),
        burst: Some(band.burst.clone()),
        expected: Some(band.expected.clone()),
        at_most: Some(band.at_most.clone()),
        go: band.burst.text.clone(),
    });
    let over = Reading {
        below: None,
        burst: None,
        expected: None,
        at_most: None,
        go: "let cool".to_string(),
    };
    let to = heating.shoot_to.clone();
    let hot = Reading { below: Some(to), go: then.words(), ..over.clone() };
    bands.chain([hot, over]).collect()
}

/// The table of readings in a line: `Under 240 °F: 1:00; 240 °F to 325 °F: 0:15; 325 °F to 346 °F: SHOOT; ...`.
fn table(heating: &PlannedHeating, then: Then, on: &Quantities) -> String {
    let mut from: Option<&str> = None;
    let mut rows = Vec::new();
    let readings = readings(heating, then);
    for Reading { below, go, .. } in &readings {
        let below = below.as_ref().map(|below| on.text(below));
        rows.push(match (from, below) {
            (None, Some(below)) => format!("Under {below}: {go}"),
            (Some(from), Some(below)) => format!("{from} to {below}: {go}"),
            (from, None) => format!("over {}: {go}", from.unwrap_or_default()),
        });
        from = below;
    }
    format!("{}.", rows.join("; "))
}

/// How the pots of a laminated piece become hot at once: one after the other, the largest first, or on one clock
/// where they are alike.
pub(super) fn heat_together(
    pots: &[&str],
    heating: Option<&Calculated<PlannedHeating>>,
    system: System,
) -> Vec<Sentence> {
    let order = pots.join(", then pot ");
    let mut details = Vec::from([Sentence::from(format!(
        "One after the other: heat pot {order}; the largest cools most slowly."
    ))]);
    if let Some(heating) = heating.and_then(Calculated::known) {
        let look = "Or, as they are alike, on one clock: stir and read each, the hottest counts.";
        details.push(Sentence::of(system, |on| {
            format!("{look} {}", table(heating, Then::EachItsOwn, on))
        }));
    }
    details
}

/// Shots that are made one after the other, of all of a draw.
#[derive(Clone, Copy)]
pub(super) struct ShotSeries {
    /// Shots of the draw that were made before.
    pub(super) after: u32,
    pub(super) shots: u32,
}

impl ShotSeries {
    /// The shots of each of its loads.
    pub(super) fn loads(self, per_load: u32) -> impl Iterator<Item = u32> {
        let per_load = per_load.max(1);
        (0..self.shots.div_ceil(per_load))
            .map(move |load| per_load.min(self.shots.saturating_sub(load.saturating_mul(per_load))))
    }
}

/// Loads that are listed one by one; more are counted.
const MOST_LOADS: usize = 12;

/// Shots of one layer, without a break or between two reheats.
pub(super) fn shoot(
    stage: &Stage,
    draw: &Draw,
    run: ShotSeries,
    salted: bool,
    late: Option<Late>,
    system: System,
) -> Words {
    let loads: Vec<u32> = run.loads(draw.shots_per_load).collect();
    let loads = match loads.as_slice() {
        [_] => "one load".to_string(),
        few if few.len() <= MOST_LOADS => {
            let few: Vec<String> = few.iter().map(u32::to_string).collect();
            format!("loads of {}", few.join(" "))
        }
        many => {
            let last = many.last().copied().unwrap_or_default();
            let last = match last == draw.shots_per_load {
                true => String::new(),
                false => format!(", the last of {last}"),
            };
            format!("{} loads of {}{last}", many.len(), draw.shots_per_load)
        }
    };
    let with = match draw.together_with.as_slice() {
        [] => String::new(),
        pots => format!(" with pot {}, all hot", pots.join(" and ")),
    };
    let end = run.after.saturating_add(run.shots);
    let shots = match (run.shots < draw.shots, run.shots) {
        (false, _) => counted(run.shots, "shot"),
        (true, 1) => format!("shot {end} of {}", draw.shots),
        (true, _) => format!("shots {} to {end} of {}", run.after.saturating_add(1), draw.shots),
    };
    let stir = match (salted, &stage.stir_every) {
        (false, _) => String::new(),
        (true, None) => " STIR before each.".to_string(),
        (true, Some(every)) => format!(" STIR before each and every {}.", every.text),
    };
    let text = format!("Shoot {}{with}: {shots}, {loads}.{stir} Top off.", draw.mold).into();
    let mut details = Vec::new();
    if let (Some(late), Some(from)) = (late, &stage.shoot_from) {
        let then = match (late.burst, late.too_little) {
            (Some(burst), 0) => format!("injector back in, heat {}, stir, read.", burst.text),
            (Some(burst), last) => {
                let last = if last == 1 { "shot".to_string() } else { counted(last, "shot") };
                format!("injector back in, heat {}, stir, read; last {last}: stop.", burst.text)
            }
            (None, _) => "stop, what is left is too little to reheat.".to_string(),
        };
        details.push(Sentence::of(system, |on| format!("Under {}: {then}", on.text(from))));
    }
    let mut notes = Vec::from([format!("{} a shot.", draw.per_shot.text)]);
    if draw.spare_shots > 0 {
        notes.push(format!("Enough is left for {}.", counted(draw.spare_shots, "more shot")));
    }
    if end < draw.shots {
        return Words { text, details, notes, ..Words::default() };
    }
    for of_shape in draw.pieces.iter().filter(|pieces| pieces.made > 0) {
        if of_shape.sinks_in {
            let shape = shape(of_shape);
            details.push(Sentence::from(format!(
                "{shape}The sprue cannot feed these: they sink in. Top off or hold longer."
            )));
        }
        notes.extend(pieces(of_shape));
    }
    Words { text, details, notes, ..Words::default() }
}

/// The shape and a colon, in a mold with unlike cavities.
fn shape(pieces: &Pieces) -> String {
    pieces.shape.as_ref().map(|shape| format!("{shape}: ")).unwrap_or_default()
}

fn pieces(pieces: &Pieces) -> Vec<String> {
    let shape = shape(pieces);
    let range = if pieces.from.text == pieces.to.text {
        String::new()
    } else {
        format!(" ({} shrunk, {} topped by the sprue)", pieces.from.text, pieces.to.text)
    };
    let unsure = pieces.uncertainty.as_ref();
    let unsure = unsure.map(|unsure| format!(" ± {}", unsure.text)).unwrap_or_default();
    let mut notes = Vec::from([format!(
        "{shape}{} ordered, {} made; each {}{unsure}{range}.",
        pieces.ordered, pieces.made, pieces.weighs.text
    )]);
    if !pieces.flakes.is_empty() {
        let flakes = pieces.flakes.iter();
        let flakes =
            flakes.map(|flake| format!("{} flakes of {}", about(flake.count), flake.material));
        notes.push(format!("In each about {}.", flakes.collect::<Vec<_>>().join(", ")));
    }
    notes
}

/// A count to two digits: a nominal one is no surer.
fn about(count: f64) -> f64 {
    let step = libm::pow(10.0, (libm::floor(libm::log10(count)) - 1.0).max(0.0));
    libm::round(count / step) * step
}

pub(super) fn sprues_back(stage: &Stage) -> Words {
    format!(
        "Return the sprues to the pot: {}, weighed. For them it is another heat.",
        stage.sprues_back.text
    )
    .into()
}

/// Leftover of a pot that is kept, with its label.
pub(super) fn store(pot: &Pot, day: Option<&str>) -> Words {
    let formulas = pot.stages.last().map(|stage| stage.formulas.join(" + ")).unwrap_or_default();
    let day = day.map(|day| format!("{day}, ")).unwrap_or_default();
    let is_some = |mass: &Shown<Mass>| mass.quantity > Mass::default();
    let (cup, sprues) = (&pot.left_over, &pot.sprues);
    let kept = match (is_some(cup), is_some(sprues)) {
        (true, true) => format!("Keep {} from the cup and {} of sprues.", cup.text, sprues.text),
        (true, false) => format!("Keep {} from the cup.", cup.text),
        (false, true) => format!("Keep {} of sprues.", sprues.text),
        (false, false) => "Clean the cup: nothing is left.".to_string(),
    };
    let past = past(pot.heats.in_all, pot.heats.spent());
    let label = format!(" Label: {formulas}, {day}{past}.");
    let text = match is_some(cup) || is_some(sprues) {
        true => format!("{kept}{label}"),
        false => kept,
    };
    let mut notes = heats(pot);
    notes.push(format!("Lost to cup and injector: {}.", pot.lost.text));
    Words { text: text.into(), notes, ..Words::default() }
}

/// How often the pot is heated, and what that leaves.
fn heats(pot: &Pot) -> Vec<String> {
    let heats = &pot.heats;
    let count = counted(heats.count, "heat");
    let count = match (&pot.from_shelf, heats.in_all) {
        (None, _) => count,
        (Some(_), Some(all)) => format!("{count}, {all} with those of the leftover"),
        (Some(_), None) => format!("{count}, those of the leftover not known"),
    };
    let spent = match &heats.budget {
        None => return Vec::from([format!("No heat budget was given: {count}.")]),
        Some(Calculated::Unknown(why)) => {
            return Vec::from([format!("{count}. What they used is not known. {}", why.message)]);
        }
        Some(Calculated::Known(spent)) => spent,
    };
    let before = spent.before.as_ref();
    let before = before.map(|before| format!(", {} of it by the leftover", before.text));
    let (budget, at) = (&spent.budget.text, &spent.at.text);
    let left = match &spent.over {
        None => format!("{} left", spent.left.text),
        Some(over) => format!("TOO MUCH by {}", over.text),
    };
    let mut notes = Vec::from([format!(
        "{count}. Heat used: {} of the {budget} (at {at}) that {} withstands{}. {left}.",
        spent.spent.text,
        spent.material,
        before.unwrap_or_default()
    )]);
    if spent.more_stabilizer_not_counted {
        notes.push("What more stabilizer would add to that is not known, nor counted.".to_string());
    }
    notes
}

#[cfg(all(test, feature = "document"))]
mod tests {
    use alloc::vec;

    use super::*;
    use crate::document::small::{BOOK, orders};
    use crate::document::{book_from_text, orders_from_text};
    use crate::plan::Plan;
    use crate::plan::doubt::Doubt;
    use crate::quantity::Ratio;
    use crate::show::text;

    /// The first stage of a plan for three shots of a mold with two shapes.
    fn stage() -> Stage {
        let book = book_from_text(BOOK).unwrap();
        let line = r#"{ "order": "1", "product": "sky pair", "shape": "long", "pieces": 3 }"#;
        let day = orders_from_text(&orders(line), &book).unwrap();
        let plan = Plan::make(&book, &day).unwrap_or_else(|faults| panic!("{faults}"));
        plan.pots[0].stages[0].clone()
    }

    #[test]
    fn a_load_has_at_least_one_shot() {
        let loads =
            |per_load| -> Vec<u32> { ShotSeries { after: 2, shots: 3 }.loads(per_load).collect() };
        assert_eq!((loads(2), loads(3), loads(0)), (vec![2, 1], vec![3], vec![1, 1, 1]));
    }

    // A measure is less sure only beyond its tolerance, and the scale is named from twice as sure on.
    #[test]
    fn the_scale_is_offered_where_it_is_twice_as_sure() {
        let said = |uncertainty: f64, weighed: f64| {
            let doubt = |of: f64| {
                let uncertainty = text::percent(Ratio::from(of));
                Some(Doubt { uncertainty, main_source: "drop".to_string() })
            };
            let mut weigh = stage().weigh[0].clone();
            weigh.tolerance = text::percent(Ratio::from(0.08));
            (weigh.doubt, weigh.doubt_weighed) = (doubt(uncertainty), doubt(weighed));
            doubts(&[&weigh]).map(|text| text.contains("; weighed ±"))
        };
        assert_eq!(said(0.08, 0.01), None);
        assert_eq!(said(0.1, 0.05), Some(true));
        assert_eq!(said(0.1, 0.06), Some(false));
    }

    #[test]
    fn a_shape_of_which_none_is_made_is_not_described() {
        let stage = stage();
        let mut draw = stage.draws[0].clone();
        let run = ShotSeries { after: 0, shots: draw.shots };
        let describes = |draw: &Draw| {
            let notes = shoot(&stage, draw, run, false, None, System::UsCustomary).notes;
            ["long: ", "short: "].map(|shape| notes.iter().any(|note| note.starts_with(shape)))
        };
        assert_eq!(describes(&draw), [true, true]);
        draw.pieces
            .iter_mut()
            .find(|pieces| pieces.shape.as_deref() == Some("short"))
            .unwrap()
            .made = 0;
        assert_eq!(describes(&draw), [true, false]);
    }
}
