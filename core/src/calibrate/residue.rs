//! The residue in an injector each time it is emptied, from weighing it clean and emptied.
//!
//! The mean of the differences over the density of the plastic. Its standard uncertainty u is of two parts,
//! u² = s²/n + d²/6/n: the scatter of the n differences, s their standard deviation, and the rounding of each on a
//! balance that shows steps of d, which equal readings hide (JCGM 100:2008, 4.2 and F.2.2.1).

use super::CalibrateError;
use super::error::but_for_rounding;
use super::outlier::{Questioned, question};
use crate::parameter::{Check, Parameter};
use crate::quantity::{Mass, MassDensity, Measured, Volume};
use crate::uncertainty::by_difference;

/// An injector weighed clean, and again when it has been used and emptied.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Emptied {
    /// Clean and dry.
    pub clean: Mass,
    /// Emptied as at work.
    pub emptied: Mass,
}

/// The residue in an injector.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Residue {
    /// Mean mass.
    pub mass: Mass,
    /// Its standard uncertainty.
    pub uncertainty: Mass,
    /// Standard deviation of one emptying.
    pub deviation: Mass,
    /// An emptying to look at again. It is in the mean.
    pub questioned: Option<Questioned>,
}

impl Residue {
    /// The residue, by two or more weighings on a scale with steps of `readability` (zero where rounding plays
    /// no part).
    ///
    /// # Errors
    /// Numbers out of their ranges; [`CalibrateError::Lighter`] for an injector that weighs less emptied than clean.
    pub fn new(weighings: &[Emptied], readability: Mass) -> Result<Self, CalibrateError> {
        let mut check = Check::new();
        super::check_readability(readability, &mut check);
        check.count(Parameter::InjectorWeighed, weighings.len());
        for (index, weighing) in weighings.iter().enumerate() {
            check.element(Parameter::CleanMass, index, weighing.clean.value).element(
                Parameter::EmptiedMass,
                index,
                weighing.emptied.value,
            );
        }
        check.finish()?;
        if let Some((i, &Emptied { clean, emptied })) =
            weighings.iter().enumerate().find(|(_, weighing)| weighing.emptied < weighing.clean)
        {
            return Err(CalibrateError::Lighter { place: i.saturating_add(1), clean, emptied });
        }
        let n = weighings.len() as f64;
        let kept = || weighings.iter().map(|weighing| weighing.emptied - weighing.clean);
        let mass = kept().fold(Mass::default(), |sum, kept| sum + kept) / n;
        let weighed = weighings.iter().map(|weighing| weighing.emptied.value).fold(0.0, f64::max);
        let off = |kept: Mass| but_for_rounding((kept - mass).value, weighed);
        let square = kept().map(off).fold(0.0, |sum, off| sum + off * off);
        let deviation = Mass { value: libm::sqrt(square / (n - 1.0)), ..mass };
        let rounding = by_difference(readability).value;
        let one = libm::sqrt(deviation.value * deviation.value + rounding * rounding);
        Ok(Self {
            mass,
            uncertainty: Mass { value: one, ..mass } / libm::sqrt(n),
            deviation,
            questioned: question(kept().map(|kept| off(kept) / deviation.value)),
        })
    }

    /// The volume that a book keeps as what the injector keeps: V = m/ρ, with ρ at the temperature at which it
    /// is emptied; (u(V)/V)² = (u(m)/m)² + (u(ρ)/ρ)².
    ///
    /// # Errors
    /// A density out of its range.
    pub fn volume(
        &self,
        density: &Measured<MassDensity>,
    ) -> Result<Measured<Volume>, CalibrateError> {
        let spread = density.uncertainty.unwrap_or_default();
        let mut check = Check::new();
        check
            .number(Parameter::ResidueDensity, density.value.value)
            .number(Parameter::DensityUncertainty, spread.value);
        check.finish()?;
        let volume = self.mass / density.value;
        // u(V) in parts, so that an injector that keeps nothing divides nothing by zero.
        let own = (self.uncertainty / density.value).value;
        let by_density = volume.value * (spread / density.value).value;
        let uncertainty = libm::sqrt(own * own + by_density * by_density);
        Ok(Measured::new(volume, Volume { value: uncertainty, ..volume }))
    }
}

