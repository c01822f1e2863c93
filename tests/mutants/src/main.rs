//! Mutation tests of the core: see README.md.

mod emit;
mod judge;
mod list;
mod site;
mod tree;

use std::collections::BTreeMap;
use std::fs;
use std::io::Write;
use std::path::{Path, PathBuf};
use std::process::ExitCode;
use std::sync::Mutex;
use std::time::Instant;

use judge::{Binary, Outcome};
use list::Row;
use tree::{Core, STAGES, Tree};

/// FNV-1a, the same in every version of every tool.
fn hash(text: &[u8]) -> u64 {
    text.iter().fold(0xcbf2_9ce4_8422_2325, |hash, byte| {
        (hash ^ u64::from(*byte)).wrapping_mul(0x0100_0000_01b3)
    })
}

/// The order in which mutants are sampled: as if shuffled, and always the same.
fn shuffled(name: &str) -> u64 {
    let mut x = hash(name.as_bytes());
    x = (x ^ (x >> 33)).wrapping_mul(0xff51_afd7_ed55_8ccd);
    x ^ (x >> 33)
}

struct Options {
    check: bool,
    unit: bool,
    sample: Option<usize>,
    shard: (u64, u64),
    only: Option<String>,
    again: bool,
    open: bool,
    tests: Option<Vec<String>>,
    table: bool,
    list: bool,
}

fn options() -> Result<Options, String> {
    let mut found = Options {
        check: false,
        unit: false,
        sample: None,
        shard: (0, 1),
        only: None,
        again: false,
        open: false,
        tests: None,
        table: false,
        list: false,
    };
    let mut arguments = std::env::args().skip(1);
    while let Some(argument) = arguments.next() {
        let mut value = || arguments.next().ok_or_else(|| format!("{argument} needs a value"));
        match argument.as_str() {
            "--check" => found.check = true,
            "--unit" => found.unit = true,
            "--again" => found.again = true,
            "--open" => found.open = true,
            "--tests" => {
                let names: Vec<_> = value()?.split(',').map(str::to_owned).collect();
                if let Some(name) = names.iter().find(|name| !STAGES.contains(&name.as_str())) {
                    return Err(format!(
                        "{name} is not a test target; there are {}",
                        STAGES.join(", ")
                    ));
                }
                found.tests = Some(names);
            }
            "--table" => found.table = true,
            "--list" => found.list = true,
            "--sample" => {
                found.sample = Some(value()?.parse().map_err(|_| "--sample needs a number")?)
            }
            "--only" => found.only = Some(value()?),
            "--shard" => {
                let text = value()?;
                let (k, n) = text.split_once('/').ok_or("--shard needs k/n, as 1/4")?;
                let number =
                    |text: &str| text.parse::<u64>().map_err(|_| "--shard needs k/n, as 1/4");
                let (k, n) = (number(k)?, number(n)?);
                if k < 1 || k > n {
                    return Err("--shard needs k from 1 to n".into());
                }
                found.shard = (k - 1, n);
            }
            _ => return Err(format!("{argument} is not an option; see tests/mutants/README.md")),
        }
    }
    Ok(found)
}

fn main() -> ExitCode {
    match options() {
        Ok(options) => run(&options),
        Err(error) => {
            eprintln!("{error}");
            ExitCode::from(2)
        }
    }
}

