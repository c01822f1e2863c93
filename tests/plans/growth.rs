//! Work grows with the day, counted in steps: the same on every machine.

use pourwright::document::{LoadedBook, OrdersDocument};
use pourwright::plan::budget::Budget;
use pourwright_benches::{day, growth};
use rstest::rstest;

/// Twice as much of a day may take this many times the work; a square would take 4.
const NEAR_LINEAR: f64 = 2.6;

/// Steps of work, or the code of the refusal.
fn steps((book, orders): (String, String)) -> Result<u64, String> {
    let budget = Budget::new();
    let orders = OrdersDocument::from_text(&orders).expect("orders");
    let code = |faults: pourwright::Faults| faults.iter().next().expect("a fault").code.to_string();
    LoadedBook::from_text(&book)
        .and_then(|book| book.plan_within(orders, &budget))
        .map_err(code)?;
    Ok(budget.spent())
}

fn lines(count: usize) -> (String, String) {
    (day::book(500), day::orders(count, 500))
}

#[rstest]
#[case::formulas(growth::formulas_of_a_product, 15)]
#[case::materials(growth::materials_of_a_formula, 100)]
#[case::lines(lines, 250)]
#[case::pieces(growth::pieces_of_a_line, 5_000)]
fn twice_as_much_takes_about_twice_the_work(
    #[case] day: fn(usize) -> (String, String),
    #[case] count: usize,
) {
    let all: Vec<u64> = [1, 2, 4].map(|times| steps(day(count * times)).expect("a plan")).into();
    assert!(all[0] > 10, "{all:?}");
    for two in all.windows(2) {
        assert!((two[1] as f64) < NEAR_LINEAR * two[0] as f64, "{all:?}");
    }
}

// Each layer is tried in pots that hold others, so this is not linear: the budget ends it.
#[test]
fn laminated_pieces_take_little_work_up_to_what_a_shop_orders() {
    let all = steps(growth::laminates(200)).expect("a plan");
    assert!((200..20_000).contains(&all), "{all}");
}

#[rstest]
#[case(growth::formulas_of_a_product(100), "formula-too-many")]
#[case(growth::materials_of_a_formula(1_000), "formula-too-many-doses")]
#[case(growth::pieces_of_a_line(1_000_000), "budget-pots")]
#[case(growth::unknown_products(1_000), "unknown-name")]
#[case(growth::cups_of_a_bench(65), "bench-cups")]
fn what_no_shop_pours_is_refused(#[case] day: (String, String), #[case] code: &str) {
    assert_eq!(steps(day), Err(code.to_owned()));
}
