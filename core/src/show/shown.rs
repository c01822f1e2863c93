//! A quantity in a result: the number, and how a bench reads it.

use alloc::format;
use alloc::string::String;

use crate::quantity::{
    Amount, DynamicViscosity, Length, Mass, MassDensity, Measurable, Power, Pressure, Ratio,
    System, TemperatureInterval, ThermodynamicTemperature, Time, Unit, Velocity, Volume, value_in,
};
use crate::words::words;

words! {
    /// The scale that a text is on, where two are in use.
    pub enum TextScale {
        /// Degrees Fahrenheit, inches of mercury, cups.
        Us = "us",
        /// Degrees Celsius, kilopascals, milliliters.
        Metric = "metric",
    }
}

impl TextScale {
    /// The scale of thermometers and gauges where a book measures in `system`.
    pub(crate) fn of(system: System) -> Self {
        match system {
            System::UsCustomary | System::UsLabel => Self::Us,
            System::Metric | System::Imperial => Self::Metric,
        }
    }

    /// The other one.
    #[must_use]
    pub const fn other(self) -> Self {
        match self {
            Self::Us => Self::Metric,
            Self::Metric => Self::Us,
        }
    }
}

/// A quantity and its text. In a document it is `{ "text", "value", "unit" }`, the value in the
/// unit that all results use for its kind: g, mL, g/mL, °C, K, s, cm/s, kPa, W, Pa.s, 1; and
/// `"scale"` and `"other"`, where it is read on two scales.
#[derive(Debug, Clone, PartialEq)]
pub struct Shown<Q> {
    /// The quantity.
    pub quantity: Q,
    /// How a bench reads it, in the book's measures.
    pub text: String,
    /// The scale of the text, where two are in use: of temperatures, pressures, and volumes that cups are filled to. None of
    /// any other quantity, and of a plan that an older version stored.
    pub scale: Option<TextScale>,
    /// The same on the other scale, where both are in use.
    pub other: Option<String>,
    /// The number in the unit of results.
    value: f64,
}

/// A kind of quantity that results show, and its unit there.
pub trait Showable: Measurable {
    /// The unit's symbol.
    const UNIT: &'static str;

    /// The value in that unit.
    fn shown_value(self) -> f64;

    /// The quantity that is `value` of that unit.
    fn from_shown(value: f64) -> Self;
}

/// Powers of ten between SI and the units of results are exact integers, so that a product or
/// a quotient with them is rounded once.
macro_rules! showable {
    ($($quantity:ident = $unit:literal, $value:ident => $to:expr, $from:expr;)*) => {$(
        impl Showable for $quantity {
            const UNIT: &'static str = $unit;

            fn shown_value(self) -> f64 {
                let $value = self.si();
                $to
            }

            fn from_shown($value: f64) -> Self {
                Self::from_si($from)
            }
        }
    )*};
}

showable! {
    Mass = "g", x => x * 1e3, x / 1e3;
    Volume = "mL", x => x * 1e6, x / 1e6;
    Length = "mm", x => x * 1e3, x / 1e3;
    MassDensity = "g/mL", x => x / 1e3, x * 1e3;
    Ratio = "1", x => x, x;
    ThermodynamicTemperature = "°C", x => x - 273.15, x + 273.15;
    TemperatureInterval = "K", x => x, x;
    Time = "s", x => x, x;
    Velocity = "cm/s", x => x * 1e2, x / 1e2;
    Pressure = "kPa", x => x / 1e3, x * 1e3;
    Power = "W", x => x, x;
    DynamicViscosity = "Pa.s", x => x, x;
}

impl<Q: Showable> Shown<Q> {
    /// `quantity` with its text. The quantity is what a document of it gives back, to the bit: at most one rounding away, so
    /// that a plan answers as it does when it is stored and read again.
    #[must_use]
    pub fn new(quantity: Q, text: impl Into<String>) -> Self {
        Self::of_value(quantity.shown_value(), text)
    }

    /// The quantity that is `value` of the unit of results, with its text.
    fn of_value(value: f64, text: impl Into<String>) -> Self {
        Self { quantity: Q::from_shown(value), text: text.into(), scale: None, other: None, value }
    }

    /// The number in the unit of results. Where the text is all of the quantity (`4 cup`), it is the number nearest to
    /// what the text says.
    #[must_use]
    pub fn value(&self) -> f64 {
        self.value
    }

