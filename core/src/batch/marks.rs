//! The base rounded up to a mark that the cup has.

use super::BatchError;
use super::whole::{self, SNAP};
use crate::parameter::{Check, Parameter};
use crate::quantity::{Mass, MassDensity, Ratio, Volume};

/// The marks of a measuring cup.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum Marks<'a> {
    /// A mark at each `step` up to `capacity`.
    Every {
        /// Volume from mark to mark.
        step: Volume,
        /// The highest mark is the last step that is not above it.
        capacity: Volume,
    },
    /// The marks one by one, in any order.
    List(&'a [Volume]),
}

/// Base measured to a mark, and the mix that it makes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MeasuredBase {
    /// The mark to measure the base to.
    pub base_volume: Volume,
    /// The mass of that base: the doses follow from it.
    pub base_mass: Mass,
    /// The mass of the mix with all doses.
    pub mix: Mass,
    /// Mass beyond what was needed, to be offered as extra pieces.
    pub surplus: Mass,
}

impl Marks<'_> {
    /// The least mark not below `volume`.
    ///
    /// # Errors
    /// [`BatchError::AboveMarks`] with the highest mark, or a number that is not above zero.
    pub fn round_up(&self, volume: Volume) -> Result<Volume, BatchError> {
        let mut check = Check::new();
        check.number(Parameter::BaseVolume, volume.value);
        match *self {
            Self::Every { step, capacity } => {
                check
                    .number(Parameter::CupMark, step.value)
                    .number(Parameter::CupCapacity, capacity.value);
                check.finish()?;
                let mark = whole::up((volume / step).value);
                let highest = whole::down((capacity / step).value);
                if mark > highest {
                    return Err(BatchError::AboveMarks { needed: volume, highest: step * highest });
                }
                Ok(step * mark)
            }
            Self::List(marks) => {
                for (index, mark) in marks.iter().enumerate() {
                    check.element(Parameter::CupMark, index, mark.value);
                }
                check.finish()?;
                let reaches = |mark: &Volume| *mark >= volume * (1.0 - SNAP);
                let least = |a: Volume, b: Volume| if b < a { b } else { a };
                let greatest = |a: Volume, b: Volume| if b > a { b } else { a };
                let highest = marks.iter().copied().fold(Volume::default(), greatest);
                marks
                    .iter()
                    .copied()
                    .filter(reaches)
                    .reduce(least)
                    .ok_or(BatchError::AboveMarks { needed: volume, highest })
            }
        }
    }

    /// The base for `need` of mix, rounded up to a mark.
    ///
    /// `base_fraction` is the mass of base per mass of mix, `base_density` that of the base as measured, cold
    /// and liquid.
    ///
    /// # Errors
    /// As [`Marks::round_up`], or a number out of its range.
    pub fn measure(
        &self,
        need: Mass,
        base_fraction: Ratio,
        base_density: MassDensity,
    ) -> Result<MeasuredBase, BatchError> {
        let mut check = Check::new();
        check
            .number(Parameter::MixNeeded, need.value)
            .number(Parameter::BaseDensity, base_density.value)
            .number(Parameter::BaseFraction, base_fraction.value);
        check.finish()?;
        let base_volume = self.round_up(need * base_fraction / base_density)?;
        let base_mass = base_volume * base_density;
        let mix = base_mass / base_fraction;
        let surplus = if mix > need { mix - need } else { Mass::default() };
        Ok(MeasuredBase { base_volume, base_mass, mix, surplus })
    }
}

impl MeasuredBase {
    /// Whole shots of `fill` each that the surplus gives.
    ///
    /// # Errors
    /// A shot out of its range.
    pub fn extra_shots(&self, fill: Mass) -> Result<u32, BatchError> {
        Parameter::ShotMass.check_si(fill.value)?;
        Ok(whole::to_count(whole::down((self.surplus / fill).value)))
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use rstest::rstest;
    use uom::si::mass::gram;
    use uom::si::mass_density::gram_per_cubic_centimeter;
    use uom::si::volume::milliliter;

    use super::*;
    use crate::fault::Diagnose;

    fn ml(x: f64) -> Volume {
        Volume::new::<milliliter>(x)
    }

    fn every(step: f64, capacity: f64) -> Marks<'static> {
        Marks::Every { step: ml(step), capacity: ml(capacity) }
    }

    #[rstest]
    #[case(every(25.0, 500.0), 201.0, 225.0)]
    #[case(every(25.0, 500.0), 200.000_000_000_000_03, 200.0)]
    #[case(every(25.0, 510.0), 500.0, 500.0)]
    #[case(Marks::List(&[ml(500.0), ml(120.0), ml(240.0)]), 121.0, 240.0)]
    #[case(Marks::List(&[ml(120.0)]), 120.000_000_000_000_03, 120.0)]
    fn rounds_up_to_a_mark(#[case] marks: Marks<'_>, #[case] volume: f64, #[case] expected: f64) {
        let got = marks.round_up(ml(volume)).unwrap().get::<milliliter>();
        assert!((got - expected).abs() < 1e-9, "{got}");
    }

    #[test]
    fn a_mark_that_is_short_by_rounding_is_reached() {
        let volume = ml(120.0);
        let mark = volume * (1.0 - SNAP);
        assert_eq!(Marks::List(&[mark]).round_up(volume), Ok(mark));
    }

    #[rstest]
    #[case(every(25.0, 510.0), 501.0, "500 mL")]
    #[case(Marks::List(&[ml(120.0), ml(60.0)]), 121.0, "120 mL")]
    fn above_the_highest_mark_says_which_it_is(
        #[case] marks: Marks<'_>,
        #[case] volume: f64,
        #[case] help: &str,
    ) {
        let refused = marks.round_up(ml(volume)).unwrap_err();
        assert_eq!(refused.code(), "batch-above-cup-marks");
        assert!(refused.help().contains(help), "{}", refused.help());
    }

    #[rstest]
    #[case(every(0.0, 500.0), 100.0)]
    #[case(every(25.0, -1.0), 100.0)]
    #[case(every(25.0, 500.0), 0.0)]
    #[case(Marks::List(&[ml(0.0)]), 100.0)]
    fn refuses(#[case] marks: Marks<'_>, #[case] volume: f64) {
        assert_eq!(marks.round_up(ml(volume)).unwrap_err().code(), "out-of-range");
    }

    #[test]
    fn the_surplus_is_offered_as_extra_shots() {
        // 422.6 g with 80 % base of 1.03 g/mL: 328.2 mL, to the mark 350 mL: 360.5 g of base, 450.625 g of mix.
        let density = MassDensity::new::<gram_per_cubic_centimeter>(1.03);
        let need = Mass::new::<gram>(422.6);
        let got = every(25.0, 500.0).measure(need, Ratio::from(0.8), density).unwrap();
        assert!((got.base_mass.get::<gram>() - 360.5).abs() < 1e-9);
        assert!((got.surplus.get::<gram>() - 28.025).abs() < 1e-9);
        assert_eq!(got.extra_shots(Mass::new::<gram>(10.0)).unwrap(), 2);
        assert_eq!(got.extra_shots(Mass::new::<gram>(41.4)).unwrap(), 0);
    }

    proptest! {
        #[test]
        fn a_mark_is_never_short_nor_a_step_too_high(step in 1.0..60.0, volume in 0.1..990.0) {
            let got = every(step, 2000.0).round_up(ml(volume)).unwrap().get::<milliliter>();
            prop_assert!(got >= volume * (1.0 - 2.0 * SNAP));
            prop_assert!(got - step < volume);
        }
    }
}
