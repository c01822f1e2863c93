//! JSON as people and programs write it: read with all faults, each at its path, and read back.
//!
//! Nothing here knows a book or a plan. `reader` walks a value, `entry` declares the fields of an object, `read_back`
//! reads what the library wrote itself.

pub(crate) mod entry;
pub mod named;
mod names;
pub(crate) mod nearest;
pub(crate) mod one_or_list;
pub(crate) mod path;
pub(crate) mod read_back;
pub(crate) mod reader;
pub mod text;

pub use named::Named;
pub use one_or_list::OneOrList;
pub use reader::{Count, Ext, Name};
