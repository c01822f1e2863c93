//! The table of calculations: each one as data, as a plain-number form, and by name.
//!
//! A calculation of the table takes plain numbers in the units of its parameters (`cavity_volume_ml`), words and texts,
//! and gives plain numbers. It has three forms that give the same bits:
//! - a struct of its inputs with `calculate`, such as [`plain::PieceMass`]: nothing is allocated where nothing is refused;
//! - [`Calculation::evaluate`], which takes a list of [`Argument`]s in the order of the parameters: for doors that go by
//!   name, such as a spreadsheet;
//! - the typed functions of the other modules, which both call.
//!
//! [`CALCULATIONS`] holds what doors are generated from: names, texts, units, ranges, defaults, examples.
//!
//! Requests read the same parameters by the same names from JSON, as amounts with units. What takes or gives a document
//! is a request alone: formula, color-match, plan, record, correct, leftovers.
//!
//! ```
//! use pourwright::table::{self, Argument, Value, plain};
//!
//! let mass = plain::MassOfVolume { volume_ml: 250.0, density_g_per_ml: 1.03 }.calculate()?;
//! assert_eq!(mass.mass_g, 257.5);
//!
//! let mut results = Vec::new();
//! let arguments = [Argument::Number(250.0), Argument::Number(1.03)];
//! table::find("mass_of_volume").unwrap().evaluate(&arguments, &mut results)?;
//! assert_eq!(results, [Value::Number(257.5)]);
//! # Ok::<(), table::Refusal>(())
//! ```

mod argument;
pub mod plain;
mod refusal;

use alloc::string::String;
use alloc::vec::Vec;
use core::fmt::Write as _;

pub use argument::{Argument, Field, Output, Value};
pub use refusal::{Misread, Reason, Refusal};

use crate::parameter::{IfOmitted, Parameter, PlainUnit};

/// The kind of an argument or a result.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[non_exhaustive]
pub enum ValueKind {
    /// An `f64`.
    Number,
    /// A whole number, a `u32`.
    Count,
    /// A text.
    Text,
    /// One of the words of the parameter.
    Word {
        /// The type of the plain field in this crate: `salt::SaltForm`. Its `ALL` and `WORDS` have the order of the words.
        type_name: &'static str,
    },
    /// A list of numbers.
    List,
    /// A list of rows of this number of numbers.
    Rows(usize),
}

/// A parameter of a calculation.
#[derive(Debug, Clone, Copy)]
pub struct ParameterField {
    /// Which parameter: meaning, unit, range, default, words.
    pub parameter: Parameter,
    /// The name of its plain field: that of the parameter with the suffix of its unit.
    pub field: &'static str,
    /// The kind of its value.
    pub kind: ValueKind,
    /// Whether it may be omitted.
    pub optional: bool,
}

impl ParameterField {
    /// Its default: that of its parameter, nothing where that must be given elsewhere, and required
    /// where this calculation cannot do without.
    #[must_use]
    pub fn if_omitted(&self) -> IfOmitted {
        match self.parameter.if_omitted() {
            _ if !self.optional => IfOmitted::Required,
            IfOmitted::Required => IfOmitted::Nothing,
            other => other,
        }
    }
}

/// A result of a calculation.
#[derive(Debug, Clone, Copy)]
pub struct ResultField {
    /// The name without its unit.
    pub name: &'static str,
    /// The name of its plain field: with the suffix of its unit.
    pub field: &'static str,
    /// The unit.
    pub unit: PlainUnit,
    /// The kind of its value.
    pub kind: ValueKind,
    /// Whether it may be absent.
    pub optional: bool,
    words: &'static [&'static str],
    #[cfg(feature = "table-texts")]
    /// Its meaning, in one or more sentences.
    pub meaning: &'static str,
}

impl ResultField {
    /// The words that it may be, as [`Parameter::words`] has those of a parameter; empty where it is not a word.
    #[must_use]
    pub const fn words(&self) -> &'static [&'static str] {
        self.words
    }
}

/// Arguments and the results that they give.
#[cfg(feature = "table-texts")]
#[derive(Debug, Clone, PartialEq)]
pub struct Example {
    /// One for each parameter.
    pub arguments: Vec<Argument<'static>>,
    /// One for each result.
    pub results: Vec<Value>,
}

