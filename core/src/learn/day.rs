//! Days of the calendar, as numbers.

use alloc::string::String;
use core::fmt;

/// A day of the (proleptic Gregorian) calendar.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Day(i32);

impl Day {
    /// The day that is `number` days after 1970-01-01; negative before it.
    #[must_use]
    pub const fn from_number(number: i32) -> Self {
        Self(number)
    }

    /// Days since 1970-01-01; negative before it.
    #[must_use]
    pub const fn number(self) -> i32 {
        self.0
    }

    /// The day written as `2027-03-05`; `None` for a text that is not one of the calendar.
    ///
    /// Days are counted in years that begin in March, so that a leap day is their last, and in eras of 400 of them.
    #[must_use]
    pub fn parse(text: &str) -> Option<Self> {
        let mut parts = text.split('-');
        let mut number = |digits: usize| {
            let part = parts.next().filter(|part| part.len() == digits);
            let part = part.filter(|part| part.bytes().all(|byte| byte.is_ascii_digit()));
            part.and_then(|part| part.parse::<i32>().ok())
        };
        let (year, month, day) = (number(4)?, number(2)?, number(2)?);
        if parts.next().is_some() {
            return None;
        }
        let found = Self::of(year, month, day)?;
        // A month that the year does not have, or a day that the month does not, comes out as another.
        (found.parts() == (year, month, day)).then_some(found)
    }

    fn of(year: i32, month: i32, day: i32) -> Option<Self> {
        let year = if month <= 2 { year.checked_sub(1)? } else { year };
        let era = year.div_euclid(400);
        let of_era = year.rem_euclid(400);
        let month = month.checked_add(9)?.rem_euclid(12);
        let of_year = month.checked_mul(153)?.checked_add(2)?.div_euclid(5);
        let of_year = of_year.checked_add(day)?.checked_sub(1)?;
        let leap = of_era.div_euclid(4).checked_sub(of_era.div_euclid(100))?;
        let days = of_era.checked_mul(365)?.checked_add(leap)?.checked_add(of_year)?;
        era.checked_mul(146_097)?.checked_add(days)?.checked_sub(719_468).map(Self)
    }

    /// Year, month, day.
    fn parts(self) -> (i32, i32, i32) {
        let days = self.0.saturating_add(719_468);
        let era = days.div_euclid(146_097);
        let of_era = days.rem_euclid(146_097);
        let leaps =
            of_era.div_euclid(1460) - of_era.div_euclid(36_524) + of_era.div_euclid(146_096);
        let year = (of_era - leaps).div_euclid(365);
        let before = year * 365 + year.div_euclid(4) - year.div_euclid(100);
        let of_year = of_era - before;
        let month = (5 * of_year + 2).div_euclid(153);
        let day = of_year - (153 * month + 2).div_euclid(5) + 1;
        let month = if month < 10 { month + 3 } else { month - 9 };
        let year = year + era.saturating_mul(400);
        (if month <= 2 { year.saturating_add(1) } else { year }, month, day)
    }
}

/// As a document writes it: `2027-03-05`.
impl fmt::Display for Day {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (year, month, day) = self.parts();
        write!(f, "{year:04}-{month:02}-{day:02}")
    }
}

impl From<Day> for String {
    fn from(day: Day) -> Self {
        alloc::format!("{day}")
    }
}

#[cfg(test)]
mod tests {
    use rstest::rstest;
    use std::string::ToString;

    use super::*;

    // POSIX time/86400 of known days: 1e9 s is in 2001-09-09, 2³¹ s in 2038-01-19.
    #[rstest]
    #[case("1970-01-01", Some(0))]
    #[case("2001-09-09", Some(11_574))]
    #[case("2038-01-19", Some(24_855))]
    #[case("1969-12-31", Some(-1))]
    #[case("2000-02-29", Some(11_016))]
    #[case("2000-03-01", Some(11_017))]
    #[case("2100-02-29", None)]
    #[case("2027-04-31", None)]
    #[case("2027-13-01", None)]
    #[case("2027-00-10", None)]
    #[case("2027-01-00", None)]
    #[case("2027-01-99", None)]
    #[case("27-03-05", None)]
    #[case("2027-03-05-", None)]
    // The last days of the months, by Python's datetime.
    #[case("2027-01-31", Some(20_849))]
    #[case("2027-02-28", Some(20_877))]
    #[case("2027-03-31", Some(20_908))]
    #[case("2027-04-30", Some(20_938))]
    #[case("2027-05-31", Some(20_969))]
    #[case("2027-06-30", Some(20_999))]
    #[case("2027-07-31", Some(21_030))]
    #[case("2027-08-31", Some(21_061))]
    #[case("2027-09-30", Some(21_091))]
    #[case("2027-10-31", Some(21_122))]
    #[case("2027-11-30", Some(21_152))]
    #[case("2027-12-31", Some(21_183))]
    #[case("2027-99-01", None)]
    #[case("", None)]
    fn a_day_is_in_the_calendar(#[case] text: &str, #[case] number: Option<i32>) {
        let day = Day::parse(text);
        assert_eq!(day.map(Day::number), number);
        if let Some(day) = day {
            assert_eq!(day.to_string(), text);
        }
    }

    #[test]
    fn every_day_of_four_centuries_comes_back() {
        let mut last = Day::parse("1900-01-01").unwrap();
        for _ in 0..146_097 {
            let next = Day::from_number(last.number() + 1);
            assert_eq!(Day::parse(&next.to_string()), Some(next));
            last = next;
        }
        assert_eq!(last.to_string(), "2300-01-01");
    }
}
