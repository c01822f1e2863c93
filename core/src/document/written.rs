//! Quantities as a document writes them: read at once, kept as written, resolved to numbers later.

use alloc::borrow::Cow;
use alloc::string::{String, ToString};
use alloc::vec::Vec;
use core::marker::PhantomData;

use serde::{Serialize, Serializer};
use serde_json::Value;

use crate::fault::Fault;
use crate::json::entry::{Fields, Slot};
use crate::json::reader::{Node, Read, deserialize_by_reading};
use crate::quantity::{
    Amount, AmountError, Dimension, Length, Measurable, Measured, MeasuredAmount, Rational, System,
};

/// A quantity of the kind `Q` as it was written: `"1/4 cup"`, `"0.044 g ± 0.003"`, or
/// `{ "value": 12.5, "unit": "g" }`.
#[derive(Debug, Clone, PartialEq)]
pub struct Written<Q> {
    amount: MeasuredAmount,
    kind: PhantomData<Q>,
}

impl<Q> Written<Q> {
    /// An amount as it would be written, of the kind `Q`.
    pub(crate) fn of_amount(amount: Amount) -> Self {
        Self { amount: amount.into(), kind: PhantomData }
    }
}

impl<Q: Measurable> Written<Q> {
    /// The quantity in the measures of `system`.
    ///
    /// # Errors
    /// The system lacks the unit.
    pub fn to(&self, system: System) -> Result<Q, AmountError> {
        self.amount.amount().to(system)
    }

    /// The same with its standard uncertainty, where one was written.
    ///
    /// # Errors
    /// The system lacks the unit.
    pub fn measured(&self, system: System) -> Result<Measured<Q>, AmountError> {
        self.amount.to(system)
    }

    /// As it was written, of whatever kind.
    pub(crate) const fn as_written(&self) -> MeasuredAmount {
        self.amount
    }

    /// As it was written, without its uncertainty.
    #[must_use]
    pub fn amount(&self) -> Amount {
        self.amount.amount()
    }
}

impl<Q: Measurable> TryFrom<MeasuredAmount> for Written<Q> {
    type Error = AmountError;

    fn try_from(amount: MeasuredAmount) -> Result<Self, AmountError> {
        serving(Q::DIMENSION, amount).map(|amount| Self { amount, kind: PhantomData })
    }
}

impl<Q> Serialize for Written<Q> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        self.amount.serialize(serializer)
    }
}

deserialize_by_reading! { Written<Q>, Q: Measurable; Sourced<Q>, Q: Measurable; Percent; Share; Altitude; }

#[cfg(feature = "schema")]
impl<Q: Measurable> schemars::JsonSchema for Written<Q> {
    fn inline_schema() -> bool {
        true
    }

    fn schema_name() -> Cow<'static, str> {
        MeasuredAmount::schema_name()
    }

    fn json_schema(generator: &mut schemars::SchemaGenerator) -> schemars::Schema {
        of_quantity(generator.subschema_for::<MeasuredAmount>(), Q::DIMENSION)
    }
}

/// A height above sea level; the only amount but a temperature that may be below zero: `"-86 m"`.
#[derive(Debug, Clone, PartialEq)]
pub struct Altitude {
    below: bool,
    height: Written<Length>,
}

impl Altitude {
    /// The height above sea level.
    ///
    /// # Errors
    /// Those of [`Written::to`].
    pub fn to(&self, system: System) -> Result<Length, AmountError> {
        self.height.to(system).map(|height| if self.below { -height } else { height })
    }
}

impl core::fmt::Display for Altitude {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(if self.below { "-" } else { "" })?;
        self.height.fmt(f)
    }
}

#[cfg(feature = "schema")]
impl schemars::JsonSchema for Altitude {
    fn inline_schema() -> bool {
        true
    }

    fn schema_name() -> Cow<'static, str> {
        "Altitude".into()
    }

    fn json_schema(generator: &mut schemars::SchemaGenerator) -> schemars::Schema {
        <Written<Length> as schemars::JsonSchema>::json_schema(generator)
    }
}

impl Read for Altitude {
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
        let above = match node.value {
            Value::String(text) => {
                let rest = text.trim_start().strip_prefix(['-', '−']);
                rest.map(|rest| Value::String(rest.into()))
            }
            Value::Object(parts) => {
                let value = parts.get("value").and_then(Value::as_f64).filter(|value| *value < 0.0);
                value.map(|value| {
                    let mut parts = parts.clone();
                    parts.insert("value".into(), Value::from(-value));
                    Value::Object(parts)
                })
            }
            _ => None,
        };
        let below = above.is_some();
        let value = above.as_ref().unwrap_or(node.value);
        let height = Written::read(&Node { value, path: node.path, tag: None }, faults)?;
        Some(Self { below, height })
    }
}

