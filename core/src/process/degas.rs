//! Degassing: how far a pot swells under vacuum, and how much of it fits the vessel.
//!
//! The entrained air follows Boyle's law, with the liquid's vapor taking its share of the pressure:
//!
//! V = V_liq [1 + φ₀/(1 − φ₀) · p_local/(p_abs − p_vap)]
//!
//! V_liq is the volume without air, φ₀ the share of air in the mix under the outside
//! pressure. This is the swelling if no bubble bursts on the way: slow evacuation swells less, so it
//! is the volume to have room for. At p_abs ≤ p_vap the liquid boils, and no room is enough.

use alloc::borrow::Cow;
use alloc::format;

use super::atmosphere::StationPressure;
use super::figures::kilopascals;
use super::gauge::AbsolutePressure;
use crate::check::{is_not_negative, is_positive};
use crate::codes::codes;
use crate::fault::Diagnose;
use crate::parameter::{Check, Parameter, ParameterError, ParameterErrors};
use crate::quantity::{Pressure, Ratio, Volume};
use crate::show::{number, volume};

/// A batch in more fills than this is a slip of the unit.
const MOST_FILLS: f64 = 1_000.0;

/// The air in a mix, as φ₀/(1 − φ₀): its volume under the outside pressure per volume of liquid.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct EntrainedAir(f64);

/// How a pot was seen to rise under vacuum.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ObservedRise {
    /// Its level before, in the vessel's marks, bubbles included.
    pub before: Volume,
    /// The level that it rose to, in the same marks.
    pub risen: Volume,
    /// The vacuum in which it did.
    pub vacuum: Vacuum,
}

/// A vacuum over a liquid: the air outside, the pressure inside, and the liquid's vapor.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Vacuum {
    local: Pressure,
    absolute: Pressure,
    vapor: Pressure,
}

/// A vessel for the vacuum chamber.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DegasCup {
    brim: Volume,
    spare: Ratio,
    mark: Option<Volume>,
}

/// A batch, portioned for the vessel.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Fills {
    /// How many times the vessel is filled.
    pub count: u32,
    /// The mark to fill to at most, bubbles included; on one of the vessel's marks where it has any.
    pub mark: Volume,
    /// The level of each fill where the batch is shared out evenly, bubbles included.
    pub level: Volume,
    /// Volume that an even fill swells to.
    pub swollen: Volume,
}

/// A degassing that cannot be.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum DegasError {
    /// Numbers that are wrong.
    #[error(transparent)]
    Parameters(#[from] ParameterErrors),
    /// The pressure in the chamber is down to the vapor pressure.
    #[error("At {} absolute the liquid boils: its vapor has {}.", kilopascals(.absolute), kilopascals(.vapor))]
    Boils {
        /// In the chamber.
        absolute: Pressure,
        /// Of the vapor.
        vapor: Pressure,
        /// Highest reading that a vacuum gauge may show.
        most_vacuum: Pressure,
    },
    /// The dial is so near its end that there may be nothing left in the chamber.
    #[error(
        "Anything up to {} may be left in the chamber: so near its end the gauge does not show how far a pot swells.",
        kilopascals(.most)
    )]
    DialCannotTell {
        /// Highest pressure that may be left.
        most: Pressure,
    },
    /// The pot rose more than any amount of air explains, or sank.
    #[error("Air alone does not make a pot rise to {} times its volume in this vacuum.", number(*.factor))]
    NotAir {
        /// Volume after over volume before.
        factor: f64,
        /// Rise of pure air.
        of_air: f64,
    },
    /// The vessel has no mark low enough.
    #[error(
        "This pot may reach {} at most before the vacuum, below the vessel's lowest mark of {}.",
        volume(.fits), volume(.mark)
    )]
    BelowLowestMark {
        /// Volume that fits.
        fits: Volume,
        /// The lowest mark.
        mark: Volume,
    },
    /// More fills than anyone does.
    #[error("The batch takes {} fills of this vessel.", number(*.fills))]
    TooManyFills {
        /// How many.
        fills: f64,
        /// The vessel that takes it at once.
        at_once: Volume,
    },
}

