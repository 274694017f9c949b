using BenchSim.Folder.Faults;
using BenchSim.Folder.Text;
using BenchSim.Folder.Toml;
using BenchSim.Season.Inputs;
using BenchSim.Season.Seed;

namespace BenchSim.Folder.Site;

/// <summary>Reads what is bought and kept: [seed] and [prices].</summary>
internal sealed class GoodsReader(CellReader cells)
{
    // Bounds of SeedStorage, and the moistures at which the constants of seed life were measured.
    private const double ColdestStorageC = -20;
    private const double HottestStorageC = 50;
    private const double WettestPercent = 30;
    private const double MeasuredFromPercent = 5;
    private const double MeasuredToPercent = 15;

    private const double HighestPrice = 1_000_000;
    private const int LongestCurrency = 10;

    /// <summary>How seed is stored; null when it is not said, or had a fault.</summary>
    public SeedStorage? ReadSeed(Section section)
    {
        var moisture = ReadMoisture(section.Scalar("moisture"));
        var storage = ReadStorage(section.Scalar("storage"));
        if (section.IsWhole && section.Has("moisture") != section.Has("storage"))
        {
            var (given, missing, example) = section.Has("moisture")
                ? ("moisture", "storage", "\"50 F\"")
                : ("storage", "moisture", "\"8 %\"");
            cells.Faults.Add(
                section.PlaceOf(given),
                $"{given} is given but {missing} is not",
                $"add a line such as {missing} = {example}, or leave both out"
            );
        }

        return moisture is null || storage is null ? null : new SeedStorage(moisture.Value, storage.Value);
    }

    /// <summary>The prices.</summary>
    public Prices ReadPrices(Section section) =>
        new()
        {
            Currency = ReadCurrency(section.Scalar("currency", mayBeEmpty: true)) ?? "",
            LabourHour = Price(section, "labour_hour"),
            MixLitre = Price(section, "mix_litre"),
            ThousandSeeds = Price(section, "thousand_seeds"),
        };

    private double? ReadMoisture(Cell cell)
    {
        if (cells.Fraction(cell) is not { } share)
        {
            return null;
        }

        // 7 % is 7, not 7.000000000000001.
        var percent = Math.Round(share * 100, 9);
        if (percent is <= 0 or >= WettestPercent)
        {
            cells.Refuse(cell, $"is {Words.Quote(cell.Text)}", "write a share above 0 % and below 30 %; packed seed has about 5 % to 15 %");
            return null;
        }

        if (percent is < MeasuredFromPercent or > MeasuredToPercent)
        {
            cells.Faults.Warn(
                cell.Place,
                $"moisture is {Words.Quote(cell.Text)}, and the life of seed was measured at about 5 % to 15 %",
                "trust the age of seed less, or test it again before sowing"
            );
        }

        return percent;
    }

    private double? ReadStorage(Cell cell)
    {
        if (cells.Temperature(cell) is not { } celsius)
        {
            return null;
        }

        if (celsius is < ColdestStorageC or > HottestStorageC)
        {
            cells.Refuse(
                cell,
                $"is {Words.Quote(cell.Text)}, which is {Words.Temperature(celsius, cell.Units)}",
                $"write a temperature from {Words.Temperature(-20, cell.Units)} to {Words.Temperature(50, cell.Units)}"
            );
            return null;
        }

        return celsius;
    }

    private string? ReadCurrency(Cell cell)
    {
        if (cells.Name(cell) is not { } currency)
        {
            return null;
        }

        if (currency.Length > LongestCurrency)
        {
            cells.Refuse(
                cell,
                $"is {Words.Quote(currency)}, which has {currency.Length} characters",
                "write a sign or a code of at most 10 characters"
            );
            return null;
        }

        return currency;
    }

    private double? Price(Section section, string key) => cells.Number(section.Scalar(key), 0, HighestPrice);
}