/// The schema with the kind of its quantity, such as `volume`: an annotation, which a program can choose units by.
#[cfg(feature = "schema")]
fn of_quantity(mut schema: schemars::Schema, dimension: Dimension) -> schemars::Schema {
    let name = dimension.name().unwrap_or_default();
    let name = name.split_once(' ').map_or(name, |(_article, name)| name);
    schema.insert("x-quantity".into(), name.into());
    schema
}

impl<Q: Measurable> Read for Written<Q> {
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
        let amount = read_measured(Q::DIMENSION, node, faults)?;
        Some(Self { amount, kind: PhantomData })
    }
}

/// An amount that serves as the dimension `wanted`.
fn read_measured(
    wanted: Dimension,
    node: &Node<'_>,
    faults: &mut Vec<Fault>,
) -> Option<MeasuredAmount> {
    let amount = match node.value {
        Value::Object(_) => {
            let mut uncertainty = None;
            let (value, unit) = value_and_unit(node, Some(&mut uncertainty), faults)?;
            MeasuredAmount::from_parts(value, &unit, uncertainty)
        }
        _ => MeasuredAmount::parse(amount_text(node, faults)?.as_ref()),
    };
    amount
        .and_then(|amount| serving(wanted, amount))
        .map_err(|error| {
            let help = error.help_where(wanted).into();
            faults.push(Fault { help, ..node.fault(&error) });
        })
        .ok()
}

/// The amount, if it serves as the dimension `wanted`.
fn serving(wanted: Dimension, amount: MeasuredAmount) -> Result<MeasuredAmount, AmountError> {
    let (unit, found) = (amount.amount().unit(), amount.amount().dimension());
    if !found.serves_as(wanted) {
        return Err(AmountError::WrongDimension { unit, found, wanted });
    }
    Ok(amount)
}

impl Read for Amount {
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
        let amount = match node.value {
            Value::Object(_) => {
                let (value, unit) = value_and_unit(node, None, faults)?;
                Self::from_parts(value, &unit)
            }
            _ => Self::parse(amount_text(node, faults)?.as_ref()),
        };
        keep(amount, node, faults)
    }
}

/// The parts of an amount that a program writes: `{ "value": 12.5, "unit": "g" }`, and its `uncertainty`
/// where it may have one.
fn value_and_unit(
    node: &Node<'_>,
    uncertainty: Option<&mut Option<f64>>,
    faults: &mut Vec<Fault>,
) -> Option<(f64, String)> {
    const AMOUNT: Fields = Fields { names: &["value", "unit"], required: 2 };
    const MEASURED: Fields = Fields { names: &["value", "unit", "uncertainty"], required: 2 };
    let (mut value, mut unit) = (None, None);
    let whole = match uncertainty {
        None => AMOUNT.read(node, &mut [&mut value, &mut unit], faults),
        Some(uncertainty) => MEASURED.read(node, &mut [&mut value, &mut unit, uncertainty], faults),
    };
    value.zip(unit).filter(|_| whole)
}

/// The text of an amount; a bare number is one too, to be refused with the units it may have.
fn amount_text<'a>(node: &Node<'a>, faults: &mut Vec<Fault>) -> Option<Cow<'a, str>> {
    match node.value {
        Value::String(text) => Some(Cow::Borrowed(text)),
        Value::Number(number) => Some(Cow::Owned(number.to_string())),
        _ => {
            faults.push(
                node.mismatch("an amount in double quotes, such as \"1/4 cup\" or \"12.5 g\""),
            );
            None
        }
    }
}

impl Read for f64 {
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
        let number = node.value.as_f64();
        if number.is_none() {
            faults.push(node.mismatch("a number"));
        }
        number
    }
}

/// The value, or the fault that there is none.
pub(crate) fn keep<T, E: crate::fault::Diagnose>(
    result: Result<T, E>,
    node: &Node<'_>,
    faults: &mut Vec<Fault>,
) -> Option<T> {
    result.map_err(|error| faults.push(node.fault(&error))).ok()
}

/// A property with its source: `"1.03 g/mL"`, or
/// `{ "value": "1.03 g/mL ± 0.01", "source": "supplier's sheet" }`.
#[derive(Debug, Clone, PartialEq)]
pub struct Sourced<Q> {
    /// The quantity.
    pub value: Written<Q>,
    /// Its source.
    pub source: Option<String>,
}

