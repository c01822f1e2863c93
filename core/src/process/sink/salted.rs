//! The salt loading at which a piece sinks at a rate.

use alloc::borrow::Cow;

use super::SinkError;
use crate::fault::Diagnose;
use crate::parameter::{Parameter, ParameterError};
use crate::quantity::{MassDensity, Ratio, Volume};
use crate::salt::{PieceCavity, SaltError, SaltForm, SaltLoading, Unsalted};

/// How much of its cavity a piece still fills when it has cooled hardly depends on its salt: each turn brings two digits
/// or more.
const TURNS: u32 = 12;

/// Why no salt loading gives a sink rate.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum SaltedSinkError {
    /// The loading is refused.
    #[error(transparent)]
    Salt(#[from] SaltError),
    /// The sink rate is refused.
    #[error(transparent)]
    Sink(#[from] SinkError),
}

impl SaltedSinkError {
    fn inner(&self) -> &dyn Diagnose {
        match self {
            Self::Salt(error) => error,
            Self::Sink(error) => error,
        }
    }
}

impl Diagnose for SaltedSinkError {
    fn code(&self) -> &'static str {
        self.inner().code()
    }

    fn help(&self) -> Cow<'static, str> {
        self.inner().help()
    }

    fn numbers(&self) -> &[ParameterError] {
        self.inner().numbers()
    }

    fn parameter(&self) -> Option<Parameter> {
        self.inner().parameter()
    }
}

/// The loading of `unsalted` at which a piece from `cavity` has the density that `density_for` asks of its volume, such as
/// that for a sink rate ([`super::Body::density_for`]).
///
/// # Errors
/// A density or a loading out of reach.
pub fn loading_for<E: From<SaltError>>(
    unsalted: &Unsalted,
    cavity: &PieceCavity,
    density_for: impl Fn(Volume) -> Result<MassDensity, E>,
) -> Result<SaltLoading, E> {
    let mut volume = cavity.volume;
    let mut loading = SaltLoading::OfBase(Ratio::default());
    for _ in 0..TURNS {
        loading = SaltLoading::FinishedDensity(density_for(volume)?);
        volume = cooled(unsalted, cavity, loading)?.1;
    }
    Ok(loading)
}

/// Density of the finished plastic, and the volume of a piece from `cavity` that has cooled.
///
/// # Errors
/// A loading out of reach.
pub fn cooled(
    unsalted: &Unsalted,
    cavity: &PieceCavity,
    loading: SaltLoading,
) -> Result<(MassDensity, Volume), SaltError> {
    let salt = SaltLoading::OfBase(unsalted.ratio(loading)?);
    let finished = unsalted.convert(salt, SaltForm::FinishedDensity)?;
    let piece = unsalted.convert(salt, SaltForm::PieceMass)?;
    match (finished, piece) {
        (SaltLoading::FinishedDensity(density), SaltLoading::PieceMass(piece)) => {
            Ok((density, piece / density))
        }
        _ => Ok((unsalted.mass / unsalted.volume, cavity.volume)),
    }
}
