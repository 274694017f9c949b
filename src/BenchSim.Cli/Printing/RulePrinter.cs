using BenchSim.Answers.Words;
using BenchSim.Folder;
using BenchSim.Season.Inputs;
using BenchSim.Season.Seed;

namespace BenchSim.Cli.Printing;

/// <summary>Prints the rules in force under the names of their keys in site.toml.</summary>
internal static class RulePrinter
{
    private const string NoLimit = "no limit";

    // Longer than any meaning: a test prints them all.
    private const int LongestMeaning = 400;
    private const string NotGiven = "not given";

    public static void Print(Desk desk, Scenario scenario)
    {
        PlanPrinter.Heading(desk, "Rules in force");
        var table = new TextTable(["rule", "in force", "what it means"], longestCell: LongestMeaning);
        foreach ((var section, var key, var value) in InForce(scenario))
        {
            var meaning = FolderReference
                .SiteKeys.FirstOrDefault(field =>
                    string.Equals(field.Section, section, StringComparison.Ordinal)
                    && string.Equals(field.Name, key, StringComparison.Ordinal)
                )
                ?.Meaning
                ?? "";
            table.Add($"{section}.{key}", value, meaning);
        }

        table.Print(desk);
    }

    private static IEnumerable<(string Section, string Key, string Value)> InForce(Scenario scenario)
    {
        var rules = scenario.Rules;
        yield return ("rules", "work_days", string.Join(", ", rules.WorkDays.Order().Select(day => day.ToString()[..3])));
        yield return ("rules", "days_off", Figures.List([.. rules.DaysOff.Select(Figures.Date)]));
        yield return ("rules", "round_at", rules.RoundAt.ToString("HH:mm", null));
        yield return ("rules", "rounds", rules.Rounds == RoundKind.AnyTime ? "any time" : "work round");
        yield return ("rules", "move_back", rules.MoveBack ? "yes" : "no");
        yield return ("rules", "sow_wait_days", Days(rules.SowWaitDays));
        yield return ("rules", "sow_give_up_days", Days(rules.SowGiveUpDays));
        yield return ("rules", "table_lead_days", Days(rules.TableLeadDays));
        yield return ("rules", "slack_days", Days(rules.SlackDays));
        yield return ("rules", "set_out_early_days", Days(rules.SetOutEarlyDays));
        yield return ("rules", "sow_trays_a_day", Limit(rules.SowTraysADay));
        yield return ("rules", "pot_up_trays_a_day", Limit(rules.PotUpTraysADay));
        yield return ("rules", "set_out_trays_a_day", Limit(rules.SetOutTraysADay));
        yield return ("rules", "service_goal", Figures.Setting(rules.ServiceGoal));
        yield return ("rules", "late_days", Days(rules.LateDays));
        yield return ("rules", "stand_assurance", Figures.Setting(rules.StandAssurance));
        yield return ("rules", "medium_offset", Figures.Difference(rules.MediumOffsetK, scenario.Units));
        yield return ("rules", "forecast_nights", Figures.Count(rules.ForecastNights, "night", "nights"));
        yield return ("rules", "wet_limit", Figures.Rain(rules.WetLimitMm, scenario.Units));
        yield return ("rules", "cover_gain", Figures.Difference(rules.CoverGainK, scenario.Units));
        yield return ("rules", "germination_sample", Figures.Count(rules.GerminationSample, "seed", "seeds"));
        yield return (
            "rules",
            "light",
            rules.Light.All(factor => factor == 1) ? "1 in each month" : string.Join(", ", rules.Light.Select(Figures.Plain))
        );
        foreach (var rule in SeedRules(scenario).Concat(PriceRules(rules.Prices)))
        {
            yield return rule;
        }

        yield return ("relief", "order", Figures.List([.. rules.Reliefs.Select(Words)]));
        if (rules.Reliefs.Contains(Relief.OffMatEarly))
        {
            yield return ("relief", "early_off_mat_at", Figures.Setting(rules.EarlyOffMatAt));
        }

        if (rules.Reliefs.Contains(Relief.TableEarly))
        {
            yield return ("relief", "early_table_at", Figures.Setting(rules.EarlyTableAt));
        }

        yield return ("work_minutes", "sow", Minutes(rules.Minutes.Sow));
        yield return ("work_minutes", "pot_up", Minutes(rules.Minutes.PotUp));
        yield return ("work_minutes", "move", Minutes(rules.Minutes.Move));
        yield return ("work_minutes", "set_out", Minutes(rules.Minutes.SetOut));
        yield return ("work_minutes", "carry_in", Minutes(rules.Minutes.CarryIn));
    }

    private static IEnumerable<(string Section, string Key, string Value)> SeedRules(Scenario scenario)
    {
        var storage = scenario.Rules.SeedStorage;
        yield return ("seed", "moisture", storage is { } seed ? $"{Figures.Plain(seed.MoisturePercent)} %" : NotGiven);
        yield return ("seed", "storage", storage is { } kept ? Figures.Temperature(kept.TemperatureC, scenario.Units) : NotGiven);
    }

    private static IEnumerable<(string Section, string Key, string Value)> PriceRules(Prices prices)
    {
        string Shown(double? price) => price is { } amount ? Figures.Money(amount, prices.Currency) : NotGiven;
        yield return ("prices", "currency", prices.Currency.Length == 0 ? NotGiven : prices.Currency);
        yield return ("prices", "labour_hour", Shown(prices.LabourHour));
        yield return ("prices", "mix_litre", Shown(prices.MixLitre));
        yield return ("prices", "thousand_seeds", Shown(prices.ThousandSeeds));
    }

    private static string Days(int days) => Figures.Count(days, "day", "days");

    private static string Limit(int? trays) => trays is { } limit ? Figures.Count(limit, "tray", "trays") : NoLimit;

    private static string Minutes(double minutes) => $"{Figures.Plain(minutes)} {(minutes == 1 ? "minute" : "minutes")}";

    private static string Words(Relief relief) =>
        relief switch
        {
            Relief.Aisle => "aisle",
            Relief.OffMatEarly => "off mat early",
            _ => "table early",
        };
}
