//! Salt loading, stated in any of seven ways, each of which converts to each.
//!
//! All go through one canonical form, the mass of salt per mass of base. A mix before salt has mass M₀ and
//! volume V₀ (V_h at shot temperature); with every gram of salt (true density ρ_s) go k grams of softener
//! (ρ_soft). With m_s of salt:
//!
//! - mass M = M₀ + (1 + k) m_s, volume V = V₀ + m_s (1/ρ_s + k/ρ_soft), density ρ = (M/V)(1 − φ), φ the voids;
//! - hot volume: as V, each constituent by its own expansion, (1 + α (T − 20 °C)) times;
//! - for a finished density ρ_t, with ρ′ = ρ_t/(1 − φ): m_s = (ρ′V₀ − M₀)/(1 + k − ρ′(1/ρ_s + k/ρ_soft));
//! - piece weight by the shot's equation, V_c (1 − φ) [(1 − f) M/V_h + f M/V]; both densities depend on m_s,
//!   and the equation is solved by halving between no salt and the maximum, to the last bit that f64 has;
//! - sink density: mass over volume of the piece with its hook and weight, solved the same way.
//!
//! Ideal additivity of volumes, source: conservation of mass and volume. It fits salt in plastisol, which
//! neither dissolves in it nor takes it up.
//!
//! In reach is all from no salt to the maximum: a stated volume fraction of the finished mix,
//! and ten times the mass of base in any case. Salt settles: stir before each shot. Damp salt steams: dry it
//! first.

use alloc::borrow::Cow;
use alloc::format;
use core::fmt;

use uom::si::f64::SpecificVolume;
use uom::si::mass_density::gram_per_cubic_centimeter;
use uom::si::ratio::percent;
use uom::si::thermodynamic_temperature::degree_celsius;

use crate::codes::codes;
use crate::density::{ScoopedDensity, TrueDensity};
use crate::fault::Diagnose;
use crate::mix::reference_temperature;
use crate::parameter::{
    Checked, Checking, Parameter, ParameterError, ParameterErrors, Problem, Relation,
};
use crate::quantity::{
    Mass, MassDensity, Measurable, Ratio, TemperatureCoefficient, ThermodynamicTemperature, Volume,
};
use crate::shot::Melt;
use crate::show::legible::{InBenchUnits, legible};
use crate::show::{self, Figure};

/// The most salt per base, by mass, whatever the limit on solids says: beyond it there is no mix to pour.
const MOST_PER_BASE: f64 = 10.0;

/// How far beyond an end of the reach, relative to it, an asked value is taken for the end itself: what was
/// converted from the end comes back within this.
const SLACK: f64 = 1e-12;

/// A salt loading.
#[derive(Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum SaltLoading {
    /// Volume of salt as scooped per volume of base (1/4 cup per cup is 0.25).
    Scooped(Ratio),
    /// Mass of salt per volume of base.
    PerVolume(MassDensity),
    /// Mass of salt per mass of base: the canonical form.
    OfBase(Ratio),
    /// Mass of salt per mass of finished mix.
    OfFinished(Ratio),
    /// Density of the finished mix at 20 °C, voids included.
    FinishedDensity(MassDensity),
    /// Mass of a piece.
    PieceMass(Mass),
    /// Mean density of a piece with its hook and weight: it sinks in water below this density.
    SinkDensity(MassDensity),
}

/// The way in which a salt loading is stated.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "document", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "document", serde(rename_all = "kebab-case"))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum SaltForm {
    /// As [`SaltLoading::Scooped`].
    #[cfg_attr(feature = "document", serde(rename = "as-scooped"))]
    Scooped,
    /// As [`SaltLoading::PerVolume`].
    PerVolume,
    /// As [`SaltLoading::OfBase`].
    OfBase,
    /// As [`SaltLoading::OfFinished`].
    OfFinished,
    /// As [`SaltLoading::FinishedDensity`].
    FinishedDensity,
    /// As [`SaltLoading::PieceMass`].
    PieceMass,
    /// As [`SaltLoading::SinkDensity`].
    SinkDensity,
}

/// The salt's properties.
#[derive(Clone, Copy, PartialEq)]
pub struct Salt {
    /// Density of the grains.
    pub true_density: TrueDensity,
    /// Density in the spoon, not above the true one; `None` where it is not known, which only
    /// [`SaltForm::Scooped`] needs.
    pub scooped_density: Option<ScoopedDensity>,
    /// Volumetric thermal expansion, zero or above.
    pub expansion: TemperatureCoefficient,
}

/// The softener that goes in with the salt, since salt makes a body harder.
#[derive(Clone, Copy, PartialEq)]
pub struct SaltSoftener {
    /// Mass of softener per mass of salt (k), zero or above.
    pub per_salt: Ratio,
    /// Its density.
    pub density: TrueDensity,
    /// Volumetric thermal expansion, zero or above.
    pub expansion: TemperatureCoefficient,
}

/// The cavity in which a piece is made.
#[derive(Clone, Copy, PartialEq)]
pub struct PieceCavity {
    /// Volume of the cavity that this mix fills.
    pub volume: Volume,
    /// Share of its contraction that the piece draws from the sprue, 0 to 1.
    pub feed: Ratio,
}

/// Hook and weight that a piece carries.
#[derive(Clone, Copy, PartialEq, Default)]
pub struct Hook {
    /// Mass of all that is not the piece itself.
    pub mass: Mass,
    /// The volume that it displaces.
    pub volume: Volume,
}

