//! Sums of money: exact, of one currency.

use alloc::vec::Vec;
use core::fmt;

use rust_decimal::prelude::ToPrimitive;
use rust_decimal::{Decimal, RoundingStrategy};

use super::CostError;
use super::number::{minus, over, plus, times};
use crate::price::Currency;

/// Decimals that a cost keeps.
const COST_DECIMALS: u32 = 6;

/// The largest sum that is counted; sums of a thousand million of them are still exact.
const LARGEST: i64 = 1_000_000_000_000_000;

/// How errors call what is beyond it.
const SUM: &str = "A sum of money";

/// A sum of money, kept in steps of 0.000 001 of its currency.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Money {
    amount: Decimal,
    currency: Currency,
}

impl Money {
    /// A sum, brought to steps of 0.000 001, half to even.
    ///
    /// # Errors
    /// [`CostError::OutOfRange`] beyond 1e15 to either side.
    pub fn new(amount: Decimal, currency: Currency) -> Result<Self, CostError> {
        let amount =
            amount.round_dp_with_strategy(COST_DECIMALS, RoundingStrategy::MidpointNearestEven);
        let amount = amount.normalize();
        if amount.abs() > Decimal::new(LARGEST, 0) {
            return Err(CostError::OutOfRange { what: SUM });
        }
        Ok(Self { amount, currency })
    }

    /// Nothing, in that currency.
    #[must_use]
    pub fn zero(currency: Currency) -> Self {
        Self { amount: Decimal::ZERO, currency }
    }

    /// How much.
    #[must_use]
    pub fn amount(self) -> Decimal {
        self.amount
    }

    /// Of which currency.
    #[must_use]
    pub fn currency(self) -> Currency {
        self.currency
    }

    /// This and `other`, exactly.
    ///
    /// # Errors
    /// [`CostError::MixedCurrencies`]; [`CostError::OutOfRange`].
    pub fn plus(self, other: Self) -> Result<Self, CostError> {
        self.check_currency(other)?;
        Self::new(plus(self.amount, other.amount, SUM)?, self.currency)
    }

    /// This less `other`, exactly.
    ///
    /// # Errors
    /// As [`Money::plus`].
    pub fn minus(self, other: Self) -> Result<Self, CostError> {
        self.check_currency(other)?;
        Self::new(minus(self.amount, other.amount, SUM)?, self.currency)
    }

    fn check_currency(self, other: Self) -> Result<(), CostError> {
        let (expected, found) = (self.currency, other.currency);
        if expected == found { Ok(()) } else { Err(CostError::MixedCurrencies { expected, found }) }
    }

    /// This `factor` times, divided by `divisor`, brought to steps of 0.000 001 once.
    ///
    /// # Errors
    /// [`CostError::OutOfRange`], also for a divisor of zero.
    pub fn scaled(self, factor: Decimal, divisor: Decimal) -> Result<Self, CostError> {
        scaled(self.amount, factor, divisor, self.currency)
    }

    /// Rounded to the currency's minor unit (ISO 4217), half away from zero, as a bill shows it.
    #[must_use]
    pub fn rounded(self) -> Self {
        self.to_minor(RoundingStrategy::MidpointAwayFromZero)
    }

    /// Rounded up to the currency's minor unit, so that a price covers what it must.
    #[must_use]
    pub fn rounded_up(self) -> Self {
        self.to_minor(RoundingStrategy::ToPositiveInfinity)
    }

    fn to_minor(self, strategy: RoundingStrategy) -> Self {
        let digits = minor_digits(self.currency);
        let mut amount = self.amount.round_dp_with_strategy(digits, strategy);
        // A bill shows its last zero: 12.50.
        amount.rescale(digits);
        Self { amount, ..self }
    }

