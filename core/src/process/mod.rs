//! What happens to a mix and its pieces: heat, vacuum, water.

pub mod drag;
pub mod seawater;
pub mod sink;
