//! Quantities of a plan in the words of a bench.

use alloc::format;
use alloc::string::{String, ToString};

use super::{Showable, Shown, TextScale};
use crate::quantity::{
    Amount, AmountError, Mass, MassDensity, Measurable, Pressure, Ratio, Rational, System,
    ThermodynamicTemperature, Time, Unit, Velocity, Volume, nearest_fraction, nearest_household,
    nearest_multiple, significant, significant_near, value_in, whole_near,
};

/// The text of an amount, or of the plain number where it is beyond what amounts can write.
fn or_plain<Q: Showable>(amount: Result<Amount, AmountError>, quantity: Q) -> String {
    amount
        .map_or_else(|_| format!("{} {}", quantity.shown_value(), Q::UNIT), |amount| amount.text())
}

/// A step of one decimal place.
fn step(denominator: i128, unit: Unit) -> Result<Amount, AmountError> {
    let value = Rational::new(1, denominator).ok_or(AmountError::ValueOutOfRange { unit })?;
    Amount::new(value, unit)
}

fn nearest<Q: Showable>(quantity: Q, denominator: i128, unit: Unit) -> String {
    or_plain(near(quantity, denominator, unit), quantity)
}

fn near<Q: Showable>(quantity: Q, denominator: i128, unit: Unit) -> Result<Amount, AmountError> {
    step(denominator, unit).and_then(|step| nearest_multiple(quantity, step, System::Metric))
}

/// The number of an amount, where its unit is said already.
fn figure<Q: Showable>(amount: Result<Amount, AmountError>, quantity: Q) -> String {
    amount
        .map_or_else(|_| format!("{}", quantity.shown_value()), |amount| amount.value().to_string())
}

/// `quantity` by `amount`, which is near it, and whose text is shown; `unit` is the unit of results.
fn by_amount<Q: Showable>(
    quantity: Q,
    amount: Result<Amount, AmountError>,
    unit: Unit,
    system: System,
) -> Shown<Q> {
    match amount {
        Ok(amount) => Shown::new(quantity, amount.text()).said_by(&amount, unit, system),
        Err(error) => Shown::new(quantity, or_plain(Err(error), quantity)),
    }
}

/// A mass to a tenth of a gram, to a hundredth below 10 g.
pub(crate) fn mass(mass: Mass) -> Shown<Mass> {
    let denominator = if mass.shown_value() < 10.0 { 100 } else { 10 };
    by_amount(mass, near(mass, denominator, Unit::GRAM), Unit::GRAM, System::Metric)
}

/// The volume of a cup that is marked in steps of `step`: `2 cup`, `500 mL`.
pub(crate) fn cup(volume: Volume, step: Volume, system: System) -> Shown<Volume> {
    match marked_in_cups(volume, step, system) {
        Some(cups) => by_amount(volume, Ok(cups), Unit::MILLILITER, system),
        None => by_amount(volume, in_four_digits(volume, system), Unit::MILLILITER, system),
    }
}

/// A mark of a cup that is marked in steps of `step`, in cups where the step is a fraction of one.
pub(crate) fn mark(volume: Volume, step: Volume, system: System) -> String {
    match marked_in_cups(volume, step, system) {
        Some(cups) => cups.to_string(),
        None => four_digits(volume, system),
    }
}

/// Name of a cup that is marked in steps of `step`: `2-cup cup`, `500 mL cup`.
pub(crate) fn cup_name(volume: Volume, step: Volume, system: System) -> String {
    match marked_in_cups(volume, step, system) {
        Some(cups) => format!("{}-cup cup", cups.value().mixed()),
        None => format!("{} cup", four_digits(volume, system)),
    }
}

/// A volume in cups, where it and `step` are fractions of one.
fn marked_in_cups(volume: Volume, step: Volume, system: System) -> Option<Amount> {
    in_cups(step, system)?;
    in_cups(volume, system)
}

/// A level between the marks of a cup that is marked in steps of `step`, with the nearest eighth of a cup where
/// the step is a fraction of one.
pub(crate) fn between_marks(level: Volume, step: Volume, system: System) -> String {
    if in_cups(step, system).is_some() {
        volume(level, system).on_both_scales()
    } else {
        four_digits(level, system)
    }
}

/// `volume` in cups, where it is a fraction of one.
fn in_cups(volume: Volume, system: System) -> Option<Amount> {
    let cups = nearest_fraction(volume, Unit::CUP, &[3, 8], system).ok();
    cups.filter(|cups| says(cups, volume, system))
}

