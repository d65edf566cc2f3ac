//! Pointers from outside: checked as far as they can be, then read or written.

use crate::failure::{Failure, fault};
use crate::generated::status::*;
use core::ffi::{CStr, c_char};

/// Length that stands for "up to the first NUL".
pub const GULLET_NUL_TERMINATED: usize = usize::MAX;

type Checked<T> = Result<T, Failure>;

#[cold]
fn null(name: &str) -> Failure {
    fault(
        GULLET_ERROR_NULL_POINTER,
        name,
        "NULL",
        "a valid pointer",
        format!("pass the address of {name}"),
    )
}

#[cold]
fn misaligned<T>(name: &str, address: usize) -> Failure {
    fault(
        GULLET_ERROR_MISALIGNED,
        name,
        format!("{address:#x}"),
        format!("a multiple of {}", align_of::<T>()),
        "pass memory aligned for its type",
    )
}

fn aligned<T>(pointer: *const T, name: &str) -> Checked<()> {
    if pointer.is_null() {
        return Err(null(name));
    }
    if !pointer.is_aligned() {
        return Err(misaligned::<T>(name, pointer.addr()));
    }
    Ok(())
}

/// A struct that is read.
///
/// # Safety
/// Not NULL and aligned, it points to a `T` that nothing changes during the call.
pub(crate) unsafe fn read<'a, T>(pointer: *const T, name: &str) -> Checked<&'a T> {
    aligned(pointer, name)?;
    // SAFETY: checked as far as possible; the rest is the caller's promise.
    Ok(unsafe { &*pointer })
}

/// Where a value goes.
///
/// # Safety
/// Not NULL and aligned, it points to room for a `T`.
pub(crate) unsafe fn out<T>(pointer: *mut T, name: &str) -> Checked<Out<T>> {
    aligned(pointer, name)?;
    Ok(Out(pointer))
}

/// Checked room for one value.
pub(crate) struct Out<T>(*mut T);

impl<T> Out<T> {
    pub(crate) fn write(self, value: T) {
        // SAFETY: made by `out` or `handle_out`, whose callers promise the room.
        unsafe { self.0.write(value) }
    }
}

/// The type that a handle points to in C, which says nothing of what it holds.
pub(crate) trait Opaque {
    /// What it holds.
    type Inner;
}

/// What a handle holds.
///
/// # Safety
/// Not NULL and aligned, it came from [`handle`] and was not freed.
pub(crate) unsafe fn held<'a, H: Opaque>(pointer: *const H, name: &str) -> Checked<&'a H::Inner> {
    // SAFETY: the same promise.
    unsafe { read(pointer.cast(), name) }
}

/// What a handle holds that may be left out.
///
/// # Safety
/// As [`held`], unless NULL.
pub(crate) unsafe fn maybe<'a, H: Opaque>(
    pointer: *const H,
    name: &str,
) -> Checked<Option<&'a H::Inner>> {
    if pointer.is_null() {
        return Ok(None);
    }
    // SAFETY: the same promise.
    unsafe { held(pointer, name) }.map(Some)
}

/// Where a new handle goes.
///
/// # Safety
/// As [`out`].
pub(crate) unsafe fn handle_out<H>(pointer: *mut *mut H, name: &str) -> Checked<Out<*mut H>> {
    aligned(pointer, name)?;
    Ok(Out(pointer))
}

/// A handle on the heap.
pub(crate) fn handle<H: Opaque>(value: H::Inner) -> *mut H {
    Box::into_raw(Box::new(value)).cast()
}

/// Frees a handle; NULL is left alone.
///
/// # Safety
/// It came from [`handle`] and is freed for the first time.
pub(crate) unsafe fn free<H: Opaque>(pointer: *mut H) -> Checked<()> {
    let pointer: *mut H::Inner = pointer.cast();
    if pointer.is_null() {
        return Ok(());
    }
    aligned(pointer, "handle")?;
    // SAFETY: the caller's promise.
    drop(unsafe { Box::from_raw(pointer) });
    Ok(())
}

/// The bytes of `count` values: refused where no memory can hold them.
pub(crate) fn extent<T>(pointer: *const T, count: usize, name: &str) -> Checked<(usize, usize)> {
    let start = pointer.addr();
    let bytes = count
        .checked_mul(size_of::<T>())
        .filter(|bytes| isize::try_from(*bytes).is_ok());
    let end = bytes.and_then(|bytes| start.checked_add(bytes));
    end.map(|end| (start, end)).ok_or_else(|| {
        fault(
            GULLET_ERROR_TOO_LARGE,
            name,
            format!("{count} values of {} bytes", size_of::<T>()),
            "what fits into the address space",
            "check the count of values",
        )
    })
}

