//! Exact fractions: what was written, and the sizes of the units.

use alloc::format;
use core::cmp::Ordering;
use core::fmt;

/// An exact fraction in lowest terms, its denominator positive.
///
/// Holds what a person writes (`1 1/4`, `0.1`) and the defined sizes of the units without rounding.
/// Operations answer `None` where the exact result does not fit in 128 bits.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Rational {
    numerator: i128,
    denominator: i128,
}

/// Digits after the point that still fit: 10³⁸ is the largest power of ten in an `i128`.
const MOST_DECIMALS: u32 = 38;

impl Rational {
    /// The number 0.
    pub const ZERO: Self = Self { numerator: 0, denominator: 1 };
    /// The number 1.
    pub const ONE: Self = Self { numerator: 1, denominator: 1 };

    /// `numerator / denominator` in lowest terms; `None` where the denominator is 0 or a part is out of range.
    #[must_use]
    pub const fn new(numerator: i128, denominator: i128) -> Option<Self> {
        if denominator == 0 || numerator == i128::MIN || denominator == i128::MIN {
            return None;
        }
        let common = gcd(numerator.unsigned_abs(), denominator.unsigned_abs()) as i128;
        let common = if denominator < 0 { -common } else { common };
        Some(Self {
            numerator: quotient(numerator, common),
            denominator: quotient(denominator, common),
        })
    }

    /// The whole number `n`.
    #[must_use]
    pub const fn from_int(n: i64) -> Self {
        Self { numerator: n as i128, denominator: 1 }
    }

    /// The numerator in lowest terms; it carries the sign.
    #[must_use]
    pub const fn numerator(self) -> i128 {
        self.numerator
    }

    /// The denominator in lowest terms, at least 1.
    #[must_use]
    pub const fn denominator(self) -> i128 {
        self.denominator
    }

    /// Whether this is 0.
    #[must_use]
    pub const fn is_zero(self) -> bool {
        self.numerator == 0
    }

    /// Whether this is below 0.
    #[must_use]
    pub const fn is_negative(self) -> bool {
        self.numerator < 0
    }

    /// The same distance from 0, on the other side.
    #[must_use]
    pub const fn negated(self) -> Self {
        Self { numerator: -self.numerator, denominator: self.denominator }
    }

    /// `1 / self`; `None` for 0.
    #[must_use]
    pub const fn reciprocal(self) -> Option<Self> {
        // In lowest terms it stays.
        match self.numerator {
            0 => None,
            1.. => Some(Self { numerator: self.denominator, denominator: self.numerator }),
            _ => Some(Self { numerator: -self.denominator, denominator: -self.numerator }),
        }
    }

    /// `self + other`, exactly; `None` where that does not fit.
    #[must_use]
    pub const fn checked_add(self, other: Self) -> Option<Self> {
        if other.is_zero() {
            return Some(self);
        }
        if let (Some((whole, 1)), Some((c, d))) = (self.short(), other.short()) {
            // A whole number and a fraction in lowest terms are a fraction in lowest terms.
            let numerator = whole as i128 * d as i128 + c as i128;
            return Some(Self { numerator, denominator: other.denominator });
        }
        let common = gcd(self.denominator.unsigned_abs(), other.denominator.unsigned_abs()) as i128;
        let widen_self = quotient(other.denominator, common);
        let widen_other = quotient(self.denominator, common);
        let (Some(a), Some(b), Some(denominator)) = (
            self.numerator.checked_mul(widen_self),
            other.numerator.checked_mul(widen_other),
            self.denominator.checked_mul(widen_self),
        ) else {
            return None;
        };
        match a.checked_add(b) {
            Some(numerator) => Self::new(numerator, denominator),
            None => None,
        }
    }

    /// `self − other`, exactly; `None` where that does not fit.
    #[must_use]
    pub const fn checked_sub(self, other: Self) -> Option<Self> {
        self.checked_add(other.negated())
    }

    /// `self · other`, exactly; `None` where that does not fit.
    #[must_use]
    pub const fn checked_mul(self, other: Self) -> Option<Self> {
        if let (Some(left), Some(right)) = (self.short(), other.short()) {
            return Some(Self::product_of_short(left, right));
        }
        // Common factors go first, so that nothing overflows that would have fitted.
        let left = gcd(self.numerator.unsigned_abs(), other.denominator.unsigned_abs()) as i128;
        let right = gcd(other.numerator.unsigned_abs(), self.denominator.unsigned_abs()) as i128;
        let numerator =
            quotient(self.numerator, left).checked_mul(quotient(other.numerator, right));
        let denominator =
            quotient(self.denominator, right).checked_mul(quotient(other.denominator, left));
        match (numerator, denominator) {
            (Some(i128::MIN), _) => None,
            (Some(numerator), Some(denominator)) => Some(Self { numerator, denominator }),
            _ => None,
        }
    }

