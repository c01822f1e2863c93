//! The errors of parameters, which all calculations share.

use alloc::borrow::Cow;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use core::fmt;

use super::label::Label;
use super::range::{Number, Outside, Shown};
use super::{Parameter, PlainUnit};
use crate::codes::codes;
use crate::fault::Diagnose;
use crate::letter::is_seen;

/// One parameter of a call that is refused.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ParameterError {
    /// Which parameter; of a list of pairs or triples, the column.
    pub parameter: Parameter,
    /// Which element of a list, counted from 0.
    pub index: Option<u32>,
    /// Why it is refused.
    pub problem: Problem,
}

/// Why a parameter is refused. Numbers are in the unit of the parameter.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum Problem {
    /// It is required and was not given.
    Missing,
    /// Another kind of value: a text for a number, or a number for a text.
    WrongType {
        /// The kind that is accepted, in words: "a number".
        wanted: &'static str,
    },
    /// A number with a fraction, for a count.
    NotWhole(f64),
    /// NaN or infinite.
    NotFinite(f64),
    /// Outside the range of the parameter; of a list, the number of its elements.
    OutOfRange(f64),
    /// Inside its range, yet on the wrong side of another number of the call.
    Relation {
        /// The number.
        value: f64,
        /// How it must compare.
        wanted: Relation,
        /// The other parameter.
        other: Parameter,
        /// Its number.
        than: f64,
    },
    /// It was not given, and another parameter needs it.
    NeededBy(Parameter),
    /// It cannot be given together with another parameter.
    Excludes(Parameter),
    /// None of the words of the parameter.
    UnknownWord(Found),
}

/// How a number must compare with another one.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[non_exhaustive]
pub enum Relation {
    /// Equal or greater.
    AtLeast,
    /// Equal or less.
    AtMost,
    /// Less.
    Below,
    /// Greater.
    Above,
}

impl Relation {
    #[inline]
    fn holds(self, si: f64, than: f64) -> bool {
        match self {
            Self::AtLeast => si >= than,
            Self::AtMost => si <= than,
            Self::Below => si < than,
            Self::Above => si > than,
        }
    }
}

/// A word that was found, cut short.
#[derive(Clone, Copy, PartialEq, Eq)]
pub struct Found {
    bytes: [u8; 24],
    length: u8,
}

impl Found {
    /// `text`, cut short.
    #[must_use]
    pub fn new(text: &str) -> Self {
        let mut found = Self { bytes: [0; 24], length: 0 };
        for letter in text.chars().filter(|letter| is_seen(*letter)) {
            let start = usize::from(found.length);
            let end = start.saturating_add(letter.len_utf8());
            let Some(place) = found.bytes.get_mut(start..end) else { break };
            letter.encode_utf8(place);
            found.length = u8::try_from(end).unwrap_or(found.length);
        }
        found
    }

    /// The word.
    #[must_use]
    pub fn as_str(&self) -> &str {
        let bytes = self.bytes.get(..usize::from(self.length));
        bytes.and_then(|bytes| core::str::from_utf8(bytes).ok()).unwrap_or_default()
    }
}

impl fmt::Debug for Found {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "\"{}\"", self.as_str())
    }
}

impl ParameterError {
    /// The parameter `parameter` has this problem.
    #[must_use]
    pub const fn new(parameter: Parameter, problem: Problem) -> Self {
        Self { parameter, index: None, problem }
    }

    /// The same of element `index` of a list, counted from 0.
    #[must_use]
    pub fn at(self, index: usize) -> Self {
        Self { index: u32::try_from(index).ok(), ..self }
    }

    /// The same of another parameter, where the caller knows better which it is.
    #[must_use]
    pub fn of(self, parameter: Parameter) -> Self {
        Self { parameter, ..self }
    }

    /// The number meant, where grams per milliliter and kilograms per cubic meter were mixed up.
    fn meant(&self) -> Option<f64> {
        let Problem::OutOfRange(found) = self.problem else { return None };
        let of_density = self.parameter.unit() == PlainUnit::GramPerMilliliter;
        let range = self.parameter.range()?;
        let mut others = [found / 1000.0, found * 1000.0].into_iter();
        others.find(|meant| of_density && range.holds(*meant))
    }
}

