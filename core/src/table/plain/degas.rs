//! The air outside, and what a pot does in a vacuum.

use super::{if_given, of, or_default};
use crate::parameter::{Check, Parameter, ParameterError, PlainUnit, Problem};
use crate::process::atmosphere::{GeometricAltitude, SeaLevelPressure, StationPressure};
use crate::process::chamber::{Air, Chamber, Pulled};
use crate::process::degas::{DegasCup, EntrainedAir as CoreAir, Vacuum, vessel_for};
use crate::process::gauge::{AbsolutePressure, ChamberPressure, Dial, VacuumReading};
use crate::process::vapor;
use crate::quantity::{Measurable, Pressure, Ratio, Volume};
use crate::table::{Refusal, calculation};

fn kilopascals(pressure: Pressure) -> f64 {
    PlainUnit::Kilopascal.from_si(pressure.si())
}

fn milliliters(volume: Volume) -> f64 {
    PlainUnit::Milliliter.from_si(volume.si())
}

calculation! {
    /// Air pressure of the standard atmosphere at an altitude.
    ///
    /// U.S. Standard Atmosphere, 1976, lowest layer. The weather moves the real pressure by some 3 %.
    STANDARD_PRESSURE = "standard_pressure": StandardPressure -> StandardPressureResult
    takes {
        altitude_m: f64 = Altitude,
    }
    gives {
        /// Air pressure at the place itself; also the maximum that a true vacuum gauge shows there.
        station_pressure_kpa: f64 = "station_pressure" Kilopascal,
    }
    request "air"
    example StandardPressure { altitude_m: 0.0 }
        => StandardPressureResult { station_pressure_kpa: 101.325 };
}

impl StandardPressure {
    /// Calculates.
    ///
    /// # Errors
    /// An altitude out of its range.
    pub fn calculate(&self) -> Result<StandardPressureResult, Refusal> {
        let altitude = GeometricAltitude::new(of(Parameter::Altitude, self.altitude_m))?;
        let pressure = StationPressure::standard(altitude).get();
        Ok(StandardPressureResult { station_pressure_kpa: kilopascals(pressure) })
    }
}

calculation! {
    /// Air pressure at the place itself from one that a weather report gives, reduced to sea level.
    ///
    /// Undoes the reduction by the standard atmosphere, which is the definition of an altimeter setting.
    STATION_PRESSURE = "station_pressure": StationPressureOf -> StationPressureOfResult
    takes {
        reported_pressure_kpa: f64 = ReportedPressure,
        altitude_m: f64 = Altitude,
    }
    gives {
        /// Air pressure at the place itself; also the maximum that a true vacuum gauge shows there.
        station_pressure_kpa: f64 = "station_pressure" Kilopascal,
    }
    request "air"
    example StationPressureOf { reported_pressure_kpa: 101.325, altitude_m: 0.0 }
        => StationPressureOfResult { station_pressure_kpa: 101.325 };
}

impl StationPressureOf {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges.
    pub fn calculate(&self) -> Result<StationPressureOfResult, Refusal> {
        let reported =
            SeaLevelPressure::reported(of(Parameter::ReportedPressure, self.reported_pressure_kpa));
        let altitude = GeometricAltitude::new(of(Parameter::Altitude, self.altitude_m));
        let mut check = Check::new();
        check.merge_numbers(&reported).merge_numbers(&altitude);
        check.finish()?;
        let station = reported?.at(altitude?).get();
        Ok(StationPressureOfResult { station_pressure_kpa: kilopascals(station) })
    }
}

/// The vacuum that is pulled over a pot.
struct Pull {
    station_pressure_kpa: f64,
    gauge_vacuum_kpa: Option<f64>,
    absolute_pressure_kpa: Option<f64>,
    dial_tolerance_kpa: Option<f64>,
    vapor_pressure_kpa: Option<f64>,
    damp_at_celsius: Option<f64>,
}

