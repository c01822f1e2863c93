//! A day that goes on: the rest of a plan, and plans from pots that are there, judged as the documents give them.

mod changes;
mod law;
mod listed;
mod noon;
