//! Vacuum, heat and sink rates on the sheet.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::{Page, called, counted, cut};
use crate::caution::Caution;
use crate::mix::reference_temperature;
use crate::plan::process::{Burst, Degas, Heating, SinkWater, Sinking};
use crate::plan::{Plan, PlannedLine, Pot, Stage, Work};
use crate::process::sink::Motion;
use crate::quantity::Ratio;
use crate::show::Calculated;

/// Columns for what sinks, so that a row stays on one line.
const SUNK: usize = 26;

impl Page {
    /// The step that lets the air out.
    pub(super) fn degas(&mut self, degas: Option<&Calculated<Degas>>) {
        match degas {
            Some(Calculated::Known(degas)) => self.degas_at(degas),
            Some(Calculated::Unknown(why)) => {
                self.step("Let the air out (degas) before heating.");
                self.detail(&format!("No fill mark: {}", why.message));
            }
            None => self.step("Let the air out (degas) before heating."),
        }
        self.caution(Caution::Vacuum);
    }

    fn degas_at(&mut self, degas: &Degas) {
        let gauge = if degas.is_absolute {
            format!("down to {} absolute", degas.gauge.text)
        } else {
            format!("at {} of vacuum", degas.gauge.text)
        };
        let cup = degas.cup.text.replace(" cup", "-cup");
        let fill = format!("fill the {cup} cup to {} at most", degas.fill_mark.text);
        let fills = match degas.fills {
            1 => "all at once".to_string(),
            fills => format!("in {fills} fills, while the rest waits in another cup"),
        };
        self.step(&format!("Degas {gauge}, before heating: {fill}; {fills}."));
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
        self.detail(&format!(
            "{each} {}-fold, to {}; {left}.",
            degas.rise.text, degas.swollen.text
        ));
        if let Some(assumed) = &degas.assumed {
            self.detail(&assumed.message);
        }
        if let Some(off) = &degas.gauge_off {
            self.detail(&format!(
                "The air here does not give what the gauge shows: it reads at least {} too much.",
                off.text
            ));
        }
    }

    /// The step that heats a pot, at first or again.
    pub(super) fn heat(&mut self, stage: &Stage, first: bool) {
        let again = if first { "Heat" } else { "Heat again" };
        let window = match (&stage.shoot_from, &stage.shoot_to) {
            (Some(from), Some(to)) => format!("{} at least and {} at most", from.text, to.text),
            _ => "what the supplier states".to_string(),
        };
        let heating = stage.heating.as_ref().and_then(Calculated::known);
        let setting = heating.and_then(|heating| heating.setting.as_ref());
        let at = setting.map(|setting| format!(" at {} of the oven's power", setting.text));
        self.step(&format!(
            "{again}{} in short bursts, stirring and taking the temperature between, to {window}.",
            at.unwrap_or_default()
        ));
        match &stage.heating {
            Some(Calculated::Known(heating)) => self.bursts(heating, first),
            Some(Calculated::Unknown(why)) => {
                let alone = stage.draws.iter().any(|draw| !draw.together_with.is_empty());
                let alone = if alone { " for it alone (see ORDER OF WORK)" } else { "" };
                self.detail(&format!("No times{alone}: {}", why.message));
            }
            None => {}
        }
        self.caution(Caution::HotPlastisol);
        self.caution(Caution::Fumes);
    }

    /// How the pots of a piece of work become hot at once: in which order, or as one load.
    pub(super) fn heated_together(&mut self, plan: &Plan, work: &Work) {
        let mut heated: Vec<(&Pot, &Stage, bool)> = Vec::new();
        for from in work.from.iter().filter(|from| from.heat) {
            let pot = plan.pots.iter().find(|pot| pot.pot == from.pot);
            let stage = usize::try_from(from.stage).unwrap_or(usize::MAX).wrapping_sub(1);
            if let Some((pot, stage)) = pot.and_then(|pot| Some((pot, pot.stages.get(stage)?))) {
                heated.push((pot, stage, from.stage == 1));
            }
        }
        let [(_, _, first), _, ..] = heated.as_slice() else { return };
        let first = *first;
        heated.sort_by(|(_, a, _), (_, b, _)| {
            b.holds.quantity.value.total_cmp(&a.holds.quantity.value)
        });
        let names: Vec<&str> = heated.iter().map(|(pot, ..)| pot.pot.as_str()).collect();
        self.wrapped(
            "     ",
            &format!(
                "One after the other: heat pot {}; the largest cools most slowly.",
                names.join(", then pot ")
            ),
        );
        match &work.heating {
            Some(Calculated::Known(heating)) => {
                let bursts = told_bursts(heating, first);
                let look = "stir and take the temperature of each between, the hottest counts";
                self.wrapped("     ", &format!("Or together as one load; {look}. {bursts}"));
                for warning in warnings(heating) {
                    self.wrapped("     ", &warning);
                }
            }
            Some(Calculated::Unknown(why)) => {
                self.wrapped("     ", &format!("As one load, no times: {}", why.message));
            }
            None => {}
        }
    }

