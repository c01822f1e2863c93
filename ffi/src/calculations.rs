//! The calculations of the table, on plain numbers and on columns of them.
//!
//! Made by `cargo run -p pourwright-generate`; do not edit.

#![allow(non_camel_case_types)]

use std::ffi::c_char;
use std::marker::PhantomData;
use std::mem::MaybeUninit;

use pourwright::parameter::Parameter;
use pourwright::table::plain::{self, given};

use crate::call::Call;
use crate::column::{Inputs, Outputs, Rows, pour_column, pour_result_column};
use crate::error::Error;
use crate::failure::together;
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

/// Of `piece_point`: center.
pub const POUR_PIECE_POINT_CENTER: i32 = 1;
/// Of `piece_point`: mean.
pub const POUR_PIECE_POINT_MEAN: i32 = 2;

/// Of `scale`: shore-00.
pub const POUR_SCALE_SHORE_00: i32 = 1;
/// Of `scale`: shore-a.
pub const POUR_SCALE_SHORE_A: i32 = 2;

/// Of `section_shape`: rod.
pub const POUR_SECTION_SHAPE_ROD: i32 = 1;
/// Of `section_shape`: plate.
pub const POUR_SECTION_SHAPE_PLATE: i32 = 2;
/// Of `section_shape`: ball.
pub const POUR_SECTION_SHAPE_BALL: i32 = 3;

/// Of `shape`: stick.
pub const POUR_SHAPE_STICK: i32 = 1;
/// Of `shape`: ball.
pub const POUR_SHAPE_BALL: i32 = 2;

/// Of `tool`: balance.
pub const POUR_TOOL_BALANCE: i32 = 1;
/// Of `tool`: cup.
pub const POUR_TOOL_CUP: i32 = 2;
/// Of `tool`: spoons.
pub const POUR_TOOL_SPOONS: i32 = 3;
/// Of `tool`: drops.
pub const POUR_TOOL_DROPS: i32 = 4;

/// Of `motion`: straight.
pub const POUR_MOTION_STRAIGHT: i32 = 1;
/// Of `motion`: may-swing.
pub const POUR_MOTION_MAY_SWING: i32 = 2;
/// Of `motion`: swings.
pub const POUR_MOTION_SWINGS: i32 = 3;

/// Converts an amount as a person writes it, such as `1 1/4 cup` or `330 °F`, exactly, and rounds once.
///
/// A text that can be read two ways (`6 oz`, `1,25 cup`) is refused with both readings in the message.
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
        let result = call.keep(memory::given("value", value.as_deref_mut()));
        // SAFETY: the header asks for a text that ends or an array so long, or null.
        let amount = unsafe { call.text("amount", Parameter::Amount, amount) };
        // SAFETY: the header asks for a text that ends or an array so long, or null.
        let to = unsafe { call.text("to", Parameter::To, to) };
        let measures = call.optional_word("measures", Parameter::Measures, measures);
        let (Some(amount), Some(to), Some(measures), Some(result)) = (amount, to, measures, result) else { return Err(call.failure_with(&[])) };
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

/// Converts a number of one unit into another.
///
/// Units are known by trade symbol and by UCUM code: `cup`, `[tsp_us]`, `g/mL`. Laws between units hold on
/// bits: 48 tsp are 1 cup.
///
/// `value`: The number to convert. Unit: any; 0 or above; a temperature above absolute zero.
/// `unit`: The unit of the number, by trade symbol or UCUM code. A unit.
/// `to`: The unit of the answer, by trade symbol or UCUM code. A unit of the same dimension.
/// `measures`: The system of measures: what a cup, a spoon and a fluid ounce hold. Default: us-customary. One
/// of `POUR_MEASURES_...`; 0 omits it.
///
/// `value` receives: The number, in the unit of `to`.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_convert_number(
    value: f64,
    unit: *const c_char,
    to: *const c_char,
    measures: i32,
    result_value: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut result_value = result_value;
    guard(error, &mut || {
        let mut call = Call::new("convert_number");
        let result = call.keep(memory::given("result_value", result_value.as_deref_mut()));
        let value = call.number("value", Parameter::Value, value);
        // SAFETY: the header asks for a text that ends or an array so long, or null.
        let unit = unsafe { call.text("unit", Parameter::Unit, unit) };
        // SAFETY: the header asks for a text that ends or an array so long, or null.
        let to = unsafe { call.text("to", Parameter::To, to) };
        let measures = call.optional_word("measures", Parameter::Measures, measures);
        let (Some(value), Some(unit), Some(to), Some(measures), Some(result)) = (value, unit, to, measures, result) else { return Err(call.failure_with(&[("value", Parameter::Value, value)])) };
        let inputs = plain::ConvertNumber {
            value,
            unit,
            to,
            measures,
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(found.value);
        Ok(())
    })
}

/// Mass of an amount of a material, as a person writes it: `1/4 tsp`, `40 drops`, `12.5 g`.
///
/// A liquid by its density, a powder by its bulk density, drops by the material's own drop; without one a drop
/// is 1/20 mL (pharmacy practice).
///
/// `amount`: An amount as a person writes it: `1 1/4 cup`, `40 drops`, `330 °F`. 0 or above; a temperature
/// above absolute zero.
/// `kind`: What the material is for; powders (pearl, flake, salt) are measured as scooped. One of
/// `POUR_KIND_...`.
/// `material_density_g_per_ml`: True density of the material; of a plastisol that of the liquid. Unit: g/mL;
/// 0.001 to 25. Default: none.
/// `as_scooped_g_per_ml`: Bulk density of a powder, level in the spoon and not tapped. Unit: g/mL; 0.001 to 25.
/// Default: none.
/// `drop_mass_g`: Mass of one drop. Unit: g; 1e-12 to 1e15. Default: none.
/// `measures`: The system of measures: what a cup, a spoon and a fluid ounce hold. Default: us-customary. One
/// of `POUR_MEASURES_...`; 0 omits it.
///
/// `mass_g` receives: The mass. Unit: g.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_dose_mass(
    amount: *const c_char,
    kind: i32,
    material_density_g_per_ml: f64,
    as_scooped_g_per_ml: f64,
    drop_mass_g: f64,
    measures: i32,
    mass_g: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut mass_g = mass_g;
    guard(error, &mut || {
        let mut call = Call::new("dose_mass");
        let result = call.keep(memory::given("mass_g", mass_g.as_deref_mut()));
        // SAFETY: the header asks for a text that ends or an array so long, or null.
        let amount = unsafe { call.text("amount", Parameter::Amount, amount) };
        let kind = call.word("kind", Parameter::Kind, kind);
        let measures = call.optional_word("measures", Parameter::Measures, measures);
        let (Some(amount), Some(kind), Some(measures), Some(result)) = (amount, kind, measures, result) else { return Err(call.failure_with(&[("material_density_g_per_ml", Parameter::MaterialDensity, given(material_density_g_per_ml)), ("as_scooped_g_per_ml", Parameter::AsScooped, given(as_scooped_g_per_ml)), ("drop_mass_g", Parameter::DropMass, given(drop_mass_g))])) };
        let inputs = plain::DoseMass {
            amount,
            kind,
            material_density_g_per_ml: given(material_density_g_per_ml),
            as_scooped_g_per_ml: given(as_scooped_g_per_ml),
            drop_mass_g: given(drop_mass_g),
            measures,
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(found.mass_g);
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
        let result = call.keep(memory::given("mass_g", mass_g.as_deref_mut()));
        let volume_ml = call.number("volume_ml", Parameter::Volume, volume_ml);
        let density_g_per_ml = call.number("density_g_per_ml", Parameter::Density, density_g_per_ml);
        let (Some(volume_ml), Some(density_g_per_ml), Some(result)) = (volume_ml, density_g_per_ml, result) else { return Err(call.failure_with(&[("volume_ml", Parameter::Volume, volume_ml), ("density_g_per_ml", Parameter::Density, density_g_per_ml)])) };
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
/// parameter that may be omitted has no column then.
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
        together! {
            columns = memory::given("columns", columns);
            results = memory::given("results", results);
        }
        let mut call = Call::new("mass_of_volume");
        let inputs = [
            columns.volume_ml.required("volume_ml"),
            columns.density_g_per_ml.required("density_g_per_ml"),
        ];
        let outputs = [
            results.mass_g.named("mass_g"),
        ];
        // SAFETY: the header asks for columns of `rows` numbers, or null.
        let (inputs, outputs) =
            unsafe { (Inputs::new(rows, inputs), Outputs::new(rows, outputs, statuses)) };
        let (inputs, outputs) = (call.keep(inputs), call.keep(outputs));
        let (Some(inputs), Some(outputs)) = (inputs, outputs) else { return Err(call.failure()) };
        outputs.map_blocks(inputs, &PhantomData::<plain::MassOfVolume>);
        Ok(())
    })
}

impl Rows<2, 1> for PhantomData<plain::MassOfVolume> {
    #[inline(always)]
    fn total(&self, [volume_ml, density_g_per_ml]: [f64; 2]) -> ([f64; 1], bool) {
        let (found, is_answer) = plain::MassOfVolume { volume_ml, density_g_per_ml }.total();
        ([found.mass_g], is_answer)
    }

    fn calculate(&self, [volume_ml, density_g_per_ml]: [f64; 2]) -> Result<[f64; 1], i32> {
        let found = plain::MassOfVolume { volume_ml, density_g_per_ml }.calculate().map_err(call::row_status)?;
        Ok([found.mass_g])
    }
}

/// Volume of a mass: V = m/ρ, with the densities of `pour_mass_of_volume`.
///
/// `mass_g`: Mass. Unit: g; 0 to 1e15.
/// `density_g_per_ml`: Density, without voids. Unit: g/mL; 0.001 to 25.
///
/// `volume_ml` receives: The volume. Unit: mL.
#[unsafe(no_mangle)]
pub extern "C" fn pour_volume_of_mass(
    mass_g: f64,
    density_g_per_ml: f64,
    volume_ml: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut volume_ml = volume_ml;
    guard(error, &mut || {
        let mut call = Call::new("volume_of_mass");
        let result = call.keep(memory::given("volume_ml", volume_ml.as_deref_mut()));
        let mass_g = call.number("mass_g", Parameter::Mass, mass_g);
        let density_g_per_ml = call.number("density_g_per_ml", Parameter::Density, density_g_per_ml);
        let (Some(mass_g), Some(density_g_per_ml), Some(result)) = (mass_g, density_g_per_ml, result) else { return Err(call.failure_with(&[("mass_g", Parameter::Mass, mass_g), ("density_g_per_ml", Parameter::Density, density_g_per_ml)])) };
        let inputs = plain::VolumeOfMass {
            mass_g,
            density_g_per_ml,
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(found.volume_ml);
        Ok(())
    })
}

/// The columns of `pour_volume_of_mass_n`: the parameters of `pour_volume_of_mass`. Set all to 0 first: a
/// parameter that may be omitted has no column then.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_volume_of_mass_columns {
    /// Mass.
    pub mass_g: pour_column,
    /// Density, without voids.
    pub density_g_per_ml: pour_column,
}

/// Where `pour_volume_of_mass_n` writes its results. Set all to 0 first: what has no column is not written.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_volume_of_mass_result_columns {
    /// The volume. Unit: mL.
    pub volume_ml: pour_result_column,
}

/// `pour_volume_of_mass` for every row.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_volume_of_mass_n(
    rows: usize,
    columns: Option<&pour_volume_of_mass_columns>,
    results: Option<&pour_volume_of_mass_result_columns>,
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    guard(error, &mut || {
        together! {
            columns = memory::given("columns", columns);
            results = memory::given("results", results);
        }
        let mut call = Call::new("volume_of_mass");
        let inputs = [
            columns.mass_g.required("mass_g"),
            columns.density_g_per_ml.required("density_g_per_ml"),
        ];
        let outputs = [
            results.volume_ml.named("volume_ml"),
        ];
        // SAFETY: the header asks for columns of `rows` numbers, or null.
        let (inputs, outputs) =
            unsafe { (Inputs::new(rows, inputs), Outputs::new(rows, outputs, statuses)) };
        let (inputs, outputs) = (call.keep(inputs), call.keep(outputs));
        let (Some(inputs), Some(outputs)) = (inputs, outputs) else { return Err(call.failure()) };
        outputs.map_blocks(inputs, &PhantomData::<plain::VolumeOfMass>);
        Ok(())
    })
}

impl Rows<2, 1> for PhantomData<plain::VolumeOfMass> {
    #[inline(always)]
    fn total(&self, [mass_g, density_g_per_ml]: [f64; 2]) -> ([f64; 1], bool) {
        let (found, is_answer) = plain::VolumeOfMass { mass_g, density_g_per_ml }.total();
        ([found.volume_ml], is_answer)
    }

    fn calculate(&self, [mass_g, density_g_per_ml]: [f64; 2]) -> Result<[f64; 1], i32> {
        let found = plain::VolumeOfMass { mass_g, density_g_per_ml }.calculate().map_err(call::row_status)?;
        Ok([found.volume_ml])
    }
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
        let result = call.keep(memory::given("density_g_per_ml", density_g_per_ml.as_deref_mut()));
        // SAFETY: the header asks for a text that ends or an array so long, or null.
        let parts = unsafe { call.rows("parts", Parameter::Parts, parts, parts_count) };
        let (Some(parts), Some(result)) = (parts, result) else { return Err(call.failure_with(&[("voids", Parameter::Voids, given(voids))])) };
        let inputs = plain::DensityOfParts {
            parts,
            voids: given(voids),
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(found.density_g_per_ml);
        Ok(())
    })
}

/// The results of `pour_mix_share`.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_mix_share_result {
    /// Share of its mass. Unit: 1.
    pub mass_share: f64,
    /// Share of its true volume. Unit: 1.
    pub volume_share: f64,
}

/// Share of one part in a mix, by mass and by true volume.
///
/// Mass: m_i/Σm; volume: (m_i/ρ_i)/Σ(m/ρ).
///
/// `parts`: The parts of the mix: of each its mass and its true density. At least one has a mass above 0. 1 to
/// 1000 of them.
/// `part`: Which part of the mix, counted from 1. 1 to 1000.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_mix_share(
    parts: *const pour_parts_row,
    parts_count: usize,
    part: u32,
    result: Option<&mut MaybeUninit<pour_mix_share_result>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut result = result;
    guard(error, &mut || {
        let mut call = Call::new("mix_share");
        let result = call.keep(memory::given("result", result.as_deref_mut()));
        // SAFETY: the header asks for a text that ends or an array so long, or null.
        let parts = unsafe { call.rows("parts", Parameter::Parts, parts, parts_count) };
        let part = call.count("part", Parameter::Part, part);
        let (Some(parts), Some(part), Some(result)) = (parts, part, result) else { return Err(call.failure_with(&[("part", Parameter::Part, part.map(f64::from))])) };
        let inputs = plain::MixShare {
            parts,
            part,
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(pour_mix_share_result {
            mass_share: found.mass_share,
            volume_share: found.volume_share,
        });
        Ok(())
    })
}

/// The input of `pour_salt_convert`. Begin with `POUR_SALT_CONVERT_INPUT_INIT`, in which everything is omitted.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_salt_convert_input {
    /// Size of this struct in bytes, as the macro sets it.
    pub size: usize,
    /// Volume of the base, cold and liquid, as a cup measures it. Unit: mL; 1e-9 to 1e15.
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
    /// Mass of the mix before salt; at least that of its base. Give its volume too. Unit: g; 1e-12 to 1e15.
    /// Default: the mass of its base.
    pub mix_mass_g: f64,
    /// Volume of the mix before salt at 20 °C. Give its mass too. Unit: mL; 1e-9 to 1e15. Default: as
    /// `base_volume_ml`.
    pub mix_volume_ml: f64,
    /// Volume of the mix before salt at shot temperature; at least the cold one. Unit: mL; 1e-9 to 1e15.
    /// Default: as `mix_volume_ml`.
    pub hot_volume_ml: f64,
    /// Temperature at which the mix is shot. Unit: °C; 20 to 427. Default: 20.
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
    /// Volume of one cavity. Unit: mL; 1e-9 to 1e15. It may be omitted.
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
/// reach is all between no salt and the maximum that `most_solids` allows. Where a form that is about a piece
/// needs the feed and it is not known, the bounds are those without feed and fed in full.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_salt_convert(
    input: *const pour_salt_convert_input,
    result: Option<&mut MaybeUninit<pour_salt_convert_result>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut result = result;
    guard(error, &mut || {
        let mut call = Call::new("salt_convert");
        // SAFETY: the header asks for a struct that begins with its size, or null.
        let input = unsafe { memory::input(input)? };
        let result = call.keep(memory::given("result", result.as_deref_mut()));
        let base_volume_ml = call.number("base_volume_ml", Parameter::BaseVolume, input.base_volume_ml);
        let base_density_g_per_ml = call.number("base_density_g_per_ml", Parameter::BaseDensity, input.base_density_g_per_ml);
        let salt_density_g_per_ml = call.number("salt_density_g_per_ml", Parameter::SaltDensity, input.salt_density_g_per_ml);
        let form = call.word("form", Parameter::Form, input.form);
        let loading = call.number("loading", Parameter::Loading, input.loading);
        let to_form = call.word("to_form", Parameter::ToForm, input.to_form);
        let (Some(base_volume_ml), Some(base_density_g_per_ml), Some(salt_density_g_per_ml), Some(form), Some(loading), Some(to_form), Some(result)) = (base_volume_ml, base_density_g_per_ml, salt_density_g_per_ml, form, loading, to_form, result) else { return Err(call.failure_with(&[("base_volume_ml", Parameter::BaseVolume, given(input.base_volume_ml)), ("base_density_g_per_ml", Parameter::BaseDensity, given(input.base_density_g_per_ml)), ("salt_density_g_per_ml", Parameter::SaltDensity, given(input.salt_density_g_per_ml)), ("loading", Parameter::Loading, given(input.loading)), ("mix_mass_g", Parameter::MixMass, given(input.mix_mass_g)), ("mix_volume_ml", Parameter::MixVolume, given(input.mix_volume_ml)), ("hot_volume_ml", Parameter::HotVolume, given(input.hot_volume_ml)), ("shot_temperature_celsius", Parameter::ShotTemperature, given(input.shot_temperature_celsius)), ("voids", Parameter::Voids, given(input.voids)), ("salt_as_scooped_g_per_ml", Parameter::SaltAsScooped, given(input.salt_as_scooped_g_per_ml)), ("salt_expansion_per_kelvin", Parameter::SaltExpansion, given(input.salt_expansion_per_kelvin)), ("softener_per_salt", Parameter::SoftenerPerSalt, given(input.softener_per_salt)), ("softener_density_g_per_ml", Parameter::SoftenerDensity, given(input.softener_density_g_per_ml)), ("softener_expansion_per_kelvin", Parameter::SoftenerExpansion, given(input.softener_expansion_per_kelvin)), ("most_solids", Parameter::MostSolids, given(input.most_solids)), ("cavity_volume_ml", Parameter::CavityVolume, given(input.cavity_volume_ml)), ("feed", Parameter::Feed, given(input.feed)), ("hook_mass_g", Parameter::HookMass, given(input.hook_mass_g)), ("hook_volume_ml", Parameter::HookVolume, given(input.hook_volume_ml))])) };
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
        together! {
            columns = memory::given("columns", columns);
            results = memory::given("results", results);
        }
        let mut call = Call::new("salt_convert");
        let form = call.word("form", Parameter::Form, columns.form);
        let to_form = call.word("to_form", Parameter::ToForm, columns.to_form);
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
            unsafe { (Inputs::new(rows, inputs), Outputs::new(rows, outputs, statuses)) };
        let (inputs, outputs) = (call.keep(inputs), call.keep(outputs));
        let (Some(form), Some(to_form), Some(inputs), Some(outputs)) = (form, to_form, inputs, outputs) else { return Err(call.failure()) };
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

/// The input of `pour_salt_mass`. Begin with `POUR_SALT_MASS_INPUT_INIT`, in which everything is omitted.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_salt_mass_input {
    /// Size of this struct in bytes, as the macro sets it.
    pub size: usize,
    /// Volume of the base, cold and liquid, as a cup measures it. Unit: mL; 1e-9 to 1e15.
    pub base_volume_ml: f64,
    /// Density of the base, cold and liquid, as a cup measures it. Unit: g/mL; 0.001 to 25.
    pub base_density_g_per_ml: f64,
    /// True density of the salt: 2.165 g/mL for sodium chloride. Unit: g/mL; 0.001 to 25.
    pub salt_density_g_per_ml: f64,
    /// The way in which the salt loading is stated. One of `POUR_FORM_...`.
    pub form: i32,
    /// The salt loading, as its form states it. Unit: any; in the unit of its form.
    pub loading: f64,
    /// Mass of the mix before salt; at least that of its base. Give its volume too. Unit: g; 1e-12 to 1e15.
    /// Default: the mass of its base.
    pub mix_mass_g: f64,
    /// Volume of the mix before salt at 20 °C. Give its mass too. Unit: mL; 1e-9 to 1e15. Default: as
    /// `base_volume_ml`.
    pub mix_volume_ml: f64,
    /// Volume of the mix before salt at shot temperature; at least the cold one. Unit: mL; 1e-9 to 1e15.
    /// Default: as `mix_volume_ml`.
    pub hot_volume_ml: f64,
    /// Temperature at which the mix is shot. Unit: °C; 20 to 427. Default: 20.
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
    /// Volume of one cavity. Unit: mL; 1e-9 to 1e15. It may be omitted.
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

/// The results of `pour_salt_mass`.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_salt_mass_result {
    /// Mass of salt. Unit: g.
    pub salt_mass_g: f64,
    /// Its lower bound where the feed matters and is not known; else the mass. Unit: g.
    pub salt_mass_min_g: f64,
    /// Its upper bound where the feed matters and is not known; else the mass. Unit: g.
    pub salt_mass_max_g: f64,
    /// Mass of softener that goes in with it. Unit: g.
    pub softener_mass_g: f64,
}

/// Mass of salt for a loading, and of the softener that goes in with it.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_salt_mass(
    input: *const pour_salt_mass_input,
    result: Option<&mut MaybeUninit<pour_salt_mass_result>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut result = result;
    guard(error, &mut || {
        let mut call = Call::new("salt_mass");
        // SAFETY: the header asks for a struct that begins with its size, or null.
        let input = unsafe { memory::input(input)? };
        let result = call.keep(memory::given("result", result.as_deref_mut()));
        let base_volume_ml = call.number("base_volume_ml", Parameter::BaseVolume, input.base_volume_ml);
        let base_density_g_per_ml = call.number("base_density_g_per_ml", Parameter::BaseDensity, input.base_density_g_per_ml);
        let salt_density_g_per_ml = call.number("salt_density_g_per_ml", Parameter::SaltDensity, input.salt_density_g_per_ml);
        let form = call.word("form", Parameter::Form, input.form);
        let loading = call.number("loading", Parameter::Loading, input.loading);
        let (Some(base_volume_ml), Some(base_density_g_per_ml), Some(salt_density_g_per_ml), Some(form), Some(loading), Some(result)) = (base_volume_ml, base_density_g_per_ml, salt_density_g_per_ml, form, loading, result) else { return Err(call.failure_with(&[("base_volume_ml", Parameter::BaseVolume, given(input.base_volume_ml)), ("base_density_g_per_ml", Parameter::BaseDensity, given(input.base_density_g_per_ml)), ("salt_density_g_per_ml", Parameter::SaltDensity, given(input.salt_density_g_per_ml)), ("loading", Parameter::Loading, given(input.loading)), ("mix_mass_g", Parameter::MixMass, given(input.mix_mass_g)), ("mix_volume_ml", Parameter::MixVolume, given(input.mix_volume_ml)), ("hot_volume_ml", Parameter::HotVolume, given(input.hot_volume_ml)), ("shot_temperature_celsius", Parameter::ShotTemperature, given(input.shot_temperature_celsius)), ("voids", Parameter::Voids, given(input.voids)), ("salt_as_scooped_g_per_ml", Parameter::SaltAsScooped, given(input.salt_as_scooped_g_per_ml)), ("salt_expansion_per_kelvin", Parameter::SaltExpansion, given(input.salt_expansion_per_kelvin)), ("softener_per_salt", Parameter::SoftenerPerSalt, given(input.softener_per_salt)), ("softener_density_g_per_ml", Parameter::SoftenerDensity, given(input.softener_density_g_per_ml)), ("softener_expansion_per_kelvin", Parameter::SoftenerExpansion, given(input.softener_expansion_per_kelvin)), ("most_solids", Parameter::MostSolids, given(input.most_solids)), ("cavity_volume_ml", Parameter::CavityVolume, given(input.cavity_volume_ml)), ("feed", Parameter::Feed, given(input.feed)), ("hook_mass_g", Parameter::HookMass, given(input.hook_mass_g)), ("hook_volume_ml", Parameter::HookVolume, given(input.hook_volume_ml))])) };
        let inputs = plain::SaltMass {
            base_volume_ml,
            base_density_g_per_ml,
            salt_density_g_per_ml,
            form,
            loading,
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
        result.write(pour_salt_mass_result {
            salt_mass_g: found.salt_mass_g,
            salt_mass_min_g: found.salt_mass_min_g,
            salt_mass_max_g: found.salt_mass_max_g,
            softener_mass_g: found.softener_mass_g,
        });
        Ok(())
    })
}

/// The columns of `pour_salt_mass_n`: the parameters of `pour_salt_mass`. Set all to 0 first: a parameter that
/// may be omitted has no column then. A word counts for all rows.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_salt_mass_columns {
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

/// Where `pour_salt_mass_n` writes its results. Set all to 0 first: what has no column is not written.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_salt_mass_result_columns {
    /// Mass of salt. Unit: g.
    pub salt_mass_g: pour_result_column,
    /// Its lower bound where the feed matters and is not known; else the mass. Unit: g.
    pub salt_mass_min_g: pour_result_column,
    /// Its upper bound where the feed matters and is not known; else the mass. Unit: g.
    pub salt_mass_max_g: pour_result_column,
    /// Mass of softener that goes in with it. Unit: g.
    pub softener_mass_g: pour_result_column,
}

/// `pour_salt_mass` for every row.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_salt_mass_n(
    rows: usize,
    columns: Option<&pour_salt_mass_columns>,
    results: Option<&pour_salt_mass_result_columns>,
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    guard(error, &mut || {
        together! {
            columns = memory::given("columns", columns);
            results = memory::given("results", results);
        }
        let mut call = Call::new("salt_mass");
        let form = call.word("form", Parameter::Form, columns.form);
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
            results.salt_mass_g.named("salt_mass_g"),
            results.salt_mass_min_g.named("salt_mass_min_g"),
            results.salt_mass_max_g.named("salt_mass_max_g"),
            results.softener_mass_g.named("softener_mass_g"),
        ];
        // SAFETY: the header asks for columns of `rows` numbers, or null.
        let (inputs, outputs) =
            unsafe { (Inputs::new(rows, inputs), Outputs::new(rows, outputs, statuses)) };
        let (inputs, outputs) = (call.keep(inputs), call.keep(outputs));
        let (Some(form), Some(inputs), Some(outputs)) = (form, inputs, outputs) else { return Err(call.failure()) };
        outputs.map(inputs, |[base_volume_ml, base_density_g_per_ml, salt_density_g_per_ml, loading, mix_mass_g, mix_volume_ml, hot_volume_ml, shot_temperature_celsius, voids, salt_as_scooped_g_per_ml, salt_expansion_per_kelvin, softener_per_salt, softener_density_g_per_ml, softener_expansion_per_kelvin, most_solids, cavity_volume_ml, feed, hook_mass_g, hook_volume_ml]| {
            let inputs = plain::SaltMass {
                base_volume_ml,
                base_density_g_per_ml,
                salt_density_g_per_ml,
                form,
                loading,
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
            Ok([found.salt_mass_g, found.salt_mass_min_g, found.salt_mass_max_g, found.softener_mass_g])
        });
        Ok(())
    })
}

/// The input of `pour_salt_reach`. Begin with `POUR_SALT_REACH_INPUT_INIT`, in which everything is omitted.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_salt_reach_input {
    /// Size of this struct in bytes, as the macro sets it.
    pub size: usize,
    /// Volume of the base, cold and liquid, as a cup measures it. Unit: mL; 1e-9 to 1e15.
    pub base_volume_ml: f64,
    /// Density of the base, cold and liquid, as a cup measures it. Unit: g/mL; 0.001 to 25.
    pub base_density_g_per_ml: f64,
    /// True density of the salt: 2.165 g/mL for sodium chloride. Unit: g/mL; 0.001 to 25.
    pub salt_density_g_per_ml: f64,
    /// The way in which the salt loading is stated. One of `POUR_FORM_...`.
    pub form: i32,
    /// Mass of the mix before salt; at least that of its base. Give its volume too. Unit: g; 1e-12 to 1e15.
    /// Default: the mass of its base.
    pub mix_mass_g: f64,
    /// Volume of the mix before salt at 20 °C. Give its mass too. Unit: mL; 1e-9 to 1e15. Default: as
    /// `base_volume_ml`.
    pub mix_volume_ml: f64,
    /// Volume of the mix before salt at shot temperature; at least the cold one. Unit: mL; 1e-9 to 1e15.
    /// Default: as `mix_volume_ml`.
    pub hot_volume_ml: f64,
    /// Temperature at which the mix is shot. Unit: °C; 20 to 427. Default: 20.
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
    /// Volume of one cavity. Unit: mL; 1e-9 to 1e15. It may be omitted.
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

/// The results of `pour_salt_reach`.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_salt_reach_result {
    /// The loading without salt, in the unit of the form.
    pub loading_min: f64,
    /// The maximum loading, in the unit of the form.
    pub loading_max: f64,
}

/// Salt loadings in reach: without salt, and with the maximum that `most_solids` allows.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_salt_reach(
    input: *const pour_salt_reach_input,
    result: Option<&mut MaybeUninit<pour_salt_reach_result>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut result = result;
    guard(error, &mut || {
        let mut call = Call::new("salt_reach");
        // SAFETY: the header asks for a struct that begins with its size, or null.
        let input = unsafe { memory::input(input)? };
        let result = call.keep(memory::given("result", result.as_deref_mut()));
        let base_volume_ml = call.number("base_volume_ml", Parameter::BaseVolume, input.base_volume_ml);
        let base_density_g_per_ml = call.number("base_density_g_per_ml", Parameter::BaseDensity, input.base_density_g_per_ml);
        let salt_density_g_per_ml = call.number("salt_density_g_per_ml", Parameter::SaltDensity, input.salt_density_g_per_ml);
        let form = call.word("form", Parameter::Form, input.form);
        let (Some(base_volume_ml), Some(base_density_g_per_ml), Some(salt_density_g_per_ml), Some(form), Some(result)) = (base_volume_ml, base_density_g_per_ml, salt_density_g_per_ml, form, result) else { return Err(call.failure_with(&[("base_volume_ml", Parameter::BaseVolume, given(input.base_volume_ml)), ("base_density_g_per_ml", Parameter::BaseDensity, given(input.base_density_g_per_ml)), ("salt_density_g_per_ml", Parameter::SaltDensity, given(input.salt_density_g_per_ml)), ("mix_mass_g", Parameter::MixMass, given(input.mix_mass_g)), ("mix_volume_ml", Parameter::MixVolume, given(input.mix_volume_ml)), ("hot_volume_ml", Parameter::HotVolume, given(input.hot_volume_ml)), ("shot_temperature_celsius", Parameter::ShotTemperature, given(input.shot_temperature_celsius)), ("voids", Parameter::Voids, given(input.voids)), ("salt_as_scooped_g_per_ml", Parameter::SaltAsScooped, given(input.salt_as_scooped_g_per_ml)), ("salt_expansion_per_kelvin", Parameter::SaltExpansion, given(input.salt_expansion_per_kelvin)), ("softener_per_salt", Parameter::SoftenerPerSalt, given(input.softener_per_salt)), ("softener_density_g_per_ml", Parameter::SoftenerDensity, given(input.softener_density_g_per_ml)), ("softener_expansion_per_kelvin", Parameter::SoftenerExpansion, given(input.softener_expansion_per_kelvin)), ("most_solids", Parameter::MostSolids, given(input.most_solids)), ("cavity_volume_ml", Parameter::CavityVolume, given(input.cavity_volume_ml)), ("feed", Parameter::Feed, given(input.feed)), ("hook_mass_g", Parameter::HookMass, given(input.hook_mass_g)), ("hook_volume_ml", Parameter::HookVolume, given(input.hook_volume_ml))])) };
        let inputs = plain::SaltReach {
            base_volume_ml,
            base_density_g_per_ml,
            salt_density_g_per_ml,
            form,
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
        result.write(pour_salt_reach_result {
            loading_min: found.loading_min,
            loading_max: found.loading_max,
        });
        Ok(())
    })
}

/// The columns of `pour_salt_reach_n`: the parameters of `pour_salt_reach`. Set all to 0 first: a parameter
/// that may be omitted has no column then. A word counts for all rows.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_salt_reach_columns {
    /// Volume of the base, cold and liquid, as a cup measures it.
    pub base_volume_ml: pour_column,
    /// Density of the base, cold and liquid, as a cup measures it.
    pub base_density_g_per_ml: pour_column,
    /// True density of the salt: 2.165 g/mL for sodium chloride.
    pub salt_density_g_per_ml: pour_column,
    /// The way in which the salt loading is stated. One of `POUR_FORM_...`.
    pub form: i32,
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

/// Where `pour_salt_reach_n` writes its results. Set all to 0 first: what has no column is not written.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_salt_reach_result_columns {
    /// The loading without salt, in the unit of the form.
    pub loading_min: pour_result_column,
    /// The maximum loading, in the unit of the form.
    pub loading_max: pour_result_column,
}