impl Pull {
    /// The vacuum with the air that is in the pot, and the pressure in the chamber.
    fn read(
        &self,
        air: Air,
        check: &mut Check,
    ) -> Result<(Vacuum, CoreAir, ChamberPressure), Refusal> {
        let station =
            StationPressure::measured(of(Parameter::StationPressure, self.station_pressure_kpa));
        check.merge_numbers(&station);
        let pulled = self.pulled(check);
        let vapor = self.vapor(check);
        if let Air::Share(share) = air {
            check.number(Parameter::EntrainedAir, share.value);
        }
        if let Air::Rise(rise) = air {
            check.number(Parameter::Rise, rise);
        }
        core::mem::take(check).finish()?;
        let (Some(pulled), Some(vapor)) = (pulled, vapor) else {
            return Err(ParameterError::new(Parameter::GaugeVacuum, Problem::Missing).into());
        };
        let station = station?;
        let chamber = Chamber { pulled, air: Some(air) };
        let pressure = chamber.pressure(station)?;
        let vacuum = chamber.vacuum(station, &pressure, vapor)?;
        let air = match air {
            Air::Share(share) => CoreAir::share(share)?,
            Air::Rise(_) => match chamber.entrained(vacuum)? {
                Some(air) => air,
                None => return Err(ParameterError::new(Parameter::Rise, Problem::Missing).into()),
            },
        };
        Ok((vacuum, air, pressure))
    }

    fn pulled(&self, check: &mut Check) -> Option<Pulled> {
        let tolerance: Option<Pressure> =
            if_given(Parameter::DialTolerance, self.dial_tolerance_kpa);
        let gauge: Option<Pressure> = if_given(Parameter::GaugeVacuum, self.gauge_vacuum_kpa);
        let absolute: Option<Pressure> =
            if_given(Parameter::AbsolutePressure, self.absolute_pressure_kpa);
        check
            .option(Parameter::GaugeVacuum, gauge.map(|gauge| gauge.si()))
            .option(Parameter::AbsolutePressure, absolute.map(|absolute| absolute.si()))
            .option(Parameter::DialTolerance, tolerance.map(|tolerance| tolerance.si()));
        let excludes = |parameter, other| ParameterError::new(parameter, Problem::Excludes(other));
        match (gauge, absolute) {
            (Some(gauge), None) => {
                let reading = VacuumReading::new(gauge).ok();
                let dial = match tolerance {
                    None => Some(Dial::default()),
                    Some(tolerance) => Dial::within(tolerance).ok(),
                };
                Some(Pulled::Gauge { reading: reading?, dial: dial? })
            }
            (None, Some(absolute)) => {
                if tolerance.is_some() {
                    let other = Parameter::AbsolutePressure;
                    check.push(excludes(Parameter::DialTolerance, other));
                }
                AbsolutePressure::new(absolute).ok().map(Pulled::Absolute)
            }
            (Some(_), Some(_)) => {
                check.push(excludes(Parameter::AbsolutePressure, Parameter::GaugeVacuum));
                None
            }
            (None, None) => {
                check.push(ParameterError::new(Parameter::GaugeVacuum, Problem::Missing));
                None
            }
        }
    }

    fn vapor(&self, check: &mut Check) -> Option<Pressure> {
        match (self.vapor_pressure_kpa, self.damp_at_celsius) {
            (Some(_), Some(_)) => {
                let problem = Problem::Excludes(Parameter::VaporPressure);
                check.push(ParameterError::new(Parameter::DampAt, problem));
                None
            }
            (None, Some(at)) => check.keep(vapor::of_water(of(Parameter::DampAt, at))),
            (vapor, None) => {
                let vapor: Pressure = or_default(Parameter::VaporPressure, vapor);
                check.number(Parameter::VaporPressure, vapor.si());
                Some(vapor)
            }
        }
    }
}

