using System.Globalization;

namespace Published.Statistics;

/// <summary>One published value.</summary>
/// <param name="Inputs">As in the file: name=value, parted by semicolons.</param>
/// <param name="Quantity">What it is.</param>
/// <param name="Value">The value, to 12 digits.</param>
internal sealed record CheckRow(string Inputs, string Quantity, double Value)
{
    /// <summary>A number among the inputs.</summary>
    public double Number(string name) => double.Parse(Text(name), CultureInfo.InvariantCulture);

    /// <summary>A whole number among the inputs.</summary>
    public int Whole(string name) => int.Parse(Text(name), CultureInfo.InvariantCulture);

    /// <summary>A list of numbers among the inputs, parted by bars; a remark in brackets after it is left out.</summary>
    public double[] Numbers(string name) =>
        [.. Text(name).Split(' ')[0].Split('|').Select(each => double.Parse(each, CultureInfo.InvariantCulture))];

    /// <summary>Equal to within a relative tolerance (by default that of the 12 digits in the file), or to
    /// 1e-12 where the value is near 0.</summary>
    public void Check(double actual, double relative = 2e-11) =>
        Assert.True(
            Math.Abs(actual - Value) <= Math.Max(1e-12, relative * Math.Abs(Value)),
            $"{Inputs}: {Quantity} is {actual:R}, published {Value:R}"
        );

    private string Text(string name) => Inputs.Split(';').Select(each => each.Split('=')).First(each => each[0].Trim() == name)[1];
}