/// `pour_salt_reach` for every row.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_salt_reach_n(
    rows: usize,
    columns: Option<&pour_salt_reach_columns>,
    results: Option<&pour_salt_reach_result_columns>,
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    guard(error, &mut || {
        together! {
            columns = memory::given("columns", columns);
            results = memory::given("results", results);
        }
        let mut call = Call::new("salt_reach");
        let form = call.word("form", Parameter::Form, columns.form);
        let inputs = [
            columns.base_volume_ml.required("base_volume_ml"),
            columns.base_density_g_per_ml.required("base_density_g_per_ml"),
            columns.salt_density_g_per_ml.required("salt_density_g_per_ml"),
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
            results.loading_min.named("loading_min"),
            results.loading_max.named("loading_max"),
        ];
        // SAFETY: the header asks for columns of `rows` numbers, or null.
        let (inputs, outputs) =
            unsafe { (Inputs::new(rows, inputs), Outputs::new(rows, outputs, statuses)) };
        let (inputs, outputs) = (call.keep(inputs), call.keep(outputs));
        let (Some(form), Some(inputs), Some(outputs)) = (form, inputs, outputs) else { return Err(call.failure()) };
        outputs.map(inputs, |[base_volume_ml, base_density_g_per_ml, salt_density_g_per_ml, mix_mass_g, mix_volume_ml, hot_volume_ml, shot_temperature_celsius, voids, salt_as_scooped_g_per_ml, salt_expansion_per_kelvin, softener_per_salt, softener_density_g_per_ml, softener_expansion_per_kelvin, most_solids, cavity_volume_ml, feed, hook_mass_g, hook_volume_ml]| {
            let inputs = plain::SaltReach {
                base_volume_ml,
                base_density_g_per_ml,
                salt_density_g_per_ml,
                form,
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
            Ok([found.loading_min, found.loading_max])
        });
        Ok(())
    })
}

/// Mass of salt that brings a base alone to a finished density: `pour_salt_mass` in one form, with few numbers.
///
/// m_s = (ρ′V₀ − M₀)/(1 − ρ′/ρ_s) with ρ′ = ρ_t/(1 − φ).
///
/// `base_volume_ml`: Volume of the base, cold and liquid, as a cup measures it. Unit: mL; 1e-9 to 1e15.
/// `base_density_g_per_ml`: Density of the base, cold and liquid, as a cup measures it. Unit: g/mL; 0.001 to
/// 25.
/// `salt_density_g_per_ml`: True density of the salt: 2.165 g/mL for sodium chloride. Unit: g/mL; 0.001 to 25.
/// `finished_density_g_per_ml`: Density of the finished plastic at 20 °C, voids counted. Unit: g/mL; 0.001 to
/// 25.
/// `voids`: Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0.
/// `most_solids`: Maximum share of salt in the finished mix, by true volume. Unit: 1; above 0 to below 1.
/// Default: 0.3.
///
/// `salt_mass_g` receives: Mass of salt. Unit: g.
#[unsafe(no_mangle)]
pub extern "C" fn pour_salt_for_density(
    base_volume_ml: f64,
    base_density_g_per_ml: f64,
    salt_density_g_per_ml: f64,
    finished_density_g_per_ml: f64,
    voids: f64,
    most_solids: f64,
    salt_mass_g: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut salt_mass_g = salt_mass_g;
    guard(error, &mut || {
        let mut call = Call::new("salt_for_density");
        let result = call.keep(memory::given("salt_mass_g", salt_mass_g.as_deref_mut()));
        let base_volume_ml = call.number("base_volume_ml", Parameter::BaseVolume, base_volume_ml);
        let base_density_g_per_ml = call.number("base_density_g_per_ml", Parameter::BaseDensity, base_density_g_per_ml);
        let salt_density_g_per_ml = call.number("salt_density_g_per_ml", Parameter::SaltDensity, salt_density_g_per_ml);
        let finished_density_g_per_ml = call.number("finished_density_g_per_ml", Parameter::FinishedDensity, finished_density_g_per_ml);
        let (Some(base_volume_ml), Some(base_density_g_per_ml), Some(salt_density_g_per_ml), Some(finished_density_g_per_ml), Some(result)) = (base_volume_ml, base_density_g_per_ml, salt_density_g_per_ml, finished_density_g_per_ml, result) else { return Err(call.failure_with(&[("base_volume_ml", Parameter::BaseVolume, base_volume_ml), ("base_density_g_per_ml", Parameter::BaseDensity, base_density_g_per_ml), ("salt_density_g_per_ml", Parameter::SaltDensity, salt_density_g_per_ml), ("finished_density_g_per_ml", Parameter::FinishedDensity, finished_density_g_per_ml), ("voids", Parameter::Voids, given(voids)), ("most_solids", Parameter::MostSolids, given(most_solids))])) };
        let inputs = plain::SaltForDensity {
            base_volume_ml,
            base_density_g_per_ml,
            salt_density_g_per_ml,
            finished_density_g_per_ml,
            voids: given(voids),
            most_solids: given(most_solids),
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(found.salt_mass_g);
        Ok(())
    })
}

/// The columns of `pour_salt_for_density_n`: the parameters of `pour_salt_for_density`. Set all to 0 first: a
/// parameter that may be omitted has no column then.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_salt_for_density_columns {
    /// Volume of the base, cold and liquid, as a cup measures it.
    pub base_volume_ml: pour_column,
    /// Density of the base, cold and liquid, as a cup measures it.
    pub base_density_g_per_ml: pour_column,
    /// True density of the salt: 2.165 g/mL for sodium chloride.
    pub salt_density_g_per_ml: pour_column,
    /// Density of the finished plastic at 20 °C, voids counted.
    pub finished_density_g_per_ml: pour_column,
    /// Void fraction: share of the volume that is air. May be omitted.
    pub voids: pour_column,
    /// Maximum share of salt in the finished mix, by true volume. May be omitted.
    pub most_solids: pour_column,
}

/// Where `pour_salt_for_density_n` writes its results. Set all to 0 first: what has no column is not written.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_salt_for_density_result_columns {
    /// Mass of salt. Unit: g.
    pub salt_mass_g: pour_result_column,
}

/// `pour_salt_for_density` for every row.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_salt_for_density_n(
    rows: usize,
    columns: Option<&pour_salt_for_density_columns>,
    results: Option<&pour_salt_for_density_result_columns>,
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    guard(error, &mut || {
        together! {
            columns = memory::given("columns", columns);
            results = memory::given("results", results);
        }
        let mut call = Call::new("salt_for_density");
        let inputs = [
            columns.base_volume_ml.required("base_volume_ml"),
            columns.base_density_g_per_ml.required("base_density_g_per_ml"),
            columns.salt_density_g_per_ml.required("salt_density_g_per_ml"),
            columns.finished_density_g_per_ml.required("finished_density_g_per_ml"),
            columns.voids.optional("voids"),
            columns.most_solids.optional("most_solids"),
        ];
        let outputs = [
            results.salt_mass_g.named("salt_mass_g"),
        ];
        // SAFETY: the header asks for columns of `rows` numbers, or null.
        let (inputs, outputs) =
            unsafe { (Inputs::new(rows, inputs), Outputs::new(rows, outputs, statuses)) };
        let (inputs, outputs) = (call.keep(inputs), call.keep(outputs));
        let (Some(inputs), Some(outputs)) = (inputs, outputs) else { return Err(call.failure()) };
        outputs.map_blocks(inputs, &PhantomData::<plain::SaltForDensity>);
        Ok(())
    })
}

impl Rows<6, 1> for PhantomData<plain::SaltForDensity> {
    #[inline(always)]
    fn total(&self, [base_volume_ml, base_density_g_per_ml, salt_density_g_per_ml, finished_density_g_per_ml, voids, most_solids]: [f64; 6]) -> ([f64; 1], bool) {
        let (found, is_answer) = plain::SaltForDensity { base_volume_ml, base_density_g_per_ml, salt_density_g_per_ml, finished_density_g_per_ml, voids: given(voids), most_solids: given(most_solids) }.total();
        ([found.salt_mass_g], is_answer)
    }

    fn calculate(&self, [base_volume_ml, base_density_g_per_ml, salt_density_g_per_ml, finished_density_g_per_ml, voids, most_solids]: [f64; 6]) -> Result<[f64; 1], i32> {
        let found = plain::SaltForDensity { base_volume_ml, base_density_g_per_ml, salt_density_g_per_ml, finished_density_g_per_ml, voids: given(voids), most_solids: given(most_solids) }.calculate().map_err(call::row_status)?;
        Ok([found.salt_mass_g])
    }
}

/// The input of `pour_salt_for_sink_rate`. Begin with `POUR_SALT_FOR_SINK_RATE_INPUT_INIT`, in which everything
/// is omitted.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_salt_for_sink_rate_input {
    /// Size of this struct in bytes, as the macro sets it.
    pub size: usize,
    /// Volume of the base, cold and liquid, as a cup measures it. Unit: mL; 1e-9 to 1e15.
    pub base_volume_ml: f64,
    /// Density of the base, cold and liquid, as a cup measures it. Unit: g/mL; 0.001 to 25.
    pub base_density_g_per_ml: f64,
    /// True density of the salt: 2.165 g/mL for sodium chloride. Unit: g/mL; 0.001 to 25.
    pub salt_density_g_per_ml: f64,
    /// Sink rate: the final speed of the piece. Unit: cm/s; 1e-9 to 1e6.
    pub sink_rate_cm_per_s: f64,
    /// Volume of one cavity. Unit: mL; 1e-9 to 1e15.
    pub cavity_volume_ml: f64,
    /// Mean diameter of the piece. Unit: mm; 1e-6 to 1e6.
    pub diameter_mm: f64,
    /// Temperature of the water. Unit: °C; 0 to 40.
    pub water_temperature_celsius: f64,
    /// Length of a stick, at least 2.01 diameters; not used for a ball. Unit: mm; 1e-6 to 1e6. Default: none.
    pub length_mm: f64,
    /// Shape of the piece as it sinks: a stick sinks sideways. Default: a stick where a length is given, else a
    /// ball. One of `POUR_SHAPE_...`; 0 omits it.
    pub shape: i32,
    /// Mass of the mix before salt; at least that of its base. Give its volume too. Unit: g; 1e-12 to 1e15.
    /// Default: the mass of its base.
    pub mix_mass_g: f64,
    /// Volume of the mix before salt at 20 °C. Give its mass too. Unit: mL; 1e-9 to 1e15. Default: as
    /// `base_volume_ml`.
    pub mix_volume_ml: f64,
    /// Volume of the mix before salt at shot temperature; at least the cold one. Unit: mL; 1e-9 to 1e15.
    /// Default: as `mix_volume_ml`.
    pub hot_volume_ml: f64,
    /// Temperature at which the mix is shot. Unit: °C; 20 to 427. Default: 20.
    pub shot_temperature_celsius: f64,
    /// Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0.
    pub voids: f64,
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
    /// Share of its contraction that a piece draws from the sprue while it cools. Where it is not known, 0.5
    /// counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). Unit: 1; 0 to 1.
    /// Default: 0.5.
    pub feed: f64,
    /// Mass of hook and weight on a piece; give its volume too. Unit: g; 0 to 1e15. Default: 0.
    pub hook_mass_g: f64,
    /// Volume that hook and weight displace; give their mass too. Unit: mL; 0 to 1e15. Default: 0.
    pub hook_volume_ml: f64,
    /// Practical salinity as a probe reads it, about 35 in the ocean; give this or the absolute one. Fresh
    /// water without either. Unit: 1; 0 to 41.8. Default: none.
    pub salinity_practical: f64,
    /// Absolute salinity, mass of salt per mass of sea water (35 g/kg is 0.035); give this or the practical
    /// one. Unit: 1; 0 to 0.042. Default: none.
    pub salinity_absolute: f64,
    /// Depth of a timed drop, the piece let go just below the surface. Unit: m; 1e-9 to 12000. Default: none.
    pub drop_depth_m: f64,
    /// Time of the timed drop. Unit: s; 1e-6 to 1e9. Default: none.
    pub drop_time_s: f64,
    /// Density of the piece that was dropped. Unit: g/mL; 0.001 to 25. Default: none.
    pub drop_density_g_per_ml: f64,
}

/// The results of `pour_salt_for_sink_rate`.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_salt_for_sink_rate_result {
    /// Mass of salt. Unit: g.
    pub salt_mass_g: f64,
    /// Mass of softener that goes in with it. Unit: g.
    pub softener_mass_g: f64,
    /// Density of the finished plastic at 20 °C, voids counted. Unit: g/mL.
    pub finished_density_g_per_ml: f64,
}

/// Mass of salt at which a piece sinks at a rate.
///
/// The finished density is that for the sink rate (module `process::sink`), of the piece as it is when it has
/// cooled; the salt is that for this density.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_salt_for_sink_rate(
    input: *const pour_salt_for_sink_rate_input,
    result: Option<&mut MaybeUninit<pour_salt_for_sink_rate_result>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut result = result;
    guard(error, &mut || {
        let mut call = Call::new("salt_for_sink_rate");
        // SAFETY: the header asks for a struct that begins with its size, or null.
        let input = unsafe { memory::input(input)? };
        let result = call.keep(memory::given("result", result.as_deref_mut()));
        let base_volume_ml = call.number("base_volume_ml", Parameter::BaseVolume, input.base_volume_ml);
        let base_density_g_per_ml = call.number("base_density_g_per_ml", Parameter::BaseDensity, input.base_density_g_per_ml);
        let salt_density_g_per_ml = call.number("salt_density_g_per_ml", Parameter::SaltDensity, input.salt_density_g_per_ml);
        let sink_rate_cm_per_s = call.number("sink_rate_cm_per_s", Parameter::SinkRate, input.sink_rate_cm_per_s);
        let cavity_volume_ml = call.number("cavity_volume_ml", Parameter::CavityVolume, input.cavity_volume_ml);
        let diameter_mm = call.number("diameter_mm", Parameter::Diameter, input.diameter_mm);
        let water_temperature_celsius = call.number("water_temperature_celsius", Parameter::WaterTemperature, input.water_temperature_celsius);
        let shape = call.optional_word("shape", Parameter::Shape, input.shape);
        let (Some(base_volume_ml), Some(base_density_g_per_ml), Some(salt_density_g_per_ml), Some(sink_rate_cm_per_s), Some(cavity_volume_ml), Some(diameter_mm), Some(water_temperature_celsius), Some(shape), Some(result)) = (base_volume_ml, base_density_g_per_ml, salt_density_g_per_ml, sink_rate_cm_per_s, cavity_volume_ml, diameter_mm, water_temperature_celsius, shape, result) else { return Err(call.failure_with(&[("base_volume_ml", Parameter::BaseVolume, given(input.base_volume_ml)), ("base_density_g_per_ml", Parameter::BaseDensity, given(input.base_density_g_per_ml)), ("salt_density_g_per_ml", Parameter::SaltDensity, given(input.salt_density_g_per_ml)), ("sink_rate_cm_per_s", Parameter::SinkRate, given(input.sink_rate_cm_per_s)), ("cavity_volume_ml", Parameter::CavityVolume, given(input.cavity_volume_ml)), ("diameter_mm", Parameter::Diameter, given(input.diameter_mm)), ("water_temperature_celsius", Parameter::WaterTemperature, given(input.water_temperature_celsius)), ("length_mm", Parameter::Length, given(input.length_mm)), ("mix_mass_g", Parameter::MixMass, given(input.mix_mass_g)), ("mix_volume_ml", Parameter::MixVolume, given(input.mix_volume_ml)), ("hot_volume_ml", Parameter::HotVolume, given(input.hot_volume_ml)), ("shot_temperature_celsius", Parameter::ShotTemperature, given(input.shot_temperature_celsius)), ("voids", Parameter::Voids, given(input.voids)), ("salt_expansion_per_kelvin", Parameter::SaltExpansion, given(input.salt_expansion_per_kelvin)), ("softener_per_salt", Parameter::SoftenerPerSalt, given(input.softener_per_salt)), ("softener_density_g_per_ml", Parameter::SoftenerDensity, given(input.softener_density_g_per_ml)), ("softener_expansion_per_kelvin", Parameter::SoftenerExpansion, given(input.softener_expansion_per_kelvin)), ("most_solids", Parameter::MostSolids, given(input.most_solids)), ("feed", Parameter::Feed, given(input.feed)), ("hook_mass_g", Parameter::HookMass, given(input.hook_mass_g)), ("hook_volume_ml", Parameter::HookVolume, given(input.hook_volume_ml)), ("salinity_practical", Parameter::SalinityPractical, given(input.salinity_practical)), ("salinity_absolute", Parameter::SalinityAbsolute, given(input.salinity_absolute)), ("drop_depth_m", Parameter::DropDepth, given(input.drop_depth_m)), ("drop_time_s", Parameter::DropTime, given(input.drop_time_s)), ("drop_density_g_per_ml", Parameter::DropDensity, given(input.drop_density_g_per_ml))])) };
        let inputs = plain::SaltForSinkRate {
            base_volume_ml,
            base_density_g_per_ml,
            salt_density_g_per_ml,
            sink_rate_cm_per_s,
            cavity_volume_ml,
            diameter_mm,
            water_temperature_celsius,
            length_mm: given(input.length_mm),
            shape,
            mix_mass_g: given(input.mix_mass_g),
            mix_volume_ml: given(input.mix_volume_ml),
            hot_volume_ml: given(input.hot_volume_ml),
            shot_temperature_celsius: given(input.shot_temperature_celsius),
            voids: given(input.voids),
            salt_expansion_per_kelvin: given(input.salt_expansion_per_kelvin),
            softener_per_salt: given(input.softener_per_salt),
            softener_density_g_per_ml: given(input.softener_density_g_per_ml),
            softener_expansion_per_kelvin: given(input.softener_expansion_per_kelvin),
            most_solids: given(input.most_solids),
            feed: given(input.feed),
            hook_mass_g: given(input.hook_mass_g),
            hook_volume_ml: given(input.hook_volume_ml),
            salinity_practical: given(input.salinity_practical),
            salinity_absolute: given(input.salinity_absolute),
            drop_depth_m: given(input.drop_depth_m),
            drop_time_s: given(input.drop_time_s),
            drop_density_g_per_ml: given(input.drop_density_g_per_ml),
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(pour_salt_for_sink_rate_result {
            salt_mass_g: found.salt_mass_g,
            softener_mass_g: found.softener_mass_g,
            finished_density_g_per_ml: found.finished_density_g_per_ml,
        });
        Ok(())
    })
}

/// The columns of `pour_salt_for_sink_rate_n`: the parameters of `pour_salt_for_sink_rate`. Set all to 0 first:
/// a parameter that may be omitted has no column then. A word counts for all rows.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_salt_for_sink_rate_columns {
    /// Volume of the base, cold and liquid, as a cup measures it.
    pub base_volume_ml: pour_column,
    /// Density of the base, cold and liquid, as a cup measures it.
    pub base_density_g_per_ml: pour_column,
    /// True density of the salt: 2.165 g/mL for sodium chloride.
    pub salt_density_g_per_ml: pour_column,
    /// Sink rate: the final speed of the piece.
    pub sink_rate_cm_per_s: pour_column,
    /// Volume of one cavity.
    pub cavity_volume_ml: pour_column,
    /// Mean diameter of the piece.
    pub diameter_mm: pour_column,
    /// Temperature of the water.
    pub water_temperature_celsius: pour_column,
    /// Length of a stick, at least 2.01 diameters; not used for a ball. May be omitted.
    pub length_mm: pour_column,
    /// Shape of the piece as it sinks: a stick sinks sideways. Default: a stick where a length is given, else a
    /// ball. One of `POUR_SHAPE_...`; 0 omits it.
    pub shape: i32,
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
    /// Share of its contraction that a piece draws from the sprue while it cools. Where it is not known, 0.5
    /// counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). May be omitted.
    pub feed: pour_column,
    /// Mass of hook and weight on a piece; give its volume too. May be omitted.
    pub hook_mass_g: pour_column,
    /// Volume that hook and weight displace; give their mass too. May be omitted.
    pub hook_volume_ml: pour_column,
    /// Practical salinity as a probe reads it, about 35 in the ocean; give this or the absolute one. Fresh
    /// water without either. May be omitted.
    pub salinity_practical: pour_column,
    /// Absolute salinity, mass of salt per mass of sea water (35 g/kg is 0.035); give this or the practical
    /// one. May be omitted.
    pub salinity_absolute: pour_column,
    /// Depth of a timed drop, the piece let go just below the surface. May be omitted.
    pub drop_depth_m: pour_column,
    /// Time of the timed drop. May be omitted.
    pub drop_time_s: pour_column,
    /// Density of the piece that was dropped. May be omitted.
    pub drop_density_g_per_ml: pour_column,
}

/// Where `pour_salt_for_sink_rate_n` writes its results. Set all to 0 first: what has no column is not written.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_salt_for_sink_rate_result_columns {
    /// Mass of salt. Unit: g.
    pub salt_mass_g: pour_result_column,
    /// Mass of softener that goes in with it. Unit: g.
    pub softener_mass_g: pour_result_column,
    /// Density of the finished plastic at 20 °C, voids counted. Unit: g/mL.
    pub finished_density_g_per_ml: pour_result_column,
}

/// `pour_salt_for_sink_rate` for every row.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_salt_for_sink_rate_n(
    rows: usize,
    columns: Option<&pour_salt_for_sink_rate_columns>,
    results: Option<&pour_salt_for_sink_rate_result_columns>,
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    guard(error, &mut || {
        together! {
            columns = memory::given("columns", columns);
            results = memory::given("results", results);
        }
        let mut call = Call::new("salt_for_sink_rate");
        let shape = call.optional_word("shape", Parameter::Shape, columns.shape);
        let inputs = [
            columns.base_volume_ml.required("base_volume_ml"),
            columns.base_density_g_per_ml.required("base_density_g_per_ml"),
            columns.salt_density_g_per_ml.required("salt_density_g_per_ml"),
            columns.sink_rate_cm_per_s.required("sink_rate_cm_per_s"),
            columns.cavity_volume_ml.required("cavity_volume_ml"),
            columns.diameter_mm.required("diameter_mm"),
            columns.water_temperature_celsius.required("water_temperature_celsius"),
            columns.length_mm.optional("length_mm"),
            columns.mix_mass_g.optional("mix_mass_g"),
            columns.mix_volume_ml.optional("mix_volume_ml"),
            columns.hot_volume_ml.optional("hot_volume_ml"),
            columns.shot_temperature_celsius.optional("shot_temperature_celsius"),
            columns.voids.optional("voids"),
            columns.salt_expansion_per_kelvin.optional("salt_expansion_per_kelvin"),
            columns.softener_per_salt.optional("softener_per_salt"),
            columns.softener_density_g_per_ml.optional("softener_density_g_per_ml"),
            columns.softener_expansion_per_kelvin.optional("softener_expansion_per_kelvin"),
            columns.most_solids.optional("most_solids"),
            columns.feed.optional("feed"),
            columns.hook_mass_g.optional("hook_mass_g"),
            columns.hook_volume_ml.optional("hook_volume_ml"),
            columns.salinity_practical.optional("salinity_practical"),
            columns.salinity_absolute.optional("salinity_absolute"),
            columns.drop_depth_m.optional("drop_depth_m"),
            columns.drop_time_s.optional("drop_time_s"),
            columns.drop_density_g_per_ml.optional("drop_density_g_per_ml"),
        ];
        let outputs = [
            results.salt_mass_g.named("salt_mass_g"),
            results.softener_mass_g.named("softener_mass_g"),
            results.finished_density_g_per_ml.named("finished_density_g_per_ml"),
        ];
        // SAFETY: the header asks for columns of `rows` numbers, or null.
        let (inputs, outputs) =
            unsafe { (Inputs::new(rows, inputs), Outputs::new(rows, outputs, statuses)) };
        let (inputs, outputs) = (call.keep(inputs), call.keep(outputs));
        let (Some(shape), Some(inputs), Some(outputs)) = (shape, inputs, outputs) else { return Err(call.failure()) };
        outputs.map(inputs, |[base_volume_ml, base_density_g_per_ml, salt_density_g_per_ml, sink_rate_cm_per_s, cavity_volume_ml, diameter_mm, water_temperature_celsius, length_mm, mix_mass_g, mix_volume_ml, hot_volume_ml, shot_temperature_celsius, voids, salt_expansion_per_kelvin, softener_per_salt, softener_density_g_per_ml, softener_expansion_per_kelvin, most_solids, feed, hook_mass_g, hook_volume_ml, salinity_practical, salinity_absolute, drop_depth_m, drop_time_s, drop_density_g_per_ml]| {
            let inputs = plain::SaltForSinkRate {
                base_volume_ml,
                base_density_g_per_ml,
                salt_density_g_per_ml,
                sink_rate_cm_per_s,
                cavity_volume_ml,
                diameter_mm,
                water_temperature_celsius,
                length_mm: given(length_mm),
                shape,
                mix_mass_g: given(mix_mass_g),
                mix_volume_ml: given(mix_volume_ml),
                hot_volume_ml: given(hot_volume_ml),
                shot_temperature_celsius: given(shot_temperature_celsius),
                voids: given(voids),
                salt_expansion_per_kelvin: given(salt_expansion_per_kelvin),
                softener_per_salt: given(softener_per_salt),
                softener_density_g_per_ml: given(softener_density_g_per_ml),
                softener_expansion_per_kelvin: given(softener_expansion_per_kelvin),
                most_solids: given(most_solids),
                feed: given(feed),
                hook_mass_g: given(hook_mass_g),
                hook_volume_ml: given(hook_volume_ml),
                salinity_practical: given(salinity_practical),
                salinity_absolute: given(salinity_absolute),
                drop_depth_m: given(drop_depth_m),
                drop_time_s: given(drop_time_s),
                drop_density_g_per_ml: given(drop_density_g_per_ml),
            };
            let found = inputs.calculate().map_err(call::row_status)?;
            Ok([found.salt_mass_g, found.softener_mass_g, found.finished_density_g_per_ml])
        });
        Ok(())
    })
}

/// The input of `pour_shot_fill`. Begin with `POUR_SHOT_FILL_INPUT_INIT`, in which everything is omitted.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_shot_fill_input {
    /// Size of this struct in bytes, as the macro sets it.
    pub size: usize,
    /// Number of cavities that a shot fills. 1 to 1000000.
    pub cavities: u32,
    /// Volume of one cavity. Unit: mL; 1e-9 to 1e15.
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
/// Of sprue and topping a layer fills its share.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_shot_fill(
    input: *const pour_shot_fill_input,
    result: Option<&mut MaybeUninit<pour_shot_fill_result>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut result = result;
    guard(error, &mut || {
        let mut call = Call::new("shot_fill");
        // SAFETY: the header asks for a struct that begins with its size, or null.
        let input = unsafe { memory::input(input)? };
        let result = call.keep(memory::given("result", result.as_deref_mut()));
        let cavities = call.count("cavities", Parameter::Cavities, input.cavities);
        let cavity_volume_ml = call.number("cavity_volume_ml", Parameter::CavityVolume, input.cavity_volume_ml);
        let cold_density_g_per_ml = call.number("cold_density_g_per_ml", Parameter::ColdDensity, input.cold_density_g_per_ml);
        let (Some(cavities), Some(cavity_volume_ml), Some(cold_density_g_per_ml), Some(result)) = (cavities, cavity_volume_ml, cold_density_g_per_ml, result) else { return Err(call.failure_with(&[("cavities", Parameter::Cavities, call::given_count(input.cavities).map(f64::from)), ("cavity_volume_ml", Parameter::CavityVolume, given(input.cavity_volume_ml)), ("cold_density_g_per_ml", Parameter::ColdDensity, given(input.cold_density_g_per_ml)), ("hot_density_g_per_ml", Parameter::HotDensity, given(input.hot_density_g_per_ml)), ("voids", Parameter::Voids, given(input.voids)), ("feed", Parameter::Feed, given(input.feed)), ("sprue_volume_ml", Parameter::SprueVolume, given(input.sprue_volume_ml)), ("topped_mass_g", Parameter::ToppedMass, given(input.topped_mass_g)), ("layer_share", Parameter::LayerShare, given(input.layer_share))])) };
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
/// may be omitted has no column then.
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
        together! {
            columns = memory::given("columns", columns);
            results = memory::given("results", results);
        }
        let mut call = Call::new("shot_fill");
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
            unsafe { (Inputs::new(rows, inputs), Outputs::new(rows, outputs, statuses)) };
        let (inputs, outputs) = (call.keep(inputs), call.keep(outputs));
        let (Some(inputs), Some(outputs)) = (inputs, outputs) else { return Err(call.failure()) };
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
/// `cavity_volume_ml`: Volume of one cavity. Unit: mL; 1e-9 to 1e15.
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
        let result = call.keep(memory::given("result", result.as_deref_mut()));
        let cavity_volume_ml = call.number("cavity_volume_ml", Parameter::CavityVolume, cavity_volume_ml);
        let cold_density_g_per_ml = call.number("cold_density_g_per_ml", Parameter::ColdDensity, cold_density_g_per_ml);
        let (Some(cavity_volume_ml), Some(cold_density_g_per_ml), Some(result)) = (cavity_volume_ml, cold_density_g_per_ml, result) else { return Err(call.failure_with(&[("cavity_volume_ml", Parameter::CavityVolume, cavity_volume_ml), ("cold_density_g_per_ml", Parameter::ColdDensity, cold_density_g_per_ml), ("hot_density_g_per_ml", Parameter::HotDensity, given(hot_density_g_per_ml)), ("voids", Parameter::Voids, given(voids)), ("feed", Parameter::Feed, given(feed))])) };
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
/// that may be omitted has no column then.
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
        together! {
            columns = memory::given("columns", columns);
            results = memory::given("results", results);
        }
        let mut call = Call::new("piece_mass");
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
            unsafe { (Inputs::new(rows, inputs), Outputs::new(rows, outputs, statuses)) };
        let (inputs, outputs) = (call.keep(inputs), call.keep(outputs));
        let (Some(inputs), Some(outputs)) = (inputs, outputs) else { return Err(call.failure()) };
        outputs.map_blocks(inputs, &PhantomData::<plain::PieceMass>);
        Ok(())
    })
}

impl Rows<5, 3> for PhantomData<plain::PieceMass> {
    #[inline(always)]
    fn total(&self, [cavity_volume_ml, cold_density_g_per_ml, hot_density_g_per_ml, voids, feed]: [f64; 5]) -> ([f64; 3], bool) {
        let (found, is_answer) = plain::PieceMass { cavity_volume_ml, cold_density_g_per_ml, hot_density_g_per_ml: given(hot_density_g_per_ml), voids: given(voids), feed: given(feed) }.total();
        ([found.piece_mass_g, found.piece_mass_min_g, found.piece_mass_max_g], is_answer)
    }

    fn calculate(&self, [cavity_volume_ml, cold_density_g_per_ml, hot_density_g_per_ml, voids, feed]: [f64; 5]) -> Result<[f64; 3], i32> {
        let found = plain::PieceMass { cavity_volume_ml, cold_density_g_per_ml, hot_density_g_per_ml: given(hot_density_g_per_ml), voids: given(voids), feed: given(feed) }.calculate().map_err(call::row_status)?;
        Ok([found.piece_mass_g, found.piece_mass_min_g, found.piece_mass_max_g])
    }
}

/// The results of `pour_shots`.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_shots_result {
    /// Number of shots.
    pub shots: u32,
    /// Number of pieces that they cast.
    pub cast: u32,
}

/// Minimum number of shots for a number of good pieces.
///
/// Without rejects ⌈N/n⌉; with a reject rate p the smallest S with P[Bin(S n, 1 − p) ≥ N] ≥ the confidence.
///
/// `pieces`: Number of good pieces needed. 1 to 1000000.
/// `cavities`: Number of cavities that a shot fills. 1 to 1000000.
/// `rejects`: Share of pieces that are not fit to sell. Unit: 1; 0 to below 1. Default: 0.
/// `confidence`: Confidence that enough good pieces come out. Unit: 1; above 0 to 0.999999999. Default: 0.9.
#[unsafe(no_mangle)]
pub extern "C" fn pour_shots(
    pieces: u32,
    cavities: u32,
    rejects: f64,
    confidence: f64,
    result: Option<&mut MaybeUninit<pour_shots_result>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut result = result;
    guard(error, &mut || {
        let mut call = Call::new("shots");
        let result = call.keep(memory::given("result", result.as_deref_mut()));
        let pieces = call.count("pieces", Parameter::Pieces, pieces);
        let cavities = call.count("cavities", Parameter::Cavities, cavities);
        let (Some(pieces), Some(cavities), Some(result)) = (pieces, cavities, result) else { return Err(call.failure_with(&[("pieces", Parameter::Pieces, pieces.map(f64::from)), ("cavities", Parameter::Cavities, cavities.map(f64::from)), ("rejects", Parameter::Rejects, given(rejects)), ("confidence", Parameter::Confidence, given(confidence))])) };
        let inputs = plain::Shots {
            pieces,
            cavities,
            rejects: given(rejects),
            confidence: given(confidence),
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(pour_shots_result {
            shots: found.shots,
            cast: found.cast,
        });
        Ok(())
    })
}

/// The columns of `pour_shots_n`: the parameters of `pour_shots`. Set all to 0 first: a parameter that may be
/// omitted has no column then.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_shots_columns {
    /// Number of good pieces needed.
    pub pieces: pour_column,
    /// Number of cavities that a shot fills.
    pub cavities: pour_column,
    /// Share of pieces that are not fit to sell. May be omitted.
    pub rejects: pour_column,
    /// Confidence that enough good pieces come out. May be omitted.
    pub confidence: pour_column,
}

/// Where `pour_shots_n` writes its results. Set all to 0 first: what has no column is not written.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_shots_result_columns {
    /// Number of shots.
    pub shots: pour_result_column,
    /// Number of pieces that they cast.
    pub cast: pour_result_column,
}

/// `pour_shots` for every row.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_shots_n(
    rows: usize,
    columns: Option<&pour_shots_columns>,
    results: Option<&pour_shots_result_columns>,
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    guard(error, &mut || {
        together! {
            columns = memory::given("columns", columns);
            results = memory::given("results", results);
        }
        let mut call = Call::new("shots");
        let inputs = [
            columns.pieces.required("pieces"),
            columns.cavities.required("cavities"),
            columns.rejects.optional("rejects"),
            columns.confidence.optional("confidence"),
        ];
        let outputs = [
            results.shots.named("shots"),
            results.cast.named("cast"),
        ];
        // SAFETY: the header asks for columns of `rows` numbers, or null.
        let (inputs, outputs) =
            unsafe { (Inputs::new(rows, inputs), Outputs::new(rows, outputs, statuses)) };
        let (inputs, outputs) = (call.keep(inputs), call.keep(outputs));
        let (Some(inputs), Some(outputs)) = (inputs, outputs) else { return Err(call.failure()) };
        outputs.map(inputs, |[pieces, cavities, rejects, confidence]| {
            let inputs = plain::Shots {
                pieces: call::column_count(Parameter::Pieces, pieces)?,
                cavities: call::column_count(Parameter::Cavities, cavities)?,
                rejects: given(rejects),
                confidence: given(confidence),
            };
            let found = inputs.calculate().map_err(call::row_status)?;
            Ok([f64::from(found.shots), f64::from(found.cast)])
        });
        Ok(())
    })
}

