use alloc::string::{String, ToString};
use alloc::vec::Vec;

use rstest::rstest;

use super::super::{Actuals, follow};
use super::*;
use crate::document::{book_from_text, orders_from_text, small};
use crate::plan::Plan;
use crate::quantity::{MassDensity, Measurable, Ratio, Time};
use crate::show::{Shown, text};

/// The record of a small day that went as planned: 10 shots of the worm.
fn as_planned() -> Record {
    let book = book_from_text(small::BOOK).unwrap();
    let line = r#"{ "order": "1", "product": "sky worm", "pieces": 40 }"#;
    let day = orders_from_text(&small::orders(line), &book).unwrap();
    let plan = Plan::make(&book, &day).unwrap();
    follow::record(&plan, &book, &Actuals::default()).unwrap()
}

fn mass(grams: f64) -> Shown<Mass> {
    text::mass(Mass::from_si(grams / 1e3))
}

#[test]
fn shots_as_planned_need_no_words() {
    let as_planned = as_planned().pots[0].stages[0].draws[0].clone();
    assert_eq!((as_planned.shots, as_planned.planned_shots), (10, 10));
    assert_eq!(draw_words(&as_planned), None);
    let words = |change: &dyn Fn(&mut DrawRecord)| {
        let mut draw = as_planned.clone();
        change(&mut draw);
        draw_words(&draw).unwrap()
    };
    assert_eq!(words(&|draw| draw.shots = 9), "worm: 9 shots (10 planned).");
    let took = text::minutes(Time::from_si(300.0));
    assert_eq!(words(&|draw| draw.took = Some(took.clone())), "worm: 10 shots in 5 min.");
    let weighed = |draw: &mut DrawRecord| {
        let piece = &mut draw.pieces[0];
        (piece.weighed, piece.weighs, piece.planned) = (3, Some(mass(9.5)), mass(9.6));
    };
    assert_eq!(words(&weighed), "worm: 10 shots; 3 weighed, each 9.5 g (9.6 g planned).");
    // A layer is not a piece.
    let of_layer = |draw: &mut DrawRecord| {
        weighed(draw);
        draw.share = Shown::new(Ratio::from(0.6), "60 %");
    };
    assert_eq!(words(&of_layer), "worm: 10 shots; 3 weighed, each 9.5 g.");
    let scatters = |grams: f64| {
        words(&|draw: &mut DrawRecord| {
            weighed(draw);
            draw.pieces[0].deviation = Some(mass(grams));
        })
    };
    assert_eq!(scatters(0.0), words(&weighed));
    assert_eq!(scatters(0.1), "worm: 10 shots; 3 weighed, each 9.5 g ± 0.1 g (9.6 g planned).");
}

#[rstest]
#[case(Some("1.07 g/mL"), ", 1.07 g/mL.")]
#[case(Some("1.09 g/mL"), ", 1.09 g/mL (1.07 g/mL planned).")]
#[case(None, ", density not known.")]
fn a_density_says_what_was_planned_if_it_differs(
    #[case] density: Option<&str>,
    #[case] expected: &str,
) {
    let mut stage = as_planned().pots[0].stages[0].clone();
    let shown = |text: &str| Shown::new(MassDensity::from_si(1070.0), text.to_string());
    (stage.density, stage.planned_density) = (density.map(shown), shown("1.07 g/mL"));
    stage.held = mass(437.5);
    let name = stage.formulas.join(" + ");
    assert_eq!(stage_words(&stage), format!("{name}: 437.5 g{expected}"));
}

#[rstest]
#[case(0.0, "jar: 100 g; 1 heat.")]
#[case(30.0, "jar: 100 g, 30 g of it sprues; 1 heat.")]
#[case(100.0, "jar: 100 g; 1 heat.")]
fn a_jar_says_how_much_of_it_is_sprues(#[case] sprues: f64, #[case] expected: &str) {
    let jar = Jar {
        name: "jar".into(),
        pot: "A".into(),
        mass: mass(100.0),
        sprues: mass(sprues),
        parts: Vec::new(),
        heats: Some(1),
        spent: None,
    };
    assert_eq!(on_shelf(&jar), expected);
}

#[test]
fn the_letter_leads_a_pot_and_each_stage_begins_a_line() {
    let mut record = as_planned();
    let stage = record.pots[0].stages[0].clone();
    record.pots[0].stages.push(stage);
    let sheet = record.sheet().to_string();
    let lines: Vec<&str> = sheet.lines().filter(|line| line.contains("sky + body: ")).collect();
    let starts: Vec<String> = lines.iter().map(|line| line.chars().take(8).collect()).collect();
    assert_eq!(starts[..2], ["POT A  s", "       s"], "{sheet}");
}

#[test]
fn cavity_and_feed_are_for_the_book() {
    let mut record = as_planned();
    let found = |shape: Option<&str>, cavity: Option<&str>, feed: Option<&str>| Found {
        mold: "worm".into(),
        shape: shape.map(Into::into),
        pots: Vec::new(),
        pieces: 1,
        weighs: mass(9.5),
        planned: mass(9.5),
        expected: mass(9.5),
        off: Shown::new(Ratio::from(0.0), "0 %"),
        off_uncertainty: Shown::new(Ratio::from(0.0), "0 %"),
        cavity: cavity.map(Into::into),
        feed: feed.map(|feed| Shown::new(Ratio::from(0.5), feed)),
        feed_uncertainty: None,
        text: String::new(),
    };
    record.found = Vec::from([
        found(None, Some("9.7 mL ± 0.1"), None),
        found(Some("long"), None, Some("50 %")),
        found(None, None, None),
    ]);
    assert_eq!(for_the_book(&record), ["worm: cavity 9.7 mL ± 0.1.", "worm (long): feed 50 %."]);
}
