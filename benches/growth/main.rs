//! How time and memory grow along each axis of a day, ten times as much a row: the table of `benches/README.md`.
//!
//! Each row is a process of its own, so that its peak of memory is its own. `growth` writes the table; `growth AXIS
//! COUNT` measures one row.

#![allow(clippy::print_stdout)] // the table is what it is for

use std::env;
use std::fs;
use std::process::{Command, ExitCode};
use std::time::Instant;

use pourwright::document::{LoadedBook, OrdersDocument};
use pourwright::plan::budget::Budget;
use pourwright::request;
use pourwright_benches::{day, growth};
use serde_json::{Value, json};

/// Axes, each with its counts.
const AXES: [(&str, &[usize]); 7] = [
    ("formulas", &[10, 100, 1_000, 10_000]),
    ("materials", &[10, 100, 1_000, 10_000]),
    ("laminates", &[10, 100, 1_000, 10_000]),
    ("unknown", &[10, 100, 1_000, 10_000]),
    ("lines", &[10, 100, 1_000, 10_000]),
    ("pieces", &[100, 1_000, 10_000, 100_000, 1_000_000]),
    ("go-on", &[10, 100, 1_000]),
];

fn main() -> ExitCode {
    let arguments: Vec<String> = env::args().skip(1).collect();
    let done = match arguments.as_slice() {
        [] => all(),
        [axis, count] => {
            count.parse().map_err(|_| "COUNT is a number.".into()).and_then(|n| one(axis, n))
        }
        _ => Err("Usage: growth [AXIS COUNT]".into()),
    };
    match done {
        Ok(()) => ExitCode::SUCCESS,
        Err(message) => {
            eprintln!("{message}");
            ExitCode::FAILURE
        }
    }
}

fn all() -> Result<(), String> {
    let program = env::current_exe().map_err(|error| error.to_string())?;
    println!("axis            count        ms   peak MB   answer kB    ksteps  answer");
    for (axis, counts) in AXES {
        for count in counts {
            let row = Command::new(&program).args([axis, &count.to_string()]).status();
            row.map_err(|error| error.to_string())?;
        }
    }
    Ok(())
}

fn one(axis: &str, count: usize) -> Result<(), String> {
    let (book, orders) = match axis {
        "formulas" => growth::formulas_of_a_product(count),
        "materials" => growth::materials_of_a_formula(count),
        "laminates" => growth::laminates(count),
        "unknown" => growth::unknown_products(count),
        "lines" | "go-on" => (day::book(500), day::orders(count, 500)),
        "pieces" => growth::pieces_of_a_line(count),
        other => return Err(format!("There is no axis \"{other}\".")),
    };
    let start;
    let budget = Budget::new();
    let answer = if axis == "go-on" {
        let book: Value = serde_json::from_str(&book).map_err(|error| error.to_string())?;
        let orders: Value = serde_json::from_str(&orders).map_err(|error| error.to_string())?;
        let day = json!({ "calculate": "plan", "book": book, "orders": orders });
        let plan = request::answer_text(&day.to_string());
        let mut plan: Value = serde_json::from_str(&plan).map_err(|error| error.to_string())?;
        let plan = plan["result"].take();
        let first = plan["steps"][0]["id"].clone();
        let asked = json!({ "calculate": "go-on", "book": book, "plan": plan, "ticks": [first] })
            .to_string();
        start = Instant::now();
        request::answer_text(&asked)
    } else {
        start = Instant::now();
        let made = LoadedBook::from_text(&book).and_then(|book| {
            OrdersDocument::from_text(&orders).and_then(|orders| book.plan_within(orders, &budget))
        });
        match made {
            Ok(plan) => serde_json::to_string(&plan).map_err(|error| error.to_string())?,
            Err(faults) => {
                let first =
                    faults.iter().next().map(|fault| format!("{}: {}", fault.code, fault.message));
                format!("refused, {}", first.unwrap_or_default())
            }
        }
    };
    let elapsed = start.elapsed().as_secs_f64() * 1e3;
    let shown: String = answer.chars().take(60).collect();
    println!(
        "{axis:<12} {count:>8} {elapsed:>9.1} {:>9} {:>11} {:>9}  {}",
        peak_mb().map_or_else(|| "-".into(), |mb| format!("{mb:.0}")),
        answer.len() / 1000,
        budget.spent() / 1000,
        if shown.starts_with("{\"format") || shown.starts_with("{\"result") {
            "plan"
        } else {
            &shown
        },
    );
    Ok(())
}

/// The largest memory of this process, where the system says it.
fn peak_mb() -> Option<f64> {
    let status = fs::read_to_string("/proc/self/status").ok()?;
    let line = status.lines().find_map(|line| line.strip_prefix("VmHWM:"))?;
    line.trim().trim_end_matches("kB").trim().parse::<f64>().ok().map(|kb| kb / 1e3)
}