impl fmt::Display for ParameterError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let unit = self.parameter.unit();
        let label = Label(self.parameter);
        let number = |x| Number(x, unit);
        if let Some(index) = self.index {
            write!(f, "entry {} of the list: ", index.saturating_add(1))?;
        }
        match self.problem {
            Problem::Missing => write!(f, "{label} is missing"),
            Problem::WrongType { wanted } => write!(f, "{label} must be {wanted}"),
            Problem::NotWhole(x) => {
                write!(f, "{label} is {}; it must be a whole number", number(x))
            }
            Problem::NotFinite(x) => write!(f, "{label} is {x}; it must be a finite number"),
            Problem::OutOfRange(x) => {
                let (unit, found, allowed) = match self.parameter.is_list() {
                    true => (PlainUnit::Count, "has", "have"),
                    false => (unit, "is", "be"),
                };
                write!(f, "{label} {found} ")?;
                match self.parameter.range() {
                    Some(range) => write!(f, "{}", Outside(x, range, unit))?,
                    None => write!(f, "{}", Number(x, unit))?,
                }
                if self.parameter.is_list() {
                    f.write_str(if x == 1.0 { " entry" } else { " entries" })?;
                }
                match self.parameter.range() {
                    Some(range) => write!(f, "; it must {allowed} {}", Shown(range, unit)),
                    None => Ok(()),
                }
            }
            Problem::Relation { value, wanted, other, than } => {
                let wanted = match wanted {
                    Relation::AtLeast => "at least",
                    Relation::AtMost => "at most",
                    Relation::Below => "below",
                    Relation::Above => "above",
                };
                let than = Number(than, other.unit());
                write!(
                    f,
                    "{label} is {}; it must be {wanted} {} ({than})",
                    number(value),
                    Label(other)
                )
            }
            Problem::NeededBy(other) => write!(f, "{label} is missing; {} needs it", Label(other)),
            Problem::Excludes(other) => {
                write!(f, "{label} cannot be given together with {}", Label(other))
            }
            Problem::UnknownWord(found) => {
                write!(f, "\"{}\" is not a word for {label}", found.as_str())
            }
        }
    }
}

impl core::error::Error for ParameterError {}

impl Diagnose for ParameterError {
    codes! {
        of problem;
        Problem::Missing => "missing-field",
        Problem::WrongType { .. } | Problem::NotWhole(_) => "wrong-type",
        Problem::NotFinite(_) => "not-finite",
        Problem::OutOfRange(_) | Problem::Relation { .. } => "out-of-range",
        Problem::NeededBy(_) => "needs-other",
        Problem::Excludes(_) => "excludes-other",
        Problem::UnknownWord(_) => "unknown-word",
    }

    fn help(&self) -> Cow<'static, str> {
        if let Some(meant) = self.meant() {
            let meant = Number(meant, PlainUnit::GramPerMilliliter);
            return format!("Did you mean {meant}? 1 g/mL is 1000 kg/m³.").into();
        }
        match self.problem {
            Problem::Missing | Problem::NeededBy(_) => {
                format!("Give {}: {}", Label(self.parameter), self.parameter.meaning()).into()
            }
            Problem::Relation { .. } => "Check both numbers and their units.".into(),
            Problem::Excludes(_) => "Give only one of the two.".into(),
            Problem::NotFinite(_) => "Check the calculation that made it.".into(),
            Problem::NotWhole(_) => "Give a whole number.".into(),
            Problem::WrongType { .. } => self.parameter.meaning().into(),
            Problem::UnknownWord(_) => {
                let mut help = String::from("Known: ");
                for (index, word) in self.parameter.words().iter().enumerate() {
                    help.push_str(if index > 0 { ", " } else { "" });
                    help.push_str(word);
                }
                help.push('.');
                help.into()
            }
            Problem::OutOfRange(_) if self.parameter.is_list() => "Check the list.".into(),
            Problem::OutOfRange(_) => self.parameter.fix().into(),
        }
    }

    fn numbers(&self) -> &[ParameterError] {
        core::slice::from_ref(self)
    }

    fn parameter(&self) -> Option<Parameter> {
        Some(self.parameter)
    }
}

/// All parameters of a call that are wrong, the first found first; never empty.
#[derive(Debug, Clone, PartialEq)]
pub struct ParameterErrors(Vec<ParameterError>);

impl ParameterErrors {
    /// The errors.
    #[must_use]
    pub fn as_slice(&self) -> &[ParameterError] {
        &self.0
    }

    /// The same with each parameter renamed by `name`, for a caller who knows better which it is.
    #[must_use]
    pub fn renamed(mut self, name: impl Fn(Parameter) -> Parameter) -> Self {
        for error in &mut self.0 {
            error.parameter = name(error.parameter);
        }
        self
    }
}

