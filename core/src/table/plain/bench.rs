//! Masses as the bench can measure them.

use alloc::vec::Vec;

use super::{if_given, of, or_default};
use crate::bench::{Balance, Bench, Cup, Handling, MOST_SPOONS, Manner, Step, Tool};
use crate::parameter::{Check, Parameter, PlainUnit};
use crate::quantity::{Mass, Measurable};
use crate::table::{Refusal, calculation};

calculation! {
    /// Measures a mass with the tools of the bench: the way with the least handling that keeps the tolerance.
    ///
    /// A tool that is not given is not on the bench. Where no tool keeps the tolerance, the help gives the mass from which one
    /// would.
    BENCH_MEASURE = "bench_measure": BenchMeasure<'a> -> BenchMeasureResult
    takes {
        mass_to_measure_g: f64 = MassToMeasure,
        tolerance: Option<f64> = Tolerance,
        balance_readability_g: Option<f64> = BalanceReadability,
        balance_capacity_g: Option<f64> = BalanceCapacity,
        balance_least_load_g: Option<f64> = BalanceLeastLoad,
        spoons_ml: Option<&'a [f64]> = Spoons,
        cups: Option<&'a [[f64; 2]]> = Cups,
        as_measured_density_g_per_ml: Option<f64> = AsMeasuredDensity,
        drop_mass_g: Option<f64> = DropMass,
    }
    gives {
        /// Mass that it gives.
        mass_g: f64 = "mass" Gram,
        /// (given − needed)/needed.
        deviation: f64 = "deviation" Pure,
        /// The tool: balance, cup, spoons or drops.
        tool: Tool = "tool" None,
        /// Amount of handling: readings, fillings, spoonfuls, tens of drops.
        acts: u32 = "acts" Count,
        /// Number of drops.
        drops: u32 = "drops" Count,
        /// Number of level spoonfuls of each spoon, in the order of the spoons.
        spoonfuls: [u32; MOST_SPOONS] = "spoonfuls" Count,
        /// Which cup, counted from 1; 0 without one.
        cup: u32 = "cup" Count,
        /// Number of times that cup is filled to its last mark.
        cup_fillings: u32 = "cup_fillings" Count,
        /// Mark to which it is filled once more, counted from 1; 0 where it is not.
        cup_mark: u32 = "cup_mark" Count,
    }
    request "measure"
    example BenchMeasure {
        mass_to_measure_g: 12.5,
        tolerance: Some(0.02),
        balance_readability_g: None,
        balance_capacity_g: None,
        balance_least_load_g: None,
        spoons_ml: Some(&[5.0, 2.5]),
        cups: None,
        as_measured_density_g_per_ml: Some(1.0),
        drop_mass_g: None,
    } => BenchMeasureResult {
        mass_g: 12.5,
        deviation: 0.0,
        tool: Tool::Spoons,
        acts: 3,
        drops: 0,
        spoonfuls: [2, 1, 0, 0, 0, 0, 0, 0],
        cup: 0,
        cup_fillings: 0,
        cup_mark: 0,
    };
}

impl BenchMeasure<'_> {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges; a bench with no tool for the material, or none fine enough.
    pub fn calculate(&self) -> Result<BenchMeasureResult, Refusal> {
        let readability: Option<Mass> =
            if_given(Parameter::BalanceReadability, self.balance_readability_g);
        let balance = readability.map(|readability| Balance {
            readability,
            capacity: if_given(Parameter::BalanceCapacity, self.balance_capacity_g)
                .unwrap_or_else(|| Balance::usual_capacity(readability)),
            least_load: or_default(Parameter::BalanceLeastLoad, self.balance_least_load_g),
        });
        let mut check = Check::new();
        if readability.is_none() {
            let grams = |g: Option<f64>| g.map(|g| PlainUnit::Gram.to_si(g));
            check
                .option(Parameter::BalanceCapacity, grams(self.balance_capacity_g))
                .option(Parameter::BalanceLeastLoad, grams(self.balance_least_load_g));
        }
        if let Some(cups) = self.cups {
            check.count(Parameter::Cups, cups.len());
        }
        let spoons = self.spoons_ml.unwrap_or_default();
        let spoons = spoons.iter().map(|&ml| of(Parameter::SpoonVolume, ml)).collect();
        let cups: Vec<Cup> = self
            .cups
            .unwrap_or_default()
            .iter()
            .map(|&[mark, capacity]| Cup {
                mark: of(Parameter::CupMark, mark),
                capacity: of(Parameter::CupCapacity, capacity),
            })
            .collect();
        check.finish()?;
        let marks: Vec<u32> = cups.iter().map(Cup::marks).collect();
        let tools = Bench::new(balance, spoons, cups, Handling::default())?;
        let manner = Manner {
            by_volume: if_given(Parameter::AsMeasuredDensity, self.as_measured_density_g_per_ml),
            drop: if_given(Parameter::DropMass, self.drop_mass_g),
        };
        let mass: Mass = of(Parameter::MassToMeasure, self.mass_to_measure_g);
        let best =
            tools.measure(mass, &manner, or_default(Parameter::Tolerance, self.tolerance))?.best;
        let mut result = BenchMeasureResult {
            mass_g: PlainUnit::Gram.from_si(best.mass.si()),
            deviation: best.deviation.value,
            tool: best.tool,
            acts: best.acts,
            drops: 0,
            spoonfuls: [0; MOST_SPOONS],
            cup: 0,
            cup_fillings: 0,
            cup_mark: 0,
        };
        for step in &best.steps {
            result.add(step, &marks);
        }
        Ok(result)
    }
}

impl BenchMeasureResult {
    fn add(&mut self, step: &Step, marks: &[u32]) {
        match *step {
            // Only a plan fills a cup between its marks.
            Step::Weigh { .. } | Step::Between { .. } => {}
            Step::Drop { times } => self.drops = times,
            Step::Spoon { spoon, times } => {
                if let Some(spoonfuls) = self.spoonfuls.get_mut(spoon) {
                    *spoonfuls = spoonfuls.saturating_add(times);
                }
            }
            Step::Fill { cup, mark, times } => {
                self.cup = u32::try_from(cup).unwrap_or(u32::MAX).saturating_add(1);
                if marks.get(cup) == Some(&mark) {
                    self.cup_fillings = self.cup_fillings.saturating_add(times);
                } else {
                    self.cup_mark = mark;
                }
            }
        }
    }
}
