//! What is wrong, where, and what would do: the one shape of an error in every door.

use alloc::borrow::Cow;
use alloc::string::{String, ToString};
use alloc::vec::Vec;
use core::fmt;

/// An error that can be reported as a [`Fault`].
///
/// Every error enum of the library implements it, so that a code and a way out stand
/// beside each message.
pub trait Diagnose: core::error::Error {
    /// Stable code in kebab case, unique over the whole library, e.g. `"salt-out-of-reach"`.
    fn code(&self) -> &'static str;

    /// What would do instead, as a full sentence for the person at the bench.
    fn help(&self) -> Cow<'static, str>;
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
    /// What was found.
    pub message: String,
    /// What would do.
    pub help: String,
}

impl Fault {
    /// The fault that `error` is at `path`.
    #[must_use]
    pub fn at(path: impl Into<String>, error: &dyn Diagnose) -> Self {
        Self {
            code: Cow::Borrowed(error.code()),
            path: path.into(),
            message: as_sentence(&error.to_string()),
            help: error.help().into_owned(),
        }
    }
}

/// `text` with a capital first letter: some messages begin with what they are about.
fn as_sentence(text: &str) -> String {
    let mut letters = text.chars();
    let first = letters.next().into_iter().flat_map(char::to_uppercase);
    first.chain(letters).collect()
}

impl fmt::Display for Fault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if !self.path.is_empty() {
            write!(f, "{}: ", self.path)?;
        }
        write!(f, "{} {} [{}]", self.message, self.help, self.code)
    }
}

/// One or more faults of one input, in the order in which they were found.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Faults {
    first: Fault,
    rest: Vec<Fault>,
}

impl Faults {
    /// The faults in `found`, or `None` where it holds none.
    #[must_use]
    pub fn from_vec(found: Vec<Fault>) -> Option<Self> {
        let mut found = found.into_iter();
        let first = found.next()?;
        Some(Self { first, rest: found.collect() })
    }

    /// All faults, first found first.
    pub fn iter(&self) -> impl Iterator<Item = &Fault> {
        core::iter::once(&self.first).chain(&self.rest)
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
