//! Mixes: the masses of materials in one vessel.

use std::ffi::c_char;
use std::mem::MaybeUninit;
use std::ptr;
use std::sync::Arc;

use pourwright::json::Name;
use pourwright::material::{Drop, Material as CoreMaterial};
use pourwright::mix::{MaterialId, Materials, Mix as CoreMix, MixError, Phase};
use pourwright::parameter::{Parameter, PlainUnit};
use pourwright::quantity::{Mass, Measurable, Measured, ThermodynamicTemperature};
use pourwright::table::plain;

use crate::book::Book;
use crate::call::Call;
use crate::error::Error;
use crate::failure::{ArgumentError, Failure, Refused, keep, together};
use crate::guard::{guard, guard_or};
use crate::memory::{array, check_size, finite, given, text};

/// A material. Begin with `POUR_MATERIAL_INIT`, in which everything is omitted: what is omitted is not known.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct Material {
    /// Size of this struct in bytes, as the macro sets it.
    pub size: usize,
    /// Its name, ended by a NUL: 1 to 80 characters on one line, each of which shows. It is copied.
    pub name: *const c_char,
    /// True density at 20 °C, 0.001 to 25; of a plastisol, that of the liquid.
    pub density_g_per_ml: f64,
    /// Density of a fused plastisol, 0.001 to 25. Default: as the liquid.
    pub fused_g_per_ml: f64,
    /// Bulk density of a powder, 0.001 to 25, level in the spoon and not tapped.
    pub as_scooped_g_per_ml: f64,
    /// Mass of one drop of a liquid, 1e-12 to 1e15. Default: 1/20 mL of it (pharmacy practice).
    pub drop_mass_g: f64,
    /// Volumetric thermal expansion, 0 to 0.01. Default: none.
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
        together! {
            book = given("book", book);
            mix = given("mix", mix.as_deref_mut());
        }
        let materials = Arc::clone(book.materials());
        mix.write(Box::new(Mix { materials, held: CoreMix::new() }));
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
        // SAFETY: the header asks for an array of `count` materials, or null.
        let materials = unsafe { materials_of(materials, count) };
        together! {
            materials = materials;
            out = given("mix", mix.as_deref_mut());
        }
        let (mut read, mut failures) = (Vec::with_capacity(materials.len()), Vec::new());
        for (index, material) in materials.iter().enumerate() {
            // SAFETY: the header asks for a name that ends, or null.
            unsafe { read.extend(material.read(&format!("materials/{index}"), &mut failures)) };
        }
        let table = Materials::new(read);
        let names = || table.iter().map(|(_, material)| material.name.as_str());
        for (name, _) in names().zip(names().skip(1)).filter(|(one, next)| one == next) {
            let twice = ArgumentError::NameTwice(name.to_owned());
            failures.push(Failure::at("materials", &twice));
        }
        if !failures.is_empty() {
            return Err(Failure::all(failures));
        }
        out.write(Box::new(Mix { materials: Arc::new(table), held: CoreMix::new() }));
        Ok(())
    })
}

/// The array of materials, each of which begins with its size.
///
/// # Safety
/// As [`array`].
unsafe fn materials_of<'a>(
    pointer: *const Material,
    count: usize,
) -> Result<&'a [Material], Failure> {
    if count > 0 {
        // SAFETY: as this function asks. The size of the first is looked at before the others are where it says.
        unsafe { check_size("materials", "materials/0/size", pointer)? };
    }
    // SAFETY: as this function asks.
    unsafe { array("materials", pointer, count) }
}

