using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using BenchSim.Report.Tests.Synthetic;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;

namespace BenchSim.Report.Tests.Words;

/// <summary>Short codes of batches and marks of growers.</summary>
public sealed class ShortCodesTests
{
    private static readonly SeasonPlan s_plan = SyntheticPlan.Spring();

    // The first eight bytes of .NET's own SHA-256 of the name, modulo 13 x 17^3, written in the signs.
    [Theory]
    [InlineData("kale-1")]
    [InlineData("tomato")]
    [InlineData("Brügge-日本")]
    public void A_code_comes_from_the_name_alone(string id)
    {
        const string signs = "CDFHJKMNPRTWX3479";
        var number = BitConverter.ToUInt64([.. SHA256.HashData(Encoding.UTF8.GetBytes(id)).Take(8).Reverse()]) % (13 * 17 * 17 * 17);
        var expected = string.Concat(new[] { 4913ul, 289ul, 17ul, 1ul }.Select(unit => signs[(int)(number / unit % 17)]));
        Assert.Equal(expected, Codes([(id, "Ada")])[0]);
        Assert.Equal(expected, Codes([("a", "Ada"), ("b", "Ada"), (id, "Ada")])[2]);
    }

    [Fact]
    public void Ten_thousand_batches_have_each_another_code_without_look_alikes()
    {
        var codes = Codes([.. Enumerable.Range(0, 10_000).Select(at => (FormattableString.Invariant($"batch-{at}"), "Ada"))]);
        Assert.Equal(codes.Length, codes.Distinct(StringComparer.Ordinal).Count());
        Assert.All(codes, code => Assert.Matches("^[CDFHJKMNPRTWX][CDFHJKMNPRTWX3479]{3}$", code));
    }

    // Where two names give the same code the first in the plan has it: what is added behind changes no code that is printed already.
    [Fact]
    public void What_is_added_behind_changes_no_code()
    {
        (string, string)[] all = [.. Enumerable.Range(0, 2000).Select(at => (FormattableString.Invariant($"batch-{at}"), "Ada"))];
        Assert.Equal(Codes(all)[..500], Codes(all[..500]), StringComparer.Ordinal);
    }

    [Fact]
    public void Growers_have_their_first_letter_and_a_number_where_another_has_it()
    {
        var batches = Plan([("a", "Mara"), ("b", "oskar"), ("c", "Mara"), ("d", "Miles"), ("e", "¡Élan!"), ("f", "M."), ("g", "…")]);
        var codes = ShortCodes.Of(batches);
        Assert.Equal(["M", "O", "M", "M2", "É", "M3", "G"], batches.Batches.Select(codes.Grower), StringComparer.Ordinal);
        Assert.Equal(codes.Batch(batches.Batches[3]) + "/M2", codes.Full(batches.Batches[3]));
    }

    [Fact]
    public void A_grower_alone_has_no_mark()
    {
        var batches = Plan([("a", "Mara"), ("b", "Mara")]);
        var codes = ShortCodes.Of(batches);
        Assert.Equal(codes.Batch(batches.Batches[0]), codes.Full(batches.Batches[0]));
    }

    private static ImmutableArray<string> Codes((string Id, string Grower)[] batches)
    {
        var plan = Plan(batches);
        var codes = ShortCodes.Of(plan);
        return [.. plan.Batches.Select(codes.Batch)];
    }

    private static SeasonPlan Plan((string Id, string Grower)[] batches)
    {
        var batch = s_plan.Batches[0];
        return s_plan with
        {
            Batches = [.. batches.Select(each => batch with { Order = batch.Order with { Id = each.Id, Grower = each.Grower } })],
        };
    }
}
