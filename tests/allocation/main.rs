//! Scalar calculations do not allocate: a spreadsheet calls them a million times.

mod counter;

use std::hint::black_box;

use counter::counted;
use pourwright::batch::{self, Injector, Marks, Rejects, Run, Wanted};
use pourwright::density::{ScoopedDensity, TrueDensity};
use pourwright::flake::{Alike, Cut, CutShape, Flake};
use pourwright::material::{Kind, Material};
use pourwright::mix::{MaterialId, Materials, Mix, Phase};
use pourwright::process::atmosphere::{GeometricAltitude, StationPressure};
use pourwright::process::degas::{EntrainedAir, Vacuum};
use pourwright::process::gauge::{Dial, VacuumReading};
use pourwright::process::heat::{Load, Oven, Timing};
use pourwright::process::seawater::{Salinity, Water};
use pourwright::process::sink::{Body, Shape as Falling};
use pourwright::process::vapor;
use pourwright::quantity::{
    Amount, Length, Mass, MassDensity, Measurable, Measured, Pressure, Ratio, SpecificHeatCapacity,
    System, TemperatureCoefficient, ThermodynamicTemperature, Time, Unit, Velocity, Volume,
    value_in,
};
use pourwright::salt::{Hook, PieceCavity, Salt, SaltForm, SaltSoftener, Unsalted};
use pourwright::shot::{Cavity, Melt, Shot};
use pourwright::softener::{
    Hardness, HardnessCurve, HardnessPoint, SaltedCurve, SaltedPoint, Scale,
};
use pourwright::uom::si::f64::HeatCapacity;
use pourwright::water;

fn g(grams: f64) -> Mass {
    Mass::from_si(grams / 1e3)
}

fn ml(milliliters: f64) -> Volume {
    Volume::from_si(milliliters / 1e6)
}

fn per_ml(grams: f64) -> MassDensity {
    MassDensity::from_si(grams * 1e3)
}

fn mm(millimeters: f64) -> Length {
    Length::from_si(millimeters / 1e3)
}

fn celsius(degrees: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::from_si(degrees + 273.15)
}

fn expansion(per_kelvin: f64) -> TemperatureCoefficient {
    TemperatureCoefficient::from_si(per_kelvin)
}

fn solid(density: f64) -> TrueDensity {
    TrueDensity::new(per_ml(density)).unwrap()
}

fn scooped(density: f64) -> ScoopedDensity {
    ScoopedDensity::new(per_ml(density)).unwrap()
}

/// The answer of a calculation, which must succeed without allocating.
#[track_caller]
fn without<T, E: std::fmt::Debug>(run: impl FnOnce() -> Result<T, E>) -> T {
    let (answer, allocations) = counted(run);
    let answer = answer.unwrap();
    assert_eq!(allocations, 0);
    answer
}

#[test]
fn the_counter_counts() {
    assert_eq!(counted(|| black_box(Box::new(1.0))).1, 1);
    assert_eq!(counted(|| black_box(vec![0_u8; 64])).1, 1);
    let (_, grown) = counted(|| {
        let mut list = black_box(vec![1]);
        list.push(2);
        black_box(list)
    });
    assert_eq!(grown, 2);
    assert_eq!(counted(|| black_box(1.0) + black_box(2.0)).1, 0);
}

#[test]
fn amounts() {
    let system = System::UsCustomary;
    let cup = Amount::parse("1 1/4 cup").unwrap();
    without(|| cup.to::<Volume>(system));
    without(|| cup.in_unit(Unit::TSP, system));
    let hot = Amount::parse("330 °F").unwrap();
    without(|| hot.to::<ThermodynamicTemperature>(system));
    let density = Amount::parse("1.03 g/mL").unwrap();
    without(|| density.to::<MassDensity>(system));
    without(|| value_in(ml(300.0), Unit::CUP, system));
    without(|| value_in(celsius(165.0), Unit::FAHRENHEIT, system));
}

fn unsalted() -> Unsalted {
    Unsalted {
        base_mass: g(243.7),
        base_volume: ml(236.6),
        mass: g(250.0),
        volume: ml(240.0),
        hot_volume: ml(262.0),
        shot_temperature: celsius(170.0),
        voids: Ratio::from(0.01),
        salt: Salt {
            true_density: solid(2.165),
            scooped_density: Some(scooped(1.22)),
            expansion: expansion(1.2e-4),
        },
        softener: Some(SaltSoftener {
            per_salt: Ratio::from(0.1),
            density: solid(0.98),
            expansion: expansion(7.5e-4),
        }),
        most_solids: Ratio::from(0.3),
        cavity: Some(PieceCavity { volume: ml(9.5), feed: Ratio::from(0.5) }),
        hook: Hook { mass: g(1.5), volume: ml(0.2) },
    }
}

#[test]
fn salt_in_every_form_and_back() {
    let mix = unsalted();
    for form in [
        SaltForm::Scooped,
        SaltForm::PerVolume,
        SaltForm::OfBase,
        SaltForm::OfFinished,
        SaltForm::FinishedDensity,
        SaltForm::PieceMass,
        SaltForm::SinkDensity,
    ] {
        let loading = without(|| mix.loading(Ratio::from(0.2), form));
        without(|| mix.ratio(loading));
        without(|| mix.reach(form));
    }
}

