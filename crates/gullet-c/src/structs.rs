//! Plain structs that grow: each opens with `struct_size`, as the caller was compiled.

use crate::failure::{Failure, fault};
use crate::generated::status::*;
use crate::memory::{extent, read};
use core::mem::MaybeUninit;

/// A struct of plain numbers that opens with `struct_size: u32`.
///
/// # Safety
/// `repr(C)`, without padding that matters, valid for every pattern of bits, `struct_size` first.
pub(crate) unsafe trait Sized32: Copy {
    /// Name in the header.
    const NAME: &'static str;
    /// Size in the first version of this interface; never changes.
    const FIRST: usize;
}

#[cold]
fn wrong<T: Sized32>(given: usize) -> Failure {
    fault(
        GULLET_ERROR_STRUCT_SIZE,
        T::NAME,
        format!("struct_size {given}"),
        format!("{} to {}", T::FIRST, size_of::<T>()),
        format!("set struct_size to sizeof({}) before the call", T::NAME),
    )
}

/// The size a caller's struct says it has.
///
/// # Safety
/// Not NULL and aligned, it points to a struct of that size.
unsafe fn size_of_given<T: Sized32>(pointer: *const T, name: &str) -> Result<usize, Failure> {
    if pointer.is_null() || !pointer.is_aligned() {
        // SAFETY: refuses without reading.
        unsafe { read(pointer, name)? };
    }
    // SAFETY: the first field of every such struct.
    let size = unsafe { *pointer.cast::<u32>() } as usize;
    if size < T::FIRST {
        return Err(wrong::<T>(size));
    }
    extent(pointer.cast::<u8>(), size, name)?;
    Ok(size)
}

/// Reads a struct: fields an older caller does not know are zero; a newer caller may only leave
/// zeros in fields this library does not know.
///
/// # Safety
/// Not NULL and aligned, it points to as many bytes as its `struct_size` says.
pub(crate) unsafe fn take<T: Sized32>(pointer: *const T, name: &str) -> Result<T, Failure> {
    // SAFETY: the same promise.
    let size = unsafe { size_of_given(pointer, name)? };
    let own = size_of::<T>();
    if size > own {
        // SAFETY: the caller promises `size` bytes.
        let tail =
            unsafe { core::slice::from_raw_parts(pointer.cast::<u8>().add(own), size - own) };
        if tail.iter().any(|byte| *byte != 0) {
            return Err(wrong::<T>(size));
        }
    }
    let mut taken = MaybeUninit::<T>::zeroed();
    // SAFETY: copies no more than both hold; every pattern of bits is a `T`.
    unsafe {
        core::ptr::copy_nonoverlapping(
            pointer.cast::<u8>(),
            taken.as_mut_ptr().cast::<u8>(),
            size.min(own),
        );
        Ok(taken.assume_init())
    }
}

/// Checked room for a struct of the size the caller was compiled with.
pub(crate) struct Room<T> {
    pointer: *mut T,
    size: usize,
}

/// Room for a struct.
///
/// # Safety
/// As [`take`], and the bytes may be written.
pub(crate) unsafe fn room<T: Sized32>(pointer: *mut T, name: &str) -> Result<Room<T>, Failure> {
    // SAFETY: the same promise.
    let size = unsafe { size_of_given(pointer.cast_const(), name)? };
    Ok(Room { pointer, size })
}

impl<T: Sized32> Room<T> {
    /// Bytes from one struct to the next in an array.
    pub(crate) fn size(&self) -> usize {
        self.size
    }

    /// Writes as much as the caller knows, zeros where this library does not know a field.
    pub(crate) fn write(&self, value: T) {
        let own = size_of::<T>();
        let bytes = self.pointer.cast::<u8>();
        // SAFETY: `room` promises `size` bytes, which no value of the library's own overlaps.
        unsafe {
            core::ptr::copy_nonoverlapping(
                (&raw const value).cast::<u8>(),
                bytes,
                self.size.min(own),
            );
            if self.size > own {
                core::ptr::write_bytes(bytes.add(own), 0, self.size - own);
            }
            // The size stays what the caller said.
            self.pointer.cast::<u32>().write(self.size as u32);
        }
    }

    /// The room of the next struct of an array.
    ///
    /// # Safety
    /// The array holds it.
    pub(crate) unsafe fn at(&self, index: usize) -> Room<T> {
        Room {
            // SAFETY: inside the array, as the caller promises.
            pointer: unsafe { self.pointer.byte_add(index * self.size) },
            size: self.size,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A struct of which the first version ended after `first`.
    #[repr(C)]
    #[derive(Clone, Copy)]
    struct Grown {
        struct_size: u32,
        kind: i32,
        first: f64,
        second: f64,
    }

    // SAFETY: plain numbers without padding, the size first.
    unsafe impl Sized32 for Grown {
        const NAME: &'static str = "grown";
        const FIRST: usize = 16;
    }

    fn given(size: u32) -> Grown {
        Grown {
            struct_size: size,
            kind: 3,
            first: 1.5,
            second: 2.5,
        }
    }

    #[test]
    fn fields_an_older_caller_does_not_know_are_zero() {
        // SAFETY: the struct holds the sizes it claims.
        let taken = unsafe { take(&given(16), "given") };
        assert!(matches!(taken, Ok(Grown { kind: 3, second, .. }) if second == 0.0));
        // SAFETY: as above.
        let taken = unsafe { take(&given(24), "given") };
        assert!(matches!(taken, Ok(Grown { second, .. }) if second == 2.5));
    }

    #[test]
    fn an_older_caller_keeps_what_lies_behind_its_struct() {
        let mut target = given(16);
        // SAFETY: the struct holds the size it claims.
        let written = unsafe { room(&raw mut target, "target") };
        let mut value = given(24);
        (value.first, value.second) = (7.0, 8.0);
        assert!(written.is_ok_and(|room| {
            room.write(value);
            true
        }));
        assert_eq!(
            (target.struct_size, target.first, target.second),
            (16, 7.0, 2.5)
        );
    }

    #[test]
    fn sizes_below_the_first_version_are_refused() {
        // SAFETY: nothing but the size is read.
        let taken = unsafe { take(&given(12), "given") };
        assert!(
            matches!(taken, Err(Failure::Own(fault)) if fault.status == GULLET_ERROR_STRUCT_SIZE)
        );
    }
}
