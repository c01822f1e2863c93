//! Quantities as a person reads them: figures in messages, numbers with their texts in results, notes.

pub(crate) mod figure;
pub(crate) mod legible;
mod note;
pub(crate) mod page;
mod part;
pub(crate) mod sentence;
mod shown;
pub(crate) mod text;

pub(crate) use figure::{Figure, both_scales, density, mass, number, percent, volume};
pub(crate) use note::because;
pub use note::{Calculated, Note};
pub(crate) use part::part;
pub use shown::{Showable, Shown, TextScale};
