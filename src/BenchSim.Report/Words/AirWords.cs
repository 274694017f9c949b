using BenchSim.Season.Air;
using BenchSim.Season.Heat;
using BenchSim.Season.Values;

namespace BenchSim.Report.Words;

/// <summary>Fans, vents and heater of a house in words.</summary>
public static class AirWords
{
    /// <summary>What all of it is.</summary>
    public const string Title = "Air and heat of the houses: sizes for planning";

    private const string Alarm =
        "Alarm: hang a low-temperature alarm at plant height, in the shade and away from the heater. It should run on a battery, report a "
        + "power cut too and wake someone close by. Set it a few degrees below the night set-point, and try it before the season. "
        + "Keep a stand-by ready, such as a generator (outdoors only) or a second vented heater.";

    private const string Ranges =
        "Rules differ: some ask for one change of the air a minute whatever the floor, and small houses in full sun are given up to half "
        + "as much again; shaded ones need less. docs/air.md has the sources.";

    /// <summary>What the hours to freezing rest on.</summary>
    public const string Cooling =
        "The shorter time is the air alone; the longer has the warmth of a damp floor with it (assumed). Tender crops are hurt sooner.";

    private const double Foot = 0.3048;
    private const double WattsAKilowatt = 1000;
    private const double MinutesAnHour = 60;

    /// <summary>Whether the heater carries the coldest night, or which would; null for a house that is not heated.</summary>
    /// <param name="need">What the house takes.</param>
    /// <param name="units">Units of the site.</param>
    public static string? Heater(HouseAirNeed need, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(need);
        if (!need.House.IsHeated)
        {
            return null;
        }

        if (need.Heater is not { } heater)
        {
            var missing = need.House.Heat is null ? "fuel and design_low (the coldest night)" : "design_low (the coldest night)";
            return $"give {missing}, and the size of heater it takes is worked out.";
        }

        var loses = $"the house loses {Power(heater.Load.Watts, units)} at {Temperatures.Words(heater.Load.OutdoorC, units)} outdoors";
        var wanted = $"{Power(heater.Wanted, units)} of heater output";
        return (heater.OutputW, heater.Carries) switch
        {
            ({ } watts, false) => $"its heater does not carry the coldest night. It gives {Power(watts, units)}; {loses}. The heater holds "
                + $"{Temperatures.Words(heater.Load.InsideC, units)} down to {Temperatures.Words(heater.HoldsToC!.Value, units)} outdoors. "
                + $"Wanted: {wanted}, {Margin} over the loss.",
            ({ } watts, true) when watts < heater.Wanted.Low =>
                $"its heater carries the coldest night, but with only {Spare(watts, heater)} to spare. Wanted: {wanted}, {Margin} over the "
                    + "loss.",
            ({ } watts, true) => $"its heater carries the coldest night, with {Spare(watts, heater)} to spare.",
            _ => $"the coldest night takes {wanted}: {loses}, and {Margin} goes on top. Write heater_output, and the heater there is "
                + "checked.",
        };
    }

    /// <summary>How long a house takes to freeze once its heater stops; null where the coldest night is not given.</summary>
    /// <param name="need">What the house takes.</param>
    public static string? Stops(HouseAirNeed need)
    {
        ArgumentNullException.ThrowIfNull(need);
        return need.Heater switch
        {
            null => null,
            { FreezesAfter: { } hours } =>
                $"if the heater stops on that night, the house is at freezing after {Time(hours.Low)} to {Time(hours.High)}.",
            _ => "if the heater stops on that night, the house does not freeze: it is above freezing outdoors.",
        };
    }

    /// <summary>The heater of a house and what comes when it stops, each with the word that it stands under.</summary>
    /// <param name="need">What the house takes.</param>
    /// <param name="units">Units of the site.</param>
    public static IEnumerable<(string Term, string Words)> Terms(HouseAirNeed need, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(need);
        if (Heater(need, units) is { } heater)
        {
            yield return ("Heater", heater);
        }

        if (Stops(need) is { } stops)
        {
            yield return ("When it stops", need.Heater?.FreezesAfter is null ? stops : $"{stops} {Cooling}");
        }
    }

    /// <summary>What holds for all houses: why the figures are ranges, the alarm for the night a heater stops, and the caution.</summary>
    /// <param name="needs">What the houses take.</param>
    public static IEnumerable<string> Notes(IEnumerable<HouseAirNeed> needs)
    {
        yield return Ranges;
        if (needs.Any(need => need.House.IsHeated))
        {
            yield return Alarm;
        }

        yield return "Caution: " + HeatCautions.Air;
    }

