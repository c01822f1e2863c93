//! A calculation of the table against the typed functions of the core, with random arguments made from the table.

use std::vec;

use proptest::prelude::*;
use proptest::strategy::ValueTree;
use proptest::test_runner::TestRunner;

use super::*;
use crate::batch::{Injector, Rejects, Wanted, shots};
use crate::calibrate::{Counted, PerOne};
use crate::color::difference::ciede2000;
use crate::color::lab::Lab;
use crate::density::TrueDensity;
use crate::fault::Diagnose;
use crate::mix::density_of_parts;
use crate::process::atmosphere::{GeometricAltitude, SeaLevelPressure, StationPressure};
use crate::process::clock::{Hot, ShotSeries, every, heats};
use crate::process::heat::{
    Cooling, Load, Oven, Precautions, Reach, SpecificHeat, ThermometerMarks, Timing, Window,
};
use crate::process::history::{Kinetics, Reading};
use crate::process::seawater::{Salinity, Water};
use crate::process::settling::{Grain, Suspension};
use crate::process::shot_cooling::{Diffusivity, Point, Section, SectionShape, ShotCooling};
use crate::process::sink::{Body, Shape};
use crate::quantity::{
    HeatCapacity, Length, Mass, MassDensity, Measurable, Ratio, SpecificHeatCapacity,
    ThermodynamicTemperature, Time, Volume,
};
use crate::salt::{Hook, PieceCavity, Salt, SaltLoading, SaltSoftener, Unsalted};
use crate::shot::{Cavity, Melt, Shot};
use crate::softener::{Hardness, HardnessCurve, HardnessPoint, SaltedCurve, SaltedPoint, Scale};

/// The arguments of a call, by parameter.
struct Given<'a> {
    calculation: &'static Calculation,
    arguments: &'a [Argument<'static>],
}

/// The code of any error.
#[derive(Debug)]
struct Code(&'static str);

impl<E: Diagnose> From<E> for Code {
    fn from(error: E) -> Self {
        Self(error.code())
    }
}

impl Given<'_> {
    fn argument(&self, parameter: Parameter) -> Argument<'static> {
        let mut fields = self.calculation.parameters.iter();
        let place = fields.position(|field| field.parameter == parameter);
        place.map_or(Argument::Omitted, |place| self.arguments[place])
    }

    fn is_given(&self, parameter: Parameter) -> bool {
        self.argument(parameter) != Argument::Omitted
    }

    fn option<Q: Measurable>(&self, parameter: Parameter) -> Option<Q> {
        match self.argument(parameter) {
            Argument::Number(plain) => Some(Q::from_si(parameter.unit().to_si(plain))),
            _ => None,
        }
    }

    /// The quantity, or its default.
    fn get<Q: Measurable>(&self, parameter: Parameter) -> Q {
        self.option(parameter).unwrap_or(Q::from_si(parameter.default_si()))
    }

    fn pure(&self, parameter: Parameter) -> f64 {
        self.get::<Ratio>(parameter).value
    }

    fn count(&self, parameter: Parameter) -> u32 {
        self.pure(parameter) as u32
    }

    fn rows<const N: usize>(&self, parameter: Parameter) -> &'static [[f64; N]] {
        match self.argument(parameter) {
            Argument::Numbers(numbers) => numbers.as_chunks().0,
            _ => &[],
        }
    }

    fn word<T: Copy>(&self, parameter: Parameter, all: &[T]) -> Option<T> {
        let Argument::Text(word) = self.argument(parameter) else { return None };
        parameter.words().iter().position(|other| *other == word).map(|place| all[place])
    }
}

fn si<Q: Measurable>(parameter: Parameter, plain: f64) -> Q {
    Q::from_si(parameter.unit().to_si(plain))
}

fn grams(mass: Mass) -> f64 {
    PlainUnit::Gram.from_si(mass.si())
}

fn milliliters(volume: Volume) -> f64 {
    PlainUnit::Milliliter.from_si(volume.si())
}

fn g_per_ml(density: MassDensity) -> f64 {
    PlainUnit::GramPerMilliliter.from_si(density.si())
}

fn celsius(temperature: ThermodynamicTemperature) -> f64 {
    PlainUnit::Celsius.from_si(temperature.si())
}

fn or_nan(number: Option<f64>) -> f64 {
    number.unwrap_or(f64::NAN)
}

