//! Every calculation of the table through its export. Made by `cargo run -p pourwright-generate`; do not edit.

use std::mem::MaybeUninit;

use pourwright::table::{Argument, Value};
use pourwright_ffi::*;

use super::by_name::{self, Call, Columns, Outcome};

/// The scalar calls.
pub(crate) const CALLS: &[(&str, Call)] = &[
    ("convert", convert),
    ("convert_number", convert_number),
    ("dose_mass", dose_mass),
    ("mass_of_volume", mass_of_volume),
    ("volume_of_mass", volume_of_mass),
    ("density_of_parts", density_of_parts),
    ("mix_share", mix_share),
    ("salt_convert", salt_convert),
    ("salt_mass", salt_mass),
    ("salt_reach", salt_reach),
    ("salt_for_density", salt_for_density),
    ("salt_for_sink_rate", salt_for_sink_rate),
    ("shot_fill", shot_fill),
    ("piece_mass", piece_mass),
    ("shots", shots),
    ("injector_loads", injector_loads),
    ("batch_need", batch_need),
    ("base_to_mark", base_to_mark),
    ("least_pot", least_pot),
    ("reject_rate", reject_rate),
    ("bench_measure", bench_measure),
    ("sink_rate", sink_rate),
    ("density_for_sink_rate", density_for_sink_rate),
    ("hardness", hardness),
    ("softener_ratio", softener_ratio),
    ("salted_softener", salted_softener),
    ("water_density", water_density),
    ("cavity_of_water", cavity_of_water),
    ("standard_pressure", standard_pressure),
    ("station_pressure", station_pressure),
    ("swollen_volume", swollen_volume),
    ("entrained_air", entrained_air),
    ("degas_vessel", degas_vessel),
    ("flake_count", flake_count),
    ("flake_swap", flake_swap),
    ("color_difference", color_difference),
    ("equivalent_time", equivalent_time),
    ("budget_left", budget_left),
    ("heat_time", heat_time),
    ("next_burst", next_burst),
    ("stays_hot", stays_hot),
    ("pot_heats", pot_heats),
    ("setting_time", setting_time),
    ("stir_every", stir_every),
    ("viscosity_of_ball", viscosity_of_ball),
    ("cavity_of_weights", cavity_of_weights),
    ("feed_of_weights", feed_of_weights),
    ("drop_of_weighings", drop_of_weighings),
    ("as_scooped_of_weighings", as_scooped_of_weighings),
    ("residue_of_weighings", residue_of_weighings),
    ("price", price),
];

/// The columnar calls.
pub(crate) const COLUMNS: &[(&str, Columns)] = &[
    ("mass_of_volume", mass_of_volume_n),
    ("volume_of_mass", volume_of_mass_n),
    ("salt_convert", salt_convert_n),
    ("salt_mass", salt_mass_n),
    ("salt_reach", salt_reach_n),
    ("salt_for_density", salt_for_density_n),
    ("salt_for_sink_rate", salt_for_sink_rate_n),
    ("shot_fill", shot_fill_n),
    ("piece_mass", piece_mass_n),
    ("shots", shots_n),
    ("injector_loads", injector_loads_n),
    ("batch_need", batch_need_n),
    ("base_to_mark", base_to_mark_n),
    ("reject_rate", reject_rate_n),
    ("sink_rate", sink_rate_n),
    ("density_for_sink_rate", density_for_sink_rate_n),
    ("water_density", water_density_n),
    ("cavity_of_water", cavity_of_water_n),
    ("standard_pressure", standard_pressure_n),
    ("station_pressure", station_pressure_n),
    ("swollen_volume", swollen_volume_n),
    ("entrained_air", entrained_air_n),
    ("degas_vessel", degas_vessel_n),
    ("color_difference", color_difference_n),
    ("budget_left", budget_left_n),
    ("stays_hot", stays_hot_n),
    ("setting_time", setting_time_n),
    ("stir_every", stir_every_n),
    ("viscosity_of_ball", viscosity_of_ball_n),
    ("price", price_n),
];

fn convert(arguments: &[Argument<'_>]) -> Outcome {
    let text_amount = by_name::text(by_name::at(arguments, 0));
    let text_to = by_name::text(by_name::at(arguments, 1));
    let mut out = MaybeUninit::uninit();
    // SAFETY: texts that end, and lists that live.
    by_name::done(|error| unsafe { pour_convert(by_name::start(&text_amount), by_name::start(&text_to), by_name::word("measures", by_name::at(arguments, 2)), Some(&mut out), Some(error)) })?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out),
    ])
}

fn convert_number(arguments: &[Argument<'_>]) -> Outcome {
    let text_unit = by_name::text(by_name::at(arguments, 1));
    let text_to = by_name::text(by_name::at(arguments, 2));
    let mut out = MaybeUninit::uninit();
    // SAFETY: texts that end, and lists that live.
    by_name::done(|error| unsafe { pour_convert_number(by_name::number(by_name::at(arguments, 0)), by_name::start(&text_unit), by_name::start(&text_to), by_name::word("measures", by_name::at(arguments, 3)), Some(&mut out), Some(error)) })?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out),
    ])
}

fn dose_mass(arguments: &[Argument<'_>]) -> Outcome {
    let text_amount = by_name::text(by_name::at(arguments, 0));
    let mut out = MaybeUninit::uninit();
    // SAFETY: texts that end, and lists that live.
    by_name::done(|error| unsafe { pour_dose_mass(by_name::start(&text_amount), by_name::word("kind", by_name::at(arguments, 1)), by_name::number(by_name::at(arguments, 2)), by_name::number(by_name::at(arguments, 3)), by_name::number(by_name::at(arguments, 4)), by_name::word("measures", by_name::at(arguments, 5)), Some(&mut out), Some(error)) })?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out),
    ])
}

fn mass_of_volume(arguments: &[Argument<'_>]) -> Outcome {
    let mut out = MaybeUninit::uninit();
    by_name::done(|error| pour_mass_of_volume(by_name::number(by_name::at(arguments, 0)), by_name::number(by_name::at(arguments, 1)), Some(&mut out), Some(error)))?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out),
    ])
}

fn mass_of_volume_n(
    rows: usize,
    inputs: &[pour_column],
    _: &[i32],
    outputs: &[pour_result_column],
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let columns = pour_mass_of_volume_columns {
        volume_ml: inputs[0],
        density_g_per_ml: inputs[1],
    };
    let results = pour_mass_of_volume_result_columns {
        mass_g: outputs[0],
    };
    // SAFETY: the columns are those of the caller.
    unsafe { pour_mass_of_volume_n(rows, Some(&columns), Some(&results), statuses, error) }
}

fn volume_of_mass(arguments: &[Argument<'_>]) -> Outcome {
    let mut out = MaybeUninit::uninit();
    by_name::done(|error| pour_volume_of_mass(by_name::number(by_name::at(arguments, 0)), by_name::number(by_name::at(arguments, 1)), Some(&mut out), Some(error)))?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out),
    ])
}

fn volume_of_mass_n(
    rows: usize,
    inputs: &[pour_column],
    _: &[i32],
    outputs: &[pour_result_column],
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let columns = pour_volume_of_mass_columns {
        mass_g: inputs[0],
        density_g_per_ml: inputs[1],
    };
    let results = pour_volume_of_mass_result_columns {
        volume_ml: outputs[0],
    };
    // SAFETY: the columns are those of the caller.
    unsafe { pour_volume_of_mass_n(rows, Some(&columns), Some(&results), statuses, error) }
}

fn density_of_parts(arguments: &[Argument<'_>]) -> Outcome {
    let mut out = MaybeUninit::uninit();
    // SAFETY: texts that end, and lists that live.
    by_name::done(|error| unsafe { pour_density_of_parts(by_name::list(by_name::at(arguments, 0)).0.cast(), by_name::list(by_name::at(arguments, 0)).1 / 2, by_name::number(by_name::at(arguments, 1)), Some(&mut out), Some(error)) })?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out),
    ])
}

fn mix_share(arguments: &[Argument<'_>]) -> Outcome {
    let mut out = MaybeUninit::<pour_mix_share_result>::uninit();
    // SAFETY: texts that end, and lists that live.
    by_name::done(|error| unsafe { pour_mix_share(by_name::list(by_name::at(arguments, 0)).0.cast(), by_name::list(by_name::at(arguments, 0)).1 / 2, by_name::count(by_name::at(arguments, 1)), Some(&mut out), Some(error)) })?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out.mass_share),
        Value::Number(out.volume_share),
    ])
}

fn salt_convert(arguments: &[Argument<'_>]) -> Outcome {
    let input = pour_salt_convert_input {
        size: size_of::<pour_salt_convert_input>(),
        base_volume_ml: by_name::number(by_name::at(arguments, 0)),
        base_density_g_per_ml: by_name::number(by_name::at(arguments, 1)),
        salt_density_g_per_ml: by_name::number(by_name::at(arguments, 2)),
        form: by_name::word("form", by_name::at(arguments, 3)),
        loading: by_name::number(by_name::at(arguments, 4)),
        to_form: by_name::word("to_form", by_name::at(arguments, 5)),
        mix_mass_g: by_name::number(by_name::at(arguments, 6)),
        mix_volume_ml: by_name::number(by_name::at(arguments, 7)),
        hot_volume_ml: by_name::number(by_name::at(arguments, 8)),
        shot_temperature_celsius: by_name::number(by_name::at(arguments, 9)),
        voids: by_name::number(by_name::at(arguments, 10)),
        salt_as_scooped_g_per_ml: by_name::number(by_name::at(arguments, 11)),
        salt_expansion_per_kelvin: by_name::number(by_name::at(arguments, 12)),
        softener_per_salt: by_name::number(by_name::at(arguments, 13)),
        softener_density_g_per_ml: by_name::number(by_name::at(arguments, 14)),
        softener_expansion_per_kelvin: by_name::number(by_name::at(arguments, 15)),
        most_solids: by_name::number(by_name::at(arguments, 16)),
        cavity_volume_ml: by_name::number(by_name::at(arguments, 17)),
        feed: by_name::number(by_name::at(arguments, 18)),
        hook_mass_g: by_name::number(by_name::at(arguments, 19)),
        hook_volume_ml: by_name::number(by_name::at(arguments, 20)),
    };
    let mut out = MaybeUninit::<pour_salt_convert_result>::uninit();
    // SAFETY: texts that end, and lists that live.
    by_name::done(|error| unsafe { pour_salt_convert(&raw const input, Some(&mut out), Some(error)) })?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out.loading),
        Value::Number(out.loading_min),
        Value::Number(out.loading_max),
    ])
}

