//! Salt loadings, each way to state them to each other.

use std::mem::MaybeUninit;

use pourwright::Diagnose;
use pourwright::density::{ScoopedDensity, TrueDensity};
use pourwright::parameter::{Parameter, ParameterError};
use pourwright::quantity::{Ratio, TemperatureCoefficient};
use pourwright::salt::{
    Hook, PieceCavity, Salt, SaltError, SaltForm, SaltLoading, SaltSoftener, Unsalted as Mix,
};

use crate::error::{ArgumentError, Error, Failure};
use crate::guard::guard;
use crate::memory::{self, given};
use crate::number::{
    celsius, grams, grams_per_milliliter, in_grams, in_grams_per_milliliter, milliliters, or,
    per_kelvin, salt_form, share,
};
use crate::range::{
    ANY, At, G, ML, Number, PURE, Range, SHARE, SHARE_BELOW_1, above_0, finite, from_0, refusal,
    true_density,
};

/// mL of salt as scooped per mL of base.
pub const POUR_SALT_AS_SCOOPED: i32 = 1;
/// g of salt per mL of base.
pub const POUR_SALT_PER_VOLUME: i32 = 2;
/// Mass of salt per mass of base.
pub const POUR_SALT_OF_BASE: i32 = 3;
/// Mass of salt per mass of finished mix.
pub const POUR_SALT_OF_FINISHED: i32 = 4;
/// Density of the finished plastic at 20 °C, voids counted, in g/mL.
pub const POUR_SALT_FINISHED_DENSITY: i32 = 5;
/// Mass of a piece, in g. Needs `cavity_ml`.
pub const POUR_SALT_PIECE: i32 = 6;
/// Mean density of a piece with its hook, in g/mL: it sinks in water below this density. Needs `cavity_ml`.
pub const POUR_SALT_SINK_DENSITY: i32 = 7;

/// A mix before salt, and what the conversion of salt loadings rests on.
///
/// Set all to 0 first (`pour_unsalted mix = {0};`): 0 stands for "left out", and the comment says what then counts.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct Unsalted {
    /// Volume of base, cold and liquid, as a cup measures it; above 0.
    pub base_ml: f64,
    /// Density of the base as measured; above 0.
    pub base_g_per_ml: f64,
    /// Mass of the mix before salt; that of its base where 0, and then `mix_ml` is 0, too.
    pub mix_g: f64,
    /// Volume of the mix before salt at 20 °C as fused, without voids; that of its base where 0, and then `mix_g` is 0,
    /// too.
    pub mix_ml: f64,
    /// Volume of that mix at shot temperature; the cold one where 0.
    pub hot_ml: f64,
    /// Shot temperature, 20 to 400 °C; 20 °C where 0.
    pub shot_celsius: f64,
    /// Share of the finished volume that is air, 0 to below 1.
    pub voids: f64,
    /// True density of the salt; above 0.
    pub salt_g_per_ml: f64,
    /// Density of the salt in the spoon, at most the true one; 0 where it is not known. The form `POUR_SALT_AS_SCOOPED`
    /// needs it.
    pub salt_as_scooped_g_per_ml: f64,
    /// Volumetric expansion of the salt; 0 or above.
    pub salt_expansion_per_kelvin: f64,
    /// Mass of softener that goes in per mass of salt; none where 0.
    pub softener_per_salt: f64,
    /// Density of that softener; above 0 where there is any.
    pub softener_g_per_ml: f64,
    /// Volumetric expansion of that softener; 0 or above.
    pub softener_expansion_per_kelvin: f64,
    /// The most salt in the finished mix by true volume, above 0 to below 1; 0.3 where 0.
    pub most_solids: f64,
    /// Volume of the cavity of a piece; no piece where 0.
    pub cavity_ml: f64,
    /// Share of its contraction that a piece draws from the sprue, 0 to 1.
    pub feed: f64,
    /// Mass of the hook and weight on a piece; 0 or above.
    pub hook_g: f64,
    /// Volume that they displace; 0 or above.
    pub hook_ml: f64,
}

