//! The state of the calling thread that results depend on and that a call must leave as it was:
//! rounding mode, flush-to-zero, floating-point traps and flags, `errno`.

/// Sets the state that the core computes under; dropped, it puts the caller's state back.
pub(crate) struct Host {
    floating_point: floating_point::State,
    errno: errno::Value,
}

impl Host {
    #[inline(always)]
    pub(crate) fn enter() -> Host {
        Host {
            errno: errno::read(),
            floating_point: floating_point::enter(),
        }
    }
}

impl Drop for Host {
    #[inline(always)]
    fn drop(&mut self) {
        floating_point::leave(self.floating_point);
        errno::write(self.errno);
    }
}

#[cfg(target_arch = "x86_64")]
mod floating_point {
    use core::arch::asm;

    pub(super) type State = u32;

    /// Round to nearest, no flush-to-zero, every trap masked, no flag raised.
    const DEFAULT: u32 = 0x1F80;

    #[inline(always)]
    pub(super) fn enter() -> State {
        let mut caller = 0_u32;
        // SAFETY: both only move the control and status word between memory and its register; the
        // word loaded is the one every thread starts with, which compiled Rust code expects.
        unsafe {
            asm!("stmxcsr [{}]", in(reg) &mut caller, options(nostack));
            asm!("ldmxcsr [{}]", in(reg) &DEFAULT, options(nostack));
        }
        caller
    }

    #[inline(always)]
    pub(super) fn leave(caller: State) {
        // SAFETY: loads the word that `enter` found; nothing is computed until the caller goes on.
        unsafe {
            asm!("ldmxcsr [{}]", in(reg) &caller, options(nostack));
        }
    }
}

#[cfg(target_arch = "aarch64")]
mod floating_point {
    use core::arch::asm;

    pub(super) type State = (u64, u64);

    #[inline(always)]
    pub(super) fn enter() -> State {
        let (mut control, mut flags) = (0_u64, 0_u64);
        // SAFETY: reads and clears the control and the status register of this thread; zero is the
        // state every thread starts with, which compiled Rust code expects.
        unsafe {
            asm!("mrs {}, fpcr", out(reg) control, options(nostack));
            asm!("mrs {}, fpsr", out(reg) flags, options(nostack));
            asm!("msr fpcr, {}", in(reg) 0_u64, options(nostack));
        }
        (control, flags)
    }

    #[inline(always)]
    pub(super) fn leave((control, flags): State) {
        // SAFETY: writes back what `enter` found; nothing is computed until the caller goes on.
        unsafe {
            asm!("msr fpsr, {}", in(reg) flags, options(nostack));
            asm!("msr fpcr, {}", in(reg) control, options(nostack));
        }
    }
}

// Elsewhere results hold under the state every thread starts with; DEVELOPERS.md says so.
#[cfg(not(any(target_arch = "x86_64", target_arch = "aarch64")))]
mod floating_point {
    pub(super) type State = ();
    pub(super) fn enter() -> State {}
    pub(super) fn leave(_: State) {}
}

#[cfg(any(target_os = "linux", target_vendor = "apple"))]
mod errno {
    use core::ffi::c_int;

    pub(super) type Value = c_int;

    unsafe extern "C" {
        #[cfg_attr(target_os = "linux", link_name = "__errno_location")]
        #[cfg_attr(target_vendor = "apple", link_name = "__error")]
        fn location() -> *mut c_int;
    }

    #[inline(always)]
    pub(super) fn read() -> Value {
        // SAFETY: the C library gives the address of this thread's own number, always valid.
        unsafe { *location() }
    }

    #[inline(always)]
    pub(super) fn write(value: Value) {
        // SAFETY: as in `read`.
        unsafe { *location() = value }
    }
}

#[cfg(not(any(target_os = "linux", target_vendor = "apple")))]
mod errno {
    pub(super) type Value = ();
    pub(super) fn read() -> Value {}
    pub(super) fn write(_: Value) {}
}
