//! How fast a piece sinks.

use super::{if_given, of, or_default};
use crate::parameter::{Check, Parameter, ParameterError, PlainUnit, Problem};
use crate::process::seawater::{Salinity, Water};
use crate::process::sink::{Body, Motion, Outline, Shape, TimedDrop};
use crate::quantity::{Length, MassDensity, Measurable, Ratio, Time, Velocity};
use crate::salt::Hook;
use crate::table::{Refusal, calculation};

/// A piece apart from its density, and the water.
pub(super) struct Piece {
    pub(super) piece_volume_ml: f64,
    pub(super) diameter_mm: f64,
    pub(super) water_temperature_celsius: f64,
    pub(super) length_mm: Option<f64>,
    pub(super) shape: Option<Outline>,
    pub(super) hook_mass_g: Option<f64>,
    pub(super) hook_volume_ml: Option<f64>,
    pub(super) salinity_practical: Option<f64>,
    pub(super) salinity_absolute: Option<f64>,
    pub(super) drop_depth_m: Option<f64>,
    pub(super) drop_time_s: Option<f64>,
    pub(super) drop_density_g_per_ml: Option<f64>,
}

impl Piece {
    fn shape(&self) -> Result<Shape, ParameterError> {
        let diameter: Length = of(Parameter::Diameter, self.diameter_mm);
        match (self.shape, self.length_mm) {
            (Some(Outline::Ball), Some(_)) => {
                Err(ParameterError::new(Parameter::Length, Problem::Excludes(Parameter::Shape)))
            }
            (Some(Outline::Ball), None) | (None, None) => Ok(Shape::Ball { diameter }),
            (Some(Outline::Stick), None) => {
                Err(ParameterError::new(Parameter::Length, Problem::NeededBy(Parameter::Shape)))
            }
            (_, Some(length)) => {
                Ok(Shape::Stick { diameter, length: of(Parameter::Length, length) })
            }
        }
    }

    fn salinity(&self) -> Result<Salinity, ParameterError> {
        match (self.salinity_practical, self.salinity_absolute) {
            (Some(_), Some(_)) => Err(ParameterError::new(
                Parameter::SalinityAbsolute,
                Problem::Excludes(Parameter::SalinityPractical),
            )),
            (Some(practical), None) => Ok(Salinity::Practical(practical)),
            (None, Some(absolute)) => Ok(Salinity::Absolute(Ratio::from(absolute))),
            (None, None) => Ok(Salinity::FRESH),
        }
    }

    /// The body and the water, with `more` checked too.
    pub(super) fn read(&self, more: (Parameter, f64)) -> Result<(Body, Water), Refusal> {
        let mut check = Check::new();
        let shape = check.keep(self.shape());
        let salinity = check.keep(self.salinity());
        if self.hook_mass_g.is_some() != self.hook_volume_ml.is_some() {
            let (missing, by) = match self.hook_mass_g {
                None => (Parameter::HookMass, Parameter::HookVolume),
                Some(_) => (Parameter::HookVolume, Parameter::HookMass),
            };
            check.push(ParameterError::new(missing, Problem::NeededBy(by)));
        }
        let temperature = of(Parameter::WaterTemperature, self.water_temperature_celsius);
        let water = Water::new(temperature, salinity.unwrap_or(Salinity::FRESH));
        check.merge_numbers(&water);
        let body = Body {
            volume: of(Parameter::PieceVolume, self.piece_volume_ml),
            hook: Hook {
                mass: or_default(Parameter::HookMass, self.hook_mass_g),
                volume: or_default(Parameter::HookVolume, self.hook_volume_ml),
            },
            shape: shape
                .unwrap_or(Shape::Ball { diameter: of(Parameter::Diameter, self.diameter_mm) }),
            own_drag: None,
        };
        check.number(more.0, more.1).merge(body.checked());
        check.finish()?;
        let water = water?;
        Ok((self.with_drop(body, &water)?, water))
    }

