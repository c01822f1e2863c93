//! Columnar calls: the same bits as the scalar ones, from any address and stride, without allocation.

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

/// A column in bytes, at an odd address and with a stride of its own.
struct Scattered {
    bytes: Vec<u8>,
    first: usize,
    stride: isize,
}

impl Scattered {
    fn new(values: &[f64], stride: isize) -> Self {
        let step = stride.unsigned_abs();
        let first = if stride < 0 { 1 + step * (values.len() - 1) } else { 1 };
        let mut bytes = vec![0xa5; 16 + step * values.len()];
        for (row, value) in values.iter().enumerate() {
            let at = first.wrapping_add_signed(stride * row as isize);
            bytes[at..at + 8].copy_from_slice(&value.to_ne_bytes());
        }
        Self { bytes, first, stride }
    }

    fn start(&self) -> *const f64 {
        self.bytes[self.first..].as_ptr().cast()
    }

    fn start_mut(&mut self) -> *mut f64 {
        self.bytes[self.first..].as_mut_ptr().cast()
    }

    fn get(&self, row: usize) -> f64 {
        let at = self.first.wrapping_add_signed(self.stride * row as isize);
        f64::from_ne_bytes(self.bytes[at..at + 8].try_into().unwrap())
    }
}

/// What a scalar call gives: its bits and status, NaN where it fails.
fn scalar(call: impl FnOnce(Option<&mut MaybeUninit<f64>>) -> i32) -> (u64, i32) {
    let mut out = MaybeUninit::new(f64::from_bits(NAN));
    let status = call(Some(&mut out));
    // SAFETY: it was initialized above.
    (unsafe { out.assume_init() }.to_bits(), status)
}

