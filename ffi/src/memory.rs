//! Arguments of a host, checked before use: pointers, numbers, texts, arrays.

use std::ffi::{CStr, c_char};
use std::slice;
use std::str;

use pourwright::json::Name;
use pourwright::plan::budget::{BYTES_A_POT, is_there_memory};
use pourwright::quantity::Amount;

use crate::document::{POUR_MEMORY_PER_BYTE, POUR_MEMORY_PER_CALL, POUR_MEMORY_PER_POT};
use crate::failure::{ArgumentError, Failure};
use crate::status::*;

/// The longest text without a length of its own, in bytes: names, amounts, units.
const LONGEST_TEXT: usize = Amount::LONGEST;

// A name has at most four bytes for each of its characters.
const _: () = assert!(4 * Name::LONGEST <= LONGEST_TEXT);

/// Maximum number of items of an array that is not a column.
const MOST_ITEMS: usize = 1 << 20;

const _: () = assert!(POUR_MEMORY_PER_POT == BYTES_A_POT);

/// Tries whether the call can have the memory that it may need for `bytes` of documents and for `pots`. It is given back
/// at once: who allocates on another thread may take it.
pub(crate) fn try_memory(name: &str, bytes: usize, pots: usize) -> Result<(), Failure> {
    let documents = bytes.saturating_mul(POUR_MEMORY_PER_BYTE);
    let pots = pots.saturating_mul(POUR_MEMORY_PER_POT);
    let bytes = documents.saturating_add(pots).saturating_add(POUR_MEMORY_PER_CALL);
    if is_there_memory(bytes) {
        Ok(())
    } else {
        Err(Failure::at(name, &ArgumentError::OutOfMemory { bytes }))
    }
}

/// The reference that the parameter `name` is.
pub(crate) fn given<T>(name: &str, pointer: Option<T>) -> Result<T, Failure> {
    pointer.ok_or_else(|| Failure::at(name, &ArgumentError::Null))
}

/// The number that the parameter `name` is.
pub(crate) fn finite(name: &str, number: f64) -> Result<f64, Failure> {
    if number.is_finite() {
        Ok(number)
    } else {
        Err(Failure::at(name, &ArgumentError::NotFinite(number)))
    }
}

/// The input struct of a call, which begins with its size.
///
/// # Safety
/// `pointer` is null, or a size can be read there, and where it is that of `T`, so much, which stays as it is for `'a`.
pub(crate) unsafe fn input<'a, T>(pointer: *const T) -> Result<&'a T, Failure> {
    // SAFETY: as this function asks.
    unsafe { check_size("input", "size", pointer)? };
    // SAFETY: not null, aligned, and it has the size of a `T`.
    Ok(unsafe { &*pointer })
}

/// Checks that a struct begins with its size.
///
/// # Safety
/// `pointer` is null, or a size can be read there.
pub(crate) unsafe fn check_size<T>(
    name: &str,
    size: &str,
    pointer: *const T,
) -> Result<(), Failure> {
    if pointer.is_null() {
        return Err(Failure::at(name, &ArgumentError::Null));
    }
    if !pointer.is_aligned() {
        return Err(Failure::at(name, &ArgumentError::Misaligned(align_of::<T>())));
    }
    // SAFETY: not null, aligned, and by the contract of this function it can be read.
    let found = unsafe { pointer.cast::<usize>().read() };
    let own = size_of::<T>();
    if found == own {
        Ok(())
    } else {
        Err(Failure::at(size, &ArgumentError::StructSize { found, own }))
    }
}

/// The text that ends at its first NUL.
///
/// # Safety
/// `pointer` is null, or what it points to can be read up to a NUL and stays as it is for `'a`.
pub(crate) unsafe fn text<'a>(name: &str, pointer: *const c_char) -> Result<&'a str, Failure> {
    if pointer.is_null() {
        return Err(Failure::at(name, &ArgumentError::Null));
    }
    // SAFETY: not null, and by the contract of this function it ends.
    let bytes = unsafe { CStr::from_ptr(pointer) }.to_bytes();
    if bytes.len() > LONGEST_TEXT {
        return Err(Failure::at(name, &ArgumentError::TooLarge { most: LONGEST_TEXT }));
    }
    utf8(name, bytes)
}

/// The length that stands for "up to the NUL": `POUR_UP_TO_NUL` of the header.
pub(crate) const UP_TO_NUL: usize = usize::MAX;

/// The length `len`, or that up to the NUL.
///
/// # Safety
/// Where `len` is `UP_TO_NUL`, what `pointer` points to can be read up to a NUL.
unsafe fn length(pointer: *const c_char, len: usize) -> usize {
    match len {
        // SAFETY: by the contract of this function it ends.
        UP_TO_NUL => unsafe { CStr::from_ptr(pointer) }.count_bytes(),
        len => len,
    }
}

