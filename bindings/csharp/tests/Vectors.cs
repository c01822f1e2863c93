using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Reflection;
using Pourwright;

/// <summary>Every vector of tests/vectors, calls on plain numbers and requests as text: the answers are the same, to the bit.</summary>
internal static class Vectors
{
    private static int Main()
    {
        Calls();
        Requests();
        return Check.Finish("vectors");
    }

    /// <summary>CavityVolumeMl of cavity_volume_ml; millipascal seconds are MPaS.</summary>
    private static string Camel(string name)
    {
        var words = name.Split('_').Select(word => word.Substring(0, 1).ToUpperInvariant() + word.Substring(1));
        var camel = string.Concat(words);
        return camel.EndsWith("MpaS", StringComparison.Ordinal) ? camel.Substring(0, camel.Length - 4) + "MPaS" : camel;
    }

    /// <summary>A value of a call as C# has it: what is no number in JSON is written as a text.</summary>
    private static object Plain(string kind, object value)
    {
        switch (kind)
        {
            case "number":
                return Number(value);
            case "count":
                return (uint)(long)value;
            case "list":
                return ((List<object>)value).Select(Number).ToArray();
            case "rows":
                return ((List<object>)value).Select(row => ((List<object>)row).Select(Number).ToArray()).ToArray();
            default:
                return value;
        }
    }

    private static double Number(object value)
    {
        switch (value as string)
        {
            case null:
                return Convert.ToDouble(value, CultureInfo.InvariantCulture);
            case "NaN":
                return double.NaN;
            case "Infinity":
                return double.PositiveInfinity;
            default:
                return double.NegativeInfinity;
        }
    }

    /// <summary>Whether two results are the same, numbers by their bits.</summary>
    private static bool Same(object found, object wanted)
    {
        if (found is double)
            return wanted is double
                && BitConverter.DoubleToInt64Bits((double)found) == BitConverter.DoubleToInt64Bits((double)wanted);
        if (found is uint) return wanted is long && (uint)found == (long)wanted;
        var list = found as uint[];
        if (list == null) return Equals(found, wanted);
        var other = wanted as List<object>;
        return other != null && list.Length == other.Count && list.Zip(other, (one, two) => Same(one, two)).All(same => same);
    }

    private static void Calls()
    {
        var table = ((List<object>)((Dictionary<string, object>)Json.Read(Check.TextOf("core/schema/calculations.json")))["calculations"])
            .Cast<Dictionary<string, object>>().ToDictionary(one => (string)one["name"]);
        var methods = typeof(Calculations).GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly)
            .ToDictionary(method => method.Name);
        Check.That(methods.Count == table.Count, "the package has other calculations than the table");
        var answers = new List<string>();
        foreach (var line in Check.Lines("tests/vectors/calls.jsonl"))
        {
            var call = (Dictionary<string, object>)Json.Read(line);
            var calculation = table[(string)call["call"]];
            var method = methods[Camel((string)call["call"])];
            bool isSame;
            answers.Add(Json.Write(Answer(calculation, method, call, out isSame)));
            Check.That(isSame, "calls.jsonl:" + answers.Count + ": " + line + " gives " + answers.Last());
        }
        Check.That(answers.Count > 600, answers.Count + " calls");
        Check.WriteAnswers("calls", answers);
    }

    private static Dictionary<string, object> Answer(
        Dictionary<string, object> calculation, MethodInfo method, Dictionary<string, object> call, out bool isSame)
    {
        var given = (Dictionary<string, object>)call["given"];
        var parameters = ((List<object>)calculation["parameters"]).Cast<Dictionary<string, object>>().ToList();
        var passed = parameters.ToDictionary(
            one => Camel((string)one["field"]),
            one => given.ContainsKey((string)one["field"]) ? Plain((string)one["kind"], given[(string)one["field"]]) : Type.Missing);
        var arguments = method.GetParameters().Select(one => passed[one.Name.Substring(0, 1).ToUpperInvariant() + one.Name.Substring(1)]);
        object found;
        try
        {
            found = method.Invoke(null, BindingFlags.OptionalParamBinding, null, arguments.ToArray(), null);
        }
        catch (TargetInvocationException thrown)
        {
            var error = thrown.InnerException as PourwrightException;
            if (error == null) throw;
            var faults = error.Faults.Select(fault => new Dictionary<string, object> { ["code"] = fault.Code, ["path"] = fault.Path });
            var list = faults.Cast<object>().ToList();
            isSame = call.ContainsKey("faults") && Json.Write(call["faults"]) == Json.Write(list);
            return new Dictionary<string, object> { ["faults"] = list };
        }
        var wanted = call.ContainsKey("results") ? (Dictionary<string, object>)call["results"] : null;
        var fields = ((List<object>)calculation["results"]).Cast<Dictionary<string, object>>().Select(one => (string)one["field"]);
        var type = method.ReturnType;
        var isResult = type.Name == method.Name + "Result";
        var results = fields.ToDictionary(
            field => field, field => isResult ? type.GetProperty(Camel(field)).GetValue(found, null) : found);
        isSame = wanted != null && wanted.Count == results.Count
            && results.All(one => wanted.ContainsKey(one.Key) && Same(one.Value, wanted[one.Key]));
        return new Dictionary<string, object> { ["results"] = results };
    }

    private static void Requests()
    {
        var requests = Check.Lines("tests/vectors/requests.jsonl");
        var wanted = Check.Lines("tests/vectors/answers.jsonl");
        Check.That(requests.Length == wanted.Length && requests.Length > 400, requests.Length + " requests");
        var answers = requests.Select(Pour.Answer).ToList();
        for (var index = 0; index < answers.Count; index++)
            Check.That(answers[index] == wanted[index], "line " + (index + 1) + "\n  " + answers[index] + "\n  not\n  " + wanted[index]);
        Check.WriteAnswers("requests", answers);
    }
}
