//! Numbers by hand: a piece keeps within ± 3 %, evenly spread, and a scale of 0.1 g is off by 0.1 g/√6 at each weighing.

use alloc::vec;

use rstest::rstest;

use super::*;
use crate::document::{book_from_text, small};
use crate::quantity::Measurable;

fn grams(grams: f64) -> Mass {
    Mass::from_si(grams / 1e3)
}

fn density(g_per_ml: f64) -> MassDensity {
    MassDensity::from_si(g_per_ml * 1e3)
}

/// Pieces of the worm: pot, number and grams of each weighing. By the mix as made one weighs 10 g.
fn sample(pot: &str, weights: &[(u32, f64)]) -> Sample {
    let counted = |&(count, weight): &(u32, f64)| Counted { count, weight: grams(weight) };
    Sample {
        pot: pot.into(),
        mold: "worm".into(),
        shape: None,
        weights: weights.iter().map(counted).collect(),
        planned: grams(10.0),
        expected: grams(10.0),
        melt: Melt::new(density(0.95), density(1.0)),
        feed: Ratio::from(0.5),
        unsure: None,
    }
}

fn near(found: f64, expected: f64) {
    assert!((found - expected).abs() < 1e-12, "{found} instead of {expected}");
}

#[rstest]
#[case(&[(4, 40.0)], 0.08720187306856812)]
#[case(&[(4, 40.0), (2, 20.0)], 0.07136240321480629)]
// One piece shows no scatter, and neither do pieces weighed together and alone.
#[case(&[(1, 10.0)], 0.17795130420052185)]
#[case(&[(2, 19.9), (1, 10.1)], 0.10183501544346311)]
fn a_mean_is_as_sure_as_pieces_keep_and_the_scale_shows(
    #[case] weights: &[(u32, f64)],
    #[case] expected: f64,
) {
    near(sample("A", weights).mean_unsure(grams(0.1)).unwrap().si() * 1e3, expected);
}

#[test]
fn pieces_weighed_one_by_one_show_their_scatter() {
    let found = sample("A", &[(1, 9.0), (1, 10.0), (1, 11.0)]).mean_unsure(Mass::default());
    // s = 1 g, of three.
    near(found.unwrap().si() * 1e3, 1.0 / libm::sqrt(3.0));
}

#[test]
fn draws_are_summed_up_piece_by_piece() {
    let mut list =
        [sample("A", &[(4, 40.0)]), sample("B", &[(2, 22.0)]), sample("C", &[(4, 36.0)])];
    list[0].unsure = Some(density(0.02));
    list[1].planned = grams(11.0);
    list[2].expected = grams(9.0);
    list[2].melt = Melt::new(density(0.9), density(0.95));
    let of: Vec<&Sample> = list.iter().collect();
    let pool = Pool::of(&of, grams(0.1)).unwrap().unwrap();
    near(pool.count, 10.0);
    near(pool.weighs.si() * 1e3, 9.8);
    near(pool.planned.si() * 1e3, 10.2);
    near(pool.expected.si() * 1e3, 9.6);
    near(pool.melt.hot.si() / 1e3, 0.93);
    near(pool.melt.cold.si() / 1e3, 0.98);
    // Σ (n u)² over 98 g, and the least sure density.
    near(pool.mean_unsure, 0.005540355902244174);
    near(pool.density_unsure, 0.02);
    // Each against its mix: those of B are 10 % heavier than the others, whose 2 √(0.0087² + 0.02² + 0.0136² + 0.01²) are
    // 5.5 %; of two alike the first counts.
    let (apart, heavier, lighter) = pool.differ.unwrap();
    near(apart, 0.1);
    assert_eq!((&*heavier, &*lighter), ("B", "A"));
}

#[test]
fn the_pots_that_differ_most_are_named() {
    let differ = |list: &[(&str, f64)]| {
        let list: Vec<Sample> =
            list.iter().map(|&(pot, weight)| sample(pot, &[(8, 8.0 * weight)])).collect();
        let of: Vec<&Sample> = list.iter().collect();
        let differ = Pool::of(&of, Mass::default()).unwrap().unwrap().differ;
        differ.map(|(apart, heavier, lighter)| (libm::round(apart * 1e6), heavier, lighter))
    };
    let named = |apart: f64, heavier: &str, lighter: &str| {
        Some((libm::round(apart * 1e6), heavier.to_string(), lighter.to_string()))
    };
    assert_eq!(differ(&[("A", 10.0), ("B", 11.0), ("C", 9.0)]), named(0.2, "B", "C"));
    assert_eq!(differ(&[("A", 10.0), ("B", 9.0), ("C", 9.5)]), named(0.1, "A", "B"));
    // u of a mean of 8 is 0.6 % of it, of a density 1 %: 2 √2 √(0.6² + 1²) are 3.3 %.
    assert_eq!(differ(&[("A", 10.0), ("B", 10.3)]), None);
    assert_eq!(differ(&[("A", 10.0), ("B", 10.4)]), named(0.04, "B", "A"));
    assert_eq!(Pool::of(&[], Mass::default()).unwrap().map(|_| ()), None);
}

