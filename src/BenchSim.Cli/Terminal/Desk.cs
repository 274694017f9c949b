using System.Text;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Words;
using BenchSim.Report.Words;

namespace BenchSim.Cli.Terminal;

/// <summary>Where a command writes, and how it is stopped.</summary>
/// <param name="Output">Answers.</param>
/// <param name="Error">Faults, notes and progress.</param>
/// <param name="IsTerminal">True when <paramref name="Error"/> is a terminal, so that progress may be drawn on it.</param>
/// <param name="Cancel">Stops the command.</param>
internal sealed record Desk(TextWriter Output, TextWriter Error, bool IsTerminal, CancellationToken Cancel)
{
    /// <summary>Watches over plays, with a bar where there is a terminal.</summary>
    public PlayWatch Watch => IsTerminal ? new TerminalWatch(Error, Cancel) : new PlayWatch(Cancel);

    /// <summary>Gives an answer, to people or to machines.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="form">How much of it, and for whom; an answer without a first screen is always given whole.</param>
    /// <returns>The exit code.</returns>
    public int Give(Answer answer, AnswerForm form)
    {
        if (form == AnswerForm.Json)
        {
            Say(answer.Document());
        }
        else if (answer.Front is not { } first)
        {
            Print(output => Painter.Paint(answer.Words, output));
        }
        else if (form == AnswerForm.Whole)
        {
            Print(output => Painter.Paint([.. ScreenPainter.Whole(first), ""], output));
            Print(output => Painter.Paint(answer.Words, output));
        }
        else
        {
            Print(output => Painter.Paint(ScreenPainter.Short(first), output));
            Print(output => Painter.Paint(answer.Asked, output));
        }

        return ExitCode.Done;
    }

    /// <summary>Says every fault on standard error, one a line, with their number at the end.</summary>
    /// <returns>The exit code.</returns>
    public int Say(FaultsFoundException found, bool json)
    {
        foreach (var fault in found.Faults)
        {
            Complain(fault.ToString());
        }

        Complain(found.Sentence);
        if (json)
        {
            Say(found.Json());
        }

        if (found.Note is { } note)
        {
            Complain(note);
        }

        return ExitCode.BadInput;
    }

    /// <summary>Says in a sentence why a command did not do what was asked.</summary>
    /// <returns>The exit code.</returns>
    public int Refuse(string why, bool json)
    {
        Complain(why);
        if (json)
        {
            Say(RefusedException.Json(why));
        }

        return ExitCode.BadInput;
    }

    /// <summary>Writes a document for machines to standard output.</summary>
    public void Say(byte[] document) => Print(output => output.Write(Encoding.UTF8.GetString(document)));

    /// <summary>Writes a line to standard output as it is, made safe for a terminal.</summary>
    public void Say(string line) => Print(output => output.Write(PlainText.OneLine(line).TrimEnd() + "\n"));

    /// <summary>Writes a line to standard error, made safe for a terminal. Never broken: a fault stays on one line.</summary>
    public void Complain(string line) => Error.Write(PlainText.OneLine(line).TrimEnd() + "\n");

    private void Print(Action<TextWriter> print)
    {
        try
        {
            print(Output);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            throw new OutputFailedException(failure);
        }
    }
}