impl Unsalted {
    fn numbers(&self) -> [Number<'static>; 18] {
        [
            ("mix/base_ml", self.base_ml, above_0(ML)),
            ("mix/base_g_per_ml", self.base_g_per_ml, Range::Density),
            ("mix/mix_g", self.mix_g, from_0(G)),
            ("mix/mix_ml", self.mix_ml, from_0(ML)),
            ("mix/hot_ml", self.hot_ml, from_0(ML)),
            ("mix/shot_celsius", or(self.shot_celsius, 20.0), Range::Within(20.0, 400.0)),
            ("mix/voids", self.voids, SHARE_BELOW_1),
            ("mix/salt_g_per_ml", self.salt_g_per_ml, Range::Density),
            ("mix/salt_as_scooped_g_per_ml", self.salt_as_scooped_g_per_ml, Range::DensityOr0),
            ("mix/salt_expansion_per_kelvin", self.salt_expansion_per_kelvin, from_0(PURE)),
            ("mix/softener_per_salt", self.softener_per_salt, from_0(PURE)),
            ("mix/softener_g_per_ml", self.softener_g_per_ml, Range::DensityOr0),
            ("mix/softener_expansion_per_kelvin", self.softener_expansion_per_kelvin, from_0(PURE)),
            ("mix/most_solids", self.most_solids, SHARE_BELOW_1),
            ("mix/cavity_ml", self.cavity_ml, from_0(ML)),
            ("mix/feed", self.feed, SHARE),
            ("mix/hook_g", self.hook_g, from_0(G)),
            ("mix/hook_ml", self.hook_ml, from_0(ML)),
        ]
    }

    /// Why a loading, which is in the parameter `loading`, is refused.
    fn why(&self, loading: &'static str, error: &SaltError) -> Failure {
        let at = match error {
            SaltError::OutOfReach { .. } => At::Parameter(loading),
            _ if error.code() == "needs-other" => At::Parameter("mix/cavity_ml"),
            _ if error.parameter() == Some(Parameter::SaltAsScooped) => {
                At::Parameter("mix/salt_as_scooped_g_per_ml")
            }
            SaltError::DoesNotRaise { .. } => At::Parameter("mix"),
            _ => At::Number("mix"),
        };
        let base_g = self.base_ml * self.base_g_per_ml;
        let cold_ml = or(self.mix_ml, self.base_ml);
        let together = [
            ("mix/mix_g", or(self.mix_g, base_g), Range::AtLeast("the mass of its base", base_g)),
            ("mix/hot_ml", or(self.hot_ml, cold_ml), Range::AtLeast("its cold volume", cold_ml)),
        ];
        refusal(&[&self.numbers()[..], &together].concat(), at, error)
    }

    fn read(&self) -> Result<Mix, Failure> {
        finite(&self.numbers())?;
        for (name, x, by, other) in [
            ("mix/mix_g", self.mix_g, "mix_ml", self.mix_ml),
            ("mix/mix_ml", self.mix_ml, "mix_g", self.mix_g),
        ] {
            if x == 0.0 && other != 0.0 {
                return Err(Failure::at(name, &ArgumentError::Needed { by }));
            }
        }
        let base = true_density("mix/base_g_per_ml", self.base_g_per_ml)?;
        let base_volume = milliliters(self.base_ml);
        let base_mass = base.mass_of(base_volume);
        let volume = if self.mix_ml == 0.0 { base_volume } else { milliliters(self.mix_ml) };
        let scooped = or(self.salt_as_scooped_g_per_ml, self.salt_g_per_ml);
        let softener = if self.softener_per_salt == 0.0 {
            None
        } else {
            Some(SaltSoftener {
                per_salt: share(self.softener_per_salt),
                density: true_density("mix/softener_g_per_ml", self.softener_g_per_ml)?,
                expansion: per_kelvin(self.softener_expansion_per_kelvin),
            })
        };
        Ok(Mix {
            base_mass,
            base_volume,
            mass: if self.mix_g == 0.0 { base_mass } else { grams(self.mix_g) },
            volume,
            hot_volume: if self.hot_ml == 0.0 { volume } else { milliliters(self.hot_ml) },
            shot_temperature: celsius(or(self.shot_celsius, 20.0)),
            voids: share(self.voids),
            salt: Salt {
                true_density: true_density("mix/salt_g_per_ml", self.salt_g_per_ml)?,
                scooped_density: Some(ScoopedDensity::new(grams_per_milliliter(scooped)).map_err(
                    |_| Range::Density.refusal("mix/salt_as_scooped_g_per_ml", scooped),
                )?),
                expansion: per_kelvin(self.salt_expansion_per_kelvin),
            },
            softener,
            most_solids: share(or(self.most_solids, 0.3)),
            cavity: (self.cavity_ml != 0.0).then(|| PieceCavity {
                volume: milliliters(self.cavity_ml),
                feed: share(self.feed),
            }),
            hook: Hook { mass: grams(self.hook_g), volume: milliliters(self.hook_ml) },
        })
    }
}