fn salt_convert_n(
    rows: usize,
    inputs: &[pour_column],
    words: &[i32],
    outputs: &[pour_result_column],
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let columns = pour_salt_convert_columns {
        base_volume_ml: inputs[0],
        base_density_g_per_ml: inputs[1],
        salt_density_g_per_ml: inputs[2],
        form: words[0],
        loading: inputs[3],
        to_form: words[1],
        mix_mass_g: inputs[4],
        mix_volume_ml: inputs[5],
        hot_volume_ml: inputs[6],
        shot_temperature_celsius: inputs[7],
        voids: inputs[8],
        salt_as_scooped_g_per_ml: inputs[9],
        salt_expansion_per_kelvin: inputs[10],
        softener_per_salt: inputs[11],
        softener_density_g_per_ml: inputs[12],
        softener_expansion_per_kelvin: inputs[13],
        most_solids: inputs[14],
        cavity_volume_ml: inputs[15],
        feed: inputs[16],
        hook_mass_g: inputs[17],
        hook_volume_ml: inputs[18],
    };
    let results = pour_salt_convert_result_columns {
        loading: outputs[0],
        loading_min: outputs[1],
        loading_max: outputs[2],
    };
    // SAFETY: the columns are those of the caller.
    unsafe { pour_salt_convert_n(rows, Some(&columns), Some(&results), statuses, error) }
}

fn salt_mass(arguments: &[Argument<'_>]) -> Outcome {
    let input = pour_salt_mass_input {
        size: size_of::<pour_salt_mass_input>(),
        base_volume_ml: by_name::number(by_name::at(arguments, 0)),
        base_density_g_per_ml: by_name::number(by_name::at(arguments, 1)),
        salt_density_g_per_ml: by_name::number(by_name::at(arguments, 2)),
        form: by_name::word("form", by_name::at(arguments, 3)),
        loading: by_name::number(by_name::at(arguments, 4)),
        mix_mass_g: by_name::number(by_name::at(arguments, 5)),
        mix_volume_ml: by_name::number(by_name::at(arguments, 6)),
        hot_volume_ml: by_name::number(by_name::at(arguments, 7)),
        shot_temperature_celsius: by_name::number(by_name::at(arguments, 8)),
        voids: by_name::number(by_name::at(arguments, 9)),
        salt_as_scooped_g_per_ml: by_name::number(by_name::at(arguments, 10)),
        salt_expansion_per_kelvin: by_name::number(by_name::at(arguments, 11)),
        softener_per_salt: by_name::number(by_name::at(arguments, 12)),
        softener_density_g_per_ml: by_name::number(by_name::at(arguments, 13)),
        softener_expansion_per_kelvin: by_name::number(by_name::at(arguments, 14)),
        most_solids: by_name::number(by_name::at(arguments, 15)),
        cavity_volume_ml: by_name::number(by_name::at(arguments, 16)),
        feed: by_name::number(by_name::at(arguments, 17)),
        hook_mass_g: by_name::number(by_name::at(arguments, 18)),
        hook_volume_ml: by_name::number(by_name::at(arguments, 19)),
    };
    let mut out = MaybeUninit::<pour_salt_mass_result>::uninit();
    // SAFETY: texts that end, and lists that live.
    by_name::done(|error| unsafe { pour_salt_mass(&raw const input, Some(&mut out), Some(error)) })?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out.salt_mass_g),
        Value::Number(out.salt_mass_min_g),
        Value::Number(out.salt_mass_max_g),
        Value::Number(out.softener_mass_g),
    ])
}

fn salt_mass_n(
    rows: usize,
    inputs: &[pour_column],
    words: &[i32],
    outputs: &[pour_result_column],
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let columns = pour_salt_mass_columns {
        base_volume_ml: inputs[0],
        base_density_g_per_ml: inputs[1],
        salt_density_g_per_ml: inputs[2],
        form: words[0],
        loading: inputs[3],
        mix_mass_g: inputs[4],
        mix_volume_ml: inputs[5],
        hot_volume_ml: inputs[6],
        shot_temperature_celsius: inputs[7],
        voids: inputs[8],
        salt_as_scooped_g_per_ml: inputs[9],
        salt_expansion_per_kelvin: inputs[10],
        softener_per_salt: inputs[11],
        softener_density_g_per_ml: inputs[12],
        softener_expansion_per_kelvin: inputs[13],
        most_solids: inputs[14],
        cavity_volume_ml: inputs[15],
        feed: inputs[16],
        hook_mass_g: inputs[17],
        hook_volume_ml: inputs[18],
    };
    let results = pour_salt_mass_result_columns {
        salt_mass_g: outputs[0],
        salt_mass_min_g: outputs[1],
        salt_mass_max_g: outputs[2],
        softener_mass_g: outputs[3],
    };
    // SAFETY: the columns are those of the caller.
    unsafe { pour_salt_mass_n(rows, Some(&columns), Some(&results), statuses, error) }
}

fn salt_reach(arguments: &[Argument<'_>]) -> Outcome {
    let input = pour_salt_reach_input {
        size: size_of::<pour_salt_reach_input>(),
        base_volume_ml: by_name::number(by_name::at(arguments, 0)),
        base_density_g_per_ml: by_name::number(by_name::at(arguments, 1)),
        salt_density_g_per_ml: by_name::number(by_name::at(arguments, 2)),
        form: by_name::word("form", by_name::at(arguments, 3)),
        mix_mass_g: by_name::number(by_name::at(arguments, 4)),
        mix_volume_ml: by_name::number(by_name::at(arguments, 5)),
        hot_volume_ml: by_name::number(by_name::at(arguments, 6)),
        shot_temperature_celsius: by_name::number(by_name::at(arguments, 7)),
        voids: by_name::number(by_name::at(arguments, 8)),
        salt_as_scooped_g_per_ml: by_name::number(by_name::at(arguments, 9)),
        salt_expansion_per_kelvin: by_name::number(by_name::at(arguments, 10)),
        softener_per_salt: by_name::number(by_name::at(arguments, 11)),
        softener_density_g_per_ml: by_name::number(by_name::at(arguments, 12)),
        softener_expansion_per_kelvin: by_name::number(by_name::at(arguments, 13)),
        most_solids: by_name::number(by_name::at(arguments, 14)),
        cavity_volume_ml: by_name::number(by_name::at(arguments, 15)),
        feed: by_name::number(by_name::at(arguments, 16)),
        hook_mass_g: by_name::number(by_name::at(arguments, 17)),
        hook_volume_ml: by_name::number(by_name::at(arguments, 18)),
    };
    let mut out = MaybeUninit::<pour_salt_reach_result>::uninit();
    // SAFETY: texts that end, and lists that live.
    by_name::done(|error| unsafe { pour_salt_reach(&raw const input, Some(&mut out), Some(error)) })?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out.loading_min),
        Value::Number(out.loading_max),
    ])
}

fn salt_reach_n(
    rows: usize,
    inputs: &[pour_column],
    words: &[i32],
    outputs: &[pour_result_column],
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let columns = pour_salt_reach_columns {
        base_volume_ml: inputs[0],
        base_density_g_per_ml: inputs[1],
        salt_density_g_per_ml: inputs[2],
        form: words[0],
        mix_mass_g: inputs[3],
        mix_volume_ml: inputs[4],
        hot_volume_ml: inputs[5],
        shot_temperature_celsius: inputs[6],
        voids: inputs[7],
        salt_as_scooped_g_per_ml: inputs[8],
        salt_expansion_per_kelvin: inputs[9],
        softener_per_salt: inputs[10],
        softener_density_g_per_ml: inputs[11],
        softener_expansion_per_kelvin: inputs[12],
        most_solids: inputs[13],
        cavity_volume_ml: inputs[14],
        feed: inputs[15],
        hook_mass_g: inputs[16],
        hook_volume_ml: inputs[17],
    };
    let results = pour_salt_reach_result_columns {
        loading_min: outputs[0],
        loading_max: outputs[1],
    };
    // SAFETY: the columns are those of the caller.
    unsafe { pour_salt_reach_n(rows, Some(&columns), Some(&results), statuses, error) }
}

fn salt_for_density(arguments: &[Argument<'_>]) -> Outcome {
    let mut out = MaybeUninit::uninit();
    by_name::done(|error| pour_salt_for_density(by_name::number(by_name::at(arguments, 0)), by_name::number(by_name::at(arguments, 1)), by_name::number(by_name::at(arguments, 2)), by_name::number(by_name::at(arguments, 3)), by_name::number(by_name::at(arguments, 4)), by_name::number(by_name::at(arguments, 5)), Some(&mut out), Some(error)))?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out),
    ])
}

fn salt_for_density_n(
    rows: usize,
    inputs: &[pour_column],
    _: &[i32],
    outputs: &[pour_result_column],
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let columns = pour_salt_for_density_columns {
        base_volume_ml: inputs[0],
        base_density_g_per_ml: inputs[1],
        salt_density_g_per_ml: inputs[2],
        finished_density_g_per_ml: inputs[3],
        voids: inputs[4],
        most_solids: inputs[5],
    };
    let results = pour_salt_for_density_result_columns {
        salt_mass_g: outputs[0],
    };
    // SAFETY: the columns are those of the caller.
    unsafe { pour_salt_for_density_n(rows, Some(&columns), Some(&results), statuses, error) }
}

