//! The words of a step: what to do, and what to know with it.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use crate::mix::reference_temperature;
use crate::plan::process::{Burst, Degas, Heating};
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

/// What goes in at a stage, the first or a later one.
pub(super) fn weigh(stage: &Stage, first: bool) -> Words {
    let formulas = stage.formulas.join(" + ");
    let text = if first {
        format!("{formulas}: measure the base, then stir in the rest.")
    } else {
        format!("Now {formulas}: add to what is in the cup, and stir in.")
    };
    let unsure = stage.density_uncertainty.as_ref().map(|unsure| format!(", ± {}", unsure.text));
    let holds = format!(
        "The cup then holds {}, {} cold. Finished density {}{}.",
        stage.holds.text,
        stage.fills.text,
        stage.density.text,
        unsure.unwrap_or_default()
    );
    Words { text, details: doubts(&stage.weigh).into_iter().chain([holds]).collect() }
}

/// What is not sure to its tolerance, for what, and what the balance would do for it.
fn doubts(list: &[Weigh]) -> Option<String> {
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
    details.extend(degas.gauge_off.as_ref().map(|off| {
        format!(
            "The air here does not give what the gauge shows: it reads at least {} too much.",
            off.text
        )
    }));
    Words { text: format!("Degas {gauge}, before heating: {fill}; {fills}."), details }
}

/// How a pot is heated, at first or again.
pub(super) fn heat(stage: &Stage, first: bool) -> Words {
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
    let details = match &stage.heating {
        Some(Calculated::Known(heating)) => {
            let mut details = Vec::from([bursts(heating, first)]);
            details.extend(warnings(heating));
            details
        }
        Some(Calculated::Unknown(why)) => {
            let alone = stage.draws.iter().any(|draw| !draw.together_with.is_empty());
            let alone = if alone { " for it alone (see ORDER OF WORK)" } else { "" };
            Vec::from([format!("No times{alone}: {}", why.message)])
        }
        None => Vec::new(),
    };
    Words { text, details }
}

/// How the pots of a laminated piece become hot at once: one after the other, the largest first, or as one load.
pub(super) fn heat_together(
    pots: &[&str],
    heating: Option<&Calculated<Heating>>,
    first: bool,
) -> Vec<String> {
    let mut details = Vec::from([format!(
        "One after the other: heat pot {}; the largest cools most slowly.",
        pots.join(", then pot ")
    )]);
    match heating {
        Some(Calculated::Known(heating)) => {
            let look = "stir and take the temperature of each between, the hottest counts";
            details.push(format!("Or together as one load; {look}. {}", bursts(heating, first)));
            details.extend(warnings(heating));
        }
        Some(Calculated::Unknown(why)) => {
            details.push(format!("As one load, no times: {}", why.message));
        }
        None => {}
    }
    details
}

/// What is shot of one layer.
pub(super) fn shoot(draw: &Draw, salted: bool) -> Words {
    let loads = match (draw.loads, draw.shots_per_load) {
        (1, _) => "one load".to_string(),
        (loads, 1) => format!("{loads} loads, one shot each"),
        (loads, shots) if draw.shots.is_multiple_of(shots) => {
            format!("{loads} loads of {shots} shots")
        }
        (loads, shots) => {
            let last = draw.shots.checked_rem(shots).unwrap_or(0);
            format!("{loads} loads of {shots} shots, the last of {last}")
        }
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
        counted(draw.shots, "shot"),
        draw.per_shot.text
    );
    let mut details = Vec::new();
    if salted {
        details.push("Stir before every load: the salt settles.".to_string());
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

/// The bursts of a heating, at first or again.
fn bursts(heating: &Heating, first: bool) -> String {
    let Some(last) = heating.bursts.last() else {
        return format!("At {} it is hot enough: no burst.", heating.from.text);
    };
    let uncertainty = heating.uncertainty.as_ref();
    let uncertainty = uncertainty.map(|it| format!(" ± {}", it.text)).unwrap_or_default();
    format!(
        "From {} to {}: {}; {}{uncertainty} in all.",
        heating.from.text,
        last.expected.text,
        in_a_row(&heating.bursts, first),
        heating.total.text
    )
}

/// What to look out for in a heating.
fn warnings(heating: &Heating) -> Vec<String> {
    let mut warnings = Vec::new();
    if heating.one_overshoots {
        warnings.push("Never in one go: that may scorch it.".to_string());
    }
    if let Some(beyond) = &heating.beyond {
        warnings.push(format!(
            "That is beyond what was timed, by a factor of {}: look sooner, and time it.",
            beyond.text
        ));
    }
    warnings
}

/// `3 × 120 s, 45 s only if it shows 310 °F (154 °C) or less`.
///
/// A burst is given its limit where the one before it may end above that; the first of a reheat always, and
/// the last.
fn in_a_row(bursts: &[Burst], first: bool) -> String {
    let mut runs: Vec<String> = Vec::new();
    let mut free = ("", 0_u32);
    // The first burst of a cold pot was made for a warm room.
    let mut may_have = first.then(reference_temperature);
    for (index, burst) in bursts.iter().enumerate() {
        let duration = burst.duration.text.as_str();
        let limit = &burst.only_below;
        let may_be_above = may_have.map_or(!first, |may_have| may_have > limit.quantity);
        may_have = Some(burst.at_most.quantity);
        if may_be_above || index.saturating_add(1) == bursts.len() {
            runs.push(format!("{duration} only if it shows {} or less", limit.text));
            free = ("", 0);
        } else if free.0 == duration {
            free.1 = free.1.saturating_add(1);
            runs.pop();
            runs.push(format!("{} × {duration}", free.1));
        } else {
            runs.push(duration.to_string());
            free = (duration, 1);
        }
    }
    runs.join(", ")
}
