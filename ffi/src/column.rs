//! Columns of numbers in the host's memory, read and written without copying and without allocation.

use crate::failure::{ArgumentError, BAD, Failure, keep};
use crate::status::*;

/// From one number to the next of a plain array.
const PACKED: isize = size_of::<f64>() as isize;

/// Rows that are calculated together: their numbers stay in the cache next to the processor.
const BLOCK: usize = 64;

/// The numbers of `N` columns in a block of rows.
type Block<const N: usize> = [[f64; BLOCK]; N];

/// A column of numbers. Null is not a column: the parameter is omitted in every row.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_column {
    /// The number of the first row.
    pub start: *const f64,
    /// From one number to the next, in bytes: 8 for a plain array, 0 to repeat one number.
    pub stride: isize,
}

/// A column that receives results. Null is not a column: that result is not written.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_result_column {
    /// The place of the first row.
    pub start: *mut f64,
    /// From one place to the next, in bytes: 8 for a plain array.
    pub stride: isize,
}

/// A column with the name of its parameter.
#[derive(Clone, Copy)]
pub(crate) struct Named<Column> {
    name: &'static str,
    column: Column,
}

impl pour_column {
    /// The column of a parameter that must be given.
    pub(crate) fn required(self, name: &'static str) -> Named<Self> {
        Named { name, column: self }
    }

    /// The column of a parameter that may be omitted.
    pub(crate) fn optional(self, name: &'static str) -> Named<Self> {
        static OMITTED: f64 = crate::call::POUR_OMITTED;
        let omitted = Self { start: &raw const OMITTED, stride: 0 };
        Named { name, column: if self.start.is_null() { omitted } else { self } }
    }
}

impl pour_result_column {
    pub(crate) fn named(self, name: &'static str) -> Named<Self> {
        Named { name, column: self }
    }
}

/// Whether `rows` rows at `stride` from each other fit the address space.
pub(crate) fn check_reach(name: &str, rows: usize, stride: isize) -> Result<(), Failure> {
    let most = isize::MAX as usize / size_of::<f64>();
    let reach =
        stride.unsigned_abs().checked_mul(rows).filter(|reach| *reach <= isize::MAX as usize);
    match reach {
        Some(_) if rows <= most => Ok(()),
        _ => Err(Failure::at(name, &ArgumentError::TooLarge { most })),
    }
}

/// A column that is checked.
#[derive(Clone, Copy)]
pub(crate) struct Column {
    start: *const u8,
    stride: isize,
}

impl Column {
    /// # Safety
    /// `start` is null, or a number can be read at each of `rows` strides from it until the call ends.
    pub(crate) unsafe fn new(
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
    pub(crate) fn at(self, row: usize) -> f64 {
        // SAFETY: by the contract of `new`, and `check_reach` saw to it that the product does not overflow. Any address
        // will do, aligned or not.
        unsafe { self.start.offset(self.stride * row as isize).cast::<f64>().read_unaligned() }
    }

    /// Copies the numbers of the rows from `first` on, each below the rows of the column.
    #[inline(always)]
    fn read(self, first: usize, numbers: &mut [f64]) {
        if self.stride == PACKED {
            // SAFETY: as in `at`; `numbers` is of this library, so that nothing overlaps.
            unsafe {
                let from = self.start.offset(PACKED * first as isize);
                from.copy_to_nonoverlapping(numbers.as_mut_ptr().cast(), size_of_val(numbers));
            }
        } else {
            numbers.iter_mut().zip(first..).for_each(|(number, row)| *number = self.at(row));
        }
    }

    /// The same, `further` bytes on.
    #[inline(always)]
    pub(crate) fn moved(self, further: isize) -> Self {
        Self { start: self.start.wrapping_offset(further), ..self }
    }
}

/// The columns of the parameters.
pub(crate) struct Inputs<const K: usize>([Column; K]);

impl<const K: usize> Inputs<K> {
    /// # Safety
    /// As [`Column::new`], for each.
    pub(crate) unsafe fn new(
        rows: usize,
        columns: [Named<pour_column>; K],
    ) -> Result<Self, Failure> {
        let mut read = [Column { start: std::ptr::null(), stride: 0 }; K];
        let mut failures = Vec::new();
        for (place, Named { name, column }) in read.iter_mut().zip(columns) {
            // SAFETY: as this function asks.
            match unsafe { Column::new(name, column.start, column.stride, rows) } {
                Ok(column) => *place = column,
                Err(failure) => failures.push(failure),
            }
        }
        if failures.is_empty() { Ok(Self(read)) } else { Err(Failure::all(failures)) }
    }