/// The results of `pour_injector_loads`.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_injector_loads_result {
    /// Number of injector loads.
    pub loads: u32,
    /// Whole shots in one load.
    pub shots_per_load: u32,
    /// Shots from the last load.
    pub shots_in_last: u32,
}

/// Injector loads for a number of shots.
///
/// Whole shots a load: q = ⌊(capacity − residue) ρ/m⌋; loads: ⌈S/q⌉.
///
/// `shots`: Number of shots. 1 to 100000000.
/// `shot_mass_g`: Mass of one shot, sprue included. Unit: g; 1e-12 to 1e15.
/// `shot_density_g_per_ml`: Density of what the injector draws: hot, voids counted. Unit: g/mL; 0.001 to 25.
/// `injector_capacity_ml`: Volume that the injector takes up at most. Unit: mL; 1e-9 to 1e15.
/// `injector_residue_ml`: Volume that stays in the injector each time it is emptied; below its capacity. Unit:
/// mL; 0 to 1e15. Default: 0.
#[unsafe(no_mangle)]
pub extern "C" fn pour_injector_loads(
    shots: u32,
    shot_mass_g: f64,
    shot_density_g_per_ml: f64,
    injector_capacity_ml: f64,
    injector_residue_ml: f64,
    result: Option<&mut MaybeUninit<pour_injector_loads_result>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut result = result;
    guard(error, &mut || {
        let mut call = Call::new("injector_loads");
        let result = call.keep(memory::given("result", result.as_deref_mut()));
        let shots = call.count("shots", Parameter::Shots, shots);
        let shot_mass_g = call.number("shot_mass_g", Parameter::ShotMass, shot_mass_g);
        let shot_density_g_per_ml = call.number("shot_density_g_per_ml", Parameter::ShotDensity, shot_density_g_per_ml);
        let injector_capacity_ml = call.number("injector_capacity_ml", Parameter::InjectorCapacity, injector_capacity_ml);
        let (Some(shots), Some(shot_mass_g), Some(shot_density_g_per_ml), Some(injector_capacity_ml), Some(result)) = (shots, shot_mass_g, shot_density_g_per_ml, injector_capacity_ml, result) else { return Err(call.failure_with(&[("shots", Parameter::Shots, shots.map(f64::from)), ("shot_mass_g", Parameter::ShotMass, shot_mass_g), ("shot_density_g_per_ml", Parameter::ShotDensity, shot_density_g_per_ml), ("injector_capacity_ml", Parameter::InjectorCapacity, injector_capacity_ml), ("injector_residue_ml", Parameter::InjectorResidue, given(injector_residue_ml))])) };
        let inputs = plain::InjectorLoads {
            shots,
            shot_mass_g,
            shot_density_g_per_ml,
            injector_capacity_ml,
            injector_residue_ml: given(injector_residue_ml),
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(pour_injector_loads_result {
            loads: found.loads,
            shots_per_load: found.shots_per_load,
            shots_in_last: found.shots_in_last,
        });
        Ok(())
    })
}

/// The columns of `pour_injector_loads_n`: the parameters of `pour_injector_loads`. Set all to 0 first: a
/// parameter that may be omitted has no column then.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_injector_loads_columns {
    /// Number of shots.
    pub shots: pour_column,
    /// Mass of one shot, sprue included.
    pub shot_mass_g: pour_column,
    /// Density of what the injector draws: hot, voids counted.
    pub shot_density_g_per_ml: pour_column,
    /// Volume that the injector takes up at most.
    pub injector_capacity_ml: pour_column,
    /// Volume that stays in the injector each time it is emptied; below its capacity. May be omitted.
    pub injector_residue_ml: pour_column,
}

/// Where `pour_injector_loads_n` writes its results. Set all to 0 first: what has no column is not written.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_injector_loads_result_columns {
    /// Number of injector loads.
    pub loads: pour_result_column,
    /// Whole shots in one load.
    pub shots_per_load: pour_result_column,
    /// Shots from the last load.
    pub shots_in_last: pour_result_column,
}

/// `pour_injector_loads` for every row.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_injector_loads_n(
    rows: usize,
    columns: Option<&pour_injector_loads_columns>,
    results: Option<&pour_injector_loads_result_columns>,
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    guard(error, &mut || {
        together! {
            columns = memory::given("columns", columns);
            results = memory::given("results", results);
        }
        let mut call = Call::new("injector_loads");
        let inputs = [
            columns.shots.required("shots"),
            columns.shot_mass_g.required("shot_mass_g"),
            columns.shot_density_g_per_ml.required("shot_density_g_per_ml"),
            columns.injector_capacity_ml.required("injector_capacity_ml"),
            columns.injector_residue_ml.optional("injector_residue_ml"),
        ];
        let outputs = [
            results.loads.named("loads"),
            results.shots_per_load.named("shots_per_load"),
            results.shots_in_last.named("shots_in_last"),
        ];
        // SAFETY: the header asks for columns of `rows` numbers, or null.
        let (inputs, outputs) =
            unsafe { (Inputs::new(rows, inputs), Outputs::new(rows, outputs, statuses)) };
        let (inputs, outputs) = (call.keep(inputs), call.keep(outputs));
        let (Some(inputs), Some(outputs)) = (inputs, outputs) else { return Err(call.failure()) };
        outputs.map(inputs, |[shots, shot_mass_g, shot_density_g_per_ml, injector_capacity_ml, injector_residue_ml]| {
            let inputs = plain::InjectorLoads {
                shots: call::column_count(Parameter::Shots, shots)?,
                shot_mass_g,
                shot_density_g_per_ml,
                injector_capacity_ml,
                injector_residue_ml: given(injector_residue_ml),
            };
            let found = inputs.calculate().map_err(call::row_status)?;
            Ok([f64::from(found.loads), f64::from(found.shots_per_load), f64::from(found.shots_in_last)])
        });
        Ok(())
    })
}

/// The input of `pour_batch_need`. Begin with `POUR_BATCH_NEED_INPUT_INIT`, in which everything is omitted.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_batch_need_input {
    /// Size of this struct in bytes, as the macro sets it.
    pub size: usize,
    /// Number of good pieces needed. 1 to 1000000.
    pub pieces: u32,
    /// Number of cavities that a shot fills. 1 to 1000000.
    pub cavities: u32,
    /// Mass of one shot, sprue included. Unit: g; 1e-12 to 1e15.
    pub shot_mass_g: f64,
    /// Density of what the injector draws: hot, voids counted. Unit: g/mL; 0.001 to 25.
    pub shot_density_g_per_ml: f64,
    /// Volume that the injector takes up at most. Unit: mL; 1e-9 to 1e15.
    pub injector_capacity_ml: f64,
    /// Volume that stays in the injector each time it is emptied; below its capacity. Unit: mL; 0 to 1e15.
    /// Default: 0.
    pub injector_residue_ml: f64,
    /// Number of times the injector is cleaned or goes cold, the last time included. 1 to 1000000. Default: 1.
    pub cleanings: u32,
    /// Mass of a shot that stays as sprue; at most the mass of the shot. Unit: g; 0 to 1e15. Default: 0.
    pub sprue_mass_g: f64,
    /// Share of the sprues that is melted again. Unit: 1; 0 to 1. Default: 0.
    pub returned: f64,
    /// Mass that clings to the wall of the cup, part of the heel. Unit: g; 0 to 1e15. Default: 0.
    pub pot_film_g: f64,
    /// Mass that cannot be drawn from the cup, its film included. Unit: g; 0 to 1e15. Default: 0.
    pub pot_heel_g: f64,
    /// Share of pieces that are not fit to sell. Unit: 1; 0 to below 1. Default: 0.
    pub rejects: f64,
    /// Confidence that enough good pieces come out. Unit: 1; above 0 to 0.999999999. Default: 0.9.
    pub confidence: f64,
}

/// The results of `pour_batch_need`.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_batch_need_result {
    /// Mass to mix. Unit: g.
    pub total_mass_g: f64,
    /// Mass of all shots. Unit: g.
    pub drawn_mass_g: f64,
    /// Mass of sprues that go back and are shot again. Unit: g.
    pub returned_mass_g: f64,
    /// Mass of all pieces. Unit: g.
    pub pieces_mass_g: f64,
    /// Mass of sprues that are left over. Unit: g.
    pub sprues_mass_g: f64,
    /// Mass that stays in the injector over the run. Unit: g.
    pub kept_mass_g: f64,
    /// Mass that stays in the cup: the heel, with the film in it. Unit: g.
    pub in_cup_mass_g: f64,
    /// Number of shots.
    pub shots: u32,
    /// Number of injector loads.
    pub loads: u32,
    /// Whole shots in one load.
    pub shots_per_load: u32,
    /// Shots from the last load.
    pub shots_in_last: u32,
}

/// Mass to mix for a number of good pieces: shots, injector loads, what is lost and what comes back.
///
/// total = S m_shot − y m_sprue (S − shots of the last load) + cleanings · residue · ρ + max(film, heel).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_batch_need(
    input: *const pour_batch_need_input,
    result: Option<&mut MaybeUninit<pour_batch_need_result>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut result = result;
    guard(error, &mut || {
        let mut call = Call::new("batch_need");
        // SAFETY: the header asks for a struct that begins with its size, or null.
        let input = unsafe { memory::input(input)? };
        let result = call.keep(memory::given("result", result.as_deref_mut()));
        let pieces = call.count("pieces", Parameter::Pieces, input.pieces);
        let cavities = call.count("cavities", Parameter::Cavities, input.cavities);
        let shot_mass_g = call.number("shot_mass_g", Parameter::ShotMass, input.shot_mass_g);
        let shot_density_g_per_ml = call.number("shot_density_g_per_ml", Parameter::ShotDensity, input.shot_density_g_per_ml);
        let injector_capacity_ml = call.number("injector_capacity_ml", Parameter::InjectorCapacity, input.injector_capacity_ml);
        let (Some(pieces), Some(cavities), Some(shot_mass_g), Some(shot_density_g_per_ml), Some(injector_capacity_ml), Some(result)) = (pieces, cavities, shot_mass_g, shot_density_g_per_ml, injector_capacity_ml, result) else { return Err(call.failure_with(&[("pieces", Parameter::Pieces, call::given_count(input.pieces).map(f64::from)), ("cavities", Parameter::Cavities, call::given_count(input.cavities).map(f64::from)), ("shot_mass_g", Parameter::ShotMass, given(input.shot_mass_g)), ("shot_density_g_per_ml", Parameter::ShotDensity, given(input.shot_density_g_per_ml)), ("injector_capacity_ml", Parameter::InjectorCapacity, given(input.injector_capacity_ml)), ("injector_residue_ml", Parameter::InjectorResidue, given(input.injector_residue_ml)), ("cleanings", Parameter::Cleanings, call::given_count(input.cleanings).map(f64::from)), ("sprue_mass_g", Parameter::SprueMass, given(input.sprue_mass_g)), ("returned", Parameter::Returned, given(input.returned)), ("pot_film_g", Parameter::PotFilm, given(input.pot_film_g)), ("pot_heel_g", Parameter::PotHeel, given(input.pot_heel_g)), ("rejects", Parameter::Rejects, given(input.rejects)), ("confidence", Parameter::Confidence, given(input.confidence))])) };
        let inputs = plain::BatchNeed {
            pieces,
            cavities,
            shot_mass_g,
            shot_density_g_per_ml,
            injector_capacity_ml,
            injector_residue_ml: given(input.injector_residue_ml),
            cleanings: call::given_count(input.cleanings),
            sprue_mass_g: given(input.sprue_mass_g),
            returned: given(input.returned),
            pot_film_g: given(input.pot_film_g),
            pot_heel_g: given(input.pot_heel_g),
            rejects: given(input.rejects),
            confidence: given(input.confidence),
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(pour_batch_need_result {
            total_mass_g: found.total_mass_g,
            drawn_mass_g: found.drawn_mass_g,
            returned_mass_g: found.returned_mass_g,
            pieces_mass_g: found.pieces_mass_g,
            sprues_mass_g: found.sprues_mass_g,
            kept_mass_g: found.kept_mass_g,
            in_cup_mass_g: found.in_cup_mass_g,
            shots: found.shots,
            loads: found.loads,
            shots_per_load: found.shots_per_load,
            shots_in_last: found.shots_in_last,
        });
        Ok(())
    })
}

/// The columns of `pour_batch_need_n`: the parameters of `pour_batch_need`. Set all to 0 first: a parameter
/// that may be omitted has no column then.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_batch_need_columns {
    /// Number of good pieces needed.
    pub pieces: pour_column,
    /// Number of cavities that a shot fills.
    pub cavities: pour_column,
    /// Mass of one shot, sprue included.
    pub shot_mass_g: pour_column,
    /// Density of what the injector draws: hot, voids counted.
    pub shot_density_g_per_ml: pour_column,
    /// Volume that the injector takes up at most.
    pub injector_capacity_ml: pour_column,
    /// Volume that stays in the injector each time it is emptied; below its capacity. May be omitted.
    pub injector_residue_ml: pour_column,
    /// Number of times the injector is cleaned or goes cold, the last time included. May be omitted.
    pub cleanings: pour_column,
    /// Mass of a shot that stays as sprue; at most the mass of the shot. May be omitted.
    pub sprue_mass_g: pour_column,
    /// Share of the sprues that is melted again. May be omitted.
    pub returned: pour_column,
    /// Mass that clings to the wall of the cup, part of the heel. May be omitted.
    pub pot_film_g: pour_column,
    /// Mass that cannot be drawn from the cup, its film included. May be omitted.
    pub pot_heel_g: pour_column,
    /// Share of pieces that are not fit to sell. May be omitted.
    pub rejects: pour_column,
    /// Confidence that enough good pieces come out. May be omitted.
    pub confidence: pour_column,
}

/// Where `pour_batch_need_n` writes its results. Set all to 0 first: what has no column is not written.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_batch_need_result_columns {
    /// Mass to mix. Unit: g.
    pub total_mass_g: pour_result_column,
    /// Mass of all shots. Unit: g.
    pub drawn_mass_g: pour_result_column,
    /// Mass of sprues that go back and are shot again. Unit: g.
    pub returned_mass_g: pour_result_column,
    /// Mass of all pieces. Unit: g.
    pub pieces_mass_g: pour_result_column,
    /// Mass of sprues that are left over. Unit: g.
    pub sprues_mass_g: pour_result_column,
    /// Mass that stays in the injector over the run. Unit: g.
    pub kept_mass_g: pour_result_column,
    /// Mass that stays in the cup: the heel, with the film in it. Unit: g.
    pub in_cup_mass_g: pour_result_column,
    /// Number of shots.
    pub shots: pour_result_column,
    /// Number of injector loads.
    pub loads: pour_result_column,
    /// Whole shots in one load.
    pub shots_per_load: pour_result_column,
    /// Shots from the last load.
    pub shots_in_last: pour_result_column,
}

/// `pour_batch_need` for every row.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_batch_need_n(
    rows: usize,
    columns: Option<&pour_batch_need_columns>,
    results: Option<&pour_batch_need_result_columns>,
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    guard(error, &mut || {
        together! {
            columns = memory::given("columns", columns);
            results = memory::given("results", results);
        }
        let mut call = Call::new("batch_need");
        let inputs = [
            columns.pieces.required("pieces"),
            columns.cavities.required("cavities"),
            columns.shot_mass_g.required("shot_mass_g"),
            columns.shot_density_g_per_ml.required("shot_density_g_per_ml"),
            columns.injector_capacity_ml.required("injector_capacity_ml"),
            columns.injector_residue_ml.optional("injector_residue_ml"),
            columns.cleanings.optional("cleanings"),
            columns.sprue_mass_g.optional("sprue_mass_g"),
            columns.returned.optional("returned"),
            columns.pot_film_g.optional("pot_film_g"),
            columns.pot_heel_g.optional("pot_heel_g"),
            columns.rejects.optional("rejects"),
            columns.confidence.optional("confidence"),
        ];
        let outputs = [
            results.total_mass_g.named("total_mass_g"),
            results.drawn_mass_g.named("drawn_mass_g"),
            results.returned_mass_g.named("returned_mass_g"),
            results.pieces_mass_g.named("pieces_mass_g"),
            results.sprues_mass_g.named("sprues_mass_g"),
            results.kept_mass_g.named("kept_mass_g"),
            results.in_cup_mass_g.named("in_cup_mass_g"),
            results.shots.named("shots"),
            results.loads.named("loads"),
            results.shots_per_load.named("shots_per_load"),
            results.shots_in_last.named("shots_in_last"),
        ];
        // SAFETY: the header asks for columns of `rows` numbers, or null.
        let (inputs, outputs) =
            unsafe { (Inputs::new(rows, inputs), Outputs::new(rows, outputs, statuses)) };
        let (inputs, outputs) = (call.keep(inputs), call.keep(outputs));
        let (Some(inputs), Some(outputs)) = (inputs, outputs) else { return Err(call.failure()) };
        outputs.map(inputs, |[pieces, cavities, shot_mass_g, shot_density_g_per_ml, injector_capacity_ml, injector_residue_ml, cleanings, sprue_mass_g, returned, pot_film_g, pot_heel_g, rejects, confidence]| {
            let inputs = plain::BatchNeed {
                pieces: call::column_count(Parameter::Pieces, pieces)?,
                cavities: call::column_count(Parameter::Cavities, cavities)?,
                shot_mass_g,
                shot_density_g_per_ml,
                injector_capacity_ml,
                injector_residue_ml: given(injector_residue_ml),
                cleanings: call::given_column_count(Parameter::Cleanings, cleanings)?,
                sprue_mass_g: given(sprue_mass_g),
                returned: given(returned),
                pot_film_g: given(pot_film_g),
                pot_heel_g: given(pot_heel_g),
                rejects: given(rejects),
                confidence: given(confidence),
            };
            let found = inputs.calculate().map_err(call::row_status)?;
            Ok([found.total_mass_g, found.drawn_mass_g, found.returned_mass_g, found.pieces_mass_g, found.sprues_mass_g, found.kept_mass_g, found.in_cup_mass_g, f64::from(found.shots), f64::from(found.loads), f64::from(found.shots_per_load), f64::from(found.shots_in_last)])
        });
        Ok(())
    })
}

/// The results of `pour_base_to_mark`.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_base_to_mark_result {
    /// Volume of base: the mark. Unit: mL.
    pub base_volume_ml: f64,
    /// Mass of that base. Unit: g.
    pub base_mass_g: f64,
    /// Mass of the mix with all doses. Unit: g.
    pub mix_mass_g: f64,
    /// Mass that is more than needed. Unit: g.
    pub surplus_mass_g: f64,
    /// Whole shots that the surplus gives, where the mass of a shot is given. `POUR_OMITTED_COUNT` where there
    /// is none.
    pub extra_shots: u32,
}

/// Base for a mass of mix, rounded up to a mark of the cup, and what that gives more than is needed.
///
/// The doses follow from the rounded base, so that no formula is off.
///
/// `mix_needed_g`: Mass of mix that is needed. Unit: g; 1e-12 to 1e15.
/// `base_fraction`: Share of base in the mix, by mass. Unit: 1; above 0 to 1.
/// `base_density_g_per_ml`: Density of the base, cold and liquid, as a cup measures it. Unit: g/mL; 0.001 to
/// 25.
/// `cup_capacity_ml`: Volume of the cup up to its last mark. Unit: mL; 1e-9 to 1e15.
/// `cup_mark_ml`: Distance between the marks of the cup. Unit: mL; 1e-9 to 1e15. Default: one mark alone, when
/// it is full.
/// `shot_mass_g`: Mass of one shot, sprue included. Unit: g; 1e-12 to 1e15. It may be omitted.
#[unsafe(no_mangle)]
pub extern "C" fn pour_base_to_mark(
    mix_needed_g: f64,
    base_fraction: f64,
    base_density_g_per_ml: f64,
    cup_capacity_ml: f64,
    cup_mark_ml: f64,
    shot_mass_g: f64,
    result: Option<&mut MaybeUninit<pour_base_to_mark_result>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut result = result;
    guard(error, &mut || {
        let mut call = Call::new("base_to_mark");
        let result = call.keep(memory::given("result", result.as_deref_mut()));
        let mix_needed_g = call.number("mix_needed_g", Parameter::MixNeeded, mix_needed_g);
        let base_fraction = call.number("base_fraction", Parameter::BaseFraction, base_fraction);
        let base_density_g_per_ml = call.number("base_density_g_per_ml", Parameter::BaseDensity, base_density_g_per_ml);
        let cup_capacity_ml = call.number("cup_capacity_ml", Parameter::CupCapacity, cup_capacity_ml);
        let (Some(mix_needed_g), Some(base_fraction), Some(base_density_g_per_ml), Some(cup_capacity_ml), Some(result)) = (mix_needed_g, base_fraction, base_density_g_per_ml, cup_capacity_ml, result) else { return Err(call.failure_with(&[("mix_needed_g", Parameter::MixNeeded, mix_needed_g), ("base_fraction", Parameter::BaseFraction, base_fraction), ("base_density_g_per_ml", Parameter::BaseDensity, base_density_g_per_ml), ("cup_capacity_ml", Parameter::CupCapacity, cup_capacity_ml), ("cup_mark_ml", Parameter::CupMark, given(cup_mark_ml)), ("shot_mass_g", Parameter::ShotMass, given(shot_mass_g))])) };
        let inputs = plain::BaseToMark {
            mix_needed_g,
            base_fraction,
            base_density_g_per_ml,
            cup_capacity_ml,
            cup_mark_ml: given(cup_mark_ml),
            shot_mass_g: given(shot_mass_g),
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(pour_base_to_mark_result {
            base_volume_ml: found.base_volume_ml,
            base_mass_g: found.base_mass_g,
            mix_mass_g: found.mix_mass_g,
            surplus_mass_g: found.surplus_mass_g,
            extra_shots: call::result_count(found.extra_shots),
        });
        Ok(())
    })
}

/// The columns of `pour_base_to_mark_n`: the parameters of `pour_base_to_mark`. Set all to 0 first: a parameter
/// that may be omitted has no column then.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_base_to_mark_columns {
    /// Mass of mix that is needed.
    pub mix_needed_g: pour_column,
    /// Share of base in the mix, by mass.
    pub base_fraction: pour_column,
    /// Density of the base, cold and liquid, as a cup measures it.
    pub base_density_g_per_ml: pour_column,
    /// Volume of the cup up to its last mark.
    pub cup_capacity_ml: pour_column,
    /// Distance between the marks of the cup. May be omitted.
    pub cup_mark_ml: pour_column,
    /// Mass of one shot, sprue included. May be omitted.
    pub shot_mass_g: pour_column,
}

/// Where `pour_base_to_mark_n` writes its results. Set all to 0 first: what has no column is not written.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_base_to_mark_result_columns {
    /// Volume of base: the mark. Unit: mL.
    pub base_volume_ml: pour_result_column,
    /// Mass of that base. Unit: g.
    pub base_mass_g: pour_result_column,
    /// Mass of the mix with all doses. Unit: g.
    pub mix_mass_g: pour_result_column,
    /// Mass that is more than needed. Unit: g.
    pub surplus_mass_g: pour_result_column,
    /// Whole shots that the surplus gives, where the mass of a shot is given. NaN where there is none.
    pub extra_shots: pour_result_column,
}

/// `pour_base_to_mark` for every row.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_base_to_mark_n(
    rows: usize,
    columns: Option<&pour_base_to_mark_columns>,
    results: Option<&pour_base_to_mark_result_columns>,
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    guard(error, &mut || {
        together! {
            columns = memory::given("columns", columns);
            results = memory::given("results", results);
        }
        let mut call = Call::new("base_to_mark");
        let inputs = [
            columns.mix_needed_g.required("mix_needed_g"),
            columns.base_fraction.required("base_fraction"),
            columns.base_density_g_per_ml.required("base_density_g_per_ml"),
            columns.cup_capacity_ml.required("cup_capacity_ml"),
            columns.cup_mark_ml.optional("cup_mark_ml"),
            columns.shot_mass_g.optional("shot_mass_g"),
        ];
        let outputs = [
            results.base_volume_ml.named("base_volume_ml"),
            results.base_mass_g.named("base_mass_g"),
            results.mix_mass_g.named("mix_mass_g"),
            results.surplus_mass_g.named("surplus_mass_g"),
            results.extra_shots.named("extra_shots"),
        ];
        // SAFETY: the header asks for columns of `rows` numbers, or null.
        let (inputs, outputs) =
            unsafe { (Inputs::new(rows, inputs), Outputs::new(rows, outputs, statuses)) };
        let (inputs, outputs) = (call.keep(inputs), call.keep(outputs));
        let (Some(inputs), Some(outputs)) = (inputs, outputs) else { return Err(call.failure()) };
        outputs.map(inputs, |[mix_needed_g, base_fraction, base_density_g_per_ml, cup_capacity_ml, cup_mark_ml, shot_mass_g]| {
            let inputs = plain::BaseToMark {
                mix_needed_g,
                base_fraction,
                base_density_g_per_ml,
                cup_capacity_ml,
                cup_mark_ml: given(cup_mark_ml),
                shot_mass_g: given(shot_mass_g),
            };
            let found = inputs.calculate().map_err(call::row_status)?;
            Ok([found.base_volume_ml, found.base_mass_g, found.mix_mass_g, found.surplus_mass_g, call::result_number(found.extra_shots.map(f64::from))])
        });
        Ok(())
    })
}

/// One row of `doses`. The doses: of each its smallest step, its tolerance and its ratio to the base.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_doses_row {
    /// Smallest step in which a dose can be measured: a drop, the smallest spoon, the readability of the
    /// balance. Unit: g; 1e-12 to 1e15.
    pub dose_step_g: f64,
    /// Largest relative error that is accepted. Unit: 1; above 0 to below 1. Default: 0.05.
    pub tolerance: f64,
    /// Dose, mass per mass of base. Unit: 1; 1e-9 to 10.
    pub dose_ratio: f64,
}

/// The results of `pour_least_pot`.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_least_pot_result {
    /// Mass of the mix. Unit: g.
    pub mix_mass_g: f64,
    /// Mass of base in it. Unit: g.
    pub base_mass_g: f64,
}

/// Smallest pot that the bench can make: base ≥ q/(2·tolerance·ratio) for each dose with its step q, and no
/// less mix than oven and injector need.
///
/// `doses`: The doses: of each its smallest step, its tolerance and its ratio to the base. 1 to 64 of them.
/// `base_fraction`: Share of base in the mix, by mass. Unit: 1; above 0 to 1.
/// `oven_least_g`: Smallest mix that the oven heats evenly. Unit: g; 1e-12 to 1e15. Default: none.
/// `injector_least_g`: Smallest mix that the injector can draw from. Unit: g; 1e-12 to 1e15. Default: none.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_least_pot(
    doses: *const pour_doses_row,
    doses_count: usize,
    base_fraction: f64,
    oven_least_g: f64,
    injector_least_g: f64,
    result: Option<&mut MaybeUninit<pour_least_pot_result>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut result = result;
    guard(error, &mut || {
        let mut call = Call::new("least_pot");
        let result = call.keep(memory::given("result", result.as_deref_mut()));
        // SAFETY: the header asks for a text that ends or an array so long, or null.
        let doses = unsafe { call.rows("doses", Parameter::Doses, doses, doses_count) };
        let base_fraction = call.number("base_fraction", Parameter::BaseFraction, base_fraction);
        let (Some(doses), Some(base_fraction), Some(result)) = (doses, base_fraction, result) else { return Err(call.failure_with(&[("base_fraction", Parameter::BaseFraction, base_fraction), ("oven_least_g", Parameter::OvenLeast, given(oven_least_g)), ("injector_least_g", Parameter::InjectorLeast, given(injector_least_g))])) };
        let inputs = plain::LeastPot {
            doses,
            base_fraction,
            oven_least_g: given(oven_least_g),
            injector_least_g: given(injector_least_g),
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(pour_least_pot_result {
            mix_mass_g: found.mix_mass_g,
            base_mass_g: found.base_mass_g,
        });
        Ok(())
    })
}

/// The results of `pour_reject_rate`.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_reject_rate_result {
    /// Share of rejects. Unit: 1.
    pub rejects: f64,
    /// Its lower bound. Unit: 1.
    pub rejects_min: f64,
    /// Its upper bound. Unit: 1.
    pub rejects_max: f64,
}

/// Reject rate from counted pieces, with the exact interval of a binomial share.
///
/// Clopper and Pearson, Biometrika 26 (1934) 404: it holds at least the confidence stated, mostly more.
///
/// `cast_pieces`: Number of pieces that were cast. 1 to 1000000.
/// `reject_count`: Number of them that are not fit to sell. 0 to 1000000.
/// `confidence`: Confidence that enough good pieces come out. Unit: 1; above 0 to 0.999999999. Default: 0.9.
#[unsafe(no_mangle)]
pub extern "C" fn pour_reject_rate(
    cast_pieces: u32,
    reject_count: u32,
    confidence: f64,
    result: Option<&mut MaybeUninit<pour_reject_rate_result>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut result = result;
    guard(error, &mut || {
        let mut call = Call::new("reject_rate");
        let result = call.keep(memory::given("result", result.as_deref_mut()));
        let cast_pieces = call.count("cast_pieces", Parameter::CastPieces, cast_pieces);
        let reject_count = call.count("reject_count", Parameter::RejectCount, reject_count);
        let (Some(cast_pieces), Some(reject_count), Some(result)) = (cast_pieces, reject_count, result) else { return Err(call.failure_with(&[("cast_pieces", Parameter::CastPieces, cast_pieces.map(f64::from)), ("reject_count", Parameter::RejectCount, reject_count.map(f64::from)), ("confidence", Parameter::Confidence, given(confidence))])) };
        let inputs = plain::RejectRate {
            cast_pieces,
            reject_count,
            confidence: given(confidence),
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(pour_reject_rate_result {
            rejects: found.rejects,
            rejects_min: found.rejects_min,
            rejects_max: found.rejects_max,
        });
        Ok(())
    })
}

/// The columns of `pour_reject_rate_n`: the parameters of `pour_reject_rate`. Set all to 0 first: a parameter
/// that may be omitted has no column then.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_reject_rate_columns {
    /// Number of pieces that were cast.
    pub cast_pieces: pour_column,
    /// Number of them that are not fit to sell.
    pub reject_count: pour_column,
    /// Confidence that enough good pieces come out. May be omitted.
    pub confidence: pour_column,
}

/// Where `pour_reject_rate_n` writes its results. Set all to 0 first: what has no column is not written.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_reject_rate_result_columns {
    /// Share of rejects. Unit: 1.
    pub rejects: pour_result_column,
    /// Its lower bound. Unit: 1.
    pub rejects_min: pour_result_column,
    /// Its upper bound. Unit: 1.
    pub rejects_max: pour_result_column,
}

/// `pour_reject_rate` for every row.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_reject_rate_n(
    rows: usize,
    columns: Option<&pour_reject_rate_columns>,
    results: Option<&pour_reject_rate_result_columns>,
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    guard(error, &mut || {
        together! {
            columns = memory::given("columns", columns);
            results = memory::given("results", results);
        }
        let mut call = Call::new("reject_rate");
        let inputs = [
            columns.cast_pieces.required("cast_pieces"),
            columns.reject_count.required("reject_count"),
            columns.confidence.optional("confidence"),
        ];
        let outputs = [
            results.rejects.named("rejects"),
            results.rejects_min.named("rejects_min"),
            results.rejects_max.named("rejects_max"),
        ];
        // SAFETY: the header asks for columns of `rows` numbers, or null.
        let (inputs, outputs) =
            unsafe { (Inputs::new(rows, inputs), Outputs::new(rows, outputs, statuses)) };
        let (inputs, outputs) = (call.keep(inputs), call.keep(outputs));
        let (Some(inputs), Some(outputs)) = (inputs, outputs) else { return Err(call.failure()) };
        outputs.map(inputs, |[cast_pieces, reject_count, confidence]| {
            let inputs = plain::RejectRate {
                cast_pieces: call::column_count(Parameter::CastPieces, cast_pieces)?,
                reject_count: call::column_count(Parameter::RejectCount, reject_count)?,
                confidence: given(confidence),
            };
            let found = inputs.calculate().map_err(call::row_status)?;
            Ok([found.rejects, found.rejects_min, found.rejects_max])
        });
        Ok(())
    })
}

/// One row of `cups`. The cups with evenly spaced marks: of each the distance between marks and the capacity.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_cups_row {
    /// Distance between the marks of the cup. Unit: mL; 1e-9 to 1e15. Default: one mark alone, when it is full.
    pub cup_mark_ml: f64,
    /// Volume of the cup up to its last mark. Unit: mL; 1e-9 to 1e15.
    pub cup_capacity_ml: f64,
}

