//! Amounts: a number of a unit, as a person measures it.

use super::{AmountError, Dimension, Measurable, Ratio, Rational, System, Unit};
use alloc::format;
use alloc::string::{String, ToString};
use core::fmt;
use core::str::FromStr;

/// An amount as written: an exact number of a unit, and for a per cent what it is a part of.
///
/// Read by [`Amount::parse`] and printed by `Display` so that one undoes the other: `1 1/4 cup`, `40 drops`,
/// `12.5 g`, `8 % of base`, `330 °F`. Never negative, but for temperatures.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Amount {
    value: Rational,
    unit: Unit,
    basis: Option<Basis>,
}

/// The basis of a per cent, and how it is measured.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Basis {
    /// The whole.
    pub share: Share,
    /// Measured by mass or by volume.
    pub by: By,
}

/// The whole of which a per cent is a part.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Share {
    /// Parts per hundred parts of the base: what is added comes on top.
    OfBase,
    /// Parts in a hundred parts of the finished mix.
    OfFinished,
}

/// Whether a share is one of mass or of volume.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum By {
    /// By mass, which is meant where nothing is said.
    Mass,
    /// By volume.
    Volume,
}

impl Basis {
    /// A share of the base, by mass.
    pub const OF_BASE: Self = Self { share: Share::OfBase, by: By::Mass };
    /// A share of the finished mix, by mass.
    pub const OF_FINISHED: Self = Self { share: Share::OfFinished, by: By::Mass };

    /// This share, by volume.
    #[must_use]
    pub const fn by_volume(self) -> Self {
        Self { by: By::Volume, ..self }
    }
}

impl Amount {
    /// The longest text that is read as an amount or a unit, in bytes.
    pub const LONGEST: usize = 512;

    /// The amount that `text` states.
    ///
    /// # Errors
    /// Why the text was refused; [`AmountError::Ambiguous`], with the readings, if it can be read in several ways.
    pub fn parse(text: &str) -> Result<Self, AmountError> {
        super::parse::amount(text)
    }

    /// `value` of `unit`.
    ///
    /// # Errors
    /// [`AmountError::Ambiguous`] for a per cent, which takes a basis ([`Amount::share`]); negative amounts and
    /// temperatures below absolute zero are refused.
    pub fn new(value: Rational, unit: Unit) -> Result<Self, AmountError> {
        let amount = Self { value, unit, basis: None };
        if unit.is_share() {
            return Err(without_basis(&amount.to_string()));
        }
        amount.checked()
    }

    /// `value` of `unit` (per cent or ppm) of the base or of the finished mix.
    ///
    /// # Errors
    /// [`AmountError::WrongDimension`] for any other unit, [`AmountError::Negative`] for a negative value.
    pub fn share(value: Rational, unit: Unit, basis: Basis) -> Result<Self, AmountError> {
        if !unit.is_share() {
            let found = unit.dimension();
            return Err(AmountError::WrongDimension { unit, found, wanted: Dimension::RATIO });
        }
        Self { value, unit, basis: Some(basis) }.checked()
    }

    /// `value` per cent of `basis`.
    ///
    /// # Errors
    /// [`AmountError::Negative`] for a negative value.
    pub fn percent(value: Rational, basis: Basis) -> Result<Self, AmountError> {
        Self::share(value, Unit::PERCENT, basis)
    }

    /// `value` of `unit`, the number taken as the shortest decimal that reads back as it: 0.1 is 1/10.
    ///
    /// # Errors
    /// [`AmountError::ValueOutOfRange`] for a number that is not finite or whose decimal does not fit, and
    /// what [`Amount::new`] refuses.
    pub fn from_f64(value: f64, unit: Unit) -> Result<Self, AmountError> {
        let value = Rational::from_f64(value).ok_or(AmountError::ValueOutOfRange { unit })?;
        Self::new(value, unit)
    }

