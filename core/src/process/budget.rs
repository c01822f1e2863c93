//! The heat that a stabilizer withstands, and how much of it is left.
//!
//! The budget is the material's: an equivalent time at the reference temperature of its
//! [`super::history::Kinetics`], at a stated dose, and an extra time for more stabilizer, if its maker states one.
//! Nothing is invented: without a budget the heats are only counted.

use alloc::borrow::Cow;
use alloc::format;

use super::figures::seconds;
use super::history::{HeatRecord, HistoryError, Kinetics};
use crate::codes::codes;
use crate::fault::Diagnose;
use crate::parameter::{Check, Parameter, ParameterError, ParameterErrors, Relation};
use crate::quantity::{Ratio, ThermodynamicTemperature, Time};
use crate::show::percent;

/// Heat that extra stabilizer buys, by the material's own figure.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Extra {
    /// Equivalent time by dose: 500 min is 5 min for every 1 % of base on top.
    pub time: Time,
    /// The highest dose that the figure holds for, in mass per mass of base.
    pub most: Ratio,
}

/// The equivalent time that a stabilized material withstands.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Budget {
    time: Time,
    dose: Ratio,
    extra: Option<Extra>,
}

/// The rest of a budget.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum Remaining {
    /// The budget or the spending is unknown: there are only heats to count.
    Unknown,
    /// Equivalent time that is left, zero or more.
    Left(Time),
    /// Equivalent time that was spent beyond the budget.
    Overspent(Time),
}

/// How much of its heat budget a pot or a leftover has spent.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct BudgetStatus {
    /// How many times it was heated.
    pub heats: u32,
    /// The rest of its budget.
    pub remaining: Remaining,
}

/// Why a budget is not known.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum BudgetError {
    /// Numbers that are wrong.
    #[error(transparent)]
    Parameters(#[from] ParameterErrors),
    /// Less stabilizer than the budget was stated for.
    #[error("The heat budget is known from {} of base of stabilizer on, not for {}.", percent(.least), percent(.dose))]
    TooLittle {
        /// The dose.
        dose: Ratio,
        /// The dose that the budget is stated for.
        least: Ratio,
    },
    /// More stabilizer than the material's figure holds for.
    #[error("The heat budget with {} of base of stabilizer is not known.", percent(.dose))]
    TooMuch {
        /// The dose.
        dose: Ratio,
        /// The highest that is known.
        most: Ratio,
    },
    /// More time than any known dose buys.
    #[error("No known dose of the stabilizer withstands {}.", seconds(.wanted))]
    TooLong {
        /// The equivalent time needed.
        wanted: Time,
        /// The longest that is known.
        most: Time,
    },
    /// The kinetics do not take the temperature.
    #[error(transparent)]
    History(#[from] HistoryError),
}

impl Diagnose for BudgetError {
    codes! {
        Self::Parameters(errors) => errors.code(),
        Self::TooLittle { .. } => "budget-too-little-stabilizer",
        Self::TooMuch { .. } => "budget-too-much-stabilizer",
        Self::TooLong { .. } => "budget-too-long",
        Self::History(error) => error.code(),
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::Parameters(errors) => errors.help(),
            Self::TooLittle { least, .. } => {
                format!("Dose at least {} of base.", percent(least).at_least()).into()
            }
            Self::TooMuch { most, .. } => format!(
                "Use at most {} of base, or ask the supplier what more of it does.",
                percent(most).at_most()
            )
            .into(),
            Self::TooLong { most, .. } => format!(
                "Plan for at most {} at the reference temperature: fewer heats, or cooler ones.",
                seconds(most).at_most()
            )
            .into(),
            Self::History(error) => error.help(),
        }
    }

    fn numbers(&self) -> &[ParameterError] {
        match self {
            Self::Parameters(errors) => errors.numbers(),
            Self::History(error) => error.numbers(),
            _ => &[],
        }
    }

    fn parameter(&self) -> Option<Parameter> {
        match self {
            Self::Parameters(errors) => errors.parameter(),
            Self::History(error) => error.parameter(),
            Self::TooLittle { .. } | Self::TooMuch { .. } => Some(Parameter::StabilizerDose),
            Self::TooLong { .. } => Some(Parameter::HeatBudget),
        }
    }
}

impl From<ParameterError> for BudgetError {
    fn from(error: ParameterError) -> Self {
        Self::Parameters(error.into())
    }
}

