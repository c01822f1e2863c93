//! First-order propagation by sources, and what it gives.

use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::{Input, UncertaintyError, coverage_factor};
use crate::fault::Diagnose;
use crate::quantity::{Measurable, Measured, Ratio};

/// A result, how sure it is, and which sources make it unsure.
#[derive(Debug, Clone, PartialEq)]
pub struct Estimate<Q: Measurable> {
    /// What the calculation gives for the inputs as they are.
    pub value: Q,
    /// Its standard uncertainty to first order; that of a temperature is an interval.
    pub uncertainty: Q::Difference,
    /// What each source adds, the greatest first; sources without effect are left out.
    pub shares: Vec<Share<Q>>,
    /// Effective degrees of freedom (Welch–Satterthwaite, JCGM 100, G.4.1): ν = u⁴/Σ(u_s⁴/ν_s). `None` where
    /// no source states any, which is an uncertainty that is known exactly.
    pub freedom: Option<f64>,
    /// Sources of whose uncertainty nothing is known: they count as exact, so the true uncertainty is larger.
    pub unknown: Vec<String>,
}

/// What one source adds to the uncertainty of a result.
#[derive(Debug, Clone, PartialEq)]
pub struct Share<Q: Measurable> {
    /// The source.
    pub source: String,
    /// Σ c_i u_i over its inputs, with its sign: what the result does where they are one standard uncertainty
    /// too large.
    pub contribution: Q::Difference,
    /// Its part of u².
    pub share: Ratio,
    /// Whether the calculation refused its inputs shifted to one side, so that the other alone gave the slope.
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
    pub fn main_source(&self) -> Option<&Share<Q>> {
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
/// [`UncertaintyError::BadInput`] and [`UncertaintyError::BadFreedom`] for an input that is none;
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
    inputs.iter().try_for_each(Input::check)?;
    let mut at: Vec<f64> = inputs.iter().map(Input::si).collect();
    let value = calculation(&at).map_err(|error| UncertaintyError::refused(&error))?.si();
    if !value.is_finite() {
        return Err(UncertaintyError::NoNumber);
    }
    let (sources, unknown) = sources(inputs);
    let mut effects: Vec<Effect<'_>> = Vec::with_capacity(sources.len());
    for (source, freedom) in sources {
        let mut shifted = |sign: f64| {
            for (x, input) in at.iter_mut().zip(inputs) {
                let shift = if input.source() == source { input.uncertainty() } else { None };
                *x = input.si() + sign * shift.unwrap_or(0.0);
            }
            calculation(&at).ok().map(Measurable::si).filter(|y| y.is_finite())
        };
        let (above, below) = (shifted(1.0), shifted(-1.0));
        let (sum, one_sided) = match (above, below) {
            (Some(above), Some(below)) => ((above - below) / 2.0, false),
            (Some(above), None) => (above - value, true),
            (None, Some(below)) => (value - below, true),
            (None, None) => return Err(UncertaintyError::OutOfReach { of: source.to_string() }),
        };
        effects.push(Effect { source, sum, freedom, one_sided });
    }
    Ok(summed(value, effects, unknown))
}

/// The sources in the order of their first inputs, with the fewest degrees of freedom that any of these states;
/// and those of whose uncertainty nothing is known.
fn sources(inputs: &[Input]) -> (Vec<(&str, Option<f64>)>, Vec<String>) {
    let mut sources: Vec<(&str, Option<f64>)> = Vec::new();
    let mut unknown: Vec<String> = Vec::new();
    for input in inputs {
        let name = input.source();
        match input.uncertainty() {
            None if !unknown.iter().any(|other| other == name) => unknown.push(name.to_string()),
            Some(uncertainty) if uncertainty > 0.0 => {
                match sources.iter_mut().find(|(other, _)| *other == name) {
                    None => sources.push((name, input.freedom())),
                    Some((_, freedom)) => {
                        *freedom = match (*freedom, input.freedom()) {
                            (Some(one), Some(other)) => Some(one.min(other)),
                            (one, other) => one.or(other),
                        };
                    }
                }
            }
            _ => {}
        }
    }
    (sources, unknown)
}

/// What a source does to the result: Σ c_i u_i over its inputs.
struct Effect<'a> {
    source: &'a str,
    sum: f64,
    freedom: Option<f64>,
    one_sided: bool,
}

fn summed<Q: Measurable>(
    value: f64,
    effects: Vec<Effect<'_>>,
    unknown: Vec<String>,
) -> Estimate<Q> {
    let square = effects.iter().fold(0.0, |sum, effect| sum + effect.sum * effect.sum);
    // Σ (u_s²/u²)²/ν_s = 1/ν: ratios, so that no fourth power of a small number is lost.
    let inverse_freedom = effects.iter().fold(0.0, |sum, effect| {
        let share = effect.sum * effect.sum / square;
        effect.freedom.map_or(sum, |freedom| sum + share * share / freedom)
    });
    let mut shares: Vec<Share<Q>> = effects
        .into_iter()
        .filter(|effect| effect.sum * effect.sum > ROUNDING * square)
        .map(|effect| Share {
            source: effect.source.to_string(),
            contribution: Q::Difference::from_si(effect.sum),
            share: Ratio::from(effect.sum * effect.sum / square),
            one_sided: effect.one_sided,
        })
        .collect();
    // Stable: sources that add the same stay in the order of the inputs.
    shares.sort_by(|a, b| b.share.value.total_cmp(&a.share.value));
    Estimate {
        value: Q::from_si(value),
        uncertainty: Q::Difference::from_si(libm::sqrt(square)),
        shares,
        freedom: (inverse_freedom > 0.0).then(|| 1.0 / inverse_freedom),
        unknown,
    }
}
