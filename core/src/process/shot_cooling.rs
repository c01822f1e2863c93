//! How long a shot sets in a metal mold.
//!
//! The surface of the piece is held at the mold's temperature T_m, its middle starts at T₀ and is taken out at
//! T_e; Θ = (T_e − T_m)/(T₀ − T_m). The first term of the series is
//!
//! | piece | time | C at the center | C of the mean |
//! | --- | --- | --- | --- |
//! | rod of diameter D | D²/(23.1327 α) ln(C/Θ) | 1.601975 | 0.691660 |
//! | plate of thickness s | s²/(π² α) ln(C/Θ) | 4/π | 8/π² |
//! | ball of diameter D | D²/(4 π² α) ln(C/Θ) | 2 | 6/π² |
//!
//! (H. S. Carslaw, J. C. Jaeger, *Conduction of Heat in Solids*; as cooling-time equations of injection
//! molding.) It holds from a Fourier number α t/R² of 0.2 on, R half the diameter or thickness; a shorter time is
//! given as that of 0.2, too long rather than too short. Metal takes heat much better than plastic, so that its
//! surface keeps its temperature (aluminum at 25 °C meets plastic of 165 °C at 29 °C); plaster and silicone
//! do not (91 and 93 °C): for them the shop's own time is all there is.
//!
//! A contact that is not perfect adds 1 to 6 %. The diffusivity α of soft PVC is the larger doubt: 8.0e-8 m²/s,
//! from 6.5e-8 to 1.0e-7 (k 0.15 ± 0.02 W/(m K), ρ 1.0 g/mL, c_p 1.8 to 2.1 J/(g K)).
//!
//! The mold warms with each shot: by m c_p (T₀ − T_e)/C_mold where nothing is lost. The piece is taken to meet
//! the mold as warm as the shot leaves it.

use alloc::borrow::Cow;
use alloc::format;
use core::f64::consts::PI;

use uom::si::diffusion_coefficient::square_meter_per_second;
use uom::si::specific_heat_capacity::joule_per_kilogram_kelvin;

use crate::codes::codes;
use crate::fault::Diagnose;
use crate::parameter::{Check, Parameter, ParameterError, ParameterErrors};
use crate::quantity::{
    DiffusionCoefficient, HeatCapacity, Length, SpecificHeatCapacity, TemperatureInterval,
    ThermodynamicTemperature, Time,
};
use crate::show::both_scales;
use crate::words::words;

/// The first zero of the Bessel function J₀, squared.
const ROD: f64 = 5.783_185_962_946_785;

/// The Fourier number below which the first term alone does not hold.
const LEAST_FOURIER: f64 = 0.2;

/// More shots in a row than these are not counted: the mold then keeps its temperature.
const MOST_IN_A_ROW: u32 = 50;

/// The thickest part of a piece.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Section {
    /// Longer than thick: a worm, a stick.
    Rod {
        /// Its diameter.
        diameter: Length,
    },
    /// Wide and flat, metal on both sides: a craw's body, a paddle.
    Plate {
        /// Its thickness.
        thickness: Length,
    },
    /// About as long as thick: a grub's head.
    Ball {
        /// Its diameter.
        diameter: Length,
    },
}

impl Section {
    /// How thick it is: its diameter, or that of the plate.
    #[must_use]
    pub const fn thickness(self) -> Length {
        match self {
            Self::Rod { diameter } | Self::Ball { diameter } => diameter,
            Self::Plate { thickness } => thickness,
        }
    }
}

words! {
    /// The thickest part of a piece, as a word.
    pub enum SectionShape {
        /// Longer than thick: a worm, a stick.
        Rod = "rod",
        /// Wide and flat, metal on both sides: a craw's body, a paddle.
        Plate = "plate",
        /// About as long as thick: a grub's head.
        Ball = "ball",
    }
}

words! {
    /// The point of a piece whose temperature counts.
    pub enum Point {
        /// Its center: solid through and through.
        Center = "center",
        /// Its mean: it keeps its shape when it is taken out.
        Mean = "mean",
    }
}

/// The diffusivity of soft PVC, and its range.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Diffusivity {
    /// The expected one.
    pub expected: DiffusionCoefficient,
    /// The lowest: the longest time.
    pub lowest: DiffusionCoefficient,
    /// The highest: the shortest time.
    pub highest: DiffusionCoefficient,
}

/// That of soft PVC near 100 °C (source: [module](self)).
impl Default for Diffusivity {
    fn default() -> Self {
        let of = DiffusionCoefficient::new::<square_meter_per_second>;
        Self { expected: of(8.0e-8), lowest: of(6.5e-8), highest: of(1.0e-7) }
    }
}