impl Unsalted {
    /// The form of that number, if this mix can be stated so.
    fn form(&self, name: &'static str, number: i32) -> Result<SaltForm, Failure> {
        if number == POUR_SALT_AS_SCOOPED && self.salt_as_scooped_g_per_ml == 0.0 {
            let error = ArgumentError::Needed { by: "the form POUR_SALT_AS_SCOOPED" };
            return Err(Failure::at("mix/salt_as_scooped_g_per_ml", &error));
        }
        salt_form(name, number)
    }
}

fn loading(form: SaltForm, number: f64) -> SaltLoading {
    match form {
        SaltForm::Scooped => SaltLoading::Scooped(share(number)),
        SaltForm::PerVolume => SaltLoading::PerVolume(grams_per_milliliter(number)),
        SaltForm::OfFinished => SaltLoading::OfFinished(share(number)),
        SaltForm::FinishedDensity => SaltLoading::FinishedDensity(grams_per_milliliter(number)),
        SaltForm::PieceMass => SaltLoading::PieceMass(grams(number)),
        SaltForm::SinkDensity => SaltLoading::SinkDensity(grams_per_milliliter(number)),
        // The canonical form. `SaltForm` may grow; `salt_form` gives none of the new ones.
        _ => SaltLoading::OfBase(share(number)),
    }
}

fn number(loading: SaltLoading) -> f64 {
    match loading {
        SaltLoading::Scooped(x) | SaltLoading::OfBase(x) | SaltLoading::OfFinished(x) => x.value,
        SaltLoading::PerVolume(x)
        | SaltLoading::FinishedDensity(x)
        | SaltLoading::SinkDensity(x) => in_grams_per_milliliter(x),
        SaltLoading::PieceMass(x) => in_grams(x),
        _ => f64::NAN,
    }
}

/// States a salt loading another way: `value` in the form `from` (`POUR_SALT_...`) as `converted` in the form `to`.
///
/// `POUR_REFUSED` for a loading out of reach; the help says what is in reach.
#[unsafe(no_mangle)]
pub extern "C" fn pour_salt_convert(
    mix: Option<&Unsalted>,
    from: i32,
    value: f64,
    to: i32,
    converted: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut converted = converted;
    guard(error, &mut || {
        let given_mix = given("mix", mix)?;
        let mix = given_mix.read()?;
        let converted = given("converted", converted.as_deref_mut())?;
        let from = loading(given_mix.form("from", from)?, memory::finite("value", value)?);
        let to = given_mix.form("to", to)?;
        let found = mix.convert(from, to).map_err(|error| given_mix.why("value", &error))?;
        converted.write(number(found));
        Ok(())
    })
}

/// The mass of salt that a loading of `value` in the form `form` (`POUR_SALT_...`) takes.
#[unsafe(no_mangle)]
pub extern "C" fn pour_salt_mass(
    mix: Option<&Unsalted>,
    form: i32,
    value: f64,
    salt_g: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut salt_g = salt_g;
    guard(error, &mut || {
        let given_mix = given("mix", mix)?;
        let mix = given_mix.read()?;
        let salt_g = given("salt_g", salt_g.as_deref_mut())?;
        let loading = loading(given_mix.form("form", form)?, memory::finite("value", value)?);
        let mass = mix.salt_mass(loading).map_err(|error| given_mix.why("value", &error))?;
        salt_g.write(in_grams(mass));
        Ok(())
    })
}

