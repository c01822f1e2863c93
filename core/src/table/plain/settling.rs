//! How fast salt settles.

use super::{of, or_default};
use crate::parameter::{Parameter, ParameterError, PlainUnit, Problem, Relation};
use crate::process::settling::{Grain, Suspension};
use crate::quantity::{DynamicViscosity, Length, Measurable, Ratio, Time, Velocity};
use crate::table::{Refusal, calculation};

calculation! {
    /// How often to stir a melt with salt in it, and how fast the salt settles.
    ///
    /// Drag of a sphere by Schiller and Naumann, hindered settling by Richardson and Zaki, a grain as a cube that passes a sieve
    /// (module `process::settling`). Stir before the top share of the depth is without grains: t = share · depth/v.
    STIR_EVERY = "stir_every": StirEvery -> StirEveryResult
    takes {
        grain_mm: f64 = Grain,
        grain_density_g_per_ml: f64 = GrainDensity,
        melt_density_g_per_ml: f64 = MeltDensity,
        melt_depth_mm: f64 = MeltDepth,
        melt_viscosity_min_mpa_s: Option<f64> = MeltViscosityMin,
        melt_viscosity_max_mpa_s: Option<f64> = MeltViscosityMax,
        solids_share: Option<f64> = SolidsShare,
        unstirred: Option<f64> = Unstirred,
    }
    gives {
        /// How often to stir, to be safe: in the thinnest melt.
        stir_every_s: f64 = "stir_every" Second,
        /// How often is enough in the thickest melt.
        stir_every_max_s: f64 = "stir_every_max" Second,
        /// Speed of the grains in the thickest melt.
        settling_min_cm_per_s: f64 = "settling_min" CentimeterPerSecond,
        /// Speed of the grains in the thinnest melt.
        settling_max_cm_per_s: f64 = "settling_max" CentimeterPerSecond,
    }
    cautions ["hot-plastisol", "salt-dry"]
    request "settling"
    example StirEvery {
        grain_mm: 0.3,
        grain_density_g_per_ml: 2.165,
        melt_density_g_per_ml: 0.93,
        melt_depth_mm: 80.0,
        melt_viscosity_min_mpa_s: Some(500.0),
        melt_viscosity_max_mpa_s: Some(1000.0),
        solids_share: None,
        unstirred: None,
    } => StirEveryResult {
        stir_every_s: 46.358_618_363_9,
        stir_every_max_s: 92.699_064_326_6,
        settling_min_cm_per_s: 0.008_630_076_320_75,
        settling_max_cm_per_s: 0.017_256_769_684_56,
    };
}

impl StirEvery {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges; grains that do not sink, or sink too fast for the equation of the drag.
    pub fn calculate(&self) -> Result<StirEveryResult, Refusal> {
        let thin: DynamicViscosity =
            or_default(Parameter::MeltViscosityMin, self.melt_viscosity_min_mpa_s);
        let thick: DynamicViscosity =
            or_default(Parameter::MeltViscosityMax, self.melt_viscosity_max_mpa_s);
        let depth: Length = of(Parameter::MeltDepth, self.melt_depth_mm);
        let unstirred: Ratio = or_default(Parameter::Unstirred, self.unstirred);
        let grains = Suspension {
            grain: Grain::Cube,
            size: of(Parameter::Grain, self.grain_mm),
            solid: of(Parameter::GrainDensity, self.grain_density_g_per_ml),
            melt: of(Parameter::MeltDensity, self.melt_density_g_per_ml),
            solids: or_default(Parameter::SolidsShare, self.solids_share),
        };
        let mut check = grains.checked();
        check
            .number(Parameter::MeltDepth, depth.si())
            .number(Parameter::Unstirred, unstirred.value)
            .number(Parameter::MeltViscosityMin, thin.si())
            .number(Parameter::MeltViscosityMax, thick.si());
        let (low, high) = (Parameter::MeltViscosityMin, Parameter::MeltViscosityMax);
        match (self.melt_viscosity_min_mpa_s, self.melt_viscosity_max_mpa_s) {
            (Some(_), None) => {
                check.push(ParameterError::new(high, Problem::NeededBy(low)));
            }
            (None, Some(_)) => {
                check.push(ParameterError::new(low, Problem::NeededBy(high)));
            }
            _ => {
                check.relation((high, thick.si()), Relation::AtLeast, (low, thin.si()));
            }
        }
        check.finish()?;
        let (fastest, slowest) = (grains.settling(thin)?, grains.settling(thick)?);
        let cm_per_s = |speed: Velocity| PlainUnit::CentimeterPerSecond.from_si(speed.si());
        Ok(StirEveryResult {
            stir_every_s: fastest.stir_every(depth, unstirred)?.si(),
            stir_every_max_s: slowest.stir_every(depth, unstirred)?.si(),
            settling_min_cm_per_s: cm_per_s(slowest.speed),
            settling_max_cm_per_s: cm_per_s(fastest.speed),
        })
    }
}

calculation! {
    /// Viscosity of a melt, from a ball that was timed as it sank.
    ///
    /// The drag of a sphere by Schiller and Naumann, up to a Reynolds number of 800 (module `process::settling`).
    VISCOSITY_OF_BALL = "viscosity_of_ball": ViscosityOfBall -> ViscosityOfBallResult
    takes {
        ball_diameter_mm: f64 = BallDiameter,
        ball_density_g_per_ml: f64 = BallDensity,
        melt_density_g_per_ml: f64 = MeltDensity,
        ball_depth_mm: f64 = BallDepth,
        ball_time_s: f64 = BallTime,
    }
    gives {
        /// Viscosity of the melt.
        melt_viscosity_mpa_s: f64 = "melt_viscosity" MillipascalSecond,
    }
    cautions ["hot-plastisol"]
    request "settling"
    example ViscosityOfBall {
        ball_diameter_mm: 1.0,
        ball_density_g_per_ml: 7.8,
        melt_density_g_per_ml: 0.93,
        ball_depth_mm: 50.0,
        ball_time_s: 20.0,
    } => ViscosityOfBallResult { melt_viscosity_mpa_s: 1_494.509_551_281_1 };
}

impl ViscosityOfBall {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges; a ball that does not sink, or sinks too fast for the equation of the drag.
    pub fn calculate(&self) -> Result<ViscosityOfBallResult, Refusal> {
        let ball = Suspension {
            grain: Grain::Ball,
            size: of(Parameter::BallDiameter, self.ball_diameter_mm),
            solid: of(Parameter::BallDensity, self.ball_density_g_per_ml),
            melt: of(Parameter::MeltDensity, self.melt_density_g_per_ml),
            solids: Ratio::default(),
        };
        let depth: Length = of(Parameter::BallDepth, self.ball_depth_mm);
        let time: Time = of(Parameter::BallTime, self.ball_time_s);
        let viscosity = ball.viscosity(depth, time)?;
        Ok(ViscosityOfBallResult {
            melt_viscosity_mpa_s: PlainUnit::MillipascalSecond.from_si(viscosity.si()),
        })
    }
}
