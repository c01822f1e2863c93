use std::string::ToString;

use proptest::prelude::*;
use rstest::rstest;

use super::*;
use crate::fault::Diagnose;
use crate::material::{Drop, Kind, Material};
use crate::quantity::Measured;

const US: System = System::UsCustomary;
/// A US cup in liters: 231 in³/16.
const CUP_L: f64 = 0.236_588_236_5;

fn table() -> Materials {
    let of = |name: &str, kind, g_per_ml: f64| Material {
        density: Some(Measured::exact(MassDensity::from_si(g_per_ml * 1e3))),
        ..Material::new(name, kind)
    };
    let drop = Some(Drop::Mass(Measured::exact(Mass::from_si(0.044e-3))));
    let scooped = Some(Measured::exact(MassDensity::from_si(1220.0)));
    Materials::new(Vec::from([
        of("clear", Kind::Plastisol, 1.03),
        of("firm", Kind::Plastisol, 1.06),
        of("softener", Kind::Softener, 0.984),
        Material { drop, ..of("plum", Kind::Colorant, 1.05) },
        Material { as_scooped: scooped, ..of("salt", Kind::Salt, 2.165) },
        Material::new("mystery", Kind::Other),
    ]))
}

fn amount(text: &str) -> Amount {
    Amount::parse(text).unwrap()
}

fn doses(doses: &[(&str, &str)]) -> Vec<Dose> {
    let table = table();
    let dose = |(name, text): &(&str, &str)| Dose {
        material: table.find(name).unwrap(),
        amount: amount(text),
    };
    doses.iter().map(dose).collect()
}

fn formula(name: &str, per: &str, base: &[(&str, &str)], of: &[(&str, &str)]) -> Formula {
    let per = (!per.is_empty()).then(|| amount(per));
    Formula { name: name.into(), per, base: doses(base), doses: doses(of), color: None }
}

const CLEAR: &[(&str, &str)] = &[("clear", "1 g")];

fn combine(formulas: &[&Formula], overlap: Overlap) -> Result<Recipe, FormulaError> {
    Recipe::combine(formulas, overlap, None, &table(), US)
}

fn recipe(per: &str, of: &[(&str, &str)]) -> Recipe {
    combine(&[&formula("a", per, CLEAR, of)], Overlap::Refuse).unwrap()
}

fn ratio(recipe: &Recipe, name: &str) -> f64 {
    let material = table().find(name).unwrap();
    recipe.ingredients().find(|one| one.material == material).map_or(0.0, |one| one.ratio)
}

#[track_caller]
fn near(got: f64, expected: f64) {
    assert!((got - expected).abs() <= 1e-14 * expected.abs(), "{got} for {expected}");
}

// By hand; a cup of base is 1.03 · 236.588 236 5 g.
#[rstest]
#[case("plum", "12.5 g", 0.0125 / (1.03 * CUP_L))]
#[case("plum", "40 drops", 40.0 * 0.044e-3 / (1.03 * CUP_L))]
#[case("plum", "1 tsp", 1.05 / 48.0 / 1.03)]
#[case("salt", "1/4 cup", 1.22 / 4.0 / 1.03)] // as scooped, not by its grains
#[case("softener", "12 % of base", 0.12)]
#[case("softener", "12 % of base by volume", 0.12 * 0.984 / 1.03)]
#[case("softener", "20 % of finished", 0.25)]
#[case("softener", "20 % of finished by volume", 0.25 * 0.984 / 1.03)]
#[case("salt", "20 % of finished by volume", 0.25 * 2.165 / 1.03)] // by its grains
fn a_dose_becomes_a_ratio(#[case] name: &str, #[case] text: &str, #[case] expected: f64) {
    near(ratio(&recipe("1 cup", &[(name, text)]), name), expected);
}

#[rstest]
#[case(&[("1 cup", "1/4 cup"), ("2 cup", "1/2 cup"), ("3 cup", "3/4 cup"), ("1/3 cup", "1/12 cup")])]
#[case(&[("1 cup", "1 tsp"), ("2 cup", "2 tsp"), ("3 cup", "1 tbsp"), ("16 tbsp", "1 tsp")])]
#[case(&[("100 g", "0.1 g"), ("300 g", "0.3 g"), ("1 kg", "1 g"), ("700 g", "700 mg")])]
fn one_formula_per_one_two_or_three_cups_is_one_recipe(#[case] ways: &[(&str, &str)]) {
    let ways: Vec<Recipe> = ways.iter().map(|(per, dose)| recipe(per, &[("salt", dose)])).collect();
    assert!(ways.windows(2).all(|two| two[0] == two[1]), "{ways:?}");
}

