//! What a status and a limit are called, and what the last failure of a thread says.

use crate::failure;
use crate::generated::records::limit_texts;
use crate::generated::status::*;
use crate::structs::{Sized32, room};
use core::ffi::c_char;

/// One problem. The texts of gullet_last_error stay valid until the next call on the same thread that
/// fails, those of gullet_study_report_problem until the report is freed.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct gullet_problem {
    /// sizeof(gullet_problem); set by gullet_problem_init().
    pub struct_size: u32,
    /// Status of the problem; the first problem's is what the call returned.
    pub status: gullet_status,
    /// Name of the argument, key or column, without the suffix of its unit; a path such as
    /// cutter.teeth in a job file.
    pub parameter: *const c_char,
    /// The offending value as given, with its unit; empty where there is none.
    pub value: *const c_char,
    /// The admissible range or the names that would do; empty where there is none.
    pub admissible: *const c_char,
    /// What to do about it.
    pub remedy: *const c_char,
    /// All of it in one line.
    pub message: *const c_char,
}

// SAFETY: `repr(C)`, pointers and numbers, the size first.
unsafe impl Sized32 for gullet_problem {
    const NAME: &'static str = "gullet_problem";
    const FIRST: usize = 48;
}

impl gullet_problem {
    /// A status with its texts.
    pub(crate) fn of(
        (status, [parameter, value, admissible, remedy, message]): (i32, [*const c_char; 5]),
    ) -> gullet_problem {
        gullet_problem {
            struct_size: size_of::<gullet_problem>() as u32,
            status,
            parameter,
            value,
            admissible,
            remedy,
            message,
        }
    }
}

/// Name of a status, such as "out_of_range"; "unknown" for a number that is none. Static.
#[unsafe(no_mangle)]
pub extern "C" fn gullet_status_name(status: gullet_status) -> *const c_char {
    status_name(status).as_ptr()
}

/// The last failure of this thread in words, a line a problem; empty before the first one. Read it
/// after a call that failed: a call that succeeds leaves it as it is. Valid until the next failure
/// of this thread.
#[unsafe(no_mangle)]
pub extern "C" fn gullet_last_error_message() -> *const c_char {
    failure::message()
}

/// Number of problems of the last failure of this thread: all that were found are told at once.
#[unsafe(no_mangle)]
pub extern "C" fn gullet_last_error_count() -> usize {
    failure::count()
}

/// A problem of the last failure of this thread, from 0. Leaves the last failure as it is, also
/// where it fails itself: with GULLET_ERROR_OUT_OF_RANGE there is no such problem.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_last_error(
    index: usize,
    problem: *mut gullet_problem,
) -> gullet_status {
    // Outside the guard, which would keep a failure of this call; nothing here computes or panics.
    let Some(told) = failure::problem(index) else {
        return GULLET_ERROR_OUT_OF_RANGE;
    };
    // SAFETY: the caller's promise in the header.
    match unsafe { room(problem, "problem") } {
        Ok(room) => {
            room.write(gullet_problem::of(told));
            GULLET_OK
        }
        Err(failure::Failure::Own(fault)) => fault.status,
        Err(failure::Failure::Core(_)) => GULLET_ERROR_PANIC,
    }
}

/// The status that says which doubt is the first of a set.
pub(crate) fn doubtful(bits: u32) -> gullet_status {
    if bits == 0 {
        GULLET_OK
    } else {
        bits.trailing_zeros() as gullet_status
    }
}

/// Name of a limit, such as "power"; empty for a number that is none. Static.
#[unsafe(no_mangle)]
pub extern "C" fn gullet_limit_name(limit: i32) -> *const c_char {
    limit_texts(limit).0.as_ptr()
}

/// SI unit of a limit's value and bound as text; empty for a pure number. Static.
#[unsafe(no_mangle)]
pub extern "C" fn gullet_limit_unit(limit: i32) -> *const c_char {
    limit_texts(limit).1.as_ptr()
}
