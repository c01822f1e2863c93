//! The next drop for a color.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::change::{Change, writing};
use super::color::{ShownDifference, ShownLab, ShownThrough};
use super::color_book::{BookColors, Measure, film, outside, thickness};
use super::{Open, request, response};
use crate::book::Book;
use crate::codes::code;
use crate::color::next_drop::{NextDrop, THE_EYE_DECIDES, Unit, Verdict};
use crate::color::pot::{ColorPot, Strength};
use crate::color::reading::Reading;
use crate::color::translucent::Backing;
use crate::document::book::BookDocument;
use crate::document::color::ColorEntry;
use crate::document::resolve::Resolver;
use crate::document::written::Written;
use crate::fault::Faults;
use crate::json::path::Path::{self, At};
use crate::json::reader::Name;
use crate::mix::Mix;
use crate::parameter::Parameter;
use crate::quantity::{Amount, Length, Mass, Ratio};
use crate::show::{Note, Shown, text};
use crate::trial::{Trial, TrialEntry};

request! {
    /// Asks for the next drops that bring a cup nearer to a color.
    ///
    /// The trial says what is in the cup, and how samples of it looked, in its log; `seen` is how it looks now. A cup of base
    /// alone gets a formula to begin with.
    pub struct ColorNextRequest {
        required {
            trial: TrialEntry,
        }
        optional {
            book: BookDocument,
            target_like: Name,
            seen: ColorEntry,
            close_enough: f64,
            leave_out: Vec<Name>,
            piece_thickness: Written<Length>,
            piece_mold: Name,
        }
        optional_named {
            target: ColorEntry = next_target,
        }
    }
}

response! {
    /// The next drops.
    pub struct ColorNextResponse {
        /// How far to trust it, in words.
        pub statement: String,
        /// What to do.
        pub verdict: Verdict,
        /// What to add now; empty if nothing.
        pub add: Vec<ColorAddition>,
        /// What would bring it all the way, if the model were right.
        pub all_the_way: Vec<ColorAddition>,
        /// Difference to the target now.
        pub now: ShownDifference,
        /// The color that is expected once it is added.
        pub expected: ShownLab,
        /// Standard uncertainties of its L*, a* and b*.
        pub expected_uncertainty: [f64; 3],
        /// Its difference to the target.
        pub after: ShownDifference,
        /// ΔE₀₀ that is expected to stay, whatever is added.
        pub stays_off: f64,
        /// Color of a piece of it now that light goes through, if its thickness was stated; `now` is for an opaque one.
        pub through_now: Option<ShownThrough>,
        /// The same once it is added.
        pub through_after: Option<ShownThrough>,
        /// The colorant that is too much already, if that is why more base is needed; else one drop of what is missing is too much.
        pub too_much: Option<String>,
        /// Base to add first, if more base is needed; none if not even 20 such pots would do.
        pub more_base: Option<Shown<Mass>>,
        /// Strengths of the colorants in the cup, corrected by its samples.
        pub strengths: Vec<ColorStrength>,
        /// What else to know of it.
        pub notes: Vec<Note>,
        /// The answer in short lines.
        pub text: Vec<String>,
    }
}

response! {
    /// Drops or spoons of one colorant.
    pub struct ColorAddition {
        /// Which.
        pub material: String,
        /// How many drops, or how much by spoon.
        pub amount: Amount,
        /// The same by the drops to count or the spoons to take: `1/4 tsp + 1/8 tsp`.
        pub measure: String,
        /// Their mass.
        pub mass: Shown<Mass>,
    }
}

response! {
    /// Strength of a colorant as this cup has shown it, next to its test pieces.
    pub struct ColorStrength {
        /// Which.
        pub material: String,
        /// Factors on its effect in the red, the green and the blue.
        pub factors: Vec<f64>,
        /// Standard uncertainty that they have in common.
        pub common: Shown<Ratio>,
        /// Standard uncertainty of each by itself.
        pub own: Shown<Ratio>,
        /// The change to the book that keeps it, to accept or not.
        pub write: Vec<Change>,
    }
}

