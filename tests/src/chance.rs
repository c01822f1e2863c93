//! Chance from a seed.

use crate::split_mix::SplitMix64;

/// Numbers of a distribution.
#[derive(Debug, Clone)]
pub struct Chance(SplitMix64);

impl Chance {
    /// From its seed.
    #[must_use]
    pub fn seeded(seed: u64) -> Self {
        Self(SplitMix64(seed))
    }

    /// From 0 to below 1.
    pub fn share(&mut self) -> f64 {
        (self.0.bits() >> 11) as f64 / (1_u64 << 53) as f64
    }

    /// From `low` to below `high`.
    pub fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.share()
    }

    /// A whole number from `low` to `high`, both included.
    pub fn whole(&mut self, low: u32, high: u32) -> u32 {
        low + (self.share() * f64::from(high - low + 1)) as u32
    }

    /// Standard normal, by Box and Muller.
    pub fn normal(&mut self) -> f64 {
        let radius = (-2.0 * (1.0 - self.share()).ln()).sqrt();
        radius * (std::f64::consts::TAU * self.share()).cos()
    }

    /// How many of `count` happen, each with probability `rate`.
    pub fn of(&mut self, count: u32, rate: f64) -> u32 {
        (0..count).map(|_| u32::from(self.share() < rate)).sum()
    }
}

/// What a scale with steps of `step` shows.
#[must_use]
pub fn shown(mass: f64, step: f64) -> f64 {
    (mass / step).round() * step
}
