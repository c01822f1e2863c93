//! The clock of a pot: how many shots fit into one heat, and when it goes back into the oven.
//!
//! A shot takes the hands h, from filling the injector to the next shot, and sets for s. With k such molds in turn
//! a shot can be made every max(h, (h + s)/k). A heat goes on while the next shot ends before the pot has
//! cooled to the bottom of its window: Σ Δt/t_hot(m) ≤ 1 over its shots, t_hot the time that the shop has stated,
//! or that follows from the cooling that it has watched, for what is in the pot at each shot ([`Cooling::time`]). Then
//! it is heated again, and what is left of the shots goes on.

use alloc::borrow::Cow;
use alloc::format;
use alloc::vec::Vec;

use uom::si::time::minute;

use super::figures::seconds;
use super::heat::{Cooling, HeatError};
use crate::codes::codes;
use crate::fault::Diagnose;
use crate::parameter::{Check, Parameter, ParameterError, ParameterErrors};
use crate::quantity::{Mass, Ratio, ThermodynamicTemperature, Time};

/// Like shots in a row: into one mold, or into several of its kind.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ShotSeries {
    /// How many shots.
    pub shots: u32,
    /// How often one can be made.
    pub every: Time,
    /// Mass that one takes out of the pot.
    pub takes: Mass,
}

/// How long a pot stays hot.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Hot {
    /// As long as the shop states, however much is in it.
    Stated(Time),
    /// As its cooling was watched.
    Watched {
        /// How pots cool.
        cooling: Cooling,
        /// The temperature of the room.
        room: ThermodynamicTemperature,
        /// The temperature after the last burst.
        from: ThermodynamicTemperature,
        /// The bottom of the window.
        to: ThermodynamicTemperature,
    },
}

/// One heat of a pot.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Heat {
    /// How many shots were made before it.
    pub after: u32,
    /// How many shots are made in it.
    pub shots: u32,
    /// Mass in the pot when it begins.
    pub mass: Mass,
    /// From the last burst to the last shot.
    pub lasts: Time,
    /// How much of the time that the pot stays hot that is, as a share.
    pub used: Ratio,
}

/// Why the shots of a pot do not fit into its heats.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum ClockError {
    /// Numbers that are wrong.
    #[error(transparent)]
    Parameters(#[from] ParameterErrors),
    /// A pot that cools before a single shot is made.
    #[error(
        "A shot takes {}, and the pot stays hot for {}.",
        seconds(.shot), seconds(.hot)
    )]
    TooShort {
        /// Time of a shot.
        shot: Time,
        /// How long the pot stays hot.
        hot: Time,
        /// How many shots were made before.
        after: u32,
    },
    /// The pot holds less than its shots take.
    #[error("The shots take more than the pot holds.")]
    Empty,
    /// How the pot cools is not known.
    #[error(transparent)]
    Heat(#[from] HeatError),
}

impl Diagnose for ClockError {
    codes! {
        Self::Parameters(errors) => errors.code(),
        Self::TooShort { .. } => "clock-too-short",
        Self::Empty => "clock-empty",
        Self::Heat(error) => error.code(),
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::Parameters(errors) => errors.help(),
            Self::TooShort { shot, .. } => format!(
                "Make a larger pot, keep it warm for more than {:.1} min, or use more molds in turn.",
                shot.get::<minute>()
            )
            .into(),
            Self::Empty => "Give the pot at least what its shots take.".into(),
            Self::Heat(error) => error.help(),
        }
    }

    fn numbers(&self) -> &[ParameterError] {
        match self {
            Self::Parameters(errors) => errors.numbers(),
            Self::Heat(error) => error.numbers(),
            _ => &[],
        }
    }

    fn parameter(&self) -> Option<Parameter> {
        match self {
            Self::Parameters(errors) => errors.parameter(),
            Self::Heat(error) => error.parameter(),
            Self::TooShort { .. } => Some(Parameter::HotFor),
            Self::Empty => Some(Parameter::PotMass),
        }
    }
}

/// How often a shot can be made: the hands take `hands` for each, it sets for `sets` in one of `molds` molds that are
/// shot in turn.
///
/// # Errors
/// All numbers that are outside their ranges: hands that take no time, a setting below zero, no mold.
pub fn every(hands: Time, sets: Time, molds: u32) -> Result<Time, ParameterErrors> {
    let mut check = Check::new();
    check
        .number(Parameter::Hands, hands.value)
        .number(Parameter::Sets, sets.value)
        .number(Parameter::Molds, f64::from(molds));
    check.finish()?;
    let turn = (hands + sets) / f64::from(molds);
    Ok(if turn > hands { turn } else { hands })
}