/// Declares a calculation in a vacuum: its parameters follow its own.
macro_rules! vacuum_calculation {
    (
        $(#[doc = $doc:literal])+
        $NAME:ident = $name:literal: $Inputs:ident -> $Results:ident
        takes { $($field:ident: $Field:ty = $Parameter:ident,)* }
        optional { $($more:ident: $More:ty = $Optional:ident,)* }
        gives { $($gives:tt)+ }
        example { $($own:ident: $value:expr),* } => $answer:expr;
    ) => {
        calculation! {
            $(#[doc = $doc])+
            $NAME = $name: $Inputs -> $Results
            takes {
                $($field: $Field = $Parameter,)*
                station_pressure_kpa: f64 = StationPressure,
                gauge_vacuum_kpa: Option<f64> = GaugeVacuum,
                absolute_pressure_kpa: Option<f64> = AbsolutePressure,
                dial_tolerance_kpa: Option<f64> = DialTolerance,
                vapor_pressure_kpa: Option<f64> = VaporPressure,
                damp_at_celsius: Option<f64> = DampAt,
                $($more: $More = $Optional,)*
            }
            gives { $($gives)+ }
            cautions ["vacuum", "fumes", "data-sheet"]
            request "degas"
            example $Inputs {
                $($own: $value,)*
                station_pressure_kpa: 100.0,
                gauge_vacuum_kpa: None,
                absolute_pressure_kpa: Some(10.0),
                dial_tolerance_kpa: None,
                vapor_pressure_kpa: None,
                damp_at_celsius: None,
            } => $answer;
        }

        impl $Inputs {
            fn pull(&self) -> Pull {
                Pull {
                    station_pressure_kpa: self.station_pressure_kpa,
                    gauge_vacuum_kpa: self.gauge_vacuum_kpa,
                    absolute_pressure_kpa: self.absolute_pressure_kpa,
                    dial_tolerance_kpa: self.dial_tolerance_kpa,
                    vapor_pressure_kpa: self.vapor_pressure_kpa,
                    damp_at_celsius: self.damp_at_celsius,
                }
            }
        }
    };
}

vacuum_calculation! {
    /// Volume of a pot in a vacuum, with the air that it holds.
    ///
    /// Boyle: V = V_liq [1 + φ/(1 − φ) · p_local/(p − p_vapor)]. The vacuum is stated in one way, as a gauge shows it or as
    /// the pressure that is left; with a gauge the lowest pressure counts that its tolerance allows.
    SWOLLEN_VOLUME = "swollen_volume": SwollenVolume -> SwollenVolumeResult
    takes {
        liquid_volume_ml: f64 = LiquidVolume,
        entrained_air: f64 = EntrainedAir,
    }
    optional {}
    gives {
        /// Volume in the vacuum.
        swollen_volume_ml: f64 = "swollen_volume" Milliliter,
        /// Volume before, bubbles included.
        standing_volume_ml: f64 = "standing_volume" Milliliter,
        /// Pressure that is left in the chamber.
        absolute_pressure_kpa: f64 = "absolute_pressure" Kilopascal,
    }
    example { liquid_volume_ml: 450.0, entrained_air: 0.1 } => SwollenVolumeResult {
        swollen_volume_ml: 950.0,
        standing_volume_ml: 500.0,
        absolute_pressure_kpa: 10.0,
    };
}

impl SwollenVolume {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges; a vacuum that the air outside cannot give, or in which the pot boils.
    pub fn calculate(&self) -> Result<SwollenVolumeResult, Refusal> {
        let liquid: Volume = of(Parameter::LiquidVolume, self.liquid_volume_ml);
        let mut check = Check::new();
        check.number(Parameter::LiquidVolume, liquid.si());
        let air = Air::Share(Ratio::from(self.entrained_air));
        let (vacuum, air, pressure) = self.pull().read(air, &mut check)?;
        Ok(SwollenVolumeResult {
            swollen_volume_ml: milliliters(vacuum.swollen(liquid, air)?),
            standing_volume_ml: milliliters(vacuum.standing(liquid, air)?),
            absolute_pressure_kpa: kilopascals(pressure.absolute.get()),
        })
    }
}

vacuum_calculation! {
    /// Share of air in a pot, from how high it was seen to rise in a vacuum.
    ///
    /// With f the level in the vacuum over the level before and b₁, b₂ the expansions of the air before and after:
    /// φ/(1 − φ) = (f − 1)/(b₂ − f b₁).
    ENTRAINED_AIR = "entrained_air": EntrainedAirOf -> EntrainedAirOfResult
    takes {
        rise: f64 = Rise,
    }
    optional {}
    gives {
        /// Share of air in the mix by volume, under the outside pressure.
        entrained_air: f64 = "entrained_air" Pure,
    }
    example { rise: 1.9 } => EntrainedAirOfResult { entrained_air: 0.1 };
}

impl EntrainedAirOf {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges; a rise that air does not explain.
    pub fn calculate(&self) -> Result<EntrainedAirOfResult, Refusal> {
        let mut check = Check::new();
        let (_, air, _) = self.pull().read(Air::Rise(self.rise), &mut check)?;
        Ok(EntrainedAirOfResult { entrained_air: air.as_share().value })
    }
}

vacuum_calculation! {
    /// Vessel for a pot in a vacuum, and how to fill one that is too small.
    ///
    /// The pot swells no higher than the spare share below the brim: V/(1 − spare). With a vessel the answer gives the level
    /// to fill to, on a mark where it has any, and the number of fills.
    DEGAS_VESSEL = "degas_vessel": DegasVessel -> DegasVesselResult
    takes {
        liquid_volume_ml: f64 = LiquidVolume,
        entrained_air: f64 = EntrainedAir,
    }
    optional {
        vessel_spare: Option<f64> = VesselSpare,
        vessel_brim_ml: Option<f64> = VesselBrim,
        vessel_mark_ml: Option<f64> = VesselMark,
    }
    gives {
        /// Volume to the brim of a vessel that takes the pot at once.
        vessel_volume_ml: f64 = "vessel_volume" Milliliter,
        /// Level to fill the given vessel to at most, bubbles included.
        fill_mark_ml: Option<f64> = "fill_mark" Milliliter,
        /// Number of fills of the given vessel.
        fills: Option<u32> = "fills" Count,
        /// Level of each fill, shared out evenly, bubbles included.
        fill_level_ml: Option<f64> = "fill_level" Milliliter,
        /// Volume of an even fill in the vacuum.
        fill_swollen_ml: Option<f64> = "fill_swollen" Milliliter,
    }
    example {
        liquid_volume_ml: 450.0,
        entrained_air: 0.1,
        vessel_spare: None,
        vessel_brim_ml: Some(600.0),
        vessel_mark_ml: Some(50.0)
    } => DegasVesselResult {
        vessel_volume_ml: 1_055.555_555_555_6,
        fill_mark_ml: Some(250.0),
        fills: Some(2),
        fill_level_ml: Some(250.0),
        fill_swollen_ml: Some(475.0),
    };
}

impl DegasVessel {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges; a vacuum that the air outside cannot give, or in which the pot boils; a vessel without a
    /// mark low enough; more than a thousand fills.
    pub fn calculate(&self) -> Result<DegasVesselResult, Refusal> {
        let liquid: Volume = of(Parameter::LiquidVolume, self.liquid_volume_ml);
        let spare: Ratio = or_default(Parameter::VesselSpare, self.vessel_spare);
        let mark: Option<Volume> = if_given(Parameter::VesselMark, self.vessel_mark_ml);
        let brim: Option<Volume> = if_given(Parameter::VesselBrim, self.vessel_brim_ml);
        let mut check = Check::new();
        check
            .number(Parameter::LiquidVolume, liquid.si())
            .number(Parameter::VesselSpare, spare.value)
            .option(Parameter::VesselBrim, brim.map(|brim| brim.si()))
            .option(Parameter::VesselMark, mark.map(|mark| mark.si()));
        if mark.is_some() && brim.is_none() {
            let problem = Problem::NeededBy(Parameter::VesselMark);
            check.push(ParameterError::new(Parameter::VesselBrim, problem));
        }
        let air = Air::Share(Ratio::from(self.entrained_air));
        let (vacuum, air, _) = self.pull().read(air, &mut check)?;
        let at_once = vessel_for(liquid, air, vacuum, spare)?;
        let fills = match brim {
            Some(brim) => Some(DegasCup::new(brim, spare, mark)?.fills(liquid, air, vacuum)?),
            None => None,
        };
        Ok(DegasVesselResult {
            vessel_volume_ml: milliliters(at_once),
            fill_mark_ml: fills.map(|fills| milliliters(fills.mark)),
            fills: fills.map(|fills| fills.count),
            fill_level_ml: fills.map(|fills| milliliters(fills.level)),
            fill_swollen_ml: fills.map(|fills| milliliters(fills.swollen)),
        })
    }
}