    /// The same, where `amount` is this quantity but for rounding: its number is then the nearest to that of the amount
    /// in `unit`, which is the unit of results. 4 cup are 946.352946 mL, not 946.3529460000001.
    #[must_use]
    pub(crate) fn said_by(self, amount: &Amount, unit: Unit, system: System) -> Self {
        let exact = match amount.unit() == unit {
            true => Ok(*amount),
            // Most texts are rounded: exact numbers take long.
            false if self.is_far_from(amount, system) => return self,
            false => amount.in_unit(unit, system),
        };
        match exact {
            Ok(amount) => self.said_as(amount.value().to_f64()),
            Err(_) => self,
        }
    }

    /// Whether `amount` is another quantity, by far more than the roundings of [`Self::said_as`].
    fn is_far_from(&self, amount: &Amount, system: System) -> bool {
        const FAR: f64 = 1e-9;
        let Ok(reading) = value_in(self.quantity, amount.unit(), system) else { return false };
        let scale = libm::fabs(reading) + libm::fabs(Q::from_si(0.0).shown_value());
        libm::fabs(reading - amount.value().to_f64()) > FAR * scale
    }

    /// The same, where `exact` is its number but for rounding: then that is its number.
    #[must_use]
    pub(crate) fn said_as(self, exact: f64) -> Self {
        // A few roundings of a number, or of a temperature as far from absolute zero.
        const ROUNDINGS: f64 = 8.0 * f64::EPSILON;
        let scale = libm::fabs(exact) + libm::fabs(Q::from_si(0.0).shown_value());
        match libm::fabs(exact - self.value) <= ROUNDINGS * scale {
            true => {
                Self { scale: self.scale, other: self.other, ..Self::of_value(exact, self.text) }
            }
            false => self,
        }
    }

    /// The same, its text being on `scale`, with its text on the other one.
    #[must_use]
    pub(crate) fn or(self, scale: TextScale, other: impl Into<String>) -> Self {
        Self { scale: Some(scale), other: Some(other.into()), ..self }
    }

    /// The same with another text.
    #[cfg(feature = "document")]
    #[must_use]
    pub(crate) fn with_text(self, text: String) -> Self {
        Self { text, ..self }
    }

    /// Its text on `scale`; that which it has, where only one is in use.
    #[must_use]
    pub fn on(&self, scale: TextScale) -> &str {
        match (self.scale, &self.other) {
            (Some(own), Some(other)) if own != scale => other,
            _ => &self.text,
        }
    }

    /// Its text with that on the other scale: `338 °F (170 °C)`.
    #[must_use]
    pub fn on_both_scales(&self) -> String {
        match &self.other {
            Some(other) => format!("{} ({other})", self.text),
            None => self.text.clone(),
        }
    }
}

#[cfg(feature = "document")]
mod document {
    use alloc::borrow::Cow;

    use alloc::format;
    use alloc::string::String;
    use alloc::vec::Vec;

    use serde::{Serialize, Serializer};
    use serde_json::Value;

    use super::{Showable, Shown, TextScale};
    use crate::fault::Fault;
    use crate::json::read_back::{Parts, ReadBack, deserialize_by_reading_back, or_null};
    use crate::json::reader::Node;

    /// A quantity in a result.
    #[derive(Serialize)]
    #[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
    #[serde(rename = "Shown", deny_unknown_fields)]
    struct Form<'a> {
        /// How a bench reads it, in the book's measures.
        text: Cow<'a, str>,
        /// The scale of the text, where two are in use: of temperatures, pressures, and volumes that cups are filled to.
        #[serde(skip_serializing_if = "Option::is_none")]
        scale: Option<TextScale>,
        /// The same on the other scale, where both are in use.
        #[serde(skip_serializing_if = "Option::is_none")]
        other: Option<Cow<'a, str>>,
        /// The number.
        value: f64,
        /// Its unit.
        unit: Cow<'a, str>,
    }

    impl<Q: Showable> Serialize for Shown<Q> {
        fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
            let form = Form {
                text: Cow::Borrowed(&self.text),
                scale: self.scale,
                other: self.other.as_deref().map(Cow::Borrowed),
                value: self.value,
                unit: Cow::Borrowed(Q::UNIT),
            };
            form.serialize(serializer)
        }
    }

    #[cfg(feature = "schema")]
    impl<Q: Showable> schemars::JsonSchema for Shown<Q> {
        fn schema_name() -> Cow<'static, str> {
            Form::schema_name()
        }

        fn json_schema(generator: &mut schemars::SchemaGenerator) -> schemars::Schema {
            Form::json_schema(generator)
        }
    }

    or_null! { TextScale; }
    or_null! { Shown<Q>, Q: Showable; }
    deserialize_by_reading_back! { Shown<Q>, Q: Showable; }

    impl<Q: Showable> ReadBack for Shown<Q> {
        fn read_back(node: &Node<'_>, faults: &mut Vec<Fault>) -> Self {
            let (text, scale, other, value) = shown(node, Q::UNIT, faults);
            Self { scale, other, ..Self::of_value(value, text) }
        }
    }

    fn shown(
        node: &Node<'_>,
        wanted: &str,
        faults: &mut Vec<Fault>,
    ) -> (String, Option<TextScale>, Option<String>, f64) {
        let before = faults.len();
        let mut parts = Parts::open(node, faults);
        let text = parts.take("text", faults);
        let scale = parts.take("scale", faults);
        let other = parts.take("other", faults);
        let value = parts.take("value", faults);
        let unit: String = parts.take("unit", faults);
        parts.close(faults);
        if faults.len() == before && unit != wanted {
            let unit = Value::String(unit);
            faults.push(node.child("unit", &unit).mismatch(&format!("\"{wanted}\"")));
        }
        (text, scale, other, value)
    }
}

