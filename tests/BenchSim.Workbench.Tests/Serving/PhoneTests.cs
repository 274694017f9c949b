using System.Net;
using System.Net.Sockets;
using System.Text;
using System.Text.Json;

namespace BenchSim.Workbench.Tests.Serving;

/// <summary>Phones in the farm's own network: who is let in, to what, and who is no more.</summary>
public sealed class PhoneTests : IAsyncLifetime, IDisposable
{
    private const string Sown =
        """{"id":"a1","said":"Sown","rows":[{"date":"2027-03-01","batch":"a","what":"sown","trays":"2","space":"mats"}]}""";

    private readonly FarmFolder _folder = new();
    private Visitor _owner = null!;

    public async Task InitializeAsync() => _owner = await Visitor.InsideAsync(_folder.Path, Phone.Network);

    public async Task DisposeAsync() => await _owner.DisposeAsync();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task Without_lan_nothing_listens_but_the_usual_address()
    {
        using var folder = new FarmFolder();
        await using var alone = await Visitor.InsideAsync(folder.Path);
        Assert.Empty(alone.PhoneAddresses);
        using var socket = new TcpClient();
        await Assert.ThrowsAnyAsync<SocketException>(() => socket.ConnectAsync(IPAddress.Parse(Phone.Here), alone.Root.Port));
        using var phones = await alone.GetAsync("/api/phones");
        Assert.Equal(HttpStatusCode.NotFound, phones.StatusCode);
        using var code = await alone.PostAsync("/api/phones/code", "{}");
        Assert.Equal(HttpStatusCode.Conflict, code.StatusCode);
    }