impl ColorNextRequest {
    /// Follows the samples of the log, and looks for the next drops.
    ///
    /// # Errors
    /// Faults of the book; steps that cannot have been; a base without a color, a colorant in the cup without test pieces; colors
    /// outside sRGB; a thickness of a base of which the book does not say how light goes through it.
    pub fn answer(mut self, open: Open<'_>) -> Result<ColorNextResponse, Faults> {
        let book = open.book(self.book.take())?;
        let book = book.ready();
        let mut resolver = Resolver::new(book.system);
        let response = self.response(book, &mut resolver);
        resolver.finish(response)
    }

    fn response(&self, book: &Book, resolver: &mut Resolver) -> Option<ColorNextResponse> {
        let target = self.target(book, resolver);
        let thickness =
            thickness(self.piece_thickness.as_ref(), self.piece_mold.as_ref(), book, resolver);
        let seen = self.seen.as_ref().map(|seen| seen.read_at(&At("/seen"), resolver));
        let close = self.close_enough.unwrap_or(Parameter::CloseEnough.default_si());
        let close = resolver.keep(&At("/close_enough"), Parameter::CloseEnough.check_si(close));
        let trial = self.trial.resolve(book, resolver, &At("/trial"));
        let colors = trial
            .as_ref()
            .and_then(|trial| BookColors::of(trial.mix(), book, &At("/trial"), resolver));
        let (trial, colors, target, close) = (trial?, colors?, target?, close?);
        let through = match thickness? {
            Some(thickness) => Some((thickness, film(trial.mix(), book, &At("/trial"), resolver)?)),
            None => None,
        };
        let mut looks: Vec<(Mix, Reading)> = trial.looks().to_vec();
        if let Some(seen) = seen {
            looks.push((trial.mix().clone(), seen?.reading));
        }
        let base = resolver.keep(&At("/trial"), trial.mix().base_mass(&book.materials))?;
        let mut units = colors.units(base, book);
        let depth = through.as_ref().map(|(thickness, _)| *thickness);
        let mut notes = outside(trial.mix(), book, depth);
        notes.extend(not_measured(&colors, &units, book));
        self.leave_out(&colors, book, &mut units, resolver)?;
        let pot = self.followed(&colors, &trial, &looks, book, &mut notes, resolver)?;
        let next = resolver.keep(&At("/target"), pot.next(&target, &units, close))?;
        let shown = Show { colors: &colors, pot: &pot, units: &units, book, base };
        let mut response = shown.response(&next, !looks.is_empty(), notes);
        if let Some((thickness, film)) = &through {
            let mut seen = |add: &[u32]| {
                let over = |backing| pot.expected_over_with(add, &units, film, *thickness, backing);
                let white = resolver.keep(&At("/trial"), over(Backing::White))?;
                let black = resolver.keep(&At("/trial"), over(Backing::Black))?;
                Some(ShownThrough::of(*thickness, &white, &black))
            };
            response.through_now = Some(seen(&[])?);
            response.through_after = Some(seen(&next.add)?);
        }
        response.text = lines(&response);
        Some(response)
    }

    /// The color to come to: as stated, or that of a formula.
    fn target(&self, book: &Book, resolver: &mut Resolver) -> Option<Reading> {
        match (&self.target, &self.target_like) {
            (Some(target), None) => Some(target.read_at(&At("/target"), resolver)?.reading),
            (None, Some(name)) => {
                let path = At("/target_like");
                let mut names = book.formulas.iter().map(|formula| formula.name.as_str());
                let found = book.find_formula(&name.0).and_then(|place| book.formulas.get(place));
                let formula = resolver.find("formula", &path, &name.0, found, &mut names)?;
                if formula.color.is_none() {
                    resolver.fault(
                        code!("color-of-no-formula"),
                        &path,
                        &format_args!("The book does not say which color a piece of \"{}\" had.", formula.name),
                        &"Read a finished piece of it, and write its \"color\" at the formula; \"record\" offers it.",
                    );
                }
                formula.color
            }
            _ => {
                resolver.fault(
                    code!("color-target-or-like"),
                    &Path::ROOT,
                    &"The color to come to must be stated in one way.",
                    &"Give \"target\", or \"target_like\" with a formula of the book.",
                );
                None
            }
        }
    }

