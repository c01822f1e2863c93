//! Why a call of the table is refused.

use alloc::borrow::Cow;
use alloc::string::{String, ToString};
use core::fmt;

use crate::fault::Diagnose;
use crate::parameter::{Parameter, ParameterError, ParameterErrors};
use crate::quantity::AmountError;

macro_rules! refusals {
    ($($(#[$meta:meta])* $Variant:ident($Error:ty),)*) => {
        /// Why a call is refused: all its parameters that are wrong, or else what the calculation found.
        #[derive(Debug, Clone, PartialEq)]
        #[non_exhaustive]
        pub enum Refusal { $($(#[$meta])* $Variant($Error),)* }

        impl Refusal {
            fn inner(&self) -> &dyn Diagnose {
                match self { $(Self::$Variant(error) => error,)* }
            }
        }

        $(impl From<$Error> for Refusal {
            #[cold]
            fn from(error: $Error) -> Self {
                Self::$Variant(error)
            }
        })*
    };
}

refusals! {
    /// Parameters that are wrong by themselves or in comparison with each other.
    Parameters(ParameterErrors),
    /// A text that is not an amount or a unit.
    Amount(Misread),
    /// A property of a material that is missing.
    Material(crate::material::MaterialError),
    /// A mix that cannot be.
    Mix(crate::mix::MixError),
    /// A salt loading out of reach.
    Salt(crate::salt::SaltError),
    /// A heating or a cooling that cannot be.
    Heat(crate::process::heat::HeatError),
    /// Shots that do not fit into the heats of a pot.
    Clock(crate::process::clock::ClockError),
    /// A shot that does not set.
    ShotCooling(crate::process::shot_cooling::ShotCoolingError),
    /// Grains that do not settle.
    Settling(crate::process::settling::SettlingError),
    /// A batch that cannot be made.
    Batch(crate::batch::BatchError),
    /// A sink rate that cannot be calculated.
    Sink(crate::process::sink::SinkError),
    /// Points that make no curve, or a question outside them.
    Softener(crate::softener::SoftenerError),
    /// A gauge reading that the air does not give.
    Gauge(crate::process::gauge::GaugeError),
    /// A vacuum in which the pot boils.
    Degas(crate::process::degas::DegasError),
    /// A cut that cannot be read.
    Cut(crate::flake::CutError),
    /// A flake that cannot be.
    Flake(crate::flake::FlakeError),
    /// A color that does not exist.
    Color(crate::color::ColorError),
    /// A heat history that cannot be.
    History(crate::process::history::HistoryError),
    /// A budget that is not known.
    Budget(crate::process::budget::BudgetError),
    /// Weighings that do not agree.
    Calibrate(crate::calibrate::CalibrateError),
    /// A price that is too large.
    Price(super::plain::PlainPriceError),
    /// No tool of the bench is fine enough.
    Measure(crate::bench::MeasureError),
}

impl From<ParameterError> for Refusal {
    #[cold]
    fn from(error: ParameterError) -> Self {
        Self::Parameters(error.into())
    }
}

/// A text that is not an amount or a unit, or one that does not go with the others.
#[derive(Debug, Clone, PartialEq)]
pub struct Misread {
    /// The parameter that it is in.
    pub parameter: Parameter,
    /// Its error.
    pub error: AmountError,
}

impl Misread {
    /// `error`, in the text of `parameter`.
    pub(super) fn of(parameter: Parameter) -> impl Fn(AmountError) -> Self {
        move |error| Self { parameter, error }
    }
}

impl fmt::Display for Misread {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.error.fmt(f)
    }
}

impl core::error::Error for Misread {}

impl Diagnose for Misread {
    fn code(&self) -> &'static str {
        self.error.code()
    }

    fn help(&self) -> Cow<'static, str> {
        self.error.help()
    }

    fn parameter(&self) -> Option<Parameter> {
        Some(self.parameter)
    }
}

/// One reason of a refusal, as a door reports it.
#[derive(Debug, Clone, PartialEq)]
pub struct Reason {
    /// The parameter; `None` for the call as a whole.
    pub parameter: Option<Parameter>,
    /// Which element of its list, counted from 0.
    pub index: Option<u32>,
    /// Stable code in kebab case.
    pub code: &'static str,
    /// The finding, and what is allowed.
    pub message: String,
    /// The fix.
    pub help: String,
}

impl Refusal {
    /// All reasons, the first found first; at least one.
    pub fn reasons(&self) -> impl Iterator<Item = Reason> {
        let error = self.inner();
        let numbers = error.numbers();
        let whole = numbers.is_empty().then(|| Reason::of(error, error.parameter(), None));
        let each =
            numbers.iter().map(|number| Reason::of(number, Some(number.parameter), number.index));
        whole.into_iter().chain(each)
    }
}

impl Reason {
    fn of(error: &dyn Diagnose, parameter: Option<Parameter>, index: Option<u32>) -> Self {
        let fault = crate::fault::Fault::at(String::new(), error);
        Self {
            parameter,
            index,
            code: error.code(),
            message: fault.message.to_string(),
            help: fault.help.to_string(),
        }
    }
}

impl fmt::Display for Refusal {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        fmt::Display::fmt(self.inner(), f)
    }
}

impl core::error::Error for Refusal {}

impl Diagnose for Refusal {
    fn code(&self) -> &'static str {
        self.inner().code()
    }

    fn help(&self) -> Cow<'static, str> {
        self.inner().help()
    }

    fn numbers(&self) -> &[ParameterError] {
        self.inner().numbers()
    }

    fn parameter(&self) -> Option<Parameter> {
        self.inner().parameter()
    }
}
