using System.Text;
using BenchSim.Report.Writing;

namespace BenchSim.Report.Morning;

/// <summary>
/// The page of a day in a folder of its own. It keeps the rules of a <see cref="ReportFolder"/>: whole or absent, and nothing that stood
/// there is lost but an earlier folder of the same kind. The same log gives the same bytes for the same day.
/// </summary>
public static class TodayFolder
{
    /// <summary>Name of the page.</summary>
    public const string PageName = "today.html";

    /// <summary>The style that the page carries, as a Content-Security-Policy names it.</summary>
    public static string StyleSource => TodayPage.StyleSource;

    /// <summary>Refuses a place where something stands that is no such folder; to be asked before the work.</summary>
    /// <param name="directory">Where the folder is to go.</param>
    /// <exception cref="ArgumentException"><paramref name="directory"/> is empty.</exception>
    /// <exception cref="ReportRefusedException">Something else stands there, or the place cannot be written.</exception>
    public static void Check(string directory)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(directory);
        Files(directory).Check();
    }

    /// <summary>The page.</summary>
    /// <param name="sheet">What it is made from.</param>
    public static byte[] Page(TodaySheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return Encoding.UTF8.GetBytes(TodayPage.Write(sheet));
    }

    /// <summary>Writes the folder. It appears whole at the end or not at all; an earlier one is replaced.</summary>
    /// <param name="directory">Where to write; parents are made as needed.</param>
    /// <param name="sheet">What the page is made from.</param>
    /// <param name="cancel">Stops the writing; nothing is left behind.</param>
    /// <exception cref="ArgumentException"><paramref name="directory"/> is empty.</exception>
    /// <exception cref="ReportRefusedException">Something else stands there, or the disk refuses.</exception>
    /// <exception cref="OperationCanceledException">The writing was stopped.</exception>
    public static void Write(string directory, TodaySheet sheet, CancellationToken cancel)
    {
        Check(directory);
        var page = Page(sheet);
        Files(directory).Write([], folder => folder.Save(PageName, page), cancel);
    }

    private static OwnFolder Files(string directory) => new(directory, PageName);
}
