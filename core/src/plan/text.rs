//! Quantities of a plan in the words of a bench.

use alloc::format;
use alloc::string::{String, ToString};

use super::{Showable, Shown};
use crate::quantity::{
    Amount, AmountError, Mass, MassDensity, Measurable, Ratio, Rational, System,
    ThermodynamicTemperature, Unit, Volume, nearest_fraction, nearest_household, nearest_multiple,
    significant,
};

/// The text of an amount, or of the plain number where it is beyond what amounts can write.
fn or_plain<Q: Showable>(amount: Result<Amount, AmountError>, quantity: Q) -> String {
    amount.map_or_else(
        |_| format!("{} {}", quantity.shown_value(), Q::UNIT),
        |amount| amount.to_string(),
    )
}

/// A step of one decimal place.
fn step(denominator: i128, unit: Unit) -> Result<Amount, AmountError> {
    let value = Rational::new(1, denominator).unwrap_or(Rational::ONE);
    Amount::new(value, unit)
}

fn nearest<Q: Showable>(quantity: Q, denominator: i128, unit: Unit) -> String {
    let amount =
        step(denominator, unit).and_then(|step| nearest_multiple(quantity, step, System::Metric));
    or_plain(amount, quantity)
}

/// A mass to a tenth of a gram, to a hundredth below 10 g.
pub(crate) fn mass(mass: Mass) -> Shown<Mass> {
    let denominator = if mass.shown_value() < 10.0 { 100 } else { 10 };
    Shown::new(mass, nearest(mass, denominator, Unit::GRAM))
}

/// The volume of a cup that is marked in steps of `step`: `2 cup`, `500 mL`.
pub(crate) fn cup(volume: Volume, step: Volume, system: System) -> Shown<Volume> {
    Shown::new(volume, mark(volume, step, system))
}

/// A mark of a cup that is marked in steps of `step`, in cups where the step is a fraction of one.
pub(crate) fn mark(volume: Volume, step: Volume, system: System) -> String {
    let in_cups = |volume| {
        let cups = nearest_fraction(volume, Unit::CUP, &[1, 2, 3, 4, 8], system).ok();
        cups.filter(|cups| says(cups, volume, system))
    };
    match (in_cups(step), in_cups(volume)) {
        (Some(_), Some(cups)) => cups.to_string(),
        _ => four_digits(volume, system),
    }
}

/// A volume as spoons and cups hold it: `2 tbsp`.
pub(crate) fn scoop(volume: Volume, system: System) -> Shown<Volume> {
    Shown::new(volume, household(volume, system))
}

/// A volume to a hundredth of a milliliter.
pub(crate) fn milliliters(volume: Volume) -> Shown<Volume> {
    Shown::new(volume, nearest(volume, 100, Unit::MILLILITER))
}

/// A volume to a milliliter, and to the nearest eighth of a cup: `305 mL (1 1/4 cup)`.
pub(crate) fn volume(volume: Volume, system: System) -> Shown<Volume> {
    let milliliters = nearest(volume, 1, Unit::MILLILITER);
    let text = match nearest_fraction(volume, Unit::CUP, &[1, 2, 4, 8], system) {
        Ok(cups) if !cups.value().is_zero() => format!("{milliliters} ({cups})"),
        _ => milliliters,
    };
    Shown::new(volume, text)
}

/// A volume in household measure where one fits within 1 in 1000, else in milliliters of four digits.
pub(crate) fn household(volume: Volume, system: System) -> String {
    let amount = nearest_household(volume, system, Ratio::from(1e-3)).ok();
    amount
        .filter(|amount| says(amount, volume, system))
        .map_or_else(|| four_digits(volume, system), |amount| amount.to_string())
}

/// Whether `amount` is `volume` within 1 in 1000.
fn says(amount: &Amount, volume: Volume, system: System) -> bool {
    let said = amount.to::<Volume>(system);
    said.is_ok_and(|said| libm::fabs(said.si() - volume.si()) <= 1e-3 * volume.si())
}

fn four_digits(volume: Volume, system: System) -> String {
    or_plain(significant(volume, Unit::MILLILITER, 4, system), volume)
}

/// What a balance of this readability shows, with as many decimals as its step has (at most 6).
pub(crate) fn balance(reading: Mass, readability: Option<Mass>) -> String {
    const MOST: usize = 6;
    let mut step = readability.map_or(0.1, |readability| readability.shown_value());
    let mut decimals = 0;
    while decimals < MOST && libm::fabs(step - libm::rint(step)) > 1e-6 * step {
        step *= 10.0;
        decimals = decimals.saturating_add(1);
    }
    // A balance shows its last zero: 12.0 g.
    format!("{:.*} g", decimals, reading.shown_value())
}

/// A density to a thousandth.
pub(crate) fn density(density: MassDensity) -> Shown<MassDensity> {
    Shown::new(density, nearest(density, 1000, Unit::GRAM_PER_MILLILITER))
}

/// A share in per cent.
pub(crate) fn percent(share: Ratio) -> Shown<Ratio> {
    let tenths = libm::round(share.si() * 1000.0);
    Shown::new(share, format!("{} %", tenths / 10.0))
}

/// A deviation in per cent with its sign.
pub(crate) fn signed_percent(off: Ratio) -> String {
    let tenths = libm::round(off.si() * 1000.0);
    if tenths == 0.0 { "0 %".to_string() } else { format!("{:+.1} %", tenths / 10.0) }
}

/// A temperature on both scales: `338 °F (170 °C)`, that of the system first.
pub(crate) fn temperature(
    at: ThermodynamicTemperature,
    system: System,
) -> Shown<ThermodynamicTemperature> {
    let fahrenheit = nearest(at, 1, Unit::FAHRENHEIT);
    let celsius = nearest(at, 1, Unit::CELSIUS);
    let text = match system {
        System::UsCustomary | System::UsLabel => format!("{fahrenheit} ({celsius})"),
        System::Metric | System::Imperial => format!("{celsius} ({fahrenheit})"),
    };
    Shown::new(at, text)
}
