//! Gauge readings: how far below the outside air, or how far above nothing. Never mixed up.
//!
//! p_abs = p_local − gauge. So a gauge can show at most what the air outside gives: 29.92 inHg at sea
//! level on a standard day, 24.90 inHg at 5 000 ft. A dial that shows a little more than that is off, by
//! no more than its maker allows; one that shows much more has been misread, or the altitude is wrong.

use alloc::borrow::Cow;
use alloc::format;

use super::atmosphere::StationPressure;
use super::figures::{from_inches_of_mercury, inches_of_mercury, kilopascals};
use crate::codes::codes;
use crate::fault::Diagnose;
use crate::parameter::{Check, Parameter, ParameterError, ParameterErrors, Relation};
use crate::quantity::{Pressure, Ratio};

/// How far below the outside air the chamber is, by a gauge.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct VacuumReading(Pressure);

/// A pressure above nothing at all, zero or more.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct AbsolutePressure(Pressure);

/// How true a vacuum gauge is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Dial {
    span: Pressure,
    accuracy: Ratio,
}

/// The pressure in the chamber by a reading.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct ChamberPressure {
    /// The pressure to calculate with: p_local − gauge; where that is within the dial's accuracy of nothing at
    /// all, the middle of what is possible.
    pub absolute: AbsolutePressure,
    /// Lowest pressure that the dial's accuracy allows: 0 so near the end of the dial that it does not show more.
    pub least: AbsolutePressure,
    /// Highest pressure that the dial's accuracy allows.
    pub most: AbsolutePressure,
    /// How much more the dial shows than the air can give. `Some` means that the dial is off, within
    /// its accuracy.
    pub over: Option<Pressure>,
}

/// A gauge reading that cannot be.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum GaugeError {
    /// Numbers that are wrong.
    #[error(transparent)]
    Parameters(#[from] ParameterErrors),
    /// More vacuum than the outside air gives, beyond the dial's accuracy.
    #[error(
        "A vacuum of {} ({}) cannot be where the air has {} ({}).",
        inches_of_mercury(.reading), kilopascals(.reading),
        inches_of_mercury(.local), kilopascals(.local)
    )]
    MoreThanTheAir {
        /// The reading.
        reading: Pressure,
        /// The pressure of the air outside: a true gauge shows at most that.
        local: Pressure,
        /// How far the dial may be off.
        tolerance: Pressure,
    },
}

impl Diagnose for GaugeError {
    codes! {
        Self::Parameters(errors) => errors.code(),
        Self::MoreThanTheAir { .. } => "gauge-more-than-the-air",
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::Parameters(errors) => errors.help(),
            Self::MoreThanTheAir { local, tolerance, .. } => format!(
                "A gauge here shows at most {} ({}), one as true as yours up to {}: \
                 read it again, check the altitude, or give it as an absolute pressure.",
                inches_of_mercury(local).at_most(),
                kilopascals(local).at_most(),
                inches_of_mercury(&(*local + *tolerance)).at_most(),
            )
            .into(),
        }
    }

    fn numbers(&self) -> &[ParameterError] {
        match self {
            Self::Parameters(errors) => errors.numbers(),
            _ => &[],
        }
    }

    fn parameter(&self) -> Option<Parameter> {
        match self {
            Self::Parameters(errors) => errors.parameter(),
            Self::MoreThanTheAir { .. } => Some(Parameter::GaugeVacuum),
        }
    }
}

impl From<ParameterError> for GaugeError {
    fn from(error: ParameterError) -> Self {
        Self::Parameters(error.into())
    }
}

impl Dial {
    /// A gauge of this span whose readings are true to ± `accuracy`, a share of the span.
    ///
    /// ASME B40.100 allows ±1 % of the span for grade 1A, 2 % (1 % mid-scale) for A, 3 % (2 %) for B,
    /// 4 % (3 %) for C and 5 % for D (from memory).
    ///
    /// # Errors
    /// A span that is not positive, or an accuracy outside 0 to 1.
    pub fn new(span: Pressure, accuracy: Ratio) -> Result<Self, ParameterErrors> {
        let mut check = Check::new();
        check
            .number(Parameter::DialSpan, span.value)
            .number(Parameter::DialAccuracy, accuracy.value);
        check.finish()?;
        Ok(Self { span, accuracy })
    }

    /// The common dial ([`Dial::default`]), whose readings may be off by `tolerance` to either side.
    ///
    /// # Errors
    /// A tolerance that is negative, not finite, or beyond the dial.
    pub fn within(tolerance: Pressure) -> Result<Self, ParameterError> {
        Parameter::DialTolerance.check_si(tolerance.value)?;
        let span = Self::default().span;
        Ok(Self { span, accuracy: tolerance / span })
    }

    /// Its highest reading.
    #[must_use]
    pub fn span(self) -> Pressure {
        self.span
    }

    /// How far a reading may be off, to either side.
    #[must_use]
    pub fn tolerance(self) -> Pressure {
        self.span * self.accuracy
    }
}

