//! One pot drawn at several stages: what it starts with and what each stage adds.
//!
//! Stage k draws D_k of composition a_k; then what is left becomes stage k + 1 of composition t by
//! adding only. With ρ_k = min t_i/a_i over a_i > 0, backwards from the last stage n:
//!
//! - carry_k = ρ_k · need_{k+1}, and carry_n = 0; with fresh base no more than what the vessel holds
//!   in addition to the draw;
//! - need_k = (D_k + kept_k − back_k + max(carry_k, back_k + max(heel, film))) / (1 − loss_k), back_k the
//!   sprues that are melted again;
//! - forwards, if the heel or the film is more than the carry, or the smallest pot more than the
//!   need, more is held: held_{k+1} = max(need_{k+1}, carried_k/ρ_k);
//! - additions_{k+1} = held_{k+1}·t − carried_k·a ≥ 0, and exactly 0 where t_i/a_i is ρ_k and all
//!   that can be is carried.
//!
//! Source: the mass balance of each stage. Without fresh base the start is as small as it can be, since all
//! base must be in it. With fresh base a smaller start would do, down to the first draw; this one makes as
//! much as the later stages can take over, so that they add as little as possible.
//!
//! The mass that cannot be drawn from the vessel is [`undrawn`], the film on its wall included; after the last
//! draw at least that stays, the film is lost and the rest is left over.

use alloc::borrow::Cow;
use alloc::format;
use alloc::vec::Vec;

use uom::si::mass::{gram, kilogram};

use super::precedence::FreshBase;
use crate::batch::undrawn;
use crate::codes::codes;
use crate::fault::Diagnose;
use crate::quantity::{Mass, Ratio};
use crate::show;

/// Additions smaller than this share of what they add to are rounding, and are 0.
const ROUNDING: f64 = 8.0 * f64::EPSILON;

/// One stage of a pot: what is shot from one heat.
#[derive(Debug, Clone, PartialEq)]
pub struct Stage<'a> {
    /// Each material's part of the mix by mass, on any scale: shares, ratios to base, grams.
    pub composition: &'a [f64],
    /// Mass that is shot.
    pub draw: Mass,
    /// Mass that the injector keeps when it is cleaned or goes cold after this stage.
    pub kept: Mass,
    /// Mass of the draw that comes back into the pot before the next stage: sprues that are melted
    /// again. It is one composition with this stage. Not above the draw; after the last stage
    /// nothing comes back.
    pub returned: Mass,
    /// Share of what the pot holds that is lost in this heat, at least 0 and below 1.
    pub loss: Ratio,
    /// Maximum mass of this mix in the vessel, head-room left; `None` for no limit.
    pub capacity: Option<Mass>,
    /// Heats that this stage takes: 1, or more if it is heated again.
    pub heats: u32,
}

/// The vessel, and the limits of the pot in it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Vessel {
    /// Mass that clings to the vessel when it is emptied: lost once.
    pub film: Mass,
    /// Mass that cannot be drawn, the film included.
    pub heel: Mass,
    /// Minimum mass to start with: the smallest pot, or the start rounded up.
    pub least: Mass,
    /// Heats that the stabilizer allows, `None` if not known.
    pub heats: Option<u32>,
}

/// Masses that one stage holds, gets and gives.
#[derive(Debug, Clone, PartialEq)]
pub struct Step {
    /// Masses that go in, by material: at the first stage the starting mix.
    pub additions: Vec<Mass>,
    /// The material of which the mix before is fullest, so that nothing of it is added. `None` at the
    /// first stage, and where the vessel kept the stage before from carrying all that it could.
    pub binds: Option<usize>,
    /// Mass of the pot when all is in, before the heat.
    pub held: Mass,
    /// Lost in the heat.
    pub lost: Mass,
    /// Shot out.
    pub drawn: Mass,
    /// Kept by the injector.
    pub kept: Mass,
    /// Put back: sprues that are melted again.
    pub returned: Mass,
    /// Left in the pot: goes into the next stage.
    pub carried: Mass,
}

/// Reason for the size of a sequence.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[non_exhaustive]
pub enum Raised {
    /// The smallest pot is more than the draws need.
    Least,
    /// After stage `stage` more cannot be drawn than the next stage needs.
    Heel {
        /// The stage after which it stays.
        stage: usize,
    },
}

