//! What a call returns. Numbers are never reused; a status that falls out of use stays here as a comment.

/// The call did what it says; its results are written.
pub const POUR_OK: i32 = 0;
/// A pointer is null that must not be.
pub const POUR_NULL: i32 = 1;
/// A number is NaN or infinite.
pub const POUR_NOT_FINITE: i32 = 2;
/// A text is not valid UTF-8.
pub const POUR_NOT_UTF8: i32 = 3;
/// A text, an array or a stride is larger than is believed.
pub const POUR_TOO_LARGE: i32 = 4;
/// A number that stands for a word (a measuring system, a scale, ...) stands for none.
pub const POUR_UNKNOWN_NUMBER: i32 = 5;
/// The numbers or documents do not go together; the faults say what is wrong, where, and what would do.
pub const POUR_REFUSED: i32 = 6;
/// A defect of the library, which it survived. Please report it. Free the handles of the call, and use them no more.
pub const POUR_PANIC: i32 = 7;
/// An array does not begin where its items can lie.
pub const POUR_MISALIGNED: i32 = 8;
