//! A calculation of the table against the typed functions of the core, with random arguments made from the table.

use std::vec;

use proptest::prelude::*;
use proptest::strategy::ValueTree;
use proptest::test_runner::TestRunner;
use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;

use super::*;
use crate::batch::{
    DoseStep, Injector, Marks, PotLimits, Rejects, Run, Wanted, reject_interval, shots,
};
use crate::bench::{Balance, Bench, Cup, Handling, MOST_SPOONS, Manner, Step, Tool};
use crate::calibrate::{Counted, Emptied, PerOne, Residue, Unsure, Weighed};
use crate::color::difference::ciede2000;
use crate::color::lab::Lab;
use crate::cost::{Money, Profit};
use crate::density::{ScoopedDensity, TrueDensity};
use crate::fault::Diagnose;
use crate::flake::{Alike, Cut, Flake};
use crate::material::{Drop, Kind, Material};
use crate::mix::{Materials, Mix, MixError, Phase, density_of_parts};
use crate::process::atmosphere::{GeometricAltitude, SeaLevelPressure, StationPressure};
use crate::process::budget::{Budget, BudgetStatus, Extra, Remaining};
use crate::process::chamber::{Air, Chamber, Pulled};
use crate::process::clock::{Hot, ShotSeries, every, heats};
use crate::process::degas::{DegasCup, EntrainedAir, Vacuum, vessel_for};
use crate::process::gauge::{AbsolutePressure, ChamberPressure, Dial, VacuumReading};
use crate::process::heat::{
    Cooling, Load, Oven, Precautions, Reach, SpecificHeat, ThermometerMarks, Timing, Window,
};
use crate::process::history::{HeatRecord, Kinetics, Reading};
use crate::process::seawater::{Salinity, Water};
use crate::process::settling::{Grain, Suspension};
use crate::process::shot_cooling::{Diffusivity, Point, Section, SectionShape, ShotCooling};
use crate::process::sink::{Body, Motion, Shape, TimedDrop, loading_for};
use crate::process::vapor;
use crate::quantity::{
    Amount, Conversion, HeatCapacity, Length, Mass, MassDensity, Measurable, Measured, Ratio,
    SpecificHeatCapacity, System, ThermodynamicTemperature, Time, Unit, Volume,
};
use crate::salt::{
    Hook, PieceCavity, Salt, SaltError, SaltForm, SaltLoading, SaltSoftener, Unsalted,
};
use crate::shot::{Cavity, Melt, Shot};
use crate::softener::{Hardness, HardnessCurve, HardnessPoint, SaltedCurve, SaltedPoint, Scale};

/// The arguments of a call, by parameter.
struct Given<'a> {
    calculation: &'static Calculation,
    arguments: &'a [Argument<'a>],
}

/// The code of any error.
#[derive(Debug)]
struct Code(&'static str);

impl<E: Diagnose> From<E> for Code {
    fn from(error: E) -> Self {
        Self(error.code())
    }
}

impl<'a> Given<'a> {
    fn argument(&self, parameter: Parameter) -> Argument<'a> {
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

    fn rows<const N: usize>(&self, parameter: Parameter) -> &'a [[f64; N]] {
        match self.argument(parameter) {
            Argument::Numbers(numbers) => numbers.as_chunks().0,
            _ => &[],
        }
    }

    fn numbers(&self, parameter: Parameter) -> &'a [f64] {
        match self.argument(parameter) {
            Argument::Numbers(numbers) => numbers,
            _ => &[],
        }
    }

    fn text(&self, parameter: Parameter) -> &'a str {
        match self.argument(parameter) {
            Argument::Text(text) => text,
            _ => "",
        }
    }

    fn system(&self) -> System {
        self.word(Parameter::Measures, &System::ALL).unwrap_or(System::UsCustomary)
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
    body_of(given, given.get(Parameter::PieceVolume))
}