/// What is found of the worm's cavity of 10 mL ± 0.05 with this feed share, its density known to 0.1 %.
fn worm(feed: Option<f64>, weights: &[(u32, f64)]) -> Found {
    let mut book = book_from_text(small::BOOK).unwrap();
    let mold = book.molds.iter_mut().find(|mold| mold.name == "worm").unwrap();
    mold.feed = feed;
    mold.cavities[0].volume = crate::quantity::Measured {
        value: crate::quantity::Volume::from_si(10e-6),
        uncertainty: Some(crate::quantity::Volume::from_si(0.05e-6)),
        source: None,
    };
    let mut list = [sample("A", weights), sample("A", weights)];
    for one in &mut list {
        (one.unsure, one.expected) = (Some(density(0.001)), grams(9.75));
    }
    let mut found = found(&list, &book).unwrap();
    assert_eq!(found.len(), 1);
    found.remove(0)
}

#[rstest]
// 9.75 g are half fed; 40 pieces are known to 0.3 %, the cavity to 0.5 %, the density to 0.1 %.
#[case(
    Some(0.5),
    20,
    195.0,
    "40 pieces weigh 9.75 g each, 10 g planned. The mix as made gives 9.75 g. The rest, 0 % (± 0.6 %), shows nothing of the cavity."
)]
// 10.15 g of 0.975 g/mL.
#[case(
    Some(0.5),
    20,
    203.0,
    "40 pieces weigh 10.2 g each, 10 g planned. The mix as made gives 9.75 g. The rest, +4.1 % (± 0.6 %), is the cavity: 10.410 mL ± 0.030 for 10 mL."
)]
#[case(
    None,
    20,
    195.0,
    "40 pieces weigh 9.75 g each, 10 g planned. The mix as made gives 9.75 g. Its feed share is 50 % ± 11.3 %."
)]
#[case(
    None,
    1,
    9.75,
    "2 pieces weigh 9.75 g each, 10 g planned. The mix as made gives 9.75 g. Its feed share stays open: 50 % ± 26.5 %. Weigh more pieces."
)]
#[case(
    None,
    20,
    220.0,
    "40 pieces weigh 11 g each, 10 g planned. The mix as made gives 9.75 g. This mix and cavity give 9.5 g (no feed) to 10 g: check the cavity, and what went in."
)]
fn what_is_left_is_the_molds(
    #[case] feed: Option<f64>,
    #[case] count: u32,
    #[case] weight: f64,
    #[case] expected: &str,
) {
    let found = worm(feed, &[(count, weight)]);
    assert_eq!(found.text.strip_prefix("worm: "), Some(expected));
    assert_eq!(found.pots, ["A"]);
}

#[test]
fn one_piece_weighs() {
    let mut list = vec![sample("A", &[(1, 10.0)])];
    let book = book_from_text(small::BOOK).unwrap();
    let text = |list: &[Sample]| found(list, &book).unwrap()[0].text.clone();
    assert!(
        text(&list).starts_with("worm: 1 piece weighs 10 g, 10 g planned. "),
        "{}",
        text(&list)
    );
    list[0].weights[0].count = 2;
    assert!(text(&list).starts_with("worm: 2 pieces weigh 5 g each, "), "{}", text(&list));
    // A plastic that does not shrink shows no feed.
    list[0].melt = Melt::new(density(1.0), density(1.0));
    assert!(text(&list).ends_with("."), "{}", text(&list));
}

#[test]
fn molds_come_by_name_and_shape() {
    let book = book_from_text(small::BOOK).unwrap();
    let of = |mold: &str, shape: Option<&str>| Sample {
        mold: mold.into(),
        shape: shape.map(Into::into),
        ..sample("A", &[(4, 40.0)])
    };
    let list =
        [of("worm", None), of("pair", Some("short")), of("worm", None), of("pair", Some("long"))];
    let found = found(&list, &book).unwrap();
    let names: Vec<(&str, Option<&str>, u32)> =
        found.iter().map(|one| (one.mold.as_str(), one.shape.as_deref(), one.pieces)).collect();
    assert_eq!(names, [("pair", Some("long"), 4), ("pair", Some("short"), 4), ("worm", None, 8)]);
}
