//! Formulas that an answer offers to save into the book.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::change::{Change, of_formula};
use crate::book::Book;
use crate::codes::code;
use crate::document::book::FormulaEntry;
use crate::document::resolve::Resolver;
use crate::json::path::Path::{self, At};
use crate::json::reader::{Name, checked_name};

/// Names to save formulas under, as a request gives them.
pub(super) struct Saving<'a> {
    pub(super) save_as: Option<&'a Name>,
    pub(super) body_as: Option<&'a Name>,
    pub(super) replace: bool,
}

impl Saving<'_> {
    /// The name of the color, or of all; `unnamed` if none was given.
    pub(super) fn color<'a>(&'a self, unnamed: &'a str) -> &'a str {
        self.save_as.map_or(unnamed, |name| &name.0)
    }

    /// The name of the body.
    pub(super) fn body(&self, unnamed: &str) -> String {
        let of_color = || format!("{} body", self.color(unnamed));
        self.body_as.map_or_else(of_color, |name| name.0.clone())
    }

    /// The changes that save a color and a body: one that the book does not have yet. `None` if a name is taken.
    pub(super) fn changes(
        &self,
        color: Option<&FormulaEntry>,
        own_body: Option<&FormulaEntry>,
        book: &Book,
        resolver: &mut Resolver,
    ) -> Option<Vec<Change>> {
        let Some(save_as) = self.save_as else { return Some(Vec::new()) };
        let own_path = if self.body_as.is_some() { At("/body_as") } else { At("/save_as") };
        let body_name = self.body(&save_as.0);
        let mut changes = Vec::new();
        resolver.whole(|resolver| {
            let mut save = |name: &str, formula: &FormulaEntry, path: &Path<'_>| {
                self.check_free(name, path, book, resolver);
                let faults = formula.faults(name, &path.to_string(), &book.materials, book.system);
                resolver.faults.extend(faults);
                changes.extend(of_formula(name, formula));
            };
            match (color, own_body) {
                (Some(color), None) => save(&save_as.0, color, &At("/save_as")),
                (Some(color), Some(body)) => {
                    save(&save_as.0, color, &At("/save_as"));
                    save(&body_name, body, &own_path);
                }
                (None, Some(body)) => save(&save_as.0, body, &At("/save_as")),
                (None, None) => {}
            }
            Some(changes)
        })
    }

    /// Checks that a formula may be saved under `name`.
    fn check_free(&self, name: &str, path: &Path<'_>, book: &Book, resolver: &mut Resolver) {
        let is_name = checked_name(name, path, &mut resolver.faults);
        if is_name && !self.replace && book.find_formula(name).is_some() {
            resolver.fault(
                code!("formula-exists"),
                path,
                &format_args!("The book has a formula \"{name}\" already."),
                &"Choose another name, or write \"replace\": true to put this one in its place.",
            );
        }
    }

    /// What is saved and what is unusual about it, in lines; none if nothing was to be.
    pub(super) fn lines(
        &self,
        changes: &[Change],
        formulas: [Option<&FormulaEntry>; 2],
        book: &Book,
    ) -> Vec<String> {
        if self.save_as.is_none() {
            return Vec::new();
        }
        let entries = formulas.into_iter().flatten();
        let unusual = entries.flat_map(|entry| entry.unusual(&book.materials, book.system));
        let unusual: Vec<String> = unusual.collect();
        let unusual = (!unusual.is_empty()).then(|| {
            let unusual = unusual.join(", ");
            format!("Unusual: {unusual}. Check what was written down before you keep it.")
        });
        unusual.into_iter().chain([saved(changes)]).collect()
    }
}

fn saved(changes: &[Change]) -> String {
    let names = changes.iter().filter_map(|change| change.path.strip_prefix("/formulas/"));
    let names: Vec<String> = names.map(|name| format!("\"{name}\"")).collect();
    match names.as_slice() {
        [] => "Nothing to save: the book has all of it.".to_string(),
        names => format!("To save: {}.", names.join(" and ")),
    }
}
