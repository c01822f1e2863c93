//! What the doors have in common that call the C library through a foreign function interface: each calculation as lists of
//! its parameters and results, which their own code goes through.

use std::fs;

use pourwright::parameter::Parameter;
use pourwright::table::{
    Argument, CALCULATIONS, Calculation, ParameterField, ResultField, Value, ValueKind,
};

use crate::c::members;
use crate::{root, text};

/// The kind of a parameter or result, as their code knows it.
pub(crate) fn kind(kind: ValueKind) -> &'static str {
    match kind {
        ValueKind::Number => "number",
        ValueKind::Count => "count",
        ValueKind::Text => "text",
        ValueKind::Word { .. } => "word",
        ValueKind::List => "list",
        ValueKind::Rows(_) => "rows",
        other => panic!("{other:?} is of no kind that a script can read"),
    }
}

/// The lists of words, each once: its name, which is that of its first parameter or result, and the words.
pub(crate) fn word_lists() -> Vec<(&'static str, &'static [&'static str])> {
    let mut lists: Vec<(&str, &[&str])> = Vec::new();
    let parameters = CALCULATIONS.iter().flat_map(|calculation| calculation.parameters);
    let results = CALCULATIONS.iter().flat_map(|calculation| calculation.results);
    let parameters = parameters.map(|field| (field.parameter.name(), field.parameter.words()));
    for (name, words) in parameters.chain(results.map(|result| (result.name, result.words()))) {
        if !words.is_empty() && !lists.iter().any(|(_, known)| *known == words) {
            lists.push((first_named(words).unwrap_or(name), words));
        }
    }
    lists.sort_unstable();
    lists
}

fn first_named(words: &[&str]) -> Option<&'static str> {
    let first = Parameter::ALL.iter().find(|parameter| parameter.words() == words);
    first.map(|parameter| parameter.name())
}

/// The name of a list of words.
pub(crate) fn word_list(words: &[&str]) -> &'static str {
    let lists = word_lists();
    let found = lists.iter().find(|(_, known)| *known == words);
    found.expect("every list of the table is in the lists").0
}

/// The member of C that has the length of a list.
pub(crate) fn count_of(field: &ParameterField) -> Option<String> {
    members(field).into_iter().nth(1).map(|member| member.name)
}

/// The constants of the header that are whole numbers, by name.
pub(crate) fn constants() -> Vec<(String, u64)> {
    let header = fs::read_to_string(root().join("ffi/include/pourwright.cdef.h"));
    let header = header.expect("it is committed");
    let lines = header.lines().filter_map(|line| line.trim().strip_suffix(','));
    let named = lines.filter_map(|line| line.split_once(" = "));
    named
        .filter(|(name, _)| name.starts_with("POUR_"))
        .filter_map(|(name, number)| Some((name.to_owned(), number.parse().ok()?)))
        .collect()
}

/// How a language writes values.
pub(crate) struct Syntax {
    /// The quotation mark of a text.
    pub(crate) quote: char,
    /// The brackets of a list.
    pub(crate) list: [&'static str; 2],
    /// No value.
    pub(crate) absent: &'static str,
}

impl Syntax {
    /// The arguments of the example that are given, each with its parameter.
    pub(crate) fn arguments(
        &self,
        calculation: &Calculation,
    ) -> Vec<(&'static ParameterField, String)> {
        let example = text::example(calculation);
        let given = calculation.parameters.iter().zip(&example.arguments);
        given
            .filter_map(|(field, argument)| Some((field, self.argument(field, argument)?)))
            .collect()
    }

    /// The results of the example, each with its field.
    pub(crate) fn results(&self, calculation: &Calculation) -> Vec<(&'static ResultField, String)> {
        let example = text::example(calculation);
        let results = calculation.results.iter().zip(&example.results);
        results.map(|(result, value)| (result, self.value(value))).collect()
    }

    fn argument(&self, field: &ParameterField, argument: &Argument<'_>) -> Option<String> {
        Some(match (argument, field.kind) {
            (Argument::Number(number), _) => number.to_string(),
            (Argument::Text(text), _) => self.quoted(text),
            (Argument::Numbers(numbers), ValueKind::Rows(columns)) => {
                self.listed(numbers.chunks(columns).map(|row| self.numbers(row)))
            }
            (Argument::Numbers(numbers), _) => self.numbers(numbers),
            _ => return None,
        })
    }

    fn value(&self, value: &Value) -> String {
        match value {
            Value::Number(number) => number.to_string(),
            Value::Word(word) => self.quoted(word),
            Value::Numbers(numbers) => self.numbers(numbers),
            _ => self.absent.to_owned(),
        }
    }

    fn numbers(&self, numbers: &[f64]) -> String {
        self.listed(numbers.iter().map(f64::to_string))
    }

    fn listed(&self, items: impl Iterator<Item = String>) -> String {
        let [open, close] = self.list;
        format!("{open}{}{close}", items.collect::<Vec<_>>().join(", "))
    }

    /// A text of the table, which has no signs that a language would read.
    pub(crate) fn quoted(&self, text: &str) -> String {
        assert!(!text.contains([self.quote, '\\', '$', '#']), "{text}");
        format!("{0}{text}{0}", self.quote)
    }

    /// Words as a list.
    pub(crate) fn words(&self, words: &[&str]) -> String {
        self.listed(words.iter().map(|word| self.quoted(word)))
    }
}

/// A parameter in sentences, its words last.
pub(crate) fn of_parameter(field: &ParameterField) -> String {
    let mut text = text::of_parameter(field, |other| format!("`{}`", text::plain_name(other)));
    match field.kind {
        ValueKind::Word { .. } => {
            let words = field.parameter.words().iter().map(|word| format!("`{word}`"));
            text += &format!(" One of {}.", words.collect::<Vec<_>>().join(", "));
        }
        ValueKind::List | ValueKind::Rows(_) => {
            let columns = field.parameter.columns().iter();
            let columns: Vec<&str> = columns.map(|column| column.text()).collect();
            text += &format!(" Each: {}", columns.join(" Then: "));
        }
        _ => {}
    }
    text
}

/// A result in sentences. `absent` is what it is where there is none.
pub(crate) fn of_result(result: &ResultField, absent: &str) -> String {
    let mut text = text::of_result(result);
    if !result.words().is_empty() {
        let words = result.words().iter().map(|word| format!("`{word}`"));
        text += &format!(" One of {}.", words.collect::<Vec<_>>().join(", "));
    }
    if result.optional {
        text += &format!(" {absent} where there is none.");
    }
    text
}

/// Writes lines of a comment, each after `begin`; from the second on indented by `indent`.
pub(crate) fn comment(text: &mut String, begin: &str, indent: &str, sentences: &str) {
    for (index, line) in text::wrap(sentences, 110 - begin.len()).iter().enumerate() {
        let indent = if index > 0 { indent } else { "" };
        text.push_str(format!("{begin}{indent}{line}").trim_end());
        text.push('\n');
    }
}
