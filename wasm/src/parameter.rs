//! Which parameter of a call an error of the core is about.
//!
//! The core tells a number by words. All calls have one name for it, which stands here beside them.

use pourwright::Diagnose;
use pourwright::batch::BatchError;
use pourwright::bench::MeasureError;
use pourwright::flake::FlakeError;
use pourwright::material::{MaterialError, Property};
use pourwright::process::atmosphere::AtmosphereError;
use pourwright::process::degas::DegasError;
use pourwright::process::gauge::GaugeError;
use pourwright::process::seawater::SeawaterError;
use pourwright::process::sink::SinkError;
use pourwright::salt::SaltError;
use pourwright::shot::ShotError;
use pourwright::water::WaterError;

/// An error that a call can have at one of its parameters.
pub(crate) trait InParameter: Diagnose {
    /// Its path: `/` and its name, empty where no single one is wrong.
    fn path(&self) -> &'static str;
}

/// The path of the parameter that is `what`, as the core's errors call it.
fn named(what: &str) -> &'static str {
    match what {
        // A shot, and a piece of it.
        "the volume of a cavity" | "the volume of the cavity" => "/cavityMl",
        "the density at shot temperature" => "/hotGPerMl",
        "the density at 20 °C" => "/coldGPerMl",
        "the feed share" => "/feed",
        "the share of voids" => "/voids",
        "the volume of the sprue" => "/sprueMl",
        "the mass that topping adds" => "/toppedG",
        // A batch.
        "the reject rate" => "/rejects",
        "the confidence" => "/confidence",
        "the mass of a shot" => "/shotG",
        "the mass of the sprue" => "/sprueG",
        "the share of sprues returned" => "/returned",
        "what the injector holds" => "/holdsMl",
        "what the injector keeps" => "/keepsMl",
        "the film on the pot's wall" => "/filmG",
        "the heel of the pot" => "/heelG",
        // Salt. The mass of base is its volume by a density that has passed.
        "the mass of base" | "the volume of base" => "/baseMl",
        "the mass of the mix" => "/mixG",
        "the volume of the mix" => "/mixMl",
        "the softener per salt" => "/softenerPerSalt",
        "the limit on salt by volume" => "/mostSolids",
        // A piece that sinks.
        "the mass of the hook" => "/hookG",
        "the volume of the hook" => "/hookMl",
        "the volume of the piece" => "/volumeMl",
        "the diameter of the piece" => "/diameterMm",
        "the length of the piece" => "/lengthMm",
        "the density of the piece" => "/densityGPerMl",
        "the speed" => "/speedCmPerS",
        // A bench.
        "the mass wanted" => "/massG",
        "the balance's readability" => "/balanceReadsG",
        "the balance's capacity" => "/balanceToG",
        "the balance's least load" => "/balanceFromG",
        "the density as measured" => "/asMeasuredGPerMl",
        "the mass of a drop" => "/dropG",
        spoon if spoon.starts_with("spoon ") => "/spoonsMl",
        _ => "",
    }
}

impl InParameter for ShotError {
    fn path(&self) -> &'static str {
        match self {
            Self::NotPositive { what } | Self::Negative { what } | Self::Share { what, .. } => {
                named(what)
            }
            Self::NoCavity => "/cavities",
            Self::Density(_) => "/hotGPerMl",
            _ => "",
        }
    }
}

impl InParameter for BatchError {
    fn path(&self) -> &'static str {
        match self {
            Self::NotPositive { what } | Self::Range { what, .. } => named(what),
            Self::NoPieces | Self::TooManyPieces { .. } => "/pieces",
            Self::NoCavity { .. } => "/cavities",
            Self::TooManyCast { .. } => "/rejects",
            Self::NothingFits { .. } => "/shotG",
            Self::Density(_) => "/hotGPerMl",
            _ => "",
        }
    }
}

impl InParameter for SaltError {
    fn path(&self) -> &'static str {
        match self {
            Self::NotPositive { what } | Self::Range { what, .. } => named(what),
            Self::ScoopedAboveTrue { .. } => "/scoopedGPerMl",
            Self::NoCavity { .. } => "/cavityMl",
            Self::OutOfReach { .. } => "/value",
            _ => "",
        }
    }
}

impl InParameter for SinkError {
    fn path(&self) -> &'static str {
        match self {
            Self::NotPositive { what } | Self::Negative { what } => named(what),
            Self::TooShort { .. } => "/lengthMm",
            Self::Floats { .. } | Self::Density(_) => "/densityGPerMl",
            Self::HookTooHeavy { .. } | Self::TooFast { .. } => "/speedCmPerS",
            _ => "",
        }
    }
}

impl InParameter for SeawaterError {
    fn path(&self) -> &'static str {
        match self {
            Self::Temperature(_) => "/waterCelsius",
            Self::Salinity(_) => "/salinity",
            _ => "",
        }
    }
}

impl InParameter for MeasureError {
    fn path(&self) -> &'static str {
        match self {
            Self::OutOfRange { what, .. } => named(what),
            Self::Tolerance { .. } => "/tolerance",
            Self::TooManySpoons { .. } => "/spoonsMl",
            Self::Capacity { .. } => "/balanceToG",
            _ => "",
        }
    }
}

impl InParameter for MaterialError {
    fn path(&self) -> &'static str {
        match self {
            Self::NotPositive { property: Property::Drop, .. } => "/dropG",
            _ => "/amount",
        }
    }
}

impl InParameter for FlakeError {
    fn path(&self) -> &'static str {
        match self {
            Self::Thickness { .. } => "/thicknessUm",
            Self::Dose { .. } => "/doseG",
            _ => "",
        }
    }
}

impl InParameter for WaterError {
    fn path(&self) -> &'static str {
        match self {
            Self::Temperature(_) => "/temperatureCelsius",
            Self::AirPressure(_) => "/airPressurePa",
            Self::Weight(_) => "/waterG",
            _ => "",
        }
    }
}

impl InParameter for AtmosphereError {
    fn path(&self) -> &'static str {
        match self {
            Self::Altitude { .. } => "/altitudeM",
            _ => "/airPressurePa",
        }
    }
}

impl InParameter for GaugeError {
    fn path(&self) -> &'static str {
        "/vacuumPa"
    }
}

impl InParameter for DegasError {
    fn path(&self) -> &'static str {
        match self {
            Self::Volume { .. } => "/liquidMl",
            Self::Share { .. } => "/air",
            Self::Vapor { .. } => "/vaporPa",
            Self::Boils { .. } => "/vacuumPa",
            _ => "",
        }
    }
}
