//! A color found by eye: the formula that a trial's log comes to.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::change::Change;
use super::saving::Saving;
use super::{Open, request, response};
use crate::book::Book;
use crate::document::book::{BookDocument, FormulaEntry};
use crate::document::color::ColorEntry;
use crate::document::resolve::Resolver;
use crate::fault::Faults;
use crate::formula::{Formula, Overlap, WrittenDose, WrittenFormula, WrittenIn};
use crate::json::path::Path::At;
use crate::json::reader::Name;
use crate::material::Kind;
use crate::mix::{MixError, Phase};
use crate::plan::Doubt;
use crate::plan::tool_names::ToolNames;
use crate::quantity::{Amount, Mass, Ratio, Volume};
use crate::show::{Shown, text};
use crate::trial::{
    Trial, TrialBody, TrialEntry, TrialError, TrialFormulas, TrialNames, TrialStep,
};
use crate::words::words;

request! {
    /// Asks for the formula that a trial has come to, at any time of it.
    pub struct TrialRequest {
        required {
            trial: TrialEntry,
        }
        optional {
            book: BookDocument,
            per: Amount,
            save_as: Name,
            body_as: Name,
            replace: bool,
        }
    }
}

words! {
    /// What a material of a trial belongs to.
    pub enum TrialSide {
        /// The base.
        Base = "base",
        /// The body: with the base what makes it soft, hard, heavy or stable.
        Body = "body",
        /// The color.
        Color = "color",
        /// The body, and more of it in the color.
        Both = "both",
    }
}

response! {
    /// A trial as it is now, and the formula that it comes to.
    pub struct TrialResponse {
        /// The materials in the cup: the base, then the others by kind.
        pub cup: Vec<TrialPart>,
        /// Mass in the cup.
        pub mass: Shown<Mass>,
        /// Its volume, cold and liquid.
        pub volume: Shown<Volume>,
        /// Mass that was taken out.
        pub taken: Shown<Mass>,
        /// Amount of base that the doses are for.
        pub per: Amount,
        /// The color alone, for any body; none if there is no color in the cup.
        pub color: Option<FormulaEntry>,
        /// The formulas of the book that are the body in the cup; none if it is the default base alone, or `own_body`.
        pub body: Vec<String>,
        /// The body in the cup, if the book does not have it.
        pub own_body: Option<FormulaEntry>,
        /// Rule to combine color and body with: `add` if the color doses more of what the body has already.
        pub overlap: Overlap,
        /// The change to the book under the name of `save_as`; empty without one.
        pub write: Vec<Change>,
        /// The answer in short lines.
        pub text: Vec<String>,
    }
}

response! {
    /// A material in the cup of a trial.
    pub struct TrialPart {
        /// Which.
        pub material: String,
        /// Its kind.
        pub kind: Kind,
        /// What it belongs to.
        pub side: TrialSide,
        /// How much of it is in the cup.
        pub mass: Shown<Mass>,
        /// Its dose in the measure that it went in with; of the base, its part of `per`.
        pub dose: Amount,
        /// How far the dose as written is off the cup, relative to it; 0 if it is exact.
        pub off: Shown<Ratio>,
        /// How sure it is; none if the book lacks a number that this takes.
        pub doubt: Option<Doubt>,
    }
}

/// Name of the formula if none was given.
const UNNAMED: &str = "trial";

impl TrialRequest {
    /// Goes through the log and writes the formula.
    ///
    /// # Errors
    /// Faults of the book; all steps that cannot have been, with their places; a name that the book has already.
    pub fn answer(self, open: Open<'_>) -> Result<TrialResponse, Faults> {
        let book = open.book(self.book)?;
        let book = book.ready();
        let saving = Saving {
            save_as: self.save_as.as_ref(),
            body_as: self.body_as.as_ref(),
            replace: self.replace.unwrap_or(false),
        };
        let mut resolver = Resolver::new(book.system);
        let response = response(&self.trial, self.per, &saving, book, &mut resolver);
        resolver.finish(response)
    }
}

