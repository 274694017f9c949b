using System.Globalization;
using BenchSim.Folder.Shelves;
using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;
using BenchSim.Study.Learning;

namespace BenchSim.Answers.Learn;

/// <summary>
/// A crop as it was before the seasons that are to be learned from: what crops.csv has from these very seasons is set back to what stood
/// there before, so that no log counts twice and learning twice gives the same.
/// </summary>
internal static class PriorCrop
{
    /// <summary>The crop before.</summary>
    /// <param name="crop">The crop as it is in force.</param>
    /// <param name="seasons">Names of the seasons that are to be learned from.</param>
    public static Crop Of(Crop crop, IReadOnlyCollection<string> seasons)
    {
        var before = crop;
        foreach (var kind in LearnedKinds.All)
        {
            var column = kind.Column();
            if (
                LogOf(crop, column) is { } log
                && log.Find(column) is { } value
                && log.Seasons.All(season => seasons.Contains(season, StringComparer.Ordinal))
                && Number(value.Text) is { } number
                && IsPossible(kind, number)
            )
            {
                before = Set(before, kind, number) with
                {
                    Sources = before.Sources.SetItem(column, new Provenance(value.Trust, log.Others)),
                };
            }
        }

        return before.GrowthDays > 0 ? before : crop;
    }

    /// <summary>What crops.csv says of a column that was learned; null where it was not.</summary>
    /// <param name="crop">The crop.</param>
    /// <param name="column">The column.</param>
    public static OwnLog? LogOf(Crop crop, string column) =>
        crop.Sources.GetValueOrDefault(column) is { Trust: Season.Values.Trust.User } source ? OwnLog.Read(source.Source) : null;

    // Days of growth are what is left of those to be ready; they change with the emergence that is taken off them.
    private static Crop Set(Crop crop, LearnedKind kind, double value)
    {
        crop = kind switch
        {
            LearnedKind.EmergeHeat => crop with { EmergeHeat = value },
            LearnedKind.Germination => crop with { Germination = value },
            LearnedKind.PotUpLoss => crop with { PotUpLoss = value },
            LearnedKind.StandLoss => crop with { StandLoss = value },
            _ => crop with { DaysToReady = crop.DaysToReady! with { Days = value } },
        };
        if (kind is not (LearnedKind.EmergeHeat or LearnedKind.GrowthDays) || crop.DaysToReady is not { } ready)
        {
            return crop;
        }

        var emergence = ready.FromSowing ? crop.EmergeHeat / EmergenceRate.Of(crop, crop.GerminateAtC) : 0;
        return crop with { GrowthDays = ready.Days - emergence - (ready.WithHardening ? crop.HardeningNights : 0) };
    }

    // Anybody may have written into that column.
    private static bool IsPossible(LearnedKind kind, double value)
    {
        const double Least = 0.1;
        const double MostDays = 365;
        return kind switch
        {
            LearnedKind.EmergeHeat => value is >= Least and <= 10_000,
            LearnedKind.Germination => value is > 0 and <= 1,
            LearnedKind.GrowthDays => value is >= Least and <= MostDays,
            _ => value is >= 0 and < 1,
        };
    }

    private static double? Number(string text)
    {
        var digits = text.TrimEnd('%').TrimEnd();
        return double.TryParse(digits, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
            ? text.EndsWith('%')
                ? number / 100
                : number
            : null;
    }
}
