//! A mix written as a formula: doses per amount of base, each in the measure that it was taken in.
//!
//! With m_i the mass of a material, m_b that of the base, P the mass of base that the formula is for and u_i the mass of
//! one unit of the measure, the dose is (m_i/m_b)·P/u_i. A dose that is a simple fraction is written as
//! just that (3 drops in half a cup are 6 in a cup); any other to the digits that a thousandth of it takes, and how far that is
//! off is part of the result.

use alloc::vec::Vec;

use super::{Dose, Formula, WrittenIn};
use crate::book::Book;
use crate::material::Material;
use crate::mix::{MaterialId, Materials, Mix, MixError, Phase};
use crate::quantity::{
    Amount, AmountError, Basis, By, Dimension, Mass, Ratio, Rational, Share, System, Unit, Volume,
    significant_near,
};

/// The measure that a dose is written in.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Measure {
    /// Counted drops.
    Drops,
    /// Spoons, cups, milliliters, or units of mass: those that were used, all of one dimension.
    Units(Vec<Unit>),
    /// A per cent of the base, by mass.
    OfBase,
}

impl Measure {
    /// Grams.
    pub(crate) fn grams() -> Self {
        Self::Units(Vec::from([Unit::GRAM]))
    }

    /// The measure of one amount.
    pub(crate) fn of(amount: &Amount) -> Self {
        match (amount.basis(), amount.dimension()) {
            (Some(Basis { share: Share::OfBase, by: By::Mass }), _) => Self::OfBase,
            (None, Dimension::COUNT) => Self::Drops,
            (None, Dimension::VOLUME | Dimension::MASS) => Self::Units(Vec::from([amount.unit()])),
            _ => Self::grams(),
        }
    }

    /// The measure of a dose that is written in `written`, where its unit is not known: teaspoons for a volume.
    pub(crate) fn written_in(written: WrittenIn) -> Self {
        match written {
            WrittenIn::Mass => Self::grams(),
            WrittenIn::Volume => Self::Units(Vec::from([Unit::TSP])),
            WrittenIn::Drops => Self::Drops,
        }
    }

    /// The measure of two doses of one material: theirs if they agree in kind, else grams.
    #[must_use]
    pub(crate) fn and(self, other: Self) -> Self {
        match (self, other) {
            (Self::Drops, Self::Drops) => Self::Drops,
            (Self::OfBase, Self::OfBase) => Self::OfBase,
            (Self::Units(mut units), Self::Units(more)) => {
                let dimension = |units: &[Unit]| units.first().map(|unit| unit.dimension());
                if dimension(&units) != dimension(&more) {
                    return Self::grams();
                }
                for unit in more {
                    if !units.contains(&unit) {
                        units.push(unit);
                    }
                }
                Self::Units(units)
            }
            _ => Self::grams(),
        }
    }
}

/// A material of a mix, and the measure that its dose is to be written in.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Part {
    pub(crate) material: MaterialId,
    pub(crate) mass: Mass,
    pub(crate) measure: Measure,
}

impl Part {
    /// Whether there is none of it.
    pub(crate) fn is_nothing(&self) -> bool {
        self.mass <= Mass::default()
    }
}

/// A dose as it is written.
#[derive(Debug, Clone, PartialEq)]
pub struct WrittenDose {
    /// The material.
    pub material: MaterialId,
    /// The dose.
    pub amount: Amount,
    /// How far that is off the mix, relative to the dose; 0 if it is exact.
    pub off: Ratio,
}

/// A formula as written, and how far its doses are off the mix that they were written from.
#[derive(Debug, Clone, PartialEq)]
pub struct WrittenFormula {
    /// The formula.
    pub formula: Formula,
    /// Its doses, in the same order.
    pub doses: Vec<WrittenDose>,
}

