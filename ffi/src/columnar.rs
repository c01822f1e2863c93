//! Columnar calls that are not of a calculation on numbers alone: conversions that are prepared, mixes of parts.

use std::ffi::c_char;
use std::mem::MaybeUninit;

use pourwright::mix::density_of_parts;
use pourwright::parameter::{Parameter, PlainUnit};
use pourwright::quantity::{Amount, Conversion as Way, Mass, MassDensity, Measurable};

use crate::column::{Column, Inputs, Outputs, Rows, check_reach, pour_column, pour_result_column};
use crate::convert::{Conversion, system, unit};
use crate::error::Error;
use crate::failure::{ArgumentError, Failure, Refused, status_of, together};
use crate::guard::guard;
use crate::memory::{Texts, given};
use crate::status::*;

/// A table of numbers: rows by parts.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct pour_table {
    /// The number of the first part of the first row.
    pub start: *const f64,
    /// From one row to the next, in bytes; 0 where every row is the same.
    pub row_stride: isize,
    /// From one part of a row to the next, in bytes.
    pub part_stride: isize,
}

/// `pour_convert_with` for every row.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_convert_with_n(
    conversion: Option<&Conversion>,
    rows: usize,
    values: pour_column,
    converted: pour_result_column,
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    guard(error, &mut || {
        // SAFETY: the header asks for columns of `rows` numbers, or null.
        let (inputs, outputs) = unsafe {
            (
                Inputs::new(rows, [values.required("values")]),
                Outputs::new(rows, [converted.named("converted")], statuses),
            )
        };
        together! {
            conversion = given("conversion", conversion);
            inputs = inputs;
            outputs = outputs;
        }
        outputs.map_blocks(inputs, &conversion.way());
        Ok(())
    })
}

impl Rows<1, 1> for Way {
    #[inline(always)]
    fn total(&self, [value]: [f64; 1]) -> ([f64; 1], bool) {
        let (converted, is_answer) = Way::total(self, value);
        ([converted], is_answer)
    }

    fn calculate(&self, [value]: [f64; 1]) -> Result<[f64; 1], i32> {
        let refused = if value.is_finite() { POUR_REFUSED } else { POUR_NOT_FINITE };
        self.apply(value).map(|converted| [converted]).ok_or(refused)
    }
}

/// `pour_convert` for every row: amounts as texts, such as a table of a shop has them, to numbers of one unit.
///
/// The text of row i is the bytes of `texts` from `offsets[i]` up to `offsets[i + 1]`, so there are `rows + 1` offsets; an
/// Arrow array of large strings has both. No NUL ends a text. `measures` (`POUR_MEASURES_METRIC`, ...; 0 for US customary)
/// counts for all rows. The status of a row: `POUR_REFUSED` where the text is not an amount of that kind,
/// `POUR_NOT_UTF8`, or `POUR_TOO_LARGE` for more than 512 bytes or offsets that decrease.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_convert_texts_n(
    rows: usize,
    texts: *const c_char,
    offsets: *const i64,
    to: *const c_char,
    measures: i32,
    converted: pour_result_column,
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    guard(error, &mut || {
        // SAFETY: the header asks for `rows + 1` offsets, for the bytes between them, for a text that ends, and for columns of
        // `rows`, or null.
        let (texts, to, outputs) = unsafe {
            (
                Texts::new(rows, texts, offsets),
                unit("to", to),
                Outputs::new(rows, [converted.named("converted")], statuses),
            )
        };
        together! {
            texts = texts;
            to = to;
            measures = system(measures);
            outputs = outputs;
        }
        outputs.fill(|row| {
            // SAFETY: `row` is below `rows`.
            let text = unsafe { texts.at(row) }?;
            let amount = Amount::parse(text).map_err(|error| status_of(&error))?;
            let amount = amount.in_unit(to, measures).map_err(|error| status_of(&error))?;
            Ok([amount.value().to_f64()])
        });
        Ok(())
    })
}

/// `pour_density_of_parts` for every row: a table of `rows` mixes by `parts` constituents.
///
/// Densities that are the same in every row have a row stride of 0. `voids` may have no column: 0 counts.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_density_of_parts_n(
    rows: usize,
    parts: usize,
    masses_g: pour_table,
    densities_g_per_ml: pour_table,
    voids: pour_column,
    density_g_per_ml: pour_result_column,
    statuses: *mut i32,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    guard(error, &mut || {
        // SAFETY: the header asks for tables and columns of `rows` by `parts` numbers, or null.
        let (masses, densities, inputs, outputs) = unsafe {
            (
                masses_g.column("masses_g", rows, parts),
                densities_g_per_ml.column("densities_g_per_ml", rows, parts),
                Inputs::new(rows, [voids.optional("voids")]),
                Outputs::new(rows, [density_g_per_ml.named("density_g_per_ml")], statuses),
            )
        };
        together! {
            _parts = Parameter::Parts.check_si(parts as f64).in_parameter("parts");
            masses = masses;
            densities = densities;
            inputs = inputs;
            outputs = outputs;
        }
        let [voids] = inputs.columns();
        outputs.fill(|row| {
            let part = |part: usize| {
                let part = part as isize;
                let mass = masses.moved(masses_g.part_stride * part).at(row);
                (mass, densities.moved(densities_g_per_ml.part_stride * part).at(row))
            };
            let voids = pourwright::table::plain::given(voids.at(row)).unwrap_or(0.0);
            mixed((0..parts).map(part), voids)
        });
        Ok(())
    })
}

impl pour_table {
    /// The first part of each row.
    ///
    /// # Safety
    /// `start` is null, or a number can be read for each row and part.
    unsafe fn column(self, name: &str, rows: usize, parts: usize) -> Result<Column, Failure> {
        check_reach(name, parts, self.part_stride)?;
        let whole = self.row_stride.unsigned_abs().checked_mul(rows);
        let whole = whole.zip(self.part_stride.unsigned_abs().checked_mul(parts));
        let whole = whole.and_then(|(rows, parts)| rows.checked_add(parts));
        if whole.is_none_or(|whole| whole > isize::MAX as usize) {
            let most = isize::MAX as usize;
            return Err(Failure::at(name, &ArgumentError::TooLarge { most }));
        }
        // SAFETY: as this function asks.
        unsafe { Column::new(name, self.start, self.row_stride, rows) }
    }
}

#[inline(always)]
fn mixed(parts: impl Iterator<Item = (f64, f64)>, voids: f64) -> Result<[f64; 1], i32> {
    let each = parts.map(|(mass, density)| {
        (
            Mass::from_si(PlainUnit::Gram.to_si(mass)),
            MassDensity::from_si(PlainUnit::GramPerMilliliter.to_si(density)),
        )
    });
    match density_of_parts(each, voids) {
        Ok(density) => Ok([PlainUnit::GramPerMilliliter.from_si(density.si())]),
        Err(error) => Err(status_of(&error)),
    }
}
