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

/// How near a quotient must lie to the middle between two whole numbers to count as the middle.
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
/// The largest measure whose nearest mark (cups in halves, thirds and quarters, tablespoons in halves, teaspoons in
/// halves down to 1/32, fluid ounces in halves down to 1/8) is off by at most `tolerance` of the volume; where none
/// is, the nearest mark of all. A volume below half of the smallest mark is 0 of the smallest measure.
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
        let amount = nearest_fraction(volume, *unit, fractions, system)?;
        let off = libm::fabs(amount.to::<Volume>(system)?.si() - volume.si());
        if off <= tolerance.si() * volume.si() && !amount.value().is_zero() {
            return Ok(amount);
        }
        if best.is_none_or(|(least, _)| off <= least) {
            best = Some((off, amount));
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
    if step.value() <= Rational::ZERO {
        return Err(AmountError::NoStep { what: "a multiple of nothing" });
    }
    let reading = value_in(quantity, unit, system)?;
    let value = whole_near(reading / step.value().to_f64())
        .and_then(|steps| Rational::from_int(steps).checked_mul(step.value()))
        .ok_or(AmountError::ValueOutOfRange { unit })?;
    Amount::new(value, unit)
}

/// `quantity` in `unit`, to so many significant decimal digits (1 to 15): `12.3 g`, `163 °C`.
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

/// `reading` to `digits` significant digits; `None` where it is not finite or does not fit.
fn significant_near(reading: f64, digits: u8) -> Option<Rational> {
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

/// The nearest whole number, the middle away from zero; `None` where it is not exact in an `f64`.
fn whole_near(quotient: f64) -> Option<i64> {
    let magnitude = libm::fabs(quotient);
    if magnitude.is_nan() || magnitude > LARGEST_WHOLE {
        return None;
    }
    let whole = libm::floor(magnitude + 0.5 + MIDDLE) as i64;
    Some(if quotient < 0.0 { whole.saturating_neg() } else { whole })
}