/// The specific heat of soft PVC, 1.9 J/(g K): from 1.8 to 2.1 by what is in it (source: [module](self)).
#[must_use]
pub fn specific_heat() -> SpecificHeatCapacity {
    SpecificHeatCapacity::new::<joule_per_kilogram_kelvin>(Parameter::ShotSpecificHeat.default_si())
}

/// A shot that cools in a metal mold.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ShotCooling {
    /// The thickest part of the piece.
    pub section: Section,
    /// Which temperature of it counts.
    pub point: Point,
    /// The diffusivity of the plastic.
    pub diffusivity: Diffusivity,
    /// The temperature it is shot at.
    pub shot: ThermodynamicTemperature,
    /// The temperature at which it can be taken out.
    pub take_out: ThermodynamicTemperature,
}

/// How long a shot sets.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Setting {
    /// The expected time.
    pub time: Time,
    /// With the highest diffusivity of its range.
    pub shortest: Time,
    /// With the lowest.
    pub longest: Time,
    /// Whether it is so short that the time is that of the Fourier number 0.2, and too long.
    pub is_bound: bool,
}

/// Why a cooling cannot be calculated.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum ShotCoolingError {
    /// Numbers that are wrong.
    #[error(transparent)]
    Parameters(#[from] ParameterErrors),
    /// A mold that is as hot as the piece must become.
    #[error(
        "In a mold of {} the piece never cools to {}.",
        both_scales(.mold), both_scales(.take_out)
    )]
    MoldTooWarm {
        /// The mold, as warm as the shot leaves it.
        mold: ThermodynamicTemperature,
        /// The temperature at which it can be taken out.
        take_out: ThermodynamicTemperature,
    },
    /// A piece that is shot no hotter than it is taken out.
    #[error(
        "A shot at {} that is taken out at {} does not cool.",
        both_scales(.shot), both_scales(.take_out)
    )]
    NotHotter {
        /// The temperature it is shot at.
        shot: ThermodynamicTemperature,
        /// The temperature at which it can be taken out.
        take_out: ThermodynamicTemperature,
    },
}

impl Diagnose for ShotCoolingError {
    codes! {
        Self::Parameters(errors) => errors.code(),
        Self::MoldTooWarm { .. } => "mold-too-warm",
        Self::NotHotter { .. } => "shot-not-hotter",
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::Parameters(errors) => errors.help(),
            Self::MoldTooWarm { take_out, .. } => format!(
                "Cool the mold well below {}, take a heavier one, or use more molds in turn.",
                both_scales(take_out)
            )
            .into(),
            Self::NotHotter { .. } => {
                "Give a shot temperature above the one at which pieces are taken out.".into()
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
        match self {
            Self::Parameters(errors) => errors.parameter(),
            Self::MoldTooWarm { .. } => Some(Parameter::MoldAt),
            Self::NotHotter { .. } => Some(Parameter::ShotAt),
        }
    }
}

impl Section {
    /// The section of this shape whose diameter or thickness is `thickness`.
    #[must_use]
    pub const fn new(shape: SectionShape, thickness: Length) -> Self {
        match shape {
            SectionShape::Rod => Self::Rod { diameter: thickness },
            SectionShape::Plate => Self::Plate { thickness },
            SectionShape::Ball => Self::Ball { diameter: thickness },
        }
    }

    /// How slowly its center cools: r²/ζ², the time for a factor of e times the diffusivity.
    #[cfg(feature = "document")]
    pub(crate) fn slowness(self) -> f64 {
        let (radius, zeta, _) = self.terms(Point::Center);
        radius * radius / zeta
    }