    fn bursts(&mut self, heating: &Heating, first: bool) {
        self.detail(&told_bursts(heating, first));
        for warning in warnings(heating) {
            self.detail(&warning);
        }
    }

    /// How often the pot is heated, and what that leaves.
    pub(super) fn heats(&mut self, pot: &Pot) {
        let heats = &pot.heats;
        let count = counted(heats.count, "heat");
        let count = match (&pot.from_shelf, heats.in_all) {
            (None, _) => count,
            (Some(_), Some(all)) => format!("{count}, {all} with those of the left-over"),
            (Some(_), None) => format!("{count}, those of the left-over not known"),
        };
        match &heats.budget {
            None => self.detail(&format!("No heat budget was given: {count}.")),
            Some(Calculated::Unknown(why)) => {
                self.detail(&format!("{count}. What is spent is not known. {}", why.message));
            }
            Some(Calculated::Known(spent)) => {
                let (stands, at) = (&spent.budget.text, &spent.at.text);
                let spends = match &spent.before {
                    Some(before) => {
                        format!("{}, {} of it by the left-over,", spent.spent.text, before.text)
                    }
                    None => spent.spent.text.clone(),
                };
                let material = &spent.material;
                self.detail(&match &spent.over {
                    None => format!(
                        "{count}: {spends} of the {stands} at {at} that {material} stands, {} left.",
                        spent.left.text
                    ),
                    Some(over) => format!(
                        "{count}: TOO MUCH HEAT, {spends} where {material} stands {stands} at {at}, {} over.",
                        over.text
                    ),
                });
                if spent.more_stabilizer_not_counted {
                    self.detail("What its stabilizer buys beyond that is not known, nor counted.");
                }
            }
        }
    }

    /// How the pieces of the day sink, each kind once.
    pub(super) fn sink_rates(&mut self, lines: &[PlannedLine], water: Option<&SinkWater>) {
        let Some(water) = water else { return };
        self.line("");
        let salt = match water.salinity.quantity > Ratio::default() {
            true => {
                format!("water of {} with {} of salt", water.temperature.text, water.salinity.text)
            }
            false => format!("fresh water of {}", water.temperature.text),
        };
        self.wrapped("", &format!("SINK RATE with hook, {salt}: a model and its bounds, twice the ± of the density in them"));
        let mut shown: Vec<String> = Vec::new();
        for line in lines {
            let Some(sinks) = &line.sinks else { continue };
            let what = cut(&called(line), SUNK);
            let row = match sinks {
                Calculated::Known(sinks) => sinking(&what, sinks),
                Calculated::Unknown(why) => format!("{what:<SUNK$} not told: {}", why.message),
            };
            if !shown.contains(&row) {
                let (lead, rest) = row.split_at(what.len());
                self.wrapped(&format!("    {lead:<SUNK$}"), rest.trim_start());
                shown.push(row);
            }
        }
    }
}

fn sinking(what: &str, sinks: &Sinking) -> String {
    let motion = match sinks.motion {
        Motion::Straight => "straight",
        Motion::MaySwing => "may swing",
        Motion::Swings => "swings",
    };
    let unsure = sinks.density_uncertainty.as_ref();
    let unsure = unsure.map(|unsure| format!(" ± {}", bare(&unsure.text))).unwrap_or_default();
    format!(
        "{what:<SUNK$} {}{unsure}, {} ({} to {}), {motion}",
        sinks.density.text,
        sinks.speed.text,
        bare(&sinks.slowest.text),
        bare(&sinks.fastest.text)
    )
}

/// A number without its unit.
fn bare(amount: &str) -> &str {
    amount.split(' ').next().unwrap_or(amount)
}

/// The bursts of a heating, at first or again.
fn told_bursts(heating: &Heating, first: bool) -> String {
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
