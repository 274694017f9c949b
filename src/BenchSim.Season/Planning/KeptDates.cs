using System.Diagnostics.CodeAnalysis;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Season.Planning;

/// <summary>
/// Keeps the dates and numbers of batches that were planned, so that a plan of which little has changed is not worked out anew. They depend
/// on the batch and on the site without its places; a batch of which something had to be said is not kept. What is planned does not depend
/// on it. Safe for use by several threads.
/// </summary>
public sealed class KeptDates
{
    // The files and a few tries.
    private const int MostSites = 4;

    // Batches of all of them together, and what their arrays hold: that of a plan of 10,000 sowings.
    private const int MostBatches = 20_000;
    private const long MostInArrays = 1_000_000;

    private readonly Lock _gate = new();
    private readonly SameArrays _same = new();

    // The one asked for last stands last.
    private readonly List<Site> _sites = [];

    /// <summary>The batches of a scenario's site.</summary>
    internal Site Of(Scenario scenario)
    {
        lock (_gate)
        {
            if (_same.Length > MostInArrays || _sites.Sum(each => each.Count) > MostBatches)
            {
                _sites.Clear();
                _same.Clear();
            }

            var key = PlanWithoutPlaces.Of(scenario, _same);
            var site = _sites.Find(each => each.Key.Equals(key)) ?? new Site(this, key);
            _sites.Remove(site);
            _sites.Add(site);
            if (_sites.Count > MostSites)
            {
                _sites.RemoveAt(0);
            }

            return site;
        }
    }

    /// <summary>The batches planned for one site.</summary>
    internal sealed class Site(KeptDates kept, Scenario key)
    {
        private readonly Dictionary<BatchPlan, BatchPlan> _planned = [];

        /// <summary>The site.</summary>
        public Scenario Key => key;

        /// <summary>How many batches there are.</summary>
        public int Count => _planned.Count;

        /// <summary>The batch with its dates and numbers, if it is kept.</summary>
        /// <param name="draft">The batch without them.</param>
        /// <param name="planned">With them.</param>
        public bool TryFind(BatchPlan draft, [NotNullWhen(true)] out BatchPlan? planned)
        {
            lock (kept._gate)
            {
                if (_planned.TryGetValue(PlanWithoutPlaces.Of(draft, kept._same), out planned))
                {
                    planned = planned with { Order = draft.Order, Crop = draft.Crop, Tray = draft.Tray, Flat = draft.Flat };
                    return true;
                }

                return false;
            }
        }

        /// <summary>Keeps a batch.</summary>
        /// <param name="draft">The batch without its dates and numbers.</param>
        /// <param name="planned">With them.</param>
        public void Keep(BatchPlan draft, BatchPlan planned)
        {
            lock (kept._gate)
            {
                _planned[PlanWithoutPlaces.Of(draft, kept._same)] = planned;
            }
        }
    }
}
