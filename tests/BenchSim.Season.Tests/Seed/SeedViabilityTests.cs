using BenchSim.Season.Seed;
using BenchSim.Season.Values;

namespace BenchSim.Season.Tests.Seed;

public class SeedViabilityTests
{
    [Fact]
    public void A_perfect_test_is_taken_as_a_quarter_of_a_seed_short()
    {
        // 400 seeds: 0.25 / 400 = 0.000625.
        Assert.Equal(0.999375, SeedViability.Clip(1));
        Assert.Equal(0.000625, SeedViability.Clip(0));
        Assert.Equal(0.98, SeedViability.Clip(0.98));
        Assert.Equal(0.995, SeedViability.Clip(1, 50));
    }

    [Fact]
    public void After_one_sigma_the_probit_is_one_less()
    {
        // Standard normal table: 97.725 % is probit 2, 84.134 % is probit 1, 50 % is probit 0.
        Assert.Equal(0.841345, SeedViability.Aged(0.9772499, 400, 1000, 1000), 1e-6);
        Assert.Equal(0.5, SeedViability.Aged(0.9772499, 400, 2000, 1000), 1e-6);
    }

    [Fact]
    public void Fresh_seed_is_as_tested() => Assert.Equal(0.93, SeedViability.Aged(0.93, 400, 0, 500), 1e-12);

    [Fact]
    public void Warm_or_moist_storage_is_never_better()
    {
        var tomato = ViabilityTable.FindCrop("tomato")!.Constants;
        var before = double.MaxValue;
        for (var temperature = 0; temperature <= 40; temperature += 5)
        {
            var sigma = tomato.SigmaDays(new SeedStorage(8, temperature));
            Assert.True(sigma < before);
            Assert.True(tomato.SigmaDays(new SeedStorage(10, temperature)) < sigma);
            before = sigma;
        }
    }

    [Fact]
    public void Relatives_are_flagged_as_borrowed_and_unknown_crops_have_none()
    {
        Assert.Equal(Trust.Borrowed, ViabilityTable.FindCrop("cabbage")!.Source.Trust);
        Assert.StartsWith("Brassica napus: ", ViabilityTable.FindCrop("cabbage")!.Source.Source, StringComparison.Ordinal);
        Assert.All(["eggplant", "spinach", "basil", "celery"], crop => Assert.Null(ViabilityTable.FindCrop(crop)));
    }

    [Fact]
    public void Tables_are_in_order_without_repeats()
    {
        Assert.Equal(
            ViabilityTable.Crops.Select(crop => crop.CropId).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal),
            ViabilityTable.Crops.Select(crop => crop.CropId),
            StringComparer.Ordinal
        );
        Assert.Equal(
            ViabilityTable.Species.Select(row => row.Species).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal),
            ViabilityTable.Species.Select(row => row.Species),
            StringComparer.Ordinal
        );
    }

    [Fact]
    public void Nonsense_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => SeedViability.Clip(1.4));
        Assert.Throws<ArgumentOutOfRangeException>(() => SeedViability.Aged(0.9, 400, -1, 500));
        Assert.Throws<ArgumentOutOfRangeException>(() => SeedViability.Aged(0.9, 400, 1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => ViabilityTable.Species[0].SigmaDays(new SeedStorage(0, 5)));
        Assert.Throws<ArgumentOutOfRangeException>(() => ViabilityTable.Species[0].SigmaDays(new SeedStorage(8, 80)));
        Assert.Throws<ArgumentOutOfRangeException>(() => SeedViability.Clip(0.9, 0));
    }

    // Moisture lies above 0 and below 30 %, temperature from -20 to 50 C, both ends of it included.
    [Theory]
    [InlineData(8, -20, true)]
    [InlineData(8, -20.001, false)]
    [InlineData(8, 50, true)]
    [InlineData(8, 50.001, false)]
    [InlineData(29.999, 5, true)]
    [InlineData(30, 5, false)]
    [InlineData(0.001, 5, true)]
    [InlineData(0, 5, false)]
    public void Storage_is_taken_within_its_range(double moisture, double temperature, bool isTaken)
    {
        var species = ViabilityTable.Species[0];
        var storage = new SeedStorage(moisture, temperature);
        if (isTaken)
        {
            Assert.InRange(species.SigmaDays(storage), double.Epsilon, double.MaxValue);
        }
        else
        {
            Assert.Throws<ArgumentOutOfRangeException>(() => species.SigmaDays(storage));
        }
    }
}
