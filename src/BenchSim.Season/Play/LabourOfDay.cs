using BenchSim.Season.Inputs;

namespace BenchSim.Season.Play;

/// <summary>What a work day's hands can still do.</summary>
internal sealed class LabourOfDay(SiteRules rules, bool isPlanning)
{
    private int _day = -1;
    private int _sown;
    private int _potted;
    private int _flats;
    private int _setOut;

    public void Clear() => _day = -1;

    /// <summary>Begins a day, unless it has begun.</summary>
    public void Begin(int day)
    {
        if (_day != day)
        {
            (_day, _sown, _potted, _flats, _setOut) = (day, 0, 0, 0, 0);
        }
    }

    public int CanSow(int count) => Limited(rules.SowTraysADay, _sown, count);

    public int CanSetOut(int count) => Limited(rules.SetOutTraysADay, _setOut, count);

    /// <summary>The first flat of a day is always allowed, or one that fills more trays than a day's work would never be emptied.</summary>
    public bool CanPot(int trays) => isPlanning || _flats == 0 || rules.PotUpTraysADay is not { } limit || _potted + trays <= limit;

    public void Sow(int trays) => _sown += trays;

    public void SetOut(int trays) => _setOut += trays;

    public void PotFlat(int trays)
    {
        _potted += trays;
        _flats++;
    }

    private int Limited(int? limit, int done, int count) =>
        isPlanning || limit is not { } most ? count : Math.Min(count, Math.Max(0, most - done));
}
