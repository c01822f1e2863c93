//! Amounts in documents: as text, or as a number and a unit.

use super::{Amount, AmountError, MeasuredAmount, Rational, SpreadKind, System, parse};
use crate::fault::Diagnose;
use alloc::format;
use alloc::string::String;
use core::fmt;
use core::marker::PhantomData;
use core::str::FromStr;
use serde::de::{Error, MapAccess, Visitor};
use serde::{Deserialize, Deserializer, Serialize, Serializer};

impl Serialize for Amount {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

impl Serialize for MeasuredAmount {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

impl Serialize for System {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(self.name())
    }
}

impl<'de> Deserialize<'de> for Amount {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_any(Either(PhantomData))
    }
}

impl<'de> Deserialize<'de> for MeasuredAmount {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_any(Either(PhantomData))
    }
}

impl<'de> Deserialize<'de> for System {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let name = String::deserialize(deserializer)?;
        name.parse().map_err(said)
    }
}

/// The error as serde carries it: what is wrong, and what would fix it.
fn said<E: Error>(error: AmountError) -> E {
    E::custom(format!("{error} {}", error.help()))
}

/// An amount as a program writes it: `{"value": 12.5, "unit": "g"}`.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Parts {
    value: f64,
    unit: String,
    /// One standard uncertainty, in the same unit; measured amounts alone have it.
    uncertainty: Option<f64>,
}

fn decimal(value: f64, unit: super::Unit) -> Result<Rational, AmountError> {
    Rational::from_f64(value).ok_or(AmountError::ValueOutOfRange { unit })
}

impl Amount {
    /// `value` of the unit that `unit` names, a per cent with its basis: `% of base`.
    pub(crate) fn from_parts(value: f64, unit: &str) -> Result<Self, AmountError> {
        let (unit, basis) = parse::measure(unit)?;
        let value = decimal(value, unit)?;
        match basis {
            Some(basis) => Self::share(value, unit, basis),
            None => Self::new(value, unit),
        }
    }
}

impl MeasuredAmount {
    /// The same with one standard uncertainty in that unit, where it has one.
    pub(crate) fn from_parts(
        value: f64,
        unit: &str,
        uncertainty: Option<f64>,
    ) -> Result<Self, AmountError> {
        let amount = Amount::from_parts(value, unit)?;
        let Some(uncertainty) = uncertainty else {
            return Ok(amount.into());
        };
        let width = decimal(uncertainty, amount.unit())?;
        Self::new(amount, width, None, SpreadKind::Standard)
    }
}

/// Read from text or from its parts.
trait Form: FromStr<Err = AmountError> {
    fn of<E: Error>(parts: &Parts) -> Result<Self, E>;
}

impl Form for Amount {
    fn of<E: Error>(parts: &Parts) -> Result<Self, E> {
        if parts.uncertainty.is_some() {
            return Err(E::unknown_field("uncertainty", &["value", "unit"]));
        }
        Self::from_parts(parts.value, &parts.unit).map_err(said)
    }
}

impl Form for MeasuredAmount {
    fn of<E: Error>(parts: &Parts) -> Result<Self, E> {
        Self::from_parts(parts.value, &parts.unit, parts.uncertainty).map_err(said)
    }
}

/// Accepts text or the parts.
struct Either<T>(PhantomData<T>);

impl<'de, T: Form> Visitor<'de> for Either<T> {
    type Value = T;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("an amount such as \"12.5 g\" or {\"value\": 12.5, \"unit\": \"g\"}")
    }

    fn visit_str<E: Error>(self, text: &str) -> Result<T, E> {
        text.parse().map_err(said)
    }

    fn visit_map<A: MapAccess<'de>>(self, map: A) -> Result<T, A::Error> {
        let parts = Parts::deserialize(serde::de::value::MapAccessDeserializer::new(map))?;
        T::of(&parts)
    }
}

#[cfg(feature = "schema")]
mod schema {
    use super::{Amount, MeasuredAmount, System};
    use alloc::borrow::Cow;
    use schemars::{JsonSchema, Schema, SchemaGenerator, json_schema};

    impl JsonSchema for Amount {
        fn schema_name() -> Cow<'static, str> {
            "Amount".into()
        }

