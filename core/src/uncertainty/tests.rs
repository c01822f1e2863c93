//! Worked examples by hand, laws, and Monte Carlo (JCGM 101:2008) against the first order.

use alloc::string::{String, ToString};
use alloc::vec::Vec;

use proptest::prelude::*;
use rstest::rstest;
use uom::si::mass::gram;
use uom::si::mass_density::gram_per_cubic_centimeter;
use uom::si::volume::milliliter;

use super::*;
use crate::fault::Diagnose;
use crate::material::{Drop, Kind, Material};
use crate::quantity::{
    Mass, MassDensity, Measurable, Measured, Ratio, TemperatureCoefficient, TemperatureInterval,
    Volume,
};

fn ratio(value: f64, uncertainty: f64, source: &str) -> Input {
    Input::new(Ratio::from(value), Ratio::from(uncertainty), source)
}

fn estimate(inputs: &[Input], f: impl Fn(&[f64]) -> f64) -> Estimate<Ratio> {
    propagate(inputs, |x| Ok::<_, UncertaintyError>(Ratio::from(f(x)))).unwrap()
}

/// A generator with a stated seed (SplitMix64), so that every run draws the same numbers.
struct Draws(u64);

impl Draws {
    fn uniform(&mut self) -> f64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        ((z ^ (z >> 31)) >> 11) as f64 / (1_u64 << 53) as f64
    }

    /// A draw from the normal distribution (Box and Muller).
    fn normal(&mut self) -> f64 {
        let (one, other) = (1.0 - self.uniform(), self.uniform());
        libm::sqrt(-2.0 * libm::log(one)) * libm::cos(core::f64::consts::TAU * other)
    }
}

/// Mean and standard deviation of `count` results.
fn monte_carlo(count: u32, mut result: impl FnMut() -> f64) -> (f64, f64) {
    let drawn: Vec<f64> = (0..count).map(|_| result()).collect();
    let n = f64::from(count);
    let mean = drawn.iter().sum::<f64>() / n;
    let square = drawn.iter().map(|y| (y - mean) * (y - mean)).sum::<f64>() / (n - 1.0);
    (mean, libm::sqrt(square))
}

#[test]
fn one_source_adds_up_and_two_add_in_quadrature() {
    let sum = |x: &[f64]| x.iter().sum();
    let same = estimate(&[ratio(1.0, 0.3, "spoon"), ratio(1.0, 0.4, "spoon")], sum);
    assert!((same.uncertainty.value - 0.7).abs() < 1e-15);
    assert_eq!(same.shares.len(), 1);
    let two = estimate(&[ratio(1.0, 0.3, "spoon"), ratio(1.0, 0.4, "cup")], sum);
    assert!((two.uncertainty.value - 0.5).abs() < 1e-15);
    let shares: Vec<(&str, f64)> =
        two.shares.iter().map(|share| (share.source.as_str(), share.share.value)).collect();
    assert_eq!(shares[0].0, "cup");
    assert!((shares[0].1 - 0.64).abs() < 1e-12 && (shares[1].1 - 0.36).abs() < 1e-12);
}

#[test]
fn what_is_in_both_cancels() {
    let one = |x: &[f64]| x[0] / x[1];
    let same = estimate(&[ratio(2.0, 0.02, "balance"), ratio(5.0, 0.05, "balance")], one);
    assert!(same.uncertainty.value < 1e-15);
    let other = estimate(&[ratio(2.0, 0.02, "one"), ratio(5.0, 0.05, "other")], one);
    assert!((other.uncertainty.value - 0.4 * 0.01 * libm::sqrt(2.0)).abs() < 1e-6);
}

#[test]
fn a_share_at_its_end_gives_a_one_sided_slope() {
    let inputs = [ratio(0.99, 0.05, "feed")];
    let within = |x: &[f64]| {
        if x[0] <= 1.0 {
            Ok(Ratio::from(3.0 * x[0]))
        } else {
            Err(UncertaintyError::Voids { share: x[0] })
        }
    };
    let got = propagate(&inputs, within).unwrap();
    assert!((got.uncertainty.value - 0.15).abs() < 1e-12);
    assert!(got.shares[0].one_sided);
}