    /// The same with a number that people read: a fraction over more than 1000 that no decimal ends becomes the
    /// decimal of its `f64`, which reads back as that.
    #[cfg(feature = "document")]
    #[must_use]
    pub(crate) fn legible(self) -> Self {
        const MOST_PARTS: i128 = 1000;
        if self.value.denominator() <= MOST_PARTS || self.value.as_decimal().is_some() {
            return self;
        }
        Self { value: Rational::from_f64(self.value.to_f64()).unwrap_or(self.value), ..self }
    }

    /// Its text. A plan writes thousands: room for a whole one saves to move it while it grows.
    pub(crate) fn text(&self) -> String {
        const ROOM: usize = 16;
        let mut text = String::with_capacity(ROOM);
        // A string takes what is written.
        let _ = self.write_to(&mut text);
        text
    }

    fn write_to(&self, to: &mut dyn fmt::Write) -> fmt::Result {
        let spoon_fraction = self.unit.is_household()
            && matches!(self.value.denominator(), 2 | 3 | 4 | 6 | 8 | 16 | 32);
        if spoon_fraction {
            self.value.write_mixed_to(to)?;
        } else {
            self.value.write_to(to)?;
        }
        to.write_str(" ")?;
        self.unit.write_after(self.value, to)?;
        self.basis.map_or(Ok(()), |basis| write!(to, " {basis}"))
    }

    fn checked(self) -> Result<Self, AmountError> {
        if !self.value.is_negative() {
            return Ok(self);
        }
        let Some(offset) = self.unit.scale_offset() else {
            return Err(AmountError::Negative { text: self.to_string() });
        };
        if self.value < offset.negated() {
            return Err(AmountError::BelowAbsoluteZero { text: self.to_string() });
        }
        Ok(self)
    }

    /// The number, exactly as written.
    #[must_use]
    pub const fn value(&self) -> Rational {
        self.value
    }

    /// The unit, as written.
    #[must_use]
    pub const fn unit(&self) -> Unit {
        self.unit
    }

    /// The basis of a per cent; `None` for every other amount.
    #[must_use]
    pub const fn basis(&self) -> Option<Basis> {
        self.basis
    }

    /// The dimension of the amount.
    #[must_use]
    pub fn dimension(&self) -> Dimension {
        self.unit.dimension()
    }

    /// The number of drops; `None` for any other unit. A drop's size is the material's own.
    #[must_use]
    pub fn drops(&self) -> Option<Rational> {
        (self.unit == Unit::DROP).then_some(self.value)
    }

    /// The number of pieces; `None` for any other unit.
    #[must_use]
    pub fn pieces(&self) -> Option<Rational> {
        (self.unit == Unit::PIECE).then_some(self.value)
    }

    /// The amount as a quantity, household words measured in `system` where the amount names none itself.
    ///
    /// The exact product is rounded once, to the nearest `f64`. Where that product does not fit in 128 bits (some
    /// thirty significant digits) its factors are rounded each, and the result is within two units in the last place.
    ///
    /// # Errors
    /// [`AmountError::WrongDimension`] where the amount is no `Q`, [`AmountError::NoSuchMeasure`] for a household word
    /// that the system lacks, [`AmountError::UnitOutOfRange`] for an extreme compound unit.
    pub fn to<Q: Measurable>(&self, system: System) -> Result<Q, AmountError> {
        self.si(Q::DIMENSION, system).map(Q::from_si)
    }

    /// The same in coherent SI units, as a quantity of the dimension `wanted`.
    pub(crate) fn si(&self, wanted: Dimension, system: System) -> Result<f64, AmountError> {
        let found = self.dimension();
        if !found.serves_as(wanted) {
            return Err(AmountError::WrongDimension { unit: self.unit, found, wanted });
        }
        let factor = self.unit.factor(system)?;
        let offset = match self.unit.scale_offset() {
            Some(offset) if wanted == Dimension::TEMPERATURE => offset,
            _ => Rational::ZERO,
        };
        Ok(rounded_product(self.value, offset, factor))
    }

