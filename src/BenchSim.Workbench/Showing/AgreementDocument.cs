using System.Collections.Immutable;
using BenchSim.Answers.Agreed;
using BenchSim.Report.Words;
using BenchSim.Study.Billing;
using BenchSim.Workbench.Drafts;

namespace BenchSim.Workbench.Showing;

/// <summary>A rule for the bill: its name, and how it divides.</summary>
internal sealed record RuleDocument(string Rule, string Words);

/// <summary>What was agreed on, and what may be.</summary>
/// <param name="Note">What is wrong with the files or with what was agreed; null for nothing.</param>
/// <param name="Since">How far the plan of the files is as it was agreed; null where nothing was.</param>
/// <param name="Rule">The rule that was agreed; null where none was.</param>
/// <param name="Cannot">Why nothing can be agreed on; null where it can.</param>
/// <param name="HasLog">Whether the log has lines.</param>
/// <param name="Today">The day of the calendar.</param>
/// <param name="Days">The days of the agreements there are, the latest last.</param>
/// <param name="Rules">The rules that there are.</param>
internal sealed record AgreementDocument(
    string? Note,
    string? Since,
    string? Rule,
    string? Cannot,
    bool HasLog,
    DateOnly Today,
    ImmutableArray<DateOnly> Days,
    ImmutableArray<RuleDocument> Rules
)
{
    /// <summary>What was agreed by the files of a desk.</summary>
    /// <param name="desk">The desk.</param>
    /// <param name="since">How far the plan is as it was agreed; null where nothing was.</param>
    /// <param name="hasLog">Whether the log has lines.</param>
    /// <param name="note">What is wrong; null for nothing.</param>
    public static AgreementDocument Of(Desk desk, AgreedSince? since, bool hasLog, string? note) =>
        new(
            note,
            since is null ? null : $"{since.Words} The bill is {BillWords.Divided(since.Agreement.Rule)}.",
            since?.Agreement.Rule.Word(),
            desk.ReadOnly,
            hasLog,
            DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime),
            Agreement.Days(desk.Folder.Directory),
            [.. BillRules.All.Select(rule => new RuleDocument(rule.Word(), BillWords.Divided(rule)))]
        );
}
