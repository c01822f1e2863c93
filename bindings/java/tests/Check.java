import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import pourwright.Fault;
import pourwright.PourwrightException;

/** What the tests share. */
final class Check {
    static final Path ROOT = Path.of(System.getenv("POURWRIGHT_ROOT"));
    private static int count;
    private static int failures;

    private Check() {}

    static String textOf(String path) throws Exception {
        return Files.readString(ROOT.resolve(path));
    }

    /** The lines of a file, an empty one among them too. */
    static List<String> lines(String path) throws Exception {
        List<String> lines = new ArrayList<>(List.of(textOf(path).split("\n", -1)));
        lines.remove(lines.size() - 1);
        return lines;
    }

    static void that(boolean holds, String what) {
        count++;
        if (!holds) {
            failures++;
            System.err.println(what);
        }
    }

    /** Checks that a call is refused with this fault among its faults. */
    static PourwrightException refused(String code, String path, Runnable call) {
        try {
            call.run();
        } catch (PourwrightException error) {
            boolean right = false;
            for (Fault fault : error.faults()) {
                right |= fault.code().equals(code) && fault.path().equals(path) && !fault.message().isEmpty() && !fault.help().isEmpty();
            }
            that(right, "no " + code + " at " + path + ": " + error.getMessage());
            return error;
        }
        that(false, "no " + code + " at " + path + ": not refused");
        return null;
    }

    /** Writes answers to the folder that POURWRIGHT_ANSWERS names, if it does: tests/doors. */
    static void writeAnswers(String name, List<String> answers) throws Exception {
        String folder = System.getenv("POURWRIGHT_ANSWERS");
        if (folder != null && !folder.isEmpty()) {
            Files.writeString(Path.of(folder, "java." + name + ".jsonl"), String.join("\n", answers) + "\n");
        }
    }

    static void finish(String name) {
        if (failures > 0) {
            System.err.println(name + ": " + failures + " of " + count + " checks failed");
            System.exit(1);
        }
        System.out.println(name + ": " + count + " checks");
    }
}
