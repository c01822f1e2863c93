//! The record as text, 80 columns wide.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;
use core::fmt;

use super::{DrawRecord, PieceRecord, PotRecord, Record, StageRecord};
use crate::quantity::Mass;
use crate::show::page::{Page, counted, cut, past};

/// The record as text, by `Display`.
#[derive(Debug, Clone, Copy)]
pub struct RecordSheet<'a>(&'a Record);

impl Record {
    /// The record to file away, as text by its `Display`.
    #[must_use]
    pub const fn sheet(&self) -> RecordSheet<'_> {
        RecordSheet(self)
    }
}

impl fmt::Display for RecordSheet<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let record = self.0;
        let mut page = Page::default();
        let title = record
            .day
            .as_ref()
            .map_or_else(|| "RECORD".to_string(), |day| format!("RECORD  {day}"));
        page.ends(&title, record.shop.as_deref().unwrap_or_default());
        page.rule('=');
        for pot in &record.pots {
            page.pot_record(pot);
        }
        page.molds(record);
        f.write_str(page.text())
    }
}

impl Page {
    fn pot_record(&mut self, pot: &PotRecord) {
        self.line("");
        self.line(&format!("POT {}", pot.pot));
        self.rule('-');
        for stage in &pot.stages {
            self.stage_record(stage);
        }
        let lost = match (&pot.left, &pot.lost) {
            (Some(left), Some(lost)) => format!(
                "Put in {}, shot {}, left {}: lost {} ({} planned).",
                pot.put_in.text, pot.shot.text, left.text, lost.text, pot.planned_lost.text
            ),
            _ => format!(
                "Put in {}, shot {}. What was left was not weighed.",
                pot.put_in.text, pot.shot.text
            ),
        };
        self.wrapped("  ", &lost);
        let past = past(pot.heats, pot.spent.as_ref());
        self.wrapped("  ", &format!("What was left, and its sprues: {past}."));
        for notes in &pot.notes {
            self.wrapped("  ", notes);
        }
    }

    fn stage_record(&mut self, stage: &StageRecord) {
        self.wrapped("", &stage.formulas.join(" + "));
        self.line(&format!(
            "  {:<14} {:>9} {:>9} {:>9}  {:<24} {:>7}",
            "", "went in", "in all", "of base", "for 1 cup of base", "off"
        ));
        for part in &stage.made {
            let off = part.off.as_ref().map_or_else(|| "new".to_string(), |off| off.text.clone());
            self.line(&format!(
                "  {:<14} {:>9} {:>9} {:>9}  {:<24} {off:>7}",
                cut(&part.material, 14),
                part.added.text,
                part.mass.text,
                part.of_base.text,
                cut(&part.dose, 24),
            ));
        }
        for draw in &stage.draws {
            self.draw_record(draw);
        }
        let how = if stage.after_weighed { "weighed" } else { "calculated" };
        self.line(&format!("  Then in the cup: {} ({how}).", stage.after.text));
    }

    fn draw_record(&mut self, draw: &DrawRecord) {
        let planned = match draw.planned_shots {
            planned if planned == draw.shots => String::new(),
            planned => format!(" ({planned} planned)"),
        };
        let pieces: Vec<String> = draw
            .pieces
            .iter()
            .filter(|pieces| pieces.made > 0 || pieces.ordered > 0)
            .map(|pieces| piece_words(pieces, draw.share.quantity.value >= 1.0))
            .collect();
        let shots = counted(draw.shots, "shot");
        self.wrapped("  ", &format!("{}: {shots}{planned}; {}.", draw.mold, pieces.join("; ")));
    }

    fn molds(&mut self, record: &Record) {
        if record.molds.is_empty() {
            return;
        }
        self.line("");
        self.rule('=');
        self.line(&format!(
            "{:<24} {:>8} {:>8} {:>9}   {}",
            "mold", "made", "good", "rejects", "95 % sure"
        ));
        for mold in &record.molds {
            self.line(&format!(
                "{:<24} {:>8} {:>8} {:>9}   {} to {}",
                cut(&mold.mold, 24),
                mold.made,
                mold.good,
                mold.rejects.text,
                mold.rejects_from.text,
                mold.rejects_to.text
            ));
        }
    }
}

fn piece_words(pieces: &PieceRecord, is_whole: bool) -> String {
    let shape = pieces.shape.as_ref().map(|shape| format!("{shape}: ")).unwrap_or_default();
    let good = match (pieces.good, pieces.good_per_shot) {
        (Some(good), Some(each)) => {
            format!(", {good} good ({} a shot)", crate::show::number(each))
        }
        (Some(good), None) => format!(", {good} good"),
        _ => String::new(),
    };
    let scatter = pieces.deviation.as_ref().filter(|one| one.quantity > Mass::default());
    let scatter = scatter.map(|one| format!(" ± {}", one.text)).unwrap_or_default();
    let planned = is_whole.then(|| format!(", {} planned", pieces.planned.text));
    let weighs = pieces.weighs.as_ref().map(|weighs| {
        format!(
            ", each {}{scatter} ({} weighed{})",
            weighs.text,
            pieces.weighed,
            planned.unwrap_or_default()
        )
    });
    let (ordered, made) = (pieces.ordered, pieces.made);
    format!("{shape}{ordered} ordered, {made} made{good}{}", weighs.unwrap_or_default())
}
