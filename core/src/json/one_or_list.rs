//! One thing, or a list of several.

use alloc::vec::Vec;

use serde_json::Value;

use super::path::Path;
use super::reader::{Node, Read, deserialize_by_reading};
use crate::fault::Fault;

/// One thing written by itself, or a list of several.
#[derive(Debug, Clone, PartialEq, serde::Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[cfg_attr(feature = "schema", schemars(inline))]
#[serde(untagged)]
pub enum OneOrList<T> {
    /// One.
    One(T),
    /// Several.
    List(Vec<T>),
}

deserialize_by_reading! { OneOrList<T>, T: Read; }

impl<T> OneOrList<T> {
    /// The things in order.
    #[must_use]
    pub fn items(&self) -> &[T] {
        match self {
            Self::One(one) => core::slice::from_ref(one),
            Self::List(list) => list,
        }
    }

    /// Whether they are written as a list.
    #[must_use]
    pub const fn is_list(&self) -> bool {
        matches!(self, Self::List(_))
    }

    /// Applies `each` to every thing and its place; `None` if it fails for one, once all were seen.
    pub(crate) fn each<U>(
        &self,
        path: &Path<'_>,
        mut each: impl FnMut(&Path<'_>, &T) -> Option<U>,
    ) -> Option<Vec<U>> {
        let items = self.items();
        let mut made = Vec::with_capacity(items.len());
        for (index, item) in items.iter().enumerate() {
            let listed = path.index(index);
            made.extend(each(if self.is_list() { &listed } else { path }, item));
        }
        (made.len() == items.len()).then_some(made)
    }
}

impl<T: Read> Read for OneOrList<T> {
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
        match node.value {
            Value::Array(_) => Vec::read(node, faults).map(Self::List),
            _ => T::read(node, faults).map(Self::One),
        }
    }
}

#[cfg(test)]
mod tests {
    use serde_json::json;

    use super::*;
    use crate::json::reader::read_value;

    #[test]
    fn it_is_written_as_it_was_read() {
        for value in [json!(true), json!([]), json!([true]), json!([true, false])] {
            let read: OneOrList<bool> = read_value(&value).unwrap();
            assert_eq!(serde_json::to_value(&read).unwrap(), value);
        }
        for (value, path) in [(json!([true, 1]), "/1"), (json!("no"), "")] {
            let faults = read_value::<OneOrList<bool>>(&value).unwrap_err();
            assert!(faults.iter().map(|fault| fault.path.as_str()).eq([path]), "{faults}");
        }
    }
}
