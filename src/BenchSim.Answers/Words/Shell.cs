namespace BenchSim.Answers.Words;

/// <summary>Words of a command line as a person would type them.</summary>
public static class Shell
{
    /// <summary>The program's name, as people type it.</summary>
    public const string Program = "benchsim";

    /// <summary>The word as it is, or between single quotation marks where a shell would take it apart.</summary>
    /// <param name="word">The word.</param>
    public static string Word(string word)
    {
        ArgumentNullException.ThrowIfNull(word);
        return word.All(c => char.IsLetterOrDigit(c) || c is '/' or '.' or '-' or '_' or '\\' or ':')
            ? word
            : $"'{word.Replace("'", "'\\''", StringComparison.Ordinal)}'";
    }
}