#[test]
fn a_blend_is_shared_out_by_mass() {
    let firm =
        formula("firm", "1 cup", &[("clear", "1 cup"), ("firm", "1 cup")], &[("salt", "1/4 cup")]);
    let got = combine(&[&firm], Overlap::Refuse).unwrap();
    near(ratio(&got, "clear"), 1.03 / 2.09);
    near(ratio(&got, "firm"), 1.06 / 2.09);
    // Two cups of it weigh 2.09: the dose is per a cup of the blend.
    near(ratio(&got, "salt"), 1.22 / 4.0 / 1.045);
    near(got.base_density(&table()).unwrap().si(), 1045.0);
    let written_otherwise =
        formula("b", "2 cup", &[("firm", "3 tbsp"), ("clear", "3 tbsp")], &[("salt", "1/2 cup")]);
    assert_eq!(got, combine(&[&written_otherwise], Overlap::Refuse).unwrap());
    // A color dosed per cup takes the blend's density, whichever formula comes first.
    let color = formula("dusk", "1 cup", &[], &[("plum", "32 drops")]);
    let one = combine(&[&color, &firm], Overlap::Refuse).unwrap();
    assert_eq!(one, combine(&[&firm, &color], Overlap::Refuse).unwrap());
    near(ratio(&one, "plum"), 32.0 * 0.044e-3 / (1.045 * CUP_L));
}

#[test]
fn overlap_says_what_counts() {
    let one = formula("one", "1 cup", CLEAR, &[("plum", "10 drops"), ("salt", "1 tsp")]);
    let two = formula("two", "1 cup", &[], &[("plum", "30 drops")]);
    let three = formula("three", "1 cup", &[], &[("plum", "5 drops")]);
    let drops = |recipe: &Recipe| ratio(recipe, "plum") * 1.03 * CUP_L / 0.044e-3;
    let all = [&one, &two, &three];
    match combine(&all, Overlap::Refuse) {
        Err(FormulaError::DosedTwice { material, first, second }) => {
            assert_eq!([&*material, &*first, &*second], ["plum", "one", "two"]);
        }
        other => panic!("{other:?}"),
    }
    near(drops(&combine(&all, Overlap::Add).unwrap()), 45.0);
    near(drops(&combine(&all, Overlap::Last).unwrap()), 5.0);
    near(drops(&combine(&[&three, &two, &one], Overlap::Last).unwrap()), 10.0);
    // One formula that doses a material twice means both, and both give way together.
    let twice = formula("twice", "1 cup", CLEAR, &[("plum", "10 drops"), ("plum", "2 drops")]);
    near(drops(&combine(&[&twice], Overlap::Refuse).unwrap()), 12.0);
    near(drops(&combine(&[&twice, &two], Overlap::Last).unwrap()), 30.0);
}

#[rstest]
#[case("10 drops", "2 drops", WrittenIn::Drops)]
#[case("1 tsp", "1 tbsp", WrittenIn::Volume)]
#[case("10 drops", "2 g", WrittenIn::Mass)]
#[case("1 tsp", "2 drops", WrittenIn::Mass)]
fn two_doses_of_a_material_are_written_in_their_measure_if_it_is_one(
    #[case] one: &str,
    #[case] other: &str,
    #[case] written: WrittenIn,
) {
    let got = recipe("1 cup", &[("plum", one), ("plum", other)]);
    assert_eq!(got.additives()[0].written, written);
}

#[test]
fn a_base_is_named_once_or_by_default() {
    let (table, color) = (table(), formula("dusk", "1 cup", &[], &[("plum", "9 drops")]));
    let clear = table.find("clear");
    let two = formula("reed", "1 cup", &[], &[("salt", "1 tsp")]);
    let refused = combine(&[&color, &two], Overlap::Refuse).unwrap_err();
    assert_eq!(refused.code(), "formula-no-base");
    assert!(refused.to_string().contains("dusk + reed"), "{refused}");
    let by_default = Recipe::combine(&[&color], Overlap::Refuse, clear, &table, US).unwrap();
    assert_eq!(by_default.base()[0].material, clear.unwrap());
    let refused = Recipe::combine(&[&color], Overlap::Refuse, table.find("salt"), &table, US);
    assert_eq!(refused.unwrap_err().code(), "formula-base-no-plastisol");
    let (one, other) = (formula("a", "", CLEAR, &[]), formula("b", "", &[("firm", "1 g")], &[]));
    let refused = combine(&[&one, &color, &other], Overlap::Refuse).unwrap_err();
    assert_eq!(refused.to_string(), "\"a\" and \"b\" name different bases.");
    // A formula that names the base overrules the default.
    let firm = Recipe::combine(&[&color, &other], Overlap::Refuse, clear, &table, US).unwrap();
    assert_eq!(firm.base()[0].material, table.find("firm").unwrap());
}

