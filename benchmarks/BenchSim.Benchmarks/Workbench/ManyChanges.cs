using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Text;
using System.Text.Json;
using BenchSim.Workbench;

namespace BenchSim.Benchmarks.Workbench;

/// <summary>
/// Memory and time of a workbench over many changes, made over HTTP as the page makes them while its answers are listened to. Every tenth
/// is undone, and every five hundredth the try is put into the files and another begun.
/// </summary>
internal static class ManyChanges
{
    private const int Step = 1000;

    /// <summary>Prints them.</summary>
    /// <param name="scenario">Scenario folder; a copy of it is changed.</param>
    /// <param name="changes">How many changes.</param>
    /// <param name="output">Takes the table.</param>
    public static async Task PrintAsync(string scenario, int changes, TextWriter output)
    {
        var folder = Directory.CreateTempSubdirectory("benchsim-changes-");
        try
        {
            foreach (var file in Directory.EnumerateFiles(scenario))
            {
                File.Copy(file, Path.Combine(folder.FullName, Path.GetFileName(file)));
            }

            await using var workbench = await OpenWorkbench.StartAsync(folder.FullName, 0, CancellationToken.None);
            var address = new Uri(workbench.Address);
            using var client = new HttpClient(new SocketsHttpHandler { AllowAutoRedirect = false, UseProxy = false });
            client.DefaultRequestHeaders.Add("Origin", address.GetLeftPart(UriPartial.Authority));
            (await client.GetAsync(address)).Dispose();
            using var stop = new CancellationTokenSource();
            var listening = Listen(client, address, stop.Token);
            await output.WriteLineAsync("changes  heap MB  process MB  journal kB  ms a change  answers");
            await ChangeAsync(client, address, folder.FullName, changes, output, () => listening.Answers);
            await stop.CancelAsync();
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static async Task ChangeAsync(HttpClient client, Uri address, string folder, int changes, TextWriter output, Func<int> answers)
    {
        await PrintLineAsync(0, TimeSpan.Zero);
        var clock = Stopwatch.StartNew();
        for (var at = 1; at <= changes; at++)
        {
            var value = (20 + (at % 70)).ToString(CultureInfo.InvariantCulture);
            var change = $$"""{"do":"Key","section":"space","entry":0,"key":"places","value":"{{value}}"}""";
            await SayAsync(client, address, "/api/edit", $$"""{"what":"places","changes":[{{change}}]}""");
            if (at % 10 == 0)
            {
                await SayAsync(client, address, "/api/undo", "{}");
            }

            if (at % 500 == 0)
            {
                using var desk = JsonDocument.Parse(await client.GetStringAsync(new Uri(address, "/api/desk")));
                await SayAsync(client, address, "/api/put", $$"""{"id":{{desk.RootElement.GetProperty("current").GetInt32()}}}""");
            }

            if (at % Step == 0)
            {
                await PrintLineAsync(at, clock.Elapsed / Step);
                clock.Restart();
            }
        }

        async Task PrintLineAsync(int at, TimeSpan each)
        {
            var heap = GC.GetTotalMemory(forceFullCollection: true) / 1e6;
            using var process = Process.GetCurrentProcess();
            var journal = new FileInfo(Path.Combine(folder, ".benchsim", "drafts.jsonl"));
            var line = string.Create(
                CultureInfo.InvariantCulture,
                $"{at}  {heap:0.0}  {process.WorkingSet64 / 1e6:0}  {(journal.Exists ? journal.Length / 1e3 : 0):0}  {each.TotalMilliseconds:0.0}  {answers()}"
            );
            await output.WriteLineAsync(line);
        }
    }

    private static async Task SayAsync(HttpClient client, Uri address, string path, string json)
    {
        using var body = new StringContent(json, Encoding.UTF8, "application/json");
        using var answer = await client.PostAsync(new Uri(address, path), body);
        if (answer.StatusCode != HttpStatusCode.OK)
        {
            throw new InvalidOperationException($"{path}: {answer.StatusCode} {await answer.Content.ReadAsStringAsync()}");
        }
    }

    private static Listening Listen(HttpClient client, Uri address, CancellationToken stop)
    {
        var listening = new Listening();
        _ = Task.Run(
            async () =>
            {
                using var request = new HttpRequestMessage(HttpMethod.Get, new Uri(address, "/api/events"));
                using var events = await client.SendAsync(request, HttpCompletionOption.ResponseHeadersRead, stop);
                using var reader = new StreamReader(await events.Content.ReadAsStreamAsync(stop), Encoding.UTF8);
                while (await reader.ReadLineAsync(stop) is { } line)
                {
                    listening.Answers += line.StartsWith("event: answer", StringComparison.Ordinal) ? 1 : 0;
                }
            },
            stop
        );
        return listening;
    }

    private sealed class Listening
    {
        public volatile int Answers;
    }
}
