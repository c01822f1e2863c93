//! Pots whose numbers are binary fractions, so that each boundary is met to the bit.

use alloc::string::{String, ToString};
use alloc::vec::Vec;

use rstest::rstest;

use super::*;
use crate::document::book_from_text;

/// Densities of 1 and 1.25 g/mL; a scale, and cups of 1 L and 4 L.
const BOOK: &str = r#"{
    "format": "pourwright/1.0",
    "measures": "metric",
    "default_base": "clear",
    "materials": {
        "clear": { "kind": "plastisol", "density": "1 g/mL", "price": "10.00 USD per 1 kg" },
        "firm": { "kind": "plastisol", "density": "1.25 g/mL" },
        "oil": { "kind": "softener", "density": "1 g/mL", "most": "50 % of base" },
        "scent": { "kind": "scent", "density": "1 g/mL" },
        "fine-salt": { "kind": "salt", "density": "2 g/mL", "as_scooped": "1.2 g/mL" }
    },
    "formulas": {
        "plain": { "per": "100 g", "base": "clear", "doses": { "oil": "25 g" } },
        "soft": { "per": "100 g", "base": "clear", "doses": { "oil": "40 g" } },
        "salted": { "per": "100 g", "base": "clear", "doses": { "oil": "25 g", "fine-salt": "5 g" } },
        "anise": { "per": "100 g", "doses": { "scent": "5 g" } }
    },
    "molds": { "worm": { "cavities": 4, "cavity": "9.5 mL", "sprue": "6 mL" } },
    "products": { "salty": { "mold": "worm", "formulas": ["salted"] } },
    "bench": {
        "balance": { "reads": "0.1 g", "to": "5 kg" },
        "cups": [{ "holds": "4 L", "marks": "1 L" }, { "holds": "1 L", "marks": "1 L" }],
        "injector": { "holds": "100 mL", "keeps": "4 mL" }
    }
}"#;

fn book() -> Book {
    book_from_text(BOOK).unwrap_or_else(|faults| panic!("{faults}"))
}

/// The same with no largest dose.
fn strict() -> Book {
    let text = BOOK.replace(", \"most\": \"50 % of base\"", "");
    book_from_text(&text).unwrap_or_else(|faults| panic!("{faults}"))
}

/// A strict book with these tools.
fn with_bench(from: &str, to: &str) -> Book {
    let text = BOOK.replace(", \"most\": \"50 % of base\"", "");
    assert!(text.contains(from));
    book_from_text(&text.replace(from, to)).unwrap_or_else(|faults| panic!("{faults}"))
}

fn id(book: &Book, name: &str) -> MaterialId {
    book.materials.find(name).unwrap()
}

/// A mix of these, in kg.
fn mix(book: &Book, parts: &[(&str, f64)]) -> Mix {
    let mut mix = Mix::new();
    for (name, kilograms) in parts {
        mix.add(id(book, name), Mass::from_si(*kilograms)).unwrap();
    }
    mix
}

fn target(book: &Book, parts: &[(&str, f64)]) -> Target {
    Target::of_mix(&mix(book, parts), |_| WrittenIn::Mass, book).unwrap()
}

fn pot<'a>(book: &'a Book, target: &'a Target, pot: &'a Mix) -> Mispour<'a> {
    let (trace, on_purpose) = (Ratio::default(), &[][..]);
    Mispour { book, target, pot, cup: None, trace, on_purpose, is_hot: false, is_used: false }
}

/// The answer for a pot of `held` that should be `wanted`.
fn put_right(book: &Book, wanted: &[(&str, f64)], held: &[(&str, f64)]) -> PutRight {
    let (target, held) = (target(book, wanted), mix(book, held));
    pot(book, &target, &held).put_right().unwrap()
}

fn kinds(answer: &PutRight) -> Vec<WayKind> {
    answer.ways.iter().map(|way| way.way).collect()
}

