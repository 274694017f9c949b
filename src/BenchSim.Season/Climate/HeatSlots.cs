using BenchSim.Season.Heat;

namespace BenchSim.Season.Climate;

/// <summary>
/// Numbers the airs, mats and heat sums that the plans of one weather ask for, equal ones once: what two plans, two houses or two crops
/// have in common is worked out once. Safe for use by several threads.
/// </summary>
internal sealed class HeatSlots
{
    private readonly Lock _gate = new();
    private readonly List<HouseAir?> _airs = [null];
    private readonly List<MatSetting> _mats = [];
    private readonly List<HeatSlot> _slots = [];
    private readonly Dictionary<HeatSlot, int> _numbers = [];

    /// <summary>Number of an air.</summary>
    /// <param name="house">What makes it; null for the air outdoors, which is number 0.</param>
    public int AirOf(HouseAir? house)
    {
        lock (_gate)
        {
            return NumberIn(_airs, house);
        }
    }

    /// <summary>Number of a mat temperature.</summary>
    /// <param name="mat">How the mat is set.</param>
    public int MatOf(MatSetting mat)
    {
        lock (_gate)
        {
            return NumberIn(_mats, mat);
        }
    }

    /// <summary>Number of a heat sum.</summary>
    /// <param name="slot">The sum.</param>
    public int Of(HeatSlot slot)
    {
        lock (_gate)
        {
            if (!_numbers.TryGetValue(slot, out var number))
            {
                number = _slots.Count;
                _slots.Add(slot);
                _numbers.Add(slot, number);
            }

            return number;
        }
    }

    /// <summary>The heat sum of a number.</summary>
    public HeatSlot Slot(int number)
    {
        lock (_gate)
        {
            return _slots[number];
        }
    }

    /// <summary>What makes the air of a number.</summary>
    public HouseAir? Air(int number)
    {
        lock (_gate)
        {
            return _airs[number];
        }
    }

    /// <summary>The mat temperature of a number.</summary>
    public MatSetting Mat(int number)
    {
        lock (_gate)
        {
            return _mats[number];
        }
    }

    private static int NumberIn<T>(List<T> list, T value)
    {
        var number = list.IndexOf(value);
        if (number < 0)
        {
            number = list.Count;
            list.Add(value);
        }

        return number;
    }
}

/// <summary>A heat sum: a law in an air, or on a mat.</summary>
/// <param name="Law">Law.</param>
/// <param name="IsMat">Whether it is summed on a mat.</param>
/// <param name="Number">Number of the air or of the mat.</param>
internal readonly record struct HeatSlot(HeatLaw Law, bool IsMat, int Number);