/// A mix before salt, with all that a conversion between the forms rests on.
#[derive(Clone, Copy, PartialEq)]
pub struct Unsalted {
    /// Mass of base in the mix.
    pub base_mass: Mass,
    /// Volume of that base as measured, cold and liquid.
    pub base_volume: Volume,
    /// Mass of the mix (M₀), not below that of its base.
    pub mass: Mass,
    /// Volume of the mix at 20 °C as fused (V₀), without voids.
    pub volume: Volume,
    /// Volume of the mix at shot temperature, without voids; not below `volume`.
    pub hot_volume: Volume,
    /// Shot temperature, 20 °C or above.
    pub shot_temperature: ThermodynamicTemperature,
    /// Share of the finished volume that is air, 0 to below 1.
    pub voids: Ratio,
    /// The salt.
    pub salt: Salt,
    /// The softener that goes in with it, if any.
    pub softener: Option<SaltSoftener>,
    /// Maximum of salt in the finished mix, by volume without voids: above 0 and below 1.
    pub most_solids: Ratio,
    /// The cavity, for the two forms that speak of a piece.
    pub cavity: Option<PieceCavity>,
    /// Hook and weight on the piece, for the sink density.
    pub hook: Hook,
}

/// Why a salt loading was refused.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum SaltError {
    /// Numbers of the mix, the salt, the cavity or the hook that are wrong.
    #[error(transparent)]
    Parameters(#[from] ParameterErrors),
    /// Salt and its softener together are no denser than the mix.
    #[error("Salt with its softener does not raise the {form} of this mix.")]
    DoesNotRaise {
        /// The form asked for.
        form: SaltForm,
    },
    /// More than the limits allow, or less than the mix has without salt.
    #[error("A {} of {} is out of reach by adding salt.", .asked.form(), .asked.figure())]
    OutOfReach {
        /// The loading that was asked for.
        asked: SaltLoading,
        /// The same form without salt.
        least: SaltLoading,
        /// The same form with the maximum of salt.
        most: SaltLoading,
        /// The stated limit on salt by volume.
        most_solids: Ratio,
    },
}

impl Diagnose for SaltError {
    codes! {
        Self::Parameters(errors) => errors.code(),
        Self::DoesNotRaise { .. } => "salt-does-not-raise",
        Self::OutOfReach { .. } => "salt-out-of-reach",
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::Parameters(errors) => errors.help(),
            Self::DoesNotRaise { .. } => {
                "Use less softener per salt, or check the salt's true density.".into()
            }
            Self::OutOfReach { least, most, most_solids, .. } => format!(
                "In reach is {} (no salt) to {} (the maximum, with a limit of {} salt by volume).",
                least.figure().at_least(),
                most.figure().at_most(),
                show::percent(most_solids)
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
            Self::DoesNotRaise { .. } => None,
            Self::OutOfReach { .. } => Some(Parameter::Loading),
        }
    }
}

impl SaltForm {
    /// All of them, in order.
    pub const ALL: &'static [Self] = &[
        Self::Scooped,
        Self::PerVolume,
        Self::OfBase,
        Self::OfFinished,
        Self::FinishedDensity,
        Self::PieceMass,
        Self::SinkDensity,
    ];

    /// How documents and doors write them, in the same order.
    pub const WORDS: &'static [&'static str] = &[
        "as-scooped",
        "per-volume",
        "of-base",
        "of-finished",
        "finished-density",
        "piece-mass",
        "sink-density",
    ];

    /// How documents and doors write it.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Scooped => "as-scooped",
            Self::PerVolume => "per-volume",
            Self::OfBase => "of-base",
            Self::OfFinished => "of-finished",
            Self::FinishedDensity => "finished-density",
            Self::PieceMass => "piece-mass",
            Self::SinkDensity => "sink-density",
        }
    }
}

impl fmt::Display for SaltForm {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Scooped => "scooped volume",
            Self::PerVolume => "mass per volume of base",
            Self::OfBase => "share of base",
            Self::OfFinished => "share of finished mix",
            Self::FinishedDensity => "finished density",
            Self::PieceMass => "piece weight",
            Self::SinkDensity => "sink density",
        })
    }
}

impl SaltLoading {
    /// The way in which it is stated.
    #[must_use]
    pub fn form(&self) -> SaltForm {
        match self {
            Self::Scooped(_) => SaltForm::Scooped,
            Self::PerVolume(_) => SaltForm::PerVolume,
            Self::OfBase(_) => SaltForm::OfBase,
            Self::OfFinished(_) => SaltForm::OfFinished,
            Self::FinishedDensity(_) => SaltForm::FinishedDensity,
            Self::PieceMass(_) => SaltForm::PieceMass,
            Self::SinkDensity(_) => SaltForm::SinkDensity,
        }
    }

    /// The bare number in SI units, to compare loadings of one form.
    fn value(&self) -> f64 {
        match self {
            Self::Scooped(x) | Self::OfBase(x) | Self::OfFinished(x) => x.value,
            Self::PerVolume(x) | Self::FinishedDensity(x) | Self::SinkDensity(x) => x.value,
            Self::PieceMass(x) => x.value,
        }
    }

    fn figure(&self) -> Figure {
        match self {
            Self::Scooped(x) => Figure::new(x.value, " mL per mL of base"),
            Self::OfBase(x) => Figure::new(x.get::<percent>(), " % of base"),
            Self::OfFinished(x) => Figure::new(x.get::<percent>(), " % of finished"),
            Self::PerVolume(x) => {
                Figure::new(x.get::<gram_per_cubic_centimeter>(), " g per mL of base")
            }
            Self::FinishedDensity(x) | Self::SinkDensity(x) => show::density(x),
            Self::PieceMass(x) => show::mass(x),
        }
    }
}

