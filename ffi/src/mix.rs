//! Mixes: the masses of materials in one vessel.

use std::ffi::c_char;
use std::mem::MaybeUninit;
use std::ptr;
use std::sync::Arc;

use pourwright::material::{Drop, Material as CoreMaterial};
use pourwright::mix::{MaterialId, Materials, Mix as CoreMix};
use pourwright::quantity::{MassDensity, Measurable, Measured};

use crate::book::Book;
use crate::error::{ArgumentError, Error, Failure, Refused};
use crate::guard::{guard, guard_or};
use crate::memory::{array, finite, given, text};
use crate::number::{
    celsius, grams, in_grams, in_grams_per_milliliter, in_milliliters, kind, per_kelvin, phase,
};
use crate::range::{Range, SHARE_BELOW_1, true_density};
use crate::scalar::{believable, not_negative};

/// A plastisol as a cup measures it.
pub const POUR_LIQUID: i32 = 1;
/// A plastisol as a piece weighs it.
pub const POUR_FUSED: i32 = 2;

/// Liquid PVC-in-plasticizer, the base.
pub const POUR_PLASTISOL: i32 = 1;
/// Plasticizer that makes the piece softer.
pub const POUR_SOFTENER: i32 = 2;
/// What makes the piece harder.
pub const POUR_HARDENER: i32 = 3;
/// Heat stabilizer.
pub const POUR_STABILIZER: i32 = 4;
/// Liquid color.
pub const POUR_COLORANT: i32 = 5;
/// Pearl or another powder pigment.
pub const POUR_PEARL: i32 = 6;
/// Cut film glitter.
pub const POUR_FLAKE: i32 = 7;
/// Salt, for weight.
pub const POUR_SALT: i32 = 8;
/// Scent or oil.
pub const POUR_SCENT: i32 = 9;
/// Anything else.
pub const POUR_OTHER: i32 = 10;

/// A material. Set all to 0 first: 0 stands for "not known".
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct Material {
    /// Its name, ended by a NUL. It is copied.
    pub name: *const c_char,
    /// True density at 20 °C; of a plastisol, that of the liquid.
    pub density_g_per_ml: f64,
    /// Density of a fused plastisol; the liquid one where 0.
    pub fused_g_per_ml: f64,
    /// Density of a powder in a level spoon.
    pub as_scooped_g_per_ml: f64,
    /// Mass of one drop of a liquid; 1/20 mL (pharmacy practice) where 0.
    pub drop_g: f64,
    /// Volumetric thermal expansion; none where 0.
    pub expansion_per_kelvin: f64,
    /// What it is for: `POUR_PLASTISOL` to `POUR_OTHER`.
    pub kind: i32,
    /// Not used; 0.
    pub reserved: u32,
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

    /// Puts `held` in the place of what is there, unless all of it together is more than is believed: then the mix
    /// stays as it was.
    fn hold(&mut self, name: &str, held: CoreMix) -> Result<(), Failure> {
        if !believable(held.mass().si()) {
            let grams = in_grams(held.mass());
            return Err(Failure::at(name, &ArgumentError::TooMuch { grams }));
        }
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
    pub(crate) unsafe fn read(&self, at: &str) -> Result<CoreMaterial, Failure> {
        // SAFETY: as this function asks.
        let name = unsafe { text(&format!("{at}/name"), self.name)? };
        let mut material = CoreMaterial::new(name, kind(&format!("{at}/kind"), self.kind)?);
        let density =
            |field: &str, number: f64| -> Result<Option<Measured<MassDensity>>, Failure> {
                let path = format!("{at}/{field}");
                if finite(&path, number)? == 0.0 {
                    return Ok(None);
                }
                Ok(Some(Measured::exact(true_density(&path, number)?.get())))
            };
        material.density = density("density_g_per_ml", self.density_g_per_ml)?;
        material.fused = density("fused_g_per_ml", self.fused_g_per_ml)?;
        material.as_scooped = density("as_scooped_g_per_ml", self.as_scooped_g_per_ml)?;
        let drop = not_negative(&format!("{at}/drop_g"), self.drop_g)?;
        material.drop = (drop != 0.0).then(|| Drop::Mass(Measured::exact(grams(drop))));
        let path = format!("{at}/expansion_per_kelvin");
        let expansion = not_negative(&path, self.expansion_per_kelvin)?;
        material.expansion = (expansion != 0.0).then(|| Measured::exact(per_kelvin(expansion)));
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
        let mass = grams(finite("mass_g", mass_g)?);
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
        let mass = grams(finite("mass_g", mass_g)?);
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
        given("mass_g", mass_g.as_deref_mut())?.write(in_grams(mix.held.mass()));
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
        mass_g.write(in_grams(mix.held.mass_of(material)));
        Ok(())
    })
}

/// Volume of the mix at a temperature, without voids: V = Σ (m/ρ)(1 + α (T − 20 °C)).
///
/// `as_phase` is `POUR_LIQUID` or `POUR_FUSED`; `at_celsius` is from -273.15 to 400. Where a material's expansion is
/// not known, none is reckoned with.
#[unsafe(no_mangle)]
pub extern "C" fn pour_mix_volume(
    mix: Option<&Mix>,
    as_phase: i32,
    at_celsius: f64,
    volume_ml: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut volume_ml = volume_ml;
    guard(error, &mut || {
        let mix = given("mix", mix)?;
        let volume_ml = given("volume_ml", volume_ml.as_deref_mut())?;
        let (phase, at) = (phase("as_phase", as_phase)?, celsius(temperature(at_celsius)?));
        let volume = mix.held.volume_at(&mix.materials, phase, at).in_parameter("mix")?;
        volume_ml.write(in_milliliters(volume));
        Ok(())
    })
}

/// Density of the mix at a temperature: M/V · (1 − voids), V as in `pour_mix_volume`; `voids` is 0 to below 1.
#[unsafe(no_mangle)]
pub extern "C" fn pour_mix_density(
    mix: Option<&Mix>,
    as_phase: i32,
    at_celsius: f64,
    voids: f64,
    density_g_per_ml: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut density_g_per_ml = density_g_per_ml;
    guard(error, &mut || {
        let mix = given("mix", mix)?;
        let found = given("density_g_per_ml", density_g_per_ml.as_deref_mut())?;
        let (phase, at) = (phase("as_phase", as_phase)?, celsius(temperature(at_celsius)?));
        let voids = SHARE_BELOW_1.check("voids", voids)?;
        let density = mix.held.density(&mix.materials, phase, at, voids).in_parameter("mix")?;
        found.write(in_grams_per_milliliter(density));
        Ok(())
    })
}

/// A temperature that a mix can have.
fn temperature(at_celsius: f64) -> Result<f64, Failure> {
    Range::Within(-273.15, 400.0).check("at_celsius", at_celsius)
}

/// Frees a mix. Null is let pass.
#[unsafe(no_mangle)]
pub extern "C" fn pour_mix_free(mix: Option<Box<Mix>>) {
    guard_or((), || drop(mix));
}
