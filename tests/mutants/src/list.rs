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
            let (name, reason) = line.split_once(" | ").unwrap_or_else(|| panic!("{line}: a name, \" | \" and a reason"));
            (name.to_owned(), reason.to_owned())
        })
        .collect()
}

/// Names of mutants that do not compile.
pub fn dropped(path: &Path) -> BTreeSet<String> {
    fs::read_to_string(path).unwrap_or_default().lines().map(str::to_owned).collect()
}

/// The last outcome of each mutant: what, and of which sources.
pub fn results(path: &Path) -> BTreeMap<String, (String, String)> {
    let text = fs::read_to_string(path).unwrap_or_default();
    text.lines()
        .filter_map(|line| serde_json::from_str::<Value>(line).ok())
        .filter_map(|line| {
            let field = |key: &str| line[key].as_str().map(str::to_owned);
            Some((field("mutant")?, (field("outcome")?, field("sources")?)))
        })
        .collect()
}

/// The part of the core that a mutant is in: the module.
pub fn part(name: &str) -> &str {
    let end = name.find(['/', '.', ' ']).unwrap_or(name.len());
    &name[..end]
}

/// Rows of the table, with a sum.
#[derive(Default, Clone)]
pub struct Row {
    pub judged: usize,
    pub caught: usize,
    pub timeout: usize,
    pub argued: usize,
    pub open: usize,
    pub not_mutated: usize,
}

impl Row {
    fn add(&mut self, other: &Self) {
        self.judged += other.judged;
        self.caught += other.caught;
        self.timeout += other.timeout;
        self.argued += other.argued;
        self.open += other.open;
        self.not_mutated += other.not_mutated;
    }
}

pub fn table(rows: &BTreeMap<String, Row>) -> String {
    let mut text = String::from(
        "| part | mutants | caught | missed (argued) | missed (open) | timeouts | not mutated |\n\
         | --- | ---: | ---: | ---: | ---: | ---: | ---: |\n",
    );
    let mut sum = Row::default();
    let mut line = |name: &str, row: &Row| {
        text.push_str(&format!(
            "| {name} | {} | {} | {} | {} | {} | {} |\n",
            row.judged, row.caught, row.argued, row.open, row.timeout, row.not_mutated
        ));
    };
    for (name, row) in rows {
        line(&format!("`{name}`"), row);
        sum.add(row);
    }
    line("all", &sum);
    text
}
