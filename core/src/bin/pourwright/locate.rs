//! Where in a JSON text a fault is.

/// A stretch of a text.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Place {
    /// From 1.
    pub(crate) line: usize,
    /// From 1, in characters.
    pub(crate) column: usize,
    /// Length in characters, to the end of the line at most.
    pub(crate) length: usize,
}

/// Which part of a field is meant.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Part {
    /// Its name.
    Name,
    /// Its value.
    Value,
}

/// The place that `pointer`, a JSON Pointer (RFC 6901), leads to in `text`; where it leads to nothing, that of the last
/// value on the way. Of a name that is twice in one object, the last. `text` is one JSON value.
pub(crate) fn locate(text: &str, pointer: &str, part: Part) -> Place {
    let mut cursor = Cursor { text, at: 0 };
    if text.starts_with('\u{feff}') {
        cursor.at = '\u{feff}'.len_utf8();
    }
    cursor.space();
    let mut name = None;
    for step in pointer.split('/').skip(1) {
        let step = step.replace("~1", "/").replace("~0", "~");
        let Some(found) = cursor.step(&step) else {
            name = None;
            break;
        };
        name = found.name;
        cursor.at = found.value;
    }
    let start = match (part, name) {
        (Part::Name, Some(name)) => name,
        _ => cursor.at,
    };
    let mut end = Cursor { text, at: start };
    // Of an object or list, the bracket.
    match end.peek() {
        Some(b'{' | b'[') => end.at += 1,
        _ => end.value(),
    }
    place(text, start, end.at)
}

/// A line and column from 1, as JSON readers give them, the column in bytes.
pub(crate) fn at(text: &str, line: usize, column: usize) -> Place {
    let before: usize = text.split_inclusive('\n').take(line.saturating_sub(1)).map(str::len).sum();
    let mut start = before.saturating_add(column.saturating_sub(1)).min(text.len());
    while !text.is_char_boundary(start) {
        start -= 1;
    }
    place(text, start, start.saturating_add(1))
}

/// The stretch of `text` between two bytes.
fn place(text: &str, start: usize, end: usize) -> Place {
    let (before, rest) = text.split_at_checked(start).unwrap_or((text, ""));
    let line_start = before.rfind('\n').map_or(0, |newline| newline + 1);
    let marked = rest.get(..end.saturating_sub(start)).unwrap_or(rest);
    Place {
        line: before.matches('\n').count() + 1,
        column: before.get(line_start..).unwrap_or_default().chars().count() + 1,
        length: marked.lines().next().unwrap_or_default().chars().count().max(1),
    }
}

/// A field or item.
struct Found {
    name: Option<usize>,
    value: usize,
}

struct Cursor<'a> {
    text: &'a str,
    at: usize,
}