    /// The columns.
    pub(crate) fn columns(self) -> [Column; K] {
        self.0
    }
}

/// Where the results of one kind go.
#[derive(Clone, Copy)]
struct Place {
    start: *mut u8,
    stride: isize,
}

impl Place {
    #[inline(always)]
    fn put(self, row: usize, number: f64) {
        // SAFETY: as in `Column::at`.
        unsafe {
            self.start.offset(self.stride * row as isize).cast::<f64>().write_unaligned(number)
        }
    }
}

impl Place {
    /// Writes the numbers of the rows from `first` on.
    #[inline(always)]
    fn write(self, first: usize, numbers: &[f64]) {
        if self.stride == PACKED {
            // SAFETY: as in `Column::read`.
            unsafe {
                let to = self.start.offset(PACKED * first as isize);
                to.copy_from_nonoverlapping(numbers.as_ptr().cast(), size_of_val(numbers));
            }
        } else {
            numbers.iter().zip(first..).for_each(|(number, row)| self.put(row, *number));
        }
    }
}

/// What makes the results of a row from its numbers.
pub(crate) trait Rows<const K: usize, const M: usize> {
    /// The results for any numbers, and whether they are those of `calculate`. Always inlined, so that a loop over it is
    /// made wide.
    fn total(&self, row: [f64; K]) -> ([f64; M], bool);

    /// The results, or the status of the row.
    fn calculate(&self, row: [f64; K]) -> Result<[f64; M], i32>;
}

/// Calculates a block of rows; whether all are answers.
#[allow(clippy::indexing_slicing, reason = "rows of a block, which the compiler knows")]
#[inline(always)]
fn calculate_block<const K: usize, const M: usize>(
    given: &Block<K>,
    found: &mut Block<M>,
    rows: &impl Rows<K, M>,
) -> bool {
    let mut are_answers = true;
    for row in 0..BLOCK {
        let (results, is_answer) = rows.total(std::array::from_fn(|column| given[column][row]));
        for (column, result) in found.iter_mut().zip(results) {
            column[row] = result;
        }
        are_answers &= is_answer;
    }
    are_answers
}

/// The same, four rows at a time.
#[cfg(target_arch = "x86_64")]
#[target_feature(enable = "avx2")]
fn calculate_block_wide<const K: usize, const M: usize>(
    given: &Block<K>,
    found: &mut Block<M>,
    rows: &impl Rows<K, M>,
) -> bool {
    calculate_block(given, found, rows)
}

/// The way of this processor to calculate blocks. All ways give the same bits: each row has the same operations in the
/// same order, and none that rounds once for two, which Rust never makes of a product and a sum.
#[inline(always)]
fn by_processor<const K: usize, const M: usize>(
    given: &Block<K>,
    found: &mut Block<M>,
    rows: &impl Rows<K, M>,
) -> bool {
    #[cfg(target_arch = "x86_64")]
    if std::arch::is_x86_feature_detected!("avx2") {
        // SAFETY: the processor has it.
        return unsafe { calculate_block_wide(given, found, rows) };
    }
    calculate_block(given, found, rows)
}

/// Where the results go: their columns, and the statuses where they are asked for.
pub(crate) struct Outputs<const M: usize> {
    rows: usize,
    places: [Place; M],
    statuses: *mut i32,
}

impl<const M: usize> Outputs<M> {
    /// # Safety
    /// As [`Column::new`], for writing; `statuses` is null, or `rows` numbers can be written there.
    pub(crate) unsafe fn new(
        rows: usize,
        columns: [Named<pour_result_column>; M],
        statuses: *mut i32,
    ) -> Result<Self, Failure> {
        let mut failures = Vec::new();
        if rows > 0 && statuses.is_null() && columns.iter().all(|out| out.column.start.is_null()) {
            let name = columns.first().map_or("results", |out| out.name);
            failures.push(Failure::at(name, &ArgumentError::Null));
        }
        for Named { name, column } in columns {
            if column.start.is_null() {
                continue;
            }
            if column.stride.unsigned_abs() < size_of::<f64>() && rows > 1 {
                failures.push(Failure::at(name, &ArgumentError::OutputStride(column.stride)));
            }
            keep(&mut failures, check_reach(name, rows, column.stride));
        }
        if !statuses.is_null() && !statuses.is_aligned() {
            let error = ArgumentError::Misaligned(align_of::<i32>());
            failures.push(Failure::at("statuses", &error));
        }
        if !failures.is_empty() {
            return Err(Failure::all(failures));
        }
        let places =
            columns.map(|out| Place { start: out.column.start.cast(), stride: out.column.stride });
        Ok(Self { rows, places, statuses })
    }

