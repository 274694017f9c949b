namespace BenchSim.Report.Tests.Pdf;

/// <summary>Names that a file of a user may hold.</summary>
internal static class HostileNames
{
    public const string Script = "<script>alert('x')</script>";
    public const string Formula = "=cmd|' /C calc'!A0";
    public const string Emoji = "Tomato \U0001F345 \U0001F468\u200D\U0001F33E";
    public const string RightToLeft = "\u202Eשלום 12 עולם";
    public const string Quotes = "\"He said, 'no';\"";
    public const string Breaks = "one\r\ntwo\nthree\u2028four";
    public static readonly string Long = string.Concat(Enumerable.Repeat("Wide", 75));
    public static readonly string LongWords = string.Join(' ', Enumerable.Repeat("mmmmmmmmm", 30));

    public static TheoryData<string> All =>
        [Script, Formula, Emoji, RightToLeft, Quotes, Breaks, Long, LongWords, "日本語の名前", "e\u0301te\u0301"];
}
