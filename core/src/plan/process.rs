//! What a plan says of vacuum, heat and the fall in water: fill marks, bursts, heats, sink rates.
//!
//! Each is told where the book states what it takes; where the book states a part of it alone, the
//! plan says what is missing ([`Reckoned::Unknown`]); where it states nothing, the plan is silent.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::day::DayRecipe;
use super::{Note, Pot, Shown, Stage, part, text};
use crate::book::{Book, Cavities, FishedWater, Mold, Oven};
use crate::fault::Diagnose;
use crate::formula::Recipe;
use crate::material::{HeatBudget, Kind, Material};
use crate::mix::{MaterialId, reference_temperature};
use crate::process::budget::{Balance, Budget, BudgetError, Standing};
use crate::process::chamber::{Chamber, Pulled};
use crate::process::degas::{self, Vacuum};
use crate::process::heat::{Bursts, Load, Precautions, Reach, Window, mix_specific_heat};
use crate::process::history::{HeatRecord, Kinetics, Reading};
use crate::process::sink::{Body, Motion};
use crate::quantity::{
    HeatCapacity, Mass, MassDensity, Measurable, Pressure, Ratio, SpecificHeatCapacity,
    ThermodynamicTemperature, Time, Velocity, Volume,
};

/// Share of a vessel that stays empty under vacuum. Common practice, no source.
pub(crate) const SPARE: f64 = 0.1;

/// What of a mix, by mass, must have a stated specific heat; the rest is taken to be like it.
/// Common practice, no source: between plasticizer and salt it differs by a factor of two, which for
/// a tenth of the mix is a twentieth of the time.
const LEAST_KNOWN: f64 = 0.9;

/// What could be reckoned, or why it could not.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "document", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "document", serde(rename_all = "kebab-case"))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum Reckoned<T> {
    /// It is this.
    Known(T),
    /// It is not known, for this reason.
    Unknown(Note),
}

part! {
    /// How a pot is degassed.
    pub struct Degas {
        /// What the gauge shall show: of a vacuum gauge the vacuum, else what is left in the chamber.
        pub gauge: Shown<Pressure>,
        /// Whether that counts up from nothing.
        pub is_absolute: bool,
        /// What is left in the chamber.
        pub absolute: Shown<Pressure>,
        /// How far the vacuum gauge must be off, since the air here does not give what it shows.
        pub gauge_off: Option<Shown<Pressure>>,
        /// How many times its level the pot swells to, if no bubble bursts.
        pub rise: Shown<Ratio>,
        /// The cup to degas in: what it holds to its highest mark.
        pub cup: Shown<Volume>,
        /// The level to fill it to at most.
        pub fill_mark: Shown<Volume>,
        /// In how many fills the pot goes through.
        pub fills: u32,
        /// The level of each, shared out evenly.
        pub level: Shown<Volume>,
        /// What each swells to.
        pub swollen: Shown<Volume>,
    }
}

part! {
    /// One run of the oven.
    pub struct Burst {
        /// How long.
        pub duration: Shown<Time>,
        /// Run it only if the thermometer shows no more than this.
        pub only_below: Shown<ThermodynamicTemperature>,
        /// What it is expected to show afterwards, stirred.
        pub expected: Shown<ThermodynamicTemperature>,
        /// The most that the pot may have then.
        pub at_most: Shown<ThermodynamicTemperature>,
    }
}

part! {
    /// How a pot is heated.
    pub struct Heating {
        /// What the pot has before.
        pub from: Shown<ThermodynamicTemperature>,
        /// What it shall have.
        pub aim: Shown<ThermodynamicTemperature>,
        /// The bursts, as long as each comes out as expected.
        pub bursts: Vec<Burst>,
        /// How long the oven runs altogether.
        pub total: Shown<Time>,
        /// Its standard uncertainty, where more than one timing shows one.
        pub uncertainty: Option<Shown<Time>>,
        /// Whether one burst of that length may overshoot the window.
        pub one_overshoots: bool,
        /// How far the amount lies outside those that were timed, as a factor.
        pub beyond: Option<Shown<Ratio>>,
        /// Materials whose specific heat the book does not state: taken to be that of the rest.
        pub specific_heat_not_known: Vec<String>,
    }
}