    /// Numerator and denominator where both are machine words, as those of most numbers are.
    const fn short(self) -> Option<(i64, i64)> {
        let (numerator, denominator) = (self.numerator as i64, self.denominator as i64);
        if numerator as i128 == self.numerator && denominator as i128 == self.denominator {
            Some((numerator, denominator))
        } else {
            None
        }
    }

    /// The product of two numbers of machine words, in lowest terms: several times as fast as that of any two.
    const fn product_of_short((a, b): (i64, i64), (c, d): (i64, i64)) -> Self {
        let left = short_gcd(a.unsigned_abs(), d.unsigned_abs()) as i128;
        let right = short_gcd(c.unsigned_abs(), b.unsigned_abs()) as i128;
        Self {
            numerator: quotient(a as i128, left) * quotient(c as i128, right),
            denominator: quotient(b as i128, right) * quotient(d as i128, left),
        }
    }

    /// `self / other`, exactly; `None` where `other` is 0 or the result does not fit.
    #[must_use]
    pub const fn checked_div(self, other: Self) -> Option<Self> {
        match other.reciprocal() {
            Some(reciprocal) => self.checked_mul(reciprocal),
            None => None,
        }
    }

    /// `self` to a whole power; `None` for 0 to a negative power, or where the result does not fit.
    #[must_use]
    pub const fn checked_pow(self, exponent: i8) -> Option<Self> {
        let mut power = Self::ONE;
        let mut left = exponent.unsigned_abs();
        while left > 0 {
            power = match power.checked_mul(self) {
                Some(power) => power,
                None => return None,
            };
            left -= 1;
        }
        if exponent < 0 { power.reciprocal() } else { Some(power) }
    }

    /// The nearest `f64`; of two equally near the one with an even last bit (IEEE 754 `roundTiesToEven`).
    #[must_use]
    pub const fn to_f64(self) -> f64 {
        nearest(self.numerator, self.denominator)
    }

    /// The `f64` nearest to `self · other`, rounded once; `None` where the exact product does not fit.
    #[must_use]
    pub(super) const fn product_to_f64(self, other: Self) -> Option<f64> {
        // Rounding needs no lowest terms; only where the plain product does not fit are they worth their while. That of machine
        // words always fits.
        if let (Some((a, b)), Some((c, d))) = (self.short(), other.short()) {
            return Some(nearest(a as i128 * c as i128, b as i128 * d as i128));
        }
        let numerator = self.numerator.checked_mul(other.numerator);
        let denominator = self.denominator.checked_mul(other.denominator);
        if let (Some(numerator), Some(denominator)) = (numerator, denominator) {
            return Some(nearest(numerator, denominator));
        }
        match self.checked_mul(other) {
            Some(product) => Some(product.to_f64()),
            None => None,
        }
    }

    /// The shortest decimal that reads back as `value`: 1/10 for `0.1`.
    ///
    /// `None` for NaN, an infinity, or a number whose decimal does not fit.
    #[must_use]
    pub fn from_f64(value: f64) -> Option<Self> {
        if !value.is_finite() {
            return None;
        }
        Self::parse_decimal(&format!("{value:e}"))
    }

    /// Reads decimal text: digits with at most one point, an optional sign and exponent (`-12.5`, `.035`, `1.2e-4`).
    ///
    /// `None` where the text is anything else, or the number does not fit.
    #[must_use]
    pub fn parse_decimal(text: &str) -> Option<Self> {
        let (negative, unsigned) = match text.strip_prefix('-') {
            Some(rest) => (true, rest),
            None => (false, text.strip_prefix('+').unwrap_or(text)),
        };
        let (digits, exponent) = match unsigned.bytes().position(|byte| matches!(byte, b'e' | b'E'))
        {
            Some(at) => {
                let exponent = unsigned.get(at.saturating_add(1)..)?;
                (unsigned.get(..at)?, exponent.parse::<i32>().ok()?)
            }
            None => (unsigned, 0),
        };
        let magnitude = decimal_magnitude(digits, exponent)?;
        Some(if negative { magnitude.negated() } else { magnitude })
    }

