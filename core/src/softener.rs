//! Softener and hardener by the shop's own measured points.
//!
//! How soft a ratio of softener makes a piece depends on the plastisol, the softener and the cure, and no
//! published table reaches the softness of this trade. So the shop measures: some ratios, a durometer reading
//! each. Between the points a monotone cubic answers (Fritsch and Butland 1984, the slopes of SciPy's
//! `PchipInterpolator`); outside them the library refuses. A hardener is the same with rising readings.
//!
//! Shore scales do not convert into each other (ASTM D2240, scope: no simple correlation exists between
//! types), so a reading always carries its scale.
//!
//! Ratios are mass per mass of base.

use alloc::borrow::Cow;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use core::fmt;

use crate::codes::codes;
use crate::fault::Diagnose;
use crate::monotone::{self, Knot, Knots};
use crate::parameter::{Check, Parameter, ParameterError, ParameterErrors, Problem};
use crate::quantity::Ratio;
use crate::show;

/// Two points nearer to each other than this (mass per mass of base) are one measured twice.
const LEAST_STEP: f64 = 1e-6;

/// The scale of a durometer reading.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "document", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum Scale {
    /// Shore 00, for very soft pieces.
    #[cfg_attr(feature = "document", serde(rename = "shore-00"))]
    Shore00,
    /// Shore A, for rubber-like pieces.
    #[cfg_attr(feature = "document", serde(rename = "shore-a"))]
    ShoreA,
    /// A scale of the shop's own, such as a squeeze from 1 to 5; a book has its name.
    #[cfg_attr(feature = "document", serde(rename = "own"))]
    Own,
}

impl Scale {
    /// Those that have a word of their own, in order.
    pub const ALL: &'static [Self] = &[Self::Shore00, Self::ShoreA];

    /// How documents and doors write them, in the same order.
    pub const WORDS: &'static [&'static str] = &["shore-00", "shore-a"];

    /// How a document writes it.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Shore00 => "shore-00",
            Self::ShoreA => "shore-a",
            Self::Own => "own",
        }
    }
}

impl fmt::Display for Scale {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Shore00 => "Shore 00",
            Self::ShoreA => "Shore A",
            Self::Own => "the shop's own scale",
        })
    }
}

/// A durometer reading, 0 to 100, on its scale.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Hardness {
    /// The reading, 0 to 100.
    pub reading: f64,
    /// Its scale.
    pub scale: Scale,
}

/// A hardness that the shop has measured.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HardnessPoint {
    /// Softener (or hardener), mass per mass of base.
    pub ratio: Ratio,
    /// The reading of the durometer.
    pub hardness: Hardness,
}

/// Extra softener that the shop has found a salted body to need.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SaltedPoint {
    /// Salt, mass per mass of base.
    pub salt: Ratio,
    /// Softener on top of the unsalted body's, mass per mass of base.
    pub softener: Ratio,
}

/// Why measured points make no curve, or a question to them has no answer.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum SoftenerError {
    /// Numbers that are wrong.
    #[error(transparent)]
    Parameters(#[from] ParameterErrors),
    /// Ratios not in rising order, or one ratio twice.
    #[error("Measured point {point} does not lie above the one before it.")]
    Order {
        /// Which point, counted from 1.
        point: usize,
    },
    /// Points on different scales.
    #[error("Measured point {point} is on {found}, those before it on {first}.")]
    MixedScales {
        /// Which point, counted from 1.
        point: usize,
        /// The scale of the first point.
        first: Scale,
        /// The scale of this point.
        found: Scale,
    },
    /// A hardness asked on a scale on which nothing was measured.
    #[error("A hardness on {asked} was asked, but the points were measured on {measured}.")]
    OtherScale {
        /// The scale of the question.
        asked: Scale,
        /// The scale of the points.
        measured: Scale,
    },
    /// A ratio outside the points.
    #[error("{} of base is outside the measured points.", show::percent(.asked))]
    RatioOutside {
        /// The ratio asked for.
        asked: Ratio,
        /// The ratio of the first point.
        least: Ratio,
        /// The ratio of the last point.
        most: Ratio,
    },
    /// A hardness outside the points.
    #[error("{scale} {} is outside the measured points.", show::number(*.asked))]
    HardnessOutside {
        /// The reading asked for.
        asked: f64,
        /// The least measured reading.
        least: f64,
        /// The greatest measured reading.
        most: f64,
        /// The scale of all three.
        scale: Scale,
    },
    /// Readings that fall and then rise (or stay the same): one hardness then has several ratios.
    #[error(
        "The readings turn at measured point {point}, so a hardness there has more than one ratio."
    )]
    Turns {
        /// Which point, counted from 1.
        point: usize,
    },
}