#[test]
fn unknown_stays_unknown() {
    let density = Measured::exact(MassDensity::from_si(1000.0));
    let inputs = [Input::of(&density, "density"), ratio(1.0, 0.1, "spoon")];
    let got = estimate(&inputs, |x| x[0] * x[1]);
    assert_eq!(got.unknown, ["density"]);
    assert!((got.uncertainty.value - 100.0).abs() < 1e-9);
}

#[rstest]
#[case(ratio(f64::NAN, 0.1, "x"), "uncertainty-bad-input")]
#[case(ratio(1.0, -0.1, "x"), "uncertainty-bad-input")]
#[case(ratio(1.0, 0.1, "x").with_freedom(0.0), "uncertainty-bad-freedom")]
#[case(ratio(1.0, 2.0, "x"), "uncertainty-out-of-reach")]
#[case(ratio(0.0, 0.1, "x"), "uncertainty-no-number")]
#[case(ratio(3.0, 0.1, "x"), "uncertainty-voids")]
fn refuses(#[case] input: Input, #[case] code: &str) {
    // 1/x, which takes from 0 to 2 only.
    let refused = propagate(&[input], |x| {
        if (0.0..=2.0).contains(&x[0]) {
            Ok(Ratio::from(1.0 / x[0]))
        } else {
            Err(UncertaintyError::Voids { share: x[0] })
        }
    })
    .unwrap_err();
    assert_eq!(refused.code(), code, "{refused}");
}

#[test]
fn few_readings_need_a_larger_factor() {
    // Two equal sources of 4 and 12 degrees of freedom: 1/ν = ¼ (1/4 + 1/12), ν = 12.
    let inputs = [ratio(1.0, 0.1, "a").with_freedom(4.0), ratio(1.0, 0.1, "b").with_freedom(12.0)];
    let got = estimate(&inputs, |x| x[0] + x[1]);
    assert!((got.freedom.unwrap() - 12.0).abs() < 1e-9);
    let coverage = got.coverage(Ratio::from(0.95)).unwrap();
    // t95(12) = 2.18: JCGM 100, Table G.2.
    assert!((coverage.factor - 2.18).abs() < 0.005);
    assert!((coverage.half_width.value - coverage.factor * got.uncertainty.value).abs() < 1e-15);
}

fn density(value: f64, uncertainty: f64) -> Option<Measured<MassDensity>> {
    let of = MassDensity::new::<gram_per_cubic_centimeter>;
    Some(Measured::new(of(value), of(uncertainty)))
}

fn base() -> Material {
    Material { density: density(1.03, 0.01), ..Material::new("base", Kind::Plastisol) }
}

fn flake() -> Material {
    Material {
        density: density(1.4, 0.01),
        as_scooped: density(0.55, 0.05),
        ..Material::new("flake", Kind::Flake)
    }
}

fn plum() -> Material {
    let g = Mass::new::<gram>;
    let drop = Some(Drop::Mass(Measured::new(g(0.044), g(0.003))));
    Material { density: density(1.05, 0.01), drop, ..Material::new("plum", Kind::Colorant) }
}

const CUP_ML: f64 = 236.588_236_5;

fn cup() -> Taken<'static> {
    let filled = Volume::new::<milliliter>(CUP_ML);
    Taken::Cup { name: "1-cup cup", filled, mark: Some(filled / 4.0), times: 1 }
}

fn weighed(net_g: f64) -> Taken<'static> {
    let g = Mass::new::<gram>;
    Taken::Weighed { net: g(net_g), times: 1, readability: g(0.1) }
}

fn spoon(times: u32) -> Taken<'static> {
    let holds = Volume::new::<milliliter>(CUP_ML / 96.0);
    Taken::Spoon { name: "1/2 tsp", holds, times }
}

fn ratio_of(dose: &[Taken<'_>], of: &Material, base_taken: &[Taken<'_>]) -> Estimate<Ratio> {
    let base = base();
    let dose = Dosed { material: of, taken: dose, share: 1.0 };
    let base = Dosed { material: &base, taken: base_taken, share: 1.0 };
    dose_ratio(&dose, &base, &ToolUncertainty::default()).unwrap()
}

fn relative(estimate: &Estimate<Ratio>) -> f64 {
    estimate.uncertainty.value / estimate.value.value
}