impl<Q: Measurable> Sourced<Q> {
    /// The quantity with its uncertainty and source.
    ///
    /// # Errors
    /// The system lacks the unit.
    pub fn measured(&self, system: System) -> Result<Measured<Q>, AmountError> {
        let mut measured = self.value.measured(system)?;
        measured.source.clone_from(&self.source);
        Ok(measured)
    }
}

/// A quantity, or a quantity with its source.
#[derive(Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema), schemars(rename = "Sourced"))]
#[serde(untagged)]
enum SourcedForm {
    Plain(MeasuredAmount),
    WithSource(WithSource),
}

/// A quantity with its source.
#[derive(Serialize)]
#[cfg_attr(
    feature = "schema",
    derive(schemars::JsonSchema),
    schemars(transform = crate::schema::without_null)
)]
#[serde(deny_unknown_fields)]
struct WithSource {
    /// The quantity.
    value: MeasuredAmount,
    /// Its source.
    #[serde(skip_serializing_if = "Option::is_none")]
    source: Option<String>,
}

impl<Q> Serialize for Sourced<Q> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let value = self.value.amount;
        match self.source.clone() {
            None => SourcedForm::Plain(value),
            source => SourcedForm::WithSource(WithSource { value, source }),
        }
        .serialize(serializer)
    }
}

#[cfg(feature = "schema")]
impl<Q: Measurable> schemars::JsonSchema for Sourced<Q> {
    fn inline_schema() -> bool {
        true
    }

    fn schema_name() -> Cow<'static, str> {
        SourcedForm::schema_name()
    }

    fn json_schema(generator: &mut schemars::SchemaGenerator) -> schemars::Schema {
        of_quantity(generator.subschema_for::<SourcedForm>(), Q::DIMENSION)
    }
}

impl<Q: Measurable> Read for Sourced<Q> {
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
        let (amount, source) = read_sourced(Q::DIMENSION, node, faults)?;
        Some(Self { value: Written { amount, kind: PhantomData }, source })
    }
}

/// A field that is an amount of a dimension.
struct OfDimension {
    wanted: Dimension,
    amount: Option<MeasuredAmount>,
}

impl Slot for OfDimension {
    fn fill(&mut self, node: &Node<'_>, faults: &mut Vec<Fault>) -> bool {
        self.amount = read_measured(self.wanted, node, faults);
        self.amount.is_some()
    }
}

fn read_sourced(
    wanted: Dimension,
    node: &Node<'_>,
    faults: &mut Vec<Fault>,
) -> Option<(MeasuredAmount, Option<String>)> {
    match node.value {
        Value::Object(fields) if !fields.contains_key("unit") => {
            const FIELDS: Fields = Fields { names: &["value", "source"], required: 1 };
            let mut value = OfDimension { wanted, amount: None };
            let mut source = None;
            let whole = FIELDS.read(node, &mut [&mut value, &mut source], faults);
            value.amount.filter(|_| whole).map(|amount| (amount, source))
        }
        _ => Some((read_measured(wanted, node, faults)?, None)),
    }
}

/// A share in a request, of any size: `"3 %"`, `"150 %"`. Its range is that of its parameter.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Share(Rational);

impl Share {
    /// The share as a pure number: 0.03 for 3 %. Exact, rounded once.
    #[must_use]
    pub fn number(self) -> f64 {
        self.0.to_f64()
    }

    fn parse(text: &str) -> Option<Self> {
        let number = text.strip_suffix('%')?.trim_end();
        Rational::parse_decimal(number)?.checked_div(Rational::from_int(100)).map(Self)
    }
}

impl core::fmt::Display for Share {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        match self.0.checked_mul(Rational::from_int(100)) {
            Some(percent) => write!(f, "{percent} %"),
            None => write!(f, "{} %", self.number() * 100.0),
        }
    }
}

/// A share from 0 % to 100 %, in a field that says of what: `"3 %"`.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Percent(Share);

impl Percent {
    /// The share as a number from 0 to 1.
    #[must_use]
    pub fn share(self) -> f64 {
        self.0.number()
    }
}

impl core::fmt::Display for Percent {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        self.0.fmt(f)
    }
}

macro_rules! serialize_as_text {
    ($($Share:ty),+) => {$(
        impl Serialize for $Share {
            fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                serializer.collect_str(self)
            }
        }
    )+};
}

serialize_as_text! { Share, Percent, Altitude }

