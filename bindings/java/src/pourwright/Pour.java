package pourwright;

import com.sun.jna.Pointer;
import com.sun.jna.Memory;
import com.sun.jna.ptr.PointerByReference;
import java.util.Map;
import java.util.Set;

/** Calculations: on plain numbers, and as requests with JSON text in and out. Any thread may call any of it. */
public final class Pour {
    private Pour() {}

    /** The version of the library. */
    public static String version() {
        return Library.function("pour_version").invokePointer(new Object[0]).getString(0, "UTF-8");
    }

    /** The names of all calculations on plain numbers: core/CALCULATIONS.md has their parameters and results. */
    public static Set<String> calculations() {
        return Set.copyOf(Table.calculations().keySet());
    }

    /**
     * Calculates on plain numbers: {@code calculate("mass_of_volume", Map.of("volume_ml", 250.0, "density_g_per_ml", 1.03))}.
     *
     * <p>An argument is a {@code Number}, a {@code String} for a text or a word, or a {@code List} of numbers or of rows of numbers; what is
     * not there is omitted. A result is a {@code Double}, a {@code Long} for a count, a {@code String} for a word, a {@code List} of counts, or
     * null where there is none.
     *
     * @throws PourwrightException all that is wrong with the arguments
     */
    public static Map<String, Object> calculate(String name, Map<String, ?> given) {
        return Call.of(name, given);
    }

    /** Answers a request: {@code {"result":...}} or {@code {"faults":[...]}}, the same text at every door. Faults throw nothing. */
    public static String answer(String request) {
        byte[] utf8 = Library.utf8(request);
        PointerByReference out = new PointerByReference(), error = new PointerByReference();
        Object[] arguments = {utf8, Library.size(utf8.length - 1), out, new Memory(8), error};
        if (Library.function("pour_request").invokeInt(arguments) == Table.constant("POUR_OK")) {
            return taken(out.getValue(), out.getValue(), "pour_string_free");
        }
        Pointer failed = error.getValue();
        return taken(Library.function("pour_error_json").invokePointer(new Object[] {failed}), failed, "pour_error_free");
    }

    /** The text, which has no NUL inside; then frees what it is in. */
    private static String taken(Pointer text, Pointer of, String free) {
        try {
            return text.getString(0, "UTF-8");
        } finally {
            Library.function(free).invokeVoid(new Object[] {of});
        }
    }

    /**
     * Does the calculation of a request (core/REQUESTS.md): {@code {"result":...}}.
     *
     * @throws PourwrightException all faults of the request
     */
    public static String request(String request) {
        byte[] utf8 = Library.utf8(request);
        return Library.text("pour_request", utf8, Library.size(utf8.length - 1));
    }

    /** A JSON Schema: request, answer, book, orders, actuals, plan. */
    public static String schema(String name) {
        return Library.text("pour_schema", (Object) Library.utf8(name));
    }
}