    /// The body with its own drag, where a drop was timed.
    pub(super) fn with_drop(&self, body: Body, water: &Water) -> Result<Body, Refusal> {
        let drop = [
            (Parameter::DropDepth, self.drop_depth_m),
            (Parameter::DropTime, self.drop_time_s),
            (Parameter::DropDensity, self.drop_density_g_per_ml),
        ];
        let Some((given, _)) = drop.iter().find(|(_, number)| number.is_some()) else {
            return Ok(body);
        };
        let mut check = Check::new();
        for (parameter, number) in &drop {
            match number {
                Some(number) => check.number(*parameter, parameter.unit().to_si(*number)),
                None => check.push(ParameterError::new(*parameter, Problem::NeededBy(*given))),
            };
        }
        check.finish()?;
        let [depth, time, density] = drop.map(|(_, number)| number.unwrap_or(f64::NAN));
        let drop = TimedDrop {
            depth: of::<Length>(Parameter::DropDepth, depth),
            time: of::<Time>(Parameter::DropTime, time),
        };
        Ok(body.with_drop(of(Parameter::DropDensity, density), &drop, water)?)
    }
}

fn cm_per_s(speed: Velocity) -> f64 {
    PlainUnit::CentimeterPerSecond.from_si(speed.si())
}

/// Declares a calculation on a piece: that of the piece and its water follow its own parameters.
macro_rules! sink_calculation {
    (
        $(#[doc = $doc:literal])+
        $NAME:ident = $name:literal: $Inputs:ident -> $Results:ident
        takes { $($field:ident: $Field:ty = $Parameter:ident,)+ }
        optional { $($more:ident: $More:ty = $Optional:ident,)* }
        gives { $($gives:tt)+ }
        example { $($own:ident: $value:expr),* } => $answer:expr;
    ) => {
        calculation! {
            $(#[doc = $doc])+
            $NAME = $name: $Inputs -> $Results
            takes {
                $($field: $Field = $Parameter,)+
                piece_volume_ml: f64 = PieceVolume,
                diameter_mm: f64 = Diameter,
                water_temperature_celsius: f64 = WaterTemperature,
                length_mm: Option<f64> = Length,
                shape: Option<Outline> = Shape,
                hook_mass_g: Option<f64> = HookMass,
                hook_volume_ml: Option<f64> = HookVolume,
                salinity_practical: Option<f64> = SalinityPractical,
                salinity_absolute: Option<f64> = SalinityAbsolute,
                $($more: $More = $Optional,)*
                drop_depth_m: Option<f64> = DropDepth,
                drop_time_s: Option<f64> = DropTime,
                drop_density_g_per_ml: Option<f64> = DropDensity,
            }
            gives { $($gives)+ }
            request "sink"
            example $Inputs {
                $($own: $value,)*
                piece_volume_ml: 9.5,
                diameter_mm: 10.0,
                water_temperature_celsius: 20.0,
                length_mm: Some(121.0),
                shape: None,
                hook_mass_g: Some(2.0),
                hook_volume_ml: Some(0.25),
                salinity_practical: None,
                salinity_absolute: None,
                drop_depth_m: None,
                drop_time_s: None,
                drop_density_g_per_ml: None,
            } => $answer;
        }

        impl $Inputs {
            fn piece(&self) -> Piece {
                Piece {
                    piece_volume_ml: self.piece_volume_ml,
                    diameter_mm: self.diameter_mm,
                    water_temperature_celsius: self.water_temperature_celsius,
                    length_mm: self.length_mm,
                    shape: self.shape,
                    hook_mass_g: self.hook_mass_g,
                    hook_volume_ml: self.hook_volume_ml,
                    salinity_practical: self.salinity_practical,
                    salinity_absolute: self.salinity_absolute,
                    drop_depth_m: self.drop_depth_m,
                    drop_time_s: self.drop_time_s,
                    drop_density_g_per_ml: self.drop_density_g_per_ml,
                }
            }
        }
    };
}

sink_calculation! {
    /// Sink rate of a piece with its hook: the final speed, a model value.
    ///
    /// Balance of weight, buoyancy and the published drag of a cylinder across the flow or of a sphere; the equations,
    /// sources and bounds are those of the module `process::sink`. `motion` is whether the model holds for such a piece at
    /// all. A drop that the shop timed (depth, time, density) replaces the published drag by the piece's own.
    SINK_RATE = "sink_rate": SinkRate -> SinkRateResult
    takes {
        piece_density_g_per_ml: f64 = PieceDensity,
    }
    optional {
        density_uncertainty_g_per_ml: Option<f64> = DensityUncertainty,
        depth_m: Option<f64> = Depth,
    }
    gives {
        /// Sink rate.
        sink_rate_cm_per_s: f64 = "sink_rate" CentimeterPerSecond,
        /// Lower bound; 0 where the piece may hang or float.
        sink_rate_min_cm_per_s: f64 = "sink_rate_min" CentimeterPerSecond,
        /// Upper bound.
        sink_rate_max_cm_per_s: f64 = "sink_rate_max" CentimeterPerSecond,
        /// Whether it sinks straight: straight, may-swing or swings.
        motion: Motion = "motion" None,
        /// Reynolds number.
        reynolds: f64 = "reynolds" Pure,
        /// Drag coefficient, on length times diameter of a stick and the cross-section of a ball.
        drag_coefficient: f64 = "drag_coefficient" Pure,
        /// Time to the depth, let go at rest just below the surface.
        sink_time_s: Option<f64> = "sink_time" Second,
    }
    example { piece_density_g_per_ml: 1.1, density_uncertainty_g_per_ml: None, depth_m: None }
        => SinkRateResult {
            sink_rate_cm_per_s: 22.041_046_698_5,
            sink_rate_min_cm_per_s: 19.297_542_687_6,
            sink_rate_max_cm_per_s: 30.860_510_855_1,
            motion: Motion::Swings,
            reynolds: 2_196.283_465_05,
            drag_coefficient: 0.908_336_165_559,
            sink_time_s: None,
        };
}

impl SinkRate {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges; a piece that floats, or for which there is no published drag.
    pub fn calculate(&self) -> Result<SinkRateResult, Refusal> {
        let density: MassDensity = of(Parameter::PieceDensity, self.piece_density_g_per_ml);
        let unsure: MassDensity =
            or_default(Parameter::DensityUncertainty, self.density_uncertainty_g_per_ml);
        let depth: Option<Length> = if_given(Parameter::Depth, self.depth_m);
        let read = self.piece().read((Parameter::PieceDensity, density.si()));
        let mut check = Check::new();
        check.merge_numbers(&read);
        check
            .number(Parameter::DensityUncertainty, unsure.si())
            .option(Parameter::Depth, depth.map(|depth| depth.si()));
        check.finish()?;
        let (body, water) = read?;
        let fall = body.fall_within(density, unsure, &water)?;
        let time = depth.map(|depth| fall.time_to(depth)).transpose()?;
        Ok(SinkRateResult {
            sink_rate_cm_per_s: cm_per_s(fall.speed),
            sink_rate_min_cm_per_s: cm_per_s(fall.trust.slowest),
            sink_rate_max_cm_per_s: cm_per_s(fall.trust.fastest),
            motion: fall.trust.motion,
            reynolds: fall.reynolds,
            drag_coefficient: fall.drag_coefficient,
            sink_time_s: time.map(|time| time.si()),
        })
    }
}

sink_calculation! {
    /// Density at which a piece sinks at a rate: the finished density to salt for.
    DENSITY_FOR_SINK_RATE = "density_for_sink_rate": DensityForSinkRate -> DensityForSinkRateResult
    takes {
        sink_rate_cm_per_s: f64 = SinkRate,
    }
    optional {}
    gives {
        /// Density of the piece, voids and salt counted.
        piece_density_g_per_ml: f64 = "piece_density" GramPerMilliliter,
    }
    example { sink_rate_cm_per_s: 22.041_046_698_539_03 }
        => DensityForSinkRateResult { piece_density_g_per_ml: 1.1 };
}

impl DensityForSinkRate {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges; a rate that no density gives, or for which there is no published drag.
    pub fn calculate(&self) -> Result<DensityForSinkRateResult, Refusal> {
        let rate: Velocity = of(Parameter::SinkRate, self.sink_rate_cm_per_s);
        let (body, water) = self.piece().read((Parameter::SinkRate, rate.si()))?;
        let density = body.density_for(rate, &water)?;
        Ok(DensityForSinkRateResult {
            piece_density_g_per_ml: PlainUnit::GramPerMilliliter.from_si(density.si()),
        })
    }
}
