namespace BenchSim.Published.OtherEngines;

/// <summary>
/// The scripts still print what is stored. Marked OtherEngine: they need Debian's python3-simpy3, so they are left out where it is not
/// installed; the stored output is compared everywhere (the tests beside it).
/// </summary>
[Trait("Category", "OtherEngine")]
public sealed class SimPyTests
{
    [Theory]
    [InlineData("any_time.py", "any-time.csv")]
    [InlineData("rounds.py", "rounds.csv")]
    [InlineData("closed_form.py", "closed-form.csv")]
    public async Task The_script_prints_what_is_stored(string script, string stored) =>
        Assert.Equal(OtherEngineFolder.Stored(stored), await OtherEngineFolder.PrintedAsync(script));
}
