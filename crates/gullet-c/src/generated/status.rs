// Written by gullet-c-gen: do not edit.
use core::ffi::CStr;

/// What came of a call: 0 done; below 0 an error, and nothing is written; above 0 done, with
/// doubts. Numbers are never used anew.
pub type gullet_status = i32;

/// Done.
pub const GULLET_OK: i32 = 0;
/// A value lies outside its admissible range.
pub const GULLET_ERROR_OUT_OF_RANGE: i32 = -10;
/// A value is not a finite number.
pub const GULLET_ERROR_NOT_FINITE: i32 = -11;
/// A count is not a whole number.
pub const GULLET_ERROR_NOT_WHOLE: i32 = -12;
/// The result is too large or too small for a number to hold.
pub const GULLET_ERROR_RESULT_OVERFLOW: i32 = -13;
/// A number stands without the unit it needs.
pub const GULLET_ERROR_UNIT_MISSING: i32 = -20;
/// The unit is not known, or belongs to another kind of quantity.
pub const GULLET_ERROR_UNIT_UNKNOWN: i32 = -21;
/// The text cannot be read as a number.
pub const GULLET_ERROR_NUMBER_UNREADABLE: i32 = -22;
/// A formula, material, machine, key or argument of this name does not exist.
pub const GULLET_ERROR_UNKNOWN_NAME: i32 = -30;
/// A required argument or key is missing.
pub const GULLET_ERROR_MISSING: i32 = -31;
/// The same argument, key or identifier is given twice.
pub const GULLET_ERROR_DUPLICATE: i32 = -32;
/// Two values that are each admissible contradict one another.
pub const GULLET_ERROR_INCONSISTENT: i32 = -33;
/// A value has the wrong type, such as text where a table belongs.
pub const GULLET_ERROR_WRONG_TYPE: i32 = -34;
/// The text of a file is not well-formed.
pub const GULLET_ERROR_SYNTAX: i32 = -40;
/// A row of a table is refused.
pub const GULLET_ERROR_BAD_ROW: i32 = -41;
/// A file cannot be read or written.
pub const GULLET_ERROR_FILE: i32 = -42;
/// The tables hold no value for this combination.
pub const GULLET_ERROR_NO_DATA: i32 = -50;
/// A limit is exceeded and nothing the practice may lower helps.
pub const GULLET_ERROR_LIMIT_EXCEEDED: i32 = -60;
/// No pass plan satisfies every limit.
pub const GULLET_ERROR_NO_PLAN: i32 = -61;
/// A value the tables do not give was assumed.
pub const GULLET_WARNING_ASSUMED: i32 = 1;
/// A value lies outside the range its model was tested in.
pub const GULLET_WARNING_OUTSIDE_VALIDITY: i32 = 2;
/// Sources disagree by more than a third.
pub const GULLET_WARNING_SOURCES_DISAGREE: i32 = 3;
/// The machine cannot do what was wanted; the nearest it can do was taken.
pub const GULLET_WARNING_MACHINE_LIMITS: i32 = 4;
/// A setting was lowered because of a limit.
pub const GULLET_WARNING_LOWERED: i32 = 5;
/// A rounding to what the readout can show.
pub const GULLET_WARNING_ROUNDED: i32 = 6;
/// A pointer is NULL that must not be.
pub const GULLET_ERROR_NULL_POINTER: i32 = -100;
/// A pointer is not aligned for what it points to.
pub const GULLET_ERROR_MISALIGNED: i32 = -101;
/// A count of values or bytes is more than memory can hold.
pub const GULLET_ERROR_TOO_LARGE: i32 = -102;
/// Memory that is written to overlaps other memory of the call.
pub const GULLET_ERROR_OVERLAP: i32 = -103;
/// A buffer is too short; the error and `needed_out` say how long it must be.
pub const GULLET_ERROR_BUFFER_TOO_SHORT: i32 = -104;
/// The struct_size of a struct is not set, or of a version that is not known.
pub const GULLET_ERROR_STRUCT_SIZE: i32 = -105;
/// Text is not UTF-8.
pub const GULLET_ERROR_TEXT_ENCODING: i32 = -106;
/// Arrow data contradict their schema, or hold text that is not UTF-8, or are spent.
pub const GULLET_ERROR_ARROW_DATA: i32 = -107;
/// A fault of the library; please report it.
pub const GULLET_ERROR_PANIC: i32 = -120;
/// Some rows have no result; each has its own status.
pub const GULLET_WARNING_ROWS_REFUSED: i32 = 100;

pub(crate) fn status_name(status: i32) -> &'static CStr {
    match status {
        GULLET_OK => c"ok",
        GULLET_ERROR_OUT_OF_RANGE => c"out_of_range",
        GULLET_ERROR_NOT_FINITE => c"not_finite",
        GULLET_ERROR_NOT_WHOLE => c"not_whole",
        GULLET_ERROR_RESULT_OVERFLOW => c"result_overflow",
        GULLET_ERROR_UNIT_MISSING => c"unit_missing",
        GULLET_ERROR_UNIT_UNKNOWN => c"unit_unknown",
        GULLET_ERROR_NUMBER_UNREADABLE => c"number_unreadable",
        GULLET_ERROR_UNKNOWN_NAME => c"unknown_name",
        GULLET_ERROR_MISSING => c"missing",
        GULLET_ERROR_DUPLICATE => c"duplicate",
        GULLET_ERROR_INCONSISTENT => c"inconsistent",
        GULLET_ERROR_WRONG_TYPE => c"wrong_type",
        GULLET_ERROR_SYNTAX => c"syntax",
        GULLET_ERROR_BAD_ROW => c"bad_row",
        GULLET_ERROR_FILE => c"file",
        GULLET_ERROR_NO_DATA => c"no_data",
        GULLET_ERROR_LIMIT_EXCEEDED => c"limit_exceeded",
        GULLET_ERROR_NO_PLAN => c"no_plan",
        GULLET_WARNING_ASSUMED => c"assumed",
        GULLET_WARNING_OUTSIDE_VALIDITY => c"outside_validity",
        GULLET_WARNING_SOURCES_DISAGREE => c"sources_disagree",
        GULLET_WARNING_MACHINE_LIMITS => c"machine_limits",
        GULLET_WARNING_LOWERED => c"lowered",
        GULLET_WARNING_ROUNDED => c"rounded",
        GULLET_ERROR_NULL_POINTER => c"null_pointer",
        GULLET_ERROR_MISALIGNED => c"misaligned",
        GULLET_ERROR_TOO_LARGE => c"too_large",
        GULLET_ERROR_OVERLAP => c"overlap",
        GULLET_ERROR_BUFFER_TOO_SHORT => c"buffer_too_short",
        GULLET_ERROR_STRUCT_SIZE => c"struct_size",
        GULLET_ERROR_TEXT_ENCODING => c"text_encoding",
        GULLET_ERROR_ARROW_DATA => c"arrow_data",
        GULLET_ERROR_PANIC => c"panic",
        GULLET_WARNING_ROWS_REFUSED => c"rows_refused",
        _ => c"unknown",
    }
}
