//! Pieces to the mass to mix.

/// Probability of exactly `rejects` rejects among `cast` pieces.
fn probability(cast: u32, rejects: u32, rate: f64) -> f64 {
    // Of more rejects than these, the factors leave the range of numbers before they meet.
    const FEW: u32 = 60;
    let good = f64::from(cast - rejects);
    let ways = (0..rejects).map(|i| f64::from(cast - i) / f64::from(i + 1));
    if rejects <= FEW {
        return ways.product::<f64>() * rate.powf(f64::from(rejects)) * (1.0 - rate).powf(good);
    }
    let log: f64 = ways.map(f64::ln).sum();
    (log + f64::from(rejects) * rate.ln() + good * (-rate).ln_1p()).exp()
}

/// Probability that of `cast` pieces at least `wanted` are good.
pub fn enough(cast: u32, wanted: u32, rate: f64) -> f64 {
    if cast < wanted {
        return 0.0;
    }
    (0..=cast - wanted).map(|rejects| probability(cast, rejects, rate)).sum()
}

/// Shots, counted up one by one until the pieces suffice with the confidence; shapes as (pieces, cavities).
pub fn shots(shapes: &[(u32, u32)], rate: f64, confidence: f64) -> u32 {
    let mut shots = 1;
    loop {
        let mut all = 1.0;
        for &(pieces, cavities) in shapes {
            all *= enough(shots * cavities, pieces, rate);
        }
        // A miss by rounding alone counts as enough.
        if all >= confidence - 1e-12 {
            return shots;
        }
        shots += 1;
    }
}

/// Loads of an injector, filled shot by shot: how many, and the shots of the last.
pub fn loads(shots: u32, shot_g: f64, gives_g: f64) -> (u32, u32) {
    let (mut loads, mut in_load, mut left_g) = (1, 0, gives_g);
    for _ in 0..shots {
        if left_g < shot_g * (1.0 - 1e-9) {
            loads += 1;
            in_load = 0;
            left_g = gives_g;
        }
        left_g -= shot_g;
        in_load += 1;
    }
    (loads, in_load)
}

/// The mass to mix, followed load by load: the sprues of one load go back before the next.
pub fn need_g(
    shots: u32,
    shots_in_last_load: u32,
    (fill_g, sprue_g, returned): (f64, f64, f64),
    lost_g: f64,
) -> f64 {
    let mut need = lost_g;
    for shot in 1..=shots {
        need += fill_g;
        if shot <= shots - shots_in_last_load {
            need -= sprue_g * returned;
        }
    }
    need
}
