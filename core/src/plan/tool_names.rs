//! Names of the tools of a bench, made once because every measure of a plan uses them.

use alloc::string::String;
use alloc::vec::Vec;

use crate::bench::Bench;
use crate::book::Book;
use crate::quantity::System;
use crate::show::text;

/// The tools of a bench with their names in a measuring system.
pub(crate) struct ToolNames<'a> {
    pub(super) tools: &'a Bench,
    pub(super) system: System,
    spoons: Vec<String>,
    cups: Vec<String>,
}

impl<'a> ToolNames<'a> {
    pub(crate) fn new(tools: &'a Bench, system: System) -> Self {
        let spoons = tools.spoons().iter().map(|holds| text::household(*holds, system));
        let cups = tools.cups().iter().map(|cup| text::cup_name(cup.capacity, cup.mark, system));
        Self { tools, system, spoons: spoons.collect(), cups: cups.collect() }
    }

    pub(crate) fn of(book: &'a Book) -> Self {
        Self::new(&book.tools, book.system)
    }

    /// By its volume: `1/4 tsp`.
    pub(super) fn spoon(&self, spoon: usize) -> &str {
        self.spoons.get(spoon).map_or("", String::as_str)
    }

    /// By its capacity to its highest mark: `2-cup cup`.
    pub(super) fn cup(&self, cup: usize) -> &str {
        self.cups.get(cup).map_or("", String::as_str)
    }
}
