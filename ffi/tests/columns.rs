//! Columnar calls: without allocation, in place, refused before anything is written; and those that the table knows nothing
//! of. That each row is the scalar call is in `calculations`.

use std::alloc::{GlobalAlloc, Layout, System};
use std::cell::Cell;
use std::mem::MaybeUninit;
use std::ptr;

use pourwright_ffi::*;
use proptest::prelude::*;

struct Counting;

thread_local! {
    static ALLOCATIONS: Cell<usize> = const { Cell::new(0) };
}

// SAFETY: every call goes to the system's allocator unchanged.
unsafe impl GlobalAlloc for Counting {
    unsafe fn alloc(&self, layout: Layout) -> *mut u8 {
        ALLOCATIONS.set(ALLOCATIONS.get() + 1);
        // SAFETY: as the caller asks.
        unsafe { System.alloc(layout) }
    }

    unsafe fn dealloc(&self, pointer: *mut u8, layout: Layout) {
        // SAFETY: as the caller asks.
        unsafe { System.dealloc(pointer, layout) }
    }
}

#[global_allocator]
static COUNTING: Counting = Counting;

const NAN: u64 = 0x7ff8_0000_0000_0000;

fn column(values: &[f64]) -> pour_column {
    pour_column { start: values.as_ptr(), stride: 8 }
}

fn to(values: &mut [f64]) -> pour_result_column {
    pour_result_column { start: values.as_mut_ptr(), stride: 8 }
}

fn conversion(from: &std::ffi::CStr, to: &std::ffi::CStr) -> Conversion {
    let mut conversion = MaybeUninit::uninit();
    // SAFETY: both texts end.
    let status = unsafe {
        pour_conversion_between(
            from.as_ptr(),
            to.as_ptr(),
            POUR_MEASURES_US_CUSTOMARY,
            Some(&mut conversion),
            None,
        )
    };
    assert_eq!(status, POUR_OK);
    // SAFETY: the call succeeded.
    unsafe { conversion.assume_init() }
}

/// Sensible numbers, and some that cannot be.
fn number(sensible: std::ops::Range<f64>) -> impl Strategy<Value = f64> {
    let odd = prop::sample::select(vec![
        f64::NAN,
        -f64::NAN,
        f64::INFINITY,
        f64::NEG_INFINITY,
        -1.0,
        0.0,
        -0.0,
        1e-320,
        1e300,
        f64::MAX,
    ]);
    prop_oneof![8 => sensible, 1 => odd]
}