impl fmt::Debug for SaltLoading {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (name, quantity): (_, &dyn fmt::Debug) = match self {
            Self::Scooped(x) => ("Scooped", &InBenchUnits(x)),
            Self::PerVolume(x) => ("PerVolume", &InBenchUnits(x)),
            Self::OfBase(x) => ("OfBase", &InBenchUnits(x)),
            Self::OfFinished(x) => ("OfFinished", &InBenchUnits(x)),
            Self::FinishedDensity(x) => ("FinishedDensity", &InBenchUnits(x)),
            Self::PieceMass(x) => ("PieceMass", &InBenchUnits(x)),
            Self::SinkDensity(x) => ("SinkDensity", &InBenchUnits(x)),
        };
        f.debug_tuple(name).field(quantity).finish()
    }
}

legible! {
    Salt { true_density, scooped_density, expansion }
    SaltSoftener { per_salt, density, expansion }
    PieceCavity { volume, feed }
    Hook { mass, volume }
    Unsalted {
        base_mass, base_volume, mass, volume, hot_volume, shot_temperature, voids, salt, softener, most_solids, cavity,
        hook,
    }
}

impl Salt {
    /// Salt whose grains have this density. Defaults: not measured by spoon; no thermal expansion.
    ///
    /// # Errors
    /// As [`TrueDensity::new`].
    pub fn of_density(density: MassDensity) -> Result<Self, ParameterError> {
        let true_density = TrueDensity::new(density)?;
        let expansion = TemperatureCoefficient::from_si(Parameter::SaltExpansion.default_si());
        Ok(Self { true_density, scooped_density: None, expansion })
    }

    /// The same, measured by spoons that hold it at this density.
    ///
    /// # Errors
    /// As [`ScoopedDensity::new`].
    pub fn with_as_scooped(self, density: MassDensity) -> Result<Self, ParameterError> {
        Ok(Self { scooped_density: Some(ScoopedDensity::new(density)?), ..self })
    }

    /// The same, with this thermal expansion by volume.
    #[must_use]
    pub fn with_expansion(self, expansion: TemperatureCoefficient) -> Self {
        Self { expansion, ..self }
    }
}

/// A mix is stated by its base, then by what differs from a mix of nothing else:
///
/// ```
/// use pourwright::quantity::{Amount, MassDensity, System::UsCustomary, Volume};
/// use pourwright::salt::{Salt, SaltLoading, Unsalted};
///
/// let base: Volume = Amount::parse("1 cup")?.to(UsCustomary)?;
/// let density = |text| -> Result<MassDensity, _> { Amount::parse(text)?.to(UsCustomary) };
/// let mix = Unsalted::of_base(base, density("1.03 g/mL")?, Salt::of_density(density("2.165 g/mL")?)?);
/// let salt = mix.salt_mass(SaltLoading::FinishedDensity(density("1.12 g/mL")?))?;
/// assert_eq!(format!("{:.1} g", salt.value * 1e3), "44.1 g");
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
impl Unsalted {
    /// A mix of nothing but `volume` of base, whose liquid has `density`, and `salt` to go in.
    ///
    /// Defaults: no voids; as dense once fused as liquid; no expansion up to the shot; no softener with the salt; at most
    /// 30 % solids by volume (common practice, no source); no cavity; no hook.
    #[inline]
    #[must_use]
    pub fn of_base(volume: Volume, density: MassDensity, salt: Salt) -> Self {
        let mass = volume * density;
        Self {
            base_mass: mass,
            base_volume: volume,
            mass,
            volume,
            hot_volume: volume,
            shot_temperature: reference_temperature(),
            voids: Ratio::from(Parameter::Voids.default_si()),
            salt,
            softener: None,
            most_solids: Ratio::from(Parameter::MostSolids.default_si()),
            cavity: None,
            hook: Hook::default(),
        }
    }

    /// The same with additives: the mix has this mass and, fused at 20 °C, this volume. Its hot volume is then the same;
    /// state it afterward.
    #[must_use]
    pub fn with_mix(self, mass: Mass, volume: Volume) -> Self {
        Self { mass, volume, hot_volume: volume, ..self }
    }

    /// The same, with this volume at this shot temperature.
    #[must_use]
    pub fn with_hot_volume(
        self,
        volume: Volume,
        shot_temperature: ThermodynamicTemperature,
    ) -> Self {
        Self { hot_volume: volume, shot_temperature, ..self }
    }

    /// The same, with this share of air in the finished volume.
    #[inline]
    #[must_use]
    pub fn with_voids(self, voids: Ratio) -> Self {
        Self { voids, ..self }
    }

    /// The same, with softener that goes in with the salt.
    #[must_use]
    pub fn with_softener(self, softener: SaltSoftener) -> Self {
        Self { softener: Some(softener), ..self }
    }

    /// The same, with at most this share of solids by volume.
    #[inline]
    #[must_use]
    pub fn with_most_solids(self, most_solids: Ratio) -> Self {
        Self { most_solids, ..self }
    }

    /// The same, with the cavity that a piece is made in.
    #[must_use]
    pub fn with_cavity(self, cavity: PieceCavity) -> Self {
        Self { cavity: Some(cavity), ..self }
    }

    /// The same, with hook and weight on a piece.
    #[must_use]
    pub fn with_hook(self, hook: Hook) -> Self {
        Self { hook, ..self }
    }
}

impl Unsalted {
    /// The canonical form of `loading`: mass of salt per mass of base.
    ///
    /// # Errors
    /// [`SaltError::OutOfReach`] with what is in reach; [`SaltError::DoesNotRaise`]; numbers of the mix that are out of
    /// range, or missing for the form.
    pub fn ratio(&self, loading: SaltLoading) -> Result<Ratio, SaltError> {
        Ok(self.salt_mass(loading)? / self.base_mass)
    }

