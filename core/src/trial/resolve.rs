//! A trial as it is written, gone through with the materials of a book.

use super::{Trial, TrialEntry, TrialError, TrialStep};
use crate::book::Book;
use crate::codes::code;
use crate::document::resolve::Resolver;
use crate::formula::Overlap;
use crate::json::path::Path;
use crate::json::reader::Name;
use crate::mix::{MaterialId, Mix};

impl TrialEntry {
    /// The trial as it went. `path` is its place in the request.
    pub(crate) fn resolve<'a>(
        &self,
        book: &'a Book,
        resolver: &mut Resolver,
        path: &Path<'_>,
    ) -> Option<Trial<'a>> {
        let mut trial = self.start(book, resolver, path)?;
        let log = path.key("log");
        resolver.whole(|resolver| {
            self.steps(&mut trial, resolver, &log);
            Some(trial)
        })
    }

    fn steps(&self, trial: &mut Trial<'_>, resolver: &mut Resolver, log: &Path<'_>) {
        let mut last = None;
        for (index, step) in self.log.iter().flatten().enumerate() {
            let path = log.index(index);
            let step = match step {
                TrialStep::Again => match last {
                    Some(last) => last,
                    None => {
                        resolver.fault(
                            code!("trial-nothing-again"),
                            &path,
                            &"Nothing was added before this \"again\".",
                            &"Write the addition itself: { \"plum\": \"3 drops\" }.",
                        );
                        continue;
                    }
                },
                step => step,
            };
            trial.step(step, resolver, &path);
            if matches!(step, TrialStep::Added(..)) {
                last = Some(step);
            }
        }
    }

    /// The mix in the cup at the end of the log. `path` is the trial's place in the request.
    #[allow(dead_code)] // a pot that is there may be one
    pub(crate) fn mix(&self, book: &Book, resolver: &mut Resolver, path: &Path<'_>) -> Option<Mix> {
        self.resolve(book, resolver, path).map(|trial| trial.mix)
    }

    fn start<'a>(
        &self,
        book: &'a Book,
        resolver: &mut Resolver,
        path: &Path<'_>,
    ) -> Option<Trial<'a>> {
        let start = path.key("start");
        match (&self.formulas, &self.base) {
            (Some(_), Some(_)) => {
                resolver.fault(
                    code!("trial-formulas-and-base"),
                    &path.key("base"),
                    &"Both \"formulas\" and \"base\" are given.",
                    &"Leave \"base\" out: the formulas have their base.",
                );
                None
            }
            (Some(formulas), None) => {
                let overlap = self.overlap.unwrap_or(Overlap::Refuse);
                let layer = resolver.layer(formulas, overlap, 1.0, &path.key("formulas"), book)?;
                resolver.keep(&start, Trial::of_formulas(layer, &self.start, book))
            }
            (None, base) => {
                let base = match base {
                    Some(base) => resolver.find_material(&book.materials, base, &path.key("base")),
                    None => default_base(book, resolver, path),
                }?;
                let trial = Trial::of_base(base, &self.start, book);
                let is_base = matches!(trial, Err(TrialError::NoPlastisol(..)));
                resolver.keep(&path.key(if is_base { "base" } else { "start" }), trial)
            }
        }
    }
}

fn default_base(book: &Book, resolver: &mut Resolver, path: &Path<'_>) -> Option<MaterialId> {
    if book.default_base.is_none() {
        resolver.fault(
            code!("trial-no-base"),
            path,
            &"It is not said what the trial started from, and the book has no \"default_base\".",
            &"Name a plastisol, \"base\": \"clear-base\", or \"formulas\": [\"plain\"].",
        );
    }
    book.default_base
}

impl Trial<'_> {
    fn step(&mut self, step: &TrialStep, resolver: &mut Resolver, path: &Path<'_>) {
        match step {
            TrialStep::Added(amounts, _) => {
                for (name, amount) in amounts {
                    let path = path.key(name);
                    let id =
                        resolver.find_material(&self.book.materials, &Name(name.clone()), &path);
                    id.and_then(|id| resolver.keep(&path, self.add(id, amount)));
                }
            }
            TrialStep::Taken(amount, _) => {
                resolver.keep(&path.key("taken"), self.take(amount));
            }
            TrialStep::Looks(color, _) => {
                let color = color.read_at(&path.key("looks"), resolver);
                color.into_iter().for_each(|color| self.look(color.reading));
            }
            TrialStep::Again => {}
        }
    }
}