    /// <summary>The circulation fans, and how often the summer fans change the air.</summary>
    /// <param name="need">What the house takes.</param>
    /// <param name="units">Units of the site.</param>
    public static string Fans(HouseAirNeed need, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(need);
        var each = need.Circulation / need.CirculationFans;
        var spacing = AirRules.CirculationSpacing.Range.Times(1 / Side(units));
        var times = $"{Numbers.Tenths(need.ChangesAMinute.Low)} to {Numbers.Tenths(need.ChangesAMinute.High)}";
        var fans = $"{Numbers.Whole(need.CirculationFans)} circulation fans of {Flow(each, units)} {FlowUnit(units)} or more";
        var apart = $"{Numbers.Whole(spacing.Low)} to {Numbers.Whole(spacing.High)} {SideUnit(units)}";
        return $"the summer fans change the air {times} times a minute. {fans}, half of them blowing down one side and half back on the "
            + $"other, {apart} apart.";
    }

    /// <summary>Fans and vents, a line each.</summary>
    /// <param name="need">What the house takes.</param>
    /// <param name="units">Units of the site.</param>
    public static IEnumerable<AirLine> Lines(HouseAirNeed need, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(need);
        var (side, flow) = (Side(units), FlowUnit(units));
        var area = SideUnit(units) + "²";
        yield return Of("exhaust fans, summer", need.SummerFans, value => Flow(value, units), flow, AirRules.SummerFans);
        yield return Of("their inlets, open", need.Inlets, value => Numbers.Short(value / side / side), area, AirRules.Inlet);
        yield return Of("exhaust fans, winter stage", need.WinterFans, value => Flow(value, units), flow, AirRules.WinterFans);
        yield return Of("or vents: both sides together", need.Vents, value => Numbers.Short(value / side / side), area, AirRules.Vents);
        yield return Of("that is, both sides open by", need.RollUp, value => Numbers.Short(value / side), SideUnit(units), AirRules.Vents);
        yield return Of("and the ridge as much again", need.Vents, value => Numbers.Short(value / side / side), area, AirRules.Vents);
        var circulation = new AirRange(need.Circulation, need.Circulation);
        yield return Of("circulation fans together", circulation, value => Flow(value, units), flow, AirRules.Circulation);
    }

    /// <summary>Heat an hour, such as "84,600 Btu/h".</summary>
    /// <param name="watts">Watts.</param>
    /// <param name="units">Units of the site.</param>
    public static string Power(double watts, UnitSystem units) => $"{Heat(watts, units)} {HeatUnit(units)}";

    /// <summary>Heat an hour from the lowest to the highest, such as "93,100 to 106,000 Btu/h".</summary>
    /// <param name="watts">Watts.</param>
    /// <param name="units">Units of the site.</param>
    public static string Power(AirRange watts, UnitSystem units) =>
        $"{Heat(watts.Low, units)} to {Heat(watts.High, units)} {HeatUnit(units)}";

    private static string Margin
    {
        get
        {
            var range = AirRules.HeaterOverLoss.Range;
            return $"{Numbers.Whole((range.Low - 1) * 100)} to {Numbers.Whole((range.High - 1) * 100)} %";
        }
    }

    private static AirLine Of(string what, AirRange range, Func<double, string> write, string unit, AirRule rule) =>
        new(what, write(range.Low), write(range.High), unit, Trade.Words(rule.Source.Trust));

    private static string Spare(double watts, HeaterNeed heater) => $"{Numbers.Whole(100 * ((watts / heater.Load.Watts) - 1))} %";

    private static string Time(double hours) =>
        hours < 1 ? Numbers.Count(Math.Max(1, hours * MinutesAnHour), "minute", "minutes") : $"{Numbers.Tenths(hours)} hours";

    private static string Heat(double watts, UnitSystem units) =>
        units == UnitSystem.Imperial ? Numbers.Rough(watts * HeatUnits.BtuPerWattHour) : Numbers.Tenths(watts / WattsAKilowatt);

    private static string HeatUnit(UnitSystem units) => units == UnitSystem.Imperial ? "Btu/h" : "kW";

    private static string Flow(double cubicMetresAnHour, UnitSystem units) =>
        Numbers.Rough(units == UnitSystem.Imperial ? cubicMetresAnHour / AirRules.AnHourOfCfm : cubicMetresAnHour);

    private static string FlowUnit(UnitSystem units) => units == UnitSystem.Imperial ? "cfm" : "m³/h";

    private static double Side(UnitSystem units) => units == UnitSystem.Imperial ? Foot : 1;

    private static string SideUnit(UnitSystem units) => units == UnitSystem.Imperial ? "ft" : "m";
}

/// <summary>A size in words.</summary>
/// <param name="What">Of what.</param>
/// <param name="From">By the lowest of the rules.</param>
/// <param name="To">By the highest.</param>
/// <param name="Unit">Their unit.</param>
/// <param name="Trust">How far the rule may be trusted.</param>
public sealed record AirLine(string What, string From, string To, string Unit, string Trust)
{
    /// <summary>The line as part of a sentence: "exhaust fans, summer 7,680 to 9,600 cfm (seen in the source)".</summary>
    public string Words => $"{What} {Size} ({Trust})";

    /// <summary>Its size: "7,680 to 9,600 cfm".</summary>
    public string Size => string.Equals(From, To, StringComparison.Ordinal) ? $"{From} {Unit}" : $"{From} to {To} {Unit}";
}
