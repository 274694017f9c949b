using System.Collections.Immutable;
using BenchSim.Season.Values;

namespace BenchSim.Season.Fields;

/// <summary>
/// A value as somebody wrote it: a cell of a table, or the value of a key. Asked for a kind of value it gives that value. Where it cannot,
/// it gives null: without a word when nothing is written, else with a fault, told to whoever reads it.
/// </summary>
public interface IWritten
{
    /// <summary>What is written, without spaces around it; empty for nothing, and for a list.</summary>
    string Text { get; }

    /// <summary>What is written, between quotation marks and safe to show.</summary>
    string Quoted { get; }

    /// <summary>Units of a number that says none.</summary>
    UnitSystem Units { get; }

    /// <summary>Reports that the value was read and is wrong for another reason.</summary>
    /// <param name="what">What is wrong, to follow the name of the key.</param>
    /// <param name="instead">What would be right.</param>
    void Refuse(string what, string instead);

    /// <summary>Another text at the same place: a part of what is written.</summary>
    IWritten With(string text);

    /// <summary>A name: visible characters on one line, in one spelling.</summary>
    string? Name();

    /// <summary>A whole number within bounds.</summary>
    int? Whole(int least, int most);

    /// <summary>A number within bounds.</summary>
    double? Number(double least, double most);

    /// <summary>An amount of money within bounds; a currency sign beside it says nothing more.</summary>
    double? Money(double least, double most);

    /// <summary>A number with a unit, in the units used inside, within bounds; those of a temperature are of anything on a farm.</summary>
    double? Measured(Quantity measure, double least, double most);

    /// <summary>A fraction, 0 to 1.</summary>
    /// <param name="aboveNone">Leaves out 0 itself.</param>
    /// <param name="belowAll">Leaves out 1 itself.</param>
    double? Share(bool aboveNone, bool belowAll);

    /// <summary>A date from 1900 to 2199.</summary>
    DateOnly? Date();

    /// <summary>A time of the day, hours and minutes.</summary>
    TimeOnly? Time();

    /// <summary>One of a few words.</summary>
    /// <param name="words">The words with what they mean.</param>
    /// <param name="choices">What may be written, for a fault: "\"hoop\" or \"gable\"".</param>
    /// <param name="value">What the word means.</param>
    /// <returns>False when nothing is written, or none of the words.</returns>
    bool TryChoose<T>(ImmutableArray<(string Word, T Value)> words, string choices, out T value);

    /// <summary>The values of a list; null when it is none, or something in it is no single value.</summary>
    /// <param name="form">What a list of this key looks like, for the fault where it is none; null for a list of words.</param>
    /// <param name="instead">What to do about an empty text in it; null to write a value or take it out.</param>
    IReadOnlyList<IWritten>? Items(string? form = null, string? instead = null);
}