    /// The loading of `ratio`, mass of salt per mass of base, stated as `form`.
    ///
    /// # Errors
    /// As [`Unsalted::ratio`].
    pub fn loading(&self, ratio: Ratio, form: SaltForm) -> Result<SaltLoading, SaltError> {
        self.convert(SaltLoading::OfBase(ratio), form)
    }

    /// The same loading as `loading`, stated as `form`.
    ///
    /// # Errors
    /// As [`Unsalted::ratio`].
    pub fn convert(&self, loading: SaltLoading, form: SaltForm) -> Result<SaltLoading, SaltError> {
        self.state(self.salt_mass(loading)?, form)
    }

    /// The loadings in reach in `form`: without salt, and with the maximum that the limits allow.
    ///
    /// # Errors
    /// [`SaltError::DoesNotRaise`]; numbers of the mix that are out of range, or missing for the form.
    pub fn reach(&self, form: SaltForm) -> Result<(SaltLoading, SaltLoading), SaltError> {
        self.checked()?;
        self.ends(form)
    }

    /// The loadings in reach in `form`, of a mix that has been checked.
    fn ends(&self, form: SaltForm) -> Result<(SaltLoading, SaltLoading), SaltError> {
        let least = self.state(Mass::default(), form)?;
        let most = self.state(self.most_salt(), form)?;
        if most.value() > least.value() {
            Ok((least, most))
        } else {
            Err(SaltError::DoesNotRaise { form })
        }
    }

    /// The mass of salt that brings this mix to `loading` (equations: [module](self)).
    ///
    /// The softener that goes in with it is k times as much.
    ///
    /// # Errors
    /// As [`Unsalted::ratio`].
    #[inline]
    pub fn salt_mass(&self, loading: SaltLoading) -> Result<Mass, SaltError> {
        self.checked()?;
        if let SaltLoading::FinishedDensity(density) = loading {
            let (mass, is_in_reach) = self.mass_in_reach_for_density(density);
            if is_in_reach {
                return Ok(mass);
            }
        }
        self.salt_mass_in_reach(loading)
    }

    /// The mass of salt for a finished density, and whether it is well in reach: some salt and not too much of it is,
    /// without working out what else is.
    #[inline(always)]
    fn mass_in_reach_for_density(&self, density: MassDensity) -> (Mass, bool) {
        let mass = self.mass_for_density(density);
        let is_in_reach = (mass > Mass::default())
            & (mass.value <= self.most_salt().value)
            & self.raises_density();
        (mass, is_in_reach)
    }

    /// The same of a mix that has not been checked: also whether its numbers are in their ranges.
    #[cfg(feature = "table")]
    #[inline(always)]
    pub(crate) fn mass_of_any_for_density(&self, density: MassDensity) -> (Mass, bool) {
        let (mass, is_in_reach) = self.mass_in_reach_for_density(density);
        (mass, is_in_reach & self.is_in_range())
    }

    /// The same by what is in reach, of a mix that has been checked.
    fn salt_mass_in_reach(&self, loading: SaltLoading) -> Result<Mass, SaltError> {
        let (least, most) = self.ends(loading.form())?;
        let slack = SLACK * most.value();
        if !(least.value() - slack..=most.value() + slack).contains(&loading.value()) {
            let most_solids = self.most_solids;
            return Err(SaltError::OutOfReach { asked: loading, least, most, most_solids });
        }
        let mass = match loading {
            SaltLoading::Scooped(x) => self.scooped()?.mass_of(self.base_volume * x),
            SaltLoading::PerVolume(x) => self.base_volume * x,
            SaltLoading::OfBase(x) => self.base_mass * x,
            SaltLoading::OfFinished(x) => self.mass * x / (1.0 - (1.0 + self.softened()) * x.value),
            SaltLoading::FinishedDensity(x) => self.mass_for_density(x),
            SaltLoading::PieceMass(_) | SaltLoading::SinkDensity(_) => {
                self.mass_by_halving(loading)?
            }
        };
        Ok(if mass > Mass::default() { mass.min(self.most_salt()) } else { Mass::default() })
    }

    /// Whether salt with its softener is denser than the mix, (1 + k)/(1/ρ_s + k/ρ_soft) > M₀/V₀, by more than rounding.
    #[inline(always)]
    fn raises_density(&self) -> bool {
        let mix = (self.mass * self.added_volume()).value;
        (1.0 + self.softened()) * self.volume.value > mix * (1.0 + SLACK)
    }

    /// m_s = (ρ′V₀ − M₀)/(1 + k − ρ′(1/ρ_s + k/ρ_soft)); of a density in reach the divisor is above zero.
    #[inline(always)]
    fn mass_for_density(&self, density: MassDensity) -> Mass {
        let solid = density / (1.0 - self.voids.value);
        let lift = (solid * self.added_volume()).value;
        (solid * self.volume - self.mass) / (1.0 + self.softened() - lift)
    }

    /// The mass of salt at which the form of `wanted`, which rises with it and is in reach, has its value.
    fn mass_by_halving(&self, wanted: SaltLoading) -> Result<Mass, SaltError> {
        // Each halving gains a bit; after 64 an f64 of the size of the reach has none left to gain.
        const HALVINGS: u32 = 64;
        let (mut low, mut high) = (Mass::default(), self.most_salt());
        for _ in 0..HALVINGS {
            let middle = 0.5 * (low + high);
            if self.state(middle, wanted.form())?.value() < wanted.value() {
                low = middle;
            } else {
                high = middle;
            }
        }
        Ok(high)
    }

