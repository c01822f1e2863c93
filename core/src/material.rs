//! Materials and their properties: what a supplier's sheet says and what the shop has measured.

mod most;

use alloc::borrow::Cow;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use crate::codes::codes;
use crate::color::match_color::TestPiece;
use crate::color::pot::Strength;
use crate::color::reading::Reading;
use crate::color::translucent::BaseFilm;
use crate::density::{ScoopedDensity, TrueDensity};
use crate::fault::Diagnose;
use crate::flake::Cut;
use crate::parameter::{Parameter, ParameterError};
use crate::price::Price;
use crate::process::budget::Extra;
use crate::process::heat::SpecificHeat;
use crate::quantity::{
    Amount, AmountError, Dimension, DynamicViscosity, Length, Mass, MassDensity, Measurable,
    Measured, MolarEnergy, Ratio, SpecificHeatCapacity, System, TemperatureCoefficient,
    ThermodynamicTemperature, Time, Volume,
};
use crate::softener::MeasuredHardness;
use crate::words::words;

pub use most::{MostDose, MostDoseError};

words! {
    /// Purpose of a material.
    pub enum Kind {
        /// Liquid PVC-in-plasticizer: the base a pot starts from.
        Plastisol = "plastisol",
        /// Plasticizer that makes the piece softer.
        Softener = "softener",
        /// Hardener.
        Hardener = "hardener",
        /// Heat stabilizer.
        Stabilizer = "stabilizer",
        /// Liquid color.
        Colorant = "colorant",
        /// Pearl or another powder pigment.
        Pearl = "pearl",
        /// Cut film glitter.
        Flake = "flake",
        /// Salt, for weight.
        Salt = "salt",
        /// Scent or oil.
        Scent = "scent",
        /// Anything else.
        Other = "other",
    }
}

impl Kind {
    /// Whether a spoon of it is measured as scooped, with air between the grains.
    #[must_use]
    pub const fn is_powder(self) -> bool {
        matches!(self, Self::Pearl | Self::Flake | Self::Salt)
    }
}

words! {
    /// When a material goes into the pot.
    pub enum Adding {
        /// Before the pot is heated for the stage.
        Cold = "cold",
        /// After it, into the hot plastic.
        Hot = "hot",
    }
}

impl Kind {
    /// When a material of this kind goes in, where the book does not say it: salt, flake and scent into the hot
    /// plastic, all else cold (common practice, no source).
    #[must_use]
    pub const fn adding(self) -> Adding {
        match self {
            Self::Flake | Self::Salt | Self::Scent => Adding::Hot,
            _ => Adding::Cold,
        }
    }

    /// In how many portions it goes in, each stirred in before the next: salt in three (common practice, no source).
    #[must_use]
    pub const fn portions(self) -> u32 {
        match self {
            Self::Salt => 3,
            _ => 1,
        }
    }
}

words! {
    /// A property of a material that a calculation may need.
    pub enum Property {
        /// True density; of a plastisol, that of the liquid.
        Density = "density",
        /// Density of the fused plastisol, what a piece weighs.
        Fused = "fused",
        /// Density of the powder as scooped.
        AsScooped = "as_scooped",
        /// Mass or volume of one drop.
        Drop = "drop",
        /// Volumetric thermal expansion.
        Expansion = "expansion",
        /// Specific heat.
        SpecificHeat = "specific_heat",
        /// Temperatures between which it is shot.
        ShotWindow = "shot_window",
        /// Price per package.
        Price = "price",
    }
}

/// One drop of a liquid, as the shop has calibrated its bottle.
#[derive(Debug, Clone, PartialEq)]
pub enum Drop {
    /// Its mass.
    Mass(Measured<Mass>),
    /// Its volume.
    Volume(Measured<Volume>),
}

