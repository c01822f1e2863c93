//! The shop's own vacuum: what is pulled in its chamber, and what a pot does there.

use uom::si::volume::liter;

use super::atmosphere::StationPressure;
use super::degas::{DegasError, EntrainedAir, ObservedRise, Vacuum};
use super::gauge::{AbsolutePressure, ChamberPressure, Dial, GaugeError, VacuumReading};
use crate::quantity::{Pressure, Ratio, Volume};

/// What is pulled, and how it is known.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum Pulled {
    /// A gauge counts down from the air outside.
    Gauge {
        /// What it shows.
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
    /// The shop saw a pot swell to so many times its level in this vacuum.
    Rise(f64),
    /// So much of the mix is air, by volume.
    Share(Ratio),
}

/// A vacuum chamber at work.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Chamber {
    /// What is pulled in it.
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

    /// The vacuum to reckon swelling in, over a liquid whose vapor has `vapor`. A rise was seen in the vacuum itself,
    /// so that it hardly matters which pressure stands for that; a share of air swells the more, the less is left,
    /// and there the least counts that the dial allows.
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
    /// [`DegasError::Share`] for a share that is none.
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