/// A volume as spoons and cups hold it: `2 tbsp`; what none holds, in milliliters with what comes near and by how much
/// that is off: `2.259 mL (about 1/4 + 1/8 + 1/16 tsp, -4.5 %)`.
#[cfg(feature = "document")]
pub(crate) fn scoop(volume: Volume, system: System) -> Shown<Volume> {
    if let Some(spooned) = spooned(volume, system) {
        return spooned;
    }
    // Near enough to be called by its name, a coarser measure is better than a finer one.
    let about = nearest_household(volume, system, Ratio::from(0.05)).ok();
    let about = about.filter(|amount| !amount.value().is_zero());
    let said = about.and_then(|about| Some((about, about.to::<Volume>(system).ok()?)));
    let milliliters = by_amount(volume, in_four_digits(volume, system), Unit::MILLILITER, system);
    match said {
        Some((about, said)) => {
            let off = signed_percent(said / volume - Ratio::from(1.0));
            let text = format!("{} (about {}, {off})", milliliters.text, spoons(&about));
            milliliters.with_text(text)
        }
        None => milliliters,
    }
}

/// A volume as spoons and cups hold it, within 1 in 1000; `None` where none does.
#[cfg(feature = "document")]
pub(crate) fn spooned(volume: Volume, system: System) -> Option<Shown<Volume>> {
    // Nobody levels more spoonfuls than that.
    const MOST_SPOONFULS: f64 = 6.0;
    let amount = nearest_household(volume, system, Ratio::from(1e-3)).ok()?;
    let is_few = amount.unit() != Unit::TSP || amount.value().to_f64() <= MOST_SPOONFULS;
    let holds = is_few && says(&amount, volume, system);
    holds.then(|| by_amount(volume, Ok(amount), Unit::MILLILITER, system))
}

/// An amount by the spoons that there are: of `7/16 tsp` a quarter, an eighth and a sixteenth.
#[cfg(feature = "document")]
fn spoons(amount: &Amount) -> String {
    let (value, whole) = (amount.value(), libm::floor(amount.value().to_f64()));
    let mut rest = value.to_f64() - whole;
    if amount.unit() != Unit::TSP || value.denominator() < 8 {
        return amount.to_string();
    }
    let mut text = if whole > 0.0 { format!("{whole} + ") } else { String::new() };
    for part in [2, 4, 8, 16, 32] {
        let spoon = 1.0 / f64::from(part);
        if rest >= spoon {
            rest -= spoon;
            let more = if rest > 0.0 { " + " } else { "" };
            text = format!("{text}1/{part}{more}");
        }
    }
    format!("{text} tsp")
}

/// A level that must not be passed: a mark of a vessel that is marked in steps of `step`, else rounded down, to a
/// milliliter and to an eighth of a cup: 575 mL, or 2 3/8 cup.
pub(crate) fn fill_mark(volume: Volume, step: Option<Volume>, system: System) -> Shown<Volume> {
    if let Some(step) = step {
        return cup(volume, step, system);
    }
    // Rounding must not cost a milliliter that is one exactly.
    let whole = |x: f64| libm::floor(x * (1.0 + 1e-12));
    let milliliters = whole(volume.shown_value());
    let cups = self::step(8, Unit::CUP).ok().and_then(|eighth| {
        let eighths = whole((volume / eighth.to::<Volume>(system).ok()?).value) as i64;
        let value = Rational::from_int(eighths).checked_mul(eighth.value())?;
        Amount::new(value, Unit::CUP).ok()
    });
    let milliliters = Amount::new(Rational::from_int(milliliters as i64), Unit::MILLILITER);
    match cups.filter(|cups| !cups.value().is_zero()) {
        Some(cups) => in_cups_or(volume, cups, milliliters, system),
        None => by_amount(volume, milliliters, Unit::MILLILITER, system),
    }
}

/// A volume to a hundredth of a milliliter.
pub(crate) fn milliliters(volume: Volume) -> Shown<Volume> {
    by_amount(volume, near(volume, 100, Unit::MILLILITER), Unit::MILLILITER, System::Metric)
}

/// A volume to a milliliter, and to the nearest eighth of a cup: 305 mL, or 1 1/4 cup.
pub(crate) fn volume(volume: Volume, system: System) -> Shown<Volume> {
    let milliliters = near(volume, 1, Unit::MILLILITER);
    match nearest_fraction(volume, Unit::CUP, &[1, 2, 4, 8], system) {
        Ok(cups) if !cups.value().is_zero() => in_cups_or(volume, cups, milliliters, system),
        _ => by_amount(volume, milliliters, Unit::MILLILITER, system),
    }
}

/// A volume in cups, or in milliliters, as the system measures; in milliliters too where the nearest eighth of a cup is
/// far from it.
fn in_cups_or(
    volume: Volume,
    cups: Amount,
    milliliters: Result<Amount, AmountError>,
    system: System,
) -> Shown<Volume> {
    const FAR: f64 = 0.05;
    let said = cups.to::<Volume>(system);
    let is_near = said.is_ok_and(|said| libm::fabs(said.si() - volume.si()) <= FAR * volume.si());
    let metric = by_amount(volume, milliliters, Unit::MILLILITER, system);
    if is_near && system != System::Metric {
        by_amount(volume, Ok(cups), Unit::MILLILITER, system).or(TextScale::Us, metric.text)
    } else {
        metric.or(TextScale::Metric, cups.to_string())
    }
}

