using BenchSim.Season.Inputs;
using BenchSim.Season.Play;

namespace BenchSim.Study.Tests;

/// <summary>Season results made by hand or drawn at random, in the shape the player gives them.</summary>
internal static class Seasons
{
    /// <summary>A season in which nothing happens and everything fits.</summary>
    public static SeasonResult Quiet(SeasonPlan plan)
    {
        SeasonResult season = new()
        {
            Fits = true,
            FitsWeatherCounted = true,
            SownInTime = true,
            NoneOverHeldForPlace = true,
        };
        Shape(plan, season);
        foreach (var batch in season.Batches)
        {
            batch.SownFirst = batch.SownLast = batch.OffMat = batch.PottedUp = batch.OnTable = -1;
            batch.OutFirst = batch.OutMedian = batch.OutLast = -1;
        }

        return season;
    }

    /// <summary>Fills a season with numbers that depend on the season and the kind of play alone.</summary>
    public static void Draw(SeasonPlan plan, int season, PlaceLimits limits, SeasonResult result)
    {
        if (result.Held.Length == 0)
        {
            Shape(plan, result);
        }

        Random random = new((season * 2) + (limits == PlaceLimits.None ? 1 : 0));
        result.Season = season;
        for (var space = 0; space < result.Held.Length; space++)
        {
            var most = plan.Scenario.Spaces[space].Places;
            for (var day = 0; day < plan.Days; day++)
            {
                result.Held[space][day] = random.Next(most + 1);
                result.Waiting[space][day] = Math.Max(0, random.Next(40) - 34);
            }
        }

        foreach (var row in result.HeldByGrower)
        {
            Fill(row, random, 12);
        }

        foreach (var row in result.TrayDays)
        {
            for (var space = 0; space < row.Length; space++)
            {
                row[space] = random.Next(3000);
            }
        }

        foreach (var row in new[] { result.Sown, result.Potted, result.Moved, result.SetOut, result.CarriedIn })
        {
            Fill(row, random, 9);
        }

        for (var relief = 0; relief < result.ReliefUses.Length; relief++)
        {
            result.ReliefUses[relief] = random.Next(50);
        }

        foreach (var row in result.HeatWattHours)
        {
            for (var day = 0; day < row.Length; day++)
            {
                row[day] = random.Next(90_000);
            }
        }

        Fill(result.DaysOpen, random, plan.Days);
        Fill(result.MatDays, random, plan.Days);
        result.PlantsInTime = result.PlantsOut = 0;
        for (var batch = 0; batch < result.Batches.Length; batch++)
        {
            DrawBatch(result, result.Batches[batch], plan.Batches[batch].Order.Plants, plan.Days, random);
        }

        DrawRefused(result, random);

        result.LimitEverBit = true;
        result.Fits = random.Next(3) > 0;
        result.FitsWeatherCounted = result.Fits && random.Next(3) > 0;
        result.SownInTime = random.Next(3) > 0;
        result.NoneOverHeldForPlace = random.Next(3) > 0;
    }

    private static void DrawRefused(SeasonResult result, Random random)
    {
        var spaces = result.Held.Length;
        var weeks = result.Refused[0, 0].Length;
        result.Refused.Prepare(weeks);
        for (var from = 0; from <= spaces; from++)
        {
            for (var by = 0; by < spaces; by++)
            {
                for (var week = 0; week < weeks; week++)
                {
                    result.Refused.Add(from, by, week, random.Next(6));
                }
            }
        }
    }

    private static void DrawBatch(SeasonResult result, BatchOutcome batch, int wanted, int days, Random random)
    {
        batch.SownFirst = random.Next(3);
        batch.SownLast = random.Next(4) - 1;
        batch.OffMat = random.Next(days) - 1;
        batch.PottedUp = -1;
        batch.OnTable = random.Next(days);
        batch.OutFirst = random.Next(days);
        batch.OutMedian = Math.Min(days - 1, batch.OutFirst + random.Next(3));
        batch.OutLast = random.Next(5) == 0 ? -1 : Math.Min(days - 1, batch.OutMedian + random.Next(3));
        batch.PlantsOut = random.Next(wanted + 10);
        batch.PlantsInTime = Math.Min(wanted, random.Next(batch.PlantsOut + 1));
        batch.PlantsShort = Math.Max(0, wanted - batch.PlantsOut);
        batch.LatePlantDays = random.Next(50_000);
        batch.OverHeld = random.Next(5);
        Fill(batch.Discarded, random, 3);
        batch.GivenUp = random.Next(3);
        batch.HoldTrayDays = random.Next(200);
        batch.TraysStanding = random.Next(3);
        for (var space = 0; space < batch.BlockedTrayDays.Length; space++)
        {
            batch.BlockedTrayDays[space] = random.Next(4) == 0 ? random.Next(5000) : 0;
        }

        result.PlantsInTime += batch.PlantsInTime;
        result.PlantsOut += Math.Min(wanted, batch.PlantsOut);
    }

    private static void Shape(SeasonPlan plan, SeasonResult result)
    {
        var spaces = plan.Scenario.Spaces.Length;
        var growers = plan.Batches.Select(batch => batch.Order.Grower).Distinct(StringComparer.Ordinal).Count();
        result.Held = Rows<int>(spaces, plan.Days);
        result.Waiting = Rows<int>(spaces, plan.Days);
        result.Refused.Prepare((plan.Days + 6) / 7);
        result.HeldByGrower = Rows<int>(growers, plan.Days);
        result.TrayDays = Rows<long>(growers, spaces);
        result.Batches = [.. plan.Batches.Select(_ => new BatchOutcome { BlockedTrayDays = new long[spaces] })];
        result.Sown = new int[plan.Days];
        result.Potted = new int[plan.Days];
        result.Moved = new int[plan.Days];
        result.SetOut = new int[plan.Days];
        result.CarriedIn = new int[plan.Days];
        result.ReliefUses = new long[plan.Scenario.Rules.Reliefs.Length];
        result.MishapTrays = new long[plan.Scenario.Mishaps.Length];
        result.HeatWattHours = Rows<long>(plan.Scenario.Houses.Length, plan.Days);
        result.DaysOpen = new int[plan.Scenario.Houses.Length];
        result.MatDays = new int[spaces];
    }

    private static T[][] Rows<T>(int rows, int columns) => [.. Enumerable.Range(0, rows).Select(_ => new T[columns])];

    private static void Fill(int[] row, Random random, int below)
    {
        for (var i = 0; i < row.Length; i++)
        {
            row[i] = random.Next(below);
        }
    }
}
