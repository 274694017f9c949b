using System.Collections.Immutable;
using System.Text;
using BenchSim.Report.Words;
using BenchSim.Study.Marks;
using BenchSim.Workbench.Drafts;

namespace BenchSim.Workbench.Phones;

/// <summary>
/// The phones that are let in, and the code by which another one is. A phone is let in for a year, or until the owner takes it away. Safe
/// for use by several threads.
/// </summary>
/// <param name="folder">The folder that keeps them.</param>
/// <param name="port">The port at which they know the workbench.</param>
/// <param name="clock">The time.</param>
internal sealed class PairedPhones(OpenFolder folder, int port, TimeProvider clock) : IDisposable
{
    /// <summary>Most phones at a time.</summary>
    public const int Most = 20;

    /// <summary>How long a phone is let in, days.</summary>
    public const int Days = 365;

    private const int LongestName = 40;

    private readonly Lock _gate = new();
    private readonly Dictionary<string, CancellationTokenSource> _inside = new(StringComparer.Ordinal);
    private PhoneBook _book = PhoneBook.Of(folder);

    /// <summary>Told when a phone came or went, or the code was used, run out of tries or made anew.</summary>
    public event EventHandler? Changed;

    /// <summary>Told when the code was made anew.</summary>
    public event EventHandler? CodeMade;

    /// <summary>The code.</summary>
    public PairingCode Code { get; } = new(clock);

    /// <summary>The phones that are let in, in the order of their pairing.</summary>
    public ImmutableArray<PairedPhone> All
    {
        get
        {
            lock (_gate)
            {
                return [.. _book.Phones.Where(IsLetIn)];
            }
        }
    }

    /// <summary>Makes a new code.</summary>
    public void NewCode()
    {
        Code.Renew();
        CodeMade?.Invoke(this, EventArgs.Empty);
        Changed?.Invoke(this, EventArgs.Empty);
    }

    /// <summary>Pairs a phone by the code.</summary>
    /// <param name="typed">What was typed.</param>
    /// <param name="name">What its user calls it.</param>
    /// <param name="fault">Why it was not paired; null when it was.</param>
    /// <returns>The secret that the phone is to hold; null where it was not paired.</returns>
    public string? Pair(string typed, string name, out NotMade? fault)
    {
        var plain = PlainText.Short(name, LongestName);
        var judged = Code.Judge(typed);
        fault = judged switch
        {
            TypedCode.Wrong => new NotMade("This is not the code. Type the one that the computer shows.", false),
            TypedCode.None => new NotMade(
                "No code is good now: it has been used, is older than ten minutes, or was mistyped too often. "
                    + "Ask for a new one on the computer, under Phones.",
                false
            ),
            _ => null,
        };
        string? secret = null;
        if (fault is null)
        {
            secret = Secret.Drawn();
            var today = Today();
            lock (_gate)
            {
                var phone = new PairedPhone(Secret.Drawn()[..12], plain.Length == 0 ? "A phone" : plain, MarkOf(secret), today);
                ImmutableArray<PairedPhone> stay = [.. _book.Phones.Where(IsLetIn)];
                fault =
                    stay.Length >= Most
                        ? new NotMade($"{Most} phones are paired already. Remove one on the computer, under Phones.", false)
                        : Keep(new PhoneBook(port, stay.Add(phone)));
            }
        }

        if (judged is not TypedCode.Wrong)
        {
            Changed?.Invoke(this, EventArgs.Empty);
        }

        return fault is null ? secret : null;
    }

    /// <summary>The phone that holds a secret; null for none that is let in.</summary>
    public PairedPhone? Find(string? secret)
    {
        if (secret is null)
        {
            return null;
        }

        var mark = MarkOf(secret);
        return All.FirstOrDefault(phone => Secret.Is(mark, phone.Mark));
    }

    /// <summary>Takes a phone away: it is let in no more, and what it listens to ends.</summary>
    /// <returns>Why it was not done; null when it was.</returns>
    public NotMade? Remove(string id)
    {
        NotMade? fault;
        lock (_gate)
        {
            ImmutableArray<PairedPhone> stay = [.. _book.Phones.Where(phone => !string.Equals(phone.Id, id, StringComparison.Ordinal))];
            fault =
                stay.Length == _book.Phones.Length
                    ? new NotMade("This phone is no longer in the list.", true)
                    : Keep(_book with { Phones = stay });
            if (fault is null && _inside.Remove(id, out var inside))
            {
                inside.Cancel();
                inside.Dispose();
            }
        }

        Changed?.Invoke(this, EventArgs.Empty);
        return fault;
    }

    /// <summary>Tells when a phone is taken away.</summary>
    public CancellationToken GoneOf(PairedPhone phone)
    {
        lock (_gate)
        {
            if (!_book.Phones.Contains(phone))
            {
                return new CancellationToken(canceled: true);
            }

            if (!_inside.TryGetValue(phone.Id, out var inside))
            {
                _inside[phone.Id] = inside = new CancellationTokenSource();
            }

            return inside.Token;
        }
    }

    /// <inheritdoc />
    public void Dispose()
    {
        lock (_gate)
        {
            foreach (var inside in _inside.Values)
            {
                inside.Dispose();
            }

            _inside.Clear();
        }
    }

    private static string MarkOf(string secret) => Convert.ToHexString(Sha256.HashData(Encoding.UTF8.GetBytes(secret)));

    private DateOnly Today() => DateOnly.FromDateTime(clock.GetLocalNow().DateTime);

    private bool IsLetIn(PairedPhone phone) => Today().DayNumber - phone.On.DayNumber < Days;

    private NotMade? Keep(PhoneBook book)
    {
        try
        {
            book.Write(folder);
            _book = book;
            return null;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return new NotMade($"The folder cannot be written, so this was not done: {failure.Message}", false);
        }
    }
}