/// A volume as a lower bound, rounded up to an eighth of a cup.
pub(crate) fn at_least_by_cup(bound: Volume, system: System) -> String {
    let eighth = step(8, Unit::CUP).and_then(|eighth| eighth.to::<Volume>(system));
    let rounded = eighth.map_or(bound, |eighth| eighth * libm::ceil((bound / eighth).si()));
    volume(rounded, system).on_both_scales()
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
    or_plain(in_four_digits(volume, system), volume)
}

fn in_four_digits(volume: Volume, system: System) -> Result<Amount, AmountError> {
    significant(volume, Unit::MILLILITER, 4, system)
}

/// The reading of a scale with this readability, with as many decimals as its step has (at most 6).
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
    let unit = Unit::GRAM_PER_MILLILITER;
    by_amount(density, near(density, 1000, unit), unit, System::Metric)
}

/// An uncertainty as `shown`, or to one digit of `unit` where that would say nothing: never `0 g`.
fn unsure<Q: Showable>(shown: Shown<Q>, unit: Unit) -> Shown<Q> {
    if !shown.text.starts_with("0 ") {
        return shown;
    }
    let text = or_plain(significant(shown.quantity, unit, 1, System::Metric), shown.quantity);
    Shown::new(shown.quantity, text)
}

/// The uncertainty of a mass.
pub(crate) fn unsure_mass(uncertainty: Mass) -> Shown<Mass> {
    unsure(mass(uncertainty), Unit::GRAM)
}

/// The uncertainty of a density.
pub(crate) fn unsure_density(uncertainty: MassDensity) -> Shown<MassDensity> {
    unsure(density(uncertainty), Unit::GRAM_PER_MILLILITER)
}

/// A value with its standard uncertainty, that to two digits and the value to the same place.
#[cfg_attr(not(feature = "document"), allow(dead_code))] // of which only records read `both`
pub(crate) struct Uncertain<Q> {
    pub(crate) value: Shown<Q>,
    pub(crate) uncertainty: Shown<Q>,
    /// Both, as a book writes them: `0.0440 g ± 0.0012`.
    pub(crate) both: String,
}

pub(crate) fn uncertain<Q: Showable>(value: Q, uncertainty: Q) -> Uncertain<Q> {
    let place = libm::floor(libm::log10(uncertainty.shown_value()));
    // Six places where there is nothing to round by.
    let places = if place.is_finite() { (1.0 - place).clamp(0.0, 9.0) as usize } else { 6 };
    let number = |quantity: Q| format!("{:.places$}", quantity.shown_value());
    let unit = Q::UNIT;
    let both = match uncertainty.shown_value() > 0.0 {
        true => format!("{} {unit} ± {}", number(value), number(uncertainty)),
        false => format!("{} {unit}", number(value)),
    };
    let shown = |quantity| Shown::new(quantity, format!("{} {unit}", number(quantity)));
    Uncertain { value: shown(value), uncertainty: shown(uncertainty), both }
}

/// A share in per cent.
pub(crate) fn percent(share: Ratio) -> Shown<Ratio> {
    let tenths = libm::round(share.si() * 1000.0);
    Shown::new(share, format!("{} %", tenths / 10.0)).said_as(tenths / 1000.0)
}

/// A deviation in per cent with its sign.
pub(crate) fn signed_percent(off: Ratio) -> String {
    let tenths = libm::round(off.si() * 1000.0);
    if tenths == 0.0 { "0 %".to_string() } else { format!("{:+.1} %", tenths / 10.0) }
}

/// A deviation of ten times or more, which is no per cent that anybody reads: `3600 times what is needed`.
pub(crate) fn in_times(off: Ratio) -> Option<String> {
    let times = off.si() + 1.0;
    let number = significant_near(times, 2).filter(|_| times >= 10.0)?;
    Some(format!("{number} times what is needed"))
}

/// A quantity by its amount on the scale of the system, with the text of that on the other one: in inches, say, and in the
/// metric unit, which is that of results.
fn on_scales<Q: Showable>(
    quantity: Q,
    [us, metric]: [Unit; 2],
    system: System,
    amount: impl Fn(Unit) -> Result<Amount, AmountError>,
) -> Shown<Q> {
    let scale = TextScale::of(system);
    let (own, other) = match scale {
        TextScale::Us => (us, metric),
        TextScale::Metric => (metric, us),
    };
    let other = or_plain(amount(other), quantity);
    by_amount(quantity, amount(own), metric, System::Metric).or(scale, other)
}

/// A temperature on both scales: 338 °F, or 170 °C.
pub(crate) fn temperature(
    at: ThermodynamicTemperature,
    system: System,
) -> Shown<ThermodynamicTemperature> {
    temperature_of_bench(at, system).unwrap_or_else(|| {
        on_scales(at, [Unit::FAHRENHEIT, Unit::CELSIUS], system, |unit| near(at, 1, unit))
    })
}