impl Diagnose for SoftenerError {
    codes! {
        Self::Parameters(errors) => errors.code(),
        Self::Order { .. } => "softener-points-not-rising",
        Self::MixedScales { .. } => "softener-mixed-scales",
        Self::OtherScale { .. } => "softener-other-scale",
        Self::RatioOutside { .. } => "softener-ratio-outside-points",
        Self::HardnessOutside { .. } => "softener-hardness-outside-points",
        Self::Turns { .. } => "softener-readings-turn",
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::Parameters(errors) => errors.help(),
            Self::Order { .. } => format!(
                "List the points in rising order, each ratio once and at least {} apart.",
                show::percent(&Ratio::from(LEAST_STEP))
            )
            .into(),
            Self::MixedScales { .. } | Self::OtherScale { .. } => {
                "Shore scales do not convert into each other: measure all on one scale.".into()
            }
            Self::RatioOutside { least, most, .. } => format!(
                "The points reach from {} to {} of base; measure one beyond to reach further.",
                show::percent(least).at_least(),
                show::percent(most).at_most()
            )
            .into(),
            Self::HardnessOutside { least, most, scale, .. } => format!(
                "The points reach from {scale} {} to {}; measure one beyond to reach further.",
                show::number(*least).at_least(),
                show::number(*most).at_most()
            )
            .into(),
            Self::Turns { .. } => {
                "Measure that point again, or leave it out if the reading was a slip.".into()
            }
        }
    }

    fn numbers(&self) -> &[ParameterError] {
        match self {
            Self::Parameters(errors) => errors.numbers(),
            _ => &[],
        }
    }

    fn parameter(&self) -> Option<Parameter> {
        Some(match self {
            Self::Parameters(errors) => return errors.parameter(),
            Self::Order { .. } | Self::MixedScales { .. } | Self::Turns { .. } => Parameter::Points,
            Self::OtherScale { .. } => Parameter::Scale,
            Self::RatioOutside { .. } => Parameter::SoftenerRatio,
            Self::HardnessOutside { .. } => Parameter::Hardness,
        })
    }
}

impl From<ParameterError> for SoftenerError {
    fn from(error: ParameterError) -> Self {
        Self::Parameters(error.into())
    }
}

/// Hardness by ratio of softener or hardener, through the shop's own points.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HardnessCurve<'a> {
    points: &'a [HardnessPoint],
    scale: Scale,
}

impl<'a> HardnessCurve<'a> {
    /// The curve through `points`.
    ///
    /// # Errors
    /// Fewer than two points, ratios not in rising order, readings outside 0 to 100, or mixed scales.
    pub fn new(points: &'a [HardnessPoint]) -> Result<Self, SoftenerError> {
        let mut check = Check::new();
        for (index, point) in points.iter().enumerate() {
            check.element(Parameter::PointHardness, index, point.hardness.reading);
        }
        check_rising(points, [Parameter::Points, Parameter::PointRatio], check)?;
        let first = points.first().ok_or_else(no_points)?.hardness.scale;
        for (i, HardnessPoint { hardness, .. }) in points.iter().enumerate() {
            let (point, found) = (i.saturating_add(1), hardness.scale);
            if found != first {
                return Err(SoftenerError::MixedScales { point, first, found });
            }
        }
        Ok(Self { points, scale: first })
    }

    /// The scale of all points.
    #[must_use]
    pub fn scale(&self) -> Scale {
        self.scale
    }

