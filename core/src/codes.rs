//! Every code that a fault or a note can have, in one list.
//!
//! An error enum declares its codes once, in the arms of `codes!`, which makes both `Diagnose::code` and the list of
//! them. A fault or a note that is no error of a calculation takes its code by `code!`, which compiles only for a code of
//! `STATED`. An enum that is not in the registry below does not implement `Registered`, so it cannot be an error.

use alloc::borrow::Cow;
use alloc::string::{String, ToString};
use core::fmt;

/// An error whose codes are in the list of all codes.
#[doc(hidden)]
pub trait Registered {}

/// A code of an error enum, and the variants that have it.
#[doc(hidden)]
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Row {
    /// The code.
    pub code: &'static str,
    /// The pattern of its variants.
    pub variants: &'static str,
}

/// A code of the list [`STATED`].
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Code(&'static str);

impl Code {
    /// The code `text`, which must be in the list; called in constants only.
    #[allow(clippy::panic, clippy::indexing_slicing)] // reported while compiling, and never later
    #[must_use]
    pub(crate) const fn listed(text: &'static str) -> Self {
        let mut index = 0;
        while index < STATED.len() {
            if is_same(STATED[index].as_bytes(), text.as_bytes()) {
                return Self(text);
            }
            index += 1;
        }
        panic!("the code is not in the list of core/src/codes.rs")
    }
}

#[allow(clippy::indexing_slicing)] // in constants only
const fn is_same(one: &[u8], other: &[u8]) -> bool {
    let mut index = 0;
    while index < one.len() && index < other.len() && one[index] == other[index] {
        index += 1;
    }
    index == one.len() && index == other.len()
}

impl fmt::Display for Code {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.0)
    }
}

impl From<Code> for Cow<'static, str> {
    fn from(code: Code) -> Self {
        Self::Borrowed(code.0)
    }
}

impl From<Code> for String {
    fn from(code: Code) -> Self {
        code.0.to_string()
    }
}

/// The code written here, if it is in the list of all codes; an unknown one does not compile.
macro_rules! code {
    ($text:literal) => {
        const { $crate::codes::Code::listed($text) }
    };
}
pub(crate) use code;

/// `code` and `codes` of an error enum from the same arms. An arm whose right side is no literal hands on the code of what is
/// in it.
macro_rules! codes {
    (of $field:ident; $($arms:tt)*) => {
        fn code(&self) -> &'static str {
            match self.$field { $($arms)* }
        }
        $crate::codes::codes! { @list $($arms)* }
    };
    (@list $($arms:tt)*) => {
        fn codes() -> &'static [$crate::codes::Row] {
            $crate::codes::codes! { @rows [] $($arms)* }
        }
    };
    (@rows [$($rows:tt)*] $variants:pat => $code:literal, $($rest:tt)*) => {
        $crate::codes::codes! { @rows [$($rows)* $crate::codes::Row {
            code: $code,
            variants: stringify!($variants),
        },] $($rest)* }
    };
    (@rows [$($rows:tt)*] $variants:pat => $inner:expr, $($rest:tt)*) => {
        $crate::codes::codes! { @rows [$($rows)*] $($rest)* }
    };
    (@rows [$($rows:tt)*]) => { &[$($rows)*] };
    ($($arms:tt)*) => {
        fn code(&self) -> &'static str {
            match self { $($arms)* }
        }
        $crate::codes::codes! { @list $($arms)* }
    };
}
pub(crate) use codes;

/// An error enum of the library, and its codes.
#[cfg(feature = "schema")]
#[doc(hidden)]
#[derive(Debug, Clone, Copy)]
pub struct Listed {
    /// The enum, by its path in the crate.
    pub of: &'static str,
    /// Its own codes, without those of errors in it.
    pub codes: &'static [Row],
}