/// What is in reach in the form `form` (`POUR_SALT_...`): without salt, and with the most that the limits allow.
#[unsafe(no_mangle)]
pub extern "C" fn pour_salt_reach(
    mix: Option<&Unsalted>,
    form: i32,
    least: Option<&mut MaybeUninit<f64>>,
    most: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let (mut least, mut most) = (least, most);
    guard(error, &mut || {
        let given_mix = given("mix", mix)?;
        let mix = given_mix.read()?;
        let least = given("least", least.as_deref_mut())?;
        let most = given("most", most.as_deref_mut())?;
        let reach = mix.reach(given_mix.form("form", form)?);
        let (low, high) = reach.map_err(|error| given_mix.why("form", &error))?;
        least.write(number(low));
        most.write(number(high));
        Ok(())
    })
}

/// The mass of salt that brings `base_ml` of base without anything else to the finished `density_g_per_ml`.
///
/// m = (ρ′V − M)/(1 − ρ′/ρ_salt) with ρ′ = ρ/(1 − voids), up to 30 % of salt by true volume. For a mix, softener beside
/// the salt or another limit there is `pour_salt_mass`.
#[unsafe(no_mangle)]
pub extern "C" fn pour_salt_for_density(
    base_ml: f64,
    base_g_per_ml: f64,
    salt_g_per_ml: f64,
    voids: f64,
    density_g_per_ml: f64,
    salt_g: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut salt_g = salt_g;
    guard(error, &mut || {
        let salt_g = given("salt_g", salt_g.as_deref_mut())?;
        let numbers = [base_ml, base_g_per_ml, salt_g_per_ml, voids, density_g_per_ml];
        salt_g.write(salt_for_density(numbers).map_err(|error| why_no_salt(numbers, &error))?);
        Ok(())
    })
}

#[cold]
fn why_no_salt(numbers: [f64; 5], error: &SaltError) -> Failure {
    let [base_ml, base_g_per_ml, salt_g_per_ml, voids, density_g_per_ml] = numbers;
    let at = match error {
        SaltError::OutOfReach { .. } => At::Parameter("density_g_per_ml"),
        SaltError::DoesNotRaise { .. } => At::Parameter("salt_g_per_ml"),
        _ => At::Number("density_g_per_ml"),
    };
    let numbers = [
        ("base_ml", base_ml, above_0(ML)),
        ("base_g_per_ml", base_g_per_ml, Range::Density),
        ("salt_g_per_ml", salt_g_per_ml, Range::Density),
        ("voids", voids, SHARE_BELOW_1),
        ("density_g_per_ml", density_g_per_ml, ANY),
    ];
    refusal(&numbers, at, error)
}

/// Grams of salt for `[base_ml, base_g_per_ml, salt_g_per_ml, voids, density_g_per_ml]`.
pub(crate) fn salt_for_density(numbers: [f64; 5]) -> Result<f64, SaltError> {
    let [base_ml, base_g_per_ml, salt_g_per_ml, voids, density_g_per_ml] = numbers;
    let base = TrueDensity::new(grams_per_milliliter(base_g_per_ml))
        .map_err(|error| SaltError::Parameters(error.of(Parameter::BaseDensity).into()))?;
    let salt = grams_per_milliliter(salt_g_per_ml);
    let not_salt =
        |error: ParameterError| SaltError::Parameters(error.of(Parameter::SaltDensity).into());
    let volume = milliliters(base_ml);
    let mass = base.mass_of(volume);
    let mix = Mix {
        base_mass: mass,
        base_volume: volume,
        mass,
        volume,
        hot_volume: volume,
        shot_temperature: celsius(20.0),
        voids: share(voids),
        salt: Salt {
            true_density: TrueDensity::new(salt).map_err(not_salt)?,
            scooped_density: Some(ScoopedDensity::new(salt).map_err(not_salt)?),
            expansion: TemperatureCoefficient::default(),
        },
        softener: None,
        most_solids: Ratio::from(0.3),
        cavity: None,
        hook: Hook::default(),
    };
    let wanted = SaltLoading::FinishedDensity(grams_per_milliliter(density_g_per_ml));
    mix.salt_mass(wanted).map(in_grams)
}
