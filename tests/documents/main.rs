//! Documents: broken, mutated, written back, in another order.

mod broken;
mod forms;
mod mutated;
mod schema;