/// The input of `pour_bench_measure`. Begin with `POUR_BENCH_MEASURE_INPUT_INIT`, in which everything is
/// omitted.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_bench_measure_input {
    /// Size of this struct in bytes, as the macro sets it.
    pub size: usize,
    /// Mass to measure. Unit: g; 1e-12 to 1e15.
    pub mass_to_measure_g: f64,
    /// Largest relative error that is accepted. Unit: 1; above 0 to below 1. Default: 0.05.
    pub tolerance: f64,
    /// Smallest difference that the balance shows; without it there is no balance. Unit: g; 1e-12 to 1e15.
    /// Default: none.
    pub balance_readability_g: f64,
    /// Highest load of the balance. Unit: g; 1e-12 to 1e15. Default: 5000 times its readability.
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
    /// Mass of one drop. Unit: g; 1e-12 to 1e15. Default: none.
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
/// A tool that is not given is not on the bench. Where no tool keeps the tolerance, the help gives the mass
/// from which one would.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_bench_measure(
    input: *const pour_bench_measure_input,
    result: Option<&mut MaybeUninit<pour_bench_measure_result>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut result = result;
    guard(error, &mut || {
        let mut call = Call::new("bench_measure");
        // SAFETY: the header asks for a struct that begins with its size, or null.
        let input = unsafe { memory::input(input)? };
        let result = call.keep(memory::given("result", result.as_deref_mut()));
        let mass_to_measure_g = call.number("mass_to_measure_g", Parameter::MassToMeasure, input.mass_to_measure_g);
        // SAFETY: the header asks for a text that ends or an array so long, or null.
        let spoons_ml = unsafe { call.optional_list("spoons_ml", Parameter::Spoons, input.spoons_ml, input.spoons_count) };
        // SAFETY: the header asks for a text that ends or an array so long, or null.
        let cups = unsafe { call.optional_rows("cups", Parameter::Cups, input.cups, input.cups_count) };
        let (Some(mass_to_measure_g), Some(spoons_ml), Some(cups), Some(result)) = (mass_to_measure_g, spoons_ml, cups, result) else { return Err(call.failure_with(&[("mass_to_measure_g", Parameter::MassToMeasure, given(input.mass_to_measure_g)), ("tolerance", Parameter::Tolerance, given(input.tolerance)), ("balance_readability_g", Parameter::BalanceReadability, given(input.balance_readability_g)), ("balance_capacity_g", Parameter::BalanceCapacity, given(input.balance_capacity_g)), ("balance_least_load_g", Parameter::BalanceLeastLoad, given(input.balance_least_load_g)), ("as_measured_density_g_per_ml", Parameter::AsMeasuredDensity, given(input.as_measured_density_g_per_ml)), ("drop_mass_g", Parameter::DropMass, given(input.drop_mass_g))])) };
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

/// The input of `pour_sink_rate`. Begin with `POUR_SINK_RATE_INPUT_INIT`, in which everything is omitted.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_sink_rate_input {
    /// Size of this struct in bytes, as the macro sets it.
    pub size: usize,
    /// Density of the piece, its salt and voids counted. Unit: g/mL; 0.001 to 25.
    pub piece_density_g_per_ml: f64,
    /// Volume of the piece without its hook. Unit: mL; 1e-9 to 1e15.
    pub piece_volume_ml: f64,
    /// Mean diameter of the piece. Unit: mm; 1e-6 to 1e6.
    pub diameter_mm: f64,
    /// Temperature of the water. Unit: °C; 0 to 40.
    pub water_temperature_celsius: f64,
    /// Length of a stick, at least 2.01 diameters; not used for a ball. Unit: mm; 1e-6 to 1e6. Default: none.
    pub length_mm: f64,
    /// Shape of the piece as it sinks: a stick sinks sideways. Default: a stick where a length is given, else a
    /// ball. One of `POUR_SHAPE_...`; 0 omits it.
    pub shape: i32,
    /// Mass of hook and weight on a piece; give its volume too. Unit: g; 0 to 1e15. Default: 0.
    pub hook_mass_g: f64,
    /// Volume that hook and weight displace; give their mass too. Unit: mL; 0 to 1e15. Default: 0.
    pub hook_volume_ml: f64,
    /// Practical salinity as a probe reads it, about 35 in the ocean; give this or the absolute one. Fresh
    /// water without either. Unit: 1; 0 to 41.8. Default: none.
    pub salinity_practical: f64,
    /// Absolute salinity, mass of salt per mass of sea water (35 g/kg is 0.035); give this or the practical
    /// one. Unit: 1; 0 to 0.042. Default: none.
    pub salinity_absolute: f64,
    /// Standard uncertainty of the density of the piece; its bounds are counted at twice that. Unit: g/mL; 0 to
    /// 25. Default: 0.
    pub density_uncertainty_g_per_ml: f64,
    /// Depth to give the sink time for. Unit: m; 1e-9 to 12000. Default: none.
    pub depth_m: f64,
    /// Depth of a timed drop, the piece let go just below the surface. Unit: m; 1e-9 to 12000. Default: none.
    pub drop_depth_m: f64,
    /// Time of the timed drop. Unit: s; 1e-6 to 1e9. Default: none.
    pub drop_time_s: f64,
    /// Density of the piece that was dropped. Unit: g/mL; 0.001 to 25. Default: none.
    pub drop_density_g_per_ml: f64,
}

/// The results of `pour_sink_rate`.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_sink_rate_result {
    /// Sink rate. Unit: cm/s.
    pub sink_rate_cm_per_s: f64,
    /// Lower bound; 0 where the piece may hang or float. Unit: cm/s.
    pub sink_rate_min_cm_per_s: f64,
    /// Upper bound. Unit: cm/s.
    pub sink_rate_max_cm_per_s: f64,
    /// Whether it sinks straight: straight, may-swing or swings. `POUR_MOTION_STRAIGHT`,
    /// `POUR_MOTION_MAY_SWING`, `POUR_MOTION_SWINGS`.
    pub motion: i32,
    /// Reynolds number. Unit: 1.
    pub reynolds: f64,
    /// Drag coefficient, on length times diameter of a stick and the cross-section of a ball. Unit: 1.
    pub drag_coefficient: f64,
    /// Time to the depth, let go at rest just below the surface. Unit: s. NaN where there is none.
    pub sink_time_s: f64,
}

/// Sink rate of a piece with its hook: the final speed, a model value.
///
/// Balance of weight, buoyancy and the published drag of a cylinder across the flow or of a sphere; the
/// equations, sources and bounds are those of the module `process::sink`. `motion` is whether the model holds
/// for such a piece at all. A drop that the shop timed (depth, time, density) replaces the published drag by
/// the piece's own.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_sink_rate(
    input: *const pour_sink_rate_input,
    result: Option<&mut MaybeUninit<pour_sink_rate_result>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut result = result;
    guard(error, &mut || {
        let mut call = Call::new("sink_rate");
        // SAFETY: the header asks for a struct that begins with its size, or null.
        let input = unsafe { memory::input(input)? };
        let result = call.keep(memory::given("result", result.as_deref_mut()));
        let piece_density_g_per_ml = call.number("piece_density_g_per_ml", Parameter::PieceDensity, input.piece_density_g_per_ml);
        let piece_volume_ml = call.number("piece_volume_ml", Parameter::PieceVolume, input.piece_volume_ml);
        let diameter_mm = call.number("diameter_mm", Parameter::Diameter, input.diameter_mm);
        let water_temperature_celsius = call.number("water_temperature_celsius", Parameter::WaterTemperature, input.water_temperature_celsius);
        let shape = call.optional_word("shape", Parameter::Shape, input.shape);
        let (Some(piece_density_g_per_ml), Some(piece_volume_ml), Some(diameter_mm), Some(water_temperature_celsius), Some(shape), Some(result)) = (piece_density_g_per_ml, piece_volume_ml, diameter_mm, water_temperature_celsius, shape, result) else { return Err(call.failure_with(&[("piece_density_g_per_ml", Parameter::PieceDensity, given(input.piece_density_g_per_ml)), ("piece_volume_ml", Parameter::PieceVolume, given(input.piece_volume_ml)), ("diameter_mm", Parameter::Diameter, given(input.diameter_mm)), ("water_temperature_celsius", Parameter::WaterTemperature, given(input.water_temperature_celsius)), ("length_mm", Parameter::Length, given(input.length_mm)), ("hook_mass_g", Parameter::HookMass, given(input.hook_mass_g)), ("hook_volume_ml", Parameter::HookVolume, given(input.hook_volume_ml)), ("salinity_practical", Parameter::SalinityPractical, given(input.salinity_practical)), ("salinity_absolute", Parameter::SalinityAbsolute, given(input.salinity_absolute)), ("density_uncertainty_g_per_ml", Parameter::DensityUncertainty, given(input.density_uncertainty_g_per_ml)), ("depth_m", Parameter::Depth, given(input.depth_m)), ("drop_depth_m", Parameter::DropDepth, given(input.drop_depth_m)), ("drop_time_s", Parameter::DropTime, given(input.drop_time_s)), ("drop_density_g_per_ml", Parameter::DropDensity, given(input.drop_density_g_per_ml))])) };
        let inputs = plain::SinkRate {
            piece_density_g_per_ml,
            piece_volume_ml,
            diameter_mm,
            water_temperature_celsius,
            length_mm: given(input.length_mm),
            shape,
            hook_mass_g: given(input.hook_mass_g),
            hook_volume_ml: given(input.hook_volume_ml),
            salinity_practical: given(input.salinity_practical),
            salinity_absolute: given(input.salinity_absolute),
            density_uncertainty_g_per_ml: given(input.density_uncertainty_g_per_ml),
            depth_m: given(input.depth_m),
            drop_depth_m: given(input.drop_depth_m),
            drop_time_s: given(input.drop_time_s),
            drop_density_g_per_ml: given(input.drop_density_g_per_ml),
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(pour_sink_rate_result {
            sink_rate_cm_per_s: found.sink_rate_cm_per_s,
            sink_rate_min_cm_per_s: found.sink_rate_min_cm_per_s,
            sink_rate_max_cm_per_s: found.sink_rate_max_cm_per_s,
            motion: call::place(pourwright::process::sink::Motion::WORDS, found.motion.word()),
            reynolds: found.reynolds,
            drag_coefficient: found.drag_coefficient,
            sink_time_s: call::result_number(found.sink_time_s),
        });
        Ok(())
    })
}

/// The columns of `pour_sink_rate_n`: the parameters of `pour_sink_rate`. Set all to 0 first: a parameter that
/// may be omitted has no column then. A word counts for all rows.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_sink_rate_columns {
    /// Density of the piece, its salt and voids counted.
    pub piece_density_g_per_ml: pour_column,
    /// Volume of the piece without its hook.
    pub piece_volume_ml: pour_column,
    /// Mean diameter of the piece.
    pub diameter_mm: pour_column,
    /// Temperature of the water.
    pub water_temperature_celsius: pour_column,
    /// Length of a stick, at least 2.01 diameters; not used for a ball. May be omitted.
    pub length_mm: pour_column,
    /// Shape of the piece as it sinks: a stick sinks sideways. Default: a stick where a length is given, else a
    /// ball. One of `POUR_SHAPE_...`; 0 omits it.
    pub shape: i32,
    /// Mass of hook and weight on a piece; give its volume too. May be omitted.
    pub hook_mass_g: pour_column,
    /// Volume that hook and weight displace; give their mass too. May be omitted.
    pub hook_volume_ml: pour_column,
    /// Practical salinity as a probe reads it, about 35 in the ocean; give this or the absolute one. Fresh
    /// water without either. May be omitted.
    pub salinity_practical: pour_column,
    /// Absolute salinity, mass of salt per mass of sea water (35 g/kg is 0.035); give this or the practical
    /// one. May be omitted.
    pub salinity_absolute: pour_column,
    /// Standard uncertainty of the density of the piece; its bounds are counted at twice that. May be omitted.
    pub density_uncertainty_g_per_ml: pour_column,
    /// Depth to give the sink time for. May be omitted.
    pub depth_m: pour_column,
    /// Depth of a timed drop, the piece let go just below the surface. May be omitted.
    pub drop_depth_m: pour_column,
    /// Time of the timed drop. May be omitted.
    pub drop_time_s: pour_column,
    /// Density of the piece that was dropped. May be omitted.
    pub drop_density_g_per_ml: pour_column,
}

/// Where `pour_sink_rate_n` writes its results. Set all to 0 first: what has no column is not written.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_sink_rate_result_columns {
    /// Sink rate. Unit: cm/s.
    pub sink_rate_cm_per_s: pour_result_column,
    /// Lower bound; 0 where the piece may hang or float. Unit: cm/s.
    pub sink_rate_min_cm_per_s: pour_result_column,
    /// Upper bound. Unit: cm/s.
    pub sink_rate_max_cm_per_s: pour_result_column,
    /// Whether it sinks straight: straight, may-swing or swings. `POUR_MOTION_STRAIGHT`,
    /// `POUR_MOTION_MAY_SWING`, `POUR_MOTION_SWINGS`.
    pub motion: pour_result_column,
    /// Reynolds number. Unit: 1.
    pub reynolds: pour_result_column,
    /// Drag coefficient, on length times diameter of a stick and the cross-section of a ball. Unit: 1.
    pub drag_coefficient: pour_result_column,
    /// Time to the depth, let go at rest just below the surface. Unit: s. NaN where there is none.
    pub sink_time_s: pour_result_column,
}

/// `pour_sink_rate` for every row.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_sink_rate_n(
    rows: usize,
    columns: Option<&pour_sink_rate_columns>,
    results: Option<&pour_sink_rate_result_columns>,
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    guard(error, &mut || {
        together! {
            columns = memory::given("columns", columns);
            results = memory::given("results", results);
        }
        let mut call = Call::new("sink_rate");
        let shape = call.optional_word("shape", Parameter::Shape, columns.shape);
        let inputs = [
            columns.piece_density_g_per_ml.required("piece_density_g_per_ml"),
            columns.piece_volume_ml.required("piece_volume_ml"),
            columns.diameter_mm.required("diameter_mm"),
            columns.water_temperature_celsius.required("water_temperature_celsius"),
            columns.length_mm.optional("length_mm"),
            columns.hook_mass_g.optional("hook_mass_g"),
            columns.hook_volume_ml.optional("hook_volume_ml"),
            columns.salinity_practical.optional("salinity_practical"),
            columns.salinity_absolute.optional("salinity_absolute"),
            columns.density_uncertainty_g_per_ml.optional("density_uncertainty_g_per_ml"),
            columns.depth_m.optional("depth_m"),
            columns.drop_depth_m.optional("drop_depth_m"),
            columns.drop_time_s.optional("drop_time_s"),
            columns.drop_density_g_per_ml.optional("drop_density_g_per_ml"),
        ];
        let outputs = [
            results.sink_rate_cm_per_s.named("sink_rate_cm_per_s"),
            results.sink_rate_min_cm_per_s.named("sink_rate_min_cm_per_s"),
            results.sink_rate_max_cm_per_s.named("sink_rate_max_cm_per_s"),
            results.motion.named("motion"),
            results.reynolds.named("reynolds"),
            results.drag_coefficient.named("drag_coefficient"),
            results.sink_time_s.named("sink_time_s"),
        ];
        // SAFETY: the header asks for columns of `rows` numbers, or null.
        let (inputs, outputs) =
            unsafe { (Inputs::new(rows, inputs), Outputs::new(rows, outputs, statuses)) };
        let (inputs, outputs) = (call.keep(inputs), call.keep(outputs));
        let (Some(shape), Some(inputs), Some(outputs)) = (shape, inputs, outputs) else { return Err(call.failure()) };
        outputs.map(inputs, |[piece_density_g_per_ml, piece_volume_ml, diameter_mm, water_temperature_celsius, length_mm, hook_mass_g, hook_volume_ml, salinity_practical, salinity_absolute, density_uncertainty_g_per_ml, depth_m, drop_depth_m, drop_time_s, drop_density_g_per_ml]| {
            let inputs = plain::SinkRate {
                piece_density_g_per_ml,
                piece_volume_ml,
                diameter_mm,
                water_temperature_celsius,
                length_mm: given(length_mm),
                shape,
                hook_mass_g: given(hook_mass_g),
                hook_volume_ml: given(hook_volume_ml),
                salinity_practical: given(salinity_practical),
                salinity_absolute: given(salinity_absolute),
                density_uncertainty_g_per_ml: given(density_uncertainty_g_per_ml),
                depth_m: given(depth_m),
                drop_depth_m: given(drop_depth_m),
                drop_time_s: given(drop_time_s),
                drop_density_g_per_ml: given(drop_density_g_per_ml),
            };
            let found = inputs.calculate().map_err(call::row_status)?;
            Ok([found.sink_rate_cm_per_s, found.sink_rate_min_cm_per_s, found.sink_rate_max_cm_per_s, f64::from(call::place(pourwright::process::sink::Motion::WORDS, found.motion.word())), found.reynolds, found.drag_coefficient, call::result_number(found.sink_time_s)])
        });
        Ok(())
    })
}

/// The input of `pour_density_for_sink_rate`. Begin with `POUR_DENSITY_FOR_SINK_RATE_INPUT_INIT`, in which
/// everything is omitted.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_density_for_sink_rate_input {
    /// Size of this struct in bytes, as the macro sets it.
    pub size: usize,
    /// Sink rate: the final speed of the piece. Unit: cm/s; 1e-9 to 1e6.
    pub sink_rate_cm_per_s: f64,
    /// Volume of the piece without its hook. Unit: mL; 1e-9 to 1e15.
    pub piece_volume_ml: f64,
    /// Mean diameter of the piece. Unit: mm; 1e-6 to 1e6.
    pub diameter_mm: f64,
    /// Temperature of the water. Unit: °C; 0 to 40.
    pub water_temperature_celsius: f64,
    /// Length of a stick, at least 2.01 diameters; not used for a ball. Unit: mm; 1e-6 to 1e6. Default: none.
    pub length_mm: f64,
    /// Shape of the piece as it sinks: a stick sinks sideways. Default: a stick where a length is given, else a
    /// ball. One of `POUR_SHAPE_...`; 0 omits it.
    pub shape: i32,
    /// Mass of hook and weight on a piece; give its volume too. Unit: g; 0 to 1e15. Default: 0.
    pub hook_mass_g: f64,
    /// Volume that hook and weight displace; give their mass too. Unit: mL; 0 to 1e15. Default: 0.
    pub hook_volume_ml: f64,
    /// Practical salinity as a probe reads it, about 35 in the ocean; give this or the absolute one. Fresh
    /// water without either. Unit: 1; 0 to 41.8. Default: none.
    pub salinity_practical: f64,
    /// Absolute salinity, mass of salt per mass of sea water (35 g/kg is 0.035); give this or the practical
    /// one. Unit: 1; 0 to 0.042. Default: none.
    pub salinity_absolute: f64,
    /// Depth of a timed drop, the piece let go just below the surface. Unit: m; 1e-9 to 12000. Default: none.
    pub drop_depth_m: f64,
    /// Time of the timed drop. Unit: s; 1e-6 to 1e9. Default: none.
    pub drop_time_s: f64,
    /// Density of the piece that was dropped. Unit: g/mL; 0.001 to 25. Default: none.
    pub drop_density_g_per_ml: f64,
}

/// Density at which a piece sinks at a rate: the finished density to salt for.
///
/// `piece_density_g_per_ml` receives: Density of the piece, voids and salt counted. Unit: g/mL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_density_for_sink_rate(
    input: *const pour_density_for_sink_rate_input,
    piece_density_g_per_ml: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut piece_density_g_per_ml = piece_density_g_per_ml;
    guard(error, &mut || {
        let mut call = Call::new("density_for_sink_rate");
        // SAFETY: the header asks for a struct that begins with its size, or null.
        let input = unsafe { memory::input(input)? };
        let result = call.keep(memory::given("piece_density_g_per_ml", piece_density_g_per_ml.as_deref_mut()));
        let sink_rate_cm_per_s = call.number("sink_rate_cm_per_s", Parameter::SinkRate, input.sink_rate_cm_per_s);
        let piece_volume_ml = call.number("piece_volume_ml", Parameter::PieceVolume, input.piece_volume_ml);
        let diameter_mm = call.number("diameter_mm", Parameter::Diameter, input.diameter_mm);
        let water_temperature_celsius = call.number("water_temperature_celsius", Parameter::WaterTemperature, input.water_temperature_celsius);
        let shape = call.optional_word("shape", Parameter::Shape, input.shape);
        let (Some(sink_rate_cm_per_s), Some(piece_volume_ml), Some(diameter_mm), Some(water_temperature_celsius), Some(shape), Some(result)) = (sink_rate_cm_per_s, piece_volume_ml, diameter_mm, water_temperature_celsius, shape, result) else { return Err(call.failure_with(&[("sink_rate_cm_per_s", Parameter::SinkRate, given(input.sink_rate_cm_per_s)), ("piece_volume_ml", Parameter::PieceVolume, given(input.piece_volume_ml)), ("diameter_mm", Parameter::Diameter, given(input.diameter_mm)), ("water_temperature_celsius", Parameter::WaterTemperature, given(input.water_temperature_celsius)), ("length_mm", Parameter::Length, given(input.length_mm)), ("hook_mass_g", Parameter::HookMass, given(input.hook_mass_g)), ("hook_volume_ml", Parameter::HookVolume, given(input.hook_volume_ml)), ("salinity_practical", Parameter::SalinityPractical, given(input.salinity_practical)), ("salinity_absolute", Parameter::SalinityAbsolute, given(input.salinity_absolute)), ("drop_depth_m", Parameter::DropDepth, given(input.drop_depth_m)), ("drop_time_s", Parameter::DropTime, given(input.drop_time_s)), ("drop_density_g_per_ml", Parameter::DropDensity, given(input.drop_density_g_per_ml))])) };
        let inputs = plain::DensityForSinkRate {
            sink_rate_cm_per_s,
            piece_volume_ml,
            diameter_mm,
            water_temperature_celsius,
            length_mm: given(input.length_mm),
            shape,
            hook_mass_g: given(input.hook_mass_g),
            hook_volume_ml: given(input.hook_volume_ml),
            salinity_practical: given(input.salinity_practical),
            salinity_absolute: given(input.salinity_absolute),
            drop_depth_m: given(input.drop_depth_m),
            drop_time_s: given(input.drop_time_s),
            drop_density_g_per_ml: given(input.drop_density_g_per_ml),
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(found.piece_density_g_per_ml);
        Ok(())
    })
}

/// The columns of `pour_density_for_sink_rate_n`: the parameters of `pour_density_for_sink_rate`. Set all to 0
/// first: a parameter that may be omitted has no column then. A word counts for all rows.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_density_for_sink_rate_columns {
    /// Sink rate: the final speed of the piece.
    pub sink_rate_cm_per_s: pour_column,
    /// Volume of the piece without its hook.
    pub piece_volume_ml: pour_column,
    /// Mean diameter of the piece.
    pub diameter_mm: pour_column,
    /// Temperature of the water.
    pub water_temperature_celsius: pour_column,
    /// Length of a stick, at least 2.01 diameters; not used for a ball. May be omitted.
    pub length_mm: pour_column,
    /// Shape of the piece as it sinks: a stick sinks sideways. Default: a stick where a length is given, else a
    /// ball. One of `POUR_SHAPE_...`; 0 omits it.
    pub shape: i32,
    /// Mass of hook and weight on a piece; give its volume too. May be omitted.
    pub hook_mass_g: pour_column,
    /// Volume that hook and weight displace; give their mass too. May be omitted.
    pub hook_volume_ml: pour_column,
    /// Practical salinity as a probe reads it, about 35 in the ocean; give this or the absolute one. Fresh
    /// water without either. May be omitted.
    pub salinity_practical: pour_column,
    /// Absolute salinity, mass of salt per mass of sea water (35 g/kg is 0.035); give this or the practical
    /// one. May be omitted.
    pub salinity_absolute: pour_column,
    /// Depth of a timed drop, the piece let go just below the surface. May be omitted.
    pub drop_depth_m: pour_column,
    /// Time of the timed drop. May be omitted.
    pub drop_time_s: pour_column,
    /// Density of the piece that was dropped. May be omitted.
    pub drop_density_g_per_ml: pour_column,
}

/// Where `pour_density_for_sink_rate_n` writes its results. Set all to 0 first: what has no column is not
/// written.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_density_for_sink_rate_result_columns {
    /// Density of the piece, voids and salt counted. Unit: g/mL.
    pub piece_density_g_per_ml: pour_result_column,
}

/// `pour_density_for_sink_rate` for every row.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_density_for_sink_rate_n(
    rows: usize,
    columns: Option<&pour_density_for_sink_rate_columns>,
    results: Option<&pour_density_for_sink_rate_result_columns>,
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    guard(error, &mut || {
        together! {
            columns = memory::given("columns", columns);
            results = memory::given("results", results);
        }
        let mut call = Call::new("density_for_sink_rate");
        let shape = call.optional_word("shape", Parameter::Shape, columns.shape);
        let inputs = [
            columns.sink_rate_cm_per_s.required("sink_rate_cm_per_s"),
            columns.piece_volume_ml.required("piece_volume_ml"),
            columns.diameter_mm.required("diameter_mm"),
            columns.water_temperature_celsius.required("water_temperature_celsius"),
            columns.length_mm.optional("length_mm"),
            columns.hook_mass_g.optional("hook_mass_g"),
            columns.hook_volume_ml.optional("hook_volume_ml"),
            columns.salinity_practical.optional("salinity_practical"),
            columns.salinity_absolute.optional("salinity_absolute"),
            columns.drop_depth_m.optional("drop_depth_m"),
            columns.drop_time_s.optional("drop_time_s"),
            columns.drop_density_g_per_ml.optional("drop_density_g_per_ml"),
        ];
        let outputs = [
            results.piece_density_g_per_ml.named("piece_density_g_per_ml"),
        ];
        // SAFETY: the header asks for columns of `rows` numbers, or null.
        let (inputs, outputs) =
            unsafe { (Inputs::new(rows, inputs), Outputs::new(rows, outputs, statuses)) };
        let (inputs, outputs) = (call.keep(inputs), call.keep(outputs));
        let (Some(shape), Some(inputs), Some(outputs)) = (shape, inputs, outputs) else { return Err(call.failure()) };
        outputs.map(inputs, |[sink_rate_cm_per_s, piece_volume_ml, diameter_mm, water_temperature_celsius, length_mm, hook_mass_g, hook_volume_ml, salinity_practical, salinity_absolute, drop_depth_m, drop_time_s, drop_density_g_per_ml]| {
            let inputs = plain::DensityForSinkRate {
                sink_rate_cm_per_s,
                piece_volume_ml,
                diameter_mm,
                water_temperature_celsius,
                length_mm: given(length_mm),
                shape,
                hook_mass_g: given(hook_mass_g),
                hook_volume_ml: given(hook_volume_ml),
                salinity_practical: given(salinity_practical),
                salinity_absolute: given(salinity_absolute),
                drop_depth_m: given(drop_depth_m),
                drop_time_s: given(drop_time_s),
                drop_density_g_per_ml: given(drop_density_g_per_ml),
            };
            let found = inputs.calculate().map_err(call::row_status)?;
            Ok([found.piece_density_g_per_ml])
        });
        Ok(())
    })
}

/// One row of `points`. The shop's own measured points, by rising ratio: of each the ratio and the durometer
/// reading.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_points_row {
    /// Softener or hardener of a measured point, mass per mass of base. Unit: 1; 0 to 100.
    pub point_ratio: f64,
    /// Durometer reading of a measured point. Unit: 1; 0 to 100.
    pub point_hardness: f64,
}

/// Hardness that a ratio of softener or hardener gives: a monotone cubic through the shop's own points.
///
/// Fritsch and Butland 1984, the slopes of SciPy's PchipInterpolator. Outside the points it refuses. Shore
/// scales do not convert into each other (ASTM D2240): all points are on one.
///
/// `points`: The shop's own measured points, by rising ratio: of each the ratio and the durometer reading. 2 to
/// 1000 of them.
/// `scale`: The scale of the durometer. One of `POUR_SCALE_...`.
/// `softener_ratio`: Softener or hardener, mass per mass of base; between the measured points. Unit: 1; 0 to
/// 100.
///
/// `hardness` receives: Durometer reading. Unit: 1.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_hardness(
    points: *const pour_points_row,
    points_count: usize,
    scale: i32,
    softener_ratio: f64,
    hardness: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut hardness = hardness;
    guard(error, &mut || {
        let mut call = Call::new("hardness");
        let result = call.keep(memory::given("hardness", hardness.as_deref_mut()));
        // SAFETY: the header asks for a text that ends or an array so long, or null.
        let points = unsafe { call.rows("points", Parameter::Points, points, points_count) };
        let scale = call.word("scale", Parameter::Scale, scale);
        let softener_ratio = call.number("softener_ratio", Parameter::SoftenerRatio, softener_ratio);
        let (Some(points), Some(scale), Some(softener_ratio), Some(result)) = (points, scale, softener_ratio, result) else { return Err(call.failure_with(&[("softener_ratio", Parameter::SoftenerRatio, softener_ratio)])) };
        let inputs = plain::HardnessOf {
            points,
            scale,
            softener_ratio,
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(found.hardness);
        Ok(())
    })
}

/// Ratio of softener or hardener for a hardness: the other way round.
///
/// `points`: The shop's own measured points, by rising ratio: of each the ratio and the durometer reading. 2 to
/// 1000 of them.
/// `scale`: The scale of the durometer. One of `POUR_SCALE_...`.
/// `hardness`: Durometer reading. Unit: 1; 0 to 100.
///
/// `softener_ratio` receives: Mass per mass of base. Unit: 1.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_softener_ratio(
    points: *const pour_points_row,
    points_count: usize,
    scale: i32,
    hardness: f64,
    softener_ratio: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut softener_ratio = softener_ratio;
    guard(error, &mut || {
        let mut call = Call::new("softener_ratio");
        let result = call.keep(memory::given("softener_ratio", softener_ratio.as_deref_mut()));
        // SAFETY: the header asks for a text that ends or an array so long, or null.
        let points = unsafe { call.rows("points", Parameter::Points, points, points_count) };
        let scale = call.word("scale", Parameter::Scale, scale);
        let hardness = call.number("hardness", Parameter::Hardness, hardness);
        let (Some(points), Some(scale), Some(hardness), Some(result)) = (points, scale, hardness, result) else { return Err(call.failure_with(&[("hardness", Parameter::Hardness, hardness)])) };
        let inputs = plain::SoftenerRatio {
            points,
            scale,
            hardness,
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(found.softener_ratio);
        Ok(())
    })
}

/// One row of `salted_points`. The shop's own measured points, by rising salt: of each the salt and the
/// softener, mass per mass of base.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_salted_points_row {
    /// Salt of a measured point, mass per mass of base. Unit: 1; 0 to 10.
    pub point_salt: f64,
    /// Softener that the shop adds at that salt, mass per mass of base. Unit: 1; 0 to 10.
    pub point_softener: f64,
}

/// Extra softener for a salted body, between the shop's own points.
///
/// Salt makes a body harder; the shop has found what softener makes up for it. Between the points a monotone
/// cubic answers, outside it refuses.
///
/// `salted_points`: The shop's own measured points, by rising salt: of each the salt and the softener, mass per
/// mass of base. 2 to 1000 of them.
/// `salt_of_base`: Salt, mass per mass of base; between the measured points. Unit: 1; 0 to 10.
///
/// `softener_ratio` receives: Softener on top of the unsalted body's, mass per mass of base. Unit: 1.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_salted_softener(
    salted_points: *const pour_salted_points_row,
    salted_points_count: usize,
    salt_of_base: f64,
    softener_ratio: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut softener_ratio = softener_ratio;
    guard(error, &mut || {
        let mut call = Call::new("salted_softener");
        let result = call.keep(memory::given("softener_ratio", softener_ratio.as_deref_mut()));
        // SAFETY: the header asks for a text that ends or an array so long, or null.
        let salted_points = unsafe { call.rows("salted_points", Parameter::SaltedPoints, salted_points, salted_points_count) };
        let salt_of_base = call.number("salt_of_base", Parameter::SaltOfBase, salt_of_base);
        let (Some(salted_points), Some(salt_of_base), Some(result)) = (salted_points, salt_of_base, result) else { return Err(call.failure_with(&[("salt_of_base", Parameter::SaltOfBase, salt_of_base)])) };
        let inputs = plain::SaltedSoftener {
            salted_points,
            salt_of_base,
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(found.softener_ratio);
        Ok(())
    })
}

/// Density of air-free water at 101.325 kPa, 0 to 40 °C.
///
/// Tanaka et al., Metrologia 38 (2001) 301–309; standard uncertainty below 1e-6 relative.
///
/// `water_temperature_celsius`: Temperature of the water. Unit: °C; 0 to 40.
///
/// `density_g_per_ml` receives: Density of the water. Unit: g/mL.
#[unsafe(no_mangle)]
pub extern "C" fn pour_water_density(
    water_temperature_celsius: f64,
    density_g_per_ml: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut density_g_per_ml = density_g_per_ml;
    guard(error, &mut || {
        let mut call = Call::new("water_density");
        let result = call.keep(memory::given("density_g_per_ml", density_g_per_ml.as_deref_mut()));
        let water_temperature_celsius = call.number("water_temperature_celsius", Parameter::WaterTemperature, water_temperature_celsius);
        let (Some(water_temperature_celsius), Some(result)) = (water_temperature_celsius, result) else { return Err(call.failure_with(&[("water_temperature_celsius", Parameter::WaterTemperature, water_temperature_celsius)])) };
        let inputs = plain::WaterDensity {
            water_temperature_celsius,
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(found.density_g_per_ml);
        Ok(())
    })
}

/// The columns of `pour_water_density_n`: the parameters of `pour_water_density`. Set all to 0 first: a
/// parameter that may be omitted has no column then.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_water_density_columns {
    /// Temperature of the water.
    pub water_temperature_celsius: pour_column,
}

/// Where `pour_water_density_n` writes its results. Set all to 0 first: what has no column is not written.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_water_density_result_columns {
    /// Density of the water. Unit: g/mL.
    pub density_g_per_ml: pour_result_column,
}

/// `pour_water_density` for every row.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_water_density_n(
    rows: usize,
    columns: Option<&pour_water_density_columns>,
    results: Option<&pour_water_density_result_columns>,
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    guard(error, &mut || {
        together! {
            columns = memory::given("columns", columns);
            results = memory::given("results", results);
        }
        let mut call = Call::new("water_density");
        let inputs = [
            columns.water_temperature_celsius.required("water_temperature_celsius"),
        ];
        let outputs = [
            results.density_g_per_ml.named("density_g_per_ml"),
        ];
        // SAFETY: the header asks for columns of `rows` numbers, or null.
        let (inputs, outputs) =
            unsafe { (Inputs::new(rows, inputs), Outputs::new(rows, outputs, statuses)) };
        let (inputs, outputs) = (call.keep(inputs), call.keep(outputs));
        let (Some(inputs), Some(outputs)) = (inputs, outputs) else { return Err(call.failure()) };
        outputs.map(inputs, |[water_temperature_celsius]| {
            let inputs = plain::WaterDensity {
                water_temperature_celsius,
            };
            let found = inputs.calculate().map_err(call::row_status)?;
            Ok([found.density_g_per_ml])
        });
        Ok(())
    })
}

