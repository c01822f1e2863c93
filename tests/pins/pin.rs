//! What an answer is compared with: a line of a digest, by kind and number.

use std::fs;
use std::ops::Range;
use std::path::{Path, PathBuf};
use std::rc::Rc;
use std::sync::Mutex;

use serde_json::Value;

use crate::day::Day;

/// A request with all that it is asked of, and the text of its answer.
pub(crate) struct Asked {
    pub(crate) request: Value,
    pub(crate) answer: String,
    /// The day that it is asked of.
    pub(crate) day: Option<Rc<Day>>,
}

/// Requests of one kind, each made from its number alone.
pub(crate) struct Kind {
    pub(crate) name: &'static str,
    pub(crate) ask: fn(usize) -> Asked,
}

/// FNV-1a, 64 bits.
pub(crate) fn hash(text: &[u8]) -> u64 {
    text.iter().fold(0xcbf2_9ce4_8422_2325, |hash, byte| {
        (hash ^ u64::from(*byte)).wrapping_mul(0x0100_0000_01b3)
    })
}

/// One test at a time writes a file of lines.
static WRITING: Mutex<()> = Mutex::new(());

impl Kind {
    fn path(&self) -> PathBuf {
        Path::new(env!("CARGO_MANIFEST_DIR")).join(format!("pins/lines/{}.txt", self.name))
    }

    fn lines(&self) -> Vec<String> {
        let text = fs::read_to_string(self.path()).unwrap_or_default();
        text.lines().map(str::to_owned).collect()
    }

    fn line(number: usize, answer: &str) -> String {
        format!("{number} {:016x}", hash(answer.as_bytes()))
    }

    /// Checks these numbers, or writes their lines.
    pub(crate) fn check(&self, numbers: Range<usize>) {
        if std::env::var_os("UPDATE").is_some() {
            let lines: Vec<String> = numbers
                .clone()
                .map(|number| Self::line(number, &(self.ask)(number).answer))
                .collect();
            let _one = WRITING.lock().unwrap_or_else(|error| error.into_inner());
            let mut all = self.lines();
            all.resize(all.len().max(numbers.end), String::new());
            all.splice(numbers, lines);
            fs::write(self.path(), all.join("\n") + "\n").expect("a file of lines");
            return;
        }
        let lines = self.lines();
        let shown = std::env::var("PIN").ok();
        for number in numbers {
            let asked = (self.ask)(number);
            let line = Self::line(number, &asked.answer);
            let id = format!("{}-{number}", self.name);
            if shown.as_deref() == Some(&id) {
                write(&id, &line, &asked);
            }
            let pinned = lines.get(number).map_or("", String::as_str);
            assert!(
                line == pinned,
                "The answer to {id} changed: its line is \"{line}\", that of tests/pins/lines/{}.txt is \"{pinned}\".\n\
                 To see it: PIN={id} cargo test -p pourwright-tests --all-features --test pins {}, here and at the commit \
                 before; each writes request and answer to target/pins/.\n\
                 If the change is meant: UPDATE=1 instead of PIN, and commit the lines.",
                self.name,
                self.name,
            );
        }
    }
}

/// Writes request and answer to files; the digest is in the name of the answer's, so that two answers do not meet.
fn write(id: &str, line: &str, asked: &Asked) {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../target/pins");
    let digest = line.rsplit(' ').next().unwrap_or_default();
    let mut request = asked.request.clone();
    if let Some(day) = &asked.day {
        request["book"] = day.book.clone();
        if request["calculate"] != "plan" && !day.plan.is_null() {
            request["plan"] = day.plan.clone();
        }
    }
    fs::create_dir_all(&folder).expect("a folder");
    fs::write(folder.join(format!("{id}.request.json")), format!("{:#}\n", request))
        .expect("a file for the request");
    fs::write(folder.join(format!("{id}.{digest}.answer.txt")), &asked.answer)
        .expect("a file for the answer");
}
