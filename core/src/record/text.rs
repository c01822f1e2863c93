//! The record as text, 80 columns wide: what differed, what it yielded, and what it shows.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;
use core::fmt;

use super::{
    DrawRecord, Found, Jar, MadePart, MoldRecord, PieceRecord, PotRecord, Record, StageRecord,
};
use crate::quantity::Mass;
use crate::show::page::{Page, counted, past};

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
        page.list("YIELD", record.molds.iter().map(yields));
        page.list("WEIGHED PIECES", record.found.iter().map(|found| found.text.clone()));
        page.list("FOR THE BOOK", for_the_book(record));
        page.list("FOR THE SHELF", record.jars.iter().map(on_shelf));
        f.write_str(page.text())
    }
}

impl Page {
    fn pot_record(&mut self, pot: &PotRecord) {
        let lead = format!("POT {}  ", pot.pot);
        let indent: String = lead.chars().map(|_| ' ').collect();
        let below = &format!("{indent}  ");
        for (index, stage) in pot.stages.iter().enumerate() {
            self.wrapped(if index == 0 { &lead } else { &indent }, &stage_words(stage));
            for part in stage.made.iter().filter(|part| part.stated) {
                self.wrapped(below, &part_words(part, &stage.per));
            }
            for pair in &stage.pairs {
                let (material, measured) = (&pair.material, &pair.measured);
                let (weighed, by_book) = (&pair.weighed.text, &pair.by_book.text);
                self.wrapped(
                    below,
                    &format!("{material}: {measured} weighed {weighed}, by the book {by_book}."),
                );
            }
            for draw in &stage.draws {
                if let Some(words) = draw_words(draw) {
                    self.wrapped(below, &words);
                }
            }
        }
        if let (Some(left), Some(lost)) = (&pot.left, &pot.lost) {
            let text = format!(
                "Put in {}, shot {}, left {}: lost {} ({} planned).",
                pot.put_in.text, pot.shot.text, left.text, lost.text, pot.planned_lost.text
            );
            self.wrapped(below, &text);
        }
        for notes in &pot.notes {
            self.wrapped(below, &format!("Note: {notes}"));
        }
    }
}

fn stage_words(stage: &StageRecord) -> String {
    let name = stage.formulas.join(" + ");
    let held = &stage.held.text;
    let planned = &stage.planned_density.text;
    let density = match &stage.density {
        Some(density) if density.text != *planned => {
            format!(", {} ({planned} planned)", density.text)
        }
        Some(density) => format!(", {}", density.text),
        None => ", density not known".to_string(),
    };
    format!("{name}: {held}{density}.")
}

fn part_words(part: &MadePart, per: &str) -> String {
    let off = part.off.as_ref().map_or_else(|| "new".to_string(), |off| off.text.clone());
    let (material, added, dose) = (&part.material, &part.added.text, &part.dose);
    format!("{material}: {added} went in ({off}); {dose} for {per} of base.")
}

/// What was noted of shots; `None` if they went as planned.
fn draw_words(draw: &DrawRecord) -> Option<String> {
    let is_whole = draw.share.quantity.value >= 1.0;
    let pieces: Vec<String> =
        draw.pieces.iter().filter_map(|one| piece_words(one, is_whole)).collect();
    let is_as_planned = draw.shots == draw.planned_shots;
    if is_as_planned && pieces.is_empty() && draw.took.is_none() {
        return None;
    }
    let mut words = Vec::from([counted(draw.shots, "shot")]);
    if !is_as_planned {
        words.extend([format!("({} planned)", draw.planned_shots)]);
    }
    if let Some(took) = &draw.took {
        words.push(format!("in {}", took.text));
    }
    let mut parts = Vec::from([words.join(" ")]);
    parts.extend(pieces);
    Some(format!("{}: {}.", draw.mold, parts.join("; ")))
}

fn piece_words(pieces: &PieceRecord, is_whole: bool) -> Option<String> {
    let shape = pieces.shape.as_ref().map(|shape| format!("{shape}: ")).unwrap_or_default();
    let good = pieces
        .good
        .map(|good| format!("{good} good of {} made, {} ordered", pieces.made, pieces.ordered));
    let weighs = pieces.weighs.as_ref().map(|weighs| {
        let scatter = pieces.deviation.as_ref().filter(|one| one.quantity > Mass::default());
        let scatter = scatter.map(|one| format!(" ± {}", one.text)).unwrap_or_default();
        let planned = is_whole.then(|| format!(" ({} planned)", pieces.planned.text));
        let planned = planned.unwrap_or_default();
        format!("{} weighed, each {}{scatter}{planned}", pieces.weighed, weighs.text)
    });
    let parts: Vec<String> = good.into_iter().chain(weighs).collect();
    (!parts.is_empty()).then(|| format!("{shape}{}", parts.join(", ")))
}

fn yields(mold: &MoldRecord) -> String {
    let MoldRecord { mold, made, good, rejects, rejects_from, rejects_to } = mold;
    format!(
        "{mold}: {good} good of {made}, rejects {} ({} to {}, 95 % sure).",
        rejects.text, rejects_from.text, rejects_to.text
    )
}

fn for_the_book(record: &Record) -> Vec<String> {
    let mut points = Vec::new();
    for Found { mold, shape, cavity, feed, .. } in &record.found {
        let name = shape.as_ref().map_or_else(|| mold.clone(), |shape| format!("{mold} ({shape})"));
        points.extend(cavity.as_ref().map(|cavity| format!("{name}: cavity {cavity}.")));
        points.extend(feed.as_ref().map(|feed| format!("{name}: feed {}.", feed.text)));
    }
    #[cfg(feature = "document")]
    points.extend(record.colors.iter().map(|seen| seen.text.clone()));
    #[cfg(feature = "document")]
    for super::Saved { name, pot, formula } in &record.saved {
        let unusual = match formula.sure {
            Some(true) => " It is unusual: check what was written down before you keep it.",
            _ => "",
        };
        points.push(format!("New formula \"{name}\", as made in pot {pot}.{unusual}"));
    }
    points
}

fn on_shelf(jar: &Jar) -> String {
    let sprues = if jar.sprues.quantity > Mass::default() && jar.sprues != jar.mass {
        format!(", {} of it sprues", jar.sprues.text)
    } else {
        String::new()
    };
    format!("{}: {}{sprues}; {}.", jar.name, jar.mass.text, past(jar.heats, jar.spent.as_ref()))
}

#[cfg(all(test, feature = "document"))]
mod tests;