/// The same without exact fractions, which take several times as long: a plan has hundreds of temperatures. `None` of one that no
/// bench has.
fn temperature_of_bench(
    at: ThermodynamicTemperature,
    system: System,
) -> Option<Shown<ThermodynamicTemperature>> {
    const OF_BENCH: core::ops::Range<i64> = -200..10_000;
    let degrees = |unit| {
        let degrees = whole_near(value_in(at, unit, System::Metric).ok()?)?;
        OF_BENCH.contains(&degrees).then_some(degrees)
    };
    let (fahrenheit, celsius) = (degrees(Unit::FAHRENHEIT)?, degrees(Unit::CELSIUS)?);
    let (us, metric) = (format!("{fahrenheit} °F"), format!("{celsius} °C"));
    let scale = TextScale::of(system);
    let (text, other, exact) = match scale {
        // Both numbers are exact, and their quotient is rounded once.
        TextScale::Us => (us, metric, (5.0 * fahrenheit as f64 - 160.0) / 9.0),
        TextScale::Metric => (metric, us, celsius as f64),
    };
    Some(Shown::new(at, text).said_as(exact).or(scale, other))
}

/// A temperature on the scale of the system, its unit left out: `338`.
pub(crate) fn degrees(at: ThermodynamicTemperature, system: System) -> String {
    figure(near(at, 1, thermometer(system)), at)
}

/// The unit of that: `°F`.
pub(crate) fn degree_unit(system: System) -> String {
    thermometer(system).to_string()
}

fn thermometer(system: System) -> Unit {
    match TextScale::of(system) {
        TextScale::Us => Unit::FAHRENHEIT,
        TextScale::Metric => Unit::CELSIUS,
    }
}

/// The units of vacuum gauges.
const GAUGES: [Unit; 2] = [Unit::INCH_OF_MERCURY, Unit::KILOPASCAL];

/// A pressure on both scales: 27 inHg, or 91.4 kPa.
pub(crate) fn pressure(pressure: Pressure, system: System) -> Shown<Pressure> {
    on_scales(pressure, GAUGES, system, |unit| near(pressure, 10, unit))
}

/// How far a gauge is off, to two digits: small, and never nothing.
pub(crate) fn gauge_off(pressure: Pressure, system: System) -> Shown<Pressure> {
    on_scales(pressure, GAUGES, system, |unit| significant(pressure, unit, 2, System::Metric))
}

/// A time that an oven runs, to a second: `95 s`, `6 min 10 s`.
pub(crate) fn time(time: Time) -> Shown<Time> {
    const LONGEST_IN_SECONDS: f64 = 120.0;
    let seconds = libm::round(time.si());
    let minutes = libm::floor(seconds / 60.0);
    let text = if seconds <= LONGEST_IN_SECONDS {
        format!("{seconds} s")
    } else if seconds - minutes * 60.0 == 0.0 {
        format!("{minutes} min")
    } else {
        format!("{minutes} min {} s", seconds - minutes * 60.0)
    };
    Shown::new(time, text)
}

/// A time as an oven's clock is set: `0:45`, `2:05`.
pub(crate) fn oven_time(time: Time) -> Shown<Time> {
    let seconds = libm::round(time.si());
    let minutes = libm::floor(seconds / 60.0);
    Shown::new(time, format!("{minutes}:{:02}", seconds - minutes * 60.0))
}

/// A time that is kept by a clock at a bench, in steps of 5 s and never longer than it is: `45 s`, `2 min 5 s`.
pub(crate) fn at_most_five_seconds(of: Time) -> Shown<Time> {
    let steps = libm::floor(of.si() / 5.0 * (1.0 + 1e-12));
    // Below one step there is nothing to wait for.
    if steps < 1.0 {
        Shown::new(of, "all the time")
    } else {
        Shown::new(of, time(Time::from_si(5.0 * steps)).text)
    }
}

/// A time of the day's, in hours and minutes: `35 min`, `2 h 40 min`.
pub(crate) fn hours(time: Time) -> Shown<Time> {
    let minutes = libm::round(time.si() / 60.0);
    let hours = libm::floor(minutes / 60.0);
    let minutes = minutes - 60.0 * hours;
    let text =
        if hours > 0.0 { format!("{hours} h {minutes} min") } else { format!("{minutes} min") };
    Shown::new(time, text)
}

/// A time in minutes, to a tenth of one: `12.4 min`.
pub(crate) fn minutes(time: Time) -> Shown<Time> {
    Shown::new(time, nearest(time, 10, Unit::MINUTE))
}

/// A speed to two digits.
pub(crate) fn speed(speed: Velocity) -> Shown<Velocity> {
    Shown::new(speed, or_plain(two_digits(speed), speed))
}

