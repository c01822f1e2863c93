//! Columnar calls: the scalar ones over arrays, without copying and without allocation.

use std::mem::MaybeUninit;

use pourwright::density::TrueDensity;
use pourwright::mix::density_of_parts;

use crate::error::{ArgumentError, Error, Failure};
use crate::guard::guard;
use crate::memory::given;
use crate::number::{grams, grams_per_milliliter, in_grams, in_grams_per_milliliter, milliliters};
use crate::scalar::{Conversion, believable, piece_mass, salt_for_density};
use crate::status::*;

/// The NaN of a bad row: quiet, positive, without a payload.
const BAD: f64 = f64::from_bits(0x7ff8_0000_0000_0000);

/// From one number to the next of a plain array.
const PACKED: isize = size_of::<f64>() as isize;

/// Whether `rows` rows at `stride` from each other fit the address space.
fn check_reach(name: &str, rows: usize, stride: isize) -> Result<(), Failure> {
    let most = isize::MAX as usize / size_of::<f64>();
    let reach =
        stride.unsigned_abs().checked_mul(rows).filter(|reach| *reach <= isize::MAX as usize);
    match reach {
        Some(_) if rows <= most => Ok(()),
        _ => Err(Failure::at(name, &ArgumentError::TooLarge { most })),
    }
}

/// A column of numbers in the host's memory.
#[derive(Clone, Copy)]
struct Column {
    start: *const u8,
    stride: isize,
}

impl Column {
    /// # Safety
    /// `start` is null, or a number can be read at each of `rows` strides from it until the call ends.
    unsafe fn new(
        name: &str,
        start: *const f64,
        stride: isize,
        rows: usize,
    ) -> Result<Self, Failure> {
        if start.is_null() && rows > 0 {
            return Err(Failure::at(name, &ArgumentError::Null));
        }
        check_reach(name, rows, stride)?;
        Ok(Self { start: start.cast(), stride })
    }

    /// The same with a stride that the compiler knows.
    #[inline(always)]
    fn packed(self) -> Self {
        Self { stride: PACKED, ..self }
    }

    /// The number of `row`, which is below the rows of the column.
    #[inline(always)]
    fn at(self, row: usize) -> f64 {
        // SAFETY: by the contract of `new`, and `check_reach` saw to it that the product does not overflow. Any address
        // will do, aligned or not.
        unsafe { self.start.offset(self.stride * row as isize).cast::<f64>().read_unaligned() }
    }

    /// The same, `further` bytes on.
    #[inline(always)]
    fn moved(self, further: isize) -> Self {
        Self { start: self.start.wrapping_offset(further), ..self }
    }
}

/// Where the results go: a column, and the statuses beside it where they are asked for.
#[derive(Clone, Copy)]
struct Output {
    start: *mut u8,
    stride: isize,
    statuses: *mut i32,
}

impl Output {
    /// # Safety
    /// As [`Column::new`], for writing; `statuses` is null, or `rows` numbers can be written there.
    unsafe fn new(
        name: &str,
        start: *mut f64,
        stride: isize,
        statuses: *mut i32,
        rows: usize,
    ) -> Result<Self, Failure> {
        if start.is_null() && rows > 0 {
            return Err(Failure::at(name, &ArgumentError::Null));
        }
        if stride.unsigned_abs() < size_of::<f64>() && rows > 1 {
            return Err(Failure::at(name, &ArgumentError::OutputStride(stride)));
        }
        if !statuses.is_null() && !statuses.is_aligned() {
            return Err(Failure::at("statuses", &ArgumentError::Misaligned(align_of::<i32>())));
        }
        check_reach(name, rows, stride)?;
        Ok(Self { start: start.cast(), stride, statuses })
    }

    #[inline(always)]
    fn packed(self) -> Self {
        Self { stride: PACKED, ..self }
    }

    #[inline(always)]
    fn put(self, row: usize, number: f64) {
        // SAFETY: as in `Column::at`.
        unsafe {
            self.start.offset(self.stride * row as isize).cast::<f64>().write_unaligned(number)
        }
    }

    #[inline(always)]
    fn put_status(self, row: usize, status: i32) {
        // SAFETY: by the contract of `new`; asked for only where it is not null.
        unsafe { self.statuses.add(row).write(status) }
    }