fn run(options: &Options) -> ExitCode {
    let started = Instant::now();
    let here = PathBuf::from(env!("CARGO_MANIFEST_DIR"));
    let repository = here.join("../..").canonicalize().expect("the repository");
    let scratch = repository.join("target/mutants");
    fs::create_dir_all(&scratch).expect("a scratch folder");
    let (survivors_path, dropped_path, results_path) =
        (here.join("survivors.txt"), here.join("uncompiled.txt"), scratch.join("results.jsonl"));
    let ceiling_path = here.join("ceiling.txt");
    let survivors = list::survivors(&survivors_path);
    let mut dropped = list::dropped(&dropped_path);
    let results = list::results(&results_path);
    let mut core = tree::read(&repository);
    if options.table || options.list {
        core.number(&dropped, |_| true);
        if options.table {
            print_table(&core, &dropped, &survivors)
        } else {
            print_survivors(&core, &results, &survivors)
        }
        return ExitCode::SUCCESS;
    }

    if options.check {
        let names = core.number(&dropped, |_| true);
        for gone in survivors.keys().filter(|name| !names.contains(name)) {
            eprintln!("survivors.txt has a line for a mutant that is no more: {gone}");
        }
        let open = list::open(&survivors);
        let ceiling = list::ceiling(&ceiling_path);
        eprintln!("{open} survivors are open, of at most {ceiling}.");
        if open > ceiling {
            eprintln!(
                "More than tests/mutants/ceiling.txt allows: kill some, or argue why no test can notice them."
            );
            return ExitCode::FAILURE;
        }
    }

    let fingerprint = sources(&repository);
    // What the core's own tests miss is judged again by all.
    let sources = match (options.unit, &options.tests) {
        (true, _) => format!("{fingerprint}-unit"),
        (false, Some(names)) => format!("{fingerprint}-{}", names.join("+")),
        (false, None) => fingerprint.clone(),
    };
    let stages: Vec<&str> = match (options.unit, &options.tests) {
        (true, _) => Vec::new(),
        (false, Some(names)) => names.iter().map(String::as_str).collect(),
        (false, None) => STAGES.to_vec(),
    };
    let tree = Tree::new(&repository);
    let selected = |core: &mut Core, dropped: &_| {
        let mut names = core.number(dropped, |_| true).split_off(1);
        names.retain(|name| {
            options
                .only
                .as_ref()
                .is_none_or(|only| only.split(',').any(|only| name.starts_with(only)))
                && shuffled(name) % options.shard.1 == options.shard.0
                && (!options.open || survivors.get(name).is_some_and(|reason| reason == list::OPEN))
                && !results.get(name).is_some_and(|known| {
                    let caught = matches!(known.outcome.as_str(), "caught" | "timeout");
                    !options.check
                        && (known.sources == sources
                            || caught && (options.again || known.sources.starts_with(&fingerprint)))
                })
        });
        names.sort_by_key(|name| shuffled(name));
        names.truncate(options.sample.unwrap_or(usize::MAX));
        // What is listed may be missed: a check has nothing to say of it.
        names.retain(|name| !options.check || !survivors.contains_key(name));
        names.into_iter().collect::<std::collections::BTreeSet<_>>()
    };

    // Drops what does not compile, until all does.
    let mut wanted = selected(&mut core, &dropped);
    let mut names;
    loop {
        names = core.number(&dropped, |name| wanted.contains(name));
        let places = tree.write(&repository, &core, names.len());
        let messages = tree.cargo(&["check", "-p", "pourwright", "--lib"]);
        let blamed = tree::blamed(&core, &places, &messages);
        let failed = messages.iter().any(|message| message["message"]["level"] == "error");
        eprintln!(
            "{:.0} s: {} mutants, {} do not compile",
            started.elapsed().as_secs_f64(),
            names.len() - 1,
            blamed.len()
        );
        if !failed {
            break;
        }
        if blamed.is_empty() {
            eprintln!("The errors above are about no mutant.");
            return ExitCode::FAILURE;
        }
        // Instead of what is dropped, what its site falls back to.
        for (_, site) in core.sites() {
            if site.mutants.iter().any(|mutant| blamed.contains(&mutant.name)) {
                wanted.extend(
                    site.fallback
                        .iter()
                        .flat_map(|(_, mutants)| mutants.iter().map(|mutant| mutant.name.clone())),
                );
            }
        }
        dropped.extend(blamed);
        if !options.check {
            tree::write_new(
                &dropped_path,
                &dropped.iter().map(|name| format!("{name}\n")).collect::<String>(),
            );
        }
    }

    let mut binaries = Vec::new();
    let mut build = |arguments: &[&str], folder: &str| {
        for message in tree.cargo(arguments) {
            if message["message"]["level"] == "error" {
                eprintln!("{}", message["message"]["rendered"].as_str().unwrap_or_default());
            }
            if let Some(path) = message["executable"].as_str()
                && message["profile"]["test"] == true
            {
                binaries.push(Binary { path: path.into(), folder: tree.root.join(folder) });
            }
        }
    };
    build(&["test", "--no-run", "-p", "pourwright", "--lib"], "core");
    if !stages.is_empty() {
        let mut arguments = vec!["test", "--no-run", "-p", "pourwright-tests"];
        stages.iter().for_each(|stage| arguments.extend(["--test", stage]));
        build(&arguments, "tests");
    }
    let expected = 1 + stages.len();
    if binaries.len() != expected {
        eprintln!("{} of {expected} test binaries were built.", binaries.len());
        return ExitCode::FAILURE;
    }
    eprintln!("{:.0} s: built", started.elapsed().as_secs_f64());

    let tests = judge::cover(&binaries, names.len(), &scratch);
    let sum: f64 = tests.iter().map(|test| test.seconds).sum();
    eprintln!(
        "{:.0} s: {} tests, {sum:.1} s of processor time",
        started.elapsed().as_secs_f64(),
        tests.len()
    );

    let log = Mutex::new((
        fs::OpenOptions::new()
            .append(true)
            .create(true)
            .open(&results_path)
            .expect("a results file"),
        Vec::new(),
        0,
    ));
    let ids: Vec<_> = (1..names.len()).collect();
    // In a check all are caught but for what is new, on slow machines too: times decide nothing.
    let budget = if options.check { f64::INFINITY } else { judge::BUDGET };
    judge::judge(&binaries, &tests, &ids, budget, |id, outcome, seconds| {
        let (word, by) = match outcome {
            Outcome::Caught(by) => ("caught", by),
            Outcome::Timeout => ("timeout", String::new()),
            Outcome::Unreached => ("unreached", String::new()),
            Outcome::Missed => ("missed", String::new()),
        };
        let line = serde_json::json!({
            "mutant": names[id], "outcome": word, "by": by, "seconds": (seconds * 1e3).round() / 1e3, "sources": sources,
        });
        let mut log = log.lock().expect("no thread panicked");
        writeln!(log.0, "{line}").expect("the results file takes a line");
        log.2 += 1;
        if matches!(word, "missed" | "unreached") {
            log.1.push(names[id].clone());
        }
        if log.2 % 500 == 0 {
            eprintln!(
                "{:.0} s: {} judged, {} missed",
                started.elapsed().as_secs_f64(),
                log.2,
                log.1.len()
            );
        }
    });
    let (_, missed, judged) = log.into_inner().expect("no thread panicked");
    eprintln!("{:.0} s: {judged} judged, {} missed", started.elapsed().as_secs_f64(), missed.len());
    let unlisted: Vec<_> = missed.iter().filter(|name| !survivors.contains_key(*name)).collect();
    if options.check && !unlisted.is_empty() {
        eprintln!(
            "Not in tests/mutants/survivors.txt, and no test notices it (add a test, or argue why none can):"
        );
        unlisted.iter().for_each(|name| eprintln!("  {name}"));
        return ExitCode::FAILURE;
    }
    ExitCode::SUCCESS
}

