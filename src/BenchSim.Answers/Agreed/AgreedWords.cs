using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Study.Agreed;

namespace BenchSim.Answers.Agreed;

/// <summary>What was agreed, in words.</summary>
internal static class AgreedWords
{
    private const int MostFiles = 3;

    /// <summary>Whether the plan is still as it was agreed, in a sentence or two.</summary>
    public static string Since(AgreedSince since)
    {
        var on = $"agreed on {Dates.Full(since.Agreement.On)}";
        var sentence = since.Changes switch
        {
            null => $"The plan {on} can no longer be read; \"{Shell.Program} check {Shell.Word(since.Agreement.Folder)}\" says why.",
            { All: 0 } => $"The plan is as it was {on}.",
            { } changes => $"Since it was {on}, the plan has changed: {PlainText.List([.. Parts(changes)])}.",
        };
        var files = since.Agreement.Changed;
        return files.IsEmpty
            ? sentence
            : $"{sentence} The copy of what was agreed is not as it was written: "
                + PlainText.List([.. files.Take(MostFiles).Select(file => PlainText.Short(file, 40))])
                + (files.Length > MostFiles ? $" and {Numbers.Whole(files.Length - MostFiles)} more." : ".");
    }

    private static IEnumerable<string> Parts(PlanChanges changes)
    {
        if (changes.Changed > 0)
        {
            yield return $"{Numbers.Count(changes.Changed, "sowing", "sowings")} otherwise";
        }

        if (changes.New > 0)
        {
            yield return $"{Numbers.Whole(changes.New)} new";
        }

        if (changes.Gone > 0)
        {
            yield return $"{Numbers.Whole(changes.Gone)} gone";
        }
    }
}