/// Volume of a cavity from the reading of a balance for the water that it holds.
///
/// Corrected for the buoyancy of air on water and weights: V = Z·m (ISO 8655-6, ISO 4787).
///
/// `water_mass_g`: Reading of the balance for the water in one cavity: filled less empty. Unit: g; 1e-12 to
/// 1e15.
/// `water_temperature_celsius`: Temperature of the water. Unit: °C; 0 to 40.
/// `air_pressure_kpa`: Air pressure at the balance, not reduced to sea level. Unit: kPa; 45 to 110. Default:
/// 101.325.
///
/// `cavity_volume_ml` receives: Volume of the cavity. Unit: mL.
#[unsafe(no_mangle)]
pub extern "C" fn pour_cavity_of_water(
    water_mass_g: f64,
    water_temperature_celsius: f64,
    air_pressure_kpa: f64,
    cavity_volume_ml: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut cavity_volume_ml = cavity_volume_ml;
    guard(error, &mut || {
        let mut call = Call::new("cavity_of_water");
        let result = call.keep(memory::given("cavity_volume_ml", cavity_volume_ml.as_deref_mut()));
        let water_mass_g = call.number("water_mass_g", Parameter::WaterMass, water_mass_g);
        let water_temperature_celsius = call.number("water_temperature_celsius", Parameter::WaterTemperature, water_temperature_celsius);
        let (Some(water_mass_g), Some(water_temperature_celsius), Some(result)) = (water_mass_g, water_temperature_celsius, result) else { return Err(call.failure_with(&[("water_mass_g", Parameter::WaterMass, water_mass_g), ("water_temperature_celsius", Parameter::WaterTemperature, water_temperature_celsius), ("air_pressure_kpa", Parameter::AirPressure, given(air_pressure_kpa))])) };
        let inputs = plain::CavityOfWater {
            water_mass_g,
            water_temperature_celsius,
            air_pressure_kpa: given(air_pressure_kpa),
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(found.cavity_volume_ml);
        Ok(())
    })
}

/// The columns of `pour_cavity_of_water_n`: the parameters of `pour_cavity_of_water`. Set all to 0 first: a
/// parameter that may be omitted has no column then.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_cavity_of_water_columns {
    /// Reading of the balance for the water in one cavity: filled less empty.
    pub water_mass_g: pour_column,
    /// Temperature of the water.
    pub water_temperature_celsius: pour_column,
    /// Air pressure at the balance, not reduced to sea level. May be omitted.
    pub air_pressure_kpa: pour_column,
}

/// Where `pour_cavity_of_water_n` writes its results. Set all to 0 first: what has no column is not written.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_cavity_of_water_result_columns {
    /// Volume of the cavity. Unit: mL.
    pub cavity_volume_ml: pour_result_column,
}

/// `pour_cavity_of_water` for every row.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_cavity_of_water_n(
    rows: usize,
    columns: Option<&pour_cavity_of_water_columns>,
    results: Option<&pour_cavity_of_water_result_columns>,
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    guard(error, &mut || {
        together! {
            columns = memory::given("columns", columns);
            results = memory::given("results", results);
        }
        let mut call = Call::new("cavity_of_water");
        let inputs = [
            columns.water_mass_g.required("water_mass_g"),
            columns.water_temperature_celsius.required("water_temperature_celsius"),
            columns.air_pressure_kpa.optional("air_pressure_kpa"),
        ];
        let outputs = [
            results.cavity_volume_ml.named("cavity_volume_ml"),
        ];
        // SAFETY: the header asks for columns of `rows` numbers, or null.
        let (inputs, outputs) =
            unsafe { (Inputs::new(rows, inputs), Outputs::new(rows, outputs, statuses)) };
        let (inputs, outputs) = (call.keep(inputs), call.keep(outputs));
        let (Some(inputs), Some(outputs)) = (inputs, outputs) else { return Err(call.failure()) };
        outputs.map(inputs, |[water_mass_g, water_temperature_celsius, air_pressure_kpa]| {
            let inputs = plain::CavityOfWater {
                water_mass_g,
                water_temperature_celsius,
                air_pressure_kpa: given(air_pressure_kpa),
            };
            let found = inputs.calculate().map_err(call::row_status)?;
            Ok([found.cavity_volume_ml])
        });
        Ok(())
    })
}

/// Air pressure of the standard atmosphere at an altitude.
///
/// U.S. Standard Atmosphere, 1976, lowest layer. The weather moves the real pressure by some 3 %.
///
/// `altitude_m`: Height above sea level, as a map gives it; negative below it. Unit: m; -5000 to 11000.
///
/// `station_pressure_kpa` receives: Air pressure at the place itself; also the maximum that a true vacuum gauge
/// shows there. Unit: kPa.
#[unsafe(no_mangle)]
pub extern "C" fn pour_standard_pressure(
    altitude_m: f64,
    station_pressure_kpa: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut station_pressure_kpa = station_pressure_kpa;
    guard(error, &mut || {
        let mut call = Call::new("standard_pressure");
        let result = call.keep(memory::given("station_pressure_kpa", station_pressure_kpa.as_deref_mut()));
        let altitude_m = call.number("altitude_m", Parameter::Altitude, altitude_m);
        let (Some(altitude_m), Some(result)) = (altitude_m, result) else { return Err(call.failure_with(&[("altitude_m", Parameter::Altitude, altitude_m)])) };
        let inputs = plain::StandardPressure {
            altitude_m,
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(found.station_pressure_kpa);
        Ok(())
    })
}

/// The columns of `pour_standard_pressure_n`: the parameters of `pour_standard_pressure`. Set all to 0 first: a
/// parameter that may be omitted has no column then.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_standard_pressure_columns {
    /// Height above sea level, as a map gives it; negative below it.
    pub altitude_m: pour_column,
}

/// Where `pour_standard_pressure_n` writes its results. Set all to 0 first: what has no column is not written.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_standard_pressure_result_columns {
    /// Air pressure at the place itself; also the maximum that a true vacuum gauge shows there. Unit: kPa.
    pub station_pressure_kpa: pour_result_column,
}

/// `pour_standard_pressure` for every row.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_standard_pressure_n(
    rows: usize,
    columns: Option<&pour_standard_pressure_columns>,
    results: Option<&pour_standard_pressure_result_columns>,
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    guard(error, &mut || {
        together! {
            columns = memory::given("columns", columns);
            results = memory::given("results", results);
        }
        let mut call = Call::new("standard_pressure");
        let inputs = [
            columns.altitude_m.required("altitude_m"),
        ];
        let outputs = [
            results.station_pressure_kpa.named("station_pressure_kpa"),
        ];
        // SAFETY: the header asks for columns of `rows` numbers, or null.
        let (inputs, outputs) =
            unsafe { (Inputs::new(rows, inputs), Outputs::new(rows, outputs, statuses)) };
        let (inputs, outputs) = (call.keep(inputs), call.keep(outputs));
        let (Some(inputs), Some(outputs)) = (inputs, outputs) else { return Err(call.failure()) };
        outputs.map(inputs, |[altitude_m]| {
            let inputs = plain::StandardPressure {
                altitude_m,
            };
            let found = inputs.calculate().map_err(call::row_status)?;
            Ok([found.station_pressure_kpa])
        });
        Ok(())
    })
}

/// Air pressure at the place itself from one that a weather report gives, reduced to sea level.
///
/// Undoes the reduction by the standard atmosphere, which is the definition of an altimeter setting.
///
/// `reported_pressure_kpa`: Air pressure as a weather report gives it, reduced to sea level; needs the
/// altitude. Unit: kPa; 85 to 110.
/// `altitude_m`: Height above sea level, as a map gives it; negative below it. Unit: m; -5000 to 11000.
///
/// `station_pressure_kpa` receives: Air pressure at the place itself; also the maximum that a true vacuum gauge
/// shows there. Unit: kPa.
#[unsafe(no_mangle)]
pub extern "C" fn pour_station_pressure(
    reported_pressure_kpa: f64,
    altitude_m: f64,
    station_pressure_kpa: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut station_pressure_kpa = station_pressure_kpa;
    guard(error, &mut || {
        let mut call = Call::new("station_pressure");
        let result = call.keep(memory::given("station_pressure_kpa", station_pressure_kpa.as_deref_mut()));
        let reported_pressure_kpa = call.number("reported_pressure_kpa", Parameter::ReportedPressure, reported_pressure_kpa);
        let altitude_m = call.number("altitude_m", Parameter::Altitude, altitude_m);
        let (Some(reported_pressure_kpa), Some(altitude_m), Some(result)) = (reported_pressure_kpa, altitude_m, result) else { return Err(call.failure_with(&[("reported_pressure_kpa", Parameter::ReportedPressure, reported_pressure_kpa), ("altitude_m", Parameter::Altitude, altitude_m)])) };
        let inputs = plain::StationPressureOf {
            reported_pressure_kpa,
            altitude_m,
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(found.station_pressure_kpa);
        Ok(())
    })
}

/// The columns of `pour_station_pressure_n`: the parameters of `pour_station_pressure`. Set all to 0 first: a
/// parameter that may be omitted has no column then.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_station_pressure_columns {
    /// Air pressure as a weather report gives it, reduced to sea level; needs the altitude.
    pub reported_pressure_kpa: pour_column,
    /// Height above sea level, as a map gives it; negative below it.
    pub altitude_m: pour_column,
}

/// Where `pour_station_pressure_n` writes its results. Set all to 0 first: what has no column is not written.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_station_pressure_result_columns {
    /// Air pressure at the place itself; also the maximum that a true vacuum gauge shows there. Unit: kPa.
    pub station_pressure_kpa: pour_result_column,
}

/// `pour_station_pressure` for every row.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_station_pressure_n(
    rows: usize,
    columns: Option<&pour_station_pressure_columns>,
    results: Option<&pour_station_pressure_result_columns>,
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    guard(error, &mut || {
        together! {
            columns = memory::given("columns", columns);
            results = memory::given("results", results);
        }
        let mut call = Call::new("station_pressure");
        let inputs = [
            columns.reported_pressure_kpa.required("reported_pressure_kpa"),
            columns.altitude_m.required("altitude_m"),
        ];
        let outputs = [
            results.station_pressure_kpa.named("station_pressure_kpa"),
        ];
        // SAFETY: the header asks for columns of `rows` numbers, or null.
        let (inputs, outputs) =
            unsafe { (Inputs::new(rows, inputs), Outputs::new(rows, outputs, statuses)) };
        let (inputs, outputs) = (call.keep(inputs), call.keep(outputs));
        let (Some(inputs), Some(outputs)) = (inputs, outputs) else { return Err(call.failure()) };
        outputs.map(inputs, |[reported_pressure_kpa, altitude_m]| {
            let inputs = plain::StationPressureOf {
                reported_pressure_kpa,
                altitude_m,
            };
            let found = inputs.calculate().map_err(call::row_status)?;
            Ok([found.station_pressure_kpa])
        });
        Ok(())
    })
}

/// The input of `pour_swollen_volume`. Begin with `POUR_SWOLLEN_VOLUME_INPUT_INIT`, in which everything is
/// omitted.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_swollen_volume_input {
    /// Size of this struct in bytes, as the macro sets it.
    pub size: usize,
    /// Volume of the pot, cold and without air. Unit: mL; 1e-9 to 1e15.
    pub liquid_volume_ml: f64,
    /// Share of air in the mix by volume, under the outside pressure. Unit: 1; 0 to below 1.
    pub entrained_air: f64,
    /// Air pressure at the place itself, not reduced to sea level. Unit: kPa; 22.6 to 178.
    pub station_pressure_kpa: f64,
    /// Reading of a vacuum gauge, which counts down from the air outside; give this or the absolute pressure.
    /// Unit: kPa; 0 to 180. Default: none.
    pub gauge_vacuum_kpa: f64,
    /// Pressure that is left in the chamber, counted from nothing at all; give this or the gauge vacuum. Unit:
    /// kPa; 0 to 180. Default: none.
    pub absolute_pressure_kpa: f64,
    /// How far the vacuum gauge may be off to either side; the default, 0.9 inHg, is 3 % of a common dial.
    /// Unit: kPa; 0 to 101. Default: 3.0477501.
    pub dial_tolerance_kpa: f64,
    /// Vapor pressure of the liquid; 0 for a dry plasticizer. Below the pressure in the chamber. Unit: kPa; 0
    /// to 180. Default: 0.
    pub vapor_pressure_kpa: f64,
    /// Temperature of a damp pot, whose water boils under vacuum; omit it for a dry pot. Unit: °C; 0.01 to 200.
    /// Default: none.
    pub damp_at_celsius: f64,
}

/// The results of `pour_swollen_volume`.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_swollen_volume_result {
    /// Volume in the vacuum. Unit: mL.
    pub swollen_volume_ml: f64,
    /// Volume before, bubbles included. Unit: mL.
    pub standing_volume_ml: f64,
    /// Pressure that is left in the chamber. Unit: kPa.
    pub absolute_pressure_kpa: f64,
}

/// Volume of a pot in a vacuum, with the air that it holds.
///
/// Boyle: V = V_liq [1 + φ/(1 − φ) · p_local/(p − p_vapor)]. The vacuum is stated in one way, as a gauge shows
/// it or as the pressure that is left; with a gauge the lowest pressure counts that its tolerance allows.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_swollen_volume(
    input: *const pour_swollen_volume_input,
    result: Option<&mut MaybeUninit<pour_swollen_volume_result>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut result = result;
    guard(error, &mut || {
        let mut call = Call::new("swollen_volume");
        // SAFETY: the header asks for a struct that begins with its size, or null.
        let input = unsafe { memory::input(input)? };
        let result = call.keep(memory::given("result", result.as_deref_mut()));
        let liquid_volume_ml = call.number("liquid_volume_ml", Parameter::LiquidVolume, input.liquid_volume_ml);
        let entrained_air = call.number("entrained_air", Parameter::EntrainedAir, input.entrained_air);
        let station_pressure_kpa = call.number("station_pressure_kpa", Parameter::StationPressure, input.station_pressure_kpa);
        let (Some(liquid_volume_ml), Some(entrained_air), Some(station_pressure_kpa), Some(result)) = (liquid_volume_ml, entrained_air, station_pressure_kpa, result) else { return Err(call.failure_with(&[("liquid_volume_ml", Parameter::LiquidVolume, given(input.liquid_volume_ml)), ("entrained_air", Parameter::EntrainedAir, given(input.entrained_air)), ("station_pressure_kpa", Parameter::StationPressure, given(input.station_pressure_kpa)), ("gauge_vacuum_kpa", Parameter::GaugeVacuum, given(input.gauge_vacuum_kpa)), ("absolute_pressure_kpa", Parameter::AbsolutePressure, given(input.absolute_pressure_kpa)), ("dial_tolerance_kpa", Parameter::DialTolerance, given(input.dial_tolerance_kpa)), ("vapor_pressure_kpa", Parameter::VaporPressure, given(input.vapor_pressure_kpa)), ("damp_at_celsius", Parameter::DampAt, given(input.damp_at_celsius))])) };
        let inputs = plain::SwollenVolume {
            liquid_volume_ml,
            entrained_air,
            station_pressure_kpa,
            gauge_vacuum_kpa: given(input.gauge_vacuum_kpa),
            absolute_pressure_kpa: given(input.absolute_pressure_kpa),
            dial_tolerance_kpa: given(input.dial_tolerance_kpa),
            vapor_pressure_kpa: given(input.vapor_pressure_kpa),
            damp_at_celsius: given(input.damp_at_celsius),
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(pour_swollen_volume_result {
            swollen_volume_ml: found.swollen_volume_ml,
            standing_volume_ml: found.standing_volume_ml,
            absolute_pressure_kpa: found.absolute_pressure_kpa,
        });
        Ok(())
    })
}

/// The columns of `pour_swollen_volume_n`: the parameters of `pour_swollen_volume`. Set all to 0 first: a
/// parameter that may be omitted has no column then.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_swollen_volume_columns {
    /// Volume of the pot, cold and without air.
    pub liquid_volume_ml: pour_column,
    /// Share of air in the mix by volume, under the outside pressure.
    pub entrained_air: pour_column,
    /// Air pressure at the place itself, not reduced to sea level.
    pub station_pressure_kpa: pour_column,
    /// Reading of a vacuum gauge, which counts down from the air outside; give this or the absolute pressure.
    /// May be omitted.
    pub gauge_vacuum_kpa: pour_column,
    /// Pressure that is left in the chamber, counted from nothing at all; give this or the gauge vacuum. May be
    /// omitted.
    pub absolute_pressure_kpa: pour_column,
    /// How far the vacuum gauge may be off to either side; the default, 0.9 inHg, is 3 % of a common dial. May
    /// be omitted.
    pub dial_tolerance_kpa: pour_column,
    /// Vapor pressure of the liquid; 0 for a dry plasticizer. Below the pressure in the chamber. May be
    /// omitted.
    pub vapor_pressure_kpa: pour_column,
    /// Temperature of a damp pot, whose water boils under vacuum; omit it for a dry pot. May be omitted.
    pub damp_at_celsius: pour_column,
}

/// Where `pour_swollen_volume_n` writes its results. Set all to 0 first: what has no column is not written.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_swollen_volume_result_columns {
    /// Volume in the vacuum. Unit: mL.
    pub swollen_volume_ml: pour_result_column,
    /// Volume before, bubbles included. Unit: mL.
    pub standing_volume_ml: pour_result_column,
    /// Pressure that is left in the chamber. Unit: kPa.
    pub absolute_pressure_kpa: pour_result_column,
}

/// `pour_swollen_volume` for every row.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_swollen_volume_n(
    rows: usize,
    columns: Option<&pour_swollen_volume_columns>,
    results: Option<&pour_swollen_volume_result_columns>,
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    guard(error, &mut || {
        together! {
            columns = memory::given("columns", columns);
            results = memory::given("results", results);
        }
        let mut call = Call::new("swollen_volume");
        let inputs = [
            columns.liquid_volume_ml.required("liquid_volume_ml"),
            columns.entrained_air.required("entrained_air"),
            columns.station_pressure_kpa.required("station_pressure_kpa"),
            columns.gauge_vacuum_kpa.optional("gauge_vacuum_kpa"),
            columns.absolute_pressure_kpa.optional("absolute_pressure_kpa"),
            columns.dial_tolerance_kpa.optional("dial_tolerance_kpa"),
            columns.vapor_pressure_kpa.optional("vapor_pressure_kpa"),
            columns.damp_at_celsius.optional("damp_at_celsius"),
        ];
        let outputs = [
            results.swollen_volume_ml.named("swollen_volume_ml"),
            results.standing_volume_ml.named("standing_volume_ml"),
            results.absolute_pressure_kpa.named("absolute_pressure_kpa"),
        ];
        // SAFETY: the header asks for columns of `rows` numbers, or null.
        let (inputs, outputs) =
            unsafe { (Inputs::new(rows, inputs), Outputs::new(rows, outputs, statuses)) };
        let (inputs, outputs) = (call.keep(inputs), call.keep(outputs));
        let (Some(inputs), Some(outputs)) = (inputs, outputs) else { return Err(call.failure()) };
        outputs.map(inputs, |[liquid_volume_ml, entrained_air, station_pressure_kpa, gauge_vacuum_kpa, absolute_pressure_kpa, dial_tolerance_kpa, vapor_pressure_kpa, damp_at_celsius]| {
            let inputs = plain::SwollenVolume {
                liquid_volume_ml,
                entrained_air,
                station_pressure_kpa,
                gauge_vacuum_kpa: given(gauge_vacuum_kpa),
                absolute_pressure_kpa: given(absolute_pressure_kpa),
                dial_tolerance_kpa: given(dial_tolerance_kpa),
                vapor_pressure_kpa: given(vapor_pressure_kpa),
                damp_at_celsius: given(damp_at_celsius),
            };
            let found = inputs.calculate().map_err(call::row_status)?;
            Ok([found.swollen_volume_ml, found.standing_volume_ml, found.absolute_pressure_kpa])
        });
        Ok(())
    })
}

/// The input of `pour_entrained_air`. Begin with `POUR_ENTRAINED_AIR_INPUT_INIT`, in which everything is
/// omitted.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_entrained_air_input {
    /// Size of this struct in bytes, as the macro sets it.
    pub size: usize,
    /// Level of a pot in the vacuum over its level before; give this or the entrained air. Unit: 1; 1 to 1000.
    pub rise: f64,
    /// Air pressure at the place itself, not reduced to sea level. Unit: kPa; 22.6 to 178.
    pub station_pressure_kpa: f64,
    /// Reading of a vacuum gauge, which counts down from the air outside; give this or the absolute pressure.
    /// Unit: kPa; 0 to 180. Default: none.
    pub gauge_vacuum_kpa: f64,
    /// Pressure that is left in the chamber, counted from nothing at all; give this or the gauge vacuum. Unit:
    /// kPa; 0 to 180. Default: none.
    pub absolute_pressure_kpa: f64,
    /// How far the vacuum gauge may be off to either side; the default, 0.9 inHg, is 3 % of a common dial.
    /// Unit: kPa; 0 to 101. Default: 3.0477501.
    pub dial_tolerance_kpa: f64,
    /// Vapor pressure of the liquid; 0 for a dry plasticizer. Below the pressure in the chamber. Unit: kPa; 0
    /// to 180. Default: 0.
    pub vapor_pressure_kpa: f64,
    /// Temperature of a damp pot, whose water boils under vacuum; omit it for a dry pot. Unit: °C; 0.01 to 200.
    /// Default: none.
    pub damp_at_celsius: f64,
}

/// Share of air in a pot, from how high it was seen to rise in a vacuum.
///
/// With f the level in the vacuum over the level before and b₁, b₂ the expansions of the air before and after:
/// φ/(1 − φ) = (f − 1)/(b₂ − f b₁).
///
/// `entrained_air` receives: Share of air in the mix by volume, under the outside pressure. Unit: 1.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_entrained_air(
    input: *const pour_entrained_air_input,
    entrained_air: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut entrained_air = entrained_air;
    guard(error, &mut || {
        let mut call = Call::new("entrained_air");
        // SAFETY: the header asks for a struct that begins with its size, or null.
        let input = unsafe { memory::input(input)? };
        let result = call.keep(memory::given("entrained_air", entrained_air.as_deref_mut()));
        let rise = call.number("rise", Parameter::Rise, input.rise);
        let station_pressure_kpa = call.number("station_pressure_kpa", Parameter::StationPressure, input.station_pressure_kpa);
        let (Some(rise), Some(station_pressure_kpa), Some(result)) = (rise, station_pressure_kpa, result) else { return Err(call.failure_with(&[("rise", Parameter::Rise, given(input.rise)), ("station_pressure_kpa", Parameter::StationPressure, given(input.station_pressure_kpa)), ("gauge_vacuum_kpa", Parameter::GaugeVacuum, given(input.gauge_vacuum_kpa)), ("absolute_pressure_kpa", Parameter::AbsolutePressure, given(input.absolute_pressure_kpa)), ("dial_tolerance_kpa", Parameter::DialTolerance, given(input.dial_tolerance_kpa)), ("vapor_pressure_kpa", Parameter::VaporPressure, given(input.vapor_pressure_kpa)), ("damp_at_celsius", Parameter::DampAt, given(input.damp_at_celsius))])) };
        let inputs = plain::EntrainedAirOf {
            rise,
            station_pressure_kpa,
            gauge_vacuum_kpa: given(input.gauge_vacuum_kpa),
            absolute_pressure_kpa: given(input.absolute_pressure_kpa),
            dial_tolerance_kpa: given(input.dial_tolerance_kpa),
            vapor_pressure_kpa: given(input.vapor_pressure_kpa),
            damp_at_celsius: given(input.damp_at_celsius),
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(found.entrained_air);
        Ok(())
    })
}

/// The columns of `pour_entrained_air_n`: the parameters of `pour_entrained_air`. Set all to 0 first: a
/// parameter that may be omitted has no column then.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_entrained_air_columns {
    /// Level of a pot in the vacuum over its level before; give this or the entrained air.
    pub rise: pour_column,
    /// Air pressure at the place itself, not reduced to sea level.
    pub station_pressure_kpa: pour_column,
    /// Reading of a vacuum gauge, which counts down from the air outside; give this or the absolute pressure.
    /// May be omitted.
    pub gauge_vacuum_kpa: pour_column,
    /// Pressure that is left in the chamber, counted from nothing at all; give this or the gauge vacuum. May be
    /// omitted.
    pub absolute_pressure_kpa: pour_column,
    /// How far the vacuum gauge may be off to either side; the default, 0.9 inHg, is 3 % of a common dial. May
    /// be omitted.
    pub dial_tolerance_kpa: pour_column,
    /// Vapor pressure of the liquid; 0 for a dry plasticizer. Below the pressure in the chamber. May be
    /// omitted.
    pub vapor_pressure_kpa: pour_column,
    /// Temperature of a damp pot, whose water boils under vacuum; omit it for a dry pot. May be omitted.
    pub damp_at_celsius: pour_column,
}

/// Where `pour_entrained_air_n` writes its results. Set all to 0 first: what has no column is not written.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_entrained_air_result_columns {
    /// Share of air in the mix by volume, under the outside pressure. Unit: 1.
    pub entrained_air: pour_result_column,
}

/// `pour_entrained_air` for every row.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_entrained_air_n(
    rows: usize,
    columns: Option<&pour_entrained_air_columns>,
    results: Option<&pour_entrained_air_result_columns>,
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    guard(error, &mut || {
        together! {
            columns = memory::given("columns", columns);
            results = memory::given("results", results);
        }
        let mut call = Call::new("entrained_air");
        let inputs = [
            columns.rise.required("rise"),
            columns.station_pressure_kpa.required("station_pressure_kpa"),
            columns.gauge_vacuum_kpa.optional("gauge_vacuum_kpa"),
            columns.absolute_pressure_kpa.optional("absolute_pressure_kpa"),
            columns.dial_tolerance_kpa.optional("dial_tolerance_kpa"),
            columns.vapor_pressure_kpa.optional("vapor_pressure_kpa"),
            columns.damp_at_celsius.optional("damp_at_celsius"),
        ];
        let outputs = [
            results.entrained_air.named("entrained_air"),
        ];
        // SAFETY: the header asks for columns of `rows` numbers, or null.
        let (inputs, outputs) =
            unsafe { (Inputs::new(rows, inputs), Outputs::new(rows, outputs, statuses)) };
        let (inputs, outputs) = (call.keep(inputs), call.keep(outputs));
        let (Some(inputs), Some(outputs)) = (inputs, outputs) else { return Err(call.failure()) };
        outputs.map(inputs, |[rise, station_pressure_kpa, gauge_vacuum_kpa, absolute_pressure_kpa, dial_tolerance_kpa, vapor_pressure_kpa, damp_at_celsius]| {
            let inputs = plain::EntrainedAirOf {
                rise,
                station_pressure_kpa,
                gauge_vacuum_kpa: given(gauge_vacuum_kpa),
                absolute_pressure_kpa: given(absolute_pressure_kpa),
                dial_tolerance_kpa: given(dial_tolerance_kpa),
                vapor_pressure_kpa: given(vapor_pressure_kpa),
                damp_at_celsius: given(damp_at_celsius),
            };
            let found = inputs.calculate().map_err(call::row_status)?;
            Ok([found.entrained_air])
        });
        Ok(())
    })
}

/// The input of `pour_degas_vessel`. Begin with `POUR_DEGAS_VESSEL_INPUT_INIT`, in which everything is omitted.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_degas_vessel_input {
    /// Size of this struct in bytes, as the macro sets it.
    pub size: usize,
    /// Volume of the pot, cold and without air. Unit: mL; 1e-9 to 1e15.
    pub liquid_volume_ml: f64,
    /// Share of air in the mix by volume, under the outside pressure. Unit: 1; 0 to below 1.
    pub entrained_air: f64,
    /// Air pressure at the place itself, not reduced to sea level. Unit: kPa; 22.6 to 178.
    pub station_pressure_kpa: f64,
    /// Reading of a vacuum gauge, which counts down from the air outside; give this or the absolute pressure.
    /// Unit: kPa; 0 to 180. Default: none.
    pub gauge_vacuum_kpa: f64,
    /// Pressure that is left in the chamber, counted from nothing at all; give this or the gauge vacuum. Unit:
    /// kPa; 0 to 180. Default: none.
    pub absolute_pressure_kpa: f64,
    /// How far the vacuum gauge may be off to either side; the default, 0.9 inHg, is 3 % of a common dial.
    /// Unit: kPa; 0 to 101. Default: 3.0477501.
    pub dial_tolerance_kpa: f64,
    /// Vapor pressure of the liquid; 0 for a dry plasticizer. Below the pressure in the chamber. Unit: kPa; 0
    /// to 180. Default: 0.
    pub vapor_pressure_kpa: f64,
    /// Temperature of a damp pot, whose water boils under vacuum; omit it for a dry pot. Unit: °C; 0.01 to 200.
    /// Default: none.
    pub damp_at_celsius: f64,
    /// Share of the vessel that stays empty. Unit: 1; 0 to below 1. Default: 0.1.
    pub vessel_spare: f64,
    /// Volume of the vessel up to its brim. Unit: mL; 1e-9 to 1e15. It may be omitted.
    pub vessel_brim_ml: f64,
    /// Distance between the vessel's marks. Unit: mL; 1e-9 to 1e15. Default: any level.
    pub vessel_mark_ml: f64,
}

/// The results of `pour_degas_vessel`.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_degas_vessel_result {
    /// Volume to the brim of a vessel that takes the pot at once. Unit: mL.
    pub vessel_volume_ml: f64,
    /// Level to fill the given vessel to at most, bubbles included. Unit: mL. NaN where there is none.
    pub fill_mark_ml: f64,
    /// Number of fills of the given vessel. `POUR_OMITTED_COUNT` where there is none.
    pub fills: u32,
    /// Level of each fill, shared out evenly, bubbles included. Unit: mL. NaN where there is none.
    pub fill_level_ml: f64,
    /// Volume of an even fill in the vacuum. Unit: mL. NaN where there is none.
    pub fill_swollen_ml: f64,
}

/// Vessel for a pot in a vacuum, and how to fill one that is too small.
///
/// The pot swells no higher than the spare share below the brim: V/(1 − spare). With a vessel the answer gives
/// the level to fill to, on a mark where it has any, and the number of fills.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_degas_vessel(
    input: *const pour_degas_vessel_input,
    result: Option<&mut MaybeUninit<pour_degas_vessel_result>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut result = result;
    guard(error, &mut || {
        let mut call = Call::new("degas_vessel");
        // SAFETY: the header asks for a struct that begins with its size, or null.
        let input = unsafe { memory::input(input)? };
        let result = call.keep(memory::given("result", result.as_deref_mut()));
        let liquid_volume_ml = call.number("liquid_volume_ml", Parameter::LiquidVolume, input.liquid_volume_ml);
        let entrained_air = call.number("entrained_air", Parameter::EntrainedAir, input.entrained_air);
        let station_pressure_kpa = call.number("station_pressure_kpa", Parameter::StationPressure, input.station_pressure_kpa);
        let (Some(liquid_volume_ml), Some(entrained_air), Some(station_pressure_kpa), Some(result)) = (liquid_volume_ml, entrained_air, station_pressure_kpa, result) else { return Err(call.failure_with(&[("liquid_volume_ml", Parameter::LiquidVolume, given(input.liquid_volume_ml)), ("entrained_air", Parameter::EntrainedAir, given(input.entrained_air)), ("station_pressure_kpa", Parameter::StationPressure, given(input.station_pressure_kpa)), ("gauge_vacuum_kpa", Parameter::GaugeVacuum, given(input.gauge_vacuum_kpa)), ("absolute_pressure_kpa", Parameter::AbsolutePressure, given(input.absolute_pressure_kpa)), ("dial_tolerance_kpa", Parameter::DialTolerance, given(input.dial_tolerance_kpa)), ("vapor_pressure_kpa", Parameter::VaporPressure, given(input.vapor_pressure_kpa)), ("damp_at_celsius", Parameter::DampAt, given(input.damp_at_celsius)), ("vessel_spare", Parameter::VesselSpare, given(input.vessel_spare)), ("vessel_brim_ml", Parameter::VesselBrim, given(input.vessel_brim_ml)), ("vessel_mark_ml", Parameter::VesselMark, given(input.vessel_mark_ml))])) };
        let inputs = plain::DegasVessel {
            liquid_volume_ml,
            entrained_air,
            station_pressure_kpa,
            gauge_vacuum_kpa: given(input.gauge_vacuum_kpa),
            absolute_pressure_kpa: given(input.absolute_pressure_kpa),
            dial_tolerance_kpa: given(input.dial_tolerance_kpa),
            vapor_pressure_kpa: given(input.vapor_pressure_kpa),
            damp_at_celsius: given(input.damp_at_celsius),
            vessel_spare: given(input.vessel_spare),
            vessel_brim_ml: given(input.vessel_brim_ml),
            vessel_mark_ml: given(input.vessel_mark_ml),
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(pour_degas_vessel_result {
            vessel_volume_ml: found.vessel_volume_ml,
            fill_mark_ml: call::result_number(found.fill_mark_ml),
            fills: call::result_count(found.fills),
            fill_level_ml: call::result_number(found.fill_level_ml),
            fill_swollen_ml: call::result_number(found.fill_swollen_ml),
        });
        Ok(())
    })
}

/// The columns of `pour_degas_vessel_n`: the parameters of `pour_degas_vessel`. Set all to 0 first: a parameter
/// that may be omitted has no column then.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_degas_vessel_columns {
    /// Volume of the pot, cold and without air.
    pub liquid_volume_ml: pour_column,
    /// Share of air in the mix by volume, under the outside pressure.
    pub entrained_air: pour_column,
    /// Air pressure at the place itself, not reduced to sea level.
    pub station_pressure_kpa: pour_column,
    /// Reading of a vacuum gauge, which counts down from the air outside; give this or the absolute pressure.
    /// May be omitted.
    pub gauge_vacuum_kpa: pour_column,
    /// Pressure that is left in the chamber, counted from nothing at all; give this or the gauge vacuum. May be
    /// omitted.
    pub absolute_pressure_kpa: pour_column,
    /// How far the vacuum gauge may be off to either side; the default, 0.9 inHg, is 3 % of a common dial. May
    /// be omitted.
    pub dial_tolerance_kpa: pour_column,
    /// Vapor pressure of the liquid; 0 for a dry plasticizer. Below the pressure in the chamber. May be
    /// omitted.
    pub vapor_pressure_kpa: pour_column,
    /// Temperature of a damp pot, whose water boils under vacuum; omit it for a dry pot. May be omitted.
    pub damp_at_celsius: pour_column,
    /// Share of the vessel that stays empty. May be omitted.
    pub vessel_spare: pour_column,
    /// Volume of the vessel up to its brim. May be omitted.
    pub vessel_brim_ml: pour_column,
    /// Distance between the vessel's marks. May be omitted.
    pub vessel_mark_ml: pour_column,
}