    /// The loading of `salt`, stated as `form`.
    fn state(&self, salt: Mass, form: SaltForm) -> Result<SaltLoading, SaltError> {
        Ok(match form {
            SaltForm::Scooped => {
                let scooped = self.scooped()?.scoop_of(salt);
                SaltLoading::Scooped(scooped / self.base_volume)
            }
            SaltForm::PerVolume => SaltLoading::PerVolume(salt / self.base_volume),
            SaltForm::OfBase => SaltLoading::OfBase(salt / self.base_mass),
            SaltForm::OfFinished => SaltLoading::OfFinished(salt / self.finished_mass(salt)),
            SaltForm::FinishedDensity => SaltLoading::FinishedDensity(self.finished_density(salt)),
            SaltForm::PieceMass => SaltLoading::PieceMass(self.piece(salt)?),
            SaltForm::SinkDensity => {
                let piece = self.piece(salt)?;
                let volume = piece / self.finished_density(salt);
                let density = (piece + self.hook.mass) / (volume + self.hook.volume);
                SaltLoading::SinkDensity(density)
            }
        })
    }

    fn scooped(&self) -> Result<ScoopedDensity, SaltError> {
        self.salt.scooped_density.ok_or_else(|| needed(Parameter::SaltAsScooped))
    }

    /// Mass of a piece, by the shot's equation.
    fn piece(&self, salt: Mass) -> Result<Mass, SaltError> {
        let cavity = self.cavity.ok_or_else(|| needed(Parameter::CavityVolume))?;
        let melt = self.melt(salt);
        Ok(cavity.volume * melt.filled_density(cavity.feed))
    }

    /// The salted mix as it is shot and as it has cooled.
    fn melt(&self, salt: Mass) -> Melt {
        let hot_volume = self.hot_volume + salt * self.added_hot_volume();
        let hot = self.finished_mass(salt) / hot_volume;
        Melt { hot, cold: self.cold_density(salt), voids: self.voids }
    }

    /// As it has cooled, without voids.
    fn cold_density(&self, salt: Mass) -> MassDensity {
        self.finished_mass(salt) / (self.volume + salt * self.added_volume())
    }

    fn finished_mass(&self, salt: Mass) -> Mass {
        self.mass + salt * (1.0 + self.softened())
    }

    fn finished_density(&self, salt: Mass) -> MassDensity {
        self.cold_density(salt) * (1.0 - self.voids.value)
    }

    /// k, the softener per salt.
    #[inline(always)]
    fn softened(&self) -> f64 {
        self.softener.map_or(0.0, |softener| softener.per_salt.value)
    }

    /// Volume that comes with the salt per mass of it: 1/ρ_s + k/ρ_soft.
    #[inline(always)]
    fn added_volume(&self) -> SpecificVolume {
        let softener =
            self.softener.map_or_else(SpecificVolume::default, |s| s.per_salt / s.density.get());
        1.0 / self.salt.true_density.get() + softener
    }

    /// The same at shot temperature.
    fn added_hot_volume(&self) -> SpecificVolume {
        let softener = self.softener.map_or_else(SpecificVolume::default, |s| {
            s.per_salt / s.density.get() * self.swelling(s.expansion)
        });
        1.0 / self.salt.true_density.get() * self.swelling(self.salt.expansion) + softener
    }

    /// 1 + α (T − 20 °C).
    fn swelling(&self, expansion: TemperatureCoefficient) -> f64 {
        1.0 + expansion.value * (self.shot_temperature.get::<degree_celsius>() - 20.0)
    }

    /// The most salt: from (m/ρ_s)/V = limit, and never above [`MOST_PER_BASE`].
    #[inline(always)]
    fn most_salt(&self) -> Mass {
        let limit = self.most_solids.value;
        let most = self.base_mass * MOST_PER_BASE;
        let room = 1.0 / self.salt.true_density.get() - limit * self.added_volume();
        // The softener that comes with the salt may make more room than the salt takes.
        if room <= SpecificVolume::default() { most } else { most.min(limit * self.volume / room) }
    }

    #[inline(always)]
    fn check_mix(&self, check: &mut impl Checking) {
        check
            .number(Parameter::BaseVolume, self.base_volume.value)
            .number(Parameter::MixMass, self.mass.value)
            .number(Parameter::MixVolume, self.volume.value);
        check
            .derived(Parameter::BaseDensity, (self.base_mass / self.base_volume).value)
            .derived(Parameter::MixDensity, (self.mass / self.volume).value)
            .number(Parameter::HotVolume, self.hot_volume.value)
            .number(Parameter::ShotTemperature, self.shot_temperature.value)
            .number(Parameter::Voids, self.voids.value)
            .number(Parameter::MostSolids, self.most_solids.value);
        // A mix of nothing but base may differ from it by rounding.
        let base = (Parameter::BaseMass, self.base_mass.value);
        check.at_least((Parameter::MixMass, self.mass.value), base, SLACK);
        let cold = (Parameter::MixVolume, self.volume.value);
        check.at_least((Parameter::HotVolume, self.hot_volume.value), cold, SLACK);
    }

    #[inline(always)]
    fn check_added(&self, check: &mut impl Checking) {
        let solid = (Parameter::SaltDensity, self.salt.true_density.get().value);
        check.number(solid.0, solid.1).number(Parameter::SaltExpansion, self.salt.expansion.value);
        if let Some(scooped) = self.salt.scooped_density {
            let scooped = (Parameter::SaltAsScooped, scooped.get().value);
            check.number(scooped.0, scooped.1).relation(scooped, Relation::AtMost, solid);
        }
        if let Some(softener) = self.softener {
            check
                .number(Parameter::SoftenerPerSalt, softener.per_salt.value)
                .number(Parameter::SoftenerDensity, softener.density.get().value)
                .number(Parameter::SoftenerExpansion, softener.expansion.value);
        }
    }
}