fn salt_for_sink_rate(arguments: &[Argument<'_>]) -> Outcome {
    let input = pour_salt_for_sink_rate_input {
        size: size_of::<pour_salt_for_sink_rate_input>(),
        base_volume_ml: by_name::number(by_name::at(arguments, 0)),
        base_density_g_per_ml: by_name::number(by_name::at(arguments, 1)),
        salt_density_g_per_ml: by_name::number(by_name::at(arguments, 2)),
        sink_rate_cm_per_s: by_name::number(by_name::at(arguments, 3)),
        cavity_volume_ml: by_name::number(by_name::at(arguments, 4)),
        diameter_mm: by_name::number(by_name::at(arguments, 5)),
        water_temperature_celsius: by_name::number(by_name::at(arguments, 6)),
        length_mm: by_name::number(by_name::at(arguments, 7)),
        shape: by_name::word("shape", by_name::at(arguments, 8)),
        mix_mass_g: by_name::number(by_name::at(arguments, 9)),
        mix_volume_ml: by_name::number(by_name::at(arguments, 10)),
        hot_volume_ml: by_name::number(by_name::at(arguments, 11)),
        shot_temperature_celsius: by_name::number(by_name::at(arguments, 12)),
        voids: by_name::number(by_name::at(arguments, 13)),
        salt_expansion_per_kelvin: by_name::number(by_name::at(arguments, 14)),
        softener_per_salt: by_name::number(by_name::at(arguments, 15)),
        softener_density_g_per_ml: by_name::number(by_name::at(arguments, 16)),
        softener_expansion_per_kelvin: by_name::number(by_name::at(arguments, 17)),
        most_solids: by_name::number(by_name::at(arguments, 18)),
        feed: by_name::number(by_name::at(arguments, 19)),
        hook_mass_g: by_name::number(by_name::at(arguments, 20)),
        hook_volume_ml: by_name::number(by_name::at(arguments, 21)),
        salinity_practical: by_name::number(by_name::at(arguments, 22)),
        salinity_absolute: by_name::number(by_name::at(arguments, 23)),
        drop_depth_m: by_name::number(by_name::at(arguments, 24)),
        drop_time_s: by_name::number(by_name::at(arguments, 25)),
        drop_density_g_per_ml: by_name::number(by_name::at(arguments, 26)),
    };
    let mut out = MaybeUninit::<pour_salt_for_sink_rate_result>::uninit();
    // SAFETY: texts that end, and lists that live.
    by_name::done(|error| unsafe { pour_salt_for_sink_rate(&raw const input, Some(&mut out), Some(error)) })?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out.salt_mass_g),
        Value::Number(out.softener_mass_g),
        Value::Number(out.finished_density_g_per_ml),
    ])
}

fn salt_for_sink_rate_n(
    rows: usize,
    inputs: &[pour_column],
    words: &[i32],
    outputs: &[pour_result_column],
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let columns = pour_salt_for_sink_rate_columns {
        base_volume_ml: inputs[0],
        base_density_g_per_ml: inputs[1],
        salt_density_g_per_ml: inputs[2],
        sink_rate_cm_per_s: inputs[3],
        cavity_volume_ml: inputs[4],
        diameter_mm: inputs[5],
        water_temperature_celsius: inputs[6],
        length_mm: inputs[7],
        shape: words[0],
        mix_mass_g: inputs[8],
        mix_volume_ml: inputs[9],
        hot_volume_ml: inputs[10],
        shot_temperature_celsius: inputs[11],
        voids: inputs[12],
        salt_expansion_per_kelvin: inputs[13],
        softener_per_salt: inputs[14],
        softener_density_g_per_ml: inputs[15],
        softener_expansion_per_kelvin: inputs[16],
        most_solids: inputs[17],
        feed: inputs[18],
        hook_mass_g: inputs[19],
        hook_volume_ml: inputs[20],
        salinity_practical: inputs[21],
        salinity_absolute: inputs[22],
        drop_depth_m: inputs[23],
        drop_time_s: inputs[24],
        drop_density_g_per_ml: inputs[25],
    };
    let results = pour_salt_for_sink_rate_result_columns {
        salt_mass_g: outputs[0],
        softener_mass_g: outputs[1],
        finished_density_g_per_ml: outputs[2],
    };
    // SAFETY: the columns are those of the caller.
    unsafe { pour_salt_for_sink_rate_n(rows, Some(&columns), Some(&results), statuses, error) }
}

fn shot_fill(arguments: &[Argument<'_>]) -> Outcome {
    let input = pour_shot_fill_input {
        size: size_of::<pour_shot_fill_input>(),
        cavities: by_name::count(by_name::at(arguments, 0)),
        cavity_volume_ml: by_name::number(by_name::at(arguments, 1)),
        cold_density_g_per_ml: by_name::number(by_name::at(arguments, 2)),
        hot_density_g_per_ml: by_name::number(by_name::at(arguments, 3)),
        voids: by_name::number(by_name::at(arguments, 4)),
        feed: by_name::number(by_name::at(arguments, 5)),
        sprue_volume_ml: by_name::number(by_name::at(arguments, 6)),
        topped_mass_g: by_name::number(by_name::at(arguments, 7)),
        layer_share: by_name::number(by_name::at(arguments, 8)),
    };
    let mut out = MaybeUninit::<pour_shot_fill_result>::uninit();
    // SAFETY: texts that end, and lists that live.
    by_name::done(|error| unsafe { pour_shot_fill(&raw const input, Some(&mut out), Some(error)) })?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out.shot_mass_g),
        Value::Number(out.pieces_mass_g),
        Value::Number(out.sprue_mass_g),
        Value::Number(out.missing_mass_g),
        Value::Number(out.piece_mass_g),
        Value::Number(out.piece_mass_min_g),
        Value::Number(out.piece_mass_max_g),
        Value::Number(out.fed),
    ])
}

fn shot_fill_n(
    rows: usize,
    inputs: &[pour_column],
    _: &[i32],
    outputs: &[pour_result_column],
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let columns = pour_shot_fill_columns {
        cavities: inputs[0],
        cavity_volume_ml: inputs[1],
        cold_density_g_per_ml: inputs[2],
        hot_density_g_per_ml: inputs[3],
        voids: inputs[4],
        feed: inputs[5],
        sprue_volume_ml: inputs[6],
        topped_mass_g: inputs[7],
        layer_share: inputs[8],
    };
    let results = pour_shot_fill_result_columns {
        shot_mass_g: outputs[0],
        pieces_mass_g: outputs[1],
        sprue_mass_g: outputs[2],
        missing_mass_g: outputs[3],
        piece_mass_g: outputs[4],
        piece_mass_min_g: outputs[5],
        piece_mass_max_g: outputs[6],
        fed: outputs[7],
    };
    // SAFETY: the columns are those of the caller.
    unsafe { pour_shot_fill_n(rows, Some(&columns), Some(&results), statuses, error) }
}

fn piece_mass(arguments: &[Argument<'_>]) -> Outcome {
    let mut out = MaybeUninit::<pour_piece_mass_result>::uninit();
    by_name::done(|error| pour_piece_mass(by_name::number(by_name::at(arguments, 0)), by_name::number(by_name::at(arguments, 1)), by_name::number(by_name::at(arguments, 2)), by_name::number(by_name::at(arguments, 3)), by_name::number(by_name::at(arguments, 4)), Some(&mut out), Some(error)))?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out.piece_mass_g),
        Value::Number(out.piece_mass_min_g),
        Value::Number(out.piece_mass_max_g),
    ])
}

fn piece_mass_n(
    rows: usize,
    inputs: &[pour_column],
    _: &[i32],
    outputs: &[pour_result_column],
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let columns = pour_piece_mass_columns {
        cavity_volume_ml: inputs[0],
        cold_density_g_per_ml: inputs[1],
        hot_density_g_per_ml: inputs[2],
        voids: inputs[3],
        feed: inputs[4],
    };
    let results = pour_piece_mass_result_columns {
        piece_mass_g: outputs[0],
        piece_mass_min_g: outputs[1],
        piece_mass_max_g: outputs[2],
    };
    // SAFETY: the columns are those of the caller.
    unsafe { pour_piece_mass_n(rows, Some(&columns), Some(&results), statuses, error) }
}

fn shots(arguments: &[Argument<'_>]) -> Outcome {
    let mut out = MaybeUninit::<pour_shots_result>::uninit();
    by_name::done(|error| pour_shots(by_name::count(by_name::at(arguments, 0)), by_name::count(by_name::at(arguments, 1)), by_name::number(by_name::at(arguments, 2)), by_name::number(by_name::at(arguments, 3)), Some(&mut out), Some(error)))?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(f64::from(out.shots)),
        Value::Number(f64::from(out.cast)),
    ])
}

fn shots_n(
    rows: usize,
    inputs: &[pour_column],
    _: &[i32],
    outputs: &[pour_result_column],
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let columns = pour_shots_columns {
        pieces: inputs[0],
        cavities: inputs[1],
        rejects: inputs[2],
        confidence: inputs[3],
    };
    let results = pour_shots_result_columns {
        shots: outputs[0],
        cast: outputs[1],
    };
    // SAFETY: the columns are those of the caller.
    unsafe { pour_shots_n(rows, Some(&columns), Some(&results), statuses, error) }
}

fn injector_loads(arguments: &[Argument<'_>]) -> Outcome {
    let mut out = MaybeUninit::<pour_injector_loads_result>::uninit();
    by_name::done(|error| pour_injector_loads(by_name::count(by_name::at(arguments, 0)), by_name::number(by_name::at(arguments, 1)), by_name::number(by_name::at(arguments, 2)), by_name::number(by_name::at(arguments, 3)), by_name::number(by_name::at(arguments, 4)), Some(&mut out), Some(error)))?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(f64::from(out.loads)),
        Value::Number(f64::from(out.shots_per_load)),
        Value::Number(f64::from(out.shots_in_last)),
    ])
}

