//! The colorants of a book, calibrated in a base, and what of a mix the model leaves out.

use alloc::borrow::Cow;
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use crate::book::Book;
use crate::codes::code;
use crate::color::kubelka_munk::{Surface, k_over_s, reflectance};
use crate::color::lab::SRGB_BANDS;
use crate::color::match_color::{Colorants, TestPiece};
use crate::color::next_drop::Unit;
use crate::color::pot::Strength;
use crate::color::translucent::BaseFilm;
use crate::document::resolve::Resolver;
use crate::document::written::Written;
use crate::flake::Flake;
use crate::json::path::Path::{self, At};
use crate::json::reader::Name;
use crate::material::{Kind, Material};
use crate::mix::{MaterialId, Mix, Phase};
use crate::parameter::Parameter;
use crate::quantity::{
    Amount, Dimension, Length, Mass, Measurable, Ratio, Rational, Unit as AmountUnit, Volume,
};
use crate::show::{Note, text};

/// Colorants of a book in the base of a pot.
pub(super) struct BookColors {
    pub(super) colorants: Colorants,
    /// Their materials, in the same order.
    pub(super) ids: Vec<MaterialId>,
    pub(super) strengths: Vec<Strength>,
}

impl BookColors {
    /// Calibrates all colorants that have test pieces, in the plastisols of `mix`; `path` is where the mix is asked for.
    pub(super) fn of(
        mix: &Mix,
        book: &Book,
        path: &Path<'_>,
        resolver: &mut Resolver,
    ) -> Option<Self> {
        let base = base_reading(mix, book, path, resolver)?;
        let new = Colorants::new(&SRGB_BANDS, Surface::NONE, &base);
        let mut colorants = resolver.keep(path, new)?;
        let (mut ids, mut strengths) = (Vec::new(), Vec::new());
        resolver.whole(|resolver| {
            for (id, material) in book.materials.iter() {
                if material.let_downs.is_empty() || material.fluorescent {
                    continue;
                }
                let pieces: Vec<_> = material.let_downs.iter().map(TestPiece::as_let_down).collect();
                let own = At("/book/materials");
                let own = own.key(&material.name);
                if resolver.keep(&own.key("let_downs"), colorants.add(&pieces)).is_some() {
                    ids.push(id);
                    strengths.push(material.strength.clone().unwrap_or_default());
                }
            }
            for portion in mix.portions().iter().filter(|portion| portion.mass > Mass::default()) {
                let material = resolver.keep(path, book.materials.get(portion.material))?;
                let is_unknown = material.let_downs.is_empty() && !material.fluorescent;
                if material.kind == Kind::Colorant && is_unknown {
                    resolver.fault(
                        code!("color-not-let-down"),
                        path,
                        &format_args!("\"{}\" is in it, and the book has no test pieces of it.", material.name),
                        &"Pour two, as \"let-down-series\" says, and write them as its \"let_downs\".",
                    );
                }
            }
            Some(())
        })?;
        Some(Self { colorants, ids, strengths })
    }

    /// Mass per mass of base of each colorant in `mix`.
    pub(super) fn doses(&self, mix: &Mix, book: &Book) -> Option<Vec<Ratio>> {
        let base = mix.base_mass(&book.materials).ok()?;
        (base > Mass::default())
            .then(|| self.ids.iter().map(|&id| mix.mass_of(id) / base).collect())
    }

    /// One drop, or the smallest spoon, of each colorant per `base`; `None` where the book does not say what it weighs.
    pub(super) fn units(&self, base: Mass, book: &Book) -> Vec<Option<Unit>> {
        let each = self.ids.iter().map(|&id| Some(Measure::of(id, book)?.unit(base)));
        each.collect()
    }
}

/// More drops than this are as well weighed (common practice, no source).
const MANY_DROPS: u32 = 30;

/// What a colorant is counted in.
pub(super) struct Measure<'a> {
    /// Mass of one.
    pub(super) mass: Mass,
    /// Relative standard uncertainty of one.
    pub(super) scatter: Ratio,
    /// The spoons of the bench, the smallest first, if it is counted in the smallest of them.
    spoons: Option<Vec<Volume>>,
    book: &'a Book,
}

