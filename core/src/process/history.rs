//! The effect of heat on a pot, counted as time at one reference temperature.
//!
//! t_eq = ∫ exp(−E_a/R · (1/T − 1/T_ref)) dt
//!
//! PVC gives off hydrogen chloride faster the hotter it is. How much faster is the material's own
//! figure: published activation energies run from 117.5 kJ/mol (Dean et al. 1988, Polym. Degrad. Stab.
//! 22:31-41) to 170 kJ/mol (Šimon and Valko 1982, Collect. Czech. Chem. Commun. 47:2336), which is the
//! difference between 2.0 and 2.6 times the rate for 10 °C more. So E_a is an input that carries its
//! source, there is no default, and a history without one is only counted in heats.

use alloc::borrow::Cow;
use alloc::string::String;

use uom::si::molar_energy::joule_per_mole;
use uom::si::thermodynamic_temperature::kelvin;
use uom::si::time::second;

use super::figures::seconds;
use crate::codes::codes;
use crate::fault::Diagnose;
use crate::parameter::{Check, Parameter, ParameterError, ParameterErrors};
use crate::quantity::{MolarEnergy, ThermodynamicTemperature, Time};

/// The molar gas constant in J/(mol K), exact since 2019 but for the rounding (CODATA 2018).
const GAS_CONSTANT: f64 = 8.314_462_618;

/// Within a year either way.
const LONGEST_S: f64 = 366.0 * 86_400.0;

/// Node and weight on [−1, 1] of the five-point Gauss-Legendre rule (Abramowitz and Stegun, Table 25.4).
const GAUSS_LEGENDRE: [(f64, f64); 5] = [
    (-0.906_179_845_938_664, 0.236_926_885_056_189_08),
    (-0.538_469_310_105_683_1, 0.478_628_670_499_366_47),
    (0.0, 0.568_888_888_888_888_9),
    (0.538_469_310_105_683_1, 0.478_628_670_499_366_47),
    (0.906_179_845_938_664, 0.236_926_885_056_189_08),
];

/// How a material's decay follows the temperature.
#[derive(Debug, Clone, PartialEq)]
pub struct Kinetics {
    activation_energy: MolarEnergy,
    reference: ThermodynamicTemperature,
    source: String,
}

/// A temperature at a time, counted from anywhere.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Reading {
    /// When.
    pub at: Time,
    /// How hot.
    pub temperature: ThermodynamicTemperature,
}

/// The heats of a pot or a leftover so far.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct HeatRecord {
    /// How many times it was heated.
    pub heats: u32,
    /// The equivalent time at the material's reference temperature; `None` as soon as one heat had no
    /// history or no kinetics: unknown stays unknown.
    pub spent: Option<Time>,
}

/// A heat history that cannot be counted.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum HistoryError {
    /// Numbers that are wrong.
    #[error(transparent)]
    Parameters(#[from] ParameterErrors),
    /// An activation energy without a source.
    #[error("The activation energy has no source.")]
    NoSource,
    /// A reading before the one above it in the list, or a time beyond belief.
    #[error("Reading {number}, at {}, does not come after the one before it.", seconds(.at))]
    Order {
        /// Which, from 1 on.
        number: usize,
        /// When.
        at: Time,
    },
}

impl Diagnose for HistoryError {
    codes! {
        Self::Parameters(errors) => errors.code(),
        Self::NoSource => "history-no-source",
        Self::Order { .. } => "history-order",
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::Parameters(errors) => errors.help(),
            Self::NoSource => {
                "State its source: the supplier, or the publication. They differ by half.".into()
            }
            Self::Order { .. } => {
                "Give the readings in the order of time, all of them within a year.".into()
            }
        }
    }

    fn numbers(&self) -> &[ParameterError] {
        match self {
            Self::Parameters(errors) => errors.numbers(),
            _ => &[],
        }
    }

    fn parameter(&self) -> Option<Parameter> {
        match self {
            Self::Parameters(errors) => errors.parameter(),
            Self::NoSource => Some(Parameter::ActivationEnergy),
            Self::Order { .. } => Some(Parameter::Readings),
        }
    }
}

