package pourwright;

import com.sun.jna.Pointer;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The shop's book, read once. Many threads may use one. */
public final class Book extends Handle {
    private Book(Pointer pointer) {
        super("book", pointer);
    }

    /** Opens a book from its JSON text; throws all its faults. */
    public static Book open(String json) {
        byte[] utf8 = Library.utf8(json);
        return new Book(Library.handle("pour_book_from_json", utf8, Library.size(utf8.length - 1)));
    }

    /** Plans the day of an order list, JSON text; throws all its faults, or why the day cannot be planned. */
    public Plan plan(String orders) {
        long none = Table.constant("POUR_OMITTED_COUNT");
        return within(orders, none, none);
    }

    /** The same with at most this number of pots (default: 5000), and of thousands of steps of work (default: 10000). */
    public Plan plan(String orders, int pots, int thousandSteps) {
        List<Fault> faults = new ArrayList<>();
        Map.of("pots", pots, "thousandSteps", thousandSteps)
                .forEach(
                        (name, number) -> {
                            if (number < 0) {
                                String message = name + " is " + number + ", which is out of range.";
                                faults.add(new Fault("out-of-range", "/" + name, message, "Give 0 or more."));
                            }
                        });
        if (!faults.isEmpty()) {
            throw new PourwrightException((int) Table.constant("POUR_REFUSED"), faults);
        }
        return within(orders, pots, thousandSteps);
    }

    private Plan within(String orders, long pots, long steps) {
        byte[] utf8 = Library.utf8(orders);
        Object length = Library.size(utf8.length - 1);
        Pointer none = Pointer.NULL;
        return new Plan(
                with(book -> Library.handle("pour_book_plan_within", book, utf8, length, (int) pots, (int) steps, none, none)));
    }
}
