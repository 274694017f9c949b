using BenchSim.Answers.Words;
using BenchSim.Study.Dense;
using BenchSim.Study.Figures;
using BenchSim.Study.Results;

namespace BenchSim.Answers.Tests.Words;

/// <summary>What dense sowing gains and costs, word for word.</summary>
public sealed class DenseWordsTests
{
    private static readonly DenseBreakEven s_even = new()
    {
        MatSeeds = 50,
        MatSeedsWhole = 67,
        LabourSeeds = null,
        LabourSeedsWhole = null,
        DirectMinutes = 22,
        PottedMinutes = 52,
    };

    [Fact]
    public void What_is_gained_and_paid() =>
        Assert.Equal(
            "plain sown dense, 100 seeds a flat, instead of directly: it frees 6 tray-days on the heat mats, adds 2 tray-days on the "
                + "benches and takes 0.65 hours more work.",
            DenseWords.Trade(Crop(Change(Measures.MatTrayDays, -6), Change(Measures.BenchTrayDays, 2), Change(Measures.LabourHours, 0.65)))
        );

    [Fact]
    public void The_same_plants_in_time() =>
        Assert.StartsWith(
            "The same plants are out in time in every season; ",
            DenseWords.Late(Crop(Change(Measures.PlantsLate, 0))),
            StringComparison.Ordinal
        );

    [Fact]
    public void From_which_density_on_mats_are_freed() =>
        Assert.Equal(
            "Dense sowing frees mats above 50 seeds a flat; in whole flats, with the assurance of the plan, from 67 on.",
            DenseWords.MatBreakEven(s_even)
        );

    // 52 minutes are 0.9 hours, 22 are 0.4.
    [Fact]
    public void No_density_takes_as_little_work() =>
        Assert.Equal(
            "No density takes as little work: potting up takes 0.9 hours with the moves after it, all the work of direct sowing 0.4.",
            DenseWords.LabourBreakEven(s_even)
        );

    private static DenseCrop Crop(params MeasureChange[] changes) =>
        new()
        {
            Crop = SmallSite.Crop(),
            IsPlannedDirect = true,
            Direct = [],
            Dense = [],
            SeedsPerFlat = (100, 100),
            Fits = new FitChange
            {
                Base = new Chance(3, 3, 0.44, 1),
                Variant = new Chance(3, 3, 0.44, 1),
                Both = 3,
                OnlyBase = 0,
                OnlyVariant = 0,
                Low = 0,
                High = 0,
                VarianceRatio = double.NaN,
            },
            Changes = [.. changes],
            BreakEven = s_even,
            Curve = [],
        };

    private static MeasureChange Change(Measure measure, double difference) =>
        new()
        {
            Measure = measure,
            Base = 12,
            Variant = 12 + difference,
            Difference = difference,
            HalfWidth = 0,
            Differing = difference == 0 ? 0 : 3,
            VarianceRatio = double.NaN,
        };
}