part! {
    /// How often a pot is heated, and what that leaves of its stabilizer.
    pub struct Heats {
        /// How often it is heated.
        pub count: u32,
        /// What is spent and left, where the book states a budget.
        pub budget: Option<Reckoned<HeatSpent>>,
    }
}

part! {
    /// What the heats of a pot cost it, as time at one temperature.
    pub struct HeatSpent {
        /// The plastisol that has least left.
        pub material: String,
        /// The temperature at which the time is counted.
        pub at: Shown<ThermodynamicTemperature>,
        /// What the pot stands.
        pub budget: Shown<Time>,
        /// What its heats spend, each held at its aim from the last burst to the last shot.
        pub spent: Shown<Time>,
        /// What is left.
        pub left: Shown<Time>,
        /// What is spent beyond the budget.
        pub over: Option<Shown<Time>>,
        /// Whether there is more stabilizer than the material's figure holds for, the rest not counted.
        pub more_stabilizer_not_counted: bool,
    }
}

part! {
    /// The water that sink rates are told for.
    pub struct SinkWater {
        /// Its temperature.
        pub temperature: Shown<ThermodynamicTemperature>,
        /// Its salinity, salt by mass.
        pub salinity: Shown<Ratio>,
        /// Its density.
        pub density: Shown<MassDensity>,
    }
}

part! {
    /// How a piece sinks, with its hook: a model value between bounds.
    pub struct Sinking {
        /// Density of the piece without its hook.
        pub density: Shown<MassDensity>,
        /// Mass of hook and weight.
        pub hook: Shown<Mass>,
        /// How fast it falls.
        pub speed: Shown<Velocity>,
        /// Lower bound.
        pub slowest: Shown<Velocity>,
        /// Upper bound.
        pub fastest: Shown<Velocity>,
        /// Whether it falls straight, as the model has it.
        pub motion: Motion,
    }
}

/// What stands in the way, as a note.
fn because(error: &dyn Diagnose) -> Note {
    Note { code: error.code().to_string(), message: format!("{error} {}", error.help()) }
}

fn note(code: &str, message: String) -> Note {
    Note { code: code.to_string(), message }
}

impl<T> From<Result<T, Note>> for Reckoned<T> {
    fn from(result: Result<T, Note>) -> Self {
        match result {
            Ok(known) => Self::Known(known),
            Err(note) => Self::Unknown(note),
        }
    }
}

impl<T> Reckoned<T> {
    /// What is known.
    #[must_use]
    pub const fn known(&self) -> Option<&T> {
        match self {
            Self::Known(known) => Some(known),
            Self::Unknown(_) => None,
        }
    }
}

/// How a pot of `liquid`, cold and without air, is degassed that is mixed in cup `cup`.
pub(super) fn degas(book: &Book, cup: usize, liquid: Volume) -> Option<Reckoned<Degas>> {
    book.chamber.as_ref().map(|chamber| degas_in(chamber, book, cup, liquid).into())
}

fn degas_in(chamber: &Chamber, book: &Book, cup: usize, liquid: Volume) -> Result<Degas, Note> {
    let system = book.system;
    let local = book.air.ok_or_else(|| {
        note(
            "air-not-known",
            "What the vacuum does depends on the air outside: give the book an \"altitude\" or an \"air_pressure\"."
                .to_string(),
        )
    })?;
    let pressure = chamber.pressure(local).map_err(|error| because(&error))?;
    // Plasticizers give off next to nothing at degassing temperatures.
    let vacuum = Vacuum::new(local, pressure.absolute, Pressure::default());
    let vacuum = vacuum.map_err(|error| because(&error))?;
    let air = chamber.entrained(vacuum).map_err(|error| because(&error))?.ok_or_else(|| {
        note(
            "rise-not-known",
            "How far a pot swells was not seen: give the vacuum its \"rise\", the level under vacuum over the level before."
                .to_string(),
        )
    })?;
    let fills = |cup: usize| {
        let vessel = degas_vessel(book, cup)?;
        vessel.fills(liquid, air, vacuum).map_err(|error| because(&error))
    };
    // The pot's own cup if it takes all at once, else the one with the fewest fills.
    let mut best = (cup, fills(cup));
    if !matches!(&best.1, Ok(fills) if fills.count == 1) {
        for other in 0..book.tools.cups().len() {
            let found = fills(other);
            let is_better = match (&found, &best.1) {
                (Ok(found), Ok(best)) => found.count < best.count,
                (Ok(_), Err(_)) => true,
                _ => false,
            };
            if is_better {
                best = (other, found);
            }
        }
    }
    let (cup, fills) = (best.0, best.1?);
    let (capacity, step) = match book.tools.cups().get(cup) {
        Some(cup) => (cup.capacity, cup.mark),
        None => (Volume::default(), Volume::default()),
    };
    let (gauge, is_absolute) = match chamber.pulled {
        Pulled::Gauge { reading, .. } => (reading.get(), false),
        Pulled::Absolute(absolute) => (absolute.get(), true),
    };
    Ok(Degas {
        gauge: text::pressure(gauge, system),
        is_absolute,
        absolute: text::pressure(pressure.absolute.get(), system),
        gauge_off: pressure.over.map(|over| text::pressure(over, system)),
        rise: text::factor(fills.swollen / fills.level),
        cup: text::cup(capacity, step, system),
        fill_mark: text::cup(fills.mark, step, system),
        fills: fills.count,
        level: text::volume(fills.level, system),
        swollen: text::volume(fills.swollen, system),
    })
}