impl Diagnose for DegasError {
    codes! {
        Self::Parameters(errors) => errors.code(),
        Self::Boils { .. } => "degas-boils",
        Self::DialCannotTell { .. } => "degas-dial-cannot-tell",
        Self::NotAir { .. } => "degas-not-air",
        Self::BelowLowestMark { .. } => "degas-below-lowest-mark",
        Self::TooManyFills { .. } => "degas-too-many-fills",
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::Parameters(errors) => errors.help(),
            Self::Boils { most_vacuum, .. } if !is_positive(most_vacuum.value) => {
                "Dry and cool the pot: its vapor is as strong as the air here, vacuum or not.".into()
            }
            Self::Boils { vapor, most_vacuum, .. } => format!(
                "Stay above {} absolute, which is a vacuum of less than {} here, or dry and cool the pot.",
                kilopascals(vapor).at_least(),
                kilopascals(most_vacuum).at_most()
            )
            .into(),
            Self::DialCannotTell { .. } => {
                "Give the \"rise\" that was seen in this vacuum (its level over the level before), or what an absolute gauge shows.".into()
            }
            Self::NotAir { of_air, .. } => format!(
                "It can rise 1 to {} times: check the two levels and the gauge; moisture boils and rises more.",
                number(*of_air).at_most()
            )
            .into(),
            Self::BelowLowestMark { .. } => {
                "Take a larger vessel, pull less vacuum, or fill by mass instead of by mark.".into()
            }
            Self::TooManyFills { at_once, .. } => format!(
                "Check the units. A vessel of {} takes it at once.",
                volume(at_once).at_least()
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
        Some(match self {
            Self::Parameters(errors) => return errors.parameter(),
            Self::Boils { .. } => Parameter::VaporPressure,
            Self::DialCannotTell { .. } => Parameter::DialTolerance,
            Self::NotAir { .. } => Parameter::Rise,
            Self::BelowLowestMark { .. } => Parameter::VesselMark,
            Self::TooManyFills { .. } => Parameter::LiquidVolume,
        })
    }
}

impl From<ParameterError> for DegasError {
    fn from(error: ParameterError) -> Self {
        Self::Parameters(error.into())
    }
}

impl Vacuum {
    /// The vacuum of `absolute` where the air outside has `local`, over a liquid whose vapor has
    /// `vapor` at its temperature.
    ///
    /// A damp pot has the vapor of water ([`super::vapor::of_water`]); dry plasticizers have next to
    /// none. What a dial's accuracy makes of it: [`super::chamber::Chamber::vacuum`].
    ///
    /// # Errors
    /// [`DegasError::Parameters`], [`DegasError::Parameters`], or [`DegasError::Boils`] at p_abs ≤ p_vap,
    /// hence also at 0.
    pub fn new(
        local: StationPressure,
        absolute: AbsolutePressure,
        vapor: Pressure,
    ) -> Result<Self, DegasError> {
        Parameter::VaporPressure.check_si(vapor.value)?;
        absolute.check_below(local)?;
        let (local, absolute) = (local.get(), absolute.get());
        // What is left for the air must also be large enough to divide by.
        if !is_positive((absolute - vapor).value) {
            return Err(DegasError::Boils { absolute, vapor, most_vacuum: local - vapor });
        }
        Ok(Self { local, absolute, vapor })
    }

    /// How many times its volume under the outside pressure the air takes up: p_local/(p_abs − p_vap).
    #[must_use]
    pub fn expansion(self) -> Ratio {
        self.local / (self.absolute - self.vapor)
    }

    /// The same before the pump runs: p_local/(p_local − p_vap).
    fn expansion_before(self) -> Ratio {
        self.local / (self.local - self.vapor)
    }

    /// Volume of `liquid`, a volume without air, in this vacuum with the air that it holds.
    ///
    /// # Errors
    /// [`DegasError::Parameters`] for a volume that is not above zero.
    pub fn swollen(self, liquid: Volume, air: EntrainedAir) -> Result<Volume, DegasError> {
        Parameter::LiquidVolume.check_si(liquid.value)?;
        Ok(liquid * air.swelling(self.expansion()))
    }

