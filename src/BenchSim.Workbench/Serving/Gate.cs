using System.Buffers.Text;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Microsoft.AspNetCore.Http;

namespace BenchSim.Workbench.Serving;

/// <summary>
/// Lets in whoever holds the key, and nobody else. The key is good for one use: the browser that brings it gets a cookie for it. A request
/// from another page, or under another name of this computer, is turned away before anything else is looked at.
/// </summary>
internal sealed class Gate
{
    private const int KeyBytes = 32;
    private const string KeyPath = "/in/";

    private readonly byte[] _key;
    private readonly byte[] _cookie;
    private readonly string[] _hosts;
    private readonly string _cookieValue;
    private readonly string _cookieName;
    private int _uses;

    /// <summary>Makes a gate with a new key.</summary>
    /// <param name="port">Port of the server. Cookies know no ports, so it is in the cookie's name.</param>
    public Gate(int port)
    {
        var key = Drawn();
        _cookieValue = Drawn();
        (_key, _cookie) = (Encoding.ASCII.GetBytes(key), Encoding.ASCII.GetBytes(_cookieValue));
        var ending = port.ToString(CultureInfo.InvariantCulture);
        _cookieName = "benchsim-" + ending;
        _hosts = ["127.0.0.1:" + ending, "localhost:" + ending];
        Address = $"http://{_hosts[0]}{KeyPath}{key}";
    }

    /// <summary>The address that lets in.</summary>
    public string Address { get; }

    /// <summary>Judges a request.</summary>
    /// <returns>True when it may go on; else it has been answered.</returns>
    public async Task<bool> LetsInAsync(HttpContext context)
    {
        var request = context.Request;
        if (IsForeign(request))
        {
            await RefuseAsync(context, StatusCodes.Status403Forbidden, "This address answers its own page alone.");
            return false;
        }

        if (!HttpMethods.IsGet(request.Method) && !HttpMethods.IsPost(request.Method))
        {
            await RefuseAsync(context, StatusCodes.Status405MethodNotAllowed, "Only GET and POST are answered here.");
            return false;
        }

        var isKnown = Is(request.Cookies[_cookieName], _cookie);
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

    /// <summary>Says in a line of plain text why something was refused.</summary>
    public static Task RefuseAsync(HttpContext context, int status, string why)
    {
        context.Response.StatusCode = status;
        context.Response.ContentType = "text/plain; charset=utf-8";
        context.Response.Headers.CacheControl = "no-store";
        return context.Response.WriteAsync(why + "\n");
    }

    // A rebound name of a foreign site comes with that name as the host; a foreign page comes with its origin, or says that it is one.
    private bool IsForeign(HttpRequest request)
    {
        if (!_hosts.Contains(request.Host.Value, StringComparer.Ordinal))
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
        var isKey = Is(key, _key);
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
            context.Response.Cookies.Append(
                _cookieName,
                _cookieValue,
                new CookieOptions
                {
                    HttpOnly = true,
                    SameSite = SameSiteMode.Strict,
                    Path = "/",
                }
            );
        }

        context.Response.StatusCode = StatusCodes.Status303SeeOther;
        context.Response.Headers.Location = "/";
        context.Response.Headers.CacheControl = "no-store";
        return false;
    }

    private static string Drawn() => Base64Url.EncodeToString(Secret());

    // On Linux from the kernel: .NET asks OpenSSL there, which a machine without anything does not have.
    private static byte[] Secret()
    {
        if (!OperatingSystem.IsLinux())
        {
            return RandomNumberGenerator.GetBytes(KeyBytes);
        }

        var secret = new byte[KeyBytes];
        using var kernel = new FileStream("/dev/urandom", FileMode.Open, FileAccess.Read, FileShare.ReadWrite, bufferSize: 0);
        kernel.ReadExactly(secret);
        return secret;
    }

    // In the same time whatever is wrong with it.
    private static bool Is(string? given, byte[] wanted) =>
        given is not null && CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(given), wanted);
}
