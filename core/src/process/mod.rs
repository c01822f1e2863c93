//! The process of a pot and its pieces: vacuum, heat and its budget, how long a pot stays hot and a shot sets, how
//! fast salt settles and a piece sinks.

pub mod atmosphere;
pub mod budget;
pub mod chamber;
pub mod clock;
pub mod degas;
pub mod drag;
pub mod gauge;
pub mod heat;
pub mod history;
pub mod seawater;
pub mod settling;
pub mod shot_cooling;
pub mod sink;
pub mod vapor;

mod figures;
