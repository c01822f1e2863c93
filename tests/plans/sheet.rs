//! The bench sheet as who works by it reads it: each step with what can hurt there.

use pourwright::caution::Caution;
use pourwright_tests::demo::{BOOK, ORDERS, plan};

#[test]
fn cautions_stand_at_the_steps_that_they_concern() {
    let sheet = plan(BOOK, ORDERS).expect("the demo plans").sheet().to_string();
    for pot in sheet.split("\nPOT ").skip(1) {
        let mut salted = false;
        for step in pot.split("\n[ ] ").skip(1) {
            let warns = |caution: Caution| step.contains(caution.reminder());
            let needs = |what: &str, there: bool| assert!(there, "{what}:\n{step}");
            let is = |beginning: &str| step.starts_with(beginning);
            if step.contains("fine-salt ") {
                salted = true;
                needs("dry salt", warns(Caution::DampSalt));
            }
            if is("Degas") {
                needs("vacuum", warns(Caution::Vacuum));
            }
            if is("Heat") {
                needs("fumes", warns(Caution::Fumes));
            }
            if is("Heat") || is("Shoot") || is("Now ") || is("Put the sprues") {
                needs("burns", warns(Caution::HotPlastisol));
            }
            if is("Shoot") {
                needs("water", warns(Caution::Water));
                assert_eq!(step.contains("Stir before every load"), salted, "{step}");
            }
        }
    }
}
