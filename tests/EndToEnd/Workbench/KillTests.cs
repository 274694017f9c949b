using System.Net;

namespace EndToEnd.Workbench;

/// <summary>
/// A workbench that is killed (SIGKILL) amid changes has, opened again, every change that it acknowledged, and no half file.
/// </summary>
[Trait("Category", "Slow")]
public sealed class KillTests
{
    private const int Kills = 50;

    [Fact]
    public async Task What_was_acknowledged_is_there_after_a_kill_at_any_moment()
    {
        using var folder = new FarmFolder();
        var luck = new Random(18);
        var acknowledged = 100;
        var asked = 100;
        for (var kill = 0; kill < Kills; kill++)
        {
            using var process = Command.Start("open", folder.Path);
            using var guest = await Guest.OfAsync(process);
            var plants = int.Parse(await guest.CellAsync("plants"), null);

            // The change that was under way when the workbench was killed may be there or not.
            Assert.InRange(plants, acknowledged, asked);
            acknowledged = asked = plants;
            var end = Task.Delay(luck.Next(1, 900)).ContinueWith(_ => process.Kill(), TaskScheduler.Default);
            try
            {
                while (true)
                {
                    asked = acknowledged + 1;
                    Assert.Equal(HttpStatusCode.OK, (await guest.ChangeAsync("plants", $"{acknowledged}", $"{asked}")).Status);
                    acknowledged = asked;
                    if (luck.Next(5) == 0)
                    {
                        Assert.Equal(HttpStatusCode.OK, (await guest.PutAsync()).Status);
                    }
                }
            }
            catch (Exception failure) when (failure is HttpRequestException or IOException)
            {
                await end;
            }

            await process.WaitForExitAsync();
            var plan = await File.ReadAllTextAsync(folder.In("plan.csv"));
            Assert.Matches("^id,crop,plants,sow\na,tomato,[0-9]+,2027-03-01\n$", plan);
        }

        // Some were killed amid changes.
        Assert.True(acknowledged > 100 + Kills, $"{acknowledged - 100} changes in all");
    }
}
