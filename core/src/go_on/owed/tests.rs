use alloc::string::{String, ToString};
use alloc::vec;
use alloc::vec::Vec;

use rstest::rstest;

use super::*;
use crate::book::Cavities;
use crate::go_on::tests::{kilograms, morning};
use crate::quantity::{Measurable, Measured, Volume};

/// A mold of one shape, with so many cavities.
fn mold(count: u32, rejects: f64) -> Mold {
    let (book, _) = morning(&[]);
    let worm = book.ready().molds.iter().find(|mold| mold.name == "worm").unwrap();
    let volume = Measured::exact(Volume::from_si(1e-5));
    let cavities = Vec::from([Cavities { shape: None, count, volume, body: None }]);
    Mold { cavities, rejects: Some(rejects), ..worm.clone() }
}

#[rstest]
#[case(4, 0.0, 10, 2, 8)]
#[case(4, 0.0, 10, 3, 10)]
#[case(4, 0.0, 10, 0, 0)]
// Of 40 pieces at 3 %, at most 2 are rejects with 88 %, at most 3 with 97 %.
#[case(4, 0.03, 40, 10, 37)]
#[case(4, 0.03, 37, 10, 37)]
// A piece that is as often bad as not cannot be promised, of four tries it can: 94 %.
#[case(1, 0.5, 1, 1, 0)]
#[case(1, 0.5, 1, 4, 1)]
// At most 1 of 1000 with 96 %, none with 74 %.
#[case(4, 0.0003, 1000, 250, 999)]
// At most 4 of 1004 with 95 %: 1000 pieces are safe; above a thousand it goes down by whole shots, to 997.
#[case(4, 0.002, 1001, 251, 997)]
fn shots_that_are_left_promise_so_many_pieces(
    #[case] cavities: u32,
    #[case] rejects: f64,
    #[case] ordered: u32,
    #[case] shots: u32,
    #[case] expected: u32,
) {
    let (book, _) = morning(&[]);
    let mut book = book.ready().clone();
    book.limits.confidence = 0.9;
    assert_eq!(rest(&mold(cavities, rejects), &book, &[ordered], shots), [expected]);
}

#[test]
fn shots_are_left_by_line_and_layer() {
    let (_, plan) = morning(&[r#"{ "order": "1", "product": "sky worm", "pieces": 40 }"#]);
    let one = &plan.plan.pots[0];
    let pot = |draws: &[(u32, u32, u32)]| {
        let draw = |&(line, layer, shots): &(u32, u32, u32)| crate::plan::Draw {
            line: Some(line),
            layer: Some(layer),
            shots,
            ..one.stages[0].draws[0].clone()
        };
        let mut pot = one.clone();
        pot.stages[0].draws = draws.iter().map(draw).collect();
        pot
    };
    let (first, second) = (pot(&[(2, 2, 7), (2, 1, 5), (1, 1, 3), (9, 1, 1)]), pot(&[(2, 1, 4)]));
    let mut pots = [PotNow::new("A".into(), Some(&first)), PotNow::new("B".into(), Some(&second))];
    pots[0].shot[0][1] = 2;
    assert_eq!(shots_left(3, &pots), [vec![3], vec![7, 7], vec![]]);
}

// As a person writes it, not 53.99999999999999 g; a third of a kilogram to fifteen digits.
#[rstest]
#[case(0.104 - 0.05, "54 g")]
#[case(0.8 - 0.7, "100 g")]
#[case(1.0 / 3.0, "333.333333333333 g")]
#[case(0.0, "0 g")]
fn what_is_left_is_written_without_the_digits_of_its_calculation(
    #[case] kilograms: f64,
    #[case] expected: &str,
) {
    assert_eq!(grams(Mass::from_si(kilograms)).unwrap().to_string(), expected);
}

#[test]
fn of_shelf_and_stock_is_left_what_no_pot_took() {
    let (book, plan) = morning(&[]);
    let book = book.ready();
    let text = r#"{ "format": "pourwright/1.0", "lines": [],
        "shelf": [
            { "name": "old", "mass": "104 g", "formulas": ["sky", "body"] },
            { "name": "all", "mass": "30 g", "formulas": ["sky", "body"] },
            { "name": "none", "mass": "1/4 lb", "formulas": ["sky", "body"] }
        ],
        "stock": { "clear": "1 kg", "blue": "0.02 kg", "salt": "0.1 kg" } }"#;
    let orders = OrdersDocument::from_text(text).unwrap();
    let mut pots = [PotNow::new("A".into(), None), PotNow::new("B".into(), None)];
    let took = |name: &str, grams: f64| (name.to_string(), Mass::from_si(grams / 1e3));
    pots[0].from_shelf = vec![took("old", 30.0), took("all", 30.0)];
    pots[1].from_shelf = vec![took("old", 20.0)];
    let left = shelf(&orders, |name| from_shelf(name, &pots)).unwrap();
    let grams = |one: &ShelfEntry| -> f64 {
        let mass: Mass = one.mass.to(crate::quantity::System::Metric).unwrap();
        libm::round(mass.si() * 1e6) / 1e3
    };
    let found: Vec<(&str, f64)> = left.iter().map(|one| (&*one.name.0, grams(one))).collect();
    assert_eq!(found, [("old", 54.0), ("none", 113.398)]);
    // What no pot took is as it was written.
    assert_eq!(left[1].mass.to_string(), "0.25 lb");
    pots[0].from_shelf.push(took("none", 120.0));
    pots[0].from_shelf.push(took("old", 60.0));
    assert_eq!(shelf(&orders, |name| from_shelf(name, &pots)), None);

    let mut before = plan.plan.clone();
    let had = |material: &str, kilograms: f64| crate::plan::StockEntry {
        material: material.into(),
        had: crate::show::text::mass(Mass::from_si(kilograms)),
        used: crate::show::text::mass(Mass::default()),
        left: crate::show::text::mass(Mass::default()),
        short: crate::show::text::mass(Mass::default()),
        runs_out_in: None,
        packages: None,
    };
    before.stock = vec![had("blue", 0.02), had("clear", 1.0), had("salt", 0.1)];
    pots[0].weighed = kilograms(book, &[("clear", 0.25), ("blue", 0.015)]);
    pots[1].weighed = kilograms(book, &[("clear", 0.5), ("blue", 0.015)]);
    let left = stock(&orders, &before, book, &pots).unwrap();
    let left: Vec<(&str, String)> =
        left.iter().map(|(name, amount)| (name.as_str(), amount.to_string())).collect();
    let expected = [("blue", "0 g"), ("clear", "250 g"), ("salt", "0.1 kg")];
    assert_eq!(left, expected.map(|(name, amount)| (name, amount.to_string())));
}