#[rstest]
#[case("", CLEAR, &[("salt", "1 tsp")], "formula-no-per")]
#[case("0 cup", CLEAR, &[("salt", "1 tsp")], "formula-empty-base")]
#[case("1 cup", &[("clear", "1 cup"), ("firm", "0 cup")], &[], "formula-empty-base")]
#[case("1 cup", &[("salt", "1 cup")], &[], "formula-base-no-plastisol")]
#[case("1 cup", CLEAR, &[("clear", "1 tsp")], "formula-base-is-dosed")]
#[case("1 cup", CLEAR, &[("salt", "10 % of base by volume")], "formula-powder-by-volume")]
#[case("1 cup", CLEAR, &[("salt", "60 % of finished"), ("plum", "40 % of finished")], "formula-no-room")]
#[case("1 cup", CLEAR, &[("salt", "50 % of finished by volume"), ("plum", "50 % of finished by volume")], "formula-no-room")]
#[case("1 cup", CLEAR, &[("salt", "60 % of finished"), ("plum", "60 % of finished by volume")], "formula-no-room")]
// (1 - 4)² is more than 4² · 0.984/2.165: the equations have a solution, of negative volume.
#[case("1 cup", CLEAR, &[("salt", "400 % of finished"), ("softener", "400 % of finished by volume")], "formula-no-room")]
#[case("1 cup", CLEAR, &[("plum", "330 °F")], "formula-bad-amount")]
#[case("30 drops", CLEAR, &[("plum", "1 g")], "formula-bad-amount")]
#[case("1 cup", CLEAR, &[("mystery", "1 tsp")], "missing-property")]
#[case("1 cup", CLEAR, &[("mystery", "9 drops")], "missing-property")]
#[case("1 cup", CLEAR, &[("mystery", "5 % of finished by volume")], "missing-property")]
fn what_cannot_be_is_refused(
    #[case] per: &str,
    #[case] base: &[(&str, &str)],
    #[case] of: &[(&str, &str)],
    #[case] code: &str,
) {
    let refused = combine(&[&formula("x", per, base, of)], Overlap::Refuse).unwrap_err();
    assert_eq!(refused.code(), code, "{refused}");
    assert!(!refused.help().is_empty());
}

#[test]
fn a_recipe_is_of_64_formulas_and_512_doses_at_most() {
    let of = |formulas: &[&Formula]| combine(formulas, Overlap::Add).map_err(|error| error.code());
    let empty = formula("x", "1 cup", CLEAR, &[]);
    assert!(of(&[&empty; 64]).is_ok());
    assert_eq!(of(&[&empty; 65]), Err("formula-too-many"));
    // A base counts as one of them.
    let long = |count: usize| formula("x", "1 cup", CLEAR, &[("plum", "1 drop")].repeat(count));
    assert!(of(&[&long(255), &long(255)]).is_ok());
    assert_eq!(of(&[&long(255), &long(256)]), Err("formula-too-many-doses"));
}

#[test]
fn a_missing_density_is_missed_only_where_it_is_needed() {
    let got = recipe("100 g", &[("mystery", "1 g")]);
    near(ratio(&got, "mystery"), 0.01);
    assert!(got.for_volume(Volume::from_si(1e-3), Phase::Liquid, &table()).is_err());
}

#[test]
fn a_dose_of_nothing_is_left_out() {
    assert_eq!(recipe("1 cup", &[("plum", "0 drops")]).additives(), []);
    assert_eq!(recipe("1 cup", &[("plum", "0 % of finished")]), recipe("1 cup", &[]));
}

#[test]
fn a_recipe_scales_to_base_mass_and_volume() {
    let got = recipe("1 cup", &[("salt", "20 % of finished"), ("plum", "32 drops")]);
    let base = Mass::from_si(0.25);
    let mix = got.for_base(base).unwrap();
    near(mix.base_mass(&table()).unwrap().si(), 0.25);
    near(mix.mass_fraction(table().find("salt").unwrap()), 0.2);
    near(mix.mass().si(), 0.25 * got.total_per_base());
    near(got.for_mass(Mass::from_si(0.7)).unwrap().mass().si(), 0.7);
    for phase in [Phase::Liquid, Phase::Fused] {
        let full = got.for_volume(Volume::from_si(0.5e-3), phase, &table()).unwrap();
        near(full.volume(&table(), phase).unwrap().si(), 0.5e-3);
    }
}

