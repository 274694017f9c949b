using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;
using System.Security.Cryptography;

namespace EndToEnd.Cluster;

/// <summary>
/// A cluster of one node on this machine: munged, slurmctld and slurmd of Debian, with a key, a folder and ports of their own. It needs
/// no control groups and no rights.
/// </summary>
internal sealed class SlurmCluster : IAsyncDisposable
{
    private const string Node = "node1";
    private static readonly string[] s_programs = ["munged", "slurmctld", "slurmd", "sbatch", "squeue", "scancel", "scontrol"];
    private static readonly TimeSpan s_patience = TimeSpan.FromMinutes(1);

    private readonly TemporaryFolder _folder = new();
    private readonly List<Process> _daemons = [];
    private Process? _node;

    private SlurmCluster() { }

    /// <summary>The first of the programs that is not on this machine; null when all are.</summary>
    public static string? Missing => OperatingSystem.IsLinux() ? s_programs.FirstOrDefault(name => PathOf(name) is null) : "Linux";

    /// <summary>Where the cluster keeps its files.</summary>
    public string Folder => _folder.Path;

    /// <summary>Starts it, and waits until its node takes jobs.</summary>
    public static async Task<SlurmCluster> StartAsync()
    {
        var cluster = new SlurmCluster();
        try
        {
            await cluster.StartDaemonsAsync();
        }
        catch
        {
            await cluster.DisposeAsync();
            throw;
        }

        return cluster;
    }

    /// <summary>Runs a line of words in the cluster's environment; it must end well.</summary>
    /// <returns>What it printed.</returns>
    public async Task<string> RunAsync((string Name, string Value)[] environment, params string[] words)
    {
        using var process = StartLine(environment, words);
        var end = await Command.EndAsync(process);
        Assert.True(end.Code == 0, $"{string.Join(' ', words)}: {end.Output}{end.Error}{Logs()}");
        return end.Output;
    }

    /// <summary>Places of the arrays whose job is in a state, such as R for running; all jobs for none.</summary>
    public async Task<string[]> JobsAsync(string? state = null) =>
        (await RunAsync([], ["squeue", "-h", "-r", .. state is null ? Array.Empty<string>() : ["-t", state], "-o", "%i"])).Split(
            '\n',
            StringSplitOptions.RemoveEmptyEntries
        );

    /// <summary>Waits until no job is left.</summary>
    public async Task EmptyAsync()
    {
        var clock = Stopwatch.StartNew();
        while ((await JobsAsync()).Length > 0)
        {
            Assert.True(clock.Elapsed < 5 * s_patience, $"Jobs do not end: {await RunAsync([], "squeue")}{Logs()}");
            await Task.Delay(200);
        }
    }

    /// <summary>Kills the daemon of the node, and starts it again. What jobs have begun goes on meanwhile.</summary>
    public async Task RestartNodeAsync()
    {
        await EndAsync(_node!);
        await StartNodeAsync();
    }

    /// <inheritdoc />
    public async ValueTask DisposeAsync()
    {
        if (_node is not null)
        {
            await EndAsync(_node);
        }

        foreach (var daemon in Enumerable.Reverse(_daemons))
        {
            await EndAsync(daemon);
        }

        _folder.Dispose();
    }

    private static async Task EndAsync(Process process)
    {
        process.Kill();
        await process.WaitForExitAsync();
        process.Dispose();
    }

    private static string? PathOf(string program) =>
        (Environment.GetEnvironmentVariable("PATH") + ":/usr/sbin:/sbin")
            .Split(':')
            .Select(folder => Path.Combine(folder, program))
            .FirstOrDefault(File.Exists);

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    private static string User() => Environment.UserName;

