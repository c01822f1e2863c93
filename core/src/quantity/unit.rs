//! Units: products of powers of the table's symbols.

use super::symbol::{Size, Symbol};
use super::{AmountError, Dimension, Rational, System};
use core::fmt;
use core::str::FromStr;

/// The most symbols that a compound unit may have.
const MOST_TERMS: usize = 4;
/// The largest exponent of a symbol.
const LARGEST_EXPONENT: i8 = 9;

/// A unit of measure, as written: `cup`, `metric cup`, `g/mL`, `J/(g.K)`.
///
/// Read from trade symbols, names and UCUM codes; printed with the trade symbol. Household words (cup, tbsp,
/// tsp, fl oz, pt, qt, gal) take their size from a [`System`], unless the unit names one itself.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Unit {
    /// Symbols above the line, then those below it.
    terms: [Option<Term>; MOST_TERMS],
    /// The whole number above the line.
    times: u32,
    /// The whole number below the line.
    per: u32,
}

/// A power of one symbol.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub(super) struct Term {
    pub(super) symbol: Symbol,
    /// The system that a household word was written with.
    pub(super) system: Option<System>,
    pub(super) exponent: i8,
}

macro_rules! units {
    ($($(#[$doc:meta])* $name:ident = $symbol:ident;)*) => {
        /// The units that the library itself speaks of.
        impl Unit {
            $($(#[$doc])* pub const $name: Self = Self::sole(Symbol::$symbol);)*
        }
    };
}

units! {
    /// Cup of the measuring system.
    CUP = Cup;
    /// Tablespoon of the measuring system.
    TBSP = Tablespoon;
    /// Teaspoon of the measuring system.
    TSP = Teaspoon;
    /// Fluid ounce of the measuring system.
    FL_OZ = FluidOunce;
    /// Pint of the measuring system.
    PINT = Pint;
    /// Quart of the measuring system.
    QUART = Quart;
    /// Gallon of the measuring system.
    GALLON = Gallon;
    /// UCUM's metric drop `[drp]`, 1/20 mL.
    METRIC_DROP = MetricDrop;
    /// Liter.
    LITER = Liter;
    /// Milliliter.
    MILLILITER = Milliliter;
    /// Kilogram.
    KILOGRAM = Kilogram;
    /// Gram.
    GRAM = Gram;
    /// Milligram.
    MILLIGRAM = Milligram;
    /// Avoirdupois pound.
    POUND = Pound;
    /// Avoirdupois ounce, printed `oz wt`.
    OUNCE_WEIGHT = OunceWeight;
    /// Meter.
    METER = Meter;
    /// Centimeter.
    CENTIMETER = Centimeter;
    /// Millimeter.
    MILLIMETER = Millimeter;
    /// International inch.
    INCH = Inch;
    /// International foot.
    FOOT = Foot;
    /// A thousandth of an inch.
    MIL = Mil;
    /// Kelvin.
    KELVIN = Kelvin;
    /// Degree Celsius.
    CELSIUS = Celsius;
    /// Degree Fahrenheit.
    FAHRENHEIT = Fahrenheit;
    /// Pascal.
    PASCAL = Pascal;
    /// Kilopascal.
    KILOPASCAL = Kilopascal;
    /// Pound-force per square inch.
    PSI = Psi;
    /// Conventional inch of mercury.
    INCH_OF_MERCURY = InchOfMercury;
    /// Second.
    SECOND = Second;
    /// Minute.
    MINUTE = Minute;
    /// Hour.
    HOUR = Hour;
    /// Watt.
    WATT = Watt;
    /// A drop of a material, a count: the material's own drop gives its size.
    DROP = Drop;
    /// A piece, a count.
    PIECE = Piece;
    /// A hundredth. An amount in it says of what: see [`Basis`](super::Basis).
    PERCENT = Percent;
}

impl Unit {
    /// Gram per milliliter.
    pub const GRAM_PER_MILLILITER: Self = Self {
        terms: [
            Some(Term::of(Symbol::Gram, 1)),
            Some(Term::of(Symbol::Milliliter, -1)),
            None,
            None,
        ],
        times: 1,
        per: 1,
    };

    /// Pascal second.
    pub const PASCAL_SECOND: Self = Self {
        terms: [Some(Term::of(Symbol::Pascal, 1)), Some(Term::of(Symbol::Second, 1)), None, None],
        times: 1,
        per: 1,
    };

    /// Joule per gram and kelvin.
    pub const JOULE_PER_GRAM_KELVIN: Self = Self {
        terms: [
            Some(Term::of(Symbol::Joule, 1)),
            Some(Term::of(Symbol::Gram, -1)),
            Some(Term::of(Symbol::Kelvin, -1)),
            None,
        ],
        times: 1,
        per: 1,
    };

    /// Centimeter per second.
    pub const CENTIMETER_PER_SECOND: Self = Self {
        terms: [
            Some(Term::of(Symbol::Centimeter, 1)),
            Some(Term::of(Symbol::Second, -1)),
            None,
            None,
        ],
        times: 1,
        per: 1,
    };

    pub(super) const fn sole(symbol: Symbol) -> Self {
        Self { terms: [Some(Term::of(symbol, 1)), None, None, None], times: 1, per: 1 }
    }

    /// All units that have a symbol of their own, in the order of the table. Products and quotients of them are units too.
    pub fn all() -> impl ExactSizeIterator<Item = Self> {
        Symbol::ALL.iter().map(|symbol| Self::sole(*symbol))
    }

    /// The unit that `text` names, alone: `g/mL`, `[tsp_us]`, `metric cup`.
    ///
    /// # Errors
    /// Why the text was refused, and the readings if it can be read two ways.
    pub fn parse(text: &str) -> Result<Self, AmountError> {
        super::parse::whole_unit(text)
    }

    /// The dimension that this measures.
    #[must_use]
    pub fn dimension(self) -> Dimension {
        if let Some(symbol) = self.sole_symbol() {
            return symbol.entry().dimension;
        }
        self.terms().fold(Dimension::RATIO, |product, term| {
            product.times(term.symbol.entry().dimension, term.exponent)
        })
    }

    /// How many coherent SI units (m, kg, s, K and their products) one of these is, exactly.
    ///
    /// For a temperature scale this is the size of a degree. A compound holds temperature differences alone.
    ///
    /// # Errors
    /// [`AmountError::NoSuchMeasure`] for a household word that `system` lacks, [`AmountError::UnitOutOfRange`]
    /// for a size that does not fit.
    pub fn factor(self, system: System) -> Result<Rational, AmountError> {
        if let Some(term) = self.sole_term() {
            return term.size(system);
        }
        let out_of_range = || AmountError::UnitOutOfRange { unit: self };
        let whole = Rational::new(i128::from(self.times), i128::from(self.per));
        let mut factor = whole.ok_or_else(out_of_range)?;
        for term in self.terms() {
            factor = term
                .size(system)?
                .checked_pow(term.exponent)
                .and_then(|size| factor.checked_mul(size))
                .ok_or_else(out_of_range)?;
        }
        Ok(factor)
    }

    /// This unit with its household words fixed to `system`: `metric cup` for `cup`. Words that name a system
    /// keep it.
    #[must_use]
    pub fn in_system(mut self, system: System) -> Self {
        for term in self.terms.iter_mut().flatten() {
            if matches!(term.symbol.entry().size, Size::Household(_)) {
                term.system.get_or_insert(system);
            }
        }
        self
    }

    /// The number added to a reading on this temperature scale to count from absolute zero; `None` for other units.
    pub(super) fn scale_offset(self) -> Option<Rational> {
        match self.sole_symbol()?.entry().size {
            Size::Scale { offset, .. } => Some(offset),
            Size::Exact(_) | Size::Household(_) => None,
        }
    }

    /// Whether this is a household word, alone.
    pub(super) fn is_household(self) -> bool {
        self.sole_symbol().is_some_and(|symbol| matches!(symbol.entry().size, Size::Household(_)))
    }

    /// Whether an amount in this unit must say of what: per cent or ppm, alone.
    pub(super) fn is_share(self) -> bool {
        matches!(self.sole_symbol(), Some(Symbol::Percent | Symbol::PartsPerMillion))
    }

    fn terms(self) -> impl Iterator<Item = Term> {
        self.terms.into_iter().flatten()
    }

    fn sole_term(self) -> Option<Term> {
        match self.terms {
            [Some(term), None, None, None]
                if term.exponent == 1 && self.times == 1 && self.per == 1 =>
            {
                Some(term)
            }
            _ => None,
        }
    }

    fn sole_symbol(self) -> Option<Symbol> {
        self.sole_term().map(|term| term.symbol)
    }

    /// Writes the symbol as it follows `value`: `1 drop`, `2 drops`.
    pub(super) fn write_after(self, value: Rational, to: &mut dyn fmt::Write) -> fmt::Result {
        match self.sole_term() {
            Some(Term { symbol, system: None, .. }) if value == Rational::ONE => {
                to.write_str(symbol.entry().symbol)
            }
            Some(Term { symbol, system: None, .. }) => to.write_str(symbol.entry().plural),
            _ => write!(to, "{self}"),
        }
    }
}

impl Term {
    const fn of(symbol: Symbol, exponent: i8) -> Self {
        Self { symbol, system: None, exponent }
    }

    fn size(self, system: System) -> Result<Rational, AmountError> {
        match &self.symbol.entry().size {
            Size::Exact(size) => Ok(*size),
            Size::Scale { scale, .. } => Ok(*scale),
            Size::Household(sizes) => {
                let system = self.system.unwrap_or(system);
                sizes.size(system).ok_or_else(|| AmountError::NoSuchMeasure {
                    word: self.symbol.entry().symbol,
                    system,
                    systems: System::ALL.map(|other| sizes.size(other).map(|_| other)),
                })
            }
        }
    }
}

impl fmt::Display for Term {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if let Some(system) = self.system {
            write!(f, "{} ", system.prefix())?;
        }
        f.write_str(self.symbol.entry().symbol)?;
        match self.exponent.unsigned_abs() {
            1 => Ok(()),
            exponent => write!(f, "{exponent}"),
        }
    }
}

/// The trade symbols; a compound as a product over a product: `g/mL`, `J/(g.K)`, `1/K`.
impl fmt::Display for Unit {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if let Some(term) = self.sole_term() {
            return term.fmt(f);
        }
        let above = || self.terms().filter(|term| term.exponent > 0);
        let below = || self.terms().filter(|term| term.exponent < 0);
        if self.times != 1 || above().next().is_none() {
            write!(f, "{}", self.times)?;
            if above().next().is_some() {
                f.write_str(".")?;
            }
        }
        write_product(f, above())?;
        let factors_below = below().count().saturating_add(usize::from(self.per != 1));
        match factors_below {
            0 => return Ok(()),
            1 => f.write_str("/")?,
            _ => f.write_str("/(")?,
        }
        if self.per != 1 {
            write!(f, "{}", self.per)?;
            if factors_below > 1 {
                f.write_str(".")?;
            }
        }
        write_product(f, below())?;
        if factors_below > 1 { f.write_str(")") } else { Ok(()) }
    }
}

fn write_product(f: &mut fmt::Formatter<'_>, terms: impl Iterator<Item = Term>) -> fmt::Result {
    for (i, term) in terms.enumerate() {
        if i > 0 {
            f.write_str(".")?;
        }
        fmt::Display::fmt(&term, f)?;
    }
    Ok(())
}

impl FromStr for Unit {
    type Err = AmountError;

    fn from_str(text: &str) -> Result<Self, AmountError> {
        Self::parse(text)
    }
}

/// A unit while it is read, factor by factor.
#[derive(Debug)]
pub(super) struct UnitBuilder {
    above: [Option<Term>; MOST_TERMS],
    below: [Option<Term>; MOST_TERMS],
    times: u32,
    per: u32,
}

impl UnitBuilder {
    pub(super) const fn new() -> Self {
        Self { above: [None; MOST_TERMS], below: [None; MOST_TERMS], times: 1, per: 1 }
    }

    /// Multiplies by a term; `None` where there are too many, or an exponent is too large.
    pub(super) fn term(&mut self, term: Term) -> Option<()> {
        let side = if term.exponent > 0 { &mut self.above } else { &mut self.below };
        let same = |slot: &&mut Option<Term>| {
            slot.is_none_or(|other| other.symbol == term.symbol && other.system == term.system)
        };
        let slot = side.iter_mut().find(same)?;
        let exponent = slot.map_or(0, |other| other.exponent).checked_add(term.exponent)?;
        if exponent.unsigned_abs() > LARGEST_EXPONENT.unsigned_abs() {
            return None;
        }
        *slot = Some(Term { exponent, ..term });
        Some(())
    }

    /// Multiplies by a whole number, or divides by it; `None` for 0 or where the product does not fit.
    pub(super) fn number(&mut self, n: u32, divides: bool) -> Option<()> {
        let side = if divides { &mut self.per } else { &mut self.times };
        *side = side.checked_mul(n).filter(|product| *product > 0)?;
        Some(())
    }

    /// The unit; `None` if it has no symbol or too many.
    pub(super) fn finish(self) -> Option<Unit> {
        let mut all = self.above.into_iter().chain(self.below).flatten();
        let terms = core::array::from_fn(|_| all.next());
        let fits = all.next().is_none() && terms.iter().any(Option::is_some);
        fits.then_some(Unit { terms, times: self.times, per: self.per })
    }
}

#[cfg(test)]
pub(super) mod tests {
    use super::*;
    use crate::quantity::symbol::{HOUSEHOLD_CODES, MatchCase, SYSTEM_WORDS};
    use proptest::prelude::*;
    use rstest::rstest;
    use std::format;
    use std::string::ToString;
    use std::vec::Vec;

    fn size(unit: &str, system: System) -> Option<Rational> {
        Unit::parse(unit).expect("known").factor(system).ok()
    }

    #[rstest]
    // NIST Handbook 44, Appendix C; NIST SP 430 for the household measures.
    #[case(System::UsCustomary, "cup", 48, "tsp")]
    #[case(System::UsCustomary, "cup", 16, "tbsp")]
    #[case(System::UsCustomary, "cup", 8, "fl oz")]
    #[case(System::UsCustomary, "tbsp", 3, "tsp")]
    #[case(System::UsCustomary, "pt", 2, "cup")]
    #[case(System::UsCustomary, "qt", 2, "pt")]
    #[case(System::UsCustomary, "gal", 4, "qt")]
    #[case(System::UsCustomary, "gal", 128, "fl oz")]
    #[case(System::UsCustomary, "gal", 231, "in3")]
    #[case(System::UsCustomary, "fl oz", 480, "[min_us]")]
    #[case(System::UsCustomary, "lb", 16, "oz wt")]
    #[case(System::UsCustomary, "lb", 7000, "grain")]
    #[case(System::UsCustomary, "ft", 12, "in")]
    #[case(System::UsCustomary, "in", 1000, "mil")]
    #[case(System::UsCustomary, "cu ft", 1, "ft3")]
    // 21 CFR 101.9(b)(5)(viii).
    #[case(System::UsLabel, "cup", 48, "tsp")]
    #[case(System::UsLabel, "cup", 16, "tbsp")]
    #[case(System::UsLabel, "cup", 8, "fl oz")]
    #[case(System::UsLabel, "tbsp", 3, "tsp")]
    #[case(System::UsLabel, "cup", 240, "mL")]
    // Common practice, no source.
    #[case(System::Metric, "cup", 250, "mL")]
    #[case(System::Metric, "cup", 50, "tsp")]
    #[case(System::Metric, "tbsp", 3, "tsp")]
    // UK Weights and Measures Act 1985.
    #[case(System::Imperial, "gal", 160, "fl oz")]
    #[case(System::Imperial, "pt", 20, "fl oz")]
    #[case(System::Imperial, "gal", 8, "pt")]
    #[case(System::Imperial, "pt", 2, "cup")]
    #[case(System::Imperial, "100.gal", 454_609, "mL")]
    // UCUM 2.2.
    #[case(System::Metric, "mL", 20, "[drp]")]
    #[case(System::Metric, "mL", 1, "cm3")]
    #[case(System::Metric, "dm3", 1, "L")]
    #[case(System::Metric, "Btu", 105_505_585_262, "J/100000000")]
    fn is_exactly(#[case] system: System, #[case] one: &str, #[case] n: i64, #[case] part: &str) {
        let whole = size(one, system).expect("the system has it");
        let part = size(part, system).expect("the system has it");
        assert_eq!(part.checked_mul(Rational::from_int(n)), Some(whole));
    }

    #[rstest]
    #[case("pt", System::UsLabel)]
    #[case("qt", System::Metric)]
    #[case("gal", System::Metric)]
    #[case("fl oz", System::Metric)]
    #[case("tsp", System::Imperial)]
    #[case("tbsp", System::Imperial)]
    fn a_system_lacks(#[case] word: &str, #[case] system: System) {
        let error = Unit::parse(word).expect("known").factor(system).expect_err("lacks it");
        let AmountError::NoSuchMeasure { systems, .. } = error else {
            panic!("{error}");
        };
        for other in System::ALL {
            assert_eq!(systems.contains(&Some(other)), size(word, other).is_some());
        }
    }

    #[test]
    fn a_missing_measure_says_which_systems_have_it() {
        use crate::fault::Diagnose;
        let error = Unit::TSP.factor(System::Imperial).expect_err("no imperial teaspoon");
        assert_eq!(error.to_string(), "The imperial system has no tsp.");
        assert_eq!(
            error.help(),
            "Write US tsp (us-customary), label tsp (us-label) or metric tsp (metric), or use mL."
        );
    }

    #[test]
    fn every_spelling_means_its_own_symbol() {
        for symbol in Symbol::ALL {
            let entry = symbol.entry();
            let means = |spelling: &str| {
                assert_eq!(Unit::parse(spelling), Ok(Unit::sole(*symbol)), "{spelling}");
                // In brackets it is read as a part of a product is.
                let part = format!("({spelling})");
                assert_eq!(Unit::parse(&part), Ok(Unit::sole(*symbol)), "{part}");
            };
            means(entry.plural);
            for (spelling, case) in entry.spellings {
                means(spelling);
                if *case == MatchCase::Any {
                    means(&spelling.to_uppercase());
                }
            }
        }
    }

    #[test]
    fn ucum_codes_of_household_measures_name_their_system() {
        for (code, symbol, system) in HOUSEHOLD_CODES {
            let unit = Unit::parse(code).expect("known");
            assert_eq!(unit, Unit::sole(*symbol).in_system(*system));
            for other in System::ALL {
                assert_eq!(unit.factor(other), Unit::sole(*symbol).factor(*system));
            }
        }
    }

    #[rstest]
    #[case("s/m.mg", "s.mg/m")]
    #[case("4.s/m", "4.s/m")]
    #[case("s/4/m", "s/(4.m)")]
    #[case("s.m-1.g", "s.g/m")]
    #[case("J/(g.K)", "J/(g.K)")]
    #[case("J/g/K", "J/(g.K)")]
    #[case("J/(g.°C)", "J/(g.°C)")]
    #[case("1/K", "1/K")]
    #[case("/K", "1/K")]
    #[case("[lb_av]/[gal_us]", "lb/US gal")]
    #[case("lb/gal", "lb/gal")]
    #[case("kg/m³", "kg/m3")]
    #[case("kg / m^3", "kg/m3")]
    #[case("kg·m⁻³", "kg/m3")]
    #[case("g per mL", "g/mL")]
    #[case("g/(mL/(s.m))", "g.s.m/mL")]
    #[case("in. Hg", "inHg")]
    #[case("Fl. Oz.", "fl oz")]
    #[case("us customary cups", "US cup")]
    #[case("US label cup", "label cup")]
    #[case("Imperial Pint", "imperial pt")]
    #[case("oz wt/gal", "oz wt/gal")]
    #[case("g/g", "g/g")]
    fn prints_in_one_form(#[case] written: &str, #[case] printed: &str) {
        let unit = Unit::parse(written).expect("known");
        assert_eq!(unit.to_string(), printed);
        assert_eq!(Unit::parse(printed), Ok(unit));
    }

    #[rstest]
    #[case("lb/gal", "a density")]
    #[case("in3", "a volume")]
    #[case("°F", "a temperature")]
    #[case("2.K", "a temperature difference")]
    #[case("%/K", "a thermal expansion")]
    #[case("kg/(m.s2)", "a pressure")]
    #[case("kW.h", "an energy")]
    #[case("Btu/(lb.°F)", "a specific heat")]
    #[case("s/m", "a quantity in m^-1 s")]
    fn measures(#[case] unit: &str, #[case] dimension: &str) {
        assert_eq!(Unit::parse(unit).expect("known").dimension().to_string(), dimension);
    }

    #[rstest]
    #[case("g/")]
    #[case("(g")]
    #[case("g)")]
    #[case("g..m")]
    #[case("()")]
    #[case("((((((g))))))")]
    #[case("m.s.g.K.J")]
    #[case("m10")]
    #[case("m0")]
    #[case("m5.m5")]
    #[case("0.g")]
    #[case("99999999999.g")]
    #[case("100")]
    #[case("g 100mL")]
    #[case("100mL")]
    #[case("[cup_us")]
    fn is_no_unit(#[case] text: &str) {
        assert!(Unit::parse(text).is_err());
    }

    /// Units that the table and the rules of writing allow.
    pub(crate) fn any_unit() -> impl Strategy<Value = Unit> {
        let system = prop::option::of(prop::sample::select(System::ALL.to_vec()));
        let symbol = prop::sample::select(Symbol::ALL.to_vec());
        let exponent = prop_oneof![Just(1_i8), -3_i8..=3].prop_filter("a power", |e| *e != 0);
        let term = (symbol, system, exponent).prop_map(|(symbol, system, exponent)| {
            let household = matches!(symbol.entry().size, Size::Household(_));
            Term { symbol, system: system.filter(|_| household), exponent }
        });
        let compound = (prop::collection::vec(term, 1..=4), 1_u32..1000, 1_u32..1000)
            .prop_filter_map("a unit", |(terms, times, per)| {
                let mut builder = UnitBuilder::new();
                builder.number(times, false)?;
                builder.number(per, true)?;
                for term in terms {
                    builder.term(term)?;
                }
                builder.finish()
            });
        prop_oneof![prop::sample::select(Symbol::ALL.to_vec()).prop_map(Unit::sole), compound]
    }

    #[test]
    fn words_of_systems_are_their_prefixes() {
        let words: Vec<_> =
            SYSTEM_WORDS.iter().map(|(word, system)| (word.to_string(), *system)).collect();
        for system in System::ALL {
            assert!(words.contains(&(format!("{} ", system.prefix().to_lowercase()), system)));
        }
    }

    proptest! {
        #[test]
        fn reads_back_what_it_prints(unit in any_unit()) {
            let printed = unit.to_string();
            prop_assert_eq!(Unit::parse(&printed), Ok(unit), "{}", printed);
        }
    }
}