#[cfg(all(test, feature = "document"))]
mod tests {
    use proptest::prelude::*;
    use rstest::rstest;

    use super::{Showable, Shown};
    use crate::quantity::{
        Amount, Mass, MassDensity, Pressure, System, ThermodynamicTemperature, Unit, Velocity,
        Volume,
    };

    /// The number of a quantity as SI units give it, and as `amount` says it.
    fn numbers<Q: Showable>(amount: &str, unit: Unit) -> [f64; 2] {
        let (amount, system) = (Amount::parse(amount).unwrap(), System::UsCustomary);
        let shown = Shown::<Q>::new(amount.to(system).unwrap(), amount.text());
        [shown.value(), shown.said_by(&amount, unit, system).value()]
    }

    /// In exact fractions by hand, a cup being 236.5882365 mL.
    #[rstest]
    #[case("4 cup", 946.352_946)]
    #[case("1000010 cup", 236_590_602.382_365)]
    fn a_text_that_is_all_of_a_volume_is_its_number(#[case] text: &str, #[case] milliliters: f64) {
        let [si, said] = numbers::<Volume>(text, Unit::MILLILITER);
        assert!(si != milliliters && said == milliliters, "{si} {said}");
    }

    /// (10 − 32)·5/9, (100 − 32)·5/9 and (340 − 32)·5/9.
    #[rstest]
    #[case("10 °F", -110.0 / 9.0)]
    #[case("100 °F", 340.0 / 9.0)]
    #[case("340 °F", 1540.0 / 9.0)]
    fn a_text_that_is_all_of_a_temperature_is_its_number(#[case] text: &str, #[case] celsius: f64) {
        let [si, said] = numbers::<ThermodynamicTemperature>(text, Unit::CELSIUS);
        assert!(si != celsius && said == celsius, "{si} {said}");
    }

    #[rstest]
    #[case("10 °F", -110.0 / 9.0)]
    #[case("100 °F", 340.0 / 9.0)]
    #[case("340 °F", 1540.0 / 9.0)]
    fn what_a_text_only_rounds_keeps_its_number(#[case] text: &str, #[case] celsius: f64) {
        let amount = Amount::parse(text).unwrap();
        let near = Shown::<ThermodynamicTemperature>::of_value(celsius + 1e-6, text);
        let said = near.clone().said_by(&amount, Unit::CELSIUS, System::UsCustomary);
        assert_eq!(said, near);
    }

    /// Whether a quantity that is written and read again is the same, and is written the same.
    fn kept<Q: Showable + PartialEq>(si: f64) -> bool {
        let shown = Shown::new(Q::from_si(si), "");
        let text = serde_json::to_string(&shown).unwrap();
        let again: Shown<Q> = serde_json::from_str(&text).unwrap();
        let written = Q::from_si(si).shown_value().to_bits();
        again == shown && again.quantity.shown_value().to_bits() == written
    }

    #[test]
    fn another_unit_is_refused() {
        let read = |text| serde_json::from_str::<Shown<Mass>>(text);
        assert!(read(r#"{"text": "12 g", "value": 12.0, "unit": "g"}"#).is_ok());
        let refused = read(r#"{"text": "12 kg", "value": 12.0, "unit": "kg"}"#).unwrap_err();
        assert!(std::string::ToString::to_string(&refused).contains("\"g\""), "{refused}");
    }

    proptest! {
        #[test]
        fn a_quantity_is_what_its_document_gives_back(x in 1e-6..1e3_f64) {
            prop_assert!(kept::<Mass>(x) && kept::<Volume>(x) && kept::<MassDensity>(x * 1e3));
            prop_assert!(kept::<Pressure>(x * 1e3) && kept::<Velocity>(x));
            prop_assert!(kept::<ThermodynamicTemperature>(x));
        }
    }
}
