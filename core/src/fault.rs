//! Faults: what is wrong, where, and what would fix it. One shape at every door.

use alloc::borrow::Cow;
use alloc::string::{String, ToString};
use alloc::vec::Vec;
use core::fmt;

#[cfg(feature = "document")]
use crate::codes::code;
use crate::codes::{Registered, Row};
use crate::parameter::{Parameter, ParameterError};

/// An error that can be reported as a [`Fault`].
///
/// Every error enum of the library implements it, so that each message has
/// a code and a way out.
pub trait Diagnose: core::error::Error + Registered {
    /// Stable code in kebab case, unique over the whole library, e.g. `"salt-out-of-reach"`.
    fn code(&self) -> &'static str;

    /// Its codes, each once, without those of errors in it; for the list of all codes.
    #[doc(hidden)]
    #[must_use]
    fn codes() -> &'static [Row]
    where
        Self: Sized,
    {
        &[]
    }

    /// The fix, as a full sentence for the person at the bench.
    fn help(&self) -> Cow<'static, str>;

    /// All parameters that are wrong by themselves, where the error is about such.
    fn numbers(&self) -> &[ParameterError] {
        &[]
    }

    /// The parameter that the error is about, where one can be named.
    fn parameter(&self) -> Option<Parameter> {
        None
    }
}

/// One thing that is wrong with an input.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "document", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Fault {
    /// Stable code in kebab case.
    pub code: Cow<'static, str>,
    /// Where it is: a JSON Pointer (RFC 6901) into the document, empty for the whole input.
    pub path: String,
    /// The finding.
    pub message: String,
    /// The fix.
    pub help: String,
}

impl Fault {
    /// The fault that `error` is at `path`.
    #[must_use]
    pub fn at(path: impl Into<String>, error: &dyn Diagnose) -> Self {
        Self {
            code: Cow::Borrowed(error.code()),
            path: path.into(),
            message: sentence(error.to_string()),
            help: sentence(error.help().into_owned()),
        }
    }
}

/// `text` as a sentence: with a capital letter and an end.
fn sentence(text: String) -> String {
    let mut letters = text.chars();
    let first = letters.next().map(char::to_uppercase);
    let mut sentence: String = first.into_iter().flatten().chain(letters).collect();
    if !sentence.ends_with(['.', '?', '!']) {
        sentence.push('.');
    }
    sentence
}

impl fmt::Display for Fault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if !self.path.is_empty() {
            write!(f, "{}: ", self.path)?;
        }
        write!(f, "{} {} [{}]", self.message, self.help, self.code)
    }
}

/// Maximum number of faults that are kept of one document: more than a person reads at once, and a bound on the memory that a
/// document takes which is nothing but faults.
#[cfg(feature = "document")]
pub(crate) const MOST_FAULTS: usize = 1000;

/// Whether `found` is so many faults that reading stops.
#[cfg(feature = "document")]
pub(crate) fn is_enough(found: &[Fault]) -> bool {
    found.len() > MOST_FAULTS
}

/// `found`, or its first [`MOST_FAULTS`] and a last one which says that there are more.
#[cfg(feature = "document")]
fn bounded(mut found: Vec<Fault>) -> Vec<Fault> {
    if is_enough(&found) {
        found.truncate(MOST_FAULTS);
        found.push(Fault {
            code: code!("more-faults").into(),
            path: String::new(),
            message: alloc::format!("There are more faults than these {MOST_FAULTS}."),
            help: "Correct these, then read the document again.".into(),
        });
    }
    found
}

/// One or more faults of one input, in the order in which they were found.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Faults {
    first: Fault,
    rest: Vec<Fault>,
}

impl Faults {
    /// The faults in `found`, or `None` where it holds none. Of more than 1000, the first 1000 and a fault `more-faults`.
    #[must_use]
    pub fn from_vec(found: Vec<Fault>) -> Option<Self> {
        #[cfg(feature = "document")]
        let found = bounded(found);
        let mut found = found.into_iter();
        let first = found.next()?;
        Some(Self { first, rest: found.collect() })
    }

    /// The value read, or all faults that were `found` on the way.
    #[cfg(feature = "document")]
    pub(crate) fn or<T>(found: Vec<Fault>, read: Option<T>) -> Result<T, Self> {
        match read {
            Some(read) if found.is_empty() => Ok(read),
            _ => Err(Self::why(found)),
        }
    }