impl<'a> Measure<'a> {
    /// Drops; of a powder, and of what the book's formulas dose by volume alone, the smallest spoon of the bench.
    pub(super) fn of(id: MaterialId, book: &'a Book) -> Option<Self> {
        let material = book.materials.get(id).ok()?;
        if !is_spooned(id, material, book) {
            let mass = material.mass_of(&drops(1)?, book.system, "adding a drop").ok()?;
            return Some(Self { mass, scatter: book.unsure.drop_scatter, spoons: None, book });
        }
        let mut spoons = book.tools.spoons().to_vec();
        spoons.sort_by(|one, other| one.value.total_cmp(&other.value));
        let smallest = *spoons.first()?;
        let mass = material.by_volume("adding a spoonful").ok()?.density() * smallest;
        Some(Self { mass, scatter: book.unsure.spoon_level, spoons: Some(spoons), book })
    }

    /// One of it per `base`.
    pub(super) fn unit(&self, base: Mass) -> Unit {
        let together = self.spoons.is_some();
        Unit { dose: self.mass / base, scatter: self.scatter, together }
    }

    /// So many of it as one amount: `3 drops`, `3/8 tsp`.
    pub(super) fn amount(&self, count: u32) -> Option<Amount> {
        let Some(spoons) = &self.spoons else { return drops(count) };
        let one: Amount = text::household(*spoons.first()?, self.book.system).parse().ok()?;
        let count = Rational::from_int(i64::from(count));
        Amount::new(one.value().checked_mul(count)?, one.unit()).ok()
    }

    /// The same with the spoons to take: `1/4 tsp + 1/8 tsp`; of drops, their number, and their mass where they are many.
    pub(super) fn words(&self, count: u32) -> String {
        let Some(spoons) = &self.spoons else {
            let counted = drops(count).map(|amount| amount.to_string()).unwrap_or_default();
            if count <= MANY_DROPS || self.book.tools.balance().is_none() {
                return counted;
            }
            return format!("{counted} or {}", text::mass(self.mass * f64::from(count)).text);
        };
        let smallest = spoons.first().copied().unwrap_or_default();
        let (mut left, mut parts) = (count, Vec::new());
        for spoon in spoons.iter().rev() {
            let ratio = spoon.value / smallest.value;
            let whole = libm::round(ratio);
            // A spoon that is not a multiple of the smallest has no part in it.
            if (ratio - whole).abs() > 1e-6 || !(1.0..=1e6).contains(&whole) {
                continue;
            }
            // Whole and in range: nothing is cut off.
            let holds = whole as u32;
            let times = left.checked_div(holds).unwrap_or_default();
            left = left.saturating_sub(times.saturating_mul(holds));
            let name = text::household(*spoon, self.book.system);
            match times {
                0 => {}
                1 => parts.push(name),
                _ => parts.push(format!("{times} × {name}")),
            }
        }
        parts.join(" + ")
    }
}

/// Whether a colorant is measured by spoon: a powder without a drop, or one that formulas dose by volume alone.
fn is_spooned(id: MaterialId, material: &Material, book: &Book) -> bool {
    let doses = || book.formulas.iter().flat_map(|formula| &formula.doses);
    let of_it = || doses().filter(|dose| dose.material == id);
    let by_volume = of_it().any(|dose| dose.amount.dimension() == Dimension::VOLUME);
    let by_drops = of_it().any(|dose| dose.amount.drops().is_some());
    (material.is_scooped() && material.drop.is_none()) || (by_volume && !by_drops)
}