/// The amount of base that the book writes its formulas for: the one that most of them are per, of equally many the first by
/// name; 1 cup if none has one.
pub(crate) fn usual_per(book: &Book) -> Result<Amount, AmountError> {
    let mut counted: Vec<(Amount, usize)> = Vec::new();
    for per in book.formulas.iter().filter_map(|formula| formula.per) {
        match counted.iter_mut().find(|(known, _)| *known == per) {
            Some((_, count)) => *count = count.saturating_add(1),
            None => counted.push((per, 1)),
        }
    }
    // The last of equal ones is what max_by_key takes.
    let most = counted.into_iter().rev().max_by_key(|(_, count)| *count);
    most.map_or_else(|| Amount::new(Rational::ONE, Unit::CUP), |(per, _)| Ok(per))
}

/// The formula `name` for `doses` in a mix with `base`, per `per` of base; it names its base if `names_base`.
pub(crate) fn formula(
    name: &str,
    base: &Mix,
    doses: &[Part],
    per: Amount,
    names_base: bool,
    book: &Book,
) -> Result<WrittenFormula, MixError> {
    let (materials, system) = (&book.materials, book.system);
    let base_mass = base.mass();
    if base_mass <= Mass::default() {
        return Err(MixError::NoBase);
    }
    let per_mass = mass_of_base(per, base, materials, system)?;
    let mut written = Vec::with_capacity(doses.len());
    for part in doses.iter().filter(|part| part.mass > Mass::default()) {
        let material = materials.get(part.material)?;
        let wanted = part.mass / base_mass * per_mass;
        let (amount, off) = dose(material, wanted, per_mass, &part.measure, system)?;
        written.push(WrittenDose { material: part.material, amount, off });
    }
    let base = if names_base { parts_of_base(base, per, materials)? } else { Vec::new() };
    let doses = written.iter().map(|dose| Dose { material: dose.material, amount: dose.amount });
    let formula =
        Formula { name: name.into(), per: Some(per), base, doses: doses.collect(), color: None };
    Ok(WrittenFormula { formula, doses: written })
}

/// The mass of `amount` of a base of this composition.
pub(crate) fn mass_of_base(
    amount: Amount,
    base: &Mix,
    materials: &Materials,
    system: System,
) -> Result<Mass, MixError> {
    if amount.dimension() != Dimension::VOLUME {
        return Ok(amount.to(system).map_err(crate::material::MaterialError::from)?);
    }
    let volume: Volume = amount.to(system).map_err(crate::material::MaterialError::from)?;
    if base.mass() <= Mass::default() {
        return Err(MixError::NoBase);
    }
    Ok(base.mass() / base.volume(materials, Phase::Liquid)? * volume)
}

/// `wanted` of a material in its measure, for `base` of base, and how far that is off.
pub(crate) fn dose(
    material: &Material,
    wanted: Mass,
    base: Mass,
    measure: &Measure,
    system: System,
) -> Result<(Amount, Ratio), MixError> {
    let mut found: Option<(Amount, f64)> = None;
    match measure {
        Measure::Drops => {
            let drop = material.drop_mass("writing its dose")?;
            let (value, off) = number((wanted / drop).value, ROUNDED)?;
            found = Some((amount(value, Unit::DROP)?, off));
        }
        Measure::OfBase => {
            let (value, off) = number((wanted / base).value * 100.0, ROUNDED)?;
            let share = Amount::percent(value, Basis::OF_BASE);
            found = Some((share.map_err(crate::material::MaterialError::from)?, off));
        }
        Measure::Units(units) => {
            let mut sized = Vec::with_capacity(units.len());
            for unit in units {
                let one =
                    material.mass_of(&amount(Rational::ONE, *unit)?, system, "writing its dose")?;
                sized.push((*unit, one));
            }
            // The largest measure that a spoon or a cup shows; without one, the smallest of those used.
            sized.sort_by(|a, b| b.1.value.total_cmp(&a.1.value));
            for (unit, one) in sized {
                let (value, off) = number((wanted / one).value, ROUNDED)?;
                found = Some((amount(value, unit)?, off));
                if matches!(value.denominator(), 1..=4 | 8) {
                    break;
                }
            }
        }
    }
    let (amount, off) = match found {
        Some(found) => found,
        None => {
            let grams = wanted.value * 1e3;
            let (value, off) = number(grams, ROUNDED)?;
            (self::amount(value, Unit::GRAM)?, off)
        }
    };
    Ok((amount, Ratio::from(off)))
}

