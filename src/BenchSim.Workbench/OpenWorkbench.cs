using System.Collections.Immutable;
using System.Net;
using System.Net.Sockets;
using BenchSim.Answers.Asking;
using BenchSim.Study.Levelling;
using BenchSim.Workbench.Drafts;
using BenchSim.Workbench.Phones;
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

    /// <summary>The addresses at which phones are let in, as they are typed; none where none is.</summary>
    public ImmutableArray<string> PhoneAddresses => _desk.PhoneAddresses;

    /// <summary>Opens a workbench.</summary>
    /// <param name="directory">The scenario folder; null to lay one down on the page, where the program was started.</param>
    /// <param name="port">Port; 0 for one that is free, or the one at which phones know the workbench of the folder.</param>
    /// <param name="cancel">Gives it up.</param>
    /// <param name="leveller">Finds sowings to move where mending is asked for; null to move single ones alone.</param>
    /// <param name="lan">Where phones are let in; null for nowhere.</param>
    /// <param name="before">The folders opened before, to choose from where none is named; null for none.</param>
    /// <exception cref="RefusedException">The folder cannot be opened, or the workbench cannot be had at these addresses.</exception>
    public static async Task<OpenWorkbench> StartAsync(
        string? directory,
        int port,
        CancellationToken cancel,
        ILeveller? leveller = null,
        Lan? lan = null,
        FolderList? before = null
    )
    {
        if (lan is not null && directory is null)
        {
            throw new RefusedException("--lan lets phones into a folder: name the folder too.");
        }

        var desk = new OpenDesk(leveller, before ?? new FolderList(null));
        try
        {
            if (directory is not null)
            {
                desk.Open(directory);
            }

            return new OpenWorkbench(
                lan is null
                    ? await WorkbenchServer.StartAsync(port, [], stopping => new Doors(desk, stopping), null, cancel)
                    : await LetInAsync(desk, lan, port, cancel),
                desk
            );
        }
        catch
        {
            desk.Dispose();
            throw;
        }
    }

    /// <summary>Makes a code by which a phone is paired, and tells it and each new one that the page asks for.</summary>
    /// <param name="tell">Told the code as it is read out, "482 193", on whatever thread it is made.</param>
    public void TellCodes(Action<string> tell)
    {
        if (_desk.Phones is { } phones)
        {
            phones.CodeMade += (_, _) => tell(phones.Code.Now is { } code ? $"{code[..3]} {code[3..]}" : "");
            phones.NewCode();
        }
    }

    /// <inheritdoc />
    public async ValueTask DisposeAsync()
    {
        await _server.DisposeAsync();
        _desk.Dispose();
    }

    private static async Task<WorkbenchServer> LetInAsync(OpenDesk desk, Lan lan, int asked, CancellationToken cancel)
    {
        var folder = desk.Desk!.Folder;
        var kept = PhoneBook.Of(folder).Port;
        var port =
            asked > 0 ? asked
            : kept > 0 ? kept
            : FreePort();
        var phones = new PairedPhones(folder, port, TimeProvider.System);
        try
        {
            return await WorkbenchServer.StartAsync(
                port,
                lan.Addresses,
                stopping => new Doors(desk, stopping),
                stopping =>
                {
                    var entrance = new PhoneEntrance(phones, lan.Addresses, port, new PhoneDoors(desk, phones, stopping));
                    desk.LetIn(phones, entrance.Addresses);
                    return entrance;
                },
                cancel
            );
        }
        catch (Exception failure) when (failure is IOException or SocketException)
        {
            var where = string.Join(" and ", lan.Addresses);
            throw new RefusedException(
                FormattableString.Invariant($"The workbench cannot be had at port {port} of {where}: {failure.Message} ")
                    + "Another program, or another workbench, may have the port: name a free one with --port, and pair the phones again. "
                    + "Or this computer no longer has that address."
            );
        }
    }

    private static int FreePort()
    {
        using var probe = new TcpListener(IPAddress.Loopback, 0);
        probe.Start();
        return ((IPEndPoint)probe.LocalEndpoint).Port;
    }
}
