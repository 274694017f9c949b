using System.Globalization;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Opening;
using BenchSim.Answers.Print;
using BenchSim.Report.Words;
using BenchSim.Workbench.Drafts;
using BenchSim.Workbench.Plays;
using BenchSim.Workbench.Showing;
using Microsoft.AspNetCore.Http;

namespace BenchSim.Workbench.Serving;

/// <summary>What the page asks of the benches as they stand, and writes into the log.</summary>
internal static class TodayDoors
{
    /// <summary>Answers how the benches stand on a day: the one asked for, or the calendar's where the season has it.</summary>
    public static Task AnswerAsync(HttpContext context, OpenDesk open)
    {
        if (open is not { Desk: { } desk, Log: { } log })
        {
            return Gate.RefuseAsync(context, StatusCodes.Status409Conflict, "No folder is open.");
        }

        return JsonBody.SayAsync(context, Of(desk, log, open.Kept, DayOf(context)), PageContext.Default.BenchesDocument);
    }

    /// <summary>Answers with the jobs of the days from the one asked for on, which takes seconds.</summary>
    public static async Task ComingAsync(HttpContext context, OpenDesk open)
    {
        if (open.Desk is not { } desk)
        {
            await Gate.RefuseAsync(context, StatusCodes.Status409Conflict, "No folder is open.");
            return;
        }

        ComingDocument document;
        try
        {
            document = DayOf(context) is { } day
                ? ComingDocument.Of(await AskAsync(desk, open, day, context.RequestAborted))
                : ComingDocument.Nothing("Write the day as 2027-04-12.");
        }
        catch (FaultsFoundException)
        {
            // The benches say which.
            document = ComingDocument.Nothing();
        }
        catch (RefusedException refused)
        {
            document = ComingDocument.Nothing(refused.Message);
        }

        await JsonBody.SayAsync(context, document, PageContext.Default.ComingDocument);
    }

    private static Task<ComingAnswer> AskAsync(Desk desk, OpenDesk open, DateOnly day, CancellationToken cancel) =>
        open.Coming.AskAsync(
            desk,
            day,
            (files, watch) =>
                new ComingQuestion
                {
                    Scenario = desk.Folder.Source(files, open.Kept),
                    Today = day,
                    Threads = BesidePlays.Threads,
                }.Ask(watch),
            cancel
        );

    /// <summary>Writes lines into the log.</summary>
    public static NotMade? Write(OpenDesk open, Desk desk, LogRequest asked)
    {
        if ((desk.ReadOnly ?? desk.InWorkbook(Folder.Files.FileNames.Log)) is { } why)
        {
            return new NotMade(why, false);
        }

        var fault = open.Log!.Write(asked.Id, PlainText.Short(asked.Said, 120), asked.Rows);
        desk.LookOutside();
        return fault;
    }

    /// <summary>Takes lines out of the log again that were written here.</summary>
    public static NotMade? TakeBack(OpenDesk open, Desk desk, LogRequest asked)
    {
        var fault = open.Log!.TakeBack(asked.Id);
        desk.LookOutside();
        return fault;
    }

    private static DateOnly? DayOf(HttpContext context) =>
        DateOnly.TryParseExact(
            context.Request.Query["day"].FirstOrDefault(),
            "yyyy-MM-dd",
            CultureInfo.InvariantCulture,
            DateTimeStyles.None,
            out var asked
        )
            ? asked
            : null;

    private static BenchesDocument Of(Desk desk, LogBook log, KeptOpenings kept, DateOnly? day)
    {
        try
        {
            var source = desk.Folder.Source(desk.State.Files, kept);
            var plan = source.Open().Plan;
            var asked = day ?? SeasonDay.Of(plan);
            return asked < plan.FirstDay || asked > plan.LastDay
                ? BenchesDocument.Nothing($"The season goes from {Dates.Iso(plan.FirstDay)} to {Dates.Iso(plan.LastDay)}.", plan)
                : BenchesDocument.Of(OpenedToday.Of(source, asked), desk, log);
        }
        catch (FaultsFoundException found)
        {
            return BenchesDocument.Nothing(FailureWords.Mend(found));
        }
        catch (RefusedException refused)
        {
            return BenchesDocument.Nothing(refused.Message);
        }
    }
}