/// The temperatures between which a plastisol is shot, as its supplier states them.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ShotWindow {
    /// Lowest: it must fuse.
    pub low: ThermodynamicTemperature,
    /// Highest: above it the plastisol scorches.
    pub high: ThermodynamicTemperature,
}

impl ShotWindow {
    /// The middle of the window.
    #[must_use]
    pub fn middle(&self) -> ThermodynamicTemperature {
        ThermodynamicTemperature::from_si((self.low.si() + self.high.si()) / 2.0)
    }
}

/// The heat that a plastisol withstands, as its supplier states it or the shop has seen it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HeatBudget {
    /// So long at the reference temperature.
    pub time: Time,
    /// The reference temperature.
    pub at: ThermodynamicTemperature,
    /// With this stabilizer, in mass per mass of base: zero where it is in the base already.
    pub with: Ratio,
}

/// A material and what is known of it. What is not known stays `None`; a calculation that
/// needs it says which number is missing and of what.
#[derive(Debug, Clone, PartialEq)]
pub struct Material {
    /// Name in the book.
    pub name: String,
    /// Its purpose.
    pub kind: Kind,
    /// True density at 20 °C; of a plastisol, that of the liquid.
    pub density: Option<Measured<MassDensity>>,
    /// Density of the fused plastisol at 20 °C.
    pub fused: Option<Measured<MassDensity>>,
    /// Density of the powder as a level spoon holds it.
    pub as_scooped: Option<Measured<MassDensity>>,
    /// One drop.
    pub drop: Option<Drop>,
    /// Volumetric thermal expansion, per kelvin.
    pub expansion: Option<Measured<TemperatureCoefficient>>,
    /// Specific heat.
    pub specific_heat: Option<Measured<SpecificHeatCapacity>>,
    /// Rise of the specific heat per kelvin, as a share of that at 25 °C; `None`: constant.
    pub specific_heat_rise: Option<Measured<TemperatureCoefficient>>,
    /// Of a plastisol: lowest and highest viscosity at shot temperature.
    pub viscosity: Option<(DynamicViscosity, DynamicViscosity)>,
    /// Of a salt: the opening of a sieve that its grains just pass.
    pub grain: Option<Measured<Length>>,
    /// Temperatures between which it is shot.
    pub shot_window: Option<ShotWindow>,
    /// Activation energy of its decay in the heat, with who states it.
    pub activation_energy: Option<Measured<MolarEnergy>>,
    /// Of a plastisol: the heat that it withstands.
    pub budget: Option<HeatBudget>,
    /// Of a stabilizer: the heat that more of it buys.
    pub buys: Option<Extra>,
    /// Of a flake: its cut.
    pub cut: Option<Cut>,
    /// Of a flake: the thickness of its film.
    pub thickness: Option<Length>,
    /// Price per package.
    pub price: Option<Price>,
    /// When it goes into the pot; `None`: as its kind does ([`Kind::adding`]).
    pub add: Option<Adding>,
    /// Largest relative error of a dose of it that the shop accepts.
    pub tolerance: Option<f64>,
    /// Largest dose of it that does no harm.
    pub most: Option<MostDose>,
    /// Of a softener or hardener: what the shop has measured of pieces with it.
    pub hardness: Option<MeasuredHardness>,
    /// Of a plastisol: the color of a piece of it alone.
    pub color: Option<Reading>,
    /// Of a plastisol: how light goes through it.
    pub film: Option<BaseFilm>,
    /// Of a colorant: whether it glows in daylight, which takes it out of the model of colors.
    pub fluorescent: bool,
    /// Of a colorant: its test pieces.
    pub let_downs: Vec<TestPiece>,
    /// Of a colorant: its strength as pots have shown it.
    pub strength: Option<Strength>,
    /// Anything else worth knowing.
    pub notes: Option<String>,
    /// Which of its densities the book does not state, so that a usual one is used.
    pub borrowed: Vec<Property>,
}

