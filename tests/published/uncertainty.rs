//! The worked examples of the guide to the expression of uncertainty, its first supplement, and the analytical
//! chemists' guide.

use std::f64::consts::TAU;

use pourwright::calibrate::{Counted, PerOne};
use pourwright::material::{Drop, Kind, Material};
use pourwright::quantity::{Mass, Measured, Ratio};
use pourwright::uncertainty::{
    Bounds, Dosed, Estimate, Input, Taken, ToolUncertainty, UncertaintyError, by_difference,
    coverage_factor, dosed_mass, propagate, resolution,
};
use pourwright::uom::si::mass::gram;
use serde_json::Value;

use crate::rows::{Row, read};

/// An input that is a source by itself, in whatever unit the example uses.
fn input(value: f64, uncertainty: f64, name: &str) -> Input {
    Input::new(Ratio::from(value), Ratio::from(uncertainty), name)
}

fn estimate<const N: usize>(inputs: &[Input; N], f: impl Fn([f64; N]) -> f64) -> Estimate<Ratio> {
    let calculation = |x: &[f64]| {
        let x = <[f64; N]>::try_from(x).map_err(|_| UncertaintyError::NoNumber)?;
        Ok::<_, UncertaintyError>(Ratio::from(f(x)))
    };
    propagate(inputs, calculation).expect("an estimate")
}

/// A number, or one that the row writes as `a/sqrtb`.
fn number(value: &Value) -> f64 {
    let read = |text: &str| text.parse::<f64>().expect("a number");
    match value.as_str() {
        None => value.as_f64().expect("a number"),
        Some(text) => {
            let (a, b) = text.split_once("/sqrt").expect("a/sqrtb");
            read(a) / read(b).sqrt()
        }
    }
}

/// The input at `value` of the row: [value, u] or [value, u, degrees of freedom].
fn stated(value: &Value, name: &str) -> Input {
    let input = input(number(&value[0]), number(&value[1]), name);
    match value.get(2) {
        Some(freedom) => input.with_freedom(number(freedom)),
        None => input,
    }
}

fn end_gauge(row: &Row) -> Estimate<Ratio> {
    let of = &row.inputs;
    let correction = |part: &str| {
        let [u, freedom] = [1, 2].map(|i| number(&of["d_nm"][part][i]));
        input(0.0, u, part).with_freedom(freedom)
    };
    let inputs = [
        stated(&of["ls_nm"], "ls"),
        stated(&of["d_nm"]["mean"], "d"),
        correction("random"),
        correction("systematic"),
        stated(&of["da_per_K"], "da"),
        stated(&of["theta_K"]["mean"], "theta"),
        input(0.0, number(&of["theta_K"]["cyclic"][1]), "cyclic"),
        stated(&of["as_per_K"], "as"),
        stated(&of["dt_K"], "dt"),
    ];
    estimate(&inputs, |[ls, d, random, systematic, da, theta, cyclic, a, dt]| {
        ls + d + random + systematic - ls * (da * (theta + cyclic) + a * dt)
    })
}

/// The straight line through the readings, each of them a source; their scatter about it is their
/// uncertainty. The row's correlation follows from the uncertainty of a sum.
fn thermometer(row: &Row) {
    let list = |key: &str| -> Vec<f64> {
        row.inputs[key].as_array().expect("a list").iter().map(number).collect()
    };
    let t: Vec<f64> = list("t").iter().map(|t| t - row.number("t0")).collect();
    let b = list("b");
    let fit = |b: &[f64]| -> (f64, f64) {
        let n = t.len() as f64;
        let (t_mean, b_mean) = (t.iter().sum::<f64>() / n, b.iter().sum::<f64>() / n);
        let cross: f64 = t.iter().zip(b).map(|(t, b)| (t - t_mean) * (b - b_mean)).sum();
        let square: f64 = t.iter().map(|t| (t - t_mean) * (t - t_mean)).sum();
        let slope = cross / square;
        (b_mean - slope * t_mean, slope)
    };
    let (y1, y2) = fit(&b);
    let squares: f64 = t.iter().zip(&b).map(|(t, b)| (b - y1 - y2 * t).powi(2)).sum();
    let scatter = (squares / (b.len() - 2) as f64).sqrt();
    let inputs: Vec<Input> =
        b.iter().enumerate().map(|(i, &b)| input(b, scatter, &format!("reading {i}"))).collect();
    let of = |weights: (f64, f64)| {
        let result = |x: &[f64]| {
            let (y1, y2) = fit(x);
            Ok::<_, UncertaintyError>(Ratio::from(weights.0 * y1 + weights.1 * y2))
        };
        let got: Estimate<Ratio> = propagate(&inputs, result).expect("an estimate");
        (got.value.value, got.uncertainty.value)
    };
    let ((y1, s1), (y2, s2)) = (of((1.0, 0.0)), of((0.0, 1.0)));
    let (_, sum) = of((1.0, 1.0));
    let (b30, u30) = of((1.0, row.number("at") - row.number("t0")));
    let r = (sum * sum - s1 * s1 - s2 * s2) / (2.0 * s1 * s2);
    for (key, got) in
        [("y1", y1), ("s1", s1), ("y2", y2), ("s2", s2), ("r", r), ("b30", b30), ("u30", u30)]
    {
        row.check_against(number(&row.expected[key]), got);
    }
}