    /// Volume of `liquid`, a volume without air, before the pump runs, with the air that it holds.
    ///
    /// # Errors
    /// [`DegasError::Parameters`] for a volume that is not above zero.
    pub fn standing(self, liquid: Volume, air: EntrainedAir) -> Result<Volume, DegasError> {
        Parameter::LiquidVolume.check_si(liquid.value)?;
        Ok(liquid * air.swelling(self.expansion_before()))
    }
}

impl EntrainedAir {
    /// Air that makes up the share φ₀ of the mix under the outside pressure.
    ///
    /// # Errors
    /// [`DegasError::Parameters`] outside 0 to below 1.
    pub fn share(share: Ratio) -> Result<Self, ParameterError> {
        let phi = Parameter::EntrainedAir.check_si(share.value)?;
        Ok(Self(phi / (1.0 - phi)))
    }

    /// The air that explains what the shop saw: with f = V₂/V₁ and the air's expansions b₁ before and
    /// b₂ after, φ₀/(1 − φ₀) = (f − 1)/(b₂ − f·b₁).
    ///
    /// # Errors
    /// [`DegasError::Parameters`], or [`DegasError::NotAir`] for a pot that sank, or rose as much as
    /// nothing but air would.
    pub fn observed(rise: ObservedRise) -> Result<Self, DegasError> {
        let mut check = Check::new();
        check
            .number(Parameter::LiquidVolume, rise.before.value)
            .number(Parameter::LiquidVolume, rise.risen.value);
        check.finish()?;
        let factor = (rise.risen / rise.before).value;
        let before = rise.vacuum.expansion_before().value;
        let after = rise.vacuum.expansion().value;
        let of_air = after / before;
        // Below zero for a pot that sank.
        let ratio = (factor - 1.0) / (after - factor * before);
        if factor < of_air && is_not_negative(ratio) {
            Ok(Self(ratio))
        } else {
            Err(DegasError::NotAir { factor, of_air })
        }
    }

    /// φ₀, the air's share of the mix under the outside pressure.
    #[must_use]
    pub fn as_share(self) -> Ratio {
        Ratio::from(self.0 / (1.0 + self.0))
    }

    /// V/V_liq where the air has expanded by this factor.
    fn swelling(self, expansion: Ratio) -> Ratio {
        Ratio::from(1.0 + self.0 * expansion.value)
    }
}

/// The vessel that `liquid`, a volume without air, needs so that it swells no higher than the `spare`
/// share of the vessel below its brim: V/(1 − spare).
///
/// # Errors
/// [`DegasError::Parameters`] for a volume that is not above zero; [`DegasError::Parameters`] for a spare share
/// outside 0 to below 1.
pub fn vessel_for(
    liquid: Volume,
    air: EntrainedAir,
    vacuum: Vacuum,
    spare: Ratio,
) -> Result<Volume, DegasError> {
    Parameter::VesselSpare.check_si(spare.value)?;
    Ok(vacuum.swollen(liquid, air)? / (1.0 - spare.value))
}

impl DegasCup {
    /// A vessel that holds `brim`, of which the share `spare` stays empty, with evenly spaced marks
    /// from `mark` on, if it has any.
    ///
    /// A tenth to spare is common practice, no source.
    ///
    /// # Errors
    /// [`DegasError::Parameters`] for a volume that is not above zero; [`DegasError::Parameters`] for a spare
    /// share outside 0 to below 1.
    pub fn new(brim: Volume, spare: Ratio, mark: Option<Volume>) -> Result<Self, ParameterErrors> {
        let mut check = Check::new();
        check
            .number(Parameter::VesselBrim, brim.value)
            .number(Parameter::VesselSpare, spare.value)
            .option(Parameter::VesselMark, mark.map(|mark| mark.value));
        check.finish()?;
        Ok(Self { brim, spare, mark })
    }

    /// The level to fill to at most, bubbles included, so that what swells stays in: on a mark, if the
    /// vessel has any, else anywhere.
    ///
    /// # Errors
    /// [`DegasError::BelowLowestMark`] where not even the lowest mark would stay in.
    pub fn fill_mark(self, air: EntrainedAir, vacuum: Vacuum) -> Result<Volume, DegasError> {
        let rise =
            air.swelling(vacuum.expansion()).value / air.swelling(vacuum.expansion_before()).value;
        self.mark_for(Ratio::from(rise))
    }

    /// The level to fill to at most for what swells to `rise` times its own.
    fn mark_for(self, rise: Ratio) -> Result<Volume, DegasError> {
        let fits = self.brim * (1.0 - self.spare.value) / rise.value;
        let Some(mark) = self.mark else { return Ok(fits) };
        // Rounding must not cost a mark that fits exactly.
        let marks = libm::floor((fits / mark).value * (1.0 + 1e-12));
        if marks >= 1.0 {
            Ok(mark * marks)
        } else {
            Err(DegasError::BelowLowestMark { fits, mark })
        }
    }

