//! One drop or one level spoonful, from several weighings of many.
//!
//! Weighing i finds m_i for n_i of them. What one weighs is μ = Σm/Σn. The scatter of single ones about μ is
//! s² = Σ (m_i − n_i μ)²/n_i / (k − 1) over k weighings, and u²(μ) = s²/Σn + k·d²/6/(Σn)²: their scatter, and
//! the rounding of each net weight on a balance that shows steps of d (JCGM 100:2008, 4.2 and F.2.2.1), which
//! k equal readings hide. How the bottle is held or the spoon leveled differs from weighing to weighing: it is
//! in s, so refill and start again each time.

use super::CalibrateError;
use super::error::{
    ABSURD_SPREAD, HEAVIEST_DROP, HEAVIEST_POWDER, LIGHTEST_DROP, LIGHTEST_POWDER, but_for_rounding,
};
use super::outlier::{Questioned, question};
use crate::material::Drop;
use crate::parameter::{Check, Parameter};
use crate::quantity::{Mass, MassDensity, Measured, Ratio, Volume};
use crate::uncertainty::by_difference;

/// A number of drops, or of level spoonfuls, weighed together.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Counted {
    /// How many.
    pub count: u32,
    /// Their net mass together.
    pub weight: Mass,
}

/// Mass of one.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PerOne {
    /// How many weighings.
    pub weighings: usize,
    /// How many were weighed in all.
    pub count: u64,
    /// The mass of one, μ.
    pub mass: Mass,
    /// Its standard uncertainty: what n of them carry n-fold.
    pub uncertainty: Mass,
    /// Standard deviation s of one against the next: what n of them carry by √n.
    pub scatter: Mass,
    /// A weighing to look at again; exact where all weighings count the same number. It is in the mean.
    pub questioned: Option<Questioned>,
}

impl PerOne {
    /// Mass of one, by two or more `weighings` on a scale with steps of `readability` (zero where
    /// rounding plays no part).
    ///
    /// # Errors
    /// Numbers out of their ranges; [`CalibrateError::Uneven`] where the weighings
    /// scatter by more than a fifth.
    pub fn new(weighings: &[Counted], readability: Mass) -> Result<Self, CalibrateError> {
        let mut check = Check::new();
        super::check_readability(readability, &mut check);
        check.count(Parameter::DropsWeighed, weighings.len());
        let (mut count, mut total) = (0_u64, Mass::default());
        for (index, &Counted { count: n, weight }) in weighings.iter().enumerate() {
            check.element(Parameter::WeighedCount, index, f64::from(n)).element(
                Parameter::WeighedMass,
                index,
                weight.value,
            );
            count = count.saturating_add(u64::from(n));
            total += weight;
        }
        check.finish()?;
        let (k, n) = (weighings.len() as f64, count as f64);
        let mass = total / n;
        // (m_i − n_i μ)/(μ √n_i), and their sum of squares.
        let residual = |weighing: &Counted| {
            let n = f64::from(weighing.count);
            let off = (weighing.weight / mass).value - n;
            but_for_rounding(off, n) / libm::sqrt(n)
        };
        let squares = weighings.iter().map(residual).fold(0.0, |sum, r| sum + r * r);
        let scatter = libm::sqrt(squares / (k - 1.0));
        // That of what one weighs by each weighing, the weighings being of about n/k.
        let between = Ratio::from(scatter / libm::sqrt(n / k));
        if between.value > ABSURD_SPREAD {
            return Err(CalibrateError::Uneven { scatter: between });
        }
        let rounding = (by_difference(readability) / mass).value * libm::sqrt(k) / n;
        let relative = libm::sqrt(scatter * scatter / n + rounding * rounding);
        Ok(Self {
            weighings: weighings.len(),
            count,
            mass,
            uncertainty: mass * relative,
            scatter: mass * scatter,
            questioned: question(weighings.iter().map(|weighing| residual(weighing) / scatter)),
        })
    }

    /// One drop, as a book keeps it.
    ///
    /// # Errors
    /// [`CalibrateError::NoDrop`] outside 2 mg to 200 mg.
    pub fn drop(&self) -> Result<Drop, CalibrateError> {
        if (LIGHTEST_DROP..=HEAVIEST_DROP).contains(&self.mass.value) {
            Ok(Drop::Mass(Measured::new(self.mass, self.uncertainty)))
        } else {
            Err(CalibrateError::NoDrop { mass: self.mass })
        }
    }

