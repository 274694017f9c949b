namespace BenchSim.Season.Inputs;

/// <summary>What was seen of a batch: a row of the log that counts seedlings or judges trays.</summary>
/// <param name="What">
/// <see cref="LogKind.Up"/>, <see cref="LogKind.Good"/>, <see cref="LogKind.Ready"/> or <see cref="LogKind.NotReady"/>.
/// </param>
/// <param name="Day">Day, 0 the first of the season.</param>
/// <param name="Space">Position of the space in which it was looked at; null where the row names none.</param>
/// <param name="Count">Seedlings up, or cells with a plant; 0 where trays were judged.</param>
/// <param name="Of">Seeds or cells looked at; 0 where trays were judged.</param>
/// <param name="IsPicked">Whether what was counted was picked by lot and not by its looks.</param>
/// <param name="Word">The word that stands in the place of the count; <see cref="CountWord.None"/> for none.</param>
public sealed record Sighting(
    LogKind What,
    int Day,
    int? Space = null,
    int Count = 0,
    int Of = 0,
    bool IsPicked = false,
    CountWord Word = CountWord.None
)
{
    /// <summary>Between which numbers the count lies.</summary>
    public CountRange Range => Word == CountWord.None ? CountRange.Exactly(Count) : CountWords.Range(Word, Of);
}
