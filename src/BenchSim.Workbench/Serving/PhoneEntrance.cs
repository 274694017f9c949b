using System.Collections.Immutable;
using System.Globalization;
using System.Net;
using BenchSim.Workbench.Drafts;
using BenchSim.Workbench.Phones;
using BenchSim.Workbench.Showing;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Features;

namespace BenchSim.Workbench.Serving;

/// <summary>
/// Where phones come in, by the addresses of the farm's own network. Whoever holds no secret of a paired phone gets the page on which a
/// code is typed, and nothing else; the key and the cookie of the owner are worth nothing here. A phone that is in asks what
/// <see cref="PhoneDoors"/> answers.
/// </summary>
internal sealed class PhoneEntrance
{
    /// <summary>The page on which a code is typed.</summary>
    public const string PairPage = "/page/pair.html";

    // A phone writes some lines of the log at a time.
    private const long LargestBody = 64 * 1024;

    private static readonly string[] s_openFiles = ["/page/pair.js", "/page/bench.css"];

    private readonly PairedPhones _phones;
    private readonly PhoneDoors _doors;
    private readonly string[] _hosts;
    private readonly string _cookieName;

    /// <summary>Makes the entrance.</summary>
    /// <param name="phones">The phones that are let in.</param>
    /// <param name="addresses">The addresses.</param>
    /// <param name="port">The port, which is in the cookie's name too.</param>
    /// <param name="doors">What a phone may ask.</param>
    public PhoneEntrance(PairedPhones phones, ImmutableArray<IPAddress> addresses, int port, PhoneDoors doors)
    {
        (_phones, _doors) = (phones, doors);
        var ending = port.ToString(CultureInfo.InvariantCulture);
        _hosts = [.. addresses.Select(address => $"{address}:{ending}")];
        _cookieName = "benchsim-phone-" + ending;
    }

    /// <summary>The addresses as they are typed into a phone.</summary>
    public ImmutableArray<string> Addresses => [.. _hosts.Select(host => $"http://{host}/")];

    /// <summary>Answers a request.</summary>
    /// <returns>False where there is nothing at its address.</returns>
    public async Task<bool> AnswerAsync(HttpContext context)
    {
        if (!await Gate.IsOwnAsync(context, _hosts))
        {
            return true;
        }

        if (context.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } body)
        {
            body.MaxRequestBodySize = LargestBody;
        }

        var path = context.Request.Path.Value ?? "";
        var isGet = HttpMethods.IsGet(context.Request.Method);
        if (_phones.Find(context.Request.Cookies[_cookieName]) is { } phone)
        {
            return await _doors.AnswerAsync(context, phone) || (isGet && await PageFiles.AnswerAsync(context, path));
        }

        if (isGet && path is "/")
        {
            return await PageFiles.AnswerAsync(context, PairPage);
        }

        if (isGet && s_openFiles.Contains(path, StringComparer.Ordinal))
        {
            return await PageFiles.AnswerAsync(context, path);
        }

        await (
            !isGet && path is "/api/pair"
                ? PairAsync(context)
                : Gate.RefuseAsync(
                    context,
                    StatusCodes.Status401Unauthorized,
                    "This phone is not paired. Open the first page of this address and type the code that the computer shows."
                )
        );
        return true;
    }

    private async Task PairAsync(HttpContext context)
    {
        if (await JsonBody.ReadAsync(context, PageContext.Default.PairRequest) is not { } asked)
        {
            return;
        }

        if (_phones.Pair(asked.Code, asked.Name, out var fault) is { } secret)
        {
            Gate.GiveCookie(context, _cookieName, secret, TimeSpan.FromDays(PairedPhones.Days));
            await JsonBody.SayAsync(context, new NothingRequest(), PageContext.Default.NothingRequest);
            return;
        }

        await Doors.RefuseAsync(context, fault ?? new NotMade("This phone was not paired.", false));
    }
}
