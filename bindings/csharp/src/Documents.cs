using System;

namespace Pourwright
{
    /// <summary>Calculations as requests: JSON text in and out. Documents may have any length up to 16 MiB.</summary>
    public static class Pour
    {
        /// <summary>The version of the library.</summary>
        public static string Version => Native.TextAt(Native.pour_version());

        /// <summary>Answers a request: {"result":...} or {"faults":[...]}, the same text at every door. Faults throw nothing.</summary>
        public static string Answer(string request)
        {
            UIntPtr length, len;
            IntPtr text, error;
            var json = Native.Utf8(request, out len);
            if (Native.pour_request(json, len, out text, out length, out error) == Native.POUR_OK) return Native.Taken(text, length);
            try
            {
                return Native.TextAt(Native.pour_error_json(error));
            }
            finally
            {
                Native.pour_error_free(error);
            }
        }

        /// <summary>Does the calculation of a request (core/REQUESTS.md): {"result":...}.</summary>
        /// <exception cref="PourwrightException">All faults of the request.</exception>
        public static string Request(string request)
        {
            UIntPtr length, len;
            IntPtr text, error;
            var json = Native.Utf8(request, out len);
            Native.Check(Native.pour_request(json, len, out text, out length, out error), error);
            return Native.Taken(text, length);
        }

        /// <summary>A JSON Schema: request, answer, book, orders, actuals, plan.</summary>
        /// <exception cref="PourwrightException">There is no such schema.</exception>
        public static string Schema(string name)
        {
            UIntPtr length, len;
            IntPtr text, error;
            var utf8 = Native.Utf8(name, out len);
            Native.Check(Native.pour_schema(utf8, out text, out length, out error), error);
            return Native.Taken(text, length);
        }
    }

    /// <summary>The shop's book, read once. Many threads may use one; after Dispose it must not be used.</summary>
    public sealed class Book : IDisposable
    {
        private readonly BookHandle handle;

        /// <summary>Opens a book from its JSON text.</summary>
        /// <exception cref="PourwrightException">All faults of the book.</exception>
        public Book(string json)
        {
            UIntPtr len;
            IntPtr error;
            var utf8 = Native.Utf8(json, out len);
            Native.Check(Native.pour_book_from_json(utf8, len, out handle, out error), error);
        }

        /// <summary>Plans the day of an order list, JSON text.</summary>
        /// <param name="orders">The order list.</param>
        /// <param name="pots">Maximum number of pots. Default: 5000.</param>
        /// <param name="thousandSteps">Maximum work, in thousands of steps. Default: 10000.</param>
        /// <exception cref="PourwrightException">All faults of the orders, or why the day cannot be planned.</exception>
        public Plan Plan(string orders, uint? pots = null, uint? thousandSteps = null)
        {
            UIntPtr len;
            IntPtr error;
            PlanHandle plan;
            var utf8 = Native.Utf8(orders, out len);
            var status = Native.pour_book_plan_within(
                handle, utf8, len, pots ?? Native.POUR_OMITTED_COUNT, thousandSteps ?? Native.POUR_OMITTED_COUNT, IntPtr.Zero, IntPtr.Zero,
                out plan, out error);
            Native.Check(status, error);
            return new Plan(plan);
        }

        /// <summary>Does the calculation of a request, which leaves its book out.</summary>
        /// <exception cref="PourwrightException">All faults of the request.</exception>
        public string Request(string request)
        {
            UIntPtr length, len;
            IntPtr text, error;
            var utf8 = Native.Utf8(request, out len);
            Native.Check(Native.pour_book_request(handle, utf8, len, out text, out length, out error), error);
            return Native.Taken(text, length);
        }

        /// <summary>Frees its memory, at once or when the last call on it ends.</summary>
        public void Dispose() => handle?.Dispose();
    }

    /// <summary>The plan of a day. It does not need its book. Many threads may use one.</summary>
    public sealed class Plan : IDisposable
    {
        private readonly PlanHandle handle;

        internal Plan(PlanHandle handle)
        {
            this.handle = handle;
        }

        /// <summary>Opens a stored plan from its JSON text.</summary>
        /// <exception cref="PourwrightException">All faults of the plan.</exception>
        public Plan(string json)
        {
            UIntPtr len;
            IntPtr error;
            var utf8 = Native.Utf8(json, out len);
            Native.Check(Native.pour_plan_from_json(utf8, len, out handle, out error), error);
        }

        private delegate int Read(PlanHandle plan, out IntPtr text, out UIntPtr length, out IntPtr error);

        private string Text(Read read)
        {
            UIntPtr length;
            IntPtr text, error;
            Native.Check(read(handle, out text, out length, out error), error);
            return Native.Taken(text, length);
        }

        /// <summary>The bench sheet: text of 80 columns.</summary>
        public string Sheet() => Text(Native.pour_plan_sheet);

        /// <summary>The notes to it: what to know beyond the sheet.</summary>
        public string Notes() => Text(Native.pour_plan_notes);

        /// <summary>The plan as JSON text, complete: to be stored, and opened again.</summary>
        public string Json() => Text(Native.pour_plan_json);

        /// <summary>Does the calculation of a request, which leaves its book and plan out.</summary>
        /// <exception cref="PourwrightException">All faults of the request.</exception>
        public string Request(string request)
        {
            UIntPtr length, len;
            IntPtr text, error;
            var utf8 = Native.Utf8(request, out len);
            Native.Check(Native.pour_plan_request(handle, utf8, len, out text, out length, out error), error);
            return Native.Taken(text, length);
        }

        /// <summary>Frees its memory, at once or when the last call on it ends.</summary>
        public void Dispose() => handle?.Dispose();
    }
}
