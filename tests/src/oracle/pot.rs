//! One pot without fresh base, step by step forwards; masses in grams.

/// One stage.
#[derive(Debug, Clone, Copy)]
pub struct Stage {
    /// Share of base.
    pub base_share: f64,
    /// Mass that goes out.
    pub out: f64,
    /// Capacity of the vessel.
    pub capacity: f64,
}

/// Mass in the pot at each stage when it starts with `start`; `None` if it runs dry. The base in
/// the pot decides what it holds: everything else is added to it.
pub fn holds(stages: &[Stage], bottom: f64, loss: f64, start: f64) -> Option<Vec<f64>> {
    let mut base = start * stages[0].base_share;
    let mut held = Vec::new();
    for stage in stages {
        let mass = base / stage.base_share;
        held.push(mass);
        let left = mass * (1.0 - loss) - stage.out;
        if left < bottom {
            return None;
        }
        base = left * stage.base_share;
    }
    Some(held)
}

/// The smallest start with which the pot does not run dry, by halving.
pub fn least_start(stages: &[Stage], bottom: f64, loss: f64) -> f64 {
    let (mut low, mut high) = (0.0, 1.0);
    while holds(stages, bottom, loss, high).is_none() {
        high *= 2.0;
    }
    for _ in 0..200 {
        let middle = 0.5 * (low + high);
        if holds(stages, bottom, loss, middle).is_some() {
            high = middle;
        } else {
            low = middle;
        }
    }
    high
}

/// Whether the pot serves all stages within its capacities.
pub fn fits(stages: &[Stage], bottom: f64, loss: f64, least: f64) -> bool {
    let start = least_start(stages, bottom, loss).max(least);
    let held = holds(stages, bottom, loss, start * (1.0 + 1e-12)).expect("it does not run dry");
    held.iter().zip(stages).all(|(held, stage)| *held <= stage.capacity * (1.0 + 1e-9))
}
