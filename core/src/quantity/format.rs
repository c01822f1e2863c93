//! Rounding quantities to what a bench reads.
//!
//! Each function answers an [`Amount`], whose text reads back as the same amount. A quantity within 1e-9 of a step
//! of the middle between two readings counts as the middle, and the middle goes away from zero: rounding
//! noise of the calculation before does not decide. Zero is never `-0`.

use super::{Amount, AmountError, Measurable, Rational, System, Unit, Volume, value_in};

/// Denominators that spoon sets and cup marks have.
const CUP_FRACTIONS: [u8; 4] = [1, 2, 3, 4];
const TABLESPOON_FRACTIONS: [u8; 2] = [1, 2];
const TEASPOON_FRACTIONS: [u8; 6] = [1, 2, 4, 8, 16, 32];
const FLUID_OUNCE_FRACTIONS: [u8; 4] = [1, 2, 4, 8];

/// How near a quotient must be to the middle between two whole numbers to count as the middle.
const MIDDLE: f64 = 1e-9;
/// Whole numbers up to here are exact in an `f64`.
const LARGEST_WHOLE: f64 = 9_007_199_254_740_992.0;

/// `quantity` in `unit`, to the nearest fraction that one of `denominators` gives: `1 1/4 cup`.
///
/// Of two equally near fractions the one with the smaller denominator is taken.
///
/// # Errors
/// [`AmountError::NoStep`] where no denominator is given or one is 0, [`AmountError::ValueOutOfRange`] for a
/// quantity that is not finite or too large, and what [`Amount::to`] and [`Amount::new`] refuse.
pub fn nearest_fraction<Q: Measurable>(
    quantity: Q,
    unit: Unit,
    denominators: &[u8],
    system: System,
) -> Result<Amount, AmountError> {
    let reading = value_in(quantity, unit, system)?;
    Amount::new(fraction_near(reading, unit, denominators)?, unit)
}

/// `volume` in the household measure of `system` that a person would reach for: cup, tbsp or tsp (in imperial
/// measures, which have no spoons: cup or fl oz).
///
/// Cups are marked in halves, thirds and quarters, tablespoons in halves, teaspoons in halves down to 1/32, fluid
/// ounces in halves down to 1/8. The largest measure with a mark that is off by at most `tolerance` of the volume is
/// taken, and in it the coarsest such fraction; without one, the nearest mark of all. A volume below half
/// of the smallest mark is 0 of the smallest measure.
///
/// # Errors
/// As [`nearest_fraction`].
pub fn nearest_household(
    volume: Volume,
    system: System,
    tolerance: super::Ratio,
) -> Result<Amount, AmountError> {
    let measures: &[(Unit, &[u8])] = match system {
        System::UsCustomary | System::UsLabel | System::Metric => &[
            (Unit::CUP, &CUP_FRACTIONS),
            (Unit::TBSP, &TABLESPOON_FRACTIONS),
            (Unit::TSP, &TEASPOON_FRACTIONS),
        ],
        System::Imperial => &[(Unit::CUP, &CUP_FRACTIONS), (Unit::FL_OZ, &FLUID_OUNCE_FRACTIONS)],
    };
    let mut best: Option<(f64, Amount)> = None;
    for (unit, fractions) in measures {
        let reading = value_in(volume, *unit, system)?;
        for denominator in *fractions {
            let amount = Amount::new(fraction_near(reading, *unit, &[*denominator])?, *unit)?;
            let off = libm::fabs(amount.to::<Volume>(system)?.si() - volume.si());
            if off <= tolerance.si() * volume.si() && !amount.value().is_zero() {
                return Ok(amount);
            }
            if best.is_none_or(|(least, _)| off <= least) {
                best = Some((off, amount));
            }
        }
    }
    best.map(|(_, amount)| amount).ok_or(AmountError::NoStep { what: "no measure at all" })
}