    /// Half the diameter or thickness, in m; ζ² of the series' first term; its C.
    fn terms(self, point: Point) -> (f64, f64, f64) {
        let pi = PI * PI;
        let (length, zeta, at_center, of_mean) = match self {
            Self::Rod { diameter } => (diameter, ROD, 1.601_974_697, 0.691_660_275),
            Self::Plate { thickness } => (thickness, pi / 4.0, 4.0 / PI, 8.0 / pi),
            Self::Ball { diameter } => (diameter, pi, 2.0, 6.0 / pi),
        };
        let c = match point {
            Point::Center => at_center,
            Point::Mean => of_mean,
        };
        (length.value / 2.0, zeta, c)
    }
}

impl ShotCooling {
    /// How long the shot sets in a metal mold that stays at `mold`.
    ///
    /// # Errors
    /// [`ShotCoolingError::MoldTooWarm`] where the mold is as warm as the piece must become;
    /// [`ShotCoolingError::NotHotter`]; [`ShotCoolingError::Parameters`].
    pub fn in_mold(&self, mold: ThermodynamicTemperature) -> Result<Setting, ShotCoolingError> {
        let (radius, zeta, c) = self.section.terms(self.point);
        let Diffusivity { expected, lowest, highest } = self.diffusivity;
        let mut check = Check::new();
        check
            .number(Parameter::SectionThickness, 2.0 * radius)
            .number(Parameter::Diffusivity, expected.value)
            .number(Parameter::ShotAt, self.shot.value)
            .number(Parameter::MoldAt, mold.value)
            .number(Parameter::TakeOut, self.take_out.value);
        // Where the expected one is wrong, one refusal is enough.
        if check.is_clean() {
            check
                .number(Parameter::Diffusivity, lowest.value)
                .number(Parameter::Diffusivity, highest.value);
        }
        check.finish()?;
        if self.take_out >= self.shot {
            return Err(ShotCoolingError::NotHotter { shot: self.shot, take_out: self.take_out });
        }
        if self.take_out <= mold {
            return Err(ShotCoolingError::MoldTooWarm { mold, take_out: self.take_out });
        }
        let theta = (self.take_out.value - mold.value) / (self.shot.value - mold.value);
        let fourier = libm::log(c / theta) / zeta;
        let time = |diffusivity: DiffusionCoefficient| {
            Time::new::<uom::si::time::second>(
                fourier.max(LEAST_FOURIER) * radius * radius / diffusivity.value,
            )
        };
        Ok(Setting {
            time: time(self.diffusivity.expected),
            shortest: time(self.diffusivity.highest),
            longest: time(self.diffusivity.lowest),
            is_bound: fourier < LEAST_FOURIER,
        })
    }

    /// How much a mold of the heat capacity `mold` warms by one shot of the heat capacity `plastic`, nothing lost:
    /// C_plastic (T₀ − T_e)/C_mold.
    ///
    /// # Errors
    /// [`ShotCoolingError::Parameters`] for a heat capacity that is not above zero.
    pub fn warms(
        &self,
        plastic: HeatCapacity,
        mold: HeatCapacity,
    ) -> Result<TemperatureInterval, ShotCoolingError> {
        let mut check = Check::new();
        check
            .number(Parameter::ShotHeatCapacity, plastic.value)
            .number(Parameter::MoldHeatCapacity, mold.value);
        check.finish()?;
        let given = TemperatureInterval::new::<uom::si::temperature_interval::kelvin>(
            self.shot.value - self.take_out.value,
        );
        Ok(given * (plastic / mold).value)
    }