fn injector_loads_n(
    rows: usize,
    inputs: &[pour_column],
    _: &[i32],
    outputs: &[pour_result_column],
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let columns = pour_injector_loads_columns {
        shots: inputs[0],
        shot_mass_g: inputs[1],
        shot_density_g_per_ml: inputs[2],
        injector_capacity_ml: inputs[3],
        injector_residue_ml: inputs[4],
    };
    let results = pour_injector_loads_result_columns {
        loads: outputs[0],
        shots_per_load: outputs[1],
        shots_in_last: outputs[2],
    };
    // SAFETY: the columns are those of the caller.
    unsafe { pour_injector_loads_n(rows, Some(&columns), Some(&results), statuses, error) }
}

fn batch_need(arguments: &[Argument<'_>]) -> Outcome {
    let input = pour_batch_need_input {
        size: size_of::<pour_batch_need_input>(),
        pieces: by_name::count(by_name::at(arguments, 0)),
        cavities: by_name::count(by_name::at(arguments, 1)),
        shot_mass_g: by_name::number(by_name::at(arguments, 2)),
        shot_density_g_per_ml: by_name::number(by_name::at(arguments, 3)),
        injector_capacity_ml: by_name::number(by_name::at(arguments, 4)),
        injector_residue_ml: by_name::number(by_name::at(arguments, 5)),
        cleanings: by_name::count(by_name::at(arguments, 6)),
        sprue_mass_g: by_name::number(by_name::at(arguments, 7)),
        returned: by_name::number(by_name::at(arguments, 8)),
        pot_film_g: by_name::number(by_name::at(arguments, 9)),
        pot_heel_g: by_name::number(by_name::at(arguments, 10)),
        rejects: by_name::number(by_name::at(arguments, 11)),
        confidence: by_name::number(by_name::at(arguments, 12)),
    };
    let mut out = MaybeUninit::<pour_batch_need_result>::uninit();
    // SAFETY: texts that end, and lists that live.
    by_name::done(|error| unsafe { pour_batch_need(&raw const input, Some(&mut out), Some(error)) })?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out.total_mass_g),
        Value::Number(out.drawn_mass_g),
        Value::Number(out.returned_mass_g),
        Value::Number(out.pieces_mass_g),
        Value::Number(out.sprues_mass_g),
        Value::Number(out.kept_mass_g),
        Value::Number(out.in_cup_mass_g),
        Value::Number(f64::from(out.shots)),
        Value::Number(f64::from(out.loads)),
        Value::Number(f64::from(out.shots_per_load)),
        Value::Number(f64::from(out.shots_in_last)),
    ])
}

fn batch_need_n(
    rows: usize,
    inputs: &[pour_column],
    _: &[i32],
    outputs: &[pour_result_column],
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let columns = pour_batch_need_columns {
        pieces: inputs[0],
        cavities: inputs[1],
        shot_mass_g: inputs[2],
        shot_density_g_per_ml: inputs[3],
        injector_capacity_ml: inputs[4],
        injector_residue_ml: inputs[5],
        cleanings: inputs[6],
        sprue_mass_g: inputs[7],
        returned: inputs[8],
        pot_film_g: inputs[9],
        pot_heel_g: inputs[10],
        rejects: inputs[11],
        confidence: inputs[12],
    };
    let results = pour_batch_need_result_columns {
        total_mass_g: outputs[0],
        drawn_mass_g: outputs[1],
        returned_mass_g: outputs[2],
        pieces_mass_g: outputs[3],
        sprues_mass_g: outputs[4],
        kept_mass_g: outputs[5],
        in_cup_mass_g: outputs[6],
        shots: outputs[7],
        loads: outputs[8],
        shots_per_load: outputs[9],
        shots_in_last: outputs[10],
    };
    // SAFETY: the columns are those of the caller.
    unsafe { pour_batch_need_n(rows, Some(&columns), Some(&results), statuses, error) }
}

fn base_to_mark(arguments: &[Argument<'_>]) -> Outcome {
    let mut out = MaybeUninit::<pour_base_to_mark_result>::uninit();
    by_name::done(|error| pour_base_to_mark(by_name::number(by_name::at(arguments, 0)), by_name::number(by_name::at(arguments, 1)), by_name::number(by_name::at(arguments, 2)), by_name::number(by_name::at(arguments, 3)), by_name::number(by_name::at(arguments, 4)), by_name::number(by_name::at(arguments, 5)), Some(&mut out), Some(error)))?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out.base_volume_ml),
        Value::Number(out.base_mass_g),
        Value::Number(out.mix_mass_g),
        Value::Number(out.surplus_mass_g),
        by_name::absent_count(out.extra_shots),
    ])
}

fn base_to_mark_n(
    rows: usize,
    inputs: &[pour_column],
    _: &[i32],
    outputs: &[pour_result_column],
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let columns = pour_base_to_mark_columns {
        mix_needed_g: inputs[0],
        base_fraction: inputs[1],
        base_density_g_per_ml: inputs[2],
        cup_capacity_ml: inputs[3],
        cup_mark_ml: inputs[4],
        shot_mass_g: inputs[5],
    };
    let results = pour_base_to_mark_result_columns {
        base_volume_ml: outputs[0],
        base_mass_g: outputs[1],
        mix_mass_g: outputs[2],
        surplus_mass_g: outputs[3],
        extra_shots: outputs[4],
    };
    // SAFETY: the columns are those of the caller.
    unsafe { pour_base_to_mark_n(rows, Some(&columns), Some(&results), statuses, error) }
}

fn least_pot(arguments: &[Argument<'_>]) -> Outcome {
    let mut out = MaybeUninit::<pour_least_pot_result>::uninit();
    // SAFETY: texts that end, and lists that live.
    by_name::done(|error| unsafe { pour_least_pot(by_name::list(by_name::at(arguments, 0)).0.cast(), by_name::list(by_name::at(arguments, 0)).1 / 3, by_name::number(by_name::at(arguments, 1)), by_name::number(by_name::at(arguments, 2)), by_name::number(by_name::at(arguments, 3)), Some(&mut out), Some(error)) })?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out.mix_mass_g),
        Value::Number(out.base_mass_g),
    ])
}

fn reject_rate(arguments: &[Argument<'_>]) -> Outcome {
    let mut out = MaybeUninit::<pour_reject_rate_result>::uninit();
    by_name::done(|error| pour_reject_rate(by_name::count(by_name::at(arguments, 0)), by_name::count(by_name::at(arguments, 1)), by_name::number(by_name::at(arguments, 2)), Some(&mut out), Some(error)))?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out.rejects),
        Value::Number(out.rejects_min),
        Value::Number(out.rejects_max),
    ])
}

fn reject_rate_n(
    rows: usize,
    inputs: &[pour_column],
    _: &[i32],
    outputs: &[pour_result_column],
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let columns = pour_reject_rate_columns {
        cast_pieces: inputs[0],
        reject_count: inputs[1],
        confidence: inputs[2],
    };
    let results = pour_reject_rate_result_columns {
        rejects: outputs[0],
        rejects_min: outputs[1],
        rejects_max: outputs[2],
    };
    // SAFETY: the columns are those of the caller.
    unsafe { pour_reject_rate_n(rows, Some(&columns), Some(&results), statuses, error) }
}

fn bench_measure(arguments: &[Argument<'_>]) -> Outcome {
    let input = pour_bench_measure_input {
        size: size_of::<pour_bench_measure_input>(),
        mass_to_measure_g: by_name::number(by_name::at(arguments, 0)),
        tolerance: by_name::number(by_name::at(arguments, 1)),
        balance_readability_g: by_name::number(by_name::at(arguments, 2)),
        balance_capacity_g: by_name::number(by_name::at(arguments, 3)),
        balance_least_load_g: by_name::number(by_name::at(arguments, 4)),
        spoons_ml: by_name::list(by_name::at(arguments, 5)).0.cast(),
        spoons_count: by_name::list(by_name::at(arguments, 5)).1,
        cups: by_name::list(by_name::at(arguments, 6)).0.cast(),
        cups_count: by_name::list(by_name::at(arguments, 6)).1 / 2,
        as_measured_density_g_per_ml: by_name::number(by_name::at(arguments, 7)),
        drop_mass_g: by_name::number(by_name::at(arguments, 8)),
    };
    let mut out = MaybeUninit::<pour_bench_measure_result>::uninit();
    // SAFETY: texts that end, and lists that live.
    by_name::done(|error| unsafe { pour_bench_measure(&raw const input, Some(&mut out), Some(error)) })?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out.mass_g),
        Value::Number(out.deviation),
        by_name::of_place(pourwright::bench::Tool::WORDS, out.tool),
        Value::Number(f64::from(out.acts)),
        Value::Number(f64::from(out.drops)),
        Value::Numbers(out.spoonfuls.iter().map(|count| f64::from(*count)).collect()),
        Value::Number(f64::from(out.cup)),
        Value::Number(f64::from(out.cup_fillings)),
        Value::Number(f64::from(out.cup_mark)),
    ])
}

fn sink_rate(arguments: &[Argument<'_>]) -> Outcome {
    let input = pour_sink_rate_input {
        size: size_of::<pour_sink_rate_input>(),
        piece_density_g_per_ml: by_name::number(by_name::at(arguments, 0)),
        piece_volume_ml: by_name::number(by_name::at(arguments, 1)),
        diameter_mm: by_name::number(by_name::at(arguments, 2)),
        water_temperature_celsius: by_name::number(by_name::at(arguments, 3)),
        length_mm: by_name::number(by_name::at(arguments, 4)),
        shape: by_name::word("shape", by_name::at(arguments, 5)),
        hook_mass_g: by_name::number(by_name::at(arguments, 6)),
        hook_volume_ml: by_name::number(by_name::at(arguments, 7)),
        salinity_practical: by_name::number(by_name::at(arguments, 8)),
        salinity_absolute: by_name::number(by_name::at(arguments, 9)),
        density_uncertainty_g_per_ml: by_name::number(by_name::at(arguments, 10)),
        depth_m: by_name::number(by_name::at(arguments, 11)),
        drop_depth_m: by_name::number(by_name::at(arguments, 12)),
        drop_time_s: by_name::number(by_name::at(arguments, 13)),
        drop_density_g_per_ml: by_name::number(by_name::at(arguments, 14)),
    };
    let mut out = MaybeUninit::<pour_sink_rate_result>::uninit();
    // SAFETY: texts that end, and lists that live.
    by_name::done(|error| unsafe { pour_sink_rate(&raw const input, Some(&mut out), Some(error)) })?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out.sink_rate_cm_per_s),
        Value::Number(out.sink_rate_min_cm_per_s),
        Value::Number(out.sink_rate_max_cm_per_s),
        by_name::of_place(pourwright::process::sink::Motion::WORDS, out.motion),
        Value::Number(out.reynolds),
        Value::Number(out.drag_coefficient),
        by_name::absent(out.sink_time_s),
    ])
}