/// A dial to 30 inHg, true to 3 % of that: the ends of the scale of an ASME B40.100 grade B gauge (from
/// memory); that a workshop's gauge is of that grade is common practice, no source.
impl Default for Dial {
    fn default() -> Self {
        Self { span: from_inches_of_mercury(30.0), accuracy: Ratio::from(0.03) }
    }
}

impl AbsolutePressure {
    /// The absolute pressure `pressure`.
    ///
    /// # Errors
    /// One that is negative, not finite, or above any air.
    pub fn new(pressure: Pressure) -> Result<Self, ParameterError> {
        Parameter::AbsolutePressure.check_si(pressure.value).map(|_| Self(pressure))
    }

    /// As a plain pressure.
    #[must_use]
    pub fn get(self) -> Pressure {
        self.0
    }

    /// Reading of a true vacuum gauge at this pressure: p_local − p_abs.
    ///
    /// # Errors
    /// A pressure above that of the air outside.
    pub fn vacuum(self, local: StationPressure) -> Result<VacuumReading, ParameterErrors> {
        self.check_below(local)?;
        Ok(VacuumReading(local.get() - self.0))
    }

    /// Refuses a pressure above that of the air outside.
    pub(super) fn check_below(self, local: StationPressure) -> Result<(), ParameterErrors> {
        let mut check = Check::new();
        check.relation(
            (Parameter::AbsolutePressure, self.0.value),
            Relation::AtMost,
            (Parameter::StationPressure, local.get().value),
        );
        check.finish()
    }
}

impl VacuumReading {
    /// The reading `vacuum` below the outside air.
    ///
    /// # Errors
    /// One that is negative, not finite, or above any air.
    pub fn new(vacuum: Pressure) -> Result<Self, ParameterError> {
        Parameter::GaugeVacuum.check_si(vacuum.value).map(|_| Self(vacuum))
    }

    /// Highest reading of a true gauge: all of the air outside.
    #[must_use]
    pub fn most(local: StationPressure) -> Self {
        Self(local.get())
    }

    /// As a plain pressure difference.
    #[must_use]
    pub fn get(self) -> Pressure {
        self.0
    }

