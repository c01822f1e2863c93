//! Two sums timed side by side, so that a machine that is busy slows both.

use std::hint::black_box;
use std::time::{Duration, Instant};

/// How long one measurement of one sum takes, at least.
const LONG_ENOUGH: Duration = Duration::from_millis(2);

/// How often the two take turns.
const ROUNDS: u32 = 100;

/// What one call of each takes.
#[derive(Debug, Clone, Copy)]
pub struct Pair {
    /// Of the library, in nanoseconds.
    pub ours: f64,
    /// Of the peer, in nanoseconds.
    pub peer: f64,
}

impl Pair {
    /// Times `ours` and `peer` in turns; of each the shortest time counts, since what disturbs a
    /// measurement only ever makes it longer.
    pub fn measure<T, U>(mut ours: impl FnMut() -> T, mut peer: impl FnMut() -> U) -> Self {
        let ours_calls = calls(&mut ours);
        let peer_calls = calls(&mut peer);
        let mut least = Self { ours: f64::INFINITY, peer: f64::INFINITY };
        for _ in 0..ROUNDS {
            least.ours = least.ours.min(a_call(&mut ours, ours_calls));
            least.peer = least.peer.min(a_call(&mut peer, peer_calls));
        }
        least
    }

    /// How many times as long the library takes.
    #[must_use]
    pub fn ratio(&self) -> f64 {
        self.ours / self.peer
    }
}

/// So many calls are long enough to be timed.
fn calls<T>(run: &mut impl FnMut() -> T) -> u32 {
    let mut calls = 1;
    while timed(run, calls) < LONG_ENOUGH {
        calls *= 2;
    }
    calls
}

/// Nanoseconds a call.
fn a_call<T>(run: &mut impl FnMut() -> T, calls: u32) -> f64 {
    timed(run, calls).as_secs_f64() * 1e9 / f64::from(calls)
}

fn timed<T>(run: &mut impl FnMut() -> T, calls: u32) -> Duration {
    let start = Instant::now();
    for _ in 0..calls {
        black_box(run());
    }
    start.elapsed()
}
