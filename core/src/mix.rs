//! Mixes: the masses of the materials in one vessel, the conserved thing all maths works on.
//!
//! Ideal additivity: M = Σm, V = Σ m/ρ, ρ = M/V. Solids displace their true volume. An air-void
//! fraction φ lowers the density: ρ·(1 − φ). Each constituent expands by its own coefficient:
//! V(T) = Σ (m_i/ρ_i)·(1 + α_i·(T − 20 °C)).
//!
//! **Conservation.** Every operation keeps the sum of the masses within n·u·Σm, where n is the
//! number of materials, u = 2⁻⁵³ and Σm the mass that took part.

use alloc::borrow::Cow;
use alloc::format;
use alloc::vec::Vec;

use crate::codes::codes;
use crate::density::TrueDensity;
use crate::fault::Diagnose;
use crate::material::{Kind, Material, MaterialError};
use crate::parameter::{Check, Parameter, ParameterError, ParameterErrors};
use crate::quantity::{
    Mass, MassDensity, Measurable, TemperatureInterval, ThermodynamicTemperature, Volume,
};
use crate::show;
use crate::words::words;

/// A material by its place in a [`Materials`] table.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct MaterialId(pub u32);

/// The materials of a shop, in the order of their names.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Materials(Vec<Material>);

impl Materials {
    /// A table of `materials`, sorted by name, so that the same shop gives the same sums in
    /// the same order however its book was written.
    #[must_use]
    pub fn new(mut materials: Vec<Material>) -> Self {
        materials.sort_by(|a, b| a.name.cmp(&b.name));
        Self(materials)
    }

    /// The material named `name`.
    #[must_use]
    pub fn find(&self, name: &str) -> Option<MaterialId> {
        let index = self.0.binary_search_by(|material| material.name.as_str().cmp(name)).ok()?;
        u32::try_from(index).ok().map(MaterialId)
    }

    /// The material at `id`.
    ///
    /// # Errors
    /// The table has no such place.
    pub fn get(&self, id: MaterialId) -> Result<&Material, MixError> {
        usize::try_from(id.0)
            .ok()
            .and_then(|index| self.0.get(index))
            .ok_or(MixError::UnknownMaterial(id.0))
    }

    /// All materials with their places, by name.
    pub fn iter(&self) -> impl Iterator<Item = (MaterialId, &Material)> {
        (0_u32..).map(MaterialId).zip(&self.0)
    }
}

/// The temperature at which densities are stated: 20 °C.
#[must_use]
pub fn reference_temperature() -> ThermodynamicTemperature {
    ThermodynamicTemperature::from_si(293.15)
}

/// `to` less `from`, as a difference.
#[must_use]
pub fn temperature_rise(
    from: ThermodynamicTemperature,
    to: ThermodynamicTemperature,
) -> TemperatureInterval {
    TemperatureInterval::from_si(to.si() - from.si())
}

words! {
    /// Whether a plastisol in the mix is still liquid or has been fused.
    pub enum Phase {
        /// As a cup measures it.
        Liquid = "liquid",
        /// As a piece weighs it.
        Fused = "fused",
    }
}

/// Assumptions of a density of a mix, where the book does not state a number.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
#[non_exhaustive]
pub enum Assumption {
    /// Only the liquid density of this plastisol is known; the fused one is taken as equal.
    FusedAsLiquid(MaterialId),
    /// The expansion of this material is unknown and taken as none.
    NoExpansion(MaterialId),
    /// The shot window of this plastisol is unknown; its shots are calculated at 20 °C.
    NoShotWindow(MaterialId),
}

impl Assumption {
    /// The material that it is about.
    #[must_use]
    pub const fn material(self) -> MaterialId {
        match self {
            Self::FusedAsLiquid(id) | Self::NoExpansion(id) | Self::NoShotWindow(id) => id,
        }
    }
}

/// A mass of one material.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Portion {
    /// Which material.
    pub material: MaterialId,
    /// How much of it.
    pub mass: Mass,
}

/// Masses of materials in one vessel, one portion a material, in the order of their places.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Mix {
    portions: Vec<Portion>,
}

impl Mix {
    /// An empty vessel.
    #[must_use]
    pub const fn new() -> Self {
        Self { portions: Vec::new() }
    }

    /// The portions, in the order of the materials' places.
    #[must_use]
    pub fn portions(&self) -> &[Portion] {
        &self.portions
    }

