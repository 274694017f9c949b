using BenchSim.Folder.Faults;
using BenchSim.Folder.Files;
using BenchSim.Folder.Site;
using BenchSim.Folder.Text;
using BenchSim.Season.Inputs;

namespace BenchSim.Folder;

/// <summary>
/// Keeps what came of reading a weather record, with the model fitted to it, so that a folder that is read again and again does not read
/// years of days anew. What a reading gives does not depend on it. Safe for use by several threads.
/// </summary>
public sealed class KeptRecords
{
    // The base and a try may name two records.
    private const int Most = 4;

    private readonly Lock _gate = new();
    private readonly List<Kept> _kept = [];

    /// <summary>The weather of a record; null when it had a fault. Faults and warnings are added to the list, read anew or not.</summary>
    internal WeatherInput? Read(FileText file, WeatherDraft draft, FaultList faults)
    {
        lock (_gate)
        {
            var kept = _kept.Find(each => each.File == file && each.Draft == draft);
            if (kept is null)
            {
                var found = new FaultList();
                kept = new Kept(file, draft, new WeatherRecordReader(new CellReader(found)).Read(file, draft), found);
                if (_kept.Count == Most)
                {
                    _kept.RemoveAt(0);
                }

                _kept.Add(kept);
            }

            faults.AddAll(kept.Faults);
            return kept.Weather;
        }
    }

    private sealed record Kept(FileText File, WeatherDraft Draft, WeatherInput? Weather, FaultList Faults);
}