/// The sequence of draws of one pot.
#[derive(Debug, Clone, PartialEq)]
pub struct Sequence {
    /// One for each stage.
    pub steps: Vec<Step>,
    /// Lost as film when the pot is emptied.
    pub film: Mass,
    /// Left over at the end, the film taken off.
    pub left: Mass,
    /// All heats of the pot.
    pub heats: u32,
    /// Causes that made the pot larger than its draws need, and by how much, first stage first; empty
    /// without any.
    pub raised: Vec<(Raised, Mass)>,
    /// The stage that fills its capacity most, and the room it leaves; `None` without limits.
    pub fullest: Option<(usize, Mass)>,
}

impl Sequence {
    /// Mass of the pot at first.
    #[must_use]
    pub fn start(&self) -> Mass {
        self.steps.first().map_or(Mass::default(), |step| step.held)
    }
}

/// Why there is no sequence.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum SequenceError {
    /// No stage.
    #[error("The pot has no stage.")]
    NoStage,
    /// A number that cannot be: negative, not finite, a loss of 1 or more.
    #[error("Stage {stage}: {what} cannot be {}.", show::number(*.value))]
    BadNumber {
        /// The stage, from 0.
        stage: usize,
        /// The mass or share.
        what: &'static str,
        /// The number given, masses in g.
        value: f64,
    },
    /// A stage lists another number of materials than the first one, or holds none of any.
    #[error("Stage {stage}: the composition is empty or not as long as the first stage's.")]
    BadComposition {
        /// The stage, from 0.
        stage: usize,
    },
    /// A stage lacks a material that the mix before holds: nothing of it can be carried over.
    #[error("Stage {stage} holds no material {material}, which the pot holds by then.")]
    NothingCarries {
        /// The stage that lacks it, from 0.
        stage: usize,
        /// Index of the material.
        material: usize,
    },
    /// The pot would not fit.
    #[error("Stage {stage} needs {} g in the pot, {} g more than it may hold.",
        Grams(*.held), Grams(*.held - *.capacity))]
    OverCapacity {
        /// The stage, from 0.
        stage: usize,
        /// Mass that it needs.
        held: Mass,
        /// Capacity of the vessel for it.
        capacity: Mass,
    },
    /// More heats than the stabilizer allows.
    #[error("The pot takes {heats} heats, {} more than the stabilizer allows.", heats.saturating_sub(*.allowed))]
    OverHeats {
        /// Heats of all stages.
        heats: u32,
        /// Heats allowed.
        allowed: u32,
    },
}

/// A mass in grams as a message shows it.
struct Grams(Mass);

impl core::fmt::Display for Grams {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        write!(f, "{:.1}", self.0.get::<gram>())
    }
}

impl Diagnose for SequenceError {
    codes! {
        Self::NoStage => "sequence-no-stage",
        Self::BadNumber { .. } => "sequence-bad-number",
        Self::BadComposition { .. } => "sequence-bad-composition",
        Self::NothingCarries { .. } => "sequence-nothing-carries",
        Self::OverCapacity { .. } => "sequence-over-capacity",
        Self::OverHeats { .. } => "sequence-over-heats",
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::NoStage => "Give at least one stage.".into(),
            Self::BadNumber { .. } => {
                "Masses are 0 or more and finite; a loss is at least 0 and below 1.".into()
            }
            Self::BadComposition { .. } => {
                "List every material at every stage, 0 where a stage lacks it.".into()
            }
            Self::NothingCarries { .. } => "Take this stage into another pot or before.".into(),
            Self::OverCapacity { capacity, .. } => format!(
                "Split the stages over more pots, or draw less: the pot may hold {} g there.",
                Grams(*capacity)
            )
            .into(),
            Self::OverHeats { allowed, .. } => {
                format!("Take at most {allowed} heats, the rest from another pot.").into()
            }
        }
    }
}