/// How a spoon or a cup of a material becomes a mass.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum ByVolume {
    /// A liquid fills the measure.
    Liquid(TrueDensity),
    /// A powder lies in it with air between the grains.
    Scooped(ScoopedDensity),
}

impl ByVolume {
    /// Mass per volume that the measure shows.
    #[must_use]
    pub fn density(self) -> MassDensity {
        match self {
            Self::Liquid(density) => density.get(),
            Self::Scooped(density) => density.get(),
        }
    }
}

/// The metric drop, UCUM's `[drp]`: 1/20 mL (pharmacy practice).
#[must_use]
pub fn pharmacy_drop() -> Volume {
    Volume::from_si(5e-8)
}

impl Material {
    /// A material of which nothing is known yet.
    #[must_use]
    pub fn new(name: impl Into<String>, kind: Kind) -> Self {
        Self {
            name: name.into(),
            kind,
            density: None,
            fused: None,
            as_scooped: None,
            drop: None,
            expansion: None,
            specific_heat: None,
            specific_heat_rise: None,
            viscosity: None,
            grain: None,
            shot_window: None,
            activation_energy: None,
            budget: None,
            buys: None,
            cut: None,
            thickness: None,
            price: None,
            add: None,
            tolerance: None,
            most: None,
            hardness: None,
            color: None,
            film: None,
            fluorescent: false,
            let_downs: Vec::new(),
            strength: None,
            notes: None,
            borrowed: Vec::new(),
        }
    }

    fn missing(&self, property: Property, purpose: &'static str) -> MaterialError {
        MaterialError::Missing { material: self.name.clone(), property, purpose }
    }

    fn wrong(&self, property: Property, wrong: ParameterError) -> MaterialError {
        MaterialError::Wrong { material: self.name.clone(), property, wrong }
    }

    fn true_from(
        &self,
        density: MassDensity,
        property: Property,
    ) -> Result<TrueDensity, MaterialError> {
        TrueDensity::new(density).map_err(|wrong| self.wrong(property, wrong))
    }

    /// True density, of a plastisol that of the liquid.
    ///
    /// # Errors
    /// The book does not state it, or not above zero.
    pub fn true_density(&self, purpose: &'static str) -> Result<TrueDensity, MaterialError> {
        match &self.density {
            Some(density) => self.true_from(density.value, Property::Density),
            None => Err(self.missing(Property::Density, purpose)),
        }
    }

    /// Density of the material in a finished piece: a plastisol's fused density where it is
    /// known, else its liquid one.
    ///
    /// # Errors
    /// The book states neither, or not above zero.
    pub fn finished_density(&self, purpose: &'static str) -> Result<TrueDensity, MaterialError> {
        match &self.fused {
            Some(fused) => self.true_from(fused.value, Property::Fused),
            None => self.true_density(purpose),
        }
    }

    /// Density of the powder as scooped.
    ///
    /// # Errors
    /// The book does not state it, or not above zero.
    pub fn scooped_density(&self, purpose: &'static str) -> Result<ScoopedDensity, MaterialError> {
        match &self.as_scooped {
            Some(density) => ScoopedDensity::new(density.value)
                .map_err(|wrong| self.wrong(Property::AsScooped, wrong)),
            None => Err(self.missing(Property::AsScooped, purpose)),
        }
    }

    /// Specific heat.
    ///
    /// # Errors
    /// The book does not state it.
    pub fn specific_heat(&self, purpose: &'static str) -> Result<SpecificHeat, MaterialError> {
        let stated = self.specific_heat_line();
        stated.ok_or_else(|| self.missing(Property::SpecificHeat, purpose))
    }

    /// Specific heat as a line in temperature, where the book states one.
    #[must_use]
    pub fn specific_heat_line(&self) -> Option<SpecificHeat> {
        let rise = self.specific_heat_rise.as_ref().map(|rise| rise.value).unwrap_or_default();
        Some(SpecificHeat::line(self.specific_heat.as_ref()?.value, rise))
    }

