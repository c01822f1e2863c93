//! Writes a source file with its mutants switched in.

use std::ops::Range;

use crate::site::{Mutant, Site, Wrap};

/// A change of the text: `text` instead of the bytes at `at`.
struct Edit {
    at: Range<usize>,
    /// Order among edits at one byte: what ends, inner first; what begins, outer first; what replaces.
    order: (u8, i64, i64),
    text: String,
    site: usize,
    opens: bool,
    closes: bool,
}

/// The text with the sites' mutants that have a number, and where each site is in it.
pub fn emit(text: &str, sites: &[Site]) -> (String, Vec<Range<usize>>) {
    let mut edits = Vec::new();
    for (index, site) in sites.iter().enumerate() {
        edits_of(index, site, &mut edits);
    }
    edits.sort_by_key(|edit| (edit.at.start, edit.order));
    let mut out = String::with_capacity(text.len() * 2);
    let mut places = vec![0..0; sites.len()];
    let mut from = 0;
    for edit in &edits {
        out.push_str(&text[from..edit.at.start.max(from)]);
        if edit.opens {
            places[edit.site].start = out.len();
        }
        out.push_str(&edit.text);
        if edit.closes {
            places[edit.site].end = out.len();
        }
        from = edit.at.end.max(from);
    }
    out.push_str(&text[from..]);
    (out, places)
}

fn is(mutant: &Mutant) -> String {
    format!("crate::mutant::is({})", mutant.id)
}

/// `if is(1) { a } else if is(2) { b } else { original }`, of the mutants that are compiled in.
fn choice(mutants: &[Mutant], mutated: &[String], original: &str) -> String {
    let mut text = String::new();
    for (mutant, mutated) in mutants.iter().zip(mutated).filter(|(mutant, _)| mutant.id > 0) {
        text.push_str(&format!("if {} {{ {mutated} }} else ", is(mutant)));
    }
    format!("{text}{{ {original} }}")
}

fn edits_of(index: usize, site: &Site, edits: &mut Vec<Edit>) {
    let Some(first) = site.mutants.iter().find(|mutant| mutant.id > 0) else { return };
    let (start, end) = (site.range.start, site.range.end);
    let sequence = i64::try_from(index).unwrap_or(0);
    let (from, to) = (i64::try_from(start).unwrap_or(0), i64::try_from(end).unwrap_or(0));
    let mut around = |before: String, after: String| {
        edits.push(Edit {
            at: start..start,
            order: (1, -to, sequence),
            text: before,
            site: index,
            opens: true,
            closes: false,
        });
        edits.push(Edit {
            at: end..end,
            order: (0, -from, -sequence),
            text: after,
            site: index,
            opens: false,
            closes: true,
        });
    };
    let mut replaced = None;
    match &site.wrap {
        Wrap::Binary { operator, by_reference, original, mutated } => {
            let (open, comma) =
                if *by_reference { ("(match (&(", "), &(") } else { ("(match ((", "), (") };
            // The parenthesis of a method call is in the source.
            let method = original.starts_with("l.");
            let (open, comma) = if method { ("(match (", ", (") } else { (open, comma) };
            let close = if method { ") { (l, r) => " } else { ")) { (l, r) => " };
            around(open.into(), format!("{close}{} }})", choice(&site.mutants, mutated, original)));
            replaced = Some((operator.clone(), comma.to_owned()));
        }
        Wrap::Lazy { operator, and } => {
            let sign = if *and { "!=" } else { "==" };
            around("(match (".into(), format!("}} else {{ l }} }})"));
            let after_and = format!(") {{ l => if l {sign} {} {{ ", is(first));
            let after_or = format!(") {{ l => if l {sign} {} {{ ", is(first));
            replaced = Some((operator.clone(), if *and { after_and } else { after_or }));
        }
        Wrap::Assign { place, head, original, mutated } => {
            let both = choice(
                &site.mutants,
                &[format!("{place} {mutated} r")],
                &format!("{place} {original} r"),
            );
            around("match (".into(), format!(") {{ r => {both} }}"));
            replaced = Some((head.clone(), String::new()));
        }
        Wrap::Negate => around("((".into(), format!(") != {})", is(first))),
        Wrap::Guard => {
            let mut before = String::from("(");
            let [always, never] = &site.mutants[..] else { return };
            if always.id > 0 {
                before.push_str(&format!("{} || ", is(always)));
            }
            if never.id > 0 {
                before.push_str(&format!("!{} && ", is(never)));
            }
            around(format!("{before}("), "))".into());
        }
        Wrap::Sign { operator } => {
            around(
                "(match (".into(),
                format!(") {{ l => {} }})", choice(&site.mutants, &["l".into()], "-l")),
            );
            replaced = Some((operator.clone(), String::new()));
        }
        Wrap::Instead(other) => {
            around(format!("(if {} {{ {other} }} else {{ ", is(first)), " })".into())
        }
        Wrap::Omit => around(format!("if !{} {{ ", is(first)), " }".into()),
        Wrap::Return(values) => {
            let mut text = String::new();
            for (mutant, value) in
                site.mutants.iter().zip(values).filter(|(mutant, _)| mutant.id > 0)
            {
                text.push_str(&format!(" if {} {{ return {value}; }}", is(mutant)));
            }
            edits.push(Edit {
                at: start..start,
                order: (2, 0, sequence),
                text,
                site: index,
                opens: true,
                closes: true,
            });
        }
    }
    if let Some((at, text)) = replaced {
        edits.push(Edit { at, order: (2, 0, 0), text, site: index, opens: false, closes: false });
    }
}
