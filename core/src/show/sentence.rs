//! Sentences with quantities that are read on two scales.

use alloc::string::String;
use alloc::vec::Vec;
use core::cell::Cell;

use super::{Showable, Shown, TextScale};
use crate::quantity::System;

/// A sentence on the scale of the book's measures.
#[derive(Debug, Clone, Default, PartialEq)]
pub(crate) struct Sentence {
    pub(crate) text: String,
    /// The same on the other scale, where that is not the same.
    pub(crate) other: Option<String>,
}

impl From<String> for Sentence {
    fn from(text: String) -> Self {
        Self { text, other: None }
    }
}

impl Sentence {
    /// Writes a sentence on the scale of `system`, and again on the other scale if one of its quantities has another text
    /// there.
    pub(crate) fn of(system: System, write: impl Fn(&Quantities) -> String) -> Self {
        let other = TextScale::of(system).other();
        let own = Quantities { other, is_other: false, differ: Cell::new(false) };
        let text = write(&own);
        if !own.differ.get() {
            return text.into();
        }
        let other = write(&Quantities { is_other: true, ..own });
        Self { text, other: Some(other) }
    }
}

/// The texts of quantities while a sentence is written.
pub(crate) struct Quantities {
    other: TextScale,
    is_other: bool,
    differ: Cell<bool>,
}

impl Quantities {
    pub(crate) fn text<'q, Q: Showable>(&self, quantity: &'q Shown<Q>) -> &'q str {
        let other = quantity.on(self.other);
        if self.is_other {
            return other;
        }
        self.differ.set(self.differ.get() || other != quantity.text);
        &quantity.text
    }
}

/// Sentences of a list, each text for itself.
#[derive(Default)]
pub(crate) struct Sentences {
    pub(crate) texts: Vec<String>,
    /// The same on the other scale; empty where all are the same there.
    pub(crate) others: Vec<String>,
}

impl FromIterator<Sentence> for Sentences {
    fn from_iter<I: IntoIterator<Item = Sentence>>(list: I) -> Self {
        let mut all = Self::default();
        for Sentence { text, other } in list {
            if let Some(other) = other {
                if all.others.is_empty() {
                    all.others.clone_from(&all.texts);
                }
                all.others.push(other);
            } else if !all.others.is_empty() {
                all.others.push(text.clone());
            }
            all.texts.push(text);
        }
        all
    }
}

#[cfg(test)]
mod tests {
    use alloc::format;
    use alloc::string::ToString;

    use super::*;
    use crate::quantity::{Measurable, ThermodynamicTemperature, Time, Volume};
    use crate::show::text;

    const US: System = System::UsCustomary;

    /// 443.15 K are 170 °C and 338 °F; 305 mL are 1.29 US cups.
    #[test]
    fn a_sentence_is_written_on_both_scales() {
        let at = ThermodynamicTemperature::from_si(443.15);
        let level = Volume::from_si(305e-6);
        let written = |system| {
            let (at, level) = (text::temperature(at, system), text::volume(level, system));
            Sentence::of(system, |on| format!("{} to {}", on.text(&level), on.text(&at)))
        };
        let (us, metric) = ("1 1/4 cup to 338 °F".to_string(), "305 mL to 170 °C".to_string());
        assert_eq!(written(US), Sentence { text: us.clone(), other: Some(metric.clone()) });
        assert_eq!(written(System::Metric), Sentence { text: metric, other: Some(us) });
    }

    #[test]
    fn a_sentence_that_reads_the_same_has_no_other() {
        let time = text::time(Time::from_si(45.0));
        let written = Sentence::of(US, |on| format!("{} in the oven", on.text(&time)));
        assert_eq!(written, Sentence::from("45 s in the oven".to_string()));
        // An eighth of a cup is far from 40 mL, so that a bench in cups reads milliliters too.
        let level = text::volume(Volume::from_si(40e-6), US);
        let written = Sentence::of(US, |on| on.text(&level).to_string());
        assert_eq!(written, Sentence::from("40 mL".to_string()));
    }

    #[test]
    fn a_list_has_all_sentences_on_the_other_scale_or_none() {
        let plain = |text: &str| Sentence::from(text.to_string());
        let hot = Sentence { other: Some("170 °C".to_string()), ..plain("338 °F") };
        let of = |list: [Sentence; 3]| Sentences::from_iter(list);
        let all = of([plain("Stir."), hot, plain("Read.")]);
        assert_eq!(all.texts, ["Stir.", "338 °F", "Read."]);
        assert_eq!(all.others, ["Stir.", "170 °C", "Read."]);
        let all = of([plain("Stir."), plain("Wait."), plain("Read.")]);
        assert_eq!((all.texts.len(), all.others.len()), (3, 0));
    }
}