#[test]
fn softener_curves() {
    let shore = |reading| Hardness { reading, scale: Scale::Shore00 };
    let point =
        |ratio, reading| HardnessPoint { ratio: Ratio::from(ratio), hardness: shore(reading) };
    let points = [point(0.0, 60.0), point(0.1, 45.0), point(0.2, 35.0), point(0.4, 25.0)];
    let curve = without(|| HardnessCurve::new(&points));
    without(|| curve.hardness(Ratio::from(0.15)));
    without(|| curve.ratio(shore(40.0)));
    let salted =
        |salt, softener| SaltedPoint { salt: Ratio::from(salt), softener: Ratio::from(softener) };
    let points = [salted(0.0, 0.0), salted(0.2, 0.02), salted(0.4, 0.06)];
    let curve = without(|| SaltedCurve::new(&points));
    without(|| curve.softener(Ratio::from(0.3)));
}

#[test]
fn shots_and_batches() {
    let cavities = [Cavity { volume: ml(8.8), count: 2 }, Cavity { volume: ml(4.6), count: 4 }];
    let melt = Melt { hot: per_ml(0.95), cold: per_ml(1.04), voids: Ratio::from(0.01) };
    let shot = Shot {
        cavities: &cavities,
        share: Ratio::from(1.0),
        sprue: ml(7.0),
        topped: g(0.0),
        feed: Ratio::from(0.4),
        melt,
    };
    let mass = without(|| shot.masses());
    without(|| melt.piece_range(ml(8.8)));

    let wanted = [Wanted { pieces: 40, cavities: 2 }, Wanted { pieces: 90, cavities: 4 }];
    let rejects = Rejects { rate: Ratio::from(0.03), confidence: Ratio::from(0.9) };
    let shots = without(|| batch::shots(&wanted, Some(rejects)));
    let injector = Injector { holds: ml(118.0), keeps: ml(4.0) };
    let loads = without(|| injector.loads(shots, mass.fill, melt.shot_density()));
    let run = Run {
        shots,
        loads,
        fill: mass.fill,
        sprue: mass.sprue,
        returned: Ratio::from(0.5),
        injector_keeps: g(4.0),
        cleanings: 1,
        film: g(5.0),
        heel: g(10.0),
    };
    let need = without(|| run.need());
    let marks = Marks::Every { step: ml(59.147), capacity: ml(3000.0) };
    without(|| marks.measure(need.total, Ratio::from(0.9), per_ml(1.03)));
}

#[test]
fn mixes() {
    let material = |name: &str, density: f64| Material {
        density: Some(Measured::exact(per_ml(density))),
        expansion: Some(Measured::exact(expansion(7e-4))),
        ..Material::new(name, Kind::Other)
    };
    let materials = Materials::new(vec![material("a", 1.03), material("b", 2.165)]);
    let mut mix = Mix::new();
    mix.add(MaterialId(0), g(240.0)).unwrap();
    mix.add(MaterialId(1), g(70.0)).unwrap();
    without(|| mix.density(&materials, Phase::Fused, celsius(170.0), 0.01));
    without(|| mix.volume_fraction(MaterialId(1), &materials, Phase::Liquid));
}

#[test]
fn water_and_sinking() {
    let pressure = Pressure::from_si(101_325.0);
    without(|| water::density(celsius(22.0)));
    without(|| water::volume_weighed(g(10.82), celsius(22.0), pressure));
    let sea = without(|| Water::new(celsius(12.0), Salinity::Practical(35.0)));
    let body = Body {
        volume: ml(9.5),
        hook: Hook { mass: g(1.5), volume: ml(0.2) },
        shape: Falling::Stick { diameter: mm(10.0), length: mm(120.0) },
        own_drag: None,
    };
    let fall = without(|| body.fall(per_ml(1.15), &sea));
    without(|| body.density_for(Velocity::from_si(fall.speed.si()), &sea));
    without(|| fall.time_to(Length::from_si(2.0)));
}

#[test]
fn degassing() {
    let altitude = without(|| GeometricAltitude::new(Length::from_si(640.0)));
    let local = StationPressure::standard(altitude);
    let reading = without(|| VacuumReading::new(Pressure::from_si(80_000.0)));
    let chamber = without(|| reading.absolute(local, Dial::default()));
    let vapor = without(|| vapor::of_water(celsius(20.0)));
    let vacuum = without(|| Vacuum::new(local, chamber.absolute, vapor));
    let air = without(|| EntrainedAir::share(Ratio::from(0.05)));
    without(|| vacuum.swollen(ml(400.0), air));
}

#[test]
fn heating() {
    let vessel = HeatCapacity::default();
    let load = |mass| Load::new(g(mass), SpecificHeatCapacity::from_si(1900.0), vessel);
    let small = without(|| load(250.0));
    let timing = |load, seconds| Timing {
        load,
        setting: Ratio::from(1.0),
        start: celsius(20.0),
        end: celsius(170.0),
        duration: Time::from_si(seconds),
    };
    let timings = [timing(small, 180.0), timing(load(500.0).unwrap(), 340.0)];
    let oven = without(|| Oven::from_timings(&timings));
    without(|| oven.time(load(400.0).unwrap(), celsius(20.0), celsius(165.0)));
}

#[test]
fn flakes() {
    let cut = |size| Cut::new(mm(size), CutShape::Hex);
    let coarse = without(|| cut(0.9));
    let fine = without(|| cut(0.4));
    let flake = |cut| Flake::new(cut, mm(0.05), solid(1.39), Some(scooped(0.55)));
    let coarse = without(|| flake(coarse));
    let fine = without(|| flake(fine));
    without(|| coarse.particles(g(1.0)));
    without(|| coarse.area(g(1.0)));
    without(|| coarse.scoop(g(1.0)));
    without(|| coarse.swap(g(1.0), &fine, Alike::Count));
}
