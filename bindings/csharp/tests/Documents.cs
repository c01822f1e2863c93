using System;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Threading;
using Pourwright;

/// <summary>Books, plans, requests and arguments: right, wrong and odd; handles, threads.</summary>
internal static class Documents
{
    private static int Main()
    {
        var book = Check.TextOf("core/examples/demo/book.json");
        var orders = Check.TextOf("core/examples/demo/orders.json");
        Check.That(Pour.Version == Environment.GetEnvironmentVariable("POURWRIGHT_VERSION"), Pour.Version);
        Plans(book, orders);
        Numbers();
        Threads(book, orders);
        Memory(book, orders);
        return Check.Finish("documents");
    }

    private static void Plans(string text, string orders)
    {
        var book = new Book(text);
        var plan = book.Plan(orders);
        var again = new Plan(plan.Json());
        Check.That(plan.Sheet().Contains("ORDER OF WORK") && plan.Notes().Contains("COST in USD"), "sheet and notes");
        Check.That(again.Json() == plan.Json(), "a plan is opened again");
        const string formula = "{\"calculate\":\"formula\",\"formulas\":[\"dusk\",\"plain\"],\"base_amount\":\"1 cup\"}";
        Check.That(book.Request(formula) == plan.Request(formula), "requests of what is open");
        const string record = "{\"calculate\":\"record\",\"actuals\":{\"format\":\"pourwright/1.0\",\"pots\":{}}}";
        Check.That(plan.Request(record).StartsWith("{\"result\":", StringComparison.Ordinal), "a record");
        Check.Refused("missing-field", "", () => book.Request(record));
        Check.Refused("missing-field", "", () => Pour.Request(formula));
        Check.Refused("budget-pots", "", () => book.Plan(orders, pots: 1));
        Check.Refused("budget-work", "", () => book.Plan(orders, thousandSteps: 0));
        Check.Refused("unknown-name", "/lines/2/product", () => book.Plan(orders.Replace("reed paddle", "reed padle")));
        var wrong = Check.Refused("not-json", "", () => new Book("{"));
        Check.That(wrong.Status == 6 && wrong.Code == "not-json" && wrong.Help != "", wrong.ToString());
        Check.Refused("not-json", "", () => new Book(""));
        Check.Refused("wrong-type", "", () => new Plan("[]"));
        Check.Refused("too-large", "/json", () => new Book(new string(' ', 16 * 1024 * 1024 + 1)));
        Check.That(Pour.Answer("{}\0").Contains("not-json"), "a NUL in a request");
        Check.That(Pour.Schema("orders").StartsWith("{", StringComparison.Ordinal), "a schema");
        Check.Refused("no-such-schema", "/name", () => Pour.Schema("shop"));
        book.Dispose();
        book.Dispose();
        Disposed(() => book.Plan(orders));
        Check.That(plan.Sheet() == again.Sheet(), "a plan outlives its book");
        plan.Dispose();
        Disposed(() => plan.Sheet());
        for (var count = 0; count < 200; count++) new Book(text);
        GC.Collect();
        GC.WaitForPendingFinalizers();
    }

    private static void Disposed(Action call)
    {
        try
        {
            call();
        }
        catch (ObjectDisposedException)
        {
            Check.That(true, "");
            return;
        }
        Check.That(false, "not refused");
    }

    private static void Numbers()
    {
        Check.That(Calculations.PieceMass(10, 1.0625, 1.0).PieceMassG == 10.3125, "a call");
        Check.That(Calculations.PieceMass(10, 1.0625, feed: 0.5).PieceMassG > 10, "a named argument");
        Check.Refused("out-of-range", "/voids", () => Calculations.PieceMass(10, 1, voids: -double.MaxValue));
        Check.Refused("wrong-type", "/parts/0", () => Calculations.DensityOfParts(new[] { new[] { 1.0 } }));
        Check.Refused("wrong-type", "/parts/0", () => Calculations.DensityOfParts(new double[][] { null }));
        Check.Refused("out-of-range", "/pieces", () => Calculations.Shots(uint.MaxValue, 4));
        Check.Refused("unknown-word", "/measures", () => Calculations.Convert("1 cup", "mL", "troy"));
        Check.Refused("wrong-type", "/to", () => Calculations.Convert("1 cup", "mL\0"));
        Check.Refused("missing-field", "/amount", () => Calculations.Convert(null, "mL"));
        Check.Refused("too-large", "/amount", () => Calculations.Convert(new string('x', 5000), "mL"));
        var all = Check.Refused("out-of-range", "/cold_density_g_per_ml", () => Calculations.PieceMass(10, 1030, feed: 3));
        Check.That(all.Faults.Count == 2 && all.Message.Contains("/feed: "), all.Message);
    }

    /// <summary>What a process takes does not grow with the number of calls: a plan alone takes 390 kB, its text 140 kB.</summary>
    private static void Memory(string text, string orders)
    {
        var before = 0L;
        for (var count = 0; count < 200; count++)
        {
            if (count == 40) before = ResidentKilobytes();
            using (var book = new Book(text))
            using (var plan = book.Plan(orders)) plan.Json();
            Check.Refused("not-json", "", () => new Book("["));
        }
        var grown = ResidentKilobytes() - before;
        Check.That(grown < 15000, "160 plans took " + grown + " kB");
    }

    /// <summary>The memory of the process, on Linux; 0 elsewhere.</summary>
    private static long ResidentKilobytes()
    {
        if (!File.Exists("/proc/self/status")) return 0;
        var line = File.ReadAllLines("/proc/self/status").First(one => one.StartsWith("VmRSS:", StringComparison.Ordinal));
        return long.Parse(new string(line.Where(char.IsDigit).ToArray()), CultureInfo.InvariantCulture);
    }

    private static void Threads(string text, string orders)
    {
        using (var book = new Book(text))
        {
            string wanted;
            using (var plan = book.Plan(orders)) wanted = plan.Json();
            var right = 0;
            var threads = Enumerable.Range(0, 4).Select(_ => new Thread(() =>
            {
                for (var count = 0; count < 2; count++)
                    using (var plan = book.Plan(orders))
                        if (plan.Json() == wanted) Interlocked.Increment(ref right);
            })).ToList();
            threads.ForEach(thread => thread.Start());
            threads.ForEach(thread => thread.Join());
            Check.That(right == 8, right + " of 8 plans of threads");
        }
    }
}
