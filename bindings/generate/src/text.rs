//! Texts of the table as the languages of the doors want them.

use pourwright::parameter::{IfOmitted, Parameter, PlainUnit};
use pourwright::table::{
    CALCULATIONS, Calculation, Example, ParameterField, ResultField, ValueKind,
};

/// `text` in lines of at most `width` letters, broken at spaces.
#[must_use]
pub fn wrap(text: &str, width: usize) -> Vec<String> {
    let mut lines = vec![String::new()];
    for word in text.split_whitespace() {
        let line = lines.last_mut().expect("there is always a line");
        if line.is_empty() {
            line.push_str(word);
        } else if line.chars().count() + 1 + word.chars().count() <= width {
            line.push(' ');
            line.push_str(word);
        } else {
            lines.push(word.to_owned());
        }
    }
    lines
}

/// The paragraphs of the text of a calculation, each on one line, the summary first. `name` gives what another
/// calculation, which a text names in backticks, is called at the door.
pub(crate) fn paragraphs(
    calculation: &Calculation,
    name: impl Fn(&Calculation) -> String,
) -> Vec<String> {
    let text = calculation.text.iter().map(|line| line.trim()).collect::<Vec<_>>().join("\n");
    let mut paragraphs: Vec<String> =
        text.split("\n\n").map(|paragraph| paragraph.replace('\n', " ")).collect();
    for paragraph in &mut paragraphs {
        for other in CALCULATIONS {
            *paragraph = paragraph.replace(&format!("`{}`", other.name), &name(other));
        }
    }
    paragraphs
}

/// The meaning of a result in one line, with its unit.
pub(crate) fn of_result(result: &ResultField) -> String {
    let meaning = result.meaning.split_whitespace().collect::<Vec<_>>().join(" ");
    match result.kind {
        ValueKind::Number if result.unit != PlainUnit::Any => {
            format!("{meaning} Unit: {}.", result.unit.symbol())
        }
        _ => meaning,
    }
}

/// A name of the table without its underscores: `PieceMass`.
pub(crate) fn camel(name: &str) -> String {
    name.split('_').map(upper).collect()
}

/// The name of a parameter's plain number: with the suffix of its unit.
pub(crate) fn plain_name(parameter: Parameter) -> String {
    format!("{}{}", parameter.name(), parameter.unit().suffix())
}

/// The variant of `Parameter`: `CavityVolume`.
pub(crate) fn variant(parameter: Parameter) -> String {
    format!("{parameter:?}")
}

/// The example of a calculation with its answer to the last bit: the table has it as a person writes it.
pub(crate) fn example(calculation: &Calculation) -> Example {
    let mut example = calculation.example();
    let answered = calculation.evaluate(&example.arguments, &mut example.results);
    assert!(answered.is_ok(), "{calculation:?}: the example is refused");
    example
}

/// Number of numbers in a result that is a list, by the example.
pub(crate) fn places(calculation: &Calculation, result: usize) -> usize {
    match calculation.example().results.get(result) {
        Some(pourwright::table::Value::Numbers(numbers)) => numbers.len(),
        _ => panic!("{calculation:?}: a result that is a list has none in the example"),
    }
}

/// The unit that an amount as a text is converted to; none for what is not an amount. A difference of temperatures is not:
/// it has no zero.
pub(crate) fn amount_unit(unit: PlainUnit) -> Option<&'static str> {
    match unit {
        PlainUnit::None
        | PlainUnit::Any
        | PlainUnit::Pure
        | PlainUnit::Count
        | PlainUnit::Kelvin => None,
        unit => Some(unit.symbol()),
    }
}

/// Whether all that varies in a call is numbers, so that it can be done for columns of them; a word then counts for all
/// rows.
pub(crate) fn has_columns(calculation: &Calculation) -> bool {
    let plain =
        |kind| matches!(kind, ValueKind::Number | ValueKind::Count | ValueKind::Word { .. });
    calculation.parameters.iter().all(|field| plain(field.kind))
        && calculation.results.iter().all(|result| plain(result.kind))
}

/// Whether a parameter is a word.
pub(crate) fn is_word(field: &ParameterField) -> bool {
    matches!(field.kind, ValueKind::Word { .. })
}

/// A parameter in sentences: meaning, unit and range, default. `name` gives what another parameter is
/// called at the door.
pub(crate) fn of_parameter(field: &ParameterField, name: impl Fn(Parameter) -> String) -> String {
    let parameter = field.parameter;
    let range = parameter.range_text();
    let mut text = parameter.meaning().to_owned();
    match field.kind {
        ValueKind::Number => text += &format!(" Unit: {}; {range}.", parameter.unit().symbol()),
        ValueKind::Count => text += &format!(" {range}."),
        ValueKind::Text => text += &format!(" {}.", upper(range)),
        ValueKind::Word { .. } => {}
        _ => text += &format!(" {range} of them."),
    }
    if field.optional {
        text += &match parameter.if_omitted() {
            IfOmitted::Value(number) => format!(" Default: {number}."),
            IfOmitted::Word(word) => format!(" Default: {word}."),
            IfOmitted::Zero => " Default: 0.".to_owned(),
            IfOmitted::Nothing => " Default: none.".to_owned(),
            IfOmitted::As(other) => format!(" Default: as {}.", name(other)),
            IfOmitted::Text(text) => format!(" Default: {text}."),
            _ => " It may be omitted.".to_owned(),
        };
    }
    text
}

/// `text` with a capital letter.
pub(crate) fn upper(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| {
        first.to_uppercase().collect::<String>() + letters.as_str()
    })
}

/// The unit as it is listed.
pub(crate) fn shown_unit(unit: PlainUnit) -> Option<&'static str> {
    (!matches!(unit, PlainUnit::None | PlainUnit::Any)).then(|| unit.symbol())
}

/// The default as a door lists it; none where there is none.
pub(crate) fn default(field: &ParameterField) -> Option<String> {
    match field.if_omitted() {
        IfOmitted::Value(number) => Some(number.to_string()),
        IfOmitted::Word(word) => Some(word.to_owned()),
        IfOmitted::Zero => Some("0".to_owned()),
        IfOmitted::As(other) => Some(format!("as {}", plain_name(other))),
        IfOmitted::Text(text) => Some(text.to_owned()),
        _ => None,
    }
}

/// A text without the marks of code.
pub(crate) fn plain(text: &str) -> String {
    text.replace('`', "")
}

/// A string literal of C and of Python.
pub(crate) fn literal(text: &str) -> String {
    let mut literal = String::from("\"");
    for letter in text.chars() {
        match letter {
            '"' | '\\' => literal.extend(['\\', letter]),
            '\n' => literal.push_str("\\n"),
            letter => literal.push(letter),
        }
    }
    literal + "\""
}

/// Whether a parameter that may be omitted may be 0 as well, and is then something else than omitted.
pub(crate) fn zero_counts(field: &ParameterField) -> bool {
    let is_number = matches!(field.kind, ValueKind::Number | ValueKind::Count);
    let is_default = match field.if_omitted() {
        IfOmitted::Zero => true,
        IfOmitted::Value(number) => number == 0.0,
        _ => false,
    };
    let is_allowed = field.parameter.range().is_none_or(|range| range.holds(0.0));
    field.optional && is_number && is_allowed && !is_default
}