    /// The hardness that `ratio` (mass per mass of base) gives.
    ///
    /// # Errors
    /// [`SoftenerError::RatioOutside`], which says what the points reach.
    pub fn hardness(&self, ratio: Ratio) -> Result<Hardness, SoftenerError> {
        Ok(Hardness { reading: interpolate(self.points, ratio)?, scale: self.scale })
    }

    /// The ratio (mass per mass of base) that gives the hardness `wanted`.
    ///
    /// # Errors
    /// [`SoftenerError::OtherScale`], [`SoftenerError::HardnessOutside`] with what the points reach, and
    /// [`SoftenerError::Turns`] where the readings do not fall (or rise) all the way.
    pub fn ratio(&self, wanted: Hardness) -> Result<Ratio, SoftenerError> {
        if wanted.scale != self.scale {
            return Err(SoftenerError::OtherScale { asked: wanted.scale, measured: self.scale });
        }
        self.check_no_turn()?;
        let y = wanted.reading;
        let between = |pair: &[HardnessPoint]| match pair {
            [a, b] => {
                let (a, b) = (a.hardness.reading, b.hardness.reading);
                (a.min(b)..=a.max(b)).contains(&y)
            }
            _ => false,
        };
        self.points
            .windows(2)
            .position(between)
            .and_then(|i| monotone::inverse(&self.points, i, y))
            .map(Ratio::from)
            .ok_or_else(|| self.outside(y))
    }

    fn check_no_turn(&self) -> Result<(), SoftenerError> {
        let step = |pair: &[HardnessPoint]| match pair {
            [a, b] => b.hardness.reading - a.hardness.reading,
            _ => 0.0,
        };
        let mut steps = self.points.windows(2).map(step).enumerate();
        let direction = steps.next().map_or(0.0, |(_, first)| first);
        if direction == 0.0 {
            return Err(SoftenerError::Turns { point: 2 });
        }
        match steps.find(|(_, step)| step * direction <= 0.0) {
            Some((i, _)) => Err(SoftenerError::Turns { point: i.saturating_add(1) }),
            None => Ok(()),
        }
    }

    fn outside(&self, asked: f64) -> SoftenerError {
        let readings = || self.points.iter().map(|point| point.hardness.reading);
        SoftenerError::HardnessOutside {
            asked,
            least: readings().fold(f64::INFINITY, f64::min),
            most: readings().fold(f64::NEG_INFINITY, f64::max),
            scale: self.scale,
        }
    }
}

/// What the shop has measured of a softener or hardener: readings on one scale, which may be its own.
#[derive(Debug, Clone, PartialEq)]
pub struct MeasuredHardness {
    scale: String,
    points: Vec<HardnessPoint>,
}

impl MeasuredHardness {
    /// Readings at ratios of softener or hardener to base, on the scale of this name: a Shore scale by its word, or any
    /// other.
    ///
    /// # Errors
    /// Those of [`HardnessCurve::new`], and readings that turn.
    pub fn new(scale: &str, points: &[(Ratio, f64)]) -> Result<Self, SoftenerError> {
        let known = Scale::ALL.iter().copied().find(|known| known.word() == scale);
        let of = known.unwrap_or(Scale::Own);
        let point = |&(ratio, reading): &(Ratio, f64)| HardnessPoint {
            ratio,
            hardness: Hardness { reading, scale: of },
        };
        let points: Vec<HardnessPoint> = points.iter().map(point).collect();
        HardnessCurve::new(&points)?.check_no_turn()?;
        Ok(Self { scale: scale.into(), points })
    }

    /// The name of the scale.
    #[must_use]
    pub fn scale(&self) -> &str {
        &self.scale
    }

    /// How much more of it, mass per mass of base, takes a piece from the reading `from` to the reading `to`; below zero if
    /// there is too much of it already.
    ///
    /// # Errors
    /// [`SoftenerError::HardnessOutside`], with what the points reach.
    pub fn more(&self, from: f64, to: f64) -> Result<Ratio, SoftenerError> {
        let [from, to] = [from, to].map(|reading| self.ratio(reading));
        Ok(to? - from?)
    }

    /// The ratio at a reading.
    ///
    /// # Errors
    /// As [`MeasuredHardness::more`].
    pub fn ratio(&self, reading: f64) -> Result<Ratio, SoftenerError> {
        let curve = HardnessCurve::new(&self.points)?;
        curve.ratio(Hardness { reading, scale: curve.scale() })
    }
}

