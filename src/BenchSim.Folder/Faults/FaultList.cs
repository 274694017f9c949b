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
    private readonly HashSet<Fault> _spelling = [];

    /// <summary>Faults so far.</summary>
    public int Count => _faults.Count + _more;

    /// <summary>Whether further faults are only counted.</summary>
    public bool IsFull => _faults.Count >= MostKept;

    public ImmutableArray<Fault> Faults =>
        _more == 0
            ? Sorted(Told)
            :
            [
                .. Sorted(Told),
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

    /// <summary>
    /// Adds a fault of how a value is written. Where the value itself turns out to be wrong, at the same place, only that is told.
    /// </summary>
    public void AddSpelling(SourcePlace place, string what, string instead)
    {
        if (!IsFull)
        {
            _spelling.Add(new Fault(place, what, instead));
        }

        Add(place, what, instead);
    }

    public void Warn(SourcePlace place, string what, string instead) => _warnings.Add(new Fault(place, what, instead));

    /// <summary>Adds the faults and warnings of another list.</summary>
    public void AddAll(FaultList other)
    {
        foreach (var fault in other._faults)
        {
            Add(fault.Place, fault.What, fault.Instead);
        }

        _spelling.UnionWith(other._spelling);
        _more += other._more;
        _warnings.AddRange(other._warnings);
    }

    private IEnumerable<Fault> Told
    {
        get
        {
            var wrong =
                _spelling.Count == 0 ? [] : _faults.Where(fault => !_spelling.Contains(fault)).Select(fault => fault.Place).ToHashSet();
            return _faults.Where(fault => !_spelling.Contains(fault) || !wrong.Contains(fault.Place));
        }
    }

    // OrderBy is stable: faults at one place stay in the order in which they were found. A bad cell that another row borrows is reported
    // once.
    private static ImmutableArray<Fault> Sorted(IEnumerable<Fault> faults) =>
        [
            .. faults
                .OrderBy(fault => fault.Place.File, StringComparer.Ordinal)
                .ThenBy(fault => fault.Place.Line)
                .ThenBy(fault => fault.Place.Column)
                .Distinct(),
        ];
}
