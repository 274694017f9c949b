using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using BenchSim.Answers.Asking;
using BenchSim.Answers.New;
using BenchSim.Answers.Opening;
using BenchSim.Answers.Trust;
using BenchSim.Folder.Editing;
using BenchSim.Folder.Files;
using BenchSim.Season.Inputs;
using BenchSim.Study.Levelling;
using BenchSim.Workbench.Drafts;
using BenchSim.Workbench.Phones;
using BenchSim.Workbench.Plays;
using BenchSim.Workbench.Showing;

namespace BenchSim.Workbench.Serving;

/// <summary>The desk that is open, its player, and the pages that look at it; no desk before a folder is laid down.</summary>
/// <param name="leveller">Finds sowings to move; null to move single ones alone.</param>
/// <param name="before">The folders that were opened before.</param>
internal sealed class OpenDesk(ILeveller? leveller, FolderList before) : IDisposable
{
    private static readonly TimeSpan s_lookOutside = TimeSpan.FromSeconds(1);

    private readonly Lock _gate = new();
    private Player? _player;
    private Timer? _timer;

    /// <summary>The desk; null where no folder is open.</summary>
    public Desk? Desk { get; private set; }

    /// <summary>Looks for what would mend the plan; null where no folder is open.</summary>
    public BesideSearch<MendAsked, Mended>? Mender { get; private set; }

    /// <summary>Looks how sure the answer is; null where no folder is open.</summary>
    public BesideSearch<PlanAsked, TrustList>? Trust { get; private set; }

    /// <summary>Writes into the log; null where no folder is open.</summary>
    public LogBook? Log { get; private set; }

    /// <summary>Keeps what does not change from one opening of the folder to the next.</summary>
    public KeptOpenings Kept { get; } = new();

    /// <summary>Asks of the files what takes seconds.</summary>
    public BesidePlays Beside { get; } = new();

    /// <summary>Plays the coming days: phones ask for them too, and do not wait for what else the owner asks.</summary>
    public BesidePlays Coming { get; } = new();

    /// <summary>The phones that are let in; null where none is.</summary>
    public PairedPhones? Phones { get; private set; }

    /// <summary>The addresses at which they are.</summary>
    public ImmutableArray<string> PhoneAddresses { get; private set; } = [];

    /// <summary>The pages that listen.</summary>
    public Listeners Listeners { get; } = new();

    /// <summary>What is looked at, as far as it has been played; null for nothing yet.</summary>
    public LookedAt? Looked
    {
        get
        {
            lock (_gate)
            {
                return Desk is { } desk && _player is { } player && player.Find(desk.State.Now, desk.State.Beside) is { } played
                    ? new LookedAt(desk, player, played)
                    : null;
            }
        }
    }

    /// <summary>Opens a folder.</summary>
    /// <param name="directory">The folder.</param>
    /// <exception cref="RefusedException">It cannot be opened.</exception>
    public void Open(string directory)
    {
        var desk = new Desk(directory);
        lock (_gate)
        {
            Close();
            _player = Player.Of(desk.Folder, Tell, Kept);
            Log = new LogBook(desk.Folder, Kept);
            Mender = Searches.Mend(desk.Folder, leveller, state => Listeners.Tell(SearchEvents.Of("mend", state)));
            Trust = Searches.Trust(desk.Folder, state => Listeners.Tell(SearchEvents.Of("trust", state)));
            Desk = desk;
            desk.Changed += (_, _) => Ask();
            _timer = new Timer(_ => desk.LookOutside(), null, s_lookOutside, s_lookOutside);
            Ask();
        }

        before.Add(desk.Folder.Directory);
    }

    /// <summary>Opens one of the folders that were opened before.</summary>
    /// <param name="directory">Its path, as the list has it.</param>
    /// <returns>Why it was not done; null when it was.</returns>
    public NotMade? OpenBefore(string directory)
    {
        try
        {
            lock (_gate)
            {
                if (Desk is not null)
                {
                    return new NotMade("A folder is open already.", false);
                }

                if (!before.Now.Contains(directory, StringComparer.Ordinal))
                {
                    return new NotMade("This folder is no longer there.", false);
                }

                Open(directory);
                return null;
            }
        }
        catch (RefusedException refused)
        {
            return new NotMade(refused.Message, false);
        }
    }

