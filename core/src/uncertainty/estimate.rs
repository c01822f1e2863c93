//! First-order propagation by sources, and what it gives.

use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::{Input, UncertaintyError, coverage_factor};
use crate::fault::Diagnose;
use crate::quantity::{Measurable, Measured, Ratio};

/// A result, how sure it is, and which sources make it unsure.
#[derive(Debug, Clone, PartialEq)]
pub struct Estimate<Q: Measurable> {
    /// The result for the inputs as they are.
    pub value: Q,
    /// Its standard uncertainty to first order; that of a temperature is an interval.
    pub uncertainty: Q::Difference,
    /// The part of each source, the greatest first; sources without effect are omitted.
    pub shares: Vec<Contribution<Q>>,
    /// Effective degrees of freedom (Welch–Satterthwaite, JCGM 100, G.4.1): ν = u⁴/Σ(u_s⁴/ν_s). `None` where
    /// no source states any, which is an uncertainty that is known exactly.
    pub freedom: Option<f64>,
    /// Sources of whose uncertainty nothing is known: they count as exact, so the true uncertainty is larger.
    pub unknown: Vec<String>,
}

/// One source's part in the uncertainty of a result.
#[derive(Debug, Clone, PartialEq)]
pub struct Contribution<Q: Measurable> {
    /// The source.
    pub source: String,
    /// Σ c_i u_i over its inputs, with its sign: what the result does where they are one standard uncertainty
    /// too large.
    pub contribution: Q::Difference,
    /// Its part of u².
    pub share: Ratio,
    /// Whether the calculation refused its inputs shifted to one side, so that only the other gave the slope.
    pub one_sided: bool,
}

/// An interval about a result that holds the true value with a stated probability.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Coverage<D> {
    /// The coverage factor k.
    pub factor: f64,
    /// The expanded uncertainty, k·u.
    pub half_width: D,
}

impl<Q: Measurable> Estimate<Q> {
    /// The source that adds most.
    #[must_use]
    pub fn main_source(&self) -> Option<&Contribution<Q>> {
        self.shares.first()
    }

    /// The expanded uncertainty at `level`, with k = t_level(⌊ν⌋) (JCGM 100, G.4.1, note 1, and G.6.4).
    ///
    /// # Errors
    /// [`UncertaintyError::Level`] for a level outside 0 to 0.999 999 999.
    pub fn coverage(&self, level: Ratio) -> Result<Coverage<Q::Difference>, UncertaintyError> {
        let factor = coverage_factor(level, self.freedom)?;
        let half_width = Q::Difference::from_si(factor * self.uncertainty.si());
        Ok(Coverage { factor, half_width })
    }

    /// The result as an input of what comes next, from a source of its own.
    #[must_use]
    pub fn measured(&self, source: impl Into<String>) -> Measured<Q> {
        Measured::new(self.value, self.uncertainty).from_source(source)
    }
}

/// Part of u² below which a source adds rounding only: what cancels leaves that much.
const ROUNDING: f64 = 1e-12;

/// The result of `calculation` for `inputs`, with its uncertainty by sources (equations: [module](super)).
///
/// The calculation takes the inputs' values in coherent SI units, in their order. Inputs of one source that
/// state different degrees of freedom count with the fewest.
///
/// # Errors
/// [`UncertaintyError::BadInput`] and [`UncertaintyError::BadFreedom`] for an input that is not usable;
/// [`UncertaintyError::Calculation`] where the calculation refuses the inputs as they are;
/// [`UncertaintyError::NoNumber`] where it gives none; [`UncertaintyError::OutOfReach`] where it refuses the
/// inputs of a source shifted to either side.
pub fn propagate<Q, E>(
    inputs: &[Input],
    calculation: impl Fn(&[f64]) -> Result<Q, E>,
) -> Result<Estimate<Q>, UncertaintyError>
where
    Q: Measurable,
    E: Diagnose,
{
    let si = |x: &[f64]| match calculation(x) {
        Ok(value) => Ok(value.si()),
        Err(error) => Err(UncertaintyError::refused(&error)),
    };
    Ok(Effects::of(inputs, &si)?.estimate())
}

/// The effect of the sources of a calculation's inputs on its result, in coherent SI units: the same code for every
/// quantity.
pub(super) struct Effects<S> {
    value: f64,
    /// Its standard uncertainty.
    pub(super) uncertainty: f64,
    /// The greatest first, without those that have none.
    all: Vec<Effect<S>>,
    freedom: Option<f64>,
    unknown: Vec<S>,
}

/// The effect of a source on the result.
struct Effect<S> {
    source: S,
    /// Σ c_i u_i over its inputs.
    sum: f64,
    /// Its part of u².
    share: f64,
    freedom: Option<f64>,
    one_sided: bool,
}

