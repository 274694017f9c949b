using System.Collections.Immutable;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Compare;
using BenchSim.Answers.Opening;
using BenchSim.Answers.Run;
using BenchSim.Report.Json;
using BenchSim.Study.Results;
using BenchSim.Workbench.Drafts;
using BenchSim.Workbench.Plays;

namespace BenchSim.Workbench.Tests.Plays;

/// <summary>
/// A try has the answer that <c>benchsim run</c> gives of the files it would write, to the last bit, whatever was played before it.
/// </summary>
[Trait("Category", "Slow")]
public sealed class SameAnswerTests
{
    private const int Tries = 200;
    private const int KeptTries = 60;
    private const int Seasons = 25;

    [Fact]
    public void Random_tries_have_the_answer_of_their_files()
    {
        using var folder = new TemporaryFolder();
        foreach (var (name, bytes) in TemporaryFolder.Files(Repository.File("scenarios/two-house-spring")))
        {
            folder.Write(name, bytes);
        }

        using var desk = new Desk(folder.Path);
        using var written = new TemporaryFolder();
        written.Write("weather.csv", File.ReadAllBytes(folder.In("weather.csv")));
        written.Write("crops.csv", File.ReadAllBytes(folder.In("crops.csv")));
        using var listener = new Listener(desk.Folder);
        var luck = new Random(2027);
        var (played, faulty) = (0, 0);
        for (var at = 0; at < Tries; at++)
        {
            _ = desk.Edit("a try", [.. Enumerable.Range(0, luck.Next(1, 4)).Select(_ => Drawn(luck, desk.State.Now))]);
            if (luck.Next(4) == 0)
            {
                Assert.Null(desk.Undo(again: false));
            }

            var told = listener.Ask(desk.State);
            foreach (var file in new[] { "site.toml", "plan.csv" })
            {
                written.Write(file, desk.State.Now[file]);
            }

            var run = new RunQuestion
            {
                Scenario = ScenarioSource.Folder(written.Path),
                Play = new PlayWish(Seasons),
                NoReport = true,
            };
            if (told.Played.Result is { } result)
            {
                var answer = run.Ask(new PlayWatch(CancellationToken.None));
                Assert.Equal(Shown(answer.Result), Shown(result));
                played++;
            }
            else
            {
                var found = Assert.Throws<FaultsFoundException>(() => run.Ask(new PlayWatch(CancellationToken.None)));
                Assert.Equal(found.Faults.ToArray(), told.Played.Faults.ToArray());
                faulty++;
                Assert.Null(desk.Undo(again: false));
            }
        }

        // Both kinds come, so that neither comparison is empty.
        Assert.True(played > Tries / 2, $"{played} of {Tries} were played");
        Assert.True(faulty > 0, "no try had faults");
    }

    // Both on the same luck: what the page says of a try against the files is what compare says of the variant that it is kept as.
    [Fact]
    public void Tries_kept_as_variants_compare_as_the_page_says()
    {
        using var folder = new TemporaryFolder();
        foreach (var (name, bytes) in TemporaryFolder.Files(Repository.File("scenarios/two-house-spring")))
        {
            folder.Write(name, bytes);
        }

        using var desk = new Desk(folder.Path);
        using var listener = new Listener(desk.Folder, 10, [Seasons]);
        var luck = new Random(18);
        var (kept, moved) = (0, 0);
        for (var at = 1; at <= KeptTries; at++)
        {
            Assert.Null(desk.Look(0));
            if (
                desk.Edit("a try", [.. Enumerable.Range(0, luck.Next(1, 4)).Select(_ => Drawn(luck, desk.State.Files))]) is not null
                || desk.State.Looked is not { } draft
                || desk.KeepAsVariant(draft.Id, $"kept-{at}", out var said) is not null
            )
            {
                continue;
            }

            Assert.Equal($"Kept as variants/kept-{at}.toml.", said);
            var told = listener.AskToTheLast(desk.State);
            if (told.Change is not { } change)
            {
                continue;
            }

            var answer = new CompareQuestion
            {
                Scenario = ScenarioSource.Folder(folder.Path),
                Variants = [$"kept-{at}"],
                Play = new PlayWish(Seasons),
            }.Ask(new PlayWatch(CancellationToken.None));
            Assert.Equal(answer.Result.Variants[0].Fits, change);
            kept++;
            moved += Yardstick.IsMoved(told.Base!.Plan!, told.Played.Plan!) ? 1 : 0;
        }

        Assert.True(kept > KeptTries / 2, $"{kept} of {KeptTries} were kept");
        Assert.True(moved > 0, "no try moved a promised date");
    }