/// How thick a piece is, if it is asked for: as stated, or by its mold.
#[allow(clippy::option_option)] // not asked for, and not known
pub(super) fn thickness(
    stated: Option<&Written<Length>>,
    mold: Option<&Name>,
    book: &Book,
    resolver: &mut Resolver,
) -> Option<Option<Length>> {
    match (stated, mold) {
        (None, None) => Some(None),
        (Some(stated), None) => resolver.given(Parameter::PieceThickness, stated).map(Some),
        (None, Some(name)) => {
            let path = At("/piece_mold");
            let mut names = book.molds.iter().map(|mold| mold.name.as_str());
            let found = book.molds.iter().find(|mold| mold.name == name.0);
            let mold = resolver.find("mold", &path, &name.0, found, &mut names)?;
            if mold.section.is_none() {
                resolver.fault(
                    code!("mold-no-thickness"),
                    &path,
                    &format_args!("The book does not say how thick pieces of \"{}\" are.", mold.name),
                    &"Give the mold a \"body\", or a \"section\" under \"cooling\"; or give \"piece_thickness\" here.",
                );
            }
            mold.section.map(|section| Some(section.thickness()))
        }
        (Some(_), Some(_)) => {
            resolver.fault(
                code!("thickness-or-mold"),
                &At("/piece_mold"),
                &"How thick the piece is must be stated in one way.",
                &"Give \"piece_thickness\" or \"piece_mold\".",
            );
            None
        }
    }
}

/// How light goes through the plastisols of a mix.
pub(super) fn film(
    mix: &Mix,
    book: &Book,
    path: &Path<'_>,
    resolver: &mut Resolver,
) -> Option<BaseFilm> {
    let mut parts = Vec::new();
    for (material, mass) in plastisols(mix, book, path, resolver)? {
        let Some(film) = &material.film else {
            resolver.fault(
                code!("color-no-backings"),
                path,
                &format_args!("The book does not say how light goes through \"{}\".", material.name),
                &"Pour a thin test piece of it alone, read it over white and over black, and write it as \"over_backings\".",
            );
            return None;
        };
        parts.push((mass.value, film));
    }
    resolver.keep(path, BaseFilm::mix(&parts))
}

/// A number of drops.
pub(super) fn drops(count: u32) -> Option<Amount> {
    Amount::new(Rational::from_int(i64::from(count)), AmountUnit::DROP).ok()
}

/// What the plastisols of a mix reflect, by the mean of their K/S.
fn base_reading(
    mix: &Mix,
    book: &Book,
    path: &Path<'_>,
    resolver: &mut Resolver,
) -> Option<[f64; 3]> {
    let (mut sum, mut mass) = ([0.0; 3], Mass::default());
    for (material, share) in plastisols(mix, book, path, resolver)? {
        let own = k_over_s_of(material, path, resolver)?;
        own.iter().zip(&mut sum).for_each(|(q, sum)| *sum += share.value * q);
        mass += share;
    }
    if mass <= Mass::default() {
        return None;
    }
    let mut base = [0.0; 3];
    for (base, sum) in base.iter_mut().zip(sum) {
        *base = resolver.keep(path, reflectance(sum / mass.value))?;
    }
    Some(base)
}

/// K/S of a plastisol alone, by its color, else by a thin piece over two backings, which shows it as well.
fn k_over_s_of(material: &Material, path: &Path<'_>, resolver: &mut Resolver) -> Option<Vec<f64>> {
    if let Some(color) = &material.color {
        let read = resolver.keep(path, color.lab.srgb())?.linear();
        return read.iter().map(|band| resolver.keep(path, k_over_s(*band))).collect();
    }
    if let Some(film) = &material.film {
        return Some(film.k_over_s());
    }
    resolver.fault(
        code!("color-base-not-known"),
        path,
        &format_args!("The book has no \"color\" of \"{}\" alone.", material.name),
        &"Pour a test piece of the base alone, and write its \"color\", or \"over_backings\" of a thin one, at the material.",
    );
    None
}

/// The plastisols of a mix and their masses.
fn plastisols<'b>(
    mix: &Mix,
    book: &'b Book,
    path: &Path<'_>,
    resolver: &mut Resolver,
) -> Option<Vec<(&'b Material, Mass)>> {
    let mut found = Vec::new();
    for portion in mix.portions().iter().filter(|portion| portion.mass > Mass::default()) {
        let material = resolver.keep(path, book.materials.get(portion.material))?;
        if material.kind == Kind::Plastisol {
            found.push((material, portion.mass));
        }
    }
    Some(found)
}

