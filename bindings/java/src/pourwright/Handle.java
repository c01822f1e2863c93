package pourwright;

import com.sun.jna.Pointer;
import java.lang.ref.Cleaner;
import java.lang.ref.Reference;
import java.util.List;
import java.util.concurrent.locks.ReadWriteLock;
import java.util.concurrent.locks.ReentrantReadWriteLock;
import java.util.function.Function;

/** A handle of the library: freed by {@code close}, when no call runs on it, or when nothing refers to it any more. */
abstract class Handle implements AutoCloseable {
    private static final Cleaner CLEANER = Cleaner.create();

    private final String kind;
    private final Pointer pointer;
    private final Cleaner.Cleanable cleanable;
    private final ReadWriteLock lock = new ReentrantReadWriteLock();
    private boolean isClosed;

    Handle(String kind, Pointer pointer) {
        this.kind = kind;
        this.pointer = pointer;
        String free = "pour_" + kind + "_free";
        this.cleanable = CLEANER.register(this, () -> Library.function(free).invokeVoid(new Object[] {pointer}));
    }

    /** Does a call on the handle. */
    final <T> T with(Function<Pointer, T> call) {
        lock.readLock().lock();
        try {
            if (isClosed) {
                Fault fault = new Fault(kind + "-freed", "", "The " + kind + " has been closed.", "Open it again.");
                throw new PourwrightException((int) Table.constant("POUR_NULL"), List.of(fault));
            }
            return call.apply(pointer);
        } finally {
            lock.readLock().unlock();
            Reference.reachabilityFence(this);
        }
    }

    /** Does the calculation of a request, which leaves out what is open: {@code {"result":...}}. */
    public final String request(String json) {
        byte[] utf8 = Library.utf8(json);
        return with(open -> Library.text("pour_" + kind + "_request", open, utf8, Library.size(utf8.length - 1)));
    }

    /** Frees its memory. */
    @Override
    public final void close() {
        lock.writeLock().lock();
        try {
            isClosed = true;
            cleanable.clean();
        } finally {
            lock.writeLock().unlock();
        }
    }
}
