namespace Support;

/// <summary>Small farms that lack one thing.</summary>
public static class MendFarms
{
    // Three sowings of 20 trays in one week: 60 trays want mats at once. Benches and tables hold them all.
    private const string Plan = """
        id,crop,grower,plants,sow,set_out
        a,tomato,Ada,900,2027-03-15,2027-05-10
        b,tomato,Ben,900,2027-03-16,2027-05-10
        c,pepper,Ada,900,2027-03-17,2027-05-28
        """;

    /// <summary>A farm whose mats are too few by far.</summary>
    public static FarmFolder WithFewMats() => Farm(mats: 12, bench: 200, table: 200);

    /// <summary>A farm whose table is too small by far.</summary>
    public static FarmFolder WithShortTable() => Farm(mats: 100, bench: 200, table: 24);

    /// <summary>A farm that lacks nothing.</summary>
    public static FarmFolder WithEnough() => Farm(mats: 100, bench: 200, table: 200);

    /// <summary>A farm with benches enough, more than half of them in a house that opens after the trays want it.</summary>
    public static FarmFolder WithLateHouse() =>
        Farm(
            mats: 100,
            bench: 30,
            table: 200,
            more: """
            [[house]]
            id = "second"
            night = "60 F"
            open = 2027-04-26
            [[space]]
            id = "second-bench"
            kind = "bench"
            house = "second"
            places = 80
            """
        );

    private static FarmFolder Farm(int mats, int bench, int table, string more = "")
    {
        var site = FarmFolder
            .GoodSite.Replace("places = 10", $"places = {mats}", StringComparison.Ordinal)
            .Replace("places = 60", $"places = {bench}", StringComparison.Ordinal)
            .Replace("places = 40", $"places = {table}", StringComparison.Ordinal);
        return new FarmFolder(site + "\n" + more + "\n", Plan);
    }
}