    /// Takes the colorants out that are not to be used.
    fn leave_out(
        &self,
        colors: &BookColors,
        book: &Book,
        units: &mut [Option<Unit>],
        resolver: &mut Resolver,
    ) -> Option<()> {
        let names = self.leave_out.as_deref().unwrap_or_default();
        resolver.each(&At("/leave_out"), names, |resolver, path, name| {
            let id = resolver.find_material(&book.materials, name, path)?;
            for (own, unit) in colors.ids.iter().zip(units.iter_mut()) {
                if *own == id {
                    *unit = None;
                }
            }
            Some(())
        })?;
        Some(())
    }

    /// The pot, corrected by each sample of it in turn.
    fn followed<'a>(
        &self,
        colors: &'a BookColors,
        trial: &Trial<'_>,
        looks: &[(Mix, Reading)],
        book: &Book,
        notes: &mut Vec<Note>,
        resolver: &mut Resolver,
    ) -> Option<ColorPot<'a>> {
        let path = At("/trial");
        let new = ColorPot::new(&colors.colorants, &colors.strengths);
        let mut pot = resolver.keep(&path, new)?;
        let stages = looks.iter().map(|(mix, seen)| (mix, Some(seen)));
        for (mix, seen) in stages.chain([(trial.mix(), None)]) {
            let Some(doses) = colors.doses(mix, book) else { continue };
            let base = resolver.keep(&path, mix.base_mass(&book.materials))?;
            let units = colors.units(base, book);
            // More base thins all colorants alike; the rest is what went in.
            let there = pot.doses();
            let stays = there.iter().zip(&doses).filter(|(there, _)| there.value > 0.0);
            let stays =
                stays.fold(1.0, |least: f64, (there, now)| least.min(now.value / there.value));
            if stays < 1.0 {
                resolver.keep(&path, pot.thin(stays))?;
            }
            let there = pot.doses();
            for (colorant, ((there, now), unit)) in there.iter().zip(&doses).zip(&units).enumerate()
            {
                let added = Ratio::from((now.value - there.value).max(0.0));
                // As if it were all drops or spoons: n = a/unit.
                let scatter = unit.map_or(Ratio::from(0.0), |unit| {
                    unit.uncertainty(added.value / unit.dose.value)
                });
                resolver.keep(&path, pot.add(colorant, added, scatter))?;
            }
            let Some(seen) = seen else { continue };
            let is_usual = resolver.keep(&path, pot.see(seen))?;
            if !is_usual {
                notes.push(Note {
                    code: code!("color-surprise").into(),
                    message: "Check first what went in, and that the piece was stirred, cooled and thick enough: a sample is further from what was expected than the errors allow.".into(),
                });
            }
        }
        Some(pot)
    }
}

/// An answer, to be shown.
struct Show<'a> {
    colors: &'a BookColors,
    pot: &'a ColorPot<'a>,
    units: &'a [Option<Unit>],
    book: &'a Book,
    base: Mass,
}

impl Show<'_> {
    fn response(&self, next: &NextDrop, was_seen: bool, notes: Vec<Note>) -> ColorNextResponse {
        let too_much = next.too_much.and_then(|colorant| self.name(colorant)).map(Into::into);
        let strengths = if was_seen { self.strengths() } else { Vec::new() };
        ColorNextResponse {
            statement: THE_EYE_DECIDES.to_string(),
            verdict: next.verdict,
            add: self.additions(&next.add),
            all_the_way: self.additions(&next.all_the_way),
            now: ShownDifference::from(&next.now),
            expected: next.expected.lab.into(),
            expected_uncertainty: next.expected.uncertainty(),
            after: ShownDifference::from(&next.after),
            stays_off: next.stays_off,
            too_much,
            more_base: next.more_base.map(|more| text::mass(self.base * more)),
            strengths,
            notes,
            through_now: None,
            through_after: None,
            text: Vec::new(),
        }
    }

    fn name(&self, colorant: usize) -> Option<&str> {
        let id = self.colors.ids.get(colorant)?;
        self.book.materials.get(*id).ok().map(|material| material.name.as_str())
    }

    fn additions(&self, counts: &[u32]) -> Vec<ColorAddition> {
        let counted =
            counts.iter().zip(self.units).enumerate().filter(|(_, (count, _))| **count > 0);
        let additions = counted.filter_map(|(colorant, (&count, unit))| {
            let mass = self.base * unit.as_ref()?.dose * f64::from(count);
            let material = self.name(colorant)?.into();
            let measure = Measure::of(*self.colors.ids.get(colorant)?, self.book)?;
            Some(ColorAddition {
                material,
                amount: measure.amount(count)?,
                measure: measure.words(count),
                mass: text::mass(mass),
            })
        });
        additions.collect()
    }

    /// Strengths of what is in the cup.
    fn strengths(&self) -> Vec<ColorStrength> {
        let doses = self.pot.doses();
        let there = doses.iter().enumerate().filter(|(_, dose)| dose.value > 0.0);
        let strengths = there.filter_map(|(colorant, _)| {
            let name = self.name(colorant)?;
            let Strength { factors, common, own } = self.pot.strength(colorant)?;
            // What a book keeps: a thousandth is far below any strength that is known.
            let factors: Vec<f64> = factors.iter().map(|x| libm::round(x * 1e3) / 1e3).collect();
            let (common, own) =
                (text::percent(Ratio::from(common)), text::percent(Ratio::from(own)));
            let value =
                serde_json::json!({ "factors": factors, "common": common.text, "own": own.text });
            let path = At("/materials");
            let write = writing(&path.key(name).key("strength"), value);
            Some(ColorStrength { material: name.into(), factors, common, own, write })
        });
        strengths.collect()
    }
}

