//! Things by their names: an object of a document whose keys a person chose.

use alloc::string::String;
use alloc::vec::Vec;

use serde::{Serialize, Serializer};
use serde_json::{Map, Value};

use super::names;
use super::reader::{Node, Read, checked_name, deserialize_by_reading};
use crate::fault::{Fault, is_enough};

/// Things by their names, in the order of the names, whatever the order in the document.
#[derive(Debug, Clone, PartialEq)]
pub struct Named<T>(Vec<(String, T)>);

impl<T> Named<T> {
    /// The thing with this name.
    #[must_use]
    pub fn get(&self, name: &str) -> Option<&T> {
        let place = self.place(name).ok()?;
        self.0.get(place).map(|(_, thing)| thing)
    }

    /// Puts `thing` under `name`, and replaces what was there.
    pub fn insert(&mut self, name: String, thing: T) {
        match self.place(&name) {
            Ok(place) => {
                if let Some((_, there)) = self.0.get_mut(place) {
                    *there = thing;
                }
            }
            Err(place) => self.0.insert(place, (name, thing)),
        }
    }

    /// Names and things.
    pub fn iter(&self) -> <&Self as IntoIterator>::IntoIter {
        self.into_iter()
    }

    /// The names.
    pub fn keys(&self) -> impl ExactSizeIterator<Item = &String> + Clone {
        self.0.iter().map(|(name, _)| name)
    }

    /// Their number.
    #[must_use]
    pub fn len(&self) -> usize {
        self.0.len()
    }

    /// Whether it is empty.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.0.is_empty()
    }

    fn place(&self, name: &str) -> Result<usize, usize> {
        self.0.binary_search_by(|(other, _)| other.as_str().cmp(name))
    }
}

impl<'a, T> IntoIterator for &'a Named<T> {
    type Item = (&'a String, &'a T);
    type IntoIter =
        core::iter::Map<core::slice::Iter<'a, (String, T)>, fn(&'a (String, T)) -> Self::Item>;

    fn into_iter(self) -> Self::IntoIter {
        self.0.iter().map(|(name, thing)| (name, thing))
    }
}

impl<T> Default for Named<T> {
    fn default() -> Self {
        Self(Vec::new())
    }
}

impl<T> FromIterator<(String, T)> for Named<T> {
    fn from_iter<I: IntoIterator<Item = (String, T)>>(things: I) -> Self {
        let mut named = Self::default();
        for (name, thing) in things {
            named.insert(name, thing);
        }
        named
    }
}

impl<T: Serialize> Serialize for Named<T> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_map(self.iter())
    }
}

deserialize_by_reading! { Named<T>, T: Read; }

#[cfg(feature = "schema")]
impl<T: schemars::JsonSchema> schemars::JsonSchema for Named<T> {
    fn schema_name() -> alloc::borrow::Cow<'static, str> {
        alloc::collections::BTreeMap::<String, T>::schema_name()
    }

    fn inline_schema() -> bool {
        true
    }

    fn json_schema(generator: &mut schemars::SchemaGenerator) -> schemars::Schema {
        alloc::collections::BTreeMap::<String, T>::json_schema(generator)
    }
}

impl<T: Read> Read for Named<T> {
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
        let before = faults.len();
        let mut read = Vec::new();
        let fields = by_name(node.object(faults)?);
        names::report_alike(fields.iter().map(|(name, _)| name.as_str()), node, faults);
        for (name, value) in fields {
            if is_enough(faults) {
                break;
            }
            let node = node.child(name, value);
            checked_name(name, &node.path, faults);
            if let Some(thing) = T::read(&node, faults) {
                read.push((name.clone(), thing));
            }
        }
        (faults.len() == before).then_some(Self(read))
    }
}

/// The fields in the order of their names, whatever order the map of this build keeps.
fn by_name(fields: &Map<String, Value>) -> Vec<(&String, &Value)> {
    let mut fields: Vec<(&String, &Value)> = fields.iter().collect();
    fields.sort_unstable_by_key(|(name, _)| *name);
    fields
}

#[cfg(test)]
mod tests {
    use std::string::ToString;

    use super::*;
    use crate::json::reader::read_value;

    #[test]
    fn names_stand_in_their_order() {
        let things = [("b", 1), ("c", 2), ("a", 3), ("b", 4)];
        let named: Named<i32> =
            things.into_iter().map(|(name, thing)| (name.to_string(), thing)).collect();
        let pairs: Vec<(&str, i32)> = named.iter().map(|(name, thing)| (&**name, *thing)).collect();
        assert_eq!(pairs, [("a", 3), ("b", 4), ("c", 2)]);
        assert_eq!((named.get("b"), named.get("d"), named.len()), (Some(&4), None, 3));
    }

    #[test]
    fn it_is_an_object_in_a_document() {
        let text = r#"{"a":true,"b":false}"#;
        let value: Value = serde_json::from_str(text).unwrap();
        let named: Named<bool> = read_value(&value).unwrap();
        assert_eq!(serde_json::to_string(&named).unwrap(), text);
        assert!(read_value::<Named<bool>>(&serde_json::json!({ " a": true })).is_err());
        assert!(read_value::<Named<bool>>(&serde_json::json!({ "a": 1 })).is_err());
    }
}
