//! Every calculation of the table through its export. Made by `cargo run -p pourwright-generate`; do not edit.

use std::mem::MaybeUninit;

use pourwright::table::{Argument, Value};
use pourwright_ffi::*;

use crate::by_name::{self, Call, Columns, Outcome};

/// The scalar calls.
pub(crate) const CALLS: &[(&str, Call)] = &[
    ("convert", convert),
    ("mass_of_volume", mass_of_volume),
    ("density_of_parts", density_of_parts),
    ("salt_convert", salt_convert),
    ("shot_fill", shot_fill),
    ("piece_mass", piece_mass),
    ("bench_measure", bench_measure),
];

/// The columnar calls.
pub(crate) const COLUMNS: &[(&str, Columns)] = &[
    ("mass_of_volume", mass_of_volume_n),
    ("salt_convert", salt_convert_n),
    ("shot_fill", shot_fill_n),
    ("piece_mass", piece_mass_n),
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

fn salt_convert(arguments: &[Argument<'_>]) -> Outcome {
    let input = pour_salt_convert_input {
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
    by_name::done(|error| pour_salt_convert(Some(&input), Some(&mut out), Some(error)))?;
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

fn shot_fill(arguments: &[Argument<'_>]) -> Outcome {
    let input = pour_shot_fill_input {
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
    by_name::done(|error| pour_shot_fill(Some(&input), Some(&mut out), Some(error)))?;
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

fn bench_measure(arguments: &[Argument<'_>]) -> Outcome {
    let input = pour_bench_measure_input {
        mass_to_measure_g: by_name::number(by_name::at(arguments, 0)),
        tolerance: by_name::number(by_name::at(arguments, 1)),
        balance_readability_g: by_name::number(by_name::at(arguments, 2)),
        balance_capacity_g: by_name::number(by_name::at(arguments, 3)),
        balance_least_load_g: by_name::number(by_name::at(arguments, 4)),
        spoons_ml: by_name::list(by_name::at(arguments, 5)).0.cast(),
        spoons_count: by_name::list(by_name::at(arguments, 5)).1 / 1,
        cups: by_name::list(by_name::at(arguments, 6)).0.cast(),
        cups_count: by_name::list(by_name::at(arguments, 6)).1 / 2,
        as_measured_density_g_per_ml: by_name::number(by_name::at(arguments, 7)),
        drop_mass_g: by_name::number(by_name::at(arguments, 8)),
    };
    let mut out = MaybeUninit::<pour_bench_measure_result>::uninit();
    // SAFETY: texts that end, and lists that live.
    by_name::done(|error| unsafe { pour_bench_measure(Some(&input), Some(&mut out), Some(error)) })?;
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