    /// The same amount in another unit, exactly; a per cent keeps its basis.
    ///
    /// # Errors
    /// [`AmountError::WrongDimension`] where the units measure different things, [`AmountError::ValueOutOfRange`]
    /// where the exact value does not fit, and as [`Amount::to`].
    pub fn in_unit(&self, unit: Unit, system: System) -> Result<Self, AmountError> {
        let (found, wanted) = (self.dimension(), unit.dimension());
        if found != wanted {
            return Err(AmountError::WrongDimension { unit: self.unit, found, wanted });
        }
        let (from, to) = (self.unit.factor(system)?, unit.factor(system)?);
        let from_zero = self.unit.scale_offset().unwrap_or(Rational::ZERO);
        let to_zero = unit.scale_offset().unwrap_or(Rational::ZERO);
        let value = self
            .value
            .checked_add(from_zero)
            .and_then(|reading| reading.checked_mul(from.checked_div(to)?))
            .and_then(|reading| reading.checked_sub(to_zero))
            .ok_or(AmountError::ValueOutOfRange { unit })?;
        match self.basis {
            Some(basis) => Self::share(value, unit, basis),
            None => Self::new(value, unit),
        }
    }
}

/// How many of `unit` the quantity is, household words measured in `system`.
///
/// # Errors
/// As [`Amount::to`].
pub fn value_in<Q: Measurable>(
    quantity: Q,
    unit: Unit,
    system: System,
) -> Result<f64, AmountError> {
    let found = unit.dimension();
    if !found.serves_as(Q::DIMENSION) {
        return Err(AmountError::WrongDimension { unit, found, wanted: Q::DIMENSION });
    }
    let reading = quantity.si() / unit.factor(system)?.to_f64();
    Ok(match unit.scale_offset() {
        Some(offset) if Q::DIMENSION == Dimension::TEMPERATURE => reading - offset.to_f64(),
        _ => reading,
    })
}

/// The share that `text` states, in a field that itself says of what: `3 %`, `200 ppm`, `0.03`, `1/3`.
///
/// # Errors
/// As [`Amount::parse`]; [`AmountError::WrongDimension`] for a unit that is not a share.
pub fn parse_share(text: &str) -> Result<Ratio, AmountError> {
    let (value, unit) = super::parse::number_and_unit(text)?;
    let Some(unit) = unit else {
        return Ok(Ratio::from_si(value.to_f64()));
    };
    let found = unit.dimension();
    if found != Dimension::RATIO {
        return Err(AmountError::WrongDimension { unit, found, wanted: Dimension::RATIO });
    }
    // A share has no household word, so every system gives it the same size.
    let factor = unit.factor(System::Metric)?;
    Ok(Ratio::from_si(rounded_product(value, Rational::ZERO, factor)))
}

/// (value + offset) · factor, rounded once where the exact product fits.
pub(super) fn rounded_product(value: Rational, offset: Rational, factor: Rational) -> f64 {
    let sum = if offset.is_zero() { Some(value) } else { value.checked_add(offset) };
    sum.and_then(|sum| sum.product_to_f64(factor))
        .unwrap_or_else(|| (value.to_f64() + offset.to_f64()) * factor.to_f64())
}

/// The error that a bare per cent is.
pub(super) fn without_basis(text: &str) -> AmountError {
    let text = super::error::quoted(text);
    let readings: [String; 2] = [format!("{text} of base"), format!("{text} of finished")];
    AmountError::Ambiguous { text, readings: readings.into() }
}

/// Text that [`Amount::parse`] reads back as this amount.
///
/// Household measures print as mixed fractions where the denominator is one that spoons have (2, 3, 4, 6, 8,
/// 16, 32), all else as decimals; a number without a finite decimal prints as a fraction.
impl fmt::Display for Amount {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.write_to(f)
    }
}

/// `of base`, `of finished`, `of finished by volume`.
impl fmt::Display for Basis {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self.share {
            Share::OfBase => "of base",
            Share::OfFinished => "of finished",
        })?;
        match self.by {
            By::Mass => Ok(()),
            By::Volume => f.write_str(" by volume"),
        }
    }
}