impl Checked for Unsalted {
    #[inline(always)]
    fn check(&self, check: &mut impl Checking) {
        self.check_mix(check);
        self.check_added(check);
        if let Some(cavity) = self.cavity {
            check
                .number(Parameter::CavityVolume, cavity.volume.value)
                .number(Parameter::Feed, cavity.feed.value);
        }
        check
            .number(Parameter::HookMass, self.hook.mass.value)
            .number(Parameter::HookVolume, self.hook.volume.value);
    }
}

/// `parameter` is missing, which the form of a loading needs.
fn needed(parameter: Parameter) -> SaltError {
    let problem = Problem::NeededBy(Parameter::Form);
    SaltError::Parameters(ParameterError::new(parameter, problem).into())
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use rstest::rstest;
    use std::string::ToString;
    use uom::si::mass::gram;
    use uom::si::temperature_coefficient::per_kelvin;
    use uom::si::volume::milliliter;

    use super::*;

    const FORMS: &[SaltForm] = SaltForm::ALL;

    fn per_ml(x: f64) -> MassDensity {
        MassDensity::new::<gram_per_cubic_centimeter>(x)
    }

    fn g(x: f64) -> Mass {
        Mass::new::<gram>(x)
    }

    fn ml(x: f64) -> Volume {
        Volume::new::<milliliter>(x)
    }

    /// Invented: a cup of base of 1.03 g/mL with some softener; sodium chloride true 2.165 g/mL (CRC, older
    /// editions).
    fn cup() -> Unsalted {
        let expansion = TemperatureCoefficient::new::<per_kelvin>;
        Unsalted {
            base_mass: g(243.7),
            base_volume: ml(236.6),
            mass: g(253.7),
            volume: ml(240.0),
            hot_volume: ml(262.0),
            shot_temperature: ThermodynamicTemperature::new::<degree_celsius>(170.0),
            voids: Ratio::from(0.01),
            salt: Salt {
                true_density: TrueDensity::new(per_ml(2.165)).unwrap(),
                scooped_density: Some(ScoopedDensity::new(per_ml(1.22)).unwrap()),
                expansion: expansion(1.2e-4),
            },
            softener: Some(SaltSoftener {
                per_salt: Ratio::from(0.1),
                density: TrueDensity::new(per_ml(0.98)).unwrap(),
                expansion: expansion(7.5e-4),
            }),
            most_solids: Ratio::from(0.3),
            cavity: Some(PieceCavity { volume: ml(9.5), feed: Ratio::from(0.5) }),
            hook: Hook { mass: g(2.6), volume: ml(0.3) },
        }
    }

    #[test]
    fn a_quarter_cup_per_cup_by_hand() {
        // 59.15 mL at 1.22 g/mL are 72.163 g, with 7.2163 g of softener.
        let quarter = SaltLoading::Scooped(Ratio::from(0.25));
        let mass = cup().salt_mass(quarter).unwrap();
        assert!((mass.get::<gram>() - 72.163).abs() < 1e-9);
        let SaltLoading::FinishedDensity(density) =
            cup().convert(quarter, SaltForm::FinishedDensity).unwrap()
        else {
            panic!("another form came back");
        };
        let expected = 0.99 * (253.7 + 79.3793) / (240.0 + 72.163 / 2.165 + 7.2163 / 0.98);
        assert!((density.get::<gram_per_cubic_centimeter>() - expected).abs() < 1e-12);
    }

    #[rstest]
    fn the_ends_of_the_reach_are_in_reach(
        #[values(0, 1, 2, 3, 4, 5, 6)] from: usize,
        #[values(0, 1, 2, 3, 4, 5, 6)] to: usize,
    ) {
        let (least, most) = cup().reach(FORMS[from]).unwrap();
        let (to_least, to_most) = cup().reach(FORMS[to]).unwrap();
        let close = |a: SaltLoading, b: SaltLoading| {
            (a.value() - b.value()).abs() <= 1e-11 * to_most.value().abs()
        };
        assert!(close(cup().convert(least, FORMS[to]).unwrap(), to_least));
        assert!(close(cup().convert(most, FORMS[to]).unwrap(), to_most));
    }

    #[rstest]
    #[case(SaltLoading::FinishedDensity(per_ml(0.95)), "1.047 g/mL (no salt)")]
    #[case(SaltLoading::FinishedDensity(per_ml(2.3)), "1.047 g/mL (no salt)")]
    #[case(SaltLoading::OfBase(Ratio::from(-0.1)), "0 % of base (no salt)")]
    #[case(SaltLoading::OfBase(Ratio::from(5.0)), "0 % of base (no salt)")]
    #[case(SaltLoading::OfFinished(Ratio::from(f64::NAN)), "0 % of finished (no salt)")]
    #[case(SaltLoading::PieceMass(g(2.0)), "(no salt)")]
    #[case(SaltLoading::SinkDensity(per_ml(4.0)), "(no salt)")]
    fn out_of_reach_says_what_is_in_reach(#[case] asked: SaltLoading, #[case] help: &str) {
        let refused = cup().salt_mass(asked).unwrap_err();
        assert_eq!(refused.code(), "salt-out-of-reach");
        assert!(refused.help().contains(help), "{refused} {}", refused.help());
        assert!(refused.help().contains("30 % salt by volume"), "{}", refused.help());
    }

    #[test]
    fn the_most_salt_fills_its_share_of_the_volume() {
        let most = cup().most_salt().get::<gram>();
        let solids = most / 2.165;
        assert!((solids / (240.0 + solids + 0.1 * most / 0.98) - 0.3).abs() < 1e-12);
        let wet = SaltSoftener { per_salt: Ratio::from(5.0), ..cup().softener.unwrap() };
        let wet = Unsalted { softener: Some(wet), ..cup() };
        assert_eq!(wet.most_salt(), wet.base_mass * MOST_PER_BASE);
    }

    #[test]
    fn what_does_not_raise_the_density_is_refused() {
        let foam = Salt {
            true_density: TrueDensity::new(per_ml(0.9)).unwrap(),
            scooped_density: Some(ScoopedDensity::new(per_ml(0.5)).unwrap()),
            ..cup().salt
        };
        let foam = Unsalted { salt: foam, ..cup() };
        let refused = foam.ratio(SaltLoading::FinishedDensity(per_ml(1.06))).unwrap_err();
        assert_eq!(refused.code(), "salt-does-not-raise");
        assert!(refused.to_string().contains("finished density"));
    }

    #[rstest]
    #[case(Unsalted { base_mass: g(0.0), ..cup() }, "out-of-range")]
    #[case(Unsalted { volume: ml(f64::NAN), ..cup() }, "not-finite")]
    #[case(Unsalted { mass: g(200.0), ..cup() }, "out-of-range")]
    #[case(Unsalted { hot_volume: ml(230.0), ..cup() }, "out-of-range")]
    #[case(Unsalted { voids: Ratio::from(1.0), ..cup() }, "out-of-range")]
    #[case(Unsalted { most_solids: Ratio::from(0.0), ..cup() }, "out-of-range")]
    #[case(Unsalted { hook: Hook { mass: g(-1.0), volume: ml(0.1) }, ..cup() }, "out-of-range")]
    #[case(Unsalted { cavity: None, ..cup() }, "needs-other")]
    fn refuses_a_mix(#[case] mix: Unsalted, #[case] code: &str) {
        assert_eq!(mix.ratio(SaltLoading::PieceMass(g(10.0))).unwrap_err().code(), code);
    }

    /// A mix of nothing but base may differ from it by rounding, and no more; so may its hot volume from the cold one.
    #[test]
    fn rounding_is_no_slip() {
        let of = |mass: f64, hot: f64| {
            let mix = cup();
            Unsalted { mass: mix.base_mass * mass, hot_volume: mix.volume * hot, ..mix }
        };
        for less in [1.0, 1.0 - 0.5e-12, 1.0 - SLACK] {
            assert!(of(less, 1.0).reach(SaltForm::OfBase).is_ok(), "{less}");
            assert!(of(1.0, less).reach(SaltForm::OfBase).is_ok(), "{less}");
        }
        let slip = |mix: Unsalted| mix.reach(SaltForm::OfBase).unwrap_err().parameter();
        assert_eq!(slip(of(1.0 - 1.5e-12, 1.0)), Some(Parameter::MixMass));
        assert_eq!(slip(of(1.0, 1.0 - 1.5e-12)), Some(Parameter::HotVolume));
    }

    /// Base and mix are each of a density that a material can have: up to 25 g/mL.
    #[test]
    fn base_and_mix_are_of_a_possible_density() {
        let of = |grams: f64, volume: f64| Unsalted {
            base_mass: g(grams),
            mass: g(grams),
            volume: ml(volume),
            hot_volume: ml(volume),
            base_volume: ml(100.0),
            ..cup()
        };
        let parameter = |mix: Unsalted| mix.checked().err().and_then(|errors| errors.parameter());
        assert_eq!(parameter(of(2_400.0, 100.0)), None);
        assert_eq!(parameter(of(2_600.0, 110.0)), Some(Parameter::BaseDensity));
        assert_eq!(parameter(of(2_400.0, 90.0)), Some(Parameter::MixDensity));
    }

    /// In numbers without rounding: salt as dense as its mix raises no density, by however little.
    #[test]
    fn equal_densities_do_not_raise() {
        let density = MassDensity::from_si(1024.0);
        let volume = Volume::from_si(0.125);
        let mix = Unsalted::of_base(volume, density, Salt::of_density(density).unwrap())
            .with_most_solids(Ratio::from(0.5));
        let form = SaltForm::FinishedDensity;
        assert_eq!(mix.reach(form), Err(SaltError::DoesNotRaise { form }));
    }

    /// Beyond the maximum by more than rounding is out of reach, however small the number is.
    #[test]
    fn the_end_of_the_reach_is_sharp() {
        let (_, most) = cup().reach(SaltForm::PieceMass).unwrap();
        let SaltLoading::PieceMass(most) = most else { panic!("another form came back") };
        for (more, in_reach) in [(0.5e-12, true), (2e-12, false), (1e-9, false)] {
            let asked = SaltLoading::PieceMass(most * (1.0 + more));
            assert_eq!(cup().salt_mass(asked).is_ok(), in_reach, "{more}");
        }
    }

    #[test]
    fn swapped_densities_are_noticed() {
        let swapped = Salt {
            true_density: TrueDensity::new(per_ml(1.22)).unwrap(),
            scooped_density: Some(ScoopedDensity::new(per_ml(2.165)).unwrap()),
            ..cup().salt
        };
        let refused = Unsalted { salt: swapped, ..cup() }.reach(SaltForm::OfBase).unwrap_err();
        assert_eq!(refused.code(), "out-of-range");
    }

    #[test]
    fn salt_and_its_softener_swell_from_20_c_on() {
        // At 170 °C, 150 K above: 1.2e-4 · 150 and 7.5e-4 · 150 more than cold.
        let hot = cup().added_hot_volume().value * 1e3;
        let expected = 1.018 / 2.165 + 0.1 / 0.98 * 1.1125;
        assert!((hot - expected).abs() < 1e-12, "{hot}");
        let cold = Unsalted {
            shot_temperature: ThermodynamicTemperature::new::<degree_celsius>(20.0),
            ..cup()
        };
        let expected = 1.0 / 2.165 + 0.1 / 0.98;
        assert!((cold.added_hot_volume().value * 1e3 - expected).abs() < 1e-12);
    }

    #[test]
    fn a_piece_with_its_hook_by_hand() {
        // Hot 253.7/262, cold 253.7/240; half of the contraction of 9.5 mL is topped by the sprue; 1 % voids.
        let (hot, cold) = (253.7 / 262.0, 253.7 / 240.0);
        let piece = 9.5 * 0.99 * (hot + 0.5 * (cold - hot));
        let density = (piece + 2.6) / (piece / (0.99 * cold) + 0.3);
        let (least, _) = cup().reach(SaltForm::PieceMass).unwrap();
        assert!((least.value() * 1e3 - piece).abs() < 1e-11, "{least:?}");
        let (least, _) = cup().reach(SaltForm::SinkDensity).unwrap();
        assert!((least.value() * 1e-3 - density).abs() < 1e-11, "{least:?}");
    }

    #[test]
    fn raises_the_density_only_if_denser_than_the_mix() {
        // k softener of 0.9 g/mL per salt of 2.165 g/mL against 253.7 g in 240 mL: equal at k = 4.35 or so.
        let with = |k: f64| {
            let softener = SaltSoftener {
                per_salt: Ratio::from(k),
                density: TrueDensity::new(per_ml(0.9)).unwrap(),
                ..cup().softener.unwrap()
            };
            Unsalted { softener: Some(softener), ..cup() }
        };
        let rho = 253.7 / 240.0;
        let equal = (1.0 - rho / 2.165) / (rho / 0.9 - 1.0);
        assert!(with(0.99 * equal).raises_density());
        assert!(!with(1.01 * equal).raises_density());
    }

    #[test]
    fn a_refusal_names_its_parameter_and_numbers() {
        let refused = cup().salt_mass(SaltLoading::OfBase(Ratio::from(5.0))).unwrap_err();
        assert_eq!(refused.parameter(), Some(Parameter::Loading));
        assert!(refused.numbers().is_empty());
        let refused =
            Unsalted { voids: Ratio::from(1.0), ..cup() }.reach(SaltForm::OfBase).unwrap_err();
        assert_eq!(refused.parameter(), Some(Parameter::Voids));
        assert_eq!(refused.numbers().len(), 1);
        assert!(std::format!("{:?}", SaltLoading::OfBase(Ratio::from(0.5))).contains("OfBase"));
    }

    fn mixes() -> impl Strategy<Value = Unsalted> {
        (
            (0.9..1.2, 0.0..0.3, 1.0..1.15, 0.0..0.2),
            (0.0..0.4, 0.1..0.5, 0.2..50.0, 0.0..=1.0),
            (0.0..5.0, 0.5..11.0),
        )
            .prop_map(
                |((density, more, swell, voids), (k, solids, cavity, feed), hook)| Unsalted {
                    base_mass: g(236.6 * density),
                    mass: g(236.6 * density * (1.0 + more)),
                    volume: ml(236.6 * (1.0 + more)),
                    hot_volume: ml(236.6 * (1.0 + more) * swell),
                    voids: Ratio::from(voids),
                    softener: Some(SaltSoftener {
                        per_salt: Ratio::from(k),
                        ..cup().softener.unwrap()
                    }),
                    most_solids: Ratio::from(solids),
                    cavity: Some(PieceCavity { volume: ml(cavity), feed: Ratio::from(feed) }),
                    hook: Hook { mass: g(hook.0), volume: ml(hook.0 / hook.1) },
                    ..cup()
                },
            )
    }

    proptest! {
        #[test]
        fn every_form_comes_back(mix in mixes(), share in 0.0..=1.0) {
            let salt = mix.most_salt() * share;
            for &form in FORMS {
                // A heavy hook on a small piece hides the salt from the sink density.
                let Ok((least, most)) = mix.reach(form) else {
                    prop_assert_eq!(form, SaltForm::SinkDensity);
                    continue;
                };
                let stated = mix.state(salt, form).unwrap();
                let back = mix.convert(stated, form).unwrap();
                let size = most.value().abs();
                prop_assert!((back.value() - stated.value()).abs() <= 1e-13 * size, "{form}");
                // The mass itself comes back as well as the form distinguishes masses.
                let mass = mix.salt_mass(stated).unwrap();
                let blur = size / (most.value() - least.value());
                let off = ((mass - salt) / mix.most_salt()).value.abs();
                prop_assert!(off <= 1e-13 * blur, "{form}: {off} with {blur}");
            }
        }

        /// The short way for densities, which does not work out the reach, keeps to it.
        #[test]
        fn a_density_is_answered_where_it_is_in_reach(mix in mixes(), share in -0.5..1.5_f64) {
            prop_assume!(share.abs() > 1e-9 && (share - 1.0).abs() > 1e-9);
            let (least, most) = mix.reach(SaltForm::FinishedDensity).unwrap();
            let (least, most) = (least.value(), most.value());
            let asked = MassDensity { value: least + share * (most - least), ..per_ml(1.0) };
            let answer = mix.salt_mass(SaltLoading::FinishedDensity(asked));
            prop_assert_eq!(answer.is_ok(), (0.0..=1.0).contains(&share), "{:?}", answer);
        }

        #[test]
        fn more_salt_is_more_in_every_form(mix in mixes(), a in 0.0..=1.0, b in 0.0..=1.0) {
            prop_assume!(a + 1e-9 < b);
            for &form in FORMS {
                if mix.reach(form).is_err() { continue; }
                let low = mix.state(mix.most_salt() * a, form).unwrap();
                let high = mix.state(mix.most_salt() * b, form).unwrap();
                prop_assert!(low.value() < high.value(), "{form}");
            }
        }
    }
}