fn sink_rate_n(
    rows: usize,
    inputs: &[pour_column],
    words: &[i32],
    outputs: &[pour_result_column],
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let columns = pour_sink_rate_columns {
        piece_density_g_per_ml: inputs[0],
        piece_volume_ml: inputs[1],
        diameter_mm: inputs[2],
        water_temperature_celsius: inputs[3],
        length_mm: inputs[4],
        shape: words[0],
        hook_mass_g: inputs[5],
        hook_volume_ml: inputs[6],
        salinity_practical: inputs[7],
        salinity_absolute: inputs[8],
        density_uncertainty_g_per_ml: inputs[9],
        depth_m: inputs[10],
        drop_depth_m: inputs[11],
        drop_time_s: inputs[12],
        drop_density_g_per_ml: inputs[13],
    };
    let results = pour_sink_rate_result_columns {
        sink_rate_cm_per_s: outputs[0],
        sink_rate_min_cm_per_s: outputs[1],
        sink_rate_max_cm_per_s: outputs[2],
        motion: outputs[3],
        reynolds: outputs[4],
        drag_coefficient: outputs[5],
        sink_time_s: outputs[6],
    };
    // SAFETY: the columns are those of the caller.
    unsafe { pour_sink_rate_n(rows, Some(&columns), Some(&results), statuses, error) }
}

fn density_for_sink_rate(arguments: &[Argument<'_>]) -> Outcome {
    let input = pour_density_for_sink_rate_input {
        size: size_of::<pour_density_for_sink_rate_input>(),
        sink_rate_cm_per_s: by_name::number(by_name::at(arguments, 0)),
        piece_volume_ml: by_name::number(by_name::at(arguments, 1)),
        diameter_mm: by_name::number(by_name::at(arguments, 2)),
        water_temperature_celsius: by_name::number(by_name::at(arguments, 3)),
        length_mm: by_name::number(by_name::at(arguments, 4)),
        shape: by_name::word("shape", by_name::at(arguments, 5)),
        hook_mass_g: by_name::number(by_name::at(arguments, 6)),
        hook_volume_ml: by_name::number(by_name::at(arguments, 7)),
        salinity_practical: by_name::number(by_name::at(arguments, 8)),
        salinity_absolute: by_name::number(by_name::at(arguments, 9)),
        drop_depth_m: by_name::number(by_name::at(arguments, 10)),
        drop_time_s: by_name::number(by_name::at(arguments, 11)),
        drop_density_g_per_ml: by_name::number(by_name::at(arguments, 12)),
    };
    let mut out = MaybeUninit::uninit();
    // SAFETY: texts that end, and lists that live.
    by_name::done(|error| unsafe { pour_density_for_sink_rate(&raw const input, Some(&mut out), Some(error)) })?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out),
    ])
}

fn density_for_sink_rate_n(
    rows: usize,
    inputs: &[pour_column],
    words: &[i32],
    outputs: &[pour_result_column],
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let columns = pour_density_for_sink_rate_columns {
        sink_rate_cm_per_s: inputs[0],
        piece_volume_ml: inputs[1],
        diameter_mm: inputs[2],
        water_temperature_celsius: inputs[3],
        length_mm: inputs[4],
        shape: words[0],
        hook_mass_g: inputs[5],
        hook_volume_ml: inputs[6],
        salinity_practical: inputs[7],
        salinity_absolute: inputs[8],
        drop_depth_m: inputs[9],
        drop_time_s: inputs[10],
        drop_density_g_per_ml: inputs[11],
    };
    let results = pour_density_for_sink_rate_result_columns {
        piece_density_g_per_ml: outputs[0],
    };
    // SAFETY: the columns are those of the caller.
    unsafe { pour_density_for_sink_rate_n(rows, Some(&columns), Some(&results), statuses, error) }
}

fn hardness(arguments: &[Argument<'_>]) -> Outcome {
    let mut out = MaybeUninit::uninit();
    // SAFETY: texts that end, and lists that live.
    by_name::done(|error| unsafe { pour_hardness(by_name::list(by_name::at(arguments, 0)).0.cast(), by_name::list(by_name::at(arguments, 0)).1 / 2, by_name::word("scale", by_name::at(arguments, 1)), by_name::number(by_name::at(arguments, 2)), Some(&mut out), Some(error)) })?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out),
    ])
}

fn softener_ratio(arguments: &[Argument<'_>]) -> Outcome {
    let mut out = MaybeUninit::uninit();
    // SAFETY: texts that end, and lists that live.
    by_name::done(|error| unsafe { pour_softener_ratio(by_name::list(by_name::at(arguments, 0)).0.cast(), by_name::list(by_name::at(arguments, 0)).1 / 2, by_name::word("scale", by_name::at(arguments, 1)), by_name::number(by_name::at(arguments, 2)), Some(&mut out), Some(error)) })?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out),
    ])
}

fn salted_softener(arguments: &[Argument<'_>]) -> Outcome {
    let mut out = MaybeUninit::uninit();
    // SAFETY: texts that end, and lists that live.
    by_name::done(|error| unsafe { pour_salted_softener(by_name::list(by_name::at(arguments, 0)).0.cast(), by_name::list(by_name::at(arguments, 0)).1 / 2, by_name::number(by_name::at(arguments, 1)), Some(&mut out), Some(error)) })?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out),
    ])
}

fn water_density(arguments: &[Argument<'_>]) -> Outcome {
    let mut out = MaybeUninit::uninit();
    by_name::done(|error| pour_water_density(by_name::number(by_name::at(arguments, 0)), Some(&mut out), Some(error)))?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out),
    ])
}

fn water_density_n(
    rows: usize,
    inputs: &[pour_column],
    _: &[i32],
    outputs: &[pour_result_column],
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let columns = pour_water_density_columns {
        water_temperature_celsius: inputs[0],
    };
    let results = pour_water_density_result_columns {
        density_g_per_ml: outputs[0],
    };
    // SAFETY: the columns are those of the caller.
    unsafe { pour_water_density_n(rows, Some(&columns), Some(&results), statuses, error) }
}

fn cavity_of_water(arguments: &[Argument<'_>]) -> Outcome {
    let mut out = MaybeUninit::uninit();
    by_name::done(|error| pour_cavity_of_water(by_name::number(by_name::at(arguments, 0)), by_name::number(by_name::at(arguments, 1)), by_name::number(by_name::at(arguments, 2)), Some(&mut out), Some(error)))?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out),
    ])
}

fn cavity_of_water_n(
    rows: usize,
    inputs: &[pour_column],
    _: &[i32],
    outputs: &[pour_result_column],
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let columns = pour_cavity_of_water_columns {
        water_mass_g: inputs[0],
        water_temperature_celsius: inputs[1],
        air_pressure_kpa: inputs[2],
    };
    let results = pour_cavity_of_water_result_columns {
        cavity_volume_ml: outputs[0],
    };
    // SAFETY: the columns are those of the caller.
    unsafe { pour_cavity_of_water_n(rows, Some(&columns), Some(&results), statuses, error) }
}

fn standard_pressure(arguments: &[Argument<'_>]) -> Outcome {
    let mut out = MaybeUninit::uninit();
    by_name::done(|error| pour_standard_pressure(by_name::number(by_name::at(arguments, 0)), Some(&mut out), Some(error)))?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out),
    ])
}

fn standard_pressure_n(
    rows: usize,
    inputs: &[pour_column],
    _: &[i32],
    outputs: &[pour_result_column],
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let columns = pour_standard_pressure_columns {
        altitude_m: inputs[0],
    };
    let results = pour_standard_pressure_result_columns {
        station_pressure_kpa: outputs[0],
    };
    // SAFETY: the columns are those of the caller.
    unsafe { pour_standard_pressure_n(rows, Some(&columns), Some(&results), statuses, error) }
}

fn station_pressure(arguments: &[Argument<'_>]) -> Outcome {
    let mut out = MaybeUninit::uninit();
    by_name::done(|error| pour_station_pressure(by_name::number(by_name::at(arguments, 0)), by_name::number(by_name::at(arguments, 1)), Some(&mut out), Some(error)))?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out),
    ])
}

fn station_pressure_n(
    rows: usize,
    inputs: &[pour_column],
    _: &[i32],
    outputs: &[pour_result_column],
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let columns = pour_station_pressure_columns {
        reported_pressure_kpa: inputs[0],
        altitude_m: inputs[1],
    };
    let results = pour_station_pressure_result_columns {
        station_pressure_kpa: outputs[0],
    };
    // SAFETY: the columns are those of the caller.
    unsafe { pour_station_pressure_n(rows, Some(&columns), Some(&results), statuses, error) }
}

fn swollen_volume(arguments: &[Argument<'_>]) -> Outcome {
    let input = pour_swollen_volume_input {
        size: size_of::<pour_swollen_volume_input>(),
        liquid_volume_ml: by_name::number(by_name::at(arguments, 0)),
        entrained_air: by_name::number(by_name::at(arguments, 1)),
        station_pressure_kpa: by_name::number(by_name::at(arguments, 2)),
        gauge_vacuum_kpa: by_name::number(by_name::at(arguments, 3)),
        absolute_pressure_kpa: by_name::number(by_name::at(arguments, 4)),
        dial_tolerance_kpa: by_name::number(by_name::at(arguments, 5)),
        vapor_pressure_kpa: by_name::number(by_name::at(arguments, 6)),
        damp_at_celsius: by_name::number(by_name::at(arguments, 7)),
    };
    let mut out = MaybeUninit::<pour_swollen_volume_result>::uninit();
    // SAFETY: texts that end, and lists that live.
    by_name::done(|error| unsafe { pour_swollen_volume(&raw const input, Some(&mut out), Some(error)) })?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out.swollen_volume_ml),
        Value::Number(out.standing_volume_ml),
        Value::Number(out.absolute_pressure_kpa),
    ])
}

