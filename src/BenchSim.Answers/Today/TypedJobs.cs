using System.Collections.Immutable;
using System.Globalization;
using BenchSim.Report.Words;

namespace BenchSim.Answers.Today;

/// <summary>The answer to one job of the page of a day.</summary>
/// <param name="Number">Its number on the page.</param>
/// <param name="Count">Trays or flats that were done, 0 for none; null where it was done as listed.</param>
public readonly record struct TypedJob(int Number, int? Count);

/// <summary>
/// The jobs of the page of a day typed back in one line: <c>1 ok, 2 8, 4 no</c> is the first done as listed, 8 of the second, none of the
/// fourth.
/// </summary>
/// <param name="Jobs">The answers that could be read, in the order of the line.</param>
/// <param name="Faults">What could not be read, and what would be right; empty where all is well.</param>
public sealed record TypedJobs(ImmutableArray<TypedJob> Jobs, ImmutableArray<string> Faults)
{
    private const int MostPieces = Season.Inputs.LogFields.MostTrays;

    private static readonly char[] s_between = [',', ';', '\n', '\r'];
    private static readonly string[] s_after = [":", "=", ")", ". ", "- "];
    private static readonly string[] s_done = ["ok", "okay", "done", "yes", "y", "x"];
    private static readonly string[] s_notDone = ["no", "not", "none", "n"];

    /// <summary>Reads a line. An empty one answers nothing.</summary>
    /// <param name="line">The line; commas, semicolons or line ends stand between the answers.</param>
    /// <param name="last">The last number of the page, 0 or more.</param>
    public static TypedJobs Read(string line, int last)
    {
        ArgumentNullException.ThrowIfNull(line);
        ArgumentOutOfRangeException.ThrowIfNegative(last);
        var jobs = ImmutableArray.CreateBuilder<TypedJob>();
        var faults = ImmutableArray.CreateBuilder<string>();
        foreach (var part in line.Split(s_between, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            if (Read(part, last, out var job) is { } fault)
            {
                faults.Add($"{PlainText.Quote(part)} {fault}");
            }
            else if (jobs.Any(other => other.Number == job.Number))
            {
                faults.Add($"{PlainText.Quote(part)} answers job {job.Number} a second time; leave one of the two out");
            }
            else
            {
                jobs.Add(job);
            }
        }

        return new TypedJobs(jobs.ToImmutable(), faults.ToImmutable());
    }

    // What is wrong with a part; null for nothing.
    private static string? Read(string part, int last, out TypedJob job)
    {
        job = default;
        var digits = part.TakeWhile(char.IsAsciiDigit).Count();
        if (digits == 0)
        {
            return "does not begin with the number of a job; write it first, such as 1 ok";
        }

        if (
            !int.TryParse(part.AsSpan(0, digits), NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            || number < 1
            || number > last
        )
        {
            return last == 0 ? "answers a job, and the page has none" : $"has no job on the page; its numbers go from 1 to {last}";
        }

        var answer = Answer(part[digits..].Trim());
        if (answer.Length == 0)
        {
            return "has no answer; write ok, no, or how many, after the number";
        }

        if (s_done.Contains(answer, StringComparer.OrdinalIgnoreCase))
        {
            job = new TypedJob(number, null);
            return null;
        }

        if (s_notDone.Contains(answer, StringComparer.OrdinalIgnoreCase))
        {
            job = new TypedJob(number, 0);
            return null;
        }

        if (int.TryParse(answer, NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count <= MostPieces)
        {
            job = new TypedJob(number, count);
            return null;
        }

        return $"cannot be read; write ok, no, or a whole number up to {MostPieces} after the number of the job";
    }

    // "1: ok" and "1. ok" are 1 ok; "1.5" and "1 -5" are nothing.
    private static string Answer(string rest)
    {
        var mark = Array.Find(s_after, mark => rest.StartsWith(mark, StringComparison.Ordinal));
        return mark is null ? rest : rest[mark.Length..].Trim();
    }
}