/// What is in a mix that the model does not have; flake with the share of the surface that it takes, seen through `depth`,
/// else through each mm.
pub(super) fn outside(mix: &Mix, book: &Book, depth: Option<Length>) -> Vec<Note> {
    let mut notes = Vec::new();
    for portion in mix.portions().iter().filter(|portion| portion.mass > Mass::default()) {
        let Ok(material) = book.materials.get(portion.material) else { continue };
        let why: Cow<'_, str> = match material.kind {
            Kind::Colorant if material.fluorescent => "it gives light of its own".into(),
            Kind::Pearl => "pearl shines by its angle".into(),
            Kind::Flake => flake_hides(material, portion.mass, mix, book, depth).into(),
            Kind::Salt => "salt clouds the piece".into(),
            Kind::Other => "it is not known how it looks".into(),
            _ => continue,
        };
        notes.push(Note {
            code: code!("color-outside-model").into(),
            message: format!("\"{}\" is outside the model of the color: {why}.", material.name),
        });
    }
    notes
}

/// Which share of the surface a flake takes.
fn flake_hides(
    material: &Material,
    mass: Mass,
    mix: &Mix,
    book: &Book,
    depth: Option<Length>,
) -> String {
    let through = depth.unwrap_or_else(|| Length::from_si(1e-3));
    let hides = || -> Option<Ratio> {
        let film = material.true_density("the share of flake").ok()?;
        let flake = Flake::new(material.cut?, material.thickness?, film, None).ok()?;
        let volume = mix.volume(&book.materials, Phase::Liquid).ok()?;
        flake.hides(mass, volume, through).ok()
    };
    match (hides(), depth) {
        (Some(share), Some(depth)) => format!(
            "flake is seen by itself, and takes about {} of the surface of a piece of {}",
            text::percent(share).text,
            text::millimeters(depth).text
        ),
        (Some(share), None) => format!(
            "flake is seen by itself, and takes about {} of the surface for each mm that one sees into the piece",
            text::percent(share).text
        ),
        (None, _) => {
            "flake is seen by itself; with its cut, film thickness and density the book would give its share of the surface".into()
        }
    }
}

#[cfg(test)]
mod tests {

    use rstest::rstest;
    use serde_json::{Value, json};

    use super::*;
    use crate::document::LoadedBook;

    const BOOK: &str = include_str!("../../examples/demo/book.json");

    /// Milliliters of an eighth of a teaspoon.
    const EIGHTH: f64 = 4.928_921_593_75 / 8.0;

