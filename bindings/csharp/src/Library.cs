using System;
using System.Collections.Generic;
using System.Runtime.InteropServices;
using System.Text;

namespace Pourwright
{
    /// <summary>The C library. The system's loader finds it by its name; see the README.</summary>
    internal static partial class Native
    {
        internal const string Library = "pourwright";
        internal const double Omitted = -double.MaxValue;

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern uint pour_abi_version();

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern IntPtr pour_version();

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern void pour_string_free(IntPtr text);

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern UIntPtr pour_error_count(IntPtr error);

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern IntPtr pour_error_code(IntPtr error, UIntPtr index);

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern IntPtr pour_error_path(IntPtr error, UIntPtr index);

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern IntPtr pour_error_message(IntPtr error, UIntPtr index);

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern IntPtr pour_error_help(IntPtr error, UIntPtr index);

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern IntPtr pour_error_json(IntPtr error);

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern void pour_error_free(IntPtr error);

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_request(byte[] json, UIntPtr len, out IntPtr text, out UIntPtr length, out IntPtr error);

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_schema(byte[] name, out IntPtr text, out UIntPtr length, out IntPtr error);

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_book_from_json(byte[] json, UIntPtr len, out BookHandle book, out IntPtr error);

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern void pour_book_free(IntPtr book);

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_book_request(
            BookHandle book, byte[] json, UIntPtr len, out IntPtr text, out UIntPtr length, out IntPtr error);

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_book_plan_within(
            BookHandle book, byte[] orders, UIntPtr len, uint pots, uint thousandSteps, IntPtr stop, IntPtr user,
            out PlanHandle plan, out IntPtr error);

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_plan_from_json(byte[] json, UIntPtr len, out PlanHandle plan, out IntPtr error);

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern void pour_plan_free(IntPtr plan);

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_plan_request(
            PlanHandle plan, byte[] json, UIntPtr len, out IntPtr text, out UIntPtr length, out IntPtr error);

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_plan_json(PlanHandle plan, out IntPtr text, out UIntPtr length, out IntPtr error);

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_plan_sheet(PlanHandle plan, out IntPtr text, out UIntPtr length, out IntPtr error);

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_plan_notes(PlanHandle plan, out IntPtr text, out UIntPtr length, out IntPtr error);

        static Native()
        {
            if (pour_abi_version() != POUR_ABI_VERSION)
                throw new DllNotFoundException("The pourwright library is of another version than this assembly.");
        }

        /// <summary>A text as C takes it, with a NUL behind it, which no length counts.</summary>
        internal static byte[] Utf8(string text, out UIntPtr length)
        {
            var bytes = new byte[Encoding.UTF8.GetByteCount(text) + 1];
            length = (UIntPtr)Encoding.UTF8.GetBytes(text, 0, text.Length, bytes, 0);
            return bytes;
        }

        /// <summary>A text of C up to its NUL.</summary>
        internal static string TextAt(IntPtr text)
        {
            var length = 0;
            while (Marshal.ReadByte(text, length) != 0) length++;
            return TextAt(text, length);
        }

        private static string TextAt(IntPtr text, int length)
        {
            var bytes = new byte[length];
            Marshal.Copy(text, bytes, 0, length);
            return Encoding.UTF8.GetString(bytes);
        }

        /// <summary>A text that the library handed out, which is freed.</summary>
        internal static string Taken(IntPtr text, UIntPtr length)
        {
            try
            {
                return TextAt(text, checked((int)length));
            }
            finally
            {
                pour_string_free(text);
            }
        }

        /// <summary>Throws the error of a call, and frees it.</summary>
        internal static void Check(int status, IntPtr error)
        {
            if (status == POUR_OK) return;
            var faults = new List<Fault>();
            try
            {
                for (uint index = 0; index < (uint)pour_error_count(error); index++)
                {
                    var at = (UIntPtr)index;
                    faults.Add(new Fault(
                        TextAt(pour_error_code(error, at)), TextAt(pour_error_path(error, at)),
                        TextAt(pour_error_message(error, at)), TextAt(pour_error_help(error, at))));
                }
            }
            finally
            {
                pour_error_free(error);
            }
            throw new PourwrightException(status, faults);
        }
    }

    /// <summary>A book of the library; the runtime frees it once, when no call uses it any more.</summary>
    internal sealed class BookHandle : SafeHandle
    {
        private BookHandle() : base(IntPtr.Zero, true) { }

        public override bool IsInvalid => handle == IntPtr.Zero;

        protected override bool ReleaseHandle()
        {
            Native.pour_book_free(handle);
            return true;
        }
    }

    /// <summary>A plan of the library.</summary>
    internal sealed class PlanHandle : SafeHandle
    {
        private PlanHandle() : base(IntPtr.Zero, true) { }

        public override bool IsInvalid => handle == IntPtr.Zero;

        protected override bool ReleaseHandle()
        {
            Native.pour_plan_free(handle);
            return true;
        }
    }
}