/// An array that is read; an empty one may be NULL.
///
/// # Safety
/// Not NULL and aligned, it points to `count` values that nothing changes during the call.
pub(crate) unsafe fn slice<'a, T>(pointer: *const T, count: usize, name: &str) -> Checked<&'a [T]> {
    if count == 0 {
        return Ok(&[]);
    }
    aligned(pointer, name)?;
    extent(pointer, count, name)?;
    // SAFETY: checked as far as possible; the rest is the caller's promise.
    Ok(unsafe { core::slice::from_raw_parts(pointer, count) })
}

/// An array that is written; an empty one may be NULL.
///
/// # Safety
/// As [`slice`], and no other array of the call overlaps it.
pub(crate) unsafe fn slice_mut<'a, T>(
    pointer: *mut T,
    count: usize,
    name: &str,
) -> Checked<&'a mut [T]> {
    if count == 0 {
        return Ok(&mut []);
    }
    aligned(pointer, name)?;
    extent(pointer, count, name)?;
    // SAFETY: checked as far as possible; the rest is the caller's promise.
    Ok(unsafe { core::slice::from_raw_parts_mut(pointer, count) })
}

/// Refuses two ranges of bytes that share any.
pub(crate) fn apart(
    (name, (start, end)): (&str, (usize, usize)),
    (other, (other_start, other_end)): (&str, (usize, usize)),
) -> Checked<()> {
    if start < other_end && other_start < end {
        return Err(fault(
            GULLET_ERROR_OVERLAP,
            name,
            format!("memory of {other}"),
            "memory of its own",
            "write into an array that is not read from and not written to twice",
        ));
    }
    Ok(())
}

/// Text that is read.
///
/// # Safety
/// Not NULL, it points to `length` bytes, or for [`GULLET_NUL_TERMINATED`] to bytes that end with
/// a NUL; nothing changes them during the call.
pub(crate) unsafe fn text<'a>(
    pointer: *const c_char,
    length: usize,
    name: &str,
) -> Checked<&'a str> {
    let bytes = if length == GULLET_NUL_TERMINATED {
        if pointer.is_null() {
            return Err(null(name));
        }
        // SAFETY: the caller promises the NUL.
        unsafe { CStr::from_ptr(pointer) }.to_bytes()
    } else {
        // SAFETY: the caller promises the bytes.
        unsafe { slice(pointer.cast::<u8>(), length, name)? }
    };
    core::str::from_utf8(bytes).map_err(|error| {
        fault(
            GULLET_ERROR_TEXT_ENCODING,
            name,
            format!("a byte that is not UTF-8 at offset {}", error.valid_up_to()),
            "text in UTF-8",
            "convert the text to UTF-8",
        )
    })
}

/// A name: text that ends with a NUL.
///
/// # Safety
/// As [`text`].
pub(crate) unsafe fn name<'a>(pointer: *const c_char, parameter: &str) -> Checked<&'a str> {
    // SAFETY: the same promise.
    unsafe { text(pointer, GULLET_NUL_TERMINATED, parameter) }
}

/// Writes text and its NUL into a buffer of the caller; says how many bytes that takes.
///
/// # Safety
/// Not NULL, `buffer` points to room for `capacity` bytes and `needed` to room for a size.
pub(crate) unsafe fn write_text(
    text: &str,
    buffer: *mut c_char,
    capacity: usize,
    needed: *mut usize,
) -> Checked<i32> {
    let full = text.len().saturating_add(1);
    if !needed.is_null() {
        // SAFETY: the caller promises the room.
        unsafe { out(needed, "needed")? }.write(full);
    }
    if capacity < full {
        return Err(fault(
            GULLET_ERROR_BUFFER_TOO_SHORT,
            "capacity",
            format!("{capacity} bytes"),
            format!("at least {full} bytes"),
            "call again with a buffer of this size",
        ));
    }
    // SAFETY: the caller promises the room; it overlaps nothing, for the text is the library's own.
    let room = unsafe { slice_mut(buffer.cast::<u8>(), full, "buffer")? };
    if let Some((end, body)) = room.split_last_mut() {
        body.copy_from_slice(text.as_bytes());
        *end = 0;
    }
    Ok(GULLET_OK)
}
