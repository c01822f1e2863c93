//! Salt loadings.

use super::sink::Piece;
use super::{if_given, of, or_default};
use crate::density::{ScoopedDensity, TrueDensity};
use crate::parameter::{
    Check, Checked, Parameter, ParameterError, ParameterErrors, PlainUnit, Problem,
};
use crate::process::sink::{Body, Outline, loading_for};
use crate::quantity::{Mass, MassDensity, Measurable, Ratio, Velocity, Volume};
use crate::salt::{Hook, PieceCavity, Salt, SaltForm, SaltLoading, SaltSoftener, Unsalted};
use crate::table::{Refusal, calculation};

/// A mix before salt, and all that a conversion of loadings rests on.
struct Mix {
    base_volume_ml: f64,
    base_density_g_per_ml: f64,
    salt_density_g_per_ml: f64,
    mix_mass_g: Option<f64>,
    mix_volume_ml: Option<f64>,
    hot_volume_ml: Option<f64>,
    shot_temperature_celsius: Option<f64>,
    voids: Option<f64>,
    salt_as_scooped_g_per_ml: Option<f64>,
    salt_expansion_per_kelvin: Option<f64>,
    softener_per_salt: Option<f64>,
    softener_density_g_per_ml: Option<f64>,
    softener_expansion_per_kelvin: Option<f64>,
    most_solids: Option<f64>,
    cavity_volume_ml: Option<f64>,
    feed: Option<f64>,
    hook_mass_g: Option<f64>,
    hook_volume_ml: Option<f64>,
}

impl Mix {
    #[inline]
    fn read(&self) -> Result<Unsalted, ParameterErrors> {
        let base_volume: Volume = of(Parameter::BaseVolume, self.base_volume_ml);
        let base_density: MassDensity = of(Parameter::BaseDensity, self.base_density_g_per_ml);
        let base_mass = base_density * base_volume;
        let volume = if_given(Parameter::MixVolume, self.mix_volume_ml).unwrap_or(base_volume);
        let solid: MassDensity = of(Parameter::SaltDensity, self.salt_density_g_per_ml);
        let per_salt: Ratio = or_default(Parameter::SoftenerPerSalt, self.softener_per_salt);
        let softener_density: Option<MassDensity> =
            if_given(Parameter::SoftenerDensity, self.softener_density_g_per_ml);
        let unsalted = Unsalted {
            base_mass,
            base_volume,
            mass: if_given(Parameter::MixMass, self.mix_mass_g).unwrap_or(base_mass),
            volume,
            hot_volume: if_given(Parameter::HotVolume, self.hot_volume_ml).unwrap_or(volume),
            shot_temperature: or_default(Parameter::ShotTemperature, self.shot_temperature_celsius),
            voids: or_default(Parameter::Voids, self.voids),
            salt: Salt {
                true_density: TrueDensity::unchecked(solid),
                scooped_density: if_given(Parameter::SaltAsScooped, self.salt_as_scooped_g_per_ml)
                    .map(ScoopedDensity::unchecked),
                expansion: or_default(Parameter::SaltExpansion, self.salt_expansion_per_kelvin),
            },
            // Without softener its density must still be one.
            softener: softener_density.map(|density| SaltSoftener {
                per_salt,
                density: TrueDensity::unchecked(density),
                expansion: or_default(
                    Parameter::SoftenerExpansion,
                    self.softener_expansion_per_kelvin,
                ),
            }),
            most_solids: or_default(Parameter::MostSolids, self.most_solids),
            cavity: if_given(Parameter::CavityVolume, self.cavity_volume_ml)
                .map(|volume| PieceCavity { volume, feed: or_default(Parameter::Feed, self.feed) }),
            hook: Hook {
                mass: or_default(Parameter::HookMass, self.hook_mass_g),
                volume: or_default(Parameter::HookVolume, self.hook_volume_ml),
            },
        };
        self.is_whole(per_salt, &unsalted)?;
        Ok(unsalted)
    }