    /// Number of fills for the batch and the level of each; `liquid` is the volume of the batch
    /// without air.
    ///
    /// # Errors
    /// Those of [`DegasCup::fill_mark`], [`DegasError::Parameters`] for a batch that is not above zero, and
    /// [`DegasError::TooManyFills`] for one of more than a thousand fills.
    pub fn fills(
        self,
        liquid: Volume,
        air: EntrainedAir,
        vacuum: Vacuum,
    ) -> Result<Fills, DegasError> {
        let standing = vacuum.standing(liquid, air)?;
        let mark = self.fill_mark(air, vacuum)?;
        self.shared_out(standing, vacuum.swollen(liquid, air)?, mark)
    }

    /// The same for a batch whose level is `standing` and that swells to `rise` times that, for whatever reason.
    ///
    /// # Errors
    /// Those of [`DegasCup::fills`]; [`DegasError::Parameters`] for a rise below 1.
    pub fn fills_rising(self, standing: Volume, rise: Ratio) -> Result<Fills, DegasError> {
        let mut check = Check::new();
        check.number(Parameter::LiquidVolume, standing.value).number(Parameter::Rise, rise.value);
        check.finish()?;
        self.shared_out(standing, standing * rise, self.mark_for(rise)?)
    }

    fn shared_out(
        self,
        standing: Volume,
        swollen: Volume,
        mark: Volume,
    ) -> Result<Fills, DegasError> {
        let fills = libm::ceil((standing / mark).value * (1.0 - 1e-12)).max(1.0);
        if !(1.0..=MOST_FILLS).contains(&fills) {
            let at_once = swollen / (1.0 - self.spare.value);
            return Err(DegasError::TooManyFills { fills, at_once });
        }
        Ok(Fills { count: fills as u32, mark, level: standing / fills, swollen: swollen / fills })
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use rstest::rstest;
    use std::string::ToString;
    use uom::si::pressure::pascal;
    use uom::si::volume::milliliter;

    use super::*;

    fn ml(volume: f64) -> Volume {
        Volume::new::<milliliter>(volume)
    }

    fn vacuum(local: f64, absolute: f64, vapor: f64) -> Result<Vacuum, DegasError> {
        Vacuum::new(
            StationPressure::measured(Pressure::new::<pascal>(local)).unwrap(),
            AbsolutePressure::new(Pressure::new::<pascal>(absolute)).unwrap(),
            Pressure::new::<pascal>(vapor),
        )
    }

    fn air(share: f64) -> EntrainedAir {
        EntrainedAir::share(Ratio::from(share)).unwrap()
    }

    fn vessel(brim: f64, spare: f64, mark: Option<f64>) -> DegasCup {
        DegasCup::new(ml(brim), Ratio::from(spare), mark.map(ml)).unwrap()
    }

    #[test]
    fn a_pot_swells_by_its_air() {
        // 4 % of air: 1/24 of the liquid. At a twentieth of the pressure: 1 + 20/24 (plain arithmetic).
        let deep = vacuum(100_000.0, 5_000.0, 0.0).unwrap();
        let swollen = deep.swollen(ml(240.0), air(0.04)).unwrap();
        assert!((swollen.get::<milliliter>() - 440.0).abs() < 1e-9);
        // With 2.5 kPa of vapor the air has half that pressure left: 1 + 40/24.
        let damp = vacuum(100_000.0, 5_000.0, 2_500.0).unwrap();
        let swollen = damp.swollen(ml(240.0), air(0.04)).unwrap();
        assert!((swollen.get::<milliliter>() - 640.0).abs() < 1e-9);
    }

    #[test]
    fn the_mark_the_fills_and_the_vessel() {
        let deep = vacuum(100_000.0, 5_000.0, 0.0).unwrap();
        // It rises (1 + 20/24)/(1 + 1/24) = 1.76-fold. 480 mL less a tenth are 432 mL: 245.45 mL fit.
        let marked = vessel(480.0, 0.1, Some(60.0));
        let mark = marked.fill_mark(air(0.04), deep).unwrap();
        assert!((mark - ml(240.0)).value.abs() < 1e-15);
        // 600 mL of liquid reach 625 mL: three fills of 208.33 mL that swell to 366.67 mL.
        let fills = marked.fills(ml(600.0), air(0.04), deep).unwrap();
        assert_eq!(fills.count, 3);
        assert!((fills.level.get::<milliliter>() - 625.0 / 3.0).abs() < 1e-9);
        assert!((fills.swollen.get::<milliliter>() - 1_100.0 / 3.0).abs() < 1e-9);
        let whole = vessel_for(ml(600.0), air(0.04), deep, Ratio::from(0.1)).unwrap();
        assert!((whole.get::<milliliter>() - 1_100.0 / 0.9).abs() < 1e-9);
    }

    /// At the boundaries, without air: a mark and a fill that are missed by rounding count, by more than it they do not.
    #[test]
    fn rounding_costs_no_mark_and_no_fill() {
        let deep = vacuum(100_000.0, 5_000.0, 0.0).unwrap();
        let mark = |brim: f64| vessel(brim, 0.0, Some(60.0)).fill_mark(air(0.0), deep);
        assert_eq!(mark(60.0), Ok(ml(60.0)));
        assert_eq!(mark(60.0 * (1.0 - 0.5e-12)), Ok(ml(60.0)));
        let below = mark(60.0 * (1.0 - 1.5e-12)).unwrap_err();
        assert_eq!(below.code(), "degas-below-lowest-mark");
        let count = |batch: f64| {
            vessel(100.0, 0.0, None).fills(ml(batch), air(0.0), deep).map(|fills| fills.count)
        };
        assert_eq!(count(100.0 * (1.0 + 0.5e-12)), Ok(1));
        assert_eq!(count(100.0 * (1.0 + 1.5e-12)), Ok(2));
    }

    /// 5000 mL with 1/24 of air swell to 5000 (1 + 20/24) mL, in a vessel of which a tenth stays empty: 10185.2 mL.
    #[test]
    fn the_vessel_that_takes_it_at_once_is_named() {
        let deep = vacuum(100_000.0, 5_000.0, 0.0).unwrap();
        let many = vessel(1.0, 0.1, None).fills(ml(5_000.0), air(0.04), deep).unwrap_err();
        let DegasError::TooManyFills { at_once, .. } = many else { panic!("{many}") };
        assert!((at_once.get::<milliliter>() - 5_000.0 * (1.0 + 20.0 / 24.0) / 0.9).abs() < 1e-6);
    }

    /// Vapor of 2.5 kPa leaves the air 97.5 of 100 kPa before and 2.5 of 5 kPa after: 100/97.5 and 40 times its volume.
    #[test]
    fn vapor_counts_before_the_pump_runs() {
        let damp = vacuum(100_000.0, 5_000.0, 2_500.0).unwrap();
        let standing = damp.standing(ml(240.0), air(0.04)).unwrap().get::<milliliter>();
        assert!((standing - (240.0 + 10.0 * 100.0 / 97.5)).abs() < 1e-9);
        let rise = ObservedRise { before: ml(100.0), risen: ml(4_000.0), vacuum: damp };
        let refused = EntrainedAir::observed(rise).unwrap_err();
        let DegasError::NotAir { factor, of_air } = refused else { panic!("{refused}") };
        assert!((factor - 40.0).abs() < 1e-9 && (of_air - 39.0).abs() < 1e-9);
    }

    #[test]
    fn a_fill_that_fits_exactly_is_one() {
        let none = vacuum(100_000.0, 5_000.0, 0.0).unwrap();
        let fills = vessel(480.0, 0.0, Some(60.0)).fills(ml(480.0), air(0.0), none).unwrap();
        assert_eq!(fills.count, 1);
    }

    #[rstest]
    #[case(0.0, 0.0)]
    #[case(2_000.0, 2_339.3)]
    #[case(2_339.3, 2_339.3)]
    #[case(1e-300, 0.0)]
    fn at_its_vapor_pressure_it_boils(#[case] absolute: f64, #[case] vapor: f64) {
        let refused = vacuum(101_325.0, absolute, vapor).unwrap_err();
        assert_eq!(refused.code(), "degas-boils");
    }

    #[test]
    fn the_boiling_says_what_would_do() {
        let refused = vacuum(101_325.0, 2_000.0, 2_339.3).unwrap_err();
        assert_eq!(
            refused.help(),
            "Stay above 2.34 kPa absolute, which is a vacuum of less than 98.98 kPa here, or dry and cool the pot."
        );
    }

    #[test]
    fn what_boils_without_a_vacuum_gets_no_advice_on_one() {
        let refused = vacuum(93_776.0, 10_000.0, 101_325.0).unwrap_err();
        assert_eq!(
            refused.help(),
            "Dry and cool the pot: its vapor is as strong as the air here, vacuum or not."
        );
    }

    #[test]
    fn a_rise_that_air_does_not_make_is_questioned() {
        let rise = |risen| ObservedRise {
            before: ml(100.0),
            risen: ml(risen),
            vacuum: vacuum(100_000.0, 5_000.0, 0.0).unwrap(),
        };
        for risen in [99.0, 2_000.0, 5_000.0] {
            let refused = EntrainedAir::observed(rise(risen)).unwrap_err();
            assert_eq!(refused.code(), "degas-not-air");
        }
        assert_eq!(EntrainedAir::observed(rise(100.0)).unwrap().as_share(), Ratio::from(0.0));
    }

    #[test]
    fn what_cannot_be_is_refused() {
        assert_eq!(vacuum(90_000.0, 95_000.0, 0.0).unwrap_err().code(), "out-of-range");
        assert_eq!(vacuum(90_000.0, 5_000.0, f64::NAN).unwrap_err().code(), "not-finite");
        let deep = vacuum(100_000.0, 5_000.0, 0.0).unwrap();
        for share in [-0.1, 1.0, f64::NAN] {
            let code = crate::parameter::refused_as(share);
            let share = Ratio::from(share);
            assert_eq!(EntrainedAir::share(share).unwrap_err().code(), code);
            assert_eq!(DegasCup::new(ml(480.0), share, None).unwrap_err().code(), code);
            let refused = vessel_for(ml(480.0), air(0.04), deep, share).unwrap_err();
            assert_eq!(refused.code(), code);
        }
        for none in [0.0, -1.0, f64::NAN, f64::INFINITY] {
            let refused = deep.swollen(ml(none), air(0.1)).unwrap_err();
            assert_eq!(refused.code(), crate::parameter::refused_as(none));
        }
        let low = vessel(100.0, 0.1, Some(60.0)).fill_mark(air(0.04), deep).unwrap_err();
        assert_eq!(low.code(), "degas-below-lowest-mark");
        let many = vessel(1.0, 0.1, None).fills(ml(5_000.0), air(0.04), deep).unwrap_err();
        assert_eq!(many.to_string(), "The batch takes 10186 fills of this vessel.");
    }

    proptest! {
        #[test]
        fn the_air_seen_is_the_air_that_was_there(
            share in 0.0..0.5f64,
            absolute in 3_000.0..90_000.0f64,
            vapor in 0.0..2_500.0f64,
        ) {
            let vacuum = vacuum(100_000.0, absolute, vapor).unwrap();
            let rise = ObservedRise {
                before: vacuum.standing(ml(240.0), air(share)).unwrap(),
                risen: vacuum.swollen(ml(240.0), air(share)).unwrap(),
                vacuum,
            };
            let found = EntrainedAir::observed(rise).unwrap().as_share().value;
            prop_assert!((found - share).abs() <= 1e-9);
        }

        #[test]
        fn a_fill_to_the_mark_stays_in(
            share in 0.0..0.3f64,
            absolute in 1_000.0..90_000.0f64,
            brim in 100.0..5_000.0f64,
            batch in 1.0..50_000.0f64,
        ) {
            let vacuum = vacuum(100_000.0, absolute, 0.0).unwrap();
            let fills = vessel(brim, 0.1, None).fills(ml(batch), air(share), vacuum);
            prop_assume!(fills.is_ok());
            let fills = fills.unwrap();
            prop_assert!(fills.swollen <= ml(brim) * 0.9 * (1.0 + 1e-9));
            prop_assert!(fills.level <= fills.mark * (1.0 + 1e-9));
            let fewer = f64::from(fills.count - 1);
            prop_assert!(fills.mark * fewer <= fills.level * f64::from(fills.count) * (1.0 + 1e-9));
        }
    }
}
