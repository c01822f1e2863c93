//! Heats of a pot, and the heat that its stabilizer still withstands.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::clock::hot_not_known;
use super::note;
use crate::book::Book;
use crate::codes::code;
use crate::material::{HeatBudget, Kind, Material};
use crate::mix::MaterialId;
use crate::plan::layout::{PotLayout, StageLayout};
use crate::plan::shelf::Leftover;
use crate::plan::{MaterialMass, PlannedHeating, Pot, Stage};
use crate::process::budget::{Budget, BudgetError, BudgetStatus, Extra, Remaining};
use crate::process::history::{HeatRecord, Kinetics, Reading};
use crate::quantity::{Mass, Ratio, ThermodynamicTemperature, Time};
use crate::show::{Calculated, Note, Shown, because, part, text};

part! {
    /// Heats of a pot, and the heat that its stabilizer still withstands.
    pub struct Heats {
        /// Number of its heats, reheats between shots included.
        pub count: u32,
        /// The same with the heats of the leftover in it that was heated most often; none if that is not known. They count for
        /// the mix that is left of the pot.
        pub in_all: Option<u32>,
        /// Heat spent and left, if the book states a budget.
        pub budget: Option<Calculated<HeatSpent>>,
    }
}

part! {
    /// Heat that a pot spends of its budget, as time at one temperature.
    pub struct HeatSpent {
        /// The plastisol that has least left.
        pub material: String,
        /// Reference temperature of the times.
        pub at: Shown<ThermodynamicTemperature>,
        /// Time that the pot withstands.
        pub budget: Shown<Time>,
        /// Time that its heats spend, each held at its aim from the last burst to the last shot, and that its leftovers
        /// had spent before. It counts for what is left of the pot.
        pub spent: Shown<Time>,
        /// The part of it spent before, by the leftover that was heated most; none without one.
        pub before: Option<Shown<Time>>,
        /// Time that is left.
        pub left: Shown<Time>,
        /// Time spent beyond the budget.
        pub over: Option<Shown<Time>>,
        /// Additional stabilizer, from the start, with which the pot would withstand it; none if no dose is known that
        /// does.
        pub needs: Option<MaterialMass>,
        /// Whether there is more stabilizer than the material's figure is stated for; the excess is not counted.
        pub more_stabilizer_not_counted: bool,
    }
}

impl Heats {
    /// Time spent, which counts for what is left of the pot; `None` if not known.
    #[must_use]
    pub fn spent(&self) -> Option<&Shown<Time>> {
        self.budget.as_ref()?.known().map(|spent| &spent.spent)
    }
}

/// Heats of `pot`, of which the `stages` are shown, and what is left of the budget of the plastisol that has least left.
pub(in crate::plan) fn heats(book: &Book, pot: &PotLayout<'_>, stages: &[Stage]) -> Heats {
    let from_shelf = pot.from_shelf.takes().into_iter().flat_map(|from| &from.parts);
    let there = pot.begun().map(|there| &there.contents);
    let left_overs: Vec<&Leftover> = from_shelf.map(|(one, _)| *one).chain(there).collect();
    let count = pot.heats();
    let before = left_overs.iter().try_fold(0, |most, one| Some(one.heats?.max(most)));
    let mut bases: Vec<MaterialId> = pot
        .stages
        .iter()
        .flat_map(|stage| stage.recipe.recipe.base())
        .map(|part| part.material)
        .collect();
    bases.sort_unstable();
    bases.dedup();
    let mut stated = false;
    let spent = bases.into_iter().filter_map(|id| {
        let base = book.materials.get(id).ok()?;
        stated |= base.budget.is_some();
        Some(heat_spent(base, before_heating(id, &left_overs), book, (pot, stages)))
    });
    let worst = spent.reduce(|a, b| Ok(with_less_left(a?, b?)));
    let budget = worst.filter(|_| stated).map(Calculated::from);
    Heats { count, in_all: before.map(|before| count.saturating_add(before)), budget }
}

/// Whether a pot takes no more heats than the book allows, and stays hot for each of its shots.
pub(in crate::plan) fn keeps_heats(book: &Book, pot: &PotLayout<'_>) -> bool {
    let is_too_short = |stage: &StageLayout<'_>| match &stage.clock {
        Some(Err(why)) => why.code == "clock-too-short",
        _ => false,
    };
    book.limits
        .heats
        .is_none_or(|allowed| pot.heats() <= allowed && !pot.stages.iter().any(is_too_short))
}

