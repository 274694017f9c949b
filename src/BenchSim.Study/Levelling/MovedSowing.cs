namespace BenchSim.Study.Levelling;

/// <summary>A sowing that levelling moves.</summary>
/// <param name="Batch">Id of the batch.</param>
/// <param name="From">Planned sow date.</param>
/// <param name="To">Its sow date in the levelled plan.</param>
/// <param name="SetOutFrom">Planned set-out date.</param>
/// <param name="SetOutTo">Set-out date in the levelled plan: the same where the plan gives it, else what follows from the sow date.</param>
public sealed record MovedSowing(string Batch, DateOnly From, DateOnly To, DateOnly SetOutFrom, DateOnly SetOutTo)
{
    /// <summary>Days moved, below 0 for earlier.</summary>
    public int Days => To.DayNumber - From.DayNumber;
}
