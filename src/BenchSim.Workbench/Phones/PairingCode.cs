namespace BenchSim.Workbench.Phones;

/// <summary>What a typed code was.</summary>
internal enum TypedCode
{
    /// <summary>The code. It is used up.</summary>
    Right,

    /// <summary>Another one; it may be tried again.</summary>
    Wrong,

    /// <summary>There is no code to be typed: it was used, has run out, or was mistyped too often.</summary>
    None,
}

/// <summary>
/// The code by which one phone is paired: six digits, good once, for ten minutes and five tries. Nobody gets another by trying; the owner
/// asks for a new one. So a stranger who tries all five has a chance of 5 in 1,000,000. Safe for use by several threads.
/// </summary>
/// <param name="clock">The time.</param>
internal sealed class PairingCode(TimeProvider clock)
{
    /// <summary>How long a code is good.</summary>
    public static readonly TimeSpan Lasts = TimeSpan.FromMinutes(10);

    /// <summary>How often it may be typed.</summary>
    public const int Tries = 5;

    private const int Digits = 6;

    private readonly Lock _gate = new();
    private string? _code;
    private DateTimeOffset _until;
    private int _left;

    /// <summary>The code that is good now; null for none.</summary>
    public string? Now
    {
        get
        {
            lock (_gate)
            {
                return IsGood ? _code : null;
            }
        }
    }

    /// <summary>How long it still is; nothing where there is none.</summary>
    public TimeSpan Left
    {
        get
        {
            lock (_gate)
            {
                return IsGood ? _until - clock.GetUtcNow() : TimeSpan.Zero;
            }
        }
    }

    private bool IsGood => _code is not null && _left > 0 && clock.GetUtcNow() < _until;

    /// <summary>Makes a new code; the one before is no longer good.</summary>
    public void Renew()
    {
        lock (_gate)
        {
            (_code, _left, _until) = (Secret.Digits(Digits), Tries, clock.GetUtcNow() + Lasts);
        }
    }

    /// <summary>Judges a code that was typed. Blanks and signs between its digits do not count.</summary>
    public TypedCode Judge(string typed)
    {
        lock (_gate)
        {
            if (!IsGood)
            {
                return TypedCode.None;
            }

            var isIt = Secret.Is(string.Concat(typed.Where(char.IsAsciiDigit)), _code!);
            _left = isIt ? 0 : _left - 1;
            return isIt ? TypedCode.Right
                : _left > 0 ? TypedCode.Wrong
                : TypedCode.None;
        }
    }
}