    /// Adds `mass` of `material`.
    ///
    /// # Errors
    /// The mass is negative or not finite, or the sum would not be: nothing can be taken
    /// out of a mix again.
    pub fn add(&mut self, material: MaterialId, mass: Mass) -> Result<(), MixError> {
        let bad = || MixError::BadMass(mass.si() * 1000.0);
        if !mass.si().is_finite() || mass.si() < 0.0 {
            return Err(bad());
        }
        match self.portions.binary_search_by_key(&material, |portion| portion.material) {
            Ok(found) => {
                if let Some(portion) = self.portions.get_mut(found) {
                    let sum = portion.mass + mass;
                    if !sum.si().is_finite() {
                        return Err(bad());
                    }
                    portion.mass = sum;
                }
            }
            Err(place) => self.portions.insert(place, Portion { material, mass }),
        }
        Ok(())
    }

    /// Pours `other` into this one.
    ///
    /// # Errors
    /// A sum of masses is not finite; this mix is then as it was.
    pub fn merge(&mut self, other: &Self) -> Result<(), MixError> {
        let mut merged = self.clone();
        other.portions.iter().try_for_each(|portion| merged.add(portion.material, portion.mass))?;
        *self = merged;
        Ok(())
    }

    /// Takes `mass` of the well-stirred mix out and gives it back as a mix of its own.
    ///
    /// # Errors
    /// More is asked for than there is.
    pub fn draw(&mut self, mass: Mass) -> Result<Self, MixError> {
        let total = self.mass();
        if !(mass.si() >= 0.0 && mass <= total) {
            return Err(MixError::DrawTooLarge { asked: mass, held: total });
        }
        if total.si() == 0.0 {
            return Ok(Self::new());
        }
        let share = mass.si() / total.si();
        let mut drawn = Self::new();
        for portion in &mut self.portions {
            let taken = portion.mass * share;
            portion.mass -= taken;
            drawn.portions.push(Portion { material: portion.material, mass: taken });
        }
        Ok(drawn)
    }

    /// This mix `factor` times.
    ///
    /// # Errors
    /// The factor is negative or not finite, or a mass would no longer be finite.
    pub fn scaled(&self, factor: f64) -> Result<Self, MixError> {
        let portions: Vec<Portion> = self
            .portions
            .iter()
            .map(|portion| Portion { material: portion.material, mass: portion.mass * factor })
            .collect();
        let finite = portions.iter().all(|portion| portion.mass.si().is_finite());
        if finite && factor.is_finite() && factor >= 0.0 {
            Ok(Self { portions })
        } else {
            Err(MixError::BadFactor(factor))
        }
    }

    /// Σm.
    #[must_use]
    pub fn mass(&self) -> Mass {
        self.portions.iter().fold(Mass::default(), |sum, portion| sum + portion.mass)
    }

    /// How much of `material` is in it.
    #[must_use]
    pub fn mass_of(&self, material: MaterialId) -> Mass {
        self.portions
            .binary_search_by_key(&material, |portion| portion.material)
            .ok()
            .and_then(|found| self.portions.get(found))
            .map_or(Mass::default(), |portion| portion.mass)
    }

    /// Mass of its base: all its plastisols.
    ///
    /// # Errors
    /// A portion's material is not in the table.
    pub fn base_mass(&self, materials: &Materials) -> Result<Mass, MixError> {
        self.portions.iter().try_fold(Mass::default(), |sum, portion| {
            let base = materials.get(portion.material)?.kind == Kind::Plastisol;
            Ok(if base { sum + portion.mass } else { sum })
        })
    }

    /// w = m_i/M, 0 in an empty mix.
    #[must_use]
    pub fn mass_fraction(&self, material: MaterialId) -> f64 {
        let total = self.mass().si();
        if total == 0.0 { 0.0 } else { self.mass_of(material).si() / total }
    }

    /// Parts of `material` per hundred parts of base, by mass.
    ///
    /// # Errors
    /// The mix holds no base.
    pub fn parts_per_hundred(
        &self,
        material: MaterialId,
        materials: &Materials,
    ) -> Result<f64, MixError> {
        let base = self.base_mass(materials)?;
        if base.si() <= 0.0 {
            return Err(MixError::NoBase);
        }
        Ok(100.0 * self.mass_of(material).si() / base.si())
    }