fn conversion(from: &std::ffi::CStr, to: &std::ffi::CStr) -> Conversion {
    let mut conversion = MaybeUninit::uninit();
    // SAFETY: both texts end.
    let status = unsafe {
        pour_conversion_between(
            from.as_ptr(),
            to.as_ptr(),
            POUR_US_CUSTOMARY,
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

fn strides() -> impl Strategy<Value = [isize; 6]> {
    prop::array::uniform6(prop::sample::select(vec![8, 8, 11, 24, -8, -13]))
}

type Row = (f64, f64, f64, f64, f64);

fn rows() -> impl Strategy<Value = Vec<Row>> {
    let row = (
        number(0.5..500.0),
        number(0.9..1.2),
        number(0.9..2.5),
        number(0.0..0.2),
        number(0.9..1.4),
    );
    prop::collection::vec(row, 1..40)
}

fn column(rows: &[Row], pick: impl Fn(&Row) -> f64, stride: isize) -> Scattered {
    Scattered::new(&rows.iter().map(pick).collect::<Vec<_>>(), stride)
}

proptest! {
    #[test]
    fn every_row_is_the_scalar_call(rows in rows(), strides in strides()) {
        let n = rows.len();
        let [a, b, c, d, e] = [
            column(&rows, |r| r.0, strides[0]),
            column(&rows, |r| r.1, strides[1]),
            column(&rows, |r| r.2, strides[2]),
            column(&rows, |r| r.3, strides[3]),
            column(&rows, |r| r.4, strides[4]),
        ];
        let mut out = Scattered::new(&vec![7.0; n], strides[5]);
        let mut statuses = vec![-1; n];
        let (start, stride, beside) = (out.start_mut(), strides[5], statuses.as_mut_ptr());
        let cup = conversion(c"cup", c"mL");

        macro_rules! compare {
            ($call:expr, |$row:ident, $out:ident| $scalar:expr) => {
                // SAFETY: all columns have `n` rows.
                prop_assert_eq!(unsafe { $call }, POUR_OK);
                for (i, $row) in rows.iter().copied().enumerate() {
                    let (bits, status) = scalar(|$out| $scalar);
                    prop_assert_eq!((out.get(i).to_bits(), statuses[i]), (bits, status), "{:?}", $row);
                }
            };
        }

        compare!(
            pour_convert_n(Some(&cup), n, a.start(), a.stride, start, stride, beside, None),
            |row, out| pour_convert_with(Some(&cup), row.0, out, None)
        );
        compare!(
            pour_mass_of_volume_n(n, a.start(), a.stride, b.start(), b.stride, start, stride, beside, None),
            |row, out| pour_mass_of_volume(row.0, row.1, out, None)
        );
        compare!(
            pour_salt_for_density_n(n, a.start(), a.stride, b.start(), b.stride, c.start(), c.stride, d.start(),
                d.stride, e.start(), e.stride, start, stride, beside, None),
            |row, out| pour_salt_for_density(row.0, row.1, row.2, row.3, row.4, out, None)
        );
        compare!(
            pour_piece_mass_n(n, a.start(), a.stride, b.start(), b.stride, e.start(), e.stride, d.start(), d.stride,
                d.start(), d.stride, start, stride, beside, None),
            |row, out| pour_piece_mass(row.0, row.1, row.4, row.3, row.3, out, None)
        );
    }

    #[test]
    fn every_row_of_a_table_is_the_scalar_call(
        masses in prop::collection::vec(prop::array::uniform3(number(0.0..500.0)), 1..20),
        densities in prop::array::uniform3(number(0.8..2.5)),
        voids in number(0.0..0.5),
    ) {
        let mut out = vec![7.0; masses.len()];
        let mut statuses = vec![-1; masses.len()];
        // SAFETY: a table of so many rows and three parts; densities and voids repeat.
        let status = unsafe {
            pour_density_of_parts_n(masses.len(), 3, masses.as_ptr().cast(), 24, 8, densities.as_ptr(), 0, 8, &voids,
                0, out.as_mut_ptr(), 8, statuses.as_mut_ptr(), None)
        };
        prop_assert_eq!(status, POUR_OK);
        for (i, row) in masses.iter().enumerate() {
            // SAFETY: arrays of three.
            let (bits, status) = scalar(|out| unsafe {
                pour_density_of_parts(3, row.as_ptr(), densities.as_ptr(), voids, out, None)
            });
            prop_assert_eq!((out[i].to_bits(), statuses[i]), (bits, status));
        }
    }
}

/// Good rows and bad ones, with statuses and without: nothing is allocated.
#[test]
fn columns_allocate_nothing() {
    let values = [1.0, f64::NAN, -1.0, 1e300, 2.0];
    let (density, voids, feed) = ([1.03; 5], [0.0, 0.01, 2.0, f64::NAN, 0.1], [0.5; 5]);
    let mut out = [0.0; 5];
    let mut statuses = [0; 5];
    let cup = conversion(c"cup", c"mL");
    for beside in [ptr::null_mut(), statuses.as_mut_ptr()] {
        let before = ALLOCATIONS.get();
        // SAFETY: all columns have five rows.
        let found = unsafe {
            let (v, d, o) = (values.as_ptr(), density.as_ptr(), out.as_mut_ptr());
            let (a, f) = (voids.as_ptr(), feed.as_ptr());
            [
                pour_convert_n(Some(&cup), 5, v, 8, o, 8, beside, None),
                pour_mass_of_volume_n(5, v, 8, d, 8, o, 8, beside, None),
                pour_density_of_parts_n(5, 1, v, 8, 8, d, 8, 8, a, 8, o, 8, beside, None),
                pour_salt_for_density_n(5, v, 8, d, 8, d, 8, a, 8, d, 8, o, 8, beside, None),
                pour_piece_mass_n(5, v, 8, d, 8, d, 8, a, 8, f, 8, o, 8, beside, None),
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

/// Neither do scalar calls that succeed.
#[test]
fn scalar_calls_allocate_nothing() {
    let cup = conversion(c"cup", c"mL");
    let points =
        [HardnessPoint { ratio: 0.0, reading: 60.0 }, HardnessPoint { ratio: 0.2, reading: 40.0 }];
    let before = ALLOCATIONS.get();
    type Call<'a> = &'a dyn Fn(Option<&mut MaybeUninit<f64>>) -> i32;
    let calls: [Call<'_>; 6] = [
        &|out| pour_convert_with(Some(&cup), 1.25, out, None),
        &|out| pour_mass_of_volume(59.0, 1.22, out, None),
        &|out| pour_salt_for_density(236.6, 1.03, 2.165, 0.0, 1.15, out, None),
        &|out| pour_piece_mass(9.5, 0.95, 1.03, 0.01, 0.5, out, None),
        &|out| pour_water_density(20.0, out, None),
        // SAFETY: an array of two points.
        &|out| unsafe { pour_hardness(points.as_ptr(), 2, POUR_SHORE_00, 0.1, out, None) },
    ];
    for call in calls {
        let mut out = MaybeUninit::uninit();
        assert_eq!(call(Some(&mut out)), POUR_OK);
    }
    assert_eq!(ALLOCATIONS.get(), before);
}

#[test]
fn results_may_replace_a_column() {
    let cup = conversion(c"cup", c"mL");
    let mut values = [1.0, 2.0, f64::NAN];
    let start = values.as_mut_ptr();
    // SAFETY: one column of three, read and written row by row.
    let status =
        unsafe { pour_convert_n(Some(&cup), 3, start, 8, start, 8, ptr::null_mut(), None) };
    assert_eq!(status, POUR_OK);
    assert_eq!(values[..2], [236.588_236_5, 473.176_473]);
    assert_eq!(values[2].to_bits(), NAN);
}

#[test]
fn columns_that_cannot_be_are_refused_before_anything_is_written() {
    let cup = conversion(c"cup", c"mL");
    let (value, mut out) = (1.0, [7.0; 2]);
    let o = out.as_mut_ptr();
    let none = ptr::null_mut();
    // SAFETY: what is refused is not read.
    let found = unsafe {
        [
            pour_convert_n(None, 2, &value, 0, o, 8, none, None),
            pour_convert_n(Some(&cup), 2, ptr::null(), 0, o, 8, none, None),
            pour_convert_n(Some(&cup), 2, &value, 0, ptr::null_mut(), 8, none, None),
            pour_convert_n(Some(&cup), 2, &value, 0, o, 0, none, None),
            pour_convert_n(Some(&cup), usize::MAX, &value, 0, o, 8, none, None),
            pour_convert_n(Some(&cup), 2, &value, isize::MIN, o, 8, none, None),
            pour_convert_n(
                Some(&cup),
                2,
                &value,
                0,
                o,
                8,
                o.cast::<i32>().wrapping_byte_add(1),
                None,
            ),
            pour_convert_n(Some(&cup), 0, ptr::null(), 8, ptr::null_mut(), 8, none, None),
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
    ];
    assert_eq!(found, wanted);
    assert_eq!(out, [7.0; 2]);
}
