using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Text;
using Pourwright;

/// <summary>What the tests share.</summary>
internal static class Check
{
    private static readonly string Root = Environment.GetEnvironmentVariable("POURWRIGHT_ROOT");
    private static int count;
    private static int failures;

    internal static string TextOf(string path) => File.ReadAllText(Path.Combine(Root, path), Encoding.UTF8);

    /// <summary>The lines of a file, an empty one among them too.</summary>
    internal static string[] Lines(string path)
    {
        var lines = TextOf(path).Split('\n');
        return lines.Take(lines.Length - 1).ToArray();
    }

    internal static void That(bool holds, string what)
    {
        count++;
        if (holds) return;
        failures++;
        Console.Error.WriteLine(what);
    }

    /// <summary>Checks that a call is refused with this fault among its faults.</summary>
    internal static PourwrightException Refused(string code, string path, Action call)
    {
        try
        {
            call();
        }
        catch (PourwrightException error)
        {
            var right = error.Faults.Any(
                fault => fault.Code == code && fault.Path == path && fault.Message != "" && fault.Help != "");
            That(right, "no " + code + " at " + path + ": " + error.Message);
            return error;
        }
        That(false, "no " + code + " at " + path + ": not refused");
        return null;
    }

    /// <summary>Writes answers to the folder that POURWRIGHT_ANSWERS names, if it does: tests/doors.</summary>
    internal static void WriteAnswers(string name, IEnumerable<string> answers)
    {
        var folder = Environment.GetEnvironmentVariable("POURWRIGHT_ANSWERS");
        if (!string.IsNullOrEmpty(folder))
            File.WriteAllText(Path.Combine(folder, "csharp." + name + ".jsonl"), string.Join("\n", answers) + "\n");
    }

    internal static int Finish(string name)
    {
        if (failures > 0)
        {
            Console.Error.WriteLine(name + ": " + failures + " of " + count + " checks failed");
            return 1;
        }
        Console.WriteLine(name + ": " + count + " checks");
        return 0;
    }
}