/// The heats of a pot of `mass` for its `runs`, one after the other. The pot starts hot, so the reheats are one less.
///
/// # Errors
/// [`ClockError::TooShort`] where the pot does not stay hot for a single shot; [`ClockError::Empty`];
/// [`ClockError::Heat`] where its cooling does not follow from what was watched; [`ClockError::Parameters`], with the index
/// of the run.
pub fn heats(mass: Mass, runs: &[ShotSeries], hot: &Hot) -> Result<Vec<Heat>, ClockError> {
    let mut check = Check::new();
    check.number(Parameter::PotMass, mass.value);
    if let Hot::Stated(time) = hot {
        check.number(Parameter::HotFor, time.value);
    }
    let mut all = 0.0;
    for (index, run) in runs.iter().enumerate() {
        check.element(Parameter::ShotEvery, index, run.every.value).element(
            Parameter::ShotMass,
            index,
            run.takes.value,
        );
        all += f64::from(run.shots);
    }
    if all > 0.0 {
        check.number(Parameter::PotShots, all);
    }
    check.finish()?;
    let mut heats: Vec<Heat> = Vec::new();
    let (mut left, mut made) = (mass, 0_u32);
    for run in runs {
        for _ in 0..run.shots {
            if left.value <= 0.0 || (left - run.takes).value < -1e-6 * mass.value {
                return Err(ClockError::Empty);
            }
            let hot_for = hot.lasts(left)?;
            let share = run.every / hot_for;
            match heats.last_mut() {
                // Rounding must not cost a shot that just fits.
                Some(heat) if (heat.used + share).value <= 1.0 + 1e-9 => {
                    heat.shots = heat.shots.saturating_add(1);
                    heat.lasts += run.every;
                    heat.used += share;
                }
                _ if share.value > 1.0 + 1e-9 => {
                    return Err(ClockError::TooShort {
                        shot: run.every,
                        hot: hot_for,
                        after: made,
                    });
                }
                _ => heats.push(Heat {
                    after: made,
                    shots: 1,
                    mass: left,
                    lasts: run.every,
                    used: share,
                }),
            }
            made = made.saturating_add(1);
            left -= run.takes;
        }
    }
    Ok(heats)
}

