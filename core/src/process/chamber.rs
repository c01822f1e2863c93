//! The shop's own vacuum: what is pulled in its chamber, and what a pot does there.

use uom::si::volume::liter;

use super::atmosphere::StationPressure;
use super::degas::{DegasError, EntrainedAir, ObservedRise, Vacuum};
use super::gauge::{AbsolutePressure, ChamberPressure, Dial, GaugeError, VacuumReading};
use crate::quantity::{Pressure, Ratio, Volume};

/// The vacuum that is pulled, and how it is known.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum Pulled {
    /// A gauge counts down from the air outside.
    Gauge {
        /// Its reading.
        reading: VacuumReading,
        /// How true it is.
        dial: Dial,
    },
    /// A gauge counts up from nothing.
    Absolute(AbsolutePressure),
}

/// How much air is in a pot.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum Air {
    /// The factor by which a pot was seen to rise in this vacuum.
    Rise(f64),
    /// The share of the mix that is air, by volume.
    Share(Ratio),
}

/// A vacuum chamber at work.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Chamber {
    /// The vacuum that is pulled in it.
    pub pulled: Pulled,
    /// The air in a pot, where it is known.
    pub air: Option<Air>,
}

impl Chamber {
    /// The pressure in the chamber where the air outside has `local`, and what the dial makes of it.
    ///
    /// # Errors
    /// [`GaugeError`] for a reading that cannot be there.
    pub fn pressure(&self, local: StationPressure) -> Result<ChamberPressure, GaugeError> {
        match self.pulled {
            Pulled::Gauge { reading, dial } => reading.absolute(local, dial),
            Pulled::Absolute(absolute) => {
                absolute.check_below(local)?;
                Ok(ChamberPressure { absolute, least: absolute, most: absolute, over: None })
            }
        }
    }

    /// The vacuum to calculate swelling in, over a liquid whose vapor has `vapor`. A rise was seen in the vacuum itself,
    /// so that the pressure taken for it hardly matters; a share of air swells more as the pressure
    /// falls, so for that the lowest pressure counts that the dial allows.
    ///
    /// # Errors
    /// Those of [`Vacuum::new`]; [`DegasError::DialCannotTell`] for a share of air where next to nothing may be left.
    pub fn vacuum(
        &self,
        local: StationPressure,
        pressure: &ChamberPressure,
        vapor: Pressure,
    ) -> Result<Vacuum, DegasError> {
        let middle = Vacuum::new(local, pressure.absolute, vapor)?;
        match self.air {
            Some(Air::Share(_)) => Vacuum::new(local, pressure.least, vapor)
                .map_err(|_| DegasError::DialCannotTell { most: pressure.most.get() }),
            _ => Ok(middle),
        }
    }

    /// The air that a pot holds, from the rise seen in `vacuum` or from its share; `None` where
    /// neither is known.
    ///
    /// # Errors
    /// [`DegasError::NotAir`] for a rise that air does not explain in this vacuum,
    /// [`DegasError::Parameters`] for a share outside its range.
    pub fn entrained(&self, vacuum: Vacuum) -> Result<Option<EntrainedAir>, DegasError> {
        let air = match self.air {
            None => return Ok(None),
            Some(Air::Share(share)) => EntrainedAir::share(share)?,
            Some(Air::Rise(rise)) => {
                // Only the ratio of the two levels counts.
                let before = Volume::new::<liter>(1.0);
                EntrainedAir::observed(ObservedRise { before, risen: before * rise, vacuum })?
            }
        };
        Ok(Some(air))
    }
}

/// How many times its level a pot is taken to swell to where nobody has seen it (common practice, no source: a cup for
/// the vacuum is filled to a third at most until it is known).
pub const USUAL_RISE: f64 = 3.0;

/// How many times its level a pot is taken to swell to in `vacuum` while nobody has seen it: [`USUAL_RISE`], or where air
/// alone hardly does that, half way to what air does.
#[must_use]
pub fn usual_rise(vacuum: Vacuum) -> Ratio {
    let half_way = (1.0 + vacuum.expansion().value) / 2.0;
    Ratio::from(if half_way < USUAL_RISE { half_way } else { USUAL_RISE })
}

#[cfg(test)]
mod tests {
    use rstest::rstest;
    use uom::si::length::meter;
    use uom::si::pressure::kilopascal;

    use super::*;
    use crate::fault::Diagnose;
    use crate::process::atmosphere::GeometricAltitude;
    use crate::quantity::Length;