/// The pot that serves `stages` in this order with the smallest leftover.
///
/// Without fresh base the caller vouches that each stage can follow the one before by adding no
/// base, as [`Precedence`](super::precedence::Precedence) says; then none is added.
///
/// # Errors
///
/// See [`SequenceError`]: a number or composition that cannot be, a stage that cannot follow, a
/// limit that is passed, with by how much.
pub fn plan(
    stages: &[Stage<'_>],
    vessel: &Vessel,
    fresh_base: FreshBase,
) -> Result<Sequence, SequenceError> {
    check(stages, vessel)?;
    let shares: Vec<Vec<f64>> = stages.iter().map(|s| unit(s.composition)).collect();
    let mut joints = Vec::with_capacity(stages.len());
    for (stage, (from, to)) in (1..).zip(shares.iter().zip(shares.iter().skip(1))) {
        let joint = carry(from, to);
        joints.push(joint.map_err(|material| SequenceError::NothingCarries { stage, material })?);
    }
    let legs: Vec<Leg> = stages
        .iter()
        .enumerate()
        .map(|(k, stage)| Leg {
            out: kg(stage.draw) + kg(stage.kept),
            // After the last stage no mix is made that sprues could go into.
            back: if joints.get(k).is_some() { kg(stage.returned) } else { 0.0 },
            yields: 1.0 - stage.loss.value,
            carry: joints.get(k).map_or(0.0, |joint| joint.0),
            holds: match fresh_base {
                FreshBase::Off => f64::INFINITY,
                FreshBase::On => stage.capacity.map_or(f64::INFINITY, kg),
            },
        })
        .collect();
    let bottom = kg(undrawn(vessel.film, vessel.heel));
    let mut flows = Vec::with_capacity(legs.len());
    flow(&legs, bottom, kg(vessel.least), &mut flows);
    if let Some(stage) = flows.iter().position(|flow| !flow.held.is_finite()) {
        let what = "the mass that the pot must hold";
        return Err(SequenceError::BadNumber { stage, what, value: f64::INFINITY });
    }

    let heats = stages.iter().fold(0_u32, |sum, s| sum.saturating_add(s.heats));
    let fullest = limits(stages, vessel, &flows, heats)?;
    let mut steps = Vec::with_capacity(stages.len());
    let mut before: Option<(&[f64], f64, Option<usize>)> = None;
    for (k, ((stage, flow), share)) in stages.iter().zip(&flows).zip(&shares).enumerate() {
        let additions = additions(share, flow.held, before);
        steps.push(Step {
            additions: additions.into_iter().map(mass).collect(),
            binds: before.and_then(|(_, _, material)| material),
            held: mass(flow.held),
            lost: mass(flow.held * stage.loss.value),
            drawn: stage.draw,
            kept: stage.kept,
            returned: if joints.get(k).is_some() { stage.returned } else { Mass::default() },
            carried: mass(flow.carried),
        });
        before = joints.get(k).map(|&(rho, material)| {
            let next = flows.get(k.saturating_add(1)).map_or(0.0, |next| next.held);
            let full = flow.carried >= rho * next * (1.0 - ROUNDING);
            (share.as_slice(), flow.carried, full.then_some(material))
        });
    }
    let end = flows.last().map_or(0.0, |flow| flow.carried);
    let film = kg(vessel.film).min(end);
    Ok(Sequence {
        steps,
        film: mass(film),
        left: mass(end - film),
        heats,
        raised: raised(&flows),
        fullest,
    })
}

/// ρ = min t_i/a_i over a_i > 0, and the material that gives it; on failure the material that
/// `to` lacks.
fn carry(from: &[f64], to: &[f64]) -> Result<(f64, usize), usize> {
    let mut least = (f64::INFINITY, 0);
    for (material, (a, t)) in from.iter().zip(to).enumerate().filter(|(_, (a, _))| **a > 0.0) {
        if *t <= 0.0 {
            return Err(material);
        }
        if t / a < least.0 {
            least = (t / a, material);
        }
    }
    Ok(least)
}

/// Masses that go into a stage by material; `before` is the mix before it, its mass and the material
/// that binds where all that can be is carried.
fn additions(share: &[f64], held: f64, before: Option<(&[f64], f64, Option<usize>)>) -> Vec<f64> {
    let Some((from, carried, binds)) = before else {
        return share.iter().map(|t| held * t).collect();
    };
    let full = share.iter().zip(from).enumerate().map(|(material, (t, a))| {
        let (wanted, there) = (held * t, carried * a);
        let lacks = wanted - there;
        let none = Some(material) == binds || lacks <= ROUNDING * (wanted + there);
        if none { 0.0 } else { lacks }
    });
    full.collect()
}

fn raised(flows: &[Flow]) -> Vec<(Raised, Mass)> {
    let mut all = Vec::new();
    for (k, flow) in flows.iter().enumerate() {
        if k == 0 && flow.held > flow.need {
            all.push((Raised::Least, mass(flow.held - flow.need)));
        }
        if flow.bottom > 0.0 && k.saturating_add(1) < flows.len() {
            all.push((Raised::Heel { stage: k }, mass(flow.bottom)));
        }
    }
    all
}

/// The fullest stage and its room, if all limits are kept.
fn limits(
    stages: &[Stage<'_>],
    vessel: &Vessel,
    flows: &[Flow],
    heats: u32,
) -> Result<Option<(usize, Mass)>, SequenceError> {
    if let Some(allowed) = vessel.heats.filter(|&allowed| heats > allowed) {
        return Err(SequenceError::OverHeats { heats, allowed });
    }
    let mut fullest: Option<(usize, f64, f64, Mass)> = None;
    for (stage, (limit, flow)) in stages.iter().zip(flows).enumerate() {
        let Some(capacity) = limit.capacity else { continue };
        let fill = flow.held / kg(capacity);
        if fullest.is_none_or(|(_, most, ..)| fill > most) {
            fullest = Some((stage, fill, flow.held, capacity));
        }
    }
    let Some((stage, fill, held, capacity)) = fullest else { return Ok(None) };
    if !fits(fill) {
        return Err(SequenceError::OverCapacity { stage, held: mass(held), capacity });
    }
    Ok(Some((stage, mass((kg(capacity) - held).max(0.0)))))
}

/// Whether a vessel filled to the share `fill` of its capacity holds it; what rounding alone makes
/// too much does fit.
pub(super) fn fits(fill: f64) -> bool {
    fill <= 1.0 + 64.0 * f64::EPSILON
}

/// Input of the recursion for one stage; masses in kg.
#[derive(Debug, Clone, Copy)]
pub(super) struct Leg {
    /// Draw and what the injector keeps.
    pub(super) out: f64,
    /// Sprues that come back into the pot.
    pub(super) back: f64,
    /// 1 − loss.
    pub(super) yields: f64,
    /// ρ to the next stage; 0 at the last.
    pub(super) carry: f64,
    /// Capacity kept by carrying less, which fresh base makes up for; infinite without fresh base.
    pub(super) holds: f64,
}

/// Masses that one stage holds and carries on, kg.
#[derive(Debug, Clone, Copy)]
pub(super) struct Flow {
    /// Minimum for this stage and those after it.
    pub(super) need: f64,
    /// Mass held.
    pub(super) held: f64,
    /// Mass that stays after the draw.
    carried: f64,
    /// By how much the heel or film is more than the carry.
    bottom: f64,
}

/// The recursion: needs backwards, then what is really held forwards. `flows` is emptied first.
pub(super) fn flow(legs: &[Leg], bottom: f64, least: f64, flows: &mut Vec<Flow>) {
    flows.clear();
    let mut next_need = 0.0;
    for leg in legs.iter().rev() {
        let carry = (leg.carry * next_need).min(leg.holds * leg.yields - leg.out + leg.back);
        let carried = carry.max(bottom + leg.back);
        let need = (leg.out + (carried - leg.back)) / leg.yields;
        flows.push(Flow { need, held: need, carried, bottom: carried - carry.max(0.0) });
        next_need = need;
    }
    flows.reverse();
    let mut from_before = least;
    for (flow, leg) in flows.iter_mut().zip(legs) {
        // Only what is held beyond the need is added up, so that the carry keeps its digits.
        if from_before > flow.need * (1.0 + 4.0 * f64::EPSILON) {
            flow.carried += (from_before - flow.need) * leg.yields;
            flow.held = from_before;
        }
        from_before = flow.carried / leg.carry;
    }
}

fn check(stages: &[Stage<'_>], vessel: &Vessel) -> Result<(), SequenceError> {
    let materials = stages.first().ok_or(SequenceError::NoStage)?.composition.len();
    let bad = |stage, what, value| Err(SequenceError::BadNumber { stage, what, value });
    for (what, m) in
        [("the film", vessel.film), ("the heel", vessel.heel), ("the smallest pot", vessel.least)]
    {
        if !is_mass(m) {
            return bad(0, what, m.get::<gram>());
        }
    }
    for (k, stage) in stages.iter().enumerate() {
        let returned = ("what comes back", stage.returned);
        for (what, m) in
            [("the draw", stage.draw), ("what the injector keeps", stage.kept), returned]
        {
            if !is_mass(m) {
                return bad(k, what, m.get::<gram>());
            }
        }
        if stage.returned > stage.draw {
            return bad(k, returned.0, stage.returned.get::<gram>());
        }
        if let Some(capacity) = stage.capacity.filter(|&c| !is_mass(c) || kg(c) == 0.0) {
            return bad(k, "the capacity", capacity.get::<gram>());
        }
        if !(0.0..1.0).contains(&stage.loss.value) {
            return bad(k, "the loss", stage.loss.value);
        }
        if let Some(&part) = stage.composition.iter().find(|part| !is_part(**part)) {
            return bad(k, "a part of the composition", part);
        }
        let total: f64 = stage.composition.iter().sum();
        if stage.composition.len() != materials || !total.is_normal() {
            return Err(SequenceError::BadComposition { stage: k });
        }
    }
    Ok(())
}

/// A mass that can be weighed: finite, 0 or more.
pub(super) fn is_mass(m: Mass) -> bool {
    is_part(m.value)
}

/// Finite, 0 or more.
pub(super) fn is_part(x: f64) -> bool {
    x.is_finite() && x >= 0.0
}

/// Scaled to a sum of 1.
pub(super) fn unit(parts: &[f64]) -> Vec<f64> {
    let total: f64 = parts.iter().sum();
    parts.iter().map(|part| part / total).collect()
}

pub(super) fn kg(m: Mass) -> f64 {
    m.get::<kilogram>()
}

pub(super) fn mass(kg: f64) -> Mass {
    Mass::new::<kilogram>(kg)
}

#[cfg(test)]
mod tests {
    use super::*;
    use alloc::string::ToString;
    use alloc::vec;
    use proptest::prelude::*;
    use uom::si::ratio::ratio;

    fn plan(stages: &[Stage<'_>], vessel: &Vessel) -> Result<Sequence, SequenceError> {
        super::plan(stages, vessel, FreshBase::Off)
    }

    fn g(x: f64) -> Mass {
        Mass::new::<gram>(x)
    }

    fn stage(composition: &[f64], draw: f64) -> Stage<'_> {
        let loss = Ratio::new::<ratio>(0.0);
        Stage {
            composition,
            draw: g(draw),
            kept: g(0.0),
            returned: g(0.0),
            loss,
            capacity: None,
            heats: 1,
        }
    }

    fn vessel(film: f64, heel: f64) -> Vessel {
        Vessel { film: g(film), heel: g(heel), least: g(0.0), heats: None }
    }

    const PLAIN: &[f64] = &[1.0, 0.0, 0.0];
    const SOFT: &[f64] = &[0.9, 0.1, 0.0];
    const SALTED: &[f64] = &[0.81, 0.09, 0.1];

    fn held(s: &Sequence) -> Vec<f64> {
        s.steps.iter().map(|step| step.held.get::<gram>()).collect()
    }

    #[track_caller]
    fn near(got: f64, expected: f64) {
        assert!((got - expected).abs() < 1e-9 * expected.abs().max(1.0), "{got} for {expected}");
    }

    #[test]
    fn a_heel_that_is_more_than_the_carry_makes_the_next_stage_larger() {
        // After 100 g of plain 50 g stay: they make 50/0.9 of the soft mix, of which 10 g go out.
        let s = plan(&[stage(PLAIN, 100.0), stage(SOFT, 10.0)], &vessel(5.0, 50.0)).unwrap();
        // need_2 = 10 + 50, its carry 54 is more than the heel.
        near(held(&s)[0], 154.0);
        let s = plan(&[stage(PLAIN, 100.0), stage(SOFT, 1.0)], &vessel(0.5, 50.0)).unwrap();
        near(held(&s)[0], 150.0);
        near(held(&s)[1], 50.0 / 0.9);
        assert!(matches!(s.raised[..], [(Raised::Heel { stage: 0 }, _)]));
        near(s.raised[0].1.get::<gram>(), 50.0 - 51.0 * 0.9);
        near(s.film.get::<gram>(), 0.5);
        near(s.left.get::<gram>(), 50.0 / 0.9 - 1.0 - 0.5);
        assert_eq!(s.steps[1].additions[0], g(0.0));
        assert_eq!(s.steps[1].binds, Some(0));
    }

    #[test]
    fn losses_and_what_the_injector_keeps_are_made_up_for() {
        let mut first = stage(PLAIN, 100.0);
        first.kept = g(4.0);
        first.loss = Ratio::new::<ratio>(0.02);
        let s = plan(&[first, stage(SOFT, 50.0)], &vessel(2.0, 0.0)).unwrap();
        near(held(&s)[1], 52.0);
        near(held(&s)[0], (104.0 + 52.0 * 0.9) / 0.98);
        near(s.steps[0].lost.get::<gram>(), held(&s)[0] * 0.02);
    }

    #[test]
    fn the_least_pot_is_left_over_where_it_is_not_drawn() {
        let pot = Vessel { least: g(500.0), ..vessel(0.0, 0.0) };
        let s = plan(&[stage(PLAIN, 100.0), stage(SOFT, 90.0)], &pot).unwrap();
        near(held(&s)[0], 500.0);
        near(held(&s)[1], 400.0 / 0.9);
        near(s.left.get::<gram>(), 400.0 / 0.9 - 90.0);
        assert_eq!(s.raised[0].0, Raised::Least);
        near(s.raised[0].1.get::<gram>(), 319.0);
    }

    #[test]
    fn limits_say_by_how_much() {
        let mut small = stage(PLAIN, 100.0);
        small.capacity = Some(g(180.0));
        let over = plan(&[small.clone(), stage(SOFT, 100.0)], &vessel(0.0, 0.0)).unwrap_err();
        assert!(over.to_string().contains("190.0 g in the pot, 10.0 g more"), "{over}");
        small.capacity = Some(g(200.0));
        let s = plan(&[small, stage(SOFT, 100.0)], &vessel(0.0, 0.0)).unwrap();
        near(s.fullest.unwrap().1.get::<gram>(), 10.0);
        let two = Vessel { heats: Some(2), ..vessel(0.0, 0.0) };
        let three = [stage(PLAIN, 1.0), stage(SOFT, 1.0), stage(SALTED, 1.0)];
        let heats = plan(&three, &two);
        assert_eq!(heats, Err(SequenceError::OverHeats { heats: 3, allowed: 2 }));
    }

    #[test]
    fn fresh_base_makes_up_for_a_small_vessel() {
        // A double color thinned to a single one: of 150 g, 75 g could be carried, but next to
        // a draw of 100 g the vessel holds only 60 g more.
        let stages = [(&[8.0, 2.0], 100.0), (&[9.0, 1.0], 150.0)];
        let stages =
            stages.map(|(mix, draw)| Stage { capacity: Some(g(160.0)), ..stage(mix, draw) });
        let s = super::plan(&stages, &vessel(0.0, 0.0), FreshBase::On).unwrap();
        near(held(&s)[0], 160.0);
        near(s.steps[1].additions[1].get::<gram>(), 15.0 - 12.0);
        assert_eq!(s.steps[1].binds, None);
        assert!(matches!(
            plan(&stages, &vessel(0.0, 0.0)),
            Err(SequenceError::OverCapacity { .. })
        ));
    }

    #[test]
    fn a_pot_that_fits_to_the_last_digit_fits() {
        // 64 units in the last place for rounding, and no more.
        assert!(fits(1.0) && fits(1.0 + 64.0 * f64::EPSILON));
        assert!(!fits(1.0 + 65.0 * f64::EPSILON));
    }

    #[test]
    fn the_first_of_the_fullest_stages_is_named() {
        let full = |capacity| Stage { capacity: Some(g(capacity)), ..stage(PLAIN, 100.0) };
        let pot = vessel(0.0, 0.0);
        let s = plan(&[full(400.0), full(200.0), full(100.0)], &pot).unwrap();
        // 300 g, 200 g and 100 g: the last two fill their capacity.
        assert_eq!(s.fullest.map(|(stage, _)| stage), Some(1));
        near(s.fullest.unwrap().1.get::<gram>(), 0.0);
        // Two that are over by the same share: the first; else the one that is over by more.
        let over = |capacities: [f64; 2]| match plan(&capacities.map(full), &pot) {
            Err(SequenceError::OverCapacity { stage, .. }) => stage,
            other => panic!("{other:?}"),
        };
        assert_eq!((over([100.0, 50.0]), over([100.0, 40.0]), over([50.0, 50.0])), (0, 1, 0));
        assert!(plan(&[stage(PLAIN, 100.0)], &pot).unwrap().fullest.is_none());
    }

    #[test]
    fn sprues_come_back_before_every_stage_but_the_first() {
        let sprue = |draw, returned| Stage { returned: g(returned), ..stage(PLAIN, draw) };
        // Of the first 100 g of shots 30 g are melted again; what comes back from the last ones goes into no mix.
        let s = plan(&[sprue(100.0, 30.0), sprue(80.0, 20.0)], &vessel(1.0, 5.0)).unwrap();
        near(held(&s)[1], 85.0);
        near(held(&s)[0], 100.0 - 30.0 + 85.0);
        let back: Vec<f64> = s.steps.iter().map(|step| step.returned.get::<gram>()).collect();
        assert_eq!(back, [30.0, 0.0]);
        assert!(s.raised.is_empty(), "{:?}", s.raised);
        near(s.steps[0].carried.get::<gram>(), 85.0);
        near(s.left.get::<gram>(), 4.0);
    }

    #[test]
    fn sprues_are_in_the_pot_on_top_of_the_heel() {
        let legs = [
            Leg { out: 10.0, back: 3.0, yields: 0.5, carry: 0.5, holds: f64::INFINITY },
            Leg { out: 1.0, back: 0.0, yields: 1.0, carry: 0.0, holds: f64::INFINITY },
        ];
        let mut flows = vec![Flow { need: 9.0, held: 9.0, carried: 9.0, bottom: 9.0 }];
        flow(&legs, 2.0, 0.0, &mut flows);
        // The last stage needs 1 + 2, of which 1.5 is carried; the heel of 2 and the sprues of 3 stay.
        let all: Vec<[f64; 4]> =
            flows.iter().map(|f| [f.need, f.held, f.carried, f.bottom]).collect();
        assert_eq!(all, [[24.0, 24.0, 5.0, 3.5], [3.0, 10.0, 9.0, 2.0]]);
    }

    #[test]
    fn fresh_base_carries_no_more_than_fits_next_to_the_draw() {
        let legs = [
            Leg { out: 10.0, back: 3.0, yields: 0.5, carry: 1.0, holds: 40.0 },
            Leg { out: 30.0, back: 0.0, yields: 1.0, carry: 0.0, holds: 40.0 },
        ];
        let mut flows = Vec::new();
        flow(&legs, 0.0, 0.0, &mut flows);
        // Half of 40 is left after the heat, 10 go out, 3 come back.
        assert_eq!((flows[0].held, flows[0].carried), (40.0, 13.0));
    }

    #[test]
    fn a_start_that_is_more_than_the_need_by_rounding_raises_nothing() {
        let one = [Leg { out: 1.0, back: 0.0, yields: 0.5, carry: 0.0, holds: f64::INFINITY }];
        let started = |least: f64| {
            let mut flows = Vec::new();
            flow(&one, 0.0, least, &mut flows);
            (flows[0].held, flows[0].carried)
        };
        let (at, over) = (2.0 + 8.0 * f64::EPSILON, 2.0 + 10.0 * f64::EPSILON);
        assert_eq!(started(at), (2.0, 0.0));
        assert_eq!(started(over), (over, 5.0 * f64::EPSILON));
    }

    #[test]
    fn what_rounding_leaves_is_not_weighed_in() {
        let big = 1e6;
        let more = big * (1.0 + 2.0 * f64::EPSILON);
        assert_eq!(additions(&[1.0], more, Some((&[1.0], big, None))), [0.0]);
        // 2 of 2^50 is 8 units in the last place, and 3 of it is not.
        let there = (1_u64 << 49) as f64 - 1.0;
        assert_eq!(additions(&[1.0], there + 2.0, Some((&[1.0], there, None))), [0.0]);
        assert_eq!(additions(&[1.0], there + 3.0, Some((&[1.0], there, None))), [3.0]);
        // 1.2 micrograms where there is 1.
        assert_eq!(additions(&[1.0], 1.2e-9, Some((&[1.0], 1e-9, None))), [1.2e-9 - 1e-9]);
    }

    #[test]
    fn the_first_of_the_materials_that_bind_is_named() {
        assert_eq!(carry(&[0.5, 0.5, 0.0], &[0.25, 0.25, 0.5]), Ok((0.5, 0)));
        assert_eq!(carry(&[0.5, 0.5], &[0.75, 0.25]), Ok((0.5, 1)));
        assert_eq!(carry(&[0.5, 0.5], &[1.0, 0.0]), Err(1));
    }

    #[test]
    fn each_refusal_has_its_stage_and_its_help() {
        let pot = vessel(0.0, 0.0);
        let two = |second| plan(&[stage(PLAIN, 1.0), second], &pot).unwrap_err();
        let bad = |stage, what, value| SequenceError::BadNumber { stage, what, value };
        assert_eq!(two(stage(SOFT, -2.0)), bad(1, "the draw", -2.0));
        let refused = |change: &dyn Fn(&mut Stage<'_>)| {
            let mut second = stage(SOFT, 1.0);
            change(&mut second);
            two(second)
        };
        let kept = refused(&|s| s.kept = g(-4.0));
        assert_eq!(kept, bad(1, "what the injector keeps", -4.0));
        assert_eq!(refused(&|s| s.returned = g(-8.0)), bad(1, "what comes back", -8.0));
        assert_eq!(refused(&|s| s.returned = g(2.0)), bad(1, "what comes back", 2.0));
        assert_eq!(refused(&|s| s.capacity = Some(g(0.0))), bad(1, "the capacity", 0.0));
        assert_eq!(refused(&|s| s.loss = Ratio::new::<ratio>(1.0)), bad(1, "the loss", 1.0));
        assert_eq!(refused(&|s| s.loss = Ratio::new::<ratio>(-0.5)), bad(1, "the loss", -0.5));
        assert_eq!(two(stage(&[1.0, -0.5, 0.0], 1.0)), bad(1, "a part of the composition", -0.5));
        for unlike in [&[1.0][..], &[0.0, 0.0, 0.0]] {
            assert_eq!(two(stage(unlike, 1.0)), SequenceError::BadComposition { stage: 1 });
        }
        let one = |vessel: &Vessel| plan(&[stage(PLAIN, 1.0)], vessel).unwrap_err();
        assert_eq!(one(&vessel(-1.0, 0.0)), bad(0, "the film", -1.0));
        assert_eq!(one(&vessel(0.0, -1.0)), bad(0, "the heel", -1.0));
        let least = Vessel { least: g(-1.0), ..pot };
        assert_eq!(one(&least), bad(0, "the smallest pot", -1.0));
        // All of a shot may come back.
        let all = Stage { returned: g(1.0), ..stage(PLAIN, 1.0) };
        assert!(plan(&[all, stage(PLAIN, 1.0)], &pot).is_ok());
        for (error, says) in [
            (SequenceError::NoStage, "at least one stage"),
            (kept, "0 or more and finite"),
            (SequenceError::BadComposition { stage: 1 }, "every material at every stage"),
            (SequenceError::NothingCarries { stage: 1, material: 2 }, "another pot"),
            (
                SequenceError::OverCapacity { stage: 0, held: g(5.0), capacity: g(4.5) },
                "may hold 4.5 g there",
            ),
            (SequenceError::OverHeats { heats: 3, allowed: 2 }, "at most 2 heats"),
        ] {
            assert!(error.help().contains(says), "{}", error.help());
        }
    }

    #[test]
    fn a_material_that_is_lacking_later_is_named() {
        let lacking = plan(&[stage(SALTED, 10.0), stage(SOFT, 10.0)], &vessel(0.0, 0.0));
        assert_eq!(lacking, Err(SequenceError::NothingCarries { stage: 1, material: 2 }));
    }

    #[test]
    fn what_cannot_be_is_refused() {
        let pot = vessel(0.0, 0.0);
        assert_eq!(plan(&[], &pot), Err(SequenceError::NoStage));
        assert!(plan(&[stage(PLAIN, f64::NAN)], &pot).is_err());
        assert!(plan(&[stage(PLAIN, -1.0)], &pot).is_err());
        assert!(plan(&[stage(&[], 1.0)], &pot).is_err());
        assert!(plan(&[stage(&[0.0], 1.0)], &pot).is_err());
        assert!(plan(&[stage(PLAIN, 1.0), stage(&[1.0], 1.0)], &pot).is_err());
        assert!(plan(&[stage(PLAIN, 1.0)], &vessel(f64::INFINITY, 0.0)).is_err());
        let mut lossy = stage(PLAIN, 1.0);
        lossy.loss = Ratio::new::<ratio>(1.0);
        assert!(plan(&[lossy], &pot).is_err());
        let huge = |composition| Stage { draw: mass(1e308), ..stage(composition, 0.0) };
        assert!(plan(&[huge(PLAIN), huge(PLAIN)], &pot).is_err());
    }

    proptest! {
        /// Mass in = pieces + kept + lost + film + left over, within n·u·Σm, and no addition is
        /// below 0.
        #[test]
        fn mass_is_conserved(
            stages in proptest::collection::vec(
                (proptest::array::uniform4(0.001_f64..5.0), 0.0_f64..300.0, 0.0_f64..9.0, 0.0_f64..0.1),
                1..7,
            ),
            film in 0.0_f64..10.0, heel in 0.0_f64..80.0, least in 0.0_f64..900.0,
        ) {
            let stages: Vec<Stage<'_>> = stages
                .iter()
                .map(|(c, draw, kept, loss)| Stage {
                    kept: g(*kept),
                    loss: Ratio::new::<ratio>(*loss),
                    ..stage(c, *draw)
                })
                .collect();
            let pot = Vessel { least: g(least), ..vessel(film, heel) };
            let s = plan(&stages, &pot).unwrap();
            let added: Vec<f64> = s.steps.iter().flat_map(|s| &s.additions).map(|&m| kg(m)).collect();
            prop_assert!(added.iter().all(|&a| a >= 0.0));
            let out: f64 = s.steps.iter().map(|s| kg(s.drawn) + kg(s.kept) + kg(s.lost)).sum();
            let (mass_in, mass_out) = (added.iter().sum::<f64>(), out + kg(s.film) + kg(s.left));
            let handled: f64 = s.steps.iter().map(|s| kg(s.held)).sum();
            let bound = (added.len() + 8) as f64 * 8.0 * f64::EPSILON * handled;
            prop_assert!((mass_in - mass_out).abs() <= bound, "{mass_in} {mass_out}");
            for step in &s.steps {
                prop_assert!(kg(step.carried) >= kg(pot.heel).max(kg(pot.film)) * (1.0 - 1e-12));
                if let Some(material) = step.binds {
                    prop_assert_eq!(step.additions[material], g(0.0));
                }
            }
        }
    }
}
