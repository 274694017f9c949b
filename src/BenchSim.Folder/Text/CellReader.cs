using System.Collections.Immutable;
using BenchSim.Folder.Faults;
using BenchSim.Season.Fields;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Text;

/// <summary>
/// Turns one value as written into a value of the model. Every method returns null for a blank cell, and null with a fault for a bad one.
/// </summary>
internal sealed partial class CellReader(FaultList faults)
{
    /// <summary>Bounds of any temperature on a farm, degrees Celsius: past them a unit was forgotten.</summary>
    public const double ColdestC = -60;

    /// <inheritdoc cref="ColdestC"/>
    public const double HottestC = 55;

    public FaultList Faults => faults;

    /// <summary>Reports a value that was read and is wrong for another reason.</summary>
    public void Refuse(Cell cell, string what, string instead)
    {
        if (!cell.IsTold)
        {
            faults.Add(cell.Place, $"{cell.Name} {what}", instead);
        }
    }

    /// <summary>Reports a cell that must be left empty.</summary>
    public void RefuseWhereGiven(Cell cell, string what, string instead)
    {
        if (!cell.IsBlank)
        {
            Refuse(cell, what, instead);
        }
    }

    /// <summary>
    /// A name, without invisible characters. Names are compared character by character, so each must have one spelling (Unicode normal form
    /// C).
    /// The program runs without the system's Unicode tables: where luck is drawn it joins the accents of Latin letters, but it cannot
    /// compose every script, and so it asks for letters with their accents.
    /// </summary>
    public string? Name(Cell cell)
    {
        if (cell.IsBlank || cell.IsTold)
        {
            return null;
        }

        if (Words.HasControlCharacter(cell.Text))
        {
            Refuse(
                cell,
                $"is {Words.Quote(cell.Text)}, which holds a line break or an invisible character",
                "write the name on one line with visible characters"
            );
            return null;
        }

        // Combining diacritical marks.
        if (cell.Text.Any(character => character is >= '\u0300' and <= '\u036F'))
        {
            Refuse(
                cell,
                $"is {Words.Quote(cell.Text)}, which holds a letter and its accent as two characters",
                "type the accented letter as one character, or leave the accent out"
            );
            return null;
        }

        return cell.Text;
    }

    /// <summary>A whole number within bounds.</summary>
    public int? Whole(Cell cell, int least, int most = WholeKind.Many)
    {
        if (cell.IsBlank)
        {
            return null;
        }

        if (!WrittenNumber.TryPlain(cell.Text, isWhole: true, out var plain, out var two) || !QuantityText.TryNumber(plain, out var number))
        {
            Refuse(
                cell,
                two?.What ?? $"is {Words.Quote(cell.Text)}, which is not a number",
                two?.Instead ?? $"write a whole number, {Bounds(least, most)}"
            );
            return null;
        }

        if (number != Math.Floor(number))
        {
            Refuse(cell, $"is {plain}, which is not a whole number", $"write a whole number, {Bounds(least, most)}");
            return null;
        }

        if (number < least || number > most)
        {
            Refuse(
                cell,
                number < 0 && least >= 0 ? $"is {plain}, and cannot be negative" : $"is {plain}",
                $"write a whole number, {(number > most ? $"from {Words.Number(least)} to {Words.Number(most)}" : Bounds(least, most))}"
            );
            return null;
        }

        return (int)number;
    }

    /// <summary>A number within bounds.</summary>
    public double? Number(Cell cell, double least, double most)
    {
        if (cell.IsBlank)
        {
            return null;
        }

        if (
            !WrittenNumber.TryPlain(cell.Text, isWhole: false, out var plain, out var two) || !QuantityText.TryNumber(plain, out var number)
        )
        {
            Refuse(
                cell,
                two?.What ?? $"is {Words.Quote(cell.Text)}, which is not a number",
                two?.Instead ?? $"write a number, {Bounds(least, most)}"
            );
            return null;
        }

        return Within(cell, number, least, most);
    }

    /// <summary>An amount of money within bounds: a currency sign or code beside the number says nothing more.</summary>
    public double? Money(Cell cell, double least, double most) => Number(cell with { Text = Currency.TakenOff(cell.Text) }, least, most);