/// A calculation, as doors are generated from it.
pub struct Calculation {
    /// The name, in snake case: `piece_mass`.
    pub name: &'static str,
    /// The name of its struct in [`plain`]: `PieceMass`.
    pub struct_name: &'static str,
    #[cfg(feature = "table-texts")]
    /// The lines of its text, as Markdown; the first paragraph is a summary.
    pub text: &'static [&'static str],
    /// The parameters in order, those that must be given first.
    pub parameters: &'static [ParameterField],
    /// The results in order; never empty.
    pub results: &'static [ResultField],
    /// Codes of the cautions that a door shows with the result.
    pub cautions: &'static [&'static str],
    /// The request that gives the same numbers, if any.
    pub request: Option<&'static str>,
    /// Whether its struct also has `total`, without branches, for the rows of columns.
    pub has_total: bool,
    #[cfg(feature = "table-texts")]
    example: fn() -> Example,
    evaluate: fn(&[Argument<'_>], &mut Vec<Value>) -> Result<(), Refusal>,
}

impl Calculation {
    /// The first paragraph of the text, in one line.
    #[cfg(feature = "table-texts")]
    #[must_use]
    pub fn summary(&self) -> String {
        let mut summary = String::new();
        for line in self.text.iter().map(|line| line.trim()).take_while(|line| !line.is_empty()) {
            if !summary.is_empty() {
                summary.push(' ');
            }
            summary.push_str(line);
        }
        summary
    }

    /// An example.
    #[cfg(feature = "table-texts")]
    #[must_use]
    pub fn example(&self) -> Example {
        (self.example)()
    }

    /// Calculates. `arguments` are in the order of the parameters; those at the end that are optional may be left off.
    /// `results` is cleared and filled, one value for each result; it stays empty where the call is refused.
    ///
    /// # Errors
    /// [`Refusal`] with all parameters that are wrong.
    pub fn evaluate(
        &self,
        arguments: &[Argument<'_>],
        results: &mut Vec<Value>,
    ) -> Result<(), Refusal> {
        results.clear();
        (self.evaluate)(arguments, results)
    }

    /// Where a reason is: a JSON Pointer made of the names that `name` gives to parameters; of a list with its index, of a
    /// row also with the column. Empty for the call as a whole.
    #[must_use]
    pub fn path<'n>(&self, reason: &Reason, name: impl Fn(&ParameterField) -> &'n str) -> String {
        let mut path = String::new();
        let Some(parameter) = reason.parameter.map(Parameter::stated_by) else { return path };
        for field in self.parameters {
            let column = field.parameter.columns().iter().position(|column| *column == parameter);
            if field.parameter != parameter && column.is_none() {
                continue;
            }
            let _ = write!(path, "/{}", name(field));
            if let Some(index) = reason.index {
                let _ = write!(path, "/{index}");
                // A list of numbers has no columns to tell apart.
                if let Some(column) = column.filter(|_| field.parameter.columns().len() > 1) {
                    let _ = write!(path, "/{column}");
                }
            }
            break;
        }
        path
    }
}

impl core::fmt::Debug for Calculation {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.name)
    }
}

/// The calculation `name`.
#[must_use]
pub fn find(name: &str) -> Option<&'static Calculation> {
    CALCULATIONS.iter().copied().find(|calculation| calculation.name == name)
}