/// The one of two that has less left, or is further over.
fn with_less_left(a: HeatSpent, b: HeatSpent) -> HeatSpent {
    let margin = |spent: &HeatSpent| spent.budget.quantity - spent.spent.quantity;
    if margin(&b) < margin(&a) { b } else { a }
}

/// Heat record of the `left_overs` that bring `base` into a pot; `None` if none does.
fn before_heating(base: MaterialId, left_overs: &[&Leftover]) -> Result<Option<HeatRecord>, Note> {
    let mut record: Option<HeatRecord> = None;
    for left_over in left_overs.iter().filter(|one| one.mix.mass_of(base) > Mass::default()) {
        // What was never heated has spent nothing.
        let never = (left_over.heats == Some(0)).then(Time::default);
        let Some(spent) = left_over.spent.or(never) else {
            let name = &left_over.name;
            return Err(note(
                code!("left-over-heat-not-known"),
                format!(
                    "\"{name}\" was heated before and states no \"spent\" time: add it, or the pot cannot be checked."
                ),
            ));
        };
        let heats = left_over.heats.unwrap_or_default();
        let one = HeatRecord { heats, spent: Some(spent) };
        record = Some(record.map_or(one, |record| record.joined(one)));
    }
    Ok(record)
}

fn heat_spent(
    base: &Material,
    before: Result<Option<HeatRecord>, Note>,
    book: &Book,
    (pot, stages): (&PotLayout<'_>, &[Stage]),
) -> Result<HeatSpent, Note> {
    let (Some(stated), Some(energy)) = (base.budget, &base.activation_energy) else {
        let name = &base.name;
        return Err(note(
            code!("budget-not-known"),
            format!(
                "The book does not state both \"budget\" and \"activation_energy\" of \"{name}\"."
            ),
        ));
    };
    let source = energy.source.clone().unwrap_or_default();
    let kinetics = Kinetics::new(energy.value, stated.at, source).map_err(|e| because(&e))?;
    let before = before?;
    let mut record = before.unwrap_or(HeatRecord::fresh());
    for stage in stages {
        match stage.clock.as_ref().and_then(Calculated::known) {
            Some(clock) => {
                for heat in clock {
                    // A reheat without a table takes no longer than the first heat, of more.
                    let again = heat.heating.as_ref().filter(|again| again.known().is_some());
                    let heating = again.or(stage.heating.as_ref());
                    let equivalent = equivalent_time(heating, heat.lasts.quantity, &kinetics)?;
                    record = record.heated(Some(equivalent));
                }
            }
            None => {
                let heating = stage.heating.as_ref();
                let hot_for = book.oven.as_ref().and_then(|oven| oven.hot_for);
                let hot_for = match (hot_for, heating) {
                    (Some(hot_for), _) => hot_for,
                    (None, Some(_)) => return Err(hot_not_known()),
                    (None, None) => Time::default(),
                };
                let equivalent = equivalent_time(heating, hot_for, &kinetics)?;
                for _ in 0..stage.heats {
                    record = record.heated(Some(equivalent));
                }
            }
        }
    }
    let stabilizer = Stabilizer::of(book, &pot.stages);
    let (budget, more) = stabilizer.budget(stated)?;
    let standing = BudgetStatus::of(record, Some(budget)).map_err(|error| because(&error))?;
    let (left, over) = match standing.remaining {
        Remaining::Left(left) => (left, None),
        Remaining::Overspent(over) => (Time::default(), Some(over)),
        Remaining::Unknown => {
            return Err(note(
                code!("heat-not-known"),
                "It is not known what the heats of the pot cost its stabilizer.".to_string(),
            ));
        }
    };
    let needs = over.and_then(|_| stabilizer.needed(stated, record.spent?, pot.stages.first()?));
    Ok(HeatSpent {
        needs,
        material: base.name.clone(),
        at: text::temperature(stated.at, book.system),
        budget: text::minutes(budget),
        spent: text::minutes(record.spent.unwrap_or_default()),
        before: before.and_then(|before| before.spent).map(text::minutes),
        left: text::minutes(left),
        over: over.map(text::minutes),
        more_stabilizer_not_counted: more,
    })
}

/// One heat as time at the reference temperature: straight up to the aim, then held there for as long as it `lasts`.
fn equivalent_time(
    heating: Option<&Calculated<PlannedHeating>>,
    lasts: Time,
    kinetics: &Kinetics,
) -> Result<Time, Note> {
    let heating = match heating {
        Some(Calculated::Known(heating)) => heating,
        Some(Calculated::Unknown(_)) => {
            return Err(note(
                code!("heating-not-known"),
                "One of its heats has no table of readings.".to_string(),
            ));
        }
        None => {
            return Err(note(
                code!("oven-not-timed"),
                "The book does not state how long a pot is heated. Add the \"oven\" to the bench."
                    .to_string(),
            ));
        }
    };
    let from = heating.from.as_ref().ok_or_else(|| {
        note(
            code!("reheat-not-known"),
            "The book does not state how warm a pot goes back into the oven. Add \"reheat_from\" to the oven.".to_string(),
        )
    })?;
    let at = |at: Time, temperature| Reading { at, temperature };
    let up = heating.total.quantity;
    let history = [
        at(Time::default(), from.quantity),
        at(up, heating.aim.quantity),
        at(up + lasts, heating.aim.quantity),
    ];
    kinetics.equivalent_time(&history).map_err(|error| because(&error))
}

/// The stabilizer of a pot.
struct Stabilizer<'a> {
    /// The smallest dose of all stages, by mass of base.
    dose: Ratio,
    /// The first one whose gain in time for more of it is stated, and that gain.
    buys: Option<(&'a Material, Extra)>,
}

impl<'a> Stabilizer<'a> {
    fn of(book: &'a Book, stages: &[StageLayout<'_>]) -> Self {
        let mut buys = None;
        let mut least: Option<f64> = None;
        for stage in stages {
            let mut dose = 0.0;
            for ingredient in stage.recipe.recipe.ingredients() {
                let material = book.materials.get(ingredient.material);
                if let Some(material) = material.ok().filter(|one| one.kind == Kind::Stabilizer) {
                    dose += ingredient.ratio;
                    buys = buys.or(material.buys.map(|extra| (material, extra)));
                }
            }
            least = Some(least.map_or(dose, |least: f64| least.min(dose)));
        }
        Self { dose: Ratio::from(least.unwrap_or(0.0)), buys }
    }

    fn known(&self, stated: HeatBudget) -> Result<Budget, BudgetError> {
        Budget::new(stated.time, stated.with, self.buys.map(|(_, extra)| extra))
    }

    /// The `stated` budget with this dose, and whether there is more of it than the figures are stated for.
    fn budget(&self, stated: HeatBudget) -> Result<(Time, bool), Note> {
        let budget = self.known(stated).map_err(|error| because(&error))?;
        match budget.at_dose(self.dose) {
            Ok(time) => Ok((time, false)),
            Err(BudgetError::TooMuch { most, .. }) => {
                budget.at_dose(most).map(|time| (time, true)).map_err(|error| because(&error))
            }
            Err(error) => Err(because(&error)),
        }
    }

    /// Stabilizer to add to this dose, from the `first` stage on, to withstand the time `spent`.
    fn needed(
        &self,
        stated: HeatBudget,
        spent: Time,
        first: &StageLayout<'_>,
    ) -> Option<MaterialMass> {
        let dose = self.known(stated).ok()?.dose_for(spent).ok()?;
        let base = first.held / first.recipe.recipe.total_per_base();
        let (material, _) = self.buys?;
        let mass = text::mass(base * (dose - self.dose));
        Some(MaterialMass { material: material.name.clone(), mass })
    }
}

/// Warning that a pot gets more heat than it withstands, and what would help; `None` if it does not, or if that is not
/// known.
pub(in crate::plan) fn too_much_heat(pot: &Pot) -> Option<Note> {
    let spent = pot.heats.budget.as_ref()?.known().filter(|spent| spent.over.is_some())?;
    let mut helps = Vec::new();
    if let Some(needs) = &spent.needs {
        helps.push(format!("{} more of {} from the start", needs.mass.text, needs.material));
    }
    if let [_, .., last] = pot.stages.as_slice() {
        helps.push(format!("a pot of its own for {}", last.formulas.join(" + ")));
    }
    if spent.before.is_some() {
        helps.push("no leftover in it".to_string());
    }
    helps.push("less time hot".to_string());
    Some(note(
        code!("too-much-heat"),
        format!(
            "Pot {} gets TOO MUCH HEAT: {} at {}, but {} withstands {}. What would help: {}.",
            pot.pot,
            spent.spent.text,
            spent.at.text,
            spent.material,
            spent.budget.text,
            helps.join(", or ")
        ),
    ))
}
