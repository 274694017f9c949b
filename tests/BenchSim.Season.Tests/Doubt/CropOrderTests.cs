using BenchSim.Season.Climate;
using BenchSim.Season.Doubt;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Tests.Doubt;

public sealed class CropOrderTests
{
    private static readonly Crop s_given = CropFields.Nothing with
    {
        EmergeBaseC = 10,
        EmergeOptimumC = 28,
        EmergeCeilingC = 38,
        EmergeHeat = 60,
        GerminateAtC = 20,
        GrowthBaseC = 8,
        ReferenceC = 18,
        GrowthCapC = 26,
    };

    // 60 degree-days at 20 C over a base of 10 are 6 days. Over a base of 12 the trial's 6 days are 8 x 6 = 48 degree-days.
    [Fact]
    public void Another_base_keeps_the_days_of_the_trial()
    {
        var mended = CropOrder.Mended(s_given, s_given with { EmergeBaseC = 12 });
        Assert.Equal(48, mended.EmergeHeat, 1e-9);
        Assert.Equal(6, mended.EmergeHeat / EmergenceRate.Of(mended, 20), 1e-9);
    }

    // A heat of 90 instead of 60 is half as long again, whatever the base: 9 days at the trial's 20 C.
    [Fact]
    public void Another_heat_is_as_many_days_more()
    {
        var mended = CropOrder.Mended(s_given, s_given with { EmergeBaseC = 12, EmergeHeat = 90 });
        Assert.Equal(9, mended.EmergeHeat / EmergenceRate.Of(mended, 20), 1e-9);
    }

    [Fact]
    public void Temperatures_keep_their_order()
    {
        var mended = CropOrder.Mended(
            s_given,
            s_given with
            {
                EmergeBaseC = 30,
                EmergeOptimumC = 9,
                WrittenEmergePlateauC = 5,
                EmergeCeilingC = 11,
                GrowthBaseC = 25,
                GrowthCapC = 4,
            }
        );
        Assert.True(mended.EmergeBaseC < mended.EmergeOptimumC);
        Assert.True(mended.EmergeOptimumC <= mended.EmergePlateauC);
        Assert.True(mended.EmergePlateauC < mended.EmergeCeilingC);
        Assert.InRange(mended.GerminateAtC, mended.EmergeBaseC + 0.1, mended.EmergeCeilingC - 0.1);
        Assert.True(mended.GrowthBaseC < mended.ReferenceC && mended.ReferenceC <= mended.GrowthCapC);
    }
}
