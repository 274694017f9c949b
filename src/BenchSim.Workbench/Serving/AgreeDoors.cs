using BenchSim.Answers.Agree;
using BenchSim.Answers.Agreed;
using BenchSim.Answers.Asking;
using BenchSim.Report.Words;
using BenchSim.Report.Writing;
using BenchSim.Study.Billing;
using BenchSim.Workbench.Drafts;
using BenchSim.Workbench.Plays;
using BenchSim.Workbench.Showing;
using Microsoft.AspNetCore.Http;

namespace BenchSim.Workbench.Serving;

/// <summary>What the page asks of the bills and of what was agreed: of the files, whatever try is looked at.</summary>
internal static class AgreeDoors
{
    /// <summary>Answers what was agreed, and how far the plan is still that.</summary>
    public static Task StateAsync(HttpContext context, OpenDesk open) =>
        open.Desk is { } desk
            ? JsonBody.SayAsync(context, Of(desk), PageContext.Default.AgreementDocument)
            : Gate.RefuseAsync(context, StatusCodes.Status409Conflict, "No folder is open.");

    /// <summary>Answers with the bills by every rule, which takes seconds.</summary>
    public static Task BillsAsync(HttpContext context, OpenDesk open) =>
        ToldDoor.AnswerAsync(context, open, null, (desk, files, watch) =>
            new BillsQuestion { Scenario = desk.Folder.Source(files), Play = new PlayWish(Threads: BesidePlays.Threads) }.Ask(watch)
        );

    /// <summary>Keeps the plan of the files and a rule.</summary>
    /// <param name="desk">The desk.</param>
    /// <param name="asked">The rule and the day.</param>
    /// <param name="said">What was done; empty where it was not.</param>
    /// <returns>Why it was not done; null when it was.</returns>
    public static NotMade? Agree(Desk desk, AgreeRequest asked, out string said)
    {
        said = "";
        if (desk.ReadOnly is { } why)
        {
            return new NotMade(why, false);
        }

        if (BillRules.Find(asked.Bill) is not { } rule)
        {
            return new NotMade("Choose one of the rules for the bill.", false);
        }

        try
        {
            desk.LookOutside();
            if (!asked.Replace && Agreement.Days(desk.Folder.Directory).Contains(asked.On))
            {
                return new NotMade($"Something is agreed on {Dates.Full(asked.On)} already. Look at it again before you replace it.", true);
            }

            new AgreeQuestion
            {
                Scenario = desk.Folder.SourceHere(desk.State.Files),
                On = asked.On,
                Bill = rule,
                Replace = asked.Replace,
            }.Ask(new PlayWatch(CancellationToken.None));
            said = $"Agreed on {Dates.Full(asked.On)}; the bill is {BillWords.Divided(rule)}.";
            return null;
        }
        catch (FaultsFoundException found)
        {
            return new NotMade(FailureWords.Mend(found), false);
        }
        catch (Exception refused) when (refused is RefusedException or ReportRefusedException)
        {
            return new NotMade(refused.Message, false);
        }
    }

    private static AgreementDocument Of(Desk desk)
    {
        var hasLog = false;
        try
        {
            var source = desk.Folder.SourceHere(desk.State.Files);
            var plan = source.Open().Plan;
            hasLog = !plan.Scenario.Log.IsEmpty;
            return AgreementDocument.Of(desk, AgreedSince.Of(source.Directory, plan), hasLog, null);
        }
        catch (FaultsFoundException found)
        {
            return AgreementDocument.Of(desk, null, hasLog, FailureWords.Mend(found));
        }
        catch (RefusedException refused)
        {
            return AgreementDocument.Of(desk, null, hasLog, refused.Message);
        }
    }
}