    /// Whether a spoon of it is measured as scooped: powders, and what has that density.
    #[must_use]
    pub fn is_scooped(&self) -> bool {
        self.kind.is_powder() || self.as_scooped.is_some()
    }

    /// How a volume of it, in a spoon or a cup, becomes a mass: a powder by its density as
    /// scooped, a liquid by its true density.
    ///
    /// # Errors
    /// The book does not state the density that this takes.
    pub fn by_volume(&self, purpose: &'static str) -> Result<ByVolume, MaterialError> {
        if self.is_scooped() {
            self.scooped_density(purpose).map(ByVolume::Scooped)
        } else {
            self.true_density(purpose).map(ByVolume::Liquid)
        }
    }

    /// Mass of one drop: the shop's own, or else UCUM's `[drp]` of 1/20 mL (pharmacy practice).
    ///
    /// # Errors
    /// Powders have no drop; a drop by volume needs the density, and so does the pharmacy's.
    pub fn drop_mass(&self, purpose: &'static str) -> Result<Mass, MaterialError> {
        let mass = match &self.drop {
            Some(Drop::Mass(mass)) => mass.value,
            Some(Drop::Volume(volume)) => self.true_density(purpose)?.mass_of(volume.value),
            None if self.is_scooped() || self.density.is_none() => {
                return Err(self.missing(Property::Drop, purpose));
            }
            None => self.true_density(purpose)?.mass_of(pharmacy_drop()),
        };
        let wrong = |wrong| self.wrong(Property::Drop, wrong);
        Parameter::DropMass.check_si(mass.si()).map(|_| mass).map_err(wrong)
    }

    /// Mass of an amount of it as a person measured it: m, ρV, βV or n·m_drop.
    ///
    /// # Errors
    /// The book does not state the density or drop that this takes; the amount is a share of
    /// something else, or no amount of a material at all.
    pub fn mass_of(
        &self,
        amount: &Amount,
        system: System,
        purpose: &'static str,
    ) -> Result<Mass, MaterialError> {
        match (amount.basis(), amount.dimension(), amount.drops()) {
            (None, Dimension::VOLUME, _) => {
                let volume: Volume = amount.to(system)?;
                Ok(self.by_volume(purpose)?.density() * volume)
            }
            (None, Dimension::COUNT, Some(drops)) => Ok(self.drop_mass(purpose)? * drops.to_f64()),
            _ => Ok(amount.to(system)?),
        }
    }

    /// Whether the drop is the shop's own and not the pharmacy's.
    #[must_use]
    pub fn drop_is_calibrated(&self) -> bool {
        self.drop.is_some()
    }

    /// How a volume of it becomes a mass ([`Material::by_volume`]): by a number of the shop's own, and not a borrowed one.
    #[must_use]
    pub fn is_borrowed_by_volume(&self) -> bool {
        let property = if self.is_scooped() { Property::AsScooped } else { Property::Density };
        self.borrowed.contains(&property)
    }

    /// Whether it says of a density or of its drop how sure that is.
    #[must_use]
    pub fn states_uncertainty(&self) -> bool {
        let is_above_zero = |unsure: Option<f64>| unsure.is_some_and(|unsure| unsure > 0.0);
        let densities = [&self.density, &self.fused, &self.as_scooped];
        let mut densities = densities.into_iter().flatten();
        let drop = self.drop.as_ref().and_then(|drop| match drop {
            Drop::Mass(mass) => mass.uncertainty.map(Measurable::si),
            Drop::Volume(volume) => volume.uncertainty.map(Measurable::si),
        });
        densities.any(|one| is_above_zero(one.uncertainty.map(Measurable::si)))
            || is_above_zero(drop)
    }

    /// When it goes into the pot: as the book says, or as its kind does.
    #[must_use]
    pub fn adding(&self) -> Adding {
        self.add.unwrap_or_else(|| self.kind.adding())
    }

