//! Which tests reach which mutants, and which mutants they catch.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::sync::Mutex;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::time::Instant;

/// One test of one test binary.
#[derive(Debug, Clone)]
pub struct Test {
    pub binary: usize,
    pub name: String,
    /// Processor time when nothing is mutated, in seconds.
    pub seconds: f64,
    /// Whether it needs panics that do not end the process.
    pub catches: bool,
    reached: Vec<u64>,
}

impl Test {
    fn reaches(&self, id: usize) -> bool {
        self.reached.get(id / 64).is_some_and(|word| word >> (id % 64) & 1 == 1)
    }
}

/// A test binary.
#[derive(Debug, Clone)]
pub struct Binary {
    pub path: PathBuf,
    pub folder: PathBuf,
}

/// What became of a mutant.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Outcome {
    /// A test failed: its name, or those of the process in which one did.
    Caught(String),
    /// It ran for more than four times as long.
    Timeout,
    /// No test reaches it.
    Unreached,
    /// All tests that reach it passed, or those that the budget allows.
    Missed,
}

/// Processor seconds of the tests that one mutant may cost, whichever are cheapest.
pub const BUDGET: f64 = 6.0;

fn command(binary: &Binary, seconds: f64) -> Command {
    let limit = 2 + (4.0 * seconds).ceil() as u64;
    let mut command = Command::new("sh");
    command
        .arg("-c")
        .arg("ulimit -v 4000000; ulimit -t \"$1\"; shift; exec nice -n 10 \"$@\"")
        .arg("sh")
        .arg(limit.to_string())
        .arg(&binary.path)
        .current_dir(&binary.folder)
        .env("PROPTEST_MAX_SHRINK_ITERS", "0")
        .env("PROPTEST_RNG_SEED", "1")
        .env("PROPTEST_DISABLE_FAILURE_PERSISTENCE", "true")
        .stdin(Stdio::null())
        .stdout(Stdio::null())
        .stderr(Stdio::null());
    command
}

/// Runs `job` for all indices below `count`, on two threads.
fn on_two<T: Send>(count: usize, job: impl Fn(usize) -> T + Sync) -> Vec<T> {
    let next = AtomicUsize::new(0);
    let done = Mutex::new(Vec::new());
    std::thread::scope(|scope| {
        for _ in 0..2 {
            scope.spawn(|| {
                loop {
                    let index = next.fetch_add(1, Ordering::Relaxed);
                    if index >= count {
                        break;
                    }
                    let result = job(index);
                    done.lock().expect("no thread panicked").push((index, result));
                }
            });
        }
    });
    let mut done = done.into_inner().expect("no thread panicked");
    done.sort_by_key(|(index, _)| *index);
    done.into_iter().map(|(_, result)| result).collect()
}

/// Runs each test alone, with nothing mutated: its time and what it reaches. Panics if one fails.
pub fn cover(binaries: &[Binary], count: usize, scratch: &Path) -> Vec<Test> {
    let mut names = Vec::new();
    for (index, binary) in binaries.iter().enumerate() {
        let list = command(binary, 60.0)
            .args(["--list", "--format=terse"])
            .stdout(Stdio::piped())
            .output()
            .expect("it runs");
        let list = String::from_utf8_lossy(&list.stdout).into_owned();
        names.extend(
            list.lines()
                .filter_map(|line| line.strip_suffix(": test"))
                .map(|name| (index, name.to_owned())),
        );
    }
    let tests = on_two(names.len(), |at| {
        let (index, name) = &names[at];
        let file = scratch.join(format!("reached-{at}"));
        let run = |first: bool| {
            let mut command = command(&binaries[*index], 300.0);
            if first {
                command.env("MUTANT_FIRST", "1");
            }
            let _ = fs::remove_file(&file);
            let status = command
                .env("MUTANT_REACHED", &file)
                .args(["--exact", name, "--test-threads=1"])
                .status();
            status.is_ok_and(|status| status.success())
        };
        let catches = !run(true);
        if catches && !run(false) {
            eprintln!("{name} fails without a mutant, and is left out");
            return None;
        }
        let bytes = fs::read(&file).expect("what the test reached");
        let _ = fs::remove_file(&file);
        let (time, flags) = bytes.split_at(8);
        let seconds = i64::from_le_bytes(time.try_into().expect("8 bytes")) as f64 / 1e6;
        let mut reached = vec![0_u64; count / 64 + 1];
        for (id, _) in flags.iter().enumerate().filter(|(_, flag)| **flag == 1) {
            reached[id / 64] |= 1 << (id % 64);
        }
        Some(Test { binary: *index, name: name.clone(), seconds, catches, reached })
    });
    let mut tests: Vec<_> = tests.into_iter().flatten().collect();
    tests.sort_by(|a, b| a.seconds.total_cmp(&b.seconds));
    tests
}

/// Judges the mutants `ids`, each by tests of at most `budget` seconds, and hands each to `done` as it is known.
pub fn judge(
    binaries: &[Binary],
    tests: &[Test],
    ids: &[usize],
    budget: f64,
    done: impl Fn(usize, Outcome, f64) + Sync,
) {
    on_two(ids.len(), |at| {
        let started = Instant::now();
        let outcome = one(binaries, tests, ids[at], budget);
        done(ids[at], outcome, started.elapsed().as_secs_f64());
    });
}

fn one(binaries: &[Binary], tests: &[Test], id: usize, budget: f64) -> Outcome {
    let reaching: Vec<_> = tests.iter().filter(|test| test.reaches(id)).collect();
    if reaching.is_empty() {
        return Outcome::Unreached;
    }
    // Groups of one binary, cheapest first, each dearer than the one before: most mutants end with the first.
    let (mut spent, mut from, mut share) = (0.0, 0, 0.02);
    while from < reaching.len() {
        let mut to = from;
        let mut cost = 0.0;
        while to < reaching.len()
            && (to == from || cost + reaching[to].seconds <= share)
            && to - from < 400
        {
            cost += reaching[to].seconds;
            to += 1;
        }
        if spent + cost > budget && from > 0 {
            break;
        }
        let mut groups: BTreeMap<(usize, bool), Vec<&Test>> = BTreeMap::new();
        for test in &reaching[from..to] {
            groups.entry((test.binary, test.catches)).or_default().push(test);
        }
        for ((binary, catches), group) in groups {
            let mut command =
                command(&binaries[binary], group.iter().map(|test| test.seconds).sum());
            command.env("MUTANT", id.to_string()).args(["--exact", "--test-threads=1"]);
            if !catches {
                command.env("MUTANT_FIRST", "1");
            }
            let status =
                command.args(group.iter().map(|test| &test.name)).status().expect("the tests run");
            use std::os::unix::process::ExitStatusExt;
            match status.signal() {
                Some(9 | 24) => return Outcome::Timeout,
                _ if status.success() => {}
                _ => {
                    let name = group.first().map(|test| test.name.clone()).unwrap_or_default();
                    let more = group.len() - 1;
                    return Outcome::Caught(if more == 0 {
                        name
                    } else {
                        format!("{name} and {more} more")
                    });
                }
            }
        }
        spent += cost;
        from = to;
        share = (share * 6.0_f64).min(2.0);
    }
    Outcome::Missed
}
