//! The words of a step: what to do, and what to know with it.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use crate::plan::process::{Degas, HeatBand, PlannedHeating, StageHeat};
use crate::plan::{Draw, Pieces, Pot, ShelfPart, Stage, Weigh};
use crate::show::Calculated;
use crate::show::page::{counted, past};

/// What to do, and what to know with it.
pub(super) struct Words {
    pub(super) text: String,
    pub(super) details: Vec<String>,
}

impl From<String> for Words {
    fn from(text: String) -> Self {
        Self { text, details: Vec::new() }
    }
}

pub(super) fn from_shelf(part: &ShelfPart) -> Words {
    let past = past(part.heats, part.spent.as_ref());
    format!("From the shelf: {} of \"{}\" ({past}), cut small.", part.mass.text, part.name).into()
}

/// When something goes into a pot.
#[derive(Clone, Copy)]
pub(super) enum Entry {
    /// Into the empty cup.
    First,
    /// Before what is in the cup is heated again.
    Later,
    /// After the heat.
    Hot,
}

/// What goes in at a stage at one time; `last` where nothing goes in after it.
pub(super) fn weigh(stage: &Stage, list: &[&Weigh], entry: Entry, last: bool) -> Words {
    let formulas = stage.formulas.join(" + ");
    let text = match entry {
        Entry::First => format!("{formulas}: measure the base, then stir in the rest cold."),
        Entry::Later => format!("Now {formulas}: add to what is in the cup, and stir in."),
        Entry::Hot => "Add hot, stirring each in; then take the temperature again.".to_string(),
    };
    let mut details = Vec::new();
    for weigh in list {
        details.extend(weigh.add.how.as_ref().map(|how| format!("{}: {how}", weigh.material)));
        details.extend(weigh.beyond.as_ref().map(|beyond| beyond.message.clone()));
    }
    details.extend(doubts(list));
    if let (Entry::Hot, Some(heating)) = (entry, stage.heating.as_ref().and_then(Calculated::known))
    {
        details.push(format!(
            "Then under {}: heat again by the table before; {}.",
            degrees(&heating.shoot_from.text),
            in_the_window(heating, Then::Shoot)
        ));
    }
    if last {
        let unsure = stage.density_uncertainty.as_ref();
        let unsure = unsure.map(|unsure| format!(", ± {}", unsure.text)).unwrap_or_default();
        details.push(format!(
            "The cup then holds {}, {} cold. Finished density {}{unsure}.",
            stage.holds.text, stage.fills.text, stage.density.text,
        ));
    }
    Words { text, details }
}

/// What is not sure to its tolerance, for what, and what the balance would do for it.
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
pub(super) fn degas(degas: Option<&Calculated<Degas>>) -> Words {
    let without_mark = "Let the air out (degas) before heating.".to_string();
    match degas {
        Some(Calculated::Known(degas)) => degas_at(degas),
        Some(Calculated::Unknown(why)) => Words {
            text: without_mark,
            details: Vec::from([format!("No fill mark: {}", why.message)]),
        },
        None => without_mark.into(),
    }
}

fn degas_at(degas: &Degas) -> Words {
    let gauge = if degas.is_absolute {
        format!("down to {} absolute", degas.gauge.text)
    } else {
        format!("at {} of vacuum", degas.gauge.text)
    };
    let fill = format!("fill the {} to {} at most", degas.cup_name, degas.fill_mark.text);
    let fills = match degas.fills {
        1 => "all at once".to_string(),
        fills => format!("in {fills} fills, while the rest waits in another cup"),
    };
    let each = match degas.fills {
        1 => "It swells".to_string(),
        _ => format!("Each is {} with the air in it, and swells", degas.level.text),
    };
    let left = match (&degas.at_most, &degas.swells_at) {
        (Some(most), _) => format!(
            "anything up to {} may be left in the chamber: so near its end the gauge cannot tell",
            most.text
        ),
        (None, Some(least)) => format!(
            "{} are left in the chamber, reckoned with {}, as the gauge may be off",
            degas.absolute.text, least.text
        ),
        (None, None) => format!("{} are left in the chamber", degas.absolute.text),
    };
    let mut details =
        Vec::from([format!("{each} {}-fold, to {}; {left}.", degas.rise.text, degas.swollen.text)]);
    details.extend(degas.assumed.as_ref().map(|assumed| assumed.message.clone()));
    details.extend(degas.gauge_off.as_ref().map(|off| {
        format!(
            "The air here does not give what the gauge shows: it reads at least {} too much.",
            off.text
        )
    }));
    Words { text: format!("Degas {gauge}, before heating: {fill}; {fills}."), details }
}

