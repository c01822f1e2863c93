//! The sizes of all generated structs, as C lays them out. Made by `cargo run -p pourwright-generate`.

use std::mem::size_of;

use pourwright_ffi::*;

/// Name, size that the compiler finds, size that the table gives.
pub(crate) const SIZES: &[(&str, usize, usize)] = &[
    ("pour_mass_of_volume_columns", size_of::<pour_mass_of_volume_columns>(), 32),
    ("pour_mass_of_volume_result_columns", size_of::<pour_mass_of_volume_result_columns>(), 16),
    ("pour_parts_row", size_of::<pour_parts_row>(), 16),
    ("pour_salt_convert_input", size_of::<pour_salt_convert_input>(), 168),
    ("pour_salt_convert_result", size_of::<pour_salt_convert_result>(), 24),
    ("pour_salt_convert_columns", size_of::<pour_salt_convert_columns>(), 320),
    ("pour_salt_convert_result_columns", size_of::<pour_salt_convert_result_columns>(), 48),
    ("pour_shot_fill_input", size_of::<pour_shot_fill_input>(), 72),
    ("pour_shot_fill_result", size_of::<pour_shot_fill_result>(), 64),
    ("pour_shot_fill_columns", size_of::<pour_shot_fill_columns>(), 144),
    ("pour_shot_fill_result_columns", size_of::<pour_shot_fill_result_columns>(), 128),
    ("pour_piece_mass_result", size_of::<pour_piece_mass_result>(), 24),
    ("pour_piece_mass_columns", size_of::<pour_piece_mass_columns>(), 80),
    ("pour_piece_mass_result_columns", size_of::<pour_piece_mass_result_columns>(), 48),
    ("pour_cups_row", size_of::<pour_cups_row>(), 16),
    ("pour_bench_measure_input", size_of::<pour_bench_measure_input>(), 88),
    ("pour_bench_measure_result", size_of::<pour_bench_measure_result>(), 72),
];