/// The parts of a base of this composition in `per` of it.
fn parts_of_base(base: &Mix, per: Amount, materials: &Materials) -> Result<Vec<Dose>, MixError> {
    let portions = base.portions().iter().filter(|portion| portion.mass > Mass::default());
    let count = portions.clone().count();
    let volume = base.volume(materials, Phase::Liquid)?;
    let mut doses = Vec::with_capacity(count);
    for portion in portions {
        let share = if per.dimension() == Dimension::VOLUME {
            let density = materials.get(portion.material)?.true_density("writing the base")?;
            (portion.mass / density.get() / volume).value
        } else {
            (portion.mass / base.mass()).value
        };
        let (value, _) = number(share * per.value().to_f64(), BASE_ROUNDED)?;
        // One plastisol alone is written by its name.
        let part = if count == 1 { per } else { amount(value, per.unit())? };
        doses.push(Dose { material: portion.material, amount: part });
    }
    Ok(doses)
}

fn amount(value: Rational, unit: Unit) -> Result<Amount, MixError> {
    Ok(Amount::new(value, unit).map_err(crate::material::MaterialError::from)?)
}

/// How far the rounding of a dose may take it off: far below what a drop or a spoon is sure to.
const ROUNDED: f64 = 1e-3;

/// The same of a part of a base.
const BASE_ROUNDED: f64 = 1e-6;

/// `x` as it is written, and how far that is off, relative to it: a simple fraction, else the decimal with the fewest digits
/// that is within `tolerance`.
fn number(x: f64, tolerance: f64) -> Result<(Rational, f64), MixError> {
    if let Some(simple) = simple_fraction(x) {
        return Ok((simple, 0.0));
    }
    let rounded = (2..=15).find_map(|digits| {
        let rounded = significant_near(x, digits)?;
        let off = rounded.to_f64() / x - 1.0;
        (libm::fabs(off) <= tolerance).then_some((rounded, off))
    });
    rounded.ok_or(MixError::BadFactor(x))
}

/// The fraction of at most 1000 parts that `x`, the rounding of its calculation apart, is, if people read it: a convergent of
/// its continued fraction.
fn simple_fraction(x: f64) -> Option<Rational> {
    const MOST_PARTS: i128 = 1000;
    /// Parts of a fraction that no decimal ends, up to which people read it: `58 2/3`.
    const MOST_WITHOUT_END: i128 = 12;
    const ROUNDING: f64 = 1e-11;
    if !(x.is_finite() && x >= 0.0) {
        return None;
    }
    let (mut before, mut last) = ((0_i128, 1_i128), (1_i128, 0_i128));
    let mut rest = x;
    loop {
        let whole = libm::floor(rest);
        let term = whole as i128;
        let next = (
            term.checked_mul(last.0)?.checked_add(before.0)?,
            term.checked_mul(last.1)?.checked_add(before.1)?,
        );
        if next.1 > MOST_PARTS {
            return None;
        }
        let fraction = Rational::new(next.0, next.1)?;
        if libm::fabs(fraction.to_f64() - x) <= ROUNDING * x {
            let is_read = next.1 <= MOST_WITHOUT_END || fraction.as_decimal().is_some();
            return is_read.then_some(fraction);
        }
        (before, last) = (last, next);
        // Where nothing is left, the next term is infinite, and a fraction of as many parts is refused.
        rest = 1.0 / (rest - whole);
    }
}

