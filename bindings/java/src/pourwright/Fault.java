package pourwright;

/**
 * One fault of a call.
 *
 * @param code stable name of the kind of fault, such as {@code salt-out-of-reach}: core/ERRORS.md
 * @param path its place, as a JSON Pointer: in the document, or {@code /parameter} of the call; empty for the whole
 * @param message what was found, as a sentence
 * @param help what would fix it, as a sentence
 */
public record Fault(String code, String path, String message, String help) {
    /** All of it in one line. */
    @Override
    public String toString() {
        return (path.isEmpty() ? "" : path + ": ") + message + " " + help + " [" + code + "]";
    }
}