impl Hot {
    /// How long a pot with `mass` in it stays hot from the last burst on.
    ///
    /// # Errors
    /// [`ClockError::Heat`] if its cooling does not follow from what was watched.
    pub fn lasts(&self, mass: Mass) -> Result<Time, ClockError> {
        match *self {
            Self::Stated(time) => Ok(time),
            Self::Watched { cooling, room, from, to } => Ok(cooling.time(mass, from, to, room)?),
        }
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use rstest::rstest;
    use uom::si::mass::gram;
    use uom::si::thermodynamic_temperature::degree_celsius;
    use uom::si::time::second;

    use super::*;

    fn s(t: f64) -> Time {
        Time::new::<second>(t)
    }

    fn g(m: f64) -> Mass {
        Mass::new::<gram>(m)
    }

    fn run(shots: u32, every: f64) -> ShotSeries {
        ShotSeries { shots, every: s(every), takes: g(40.0) }
    }

    fn shots(heats: &[Heat]) -> Vec<u32> {
        heats.iter().map(|heat| heat.shots).collect()
    }

    /// 8 min hold 9 shots of 50 s: 22 of them take three heats (plain arithmetic).
    #[rstest]
    #[case(22, 50.0, 480.0, &[9, 9, 4])]
    #[case(9, 50.0, 480.0, &[9])]
    #[case(10, 48.0, 480.0, &[10])]
    #[case(11, 48.0, 480.0, &[10, 1])]
    #[case(3, 480.0, 480.0, &[1, 1, 1])]
    fn shots_go_into_heats(
        #[case] count: u32,
        #[case] every: f64,
        #[case] hot: f64,
        #[case] expected: &[u32],
    ) {
        let heats = heats(g(1000.0), &[run(count, every)], &Hot::Stated(s(hot))).unwrap();
        assert_eq!(shots(&heats), expected);
        let after = heats.iter().map(|heat| heat.after).collect::<Vec<_>>();
        let summed = expected.iter().scan(0, |sum, shots| {
            let before = *sum;
            *sum += shots;
            Some(before)
        });
        assert_eq!(after, summed.collect::<Vec<_>>());
    }

    /// What fits but for rounding fits; what is too long by more than that does not.
    #[test]
    fn rounding_costs_no_shot() {
        let of = |count, every: f64| heats(g(1000.0), &[run(count, every)], &Hot::Stated(s(1.0)));
        assert_eq!(shots(&of(1, 1.0 + 1e-9).unwrap()), [1]);
        assert_eq!(of(1, 1.0 + 1.5e-9).unwrap_err().code(), "clock-too-short");
        assert_eq!(shots(&of(2, 0.5 * (1.0 + 0.5e-9)).unwrap()), [2]);
        assert_eq!(shots(&of(2, 0.5 * (1.0 + 1.5e-9)).unwrap()), [1, 1]);
    }

    /// A pot gives what it holds, to a millionth of it.
    #[test]
    fn a_pot_gives_what_it_holds() {
        let of = |pot: f64, count, takes: f64| {
            let run = ShotSeries { shots: count, every: s(50.0), takes: g(takes) };
            heats(g(pot), &[run], &Hot::Stated(s(480.0))).map(|heats| shots(&heats))
        };
        assert_eq!(of(40.0, 1, 40.0 * (1.0 + 0.5e-6)), Ok(Vec::from([1])));
        assert_eq!(of(40.0, 1, 40.0 * (1.0 + 1.5e-6)), Err(ClockError::Empty));
        assert_eq!(of(80.0, 2, 40.0), Ok(Vec::from([2])));
        // Of an empty pot there is not even a ten-millionth.
        let runs = [40.0, 4e-6].map(|takes| ShotSeries { takes: g(takes), ..run(1, 50.0) });
        assert_eq!(heats(g(40.0), &runs, &Hot::Stated(s(480.0))), Err(ClockError::Empty));
    }

    #[test]
    fn no_shot_is_no_heat_and_too_many_are_a_slip() {
        let of = |count| {
            let run = ShotSeries { shots: count, every: s(1.0), takes: g(1e-3) };
            heats(g(1000.0), &[run, run], &Hot::Stated(s(480.0)))
        };
        assert_eq!(of(0), Ok(Vec::new()));
        assert_eq!(shots(&of(50_000).unwrap()).iter().sum::<u32>(), 100_000);
        let refused = of(50_001).unwrap_err();
        assert_eq!(refused.parameter(), Some(Parameter::PotShots));
    }

    #[test]
    fn molds_in_turn() {
        assert_eq!(every(s(50.0), s(100.0), 1), Ok(s(150.0)));
        assert_eq!(every(s(50.0), s(100.0), 2), Ok(s(75.0)));
        assert_eq!(every(s(50.0), s(100.0), 4), Ok(s(50.0)));
        assert!(every(s(0.0), s(100.0), 1).is_err() && every(s(50.0), s(100.0), 0).is_err());
        assert!(every(s(50.0), s(f64::NAN), 1).is_err());
    }

    #[rstest]
    #[case(1000.0, 50.0, 40.0, "clock-too-short")]
    #[case(300.0, 50.0, 480.0, "clock-empty")]
    #[case(0.0, 50.0, 480.0, "out-of-range")]
    #[case(1000.0, 0.0, 480.0, "out-of-range")]
    #[case(1000.0, 50.0, f64::NAN, "not-finite")]
    fn refuses(#[case] grams: f64, #[case] every: f64, #[case] hot: f64, #[case] code: &str) {
        let refused = heats(g(grams), &[run(10, every)], &Hot::Stated(s(hot))).unwrap_err();
        assert_eq!(refused.code(), code);
    }

    proptest! {
        /// All shots are made, in no heat more than the pot stays hot for, and none could end sooner.
        #[test]
        fn heats_hold_their_shots(
            runs in prop::collection::vec((1..20_u32, 10.0..120.0f64), 1..4),
            watched in any::<bool>(),
        ) {
            let celsius = ThermodynamicTemperature::new::<degree_celsius>;
            let all: u32 = runs.iter().map(|run| run.0).sum();
            let mass = g(40.0 * f64::from(all) + 100.0);
            let runs: Vec<ShotSeries> = runs.iter().map(|&(shots, every)| run(shots, every)).collect();
            let hot = if watched {
                let cooling = Cooling::observed(mass, celsius(175.0), celsius(155.0), s(900.0), celsius(20.0));
                Hot::Watched { cooling: cooling.unwrap(), room: celsius(20.0), from: celsius(175.0), to: celsius(160.0) }
            } else {
                Hot::Stated(s(480.0))
            };
            match heats(mass, &runs, &hot) {
                Ok(heats) => {
                    prop_assert_eq!(shots(&heats).iter().sum::<u32>(), all);
                    for two in heats.windows(2) {
                        prop_assert!(two[0].used.value <= 1.0 + 1e-9);
                        prop_assert!(two[1].after == two[0].after + two[0].shots);
                        prop_assert!(two[1].mass < two[0].mass);
                    }
                    let lasts = heats.iter().fold(0.0, |sum, heat| sum + heat.lasts.value);
                    let took: f64 = runs.iter().map(|run| f64::from(run.shots) * run.every.value).sum();
                    prop_assert!((lasts - took).abs() < 1e-6);
                }
                Err(error) => prop_assert_eq!(error.code(), "clock-too-short"),
            }
        }
    }
}
