using System.Collections.Immutable;
using System.Globalization;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Print;
using BenchSim.Answers.Run;
using BenchSim.Report.Case;
using BenchSim.Report.Labels;
using BenchSim.Report.Papers;
using BenchSim.Report.Words;
using BenchSim.Report.Writing;
using BenchSim.Workbench.Drafts;
using BenchSim.Workbench.Showing;
using Microsoft.AspNetCore.Http;

namespace BenchSim.Workbench.Serving;

/// <summary>
/// The papers and the case report of the plan that is looked at, made as <c>benchsim print</c> and <c>benchsim run --case</c> make them of
/// its files. The addresses are fixed; nothing of a name in the files comes into one, or into the name that a file is kept under but its
/// letters and digits.
/// </summary>
internal sealed class PaperDoors(OpenDesk open)
{
    private const string Folder = "/papers/";

    // A case plays the seasons: one at a time.
    private readonly Lock _case = new();

    /// <summary>The addresses of all the papers there can be.</summary>
    public static ImmutableArray<string> Addresses { get; } =
    [.. PaperSet.AllNames.Append(CaseFolder.FileName).Select(name => Folder + name)];

    /// <summary>Answers with what papers there are.</summary>
    public async Task ListAsync(HttpContext context)
    {
        if (open.Desk is not { } desk)
        {
            await Gate.RefuseAsync(context, StatusCodes.Status409Conflict, "No folder is open.");
            return;
        }

        var made = Made(desk, context.Request.Query, out var why);
        await JsonBody.SayAsync(
            context,
            made is null ? PapersDocument.Refused(why) : PapersDocument.Of(made),
            PageContext.Default.PapersDocument
        );
    }

    /// <summary>Answers with a paper.</summary>
    public async Task AnswerAsync(HttpContext context)
    {
        if (open.Desk is not { } desk)
        {
            await Gate.RefuseAsync(context, StatusCodes.Status409Conflict, "No folder is open.");
            return;
        }

        var name = context.Request.Path.Value![Folder.Length..];
        if (name is CaseFolder.FileName)
        {
            await CaseAsync(context, desk);
            return;
        }

        var made = Made(desk, context.Request.Query, out var why);
        if (made?.Set.All.FirstOrDefault(paper => string.Equals(paper.Name, name, StringComparison.Ordinal)) is { } found)
        {
            await SendAsync(context, desk, name, found.Write(context.RequestAborted));
            return;
        }

        await Gate.RefuseAsync(
            context,
            made is null ? StatusCodes.Status409Conflict : StatusCodes.Status404NotFound,
            made is null ? why : "The plan that is looked at has no such paper."
        );
    }

    private async Task CaseAsync(HttpContext context, Desk desk)
    {
        byte[] made;
        try
        {
            lock (_case)
            {
                // Who gave up while another case was played is not played for.
                context.RequestAborted.ThrowIfCancellationRequested();
                var asked = new RunQuestion
                {
                    Scenario = desk.Folder.Source(desk.State.Now),
                    NoReport = true,
                    Case = true,
                };
                made = asked.Ask(new PlayWatch(context.RequestAborted)).CaseReport()!;
            }
        }
        catch (FaultsFoundException found)
        {
            await Gate.RefuseAsync(context, StatusCodes.Status409Conflict, found.Sentence);
            return;
        }

        await SendAsync(context, desk, CaseFolder.FileName, made);
    }

    private static MadePapers? Made(Desk desk, IQueryCollection query, out string why)
    {
        why = "";
        try
        {
            var settings = new PaperSettings
            {
                Grower = query["grower"].FirstOrDefault() is { Length: > 0 } grower ? grower : null,
                From = Date(query, "from"),
                To = Date(query, "to"),
                Sheet = Sheet(query),
            };
            if (settings.To < settings.From)
            {
                throw new RefusedException("The last date is before the first.");
            }

            return new PrintQuestion { Scenario = desk.Folder.Source(desk.State.Now), Papers = settings }.Make();
        }
        catch (FaultsFoundException found)
        {
            why = found.Sentence;
        }
        catch (Exception refused) when (refused is RefusedException or ReportRefusedException)
        {
            why = refused.Message;
        }

        return null;
    }

    private static DateOnly? Date(IQueryCollection query, string name) =>
        query[name].FirstOrDefault() is not { Length: > 0 } text ? null
        : DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date) ? date
        : throw new RefusedException($"{PlainText.Quote(text)} is no date; write it as 2027-04-12.");

    private static LabelSheet? Sheet(IQueryCollection query) =>
        query["sheet"].FirstOrDefault() is not { Length: > 0 } text
            ? null
            : LabelSheets.Parse(text, out var why) ?? throw new RefusedException($"{PlainText.Quote(text)} is no sheet of labels: {why}.");

    private static async Task SendAsync(HttpContext context, Desk desk, string name, byte[] bytes)
    {
        var isPage = name.EndsWith(".html", StringComparison.Ordinal);
        var response = context.Response;
        response.ContentType = TypeOf(name);
        response.ContentLength = bytes.Length;
        response.Headers.CacheControl = "no-store";
        response.Headers.ContentDisposition = $"{(isPage ? "inline" : "attachment")}; filename=\"{KeptName(desk, name)}\"";
        if (isPage)
        {
            // A paper carries its style inside, and nothing else that runs or is fetched.
            response.Headers.ContentSecurityPolicy =
                $"default-src 'none'; style-src {PaperSet.StyleSource}; form-action 'none'; base-uri 'none'; frame-ancestors 'none'";
        }

        await response.Body.WriteAsync(bytes, context.RequestAborted);
    }

    // "spring-try-1-labels.pdf": letters a to z, digits and hyphens, whatever the folder and the try are called.
    private static string KeptName(Desk desk, string name)
    {
        var of = PlainText.FilePart(desk.Folder.Name, "papers");
        return desk.State.Looked is { } looked ? $"{of}-{PlainText.FilePart(looked.Name, "try")}-{name}" : $"{of}-{name}";
    }

    private static string TypeOf(string name) =>
        Path.GetExtension(name) switch
        {
            ".html" => "text/html; charset=utf-8",
            ".csv" => "text/csv; charset=utf-8",
            ".pdf" => "application/pdf",
            ".ics" => "text/calendar; charset=utf-8",
            ".xlsx" => "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
            _ => "application/octet-stream",
        };
}