/// Cup `cup` in the vacuum chamber. A cup with its highest mark alone is filled to any level.
fn degas_vessel(book: &Book, cup: usize) -> Result<degas::Vessel, Note> {
    let brim = book.vessels.get(cup).and_then(|vessel| vessel.brim).ok_or_else(|| {
        note(
            "brim-not-known",
            "How much the cup holds to its brim is not known: fill it with water, weigh that, and give it a \"brim\"."
                .to_string(),
        )
    })?;
    let marks = book.tools.cups().get(cup).filter(|cup| cup.mark < cup.capacity);
    degas::Vessel::new(brim, Ratio::from(SPARE), marks.map(|cup| cup.mark))
        .map_err(|error| because(&error))
}

/// How `mass` of a mix of `recipe` is heated, at first from the bench's 20 °C.
pub(super) fn heating(
    book: &Book,
    recipe: &DayRecipe,
    mass: Mass,
    first: bool,
) -> Option<Reckoned<Heating>> {
    book.oven.as_ref().map(|oven| heating_in(oven, book, recipe, mass, first).into())
}

fn heating_in(
    oven: &Oven,
    book: &Book,
    recipe: &DayRecipe,
    mass: Mass,
    first: bool,
) -> Result<Heating, Note> {
    let system = book.system;
    let window = recipe.window.ok_or_else(|| {
        note("window-not-known", "The book states no shot window to heat to.".to_string())
    })?;
    let start = match (first, oven.reheat_from) {
        (true, _) => reference_temperature(),
        (false, Some(from)) => from,
        (false, None) => {
            return Err(note(
                "reheat-not-known",
                "How warm a pot goes back is not known: give the oven \"reheat_from\", or ask again with what the thermometer shows."
                    .to_string(),
            ));
        }
    };
    let (specific_heat, not_known) = specific_heat(&recipe.recipe, book)?;
    let told = || {
        let load = Load::new(mass, specific_heat, HeatCapacity::default())?;
        let window = Window::around(window.low, window.high)?;
        let bursts = oven.timed.bursts(load, start, window, Precautions::default())?;
        Ok((bursts, oven.timed.time(load, start, window.aim())?, window.aim()))
    };
    let (bursts, straight, aim) =
        told().map_err(|error: crate::process::heat::HeatError| because(&error))?;
    Ok(Heating {
        from: text::temperature(start, system),
        aim: text::temperature(aim, system),
        total: text::time(bursts.total),
        uncertainty: straight.uncertainty.map(text::time),
        one_overshoots: bursts.one_overshoots,
        beyond: match bursts.reach {
            Reach::Within => None,
            Reach::Beyond { factor, .. } => Some(text::factor(factor)),
        },
        bursts: shown_bursts(&bursts, system),
        specific_heat_not_known: not_known,
    })
}

/// The bursts of a heating, shown.
pub(crate) fn shown_bursts(bursts: &Bursts, system: crate::quantity::System) -> Vec<Burst> {
    let shown = bursts.bursts.iter().map(|burst| Burst {
        duration: text::time(burst.duration),
        only_below: text::at_most(burst.only_below, system),
        expected: text::temperature(burst.expected, system),
        at_most: text::temperature(burst.at_most, system),
    });
    shown.collect()
}

