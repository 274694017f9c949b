namespace BenchSim.Season.Play;

/// <summary>
/// The wanted plants of a season that never reach the field, and those of them whose batch had something thrown out after standing too
/// long. By batches, not trays: a tray thrown out does not tell how many of its plants would have been wanted.
/// </summary>
internal struct MissingPlants
{
    private long _all;
    private long _ofThrownOut;

    /// <summary>Whether at least half of them are of batches of which something was thrown out.</summary>
    public readonly bool AreMostlyThrownOut => 2 * _ofThrownOut >= _all;

    /// <summary>Adds those of a batch.</summary>
    public void Add(BatchOutcome outcome)
    {
        _all += outcome.PlantsShort;
        if (outcome.Discarded[(int)DiscardReason.OverHeld] + outcome.Discarded[(int)DiscardReason.FlatOverHeld] > 0)
        {
            _ofThrownOut += outcome.PlantsShort;
        }
    }
}
