using BenchSim.Folder.Editing;
using BenchSim.Folder.Variants;
using BenchSim.Season.Fields;
using BenchSim.Season.Inputs;
using BenchSim.Study.Mending;

namespace BenchSim.Answers.Mend;

/// <summary>Writes changes as a variant file says them.</summary>
internal sealed class MendVariant(SeasonPlan basePlan)
{
    private readonly Scenario _scenario = basePlan.Scenario;

    /// <summary>The file of some changes that go together.</summary>
    /// <param name="changes">The changes.</param>
    /// <param name="comments">What stands on top, a line each.</param>
    public string Write(IReadOnlyList<MendChange> changes, params IEnumerable<string> comments)
    {
        var text = new VariantText();
        Relief[] reliefs = [.. changes.OfType<ReliefChange>().Select(change => change.Relief).Order()];
        if (reliefs.Length > 0)
        {
            var order = _scenario.Rules.Reliefs.Concat(reliefs).Select(relief => ReliefFields.Word[relief]);
            text.Set("relief", "order", VariantText.List(order));
        }

        foreach (var change in changes)
        {
            Say(text, change);
        }

        return text.Write(comments);
    }

    private void Say(VariantText text, MendChange change)
    {
        switch (change)
        {
            case PlacesChange places:
                Say(text, places);
                break;
            case OpeningChange opening:
                text.Set("house", opening.House.Id, "open", VariantText.Date(opening.From));
                break;
            case SetPointChange heat:
                text.Set("house", heat.House.Id, "night", Temperature(heat.NightC));
                text.Set("house", heat.House.Id, "day", Temperature(heat.DayC));
                break;
            case CoverChange cover:
                text.Set("rules", "cover_gain", TomlEdit.Quoted(Kinds.Difference(0, 20).Write(cover.GainK, _scenario.Units)));
                break;
            case SlackChange slack:
                text.Set("rules", "slack_days", VariantText.Whole(slack.To));
                break;
            case DenseChange dense:
                Say(text, dense);
                break;
            case FinishChange finish:
                text.Plan(
                    "crop",
                    finish.CropId,
                    ("finish", VariantText.List([finish.Bench.Id])),
                    ("finish_at", FormattableString.Invariant($"{finish.At}"))
                );
                break;
            case SowChange sow:
                foreach (var move in sow.Moves)
                {
                    text.Plan("batch", move.Line, ("sow", VariantText.Date(move.To)), ("set_out", VariantText.Date(move.SetOut)));
                }

                break;
            case FewerChange fewer:
                text.Plan("batch", fewer.Line, ("plants", VariantText.Whole(fewer.To)), ("trays", "\"\""), ("flats", "\"\""));
                break;
            case LaterChange later:
                text.Plan("batch", later.Line, ("shift_days", VariantText.Whole(later.Days)));
                break;
            case ReliefChange:
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(change), change, "An unknown change.");
        }
    }

    private void Say(VariantText text, PlacesChange change)
    {
        var space = change.Space;
        if (change.LengthM > 0)
        {
            text.Set("space", space.Id, "length", Length(space.Size.LengthM!.Value + change.LengthM));
        }
        else
        {
            text.Set("space", space.Id, "places", VariantText.Whole(space.Places + change.Places));
        }

        if (!space.Changes.IsEmpty)
        {
            // What is taken away later is as much as before: the places that are new stay.
            var later = space.Changes.Select(each =>
                $"{{ from = {VariantText.Date(each.From)}, places = {VariantText.Whole(each.Places + change.Places)} }}"
            );
            text.Set("space", space.Id, "changes", $"[{string.Join(", ", later)}]");
        }

        if (space.Power is { WattsEachPlace: null } power && space.Places > 0)
        {
            var watts = power.Watts * (space.Places + change.Places) / space.Places;
            text.Set("space", space.Id, "watts", FormattableString.Invariant($"{Math.Round(watts, 1)}"));
        }
    }

    private static void Say(VariantText text, DenseChange change)
    {
        text.Plan(
            "crop",
            change.CropId,
            ("method", "\"pot up\""),
            ("flat", TomlEdit.Quoted(change.Flat.Id)),
            ("seeds_per_flat", VariantText.Whole(change.SeedsPerFlat)),
            ("seeds_per_cell", "\"\""),
            ("trays", "\"\"")
        );
        foreach (var (line, on) in change.SetOut)
        {
            text.Plan("batch", line, ("set_out", VariantText.Date(on)));
        }
    }

    private string Temperature(double celsius) => TomlEdit.Quoted(Kinds.Temperature.Write(celsius, _scenario.Units));

    private string Length(double metres) => TomlEdit.Quoted(Kinds.Length(0, 1000).Write(metres, _scenario.Units));
}
