using System;
using System.Collections;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Runtime.InteropServices;
using System.Text;

/// <summary>JSON for the tests: numbers with a point or an exponent are double, others long.</summary>
internal sealed class Json
{
    private readonly string text;
    private int at;

    /// <summary>The nearest double; Mono's double.Parse is off by the last bit of some.</summary>
    [DllImport("libc", EntryPoint = "strtod", CallingConvention = CallingConvention.Cdecl)]
    private static extern double Decimal([MarshalAs(UnmanagedType.LPStr)] string text, IntPtr end);

    private Json(string text)
    {
        this.text = text;
    }

    internal static object Read(string text)
    {
        var json = new Json(text);
        var value = json.Value();
        json.Spaces();
        if (json.at != text.Length) throw new FormatException(text);
        return value;
    }

    internal static string Write(object value)
    {
        if (value == null) return "null";
        var text = value as string;
        if (text != null) return "\"" + text.Replace("\\", "\\\\").Replace("\"", "\\\"") + "\"";
        var map = value as IDictionary<string, object>;
        if (map != null) return "{" + string.Join(",", map.Select(one => Write(one.Key) + ":" + Write(one.Value))) + "}";
        var list = value as IEnumerable;
        if (list != null) return "[" + string.Join(",", list.Cast<object>().Select(Write)) + "]";
        if (value is double) return Decimal((double)value);
        return Convert.ToString(value, CultureInfo.InvariantCulture);
    }

    /// <summary>A decimal that reads back as the same bits; Mono's "R" forgets the sign of zero.</summary>
    private static string Decimal(double number)
    {
        if (number == 0) return BitConverter.DoubleToInt64Bits(number) < 0 ? "-0.0" : "0.0";
        return number.ToString("G17", CultureInfo.InvariantCulture);
    }

    private void Spaces()
    {
        while (at < text.Length && " \n\r\t".IndexOf(text[at]) >= 0) at++;
    }

    private object Value()
    {
        Spaces();
        switch (text[at])
        {
            case '{':
                var map = new Dictionary<string, object>();
                for (at++, Spaces(); text[at] != '}'; Comma())
                {
                    Spaces();
                    var name = Text();
                    Spaces();
                    at++;
                    map[name] = Value();
                }
                at++;
                return map;
            case '[':
                var list = new List<object>();
                for (at++, Spaces(); text[at] != ']'; Comma()) list.Add(Value());
                at++;
                return list;
            case '"':
                return Text();
            case 'n':
                at += 4;
                return null;
            case 't':
                at += 4;
                return true;
            case 'f':
                at += 5;
                return false;
            default:
                var start = at;
                while (at < text.Length && "+-.eE0123456789".IndexOf(text[at]) >= 0) at++;
                var number = text.Substring(start, at - start);
                if (number.IndexOfAny(".eE".ToCharArray()) < 0) return long.Parse(number, CultureInfo.InvariantCulture);
                return Decimal(number, IntPtr.Zero);
        }
    }

    private void Comma()
    {
        Spaces();
        if (text[at] == ',') at++;
        Spaces();
    }

    private string Text()
    {
        var made = new StringBuilder();
        for (at++; text[at] != '"'; at++)
        {
            var letter = text[at];
            if (letter == '\\')
            {
                letter = text[++at];
                if (letter == 'u')
                {
                    letter = (char)int.Parse(text.Substring(at + 1, 4), NumberStyles.HexNumber, CultureInfo.InvariantCulture);
                    at += 4;
                }
                else if ("bfnrt".IndexOf(letter) >= 0)
                {
                    letter = "\b\f\n\r\t"["bfnrt".IndexOf(letter)];
                }
            }
            made.Append(letter);
        }
        at++;
        return made.ToString();
    }
}
