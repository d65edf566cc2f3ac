//! Failures, and the last one of each thread.

use crate::generated::status::*;
use core::cell::RefCell;
use core::ffi::c_char;
use gullet::Problem;
use std::ffi::CString;
use std::panic::PanicHookInfo;

/// Why a call has no result.
#[derive(Debug)]
pub enum Failure {
    /// The core's problems.
    Core(gullet::Error),
    /// What only this interface can refuse.
    Own(Box<Fault>),
}

/// A problem with a pointer, a length or a size.
#[derive(Debug)]
pub struct Fault {
    pub(crate) status: i32,
    pub(crate) parameter: String,
    pub(crate) value: String,
    pub(crate) admissible: String,
    pub(crate) remedy: String,
}

impl From<gullet::Error> for Failure {
    fn from(error: gullet::Error) -> Failure {
        Failure::Core(error)
    }
}

impl From<Problem> for Failure {
    fn from(problem: Problem) -> Failure {
        Failure::Core(problem.into())
    }
}

/// A failure of this interface's own.
#[cold]
pub(crate) fn fault(
    status: i32,
    parameter: &str,
    value: impl Into<String>,
    admissible: impl Into<String>,
    remedy: impl Into<String>,
) -> Failure {
    Failure::Own(Box::new(Fault {
        status,
        parameter: parameter.to_owned(),
        value: value.into(),
        admissible: admissible.into(),
        remedy: remedy.into(),
    }))
}

/// A problem as C reads it.
pub(crate) struct Kept {
    status: i32,
    parameter: CString,
    value: CString,
    admissible: CString,
    remedy: CString,
    message: CString,
}

/// The problems of the last failure of a thread, and all of them as one text.
#[derive(Default)]
struct Last {
    problems: Vec<Kept>,
    message: CString,
}

thread_local! {
    static LAST: RefCell<Last> = RefCell::new(Last::default());
}

/// Text that C can read: a NUL inside would cut it off.
fn text(text: &str) -> CString {
    CString::new(text.replace('\0', "\\0")).unwrap_or_default()
}

impl Kept {
    pub(crate) fn problem(problem: &Problem) -> Kept {
        Kept {
            status: -problem.code.number(),
            parameter: text(&problem.parameter),
            value: text(&problem.value),
            admissible: text(&problem.admissible),
            remedy: text(&problem.remedy),
            message: text(&problem.to_string()),
        }
    }

    /// Its status and texts: parameter, value, admissible, remedy, message.
    pub(crate) fn told(&self) -> (i32, [*const c_char; 5]) {
        let texts = [
            &self.parameter,
            &self.value,
            &self.admissible,
            &self.remedy,
            &self.message,
        ];
        (self.status, texts.map(|text| text.as_ptr()))
    }

    fn fault(fault: &Fault) -> Kept {
        let name = status_name(fault.status).to_string_lossy();
        let mut message = format!("{name}: {}", fault.parameter);
        if !fault.value.is_empty() {
            message += &format!(" = {}", fault.value);
        }
        if !fault.admissible.is_empty() {
            message += &format!("; admissible: {}", fault.admissible);
        }
        message += &format!("; {}", fault.remedy);
        Kept {
            status: fault.status,
            parameter: text(&fault.parameter),
            value: text(&fault.value),
            admissible: text(&fault.admissible),
            remedy: text(&fault.remedy),
            message: text(&message),
        }
    }
}

/// Keeps a failure as the last one of this thread and gives its status.
#[cold]
pub(crate) fn keep(failure: Failure) -> i32 {
    let problems: Vec<Kept> = match failure {
        Failure::Core(error) => error.problems().iter().map(Kept::problem).collect(),
        Failure::Own(fault) => vec![Kept::fault(&fault)],
    };
    let status = problems.first().map_or(GULLET_ERROR_PANIC, |p| p.status);
    let mut all = Vec::new();
    for problem in &problems {
        if !all.is_empty() {
            all.push(b'\n');
        }
        all.extend_from_slice(problem.message.as_bytes());
    }
    let message = CString::new(all).unwrap_or_default();
    // A thread that is ending has no last error any more.
    let _ = LAST.try_with(|last| {
        if let Ok(mut last) = last.try_borrow_mut() {
            *last = Last { problems, message };
        }
    });
    status
}

/// Keeps what a panic says.
pub(crate) fn keep_panic(info: &PanicHookInfo<'_>) {
    let payload = info.payload();
    let said = payload
        .downcast_ref::<&str>()
        .copied()
        .or_else(|| payload.downcast_ref::<String>().map(String::as_str))
        .unwrap_or("no message");
    let place = info
        .location()
        .map(|l| format!("{}:{}", l.file(), l.line()));
    keep(fault(
        GULLET_ERROR_PANIC,
        "gullet",
        format!("{said} at {}", place.unwrap_or_default()),
        "",
        "a fault of the library: please report it with the call that led to it",
    ));
}

/// Number of problems of the last failure.
pub(crate) fn count() -> usize {
    LAST.try_with(|last| last.try_borrow().map_or(0, |last| last.problems.len()))
        .unwrap_or(0)
}

/// The last failure's text; stays where it is until the next failure of this thread.
pub(crate) fn message() -> *const c_char {
    LAST.try_with(|last| {
        last.try_borrow()
            .map_or(c"".as_ptr(), |last| last.message.as_ptr())
    })
    .unwrap_or(c"".as_ptr())
}

/// The status of a problem and its texts: parameter, value, admissible, remedy, message.
pub(crate) fn problem(index: usize) -> Option<(i32, [*const c_char; 5])> {
    LAST.try_with(|last| {
        let last = last.try_borrow().ok()?;
        Some(last.problems.get(index)?.told())
    })
    .ok()
    .flatten()
}
