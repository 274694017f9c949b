using System.Buffers.Binary;
using System.Collections.Frozen;
using System.Globalization;
using System.Text;
using BenchSim.Season.Inputs;
using BenchSim.Study.Marks;

namespace BenchSim.Report.Words;

/// <summary>
/// Short codes of batches and marks of growers, as they stand on labels: read at the bench, typed into a telephone. A code comes from the
/// name of its batch alone, so it stays whatever else changes in the plan; where two names give the same code, the batch that stands later
/// in the plan takes the next. No letter or digit in it looks like another.
/// </summary>
public sealed class ShortCodes
{
    private const int Length = 4;
    private const int FirstLetters = 13;

    // Without vowels, so that no word comes of it, and without what is mistaken for another: 0 O Q, 1 I L, 2 Z, 5 S, 6 G, 8 B, U V Y. The
    // first of a code is a letter, so that no spreadsheet takes it for a number. 13 x 17 x 17 x 17 = 63,869 codes.
    private const string Signs = "CDFHJKMNPRTWX3479";

    private static readonly ulong s_codes = FirstLetters * (ulong)(Signs.Length * Signs.Length * Signs.Length);

    private readonly FrozenDictionary<string, string> _byBatch;
    private readonly FrozenDictionary<string, string> _byGrower;

    private ShortCodes(FrozenDictionary<string, string> byBatch, FrozenDictionary<string, string> byGrower) =>
        (_byBatch, _byGrower) = (byBatch, byGrower);

    /// <summary>The codes and marks of a plan.</summary>
    /// <param name="plan">The whole plan, of all growers.</param>
    public static ShortCodes Of(SeasonPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var taken = new HashSet<string>(StringComparer.Ordinal);
        var byBatch = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var id in plan.Batches.Select(batch => batch.Order.Id))
        {
            if (!byBatch.ContainsKey(id))
            {
                byBatch[id] = Free(id, taken);
            }
        }

        string[] growers = [.. plan.Batches.Select(batch => batch.Order.Grower).Distinct(StringComparer.Ordinal)];
        var marks = new HashSet<string>(StringComparer.Ordinal);
        var byGrower = growers.Length < 2 ? [] : growers.Select(name => KeyValuePair.Create(name, Mark(name, marks)));
        return new ShortCodes(byBatch.ToFrozenDictionary(StringComparer.Ordinal), byGrower.ToFrozenDictionary(StringComparer.Ordinal));
    }

    /// <summary>The code of a batch: "K7MR".</summary>
    /// <param name="batch">A batch of the plan.</param>
    public string Batch(BatchPlan batch) => _byBatch[Checked(batch).Order.Id];

    /// <summary>The mark of the grower of a batch, "M"; empty where one grower has all.</summary>
    /// <param name="batch">A batch of the plan.</param>
    public string Grower(BatchPlan batch) => _byGrower.GetValueOrDefault(Checked(batch).Order.Grower, "");

    /// <summary>Code and mark as they stand on a label: "K7MR/M".</summary>
    /// <param name="batch">A batch of the plan.</param>
    public string Full(BatchPlan batch) => Grower(batch) is { Length: > 0 } mark ? $"{Batch(batch)}/{mark}" : Batch(batch);

    private static BatchPlan Checked(BatchPlan batch)
    {
        ArgumentNullException.ThrowIfNull(batch);
        return batch;
    }

    // A plan has at most 10,000 batches, so there is always a free one.
    private static string Free(string id, HashSet<string> taken)
    {
        var number = BinaryPrimitives.ReadUInt64BigEndian(Sha256.HashData(Encoding.UTF8.GetBytes(id))) % s_codes;
        while (!taken.Add(Code(number)))
        {
            number = (number + 1) % s_codes;
        }

        return Code(number);
    }

    private static string Code(ulong number)
    {
        var code = new char[Length];
        for (var at = Length - 1; at > 0; at--)
        {
            (number, var sign) = Math.DivRem(number, (ulong)Signs.Length);
            code[at] = Signs[(int)sign];
        }

        code[0] = Signs[(int)number];
        return new string(code);
    }

    // The first letter of the name; a later grower of the plan with the same one has 2 behind it, the next 3.
    private static string Mark(string name, HashSet<string> taken)
    {
        var letter = name.EnumerateRunes().FirstOrDefault(Rune.IsLetterOrDigit, new Rune('G'));
        var first = Rune.ToUpperInvariant(letter).ToString();
        var mark = first;
        for (var number = 2; !taken.Add(mark); number++)
        {
            mark = first + number.ToString(CultureInfo.InvariantCulture);
        }

        return mark;
    }
}