    /// Writes every row. Each is read before it is written, so that results may replace a column of the same strides.
    #[inline(always)]
    fn fill(self, rows: usize, row: impl Fn(usize) -> Result<f64, i32>) {
        if self.statuses.is_null() {
            for i in 0..rows {
                self.put(i, row(i).unwrap_or(BAD));
            }
        } else {
            for i in 0..rows {
                let found = row(i);
                self.put(i, found.unwrap_or(BAD));
                self.put_status(i, found.err().unwrap_or(POUR_OK));
            }
        }
    }

    /// Writes every row as `of` gives it from the numbers of the columns. Plain arrays get a loop of their own, with
    /// strides that the compiler knows.
    #[inline(always)]
    fn map<const K: usize>(
        self,
        rows: usize,
        columns: [Column; K],
        of: impl Fn([f64; K]) -> Result<f64, i32>,
    ) {
        let packed = columns.iter().all(|column| column.stride == PACKED);
        if packed && self.stride == PACKED {
            let columns = columns.map(Column::packed);
            self.packed().fill(rows, |row| of(columns.map(|column| column.at(row))));
        } else {
            self.fill(rows, |row| of(columns.map(|column| column.at(row))));
        }
    }
}

/// The status of a row that cannot be: what is not finite, else what is refused.
#[inline(always)]
fn bad<const K: usize>(numbers: [f64; K]) -> i32 {
    if numbers.iter().all(|number| number.is_finite()) { POUR_REFUSED } else { POUR_NOT_FINITE }
}

/// `pour_convert_with` for every row.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_convert_n(
    conversion: Option<&Conversion>,
    rows: usize,
    values: *const f64,
    values_stride: isize,
    converted: *mut f64,
    converted_stride: isize,
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    guard(error, &mut || {
        let way = given("conversion", conversion)?.way();
        // SAFETY: the header asks for columns of `rows` numbers, or null.
        let (values, output) = unsafe {
            (
                Column::new("values", values, values_stride, rows)?,
                Output::new("converted", converted, converted_stride, statuses, rows)?,
            )
        };
        output.map(rows, [values], |[value]| way.apply(value).ok_or_else(|| bad([value])));
        Ok(())
    })
}

/// `pour_mass_of_volume` for every row.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_mass_of_volume_n(
    rows: usize,
    volumes_ml: *const f64,
    volumes_stride: isize,
    densities_g_per_ml: *const f64,
    densities_stride: isize,
    masses_g: *mut f64,
    masses_stride: isize,
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    guard(error, &mut || {
        // SAFETY: the header asks for columns of `rows` numbers, or null.
        let (columns, output) = unsafe {
            (
                [
                    Column::new("volumes_ml", volumes_ml, volumes_stride, rows)?,
                    Column::new("densities_g_per_ml", densities_g_per_ml, densities_stride, rows)?,
                ],
                Output::new("masses_g", masses_g, masses_stride, statuses, rows)?,
            )
        };
        output.map(rows, columns, |[volume, density]| {
            match TrueDensity::new(grams_per_milliliter(density)) {
                Ok(density) if believable(volume) => {
                    Ok(in_grams(density.mass_of(milliliters(volume))))
                }
                _ => Err(bad([volume, density])),
            }
        });
        Ok(())
    })
}