fn way(answer: &PutRight, kind: WayKind) -> &RightWay {
    answer.ways.iter().find(|way| way.way == kind).unwrap()
}

/// Additions of a way: material and grams as wanted.
fn adds(way: &RightWay) -> Vec<(&str, f64)> {
    let grams = |weigh: &Weigh| libm::round(weigh.wanted.quantity.si() * 1e6) / 1e3;
    way.add.iter().map(|weigh| (weigh.material.as_str(), grams(weigh))).collect()
}

#[test]
fn a_target_is_ratios_to_the_base_of_what_is_in_the_mix() {
    let book = book();
    let found = target(&book, &[("clear", 1.5), ("firm", 0.5), ("oil", 0.5), ("scent", 0.0)]);
    let parts: Vec<(&str, f64, bool)> = found
        .parts
        .iter()
        .map(|part| (&*book.materials.get(part.material).unwrap().name, part.ratio, part.is_base))
        .collect();
    assert_eq!(parts, [("clear", 0.75, true), ("firm", 0.25, true), ("oil", 0.25, false)]);
    let no_base = Target::of_mix(&mix(&book, &[("oil", 1.0)]), |_| WrittenIn::Mass, &book);
    assert_eq!(no_base, Err(MixError::NoBase));
}

#[rstest]
// Half either way of a half is 0.25 to 0.75, bounds included.
#[case(&[("clear", 1.0), ("oil", 0.75)], true)]
#[case(&[("clear", 1.0), ("oil", 0.25)], true)]
#[case(&[("clear", 1.0), ("oil", 0.7501)], false)]
#[case(&[("clear", 1.0), ("oil", 0.2499)], false)]
#[case(&[("clear", 1.0)], false)]
#[case(&[("clear", 1.0), ("scent", 0.5)], false)]
#[case(&[("clear", 1.0), ("oil", 0.5), ("scent", 0.01)], false)]
fn a_target_is_another_if_each_material_is_within_its_tolerance(
    #[case] parts: &[(&str, f64)],
    #[case] expected: bool,
) {
    let mut book = book();
    book.limits.tolerance = 0.5;
    let known = target(&book, &[("clear", 1.0), ("oil", 0.5)]);
    assert_eq!(target(&book, parts).is_within(&known, &book), expected);
}

#[test]
fn the_cup_is_the_largest_as_full_as_it_may_be() {
    let mut book = book();
    let (target, held) = (target(&book, &[("clear", 1.0)]), mix(&book, &[("clear", 0.5)]));
    assert_eq!(pot(&book, &target, &held).cup().unwrap(), Volume::from_si(4e-3));
    book.limits.most_full = 0.5;
    assert_eq!(pot(&book, &target, &held).cup().unwrap(), Volume::from_si(2e-3));
    let own = Volume::from_si(1e-3);
    let asked = Mispour { cup: Some(own), ..pot(&book, &target, &held) };
    assert_eq!(asked.cup().unwrap(), own);
    book.tools =
        crate::bench::Bench::new(None, Vec::new(), Vec::new(), Default::default()).unwrap();
    let refused = pot(&book, &target, &held).put_right().unwrap_err();
    assert_eq!(refused, MispourError::NoCup);
}

#[test]
fn a_pot_that_fills_its_cup_is_not_too_full() {
    let book = book();
    let (target, held) = (target(&book, &[("clear", 1.0)]), mix(&book, &[("clear", 0.5)]));
    let brim = held.volume(&book.materials, Phase::Liquid).unwrap();
    let asked = |cup| Mispour { cup: Some(cup), ..pot(&book, &target, &held) }.put_right();
    assert_eq!(kinds(&asked(brim).unwrap()), [WayKind::AsItIs, WayKind::Keep]);
    assert!(asked(brim * 0.99).unwrap_err().to_string().contains("already fills"));
}

