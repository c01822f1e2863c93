//! Sink rates in the notes.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::called;
use crate::plan::PlannedLine;
use crate::plan::process::SinkWater;
use crate::quantity::Ratio;
use crate::show::Calculated;
use crate::show::page::{Page, cut};

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
        self.wrapped("", &format!("SINK RATE with hook, {salt}: a model value and its bounds, twice the ± of the density in them"));
        let mut shown: Vec<String> = Vec::new();
        for line in lines {
            let Some(sinks) = &line.sinks else { continue };
            let what = cut(&called(line), SUNK);
            let row = match sinks {
                Calculated::Known(sinks) => format!("{what:<SUNK$} {}", sinks.text),
                Calculated::Unknown(why) => format!("{what:<SUNK$} not known: {}", why.message),
            };
            if !shown.contains(&row) {
                let (lead, rest) = row.split_at(what.len());
                self.wrapped(&format!("    {lead:<SUNK$}"), rest.trim_start());
                shown.push(row);
            }
        }
    }
}