#[cfg(feature = "document")]
impl crate::document::book::FormulaEntry {
    /// `formula`, of what is in a cup already, as a book writes it: sure of doses that would look like a slip.
    ///
    /// # Errors
    /// A material is not in the table.
    pub(crate) fn of(
        formula: &Formula,
        materials: &Materials,
        system: System,
    ) -> Result<Self, MixError> {
        use crate::document::book::BaseEntry;
        use crate::json::Named;
        use crate::json::reader::Name;

        let amounts = |doses: &[Dose]| -> Result<Named<Amount>, MixError> {
            let named = |dose: &Dose| Ok((materials.get(dose.material)?.name.clone(), dose.amount));
            doses.iter().map(named).collect()
        };
        let base = amounts(&formula.base)?;
        let only = base.keys().next().cloned().filter(|_| base.len() == 1);
        let base = match only {
            _ if base.is_empty() => None,
            Some(only) => Some(BaseEntry::One(Name(only))),
            _ => Some(BaseEntry::Blend(base)),
        };
        let doses = amounts(&formula.doses)?;
        let entry =
            Self { doses, per: formula.per, base, color: None, notes: None, sure: None, ext: None };
        let sure = (!entry.unusual(materials, system).is_empty()).then_some(true);
        Ok(Self { sure, ..entry })
    }
}

#[cfg(test)]
mod tests {
    use alloc::string::{String, ToString};
    use alloc::vec;

    use rstest::rstest;

    use super::*;
    use crate::fault::Diagnose;
    use crate::material::Kind;
    use crate::quantity::{MassDensity, Measurable, Measured};

    const US: System = System::UsCustomary;

    fn table() -> Materials {
        let of = |name: &str, kind, g_per_ml: f64| Material {
            density: Some(Measured::exact(MassDensity::from_si(g_per_ml * 1e3))),
            ..Material::new(name, kind)
        };
        Materials::new(vec![
            of("clear", Kind::Plastisol, 1.03),
            of("firm", Kind::Plastisol, 1.06),
            of("softener", Kind::Softener, 1.0),
        ])
    }

    fn amount(text: &str) -> Amount {
        Amount::parse(text).unwrap()
    }

    fn mix(parts: &[(&str, f64)]) -> Mix {
        let table = table();
        let mut mix = Mix::new();
        for (name, grams) in parts {
            mix.add(table.find(name).unwrap(), Mass::from_si(grams / 1e3)).unwrap();
        }
        mix
    }

    #[rstest]
    #[case(0.0, Some((0, 1)))]
    #[case(0.5, Some((1, 2)))]
    #[case(58.0 + 2.0 / 3.0, Some((176, 3)))]
    // Twelfths are read as such, thirteenths are not; sixteenths and thousandths end as decimals.
    #[case(5.0 / 12.0, Some((5, 12)))]
    #[case(5.0 / 13.0, None)]
    #[case(8.0 / 13.0, None)]
    #[case(5.0 / 16.0, Some((5, 16)))]
    #[case(0.001, Some((1, 1000)))]
    #[case(1.0 / 1024.0, None)]
    // A part in a million more is no longer a thousandth.
    #[case(0.001 + 1e-9, None)]
    #[case(-0.5, None)]
    #[case(f64::INFINITY, None)]
    #[case(f64::NAN, None)]
    fn a_simple_fraction_is_one_that_people_read(
        #[case] x: f64,
        #[case] expected: Option<(i128, i128)>,
    ) {
        let expected = expected.map(|(parts, of)| Rational::new(parts, of).unwrap());
        assert_eq!(simple_fraction(x), expected);
    }

    // 9.9 is off 9.9060001 by 0.0006 of it.
    #[test]
    fn a_number_has_the_fewest_digits_that_are_near_enough() {
        let digits = |x, tolerance| number(x, tolerance).unwrap().0;
        assert_eq!(digits(9.906_000_1, 1e-3), Rational::new(99, 10).unwrap());
        assert_eq!(digits(9.906_000_1, 1e-6), Rational::new(9906, 1000).unwrap());
        assert_eq!(digits(core::f64::consts::PI, 1e-3), Rational::new(314, 100).unwrap());
        // As far off as it may be is near enough.
        let off = number(9.906_000_1, 1e-3).unwrap().1;
        assert_eq!(number(9.906_000_1, -off).unwrap().1, off);
    }

