//! Colors: simulated shops whose hidden colorants are not quite the model's, brought to a target by the next drop;
//! translucent pieces, by the differential equations of light in them.

mod shops;
mod translucent;
