package pourwright;

import com.sun.jna.Pointer;

/** The plan of a day. It does not need its book. Many threads may use one. */
public final class Plan extends Handle {
    Plan(Pointer pointer) {
        super("plan", pointer);
    }

    /** Opens a stored plan from its JSON text; throws all its faults. */
    public static Plan open(String json) {
        byte[] utf8 = Library.utf8(json);
        return new Plan(Library.handle("pour_plan_from_json", utf8, Library.size(utf8.length - 1)));
    }

    /** The bench sheet: text of 80 columns. */
    public String sheet() {
        return with(plan -> Library.text("pour_plan_sheet", plan));
    }

    /** The notes to it: what to know beyond the sheet. */
    public String notes() {
        return with(plan -> Library.text("pour_plan_notes", plan));
    }

    /** The plan as JSON text, complete: to be stored, and opened again. */
    public String json() {
        return with(plan -> Library.text("pour_plan_json", plan));
    }
}
