using BenchSim.Report.Words;
using BenchSim.Study.Compare;
using BenchSim.Study.Invest;
using BenchSim.Study.Results;

namespace BenchSim.Report.Case;

/// <summary>What a case report is made of: a plan that was played, or a plan with and without one change.</summary>
public sealed record CaseInput
{
    /// <summary>The plan as it is.</summary>
    public required StudyResult Base { get; init; }

    /// <summary>The plan with the change; null when nothing is compared.</summary>
    public StudyResult? Changed { get; init; }

    /// <summary>The comparison of both, with this one variant; null when nothing is compared.</summary>
    public CompareResult? Comparison { get; init; }

    /// <summary>The money case of the variant; null when its terms are not given.</summary>
    public InvestResult? Money { get; init; }

    /// <summary>Paper.</summary>
    public CasePaper Paper { get; init; }

    /// <summary>The command that makes the same report from the folder <c>inputs</c> beside it, on one line.</summary>
    public required string Command { get; init; }

    /// <summary>Version of the program, such as 1.0.0.</summary>
    public required string Version { get; init; }

    /// <summary>Mark of the build of what decides a season.</summary>
    public required string Build { get; init; }

    /// <summary>A remark shown with the answer, such as why no more seasons were played; null for none.</summary>
    public string? Note { get; init; }

    /// <summary>How far the values behind the plan may move its chance to fit, in a sentence; null where it was not asked.</summary>
    public string? OverValues { get; init; }

    /// <summary>The variant; null when nothing is compared.</summary>
    internal VariantResult? Variant => Comparison?.Variants[0];

    /// <summary>Refuses parts that do not belong together.</summary>
    /// <exception cref="ArgumentException">The comparison has no or several variants, or the seasons played are not the same.</exception>
    internal static void Check(CaseInput input)
    {
        if ((input.Changed is null) != (input.Comparison is null) || (input.Comparison is null && input.Money is not null))
        {
            throw new ArgumentException("A comparison goes with the plan that has the change, and money with a comparison.", nameof(input));
        }

        if (input.Comparison is not { } comparison)
        {
            return;
        }

        var study = input.Base;
        if (
            comparison.Variants.Length != 1
            || comparison.Seasons != study.Seasons
            || input.Changed!.Seasons != study.Seasons
            || comparison.Seed != study.Seed
            || input.Changed.Seed != study.Seed
        )
        {
            throw new ArgumentException("One variant, on the seasons and the seed of the base.", nameof(input));
        }

        // The same plan on the same luck has the same answer; two answers in one report would be worse than none.
        var fits = comparison.Variants[0].Fits;
        if (fits.Base.Hits != study.Fits.Hits || fits.Variant.Hits != input.Changed.Fits.Hits)
        {
            throw new ArgumentException("The comparison and the plans were not played in the same seasons.", nameof(input));
        }
    }
}
