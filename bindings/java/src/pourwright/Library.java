package pourwright;

import com.sun.jna.Function;
import com.sun.jna.Memory;
import com.sun.jna.Native;
import com.sun.jna.NativeLibrary;
import com.sun.jna.Pointer;
import com.sun.jna.ptr.PointerByReference;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The C library. The property or variable {@code POURWRIGHT_LIBRARY} names its file; without it the system's search finds it. */
final class Library {
    private static final NativeLibrary LIBRARY = load();

    private Library() {}

    private static NativeLibrary load() {
        String named = System.getProperty("POURWRIGHT_LIBRARY", System.getenv("POURWRIGHT_LIBRARY"));
        NativeLibrary library = NativeLibrary.getInstance(named == null || named.isEmpty() ? "pourwright" : named);
        if (library.getFunction("pour_abi_version").invokeInt(new Object[0]) != Table.constant("POUR_ABI_VERSION")) {
            throw new UnsatisfiedLinkError("The pourwright library is of another version than this package.");
        }
        return library;
    }

    static Function function(String name) {
        return LIBRARY.getFunction(name);
    }

    /** A number of the size of {@code size_t}. */
    static Object size(long number) {
        return Native.SIZE_T_SIZE == 8 ? (Object) number : (Object) (int) number;
    }

    /** A text as C takes it, with a NUL behind it, which no length counts. */
    static byte[] utf8(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        return Arrays.copyOf(bytes, bytes.length + 1);
    }

    /** Does a call whose last parameter is the error, and throws that. */
    static void checked(String name, Object... arguments) {
        PointerByReference failed = new PointerByReference();
        Object[] all = Arrays.copyOf(arguments, arguments.length + 1);
        all[arguments.length] = failed;
        int status = function(name).invokeInt(all);
        if (status != Table.constant("POUR_OK")) {
            throw made(status, failed.getValue());
        }
    }

    /** The text that a call writes through the pointers after its arguments. */
    static String text(String name, Object... arguments) {
        PointerByReference out = new PointerByReference();
        Memory length = new Memory(Native.SIZE_T_SIZE);
        Object[] all = Arrays.copyOf(arguments, arguments.length + 2);
        all[arguments.length] = out;
        all[arguments.length + 1] = length;
        checked(name, all);
        try {
            long count = Native.SIZE_T_SIZE == 8 ? length.getLong(0) : Integer.toUnsignedLong(length.getInt(0));
            return new String(out.getValue().getByteArray(0, Math.toIntExact(count)), StandardCharsets.UTF_8);
        } finally {
            function("pour_string_free").invokeVoid(new Object[] {out.getValue()});
        }
    }

    /** The handle that a call writes through the pointer after its arguments. */
    static Pointer handle(String name, Object... arguments) {
        PointerByReference out = new PointerByReference();
        Object[] all = Arrays.copyOf(arguments, arguments.length + 1);
        all[arguments.length] = out;
        checked(name, all);
        return out.getValue();
    }

    /** The error of a call, which is freed. */
    private static PourwrightException made(int status, Pointer error) {
        try {
            List<Fault> faults = new ArrayList<>();
            long count = ((Number) function("pour_error_count").invoke(size(0).getClass(), new Object[] {error})).longValue();
            for (long index = 0; index < count; index++) {
                faults.add(
                        new Fault(
                                of(error, "code", index),
                                of(error, "path", index),
                                of(error, "message", index),
                                of(error, "help", index)));
            }
            return new PourwrightException(status, faults);
        } finally {
            function("pour_error_free").invokeVoid(new Object[] {error});
        }
    }

    private static String of(Pointer error, String part, long index) {
        Object[] arguments = {error, size(index)};
        return function("pour_error_" + part).invokePointer(arguments).getString(0, "UTF-8");
    }
}
