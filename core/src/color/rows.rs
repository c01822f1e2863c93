//! A spectrum from the rows that a spectrophotometer exports: a wavelength and a reflectance on each line.
//!
//! The two are divided by a comma, a semicolon or a tab; next to a semicolon or a tab, a comma is a decimal comma. A first line
//! without numbers is a heading. Wavelengths rise, and those from 400 to 700 nm must have every 10 nm, or every 20 nm; what is
//! between and outside is not used. The reflectance of a band is that of its middle: an instrument that reads every nm has
//! bands of its own, mostly of 10 nm.

use alloc::borrow::Cow;
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use crate::codes::codes;
use crate::color::light::Spectrum;
use crate::fault::Diagnose;
use crate::quantity::Rational;
use crate::words::words;

words! {
    /// How the reflectances of rows are stated.
    pub enum StatedIn {
        /// From 0 to 100.
        Percent = "percent",
        /// From 0 to 1.
        Fraction = "fraction",
    }
}

/// Why rows are no spectrum.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum RowsError {
    /// A line that is not a wavelength and a reflectance.
    #[error("Line {line}: \"{text}\" is not a wavelength and a reflectance.")]
    NotTwo {
        /// Its number, from 1.
        line: usize,
        /// How it begins.
        text: String,
    },
    /// A reflectance outside of what it is stated in.
    #[error("Line {line}: a reflectance of {value} is not from 0 to {most}.")]
    Reflectance {
        /// Its number, from 1.
        line: usize,
        /// As it is written.
        value: String,
        /// 1 or 100.
        most: u32,
    },
    /// A wavelength that does not follow the one before.
    #[error("Line {line}: {nm} nm does not come after the wavelength before it.")]
    Order {
        /// Its number, from 1.
        line: usize,
        /// As it is written.
        nm: String,
    },
    /// Wavelengths that are missing.
    #[error("{found} wavelengths are read. Missing: {missing}.")]
    Missing {
        /// How many rows there are.
        found: usize,
        /// The first one that is missing, or several.
        missing: String,
    },
}

impl Diagnose for RowsError {
    codes! {
        Self::NotTwo { .. } => "rows-not-two",
        Self::Reflectance { .. } => "rows-reflectance",
        Self::Order { .. } => "rows-order",
        Self::Missing { .. } => "rows-missing",
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::NotTwo { .. } => {
                "Leave the two columns of wavelength in nm and reflectance: \"400,5.12\".".into()
            }
            Self::Reflectance { most: 1, .. } => {
                "If these are per cent, write \"stated_in\": \"percent\". A piece that glows reflects more than there is, and is outside the model.".into()
            }
            Self::Reflectance { .. } => {
                "Correct that number. A piece that glows reflects more than there is, and is outside the model.".into()
            }
            Self::Order { .. } => "Give each wavelength once, by rising wavelengths.".into(),
            Self::Missing { .. } => "Export every 10 nm, or every 20 nm, from 400 to 700 nm.".into(),
        }
    }
}

/// The spectrum of rows, or all that is wrong with them.
///
/// # Errors
/// [`RowsError`], one for each line.
pub fn spectrum(rows: &str, stated_in: StatedIn) -> Result<Spectrum, Vec<RowsError>> {
    let most = match stated_in {
        StatedIn::Percent => 100,
        StatedIn::Fraction => 1,
    };
    let (mut read, mut errors) = (Vec::new(), Vec::new());
    let mut is_first = true;
    let mut before = f64::NEG_INFINITY;
    for (index, text) in rows.trim_start_matches('\u{feff}').lines().enumerate() {
        let (line, text) = (index.saturating_add(1), text.trim());
        if text.is_empty() {
            continue;
        }
        let cells = cells(text);
        let is_heading = is_first && cells.iter().all(|cell| number(cell).is_none());
        is_first = false;
        if is_heading {
            continue;
        }
        let row = match cells.as_slice() {
            [nm, share] => number(nm).zip(number(share)),
            _ => None,
        };
        let Some((nm, share)) = row else {
            errors.push(RowsError::NotTwo { line, text: beginning(text) });
            continue;
        };
        if nm <= before {
            errors.push(RowsError::Order { line, nm: nm.to_string() });
        }
        before = nm;
        let value = share / f64::from(most);
        if !crate::check::is_share(value) {
            errors.push(RowsError::Reflectance { line, value: share.to_string(), most });
        }
        read.push((nm, value));
    }
    if !errors.is_empty() {
        return Err(errors);
    }
    of_points(&read).map_err(|error| Vec::from([error]))
}

