using BenchSim.Season.Inputs;
using BenchSim.Season.Play;

namespace BenchSim.Study.Tests.Precision;

/// <summary>Seasons whose chance of fit and mean of late plant-days are known, played through the whole of the counting.</summary>
internal static class KnownSeasons
{
    /// <summary>One day, one batch: as little besides as there can be.</summary>
    public static readonly SeasonPlan Plan = Plans.Make(1, Plans.Small(1).Scenario.Spaces, [Plans.Small(1).Batches[0]]);

    /// <summary>
    /// Plays seasons that fit with a chance and have late plant-days as drawn, each season from its own number and the seed alone.
    /// </summary>
    /// <param name="chance">Chance of fit.</param>
    /// <param name="late">Late plant-days from a random source.</param>
    /// <param name="seed">Seed of the study.</param>
    public static Func<PlaySeason> Player(double chance, Func<Luck, long> late, int seed) =>
        () =>
        {
            var quiet = Seasons.Quiet(Plan);
            Luck luck = new();
            return DrawnPlayer.Of(
                (season, _, result) =>
                {
                    if (result.Held.Length == 0)
                    {
                        Copy(quiet, result);
                    }

                    luck.Begin(seed, season);
                    result.Fits = result.FitsWeatherCounted = luck.Next() < chance;
                    result.Batches[0].LatePlantDays = late(luck);
                }
            );
        };

    private static void Copy(SeasonResult from, SeasonResult to)
    {
        (to.Held, to.Waiting, to.Refused, to.HeldByGrower, to.TrayDays) = (
            from.Held,
            from.Waiting,
            from.Refused,
            from.HeldByGrower,
            from.TrayDays
        );
        to.Batches = Seasons.Quiet(Plan).Batches;
        (to.Sown, to.Potted, to.Moved, to.SetOut, to.CarriedIn) = (from.Sown, from.Potted, from.Moved, from.SetOut, from.CarriedIn);
        (to.ReliefUses, to.HeatWattHours, to.DaysOpen, to.MatDays) = (from.ReliefUses, from.HeatWattHours, from.DaysOpen, from.MatDays);
        (to.SownInTime, to.NoneOverHeldForPlace) = (true, true);
    }
}
