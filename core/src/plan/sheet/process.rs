//! Vacuum, heat and sink rates on the sheet.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::{Page, called, counted, cut};
use crate::caution::Caution;
use crate::plan::process::{Burst, Degas, Heating, Heats, Reckoned, SinkWater, Sinking};
use crate::plan::{PlannedLine, Stage};
use crate::process::sink::Motion;
use crate::quantity::Ratio;

impl Page {
    /// The step that lets the air out.
    pub(super) fn degas(&mut self, degas: Option<&Reckoned<Degas>>) {
        match degas {
            Some(Reckoned::Known(degas)) => self.degas_at(degas),
            Some(Reckoned::Unknown(why)) => {
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
        self.step(&format!(
            "{again} in short bursts, stirring and taking the temperature between, to {window}.",
        ));
        match &stage.heating {
            Some(Reckoned::Known(heating)) => self.bursts(heating),
            Some(Reckoned::Unknown(why)) => self.detail(&format!("No times: {}", why.message)),
            None => {}
        }
        self.caution(Caution::HotPlastisol);
        self.caution(Caution::Fumes);
    }

    fn bursts(&mut self, heating: &Heating) {
        let uncertainty = heating
            .uncertainty
            .as_ref()
            .map(|uncertainty| format!(" ± {}", uncertainty.text))
            .unwrap_or_default();
        self.detail(&format!(
            "From {} to {}: {}; {}{uncertainty} in all.",
            heating.from.text,
            heating.aim.text,
            in_a_row(&heating.bursts),
            heating.total.text
        ));
        let which = if heating.bursts.len() > 1 { "The last one only" } else { "Only" };
        if let Some(last) = heating.bursts.last() {
            self.detail(&format!("{which} if it shows {} or less.", last.only_below.text));
        }
        if heating.one_overshoots {
            self.detail("Never in one go: that may scorch it.");
        }
        if let Some(beyond) = &heating.beyond {
            self.detail(&format!(
                "That is beyond what was timed, by a factor of {}: look sooner, and time it.",
                beyond.text
            ));
        }
    }

    /// How often the pot is heated, and what that leaves.
    pub(super) fn heats(&mut self, heats: &Heats) {
        let count = counted(heats.count, "heat");
        match &heats.budget {
            None => self.detail(&format!("No heat budget was given: {count}.")),
            Some(Reckoned::Unknown(why)) => {
                self.detail(&format!("{count}; what they spend is not known: {}", why.message));
            }
            Some(Reckoned::Known(spent)) => {
                let (spends, stands, at) = (&spent.spent.text, &spent.budget.text, &spent.at.text);
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
            let what = cut(&called(line), 29);
            let row = match sinks {
                Reckoned::Known(sinks) => sinking(&what, sinks),
                Reckoned::Unknown(why) => format!("{what:<29} not told: {}", why.message),
            };
            if !shown.contains(&row) {
                let (lead, rest) = row.split_at(what.len());
                self.wrapped(&format!("        {lead:<29}"), rest.trim_start());
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
        "{what:<29} {}{unsure}, {} ({} to {}), {motion}",
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

/// `3 × 120 s, 45 s`.
fn in_a_row(bursts: &[Burst]) -> String {
    let alike = bursts.chunk_by(|a, b| a.duration.text == b.duration.text);
    let runs = alike.map(|run| match run {
        [one] => one.duration.text.clone(),
        run => format!(
            "{} × {}",
            run.len(),
            run.first().map(|burst| burst.duration.text.as_str()).unwrap_or_default()
        ),
    });
    runs.collect::<Vec<_>>().join(", ")
}
