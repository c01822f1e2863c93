//! The calculations of the table, on plain numbers and on columns of them.
//!
//! Made by `cargo run -p pourwright-generate`; do not edit.

#![allow(non_camel_case_types)]

use std::ffi::c_char;
use std::mem::MaybeUninit;

use pourwright::parameter::Parameter;
use pourwright::table::plain::{self, given};

use crate::call::Call;
use crate::column::{Inputs, Outputs, pour_column, pour_result_column};
use crate::error::Error;
use crate::guard::guard;
use crate::{call, memory};

/// Of `alike`: count.
pub const POUR_ALIKE_COUNT: i32 = 1;
/// Of `alike`: area.
pub const POUR_ALIKE_AREA: i32 = 2;

/// Of `form`: as-scooped.
pub const POUR_FORM_AS_SCOOPED: i32 = 1;
/// Of `form`: per-volume.
pub const POUR_FORM_PER_VOLUME: i32 = 2;
/// Of `form`: of-base.
pub const POUR_FORM_OF_BASE: i32 = 3;
/// Of `form`: of-finished.
pub const POUR_FORM_OF_FINISHED: i32 = 4;
/// Of `form`: finished-density.
pub const POUR_FORM_FINISHED_DENSITY: i32 = 5;
/// Of `form`: piece-mass.
pub const POUR_FORM_PIECE_MASS: i32 = 6;
/// Of `form`: sink-density.
pub const POUR_FORM_SINK_DENSITY: i32 = 7;

/// Of `kind`: plastisol.
pub const POUR_KIND_PLASTISOL: i32 = 1;
/// Of `kind`: softener.
pub const POUR_KIND_SOFTENER: i32 = 2;
/// Of `kind`: hardener.
pub const POUR_KIND_HARDENER: i32 = 3;
/// Of `kind`: stabilizer.
pub const POUR_KIND_STABILIZER: i32 = 4;
/// Of `kind`: colorant.
pub const POUR_KIND_COLORANT: i32 = 5;
/// Of `kind`: pearl.
pub const POUR_KIND_PEARL: i32 = 6;
/// Of `kind`: flake.
pub const POUR_KIND_FLAKE: i32 = 7;
/// Of `kind`: salt.
pub const POUR_KIND_SALT: i32 = 8;
/// Of `kind`: scent.
pub const POUR_KIND_SCENT: i32 = 9;
/// Of `kind`: other.
pub const POUR_KIND_OTHER: i32 = 10;

/// Of `measures`: us-customary.
pub const POUR_MEASURES_US_CUSTOMARY: i32 = 1;
/// Of `measures`: us-label.
pub const POUR_MEASURES_US_LABEL: i32 = 2;
/// Of `measures`: metric.
pub const POUR_MEASURES_METRIC: i32 = 3;
/// Of `measures`: imperial.
pub const POUR_MEASURES_IMPERIAL: i32 = 4;

/// Of `phase`: liquid.
pub const POUR_PHASE_LIQUID: i32 = 1;
/// Of `phase`: fused.
pub const POUR_PHASE_FUSED: i32 = 2;

/// Of `scale`: shore-00.
pub const POUR_SCALE_SHORE_00: i32 = 1;
/// Of `scale`: shore-a.
pub const POUR_SCALE_SHORE_A: i32 = 2;

/// Of `tool`: balance.
pub const POUR_TOOL_BALANCE: i32 = 1;
/// Of `tool`: cup.
pub const POUR_TOOL_CUP: i32 = 2;
/// Of `tool`: spoons.
pub const POUR_TOOL_SPOONS: i32 = 3;
/// Of `tool`: drops.
pub const POUR_TOOL_DROPS: i32 = 4;

/// Converts an amount as a person writes it, such as `1 1/4 cup` or `330 °F`, exactly, and rounds once.
///
/// What can be read two ways (`6 oz`, `1,25 cup`) is refused with both readings in the message.
///
/// `amount`: An amount as a person writes it: `1 1/4 cup`, `40 drops`, `330 °F`. 0 or above; a temperature
/// above absolute zero.
/// `to`: The unit of the answer, by trade symbol or UCUM code. A unit of the same dimension.
/// `measures`: The system of measures: what a cup, a spoon and a fluid ounce hold. Default: us-customary. One
/// of `POUR_MEASURES_...`; 0 omits it.
///
/// `value` receives: The number, in the unit of `to`.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_convert(
    amount: *const c_char,
    to: *const c_char,
    measures: i32,
    value: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut value = value;
    guard(error, &mut || {
        let mut call = Call::new("convert");
        let result = memory::given("value", value.as_deref_mut())?;
        // SAFETY: the header asks for a text that ends or an array so long, or null.
        let amount = unsafe { call.text("amount", Parameter::Amount, amount) };
        // SAFETY: the header asks for a text that ends or an array so long, or null.
        let to = unsafe { call.text("to", Parameter::To, to) };
        let measures = call.optional_word("measures", Parameter::Measures, measures);
        let (Some(amount), Some(to), Some(measures)) = (amount, to, measures) else { return Err(call.failure()) };
        let inputs = plain::Convert {
            amount,
            to,
            measures,
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(found.value);
        Ok(())
    })
}

