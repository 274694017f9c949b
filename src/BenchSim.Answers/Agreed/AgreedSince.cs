using BenchSim.Answers.Asking;
using BenchSim.Season.Inputs;
using BenchSim.Study.Agreed;

namespace BenchSim.Answers.Agreed;

/// <summary>How far a plan is still the one that was agreed.</summary>
/// <param name="Agreement">What was agreed.</param>
/// <param name="Changes">What has changed since; null where the plan that was agreed cannot be read any more.</param>
public sealed record AgreedSince(Agreement Agreement, PlanChanges? Changes)
{
    /// <summary>The same in a sentence or two.</summary>
    public string Words => AgreedWords.Since(this);

    /// <summary>Sets a plan beside the latest agreement; null where there is none.</summary>
    /// <param name="directory">The scenario folder; null for a scenario in memory.</param>
    /// <param name="plan">The plan as it is.</param>
    /// <exception cref="FaultsFoundException">What was agreed cannot be read.</exception>
    public static AgreedSince? Of(string? directory, SeasonPlan plan)
    {
        if (Agreement.Latest(directory) is not { } agreement)
        {
            return null;
        }

        try
        {
            return new AgreedSince(agreement, PlanChanges.Of(agreement.Plan(), plan));
        }
        catch (FaultsFoundException)
        {
            // A plan is to be checked, whatever has become of an earlier one.
            return new AgreedSince(agreement, null);
        }
    }
}
