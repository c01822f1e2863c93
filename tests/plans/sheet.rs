//! The bench sheet as who works by it reads it: short, each step with what can hurt there, with blanks to write in.

use pourwright::caution::Caution;
use pourwright::plan::{Plan, StepKind};
use pourwright_tests::demo::{BOOK, ORDERS, plan};
use pourwright_tests::generate::documents;
use proptest::prelude::*;

fn demo() -> Plan {
    plan(BOOK, ORDERS).expect("the demo plans").plan
}

/// The cards of a sheet by the letters of their pots, without the packing list.
fn cards(sheet: &str) -> Vec<(String, String)> {
    let (cards, _) = sheet.split_once("\n\n====").expect("a packing list");
    let cards = cards.split("\n= POT ").skip(1);
    cards.map(|card| (card.split(' ').next().unwrap().to_owned(), card.to_owned())).collect()
}

fn words(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// A card is one printed page, and can be read in two minutes.
#[test]
fn a_card_of_the_demo_has_at_most_35_lines() {
    let sheet = demo().sheet().to_string();
    let cards = cards(&sheet);
    assert_eq!(cards.len(), 5);
    for (pot, card) in cards {
        let lines = card.trim_end().lines().count();
        assert!(lines <= 35, "pot {pot}: {lines} lines\n{card}");
    }
}

#[test]
fn cautions_stand_at_the_first_steps_that_they_concern() {
    let plan = demo();
    let sheet = plan.sheet().to_string();
    let (front, _) = sheet.split_once("\n= POT ").unwrap();
    for caution in &plan.cautions {
        assert!(words(front).contains(caution.sentence()), "{caution:?}");
    }
    let told = words(&sheet);
    for once in [Caution::HotPlastisol, Caution::Vacuum] {
        assert_eq!(told.matches(once.reminder()).count(), 1, "{once:?}");
    }
    for (pot, card) in cards(&sheet) {
        let at = |what: &str| card.find(what).unwrap_or_else(|| panic!("{what} in {card}"));
        let once = |caution: Caution| assert_eq!(card.matches(caution.reminder()).count(), 1);
        // Smoke before the first heat is over, water before the first shot, dry salt with the salt.
        once(Caution::Fumes);
        assert!(at(" HEAT ") < at(Caution::Fumes.reminder()));
        assert!(at(Caution::Fumes.reminder()) < at(" SHOOT "));
        once(Caution::Water);
        assert!(at(" SHOOT ") < at(Caution::Water.reminder()));
        assert!(at(Caution::Water.reminder()) < at(", owed "));
        let salted = card.contains("fine-salt");
        assert_eq!(card.contains(Caution::DampSalt.reminder()), salted, "pot {pot}");
        if salted {
            assert!(at("fine-salt") < at(Caution::DampSalt.reminder()));
            assert!(at(Caution::DampSalt.reminder()) < card.rfind("STIR before each").unwrap());
        }
    }
}

/// Whoever reads a card finds each number where the plan has it: loads, pieces to count, measures with a blank behind.
#[test]
fn a_card_says_what_its_plan_says() {
    let plan = demo();
    let sheet = plan.sheet().to_string();
    for (pot, card) in cards(&sheet) {
        let of = plan.pots.iter().find(|of| of.pot == pot).unwrap();
        let told = words(&card);
        for stage in &of.stages {
            for weigh in &stage.weigh {
                let row = format!("{} {}", weigh.material, weigh.best.measure);
                assert!(told.contains(&words(&row)), "{row}\n{card}");
            }
            for pieces in stage.draws.iter().flat_map(|draw| &draw.pieces) {
                let made = [
                    format!("of {}, owed {}", pieces.made, pieces.ordered),
                    format!("{} made, owed {}", pieces.made, pieces.ordered),
                ];
                assert!(made.iter().any(|made| told.contains(made)), "{made:?}\n{card}");
            }
        }
        let steps = plan.steps.iter().flat_map(|step| step.at.iter().map(move |at| (step, at)));
        for (number, (step, at)) in (1..).zip(steps.filter(|(_, at)| at.pot == pot)) {
            assert_eq!(at.number, number);
            assert!(card.contains(&format!("\n{number:>2} ")), "{number}\n{card}");
            let shots: u32 = step.items.iter().filter_map(|item| item.shots).sum();
            assert_eq!(step.kind == StepKind::Shoot, shots > 0);
        }
    }
    for line in &plan.lines {
        assert!(sheet.contains(&line.what));
    }
}

/// Every order is packed once, with all of its lines, and pieces weigh what they weigh.
#[test]
fn the_packing_list_has_every_line_once() {
    let plan = demo();
    let mut lines: Vec<u32> = plan.parcels.iter().flat_map(|parcel| parcel.lines.clone()).collect();
    lines.sort_unstable();
    assert_eq!(lines, (1..=10).collect::<Vec<u32>>());
    for parcel in &plan.parcels {
        let lines = parcel.lines.iter().map(|&place| &plan.lines[place as usize - 1]);
        let net: f64 = lines
            .inspect(|line| assert_eq!(line.order, parcel.order))
            .map(|line| line.piece.quantity.value * f64::from(line.pieces))
            .sum();
        assert!((net - parcel.net.quantity.value).abs() <= 1e-12);
    }
    // 4 packs of 6 and 5 of 10, each with a bag and a card; the others are sold by the piece.
    let takes: Vec<(&str, Vec<(&str, u32)>)> = plan
        .parcels
        .iter()
        .map(|parcel| {
            let takes = parcel.takes.iter().map(|item| (item.name.as_str(), item.count)).collect();
            (parcel.order.as_str(), takes)
        })
        .collect();
    assert_eq!(takes[0], ("32", vec![("bag", 4), ("card", 4)]));
    assert_eq!(takes[1], ("31", vec![]));
    assert!(takes.contains(&("35", vec![("bag", 5), ("card", 5)])));
    let due: Vec<&str> =
        plan.parcels.iter().map(|parcel| parcel.promised.as_deref().unwrap()).collect();
    assert!(due.is_sorted(), "{due:?}");
}

/// The notes hold what the cards leave out.
#[test]
fn notes_hold_what_the_cards_leave_out() {
    let plan = demo();
    let notes = words(&plan.notes().to_string());
    for at in plan.steps.iter().flat_map(|step| &step.at) {
        for note in &at.notes {
            assert!(notes.contains(&words(note)), "{note}");
        }
    }
    for assumed in &plan.assumptions {
        assert!(notes.contains(&words(&assumed.message)), "{}", assumed.message);
    }
    for what in ["COST in USD", "SINK RATE", "no plan has fewer", "a foot"] {
        assert!(notes.contains(what), "{what}");
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 60, ..ProptestConfig::default() })]

    /// Neither sheet nor notes of a random day is wider than a page, and a card has all its steps by number.
    #[test]
    fn random_sheets_are_whole(documents in documents()) {
        if let Ok(made) = plan(&documents.book.to_string(), &documents.orders.to_string()) {
            let sheet = made.sheet().to_string();
            for text in [&sheet, &made.notes().to_string()] {
                prop_assert!(text.lines().all(|line| line.chars().count() <= 80), "{text}");
            }
            for (pot, card) in cards(&sheet) {
                let all = made.plan.steps.iter().flat_map(|step| &step.at);
                for at in all.filter(|at| at.pot == pot) {
                    let number = at.number;
                    prop_assert!(card.contains(&format!("\n{number:>2} ")), "{number} in {card}");
                }
            }
        }
    }
}
