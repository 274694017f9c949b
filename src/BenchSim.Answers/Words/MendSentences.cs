using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Study.Mending;

namespace BenchSim.Answers.Words;

/// <summary>The sentences of an answer.</summary>
internal static class MendSentences
{
    private const int MostNamed = 2;
    private const int MostAsGood = 6;

    /// <summary>The answer, in at most five lines.</summary>
    public static string Headline(MendResult result)
    {
        var name = FirstScreen.Subject(result.Plan.Scenario.Name, null, result.Plan.Today);
        var goal = ChanceWords.Setting(result.Options.Goal);
        var now = $"{Fits(result.Before)} of {Numbers.Count(result.Options.Seasons, "season", "seasons")}";
        if (result.IsMetBefore)
        {
            return $"{name}: nothing needs mending. The plan fits in {now}, and the goal is {goal}. " + $"{Late(result.Before, result)}.";
        }

        if (result.Steps.IsEmpty)
        {
            var unsure = result.Before.Fits.Share >= result.Options.Goal ? "; more seasons would tell whether it is met" : "";
            return $"{name}: nothing that was tried helps. The plan fits in {now}, and the goal is {goal}{unsure}. "
                + $"{Late(result.Before, result)}.";
        }

        var count = Numbers.Count(result.Steps.Length, "change", "changes");
        var bought = result.Steps.Count(step => step.Change.IsBought);
        var buys =
            bought == 0 ? "with nothing to buy"
            : result.Steps.Length == 1 ? "to be bought"
            : $"{Numbers.Whole(bought)} of them to be bought";
        var isOne = result.Steps.Length == 1;
        var first =
            result.IsMet ? $"{name}: {count} {(isOne ? "brings" : "bring")} the plan to its goal, {buys}"
            : result.After.Fits.Share >= result.Options.Goal
                ? $"{name}: {count} {(isOne ? "helps" : "help")}, {buys}; more seasons would tell whether the plan then meets its goal"
            : $"{name}: {count} {(isOne ? "helps" : "help")}, {buys}, but the plan does not reach its goal";
        return $"{first}. "
            + $"Fits: {Fits(result.Before)} of seasons, then {Fits(result.After)}; the goal is {goal}. "
            + $"Plants that miss their date, late or never out, in a usual year: {Numbers.Whole(result.Before.LateUsual)}, then "
            + $"{Numbers.Whole(result.After.LateUsual)}; "
            + $"in one of ten: {Numbers.Whole(result.Before.LateBad)}, then {Numbers.Whole(result.After.LateBad)}"
            + (result.After.LateBad > result.Before.LateBad ? ", which is worse." : ".");
    }

    /// <summary>A change of those chosen.</summary>
    public static string Step(MendResult result, MendStep step, MendFigures before)
    {
        var words = new MendWords(result.Plan);
        var listed = step.Change is SowChange { Moves.Length: > 1 } ? " (--all lists them.)" : "";
        return $"{words.Deed(step.Change, step.Plan)}{listed} {Effect(before, step.After)} {StepTerms(result, step, before)}";
    }

    /// <summary>What a change of those chosen costs.</summary>
    public static string StepTerms(MendResult result, MendStep step, MendFigures before) =>
        Terms(new MendWords(result.Plan), step.Change, step.Plan, step.Terms, before, step.After);

    /// <summary>What a change does to a bad year and to the fit, and what of it is worse than before.</summary>
    /// <param name="before">Figures before it.</param>
    /// <param name="after">Figures after it.</param>
    internal static string Effect(MendFigures before, MendFigures after)
    {
        var late = $"{Numbers.Whole(before.LateBad)}{{0}}, then {Numbers.Whole(after.LateBad)}";
        var bad =
            after.LateBad > before.LateBad
                ? "in a bad year more plants miss their date: " + late.Replace("{0}", "", StringComparison.Ordinal)
                : "in a bad year " + late.Replace("{0}", " plants miss their date", StringComparison.Ordinal);
        var (fits, isFewer) = ($"{Fits(before)}, then {Fits(after)}", after.Fits.Share < before.Fits.Share);
        var figures = (after.LateBad > before.LateBad, isFewer) switch
        {
            (false, false) => $"{PlainText.Capital(bad)}; fits {fits}",
            (true, false) => $"Fits {fits}; but {bad}",
            (false, true) => $"{PlainText.Capital(bad)}; but the plan fits in fewer seasons: {fits}",
            (true, true) => $"{PlainText.Capital(bad)}; and the plan fits in fewer seasons: {fits}",
        };
        return after.LateUsual > before.LateUsual
            ? $"{figures}. In a usual year more miss it: {Numbers.Whole(before.LateUsual)}, then {Numbers.Whole(after.LateUsual)}."
            : $"{figures}.";
    }

    /// <summary>Whose sowings the changes move, the most first, where they move several; null where they do not.</summary>
    public static string? Moves(MendResult result)
    {
        SowingMove[] moves = [.. result.Steps.Select(step => step.Change).OfType<SowChange>().SelectMany(sow => sow.Moves)];
        return moves.Length < 2 ? null : $"Sowings moved: {MendWords.Spread(moves)}.";
    }

    /// <summary>A change by itself.</summary>
    public static string Option(MendResult result, MendOption option)
    {
        var words = new MendWords(result.Plan);
        return $"{words.Deed(option.Change, option.Plan)} {OptionTerms(result, option)} Not here? Mark it so: {option.Change.Mark}";
    }

    /// <summary>What a change by itself costs, and what is as good.</summary>
    public static string OptionTerms(MendResult result, MendOption option)
    {
        var words = new MendWords(result.Plan);
        return Terms(words, option.Change, option.Plan, option.Terms, result.BeforeAlone, option.After)
            + AsGood(words, option.AsGood, MostAsGood);
    }