    /// The density as scooped, β = μ/V, with a level spoon that holds V:
    /// (u(β)/β)² = (u(μ)/μ)² + (u(V)/V)².
    ///
    /// For doses taken with this same spoon the uncertainty of its size cancels: give it as exact, and set that
    /// of a spoon's size in [`ToolUncertainty`](crate::uncertainty::ToolUncertainty) to zero.
    ///
    /// # Errors
    /// Numbers out of their ranges; [`CalibrateError::NoPowder`] outside
    /// 0.02 g/mL to 5 g/mL.
    pub fn as_scooped(
        &self,
        spoon: &Measured<Volume>,
    ) -> Result<Measured<MassDensity>, CalibrateError> {
        let spread = spoon.uncertainty.unwrap_or_default();
        let mut check = Check::new();
        check
            .number(Parameter::SpoonVolume, spoon.value.value)
            .number(Parameter::VolumeUncertainty, spread.value);
        check.finish()?;
        let density = self.mass / spoon.value;
        if !(LIGHTEST_POWDER..=HEAVIEST_POWDER).contains(&density.value) {
            return Err(CalibrateError::NoPowder { density });
        }
        let (own, size) = (self.uncertainty / self.mass, spread / spoon.value);
        let relative = libm::sqrt((own * own + size * size).value);
        Ok(Measured::new(density, density * relative))
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use rstest::rstest;
    use std::vec::Vec;
    use uom::si::mass::gram;
    use uom::si::mass_density::gram_per_cubic_centimeter;
    use uom::si::volume::milliliter;

    use super::*;
    use crate::fault::Diagnose;

    fn weighings(list: &[(u32, f64)]) -> Vec<Counted> {
        let of = |&(count, weight)| Counted { count, weight: Mass::new::<gram>(weight) };
        list.iter().map(of).collect()
    }

    fn exact() -> Mass {
        Mass::default()
    }

    #[test]
    fn a_drop_by_hand() {
        // μ = 6.6/150 = 0.044; residuals 0, 0.1, −0.1 over √50: s² = 0.02/50/2 = 2e-4; u² = 2e-4/150.
        let list = weighings(&[(50, 2.2), (50, 2.3), (50, 2.1)]);
        let got = PerOne::new(&list, exact()).unwrap();
        assert_eq!((got.weighings, got.count), (3, 150));
        assert!((got.mass.get::<gram>() - 0.044).abs() < 1e-15);
        assert!((got.scatter.get::<gram>() - libm::sqrt(2e-4)).abs() < 1e-12);
        assert!((got.uncertainty.get::<gram>() - libm::sqrt(2e-4 / 150.0)).abs() < 1e-12);
        assert_eq!(got.questioned, None);
        assert_eq!(got.drop(), Ok(Drop::Mass(Measured::new(got.mass, got.uncertainty))));
    }

    #[test]
    fn equal_readings_leave_the_rounding() {
        let list = weighings(&[(50, 2.2), (50, 2.2)]);
        let got = PerOne::new(&list, Mass::new::<gram>(0.1)).unwrap();
        // Two net weights of u = 0.1/√6 each, over 100 drops.
        let by_hand = 0.1 / libm::sqrt(6.0) * libm::sqrt(2.0) / 100.0;
        assert!((got.uncertainty.get::<gram>() - by_hand).abs() < 1e-12);
        assert_eq!((got.scatter, got.questioned), (Mass::default(), None));
        let three = weighings(&[(50, 2.2), (50, 2.2), (50, 2.2)]);
        assert_eq!(PerOne::new(&three, exact()).unwrap().scatter, Mass::default());
    }

    #[test]
    fn a_miscounted_weighing_is_questioned() {
        let list =
            weighings(&[(50, 2.2), (50, 2.22), (50, 2.19), (50, 2.21), (50, 2.2), (50, 2.6)]);
        let got = PerOne::new(&list, exact()).unwrap();
        assert_eq!(got.questioned.unwrap().place, 6);
        assert!((got.mass.get::<gram>() - 13.62 / 300.0).abs() < 1e-12);
    }

    #[test]
    fn a_scooped_density_by_hand() {
        let got = PerOne::new(&weighings(&[(10, 30.0), (10, 32.0)]), exact()).unwrap();
        let ml = Volume::new::<milliliter>;
        let density = got.as_scooped(&Measured::new(ml(2.5), ml(0.05))).unwrap();
        let of = |density: MassDensity| density.get::<gram_per_cubic_centimeter>();
        assert!((of(density.value) - 1.24).abs() < 1e-12);
        // μ = 3.1; residuals ∓1 over √10: s² = 0.2, u² = 0.2/20 = 0.01; relative 0.1/3.1 and 0.02.
        let by_hand = 1.24 * libm::sqrt(0.01 / (3.1 * 3.1) + 0.0004);
        assert!((of(density.uncertainty.unwrap()) - by_hand).abs() < 1e-12);
        let refused = got.as_scooped(&Measured::exact(ml(0.0))).unwrap_err();
        assert_eq!(refused.code(), "out-of-range");
    }

    #[rstest]
    #[case(&[], "out-of-range")]
    #[case(&[(50, 2.2)], "out-of-range")]
    #[case(&[(50, 2.2), (0, 2.2)], "out-of-range")]
    #[case(&[(50, 2.2), (50, 0.0)], "out-of-range")]
    #[case(&[(50, 2.2), (50, f64::NAN)], "not-finite")]
    #[case(&[(50, 2.2), (50, 4.4)], "calibrate-weighings-uneven")]
    fn refuses(#[case] list: &[(u32, f64)], #[case] code: &str) {
        assert_eq!(PerOne::new(&weighings(list), exact()).unwrap_err().code(), code);
    }

    /// Two weighings of 50, by d more and less: residuals ±√50 d, s² = 100 d², that of one weighing √2 d.
    #[test]
    fn a_fifth_of_scatter_is_believed() {
        let of = |d: f64| {
            let list = weighings(&[(50, 2.2 * (1.0 + d)), (50, 2.2 * (1.0 - d))]);
            PerOne::new(&list, exact())
        };
        assert!(of(0.14).is_ok());
        let CalibrateError::Uneven { scatter } = of(0.143).unwrap_err() else { panic!("even") };
        assert!((scatter.value - libm::sqrt(2.0) * 0.143).abs() < 1e-12);
    }

    /// Grams a drop, milligrams a heaped scoop: a slip of the unit or of the count.
    #[test]
    fn what_is_no_drop_and_no_powder_is_questioned() {
        let of = |each: f64| {
            PerOne::new(&weighings(&[(10, 10.0 * each), (10, 10.0 * each)]), exact()).unwrap()
        };
        for grams in [447.0, 0.21, 0.001] {
            assert_eq!(of(grams).drop().unwrap_err().code(), "calibrate-no-drop", "{grams}");
        }
        assert!(of(0.002_001).drop().is_ok() && of(0.2).drop().is_ok());
        let spoon = Measured::exact(Volume::new::<milliliter>(2.5));
        for density in [12.38, 0.01] {
            let refused = of(density * 2.5).as_scooped(&spoon).unwrap_err();
            assert_eq!(refused.code(), "calibrate-no-powder", "{density}");
        }
        assert!(of(0.1 * 2.5).as_scooped(&spoon).is_ok());
    }

    #[test]
    fn refuses_a_readability_that_is_none() {
        let list = weighings(&[(50, 2.2), (50, 2.2)]);
        let refused = PerOne::new(&list, Mass::new::<gram>(-0.1)).unwrap_err();
        assert_eq!(refused.code(), "out-of-range");
    }

    proptest! {
        #[test]
        fn what_one_weighs_lies_between_the_weighings(
            one in 0.01..5.0,
            list in prop::collection::vec((1_u32..200, -0.05..0.05), 2..10),
        ) {
            let list: Vec<(u32, f64)> = list
                .into_iter()
                .map(|(n, off)| (n, f64::from(n) * one * (1.0 + off)))
                .collect();
            if let Ok(got) = PerOne::new(&weighings(&list), exact()) {
                let mass = got.mass.get::<gram>();
                prop_assert!(mass >= one * 0.95 - 1e-12 && mass <= one * 1.05 + 1e-12);
                prop_assert!(got.uncertainty <= got.scatter);
            }
        }
    }
}
