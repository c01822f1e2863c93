//! The layout of the public structs: a change to one is a change of the ABI, and must be meant.

use std::mem::{offset_of, size_of};

use pourwright_ffi::*;

#[rustfmt::skip] // as the generator writes it
mod sizes;

#[test]
fn sizes_are_those_of_the_abi() {
    let pointer = size_of::<usize>();
    let by_hand = [
        ("pour_conversion", size_of::<Conversion>(), 32),
        ("pour_column", size_of::<pour_column>(), 2 * pointer),
        ("pour_result_column", size_of::<pour_result_column>(), 2 * pointer),
        ("pour_table", size_of::<pour_table>(), 3 * pointer),
        ("pour_material", size_of::<Material>(), (2 * pointer).next_multiple_of(8) + 48),
    ];
    // The generator lays the others out for pointers of eight bytes.
    let generated = if pointer == 8 { sizes::SIZES } else { &[] };
    assert!(pointer != 8 || generated.len() >= 2 * pourwright::table::CALCULATIONS.len());
    for (name, found, wanted) in by_hand.iter().chain(generated) {
        assert_eq!(found, wanted, "{name}");
    }
    assert_eq!(offset_of!(Material, kind), (2 * pointer).next_multiple_of(8) + 40);
}

/// A number is never given to another status.
#[test]
fn statuses_keep_their_numbers() {
    let statuses = [
        POUR_OK,
        POUR_NULL,
        POUR_NOT_FINITE,
        POUR_NOT_UTF8,
        POUR_TOO_LARGE,
        POUR_UNKNOWN_NUMBER,
        POUR_REFUSED,
        POUR_PANIC,
        POUR_MISALIGNED,
        POUR_STOPPED,
        POUR_OVER_BUDGET,
        POUR_OUT_OF_MEMORY,
    ];
    assert!(statuses.iter().copied().eq(0..12));
}