fn swollen_volume_n(
    rows: usize,
    inputs: &[pour_column],
    _: &[i32],
    outputs: &[pour_result_column],
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let columns = pour_swollen_volume_columns {
        liquid_volume_ml: inputs[0],
        entrained_air: inputs[1],
        station_pressure_kpa: inputs[2],
        gauge_vacuum_kpa: inputs[3],
        absolute_pressure_kpa: inputs[4],
        dial_tolerance_kpa: inputs[5],
        vapor_pressure_kpa: inputs[6],
        damp_at_celsius: inputs[7],
    };
    let results = pour_swollen_volume_result_columns {
        swollen_volume_ml: outputs[0],
        standing_volume_ml: outputs[1],
        absolute_pressure_kpa: outputs[2],
    };
    // SAFETY: the columns are those of the caller.
    unsafe { pour_swollen_volume_n(rows, Some(&columns), Some(&results), statuses, error) }
}

fn entrained_air(arguments: &[Argument<'_>]) -> Outcome {
    let input = pour_entrained_air_input {
        size: size_of::<pour_entrained_air_input>(),
        rise: by_name::number(by_name::at(arguments, 0)),
        station_pressure_kpa: by_name::number(by_name::at(arguments, 1)),
        gauge_vacuum_kpa: by_name::number(by_name::at(arguments, 2)),
        absolute_pressure_kpa: by_name::number(by_name::at(arguments, 3)),
        dial_tolerance_kpa: by_name::number(by_name::at(arguments, 4)),
        vapor_pressure_kpa: by_name::number(by_name::at(arguments, 5)),
        damp_at_celsius: by_name::number(by_name::at(arguments, 6)),
    };
    let mut out = MaybeUninit::uninit();
    // SAFETY: texts that end, and lists that live.
    by_name::done(|error| unsafe { pour_entrained_air(&raw const input, Some(&mut out), Some(error)) })?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out),
    ])
}

fn entrained_air_n(
    rows: usize,
    inputs: &[pour_column],
    _: &[i32],
    outputs: &[pour_result_column],
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let columns = pour_entrained_air_columns {
        rise: inputs[0],
        station_pressure_kpa: inputs[1],
        gauge_vacuum_kpa: inputs[2],
        absolute_pressure_kpa: inputs[3],
        dial_tolerance_kpa: inputs[4],
        vapor_pressure_kpa: inputs[5],
        damp_at_celsius: inputs[6],
    };
    let results = pour_entrained_air_result_columns {
        entrained_air: outputs[0],
    };
    // SAFETY: the columns are those of the caller.
    unsafe { pour_entrained_air_n(rows, Some(&columns), Some(&results), statuses, error) }
}

fn degas_vessel(arguments: &[Argument<'_>]) -> Outcome {
    let input = pour_degas_vessel_input {
        size: size_of::<pour_degas_vessel_input>(),
        liquid_volume_ml: by_name::number(by_name::at(arguments, 0)),
        entrained_air: by_name::number(by_name::at(arguments, 1)),
        station_pressure_kpa: by_name::number(by_name::at(arguments, 2)),
        gauge_vacuum_kpa: by_name::number(by_name::at(arguments, 3)),
        absolute_pressure_kpa: by_name::number(by_name::at(arguments, 4)),
        dial_tolerance_kpa: by_name::number(by_name::at(arguments, 5)),
        vapor_pressure_kpa: by_name::number(by_name::at(arguments, 6)),
        damp_at_celsius: by_name::number(by_name::at(arguments, 7)),
        vessel_spare: by_name::number(by_name::at(arguments, 8)),
        vessel_brim_ml: by_name::number(by_name::at(arguments, 9)),
        vessel_mark_ml: by_name::number(by_name::at(arguments, 10)),
    };
    let mut out = MaybeUninit::<pour_degas_vessel_result>::uninit();
    // SAFETY: texts that end, and lists that live.
    by_name::done(|error| unsafe { pour_degas_vessel(&raw const input, Some(&mut out), Some(error)) })?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out.vessel_volume_ml),
        by_name::absent(out.fill_mark_ml),
        by_name::absent_count(out.fills),
        by_name::absent(out.fill_level_ml),
        by_name::absent(out.fill_swollen_ml),
    ])
}

fn degas_vessel_n(
    rows: usize,
    inputs: &[pour_column],
    _: &[i32],
    outputs: &[pour_result_column],
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let columns = pour_degas_vessel_columns {
        liquid_volume_ml: inputs[0],
        entrained_air: inputs[1],
        station_pressure_kpa: inputs[2],
        gauge_vacuum_kpa: inputs[3],
        absolute_pressure_kpa: inputs[4],
        dial_tolerance_kpa: inputs[5],
        vapor_pressure_kpa: inputs[6],
        damp_at_celsius: inputs[7],
        vessel_spare: inputs[8],
        vessel_brim_ml: inputs[9],
        vessel_mark_ml: inputs[10],
    };
    let results = pour_degas_vessel_result_columns {
        vessel_volume_ml: outputs[0],
        fill_mark_ml: outputs[1],
        fills: outputs[2],
        fill_level_ml: outputs[3],
        fill_swollen_ml: outputs[4],
    };
    // SAFETY: the columns are those of the caller.
    unsafe { pour_degas_vessel_n(rows, Some(&columns), Some(&results), statuses, error) }
}

fn flake_count(arguments: &[Argument<'_>]) -> Outcome {
    let text_cut = by_name::text(by_name::at(arguments, 0));
    let mut out = MaybeUninit::<pour_flake_count_result>::uninit();
    // SAFETY: texts that end, and lists that live.
    by_name::done(|error| unsafe { pour_flake_count(by_name::start(&text_cut), by_name::number(by_name::at(arguments, 1)), by_name::number(by_name::at(arguments, 2)), by_name::number(by_name::at(arguments, 3)), Some(&mut out), Some(error)) })?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out.particles),
        Value::Number(out.area_cm2),
    ])
}

fn flake_swap(arguments: &[Argument<'_>]) -> Outcome {
    let text_cut = by_name::text(by_name::at(arguments, 0));
    let text_other_cut = by_name::text(by_name::at(arguments, 4));
    let input = pour_flake_swap_input {
        size: size_of::<pour_flake_swap_input>(),
        cut: by_name::start(&text_cut),
        thickness_um: by_name::number(by_name::at(arguments, 1)),
        film_density_g_per_ml: by_name::number(by_name::at(arguments, 2)),
        flake_dose_g: by_name::number(by_name::at(arguments, 3)),
        other_cut: by_name::start(&text_other_cut),
        other_thickness_um: by_name::number(by_name::at(arguments, 5)),
        other_film_density_g_per_ml: by_name::number(by_name::at(arguments, 6)),
        other_as_scooped_g_per_ml: by_name::number(by_name::at(arguments, 7)),
        alike: by_name::word("alike", by_name::at(arguments, 8)),
    };
    let mut out = MaybeUninit::<pour_flake_swap_result>::uninit();
    // SAFETY: texts that end, and lists that live.
    by_name::done(|error| unsafe { pour_flake_swap(&raw const input, Some(&mut out), Some(error)) })?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out.mass_g),
        by_name::absent(out.scoop_ml),
        Value::Number(out.count_ratio),
        Value::Number(out.area_ratio),
    ])
}

fn color_difference(arguments: &[Argument<'_>]) -> Outcome {
    let mut out = MaybeUninit::uninit();
    by_name::done(|error| pour_color_difference(by_name::number(by_name::at(arguments, 0)), by_name::number(by_name::at(arguments, 1)), by_name::number(by_name::at(arguments, 2)), by_name::number(by_name::at(arguments, 3)), by_name::number(by_name::at(arguments, 4)), by_name::number(by_name::at(arguments, 5)), Some(&mut out), Some(error)))?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out),
    ])
}

fn color_difference_n(
    rows: usize,
    inputs: &[pour_column],
    _: &[i32],
    outputs: &[pour_result_column],
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let columns = pour_color_difference_columns {
        lightness: inputs[0],
        a: inputs[1],
        b: inputs[2],
        other_lightness: inputs[3],
        other_a: inputs[4],
        other_b: inputs[5],
    };
    let results = pour_color_difference_result_columns {
        difference: outputs[0],
    };
    // SAFETY: the columns are those of the caller.
    unsafe { pour_color_difference_n(rows, Some(&columns), Some(&results), statuses, error) }
}

fn equivalent_time(arguments: &[Argument<'_>]) -> Outcome {
    let mut out = MaybeUninit::uninit();
    // SAFETY: texts that end, and lists that live.
    by_name::done(|error| unsafe { pour_equivalent_time(by_name::list(by_name::at(arguments, 0)).0.cast(), by_name::list(by_name::at(arguments, 0)).1 / 2, by_name::number(by_name::at(arguments, 1)), by_name::number(by_name::at(arguments, 2)), Some(&mut out), Some(error)) })?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out),
    ])
}

fn budget_left(arguments: &[Argument<'_>]) -> Outcome {
    let mut out = MaybeUninit::<pour_budget_left_result>::uninit();
    by_name::done(|error| pour_budget_left(by_name::number(by_name::at(arguments, 0)), by_name::number(by_name::at(arguments, 1)), by_name::number(by_name::at(arguments, 2)), by_name::number(by_name::at(arguments, 3)), by_name::number(by_name::at(arguments, 4)), by_name::number(by_name::at(arguments, 5)), Some(&mut out), Some(error)))?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out.budget_s),
        Value::Number(out.left_s),
        Value::Number(out.overspent_s),
    ])
}

