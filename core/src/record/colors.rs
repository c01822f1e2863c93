//! The color that finished pieces had: which formula of the book it goes to, and how far it is from the one there.
//!
//! It goes to the formula that the color as made is saved as; else to the one formula of the stage that is more than a body,
//! if all that makes its color went in within the tolerance of its dose.

use alloc::borrow::ToOwned;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::{Looks, MadePart, Record, RecordError, SeenColor};
use crate::book::Book;
use crate::color::difference::in_words;
use crate::color::lab::Lab;
use crate::color::pot::Expected;
use crate::color::reading::Reading;
use crate::document::color::ColorEntry;
use crate::document::resolve::Resolver;
use crate::document::resolve::date::is_date;
use crate::formula::Formula;
use crate::json::path::Path;
use crate::material::Kind;
use crate::plan::{Pot, Stage};
use crate::quantity::Mass;
use crate::trial::is_body;

/// The color as the book keeps it: with its day.
pub(super) fn dated(looks: &Looks, day: Option<&String>) -> ColorEntry {
    let own = looks.color.day.clone();
    let day = own.or_else(|| day.filter(|day| is_date(day)).cloned());
    ColorEntry { day, ..looks.color.clone() }
}

/// The color that a piece of a stage had, with the formula that it goes to: `saved_as`, else that of the stage.
pub(super) fn seen(
    pot: &Pot,
    stage: &Stage,
    looks: &Looks,
    saved_as: Option<&str>,
    made: &[MadePart],
    book: &Book,
    day: Option<&String>,
) -> Result<SeenColor, RecordError> {
    let of_book = own_formula(pot, stage, book);
    let formula = match saved_as {
        Some(name) => name.to_owned(),
        None => {
            let formula = of_book.clone()?;
            is_as_it_says(&pot.pot, &formula.name, made, book)?;
            formula.name.clone()
        }
    };
    let before = of_book.ok().and_then(|formula| formula.color.as_ref());
    let difference = before.map(|before| Expected::of(before).difference(&looks.reading));
    let text = match &difference {
        Some(found) => format!(
            "{formula}, pot {}: ΔE₀₀ {:.1} ({:.1} to {:.1}) from the color in the book, {}.",
            pot.pot,
            found.value,
            found.low,
            found.high,
            in_words(found.value)
        ),
        None => format!("{formula}, pot {}: its first color for the book.", pot.pot),
    };
    Ok(SeenColor {
        formula,
        pot: pot.pot.clone(),
        color: dated(looks, day),
        difference: difference.map(|found| found.value),
        difference_low: difference.map(|found| found.low),
        difference_high: difference.map(|found| found.high),
        text,
    })
}

/// The one formula of a stage that makes its color.
fn own_formula<'b>(pot: &Pot, stage: &Stage, book: &'b Book) -> Result<&'b Formula, RecordError> {
    let places = stage.formulas.iter().filter_map(|name| book.find_formula(name));
    let all: Vec<&Formula> = places.filter_map(|place| book.formulas.get(place)).collect();
    let mut of_color = Vec::new();
    for formula in &all {
        if !is_body(formula, book)? {
            of_color.push(*formula);
        }
    }
    let unclear = |formulas: String| RecordError::WhichColor { pot: pot.pot.clone(), formulas };
    match (of_color.as_slice(), all.as_slice()) {
        ([only], _) | ([], [only]) => Ok(only),
        ([], []) => Err(unclear(format!("{} is not in the book", stage.formulas.join(" + ")))),
        ([], _) => Err(unclear(format!("{} are bodies", names(&all)))),
        (several, _) => Err(unclear(format!("{} all make its color", names(several)))),
    }
}

fn names(formulas: &[&Formula]) -> String {
    let names: Vec<&str> = formulas.iter().map(|formula| formula.name.as_str()).collect();
    names.join(" and ")
}

/// Refuses a pot of which something that makes its color is off by more than its tolerance.
fn is_as_it_says(
    pot: &str,
    formula: &str,
    made: &[MadePart],
    book: &Book,
) -> Result<(), RecordError> {
    for part in made {
        if !matches!(part.kind, Kind::Colorant | Kind::Pearl | Kind::Flake | Kind::Other) {
            continue;
        }
        let material = book.materials.find(&part.material);
        let own = material.and_then(|id| book.materials.get(id).ok()?.tolerance);
        let tolerance = own.unwrap_or(book.limits.tolerance);
        // What went in here by the sheet is as near as the bench measures it.
        if !part.stated && part.added.quantity == part.mass.quantity {
            continue;
        }
        let what = match &part.off {
            None if part.mass.quantity > Mass::default() => {
                format!("{} is not in it", part.material)
            }
            Some(off) if off.quantity.value.abs() > tolerance => {
                format!("{} is off by {}", part.material, off.text)
            }
            _ => continue,
        };
        return Err(RecordError::ColorOfAnother { pot: pot.into(), formula: formula.into(), what });
    }
    Ok(())
}

/// The color that each formula gets in the book: that of its piece, or the mean of pieces of several pots. Formulas that are
/// `saved` have theirs.
pub(crate) fn for_the_book(record: &Record) -> Vec<(String, ColorEntry)> {
    let mut all: Vec<(String, ColorEntry)> = Vec::new();
    for one in &record.colors {
        let is_done = all.iter().any(|(formula, _)| *formula == one.formula);
        if is_done || record.saved.iter().any(|saved| saved.name == one.formula) {
            continue;
        }
        let same = record.colors.iter().filter(|other| other.formula == one.formula);
        let mut resolver = Resolver::new(record.measures);
        let read = same.filter_map(|one| one.color.read_at(&Path::ROOT, &mut resolver));
        let readings: Vec<Reading> = read.map(|read| read.reading).collect();
        let color = match readings.as_slice() {
            [] | [_] => one.color.clone(),
            several => {
                let day = one.color.day.clone();
                ColorEntry { day, ..ColorEntry::of(&mean(several)) }
            }
        };
        all.push((one.formula.clone(), color));
    }
    all
}

