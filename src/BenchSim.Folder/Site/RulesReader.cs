using BenchSim.Folder.Faults;
using BenchSim.Folder.Text;
using BenchSim.Folder.Toml;
using BenchSim.Season.Inputs;
using BenchSim.Season.Seed;

namespace BenchSim.Folder.Site;

/// <summary>
/// Reads how the site is worked: [rules], [relief], [work_minutes], [work_seconds], [seed], [mix] and [prices]. What is left out has the
/// default of <see cref="SiteRules"/>.
/// </summary>
internal sealed class RulesReader(CellReader cells)
{
    // The moistures at which the constants of seed life were measured.
    private const double MeasuredFromPercent = 5;
    private const double MeasuredToPercent = 15;

    /// <summary>Reads the sections.</summary>
    /// <param name="sectionOf">Gives a section by its name; null when it is not written.</param>
    public SiteRules Read(Func<string, Section?> sectionOf)
    {
        var rules = sectionOf("rules") is { } section ? ReadRules(section) : new SiteRules();
        rules = sectionOf("relief")?.Read(ReliefFields.Table, rules, cells) ?? rules;
        return rules with
        {
            Minutes = sectionOf("work_minutes")?.Read(WorkMinuteFields.Table, rules.Minutes, cells) ?? rules.Minutes,
            Seconds = sectionOf("work_seconds")?.Read(WorkSecondFields.Table, rules.Seconds, cells) ?? rules.Seconds,
            SeedStorage = sectionOf("seed") is { } seed ? ReadSeed(seed) : null,
            Mix = sectionOf("mix")?.Read(MixFields.Table, rules.Mix, cells) ?? rules.Mix,
            Prices = sectionOf("prices")?.Read(PriceFields.Table, rules.Prices, cells) ?? rules.Prices,
        };
    }

    private SiteRules ReadRules(Section section)
    {
        var rules = section.Read(RuleFields.Table, new SiteRules(), cells);
        if (rules.SowGiveUpDays < rules.SowWaitDays)
        {
            cells.Refuse(
                section.Scalar(section.Has("sow_give_up_days") ? "sow_give_up_days" : "sow_wait_days"),
                $"makes a sowing be given up after {rules.SowGiveUpDays} days, before it has waited {rules.SowWaitDays} days",
                "let sow_give_up_days be at least sow_wait_days"
            );
        }

        return rules;
    }

    // How seed is stored; null when it is not said, or had a fault.
    private SeedStorage? ReadSeed(Section section)
    {
        var seed = section.Read(SeedFields.Table, SeedFields.NotSaid, cells);
        if (seed.MoisturePercent is < MeasuredFromPercent or > MeasuredToPercent)
        {
            var moisture = section.Scalar("moisture");
            cells.Faults.Warn(
                moisture.Place,
                $"moisture is {Words.Quote(moisture.Text)}, and the life of seed was measured at about 5 % to 15 %",
                "trust the age of seed less, or test it again before sowing"
            );
        }

        section.RefuseHalf("moisture", "\"8 %\"", "storage", "\"50 F\"");
        return double.IsNaN(seed.MoisturePercent) || double.IsNaN(seed.TemperatureC) ? null : seed;
    }
}