impl Cursor<'_> {
    fn peek(&self) -> Option<u8> {
        self.text.as_bytes().get(self.at).copied()
    }

    fn space(&mut self) {
        while let Some(b' ' | b'\t' | b'\n' | b'\r') = self.peek() {
            self.at += 1;
        }
    }

    /// Passes over a text with its quotes.
    fn quoted(&mut self) {
        self.at += 1;
        while let Some(byte) = self.peek() {
            self.at += 1;
            match byte {
                b'\\' => self.at += 1,
                b'"' => break,
                _ => {}
            }
        }
    }

    /// Passes over a value.
    fn value(&mut self) {
        let mut depth = 0_usize;
        while let Some(byte) = self.peek() {
            match byte {
                b'"' => self.quoted(),
                b'{' | b'[' => {
                    depth += 1;
                    self.at += 1;
                }
                b'}' | b']' if depth == 0 => return,
                b'}' | b']' => {
                    depth -= 1;
                    self.at += 1;
                }
                b',' if depth == 0 => return,
                b' ' | b'\t' | b'\n' | b'\r' if depth == 0 => return,
                _ => {
                    self.at += 1;
                    continue;
                }
            }
            if depth == 0 {
                return;
            }
        }
    }

    /// The field or item `step` of the object or list here.
    fn step(&self, step: &str) -> Option<Found> {
        let mut inside = Cursor { text: self.text, at: self.at };
        let is_object = match inside.peek() {
            Some(b'{') => true,
            Some(b'[') => false,
            _ => return None,
        };
        inside.at += 1;
        let mut found = None;
        for index in 0_usize.. {
            inside.space();
            if matches!(inside.peek(), None | Some(b'}' | b']')) {
                break;
            }
            let start = inside.at;
            let is_it = if is_object {
                inside.quoted();
                let name = self.text.get(start..inside.at);
                let name = name.and_then(|name| serde_json::from_str::<String>(name).ok());
                inside.space();
                inside.at += 1; // the colon
                inside.space();
                name.is_some_and(|name| name == step)
            } else {
                step.parse() == Ok(index)
            };
            if is_it {
                found = Some(Found { name: is_object.then_some(start), value: inside.at });
            }
            inside.value();
            inside.space();
            if inside.peek() == Some(b',') {
                inside.at += 1;
            } else {
                break;
            }
        }
        found
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use serde_json::{Map, Value};

    use super::*;

    const TEXT: &str = "{\n  \"a/b\": [1, { \"ü\\u0041\": \"x, ]\" }],\n  \"c\": { \"d\": -1.5e3 },\n  \"c\": true\n}\n";

    fn found(pointer: &str, part: Part) -> (usize, usize, usize) {
        let Place { line, column, length } = locate(TEXT, pointer, part);
        (line, column, length)
    }

    #[test]
    fn a_pointer_leads_to_its_value() {
        assert_eq!(found("", Part::Value), (1, 1, 1));
        assert_eq!(found("/a~1b", Part::Value), (2, 10, 1));
        assert_eq!(found("/a~1b/0", Part::Value), (2, 11, 1));
        assert_eq!(found("/a~1b/1", Part::Value), (2, 14, 1));
        assert_eq!(found("/a~1b/1/üA", Part::Value), (2, 27, 6));
        assert_eq!(found("/c", Part::Value), (4, 8, 4));
    }

    #[test]
    fn a_name_is_found_and_of_two_the_last() {
        assert_eq!(found("/a~1b/1/üA", Part::Name), (2, 16, 9));
        assert_eq!(found("/c", Part::Name), (4, 3, 3));
        assert_eq!(found("/a~1b/1", Part::Name), (2, 14, 1));
    }

    #[test]
    fn what_is_missing_is_at_the_value_that_lacks_it() {
        assert_eq!(found("/x/y", Part::Value), (1, 1, 1));
        assert_eq!(found("/a~1b/7", Part::Name), (2, 10, 1));
        assert_eq!(found("/a~1b/0/x", Part::Value), (2, 11, 1));
    }

    #[test]
    fn no_text_is_too_short() {
        for end in 0..TEXT.len() {
            let Some(text) = TEXT.get(..end) else { continue };
            for pointer in ["", "/a~1b/1/üA", "/c/d", "/c"] {
                let place = locate(text, pointer, Part::Name);
                assert!(place.line >= 1 && place.column >= 1 && place.length >= 1, "{text}");
            }
        }
    }

    #[test]
    fn a_line_and_column_are_a_place() {
        assert_eq!(at("{\n  \"ü\": 1,\n}", 3, 1), Place { line: 3, column: 1, length: 1 });
        assert_eq!(at("ü,", 1, 3), Place { line: 1, column: 2, length: 1 });
        assert_eq!(at("", 1, 0), Place { line: 1, column: 1, length: 1 });
        assert_eq!(at("a", 9, 9).line, 1);
    }
    /// The rest of a text from a place on.
    fn rest(text: &str, place: Place) -> String {
        let lines = text.split('\n').skip(place.line - 1).collect::<Vec<_>>().join("\n");
        lines.chars().skip(place.column - 1).collect()
    }

    /// Follows every pointer of a value into its text.
    fn follow(text: &str, pointer: &str, value: &Value) {
        let found = rest(text, locate(text, pointer, Part::Value));
        let read = serde_json::Deserializer::from_str(&found).into_iter::<Value>().next();
        assert_eq!(read.unwrap().unwrap(), *value, "{pointer} in {text}");
        match value {
            Value::Object(fields) => {
                for (name, value) in fields {
                    let pointer =
                        format!("{pointer}/{}", name.replace('~', "~0").replace('/', "~1"));
                    let place = locate(text, &pointer, Part::Name);
                    assert!(rest(text, place).starts_with(&Value::from(name.as_str()).to_string()));
                    follow(text, &pointer, value);
                }
            }
            Value::Array(items) => {
                let each = items.iter().enumerate();
                each.for_each(|(index, item)| follow(text, &format!("{pointer}/{index}"), item));
            }
            _ => {}
        }
    }

    fn value() -> impl Strategy<Value = Value> {
        let text = "[a-c/~\"\\\\{}\\[\\]:,ü°\n ]{0,5}";
        let leaf = prop_oneof![
            Just(Value::Null),
            any::<bool>().prop_map(Value::from),
            (-1e9_f64..1e9).prop_map(Value::from),
            text.prop_map(Value::from),
        ];
        leaf.prop_recursive(4, 32, 4, move |inner| {
            let fields = proptest::collection::btree_map(text, inner.clone(), 0..4);
            prop_oneof![
                proptest::collection::vec(inner, 0..4).prop_map(Value::from),
                fields.prop_map(|fields| Value::Object(Map::from_iter(fields))),
            ]
        })
    }

    proptest! {
        #[test]
        fn every_pointer_of_any_text_leads_to_its_value(value in value()) {
            follow(&value.to_string(), "", &value);
            follow(&serde_json::to_string_pretty(&value).unwrap(), "", &value);
        }
    }
}