    [Theory]
    [InlineData("/api/desk")]
    [InlineData("/api/today")]
    [InlineData("/api/events")]
    [InlineData("/api/phones")]
    [InlineData("/page/bench.js")]
    [InlineData("/papers/work-list.html")]
    [InlineData("/in/anything")]
    [InlineData("/site.toml")]
    public async Task A_phone_that_is_not_paired_gets_the_page_for_the_code_and_nothing_else(string path)
    {
        using var phone = new Phone(_owner);
        using var page = await phone.GetAsync("/");
        Assert.Contains("Pair this phone", await page.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.StartsWith(
            "default-src 'none'; script-src 'self'",
            page.Headers.GetValues("Content-Security-Policy").Single(),
            StringComparison.Ordinal
        );
        using var other = await phone.GetAsync(path);
        Assert.Equal(HttpStatusCode.Unauthorized, other.StatusCode);
        using var post = await phone.PostAsync("/api/log", Sown);
        Assert.Equal(HttpStatusCode.Unauthorized, post.StatusCode);
        Assert.False(File.Exists(_folder.In("log.csv")));
    }

    [Fact]
    public async Task Neither_the_key_nor_the_cookie_of_the_owner_lets_in_by_the_network()
    {
        await using var fresh = await Visitor.OutsideAsync(new FarmFolder().Path, Phone.Network);
        using var phone = new Phone(fresh);
        using var key = await phone.GetAsync(fresh.Address.PathAndQuery);
        Assert.Equal(HttpStatusCode.Unauthorized, key.StatusCode);
        using var taken = await fresh.GetAsync(fresh.Address.PathAndQuery);
        Assert.Equal(HttpStatusCode.SeeOther, taken.StatusCode);

        using var stranger = new Phone(_owner);
        using var cookie = await stranger.GetAsync("/api/desk", ("Cookie", _owner.Cookie));
        Assert.Equal(HttpStatusCode.Unauthorized, cookie.StatusCode);
    }

    [Fact]
    public async Task The_code_pairs_one_phone_once()
    {
        using var phone = new Phone(_owner);
        Assert.Equal(HttpStatusCode.OK, await phone.PairAsync(_owner.Codes[0], "Ada's phone"));
        using var desk = await phone.GetAsync("/api/desk");
        Assert.Equal(HttpStatusCode.OK, desk.StatusCode);
        using var page = await phone.GetAsync("/");
        Assert.Contains("bench.js", await page.Content.ReadAsStringAsync(), StringComparison.Ordinal);

        using var second = new Phone(_owner);
        Assert.Equal(HttpStatusCode.Conflict, await second.PairAsync(_owner.Codes[0]));
        using var refused = await second.GetAsync("/api/desk");
        Assert.Equal(HttpStatusCode.Unauthorized, refused.StatusCode);
        var phones = await PhonesAsync();
        Assert.Equal(JsonValueKind.Null, phones.GetProperty("code").ValueKind);
        Assert.Equal("Ada's phone", phones.GetProperty("phones")[0].GetProperty("name").GetString());
        Assert.Equal(1, phones.GetProperty("phones").GetArrayLength());
    }

    [Fact]
    public async Task Five_wrong_codes_end_the_code_and_no_new_one_comes_by_itself()
    {
        using var phone = new Phone(_owner);
        var right = _owner.Codes[0].Replace(" ", "", StringComparison.Ordinal);
        var wrong = right[..5] + (right[5] == '0' ? '1' : '0');
        for (var at = 0; at < 5; at++)
        {
            Assert.Equal(HttpStatusCode.Conflict, await phone.PairAsync(wrong));
        }

        Assert.Equal(HttpStatusCode.Conflict, await phone.PairAsync(right));
        Assert.Single(_owner.Codes);
        Assert.Equal(JsonValueKind.Null, (await PhonesAsync()).GetProperty("code").ValueKind);

        // The owner asks for another.
        (await _owner.PostAsync("/api/phones/code", "{}")).Dispose();
        Assert.Equal(HttpStatusCode.OK, await phone.PairAsync(_owner.Codes[1]));
    }

    [Fact]
    public async Task A_phone_cannot_ask_for_a_code_or_take_a_phone_away()
    {
        using var phone = await Phone.PairedAsync(_owner);
        foreach (var path in new[] { "/api/phones/code", "/api/phones/remove" })
        {
            using var answer = await phone.PostAsync(path, "{}");
            Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        }
    }

    [Fact]
    public async Task The_phone_holds_a_secret_of_its_own_that_no_script_reads_and_the_folder_does_not_hold()
    {
        using var phone = await Phone.PairedAsync(_owner);
        var cookie = phone.Cookies.GetCookies(phone.Root).Single();
        Assert.True(cookie.HttpOnly);
        Assert.InRange(cookie.Expires, DateTime.Now.AddDays(364), DateTime.Now.AddDays(366));
        var kept = await File.ReadAllTextAsync(_folder.In(".benchsim/phones.json"));
        Assert.Contains("Ada", kept, StringComparison.Ordinal);
        Assert.DoesNotContain(cookie.Value, kept, StringComparison.Ordinal);
        Assert.DoesNotContain(_owner.Codes[^1].Replace(" ", "", StringComparison.Ordinal), kept, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_phone_that_is_taken_away_is_out_at_once_and_so_is_what_it_listens_to()
    {
        using var phone = await Phone.PairedAsync(_owner);
        using var other = await Phone.PairedAsync(_owner, "Bo's phone");
        using var events = new StreamReader(await phone.StreamAsync("/api/events"), Encoding.UTF8);
        Assert.StartsWith("event: ", await events.ReadLineAsync(), StringComparison.Ordinal);
        var id = (await PhonesAsync()).GetProperty("phones")[0].GetProperty("id").GetString();
        using var removed = await _owner.PostAsync("/api/phones/remove", $$"""{"id":"{{id}}"}""");
        Assert.Equal(HttpStatusCode.OK, removed.StatusCode);
        while (await events.ReadLineAsync() is not null)
        {
            // What was told before.
        }

        using var answer = await phone.PostAsync("/api/log", Sown);
        Assert.Equal(HttpStatusCode.Unauthorized, answer.StatusCode);
        using var stays = await other.GetAsync("/api/desk");
        Assert.Equal(HttpStatusCode.OK, stays.StatusCode);
    }

    [Fact]
    public async Task A_phone_writes_lines_into_the_log_each_once_and_takes_them_back()
    {
        using var phone = await Phone.PairedAsync(_owner);
        for (var again = 0; again < 2; again++)
        {
            using var written = await phone.PostAsync("/api/log", Sown);
            Assert.Equal(HttpStatusCode.OK, written.StatusCode);
            var desk = JsonDocument.Parse(await written.Content.ReadAsStringAsync()).RootElement;
            Assert.True(desk.GetProperty("isPhone").GetBoolean());
        }

        Assert.Equal(2, (await File.ReadAllLinesAsync(_folder.In("log.csv"))).Length);
        using var today = await phone.GetAsync("/api/today?day=2027-03-02");
        Assert.Contains("2027-03-01,a,sown", await today.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        using var back = await phone.PostAsync("/api/log/back", """{"id":"a1"}""");
        Assert.Equal(HttpStatusCode.OK, back.StatusCode);
        Assert.Single(await File.ReadAllLinesAsync(_folder.In("log.csv")));
    }

    [Theory]
    [InlineData("/api/edit", """{"what":"x","changes":[{"do":"Cell","row":0,"column":"plants","was":"100","value":"7"}]}""")]
    [InlineData("/api/live", """{"what":"","changes":[]}""")]
    [InlineData("/api/begin", "{}")]
    [InlineData("/api/put", """{"id":1}""")]
    [InlineData("/api/keep", """{"id":1,"name":"x"}""")]
    [InlineData("/api/undo", "{}")]
    [InlineData("/api/look", """{"id":0}""")]
    [InlineData("/api/mend/start", """{"goal":80}""")]
    [InlineData("/api/mend/mark", """{"mark":"slack"}""")]
    [InlineData("/api/trust/start", "{}")]
    [InlineData("/api/agree", """{"bill":"equal","on":"2027-01-15"}""")]
    [InlineData("/api/learn/take", "{}")]
    [InlineData("/api/new", "{}")]
    [InlineData("/api/example", "{}")]
    public async Task A_phone_changes_nothing_but_the_log(string path, string json)
    {
        using var phone = await Phone.PairedAsync(_owner);
        var before = await File.ReadAllTextAsync(_folder.In("plan.csv"));
        using var answer = await phone.PostAsync(path, json);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        Assert.Equal(before, await File.ReadAllTextAsync(_folder.In("plan.csv")));
        using var desk = JsonDocument.Parse(await _owner.SayAsync("/api/undo", "{}"));
        Assert.Equal(0, desk.RootElement.GetProperty("tries").GetArrayLength());
    }

    [Theory]
    [InlineData("/api/papers")]
    [InlineData("/api/why?batch=a")]
    [InlineData("/api/mend")]
    [InlineData("/api/trust")]
    [InlineData("/api/agreed")]
    [InlineData("/api/bills")]
    [InlineData("/api/learn")]
    [InlineData("/api/review")]
    [InlineData("/api/phones")]
    [InlineData("/papers/labels.pdf")]
    [InlineData("/papers/case.pdf")]
    public async Task A_phone_sees_neither_papers_nor_what_is_the_owners(string path)
    {
        using var phone = await Phone.PairedAsync(_owner);
        using var answer = await phone.GetAsync(path);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
    }

    [Fact]
    public async Task A_phone_is_told_the_answer_of_the_files_and_nothing_of_tries()
    {
        using var phone = await Phone.PairedAsync(_owner);
        await _owner.AnsweredAsync();
        using var events = new StreamReader(await phone.StreamAsync("/api/events"), Encoding.UTF8);
        (await _owner.PostAsync("/api/begin", "{}")).Dispose();
        await _owner.SayAsync(
            "/api/edit",
            """{"what":"more","changes":[{"do":"Cell","row":0,"column":"plants","was":"100","value":"4000"}]}"""
        );
        await _owner.AnsweredAsync();
        using var desk = JsonDocument.Parse(await (await phone.GetAsync("/api/desk")).Content.ReadAsStringAsync());
        Assert.Equal(0, desk.RootElement.GetProperty("tries").GetArrayLength());
        Assert.Equal(0, desk.RootElement.GetProperty("sections").GetArrayLength());
        Assert.Equal(JsonValueKind.Null, desk.RootElement.GetProperty("plan").ValueKind);
        var revision = desk.RootElement.GetProperty("revision").GetInt64();
        var told = 0;
        while (await events.ReadLineAsync() is { } line)
        {
            if (!line.StartsWith("data: {\"revision\"", StringComparison.Ordinal) || !line.Contains("\"try\"", StringComparison.Ordinal))
            {
                continue;
            }

            var answer = JsonDocument.Parse(line["data: ".Length..]).RootElement;
            Assert.Equal(0, answer.GetProperty("try").GetInt32());
            Assert.Equal(0, answer.GetProperty("batches").GetArrayLength());
            Assert.Equal(JsonValueKind.Null, answer.GetProperty("difference").ValueKind);
            told++;
            if (answer.GetProperty("revision").GetInt64() == revision)
            {
                break;
            }
        }

        Assert.NotEqual(0, told);
    }

    [Theory]
    [InlineData("Host", "farm.example")]
    [InlineData("Host", "127.0.0.1")]
    [InlineData("Host", "127.0.0.2")]
    [InlineData("Host", "127.0.0.2:1")]
    [InlineData("Origin", "null")]
    [InlineData("Origin", "http://farm.example")]
    [InlineData("Origin", "https://127.0.0.2")]
    [InlineData("Sec-Fetch-Site", "cross-site")]
    [InlineData("Sec-Fetch-Site", "same-site")]
    public async Task Other_pages_and_other_names_are_turned_away_paired_or_not(string header, string value)
    {
        using var phone = await Phone.PairedAsync(_owner);
        using var get = await phone.GetAsync("/api/desk", (header, value));
        Assert.Equal(HttpStatusCode.Forbidden, get.StatusCode);
        using var post = await phone.PostAsync("/api/log", Sown, (header, value));
        Assert.Equal(HttpStatusCode.Forbidden, post.StatusCode);

        (await _owner.PostAsync("/api/phones/code", "{}")).Dispose();
        using var stranger = new Phone(_owner);
        using var pair = await stranger.PostAsync("/api/pair", $$"""{"code":"{{_owner.Codes[^1]}}","name":""}""", (header, value));
        Assert.Equal(HttpStatusCode.Forbidden, pair.StatusCode);
    }

    [Fact]
    public async Task The_owners_address_does_not_answer_under_that_of_the_phones()
    {
        using var answer = await _owner.GetAsync("/api/desk", ("Host", new Uri(_owner.PhoneAddresses[0]).Authority));
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
    }

    [Fact]
    public async Task A_body_that_is_large_for_some_lines_of_a_log_is_refused()
    {
        using var phone = await Phone.PairedAsync(_owner);
        using var answer = await phone.PostAsync("/api/log", $$"""{"id":"a","said":"{{new string('x', 70_000)}}","rows":[]}""");
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, answer.StatusCode);
    }

    // 150 lines are opened and held in the network; those beyond 60 are closed, so that of 100 in all some are left to the owner.
    [Fact]
    public async Task Whoever_holds_lines_open_in_the_network_leaves_some_to_the_owner()
    {
        var held = new List<TcpClient>();
        try
        {
            for (var at = 0; at < 150; at++)
            {
                var socket = new TcpClient();
                await socket.ConnectAsync(IPAddress.Parse(Phone.Here), _owner.Root.Port);
                held.Add(socket);
            }

            var ends = held.Select(async socket =>
                {
                    try
                    {
                        Assert.Equal(0, await socket.GetStream().ReadAsync(new byte[1]));
                    }
                    catch (IOException)
                    {
                        // Closed, too.
                    }
                })
                .ToList();
            for (var closed = 0; closed < 90; closed++)
            {
                ends.Remove(await Task.WhenAny(ends));
            }

            var answer = await _owner.RawAsync(
                $"GET /api/desk HTTP/1.1\r\nHost: {_owner.Root.Authority}\r\nCookie: {_owner.Cookie}\r\nConnection: close\r\n\r\n"
            );
            Assert.StartsWith("HTTP/1.1 200", answer, StringComparison.Ordinal);
        }
        finally
        {
            held.ForEach(socket => socket.Dispose());
        }
    }

    [Fact]
    public async Task Phones_and_their_port_outlast_the_workbench()
    {
        using var folder = new FarmFolder();
        Phone phone;
        int port;
        await using (var first = await Visitor.InsideAsync(folder.Path, Phone.Network))
        {
            phone = await Phone.PairedAsync(first);
            port = first.Root.Port;
        }

        using (phone)
        {
            await using var second = await Visitor.InsideAsync(folder.Path, Phone.Network);
            Assert.Equal(port, second.Root.Port);
            using var desk = await phone.GetAsync("/api/desk");
            Assert.Equal(HttpStatusCode.OK, desk.StatusCode);
        }
    }

    private async Task<JsonElement> PhonesAsync()
    {
        using var answer = await _owner.GetAsync("/api/phones");
        return JsonDocument.Parse(await answer.Content.ReadAsStringAsync()).RootElement.Clone();
    }
}
