using BenchSim.Folder.Files;
using BenchSim.Report.Words;
using BenchSim.Workbench.Drafts;
using BenchSim.Workbench.Plays;
using BenchSim.Workbench.Showing;

namespace BenchSim.Workbench.Serving;

/// <summary>Begins a try with what a variant of the folder changes.</summary>
internal static class VariantDoor
{
    /// <summary>Begins it, from the plan that is looked at.</summary>
    public static NotMade? Take(OpenDesk open, Desk desk, TryRequest asked)
    {
        var name = PlainText.Quote(asked.Name);
        if (
            !desk.Folder.Variants().Contains(asked.Name, StringComparer.Ordinal)
            || desk.Folder.TextOf(FileNames.OfVariant(asked.Name)) is not { } variant
        )
        {
            return new NotMade($"There is no variant {name} in the folder that can be read.", false);
        }

        if (open.Looked is not { Played: { Plan: { } plan } played })
        {
            return new NotMade("There is no answer yet to begin from. Mend the faults, or wait a moment.", false);
        }

        var changes = new VariantChanges(played.Texts, plan).Of(variant, out var fault);
        if (fault is not null || changes.IsEmpty)
        {
            return desk.InWorkbook(FileNames.Plan) is { } why
                ? new NotMade(why, false)
                : new NotMade($"The variant {name} cannot be taken as a try; benchsim compare plays it, or says what is wrong.", false);
        }

        var from = TrustDoors.Looked(desk).From;
        return desk.BeginTry(PlainText.Short(asked.Name, Desk.LongestName), from, played.Texts, $"Variant {asked.Name}", changes);
    }
}
