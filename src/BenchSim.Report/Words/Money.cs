namespace BenchSim.Report.Words;

/// <summary>Amounts of the user's money, with the user's sign or code in front.</summary>
/// <param name="currency">The sign or code; may be empty.</param>
public sealed class Money(string currency)
{
    private readonly string _front = Front(PlainText.Short(currency, 8));

    /// <summary>An amount: whole from 100 on, with two decimals below.</summary>
    public string Amount(double value) => _front + (Math.Abs(value) >= 99.995 ? Numbers.Whole(value) : value.ToString("0.00", null));

    /// <summary>An amount to be paid: two decimals.</summary>
    public string Exact(double value) => _front + Numbers.Hundredths(Math.Round(value, 2, MidpointRounding.AwayFromZero));

    /// <summary>An amount, whole.</summary>
    public string Whole(double value) => _front + Numbers.Whole(value);

    /// <summary>The sign or code before a number that is written already.</summary>
    public string Before(string number) => _front + number;

    /// <summary>A price: two decimals, up to four where it has them.</summary>
    public string Price(double value) => _front + value.ToString("#,##0.00##", null);

    // A code is set apart from its number, a sign is not.
    private static string Front(string currency) => currency.Length > 0 && char.IsLetter(currency[^1]) ? currency + " " : currency;
}