impl From<ParameterError> for ParameterErrors {
    fn from(error: ParameterError) -> Self {
        Self(alloc::vec![error])
    }
}

impl fmt::Display for ParameterErrors {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        for (index, error) in self.0.iter().enumerate() {
            f.write_str(if index > 0 { ". " } else { "" })?;
            error.fmt(f)?;
        }
        Ok(())
    }
}

impl core::error::Error for ParameterErrors {}

impl Diagnose for ParameterErrors {
    fn code(&self) -> &'static str {
        self.0.first().map_or("out-of-range", Diagnose::code)
    }

    fn help(&self) -> Cow<'static, str> {
        self.0.first().map_or(Cow::Borrowed(""), Diagnose::help)
    }

    fn numbers(&self) -> &[ParameterError] {
        &self.0
    }

    fn parameter(&self) -> Option<Parameter> {
        self.0.first().map(|error| error.parameter)
    }
}

/// A check of the numbers of a call, which keeps all errors. A call without errors allocates nothing.
#[derive(Debug, Default)]
#[must_use]
pub struct Check(Vec<ParameterError>);

impl Check {
    /// A check without errors.
    #[inline]
    pub const fn new() -> Self {
        Self(Vec::new())
    }

    /// `si` must be a number in the range of `parameter`.
    #[inline]
    pub fn number(&mut self, parameter: Parameter, si: f64) -> &mut Self {
        if !parameter.holds_si(si) {
            self.outside(parameter, si);
        }
        self
    }

    /// The same, where there is a number.
    #[inline]
    pub fn option(&mut self, parameter: Parameter, si: Option<f64>) -> &mut Self {
        if let Some(si) = si {
            self.number(parameter, si);
        }
        self
    }

    /// A list of `parameter` must have a number of elements in its range.
    #[inline]
    pub fn count(&mut self, parameter: Parameter, count: usize) -> &mut Self {
        let count = count as f64;
        if parameter.range().is_some_and(|range| !range.holds(count)) {
            self.push(ParameterError::new(parameter, Problem::OutOfRange(count)));
        }
        self
    }

    /// Element `index` of a list must be in the range of `parameter`.
    #[inline]
    pub fn element(&mut self, parameter: Parameter, index: usize, si: f64) -> &mut Self {
        if !parameter.holds_si(si) {
            self.0.push(parameter.outside(si).at(index));
        }
        self
    }

    /// `si` of `parameter` must compare with `than` of `other` as `wanted`; looked at only where both are in their ranges.
    #[inline]
    pub fn relation(
        &mut self,
        (parameter, si): (Parameter, f64),
        wanted: Relation,
        (other, than): (Parameter, f64),
    ) -> &mut Self {
        if !wanted.holds(si, than) {
            self.unrelated(parameter, si, wanted, other, than);
        }
        self
    }

    #[cold]
    fn unrelated(
        &mut self,
        parameter: Parameter,
        si: f64,
        wanted: Relation,
        other: Parameter,
        than: f64,
    ) {
        if self.0.iter().any(|error| error.parameter == parameter || error.parameter == other) {
            return;
        }
        let (value, than) = (parameter.unit().from_si(si), other.unit().from_si(than));
        let problem = Problem::Relation { value, wanted, other, than };
        self.0.push(ParameterError::new(parameter, problem));
    }

    #[cold]
    fn outside(&mut self, parameter: Parameter, si: f64) {
        self.0.push(parameter.outside(si));
    }

    /// Keeps `error`.
    #[cold]
    pub fn push(&mut self, error: ParameterError) -> &mut Self {
        self.0.push(error);
        self
    }

    /// Keeps all errors of another check.
    pub fn merge(&mut self, other: Result<(), ParameterErrors>) -> &mut Self {
        if let Err(errors) = other {
            self.0.extend_from_slice(errors.as_slice());
        }
        self
    }

    /// Keeps the parameters that another calculation refused; its other errors are ignored. A parameter that is kept already
    /// is not repeated.
    pub fn merge_numbers<T, E: Diagnose>(&mut self, other: &Result<T, E>) -> &mut Self {
        if let Err(error) = other {
            for number in error.numbers() {
                let known = |known: &ParameterError| known.parameter == number.parameter;
                if number.index.is_some() || !self.0.iter().any(known) {
                    self.0.push(*number);
                }
            }
        }
        self
    }