    /// Writes every row. Each is read before it is written, so that results may replace a column of the same strides.
    #[inline(always)]
    pub(crate) fn fill(self, row: impl Fn(usize) -> Result<[f64; M], i32>) {
        // What is not asked for is written to one place, over and over.
        let mut nowhere = 0.0_f64;
        let nowhere = Place { start: (&raw mut nowhere).cast(), stride: 0 };
        let places = self.places.map(|place| if place.start.is_null() { nowhere } else { place });
        let put = |i: usize, found: [f64; M]| {
            for (place, number) in places.iter().zip(found) {
                place.put(i, number);
            }
        };
        if self.statuses.is_null() {
            for i in 0..self.rows {
                put(i, row(i).unwrap_or([BAD; M]));
            }
        } else {
            for i in 0..self.rows {
                let found = row(i);
                put(i, found.unwrap_or([BAD; M]));
                // SAFETY: by the contract of `new`; it is not null.
                unsafe { self.statuses.add(i).write(found.err().unwrap_or(POUR_OK)) }
            }
        }
    }

    /// As `map`, many rows at a time. Each row is read before it is written, as in `fill`.
    #[inline(always)]
    pub(crate) fn map_blocks<const K: usize>(self, inputs: Inputs<K>, rows: &impl Rows<K, M>) {
        let Inputs(columns) = inputs;
        let (mut given, mut found) = ([[0.0; BLOCK]; K], [[0.0; BLOCK]; M]);
        if self.rows > 0 {
            for (column, numbers) in columns.iter().zip(&mut given) {
                if column.stride == 0 {
                    numbers.fill(column.at(0));
                }
            }
        }
        let mut block = |first: usize, count: usize| {
            for (column, numbers) in columns.iter().zip(&mut given) {
                if column.stride != 0 {
                    let (numbers, rest) = numbers.split_at_mut(count);
                    column.read(first, numbers);
                    // Behind the last row is a copy of it.
                    rest.fill(numbers.last().copied().unwrap_or(BAD));
                }
            }
            let are_answers = by_processor(&given, &mut found, rows);
            if !are_answers || !self.statuses.is_null() {
                self.each_of_block(first, count, are_answers, &given, &mut found, rows);
            }
            for (place, numbers) in self.places.iter().zip(&found) {
                if !place.start.is_null() {
                    place.write(first, numbers.split_at(count).0);
                }
            }
        };
        let full = self.rows - self.rows % BLOCK;
        for first in (0..full).step_by(BLOCK) {
            block(first, BLOCK);
        }
        if full < self.rows {
            block(full, self.rows - full);
        }
    }

    /// The statuses of a block, and the results of its rows one by one where one is not an answer.
    #[allow(clippy::indexing_slicing, reason = "a block has `count` rows at least")]
    fn each_of_block<const K: usize>(
        &self,
        first: usize,
        count: usize,
        are_answers: bool,
        given: &Block<K>,
        found: &mut Block<M>,
        rows: &impl Rows<K, M>,
    ) {
        for row in 0..count {
            let mut status = POUR_OK;
            if !are_answers {
                let result = rows.calculate(std::array::from_fn(|column| given[column][row]));
                status = result.err().unwrap_or(POUR_OK);
                for (column, number) in found.iter_mut().zip(result.unwrap_or([BAD; M])) {
                    column[row] = number;
                }
            }
            if !self.statuses.is_null() {
                // SAFETY: by the contract of `new`; it is not null.
                unsafe { self.statuses.add(first + row).write(status) }
            }
        }
    }

    /// Writes every row as `of` gives it from the numbers of the columns. Plain arrays get a loop of their own, with
    /// strides that the compiler knows.
    #[inline(always)]
    pub(crate) fn map<const K: usize>(
        self,
        inputs: Inputs<K>,
        of: impl Fn([f64; K]) -> Result<[f64; M], i32>,
    ) {
        let Inputs(columns) = inputs;
        if columns.iter().all(|column| column.stride == PACKED) {
            let columns = columns.map(Column::packed);
            self.fill(|row| of(columns.map(|column| column.at(row))));
        } else {
            self.fill(|row| of(columns.map(|column| column.at(row))));
        }
    }
}
