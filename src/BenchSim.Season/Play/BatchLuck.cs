using BenchSim.Engine.Randomness;
using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;
using BenchSim.Season.Stands;

namespace BenchSim.Season.Play;

/// <summary>The luck of one batch, drawn by name (docs/model.md section 8): it depends on the seed, the season and the batch's id alone.</summary>
internal sealed class BatchLuck
{
    private readonly PhiloxKey batchKey;
    private readonly PhiloxKey packetKey;
    private readonly PacketGermination packet;
    private readonly Crop crop;

    public BatchLuck(BatchOrder order, Crop crop, PacketGermination packet, ulong seed)
    {
        this.crop = crop;
        batchKey = PhiloxKey.Of(seed, order.Id);
        packetKey = order.PacketId is { } id ? PhiloxKey.Of(seed, id) : batchKey;
        this.packet = packet;
    }

    /// <summary>Factor on the heat sum of emergence, mean 1.</summary>
    public double Emergence(int season) =>
        crop.EmergeCv == 0 ? 1 : Lognormal.MeanOne(Draw(batchKey, season, LuckPurpose.Emergence).Uniform0, crop.EmergeCv);

    /// <summary>Factor on growth, mean 1.</summary>
    public double Growth(int season) =>
        crop.GrowthCv == 0 ? 1 : Lognormal.MeanOne(Draw(batchKey, season, LuckPurpose.Growth).Uniform0, crop.GrowthCv);

    /// <summary>Germination of the packet in this season.</summary>
    public double Packet(int season) => packet.Quantile(Draw(packetKey, season, LuckPurpose.Packet).Uniform0);

    /// <summary>The uniform of a tray or a flat.</summary>
    public double Fill(int season, LuckPurpose purpose, int index)
    {
        var block = Philox.Block(new PhiloxBlock((uint)index >> 1, (uint)season, (uint)purpose, 0), batchKey);
        return (index & 1) == 0 ? block.Uniform0 : block.Uniform1;
    }

    /// <summary>The uniforms of trays or flats that follow one another, each as <see cref="Fill(int, LuckPurpose, int)"/> gives it; a block of luck serves two.</summary>
    public void Fill(int season, LuckPurpose purpose, int first, Span<double> into)
    {
        var at = 0;
        while (at < into.Length)
        {
            var index = first + at;
            var block = Philox.Block(new PhiloxBlock((uint)index >> 1, (uint)season, (uint)purpose, 0), batchKey);
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
