using BenchSim.Answers.Asking;
using BenchSim.Study.Levelling;
using BenchSim.Workbench.Serving;

namespace BenchSim.Workbench;

/// <summary>A workbench that is open: its page is served to this computer until it is closed.</summary>
public sealed class OpenWorkbench : IAsyncDisposable
{
    private readonly WorkbenchServer _server;
    private readonly OpenDesk _desk;

    private OpenWorkbench(WorkbenchServer server, OpenDesk desk) => (_server, _desk) = (server, desk);

    /// <summary>The address of the page, good for one use.</summary>
    public string Address => _server.Address;

    /// <summary>Opens a workbench.</summary>
    /// <param name="directory">The scenario folder; null to lay one down on the page, where the program was started.</param>
    /// <param name="port">Port; 0 for one that is free.</param>
    /// <param name="cancel">Gives it up.</param>
    /// <param name="leveller">Finds sowings to move where mending is asked for; null to move single ones alone.</param>
    /// <exception cref="RefusedException">The folder cannot be opened.</exception>
    public static async Task<OpenWorkbench> StartAsync(string? directory, int port, CancellationToken cancel, ILeveller? leveller = null)
    {
        var desk = new OpenDesk(leveller);
        try
        {
            var server = await WorkbenchServer.StartAsync(port, stopping => new Doors(desk, stopping), cancel);
            try
            {
                if (directory is not null)
                {
                    desk.Open(directory);
                }

                return new OpenWorkbench(server, desk);
            }
            catch
            {
                await server.DisposeAsync();
                throw;
            }
        }
        catch
        {
            desk.Dispose();
            throw;
        }
    }

    /// <inheritdoc />
    public async ValueTask DisposeAsync()
    {
        await _server.DisposeAsync();
        _desk.Dispose();
    }
}
