//! A salt loading from any way to state it to any other.

use std::borrow::Cow;

use pourwright::Diagnose;
use pourwright::density::ScoopedDensity;
use pourwright::mix::reference_temperature;
use pourwright::quantity::TemperatureCoefficient;
use pourwright::salt::{Hook, PieceCavity, Salt, SaltForm, SaltLoading, SaltSoftener, Unsalted};
use wasm_bindgen::prelude::wasm_bindgen;

use crate::number::{
    grams, grams_per_milliliter, in_grams, in_grams_per_milliliter, milliliters, share,
    true_density,
};
use crate::refused::Refused;

/// A mix before salt. The piece is cold: nothing expands.
#[derive(Debug)]
#[wasm_bindgen]
pub struct SaltMix(Unsalted);

#[wasm_bindgen]
impl SaltMix {
    /// The mix, its base alone where its mass and volume are not given (the wrapper sees to it that both are, or neither);
    /// the salt, whose density in the spoon the wrapper asks for where a form speaks of it; the softener that goes in with
    /// it; the piece, if there is one, and the hook on it.
    ///
    /// # Errors
    /// A number out of its range.
    #[wasm_bindgen(constructor)]
    #[allow(clippy::too_many_arguments)] // the wrapper takes them by name
    pub fn new(
        base_ml: f64,
        base_g_per_ml: f64,
        mix_g: Option<f64>,
        mix_ml: Option<f64>,
        salt_g_per_ml: f64,
        scooped_g_per_ml: Option<f64>,
        softener_per_salt: f64,
        softener_g_per_ml: Option<f64>,
        voids: f64,
        most_solids: f64,
        cavity_ml: Option<f64>,
        feed: f64,
        hook_g: f64,
        hook_ml: f64,
    ) -> Result<Self, Refused> {
        let expansion = TemperatureCoefficient::default();
        let base_volume = milliliters(base_ml);
        let base_mass = true_density("/baseGPerMl", base_g_per_ml)?.mass_of(base_volume);
        let volume = mix_ml.map_or(base_volume, milliliters);
        let softener = match softener_g_per_ml {
            Some(density) => Some(SaltSoftener {
                per_salt: share(softener_per_salt),
                density: true_density("/softenerGPerMl", density)?,
                expansion,
            }),
            None => None,
        };
        let scooped = grams_per_milliliter(scooped_g_per_ml.unwrap_or(salt_g_per_ml));
        Ok(Self(Unsalted {
            base_mass,
            base_volume,
            mass: mix_g.map_or(base_mass, grams),
            volume,
            hot_volume: volume,
            shot_temperature: reference_temperature(),
            voids: share(voids),
            salt: Salt {
                true_density: true_density("/saltGPerMl", salt_g_per_ml)?,
                scooped_density: Some(
                    ScoopedDensity::new(scooped)
                        .map_err(|error| Refused::at("/scoopedGPerMl", &error))?,
                ),
                expansion,
            },
            softener,
            most_solids: share(most_solids),
            cavity: cavity_ml.map(|ml| PieceCavity { volume: milliliters(ml), feed: share(feed) }),
            hook: Hook { mass: grams(hook_g), volume: milliliters(hook_ml) },
        }))
    }

    /// The loading `value`, stated as `from`, stated as `to`. Densities are in g/mL, the mass of a piece in g; the rest
    /// are ratios.
    ///
    /// # Errors
    /// A loading out of reach, with what is in reach.
    pub fn loading(&self, from: &str, value: f64, to: &str) -> Result<f64, Refused> {
        let from = loading(form("/from", from)?, value)?;
        plain(self.0.convert(from, form("/to", to)?)?)
    }

    /// The mass of salt that a loading takes, in g.
    ///
    /// # Errors
    /// A loading out of reach, with what is in reach.
    pub fn mass(&self, form: &str, value: f64) -> Result<f64, Refused> {
        Ok(in_grams(self.0.salt_mass(loading(self::form("/form", form)?, value)?)?))
    }

    /// What is in reach: without salt, and with the most that the limits allow.
    ///
    /// # Errors
    /// A form that there is not.
    pub fn reach(&self, form: &str) -> Result<Vec<f64>, Refused> {
        let (least, most) = self.0.reach(self::form("/form", form)?)?;
        Ok(vec![plain(least)?, plain(most)?])
    }
}

/// A word for a form that there is not.
#[derive(Debug, thiserror::Error)]
#[error("A salt loading cannot be stated as \"{0}\".")]
struct UnknownForm(String);

impl Diagnose for UnknownForm {
    fn code(&self) -> &'static str {
        "unknown-salt-form"
    }

    fn help(&self) -> Cow<'static, str> {
        let known: Vec<&str> = FORMS.iter().map(|(name, _)| *name).collect();
        format!("Known: {}.", known.join(", ")).into()
    }
}

/// The words of the core's documents.
const FORMS: [(&str, SaltForm); 7] = [
    ("scooped", SaltForm::Scooped),
    ("per-volume", SaltForm::PerVolume),
    ("of-base", SaltForm::OfBase),
    ("of-finished", SaltForm::OfFinished),
    ("finished-density", SaltForm::FinishedDensity),
    ("piece-mass", SaltForm::PieceMass),
    ("sink-density", SaltForm::SinkDensity),
];

fn form(path: &str, word: &str) -> Result<SaltForm, Refused> {
    let known = FORMS.iter().find(|(name, _)| *name == word);
    known.map(|(_, form)| *form).ok_or_else(|| Refused::at(path, &UnknownForm(shown(word))))
}

/// A word as a message can hold it: cut short, without control characters.
fn shown(word: &str) -> String {
    word.chars().filter(|c| !c.is_control()).take(40).collect()
}

fn loading(form: SaltForm, value: f64) -> Result<SaltLoading, Refused> {
    Ok(match form {
        SaltForm::Scooped => SaltLoading::Scooped(share(value)),
        SaltForm::PerVolume => SaltLoading::PerVolume(grams_per_milliliter(value)),
        SaltForm::OfBase => SaltLoading::OfBase(share(value)),
        SaltForm::OfFinished => SaltLoading::OfFinished(share(value)),
        SaltForm::FinishedDensity => SaltLoading::FinishedDensity(grams_per_milliliter(value)),
        SaltForm::PieceMass => SaltLoading::PieceMass(grams(value)),
        SaltForm::SinkDensity => SaltLoading::SinkDensity(grams_per_milliliter(value)),
        other => return Err(Refused::at("/form", &UnknownForm(other.to_string()))),
    })
}

fn plain(loading: SaltLoading) -> Result<f64, Refused> {
    match loading {
        SaltLoading::Scooped(ratio)
        | SaltLoading::OfBase(ratio)
        | SaltLoading::OfFinished(ratio) => Ok(ratio.value),
        SaltLoading::PerVolume(density)
        | SaltLoading::FinishedDensity(density)
        | SaltLoading::SinkDensity(density) => Ok(in_grams_per_milliliter(density)),
        SaltLoading::PieceMass(mass) => Ok(in_grams(mass)),
        other => Err(Refused::at("/form", &UnknownForm(other.form().to_string()))),
    }
}
