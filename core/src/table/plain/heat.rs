//! Heat that a pot has had, and its budget.

use alloc::vec::Vec;

use super::{if_given, of, or_default};
use crate::parameter::{Check, Parameter, ParameterError, Problem};
use crate::process::budget::{Budget, BudgetStatus, Extra, Remaining};
use crate::process::history::{HeatRecord, Kinetics, Reading};
use crate::quantity::{Measurable, Ratio, Time};
use crate::table::{Refusal, calculation};

calculation! {
    /// Equivalent time of a heat at a reference temperature: ∫ exp(−E_a/R (1/T − 1/T_ref)) dt.
    ///
    /// Between two readings the temperature is taken as straight. The activation energy is the supplier's; published ones of
    /// PVC are 117.5 to 170 kJ/mol.
    EQUIVALENT_TIME = "equivalent_time": EquivalentTime<'a> -> EquivalentTimeResult
    takes {
        readings: &'a [[f64; 2]] = Readings,
        activation_energy_kj_per_mol: f64 = ActivationEnergy,
        reference_temperature_celsius: f64 = ReferenceTemperature,
    }
    gives {
        /// Equivalent time.
        equivalent_time_s: f64 = "equivalent_time" Second,
    }
    cautions ["hot-plastisol", "fumes", "data-sheet"]
    request "heat-history"
    example EquivalentTime {
        readings: &[[0.0, 175.0], [600.0, 175.0]],
        activation_energy_kj_per_mol: 120.0,
        reference_temperature_celsius: 175.0,
    } => EquivalentTimeResult { equivalent_time_s: 600.0 };
}

impl EquivalentTime<'_> {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges; readings that are not in the order of time, or longer than a year.
    pub fn calculate(&self) -> Result<EquivalentTimeResult, Refusal> {
        let reading = |&[at, temperature]: &[f64; 2]| Reading {
            at: of(Parameter::ReadingTime, at),
            temperature: of(Parameter::ReadingTemperature, temperature),
        };
        let readings: Vec<Reading> = self.readings.iter().map(reading).collect();
        let kinetics = Kinetics::new(
            of(Parameter::ActivationEnergy, self.activation_energy_kj_per_mol),
            of(Parameter::ReferenceTemperature, self.reference_temperature_celsius),
            "the caller",
        );
        let mut check = Check::new();
        check.merge_numbers(&kinetics);
        check.count(Parameter::Readings, readings.len());
        for (index, reading) in readings.iter().enumerate() {
            check.element(Parameter::ReadingTime, index, reading.at.si()).element(
                Parameter::ReadingTemperature,
                index,
                reading.temperature.si(),
            );
        }
        check.finish()?;
        let time = kinetics?.equivalent_time(&readings)?;
        Ok(EquivalentTimeResult { equivalent_time_s: time.si() })
    }
}

calculation! {
    /// Heat budget that is left of a pot, in equivalent time at the reference temperature.
    ///
    /// More stabilizer than the budget is stated for buys the extra time that its maker states; without that figure it is
    /// refused.
    BUDGET_LEFT = "budget_left": BudgetLeft -> BudgetLeftResult
    takes {
        heat_budget_s: f64 = HeatBudget,
        equivalent_time_s: f64 = EquivalentTime,
        budget_with: Option<f64> = BudgetWith,
        stabilizer_dose: Option<f64> = StabilizerDose,
        extra_time_s: Option<f64> = ExtraTime,
        extra_most: Option<f64> = ExtraMost,
    }
    gives {
        /// Budget at this dose of stabilizer.
        budget_s: f64 = "budget" Second,
        /// Time that is left; 0 where more was spent.
        left_s: f64 = "left" Second,
        /// Time that was spent beyond the budget; 0 where it was not.
        overspent_s: f64 = "overspent" Second,
    }
    cautions ["hot-plastisol", "fumes", "data-sheet"]
    request "heat-history"
    example BudgetLeft {
        heat_budget_s: 1800.0,
        equivalent_time_s: 600.0,
        budget_with: None,
        stabilizer_dose: None,
        extra_time_s: None,
        extra_most: None,
    } => BudgetLeftResult { budget_s: 1800.0, left_s: 1200.0, overspent_s: 0.0 };
}

impl BudgetLeft {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges; a dose of stabilizer for which no budget is known.
    pub fn calculate(&self) -> Result<BudgetLeftResult, Refusal> {
        let spent: Time = of(Parameter::EquivalentTime, self.equivalent_time_s);
        let with: Ratio = or_default(Parameter::BudgetWith, self.budget_with);
        let dose: Ratio = if_given(Parameter::StabilizerDose, self.stabilizer_dose).unwrap_or(with);
        let mut check = Check::new();
        check
            .number(Parameter::EquivalentTime, spent.si())
            .number(Parameter::StabilizerDose, dose.value)
            .number(Parameter::BudgetWith, with.value)
            .option(Parameter::ExtraTime, self.extra_time_s)
            .option(Parameter::ExtraMost, self.extra_most);
        let extra = match (self.extra_time_s, self.extra_most) {
            (Some(time), Some(most)) => {
                Some(Extra { time: of(Parameter::ExtraTime, time), most: Ratio::from(most) })
            }
            (None, None) => None,
            (given, _) => {
                let (missing, by) = match given {
                    None => (Parameter::ExtraTime, Parameter::ExtraMost),
                    Some(_) => (Parameter::ExtraMost, Parameter::ExtraTime),
                };
                check.push(ParameterError::new(missing, Problem::NeededBy(by)));
                None
            }
        };
        let time: Time = of(Parameter::HeatBudget, self.heat_budget_s);
        check.number(Parameter::HeatBudget, time.si());
        let budget = Budget::new(time, with, extra);
        if check.is_clean() {
            check.merge_numbers(&budget);
        }
        check.finish()?;
        let budget = budget?.at_dose(dose)?;
        let record = HeatRecord::fresh().heated(Some(spent));
        let (left, overspent) = match BudgetStatus::of(record, Some(budget))?.remaining {
            Remaining::Overspent(over) => (0.0, over.si()),
            Remaining::Left(left) => (left.si(), 0.0),
            Remaining::Unknown => (f64::NAN, f64::NAN),
        };
        Ok(BudgetLeftResult { budget_s: budget.si(), left_s: left, overspent_s: overspent })
    }
}