#[test]
fn without_base_or_without_anything_there_is_no_answer() {
    let book = book();
    let target = target(&book, &[("clear", 1.0), ("oil", 0.25)]);
    for (held, code) in [(&[("oil", 0.25)][..], "mix-no-base"), (&[], "pot-empty")] {
        let held = mix(&book, held);
        assert_eq!(pot(&book, &target, &held).put_right().unwrap_err().code(), code);
    }
}

#[rstest]
// Asked for 1/4 of the base, up to 1/2 does no harm; over is what is more than the tolerance, 50 %.
#[case(0.375, None)]
#[case(0.4375, Some("up to 50 % of base"))]
#[case(0.5, Some("up to 50 % of base"))]
#[case(0.5625, None)]
fn what_is_over_and_does_no_harm_is_allowed(#[case] oil: f64, #[case] expected: Option<&str>) {
    let mut book = book();
    book.limits.tolerance = 0.5;
    let answer =
        put_right(&book, &[("clear", 1.0), ("oil", 0.25)], &[("clear", 1.0), ("oil", oil)]);
    assert_eq!(answer.pot[1].allowed.as_deref(), expected);
    assert_eq!(kinds(&answer)[0] == WayKind::AsItIs, oil <= 0.5);
}

#[test]
fn what_does_not_belong_is_a_trace_up_to_its_share() {
    let book = book();
    let target = target(&book, &[("clear", 1.0), ("oil", 0.25)]);
    // 1/16 of 1 kg.
    let held = mix(&book, &[("clear", 0.75), ("oil", 0.1875), ("scent", 0.0625)]);
    let asked = |trace| Mispour { trace: Ratio::from(trace), ..pot(&book, &target, &held) };
    let names = |list: &[MaterialMass]| -> Vec<String> {
        list.iter().map(|one| one.material.clone()).collect()
    };
    let passed = asked(0.0625).put_right().unwrap();
    assert_eq!(
        (names(&passed.traces), names(&passed.foreign)),
        (Vec::from(["scent".to_string()]), Vec::new())
    );
    assert_eq!(kinds(&passed), [WayKind::AsItIs, WayKind::Keep]);
    let refused = asked(0.0624).put_right().unwrap();
    assert_eq!(
        (names(&refused.foreign), names(&refused.traces)),
        (Vec::from(["scent".to_string()]), Vec::new())
    );
    assert_eq!(kinds(&refused), [WayKind::Keep]);
    let fault = refused.fault.unwrap();
    assert_eq!(fault.message, "The pot holds 62.5 g of \"scent\", which the formula lacks.");
}

#[test]
fn what_was_left_out_on_purpose_is_no_part_of_the_target() {
    let book = book();
    let (target, held) = (
        target(&book, &[("clear", 1.0), ("oil", 0.25), ("scent", 0.125)]),
        mix(&book, &[("clear", 1.0), ("oil", 0.25)]),
    );
    let on_purpose = [id(&book, "scent")];
    let asked = Mispour { on_purpose: &on_purpose, ..pot(&book, &target, &held) };
    let answer = asked.put_right().unwrap();
    let off: Vec<&str> = answer.ways[0].off.iter().map(|off| off.material.as_str()).collect();
    assert_eq!((kinds(&answer)[0], off), (WayKind::AsItIs, Vec::from(["oil"])));
}

#[rstest]
#[case(&[("clear", 1.0), ("oil", 0.25)], &["oil"])]
// Of a blend the shares of its plastisols are shown as well.
#[case(&[("clear", 0.75), ("firm", 0.25), ("oil", 0.25)], &["clear", "firm", "oil"])]
fn a_single_base_is_never_off(#[case] parts: &[(&str, f64)], #[case] expected: &[&str]) {
    let answer = put_right(&book(), parts, parts);
    let off = &answer.ways[0].off;
    assert_eq!(off.iter().map(|off| off.material.as_str()).collect::<Vec<_>>(), expected);
    assert!(off.iter().all(|off| off.off.quantity.value == 0.0));
}

