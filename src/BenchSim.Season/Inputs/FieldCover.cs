namespace BenchSim.Season.Inputs;

/// <summary>What a batch stands under in the field.</summary>
public enum FieldCover
{
    /// <summary>Nothing.</summary>
    Open,

    /// <summary>A row cover of fabric.</summary>
    RowCover,

    /// <summary>A low tunnel over the row.</summary>
    LowTunnel,

    /// <summary>An unheated tunnel in which people walk.</summary>
    Tunnel,
}

/// <summary>What the covers of the field do.</summary>
public static class FieldCovers
{
    /// <summary>
    /// Whether the soil under it is no wetter after rain. A tunnel stands before the trays come, and its soil is as wet as it is watered. A
    /// low tunnel or a row cover goes on as the row is set out or later, and the ways between the rows lie open. Common practice.
    /// </summary>
    public static bool KeepsRainOff(this FieldCover cover) => cover == FieldCover.Tunnel;
}
