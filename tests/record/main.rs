//! What goes otherwise than planned: mispours, left-overs, the day's record; through documents and requests.

mod correct;
mod demo;
mod leftovers;
mod record;
