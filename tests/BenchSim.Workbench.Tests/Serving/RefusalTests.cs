using System.Net;
using System.Net.Sockets;
using System.Text;

namespace BenchSim.Workbench.Tests.Serving;

/// <summary>Who and what the server turns away, over real HTTP.</summary>
public sealed class RefusalTests : IAsyncLifetime, IDisposable
{
    private readonly FarmFolder _folder = new();
    private Visitor _visitor = null!;

    public async Task InitializeAsync() => _visitor = await Visitor.InsideAsync(_folder.Path);

    public async Task DisposeAsync() => await _visitor.DisposeAsync();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task The_page_comes_with_a_policy_that_lets_in_nothing_of_others()
    {
        using var page = await _visitor.GetAsync("/");
        Assert.Equal(HttpStatusCode.OK, page.StatusCode);
        var policy = page.Headers.GetValues("Content-Security-Policy").Single();
        Assert.StartsWith("default-src 'none'; script-src 'self'; style-src 'self'; connect-src 'self';", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe", policy, StringComparison.Ordinal);
        Assert.Equal("no-referrer", page.Headers.GetValues("Referrer-Policy").Single());
        Assert.Equal("nosniff", page.Headers.GetValues("X-Content-Type-Options").Single());
    }

    [Fact]
    public async Task A_file_that_the_browser_has_is_not_sent_again()
    {
        using var first = await _visitor.GetAsync("/page/bench.js");
        Assert.Equal("text/javascript", first.Content.Headers.ContentType?.MediaType);
        using var second = await _visitor.GetAsync("/page/bench.js", ("If-None-Match", first.Headers.ETag!.ToString()));
        Assert.Equal(HttpStatusCode.NotModified, second.StatusCode);
    }

    [Theory]
    [InlineData("/")]
    [InlineData("/page/bench.js")]
    [InlineData("/api/desk")]
    [InlineData("/api/events")]
    [InlineData("/api/why?batch=a")]
    [InlineData("/papers/work-list.html")]
    [InlineData("/papers/case.pdf")]
    public async Task Without_the_cookie_nothing_is_answered(string path)
    {
        using var other = Visitor.NewClient();
        using var answer = await other.GetAsync(new Uri(_visitor.Root, path));
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        Assert.StartsWith("This browser has no key.", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_key_is_good_for_one_use()
    {
        using var other = Visitor.NewClient();
        using var again = await other.GetAsync(_visitor.Address);
        Assert.Equal(HttpStatusCode.Forbidden, again.StatusCode);
        Assert.False(again.Headers.Contains("Set-Cookie"));

        // The browser that took it may use the address again, as by a bookmark.
        using var same = await _visitor.GetAsync(_visitor.Address.PathAndQuery);
        Assert.Equal(HttpStatusCode.SeeOther, same.StatusCode);
    }

    [Fact]
    public async Task A_wrong_key_does_not_use_the_right_one_up()
    {
        await using var visitor = await Visitor.OutsideAsync(new FarmFolder().Path);
        using var wrong = await visitor.GetAsync("/in/" + new string('A', 43));
        Assert.Equal(HttpStatusCode.Forbidden, wrong.StatusCode);
        using var right = await visitor.GetAsync(visitor.Address.PathAndQuery);
        Assert.Equal(HttpStatusCode.SeeOther, right.StatusCode);
        var cookie = right.Headers.GetValues("Set-Cookie").Single();
        Assert.Contains($"benchsim-{visitor.Root.Port}=", cookie, StringComparison.Ordinal);
        Assert.Contains("httponly", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("samesite=strict", cookie, StringComparison.OrdinalIgnoreCase);
    }

    [Theory]
    [InlineData("Host", "farm.example")]
    [InlineData("Host", "127.0.0.1")]
    [InlineData("Host", "127.0.0.1:1")]
    [InlineData("Origin", "null")]
    [InlineData("Origin", "http://farm.example")]
    [InlineData("Origin", "https://127.0.0.1")]
    [InlineData("Sec-Fetch-Site", "cross-site")]
    [InlineData("Sec-Fetch-Site", "same-site")]
    public async Task Other_pages_and_other_names_of_this_computer_are_turned_away(string header, string value)
    {
        using var get = await _visitor.GetAsync("/api/desk", (header, value));
        Assert.Equal(HttpStatusCode.Forbidden, get.StatusCode);
        using var post = await _visitor.PostAsync("/api/undo", "{}", (header, value));
        Assert.Equal(HttpStatusCode.Forbidden, post.StatusCode);
    }

    [Fact]
    public async Task A_request_that_changes_something_says_where_it_comes_from()
    {
        var request = _visitor.Request(HttpMethod.Post, "/api/undo");
        request.Content = new StringContent("{}", Encoding.UTF8, "application/json");
        using var answer = await _visitor.SendAsync(request);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
    }

    [Theory]
    [InlineData("text/plain")]
    [InlineData("application/x-www-form-urlencoded")]
    [InlineData("multipart/form-data")]
    public async Task Only_json_is_read(string type)
    {
        var request = _visitor.Request(HttpMethod.Post, "/api/undo", ("Origin", _visitor.Root.GetLeftPart(UriPartial.Authority)));
        request.Content = new StringContent("{}", Encoding.UTF8, type);
        using var answer = await _visitor.SendAsync(request);
        Assert.Equal(HttpStatusCode.UnsupportedMediaType, answer.StatusCode);
    }

    [Theory]
    [InlineData("")]
    [InlineData("{")]
    [InlineData("null")]
    [InlineData("[1]")]
    [InlineData("{\"changes\":[{\"do\":\"Nonsense\"}]}")]
    [InlineData("{\"what\":\"x\",\"changes\":7}")]
    [InlineData("{\"what\":\"x\"}")]
    [InlineData("{\"what\":\"x\",\"changes\":[null]}")]
    [InlineData("{\"what\":\"x\",\"changes\":[{\"do\":\"Cell\",\"value\":null}]}")]
    public async Task Json_of_another_shape_is_a_bad_request(string json)
    {
        using var answer = await _visitor.PostAsync("/api/edit", json);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
    }

    [Theory]
    [InlineData("""{"folder":"x","houses":[null]}""")]
    [InlineData("""{"folder":"x","houses":[{"length":null}]}""")]
    [InlineData("""{"folder":null}""")]
    public async Task A_farm_of_another_shape_is_a_bad_request(string json)
    {
        using var answer = await _visitor.PostAsync("/api/new", json);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
    }

    // Only a folder of the list is opened, and only where none is open.
    [Fact]
    public async Task No_folder_is_opened_by_its_path_alone()
    {
        using var other = new FarmFolder();
        var asked = $$"""{"id":0,"name":{{System.Text.Json.JsonSerializer.Serialize(other.Path)}}}""";
        Assert.Contains("A folder is open already.", await _visitor.SayAsync("/api/open", asked), StringComparison.Ordinal);
        await using var empty = await Visitor.InsideAsync(null);
        Assert.Contains("no longer there", await empty.SayAsync("/api/open", asked), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_change_is_made_with_what_is_left_out_as_usual()
    {
        var desk = await _visitor.SayAsync(
            "/api/edit",
            """{"what":"more","changes":[{"do":"Cell","row":0,"column":"plants","was":"100","value":"120"}]}"""
        );
        Assert.Contains("\"120\"", desk, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_large_body_is_refused()
    {
        var answer = await _visitor.RawAsync(
            $"POST /api/edit HTTP/1.1\r\nHost: {_visitor.Root.Authority}\r\nCookie: {_visitor.Cookie}\r\n"
                + $"Origin: {_visitor.Root.GetLeftPart(UriPartial.Authority)}\r\n"
                + "Content-Type: application/json\r\nContent-Length: 5000000\r\nConnection: close\r\n\r\n{"
        );
        Assert.StartsWith("HTTP/1.1 413", answer, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("PUT")]
    [InlineData("DELETE")]
    [InlineData("OPTIONS")]
    [InlineData("HEAD")]
    public async Task Other_methods_are_refused(string method)
    {
        using var answer = await _visitor.SendAsync(_visitor.Request(new HttpMethod(method), "/api/desk"));
        Assert.Equal(HttpStatusCode.MethodNotAllowed, answer.StatusCode);
    }

    [Theory]
    [InlineData("/page/../site.toml")]
    [InlineData("/page/..%2f..%2fsite.toml")]
    [InlineData("/site.toml")]
    [InlineData("/%2e%2e/site.toml")]
    [InlineData("//etc/passwd")]
    [InlineData("/page/CON")]
    [InlineData("/.benchsim/drafts.jsonl")]
    public async Task No_path_leads_to_a_file_of_the_disk(string path)
    {
        var cookie = $"Cookie: {_visitor.Cookie}\r\n";
        var answer = await _visitor.RawAsync(
            $"GET {path} HTTP/1.1\r\nHost: {_visitor.Root.Authority}\r\n{cookie}Connection: close\r\n\r\n"
        );
        Assert.StartsWith("HTTP/1.1 404", answer, StringComparison.Ordinal);
    }

    [Fact]
    [Trait("Category", "Slow")]
    public async Task A_slow_body_is_cut_off_and_held_connections_leave_the_server_alive()
    {
        var held = new List<TcpClient>();
        try
        {
            for (var at = 0; at < 500; at++)
            {
                var socket = new TcpClient();
                await socket.ConnectAsync(IPAddress.Loopback, _visitor.Root.Port);
                held.Add(socket);
            }

            // Held connections without a request are let go after the time that a head may take.
            var cookie = $"Cookie: {_visitor.Cookie}\r\n";
            var origin = $"Origin: {_visitor.Root.GetLeftPart(UriPartial.Authority)}\r\n";
            var slow = "";
            while (slow.Length == 0)
            {
                try
                {
                    slow = await _visitor.RawAsync(
                        $"POST /api/undo HTTP/1.1\r\nHost: {_visitor.Root.Authority}\r\n{cookie}{origin}"
                            + "Content-Type: application/json\r\nContent-Length: 100\r\n\r\n{"
                    );
                }
                catch (IOException)
                {
                    slow = "";
                }
            }

            Assert.StartsWith("HTTP/1.1 408", slow, StringComparison.Ordinal);
        }
        finally
        {
            held.ForEach(socket => socket.Dispose());
        }

        using var alive = await _visitor.GetAsync("/api/desk");
        Assert.Equal(HttpStatusCode.OK, alive.StatusCode);
    }
}