fn cadmium(row: &Row) -> f64 {
    let of = |key: &str| stated(&row.inputs[key], key);
    let inputs = [of("m_mg"), of("P"), of("V_mL")];
    estimate(&inputs, |[m, p, v]| 1000.0 * m * p / v).value.value
}

fn flask(row: &Row) -> f64 {
    let volume = row.number("V");
    let warming = Bounds::Rectangular.standard(row.number("dT"));
    let inputs = [
        input(volume, Bounds::Triangular.standard(row.number("flask_half_width")), "flask"),
        input(0.0, row.number("repeat"), "filling"),
        input(0.0, warming, "temperature"),
    ];
    let alpha = row.number("alpha");
    estimate(&inputs, |[v, filling, rise]| v + filling + volume * alpha * rise).uncertainty.value
}

/// The standardized hydroxide, and a resistance: products and quotients, a value and its uncertainty.
fn quotient(row: &Row, value: &str, got: &Estimate<Ratio>) {
    row.check_against(number(&row.expected[value]), got.value.value);
    row.check_against(number(&row.expected["u"]), got.uncertainty.value);
}

fn hydroxide(row: &Row) -> Estimate<Ratio> {
    let of = |key: &str| stated(&row.inputs[key], key);
    let inputs = [of("rep"), of("m_g"), of("P"), of("M"), of("V_mL")];
    estimate(&inputs, |[rep, m, p, molar, v]| 1000.0 * rep * m * p / (molar * v))
}

fn resistance(row: &Row) -> Estimate<Ratio> {
    let inputs = [stated(&row.inputs["V"], "V"), stated(&row.inputs["I"], "I")];
    estimate(&inputs, |[v, i]| v / i)
}

fn type_b(row: &Row) -> f64 {
    match row.inputs["dist"].as_str() {
        Some("rectangular") => Bounds::Rectangular.standard(row.number("half_width")),
        Some("triangular") => Bounds::Triangular.standard(row.number("half_width")),
        Some("u-shaped") => Bounds::UShaped.standard(row.number("half_width")),
        other => panic!("{}: no distribution {other:?}", row.id),
    }
}

/// Four rectangular inputs of unit variance: their sum to first order. The interval of the row is that of a
/// Monte Carlo calculation, which the library does not do.
fn sum_of_four(row: &Row) {
    let u = Bounds::Rectangular.standard(3.0_f64.sqrt());
    let inputs = ["a", "b", "c", "d"].map(|name| input(0.0, u, name));
    let got = estimate(&inputs, |x| x.iter().sum());
    row.check_against(number(&row.expected["u"]), got.uncertainty.value);
}

/// The mass calibration with air buoyancy, in mg.
fn buoyancy([reference, difference, air, weight, standard]: [f64; 5]) -> f64 {
    (reference + difference) * (1.0 + (air - 1.2) * (1.0 / weight - 1.0 / standard)) - 100_000.0
}

/// Of a normal distribution the row gives mean and standard deviation, of a rectangular one the bounds.
const BUOYANCY: [&str; 5] = ["mRc_mg", "dmRc_mg", "rho_a", "rho_W", "rho_R"];

fn first_order_buoyancy(row: &Row) -> f64 {
    let inputs = BUOYANCY.map(|key| {
        let of = &row.inputs[key];
        let (one, other) = (number(&of[1]), number(&of[2]));
        match of[0].as_str() {
            Some("N") => input(one, other, key),
            _ => {
                let u = Bounds::Rectangular.standard((other - one) / 2.0);
                input((one + other) / 2.0, u, key)
            }
        }
    });
    estimate(&inputs, buoyancy).uncertainty.value
}