/// A body of this volume, with its own drag where a drop was timed, and the water.
fn body_of(given: &Given<'_>, volume: Volume) -> Result<(Body, Water), Code> {
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
    let body = Body::new(volume, shape).with_hook(hook(given));
    let Some(time) = given.option(Parameter::DropTime) else { return Ok((body, water)) };
    let drop = TimedDrop { depth: given.get(Parameter::DropDepth), time };
    Ok((body.with_drop(given.get(Parameter::DropDensity), &drop, &water)?, water))
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

/// The cooling of a pot that was watched.
fn watched(given: &Given<'_>) -> Result<Cooling, Code> {
    Ok(Cooling::observed(
        given.get(Parameter::WatchedMass),
        given.get(Parameter::WatchedFrom),
        given.get(Parameter::WatchedTo),
        given.get(Parameter::WatchedTime),
        given.get(Parameter::Room),
    )?)
}

fn points(given: &Given<'_>) -> Vec<HardnessPoint> {
    let scale = given.word(Parameter::Scale, Scale::ALL).unwrap();
    let point = |&[ratio, reading]: &[f64; 2]| HardnessPoint {
        ratio: Ratio::from(ratio),
        hardness: Hardness { reading, scale },
    };
    given.rows(Parameter::Points).iter().map(point).collect()
}

fn kilopascals(pressure: crate::quantity::Pressure) -> f64 {
    PlainUnit::Kilopascal.from_si(pressure.si())
}

/// A word as a number: its place in the list of words.
fn place<T: PartialEq>(all: &[T], word: &T) -> f64 {
    or_nan(all.iter().position(|other| other == word).map(|place| place as f64))
}

/// A loading in a form, from the plain number in the unit of that form.
fn loading(form: SaltForm, plain: f64) -> SaltLoading {
    let density = || si(Parameter::FinishedDensity, plain);
    match form {
        SaltForm::Scooped => SaltLoading::Scooped(Ratio::from(plain)),
        SaltForm::PerVolume => SaltLoading::PerVolume(density()),
        SaltForm::OfBase => SaltLoading::OfBase(Ratio::from(plain)),
        SaltForm::OfFinished => SaltLoading::OfFinished(Ratio::from(plain)),
        SaltForm::FinishedDensity => SaltLoading::FinishedDensity(density()),
        SaltForm::PieceMass => SaltLoading::PieceMass(si(Parameter::PieceWeight, plain)),
        SaltForm::SinkDensity => SaltLoading::SinkDensity(density()),
    }
}

fn loading_of_call(given: &Given<'_>) -> SaltLoading {
    let form = given.word(Parameter::Form, SaltForm::ALL).unwrap();
    loading(form, given.pure(Parameter::Loading))
}

fn plain_loading(loading: SaltLoading) -> f64 {
    match loading {
        SaltLoading::Scooped(x) | SaltLoading::OfBase(x) | SaltLoading::OfFinished(x) => x.value,
        SaltLoading::PerVolume(x)
        | SaltLoading::FinishedDensity(x)
        | SaltLoading::SinkDensity(x) => g_per_ml(x),
        SaltLoading::PieceMass(x) => grams(x),
    }
}

/// The result of `calculate`, and its bounds where the feed of a cavity is not known.
fn with_bounds(
    given: &Given<'_>,
    mix: &Unsalted,
    calculate: impl Fn(&Unsalted) -> Result<f64, SaltError>,
) -> Result<Vec<f64>, Code> {
    let answer = calculate(mix)?;
    let mut all = vec![answer, answer, answer];
    let Some(cavity) = mix.cavity.filter(|_| !given.is_given(Parameter::Feed)) else {
        return Ok(all);
    };
    for feed in [0.0, 1.0] {
        let cavity = PieceCavity { feed: Ratio::from(feed), ..cavity };
        if let Ok(bound) = calculate(&mix.with_cavity(cavity)) {
            all[1] = all[1].min(bound);
            all[2] = all[2].max(bound);
        }
    }
    Ok(all)
}

/// The vacuum over a pot, the air in it, and the pressure in the chamber.
fn vacuum(given: &Given<'_>, air: Air) -> Result<(Vacuum, EntrainedAir, ChamberPressure), Code> {
    let local = StationPressure::measured(given.get(Parameter::StationPressure))?;
    let pulled = match given.option(Parameter::AbsolutePressure) {
        Some(absolute) => Pulled::Absolute(AbsolutePressure::new(absolute)?),
        None => Pulled::Gauge {
            reading: VacuumReading::new(given.get(Parameter::GaugeVacuum))?,
            dial: match given.option(Parameter::DialTolerance) {
                Some(tolerance) => Dial::within(tolerance)?,
                None => Dial::default(),
            },
        },
    };
    let vapor = match given.option(Parameter::DampAt) {
        Some(at) => vapor::of_water(at)?,
        None => given.get(Parameter::VaporPressure),
    };
    if let Air::Rise(rise) = air {
        Parameter::Rise.check_si(rise)?;
    }
    let chamber = Chamber { pulled, air: Some(air) };
    let pressure = chamber.pressure(local)?;
    let vacuum = chamber.vacuum(local, &pressure, vapor)?;
    Ok((vacuum, chamber.entrained(vacuum)?.unwrap(), pressure))
}

fn share_of_air(given: &Given<'_>) -> Air {
    Air::Share(given.get(Parameter::EntrainedAir))
}

fn injector(given: &Given<'_>) -> Injector {
    Injector {
        holds: given.get(Parameter::InjectorCapacity),
        keeps: given.get(Parameter::InjectorResidue),
    }
}

fn shots_of_call(given: &Given<'_>) -> Result<u32, Code> {
    let pieces = given.count(Parameter::Pieces);
    let cavities = given.count(Parameter::Cavities);
    let rejects = Rejects {
        rate: given.get(Parameter::Rejects),
        confidence: given.get(Parameter::Confidence),
    };
    Ok(shots(&[Wanted { pieces, cavities }], Some(rejects))?)
}

fn flake(
    given: &Given<'_>,
    [cut, thickness, density]: [Parameter; 3],
    as_scooped: Option<Parameter>,
) -> Result<Flake, Code> {
    let scooped = as_scooped.and_then(|parameter| given.option(parameter));
    let scooped = scooped.map(ScoopedDensity::new).transpose()?;
    let film = TrueDensity::new(given.get(density))?;
    Ok(Flake::new(Cut::parse(given.text(cut))?, given.get(thickness), film, scooped)?)
}

fn weighed(given: &Given<'_>) -> Result<Weighed, Code> {
    let weights = given.numbers(Parameter::Weights).iter();
    let weights: Vec<Mass> = weights.map(|&mass| si(Parameter::PieceWeight, mass)).collect();
    Ok(Weighed::new(&weights, given.get(Parameter::BalanceReadability))?)
}

fn counted(given: &Given<'_>, list: Parameter) -> Result<PerOne, Code> {
    let counted = |&[count, weight]: &[f64; 2]| Counted {
        count: count as u32,
        weight: si(Parameter::WeighedMass, weight),
    };
    let weighings: Vec<_> = given.rows(list).iter().map(counted).collect();
    Ok(PerOne::new(&weighings, given.get(Parameter::BalanceReadability))?)
}

/// The results of `bench_measure`: the best measure, and where its steps go.
fn measured(given: &Given<'_>) -> Result<Vec<f64>, Code> {
    use Parameter as P;
    let balance = given.option::<Mass>(P::BalanceReadability).map(|readability| Balance {
        readability,
        capacity: given
            .option(P::BalanceCapacity)
            .unwrap_or_else(|| Balance::usual_capacity(readability)),
        least_load: given.get(P::BalanceLeastLoad),
    });
    let spoons = given.numbers(P::Spoons).iter().map(|&ml| si(P::SpoonVolume, ml)).collect();
    let cup = |&[mark, capacity]: &[f64; 2]| Cup {
        mark: si(P::CupMark, mark),
        capacity: si(P::CupCapacity, capacity),
    };
    let cups: Vec<Cup> = given.rows(P::Cups).iter().map(cup).collect();
    let marks: Vec<u32> = cups.iter().map(Cup::marks).collect();
    let bench = Bench::new(balance, spoons, cups, Handling::default())?;
    let manner =
        Manner { by_volume: given.option(P::AsMeasuredDensity), drop: given.option(P::DropMass) };
    let best = bench.measure(given.get(P::MassToMeasure), &manner, given.get(P::Tolerance))?.best;
    let mut all = vec![
        grams(best.mass),
        best.deviation.value,
        place(Tool::ALL, &best.tool),
        f64::from(best.acts),
    ];
    let sum = |of: &dyn Fn(&Step) -> u32| f64::from(best.steps.iter().map(of).sum::<u32>());
    all.push(sum(&|step| if let Step::Drop { times } = step { *times } else { 0 }));
    for own in 0..MOST_SPOONS {
        all.push(sum(&|step| match step {
            Step::Spoon { spoon, times } if *spoon == own => *times,
            _ => 0,
        }));
    }
    let [mut used, mut fillings, mut last] = [0; 3];
    for step in &best.steps {
        if let Step::Fill { cup, mark, times } = step {
            used = *cup as u32 + 1;
            if marks[*cup] == *mark { fillings += times } else { last = *mark }
        }
    }
    all.extend([used, fillings, last].map(f64::from));
    Ok(all)
}

/// The results of the calculation `name` by the typed functions, as plain numbers.
fn typed(name: &str, given: &Given<'_>) -> Result<Vec<f64>, Code> {
    use Parameter as P;
    Ok(match name {
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
            let parts =
                rows.map(|&[mass, density]| (si(P::PartMass, mass), si(P::PartDensity, density)));
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
            let share: Ratio = given.option(P::LayerShare).unwrap_or(Ratio::from(1.0));
            let shot = Shot::new(&cavities, melt(given))
                .with_share(share)
                .with_sprue(given.get::<Volume>(P::SprueVolume) * share)
                .with_topped(given.get::<Mass>(P::ToppedMass) * share)
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
            let shots = shots_of_call(given)?;
            [shots, shots.saturating_mul(given.count(P::Cavities))].map(f64::from).to_vec()
        }
        "injector_loads" => {
            let (shot, density) = (given.get(P::ShotMass), given.get(P::ShotDensity));
            let loads = injector(given).loads(given.count(P::Shots), shot, density)?;
            [loads.loads, loads.shots_per_load, loads.shots_in_last].map(f64::from).to_vec()
        }
        "salt_for_density" => {
            let loading = SaltLoading::FinishedDensity(given.get(P::FinishedDensity));
            vec![grams(unsalted(given)?.salt_mass(loading)?)]
        }
        "sink_rate" => {
            let (body, water) = body(given)?;
            let (density, unsure) = (given.get(P::PieceDensity), given.get(P::DensityUncertainty));
            let fall = body.fall_within(density, unsure, &water)?;
            let depth = given.option(P::Depth);
            let time = depth.map(|depth| fall.time_to(depth)).transpose()?;
            let speeds = [fall.speed, fall.trust.slowest, fall.trust.fastest];
            let mut all = speeds.map(|it| PlainUnit::CentimeterPerSecond.from_si(it.si())).to_vec();
            all.push(place(Motion::ALL, &fall.trust.motion));
            all.extend([fall.reynolds, fall.drag_coefficient, or_nan(time.map(Measurable::si))]);
            all
        }
        "density_for_sink_rate" => {
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
            let one = counted(given, P::DropsWeighed)?;
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
            let precautions = Precautions {
                thermometer: given.get(P::Thermometer),
                marks: ThermometerMarks::of(given.system()),
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
            let cooling = watched(given)?;
            let (mass, from): (Mass, _) = (given.get(P::PotMass), given.get(P::HotFrom));
            let to = given.get(P::HotTo);
            let stood = given.option(P::Stood);
            let after = stood.map(|stood| cooling.after(mass, from, stood, room)).transpose()?;
            vec![
                cooling.time_constant(mass)?.si(),
                cooling.time(mass, from, to, room)?.si(),
                cooling.time(mass / 2.0, from, to, room)?.si(),
                or_nan(after.map(celsius)),
            ]
        }
        "pot_heats" => {
            let mut runs = Vec::new();
            for &[shots, takes, hands, sets, molds] in given.rows::<5>(P::ClockRuns) {
                let (hands, sets) = (si(P::Hands, hands), si(P::Sets, sets));
                let every = every(hands, sets, molds as u32)?;
                let takes = si(P::ShotMass, takes);
                runs.push(ShotSeries { shots: shots as u32, every, takes });
            }
            let hot = match given.option(P::HotFor) {
                Some(time) => Hot::Stated(time),
                None => Hot::Watched {
                    cooling: watched(given)?,
                    room: given.get(P::Room),
                    from: given.get(P::ClockFrom),
                    to: given.get(P::ClockTo),
                },
            };
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
        "setting_time" => {
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
            let mold: ThermodynamicTemperature = given.get(P::MoldAt);
            let masses = given.option::<Mass>(P::ShotMass).zip(given.option::<Mass>(P::MoldMass));
            let warms = masses.map(|(shot, metal)| {
                let plastic: SpecificHeatCapacity = given.get(P::ShotSpecificHeat);
                let own: SpecificHeatCapacity = given.get(P::MoldSpecificHeat);
                cooling.warms(shot * plastic, metal * own)
            });
            let warms = warms.transpose()?;
            let setting = cooling.in_mold(warms.map_or(mold, |warms| mold + warms))?;
            let molds = if given.is_given(P::Molds) { given.count(P::Molds) } else { 1 };
            let hands = given.option(P::Hands);
            let each = hands.map(|hands| every(hands, setting.time, molds)).transpose()?;
            let mut all =
                [setting.time, setting.shortest, setting.longest].map(Measurable::si).to_vec();
            let in_a_row = warms.and_then(|warms| cooling.in_a_row(mold, warms));
            all.push(or_nan(warms.map(Measurable::si)));
            all.push(or_nan(in_a_row.map(f64::from)));
            all.push(or_nan(each.map(Measurable::si)));
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
        "convert" => {
            let amount = Amount::parse(given.text(P::Amount))?;
            let to = Unit::parse(given.text(P::To))?;
            vec![amount.in_unit(to, given.system())?.value().to_f64()]
        }
        "convert_number" => {
            let number = P::Value.check_si(given.pure(P::Value))?;
            let unit = Unit::parse(given.text(P::Unit))?;
            let to = Unit::parse(given.text(P::To))?;
            vec![Conversion::between(unit, to, given.system())?.convert(number, unit)?]
        }
        "dose_mass" => {
            let kind = given.word(P::Kind, Kind::ALL).unwrap();
            let mut material = Material::new("material", kind);
            material.density = given.option(P::MaterialDensity).map(Measured::exact);
            material.as_scooped = given.option(P::AsScooped).map(Measured::exact);
            material.drop = given.option(P::DropMass).map(|drop| Drop::Mass(Measured::exact(drop)));
            let amount = Amount::parse(given.text(P::Amount))?;
            vec![grams(material.mass_of(&amount, given.system(), "a test")?)]
        }
        "mix_share" => {
            let rows = given.rows::<2>(P::Parts);
            let material = |(index, row): (usize, &[f64; 2])| {
                let name = std::format!("part {index:04}");
                let mut material = Material::new(name, Kind::Plastisol);
                material.density = Some(Measured::exact(si(P::PartDensity, row[1])));
                material
            };
            let materials = Materials::new(rows.iter().enumerate().map(material).collect());
            let mut mix = Mix::default();
            for ((id, _), row) in materials.iter().zip(rows) {
                mix.add(id, si(P::PartMass, row[0]))?;
            }
            if mix.mass() <= Mass::default() {
                return Err(MixError::Empty.into());
            }
            let (id, _) = materials
                .iter()
                .nth(given.count(P::Part) as usize - 1)
                .ok_or(Code("out-of-range"))?;
            vec![mix.mass_fraction(id), mix.volume_fraction(id, &materials, Phase::Liquid)?]
        }
        "swollen_volume" => {
            let (vacuum, air, pressure) = vacuum(given, share_of_air(given))?;
            let liquid = given.get(P::LiquidVolume);
            vec![
                milliliters(vacuum.swollen(liquid, air)?),
                milliliters(vacuum.standing(liquid, air)?),
                kilopascals(pressure.absolute.get()),
            ]
        }
        "entrained_air" => {
            let (_, air, _) = vacuum(given, Air::Rise(given.pure(P::Rise)))?;
            vec![air.as_share().value]
        }
        "degas_vessel" => {
            let (vacuum, air, _) = vacuum(given, share_of_air(given))?;
            let (liquid, spare) = (given.get(P::LiquidVolume), given.get(P::VesselSpare));
            let mut all = vec![milliliters(vessel_for(liquid, air, vacuum, spare)?)];
            match given.option(P::VesselBrim) {
                Some(brim) => {
                    let cup = DegasCup::new(brim, spare, given.option(P::VesselMark))?;
                    let fills = cup.fills(liquid, air, vacuum)?;
                    all.extend([
                        milliliters(fills.mark),
                        f64::from(fills.count),
                        milliliters(fills.level),
                        milliliters(fills.swollen),
                    ]);
                }
                None => all.extend([f64::NAN; 4]),
            }
            all
        }
        "salt_convert" => {
            let (mix, loading) = (unsalted(given)?, loading_of_call(given));
            let to = given.word(P::ToForm, SaltForm::ALL).unwrap();
            with_bounds(given, &mix, |mix| mix.convert(loading, to).map(plain_loading))?
        }
        "salt_mass" => {
            let (mix, loading) = (unsalted(given)?, loading_of_call(given));
            let mut all = with_bounds(given, &mix, |mix| mix.salt_mass(loading).map(grams))?;
            let per_salt = given.option::<Ratio>(P::SoftenerPerSalt).unwrap_or_default();
            all.push(grams(mix.salt_mass(loading)? * per_salt));
            all
        }
        "salt_reach" => {
            let form = given.word(P::Form, SaltForm::ALL).unwrap();
            let (least, most) = unsalted(given)?.reach(form)?;
            vec![plain_loading(least), plain_loading(most)]
        }
        "salt_for_sink_rate" => {
            let mix = unsalted(given)?;
            let cavity = mix.cavity.unwrap();
            let (_, water) = body_of(given, cavity.volume)?;
            let loading = loading_for(&mix, &cavity, |volume| {
                let (body, _) = body_of(given, volume)?;
                Ok::<_, Code>(body.density_for(given.get(P::SinkRate), &water)?)
            })?;
            let salt = mix.salt_mass(loading)?;
            let per_salt = given.option::<Ratio>(P::SoftenerPerSalt).unwrap_or_default();
            vec![grams(salt), grams(salt * per_salt), plain_loading(loading)]
        }
        "batch_need" => {
            let (fill, density) = (given.get(P::ShotMass), given.get(P::ShotDensity));
            let (shots, injector) = (shots_of_call(given)?, injector(given));
            let loads = injector.loads(shots, fill, density)?;
            let cleanings =
                if given.is_given(P::Cleanings) { given.count(P::Cleanings) } else { 1 };
            let need = Run::new(shots, loads, fill)
                .with_sprue(given.get(P::SprueMass), given.get(P::Returned))
                .with_injector(injector.kept(density)?, cleanings)
                .with_pot(given.get(P::PotFilm), given.get(P::PotHeel))
                .need()?;
            let mut all = [need.total, need.drawn, need.returned, need.pieces].map(grams).to_vec();
            all.extend([need.sprues_left, need.kept, need.in_cup].map(grams));
            all.extend(
                [shots, loads.loads, loads.shots_per_load, loads.shots_in_last].map(f64::from),
            );
            all
        }
        "base_to_mark" => {
            let capacity = given.get(P::CupCapacity);
            let step = given.option(P::CupMark).unwrap_or(capacity);
            let measured = Marks::Every { step, capacity }.measure(
                given.get(P::MixNeeded),
                given.get(P::BaseFraction),
                given.get(P::BaseDensity),
            )?;
            let shot = given.option(P::ShotMass);
            let extra = shot.map(|shot| measured.extra_shots(shot)).transpose()?;
            let mut all = vec![milliliters(measured.base_volume)];
            all.extend([measured.base_mass, measured.mix, measured.surplus].map(grams));
            all.push(or_nan(extra.map(f64::from)));
            all
        }
        "least_pot" => {
            let step = |&[step, tolerance, ratio]: &[f64; 3]| DoseStep {
                step: si(P::DoseStep, step),
                tolerance: si(P::Tolerance, tolerance),
                ratio: si(P::DoseRatio, ratio),
            };
            let doses: Vec<_> = given.rows(P::Doses).iter().map(step).collect();
            let limits = PotLimits {
                doses: &doses,
                base_fraction: given.get(P::BaseFraction),
                oven: given.option(P::OvenLeast),
                injector: given.option(P::InjectorLeast),
            };
            let least = limits.least()?;
            vec![grams(least.mix), grams(least.base)]
        }
        "reject_rate" => {
            let (rejects, cast) = (given.count(P::RejectCount), given.count(P::CastPieces));
            let (least, most) = reject_interval(rejects, cast, given.get(P::Confidence))?;
            vec![f64::from(rejects) / f64::from(cast), least.value, most.value]
        }
        "flake_count" => {
            let flake = flake(given, [P::Cut, P::Thickness, P::FilmDensity], None)?;
            let dose = given.get(P::FlakeDose);
            let area = PlainUnit::SquareCentimeter.from_si(flake.area(dose)?.value);
            vec![flake.particles(dose)?, area]
        }
        "flake_swap" => {
            let one = flake(given, [P::Cut, P::Thickness, P::FilmDensity], None)?;
            let other = [P::OtherCut, P::OtherThickness, P::OtherFilmDensity];
            let other = flake(given, other, Some(P::OtherAsScooped))?;
            let alike = given.word(P::Alike, Alike::ALL).unwrap_or(Alike::Area);
            let swap = one.swap(given.get(P::FlakeDose), &other, alike)?;
            let scoop = or_nan(swap.scoop.map(milliliters));
            vec![grams(swap.mass), scoop, swap.count.value, swap.area.value]
        }
        "price" => {
            let cents = Decimal::new(i64::from(given.count(P::CostInMinorUnits)), 2);
            let cost = Money::new(cents, "XTS".parse()?)?;
            let price = Profit::Margin(given.get(P::CostMargin)).price(cost)?;
            let price = (price.amount() * Decimal::ONE_HUNDRED).to_u32();
            vec![f64::from(price.ok_or(Code("price-too-large"))?)]
        }
        "budget_left" => {
            let with = given.get(P::BudgetWith);
            let extra = given.option(P::ExtraTime).zip(given.option(P::ExtraMost));
            let extra = extra.map(|(time, most)| Extra { time, most });
            let dose = given.option(P::StabilizerDose).unwrap_or(with);
            let budget = Budget::new(given.get(P::HeatBudget), with, extra)?.at_dose(dose)?;
            let record = HeatRecord::fresh().heated(given.option(P::EquivalentTime));
            match BudgetStatus::of(record, Some(budget))?.remaining {
                Remaining::Left(left) => vec![budget.si(), left.si(), 0.0],
                Remaining::Overspent(over) => vec![budget.si(), 0.0, over.si()],
                Remaining::Unknown => unreachable!(),
            }
        }
        "bench_measure" => measured(given)?,
        "cavity_of_weights" => {
            let weighed = weighed(given)?;
            let unknown = if given.is_given(P::Feed) { 0.0 } else { 1.0 / libm::sqrt(12.0) };
            let feed = given.option(P::FeedUncertainty).unwrap_or(Ratio::from(unknown));
            let unsure = Unsure { feed, ..Unsure::default() };
            let cavity = weighed.cavity_volume(&melt(given), given.get(P::Feed), &unsure)?;
            vec![
                milliliters(cavity.volume),
                milliliters(cavity.uncertainty),
                grams(weighed.mean),
                grams(weighed.deviation),
            ]
        }
        "feed_of_weights" => {
            let weighed = weighed(given)?;
            let cavity = given.get(P::VolumeUncertainty);
            let unsure = Unsure { cavity, ..Unsure::default() };
            let volume = given.get(P::CavityVolume);
            let feed = weighed.feed_share(&melt(given), volume, &unsure)?;
            vec![
                feed.share.value,
                feed.uncertainty.value,
                grams(weighed.mean),
                grams(weighed.deviation),
            ]
        }
        "as_scooped_of_weighings" => {
            let one = counted(given, P::ScoopsWeighed)?;
            let spoon =
                Measured::new(given.get(P::SpoonVolume), given.get::<Volume>(P::VolumeUncertainty));
            let density = one.as_scooped(&spoon)?;
            vec![g_per_ml(density.value), g_per_ml(density.uncertainty.unwrap()), grams(one.mass)]
        }
        "residue_of_weighings" => {
            let weighing = |&[clean, emptied]: &[f64; 2]| Emptied {
                clean: si(P::CleanMass, clean),
                emptied: si(P::EmptiedMass, emptied),
            };
            let rows = given.rows(P::InjectorWeighed).iter();
            let weighings: Vec<_> = rows.map(weighing).collect();
            let residue = Residue::new(&weighings, given.get(P::BalanceReadability))?;
            let density = Measured::new(
                given.get(P::ResidueDensity),
                given.get::<MassDensity>(P::DensityUncertainty),
            );
            let volume = residue.volume(&density)?;
            vec![
                milliliters(volume.value),
                milliliters(volume.uncertainty.unwrap()),
                grams(residue.mass),
            ]
        }
        _ => panic!("{name} is not compared with its typed functions"),
    })
}

/// A text that some calculation takes, right or wrong.
fn random_text(parameter: Parameter, at: f64) -> &'static str {
    const UNITS: &[&str] =
        &["mL", "cup", "tsp", "g", "lb", "oz", "oz_fl", "degF", "°C", "[tsp_us]"];
    let texts = match parameter {
        Parameter::Amount => {
            &["1 1/4 cup", "12.5 g", "50 drops", "330 °F", "2 lb", "1/3 tsp", "6 oz", "0.5 mL", "1"]
        }
        Parameter::Unit | Parameter::To => UNITS,
        Parameter::Cut | Parameter::OtherCut => {
            &["1 mm square", "0.5 mm square", "0.062 in hex", "0.4 mm", "1/24 in round", "fine"]
        }
        other => panic!("no texts for {other}"),
    };
    pick(texts, at)
}

fn pick<T: Copy>(all: &[T], at: f64) -> T {
    all[(at * all.len() as f64) as usize % all.len()]
}

/// A random number in the range of its parameter, mostly near `example`.
fn random_number(parameter: Parameter, example: f64, [choice, at]: [f64; 2]) -> f64 {
    let Some(range) = parameter.range() else { return example };
    let near = match parameter.unit() {
        _ if choice > 0.9 && range.most < 1e4 => range.least + at * (range.most - range.least),
        PlainUnit::Celsius => example + 20.0 * (at - 0.5),
        _ => example * libm::exp2(at - 0.5),
    };
    let inside = near.clamp(range.least, range.most);
    if range.holds(inside) { inside } else { example }
}

/// The numbers of a list, each column moved by its own factor, so that what rises still does.
fn random_list(parameter: Parameter, example: &[f64], [choice, at]: [f64; 2]) -> Vec<f64> {
    let columns = parameter.columns();
    let moved = |(place, number): (usize, &f64)| {
        let column = place % columns.len();
        if columns[column].unit() == PlainUnit::Count {
            return *number;
        }
        let at = (at * (1 + 6 * column) as f64).fract();
        random_number(columns[column], *number, [choice * 0.9, at])
    };
    example.iter().enumerate().map(moved).collect()
}

/// A number of `parameter` to be near to, from an example of any calculation, else its default.
fn usual(parameter: Parameter) -> Option<f64> {
    let of_example = |calculation: &&Calculation| {
        let example = calculation.example().arguments;
        let place = calculation.parameters.iter().position(|field| field.parameter == parameter)?;
        if let Argument::Number(number) = example[place] { Some(number) } else { None }
    };
    CALCULATIONS.iter().find_map(of_example).or_else(|| parameter.default_number())
}

/// A random argument like that of the example; `list` is what a list becomes. What the example omits is mostly omitted.
fn random<'a>(
    field: &ParameterField,
    example: Argument<'static>,
    list: &'a [f64],
    [choice, at]: [f64; 2],
) -> Argument<'a> {
    let parameter = field.parameter;
    if field.optional && choice < if example == Argument::Omitted { 0.8 } else { 0.2 } {
        return Argument::Omitted;
    }
    let near = match (field.kind, example) {
        (ValueKind::Word { .. }, _) => return Argument::Text(pick(parameter.words(), at)),
        (ValueKind::Text, _) => return Argument::Text(random_text(parameter, at)),
        (_, Argument::Numbers(_)) => return Argument::Numbers(list),
        (_, Argument::Number(number)) => Some(number),
        _ => usual(parameter),
    };
    let Some(near) = near else { return example };
    let number = random_number(parameter, near, [choice, at]);
    Argument::Number(if field.kind == ValueKind::Count { libm::round(number) } else { number })
}

