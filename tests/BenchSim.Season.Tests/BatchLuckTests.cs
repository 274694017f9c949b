using BenchSim.Engine.Randomness;
using BenchSim.Season.Climate;
using BenchSim.Season.Planning;
using BenchSim.Season.Play;
using BenchSim.Season.Stands;
using static Support.SmallSite;

namespace BenchSim.Season.Tests;

/// <summary>Luck by name (docs/model.md section 8). The generator itself is held against its known answers in tests/Published.</summary>
public class BatchLuckTests
{
    private readonly BetaLaw _packet = new(0.8, 400);

    // Counter: block, season, purpose, lane. A block has two numbers, so trays 0 and 1 share block 0, trays 2 and 3 block 1, and so on.
    [Fact]
    public void Each_tray_has_a_number_of_its_own_from_the_block_of_its_pair()
    {
        var luck = Luck("a", null);
        var key = PhiloxKey.Of(7, "a");
        for (var tray = 0; tray < 10; tray++)
        {
            var block = Philox.Block(new PhiloxBlock((uint)(tray / 2), 3, (uint)LuckPurpose.Tray, 0), key);
            Assert.Equal(tray % 2 == 0 ? block.Uniform0 : block.Uniform1, luck.Fill(3, LuckPurpose.Tray, tray));
        }

        Assert.NotEqual(luck.Fill(3, LuckPurpose.Tray, 4), luck.Fill(3, LuckPurpose.Flat, 4));
        Assert.NotEqual(luck.Fill(3, LuckPurpose.Tray, 4), luck.Fill(2, LuckPurpose.Tray, 4));
    }

    [Fact]
    public void Batches_of_a_packet_share_its_germination_and_nothing_else()
    {
        var (first, second, other) = (Luck("a", "p"), Luck("b", "p"), Luck("c", null));
        Assert.Equal(first.Packet(3), second.Packet(3));
        Assert.NotEqual(first.Packet(3), other.Packet(3));
        Assert.NotEqual(first.Growth(3), second.Growth(3));
        Assert.NotEqual(first.Emergence(3), second.Emergence(3));
    }

    private BatchLuck Luck(string id, string? packet) =>
        new(Batch(id, 50, Monday) with { PacketId = packet }, Crop() with { EmergeCv = 0.2, GrowthCv = 0.2 }, _packet, 7);
}