/// `pour_density_of_parts` for every row: a table of `rows` mixes by `parts` constituents.
///
/// The strides of a table are two: from row to row, and from part to part. Densities that are the same in every row
/// have a row stride of 0.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_density_of_parts_n(
    rows: usize,
    parts: usize,
    masses_g: *const f64,
    masses_row_stride: isize,
    masses_part_stride: isize,
    densities_g_per_ml: *const f64,
    densities_row_stride: isize,
    densities_part_stride: isize,
    voids: *const f64,
    voids_stride: isize,
    mixed_g_per_ml: *mut f64,
    mixed_stride: isize,
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    guard(error, &mut || {
        let table = |name: &'static str, start: *const f64, by_row: isize, by_part: isize| {
            check_reach(name, parts, by_part)?;
            let whole = by_row.unsigned_abs().checked_mul(rows);
            let whole = whole.zip(by_part.unsigned_abs().checked_mul(parts));
            let whole = whole.and_then(|(rows, parts)| rows.checked_add(parts));
            if whole.is_none_or(|whole| whole > isize::MAX as usize) {
                let most = isize::MAX as usize;
                return Err(Failure::at(name, &ArgumentError::TooLarge { most }));
            }
            // SAFETY: the header asks for tables of `rows` by `parts` numbers, or null.
            unsafe { Column::new(name, start, by_row, rows) }
        };
        let masses = table("masses_g", masses_g, masses_row_stride, masses_part_stride)?;
        let densities = table(
            "densities_g_per_ml",
            densities_g_per_ml,
            densities_row_stride,
            densities_part_stride,
        )?;
        // SAFETY: the header asks for columns of `rows` numbers, or null.
        let (voids, output) = unsafe {
            (
                Column::new("voids", voids, voids_stride, rows)?,
                Output::new("mixed_g_per_ml", mixed_g_per_ml, mixed_stride, statuses, rows)?,
            )
        };
        output.fill(rows, |row| {
            let part = |part: usize| {
                let part = part as isize;
                let mass = masses.moved(masses_part_stride * part).at(row);
                (mass, densities.moved(densities_part_stride * part).at(row))
            };
            let voids = voids.at(row);
            mixed((0..parts).map(part), voids)
        });
        Ok(())
    })
}

#[inline(always)]
fn mixed(parts: impl Iterator<Item = (f64, f64)> + Clone, voids: f64) -> Result<f64, i32> {
    let each = parts.clone().map(|(mass, g_per_ml)| (grams(mass), grams_per_milliliter(g_per_ml)));
    density_of_parts(each, voids).map(in_grams_per_milliliter).map_err(|_| {
        let mut numbers = parts.flat_map(|(mass, g_per_ml)| [mass, g_per_ml]).chain([voids]);
        if numbers.all(f64::is_finite) { POUR_REFUSED } else { POUR_NOT_FINITE }
    })
}

/// `pour_salt_for_density` for every row.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_salt_for_density_n(
    rows: usize,
    base_ml: *const f64,
    base_stride: isize,
    base_g_per_ml: *const f64,
    base_density_stride: isize,
    salt_g_per_ml: *const f64,
    salt_density_stride: isize,
    voids: *const f64,
    voids_stride: isize,
    density_g_per_ml: *const f64,
    density_stride: isize,
    salt_g: *mut f64,
    salt_stride: isize,
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    guard(error, &mut || {
        // SAFETY: the header asks for columns of `rows` numbers, or null.
        let (columns, output) = unsafe {
            (
                [
                    Column::new("base_ml", base_ml, base_stride, rows)?,
                    Column::new("base_g_per_ml", base_g_per_ml, base_density_stride, rows)?,
                    Column::new("salt_g_per_ml", salt_g_per_ml, salt_density_stride, rows)?,
                    Column::new("voids", voids, voids_stride, rows)?,
                    Column::new("density_g_per_ml", density_g_per_ml, density_stride, rows)?,
                ],
                Output::new("salt_g", salt_g, salt_stride, statuses, rows)?,
            )
        };
        output.map(rows, columns, |numbers| salt_for_density(numbers).map_err(|_| bad(numbers)));
        Ok(())
    })
}

/// `pour_piece_mass` for every row.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_piece_mass_n(
    rows: usize,
    cavity_ml: *const f64,
    cavity_stride: isize,
    hot_g_per_ml: *const f64,
    hot_stride: isize,
    cold_g_per_ml: *const f64,
    cold_stride: isize,
    voids: *const f64,
    voids_stride: isize,
    feed: *const f64,
    feed_stride: isize,
    piece_g: *mut f64,
    piece_stride: isize,
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    guard(error, &mut || {
        // SAFETY: the header asks for columns of `rows` numbers, or null.
        let (columns, output) = unsafe {
            (
                [
                    Column::new("cavity_ml", cavity_ml, cavity_stride, rows)?,
                    Column::new("hot_g_per_ml", hot_g_per_ml, hot_stride, rows)?,
                    Column::new("cold_g_per_ml", cold_g_per_ml, cold_stride, rows)?,
                    Column::new("voids", voids, voids_stride, rows)?,
                    Column::new("feed", feed, feed_stride, rows)?,
                ],
                Output::new("piece_g", piece_g, piece_stride, statuses, rows)?,
            )
        };
        output.map(rows, columns, |numbers| piece_mass(numbers).map_err(|_| bad(numbers)));
        Ok(())
    })
}
