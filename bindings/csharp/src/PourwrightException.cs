using System;
using System.Collections.Generic;
using System.Linq;

namespace Pourwright
{
    /// <summary>One fault of a call.</summary>
    public sealed class Fault
    {
        internal Fault(string code, string path, string message, string help)
        {
            Code = code;
            Path = path;
            Message = message;
            Help = help;
        }

        /// <summary>Stable name of the kind of fault, such as salt-out-of-reach: core/ERRORS.md.</summary>
        public string Code { get; }

        /// <summary>Its place, as a JSON Pointer: in the document, or /parameter of the call; empty for the whole.</summary>
        public string Path { get; }

        /// <summary>What was found, as a sentence.</summary>
        public string Message { get; }

        /// <summary>What would fix it, as a sentence.</summary>
        public string Help { get; }

        /// <summary>All of it in one line.</summary>
        public override string ToString() => (Path == "" ? "" : Path + ": ") + Message + " " + Help + " [" + Code + "]";
    }

    /// <summary>A refused call: one fault or more, in the order in which they were found. The message has a line for each.</summary>
    public sealed class PourwrightException : Exception
    {
        internal PourwrightException(int status, IReadOnlyList<Fault> faults)
            : base(string.Join("\n", faults.Select(fault => fault.ToString())))
        {
            Status = status;
            Faults = faults;
        }

        /// <summary>The status of the call in C, such as 6 for "refused".</summary>
        public int Status { get; }

        /// <summary>All faults; at least one.</summary>
        public IReadOnlyList<Fault> Faults { get; }

        /// <summary>The code of the first fault.</summary>
        public string Code => Faults[0].Code;

        /// <summary>The path of the first fault.</summary>
        public string Path => Faults[0].Path;

        /// <summary>What would fix the first fault.</summary>
        public string Help => Faults[0].Help;
    }
}
