namespace EndToEnd;

/// <summary>A command xdg-open that keeps the address it is given, in the place of a browser.</summary>
/// <param name="folder">Where it lies, and what it keeps.</param>
internal sealed class AddressKeeper(string folder)
{
    private string Kept => Path.Combine(folder, "address");

    /// <summary>Puts it there.</summary>
    /// <returns>The folder for PATH.</returns>
    public async Task<string> LayAsync()
    {
        var browser = Path.Combine(folder, "xdg-open");
        Directory.CreateDirectory(folder);
        await File.WriteAllTextAsync(browser, $"#!/bin/sh\nprintf %s \"$1\" > '{Kept}.part' && mv '{Kept}.part' '{Kept}'\n");
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(browser, UnixFileMode.UserRead | UnixFileMode.UserExecute);
        }

        return folder;
    }

    /// <summary>The address it was given by a program that runs.</summary>
    public async Task<Uri> AddressAsync(System.Diagnostics.Process program)
    {
        while (!File.Exists(Kept) && !program.HasExited)
        {
            await Task.Delay(20);
        }

        return new Uri(await File.ReadAllTextAsync(Kept));
    }
}