        fn json_schema(_: &mut SchemaGenerator) -> Schema {
            json_schema!({
                "description": "An amount as a person writes it, or as a number and a unit.",
                "examples": ["1 1/4 cup", "40 drops", "12.5 g", "8 % of base", "330 °F"],
                "anyOf": [
                    { "type": "string" },
                    {
                        "type": "object",
                        "properties": {
                            "value": { "type": "number" },
                            "unit": { "type": "string" }
                        },
                        "required": ["value", "unit"],
                        "additionalProperties": false
                    }
                ]
            })
        }
    }

    impl JsonSchema for MeasuredAmount {
        fn schema_name() -> Cow<'static, str> {
            "MeasuredAmount".into()
        }

        fn json_schema(_: &mut SchemaGenerator) -> Schema {
            json_schema!({
                "description": "An amount that may carry its uncertainty: the number after ± is one standard \
                    uncertainty, unless (k=2) or (interval) follows; `uncertainty` is one standard uncertainty \
                    in the same unit.",
                "examples": ["1.03 g/mL ± 0.01", "12 g ± 2 %", "0.05 g ± 0.02 g (k=2)"],
                "anyOf": [
                    { "type": "string" },
                    {
                        "type": "object",
                        "properties": {
                            "value": { "type": "number" },
                            "unit": { "type": "string" },
                            "uncertainty": { "type": "number", "minimum": 0 }
                        },
                        "required": ["value", "unit"],
                        "additionalProperties": false
                    }
                ]
            })
        }
    }

    impl JsonSchema for System {
        fn schema_name() -> Cow<'static, str> {
            "System".into()
        }

        fn json_schema(_: &mut SchemaGenerator) -> Schema {
            json_schema!({
                "description": "The measuring system, which gives cup, tbsp, tsp, fl oz, pt, qt and gal \
                    their size.",
                "enum": Self::ALL.map(System::name)
            })
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::Unit;
    use rstest::rstest;
    use std::string::ToString;

    #[rstest]
    #[case(r#""1 1/4 cup""#, "1 1/4 cup")]
    #[case(r#"{"value": 12.5, "unit": "g"}"#, "12.5 g")]
    #[case(r#"{"value": 0.1, "unit": "g"}"#, "0.1 g")]
    #[case(r#"{"unit": "[tsp_us]", "value": 2}"#, "2 US tsp")]
    #[case(r#"{"value": 8, "unit": "% of base"}"#, "8 % of base")]
    #[case(r#"{"value": -40, "unit": "°C"}"#, "-40 °C")]
    fn an_amount_is_text_or_parts(#[case] json: &str, #[case] text: &str) {
        let amount: Amount = serde_json::from_str(json).expect("an amount");
        assert_eq!(amount.to_string(), text);
        assert_eq!(serde_json::to_value(amount).expect("JSON"), serde_json::Value::from(text));
    }

    #[rstest]
    #[case(r#""1.03 g/mL ± 0.01""#, "1.03 g/mL ± 0.01")]
    #[case(r#"{"value": 12.5, "unit": "g"}"#, "12.5 g")]
    #[case(r#"{"value": 12.5, "unit": "g", "uncertainty": 0.1}"#, "12.5 g ± 0.1")]
    fn a_measured_amount_is_text_or_parts(#[case] json: &str, #[case] text: &str) {
        let amount: MeasuredAmount = serde_json::from_str(json).expect("a measured amount");
        assert_eq!(amount.to_string(), text);
        assert_eq!(serde_json::to_value(amount).expect("JSON"), serde_json::Value::from(text));
    }

    #[rstest]
    #[case("12.5")]
    #[case("null")]
    #[case(r#""6 oz""#)]
    #[case(r#"{"value": 12.5}"#)]
    #[case(r#"{"value": 8, "unit": "%"}"#)]
    #[case(r#"{"value": -1, "unit": "g"}"#)]
    #[case(r#"{"value": 1e300, "unit": "g"}"#)]
    #[case(r#"{"value": 1, "value": 2, "unit": "g"}"#)]
    #[case(r#"{"value": 1, "unit": "g", "of": "salt"}"#)]
    #[case(r#"{"value": 1, "unit": "g", "uncertainty": 0.1}"#)]
    fn is_no_amount(#[case] json: &str) {
        assert!(serde_json::from_str::<Amount>(json).is_err());
    }

    #[test]
    fn an_error_says_what_would_do() {
        let error = serde_json::from_str::<Amount>(r#""1 cupp""#).expect_err("no unit");
        assert!(error.to_string().contains("Did you mean cup?"), "{error}");
        let error = serde_json::from_str::<Amount>("12.5").expect_err("no text");
        assert!(error.to_string().contains("an amount such as"), "{error}");
    }

    #[test]
    fn a_system_is_its_name() {
        let system: System = serde_json::from_str(r#""us-label""#).expect("a system");
        assert_eq!(system, System::UsLabel);
        assert_eq!(serde_json::to_value(system).expect("JSON"), "us-label");
        assert!(serde_json::from_str::<System>(r#""US""#).is_err());
    }

    #[test]
    fn every_amount_of_parts_has_its_unit() {
        let amount: Amount =
            serde_json::from_str(r#"{"value": 1, "unit": "mL"}"#).expect("an amount");
        assert_eq!(amount.unit(), Unit::MILLILITER);
    }
}
