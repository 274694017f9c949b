namespace EndToEnd.Faults;

/// <summary>The clock and the language of the machine change nothing in what is printed and written.</summary>
public sealed class StrangePlaceTests
{
    // Comma decimals; a zone half an hour off; Persian and Arabic minus signs and calendars of their own; a zone that does not exist.
    private static readonly (string Locale, string Zone)[] s_places =
    [
        ("de_DE.UTF-8", "America/St_Johns"),
        ("fa_IR.UTF-8", "Pacific/Kiritimati"),
        ("ar_SA.UTF-8", "Nowhere/Nothing"),
    ];

    [Fact]
    [Trait("Category", "Slow")]
    public async Task Same_bytes_wherever_the_machine_stands()
    {
        using var farm = await SmallFarm.MakeAsync();
        var record = Path.Combine(Repository.Root, "scenarios", "two-house-spring", "weather.csv");
        string[][] calls = [farm.Run(), ["check", farm.Scenario, "--json", "--sources"], ["weather", record]];
        Command[] plain = [await Command.RunAsync(calls[0]), await Command.RunAsync(calls[1]), await Command.RunAsync(calls[2])];
        var written = FolderText.Of(farm.Report);
        Assert.All(plain, one => Assert.Equal(0, one.Code));

        var follow = await RuntimeFollowsAsync();
        foreach (var (locale, zone) in s_places)
        {
            (string Name, string Value)[] place = [("LC_ALL", locale), ("LANG", locale), ("TZ", zone), .. follow];
            for (var call = 0; call < calls.Length; call++)
            {
                Assert.Equal(plain[call], await Command.RunAsync(place, calls[call]));
            }

            Assert.Equal(written, FolderText.Of(farm.Report));
        }
    }

    // Some container images tell every .NET program to follow the machine's culture; where the system's tables
    // of cultures are missing none can.
    private static async Task<(string Name, string Value)[]> RuntimeFollowsAsync()
    {
        (string Name, string Value)[] follow = [("DOTNET_SYSTEM_GLOBALIZATION_INVARIANT", "0")];
        return (await Command.RunAsync(follow, "--help")).Code == 0 ? follow : [];
    }
}
