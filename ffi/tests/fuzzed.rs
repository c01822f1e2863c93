//! The fuzz targets of `tests/fuzz/`: each case that is kept there, by its name, and a bounded number of others from a
//! fixed seed.

// There it is a crate, here a module.
#[allow(unreachable_pub)]
#[path = "../../tests/fuzz/src/lib.rs"]
mod fuzz;

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

use fuzz::chance::{Chance, splice};
use fuzz::{Target, smaller, target};
use rstest::rstest;
use serde_json::Value;

#[rstest]
fn replayed(#[files("../tests/fuzz/corpus/*/*.json")] path: PathBuf) {
    let folder = path.parent().unwrap().file_name().unwrap().to_str().unwrap();
    (target(folder).check)(&read(&path).unwrap()).unwrap();
}

fn read(path: &Path) -> Option<Value> {
    serde_json::from_str(&fs::read_to_string(path).ok()?).ok()
}

/// Shows a case that failed, so that it can be kept.
struct Shown<'a>(&'a Value);

impl Drop for Shown<'_> {
    fn drop(&mut self) {
        if std::thread::panicking() {
            eprintln!("{}", self.0);
        }
    }
}

#[rstest]
#[case("amounts", 400)]
#[case("columns", 4_000)]
#[case("document", 300)]
#[case("handles", 1_000)]
#[case("plans", 60)]
fn made(#[case] name: &str, #[case] cases: u64) {
    let Target { check, change, .. } = target(name);
    let mut case = Value::Null;
    for seed in 0..cases {
        // What a few changes have made is left for something new.
        if seed % 8 == 0 {
            case = Value::Null;
        }
        change(&mut case, &mut Chance::new(20_270_302 + seed, &mut splice(seed)));
        let shown = Shown(&case);
        check(shown.0).unwrap();
    }
}

/// Keeps of the cases in the folder `FOUND` one for each thing that no kept case shows, cut down to what shows it.
#[rstest]
#[case("amounts")]
#[case("columns")]
#[case("document")]
#[case("handles")]
#[case("plans")]
fn keeps(#[case] name: &str) {
    let Some(found) = std::env::var_os("FOUND") else { return };
    let check = target(name).check;
    let kept = PathBuf::from(format!("../tests/fuzz/corpus/{name}"));
    let cases = |folder: &Path| -> Vec<Value> {
        let files = fs::read_dir(folder).into_iter().flatten();
        files.filter_map(|file| read(&file.unwrap().path())).collect()
    };
    let mut of: BTreeMap<String, Value> = BTreeMap::new();
    let known: Vec<String> = cases(&kept).iter().flat_map(|case| check(case).unwrap()).collect();
    for case in cases(&Path::new(&found).join(name)) {
        for thing in check(&case).unwrap_or_default() {
            let size = case.to_string().len();
            if !known.contains(&thing)
                && of.get(&thing).is_none_or(|other| size < other.to_string().len())
            {
                of.insert(thing, case.clone());
            }
        }
    }
    for (thing, case) in of {
        // The second implementation reads whole documents only.
        let shows = |case: &Value| {
            std::panic::catch_unwind(|| check(case))
                .is_ok_and(|seen| seen.is_ok_and(|seen| seen.contains(&thing)))
        };
        let case = smaller(case, shows);
        let thing = thing.replace('/', "-per-");
        let words: Vec<&str> =
            thing.split(|c: char| !c.is_alphanumeric()).filter(|word| !word.is_empty()).collect();
        let name = words.join("-");
        let text = serde_json::to_string_pretty(&case).unwrap() + "\n";
        fs::write(kept.join(format!("{name}.json")), text).unwrap();
    }
}