fn melt(given: &Given<'_>) -> Melt {
    let cold = given.get(Parameter::ColdDensity);
    Melt {
        hot: given.option(Parameter::HotDensity).unwrap_or(cold),
        cold,
        voids: given.get(Parameter::Voids),
    }
}

fn unsalted(given: &Given<'_>) -> Result<Unsalted, Code> {
    let salt = TrueDensity::new(given.get(Parameter::SaltDensity))?.get();
    let mut salt = Salt::of_density(salt)?.with_expansion(given.get(Parameter::SaltExpansion));
    if let Some(scooped) = given.option(Parameter::SaltAsScooped) {
        salt = salt.with_as_scooped(scooped)?;
    }
    let (volume, density) = (given.get(Parameter::BaseVolume), given.get(Parameter::BaseDensity));
    let mut mix = Unsalted::of_base(volume, density, salt)
        .with_voids(given.get(Parameter::Voids))
        .with_most_solids(given.get(Parameter::MostSolids))
        .with_hook(hook(given));
    if let (Some(mass), Some(volume)) =
        (given.option(Parameter::MixMass), given.option(Parameter::MixVolume))
    {
        mix = mix.with_mix(mass, volume);
    }
    mix.hot_volume = given.option(Parameter::HotVolume).unwrap_or(mix.volume);
    mix.shot_temperature = given.get(Parameter::ShotTemperature);
    if let Some(density) = given.option(Parameter::SoftenerDensity) {
        mix = mix.with_softener(SaltSoftener {
            per_salt: given.get(Parameter::SoftenerPerSalt),
            density: TrueDensity::new(density)?,
            expansion: given.get(Parameter::SoftenerExpansion),
        });
    }
    if let Some(volume) = given.option(Parameter::CavityVolume) {
        mix = mix.with_cavity(PieceCavity { volume, feed: given.get(Parameter::Feed) });
    }
    Ok(mix)
}

fn hook(given: &Given<'_>) -> Hook {
    Hook { mass: given.get(Parameter::HookMass), volume: given.get(Parameter::HookVolume) }
}

fn body(given: &Given<'_>) -> Result<(Body, Water), Code> {
    let diameter: Length = given.get(Parameter::Diameter);
    let shape = match given.option(Parameter::Length) {
        Some(length) => Shape::Stick { diameter, length },
        None => Shape::Ball { diameter },
    };
    let salinity = match given.option::<Ratio>(Parameter::SalinityPractical) {
        Some(practical) => Salinity::Practical(practical.value),
        None => Salinity::Absolute(given.get(Parameter::SalinityAbsolute)),
    };
    let water = Water::new(given.get(Parameter::WaterTemperature), salinity)?;
    Ok((Body::new(given.get(Parameter::PieceVolume), shape).with_hook(hook(given)), water))
}

fn oven(given: &Given<'_>) -> Result<(Oven, Load), Code> {
    let own: SpecificHeatCapacity = given.get(Parameter::SpecificHeat);
    let timed = given.option(Parameter::TimedSpecificHeat).unwrap_or(own);
    let rise = given.get(Parameter::SpecificHeatRise);
    let vessel = match given.option::<Mass>(Parameter::VesselMass) {
        Some(mass) => mass * given.get::<SpecificHeatCapacity>(Parameter::VesselSpecificHeat),
        None => HeatCapacity::default(),
    };
    let setting = given.option(Parameter::Setting).unwrap_or(Ratio::from(1.0));
    let load = Load::new(given.get(Parameter::PotMass), SpecificHeat::new(own, rise)?, vessel)?;
    if !given.is_given(Parameter::Timings) {
        return Ok((Oven::rated(given.get(Parameter::OvenPower), setting)?, load));
    }
    let mut timings = Vec::new();
    for &[mass, from, to, time] in given.rows::<4>(Parameter::Timings) {
        let mass = si(Parameter::TimedMass, mass);
        timings.push(Timing {
            load: Load::new(mass, SpecificHeat::new(timed, rise)?, vessel)?,
            setting,
            start: si(Parameter::TimedFrom, from),
            end: si(Parameter::TimedTo, to),
            duration: si(Parameter::TimedTime, time),
        });
    }
    Ok((Oven::from_timings(&timings)?, load))
}

fn points(given: &Given<'_>) -> Vec<HardnessPoint> {
    let scale = given.word(Parameter::Scale, Scale::ALL).unwrap();
    let point = |&[ratio, reading]: &[f64; 2]| HardnessPoint {
        ratio: Ratio::from(ratio),
        hardness: Hardness { reading, scale },
    };
    given.rows(Parameter::Points).iter().map(point).collect()
}