    fn spooned<'a>(book: &'a Book, eighths: &[f64]) -> Measure<'a> {
        let spoons = eighths.iter().map(|size| Volume::from_si(size * EIGHTH * 1e-6)).collect();
        let scatter = Ratio::from(0.03);
        Measure { mass: Mass::from_si(1e-3), scatter, spoons: Some(spoons), book }
    }

    /// The largest spoons first; 24 eighths of a teaspoon are a tablespoon.
    #[rstest]
    #[case(1, "1/8 tsp", "1/8 tsp")]
    #[case(2, "1/4 tsp", "1/4 tsp")]
    #[case(3, "1/4 tsp + 1/8 tsp", "3/8 tsp")]
    #[case(23, "2 × 1 tsp + 1/2 tsp + 1/4 tsp + 1/8 tsp", "2 7/8 tsp")]
    #[case(24, "1 tbsp", "3 tsp")]
    #[case(49, "2 × 1 tbsp + 1/8 tsp", "6 1/8 tsp")]
    fn spoons_to_take(#[case] count: u32, #[case] words: &str, #[case] amount: &str) {
        let book = LoadedBook::from_text(BOOK).unwrap();
        let measure = spooned(book.ready(), &[1.0, 2.0, 4.0, 8.0, 24.0]);
        assert_eq!(measure.words(count), words);
        let wanted: Amount = amount.parse().unwrap();
        assert_eq!(measure.amount(count).unwrap().value(), wanted.value());
        let unit = measure.unit(Mass::from_si(0.1));
        assert_eq!((unit.dose, unit.together), (Ratio::from(0.01), true));
    }

    /// A spoon of one and a half of the smallest is left where it is.
    #[test]
    fn a_spoon_that_does_not_fit_is_left() {
        let book = LoadedBook::from_text(BOOK).unwrap();
        let measure = spooned(book.ready(), &[2.0, 3.0, 4.0]);
        assert_eq!(measure.words(3), "1/2 tsp + 1/4 tsp");
        assert_eq!(spooned(book.ready(), &[2.0, 3.0]).words(3), "3 × 1/4 tsp");
    }

    fn chalk(change: impl FnOnce(&mut Value)) -> bool {
        let mut book: Value = serde_json::from_str(BOOK).unwrap();
        change(&mut book);
        let book = LoadedBook::from_text(&book.to_string()).unwrap();
        let book = book.ready();
        let id = book.materials.find("chalk").unwrap();
        is_spooned(id, book.materials.get(id).unwrap(), book)
    }

    /// Drops stay drops; what formulas dose by volume alone, and powders without a drop, go by spoon.
    #[test]
    fn a_colorant_has_the_measure_of_its_formulas() {
        assert!(!chalk(|_| {}));
        let dosed = |amount: &'static str| {
            move |book: &mut Value| book["formulas"]["shell"]["doses"]["chalk"] = json!(amount)
        };
        assert!(chalk(dosed("1 tsp")));
        assert!(!chalk(dosed("2 g")));
        assert!(!chalk(|book| {
            dosed("1 tsp")(book);
            book["formulas"]["reed"]["doses"]["chalk"] = json!("3 drops");
        }));
        let powder = |book: &mut Value| {
            dosed("2 g")(book);
            let chalk = book["materials"]["chalk"].as_object_mut().unwrap();
            chalk.insert("as_scooped".into(), json!("0.35 g/mL"));
            chalk.remove("let_downs");
        };
        assert!(!chalk(powder));
        assert!(chalk(|book| {
            powder(book);
            book["materials"]["chalk"].as_object_mut().unwrap().remove("drop");
        }));
    }

    /// The spoon of a powder is level, and as heavy as it is scooped.
    #[test]
    fn a_spoonful_weighs_what_is_scooped() {
        let mut book: Value = serde_json::from_str(BOOK).unwrap();
        let chalk = book["materials"]["chalk"].as_object_mut().unwrap();
        chalk.insert("as_scooped".into(), json!("0.35 g/mL"));
        chalk.remove("drop");
        chalk.remove("let_downs");
        book["formulas"]["shell"]["doses"]["chalk"] = json!("1 tsp");
        let book = LoadedBook::from_text(&book.to_string()).unwrap();
        let book = book.ready();
        let measure = Measure::of(book.materials.find("chalk").unwrap(), book).unwrap();
        assert!((measure.mass.value - EIGHTH * 0.35e-3).abs() < 1e-12);
        assert_eq!(measure.scatter, book.unsure.spoon_level);
        let plum = Measure::of(book.materials.find("plum").unwrap(), book).unwrap();
        assert_eq!(
            (plum.words(3), plum.unit(Mass::from_si(0.44)).together),
            ("3 drops".into(), false)
        );
        assert_eq!(plum.unit(Mass::from_si(0.44)).dose, plum.mass / Mass::from_si(0.44));
        assert_eq!(plum.words(1), "1 drop");
    }

    /// Few drops are counted; more than 30 can be weighed, if there is a scale.
    #[test]
    fn many_drops_have_a_mass_too() {
        let mut book: Value = serde_json::from_str(BOOK).unwrap();
        let words = |book: &Value, count| {
            let book = LoadedBook::from_text(&book.to_string()).unwrap();
            let book = book.ready();
            Measure::of(book.materials.find("plum").unwrap(), book).unwrap().words(count)
        };
        assert_eq!(words(&book, MANY_DROPS), "30 drops");
        assert_eq!(words(&book, MANY_DROPS + 1), "31 drops or 1.36 g");
        book["bench"].as_object_mut().unwrap().remove("balance");
        assert_eq!(words(&book, MANY_DROPS + 1), "31 drops");
    }
}
