//! pourwright for browsers, bundlers and Node: what `bindings/js` wraps.
//!
//! Documents cross as JSON text, which JavaScript and the core both read and write to the last bit; plain numbers
//! cross as they are, the unit the last part of their name. What the core refuses is thrown as a `PourwrightError`.
//! The maths is the core's. Without the feature `document` there are plain numbers only.

// A trap costs the page its instance.
#![cfg_attr(
    not(test),
    deny(
        clippy::unwrap_used,
        clippy::expect_used,
        clippy::indexing_slicing,
        clippy::string_slice,
        clippy::panic,
        clippy::unreachable,
        clippy::integer_division_remainder_used
    )
)]

mod amount;
mod batch;
mod bench;
mod color;
#[cfg(feature = "document")]
mod document;
mod mix;
mod number;
mod parameter;
mod refused;
mod salt;
mod shot;
mod sink;
mod softener;
mod vacuum;
mod water;

pub use amount::{convert, mass_g, mass_of_volume_g, volume_of_mass_ml};
pub use batch::{batch_need, injector_loads, shots};
pub use bench::bench_measure;
pub use color::color_difference;
#[cfg(feature = "document")]
pub use document::{Book, calculate};
pub use mix::{density_of_parts_g_per_ml, flake_count};
pub use salt::SaltMix;
pub use shot::{piece_g, shot_g};
pub use sink::{density_for_sink_speed_g_per_ml, sink_speed_cm_per_s};
pub use softener::{hardness, softener_ratio};
pub use vacuum::{air_pressure_pa, swollen_ml};
pub use water::{cavity_ml, water_density_g_per_ml};
