//! Errors of a cost.

use alloc::borrow::Cow;
use alloc::format;
use alloc::string::String;

use crate::codes::codes;
use crate::fault::Diagnose;
use crate::material::MaterialError;
use crate::price::Currency;
use crate::quantity::AmountError;
use crate::show;

/// Why a cost was refused.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum CostError {
    /// Sums in two currencies.
    #[error("{found} is mixed with amounts in {expected}.")]
    MixedCurrencies {
        /// The currency of the rest.
        expected: Currency,
        /// The other one.
        found: Currency,
    },
    /// A number that money cannot count.
    #[error("{what} is too large, or no number.")]
    OutOfRange {
        /// Which number.
        what: &'static str,
    },
    /// A number that is negative or none.
    #[error("{what} must be zero or a number above.")]
    Negative {
        /// Which number.
        what: &'static str,
    },
    /// A share outside 0 to 100 %.
    #[error("{what} must be from 0 % to 100 %, not {} %.", show::number(.share * 100.0))]
    Share {
        /// Which share.
        what: &'static str,
        /// The share.
        share: f64,
    },
    /// A margin that no price has.
    #[error("No price leaves a margin of {} %.", show::number(.margin * 100.0))]
    Margin {
        /// The margin as a share of the price.
        margin: f64,
    },
    /// A package of nothing.
    #[error("The package of \"{name}\" holds nothing.")]
    EmptyPackage {
        /// The material of the package.
        name: String,
    },
    /// A package that is measured in something else.
    #[error("The price of \"{name}\" is not per {wanted}.")]
    WrongPackage {
        /// The thing with this price.
        name: String,
        /// The measure that the package needs.
        wanted: &'static str,
    },
    /// A material listed twice.
    #[error("\"{material}\" is listed twice.")]
    Twice {
        /// The material.
        material: String,
    },
    /// Nothing was used.
    #[error("No material was used.")]
    NothingUsed,
    /// More is said to come back than was used.
    #[error("{} comes back of {} that was used.", show::mass(.returned), show::mass(.used))]
    ReturnedTooMuch {
        /// The amount that comes back.
        returned: crate::quantity::Mass,
        /// The amount used.
        used: crate::quantity::Mass,
    },
    /// A job without a piece or a pack.
    #[error("There is no {what} to bear the cost.")]
    Nothing {
        /// The thing that is missing.
        what: &'static str,
    },
    /// More packs than pieces to go into them.
    #[error("There are more packs than pieces to go into them: {packs} and {pieces}.")]
    EmptyPacks {
        /// Pieces.
        pieces: u32,
        /// Packs.
        packs: u32,
    },
    /// Nothing to split a sum by.
    #[error("There is nothing to split {money} {currency} by.")]
    NoWeights {
        /// The sum.
        money: rust_decimal::Decimal,
        /// Its currency.
        currency: Currency,
    },
    /// A price or a density is missing.
    #[error(transparent)]
    Material(#[from] MaterialError),
    /// A package cannot be converted.
    #[error(transparent)]
    Amount(#[from] AmountError),
}

impl Diagnose for CostError {
    codes! {
        Self::MixedCurrencies { .. } => "cost-mixed-currencies",
        Self::OutOfRange { .. } => "cost-out-of-range",
        Self::Negative { .. } => "cost-negative",
        Self::Share { .. } => "cost-share-out-of-range",
        Self::Margin { .. } => "cost-margin",
        Self::EmptyPackage { .. } => "cost-empty-package",
        Self::WrongPackage { .. } => "cost-wrong-package",
        Self::Twice { .. } => "cost-material-twice",
        Self::NothingUsed => "cost-nothing-used",
        Self::ReturnedTooMuch { .. } => "cost-returned-too-much",
        Self::Nothing { .. } => "cost-nothing-made",
        Self::EmptyPacks { .. } => "cost-empty-packs",
        Self::NoWeights { .. } => "cost-no-weights",
        Self::Material(error) => error.code(),
        Self::Amount(error) => error.code(),
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::MixedCurrencies { expected, .. } => format!(
                "State all prices in {expected}; a rate of exchange is the shop's own and of the day."
            )
            .into(),
            Self::OutOfRange { .. } => "Give masses up to 900 000 t and 9 000 000 packages, and sums up to 1e15.".into(),
            Self::Negative { .. } => "Give 0 for none.".into(),
            Self::Share { .. } => "Give a share, such as 50 %.".into(),
            Self::Margin { .. } => {
                "A margin is a share of the price, from 0 % to below 100 %; for a share of the cost, state a markup.".into()
            }
            Self::EmptyPackage { .. } => "Give what one package holds, such as \"58.00 USD per 1 gal\".".into(),
            Self::WrongPackage { wanted, .. } => format!("State the price per {wanted}.").into(),
            Self::Twice { .. } => "Add the two together: packages are counted over all of a material.".into(),
            Self::NothingUsed => "Give at least one material with the mass that was used.".into(),
            Self::ReturnedTooMuch { used, .. } => format!(
                "Give at most {}: what is melted again or kept came out of this pot.",
                show::mass(used).at_most()
            )
            .into(),
            Self::Nothing { .. } => "Give at least one.".into(),
            Self::EmptyPacks { .. } => {
                "Give all pieces of the job, and at most as many packs.".into()
            }
            Self::NoWeights { .. } => {
                "Give each part a weight of zero or more, and at least one above zero.".into()
            }
            Self::Material(error) => error.help(),
            Self::Amount(error) => error.help(),
        }
    }
}