    private async Task StartDaemonsAsync()
    {
        foreach (var name in new[] { "state", "spool" })
        {
            Directory.CreateDirectory(_folder.In(name));
        }

        var key = _folder.In("key");
        await File.WriteAllBytesAsync(key, RandomNumberGenerator.GetBytes(128));
        if (OperatingSystem.IsLinux())
        {
            File.SetUnixFileMode(key, UnixFileMode.UserRead | UnixFileMode.UserWrite);
        }

        await File.WriteAllTextAsync(_folder.In("slurm.conf"), Settings());

        // Forced, since the folder of a test lies under one that everybody may write.
        _daemons.Add(
            StartLine(
                [],
                PathOf("munged")!,
                "--foreground",
                "--force",
                $"--key-file={key}",
                $"--socket={_folder.In("munge")}",
                $"--pid-file={_folder.In("munge.pid")}",
                $"--log-file={_folder.In("munge.log")}",
                $"--seed-file={_folder.In("munge.seed")}"
            )
        );
        await UntilAsync(() => Task.FromResult(File.Exists(_folder.In("munge"))), "munged does not start");
        _daemons.Add(StartLine([], PathOf("slurmctld")!, "-D"));
        await StartNodeAsync();
    }

    private async Task StartNodeAsync()
    {
        _node = StartLine([], PathOf("slurmd")!, "-D", "-N", Node);
        await UntilAsync(
            async () =>
            {
                using var info = StartLine([], "scontrol", "show", "node", Node);
                var text = (await Command.EndAsync(info)).Output;
                return text.Contains("State=IDLE ", StringComparison.Ordinal)
                    || text.Contains("State=MIXED ", StringComparison.Ordinal)
                    || text.Contains("State=ALLOCATED ", StringComparison.Ordinal);
            },
            "The node takes no jobs"
        );
    }

    private async Task UntilAsync(Func<Task<bool>> isSo, string otherwise)
    {
        var clock = Stopwatch.StartNew();
        while (!await isSo())
        {
            Assert.True(clock.Elapsed < s_patience, otherwise + Logs());
            await Task.Delay(100);
        }
    }

    private Process StartLine((string Name, string Value)[] environment, params string[] words)
    {
        var start = new ProcessStartInfo(words[0], words[1..])
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = _folder.Path,
        };
        start.Environment["SLURM_CONF"] = _folder.In("slurm.conf");
        start.Environment["BENCHSIM_FOLDERS"] = "none";
        foreach (var (name, value) in environment)
        {
            start.Environment[name] = value;
        }

        return Process.Start(start)!;
    }

    // Two processors, whatever the machine has, so that shares run at once.
    private string Settings() =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"""
            ClusterName=bench
            SlurmctldHost={Environment.MachineName.Split('.')[0]}(127.0.0.1)
            SlurmctldPort={FreePort()}
            SlurmUser={User()}
            SlurmdUser={User()}
            AuthType=auth/munge
            AuthInfo=socket={_folder.In("munge")}
            StateSaveLocation={_folder.In("state")}
            SlurmdSpoolDir={_folder.In("spool")}
            SlurmctldPidFile={_folder.In("slurmctld.pid")}
            SlurmdPidFile={_folder.In("slurmd.pid")}
            SlurmctldLogFile={_folder.In("slurmctld.log")}
            SlurmdLogFile={_folder.In("slurmd.log")}
            ProctrackType=proctrack/linuxproc
            TaskPlugin=task/none
            JobAcctGatherType=jobacct_gather/none
            SelectType=select/cons_tres
            SelectTypeParameters=CR_CPU
            MpiDefault=none
            ReturnToService=2
            SchedulerParameters=sched_interval=1,batch_sched_delay=0
            NodeName={Node} NodeAddr=127.0.0.1 Port={FreePort()} CPUs=2 RealMemory=8000 State=UNKNOWN
            PartitionName=main Nodes={Node} Default=YES MaxTime=INFINITE State=UP

            """
        );

    private string Logs() =>
        string.Concat(
            Directory
                .GetFiles(_folder.Path, "*.log")
                .Select(file => $"\n-- {Path.GetFileName(file)}\n{string.Join('\n', File.ReadLines(file).TakeLast(10))}")
        );
}
