//! Mixes: the masses of materials in one vessel.

use std::ffi::c_char;
use std::mem::MaybeUninit;
use std::ptr;
use std::sync::Arc;

use pourwright::Diagnose;
use pourwright::material::{Drop, Material as CoreMaterial};
use pourwright::mix::{MaterialId, Materials, Mix as CoreMix, MixError, Phase};
use pourwright::parameter::{Parameter, PlainUnit};
use pourwright::quantity::{Mass, Measurable, Measured, ThermodynamicTemperature};
use pourwright::table::plain;

use crate::book::Book;
use crate::call::Call;
use crate::error::Error;
use crate::failure::{ArgumentError, Failure, Refused};
use crate::guard::{guard, guard_or};
use crate::memory::{array, finite, given, text};

/// A material. Begin with `POUR_MATERIAL_INIT`, in which everything is omitted: what is omitted is not known.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct Material {
    /// Its name, ended by a NUL. It is copied.
    pub name: *const c_char,
    /// True density at 20 °C; of a plastisol, that of the liquid.
    pub density_g_per_ml: f64,
    /// Density of a fused plastisol. Default: as the liquid.
    pub fused_g_per_ml: f64,
    /// Bulk density of a powder, level in the spoon and not tapped.
    pub as_scooped_g_per_ml: f64,
    /// Mass of one drop of a liquid. Default: 1/20 mL of it (pharmacy practice).
    pub drop_mass_g: f64,
    /// Volumetric thermal expansion. Default: none.
    pub expansion_per_kelvin: f64,
    /// Kind of material: one of `POUR_KIND_...`.
    pub kind: i32,
}

/// Masses of materials in one vessel: the conserved thing that all maths works on.
///
/// One thread at a time may use it; it may move from one to another.
pub struct Mix {
    materials: Arc<Materials>,
    held: CoreMix,
}

impl Mix {
    fn find(&self, name: &str) -> Result<MaterialId, Failure> {
        let found = self.materials.find(name);
        found.ok_or_else(|| Failure::at("material", &ArgumentError::NoMaterial(name.to_owned())))
    }

    /// Puts `held` in the place of what is there, unless it weighs more than a mass may: then the mix stays as it was.
    fn hold(&mut self, name: &str, held: CoreMix) -> Result<(), Failure> {
        Parameter::Mass.check_si(held.mass().si()).in_parameter(name)?;
        self.held = held;
        Ok(())
    }

    fn with(&self, held: CoreMix) -> Box<Self> {
        Box::new(Self { materials: Arc::clone(&self.materials), held })
    }
}

/// Makes an empty mix of the materials of a book. The book may be freed before the mix.
#[unsafe(no_mangle)]
pub extern "C" fn pour_mix_of_book(
    book: Option<&Book>,
    mix: Option<&mut MaybeUninit<Box<Mix>>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut mix = mix;
    guard(error, &mut || {
        let materials = Arc::clone(given("book", book)?.materials());
        given("mix", mix.as_deref_mut())?.write(Box::new(Mix { materials, held: CoreMix::new() }));
        Ok(())
    })
}

/// Makes an empty mix of materials of the host's own: an array of `count`.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_mix_of_materials(
    materials: *const Material,
    count: usize,
    mix: Option<&mut MaybeUninit<Box<Mix>>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut mix = mix;
    guard(error, &mut || {
        let out = given("mix", mix.as_deref_mut())?;
        // SAFETY: the header asks for an array of `count` materials, or null.
        let given = unsafe { array("materials", materials, count)? };
        let mut read = Vec::with_capacity(given.len());
        for (index, material) in given.iter().enumerate() {
            // SAFETY: the header asks for a name that ends, or null.
            read.push(unsafe { material.read(&format!("materials/{index}"))? });
        }
        let table = Materials::new(read);
        let names = || table.iter().map(|(_, material)| material.name.as_str());
        if let Some((name, _)) = names().zip(names().skip(1)).find(|(one, next)| one == next) {
            return Err(Failure::at("materials", &ArgumentError::NameTwice(name.to_owned())));
        }
        out.write(Box::new(Mix { materials: Arc::new(table), held: CoreMix::new() }));
        Ok(())
    })
}

