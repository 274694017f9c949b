using System.Net;
using BenchSim.Answers.Asking;
using BenchSim.Workbench.Phones;

namespace BenchSim.Workbench.Tests.Phones;

/// <summary>The addresses at which phones may be let in.</summary>
public sealed class LanTests
{
    // The blocks of RFC 1918 and RFC 3927, and what lies right beside them.
    [Theory]
    [InlineData("10.0.0.0", true)]
    [InlineData("10.255.255.255", true)]
    [InlineData("11.0.0.0", false)]
    [InlineData("172.15.255.255", false)]
    [InlineData("172.16.0.0", true)]
    [InlineData("172.31.255.255", true)]
    [InlineData("172.32.0.0", false)]
    [InlineData("192.167.255.255", false)]
    [InlineData("192.168.0.0", true)]
    [InlineData("192.168.255.255", true)]
    [InlineData("192.169.0.0", false)]
    [InlineData("169.254.1.1", true)]
    [InlineData("169.253.1.1", false)]
    [InlineData("0.0.0.0", false)]
    [InlineData("100.64.0.1", false)]
    [InlineData("203.0.113.7", false)]
    [InlineData("255.255.255.255", false)]
    [InlineData("::1", false)]
    public void Networks_of_ones_own_are_told_from_others(string address, bool isOwn) =>
        Assert.Equal(isOwn, Lan.IsOwn(IPAddress.Parse(address)));

    [Fact]
    public void An_address_of_such_a_network_is_taken() =>
        Assert.Equal("192.168.1.20", Lan.Of("192.168.1.20").Addresses.Single().ToString());

    [Theory]
    [InlineData("203.0.113.7", "is no address of a network of your own: strangers could knock there")]
    [InlineData("0.0.0.0", "is no address of a network of your own")]
    [InlineData("127.0.0.1", "is this computer alone")]
    [InlineData("fd00::2", "is no IPv4 address")]
    [InlineData("::", "is no IPv4 address")]
    [InlineData("spring", "is no address; write one such as 192.168.1.20")]
    [InlineData("192.168.1", "is no address")]
    [InlineData("3232235796", "is no address")]
    [InlineData("192.168.1.20:80", "is no address")]
    [InlineData("", "is no address")]
    public void Others_are_refused_in_words(string address, string why) =>
        Assert.Contains(why, Assert.Throws<RefusedException>(() => Lan.Of(address)).Message, StringComparison.Ordinal);
}
