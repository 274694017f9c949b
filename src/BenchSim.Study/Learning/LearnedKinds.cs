using System.Globalization;
using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;

namespace BenchSim.Study.Learning;

/// <summary>How a learned value stands in a crop and in crops.csv.</summary>
public static class LearnedKinds
{
    private const double MostLoss = 0.99;

    /// <summary>All of them, in order.</summary>
    public static IReadOnlyList<LearnedKind> All { get; } = Enum.GetValues<LearnedKind>();

    /// <summary>Its column in crops.csv.</summary>
    public static string Column(this LearnedKind kind) =>
        kind switch
        {
            LearnedKind.EmergeHeat => "emerge_heat",
            LearnedKind.Germination => "germination",
            LearnedKind.PotUpLoss => "pot_up_loss",
            LearnedKind.StandLoss => "stand_loss",
            _ => "days_to_ready",
        };

    /// <summary>Whether it is a share.</summary>
    public static bool IsShare(this LearnedKind kind) => kind is not (LearnedKind.EmergeHeat or LearnedKind.GrowthDays);

    /// <summary>The value as it is written: three figures of a heat, tenths of a day, tenths of a per cent.</summary>
    public static double Rounded(this LearnedKind kind, double value)
    {
        if (kind.IsShare())
        {
            var share = Math.Round(value, 3);
            return kind == LearnedKind.Germination ? Math.Clamp(share, 0.001, 1) : Math.Clamp(share, 0, MostLoss);
        }

        return kind == LearnedKind.GrowthDays ? Math.Max(0.1, Math.Round(value, 1)) : Figures(value);
    }

    /// <summary>A value in force as people read it.</summary>
    public static string InForce(this LearnedKind kind, double value) =>
        kind.IsShare() ? kind.Text(value) : value.ToString("0.###", CultureInfo.InvariantCulture);

    /// <summary>A learned value as people read it.</summary>
    public static string Text(this LearnedKind kind, double value) =>
        kind.IsShare()
            ? (100 * kind.Rounded(value)).ToString("0.#", CultureInfo.InvariantCulture) + " %"
            : kind.Rounded(value).ToString("0.###", CultureInfo.InvariantCulture);

    /// <summary>The crop with another value, as it is written; its growth stays when its emergence changes.</summary>
    public static Crop With(this LearnedKind kind, Crop crop, double value)
    {
        ArgumentNullException.ThrowIfNull(crop);
        var rounded = kind.Rounded(value);
        return kind switch
        {
            LearnedKind.EmergeHeat => Sown(crop with { EmergeHeat = rounded }),
            LearnedKind.Germination => crop with { Germination = rounded },
            LearnedKind.PotUpLoss => crop with { PotUpLoss = rounded },
            LearnedKind.StandLoss => crop with { StandLoss = rounded },
            _ => Sown(crop with { GrowthDays = rounded }),
        };
    }

    /// <summary>The value of a crop.</summary>
    public static double Of(this LearnedKind kind, Crop crop)
    {
        ArgumentNullException.ThrowIfNull(crop);
        return kind switch
        {
            LearnedKind.EmergeHeat => crop.EmergeHeat,
            LearnedKind.Germination => crop.Germination,
            LearnedKind.PotUpLoss => crop.PotUpLoss,
            LearnedKind.StandLoss => crop.StandLoss,
            _ => crop.GrowthDays,
        };
    }

    // days_to_ready counts the emergence and the hardening where it says so.
    private static Crop Sown(Crop crop)
    {
        if (crop.DaysToReady is not { } written)
        {
            return crop;
        }

        var emergence = written.FromSowing ? crop.EmergeHeat / EmergenceRate.Of(crop, crop.GerminateAtC) : 0;
        var days = Math.Round(crop.GrowthDays + emergence + (written.WithHardening ? crop.HardeningNights : 0), 1);
        return crop with { DaysToReady = written with { Days = days } };
    }

    private static double Figures(double value)
    {
        var decimals = Math.Clamp(2 - (int)Math.Floor(Math.Log10(value)), 0, 3);
        return Math.Round(value, decimals);
    }
}
