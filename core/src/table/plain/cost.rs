//! Prices.

use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;

use crate::cost::{Money, Profit};
use crate::parameter::{Check, Parameter};
use crate::quantity::Ratio;
use crate::table::{Refusal, calculation};

calculation! {
    /// Price for a cost, in the smallest unit of the currency (cents), from the share of the price that the shop keeps.
    ///
    /// price = cost/(1 − margin), rounded up, so that the margin is never missed; in decimal, never in binary. Costs of
    /// materials, work and packing with their packages and currencies: the request `cost`.
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
        // XTS is the code that ISO 4217 keeps for tests; like most currencies it is taken to have two decimals.
        let cents = Decimal::new(i64::from(self.cost), 2);
        let cost = Money::new(cents, "XTS".parse()?)?;
        let price = Profit::Margin(Ratio::from(self.cost_margin)).price(cost)?;
        let price =
            price.amount().checked_mul(Decimal::ONE_HUNDRED).and_then(|price| price.to_u32());
        let beyond = || crate::cost::CostError::OutOfRange { what: "the price" };
        Ok(PriceOfResult { price: price.ok_or_else(beyond)? })
    }
}
