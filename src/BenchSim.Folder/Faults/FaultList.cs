using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Folder.Faults;

/// <summary>Gathers what is wrong while a folder is read, so that one pass shows all of it.</summary>
internal sealed class FaultList
{
    private readonly List<Fault> _faults = [];
    private readonly List<Fault> _warnings = [];

    /// <summary>Faults so far.</summary>
    public int Count => _faults.Count;

    public ImmutableArray<Fault> Faults => Sorted(_faults);

    public ImmutableArray<Fault> Warnings => Sorted(_warnings);

    public void Add(SourcePlace place, string what, string instead) => _faults.Add(new Fault(place, what, instead));

    public void Warn(SourcePlace place, string what, string instead) => _warnings.Add(new Fault(place, what, instead));

    // OrderBy is stable: faults at one place stay in the order in which they were found. A bad cell that another row borrows is reported once.
    private static ImmutableArray<Fault> Sorted(List<Fault> faults) =>
        [.. faults.OrderBy(fault => fault.Place.File, StringComparer.Ordinal).ThenBy(fault => fault.Place.Line).ThenBy(fault => fault.Place.Column).Distinct()];
}
