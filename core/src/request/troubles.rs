//! Bench troubles and what helps.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::{Open, request, response};
use crate::book::Book;
use crate::caution::Caution;
use crate::codes::{Code, code};
use crate::document::PlanDocument;
use crate::document::book::BookDocument;
use crate::document::resolve::Resolver;
use crate::fault::Faults;
use crate::formula::WrittenIn;
use crate::formula::write::mass_of_base;
use crate::json::path::Path::{self, At};
use crate::json::reader::Name;
use crate::material::{Kind, Material, MaterialError};
use crate::mix::{MaterialId, Mix, MixError, reference_temperature};
use crate::parameter::Parameter;
use crate::plan::mispour::meant::Meant;
use crate::plan::tool_names::ToolNames;
use crate::plan::weigh::{Addition, Tools, list};
use crate::plan::{Plan, Pot, Stage, Weigh};
use crate::process::settling::{Grain, Suspension};
use crate::quantity::{Amount, Length, Mass, MassDensity, Measurable, Ratio, Volume};
use crate::show::{Calculated, Note, because, number, text};
use crate::trouble::{SOURCE, Trouble};

request! {
    /// Asks what helps against a trouble at the bench, or against any.
    ///
    /// What can be calculated is, where it is asked for with its numbers: softener or hardener from `hardness_now` and
    /// `hardness_wanted` for `base_in_pot`, and all else from a `pot` of the plan.
    pub struct TroublesRequest {
        required {}
        optional {
            book: BookDocument,
            plan: PlanDocument,
            trouble: Trouble,
            pot: Name,
            stage: u32,
            base_in_pot: Amount,
            hardness_now: f64,
            hardness_wanted: f64,
            with_material: Name,
        }
    }
}

response! {
    /// Bench troubles and what helps.
    pub struct TroublesResponse {
        /// Each trouble.
        pub troubles: Vec<TroubleRow>,
        /// Where what is said comes from.
        pub source: String,
        /// The answer in short lines.
        pub text: Vec<String>,
    }
}

response! {
    /// A trouble and what helps.
    pub struct TroubleRow {
        /// Which.
        pub trouble: Trouble,
        /// How it shows.
        pub sign: String,
        /// Likely causes, the likeliest first.
        pub causes: Vec<String>,
        /// What helps, each a sentence, in the order in which to try it.
        pub helps: Vec<String>,
        /// What was calculated for this book and pot, each a sentence.
        pub calculated: Vec<String>,
        /// What to add, in measures of the bench.
        pub add: Vec<Weigh>,
        /// What could not be calculated, and what it takes.
        pub not_calculated: Vec<Note>,
        /// Dangers.
        pub cautions: Vec<Caution>,
    }
}

impl TroublesRequest {
    /// Lists the troubles.
    ///
    /// # Errors
    /// Faults of the book; unknown names; readings outside the shop's points.
    pub fn answer(mut self, open: Open<'_>) -> Result<TroublesResponse, Faults> {
        let loaded = open.book(self.book.take())?;
        let plan = match self.pot.is_some() || self.plan.is_some() {
            true => Some(open.plan(self.plan.take())?),
            false => None,
        };
        let book = loaded.ready();
        let mut resolver = Resolver::new(book.system);
        let plan = plan.as_deref().map(|plan| &plan.plan);
        let response = self.response(plan, book, &mut resolver);
        resolver.finish(response)
    }

    fn response(
        &self,
        plan: Option<&Plan>,
        book: &Book,
        resolver: &mut Resolver,
    ) -> Option<TroublesResponse> {
        let pot = match plan {
            Some(plan) => Some(self.pot_of(plan, resolver)?),
            None => None,
        };
        let at = Bench { book, pot, base: self.base(pot, book, resolver)? };
        let asked = self.trouble.as_ref().map_or(Trouble::ALL, core::slice::from_ref);
        let mut troubles = Vec::with_capacity(asked.len());
        for trouble in asked {
            troubles.push(self.row(*trouble, &at, resolver)?);
        }
        let text = troubles.iter().flat_map(|row| lines(row, asked.len() == 1)).collect();
        Some(TroublesResponse { troubles, source: SOURCE.to_string(), text })
    }

