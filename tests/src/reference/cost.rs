//! Cost of the lines of a planned day, in plain numbers.

use std::collections::BTreeMap;

use serde_json::Value;

use super::plan::{Batch, batches, list, pieces, recipe_of};
use super::shop::{Recipe, Shop, text};

/// Costing of a shop, in one currency.
#[derive(Debug, Clone)]
pub struct Costing {
    /// Of each material, per gram.
    pub per_g: BTreeMap<String, f64>,
    /// Of work, per second.
    pub per_s: f64,
    /// Seconds of work for a pot, a heat, a shot and a pack.
    pub seconds: [f64; 4],
    /// Of packing one pack.
    pub per_pack: f64,
    /// Worth of leftover, as a share of its cost.
    pub worth: f64,
}

/// Cost of a line.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub struct LineCost {
    /// Its plastic.
    pub materials: f64,
    /// Its packing.
    pub packing: f64,
    /// Its work.
    pub work: f64,
}

/// The costs of the lines of `plan`; `None` where it does not tell whose a draw is.
pub fn line_costs(
    shop: &Shop<'_>,
    orders: &Value,
    plan: &Value,
    costing: &Costing,
) -> Option<Vec<LineCost>> {
    let lines = list(&orders["lines"]);
    let batches = batches(shop, orders);
    let mut costs = vec![LineCost::default(); lines.len()];
    for pot in list(&plan["pots"]) {
        let (mut in_pot, mut added, mut kept, mut worth) = (0.0, 0.0, 0.0, 0.0);
        let mut shots = 0.0;
        let mut plastic = vec![0.0; lines.len()];
        let mut work = vec![0.0; lines.len()];
        for stage in list(&pot["stages"]) {
            for weigh in list(&stage["weigh"]) {
                let name = weigh["material"].as_str().unwrap_or_default();
                let per_g = costing.per_g.get(name).copied().unwrap_or(f64::NAN);
                let cost = per_g * value(&weigh["best"]["gives"]);
                in_pot += cost;
                added += cost;
            }
            worth = in_pot / value(&stage["holds"]);
            let recipe = recipe_of(shop, &batches, stage)?;
            for draw in list(&stage["draws"]) {
                let pots = 1.0 + list(&draw["together_with"]).len() as f64;
                let count = value(&draw["shots"]);
                let sprue = if pots == 1.0 { value(&draw["sprue"]) } else { 0.0 };
                let of_shots = count / pots;
                shots += of_shots;
                kept += worth * count * sprue;
                for (line, share) in sharing(&batches, &recipe, lines, plan, draw)? {
                    plastic[line] += worth * count * (value(&draw["per_shot"]) - sprue) * share;
                    work[line] += of_shots * share;
                }
            }
            kept -= worth * value(&stage["sprues_back"]);
            in_pot = worth * value(&stage["carried"]);
        }
        kept += worth * value(&pot["left_over"]);
        let borne = added - costing.worth * kept;
        let [per_pot, per_heat, per_shot, _] = costing.seconds;
        let seconds = per_pot + per_heat * value(&pot["heats"]["count"]) + per_shot * shots;
        let (all_plastic, all_work) = (plastic.iter().sum::<f64>(), work.iter().sum::<f64>());
        for (cost, (plastic, work)) in costs.iter_mut().zip(plastic.iter().zip(&work)) {
            cost.materials += borne * plastic / all_plastic;
            cost.work += costing.per_s * seconds * work / all_work;
        }
    }
    for (cost, line) in costs.iter_mut().zip(lines) {
        let packs = line["packs"].as_f64().unwrap_or(0.0);
        cost.packing += packs * costing.per_pack;
        cost.work += packs * costing.seconds[3] * costing.per_s;
    }
    Some(costs)
}

/// The lines that a draw serves, with their shares of the mass of its pieces. `None` where two laminated pieces
/// share a layer, so that the plan does not tell whose draw it is.
fn sharing(
    batches: &[Batch],
    recipe: &Recipe,
    lines: &[Value],
    plan: &Value,
    draw: &Value,
) -> Option<Vec<(usize, f64)>> {
    let layers = list(&draw["together_with"]).len() + 1;
    let is_layer = |(of, share): &(Recipe, f64)| {
        of.is(recipe) && (share - value(&draw["share"])).abs() < 1e-12
    };
    let mut serves = batches.iter().filter(|batch| {
        batch.mold == text(&draw["mold"])
            && batch.layers.len() == layers
            && batch.layers.iter().any(is_layer)
    });
    let (batch, None) = (serves.next()?, serves.next()) else { return None };
    let mass =
        |line: &usize| f64::from(pieces(&lines[*line])) * value(&plan["lines"][*line]["piece"]);
    let all: f64 = batch.lines.iter().map(mass).sum();
    Some(batch.lines.iter().map(|line| (*line, mass(line) / all)).collect())
}

/// The number of a quantity; no number where it has none, so that every comparison fails.
fn value(shown: &Value) -> f64 {
    shown["value"].as_f64().or(shown.as_f64()).unwrap_or(f64::NAN)
}
