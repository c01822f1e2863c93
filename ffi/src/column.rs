//! Columns of numbers in the host's memory, read and written without copying and without allocation.

use crate::failure::{ArgumentError, BAD, Failure, keep};
use crate::status::*;

/// From one number to the next of a plain array.
const PACKED: isize = size_of::<f64>() as isize;

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
