//! Dates, as documents write them.

use alloc::string::String;

use super::Resolver;
use crate::json::path::Path;

impl Resolver {
    /// The date, where one is given: years, months and days in digits, so that text sorts by time.
    #[allow(clippy::option_option)] // absent and wrong are two things
    pub(super) fn date(
        &mut self,
        path: &Path<'_>,
        date: Option<&String>,
    ) -> Option<Option<String>> {
        let Some(date) = date else { return Some(None) };
        if is_date(date) {
            return Some(Some(date.clone()));
        }
        self.fault(
            "not-a-date",
            path,
            &format_args!("\"{date}\" is not a date."),
            &"Write year-month-day, such as \"2027-03-05\" (ISO 8601).",
        );
        None
    }
}

/// Whether `text` is YYYY-MM-DD with a month and a day that the calendar has.
pub(crate) fn is_date(text: &str) -> bool {
    let mut parts = text.split('-');
    let mut number = |digits: usize| {
        parts
            .next()
            .filter(|part| part.len() == digits && part.bytes().all(|byte| byte.is_ascii_digit()))
            .and_then(|part| part.parse::<u32>().ok())
    };
    let (Some(year), Some(month), Some(day)) = (number(4), number(2), number(2)) else {
        return false;
    };
    let leap = (year.is_multiple_of(4) && !year.is_multiple_of(100)) || year.is_multiple_of(400);
    let longest = match month {
        2 => 28_u32.saturating_add(u32::from(leap)),
        4 | 6 | 9 | 11 => 30,
        1..=12 => 31,
        _ => return false,
    };
    (1..=longest).contains(&day) && parts.next().is_none()
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
}