    /// Volumetric expansion, 0 where the book states none (an [`Assumption`](crate::mix::Assumption)).
    #[must_use]
    pub fn expansion_or_none(&self) -> TemperatureCoefficient {
        self.expansion.as_ref().map(|expansion| expansion.value).unwrap_or_default()
    }
}

/// A number that a calculation needs and the book does not state, or states wrongly.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum MaterialError {
    /// It is not there.
    #[error("The {property} of \"{material}\" is missing; it is needed for {purpose}.")]
    Missing {
        /// Of which material.
        material: String,
        /// Which number.
        property: Property,
        /// The calculation that needs it.
        purpose: &'static str,
    },
    /// A number that cannot be.
    #[error("The {property} of \"{material}\" cannot be right: {wrong}.")]
    Wrong {
        /// Of which material.
        material: String,
        /// Which number.
        property: Property,
        /// Why it was refused.
        wrong: ParameterError,
    },
    /// An amount cannot be converted, or is none of a material.
    #[error(transparent)]
    Amount(#[from] AmountError),
}

impl Diagnose for MaterialError {
    codes! {
        Self::Missing { .. } => "missing-property",
        Self::Wrong { wrong, .. } => wrong.code(),
        Self::Amount(error) => error.code(),
    }

    fn help(&self) -> Cow<'static, str> {
        let (material, property) = match self {
            Self::Missing { material, property, .. } => (material, property),
            Self::Wrong { wrong, .. } => return wrong.help(),
            Self::Amount(error) => return error.help(),
        };
        let how = match property {
            Property::Density => {
                "take it from the supplier's sheet, or weigh a level cup of it: \"density\": \"1.03 g/mL\""
            }
            Property::Fused => {
                "weigh a bubble-free piece in air and in water: \"fused\": \"1.04 g/mL\""
            }
            Property::AsScooped => {
                "weigh ten level spoonfuls as you scoop them: \"as_scooped\": \"1.22 g/mL\""
            }
            Property::Drop => "weigh 50 drops: \"drop\": \"0.044 g\"",
            Property::Expansion => "take it from the supplier's sheet: \"expansion\": \"7e-4 1/K\"",
            Property::SpecificHeat => {
                "take it from the supplier's sheet: \"specific_heat\": \"1.9 J/(g.K)\""
            }
            Property::ShotWindow => {
                "take it from the supplier's sheet: \"shot_window\": [\"325 °F\", \"350 °F\"]"
            }
            Property::Price => "add the package: \"price\": \"58.00 USD per 1 gal\"",
        };
        Cow::Owned(format!("Give \"{material}\" its {property}: {how}."))
    }
}

#[cfg(test)]
mod tests {
    use rstest::rstest;

    use uom::si::mass::gram;
    use uom::si::mass_density::gram_per_cubic_centimeter;

    use super::*;
    use crate::fault::Diagnose;

    fn per_ml(x: f64) -> Option<Measured<MassDensity>> {
        Some(Measured::exact(MassDensity::from_si(x * 1e3)))
    }

    #[test]
    fn a_volume_rests_on_one_of_its_densities() {
        let borrowed = |kind: Kind, borrowed: Property| {
            let material = Material { borrowed: Vec::from([borrowed]), ..Material::new("x", kind) };
            material.is_borrowed_by_volume()
        };
        assert!(borrowed(Kind::Salt, Property::AsScooped));
        assert!(!borrowed(Kind::Salt, Property::Density));
        assert!(borrowed(Kind::Colorant, Property::Density));
        assert!(!borrowed(Kind::Colorant, Property::AsScooped));
        assert!(!Material::new("x", Kind::Salt).is_borrowed_by_volume());
    }

