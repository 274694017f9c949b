using System.Net;
using System.Runtime.Versioning;
using EndToEnd.Faults;

namespace EndToEnd.Workbench;

/// <summary>A workbench on a disk that takes no more, and on a folder that may not be written.</summary>
public sealed class RefusingDiskTests
{
    // As in Faults/DiskTests: no file may have more than 51,200 bytes, and the runtime makes no large one of its own.
    private const string NoLargeFiles = "trap '' XFSZ; ulimit -f 100; exec \"$@\"";
    private static readonly (string Name, string Value)[] s_smallRuntime =
    [
        ("DOTNET_EnableWriteXorExecute", "0"),
        ("DOTNET_EnableDiagnostics", "0"),
    ];

    [LinuxFact]
    public async Task What_was_acknowledged_before_the_disk_was_full_is_there_and_the_rest_was_refused_in_words()
    {
        using var folder = new FarmFolder(plan: "id,crop,plants,sow,note\na,tomato,100,2027-03-01,\n");
        var (note, refusal) = ("", "");
        using (var process = Command.StartShell(NoLargeFiles, s_smallRuntime, "open", folder.Path))
        {
            using var guest = await Guest.OfAsync(process);
            for (var at = 1; refusal.Length == 0; at++)
            {
                // Two thousand letters there, and as many that gave way: a dozen of changes fill the journal.
                var next = new string((char)('a' + (at % 26)), 2000);
                var (status, text) = await guest.ChangeAsync("note", note, next);
                Assert.True(status is HttpStatusCode.OK or HttpStatusCode.Conflict, $"{status} {text}");
                (note, refusal) = status == HttpStatusCode.OK ? (next, "") : (note, text);
            }

            Assert.Contains("The disk or the system refused, so this was not done", refusal, StringComparison.Ordinal);
            Assert.NotEmpty(note);
            Assert.Equal(note, await guest.CellAsync("note"));
            process.Kill();
            await process.WaitForExitAsync();
        }

        Assert.EndsWith("\n", await File.ReadAllTextAsync(folder.In(".benchsim/drafts.jsonl")), StringComparison.Ordinal);
        using var again = Command.Start("open", folder.Path);
        using var later = await Guest.OfAsync(again);
        Assert.Equal(note, await later.CellAsync("note"));
        Assert.Equal(HttpStatusCode.OK, (await later.ChangeAsync("plants", "100", "120")).Status);
        again.Kill();
        await again.WaitForExitAsync();
    }

    [LinuxFact]
    [UnsupportedOSPlatform("windows")]
    public async Task A_folder_that_may_not_be_written_shows_its_tries_and_changes_nothing()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        using var folder = new FarmFolder();
        using (var process = Command.Start("open", folder.Path))
        {
            using var guest = await Guest.OfAsync(process);
            Assert.Equal(HttpStatusCode.OK, (await guest.ChangeAsync("plants", "100", "120")).Status);
            process.Kill();
            await process.WaitForExitAsync();
        }

        const UnixFileMode Seen =
            UnixFileMode.UserRead
            | UnixFileMode.GroupRead
            | UnixFileMode.OtherRead
            | UnixFileMode.UserExecute
            | UnixFileMode.GroupExecute
            | UnixFileMode.OtherExecute;
        File.SetUnixFileMode(folder.Path, Seen);
        File.SetUnixFileMode(folder.In(".benchsim"), Seen);
        foreach (var file in Directory.EnumerateFiles(folder.Path, "*", SearchOption.AllDirectories))
        {
            File.SetUnixFileMode(file, UnixFileMode.UserRead | UnixFileMode.GroupRead | UnixFileMode.OtherRead);
        }

        try
        {
            using var process = Command.StartShell(Command.KeptOut, [], "open", folder.Path);
            using var guest = await Guest.OfAsync(process);
            Assert.StartsWith(
                "This folder cannot be written to, so nothing can be changed here",
                (await guest.DeskAsync()).GetProperty("trouble").GetString(),
                StringComparison.Ordinal
            );
            Assert.Equal("120", await guest.CellAsync("plants"));
            var refused = await guest.ChangeAsync("plants", "120", "130");
            Assert.Equal(HttpStatusCode.Conflict, refused.Status);
            Assert.Contains("This folder cannot be written to", refused.Text, StringComparison.Ordinal);
            Assert.Equal("120", await guest.CellAsync("plants"));
            process.Kill();
            await process.WaitForExitAsync();
        }
        finally
        {
            File.SetUnixFileMode(folder.Path, Seen | UnixFileMode.UserWrite);
            File.SetUnixFileMode(folder.In(".benchsim"), Seen | UnixFileMode.UserWrite);
        }

        Assert.Equal(FarmFolder.GoodPlan, await File.ReadAllTextAsync(folder.In("plan.csv")));
    }

    [LinuxFact]
    public async Task A_folder_that_is_removed_is_told_and_the_workbench_goes_on()
    {
        using var folder = new FarmFolder();
        using var process = Command.Start("open", folder.Path);
        using var guest = await Guest.OfAsync(process);
        Assert.Equal(HttpStatusCode.OK, (await guest.ChangeAsync("plants", "100", "120")).Status);
        Directory.Move(folder.Path, folder.Path + "-away");
        var refused = await guest.ChangeAsync("plants", "120", "130");
        Assert.Equal(HttpStatusCode.Conflict, refused.Status);
        Assert.Contains("the folder is gone", refused.Text, StringComparison.Ordinal);

        // It comes back, as from a stick that was pulled out.
        Directory.Move(folder.Path + "-away", folder.Path);
        Assert.Equal("120", await guest.CellAsync("plants"));
        Assert.Equal(HttpStatusCode.OK, (await guest.ChangeAsync("plants", "120", "130")).Status);
        process.Kill();
        await process.WaitForExitAsync();
    }
}