    /// Keeps the errors of a result and gives its value.
    #[inline]
    pub fn keep<T>(&mut self, result: Result<T, ParameterError>) -> Option<T> {
        result.map_err(|error| self.0.push(error)).ok()
    }

    /// Whether no error was found so far.
    #[inline]
    #[must_use]
    pub fn is_clean(&self) -> bool {
        self.0.is_empty()
    }

    /// Ends the check.
    ///
    /// # Errors
    /// [`ParameterErrors`] with all that was found.
    #[inline]
    pub fn finish(self) -> Result<(), ParameterErrors> {
        if self.0.is_empty() { Ok(()) } else { Err(self.into_errors()) }
    }

    /// The errors of a check that found some.
    #[cold]
    pub(crate) fn into_errors(self) -> ParameterErrors {
        ParameterErrors(self.0)
    }
}

/// A check that is written once and done in one of two ways: by [`Quick`], then by [`Check`] where something is wrong.
pub(crate) trait Checking: Sized {
    /// As [`Check::number`].
    fn number(&mut self, parameter: Parameter, si: f64) -> &mut Self;

    /// As [`Check::relation`].
    fn relation(
        &mut self,
        one: (Parameter, f64),
        wanted: Relation,
        other: (Parameter, f64),
    ) -> &mut Self;

    /// As `number`, of a number that is made of others: where one of these is wrong, it says nothing.
    fn derived(&mut self, parameter: Parameter, si: f64) -> &mut Self;

    /// As `relation` with [`Relation::AtLeast`], but for rounding: a share of `slack` less will do.
    fn at_least(&mut self, one: (Parameter, f64), other: (Parameter, f64), slack: f64)
    -> &mut Self;
}

impl Checking for Check {
    fn number(&mut self, parameter: Parameter, si: f64) -> &mut Self {
        Self::number(self, parameter, si)
    }

    fn relation(
        &mut self,
        one: (Parameter, f64),
        wanted: Relation,
        other: (Parameter, f64),
    ) -> &mut Self {
        Self::relation(self, one, wanted, other)
    }

    fn derived(&mut self, parameter: Parameter, si: f64) -> &mut Self {
        if self.is_clean() { Self::number(self, parameter, si) } else { self }
    }

    fn at_least(
        &mut self,
        one: (Parameter, f64),
        other: (Parameter, f64),
        slack: f64,
    ) -> &mut Self {
        let is_less = one.1 < other.1 * (1.0 - slack);
        if is_less { Self::relation(self, one, Relation::AtLeast, other) } else { self }
    }
}

/// A check that only finds whether anything is wrong: comparisons without branches, so that it is inlined, and done for
/// several rows of a column at once.
pub(crate) struct Quick(bool);

impl Quick {
    #[inline(always)]
    pub(crate) const fn new() -> Self {
        Self(true)
    }

    /// Whether nothing is wrong.
    #[inline(always)]
    pub(crate) const fn is_clean(&self) -> bool {
        self.0
    }
}

impl Checking for Quick {
    #[inline(always)]
    fn number(&mut self, parameter: Parameter, si: f64) -> &mut Self {
        self.0 &= parameter.holds_si(si);
        self
    }

    #[inline(always)]
    fn relation(
        &mut self,
        (_, si): (Parameter, f64),
        wanted: Relation,
        (_, than): (Parameter, f64),
    ) -> &mut Self {
        self.0 &= wanted.holds(si, than);
        self
    }

    #[inline(always)]
    fn derived(&mut self, parameter: Parameter, si: f64) -> &mut Self {
        self.number(parameter, si)
    }

    #[inline(always)]
    fn at_least(
        &mut self,
        (_, si): (Parameter, f64),
        (_, than): (Parameter, f64),
        slack: f64,
    ) -> &mut Self {
        let is_less = si < than * (1.0 - slack);
        self.0 &= !is_less;
        self
    }
}

/// Numbers whose check is written once and done in the two ways.
pub(crate) trait Checked {
    /// Checks all numbers.
    fn check(&self, check: &mut impl Checking);

    /// Whether all is well, or all that is wrong.
    #[inline]
    fn checked(&self) -> Result<(), ParameterErrors> {
        if self.is_in_range() { Ok(()) } else { Err(self.errors()) }
    }

    /// Whether nothing is wrong.
    #[inline(always)]
    fn is_in_range(&self) -> bool {
        let mut quick = Quick::new();
        self.check(&mut quick);
        quick.is_clean()
    }

    /// All that is wrong.
    #[cold]
    fn errors(&self) -> ParameterErrors {
        let mut check = Check::new();
        self.check(&mut check);
        check.into_errors()
    }
}

