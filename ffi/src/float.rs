//! The host's floating-point state: its status flags stay as they were, and its modes do not reach the maths.
//!
//! Hosts look at the flags (a spreadsheet reads "invalid" as an error in the cell), and may have set another rounding,
//! flush-to-zero or traps, with which the same input would not give the same bits. The state is read and written in
//! the registers themselves: `fegetenv` and `fesetenv` do the same, but take as long as a whole scalar call.

use arch::State;

/// The state of the host, set aside.
pub(crate) struct HostState(State);

impl HostState {
    /// Reads the state; where it is not rounding to nearest without traps, sets that.
    #[inline]
    pub(crate) fn set_aside() -> Self {
        let state = arch::read();
        if !arch::is_plain(state) {
            arch::write(arch::plain(state));
        }
        Self(state)
    }

    /// Puts the state back. To look first whether it has changed takes longer: a read waits for the sums before it.
    #[inline]
    pub(crate) fn put_back(self) {
        arch::write(self.0);
    }
}

#[cfg(target_arch = "x86_64")]
mod arch {
    use std::arch::asm;

    /// MXCSR.
    pub(super) type State = u32;
    const FLAGS: u32 = 0x3f;
    /// All traps masked, round to nearest, subnormals kept.
    const PLAIN: u32 = 0x1f80;

    pub(super) fn read() -> State {
        let mut state: u32 = 0;
        // SAFETY: stores four bytes to a place of four bytes.
        unsafe {
            asm!("stmxcsr [{}]", in(reg) &raw mut state, options(nostack, preserves_flags));
        }
        state
    }

    pub(super) fn write(state: State) {
        // SAFETY: `state` was read from this register, or has its flags and the modes that Rust assumes.
        unsafe {
            asm!("ldmxcsr [{}]", in(reg) &raw const state, options(nostack, readonly));
        }
    }

    pub(super) fn is_plain(state: State) -> bool {
        state & !FLAGS == PLAIN
    }

    pub(super) fn plain(state: State) -> State {
        state & FLAGS | PLAIN
    }
}

#[cfg(target_arch = "aarch64")]
mod arch {
    use std::arch::asm;

    /// Flags (FPSR) and modes (FPCR), whose plain value is 0.
    pub(super) type State = (u64, u64);

    pub(super) fn read() -> State {
        let (flags, modes): (u64, u64);
        // SAFETY: reads two registers.
        unsafe {
            asm!("mrs {}, fpsr", "mrs {}, fpcr", out(reg) flags, out(reg) modes,
                options(nostack, preserves_flags));
        }
        (flags, modes)
    }

    pub(super) fn write((flags, modes): State) {
        // SAFETY: both were read from these registers, or are the modes that Rust assumes.
        unsafe {
            asm!("msr fpsr, {}", "msr fpcr, {}", in(reg) flags, in(reg) modes, options(nostack));
        }
    }

    pub(super) fn is_plain((_, modes): State) -> bool {
        modes == 0
    }

    pub(super) fn plain((flags, _): State) -> State {
        (flags, 0)
    }
}

#[cfg(target_arch = "riscv64")]
mod arch {
    use std::arch::asm;

    /// FCSR: the flags in its low five bits, above them the rounding, whose plain value is 0.
    pub(super) type State = u64;
    const FLAGS: u64 = 0x1f;

    pub(super) fn read() -> State {
        let state: u64;
        // SAFETY: reads a register.
        unsafe { asm!("frcsr {}", out(reg) state, options(nostack, preserves_flags)) };
        state
    }

    pub(super) fn write(state: State) {
        // SAFETY: it was read from this register, or is the rounding that Rust assumes.
        unsafe { asm!("fscsr {}", in(reg) state, options(nostack)) };
    }

    pub(super) fn is_plain(state: State) -> bool {
        state & !FLAGS == 0
    }

    pub(super) fn plain(state: State) -> State {
        state & FLAGS
    }
}

#[cfg(not(any(target_arch = "x86_64", target_arch = "aarch64", target_arch = "riscv64")))]
compile_error!(
    "The C ABI saves the floating-point state of its host, which it can do on x86_64, aarch64 and riscv64."
);