/// The specific heat of a recipe's mix, and the materials that do not state theirs.
fn specific_heat(
    recipe: &Recipe,
    book: &Book,
) -> Result<(SpecificHeatCapacity, Vec<String>), Note> {
    let mut parts = Vec::new();
    let mut not_known = Vec::new();
    let (mut all, mut known) = (0.0, 0.0);
    for ingredient in recipe.ingredients() {
        let Ok(material) = book.materials.get(ingredient.material) else { continue };
        all += ingredient.ratio;
        match &material.specific_heat {
            Some(specific_heat) => {
                known += ingredient.ratio;
                parts.push((Mass::from_si(ingredient.ratio), specific_heat.value));
            }
            None => not_known.push(material.name.clone()),
        }
    }
    if known < LEAST_KNOWN * all {
        let names = not_known.join(", ");
        return Err(note(
            "specific-heat-not-known",
            format!(
                "The specific heat of {names} is not known, and that is more than a tenth of the mix."
            ),
        ));
    }
    let mean = mix_specific_heat(&parts).map_err(|error| because(&error))?;
    Ok((mean, not_known))
}

/// What the heating of `pots` had to assume.
pub(super) fn assumed(pots: &[Pot]) -> Option<Note> {
    let stages = pots.iter().flat_map(|pot| &pot.stages);
    let known = stages.filter_map(|stage| stage.heating.as_ref().and_then(Reckoned::known));
    let mut names: Vec<&str> =
        known.flat_map(|heating| &heating.specific_heat_not_known).map(String::as_str).collect();
    names.sort_unstable();
    names.dedup();
    (!names.is_empty()).then(|| {
        let names = names.join(", ");
        note(
            "specific-heat-assumed",
            format!("Specific heat not known of {names}: taken as that of the rest of the pot."),
        )
    })
}

/// A stage of a pot as its heats count it.
pub(super) struct Heated<'a> {
    pub(super) recipe: &'a Recipe,
    pub(super) stage: &'a Stage,
}