/// How a pot is heated, at first or again.
pub(super) fn heat(stage: &Stage, first: bool, then: Then) -> Words {
    let again = if first { "Heat" } else { "Heat again" };
    let window = match (&stage.shoot_from, &stage.shoot_to) {
        (Some(from), Some(to)) => format!("{} at least and {} at most", from.text, to.text),
        _ => "what the supplier states".to_string(),
    };
    let heating = stage.heating.as_ref().and_then(Calculated::known);
    let setting = heating.and_then(|heating| heating.setting.as_ref());
    let at = setting.map(|setting| format!(" at {} of the oven's power", setting.text));
    let text = format!(
        "{again}{} in short bursts, stirring and taking the temperature between, to {window}.",
        at.unwrap_or_default()
    );
    Words { text, details: by_reading(stage.heating.as_ref(), then) }
}

/// A reheat among the shots of a stage.
pub(super) fn reheat(heat: &StageHeat) -> Words {
    let text = format!(
        "Put back what has set in the injector and reheat the pot, {} in it, for the next {}.",
        heat.holds.text,
        counted(heat.shots, "shot"),
    );
    Words { text, details: by_reading(heat.heating.as_ref(), Then::Shoot) }
}

/// What is done once the pot is hot.
#[derive(Clone, Copy)]
pub(super) enum Then {
    Shoot,
    /// What goes in hot is still to come: it cools the pot.
    AddHot,
    /// Each of several pots goes on with its own steps.
    EachItsOwn,
}

impl Then {
    pub(super) fn words(self) -> &'static str {
        match self {
            Self::Shoot => "SHOOT",
            Self::AddHot => "ADD HOT, the next step",
            Self::EachItsOwn => "hot enough, go on with the steps of each",
        }
    }
}

/// The table of readings, and what to know with it.
fn by_reading(heating: Option<&Calculated<PlannedHeating>>, then: Then) -> Vec<String> {
    let heating = match heating {
        Some(Calculated::Known(heating)) => heating,
        Some(Calculated::Unknown(why)) => {
            return Vec::from([format!("No heating times: {}", why.message)]);
        }
        None => return Vec::new(),
    };
    let mut details = Vec::from([format!(
        "Stir and read the thermometer before each burst. {}",
        table(heating, then)
    )]);
    if heating.guess {
        let what = "The bursts follow from the rated power alone: a first guess. Time this pot.";
        details.push(what.to_string());
    }
    details.extend(heating.beyond.as_ref().map(|beyond| {
        format!(
            "{} times beyond the amounts timed: the bursts are on the safe side. Time this pot.",
            beyond.text
        )
    }));
    details
}

/// The table of readings in a line: `Under 240 °F: 60 s; 240 °F to 325 °F: 15 s; 325 °F to 346 °F: SHOOT; ...`.
fn table(heating: &PlannedHeating, then: Then) -> String {
    let mut line: Vec<String> = Vec::new();
    for (from, band) in bands(heating) {
        let below = degrees(&band.below.text);
        line.push(match from {
            None => format!("Under {below}: {}", band.burst.text),
            Some(from) => format!("{from} to {below}: {}", band.burst.text),
        });
    }
    format!("{}; {}.", line.join("; "), in_the_window(heating, then))
}

/// What to do from where the bursts end.
fn in_the_window(heating: &PlannedHeating, then: Then) -> String {
    let (from, to) = (degrees(&heating.shoot_from.text), degrees(&heating.shoot_to.text));
    format!("{from} to {to}: {}; over {to}: stop, let it cool", then.words())
}

/// The bands, each with the reading that it begins at; the first has none.
pub(super) fn bands(heating: &PlannedHeating) -> impl Iterator<Item = (Option<&str>, &HeatBand)> {
    let from = heating.bands.iter().map(|band| Some(degrees(&band.below.text)));
    core::iter::once(None).chain(from).zip(&heating.bands)
}

/// A temperature on the scale of the bench alone.
pub(super) fn degrees(both: &str) -> &str {
    both.split(" (").next().unwrap_or(both)
}