proptest! {
    #[test]
    fn every_row_of_a_conversion_is_the_scalar_call(values in prop::collection::vec(number(0.5..500.0), 1..40)) {
        let cup = conversion(c"cup", c"mL");
        let (mut out, mut statuses) = (vec![7.0; values.len()], vec![-1; values.len()]);
        // SAFETY: columns of as many rows.
        let status = unsafe {
            pour_convert_with_n(Some(&cup), values.len(), column(&values), to(&mut out), statuses.as_mut_ptr(), None)
        };
        prop_assert_eq!(status, POUR_OK);
        for (row, value) in values.iter().enumerate() {
            let mut found = MaybeUninit::new(f64::from_bits(NAN));
            let status = pour_convert_with(Some(&cup), *value, Some(&mut found), None);
            // SAFETY: it was initialized above.
            let found = unsafe { found.assume_init() };
            prop_assert_eq!((out[row].to_bits(), statuses[row]), (found.to_bits(), status));
        }
    }

    #[test]
    fn every_row_of_texts_is_the_scalar_call(
        texts in prop::collection::vec(prop::sample::select(vec![
            "1/4 tsp", "1 1/4 cup", "40 drops", "12.5 g", "6 oz", "1,25 cup", "", " ", "\u{bd} cup", "8 %", "1 [cup_m]", "-1 mL",
        ]), 0..20),
        metric in any::<bool>(),
    ) {
        let measures = if metric { POUR_MEASURES_METRIC } else { 0 };
        let mut offsets = vec![0_i64];
        for text in &texts {
            offsets.push(offsets[offsets.len() - 1] + text.len() as i64);
        }
        let all = texts.concat();
        let (mut out, mut statuses) = (vec![7.0; texts.len()], vec![-1; texts.len()]);
        // SAFETY: an offset more than rows, all of them in the text.
        let status = unsafe {
            pour_convert_texts_n(texts.len(), all.as_ptr().cast(), offsets.as_ptr(), c"mL".as_ptr(), measures,
                to(&mut out), statuses.as_mut_ptr(), None)
        };
        prop_assert_eq!(status, POUR_OK);
        for (row, text) in texts.iter().enumerate() {
            let ended = std::ffi::CString::new(*text).unwrap();
            let mut found = MaybeUninit::new(f64::from_bits(NAN));
            // SAFETY: both texts end.
            let status = unsafe { pour_convert(ended.as_ptr(), c"mL".as_ptr(), measures, Some(&mut found), None) };
            // SAFETY: it was initialized above.
            let found = unsafe { found.assume_init() };
            prop_assert_eq!((out[row].to_bits(), statuses[row]), (found.to_bits(), status));
        }
    }

    #[test]
    fn every_row_of_a_table_is_the_scalar_call(
        masses in prop::collection::vec(prop::array::uniform3(number(0.0..500.0)), 1..20),
        densities in prop::array::uniform3(number(0.8..2.5)),
        voids in number(0.0..0.5),
    ) {
        let mut out = vec![7.0; masses.len()];
        let mut statuses = vec![-1; masses.len()];
        let of_masses = pour_table { start: masses.as_ptr().cast(), row_stride: 24, part_stride: 8 };
        let of_densities = pour_table { start: densities.as_ptr(), row_stride: 0, part_stride: 8 };
        let of_voids = pour_column { start: &raw const voids, stride: 0 };
        // SAFETY: a table of these rows and three parts; densities and voids repeat.
        let status = unsafe {
            pour_density_of_parts_n(masses.len(), 3, of_masses, of_densities, of_voids, to(&mut out),
                statuses.as_mut_ptr(), None)
        };
        prop_assert_eq!(status, POUR_OK);
        for (i, row) in masses.iter().enumerate() {
            let parts = [0, 1, 2].map(|part| pour_parts_row {
                part_mass_g: row[part],
                part_density_g_per_ml: densities[part],
            });
            let mut found = MaybeUninit::new(f64::from_bits(NAN));
            // SAFETY: an array of three.
            let status = unsafe {
                pour_density_of_parts(parts.as_ptr(), 3, voids, Some(&mut found), None)
            };
            // SAFETY: it was initialized above.
            let found = unsafe { found.assume_init() };
            prop_assert_eq!((out[i].to_bits(), statuses[i]), (found.to_bits(), status));
        }
    }
}

/// Good rows allocate nothing, with statuses and without.
#[test]
fn columns_allocate_nothing() {
    let (values, density) = ([1.0, 0.5, 2.0], [1.03; 3]);
    let mut out = [0.0; 3];
    let mut statuses = [0; 3];
    let cup = conversion(c"cup", c"mL");
    let piece = pour_piece_mass_columns {
        cavity_volume_ml: column(&values),
        cold_density_g_per_ml: column(&density),
        hot_density_g_per_ml: column(&density),
        voids: pour_column { start: ptr::null(), stride: 0 },
        feed: pour_column { start: ptr::null(), stride: 0 },
    };
    let mass = pour_mass_of_volume_columns {
        volume_ml: column(&values),
        density_g_per_ml: column(&density),
    };
    let (amounts, offsets) = (c"1/4 tsp1 1/4 cup\u{bd} cup", [0, 7, 16, 22]);
    for beside in [ptr::null_mut(), statuses.as_mut_ptr()] {
        let before = ALLOCATIONS.get();
        let nowhere = pour_result_column { start: ptr::null_mut(), stride: 0 };
        let table =
            |column: pour_column| pour_table { start: column.start, row_stride: 8, part_stride: 8 };
        let masses = pour_mass_of_volume_result_columns { mass_g: to(&mut out) };
        let pieces = pour_piece_mass_result_columns {
            piece_mass_g: to(&mut out),
            piece_mass_min_g: nowhere,
            piece_mass_max_g: nowhere,
        };
        // SAFETY: all columns have three rows.
        let found = unsafe {
            [
                pour_convert_with_n(Some(&cup), 3, column(&values), to(&mut out), beside, None),
                pour_density_of_parts_n(
                    3,
                    1,
                    table(column(&values)),
                    table(column(&density)),
                    piece.voids,
                    to(&mut out),
                    beside,
                    None,
                ),
                pour_mass_of_volume_n(3, Some(&mass), Some(&masses), beside, None),
                pour_piece_mass_n(3, Some(&piece), Some(&pieces), beside, None),
                pour_convert_texts_n(
                    3,
                    amounts.as_ptr(),
                    offsets.as_ptr(),
                    c"mL".as_ptr(),
                    0,
                    to(&mut out),
                    beside,
                    None,
                ),
            ]
        };
        assert_eq!(ALLOCATIONS.get(), before);
        assert_eq!(found, [POUR_OK; 5]);
    }
    // The counting itself works.
    let before = ALLOCATIONS.get();
    drop(std::hint::black_box(vec![1_u8]));
    assert_eq!(ALLOCATIONS.get(), before + 1);
}

