package pourwright;

import com.sun.jna.Pointer;

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
        int none = (int) Table.constant("POUR_OMITTED_COUNT");
        return plan(orders, none, none);
    }

    /** The same with at most this number of pots, and of thousands of steps of work. */
    public Plan plan(String orders, int pots, int thousandSteps) {
        byte[] utf8 = Library.utf8(orders);
        Object length = Library.size(utf8.length - 1);
        Pointer none = Pointer.NULL;
        return new Plan(
                with(book -> Library.handle("pour_book_plan_within", book, utf8, length, pots, thousandSteps, none, none)));
    }
}
