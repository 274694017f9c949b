namespace BenchSim.Answers.Words;

/// <summary>What must be said wherever more room is spoken of, in one line.</summary>
internal static class Rooms
{
    /// <summary>The caution.</summary>
    public const string Caution =
        "Mats need power, benches and tables carry heavy trays, aisles and exits stay clear: local codes and licensed people decide.";

    /// <summary>Where trays stand in the aisle.</summary>
    public const string Aisle = "Trays in the aisle: keep exits and walkways clear.";
}