#[cfg(test)]
mod tests {
    use std::string::ToString;

    use rstest::rstest;

    use super::*;
    use crate::fault::Fault;

    fn sentence(parameter: Parameter, problem: Problem) -> String {
        ParameterError::new(parameter, problem).to_string()
    }

    /// Each form of sentence, of a quantity, a count, a share and a list.
    #[rstest]
    #[case(
        Parameter::Cavities,
        Problem::OutOfRange(0.0),
        "the number of cavities is 0; it must be from 1 to 1000000"
    )]
    #[case(
        Parameter::Cavities,
        Problem::NotWhole(1.5),
        "the number of cavities is 1.5; it must be a whole number"
    )]
    #[case(Parameter::Cavities, Problem::Missing, "the number of cavities is missing")]
    #[case(Parameter::CavityVolume, Problem::OutOfRange(-10.0), "the cavity volume is -10 mL; it must be from 1e-9 to 1e15 mL")]
    #[case(
        Parameter::Voids,
        Problem::OutOfRange(1.5),
        "the void fraction is 1.5; it must be from 0 to below 1"
    )]
    #[case(
        Parameter::HeatedFrom,
        Problem::NotFinite(f64::NAN),
        "the temperature before heating is NaN; it must be a finite number"
    )]
    #[case(
        Parameter::Points,
        Problem::OutOfRange(1.0),
        "the list of points has 1 entry; it must have from 2 to 1000"
    )]
    #[case(
        Parameter::Weights,
        Problem::OutOfRange(0.0),
        "the list of weights has 0 entries; it must have from 2 to 100000"
    )]
    #[case(Parameter::Doses, Problem::WrongType { wanted: "a list of rows of numbers" }, "the list of doses must be a list of rows of numbers")]
    #[case(
        Parameter::LongestBurst,
        Problem::Relation { value: 5.0, wanted: Relation::AtLeast, other: Parameter::BurstStep, than: 10.0 },
        "the longest burst is 5 s; it must be at least the shortest burst (10 s)"
    )]
    #[case(
        Parameter::HookVolume,
        Problem::NeededBy(Parameter::HookMass),
        "the hook volume is missing; the hook mass needs it"
    )]
    #[case(
        Parameter::AbsolutePressure,
        Problem::Excludes(Parameter::GaugeVacuum),
        "the absolute pressure cannot be given together with the gauge vacuum"
    )]
    #[case(
        Parameter::Form,
        Problem::UnknownWord(Found::new("scoped")),
        "\"scoped\" is not a word for the form of the loading"
    )]
    fn sentences(#[case] parameter: Parameter, #[case] problem: Problem, #[case] expected: &str) {
        assert_eq!(sentence(parameter, problem), expected);
    }

    #[test]
    fn a_word_is_met_with_all_that_are_known() {
        let error = ParameterError::new(Parameter::Form, Problem::UnknownWord(Found::new("x")));
        let known = Parameter::Form.words().join(", ");
        assert_eq!(error.help(), std::format!("Known: {known}."));
        assert_eq!(error.parameter(), Some(Parameter::Form));
        assert_eq!(Parameter::Form.to_string(), "form");
        assert_eq!(std::format!("{:?}", Found::new("x\n\u{e9}")), "\"x\u{e9}\"");
    }

    #[test]
    fn a_list_of_the_wrong_length_is_looked_at() {
        let error = ParameterError::new(Parameter::Points, Problem::OutOfRange(1.0));
        assert_eq!(error.help(), "Check the list.");
    }

    #[test]
    fn errors_are_sentences_one_after_the_other() {
        let mut check = Check::new();
        check.number(Parameter::Cavities, 0.0).number(Parameter::Voids, 1.5);
        let text = check.finish().unwrap_err().to_string();
        let one = sentence(Parameter::Cavities, Problem::OutOfRange(0.0));
        let other = sentence(Parameter::Voids, Problem::OutOfRange(1.5));
        assert_eq!(text, std::format!("{one}. {other}"));
    }

    /// Of a list each element that is wrong, of any other parameter only one error.
    #[test]
    fn errors_of_another_calculation_are_kept_once() {
        let refused = |index: Option<usize>| {
            let error = Parameter::PartMass.outside(-1.0);
            Err::<(), _>(ParameterErrors::from(index.map_or(error, |index| error.at(index))))
        };
        let mut check = Check::new();
        for index in [None, None, Some(1), Some(2)] {
            check.merge_numbers(&refused(index));
        }
        let indices: Vec<_> = check.into_errors().0.iter().map(|error| error.index).collect();
        assert_eq!(indices, [None, Some(1), Some(2)]);
    }

    /// A number is not compared with one that is wrong by itself.
    #[test]
    fn what_is_wrong_is_not_compared() {
        let relate = |sprue: f64, shot: f64| {
            let mut check = Check::new();
            check.number(Parameter::SprueMass, sprue).number(Parameter::ShotMass, shot).relation(
                (Parameter::SprueMass, sprue),
                Relation::AtMost,
                (Parameter::ShotMass, shot),
            );
            check.into_errors().0.iter().map(|error| error.parameter).collect::<Vec<_>>()
        };
        assert_eq!(relate(1.0, 2.0), []);
        assert_eq!(relate(2.0, 1.0), [Parameter::SprueMass]);
        assert_eq!(relate(1.0, -1.0), [Parameter::ShotMass]);
        assert_eq!(relate(1e300, 1.0), [Parameter::SprueMass]);
    }

    #[test]
    fn both_checks_know_whether_anything_is_wrong() {
        fn ask(check: &mut impl Checking, voids: f64, feed: f64, mass: f64) {
            check
                .number(Parameter::Voids, voids)
                .derived(Parameter::Feed, feed)
                .at_least((Parameter::MixMass, mass), (Parameter::BaseMass, 1.0), 1e-12)
                .relation((Parameter::MixMass, mass), Relation::AtMost, (Parameter::ShotMass, 2.0));
        }
        let found = |voids, feed, mass| {
            let (mut all, mut quick) = (Check::new(), Quick::new());
            ask(&mut all, voids, feed, mass);
            ask(&mut quick, voids, feed, mass);
            assert_eq!(all.is_clean(), quick.is_clean(), "{voids} {feed} {mass}");
            let errors = all.into_errors().0;
            errors.iter().map(|error| error.parameter).collect::<Vec<_>>()
        };
        assert_eq!(found(0.5, 0.5, 1.5), []);
        assert_eq!(found(1.5, 0.5, 1.5), [Parameter::Voids]);
        assert_eq!(found(0.5, 1.5, 1.5), [Parameter::Feed]);
        // What is made of a wrong number is not looked at.
        assert_eq!(found(1.5, 1.5, 1.5), [Parameter::Voids]);
        assert_eq!(found(0.5, 0.5, 2.5), [Parameter::MixMass]);
        assert_eq!(found(0.5, 0.5, 0.5), [Parameter::MixMass]);
        // Rounding is no error.
        assert_eq!(found(0.5, 0.5, 1.0 - 1e-13), []);
        assert_eq!(found(0.5, 0.5, 1.0 - 1e-11), [Parameter::MixMass]);
        assert_eq!(found(f64::NAN, 0.5, 1.5), [Parameter::Voids]);
        assert_eq!(found(0.5, f64::NAN, 1.5), [Parameter::Feed]);
    }

    #[test]
    fn an_element_of_a_list_has_its_place() {
        let error = Parameter::PartMass.outside(-0.001).at(2);
        let expected = "entry 3 of the list: the part mass is -1 g; it must be from 0 to 1e15 g";
        assert_eq!(error.to_string(), expected);
    }

    /// Every label is in the singular, so that "is" and "it" fit, and is not a whole sentence.
    #[test]
    fn every_sentence_reads() {
        for &parameter in Parameter::ALL {
            let text = sentence(parameter, Problem::Missing);
            let label = text.strip_prefix("the ").unwrap().strip_suffix(" is missing").unwrap();
            let ends = [" of ", " that ", " as ", " to ", " between ", " again", " before"];
            let head = ends.iter().fold(label, |head, end| head.split(end).next().unwrap());
            assert!(!head.ends_with('s') || head.ends_with("ss"), "{parameter}: {text}");
            assert!(!text.contains("the the ") && !text.contains("the a "), "{text}");
            let fault = Fault::at("", &ParameterError::new(parameter, Problem::OutOfRange(-1e300)));
            assert!(fault.message.starts_with("The ") && fault.message.ends_with('.'), "{fault}");
            assert!(!fault.message.contains("..") && !fault.help.is_empty(), "{fault}");
            let units = fault.message.matches(parameter.unit().symbol()).count();
            assert!(
                parameter.is_list()
                    || units > 0
                    || ["1", "any", "none"].contains(&parameter.unit().symbol()),
                "{fault}"
            );
        }
    }
}