    /// The whole number towards 0, and the fraction that is left, with the same sign.
    pub(super) fn split_whole(self) -> (i128, Self) {
        let whole = quotient(self.numerator, self.denominator);
        let rest = self.numerator.checked_rem(self.denominator).unwrap_or(0);
        (whole, Self { numerator: rest, denominator: self.denominator })
    }

    /// Numerator over a power of ten, and that power's exponent, where this is a finite decimal that fits.
    pub(crate) fn as_decimal(self) -> Option<(i128, u32)> {
        let decimals = decimals(self.denominator.unsigned_abs())?;
        // A power of ten that fits in a machine word takes no long multiplication.
        let power = match 10_i64.checked_pow(decimals) {
            Some(power) => i128::from(power),
            None => 10_i128.checked_pow(decimals)?,
        };
        let widen = quotient(power, self.denominator);
        Some((self.numerator.checked_mul(widen)?, decimals))
    }

    /// This as a whole number and a fraction: `1 1/4`, `-2/3`, `5`.
    pub(crate) const fn mixed(self) -> Mixed {
        Mixed(self)
    }
}

/// Prints a [`Rational`] as a mixed fraction.
#[derive(Debug)]
pub(crate) struct Mixed(Rational);

impl fmt::Display for Mixed {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.write_mixed_to(f)
    }
}

impl Rational {
    /// Writes the text that [`Rational::parse_decimal`] reads if this is a finite decimal, else a mixed fraction (`1 1/3`).
    pub(super) fn write_to(self, to: &mut dyn fmt::Write) -> fmt::Result {
        let Some((scaled, decimals)) = self.as_decimal() else {
            return self.write_mixed_to(to);
        };
        // Digits by hand: a plan writes thousands of numbers, and what `write!` does takes several times as long.
        let mut digits = [b'0'; MOST_DECIMALS as usize + 1];
        let point = digits.len().saturating_sub(decimals as usize);
        let (mut first, mut rest) = (digits.len(), scaled.unsigned_abs());
        for digit in digits.iter_mut().rev() {
            if rest == 0 && first < point {
                break;
            }
            let (tenth, ones) = tenths(rest);
            *digit |= ones;
            rest = tenth;
            first = first.saturating_sub(1);
        }
        let digits = core::str::from_utf8(&digits).unwrap_or_default();
        if scaled < 0 {
            to.write_str("-")?;
        }
        to.write_str(digits.get(first..point).unwrap_or_default())?;
        if decimals > 0 {
            to.write_str(".")?;
            to.write_str(digits.get(point..).unwrap_or_default())?;
        }
        Ok(())
    }

    /// Writes this as a whole number and a fraction: `1 1/4`, `-2/3`, `5`.
    pub(super) fn write_mixed_to(self, to: &mut dyn fmt::Write) -> fmt::Result {
        let (whole, rest) = self.split_whole();
        if rest.is_zero() {
            return write!(to, "{whole}");
        }
        if whole == 0 {
            return write!(to, "{}/{}", rest.numerator, rest.denominator);
        }
        write!(to, "{whole} {}/{}", rest.numerator.unsigned_abs(), rest.denominator)
    }
}

/// Text that [`Rational::parse_decimal`] reads if it is a finite decimal, else a mixed fraction (`1 1/3`).
impl fmt::Display for Rational {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.write_to(f)
    }
}

impl Ord for Rational {
    fn cmp(&self, other: &Self) -> Ordering {
        match (self.is_negative(), other.is_negative()) {
            (false, true) => Ordering::Greater,
            (true, false) => Ordering::Less,
            (false, false) => compare_magnitudes(*self, *other),
            (true, true) => compare_magnitudes(*other, *self),
        }
    }
}