/// Colorants that nothing on the bench can measure.
fn not_measured(colors: &BookColors, units: &[Option<Unit>], book: &Book) -> Vec<Note> {
    let none = colors.ids.iter().zip(units).filter(|(_, unit)| unit.is_none());
    let named = none.filter_map(|(&id, _)| book.materials.get(id).ok());
    let note = named.map(|material| Note {
        code: code!("color-no-measure").into(),
        message: format!(
            "\"{}\" cannot go in: the book has no drop of it, or the bench no spoon for it.",
            material.name
        ),
    });
    note.collect()
}

fn listed(additions: &[ColorAddition]) -> String {
    let each = additions.iter().map(|one| format!("{} {}", one.material, one.measure));
    each.collect::<Vec<_>>().join(", ")
}

/// The answer in short lines.
fn lines(response: &ColorNextResponse) -> Vec<String> {
    // What to do comes first: the cup is hot.
    let (first, more) = match response.verdict {
        Verdict::Add => (
            format!("Add: {}. Stir, cool a sample, and look again.", listed(&response.add)),
            Vec::from([
                format!("Expected then: {}.", response.after.text()),
                format!("Not at once: in all it may take {}.", listed(&response.all_the_way)),
            ]),
        ),
        Verdict::CloseEnough => ("Leave it: it is close enough.".into(), Vec::new()),
        Verdict::CannotTell => (
            "Leave it: what is left is less than these readings can tell. More pictures of both would tell more.".into(),
            Vec::new(),
        ),
        Verdict::MoreBase => {
            let why = match &response.too_much {
                Some(what) => format!("There is too much {what} in it"),
                None => "One drop or spoon of what is missing is too much for so little base".into(),
            };
            let first = match &response.more_base {
                Some(more) => format!("{why}. Add {} of base, stir, and ask again.", more.text),
                None => format!("{why}, more than 20 such pots would thin. Begin a new pot."),
            };
            (first, Vec::new())
        }
        Verdict::OutOfReach => (
            format!(
                "These colorants cannot make it: ΔE₀₀ {:.1} stays, whatever is added.",
                response.stays_off
            ),
            Vec::new(),
        ),
    };
    // Nothing can be taken out again: what is to be checked before comes before it.
    let is_surprise = |note: &&Note| note.code == String::from(code!("color-surprise"));
    let surprises = response.notes.iter().filter(is_surprise).map(|note| note.message.clone());
    let mut lines: Vec<String> = surprises.collect();
    lines.extend([first, format!("Now: {}.", response.now.text())]);
    lines.extend(more);
    let through = [("A piece now. ", &response.through_now), ("Then. ", &response.through_after)];
    let through = through.into_iter().filter_map(|(when, it)| Some((when, it.as_ref()?)));
    let is_more = response.verdict == Verdict::Add;
    let through = through.take(if is_more { 2 } else { 1 });
    lines.extend(through.map(|(when, it)| format!("{when}{}", it.text())));
    let others = response.notes.iter().filter(|note| !is_surprise(note));
    lines.extend(others.map(|note| note.message.clone()));
    lines.push(response.statement.clone());
    lines
}

#[cfg(test)]
mod tests;