/// The results by the typed functions, as plain numbers; `None` of a calculation that is not compared here: its plain
/// form is all that there is (`price`, `mix_share`), takes a text, or gives words.
fn typed(name: &str, given: &Given<'_>) -> Option<Result<Vec<f64>, Code>> {
    use Parameter as P;
    let answer = || -> Result<Option<Vec<f64>>, Code> {
        Ok(Some(match name {
            "mass_of_volume" => {
                let density = TrueDensity::new(given.get(P::Density))?;
                vec![grams(density.mass_of(given.get(P::Volume)))]
            }
            "volume_of_mass" => {
                let density = TrueDensity::new(given.get(P::Density))?;
                vec![milliliters(density.volume_of(given.get(P::Mass)))]
            }
            "density_of_parts" => {
                let rows = given.rows::<2>(P::Parts).iter();
                let parts = rows
                    .map(|&[mass, density]| (si(P::PartMass, mass), si(P::PartDensity, density)));
                vec![g_per_ml(density_of_parts(parts, given.pure(P::Voids))?)]
            }
            "piece_mass" => {
                let (melt, volume) = (melt(given), given.get(P::CavityVolume));
                let piece = melt.piece(volume, given.get(P::Feed))?;
                let range = match given.is_given(P::Feed) {
                    true => piece..=piece,
                    false => melt.piece_range(volume)?,
                };
                vec![grams(piece), grams(*range.start()), grams(*range.end())]
            }
            "shot_fill" => {
                let volume = given.get(P::CavityVolume);
                let cavities = [Cavity { volume, count: given.count(P::Cavities) }];
                let share = given.option(P::LayerShare).unwrap_or(Ratio::from(1.0));
                let shot = Shot::new(&cavities, melt(given))
                    .with_share(share)
                    .with_sprue(given.get(P::SprueVolume))
                    .with_topped(given.get(P::ToppedMass))
                    .with_feed(given.get(P::Feed));
                let found = shot.masses()?;
                let (least, most) = match given.is_given(P::Feed) {
                    true => (found, found),
                    false => (
                        shot.with_feed(Ratio::from(0.0)).masses()?,
                        shot.with_feed(Ratio::from(1.0)).masses()?,
                    ),
                };
                let mut all =
                    [found.fill, found.pieces, found.sprue, found.missing].map(grams).to_vec();
                all.extend([&found, &least, &most].map(|shot| grams(shot.piece(volume))));
                all.push(found.feed.value);
                all
            }
            "shots" => {
                let (pieces, cavities) = (given.count(P::Pieces), given.count(P::Cavities));
                let rejects =
                    Rejects { rate: given.get(P::Rejects), confidence: given.get(P::Confidence) };
                let shots = shots(&[Wanted { pieces, cavities }], Some(rejects))?;
                [shots, shots.saturating_mul(cavities)].map(f64::from).to_vec()
            }
            "injector_loads" => {
                let injector = Injector {
                    holds: given.get(P::InjectorCapacity),
                    keeps: given.get(P::InjectorResidue),
                };
                let (shot, density) = (given.get(P::ShotMass), given.get(P::ShotDensity));
                let loads = injector.loads(given.count(P::Shots), shot, density)?;
                [loads.loads, loads.shots_per_load, loads.shots_in_last].map(f64::from).to_vec()
            }
            "salt_for_density" => {
                let loading = SaltLoading::FinishedDensity(given.get(P::FinishedDensity));
                vec![grams(unsalted(given)?.salt_mass(loading)?)]
            }
            "sink_rate" if !given.is_given(P::DropTime) => {
                let (body, water) = body(given)?;
                let (density, unsure) =
                    (given.get(P::PieceDensity), given.get(P::DensityUncertainty));
                let fall = body.fall_within(density, unsure, &water)?;
                let depth = given.option(P::Depth);
                let time = depth.map(|depth| fall.time_to(depth)).transpose()?;
                let speeds = [fall.speed, fall.trust.slowest, fall.trust.fastest];
                let mut all =
                    speeds.map(|it| PlainUnit::CentimeterPerSecond.from_si(it.si())).to_vec();
                // In the place of a word.
                all.push(f64::NAN);
                all.extend([
                    fall.reynolds,
                    fall.drag_coefficient,
                    or_nan(time.map(Measurable::si)),
                ]);
                all
            }
            "density_for_sink_rate" if !given.is_given(P::DropTime) => {
                let (body, water) = body(given)?;
                vec![g_per_ml(body.density_for(given.get(P::SinkRate), &water)?)]
            }
            "hardness" => {
                let points = points(given);
                vec![HardnessCurve::new(&points)?.hardness(given.get(P::SoftenerRatio))?.reading]
            }
            "softener_ratio" => {
                let (points, reading) = (points(given), given.pure(P::Hardness));
                let curve = HardnessCurve::new(&points)?;
                vec![curve.ratio(Hardness { reading, scale: curve.scale() })?.value]
            }
            "salted_softener" => {
                let point = |&[salt, softener]: &[f64; 2]| SaltedPoint {
                    salt: Ratio::from(salt),
                    softener: Ratio::from(softener),
                };
                let points: Vec<_> = given.rows(P::SaltedPoints).iter().map(point).collect();
                vec![SaltedCurve::new(&points)?.softener(given.get(P::SaltOfBase))?.value]
            }
            "water_density" => {
                vec![g_per_ml(crate::water::density(given.get(P::WaterTemperature))?)]
            }
            "cavity_of_water" => vec![milliliters(crate::water::volume_weighed(
                given.get(P::WaterMass),
                given.get(P::WaterTemperature),
                given.get(P::AirPressure),
            )?)],
            "standard_pressure" => {
                let altitude = GeometricAltitude::new(given.get(P::Altitude))?;
                let pressure = StationPressure::standard(altitude).get();
                vec![PlainUnit::Kilopascal.from_si(pressure.si())]
            }
            "station_pressure" => {
                let reported = SeaLevelPressure::reported(given.get(P::ReportedPressure))?;
                let altitude = GeometricAltitude::new(given.get(P::Altitude))?;
                vec![PlainUnit::Kilopascal.from_si(reported.at(altitude).get().si())]
            }
            "color_difference" => {
                let lab = |l, a, b| Lab::new(given.pure(l), given.pure(a), given.pure(b));
                let one = lab(P::Lightness, P::GreenRed, P::BlueYellow)?;
                let other = lab(P::OtherLightness, P::OtherGreenRed, P::OtherBlueYellow)?;
                vec![ciede2000(&one, &other)]
            }
            "equivalent_time" => {
                let reading = |&[at, temperature]: &[f64; 2]| Reading {
                    at: si(P::ReadingTime, at),
                    temperature: si(P::ReadingTemperature, temperature),
                };
                let readings: Vec<_> = given.rows(P::Readings).iter().map(reading).collect();
                let energy = given.get(P::ActivationEnergy);
                let kinetics = Kinetics::new(energy, given.get(P::ReferenceTemperature), "a test")?;
                vec![kinetics.equivalent_time(&readings)?.si()]
            }
            "drop_of_weighings" => {
                let counted = |&[count, weight]: &[f64; 2]| Counted {
                    count: count as u32,
                    weight: si(P::WeighedMass, weight),
                };
                let weighings: Vec<_> = given.rows(P::DropsWeighed).iter().map(counted).collect();
                let one = PerOne::new(&weighings, given.get(P::BalanceReadability))?;
                one.drop()?;
                [one.mass, one.uncertainty, one.scatter].map(grams).to_vec()
            }
            "heat_time" => {
                let (oven, load) = oven(given)?;
                let (from, to) = (given.get(P::HeatedFrom), given.get(P::HeatedTo));
                let heating = oven.time(load, from, to)?;
                let beyond = match heating.reach {
                    Reach::Within => f64::NAN,
                    Reach::Beyond { factor, .. } => factor.value,
                };
                vec![heating.time.si(), heating.uncertainty.si(), oven.power(load).si(), beyond]
            }
            "next_burst" => {
                let (oven, load) = oven(given)?;
                let (bottom, top) = (given.get(P::WindowBottom), given.get(P::WindowTop));
                let window = match given.option(P::Aim) {
                    Some(aim) => Window::new(bottom, aim, top)?,
                    None => Window::around(bottom, top)?,
                };
                let system = given.word(P::Measures, &crate::quantity::System::ALL);
                let precautions = Precautions {
                    thermometer: given.get(P::Thermometer),
                    marks: ThermometerMarks::of(
                        system.unwrap_or(crate::quantity::System::UsCustomary),
                    ),
                    step: given.get(P::BurstStep),
                    longest: given.get(P::LongestBurst),
                    turn: given.get(P::OvenTurn),
                };
                let reading = given.get(P::Reading);
                let gate = oven.gate(load, reading, window, precautions)?;
                let burst = gate.burst(reading);
                let after = |burst: Time| celsius(load.after(reading, oven.power(load) * burst));
                vec![
                    or_nan(burst.map(Measurable::si)),
                    or_nan(burst.map(after)),
                    celsius(gate.shoot_from),
                    celsius(gate.shoot_to),
                    f64::from(gate.course.bursts),
                    gate.course.total.si(),
                ]
            }
            "stays_hot" => {
                let room = given.get(P::Room);
                let cooling = Cooling::observed(
                    given.get(P::WatchedMass),
                    given.get(P::WatchedFrom),
                    given.get(P::WatchedTo),
                    given.get(P::WatchedTime),
                    room,
                )?;
                let (mass, from): (Mass, _) = (given.get(P::PotMass), given.get(P::HotFrom));
                let to = given.get(P::HotTo);
                let stood = given.option(P::Stood);
                let after =
                    stood.map(|stood| cooling.after(mass, from, stood, room)).transpose()?;
                vec![
                    cooling.time_constant(mass)?.si(),
                    cooling.time(mass, from, to, room)?.si(),
                    cooling.time(mass / 2.0, from, to, room)?.si(),
                    or_nan(after.map(celsius)),
                ]
            }
            "pot_heats" if given.is_given(P::HotFor) => {
                let mut runs = Vec::new();
                for &[shots, takes, hands, sets, molds] in given.rows::<5>(P::ClockRuns) {
                    let (hands, sets) = (si(P::Hands, hands), si(P::Sets, sets));
                    let every = every(hands, sets, molds as u32)?;
                    let takes = si(P::ShotMass, takes);
                    runs.push(ShotSeries { shots: shots as u32, every, takes });
                }
                let hot = Hot::Stated(given.get(P::HotFor));
                let heats = heats(given.get(P::PotMass), &runs, &hot)?;
                let shooting = heats.iter().fold(Time::default(), |sum, heat| sum + heat.lasts);
                let count = heats.len() as f64;
                let oven = given.option::<Time>(P::OvenTime);
                vec![
                    count - 1.0,
                    heats.first().map_or(0.0, |heat| f64::from(heat.shots)),
                    shooting.si(),
                    or_nan(oven.map(|oven| (shooting + oven * count).si())),
                ]
            }
            "setting_time" if !given.is_given(P::MoldMass) => {
                let shape = given.word(P::SectionShape, SectionShape::ALL).unwrap();
                let diffusivity = match given.option(P::Diffusivity) {
                    Some(one) => Diffusivity { expected: one, lowest: one, highest: one },
                    None => Diffusivity::default(),
                };
                let cooling = ShotCooling {
                    section: Section::new(shape, given.get(P::SectionThickness)),
                    point: given.word(P::PiecePoint, Point::ALL).unwrap_or(Point::Center),
                    diffusivity,
                    shot: given.get(P::ShotAt),
                    take_out: given.get(P::TakeOut),
                };
                let setting = cooling.in_mold(given.get(P::MoldAt))?;
                let molds = if given.is_given(P::Molds) { given.count(P::Molds) } else { 1 };
                let hands = given.option(P::Hands);
                let each = hands.map(|hands| every(hands, setting.time, molds)).transpose()?;
                let none = f64::NAN;
                let mut all =
                    [setting.time, setting.shortest, setting.longest].map(Measurable::si).to_vec();
                all.extend([none, none, or_nan(each.map(Measurable::si))]);
                all
            }
            "stir_every" => {
                let grains = Suspension {
                    grain: Grain::Cube,
                    size: given.get(P::Grain),
                    solid: given.get(P::GrainDensity),
                    melt: given.get(P::MeltDensity),
                    solids: given.get(P::SolidsShare),
                };
                let fast = grains.settling(given.get(P::MeltViscosityMin))?;
                let slow = grains.settling(given.get(P::MeltViscosityMax))?;
                let (depth, share) = (given.get(P::MeltDepth), given.get(P::Unstirred));
                let every = [fast.stir_every(depth, share)?, slow.stir_every(depth, share)?];
                let mut all = every.map(Measurable::si).to_vec();
                all.extend(
                    [slow.speed, fast.speed]
                        .map(|speed| PlainUnit::CentimeterPerSecond.from_si(speed.si())),
                );
                all
            }
            "viscosity_of_ball" => {
                let ball = Suspension {
                    grain: Grain::Ball,
                    size: given.get(P::BallDiameter),
                    solid: given.get(P::BallDensity),
                    melt: given.get(P::MeltDensity),
                    solids: Ratio::default(),
                };
                let found = ball.viscosity(given.get(P::BallDepth), given.get(P::BallTime))?;
                vec![PlainUnit::MillipascalSecond.from_si(found.si())]
            }
            _ => return Ok(None),
        }))
    };
    answer().transpose()
}

