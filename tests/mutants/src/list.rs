//! The committed list of survivors, the results of runs, and the table.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::Path;

use serde_json::Value;

/// Survivors by name: why no test could notice it, or `open`.
pub fn survivors(path: &Path) -> BTreeMap<String, String> {
    let text = fs::read_to_string(path).unwrap_or_default();
    text.lines()
        .filter(|line| !line.is_empty() && !line.starts_with("//"))
        .map(|line| {
            let (name, reason) = line
                .rsplit_once(" | ")
                .unwrap_or_else(|| panic!("{line}: a name, \" | \" and a reason"));
            (name.to_owned(), reason.to_owned())
        })
        .collect()
}

/// How many survivors are open.
pub fn open(survivors: &BTreeMap<String, String>) -> usize {
    survivors.values().filter(|reason| *reason == OPEN).count()
}

/// How many survivors may be open: it only gets smaller.
pub fn ceiling(path: &Path) -> usize {
    let text =
        fs::read_to_string(path).unwrap_or_else(|error| panic!("{}: {error}", path.display()));
    text.trim().parse().unwrap_or_else(|_| panic!("{}: one whole number", path.display()))
}

/// Instead of a reason: no test notices it, and it is not argued that none can.
pub const OPEN: &str = "open";

/// Instead of a reason: the core's own tests miss it, the others do not.
pub const ELSEWHERE: &str = "caught by tests/";

/// Names of mutants that do not compile.
pub fn dropped(path: &Path) -> BTreeSet<String> {
    fs::read_to_string(path).unwrap_or_default().lines().map(str::to_owned).collect()
}

/// What is known of a mutant: its last outcome, of which sources, and whether the core's own tests missed it.
pub struct Known {
    pub outcome: String,
    pub sources: String,
    pub missed_by_unit: bool,
}

impl Known {
    /// Whether its outcome is that of the core's own tests alone.
    pub fn is_of_unit(&self) -> bool {
        self.sources.ends_with("-unit")
    }
}

/// The results so far; a later line for a mutant replaces an earlier one.
pub fn results(path: &Path) -> BTreeMap<String, Known> {
    let text = fs::read_to_string(path).unwrap_or_default();
    let mut all: BTreeMap<String, Known> = BTreeMap::new();
    for line in text.lines().filter_map(|line| serde_json::from_str::<Value>(line).ok()) {
        let field = |key: &str| line[key].as_str().map(str::to_owned);
        let (Some(name), Some(outcome), Some(sources)) =
            (field("mutant"), field("outcome"), field("sources"))
        else {
            continue;
        };
        let missed = matches!(outcome.as_str(), "missed" | "unreached");
        let before = all.get(&name).is_some_and(|known| known.missed_by_unit);
        let missed_by_unit = if sources.ends_with("-unit") { missed } else { before || missed };
        all.insert(name, Known { outcome, sources, missed_by_unit });
    }
    all
}

/// The part of the core that a mutant is in: the module.
pub fn part(name: &str) -> &str {
    let end = name.find(['/', '.', ' ']).unwrap_or(name.len());
    &name[..end]
}

/// Rows of the table, with a sum.
#[derive(Default, Clone)]
pub struct Row {
    pub mutants: usize,
    pub caught: usize,
    pub argued: usize,
    pub open: usize,
    pub not_mutated: usize,
}

impl Row {
    fn add(&mut self, other: &Self) {
        self.mutants += other.mutants;
        self.caught += other.caught;
        self.argued += other.argued;
        self.open += other.open;
        self.not_mutated += other.not_mutated;
    }
}

pub fn table(rows: &BTreeMap<String, Row>) -> String {
    let mut text = String::from(
        "| part | mutants | caught | missed (argued) | missed (open) | not mutated |\n\
         | --- | ---: | ---: | ---: | ---: | ---: |\n",
    );
    let mut sum = Row::default();
    let mut line = |name: &str, row: &Row| {
        text.push_str(&format!(
            "| {name} | {} | {} | {} | {} | {} |\n",
            row.mutants, row.caught, row.argued, row.open, row.not_mutated
        ));
    };
    for (name, row) in rows {
        line(&format!("`{name}`"), row);
        sum.add(row);
    }
    line("all", &sum);
    text
}