/// Mass of a volume: m = ρV.
///
/// The density is that of what fills the measure: a liquid's own, a powder's bulk density. For what a solid
/// displaces in a mix it is its true density.
///
/// `volume_ml`: Volume. Unit: mL; 0 to 1e15.
/// `density_g_per_ml`: Density, without voids. Unit: g/mL; 0.001 to 25.
///
/// `mass_g` receives: The mass. Unit: g.
#[unsafe(no_mangle)]
pub extern "C" fn pour_mass_of_volume(
    volume_ml: f64,
    density_g_per_ml: f64,
    mass_g: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut mass_g = mass_g;
    guard(error, &mut || {
        let mut call = Call::new("mass_of_volume");
        let result = memory::given("mass_g", mass_g.as_deref_mut())?;
        let volume_ml = call.number("volume_ml", Parameter::Volume, volume_ml);
        let density_g_per_ml = call.number("density_g_per_ml", Parameter::Density, density_g_per_ml);
        let (Some(volume_ml), Some(density_g_per_ml)) = (volume_ml, density_g_per_ml) else { return Err(call.failure()) };
        let inputs = plain::MassOfVolume {
            volume_ml,
            density_g_per_ml,
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(found.mass_g);
        Ok(())
    })
}

/// The columns of `pour_mass_of_volume_n`: the parameters of `pour_mass_of_volume`. Set all to 0 first: a
/// parameter that may be omitted has no column then. A word counts for all rows.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_mass_of_volume_columns {
    /// Volume.
    pub volume_ml: pour_column,
    /// Density, without voids.
    pub density_g_per_ml: pour_column,
}

/// Where `pour_mass_of_volume_n` writes its results. Set all to 0 first: what has no column is not written.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_mass_of_volume_result_columns {
    /// The mass. Unit: g.
    pub mass_g: pour_result_column,
}

/// `pour_mass_of_volume` for every row.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_mass_of_volume_n(
    rows: usize,
    columns: Option<&pour_mass_of_volume_columns>,
    results: Option<&pour_mass_of_volume_result_columns>,
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    guard(error, &mut || {
        let columns = memory::given("columns", columns)?;
        let results = memory::given("results", results)?;
        let inputs = [
            columns.volume_ml.required("volume_ml"),
            columns.density_g_per_ml.required("density_g_per_ml"),
        ];
        let outputs = [
            results.mass_g.named("mass_g"),
        ];
        // SAFETY: the header asks for columns of `rows` numbers, or null.
        let (inputs, outputs) =
            unsafe { (Inputs::new(rows, inputs)?, Outputs::new(rows, outputs, statuses)?) };
        outputs.map(inputs, |[volume_ml, density_g_per_ml]| {
            let inputs = plain::MassOfVolume {
                volume_ml,
                density_g_per_ml,
            };
            let found = inputs.calculate().map_err(call::row_status)?;
            Ok([found.mass_g])
        });
        Ok(())
    })
}

/// One row of `parts`. The parts of the mix: of each its mass and its true density. At least one has a mass
/// above 0.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_parts_row {
    /// Mass of one part of a mix. Unit: g; 0 to 1e15.
    pub part_mass_g: f64,
    /// True density of one part of a mix. Unit: g/mL; 0.001 to 25.
    pub part_density_g_per_ml: f64,
}

/// Density at 20 °C of parts that are mixed: ρ = Σm/(Σm/ρ) · (1 − φ), φ the voids.
///
/// Solids count with their true density. Ideal additivity of volumes; source: conservation of mass and volume.
///
/// `parts`: The parts of the mix: of each its mass and its true density. At least one has a mass above 0. 1 to
/// 1000 of them.
/// `voids`: Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0.
///
/// `density_g_per_ml` receives: Density of the mix, voids counted. Unit: g/mL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_density_of_parts(
    parts: *const pour_parts_row,
    parts_count: usize,
    voids: f64,
    density_g_per_ml: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut density_g_per_ml = density_g_per_ml;
    guard(error, &mut || {
        let mut call = Call::new("density_of_parts");
        let result = memory::given("density_g_per_ml", density_g_per_ml.as_deref_mut())?;
        // SAFETY: the header asks for a text that ends or an array so long, or null.
        let parts = unsafe { call.rows("parts", Parameter::Parts, parts, parts_count) };
        let Some(parts) = parts else { return Err(call.failure()) };
        let inputs = plain::DensityOfParts {
            parts,
            voids: given(voids),
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(found.density_g_per_ml);
        Ok(())
    })
}