#[rstest]
// A quarter of the base, and 1/8 of it off; beyond the bounds only rounding is let pass, a part in a billion.
#[case(&[("oil", 0.25 * 1.125)], true)]
#[case(&[("oil", 0.25 * 1.125 * (1.0 + 1e-9))], true)]
#[case(&[("oil", 0.25 * 1.125 * (1.0 + 2e-9))], false)]
#[case(&[("oil", 0.25 * 0.875)], true)]
#[case(&[("oil", 0.25 * 0.875 * (1.0 - 1e-9))], true)]
#[case(&[("oil", 0.25 * 0.875 * (1.0 - 2e-9))], false)]
// A base of 7 to 1: 1/8 more of the eighth is little of the rest, and too much all the same.
#[case(&[("firm", 0.125 * 1.125)], true)]
#[case(&[("firm", 0.125 * 1.125 * (1.0 + 1e-8))], false)]
#[case(&[("firm", 0.125 * 0.875)], true)]
#[case(&[("firm", 0.125 * 0.875 * (1.0 - 1e-8))], false)]
#[case(&[("scent", 0.5)], true)]
fn a_mix_is_within_its_bounds(#[case] other: &[(&str, f64)], #[case] expected: bool) {
    let mut book = strict();
    book.limits.tolerance = 0.125;
    let of = |name: &str, usual: f64| {
        other.iter().find(|(other, _)| *other == name).map_or(usual, |(_, mass)| *mass)
    };
    let firm = of("firm", 0.125);
    let parts = [
        ("clear", 1.0 - firm),
        ("firm", firm),
        ("oil", of("oil", 0.25)),
        ("scent", of("scent", 0.0)),
    ];
    let target = target(&book, &[("clear", 0.875), ("firm", 0.125), ("oil", 0.25)]);
    let held = mix(&book, &parts);
    let asked = pot(&book, &target, &held);
    assert_eq!(asked.is_within(&held, &asked.checked().unwrap()).unwrap(), expected);
}

#[test]
fn additions_that_just_fit_are_offered() {
    let book = strict();
    let wanted = target(&book, &[("clear", 1.0), ("oil", 0.25)]);
    let held = mix(&book, &[("clear", 0.8), ("oil", 0.5)]);
    let asked = |cup| Mispour { cup: Some(cup), ..pot(&book, &wanted, &held) };
    let roomy = asked(Volume::from_si(4e-3)).put_right().unwrap();
    assert_eq!(kinds(&roomy), [WayKind::Within, WayKind::Exact, WayKind::Keep]);
    // 500 g of oil are for 2 kg of base, 5 % less of it is 1/1.05 of that.
    assert_eq!(adds(way(&roomy, WayKind::Exact)), [("clear", 1200.0)]);
    let brim = way(&roomy, WayKind::Within).volume.quantity;
    let just = asked(brim).put_right().unwrap();
    assert_eq!(kinds(&just), [WayKind::Within, WayKind::Nearest, WayKind::Keep]);
    assert!(
        just.not_offered[0].message.starts_with("To make it exact takes 1200 g more, "),
        "{:?}",
        just.not_offered
    );
    let just_less = asked(brim * (1.0 - 1e-12)).put_right().unwrap();
    assert_eq!(kinds(&just_less), [WayKind::Nearest, WayKind::Keep]);
    let brim = way(&roomy, WayKind::Exact).volume.quantity;
    assert_eq!(kinds(&asked(brim).put_right().unwrap()), kinds(&roomy));
    assert!(kinds(&asked(brim * (1.0 - 1e-12)).put_right().unwrap()).contains(&WayKind::Nearest));
}

