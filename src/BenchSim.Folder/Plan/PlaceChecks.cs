using System.Collections.Immutable;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Files;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Plan;

/// <summary>Checks that what is sown can stand somewhere. Only for a site whose houses and spaces were read without a fault.</summary>
internal sealed class PlaceChecks(Scenario scenario, FaultList faults)
{
    private readonly HashSet<string> _benchless = new(StringComparer.Ordinal);

    /// <summary>Checks every row of the plan.</summary>
    public void Check(IReadOnlyList<PlanRow> rows)
    {
        CheckTables();
        foreach (var row in rows)
        {
            if (row.Crop is { } crop && HasBench(row, crop))
            {
                CheckPotUp(row, crop);
                CheckFootprint(row, crop);
                WarnOfSize(row, crop);
            }
        }

        WarnOfNoMats(rows);
    }

    private void CheckTables()
    {
        if (SpaceGroups.Tables(scenario) is { Length: > 0 } tables && Places(tables) == 0)
        {
            faults.Add(
                new SourcePlace(FileNames.Site, 1, 1),
                "no hardening table has any places, so no tray can reach the field",
                "give a table its places"
            );
        }
    }

    private bool HasBench(PlanRow row, Crop crop)
    {
        if (Places(SpaceGroups.Benches(scenario, crop)) > 0)
        {
            return true;
        }

        if (_benchless.Add(crop.Id))
        {
            var (what, instead) = crop switch
            {
                { Benches.Length: > 0 } => (
                    $"the benches that crops.csv lists for {Words.Quote(crop.Id)} have no places",
                    "list other benches, or give these their places"
                ),
                { MinNightC: { } night } => (
                    $"no bench is warm enough for {Words.Quote(crop.Id)}, which wants nights of "
                        + $"{Words.Temperature(night, scenario.Units)} or warmer",
                    "heat a house with a bench to that, or change min_night in crops.csv"
                ),
                _ => ($"there is no bench for {Words.Quote(crop.Id)}", "add a [[space]] with kind = \"bench\" and its places to site.toml"),
            };
            faults.Add(row.Row["crop"].Place, what, instead);
        }

        return false;
    }

    // model.md section 2, step 3: trays that one flat fills, above all bench places of the group, would wait for ever.
    private void CheckPotUp(PlanRow row, Crop crop)
    {
        if (row.Order.Method != Method.PotUp || row.Tray is not { } tray || row.Order.SeedsPerFlat == 0)
        {
            return;
        }

        if (crop.PotUpDays >= crop.GrowthDays)
        {
            faults.Add(
                row.Row["method"].Place,
                $"{Words.Quote(crop.Id)} is potted up {Words.Number(crop.PotUpDays)} days after it comes up but reaches field size "
                    + $"in {Words.Number(crop.GrowthDays)}",
                "sow it direct, or change pot_up_days or days_to_ready in crops.csv"
            );
        }

        var filled = Math.Min(DivideUp(row.Order.SeedsPerFlat, tray.Cells), row.Order.Trays ?? int.MaxValue);
        var places = Places(SpaceGroups.Benches(scenario, crop));
        if ((long)filled * tray.PlacesEach > places)
        {
            faults.Add(
                row.Row[row.Row["seeds_per_flat"].IsBlank ? "flat" : "seeds_per_flat"].Place,
                $"one flat of {row.Order.SeedsPerFlat} seeds may fill {filled} trays of {tray.Cells} cells, and the benches for "
                    + $"{Words.Quote(crop.Id)} hold {places / tray.PlacesEach}",
                "sow fewer seeds in a flat, or give the crop more bench places"
            );
        }
    }

    // A tray stands whole in one space.
    private void CheckFootprint(PlanRow row, Crop crop)
    {
        foreach (var (column, type) in new[] { ("tray", row.Tray), ("flat", row.Flat) })
        {
            var place = row.Row[column].Place.File is null ? row.Place : row.Row[column].Place;
            var bench = Largest(SpaceGroups.Benches(scenario, crop));
            if (type?.PlacesEach > bench)
            {
                faults.Add(
                    place,
                    $"a {Words.Quote(type.Id)} takes {type.PlacesEach} places, and no bench for {Words.Quote(crop.Id)} has more "
                        + $"than {bench}",
                    "use a smaller tray or a larger bench"
                );
            }

            var table = Largest(SpaceGroups.Tables(scenario));
            if (type is { IsFlat: false } && table > 0 && type.PlacesEach > table)
            {
                faults.Add(
                    place,
                    $"a {Words.Quote(type.Id)} takes {type.PlacesEach} places, and no hardening table has more than {table}",
                    "use a smaller tray or a larger table"
                );
            }
        }
    }

    private void WarnOfSize(PlanRow row, Crop crop)
    {
        if (row.Order.Plants is not (> 0 and var plants) || row.Tray is not { } tray)
        {
            return;
        }

        // Of mats the planner warns, which knows how much is sown.
        var benches = Places(SpaceGroups.Benches(scenario, crop));
        var trays = (long)(row.Order.Trays ?? DivideUp(plants, tray.Cells)) * tray.PlacesEach;
        if (trays > benches)
        {
            faults.Warn(
                row.Place,
                $"this batch takes at least {trays} places, and the benches for {Words.Quote(crop.Id)} have {benches}",
                "expect part of it to wait, or split it"
            );
        }
    }

    private void WarnOfNoMats(IReadOnlyList<PlanRow> rows)
    {
        var matless = rows.Select(row => row.Crop)
            .OfType<Crop>()
            .Where(crop => crop.BottomHeat && Places(SpaceGroups.Mats(scenario, crop)) == 0)
            .Select(crop => crop.Id)
            .Distinct(StringComparer.Ordinal)
            .Order(StringComparer.Ordinal)
            .ToArray();
        if (matless.Length > 0)
        {
            faults.Warn(
                new SourcePlace(FileNames.Site, 1, 1),
                $"there is no heat mat for {Words.List(matless)}",
                "each sowing waits sow_wait_days, then starts on a bench; add a mat, or write bottom_heat no in crops.csv"
            );
        }
    }

    private int Places(ImmutableArray<int> group) => group.Sum(index => MostPlaces(scenario.Spaces[index]));

    private int Largest(ImmutableArray<int> group) => group.Select(index => MostPlaces(scenario.Spaces[index])).DefaultIfEmpty(0).Max();

    // The most places that the space has on any day: what does not fit then never will.
    private static int MostPlaces(Space space) =>
        Math.Max(space.Places, space.Changes.Select(change => change.Places).DefaultIfEmpty(0).Max());

    private static int DivideUp(int whole, int part) => (int)(((long)whole + part - 1) / part);
}
