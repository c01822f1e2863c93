//! Pots that are there: what is in them, and what they were begun for.

use alloc::string::String;
use alloc::vec::Vec;

use super::Resolver;
use crate::book::Book;
use crate::codes::code;
use crate::document::orders::{DrawThereEntry, PotThereEntry};
use crate::json::path::Path::{self, At};
use crate::json::reader::Name;
use crate::mix::Mix;
use crate::plan::day::Line;
use crate::plan::shelf::Leftover;
use crate::plan::there::{DrawThere, PotThere};
use crate::quantity::{Measurable, Volume};
use crate::show::text;

/// Capacities of the bench's cups: `2 cup, 4 cup`.
pub(crate) fn capacities(book: &Book) -> String {
    let cups = book.tools.cups().iter();
    let each = cups.map(|cup| text::cup(cup.capacity, cup.mark, book.system).text);
    each.collect::<Vec<_>>().join(", ")
}

impl Resolver {
    pub(super) fn pots_there(
        &mut self,
        entries: &[PotThereEntry],
        lines: &[Line],
        book: &Book,
    ) -> Option<Vec<PotThere>> {
        let mut letters: Vec<&Name> = Vec::new();
        self.each(&At("/pots"), entries, |resolver, path, entry| {
            if letters.contains(&&entry.pot) {
                resolver.fault(
                    code!("pot-twice"),
                    &path.key("pot"),
                    &format_args!("Pot {} is listed twice.", entry.pot.0),
                    &"Give each pot a letter of its own.",
                );
            }
            letters.push(&entry.pot);
            resolver.pot_there(entry, path, lines, book)
        })
    }

    fn pot_there(
        &mut self,
        entry: &PotThereEntry,
        path: &Path<'_>,
        lines: &[Line],
        book: &Book,
    ) -> Option<PotThere> {
        let mix = match &entry.parts {
            Some(parts) => self.mixed(parts, &path.key("parts"), book),
            None => Some(Mix::new()),
        };
        let cup = match &entry.cup {
            Some(cup) => {
                let cup_path = path.key("cup");
                self.positive(&cup_path, cup)
                    .and_then(|capacity| self.cup_of(&entry.pot, &cup_path, capacity, book))
                    .map(Some)
            }
            None => Some(None),
        };
        let draws = entry.draws.as_deref().unwrap_or_default();
        let draws = self.each(&path.key("draws"), draws, |resolver, path, draw| {
            resolver.draw_there(draw, path, lines)
        });
        let mix = mix?;
        let spent = entry.spent.as_ref();
        let spent = spent.and_then(|spent| self.spent(&path.key("spent"), spent, &mix, book));
        let hot = entry.hot.unwrap_or(false);
        Some(PotThere {
            pot: entry.pot.0.clone(),
            id: entry.id.as_ref().map(|id| id.0.clone()),
            cup: cup?,
            contents: Leftover {
                name: entry.pot.0.clone(),
                mix,
                heats: Some(entry.heats.map_or(u32::from(hot), |heats| heats.0)),
                spent,
                made: None,
                ext: None,
            },
            hot,
            degassed: entry.degassed.unwrap_or(false),
            draws: draws?,
            takes_more: entry.takes_more.unwrap_or(true),
            accepted: entry.accepted.unwrap_or(false),
        })
    }

    /// The cup of the bench that holds that much, by its place.
    fn cup_of(
        &mut self,
        pot: &Name,
        path: &Path<'_>,
        capacity: Volume,
        book: &Book,
    ) -> Option<usize> {
        let mut cups = book.tools.cups().iter();
        let found =
            cups.position(|cup| (cup.capacity - capacity).si().abs() <= 1e-6 * capacity.si());
        if found.is_none() {
            let holds = text::volume(capacity, book.system).on_both_scales();
            self.fault(
                code!("cup-not-of-bench"),
                path,
                &format_args!(
                    "Pot {} is in a cup that holds {holds}; the bench has no such cup.",
                    pot.0
                ),
                &format_args!(
                    "Its cups hold {}. Write one of these, or leave it out: then it is the smallest that holds the pot.",
                    capacities(book)
                ),
            );
        }
        found
    }

    fn draw_there(
        &mut self,
        draw: &DrawThereEntry,
        path: &Path<'_>,
        lines: &[Line],
    ) -> Option<DrawThere> {
        let number = draw.line as usize;
        let Some(line) = number.checked_sub(1).filter(|line| *line < lines.len()) else {
            self.fault(
                code!("no-such-line"),
                &path.key("line"),
                &format_args!("The order list has no line {number}."),
                &format_args!("Lines are counted from 1; there are {}.", lines.len()),
            );
            return None;
        };
        let layers = lines.get(line).map_or(0, |line| line.product.layers.len());
        let number = draw.layer.unwrap_or(1) as usize;
        let Some(layer) = number.checked_sub(1).filter(|layer| *layer < layers) else {
            self.fault(
                code!("no-such-layer"),
                &path.key("layer"),
                &format_args!("The pieces of that line have no layer {number}."),
                &format_args!("Layers are counted from 1, up to {layers} here."),
            );
            return None;
        };
        Some(DrawThere { line, layer, shots: draw.shots })
    }
}