/// The mean of pots, each as unsure as one of them is: drops that scatter make them differ.
fn mean(readings: &[Reading]) -> Reading {
    // A few pots: exact.
    let count = readings.len() as f64;
    let (mut lab, mut squares) = ([0.0; 3], [0.0; 3]);
    for reading in readings {
        for (sum, part) in lab.iter_mut().zip(reading.lab.parts()) {
            *sum += part / count;
        }
        for (sum, u) in squares.iter_mut().zip(reading.uncertainty) {
            *sum += u * u / count;
        }
    }
    let [lightness, a, b] = lab;
    Reading { lab: Lab::unchecked(lightness, a, b), uncertainty: squares.map(libm::sqrt) }
}

#[cfg(test)]
mod tests {
    use alloc::vec;

    use rstest::rstest;

    use super::*;
    use crate::document::{LoadedBook, small};
    use crate::quantity::{Measurable, Ratio};
    use crate::show::{Shown, text};

    /// A part of 1 g, of which `added` g went in at this stage.
    fn part(kind: Kind, off: Option<f64>, stated: bool, added: f64) -> MadePart {
        let mass = |grams: f64| text::mass(Mass::from_si(grams / 1e3));
        MadePart {
            material: "blue".into(),
            kind,
            added: mass(added),
            stated,
            mass: mass(1.0),
            of_base: text::percent(Ratio::from(0.01)),
            dose: "30 drops".into(),
            off: off.map(|off| Shown::new(Ratio::from(off), "off")),
        }
    }

    /// The small book's tolerance is 5 %: at it a dose still is what the formula says, on either side.
    #[rstest]
    #[case(Kind::Colorant, Some(0.05), true, 1.0, true)]
    #[case(Kind::Colorant, Some(-0.05), true, 1.0, true)]
    #[case(Kind::Colorant, Some(0.0501), true, 1.0, false)]
    #[case(Kind::Flake, Some(-0.0501), true, 1.0, false)]
    #[case(Kind::Pearl, None, true, 1.0, false)]
    // By the sheet, and from an earlier stage.
    #[case(Kind::Colorant, Some(0.2), false, 1.0, true)]
    #[case(Kind::Other, Some(0.2), false, 0.5, false)]
    #[case(Kind::Salt, Some(0.2), true, 1.0, true)]
    #[case(Kind::Scent, None, true, 1.0, true)]
    fn only_its_own_doses_have_a_color(
        #[case] kind: Kind,
        #[case] off: Option<f64>,
        #[case] stated: bool,
        #[case] added: f64,
        #[case] good: bool,
    ) {
        let book = LoadedBook::from_text(small::BOOK).unwrap();
        assert_eq!(book.ready().limits.tolerance, 0.05);
        let made = vec![part(kind, off, stated, added)];
        assert_eq!(is_as_it_says("A", "sky", &made, book.ready()).is_ok(), good);
    }

    /// Nothing that went in is nothing new.
    #[test]
    fn none_of_a_material_is_no_other_color() {
        let book = LoadedBook::from_text(small::BOOK).unwrap();
        let none =
            MadePart { mass: text::mass(Mass::default()), ..part(Kind::Pearl, None, true, 0.0) };
        assert_eq!(is_as_it_says("A", "sky", &[none], book.ready()), Ok(()));
    }

    /// By hand: means of 40 and 50, of 1 and 3, of −2 and 2; √((0.09 + 0.25)/2).
    #[test]
    fn pots_have_a_mean() {
        let one = Reading { lab: Lab::unchecked(40.0, 1.0, -2.0), uncertainty: [0.3, 1.0, 2.0] };
        let two = Reading { lab: Lab::unchecked(50.0, 3.0, 2.0), uncertainty: [0.5, 1.0, 2.0] };
        let found = mean(&[one, two]);
        assert_eq!(found.lab.parts(), [45.0, 2.0, 0.0]);
        let wanted = [libm::sqrt(0.17), 1.0, 2.0];
        assert!(found.uncertainty.iter().zip(wanted).all(|(u, wanted)| (u - wanted).abs() < 1e-12));
    }

    /// A color has the day of its reading, else that of its pot if that is a date.
    #[rstest]
    #[case(Some("2027-03-06"), Some("2027-03-05"), Some("2027-03-06"))]
    #[case(None, Some("2027-03-05"), Some("2027-03-05"))]
    #[case(None, Some("Monday"), None)]
    #[case(None, None, None)]
    fn a_color_has_a_day(
        #[case] own: Option<&str>,
        #[case] of_pot: Option<&str>,
        #[case] wanted: Option<&str>,
    ) {
        let reading = Reading { lab: Lab::unchecked(40.0, 1.0, -2.0), uncertainty: [0.3; 3] };
        let color = ColorEntry { day: own.map(Into::into), ..ColorEntry::of(&reading) };
        let day = of_pot.map(String::from);
        let found = dated(&Looks { color, reading }, day.as_ref());
        assert_eq!(found.day.as_deref(), wanted);
    }
}
