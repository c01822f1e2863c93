//! An answer as an outline to read: names and values, without what only programs need.

use std::fmt;

use serde::de::{Deserialize, Deserializer, MapAccess, SeqAccess, Visitor};

use crate::Stop;

/// Fields of an answer that only programs need.
const FOR_PROGRAMS: [&str; 4] = ["calculate", "format", "made_from", "ext"];

/// Characters of a line, if it can be kept.
const WIDTH: usize = 80;

/// The outline of a response; one that has a `text` for a person, a list of lines, is that.
pub(crate) fn of(response: &impl serde::Serialize) -> Result<String, Stop> {
    let text = serde_json::to_string(response).map_err(std::io::Error::from)?;
    let mut tree: Node = serde_json::from_str(&text).map_err(std::io::Error::from)?;
    if let Node::Fields(fields) = &mut tree {
        if let Some((_, Node::List(lines))) = fields.iter().find(|(name, _)| name == "text") {
            let mut page = String::new();
            for line in lines.iter().filter_map(Node::inline) {
                match line.split_once(' ').filter(|_| line.chars().count() > WIDTH) {
                    Some((first, rest)) => wrap(&mut page, first, rest),
                    None => page.push_str(&format!("{line}\n")),
                }
            }
            return Ok(page);
        }
        fields.retain(|(name, _)| !FOR_PROGRAMS.contains(&name.as_str()));
    }
    let mut outline = String::new();
    tree.write(&mut outline, 0);
    Ok(outline)
}

/// A value, with its fields in their order.
enum Node {
    Nothing,
    Text(String),
    List(Vec<Node>),
    Fields(Vec<(String, Node)>),
}

impl Node {
    /// On one line; `None` if it has lists of objects or sentences, or nothing to show.
    fn inline(&self) -> Option<String> {
        match self {
            Self::Nothing => None,
            Self::Text(text) => Some(text.clone()),
            Self::List(items) => {
                let is_plain = items.iter().all(|item| !matches!(item.shown(), Self::Fields(_)));
                let items: Vec<String> = items.iter().filter_map(Self::inline).collect();
                // Sentences have a line each.
                let is_short = items.iter().all(|item| !item.ends_with('.'));
                (is_plain && is_short && !items.is_empty()).then(|| items.join(", "))
            }
            Self::Fields(fields) => {
                if let Some(text) = self.quantity() {
                    return Some(text);
                }
                let mut parts = Vec::new();
                for (name, value) in fields.iter().filter(|(_, value)| !value.is_empty()) {
                    let is_name = NAMES.contains(&name.as_str());
                    let text = match value.shown() {
                        Self::Fields(_) => return None,
                        _ => value.inline()?,
                    };
                    parts.push(if is_name { text } else { format!("{} {text}", words(name)) });
                }
                Some(parts.join(", "))
            }
        }
    }

    /// A quantity as its text, anything else as it is.
    fn shown(&self) -> &Self {
        const TEXT: &Node = &Node::Text(String::new());
        if self.quantity().is_some() { TEXT } else { self }
    }

    /// The text of a quantity, with that in other units; the sentence of a note.
    fn quantity(&self) -> Option<String> {
        let Self::Fields(fields) = self else { return None };
        let field = |name: &str| fields.iter().find(|(own, _)| own == name).map(|(_, value)| value);
        if let (2, Some(Self::Text(message)), Some(_)) =
            (fields.len(), field("message"), field("code"))
        {
            return Some(message.clone());
        }
        // A measured one, or money.
        field("value").or_else(|| field("currency"))?;
        match (field("text")?, field("other")) {
            (Self::Text(text), Some(Self::Text(other))) => Some(format!("{text} ({other})")),
            (Self::Text(text), _) => Some(text.clone()),
            _ => None,
        }
    }

    fn is_empty(&self) -> bool {
        match self {
            Self::Nothing => true,
            Self::Text(_) => false,
            Self::List(items) => items.iter().all(Self::is_empty),
            Self::Fields(fields) => fields.iter().all(|(_, value)| value.is_empty()),
        }
    }

