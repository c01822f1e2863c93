//! Small plans to ask the library for, and what every plan must keep.

use num_rational::BigRational;
use pourwright::plan::internals::precedence::{Composition, FreshBase, Precedence};
use pourwright::plan::internals::split::{Cup, Limits, Reason, Split, Wanted, sequence};
use pourwright::process::clock::Hot;
use pourwright::quantity::{Mass, Ratio};
use pourwright::uom::si::{mass::gram, ratio::ratio};
use pourwright_tests::oracle::day;

pub(crate) fn g(grams: f64) -> Mass {
    Mass::new::<gram>(grams)
}

/// On base 0, material i + 1 in `doses[i]` per 100 of base.
pub(crate) fn formula(doses: &day::Doses) -> Composition {
    let exact = |n: u32, d: u32| BigRational::new(n.into(), d.into());
    let doses = doses.iter().enumerate().map(|(i, &n)| (i + 1, exact(n, 100)));
    Composition::new([(0, exact(1, 1))], doses).unwrap()
}

pub(crate) fn precedence(formulas: &[day::Doses]) -> Precedence {
    with_base(formulas, FreshBase::Off)
}

pub(crate) fn with_base(formulas: &[day::Doses], fresh_base: FreshBase) -> Precedence {
    let all: Vec<Composition> = formulas.iter().map(formula).collect();
    Precedence::new(&all, fresh_base).unwrap()
}

/// A stage of a single shot.
pub(crate) fn whole(wanted: &day::Wanted) -> Wanted {
    Wanted {
        formula: wanted.formula,
        shot: g(wanted.draw),
        returned: g(0.0),
        kept: g(0.0),
        shots: 1,
        laminate: wanted.laminate,
        every: None,
        key: 0,
    }
}

/// A bench of one cup.
pub(crate) struct Bench {
    cups: Vec<Cup>,
    least: Vec<Mass>,
    heats: u32,
    hot: Vec<Option<Hot>>,
    loss: f64,
}

impl Bench {
    /// The bench of `limits`, for this number of formulas; 1e9 g means no limit.
    pub(crate) fn new(limits: &day::Limits, formulas: usize) -> Self {
        let capacity = (limits.capacity < 1e9).then(|| g(limits.capacity));
        let capacity = vec![capacity; formulas];
        Self {
            cups: vec![Cup { film: g(0.0), heel: g(limits.bottom), capacity }],
            least: vec![g(limits.least); formulas],
            heats: u32::try_from(limits.heats).unwrap(),
            hot: vec![None; formulas],
            loss: limits.loss,
        }
    }

    /// The same with pots that all stay hot so.
    pub(crate) fn hot(mut self, hot: Hot) -> Self {
        self.hot.fill(Some(hot));
        self
    }

    pub(crate) fn limits(&self) -> Limits<'_> {
        Limits {
            cups: &self.cups,
            least: &self.least,
            heats: Some(self.heats),
            hot: &self.hot,
            loss: Ratio::new::<ratio>(self.loss),
            injectors: 3,
        }
    }
}

/// No limit but comparability.
pub(crate) const FREE: day::Limits =
    day::Limits { capacity: 1e9, bottom: 0.0, least: 0.0, kept: 0.0, loss: 0.0, heats: 1000 };

/// Every shot is served once, every pot keeps its limits, the work can be done in its order, and the
/// bound does not claim too much.
pub(crate) fn check(
    split: &Split,
    wanted: &[Wanted],
    precedence: &Precedence,
    limits: &Limits<'_>,
) {
    for (stage, w) in wanted.iter().enumerate() {
        let visits = split.pots.iter().flat_map(|pot| &pot.visits);
        let served = |draws: &[(usize, u32)]| -> u32 {
            draws.iter().filter(|d| d.0 == stage).map(|d| d.1).sum()
        };
        assert_eq!(visits.map(|v| served(&v.draws)).sum::<u32>(), w.shots, "stage {stage}");
        let worked = split.work.iter().flat_map(|work| &work.draws).filter(|d| d.wanted == stage);
        assert_eq!(worked.map(|d| d.shots).sum::<u32>(), w.shots, "stage {stage}");
    }
    let mut heats = vec![0; split.pots.len()];
    // With reheats between shots, and how long each pot has been hot.
    let (mut with_reheats, mut hot) = (vec![0; split.pots.len()], vec![0.0; split.pots.len()]);
    let mut at = vec![0; split.pots.len()];
    for work in &split.work {
        for &pot in &work.heated {
            heats[pot] += 1;
            with_reheats[pot] += 1;
            hot[pot] = 0.0;
        }
        for draw in &work.draws {
            let wanted = &wanted[draw.wanted];
            if let (Some(Hot::Stated(hot_for)), Some(every)) =
                (limits.hot[wanted.formula], wanted.every)
            {
                for _ in 0..draw.shots {
                    if hot[draw.pot] + every.value > hot_for.value * (1.0 + 1e-9) {
                        with_reheats[draw.pot] += 1;
                        hot[draw.pot] = 0.0;
                    }
                    hot[draw.pot] += every.value;
                }
            }
            assert!(draw.visit >= at[draw.pot], "pot {} cannot go back", draw.pot);
            at[draw.pot] = draw.visit;
            let visit = &split.pots[draw.pot].visits[draw.visit];
            let same = precedence.canonical(wanted.formula);
            assert_eq!(same, Some(visit.formula));
        }
        if let Some(laminate) = work.laminate {
            let layers: Vec<_> = wanted.iter().filter(|w| w.laminate == Some(laminate)).collect();
            assert_eq!(work.draws.len(), layers.len());
            let mut pots: Vec<usize> = work.draws.iter().map(|d| d.pot).collect();
            pots.sort_unstable();
            pots.dedup();
            assert_eq!(pots.len(), layers.len(), "layers in one pot");
            assert!(work.draws.iter().all(|d| d.shots == work.draws[0].shots));
        }
    }
    assert!(with_reheats.iter().all(|&all| limits.heats.is_none_or(|limit| all <= limit)));
    for (pot, heats) in split.pots.iter().zip(heats) {
        let sequence = sequence(pot, wanted, precedence, limits, 8).unwrap();
        assert_eq!(sequence.heats, heats);
    }
    assert_eq!(split.proof.found, split.pots.len());
    assert!(split.proof.lower <= split.proof.found);
    let reasons: usize = split.proof.reasons.iter().map(|r| r.pots()).sum();
    assert_eq!(split.proof.lower, reasons);
    for reason in &split.proof.reasons {
        let (Reason::Apart { formulas } | Reason::Layers { formulas, .. }) = reason else {
            continue;
        };
        for (i, a) in formulas.iter().enumerate() {
            for b in &formulas[i + 1..] {
                let (a, b) = (a.formula, b.formula);
                assert!(!precedence.can_follow(a, b) && !precedence.can_follow(b, a));
            }
        }
    }
}
