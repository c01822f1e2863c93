//! Reading amounts and units as people write them.
//!
//! One pass over a text of bounded length. What can be read two ways is refused with the readings.

mod cursor;
mod number;
mod spelling;
mod unit;

pub(super) use cursor::Cursor;
pub(super) use number::number;

use super::amount::without_basis;
use super::error::quoted;
use super::symbol::Symbol;
use super::{Amount, AmountError, Basis, By, Rational, Share, Unit};
use alloc::vec::Vec;
use spelling::{Found, look_up};
use unit::unit_product;

/// Reads an amount: a number and a unit, and for a per cent its basis.
pub(super) fn amount(text: &str) -> Result<Amount, AmountError> {
    let mut cursor = Cursor::new(text)?;
    let value = number(&mut cursor)?;
    cursor.skip_space();
    if cursor.rest().is_empty() {
        return Err(AmountError::NoUnit { text: quoted(cursor.text) });
    }
    let (unit, basis) = unit_and_basis(&mut cursor).map_err(|error| error.times(value))?;
    assemble(cursor.text, value, unit, basis)
}

/// Reads a unit alone.
pub(super) fn whole_unit(text: &str) -> Result<Unit, AmountError> {
    unit_product(&mut Cursor::new(text)?)
}

/// Reads a unit alone, or a per cent with its basis: `% of base`.
#[cfg(feature = "document")]
pub(super) fn measure(text: &str) -> Result<(Unit, Option<Basis>), AmountError> {
    unit_and_basis(&mut Cursor::new(text)?)
}

/// Reads a number, never negative, and the unit behind it, where there is one.
pub(super) fn number_and_unit(text: &str) -> Result<(Rational, Option<Unit>), AmountError> {
    let mut cursor = Cursor::new(text)?;
    let value = number(&mut cursor)?;
    if value.is_negative() {
        return Err(AmountError::Negative { text: quoted(text) });
    }
    cursor.skip_space();
    let unit = if cursor.rest().is_empty() { None } else { Some(unit_product(&mut cursor)?) };
    Ok((value, unit))
}

/// The amount of a number and its unit in text; `whole` is what a message quotes.
pub(super) fn amount_of(value: Rational, unit: &str, whole: &str) -> Result<Amount, AmountError> {
    let mut cursor = Cursor::new(unit).map_err(|error| match error {
        AmountError::Empty => AmountError::NoUnit { text: quoted(whole) },
        other => other,
    })?;
    let (unit, basis) = unit_and_basis(&mut cursor)?;
    assemble(whole, value, unit, basis)
}

/// The amount of these parts; `text` is what they were read from.
fn assemble(
    text: &str,
    value: Rational,
    unit: Unit,
    basis: Option<Basis>,
) -> Result<Amount, AmountError> {
    match basis {
        Some(basis) => Amount::share(value, unit, basis),
        None if unit.is_share() => Err(without_basis(text)),
        None => Amount::new(value, unit),
    }
}

/// Between a per cent and its basis.
const OF: &str = " of ";

/// Reads a unit, or a per cent and its basis.
fn unit_and_basis(cursor: &mut Cursor<'_>) -> Result<(Unit, Option<Basis>), AmountError> {
    let whole = cursor.rest();
    // Most units are a short word: looking at each place is faster than to prepare a search.
    let of = whole.as_bytes().windows(OF.len()).position(|place| place == OF.as_bytes());
    if let Some(of) = of
        && let (Some(head), Some(tail)) =
            (whole.get(..of), whole.get(of.saturating_add(OF.len())..))
        && let Found::Known(symbol @ (Symbol::Percent | Symbol::PartsPerMillion), _) =
            look_up(head.trim())
    {
        let basis = basis(tail).ok_or_else(|| cursor.unknown_basis())?;
        cursor.advance(whole.len());
        return Ok((Unit::sole(symbol), Some(basis)));
    }
    let says_of_what = whole
        .strip_prefix('%')
        .is_some_and(|after| after.trim_start().starts_with(char::is_alphabetic));
    if says_of_what {
        return Err(cursor.unknown_basis());
    }
    Ok((unit_product(cursor)?, None))
}