/// A fingerprint of what is mutated and of the tests.
fn sources(repository: &Path) -> String {
    let mut all = Vec::new();
    for folder in ["core/src", "core/data", "core/examples", "tests"] {
        for path in tree::files(&repository.join(folder)) {
            if !path.starts_with(repository.join("tests/mutants"))
                && !path.starts_with(repository.join("tests/fuzz"))
            {
                all.extend(fs::read(path).expect("a file"));
            }
        }
    }
    format!("{:016x}", hash(&all))
}

/// The table as the list of survivors has it: what is not in it counts as caught.
fn print_table(
    core: &Core,
    dropped: &std::collections::BTreeSet<String>,
    survivors: &BTreeMap<String, String>,
) {
    let mut rows: BTreeMap<String, Row> = BTreeMap::new();
    for (file, (_, sites)) in &core.files {
        rows.entry(list::part(file).to_owned()).or_default().not_mutated += sites.frozen;
    }
    dropped
        .iter()
        .for_each(|name| rows.entry(list::part(name).to_owned()).or_default().not_mutated += 1);
    for (_, site) in core.sites() {
        for mutant in &site.mutants {
            let row = rows.entry(list::part(&mutant.name).to_owned()).or_default();
            row.mutants += 1;
            match survivors.get(&mutant.name).map(String::as_str) {
                None | Some(list::ELSEWHERE) => row.caught += 1,
                Some(list::OPEN) => row.open += 1,
                Some(_) => row.argued += 1,
            }
        }
    }
    rows.retain(|_, row| row.mutants > 0);
    print!("{}", list::table(&rows));
}

/// The list of survivors as the results have it: reasons are kept, the others are open. What the core's own tests miss says
/// nothing of the other tests, so what these caught stays caught by them.
fn print_survivors(
    core: &Core,
    results: &BTreeMap<String, list::Known>,
    survivors: &BTreeMap<String, String>,
) {
    let mut lines = Vec::new();
    for mutant in core.sites().flat_map(|(_, site)| &site.mutants) {
        let Some(known) = results.get(&mutant.name) else { continue };
        let reason = match known.outcome.as_str() {
            "missed" | "unreached" => survivors
                .get(&mutant.name)
                .filter(|reason| *reason != list::ELSEWHERE || known.is_of_unit())
                .map_or(list::OPEN, String::as_str),
            _ if known.missed_by_unit => list::ELSEWHERE,
            _ => continue,
        };
        lines.push(format!("{} | {reason}", mutant.name));
    }
    lines.sort();
    println!("{}", lines.join("\n"));
}