impl Budget {
    /// A material that withstands `time` at its reference temperature with `dose` of stabilizer, in mass
    /// per mass of base (zero where it is in the base already); `extra` is the time that more of it buys, where
    /// the maker states it.
    ///
    /// # Errors
    /// [`BudgetError::Parameters`] for a time that is not above zero, a dose below zero, or an extra
    /// that reaches no higher than `dose`.
    pub fn new(time: Time, dose: Ratio, extra: Option<Extra>) -> Result<Self, BudgetError> {
        let mut check = Check::new();
        check.number(Parameter::HeatBudget, time.value).number(Parameter::BudgetWith, dose.value);
        if let Some(Extra { time, most }) = extra {
            check
                .number(Parameter::ExtraTime, time.value)
                .number(Parameter::ExtraMost, most.value)
                .relation(
                    (Parameter::ExtraMost, most.value),
                    Relation::Above,
                    (Parameter::BudgetWith, dose.value),
                );
        }
        check.finish()?;
        Ok(Self { time, dose, extra })
    }

    /// The equivalent time that `dose` of the stabilizer withstands: t + (dose − dose₀)·extra.
    ///
    /// # Errors
    /// [`BudgetError::TooLittle`] below the stated dose; [`BudgetError::TooMuch`] above the highest
    /// that the figure holds for, which without a figure is the stated dose itself;
    /// [`BudgetError::Parameters`] for a dose outside its range.
    pub fn at_dose(&self, dose: Ratio) -> Result<Time, BudgetError> {
        Parameter::StabilizerDose.check_si(dose.value)?;
        if dose < self.dose {
            return Err(BudgetError::TooLittle { dose, least: self.dose });
        }
        if dose == self.dose {
            return Ok(self.time);
        }
        match self.extra {
            Some(Extra { time, most }) if dose <= most => Ok(self.time + time * (dose - self.dose)),
            Some(Extra { most, .. }) => Err(BudgetError::TooMuch { dose, most }),
            None => Err(BudgetError::TooMuch { dose, most: self.dose }),
        }
    }

    /// The smallest dose that withstands the equivalent time `wanted`, never below the stated one.
    ///
    /// # Errors
    /// [`BudgetError::TooLong`] where no known dose does; [`BudgetError::Parameters`] for a time below
    /// zero.
    pub fn dose_for(&self, wanted: Time) -> Result<Ratio, BudgetError> {
        Parameter::SpentBefore.check_si(wanted.value)?;
        if wanted <= self.time {
            return Ok(self.dose);
        }
        let Some(Extra { time, most }) = self.extra else {
            return Err(BudgetError::TooLong { wanted, most: self.time });
        };
        let dose = self.dose + (wanted - self.time) / time;
        if dose <= most {
            Ok(dose)
        } else {
            Err(BudgetError::TooLong { wanted, most: self.time + time * (most - self.dose) })
        }
    }
}

impl BudgetStatus {
    /// A mix with this record against a `budget` of equivalent time, if one is known.
    ///
    /// # Errors
    /// [`BudgetError::Parameters`] for a budget that is not above zero.
    pub fn of(record: HeatRecord, budget: Option<Time>) -> Result<Self, BudgetError> {
        if let Some(budget) = budget {
            Parameter::HeatBudget.check_si(budget.value)?;
        }
        let remaining = match budget.zip(record.spent) {
            None => Remaining::Unknown,
            Some((budget, spent)) if spent <= budget => Remaining::Left(budget - spent),
            Some((budget, spent)) => Remaining::Overspent(spent - budget),
        };
        Ok(Self { heats: record.heats, remaining })
    }

