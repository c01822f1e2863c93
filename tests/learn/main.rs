//! What a book learns from many days: against a general least-squares library, and on shops whose truth is known.

mod coverage;
mod least_squares;
mod records;
mod shop;