    // All that is told of a play, but for the files it was read from.
    private static byte[] Shown(StudyResult result) => ResultDocument.Write(result, []);

    private static Change Drawn(Random luck, ImmutableSortedDictionary<string, string> now)
    {
        var rows = BenchSim.Folder.Editing.CsvEdit.Rows(now["plan.csv"]);
        var row = luck.Next(rows);
        return luck.Next(8) switch
        {
            0 => Drafts.DeskTests.Cell(row, "plants", $"{luck.Next(50, 900)}"),
            1 => Drafts.DeskTests.Cell(row, "set_out", $"2027-{luck.Next(4, 7):00}-{luck.Next(1, 29):00}"),
            2 => Drafts.DeskTests.Cell(row, "germination", luck.Next(9) == 0 ? "none" : $"{luck.Next(70, 100)} %"),
            3 => Drafts.DeskTests.Key("space", 0, "places", $"{luck.Next(20, 90)}"),
            4 => Drafts.DeskTests.Key("space", 3, "places", $"{luck.Next(60, 200)}"),
            5 => Drafts.DeskTests.Key("house", luck.Next(2), "night", $"{luck.Next(48, 66)} F"),
            6 => Drafts.DeskTests.Key("rules", 0, "slack_days", $"{luck.Next(0, 9)}"),
            _ => new Change(ChangeKind.RemoveRow) { Row = row },
        };
    }

    [Fact]
    public void Other_places_do_not_play_the_seasons_without_limits_anew()
    {
        using var folder = new TemporaryFolder();
        foreach (var (name, bytes) in TemporaryFolder.Files(Repository.File("scenarios/two-house-spring")))
        {
            folder.Write(name, bytes);
        }

        using var desk = new Desk(folder.Path);
        using var listener = new Listener(desk.Folder);
        listener.Ask(desk.State);
        var before = listener.KeptBytes;
        Assert.True(before > 0);
        Assert.Null(desk.Edit("more mats", [Drafts.DeskTests.Key("space", 0, "places", "60")]));
        listener.Ask(desk.State);
        Assert.Equal(before, listener.KeptBytes);
    }

    /// <summary>Asks a player and waits for its first answer.</summary>
    private sealed class Listener : IDisposable
    {
        private readonly System.Collections.Concurrent.BlockingCollection<Told> _told = [];
        private readonly Player _player;
        private long _number;

        public Listener(OpenFolder folder)
            : this(folder, Seasons, []) { }

        public Listener(OpenFolder folder, int first, ImmutableArray<int> further) =>
            _player = Player.Of(folder, told => _told.Add(told), new KeptOpenings(), first, further);

        public long KeptBytes => _player.Kept.Bytes;

        public Told AskToTheLast(DeskState state)
        {
            _player.Ask(new Question(++_number, state.Current, false, state.Now, state.Files));
            while (true)
            {
                // The last one with its comparison, where there is one to make.
                var told = _told.Take();
                var isWhole = told.Change is not null || told is not { Played.Result: not null, Base.Result: not null };
                if (told.Question.Revision == _number && told.IsLast && isWhole)
                {
                    return told;
                }
            }
        }

        public Told Ask(DeskState state)
        {
            _player.Ask(new Question(++_number, 1, false, state.Now, state.Now));
            while (true)
            {
                var told = _told.Take();
                if (told.Question.Revision == _number)
                {
                    return told;
                }
            }
        }

        public void Dispose()
        {
            _player.Dispose();
            _told.Dispose();
        }
    }
}
