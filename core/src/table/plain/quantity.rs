//! Units and amounts.

use crate::quantity::{Amount, System, Unit};
use crate::table::{Refusal, calculation};

calculation! {
    /// Converts an amount as a person writes it, such as `1 1/4 cup` or `330 °F`, exactly, and rounds once.
    ///
    /// What can be read two ways (`6 oz`, `1,25 cup`) is refused with both readings in the message.
    CONVERT = "convert": Convert<'a> -> ConvertResult
    takes {
        amount: &'a str = Amount,
        to: &'a str = To,
        measures: Option<System> = Measures,
    }
    gives {
        /// The number, in the unit of `to`.
        value: f64 = "value" Any,
    }
    request "convert"
    example Convert { amount: "1 1/4 cup", to: "mL", measures: None } => ConvertResult { value: 295.735_295_625 };
}

impl Convert<'_> {
    /// Calculates.
    ///
    /// # Errors
    /// A text that is not an amount or a unit, can be read as several, or measures something else.
    pub fn calculate(&self) -> Result<ConvertResult, Refusal> {
        let system = self.measures.unwrap_or(System::UsCustomary);
        let amount = Amount::parse(self.amount)?;
        let to = Unit::parse(self.to)?;
        Ok(ConvertResult { value: amount.in_unit(to, system)?.value().to_f64() })
    }
}