/// `quantity` to the nearest multiple of `step`, in the step's unit: to the `0.1 g` that a balance reads.
///
/// # Errors
/// [`AmountError::NoStep`] where the step is not above 0, and as [`nearest_fraction`].
pub fn nearest_multiple<Q: Measurable>(
    quantity: Q,
    step: Amount,
    system: System,
) -> Result<Amount, AmountError> {
    let unit = step.unit();
    if step.value().numerator() <= 0 {
        return Err(AmountError::NoStep { what: "a multiple of nothing" });
    }
    let reading = value_in(quantity, unit, system)?;
    let value = whole_near(reading / step.value().to_f64())
        .and_then(|steps| Rational::from_int(steps).checked_mul(step.value()))
        .ok_or(AmountError::ValueOutOfRange { unit })?;
    Amount::new(value, unit)
}

/// `quantity` in `unit`, to a number of significant decimal digits (1 to 15): `12.3 g`, `163 °C`.
///
/// # Errors
/// [`AmountError::NoStep`] for 0 or more than 15 digits, and as [`nearest_fraction`].
pub fn significant<Q: Measurable>(
    quantity: Q,
    unit: Unit,
    digits: u8,
    system: System,
) -> Result<Amount, AmountError> {
    if !(1..=15).contains(&digits) {
        return Err(AmountError::NoStep { what: "fewer than 1 or more than 15 digits" });
    }
    let reading = value_in(quantity, unit, system)?;
    let value = significant_near(reading, digits).ok_or(AmountError::ValueOutOfRange { unit })?;
    Amount::new(value, unit)
}

fn fraction_near(reading: f64, unit: Unit, denominators: &[u8]) -> Result<Rational, AmountError> {
    let mut best: Option<(f64, Rational)> = None;
    for denominator in denominators {
        let parts = whole_near(reading * f64::from(*denominator))
            .ok_or(AmountError::ValueOutOfRange { unit })?;
        let fraction = Rational::new(i128::from(parts), i128::from(*denominator))
            .ok_or(AmountError::NoStep { what: "a fraction over zero" })?;
        let off = libm::fabs(fraction.to_f64() - reading);
        let better = best.is_none_or(|(least, held)| {
            off < least - MIDDLE
                || (off < least + MIDDLE && fraction.denominator() < held.denominator())
        });
        if better {
            best = Some((off, fraction));
        }
    }
    best.map(|(_, fraction)| fraction).ok_or(AmountError::NoStep { what: "no fraction at all" })
}

/// `reading` to `digits` significant digits; `None` if it is not finite or does not fit.
pub(crate) fn significant_near(reading: f64, digits: u8) -> Option<Rational> {
    let magnitude = libm::fabs(reading);
    if magnitude == 0.0 {
        return Some(Rational::ZERO);
    }
    if !magnitude.is_finite() {
        return None;
    }
    let leading = libm::floor(libm::log10(magnitude)) as i32;
    let decimals = i32::from(digits).saturating_sub(1).saturating_sub(leading);
    let scale = Rational::from_int(10).checked_pow(i8::try_from(decimals).ok()?)?;
    let steps = whole_near(reading * scale.to_f64())?;
    Rational::from_int(steps).checked_div(scale)
}

