//! The layout of the public structs: a change to one is a change of the ABI, and must be meant.

use std::mem::{align_of, size_of};

use pourwright_ffi::*;

#[test]
fn sizes_are_those_of_the_abi() {
    let sizes = [
        ("pour_batch", size_of::<Batch>(), 96),
        ("pour_batch_result", size_of::<BatchResult>(), 72),
        ("pour_bench", size_of::<Bench>(), 24 + 2 * size_of::<usize>() + 16),
        ("pour_body", size_of::<Body>(), 56),
        ("pour_conversion", size_of::<Conversion>(), 32),
        ("pour_fall", size_of::<Fall>(), 48),
        ("pour_hardness_point", size_of::<HardnessPoint>(), 16),
        ("pour_material", size_of::<Material>(), size_of::<usize>().next_multiple_of(8) + 48),
        ("pour_measure", size_of::<Measure>(), 64),
        ("pour_shot", size_of::<Shot>(), 72),
        ("pour_shot_result", size_of::<ShotResult>(), 48),
        ("pour_unsalted", size_of::<Unsalted>(), 144),
    ];
    for (name, found, wanted) in sizes {
        assert_eq!(found, wanted, "{name}");
    }
    assert_eq!(align_of::<Batch>(), align_of::<f64>());
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
    ];
    assert!(statuses.iter().copied().eq(0..9));
}