    /// Volume at 20 °C: V = Σ m/ρ.
    ///
    /// # Errors
    /// A density is missing.
    pub fn volume(&self, materials: &Materials, phase: Phase) -> Result<Volume, MixError> {
        self.volume_at(materials, phase, reference_temperature())
    }

    /// Volume at `temperature`: V = Σ (m/ρ)(1 + α(T − 20 °C)).
    ///
    /// # Errors
    /// A density is missing, or the temperature is so far off that nothing would be left of a volume.
    pub fn volume_at(
        &self,
        materials: &Materials,
        phase: Phase,
        temperature: ThermodynamicTemperature,
    ) -> Result<Volume, MixError> {
        Parameter::Temperature.check_si(temperature.si())?;
        let rise = temperature_rise(reference_temperature(), temperature);
        self.portions.iter().try_fold(Volume::default(), |sum, portion| {
            let material = materials.get(portion.material)?;
            let density = density_of(material, phase)?;
            let growth = 1.0 + (material.expansion_or_none() * rise).si();
            if !(growth > 0.0 && growth.is_finite()) {
                return Err(MixError::BadTemperature(temperature.si() - 273.15));
            }
            Ok(sum + portion.mass / density * growth)
        })
    }

    /// Volume fraction of `material` at 20 °C, 0 in an empty mix.
    ///
    /// # Errors
    /// A density is missing.
    pub fn volume_fraction(
        &self,
        material: MaterialId,
        materials: &Materials,
        phase: Phase,
    ) -> Result<f64, MixError> {
        let total = self.volume(materials, phase)?;
        if total.si() == 0.0 {
            return Ok(0.0);
        }
        let density = density_of(materials.get(material)?, phase)?;
        Ok((self.mass_of(material) / density / total).si())
    }

    /// Density at `temperature` with a share `voids` of air: ρ = (M/V(T))·(1 − φ).
    ///
    /// # Errors
    /// A density is missing, the mix is empty, or `voids` is outside 0 ≤ φ < 1.
    pub fn density(
        &self,
        materials: &Materials,
        phase: Phase,
        temperature: ThermodynamicTemperature,
        voids: f64,
    ) -> Result<MassDensity, MixError> {
        Parameter::Voids.check_si(voids)?;
        let volume = self.volume_at(materials, phase, temperature)?;
        if volume.si() <= 0.0 {
            return Err(MixError::Empty);
        }
        Ok(self.mass() / volume * (1.0 - voids))
    }

    /// Assumptions of a density of this mix in `phase`.
    ///
    /// # Errors
    /// A portion's material is not in the table.
    pub fn assumptions(
        &self,
        materials: &Materials,
        phase: Phase,
    ) -> Result<Vec<Assumption>, MixError> {
        let mut found = Vec::new();
        for portion in &self.portions {
            let material = materials.get(portion.material)?;
            let plastisol = material.kind == Kind::Plastisol;
            if plastisol && phase == Phase::Fused && material.fused.is_none() {
                found.push(Assumption::FusedAsLiquid(portion.material));
            }
            if material.expansion.is_none() {
                found.push(Assumption::NoExpansion(portion.material));
            }
        }
        Ok(found)
    }
}

/// Density at 20 °C of `parts` mixed with a share `voids` of air, where only masses and densities are
/// known: ρ = Σm/(Σm/ρ)·(1 − φ).
///
/// # Errors
/// A mass or density that cannot be, no mass at all, or `voids` outside 0 ≤ φ < 1.
pub fn density_of_parts(
    parts: impl IntoIterator<Item = (Mass, MassDensity)>,
    voids: f64,
) -> Result<MassDensity, MixError> {
    let mut parts = parts.into_iter().enumerate();
    if !Parameter::Voids.holds_si(voids) {
        return Err(wrong_parts(voids, None, parts));
    }
    let (mut mass, mut volume) = (Mass::default(), Volume::default());
    while let Some((index, (part, density))) = parts.next() {
        let holds = Parameter::PartMass.holds_si(part.si())
            && Parameter::PartDensity.holds_si(density.si());
        if !holds {
            return Err(wrong_parts(voids, Some((index, (part, density))), parts));
        }
        mass += part;
        volume += part / density;
    }
    if volume.si() > 0.0 { Ok(mass / volume * (1.0 - voids)) } else { Err(MixError::Empty) }
}