    /// Splits the sum by `weights`, in the steps in which money is kept; the parts sum to it. What is left over
    /// when all parts are cut to whole steps goes, one each, to the parts with the greatest rest, the first of
    /// equals first. So a pot's cost is shared by the mass that each order takes.
    ///
    /// # Errors
    /// [`CostError::NoWeights`] where no weight is above zero or one is negative; [`CostError::OutOfRange`].
    pub fn split(self, weights: &[Decimal]) -> Result<Vec<Self>, CostError> {
        let total =
            weights.iter().try_fold(Decimal::ZERO, |sum, &weight| plus(sum, weight, SUM))?;
        if total <= Decimal::ZERO || weights.iter().any(|&weight| weight < Decimal::ZERO) {
            return Err(CostError::NoWeights { money: self.amount, currency: self.currency });
        }
        let mut parts: Vec<(Decimal, Decimal)> = Vec::with_capacity(weights.len());
        let mut left = self.amount;
        for &weight in weights {
            let share = over(times(self.amount, weight, SUM)?, total, SUM)?;
            let cut =
                share.round_dp_with_strategy(COST_DECIMALS, RoundingStrategy::ToNegativeInfinity);
            left = minus(left, cut, SUM)?;
            parts.push((cut, minus(share, cut, SUM)?));
        }
        let unit = Decimal::new(1, COST_DECIMALS);
        let mut order: Vec<usize> = (0..parts.len()).collect();
        let rest = |place: &usize| parts.get(*place).map(|&(_, rest)| rest).unwrap_or_default();
        order.sort_by_key(|place| core::cmp::Reverse(rest(place)));
        for place in order {
            if left < unit {
                break;
            }
            if let Some((cut, _)) = parts.get_mut(place) {
                *cut = plus(*cut, unit, SUM)?;
                left = minus(left, unit, SUM)?;
            }
        }
        Ok(parts.into_iter().map(|(cut, _)| Self { amount: cut.normalize(), ..self }).collect())
    }
}

/// As it is kept, with its currency: `12.5 USD`.
impl fmt::Display for Money {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} {}", self.amount, self.currency)
    }
}

/// amount · factor / divisor as money.
pub(super) fn scaled(
    amount: Decimal,
    factor: Decimal,
    divisor: Decimal,
    currency: Currency,
) -> Result<Money, CostError> {
    Money::new(over(times(amount, factor, SUM)?, divisor, SUM)?, currency)
}

/// The smallest whole number of packages that holds this many.
pub(super) fn whole_packages(packages: Decimal) -> Result<u64, CostError> {
    packages.ceil().to_u64().ok_or(CostError::OutOfRange { what: "The number of packages" })
}

