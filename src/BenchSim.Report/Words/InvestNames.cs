using BenchSim.Study.Invest;

namespace BenchSim.Report.Words;

/// <summary>Inputs of a money case and their values, as people read them.</summary>
public static class InvestNames
{
    /// <summary>Name of an input: "capital", "price of fuel".</summary>
    /// <param name="input">Input.</param>
    public static string Of(InvestInput input) =>
        input switch
        {
            InvestInput.Capital => "capital",
            InvestInput.Life => "life",
            InvestInput.DiscountRate => "discount rate",
            InvestInput.PlantOnTime => "value of a plant on time",
            InvestInput.BoughtInShare => "share bought in when short",
            InvestInput.BoughtInPrice => "price of a plant bought in",
            InvestInput.Upkeep => "upkeep a year",
            InvestInput.Residual => "worth at the end",
            InvestInput.LabourPrice => "price of an hour of work",
            InvestInput.FuelPrice => "price of fuel",
            InvestInput.PowerPrice => "price of electricity",
            InvestInput.MixPrice => "price of a litre of mix",
            InvestInput.SeedPrice => "price of seed",
            _ => throw new ArgumentOutOfRangeException(nameof(input), input, "An unknown input."),
        };

    /// <summary>A value of an input: "$12,000", "15 years", "6 %", "125 % of today's".</summary>
    /// <param name="input">Input.</param>
    /// <param name="value">Value.</param>
    /// <param name="currency">Currency sign or code; may be empty.</param>
    public static string Value(InvestInput input, double value, string currency) =>
        input switch
        {
            InvestInput.Life => Numbers.Count(value, "year", "years"),
            InvestInput.DiscountRate or InvestInput.BoughtInShare => Percent(value),
            InvestInput.FuelPrice or InvestInput.PowerPrice or InvestInput.SeedPrice => $"{Numbers.Whole(value * 100)} % of today's",
            _ => Money(value, currency),
        };

    /// <summary>An amount with its sign in front of the currency: "-$1,230", "$0.45".</summary>
    /// <param name="amount">Amount.</param>
    /// <param name="currency">Currency sign or code; may be empty.</param>
    public static string Money(double amount, string currency)
    {
        var text = amount == 0 ? new Words.Money(currency).Whole(0) : new Words.Money(currency).Amount(Math.Abs(amount));
        return amount < 0 && text.Any(character => character is >= '1' and <= '9') ? "-" + text : text;
    }

    /// <summary>Half an interval, with as many decimals as the amount it belongs to.</summary>
    /// <param name="amount">Amount.</param>
    /// <param name="halfWidth">Half the width of its interval, 0 or more.</param>
    /// <param name="currency">Currency sign or code; may be empty.</param>
    public static string HalfWidth(double amount, double halfWidth, string currency) =>
        Math.Abs(amount) >= 100 ? new Words.Money(currency).Whole(halfWidth) : Money(halfWidth, currency);

    /// <summary>A share or rate in percent, one decimal: "6.5 %", "-2.1 %".</summary>
    /// <param name="share">Share; 1 is all.</param>
    public static string Percent(double share)
    {
        var text = Math.Round(share * 100, 1, MidpointRounding.AwayFromZero).ToString("#,##0.#", null);
        return (text is "-0" ? "0" : text) + " %";
    }
}
