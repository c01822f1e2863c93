//! A page of text, 80 columns wide.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

const WIDTH: usize = 80;

/// Lines of text under construction.
#[derive(Default)]
pub(super) struct Page {
    text: String,
}

impl Page {
    pub(super) fn line(&mut self, line: &str) {
        self.text.push_str(line.trim_end());
        self.text.push('\n');
    }

    pub(super) fn rule(&mut self, mark: char) {
        let rule: String = core::iter::repeat_n(mark, WIDTH).collect();
        self.line(&rule);
    }

    /// `left` at the left margin and `right` at the right one, on two lines where one is too short.
    pub(super) fn ends(&mut self, left: &str, right: &str) {
        let room = WIDTH.saturating_sub(left.chars().count());
        if right.chars().count() < room {
            self.line(&format!("{left}{right:>room$}"));
        } else {
            self.line(left);
            self.line(&format!("{right:>WIDTH$}"));
        }
    }

    /// `text` broken between words, its first line after `lead`, the others below its end.
    pub(super) fn wrapped(&mut self, lead: &str, text: &str) {
        let indent = lead.chars().count();
        let mut line = lead.to_string();
        let mut filled = indent;
        for word in text.split(' ') {
            let length = word.chars().count();
            if filled > indent && filled.saturating_add(length).saturating_add(1) > WIDTH {
                self.line(&line);
                line = core::iter::repeat_n(' ', indent).collect();
                filled = indent;
            }
            if filled > indent {
                line.push(' ');
                filled = filled.saturating_add(1);
            }
            line.push_str(word);
            filled = filled.saturating_add(length);
        }
        self.line(&line);
    }

    /// What has been written.
    pub(super) fn text(&self) -> &str {
        self.text.trim_end()
    }
}

/// `1 shot`, `2 shots`.
pub(super) fn counted(count: u32, what: &str) -> String {
    if count == 1 { format!("1 {what}") } else { format!("{count} {what}s") }
}

/// `text` in at most `width` columns.
pub(super) fn cut(text: &str, width: usize) -> String {
    if text.chars().count() <= width {
        return text.to_string();
    }
    let mut short: String = text.chars().take(width.saturating_sub(1)).collect();
    short.push('…');
    short
}

/// `text` broken before a `+` into lines of less than `width` columns.
pub(super) fn broken(text: &str, width: usize) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    for (index, part) in text.split(" + ").enumerate() {
        let part = if index == 0 { part.to_string() } else { format!("+ {part}") };
        match lines.last_mut() {
            Some(line)
                if line.chars().count().saturating_add(part.chars().count()).saturating_add(1)
                    < width =>
            {
                line.push(' ');
                line.push_str(&part);
            }
            _ => lines.push(part),
        }
    }
    lines
}