/// All that is wrong with the share of air, the first wrong part and those after it.
#[cold]
fn wrong_parts(
    voids: f64,
    first: Option<(usize, (Mass, MassDensity))>,
    rest: impl Iterator<Item = (usize, (Mass, MassDensity))>,
) -> MixError {
    let mut check = Check::new();
    check.number(Parameter::Voids, voids);
    for (index, (part, density)) in first.into_iter().chain(rest) {
        check.element(Parameter::PartMass, index, part.si()).element(
            Parameter::PartDensity,
            index,
            density.si(),
        );
    }
    check.into_errors().into()
}

fn density_of(material: &Material, phase: Phase) -> Result<MassDensity, MaterialError> {
    let purpose = "the density of the mix";
    let density = match phase {
        Phase::Liquid => material.true_density(purpose),
        Phase::Fused => material.finished_density(purpose),
    };
    density.map(TrueDensity::get)
}

/// Why something cannot be done with a mix.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum MixError {
    /// A negative or endless addition.
    #[error("{} g cannot be added to a mix.", show::number(*.0))]
    BadMass(f64),
    /// Numbers that are wrong.
    #[error(transparent)]
    Parameters(#[from] ParameterErrors),
    /// More is drawn than there is.
    #[error("{} cannot be drawn from a mix of {}.", show::mass(.asked), show::mass(.held))]
    DrawTooLarge {
        /// The mass asked for.
        asked: Mass,
        /// The mass of the mix.
        held: Mass,
    },
    /// A negative or endless factor.
    #[error("A mix cannot be made {} times.", show::number(*.0))]
    BadFactor(f64),
    /// A temperature beyond what the materials' expansion covers.
    #[error("A mix has no volume at {} °C.", show::number(*.0))]
    BadTemperature(f64),
    /// An empty mix has no density.
    #[error("The mix is empty.")]
    Empty,
    /// Nothing to relate the additives to.
    #[error("The mix holds no plastisol.")]
    NoBase,
    /// A place that the table lacks.
    #[error("There is no material number {0} in the table.")]
    UnknownMaterial(u32),
    /// A density is missing.
    #[error(transparent)]
    Missing(#[from] MaterialError),
}

impl Diagnose for MixError {
    codes! {
        Self::BadMass(_) => "mix-bad-mass",
        Self::Parameters(errors) => errors.code(),
        Self::DrawTooLarge { .. } => "mix-draw-too-large",
        Self::BadFactor(_) => "mix-bad-factor",
        Self::BadTemperature(_) => "mix-bad-temperature",
        Self::Empty => "mix-empty",
        Self::NoBase => "mix-no-base",
        Self::UnknownMaterial(_) => "mix-unknown-material",
        Self::Missing(error) => error.code(),
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::BadMass(_) => {
                "Add 0 g or more; what went in by mistake is put right by a correction.".into()
            }
            Self::Parameters(errors) => errors.help(),
            Self::DrawTooLarge { held, .. } => {
                format!("Draw at most {}.", show::mass(held).at_most()).into()
            }
            Self::BadFactor(_) => "Use a factor of 0 or more.".into(),
            Self::BadTemperature(_) => {
                "Check the temperature (338 °F is 170 °C) and the materials' expansion (some 7e-4 1/K).".into()
            }
            Self::Empty | Self::NoBase => "Add the plastisol first.".into(),
            Self::UnknownMaterial(_) => "Use a place that the same table of materials gave.".into(),
            Self::Missing(error) => error.help(),
        }
    }

    fn numbers(&self) -> &[ParameterError] {
        match self {
            Self::Parameters(errors) => errors.numbers(),
            Self::Missing(error) => error.numbers(),
            _ => &[],
        }
    }

    fn parameter(&self) -> Option<Parameter> {
        match self {
            Self::Parameters(errors) => errors.parameter(),
            Self::Empty => Some(Parameter::Parts),
            _ => None,
        }
    }
}

