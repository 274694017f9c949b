namespace Support;

/// <summary>The folder of a small farm on disk for one test: what it holds may be changed, added to, or left out.</summary>
public class FarmFolder : TemporaryFolder
{
    /// <summary>A site that reads without a fault: one heated house with mats and benches, a table outdoors.</summary>
    public const string GoodSite = """
        [site]
        name = "Test farm"
        [season]
        opens = 2027-01-18
        closes = 2027-06-30
        [[house]]
        id = "main"
        night = "60 F"
        [[space]]
        id = "mats"
        kind = "mat"
        house = "main"
        places = 10
        temperature = "25 C"
        [[space]]
        id = "bench"
        kind = "bench"
        house = "main"
        places = 60
        [[space]]
        id = "table"
        kind = "table"
        places = 40
        [weather]
        kind = "constant"
        low = "12 C"
        high = "20 C"
        """;

    public const string GoodPlan = "id,crop,plants,sow\na,tomato,100,2027-03-01\n";

    /// <summary>Lays the farm down.</summary>
    /// <param name="site">Its site.toml; null for none.</param>
    /// <param name="plan">Its plan.csv; null for none.</param>
    public FarmFolder(string? site = GoodSite, string? plan = GoodPlan)
    {
        if (site is not null)
        {
            Write("site.toml", site);
        }

        if (plan is not null)
        {
            Write("plan.csv", plan);
        }
    }

    /// <summary>The good site with one text, which is in it, replaced by another.</summary>
    public static string Site(string old, string replacement) =>
        GoodSite.Contains(old, StringComparison.Ordinal)
            ? GoodSite.Replace(old, replacement, StringComparison.Ordinal)
            : throw new ArgumentException($"The good site has no \"{old}\".", nameof(old));
}