macro_rules! registry {
    ($($(#[$when:meta])* $($error:ident)::+,)*) => {
        $($(#[$when])* impl Registered for crate::$($error)::+ {})*

        /// All error enums of the library.
        #[cfg(feature = "schema")]
        #[must_use]
        pub fn enums() -> alloc::vec::Vec<Listed> {
            alloc::vec::Vec::from([$($(#[$when])* Listed {
                of: stringify!($($error)::+),
                codes: <crate::$($error)::+ as crate::fault::Diagnose>::codes(),
            },)*])
        }
    };
}

registry! {
    batch::BatchError,
    bench::MeasureError,
    calibrate::CalibrateError,
    color::ColorError,
    color::rows::RowsError,
    color::reading::ReadingError,
    cost::CostError,
    flake::FlakeError,
    flake::CutError,
    formula::FormulaError,
    learn::LearnError,
    material::MaterialError,
    material::MostDoseError,
    mix::MixError,
    parameter::ParameterError,
    parameter::ParameterErrors,
    plan::budget::BudgetError,
    plan::correction::CorrectionError,
    plan::errors::CoverError,
    plan::day::RecipeError,
    plan::errors::ShelfError,
    plan::leftover::LeftoverError,
    plan::mispour::MispourError,
    plan::errors::OrderError,
    plan::errors::PotError,
    plan::errors::PrecedenceError,
    plan::errors::SequenceError,
    plan::errors::SplitError,
    plan::errors::WeighError,
    #[cfg(feature = "document")]
    plausible::Implausible,
    price::PriceError,
    process::atmosphere::AtmosphereError,
    process::budget::BudgetError,
    process::clock::ClockError,
    process::degas::DegasError,
    process::gauge::GaugeError,
    process::heat::HeatError,
    process::history::HistoryError,
    process::settling::SettlingError,
    process::shot_cooling::ShotCoolingError,
    process::sink::SinkError,
    process::sink::SaltedSinkError,
    quantity::AmountError,
    record::RecordError,
    salt::SaltError,
    softener::SoftenerError,
    uncertainty::UncertaintyError,
    #[cfg(feature = "table")]
    table::plain::PlainPriceError,
    #[cfg(feature = "table")]
    table::Misread,
    #[cfg(feature = "table")]
    table::Refusal,
    trial::TrialError,
}

/// Codes of faults and notes that are no error of a calculation.
#[doc(hidden)]
pub const STATED: &[&str] = &[
    "air-not-known",
    "amount-not-taken",
    "bad-name",
    "base-no-plastisol",
    "base-off-marks",
    "base-on-purpose",
    "body-not-known",
    "brim-below-marks",
    "brim-not-known",
    "budget-not-known",
    "color-base-not-known",
    "color-no-backings",
    "color-no-bands",
    "color-no-colorant",
    "color-no-hex",
    "color-no-measure",
    "color-not-let-down",
    "color-of-no-formula",
    "color-other-light",
    "color-outside-model",
    "color-surprise",
    "color-target-or-like",
    "confidence-out-of-range",
    "cup-not-of-bench",
    "density-borrowed",
    "density-or-speed",
    "document-too-long",
    "dose-beyond-bench",
    "duplicate-key",
    "empty-blend",
    "feed-not-known",
    "flake-not-known",
    "formula-exists",
    "formulas-or-layers",
    "formulas-or-parts",
    "fresh-base-not-allowed",
    "fused-as-liquid",
    "gauge-or-absolute",
    "hardness-of-no-softener",
    "heat-not-known",
    "heat-times-not-known",
    "heat-unlike-cups",
    "heating-not-known",
    "hot-time-not-known",
    "injector-keeps-all",
    "instead-below-nothing",
    "instead-of-nothing",
    "instead-twice",
    "lab-or-srgb",
    "layer-shares",
    "learn-no-day",
    "learn-record-twice",
    "left-of-nothing",
    "left-over-cup",
    "left-over-heat-not-known",
    "line-added",
    "made-after-day",
    "missing-field",
    "mold-no-thickness",
    "mold-not-metal",
    "more-faults",
    "names-alike",
    "no-air-pressure",
    "no-cavities",
    "no-cup",
    "no-expansion",
    "no-formula",
    "no-grain",
    "no-hardness-points",
    "no-hardness-reading",
    "no-heat-budget",
    "no-lines",
    "no-mold",
    "no-pot",
    "no-shot-window",
    "no-such-layer",
    "no-such-line",
    "no-such-stage",
    "no-such-step",
    "no-viscosity",
    "not-a-date",
    "not-json",
    "not-one-of-kind",
    "one-body-for-unlike",
    "one-cavity-for-unlike",
    "one-loading",
    "open-and-given",
    "out-of-range",
    "oven-not-timed",
    "overlap-beside-layers",
    "parts-or-trial",
    "pharmacy-drop",
    "photo-card-noted",
    "photo-dark-card",
    "photo-patch-noted",
    "picture-or-instrument",
    "piece-above-mix",
    "piece-and-mix",
    "pieces-counted",
    "pieces-or-packs",
    "plan-and-formulas",
    "plan-without-book",
    "pot-added",
    "pot-dropped",
    "pot-foreign-material",
    "pot-goes-on",
    "pot-lost",
    "pot-not-used",
    "pot-over-cup",
    "pot-raised",
    "pot-taken-apart",
    "pot-to-finish",
    "pot-twice",
    "price-not-known",
    "product-or-mold",
    "property-of-another-kind",
    "ratio-or-hardness",
    "reheat-not-known",
    "report-needs-altitude",
    "rise-and-entrained",
    "rise-assumed",
    "scooped-above-true",
    "scooped-density-borrowed",
    "section-not-known",
    "section-not-one",
    "setting-not-known",
    "shape-of-like-cavities",
    "share-of-nothing",
    "shelf-empty",
    "shelf-missing",
    "shelf-name-twice",
    "shelf-not-used",
    "shot-mass-missing",
    "shot-time-not-known",
    "shot-together",
    "shot-window-reversed",
    "shots-without-shooting",
    "specific-heat-assumed",
    "specific-heat-not-known",
    "spent-at-two-temperatures",
    "spent-without-budget",
    "spent-without-heat",
    "step-does-not-heat",
    "step-of-another-pot",
    "stick-or-ball",
    "thickness-or-mold",
    "timing-does-not-fit",
    "timing-ends-too-hot",
    "timing-questioned",
    "tolerance-out-of-range",
    "tolerance-without-gauge",
    "too-few-injectors",
    "too-many-heats",
    "too-many-pieces",
    "too-many-shots",
    "too-much-heat",
    "trial-formulas-and-base",
    "trial-no-base",
    "trial-nothing-again",
    "trial-step-in-two",
    "two-amounts",
    "unknown-calculation",
    "unknown-field",
    "unknown-name",
    "unknown-word",
    "unreadable",
    "vessel-half-known",
    "vessel-not-of-all",
    "viscosity-reversed",
    "viscosity-twice",
    "volume-without-density",
    "went-in-nothing",
    "window-not-known",
    "wrong-dimension",
    "wrong-type",
];

/// Codes of the command line's own faults.
#[doc(hidden)]
pub const COMMAND: &[&str] = &[NOT_A_REQUEST, NOT_UTF8, OTHER_REQUEST];

/// An argument or a file is not a request.
#[doc(hidden)]
pub const NOT_A_REQUEST: &str = "not-a-request";

/// A line is not text.
#[doc(hidden)]
pub const NOT_UTF8: &str = "not-utf8";

/// The request asks for something else than the command.
#[doc(hidden)]
pub const OTHER_REQUEST: &str = "other-request";

#[cfg(all(test, feature = "table"))]
mod tests {
    use std::string::ToString;

    use crate::batch::BatchError;
    use crate::bench::MeasureError;
    use crate::calibrate::CalibrateError;
    use crate::fault::Diagnose;
    use crate::flake::FlakeError;
    use crate::mix::MixError;
    use crate::parameter::{Check, Parameter, ParameterErrors};
    use crate::process::atmosphere::AtmosphereError;
    use crate::process::budget::BudgetError;
    use crate::process::clock::ClockError;
    use crate::process::degas::DegasError;
    use crate::process::gauge::GaugeError;
    use crate::process::heat::HeatError;
    use crate::process::history::HistoryError;
    use crate::process::settling::SettlingError;
    use crate::process::shot_cooling::ShotCoolingError;
    use crate::process::sink::{SaltedSinkError, SinkError};
    use crate::salt::SaltError;
    use crate::softener::SoftenerError;
    use crate::table::Refusal;

    /// An error that holds wrong numbers, itself or in another error, hands on all of them, with the help of the first.
    #[test]
    fn an_error_hands_on_what_is_in_it() {
        let mut check = Check::new();
        check.number(Parameter::PotMass, -1.0).number(Parameter::Room, -1.0);
        let two: ParameterErrors = check.finish().unwrap_err();
        macro_rules! hand_on {
            ($($Error:ident $(of $Inner:ident)?,)*) => {$(
                let error = two.clone();
                $(let error = $Inner::from(error);)?
                let error = $Error::from(error);
                assert_eq!(error.numbers(), two.as_slice(), "{error:?}");
                assert_eq!(error.parameter(), Some(Parameter::PotMass), "{error:?}");
                assert_eq!((error.code(), error.help()), (two.code(), two.help()), "{error:?}");
                assert_eq!(error.to_string(), two.to_string());
            )*};
        }
        hand_on! {
            AtmosphereError,
            BatchError,
            BudgetError,
            BudgetError of HistoryError,
            CalibrateError,
            ClockError,
            ClockError of HeatError,
            DegasError,
            FlakeError,
            GaugeError,
            HeatError,
            HistoryError,
            MeasureError,
            MixError,
            Refusal,
            Refusal of DegasError,
            SaltError,
            SaltedSinkError of SaltError,
            SaltedSinkError of SinkError,
            SettlingError,
            ShotCoolingError,
            SinkError,
            SoftenerError,
        }
        assert!(!two.help().is_empty());
    }
}