impl From<ParameterError> for MixError {
    fn from(error: ParameterError) -> Self {
        Self::Parameters(error.into())
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use rstest::rstest;

    use super::*;
    use crate::quantity::{Measured, TemperatureCoefficient};

    const U: f64 = f64::EPSILON / 2.0;

    fn kg(x: f64) -> Mass {
        Mass::from_si(x)
    }

    fn material(name: &str, kind: Kind, g_per_ml: f64) -> Material {
        let density = Some(Measured::exact(MassDensity::from_si(g_per_ml * 1e3)));
        Material { density, ..Material::new(name, kind) }
    }

    fn table() -> Materials {
        let base = Material {
            fused: Some(Measured::exact(MassDensity::from_si(1050.0))),
            expansion: Some(Measured::exact(TemperatureCoefficient::from_si(6e-4))),
            ..material("base", Kind::Plastisol, 1.0)
        };
        Materials::new(Vec::from([
            material("salt", Kind::Salt, 2.165),
            base,
            Material::new("x", Kind::Other),
        ]))
    }

    fn mix(portions: &[(u32, f64)]) -> Mix {
        let mut mix = Mix::new();
        for &(place, mass) in portions {
            mix.add(MaterialId(place), kg(mass)).unwrap();
        }
        mix
    }

    #[test]
    fn a_table_is_in_the_order_of_names() {
        let table = table();
        let names: Vec<&str> = table.iter().map(|(_, material)| material.name.as_str()).collect();
        assert_eq!(names, ["base", "salt", "x"]);
        assert_eq!((table.find("salt"), table.find("pepper")), (Some(MaterialId(1)), None));
        assert_eq!(table.get(MaterialId(3)), Err(MixError::UnknownMaterial(3)));
    }

    #[test]
    fn a_salted_mix_by_hand() {
        // 1 kg of base and 0.2165 kg of salt: 1 L and 0.1 L; fused the base is 1/1.05 L.
        let (table, mix) = (table(), mix(&[(1, 0.2165), (0, 1.0)]));
        let at = reference_temperature();
        let close = |a: f64, b: f64| assert!((a - b).abs() < 1e-12 * b, "{a} {b}");
        close(mix.volume(&table, Phase::Liquid).unwrap().si(), 1.1e-3);
        close(mix.density(&table, Phase::Liquid, at, 0.0).unwrap().si(), 1.2165 / 1.1e-3);
        close(mix.density(&table, Phase::Liquid, at, 0.02).unwrap().si(), 1.2165 / 1.1e-3 * 0.98);
        close(mix.volume(&table, Phase::Fused).unwrap().si(), 1e-3 / 1.05 + 1e-4);
        close(mix.volume_fraction(MaterialId(1), &table, Phase::Liquid).unwrap(), 0.1 / 1.1);
        close(mix.mass_fraction(MaterialId(1)), 0.2165 / 1.2165);
        close(mix.parts_per_hundred(MaterialId(1), &table).unwrap(), 21.65);
        // 150 K warmer the base takes 9 % more room; the salt's expansion is not known.
        let hot = ThermodynamicTemperature::from_si(at.si() + 150.0);
        close(mix.volume_at(&table, Phase::Liquid, hot).unwrap().si(), 1.09e-3 + 1e-4);
        assert_eq!(
            mix.assumptions(&table, Phase::Fused).unwrap(),
            [Assumption::NoExpansion(MaterialId(1))]
        );
    }

    #[test]
    fn an_empty_mix_has_mass_but_no_density() {
        let (table, empty) = (table(), Mix::new());
        assert_eq!((empty.mass(), empty.mass_fraction(MaterialId(0))), (kg(0.0), 0.0));
        let density = empty.density(&table, Phase::Liquid, reference_temperature(), 0.0);
        assert_eq!(density, Err(MixError::Empty));
        assert_eq!(empty.parts_per_hundred(MaterialId(0), &table), Err(MixError::NoBase));
        assert_eq!(Mix::new().draw(kg(0.0)), Ok(Mix::new()));
    }

    #[rstest]
    #[case(-1e-9)]
    #[case(f64::NAN)]
    #[case(f64::INFINITY)]
    fn nothing_is_taken_out_and_nothing_endless_put_in(#[case] mass: f64) {
        let mut mix = mix(&[(0, 1.0)]);
        let before = mix.clone();
        assert_eq!(mix.add(MaterialId(0), kg(mass)).unwrap_err().code(), "mix-bad-mass");
        assert_eq!(mix.draw(kg(mass)).unwrap_err().code(), "mix-draw-too-large");
        assert_eq!(mix.scaled(mass).unwrap_err().code(), "mix-bad-factor");
        assert_eq!(mix, before);
    }

    #[test]
    fn a_sum_that_overflows_is_refused_and_leaves_the_mix_as_it_was() {
        let mut small = mix(&[(0, 1.0), (1, f64::MAX)]);
        let before = small.clone();
        assert!(small.add(MaterialId(1), kg(f64::MAX)).is_err());
        assert!(small.merge(&before).is_err());
        assert!(small.scaled(2.0).is_err());
        assert_eq!(small, before);
    }

    #[test]
    fn a_drawn_mix_has_its_share_of_each() {
        let mut whole = mix(&[(0, 0.75), (1, 0.25)]);
        let drawn = whole.draw(kg(0.5)).unwrap();
        assert_eq!(drawn, mix(&[(0, 0.375), (1, 0.125)]));
        assert_eq!(whole, drawn);
        let mut nothing = mix(&[(0, 0.0)]);
        assert_eq!(nothing.draw(kg(0.0)), Ok(Mix::new()));
        assert_eq!(nothing, mix(&[(0, 0.0)]));
    }

    #[test]
    fn a_share_of_the_volume_at_its_ends() {
        let table = table();
        let of = |mix: &Mix| mix.volume_fraction(MaterialId(0), &table, Phase::Liquid);
        assert_eq!(of(&Mix::new()), Ok(0.0));
        // 1000 kg of 1 g/mL are a volume of 1 m³.
        assert_eq!(of(&mix(&[(0, 1000.0)])), Ok(1.0));
    }

    /// At -30 °C, 50 K below 20 °C, a material that expands by 1/50 a kelvin has no volume left.
    #[test]
    fn no_volume_is_left_far_below_its_range() {
        let steep = Material {
            expansion: Some(Measured::exact(TemperatureCoefficient::from_si(0.02))),
            ..material("steep", Kind::Plastisol, 1.0)
        };
        let (table, mix) = (Materials::new(Vec::from([steep])), mix(&[(0, 1.0)]));
        let at = |celsius: f64| {
            let temperature = ThermodynamicTemperature::from_si(celsius + 273.15);
            mix.volume_at(&table, Phase::Liquid, temperature).map(|volume| volume.si())
        };
        assert!((at(-25.0).unwrap() - 1e-4).abs() < 1e-15);
        let MixError::BadTemperature(found) = at(-31.0).unwrap_err() else { panic!("a volume") };
        assert!((found + 31.0).abs() < 1e-9, "{found}");
    }

    #[test]
    fn errors_carry_their_number_and_parameter() {
        let mut one = mix(&[(0, 1.0)]);
        let refused = one.add(MaterialId(0), kg(-0.001)).unwrap_err();
        assert_eq!(refused, MixError::BadMass(-1.0));
        assert_eq!(
            refused.help(),
            "Add 0 g or more; what went in by mistake is put right by a correction."
        );
        let refused = one.draw(kg(2.0)).unwrap_err();
        assert_eq!(refused.help(), "Draw at most 1000 g.");
        assert_eq!(MixError::Empty.parameter(), Some(Parameter::Parts));
        let density = MassDensity::from_si(0.0);
        let wrong = density_of_parts([(kg(-1.0), density)], 2.0).unwrap_err();
        let numbers: Vec<Parameter> = wrong.numbers().iter().map(|n| n.parameter).collect();
        assert_eq!(numbers, [Parameter::Voids, Parameter::PartMass, Parameter::PartDensity]);
    }

    #[test]
    fn what_cannot_be_is_refused() {
        let (table, mix) = (table(), mix(&[(0, 1.0)]));
        for celsius in [-1.0e4, f64::NAN, f64::INFINITY] {
            let at = ThermodynamicTemperature::from_si(celsius);
            let refused = mix.density(&table, Phase::Liquid, at, 0.0).unwrap_err();
            assert_eq!(refused.code(), crate::parameter::refused_as(celsius));
        }
        for voids in [-0.1, 1.0, f64::NAN] {
            let at = reference_temperature();
            assert_eq!(
                mix.density(&table, Phase::Liquid, at, voids).unwrap_err().code(),
                crate::parameter::refused_as(voids)
            );
        }
        let unknown = super::tests::mix(&[(2, 1.0)]);
        assert_eq!(unknown.volume(&table, Phase::Liquid).unwrap_err().code(), "missing-property");
    }

    fn portions() -> impl Strategy<Value = Vec<(u32, f64)>> {
        proptest::collection::vec((0_u32..6, 0.0_f64..3.0), 1..12)
    }

    proptest! {
        #[test]
        fn adding_keeps_every_gram_and_lowers_none(portions in portions(), more in 0.0_f64..5.0, place in 0_u32..6) {
            let mut mix = mix(&portions);
            let exact: f64 = portions.iter().map(|(_, mass)| mass).sum();
            let n = portions.len() as f64;
            prop_assert!((mix.mass().si() - exact).abs() <= 2.0 * n * U * exact);
            let before = mix.clone();
            mix.add(MaterialId(place), kg(more)).unwrap();
            for material in (0..6).map(MaterialId) {
                prop_assert!(mix.mass_of(material) >= before.mass_of(material));
            }
            let places: Vec<_> = mix.portions().iter().map(|portion| portion.material).collect();
            prop_assert!(places.is_sorted() && places.windows(2).all(|two| two[0] != two[1]));
        }

        #[test]
        fn drawing_and_pouring_back_restores_the_mix(portions in portions(), share in 0.0_f64..=1.0) {
            let whole = mix(&portions);
            let mut rest = whole.clone();
            let asked = whole.mass() * share;
            let drawn = rest.draw(asked).unwrap();
            let n = whole.portions().len() as f64;
            let sum = whole.mass().si();
            prop_assert!((drawn.mass() - asked).si().abs() <= (n + 3.0) * U * sum);
            prop_assert!((drawn.mass() + rest.mass() - whole.mass()).si().abs() <= (2.0 * n + 2.0) * U * sum);
            for portion in whole.portions() {
                // Well stirred: what is drawn has the composition of the whole.
                let part = drawn.mass_of(portion.material).si();
                prop_assert!((part - portion.mass.si() * share).abs() <= (n + 4.0) * U * sum);
                prop_assert!(rest.mass_of(portion.material).si() >= 0.0);
            }
            rest.merge(&drawn).unwrap();
            for portion in whole.portions() {
                let back = rest.mass_of(portion.material).si();
                prop_assert!((back - portion.mass.si()).abs() <= 2.0 * U * portion.mass.si());
            }
        }

        #[test]
        fn scaling_is_linear(portions in portions(), a in 0.0_f64..9.0, b in 0.0_f64..9.0) {
            let one = mix(&portions);
            let mut apart = one.scaled(a).unwrap();
            apart.merge(&one.scaled(b).unwrap()).unwrap();
            let together = one.scaled(a + b).unwrap();
            for portion in together.portions() {
                let other = apart.mass_of(portion.material).si();
                prop_assert!((portion.mass.si() - other).abs() <= 4.0 * U * portion.mass.si());
            }
            // Densities are those of the composition, whatever the amount.
            let table = Materials::new(
                (0..6).map(|i| material(&alloc::format!("m{i}"), Kind::Other, 0.5 + f64::from(i))).collect(),
            );
            let at = reference_temperature();
            let density = |mix: &Mix| mix.density(&table, Phase::Liquid, at, 0.0).map(|d| d.si());
            if let (Ok(of_one), Ok(scaled)) = (density(&one), density(&one.scaled(a + 0.5).unwrap())) {
                prop_assert!((of_one - scaled).abs() <= 40.0 * U * of_one);
                let least = one.portions().iter().filter(|p| p.mass.si() > 0.0)
                    .map(|p| 500.0 + 1000.0 * f64::from(p.material.0)).fold(f64::INFINITY, f64::min);
                prop_assert!(of_one >= least * (1.0 - 1e-12));
            }
        }
    }

    #[test]
    fn parts_alone_give_the_density_of_the_mix() {
        let g = |g: f64| Mass::from_si(g / 1000.0);
        let g_per_ml = |density: f64| MassDensity::from_si(density * 1000.0);
        // 100 g at 1 g/mL and 20 g at 2 g/mL fill 110 mL; a tenth of air on top.
        let parts = [(g(100.0), g_per_ml(1.0)), (g(20.0), g_per_ml(2.0))];
        let density = density_of_parts(parts, 0.1).unwrap().si();
        assert!((density - 120.0 / 110.0 * 900.0).abs() < 1e-9, "{density}");
        let bad = |mass: f64, density: f64, voids: f64| {
            density_of_parts([(g(mass), g_per_ml(density))], voids).unwrap_err().code()
        };
        assert_eq!(bad(-1.0, 1.0, 0.0), "out-of-range");
        assert_eq!(bad(f64::NAN, 1.0, 0.0), "not-finite");
        assert_eq!(bad(1.0, 0.0, 0.0), "out-of-range");
        assert_eq!(bad(1.0, f64::NAN, 0.0), "not-finite");
        assert_eq!(bad(1.0, 1.0, 1.0), "out-of-range");
        assert_eq!(bad(0.0, 1.0, 0.0), "mix-empty");
    }
}
