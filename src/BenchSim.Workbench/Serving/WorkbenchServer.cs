using System.Globalization;
using System.Net;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Server.Kestrel.Core;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;

namespace BenchSim.Workbench.Serving;

/// <summary>The web server of the workbench. It listens on this computer alone.</summary>
internal sealed class WorkbenchServer : IAsyncDisposable
{
    private const int MostConnections = 100;

    // No script, no style and no address but those of the server itself; nothing may frame the page.
    private const string Policy =
        "default-src 'none'; script-src 'self'; style-src 'self'; connect-src 'self'; img-src 'self' data:; "
        + "form-action 'none'; base-uri 'none'; frame-ancestors 'none'";

    private readonly WebApplication _server;
    private readonly Gate _gate;

    private WorkbenchServer(WebApplication server, Gate gate) => (_server, _gate) = (server, gate);

    /// <summary>The address that lets in, good for one use.</summary>
    public string Address => _gate.Address;

    /// <summary>Starts a server.</summary>
    /// <param name="port">Port; 0 for one that is free.</param>
    /// <param name="makeDoors">Makes what answers, given what tells that the server stops.</param>
    /// <param name="cancel">Gives the start up.</param>
    public static async Task<WorkbenchServer> StartAsync(int port, Func<CancellationToken, Doors> makeDoors, CancellationToken cancel)
    {
        // Nothing of the folder it is started in, or of its environment, sets this server up.
        var builder = WebApplication.CreateEmptyBuilder(new WebApplicationOptions());
        builder.WebHost.UseKestrelCore().ConfigureKestrel(options => SetUp(options, port));
        builder.Services.AddSingleton<IHostLifetime, NoLifetime>();
        builder.Services.Configure<HostOptions>(options => options.ShutdownTimeout = TimeSpan.FromSeconds(2));
        var server = builder.Build();
        var doors = makeDoors(server.Lifetime.ApplicationStopping);
        Gate? gate = null;
        server.Run(context => AnswerAsync(context, gate, doors));
        await server.StartAsync(cancel);
        var address = server.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First();
        gate = new Gate(new Uri(address).Port);
        return new WorkbenchServer(server, gate);
    }

    /// <inheritdoc />
    public async ValueTask DisposeAsync()
    {
        await _server.StopAsync();
        await _server.DisposeAsync();
    }

    private static void SetUp(KestrelServerOptions options, int port)
    {
        options.AddServerHeader = false;
        options.Listen(IPAddress.Loopback, port);
        var limits = options.Limits;
        limits.MaxConcurrentConnections = MostConnections;
        limits.MaxRequestBodySize = JsonBody.Largest;
        limits.MaxRequestHeadersTotalSize = 16 * 1024;
        limits.RequestHeadersTimeout = TimeSpan.FromSeconds(5);
        limits.KeepAliveTimeout = TimeSpan.FromSeconds(20);
        limits.MinRequestBodyDataRate = new MinDataRate(bytesPerSecond: 1000, gracePeriod: JsonBody.Longest);
    }

    private static async Task AnswerAsync(HttpContext context, Gate? gate, Doors doors)
    {
        var headers = context.Response.Headers;
        headers.ContentSecurityPolicy = Policy;
        headers.XContentTypeOptions = "nosniff";
        headers.XFrameOptions = "DENY";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        if (gate is null || !await gate.LetsInAsync(context))
        {
            if (gate is null)
            {
                await Gate.RefuseAsync(context, StatusCodes.Status503ServiceUnavailable, "Not open yet.");
            }

            return;
        }

        try
        {
            await AnswerInsideAsync(context, doors);
        }
        catch (Exception failure) when (failure is not (OperationCanceledException or IOException) && !context.Response.HasStarted)
        {
            await Gate.RefuseAsync(
                context,
                StatusCodes.Status500InternalServerError,
                "The workbench met a fault of its own, and this was not done. What was done before is kept."
            );
        }
    }

    private static async Task AnswerInsideAsync(HttpContext context, Doors doors)
    {
        if (await doors.AnswerAsync(context) || (HttpMethods.IsGet(context.Request.Method) && await PageFiles.AnswerAsync(context)))
        {
            return;
        }

        await Gate.RefuseAsync(context, StatusCodes.Status404NotFound, "There is nothing at this address.");
    }

    /// <summary>The program itself decides when it ends.</summary>
    private sealed class NoLifetime : IHostLifetime
    {
        public Task WaitForStartAsync(CancellationToken cancellationToken) => Task.CompletedTask;

        public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;
    }
}
