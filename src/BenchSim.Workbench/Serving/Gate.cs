using System.Globalization;
using BenchSim.Workbench.Phones;
using Microsoft.AspNetCore.Http;

namespace BenchSim.Workbench.Serving;

/// <summary>
/// Lets in whoever holds the key, and nobody else. The key is good for one use: the browser that brings it gets a cookie for it. A request
/// from another page, or under another name of this computer, is turned away before anything else is looked at.
/// </summary>
internal sealed class Gate
{
    private const string KeyPath = "/in/";

    private readonly string _key = Secret.Drawn();
    private readonly string _cookie = Secret.Drawn();
    private readonly string[] _hosts;
    private readonly string _cookieName;
    private int _uses;

    /// <summary>Makes a gate with a new key.</summary>
    /// <param name="port">Port of the server. Cookies know no ports, so it is in the cookie's name.</param>
    public Gate(int port)
    {
        var ending = port.ToString(CultureInfo.InvariantCulture);
        _cookieName = "benchsim-" + ending;
        _hosts = ["127.0.0.1:" + ending, "localhost:" + ending];
        Address = $"http://{_hosts[0]}{KeyPath}{_key}";
    }

    /// <summary>The address that lets in.</summary>
    public string Address { get; }

    /// <summary>Judges a request.</summary>
    /// <returns>True when it may go on; else it has been answered.</returns>
    public async Task<bool> LetsInAsync(HttpContext context)
    {
        var request = context.Request;
        if (!await IsOwnAsync(context, _hosts))
        {
            return false;
        }

        var isKnown = Secret.Is(request.Cookies[_cookieName], _cookie);
        if (HttpMethods.IsGet(request.Method) && request.Path.Value is { } path && path.StartsWith(KeyPath, StringComparison.Ordinal))
        {
            return await TakeKeyAsync(context, path[KeyPath.Length..], isKnown);
        }

        if (isKnown)
        {
            return true;
        }

        await RefuseAsync(
            context,
            StatusCodes.Status403Forbidden,
            "This browser has no key. Open the address that benchsim open printed; it is good for one use. "
                + "For another browser, stop the workbench and open it again."
        );
        return false;
    }

    /// <summary>Whether a request comes from a page of this server, under one of its names, by a method that it knows.</summary>
    /// <param name="context">The request.</param>
    /// <param name="hosts">The names, each with the port.</param>
    /// <returns>False where it has been refused.</returns>
    public static async Task<bool> IsOwnAsync(HttpContext context, string[] hosts)
    {
        var request = context.Request;
        if (IsForeign(request, hosts))
        {
            await RefuseAsync(context, StatusCodes.Status403Forbidden, "This address answers its own page alone.");
            return false;
        }

        if (!HttpMethods.IsGet(request.Method) && !HttpMethods.IsPost(request.Method))
        {
            await RefuseAsync(context, StatusCodes.Status405MethodNotAllowed, "Only GET and POST are answered here.");
            return false;
        }

        return true;
    }

    /// <summary>Gives a cookie that no script reads and no other page's request carries.</summary>
    /// <param name="context">The request.</param>
    /// <param name="name">Its name.</param>
    /// <param name="value">What it holds.</param>
    /// <param name="lasts">How long the browser keeps it; null until it is closed.</param>
    public static void GiveCookie(HttpContext context, string name, string value, TimeSpan? lasts) =>
        context.Response.Cookies.Append(
            name,
            value,
            new CookieOptions
            {
                HttpOnly = true,
                SameSite = SameSiteMode.Strict,
                Path = "/",
                MaxAge = lasts,
            }
        );

    /// <summary>Says in a line of plain text why something was refused.</summary>
    public static Task RefuseAsync(HttpContext context, int status, string why)
    {
        context.Response.StatusCode = status;
        context.Response.ContentType = "text/plain; charset=utf-8";
        context.Response.Headers.CacheControl = "no-store";
        return context.Response.WriteAsync(why + "\n");
    }

    // A rebound name of a foreign site comes with that name as the host; a foreign page comes with its origin, or says that it is one.
    private static bool IsForeign(HttpRequest request, string[] hosts)
    {
        if (!hosts.Contains(request.Host.Value, StringComparer.Ordinal))
        {
            return true;
        }

        var origin = request.Headers.Origin;
        if (origin.Count > 0 && !string.Equals(origin.ToString(), "http://" + request.Host.Value, StringComparison.Ordinal))
        {
            return true;
        }

        var site = request.Headers["Sec-Fetch-Site"];
        return (origin.Count == 0 && HttpMethods.IsPost(request.Method))
            || (site.Count > 0 && site.ToString() is not ("same-origin" or "none"));
    }

    private async Task<bool> TakeKeyAsync(HttpContext context, string key, bool isKnown)
    {
        var isKey = Secret.Is(key, _key);
        if (!isKey || (!isKnown && Interlocked.Exchange(ref _uses, 1) > 0))
        {
            await RefuseAsync(
                context,
                StatusCodes.Status403Forbidden,
                isKey
                    ? "This key has been used. Stop the workbench and open it again for a new one."
                    : "This is not the key of this workbench."
            );
            return false;
        }

        if (!isKnown)
        {
            GiveCookie(context, _cookieName, _cookie, null);
        }

        context.Response.StatusCode = StatusCodes.Status303SeeOther;
        context.Response.Headers.Location = "/";
        context.Response.Headers.CacheControl = "no-store";
        return false;
    }
}
