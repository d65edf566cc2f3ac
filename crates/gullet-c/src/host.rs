//! The state of the calling thread that results depend on and that a call must leave as it was:
//! rounding mode, flush-to-zero, floating-point traps and flags, `errno`.

/// Sets the state that the core computes under; dropped, it puts the caller's state back.
pub(crate) struct Host {
    floating_point: floating_point::State,
    errno: errno::State,
}

impl Host {
    #[inline(always)]
    pub(crate) fn enter() -> Host {
        Host {
            errno: errno::enter(),
            floating_point: floating_point::enter(),
        }
    }
}

impl Drop for Host {
    #[inline(always)]
    fn drop(&mut self) {
        floating_point::leave(self.floating_point);
        errno::leave(self.errno);
    }
}

#[cfg(target_arch = "x86_64")]
mod floating_point {
    use core::arch::asm;

    pub(super) type State = u32;

    /// Round to nearest, no flush-to-zero, every trap masked, no flag raised.
    const DEFAULT: u32 = 0x1F80;
    /// The flags that computing raises.
    const FLAGS: u32 = 0x3F;

    #[inline(always)]
    fn read() -> u32 {
        let mut word = 0_u32;
        // SAFETY: moves the control and status word of this thread to memory.
        unsafe {
            asm!("stmxcsr [{}]", in(reg) &mut word, options(nostack));
        }
        word
    }

    #[inline(always)]
    fn write(word: u32) {
        // SAFETY: either the word every thread starts with, which compiled Rust code expects, or
        // the caller's own before its return; the guard lets nothing be computed under the latter.
        unsafe {
            asm!("ldmxcsr [{}]", in(reg) &word, options(nostack));
        }
    }

    // Reading is far cheaper than writing, and most callers are in the default state.
    #[inline(always)]
    pub(super) fn enter() -> State {
        let caller = read();
        if caller & !FLAGS != DEFAULT {
            write(DEFAULT);
        }
        caller
    }

    #[inline(always)]
    pub(super) fn leave(caller: State) {
        if read() != caller {
            write(caller);
        }
    }
}

#[cfg(target_arch = "aarch64")]
mod floating_point {
    use core::arch::asm;

    pub(super) type State = (u64, u64);

    #[inline(always)]
    pub(super) fn enter() -> State {
        let (control, flags): (u64, u64);
        // SAFETY: reads the control and the status register of this thread and clears the first;
        // zero is the state every thread starts with, which compiled Rust code expects.
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

    /// Where this thread's number is, and what it was.
    pub(super) type State = (*mut c_int, c_int);

    unsafe extern "C" {
        #[cfg_attr(target_os = "linux", link_name = "__errno_location")]
        #[cfg_attr(target_vendor = "apple", link_name = "__error")]
        fn location() -> *mut c_int;
    }

    #[inline(always)]
    pub(super) fn enter() -> State {
        // SAFETY: the C library gives the address of this thread's own number, always valid.
        unsafe {
            let at = location();
            (at, *at)
        }
    }

    #[inline(always)]
    pub(super) fn leave((at, value): State) {
        // SAFETY: as in `enter`, on the same thread.
        unsafe { *at = value }
    }
}

#[cfg(not(any(target_os = "linux", target_vendor = "apple")))]
mod errno {
    pub(super) type State = ();
    pub(super) fn enter() -> State {}
    pub(super) fn leave(_: State) {}
}
