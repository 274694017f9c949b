using BenchSim.Engine.Randomness;
using BenchSim.Season.Climate;
using BenchSim.Season.Evidence;
using BenchSim.Season.Inputs;
using BenchSim.Season.Stands;

namespace BenchSim.Season.Play;

/// <summary>
/// The luck of one batch, drawn by name (docs/model.md section 8): it depends on the seed, the season and the batch's id alone.
/// </summary>
internal sealed class BatchLuck
{
    private readonly PhiloxKey _batchKey;
    private readonly PhiloxKey _packetKey;
    private readonly BetaLaw _packet;
    private readonly StandLoss _loss;
    private readonly Crop _crop;

    public BatchLuck(BatchOrder order, Crop crop, BetaLaw packet, ulong seed)
    {
        _crop = crop;
        _batchKey = PhiloxKey.Of(seed, order.Id);
        _packetKey = order.PacketId is { } id ? PhiloxKey.Of(seed, id) : _batchKey;
        _packet = packet;
        _loss = Stands.StandLoss.Of(crop);
    }

    /// <summary>What was seen of the batch; null for nothing.</summary>
    public BatchBelief? Seen { get; init; }

    /// <summary>What was seen of its packet; null for nothing.</summary>
    public PacketBelief? PacketSeen { get; init; }

    /// <summary>The luck of a season, by what was seen: first of the packet, then of the batch, each by the season's own uniform.</summary>
    public SeasonLuck Of(int season)
    {
        var packet = PacketSeen?.Germination(Draw(_packetKey, season, LuckPurpose.Packet).Uniform0) ?? -1;
        var germination = packet < 0 ? Packet(season) : _packet.Quantile(LuckGrid.Chance(packet));
        if (Seen is not { } seen)
        {
            return new(Emergence(season), Growth(season), germination, StandLoss(season));
        }

        var point = seen.Emergence(packet, Draw(_batchKey, season, LuckPurpose.Emergence).Uniform0);
        return new(
            seen.EmergenceAt(point),
            seen.GrowthAt(point)?.Quantile(Draw(_batchKey, season, LuckPurpose.Growth).Uniform0) ?? Growth(season),
            germination,
            seen.Cells?.Loss(packet, point, Draw(_batchKey, season, LuckPurpose.StandLoss).Uniform0) ?? StandLoss(season)
        );
    }

    /// <summary>Factor on the heat sum of emergence, mean 1.</summary>
    public double Emergence(int season) =>
        _crop.EmergeCv == 0 ? 1 : Lognormal.MeanOne(Draw(_batchKey, season, LuckPurpose.Emergence).Uniform0, _crop.EmergeCv);

    /// <summary>Factor on growth, mean 1.</summary>
    public double Growth(int season) =>
        _crop.GrowthCv == 0 ? 1 : Lognormal.MeanOne(Draw(_batchKey, season, LuckPurpose.Growth).Uniform0, _crop.GrowthCv);

    /// <summary>Germination of the packet in this season.</summary>
    public double Packet(int season) => _packet.Quantile(Draw(_packetKey, season, LuckPurpose.Packet).Uniform0);

    /// <summary>Share of its plants that the batch loses in this season between emergence and the field.</summary>
    public double StandLoss(int season) =>
        _loss.HasSpread ? _loss.Quantile(Draw(_batchKey, season, LuckPurpose.StandLoss).Uniform0) : _loss.Mean;

    /// <summary>The uniform of a tray or a flat.</summary>
    public double Fill(int season, LuckPurpose purpose, int index)
    {
        var block = Philox.Block(new PhiloxBlock((uint)index >> 1, (uint)season, (uint)purpose, 0), _batchKey);
        return (index & 1) == 0 ? block.Uniform0 : block.Uniform1;
    }

    /// <summary>
    /// The uniforms of trays or flats that follow one another, each as <see cref="Fill(int, LuckPurpose, int)"/> gives it; a block of luck
    /// serves two.
    /// </summary>
    public void Fill(int season, LuckPurpose purpose, int first, Span<double> into)
    {
        var at = 0;
        while (at < into.Length)
        {
            var index = first + at;
            var block = Philox.Block(new PhiloxBlock((uint)index >> 1, (uint)season, (uint)purpose, 0), _batchKey);
            if ((index & 1) == 0)
            {
                into[at++] = block.Uniform0;
            }

            if (at < into.Length)
            {
                into[at++] = block.Uniform1;
            }
        }
    }

    private static PhiloxBlock Draw(PhiloxKey key, int season, LuckPurpose purpose) =>
        Philox.Block(new PhiloxBlock(0, (uint)season, (uint)purpose, 0), key);
}

/// <summary>The luck of a batch in a season.</summary>
/// <param name="Emergence">Factor on the heat sum of emergence.</param>
/// <param name="Growth">Factor on growth.</param>
/// <param name="Germination">Germination of its packet, 0 to 1.</param>
/// <param name="StandLoss">Share of its plants that is lost between emergence and the field.</param>
internal readonly record struct SeasonLuck(double Emergence, double Growth, double Germination, double StandLoss);
