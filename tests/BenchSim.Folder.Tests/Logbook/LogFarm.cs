namespace BenchSim.Folder.Tests.Logbook;

/// <summary>A small farm with a log: a is sown in trays, b in flats, x three times; beside its mats stands a chamber.</summary>
internal static class LogFarm
{
    public const string Head = "date,batch,what,trays,flats,from,space,count,of,minutes,by,entered,note\n";

    public const string Plan =
        "id,crop,plants,sow,method,flat,every_days,times\na,tomato,200,2027-03-01,,,,\nb,tomato,400,2027-03-01,pot up,open-flat,,\n"
        + "x,lettuce,200,2027-03-01,,,7,3\n";

    public static readonly string Site =
        FarmFolder.Site("id = \"bench\"\n", "id = \"bench\"\nname = \"North bench\"\n")
        + "\n[[space]]\nid = \"chamber\"\nkind = \"chamber\"\nplaces = 10\ntemperature = \"25 C\"\n";

    /// <summary>The faults of a log, as they are printed.</summary>
    public static string[] Faults(params string[] rows) =>
        TestFolder.Faults(Site, Plan, ("log.csv", Head + string.Concat(rows.Select(row => row + "\n"))));

    /// <summary>The folder with a log.</summary>
    public static TestFolder Of(params string[] rows) =>
        new TestFolder(Site, Plan).Write("log.csv", Head + string.Concat(rows.Select(row => row + "\n")));
}