/// The same without its unit.
pub(crate) fn speed_figure(speed: Velocity) -> String {
    figure(two_digits(speed), speed)
}

fn two_digits(speed: Velocity) -> Result<Amount, AmountError> {
    significant(speed, Unit::CENTIMETER_PER_SECOND, 2, System::Metric)
}

/// How long a piece takes to sink a foot, to a tenth of a second: `2 s`, `0.9 s`.
pub(crate) fn seconds_per_foot(speed: Velocity) -> Shown<Time> {
    const FOOT: f64 = 0.3048;
    let time = Time::from_si(FOOT / speed.si());
    Shown::new(time, or_plain(significant(time, Unit::SECOND, 2, System::Metric), time))
}

/// A viscosity to two digits.
#[cfg(feature = "document")]
pub(crate) fn viscosity(
    viscosity: crate::quantity::DynamicViscosity,
) -> Shown<crate::quantity::DynamicViscosity> {
    let amount = significant(viscosity, Unit::PASCAL_SECOND, 2, System::Metric);
    Shown::new(viscosity, or_plain(amount, viscosity))
}

/// A difference of temperatures to a tenth of a kelvin.
#[cfg(feature = "document")]
pub(crate) fn interval(
    interval: crate::quantity::TemperatureInterval,
) -> Shown<crate::quantity::TemperatureInterval> {
    Shown::new(interval, nearest(interval, 10, Unit::KELVIN))
}

/// A power to three digits.
#[cfg(feature = "document")]
pub(crate) fn power(power: crate::quantity::Power) -> Shown<crate::quantity::Power> {
    Shown::new(power, or_plain(significant(power, Unit::WATT, 3, System::Metric), power))
}

/// A time to a tenth of a second.
#[cfg(feature = "document")]
pub(crate) fn seconds(time: Time) -> Shown<Time> {
    Shown::new(time, nearest(time, 10, Unit::SECOND))
}

/// A length to three digits, in millimeters.
#[cfg(feature = "document")]
pub(crate) fn millimeters(length: crate::quantity::Length) -> Shown<crate::quantity::Length> {
    Shown::new(length, or_plain(significant(length, Unit::MILLIMETER, 3, System::Metric), length))
}

/// A small share in per cent, to a thousandth of one.
#[cfg(feature = "document")]
pub(crate) fn fine_percent(share: Ratio) -> Shown<Ratio> {
    let thousandths = libm::round(share.si() * 1e5);
    Shown::new(share, format!("{} %", thousandths / 1e3))
}

/// A factor to a hundredth.
pub(crate) fn factor(factor: Ratio) -> Shown<Ratio> {
    Shown::new(factor, format!("{}", libm::round(factor.si() * 100.0) / 100.0))
}