#[test]
fn the_nearest_mix_adds_nothing_of_a_trace() {
    let book = strict();
    let target = target(&book, &[("clear", 1.0), ("oil", 0.25)]);
    let held = mix(&book, &[("clear", 0.8), ("oil", 0.5), ("scent", 0.001)]);
    let asked = Mispour {
        cup: Some(Volume::from_si(1.5e-3)),
        trace: Ratio::from(0.01),
        ..pot(&book, &target, &held)
    };
    let answer = asked.put_right().unwrap();
    // 1.5 L less 1.301 L at 1 g/mL.
    assert_eq!(adds(way(&answer, WayKind::Nearest)), [("clear", 199.0)]);
}

#[test]
fn what_the_scale_cannot_show_is_not_exact() {
    // 10 g of oil lack 2 g, and the scale shows 5 g: 3 g too much of 10 g.
    let book = with_bench("\"reads\": \"0.1 g\"", "\"reads\": \"5 g\"");
    let answer =
        put_right(&book, &[("clear", 1.0), ("oil", 0.25)], &[("clear", 0.04), ("oil", 0.008)]);
    assert_eq!(kinds(&answer), [WayKind::Nearest, WayKind::Keep]);
    assert!(!way(&answer, WayKind::Nearest).within);
}

#[rstest]
#[case(false, &[("clear", 0.8), ("oil", 0.25)], &[])]
#[case(true, &[("clear", 1.0), ("oil", 0.2)], &["The pot is hot"])]
#[case(true, &[("clear", 0.8), ("oil", 0.25)], &["The pot is hot", "Fresh base cools it"])]
fn fresh_base_in_a_hot_pot_is_heated_again(
    #[case] is_hot: bool,
    #[case] held: &[(&str, f64)],
    #[case] expected: &[&str],
) {
    let mut book = strict();
    book.limits.fresh_base = true;
    let (target, held) = (target(&book, &[("clear", 1.0), ("oil", 0.25)]), mix(&book, held));
    let answer = Mispour { is_hot, ..pot(&book, &target, &held) }.put_right().unwrap();
    let details = &way(&answer, WayKind::Exact).details;
    assert_eq!(details.len(), expected.len(), "{details:?}");
    assert!(details.iter().zip(expected).all(|(line, start)| line.starts_with(start)));
}

#[test]
fn without_fresh_base_what_is_short_is_topped_up_unless_all_is_within() {
    let book = strict();
    let wanted = target(&book, &[("clear", 1.0), ("oil", 0.25), ("fine-salt", 0.125)]);
    let asked = |oil: f64, salt: f64| {
        let held = mix(&book, &[("clear", 1.0), ("oil", oil), ("fine-salt", salt)]);
        Mispour { is_hot: true, ..pot(&book, &wanted, &held) }.put_right().unwrap()
    };
    // 30 % too much oil needs 0.3 kg of base.
    let answer = asked(0.325, 0.1);
    assert_eq!(kinds(&answer), [WayKind::Nearest, WayKind::Keep]);
    assert_eq!(adds(way(&answer, WayKind::Nearest)), [("fine-salt", 25.0)]);
    assert!(
        answer.not_offered[0].message.starts_with("To make it exact takes 300 g of fresh base."),
        "{:?}",
        answer.not_offered
    );
    // 4 % too much, 4 % too little: nothing need be done.
    let answer = asked(0.26, 0.12);
    assert_eq!(kinds(&answer), [WayKind::AsItIs, WayKind::Keep]);
    assert!(answer.not_offered[0].message.contains("40 g of fresh base"));
    // Nothing is short.
    assert_eq!(kinds(&asked(0.325, 0.125)), [WayKind::Keep]);
}

#[test]
fn rounding_is_not_shown_as_a_deviation() {
    let of = |off: f64| rounded(Ratio::from(off)).value;
    assert_eq!([of(9e-13), of(-9e-13)], [0.0, 0.0]);
    assert_eq!([of(1e-12), of(-1.5e-12), of(0.1)], [1e-12, -1.5e-12, 0.1]);
}

