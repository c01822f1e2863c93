using System;
using System.Collections.Generic;
using System.Runtime.InteropServices;

namespace Pourwright
{
    /// <summary>A call of a calculation: its arguments as C takes them, and the memory that C reads until it is over.</summary>
    internal sealed class Call : IDisposable
    {
        /// <summary>The error of the call.</summary>
        internal IntPtr Error;

        private readonly List<Fault> faults = new List<Fault>();
        private readonly List<GCHandle> pinned = new List<GCHandle>();

        /// <summary>The length of the last list.</summary>
        internal UIntPtr Length { get; private set; }

        internal double Number(string name, double? number)
        {
            if (number == Native.Omitted)
                Refuse("out-of-range", "/" + name, name + " is " + number + ", which is out of range.", "Check the number.");
            return number ?? Native.Omitted;
        }

        internal uint Count(string name, uint? count)
        {
            if (count == Native.POUR_OMITTED_COUNT)
                Refuse("out-of-range", "/" + name, name + " is " + count + ", which is out of range.",
                    "Give a whole number from 0 to 4294967294.");
            return count ?? Native.POUR_OMITTED_COUNT;
        }

        internal IntPtr Text(string name, string text)
        {
            if (text == null) return IntPtr.Zero;
            if (text.IndexOf('\0') >= 0)
                Refuse("wrong-type", "/" + name, name + " must not have a NUL character.", "Remove it.");
            UIntPtr length;
            return Pin(Native.Utf8(text, out length));
        }

        internal int Word(string name, string word, string[] words)
        {
            if (word == null) return 0;
            var place = Array.IndexOf(words, word);
            if (place < 0)
                Refuse("unknown-word", "/" + name, "\"" + word + "\" is not a word for " + name + ".",
                    "Known: " + string.Join(", ", words) + ".");
            return place + 1;
        }

        internal IntPtr List(string name, double[] numbers)
        {
            Length = (UIntPtr)(numbers == null ? 0 : numbers.Length);
            if (numbers == null) return IntPtr.Zero;
            foreach (var number in numbers) Number(name, number);
            // An empty list is not a null pointer, which omits it.
            return Pin(numbers.Length == 0 ? new double[1] : numbers.Clone());
        }

        internal IntPtr Rows(string name, double[][] rows, int columns)
        {
            if (rows == null) return List(name, null);
            var numbers = new List<double>();
            for (var index = 0; index < rows.Length; index++)
            {
                if (rows[index] != null && rows[index].Length == columns)
                    numbers.AddRange(rows[index]);
                else
                    Refuse("wrong-type", "/" + name + "/" + index, name + "/" + index + " must be " + columns + " numbers.",
                        "Pass " + columns + " numbers.");
            }
            var start = List(name, numbers.ToArray());
            Length = (UIntPtr)rows.Length;
            return start;
        }

        /// <summary>Throws all faults that were found so far.</summary>
        internal void Ready()
        {
            if (faults.Count > 0) throw new PourwrightException((int)Native.POUR_REFUSED, faults);
        }

        internal void Check(int status)
        {
            Native.Check(status, Error);
        }

        internal static double? IfNumber(double number) => double.IsNaN(number) ? (double?)null : number;

        internal static uint? IfCount(uint count) => count == Native.POUR_OMITTED_COUNT ? (uint?)null : count;

        internal static string IfWord(int place, string[] words) => place == 0 ? null : words[place - 1];

        private IntPtr Pin(object memory)
        {
            var handle = GCHandle.Alloc(memory, GCHandleType.Pinned);
            pinned.Add(handle);
            return handle.AddrOfPinnedObject();
        }

        private void Refuse(string code, string path, string message, string help)
        {
            faults.Add(new Fault(code, path, message, help));
        }

        public void Dispose()
        {
            foreach (var handle in pinned) handle.Free();
        }
    }
}
