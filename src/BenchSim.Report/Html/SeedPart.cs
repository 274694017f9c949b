using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Study.Results;

namespace BenchSim.Report.Html;

/// <summary>Whether packets lose germination between their test and their sowing.</summary>
internal static class SeedPart
{
    /// <summary>The rule in force, and the batch that loses most.</summary>
    public static string Words(StudyResult result)
    {
        var scenario = result.Plan.Scenario;
        if (scenario.Rules.SeedStorage is not { } storage)
        {
            return "packets are taken at their tested germination, because how the seed is kept is not given";
        }

        BatchPlan[] aged = [.. result.Plan.Batches.Where(batch => SeedAge.IsAged(scenario.Rules, batch))];
        var kept =
            $"kept at {Numbers.Short(storage.MoisturePercent)} % moisture and "
            + $"{Temperatures.Words(storage.TemperatureC, scenario.Units)} since the test";
        if (aged.Length == 0)
        {
            return $"seed would age, {kept}, but no batch has a date of test and a crop whose seed life is known: packets are taken at "
                + "their tested germination";
        }

        var worst = aged.MinBy(batch => batch.Germination - batch.Order.Germination)!;
        var others =
            aged.Length == result.Plan.Batches.Length
                ? ""
                : "; the others have no date of test, or a crop whose seed life is not known, and are taken as tested";
        return $"in force for {Numbers.Whole(aged.Length)} of {Numbers.Count(result.Plan.Batches.Length, "batch", "batches")}, {kept}: "
            + $"{PlainText.Short(worst.Order.Id, 30)} loses most, from {Percent(worst.Order.Germination)} to {Percent(worst.Germination)} "
            + $"%{others}";
    }

    private static string Percent(double share) => (share * 100).ToString("0.#", null);
}
