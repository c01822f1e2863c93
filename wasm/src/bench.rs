//! A mass as the balance, the spoons or the dropper can give it.

use pourwright::bench::{Balance, Bench, Handling, Manner, Step, Tool};
use wasm_bindgen::prelude::wasm_bindgen;

use crate::number::{grams, grams_per_milliliter, in_grams, milliliters, share};
use crate::refused::Refused;

/// How to measure a mass within a relative tolerance, by the way with the least handling: its tool (0 the balance, 1 the
/// spoons, 2 the dropper), the mass that it gives in g, (given − wanted)/wanted, how much handling it is, how many drops, and
/// how many spoonfuls of each spoon.
///
/// # Errors
/// No tool keeps the tolerance, with the mass from which one would; a number out of its range.
#[wasm_bindgen(js_name = benchMeasure)]
#[allow(clippy::too_many_arguments)] // the wrapper takes them by name
pub fn bench_measure(
    mass_g: f64,
    tolerance: f64,
    balance_reads_g: Option<f64>,
    balance_to_g: Option<f64>,
    balance_from_g: f64,
    as_measured_g_per_ml: Option<f64>,
    drop_g: Option<f64>,
    spoons_ml: &[f64],
) -> Result<Vec<f64>, Refused> {
    let balance = balance_reads_g.map(grams).map(|readability| Balance {
        readability,
        capacity: balance_to_g.map_or_else(|| Balance::usual_capacity(readability), grams),
        least_load: grams(balance_from_g),
    });
    let spoons = spoons_ml.iter().map(|ml| milliliters(*ml)).collect();
    let bench = Bench::new(balance, spoons, Vec::new(), Handling::default())?;
    let manner = Manner {
        by_volume: as_measured_g_per_ml.map(grams_per_milliliter),
        drop: drop_g.map(grams),
    };
    let best = bench.measure(grams(mass_g), &manner, share(tolerance))?.best;
    let mut drops = 0;
    let mut spoonfuls = vec![0.0; spoons_ml.len()];
    for step in &best.steps {
        match *step {
            Step::Drop { times } => drops = times,
            Step::Spoon { spoon, times } => {
                if let Some(spoonfuls) = spoonfuls.get_mut(spoon) {
                    *spoonfuls += f64::from(times);
                }
            }
            _ => {}
        }
    }
    let tool = match best.tool {
        Tool::Spoons => 1.0,
        Tool::Drops => 2.0,
        _ => 0.0,
    };
    let first = [tool, in_grams(best.mass), best.deviation.value, best.acts.into(), drops.into()];
    Ok(first.into_iter().chain(spoonfuls).collect())
}