fn budget_left_n(
    rows: usize,
    inputs: &[pour_column],
    _: &[i32],
    outputs: &[pour_result_column],
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let columns = pour_budget_left_columns {
        heat_budget_s: inputs[0],
        equivalent_time_s: inputs[1],
        budget_with: inputs[2],
        stabilizer_dose: inputs[3],
        extra_time_s: inputs[4],
        extra_most: inputs[5],
    };
    let results = pour_budget_left_result_columns {
        budget_s: outputs[0],
        left_s: outputs[1],
        overspent_s: outputs[2],
    };
    // SAFETY: the columns are those of the caller.
    unsafe { pour_budget_left_n(rows, Some(&columns), Some(&results), statuses, error) }
}

fn heat_time(arguments: &[Argument<'_>]) -> Outcome {
    let input = pour_heat_time_input {
        size: size_of::<pour_heat_time_input>(),
        pot_mass_g: by_name::number(by_name::at(arguments, 0)),
        specific_heat_j_per_g_k: by_name::number(by_name::at(arguments, 1)),
        heated_from_celsius: by_name::number(by_name::at(arguments, 2)),
        heated_to_celsius: by_name::number(by_name::at(arguments, 3)),
        timings: by_name::list(by_name::at(arguments, 4)).0.cast(),
        timings_count: by_name::list(by_name::at(arguments, 4)).1 / 4,
        oven_power_w: by_name::number(by_name::at(arguments, 5)),
        setting: by_name::number(by_name::at(arguments, 6)),
        specific_heat_rise_per_kelvin: by_name::number(by_name::at(arguments, 7)),
        timed_specific_heat_j_per_g_k: by_name::number(by_name::at(arguments, 8)),
        vessel_mass_g: by_name::number(by_name::at(arguments, 9)),
        vessel_specific_heat_j_per_g_k: by_name::number(by_name::at(arguments, 10)),
    };
    let mut out = MaybeUninit::<pour_heat_time_result>::uninit();
    // SAFETY: texts that end, and lists that live.
    by_name::done(|error| unsafe { pour_heat_time(&raw const input, Some(&mut out), Some(error)) })?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out.heat_time_s),
        Value::Number(out.heat_time_uncertainty_s),
        Value::Number(out.power_w),
        by_name::absent(out.beyond),
    ])
}

fn next_burst(arguments: &[Argument<'_>]) -> Outcome {
    let input = pour_next_burst_input {
        size: size_of::<pour_next_burst_input>(),
        pot_mass_g: by_name::number(by_name::at(arguments, 0)),
        specific_heat_j_per_g_k: by_name::number(by_name::at(arguments, 1)),
        reading_celsius: by_name::number(by_name::at(arguments, 2)),
        window_bottom_celsius: by_name::number(by_name::at(arguments, 3)),
        window_top_celsius: by_name::number(by_name::at(arguments, 4)),
        timings: by_name::list(by_name::at(arguments, 5)).0.cast(),
        timings_count: by_name::list(by_name::at(arguments, 5)).1 / 4,
        oven_power_w: by_name::number(by_name::at(arguments, 6)),
        setting: by_name::number(by_name::at(arguments, 7)),
        specific_heat_rise_per_kelvin: by_name::number(by_name::at(arguments, 8)),
        timed_specific_heat_j_per_g_k: by_name::number(by_name::at(arguments, 9)),
        vessel_mass_g: by_name::number(by_name::at(arguments, 10)),
        vessel_specific_heat_j_per_g_k: by_name::number(by_name::at(arguments, 11)),
        aim_celsius: by_name::number(by_name::at(arguments, 12)),
        thermometer_kelvin: by_name::number(by_name::at(arguments, 13)),
        burst_step_s: by_name::number(by_name::at(arguments, 14)),
        longest_burst_s: by_name::number(by_name::at(arguments, 15)),
        oven_turn_s: by_name::number(by_name::at(arguments, 16)),
        measures: by_name::word("measures", by_name::at(arguments, 17)),
    };
    let mut out = MaybeUninit::<pour_next_burst_result>::uninit();
    // SAFETY: texts that end, and lists that live.
    by_name::done(|error| unsafe { pour_next_burst(&raw const input, Some(&mut out), Some(error)) })?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        by_name::absent(out.burst_s),
        by_name::absent(out.expected_celsius),
        Value::Number(out.shoot_from_celsius),
        Value::Number(out.shoot_to_celsius),
        Value::Number(f64::from(out.bursts)),
        Value::Number(out.oven_time_s),
    ])
}

fn stays_hot(arguments: &[Argument<'_>]) -> Outcome {
    let input = pour_stays_hot_input {
        size: size_of::<pour_stays_hot_input>(),
        pot_mass_g: by_name::number(by_name::at(arguments, 0)),
        hot_from_celsius: by_name::number(by_name::at(arguments, 1)),
        hot_to_celsius: by_name::number(by_name::at(arguments, 2)),
        watched_mass_g: by_name::number(by_name::at(arguments, 3)),
        watched_from_celsius: by_name::number(by_name::at(arguments, 4)),
        watched_to_celsius: by_name::number(by_name::at(arguments, 5)),
        watched_time_s: by_name::number(by_name::at(arguments, 6)),
        room_celsius: by_name::number(by_name::at(arguments, 7)),
        stood_s: by_name::number(by_name::at(arguments, 8)),
    };
    let mut out = MaybeUninit::<pour_stays_hot_result>::uninit();
    // SAFETY: texts that end, and lists that live.
    by_name::done(|error| unsafe { pour_stays_hot(&raw const input, Some(&mut out), Some(error)) })?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out.time_constant_s),
        Value::Number(out.hot_for_s),
        Value::Number(out.half_full_s),
        by_name::absent(out.after_celsius),
    ])
}

fn stays_hot_n(
    rows: usize,
    inputs: &[pour_column],
    _: &[i32],
    outputs: &[pour_result_column],
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let columns = pour_stays_hot_columns {
        pot_mass_g: inputs[0],
        hot_from_celsius: inputs[1],
        hot_to_celsius: inputs[2],
        watched_mass_g: inputs[3],
        watched_from_celsius: inputs[4],
        watched_to_celsius: inputs[5],
        watched_time_s: inputs[6],
        room_celsius: inputs[7],
        stood_s: inputs[8],
    };
    let results = pour_stays_hot_result_columns {
        time_constant_s: outputs[0],
        hot_for_s: outputs[1],
        half_full_s: outputs[2],
        after_celsius: outputs[3],
    };
    // SAFETY: the columns are those of the caller.
    unsafe { pour_stays_hot_n(rows, Some(&columns), Some(&results), statuses, error) }
}

fn pot_heats(arguments: &[Argument<'_>]) -> Outcome {
    let input = pour_pot_heats_input {
        size: size_of::<pour_pot_heats_input>(),
        pot_mass_g: by_name::number(by_name::at(arguments, 0)),
        clock_runs: by_name::list(by_name::at(arguments, 1)).0.cast(),
        clock_runs_count: by_name::list(by_name::at(arguments, 1)).1 / 5,
        hot_for_s: by_name::number(by_name::at(arguments, 2)),
        clock_from_celsius: by_name::number(by_name::at(arguments, 3)),
        clock_to_celsius: by_name::number(by_name::at(arguments, 4)),
        watched_mass_g: by_name::number(by_name::at(arguments, 5)),
        watched_from_celsius: by_name::number(by_name::at(arguments, 6)),
        watched_to_celsius: by_name::number(by_name::at(arguments, 7)),
        watched_time_s: by_name::number(by_name::at(arguments, 8)),
        room_celsius: by_name::number(by_name::at(arguments, 9)),
        oven_time_s: by_name::number(by_name::at(arguments, 10)),
    };
    let mut out = MaybeUninit::<pour_pot_heats_result>::uninit();
    // SAFETY: texts that end, and lists that live.
    by_name::done(|error| unsafe { pour_pot_heats(&raw const input, Some(&mut out), Some(error)) })?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(f64::from(out.reheats)),
        Value::Number(f64::from(out.first_shots)),
        Value::Number(out.shooting_time_s),
        by_name::absent(out.total_time_s),
    ])
}

fn setting_time(arguments: &[Argument<'_>]) -> Outcome {
    let input = pour_setting_time_input {
        size: size_of::<pour_setting_time_input>(),
        section_shape: by_name::word("section_shape", by_name::at(arguments, 0)),
        section_thickness_mm: by_name::number(by_name::at(arguments, 1)),
        shot_at_celsius: by_name::number(by_name::at(arguments, 2)),
        mold_at_celsius: by_name::number(by_name::at(arguments, 3)),
        take_out_celsius: by_name::number(by_name::at(arguments, 4)),
        piece_point: by_name::word("piece_point", by_name::at(arguments, 5)),
        diffusivity_m2_per_s: by_name::number(by_name::at(arguments, 6)),
        shot_mass_g: by_name::number(by_name::at(arguments, 7)),
        shot_specific_heat_j_per_g_k: by_name::number(by_name::at(arguments, 8)),
        mold_mass_g: by_name::number(by_name::at(arguments, 9)),
        mold_specific_heat_j_per_g_k: by_name::number(by_name::at(arguments, 10)),
        hands_s: by_name::number(by_name::at(arguments, 11)),
        molds: by_name::count(by_name::at(arguments, 12)),
    };
    let mut out = MaybeUninit::<pour_setting_time_result>::uninit();
    // SAFETY: texts that end, and lists that live.
    by_name::done(|error| unsafe { pour_setting_time(&raw const input, Some(&mut out), Some(error)) })?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out.setting_time_s),
        Value::Number(out.setting_time_min_s),
        Value::Number(out.setting_time_max_s),
        by_name::absent(out.warms_kelvin),
        by_name::absent_count(out.in_a_row),
        by_name::absent(out.shot_every_s),
    ])
}

