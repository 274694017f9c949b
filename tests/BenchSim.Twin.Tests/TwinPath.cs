using BenchSim.Season.Inputs;

namespace BenchSim.Twin.Tests;

/// <summary>Where trays stood and what heat they had there, in millionths of a degree-day; by what is known before a day.</summary>
internal sealed class TwinPath(SeasonPlan plan, TwinClimate climate, Crop crop, TrayPast trays)
{
    public TrayPast Trays => trays;

    public Crop Crop => crop;

    public double Sown => Round(trays.SowDay);

    /// <summary>Instant at which what is done or seen on a day counts.</summary>
    public double Seen(int day) => Math.Min(Round(day), 24 * plan.Past!.Today);

    public double Heat(double until) =>
        Stays().Where(stay => until > stay.From).Sum(stay => Gained(climate.Warmth(stay.Space, crop), stay.From, Math.Min(until, stay.To)));

    /// <summary>Instant at which half are up with a factor of emergence; endless where they are not by an instant.</summary>
    public double Up(double factor, double until)
    {
        var need = RunningSum.Millionths(crop.EmergeHeat * factor);
        foreach (var (space, from, to) in Stays().Where(stay => stay.From <= until))
        {
            var reached = climate.Warmth(space, crop).Reaches(from, Math.Min(until, to), need - Heat(from));
            if (reached < double.PositiveInfinity)
            {
                return reached;
            }
        }

        return double.PositiveInfinity;
    }

    public double Growth(double up, double until) =>
        Stays()
            .Where(stay => Math.Min(until, stay.To) > Math.Max(up, stay.From))
            .Sum(stay => Gained(climate.Growth(stay.Space, crop), Math.Max(up, stay.From), Math.Min(until, stay.To)));

    public double MeanMedium(double until) =>
        Stays().Where(stay => until > stay.From).Sum(stay => Gained(climate.Medium(stay.Space), stay.From, Math.Min(until, stay.To)))
        / 1e6
        / ((until - Sown) / 24);

    /// <summary>Whether it stood anywhere, or in a space, on a day.</summary>
    public bool Stands(int day, int? space)
    {
        var own = trays.Path.Skip(trays.Borrowed).ToList();
        if (own[0].Day > day || (trays.End != TrayEnd.Stands && trays.EndDay < day))
        {
            return false;
        }

        var morning = own.FindLastIndex(stay => stay.Day < day);
        var evening = own.FindLastIndex(stay => stay.Day <= day);
        return space is null || own.Skip(Math.Max(0, morning)).Take(evening - Math.Max(0, morning) + 1).Any(stay => stay.Space == space);
    }

    private static double Gained(RunningSum sum, double from, double to) => to > from ? sum.At(to) - sum.At(from) : 0;

    private double Round(int day) => (24 * day) + plan.Scenario.Rules.RoundAt.ToTimeSpan().TotalHours;

    private IEnumerable<(int Space, double From, double To)> Stays() =>
        trays.Path.Select(
            (stay, index) =>
                (stay.Space, Round(stay.Day), index + 1 < trays.Path.Length ? Round(trays.Path[index + 1].Day) : double.PositiveInfinity)
        );
}