/// The heats of a pot, and what they leave of the budget of the plastisol that has least left.
pub(super) fn heats(book: &Book, stages: &[Heated<'_>]) -> Heats {
    let count = stages.iter().fold(0_u32, |sum, heated| sum.saturating_add(heated.stage.heats));
    let mut bases: Vec<MaterialId> =
        stages.iter().flat_map(|heated| heated.recipe.base()).map(|part| part.material).collect();
    bases.sort_unstable();
    bases.dedup();
    let bases: Vec<&Material> =
        bases.into_iter().filter_map(|base| book.materials.get(base).ok()).collect();
    let stated = bases.iter().any(|base| base.budget.is_some());
    let spent = bases.iter().map(|base| heat_spent(base, book, stages));
    let worst = spent.reduce(|a, b| Ok(with_less_left(a?, b?)));
    let budget = worst.filter(|_| stated).map(Reckoned::from);
    Heats { count, budget }
}

/// The one of two that has less left, or is further over.
fn with_less_left(a: HeatSpent, b: HeatSpent) -> HeatSpent {
    let margin = |spent: &HeatSpent| spent.budget.quantity - spent.spent.quantity;
    if margin(&b) < margin(&a) { b } else { a }
}

fn heat_spent(base: &Material, book: &Book, stages: &[Heated<'_>]) -> Result<HeatSpent, Note> {
    let (Some(stated), Some(energy)) = (base.budget, &base.activation_energy) else {
        let name = &base.name;
        return Err(note(
            "budget-not-known",
            format!(
                "The book does not state both \"budget\" and \"activation_energy\" of \"{name}\"."
            ),
        ));
    };
    let source = energy.source.clone().unwrap_or_default();
    let kinetics = Kinetics::new(energy.value, stated.at, source).map_err(|e| because(&e))?;
    let mut record = HeatRecord::fresh();
    for heated in stages {
        let equivalent = equivalent_time(heated.stage, book, &kinetics)?;
        for _ in 0..heated.stage.heats {
            record = record.heated(Some(equivalent));
        }
    }
    let (budget, more) = budget_with(stated, book, stages)?;
    let standing = Standing::of(record, Some(budget)).map_err(|error| because(&error))?;
    let (left, over) = match standing.balance {
        Balance::Left(left) => (left, None),
        Balance::Overspent(over) => (Time::default(), Some(over)),
        Balance::Unknown => {
            return Err(note("heat-not-known", "The heats of the pot are not known.".to_string()));
        }
    };
    Ok(HeatSpent {
        material: base.name.clone(),
        at: text::temperature(stated.at, book.system),
        budget: text::minutes(budget),
        spent: text::minutes(record.spent.unwrap_or_default()),
        left: text::minutes(left),
        over: over.map(text::minutes),
        more_stabilizer_not_counted: more,
    })
}

/// One heat of a stage as time at the reference temperature: straight up to the aim, then held there.
fn equivalent_time(stage: &Stage, book: &Book, kinetics: &Kinetics) -> Result<Time, Note> {
    let heating = match &stage.heating {
        Some(Reckoned::Known(heating)) => heating,
        Some(Reckoned::Unknown(_)) => {
            return Err(note(
                "heating-not-known",
                "Its heating could not be reckoned.".to_string(),
            ));
        }
        None => {
            return Err(note(
                "oven-not-timed",
                "How long a pot is heated is not known: give the bench its \"oven\".".to_string(),
            ));
        }
    };
    let hot_for = book.oven.and_then(|oven| oven.hot_for).ok_or_else(|| {
        note(
            "hot-time-not-known",
            "How long a pot stays hot is not known: give the oven \"hot_for\".".to_string(),
        )
    })?;
    let at = |at: Time, temperature| Reading { at, temperature };
    let up = heating.total.quantity;
    let history = [
        at(Time::default(), heating.from.quantity),
        at(up, heating.aim.quantity),
        at(up + hot_for, heating.aim.quantity),
    ];
    kinetics.equivalent_time(&history).map_err(|error| because(&error))
}

/// What a `stated` budget comes to with the least stabilizer of all stages, and whether there is more
/// of it than the figures hold for.
fn budget_with(
    stated: HeatBudget,
    book: &Book,
    stages: &[Heated<'_>],
) -> Result<(Time, bool), Note> {
    let mut extra = None;
    let mut least: Option<f64> = None;
    for heated in stages {
        let mut dose = 0.0;
        for ingredient in heated.recipe.ingredients() {
            let material = book.materials.get(ingredient.material);
            if let Some(material) = material.ok().filter(|one| one.kind == Kind::Stabilizer) {
                dose += ingredient.ratio;
                extra = extra.or(material.buys);
            }
        }
        least = Some(least.map_or(dose, |least: f64| least.min(dose)));
    }
    let dose = Ratio::from(least.unwrap_or(0.0));
    let budget = Budget::new(stated.time, stated.with, extra).map_err(|error| because(&error))?;
    match budget.at_dose(dose) {
        Ok(time) => Ok((time, false)),
        Err(BudgetError::TooMuch { most, .. }) => {
            budget.at_dose(most).map(|time| (time, true)).map_err(|error| because(&error))
        }
        Err(error) => Err(because(&error)),
    }
}

/// The water of the book, shown.
pub(super) fn water(book: &Book) -> Option<SinkWater> {
    book.limits.water.map(|fished| SinkWater {
        temperature: text::temperature(fished.temperature, book.system),
        salinity: text::salinity(fished.salinity),
        density: text::density(fished.water.density),
    })
}

/// How a piece from `cavities` of `mold` sinks that is made of `layers`, each a mass and its density.
pub(super) fn sinking(
    book: &Book,
    mold: &Mold,
    cavities: &Cavities,
    layers: &[(Mass, MassDensity)],
) -> Option<Reckoned<Sinking>> {
    let water = book.limits.water.as_ref()?;
    Some(sinking_in(water, mold, cavities, layers).into())
}

fn sinking_in(
    fished: &FishedWater,
    mold: &Mold,
    cavities: &Cavities,
    layers: &[(Mass, MassDensity)],
) -> Result<Sinking, Note> {
    let shape = cavities
        .body
        .ok_or_else(|| note("body-not-known", format!("\"{}\" states no body.", mold.name)))?;
    let (mut mass, mut volume) = (Mass::default(), Volume::default());
    for (layer, density) in layers {
        mass += *layer;
        volume += *layer / *density;
    }
    let density = mass / volume;
    let body = Body { volume, hook: mold.hook, shape, own_drag: None };
    let fall = body.fall(density, &fished.water).map_err(|error| because(&error))?;
    Ok(Sinking {
        density: text::density(density),
        hook: text::mass(mold.hook.mass),
        speed: text::speed(fall.speed),
        slowest: text::speed(fall.trust.slowest),
        fastest: text::speed(fall.trust.fastest),
        motion: fall.trust.motion,
    })
}

#[cfg(all(test, feature = "document"))]
mod tests {
    use serde_json::{Value, json};
    use std::string::{String, ToString};

    use super::*;
    use crate::document;
    use crate::plan::Plan;

    const BOOK: &str = include_str!("../../examples/demo/book.json");

    fn demo() -> Value {
        serde_json::from_str(BOOK).unwrap()
    }

    /// The plan of 24 salted and 24 plain worms in the shop of `book`.
    fn plan(book: &Value) -> Plan {
        let book = document::book_from_text(&book.to_string()).unwrap_or_else(|f| panic!("{f}"));
        let line = |product: &str| json!({ "order": "1", "product": product, "pieces": 24 });
        let orders = json!({
            "format": "pourwright/1.0",
            "lines": [line("dusk finger"), line("dusk finger, salted")]
        });
        let day = document::orders_from_text(&orders.to_string(), &book).unwrap();
        Plan::make(&book, &day).unwrap_or_else(|faults| panic!("{faults}"))
    }

    fn without(path: &str, field: &str) -> Value {
        let mut book = demo();
        book.pointer_mut(path).unwrap().as_object_mut().unwrap().remove(field);
        book
    }

    fn with(path: &str, field: &str, value: Value) -> Value {
        let mut book = demo();
        book.pointer_mut(path).unwrap()[field] = value;
        book
    }

    fn why<T>(reckoned: Option<&Reckoned<T>>) -> Option<&str> {
        match reckoned {
            Some(Reckoned::Unknown(note)) => Some(&note.code),
            _ => None,
        }
    }

    #[test]
    fn a_salted_piece_sinks_faster_than_a_plain_one() {
        let plan = plan(&demo());
        let speed = |line: usize| {
            plan.lines[line].sinks.as_ref().and_then(Reckoned::known).unwrap().speed.quantity
        };
        assert!(speed(1) > speed(0));
    }

    #[test]
    fn the_fills_hold_the_pot_and_stay_below_the_brim() {
        let plan = plan(&demo());
        let degas = plan.pots[0].degas.as_ref().and_then(Reckoned::known).unwrap();
        assert!(degas.level.quantity <= degas.fill_mark.quantity);
        assert!((degas.rise.quantity.value - 1.8).abs() < 1e-9);
        let brim = Volume::from_si(1150e-6);
        assert!(degas.swollen.quantity <= brim * (1.0 - SPARE));
        let held = degas.level.quantity * f64::from(degas.fills);
        assert!(held >= plan.pots[0].stages[0].fills.quantity);
    }

    #[test]
    fn heats_are_counted_and_balanced() {
        let plan = plan(&demo());
        let heats = &plan.pots[0].heats;
        assert_eq!(heats.count, 2);
        let spent = heats.budget.as_ref().and_then(Reckoned::known).unwrap();
        let sum = spent.spent.quantity + spent.left.quantity;
        assert!((sum - spent.budget.quantity).value.abs() < 1e-6);
        // The budget of 45 min at 2 % of stabilizer, and what the teaspoon a cup has on top buys.
        let dose = 4.928_921_593_75 * 1.02 / (236.588_236_5 * 1.03);
        let budget = 45.0 * 60.0 + (dose - 0.02) * 100.0 * 8.0 * 60.0;
        assert!((spent.budget.quantity.value - budget).abs() < 1e-6 * budget);
    }

    /// What is spent beyond the budget is said, and nothing is then left.
    #[test]
    fn too_much_heat_is_said() {
        let book = with("/materials/clear-base/budget", "time", json!("6 min"));
        let plan = plan(&book);
        let spent = plan.pots[0].heats.budget.as_ref().and_then(Reckoned::known).unwrap();
        assert!(spent.over.is_some() && spent.left.quantity == Time::default());
        assert!(plan.sheet().to_string().contains("TOO MUCH HEAT"));
    }

    #[test]
    fn a_silent_book_gets_a_silent_plan() {
        let mut book = demo();
        for (path, field) in [("/bench", "vacuum"), ("/bench", "oven"), ("/limits", "water")] {
            book.pointer_mut(path).unwrap().as_object_mut().unwrap().remove(field);
        }
        book["materials"]["clear-base"].as_object_mut().unwrap().remove("budget");
        let plan = plan(&book);
        let pot = &plan.pots[0];
        assert_eq!((&pot.degas, &pot.stages[0].heating, &pot.heats.budget), (&None, &None, &None));
        assert!(plan.water.is_none() && plan.lines.iter().all(|line| line.sinks.is_none()));
        let sheet = plan.sheet().to_string();
        assert!(sheet.contains("No heat budget was given: 2 heats."), "{sheet}");
    }

    #[test]
    fn what_is_missing_is_named() {
        let degas = |book: &Value| why(plan(book).pots[0].degas.as_ref()).map(String::from);
        assert_eq!(degas(&without("", "altitude")).as_deref(), Some("air-not-known"));
        assert_eq!(degas(&without("/bench/vacuum", "rise")).as_deref(), Some("rise-not-known"));
        let mut no_brim = demo();
        for cup in no_brim["bench"]["cups"].as_array_mut().unwrap() {
            cup.as_object_mut().unwrap().remove("brim");
        }
        assert_eq!(degas(&no_brim).as_deref(), Some("brim-not-known"));

        let heating = |book: &Value, stage: usize| {
            why(plan(book).pots[0].stages[stage].heating.as_ref()).map(String::from)
        };
        let no_reheat = without("/bench/oven", "reheat_from");
        assert_eq!(heating(&no_reheat, 0), None);
        assert_eq!(heating(&no_reheat, 1).as_deref(), Some("reheat-not-known"));
        let no_window = without("/materials/clear-base", "shot_window");
        assert_eq!(heating(&no_window, 0).as_deref(), Some("window-not-known"));

        let budget = |book: &Value| why(plan(book).pots[0].heats.budget.as_ref()).map(String::from);
        assert_eq!(budget(&no_reheat).as_deref(), Some("heating-not-known"));
        assert_eq!(
            budget(&without("/bench/oven", "hot_for")).as_deref(),
            Some("hot-time-not-known")
        );
        assert_eq!(budget(&without("/bench", "oven")).as_deref(), Some("oven-not-timed"));
        let no_energy = without("/materials/clear-base", "activation_energy");
        assert_eq!(budget(&no_energy).as_deref(), Some("budget-not-known"));

        let no_body = plan(&without("/molds/finger-5", "body"));
        assert_eq!(why(no_body.lines[0].sinks.as_ref()), Some("body-not-known"));
    }

    #[test]
    fn a_specific_heat_is_taken_from_the_rest_only_where_it_hardly_counts() {
        let plan_of = |book: &Value| plan(book);
        let demo = plan_of(&demo());
        assert!(demo.assumptions.iter().any(|note| note.code == "specific-heat-assumed"));
        let mut book = with("/bench/oven", "of", json!("firm-base"));
        book["materials"]["clear-base"].as_object_mut().unwrap().remove("specific_heat");
        let plan = plan_of(&book);
        assert_eq!(why(plan.pots[0].stages[0].heating.as_ref()), Some("specific-heat-not-known"));
    }

    #[test]
    fn more_stabilizer_than_the_figure_holds_for_is_said() {
        let book = with("/materials/stabilizer/buys", "most", json!("2.01 %"));
        let plan = plan(&book);
        let spent = plan.pots[0].heats.budget.as_ref().and_then(Reckoned::known).unwrap();
        assert!(spent.more_stabilizer_not_counted);
        let book = with("/materials/clear-base/budget", "with", json!("3 %"));
        let plan = self::plan(&book);
        assert_eq!(why(plan.pots[0].heats.budget.as_ref()), Some("budget-too-little-stabilizer"));
    }

    /// A plan that was kept as a record is the same when it is read again.
    #[test]
    fn a_plan_comes_back_from_its_document() {
        let plan = plan(&demo());
        let text = serde_json::to_string(&plan).unwrap();
        assert_eq!(
            serde_json::from_str::<Plan>(&text).unwrap().sheet().to_string(),
            plan.sheet().to_string()
        );
    }
}