#[cfg(feature = "schema")]
impl schemars::JsonSchema for Share {
    fn schema_name() -> Cow<'static, str> {
        "Share".into()
    }

    fn json_schema(_: &mut schemars::SchemaGenerator) -> schemars::Schema {
        schemars::json_schema!({
            "type": "string",
            "description": "A share, such as \"3 %\" or \"150 %\"; 3 % is 0.03 of the range of its parameter.",
            "pattern": r"^-?\d+(\.\d+)? ?%$"
        })
    }
}

impl Read for Share {
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
        let read = node.value.as_str().and_then(Self::parse);
        if read.is_none() {
            faults.push(node.mismatch("a share in double quotes, such as \"3 %\""));
        }
        read
    }
}

#[cfg(feature = "schema")]
impl schemars::JsonSchema for Percent {
    fn schema_name() -> Cow<'static, str> {
        "Percent".into()
    }

    fn json_schema(_: &mut schemars::SchemaGenerator) -> schemars::Schema {
        schemars::json_schema!({
            "type": "string",
            "description": "A share from 0 % to 100 %, such as \"3 %\".",
            "pattern": r"^\d+(\.\d+)? ?%$"
        })
    }
}

impl Read for Percent {
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
        let wanted = "a share from 0 % to 100 % in double quotes, such as \"3 %\"";
        let Some(share) = node.value.as_str().and_then(Share::parse) else {
            faults.push(node.mismatch(wanted));
            return None;
        };
        if !(Rational::ZERO..=Rational::from_int(1)).contains(&share.0) {
            faults.push(node.outside(&share, wanted));
            return None;
        }
        Some(Self(share))
    }
}

/// The dimension that a dose may have, for a message that lists them.
pub(crate) const DOSE_DIMENSIONS: [Dimension; 4] =
    [Dimension::VOLUME, Dimension::MASS, Dimension::COUNT, Dimension::RATIO];

impl<Q: Measurable> Written<Q> {
    /// Wraps a quantity that a program made.
    ///
    /// # Errors
    /// The amount is not of this kind.
    pub fn from_amount(amount: Amount) -> Result<Self, AmountError> {
        Self::try_from(MeasuredAmount::from(amount))
    }
}

impl<Q> core::fmt::Display for Written<Q> {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        self.amount.fmt(f)
    }
}

#[cfg(test)]
mod tests {
    use rstest::rstest;
    use serde_json::json;

    use std::string::ToString;

    use super::*;
    use crate::json::reader::read_value;
    use crate::quantity::{Mass, MassDensity, Pressure, Volume};

    #[rstest]
    #[case("0 %", Some(0.0))]
    #[case("3 %", Some(0.03))]
    #[case("3%", Some(0.03))]
    #[case("12.5 %", Some(0.125))]
    #[case("100 %", Some(1.0))]
    #[case("100.1 %", None)]
    #[case("-1 %", None)]
    #[case("3", None)]
    #[case("% 3", None)]
    #[case("NaN %", None)]
    #[case("1a %", None)]
    #[case("3 % of base", None)]
    fn a_share_is_a_per_cent(#[case] text: &str, #[case] share: Option<f64>) {
        let read = read_value::<Percent>(&json!(text)).ok();
        assert_eq!(read.map(Percent::share), share);
        if let Some(percent) = read {
            let written = serde_json::to_value(percent).unwrap();
            assert_eq!(serde_json::from_value::<Percent>(written).unwrap(), percent);
        }
    }

    #[rstest]
    #[case(json!("20"), "Write a pressure, such as 29 inHg or 98 kPa.")]
    #[case(json!(20), "Write a pressure, such as 29 inHg or 98 kPa.")]
    #[case(json!("20 in.Hg"), "Write a pressure, such as 29 inHg or 98 kPa.")]
    #[case(json!("29 inHq"), "Did you mean inHg?")]
    fn the_help_knows_what_belongs_here(#[case] value: Value, #[case] help: &str) {
        let faults = read_value::<Written<Pressure>>(&value).unwrap_err();
        assert_eq!(faults.iter().next().unwrap().help, help);
    }