/// Decimals of the currency's minor unit: ISO 4217, list one (from memory); two for all that are not named.
fn minor_digits(currency: Currency) -> u32 {
    const NONE: [&str; 16] = [
        "BIF", "CLP", "DJF", "GNF", "ISK", "JPY", "KMF", "KRW", "PYG", "RWF", "UGX", "VND", "VUV",
        "XAF", "XOF", "XPF",
    ];
    const THREE: [&str; 7] = ["BHD", "IQD", "JOD", "KWD", "LYD", "OMR", "TND"];
    const FOUR: [&str; 2] = ["CLF", "UYW"];
    let code = currency.code();
    if NONE.contains(&code) {
        0
    } else if THREE.contains(&code) {
        3
    } else if FOUR.contains(&code) {
        4
    } else {
        2
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use rstest::rstest;
    use std::string::ToString;

    use super::*;
    use crate::fault::Diagnose;

    fn money(text: &str, currency: &str) -> Money {
        let amount = Decimal::from_str_exact(text).unwrap();
        Money::new(amount, currency.parse().unwrap()).unwrap()
    }

    #[rstest]
    // Half away from zero, at the minor unit of ISO 4217.
    #[case("12.345", "USD", "12.35 USD", "12.35 USD")]
    #[case("12.344999", "EUR", "12.34 EUR", "12.35 EUR")]
    #[case("-12.345", "EUR", "-12.35 EUR", "-12.34 EUR")]
    #[case("12.5", "USD", "12.50 USD", "12.50 USD")]
    #[case("12.5", "JPY", "13 JPY", "13 JPY")]
    #[case("12.3455", "KWD", "12.346 KWD", "12.346 KWD")]
    #[case("0.000001", "CLF", "0.0000 CLF", "0.0001 CLF")]
    fn rounds(#[case] sum: &str, #[case] currency: &str, #[case] near: &str, #[case] up: &str) {
        let sum = money(sum, currency);
        assert_eq!(sum.rounded().to_string(), near);
        assert_eq!(sum.rounded_up().to_string(), up);
    }

    #[test]
    fn a_tenth_and_two_tenths_are_three_tenths() {
        let sum = money("0.1", "USD").plus(money("0.2", "USD")).unwrap();
        assert_eq!(sum, money("0.3", "USD"));
        assert_eq!(sum.minus(money("0.3", "USD")).unwrap(), Money::zero(sum.currency()));
    }

    #[test]
    fn currencies_do_not_mix() {
        let refused = money("1", "USD").plus(money("1", "EUR")).unwrap_err();
        assert_eq!(refused.code(), "cost-mixed-currencies");
        assert_eq!(refused.to_string(), "EUR is mixed with amounts in USD.");
    }

    #[test]
    fn what_money_cannot_count_is_refused() {
        let usd: Currency = "USD".parse().unwrap();
        assert!(Money::new(Decimal::MAX, usd).is_err());
        for sign in [1, -1] {
            let most = Decimal::new(sign * LARGEST, 0);
            assert_eq!(Money::new(most, usd).unwrap().amount(), most);
            assert!(Money::new(most + Decimal::new(sign, 6), usd).is_err());
        }
        assert!(money("1", "USD").scaled(Decimal::ONE, Decimal::ZERO).is_err());
        assert!(money("1", "USD").scaled(Decimal::MAX, Decimal::TWO).is_err());
    }

    #[test]
    fn a_sum_splits_by_the_greatest_rest() {
        let weights = [1, 1, 1].map(Decimal::from);
        let parts = money("10", "USD").split(&weights).unwrap();
        let parts: Vec<_> = parts.iter().map(ToString::to_string).collect();
        assert_eq!(parts, ["3.333334 USD", "3.333333 USD", "3.333333 USD"]);
        assert_eq!(money("10", "USD").split(&[]).unwrap_err().code(), "cost-no-weights");
        let signed = [Decimal::from(2), Decimal::from(-1)];
        assert_eq!(money("10", "USD").split(&signed).unwrap_err().code(), "cost-no-weights");
    }

    proptest! {
        #[test]
        fn parts_sum_to_the_whole(
            micros in -1_000_000_000_000_i64..1_000_000_000_000,
            weights in prop::collection::vec(0_u32..100_000, 1..12),
        ) {
            let whole = Money::new(Decimal::new(micros, 6), "USD".parse().unwrap()).unwrap();
            let weights: Vec<Decimal> = weights.into_iter().map(Decimal::from).collect();
            if let Ok(parts) = whole.split(&weights) {
                let sum = parts.iter().try_fold(Money::zero(whole.currency()), |sum, &part| sum.plus(part));
                prop_assert_eq!(sum.unwrap(), whole);
                let total: Decimal = weights.iter().sum();
                for (part, weight) in parts.iter().zip(&weights) {
                    let fair = whole.amount() * weight / total;
                    prop_assert!((part.amount() - fair).abs() <= Decimal::new(1, 6));
                }
            }
        }

        #[test]
        fn sums_are_exact_in_any_order(list in prop::collection::vec(-1_000_000_000_i64..1_000_000_000, 1..40)) {
            let usd: Currency = "USD".parse().unwrap();
            let sums = |list: &[i64]| {
                list.iter().try_fold(Money::zero(usd), |sum, &micros| {
                    sum.plus(Money::new(Decimal::new(micros, 6), usd)?)
                }).unwrap()
            };
            let mut reversed = list.clone();
            reversed.reverse();
            prop_assert_eq!(sums(&list), sums(&reversed));
            prop_assert_eq!(sums(&list).amount(), Decimal::new(list.iter().sum(), 6));
        }
    }
}
