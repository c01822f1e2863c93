//! What is done to a pot and its pieces: vacuum, heat and what it spends, how long it stays hot and a shot sets,
//! how fast salt settles, the fall in water.

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