#[test]
fn results_may_replace_a_column() {
    let cup = conversion(c"cup", c"mL");
    let mut values = [1.0, 2.0, f64::NAN];
    let (from, into) = (column(&values), to(&mut values));
    // SAFETY: one column of three, read and written row by row.
    let status = unsafe { pour_convert_with_n(Some(&cup), 3, from, into, ptr::null_mut(), None) };
    assert_eq!(status, POUR_OK);
    assert_eq!(values[..2], [236.588_236_5, 473.176_473]);
    assert_eq!(values[2].to_bits(), NAN);
}

#[test]
fn columns_that_cannot_be_are_refused_before_anything_is_written() {
    let cup = conversion(c"cup", c"mL");
    let (value, mut out) = (1.0, [7.0; 2]);
    let o = to(&mut out);
    let one = pour_column { start: &raw const value, stride: 0 };
    let (none, nowhere) = (
        pour_column { start: ptr::null(), ..one },
        pour_result_column { start: ptr::null_mut(), ..o },
    );
    let no = ptr::null_mut();
    let odd = out.as_mut_ptr().cast::<i32>().wrapping_byte_add(1);
    // SAFETY: what is refused is not read.
    let found = unsafe {
        [
            pour_convert_with_n(None, 2, one, o, no, None),
            pour_convert_with_n(Some(&cup), 2, none, o, no, None),
            pour_convert_with_n(Some(&cup), 2, one, nowhere, no, None),
            pour_convert_with_n(
                Some(&cup),
                2,
                one,
                pour_result_column { stride: 0, ..o },
                no,
                None,
            ),
            pour_convert_with_n(Some(&cup), usize::MAX, one, o, no, None),
            pour_convert_with_n(
                Some(&cup),
                2,
                pour_column { stride: isize::MIN, ..one },
                o,
                no,
                None,
            ),
            pour_convert_with_n(Some(&cup), 2, one, o, odd, None),
            pour_convert_with_n(Some(&cup), 0, none, nowhere, no, None),
            pour_convert_texts_n(
                2,
                ptr::null(),
                [0, 0, 0].as_ptr(),
                c"mL".as_ptr(),
                0,
                o,
                no,
                None,
            ),
            pour_convert_texts_n(2, c"".as_ptr(), ptr::null(), c"mL".as_ptr(), 0, o, no, None),
            pour_convert_texts_n(2, c"".as_ptr(), [0, 0, 0].as_ptr(), ptr::null(), 0, o, no, None),
            pour_convert_texts_n(
                2,
                c"".as_ptr(),
                [0, 0, 0].as_ptr(),
                c"smidge".as_ptr(),
                0,
                o,
                no,
                None,
            ),
            pour_convert_texts_n(
                2,
                c"".as_ptr(),
                [0, 0, 0].as_ptr(),
                c"mL".as_ptr(),
                99,
                o,
                no,
                None,
            ),
            pour_convert_texts_n(
                2,
                c"".as_ptr(),
                [0, 0, 0].as_ptr(),
                c"mL".as_ptr(),
                0,
                nowhere,
                no,
                None,
            ),
            pour_convert_texts_n(
                usize::MAX,
                c"".as_ptr(),
                [0].as_ptr(),
                c"mL".as_ptr(),
                0,
                o,
                no,
                None,
            ),
            pour_convert_texts_n(0, ptr::null(), ptr::null(), c"mL".as_ptr(), 0, nowhere, no, None),
        ]
    };
    let wanted = [
        POUR_NULL,
        POUR_NULL,
        POUR_NULL,
        POUR_REFUSED,
        POUR_TOO_LARGE,
        POUR_TOO_LARGE,
        POUR_MISALIGNED,
        POUR_OK,
        POUR_NULL,
        POUR_NULL,
        POUR_NULL,
        POUR_REFUSED,
        POUR_UNKNOWN_NUMBER,
        POUR_NULL,
        POUR_TOO_LARGE,
        POUR_OK,
    ];
    assert_eq!(found, wanted);
    assert_eq!(out, [7.0; 2]);
}