/// Where `pour_degas_vessel_n` writes its results. Set all to 0 first: what has no column is not written.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_degas_vessel_result_columns {
    /// Volume to the brim of a vessel that takes the pot at once. Unit: mL.
    pub vessel_volume_ml: pour_result_column,
    /// Level to fill the given vessel to at most, bubbles included. Unit: mL. NaN where there is none.
    pub fill_mark_ml: pour_result_column,
    /// Number of fills of the given vessel. NaN where there is none.
    pub fills: pour_result_column,
    /// Level of each fill, shared out evenly, bubbles included. Unit: mL. NaN where there is none.
    pub fill_level_ml: pour_result_column,
    /// Volume of an even fill in the vacuum. Unit: mL. NaN where there is none.
    pub fill_swollen_ml: pour_result_column,
}

/// `pour_degas_vessel` for every row.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_degas_vessel_n(
    rows: usize,
    columns: Option<&pour_degas_vessel_columns>,
    results: Option<&pour_degas_vessel_result_columns>,
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    guard(error, &mut || {
        together! {
            columns = memory::given("columns", columns);
            results = memory::given("results", results);
        }
        let mut call = Call::new("degas_vessel");
        let inputs = [
            columns.liquid_volume_ml.required("liquid_volume_ml"),
            columns.entrained_air.required("entrained_air"),
            columns.station_pressure_kpa.required("station_pressure_kpa"),
            columns.gauge_vacuum_kpa.optional("gauge_vacuum_kpa"),
            columns.absolute_pressure_kpa.optional("absolute_pressure_kpa"),
            columns.dial_tolerance_kpa.optional("dial_tolerance_kpa"),
            columns.vapor_pressure_kpa.optional("vapor_pressure_kpa"),
            columns.damp_at_celsius.optional("damp_at_celsius"),
            columns.vessel_spare.optional("vessel_spare"),
            columns.vessel_brim_ml.optional("vessel_brim_ml"),
            columns.vessel_mark_ml.optional("vessel_mark_ml"),
        ];
        let outputs = [
            results.vessel_volume_ml.named("vessel_volume_ml"),
            results.fill_mark_ml.named("fill_mark_ml"),
            results.fills.named("fills"),
            results.fill_level_ml.named("fill_level_ml"),
            results.fill_swollen_ml.named("fill_swollen_ml"),
        ];
        // SAFETY: the header asks for columns of `rows` numbers, or null.
        let (inputs, outputs) =
            unsafe { (Inputs::new(rows, inputs), Outputs::new(rows, outputs, statuses)) };
        let (inputs, outputs) = (call.keep(inputs), call.keep(outputs));
        let (Some(inputs), Some(outputs)) = (inputs, outputs) else { return Err(call.failure()) };
        outputs.map(inputs, |[liquid_volume_ml, entrained_air, station_pressure_kpa, gauge_vacuum_kpa, absolute_pressure_kpa, dial_tolerance_kpa, vapor_pressure_kpa, damp_at_celsius, vessel_spare, vessel_brim_ml, vessel_mark_ml]| {
            let inputs = plain::DegasVessel {
                liquid_volume_ml,
                entrained_air,
                station_pressure_kpa,
                gauge_vacuum_kpa: given(gauge_vacuum_kpa),
                absolute_pressure_kpa: given(absolute_pressure_kpa),
                dial_tolerance_kpa: given(dial_tolerance_kpa),
                vapor_pressure_kpa: given(vapor_pressure_kpa),
                damp_at_celsius: given(damp_at_celsius),
                vessel_spare: given(vessel_spare),
                vessel_brim_ml: given(vessel_brim_ml),
                vessel_mark_ml: given(vessel_mark_ml),
            };
            let found = inputs.calculate().map_err(call::row_status)?;
            Ok([found.vessel_volume_ml, call::result_number(found.fill_mark_ml), call::result_number(found.fills.map(f64::from)), call::result_number(found.fill_level_ml), call::result_number(found.fill_swollen_ml)])
        });
        Ok(())
    })
}

/// The results of `pour_flake_count`.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_flake_count_result {
    /// Number of particles, not rounded. Unit: 1.
    pub particles: f64,
    /// Area of film, one face of every particle. Unit: cm2.
    pub area_cm2: f64,
}

/// Number of particles in a dose of flake, nominal: m/(A·h·ρ), A the face of the cut, h the thickness of the
/// film.
///
/// A = (√3/2)s² of a hexagon, s² of a square, (π/4)s² of a disk. Real particles are cut a little smaller.
///
/// `cut`: Size and shape of a flake as the trade writes it: `.035`, `1/64 hex`, `0.4 mm square`. 0.05 to 6.35
/// mm.
/// `thickness_um`: Thickness of the film; below the size of the cut. Unit: µm; 1e-3 to 6350.
/// `film_density_g_per_ml`: Density of the film that the flake is cut from. Unit: g/mL; 0.001 to 25.
/// `flake_dose_g`: Mass of the dose of flake. Unit: g; 1e-12 to 1e15.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_flake_count(
    cut: *const c_char,
    thickness_um: f64,
    film_density_g_per_ml: f64,
    flake_dose_g: f64,
    result: Option<&mut MaybeUninit<pour_flake_count_result>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut result = result;
    guard(error, &mut || {
        let mut call = Call::new("flake_count");
        let result = call.keep(memory::given("result", result.as_deref_mut()));
        // SAFETY: the header asks for a text that ends or an array so long, or null.
        let cut = unsafe { call.text("cut", Parameter::Cut, cut) };
        let thickness_um = call.number("thickness_um", Parameter::Thickness, thickness_um);
        let film_density_g_per_ml = call.number("film_density_g_per_ml", Parameter::FilmDensity, film_density_g_per_ml);
        let flake_dose_g = call.number("flake_dose_g", Parameter::FlakeDose, flake_dose_g);
        let (Some(cut), Some(thickness_um), Some(film_density_g_per_ml), Some(flake_dose_g), Some(result)) = (cut, thickness_um, film_density_g_per_ml, flake_dose_g, result) else { return Err(call.failure_with(&[("thickness_um", Parameter::Thickness, thickness_um), ("film_density_g_per_ml", Parameter::FilmDensity, film_density_g_per_ml), ("flake_dose_g", Parameter::FlakeDose, flake_dose_g)])) };
        let inputs = plain::FlakeCount {
            cut,
            thickness_um,
            film_density_g_per_ml,
            flake_dose_g,
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(pour_flake_count_result {
            particles: found.particles,
            area_cm2: found.area_cm2,
        });
        Ok(())
    })
}

/// The input of `pour_flake_swap`. Begin with `POUR_FLAKE_SWAP_INPUT_INIT`, in which everything is omitted.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_flake_swap_input {
    /// Size of this struct in bytes, as the macro sets it.
    pub size: usize,
    /// Size and shape of a flake as the trade writes it: `.035`, `1/64 hex`, `0.4 mm square`. 0.05 to 6.35 mm.
    pub cut: *const c_char,
    /// Thickness of the film; below the size of the cut. Unit: µm; 1e-3 to 6350.
    pub thickness_um: f64,
    /// Density of the film that the flake is cut from. Unit: g/mL; 0.001 to 25.
    pub film_density_g_per_ml: f64,
    /// Mass of the dose of flake. Unit: g; 1e-12 to 1e15.
    pub flake_dose_g: f64,
    /// Size and shape of the other flake. 0.05 to 6.35 mm.
    pub other_cut: *const c_char,
    /// Thickness of the film of the other flake; below the size of its cut. Unit: µm; 1e-3 to 6350.
    pub other_thickness_um: f64,
    /// Density of the film of the other flake. Unit: g/mL; 0.001 to 25.
    pub other_film_density_g_per_ml: f64,
    /// Bulk density of the other flake, level in the spoon. Unit: g/mL; 0.001 to 25. Default: none.
    pub other_as_scooped_g_per_ml: f64,
    /// What the two doses of flake have in common: the number of particles or the area of film. Default: area.
    /// One of `POUR_ALIKE_...`; 0 omits it.
    pub alike: i32,
}

/// The results of `pour_flake_swap`.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_flake_swap_result {
    /// Mass of the other flake. Unit: g.
    pub mass_g: f64,
    /// Volume to scoop of it, where its bulk density is given. Unit: mL. NaN where there is none.
    pub scoop_ml: f64,
    /// Particles of the other dose over those of the first. Unit: 1.
    pub count_ratio: f64,
    /// Area of the other dose over that of the first. Unit: 1.
    pub area_ratio: f64,
}

/// Dose of another flake in place of one, with as much area or as many particles.
///
/// The two are not the same: at an equal count a cut of half the size covers a quarter. The answer gives both.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_flake_swap(
    input: *const pour_flake_swap_input,
    result: Option<&mut MaybeUninit<pour_flake_swap_result>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut result = result;
    guard(error, &mut || {
        let mut call = Call::new("flake_swap");
        // SAFETY: the header asks for a struct that begins with its size, or null.
        let input = unsafe { memory::input(input)? };
        let result = call.keep(memory::given("result", result.as_deref_mut()));
        // SAFETY: the header asks for a text that ends or an array so long, or null.
        let cut = unsafe { call.text("cut", Parameter::Cut, input.cut) };
        let thickness_um = call.number("thickness_um", Parameter::Thickness, input.thickness_um);
        let film_density_g_per_ml = call.number("film_density_g_per_ml", Parameter::FilmDensity, input.film_density_g_per_ml);
        let flake_dose_g = call.number("flake_dose_g", Parameter::FlakeDose, input.flake_dose_g);
        // SAFETY: the header asks for a text that ends or an array so long, or null.
        let other_cut = unsafe { call.text("other_cut", Parameter::OtherCut, input.other_cut) };
        let other_thickness_um = call.number("other_thickness_um", Parameter::OtherThickness, input.other_thickness_um);
        let other_film_density_g_per_ml = call.number("other_film_density_g_per_ml", Parameter::OtherFilmDensity, input.other_film_density_g_per_ml);
        let alike = call.optional_word("alike", Parameter::Alike, input.alike);
        let (Some(cut), Some(thickness_um), Some(film_density_g_per_ml), Some(flake_dose_g), Some(other_cut), Some(other_thickness_um), Some(other_film_density_g_per_ml), Some(alike), Some(result)) = (cut, thickness_um, film_density_g_per_ml, flake_dose_g, other_cut, other_thickness_um, other_film_density_g_per_ml, alike, result) else { return Err(call.failure_with(&[("thickness_um", Parameter::Thickness, given(input.thickness_um)), ("film_density_g_per_ml", Parameter::FilmDensity, given(input.film_density_g_per_ml)), ("flake_dose_g", Parameter::FlakeDose, given(input.flake_dose_g)), ("other_thickness_um", Parameter::OtherThickness, given(input.other_thickness_um)), ("other_film_density_g_per_ml", Parameter::OtherFilmDensity, given(input.other_film_density_g_per_ml)), ("other_as_scooped_g_per_ml", Parameter::OtherAsScooped, given(input.other_as_scooped_g_per_ml))])) };
        let inputs = plain::FlakeSwap {
            cut,
            thickness_um,
            film_density_g_per_ml,
            flake_dose_g,
            other_cut,
            other_thickness_um,
            other_film_density_g_per_ml,
            other_as_scooped_g_per_ml: given(input.other_as_scooped_g_per_ml),
            alike,
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(pour_flake_swap_result {
            mass_g: found.mass_g,
            scoop_ml: call::result_number(found.scoop_ml),
            count_ratio: found.count_ratio,
            area_ratio: found.area_ratio,
        });
        Ok(())
    })
}

/// Difference of two colors in CIE L\*a\*b\*: ΔE₀₀ (CIEDE2000).
///
/// ISO/CIE 11664-6. Below 1 two pieces look alike to most eyes; side by side the eye decides.
///
/// `lightness`: L* of the color: 0 for black, 100 for white. Unit: 1; 0 to 100.
/// `a`: a* of the color: green below 0, red above. Unit: 1; -200 to 200.
/// `b`: b* of the color: blue below 0, yellow above. Unit: 1; -200 to 200.
/// `other_lightness`: L* of the other color. Unit: 1; 0 to 100.
/// `other_a`: a* of the other color. Unit: 1; -200 to 200.
/// `other_b`: b* of the other color. Unit: 1; -200 to 200.
///
/// `difference` receives: ΔE₀₀. Unit: 1.
#[unsafe(no_mangle)]
pub extern "C" fn pour_color_difference(
    lightness: f64,
    a: f64,
    b: f64,
    other_lightness: f64,
    other_a: f64,
    other_b: f64,
    difference: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut difference = difference;
    guard(error, &mut || {
        let mut call = Call::new("color_difference");
        let result = call.keep(memory::given("difference", difference.as_deref_mut()));
        let lightness = call.number("lightness", Parameter::Lightness, lightness);
        let a = call.number("a", Parameter::GreenRed, a);
        let b = call.number("b", Parameter::BlueYellow, b);
        let other_lightness = call.number("other_lightness", Parameter::OtherLightness, other_lightness);
        let other_a = call.number("other_a", Parameter::OtherGreenRed, other_a);
        let other_b = call.number("other_b", Parameter::OtherBlueYellow, other_b);
        let (Some(lightness), Some(a), Some(b), Some(other_lightness), Some(other_a), Some(other_b), Some(result)) = (lightness, a, b, other_lightness, other_a, other_b, result) else { return Err(call.failure_with(&[("lightness", Parameter::Lightness, lightness), ("a", Parameter::GreenRed, a), ("b", Parameter::BlueYellow, b), ("other_lightness", Parameter::OtherLightness, other_lightness), ("other_a", Parameter::OtherGreenRed, other_a), ("other_b", Parameter::OtherBlueYellow, other_b)])) };
        let inputs = plain::ColorDifference {
            lightness,
            a,
            b,
            other_lightness,
            other_a,
            other_b,
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(found.difference);
        Ok(())
    })
}

/// The columns of `pour_color_difference_n`: the parameters of `pour_color_difference`. Set all to 0 first: a
/// parameter that may be omitted has no column then.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_color_difference_columns {
    /// L* of the color: 0 for black, 100 for white.
    pub lightness: pour_column,
    /// a* of the color: green below 0, red above.
    pub a: pour_column,
    /// b* of the color: blue below 0, yellow above.
    pub b: pour_column,
    /// L* of the other color.
    pub other_lightness: pour_column,
    /// a* of the other color.
    pub other_a: pour_column,
    /// b* of the other color.
    pub other_b: pour_column,
}

/// Where `pour_color_difference_n` writes its results. Set all to 0 first: what has no column is not written.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_color_difference_result_columns {
    /// ΔE₀₀. Unit: 1.
    pub difference: pour_result_column,
}

/// `pour_color_difference` for every row.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_color_difference_n(
    rows: usize,
    columns: Option<&pour_color_difference_columns>,
    results: Option<&pour_color_difference_result_columns>,
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    guard(error, &mut || {
        together! {
            columns = memory::given("columns", columns);
            results = memory::given("results", results);
        }
        let mut call = Call::new("color_difference");
        let inputs = [
            columns.lightness.required("lightness"),
            columns.a.required("a"),
            columns.b.required("b"),
            columns.other_lightness.required("other_lightness"),
            columns.other_a.required("other_a"),
            columns.other_b.required("other_b"),
        ];
        let outputs = [
            results.difference.named("difference"),
        ];
        // SAFETY: the header asks for columns of `rows` numbers, or null.
        let (inputs, outputs) =
            unsafe { (Inputs::new(rows, inputs), Outputs::new(rows, outputs, statuses)) };
        let (inputs, outputs) = (call.keep(inputs), call.keep(outputs));
        let (Some(inputs), Some(outputs)) = (inputs, outputs) else { return Err(call.failure()) };
        outputs.map(inputs, |[lightness, a, b, other_lightness, other_a, other_b]| {
            let inputs = plain::ColorDifference {
                lightness,
                a,
                b,
                other_lightness,
                other_a,
                other_b,
            };
            let found = inputs.calculate().map_err(call::row_status)?;
            Ok([found.difference])
        });
        Ok(())
    })
}

/// One row of `readings`. Temperatures in the order of time, taken as straight between.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_readings_row {
    /// Time of a reading, after that of the one before. Unit: s; 0 to 1e15.
    pub reading_time_s: f64,
    /// Temperature of a reading. Unit: °C; -73 to 427.
    pub reading_temperature_celsius: f64,
}

/// Equivalent time of a heat at a reference temperature: ∫ exp(−E_a/R (1/T − 1/T_ref)) dt.
///
/// Between two readings the temperature is taken as straight. The activation energy is the supplier's;
/// published ones of PVC are 117.5 to 170 kJ/mol.
///
/// `readings`: Temperatures in the order of time, taken as straight between. 2 to 100000 of them.
/// `activation_energy_kj_per_mol`: Activation energy of the decay in the heat; state its source in a book.
/// Unit: kJ/mol; 10 to 500.
/// `reference_temperature_celsius`: Temperature at which the time is counted. Unit: °C; -73 to 427.
///
/// `equivalent_time_s` receives: Equivalent time. Unit: s.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_equivalent_time(
    readings: *const pour_readings_row,
    readings_count: usize,
    activation_energy_kj_per_mol: f64,
    reference_temperature_celsius: f64,
    equivalent_time_s: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut equivalent_time_s = equivalent_time_s;
    guard(error, &mut || {
        let mut call = Call::new("equivalent_time");
        let result = call.keep(memory::given("equivalent_time_s", equivalent_time_s.as_deref_mut()));
        // SAFETY: the header asks for a text that ends or an array so long, or null.
        let readings = unsafe { call.rows("readings", Parameter::Readings, readings, readings_count) };
        let activation_energy_kj_per_mol = call.number("activation_energy_kj_per_mol", Parameter::ActivationEnergy, activation_energy_kj_per_mol);
        let reference_temperature_celsius = call.number("reference_temperature_celsius", Parameter::ReferenceTemperature, reference_temperature_celsius);
        let (Some(readings), Some(activation_energy_kj_per_mol), Some(reference_temperature_celsius), Some(result)) = (readings, activation_energy_kj_per_mol, reference_temperature_celsius, result) else { return Err(call.failure_with(&[("activation_energy_kj_per_mol", Parameter::ActivationEnergy, activation_energy_kj_per_mol), ("reference_temperature_celsius", Parameter::ReferenceTemperature, reference_temperature_celsius)])) };
        let inputs = plain::EquivalentTime {
            readings,
            activation_energy_kj_per_mol,
            reference_temperature_celsius,
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(found.equivalent_time_s);
        Ok(())
    })
}

/// The results of `pour_budget_left`.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_budget_left_result {
    /// Budget at this dose of stabilizer. Unit: s.
    pub budget_s: f64,
    /// Time that is left; 0 where more was spent. Unit: s.
    pub left_s: f64,
    /// Time that was spent beyond the budget; 0 where it was not. Unit: s.
    pub overspent_s: f64,
}

/// Heat budget that is left of a pot, in equivalent time at the reference temperature.
///
/// More stabilizer than the budget is stated for buys the extra time that its maker states; without that figure
/// it is refused.
///
/// `heat_budget_s`: Time at the reference temperature that the plastisol withstands. Unit: s; 1e-6 to 1e15.
/// `equivalent_time_s`: Equivalent time that the pot has spent so far, at the temperature of its budget. Unit:
/// s; 0 to 1e15.
/// `budget_with`: Stabilizer that the heat budget is stated for, by mass of base. Unit: 1; 0 to 1. Default: 0.
/// `stabilizer_dose`: Stabilizer in the mix, by mass of base. Unit: 1; 0 to 1. Default: as `budget_with`.
/// `extra_time_s`: Equivalent time that more of the stabilizer buys, per mass of it per mass of base: 30000 s
/// is 5 min for every 1 %. Unit: s; 1e-6 to 1e15. Default: none.
/// `extra_most`: Highest dose of stabilizer for which the extra time is known, by mass of base. Unit: 1; 0 to
/// 1. Default: none.
#[unsafe(no_mangle)]
pub extern "C" fn pour_budget_left(
    heat_budget_s: f64,
    equivalent_time_s: f64,
    budget_with: f64,
    stabilizer_dose: f64,
    extra_time_s: f64,
    extra_most: f64,
    result: Option<&mut MaybeUninit<pour_budget_left_result>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut result = result;
    guard(error, &mut || {
        let mut call = Call::new("budget_left");
        let result = call.keep(memory::given("result", result.as_deref_mut()));
        let heat_budget_s = call.number("heat_budget_s", Parameter::HeatBudget, heat_budget_s);
        let equivalent_time_s = call.number("equivalent_time_s", Parameter::EquivalentTime, equivalent_time_s);
        let (Some(heat_budget_s), Some(equivalent_time_s), Some(result)) = (heat_budget_s, equivalent_time_s, result) else { return Err(call.failure_with(&[("heat_budget_s", Parameter::HeatBudget, heat_budget_s), ("equivalent_time_s", Parameter::EquivalentTime, equivalent_time_s), ("budget_with", Parameter::BudgetWith, given(budget_with)), ("stabilizer_dose", Parameter::StabilizerDose, given(stabilizer_dose)), ("extra_time_s", Parameter::ExtraTime, given(extra_time_s)), ("extra_most", Parameter::ExtraMost, given(extra_most))])) };
        let inputs = plain::BudgetLeft {
            heat_budget_s,
            equivalent_time_s,
            budget_with: given(budget_with),
            stabilizer_dose: given(stabilizer_dose),
            extra_time_s: given(extra_time_s),
            extra_most: given(extra_most),
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(pour_budget_left_result {
            budget_s: found.budget_s,
            left_s: found.left_s,
            overspent_s: found.overspent_s,
        });
        Ok(())
    })
}

/// The columns of `pour_budget_left_n`: the parameters of `pour_budget_left`. Set all to 0 first: a parameter
/// that may be omitted has no column then.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_budget_left_columns {
    /// Time at the reference temperature that the plastisol withstands.
    pub heat_budget_s: pour_column,
    /// Equivalent time that the pot has spent so far, at the temperature of its budget.
    pub equivalent_time_s: pour_column,
    /// Stabilizer that the heat budget is stated for, by mass of base. May be omitted.
    pub budget_with: pour_column,
    /// Stabilizer in the mix, by mass of base. May be omitted.
    pub stabilizer_dose: pour_column,
    /// Equivalent time that more of the stabilizer buys, per mass of it per mass of base: 30000 s is 5 min for
    /// every 1 %. May be omitted.
    pub extra_time_s: pour_column,
    /// Highest dose of stabilizer for which the extra time is known, by mass of base. May be omitted.
    pub extra_most: pour_column,
}

/// Where `pour_budget_left_n` writes its results. Set all to 0 first: what has no column is not written.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_budget_left_result_columns {
    /// Budget at this dose of stabilizer. Unit: s.
    pub budget_s: pour_result_column,
    /// Time that is left; 0 where more was spent. Unit: s.
    pub left_s: pour_result_column,
    /// Time that was spent beyond the budget; 0 where it was not. Unit: s.
    pub overspent_s: pour_result_column,
}

/// `pour_budget_left` for every row.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_budget_left_n(
    rows: usize,
    columns: Option<&pour_budget_left_columns>,
    results: Option<&pour_budget_left_result_columns>,
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    guard(error, &mut || {
        together! {
            columns = memory::given("columns", columns);
            results = memory::given("results", results);
        }
        let mut call = Call::new("budget_left");
        let inputs = [
            columns.heat_budget_s.required("heat_budget_s"),
            columns.equivalent_time_s.required("equivalent_time_s"),
            columns.budget_with.optional("budget_with"),
            columns.stabilizer_dose.optional("stabilizer_dose"),
            columns.extra_time_s.optional("extra_time_s"),
            columns.extra_most.optional("extra_most"),
        ];
        let outputs = [
            results.budget_s.named("budget_s"),
            results.left_s.named("left_s"),
            results.overspent_s.named("overspent_s"),
        ];
        // SAFETY: the header asks for columns of `rows` numbers, or null.
        let (inputs, outputs) =
            unsafe { (Inputs::new(rows, inputs), Outputs::new(rows, outputs, statuses)) };
        let (inputs, outputs) = (call.keep(inputs), call.keep(outputs));
        let (Some(inputs), Some(outputs)) = (inputs, outputs) else { return Err(call.failure()) };
        outputs.map(inputs, |[heat_budget_s, equivalent_time_s, budget_with, stabilizer_dose, extra_time_s, extra_most]| {
            let inputs = plain::BudgetLeft {
                heat_budget_s,
                equivalent_time_s,
                budget_with: given(budget_with),
                stabilizer_dose: given(stabilizer_dose),
                extra_time_s: given(extra_time_s),
                extra_most: given(extra_most),
            };
            let found = inputs.calculate().map_err(call::row_status)?;
            Ok([found.budget_s, found.left_s, found.overspent_s])
        });
        Ok(())
    })
}

/// One row of `timings`. Heatings that the shop has timed, all at one setting: of each the mass of the mix, the
/// temperatures before and after and the time; needed without the rated power.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_timings_row {
    /// Mass of the mix in a timed heating. Unit: g; 1e-12 to 1e15.
    pub timed_mass_g: f64,
    /// Temperature before a timed heating. Unit: °C; -73 to 427.
    pub timed_from_celsius: f64,
    /// Temperature after a timed heating, stirred; above that before. Unit: °C; -73 to 427.
    pub timed_to_celsius: f64,
    /// Time that the oven ran in a timed heating. Unit: s; 1e-3 to 1e9.
    pub timed_time_s: f64,
}

/// The input of `pour_heat_time`. Begin with `POUR_HEAT_TIME_INPUT_INIT`, in which everything is omitted.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_heat_time_input {
    /// Size of this struct in bytes, as the macro sets it.
    pub size: usize,
    /// Mass of the mix in the pot. Unit: g; 1e-12 to 1e15.
    pub pot_mass_g: f64,
    /// Specific heat of the mix, its salt counted. Unit: J/(g.K); 0.1 to 10.
    pub specific_heat_j_per_g_k: f64,
    /// The temperature before heating. Unit: °C; -73 to 427.
    pub heated_from_celsius: f64,
    /// The temperature after heating, above that before. Unit: °C; -73 to 427.
    pub heated_to_celsius: f64,
    /// Heatings that the shop has timed, all at one setting: of each the mass of the mix, the temperatures
    /// before and after and the time; needed without the rated power. 1 to 1000 of them. Default: none.
    pub timings: *const pour_timings_row,
    /// Number of `timings`.
    pub timings_count: usize,
    /// Rated power of the oven, its output at full power: a first guess, not used once there are timings;
    /// needed without them. Unit: W; 50 to 10000. Default: none.
    pub oven_power_w: f64,
    /// Setting of the oven, as a share of full power. Unit: 1; above 0 to 1. Default: that of the timings.
    pub setting: f64,
    /// Rise of the specific heat per kelvin, as a share of that at 25 °C, of what is heated and of what was
    /// timed. Unit: 1/K; -0.002 to 0.01. Default: 0.
    pub specific_heat_rise_per_kelvin: f64,
    /// Specific heat of what was timed. Unit: J/(g.K); 0.1 to 10. Default: as `specific_heat_j_per_g_k`.
    pub timed_specific_heat_j_per_g_k: f64,
    /// Mass of the vessel. Unit: g; 1e-12 to 1e15. Default: left to the timings.
    pub vessel_mass_g: f64,
    /// Specific heat of the vessel. Unit: J/(g.K); 0.1 to 10. Default: none.
    pub vessel_specific_heat_j_per_g_k: f64,
}

/// The results of `pour_heat_time`.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_heat_time_result {
    /// Heating time. Unit: s.
    pub heat_time_s: f64,
    /// Its standard uncertainty for one more heating. Unit: s.
    pub heat_time_uncertainty_s: f64,
    /// Power that reaches mix and vessel. Unit: W.
    pub power_w: f64,
    /// How far the amount is outside those that were timed, as a factor; none inside them. Unit: 1. NaN where
    /// there is none.
    pub beyond: f64,
}

/// Heating time of a pot in the oven, without a break, by the shop's own timings.
///
/// t = Q (a + b/m), Q = ∫ (m c_p(T) + C_vessel) dT; a and b are fitted to the timings (module `process::heat`).
/// An amount of more than 1.6 times the timed ones is refused. Without timings the rated power gives a first
/// guess.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_heat_time(
    input: *const pour_heat_time_input,
    result: Option<&mut MaybeUninit<pour_heat_time_result>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut result = result;
    guard(error, &mut || {
        let mut call = Call::new("heat_time");
        // SAFETY: the header asks for a struct that begins with its size, or null.
        let input = unsafe { memory::input(input)? };
        let result = call.keep(memory::given("result", result.as_deref_mut()));
        let pot_mass_g = call.number("pot_mass_g", Parameter::PotMass, input.pot_mass_g);
        let specific_heat_j_per_g_k = call.number("specific_heat_j_per_g_k", Parameter::SpecificHeat, input.specific_heat_j_per_g_k);
        let heated_from_celsius = call.number("heated_from_celsius", Parameter::HeatedFrom, input.heated_from_celsius);
        let heated_to_celsius = call.number("heated_to_celsius", Parameter::HeatedTo, input.heated_to_celsius);
        // SAFETY: the header asks for a text that ends or an array so long, or null.
        let timings = unsafe { call.optional_rows("timings", Parameter::Timings, input.timings, input.timings_count) };
        let (Some(pot_mass_g), Some(specific_heat_j_per_g_k), Some(heated_from_celsius), Some(heated_to_celsius), Some(timings), Some(result)) = (pot_mass_g, specific_heat_j_per_g_k, heated_from_celsius, heated_to_celsius, timings, result) else { return Err(call.failure_with(&[("pot_mass_g", Parameter::PotMass, given(input.pot_mass_g)), ("specific_heat_j_per_g_k", Parameter::SpecificHeat, given(input.specific_heat_j_per_g_k)), ("heated_from_celsius", Parameter::HeatedFrom, given(input.heated_from_celsius)), ("heated_to_celsius", Parameter::HeatedTo, given(input.heated_to_celsius)), ("oven_power_w", Parameter::OvenPower, given(input.oven_power_w)), ("setting", Parameter::Setting, given(input.setting)), ("specific_heat_rise_per_kelvin", Parameter::SpecificHeatRise, given(input.specific_heat_rise_per_kelvin)), ("timed_specific_heat_j_per_g_k", Parameter::TimedSpecificHeat, given(input.timed_specific_heat_j_per_g_k)), ("vessel_mass_g", Parameter::VesselMass, given(input.vessel_mass_g)), ("vessel_specific_heat_j_per_g_k", Parameter::VesselSpecificHeat, given(input.vessel_specific_heat_j_per_g_k))])) };
        let inputs = plain::HeatTime {
            pot_mass_g,
            specific_heat_j_per_g_k,
            heated_from_celsius,
            heated_to_celsius,
            timings,
            oven_power_w: given(input.oven_power_w),
            setting: given(input.setting),
            specific_heat_rise_per_kelvin: given(input.specific_heat_rise_per_kelvin),
            timed_specific_heat_j_per_g_k: given(input.timed_specific_heat_j_per_g_k),
            vessel_mass_g: given(input.vessel_mass_g),
            vessel_specific_heat_j_per_g_k: given(input.vessel_specific_heat_j_per_g_k),
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(pour_heat_time_result {
            heat_time_s: found.heat_time_s,
            heat_time_uncertainty_s: found.heat_time_uncertainty_s,
            power_w: found.power_w,
            beyond: call::result_number(found.beyond),
        });
        Ok(())
    })
}

/// The input of `pour_next_burst`. Begin with `POUR_NEXT_BURST_INPUT_INIT`, in which everything is omitted.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_next_burst_input {
    /// Size of this struct in bytes, as the macro sets it.
    pub size: usize,
    /// Mass of the mix in the pot. Unit: g; 1e-12 to 1e15.
    pub pot_mass_g: f64,
    /// Specific heat of the mix, its salt counted. Unit: J/(g.K); 0.1 to 10.
    pub specific_heat_j_per_g_k: f64,
    /// Reading of the thermometer, in the stirred mix. Unit: °C; -73 to 427.
    pub reading_celsius: f64,
    /// Lowest temperature at which the mix is shot, its material's own. Unit: °C; -73 to 427.
    pub window_bottom_celsius: f64,
    /// Highest temperature at which the mix is shot, its material's own; above the lowest. Unit: °C; -73 to
    /// 427.
    pub window_top_celsius: f64,
    /// Heatings that the shop has timed, all at one setting: of each the mass of the mix, the temperatures
    /// before and after and the time; needed without the rated power. 1 to 1000 of them. Default: none.
    pub timings: *const pour_timings_row,
    /// Number of `timings`.
    pub timings_count: usize,
    /// Rated power of the oven, its output at full power: a first guess, not used once there are timings;
    /// needed without them. Unit: W; 50 to 10000. Default: none.
    pub oven_power_w: f64,
    /// Setting of the oven, as a share of full power. Unit: 1; above 0 to 1. Default: that of the timings.
    pub setting: f64,
    /// Rise of the specific heat per kelvin, as a share of that at 25 °C, of what is heated and of what was
    /// timed. Unit: 1/K; -0.002 to 0.01. Default: 0.
    pub specific_heat_rise_per_kelvin: f64,
    /// Specific heat of what was timed. Unit: J/(g.K); 0.1 to 10. Default: as `specific_heat_j_per_g_k`.
    pub timed_specific_heat_j_per_g_k: f64,
    /// Mass of the vessel. Unit: g; 1e-12 to 1e15. Default: left to the timings.
    pub vessel_mass_g: f64,
    /// Specific heat of the vessel. Unit: J/(g.K); 0.1 to 10. Default: none.
    pub vessel_specific_heat_j_per_g_k: f64,
    /// The temperature to heat to. Unit: °C; in the shot window. Default: the middle of the window.
    pub aim_celsius: f64,
    /// How far the thermometer may be off. Unit: K; 0 to 100. Default: 2.
    pub thermometer_kelvin: f64,
    /// Shortest burst that can be set, of which the others are multiples. Unit: s; 1e-3 to 3600. Default: 5.
    pub burst_step_s: f64,
    /// Longest burst without a stir, at least the shortest. Unit: s; 1e-3 to 3600. Default: 120.
    pub longest_burst_s: f64,
    /// How long a turn of full power and none takes at a setting below full power. Unit: s; 0 to 3600. Default:
    /// 30.
    pub oven_turn_s: f64,
    /// The system of measures: what a cup, a spoon and a fluid ounce hold. Default: us-customary. One of
    /// `POUR_MEASURES_...`; 0 omits it.
    pub measures: i32,
}