/// Reads `base`, `the finished mix by volume`.
fn basis(text: &str) -> Option<Basis> {
    let lower = text.to_ascii_lowercase();
    let words: Vec<&str> = lower.split_whitespace().filter(|word| *word != "the").collect();
    let (share, by) = match words.as_slice() {
        ["base", by @ ..] => (Share::OfBase, by),
        ["finished", "mix", by @ ..] | ["finished", by @ ..] => (Share::OfFinished, by),
        _ => return None,
    };
    let by = match by {
        [] | ["by", "mass" | "weight"] => By::Mass,
        ["by", "volume"] => By::Volume,
        _ => return None,
    };
    Some(Basis { share, by })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::fault::Diagnose;
    use proptest::prelude::*;
    use rstest::rstest;
    use std::string::ToString;

    #[rstest]
    #[case("1/4 tsp", "1/4 tsp")]
    #[case("1 1/4 cup", "1 1/4 cup")]
    #[case("¼ cup", "1/4 cup")]
    #[case("1¼ cup", "1 1/4 cup")]
    #[case("1 ¼ cup", "1 1/4 cup")]
    #[case("1⁄4 cup", "1/4 cup")]
    #[case("1 1⁄4 cup", "1 1/4 cup")]
    #[case("5/4 cups", "1 1/4 cup")]
    #[case("2 tbsp", "2 tbsp")]
    #[case("2 Tablespoons", "2 tbsp")]
    #[case("1 TBSP.", "1 tbsp")]
    #[case("40 drops", "40 drops")]
    #[case("40drops", "40 drops")]
    #[case("1 drop", "1 drop")]
    #[case("1/2 drop", "0.5 drops")]
    #[case("12.5g", "12.5 g")]
    #[case("+12.50 grams", "12.5 g")]
    #[case("8 % of base", "8 % of base")]
    #[case("8% of the base by weight", "8 % of base")]
    #[case("20 % of finished", "20 % of finished")]
    #[case("20 per cent of the finished mix by volume", "20 % of finished by volume")]
    #[case("50 ppm of base", "50 ppm of base")]
    #[case("330 °F", "330 °F")]
    #[case("330F", "330 °F")]
    #[case("165 degrees Celsius", "165 °C")]
    #[case("-40 °F", "-40 °F")]
    #[case("−40 °C", "-40 °C")]
    #[case("0.035 in", "0.035 in")]
    #[case(".035 in", "0.035 in")]
    #[case("1/64 in", "0.015625 in")]
    #[case("1.2e-4 1/K", "0.00012 1/K")]
    #[case("3 1/K", "3 1/K")]
    #[case("6.3 4.s/m", "6.3 4.s/m")]
    #[case("0.5 fl oz", "1/2 fl oz")]
    #[case("6 oz wt", "6 oz wt")]
    #[case("6 [oz_av]", "6 oz wt")]
    #[case("1 [cup_us]", "1 US cup")]
    #[case("1 [cup_m]", "1 label cup")]
    #[case("1 metric cup", "1 metric cup")]
    #[case("1 imperial fl oz", "1 imperial fl oz")]
    #[case("20 [drp]", "20 [drp]")]
    #[case("29 inches of mercury", "29 inHg")]
    #[case("29 [in_i'Hg]", "29 [in_i'Hg]")]
    #[case("0.3 cup", "0.3 cup")]
    #[case("1/5 cup", "0.2 cup")]
    #[case("1/7 cup", "1/7 cup")]
    #[case("1/3 g", "1/3 g")]
    #[case("  1  cup  ", "1 cup")]
    #[case("1 cup", "1 cup")]
    #[case("0 g", "0 g")]
    #[case("-0 g", "0 g")]
    fn reads(#[case] written: &str, #[case] printed: &str) {
        let read = amount(written).expect("an amount");
        assert_eq!(read.to_string(), printed);
        assert_eq!(amount(printed), Ok(read));
    }

    #[rstest]
    #[case("6 oz", &["6 fl oz", "6 oz wt"])]
    #[case("6oz", &["6 fl oz", "6 oz wt"])]
    #[case("2 ounces", &["2 fl oz", "2 oz wt"])]
    #[case("6 oz/gal", &["6 fl oz/gal", "6 oz wt/gal"])]
    #[case("1,25 cup", &["1.25 cup", "125 cup"])]
    #[case("1,000 g", &["1.000 g", "1000 g"])]
    #[case("1,234,567 g", &["1234.567 g", "1234567 g"])]
    #[case("1.000,5 g", &["1000.5 g", "1.0005 g"])]
    #[case("1.000.5 g", &["1000.5 g", "10005 g"])]
    #[case("1 000 g", &["1000 g", "1.000 g"])]
    #[case("1\u{a0}000 g", &["1000 g", "1.000 g"])]
    #[case("1 c", &["1 cup", "1 °C"])]
    #[case("350 C", &["350 cup", "350 °C"])]
    #[case("350 deg", &["350 °F", "350 °C"])]
    #[case("350°", &["350 °F", "350 °C"])]
    #[case("1 T", &["1 tbsp", "1 tonne"])]
    #[case("1 t", &["1 tsp", "1 tonne"])]
    #[case("1 dr", &["1 drops", "1 [dr_av]", "1 [fdr_us]"])]
    #[case("3 gr", &["3 g", "3 grains"])]
    #[case("8 %", &["8 % of base", "8 % of finished"])]
    #[case("8%", &["8% of base", "8% of finished"])]
    #[case("1-1/2 cup", &["1 1/2 cup", "a range from 1 cup to 1/2 cup"])]
    #[case("1-½ cup", &["1 ½ cup", "a range from 1 cup to ½ cup"])]
    #[case("1 5/4 cup", &["2 1/4 cup", "15/4 cup"])]
    #[case("1 2/2 cup", &["2 cup", "12/2 cup"])]
    fn refuses_with_the_readings(#[case] written: &str, #[case] expected: &[&str]) {
        let Err(AmountError::Ambiguous { readings, .. }) = amount(written) else {
            panic!("{written}: {:?}", amount(written));
        };
        assert_eq!(readings, expected);
        for reading in readings.iter().filter(|reading| !reading.starts_with("a range")) {
            assert!(amount(reading).is_ok(), "{reading}");
        }
    }

    #[rstest]
    #[case("", "amount-empty")]
    #[case("   ", "amount-empty")]
    #[case("12", "amount-no-unit")]
    #[case("1 1/2", "amount-no-unit")]
    #[case("1e3", "amount-no-unit")]
    #[case("cup", "amount-no-number")]
    #[case("a cup", "amount-no-number")]
    #[case("NaN g", "amount-no-number")]
    #[case("inf g", "amount-no-number")]
    #[case(". g", "amount-no-number")]
    #[case("- g", "amount-no-number")]
    #[case("1/2.5 g", "amount-no-number")]
    #[case("1/0 g", "amount-zero-denominator")]
    #[case("1 1/0 cup", "amount-zero-denominator")]
    #[case("1e400 g", "amount-number-out-of-range")]
    #[case("1e-400 g", "amount-number-out-of-range")]
    #[case("1/99999999999999999999999999999999999999999999 g", "amount-number-out-of-range")]
    #[case("-1 g", "out-of-range")]
    #[case("-1 drop", "out-of-range")]
    #[case("-1 1/K", "out-of-range")]
    #[case("-8 % of base", "out-of-range")]
    #[case("-460 °F", "out-of-range")]
    #[case("-1 K", "out-of-range")]
    #[case("5 lb 3 oz", "amount-several")]
    #[case("5 lb 3", "amount-several")]
    #[case("5 3 g", "amount-several")]
    #[case("2-3 drops", "amount-several")]
    #[case("2 – 3 drops", "amount-several")]
    #[case("2 to 3 drops", "amount-several")]
    #[case("2to 3 drops", "amount-several")]
    #[case("1 cupp", "unit-unknown")]
    #[case("12e", "unit-unknown")]
    #[case(".g", "amount-no-number")]
    #[case("1.5 1/2 cup", "unit-malformed")]
    #[case("5 3. g", "amount-several")]
    #[case("5 3.5 g", "amount-several")]
    #[case("1 0.g", "unit-malformed")]
    #[case("1 m10", "unit-malformed")]
    #[case("3 smidges", "unit-unknown")]
    #[case("1.5/2 cup", "unit-malformed")]
    #[case("1/2/3 cup", "unit-malformed")]
    #[case("1/2, cup", "unit-unknown")]
    #[case("½. cup", "unit-unknown")]
    #[case("8 % base", "amount-unknown-basis")]
    #[case("8 % of sugar", "amount-unknown-basis")]
    #[case("8 % of base by length", "amount-unknown-basis")]
    #[case("8 % of", "amount-unknown-basis")]
    fn refuses(#[case] written: &str, #[case] code: &str) {
        assert_eq!(amount(written).expect_err("no amount").code(), code);
    }

    #[rstest]
    #[case("1 cupp", "cup")]
    #[case("1 teaspon", "teaspoon")]
    #[case("1 ML", "mL")]
    #[case("1 [cup_uk]", "[cup_us]")]
    #[case("1 dorps", "drops")]
    #[case("1 cip", "cup")]
    // Of four letters two may be wrong.
    #[case("1 pnit", "pint")]
    #[case("1 teaspo", "teaspoon")]
    fn suggests_the_nearest_unit(#[case] written: &str, #[case] nearest: &str) {
        let error = amount(written).expect_err("no unit");
        assert_eq!(error.help(), std::format!("Did you mean {nearest}?"));
    }

    // More than one letter of three, or two of more, is another word; so is one of one.
    #[rstest]
    #[case("1 jip")]
    #[case("1 gzzzon")]
    #[case("1 x")]
    #[case("1 jzzzj")]
    fn suggests_nothing_for_another_word(#[case] written: &str) {
        let Err(AmountError::UnknownUnit { nearest, .. }) = amount(written) else {
            panic!("{written}: {:?}", amount(written));
        };
        assert_eq!(nearest, None);
    }

    #[test]
    fn a_text_is_at_most_as_long_as_an_amount() {
        let of = |spaces: usize| amount(&std::format!("1{}g", " ".repeat(spaces)));
        assert_eq!(of(Amount::LONGEST - 2), amount("1 g"));
        assert!(of(Amount::LONGEST - 1).is_err());
    }

    #[test]
    fn an_exponent_of_a_unit_is_from_1_to_9() {
        let message = amount("1 m10").expect_err("no unit").to_string();
        assert!(message.contains("exponent from 1 to 9"), "{message}");
        assert!(amount("1 m9").is_ok());
    }

    // Spoons sold as a dash, a pinch and a smidgen hold 1/8, 1/16 and 1/32 tsp: common practice, no source.
    #[rstest]
    #[case("1 pinch", "Write the spoon that you take: 1/16 tsp.")]
    #[case("a pinch", "Write a number and a unit, such as 1 1/4 cup, 40 drops or 12.5 g.")]
    #[case("2 pinches", "Write the spoon that you take: 1/8 tsp.")]
    #[case("1 Dash", "Write the spoon that you take: 1/8 tsp.")]
    #[case("1/2 dash", "Write the spoon that you take: 1/16 tsp.")]
    #[case("3 smidgens", "Write the spoon that you take: 3/32 tsp.")]
    fn kitchen_words_are_asked_back_by_what_they_are(#[case] written: &str, #[case] help: &str) {
        let error = amount(written).expect_err("no size");
        assert_eq!(error.help(), help);
        if written.starts_with(|c: char| c.is_ascii_digit()) {
            assert_eq!(error.code(), "unit-of-the-kitchen");
            assert!(error.to_string().contains("no standard"), "{error}");
            let spoon = help.rsplit(": ").next().expect("a spoon").trim_end_matches('.');
            assert!(amount(spoon).is_ok(), "{spoon}");
        }
    }

    #[test]
    fn long_texts_are_refused_before_they_are_read() {
        let text = std::format!("{} g", "1".repeat(Amount::LONGEST));
        assert_eq!(
            amount(&text),
            Err(AmountError::TooLong { found: text.len(), limit: Amount::LONGEST })
        );
    }

    proptest! {
        #[test]
        fn any_text_is_an_amount_or_an_error(text in any::<std::string::String>()) {
            let _ = amount(&text);
            let _ = whole_unit(&text);
        }

        // Texts made of what amounts are made of reach deeper than random characters do.
        #[test]
        fn any_text_of_likely_pieces_is_an_amount_or_an_error(pieces in prop::collection::vec(
            prop::sample::select(std::vec![
                "1", "0", "12", "000", "/", "⁄", ".", ",", "-", "–", " ", "½", "e", "E", "+", "(", ")", "[", "]",
                "^", "³", "⁻", "%", " of ", "base", "finished", " by ", "oz", "cup", "g", "°F", "K", "US ", "metric ",
                "[tsp_us]", "m[Hg]", "per ", "to ", "drops", "\u{a0}", "−", "999999999999999999999999",
            ]),
            0..14,
        )) {
            let text: std::string::String = pieces.concat();
            if let Ok(read) = amount(&text) {
                let printed = read.to_string();
                prop_assert_eq!(amount(&printed), Ok(read), "{} as {}", text, printed);
            }
        }
    }
}
