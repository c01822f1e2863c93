//! What the command line takes.

use std::path::PathBuf;

use clap::builder::PossibleValuesParser;
use clap::{Args, Parser, Subcommand};
use clap_complete::Shell;
use pourwright::request::CALCULATIONS;

const EXIT: &str = "\
Exit codes: 0 done, 1 the input has faults (each with file, line, column and what would fix it), 2 the command line does not \
fit or a file cannot be read. A file named - is standard input. Color only on a terminal, and not if NO_COLOR is set.";

const EXAMPLES: &str = "\
Examples:
  pourwright plan                                  the demo day, as a sheet for the bench
  pourwright plan book.json orders.json --notes    what to read before or after it
  pourwright check book.json orders.json           all faults, with file, line and column
  pourwright answer convert amount='1 1/4 cup' to=mL
  pourwright example salt > salt.json
  pourwright answer salt salt.json
  pourwright plan book.json orders.json --json > plan.json
  pourwright record actuals.json --plan plan.json";

/// Examples of a request of the day.
fn of_a_day(name: &str) -> String {
    format!(
        "Examples:
  pourwright {name} --demo                          the example, asked of the demo day
  pourwright example {name} > {name}.json           a request to begin with
  pourwright {name} {name}.json --plan plan.json"
    )
}

/// Math for a day of pouring soft-plastic lures: from a shop's book and its orders to the sheet for the bench.
#[derive(Debug, Parser)]
#[command(name = "pourwright", version, arg_required_else_help = true)]
#[command(after_help = EXAMPLES, after_long_help = format!("{EXAMPLES}\n\n{EXIT}"))]
pub(crate) struct Arguments {
    #[command(subcommand)]
    pub(crate) command: Command,
}

#[derive(Debug, Subcommand)]
pub(crate) enum Command {
    /// Plan a day and print its sheet; without files, the demo day.
    Plan(Plan),
    /// Follow a color found by eye: what is in the cup, and the formula that it comes to.
    #[command(after_help = of_a_day("trial"))]
    Trial(Asked),
    /// Correct a pot that came out wrong.
    #[command(after_help = of_a_day("correct"))]
    Correct(Asked),
    /// Record what was really made.
    #[command(after_help = of_a_day("record"))]
    Record(Asked),
    /// Go on with the day from what is there: a new plan.
    #[command(after_help = of_a_day("go-on"))]
    GoOn(Asked),
    /// Find what helps against a trouble at the bench.
    #[command(after_help = of_a_day("troubles"))]
    Troubles(Asked),
    /// Learn the book's numbers from the records of many days.
    Learn(Learn),
    /// Answer any request by its name.
    Answer(Answer),
    /// Answer a stream: one request a line in, one answer a line out.
    Lines(Lines),
    /// Check a book, and orders with it.
    Check(Check),
    /// Print an example of a request, ready to be changed; without a name, all names.
    Example(Example),
    /// Print completions for a shell.
    #[command(hide = true)]
    Completions {
        /// The shell.
        shell: Shell,
    },
    /// Print the man page.
    #[command(hide = true)]
    Man,
}

#[derive(Debug, Args)]
#[command(after_help = "\
Examples:
  pourwright plan
  pourwright plan book.json orders.json
  pourwright plan book.json orders.json --json > plan.json
  make-orders | pourwright plan book.json -")]
pub(crate) struct Plan {
    /// The shop's book; if omitted: the demo's.
    #[arg(requires = "orders")]
    pub(crate) book: Option<PathBuf>,
    /// The day's orders.
    pub(crate) orders: Option<PathBuf>,
    /// Print what to read before or after the day instead: other ways to measure, doubts, costs.
    #[arg(long)]
    pub(crate) notes: bool,
    /// Print the plan as JSON instead: what --plan takes.
    #[arg(long, conflicts_with = "notes")]
    pub(crate) json: bool,
}

#[derive(Debug, Args)]
#[command(after_help = "\
Examples:
  pourwright answer convert amount='1 1/4 cup' to=mL
  pourwright answer salt salt.json loading='{ \"piece\": \"11 g\" }'
  pourwright answer formula formulas='[\"dusk\", \"plain\"]' --book book.json
  pourwright example cost | pourwright answer cost - --demo --json")]
