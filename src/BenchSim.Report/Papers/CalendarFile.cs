using System.Security.Cryptography;
using System.Text;
using BenchSim.Report.Words;
using BenchSim.Season.Planning;
using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;

namespace BenchSim.Report.Papers;

/// <summary>
/// The jobs as a calendar file (RFC 5545): an event that lasts the day for each, and one for the nights of a
/// week on which trays may need a cover.
/// </summary>
internal static class CalendarFile
{
    private const double LeastChance = 0.01;

    /// <summary>Writes the file. The same batch and job keep their identifier, so that a later file moves the
    /// events of an earlier one.</summary>
    public static byte[] Write(PaperContent content)
    {
        var calendar = new Calendar { ProductId = "-//BenchSim//print//EN", Method = "PUBLISH" };
        calendar.AddProperty("X-WR-CALNAME", PlainText.Short(content.SiteName, 100));
        var opens = content.Plan.FirstDay;

        // The time of writing is asked for; the first midnight of the season stands for it, so that the same plan gives the same file.
        var stamp = new CalDateTime(opens.Year, opens.Month, opens.Day, 0, 0, 0, "UTC");
        foreach (var task in content.Tasks)
        {
            calendar.Events.Add(EventOf(content, task, stamp));
        }

        foreach (var week in content.Nights.Where(week => week.YearsWithCold >= LeastChance * week.Years))
        {
            calendar.Events.Add(EventOf(content, week, stamp));
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
            $"{PlainText.Short(task.Batch.Crop.Name, 200)}, {PlainText.Short(task.Batch.Order.Grower, 200)}: "
                + $"{TaskWords.Detail(content.Plan, task)}.{hours}\n{PaperWords.Dates}",
            TaskWords.Job(task.Kind),
            stamp
        );
    }

    private static CalendarEvent EventOf(PaperContent content, TableWeek week, CalDateTime stamp)
    {
        var crop = PlainText.Short(week.Crop.Name, 80);
        var limit = Temperatures.Words(week.Crop.HardenAboveC, content.Plan.Scenario.Units);
        return Event(
            $"{content.SiteName}\nCover\n{Dates.Iso(week.Monday)}\n{week.Crop.Id}\n{week.Table.Id}",
            week.Nights[0].On,
            week.Nights[^1].On,
            $"Watch the nights: {crop} on {PlainText.Short(week.Table.Name, 60)}",
            $"A cover is expected on {Numbers.Short(week.ColdNights)} of {Numbers.Count(week.Nights.Length, "night", "nights")} "
                + $"(below {limit}); on at least one with a chance of {Numbers.Percent((double)week.YearsWithCold / week.Years)} "
                + $"%.\n{PaperWords.Nights(content.Plan, week.Years)}",
            "Cover",
            stamp
        );
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
            Uid = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(key)))[..32] + "@benchsim.invalid",
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