    /// How often a mold that begins at `mold` and warms by `each` shot can be shot in a row, nothing lost between
    /// them; `None` where it goes on for 50 shots.
    #[must_use]
    pub fn in_a_row(
        &self,
        mold: ThermodynamicTemperature,
        each: TemperatureInterval,
    ) -> Option<u32> {
        let mut warm = mold;
        for shots in 0..MOST_IN_A_ROW {
            warm += each;
            if self.in_mold(warm).is_err() {
                return Some(shots);
            }
        }
        None
    }
}

impl From<ParameterError> for ShotCoolingError {
    fn from(error: ParameterError) -> Self {
        Self::Parameters(error.into())
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use rstest::rstest;
    use uom::si::heat_capacity::joule_per_kelvin;
    use uom::si::length::millimeter;
    use uom::si::temperature_interval::kelvin;
    use uom::si::thermodynamic_temperature::degree_celsius;
    use uom::si::time::second;

    use super::*;

    fn celsius(t: f64) -> ThermodynamicTemperature {
        ThermodynamicTemperature::new::<degree_celsius>(t)
    }

    fn mm(d: f64) -> Length {
        Length::new::<millimeter>(d)
    }

    fn of(section: Section, point: Point) -> ShotCooling {
        let (shot, take_out) = (celsius(165.0), celsius(50.0));
        ShotCooling { section, point, diffusivity: Diffusivity::default(), shot, take_out }
    }

    #[test]
    fn a_mold_warms_until_it_does_not_do() {
        let cooling = of(Section::Rod { diameter: mm(10.0) }, Point::Center);
        let capacity = HeatCapacity::new::<joule_per_kelvin>;
        let each = cooling.warms(capacity(76.0), capacity(448.0)).unwrap();
        assert!((each.get::<kelvin>() - 19.51).abs() < 0.01);
        // 44.5 °C after the first shot, 64 °C after the second.
        assert_eq!(cooling.in_a_row(celsius(25.0), each), Some(1));
        assert_eq!(cooling.in_a_row(celsius(25.0), each * 1e-3), None);
    }

    /// The equations of the module's table by hand: 10 mm, 8.0e-8 m²/s, Θ = (30 − 25)/(165 − 25); 23.1327 is 4 · 2.404826².
    #[rstest]
    #[case(Section::Rod { diameter: mm(10.0) }, 205.5226, 160.1380)]
    #[case(Section::Plate { thickness: mm(10.0) }, 452.6231, 395.4295)]
    #[case(Section::Ball { diameter: mm(10.0) }, 127.4542, 89.7485)]
    fn times_by_hand(#[case] section: Section, #[case] center: f64, #[case] mean: f64) {
        for (point, expected) in [(Point::Center, center), (Point::Mean, mean)] {
            let cooling = ShotCooling { take_out: celsius(30.0), ..of(section, point) };
            let setting = cooling.in_mold(celsius(25.0)).unwrap();
            assert!((setting.time.get::<second>() - expected).abs() < 1e-3, "{setting:?}");
            assert!(!setting.is_bound);
        }
    }

    #[test]
    fn each_diffusivity_is_checked() {
        let rod = of(Section::Rod { diameter: mm(10.0) }, Point::Center);
        let nothing = DiffusionCoefficient::new::<square_meter_per_second>(0.0);
        let usual = Diffusivity::default();
        for diffusivity in [
            Diffusivity { lowest: nothing, ..usual },
            Diffusivity { highest: nothing, ..usual },
            Diffusivity { expected: nothing, lowest: nothing, highest: nothing },
        ] {
            let refused = ShotCooling { diffusivity, ..rod }.in_mold(celsius(25.0)).unwrap_err();
            assert_eq!((refused.code(), refused.numbers().len()), ("out-of-range", 1));
        }
    }

    #[test]
    fn a_shot_no_hotter_than_it_is_taken_out_is_refused() {
        let rod = of(Section::Rod { diameter: mm(10.0) }, Point::Center);
        let cold = ShotCooling { shot: celsius(50.0), ..rod };
        assert_eq!(cold.in_mold(celsius(25.0)).unwrap_err().code(), "shot-not-hotter");
    }

    /// A rod so thin that the first term alone does not hold is given the time of the Fourier number 0.2.
    #[test]
    fn a_short_time_is_a_bound() {
        let mean = of(Section::Rod { diameter: mm(3.0) }, Point::Mean);
        let mean = ShotCooling { take_out: celsius(140.0), ..mean };
        let setting = mean.in_mold(celsius(25.0)).unwrap();
        assert!(setting.is_bound);
        assert!((setting.time.get::<second>() - 0.2 * 1.5e-3 * 1.5e-3 / 8.0e-8).abs() < 1e-9);
    }

    #[rstest]
    #[case(10.0, 55.0, "mold-too-warm")]
    #[case(10.0, f64::NAN, "not-finite")]
    #[case(0.0, 25.0, "out-of-range")]
    #[case(f64::NAN, 25.0, "not-finite")]
    fn refuses(#[case] diameter: f64, #[case] mold: f64, #[case] code: &str) {
        let cooling = of(Section::Rod { diameter: mm(diameter) }, Point::Center);
        assert_eq!(cooling.in_mold(celsius(mold)).unwrap_err().code(), code);
    }

    proptest! {
        /// Thicker, a warmer mold, a colder piece: longer; a ball faster than a rod, a rod faster than a plate.
        #[test]
        fn more_takes_longer(d in 3.0..40.0f64, mold in 0.0..45.0f64) {
            let time = |section, mold| {
                of(section, Point::Center).in_mold(celsius(mold)).unwrap().time.get::<second>()
            };
            let rod = |d| Section::Rod { diameter: mm(d) };
            prop_assert!(time(rod(d * 1.1), mold) > time(rod(d), mold));
            prop_assert!(time(rod(d), mold + 1.0) > time(rod(d), mold));
            let (ball, plate) = (Section::Ball { diameter: mm(d) }, Section::Plate { thickness: mm(d) });
            prop_assert!(time(ball, mold) < time(rod(d), mold));
            prop_assert!(time(rod(d), mold) < time(plate, mold));
            let center = of(rod(d), Point::Center).in_mold(celsius(mold)).unwrap();
            let mean = of(rod(d), Point::Mean).in_mold(celsius(mold)).unwrap();
            prop_assert!(mean.time <= center.time && center.shortest < center.longest);
        }
    }
}