pub(crate) struct Answer {
    /// The request's name.
    #[arg(value_parser = PossibleValuesParser::new(CALCULATIONS), hide_possible_values = true)]
    pub(crate) name: String,
    #[command(flatten)]
    pub(crate) asked: Asked,
}

/// A request, and what it is asked of.
#[derive(Debug, Args)]
pub(crate) struct Asked {
    /// A file with the request (of a record, the actuals alone will do; of a trial, its start and log), and fields as
    /// NAME=VALUE, which go before those of the file. A value is JSON, or else text.
    #[arg(value_name = "FILE|NAME=VALUE")]
    pub(crate) given: Vec<String>,
    /// Ask with this book open.
    #[arg(long, value_name = "FILE")]
    pub(crate) book: Option<PathBuf>,
    /// Ask with this plan open, as `plan --json` or `go-on --json` printed it, and the book that it was made from.
    #[arg(long, value_name = "FILE", conflicts_with = "book")]
    pub(crate) plan: Option<PathBuf>,
    /// Ask with the demo day's plan open; without a request, the example of it.
    #[arg(long, conflicts_with_all = ["book", "plan"])]
    pub(crate) demo: bool,
    /// Print the answer as JSON: { "result": ... } or { "faults": [...] }.
    #[arg(long)]
    pub(crate) json: bool,
}

#[derive(Debug, Args)]
#[command(after_help = "\
Examples:
  pourwright record monday.json --plan plan.json --json > records/2027-03-02.json
  pourwright learn --book book.json records/*.json
  pourwright learn --book book.json --after 2027-03-02 records/*.json")]
pub(crate) struct Learn {
    /// Records of days, as `record --json` printed them.
    #[arg(required = true)]
    pub(crate) records: Vec<PathBuf>,
    /// The shop's book.
    #[arg(long, value_name = "FILE")]
    pub(crate) book: PathBuf,
    /// The last day that the book has learned from.
    #[arg(long, value_name = "DAY")]
    pub(crate) after: Option<String>,
    /// Print the answer as JSON: { "result": ... } or { "faults": [...] }.
    #[arg(long)]
    pub(crate) json: bool,
}

#[derive(Debug, Args)]
#[command(after_help = "\
Answers come in the order of the lines, each as soon as it can. A line with faults, or that is not JSON, is answered by its
faults, in its place; the exit code is then 1. Memory does not grow with the number of lines.

Where standard error is a terminal and standard output is not, it shows the number of answers, the rate and, of a file, the
time left.

Examples:
  pourwright lines requests.jsonl > answers.jsonl
  pourwright lines requests.jsonl --jobs 4 > answers.jsonl
  make-requests | pourwright lines --book book.json")]
pub(crate) struct Lines {
    /// Requests, one a line.
    #[arg(default_value = "-")]
    pub(crate) file: PathBuf,
    /// Ask with this book open.
    #[arg(long, value_name = "FILE")]
    pub(crate) book: Option<PathBuf>,
    /// Ask with this plan open, as `plan --json` or `go-on --json` printed it.
    #[arg(long, value_name = "FILE", conflicts_with = "book")]
    pub(crate) plan: Option<PathBuf>,
    /// Answer by this number of threads, up to 1024.
    #[arg(long, value_name = "N", default_value = "1", value_parser = clap::value_parser!(u16).range(1..=1024))]
    pub(crate) jobs: u16,
    /// Show no progress.
    #[arg(long)]
    pub(crate) quiet: bool,
}

#[derive(Debug, Args)]
#[command(after_help = "\
Examples:
  pourwright check book.json
  pourwright check book.json monday.json tuesday.json
  pourwright check book.json --json")]
pub(crate) struct Check {
    /// The shop's book.
    pub(crate) book: PathBuf,
    /// Order lists: their days are planned.
    pub(crate) orders: Vec<PathBuf>,
    /// Print the faults as a JSON list.
    #[arg(long)]
    pub(crate) json: bool,
}

#[derive(Debug, Args)]
pub(crate) struct Example {
    /// The request's name.
    #[arg(value_parser = PossibleValuesParser::new(CALCULATIONS), hide_possible_values = true)]
    pub(crate) name: Option<String>,
}
