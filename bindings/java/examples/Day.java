import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import pourwright.Book;
import pourwright.Fault;
import pourwright.Plan;
import pourwright.PourwrightException;

/** Plans a day: {@code java Day BOOK.json ORDERS.json} prints the bench sheet, or all faults of the two files. */
public final class Day {
    private Day() {}

    public static void main(String[] arguments) throws Exception {
        if (arguments.length != 2) {
            System.err.println("Usage: java Day BOOK.json ORDERS.json");
            System.exit(2);
        }
        String reading = arguments[0];
        try (Book book = Book.open(Files.readString(Path.of(reading)))) {
            reading = arguments[1];
            try (Plan plan = book.plan(Files.readString(Path.of(reading)))) {
                new PrintStream(System.out, true, StandardCharsets.UTF_8).println(plan.sheet());
            }
        } catch (PourwrightException refused) {
            for (Fault fault : refused.faults()) {
                System.err.println(reading + fault);
            }
            System.exit(1);
        }
    }
}