/// A salinity in grams of salt per kilogram of water.
pub(crate) fn salinity(salinity: Ratio) -> Shown<Ratio> {
    Shown::new(salinity, format!("{} g/kg", libm::round(salinity.si() * 1e4) / 10.0))
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use rstest::rstest;

    use super::*;

    fn g(x: f64) -> Mass {
        Mass::from_si(x / 1e3)
    }

    fn ml(x: f64) -> Volume {
        Volume::from_si(x / 1e6)
    }

    #[cfg(feature = "document")]
    #[rstest]
    #[case(1.2345, "1.23 mm")]
    #[case(0.0503, "0.0503 mm")]
    fn a_length_has_three_digits(#[case] mm: f64, #[case] text: &str) {
        assert_eq!(millimeters(crate::quantity::Length::from_si(mm / 1e3)).text, text);
    }

    #[rstest]
    #[case(9.0, Some("10 times what is needed"))]
    #[case(8.99, None)]
    #[case(1233.0, Some("1200 times what is needed"))]
    #[case(-1.0, None)]
    fn from_ten_times_on_a_deviation_is_no_per_cent(
        #[case] off: f64,
        #[case] expected: Option<&str>,
    ) {
        assert_eq!(in_times(Ratio::from(off)).as_deref(), expected);
    }

    const US: System = System::UsCustomary;
    /// A US cup: 231 in³/16.
    const CUP: f64 = 236.588_236_5;

    #[rstest]
    #[case(304.567, "304.6 g")]
    #[case(12.345, "12.3 g")]
    #[case(12.0, "12 g")]
    #[case(9.994, "9.99 g")]
    #[case(9.996, "10 g")]
    #[case(0.329, "0.33 g")]
    #[case(0.001, "0 g")]
    fn masses(#[case] grams: f64, #[case] text: &str) {
        assert_eq!(mass(g(grams)).text, text);
    }

    #[rstest]
    #[case(0.1, 12.0, "12.0 g")]
    #[case(0.01, 6.25, "6.25 g")]
    #[case(1.0, 243.0, "243 g")]
    #[case(0.5, 12.5, "12.5 g")]
    #[case(0.25, 12.75, "12.75 g")] // two digits: its step is a quarter
    #[case(0.05, 12.15, "12.15 g")]
    #[case(0.002, 1.234, "1.234 g")]
    #[case(0.0001, 1.2345, "1.2345 g")]
    #[case(1e-7, 1.25, "1.250000 g")] // no more than six digits
    fn readings_have_the_digits_of_the_balance(
        #[case] reads: f64,
        #[case] grams: f64,
        #[case] text: &str,
    ) {
        assert_eq!(balance(g(grams), Some(g(reads))), text);
    }

    #[test]
    fn a_scale_that_is_not_known_reads_tenths() {
        assert_eq!(balance(g(12.0), None), "12.0 g");
    }

    #[rstest]
    #[case(CUP / 4.0, "1/4 cup")]
    #[case(CUP / 48.0, "1 tsp")]
    #[case(CUP / 96.0, "1/2 tsp")]
    #[case(1.25, "1.25 mL")] // not 1/4 tsp, which is 1.232 mL, and not 1.3 mL
    #[case(4.9, "4.9 mL")]
    // 6 21/32 cups; 6 2/3 are 1.6 in 1000 off.
    #[case(CUP * 6.656_25, "106 1/2 tbsp")]
    fn spoons(#[case] volume: f64, #[case] text: &str) {
        assert_eq!(household(ml(volume), US), text);
    }

    /// What the text says is the number too, to the bit: 236.588 236 5 mL a cup, 16.387 064 mL a cubic inch (NIST Handbook 44,
    /// appendix C), 0 °C = 32 °F.
    #[cfg(feature = "document")]
    #[rstest]
    #[case(cup(ml(946.352_946), ml(CUP), US).value(), 946.352_946)]
    #[case(cup(ml(473.176_473), ml(CUP / 4.0), US).value(), 473.176_473)]
    #[case(cup(ml(0.1) * 3.0, ml(0.1), System::Metric).value(), 0.3)]
    #[case(fill_mark(ml(CUP * 1.5), None, US).value(), 354.882_354_75)]
    #[case(fill_mark(ml(250.0), None, System::Metric).value(), 250.0)]
    #[case(volume(ml(CUP / 3.0), System::Metric).value(), ml(CUP / 3.0).shown_value())]
    #[case(scoop(ml(CUP / 4.0), US).value(), 59.147_059_125)]
    #[case(scoop(ml(0.1) * 3.0, US).value(), 0.3)]
    #[case(mass(g(0.1) * 3.0).value(), 0.3)]
    #[case(mass(g(30.5)).value(), 30.5)]
    #[case(milliliters(ml(0.7)).value(), 0.7)]
    #[case(percent(Ratio::from(0.1) * 1.5).value(), 0.15)]
    #[case(density(MassDensity::from_si(1_120.000_000_000_000_2)).value(), 1.12)]
    fn a_text_that_says_all_is_the_number(#[case] value: f64, #[case] exact: f64) {
        assert_eq!(value.to_bits(), exact.to_bits(), "{value}");
    }

    #[rstest]
    #[case(275.0, 135.0)]
    #[case(329.0, 165.0)]
    #[case(350.0, 176.666_666_666_666_66)]
    fn whole_degrees_are_the_number(#[case] fahrenheit: f64, #[case] celsius: f64) {
        let at = crate::quantity::Amount::parse(&format!("{fahrenheit} °F")).unwrap();
        let shown = temperature(at.to(US).unwrap(), US);
        assert!((shown.value() - celsius).abs() <= f64::EPSILON * celsius, "{}", shown.value());
        // Read back, it is the same quantity.
        assert_eq!(ThermodynamicTemperature::from_shown(shown.value()), shown.quantity);
    }

    #[test]
    fn a_text_that_rounds_leaves_the_number() {
        assert_eq!(mass(g(348.585_883)).value(), g(348.585_883).shown_value());
        assert_eq!(volume(ml(381.808), US).value(), ml(381.808).shown_value());
    }

    /// By hand: a US teaspoon is 4.929 mL.
    #[cfg(feature = "document")]
    #[rstest]
    #[case(CUP / 4.0, "1/4 cup")]
    #[case(CUP / 48.0 * 0.75, "3/4 tsp")]
    #[case(0.2263, "0.2263 mL (about 1/32 tsp, -31.9 %)")]
    #[case(2.259, "2.259 mL (about 1/4 + 1/8 + 1/16 tsp, -4.5 %)")]
    #[case(36.16, "36.16 mL (about 2 1/2 tbsp, +2.2 %)")]
    #[case(CUP / 48.0 * 116.75, "575.5 mL (about 2 1/2 cup, +2.8 %)")]
    #[case(CUP / 48.0 * (11.0 + 3.0 / 32.0), "54.68 mL (about 11 tsp, -0.8 %)")]
    #[case(CUP / 48.0 * 1.375, "1 3/8 tsp")]
    #[case(CUP / 48.0 * 1.38, "6.802 mL (about 1 + 1/4 + 1/8 tsp, -0.4 %)")]
    #[case(0.05, "0.05 mL")]
    #[case(CUP * 6.656_25, "106 1/2 tbsp")]
    fn scoops(#[case] volume: f64, #[case] text: &str) {
        assert_eq!(scoop(ml(volume), US).text, text);
    }

    /// A fill mark is never above what fits.
    #[rstest]
    #[case(575.46, None, US, "2 3/8 cup (575 mL)")]
    #[case(575.46, None, System::Metric, "575 mL (2 1/4 cup)")]
    #[case(54.99, None, US, "54 mL (1/8 cup)")]
    #[case(20.0, None, US, "20 mL")]
    #[case(575.0 * (1.0 - 0.5e-12), None, System::Metric, "575 mL (2 1/4 cup)")]
    #[case(575.0 * (1.0 - 1.5e-12), None, System::Metric, "574 mL (2 1/4 cup)")]
    #[case(CUP * 2.0, None, US, "2 cup (473 mL)")]
    #[case(CUP * 1.75, Some(CUP / 4.0), US, "1 3/4 cup")]
    #[case(500.0, Some(250.0), System::Metric, "2 cup")]
    fn fill_marks(
        #[case] volume: f64,
        #[case] step: Option<f64>,
        #[case] system: System,
        #[case] text: &str,
    ) {
        assert_eq!(fill_mark(ml(volume), step.map(ml), system).on_both_scales(), text);
    }

    #[rstest]
    #[case(CUP * 1.75, CUP / 4.0, US, "1 3/4 cup")]
    #[case(CUP / 3.0, CUP / 3.0, US, "1/3 cup")]
    #[case(CUP * 0.375, CUP / 8.0, US, "3/8 cup")]
    #[case(50.0, 50.0, System::Metric, "50 mL")] // not 10 tsp: the cup has no such mark
    #[case(250.0, 50.0, System::Metric, "250 mL")]
    #[case(250.0, 125.0, System::Metric, "1 cup")]
    #[case(500.0, 25.0, US, "500 mL")]
    #[case(CUP * 1.0005, CUP / 4.0, US, "1 cup")]
    #[case(CUP * 1.0015, CUP / 4.0, US, "236.9 mL")]
    fn marks_are_those_of_the_cup(
        #[case] volume: f64,
        #[case] step: f64,
        #[case] system: System,
        #[case] text: &str,
    ) {
        assert_eq!(mark(ml(volume), ml(step), system), text);
    }

    #[rstest]
    #[case(0.0, "0 %", "0 %")]
    #[case(0.02345, "2.3 %", "+2.3 %")]
    #[case(-0.028, "-2.8 %", "-2.8 %")]
    #[case(-0.0004, "-0 %", "0 %")]
    #[case(1.0, "100 %", "+100.0 %")]
    fn shares(#[case] share: f64, #[case] plain: &str, #[case] signed: &str) {
        // A share is never below zero; a deviation may be.
        if share >= 0.0 {
            assert_eq!(percent(Ratio::from(share)).text, plain);
        }
        assert_eq!(signed_percent(Ratio::from(share)), signed);
    }

    proptest! {
        // Near whole degrees too, where the number is taken from the text.
        #[test]
        fn temperatures_of_a_bench_are_as_any(kelvin in 80.0..12_000.0, whole in -210..10_010_i32, off in -3..=3_i32) {
            let degrees = f64::from(whole) + f64::from(off) * 1e-13;
            for kelvin in [kelvin, degrees + 273.15, (degrees + 459.67) / 1.8] {
                let at = ThermodynamicTemperature::from_si(kelvin);
                for system in [US, System::Metric] {
                    let units = [Unit::FAHRENHEIT, Unit::CELSIUS];
                    let exact = on_scales(at, units, system, |unit| near(at, 1, unit));
                    prop_assert_eq!(temperature(at, system), exact);
                }
            }
        }
    }

    #[test]
    fn temperatures_and_volumes_stand_in_both_measures() {
        let at = ThermodynamicTemperature::from_si(443.15);
        assert_eq!(temperature(at, US).on_both_scales(), "338 °F (170 °C)");
        assert_eq!(temperature(at, System::Metric).on_both_scales(), "170 °C (338 °F)");
        assert_eq!((degrees(at, US), degree_unit(US)), ("338".into(), "°F".into()));
        assert_eq!(volume(ml(305.0), US).on_both_scales(), "1 1/4 cup (305 mL)");
        assert_eq!(volume(ml(305.0), System::Metric).on_both_scales(), "305 mL (1 1/4 cup)");
        assert_eq!(volume(ml(40.0), US).on_both_scales(), "40 mL (1/8 cup)");
        assert_eq!(volume(ml(3.0), US).on_both_scales(), "3 mL");
        // To the nearest eighth, although a third is nearer.
        assert_eq!(volume(ml(CUP / 3.0), US).on_both_scales(), "79 mL (3/8 cup)");
        assert_eq!(density(MassDensity::from_si(1042.58)).text, "1.043 g/mL");
    }

    #[rstest]
    #[case(95.2, "95 s")]
    #[case(120.0, "120 s")]
    #[case(180.0, "3 min")]
    #[case(402.6, "6 min 43 s")]
    fn times(#[case] seconds: f64, #[case] wanted: &str) {
        assert_eq!(time(Time::from_si(seconds)).text, wanted);
    }

    #[test]
    fn pressures_and_speeds() {
        let pressure = pressure(Pressure::from_si(27.0 * 3386.389), System::Metric);
        assert_eq!(pressure.on_both_scales(), "91.4 kPa (27 inHg)");
        assert_eq!(oven_time(Time::from_si(125.0)).text, "2:05");
        // A foot at 15.24 cm/s.
        assert_eq!(seconds_per_foot(Velocity::from_si(0.1524)).text, "2 s");
        assert_eq!(speed(Velocity::from_si(0.2162)).text, "22 cm/s");
        assert_eq!(minutes(Time::from_si(742.0)).text, "12.4 min");
        assert_eq!(salinity(Ratio::from(0.035)).text, "35 g/kg");
    }
    /// A bound in eighths of a cup (29.57 mL) is never below what it bounds.
    #[rstest]
    #[case(30.0, "1/4 cup (59 mL)")]
    #[case(29.0, "1/8 cup (30 mL)")]
    #[case(CUP, "1 cup (237 mL)")]
    fn lower_bounds_in_cups(#[case] bound: f64, #[case] text: &str) {
        assert_eq!(at_least_by_cup(ml(bound), US), text);
    }

    #[rstest]
    #[case(4.99, "all the time")]
    #[case(5.0, "5 s")]
    #[case(5.0 * (1.0 - 0.5e-12), "5 s")]
    #[case(5.0 * (1.0 - 1.5e-12), "all the time")]
    #[case(49.9, "45 s")]
    #[case(128.0, "2 min 5 s")]
    fn a_timer_is_never_late(#[case] seconds: f64, #[case] text: &str) {
        assert_eq!(at_most_five_seconds(Time::from_si(seconds)).text, text);
    }

    #[rstest]
    #[case(35.0, "35 min")]
    #[case(59.4, "59 min")]
    #[case(59.6, "1 h 0 min")]
    #[case(160.0, "2 h 40 min")]
    fn times_of_a_day(#[case] minutes: f64, #[case] text: &str) {
        assert_eq!(hours(Time::from_si(60.0 * minutes)).text, text);
    }

    #[test]
    fn each_kind_has_its_digits() {
        assert_eq!(milliliters(ml(1.2346)).text, "1.23 mL");
        assert_eq!(seconds_per_foot(Velocity::from_si(0.1)).text, "3 s");
        assert_eq!(speed_figure(Velocity::from_si(0.2162)), "22");
        assert_eq!(factor(Ratio::from(1.2346)).text, "1.23");
    }

    #[cfg(feature = "document")]
    #[test]
    fn each_kind_of_a_record_has_its_digits() {
        use crate::quantity::{DynamicViscosity, Power, TemperatureInterval};
        assert_eq!(viscosity(DynamicViscosity::from_si(0.1234)).text, "0.12 Pa.s");
        assert_eq!(interval(TemperatureInterval::from_si(1.2346)).text, "1.2 K");
        assert_eq!(power(Power::from_si(654.3)).text, "654 W");
        assert_eq!(seconds(Time::from_si(12.346)).text, "12.3 s");
        assert_eq!(fine_percent(Ratio::from(0.012_345_67)).text, "1.235 %");
    }

    /// Two digits of the uncertainty, and the value to the same place.
    #[rstest]
    #[case(0.044, 0.0012, "0.0440 g ± 0.0012")]
    #[case(1234.5, 123.0, "1234 g ± 123")]
    #[case(12.5, 0.0, "12.500000 g")]
    #[case(1.0, 1.2e-11, "1.000000000 g ± 0.000000000")]
    fn a_value_is_as_long_as_its_uncertainty(
        #[case] value: f64,
        #[case] uncertainty: f64,
        #[case] both: &str,
    ) {
        assert_eq!(uncertain(g(value), g(uncertainty)).both, both);
    }

    #[test]
    fn an_uncertainty_is_never_shown_as_nothing() {
        assert_eq!(unsure_mass(g(0.001_23)).text, "0.001 g");
        assert_eq!(unsure_mass(g(0.0)).text, "0 g");
        assert_eq!(unsure_mass(g(0.123)).text, "0.12 g");
        assert_eq!(unsure_density(MassDensity::from_si(0.000_45)).text, "0.0000005 g/mL");
    }
}
