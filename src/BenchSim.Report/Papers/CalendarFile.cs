using System.Collections.Immutable;
using System.Text;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Study.Marks;
using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;

namespace BenchSim.Report.Papers;

/// <summary>
/// The jobs as a calendar file (RFC 5545): an event that lasts the day for each, and one for the nights of a week that are worth watching
/// on a hardening table.
/// </summary>
internal static class CalendarFile
{
    /// <summary>Writes the file. The same batch and job keep their identifier, so that a later file moves the
    /// events of an earlier one.</summary>
    public static byte[] Write(PaperContent content)
    {
        var calendar = new Calendar { ProductId = "-//BenchSim//print//EN", Method = "PUBLISH" };
        calendar.AddProperty("X-WR-CALNAME", PlainText.Short(content.Title, 100));
        var opens = content.Plan.FirstDay;

        // The time of writing is asked for; the first midnight of the season stands for it, so that the same plan gives the same file.
        var stamp = new CalDateTime(opens.Year, opens.Month, opens.Day, 0, 0, 0, "UTC");
        foreach (var task in content.Tasks)
        {
            calendar.Events.Add(EventOf(content, task, stamp));
        }

        foreach (var watch in NightWatch.Of(content.Nights))
        {
            calendar.Events.Add(EventOf(content, watch, stamp));
        }

        var text = new CalendarSerializer().SerializeToString(calendar)
            ?? throw new InvalidOperationException("The calendar could not be written.");
        return Encoding.UTF8.GetBytes(text);
    }

    private static CalendarEvent EventOf(PaperContent content, WorkTask task, CalDateTime stamp)
    {
        var batch = PlainText.Short(task.Batch.Order.Id, 80);
        var hours = task.Hours is { } work ? $"\n{Numbers.Fine(work)} hours of work." : "";
        return Event(
            $"{content.SiteName}\n{task.Kind}\n{task.Batch.Order.Id}",
            task.On,
            task.On,
            $"{TaskWords.Job(task.Kind)}: {batch}, {TaskWords.Pieces(task)}",
            $"{PlainText.Short(task.Batch.CropAndVariety, 200)}, {PlainText.Short(task.Batch.Order.Grower, 200)}: "
                + $"{TaskWords.Detail(content.Plan, task)}.{hours}\n{PaperWords.Dates}",
            TaskWords.Job(task.Kind),
            stamp
        );
    }

    private static CalendarEvent EventOf(PaperContent content, NightWatch watch, CalDateTime stamp)
    {
        var years = watch.Crops[0].Week.Years;
        return Event(
            $"{content.Title}\nCover\n{Dates.Iso(watch.Monday)}\n{watch.Table.Id}\n{watch.Number}",
            watch.First,
            watch.Last,
            $"Watch the nights: {PlainText.Short(watch.Table.Name, 60)}",
            string.Join('\n', watch.Crops.Select(crop => Crop(content.Plan.Scenario, crop.Week, crop.Nights)))
                + $"\n{PaperWords.Nights(content.Plan, years)}",
            "Cover",
            stamp
        );
    }

    // "Tomato: below 45 °F, when it is covered, with a chance of 12 to 34 % a night, Tuesday to Thursday."
    private static string Crop(Scenario scenario, TableWeek week, ImmutableArray<TableNight> nights)
    {
        var cold = Chances([.. nights.Select(night => (double)night.ColdYears / week.Years)]);
        var damaging = nights.Max(night => night.DamagingYears);
        var under = scenario.Rules.CoverGainK > 0 ? " under the cover" : "";
        return $"{PlainText.Short(week.Crop.Name, 80)}, {Dates.Brief(nights[0].On)}"
            + $"{(nights.Length > 1 ? $" to {Dates.Brief(nights[^1].On)}" : "")}: cover it below "
            + $"{Temperatures.Words(week.Crop.TableAboveC, scenario.Units)}, a chance of {cold} a night."
            + (
                damaging == 0
                    ? ""
                    : $" Carry it in below {Temperatures.Words(week.Crop.DamageBelowC, scenario.Units)}{under}: "
                        + $"up to {ChanceWords.Percent((double)damaging / week.Years)}."
            );
    }

    private static string Chances(double[] shares)
    {
        var (least, most) = (ChanceWords.Percent(shares.Min()), ChanceWords.Percent(shares.Max()));
        return string.Equals(least, most, StringComparison.Ordinal) ? most : $"{least} to {most}";
    }

    private static CalendarEvent Event(
        string key,
        DateOnly first,
        DateOnly last,
        string summary,
        string description,
        string category,
        CalDateTime stamp
    )
    {
        var after = last.AddDays(1);
        return new CalendarEvent
        {
            Uid = Convert.ToHexStringLower(Sha256.HashData(Encoding.UTF8.GetBytes(key)))[..32] + "@benchsim.invalid",
            DtStamp = stamp,
            Start = new CalDateTime(first.Year, first.Month, first.Day),
            End = new CalDateTime(after.Year, after.Month, after.Day),
            Summary = summary,
            Description = description,
            Categories = [category],
            Transparency = TransparencyType.Transparent,
        };
    }
}
