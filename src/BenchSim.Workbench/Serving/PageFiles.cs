using System.Collections.Frozen;
using BenchSim.Study.Marks;
using Microsoft.AspNetCore.Http;

namespace BenchSim.Workbench.Serving;

/// <summary>The files of the page, which the program carries.</summary>
internal static class PageFiles
{
    private const string Folder = "page/";

    private static readonly FrozenDictionary<string, PageFile> s_files = ReadAll();

    /// <summary>Answers with a file, or with "not modified" where the browser has it already.</summary>
    /// <param name="context">The request.</param>
    /// <param name="path">The file's address.</param>
    /// <returns>False where there is no such file.</returns>
    public static async Task<bool> AnswerAsync(HttpContext context, string path)
    {
        if (!s_files.TryGetValue(path, out var file))
        {
            return false;
        }

        var response = context.Response;
        response.Headers.ETag = file.Tag;
        response.Headers.CacheControl = "no-cache";
        if (context.Request.Headers.IfNoneMatch.Any(tag => string.Equals(tag, file.Tag, StringComparison.Ordinal)))
        {
            response.StatusCode = StatusCodes.Status304NotModified;
            return true;
        }

        response.ContentType = file.Type;
        response.ContentLength = file.Bytes.Length;
        await response.Body.WriteAsync(file.Bytes, context.RequestAborted);
        return true;
    }

    private static FrozenDictionary<string, PageFile> ReadAll()
    {
        var program = typeof(PageFiles).Assembly;
        return program
            .GetManifestResourceNames()
            .Where(name => name.StartsWith(Folder, StringComparison.Ordinal) && TypeOf(name) is not null)
            .ToFrozenDictionary(
                name => name is Folder + "index.html" ? "/" : "/" + name,
                name =>
                {
                    using var stream = program.GetManifestResourceStream(name)!;
                    var bytes = new byte[stream.Length];
                    stream.ReadExactly(bytes);
                    return new PageFile(bytes, TypeOf(name)!, $"\"{Convert.ToHexString(Sha256.HashData(bytes))[..16]}\"");
                },
                StringComparer.Ordinal
            );
    }

    private static string? TypeOf(string name) =>
        Path.GetExtension(name) switch
        {
            ".html" => "text/html; charset=utf-8",
            ".js" => "text/javascript; charset=utf-8",
            ".css" => "text/css; charset=utf-8",
            ".svg" => "image/svg+xml",
            _ => null,
        };

    private sealed record PageFile(byte[] Bytes, string Type, string Tag);
}