/// The cells of a line.
fn cells(text: &str) -> Vec<String> {
    let divider = [';', '\t'].into_iter().find(|divider| text.contains(*divider));
    let cells = text.split(divider.unwrap_or(','));
    let cell = |cell: &str| {
        let cell = cell.trim().trim_matches('"').trim();
        if divider.is_some() { cell.replace(',', ".") } else { cell.to_string() }
    };
    cells.map(cell).collect()
}

fn number(cell: &str) -> Option<f64> {
    Rational::parse_decimal(cell).map(Rational::to_f64)
}

/// The first characters of a line.
fn beginning(text: &str) -> String {
    const MOST: usize = 40;
    text.chars().take(MOST).collect()
}

fn of_points(points: &[(f64, f64)]) -> Result<Spectrum, RowsError> {
    let at = |nm: f64| points.iter().find(|(known, _)| *known == nm).map(|(_, value)| *value);
    let every = |step: usize| {
        let wavelengths = (400..=700_u32).step_by(step);
        let mut missing = Vec::new();
        let mut values = Vec::new();
        for nm in wavelengths {
            match at(f64::from(nm)) {
                Some(value) => values.push(value),
                None => missing.push(nm),
            }
        }
        (values, missing)
    };
    let (tens, missing) = every(10);
    let (values, step) = if missing.is_empty() {
        (tens, 10.0)
    } else {
        let (twenties, missing) = every(20);
        if let Some(first) = missing.first() {
            let rest = missing.len().saturating_sub(1);
            let missing = if rest > 0 {
                format!("{first} nm and {rest} more")
            } else {
                format!("{first} nm")
            };
            return Err(RowsError::Missing { found: points.len(), missing });
        }
        (twenties, 20.0)
    };
    let spectrum = Spectrum::new(400.0, step, &values);
    spectrum.map_err(|_| RowsError::Missing { found: points.len(), missing: "400 nm".into() })
}

#[cfg(test)]
mod tests {
    use rstest::rstest;

    use super::*;
    use crate::color::light::Light;

    fn rows(step: usize, from: u32, row: impl Fn(u32) -> String) -> String {
        (from..=740).step_by(step).map(row).collect::<Vec<_>>().join("\n")
    }

    fn share(nm: u32) -> f64 {
        0.2 + 0.1 * libm::sin(f64::from(nm) / 50.0)
    }

    /// All ways to write one spectrum give the one that its bands give.
    #[rstest]
    #[case(rows(10, 400, |nm| format!("{nm},{}", share(nm))), StatedIn::Fraction)]
    #[case(rows(10, 360, |nm| format!("{nm},{}", 100.0 * share(nm))), StatedIn::Percent)]
    #[case(rows(1, 380, |nm| format!("{nm}.0;{}", share(nm)).replace('.', ",")), StatedIn::Fraction)]
    #[case(rows(5, 380, |nm| format!("\"{nm}\"\t\"{}\"", share(nm))) + "\r\n\r\n", StatedIn::Fraction)]
    #[case(String::from("\u{feff}Wavelength (nm),Reflectance\n") + &rows(10, 400, |nm| format!(" {nm} , {} ", share(nm))), StatedIn::Fraction)]
    fn ways_to_write_it(#[case] text: String, #[case] stated_in: StatedIn) {
        let values: Vec<f64> = (400..=700).step_by(10).map(share).collect();
        let wanted = Spectrum::new(400.0, 10.0, &values).unwrap().lab(Light::Daylight).unwrap();
        let found = spectrum(&text, stated_in).unwrap().lab(Light::Daylight).unwrap();
        for (found, wanted) in found.parts().iter().zip(wanted.parts()) {
            assert!((found - wanted).abs() < 1e-9, "{found} {wanted}");
        }
    }