impl From<ParameterError> for HistoryError {
    fn from(error: ParameterError) -> Self {
        Self::Parameters(error.into())
    }
}

impl Kinetics {
    /// Decay with this activation energy, counted at the `reference` temperature; `source` is who
    /// states the energy.
    ///
    /// # Errors
    /// [`HistoryError::Parameters`] outside 10 to 500 kJ/mol, and for a temperature that no pot has;
    /// [`HistoryError::NoSource`] for an empty source.
    pub fn new(
        activation_energy: MolarEnergy,
        reference: ThermodynamicTemperature,
        source: impl Into<String>,
    ) -> Result<Self, HistoryError> {
        let mut check = Check::new();
        check
            .number(Parameter::ActivationEnergy, activation_energy.value)
            .number(Parameter::ReferenceTemperature, reference.value);
        check.finish()?;
        let source = source.into();
        if source.trim().is_empty() {
            return Err(HistoryError::NoSource);
        }
        Ok(Self { activation_energy, reference, source })
    }

    /// The temperature at which the time is counted.
    #[must_use]
    pub fn reference(&self) -> ThermodynamicTemperature {
        self.reference
    }

    /// Who states the activation energy.
    #[must_use]
    pub fn source(&self) -> &str {
        &self.source
    }

    /// How many times faster the decay is at `temperature` than at the reference.
    ///
    /// # Errors
    /// [`HistoryError::Parameters`] for one that no pot has.
    pub fn rate(&self, temperature: ThermodynamicTemperature) -> Result<f64, HistoryError> {
        Parameter::ReadingTemperature.check_si(temperature.value)?;
        Ok(self.rate_at(temperature.get::<kelvin>()))
    }

    /// The time at the reference temperature that does as much as the `history`, straight between its
    /// readings. Two readings at one time are a step.
    ///
    /// Composite Gauss-Legendre with five points, in as many panels as it takes so that the exponent changes by at
    /// most 1 in each: the relative error of the rule is then below 1e-11 (checked against a
    /// finer rule).
    ///
    /// # Errors
    /// [`HistoryError::Parameters`] or [`HistoryError::Order`].
    pub fn equivalent_time(&self, history: &[Reading]) -> Result<Time, HistoryError> {
        let mut check = Check::new();
        check.count(Parameter::Readings, history.len());
        for (index, reading) in history.iter().enumerate() {
            check.element(Parameter::ReadingTemperature, index, reading.temperature.value);
        }
        check.finish()?;
        let mut sum = 0.0;
        let mut before: Option<&Reading> = None;
        for (index, reading) in history.iter().enumerate() {
            let number = index.saturating_add(1);
            let duration = reading.at.value - before.map_or(reading.at, |before| before.at).value;
            let is_in_order = (0.0..=LONGEST_S).contains(&duration);
            if !(is_in_order && reading.at.value.abs() <= LONGEST_S) {
                return Err(HistoryError::Order { number, at: reading.at });
            }
            if let Some(before) = before {
                let [from, to] = [before, reading].map(|r| r.temperature.get::<kelvin>());
                sum += duration * self.mean_rate(from, to);
            }
            before = Some(reading);
        }
        Ok(Time::new::<second>(sum))
    }

    fn rate_at(&self, t: f64) -> f64 {
        let reference = self.reference.get::<kelvin>();
        libm::exp(self.exponent() * (1.0 / reference - 1.0 / t))
    }

    /// E_a/R in K.
    fn exponent(&self) -> f64 {
        self.activation_energy.get::<joule_per_mole>() / GAS_CONSTANT
    }

    /// The mean rate over a straight line from one temperature to another.
    fn mean_rate(&self, from: f64, to: f64) -> f64 {
        let coldest = from.min(to);
        let panels = libm::ceil(self.exponent() * (to - from).abs() / (coldest * coldest)).max(1.0);
        self.mean_rate_in(panels as u32, from, to)
    }

