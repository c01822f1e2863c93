// Plans a day: Day BOOK.json ORDERS.json prints the bench sheet, or all faults of the two files.
using System;
using System.IO;
using System.Text;
using Pourwright;

internal static class Day
{
    private static int Main(string[] arguments)
    {
        if (arguments.Length != 2)
        {
            Console.Error.WriteLine("Usage: Day BOOK.json ORDERS.json");
            return 2;
        }
        Console.OutputEncoding = new UTF8Encoding(false);
        var reading = arguments[0];
        try
        {
            using (var book = new Book(File.ReadAllText(reading)))
            {
                reading = arguments[1];
                using (var plan = book.Plan(File.ReadAllText(reading))) Console.WriteLine(plan.Sheet());
            }
            return 0;
        }
        catch (PourwrightException refused)
        {
            foreach (var fault in refused.Faults) Console.Error.WriteLine(reading + fault);
            return 1;
        }
    }
}
