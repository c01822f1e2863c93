//! Shots to the mass that must be in the pot.

use super::{BatchError, Loads};
use crate::parameter::{Check, Parameter, Relation};
use crate::quantity::{Mass, Ratio};
use crate::show::legible::{legible, plain};

/// A run of shots from one pot, with what is lost and what goes back.
#[derive(Clone, Copy, PartialEq)]
pub struct Run {
    /// How many shots.
    pub shots: u32,
    /// How they divide into loads.
    pub loads: Loads,
    /// Mass of one shot, topping included.
    pub fill: Mass,
    /// Mass of its sprue; not above `fill`.
    pub sprue: Mass,
    /// Share y of the sprues that goes back into the pot, 0 to 1; what does not is kept as left-over. Those
    /// of the last load come too late.
    pub returned: Ratio,
    /// Mass that the injector keeps each time.
    pub injector_keeps: Mass,
    /// How many times that is lost: at each cleaning or cold stop, the last cleaning included.
    pub cleanings: u32,
    /// Mass that clings to the pot's wall.
    pub film: Mass,
    /// Mass that the injector cannot draw from the pot, the film included.
    pub heel: Mass,
}

/// Mass that stays in a vessel from which nothing more can be drawn: max(film, heel). The heel is all that
/// cannot be drawn, so the film is part of it; a heel below the film is measured wrong, or not at all.
#[must_use]
pub fn undrawn(film: Mass, heel: Mass) -> Mass {
    if film > heel { film } else { heel }
}

/// Mass that must be in the pot, and where it goes.
///
/// total = pieces + sprues_left + kept + in_cup = drawn − returned + kept + in_cup, both within
/// 8 u Σm (u = 2⁻⁵³).
#[derive(Clone, Copy, PartialEq)]
pub struct Need {
    /// The mass to mix.
    pub total: Mass,
    /// Mass of all shots.
    pub drawn: Mass,
    /// Mass of sprues that go back and are shot again, heated once more.
    pub returned: Mass,
    /// All pieces together.
    pub pieces: Mass,
    /// Sprues that are left over.
    pub sprues_left: Mass,
    /// Mass that the injector keeps over the run.
    pub kept: Mass,
    /// Mass that stays in the pot, film and heel: [`undrawn`].
    pub in_cup: Mass,
}

plain! { Loads }

legible! {
    Run { shots, loads, fill, sprue, returned, injector_keeps, cleanings, film, heel }
    Need { total, drawn, returned, pieces, sprues_left, kept, in_cup }
}

impl Run {
    /// A run of `shots` shots of `fill` each, in `loads`. Defaults: no sprue; nothing goes back; the injector keeps
    /// nothing and is cleaned once; no film and no heel.
    #[must_use]
    pub fn new(shots: u32, loads: Loads, fill: Mass) -> Self {
        Self {
            shots,
            loads,
            fill,
            sprue: Mass::default(),
            returned: Ratio::default(),
            injector_keeps: Mass::default(),
            cleanings: 1,
            film: Mass::default(),
            heel: Mass::default(),
        }
    }

    /// The same, with this mass of each shot left as sprue, of which the share `returned` goes back into the pot.
    #[must_use]
    pub fn with_sprue(self, sprue: Mass, returned: Ratio) -> Self {
        Self { sprue, returned, ..self }
    }

    /// The same, with this mass kept by the injector at each of `cleanings` cleanings.
    #[must_use]
    pub fn with_injector(self, keeps: Mass, cleanings: u32) -> Self {
        Self { injector_keeps: keeps, cleanings, ..self }
    }

    /// The same, in a pot with this film on its wall and this heel that cannot be drawn.
    #[must_use]
    pub fn with_pot(self, film: Mass, heel: Mass) -> Self {
        Self { film, heel, ..self }
    }

    /// The mass to mix: S m_fill − y m_sprue (S − shots of the last load) + cleanings · keeps + max(film, heel).
    ///
    /// # Errors
    /// No shot at all, or a number out of its range.
    pub fn need(&self) -> Result<Need, BatchError> {
        self.check()?;
        let shots = f64::from(self.shots);
        let before_last = f64::from(self.shots.saturating_sub(self.loads.shots_in_last));
        let drawn = self.fill * shots;
        let returned = self.sprue * self.returned * before_last;
        let kept = self.injector_keeps * f64::from(self.cleanings);
        let in_cup = undrawn(self.film, self.heel);
        Ok(Need {
            total: (drawn - returned) + kept + in_cup,
            drawn,
            returned,
            pieces: (self.fill - self.sprue) * shots,
            sprues_left: self.sprue * shots - returned,
            kept,
            in_cup,
        })
    }