/// The results of `pour_next_burst`.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_next_burst_result {
    /// The next burst; none where the pot is hot enough. Unit: s. NaN where there is none.
    pub burst_s: f64,
    /// The expected reading after it. Unit: °C. NaN where there is none.
    pub expected_celsius: f64,
    /// Shoot from this reading on. Unit: °C.
    pub shoot_from_celsius: f64,
    /// Shoot up to this reading; above it, stop and let the pot cool. Unit: °C.
    pub shoot_to_celsius: f64,
    /// Number of bursts that are expected from this reading on.
    pub bursts: u32,
    /// Time that the oven is expected to run in them. Unit: s.
    pub oven_time_s: f64,
}

/// The next burst of the oven for a reading of the thermometer.
///
/// No burst can carry the pot over its window, by all the power that the timings make plausible and the error
/// of the thermometer (module `process::heat`). Stir, read, and look up each burst by its reading. The system
/// of measures gives the scale of the thermometer, on whole degrees of which the limits are.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_next_burst(
    input: *const pour_next_burst_input,
    result: Option<&mut MaybeUninit<pour_next_burst_result>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut result = result;
    guard(error, &mut || {
        let mut call = Call::new("next_burst");
        // SAFETY: the header asks for a struct that begins with its size, or null.
        let input = unsafe { memory::input(input)? };
        let result = call.keep(memory::given("result", result.as_deref_mut()));
        let pot_mass_g = call.number("pot_mass_g", Parameter::PotMass, input.pot_mass_g);
        let specific_heat_j_per_g_k = call.number("specific_heat_j_per_g_k", Parameter::SpecificHeat, input.specific_heat_j_per_g_k);
        let reading_celsius = call.number("reading_celsius", Parameter::Reading, input.reading_celsius);
        let window_bottom_celsius = call.number("window_bottom_celsius", Parameter::WindowBottom, input.window_bottom_celsius);
        let window_top_celsius = call.number("window_top_celsius", Parameter::WindowTop, input.window_top_celsius);
        // SAFETY: the header asks for a text that ends or an array so long, or null.
        let timings = unsafe { call.optional_rows("timings", Parameter::Timings, input.timings, input.timings_count) };
        let measures = call.optional_word("measures", Parameter::Measures, input.measures);
        let (Some(pot_mass_g), Some(specific_heat_j_per_g_k), Some(reading_celsius), Some(window_bottom_celsius), Some(window_top_celsius), Some(timings), Some(measures), Some(result)) = (pot_mass_g, specific_heat_j_per_g_k, reading_celsius, window_bottom_celsius, window_top_celsius, timings, measures, result) else { return Err(call.failure_with(&[("pot_mass_g", Parameter::PotMass, given(input.pot_mass_g)), ("specific_heat_j_per_g_k", Parameter::SpecificHeat, given(input.specific_heat_j_per_g_k)), ("reading_celsius", Parameter::Reading, given(input.reading_celsius)), ("window_bottom_celsius", Parameter::WindowBottom, given(input.window_bottom_celsius)), ("window_top_celsius", Parameter::WindowTop, given(input.window_top_celsius)), ("oven_power_w", Parameter::OvenPower, given(input.oven_power_w)), ("setting", Parameter::Setting, given(input.setting)), ("specific_heat_rise_per_kelvin", Parameter::SpecificHeatRise, given(input.specific_heat_rise_per_kelvin)), ("timed_specific_heat_j_per_g_k", Parameter::TimedSpecificHeat, given(input.timed_specific_heat_j_per_g_k)), ("vessel_mass_g", Parameter::VesselMass, given(input.vessel_mass_g)), ("vessel_specific_heat_j_per_g_k", Parameter::VesselSpecificHeat, given(input.vessel_specific_heat_j_per_g_k)), ("aim_celsius", Parameter::Aim, given(input.aim_celsius)), ("thermometer_kelvin", Parameter::Thermometer, given(input.thermometer_kelvin)), ("burst_step_s", Parameter::BurstStep, given(input.burst_step_s)), ("longest_burst_s", Parameter::LongestBurst, given(input.longest_burst_s)), ("oven_turn_s", Parameter::OvenTurn, given(input.oven_turn_s))])) };
        let inputs = plain::NextBurst {
            pot_mass_g,
            specific_heat_j_per_g_k,
            reading_celsius,
            window_bottom_celsius,
            window_top_celsius,
            timings,
            oven_power_w: given(input.oven_power_w),
            setting: given(input.setting),
            specific_heat_rise_per_kelvin: given(input.specific_heat_rise_per_kelvin),
            timed_specific_heat_j_per_g_k: given(input.timed_specific_heat_j_per_g_k),
            vessel_mass_g: given(input.vessel_mass_g),
            vessel_specific_heat_j_per_g_k: given(input.vessel_specific_heat_j_per_g_k),
            aim_celsius: given(input.aim_celsius),
            thermometer_kelvin: given(input.thermometer_kelvin),
            burst_step_s: given(input.burst_step_s),
            longest_burst_s: given(input.longest_burst_s),
            oven_turn_s: given(input.oven_turn_s),
            measures,
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(pour_next_burst_result {
            burst_s: call::result_number(found.burst_s),
            expected_celsius: call::result_number(found.expected_celsius),
            shoot_from_celsius: found.shoot_from_celsius,
            shoot_to_celsius: found.shoot_to_celsius,
            bursts: found.bursts,
            oven_time_s: found.oven_time_s,
        });
        Ok(())
    })
}

/// The input of `pour_stays_hot`. Begin with `POUR_STAYS_HOT_INPUT_INIT`, in which everything is omitted.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_stays_hot_input {
    /// Size of this struct in bytes, as the macro sets it.
    pub size: usize,
    /// Mass of the mix in the pot. Unit: g; 1e-12 to 1e15.
    pub pot_mass_g: f64,
    /// Temperature after the last burst. Unit: °C; -73 to 427.
    pub hot_from_celsius: f64,
    /// Temperature down to which the pot can be shot, above that of the room. Unit: °C; -73 to 427.
    pub hot_to_celsius: f64,
    /// Mass of the mix in a pot that was watched to cool. Unit: g; 1e-12 to 1e15.
    pub watched_mass_g: f64,
    /// First reading of a pot that was watched to cool, from its second minute on, stirred. Unit: °C; -73 to
    /// 427.
    pub watched_from_celsius: f64,
    /// Second reading of a pot that was watched to cool, stirred; below the first and above that of the room.
    /// Unit: °C; -73 to 427.
    pub watched_to_celsius: f64,
    /// Time between the two readings of a pot that was watched to cool. Unit: s; 1e-3 to 1e9.
    pub watched_time_s: f64,
    /// Temperature of the room, below all others. Unit: °C; -73 to 427. Default: 20.
    pub room_celsius: f64,
    /// How long the pot has stood. Unit: s; 0 to 1e15. Default: how hot it then is, is not calculated.
    pub stood_s: f64,
}

/// The results of `pour_stays_hot`.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_stays_hot_result {
    /// Time in which the distance to the temperature of the room falls to 37 %. Unit: s.
    pub time_constant_s: f64,
    /// Time down to the lower temperature, with all of the mix in the pot. Unit: s.
    pub hot_for_s: f64,
    /// The same with half of it. Unit: s.
    pub half_full_s: f64,
    /// Temperature after the time that the pot has stood. Unit: °C. NaN where there is none.
    pub after_celsius: f64,
}

/// How long a pot stays hot, by a pot that was watched to cool.
///
/// Newton's law: T(t) = T_room + (T₀ − T_room)·exp(−t/τ), τ = t/ln((T₀ − T_room)/(T₁ − T_room)); less mix than
/// was watched cools faster (module `process::heat`).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_stays_hot(
    input: *const pour_stays_hot_input,
    result: Option<&mut MaybeUninit<pour_stays_hot_result>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut result = result;
    guard(error, &mut || {
        let mut call = Call::new("stays_hot");
        // SAFETY: the header asks for a struct that begins with its size, or null.
        let input = unsafe { memory::input(input)? };
        let result = call.keep(memory::given("result", result.as_deref_mut()));
        let pot_mass_g = call.number("pot_mass_g", Parameter::PotMass, input.pot_mass_g);
        let hot_from_celsius = call.number("hot_from_celsius", Parameter::HotFrom, input.hot_from_celsius);
        let hot_to_celsius = call.number("hot_to_celsius", Parameter::HotTo, input.hot_to_celsius);
        let watched_mass_g = call.number("watched_mass_g", Parameter::WatchedMass, input.watched_mass_g);
        let watched_from_celsius = call.number("watched_from_celsius", Parameter::WatchedFrom, input.watched_from_celsius);
        let watched_to_celsius = call.number("watched_to_celsius", Parameter::WatchedTo, input.watched_to_celsius);
        let watched_time_s = call.number("watched_time_s", Parameter::WatchedTime, input.watched_time_s);
        let (Some(pot_mass_g), Some(hot_from_celsius), Some(hot_to_celsius), Some(watched_mass_g), Some(watched_from_celsius), Some(watched_to_celsius), Some(watched_time_s), Some(result)) = (pot_mass_g, hot_from_celsius, hot_to_celsius, watched_mass_g, watched_from_celsius, watched_to_celsius, watched_time_s, result) else { return Err(call.failure_with(&[("pot_mass_g", Parameter::PotMass, given(input.pot_mass_g)), ("hot_from_celsius", Parameter::HotFrom, given(input.hot_from_celsius)), ("hot_to_celsius", Parameter::HotTo, given(input.hot_to_celsius)), ("watched_mass_g", Parameter::WatchedMass, given(input.watched_mass_g)), ("watched_from_celsius", Parameter::WatchedFrom, given(input.watched_from_celsius)), ("watched_to_celsius", Parameter::WatchedTo, given(input.watched_to_celsius)), ("watched_time_s", Parameter::WatchedTime, given(input.watched_time_s)), ("room_celsius", Parameter::Room, given(input.room_celsius)), ("stood_s", Parameter::Stood, given(input.stood_s))])) };
        let inputs = plain::StaysHot {
            pot_mass_g,
            hot_from_celsius,
            hot_to_celsius,
            watched_mass_g,
            watched_from_celsius,
            watched_to_celsius,
            watched_time_s,
            room_celsius: given(input.room_celsius),
            stood_s: given(input.stood_s),
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(pour_stays_hot_result {
            time_constant_s: found.time_constant_s,
            hot_for_s: found.hot_for_s,
            half_full_s: found.half_full_s,
            after_celsius: call::result_number(found.after_celsius),
        });
        Ok(())
    })
}

/// The columns of `pour_stays_hot_n`: the parameters of `pour_stays_hot`. Set all to 0 first: a parameter that
/// may be omitted has no column then.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_stays_hot_columns {
    /// Mass of the mix in the pot.
    pub pot_mass_g: pour_column,
    /// Temperature after the last burst.
    pub hot_from_celsius: pour_column,
    /// Temperature down to which the pot can be shot, above that of the room.
    pub hot_to_celsius: pour_column,
    /// Mass of the mix in a pot that was watched to cool.
    pub watched_mass_g: pour_column,
    /// First reading of a pot that was watched to cool, from its second minute on, stirred.
    pub watched_from_celsius: pour_column,
    /// Second reading of a pot that was watched to cool, stirred; below the first and above that of the room.
    pub watched_to_celsius: pour_column,
    /// Time between the two readings of a pot that was watched to cool.
    pub watched_time_s: pour_column,
    /// Temperature of the room, below all others. May be omitted.
    pub room_celsius: pour_column,
    /// How long the pot has stood. May be omitted.
    pub stood_s: pour_column,
}

/// Where `pour_stays_hot_n` writes its results. Set all to 0 first: what has no column is not written.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_stays_hot_result_columns {
    /// Time in which the distance to the temperature of the room falls to 37 %. Unit: s.
    pub time_constant_s: pour_result_column,
    /// Time down to the lower temperature, with all of the mix in the pot. Unit: s.
    pub hot_for_s: pour_result_column,
    /// The same with half of it. Unit: s.
    pub half_full_s: pour_result_column,
    /// Temperature after the time that the pot has stood. Unit: °C. NaN where there is none.
    pub after_celsius: pour_result_column,
}

/// `pour_stays_hot` for every row.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_stays_hot_n(
    rows: usize,
    columns: Option<&pour_stays_hot_columns>,
    results: Option<&pour_stays_hot_result_columns>,
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    guard(error, &mut || {
        together! {
            columns = memory::given("columns", columns);
            results = memory::given("results", results);
        }
        let mut call = Call::new("stays_hot");
        let inputs = [
            columns.pot_mass_g.required("pot_mass_g"),
            columns.hot_from_celsius.required("hot_from_celsius"),
            columns.hot_to_celsius.required("hot_to_celsius"),
            columns.watched_mass_g.required("watched_mass_g"),
            columns.watched_from_celsius.required("watched_from_celsius"),
            columns.watched_to_celsius.required("watched_to_celsius"),
            columns.watched_time_s.required("watched_time_s"),
            columns.room_celsius.optional("room_celsius"),
            columns.stood_s.optional("stood_s"),
        ];
        let outputs = [
            results.time_constant_s.named("time_constant_s"),
            results.hot_for_s.named("hot_for_s"),
            results.half_full_s.named("half_full_s"),
            results.after_celsius.named("after_celsius"),
        ];
        // SAFETY: the header asks for columns of `rows` numbers, or null.
        let (inputs, outputs) =
            unsafe { (Inputs::new(rows, inputs), Outputs::new(rows, outputs, statuses)) };
        let (inputs, outputs) = (call.keep(inputs), call.keep(outputs));
        let (Some(inputs), Some(outputs)) = (inputs, outputs) else { return Err(call.failure()) };
        outputs.map(inputs, |[pot_mass_g, hot_from_celsius, hot_to_celsius, watched_mass_g, watched_from_celsius, watched_to_celsius, watched_time_s, room_celsius, stood_s]| {
            let inputs = plain::StaysHot {
                pot_mass_g,
                hot_from_celsius,
                hot_to_celsius,
                watched_mass_g,
                watched_from_celsius,
                watched_to_celsius,
                watched_time_s,
                room_celsius: given(room_celsius),
                stood_s: given(stood_s),
            };
            let found = inputs.calculate().map_err(call::row_status)?;
            Ok([found.time_constant_s, found.hot_for_s, found.half_full_s, call::result_number(found.after_celsius)])
        });
        Ok(())
    })
}

/// One row of `clock_runs`. The pot's shots in their order, like ones together: of each run the number of
/// shots, the mass that one takes, the working time for one, the time that it sets and the number of molds in
/// turn. At most 100 000 shots.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_clock_runs_row {
    /// Number of like shots in a row; at most 100 000 from one pot. Unit: 1; 1 to 100000.
    pub pot_shots: f64,
    /// Mass of one shot, sprue included. Unit: g; 1e-12 to 1e15.
    pub shot_mass_g: f64,
    /// Working time of a shot: fill, shoot, top off, take out. Unit: s; 1e-3 to 1e15. Default: how often a shot
    /// can be made is not calculated.
    pub hands_s: f64,
    /// Time that a shot sets in its mold. Unit: s; 0 to 1e6. Default: 0.
    pub sets_s: f64,
    /// Number of such molds that are shot in turn. Unit: 1; 1 to 1000000. Default: 1.
    pub molds: f64,
}

/// The input of `pour_pot_heats`. Begin with `POUR_POT_HEATS_INPUT_INIT`, in which everything is omitted.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_pot_heats_input {
    /// Size of this struct in bytes, as the macro sets it.
    pub size: usize,
    /// Mass of the mix in the pot. Unit: g; 1e-12 to 1e15.
    pub pot_mass_g: f64,
    /// The pot's shots in their order, like ones together: of each run the number of shots, the mass that one
    /// takes, the working time for one, the time that it sets and the number of molds in turn. At most 100 000
    /// shots. 1 to 1000 of them.
    pub clock_runs: *const pour_clock_runs_row,
    /// Number of `clock_runs`.
    pub clock_runs_count: usize,
    /// How long the pot stays hot at one heat, from the last burst to the last shot. Unit: s; 1e-3 to 1e15.
    /// Default: from how it cools.
    pub hot_for_s: f64,
    /// Temperature after the last burst; needed with `cools`. Unit: °C; -73 to 427. Default: none.
    pub clock_from_celsius: f64,
    /// Temperature down to which the pot can be shot, above that of the room; needed with `cools`. Unit: °C;
    /// -73 to 427. Default: none.
    pub clock_to_celsius: f64,
    /// Mass of the mix in a pot that was watched to cool. Unit: g; 1e-12 to 1e15. It may be omitted.
    pub watched_mass_g: f64,
    /// First reading of a pot that was watched to cool, from its second minute on, stirred. Unit: °C; -73 to
    /// 427. It may be omitted.
    pub watched_from_celsius: f64,
    /// Second reading of a pot that was watched to cool, stirred; below the first and above that of the room.
    /// Unit: °C; -73 to 427. It may be omitted.
    pub watched_to_celsius: f64,
    /// Time between the two readings of a pot that was watched to cool. Unit: s; 1e-3 to 1e9. It may be
    /// omitted.
    pub watched_time_s: f64,
    /// Temperature of the room, below all others. Unit: °C; -73 to 427. Default: 20.
    pub room_celsius: f64,
    /// How long the oven runs for one heat. Unit: s; 0 to 1e15. Default: it is not counted.
    pub oven_time_s: f64,
}

/// The results of `pour_pot_heats`.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_pot_heats_result {
    /// Number of reheats: the heats but for the first.
    pub reheats: u32,
    /// Number of shots in the first heat.
    pub first_shots: u32,
    /// Time of all shots, without the oven. Unit: s.
    pub shooting_time_s: f64,
    /// Time of all shots and of the oven for each heat, where that is given. Unit: s. NaN where there is none.
    pub total_time_s: f64,
}

/// The heats that the shots of a pot take, and how long they all take.
///
/// A heat goes on while the next shot ends before the pot has fallen to the bottom of its window; then it is
/// heated again. How long a pot stays hot is stated, or follows from a pot that was watched to cool. A shot can
/// be made every max(h, (h + s)/k): h its working time, s the time that it sets, k molds in turn (module
/// `process::clock`).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_pot_heats(
    input: *const pour_pot_heats_input,
    result: Option<&mut MaybeUninit<pour_pot_heats_result>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut result = result;
    guard(error, &mut || {
        let mut call = Call::new("pot_heats");
        // SAFETY: the header asks for a struct that begins with its size, or null.
        let input = unsafe { memory::input(input)? };
        let result = call.keep(memory::given("result", result.as_deref_mut()));
        let pot_mass_g = call.number("pot_mass_g", Parameter::PotMass, input.pot_mass_g);
        // SAFETY: the header asks for a text that ends or an array so long, or null.
        let clock_runs = unsafe { call.rows("clock_runs", Parameter::ClockRuns, input.clock_runs, input.clock_runs_count) };
        let (Some(pot_mass_g), Some(clock_runs), Some(result)) = (pot_mass_g, clock_runs, result) else { return Err(call.failure_with(&[("pot_mass_g", Parameter::PotMass, given(input.pot_mass_g)), ("hot_for_s", Parameter::HotFor, given(input.hot_for_s)), ("clock_from_celsius", Parameter::ClockFrom, given(input.clock_from_celsius)), ("clock_to_celsius", Parameter::ClockTo, given(input.clock_to_celsius)), ("watched_mass_g", Parameter::WatchedMass, given(input.watched_mass_g)), ("watched_from_celsius", Parameter::WatchedFrom, given(input.watched_from_celsius)), ("watched_to_celsius", Parameter::WatchedTo, given(input.watched_to_celsius)), ("watched_time_s", Parameter::WatchedTime, given(input.watched_time_s)), ("room_celsius", Parameter::Room, given(input.room_celsius)), ("oven_time_s", Parameter::OvenTime, given(input.oven_time_s))])) };
        let inputs = plain::PotHeats {
            pot_mass_g,
            clock_runs,
            hot_for_s: given(input.hot_for_s),
            clock_from_celsius: given(input.clock_from_celsius),
            clock_to_celsius: given(input.clock_to_celsius),
            watched_mass_g: given(input.watched_mass_g),
            watched_from_celsius: given(input.watched_from_celsius),
            watched_to_celsius: given(input.watched_to_celsius),
            watched_time_s: given(input.watched_time_s),
            room_celsius: given(input.room_celsius),
            oven_time_s: given(input.oven_time_s),
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(pour_pot_heats_result {
            reheats: found.reheats,
            first_shots: found.first_shots,
            shooting_time_s: found.shooting_time_s,
            total_time_s: call::result_number(found.total_time_s),
        });
        Ok(())
    })
}

/// The input of `pour_setting_time`. Begin with `POUR_SETTING_TIME_INPUT_INIT`, in which everything is omitted.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_setting_time_input {
    /// Size of this struct in bytes, as the macro sets it.
    pub size: usize,
    /// Shape of the thickest part of a piece. One of `POUR_SECTION_SHAPE_...`.
    pub section_shape: i32,
    /// Thickness of the thickest part of a piece; of a rod or a ball its diameter. Unit: mm; 0.2 to 200.
    pub section_thickness_mm: f64,
    /// Temperature at which it is shot, above that at which it is taken out. Unit: °C; -73 to 427.
    pub shot_at_celsius: f64,
    /// Temperature of the mold before the shot, below that at which a piece is taken out. Unit: °C; -73 to 427.
    /// Default: 30.
    pub mold_at_celsius: f64,
    /// Temperature at which a piece can be taken out. Unit: °C; -73 to 427. Default: 50.
    pub take_out_celsius: f64,
    /// The point of a piece whose temperature counts. Default: center. One of `POUR_PIECE_POINT_...`; 0 omits
    /// it.
    pub piece_point: i32,
    /// Thermal diffusivity of the plastic. Unit: m2/s; 1e-9 to 1e-5. Default: 8.0e-8 m2/s, from 6.5e-8 to
    /// 1.0e-7.
    pub diffusivity_m2_per_s: f64,
    /// Mass of one shot, sprue included. Unit: g; 1e-12 to 1e15. It may be omitted.
    pub shot_mass_g: f64,
    /// Specific heat of the plastic. Unit: J/(g.K); 0.1 to 10. Default: 1.9.
    pub shot_specific_heat_j_per_g_k: f64,
    /// Mass of the mold. Without it the mold is taken to keep its temperature; with it the mass of the shot is
    /// needed. Unit: g; 1e-12 to 1e15. Default: none.
    pub mold_mass_g: f64,
    /// Specific heat of the mold; the default is that of aluminum. Unit: J/(g.K); 0.1 to 10. Default: 0.897.
    pub mold_specific_heat_j_per_g_k: f64,
    /// Working time of a shot: fill, shoot, top off, take out. Unit: s; 1e-3 to 1e15. Default: how often a shot
    /// can be made is not calculated.
    pub hands_s: f64,
    /// Number of such molds that are shot in turn. 1 to 1000000. Default: 1.
    pub molds: u32,
}

/// The results of `pour_setting_time`.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_setting_time_result {
    /// Setting time. Unit: s.
    pub setting_time_s: f64,
    /// The same with the highest diffusivity of soft PVC. Unit: s.
    pub setting_time_min_s: f64,
    /// The same with the lowest. Unit: s.
    pub setting_time_max_s: f64,
    /// How much one shot warms the mold, where its mass is given. Unit: K. NaN where there is none.
    pub warms_kelvin: f64,
    /// Number of shots in a row before the mold is too warm, nothing lost between them; none where its mass is
    /// not given, or it goes on. `POUR_OMITTED_COUNT` where there is none.
    pub in_a_row: u32,
    /// Time from one shot to the next, where the working time is given. Unit: s. NaN where there is none.
    pub shot_every_s: f64,
}

/// How long a shot sets in a metal mold, and how often one can be made.
///
/// The first term of the series of a rod, a plate or a ball whose surface keeps the temperature of the mold: t
/// = R²/(ζ² α) ln(C/Θ), Θ = (T_e − T_m)/(T₀ − T_m) (module `process::shot_cooling`). The mold is as warm as the
/// shot leaves it, where its mass is given.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_setting_time(
    input: *const pour_setting_time_input,
    result: Option<&mut MaybeUninit<pour_setting_time_result>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut result = result;
    guard(error, &mut || {
        let mut call = Call::new("setting_time");
        // SAFETY: the header asks for a struct that begins with its size, or null.
        let input = unsafe { memory::input(input)? };
        let result = call.keep(memory::given("result", result.as_deref_mut()));
        let section_shape = call.word("section_shape", Parameter::SectionShape, input.section_shape);
        let section_thickness_mm = call.number("section_thickness_mm", Parameter::SectionThickness, input.section_thickness_mm);
        let shot_at_celsius = call.number("shot_at_celsius", Parameter::ShotAt, input.shot_at_celsius);
        let piece_point = call.optional_word("piece_point", Parameter::PiecePoint, input.piece_point);
        let (Some(section_shape), Some(section_thickness_mm), Some(shot_at_celsius), Some(piece_point), Some(result)) = (section_shape, section_thickness_mm, shot_at_celsius, piece_point, result) else { return Err(call.failure_with(&[("section_thickness_mm", Parameter::SectionThickness, given(input.section_thickness_mm)), ("shot_at_celsius", Parameter::ShotAt, given(input.shot_at_celsius)), ("mold_at_celsius", Parameter::MoldAt, given(input.mold_at_celsius)), ("take_out_celsius", Parameter::TakeOut, given(input.take_out_celsius)), ("diffusivity_m2_per_s", Parameter::Diffusivity, given(input.diffusivity_m2_per_s)), ("shot_mass_g", Parameter::ShotMass, given(input.shot_mass_g)), ("shot_specific_heat_j_per_g_k", Parameter::ShotSpecificHeat, given(input.shot_specific_heat_j_per_g_k)), ("mold_mass_g", Parameter::MoldMass, given(input.mold_mass_g)), ("mold_specific_heat_j_per_g_k", Parameter::MoldSpecificHeat, given(input.mold_specific_heat_j_per_g_k)), ("hands_s", Parameter::Hands, given(input.hands_s)), ("molds", Parameter::Molds, call::given_count(input.molds).map(f64::from))])) };
        let inputs = plain::SettingTime {
            section_shape,
            section_thickness_mm,
            shot_at_celsius,
            mold_at_celsius: given(input.mold_at_celsius),
            take_out_celsius: given(input.take_out_celsius),
            piece_point,
            diffusivity_m2_per_s: given(input.diffusivity_m2_per_s),
            shot_mass_g: given(input.shot_mass_g),
            shot_specific_heat_j_per_g_k: given(input.shot_specific_heat_j_per_g_k),
            mold_mass_g: given(input.mold_mass_g),
            mold_specific_heat_j_per_g_k: given(input.mold_specific_heat_j_per_g_k),
            hands_s: given(input.hands_s),
            molds: call::given_count(input.molds),
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(pour_setting_time_result {
            setting_time_s: found.setting_time_s,
            setting_time_min_s: found.setting_time_min_s,
            setting_time_max_s: found.setting_time_max_s,
            warms_kelvin: call::result_number(found.warms_kelvin),
            in_a_row: call::result_count(found.in_a_row),
            shot_every_s: call::result_number(found.shot_every_s),
        });
        Ok(())
    })
}

/// The columns of `pour_setting_time_n`: the parameters of `pour_setting_time`. Set all to 0 first: a parameter
/// that may be omitted has no column then. A word counts for all rows.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_setting_time_columns {
    /// Shape of the thickest part of a piece. One of `POUR_SECTION_SHAPE_...`.
    pub section_shape: i32,
    /// Thickness of the thickest part of a piece; of a rod or a ball its diameter.
    pub section_thickness_mm: pour_column,
    /// Temperature at which it is shot, above that at which it is taken out.
    pub shot_at_celsius: pour_column,
    /// Temperature of the mold before the shot, below that at which a piece is taken out. May be omitted.
    pub mold_at_celsius: pour_column,
    /// Temperature at which a piece can be taken out. May be omitted.
    pub take_out_celsius: pour_column,
    /// The point of a piece whose temperature counts. Default: center. One of `POUR_PIECE_POINT_...`; 0 omits
    /// it.
    pub piece_point: i32,
    /// Thermal diffusivity of the plastic. May be omitted.
    pub diffusivity_m2_per_s: pour_column,
    /// Mass of one shot, sprue included. May be omitted.
    pub shot_mass_g: pour_column,
    /// Specific heat of the plastic. May be omitted.
    pub shot_specific_heat_j_per_g_k: pour_column,
    /// Mass of the mold. Without it the mold is taken to keep its temperature; with it the mass of the shot is
    /// needed. May be omitted.
    pub mold_mass_g: pour_column,
    /// Specific heat of the mold; the default is that of aluminum. May be omitted.
    pub mold_specific_heat_j_per_g_k: pour_column,
    /// Working time of a shot: fill, shoot, top off, take out. May be omitted.
    pub hands_s: pour_column,
    /// Number of such molds that are shot in turn. May be omitted.
    pub molds: pour_column,
}

/// Where `pour_setting_time_n` writes its results. Set all to 0 first: what has no column is not written.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_setting_time_result_columns {
    /// Setting time. Unit: s.
    pub setting_time_s: pour_result_column,
    /// The same with the highest diffusivity of soft PVC. Unit: s.
    pub setting_time_min_s: pour_result_column,
    /// The same with the lowest. Unit: s.
    pub setting_time_max_s: pour_result_column,
    /// How much one shot warms the mold, where its mass is given. Unit: K. NaN where there is none.
    pub warms_kelvin: pour_result_column,
    /// Number of shots in a row before the mold is too warm, nothing lost between them; none where its mass is
    /// not given, or it goes on. NaN where there is none.
    pub in_a_row: pour_result_column,
    /// Time from one shot to the next, where the working time is given. Unit: s. NaN where there is none.
    pub shot_every_s: pour_result_column,
}

/// `pour_setting_time` for every row.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_setting_time_n(
    rows: usize,
    columns: Option<&pour_setting_time_columns>,
    results: Option<&pour_setting_time_result_columns>,
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    guard(error, &mut || {
        together! {
            columns = memory::given("columns", columns);
            results = memory::given("results", results);
        }
        let mut call = Call::new("setting_time");
        let section_shape = call.word("section_shape", Parameter::SectionShape, columns.section_shape);
        let piece_point = call.optional_word("piece_point", Parameter::PiecePoint, columns.piece_point);
        let inputs = [
            columns.section_thickness_mm.required("section_thickness_mm"),
            columns.shot_at_celsius.required("shot_at_celsius"),
            columns.mold_at_celsius.optional("mold_at_celsius"),
            columns.take_out_celsius.optional("take_out_celsius"),
            columns.diffusivity_m2_per_s.optional("diffusivity_m2_per_s"),
            columns.shot_mass_g.optional("shot_mass_g"),
            columns.shot_specific_heat_j_per_g_k.optional("shot_specific_heat_j_per_g_k"),
            columns.mold_mass_g.optional("mold_mass_g"),
            columns.mold_specific_heat_j_per_g_k.optional("mold_specific_heat_j_per_g_k"),
            columns.hands_s.optional("hands_s"),
            columns.molds.optional("molds"),
        ];
        let outputs = [
            results.setting_time_s.named("setting_time_s"),
            results.setting_time_min_s.named("setting_time_min_s"),
            results.setting_time_max_s.named("setting_time_max_s"),
            results.warms_kelvin.named("warms_kelvin"),
            results.in_a_row.named("in_a_row"),
            results.shot_every_s.named("shot_every_s"),
        ];
        // SAFETY: the header asks for columns of `rows` numbers, or null.
        let (inputs, outputs) =
            unsafe { (Inputs::new(rows, inputs), Outputs::new(rows, outputs, statuses)) };
        let (inputs, outputs) = (call.keep(inputs), call.keep(outputs));
        let (Some(section_shape), Some(piece_point), Some(inputs), Some(outputs)) = (section_shape, piece_point, inputs, outputs) else { return Err(call.failure()) };
        outputs.map(inputs, |[section_thickness_mm, shot_at_celsius, mold_at_celsius, take_out_celsius, diffusivity_m2_per_s, shot_mass_g, shot_specific_heat_j_per_g_k, mold_mass_g, mold_specific_heat_j_per_g_k, hands_s, molds]| {
            let inputs = plain::SettingTime {
                section_shape,
                section_thickness_mm,
                shot_at_celsius,
                mold_at_celsius: given(mold_at_celsius),
                take_out_celsius: given(take_out_celsius),
                piece_point,
                diffusivity_m2_per_s: given(diffusivity_m2_per_s),
                shot_mass_g: given(shot_mass_g),
                shot_specific_heat_j_per_g_k: given(shot_specific_heat_j_per_g_k),
                mold_mass_g: given(mold_mass_g),
                mold_specific_heat_j_per_g_k: given(mold_specific_heat_j_per_g_k),
                hands_s: given(hands_s),
                molds: call::given_column_count(Parameter::Molds, molds)?,
            };
            let found = inputs.calculate().map_err(call::row_status)?;
            Ok([found.setting_time_s, found.setting_time_min_s, found.setting_time_max_s, call::result_number(found.warms_kelvin), call::result_number(found.in_a_row.map(f64::from)), call::result_number(found.shot_every_s)])
        });
        Ok(())
    })
}