impl FromStr for Amount {
    type Err = AmountError;

    fn from_str(text: &str) -> Result<Self, AmountError> {
        Self::parse(text)
    }
}

#[cfg(test)]
pub(super) mod tests {
    use super::*;
    use crate::quantity::unit::tests::any_unit;
    use crate::quantity::{
        Length, Mass, MassDensity, Pressure, TemperatureInterval, ThermodynamicTemperature, Volume,
    };
    use proptest::prelude::*;
    use rstest::rstest;

    fn volume(text: &str, system: System) -> f64 {
        Amount::parse(text).expect("an amount").to::<Volume>(system).expect("a volume").si()
    }

    #[rstest]
    // The exact sizes in m³ as decimal text, which the compiler rounds to the nearest f64.
    #[case("1 cup", System::UsCustomary, 236.588_236_5e-6)]
    #[case("1 tsp", System::UsCustomary, 4.928_921_593_75e-6)]
    #[case("1 1/4 cup", System::UsCustomary, 295.735_295_625e-6)]
    #[case("1 gal", System::UsCustomary, 3_785.411_784e-6)]
    #[case("0.1 fl oz", System::UsCustomary, 2.957_352_956_25e-6)]
    #[case("1 cup", System::UsLabel, 240e-6)]
    #[case("1/3 cup", System::UsLabel, 80e-6)]
    #[case("1 cup", System::Metric, 250e-6)]
    #[case("1 cup", System::Imperial, 284.130_625e-6)]
    #[case("1 metric cup", System::UsCustomary, 250e-6)]
    #[case("1 [cup_m]", System::Imperial, 240e-6)]
    #[case("1 imperial fl oz", System::Metric, 28.413_062_5e-6)]
    #[case("0.1 mL", System::Metric, 1e-7)]
    #[case("20 [drp]", System::Metric, 1e-6)]
    fn a_volume_is_rounded_once(#[case] text: &str, #[case] system: System, #[case] si: f64) {
        assert_eq!(volume(text, system).to_bits(), si.to_bits());
    }

    #[rstest]
    // NIST SP 811, Appendix B.8 and B.9: T/K = t/°C + 273.15 = (t/°F + 459.67)/1.8.
    #[case("0 °C", 273.15)]
    #[case("32 °F", 273.15)]
    #[case("-40 °F", 233.15)]
    #[case("-40 °C", 233.15)]
    #[case("68 °F", 293.15)]
    #[case("-459.67 °F", 0.0)]
    #[case("350 Cel", 623.15)]
    fn a_temperature_has_a_zero(#[case] text: &str, #[case] kelvin: f64) {
        let amount = Amount::parse(text).expect("an amount");
        let temperature = amount.to::<ThermodynamicTemperature>(System::Metric);
        assert_eq!(temperature.expect("a temperature").si(), kelvin);
    }

    #[test]
    fn degrees_can_be_a_difference_where_one_is_asked_for() {
        let amount = Amount::parse("9 °F").expect("an amount");
        assert_eq!(
            amount.to::<TemperatureInterval>(System::Metric).expect("a difference").si(),
            5.0
        );
        let difference = Amount::parse("5 2.K").expect("an amount");
        assert!(difference.to::<ThermodynamicTemperature>(System::Metric).is_err());
    }

    #[test]
    fn other_quantities() {
        let us = System::UsCustomary;
        let read = |text| Amount::parse(text).expect("an amount");
        assert_eq!(read("1 lb").to::<Mass>(us).expect("a mass").si(), 0.453_592_37);
        assert_eq!(read("35 mil").to::<Length>(us).expect("a length").si(), 0.000_889);
        assert_eq!(read("1.03 g/mL").to::<MassDensity>(us).expect("a density").si(), 1030.0);
        assert_eq!(read("1 [in_i'Hg]").to::<Pressure>(us).expect("a pressure").si(), 3386.3788);
        assert_eq!(read("40 drops").drops(), Some(Rational::from_int(40)));
        assert_eq!(read("40 pieces").drops(), None);
        assert_eq!(read("40 pieces").pieces(), Some(Rational::from_int(40)));
        assert_eq!(read("8 % of base").to::<Ratio>(us).expect("a ratio").si(), 0.08);
    }

