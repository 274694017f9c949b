using System.Collections.Immutable;
using System.Globalization;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Values;

namespace BenchSim.Answers.Check;

/// <summary>Warns of the batches that the weather is expected to hold on most days of the fortnight from their planned date on.</summary>
internal static class HoldWarnings
{
    /// <summary>The warnings, in the order of the plan.</summary>
    /// <param name="scenario">Scenario.</param>
    /// <param name="climate">What its weather means for the plan.</param>
    public static ImmutableArray<Fault> Of(Scenario scenario, ClimateSummary climate) =>
        [.. climate.Held.Select(hold => new Fault(hold.Batch.Order.Place, What(scenario, hold), Hint(scenario, hold)))];

    // Rounded to whole days: more of them would say more than is known.
    private static string What(Scenario scenario, BatchHold hold)
    {
        var days = Math.Round(hold.Mean, MidpointRounding.AwayFromZero).ToString(CultureInfo.InvariantCulture);
        var on = $"batch \"{hold.Batch.Order.Id}\": on about {days} of the {hold.Days} days from {Dates.Iso(hold.From)}";
        var degrees = UnitWords.Temperature(hold.AboveC, scenario.Units);
        if (hold.Kind == HoldKind.Table)
        {
            var cover = scenario.Rules.CoverGainK > 0 ? " under the row cover" : "";
            return $"{on}, its date for the hardening table, {Nights(scenario)} there is colder than {degrees}{cover}";
        }

        var field = hold.Batch.Order.FieldCover;
        var under = field is FieldCover.Open ? "" : $" under its {PlanFields.FieldCoverWord[field]}";
        var wet = field.KeepsRainOff() ? "" : ", or the field is too wet";
        return scenario.Rules.ForecastNights == 0
            ? $"{on}, its date for the field, the field is too wet"
            : $"{on}, its date for the field, {Nights(scenario)} is colder than {degrees}{under}{wet}";
    }

    private static string Hint(Scenario scenario, BatchHold hold) =>
        hold.Kind == HoldKind.Table
            ? "plan it for later" + (scenario.Rules.CoverGainK > 0 ? "" : ", or give the table a row cover (cover_gain)")
            : "plan it for later"
                + (hold.Batch.Order.FieldCover == FieldCover.Open ? ", or give it a cover in the field (field_cover)" : "");

    private static string Nights(Scenario scenario) => ClimateTelling.Nights(scenario);
}