#[cfg(test)]
mod tests {
    use rstest::rstest;
    use std::vec::Vec;
    use uom::si::mass::gram;
    use uom::si::mass_density::gram_per_cubic_centimeter;
    use uom::si::volume::milliliter;

    use super::*;
    use crate::fault::Diagnose;

    fn weighings(list: &[(f64, f64)]) -> Vec<Emptied> {
        let g = Mass::new::<gram>;
        list.iter()
            .map(|&(clean, emptied)| Emptied { clean: g(clean), emptied: g(emptied) })
            .collect()
    }

    #[test]
    fn by_hand() {
        // 4.0, 4.2, 4.4 g: mean 4.2, s = 0.2, u² = 0.2²/3 + 0.1²/6/3; at 0.9 ± 0.009 g/mL 4.6667 mL.
        let three = weighings(&[(180.0, 184.0), (180.0, 184.2), (180.1, 184.5)]);
        let got = Residue::new(&three, Mass::new::<gram>(0.1)).unwrap();
        assert!((got.mass.get::<gram>() - 4.2).abs() < 1e-12);
        assert!((got.deviation.get::<gram>() - 0.2).abs() < 1e-12);
        let of = MassDensity::new::<gram_per_cubic_centimeter>;
        let volume = got.volume(&Measured::new(of(0.9), of(0.009))).unwrap();
        assert!((volume.value.get::<milliliter>() - 4.2 / 0.9).abs() < 1e-12);
        let relative = libm::sqrt((0.04 + 0.01 / 6.0) / 3.0 / (4.2 * 4.2) + 1e-4);
        let got = volume.uncertainty.unwrap().get::<milliliter>();
        assert!((got - 4.2 / 0.9 * relative).abs() < 1e-12);
    }

    #[test]
    fn an_injector_that_keeps_nothing() {
        let nothing = weighings(&[(180.0, 180.0), (180.0, 180.0)]);
        let got = Residue::new(&nothing, Mass::default()).unwrap();
        let of = MassDensity::new::<gram_per_cubic_centimeter>;
        let volume = got.volume(&Measured::exact(of(0.9))).unwrap();
        assert_eq!(volume, Measured::new(Volume::default(), Volume::default()));
        assert_eq!(got.volume(&Measured::exact(of(0.0))).unwrap_err().code(), "out-of-range");
    }

    /// Seven of 4.0 to 4.3 g and one of 9.0 g: mean 4.7625, s = 1.7142, G = 2.4720.
    #[test]
    fn an_emptying_that_is_out_is_questioned() {
        let kept = [4.0, 4.1, 4.2, 4.1, 4.3, 4.2, 4.2, 9.0];
        let list = weighings(&kept.map(|kept| (180.0, 180.0 + kept)));
        let questioned = Residue::new(&list, Mass::default()).unwrap().questioned.unwrap();
        assert_eq!(questioned.place, 8);
        assert!((questioned.distance.value - 2.4720).abs() < 1e-3, "{questioned}");
        let lighter = weighings(&[(180.0, 184.0), (180.0, 179.0)]);
        let refused = Residue::new(&lighter, Mass::default()).unwrap_err();
        assert!(std::format!("{refused}").contains("weighing 2"), "{refused}");
    }

    #[rstest]
    #[case(&[(180.0, 184.0)], "out-of-range")]
    #[case(&[(180.0, 184.0), (180.0, 179.0)], "calibrate-injector-lighter")]
    #[case(&[(180.0, 184.0), (f64::NAN, 184.0)], "not-finite")]
    fn refuses(#[case] list: &[(f64, f64)], #[case] code: &str) {
        let refused = Residue::new(&weighings(list), Mass::default()).unwrap_err();
        assert_eq!(refused.code(), code);
    }

    #[test]
    fn refuses_a_balance_that_cannot_be() {
        let two = weighings(&[(180.0, 184.0), (180.0, 184.2)]);
        let refused = Residue::new(&two, Mass::new::<gram>(-0.1)).unwrap_err();
        assert_eq!(refused.code(), "out-of-range");
    }
}
