namespace BenchSim.Cli.Printing;

/// <summary>One sentence on why a command did not do what was asked.</summary>
internal static class Refusal
{
    public static int Print(Desk desk, bool json, string message)
    {
        desk.Complain(message);
        if (json)
        {
            PrintJson(desk, message);
        }

        return ExitCode.BadInput;
    }

    public static void PrintJson(Desk desk, string message) => desk.SayJson(json => json.WriteString("error", message));
}