    /// <summary>A number with a unit, in the units used inside, within bounds; those of a temperature are of anything on a farm.</summary>
    public double? Measured(Cell cell, Quantity quantity, double least, double most)
    {
        if (Recorded(cell, quantity) is not { } value)
        {
            return null;
        }

        if (!ReferenceEquals(quantity, Quantity.Temperature))
        {
            return Within(cell, value, least, most, quantity);
        }

        var isOnFarm = value is >= ColdestC and <= HottestC;
        var (coldest, hottest) = isOnFarm ? (least, most) : (ColdestC, HottestC);
        if (value < coldest || value > hottest)
        {
            Refuse(
                cell,
                $"is {Words.Quote(cell.Text)}, which is {Words.Temperature(value, cell.Units)}",
                $"write a temperature from {Words.Temperature(coldest, cell.Units)} to {Words.Temperature(hottest, cell.Units)}"
                    + (isOnFarm ? "" : ", with its unit, such as 60 F")
            );
            return null;
        }

        return value;
    }

    /// <summary>A temperature in degrees Celsius.</summary>
    public double? Temperature(Cell cell) => Measured(cell, Quantity.Temperature, ColdestC, HottestC);

    /// <summary>A value of a daily record without bounds: the check of the record knows better which are possible.</summary>
    public double? Recorded(Cell cell, Quantity quantity)
    {
        if (cell.IsBlank)
        {
            return null;
        }

        if (QuantityText.TryRead(cell.Text, quantity, cell.Units, out var value, out var problem))
        {
            return value;
        }

        Refuse(cell, problem!.What, problem.Instead);
        return null;
    }

    /// <summary>A fraction; <paramref name="aboveNone"/> and <paramref name="belowAll"/> leave out 0 and 1 themselves.</summary>
    public double? Fraction(Cell cell, bool aboveNone = false, bool belowAll = false)
    {
        if (Recorded(cell, Quantity.Fraction) is not { } fraction)
        {
            return null;
        }

        if (fraction > 1 && !cell.Text.Contains('%') && fraction <= 100)
        {
            Refuse(cell, $"is {cell.Text}, which is more than all", $"write {cell.Text} % or {Words.Number(fraction / 100)}");
            return null;
        }

        if (fraction < 0 || fraction > 1)
        {
            Refuse(cell, $"is {Words.Quote(cell.Text)}", "write a share from 0 % to 100 %, such as 85 % or 0.85");
            return null;
        }

        if ((aboveNone && fraction == 0) || (belowAll && fraction == 1))
        {
            Refuse(
                cell,
                $"is {Words.Quote(cell.Text)}",
                $"write a share {(aboveNone ? "above 0 %" : "from 0 %")} {(belowAll ? "and below 100 %" : "to 100 %")}"
            );
            return null;
        }

        return fraction;
    }

    /// <summary>One of a few words, whatever the case.</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="words">The words with what they mean.</param>
    /// <param name="choices">What may be written, for the fault.</param>
    /// <param name="value">What the word means.</param>
    /// <returns>False when the cell is blank, and when it holds none of the words.</returns>
    public bool TryChoose<T>(Cell cell, ImmutableArray<(string Word, T Value)> words, string choices, out T value)
    {
        foreach (var (word, meaning) in words)
        {
            if (Spelling.IsSame(word, cell.Text))
            {
                value = meaning;
                return true;
            }
        }

        value = default!;
        if (!cell.IsBlank)
        {
            var near = Spelling.Nearest(cell.Text, words.Select(each => each.Word));
            Refuse(cell, $"is {Words.Quote(cell.Text)}", near is null ? $"write {choices}" : $"did you mean {Words.Quote(near)}");
        }

        return false;
    }

    private double? Within(Cell cell, double value, double least, double most, Quantity? quantity = null)
    {
        if (value >= least && value <= most)
        {
            return value;
        }

        Refuse(cell, $"is {Words.Quote(cell.Text)}", $"write a value {Bounds(least, most, quantity, cell.Units)}");
        return null;
    }

    // The limits in the units of the site, so that the number written can be laid beside them.
    private static string Bounds(double least, double most, Quantity? quantity = null, UnitSystem units = UnitSystem.Metric)
    {
        var (low, high) = (Limit(least), Limit(most));
        return most >= WholeKind.Many ? $"{low} or more" : $"from {low} to {high}";

        string Limit(double value) => quantity?.Write(value, units) ?? Words.Number(value);
    }
}