/// The input of `pour_salt_convert`. Begin with `POUR_SALT_CONVERT_INPUT_INIT`, in which everything is omitted.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_salt_convert_input {
    /// Volume of the base, cold and liquid, as a cup measures it. Unit: mL; above 0 to 1e15.
    pub base_volume_ml: f64,
    /// Density of the base, cold and liquid, as a cup measures it. Unit: g/mL; 0.001 to 25.
    pub base_density_g_per_ml: f64,
    /// True density of the salt: 2.165 g/mL for sodium chloride. Unit: g/mL; 0.001 to 25.
    pub salt_density_g_per_ml: f64,
    /// The way in which the salt loading is stated. One of `POUR_FORM_...`.
    pub form: i32,
    /// The salt loading, as its form states it. Unit: any; in the unit of its form.
    pub loading: f64,
    /// The way in which the loading is to be stated. One of `POUR_FORM_...`.
    pub to_form: i32,
    /// Mass of the mix before salt; at least that of its base. Give its volume too. Unit: g; above 0 to 1e15.
    /// Default: the mass of its base.
    pub mix_mass_g: f64,
    /// Volume of the mix before salt at 20 °C. Give its mass too. Unit: mL; above 0 to 1e15. Default: as
    /// `base_volume_ml`.
    pub mix_volume_ml: f64,
    /// Volume of the mix before salt at shot temperature; at least the cold one. Unit: mL; above 0 to 1e15.
    /// Default: as `mix_volume_ml`.
    pub hot_volume_ml: f64,
    /// Temperature at which the mix is shot. Unit: °C; 20 to 400. Default: 20.
    pub shot_temperature_celsius: f64,
    /// Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0.
    pub voids: f64,
    /// Bulk density of the salt, level in the spoon; at most its true density. Only the form as-scooped needs
    /// it. Unit: g/mL; 0.001 to 25. Default: none.
    pub salt_as_scooped_g_per_ml: f64,
    /// Volumetric thermal expansion of the salt. Unit: 1/K; 0 to 0.01. Default: 0.
    pub salt_expansion_per_kelvin: f64,
    /// Softener that goes in with the salt, mass per mass of salt. Unit: 1; 0 to 10. Default: 0.
    pub softener_per_salt: f64,
    /// Density of the softener that goes in with the salt; needed with it. Unit: g/mL; 0.001 to 25. Default:
    /// none.
    pub softener_density_g_per_ml: f64,
    /// Volumetric thermal expansion of that softener. Unit: 1/K; 0 to 0.01. Default: 0.
    pub softener_expansion_per_kelvin: f64,
    /// Maximum share of salt in the finished mix, by true volume. Unit: 1; above 0 to below 1. Default: 0.3.
    pub most_solids: f64,
    /// Volume of one cavity. Unit: mL; above 0 to 1e15. It may be omitted.
    pub cavity_volume_ml: f64,
    /// Share of its contraction that a piece draws from the sprue while it cools. Where it is not known, 0.5
    /// counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). Unit: 1; 0 to 1.
    /// Default: 0.5.
    pub feed: f64,
    /// Mass of hook and weight on a piece; give its volume too. Unit: g; 0 to 1e15. Default: 0.
    pub hook_mass_g: f64,
    /// Volume that hook and weight displace; give their mass too. Unit: mL; 0 to 1e15. Default: 0.
    pub hook_volume_ml: f64,
}

/// The results of `pour_salt_convert`.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_salt_convert_result {
    /// The loading as `to_form` states it, in the unit of that form.
    pub loading: f64,
    /// Its lower bound where the feed matters and is not known; else the loading.
    pub loading_min: f64,
    /// Its upper bound where the feed matters and is not known; else the loading.
    pub loading_max: f64,
}

/// States a salt loading another way.
///
/// All ways go through the mass of salt per mass of base; the equations are those of the module `salt`. In
/// reach is what lies between no salt and the maximum that `most_solids` allows. Where a form that is about a
/// piece needs the feed and it is not known, the bounds are those without feed and fed in full.
#[unsafe(no_mangle)]
pub extern "C" fn pour_salt_convert(
    input: Option<&pour_salt_convert_input>,
    result: Option<&mut MaybeUninit<pour_salt_convert_result>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut result = result;
    guard(error, &mut || {
        let mut call = Call::new("salt_convert");
        let input = memory::given("input", input)?;
        let result = memory::given("result", result.as_deref_mut())?;
        let base_volume_ml = call.number("base_volume_ml", Parameter::BaseVolume, input.base_volume_ml);
        let base_density_g_per_ml = call.number("base_density_g_per_ml", Parameter::BaseDensity, input.base_density_g_per_ml);
        let salt_density_g_per_ml = call.number("salt_density_g_per_ml", Parameter::SaltDensity, input.salt_density_g_per_ml);
        let form = call.word("form", Parameter::Form, input.form);
        let loading = call.number("loading", Parameter::Loading, input.loading);
        let to_form = call.word("to_form", Parameter::ToForm, input.to_form);
        let (Some(base_volume_ml), Some(base_density_g_per_ml), Some(salt_density_g_per_ml), Some(form), Some(loading), Some(to_form)) = (base_volume_ml, base_density_g_per_ml, salt_density_g_per_ml, form, loading, to_form) else { return Err(call.failure()) };
        let inputs = plain::SaltConvert {
            base_volume_ml,
            base_density_g_per_ml,
            salt_density_g_per_ml,
            form,
            loading,
            to_form,
            mix_mass_g: given(input.mix_mass_g),
            mix_volume_ml: given(input.mix_volume_ml),
            hot_volume_ml: given(input.hot_volume_ml),
            shot_temperature_celsius: given(input.shot_temperature_celsius),
            voids: given(input.voids),
            salt_as_scooped_g_per_ml: given(input.salt_as_scooped_g_per_ml),
            salt_expansion_per_kelvin: given(input.salt_expansion_per_kelvin),
            softener_per_salt: given(input.softener_per_salt),
            softener_density_g_per_ml: given(input.softener_density_g_per_ml),
            softener_expansion_per_kelvin: given(input.softener_expansion_per_kelvin),
            most_solids: given(input.most_solids),
            cavity_volume_ml: given(input.cavity_volume_ml),
            feed: given(input.feed),
            hook_mass_g: given(input.hook_mass_g),
            hook_volume_ml: given(input.hook_volume_ml),
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(pour_salt_convert_result {
            loading: found.loading,
            loading_min: found.loading_min,
            loading_max: found.loading_max,
        });
        Ok(())
    })
}

/// The columns of `pour_salt_convert_n`: the parameters of `pour_salt_convert`. Set all to 0 first: a parameter
/// that may be omitted has no column then. A word counts for all rows.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_salt_convert_columns {
    /// Volume of the base, cold and liquid, as a cup measures it.
    pub base_volume_ml: pour_column,
    /// Density of the base, cold and liquid, as a cup measures it.
    pub base_density_g_per_ml: pour_column,
    /// True density of the salt: 2.165 g/mL for sodium chloride.
    pub salt_density_g_per_ml: pour_column,
    /// The way in which the salt loading is stated. One of `POUR_FORM_...`.
    pub form: i32,
    /// The salt loading, as its form states it.
    pub loading: pour_column,
    /// The way in which the loading is to be stated. One of `POUR_FORM_...`.
    pub to_form: i32,
    /// Mass of the mix before salt; at least that of its base. Give its volume too. May be omitted.
    pub mix_mass_g: pour_column,
    /// Volume of the mix before salt at 20 °C. Give its mass too. May be omitted.
    pub mix_volume_ml: pour_column,
    /// Volume of the mix before salt at shot temperature; at least the cold one. May be omitted.
    pub hot_volume_ml: pour_column,
    /// Temperature at which the mix is shot. May be omitted.
    pub shot_temperature_celsius: pour_column,
    /// Void fraction: share of the volume that is air. May be omitted.
    pub voids: pour_column,
    /// Bulk density of the salt, level in the spoon; at most its true density. Only the form as-scooped needs
    /// it. May be omitted.
    pub salt_as_scooped_g_per_ml: pour_column,
    /// Volumetric thermal expansion of the salt. May be omitted.
    pub salt_expansion_per_kelvin: pour_column,
    /// Softener that goes in with the salt, mass per mass of salt. May be omitted.
    pub softener_per_salt: pour_column,
    /// Density of the softener that goes in with the salt; needed with it. May be omitted.
    pub softener_density_g_per_ml: pour_column,
    /// Volumetric thermal expansion of that softener. May be omitted.
    pub softener_expansion_per_kelvin: pour_column,
    /// Maximum share of salt in the finished mix, by true volume. May be omitted.
    pub most_solids: pour_column,
    /// Volume of one cavity. May be omitted.
    pub cavity_volume_ml: pour_column,
    /// Share of its contraction that a piece draws from the sprue while it cools. Where it is not known, 0.5
    /// counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). May be omitted.
    pub feed: pour_column,
    /// Mass of hook and weight on a piece; give its volume too. May be omitted.
    pub hook_mass_g: pour_column,
    /// Volume that hook and weight displace; give their mass too. May be omitted.
    pub hook_volume_ml: pour_column,
}

