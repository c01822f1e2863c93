//! Sink rates on the sheet.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::{Page, called, cut};
use crate::plan::PlannedLine;
use crate::plan::process::{SinkWater, Sinking};
use crate::process::sink::Motion;
use crate::quantity::Ratio;
use crate::show::Calculated;

/// Columns for what sinks, so that a row stays on one line.
const SUNK: usize = 26;

impl Page {
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