proptest! {
    /// The two equations of the joint solution, in the masses and volumes that come out; and the same by
    /// filling up again and again.
    #[test]
    fn the_joint_solution_solves(
        (a, b) in (0_u32..600, 0_u32..600),
        (w, v_liquid, v_grain) in (0_u32..300, 0_u32..300, 0_u32..200),
    ) {
        let percent = |tenths: u32, of: &str| alloc::format!("{}.{} % of {of}", tenths / 10, tenths % 10);
        let table = Materials::new(table().iter().map(|(_, m)| m.clone())
            .chain([Material { name: "w".into(), ..table().get(MaterialId(3)).unwrap().clone() }])
            .collect());
        let dose = |name: &str, text: String| Dose { material: table.find(name).unwrap(), amount: amount(&text) };
        let formula = Formula {
            name: "x".into(),
            per: Some(amount("1 kg")),
            color: None,
            base: Vec::from([dose("clear", "1 g".into())]),
            doses: Vec::from([
                dose("firm", percent(a, "base")),
                dose("plum", percent(b, "base by volume")),
                dose("w", percent(w, "finished")),
                dose("softener", percent(v_liquid, "finished by volume")),
                dose("salt", percent(v_grain, "finished by volume")),
            ]),
        };
        let got = Recipe::combine(&[&formula], Overlap::Refuse, None, &table, US).unwrap();
        let mix = got.for_base(Mass::from_si(1.0)).unwrap();
        let of = |name: &str| table.find(name).unwrap();
        let share = |tenths: u32| f64::from(tenths) / 1000.0;
        let (mass, volume) = (mix.mass().si(), mix.volume(&table, Phase::Liquid).unwrap().si());
        let close = |a: f64, b: f64| (a - b).abs() <= 1e-13 * (1.0 + b.abs());
        prop_assert!(close(mix.mass_of(of("firm")).si(), share(a)));
        prop_assert!(close(mix.mass_of(of("plum")).si(), share(b) * 1.05 / 1.03));
        prop_assert!(close(mix.mass_of(of("w")).si() / mass, share(w)));
        for (name, tenths) in [("softener", v_liquid), ("salt", v_grain)] {
            let fraction = mix.volume_fraction(of(name), &table, Phase::Liquid).unwrap();
            prop_assert!(close(fraction, share(tenths)), "{name} {fraction}");
        }
        let densities = |name: &str| table.get(of(name)).unwrap().true_density("").unwrap().get().si();
        let (mut total, mut filled) = (1.0, 1.0 / 1030.0);
        let fixed = share(a) + share(b) * 1.05 / 1.03;
        for _ in 0..400 {
            let (t, v): (f64, f64) = (total, filled);
            let (by_mass, soft, salt) = (share(w) * t, share(v_liquid) * v, share(v_grain) * v);
            total = 1.0 + fixed + by_mass + soft * densities("softener") + salt * densities("salt");
            filled = 1.0 / 1030.0 + share(a) / 1060.0 + share(b) / 1030.0 + by_mass / densities("w") + soft + salt;
        }
        prop_assert!((total - mass).abs() <= 1e-12 * mass && (filled - volume).abs() <= 1e-12 * volume);
    }

    #[test]
    fn the_same_formula_per_more_is_the_same_recipe(times in 1_u32..40, drops in 1_u32..90, eighths in 1_u32..9) {
        let written = |times: u32| {
            let (per, drops) = (alloc::format!("{times} cup"), alloc::format!("{} drops", drops * times));
            let salt = alloc::format!("{}/8 tsp", eighths * times);
            recipe(&per, &[("plum", &drops), ("salt", &salt), ("softener", "3.3 % of finished by volume")])
        };
        prop_assert_eq!(written(1), written(times));
    }

    #[test]
    fn scaling_a_recipe_is_linear(grams in 0.1_f64..900.0, factor in 0.01_f64..50.0) {
        let got = recipe("1 cup", &[("plum", "32 drops"), ("salt", "1/4 cup"), ("softener", "5 % of finished")]);
        let one = got.for_base(Mass::from_si(grams)).unwrap();
        let scaled = got.for_base(Mass::from_si(grams * factor)).unwrap();
        for portion in one.portions() {
            let other = scaled.mass_of(portion.material).si();
            prop_assert!((portion.mass.si() * factor - other).abs() <= 4.0 * f64::EPSILON * other);
        }
    }
}