/// Where `pour_salt_convert_n` writes its results. Set all to 0 first: what has no column is not written.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_salt_convert_result_columns {
    /// The loading as `to_form` states it, in the unit of that form.
    pub loading: pour_result_column,
    /// Its lower bound where the feed matters and is not known; else the loading.
    pub loading_min: pour_result_column,
    /// Its upper bound where the feed matters and is not known; else the loading.
    pub loading_max: pour_result_column,
}

/// `pour_salt_convert` for every row.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_salt_convert_n(
    rows: usize,
    columns: Option<&pour_salt_convert_columns>,
    results: Option<&pour_salt_convert_result_columns>,
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    guard(error, &mut || {
        let columns = memory::given("columns", columns)?;
        let results = memory::given("results", results)?;
        let mut call = Call::new("salt_convert");
        let form = call.word("form", Parameter::Form, columns.form);
        let to_form = call.word("to_form", Parameter::ToForm, columns.to_form);
        let (Some(form), Some(to_form)) = (form, to_form) else { return Err(call.failure()) };
        let inputs = [
            columns.base_volume_ml.required("base_volume_ml"),
            columns.base_density_g_per_ml.required("base_density_g_per_ml"),
            columns.salt_density_g_per_ml.required("salt_density_g_per_ml"),
            columns.loading.required("loading"),
            columns.mix_mass_g.optional("mix_mass_g"),
            columns.mix_volume_ml.optional("mix_volume_ml"),
            columns.hot_volume_ml.optional("hot_volume_ml"),
            columns.shot_temperature_celsius.optional("shot_temperature_celsius"),
            columns.voids.optional("voids"),
            columns.salt_as_scooped_g_per_ml.optional("salt_as_scooped_g_per_ml"),
            columns.salt_expansion_per_kelvin.optional("salt_expansion_per_kelvin"),
            columns.softener_per_salt.optional("softener_per_salt"),
            columns.softener_density_g_per_ml.optional("softener_density_g_per_ml"),
            columns.softener_expansion_per_kelvin.optional("softener_expansion_per_kelvin"),
            columns.most_solids.optional("most_solids"),
            columns.cavity_volume_ml.optional("cavity_volume_ml"),
            columns.feed.optional("feed"),
            columns.hook_mass_g.optional("hook_mass_g"),
            columns.hook_volume_ml.optional("hook_volume_ml"),
        ];
        let outputs = [
            results.loading.named("loading"),
            results.loading_min.named("loading_min"),
            results.loading_max.named("loading_max"),
        ];
        // SAFETY: the header asks for columns of `rows` numbers, or null.
        let (inputs, outputs) =
            unsafe { (Inputs::new(rows, inputs)?, Outputs::new(rows, outputs, statuses)?) };
        outputs.map(inputs, |[base_volume_ml, base_density_g_per_ml, salt_density_g_per_ml, loading, mix_mass_g, mix_volume_ml, hot_volume_ml, shot_temperature_celsius, voids, salt_as_scooped_g_per_ml, salt_expansion_per_kelvin, softener_per_salt, softener_density_g_per_ml, softener_expansion_per_kelvin, most_solids, cavity_volume_ml, feed, hook_mass_g, hook_volume_ml]| {
            let inputs = plain::SaltConvert {
                base_volume_ml,
                base_density_g_per_ml,
                salt_density_g_per_ml,
                form,
                loading,
                to_form,
                mix_mass_g: given(mix_mass_g),
                mix_volume_ml: given(mix_volume_ml),
                hot_volume_ml: given(hot_volume_ml),
                shot_temperature_celsius: given(shot_temperature_celsius),
                voids: given(voids),
                salt_as_scooped_g_per_ml: given(salt_as_scooped_g_per_ml),
                salt_expansion_per_kelvin: given(salt_expansion_per_kelvin),
                softener_per_salt: given(softener_per_salt),
                softener_density_g_per_ml: given(softener_density_g_per_ml),
                softener_expansion_per_kelvin: given(softener_expansion_per_kelvin),
                most_solids: given(most_solids),
                cavity_volume_ml: given(cavity_volume_ml),
                feed: given(feed),
                hook_mass_g: given(hook_mass_g),
                hook_volume_ml: given(hook_volume_ml),
            };
            let found = inputs.calculate().map_err(call::row_status)?;
            Ok([found.loading, found.loading_min, found.loading_max])
        });
        Ok(())
    })
}

