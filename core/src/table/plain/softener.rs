//! Softener and hardness, by the shop's own measured points.

use alloc::vec::Vec;

use crate::parameter::{Check, Parameter};
use crate::quantity::Ratio;
use crate::softener::{Hardness, HardnessCurve, HardnessPoint, SaltedCurve, SaltedPoint, Scale};
use crate::table::{Refusal, calculation};

fn curve_points(points: &[[f64; 2]], scale: Scale) -> Vec<HardnessPoint> {
    let point = |&[ratio, reading]: &[f64; 2]| HardnessPoint {
        ratio: Ratio::from(ratio),
        hardness: Hardness { reading, scale },
    };
    points.iter().map(point).collect()
}

calculation! {
    /// Hardness that a ratio of softener or hardener gives: a monotone cubic through the shop's own points.
    ///
    /// Fritsch and Butland 1984, the slopes of SciPy's PchipInterpolator. Outside the points it refuses. Shore scales do
    /// not convert into each other (ASTM D2240): all points are on one.
    HARDNESS = "hardness": HardnessOf<'a> -> HardnessOfResult
    takes {
        points: &'a [[f64; 2]] = Points,
        scale: Scale = Scale,
        softener_ratio: f64 = SoftenerRatio,
    }
    gives {
        /// Durometer reading.
        hardness: f64 = "hardness" Pure,
    }
    request "hardness"
    example HardnessOf { points: &[[0.0, 60.0], [0.2, 40.0]], scale: Scale::Shore00, softener_ratio: 0.1 }
        => HardnessOfResult { hardness: 50.0 };
}

impl HardnessOf<'_> {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges; points that make no curve; a ratio outside them.
    pub fn calculate(&self) -> Result<HardnessOfResult, Refusal> {
        let points = curve_points(self.points, self.scale);
        let curve = HardnessCurve::new(&points);
        let mut check = Check::new();
        check.merge_numbers(&curve).number(Parameter::SoftenerRatio, self.softener_ratio);
        check.finish()?;
        let hardness = curve?.hardness(Ratio::from(self.softener_ratio))?;
        Ok(HardnessOfResult { hardness: hardness.reading })
    }
}

calculation! {
    /// Ratio of softener or hardener for a hardness: the other way round.
    SOFTENER_RATIO = "softener_ratio": SoftenerRatio<'a> -> SoftenerRatioResult
    takes {
        points: &'a [[f64; 2]] = Points,
        scale: Scale = Scale,
        hardness: f64 = Hardness,
    }
    gives {
        /// Mass per mass of base.
        softener_ratio: f64 = "softener_ratio" Pure,
    }
    request "hardness"
    example SoftenerRatio { points: &[[0.0, 60.0], [0.2, 40.0]], scale: Scale::Shore00, hardness: 50.0 }
        => SoftenerRatioResult { softener_ratio: 0.1 };
}

impl SoftenerRatio<'_> {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges; points that make no curve, or turn; a hardness outside them.
    pub fn calculate(&self) -> Result<SoftenerRatioResult, Refusal> {
        let points = curve_points(self.points, self.scale);
        let curve = HardnessCurve::new(&points);
        let mut check = Check::new();
        check.merge_numbers(&curve).number(Parameter::Hardness, self.hardness);
        check.finish()?;
        let wanted = Hardness { reading: self.hardness, scale: self.scale };
        Ok(SoftenerRatioResult { softener_ratio: curve?.ratio(wanted)?.value })
    }
}

calculation! {
    /// Extra softener for a salted body, between the shop's own points.
    ///
    /// Salt makes a body harder; the shop has found what softener makes up for it. Between the points a monotone cubic
    /// answers, outside it refuses.
    SALTED_SOFTENER = "salted_softener": SaltedSoftener<'a> -> SaltedSoftenerResult
    takes {
        salted_points: &'a [[f64; 2]] = SaltedPoints,
        salt_of_base: f64 = SaltOfBase,
    }
    gives {
        /// Softener on top of the unsalted body's, mass per mass of base.
        softener_ratio: f64 = "softener_ratio" Pure,
    }
    example SaltedSoftener { salted_points: &[[0.0, 0.0], [0.2, 0.1]], salt_of_base: 0.1 }
        => SaltedSoftenerResult { softener_ratio: 0.05 };
}

impl SaltedSoftener<'_> {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges; points that do not rise; salt outside them.
    pub fn calculate(&self) -> Result<SaltedSoftenerResult, Refusal> {
        let point = |&[salt, softener]: &[f64; 2]| SaltedPoint {
            salt: Ratio::from(salt),
            softener: Ratio::from(softener),
        };
        let points: Vec<SaltedPoint> = self.salted_points.iter().map(point).collect();
        let curve = SaltedCurve::new(&points);
        let mut check = Check::new();
        check.merge_numbers(&curve).number(Parameter::SaltOfBase, self.salt_of_base);
        check.finish()?;
        let softener = curve?.softener(Ratio::from(self.salt_of_base))?;
        Ok(SaltedSoftenerResult { softener_ratio: softener.value })
    }
}
