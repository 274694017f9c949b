using System.Text.Json;
using BenchSim.Report.Words;
using BenchSim.Study.Bottlenecks;
using BenchSim.Study.Compare;
using BenchSim.Study.Results;

namespace BenchSim.Report.Json;

/// <summary>Who waits for whom, and what more room would save.</summary>
internal static class JsonBottlenecks
{
    /// <summary>One entry of the list "waits".</summary>
    public static void Wait(Utf8JsonWriter writer, WaitResult wait)
    {
        JsonParts.TextOrNull(writer, "from", wait.From?.Id);
        JsonParts.Text(writer, "by", wait.By.Id);
        JsonParts.Estimate(writer, "tray_days", wait.TrayDays);
        JsonParts.Chance(writer, "happens", wait.Happens);
        JsonParts.Days(writer, "by_week", wait.ByWeek);
    }

    /// <summary>The object "bottlenecks", or null where they were not asked for.</summary>
    public static void Write(Utf8JsonWriter writer, BottleneckResult? result)
    {
        if (result is null)
        {
            writer.WriteNull("bottlenecks");
            return;
        }

        writer.WriteStartObject("bottlenecks");
        writer.WriteNumber("confidence", result.Confidence);
        writer.WriteNumber("comparisons", result.Comparisons);
        JsonParts.Number(writer, "each_confidence", result.EachConfidence);
        JsonParts.Number(writer, "late_plant_days", result.LatePlantDays);
        JsonParts.Chance(writer, "fits", result.Fits);
        JsonParts.Strings(writer, "sentences", BottleneckSentences.Of(result));
        JsonParts.Array(writer, "unlimited", result.Unlimited, Trial);
        JsonParts.Array(writer, "larger", result.Larger, Trial);
        JsonParts.Array(writer, "pairs", result.Pairs, Pair);
        writer.WriteEndObject();
    }

    private static void Trial(Utf8JsonWriter writer, BottleneckTrial trial)
    {
        JsonParts.Text(writer, "space", trial.Space.Id);
        if (trial.PlacesAdded is { } places)
        {
            writer.WriteNumber("places_added", places);
        }
        else
        {
            writer.WriteNull("places_added");
        }

        Saved(writer, "saved", trial.LatePlantDays);
        Fits(writer, trial.Fits);
    }

    private static void Pair(Utf8JsonWriter writer, BottleneckPair pair)
    {
        JsonParts.Text(writer, "first", pair.First.Id);
        JsonParts.Text(writer, "second", pair.Second.Id);
        writer.WriteBoolean("helps_together", pair.HelpsTogether);
        Saved(writer, "saved", pair.LatePlantDays);
        Saved(writer, "saved_beyond_first", pair.AgainstFirst);
        Saved(writer, "saved_beyond_second", pair.AgainstSecond);
        Saved(writer, "saved_beyond_sum", pair.BeyondSum);
        Fits(writer, pair.Fits);
    }

    // What is saved, so that more is better: the difference with its sign turned.
    private static void Saved(Utf8JsonWriter writer, string name, MeasureChange late)
    {
        writer.WriteStartObject(name);
        JsonParts.Number(writer, "late_plant_days", -late.Difference);
        JsonParts.Number(writer, "low", -late.High);
        JsonParts.Number(writer, "high", -late.Low);
        writer.WriteBoolean("real", late.IsReal);
        writer.WriteNumber("seasons_differing", late.Differing);
        writer.WriteEndObject();
    }

    private static void Fits(Utf8JsonWriter writer, FitChange fits)
    {
        JsonParts.Chance(writer, "fits", fits.Variant);
        writer.WriteStartObject("fits_change");
        JsonParts.Number(writer, "difference", fits.Difference);
        JsonParts.Number(writer, "low", fits.Low);
        JsonParts.Number(writer, "high", fits.High);
        writer.WriteBoolean("real", fits.IsReal);
        writer.WriteNumber("only_with", fits.OnlyVariant);
        writer.WriteNumber("only_without", fits.OnlyBase);
        writer.WriteEndObject();
    }
}