/// The input of `pour_shot_fill`. Begin with `POUR_SHOT_FILL_INPUT_INIT`, in which everything is omitted.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_shot_fill_input {
    /// Number of cavities that a shot fills. 1 to 1000000.
    pub cavities: u32,
    /// Volume of one cavity. Unit: mL; above 0 to 1e15.
    pub cavity_volume_ml: f64,
    /// Density of the finished plastic at 20 °C, without voids. Unit: g/mL; 0.001 to 25.
    pub cold_density_g_per_ml: f64,
    /// Melt density at shot temperature, without voids; at most the cold one. Unit: g/mL; 0.001 to 25. Default:
    /// as `cold_density_g_per_ml`.
    pub hot_density_g_per_ml: f64,
    /// Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0.
    pub voids: f64,
    /// Share of its contraction that a piece draws from the sprue while it cools. Where it is not known, 0.5
    /// counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). Unit: 1; 0 to 1.
    /// Default: 0.5.
    pub feed: f64,
    /// Volume of the sprue. Unit: mL; 0 to 1e15. Default: 0.
    pub sprue_volume_ml: f64,
    /// Mass that topping off and holding add. Unit: g; 0 to 1e15. Default: 0.
    pub topped_mass_g: f64,
    /// Share of the cavity that this layer of a laminated piece fills. Unit: 1; above 0 to 1. Default: 1.
    pub layer_share: f64,
}

/// The results of `pour_shot_fill`.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_shot_fill_result {
    /// Mass of one shot, topping included. Unit: g.
    pub shot_mass_g: f64,
    /// Mass of all its pieces. Unit: g.
    pub pieces_mass_g: f64,
    /// Mass that is left as sprue once the pieces have been fed. Unit: g.
    pub sprue_mass_g: f64,
    /// Mass that sprue and topping are short of; 0 where the pieces are fed. Unit: g.
    pub missing_mass_g: f64,
    /// Mass of one piece, or of the layer in it. Unit: g.
    pub piece_mass_g: f64,
    /// The same without feed where the feed is not known; else the mass of the piece. Unit: g.
    pub piece_mass_min_g: f64,
    /// The same fed as far as sprue and topping reach where the feed is not known; else the mass of the piece.
    /// Unit: g.
    pub piece_mass_max_g: f64,
    /// Share of the contraction that was fed. Unit: 1.
    pub fed: f64,
}