/// The document of `len` bytes or up to its NUL, for which there is memory.
///
/// # Safety
/// `pointer` is null, or `len` bytes can be read there, or all up to a NUL, and stay as they are for `'a`.
pub(crate) unsafe fn document<'a>(
    name: &str,
    pointer: *const c_char,
    len: usize,
) -> Result<&'a str, Failure> {
    if pointer.is_null() {
        return Err(Failure::at(name, &ArgumentError::Null));
    }
    // SAFETY: not null, and what this function asks for is what that one does.
    let len = unsafe { length(pointer, len) };
    let most = pourwright::json::text::LONGEST_DOCUMENT;
    if len > most {
        return Err(Failure::at(name, &ArgumentError::TooLarge { most }));
    }
    try_memory(name, len, 0)?;
    // SAFETY: not null, and by the contract of this function so long.
    utf8(name, unsafe { slice::from_raw_parts(pointer.cast(), len) })
}

/// The text of many documents, one a line, for which there is memory: for the longest of them and `more` bytes at a time.
///
/// # Safety
/// `pointer` is null, or `len` bytes can be read there, or all up to a NUL, and stay as they are for `'a`.
pub(crate) unsafe fn lines_of<'a>(
    name: &str,
    pointer: *const c_char,
    len: usize,
    more: usize,
) -> Result<&'a [u8], Failure> {
    if pointer.is_null() {
        return Err(Failure::at(name, &ArgumentError::Null));
    }
    // SAFETY: not null, and what this function asks for is what that one does.
    let len = unsafe { length(pointer, len) };
    let most = isize::MAX.unsigned_abs();
    if len > most {
        return Err(Failure::at(name, &ArgumentError::TooLarge { most }));
    }
    // SAFETY: not null, and by the contract of this function so long.
    let lines: &[u8] = unsafe { slice::from_raw_parts(pointer.cast(), len) };
    let longest = lines.split(|byte| *byte == b'\n').map(<[u8]>::len).max().unwrap_or(0);
    let longest = longest.min(pourwright::json::text::LONGEST_DOCUMENT);
    try_memory(name, longest.saturating_add(more), 0)?;
    Ok(lines)
}

/// Texts one after the other in one array of bytes, each with the offset of its start; the last also with that of its end.
#[derive(Clone, Copy)]
pub(crate) struct Texts {
    bytes: *const u8,
    offsets: *const i64,
}

impl Texts {
    /// # Safety
    /// Each pointer is null, or `rows + 1` offsets can be read and stay as they are until the call ends, as do the bytes
    /// from each offset to a next one that is not below it.
    pub(crate) unsafe fn new(
        rows: usize,
        texts: *const c_char,
        offsets: *const i64,
    ) -> Result<Self, Failure> {
        let most = isize::MAX as usize / size_of::<i64>() - 1;
        if rows > most {
            return Err(Failure::at("rows", &ArgumentError::TooLarge { most }));
        }
        let mut failures = Vec::new();
        for (name, is_null) in [("texts", texts.is_null()), ("offsets", offsets.is_null())] {
            if is_null && rows > 0 {
                failures.push(Failure::at(name, &ArgumentError::Null));
            }
        }
        if !offsets.is_aligned() {
            let error = ArgumentError::Misaligned(align_of::<i64>());
            failures.push(Failure::at("offsets", &error));
        }
        if !failures.is_empty() {
            return Err(Failure::all(failures));
        }
        Ok(Self { bytes: texts.cast(), offsets })
    }

    /// The text of a row, or the status of that row.
    ///
    /// # Safety
    /// `row` is below the rows of [`Texts::new`].
    pub(crate) unsafe fn at<'a>(self, row: usize) -> Result<&'a str, i32> {
        // SAFETY: there is one offset more than rows.
        let (start, end) = unsafe { (*self.offsets.add(row), *self.offsets.add(row + 1)) };
        let start = usize::try_from(start).map_err(|_| POUR_TOO_LARGE)?;
        let end = usize::try_from(end).map_err(|_| POUR_TOO_LARGE)?;
        let len =
            end.checked_sub(start).filter(|len| *len <= LONGEST_TEXT).ok_or(POUR_TOO_LARGE)?;
        // SAFETY: by the contract of `new` these bytes can be read.
        let bytes = unsafe { slice::from_raw_parts(self.bytes.add(start), len) };
        str::from_utf8(bytes).map_err(|_| POUR_NOT_UTF8)
    }
}

fn utf8<'a>(name: &str, bytes: &'a [u8]) -> Result<&'a str, Failure> {
    str::from_utf8(bytes)
        .map_err(|error| Failure::at(name, &ArgumentError::NotUtf8(error.valid_up_to())))
}

/// The array of `count` items. Null is an array of none.
///
/// # Safety
/// `pointer` is null, or `count` items can be read there and stay as they are for `'a`.
pub(crate) unsafe fn array<'a, T>(
    name: &str,
    pointer: *const T,
    count: usize,
) -> Result<&'a [T], Failure> {
    if count == 0 {
        return Ok(&[]);
    }
    if pointer.is_null() {
        return Err(Failure::at(name, &ArgumentError::Null));
    }
    if count > MOST_ITEMS {
        return Err(Failure::at(name, &ArgumentError::TooLarge { most: MOST_ITEMS }));
    }
    if !pointer.is_aligned() {
        return Err(Failure::at(name, &ArgumentError::Misaligned(align_of::<T>())));
    }
    // SAFETY: not null, aligned, and by the contract of this function so long.
    Ok(unsafe { slice::from_raw_parts(pointer, count) })
}
