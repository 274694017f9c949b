using System.Collections.Immutable;
using System.Net;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Connections;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Server.Kestrel.Core;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;

namespace BenchSim.Workbench.Serving;

/// <summary>The web server of the workbench. It listens on this computer alone; where phones are let in, at their addresses too.</summary>
internal sealed class WorkbenchServer : IAsyncDisposable
{
    private const int MostConnections = 100;

    // So that whoever holds lines open in the network leaves some to the owner.
    private const int MostFromPhones = 60;

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
    /// <param name="lan">The addresses at which phones come in; none for none.</param>
    /// <param name="makeDoors">Makes what answers, given what tells that the server stops.</param>
    /// <param name="makeEntrance">Makes where phones come in, where they do.</param>
    /// <param name="cancel">Gives the start up.</param>
    public static async Task<WorkbenchServer> StartAsync(
        int port,
        ImmutableArray<IPAddress> lan,
        Func<CancellationToken, Doors> makeDoors,
        Func<CancellationToken, PhoneEntrance>? makeEntrance,
        CancellationToken cancel
    )
    {
        // Nothing of the folder it is started in, or of its environment, sets this server up.
        var builder = WebApplication.CreateEmptyBuilder(new WebApplicationOptions());
        builder.WebHost.UseKestrelCore().ConfigureKestrel(options => SetUp(options, port, lan));
        builder.Services.AddSingleton<IHostLifetime, NoLifetime>();
        builder.Services.Configure<HostOptions>(options => options.ShutdownTimeout = TimeSpan.FromSeconds(2));
        var server = builder.Build();
        var doors = makeDoors(server.Lifetime.ApplicationStopping);
        var entrance = makeEntrance?.Invoke(server.Lifetime.ApplicationStopping);
        Gate? gate = null;
        server.Run(context => AnswerAsync(context, gate, doors, entrance));
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

    private static void SetUp(KestrelServerOptions options, int port, ImmutableArray<IPAddress> lan)
    {
        options.AddServerHeader = false;
        options.Listen(IPAddress.Loopback, port);
        var fromPhones = 0;
        foreach (var each in lan)
        {
            options.Listen(each, port, listen => listen.Use(next => connection => ServeAsync(next, connection)));
        }

        var limits = options.Limits;
        limits.MaxConcurrentConnections = MostConnections;
        limits.MaxRequestBodySize = JsonBody.Largest;
        limits.MaxRequestHeadersTotalSize = 16 * 1024;
        limits.RequestHeadersTimeout = TimeSpan.FromSeconds(5);
        limits.KeepAliveTimeout = TimeSpan.FromSeconds(20);
        limits.MinRequestBodyDataRate = new MinDataRate(bytesPerSecond: 1000, gracePeriod: JsonBody.Longest);

        async Task ServeAsync(ConnectionDelegate next, ConnectionContext connection)
        {
            try
            {
                if (Interlocked.Increment(ref fromPhones) <= MostFromPhones)
                {
                    await next(connection);
                }
            }
            finally
            {
                Interlocked.Decrement(ref fromPhones);
            }
        }
    }

    private static async Task AnswerAsync(HttpContext context, Gate? gate, Doors doors, PhoneEntrance? entrance)
    {
        var headers = context.Response.Headers;
        headers.ContentSecurityPolicy = Policy;
        headers.XContentTypeOptions = "nosniff";
        headers.XFrameOptions = "DENY";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        if (gate is null)
        {
            await Gate.RefuseAsync(context, StatusCodes.Status503ServiceUnavailable, "Not open yet.");
            return;
        }

        try
        {
            var isAnswered = IPAddress.Loopback.Equals(context.Connection.LocalIpAddress)
                ? await AnswerOwnerAsync(context, gate, doors)
                : entrance is not null && await entrance.AnswerAsync(context);
            if (!isAnswered)
            {
                await Gate.RefuseAsync(context, StatusCodes.Status404NotFound, "There is nothing at this address.");
            }
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

    private static async Task<bool> AnswerOwnerAsync(HttpContext context, Gate gate, Doors doors)
    {
        // Browsers heed it on this computer alone, and complain of it elsewhere.
        context.Response.Headers["Cross-Origin-Opener-Policy"] = "same-origin";
        return !await gate.LetsInAsync(context)
            || await doors.AnswerAsync(context)
            || (HttpMethods.IsGet(context.Request.Method) && await PageFiles.AnswerAsync(context, context.Request.Path.Value ?? ""));
    }

    /// <summary>The program itself decides when it ends.</summary>
    private sealed class NoLifetime : IHostLifetime
    {
        public Task WaitForStartAsync(CancellationToken cancellationToken) => Task.CompletedTask;

        public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;
    }
}