/// Mass of one shot, and of its pieces.
///
/// Fill: (n V_c + V_s) ρ_hot (1 − φ) + m_top; a piece as in `pour_piece_mass`, as far as sprue and topping can
/// feed it; what is fed leaves the sprue. Where they cannot, the pieces sink in, and `missing_mass` is above 0.
#[unsafe(no_mangle)]
pub extern "C" fn pour_shot_fill(
    input: Option<&pour_shot_fill_input>,
    result: Option<&mut MaybeUninit<pour_shot_fill_result>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut result = result;
    guard(error, &mut || {
        let mut call = Call::new("shot_fill");
        let input = memory::given("input", input)?;
        let result = memory::given("result", result.as_deref_mut())?;
        let cavities = call.count("cavities", Parameter::Cavities, input.cavities);
        let cavity_volume_ml = call.number("cavity_volume_ml", Parameter::CavityVolume, input.cavity_volume_ml);
        let cold_density_g_per_ml = call.number("cold_density_g_per_ml", Parameter::ColdDensity, input.cold_density_g_per_ml);
        let (Some(cavities), Some(cavity_volume_ml), Some(cold_density_g_per_ml)) = (cavities, cavity_volume_ml, cold_density_g_per_ml) else { return Err(call.failure()) };
        let inputs = plain::ShotFill {
            cavities,
            cavity_volume_ml,
            cold_density_g_per_ml,
            hot_density_g_per_ml: given(input.hot_density_g_per_ml),
            voids: given(input.voids),
            feed: given(input.feed),
            sprue_volume_ml: given(input.sprue_volume_ml),
            topped_mass_g: given(input.topped_mass_g),
            layer_share: given(input.layer_share),
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(pour_shot_fill_result {
            shot_mass_g: found.shot_mass_g,
            pieces_mass_g: found.pieces_mass_g,
            sprue_mass_g: found.sprue_mass_g,
            missing_mass_g: found.missing_mass_g,
            piece_mass_g: found.piece_mass_g,
            piece_mass_min_g: found.piece_mass_min_g,
            piece_mass_max_g: found.piece_mass_max_g,
            fed: found.fed,
        });
        Ok(())
    })
}

/// The columns of `pour_shot_fill_n`: the parameters of `pour_shot_fill`. Set all to 0 first: a parameter that
/// may be omitted has no column then. A word counts for all rows.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_shot_fill_columns {
    /// Number of cavities that a shot fills.
    pub cavities: pour_column,
    /// Volume of one cavity.
    pub cavity_volume_ml: pour_column,
    /// Density of the finished plastic at 20 °C, without voids.
    pub cold_density_g_per_ml: pour_column,
    /// Melt density at shot temperature, without voids; at most the cold one. May be omitted.
    pub hot_density_g_per_ml: pour_column,
    /// Void fraction: share of the volume that is air. May be omitted.
    pub voids: pour_column,
    /// Share of its contraction that a piece draws from the sprue while it cools. Where it is not known, 0.5
    /// counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). May be omitted.
    pub feed: pour_column,
    /// Volume of the sprue. May be omitted.
    pub sprue_volume_ml: pour_column,
    /// Mass that topping off and holding add. May be omitted.
    pub topped_mass_g: pour_column,
    /// Share of the cavity that this layer of a laminated piece fills. May be omitted.
    pub layer_share: pour_column,
}

/// Where `pour_shot_fill_n` writes its results. Set all to 0 first: what has no column is not written.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_shot_fill_result_columns {
    /// Mass of one shot, topping included. Unit: g.
    pub shot_mass_g: pour_result_column,
    /// Mass of all its pieces. Unit: g.
    pub pieces_mass_g: pour_result_column,
    /// Mass that is left as sprue once the pieces have been fed. Unit: g.
    pub sprue_mass_g: pour_result_column,
    /// Mass that sprue and topping are short of; 0 where the pieces are fed. Unit: g.
    pub missing_mass_g: pour_result_column,
    /// Mass of one piece, or of the layer in it. Unit: g.
    pub piece_mass_g: pour_result_column,
    /// The same without feed where the feed is not known; else the mass of the piece. Unit: g.
    pub piece_mass_min_g: pour_result_column,
    /// The same fed as far as sprue and topping reach where the feed is not known; else the mass of the piece.
    /// Unit: g.
    pub piece_mass_max_g: pour_result_column,
    /// Share of the contraction that was fed. Unit: 1.
    pub fed: pour_result_column,
}

/// `pour_shot_fill` for every row.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_shot_fill_n(
    rows: usize,
    columns: Option<&pour_shot_fill_columns>,
    results: Option<&pour_shot_fill_result_columns>,
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    guard(error, &mut || {
        let columns = memory::given("columns", columns)?;
        let results = memory::given("results", results)?;
        let inputs = [
            columns.cavities.required("cavities"),
            columns.cavity_volume_ml.required("cavity_volume_ml"),
            columns.cold_density_g_per_ml.required("cold_density_g_per_ml"),
            columns.hot_density_g_per_ml.optional("hot_density_g_per_ml"),
            columns.voids.optional("voids"),
            columns.feed.optional("feed"),
            columns.sprue_volume_ml.optional("sprue_volume_ml"),
            columns.topped_mass_g.optional("topped_mass_g"),
            columns.layer_share.optional("layer_share"),
        ];
        let outputs = [
            results.shot_mass_g.named("shot_mass_g"),
            results.pieces_mass_g.named("pieces_mass_g"),
            results.sprue_mass_g.named("sprue_mass_g"),
            results.missing_mass_g.named("missing_mass_g"),
            results.piece_mass_g.named("piece_mass_g"),
            results.piece_mass_min_g.named("piece_mass_min_g"),
            results.piece_mass_max_g.named("piece_mass_max_g"),
            results.fed.named("fed"),
        ];
        // SAFETY: the header asks for columns of `rows` numbers, or null.
        let (inputs, outputs) =
            unsafe { (Inputs::new(rows, inputs)?, Outputs::new(rows, outputs, statuses)?) };
        outputs.map(inputs, |[cavities, cavity_volume_ml, cold_density_g_per_ml, hot_density_g_per_ml, voids, feed, sprue_volume_ml, topped_mass_g, layer_share]| {
            let inputs = plain::ShotFill {
                cavities: call::column_count(Parameter::Cavities, cavities)?,
                cavity_volume_ml,
                cold_density_g_per_ml,
                hot_density_g_per_ml: given(hot_density_g_per_ml),
                voids: given(voids),
                feed: given(feed),
                sprue_volume_ml: given(sprue_volume_ml),
                topped_mass_g: given(topped_mass_g),
                layer_share: given(layer_share),
            };
            let found = inputs.calculate().map_err(call::row_status)?;
            Ok([found.shot_mass_g, found.pieces_mass_g, found.sprue_mass_g, found.missing_mass_g, found.piece_mass_g, found.piece_mass_min_g, found.piece_mass_max_g, found.fed])
        });
        Ok(())
    })
}

