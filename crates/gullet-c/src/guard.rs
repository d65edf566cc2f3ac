//! What every entry runs in: no panic leaves it, and the caller's state is as before.

use crate::failure::{self, Failure};
use crate::generated::status::GULLET_ERROR_PANIC;
use crate::host::Host;
use core::cell::Cell;
use std::panic::{AssertUnwindSafe, PanicHookInfo, catch_unwind, set_hook, take_hook};
use std::sync::Once;

thread_local! {
    /// Whether this thread is inside the library.
    static INSIDE: Cell<bool> = const { Cell::new(false) };
}

static QUIET: Once = Once::new();

/// Panics inside the library print nothing: they are told by the last error. Others go where they
/// went, in a Rust program that links the library beside code of its own.
#[cold]
#[inline(never)]
fn quiet() {
    QUIET.call_once(|| {
        let before = take_hook();
        set_hook(Box::new(move |info: &PanicHookInfo<'_>| {
            if INSIDE.get() {
                failure::keep_panic(info);
            } else {
                before(info);
            }
        }));
    });
}

/// Runs the body of an entry and gives its status; a failure is kept as the thread's last error.
#[inline(always)]
pub fn guard(body: impl FnOnce() -> Result<i32, Failure>) -> i32 {
    if !QUIET.is_completed() {
        quiet();
    }
    let host = Host::enter();
    let status = caught(body);
    drop(host);
    status
}

/// Never inlined, so that no computation moves out of the state the host guard sets.
#[inline(never)]
fn caught(body: impl FnOnce() -> Result<i32, Failure>) -> i32 {
    INSIDE
        .try_with(|inside| {
            let outer = inside.replace(true);
            let status = settled(body);
            inside.set(outer);
            status
        })
        .unwrap_or(GULLET_ERROR_PANIC)
}

/// The status of a body, whatever becomes of it.
#[inline(always)]
fn settled(body: impl FnOnce() -> Result<i32, Failure>) -> i32 {
    match catch_unwind(AssertUnwindSafe(body)) {
        Ok(Ok(status)) => status,
        Ok(Err(failure)) => catch_unwind(|| failure::keep(failure)).unwrap_or(GULLET_ERROR_PANIC),
        Err(payload) => {
            // Dropping it may panic once more, and what that leaves is let go.
            if let Err(second) = catch_unwind(AssertUnwindSafe(|| drop(payload))) {
                core::mem::forget(second);
            }
            GULLET_ERROR_PANIC
        }
    }
}