    fn check(&self) -> Result<(), BatchError> {
        let mut check = Check::new();
        check
            .number(Parameter::Shots, f64::from(self.shots))
            .number(Parameter::ShotMass, self.fill.value)
            .number(Parameter::SprueMass, self.sprue.value)
            .number(Parameter::Returned, self.returned.value)
            .number(Parameter::ResidueMass, self.injector_keeps.value)
            .number(Parameter::PotFilm, self.film.value)
            .number(Parameter::PotHeel, self.heel.value)
            .relation(
                (Parameter::SprueMass, self.sprue.value),
                Relation::AtMost,
                (Parameter::ShotMass, self.fill.value),
            );
        Ok(check.finish()?)
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use rstest::rstest;
    use uom::si::mass::gram;

    use super::*;
    use crate::fault::Diagnose;

    fn g(x: f64) -> Mass {
        Mass::new::<gram>(x)
    }

    fn run() -> Run {
        Run {
            shots: 10,
            loads: Loads { shots_per_load: 4, loads: 3, shots_in_last: 2 },
            fill: g(41.4),
            sprue: g(3.4),
            returned: Ratio::from(0.5),
            injector_keeps: g(3.6),
            cleanings: 2,
            film: g(5.0),
            heel: g(10.0),
        }
    }

    #[test]
    fn a_run_by_hand() {
        // 414 − 0.5·3.4·8 + 7.2 + 10, of which 5 are the film.
        let got = run().need().unwrap();
        assert!((got.total.get::<gram>() - 417.6).abs() < 1e-10);
        assert!((got.returned.get::<gram>() - 13.6).abs() < 1e-12);
        assert!((got.sprues_left.get::<gram>() - 20.4).abs() < 1e-12);
    }

    #[test]
    fn an_injector_is_cleaned_once() {
        let plain = Run::new(10, run().loads, g(41.4));
        assert_eq!((plain.cleanings, plain.need().unwrap().total), (1, g(41.4) * 10.0));
    }

    #[test]
    fn sprues_of_one_load_come_too_late() {
        let loads = Loads { shots_per_load: 10, loads: 1, shots_in_last: 10 };
        let got = Run { loads, returned: Ratio::from(1.0), ..run() }.need().unwrap();
        assert_eq!(got.returned, g(0.0));
    }

    #[rstest]
    #[case(Run { shots: 0, ..run() }, "out-of-range")]
    #[case(Run { fill: g(0.0), ..run() }, "out-of-range")]
    #[case(Run { sprue: g(50.0), ..run() }, "out-of-range")]
    #[case(Run { returned: Ratio::from(1.1), ..run() }, "out-of-range")]
    #[case(Run { film: g(f64::NAN), ..run() }, "not-finite")]
    #[case(Run { heel: g(-1.0), ..run() }, "out-of-range")]
    fn refuses(#[case] run: Run, #[case] code: &str) {
        assert_eq!(run.need().unwrap_err().code(), code);
    }

    proptest! {
        #[test]
        fn mass_is_conserved(
            (shots, per_load, cleanings) in (1_u32..500, 1_u32..20, 0_u32..5),
            (fill, sprue, returned) in (1.0..300.0, 0.0..=1.0, 0.0..=1.0),
            (keeps, film, heel) in (0.0..20.0, 0.0..20.0, 0.0..50.0),
        ) {
            let loads = shots.div_ceil(per_load);
            let shots_in_last = shots - per_load * (loads - 1);
            let got = Run {
                shots,
                loads: Loads { shots_per_load: per_load, loads, shots_in_last },
                fill: g(fill),
                sprue: g(fill * sprue),
                returned: Ratio::from(returned),
                injector_keeps: g(keeps),
                cleanings,
                film: g(film),
                heel: g(heel),
            }
            .need()
            .unwrap();
            let out = got.pieces + got.sprues_left + got.kept + got.in_cup;
            let terms = got.drawn + got.returned + got.kept + got.in_cup + out;
            prop_assert!((got.total - out).abs() <= 8.0 * f64::EPSILON / 2.0 * terms);
            prop_assert!(got.sprues_left >= g(0.0) && got.total > g(0.0));
        }
    }
}