/// Extra softener by ratio of salt, through the shop's own points.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SaltedCurve<'a> {
    points: &'a [SaltedPoint],
}

impl<'a> SaltedCurve<'a> {
    /// The curve through `points`.
    ///
    /// # Errors
    /// Fewer than two points, ratios of salt not in rising order, or a ratio that is not valid.
    pub fn new(points: &'a [SaltedPoint]) -> Result<Self, SoftenerError> {
        let mut check = Check::new();
        for (index, point) in points.iter().enumerate() {
            check.element(Parameter::PointSoftener, index, point.softener.value);
        }
        check_rising(points, [Parameter::SaltedPoints, Parameter::PointSalt], check)?;
        Ok(Self { points })
    }

    /// The softener, mass per mass of base, that goes in with `salt`, mass per mass of base.
    ///
    /// # Errors
    /// [`SoftenerError::RatioOutside`], which says what the points reach.
    pub fn softener(&self, salt: Ratio) -> Result<Ratio, SoftenerError> {
        interpolate(self.points, salt).map(Ratio::from)
    }
}

/// A measured point as the interpolation sees it.
trait Measured {
    fn knot(&self) -> Knot;
}

impl Measured for HardnessPoint {
    fn knot(&self) -> Knot {
        Knot { x: self.ratio.value, y: self.hardness.reading }
    }
}

impl Measured for SaltedPoint {
    fn knot(&self) -> Knot {
        Knot { x: self.salt.value, y: self.softener.value }
    }
}

impl<P: Measured> Knots for &[P] {
    fn knot(&self, i: usize) -> Option<Knot> {
        self.get(i).map(Measured::knot)
    }
}

/// Checks the number of points and their ratios, which must rise, after what the caller has checked.
fn check_rising<P: Measured>(
    points: &[P],
    [list, x]: [Parameter; 2],
    mut check: Check,
) -> Result<(), SoftenerError> {
    check.count(list, points.len());
    for (index, point) in points.iter().enumerate() {
        check.element(x, index, point.knot().x);
    }
    check.finish()?;
    let mut before = None;
    for (i, x) in points.iter().map(|point| point.knot().x).enumerate() {
        if before.is_some_and(|before| x - before < LEAST_STEP) {
            return Err(SoftenerError::Order { point: i.saturating_add(1) });
        }
        before = Some(x);
    }
    Ok(())
}

fn no_points() -> SoftenerError {
    ParameterError::new(Parameter::Points, Problem::OutOfRange(0.0)).into()
}