    #[test]
    fn an_uncertainty_of_nothing_is_none() {
        let g = Mass::new::<gram>;
        let with = |unsure: Option<f64>| {
            let mass = Measured { uncertainty: unsure.map(g), ..Measured::exact(g(0.044)) };
            Material { drop: Some(Drop::Mass(mass)), ..Material::new("x", Kind::Colorant) }
        };
        assert!(with(Some(0.003)).states_uncertainty());
        for plain in [with(Some(0.0)), with(None), Material::new("x", Kind::Colorant)] {
            assert!(!plain.states_uncertainty());
        }
        let density = Measured::new(MassDensity::from_si(1e3), MassDensity::from_si(10.0));
        let fused = Material { fused: Some(density), ..with(None) };
        assert!(fused.states_uncertainty());
    }

    #[rstest]
    #[case(Kind::Plastisol, false)]
    #[case(Kind::Colorant, false)]
    #[case(Kind::Pearl, true)]
    #[case(Kind::Flake, true)]
    #[case(Kind::Salt, true)]
    fn a_powder_is_scooped_and_a_liquid_poured(#[case] kind: Kind, #[case] powder: bool) {
        let material =
            Material { density: per_ml(2.0), as_scooped: None, ..Material::new("x", kind) };
        assert_eq!(material.is_scooped(), powder);
        match material.by_volume("a test") {
            Ok(by) => {
                assert!(!powder && by == ByVolume::Liquid(material.true_density("").unwrap()))
            }
            Err(error) => {
                assert!(powder, "{error}");
                assert_eq!(error.code(), "missing-property");
                assert!(error.help().contains("as_scooped"), "{}", error.help());
            }
        }
        let scooped = Material { as_scooped: per_ml(1.2), ..material };
        assert!(matches!(scooped.by_volume("a test"), Ok(ByVolume::Scooped(_))));
    }

    #[test]
    fn a_piece_weighs_by_the_fused_density_where_it_is_known() {
        let liquid = Material { density: per_ml(1.03), ..Material::new("x", Kind::Plastisol) };
        assert_eq!(liquid.finished_density("").unwrap(), liquid.true_density("").unwrap());
        let fused = Material { fused: per_ml(1.05), ..liquid };
        assert!(fused.finished_density("").unwrap() > fused.true_density("").unwrap());
    }

    #[test]
    fn a_drop_is_the_shops_own_or_a_twentieth_of_a_milliliter() {
        let bare = Material::new("x", Kind::Colorant);
        assert!(bare.drop_mass("").unwrap_err().help().contains("weigh 50 drops"));
        let pharmacy = Material { density: per_ml(1.2), ..bare };
        assert!((pharmacy.drop_mass("").unwrap().si() - 0.06e-3).abs() < 1e-18);
        assert!(!pharmacy.drop_is_calibrated());
        let by_volume = Drop::Volume(Measured::exact(Volume::from_si(4e-8)));
        let own = Material { drop: Some(by_volume), ..pharmacy.clone() };
        assert!((own.drop_mass("").unwrap().si() - 0.048e-3).abs() < 1e-18);
        let by_mass = Drop::Mass(Measured::exact(Mass::from_si(0.044e-3)));
        let own = Material { drop: Some(by_mass), ..pharmacy };
        assert_eq!(own.drop_mass("").unwrap(), Mass::from_si(0.044e-3));
        assert!(Material::new("x", Kind::Salt).drop_mass("").is_err());
    }

    #[rstest]
    #[case(0.0)]
    #[case(-1.0)]
    #[case(f64::NAN)]
    #[case(f64::INFINITY)]
    fn no_number_that_cannot_be_is_used(#[case] wrong: f64) {
        let density = per_ml(wrong);
        let material = Material {
            density: density.clone(),
            fused: density.clone(),
            as_scooped: density,
            drop: Some(Drop::Mass(Measured::exact(Mass::from_si(wrong)))),
            ..Material::new("x", Kind::Other)
        };
        assert_eq!(
            material.true_density("").unwrap_err().code(),
            crate::parameter::refused_as(wrong)
        );
        assert_eq!(
            material.finished_density("").unwrap_err().code(),
            crate::parameter::refused_as(wrong)
        );
        assert_eq!(
            material.scooped_density("").unwrap_err().code(),
            crate::parameter::refused_as(wrong)
        );
        assert_eq!(material.drop_mass("").unwrap_err().code(), crate::parameter::refused_as(wrong));
    }

