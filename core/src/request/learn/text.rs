//! What was learned as text, 80 columns wide.

use alloc::format;
use alloc::string::String;
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
        page.list("TO LOOK AT", asked.map(|one| format!("{}: {}", one.what, one.question)));
        page.list("AS IN THE BOOK", learned.confirmed.iter().cloned());
        page.list("NOT YET", learned.not_yet.iter().cloned());
        f.write_str(page.text())
    }
}

#[cfg(test)]
mod tests {
    use alloc::string::ToString;
    use alloc::vec::Vec;

    use super::*;
    use crate::request::learn::BookChange;

    #[test]
    fn changes_are_numbered_from_one() {
        let change = |what: &str| BookChange {
            what: what.into(),
            before: None,
            after: "4 mL".into(),
            days: 4,
            why: "4 days show it.".into(),
            questioned: what == "cavity of worm",
            write: Vec::new(),
        };
        let mut learned = LearnResponse {
            days: 4,
            from: Some("2027-03-02".into()),
            to: Some("2027-03-23".into()),
            changes: Vec::from([change("drop of plum"), change("cavity of worm")]),
            questions: Vec::new(),
            confirmed: Vec::new(),
            not_yet: Vec::new(),
        };
        let sheet = learned.sheet().to_string();
        let lines: Vec<&str> = sheet.lines().map(str::trim_end).collect();
        assert!(lines[0].starts_with("LEARNED FROM 4 DAYS"), "{sheet}");
        assert!(lines[0].ends_with("2027-03-02 to 2027-03-23"), "{sheet}");
        assert!(lines.contains(&" 1 drop of plum: not stated -> 4 mL"), "{sheet}");
        assert!(lines.contains(&" 2 cavity of worm: not stated -> 4 mL  (see below)"), "{sheet}");
        assert!(!sheet.contains("No change"));
        learned.changes.clear();
        assert!(
            learned.sheet().to_string().lines().any(|line| line.trim() == "No change to the book.")
        );
    }
}
