using BenchSim.Season.Inputs;

namespace BenchSim.Season.Planning;

/// <summary>
/// Seed of one crop: of one packet or one variety where the plan names it, else of one line of the plan, as two lines may mean two
/// varieties.
/// </summary>
/// <param name="Crop">Crop.</param>
/// <param name="PacketId">Packet; null for batches whose packet the plan does not name.</param>
/// <param name="Batches">Sowings.</param>
/// <param name="Seeds">Seeds sown, as planned: nothing is added or rounded.</param>
/// <param name="ThousandSeeds">Price of a thousand, in the user's money; null where none is given.</param>
/// <param name="Sowing">Id of the line of the plan that sows it, its successions together; null where it has a packet or variety with a
/// name,
/// or comes from no file.</param>
/// <param name="Variety">Variety; empty where the plan names none.</param>
public sealed record SeedNeed(
    Crop Crop,
    string? PacketId,
    int Batches,
    long Seeds,
    double? ThousandSeeds,
    string? Sowing = null,
    string Variety = ""
)
{
    /// <summary>Cost, in the user's money; null where no price is given.</summary>
    public double? Cost => Seeds / 1000.0 * ThousandSeeds;
}