    /// Whether what needs another number has it; if not, with all that is wrong besides.
    #[inline]
    fn is_whole(&self, per_salt: Ratio, unsalted: &Unsalted) -> Result<(), ParameterErrors> {
        let pairs = [
            (Parameter::MixMass, self.mix_mass_g, Parameter::MixVolume, self.mix_volume_ml),
            (Parameter::HookMass, self.hook_mass_g, Parameter::HookVolume, self.hook_volume_ml),
        ];
        let mut check = Check::new();
        for (one, first, other, second) in pairs {
            if first.is_some() != second.is_some() {
                let (missing, by) = if first.is_none() { (one, other) } else { (other, one) };
                check.push(ParameterError::new(missing, Problem::NeededBy(by)));
            }
        }
        if per_salt.value != 0.0 && self.softener_density_g_per_ml.is_none() {
            let by = Problem::NeededBy(Parameter::SoftenerPerSalt);
            check.push(ParameterError::new(Parameter::SoftenerDensity, by));
            check.number(Parameter::SoftenerPerSalt, per_salt.value);
        }
        // What only counts with another number is looked at without it too.
        if self.softener_density_g_per_ml.is_none() {
            check.option(Parameter::SoftenerExpansion, self.softener_expansion_per_kelvin);
        }
        if self.cavity_volume_ml.is_none() {
            check.option(Parameter::Feed, self.feed);
        }
        let base = [
            (Parameter::BaseVolume, self.base_volume_ml),
            (Parameter::BaseDensity, self.base_density_g_per_ml),
        ];
        for (parameter, plain) in base {
            check.number(parameter, parameter.unit().to_si(plain));
        }
        if check.is_clean() { Ok(()) } else { Err(self.all_wrong(check, unsalted)) }
    }

    /// All that is wrong besides what `check` has found: numbers that were given and are out of their own ranges, not what
    /// follows from the base.
    #[cold]
    fn all_wrong(&self, mut check: Check, unsalted: &Unsalted) -> ParameterErrors {
        let follows = |parameter: Parameter| match parameter {
            Parameter::BaseVolume | Parameter::BaseDensity | Parameter::MixDensity => true,
            Parameter::MixMass => self.mix_mass_g.is_none(),
            Parameter::MixVolume => self.mix_volume_ml.is_none(),
            Parameter::HotVolume => self.hot_volume_ml.is_none(),
            _ => false,
        };
        let checked = unsalted.checked().err();
        let others = checked.as_ref().map(ParameterErrors::as_slice).unwrap_or_default();
        for other in others {
            let own = matches!(other.problem, Problem::OutOfRange(_) | Problem::NotFinite(_));
            if own && !follows(other.parameter) {
                check.push(*other);
            }
        }
        check.into_errors()
    }
}

/// The mix, where the number of a loading is finite too.
fn read_with(mix: &Mix, loading: f64) -> Result<Unsalted, ParameterErrors> {
    let read = mix.read();
    if loading.is_finite() {
        return read;
    }
    let mut check = Check::new();
    check.number(Parameter::Loading, loading).merge_numbers(&read);
    if let Ok(mix) = &read {
        check.merge(mix.checked());
    }
    Err(check.into_errors())
}

/// The loading `plain` as `form` states it.
fn loading(form: SaltForm, plain: f64) -> SaltLoading {
    let density = || MassDensity::from_si(PlainUnit::GramPerMilliliter.to_si(plain));
    match form {
        SaltForm::Scooped => SaltLoading::Scooped(Ratio::from(plain)),
        SaltForm::PerVolume => SaltLoading::PerVolume(density()),
        SaltForm::OfBase => SaltLoading::OfBase(Ratio::from(plain)),
        SaltForm::OfFinished => SaltLoading::OfFinished(Ratio::from(plain)),
        SaltForm::FinishedDensity => SaltLoading::FinishedDensity(density()),
        SaltForm::PieceMass => SaltLoading::PieceMass(Mass::from_si(PlainUnit::Gram.to_si(plain))),
        SaltForm::SinkDensity => SaltLoading::SinkDensity(density()),
    }
}