/// The same by Monte Carlo, from a generator with a stated seed (SplitMix64): what first order misses.
fn drawn_buoyancy(row: &Row) -> (f64, f64) {
    const TRIALS: u32 = 1_000_000;
    let mut state = 93_u64;
    let mut uniform = || {
        state = state.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = state;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        ((z ^ (z >> 31)) >> 11) as f64 / (1_u64 << 53) as f64
    };
    let distributions = BUOYANCY.map(|key| {
        let of = &row.inputs[key];
        (of[0] == "N", number(&of[1]), number(&of[2]))
    });
    let (mut sum, mut squares) = (0.0, 0.0);
    for _ in 0..TRIALS {
        let x = distributions.map(|(normal, one, other)| {
            let first = uniform();
            if normal {
                let second = uniform();
                one + other * (-2.0 * (1.0 - first).ln()).sqrt() * (TAU * second).cos()
            } else {
                one + (other - one) * first
            }
        });
        let y = buoyancy(x);
        sum += y;
        squares += y * y;
    }
    let n = f64::from(TRIALS);
    let mean = sum / n;
    (mean, ((squares - n * mean * mean) / (n - 1.0)).sqrt())
}

/// The relative uncertainty of the row's drops, cut where an f64 is only rounding.
fn drops(row: &Row, common: f64, scatter: f64) -> f64 {
    let one = Mass::new::<gram>(0.05);
    let material = Material {
        drop: Some(Drop::Mass(Measured::new(one, one * common))),
        ..Material::new("colorant", Kind::Colorant)
    };
    let taken = [Taken::Drops { count: row.number("n") as u32 }];
    let tools =
        ToolUncertainty { drop_scatter: Ratio::from(scatter), ..ToolUncertainty::default() };
    let mass = dosed_mass(&Dosed { material: &material, taken: &taken, share: 1.0 }, &tools)
        .expect("a mass");
    ((mass.uncertainty / mass.value).value * 1e12).round() / 1e12
}

/// The row's count twice, in water of 1 g/mL.
fn drops_per_ml(row: &Row) -> f64 {
    let count = row.number("drops") as u32;
    let weighing = Counted { count, weight: Mass::new::<gram>(row.number("mL")) };
    let one = PerOne::new(&[weighing; 2], Mass::new::<gram>(0.0)).expect("a drop");
    (1e12 / one.mass.get::<gram>()).round() / 1e12
}

#[test]
fn agrees_with_the_published_rows() {
    let rows = read("uncertainty");
    let by_id = |id: &str| rows.iter().find(|row| row.id == id).expect("a row");
    for row in &rows {
        match row.id.as_str() {
            "h-gum-h1-value" => row.check(end_gauge(row).value.value),
            "h-gum-h1-u" => row.check(end_gauge(row).uncertainty.value),
            "h-gum-h1-dof" => row.check(end_gauge(row).freedom.expect("a number").floor()),
            "h-gum-h1-U99" => {
                let coverage = end_gauge(row).coverage(Ratio::from(0.99)).expect("a factor");
                row.check(coverage.half_width.value);
            }
            "h-gum-h3" => thermometer(row),
            "h-quam-a1-c" => row.check(cadmium(row)),
            "h-quam-a1-uV" => row.check(flask(row)),
            "h-quam-a2" => quotient(row, "c", &hydroxide(row)),
            "h-gtc-ohm" => quotient(row, "R", &resistance(row)),
            "h-typeb-res01" | "h-typeb-res1" => row.check(resolution(row.number("resolution"))),
            id if id.starts_with("h-typeb-") => row.check(type_b(row)),
            "h-tare" => row.check(by_difference(row.number("readability_g"))),
            "h-t95-4" | "h-t95-10" => {
                let level = Ratio::from(row.number("p"));
                row.check(coverage_factor(level, Some(row.number("dof"))).expect("a factor"));
            }
            "h-s1-92" => sum_of_four(row),
            "h-s1-93" => {
                let (mean, deviation) = drawn_buoyancy(row);
                row.check_against(number(&row.expected["dm"]), mean);
                row.check_against(number(&row.expected["u"]), deviation);
            }
            "h-s1-93-gum" => row.check(first_order_buoyancy(by_id("h-s1-93"))),
            "h-n-drops" => row.check(drops(row, row.number("u_rel_common"), 0.0)),
            "h-n-drops-ind" => row.check(drops(row, 0.0, row.number("u_rel_independent"))),
            "h-drop-cal" => row.check(drops_per_ml(row)),
            other => panic!("{other}: nothing is checked against this row"),
        }
    }
}