impl PartialOrd for Rational {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

impl From<i64> for Rational {
    fn from(n: i64) -> Self {
        Self::from_int(n)
    }
}

/// Compares |a| with |b| by their continued fractions, which needs no product that could overflow.
fn compare_magnitudes(a: Rational, b: Rational) -> Ordering {
    let (mut a_over, mut a_under) = (a.numerator.unsigned_abs(), a.denominator.unsigned_abs());
    let (mut b_over, mut b_under) = (b.numerator.unsigned_abs(), b.denominator.unsigned_abs());
    loop {
        let (a_whole, a_rest) = div_rem(a_over, a_under);
        let (b_whole, b_rest) = div_rem(b_over, b_under);
        if a_whole != b_whole {
            return a_whole.cmp(&b_whole);
        }
        if a_rest == 0 || b_rest == 0 {
            return a_rest.cmp(&b_rest);
        }
        // a_rest/a_under against b_rest/b_under is b_under/b_rest against a_under/a_rest.
        (a_over, a_under, b_over, b_under) = (b_under, b_rest, a_under, a_rest);
    }
}

/// `digits · 10^exponent`, the digits with at most one point.
fn decimal_magnitude(digits: &str, exponent: i32) -> Option<Rational> {
    if let Some(short) = short_decimal(digits, exponent) {
        return Some(short);
    }
    let (mut mantissa, mut trailing_zeros, mut decimals) = (0_i128, 0_u32, 0_i32);
    let (mut seen_point, mut seen_digit) = (false, false);
    for c in digits.chars() {
        if c == '.' && !seen_point {
            seen_point = true;
            continue;
        }
        let digit = c.to_digit(10)?;
        seen_digit = true;
        if seen_point {
            decimals = decimals.checked_add(1)?;
        }
        // Zeros wait until a digit follows, so that 1.000 does not use up the range.
        if digit == 0 {
            trailing_zeros = trailing_zeros.checked_add(1)?;
        } else {
            if mantissa != 0 {
                mantissa = mantissa.checked_mul(10_i128.checked_pow(trailing_zeros)?)?;
            }
            mantissa = mantissa.checked_mul(10)?.checked_add(i128::from(digit))?;
            trailing_zeros = 0;
        }
    }
    if !seen_digit {
        return None;
    }
    if mantissa == 0 {
        return Some(Rational::ZERO);
    }
    let power = exponent.checked_sub(decimals)?.checked_add(i32::try_from(trailing_zeros).ok()?)?;
    let scale = 10_i128.checked_pow(power.unsigned_abs())?;
    if power < 0 {
        Rational::new(mantissa, scale)
    } else {
        Rational::new(mantissa.checked_mul(scale)?, 1)
    }
}

/// The same where digits and power fit in a machine word, as those of most numbers do: several times as fast.
fn short_decimal(digits: &str, exponent: i32) -> Option<Rational> {
    // As many nines are below 2⁶⁴.
    const MOST_DIGITS: usize = 19;
    if digits.len() > MOST_DIGITS {
        return None;
    }
    let (mut mantissa, mut power, mut seen_point) = (0_u64, exponent, false);
    for byte in digits.bytes() {
        let digit = byte.wrapping_sub(b'0');
        if digit <= 9 {
            mantissa = mantissa.wrapping_mul(10).wrapping_add(u64::from(digit));
            power = power.checked_sub(i32::from(seen_point))?;
        } else if byte == b'.' && !seen_point {
            seen_point = true;
        } else {
            return None;
        }
    }
    let has_digit = digits.len() > usize::from(seen_point);
    let scale = i128::from(10_u64.checked_pow(power.unsigned_abs()).filter(|_| has_digit)?);
    let mantissa = i128::from(mantissa);
    if power < 0 {
        Rational::new(mantissa, scale)
    } else {
        Rational::new(mantissa.checked_mul(scale)?, 1)
    }
}

/// The `f64` nearest to `numerator / denominator`, for a denominator above 0.
pub(crate) const fn nearest(numerator: i128, denominator: i128) -> f64 {
    const EXACT: u128 = 1 << 53;
    let (n, d) = (numerator.unsigned_abs(), denominator.unsigned_abs());
    let magnitude = if n <= EXACT && d <= EXACT {
        // Both are exact, and an IEEE division rounds once. A machine's word converts faster.
        n as u64 as f64 / d as u64 as f64
    } else {
        nearest_quotient(n, d)
    };
    if numerator < 0 { -magnitude } else { magnitude }
}

/// `n / d` by long division, rounded once. `d` is at least 1 and below 2¹²⁷.
const fn nearest_quotient(n: u128, d: u128) -> f64 {
    // Fifty-three bits, one to round by, and one below it that says whether anything was left.
    const ENOUGH: u128 = 1 << 54;
    let (mut whole, mut rest) = div_rem(n, d);
    let mut halvings = 0_u32;
    while whole < ENOUGH && rest != 0 {
        // `rest` < `d` < 2¹²⁷ leaves at least one bit of room; `whole` < 2⁵⁴ leaves seventy-four.
        let room = rest.leading_zeros();
        let step = if room < 64 { room } else { 64 };
        let (bits, left) = div_rem(rest << step, d);
        whole = (whole << step) | bits;
        rest = left;
        halvings += step;
    }
    let sticky = if rest != 0 { 1 } else { 0 };
    // The integer conversion rounds to nearest, ties to even; the power of two is exact.
    (whole | sticky) as f64 * two_to_minus(halvings)
}

/// 2⁻ⁿ for n up to 1022.
const fn two_to_minus(n: u32) -> f64 {
    f64::from_bits((1023_u64.saturating_sub(n as u64)) << 52)
}

/// The greatest common divisor, by halving and subtracting (Stein 1967); 1 where both are 0.
pub(crate) const fn gcd(a: u128, b: u128) -> u128 {
    if a == 1 || b == 1 {
        return 1;
    }
    if a == 0 || b == 0 {
        let other = a | b;
        return if other == 0 { 1 } else { other };
    }
    let twos = (a | b).trailing_zeros();
    let mut a = a >> a.trailing_zeros();
    let mut b = b >> b.trailing_zeros();
    while a != b {
        // Most numbers fit in a machine word, where this is several times as fast.
        if a <= u64::MAX as u128 && b <= u64::MAX as u128 {
            return (odd_gcd(a as u64, b as u64) as u128) << twos;
        }
        if a > b {
            a -= b;
            a >>= a.trailing_zeros();
        } else {
            b -= a;
            b >>= b.trailing_zeros();
        }
    }
    a << twos
}

/// [`gcd`] of machine words.
const fn short_gcd(a: u64, b: u64) -> u64 {
    if a == 1 || b == 1 {
        return 1;
    }
    if a == 0 || b == 0 {
        let other = a | b;
        return if other == 0 { 1 } else { other };
    }
    odd_gcd(a >> a.trailing_zeros(), b >> b.trailing_zeros()) << (a | b).trailing_zeros()
}

/// [`gcd`] of two odd numbers.
const fn odd_gcd(a: u64, b: u64) -> u64 {
    let (mut less, mut more) = if a < b { (a, b) } else { (b, a) };
    // One is often a multiple of the other, as powers of ten are, or far larger.
    more = match more.checked_rem(less) {
        None | Some(0) => return less,
        Some(rest) => rest >> rest.trailing_zeros(),
    };
    while less != more {
        if less > more {
            (less, more) = (more, less);
        }
        more -= less;
        more >>= more.trailing_zeros();
    }
    less
}

/// `a / b` towards 0, for a `b` that is never 0 here.
const fn quotient(a: i128, b: i128) -> i128 {
    if b == 1 {
        return a;
    }
    // A division of machine words is one instruction.
    if a as i64 as i128 == a && b as i64 as i128 == b && b > 0 {
        return match (a as i64).checked_div(b as i64) {
            Some(quotient) => quotient as i128,
            None => 0,
        };
    }
    match a.checked_div(b) {
        Some(quotient) => quotient,
        None => 0,
    }
}

/// A tenth, and the last digit.
fn tenths(n: u128) -> (u128, u8) {
    // Of a machine word, as most are, it is one multiplication.
    if let Ok(short) = u64::try_from(n)
        && let (Some(tenth), Some(ones)) = (short.checked_div(10), short.checked_rem(10))
    {
        return (u128::from(tenth), ones as u8);
    }
    let (tenth, ones) = div_rem(n, 10);
    (tenth, ones as u8)
}

/// Decimals of the numbers over `denominator`; `None` where they have no end.
const fn decimals(denominator: u128) -> Option<u32> {
    let twos = denominator.trailing_zeros();
    let (mut fives, mut rest) = (0_u32, denominator >> twos);
    while rest != 1 {
        let (fifth, left) = match rest as u64 {
            // A machine word divides faster.
            short if short as u128 == rest => match (short.checked_div(5), short.checked_rem(5)) {
                (Some(fifth), Some(left)) => (fifth as u128, left as u128),
                _ => return None,
            },
            _ => div_rem(rest, 5),
        };
        if left != 0 {
            return None;
        }
        (fives, rest) = (fives.saturating_add(1), fifth);
    }
    Some(if twos > fives { twos } else { fives })
}

/// Quotient and rest, for a `b` that is never 0 here.
const fn div_rem(a: u128, b: u128) -> (u128, u128) {
    match (a.checked_div(b), a.checked_rem(b)) {
        (Some(quotient), Some(rest)) => (quotient, rest),
        _ => (0, 0),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;
    use rstest::rstest;
    use std::string::{String, ToString};

    fn rational(numerator: i128, denominator: i128) -> Rational {
        Rational::new(numerator, denominator).expect("in range")
    }

    /// `n / d` to enough decimals that the standard library's correctly rounded reader gives the same.
    fn schoolbook(n: i128, d: i128) -> f64 {
        let (mut rest, d) = (n.unsigned_abs(), d.unsigned_abs());
        let mut text = std::format!("{}{}.", if n < 0 { "-" } else { "" }, rest / d);
        rest %= d;
        for _ in 0..250 {
            if rest == 0 {
                break;
            }
            // Ten times the rest may not fit: add it up, taking the divisor off on the way.
            let (mut digit, mut sum) = (0, 0_u128);
            for _ in 0..10 {
                sum += rest;
                if sum >= d {
                    sum -= d;
                    digit += 1;
                }
            }
            rest = sum;
            text.push(char::from_digit(digit, 10).expect("a digit"));
        }
        text.push(if rest == 0 { '0' } else { '1' });
        text.parse().expect("decimal text")
    }

    #[rstest]
    #[case("12.5", 25, 2)]
    #[case(".035", 7, 200)]
    #[case("4.", 4, 1)]
    #[case("-0.10", -1, 10)]
    #[case("1.2e-4", 3, 25_000)]
    #[case("1.00000000000000000000000000000000000000000000000000", 1, 1)]
    #[case("2E+3", 2000, 1)]
    #[case("0e999", 0, 1)]
    fn reads_decimals(#[case] text: &str, #[case] numerator: i128, #[case] denominator: i128) {
        assert_eq!(Rational::parse_decimal(text), Some(rational(numerator, denominator)));
    }

    #[rstest]
    #[case("")]
    #[case(".")]
    #[case("-")]
    #[case("1.2.3")]
    #[case("1:")]
    #[case("1e")]
    #[case("1e400")]
    #[case("1e-400")]
    #[case("1e99999999999")]
    #[case("inf")]
    #[case("NaN")]
    #[case("999999999999999999999999999999999999999999")]
    fn refuses_what_is_no_decimal_in_range(#[case] text: &str) {
        assert_eq!(Rational::parse_decimal(text), None);
    }

    #[test]
    fn edges_do_not_wrap() {
        let largest = rational(i128::MAX, 1);
        assert_eq!(Rational::new(1, 0), None);
        assert_eq!(Rational::new(i128::MIN, 1), None);
        assert_eq!(largest.checked_add(Rational::ONE), None);
        assert_eq!(largest.checked_mul(largest), None);
        assert_eq!(Rational::ZERO.reciprocal(), None);
        assert_eq!(Rational::ONE.checked_div(Rational::ZERO), None);
        assert_eq!(Rational::ZERO.checked_pow(-1), None);
        assert_eq!(largest.checked_mul(rational(1, i128::MAX)), Some(Rational::ONE));
        assert!(
            rational(i128::MAX, i128::MAX - 1) > rational(i128::MAX - 1, i128::MAX - 2).negated()
        );
        assert!(rational(i128::MAX, i128::MAX - 1) < rational(i128::MAX - 1, i128::MAX - 2));
    }

    #[rstest]
    // Halfway between two f64: the even one is taken (IEEE 754, roundTiesToEven).
    #[case((1 << 53) + 1, 1, 9_007_199_254_740_992.0)]
    #[case((1 << 53) + 3, 1, 9_007_199_254_740_996.0)]
    #[case((1 << 54) + 2, 2, 9_007_199_254_740_992.0)]
    #[case(i128::MAX, 1, 170_141_183_460_469_231_731_687_303_715_884_105_728.0)]
    #[case(0, 1, 0.0)]
    fn rounds_ties_to_even(#[case] n: i128, #[case] d: i128, #[case] nearest: f64) {
        assert_eq!(rational(n, d).to_f64().to_bits(), nearest.to_bits());
    }

    #[rstest]
    #[case(0.1, 1, 10)]
    #[case(12.5, 25, 2)]
    #[case(-1.03, -103, 100)]
    #[case(1e21, 1_000_000_000_000_000_000_000, 1)]
    #[case(-0.0, 0, 1)]
    fn takes_an_f64_as_its_shortest_decimal(#[case] x: f64, #[case] n: i128, #[case] d: i128) {
        assert_eq!(Rational::from_f64(x), Some(rational(n, d)));
    }

    #[rstest]
    #[case(f64::NAN)]
    #[case(f64::INFINITY)]
    #[case(f64::MAX)]
    #[case(f64::MIN_POSITIVE)]
    fn refuses_an_f64_that_does_not_fit(#[case] x: f64) {
        assert_eq!(Rational::from_f64(x), None);
    }

    #[rstest]
    #[case(5, 4, "1.25")]
    #[case(-5, 4, "-1.25")]
    #[case(-1, 3, "-1/3")]
    #[case(-4, 3, "-1 1/3")]
    #[case(1, 64, "0.015625")]
    #[case(1000, 1, "1000")]
    #[case(1, 1 << 126, "1/85070591730234615865843651857942052864")]
    fn prints(#[case] n: i128, #[case] d: i128, #[case] text: &str) {
        assert_eq!(rational(n, d).to_string(), text);
    }

    fn any_part() -> impl Strategy<Value = i128> {
        prop_oneof![
            (-1_000_i128..=1_000),
            any::<i64>().prop_map(i128::from),
            (-i128::MAX..=i128::MAX),
        ]
    }

    fn any_rational() -> impl Strategy<Value = Rational> {
        (any_part(), any_part()).prop_filter_map("a fraction", |(n, d)| Rational::new(n, d))
    }

    fn small_rational() -> impl Strategy<Value = Rational> {
        (any::<i32>(), 1_i128..=1_000_000_000)
            .prop_filter_map("a fraction", |(n, d)| Rational::new(i128::from(n), d))
    }

    proptest! {
        /// As the standard library pads its digits, without the last zeros.
        #[test]
        fn prints_decimals(n in -i128::MAX..=i128::MAX, bits in 1_u32..127, decimals in 1_u32..=38) {
            let (n, power) = (n >> (127 - bits), 10_i128.pow(decimals));
            let (whole, fraction) = ((n / power).unsigned_abs(), (n % power).unsigned_abs());
            let width = usize::try_from(decimals).expect("a width");
            let padded = format!("{whole}.{fraction:0>width$}");
            let trimmed = padded.trim_end_matches('0').trim_end_matches('.');
            let sign = if n < 0 { "-" } else { "" };
            prop_assert_eq!(rational(n, power).to_string(), format!("{sign}{trimmed}"));
        }

        #[test]
        fn the_nearest_f64(q in any_rational()) {
            let expected = schoolbook(q.numerator(), q.denominator());
            prop_assert_eq!(q.to_f64().to_bits(), (expected + 0.0).to_bits(), "{:?}", q);
        }

        #[test]
        fn the_nearest_f64_of_decimal_text(digits in any::<i64>(), exponent in -30_i32..=18) {
            let text: String = std::format!("{digits}e{exponent}");
            if let Some(q) = Rational::parse_decimal(&text) {
                prop_assert_eq!(q.to_f64(), text.parse::<f64>().expect("decimal text"));
            }
        }

        #[test]
        fn an_f64_comes_back(x in -1e15_f64..1e15) {
            if let Some(q) = Rational::from_f64(x) {
                prop_assert_eq!(q.to_f64().to_bits(), (x + 0.0).to_bits());
            }
        }

        #[test]
        fn field_laws(a in small_rational(), b in small_rational()) {
            let sum = a.checked_add(b).expect("fits");
            prop_assert_eq!(sum.checked_sub(b), Some(a));
            let product = a.checked_mul(b).expect("fits");
            prop_assert_eq!(product, b.checked_mul(a).expect("fits"));
            if !b.is_zero() {
                prop_assert_eq!(product.checked_div(b), Some(a));
            }
        }

        #[test]
        fn orders_as_cross_products_do(a in small_rational(), b in small_rational()) {
            let left = a.numerator() * b.denominator();
            let right = b.numerator() * a.denominator();
            prop_assert_eq!(a.cmp(&b), left.cmp(&right));
        }

        #[test]
        fn orders_as_differences_do(a in any_rational(), b in any_rational()) {
            if let Some(difference) = a.checked_sub(b) {
                prop_assert_eq!(a.cmp(&b), difference.cmp(&Rational::ZERO));
            }
            prop_assert_eq!(a.cmp(&b), b.cmp(&a).reverse());
        }
    }
}