    fn mean_rate_in(&self, panels: u32, from: f64, to: f64) -> f64 {
        let half = (to - from) / (2.0 * f64::from(panels));
        let mut sum = 0.0;
        for panel in 0..panels {
            let middle = from + half * (2.0 * f64::from(panel) + 1.0);
            for (node, weight) in GAUSS_LEGENDRE {
                sum += weight * self.rate_at(middle + half * node);
            }
        }
        sum / (2.0 * f64::from(panels))
    }
}

impl HeatRecord {
    /// The record of a mix that was never heated.
    #[must_use]
    pub fn fresh() -> Self {
        Self { heats: 0, spent: Some(Time::default()) }
    }

    /// The record after one more heat of this equivalent time; `None` where it is not known.
    #[must_use]
    pub fn heated(self, equivalent: Option<Time>) -> Self {
        Self {
            heats: self.heats.saturating_add(1),
            spent: self.spent.zip(equivalent).map(|(spent, more)| spent + more),
        }
    }

    /// The record of two mixes poured together: that of the one with more heat, for the
    /// part that decays first colors the whole. Unknown with anything is unknown.
    #[must_use]
    pub fn joined(self, other: Self) -> Self {
        let larger = |(a, b): (Time, Time)| if b > a { b } else { a };
        Self { heats: self.heats.max(other.heats), spent: self.spent.zip(other.spent).map(larger) }
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use rstest::rstest;
    use std::string::ToString;
    use std::vec::Vec;
    use uom::si::molar_energy::kilojoule_per_mole;
    use uom::si::thermodynamic_temperature::degree_celsius;

    use super::*;

    fn celsius(t: f64) -> ThermodynamicTemperature {
        ThermodynamicTemperature::new::<degree_celsius>(t)
    }

    fn kinetics(kj_per_mol: f64) -> Kinetics {
        let energy = MolarEnergy::new::<kilojoule_per_mole>(kj_per_mol);
        Kinetics::new(energy, celsius(170.0), "a test").unwrap()
    }

    fn history(readings: &[(f64, f64)]) -> Vec<Reading> {
        let reading = |&(at, t): &(f64, f64)| Reading {
            at: Time::new::<second>(at),
            temperature: celsius(t),
        };
        readings.iter().map(reading).collect()
    }

    #[test]
    fn time_at_the_reference_counts_as_it_is() {
        let spent =
            kinetics(117.5).equivalent_time(&history(&[(30.0, 170.0), (90.0, 170.0)])).unwrap();
        assert!((spent.get::<second>() - 60.0).abs() < 1e-12);
    }

    /// The activation energy at which 10 °C more, from 180 °C, double the rate (Arrhenius): 120.95 kJ/mol.
    #[test]
    fn ten_degrees_double_at_one_energy_only() {
        let ratio = |energy: f64| {
            kinetics(energy).rate(celsius(190.0)).unwrap()
                / kinetics(energy).rate(celsius(180.0)).unwrap()
        };
        assert!((ratio(120.954_853_2) - 2.0).abs() < 1e-6);
        assert!((ratio(170.0) - 2.6491).abs() < 1e-4);
    }

    #[rstest]
    #[case(&[], "out-of-range")]
    #[case(&[(0.0, 170.0)], "out-of-range")]
    #[case(&[(0.0, 170.0), (-1.0, 170.0)], "history-order")]
    #[case(&[(0.0, 170.0), (f64::NAN, 170.0)], "history-order")]
    #[case(&[(f64::NAN, 170.0), (0.0, 170.0)], "history-order")]
    #[case(&[(0.0, 170.0), (1e9, 170.0)], "history-order")]
    #[case(&[(0.0, 170.0), (60.0, 1_700.0)], "out-of-range")]
    #[case(&[(0.0, 170.0), (60.0, f64::NAN)], "not-finite")]
    fn histories_that_are_none(#[case] readings: &[(f64, f64)], #[case] code: &str) {
        let refused = kinetics(117.5).equivalent_time(&history(readings)).unwrap_err();
        assert_eq!(refused.code(), code);
    }

    /// Readings within a year either way; the first that is out of order is named.
    #[test]
    fn a_year_is_the_longest() {
        let spent = kinetics(117.5).equivalent_time(&history(&[(0.0, 170.0), (LONGEST_S, 170.0)]));
        assert_eq!(spent, Ok(Time::new::<second>(LONGEST_S)));
        let late = history(&[(0.0, 170.0), (60.0, 170.0), (50.0, 170.0)]);
        let refused = kinetics(117.5).equivalent_time(&late).unwrap_err();
        assert_eq!(refused, HistoryError::Order { number: 3, at: Time::new::<second>(50.0) });
    }

    /// A panel for each unit of the exponent: 117.5 kJ/mol are 14 132 K; by 180 K/(293.15 K)² 29.6, by 13 K/(443.15 K)² 0.94.
    #[test]
    fn panels_by_hand() {
        let kinetics = kinetics(117.5);
        for (panels, from, to) in [(30, 293.15, 473.15), (30, 473.15, 293.15), (1, 443.15, 456.15)]
        {
            let by_hand = kinetics.mean_rate_in(panels, from, to);
            assert_eq!(kinetics.mean_rate(from, to), by_hand);
            assert_ne!(by_hand, kinetics.mean_rate_in(2 * panels, from, to));
        }
        assert_eq!((kinetics.reference(), kinetics.source()), (celsius(170.0), "a test"));
    }

    #[test]
    fn kinetics_that_are_none() {
        for energy in [0.0, 9.0, 501.0, f64::NAN] {
            let code = crate::parameter::refused_as(energy);
            let energy = MolarEnergy::new::<kilojoule_per_mole>(energy);
            let refused = Kinetics::new(energy, celsius(170.0), "a test").unwrap_err();
            assert_eq!(refused.code(), code);
        }
        let energy = MolarEnergy::new::<kilojoule_per_mole>(117.5);
        assert_eq!(
            Kinetics::new(energy, celsius(170.0), " ").unwrap_err().to_string(),
            "The activation energy has no source."
        );
    }

    #[test]
    fn unknown_stays_unknown() {
        let minute = Some(Time::new::<second>(60.0));
        let once = HeatRecord::fresh().heated(minute);
        assert_eq!(once.spent, minute);
        let twice = once.heated(None).heated(minute);
        assert_eq!((twice.heats, twice.spent), (3, None));
        assert_eq!(once.joined(twice), twice);
        assert_eq!(once.joined(HeatRecord::fresh()), once);
    }

    proptest! {
        #[test]
        fn the_rule_is_as_fine_as_it_says(
            energy in 10.0..500.0f64,
            from in -70.0..420.0f64,
            to in -70.0..420.0f64,
        ) {
            let kinetics = kinetics(energy);
            let [from, to] = [from, to].map(|t| t + 273.15);
            let coarse = kinetics.mean_rate(from, to);
            let fine = kinetics.mean_rate_in(2_000, from, to);
            prop_assert!((coarse - fine).abs() <= 1e-11 * fine, "{} {}", coarse, fine);
        }

        #[test]
        fn a_history_is_the_sum_of_its_parts(
            temperatures in prop::collection::vec(20.0..200.0f64, 3..8),
            split in 1..2usize,
        ) {
            let readings: Vec<(f64, f64)> =
                temperatures.iter().enumerate().map(|(i, &t)| (60.0 * i as f64, t)).collect();
            let kinetics = kinetics(117.5);
            let of = |readings: &[(f64, f64)]| kinetics.equivalent_time(&history(readings)).unwrap().value;
            let parts = of(&readings[..=split]) + of(&readings[split..]);
            prop_assert!((of(&readings) - parts).abs() <= 1e-12 * parts);
        }
    }
}
