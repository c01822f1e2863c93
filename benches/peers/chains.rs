//! The fewest chains of recipes next to `chains.py`, which asks a general-purpose graph library: the
//! same recipes, the same count, the time of each and their ratio.
//!
//! Run by `benches/run`; the argument is a Python that has the library.

#![allow(clippy::print_stdout)] // the table is what it is for

use std::env;
use std::io::{BufRead, BufReader, Write};
use std::process::{Command, ExitCode, Stdio};
use std::time::Instant;

use pourwright::book::Book;
use pourwright::document::LoadedBook;
use pourwright::formula::{Overlap, Recipe};
use pourwright::plan::internals::cover::fewest_chains;
use pourwright::plan::internals::precedence::{Composition, FreshBase, Precedence};
use pourwright_benches::day;

const SCRIPT: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/peers/chains.py");

/// How often the library's side is timed; the shortest counts.
const ROUNDS: u32 = 10;

fn main() -> ExitCode {
    match env::args().nth(1).ok_or_else(|| "Usage: chains PYTHON".to_owned()).and_then(compare) {
        Ok(()) => ExitCode::SUCCESS,
        Err(message) => {
            eprintln!("{message}");
            ExitCode::FAILURE
        }
    }
}

fn compare(python: String) -> Result<(), String> {
    let mut script = Command::new(&python)
        .arg(SCRIPT)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .map_err(|error| format!("{python}: {error}"))?;
    let mut questions = script.stdin.take().ok_or("no way to ask the script")?;
    let mut answers = BufReader::new(script.stdout.take().ok_or("no answer from the script")?);
    println!("recipes  chains  pourwright     script (relation + matching)   ratio");
    for formulas in [20, 100, 500] {
        let recipes = recipes(formulas)?;
        let (ours, seconds) = timed(&recipes)?;
        writeln!(questions, "{}", rows(&recipes)).map_err(|error| error.to_string())?;
        let mut answer = String::new();
        answers.read_line(&mut answer).map_err(|error| error.to_string())?;
        let (chains, relation, matching) =
            read(&answer).ok_or_else(|| format!("The script says \"{}\".", answer.trim()))?;
        if chains != ours {
            return Err(format!("{ours} chains here, {chains} by the script."));
        }
        println!(
            "{:>7} {chains:>7} {:>8.3} ms {:>10.1} ms ({relation:.1} + {matching:.1}) {:>8.0}",
            recipes.len(),
            seconds * 1e3,
            relation + matching,
            (relation + matching) / (seconds * 1e3),
        );
    }
    drop(questions);
    script.wait().map(|_| ()).map_err(|error| error.to_string())
}

/// Every color of a shop in every body, all different.
fn recipes(formulas: usize) -> Result<Vec<Recipe>, String> {
    let book = LoadedBook::from_text(&day::book(formulas)).map_err(|f| f.to_string())?;
    let book = book.ready();
    let (bodies, colors): (Vec<usize>, Vec<usize>) = (0..book.formulas.len())
        .partition(|index| book.formulas.get(*index).is_some_and(|f| !f.base.is_empty()));
    let mut recipes: Vec<Recipe> = Vec::new();
    for color in colors {
        for body in &bodies {
            let recipe = recipe(book, &[color, *body])?;
            if !recipes.contains(&recipe) {
                recipes.push(recipe);
            }
        }
    }
    Ok(recipes)
}

fn recipe(book: &Book, formulas: &[usize]) -> Result<Recipe, String> {
    let formulas: Vec<_> = formulas.iter().filter_map(|index| book.formulas.get(*index)).collect();
    let base = book.default_base;
    Recipe::combine(&formulas, Overlap::Refuse, base, &book.materials, book.system)
        .map_err(|error| error.to_string())
}

/// The number of chains, and the seconds that the order and the chains take.
fn timed(recipes: &[Recipe]) -> Result<(usize, f64), String> {
    let mut shortest = f64::INFINITY;
    let mut chains = 0;
    for _ in 0..ROUNDS {
        let compositions = recipes.iter().map(composition).collect::<Result<Vec<_>, _>>()?;
        let start = Instant::now();
        let precedence =
            Precedence::new(&compositions, FreshBase::Off).map_err(|error| error.to_string())?;
        let order = precedence.order();
        let key: Vec<u32> = (0..).take(order.len()).collect();
        let cover =
            fewest_chains(order, &vec![1; order.len()], &key).map_err(|error| error.to_string())?;
        shortest = shortest.min(start.elapsed().as_secs_f64());
        chains = cover.chains.len();
    }
    Ok((chains, shortest))
}

fn composition(recipe: &Recipe) -> Result<Composition, String> {
    let exact =
        |one: &pourwright::formula::Ingredient| (one.material.0 as usize, one.exact.clone());
    Composition::new(recipe.base().iter().map(exact), recipe.additives().iter().map(exact))
        .map_err(|error| error.to_string())
}

/// The recipes as the script reads them: ratios to the base, a column a material.
fn rows(recipes: &[Recipe]) -> serde_json::Value {
    let materials = recipes.iter().flat_map(|recipe| recipe.ingredients());
    let most = materials.map(|one| one.material.0 as usize).max().unwrap_or(0);
    let row = |recipe: &Recipe| {
        let mut row = vec![0.0; most + 1];
        recipe.ingredients().for_each(|one| row[one.material.0 as usize] = one.ratio);
        row
    };
    recipes.iter().map(row).collect()
}

/// Chains, and the milliseconds for the relation and the matching.
fn read(answer: &str) -> Option<(usize, f64, f64)> {
    let mut parts = answer.split_whitespace();
    let chains = parts.next()?.parse().ok()?;
    let mut milliseconds = || Some(parts.next()?.parse::<f64>().ok()? * 1e3);
    Some((chains, milliseconds()?, milliseconds()?))
}