    fn write(&self, out: &mut String, depth: usize) {
        let indent = "  ".repeat(depth);
        match self {
            Self::Fields(fields) => {
                for (name, value) in fields.iter().filter(|(_, value)| !value.is_empty()) {
                    value.write_named(out, &format!("{indent}{}:", words(name)), depth);
                }
            }
            Self::List(items) => {
                for item in items.iter().filter(|item| !item.is_empty()) {
                    item.write_item(out, &indent, depth);
                }
            }
            Self::Nothing | Self::Text(_) => {
                let text = self.inline().unwrap_or_default();
                out.push_str(&format!("{indent}{text}\n"));
            }
        }
    }

    /// As an item of a list: on one line if it fits, else with its first field next to the dash.
    fn write_item(&self, out: &mut String, indent: &str, depth: usize) {
        let lead = format!("{indent}-");
        match self.inline() {
            Some(text) if fits(&lead, &text) || self.is_text() => wrap(out, &lead, &text),
            _ => {
                let mut below = String::new();
                self.write(&mut below, depth + 1);
                out.push_str(&format!("{lead} {}", below.trim_start()));
            }
        }
    }

    /// After its name on one line if it fits, else below it.
    fn write_named(&self, out: &mut String, name: &str, depth: usize) {
        match self.inline() {
            Some(text) if fits(name, &text) || self.is_text() => wrap(out, name, &text),
            _ => {
                out.push_str(&format!("{name}\n"));
                self.write(out, depth + 1);
            }
        }
    }

    fn is_text(&self) -> bool {
        !matches!(self.shown(), Self::Fields(_))
    }
}

fn fits(lead: &str, text: &str) -> bool {
    lead.chars().count() + 1 + text.chars().count() <= WIDTH
}

/// Writes a text after its lead, in lines that begin below it.
fn wrap(out: &mut String, lead: &str, text: &str) {
    let indent = " ".repeat(lead.len() - lead.trim_start().len() + 2);
    let mut line = lead.to_owned();
    // A number stays with its sign of per cent.
    for word in text.replace(" %", "\u{a0}%").split(' ') {
        if !fits(&line, word) && !line.trim().is_empty() {
            out.push_str(&format!("{line}\n"));
            line = format!("{indent}{word}");
        } else {
            line = format!("{line} {word}");
        }
    }
    out.push_str(&format!("{line}\n"));
    *out = out.replace('\u{a0}', " ");
}

/// Fields whose value says what it is.
const NAMES: [&str; 6] = ["name", "material", "what", "message", "step", "text"];

/// The name of a field as words.
fn words(name: &str) -> String {
    name.replace('_', " ")
}

impl<'de> Deserialize<'de> for Node {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_any(Reader)
    }
}

struct Reader;

impl<'de> Visitor<'de> for Reader {
    type Value = Node;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a JSON value")
    }

    fn visit_bool<E>(self, value: bool) -> Result<Node, E> {
        Ok(Node::Text(if value { "yes" } else { "no" }.to_owned()))
    }

    fn visit_i64<E>(self, value: i64) -> Result<Node, E> {
        Ok(Node::Text(value.to_string()))
    }

    fn visit_u64<E>(self, value: u64) -> Result<Node, E> {
        Ok(Node::Text(value.to_string()))
    }

    fn visit_f64<E>(self, value: f64) -> Result<Node, E> {
        // Five figures are enough to read; all of them are in the JSON.
        let short = format!("{value:.4e}").parse().unwrap_or(value);
        Ok(Node::Text(short.to_string()))
    }

    fn visit_str<E>(self, value: &str) -> Result<Node, E> {
        Ok(Node::Text(value.to_owned()))
    }

    fn visit_unit<E>(self) -> Result<Node, E> {
        Ok(Node::Nothing)
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut list: A) -> Result<Node, A::Error> {
        let mut items = Vec::new();
        while let Some(item) = list.next_element()? {
            items.push(item);
        }
        Ok(Node::List(items))
    }

    fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<Node, A::Error> {
        let mut fields = Vec::new();
        while let Some(field) = map.next_entry()? {
            fields.push(field);
        }
        Ok(Node::Fields(fields))
    }
}