    /// The pot of the plan and its stage.
    fn pot_of<'p>(&self, plan: &'p Plan, resolver: &mut Resolver) -> Option<(&'p Pot, &'p Stage)> {
        let mut names = plan.pots.iter().map(|pot| pot.pot.as_str());
        let Some(name) = &self.pot else {
            let letters = names.collect::<Vec<_>>().join(", ");
            resolver.fault(
                code!("missing-field"),
                &Path::ROOT,
                &"\"pot\" is missing: it is not said which pot of the plan it is.",
                &format_args!("Add \"pot\", one of: {letters}."),
            );
            return None;
        };
        let known = plan.pots.iter().find(|pot| pot.pot == name.0);
        let pot = resolver.find("pot", &At("/pot"), &name.0, known, &mut names)?;
        let found = pot.stages.get(self.index());
        if found.is_none() {
            resolver.fault(
                code!("no-such-stage"),
                &At("/stage"),
                &format_args!("Pot {} has no stage {}.", pot.pot, self.stage.unwrap_or(1)),
                &format_args!("It has {}.", pot.stages.len()),
            );
        }
        found.map(|stage| (pot, stage))
    }

    /// The stage, counted from 0.
    fn index(&self) -> usize {
        let index = |stage| usize::try_from(stage).unwrap_or(usize::MAX).saturating_sub(1);
        self.stage.map_or(0, index)
    }

    /// Mass of the base in the pot; `Some(None)` if it is not known.
    fn base(
        &self,
        pot: Option<(&Pot, &Stage)>,
        book: &Book,
        resolver: &mut Resolver,
    ) -> Option<Option<Mass>> {
        let Some(amount) = &self.base_in_pot else {
            let Some((pot, _)) = pot else { return Some(None) };
            let meant = resolver.keep(&At("/pot"), Meant::of(pot, self.index(), book))?;
            let whole = meant.map_or(Ok(Mix::new()), |meant| meant.whole());
            let whole = resolver.keep(&At("/pot"), whole)?;
            return Some(resolver.keep(&At("/pot"), whole.base_mass(&book.materials)));
        };
        let mut base = Mix::new();
        if let Some(default) = book.default_base {
            resolver.keep(&At("/base_in_pot"), base.add(default, Mass::from_si(1.0)))?;
        }
        let mass = mass_of_base(*amount, &base, &book.materials, book.system);
        let mass = resolver.keep(&At("/base_in_pot"), mass)?;
        if mass <= Mass::default() {
            resolver.fault(
                code!("out-of-range"),
                &At("/base_in_pot"),
                &format_args!("{amount} is not above zero."),
                &"Write an amount above zero, or leave the field out.",
            );
            return None;
        }
        Some(Some(mass))
    }

    fn row(&self, trouble: Trouble, at: &Bench<'_>, resolver: &mut Resolver) -> Option<TroubleRow> {
        let remedy = trouble.remedy();
        let texts = |list: &[&str]| list.iter().map(ToString::to_string).collect();
        let mut row = TroubleRow {
            trouble,
            sign: remedy.sign.to_string(),
            causes: texts(remedy.causes),
            helps: texts(remedy.helps),
            calculated: Vec::new(),
            add: Vec::new(),
            not_calculated: Vec::new(),
            cautions: remedy.cautions.to_vec(),
        };
        match trouble {
            Trouble::TooThick => self.harder_or_softer(Kind::Softener, at, &mut row, resolver)?,
            Trouble::TooSoft => self.harder_or_softer(Kind::Hardener, at, &mut row, resolver)?,
            Trouble::SinkingSalt => at.salt(&mut row),
            Trouble::Yellowing => at.heat(&mut row),
            Trouble::Dents => at.dents(&mut row),
            Trouble::AirInNoses => at.air(&mut row),
            _ => {}
        }
        Some(row)
    }

    /// How much softener, or hardener, takes the pot from one reading to another.
    fn harder_or_softer(
        &self,
        kind: Kind,
        at: &Bench<'_>,
        row: &mut TroubleRow,
        resolver: &mut Resolver,
    ) -> Option<()> {
        let Some((id, material)) = self.with(kind, at.book, resolver)? else {
            row.not_calculated.push(Note {
                code: code!("no-hardness-points").to_string(),
                message: format!(
                    "How much {kind} is not calculated: the book has no readings of one. Give it its \"hardness\": a scale, also one of your own, and two pieces or more."
                ),
            });
            return Some(());
        };
        let Some(measured) = &material.hardness else { return Some(()) };
        let (Some(now), Some(wanted)) = (self.hardness_now, self.hardness_wanted) else {
            row.not_calculated.push(Note {
                code: code!("no-hardness-reading").to_string(),
                message: format!(
                    "How much {} is not calculated: give \"hardness_now\" and \"hardness_wanted\" on the scale {}.",
                    material.name,
                    measured.scale()
                ),
            });
            return Some(());
        };
        let in_range = [(Parameter::HardnessNow, now), (Parameter::HardnessWanted, wanted)].map(
            |(parameter, reading)| {
                let path = Path::ROOT.key(parameter.name());
                resolver.keep(&path, parameter.check_si(reading))
            },
        );
        let [Some(now), Some(wanted)] = in_range else { return None };
        let before = resolver.keep(&At("/hardness_now"), measured.ratio(now))?;
        let after = resolver.keep(&At("/hardness_wanted"), measured.ratio(wanted))?;
        let more = after - before;
        let from_to =
            format!("from {} to {} on the scale {}", number(now), number(wanted), measured.scale());
        if more <= Ratio::default() {
            row.calculated.push(format!(
                "{}: going {from_to} takes less of it, not more. It cannot be taken out.",
                material.name
            ));
            self.dilute(before, after, at, row);
            return Some(());
        }
        let Some(base) = at.base else {
            row.calculated.push(format!(
                "{}: {} more by mass of base, {from_to}.",
                material.name,
                text::percent(more).text
            ));
            return Some(());
        };
        let wanted = base * more.value;
        let addition = Addition {
            material: id,
            written: WrittenIn::Volume,
            wanted,
            total: base * after.value,
        };
        let names = ToolNames::of(at.book);
        let listed = list(&[addition], None, at.book, &names);
        let listed = resolver.keep(&At("/base_in_pot"), listed)?;
        row.add = listed.iter().map(|one| one.shown(Tools::new(&names, at.book))).collect();
        let measure = row.add.first().map(|weigh| weigh.best.measure.clone()).unwrap_or_default();
        row.calculated.push(format!(
            "{}: add {measure}, {from_to}, by the shop's own points. Half of it first, then a test piece.",
            material.name
        ));
        Some(())
    }

    /// How much base without softener thins too much of it.
    fn dilute(&self, before: Ratio, after: Ratio, at: &Bench<'_>, row: &mut TroubleRow) {
        let Some(base) = at.base.filter(|_| after > Ratio::default()) else { return };
        let more = base * ((before / after).value - 1.0);
        row.calculated.push(format!(
            "Base without it would: {} more, if base may go in and the cup has room. All other doses thin with it.",
            text::mass(more).text
        ));
    }

    /// The softener or hardener to use: the one asked for, else the first that the book has readings of.
    fn with<'b>(
        &self,
        kind: Kind,
        book: &'b Book,
        resolver: &mut Resolver,
    ) -> Option<Option<(MaterialId, &'b Material)>> {
        let measured = || book.materials.iter().filter(|(_, it)| it.hardness.is_some());
        let Some(name) = &self.with_material else {
            // Too much softener shows in its own readings, if there is no hardener.
            let own = measured().find(|(_, material)| material.kind == kind);
            return Some(own.or_else(|| measured().next()));
        };
        let path = At("/with_material");
        let id = resolver.find_material(&book.materials, name, &path)?;
        let material = resolver.keep(&path, book.materials.get(id))?;
        if material.hardness.is_none() {
            resolver.fault(
                code!("no-hardness-points"),
                &path,
                &format_args!("The book has no readings of \"{}\".", name.0),
                &"Give it its \"hardness\" in the book: a scale and two points or more.",
            );
            return None;
        }
        Some(Some((id, material)))
    }
}

