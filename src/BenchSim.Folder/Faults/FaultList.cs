using System.Collections.Immutable;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Faults;

/// <summary>Gathers what is wrong while a folder is read, so that one pass shows all of it.</summary>
internal sealed class FaultList
{
    /// <summary>
    /// Faults that are kept. A file of another kind under the name of a plan can hold millions, which no one reads and no memory holds; the
    /// rest are counted.
    /// </summary>
    private const int MostKept = 10_000;

    private readonly List<Fault> _faults = [];
    private int _more;
    private readonly List<Fault> _warnings = [];

    /// <summary>Faults so far.</summary>
    public int Count => _faults.Count + _more;

    /// <summary>Whether further faults are only counted.</summary>
    public bool IsFull => _faults.Count >= MostKept;

    public ImmutableArray<Fault> Faults =>
        _more == 0
            ? Sorted(_faults)
            :
            [
                .. Sorted(_faults),
                new Fault(_faults[^1].Place, "there are more faults than are shown here", "mend these first and check again"),
            ];

    public ImmutableArray<Fault> Warnings => Sorted(_warnings);

    public void Add(SourcePlace place, string what, string instead)
    {
        if (IsFull)
        {
            _more++;
        }
        else
        {
            _faults.Add(new Fault(place, what, instead));
        }
    }

    public void Warn(SourcePlace place, string what, string instead) => _warnings.Add(new Fault(place, what, instead));

    // OrderBy is stable: faults at one place stay in the order in which they were found. A bad cell that another row borrows is reported
    // once.
    private static ImmutableArray<Fault> Sorted(List<Fault> faults) =>
        [
            .. faults
                .OrderBy(fault => fault.Place.File, StringComparer.Ordinal)
                .ThenBy(fault => fault.Place.Line)
                .ThenBy(fault => fault.Place.Column)
                .Distinct(),
        ];
}