/// How the pots of a laminated piece become hot at once: one after the other, the largest first, or on one clock
/// where they are alike.
pub(super) fn heat_together(
    pots: &[&str],
    heating: Option<&Calculated<PlannedHeating>>,
) -> Vec<String> {
    let mut details = Vec::from([format!(
        "One after the other: heat pot {}; the largest cools most slowly.",
        pots.join(", then pot ")
    )]);
    if let Some(heating) = heating.and_then(Calculated::known) {
        let look = "Or, as they are alike, on one clock: stir and read each, the hottest counts.";
        details.push(format!("{look} {}", table(heating, Then::EachItsOwn)));
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

/// What is shot of one layer, at one go or between two reheats.
pub(super) fn shoot(stage: &Stage, draw: &Draw, run: ShotSeries, salted: bool) -> Words {
    let last = run.loads(draw.shots_per_load).last().unwrap_or(0);
    let loads = match (run.loads(draw.shots_per_load).count(), draw.shots_per_load) {
        (0 | 1, _) => "one load".to_string(),
        (loads, 1) => format!("{loads} loads, one shot each"),
        (loads, shots) if last == shots => format!("{loads} loads of {shots} shots"),
        (loads, shots) => format!("{loads} loads of {shots} shots, the last of {last}"),
    };
    let with = match draw.together_with.as_slice() {
        [] => String::new(),
        pots => format!(
            ", together with pot {} (both hot at once; this layer is {} of the piece)",
            pots.join(" and "),
            draw.share.text
        ),
    };
    let text = format!(
        "Shoot {}: {} of {} in {loads}{with}.",
        draw.mold,
        counted(run.shots, "shot"),
        draw.per_shot.text
    );
    let mut details = Vec::new();
    if salted {
        details.push(match &stage.stir_every {
            Some(every) => {
                format!("Stir before every load, and every {}: the salt settles.", every.text)
            }
            None => "Stir before every load: the salt settles.".to_string(),
        });
    }
    let end = run.after.saturating_add(run.shots);
    if run.shots < draw.shots {
        let first = run.after.saturating_add(1);
        details.push(format!("These are shots {first} to {end} of {}.", draw.shots));
    }
    if end < draw.shots {
        return Words { text, details };
    }
    for of_shape in draw.pieces.iter().filter(|pieces| pieces.made > 0) {
        details.extend(pieces(of_shape));
    }
    if draw.spare_shots > 0 {
        let more = counted(draw.spare_shots, "more shot");
        details.push(format!("The rest is enough for {more}."));
    }
    Words { text, details }
}

fn pieces(pieces: &Pieces) -> Vec<String> {
    let shape = pieces.shape.as_ref().map(|shape| format!("{shape}: ")).unwrap_or_default();
    let range = if pieces.from.text == pieces.to.text {
        String::new()
    } else {
        format!(" ({} unfed, {} fed)", pieces.from.text, pieces.to.text)
    };
    let unsure = pieces.uncertainty.as_ref();
    let unsure = unsure.map(|unsure| format!(" ± {}", unsure.text)).unwrap_or_default();
    let mut details = Vec::from([format!(
        "{shape}{} ordered, {} made; each {}{unsure}{range}.",
        pieces.ordered, pieces.made, pieces.weighs.text
    )]);
    if !pieces.flakes.is_empty() {
        let flakes = pieces.flakes.iter();
        let flakes =
            flakes.map(|flake| format!("{} flakes of {}", about(flake.count), flake.material));
        details.push(format!("In each about {}.", flakes.collect::<Vec<_>>().join(", ")));
    }
    if pieces.sinks_in {
        let what = "The sprue cannot feed these: they sink in. Top off or hold longer.";
        details.push(what.to_string());
    }
    details
}

/// A count to two digits: a nominal one is no surer.
fn about(count: f64) -> f64 {
    let step = libm::pow(10.0, (libm::floor(libm::log10(count)) - 1.0).max(0.0));
    libm::round(count / step) * step
}

pub(super) fn sprues_back(stage: &Stage) -> Words {
    format!(
        "Put the sprues back in: {}, weighed. It is one more heat for them.",
        stage.sprues_back.text
    )
    .into()
}

/// What is kept of a pot, and what it has been through.
pub(super) fn store(pot: &Pot) -> Words {
    let text = format!(
        "Label and store what is left over: {} in the cup and {} of sprues ({}). Lost to cup and injector: {}.",
        pot.left_over.text,
        pot.sprues.text,
        past(pot.heats.in_all, pot.heats.spent()),
        pot.lost.text
    );
    Words { text, details: heats(pot) }
}

/// How often the pot is heated, and what that leaves.
fn heats(pot: &Pot) -> Vec<String> {
    let heats = &pot.heats;
    let count = counted(heats.count, "heat");
    let count = match (&pot.from_shelf, heats.in_all) {
        (None, _) => count,
        (Some(_), Some(all)) => format!("{count}, {all} with those of the left-over"),
        (Some(_), None) => format!("{count}, those of the left-over not known"),
    };
    let spent = match &heats.budget {
        None => return Vec::from([format!("No heat budget was given: {count}.")]),
        Some(Calculated::Unknown(why)) => {
            return Vec::from([format!("{count}. What is spent is not known. {}", why.message)]);
        }
        Some(Calculated::Known(spent)) => spent,
    };
    let (stands, at) = (&spent.budget.text, &spent.at.text);
    let spends = match &spent.before {
        Some(before) => {
            format!("{}, {} of it by the left-over,", spent.spent.text, before.text)
        }
        None => spent.spent.text.clone(),
    };
    let material = &spent.material;
    let mut details = Vec::from([match &spent.over {
        None => format!(
            "{count}: {spends} of the {stands} at {at} that {material} stands, {} left.",
            spent.left.text
        ),
        Some(over) => format!(
            "{count}: TOO MUCH HEAT, {spends} where {material} stands {stands} at {at}, {} over.",
            over.text
        ),
    }]);
    if spent.more_stabilizer_not_counted {
        details.push("What its stabilizer buys beyond that is not known, nor counted.".to_string());
    }
    details
}