/// A loading as a plain number, in the unit of its form.
fn plain(loading: SaltLoading) -> f64 {
    match loading {
        SaltLoading::Scooped(x) | SaltLoading::OfBase(x) | SaltLoading::OfFinished(x) => x.value,
        SaltLoading::PerVolume(x)
        | SaltLoading::FinishedDensity(x)
        | SaltLoading::SinkDensity(x) => PlainUnit::GramPerMilliliter.from_si(x.si()),
        SaltLoading::PieceMass(x) => PlainUnit::Gram.from_si(x.si()),
    }
}

/// Declares a calculation on a mix before salt: that of the mix follow its own parameters.
macro_rules! salt_calculation {
    (
        $(#[doc = $doc:literal])+
        $NAME:ident = $name:literal: $Inputs:ident -> $Results:ident
        takes { $($field:ident: $Field:ty = $Parameter:ident,)* }
        gives { $($gives:tt)+ }
        example { $($own:ident: $value:expr),* } => $answer:expr;
    ) => {
        calculation! {
            $(#[doc = $doc])+
            $NAME = $name: $Inputs -> $Results
            takes {
                base_volume_ml: f64 = BaseVolume,
                base_density_g_per_ml: f64 = BaseDensity,
                salt_density_g_per_ml: f64 = SaltDensity,
                $($field: $Field = $Parameter,)*
                mix_mass_g: Option<f64> = MixMass,
                mix_volume_ml: Option<f64> = MixVolume,
                hot_volume_ml: Option<f64> = HotVolume,
                shot_temperature_celsius: Option<f64> = ShotTemperature,
                voids: Option<f64> = Voids,
                salt_as_scooped_g_per_ml: Option<f64> = SaltAsScooped,
                salt_expansion_per_kelvin: Option<f64> = SaltExpansion,
                softener_per_salt: Option<f64> = SoftenerPerSalt,
                softener_density_g_per_ml: Option<f64> = SoftenerDensity,
                softener_expansion_per_kelvin: Option<f64> = SoftenerExpansion,
                most_solids: Option<f64> = MostSolids,
                cavity_volume_ml: Option<f64> = CavityVolume,
                feed: Option<f64> = Feed,
                hook_mass_g: Option<f64> = HookMass,
                hook_volume_ml: Option<f64> = HookVolume,
            }
            gives { $($gives)+ }
            cautions ["salt-settles", "salt-dry"]
            request "salt"
            example $Inputs {
                base_volume_ml: 250.0,
                base_density_g_per_ml: 1.0,
                salt_density_g_per_ml: 2.0,
                $($own: $value,)*
                mix_mass_g: None,
                mix_volume_ml: None,
                hot_volume_ml: None,
                shot_temperature_celsius: None,
                voids: None,
                salt_as_scooped_g_per_ml: Some(1.25),
                salt_expansion_per_kelvin: None,
                softener_per_salt: None,
                softener_density_g_per_ml: None,
                softener_expansion_per_kelvin: None,
                most_solids: None,
                cavity_volume_ml: None,
                feed: None,
                hook_mass_g: None,
                hook_volume_ml: None,
            } => $answer;
        }

        impl $Inputs {
            /// The mix before salt.
            #[inline]
            fn mix(&self) -> Mix {
                Mix {
                    base_volume_ml: self.base_volume_ml,
                    base_density_g_per_ml: self.base_density_g_per_ml,
                    salt_density_g_per_ml: self.salt_density_g_per_ml,
                    mix_mass_g: self.mix_mass_g,
                    mix_volume_ml: self.mix_volume_ml,
                    hot_volume_ml: self.hot_volume_ml,
                    shot_temperature_celsius: self.shot_temperature_celsius,
                    voids: self.voids,
                    salt_as_scooped_g_per_ml: self.salt_as_scooped_g_per_ml,
                    salt_expansion_per_kelvin: self.salt_expansion_per_kelvin,
                    softener_per_salt: self.softener_per_salt,
                    softener_density_g_per_ml: self.softener_density_g_per_ml,
                    softener_expansion_per_kelvin: self.softener_expansion_per_kelvin,
                    most_solids: self.most_solids,
                    cavity_volume_ml: self.cavity_volume_ml,
                    feed: self.feed,
                    hook_mass_g: self.hook_mass_g,
                    hook_volume_ml: self.hook_volume_ml,
                }
            }
        }
    };
}

salt_calculation! {
    /// States a salt loading another way.
    ///
    /// All ways go through the mass of salt per mass of base; the equations are those of the module `salt`. In reach is
    /// all between no salt and the maximum that `most_solids` allows. Where a form that is about a piece needs the
    /// feed and it is not known, the bounds are those without feed and fed in full.
    SALT_CONVERT = "salt_convert": SaltConvert -> SaltConvertResult
    takes {
        form: SaltForm = Form,
        loading: f64 = Loading,
        to_form: SaltForm = ToForm,
    }
    gives {
        /// The loading as `to_form` states it, in the unit of that form.
        loading: f64 = "loading" Any,
        /// Its lower bound where the feed matters and is not known; else the loading.
        loading_min: f64 = "loading_min" Any,
        /// Its upper bound where the feed matters and is not known; else the loading.
        loading_max: f64 = "loading_max" Any,
    }
    example { form: SaltForm::OfBase, loading: 0.1, to_form: SaltForm::Scooped }
        => SaltConvertResult { loading: 0.08, loading_min: 0.08, loading_max: 0.08 };
}

impl SaltConvert {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges; a loading out of reach, with what is in reach.
    pub fn calculate(&self) -> Result<SaltConvertResult, Refusal> {
        let mix = read_with(&self.mix(), self.loading)?;
        let from = loading(self.form, self.loading);
        let convert = |mix: &Unsalted| mix.convert(from, self.to_form).map(plain);
        let loading = convert(&mix)?;
        let [loading_min, loading_max] = bounds(&mix, self.feed, loading, convert)?;
        Ok(SaltConvertResult { loading, loading_min, loading_max })
    }
}

/// The results of `calculate` without feed and fed in full, the smaller first, where the feed is not known and matters; else
/// `answer` twice. An end at which the loading is out of reach leaves `answer` as that bound.
fn bounds(
    mix: &Unsalted,
    feed: Option<f64>,
    answer: f64,
    calculate: impl Fn(&Unsalted) -> Result<f64, crate::salt::SaltError>,
) -> Result<[f64; 2], Refusal> {
    let Some(cavity) = mix.cavity.filter(|_| feed.is_none()) else { return Ok([answer; 2]) };
    let at = |feed: f64| {
        let cavity = Some(PieceCavity { feed: Ratio::from(feed), ..cavity });
        calculate(&Unsalted { cavity, ..*mix }).unwrap_or(answer)
    };
    let (one, other) = (at(0.0), at(1.0));
    Ok([one.min(other).min(answer), one.max(other).max(answer)])
}

salt_calculation! {
    /// Mass of salt for a loading, and of the softener that goes in with it.
    SALT_MASS = "salt_mass": SaltMass -> SaltMassResult
    takes {
        form: SaltForm = Form,
        loading: f64 = Loading,
    }
    gives {
        /// Mass of salt.
        salt_mass_g: f64 = "salt_mass" Gram,
        /// Its lower bound where the feed matters and is not known; else the mass.
        salt_mass_min_g: f64 = "salt_mass_min" Gram,
        /// Its upper bound where the feed matters and is not known; else the mass.
        salt_mass_max_g: f64 = "salt_mass_max" Gram,
        /// Mass of softener that goes in with it.
        softener_mass_g: f64 = "softener_mass" Gram,
    }
    example { form: SaltForm::OfBase, loading: 0.1 } => SaltMassResult {
        salt_mass_g: 25.0,
        salt_mass_min_g: 25.0,
        salt_mass_max_g: 25.0,
        softener_mass_g: 0.0,
    };
}

impl SaltMass {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges; a loading out of reach, with what is in reach.
    pub fn calculate(&self) -> Result<SaltMassResult, Refusal> {
        let mix = read_with(&self.mix(), self.loading)?;
        mass_of(&mix, self.feed, loading(self.form, self.loading))
    }
}

/// Mass of salt and softener for a loading of a mix.
#[inline]
fn mass_of(
    mix: &Unsalted,
    feed: Option<f64>,
    loading: SaltLoading,
) -> Result<SaltMassResult, Refusal> {
    let grams = |mass: Mass| PlainUnit::Gram.from_si(mass.si());
    let mass = mix.salt_mass(loading)?;
    let salt = grams(mass);
    let calculate = |mix: &Unsalted| mix.salt_mass(loading).map(grams);
    let [salt_mass_min_g, salt_mass_max_g] = bounds(mix, feed, salt, calculate)?;
    let per_salt = mix.softener.map_or(0.0, |softener| softener.per_salt.value);
    Ok(SaltMassResult {
        salt_mass_g: salt,
        salt_mass_min_g,
        salt_mass_max_g,
        softener_mass_g: grams(mass * per_salt),
    })
}

salt_calculation! {
    /// Salt loadings in reach: without salt, and with the maximum that `most_solids` allows.
    SALT_REACH = "salt_reach": SaltReach -> SaltReachResult
    takes {
        form: SaltForm = Form,
    }
    gives {
        /// The loading without salt, in the unit of the form.
        loading_min: f64 = "loading_min" Any,
        /// The maximum loading, in the unit of the form.
        loading_max: f64 = "loading_max" Any,
    }
    example { form: SaltForm::FinishedDensity }
        => SaltReachResult { loading_min: 1.0, loading_max: 1.3 };
}

impl SaltReach {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges; salt that does not raise the form.
    pub fn calculate(&self) -> Result<SaltReachResult, Refusal> {
        let (least, most) = self.mix().read()?.reach(self.form)?;
        Ok(SaltReachResult { loading_min: plain(least), loading_max: plain(most) })
    }
}

calculation! {
    /// Mass of salt that brings a base alone to a finished density: `salt_mass` in one form, with few numbers.
    ///
    /// m_s = (ρ′V₀ − M₀)/(1 − ρ′/ρ_s) with ρ′ = ρ_t/(1 − φ).
    SALT_FOR_DENSITY = "salt_for_density": SaltForDensity -> SaltForDensityResult
    takes {
        base_volume_ml: f64 = BaseVolume,
        base_density_g_per_ml: f64 = BaseDensity,
        salt_density_g_per_ml: f64 = SaltDensity,
        finished_density_g_per_ml: f64 = FinishedDensity,
        voids: Option<f64> = Voids,
        most_solids: Option<f64> = MostSolids,
    }
    gives {
        /// Mass of salt.
        salt_mass_g: f64 = "salt_mass" Gram,
    }
    cautions ["salt-settles", "salt-dry"]
    request "salt"
    has total
    example SaltForDensity {
        base_volume_ml: 250.0,
        base_density_g_per_ml: 1.0,
        salt_density_g_per_ml: 2.0,
        finished_density_g_per_ml: 1.25,
        voids: None,
        most_solids: None,
    } => SaltForDensityResult { salt_mass_g: 166.666_666_666_666_7 };
}

impl SaltForDensity {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges; a density out of reach, with what is in reach.
    #[inline]
    pub fn calculate(&self) -> Result<SaltForDensityResult, Refusal> {
        let (found, is_answer) = self.total();
        if is_answer { Ok(found) } else { self.by_what_is_in_reach() }
    }

    /// As [`MassOfVolume::total`](super::MassOfVolume::total).
    #[inline(always)]
    #[must_use]
    pub fn total(&self) -> (SaltForDensityResult, bool) {
        let (mix, wanted) = self.mix();
        let (mass, is_in_reach) = mix.mass_of_any_for_density(wanted);
        let is_answer = is_in_reach & self.is_in_range(&mix, wanted);
        (SaltForDensityResult { salt_mass_g: PlainUnit::Gram.from_si(mass.si()) }, is_answer)
    }

    /// The base with the salt, not checked, and the density that is wanted.
    #[inline(always)]
    fn mix(&self) -> (Unsalted, MassDensity) {
        let salt = Salt {
            true_density: TrueDensity::unchecked(of(
                Parameter::SaltDensity,
                self.salt_density_g_per_ml,
            )),
            scooped_density: None,
            expansion: or_default(Parameter::SaltExpansion, None),
        };
        let volume = of(Parameter::BaseVolume, self.base_volume_ml);
        let density = of(Parameter::BaseDensity, self.base_density_g_per_ml);
        let mix = Unsalted::of_base(volume, density, salt)
            .with_voids(or_default(Parameter::Voids, self.voids))
            .with_most_solids(or_default(Parameter::MostSolids, self.most_solids));
        (mix, of(Parameter::FinishedDensity, self.finished_density_g_per_ml))
    }

    /// Whether the numbers that the mix does not check itself are in their ranges.
    #[inline(always)]
    fn is_in_range(&self, mix: &Unsalted, wanted: MassDensity) -> bool {
        let density: MassDensity = of(Parameter::BaseDensity, self.base_density_g_per_ml);
        Parameter::BaseVolume.holds_si(mix.base_volume.value)
            & Parameter::BaseDensity.holds_si(density.value)
            & Parameter::FinishedDensity.holds_si(wanted.value)
    }

    /// The result at the ends of what is in reach, or why there is none.
    #[cold]
    fn by_what_is_in_reach(&self) -> Result<SaltForDensityResult, Refusal> {
        let (mix, wanted) = self.mix();
        if !self.is_in_range(&mix, wanted) {
            return Err(self.all_wrong(wanted));
        }
        let mass = mix.salt_mass(SaltLoading::FinishedDensity(wanted))?;
        Ok(SaltForDensityResult { salt_mass_g: PlainUnit::Gram.from_si(mass.si()) })
    }

    /// All that is wrong, where the base or the density that is wanted is.
    #[cold]
    fn all_wrong(&self, wanted: MassDensity) -> Refusal {
        let mix = Mix {
            base_volume_ml: self.base_volume_ml,
            base_density_g_per_ml: self.base_density_g_per_ml,
            salt_density_g_per_ml: self.salt_density_g_per_ml,
            mix_mass_g: None,
            mix_volume_ml: None,
            hot_volume_ml: None,
            shot_temperature_celsius: None,
            voids: self.voids,
            salt_as_scooped_g_per_ml: None,
            salt_expansion_per_kelvin: None,
            softener_per_salt: None,
            softener_density_g_per_ml: None,
            softener_expansion_per_kelvin: None,
            most_solids: self.most_solids,
            cavity_volume_ml: None,
            feed: None,
            hook_mass_g: None,
            hook_volume_ml: None,
        }
        .read();
        let mut check = Check::new();
        check.number(Parameter::FinishedDensity, wanted.value).merge_numbers(&mix);
        if let Ok(mix) = &mix {
            check.merge(mix.checked());
        }
        check.into_errors().into()
    }
}

calculation! {
    /// Mass of salt at which a piece sinks at a rate.
    ///
    /// The finished density is that for the sink rate (module `process::sink`), of the piece as it is when it has cooled; the
    /// salt is that for this density.
    SALT_FOR_SINK_RATE = "salt_for_sink_rate": SaltForSinkRate -> SaltForSinkRateResult
    takes {
        base_volume_ml: f64 = BaseVolume,
        base_density_g_per_ml: f64 = BaseDensity,
        salt_density_g_per_ml: f64 = SaltDensity,
        sink_rate_cm_per_s: f64 = SinkRate,
        cavity_volume_ml: f64 = CavityVolume,
        diameter_mm: f64 = Diameter,
        water_temperature_celsius: f64 = WaterTemperature,
        length_mm: Option<f64> = Length,
        shape: Option<Outline> = Shape,
        mix_mass_g: Option<f64> = MixMass,
        mix_volume_ml: Option<f64> = MixVolume,
        hot_volume_ml: Option<f64> = HotVolume,
        shot_temperature_celsius: Option<f64> = ShotTemperature,
        voids: Option<f64> = Voids,
        salt_expansion_per_kelvin: Option<f64> = SaltExpansion,
        softener_per_salt: Option<f64> = SoftenerPerSalt,
        softener_density_g_per_ml: Option<f64> = SoftenerDensity,
        softener_expansion_per_kelvin: Option<f64> = SoftenerExpansion,
        most_solids: Option<f64> = MostSolids,
        feed: Option<f64> = Feed,
        hook_mass_g: Option<f64> = HookMass,
        hook_volume_ml: Option<f64> = HookVolume,
        salinity_practical: Option<f64> = SalinityPractical,
        salinity_absolute: Option<f64> = SalinityAbsolute,
        drop_depth_m: Option<f64> = DropDepth,
        drop_time_s: Option<f64> = DropTime,
        drop_density_g_per_ml: Option<f64> = DropDensity,
    }
    gives {
        /// Mass of salt.
        salt_mass_g: f64 = "salt_mass" Gram,
        /// Mass of softener that goes in with it.
        softener_mass_g: f64 = "softener_mass" Gram,
        /// Density of the finished plastic at 20 °C, voids counted.
        finished_density_g_per_ml: f64 = "finished_density" GramPerMilliliter,
    }
    cautions ["salt-settles", "salt-dry"]
    request "salt"
    example SaltForSinkRate {
        base_volume_ml: 250.0,
        base_density_g_per_ml: 1.0,
        salt_density_g_per_ml: 2.0,
        sink_rate_cm_per_s: 22.041_046_698_539_03,
        cavity_volume_ml: 9.5,
        diameter_mm: 10.0,
        water_temperature_celsius: 20.0,
        length_mm: Some(121.0),
        shape: None,
        mix_mass_g: None,
        mix_volume_ml: None,
        hot_volume_ml: None,
        shot_temperature_celsius: None,
        voids: None,
        salt_expansion_per_kelvin: None,
        softener_per_salt: None,
        softener_density_g_per_ml: None,
        softener_expansion_per_kelvin: None,
        most_solids: None,
        feed: None,
        hook_mass_g: Some(2.0),
        hook_volume_ml: Some(0.25),
        salinity_practical: None,
        salinity_absolute: None,
        drop_depth_m: None,
        drop_time_s: None,
        drop_density_g_per_ml: None,
    } => SaltForSinkRateResult {
        salt_mass_g: 55.555_555_555_555_5,
        softener_mass_g: 0.0,
        finished_density_g_per_ml: 1.1,
    };
}

impl SaltForSinkRate {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges; a rate that no density gives; a density out of reach, with what is in reach.
    pub fn calculate(&self) -> Result<SaltForSinkRateResult, Refusal> {
        let mix = Mix {
            base_volume_ml: self.base_volume_ml,
            base_density_g_per_ml: self.base_density_g_per_ml,
            salt_density_g_per_ml: self.salt_density_g_per_ml,
            mix_mass_g: self.mix_mass_g,
            mix_volume_ml: self.mix_volume_ml,
            hot_volume_ml: self.hot_volume_ml,
            shot_temperature_celsius: self.shot_temperature_celsius,
            voids: self.voids,
            salt_as_scooped_g_per_ml: None,
            salt_expansion_per_kelvin: self.salt_expansion_per_kelvin,
            softener_per_salt: self.softener_per_salt,
            softener_density_g_per_ml: self.softener_density_g_per_ml,
            softener_expansion_per_kelvin: self.softener_expansion_per_kelvin,
            most_solids: self.most_solids,
            cavity_volume_ml: Some(self.cavity_volume_ml),
            feed: self.feed,
            hook_mass_g: self.hook_mass_g,
            hook_volume_ml: self.hook_volume_ml,
        }
        .read();
        let piece = Piece {
            // A piece is as large as its cavity until its density is known.
            piece_volume_ml: self.cavity_volume_ml,
            diameter_mm: self.diameter_mm,
            water_temperature_celsius: self.water_temperature_celsius,
            length_mm: self.length_mm,
            shape: self.shape,
            hook_mass_g: self.hook_mass_g,
            hook_volume_ml: self.hook_volume_ml,
            salinity_practical: self.salinity_practical,
            salinity_absolute: self.salinity_absolute,
            drop_depth_m: self.drop_depth_m,
            drop_time_s: self.drop_time_s,
            drop_density_g_per_ml: self.drop_density_g_per_ml,
        };
        let rate: Velocity = of(Parameter::SinkRate, self.sink_rate_cm_per_s);
        let read = piece.read((Parameter::SinkRate, rate.si())).map_err(|error| match error {
            Refusal::Parameters(errors) => Refusal::Parameters(errors.renamed(|parameter| {
                if parameter == Parameter::PieceVolume {
                    Parameter::CavityVolume
                } else {
                    parameter
                }
            })),
            other => other,
        });
        let mut check = Check::new();
        check.merge_numbers(&mix);
        if let Ok(mix) = &mix {
            check.merge(mix.checked());
        }
        check.merge_numbers(&read);
        check.finish()?;
        let ((body, water), mix) = (read?, mix?);
        let Some(cavity) = mix.cavity else {
            return Err(ParameterError::new(Parameter::CavityVolume, Problem::Missing).into());
        };
        let loading = loading_for(&mix, &cavity, |volume| {
            let body = piece.with_drop(Body { volume, own_drag: None, ..body }, &water)?;
            Ok::<_, Refusal>(body.density_for(rate, &water)?)
        })?;
        let salted = mass_of(&mix, Some(cavity.feed.value), loading)?;
        Ok(SaltForSinkRateResult {
            salt_mass_g: salted.salt_mass_g,
            softener_mass_g: salted.softener_mass_g,
            finished_density_g_per_ml: plain(loading),
        })
    }
}

#[cfg(test)]
mod tests {
    use rstest::rstest;

    use super::*;

    /// Columns take what the total gives: a number out of its range is no answer there either.
    #[rstest]
    #[case(250.0, 1.0, 1.25, true)]
    #[case(1e16, 1.0, 1.25, false)]
    #[case(250.0, 26.0, 1.25, false)]
    #[case(250.0, 1.0, 26.0, false)]
    fn what_is_in_range_is_an_answer(
        #[case] base_volume_ml: f64,
        #[case] base_density_g_per_ml: f64,
        #[case] finished_density_g_per_ml: f64,
        #[case] is_answer: bool,
    ) {
        let salt = SaltForDensity {
            base_volume_ml,
            base_density_g_per_ml,
            salt_density_g_per_ml: 2.0,
            finished_density_g_per_ml,
            voids: None,
            most_solids: None,
        };
        assert_eq!(salt.total().1, is_answer);
        assert_eq!(salt.calculate().is_ok(), is_answer);
    }
}
