package pourwright;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The table of calculations, read from {@code calculations.txt}. */
final class Table {
    /** A parameter or a result: its name, its kind, and what else its kind has. */
    record Field(String name, String kind, String more) {
        List<String> words() {
            return List.of(more.split(","));
        }

        int columns() {
            return Integer.parseInt(more);
        }
    }

    /** A calculation: whether C takes its arguments and gives its results in a struct, its parameters and its results. */
    record Calculation(boolean input, boolean result, List<Field> parameters, List<Field> results) {}

    private static final Map<String, Long> CONSTANTS = new LinkedHashMap<>();
    private static final Map<String, Calculation> CALCULATIONS = new LinkedHashMap<>();

    static {
        read();
    }

    private Table() {}

    static long constant(String name) {
        return CONSTANTS.get(name);
    }

    /** All calculations by their names. */
    static Map<String, Calculation> calculations() {
        return CALCULATIONS;
    }

    private static void read() {
        try (BufferedReader lines =
                new BufferedReader(
                        new InputStreamReader(
                                Table.class.getResourceAsStream("calculations.txt"), StandardCharsets.UTF_8))) {
            Calculation last = null;
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                String[] parts = line.split("\t");
                switch (parts[0]) {
                    case "constant" -> CONSTANTS.put(parts[1], Long.valueOf(parts[2]));
                    case "calculation" -> {
                        boolean input = Boolean.parseBoolean(parts[2]), result = Boolean.parseBoolean(parts[3]);
                        last = new Calculation(input, result, new ArrayList<>(), new ArrayList<>());
                        CALCULATIONS.put(parts[1], last);
                    }
                    case "parameter" -> last.parameters.add(field(parts));
                    case "result" -> last.results.add(field(parts));
                    default -> {
                        // A comment.
                    }
                }
            }
        } catch (IOException error) {
            throw new UncheckedIOException(error);
        }
    }

    private static Field field(String[] parts) {
        return new Field(parts[1], parts[2], parts.length > 3 ? parts[3] : "");
    }
}
