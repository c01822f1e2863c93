//! A price as a supplier states it: money per package.

use alloc::borrow::Cow;
use alloc::string::String;
use core::fmt;
use core::str::FromStr;

use rust_decimal::Decimal;

use crate::codes::codes;
use crate::fault::Diagnose;
use crate::quantity::{Amount, AmountError};

/// A currency by its ISO 4217 code, three capital letters.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Currency([u8; 3]);

impl FromStr for Currency {
    type Err = PriceError;

    fn from_str(text: &str) -> Result<Self, PriceError> {
        match <[u8; 3]>::try_from(text.as_bytes()) {
            Ok(code) if code.iter().all(u8::is_ascii_uppercase) => Ok(Self(code)),
            _ => Err(PriceError::Currency(text.into())),
        }
    }
}

impl Currency {
    /// The three letters.
    #[must_use]
    pub fn code(&self) -> &str {
        // Capital letters of ASCII by construction, so always text.
        core::str::from_utf8(&self.0).unwrap_or_default()
    }
}

impl fmt::Display for Currency {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.code())
    }
}

/// Money per package, e.g. `58.00 USD per 1 gal`.
#[derive(Debug, Clone, PartialEq)]
pub struct Price {
    /// Money in decimal, never binary.
    pub money: Decimal,
    /// Of which currency.
    pub currency: Currency,
    /// The package.
    pub per: Amount,
}

impl FromStr for Price {
    type Err = PriceError;

    fn from_str(text: &str) -> Result<Self, PriceError> {
        let unreadable = || PriceError::Shape(text.into());
        let (money, per) = text.split_once(" per ").ok_or_else(unreadable)?;
        let (number, currency) = money.trim().split_once(' ').ok_or_else(unreadable)?;
        let money = Decimal::from_str_exact(number).map_err(|_| unreadable())?;
        if money.is_sign_negative() {
            return Err(unreadable());
        }
        Ok(Self { money, currency: currency.trim().parse()?, per: Amount::parse(per)? })
    }
}

impl fmt::Display for Price {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} {} per {}", self.money, self.currency, self.per)
    }
}

/// Why a text is no price.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum PriceError {
    /// It is not money per amount.
    #[error("\"{0}\" does not read as a price.")]
    Shape(String),
    /// The currency is no three-letter code.
    #[error("\"{0}\" is not a currency code.")]
    Currency(String),
    /// The package cannot be read.
    #[error(transparent)]
    Package(#[from] AmountError),
}

impl Diagnose for PriceError {
    codes! {
        Self::Shape(_) => "price-shape",
        Self::Currency(_) => "price-currency",
        Self::Package(error) => error.code(),
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::Shape(_) => "Write money per package, such as \"58.00 USD per 1 gal\"; for work \"16.00 USD per 1 h\".".into(),
            Self::Currency(_) => {
                "Write the three capital letters of ISO 4217, such as USD or EUR.".into()
            }
            Self::Package(error) => error.help(),
        }
    }
}

#[cfg(test)]
mod tests {
    use std::string::ToString;

    use rstest::rstest;

    use super::*;

    #[rstest]
    #[case("58.00 USD per 1 gal", "58.00 USD per 1 gal")]
    #[case("6.75 EUR per 30 mL", "6.75 EUR per 30 mL")]
    #[case("0 USD per 1 kg", "0 USD per 1 kg")]
    #[case("9  USD per 25 lb", "9 USD per 25 lb")]
    fn prices_read_back(#[case] text: &str, #[case] printed: &str) {
        let price: Price = text.parse().unwrap();
        assert_eq!(price.to_string(), printed);
        assert_eq!(price.to_string().parse::<Price>().unwrap(), price);
    }

    #[test]
    fn money_is_decimal() {
        let price: Price = "0.10 USD per 1 g".parse().unwrap();
        assert_eq!(price.money * Decimal::from(3), Decimal::new(30, 2));
    }

    #[rstest]
    #[case("58.00", "price-shape")]
    #[case("58.00 USD", "price-shape")]
    #[case("USD 58 per 1 gal", "price-shape")]
    #[case("-1 USD per 1 gal", "price-shape")]
    #[case("1e400 USD per 1 gal", "price-shape")]
    #[case("58.00 usd per 1 gal", "price-currency")]
    #[case("58.00 $ per 1 gal", "price-currency")]
    #[case("58.00 USD per gal", "amount-no-number")]
    #[case("58.00 USD per 8 oz", "amount-ambiguous")]
    fn what_is_no_price_says_why(#[case] text: &str, #[case] code: &str) {
        let error = text.parse::<Price>().unwrap_err();
        assert_eq!(error.code(), code, "{error}");
        assert!(!error.help().is_empty());
    }
}
