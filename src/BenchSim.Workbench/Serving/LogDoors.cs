using BenchSim.Answers.Agreed;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Learn;
using BenchSim.Answers.Review;
using BenchSim.Folder.Files;
using BenchSim.Report.Words;
using BenchSim.Workbench.Drafts;
using BenchSim.Workbench.Plays;
using BenchSim.Workbench.Showing;
using Microsoft.AspNetCore.Http;

namespace BenchSim.Workbench.Serving;

/// <summary>What the page asks of the log: what it teaches of the crops, and how the season went.</summary>
internal static class LogDoors
{
    /// <summary>Answers what the log teaches, and what crops.csv would gain.</summary>
    public static Task LearnAsync(HttpContext context, OpenDesk open) =>
        ToldDoor.AnswerAsync(
            context,
            open,
            null,
            (desk, files, watch) => new LearnQuestion { Scenarios = [desk.Folder.Source(files)] }.Ask(watch.Cancel),
            (answer, desk, told) => told with { Taught = TaughtDocument.Of(answer, desk) }
        );

    /// <summary>Answers how the season went, beside what was agreed.</summary>
    public static Task ReviewAsync(HttpContext context, OpenDesk open) =>
        ToldDoor.AnswerAsync(
            context,
            open,
            desk => Agreement.Mark(desk.Folder.Directory),
            (desk, files, watch) =>
                new ReviewQuestion { Scenario = desk.Folder.SourceHere(files), Play = new PlayWish(Threads: BesidePlays.Threads) }.Ask(
                    watch
                )
        );

    /// <summary>Begins a try in which crops.csv holds what the log teaches, as it was shown.</summary>
    public static NotMade? Take(OpenDesk open, Desk desk)
    {
        if (desk.InWorkbook(FileNames.Crops) is { } why)
        {
            return new NotMade(why, false);
        }

        var state = desk.State;
        if (open.Beside.Find<LearnAnswer>(state) is not { } answer)
        {
            return new NotMade("The files have changed since. Ask the log again.", true);
        }

        try
        {
            return answer.Crops() is { IsChanged: true } taught
                ? desk.BeginTry(
                    "By the log",
                    state.Files,
                    $"What the log teaches of {Numbers.Count(taught.Crops.Length, "crop", "crops")}",
                    FileNames.Crops,
                    taught.Text!
                )
                : new NotMade("There is nothing to put into crops.csv.", false);
        }
        catch (FaultsFoundException found)
        {
            return new NotMade(FailureWords.Mend(found), false);
        }
        catch (RefusedException refused)
        {
            return new NotMade(refused.Message, false);
        }
    }
}
