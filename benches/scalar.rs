//! Scalar calculations, each next to the same sum in bare `f64`.
//!
//! After criterion's figures comes a table of the ratios, measured in turns. Where the work is
//! arithmetic in uom's types the goal is a ratio of at most 1.1. Reading and converting amounts is
//! exact in fractions, which no bare sum is, and has no such goal.

#![allow(clippy::print_stdout)] // the table is what it is for

use std::hint::black_box;

use criterion::Criterion;
use pourwright::density::{ScoopedDensity, TrueDensity};
use pourwright::material::{Kind, Material};
use pourwright::mix::{MaterialId, Materials, Mix, Phase};
use pourwright::quantity::{
    Amount, Mass, MassDensity, Measurable, Measured, Ratio, System, TemperatureCoefficient,
    ThermodynamicTemperature, Unit, Volume, value_in,
};
use pourwright::salt::{Hook, Salt, SaltLoading, Unsalted};
use pourwright::shot::{Cavity, Melt, Shot};
use pourwright_benches::pair::Pair;

/// SI size of the US cup.
const CUP: f64 = 236.588_236_5e-6;

/// A row of the table.
struct Row {
    name: &'static str,
    /// The ratio that is wanted at most, where one is.
    goal: Option<f64>,
    pair: Pair,
}

