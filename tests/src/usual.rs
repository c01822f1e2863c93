//! Usual numbers for the parameters of the table.

use pourwright::parameter::Parameter;
use pourwright::table::{Argument, CALCULATIONS};

/// A number of each parameter that some example has, or else a usual one.
///
/// # Panics
/// Where no example has one and none is here.
#[must_use]
pub fn usual(parameter: Parameter) -> f64 {
    known(parameter).unwrap_or_else(|| panic!("no usual {parameter}"))
}

/// The same, if there is one.
#[must_use]
pub fn known(parameter: Parameter) -> Option<f64> {
    let usual = match parameter {
        Parameter::AbsolutePressure => 12.0,
        Parameter::Altitude => 640.0,
        Parameter::AirPressure => 97.0,
        Parameter::AsScooped | Parameter::OtherAsScooped => 0.55,
        Parameter::Cleanings => 2.0,
        Parameter::Confidence => 0.95,
        Parameter::DampAt => 25.0,
        Parameter::DensityUncertainty => 0.004,
        Parameter::Depth => 1.5,
        Parameter::DialTolerance => 2.0,
        Parameter::DropDensity => 1.1,
        Parameter::DropDepth => 1.0,
        Parameter::DropTime => 4.6,
        Parameter::ExtraMost => 0.08,
        Parameter::ExtraTime => 30_000.0,
        Parameter::Feed => 0.6,
        Parameter::FeedUncertainty => 0.1,
        Parameter::GaugeVacuum => 80.0,
        Parameter::HotDensity => 0.95,
        Parameter::HotVolume => 262.0,
        Parameter::LayerShare => 0.6,
        Parameter::MixMass => 258.0,
        Parameter::MixVolume => 255.0,
        Parameter::MostSolids => 0.4,
        Parameter::PotFilm => 3.0,
        Parameter::PotHeel => 9.0,
        Parameter::Rejects => 0.04,
        Parameter::Returned => 0.5,
        Parameter::SaltExpansion => 1.2e-4,
        Parameter::SalinityAbsolute => 0.035,
        Parameter::SalinityPractical => 34.0,
        Parameter::ShotTemperature => 165.0,
        Parameter::SoftenerDensity => 0.98,
        Parameter::SoftenerExpansion => 7.4e-4,
        Parameter::SoftenerPerSalt => 0.4,
        Parameter::BudgetWith => 0.02,
        Parameter::StabilizerDose => 0.03,
        Parameter::ToppedMass => 1.5,
        Parameter::VesselSpare => 0.12,
        Parameter::Voids => 0.02,
        Parameter::VolumeUncertainty => 0.03,
        Parameter::CavityVolume => 10.0,
        Parameter::MaterialDensity => 1.05,
        _ => {
            let mut found = CALCULATIONS.iter().filter_map(|calculation| {
                let example = calculation.example().arguments;
                let of = |field: &pourwright::table::ParameterField| field.parameter == parameter;
                match example[calculation.parameters.iter().position(of)?] {
                    Argument::Number(number) => Some(number),
                    _ => None,
                }
            });
            return found.next().or_else(|| in_no_example(parameter));
        }
    };
    Some(usual)
}

/// Of those that no example has.
fn in_no_example(parameter: Parameter) -> Option<f64> {
    let usual = match parameter {
        Parameter::Aim => 168.0,
        Parameter::BurstStep => 10.0,
        Parameter::ClockFrom => 170.0,
        Parameter::ClockTo => 155.0,
        Parameter::Diffusivity => 8e-8,
        Parameter::DropMass => 0.044,
        Parameter::LongestBurst => 60.0,
        Parameter::MoldAt => 34.0,
        Parameter::MoldMass => 600.0,
        Parameter::MoldSpecificHeat => 0.84,
        Parameter::OvenPower => 900.0,
        Parameter::OvenTurn => 22.0,
        Parameter::SaltAsScooped => 1.22,
        Parameter::Setting => 0.7,
        Parameter::ShotSpecificHeat => 2.0,
        Parameter::SolidsShare => 0.1,
        Parameter::SpecificHeatRise => 0.0012,
        Parameter::TakeOut => 45.0,
        Parameter::Thermometer => 3.0,
        Parameter::TimedSpecificHeat => 1.8,
        Parameter::Unstirred => 0.2,
        Parameter::VesselMass => 180.0,
        Parameter::VesselSpecificHeat => 0.84,
        _ => return None,
    };
    Some(usual)
}