#[test]
fn each_refusal_says_what_would_help() {
    let other = MispourError::OtherBook { material: "dye".into() };
    for (error, help) in [
        (MispourError::EmptyPot, "Say what is in it"),
        (MispourError::NoCup, "Say what the cup holds"),
        (other, "Ask with the book that the plan was made from."),
    ] {
        assert!(error.help().starts_with(help), "{}", error.help());
    }
}

fn becomes(asked: Mispour<'_>) -> Vec<(String, f64, bool)> {
    let answer = asked.put_right().unwrap();
    let one = |it: &Becomes| {
        (it.formulas.join(" + "), libm::round(it.adds.quantity.si() * 1e6) / 1e3, it.fits)
    };
    answer.becomes.iter().map(one).collect()
}

fn named(list: &[(&str, f64, bool)]) -> Vec<(String, f64, bool)> {
    list.iter().map(|(name, grams, fits)| (name.to_string(), *grams, *fits)).collect()
}

// 300 g of oil to 1 kg are for 1.2 kg of base with a quarter, and 100 g short of two fifths.
#[test]
fn a_pot_becomes_what_takes_least_first() {
    let book = strict();
    let target = target(&book, &[("clear", 1.0), ("oil", 0.25)]);
    let held = mix(&book, &[("clear", 1.0), ("oil", 0.3)]);
    let asked = pot(&book, &target, &held);
    let all = [
        ("soft", 100.0, true),
        ("anise + soft", 150.0, true),
        ("salted", 260.0, true),
        ("anise + plain", 260.0, true),
        ("anise + salted", 320.0, true),
    ];
    assert_eq!(becomes(asked), named(&all));
    let answer = asked.put_right().unwrap();
    assert_eq!(
        (&*answer.becomes[2].products, &*answer.becomes[0].products),
        (&["salty".to_string()][..], &[][..])
    );
    // A cup that just holds the first holds no other.
    let cup = Some(answer.becomes[0].volume.quantity);
    let fits: Vec<bool> = becomes(Mispour { cup, ..asked }).iter().map(|one| one.2).collect();
    assert_eq!(fits, [true, false, false, false, false]);
    // A hot pot takes no fresh base.
    assert_eq!(becomes(Mispour { is_hot: true, ..asked }), named(&all[..2]));
}

#[test]
fn a_trace_bars_no_formula_and_takes_nothing_more() {
    let book = strict();
    let target = target(&book, &[("clear", 1.0), ("oil", 0.25)]);
    // The scent is 1/16 of 1 kg. 312.5 g of oil are for 781.25 g of base with two fifths.
    let held = mix(&book, &[("clear", 0.625), ("oil", 0.3125), ("scent", 0.0625)]);
    let asked = Mispour { trace: Ratio::from(0.0625), ..pot(&book, &target, &held) };
    assert!(becomes(asked).contains(&("soft".to_string(), 156.25, true)), "{:?}", becomes(asked));
    let asked = Mispour { trace: Ratio::from(0.0624), ..asked };
    assert!(!becomes(asked).iter().any(|one| one.0 == "soft"));
}

#[test]
fn a_color_alone_goes_into_the_default_base() {
    let book = strict();
    let target = target(&book, &[("clear", 1.0), ("oil", 0.25)]);
    // 60 g of scent are for 1.2 kg of base.
    let held = mix(&book, &[("clear", 1.0), ("scent", 0.06)]);
    assert_eq!(becomes(pot(&book, &target, &held))[0], ("anise".to_string(), 200.0, true));
}

mod of_a_plan {
    use super::*;
    use crate::document::{orders_from_text, small};
    use crate::plan::mispour::meant::Meant;
    use crate::plan::{InPot, Plan, Pot};