    #[test]
    fn grams_for_kilograms_are_asked_about() {
        let material =
            Material { density: of_density(1030.0), ..Material::new("clear", Kind::Plastisol) };
        let error = material.true_density("").unwrap_err();
        assert_eq!(
            std::string::ToString::to_string(&error),
            "The density of \"clear\" cannot be right: the density is 1030 g/mL; it must be from 0.001 to 25 g/mL."
        );
        assert_eq!(error.help(), "Did you mean 1.03 g/mL? 1 g/mL is 1000 kg/m³.");
    }

    #[test]
    fn what_is_missing_is_named_with_its_material_and_its_use() {
        let error = Material::new("plum", Kind::Colorant).true_density("the mix").unwrap_err();
        assert_eq!(
            std::string::ToString::to_string(&error),
            "The density of \"plum\" is missing; it is needed for the mix."
        );
        for property in Property::ALL {
            let error = MaterialError::Missing {
                material: "plum".into(),
                property: *property,
                purpose: "a test",
            };
            assert!(error.help().contains(property.word()), "{}", error.help());
        }
    }

    #[test]
    fn the_middle_of_a_window() {
        let at = ThermodynamicTemperature::from_si;
        assert_eq!(ShotWindow { low: at(430.0), high: at(450.0) }.middle(), at(440.0));
    }

    fn of_density(x: f64) -> Option<Measured<MassDensity>> {
        Some(Measured::exact(MassDensity::new::<gram_per_cubic_centimeter>(x)))
    }

    fn plum() -> Material {
        let drop = Some(Drop::Mass(Measured::exact(Mass::new::<gram>(0.044))));
        Material { density: of_density(1.05), drop, ..Material::new("plum", Kind::Colorant) }
    }

    fn fine_salt() -> Material {
        let as_scooped = of_density(1.22);
        Material { density: of_density(2.165), as_scooped, ..Material::new("salt", Kind::Salt) }
    }

    // By hand: m, ρV, n·m_drop, and of a powder βV.
    #[rstest]
    #[case(plum(), "12.5 g", 12.5)]
    #[case(plum(), "10 mL", 10.5)]
    #[case(plum(), "40 drops", 1.76)]
    #[case(fine_salt(), "1/4 cup", 0.25 * 250.0 * 1.22)]
    #[case(fine_salt(), "0 g", 0.0)]
    fn an_amount_weighs(#[case] material: Material, #[case] amount: &str, #[case] grams: f64) {
        let amount = Amount::parse(amount).expect("an amount");
        let mass = material.mass_of(&amount, System::Metric, "the test").expect("a mass");
        assert!((mass.get::<gram>() - grams).abs() <= 1e-12 * grams);
    }

    #[rstest]
    #[case(fine_salt(), "40 drops", "missing-property")]
    #[case(Material::new("new", Kind::Other), "1 tsp", "missing-property")]
    #[case(plum(), "8 % of base", "amount-wrong-dimension")]
    #[case(plum(), "40 pieces", "amount-wrong-dimension")]
    #[case(plum(), "20 °C", "amount-wrong-dimension")]
    fn an_amount_does_not_weigh(
        #[case] material: Material,
        #[case] amount: &str,
        #[case] code: &str,
    ) {
        let amount = Amount::parse(amount).expect("an amount");
        let error = material.mass_of(&amount, System::Metric, "the test").expect_err("no mass");
        assert_eq!(error.code(), code);
    }
}