/// The results of `pour_piece_mass`.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_piece_mass_result {
    /// Mass of the piece. Unit: g.
    pub piece_mass_g: f64,
    /// The same without feed where the feed is not known; else the mass of the piece. Unit: g.
    pub piece_mass_min_g: f64,
    /// The same fed in full where the feed is not known; else the mass of the piece. Unit: g.
    pub piece_mass_max_g: f64,
}

/// Mass of a piece: m = V (1 − φ) [ρ_hot + f (ρ_cold − ρ_hot)], φ the voids, f the feed.
///
/// While it cools a piece draws the share f of its contraction from the sprue. Source: conservation of mass; f
/// is the shop's own. A sprue that cannot feed that much: see `pour_shot_fill`.
///
/// `cavity_volume_ml`: Volume of one cavity. Unit: mL; above 0 to 1e15.
/// `cold_density_g_per_ml`: Density of the finished plastic at 20 °C, without voids. Unit: g/mL; 0.001 to 25.
/// `hot_density_g_per_ml`: Melt density at shot temperature, without voids; at most the cold one. Unit: g/mL;
/// 0.001 to 25. Default: as `cold_density_g_per_ml`.
/// `voids`: Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0.
/// `feed`: Share of its contraction that a piece draws from the sprue while it cools. Where it is not known,
/// 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). Unit: 1; 0 to 1.
/// Default: 0.5.
#[unsafe(no_mangle)]
pub extern "C" fn pour_piece_mass(
    cavity_volume_ml: f64,
    cold_density_g_per_ml: f64,
    hot_density_g_per_ml: f64,
    voids: f64,
    feed: f64,
    result: Option<&mut MaybeUninit<pour_piece_mass_result>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut result = result;
    guard(error, &mut || {
        let mut call = Call::new("piece_mass");
        let result = memory::given("result", result.as_deref_mut())?;
        let cavity_volume_ml = call.number("cavity_volume_ml", Parameter::CavityVolume, cavity_volume_ml);
        let cold_density_g_per_ml = call.number("cold_density_g_per_ml", Parameter::ColdDensity, cold_density_g_per_ml);
        let (Some(cavity_volume_ml), Some(cold_density_g_per_ml)) = (cavity_volume_ml, cold_density_g_per_ml) else { return Err(call.failure()) };
        let inputs = plain::PieceMass {
            cavity_volume_ml,
            cold_density_g_per_ml,
            hot_density_g_per_ml: given(hot_density_g_per_ml),
            voids: given(voids),
            feed: given(feed),
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(pour_piece_mass_result {
            piece_mass_g: found.piece_mass_g,
            piece_mass_min_g: found.piece_mass_min_g,
            piece_mass_max_g: found.piece_mass_max_g,
        });
        Ok(())
    })
}

/// The columns of `pour_piece_mass_n`: the parameters of `pour_piece_mass`. Set all to 0 first: a parameter
/// that may be omitted has no column then. A word counts for all rows.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_piece_mass_columns {
    /// Volume of one cavity.
    pub cavity_volume_ml: pour_column,
    /// Density of the finished plastic at 20 °C, without voids.
    pub cold_density_g_per_ml: pour_column,
    /// Melt density at shot temperature, without voids; at most the cold one. May be omitted.
    pub hot_density_g_per_ml: pour_column,
    /// Void fraction: share of the volume that is air. May be omitted.
    pub voids: pour_column,
    /// Share of its contraction that a piece draws from the sprue while it cools. Where it is not known, 0.5
    /// counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). May be omitted.
    pub feed: pour_column,
}

/// Where `pour_piece_mass_n` writes its results. Set all to 0 first: what has no column is not written.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_piece_mass_result_columns {
    /// Mass of the piece. Unit: g.
    pub piece_mass_g: pour_result_column,
    /// The same without feed where the feed is not known; else the mass of the piece. Unit: g.
    pub piece_mass_min_g: pour_result_column,
    /// The same fed in full where the feed is not known; else the mass of the piece. Unit: g.
    pub piece_mass_max_g: pour_result_column,
}

/// `pour_piece_mass` for every row.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_piece_mass_n(
    rows: usize,
    columns: Option<&pour_piece_mass_columns>,
    results: Option<&pour_piece_mass_result_columns>,
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    guard(error, &mut || {
        let columns = memory::given("columns", columns)?;
        let results = memory::given("results", results)?;
        let inputs = [
            columns.cavity_volume_ml.required("cavity_volume_ml"),
            columns.cold_density_g_per_ml.required("cold_density_g_per_ml"),
            columns.hot_density_g_per_ml.optional("hot_density_g_per_ml"),
            columns.voids.optional("voids"),
            columns.feed.optional("feed"),
        ];
        let outputs = [
            results.piece_mass_g.named("piece_mass_g"),
            results.piece_mass_min_g.named("piece_mass_min_g"),
            results.piece_mass_max_g.named("piece_mass_max_g"),
        ];
        // SAFETY: the header asks for columns of `rows` numbers, or null.
        let (inputs, outputs) =
            unsafe { (Inputs::new(rows, inputs)?, Outputs::new(rows, outputs, statuses)?) };
        outputs.map(inputs, |[cavity_volume_ml, cold_density_g_per_ml, hot_density_g_per_ml, voids, feed]| {
            let inputs = plain::PieceMass {
                cavity_volume_ml,
                cold_density_g_per_ml,
                hot_density_g_per_ml: given(hot_density_g_per_ml),
                voids: given(voids),
                feed: given(feed),
            };
            let found = inputs.calculate().map_err(call::row_status)?;
            Ok([found.piece_mass_g, found.piece_mass_min_g, found.piece_mass_max_g])
        });
        Ok(())
    })
}

