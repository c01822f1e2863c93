//! Colors: simulated shops whose hidden colorants are not quite the model's, brought to a target by the next drop.

mod shops;
