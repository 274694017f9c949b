namespace BenchSim.Workbench.Showing;

/// <summary>A fault of the program itself, told in the place of an answer.</summary>
internal static class FailureWords
{
    /// <summary>What stopped, and what to do.</summary>
    /// <param name="what">What stopped: "play".</param>
    /// <param name="kind">On which kind of fault.</param>
    public static string Of(string what, string kind) =>
        $"The {what} stopped on a fault of the program, not of your files ({kind}). Take the last change back, and report it.";
}
