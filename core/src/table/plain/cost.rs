//! Prices.

use alloc::borrow::Cow;

use crate::codes::codes;
use crate::fault::Diagnose;
use crate::parameter::{Check, Parameter};
use crate::show;
use crate::table::{Refusal, calculation};

/// Steps of a margin in one: those of [`crate::cost::Profit`].
const STEPS: f64 = 1e9;

/// Why there is no price.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum PlainPriceError {
    /// The margin is so near to 1 that the price is larger than a count.
    #[error("The price for a margin of {} % is above {}.", show::number(.margin * 100.0), u32::MAX)]
    TooLarge {
        /// The margin.
        margin: f64,
    },
}

impl Diagnose for PlainPriceError {
    codes! {
        Self::TooLarge { .. } => "price-too-large",
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::TooLarge { .. } => "Give a smaller margin, as a share of the price.".into(),
        }
    }

    fn parameter(&self) -> Option<Parameter> {
        Some(Parameter::CostMargin)
    }
}

calculation! {
    /// Price for a cost, in the smallest unit of the currency (cents), from the share of the price that the shop keeps.
    ///
    /// price = cost/(1 − margin), rounded up, so that the margin is never missed; in whole numbers, never in binary
    /// fractions. Costs of materials, work and packing with their packages and currencies: the request `cost`.
    PRICE = "price": PriceOf -> PriceOfResult
    takes {
        cost: u32 = CostInMinorUnits,
        cost_margin: f64 = CostMargin,
    }
    gives {
        /// Price, in the smallest unit of the currency.
        price: u32 = "price" Count,
    }
    request "cost"
    example PriceOf { cost: 750, cost_margin: 0.4 } => PriceOfResult { price: 1250 };
}

impl PriceOf {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges; a price beyond 42 949 672.95 of a currency with cents.
    pub fn calculate(&self) -> Result<PriceOfResult, Refusal> {
        let mut check = Check::new();
        check
            .number(Parameter::CostInMinorUnits, f64::from(self.cost))
            .number(Parameter::CostMargin, self.cost_margin);
        check.finish()?;
        // Whole numbers keep the decimals of money out of a program that only asks for a price.
        let rest = (STEPS - libm::round(self.cost_margin * STEPS)) as u64;
        let owed = u64::from(self.cost).saturating_mul(STEPS as u64);
        let price = owed.checked_next_multiple_of(rest).and_then(|owed| owed.checked_div(rest));
        let price = price.and_then(|price| u32::try_from(price).ok());
        let beyond = PlainPriceError::TooLarge { margin: self.cost_margin };
        Ok(PriceOfResult { price: price.ok_or(beyond)? })
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use rust_decimal::Decimal;
    use rust_decimal::prelude::ToPrimitive;

    use super::*;
    use crate::cost::{Money, Profit};
    use crate::quantity::Ratio;

    #[test]
    fn a_margin_of_nearly_all_is_refused() {
        for (cost, cost_margin) in [(1, 1.0 - 1e-10), (1_000_000_000, 0.9)] {
            let refused = PriceOf { cost, cost_margin }.calculate().unwrap_err();
            assert_eq!(refused.code(), "price-too-large");
        }
        assert_eq!(
            PriceOf { cost: 0, cost_margin: 0.9 }.calculate(),
            Ok(PriceOfResult { price: 0 })
        );
    }

    proptest! {
        /// The price of the request `cost`, which is calculated in decimals.
        #[test]
        fn a_price_is_that_of_decimals(cost in 0..4_000_000_u32, margin in 0.0..0.999f64) {
            let cents = Decimal::new(i64::from(cost), 2);
            let money = Money::new(cents, "XTS".parse().unwrap()).unwrap();
            let price = Profit::Margin(Ratio::from(margin)).price(money).unwrap();
            let wanted = (price.amount() * Decimal::ONE_HUNDRED).to_u32().unwrap();
            let found = PriceOf { cost, cost_margin: margin }.calculate().unwrap();
            prop_assert_eq!(found.price, wanted);
        }
    }
}