/// The input of `pour_stir_every`. Begin with `POUR_STIR_EVERY_INPUT_INIT`, in which everything is omitted.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_stir_every_input {
    /// Size of this struct in bytes, as the macro sets it.
    pub size: usize,
    /// Size of a grain of salt: the opening of a sieve that it just passes. Unit: mm; 0.001 to 50.
    pub grain_mm: f64,
    /// True density of the grains, above that of the melt. Unit: g/mL; 0.001 to 25.
    pub grain_density_g_per_ml: f64,
    /// Density of the melt, hot. Unit: g/mL; 0.001 to 25.
    pub melt_density_g_per_ml: f64,
    /// Depth of the melt in its cup. Unit: mm; 0.1 to 10000.
    pub melt_depth_mm: f64,
    /// Lowest viscosity that the melt may have at shot temperature. Where none is known, the defaults of both
    /// span what such melts may have. Unit: mPa.s; 0.1 to 1e7. Default: 50.
    pub melt_viscosity_min_mpa_s: f64,
    /// Highest viscosity that the melt may have at shot temperature, at least the lowest. Unit: mPa.s; 0.1 to
    /// 1e7. Default: 5000.
    pub melt_viscosity_max_mpa_s: f64,
    /// Share of the grains in the volume; at 0 one grain alone. Unit: 1; 0 to 0.4. Default: 0.
    pub solids_share: f64,
    /// Share of the depth that may be without grains before it is stirred. Unit: 1; 0.001 to 1. Default: 0.1.
    pub unstirred: f64,
}

/// The results of `pour_stir_every`.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_stir_every_result {
    /// How often to stir, to be safe: in the thinnest melt. Unit: s.
    pub stir_every_s: f64,
    /// How often is enough in the thickest melt. Unit: s.
    pub stir_every_max_s: f64,
    /// Speed of the grains in the thickest melt. Unit: cm/s.
    pub settling_min_cm_per_s: f64,
    /// Speed of the grains in the thinnest melt. Unit: cm/s.
    pub settling_max_cm_per_s: f64,
}

/// How often to stir a melt with salt in it, and how fast the salt settles.
///
/// Drag of a sphere by Schiller and Naumann, hindered settling by Richardson and Zaki, a grain as a cube that
/// passes a sieve (module `process::settling`). Stir before the top share of the depth is without grains: t =
/// share · depth/v.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_stir_every(
    input: *const pour_stir_every_input,
    result: Option<&mut MaybeUninit<pour_stir_every_result>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut result = result;
    guard(error, &mut || {
        let mut call = Call::new("stir_every");
        // SAFETY: the header asks for a struct that begins with its size, or null.
        let input = unsafe { memory::input(input)? };
        let result = call.keep(memory::given("result", result.as_deref_mut()));
        let grain_mm = call.number("grain_mm", Parameter::Grain, input.grain_mm);
        let grain_density_g_per_ml = call.number("grain_density_g_per_ml", Parameter::GrainDensity, input.grain_density_g_per_ml);
        let melt_density_g_per_ml = call.number("melt_density_g_per_ml", Parameter::MeltDensity, input.melt_density_g_per_ml);
        let melt_depth_mm = call.number("melt_depth_mm", Parameter::MeltDepth, input.melt_depth_mm);
        let (Some(grain_mm), Some(grain_density_g_per_ml), Some(melt_density_g_per_ml), Some(melt_depth_mm), Some(result)) = (grain_mm, grain_density_g_per_ml, melt_density_g_per_ml, melt_depth_mm, result) else { return Err(call.failure_with(&[("grain_mm", Parameter::Grain, given(input.grain_mm)), ("grain_density_g_per_ml", Parameter::GrainDensity, given(input.grain_density_g_per_ml)), ("melt_density_g_per_ml", Parameter::MeltDensity, given(input.melt_density_g_per_ml)), ("melt_depth_mm", Parameter::MeltDepth, given(input.melt_depth_mm)), ("melt_viscosity_min_mpa_s", Parameter::MeltViscosityMin, given(input.melt_viscosity_min_mpa_s)), ("melt_viscosity_max_mpa_s", Parameter::MeltViscosityMax, given(input.melt_viscosity_max_mpa_s)), ("solids_share", Parameter::SolidsShare, given(input.solids_share)), ("unstirred", Parameter::Unstirred, given(input.unstirred))])) };
        let inputs = plain::StirEvery {
            grain_mm,
            grain_density_g_per_ml,
            melt_density_g_per_ml,
            melt_depth_mm,
            melt_viscosity_min_mpa_s: given(input.melt_viscosity_min_mpa_s),
            melt_viscosity_max_mpa_s: given(input.melt_viscosity_max_mpa_s),
            solids_share: given(input.solids_share),
            unstirred: given(input.unstirred),
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(pour_stir_every_result {
            stir_every_s: found.stir_every_s,
            stir_every_max_s: found.stir_every_max_s,
            settling_min_cm_per_s: found.settling_min_cm_per_s,
            settling_max_cm_per_s: found.settling_max_cm_per_s,
        });
        Ok(())
    })
}

/// The columns of `pour_stir_every_n`: the parameters of `pour_stir_every`. Set all to 0 first: a parameter
/// that may be omitted has no column then.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_stir_every_columns {
    /// Size of a grain of salt: the opening of a sieve that it just passes.
    pub grain_mm: pour_column,
    /// True density of the grains, above that of the melt.
    pub grain_density_g_per_ml: pour_column,
    /// Density of the melt, hot.
    pub melt_density_g_per_ml: pour_column,
    /// Depth of the melt in its cup.
    pub melt_depth_mm: pour_column,
    /// Lowest viscosity that the melt may have at shot temperature. Where none is known, the defaults of both
    /// span what such melts may have. May be omitted.
    pub melt_viscosity_min_mpa_s: pour_column,
    /// Highest viscosity that the melt may have at shot temperature, at least the lowest. May be omitted.
    pub melt_viscosity_max_mpa_s: pour_column,
    /// Share of the grains in the volume; at 0 one grain alone. May be omitted.
    pub solids_share: pour_column,
    /// Share of the depth that may be without grains before it is stirred. May be omitted.
    pub unstirred: pour_column,
}

/// Where `pour_stir_every_n` writes its results. Set all to 0 first: what has no column is not written.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_stir_every_result_columns {
    /// How often to stir, to be safe: in the thinnest melt. Unit: s.
    pub stir_every_s: pour_result_column,
    /// How often is enough in the thickest melt. Unit: s.
    pub stir_every_max_s: pour_result_column,
    /// Speed of the grains in the thickest melt. Unit: cm/s.
    pub settling_min_cm_per_s: pour_result_column,
    /// Speed of the grains in the thinnest melt. Unit: cm/s.
    pub settling_max_cm_per_s: pour_result_column,
}

/// `pour_stir_every` for every row.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_stir_every_n(
    rows: usize,
    columns: Option<&pour_stir_every_columns>,
    results: Option<&pour_stir_every_result_columns>,
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    guard(error, &mut || {
        together! {
            columns = memory::given("columns", columns);
            results = memory::given("results", results);
        }
        let mut call = Call::new("stir_every");
        let inputs = [
            columns.grain_mm.required("grain_mm"),
            columns.grain_density_g_per_ml.required("grain_density_g_per_ml"),
            columns.melt_density_g_per_ml.required("melt_density_g_per_ml"),
            columns.melt_depth_mm.required("melt_depth_mm"),
            columns.melt_viscosity_min_mpa_s.optional("melt_viscosity_min_mpa_s"),
            columns.melt_viscosity_max_mpa_s.optional("melt_viscosity_max_mpa_s"),
            columns.solids_share.optional("solids_share"),
            columns.unstirred.optional("unstirred"),
        ];
        let outputs = [
            results.stir_every_s.named("stir_every_s"),
            results.stir_every_max_s.named("stir_every_max_s"),
            results.settling_min_cm_per_s.named("settling_min_cm_per_s"),
            results.settling_max_cm_per_s.named("settling_max_cm_per_s"),
        ];
        // SAFETY: the header asks for columns of `rows` numbers, or null.
        let (inputs, outputs) =
            unsafe { (Inputs::new(rows, inputs), Outputs::new(rows, outputs, statuses)) };
        let (inputs, outputs) = (call.keep(inputs), call.keep(outputs));
        let (Some(inputs), Some(outputs)) = (inputs, outputs) else { return Err(call.failure()) };
        outputs.map(inputs, |[grain_mm, grain_density_g_per_ml, melt_density_g_per_ml, melt_depth_mm, melt_viscosity_min_mpa_s, melt_viscosity_max_mpa_s, solids_share, unstirred]| {
            let inputs = plain::StirEvery {
                grain_mm,
                grain_density_g_per_ml,
                melt_density_g_per_ml,
                melt_depth_mm,
                melt_viscosity_min_mpa_s: given(melt_viscosity_min_mpa_s),
                melt_viscosity_max_mpa_s: given(melt_viscosity_max_mpa_s),
                solids_share: given(solids_share),
                unstirred: given(unstirred),
            };
            let found = inputs.calculate().map_err(call::row_status)?;
            Ok([found.stir_every_s, found.stir_every_max_s, found.settling_min_cm_per_s, found.settling_max_cm_per_s])
        });
        Ok(())
    })
}

/// Viscosity of a melt, from a ball that was timed as it sank.
///
/// The drag of a sphere by Schiller and Naumann, up to a Reynolds number of 800 (module `process::settling`).
///
/// `ball_diameter_mm`: Diameter of the ball, much smaller than that of the vessel. Unit: mm; 0.001 to 50.
/// `ball_density_g_per_ml`: Density of the ball: 7.8 g/mL of steel. Unit: g/mL; 0.001 to 25.
/// `melt_density_g_per_ml`: Density of the melt, hot. Unit: g/mL; 0.001 to 25.
/// `ball_depth_mm`: How deep the ball sank, let go below the surface. Unit: mm; 1 to 10000.
/// `ball_time_s`: Time that the ball took. Unit: s; 0.01 to 1e6.
///
/// `melt_viscosity_mpa_s` receives: Viscosity of the melt. Unit: mPa.s.
#[unsafe(no_mangle)]
pub extern "C" fn pour_viscosity_of_ball(
    ball_diameter_mm: f64,
    ball_density_g_per_ml: f64,
    melt_density_g_per_ml: f64,
    ball_depth_mm: f64,
    ball_time_s: f64,
    melt_viscosity_mpa_s: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut melt_viscosity_mpa_s = melt_viscosity_mpa_s;
    guard(error, &mut || {
        let mut call = Call::new("viscosity_of_ball");
        let result = call.keep(memory::given("melt_viscosity_mpa_s", melt_viscosity_mpa_s.as_deref_mut()));
        let ball_diameter_mm = call.number("ball_diameter_mm", Parameter::BallDiameter, ball_diameter_mm);
        let ball_density_g_per_ml = call.number("ball_density_g_per_ml", Parameter::BallDensity, ball_density_g_per_ml);
        let melt_density_g_per_ml = call.number("melt_density_g_per_ml", Parameter::MeltDensity, melt_density_g_per_ml);
        let ball_depth_mm = call.number("ball_depth_mm", Parameter::BallDepth, ball_depth_mm);
        let ball_time_s = call.number("ball_time_s", Parameter::BallTime, ball_time_s);
        let (Some(ball_diameter_mm), Some(ball_density_g_per_ml), Some(melt_density_g_per_ml), Some(ball_depth_mm), Some(ball_time_s), Some(result)) = (ball_diameter_mm, ball_density_g_per_ml, melt_density_g_per_ml, ball_depth_mm, ball_time_s, result) else { return Err(call.failure_with(&[("ball_diameter_mm", Parameter::BallDiameter, ball_diameter_mm), ("ball_density_g_per_ml", Parameter::BallDensity, ball_density_g_per_ml), ("melt_density_g_per_ml", Parameter::MeltDensity, melt_density_g_per_ml), ("ball_depth_mm", Parameter::BallDepth, ball_depth_mm), ("ball_time_s", Parameter::BallTime, ball_time_s)])) };
        let inputs = plain::ViscosityOfBall {
            ball_diameter_mm,
            ball_density_g_per_ml,
            melt_density_g_per_ml,
            ball_depth_mm,
            ball_time_s,
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(found.melt_viscosity_mpa_s);
        Ok(())
    })
}

/// The columns of `pour_viscosity_of_ball_n`: the parameters of `pour_viscosity_of_ball`. Set all to 0 first: a
/// parameter that may be omitted has no column then.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_viscosity_of_ball_columns {
    /// Diameter of the ball, much smaller than that of the vessel.
    pub ball_diameter_mm: pour_column,
    /// Density of the ball: 7.8 g/mL of steel.
    pub ball_density_g_per_ml: pour_column,
    /// Density of the melt, hot.
    pub melt_density_g_per_ml: pour_column,
    /// How deep the ball sank, let go below the surface.
    pub ball_depth_mm: pour_column,
    /// Time that the ball took.
    pub ball_time_s: pour_column,
}

/// Where `pour_viscosity_of_ball_n` writes its results. Set all to 0 first: what has no column is not written.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_viscosity_of_ball_result_columns {
    /// Viscosity of the melt. Unit: mPa.s.
    pub melt_viscosity_mpa_s: pour_result_column,
}

/// `pour_viscosity_of_ball` for every row.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_viscosity_of_ball_n(
    rows: usize,
    columns: Option<&pour_viscosity_of_ball_columns>,
    results: Option<&pour_viscosity_of_ball_result_columns>,
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    guard(error, &mut || {
        together! {
            columns = memory::given("columns", columns);
            results = memory::given("results", results);
        }
        let mut call = Call::new("viscosity_of_ball");
        let inputs = [
            columns.ball_diameter_mm.required("ball_diameter_mm"),
            columns.ball_density_g_per_ml.required("ball_density_g_per_ml"),
            columns.melt_density_g_per_ml.required("melt_density_g_per_ml"),
            columns.ball_depth_mm.required("ball_depth_mm"),
            columns.ball_time_s.required("ball_time_s"),
        ];
        let outputs = [
            results.melt_viscosity_mpa_s.named("melt_viscosity_mpa_s"),
        ];
        // SAFETY: the header asks for columns of `rows` numbers, or null.
        let (inputs, outputs) =
            unsafe { (Inputs::new(rows, inputs), Outputs::new(rows, outputs, statuses)) };
        let (inputs, outputs) = (call.keep(inputs), call.keep(outputs));
        let (Some(inputs), Some(outputs)) = (inputs, outputs) else { return Err(call.failure()) };
        outputs.map(inputs, |[ball_diameter_mm, ball_density_g_per_ml, melt_density_g_per_ml, ball_depth_mm, ball_time_s]| {
            let inputs = plain::ViscosityOfBall {
                ball_diameter_mm,
                ball_density_g_per_ml,
                melt_density_g_per_ml,
                ball_depth_mm,
                ball_time_s,
            };
            let found = inputs.calculate().map_err(call::row_status)?;
            Ok([found.melt_viscosity_mpa_s])
        });
        Ok(())
    })
}

/// The input of `pour_cavity_of_weights`. Begin with `POUR_CAVITY_OF_WEIGHTS_INPUT_INIT`, in which everything
/// is omitted.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_cavity_of_weights_input {
    /// Size of this struct in bytes, as the macro sets it.
    pub size: usize,
    /// Mass of each piece, one by one. 2 to 100000 of them.
    pub weights_g: *const f64,
    /// Number of `weights_g`.
    pub weights_count: usize,
    /// Smallest difference that the balance shows; without it there is no balance. Unit: g; 1e-12 to 1e15.
    pub balance_readability_g: f64,
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
    /// Standard uncertainty of the feed share, in points of it (10 %: 60 % is 50 % to 70 %). Unit: 1; 0 to 1.
    /// Default: 0.
    pub feed_uncertainty: f64,
}

/// The results of `pour_cavity_of_weights`.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_cavity_of_weights_result {
    /// Volume of the cavity. Unit: mL.
    pub cavity_volume_ml: f64,
    /// Its standard uncertainty. Where the feed is not known, that of an even spread from 0 to 1 counts. Unit:
    /// mL.
    pub cavity_volume_uncertainty_ml: f64,
    /// Mean of the weights. Unit: g.
    pub mean_g: f64,
    /// Standard deviation of one. Unit: g.
    pub deviation_g: f64,
}

/// Volume of a cavity from weighed pieces, the feed being known: V = m̄/((1 − φ)[ρ_hot + f (ρ_cold − ρ_hot)]).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_cavity_of_weights(
    input: *const pour_cavity_of_weights_input,
    result: Option<&mut MaybeUninit<pour_cavity_of_weights_result>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut result = result;
    guard(error, &mut || {
        let mut call = Call::new("cavity_of_weights");
        // SAFETY: the header asks for a struct that begins with its size, or null.
        let input = unsafe { memory::input(input)? };
        let result = call.keep(memory::given("result", result.as_deref_mut()));
        // SAFETY: the header asks for a text that ends or an array so long, or null.
        let weights_g = unsafe { call.list("weights_g", Parameter::Weights, input.weights_g, input.weights_count) };
        let balance_readability_g = call.number("balance_readability_g", Parameter::BalanceReadability, input.balance_readability_g);
        let cold_density_g_per_ml = call.number("cold_density_g_per_ml", Parameter::ColdDensity, input.cold_density_g_per_ml);
        let (Some(weights_g), Some(balance_readability_g), Some(cold_density_g_per_ml), Some(result)) = (weights_g, balance_readability_g, cold_density_g_per_ml, result) else { return Err(call.failure_with(&[("balance_readability_g", Parameter::BalanceReadability, given(input.balance_readability_g)), ("cold_density_g_per_ml", Parameter::ColdDensity, given(input.cold_density_g_per_ml)), ("hot_density_g_per_ml", Parameter::HotDensity, given(input.hot_density_g_per_ml)), ("voids", Parameter::Voids, given(input.voids)), ("feed", Parameter::Feed, given(input.feed)), ("feed_uncertainty", Parameter::FeedUncertainty, given(input.feed_uncertainty))])) };
        let inputs = plain::CavityOfWeights {
            weights_g,
            balance_readability_g,
            cold_density_g_per_ml,
            hot_density_g_per_ml: given(input.hot_density_g_per_ml),
            voids: given(input.voids),
            feed: given(input.feed),
            feed_uncertainty: given(input.feed_uncertainty),
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(pour_cavity_of_weights_result {
            cavity_volume_ml: found.cavity_volume_ml,
            cavity_volume_uncertainty_ml: found.cavity_volume_uncertainty_ml,
            mean_g: found.mean_g,
            deviation_g: found.deviation_g,
        });
        Ok(())
    })
}

/// The input of `pour_feed_of_weights`. Begin with `POUR_FEED_OF_WEIGHTS_INPUT_INIT`, in which everything is
/// omitted.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_feed_of_weights_input {
    /// Size of this struct in bytes, as the macro sets it.
    pub size: usize,
    /// Mass of each piece, one by one. 2 to 100000 of them.
    pub weights_g: *const f64,
    /// Number of `weights_g`.
    pub weights_count: usize,
    /// Smallest difference that the balance shows; without it there is no balance. Unit: g; 1e-12 to 1e15.
    pub balance_readability_g: f64,
    /// Density of the finished plastic at 20 °C, without voids. Unit: g/mL; 0.001 to 25.
    pub cold_density_g_per_ml: f64,
    /// Volume of one cavity. Unit: mL; 1e-9 to 1e15.
    pub cavity_volume_ml: f64,
    /// Melt density at shot temperature, without voids; at most the cold one. Unit: g/mL; 0.001 to 25. Default:
    /// as `cold_density_g_per_ml`.
    pub hot_density_g_per_ml: f64,
    /// Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0.
    pub voids: f64,
    /// Standard uncertainty of the volume. Unit: mL; 0 to 1e15. Default: 0.
    pub volume_uncertainty_ml: f64,
}

/// The results of `pour_feed_of_weights`.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_feed_of_weights_result {
    /// Feed share. Unit: 1.
    pub feed: f64,
    /// Its standard uncertainty. Unit: 1.
    pub feed_uncertainty: f64,
    /// Mean of the weights. Unit: g.
    pub mean_g: f64,
    /// Standard deviation of one. Unit: g.
    pub deviation_g: f64,
}

/// Feed share from weighed pieces, the cavity being known: f = (m̄/(V (1 − φ)) − ρ_hot)/(ρ_cold − ρ_hot).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_feed_of_weights(
    input: *const pour_feed_of_weights_input,
    result: Option<&mut MaybeUninit<pour_feed_of_weights_result>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut result = result;
    guard(error, &mut || {
        let mut call = Call::new("feed_of_weights");
        // SAFETY: the header asks for a struct that begins with its size, or null.
        let input = unsafe { memory::input(input)? };
        let result = call.keep(memory::given("result", result.as_deref_mut()));
        // SAFETY: the header asks for a text that ends or an array so long, or null.
        let weights_g = unsafe { call.list("weights_g", Parameter::Weights, input.weights_g, input.weights_count) };
        let balance_readability_g = call.number("balance_readability_g", Parameter::BalanceReadability, input.balance_readability_g);
        let cold_density_g_per_ml = call.number("cold_density_g_per_ml", Parameter::ColdDensity, input.cold_density_g_per_ml);
        let cavity_volume_ml = call.number("cavity_volume_ml", Parameter::CavityVolume, input.cavity_volume_ml);
        let (Some(weights_g), Some(balance_readability_g), Some(cold_density_g_per_ml), Some(cavity_volume_ml), Some(result)) = (weights_g, balance_readability_g, cold_density_g_per_ml, cavity_volume_ml, result) else { return Err(call.failure_with(&[("balance_readability_g", Parameter::BalanceReadability, given(input.balance_readability_g)), ("cold_density_g_per_ml", Parameter::ColdDensity, given(input.cold_density_g_per_ml)), ("cavity_volume_ml", Parameter::CavityVolume, given(input.cavity_volume_ml)), ("hot_density_g_per_ml", Parameter::HotDensity, given(input.hot_density_g_per_ml)), ("voids", Parameter::Voids, given(input.voids)), ("volume_uncertainty_ml", Parameter::VolumeUncertainty, given(input.volume_uncertainty_ml))])) };
        let inputs = plain::FeedOfWeights {
            weights_g,
            balance_readability_g,
            cold_density_g_per_ml,
            cavity_volume_ml,
            hot_density_g_per_ml: given(input.hot_density_g_per_ml),
            voids: given(input.voids),
            volume_uncertainty_ml: given(input.volume_uncertainty_ml),
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(pour_feed_of_weights_result {
            feed: found.feed,
            feed_uncertainty: found.feed_uncertainty,
            mean_g: found.mean_g,
            deviation_g: found.deviation_g,
        });
        Ok(())
    })
}

/// One row of `drops_weighed`. Drops that were counted and weighed together, each weighing started over.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_drops_weighed_row {
    /// Number of drops or spoonfuls of a weighing. Unit: 1; 1 to 1000000.
    pub weighed_count: f64,
    /// What they weigh together, net. Unit: g; 1e-12 to 1e15.
    pub weighed_mass_g: f64,
}

/// The results of `pour_drop_of_weighings`.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_drop_of_weighings_result {
    /// Mass of one drop. Unit: g.
    pub drop_mass_g: f64,
    /// Its standard uncertainty. Unit: g.
    pub drop_mass_uncertainty_g: f64,
    /// Standard deviation of one drop against the next. Unit: g.
    pub scatter_g: f64,
}

/// Mass of one drop from several weighings of many.
///
/// `drops_weighed`: Drops that were counted and weighed together, each weighing started over. 2 to 1000 of
/// them.
/// `balance_readability_g`: Smallest difference that the balance shows; without it there is no balance. Unit:
/// g; 1e-12 to 1e15.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_drop_of_weighings(
    drops_weighed: *const pour_drops_weighed_row,
    drops_weighed_count: usize,
    balance_readability_g: f64,
    result: Option<&mut MaybeUninit<pour_drop_of_weighings_result>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut result = result;
    guard(error, &mut || {
        let mut call = Call::new("drop_of_weighings");
        let result = call.keep(memory::given("result", result.as_deref_mut()));
        // SAFETY: the header asks for a text that ends or an array so long, or null.
        let drops_weighed = unsafe { call.rows("drops_weighed", Parameter::DropsWeighed, drops_weighed, drops_weighed_count) };
        let balance_readability_g = call.number("balance_readability_g", Parameter::BalanceReadability, balance_readability_g);
        let (Some(drops_weighed), Some(balance_readability_g), Some(result)) = (drops_weighed, balance_readability_g, result) else { return Err(call.failure_with(&[("balance_readability_g", Parameter::BalanceReadability, balance_readability_g)])) };
        let inputs = plain::DropOfWeighings {
            drops_weighed,
            balance_readability_g,
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(pour_drop_of_weighings_result {
            drop_mass_g: found.drop_mass_g,
            drop_mass_uncertainty_g: found.drop_mass_uncertainty_g,
            scatter_g: found.scatter_g,
        });
        Ok(())
    })
}

/// One row of `scoops_weighed`. Level spoonfuls that were counted and weighed together, each weighing started
/// over.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_scoops_weighed_row {
    /// Number of drops or spoonfuls of a weighing. Unit: 1; 1 to 1000000.
    pub weighed_count: f64,
    /// What they weigh together, net. Unit: g; 1e-12 to 1e15.
    pub weighed_mass_g: f64,
}

/// The results of `pour_as_scooped_of_weighings`.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_as_scooped_of_weighings_result {
    /// Bulk density, level in the spoon. Unit: g/mL.
    pub as_scooped_g_per_ml: f64,
    /// Its standard uncertainty. Unit: g/mL.
    pub as_scooped_uncertainty_g_per_ml: f64,
    /// Mass of one spoonful. Unit: g.
    pub spoonful_g: f64,
}

/// Bulk density of a powder from several weighings of level spoonfuls.
///
/// `scoops_weighed`: Level spoonfuls that were counted and weighed together, each weighing started over. 2 to
/// 1000 of them.
/// `spoon_volume_ml`: Volume of the level spoon. Unit: mL; 1e-9 to 1e15.
/// `balance_readability_g`: Smallest difference that the balance shows; without it there is no balance. Unit:
/// g; 1e-12 to 1e15.
/// `volume_uncertainty_ml`: Standard uncertainty of the volume. Unit: mL; 0 to 1e15. Default: 0.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_as_scooped_of_weighings(
    scoops_weighed: *const pour_scoops_weighed_row,
    scoops_weighed_count: usize,
    spoon_volume_ml: f64,
    balance_readability_g: f64,
    volume_uncertainty_ml: f64,
    result: Option<&mut MaybeUninit<pour_as_scooped_of_weighings_result>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut result = result;
    guard(error, &mut || {
        let mut call = Call::new("as_scooped_of_weighings");
        let result = call.keep(memory::given("result", result.as_deref_mut()));
        // SAFETY: the header asks for a text that ends or an array so long, or null.
        let scoops_weighed = unsafe { call.rows("scoops_weighed", Parameter::ScoopsWeighed, scoops_weighed, scoops_weighed_count) };
        let spoon_volume_ml = call.number("spoon_volume_ml", Parameter::SpoonVolume, spoon_volume_ml);
        let balance_readability_g = call.number("balance_readability_g", Parameter::BalanceReadability, balance_readability_g);
        let (Some(scoops_weighed), Some(spoon_volume_ml), Some(balance_readability_g), Some(result)) = (scoops_weighed, spoon_volume_ml, balance_readability_g, result) else { return Err(call.failure_with(&[("spoon_volume_ml", Parameter::SpoonVolume, spoon_volume_ml), ("balance_readability_g", Parameter::BalanceReadability, balance_readability_g), ("volume_uncertainty_ml", Parameter::VolumeUncertainty, given(volume_uncertainty_ml))])) };
        let inputs = plain::AsScoopedOfWeighings {
            scoops_weighed,
            spoon_volume_ml,
            balance_readability_g,
            volume_uncertainty_ml: given(volume_uncertainty_ml),
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(pour_as_scooped_of_weighings_result {
            as_scooped_g_per_ml: found.as_scooped_g_per_ml,
            as_scooped_uncertainty_g_per_ml: found.as_scooped_uncertainty_g_per_ml,
            spoonful_g: found.spoonful_g,
        });
        Ok(())
    })
}

/// One row of `injector_weighed_g`. Weighings of the injector, each clean and then emptied as at work.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_injector_weighed_row {
    /// Mass of the clean injector. Unit: g; 1e-12 to 1e15.
    pub clean_mass_g: f64,
    /// Mass of the injector emptied as at work; at least that of the clean one. Unit: g; 1e-12 to 1e15.
    pub emptied_mass_g: f64,
}

/// The results of `pour_residue_of_weighings`.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_residue_of_weighings_result {
    /// Volume that stays in the injector. Unit: mL.
    pub injector_residue_ml: f64,
    /// Its standard uncertainty. Unit: mL.
    pub injector_residue_uncertainty_ml: f64,
    /// Its mass. Unit: g.
    pub residue_mass_g: f64,
}

/// Volume that stays in an injector, from weighings of it clean and then emptied as at work.
///
/// `injector_weighed_g`: Weighings of the injector, each clean and then emptied as at work. 2 to 1000 of them.
/// `residue_density_g_per_ml`: Density of what stays in the injector, at the temperature at which it is
/// emptied; its uncertainty is counted. Unit: g/mL; 0.001 to 25.
/// `balance_readability_g`: Smallest difference that the balance shows; without it there is no balance. Unit:
/// g; 1e-12 to 1e15.
/// `density_uncertainty_g_per_ml`: Standard uncertainty of the density of the piece; its bounds are counted at
/// twice that. Unit: g/mL; 0 to 25. Default: 0.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_residue_of_weighings(
    injector_weighed_g: *const pour_injector_weighed_row,
    injector_weighed_count: usize,
    residue_density_g_per_ml: f64,
    balance_readability_g: f64,
    density_uncertainty_g_per_ml: f64,
    result: Option<&mut MaybeUninit<pour_residue_of_weighings_result>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut result = result;
    guard(error, &mut || {
        let mut call = Call::new("residue_of_weighings");
        let result = call.keep(memory::given("result", result.as_deref_mut()));
        // SAFETY: the header asks for a text that ends or an array so long, or null.
        let injector_weighed_g = unsafe { call.rows("injector_weighed_g", Parameter::InjectorWeighed, injector_weighed_g, injector_weighed_count) };
        let residue_density_g_per_ml = call.number("residue_density_g_per_ml", Parameter::ResidueDensity, residue_density_g_per_ml);
        let balance_readability_g = call.number("balance_readability_g", Parameter::BalanceReadability, balance_readability_g);
        let (Some(injector_weighed_g), Some(residue_density_g_per_ml), Some(balance_readability_g), Some(result)) = (injector_weighed_g, residue_density_g_per_ml, balance_readability_g, result) else { return Err(call.failure_with(&[("residue_density_g_per_ml", Parameter::ResidueDensity, residue_density_g_per_ml), ("balance_readability_g", Parameter::BalanceReadability, balance_readability_g), ("density_uncertainty_g_per_ml", Parameter::DensityUncertainty, given(density_uncertainty_g_per_ml))])) };
        let inputs = plain::ResidueOfWeighings {
            injector_weighed_g,
            residue_density_g_per_ml,
            balance_readability_g,
            density_uncertainty_g_per_ml: given(density_uncertainty_g_per_ml),
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(pour_residue_of_weighings_result {
            injector_residue_ml: found.injector_residue_ml,
            injector_residue_uncertainty_ml: found.injector_residue_uncertainty_ml,
            residue_mass_g: found.residue_mass_g,
        });
        Ok(())
    })
}

/// Price for a cost, in the smallest unit of the currency (cents), from the share of the price that the shop
/// keeps.
///
/// price = cost/(1 − margin), rounded up, so that the margin is never missed; in whole numbers, never in binary
/// fractions. Costs of materials, work and packing with their packages and currencies: the request `cost`.
///
/// `cost`: Cost, in the smallest unit of the currency: cents. 0 to 1000000000.
/// `cost_margin`: Share of the price that the shop keeps (a markup on the cost is another thing). Without it
/// there is no price. Unit: 1; 0 to below 1.
///
/// `price` receives: Price, in the smallest unit of the currency.
#[unsafe(no_mangle)]
pub extern "C" fn pour_price(
    cost: u32,
    cost_margin: f64,
    price: Option<&mut MaybeUninit<u32>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut price = price;
    guard(error, &mut || {
        let mut call = Call::new("price");
        let result = call.keep(memory::given("price", price.as_deref_mut()));
        let cost = call.count("cost", Parameter::CostInMinorUnits, cost);
        let cost_margin = call.number("cost_margin", Parameter::CostMargin, cost_margin);
        let (Some(cost), Some(cost_margin), Some(result)) = (cost, cost_margin, result) else { return Err(call.failure_with(&[("cost", Parameter::CostInMinorUnits, cost.map(f64::from)), ("cost_margin", Parameter::CostMargin, cost_margin)])) };
        let inputs = plain::PriceOf {
            cost,
            cost_margin,
        };
        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;
        result.write(found.price);
        Ok(())
    })
}

/// The columns of `pour_price_n`: the parameters of `pour_price`. Set all to 0 first: a parameter that may be
/// omitted has no column then.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_price_columns {
    /// Cost, in the smallest unit of the currency: cents.
    pub cost: pour_column,
    /// Share of the price that the shop keeps (a markup on the cost is another thing). Without it there is no
    /// price.
    pub cost_margin: pour_column,
}

/// Where `pour_price_n` writes its results. Set all to 0 first: what has no column is not written.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_price_result_columns {
    /// Price, in the smallest unit of the currency.
    pub price: pour_result_column,
}

/// `pour_price` for every row.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_price_n(
    rows: usize,
    columns: Option<&pour_price_columns>,
    results: Option<&pour_price_result_columns>,
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    guard(error, &mut || {
        together! {
            columns = memory::given("columns", columns);
            results = memory::given("results", results);
        }
        let mut call = Call::new("price");
        let inputs = [
            columns.cost.required("cost"),
            columns.cost_margin.required("cost_margin"),
        ];
        let outputs = [
            results.price.named("price"),
        ];
        // SAFETY: the header asks for columns of `rows` numbers, or null.
        let (inputs, outputs) =
            unsafe { (Inputs::new(rows, inputs), Outputs::new(rows, outputs, statuses)) };
        let (inputs, outputs) = (call.keep(inputs), call.keep(outputs));
        let (Some(inputs), Some(outputs)) = (inputs, outputs) else { return Err(call.failure()) };
        outputs.map(inputs, |[cost, cost_margin]| {
            let inputs = plain::PriceOf {
                cost: call::column_count(Parameter::CostInMinorUnits, cost)?,
                cost_margin,
            };
            let found = inputs.calculate().map_err(call::row_status)?;
            Ok([f64::from(found.price)])
        });
        Ok(())
    })
}

