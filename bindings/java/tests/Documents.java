import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import pourwright.Book;
import pourwright.Plan;
import pourwright.Pour;
import pourwright.PourwrightException;

/** Books, plans, requests and arguments: right, wrong and odd; handles, threads. */
public final class Documents {
    private Documents() {}

    public static void main(String[] arguments) throws Exception {
        String book = Check.textOf("core/examples/demo/book.json"), orders = Check.textOf("core/examples/demo/orders.json");
        Check.that(Pour.version().equals(System.getenv("POURWRIGHT_VERSION")), Pour.version());
        plans(book, orders);
        numbers();
        threads(book, orders);
        memory(book, orders);
        Check.finish("documents");
    }

    private static void plans(String text, String orders) {
        Book book = Book.open(text);
        Plan plan = book.plan(orders), again = Plan.open(plan.json());
        Check.that(plan.sheet().contains("ORDER OF WORK") && plan.notes().contains("COST in USD"), "sheet and notes");
        Check.that(again.json().equals(plan.json()), "a plan is opened again");
        String formula = "{\"calculate\":\"formula\",\"formulas\":[\"dusk\",\"plain\"],\"base_amount\":\"1 cup\"}";
        Check.that(book.request(formula).equals(plan.request(formula)), "requests of what is open");
        String record = "{\"calculate\":\"record\",\"actuals\":{\"format\":\"pourwright/1.0\",\"pots\":{}}}";
        Check.that(plan.request(record).startsWith("{\"result\":"), "a record");
        Check.refused("missing-field", "", () -> book.request(record));
        Check.refused("missing-field", "", () -> Pour.request(formula));
        Check.refused("budget-pots", "", () -> book.plan(orders, 1, 10_000));
        Check.refused("out-of-range", "/pots", () -> book.plan(orders, -1, 10_000));
        Check.refused("unknown-name", "/lines/2/product", () -> book.plan(orders.replace("reed paddle", "reed padle")));
        PourwrightException wrong = Check.refused("not-json", "", () -> Book.open("{"));
        Check.that(wrong.status() == 6 && wrong.code().equals("not-json") && !wrong.help().isEmpty(), wrong.toString());
        Check.refused("not-json", "", () -> Book.open(""));
        Check.refused("wrong-type", "", () -> Plan.open("[]"));
        Check.refused("too-large", "/json", () -> Book.open(" ".repeat(16 * 1024 * 1024 + 1)));
        Check.that(Pour.answer("{}\0").contains("not-json"), "a NUL in a request");
        Check.that(Pour.schema("orders").startsWith("{"), "a schema");
        Check.refused("no-such-schema", "/name", () -> Pour.schema("shop"));
        book.close();
        book.close();
        Check.refused("book-freed", "", () -> book.plan(orders));
        Check.that(plan.sheet().equals(again.sheet()), "a plan outlives its book");
        plan.close();
        Check.refused("plan-freed", "", plan::sheet);
        for (int count = 0; count < 200; count++) {
            Book.open(text);
        }
        System.gc();
    }

    private static void numbers() {
        Map<String, Object> piece = Map.of("cavity_volume_ml", 10, "cold_density_g_per_ml", 1.0625, "hot_density_g_per_ml", 1f);
        Check.that(Pour.calculate("piece_mass", piece).get("piece_mass_g").equals(10.3125), "a call");
        List<double[]> rows = List.of(new double[] {100, 1}, new double[] {50, 2});
        Check.that(Pour.calculate("density_of_parts", Map.of("parts", rows)).size() == 1, "rows as arrays");
        Check.refused("unknown-name", "", () -> Pour.calculate("no_such", Map.of()));
        Check.refused("unknown-field", "/no_such", () -> Pour.calculate("piece_mass", Map.of("no_such", 1)));
        Check.refused("missing-field", "/cavity_volume_ml", () -> Pour.calculate("piece_mass", Map.of()));
        Check.refused("wrong-type", "/cavity_volume_ml", () -> Pour.calculate("piece_mass", Map.of("cavity_volume_ml", "1/4 tsp")));
        Check.refused("out-of-range", "/voids", () -> Pour.calculate("piece_mass", Map.of("voids", -Double.MAX_VALUE)));
        Check.refused("wrong-type", "/parts/0", () -> Pour.calculate("density_of_parts", Map.of("parts", List.of(List.of(1.0)))));
        Check.refused("wrong-type", "/parts", () -> Pour.calculate("density_of_parts", Map.of("parts", 5)));
        Check.refused("wrong-type", "/pieces", () -> Pour.calculate("shots", Map.of("pieces", 1.5)));
        for (long count : new long[] {-1, 0xffff_ffffL, Long.MAX_VALUE}) {
            Check.refused("out-of-range", "/pieces", () -> Pour.calculate("shots", Map.of("pieces", count)));
        }
        Check.refused("unknown-word", "/measures", () -> Pour.calculate("convert", Map.of("measures", "troy")));
        Check.refused("wrong-type", "/to", () -> Pour.calculate("convert", Map.of("amount", "1 cup", "to", "mL\0")));
        PourwrightException all = Check.refused("wrong-type", "/voids", () -> Pour.calculate("piece_mass", Map.of("voids", "5 %", "feed", true)));
        Check.that(all.faults().size() == 2 && all.getMessage().contains("/feed: "), all.getMessage());
    }

    /** What a process takes does not grow with the number of calls: a plan alone takes 390 kB, its text 140 kB. */
    private static void memory(String text, String orders) throws Exception {
        long before = 0;
        for (int count = 0; count < 200; count++) {
            if (count == 40) {
                before = residentKilobytes();
            }
            try (Book book = Book.open(text);
                    Plan plan = book.plan(orders)) {
                plan.json();
            }
            Check.refused("not-json", "", () -> Book.open("["));
        }
        long grown = residentKilobytes() - before;
        Check.that(grown < 15_000, "160 plans took " + grown + " kB");
    }

    /** The memory of the process, on Linux; 0 elsewhere. */
    private static long residentKilobytes() throws Exception {
        Path status = Path.of("/proc/self/status");
        if (!Files.exists(status)) {
            return 0;
        }
        String line = Files.readAllLines(status).stream().filter(one -> one.startsWith("VmRSS:")).findFirst().orElseThrow();
        return Long.parseLong(line.replaceAll("\\D", ""));
    }

    private static void threads(String text, String orders) throws Exception {
        try (Book book = Book.open(text)) {
            String wanted = book.plan(orders).json();
            ExecutorService workers = Executors.newFixedThreadPool(4);
            Callable<String> work =
                    () -> {
                        try (Plan plan = book.plan(orders)) {
                            return plan.json();
                        }
                    };
            for (Future<String> found : workers.invokeAll(List.of(work, work, work, work, work, work))) {
                Check.that(found.get().equals(wanted), "a thread has another plan");
            }
            workers.shutdown();
        }
    }
}