/// The nearest whole number, the middle away from zero; `None` if it is not exact in an `f64`.
pub(crate) fn whole_near(quotient: f64) -> Option<i64> {
    let magnitude = libm::fabs(quotient);
    if magnitude.is_nan() || magnitude > LARGEST_WHOLE {
        return None;
    }
    let whole = libm::floor(magnitude + 0.5 + MIDDLE) as i64;
    Some(if quotient < 0.0 { whole.saturating_neg() } else { whole })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::{Mass, Ratio, ThermodynamicTemperature};
    use proptest::prelude::*;
    use rstest::rstest;
    use std::string::ToString;

    const US: System = System::UsCustomary;

    fn ml(value: f64) -> Volume {
        Volume::from_si(value * 1e-6)
    }

    fn grams(value: f64) -> Mass {
        Mass::from_si(value * 1e-3)
    }

    #[rstest]
    #[case(295.7, "1 1/4 cup")]
    #[case(78.9, "1/3 cup")]
    #[case(236.0, "1 cup")]
    #[case(0.0, "0 cup")]
    #[case(-0.0, "0 cup")]
    fn to_the_nearest_fraction(#[case] volume: f64, #[case] text: &str) {
        let amount = nearest_fraction(ml(volume), Unit::CUP, &CUP_FRACTIONS, US);
        assert_eq!(amount.expect("an amount").to_string(), text);
    }

    /// 5/12 of a liter is as near to 1/3 as to 1/2, whichever is tried first; 1/3 is nearer to itself.
    #[rstest]
    #[case(5.0 / 12.0, &[3, 2], "1/2 L")]
    #[case(5.0 / 12.0, &[2, 3], "1/2 L")]
    #[case(1.0 / 3.0, &[3, 2], "1/3 L")]
    #[case(1.0 / 3.0, &[2, 3], "1/3 L")]
    fn of_two_as_near_the_coarser(
        #[case] liters: f64,
        #[case] denominators: &[u8],
        #[case] text: &str,
    ) {
        let liter = Unit::parse("L").expect("a unit");
        let volume = ml(liters * 1e3);
        let amount = fraction_near(volume.si() * 1e3, liter, denominators).expect("a fraction");
        assert_eq!(std::format!("{} L", amount.mixed()), text);
    }

    #[test]
    fn whole_numbers_have_their_ends() {
        let most = LARGEST_WHOLE;
        assert_eq!((whole_near(most), whole_near(-most)), (Some(1 << 53), Some(-(1 << 53))));
        assert_eq!((whole_near(most * 2.0), whole_near(f64::NAN)), (None, None));
        assert!(significant(grams(1.0), Unit::GRAM, 15, US).is_ok());
        assert!(significant(grams(1.0), Unit::GRAM, 16, US).is_err());
        let nothing = nearest_multiple(grams(1.0), Amount::parse("0 g").expect("an amount"), US);
        assert_eq!(nothing, Err(AmountError::NoStep { what: "a multiple of nothing" }));
    }

    /// Without a tolerance only what fits exactly is taken.
    #[test]
    fn what_fits_exactly_needs_no_tolerance() {
        let exactly = |volume: f64| {
            let cups =
                nearest_household(Volume::from_si(volume), System::Metric, Ratio::from_si(0.0));
            cups.expect("an amount").to_string()
        };
        assert_eq!(
            (exactly(250e-6), exactly(125e-6)),
            ("1 cup".to_string(), "1/2 cup".to_string())
        );
    }

    #[rstest]
    #[case(US, 118.3, "1/2 cup")]
    #[case(US, 59.15, "1/4 cup")]
    #[case(US, 14.8, "1 tbsp")]
    #[case(US, 22.2, "1 1/2 tbsp")]
    #[case(US, 2.46, "1/2 tsp")]
    #[case(US, 0.62, "1/8 tsp")]
    #[case(US, 40.0, "8 tsp")]
    #[case(US, 0.0, "0 tsp")]
    #[case(US, 0.05, "0 tsp")]
    #[case(System::Metric, 250.0, "1 cup")]
    #[case(System::Metric, 15.0, "1 tbsp")]
    #[case(System::Metric, 5.0, "1 tsp")]
    #[case(System::UsLabel, 30.0, "2 tbsp")]
    #[case(System::Imperial, 142.0, "1/2 cup")]
    #[case(System::Imperial, 28.4, "1 fl oz")]
    fn in_the_measure_at_hand(#[case] system: System, #[case] volume: f64, #[case] text: &str) {
        let amount = nearest_household(ml(volume), system, Ratio::from_si(0.02));
        assert_eq!(amount.expect("an amount").to_string(), text);
    }

    #[rstest]
    #[case(12.34, "0.1 g", "12.3 g")]
    #[case(12.35, "0.1 g", "12.4 g")]
    #[case(0.05, "0.1 g", "0.1 g")]
    #[case(47.2, "1 g", "47 g")]
    #[case(47.2, "5 g", "45 g")]
    #[case(12.376, "0.05 g", "12.4 g")]
    #[case(1e-20, "0.1 g", "0 g")]
    #[case(500.0, "0.1 oz wt", "17.6 oz wt")]
    fn to_what_a_balance_reads(#[case] mass: f64, #[case] step: &str, #[case] text: &str) {
        let step = Amount::parse(step).expect("a step");
        let amount = nearest_multiple(grams(mass), step, US);
        assert_eq!(amount.expect("an amount").to_string(), text);
    }

    #[rstest]
    #[case(12.3456, 3, "12.3 g")]
    #[case(0.012_345_6, 3, "0.0123 g")]
    #[case(9.996, 3, "10 g")]
    #[case(1234.5, 2, "1200 g")]
    #[case(1000.0, 1, "1000 g")]
    #[case(0.0, 3, "0 g")]
    fn to_significant_digits(#[case] mass: f64, #[case] digits: u8, #[case] text: &str) {
        let amount = significant(grams(mass), Unit::GRAM, digits, US);
        assert_eq!(amount.expect("an amount").to_string(), text);
    }

    #[rstest]
    #[case("330 °F", "5 °C", "165 °C")]
    #[case("330 °F", "1 °C", "166 °C")]
    #[case("163 °C", "5 °F", "325 °F")]
    #[case("-17.9 °C", "1 °F", "0 °F")]
    #[case("-40 °C", "1 °F", "-40 °F")]
    fn temperatures(#[case] from: &str, #[case] step: &str, #[case] text: &str) {
        let read = |text| Amount::parse(text).expect("an amount");
        let temperature: ThermodynamicTemperature = read(from).to(US).expect("a temperature");
        let amount = nearest_multiple(temperature, read(step), US);
        assert_eq!(amount.expect("an amount").to_string(), text);
    }

    #[test]
    fn what_cannot_be_written_is_an_error() {
        let step = Amount::parse("0 g").expect("an amount");
        assert!(nearest_multiple(grams(1.0), step, US).is_err());
        assert!(nearest_fraction(ml(1.0), Unit::CUP, &[], US).is_err());
        assert!(nearest_fraction(ml(1.0), Unit::CUP, &[0], US).is_err());
        assert!(significant(grams(1.0), Unit::GRAM, 0, US).is_err());
        assert!(significant(grams(1.0), Unit::CUP, 3, US).is_err());
        for bad in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY, -1000.0, f64::MAX] {
            assert!(significant(grams(bad), Unit::GRAM, 3, US).is_err());
            assert!(nearest_fraction(ml(bad), Unit::CUP, &CUP_FRACTIONS, US).is_err());
            assert!(nearest_household(ml(bad), US, Ratio::from_si(0.02)).is_err());
        }
    }

    proptest! {
        #[test]
        fn a_fraction_is_off_by_at_most_half_of_its_finest_step(volume in 0.0_f64..5000.0) {
            let amount = nearest_fraction(ml(volume), Unit::TSP, &TEASPOON_FRACTIONS, US).expect("an amount");
            let off = (amount.to::<Volume>(US).expect("a volume").si() - ml(volume).si()).abs();
            prop_assert!(off <= 4.928_921_593_75e-6 / 64.0 * (1.0 + 1e-6));
            prop_assert_eq!(Amount::parse(&amount.to_string()), Ok(amount));
        }

        #[test]
        fn a_reading_is_off_by_at_most_half_a_step(mass in 0.0_f64..5000.0) {
            let step = Amount::parse("0.1 g").expect("a step");
            let amount = nearest_multiple(grams(mass), step, US).expect("an amount");
            let off = (amount.to::<Mass>(US).expect("a mass").si() - grams(mass).si()).abs();
            prop_assert!(off <= 0.05e-3 * (1.0 + 1e-6));
            prop_assert_eq!(nearest_multiple(amount.to::<Mass>(US).expect("a mass"), step, US), Ok(amount));
        }

        #[test]
        fn digits_are_off_by_at_most_half_of_the_last(mass in 1e-6_f64..1e6) {
            let amount = significant(grams(mass), Unit::GRAM, 4, US).expect("an amount");
            let off = (amount.value().to_f64() - mass).abs();
            prop_assert!(off <= 0.5e-3 * mass * (1.0 + 1e-6));
        }
    }
}