impl Material {
    /// The material, or none and what is wrong with it added to `failures`.
    ///
    /// # Safety
    /// As [`text`], for the name.
    unsafe fn read(&self, at: &str, failures: &mut Vec<Failure>) -> Option<CoreMaterial> {
        let path = |field: &str| format!("{at}/{field}");
        // SAFETY: it can be read.
        keep(failures, unsafe { check_size(at, &path("size"), self) });
        // SAFETY: as this function asks.
        let name = unsafe { text(&path("name"), self.name) };
        let name = name.and_then(|name| {
            Name::new(name).map_err(|fault| Failure::of_fault(&path("name"), fault))
        });
        let name = keep(failures, name);
        let mut call = Call::new("");
        let kind = call.word(&path("kind"), Parameter::Kind, self.kind);
        let mut number = |field: &str, parameter: Parameter, plain: f64| {
            let si = parameter.unit().to_si(plain::given(plain)?);
            keep(failures, parameter.check_si(si).in_parameter(&path(field)))
        };
        let density = number("density_g_per_ml", Parameter::MaterialDensity, self.density_g_per_ml);
        let fused = number("fused_g_per_ml", Parameter::FusedDensity, self.fused_g_per_ml);
        let as_scooped =
            number("as_scooped_g_per_ml", Parameter::AsScooped, self.as_scooped_g_per_ml);
        let drop = number("drop_mass_g", Parameter::DropMass, self.drop_mass_g);
        let expansion =
            number("expansion_per_kelvin", Parameter::MaterialExpansion, self.expansion_per_kelvin);
        let Some(kind) = kind else {
            failures.push(call.failure());
            return None;
        };
        let mut material = CoreMaterial::new(name?.0, kind);
        material.density = density.map(|si| Measured::exact(Measurable::from_si(si)));
        material.fused = fused.map(|si| Measured::exact(Measurable::from_si(si)));
        material.as_scooped = as_scooped.map(|si| Measured::exact(Measurable::from_si(si)));
        material.drop = drop.map(|si| Drop::Mass(Measured::exact(Mass::from_si(si))));
        material.expansion = expansion.map(|si| Measured::exact(Measurable::from_si(si)));
        Some(material)
    }
}

/// Adds a mass of a material, 0 to 1e15 g: nothing can be taken out of a mix again.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_mix_add(
    mix: Option<&mut Mix>,
    material: *const c_char,
    mass_g: f64,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut mix = mix;
    guard(error, &mut || {
        // SAFETY: the header asks for a text that ends, or null.
        let name = unsafe { text("material", material) };
        together! {
            mix = given("mix", mix.as_deref_mut());
            name = name;
        }
        together! {
            material = mix.find(name);
            mass = mass(mass_g);
        }
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
        together! {
            mix = given("mix", mix.as_deref_mut());
            mass = mass(mass_g);
            drawn = given("drawn", drawn.as_deref_mut());
        }
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
        together! {
            mix = given("mix", mix.as_deref_mut());
            factor = finite("factor", factor);
        }
        let scaled = mix.held.scaled(factor).in_parameter("factor")?;
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
        together! {
            mix = given("mix", mix);
            mass_g = given("mass_g", mass_g.as_deref_mut());
        }
        mass_g.write(PlainUnit::Gram.from_si(mix.held.mass().si()));
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
        // SAFETY: the header asks for a text that ends, or null.
        let name = unsafe { text("material", material) };
        together! {
            mix = given("mix", mix);
            name = name;
            mass_g = given("mass_g", mass_g.as_deref_mut());
        }
        let material = mix.find(name)?;
        mass_g.write(PlainUnit::Gram.from_si(mix.held.mass_of(material).si()));
        Ok(())
    })
}

/// Volume of the mix at a temperature, without voids: V = Σ (m/ρ)(1 + α (T − 20 °C)).
///
/// `phase` is `POUR_PHASE_LIQUID` or `POUR_PHASE_FUSED`; 0 omits it: fused. `temperature_celsius` is -73 to 427; 20 °C
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
        together! {
            mix = given("mix", mix);
            phase = phase_of(phase);
            at = temperature(temperature_celsius);
            volume_ml = given("volume_ml", volume_ml.as_deref_mut());
        }
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
        together! {
            mix = given("mix", mix);
            phase = phase_of(phase);
            at = temperature(temperature_celsius);
            voids = Parameter::Voids.check_si(plain::given(voids).unwrap_or(0.0)).in_parameter("voids");
            found = given("density_g_per_ml", density_g_per_ml.as_deref_mut());
        }
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

/// The phase by its number, fused where that is 0.
fn phase_of(phase: i32) -> Result<Phase, Failure> {
    let mut call = Call::new("");
    let word = call.optional_word("phase", Parameter::Phase, phase);
    word.map(|word| word.unwrap_or(Phase::Fused)).ok_or_else(|| call.failure())
}

/// The temperature at which a mix is asked for.
fn temperature(celsius: f64) -> Result<ThermodynamicTemperature, Failure> {
    let celsius = plain::given(celsius).unwrap_or(20.0);
    let si = Parameter::Temperature.check_si(PlainUnit::Celsius.to_si(celsius));
    Ok(Measurable::from_si(si.in_parameter("temperature_celsius")?))
}

/// Why a mix has no volume or no density.
fn why(error: &MixError) -> Failure {
    Failure::of("mix", error)
}

/// Frees a mix. Null is let pass.
#[unsafe(no_mangle)]
pub extern "C" fn pour_mix_free(mix: Option<Box<Mix>>) {
    guard_or((), || drop(mix));
}
