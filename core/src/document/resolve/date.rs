//! Dates, as documents write them.

use alloc::string::String;

use super::Resolver;
use crate::codes::code;
use crate::json::path::Path;
use crate::learn::Day;

impl Resolver {
    /// The date, where one is given: years, months and days in digits, so that text sorts by time.
    #[allow(clippy::option_option)] // absent and wrong are two things
    pub(crate) fn date(
        &mut self,
        path: &Path<'_>,
        date: Option<&String>,
    ) -> Option<Option<String>> {
        let Some(date) = date else { return Some(None) };
        if is_date(date) {
            return Some(Some(date.clone()));
        }
        self.fault(
            code!("not-a-date"),
            path,
            &format_args!("\"{date}\" is not a date."),
            &"Write year-month-day, such as \"2027-03-05\" (ISO 8601).",
        );
        None
    }
}

/// Whether `text` is YYYY-MM-DD with a month and a day that the calendar has.
pub(crate) fn is_date(text: &str) -> bool {
    Day::parse(text).is_some()
}

/// Whether `text` is three numbers with hyphens between, and so meant as a date.
pub(super) fn is_shaped_as_date(text: &str) -> bool {
    let is_number = |part: &str| !part.is_empty() && part.bytes().all(|byte| byte.is_ascii_digit());
    text.split('-').count() == 3 && text.split('-').all(is_number)
}

#[cfg(test)]
mod tests {
    use rstest::rstest;

    use super::*;

    #[rstest]
    #[case("2027-03-05", true)]
    #[case("2024-02-29", true)]
    #[case("2000-02-29", true)]
    #[case("2100-02-29", false)]
    #[case("2027-02-29", false)]
    #[case("2027-04-31", false)]
    #[case("2027-13-01", false)]
    #[case("2027-00-10", false)]
    #[case("2027-01-00", false)]
    #[case("27-03-05", false)]
    #[case("2027-3-5", false)]
    #[case("2027-03-05-", false)]
    #[case("2027-03-0５", false)]
    #[case("", false)]
    fn a_date_is_in_the_calendar(#[case] text: &str, #[case] good: bool) {
        assert_eq!(is_date(text), good);
    }

    #[rstest]
    #[case("2027-3-5", true)]
    #[case("2027-13-41", true)]
    #[case("2027-03", false)]
    #[case("2027-03-05-1", false)]
    #[case("2027-03-x", false)]
    #[case("fine-sea-salt", false)]
    #[case("2027--05", false)]
    fn a_slip_of_a_date_has_its_shape(#[case] text: &str, #[case] shaped: bool) {
        assert_eq!(is_shaped_as_date(text), shaped);
    }
}
