namespace BenchSim.Season.Planning;

/// <summary>What a weather hold keeps trays from.</summary>
public enum HoldKind
{
    /// <summary>The hardening table: a forecast night there is too cold, row cover counted in.</summary>
    Table,

    /// <summary>The field: a forecast night is too cold, or the soil is too wet.</summary>
    Field,

    /// <summary>The field, by rain alone, whatever the crop; not where it goes under a tunnel.</summary>
    WetField,
}
