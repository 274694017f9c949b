namespace BenchSim.Report.Papers;

/// <summary>Which papers are wanted.</summary>
[Flags]
public enum PaperKinds
{
    /// <summary>None.</summary>
    None = 0,

    /// <summary>The work list by week, for the clipboard and as a table.</summary>
    WorkList = 1,

    /// <summary>Tray labels, one a tray.</summary>
    Labels = 2,

    /// <summary>The order of seed, trays and mix.</summary>
    Order = 4,

    /// <summary>The calendar file.</summary>
    Calendar = 8,

    /// <summary>The workbook.</summary>
    Workbook = 16,

    /// <summary>All of them.</summary>
    All = WorkList | Labels | Order | Calendar | Workbook,
}
