//! Cost of a pot, an order, a pack and a piece, the price to ask for them, and stock that runs short.
//!
//! Money is decimal. A mass becomes decimal once, in steps of 0.0001 g; every single cost is brought to steps of
//! 0.000 001 of the currency, half to even; from there on sums are exact. Only what is shown or asked for is
//! rounded to the currency's minor unit ([`Money::rounded`], [`Money::rounded_up`]), so a rounded total may
//! differ from the sum of rounded lines by a minor unit, and the total is the one that is right.

mod costing;
mod error;
mod job;
mod materials;
mod money;
mod number;
mod stock;

pub use costing::{Costing, PackItem, WorkTimes};
pub use error::CostError;
pub use job::{Job, JobCost, Labor, Packing, Profit};
pub use materials::{MaterialCosts, MaterialLine, Used};
pub use money::Money;
pub(crate) use number::{decimal, share};
pub use stock::{StockLine, StockNeed, stock};