#[test]
fn a_spoon_of_flake_is_unsure_by_the_spoon_and_a_balance_cures_it() {
    let spooned = ratio_of(&[spoon(1)], &flake(), &[weighed(243.7)]);
    assert_eq!(spooned.main_source().unwrap().source, "what a spoonful of flake weighs");
    // By hand: as scooped 0.05/0.55, size 0.05/√3, leveling 0.03, span 0.001, rounding negligible.
    let expected = [0.05 / 0.55, 0.05 / libm::sqrt(3.0), 0.03, 0.001];
    let by_hand = libm::sqrt(expected.iter().map(|u| u * u).sum());
    assert!((relative(&spooned) - by_hand).abs() < 1e-4, "{}", relative(&spooned));
    let on_the_balance = ratio_of(&[weighed(1.4)], &flake(), &[weighed(243.7)]);
    // Rounding and tare alone: the span of one balance cancels.
    let rounding = 0.1 / libm::sqrt(6.0) / 1.4;
    assert!((relative(&on_the_balance) - rounding).abs() < 1e-4);
    assert!(on_the_balance.shares.iter().all(|share| !share.source.contains("span")));
}

#[test]
fn two_spoonfuls_share_the_spoon_and_not_the_leveling() {
    let tools = ToolUncertainty::default();
    let material = flake();
    let mass = |taken: &[Taken<'_>]| {
        dosed_mass(&Dosed { material: &material, taken, share: 1.0 }, &tools).unwrap()
    };
    let share = |estimate: &Estimate<Mass>, of: &str| {
        let square: f64 = estimate
            .shares
            .iter()
            .filter(|share| share.source.starts_with(of))
            .map(|share| share.contribution.si() * share.contribution.si())
            .sum();
        libm::sqrt(square) / estimate.value.si()
    };
    for four in [mass(&[spoon(4)]), mass(&[spoon(1), spoon(3)])] {
        assert!((share(&four, "size") - 0.05 / libm::sqrt(3.0)).abs() < 1e-12);
        assert!((share(&four, "leveling") - 0.03 / 2.0).abs() < 1e-12);
    }
}

#[test]
fn drops_carry_their_own_uncertainty_n_fold_and_their_scatter_by_the_root() {
    let drops = ratio_of(&[Taken::Drops { count: 100 }], &plum(), &[weighed(243.7)]);
    let own = 0.003 / 0.044;
    let scatter = 0.05 / 10.0;
    let by_hand = libm::sqrt(own * own + scatter * scatter + 0.001 * 0.001);
    assert!((relative(&drops) - by_hand).abs() < 1e-4, "{}", relative(&drops));
    assert_eq!(drops.main_source().unwrap().source, "what a drop of plum weighs");
}

/// A tenth of the distance between marks is nothing to fill a whole cup by: one with a single mark is leveled.
#[test]
fn a_cup_with_one_mark_is_filled_like_a_spoon() {
    let Taken::Cup { name, filled, .. } = cup() else { panic!("no cup") };
    let single = Taken::Cup { name, filled, mark: None, times: 1 };
    let found = ratio_of(&[weighed(1.4)], &plum(), &[single]);
    let filling = found.shares.iter().find(|share| share.source.starts_with("filling")).unwrap();
    assert!((filling.contribution.value.abs() / found.value.value - 0.03).abs() < 1e-3);
}

#[test]
fn a_drop_that_was_never_weighed_is_less_sure() {
    let known = ratio_of(&[Taken::Drops { count: 40 }], &plum(), &[cup()]);
    let never =
        ratio_of(&[Taken::Drops { count: 40 }], &Material { drop: None, ..plum() }, &[cup()]);
    assert!(relative(&never) > 3.0 * relative(&known));
    assert!(never.main_source().unwrap().source.contains("never found out"));
}

