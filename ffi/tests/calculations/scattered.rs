//! Columns in memory as no host is likely to have them, and the results of the table as columns have them.

use pourwright::table::{Value, ValueKind};
use pourwright_ffi::*;

/// Nothing, in a column of results.
pub(crate) const NAN: u64 = 0x7ff8_0000_0000_0000;

/// A column in bytes, at an odd address and with a stride of its own.
pub(crate) struct Scattered {
    bytes: Vec<u8>,
    first: usize,
    stride: isize,
}

impl Scattered {
    pub(crate) fn new(values: &[f64], stride: isize) -> Self {
        let step = stride.unsigned_abs();
        let first = if stride < 0 { 1 + step * (values.len().saturating_sub(1)) } else { 1 };
        let mut bytes = vec![0xa5; 16 + step * values.len()];
        for (row, value) in values.iter().enumerate() {
            let at = first.wrapping_add_signed(stride * row as isize);
            bytes[at..at + 8].copy_from_slice(&value.to_ne_bytes());
        }
        Self { bytes, first, stride }
    }

    pub(crate) fn input(&self) -> pour_column {
        pour_column { start: self.bytes[self.first..].as_ptr().cast(), stride: self.stride }
    }

    pub(crate) fn output(&mut self) -> pour_result_column {
        pour_result_column {
            start: self.bytes[self.first..].as_mut_ptr().cast(),
            stride: self.stride,
        }
    }

    pub(crate) fn get(&self, row: usize) -> f64 {
        let at = self.first.wrapping_add_signed(self.stride * row as isize);
        f64::from_ne_bytes(self.bytes[at..at + 8].try_into().unwrap())
    }
}

/// The number of a value in a column.
fn plain(value: &Value) -> f64 {
    match value {
        Value::Number(number) => *number,
        Value::Absent => f64::from_bits(NAN),
        other => panic!("{other:?} has no column"),
    }
}

/// The number of a value in a column of results; words are counted from 1.
pub(crate) fn place_of(words: &[&str], value: &Value) -> f64 {
    match value {
        Value::Word(word) => (words.iter().position(|other| other == word).unwrap() + 1) as f64,
        other => plain(other),
    }
}

/// The words of a result.
pub(crate) fn words_of(kind: ValueKind) -> &'static [&'static str] {
    match kind {
        ValueKind::Word { type_name: "bench::Tool" } => pourwright::bench::Tool::WORDS,
        ValueKind::Word { type_name: "process::sink::Motion" } => {
            pourwright::process::sink::Motion::WORDS
        }
        _ => &[],
    }
}