    /// <summary>What stands in the way.</summary>
    public static string InTheWay(MendResult result)
    {
        if (result.InTheWay.IsEmpty)
        {
            return result.IsMet
                ? "Hardly any plant is late then."
                : "What keeps it from the goal is not late plants: some trays stand too long, or some sowings come too late.";
        }

        var crops = result.InTheWay.Select(each =>
            $"{PlainText.Short(each.Batch.Crop.Name.ToLowerInvariant(), 24)} ({Numbers.Count(each.Plants, "plant", "plants")} a season: "
            + $"{Reason(each.Reason)})"
        );
        return $"Still in the way: {PlainText.List([.. crops])}.";
    }

    /// <summary>A space that is full and need not be larger.</summary>
    public static string FullForNothing(MendSpace space)
    {
        var name = PlainText.Short(space.Space.Name, 30);
        var then = space.Then is { } other ? $"the trays then wait for {PlainText.Short(other.Name, 30)} instead" : null;
        var why = (then, space.IsWorse) switch
        {
            ({ } words, true) => $"more plants are late: {words}",
            ({ } words, false) => words,
            (null, true) => "more plants are late",
            _ => "what waits there is in time all the same",
        };
        return $"{name}: full in {ChanceWords.Fine(space.Seasons)} of seasons, but "
            + $"{Numbers.Count(space.Larger.Places, "place", "places")} more would not help: {why}.";
    }

    /// <summary>How it was found.</summary>
    public static string Method(MendResult result) =>
        $"Late: wanted plants not out within {Numbers.Count(result.Plan.Scenario.Rules.LateDays, "day", "days")} of their date, "
        + (result.Options.CountsWeather ? "whatever kept them" : "days on which only the weather kept them not counted")
        + "; those that never come are among them. A bad year is one of ten. Costs are work, heat, mix and seed of a season. "
        + $"{Numbers.Whole(result.Tried)} changes were tried on {Numbers.Whole(result.Options.SearchSeasons)} seasons, the best joined "
        + "step by step with a look back: nothing proves that no other set is better. What is shown was played in "
        + $"{Numbers.Whole(result.Options.Seasons)} other seasons, the same for all, seed {result.Options.Seed}; the intervals allow "
        + $"for all {Numbers.Whole(result.Comparisons)} shown here (Bonferroni)."
        + (result.NotHere > 0 ? $" {Numbers.Count(result.NotHere, "change", "changes")} marked as not here were left out." : "");

    private static string Terms(
        MendWords words,
        MendChange change,
        SeasonPlan plan,
        MendTerms terms,
        MendFigures before,
        MendFigures after
    ) =>
        $"Costs: {Costs(plan, change, before, after)}. Gives way: {GivesWay(terms)}. Decide by: {words.Day(terms.DecideBy)}. "
        + $"Wrong if: {MendWords.WrongIf(change, plan)}.";

    private static string Costs(SeasonPlan plan, MendChange change, MendFigures before, MendFigures after)
    {
        var buys = change switch
        {
            PlacesChange places => $"{Numbers.Count(places.Places, "place", "places")} to buy, ",
            CoverChange => "a row cover to buy, ",
            _ => "",
        };
        if (before.Money is { } was && after.Money is { } now)
        {
            var money = new Money(plan.Scenario.Rules.Prices.Currency);
            var more = now - was;
            return buys
                + (
                    Math.Abs(more) < 0.5 ? "nothing a season"
                    : more > 0 ? $"{money.Whole(more)} a season"
                    : $"{money.Whole(-more)} a season saved"
                );
        }

        var hours = after.WorkHours - before.WorkHours;
        return buys
            + (
                Math.Abs(hours) < 0.05 ? "no more work" : $"{Numbers.Short(Math.Abs(hours))} {(hours > 0 ? "more" : "fewer")} hours of work"
            );
    }

    private static string GivesWay(MendTerms terms)
    {
        if (terms.GivesWay.IsEmpty)
        {
            return "nobody";
        }

        var named = terms
            .GivesWay.Take(MostNamed)
            .Select(each => $"{MendWords.Name(each.Batch.Order.Id)} (+{Numbers.Short(each.Plants)})")
            .ToList();
        if (terms.GivesWay.Length > MostNamed)
        {
            named.Add($"{Numbers.Whole(terms.GivesWay.Length - MostNamed)} more");
        }

        return PlainText.List(named);
    }

    private static string AsGood(MendWords words, System.Collections.Immutable.ImmutableArray<MendChange> others, int most)
    {
        if (others.IsEmpty)
        {
            return "";
        }

        var named = others.Take(most).Select(words.Short).ToList();
        if (others.Length > named.Count)
        {
            named.Add($"{Numbers.Whole(others.Length - named.Count)} more");
        }

        return $" As good, as far as the play shows: {PlainText.List(named)}.";
    }

    private static string Late(MendFigures figures, MendResult result) =>
        "Plants that miss their date, late or never out, of "
        + $"{Numbers.Whole(result.Plan.Batches.Sum(batch => (double)batch.Order.Plants))}: "
        + $"{Numbers.Whole(figures.LateUsual)} in a usual year, {Numbers.Whole(figures.LateBad)} in one of ten";

    private static string Fits(MendFigures figures) => ChanceWords.Fine(figures.Fits.Share);

    private static string Reason(MendReason reason) =>
        reason switch
        {
            MendReason.Room => "no place",
            MendReason.Weather => "the weather",
            MendReason.Short => "too few come up or come through",
            MendReason.Date => "not ready by its date",
            _ => throw new ArgumentOutOfRangeException(nameof(reason)),
        };
}