/// Declares a calculation: its input and result structs, its entry, and how arguments are read. `calculate` is written by
/// hand behind it.
macro_rules! calculation {
    (
        $(#[doc = $doc:literal])+
        $NAME:ident = $name:literal: $Inputs:ident $(<$a:lifetime>)? -> $Results:ident
        takes { $($field:ident: $Field:ty = $Parameter:ident,)+ }
        gives { $($(#[doc = $meaning:literal])+ $result:ident: $Result:ty = $result_name:literal $Unit:ident,)+ }
        $(cautions [$($caution:literal),+])?
        $(request $request:literal)?
        $(has $total:ident)?
        example $example:expr => $answer:expr;
    ) => {
        $(#[doc = $doc])+
        #[derive(Debug, Clone, Copy, PartialEq)]
        pub struct $Inputs $(<$a>)? {
            $(#[doc = $crate::parameter::parameter!($Parameter)] pub $field: $Field,)+
        }

        #[doc = concat!("The results of [`", stringify!($Inputs), "`].")]
        #[derive(Debug, Clone, Copy, PartialEq)]
        pub struct $Results {
            $($(#[doc = $meaning])+ pub $result: $Result,)+
        }

        impl $(<$a>)? $Inputs $(<$a>)? {
            const PARAMETERS: &'static [$crate::table::ParameterField] = &[$(
                $crate::table::ParameterField {
                    parameter: $crate::parameter::Parameter::$Parameter,
                    field: stringify!($field),
                    kind: <$Field as $crate::table::Field<'_>>::KIND,
                    optional: <$Field as $crate::table::Field<'_>>::OPTIONAL,
                },
            )+];
        }

        #[doc = concat!("The entry of [`", stringify!($Inputs), "`].")]
        pub(in crate::table) static $NAME: $crate::table::Calculation = $crate::table::Calculation {
            name: $name,
            struct_name: stringify!($Inputs),
            #[cfg(feature = "table-texts")]
            text: &[$($doc,)+],
            parameters: $Inputs::PARAMETERS,
            results: &[$($crate::table::ResultField {
                name: $result_name,
                field: stringify!($result),
                unit: $crate::parameter::PlainUnit::$Unit,
                kind: <$Result as $crate::table::Output>::KIND,
                optional: <$Result as $crate::table::Output>::OPTIONAL,
                words: <$Result as $crate::table::Output>::WORDS,
                #[cfg(feature = "table-texts")]
                meaning: concat!($($meaning,)+),
            },)+],
            cautions: &[$($($caution,)+)?],
            request: calculation!(@request $($request)?),
            has_total: calculation!(@has $($total)?),
            #[cfg(feature = "table-texts")]
            example: || {
                let inputs = $example;
                let answer = $answer;
                $crate::table::Example {
                    arguments: alloc::vec![$($crate::table::Field::write(&inputs.$field),)+],
                    results: alloc::vec![$($crate::table::Output::value(&answer.$result),)+],
                }
            },
            evaluate: |arguments, results| {
                let mut arguments = $crate::table::Reader::new(arguments);
                $(let $field = arguments.read($crate::parameter::Parameter::$Parameter);)+
                arguments.finish()?;
                let ($(Some($field),)+) = ($($field,)+) else { return Ok(()) };
                let answer = $Inputs { $($field,)+ }.calculate()?;
                $(results.push($crate::table::Output::value(&answer.$result));)+
                Ok(())
            },
        };
    };
    (@request) => { None };
    (@request $request:literal) => { Some($request) };
    (@has) => { false };
    (@has total) => { true };
}
pub(crate) use calculation;

/// Reads arguments one after the other and keeps all that is wrong.
struct Reader<'a, 's> {
    arguments: &'s [Argument<'a>],
    next: usize,
    check: crate::parameter::Check,
}

impl<'a, 's> Reader<'a, 's> {
    fn new(arguments: &'s [Argument<'a>]) -> Self {
        Self { arguments, next: 0, check: crate::parameter::Check::new() }
    }

    fn read<T: Field<'a>>(&mut self, parameter: Parameter) -> Option<T> {
        let argument = self.arguments.get(self.next).copied().unwrap_or(Argument::Omitted);
        self.next = self.next.saturating_add(1);
        self.check.keep(T::read(argument, parameter))
    }

    fn finish(self) -> Result<(), Refusal> {
        Ok(self.check.finish()?)
    }
}

/// All calculations of the table, by subject.
pub static CALCULATIONS: &[&Calculation] = &[
    &plain::quantity::CONVERT,
    &plain::quantity::CONVERT_NUMBER,
    &plain::quantity::DOSE_MASS,
    &plain::density::MASS_OF_VOLUME,
    &plain::density::VOLUME_OF_MASS,
    &plain::density::DENSITY_OF_PARTS,
    &plain::density::MIX_SHARE,
    &plain::salt::SALT_CONVERT,
    &plain::salt::SALT_MASS,
    &plain::salt::SALT_REACH,
    &plain::salt::SALT_FOR_DENSITY,
    &plain::salt::SALT_FOR_SINK_RATE,
    &plain::shot::SHOT_FILL,
    &plain::shot::PIECE_MASS,
    &plain::batch::SHOTS,
    &plain::batch::INJECTOR_LOADS,
    &plain::batch::BATCH_NEED,
    &plain::batch::BASE_TO_MARK,
    &plain::batch::LEAST_POT,
    &plain::batch::REJECT_RATE,
    &plain::bench::BENCH_MEASURE,
    &plain::sink::SINK_RATE,
    &plain::sink::DENSITY_FOR_SINK_RATE,
    &plain::softener::HARDNESS,
    &plain::softener::SOFTENER_RATIO,
    &plain::softener::SALTED_SOFTENER,
    &plain::water::WATER_DENSITY,
    &plain::water::CAVITY_OF_WATER,
    &plain::degas::STANDARD_PRESSURE,
    &plain::degas::STATION_PRESSURE,
    &plain::degas::SWOLLEN_VOLUME,
    &plain::degas::ENTRAINED_AIR,
    &plain::degas::DEGAS_VESSEL,
    &plain::flake::FLAKE_COUNT,
    &plain::flake::FLAKE_SWAP,
    &plain::color::COLOR_DIFFERENCE,
    &plain::heat::EQUIVALENT_TIME,
    &plain::heat::BUDGET_LEFT,
    &plain::oven::HEAT_TIME,
    &plain::oven::NEXT_BURST,
    &plain::clock::STAYS_HOT,
    &plain::clock::POT_HEATS,
    &plain::clock::SETTING_TIME,
    &plain::settling::STIR_EVERY,
    &plain::settling::VISCOSITY_OF_BALL,
    &plain::calibrate::CAVITY_OF_WEIGHTS,
    &plain::calibrate::FEED_OF_WEIGHTS,
    &plain::calibrate::DROP_OF_WEIGHINGS,
    &plain::calibrate::AS_SCOOPED_OF_WEIGHINGS,
    &plain::calibrate::RESIDUE_OF_WEIGHINGS,
    &plain::cost::PRICE,
];

#[cfg(test)]
mod tests;