    #[rstest]
    #[case(json!("12.5 g"), Some((12.5, None)))]
    #[case(json!({ "value": 12.5, "unit": "g" }), Some((12.5, None)))]
    #[case(json!("12.5 g ± 0.1"), Some((12.5, Some(0.1))))]
    #[case(json!({ "value": 12.5, "unit": "g", "uncertainty": 0.1 }), Some((12.5, Some(0.1))))]
    #[case(json!({ "value": "12.5", "unit": "g" }), None)]
    #[case(json!({ "value": 12.5 }), None)]
    #[case(json!({ "value": 12.5, "unit": "g ± 0.1" }), None)]
    #[case(json!({ "value": -1, "unit": "g" }), None)]
    #[case(json!({ "value": 1, "unit": "mL" }), None)]
    #[case(json!({ "value": 1, "unit": "g", "of": "x" }), None)]
    #[case(json!(12.5), None)]
    #[case(json!(null), None)]
    fn a_mass_is_text_or_its_parts(
        #[case] value: Value,
        #[case] expected: Option<(f64, Option<f64>)>,
    ) {
        let read = read_value::<Written<Mass>>(&value);
        let got = read.as_ref().ok().map(|written| {
            let measured = written.measured(System::Metric).unwrap();
            let uncertainty = measured.uncertainty.map(|u| u.si() * 1e3);
            (measured.value.si() * 1e3, uncertainty)
        });
        match (got, expected) {
            (Some((mass, u)), Some((wanted, wanted_u))) => {
                assert!((mass - wanted).abs() < 1e-12);
                assert_eq!(u.is_some(), wanted_u.is_some());
                assert!((u.unwrap_or(0.0) - wanted_u.unwrap_or(0.0)).abs() < 1e-12);
            }
            (got, expected) => assert_eq!(got, expected),
        }
        let by_serde = serde_json::from_value::<Written<Mass>>(value).ok();
        assert_eq!(by_serde, read.ok());
    }

    /// Below sea level as a text and in parts; zero is not below it.
    #[rstest]
    #[case(json!("-86 m"), -86.0)]
    #[case(json!("−86 m"), -86.0)]
    #[case(json!({ "value": -86, "unit": "m" }), -86.0)]
    #[case(json!({ "value": 86, "unit": "m" }), 86.0)]
    #[case(json!({ "value": 0, "unit": "m" }), 0.0)]
    #[case(json!({ "value": 0.5, "unit": "m" }), 0.5)]
    #[case(json!("86 m"), 86.0)]
    fn a_height_may_be_below_the_sea(#[case] value: Value, #[case] meters: f64) {
        let altitude: Altitude = read_value(&value).unwrap();
        assert_eq!(altitude.to(System::Metric).unwrap().si(), meters);
        let shown = altitude.to_string();
        assert_eq!(shown.starts_with('-'), meters < 0.0, "{shown}");
        assert_eq!(read_value::<Altitude>(&json!(shown)).unwrap().to_string(), shown);
    }

    #[test]
    fn a_share_of_any_size() {
        let read = |text: &str| read_value::<Share>(&json!(text));
        assert_eq!(read("150 %").unwrap().to_string(), "150 %");
        // Too long for exact numbers once it is a hundred times as much.
        let long = read("12345678901234567890123456789012345678 %").unwrap();
        let shown: f64 = long.to_string().strip_suffix(" %").unwrap().parse().unwrap();
        assert!((shown / 1.234_567_890_123_456_8e37 - 1.0).abs() < 1e-15);
        let faults = read_value::<Share>(&json!(3)).unwrap_err();
        let help = &faults.iter().next().unwrap().help;
        assert_eq!(help, "Write a share in double quotes, such as \"3 %\".");
        let faults = read_value::<f64>(&json!("3")).unwrap_err();
        assert_eq!(faults.iter().next().unwrap().help, "Write a number.");
    }

    #[test]
    fn a_property_keeps_its_source() {
        let value = json!({ "value": "1.03 g/mL ± 0.01", "source": "weighed" });
        let read: Sourced<MassDensity> = read_value(&value).unwrap();
        assert_eq!(read.source.as_deref(), Some("weighed"));
        assert_eq!(read.measured(System::Metric).unwrap().source.as_deref(), Some("weighed"));
        assert_eq!(serde_json::to_value(&read).unwrap(), value);
        let parts = json!({ "value": { "value": 1.03, "unit": "g/mL" }, "source": "weighed" });
        let read: Sourced<MassDensity> = read_value(&parts).unwrap();
        assert_eq!(read, serde_json::from_value(serde_json::to_value(&read).unwrap()).unwrap());
        let faults = read_value::<Sourced<MassDensity>>(&json!({ "source": 3 })).unwrap_err();
        assert_eq!(faults.count(), 2);
    }

    #[test]
    fn a_word_that_the_system_lacks_is_refused_when_it_is_resolved() {
        let spoon: Written<Volume> = read_value(&json!("1 tsp")).unwrap();
        assert!(spoon.to(System::Metric).is_ok() && spoon.to(System::Imperial).is_err());
        assert_eq!(spoon, Written::from_amount(spoon.amount()).unwrap());
    }
}