    #[test]
    fn a_mismatch_names_both_sides() {
        let drops = Amount::parse("40 drops").expect("an amount");
        assert_eq!(
            drops.to::<Volume>(System::Metric).expect_err("a count").to_string(),
            "A count in drop is given where a volume is needed."
        );
    }

    #[rstest]
    #[case("60 tsp", "cup", System::UsCustomary, "1 1/4 cup")]
    #[case("1 cup", "[drp]", System::UsLabel, "4800 [drp]")]
    #[case("1 tsp", "[drp]", System::UsCustomary, "98.578431875 [drp]")]
    #[case("350 °F", "°C", System::Metric, "176 2/3 °C")]
    #[case("20 °C", "°F", System::Metric, "68 °F")]
    #[case("8 % of base", "ppm", System::Metric, "80000 ppm of base")]
    fn changes_unit_exactly(
        #[case] from: &str,
        #[case] unit: &str,
        #[case] system: System,
        #[case] to: &str,
    ) {
        let unit = Unit::parse(unit).expect("a unit");
        let amount = Amount::parse(from).expect("an amount").in_unit(unit, system);
        assert_eq!(amount.expect("the same dimension").to_string(), to);
    }

    #[rstest]
    #[case("3 %", 0.03)]
    #[case("0.03", 0.03)]
    #[case("1/3", 1.0 / 3.0)]
    #[case("200 ppm", 0.0002)]
    fn a_share_needs_no_basis_where_the_field_has_one(#[case] text: &str, #[case] ratio: f64) {
        assert_eq!(parse_share(text).expect("a share").si(), ratio);
    }

    #[rstest]
    #[case("-3 %")]
    #[case("3 g")]
    #[case("")]
    #[case("three")]
    fn is_no_share(#[case] text: &str) {
        assert!(parse_share(text).is_err());
    }

    #[cfg(feature = "document")]
    #[rstest]
    #[case(1, 7)]
    #[case(1, 999)]
    #[case(3, 1024)] // a decimal, 0.0029296875
    fn a_number_that_people_read_is_kept(#[case] n: i128, #[case] d: i128) {
        let amount = Amount::new(Rational::new(n, d).unwrap(), Unit::GRAM).unwrap();
        assert_eq!(amount.legible(), amount);
    }

    #[cfg(feature = "document")]
    #[test]
    fn a_fraction_that_nobody_reads_is_a_decimal() {
        let amount = Amount::new(Rational::new(1, 1001).unwrap(), Unit::GRAM).unwrap();
        assert_eq!(amount.legible().value(), Rational::from_f64(1.0 / 1001.0).unwrap());
    }

    #[test]
    fn a_temperature_too_fine_for_the_fractions_stays_near() {
        let fine =
            Rational::new(123_456_789_012_345_678_901_234_567_890, i128::MAX).expect("a fraction");
        let amount = Amount::new(fine, Unit::FAHRENHEIT).expect("an amount");
        let got = amount.to::<ThermodynamicTemperature>(System::Metric).expect("one").si();
        let near = (fine.to_f64() + 459.67) * 5.0 / 9.0;
        assert!((got - near).abs() <= 4.0 * f64::EPSILON * near, "{got}");
    }

    #[test]
    fn a_difference_of_temperatures_has_no_zero() {
        use crate::quantity::TemperatureInterval;
        let in_unit = |unit| value_in(TemperatureInterval::from_si(5.0), unit, System::Metric);
        assert_eq!(in_unit(Unit::CELSIUS), Ok(5.0));
        assert!((in_unit(Unit::FAHRENHEIT).unwrap() - 9.0).abs() < 1e-12);
    }

