//! What was learned as text, 80 columns wide.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use core::fmt;

use super::LearnResponse;
use crate::show::page::{Page, counted};

/// What was learned as text, by `Display`.
#[derive(Debug, Clone, Copy)]
pub struct LearnSheet<'a>(&'a LearnResponse);

impl LearnResponse {
    /// The changes and questions as text by its `Display`, to go through one by one.
    #[must_use]
    pub const fn sheet(&self) -> LearnSheet<'_> {
        LearnSheet(self)
    }
}

impl fmt::Display for LearnSheet<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let learned = self.0;
        let mut page = Page::default();
        let dates = match (&learned.from, &learned.to) {
            (Some(from), Some(to)) => format!("{from} to {to}"),
            _ => String::new(),
        };
        page.ends(&format!("LEARNED FROM {}", counted(learned.days, "day").to_uppercase()), &dates);
        page.rule('=');
        if learned.changes.is_empty() {
            page.line("No change to the book.");
        }
        for (place, change) in (1_u32..).zip(&learned.changes) {
            let before = change.before.as_deref().unwrap_or("not stated");
            let mark = if change.questioned { "  (see below)" } else { "" };
            page.wrapped(
                &format!("{place:>2} "),
                &format!("{}: {before} -> {}{mark}", change.what, change.after),
            );
            page.wrapped("   ", &change.why);
        }
        let asked = learned.questions.iter();
        let asked: Vec<String> =
            asked.map(|one| format!("{}: {}", one.what, one.question)).collect();
        for (title, lines) in [
            ("TO LOOK AT", &asked),
            ("AS IN THE BOOK", &learned.confirmed),
            ("NOT YET", &learned.not_yet),
        ] {
            page.listed(title, lines);
        }
        f.write_str(page.text())
    }
}

impl Page {
    fn listed(&mut self, title: &str, lines: &[String]) {
        if lines.is_empty() {
            return;
        }
        self.line("");
        self.line(title);
        for line in lines {
            self.wrapped("   ", line);
        }
    }
}