    /// How long what is left lasts at `temperature`; `None` where nothing is known, zero where nothing
    /// is left.
    ///
    /// # Errors
    /// [`BudgetError::History`] for a temperature that no pot has.
    pub fn lasts_at(
        &self,
        temperature: ThermodynamicTemperature,
        kinetics: &Kinetics,
    ) -> Result<Option<Time>, BudgetError> {
        let rate = kinetics.rate(temperature)?;
        Ok(match self.remaining {
            Remaining::Unknown => None,
            Remaining::Left(time) => Some(time / rate),
            Remaining::Overspent(_) => Some(Time::default()),
        })
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use rstest::rstest;
    use uom::si::molar_energy::kilojoule_per_mole;
    use uom::si::ratio::percent as in_percent;
    use uom::si::thermodynamic_temperature::degree_celsius;
    use uom::si::time::minute;

    use super::*;
    use crate::quantity::MolarEnergy;

    fn min(time: f64) -> Time {
        Time::new::<minute>(time)
    }

    fn dose(percent: f64) -> Ratio {
        Ratio::new::<in_percent>(percent)
    }

    /// Invented: 20 min at 2 %, and 5 min more for each further per cent, up to 4 %.
    fn budget() -> Budget {
        Budget::new(min(20.0), dose(2.0), Some(Extra { time: min(500.0), most: dose(4.0) }))
            .unwrap()
    }

    fn record(minutes: &[f64]) -> HeatRecord {
        minutes.iter().fold(HeatRecord::fresh(), |record, &m| record.heated(Some(min(m))))
    }

    #[rstest]
    #[case(2.0, Ok(20.0))]
    #[case(3.0, Ok(25.0))]
    #[case(4.0, Ok(30.0))]
    #[case(1.9, Err("budget-too-little-stabilizer"))]
    #[case(4.1, Err("budget-too-much-stabilizer"))]
    #[case(-1.0, Err("out-of-range"))]
    #[case(f64::NAN, Err("not-finite"))]
    fn extra_buys_time_by_its_own_figure(
        #[case] percent: f64,
        #[case] expected: Result<f64, &str>,
    ) {
        match budget().at_dose(dose(percent)) {
            Ok(time) => assert!((time.get::<minute>() - expected.unwrap()).abs() < 1e-9),
            Err(error) => assert_eq!(Err(error.code()), expected),
        }
    }

    #[test]
    fn without_a_figure_extra_buys_nothing_known() {
        let plain = Budget::new(min(20.0), dose(2.0), None).unwrap();
        assert_eq!(plain.at_dose(dose(2.0)), Ok(min(20.0)));
        assert_eq!(plain.at_dose(dose(2.5)).unwrap_err().code(), "budget-too-much-stabilizer");
        let refused = plain.dose_for(min(21.0)).unwrap_err();
        assert!(refused.help().starts_with("Plan for at most 1200 s"), "{}", refused.help());
    }

    /// At the boundaries: the stated time needs the stated dose, 30 min all that is known, and more is too long.
    #[test]
    fn the_dose_for_a_time_at_its_ends() {
        let plain = Budget::new(min(20.0), dose(2.0), None).unwrap();
        assert_eq!(
            (plain.dose_for(min(20.0)), plain.dose_for(min(0.0))),
            (Ok(dose(2.0)), Ok(dose(2.0)))
        );
        let most = budget().dose_for(min(30.0)).unwrap();
        assert!((most - dose(4.0)).value.abs() < 1e-15);
        let refused = budget().dose_for(min(31.0)).unwrap_err();
        let BudgetError::TooLong { wanted, most } = refused else { panic!("{refused}") };
        assert_eq!(wanted, min(31.0));
        assert!((most.get::<minute>() - 30.0).abs() < 1e-9, "{most:?}");
    }

    #[test]
    fn spent_and_left() {
        let status = |minutes: &[f64]| BudgetStatus::of(record(minutes), Some(min(20.0))).unwrap();
        assert_eq!(
            status(&[5.0, 5.0]),
            BudgetStatus { heats: 2, remaining: Remaining::Left(min(10.0)) }
        );
        assert_eq!(status(&[15.0, 5.0]).remaining, Remaining::Left(min(0.0)));
        let over = status(&[15.0, 10.0]);
        assert_eq!(over.remaining, Remaining::Overspent(min(5.0)));
        let energy = MolarEnergy::new::<kilojoule_per_mole>(117.5);
        let celsius = ThermodynamicTemperature::new::<degree_celsius>;
        let kinetics = Kinetics::new(energy, celsius(180.0), "a test").unwrap();
        // 10 °C more make the decay 1.9608 times as fast (Dean et al. 1988).
        let lasts = status(&[5.0, 5.0]).lasts_at(celsius(190.0), &kinetics).unwrap();
        assert!((lasts.unwrap().get::<minute>() - 10.0 / 1.9608).abs() < 1e-3);
        assert_eq!(over.lasts_at(celsius(190.0), &kinetics), Ok(Some(min(0.0))));
        let none = BudgetStatus::of(record(&[5.0]), None).unwrap();
        assert_eq!(none, BudgetStatus { heats: 1, remaining: Remaining::Unknown });
        assert_eq!(none.lasts_at(celsius(190.0), &kinetics), Ok(None));
        assert!(BudgetStatus::of(record(&[5.0]), Some(min(0.0))).is_err());
    }

    #[test]
    fn budgets_that_are_none() {
        let code = |time, dose, extra| Budget::new(time, dose, extra).unwrap_err().code();
        assert_eq!(code(min(0.0), dose(2.0), None), "out-of-range");
        assert_eq!(code(min(f64::NAN), dose(2.0), None), "not-finite");
        let low = Extra { time: min(500.0), most: dose(2.0) };
        assert_eq!(code(min(20.0), dose(2.0), Some(low)), "out-of-range");
    }

    proptest! {
        #[test]
        fn the_dose_for_a_time_withstands_it(minutes in 0.0..30.0f64) {
            let needed = budget().dose_for(min(minutes)).unwrap();
            let withstands = budget().at_dose(needed).unwrap();
            prop_assert!(withstands.value >= min(minutes).value * (1.0 - 1e-12));
        }
    }
}
