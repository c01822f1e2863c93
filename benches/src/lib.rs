//! Benches of pourwright: see `benches/`.