    #[test]
    fn every_twenty_nm_will_do() {
        let text = rows(20, 400, |nm| format!("{nm},{}", share(nm)));
        let values: Vec<f64> = (400..=700).step_by(20).map(share).collect();
        assert_eq!(
            spectrum(&text, StatedIn::Fraction).unwrap(),
            Spectrum::new(400.0, 20.0, &values).unwrap()
        );
    }

    /// Each fault has its line; blank lines count as lines.
    #[test]
    fn all_faults_have_their_lines() {
        let text = "nm,R\n400,0.5\n\n410,five\n420,1.5\n420,0.5\n430,0.5,0.6\nend";
        let errors = spectrum(text, StatedIn::Fraction).unwrap_err();
        assert_eq!(
            errors,
            [
                RowsError::NotTwo { line: 4, text: "410,five".into() },
                RowsError::Reflectance { line: 5, value: "1.5".into(), most: 1 },
                RowsError::Order { line: 6, nm: "420".into() },
                RowsError::NotTwo { line: 7, text: "430,0.5,0.6".into() },
                RowsError::NotTwo { line: 8, text: "end".into() },
            ]
        );
        assert!(errors.iter().all(|error| error.help().ends_with(['.', ']'])), "{errors:?}");
    }

    #[rstest]
    #[case(0.0, true)]
    #[case(100.0, true)]
    #[case(100.1, false)]
    #[case(-0.1, false)]
    fn per_cent_is_from_0_to_100(#[case] value: f64, #[case] good: bool) {
        let text = rows(10, 400, |nm| format!("{nm},{}", if nm == 500 { value } else { 50.0 }));
        assert_eq!(spectrum(&text, StatedIn::Percent).is_ok(), good);
    }

    #[rstest]
    #[case("", "400 nm and 15 more")]
    #[case("400,0.5", "420 nm and 14 more")]
    fn what_is_missing_is_named(#[case] text: &str, #[case] wanted: &str) {
        let Err(errors) = spectrum(text, StatedIn::Fraction) else { panic!() };
        let [RowsError::Missing { missing, .. }] = errors.as_slice() else { panic!("{errors:?}") };
        assert_eq!(missing, wanted);
    }

    #[test]
    fn two_that_are_missing_are_one_and_one_more() {
        let text = (400..=660).step_by(20).map(|nm| format!("{nm},0.5\n")).collect::<String>();
        let errors = spectrum(&text, StatedIn::Fraction).unwrap_err();
        assert_eq!(errors, [RowsError::Missing { found: 14, missing: "680 nm and 1 more".into() }]);
    }

    /// Without its last band nothing is guessed.
    #[test]
    fn the_last_band_is_needed() {
        let text = (400..=690).step_by(10).map(|nm| format!("{nm},0.5\n")).collect::<String>();
        let errors = spectrum(&text, StatedIn::Fraction).unwrap_err();
        assert_eq!(errors, [RowsError::Missing { found: 30, missing: "700 nm".into() }]);
    }

    #[test]
    fn a_long_line_is_cut() {
        let errors = spectrum(&"ä".repeat(100), StatedIn::Fraction);
        // A first line without numbers is a heading.
        assert!(matches!(errors.unwrap_err()[..], [RowsError::Missing { found: 0, .. }]));
        let errors = spectrum(&format!("1,1\n{}", "ä".repeat(100)), StatedIn::Fraction);
        let errors = errors.unwrap_err();
        assert_eq!(errors, [RowsError::NotTwo { line: 2, text: "ä".repeat(40) }]);
    }
}