    #[rstest]
    // The larger spoon if it shows the dose as halves, thirds, quarters or eighths; else the smaller one, in whatever order.
    #[case("3 tsp", "1 tbsp")]
    #[case("1 tsp", "1/3 tbsp")]
    #[case("0.6 tsp", "0.6 tsp")]
    fn the_largest_spoon_that_shows_a_dose_is_used(#[case] dosed: &str, #[case] written: &str) {
        let table = table();
        let material = table.get(table.find("softener").unwrap()).unwrap();
        let wanted = material.mass_of(&amount(dosed), US, "").unwrap();
        let base = Mass::from_si(0.25);
        for units in [vec![Unit::TSP, Unit::TBSP], vec![Unit::TBSP, Unit::TSP]] {
            let (got, off) = dose(material, wanted, base, &Measure::Units(units), US).unwrap();
            assert_eq!((got.to_string(), off.value), (String::from(written), 0.0));
        }
        // Without a measure a dose is in grams.
        let five = Mass::from_si(5e-3);
        let (got, _) = dose(material, five, base, &Measure::Units(vec![]), US).unwrap();
        assert_eq!(got.to_string(), "5 g");
    }

    #[test]
    fn two_measures_of_a_kind_are_both_kept() {
        let of = |text: &str| Measure::of(&amount(text));
        assert_eq!(of("1 tsp").and(of("2 tbsp")), Measure::Units(vec![Unit::TSP, Unit::TBSP]));
        assert_eq!(of("1 tsp").and(of("2 tsp")), Measure::Units(vec![Unit::TSP]));
        assert_eq!(of("1 tsp").and(of("2 g")), Measure::grams());
        assert_eq!(of("3 drops").and(of("2 drops")), Measure::Drops);
        assert_eq!(of("3 drops").and(of("2 g")), Measure::grams());
    }

    #[rstest]
    // Equal volumes of 1.03 and 1.06 g/mL; by mass 2 to 3.
    #[case(&[("clear", 103.0), ("firm", 106.0)], "2 cup", &["1 cup", "1 cup"])]
    #[case(&[("clear", 200.0), ("firm", 300.0)], "500 g", &["200 g", "300 g"])]
    // One plastisol alone is the amount as it is written, all its digits; nothing of another is no part.
    #[case(&[("clear", 103.0)], "0.123456789 cup", &["0.123456789 cup"])]
    #[case(&[("clear", 103.0), ("firm", 0.0)], "0.123456789 cup", &["0.123456789 cup"])]
    fn a_base_is_written_by_its_parts(
        #[case] base: &[(&str, f64)],
        #[case] per: &str,
        #[case] expected: &[&str],
    ) {
        let doses = parts_of_base(&mix(base), amount(per), &table()).unwrap();
        let written: Vec<Amount> = doses.iter().map(|dose| dose.amount).collect();
        let expected: Vec<Amount> = expected.iter().map(|text| amount(text)).collect();
        assert_eq!(written, expected);
    }

    #[test]
    fn without_base_there_is_no_amount_of_it() {
        let none = mass_of_base(amount("1 cup"), &Mix::new(), &table(), US).unwrap_err();
        assert_eq!(none, MixError::NoBase);
        // A mass of it needs no density.
        let grams = mass_of_base(amount("100 g"), &Mix::new(), &table(), US).unwrap();
        assert_eq!(grams, Mass::from_si(0.1));
        assert_eq!(none.code(), "mix-no-base");
    }

    #[cfg(feature = "document")]
    #[test]
    fn a_formula_is_per_what_most_of_the_book_are_per() {
        let demo = include_str!("../../examples/demo/book.json");
        let mut book = crate::document::book_from_text(demo).unwrap();
        let nothing = formula("x", &Mix::new(), &[], amount("100 g"), false, &book);
        assert_eq!(nothing.unwrap_err(), MixError::NoBase);
        let one = book.formulas[0].clone();
        let mut usual = |pers: &[&str]| {
            let per = |text: &&str| Formula { per: Some(amount(text)), ..one.clone() };
            book.formulas = pers.iter().map(per).collect();
            usual_per(&book).unwrap().to_string()
        };
        assert_eq!(usual(&["1 cup", "2 cup", "2 cup"]), "2 cup");
        assert_eq!(usual(&["2 cup", "1 cup", "1 cup", "2 cup"]), "2 cup");
        assert_eq!(usual(&[]), "1 cup");
    }
}
