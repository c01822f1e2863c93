//! Choices from a seed.

use serde_json::Value;

/// Another text of a text, of at most so many bytes.
pub type OtherText<'a> = &'a mut dyn FnMut(&mut Vec<u8>, usize);

/// Random choices, the same for the same seed.
pub struct Chance<'a> {
    state: u64,
    other_text: OtherText<'a>,
}

impl<'a> Chance<'a> {
    /// Choices from `seed`; texts are changed by `other_text`, which a fuzzer has of its own.
    pub fn new(seed: u64, other_text: OtherText<'a>) -> Self {
        Self { state: seed, other_text }
    }

    /// Any number (SplitMix64: Steele, Lea and Flood 2014).
    pub fn number(&mut self) -> u64 {
        self.state = self.state.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.state;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }

    /// One of 0 to `count` - 1.
    pub fn below(&mut self, count: usize) -> usize {
        (self.number() % count.max(1) as u64) as usize
    }

    /// Whether something happens that does `in_ten` times of ten.
    pub fn happens(&mut self, in_ten: u64) -> bool {
        self.number() % 10 < in_ten
    }

    /// One of these.
    pub fn one_of<'b, T>(&mut self, all: &'b [T]) -> &'b T {
        &all[self.below(all.len())]
    }

    /// So many random numbers.
    pub fn numbers(&mut self, count: usize) -> Vec<u32> {
        (0..count).map(|_| self.number() as u32).collect()
    }

    /// Mostly a number as the bench knows them, else one at an edge or any at all.
    pub fn quantity(&mut self) -> f64 {
        const EDGES: [f64; 14] = [
            0.0,
            -0.0,
            -1.0,
            1.0,
            f64::NAN,
            f64::INFINITY,
            f64::NEG_INFINITY,
            1e-300,
            1e15,
            1e300,
            f64::MIN_POSITIVE,
            5e-324,
            f64::MAX,
            -f64::MAX,
        ];
        match self.below(10) {
            0..=5 => self.below(65_536) as f64 / 64.0,
            6 => self.below(1000) as f64 / 1000.0,
            7 | 8 => *self.one_of(&EDGES),
            _ => f64::from_bits(self.number()),
        }
    }

    /// Changes a text.
    pub fn change_text(&mut self, text: &mut Vec<u8>) {
        let most = text.len() + 64;
        (self.other_text)(text, most);
    }
}

/// A number as a case has it: JSON has neither NaN nor infinities, so that these are texts.
#[must_use]
pub fn of_number(number: f64) -> Value {
    if number.is_finite() {
        number.into()
    } else if number.is_nan() {
        "NaN".into()
    } else {
        number.to_string().into()
    }
}

/// The number that a case has.
#[must_use]
pub fn to_number(value: &Value) -> Option<f64> {
    match value {
        Value::Number(number) => number.as_f64(),
        Value::String(text) if matches!(text.as_str(), "NaN" | "inf" | "-inf") => text.parse().ok(),
        _ => None,
    }
}

/// Parts of documents that are easily misread.
const TOKENS: [&str; 16] = [
    "\"",
    "{",
    "}",
    "[",
    "]",
    ",",
    ":",
    "null",
    "-1",
    "1e999",
    "0",
    "\"6 oz\"",
    "\"\\u0000\"",
    "\u{fffd}",
    " ± ",
    "\"1e300 cup\"",
];

/// Another text, where no fuzzer makes it: one to four stretches of it are replaced.
pub fn splice(seed: u64) -> impl FnMut(&mut Vec<u8>, usize) {
    let mut changes = 0;
    move |text, most| {
        changes += 1;
        let mut none = |_: &mut Vec<u8>, _: usize| {};
        let mut chance = Chance::new(seed ^ (changes << 32), &mut none);
        for _ in 0..=chance.below(4) {
            let at = chance.below(text.len() + 1);
            let end = (at + chance.below(8)).min(text.len());
            let bytes: Vec<u8> = if chance.happens(7) {
                chance.one_of(&TOKENS).bytes().collect()
            } else {
                (0..chance.below(12)).map(|_| chance.number() as u8).collect()
            };
            text.splice(at..end, bytes);
        }
        text.truncate(most);
    }
}
