// Plays random small sites and prints all that is kept of each season, a line a figure, so that two builds can be compared: seasons CASES.
using System.Globalization;
using BenchSim.Season.Planning;
using BenchSim.Season.Play;
using BenchSim.Season.Tests;
using CsCheck;

var cases = int.Parse(args[0], CultureInfo.InvariantCulture);
for (var index = 0; index < cases; index++)
{
    var scenario = RandomSites.GenScenario.Generate(new PCG((uint)index, 20261129), null, out _);
    if (SeasonPlanner.Make(scenario).Plan is not { } plan)
    {
        Console.WriteLine($"{index} has no plan");
        continue;
    }

    foreach (var batch in plan.Batches)
    {
        Console.WriteLine(
            $"{index} {batch.Order.Id} {batch.SowOn:O} {batch.TableOn:O} {batch.SetOutOn:O} {batch.Trays} {batch.Flats} {batch.StandChance:R}"
        );
    }

    var player = new SeasonPlayer(plan, 7);
    foreach (var limits in new[] { PlaceLimits.AsGiven, PlaceLimits.None })
    {
        for (var season = 0; season < 3; season++)
        {
            var result = new SeasonResult();
            player.Play(season, limits, result);
            Print($"{index} {limits} {season}", result);
        }
    }
}

static void Print(string name, SeasonResult result)
{
    Console.WriteLine(
        $"{name}: {result.SownInTime} {result.NoneOverHeldForPlace} {result.PlantsInTime} {result.PlantsInTimeWeatherCounted} {result.PlantsOut} "
            + $"{result.Fits} {result.FitsWeatherCounted} {result.Gridlock}"
    );
    foreach (
        var (what, rows) in new[]
        {
            ("held", result.Held),
            ("waiting", result.Waiting),
            ("refused", result.Refused),
            ("growers", result.HeldByGrower),
        }
    )
    {
        Console.WriteLine($"{name} {what}: {string.Join(" | ", rows.Select(row => string.Join(' ', row)))}");
    }

    Console.WriteLine($"{name} tray-days: {string.Join(" | ", result.TrayDays.Select(row => string.Join(' ', row)))}");
    Console.WriteLine($"{name} heat: {string.Join(" | ", result.HeatWattHours.Select(row => string.Join(' ', row)))}");
    foreach (
        var days in new[] { result.Sown, result.Potted, result.Moved, result.SetOut, result.CarriedIn, result.DaysOpen, result.MatDays }
    )
    {
        Console.WriteLine($"{name} days: {string.Join(' ', days)}");
    }

    Console.WriteLine($"{name} reliefs: {string.Join(' ', result.ReliefUses)}");
    foreach (var b in result.Batches)
    {
        Console.WriteLine(
            $"{name} batch: {b.SownFirst} {b.SownLast} {b.OffMat} {b.PottedUp} {b.OnTable} {b.OutFirst} {b.OutMedian} {b.OutLast} {b.PlantsOut} "
                + $"{b.PlantsInTime} {b.PlantsInTimeWeatherCounted} {b.PlantsShort} {b.LatePlantDays} {b.OverHeld} {b.OverHeldForPlace} "
                + $"{string.Join(',', b.Discarded)} {b.GivenUp} {b.HoldTrayDays} {string.Join(',', b.BlockedTrayDays)} {b.FlatsSown} {b.FlatsPotted} "
                + $"{b.FlatsDiscarded} {b.FlatsStanding} {b.TraysStarted} {b.TraysOut} {b.TraysDiscarded} {b.TraysStanding}"
        );
    }
}
