using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using BenchSim.Season.Heat;

namespace BenchSim.Season.Climate;

/// <summary>
/// Running sums of up to eight laws in one air, side by side in a vector: what one law adds in an hour is worked out for all by the same
/// operations in the same order, so each sum has the bits it would have by itself.
/// </summary>
internal sealed class HeatBlock
{
    /// <summary>Laws that a block holds at most.</summary>
    public const int Most = 8;

    private readonly double _offsetK;
    private Vector512<double> _offsets;
    private Vector512<double> _least;
    private Vector512<double> _isGrowth;
    private Vector512<double> _heights;
    private Vector512<double> _widths = Vector512<double>.One;

    // A place without a law adds nothing: it never is as warm as its base.
    private Vector512<double> _bases = Vector512.Create(double.PositiveInfinity);
    private Vector512<double> _caps = Vector512.Create(double.PositiveInfinity);
    private Vector512<double> _plateaus = Vector512.Create(double.PositiveInfinity);
    private Vector512<double> _ceilings = Vector512.Create(double.PositiveInfinity);
    private double _lowestPlateau = double.PositiveInfinity;

    /// <summary>Makes an empty block.</summary>
    /// <param name="offsetK">Temperature of the medium less that of the air, kelvin.</param>
    /// <param name="hours">Hours of the season.</param>
    public HeatBlock(double offsetK, int hours)
    {
        _offsetK = offsetK;
        Sums = GC.AllocateUninitializedArray<double>((hours + 1) * Most);
        Sums.AsSpan(0, Most).Clear();
    }

    /// <summary>
    /// Sums from the opening of day 0, degree-days times 24: that of a law at an hour stands at hour x <see cref="Most"/> + its place.
    /// </summary>
    public double[] Sums { get; }

    /// <summary>Laws it holds.</summary>
    public int Count { get; private set; }

    /// <summary>Whether one of its sums was asked for under the present weather.</summary>
    public bool IsAsked { get; set; }

    /// <summary>
    /// Whether it is filled as far as the others are: one that was asked for under the weather before is, and one that is asked for now.
    /// </summary>
    public bool IsFilled { get; set; }

    /// <summary>Adds a law; the block must have room, and its days must then be added anew from the first.</summary>
    /// <returns>The place of the law in the block.</returns>
    public int Add(HeatLaw law)
    {
        _bases = _bases.WithElement(Count, law.BaseC);
        if (law.Kind == HeatKind.Growth)
        {
            _caps = _caps.WithElement(Count, law.OptimumC);
            _isGrowth = _isGrowth.WithElement(Count, BitConverter.UInt64BitsToDouble(ulong.MaxValue));
            return Count++;
        }

        _offsets = _offsets.WithElement(Count, _offsetK);
        if (law.Kind == HeatKind.Warmth)
        {
            _least = _least.WithElement(Count, double.NegativeInfinity);
            return Count++;
        }

        _caps = _caps.WithElement(Count, law.OptimumC);
        _plateaus = _plateaus.WithElement(Count, law.PlateauC);
        _ceilings = _ceilings.WithElement(Count, law.CeilingC);
        _heights = _heights.WithElement(Count, law.OptimumC - law.BaseC);
        _widths = _widths.WithElement(Count, law.CeilingC - law.PlateauC);
        _lowestPlateau = Math.Min(_lowestPlateau, law.PlateauC);
        return Count++;
    }

    /// <summary>
    /// Adds the hours of a day to the sums; the days before it must be there. Emergence and temperature are those of the medium, growth is
    /// that of the air: each law has an offset, a cap and a light, and where it has none these are 0, endless and 1, which change no bit.
    /// </summary>
    /// <param name="day">Day, 0 the first.</param>
    /// <param name="airC">Air of its 24 hours, degrees Celsius.</param>
    /// <param name="light">Factor of the month's light on growth, 0 to 1.</param>
    public void AddDay(int day, ReadOnlySpan<double> airC, double light)
    {
        ref var at = ref MemoryMarshal.GetReference(Sums.AsSpan(day * HourlyClimate.Hours * Most, (HourlyClimate.Hours + 1) * Most));
        var (offsets, caps, bases, least) = (_offsets, _caps, _bases, _least);
        var lights = Vector512.ConditionalSelect(_isGrowth, Vector512.Create(light), Vector512<double>.One);
        var sums = Vector512.LoadUnsafe(ref at);
        foreach (var air in airC[..HourlyClimate.Hours])
        {
            var temperatures = Vector512.Create(air) + offsets;
            var rates = Vector512.MinNative(temperatures, caps) - bases;

            // A division costs more than all the rest, and few hours are that warm.
            if (air + _offsetK > _lowestPlateau)
            {
                rates = Falling(temperatures, rates);
            }

            // Below the base and above the ceiling the lines are below 0, and add nothing.
            sums += lights * Vector512.MaxNative(rates, least);
            at = ref Unsafe.Add(ref at, Most);
            sums.StoreUnsafe(ref at);
        }
    }

    // The line that falls from the plateau to the ceiling, where the plateau is passed.
    private Vector512<double> Falling(Vector512<double> temperatures, Vector512<double> rising) =>
        Vector512.ConditionalSelect(
            Vector512.LessThanOrEqual(temperatures, _plateaus),
            rising,
            _heights * (_ceilings - temperatures) / _widths
        );
}