fn setting_time_n(
    rows: usize,
    inputs: &[pour_column],
    words: &[i32],
    outputs: &[pour_result_column],
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let columns = pour_setting_time_columns {
        section_shape: words[0],
        section_thickness_mm: inputs[0],
        shot_at_celsius: inputs[1],
        mold_at_celsius: inputs[2],
        take_out_celsius: inputs[3],
        piece_point: words[1],
        diffusivity_m2_per_s: inputs[4],
        shot_mass_g: inputs[5],
        shot_specific_heat_j_per_g_k: inputs[6],
        mold_mass_g: inputs[7],
        mold_specific_heat_j_per_g_k: inputs[8],
        hands_s: inputs[9],
        molds: inputs[10],
    };
    let results = pour_setting_time_result_columns {
        setting_time_s: outputs[0],
        setting_time_min_s: outputs[1],
        setting_time_max_s: outputs[2],
        warms_kelvin: outputs[3],
        in_a_row: outputs[4],
        shot_every_s: outputs[5],
    };
    // SAFETY: the columns are those of the caller.
    unsafe { pour_setting_time_n(rows, Some(&columns), Some(&results), statuses, error) }
}

fn stir_every(arguments: &[Argument<'_>]) -> Outcome {
    let input = pour_stir_every_input {
        size: size_of::<pour_stir_every_input>(),
        grain_mm: by_name::number(by_name::at(arguments, 0)),
        grain_density_g_per_ml: by_name::number(by_name::at(arguments, 1)),
        melt_density_g_per_ml: by_name::number(by_name::at(arguments, 2)),
        melt_depth_mm: by_name::number(by_name::at(arguments, 3)),
        melt_viscosity_min_mpa_s: by_name::number(by_name::at(arguments, 4)),
        melt_viscosity_max_mpa_s: by_name::number(by_name::at(arguments, 5)),
        solids_share: by_name::number(by_name::at(arguments, 6)),
        unstirred: by_name::number(by_name::at(arguments, 7)),
    };
    let mut out = MaybeUninit::<pour_stir_every_result>::uninit();
    // SAFETY: texts that end, and lists that live.
    by_name::done(|error| unsafe { pour_stir_every(&raw const input, Some(&mut out), Some(error)) })?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out.stir_every_s),
        Value::Number(out.stir_every_max_s),
        Value::Number(out.settling_min_cm_per_s),
        Value::Number(out.settling_max_cm_per_s),
    ])
}

fn stir_every_n(
    rows: usize,
    inputs: &[pour_column],
    _: &[i32],
    outputs: &[pour_result_column],
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let columns = pour_stir_every_columns {
        grain_mm: inputs[0],
        grain_density_g_per_ml: inputs[1],
        melt_density_g_per_ml: inputs[2],
        melt_depth_mm: inputs[3],
        melt_viscosity_min_mpa_s: inputs[4],
        melt_viscosity_max_mpa_s: inputs[5],
        solids_share: inputs[6],
        unstirred: inputs[7],
    };
    let results = pour_stir_every_result_columns {
        stir_every_s: outputs[0],
        stir_every_max_s: outputs[1],
        settling_min_cm_per_s: outputs[2],
        settling_max_cm_per_s: outputs[3],
    };
    // SAFETY: the columns are those of the caller.
    unsafe { pour_stir_every_n(rows, Some(&columns), Some(&results), statuses, error) }
}

fn viscosity_of_ball(arguments: &[Argument<'_>]) -> Outcome {
    let mut out = MaybeUninit::uninit();
    by_name::done(|error| pour_viscosity_of_ball(by_name::number(by_name::at(arguments, 0)), by_name::number(by_name::at(arguments, 1)), by_name::number(by_name::at(arguments, 2)), by_name::number(by_name::at(arguments, 3)), by_name::number(by_name::at(arguments, 4)), Some(&mut out), Some(error)))?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out),
    ])
}

fn viscosity_of_ball_n(
    rows: usize,
    inputs: &[pour_column],
    _: &[i32],
    outputs: &[pour_result_column],
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let columns = pour_viscosity_of_ball_columns {
        ball_diameter_mm: inputs[0],
        ball_density_g_per_ml: inputs[1],
        melt_density_g_per_ml: inputs[2],
        ball_depth_mm: inputs[3],
        ball_time_s: inputs[4],
    };
    let results = pour_viscosity_of_ball_result_columns {
        melt_viscosity_mpa_s: outputs[0],
    };
    // SAFETY: the columns are those of the caller.
    unsafe { pour_viscosity_of_ball_n(rows, Some(&columns), Some(&results), statuses, error) }
}

fn cavity_of_weights(arguments: &[Argument<'_>]) -> Outcome {
    let input = pour_cavity_of_weights_input {
        size: size_of::<pour_cavity_of_weights_input>(),
        weights_g: by_name::list(by_name::at(arguments, 0)).0.cast(),
        weights_count: by_name::list(by_name::at(arguments, 0)).1,
        balance_readability_g: by_name::number(by_name::at(arguments, 1)),
        cold_density_g_per_ml: by_name::number(by_name::at(arguments, 2)),
        hot_density_g_per_ml: by_name::number(by_name::at(arguments, 3)),
        voids: by_name::number(by_name::at(arguments, 4)),
        feed: by_name::number(by_name::at(arguments, 5)),
        feed_uncertainty: by_name::number(by_name::at(arguments, 6)),
    };
    let mut out = MaybeUninit::<pour_cavity_of_weights_result>::uninit();
    // SAFETY: texts that end, and lists that live.
    by_name::done(|error| unsafe { pour_cavity_of_weights(&raw const input, Some(&mut out), Some(error)) })?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out.cavity_volume_ml),
        Value::Number(out.cavity_volume_uncertainty_ml),
        Value::Number(out.mean_g),
        Value::Number(out.deviation_g),
    ])
}

fn feed_of_weights(arguments: &[Argument<'_>]) -> Outcome {
    let input = pour_feed_of_weights_input {
        size: size_of::<pour_feed_of_weights_input>(),
        weights_g: by_name::list(by_name::at(arguments, 0)).0.cast(),
        weights_count: by_name::list(by_name::at(arguments, 0)).1,
        balance_readability_g: by_name::number(by_name::at(arguments, 1)),
        cold_density_g_per_ml: by_name::number(by_name::at(arguments, 2)),
        cavity_volume_ml: by_name::number(by_name::at(arguments, 3)),
        hot_density_g_per_ml: by_name::number(by_name::at(arguments, 4)),
        voids: by_name::number(by_name::at(arguments, 5)),
        volume_uncertainty_ml: by_name::number(by_name::at(arguments, 6)),
    };
    let mut out = MaybeUninit::<pour_feed_of_weights_result>::uninit();
    // SAFETY: texts that end, and lists that live.
    by_name::done(|error| unsafe { pour_feed_of_weights(&raw const input, Some(&mut out), Some(error)) })?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out.feed),
        Value::Number(out.feed_uncertainty),
        Value::Number(out.mean_g),
        Value::Number(out.deviation_g),
    ])
}

fn drop_of_weighings(arguments: &[Argument<'_>]) -> Outcome {
    let mut out = MaybeUninit::<pour_drop_of_weighings_result>::uninit();
    // SAFETY: texts that end, and lists that live.
    by_name::done(|error| unsafe { pour_drop_of_weighings(by_name::list(by_name::at(arguments, 0)).0.cast(), by_name::list(by_name::at(arguments, 0)).1 / 2, by_name::number(by_name::at(arguments, 1)), Some(&mut out), Some(error)) })?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out.drop_mass_g),
        Value::Number(out.drop_mass_uncertainty_g),
        Value::Number(out.scatter_g),
    ])
}

fn as_scooped_of_weighings(arguments: &[Argument<'_>]) -> Outcome {
    let mut out = MaybeUninit::<pour_as_scooped_of_weighings_result>::uninit();
    // SAFETY: texts that end, and lists that live.
    by_name::done(|error| unsafe { pour_as_scooped_of_weighings(by_name::list(by_name::at(arguments, 0)).0.cast(), by_name::list(by_name::at(arguments, 0)).1 / 2, by_name::number(by_name::at(arguments, 1)), by_name::number(by_name::at(arguments, 2)), by_name::number(by_name::at(arguments, 3)), Some(&mut out), Some(error)) })?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out.as_scooped_g_per_ml),
        Value::Number(out.as_scooped_uncertainty_g_per_ml),
        Value::Number(out.spoonful_g),
    ])
}

fn residue_of_weighings(arguments: &[Argument<'_>]) -> Outcome {
    let mut out = MaybeUninit::<pour_residue_of_weighings_result>::uninit();
    // SAFETY: texts that end, and lists that live.
    by_name::done(|error| unsafe { pour_residue_of_weighings(by_name::list(by_name::at(arguments, 0)).0.cast(), by_name::list(by_name::at(arguments, 0)).1 / 2, by_name::number(by_name::at(arguments, 1)), by_name::number(by_name::at(arguments, 2)), by_name::number(by_name::at(arguments, 3)), Some(&mut out), Some(error)) })?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(out.injector_residue_ml),
        Value::Number(out.injector_residue_uncertainty_ml),
        Value::Number(out.residue_mass_g),
    ])
}

fn price(arguments: &[Argument<'_>]) -> Outcome {
    let mut out = MaybeUninit::uninit();
    by_name::done(|error| pour_price(by_name::count(by_name::at(arguments, 0)), by_name::number(by_name::at(arguments, 1)), Some(&mut out), Some(error)))?;
    // SAFETY: written on success.
    let out = unsafe { out.assume_init() };
    Ok(vec![
        Value::Number(f64::from(out)),
    ])
}

fn price_n(
    rows: usize,
    inputs: &[pour_column],
    _: &[i32],
    outputs: &[pour_result_column],
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let columns = pour_price_columns {
        cost: inputs[0],
        cost_margin: inputs[1],
    };
    let results = pour_price_result_columns {
        price: outputs[0],
    };
    // SAFETY: the columns are those of the caller.
    unsafe { pour_price_n(rows, Some(&columns), Some(&results), statuses, error) }
}