    /// Why nothing was read. A missing reason would be a gap in the library; it is reported all the same.
    #[cfg(feature = "document")]
    pub(crate) fn why(found: Vec<Fault>) -> Self {
        Self::from_vec(found).unwrap_or_else(|| {
            Self::from(Fault {
                code: code!("unreadable").into(),
                path: String::new(),
                message: "The document could not be read.".into(),
                help: "Compare it with the JSON Schema.".into(),
            })
        })
    }

    /// The same faults, of a document that is at `parent` in another.
    #[cfg(feature = "document")]
    pub(crate) fn below(mut self, parent: &str) -> Self {
        for fault in core::iter::once(&mut self.first).chain(&mut self.rest) {
            fault.path.insert_str(0, parent);
        }
        self
    }

    /// All faults, first found first.
    pub fn iter(&self) -> impl Iterator<Item = &Fault> {
        self.into_iter()
    }

    /// How many faults there are: at least one.
    #[must_use]
    pub fn count(&self) -> usize {
        self.rest.len().saturating_add(1)
    }

    /// All faults as a list.
    #[must_use]
    pub fn into_vec(self) -> Vec<Fault> {
        let mut all = Vec::with_capacity(self.count());
        all.push(self.first);
        all.extend(self.rest);
        all
    }
}

/// All faults, first found first:
///
/// ```
/// use pourwright::fault::{Fault, Faults};
/// use pourwright::parameter::Parameter;
///
/// let faults = Faults::from(Fault::at("/voids", &Parameter::Voids.check_si(1.5).unwrap_err()));
/// for fault in &faults {
///     assert_eq!((&*fault.code, &*fault.path), ("out-of-range", "/voids"));
/// }
/// ```
impl<'a> IntoIterator for &'a Faults {
    type Item = &'a Fault;
    type IntoIter = core::iter::Chain<core::iter::Once<&'a Fault>, core::slice::Iter<'a, Fault>>;

    fn into_iter(self) -> Self::IntoIter {
        core::iter::once(&self.first).chain(&self.rest)
    }
}

impl From<Fault> for Faults {
    fn from(fault: Fault) -> Self {
        Self { first: fault, rest: Vec::new() }
    }
}

impl fmt::Display for Faults {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}", self.first)?;
        for fault in &self.rest {
            write!(f, "\n{fault}")?;
        }
        Ok(())
    }
}

impl core::error::Error for Faults {}

#[cfg(test)]
mod tests {
    use super::*;

    fn no_cavity() -> ParameterError {
        Parameter::Cavities.check_si(0.0).unwrap_err()
    }

    #[test]
    fn a_fault_is_reported_in_sentences() {
        let fault = Fault::at("/molds/worm", &no_cavity());
        assert_eq!(fault.message, "The number of cavities is 0; it must be from 1 to 1000000.");
        let text = fault.to_string();
        assert!(text.starts_with("/molds/worm: The number of cavities is 0; "), "{text}");
        assert!(text.ends_with("[out-of-range]"), "{text}");
    }

    #[test]
    fn faults_keep_their_order() {
        let fault = |path: &str| Fault::at(path, &no_cavity());
        let faults = Faults::from_vec(alloc::vec![fault("/a"), fault("/b")]).unwrap();
        assert_eq!((faults.count(), Faults::from_vec(Vec::new())), (2, None));
        let paths: Vec<String> = faults.into_vec().into_iter().map(|fault| fault.path).collect();
        assert_eq!(paths, ["/a", "/b"]);
    }

    #[cfg(feature = "document")]
    #[test]
    fn more_faults_than_a_person_reads_are_one() {
        let fault = |number: usize| Fault::at(alloc::format!("/{number}"), &no_cavity());
        let of = |count: usize| Faults::from_vec((0..count).map(fault).collect()).unwrap();
        assert_eq!(of(MOST_FAULTS).into_vec().last().unwrap().path, "/999");
        for faults in [of(MOST_FAULTS + 1), of(3 * MOST_FAULTS)] {
            let found = faults.clone().into_vec();
            assert_eq!((found.len(), &*found[999].path), (1001, "/999"));
            assert_eq!(found[1000].code, "more-faults");
            assert_eq!(Faults::from_vec(found), Some(faults));
        }
    }
}