/// A random argument in the range of its parameter, mostly near that of the example.
fn random(
    field: &ParameterField,
    example: Argument<'static>,
    [choice, at]: [f64; 2],
) -> Argument<'static> {
    let parameter = field.parameter;
    if field.optional && choice < 0.2 {
        return Argument::Omitted;
    }
    if let ValueKind::Word { .. } = field.kind {
        let words = parameter.words();
        return Argument::Text(words[(at * words.len() as f64) as usize % words.len()]);
    }
    let (Argument::Number(near), Some(range)) = (example, parameter.range()) else {
        return example;
    };
    let wild = range.least + at * (range.most - range.least);
    let near = match parameter.unit() {
        _ if choice > 0.9 && range.most < 1e4 => wild,
        PlainUnit::Celsius => near + 20.0 * (at - 0.5),
        _ => near * libm::exp2(at - 0.5),
    };
    let inside = near.clamp(range.least, range.most);
    let number = if field.kind == ValueKind::Count { libm::round(inside) } else { inside };
    if range.holds(number) { Argument::Number(number) } else { example }
}

/// What only the plain form can refuse: the typed functions take such parameters as one.
const OF_THE_PLAIN_FORM: [&str; 3] = ["needs-other", "excludes-other", "missing-field"];

#[test]
fn each_calculation_gives_the_bits_of_its_typed_functions() {
    const CASES: usize = 200;
    let mut runner = TestRunner::deterministic();
    let mut compared = 0;
    for &calculation in CALCULATIONS {
        let example = calculation.example().arguments;
        let given = Given { calculation, arguments: &example };
        if typed(calculation.name, &given).is_none() {
            continue;
        }
        compared += 1;
        let (mut answered, mut results) = (0, Vec::new());
        for _ in 0..CASES {
            let seeds = prop::collection::vec(prop::array::uniform2(0.0..1.0f64), example.len());
            let seeds = seeds.new_tree(&mut runner).unwrap().current();
            let fields = calculation.parameters.iter().zip(&example).zip(seeds);
            let arguments: Vec<_> =
                fields.map(|((field, argument), seed)| random(field, *argument, seed)).collect();
            let given = Given { calculation, arguments: &arguments };
            let Some(wanted) = typed(calculation.name, &given) else { continue };
            let found = calculation.evaluate(&arguments, &mut results);
            let codes = |refused: &Refusal| -> Vec<&str> {
                refused.reasons().map(|reason| reason.code).collect()
            };
            match (found, wanted) {
                (Ok(()), Ok(wanted)) => {
                    answered += 1;
                    let found: Vec<f64> = results.iter().map(plain).collect();
                    assert_eq!(bits(&found), bits(&wanted), "{calculation:?} {arguments:?}");
                }
                (Err(refused), _)
                    if codes(&refused).iter().any(|code| OF_THE_PLAIN_FORM.contains(code)) => {}
                (Err(refused), Err(Code(code))) => {
                    assert!(
                        codes(&refused).contains(&code),
                        "{calculation:?} {arguments:?}: {refused}, {code}"
                    );
                }
                (found, wanted) => panic!("{calculation:?} {arguments:?}: {found:?}, {wanted:?}"),
            }
        }
        assert!(answered >= CASES / 20, "{calculation:?}: {answered} answers");
    }
    assert!(compared >= 27, "{compared} calculations are compared");
}

/// A result as a number, NaN where it is none.
fn plain(value: &Value) -> f64 {
    if let Value::Number(number) = value { *number } else { f64::NAN }
}

fn bits(numbers: &[f64]) -> Vec<u64> {
    let canonical = |x: &f64| if x.is_nan() { f64::NAN } else { *x };
    numbers.iter().map(|x| canonical(x).to_bits()).collect()
}
