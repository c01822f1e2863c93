//! An amount in another unit.

use alloc::string::String;

use super::{request, response};
use crate::document::resolve::Resolver;
use crate::fault::Faults;
use crate::json::path::Path::At;
use crate::quantity::{Amount, System, Unit};

request! {
    /// Asks for an amount in another unit.
    pub struct ConvertRequest {
        required {
            amount: Amount,
            to: String,
        }
        optional {
            measures: System,
        }
    }
}

response! {
    /// The amount in the unit that was asked for.
    pub struct ConvertResponse {
        /// As text that reads back: exactly where a decimal or a fraction over at most 1000 says it, else as `value`.
        pub amount: String,
        /// The number.
        pub value: f64,
        /// The unit.
        pub unit: String,
    }
}

impl ConvertRequest {
    /// Converts the amount, exactly, and rounds the number once.
    ///
    /// # Errors
    /// An unknown unit, one of another dimension, or a word that the measuring system lacks.
    pub fn answer(&self) -> Result<ConvertResponse, Faults> {
        let mut resolver = Resolver::of_request(self.measures);
        let unit = resolver.keep(&At("/to"), Unit::parse(&self.to));
        let amount = unit.and_then(|unit| {
            let converted = self.amount.in_unit(unit, resolver.system);
            resolver.keep(&At("/amount"), converted)
        });
        let response = amount.map(|amount| ConvertResponse {
            amount: alloc::format!("{}", amount.legible()),
            value: amount.value().to_f64(),
            unit: alloc::format!("{}", amount.unit()),
        });
        resolver.finish(response)
    }
}