impl Material {
    /// # Safety
    /// As [`text`], for the name.
    unsafe fn read(&self, at: &str) -> Result<CoreMaterial, Failure> {
        // SAFETY: as this function asks.
        let name = unsafe { text(&format!("{at}/name"), self.name)? };
        let mut call = Call::new("");
        let kind = call.word(&format!("{at}/kind"), Parameter::Kind, self.kind);
        let Some(kind) = kind else { return Err(call.failure()) };
        let mut material = CoreMaterial::new(name, kind);
        let number = |field: &str, parameter: Parameter, plain: f64| {
            let si = plain::given(plain).map(|plain| parameter.unit().to_si(plain));
            let path = format!("{at}/{field}");
            si.map(|si| parameter.check_si(si).in_parameter(&path)).transpose()
        };
        let density = |field, parameter, plain| {
            let si = number(field, parameter, plain)?;
            Ok::<_, Failure>(si.map(|si| Measured::exact(Measurable::from_si(si))))
        };
        material.density =
            density("density_g_per_ml", Parameter::MaterialDensity, self.density_g_per_ml)?;
        material.fused = density("fused_g_per_ml", Parameter::FusedDensity, self.fused_g_per_ml)?;
        material.as_scooped =
            density("as_scooped_g_per_ml", Parameter::AsScooped, self.as_scooped_g_per_ml)?;
        let drop = number("drop_mass_g", Parameter::DropMass, self.drop_mass_g)?;
        material.drop = drop.map(|drop| Drop::Mass(Measured::exact(Mass::from_si(drop))));
        let expansion = number(
            "expansion_per_kelvin",
            Parameter::MaterialExpansion,
            self.expansion_per_kelvin,
        )?;
        material.expansion =
            expansion.map(|expansion| Measured::exact(Measurable::from_si(expansion)));
        Ok(material)
    }
}

/// Adds a mass of a material, 0 or more: nothing can be taken out of a mix again.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_mix_add(
    mix: Option<&mut Mix>,
    material: *const c_char,
    mass_g: f64,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut mix = mix;
    guard(error, &mut || {
        let mix = given("mix", mix.as_deref_mut())?;
        // SAFETY: the header asks for a text that ends, or null.
        let material = mix.find(unsafe { text("material", material)? })?;
        let mass = mass(mass_g)?;
        let mut sum = mix.held.clone();
        sum.add(material, mass).in_parameter("mass_g")?;
        mix.hold("mass_g", sum)
    })
}

/// Takes a mass of the well-stirred mix out, as a mix of its own that the host frees.
#[unsafe(no_mangle)]
pub extern "C" fn pour_mix_draw(
    mix: Option<&mut Mix>,
    mass_g: f64,
    drawn: Option<&mut MaybeUninit<Box<Mix>>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let (mut mix, mut drawn) = (mix, drawn);
    guard(error, &mut || {
        let mix = given("mix", mix.as_deref_mut())?;
        let drawn = given("drawn", drawn.as_deref_mut())?;
        let mass = mass(mass_g)?;
        let taken = mix.held.draw(mass).in_parameter("mass_g")?;
        drawn.write(mix.with(taken));
        Ok(())
    })
}

/// Pours `other` into `mix`; `other` stays as it is. Both are made of one book, or of lists with the same numbers.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_mix_merge(
    mix: Option<&mut Mix>,
    other: *const Mix,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut mix = mix;
    guard(error, &mut || {
        let mix = given("mix", mix.as_deref_mut())?;
        if ptr::eq(mix, other) {
            return Err(Failure::at("other", &ArgumentError::SameMix));
        }
        // SAFETY: the header asks for a mix, or null; that it is not the other one was just seen.
        let other = given("other", unsafe { other.as_ref() })?;
        if !Arc::ptr_eq(&mix.materials, &other.materials) && mix.materials != other.materials {
            return Err(Failure::at("other", &ArgumentError::OtherMaterials));
        }
        let mut sum = mix.held.clone();
        sum.merge(&other.held).in_parameter("other")?;
        mix.hold("other", sum)
    })
}

/// Makes the mix `factor` times as much, 0 or more.
#[unsafe(no_mangle)]
pub extern "C" fn pour_mix_scale(
    mix: Option<&mut Mix>,
    factor: f64,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut mix = mix;
    guard(error, &mut || {
        let mix = given("mix", mix.as_deref_mut())?;
        let scaled = mix.held.scaled(finite("factor", factor)?).in_parameter("factor")?;
        mix.hold("factor", scaled)
    })
}

