//! An allocator that counts, for each thread by itself.

use std::alloc::{GlobalAlloc, Layout, System};
use std::cell::Cell;

thread_local! {
    static COUNT: Cell<u64> = const { Cell::new(0) };
}

struct Counter;

#[global_allocator]
static COUNTER: Counter = Counter;

fn count() {
    // A thread that is ending has no counter any more, and nothing to count either.
    let _ = COUNT.try_with(|count| count.set(count.get() + 1));
}

// SAFETY: every call goes to the system's allocator as it came.
unsafe impl GlobalAlloc for Counter {
    unsafe fn alloc(&self, layout: Layout) -> *mut u8 {
        count();
        unsafe { System.alloc(layout) }
    }

    unsafe fn alloc_zeroed(&self, layout: Layout) -> *mut u8 {
        count();
        unsafe { System.alloc_zeroed(layout) }
    }

    unsafe fn realloc(&self, pointer: *mut u8, layout: Layout, size: usize) -> *mut u8 {
        count();
        unsafe { System.realloc(pointer, layout, size) }
    }

    unsafe fn dealloc(&self, pointer: *mut u8, layout: Layout) {
        unsafe { System.dealloc(pointer, layout) }
    }
}

/// The answer of `run`, and how often it allocated.
pub(crate) fn counted<T>(run: impl FnOnce() -> T) -> (T, u64) {
    let before = COUNT.get();
    let answer = run();
    (answer, COUNT.get() - before)
}