    #[test]
    fn a_long_text_is_quoted_by_its_beginning() {
        let message = |letters: usize| Amount::parse(&"a".repeat(letters)).unwrap_err().to_string();
        assert!(message(60).starts_with(&format!("`{}`", "a".repeat(60))), "{}", message(60));
        assert!(message(61).starts_with(&format!("`{}…`", "a".repeat(60))), "{}", message(61));
    }

    #[test]
    fn a_product_too_fine_for_the_fractions_stays_near() {
        let fine =
            Rational::new(123_456_789_012_345_678_901_234_567, i128::MAX).expect("a fraction");
        let amount = Amount::new(fine, Unit::CUP).expect("an amount");
        let got = amount.to::<Volume>(System::UsCustomary).expect("a volume").si();
        let near = fine.to_f64() * 236.588_236_5e-6;
        assert!((got - near).abs() <= 2.0 * f64::EPSILON * near);
    }

    pub(crate) fn any_amount() -> impl Strategy<Value = Amount> {
        let decimal = (0_i64..10_000_000, 0_u32..8)
            .prop_map(|(n, decimals)| (i128::from(n), 10_i128.pow(decimals)));
        let spoon = (0_i128..200, prop::sample::select(std::vec![1_i128, 2, 3, 4, 6, 8, 16, 32]));
        let wild = (0..=i128::MAX, 1..=i128::MAX);
        let value = prop_oneof![decimal, spoon, wild]
            .prop_filter_map("a fraction", |(n, d)| Rational::new(n, d));
        let share = prop::sample::select(std::vec![Share::OfBase, Share::OfFinished]);
        let by = prop::sample::select(std::vec![By::Mass, By::Volume]);
        let basis = (share, by).prop_map(|(share, by)| Basis { share, by });
        (value, any_unit(), basis).prop_map(|(value, unit, basis)| {
            if unit.is_share() {
                Amount::share(value, unit, basis).expect("not negative")
            } else {
                Amount::new(value, unit).expect("not negative")
            }
        })
    }

    proptest! {
        #[test]
        fn reads_back_what_it_prints(amount in any_amount()) {
            let printed = amount.to_string();
            prop_assert_eq!(Amount::parse(&printed), Ok(amount), "{}", printed);
        }

        // The same product as decimal text, rounded by the standard library.
        #[test]
        fn a_conversion_is_the_nearest_f64(thousandths in 0_i64..10_000_000) {
            let value = Rational::new(i128::from(thousandths), 1000).expect("a fraction");
            let cups = Amount::new(value, Unit::CUP).expect("an amount");
            let got = cups.to::<Volume>(System::UsCustomary).expect("a volume").si();
            let text = format!("{}e-16", i128::from(thousandths) * 2_365_882_365);
            prop_assert_eq!(got.to_bits(), text.parse::<f64>().expect("decimal text").to_bits());
        }

        #[test]
        fn changing_the_unit_and_back_changes_nothing(n in 0_i64..100_000, d in 1_i64..64) {
            let value = Rational::new(i128::from(n), i128::from(d)).expect("a fraction");
            for (one, other) in [(Unit::CUP, Unit::TSP), (Unit::FL_OZ, Unit::MILLILITER), (Unit::FAHRENHEIT, Unit::CELSIUS)] {
                let amount = Amount::new(value, one).expect("an amount");
                let there = amount.in_unit(other, System::UsCustomary).expect("the same dimension");
                prop_assert_eq!(there.in_unit(one, System::UsCustomary), Ok(amount));
            }
        }

        #[test]
        fn a_quantity_reads_as_its_amount(n in 1_i64..100_000) {
            let amount = Amount::new(Rational::from_int(n), Unit::FAHRENHEIT).expect("an amount");
            let temperature: ThermodynamicTemperature = amount.to(System::Metric).expect("a temperature");
            let read = value_in(temperature, Unit::FAHRENHEIT, System::Metric).expect("a temperature");
            prop_assert!((read - n as f64).abs() < 1e-9);
        }
    }
}