fn response(
    entry: &TrialEntry,
    per: Option<Amount>,
    saving: &Saving<'_>,
    book: &Book,
    resolver: &mut Resolver,
) -> Option<TrialResponse> {
    let trial = entry.resolve(book, resolver, &At("/trial"))?;
    let body_name = saving.body(UNNAMED);
    let names = TrialNames { color: saving.color(UNNAMED), body: &body_name };
    let found = trial.formulas(names, per);
    let is_per = matches!(found, Err(TrialError::NoStart(_)));
    let found = resolver.keep(if is_per { &At("/per") } else { &At("/trial") }, found)?;
    let shown = Show { trial: &trial, found: &found, book };
    let response = resolver.keep(&At("/trial"), shown.response(entry))?;
    let (color, own_body) = (response.color.as_ref(), response.own_body.as_ref());
    let write = saving.changes(color, own_body, book, resolver)?;
    let mut text = shown.lines(&response);
    text.extend(saving.lines(&write, [color, own_body], book));
    Some(TrialResponse { write, text, ..response })
}

/// A trial and its formulas, to be shown.
struct Show<'a> {
    trial: &'a Trial<'a>,
    found: &'a TrialFormulas,
    book: &'a Book,
}

impl Show<'_> {
    fn response(&self, trial: &TrialEntry) -> Result<TrialResponse, MixError> {
        let (book, found) = (self.book, self.found);
        let volume = self.trial.mix().volume(&book.materials, Phase::Liquid)?;
        let entry = |formula: &Formula| FormulaEntry::of(formula, &book.materials, book.system);
        let color = found.color.as_ref().map(|color| entry(&color.formula)).transpose()?;
        let own_body = match &found.body {
            TrialBody::Own(body) => Some(entry(&body.formula)?),
            TrialBody::OfBook(_) => None,
        };
        // A look after the last addition is one at what the formula says.
        let looks = trial.log.iter().flatten().rev();
        let mut looks =
            looks.take_while(|step| !matches!(step, TrialStep::Added(..) | TrialStep::Again));
        let seen = looks.find_map(|step| match step {
            TrialStep::Looks(color, _) => Some(ColorEntry::clone(color)),
            _ => None,
        });
        let noted = |entry: FormulaEntry| FormulaEntry {
            notes: trial.notes.clone(),
            color: seen.clone(),
            ..entry
        };
        Ok(TrialResponse {
            cup: self.parts()?,
            mass: text::mass(self.trial.mix().mass()),
            volume: text::volume(volume, book.system),
            taken: text::mass(self.trial.taken()),
            per: found.per,
            own_body: if color.is_some() { own_body } else { own_body.map(noted) },
            color: color.map(noted),
            body: self.body().into_iter().map(ToString::to_string).collect(),
            overlap: found.overlap,
            write: Vec::new(),
            text: Vec::new(),
        })
    }

    /// The names of the body's formulas in the book.
    fn body(&self) -> Vec<&str> {
        let TrialBody::OfBook(formulas) = &self.found.body else { return Vec::new() };
        let formulas = formulas.iter().filter_map(|&index| self.book.formulas.get(index));
        formulas.map(|formula| formula.name.as_str()).collect()
    }

    fn parts(&self) -> Result<Vec<TrialPart>, MixError> {
        let names = ToolNames::of(self.book);
        let whole = &self.found.whole;
        let base = whole.formula.base.iter().map(|part| WrittenDose {
            material: part.material,
            amount: part.amount,
            off: Ratio::from(0.0),
        });
        let mut parts = Vec::new();
        for dose in base.chain(whole.doses.iter().cloned()) {
            let material = self.book.materials.get(dose.material)?;
            let written = WrittenIn::of(&dose.amount);
            parts.push(TrialPart {
                material: material.name.clone(),
                kind: material.kind,
                side: self.side(&dose, material.kind),
                mass: text::mass(self.trial.mix().mass_of(dose.material)),
                dose: dose.amount,
                off: Shown::new(dose.off, fine_signed_percent(dose.off)),
                doubt: self.trial.doubt(dose.material, written, &names),
            });
        }
        parts.sort_by_key(|part| part.kind);
        Ok(parts)
    }

    fn side(&self, dose: &WrittenDose, kind: Kind) -> TrialSide {
        if kind == Kind::Plastisol {
            return TrialSide::Base;
        }
        let color = self.found.color.as_ref();
        let is_dosed = |doses: &[WrittenDose]| doses.iter().any(|it| it.material == dose.material);
        let in_color = color.is_some_and(|color| is_dosed(&color.doses));
        match (in_color, &self.found.body) {
            (false, _) => TrialSide::Body,
            (true, TrialBody::Own(body)) if is_dosed(&body.doses) => TrialSide::Both,
            (true, TrialBody::OfBook(formulas)) => {
                let mut formulas =
                    formulas.iter().filter_map(|&index| self.book.formulas.get(index));
                let is_of_body = formulas
                    .any(|formula| formula.doses.iter().any(|one| one.material == dose.material));
                if is_of_body { TrialSide::Both } else { TrialSide::Color }
            }
            (true, TrialBody::Own(_)) => TrialSide::Color,
        }
    }

    /// The answer in short lines: the cup, the formula, how sure it is, and what was rounded.
    fn lines(&self, response: &TrialResponse) -> Vec<String> {
        let taken = match response.taken.quantity > Mass::default() {
            true => format!(", after {} taken out", response.taken.text),
            false => String::new(),
        };
        let mut lines = Vec::from([format!(
            "In the cup: {}, {}{taken}.",
            response.mass.text,
            response.volume.on_both_scales()
        )]);
        let listed = |sides: &[TrialSide]| {
            let parts = response.cup.iter().filter(|part| sides.contains(&part.side));
            let parts = parts.map(|part| format!("{} {}", part.material, part.dose));
            parts.collect::<Vec<_>>().join(", ")
        };
        let per = response.per;
        // Doses as their formula has them: of a material of both sides, the color doses what the body does not.
        let doses = |formula: &WrittenFormula| {
            let doses = response.cup.iter().flat_map(|part| {
                let is_part = |dose: &&WrittenDose| {
                    let material = self.book.materials.get(dose.material);
                    material.is_ok_and(|material| material.name == part.material)
                };
                let doses = formula.doses.iter().filter(is_part);
                doses.map(|dose| format!("{} {}", part.material, dose.amount))
            });
            doses.collect::<Vec<_>>().join(", ")
        };
        if let Some(color) = &self.found.color {
            lines.push(format!("Color per {per}: {}.", doses(color)));
        }
        let base = listed(&[TrialSide::Base]);
        let is_both = |part: &TrialPart| part.side == TrialSide::Both;
        lines.push(match (&self.found.body, response.body.as_slice()) {
            (TrialBody::Own(body), _) => {
                let list = [base, doses(body)];
                let list: Vec<_> = list.into_iter().filter(|list| !list.is_empty()).collect();
                format!("Body, not in the book, per {per}: {}.", list.join(", "))
            }
            (_, []) => format!("Body: {base} alone."),
            (_, names) if response.cup.iter().any(is_both) => {
                format!("Body: {}.", names.join(" + "))
            }
            (_, names) => {
                let body = listed(&[TrialSide::Base, TrialSide::Body]);
                format!("Body: {} ({body}).", names.join(" + "))
            }
        });
        let unsure = || response.cup.iter().filter_map(|part| Some((part, part.doubt.as_ref()?)));
        let worst = unsure().max_by(|(_, a), (_, b)| {
            a.uncertainty.quantity.value.total_cmp(&b.uncertainty.quantity.value)
        });
        if let Some((_, worst)) = worst {
            let each = unsure()
                .map(|(part, doubt)| format!("{} ± {}", part.material, doubt.uncertainty.text));
            let each = each.collect::<Vec<_>>().join(", ");
            lines.push(format!("How sure: {each}; mostly {}.", worst.main_source));
        }
        let rounded = response.cup.iter().filter(|part| part.off.quantity.value != 0.0);
        let rounded: Vec<String> =
            rounded.map(|part| format!("{} {}", part.material, part.off.text)).collect();
        if !rounded.is_empty() {
            lines.push(format!("Rounded: {}.", rounded.join(", ")));
        }
        if response.overlap == Overlap::Add {
            lines.push("Combine it with its body by \"overlap\": \"add\".".to_string());
        }
        lines
    }
}

/// A small deviation in per cent with its sign, to a thousandth of one.
fn fine_signed_percent(off: Ratio) -> String {
    let thousandths = libm::round(off.value * 1e5);
    if thousandths == 0.0 { "0 %".to_string() } else { format!("{:+.3} %", thousandths / 1e3) }
}

#[cfg(test)]
mod tests;