    /// <summary>Lets phones in. The owner's page is told when one comes or goes.</summary>
    /// <param name="phones">The phones.</param>
    /// <param name="addresses">The addresses at which they are let in.</param>
    public void LetIn(PairedPhones phones, ImmutableArray<string> addresses)
    {
        (Phones, PhoneAddresses) = (phones, addresses);
        phones.Changed += (_, _) => Listeners.Tell(new PageEvent("phones", "{}"u8.ToArray()));
    }

    /// <summary>Lays a folder down where the workbench was started, and opens it.</summary>
    /// <param name="name">Name of the folder.</param>
    /// <param name="files">Its files; null for the example.</param>
    /// <returns>Why it was not done; null when it was.</returns>
    public NotMade? LayDown(string name, IReadOnlyList<InputFile>? files)
    {
        if (!PlainNames.IsPlain(name) || name.Contains('/', StringComparison.Ordinal) || name.StartsWith('.'))
        {
            return new NotMade("Write a plain name for the folder: letters, digits, blanks and hyphens.", false);
        }

        try
        {
            lock (_gate)
            {
                if (Desk is not null)
                {
                    return new NotMade("A folder is open already.", false);
                }

                var directory = Path.Combine(Directory.GetCurrentDirectory(), name);
                var asked = new NewQuestion(directory);
                (files is null ? asked : asked with { Files = files }).Ask(new PlayWatch(CancellationToken.None));
                Open(directory);
                return null;
            }
        }
        catch (RefusedException refused)
        {
            return new NotMade(refused.Message, false);
        }
    }

    /// <summary>The desk as the page shows it.</summary>
    public DeskDocument Document()
    {
        lock (_gate)
        {
            return Desk is null || _player is null
                ? DeskDocument.Nothing with
                {
                    Before = [.. before.Now.Select(FolderDocument.Of)],
                }
                : DeskDocument.Of(Desk, _player) with
                {
                    HasPhones = Phones is not null,
                };
        }
    }

    /// <summary>The desk as a phone sees it.</summary>
    public DeskDocument PhoneDocument()
    {
        lock (_gate)
        {
            return Desk is null ? DeskDocument.Nothing : DeskDocument.OfPhone(Desk);
        }
    }

    /// <summary>Plays changes that are not made yet; none of them for what is looked at as it is.</summary>
    public NotMade? Live(IReadOnlyList<Change> changes)
    {
        var state = Desk!.State;
        var now = Desk.Preview(changes, out var fault);
        if (fault is null)
        {
            _player!.Ask(new Question(state.Revision, state.Current, changes.Count > 0, now, state.Files, state.Beside));
        }

        return fault;
    }

    /// <inheritdoc />
    public void Dispose()
    {
        lock (_gate)
        {
            Close();
            Phones?.Dispose();
            Beside.Dispose();
            Coming.Dispose();
        }
    }

    // A look outside that is under way ends first: it may still ask the player.
    private void Close()
    {
        using (var ended = new ManualResetEvent(false))
        {
            if (_timer?.Dispose(ended) == true)
            {
                ended.WaitOne();
            }
        }

        Mender?.Dispose();
        Trust?.Dispose();
        _player?.Dispose();
        Desk?.Dispose();
        Listeners.Forget();
    }

    private void Ask()
    {
        if (Desk?.State is { } state)
        {
            var revision = Encoding.ASCII.GetBytes(FormattableString.Invariant($"{{\"revision\":{state.Revision}}}"));
            Listeners.Tell(new PageEvent("desk", revision) { ForPhones = new Lazy<byte[]>(revision) });
            _player?.Ask(new Question(state.Revision, state.Current, false, state.Now, state.Files, state.Beside));
        }
    }

    // The table that faults and batches of a file belong to, where it stands in a workbook.
    private CsvOutline? Table(string file) => Desk is { } desk ? desk.Folder.WorkbookOf(file) : null;

    private void Tell(Told told) =>
        Listeners.Tell(
            new PageEvent("answer", Json(AnswerDocument.Of(told, Table)))
            {
                ForPhones = told.OfFiles is { } files ? new Lazy<byte[]>(() => Json(AnswerDocument.Of(files, Table).Short())) : null,
            }
        );

    private static byte[] Json(AnswerDocument answer) => JsonSerializer.SerializeToUtf8Bytes(answer, PageContext.Default.AnswerDocument);
}

/// <summary>The plan that is looked at.</summary>
/// <param name="Desk">The desk.</param>
/// <param name="Player">Who played it.</param>
/// <param name="Played">What was made of it so far.</param>
internal sealed record LookedAt(Desk Desk, Player Player, Played Played);
