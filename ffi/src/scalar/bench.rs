//! A mass as the balance, the spoons or the dropper can give it.

use std::mem::MaybeUninit;

use pourwright::bench::{
    Balance, Bench as Tools, Handling, Manner, Measure as Best, MeasureError, Step, Tool,
};

use crate::error::{ArgumentError, Error, Failure};
use crate::guard::guard;
use crate::memory::{array, given};
use crate::number::{grams, grams_per_milliliter, in_grams, milliliters, share};
use crate::range::{
    ANY, At, G, ML, Number, Range, above_0, finite, first_outside, from_0, refusal,
};

/// The balance.
pub const POUR_BALANCE: i32 = 1;
/// Level spoonfuls.
pub const POUR_SPOONS: i32 = 3;
/// Whole drops.
pub const POUR_DROPS: i32 = 4;

/// The most spoons of different size that a bench has.
pub const POUR_MOST_SPOONS: usize = 8;

/// The tools on a bench, and a material. Set all to 0 first: a tool that is 0 is not there.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct Bench {
    /// The smallest difference that the balance shows; no balance where 0, whatever it would weigh.
    pub balance_reads_g: f64,
    /// The most that it weighs at once; 5000 times what it reads where 0.
    pub balance_to_g: f64,
    /// The least that it is trusted with; 0 where nothing is known.
    pub balance_from_g: f64,
    /// The spoons, at most 8; may be null where there are none.
    pub spoons_ml: *const f64,
    /// How many spoons there are.
    pub spoons: usize,
    /// The material in a spoon: a liquid's density, a powder's as scooped; not measured by spoon where 0.
    pub as_measured_g_per_ml: f64,
    /// One drop of it; not dropped where 0.
    pub drop_g: f64,
}

/// The way with the least handling.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct Measure {
    /// What it gives.
    pub mass_g: f64,
    /// (given − wanted)/wanted.
    pub deviation: f64,
    /// `POUR_BALANCE`, `POUR_SPOONS` or `POUR_DROPS`.
    pub tool: i32,
    /// How much handling it is: readings, spoonfuls, tens of drops.
    pub acts: u32,
    /// How many drops; 0 with another tool.
    pub drops: u32,
    /// How many spoonfuls of each spoon, in the order of the bench.
    pub spoonfuls: [u32; POUR_MOST_SPOONS],
    /// Not used; 0.
    pub reserved: u32,
}

/// How to measure `mass_g` of a material within the relative `tolerance` (0.05 is 5 %): the way with the least
/// handling.
///
/// `POUR_REFUSED` where no tool keeps the tolerance; the help says from what mass on it would do.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_bench_measure(
    bench: Option<&Bench>,
    mass_g: f64,
    tolerance: f64,
    measure: Option<&mut MaybeUninit<Measure>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut measure = measure;
    guard(error, &mut || {
        let bench = given("bench", bench)?;
        let measure = given("measure", measure.as_deref_mut())?;
        // SAFETY: the header asks for an array of so many spoons, or null.
        let spoons = unsafe { array("bench/spoons_ml", bench.spoons_ml, bench.spoons)? };
        if spoons.len() > POUR_MOST_SPOONS {
            let error = ArgumentError::TooLarge { most: POUR_MOST_SPOONS };
            return Err(Failure::at("bench/spoons", &error));
        }
        let numbers = bench.numbers(mass_g, tolerance);
        finite(&numbers)?;
        let choice = bench
            .tools(spoons)
            .and_then(|tools| tools.measure(grams(mass_g), &bench.manner(), share(tolerance)));
        let choice = choice.map_err(|error| why(&numbers, spoons, &error))?;
        measure.write(best(&choice.best));
        Ok(())
    })
}

impl Bench {
    fn numbers(&self, mass_g: f64, tolerance: f64) -> [Number<'static>; 7] {
        [
            ("mass_g", mass_g, above_0(G)),
            ("tolerance", tolerance, ANY),
            ("bench/balance_reads_g", self.balance_reads_g, from_0(G)),
            ("bench/balance_to_g", self.balance_to_g, from_0(G)),
            ("bench/balance_from_g", self.balance_from_g, from_0(G)),
            ("bench/as_measured_g_per_ml", self.as_measured_g_per_ml, Range::DensityOr0),
            ("bench/drop_g", self.drop_g, from_0(G)),
        ]
    }

    fn tools(&self, spoons: &[f64]) -> Result<Tools, MeasureError> {
        let readability = grams(self.balance_reads_g);
        let balance = (self.balance_reads_g != 0.0).then(|| Balance {
            readability,
            capacity: match self.balance_to_g {
                0.0 => Balance::usual_capacity(readability),
                to => grams(to),
            },
            least_load: grams(self.balance_from_g),
        });
        let spoons = spoons.iter().map(|ml| milliliters(*ml)).collect();
        Tools::new(balance, spoons, Vec::new(), Handling::default())
    }

    fn manner(&self) -> Manner {
        let (by_volume, drop) = (self.as_measured_g_per_ml, self.drop_g);
        Manner {
            by_volume: (by_volume != 0.0).then(|| grams_per_milliliter(by_volume)),
            drop: (drop != 0.0).then(|| grams(drop)),
        }
    }
}

fn why(numbers: &[Number<'static>], spoons: &[f64], error: &MeasureError) -> Failure {
    let at = match error {
        MeasureError::Tolerance { .. } => At::Parameter("tolerance"),
        MeasureError::Capacity { .. } => At::Parameter("bench/balance_to_g"),
        MeasureError::NotReached { .. } => At::Parameter("mass_g"),
        MeasureError::NoTool => At::Parameter("bench"),
        _ => At::Number("bench"),
    };
    let spoon = first_outside("bench/spoons_ml", spoons, above_0(ML));
    let spoon = spoon.iter().map(|(name, x, range)| (name.as_str(), *x, *range));
    let numbers: Vec<_> = numbers.iter().copied().chain(spoon).collect();
    refusal(&numbers, at, error)
}

fn best(best: &Best) -> Measure {
    let mut measure = Measure {
        mass_g: in_grams(best.mass),
        deviation: best.deviation.value,
        tool: match best.tool {
            Tool::Balance => POUR_BALANCE,
            Tool::Drops => POUR_DROPS,
            // A bench without cups gives the cup no work.
            _ => POUR_SPOONS,
        },
        acts: best.acts,
        drops: 0,
        spoonfuls: [0; POUR_MOST_SPOONS],
        reserved: 0,
    };
    for step in &best.steps {
        match *step {
            Step::Drop { times } => measure.drops = times,
            Step::Spoon { spoon, times } => {
                if let Some(spoonfuls) = measure.spoonfuls.get_mut(spoon) {
                    *spoonfuls = spoonfuls.saturating_add(times);
                }
            }
            _ => {}
        }
    }
    measure
}
