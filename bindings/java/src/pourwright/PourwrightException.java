package pourwright;

import java.util.List;
import java.util.stream.Collectors;

/** A refused call: one fault or more, in the order in which they were found. The message has a line for each. */
public final class PourwrightException extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final int status;
    private final transient List<Fault> faults;

    PourwrightException(int status, List<Fault> faults) {
        super(faults.stream().map(Fault::toString).collect(Collectors.joining("\n")));
        this.status = status;
        this.faults = List.copyOf(faults);
    }

    /** The status of the call in C, such as 6 for "refused". */
    public int status() {
        return status;
    }

    /** All faults; at least one. */
    public List<Fault> faults() {
        return faults;
    }

    /** The code of the first fault. */
    public String code() {
        return faults.get(0).code();
    }

    /** The path of the first fault. */
    public String path() {
        return faults.get(0).path();
    }

    /** What would fix the first fault. */
    public String help() {
        return faults.get(0).help();
    }
}
