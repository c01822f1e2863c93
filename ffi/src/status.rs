//! Return values of calls. Numbers are never reused; a status that is no longer used stays here as a comment.

/// The call is done; its results are written.
pub const POUR_OK: i32 = 0;
/// A pointer is null that must not be.
pub const POUR_NULL: i32 = 1;
/// A number is NaN or infinite.
pub const POUR_NOT_FINITE: i32 = 2;
/// A text is not valid UTF-8.
pub const POUR_NOT_UTF8: i32 = 3;
/// A text, an array or a stride is larger than is believed.
pub const POUR_TOO_LARGE: i32 = 4;
/// A number for a word (a measuring system, a scale, ...) that is not one of them.
pub const POUR_UNKNOWN_NUMBER: i32 = 5;
/// The numbers or documents do not go together; the faults have what is wrong, where, and what would fix it.
pub const POUR_REFUSED: i32 = 6;
/// A defect of the library, which it survived. Please report it. Free the handles of the call, and use them no more.
pub const POUR_PANIC: i32 = 7;
/// An array does not begin where its items can lie.
pub const POUR_MISALIGNED: i32 = 8;
/// The caller stopped the plan.
pub const POUR_STOPPED: i32 = 9;
/// The plan takes more pots or more work than its budget; the fault has the numbers.
pub const POUR_OVER_BUDGET: i32 = 10;
/// There is not enough memory for the document or the plan.
pub const POUR_OUT_OF_MEMORY: i32 = 11;
