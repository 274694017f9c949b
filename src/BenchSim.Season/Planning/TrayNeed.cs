using BenchSim.Season.Inputs;

namespace BenchSim.Season.Planning;

/// <summary>Trays or flats of one type, and the mix that fills them.</summary>
/// <param name="Type">Tray type.</param>
/// <param name="Filled">Trays filled in the whole time asked for: those to order where none is used twice.</param>
/// <param name="MostAtOnce">Most that stand on any one of the days, on the plan's dates: those to own where each is used again when it
/// comes back.</param>
public sealed record TrayNeed(TrayType Type, int Filled, int MostAtOnce)
{
    /// <summary>Potting mix in them, settled, litres. 0 where the tray type says no volume.</summary>
    public double MixLitres => Filled * Type.MediumLitres;
}