/// Codes that only the plain form gives: the typed functions take such parameters as one.
const OF_THE_PLAIN_FORM: [&str; 3] = ["needs-other", "excludes-other", "missing-field"];

#[test]
fn each_calculation_gives_the_bits_of_its_typed_functions() {
    const CASES: usize = 200;
    let (mut runner, mut wrong) = (TestRunner::deterministic(), Vec::new());
    for &calculation in CALCULATIONS {
        let example = calculation.example().arguments;
        let (mut answered, mut results) = (0, Vec::new());
        for _ in 0..CASES {
            let seeds = prop::collection::vec(prop::array::uniform2(0.0..1.0f64), example.len());
            let seeds = seeds.new_tree(&mut runner).unwrap().current();
            let fields = || calculation.parameters.iter().zip(&example).zip(&seeds);
            let list = |((field, argument), seed): ((&ParameterField, _), &[f64; 2])| match argument
            {
                &Argument::Numbers(numbers) => random_list(field.parameter, numbers, *seed),
                _ => Vec::new(),
            };
            let lists: Vec<Vec<f64>> = fields().map(list).collect();
            let arguments = fields().zip(&lists);
            let arguments: Vec<_> = arguments
                .map(|(((field, argument), seed), list)| random(field, *argument, list, *seed))
                .collect();
            let found = calculation.evaluate(&arguments, &mut results);
            let codes = |refused: &Refusal| -> Vec<&str> {
                refused.reasons().map(|reason| reason.code).collect()
            };
            if let Err(refused) = &found
                && codes(refused).iter().any(|code| OF_THE_PLAIN_FORM.contains(code))
            {
                continue;
            }
            let given = Given { calculation, arguments: &arguments };
            let wanted = typed(calculation.name, &given);
            let is_same = match (&found, &wanted) {
                (Ok(()), Ok(wanted)) => {
                    answered += 1;
                    let found = calculation.results.iter().zip(&results);
                    let found: Vec<f64> =
                        found.flat_map(|(field, value)| plain(field, value)).collect();
                    bits(&found) == bits(wanted)
                }
                // All wrong numbers together come before what follows from them.
                (Err(Refusal::Parameters(_)), Err(_)) => true,
                (Err(refused), Err(Code(code))) => codes(refused).contains(code),
                _ => false,
            };
            if !is_same {
                wrong.push(std::format!(
                    "{calculation:?} {arguments:?}: {found:?} {results:?}, typed {wanted:?}"
                ));
                break;
            }
        }
        if answered < CASES / 20 {
            wrong.push(std::format!("{calculation:?}: {answered} answers"));
        }
    }
    assert!(wrong.is_empty(), "{wrong:#?}");
}

/// A result as numbers: NaN without one, a word by its place in the list of words.
fn plain(result: &ResultField, value: &Value) -> Vec<f64> {
    match value {
        Value::Absent => vec![f64::NAN],
        Value::Number(number) => vec![*number],
        Value::Word(word) => vec![place(result.words(), word)],
        Value::Numbers(numbers) => numbers.clone(),
    }
}

fn bits(numbers: &[f64]) -> Vec<u64> {
    let canonical = |x: &f64| if x.is_nan() { f64::NAN } else { *x };
    numbers.iter().map(|x| canonical(x).to_bits()).collect()
}
