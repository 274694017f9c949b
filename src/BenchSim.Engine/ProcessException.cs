using System.Globalization;

namespace BenchSim.Engine;

/// <summary>Something went wrong inside a process: says in which one and when. Comes out of <see cref="Simulation.Run(double)"/>.</summary>
public sealed class ProcessException : Exception
{
    internal ProcessException(string process, double time, string what, Exception? inner)
        : base(string.Create(CultureInfo.InvariantCulture, $"{process}, day {time:0.####}: {what}"), inner)
    {
        Process = process;
        Time = time;
    }

    /// <summary>Name of the process.</summary>
    public string Process { get; }

    /// <summary>When, in days.</summary>
    public double Time { get; }
}