    fn planned() -> (Book, Pot) {
        let book = book_from_text(small::BOOK).unwrap();
        let line = r#"{ "order": "1", "product": "sky worm", "pieces": 40 }"#;
        let day = orders_from_text(&small::orders(line), &book).unwrap();
        let pot = Plan::make(&book, &day).unwrap().pots.remove(0);
        (book, pot)
    }

    fn there(hot: bool, heats: Option<u32>) -> InPot {
        let parts = Vec::from([MaterialMass {
            material: "clear".into(),
            mass: text::mass(Mass::from_si(0.25)),
        }]);
        let mass = text::mass(Mass::from_si(0.25));
        let fills = text::volume(Volume::from_si(0.25e-3), crate::quantity::System::Metric);
        InPot { mass, fills, hot, degassed: false, heats, spent: None, parts, accepted: None }
    }

    #[rstest]
    #[case(None, false, false)]
    #[case(Some((false, Some(0))), false, false)]
    #[case(Some((false, Some(1))), true, false)]
    #[case(Some((false, None)), true, false)]
    #[case(Some((true, Some(0))), false, true)]
    fn a_pot_is_used_once_it_was_heated_or_shot_from(
        #[case] found: Option<(bool, Option<u32>)>,
        #[case] is_used: bool,
        #[case] is_hot: bool,
    ) {
        let (book, mut pot) = planned();
        pot.there = found.map(|(hot, heats)| there(hot, heats));
        pot.stages.push(pot.stages[0].clone());
        let first = Meant::of(&pot, 0, &book).unwrap().unwrap();
        assert_eq!((first.is_used, first.is_hot), (is_used, is_hot));
        assert_eq!(first.before.mass(), Mass::from_si(if found.is_some() { 0.25 } else { 0.0 }));
        let second = Meant::of(&pot, 1, &book).unwrap().unwrap();
        assert!(second.is_used && second.is_hot);
        assert!(Meant::of(&pot, 2, &book).unwrap().is_none());
    }

    #[test]
    fn a_stage_begins_with_what_the_one_before_carries() {
        let (book, mut pot) = planned();
        let mut second = pot.stages[0].clone();
        second.weigh.retain(|weigh| weigh.material == "blue");
        second.weigh[0].written_in = WrittenIn::Mass;
        let first = Meant::by_formula(&pot, 0, &book).unwrap().unwrap().whole().unwrap();
        pot.stages[0].carried = text::mass(first.mass() / 4.0);
        pot.stages.push(second);
        let found = Meant::by_formula(&pot, 1, &book).unwrap().unwrap();
        let blue = book.materials.find("blue").unwrap();
        let expected = first.mass_of(blue) * 1.25;
        let near =
            |a: Mass, b: Mass| assert!((a.value / b.value - 1.0).abs() < 1e-12, "{a:?} {b:?}");
        near(found.whole().unwrap().mass_of(blue), expected);
        near(found.before.mass(), first.mass() / 4.0);
        // Of two ways that a formula doses a material in, the last one counts.
        let written: Vec<WrittenIn> = found
            .written
            .iter()
            .filter(|(id, _)| *id == blue)
            .map(|(_, written)| *written)
            .collect();
        assert_eq!(written, [WrittenIn::Mass]);
        assert!(found.written.len() > 1);
    }

    #[test]
    fn of_nothing_nothing_is_carried() {
        let (book, mut pot) = planned();
        let second = pot.stages[0].clone();
        pot.stages[0].weigh.clear();
        pot.stages.push(second);
        let found = Meant::of(&pot, 1, &book).unwrap().unwrap();
        assert_eq!(found.before.mass(), Mass::default());
    }

    #[test]
    fn a_plan_of_another_book_is_refused() {
        let (book, mut pot) = planned();
        pot.stages[0].weigh[0].material = "gray".into();
        let refused = Meant::of(&pot, 0, &book).err().unwrap();
        assert_eq!(refused.to_string(), "The plan's pot holds \"gray\", which the book lacks.");
    }
}
