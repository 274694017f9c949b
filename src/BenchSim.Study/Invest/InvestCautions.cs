namespace BenchSim.Study.Invest;

/// <summary>What must stand beside a money case.</summary>
public static class InvestCautions
{
    /// <summary>Beside any money case.</summary>
    public const string Advice =
        "This is a calculation for planning, not financial advice. It is only as good as the figures put in. Show it to your lender and "
        + "your accountant before you spend.";

    /// <summary>Beside anything that is built, wired or piped.</summary>
    public const string Building =
        "Ask about permits first. Whether a structure stands up to snow and wind is for a licensed engineer and the local codes; gas and "
        + "electrical work is for licensed people.";

    /// <summary>What the case leaves out.</summary>
    public const string LeavesOut =
        "Left out: a plant that goes out in time but stood past its best counts as whole; taxes, grants, loans and their "
        + "fees, and rising prices (so the discount rate should be one above inflation). Every year is taken to be drawn "
        + "like the seasons played, with the same plan, each apart from the one before.";
}
