//! pourwright for browsers, bundlers and Node: what `bindings/js` wraps.
//!
//! Documents cross as JSON text, which JavaScript and the core both read and write to the last bit; plain numbers
//! cross as they are, the unit the last part of their name. What the core refuses is thrown as a `PourwrightError`.
//! The maths is the core's.

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
mod color;
mod document;
mod number;
mod refused;
mod salt;
mod shot;
mod sink;
mod softener;
mod vacuum;
mod water;

pub use amount::{convert, mass_g};
pub use batch::{injector_loads, shots};
pub use color::color_difference;
pub use document::{Book, calculate};
pub use salt::salt_loading;
pub use shot::{piece_g, shot_g};
pub use sink::{density_for_sink_speed_g_per_ml, sink_speed_cm_per_s};
pub use softener::{hardness, softener_ratio};
pub use vacuum::{air_pressure_pa, swollen_ml};
pub use water::{cavity_ml, water_density_g_per_ml};
