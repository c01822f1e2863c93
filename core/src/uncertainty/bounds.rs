//! Standard uncertainties that come from no series of readings (type B).

use core::ops::{Div, Mul};

/// How values are distributed between two bounds, a to either side.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[non_exhaustive]
pub enum Bounds {
    /// Every value is as likely as another: u = a/√3 (JCGM 100:2008, 4.3.7).
    Rectangular,
    /// The middle is most likely: u = a/√6 (JCGM 100, 4.3.9).
    Triangular,
    /// It swings from bound to bound, as a cycling oven does: u = a/√2 (JCGM 100, H.1.3.4).
    UShaped,
}

impl Bounds {
    /// The standard uncertainty of the half width `a`.
    pub fn standard<Q: Div<f64, Output = Q>>(self, half_width: Q) -> Q {
        let square = match self {
            Self::Rectangular => 3.0,
            Self::Triangular => 6.0,
            Self::UShaped => 2.0,
        };
        half_width / libm::sqrt(square)
    }
}

/// The standard uncertainty of one reading of a scale that shows steps of `step`: d/√12 (JCGM 100, F.2.2.1).
pub fn resolution<Q: Div<f64, Output = Q>>(step: Q) -> Q {
    step / libm::sqrt(12.0)
}

/// That of the difference of two readings, a load and its tare: √2 · d/√12.
pub fn by_difference<Q: Div<f64, Output = Q> + Mul<f64, Output = Q>>(step: Q) -> Q {
    resolution(step) * libm::sqrt(2.0)
}
