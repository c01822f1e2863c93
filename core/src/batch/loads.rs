//! Shots to injector loads.

use super::{BatchError, whole};
use crate::parameter::{Check, Parameter, Relation};
use crate::quantity::{Mass, MassDensity, Volume};

/// An injector.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Injector {
    /// Volume that it holds when drawn full.
    pub holds: Volume,
    /// Volume that stays in it when it is emptied; below what it holds.
    pub keeps: Volume,
}

/// How shots divide into loads.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Loads {
    /// Whole shots q that one load gives.
    pub shots_per_load: u32,
    /// How many loads.
    pub loads: u32,
    /// Shots from the last load, 1 to q.
    pub shots_in_last: u32,
}

impl Injector {
    /// The loads that `shots` shots of `shot` each take: q = ⌊(holds − keeps) ρ_hot/m_shot⌋, loads = ⌈S/q⌉.
    ///
    /// `hot_density` is the density of what is drawn, at shot temperature and with its voids.
    ///
    /// # Errors
    /// [`BatchError::NothingFits`] with the largest shot that fits, no shot at all, or a number out of its
    /// range.
    pub fn loads(
        &self,
        shots: u32,
        shot: Mass,
        hot_density: MassDensity,
    ) -> Result<Loads, BatchError> {
        let mut check = Check::new();
        check
            .number(Parameter::Shots, f64::from(shots))
            .number(Parameter::ShotMass, shot.value)
            .number(Parameter::ShotDensity, hot_density.value);
        self.check(&mut check);
        check.finish()?;
        let largest = (self.holds - self.keeps) * hot_density;
        let shots_per_load = whole::to_count(whole::down((largest / shot).value));
        let loads = whole::div_up(shots, shots_per_load)
            .ok_or(BatchError::NothingFits { shot, largest })?;
        let before_last = shots_per_load.saturating_mul(loads.saturating_sub(1));
        Ok(Loads { shots_per_load, loads, shots_in_last: shots.saturating_sub(before_last) })
    }

    /// The largest shot that one load gives: (holds − keeps) ρ_hot.
    ///
    /// # Errors
    /// A number out of its range.
    pub fn largest_shot(&self, hot_density: MassDensity) -> Result<Mass, BatchError> {
        let mut check = Check::new();
        check.number(Parameter::ShotDensity, hot_density.value);
        self.check(&mut check);
        check.finish()?;
        Ok((self.holds - self.keeps) * hot_density)
    }

    fn check(&self, check: &mut Check) {
        let (capacity, residue) = (Parameter::InjectorCapacity, Parameter::InjectorResidue);
        check.number(capacity, self.holds.value).number(residue, self.keeps.value).relation(
            (residue, self.keeps.value),
            Relation::Below,
            (capacity, self.holds.value),
        );
    }

    /// The mass that stays in it each time it is emptied: keeps · ρ_hot.
    ///
    /// # Errors
    /// A number out of its range.
    pub fn kept(&self, hot_density: MassDensity) -> Result<Mass, BatchError> {
        let mut check = Check::new();
        check
            .number(Parameter::InjectorResidue, self.keeps.value)
            .number(Parameter::ShotDensity, hot_density.value);
        check.finish()?;
        Ok(self.keeps * hot_density)
    }
}

#[cfg(test)]
mod tests {
    use rstest::rstest;
    use uom::si::mass::gram;
    use uom::si::mass_density::gram_per_cubic_centimeter;
    use uom::si::volume::milliliter;

    use super::*;
    use crate::fault::Diagnose;

    fn injector(holds: f64, keeps: f64) -> Injector {
        let ml = Volume::new::<milliliter>;
        Injector { holds: ml(holds), keeps: ml(keeps) }
    }

    fn loads(injector: Injector, shots: u32, shot: f64) -> Result<Loads, BatchError> {
        let hot = MassDensity::new::<gram_per_cubic_centimeter>(0.9);
        injector.loads(shots, Mass::new::<gram>(shot), hot)
    }

    // 104 mL less 4 mL at 0.9 g/mL give 90 g.
    #[rstest]
    #[case(10, 30.0, 3, 4, 1)]
    #[case(9, 30.0, 3, 3, 3)]
    #[case(10, 31.0, 2, 5, 2)]
    #[case(3, 90.0, 1, 3, 1)]
    #[case(1, 1e-9, u32::MAX - 1, 1, 1)]
    fn whole_shots_only(
        #[case] shots: u32,
        #[case] shot: f64,
        #[case] shots_per_load: u32,
        #[case] count: u32,
        #[case] shots_in_last: u32,
    ) {
        let got = loads(injector(104.0, 4.0), shots, shot).unwrap();
        assert_eq!(got, Loads { shots_per_load, loads: count, shots_in_last });
    }

    #[test]
    fn a_mold_too_large_is_refused_with_the_largest_that_fits() {
        let refused = loads(injector(104.0, 4.0), 3, 95.0).unwrap_err();
        assert_eq!(refused.code(), "batch-shot-does-not-fit");
        assert!(refused.help().contains("fits is 90 g"), "{}", refused.help());
        let hot = MassDensity::new::<gram_per_cubic_centimeter>(0.9);
        let largest = injector(104.0, 4.0).largest_shot(hot).unwrap();
        assert!((largest.get::<gram>() - 90.0).abs() < 1e-9);
    }

    #[rstest]
    #[case(injector(4.0, 4.0), 3, 1.0, "out-of-range")]
    #[case(injector(0.0, 0.0), 3, 1.0, "out-of-range")]
    #[case(injector(100.0, -1.0), 3, 1.0, "out-of-range")]
    #[case(injector(100.0, 4.0), 3, f64::NAN, "not-finite")]
    #[case(injector(100.0, 4.0), 0, 1.0, "out-of-range")]
    fn refuses(
        #[case] injector: Injector,
        #[case] shots: u32,
        #[case] shot: f64,
        #[case] code: &str,
    ) {
        assert_eq!(loads(injector, shots, shot).unwrap_err().code(), code);
    }
}
