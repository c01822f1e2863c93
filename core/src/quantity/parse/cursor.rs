//! A place in a text, and the errors that quote the text.

use crate::quantity::error::quoted;
use crate::quantity::{Amount, AmountError};
use alloc::string::String;
use alloc::vec::Vec;

/// A place in a text.
pub(crate) struct Cursor<'a> {
    pub(super) text: &'a str,
    pub(super) at: usize,
}

impl<'a> Cursor<'a> {
    /// The head of `text`, its outer space taken off.
    pub(crate) fn new(text: &'a str) -> Result<Self, AmountError> {
        let limit = Amount::LONGEST;
        if text.len() > limit {
            return Err(AmountError::TooLong { found: text.len(), limit });
        }
        let text = text.trim();
        if text.is_empty() {
            return Err(AmountError::Empty);
        }
        Ok(Self { text, at: 0 })
    }

    pub(crate) fn rest(&self) -> &'a str {
        self.text.get(self.at..).unwrap_or("")
    }

    pub(super) fn since(&self, start: usize) -> &'a str {
        self.text.get(start..self.at).unwrap_or("")
    }

    fn bytes(&self) -> &'a [u8] {
        self.text.as_bytes().get(self.at..).unwrap_or_default()
    }

    pub(super) fn peek(&self) -> Option<char> {
        // Nearly all characters of amounts are one byte, which is not searched for its end.
        match self.bytes().first() {
            Some(byte) if byte.is_ascii() => Some(char::from(*byte)),
            _ => self.rest().chars().next(),
        }
    }

    pub(super) fn peek_second(&self) -> Option<char> {
        self.rest().chars().nth(1)
    }

    pub(super) fn second_is_digit(&self) -> bool {
        match self.bytes() {
            [first, second, ..] if first.is_ascii() => second.is_ascii_digit(),
            _ => self.peek_second().is_some_and(|c| c.is_ascii_digit()),
        }
    }

    pub(super) fn advance(&mut self, bytes: usize) {
        self.at = self.at.saturating_add(bytes);
    }

    /// Steps over the next character if it is one of `wanted`.
    pub(super) fn eat(&mut self, wanted: &[char]) -> bool {
        match self.peek() {
            Some(c) if wanted.contains(&c) => {
                self.advance(c.len_utf8());
                true
            }
            _ => false,
        }
    }

    pub(super) fn take_while(&mut self, wanted: impl Fn(char) -> bool) -> &'a str {
        let rest = self.rest();
        let end = rest.find(|c| !wanted(c)).unwrap_or(rest.len());
        self.advance(end);
        rest.get(..end).unwrap_or("")
    }

    pub(super) fn digits(&mut self) -> &'a str {
        let start = self.at;
        self.advance(self.bytes().iter().take_while(|byte| byte.is_ascii_digit()).count());
        self.since(start)
    }

    /// Steps over white space.
    pub(crate) fn skip_space(&mut self) {
        while let Some(space) = self.peek().filter(|c| c.is_whitespace()) {
            self.advance(space.len_utf8());
        }
    }

    pub(super) fn no_number(&self) -> AmountError {
        AmountError::NoNumber { text: quoted(self.text) }
    }

    pub(super) fn number_out_of_range(&self) -> AmountError {
        AmountError::NumberOutOfRange { text: quoted(self.text) }
    }

    pub(super) fn several(&self) -> AmountError {
        AmountError::SeveralAmounts { text: quoted(self.text) }
    }

    pub(super) fn ambiguous(&self, readings: impl Into<Vec<String>>) -> AmountError {
        AmountError::Ambiguous { text: quoted(self.text), readings: readings.into() }
    }

    pub(super) fn unknown_basis(&self) -> AmountError {
        AmountError::UnknownBasis { text: quoted(self.text) }
    }

    pub(super) fn malformed_unit(&self, why: &'static str) -> AmountError {
        AmountError::MalformedUnit { text: quoted(self.text), why }
    }
}