/// The shop and the pot that a trouble is at.
struct Bench<'a> {
    book: &'a Book,
    pot: Option<(&'a Pot, &'a Stage)>,
    base: Option<Mass>,
}

impl Bench<'_> {
    /// How often to stir.
    fn salt(&self, row: &mut TroubleRow) {
        if let Some((pot, stage)) = self.pot {
            row.calculated.push(match &stage.stir_every {
                Some(every) if every.text == "all the time" => {
                    format!("Pot {}: stir all the time.", pot.pot)
                }
                Some(every) => format!("Pot {}: stir at least every {}.", pot.pot, every.text),
                None => format!("Pot {}: stir before every load.", pot.pot),
            });
            return;
        }
        let salts = self.book.materials.iter().filter(|(_, it)| it.kind == Kind::Salt);
        for (_, salt) in salts {
            match self.stir_every(salt) {
                Ok(sentence) => row.calculated.push(sentence),
                Err(note) => row.not_calculated.push(note),
            }
        }
    }

    /// How often to stir a salt in the base in the pot, or in a cup of it, the melt as thin as it may be.
    fn stir_every(&self, salt: &Material) -> Result<String, Note> {
        let missing = |error: MaterialError| because(&error);
        let lacks = |code: Code, what: &str| Note {
            code: code.to_string(),
            message: format!("How often to stir {} is not calculated: {what}", salt.name),
        };
        let Some(grain) = &salt.grain else {
            return Err(lacks(
                code!("no-grain"),
                "give it its \"grain\", the sieve that it just passes.",
            ));
        };
        let base = self.book.default_base.and_then(|id| self.book.materials.get(id).ok());
        let base = base.ok_or_else(|| because(&MixError::NoBase))?;
        let Some((viscosity, _)) = base.viscosity else {
            let what =
                format!("give {} its \"viscosity\". Until then stir before every load.", base.name);
            return Err(lacks(code!("no-viscosity"), &what));
        };
        let cold = base.true_density("how salt sinks").map_err(missing)?.get();
        let solid = salt.true_density("how it sinks").map_err(missing)?.get();
        let middle = base.shot_window.map_or_else(reference_temperature, |window| window.middle());
        let warmer = middle.si() - reference_temperature().si();
        let melt: MassDensity = cold / (1.0 + base.expansion_or_none().si() * warmer);
        let (size, solids) = (grain.value, Ratio::default());
        let grains = Suspension { grain: Grain::Cube, size, solid, melt, solids };
        let volume = self.base.map_or(Volume::from_si(CUP), |base| base / cold);
        let depth = libm::cbrt(4.0 * volume.si() / core::f64::consts::PI);
        let unstirred = Ratio::from(Parameter::Unstirred.default_si());
        let every = grains
            .settling(viscosity)
            .and_then(|settling| settling.stir_every(Length::from_si(depth), unstirred));
        let every = text::at_most_five_seconds(every.map_err(|error| because(&error))?).text;
        let stir = match every.as_str() {
            "all the time" => "stir all the time".to_string(),
            every => format!("stir at least every {every}"),
        };
        let volume = text::volume(volume, self.book.system).on_both_scales();
        Ok(format!("{}: in {volume} of base {stir}.", salt.name))
    }

    /// The heat that is left.
    fn heat(&self, row: &mut TroubleRow) {
        let Some((pot, _)) = self.pot else {
            row.not_calculated.push(Note {
                code: code!("no-pot").to_string(),
                message: "The heat that is left is that of a pot: name a \"pot\" of the plan."
                    .to_string(),
            });
            return;
        };
        match &pot.heats.budget {
            Some(Calculated::Known(spent)) => row.calculated.push(format!(
                "Pot {}: heat used {} of {} (at {}), {} left.",
                pot.pot, spent.spent.text, spent.budget.text, spent.at.text, spent.left.text
            )),
            Some(Calculated::Unknown(why)) => row.not_calculated.push(why.clone()),
            None => row.not_calculated.push(Note {
                code: code!("no-heat-budget").to_string(),
                message: format!("Pot {}: no heat budget was given for its plastisol.", pot.pot),
            }),
        }
    }

    /// The molds whose sprue cannot feed their pieces.
    fn dents(&self, row: &mut TroubleRow) {
        let Some((pot, stage)) = self.pot else {
            let unknown = self.book.molds.iter().filter(|mold| mold.feed.is_none());
            let unknown: Vec<&str> = unknown.map(|mold| mold.name.as_str()).collect();
            if !unknown.is_empty() {
                row.not_calculated.push(Note {
                    code: code!("feed-not-known").to_string(),
                    message: format!(
                        "No feed share stated for {}: weigh ten pieces to measure it.",
                        unknown.join(", ")
                    ),
                });
            }
            return;
        };
        for draw in &stage.draws {
            if draw.pieces.iter().any(|pieces| pieces.sinks_in) {
                row.calculated.push(format!(
                    "Pot {}: the sprue of {} cannot feed its pieces. Top off every shot.",
                    pot.pot, draw.mold
                ));
            }
        }
        if row.calculated.is_empty() {
            row.calculated.push(format!(
                "Pot {}: its sprues hold enough to feed the pieces. Hold until the sprue is set.",
                pot.pot
            ));
        }
    }

    /// The vacuum that a pot is degassed by.
    fn air(&self, row: &mut TroubleRow) {
        if let Some((pot, _)) = self.pot
            && let Some(Calculated::Known(degas)) = &pot.degas
        {
            row.calculated.push(format!(
                "Pot {}: degas at {}, the cup filled to {} at most.",
                pot.pot, degas.gauge.text, degas.fill_mark.text
            ));
        }
    }
}

/// A US cup, in cubic meters: the depth that is stirred if nothing is said of the pot.
const CUP: f64 = 2.365_882_365e-4;

/// A trouble in short lines: one, or with all that helps.
fn lines(row: &TroubleRow, is_alone: bool) -> Vec<String> {
    let mut lines = Vec::new();
    let calculated = row.calculated.join(" ");
    if !is_alone {
        let first = row.helps.first().cloned().unwrap_or_default();
        let calculated =
            if calculated.is_empty() { String::new() } else { format!(" {calculated}") };
        lines.push(format!("{}: {} {first}{calculated}", row.trouble, row.sign));
        return lines;
    }
    lines.push(row.sign.clone());
    lines.push(format!("Likely: {}.", row.causes.join("; ")));
    lines.extend(row.helps.iter().cloned());
    lines.extend(row.calculated.iter().cloned());
    lines.extend(row.not_calculated.iter().map(|note| note.message.clone()));
    lines.extend(row.cautions.iter().map(|caution| caution.sentence().to_string()));
    lines.push(format!("({SOURCE})"));
    lines
}

#[cfg(test)]
mod tests;
