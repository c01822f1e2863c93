//! Vacuum, heat and sink rates on the sheet.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::{Page, called, counted, cut};
use crate::caution::Caution;
use crate::plan::process::{Degas, Heating, SinkWater, Sinking};
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
            Some(Calculated::Known(heating)) => self.by_reading(heating),
            Some(Calculated::Unknown(why)) => {
                self.detail(&format!("No heating times: {}", why.message));
            }
            None => {}
        }
        self.caution(Caution::HotPlastisol);
        self.caution(Caution::Fumes);
    }

    /// How the pots of a piece of work become hot at once: one after the other, or on one clock where they are alike.
    pub(super) fn heated_together(&mut self, plan: &Plan, work: &Work) {
        let mut heated: Vec<(&Pot, &Stage)> = Vec::new();
        for from in work.from.iter().filter(|from| from.heat) {
            let pot = plan.pots.iter().find(|pot| pot.pot == from.pot);
            let stage = usize::try_from(from.stage).unwrap_or(usize::MAX).wrapping_sub(1);
            if let Some((pot, stage)) = pot.and_then(|pot| Some((pot, pot.stages.get(stage)?))) {
                heated.push((pot, stage));
            }
        }
        let [_, _, ..] = heated.as_slice() else { return };
        heated.sort_by(|(_, a), (_, b)| b.holds.quantity.value.total_cmp(&a.holds.quantity.value));
        let names: Vec<&str> = heated.iter().map(|(pot, ..)| pot.pot.as_str()).collect();
        self.wrapped(
            "     ",
            &format!(
                "One after the other: heat pot {}; the largest cools most slowly.",
                names.join(", then pot ")
            ),
        );
        if let Some(Calculated::Known(heating)) = &work.heating {
            let look =
                "Or, as they are alike, on one clock: stir and read each, the hottest counts.";
            self.wrapped("     ", &format!("{look} {}", bands(heating)));
        }
    }

    /// Where the reheats of a stage are among its shots, and how often it is stirred.
    pub(super) fn reheats(&mut self, stage: &Stage) {
        if let Some(Calculated::Known(heats)) = &stage.clock {
            for heat in heats.iter().filter(|heat| heat.heating.is_some()) {
                let what = format!(
                    "After {} put back what has set in the injector and heat it again, {} in it, for the next {}.",
                    counted(heat.after, "shot"),
                    heat.holds.text,
                    counted(heat.shots, "shot"),
                );
                self.step(&what);
                match &heat.heating {
                    Some(Calculated::Known(heating)) => self.by_reading(heating),
                    Some(Calculated::Unknown(why)) => {
                        self.detail(&format!("No heating times: {}", why.message));
                    }
                    None => {}
                }
            }
        }
        if let Some(every) = &stage.stir_every {
            self.detail(&format!(
                "Its salt settles: stir every {}, and before each load.",
                every.text
            ));
        }
    }

    /// How long the day takes.
    pub(super) fn time_line(&mut self, plan: &Plan) {
        match &plan.clock {
            Some(Calculated::Known(line)) => {
                let without = if line.without_preparing {
                    ", measuring and cleaning up not counted"
                } else {
                    ""
                };
                self.wrapped(
                    "     ",
                    &format!(
                        "The day takes about {}: {} of heating, {} of shooting{without}.",
                        line.total.text, line.heating.text, line.shooting.text
                    ),
                );
            }
            Some(Calculated::Unknown(why)) => {
                self.wrapped(
                    "     ",
                    &format!("How long the day takes is not known. {}", why.message),
                );
            }
            None => {}
        }
    }

    fn by_reading(&mut self, heating: &Heating) {
        self.detail(&format!(
            "Stir and read the thermometer before each burst. {}",
            bands(heating)
        ));
        if heating.guess {
            self.detail(
                "The bursts follow from the rated power alone: a first guess. Time this pot.",
            );
        }
        if let Some(beyond) = &heating.beyond {
            self.detail(&format!(
                "{} times beyond the amounts timed: the bursts are on the safe side. Time this pot.",
                beyond.text
            ));
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

/// The table of readings in a line: `Under 240 °F 60 s, 240 to 325 °F 15 s, 325 to 346 °F SHOOT, ...`.
fn bands(heating: &Heating) -> String {
    let mut line = Vec::new();
    let mut from: Option<&str> = None;
    for band in &heating.bands {
        let below = degrees(&band.below.text);
        line.push(match from {
            None => format!("Under {below}: {}", band.burst.text),
            Some(from) => format!("{from} to {below}: {}", band.burst.text),
        });
        from = Some(below);
    }
    let (from, to) = (degrees(&heating.shoot_from.text), degrees(&heating.shoot_to.text));
    format!("{}; {from} to {to}: SHOOT; over {to}: stop, let it cool.", line.join("; "))
}

/// A temperature on the scale of the bench alone.
fn degrees(both: &str) -> &str {
    both.split(" (").next().unwrap_or(both)
}
