//! Deviations from the plan: mispours, leftovers, the day's record; through documents and requests.

mod changes;
mod correct;
mod demo;
mod leftovers;
mod record;