/// Benches `ours` and the same sum in bare `f64`.
fn compare<T>(
    criterion: &mut Criterion,
    rows: &mut Vec<Row>,
    (name, goal): (&'static str, Option<f64>),
    mut ours: impl FnMut() -> T,
    mut bare: impl FnMut() -> f64,
) {
    let mut group = criterion.benchmark_group(name);
    group.bench_function("pourwright", |bencher| bencher.iter(&mut ours));
    group.bench_function("bare f64", |bencher| bencher.iter(&mut bare));
    group.finish();
    rows.push(Row { name, goal, pair: Pair::measure(ours, bare) });
}

/// Arithmetic in uom's types.
const fn typed(name: &'static str) -> (&'static str, Option<f64>) {
    (name, Some(1.1))
}

const fn exact(name: &'static str) -> (&'static str, Option<f64>) {
    (name, None)
}

fn main() {
    let mut criterion = Criterion::default().configure_from_args();
    let mut rows = Vec::new();
    amounts(&mut criterion, &mut rows);
    mix(&mut criterion, &mut rows);
    salt(&mut criterion, &mut rows);
    shot(&mut criterion, &mut rows);
    criterion.final_summary();
    println!("{:<34} {:>10} {:>10} {:>7}  goal", "", "pourwright", "bare f64", "ratio");
    for Row { name, goal, pair } in rows {
        let goal = goal.map(|goal| format!("{goal}")).unwrap_or_default();
        let (ours, bare, ratio) = (pair.ours, pair.peer, pair.ratio());
        println!("{name:<34} {ours:>7.1} ns {bare:>7.1} ns {ratio:>7.2}  {goal}");
    }
}

fn amounts(criterion: &mut Criterion, rows: &mut Vec<Row>) {
    let system = System::UsCustomary;
    compare(
        criterion,
        rows,
        exact("parse an amount"),
        || Amount::parse(black_box("1 1/4 cup")),
        || black_box("1.25").parse::<f64>().map_or(f64::NAN, |cups| cups * CUP),
    );
    let amount = Amount::parse("1 1/4 cup").expect("an amount");
    compare(
        criterion,
        rows,
        exact("convert an amount to a quantity"),
        || black_box(&amount).to::<Volume>(black_box(system)),
        || black_box(1.25) * black_box(CUP),
    );
    let volume = Volume::from_si(3e-4);
    compare(
        criterion,
        rows,
        exact("convert a quantity to a unit"),
        || value_in(black_box(volume), black_box(Unit::CUP), black_box(system)),
        || black_box(3e-4) / black_box(CUP),
    );
}

/// A material of the bare mix.
#[derive(Clone, Copy)]
struct BareMaterial {
    density: f64,
    expansion: f64,
}

/// kg of each of eight materials, and their kg/m³ and 1/K.
const EIGHT: [(f64, BareMaterial); 8] = [
    (0.2437, BareMaterial { density: 1042.0, expansion: 6.5e-4 }),
    (0.0050, BareMaterial { density: 1020.0, expansion: 7.0e-4 }),
    (0.0098, BareMaterial { density: 984.0, expansion: 7.4e-4 }),
    (0.0720, BareMaterial { density: 2165.0, expansion: 1.2e-4 }),
    (0.0014, BareMaterial { density: 1050.0, expansion: 7.0e-4 }),
    (0.0004, BareMaterial { density: 2820.0, expansion: 3.0e-5 }),
    (0.0013, BareMaterial { density: 1390.0, expansion: 1.8e-4 }),
    (0.0003, BareMaterial { density: 980.0, expansion: 8.0e-4 }),
];

const SHOT_AT: f64 = 443.0;

fn mix(criterion: &mut Criterion, rows: &mut Vec<Row>) {
    let material = |(number, (_, bare)): (usize, &(f64, BareMaterial))| Material {
        density: Some(Measured::exact(MassDensity::from_si(bare.density))),
        expansion: Some(Measured::exact(TemperatureCoefficient::from_si(bare.expansion))),
        ..Material::new(format!("material {number}"), Kind::Other)
    };
    let materials = Materials::new(EIGHT.iter().enumerate().map(material).collect());
    let mut mix = Mix::new();
    for (id, (mass, _)) in (0..).map(MaterialId).zip(EIGHT) {
        mix.add(id, Mass::from_si(mass)).expect("a mass");
    }
    let at = ThermodynamicTemperature::from_si(SHOT_AT);
    let masses: Vec<(usize, f64)> = EIGHT.iter().map(|(mass, _)| *mass).enumerate().collect();
    let table: Vec<BareMaterial> = EIGHT.iter().map(|(_, bare)| *bare).collect();
    compare(
        criterion,
        rows,
        typed("mix density of 8 materials"),
        || black_box(&mix).density(black_box(&materials), Phase::Fused, black_box(at), 0.01),
        || bare_density(black_box(&masses), black_box(&table), black_box(SHOT_AT), 0.01),
    );
}

/// ρ = Σm / Σ (m/ρ)(1 + α(T − 20 °C)) · (1 − φ), the materials in a table of their own, NaN for one
/// that is not there.
#[inline(never)]
fn bare_density(masses: &[(usize, f64)], table: &[BareMaterial], at: f64, voids: f64) -> f64 {
    let rise = at - 293.15;
    let mut volume = 0.0;
    for (material, mass) in masses {
        let Some(material) = table.get(*material) else { return f64::NAN };
        volume += mass / material.density * (1.0 + material.expansion * rise);
    }
    let mass = masses.iter().fold(0.0, |sum, (_, mass)| sum + mass);
    mass / volume * (1.0 - voids)
}

/// The mix that is salted, as bare numbers: kg, m³, kg/m³.
#[derive(Clone, Copy)]
struct BareUnsalted {
    base_mass: f64,
    mass: f64,
    volume: f64,
    salt: f64,
    voids: f64,
    most_solids: f64,
}

const UNSALTED: BareUnsalted = BareUnsalted {
    base_mass: 0.2437,
    mass: 0.2500,
    volume: 2.40e-4,
    salt: 2165.0,
    voids: 0.01,
    most_solids: 0.3,
};

fn salt(criterion: &mut Criterion, rows: &mut Vec<Row>) {
    let unsalted = Unsalted {
        base_mass: Mass::from_si(UNSALTED.base_mass),
        base_volume: Volume::from_si(CUP),
        mass: Mass::from_si(UNSALTED.mass),
        volume: Volume::from_si(UNSALTED.volume),
        hot_volume: Volume::from_si(UNSALTED.volume * 1.09),
        shot_temperature: ThermodynamicTemperature::from_si(SHOT_AT),
        voids: Ratio::from(UNSALTED.voids),
        salt: Salt {
            true_density: TrueDensity::new(MassDensity::from_si(UNSALTED.salt)).expect("a density"),
            scooped_density: Some(
                ScoopedDensity::new(MassDensity::from_si(1220.0)).expect("a density"),
            ),
            expansion: TemperatureCoefficient::from_si(1.2e-4),
        },
        softener: None,
        most_solids: Ratio::from(UNSALTED.most_solids),
        cavity: None,
        hook: Hook::default(),
    };
    let wanted = 1150.0;
    let loading = SaltLoading::FinishedDensity(MassDensity::from_si(wanted));
    compare(
        criterion,
        rows,
        typed("salt for a density"),
        || black_box(&unsalted).ratio(black_box(loading)),
        || bare_salt(black_box(&UNSALTED), black_box(wanted)),
    );
}

/// m_s/m_base for a density in reach, NaN beyond: m_s = (ρ′V₀ − M₀)/(1 − ρ′/ρ_s).
#[inline(never)]
fn bare_salt(mix: &BareUnsalted, density: f64) -> f64 {
    let most = (mix.most_solids / (1.0 - mix.most_solids) * mix.volume * mix.salt)
        .min(10.0 * mix.base_mass);
    let of = |salt: f64| (mix.mass + salt) / (mix.volume + salt / mix.salt) * (1.0 - mix.voids);
    if !(of(0.0)..=of(most)).contains(&density) {
        return f64::NAN;
    }
    let solid = density / (1.0 - mix.voids);
    let salt = (solid * mix.volume - mix.mass) / (1.0 - solid / mix.salt);
    salt.min(most) / mix.base_mass
}

fn shot(criterion: &mut Criterion, rows: &mut Vec<Row>) {
    let cavities = [
        Cavity { volume: Volume::from_si(8.8e-6), count: 2 },
        Cavity { volume: Volume::from_si(4.6e-6), count: 4 },
    ];
    let shot = Shot {
        cavities: &cavities,
        share: Ratio::from(1.0),
        sprue: Volume::from_si(7e-6),
        topped: Mass::default(),
        feed: Ratio::from(0.4),
        melt: Melt {
            hot: MassDensity::from_si(950.0),
            cold: MassDensity::from_si(1040.0),
            voids: Ratio::from(0.01),
        },
    };
    let bare = BareShot {
        cavities: vec![(8.8e-6, 2), (4.6e-6, 4)],
        share: 1.0,
        sprue: 7e-6,
        topped: 0.0,
        feed: 0.4,
        hot: 950.0,
        cold: 1040.0,
        voids: 0.01,
    };
    compare(
        criterion,
        rows,
        typed("shot weight"),
        || black_box(&shot).masses().map(|masses| masses.fill + masses.pieces + masses.sprue),
        || bare_shot(black_box(&bare)),
    );
}

struct BareShot {
    cavities: Vec<(f64, u32)>,
    share: f64,
    sprue: f64,
    topped: f64,
    feed: f64,
    hot: f64,
    cold: f64,
    voids: f64,
}

/// Fill, pieces and sprue of a shot, added up.
#[inline(never)]
fn bare_shot(shot: &BareShot) -> f64 {
    let cavities =
        shot.cavities.iter().fold(0.0, |sum, (volume, count)| sum + volume * f64::from(*count));
    let cavities = cavities * shot.share;
    let density = shot.hot * (1.0 - shot.voids);
    let filled = |feed: f64| (shot.hot + feed * (shot.cold - shot.hot)) * (1.0 - shot.voids);
    let (in_cavities, in_sprue) = (cavities * density, shot.sprue * density);
    let available = in_sprue + shot.topped;
    let wanted = cavities * (filled(shot.feed) - density);
    let fed = if wanted > available { available } else { wanted };
    let fill = in_cavities + in_sprue + shot.topped;
    fill + (in_cavities + fed) + (available - fed)
}
