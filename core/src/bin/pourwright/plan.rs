//! A day's plan.

use std::process::ExitCode;

use crate::arguments::Plan;
use crate::source::Source;
use crate::{Stop, print, print_json};

/// Plans a day, and prints its sheet, its notes, or all of it as JSON.
pub(crate) fn run(arguments: &Plan) -> Result<ExitCode, Stop> {
    let book = Source::read_or(arguments.book.as_deref(), Source::demo_book)?;
    let orders = Source::read_or(arguments.orders.as_deref(), Source::demo_orders)?;
    let planned = book.book()?.plan_text(&orders.text);
    let plan = planned.map_err(|faults| Stop::Faults(orders.findings(&faults)))?;
    if arguments.json {
        print_json(&plan)
    } else if arguments.notes {
        print(&plan.notes().to_string())
    } else {
        print(&plan.sheet().to_string())
    }
}
