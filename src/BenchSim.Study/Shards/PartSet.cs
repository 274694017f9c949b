using System.Collections.Immutable;
using System.Globalization;
using System.Runtime.InteropServices;

namespace BenchSim.Study.Shards;

/// <summary>Whether parts belong to one run and are all there.</summary>
public static class PartSet
{
    private const int MostNamed = 10;

    /// <summary>What keeps parts from being added, each with what would help; empty when they are one whole run.</summary>
    /// <param name="parts">The parts with the names of their files; one or more.</param>
    /// <param name="build">The mark of the build that is to add them.</param>
    /// <returns>Name of a file, what is wrong with it, and what would be right.</returns>
    public static ImmutableArray<(string File, string What, string Instead)> Faults(
        IReadOnlyList<(string File, RunPart Part)> parts,
        string build
    )
    {
        ArgumentNullException.ThrowIfNull(parts);
        ArgumentNullException.ThrowIfNull(build);
        var faults = ImmutableArray.CreateBuilder<(string, string, string)>();
        foreach ((var file, var part) in parts)
        {
            if (!string.Equals(part.Header.Build, build, StringComparison.Ordinal))
            {
                faults.Add(
                    (
                        file,
                        "this part was played by another build of BenchSim, which may play otherwise",
                        "merge it with that build, or play all parts again with this one"
                    )
                );
            }
            else if (Difference(parts[0].Part, part) is { } difference)
            {
                faults.Add((file, $"this part is of another run than {parts[0].File}: {difference}", "merge only parts of one run"));
            }
        }

        if (faults.Count == 0)
        {
            AddRepeatedAndMissing(parts, faults);
        }

        return faults.DrainToImmutable();
    }

    // The first that differs, for people. The last is the scenario: its files are told by name.
    private static string? Difference(RunPart first, RunPart other)
    {
        var one = first.Header;
        var two = other.Header;
        if (one.Seasons != two.Seasons)
        {
            return $"it has {Whole(two.Seasons)} seasons in all, not {Whole(one.Seasons)}";
        }

        if (one.Seed != two.Seed)
        {
            return $"its seed is {two.Seed.ToString(CultureInfo.InvariantCulture)}, not {one.Seed.ToString(CultureInfo.InvariantCulture)}";
        }

        if (one.Share.Of != two.Share.Of)
        {
            return $"it is one of {Whole(two.Share.Of)} parts, not of {Whole(one.Share.Of)}";
        }

        if (DifferentInput(first, other) is { } input)
        {
            return $"the file {input} of its scenario differs";
        }

        return one.Unread.SequenceEqual(two.Unread, StringComparer.Ordinal) ? null : "its scenario folder held other files besides";
    }

    private static string? DifferentInput(RunPart first, RunPart other)
    {
        foreach (
            var name in first
                .Inputs.Concat(other.Inputs)
                .Select(input => input.Name)
                .Distinct(StringComparer.Ordinal)
                .Order(StringComparer.Ordinal)
        )
        {
            var one = first.Inputs.FirstOrDefault(input => string.Equals(input.Name, name, StringComparison.Ordinal));
            var two = other.Inputs.FirstOrDefault(input => string.Equals(input.Name, name, StringComparison.Ordinal));
            if (one is null || two is null || !one.Bytes.Span.SequenceEqual(two.Bytes.Span))
            {
                return name;
            }
        }

        return null;
    }

    private static void AddRepeatedAndMissing(
        IReadOnlyList<(string File, RunPart Part)> parts,
        ImmutableArray<(string File, string What, string Instead)>.Builder faults
    )
    {
        var of = parts[0].Part.Header.Share.Of;
        Dictionary<int, string> seen = [];
        foreach ((var file, var part) in parts)
        {
            ref var before = ref CollectionsMarshal.GetValueRefOrAddDefault(seen, part.Header.Share.Number, out var isRepeated);
            if (isRepeated)
            {
                faults.Add(
                    (
                        file,
                        $"this is part {Whole(part.Header.Share.Number)} of {Whole(of)} again, the same as {before}",
                        "name each part once"
                    )
                );
            }
            else
            {
                before = file;
            }
        }

        int[] missing = [.. Enumerable.Range(1, of).Where(number => !seen.ContainsKey(number))];
        if (missing.Length == 0)
        {
            return;
        }

        string[] named = [.. missing.Take(MostNamed).Select(Whole)];
        var numbers =
            missing.Length > MostNamed ? $"{string.Join(", ", named)} and {Whole(missing.Length - MostNamed)} more"
            : named.Length == 1 ? named[0]
            : $"{string.Join(", ", named[..^1])} and {named[^1]}";
        faults.Add(
            (
                parts[0].File,
                missing.Length == 1
                    ? $"the run has {Whole(of)} parts, and part {numbers} is missing"
                    : $"the run has {Whole(of)} parts, and parts {numbers} are missing",
                $"name all parts; one that is not there yet is played with \"benchsim run\" and --shard {new Share(missing[0], of)}"
            )
        );
    }

    private static string Whole(int number) => number.ToString("#,##0", null);
}