impl<S: Clone + PartialEq + ToString> Effects<S> {
    /// As [`propagate`].
    pub(super) fn of(
        inputs: &[Input<S>],
        calculation: &dyn Fn(&[f64]) -> Result<f64, UncertaintyError>,
    ) -> Result<Self, UncertaintyError> {
        inputs.iter().try_for_each(Input::check)?;
        let mut at: Vec<f64> = inputs.iter().map(Input::si).collect();
        let value = calculation(&at)?;
        if !value.is_finite() {
            return Err(UncertaintyError::NoNumber);
        }
        let Sources { all: mut effects, of, unknown } = Sources::of(inputs);
        for (place, effect) in effects.iter_mut().enumerate() {
            let mut shifted = |sign: f64| {
                for ((x, input), of) in at.iter_mut().zip(inputs).zip(&of) {
                    let shift = if *of == Some(place) { input.uncertainty() } else { None };
                    *x = input.si() + sign * shift.unwrap_or(0.0);
                }
                calculation(&at).ok().filter(|y| y.is_finite())
            };
            let (above, below) = (shifted(1.0), shifted(-1.0));
            (effect.sum, effect.one_sided) = match (above, below) {
                (Some(above), Some(below)) => ((above - below) / 2.0, false),
                (Some(above), None) => (above - value, true),
                (None, Some(below)) => (value - below, true),
                (None, None) => {
                    return Err(UncertaintyError::OutOfReach { of: effect.source.to_string() });
                }
            };
        }
        let square = effects.iter().fold(0.0, |sum, effect| sum + effect.sum * effect.sum);
        effects.iter_mut().for_each(|effect| effect.share = effect.sum * effect.sum / square);
        // Σ (u_s²/u²)²/ν_s = 1/ν: ratios, so that no fourth power of a small number is lost.
        let inverse_freedom = effects.iter().fold(0.0, |sum, effect| {
            effect.freedom.map_or(sum, |freedom| sum + effect.share * effect.share / freedom)
        });
        effects.retain(|effect| effect.sum * effect.sum > ROUNDING * square);
        // Stable: sources that add the same stay in the order of the inputs.
        effects.sort_by(|a, b| b.share.total_cmp(&a.share));
        Ok(Self {
            value,
            uncertainty: libm::sqrt(square),
            all: effects,
            freedom: (inverse_freedom > 0.0).then(|| 1.0 / inverse_freedom),
            unknown,
        })
    }

    /// The source that adds most.
    pub(super) fn main_source(&self) -> Option<&S> {
        self.all.first().map(|effect| &effect.source)
    }

    /// Whether nothing is known of the uncertainty of some source.
    pub(super) fn is_open(&self) -> bool {
        !self.unknown.is_empty()
    }

    /// In words and quantities.
    pub(super) fn estimate<Q: Measurable>(self) -> Estimate<Q> {
        let shares = self.all.iter().map(|effect| Contribution {
            source: effect.source.to_string(),
            contribution: Q::Difference::from_si(effect.sum),
            share: Ratio::from(effect.share),
            one_sided: effect.one_sided,
        });
        Estimate {
            value: Q::from_si(self.value),
            uncertainty: Q::Difference::from_si(self.uncertainty),
            shares: shares.collect(),
            freedom: self.freedom,
            unknown: self.unknown.iter().map(S::to_string).collect(),
        }
    }
}

/// Where inputs come from.
struct Sources<S> {
    /// In the order of their first inputs, with the fewest degrees of freedom that any of these states; what they do to the
    /// result is still to be found.
    all: Vec<Effect<S>>,
    /// The place of each input's source; none for an input that is exact or of which nothing is known.
    of: Vec<Option<usize>>,
    /// Those of whose uncertainty nothing is known.
    unknown: Vec<S>,
}

impl<S: Clone + PartialEq> Sources<S> {
    fn of(inputs: &[Input<S>]) -> Self {
        let mut all: Vec<Effect<S>> = Vec::with_capacity(inputs.len());
        let mut of = Vec::with_capacity(inputs.len());
        let mut unknown: Vec<S> = Vec::new();
        for input in inputs {
            let source = input.origin();
            let place = match input.uncertainty() {
                Some(uncertainty) if uncertainty > 0.0 => {
                    let known = all.iter().position(|other| other.source == *source);
                    let place = known.unwrap_or(all.len());
                    match all.get_mut(place) {
                        None => all.push(Effect {
                            source: source.clone(),
                            sum: 0.0,
                            share: 0.0,
                            freedom: input.freedom(),
                            one_sided: false,
                        }),
                        Some(Effect { freedom, .. }) => {
                            *freedom = match (*freedom, input.freedom()) {
                                (Some(one), Some(other)) => Some(one.min(other)),
                                (one, other) => one.or(other),
                            };
                        }
                    }
                    Some(place)
                }
                Some(_) => None,
                None => {
                    if !unknown.contains(source) {
                        unknown.push(source.clone());
                    }
                    None
                }
            };
            of.push(place);
        }
        Self { all, of, unknown }
    }
}