/// The value at `ratio` of the curve through `points`, which rise.
fn interpolate<P: Measured>(points: &[P], ratio: Ratio) -> Result<f64, SoftenerError> {
    let x = ratio.value;
    let end = |point: Option<&P>| point.map_or(f64::NAN, |point| point.knot().x);
    let (least, most) = (end(points.first()), end(points.last()));
    if !(least..=most).contains(&x) {
        let (least, most) = (Ratio::from(least), Ratio::from(most));
        return Err(SoftenerError::RatioOutside { asked: ratio, least, most });
    }
    // A point itself is answered as measured, and so is the last one, which begins no piece.
    let next = points.partition_point(|point| point.knot().x < x);
    match points.get(next).map(Measured::knot) {
        Some(knot) if knot.x == x => Ok(knot.y),
        _ => monotone::value(&points, next.saturating_sub(1), x).ok_or_else(no_points),
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use rstest::rstest;

    use super::*;

    fn on(scale: Scale, points: &[(f64, f64)]) -> Vec<HardnessPoint> {
        points
            .iter()
            .map(|&(x, reading)| HardnessPoint {
                ratio: Ratio::from(x),
                hardness: Hardness { reading, scale },
            })
            .collect()
    }

    fn shore00(reading: f64) -> Hardness {
        Hardness { reading, scale: Scale::Shore00 }
    }

    /// Invented: a soft plastisol, softener 0 to 30 % of base.
    const SOFTENED: &[(f64, f64)] = &[(0.0, 62.0), (0.05, 55.0), (0.12, 43.0), (0.30, 24.0)];

    #[test]
    fn points_are_answered_as_measured() {
        let points = on(Scale::Shore00, SOFTENED);
        let curve = HardnessCurve::new(&points).unwrap();
        for point in &points {
            assert_eq!(curve.hardness(point.ratio).unwrap(), point.hardness);
            assert_eq!(curve.ratio(point.hardness).unwrap(), point.ratio);
        }
    }

    #[test]
    fn two_points_make_a_line() {
        let points = on(Scale::ShoreA, &[(0.0, 20.0), (0.2, 10.0)]);
        let curve = HardnessCurve::new(&points).unwrap();
        assert!((curve.hardness(Ratio::from(0.05)).unwrap().reading - 17.5).abs() < 1e-12);
    }

    #[rstest]
    #[case(&[], "out-of-range")]
    #[case(&[(0.1, 50.0)], "out-of-range")]
    #[case(&[(0.1, 50.0), (0.1, 40.0)], "softener-points-not-rising")]
    #[case(&[(0.2, 50.0), (0.1, 40.0)], "softener-points-not-rising")]
    #[case(&[(-0.1, 50.0), (0.1, 40.0)], "out-of-range")]
    #[case(&[(0.1, 50.0), (f64::NAN, 40.0)], "not-finite")]
    #[case(&[(0.1, 50.0), (0.2, 140.0)], "out-of-range")]
    #[case(&[(0.1, 50.0), (0.2, f64::NAN)], "not-finite")]
    fn refuses_what_makes_no_curve(#[case] points: &[(f64, f64)], #[case] code: &str) {
        assert_eq!(HardnessCurve::new(&on(Scale::Shore00, points)).unwrap_err().code(), code);
    }

    /// A millionth apart is two points, less is one measured twice; the second of the two is named.
    #[test]
    fn points_are_a_step_apart() {
        let of = |second: f64| {
            let points = on(Scale::Shore00, &[(0.0, 50.0), (second, 40.0)]);
            HardnessCurve::new(&points).map(|curve| curve.scale())
        };
        assert_eq!(of(1e-6), Ok(Scale::Shore00));
        assert_eq!(of(0.9e-6), Err(SoftenerError::Order { point: 2 }));
    }

    #[test]
    fn a_scale_is_found_by_its_word() {
        let points = [(Ratio::from(0.0), 50.0), (Ratio::from(0.1), 40.0)];
        for (word, scale) in
            [("shore-00", Scale::Shore00), ("shore-a", Scale::ShoreA), ("squeeze", Scale::Own)]
        {
            let refused = MeasuredHardness::new(word, &points).unwrap().ratio(30.0).unwrap_err();
            let SoftenerError::HardnessOutside { scale: found, .. } = refused else {
                panic!("{refused}")
            };
            assert_eq!(found, scale);
        }
    }

    #[test]
    fn scales_do_not_convert() {
        let mut points = on(Scale::Shore00, SOFTENED);
        let curve = HardnessCurve::new(&points).unwrap();
        let asked = curve.ratio(Hardness { reading: 30.0, scale: Scale::ShoreA }).unwrap_err();
        assert_eq!(asked.code(), "softener-other-scale");
        points[2].hardness.scale = Scale::ShoreA;
        let mixed = HardnessCurve::new(&points).unwrap_err();
        assert!(matches!(mixed, SoftenerError::MixedScales { point: 3, .. }));
    }

    #[test]
    fn outside_the_points_it_says_what_is_in_reach() {
        let points = on(Scale::Shore00, SOFTENED);
        let curve = HardnessCurve::new(&points).unwrap();
        let far = curve.hardness(Ratio::from(0.31)).unwrap_err();
        assert!(far.help().contains("from 0 % to 30 %"), "{}", far.help());
        let soft = curve.ratio(shore00(20.0)).unwrap_err();
        assert!(soft.help().contains("from Shore 00 24 to 62"), "{}", soft.help());
        assert!(curve.ratio(shore00(f64::NAN)).is_err());
    }

    #[rstest]
    #[case(&[(0.0, 60.0), (0.1, 50.0), (0.2, 52.0), (0.3, 40.0)], 2)]
    #[case(&[(0.0, 60.0), (0.1, 60.0), (0.2, 52.0)], 2)]
    #[case(&[(0.0, 60.0), (0.1, 50.0), (0.2, 40.0), (0.3, 40.0)], 3)]
    fn says_where_readings_turn(#[case] points: &[(f64, f64)], #[case] at: usize) {
        let points = on(Scale::Shore00, points);
        let curve = HardnessCurve::new(&points).unwrap();
        let refused = curve.ratio(shore00(51.0)).unwrap_err();
        assert_eq!(refused, SoftenerError::Turns { point: at });
    }

    // By hand: on a straight line of 2 points of squeeze per tenth of softener.
    #[test]
    fn any_scale_of_the_shops_own_works_the_same() {
        let ratio = Ratio::from;
        let points = [(ratio(0.0), 5.0), (ratio(0.1), 3.0), (ratio(0.2), 1.0)];
        let squeeze = MeasuredHardness::new("squeeze", &points).unwrap();
        assert_eq!(squeeze.scale(), "squeeze");
        assert!((squeeze.more(4.0, 2.0).unwrap().value - 0.1).abs() < 1e-12);
        assert!((squeeze.more(2.0, 4.0).unwrap().value + 0.1).abs() < 1e-12);
        assert_eq!(squeeze.more(4.0, 0.5).unwrap_err().code(), "softener-hardness-outside-points");
        let turns = [(ratio(0.0), 5.0), (ratio(0.1), 3.0), (ratio(0.2), 4.0)];
        assert_eq!(
            MeasuredHardness::new("squeeze", &turns).unwrap_err().code(),
            "softener-readings-turn"
        );
    }

    #[test]
    fn salt_asks_for_softener_by_the_shops_points() {
        let ratio = Ratio::from;
        let points = [
            SaltedPoint { salt: ratio(0.0), softener: ratio(0.0) },
            SaltedPoint { salt: ratio(0.15), softener: ratio(0.02) },
            SaltedPoint { salt: ratio(0.30), softener: ratio(0.05) },
        ];
        let curve = SaltedCurve::new(&points).unwrap();
        assert_eq!(curve.softener(ratio(0.15)).unwrap(), ratio(0.02));
        let between = curve.softener(ratio(0.2)).unwrap();
        assert!(between > ratio(0.02) && between < ratio(0.05));
        assert_eq!(curve.softener(ratio(0.4)).unwrap_err().code(), "softener-ratio-outside-points");
    }

    /// Strictly falling or rising readings at rising ratios.
    fn strict() -> impl Strategy<Value = Vec<(f64, f64)>> {
        (prop::collection::vec((0.001..0.2, 0.1..10.0), 2..9), any::<bool>()).prop_map(
            |(steps, falls): (Vec<(f64, f64)>, bool)| {
                let (mut x, mut y) = (0.0_f64, if falls { 95.0 } else { 5.0 });
                let mut points = Vec::new();
                for (dx, dy) in steps {
                    points.push((x, y));
                    x += dx;
                    y += if falls { -dy } else { dy };
                }
                points
            },
        )
    }

    proptest! {
        #[test]
        fn stays_between_neighbors_and_inverts(points in strict(), share in 0.0..1.0) {
            let points = on(Scale::Shore00, &points);
            let curve = HardnessCurve::new(&points).unwrap();
            let last = points.last().unwrap().ratio.value;
            let ratio = Ratio::from(share * last);
            let hardness = curve.hardness(ratio).unwrap();
            let i = points.partition_point(|point| point.ratio <= ratio);
            let (a, b) = (points[i - 1].hardness.reading, points[i].hardness.reading);
            prop_assert!(hardness.reading >= a.min(b) - 1e-9 && hardness.reading <= a.max(b) + 1e-9);
            let hardness = shore00(hardness.reading.clamp(a.min(b), a.max(b)));
            // The slope may be nearly zero, so the way back is held against the reading.
            let back = curve.hardness(curve.ratio(hardness).unwrap()).unwrap();
            prop_assert!((back.reading - hardness.reading).abs() < 1e-10);
        }
    }
}