    /// The absolute pressure in the chamber, p_abs = p_local − gauge, and what the dial's accuracy
    /// makes of it.
    ///
    /// Where p_local − gauge is less than the dial's accuracy, the chamber may be anywhere from 0 to
    /// p_local − gauge + tolerance; the middle of that is taken (the expectation of an evenly spread value,
    /// JCGM 100 4.3.7), and [`ChamberPressure::least`] is then 0. Where the dial shows more than the air
    /// gives, [`ChamberPressure::over`] is by how much.
    ///
    /// # Errors
    /// [`GaugeError::MoreThanTheAir`] for a reading that even the dial's accuracy does not explain.
    pub fn absolute(
        self,
        local: StationPressure,
        dial: Dial,
    ) -> Result<ChamberPressure, GaugeError> {
        let (local, tolerance) = (local.get(), dial.tolerance());
        let nothing = Pressure::default();
        let shown = local - self.0;
        let most = shown + tolerance;
        if most < nothing {
            return Err(GaugeError::MoreThanTheAir { reading: self.0, local, tolerance });
        }
        let (least, absolute) =
            if shown > tolerance { (shown - tolerance, shown) } else { (nothing, most / 2.0) };
        let over = (shown < nothing).then(|| -shown);
        Ok(ChamberPressure {
            absolute: AbsolutePressure(absolute),
            least: AbsolutePressure(least),
            most: AbsolutePressure(if most > local { local } else { most }),
            over,
        })
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use rstest::rstest;
    use std::string::ToString;
    use uom::si::length::meter;

    use super::*;
    use crate::process::atmosphere::GeometricAltitude;
    use crate::quantity::Length;

    fn at(m: f64) -> StationPressure {
        StationPressure::standard(GeometricAltitude::new(Length::new::<meter>(m)).unwrap())
    }

    fn vacuum(inches: f64) -> VacuumReading {
        VacuumReading::new(from_inches_of_mercury(inches)).unwrap()
    }

    fn inches(pressure: Pressure) -> f64 {
        (pressure / from_inches_of_mercury(1.0)).value
    }

    #[test]
    fn thirty_inches_at_sea_level_are_the_dials_tolerance() {
        let found = vacuum(30.0).absolute(at(0.0), Dial::default()).unwrap();
        // 30 inHg less 29.921 26 inHg of air; 3 % of 30 inHg are 0.9 inHg.
        assert!((inches(found.over.unwrap()) - 0.078_74).abs() < 1e-4);
        assert!((inches(found.most.get()) - 0.821_26).abs() < 1e-4);
        assert!((inches(found.absolute.get()) - 0.410_63).abs() < 1e-4);
        assert_eq!(found.least.get(), Pressure::default());
    }

    #[test]
    fn thirty_inches_at_1500_m_cannot_be() {
        let refused = vacuum(30.0).absolute(at(1_500.0), Dial::default()).unwrap_err();
        assert_eq!(
            refused.to_string(),
            "A vacuum of 30 inHg (101.6 kPa) cannot be where the air has 24.97 inHg (84.56 kPa)."
        );
        assert_eq!(
            refused.help(),
            "A gauge here shows at most 24.97 inHg (84.55 kPa), one as true as yours up to 25.87 inHg: \
             read it again, check the altitude, or give it as an absolute pressure."
        );
    }

    /// At the boundaries, in numbers without rounding: air of 96 kPa, a dial to 100 kPa ± 1/32.
    #[test]
    fn a_reading_at_its_ends() {
        let pa = Pressure::new::<uom::si::pressure::pascal>;
        let local = StationPressure::measured(pa(96_000.0)).unwrap();
        let dial = Dial::new(pa(100_000.0), Ratio::from(1.0 / 32.0)).unwrap();
        let absolute =
            |reading: f64| VacuumReading::new(pa(reading)).unwrap().absolute(local, dial);
        // All of the air: nothing is over. As much more as the dial allows: nothing is left. A little more cannot be.
        assert_eq!(absolute(96_000.0).unwrap().over, None);
        let last = absolute(99_125.0).unwrap();
        assert_eq!((last.most.get(), last.over), (pa(0.0), Some(pa(3_125.0))));
        assert_eq!(absolute(99_125.5).unwrap_err().code(), "gauge-more-than-the-air");
        assert_eq!((dial.span(), dial.tolerance()), (pa(100_000.0), pa(3_125.0)));
        let within = Dial::within(pa(2_000.0)).unwrap();
        assert!((within.tolerance() - pa(2_000.0)).value.abs() < 1e-9);
    }

    #[test]
    fn a_plain_reading_is_the_difference() {
        let found = vacuum(28.0).absolute(at(0.0), Dial::default()).unwrap();
        assert!((inches(found.absolute.get()) - 1.921_26).abs() < 1e-4);
        assert!((inches(found.least.get()) - 1.021_26).abs() < 1e-4);
        assert_eq!(found.over, None);
    }

    /// At 640 m a dial of ± 0.9 inHg counts up to 26.8 inHg; from there on the middle is taken, and the
    /// more it shows, the less may be left.
    #[test]
    fn near_its_end_a_dial_shows_nothing() {
        let local = at(640.0);
        let found = vacuum(27.4).absolute(local, Dial::default()).unwrap();
        assert_eq!((found.least.get(), found.over), (Pressure::default(), None));
        assert!((found.absolute.get() * 2.0 - found.most.get()).value.abs() < 1e-9);
        let mut last = local.get();
        for tenth in 1..=285 {
            let found = vacuum(f64::from(tenth) / 10.0).absolute(local, Dial::default()).unwrap();
            let fall = inches(last - found.absolute.get());
            assert!((0.049..0.101).contains(&fall), "{tenth}: {fall}");
            last = found.absolute.get();
        }
    }

    #[test]
    fn an_absolute_pressure_is_no_vacuum_above_the_air() {
        let absolute = AbsolutePressure::new(from_inches_of_mercury(29.0)).unwrap();
        assert!(absolute.vacuum(at(0.0)).is_ok());
        assert_eq!(absolute.vacuum(at(1_500.0)).unwrap_err().code(), "out-of-range");
    }

    #[rstest]
    #[case(-1.0)]
    #[case(f64::NAN)]
    #[case(f64::INFINITY)]
    fn what_is_no_reading_is_refused(#[case] inches: f64) {
        let pressure = from_inches_of_mercury(inches);
        let code = crate::parameter::refused_as(inches);
        assert_eq!(VacuumReading::new(pressure).unwrap_err().code(), code);
        assert_eq!(AbsolutePressure::new(pressure).unwrap_err().code(), code);
        let share = Ratio::from(0.03);
        assert_eq!(Dial::new(pressure, share).unwrap_err().code(), code);
        let span = from_inches_of_mercury(30.0);
        assert_eq!(Dial::new(span, Ratio::from(-0.1)).unwrap_err().code(), "out-of-range");
    }

    proptest! {
        #[test]
        fn there_and_back(m in -400.0..5_000.0f64, share in 0.0..0.999f64) {
            let local = at(m);
            let read = VacuumReading::new(local.get() * share).unwrap();
            let dial = Dial::new(from_inches_of_mercury(30.0), Ratio::from(0.0005)).unwrap();
            prop_assume!(local.get() - read.get() > dial.tolerance());
            let found = read.absolute(local, dial).unwrap();
            let back = found.absolute.vacuum(local).unwrap();
            prop_assert!((back.get() - read.get()).value.abs() <= 1e-9);
            prop_assert!(found.least <= found.absolute && found.absolute <= found.most);
        }

        #[test]
        fn a_reading_is_refused_only_beyond_the_tolerance(m in -400.0..5_000.0f64, inches in 0.0..40.0f64) {
            let (local, dial) = (at(m), Dial::default());
            let beyond = vacuum(inches).get() - local.get() > dial.tolerance();
            prop_assert_eq!(vacuum(inches).absolute(local, dial).is_err(), beyond);
        }
    }
}