/// The mass of the mix.
#[unsafe(no_mangle)]
pub extern "C" fn pour_mix_mass(
    mix: Option<&Mix>,
    mass_g: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut mass_g = mass_g;
    guard(error, &mut || {
        let mix = given("mix", mix)?;
        given("mass_g", mass_g.as_deref_mut())?
            .write(PlainUnit::Gram.from_si(mix.held.mass().si()));
        Ok(())
    })
}

/// How much of a material is in the mix.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_mix_mass_of(
    mix: Option<&Mix>,
    material: *const c_char,
    mass_g: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut mass_g = mass_g;
    guard(error, &mut || {
        let mix = given("mix", mix)?;
        let mass_g = given("mass_g", mass_g.as_deref_mut())?;
        // SAFETY: the header asks for a text that ends, or null.
        let material = mix.find(unsafe { text("material", material)? })?;
        mass_g.write(PlainUnit::Gram.from_si(mix.held.mass_of(material).si()));
        Ok(())
    })
}

/// Volume of the mix at a temperature, without voids: V = Σ (m/ρ)(1 + α (T − 20 °C)).
///
/// `phase` is `POUR_PHASE_LIQUID` or `POUR_PHASE_FUSED`; 0 omits it: fused. `temperature_celsius` is -50 to 400; 20 °C
/// where it is omitted. A material whose expansion is not known does not expand.
#[unsafe(no_mangle)]
pub extern "C" fn pour_mix_volume(
    mix: Option<&Mix>,
    phase: i32,
    temperature_celsius: f64,
    volume_ml: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut volume_ml = volume_ml;
    guard(error, &mut || {
        let mix = given("mix", mix)?;
        let volume_ml = given("volume_ml", volume_ml.as_deref_mut())?;
        let (phase, at) = state(phase, temperature_celsius)?;
        let volume = mix.held.volume_at(&mix.materials, phase, at).map_err(|error| why(&error))?;
        volume_ml.write(PlainUnit::Milliliter.from_si(volume.si()));
        Ok(())
    })
}

/// Density of the mix at a temperature: M/V · (1 − voids), V as in `pour_mix_volume`; `voids` is 0 to below 1, 0 where it
/// is omitted.
#[unsafe(no_mangle)]
pub extern "C" fn pour_mix_density(
    mix: Option<&Mix>,
    phase: i32,
    temperature_celsius: f64,
    voids: f64,
    density_g_per_ml: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut density_g_per_ml = density_g_per_ml;
    guard(error, &mut || {
        let mix = given("mix", mix)?;
        let found = given("density_g_per_ml", density_g_per_ml.as_deref_mut())?;
        let (phase, at) = state(phase, temperature_celsius)?;
        let voids = plain::given(voids).unwrap_or(0.0);
        let density = mix.held.density(&mix.materials, phase, at, voids);
        let density = density.map_err(|error| why(&error))?;
        found.write(PlainUnit::GramPerMilliliter.from_si(density.si()));
        Ok(())
    })
}

/// A mass that is added or drawn.
fn mass(mass_g: f64) -> Result<Mass, Failure> {
    let si = Parameter::Mass.check_si(PlainUnit::Gram.to_si(mass_g)).in_parameter("mass_g")?;
    Ok(Mass::from_si(si))
}

/// The phase and the temperature at which a mix is asked for.
fn state(phase: i32, celsius: f64) -> Result<(Phase, ThermodynamicTemperature), Failure> {
    let mut call = Call::new("");
    let Some(phase) = call.optional_word("phase", Parameter::Phase, phase) else {
        return Err(call.failure());
    };
    let celsius = plain::given(celsius).unwrap_or(20.0);
    let si = Parameter::Temperature.check_si(PlainUnit::Celsius.to_si(celsius));
    let at = Measurable::from_si(si.in_parameter("temperature_celsius")?);
    Ok((phase.unwrap_or(Phase::Fused), at))
}

/// Why a mix has no volume or no density.
fn why(error: &MixError) -> Failure {
    Failure::of(if error.parameter() == Some(Parameter::Voids) { "voids" } else { "mix" }, error)
}

/// Frees a mix. Null is let pass.
#[unsafe(no_mangle)]
pub extern "C" fn pour_mix_free(mix: Option<Box<Mix>>) {
    guard_or((), || drop(mix));
}
