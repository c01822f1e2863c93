//! The least pot that the bench can make.

use super::BatchError;
use crate::parameter::{Check, Parameter};
use crate::quantity::{Mass, Ratio};

/// How finely one dose can be measured.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DoseStep {
    /// The step q: mass of a drop, of the smallest spoon, or the balance's readability.
    pub step: Mass,
    /// The tolerance of the dose, relative to it.
    pub tolerance: Ratio,
    /// The dose r, mass per mass of base.
    pub ratio: Ratio,
}

/// The limits that keep a pot from being smaller.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PotLimits<'a> {
    /// The doses.
    pub doses: &'a [DoseStep],
    /// Mass of base per mass of mix, above 0 to 1.
    pub base_fraction: Ratio,
    /// The least mix that the oven heats evenly, where known.
    pub oven: Option<Mass>,
    /// The least mix that the injector can draw from, where known.
    pub injector: Option<Mass>,
}

/// Which limit binds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[non_exhaustive]
pub enum PotLimit {
    /// No limit is known.
    Nothing,
    /// The dose of this index is the hardest to measure within its tolerance.
    Dose(usize),
    /// The oven's least even load.
    Oven,
    /// The injector must be able to draw from it.
    Injector,
}

/// The least pot that works.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LeastPot {
    /// Mass of mix; zero where nothing limits it.
    pub mix: Mass,
    /// Mass of base in it.
    pub base: Mass,
    /// The limit that decides; of equal limits the first, doses before oven before injector.
    pub limit: PotLimit,
}

impl PotLimits<'_> {
    /// The least pot: base m_min = max_i q_i/(2 tol_i r_i), since a dose measured in steps of q is off by up
    /// to q/2; and mix not below what oven and injector ask for.
    ///
    /// # Errors
    /// A number out of its range; a mix that is not finite, from a tolerance or a base fraction next to 0.
    pub fn least(&self) -> Result<LeastPot, BatchError> {
        let fraction = self.base_fraction;
        let mut check = Check::new();
        check.number(Parameter::BaseFraction, fraction.value);
        for (index, dose) in self.doses.iter().enumerate() {
            check
                .element(Parameter::DoseStep, index, dose.step.value)
                .element(Parameter::Tolerance, index, dose.tolerance.value)
                .element(Parameter::DoseRatio, index, dose.ratio.value);
        }
        check
            .option(Parameter::OvenLeast, self.oven.map(|oven| oven.value))
            .option(Parameter::InjectorLeast, self.injector.map(|injector| injector.value));
        check.finish()?;
        let mut least =
            LeastPot { mix: Mass::default(), base: Mass::default(), limit: PotLimit::Nothing };
        let mut raise = |mix: Mass, limit| {
            if mix > least.mix {
                least = LeastPot { mix, base: mix * fraction, limit };
            }
        };
        for (index, dose) in self.doses.iter().enumerate() {
            raise(dose.least_base() / fraction, PotLimit::Dose(index));
        }
        if let Some(oven) = self.oven {
            raise(oven, PotLimit::Oven);
        }
        if let Some(injector) = self.injector {
            raise(injector, PotLimit::Injector);
        }
        // Next to no tolerance asks for more than any pot holds.
        if !least.mix.is_finite() {
            Parameter::MixNeeded.check_si(least.mix.value)?;
        }
        Ok(least)
    }

    /// Refuses a pot of `mix` that is smaller than the smallest that works.
    ///
    /// # Errors
    /// [`BatchError::PotTooSmall`] with the smallest pot and its limit, or a number out of its range.
    pub fn check(&self, mix: Mass) -> Result<(), BatchError> {
        Parameter::MixNeeded.check_si(mix.value)?;
        let least = self.least()?;
        // A pot of exactly the smallest size may come out a rounding below it.
        let large_enough = mix >= least.mix * (1.0 - super::whole::SNAP);
        if large_enough { Ok(()) } else { Err(BatchError::PotTooSmall { asked: mix, least }) }
    }
}

impl DoseStep {
    fn least_base(&self) -> Mass {
        self.step / (2.0 * self.tolerance * self.ratio)
    }
}

#[cfg(test)]
mod tests {
    use rstest::rstest;
    use std::string::ToString;
    use uom::si::mass::gram;

    use super::*;
    use crate::fault::Diagnose;

    fn g(x: f64) -> Mass {
        Mass::new::<gram>(x)
    }

    fn dose(step: f64, tolerance: f64, ratio: f64) -> DoseStep {
        DoseStep { step: g(step), tolerance: Ratio::from(tolerance), ratio: Ratio::from(ratio) }
    }

    fn limits(doses: &[DoseStep]) -> PotLimits<'_> {
        PotLimits { doses, base_fraction: Ratio::from(0.8), oven: None, injector: None }
    }

    #[test]
    fn the_finest_dose_binds() {
        // A drop of 0.044 g at 0.6 % of base within 5 %: 0.044/(2·0.05·0.006) = 73.33 g of base, 91.67 g of
        // mix.
        let doses = [dose(0.1, 0.1, 0.08), dose(0.044, 0.05, 0.006)];
        let least = limits(&doses).least().unwrap();
        assert_eq!(least.limit, PotLimit::Dose(1));
        assert!((least.base.get::<gram>() - 73.333_333_333).abs() < 1e-6);
        let refused = limits(&doses).check(g(90.0)).unwrap_err();
        assert_eq!(refused.code(), "batch-pot-too-small");
        assert!(refused.to_string().contains("dose 2"), "{refused}");
        assert!(refused.help().contains("91.67 g of mix"), "{}", refused.help());
        assert_eq!(limits(&doses).check(least.mix), Ok(()));
        // Less by rounding is enough.
        assert_eq!(limits(&doses).check(least.mix * (1.0 - 1e-9)), Ok(()));
    }

    #[test]
    fn oven_and_injector_bind_where_they_ask_for_more() {
        let doses = [dose(0.1, 0.1, 0.08)];
        let oven = PotLimits { oven: Some(g(60.0)), ..limits(&doses) };
        assert_eq!(oven.least().unwrap().limit, PotLimit::Oven);
        let both = PotLimits { injector: Some(g(61.0)), ..oven };
        assert_eq!(both.least().unwrap().limit, PotLimit::Injector);
        let equal = PotLimits { injector: Some(g(60.0)), ..oven };
        assert_eq!(equal.least().unwrap().limit, PotLimit::Oven);
        let free = limits(&[]);
        assert_eq!(free.least().unwrap().limit, PotLimit::Nothing);
        assert_eq!(free.check(g(0.1)), Ok(()));
    }

    #[rstest]
    #[case(dose(0.0, 0.1, 0.1))]
    #[case(dose(0.1, 2.0, 0.1))]
    #[case(dose(0.1, 0.1, -0.1))]
    fn refuses(#[case] dose: DoseStep) {
        assert_eq!(limits(&[dose]).least().unwrap_err().code(), "out-of-range");
    }

    #[test]
    fn a_pot_beyond_all_numbers_is_refused() {
        let doses = [dose(0.1, f64::from_bits(1), 0.1)];
        assert_eq!(limits(&doses).least().unwrap_err().code(), "not-finite");
        let little_base =
            PotLimits { base_fraction: Ratio::from(f64::from_bits(1)), ..limits(&doses[..0]) };
        assert_eq!(little_base.least().unwrap().mix, g(0.0));
    }
}
