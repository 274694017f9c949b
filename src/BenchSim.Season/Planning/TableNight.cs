namespace BenchSim.Season.Planning;

/// <summary>One night of a crop on a hardening table, on the plan's dates.</summary>
/// <param name="On">The evening.</param>
/// <param name="Trays">Trays of the crop that stand on the table.</param>
/// <param name="ColdYears">Years in which the night is colder than the crop's trays are left uncovered.</param>
/// <param name="DamagingYears">Years in which it is so cold, under the cover, that trays are carried in.</param>
public readonly record struct TableNight(DateOnly On, int Trays, int ColdYears, int DamagingYears);
