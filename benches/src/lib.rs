//! What the benches share: invented days of any size, and two sums timed side by side.

pub mod day;
pub mod growth;
pub mod pair;