#[test]
fn refuses_what_was_not_taken() {
    let (material, tools) = (flake(), ToolUncertainty::default());
    let mass =
        |taken: &[Taken<'_>]| dosed_mass(&Dosed { material: &material, taken, share: 1.0 }, &tools);
    let code = |result: Result<_, UncertaintyError>| -> String {
        result.map(|_: Estimate<Mass>| ()).unwrap_err().code().to_string()
    };
    assert_eq!(code(mass(&[])), "uncertainty-nothing-taken");
    assert_eq!(code(mass(&[spoon(0)])), "uncertainty-tool");
    assert_eq!(code(mass(&[weighed(f64::NAN)])), "uncertainty-tool");
    assert_eq!(code(mass(&[Taken::Drops { count: 3 }])), "missing-property");
    let bad = ToolUncertainty { spoon_level: Ratio::from(-1.0), ..tools };
    let refused = dosed_mass(&Dosed { material: &material, taken: &[spoon(1)], share: 1.0 }, &bad);
    assert_eq!(code(refused), "uncertainty-tool-figure");
}

/// The same dose drawn 100 000 times, each error where it arises.
#[test]
fn a_dose_agrees_with_monte_carlo() {
    let first_order = ratio_of(&[spoon(2)], &flake(), &[cup()]);
    let mut draws = Draws(1);
    let (mean, deviation) = monte_carlo(100_000, || {
        let scooped = 0.55 + 0.05 * draws.normal();
        let size = 1.0 + 0.05 * (2.0 * draws.uniform() - 1.0);
        let leveling = 2.0 * size + 0.03 * (draws.normal() + draws.normal());
        let liquid = 1.03 + 0.01 * draws.normal();
        let cup_size = 1.0 + 0.05 * (2.0 * draws.uniform() - 1.0);
        let filling = 0.1 * 0.25 * draws.normal();
        scooped * leveling / 96.0 / (liquid * (cup_size + filling))
    });
    assert!((deviation / first_order.uncertainty.value - 1.0).abs() < 0.01, "{deviation}");
    assert!((mean / first_order.value.value - 1.0).abs() < 0.003, "{mean}");
}

fn piece_inputs() -> PieceInputs {
    let share =
        |value: f64, uncertainty: f64| Measured::new(Ratio::from(value), Ratio::from(uncertainty));
    PieceInputs {
        cavity: Measured::new(Volume::new::<milliliter>(9.5), Volume::new::<milliliter>(0.1)),
        cold: density(1.04, 0.008).unwrap(),
        expansion: Measured::new(
            TemperatureCoefficient::from_si(6.5e-4),
            TemperatureCoefficient::from_si(0.5e-4),
        ),
        rise: Measured::new(TemperatureInterval::from_si(150.0), TemperatureInterval::from_si(5.0)),
        voids: share(0.02, 0.008),
        feed: share(0.4, 0.1),
    }
}

#[test]
fn a_piece_agrees_with_monte_carlo() {
    let first_order = piece_weight(&piece_inputs()).unwrap();
    let mut draws = Draws(2);
    let (mean, deviation) = monte_carlo(100_000, || {
        let cavity = 9.5 + 0.1 * draws.normal();
        let cold = 1.04 + 0.008 * draws.normal();
        let growth = (6.5e-4 + 0.5e-4 * draws.normal()) * (150.0 + 5.0 * draws.normal());
        let hot = cold / (1.0 + growth);
        let (voids, feed) = (0.02 + 0.008 * draws.normal(), 0.4 + 0.1 * draws.normal());
        cavity * (1.0 - voids) * (hot + feed * (cold - hot))
    });
    let (value, uncertainty) =
        (first_order.value.get::<gram>(), first_order.uncertainty.get::<gram>());
    assert!((deviation / uncertainty - 1.0).abs() < 0.01, "{deviation} {uncertainty}");
    assert!((mean / value - 1.0).abs() < 0.001, "{mean} {value}");
}

#[test]
fn a_finished_density_agrees_with_monte_carlo() {
    let salt = Material {
        density: density(2.165, 0.004),
        as_scooped: density(1.22, 0.06),
        ..Material::new("salt", Kind::Salt)
    };
    let base = Material { fused: density(1.042, 0.008), ..base() };
    let spoonfuls = [spoon(24)];
    let parts = [
        Dosed { material: &base, taken: &[cup()], share: 1.0 },
        Dosed { material: &salt, taken: &spoonfuls, share: 1.0 },
    ];
    let voids = Measured::new(Ratio::from(0.02), Ratio::from(0.005));
    let first_order = finished_density(&parts, &voids, &ToolUncertainty::default()).unwrap();
    assert!(first_order.unknown.is_empty());
    let mut draws = Draws(3);
    let (mean, deviation) = monte_carlo(100_000, || {
        let cup =
            CUP_ML * (1.0 + 0.05 * (2.0 * draws.uniform() - 1.0) + 0.1 * 0.25 * draws.normal());
        let base = cup * (1.03 + 0.01 * draws.normal());
        let size = 1.0 + 0.05 * (2.0 * draws.uniform() - 1.0);
        let spoonfuls = 24.0 * size + 0.03 * libm::sqrt(24.0) * draws.normal();
        let salt = spoonfuls * CUP_ML / 96.0 * (1.22 + 0.06 * draws.normal());
        let volume =
            base / (1.042 + 0.008 * draws.normal()) + salt / (2.165 + 0.004 * draws.normal());
        (base + salt) / volume * (1.0 - (0.02 + 0.005 * draws.normal()))
    });
    let of = |density: MassDensity| density.get::<gram_per_cubic_centimeter>();
    let (value, uncertainty) = (of(first_order.value), of(first_order.uncertainty));
    assert!((deviation / uncertainty - 1.0).abs() < 0.01, "{deviation} {uncertainty}");
    assert!((mean / value - 1.0).abs() < 0.001, "{mean} {value}");
}

#[test]
fn a_liquid_density_for_a_fused_one_is_reported() {
    let base = base();
    let parts = [Dosed { material: &base, taken: &[cup()], share: 1.0 }];
    let voids = Measured::exact(Ratio::from(0.0));
    let got = finished_density(&parts, &voids, &ToolUncertainty::default()).unwrap();
    assert_eq!(got.unknown, ["voids", "fused of base (taken as its liquid density)"]);
}

proptest! {
    #[test]
    fn shares_sum_to_one_and_squares_to_the_uncertainty(
        parts in prop::collection::vec((0.1..10.0, 0.0..0.1, 0_u8..3), 1..8)
    ) {
        let inputs: Vec<Input> = parts
            .iter()
            .map(|&(value, share, source)| ratio(value, value * share, &source.to_string()))
            .collect();
        let got = estimate(&inputs, |x| x.iter().product());
        if got.uncertainty.value > 0.0 {
            let sum: f64 = got.shares.iter().map(|share| share.share.value).sum();
            prop_assert!((sum - 1.0).abs() < 1e-10);
            let square: f64 = got.shares.iter().map(|s| s.contribution.value * s.contribution.value).sum();
            let whole = got.uncertainty.value * got.uncertainty.value;
            prop_assert!((square - whole).abs() <= 1e-10 * whole);
            prop_assert!(got.shares.is_sorted_by(|a, b| a.share >= b.share));
        }
    }

    // Products to first order: relative uncertainties add in quadrature.
    #[test]
    fn a_product_of_sure_factors(
        parts in prop::collection::vec((0.5..2.0, 1e-4..1e-3), 2..6)
    ) {
        let inputs: Vec<Input> = parts
            .iter()
            .enumerate()
            .map(|(i, &(value, share))| ratio(value, value * share, &i.to_string()))
            .collect();
        let got = estimate(&inputs, |x| x.iter().product());
        let expected = libm::sqrt(parts.iter().map(|(_, share)| share * share).sum::<f64>());
        prop_assert!((got.uncertainty.value / got.value.value / expected - 1.0).abs() < 1e-6);
    }
}

/// What a source does to the result has its sign; where only one side is allowed, it is that side's.
#[test]
fn a_contribution_has_its_sign() {
    let got = estimate(&[ratio(2.0, 0.1, "one"), ratio(1.0, 0.3, "other")], |x| x[0] - x[1]);
    let found: Vec<(&str, f64, bool)> = got
        .shares
        .iter()
        .map(|share| (share.source.as_str(), share.contribution.value, share.one_sided))
        .collect();
    assert_eq!((found[0].0, found[1].0, found[0].2), ("other", "one", false));
    assert!((found[0].1 + 0.3).abs() < 1e-12 && (found[1].1 - 0.1).abs() < 1e-12);
    let above = |x: &[f64]| {
        let refused = UncertaintyError::Voids { share: x[0] };
        if x[0] >= 1.0 { Ok(Ratio::from(3.0 * x[0])) } else { Err(refused) }
    };
    let got = propagate(&[ratio(1.0, 0.05, "feed")], above).unwrap();
    assert!((got.shares[0].contribution.value - 0.15).abs() < 1e-12 && got.shares[0].one_sided);
}

#[test]
fn what_has_no_effect_is_left_out() {
    let got = estimate(&[ratio(2.0, 0.1, "one"), ratio(1.0, 0.0, "sure")], |_| 7.0);
    assert_eq!((got.shares.len(), got.uncertainty.value, got.freedom), (0, 0.0, None));
    let exact = [Input::exact(Ratio::from(2.0)), ratio(1.0, 0.1, "one")];
    let got = estimate(&exact, |x| x[0] + x[1]);
    assert_eq!((got.shares.len(), got.freedom), (1, None));
    assert!((got.uncertainty.value - 0.1).abs() < 1e-15);
    assert_eq!((exact[0].source(), exact[1].source()), ("", "one"));
}

#[test]
fn inputs_of_one_source_have_its_fewest_degrees_of_freedom() {
    for freedoms in [[3.0, 5.0], [5.0, 3.0]] {
        let inputs = freedoms.map(|freedom| ratio(1.0, 0.1, "spoon").with_freedom(freedom));
        let got = estimate(&inputs, |x| x[0] + x[1]);
        assert!((got.freedom.unwrap() - 3.0).abs() < 1e-12);
    }
    let least = estimate(&[ratio(1.0, 0.1, "spoon").with_freedom(1.0)], |x| x[0]);
    assert_eq!(least.freedom, Some(1.0));
}

/// Ten drops of 0.044 g, which a shop has stated without an uncertainty: ±15 %, rectangular, and 5 % from drop to drop.
/// By its volume the density's 0.01/1.05 is in it, too.
#[test]
fn a_drop_that_is_stated_alone_has_the_usual_uncertainty() {
    let usual = 0.15 / libm::sqrt(3.0);
    let scatter = 0.05 / libm::sqrt(10.0);
    let drops = [
        (Drop::Mass(Measured::exact(Mass::new::<gram>(0.044))), 0.44, 0.0),
        (Drop::Volume(Measured::exact(Volume::new::<milliliter>(0.04))), 0.42, 0.01 / 1.05),
    ];
    for (drop, grams, density) in drops {
        let material = Material { drop: Some(drop), ..plum() };
        let taken = [Taken::Drops { count: 10 }];
        let dosed = Dosed { material: &material, taken: &taken, share: 1.0 };
        let got = dosed_mass(&dosed, &ToolUncertainty::default()).unwrap();
        assert!((got.value.get::<gram>() - grams).abs() < 1e-12);
        let squares = usual * usual + scatter * scatter + density * density;
        let relative = (got.uncertainty / got.value).value;
        assert!((relative - libm::sqrt(squares)).abs() < 1e-6, "{relative}");
        assert!(got.shares.iter().all(|share| share.contribution > Mass::default()));
    }
    // Never weighed: 1/20 mL ± 50 %.
    let unweighed = Material { drop: None, ..plum() };
    let taken = [Taken::Drops { count: 10 }];
    let dosed = Dosed { material: &unweighed, taken: &taken, share: 1.0 };
    let got = dosed_mass(&dosed, &ToolUncertainty::default()).unwrap();
    let squares = 0.25 / 3.0 + scatter * scatter + (0.01 / 1.05) * (0.01 / 1.05);
    assert!(((got.uncertainty / got.value).value - libm::sqrt(squares)).abs() < 1e-6);
}

#[test]
fn each_error_has_its_help() {
    let of = || String::from("spoon");
    let errors = [
        UncertaintyError::BadInput { of: of() },
        UncertaintyError::BadFreedom { of: of(), freedom: 0.0 },
        UncertaintyError::NoNumber,
        UncertaintyError::OutOfReach { of: of() },
        UncertaintyError::Level { level: 1.0 },
        UncertaintyError::Tool { material: of(), what: "the net weight" },
        UncertaintyError::Figure { what: "a drop" },
        UncertaintyError::Voids { share: 1.0 },
        UncertaintyError::NothingTaken { material: of() },
    ];
    for error in errors {
        assert!(error.help().ends_with('.'), "{error:?}");
    }
}