/// One row of `cups`. The cups with evenly spaced marks: of each the distance between marks and the capacity.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_cups_row {
    /// Distance between the marks of the cup. Unit: mL; above 0 to 1e15. Default: one mark alone, for the
    /// amount of base.
    pub cup_mark_ml: f64,
    /// Volume of the cup up to its last mark. Unit: mL; above 0 to 1e15.
    pub cup_capacity_ml: f64,
}

/// The input of `pour_bench_measure`. Begin with `POUR_BENCH_MEASURE_INPUT_INIT`, in which everything is
/// omitted.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_bench_measure_input {
    /// Mass to measure. Unit: g; above 0 to 1e15.
    pub mass_to_measure_g: f64,
    /// Largest relative error that is accepted. Unit: 1; above 0 to below 1. Default: 0.05.
    pub tolerance: f64,
    /// Smallest difference that the balance shows; without it there is no balance. Unit: g; above 0 to 1e15.
    /// Default: none.
    pub balance_readability_g: f64,
    /// Maximum that the balance weighs at once. Unit: g; above 0 to 1e15. Default: 5000 times its readability.
    pub balance_capacity_g: f64,
    /// Minimum load for which the balance is trusted. Unit: g; 0 to 1e15. Default: 0.
    pub balance_least_load_g: f64,
    /// Volumes of the measuring spoons. 1 to 8 of them. Default: none.
    pub spoons_ml: *const f64,
    /// Number of `spoons_ml`.
    pub spoons_count: usize,
    /// The cups with evenly spaced marks: of each the distance between marks and the capacity. 1 to 64 of them.
    /// Default: none.
    pub cups: *const pour_cups_row,
    /// Number of `cups`.
    pub cups_count: usize,
    /// Density of the material in a measure: of a liquid its density, of a powder its bulk density, level and
    /// not tapped. Unit: g/mL; 0.001 to 25. Default: none.
    pub as_measured_density_g_per_ml: f64,
    /// Mass of one drop. Unit: g; above 0 to 1e15. Default: none.
    pub drop_mass_g: f64,
}

/// The results of `pour_bench_measure`.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_bench_measure_result {
    /// Mass that it gives. Unit: g.
    pub mass_g: f64,
    /// (given − needed)/needed. Unit: 1.
    pub deviation: f64,
    /// The tool: balance, cup, spoons or drops. `POUR_TOOL_BALANCE`, `POUR_TOOL_CUP`, `POUR_TOOL_SPOONS`,
    /// `POUR_TOOL_DROPS`.
    pub tool: i32,
    /// Amount of handling: readings, fillings, spoonfuls, tens of drops.
    pub acts: u32,
    /// Number of drops.
    pub drops: u32,
    /// Number of level spoonfuls of each spoon, in the order of the spoons.
    pub spoonfuls: [u32; 8],
    /// Which cup, counted from 1; 0 without one.
    pub cup: u32,
    /// Number of times that cup is filled to its last mark.
    pub cup_fillings: u32,
    /// Mark to which it is filled once more, counted from 1; 0 where it is not.
    pub cup_mark: u32,
}

/// Measures a mass with the tools of the bench: the way with the least handling that keeps the tolerance.
///
/// A tool that is not given is not on the bench. Where no tool keeps the tolerance, the help says from what
/// mass on one would.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_bench_measure(
    input: Option<&pour_bench_measure_input>,
    result: Option<&mut MaybeUninit<pour_bench_measure_result>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut result = result;
    guard(error, &mut || {
        let mut call = Call::new("bench_measure");
        let input = memory::given("input", input)?;
        let result = memory::given("result", result.as_deref_mut())?;
        let mass_to_measure_g = call.number("mass_to_measure_g", Parameter::MassToMeasure, input.mass_to_measure_g);
        // SAFETY: the header asks for a text that ends or an array so long, or null.
        let spoons_ml = unsafe { call.optional_list("spoons_ml", Parameter::Spoons, input.spoons_ml, input.spoons_count) };
        // SAFETY: the header asks for a text that ends or an array so long, or null.
        let cups = unsafe { call.optional_rows("cups", Parameter::Cups, input.cups, input.cups_count) };
        let (Some(mass_to_measure_g), Some(spoons_ml), Some(cups)) = (mass_to_measure_g, spoons_ml, cups) else { return Err(call.failure()) };
        let inputs = plain::BenchMeasure {
            mass_to_measure_g,
            tolerance: given(input.tolerance),
            balance_readability_g: given(input.balance_readability_g),
            balance_capacity_g: given(input.balance_capacity_g),
            balance_least_load_g: given(input.balance_least_load_g),
            spoons_ml,
            cups,
            as_measured_density_g_per_ml: given(input.as_measured_density_g_per_ml),
            drop_mass_g: given(input.drop_mass_g),
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(pour_bench_measure_result {
            mass_g: found.mass_g,
            deviation: found.deviation,
            tool: call::place(pourwright::bench::Tool::WORDS, found.tool.word()),
            acts: found.acts,
            drops: found.drops,
            spoonfuls: found.spoonfuls,
            cup: found.cup,
            cup_fillings: found.cup_fillings,
            cup_mark: found.cup_mark,
        });
        Ok(())
    })
}