    fn kpa(x: f64) -> Pressure {
        Pressure::new::<kilopascal>(x)
    }

    fn sea_level() -> StationPressure {
        StationPressure::standard(GeometricAltitude::new(Length::new::<meter>(0.0)).unwrap())
    }

    fn gauge(reading: f64, air: Option<Air>) -> Chamber {
        let reading = VacuumReading::new(kpa(reading)).unwrap();
        Chamber { pulled: Pulled::Gauge { reading, dial: Dial::default() }, air }
    }

    /// Boyle by hand: a tenth of the air's pressure is left, so air grows tenfold (plain arithmetic).
    #[rstest]
    #[case(Air::Rise(1.9))] // 1 + 10·a = 1.9·(1 + a) gives a = 1/9: a tenth of the mix
    #[case(Air::Share(Ratio::from(0.1)))]
    fn rise_and_share_say_the_same(#[case] air: Air) {
        let chamber = gauge(101.325 * 0.9, Some(air));
        let pressure = chamber.pressure(sea_level()).unwrap();
        let vacuum = Vacuum::new(sea_level(), pressure.absolute, kpa(0.0)).unwrap();
        let found = chamber.entrained(vacuum).unwrap().unwrap();
        assert!((found.as_share().value - 0.1).abs() < 1e-9, "{found:?}");
    }

    /// A share of air swells by the lowest pressure that the dial allows: more with each step, until the dial cannot tell.
    #[test]
    fn a_share_is_on_the_safe_side() {
        let swelling = |reading: f64, air: Air| {
            let chamber = gauge(reading, Some(air));
            let pressure = chamber.pressure(sea_level()).unwrap();
            let vacuum = chamber.vacuum(sea_level(), &pressure, kpa(0.0))?;
            let air = chamber.entrained(vacuum)?.unwrap();
            let one = Volume::new::<liter>(1.0);
            Ok((vacuum.swollen(one, air)? / vacuum.standing(one, air)?).value)
        };
        let share = Air::Share(Ratio::from(0.02));
        // 101.325 − 90 less 3.0477 of tolerance: 8.2773 kPa. Swelling 0.98 + 0.02 · 101.325/8.2773.
        let found: f64 = swelling(90.0, share).unwrap();
        assert!((found - 1.224_83).abs() < 1e-4, "{found}");
        let mut last = found;
        for tenth in 901..982 {
            let next = swelling(f64::from(tenth) / 10.0, share).unwrap();
            assert!(next > last);
            last = next;
        }
        for beyond in [98.5, 101.0, 101.325, 103.0] {
            let refused: Result<f64, DegasError> = swelling(beyond, share);
            assert_eq!(refused.unwrap_err().code(), "degas-dial-cannot-tell");
            assert!((swelling(beyond, Air::Rise(1.8)).unwrap() - 1.8).abs() < 1e-9);
        }
    }

    #[test]
    fn an_absolute_pressure_needs_no_dial() {
        let absolute = AbsolutePressure::new(kpa(10.0)).unwrap();
        let chamber = Chamber { pulled: Pulled::Absolute(absolute), air: None };
        let pressure = chamber.pressure(sea_level()).unwrap();
        assert_eq!((pressure.absolute, pressure.over), (absolute, None));
        let vacuum = Vacuum::new(sea_level(), absolute, kpa(0.0)).unwrap();
        assert_eq!(chamber.entrained(vacuum), Ok(None));
        let above = AbsolutePressure::new(kpa(110.0)).unwrap();
        let chamber = Chamber { pulled: Pulled::Absolute(above), air: None };
        assert_eq!(chamber.pressure(sea_level()).unwrap_err().code(), "out-of-range");
    }

    /// A pot that nobody has seen in the vacuum swells to three times its level, in a weak vacuum by half of what air does.
    #[rstest]
    #[case(101.325 * 0.9, 3.0)]
    #[case(101.325 * 0.5, 1.5)] // air alone doubles
    fn a_rise_that_nobody_has_seen_is_assumed(#[case] reading: f64, #[case] rise: f64) {
        let chamber = gauge(reading, None);
        let pressure = chamber.pressure(sea_level()).unwrap();
        let vacuum = chamber.vacuum(sea_level(), &pressure, kpa(0.0)).unwrap();
        assert!((usual_rise(vacuum).value - rise).abs() < 1e-9);
    }
}
